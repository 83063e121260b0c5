//! The approaches of a job.

use crate::assumption;
use crate::basis::BasisId;
use crate::clearance::approach::{
    self, Approach, Asked, Away, Break, ProfilePoint, Rule, Stretch, Traffic, Vehicle, at_door,
};
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::job::heights::Heights;
use crate::job::input::{ApproachInput, Job, VehicleInput};
use crate::job::report::{ApproachReport, BreakReport, RuleReport, StretchReport};
use crate::job::say;
use crate::note::Note;
use crate::quantity::{Elevation, Flow, Given, Length, Slope, Typed};
use crate::survey::outline::Corner;

/// The approaches of a job, what must be known of them, and what they rest on.
#[derive(Default)]
pub(super) struct Approaches {
    pub(super) reports: Vec<ApproachReport>,
    pub(super) notes: Vec<Note>,
    pub(super) bases: Vec<BasisId>,
}

impl Job {
    pub(super) fn approach_reports(&self, finish: &Finish, heights: Heights) -> Result<Approaches> {
        let mut all = Approaches::default();
        for (index, input) in self.approaches.iter().enumerate() {
            let under = |failure: Box<Failure>| in_part(failure).under(&format!("approaches[{index}]"));
            let places: Vec<Corner> =
                input.at.iter().map(|place| Corner::new(place.x.value, place.y.value)).collect();
            let floor = at_door(finish, &places).map_err(under)?;
            let asked = input.asked(floor, heights).map_err(under)?;
            let found = Approach::of(&asked).map_err(under)?;
            let flow = self.trench_flow(input, &found).map_err(under)?;
            let named = |note: &Note| Note::new(note.code, format!("{}: {}", input.name, note.text));
            all.notes.extend(found.notes().iter().map(named));
            let bases = found.bases().into_iter().filter(|basis| *basis != BasisId::Geometry);
            for basis in bases {
                if !all.bases.contains(&basis) {
                    all.bases.push(basis);
                }
            }
            all.reports.push(report(input, &asked, &found, flow, heights));
        }
        Ok(all)
    }

    fn trench_flow(&self, input: &ApproachInput, found: &Approach) -> Result<Option<Flow>> {
        let drainage = self.drainage.as_ref();
        let rain = drainage.and_then(|drainage| drainage.rain.as_ref());
        let (Some(width), Some(rain)) = (&input.width, rain) else { return Ok(None) };
        let share = drainage.and_then(|drainage| drainage.runs_off.as_ref());
        let share = share.map_or(assumption::RUNOFF.value(), |given| given.value);
        found.trench.takes(width.value, rain.value, share).map(Some)
    }

    /// An approach is demanded only where the finish is solved for.
    pub(super) fn no_idle_approaches(&self) -> Result<()> {
        let idle = self.approaches.iter().position(|of| of.demanded && self.finish.solve.is_none());
        let Some(index) = idle else { return Ok(()) };
        Err(Failure::new(Code::Contradiction, format!("approaches[{index}].demanded"))
            .written("true")
            .allowed("where the finish is solved for")
            .remedy("remove it, or let the finish be solved for"))
    }
}

/// The places of a door are `at` in a job.
fn in_part(mut failure: Box<Failure>) -> Box<Failure> {
    if let Some(rest) = failure.path.strip_prefix("door") {
        failure.path = format!("at{rest}");
    }
    failure
}

fn value<Q: Typed>(given: &Option<Given<Q>>) -> Option<Q> {
    given.as_ref().map(|given| given.value)
}

impl ApproachInput {
    /// What is asked of it, for a floor of that height at the door.
    pub(in crate::job) fn asked(&self, floor: Elevation, heights: Heights) -> Result<Asked> {
        let mut profile = Vec::with_capacity(self.profile.len());
        for (index, place) in self.profile.iter().enumerate() {
            let elevation = heights
                .given(&place.elevation, &place.rod, ["elevation", "rod"])
                .map_err(|failure| failure.under(&format!("profile[{index}]")))?;
            profile.push(ProfilePoint { distance: place.distance.value, elevation });
        }
        Ok(Asked {
            floor,
            floor_fall: Slope::from_base(0.0),
            profile,
            traffic: self.traffic.unwrap_or(Traffic::Vehicle),
            fall: value(&self.fall),
            over: value(&self.over).unwrap_or(assumption::AWAY_OVER.value()),
            tie_in: value(&self.tie_in),
            thickness: value(&self.thickness),
            rebate: value(&self.rebate),
            vehicle: self.vehicle.as_ref().map_or_else(Vehicle::default, VehicleInput::measures),
        })
    }

    /// The floor height that the water outside needs.
    pub(in crate::job) fn needed(&self, heights: Heights) -> Result<Elevation> {
        // The floor's own height plays no part in it.
        let asked = self.asked(Elevation::from_base(0.0), heights)?;
        approach::needed_floor(&asked)
    }
}

impl VehicleInput {
    fn measures(&self) -> Vehicle {
        Vehicle {
            wheelbase: value(&self.wheelbase),
            clearance: value(&self.clearance),
            overhang: value(&self.overhang),
            bumper: value(&self.bumper),
        }
    }
}

fn report(
    input: &ApproachInput,
    asked: &Asked,
    found: &Approach,
    flow: Option<Flow>,
    heights: Heights,
) -> ApproachReport {
    let word = |of: crate::judged::Judged| of.word().to_owned();
    ApproachReport {
        name: input.name.clone(),
        traffic: asked.traffic.word().to_owned(),
        floor: heights.say(asked.floor),
        needed: heights.say(found.needed),
        spare: say::fine_thickness(found.spare),
        high_enough: found.away == Away::Yes,
        fall: say::fall(asked.wanted()),
        over: say::distance(asked.over),
        step: say::fine_thickness(found.step.height),
        step_limit: say::fine_thickness(found.step.limit),
        step_basis: found.step.basis.name().to_owned(),
        step_judged: word(found.step.judged),
        stretches: found.stretches.iter().map(stretch).collect(),
        breaks: found.breaks.iter().map(of_break).collect(),
        rules: found.rules.iter().map(rule).collect(),
        dig: found.dig.map(say::at_most),
        trench_floor: heights.say(found.trench.floor),
        trench_reach: say::distance(found.trench.reach),
        trench_area: input.width.as_ref().map(|width| say::surface(found.trench.catches(width.value))),
        trench_flow: flow.map(say::flow),
        judged: word(found.judged()),
    }
}

fn stretch(of: &Stretch) -> StretchReport {
    StretchReport {
        from: say::distance(of.from),
        to: say::distance(of.to),
        drop: say::thickness(Length::from_base((of.start - of.end).base())),
        fall: say::fall(of.fall),
    }
}

fn of_break(of: &Break) -> BreakReport {
    BreakReport {
        at: say::distance(of.at),
        kind: of.kind.word().to_owned(),
        change: say::fall(of.change),
        spacing: say::distance(of.spacing),
        taken: of.taken.map(say::at_most),
    }
}

fn rule(of: &Rule) -> RuleReport {
    RuleReport {
        matter: of.matter.word().to_owned(),
        at: say::distance(of.at),
        found: say::fall(of.found),
        limit: say::fall(of.limit),
        weight: of.weight.word().to_owned(),
        basis: of.basis.name().to_owned(),
        judged: of.judged.word().to_owned(),
    }
}
