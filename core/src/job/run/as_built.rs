//! The new floor as shot, held against the plan of the job.

use super::flatness::flatness_report;
use super::water::{pond_report, said_place};
use crate::asbuilt::{
    AsBuilt, Asked, Check, Concrete, Delivered, FacetFall, Puddle, SeenPuddle, ShotDeviation, on_new_floor,
};
use crate::assumption::MARK_TOLERANCE;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::grade::finish::Finish;
use crate::job::input::{AsBuiltInput, ElevationsInput, Job};
use crate::job::report::{AsBuiltReport, BuiltFloorReport, CheckReport, ConcreteUsed, FallGot, MissedMark};
use crate::job::say;
use crate::note::{Note, NoteCode};
use crate::quantity::{Given, Length, Slope, Typed, Volume, inches};
use crate::survey::Survey;
use crate::survey::input::SurveyInput;
use crate::survey::old_slab::SlabPlace;
use crate::survey::outline::Corner;

/// Notes that this part of the report tells in its own lines, or that the water of the plan has told.
const TOLD: [NoteCode; 5] = [
    NoteCode::MarksMissed,
    NoteCode::NotAsPlanned,
    NoteCode::ConfirmLocally,
    NoteCode::PuddlesUnseen,
    NoteCode::Assumed,
];

/// The part of the report, what must be known of it, and where its limits come from.
pub(super) type Built = (Option<AsBuiltReport>, Vec<Note>, Vec<(String, BasisId)>);

impl Job {
    /// The floor as built, where it was measured.
    pub(super) fn as_built_report(&self, survey: &Survey, finish: &Finish) -> Result<Built> {
        let Some(input) = &self.as_built else { return Ok((None, Vec::new(), Vec::new())) };
        let (mut notes, mut bases) = (Vec::new(), Vec::new());
        let mut part = |(part_notes, part_bases): (Vec<Note>, Vec<(String, BasisId)>)| {
            notes.extend(part_notes);
            bases.extend(part_bases);
        };
        let under = |failure: Box<Failure>| failure.under("as_built");
        let floor = match new_floor(input, survey).map_err(under)? {
            None => {
                refuse_idle(input)?;
                None
            }
            Some(new) => {
                let (floor, more) = self.built_floor(input, survey, finish, &new).map_err(in_as_built)?;
                part(more);
                Some(floor)
            }
        };
        let flatness = match flatness_report(input, survey, finish).map_err(under)? {
            None => None,
            Some((flatness, more)) => {
                part(more);
                Some(flatness)
            }
        };
        if floor.is_none() && flatness.is_none() {
            return Err(Failure::new(Code::KeyMissing, "as_built.level")
                .written("nothing")
                .allowed("level, survey or profiles")
                .remedy("say how the new floor was measured, or leave as_built out"));
        }
        Ok((Some(AsBuiltReport { floor, flatness }), notes, bases))
    }

    fn built_floor(
        &self,
        input: &AsBuiltInput,
        survey: &Survey,
        finish: &Finish,
        new: &Survey,
    ) -> Result<(BuiltFloorReport, (Vec<Note>, Vec<(String, BasisId)>))> {
        let edges = self.edges();
        let puddles = puddles(input);
        let asked = Asked {
            tolerance: value(&input.tolerance).unwrap_or_else(|| MARK_TOLERANCE.value()),
            tolerance_given: input.tolerance.is_some(),
            specified: value(&input.specified),
            least: value(&input.least),
            least_fall: least_fall(input)?,
            delivered: delivered(input)?,
            puddles: &puddles,
            ..Asked::with_edges(&edges)
        };
        let found = AsBuilt::of(survey, finish, new, &asked)?;
        let mut notes: Vec<Note> = new.notes().iter().map(on_new_floor).collect();
        notes.extend(found.notes().into_iter().filter(|note| !TOLD.contains(&note.code)));
        let mut bases: Vec<(String, BasisId)> = Vec::new();
        for check in &found.checks {
            if bases.iter().all(|(_, known)| *known != check.basis) {
                bases.push((format!("as built, {}", check.about), check.basis));
            }
        }
        Ok((report(&found), (notes, bases)))
    }
}

/// The new floor over the plan edge of the old slab, where it was shot.
fn new_floor(input: &AsBuiltInput, survey: &Survey) -> Result<Option<Survey>> {
    if input.level.is_some() && input.survey.is_some() {
        return Err(Failure::new(Code::Contradiction, "survey")
            .written("level and survey")
            .allowed("one of them")
            .remedy("keep the rods or the elevations"));
    }
    if input.level.is_none() && input.survey.is_none() {
        return Ok(None);
    }
    let given = input.survey.is_some();
    let ElevationsInput { grid, shots, faces, instrument, texture, beyond_allowed, leave_out } =
        input.survey.clone().unwrap_or_default();
    let outline = survey.outline().into();
    let (level, changes) = (input.level.clone(), Vec::new());
    let whole = SurveyInput {
        outline,
        level,
        grid,
        shots,
        faces,
        instrument,
        texture,
        beyond_allowed,
        leave_out,
        changes,
    };
    let in_survey = |failure: Box<Failure>| if given { failure.under("survey") } else { failure };
    Survey::from_input(&whole).map(Some).map_err(in_survey)
}

/// Refuses what is held against shots that were not given.
fn refuse_idle(input: &AsBuiltInput) -> Result<()> {
    let idle = [
        ("tolerance", input.tolerance.is_some()),
        ("specified", input.specified.is_some()),
        ("least", input.least.is_some()),
        ("surface", input.surface.is_some()),
        ("least_fall", input.least_fall.is_some()),
        ("ordered", input.ordered.is_some()),
        ("left_over", input.left_over.is_some()),
        ("puddles", !input.puddles.is_empty()),
    ];
    match idle.into_iter().find(|(_, given)| *given) {
        None => Ok(()),
        Some((key, _)) => Err(Failure::new(Code::KeyMissing, "as_built.level")
            .written(format!("nothing, but {key} is given"))
            .allowed("level or survey of the new floor")
            .remedy(format!("give the shots of the new floor, or leave {key} out"))),
    }
}

fn value<Q: Copy>(given: &Option<Given<Q>>) -> Option<Q> {
    given.as_ref().map(|given| given.value)
}

/// A refusal of the water stands at the job's own key, all else under `as_built`.
fn in_as_built(failure: Box<Failure>) -> Box<Failure> {
    let of_water = ["edges", "drains"].iter().any(|key| failure.path.starts_with(key));
    failure.under(if of_water { "water" } else { "as_built" })
}

fn least_fall(input: &AsBuiltInput) -> Result<Option<(Slope, BasisId)>> {
    match (input.surface, &input.least_fall) {
        (Some(_), Some(given)) => Err(Failure::new(Code::Contradiction, "least_fall")
            .written(format!("surface and {}", given.written))
            .allowed("one of them")
            .remedy("keep the word or the number")),
        (Some(surface), None) => Ok(Some(surface.least_fall())),
        (None, Some(given)) => {
            let fall = crate::failure::check("least_fall", given.value, crate::grade::fall::FALL)?;
            Ok(Some((fall, BasisId::FallGiven)))
        }
        (None, None) => Ok(None),
    }
}

fn delivered(input: &AsBuiltInput) -> Result<Option<Delivered>> {
    match (value(&input.ordered), value(&input.left_over)) {
        (Some(ordered), left_over) => {
            Ok(Some(Delivered { ordered, left_over: left_over.unwrap_or_else(|| Volume::from_base(0.0)) }))
        }
        (None, Some(_)) => Err(Failure::new(Code::KeyMissing, "ordered")
            .written("nothing")
            .allowed("what came, where something was left over of it")
            .remedy("give the volume that came")),
        (None, None) => Ok(None),
    }
}

fn puddles(input: &AsBuiltInput) -> Vec<SeenPuddle> {
    let seen = |puddle: &crate::job::input::PuddleInput| SeenPuddle {
        at: Corner::new(puddle.x.value, puddle.y.value),
        depth: value(&puddle.depth),
    };
    input.puddles.iter().map(seen).collect()
}

fn report(found: &AsBuilt) -> BuiltFloorReport {
    let off = &found.deviations;
    let of = |shot: Option<&ShotDeviation>| {
        say::thickness(shot.map_or_else(|| Length::from_base(0.0), |shot| shot.deviation))
    };
    let got = &found.thickness;
    let least = got.least_measured.as_ref().unwrap_or(&got.least);
    BuiltFloorReport {
        shots: off.shots.len(),
        tolerance: say::fine_thickness(off.tolerance),
        missed: off.missed().into_iter().map(missed).collect(),
        mean_off: say::thickness(off.mean),
        highest: of(off.highest()),
        lowest: of(off.lowest()),
        least: say::at_least(least.thickness),
        least_at: said_place(Corner::new(least.x, least.y)),
        mean: say::thickness(got.mean),
        mean_planned: say::thickness(found.planned.mean),
        greatest: say::at_most(got.greatest.thickness),
        thinner: got.thinner.map(say::surface),
        falls: found.falls.iter().map(fall).collect(),
        ponds: found.ponds.list.iter().map(|pond| pond_report(pond, Some("new"))).collect(),
        puddles: found.puddles.iter().map(puddle).collect(),
        concrete: found.concrete.as_ref().map(concrete),
        checks: found.checks.iter().map(check).collect(),
        mends: found.mends.iter().map(crate::asbuilt::Mend::said).collect(),
        text: found.said(),
    }
}

fn missed(shot: &ShotDeviation) -> MissedMark {
    let place = SlabPlace { x: shot.x, y: shot.y, elevation: shot.elevation, shot: Some(shot.name.clone()) };
    let at = say::place(&place);
    let way = if shot.deviation.base() > 0.0 { "high" } else { "low" };
    let text = format!("{}: {} {way}", at.text, say::at_most(shot.deviation.abs()).text);
    MissedMark { at, off: say::thickness(shot.deviation), text }
}

fn fall(fall: &FacetFall) -> FallGot {
    let name = fall.name.as_ref().map(|name| format!("{name}: ")).unwrap_or_default();
    FallGot {
        facet: fall.name.clone(),
        planned: say::fall(fall.planned),
        got: fall.got.map(say::fall),
        text: format!("{name}{}", fall.said()),
    }
}

fn puddle(puddle: &Puddle) -> String {
    let place = said_place(puddle.seen.at).text;
    let deep = puddle.seen.depth.map(|depth| format!(", {} deep", inches(depth, 8))).unwrap_or_default();
    match puddle.unseen_by_shots() {
        true => format!("seen at {place}{deep}: the shots show none there, the floor waves between them"),
        false => format!("seen at {place}{deep}: the shots show {} there", inches(puddle.by_shots, 8)),
    }
}

fn concrete(used: &Concrete) -> ConcreteUsed {
    let factor = used.used_over_planned.map(Typed::base);
    let times = factor.map(|factor| format!(", {factor:.2} times that")).unwrap_or_default();
    let text = format!(
        "{} came, {} left over, {} used; figured {}{times}; in place by the shots {}",
        say::sold(used.ordered).text,
        say::sold(used.left_over).text,
        say::sold(used.used).text,
        say::body(used.planned).text,
        say::body(used.in_place).text
    );
    ConcreteUsed {
        came: say::sold(used.ordered),
        left_over: say::sold(used.left_over),
        used: say::sold(used.used),
        figured: say::body(used.planned),
        in_place: say::body(used.in_place),
        factor,
        text,
    }
}

fn check(check: &Check) -> CheckReport {
    CheckReport {
        about: check.about.clone(),
        verdict: check.judged.word().to_owned(),
        text: check.said.clone(),
        basis: check.basis.name().to_owned(),
    }
}
