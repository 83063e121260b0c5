//! Keys where the floor meets doors, walks and open edges thinner than it may be.

use super::said_bases;
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::Kind;
use crate::failure::Result;
use crate::grade::finish::Finish;
use crate::job::input::{Job, LimitInput, LimitPlaceInput};
use crate::job::report::{KeyCutReport, KeyCutsReport, SaidBasis};
use crate::job::say;
use crate::overlay::edge_key::{Cut, KeyCut, Met, Transition, key_cuts_along, transitions};
use crate::overlay::minimums::minimum;
use crate::quantity::{Elevation, Length, Typed, Volume};
use crate::survey::Survey;
use crate::survey::low_spots::EdgeState;
use crate::survey::old_slab::SlabPlace;
use crate::survey::outline::Corner;

impl Job {
    /// The keys, where the job says how thin the overlay may be and the floor meets something.
    pub(super) fn key_cuts_report(&self, survey: &Survey, finish: &Finish) -> Result<Option<KeyCutsReport>> {
        let Some(least) = self.least_at_edges()? else { return Ok(None) };
        let met = transitions(survey.outline(), &self.met(survey)?);
        if met.is_empty() {
            return Ok(None);
        }
        let mut cuts = Vec::new();
        let mut concrete = Volume::from_base(0.0);
        let lines: Vec<&[Corner]> = met.iter().map(|transition| transition.line.as_slice()).collect();
        let found = key_cuts_along(survey, finish, &lines, least, self.old_thickness())?;
        for (transition, found) in met.iter().zip(&found) {
            concrete += found.iter().map(|cut| cut.volume).sum::<Volume>();
            cuts.extend(found.iter().map(|cut| report(transition, cut)));
        }
        Ok(Some(KeyCutsReport {
            text: first_sentence(least, cuts.len()),
            least: say::thickness(least),
            looked_at: met.iter().map(called).collect(),
            cuts,
            concrete: say::water(concrete),
            basis: BasisId::FeatherEdge.name().to_owned(),
        }))
    }

    /// The least thickness of the overlay by its bond and use, else that of the thin zones.
    fn least_at_edges(&self) -> Result<Option<Length>> {
        if let Some(asked) = &self.overlay {
            let stone = asked.stone.as_ref().map(|stone| stone.value);
            let found = minimum(asked.bond, asked.used, stone).map_err(|failure| failure.under("overlay"))?;
            return Ok(Some(found.least));
        }
        Ok(self.thin_zones.as_ref().map(|thin| thin.minimum.value))
    }

    /// The old slab's thickness, as the overlay or the old slab says it.
    pub(super) fn old_thickness(&self) -> Option<Length> {
        let of_overlay = self.overlay.as_ref().and_then(|overlay| overlay.old_thickness.as_ref());
        let of_slab = self.old_slab.as_ref().and_then(|slab| slab.measured_thickness.as_ref());
        of_overlay.or(of_slab).map(|given| given.value)
    }

    /// What the floor meets: edges told to be open or drained, doors and sills, heights that hold it down, approaches.
    fn met(&self, survey: &Survey) -> Result<Vec<Met>> {
        let mut met = Vec::new();
        let stated = self.water.iter().flat_map(|water| &water.edges);
        for (index, edge) in stated.enumerate().filter(|(_, edge)| edge.state != EdgeState::Walled) {
            let path = format!("water.edges[{index}].edge");
            let runs = survey.outline().edge(&edge.edge).map_err(|failure| failure.under(&path))?;
            met.extend(
                runs.into_iter()
                    .map(|run| Met { name: run.name().to_owned(), line: vec![run.from(), run.to()] }),
            );
        }
        met.extend(self.approaches.iter().map(|approach| Met {
            name: approach.name.clone(),
            line: approach.at.iter().map(|place| Corner::new(place.x.value, place.y.value)).collect(),
        }));
        let things = self.clearances.iter().filter(|thing| is_met(thing.kind));
        met.extend(things.map(|thing| Met { name: thing.name.clone(), line: corners(&thing.at) }));
        let limits = self.limits.iter().filter(|limit| holds_down(limit));
        met.extend(limits.map(|limit| Met { name: limit.name.clone(), line: corners(&limit.at) }));
        Ok(met)
    }
}

fn corners(places: &[LimitPlaceInput]) -> Vec<Corner> {
    places.iter().map(|place| Corner::new(place.x.value, place.y.value)).collect()
}

/// Whether the floor runs through it or up to it, and not only past it.
const fn is_met(kind: Kind) -> bool {
    matches!(
        kind,
        Kind::SectionalDoor
            | Kind::RollDoor
            | Kind::SwingingDoor
            | Kind::SlidingDoor
            | Kind::PassageDoor
            | Kind::Threshold
            | Kind::OpenEdge
    )
}

fn holds_down(limit: &LimitInput) -> bool {
    limit.at_least.is_none() && limit.at_least_rod.is_none() && !limit.judged_only
}

/// `front (big door)`: the longest first, what lies in it behind.
fn called(transition: &Transition) -> String {
    match transition.names.as_slice() {
        [] => String::new(),
        [name] => name.clone(),
        [name, rest @ ..] => format!("{name} ({})", rest.join(", ")),
    }
}

fn report(transition: &Transition, cut: &KeyCut) -> KeyCutReport {
    let length = cut.to - cut.from;
    let lone = transition.line.len() == 1;
    let place = |at: Corner| {
        say::place(&SlabPlace { x: at.x, y: at.y, elevation: Elevation::from_base(0.0), shot: None })
    };
    let mut said = KeyCutReport {
        name: called(transition),
        start: place(cut.start),
        end: place(cut.end),
        length: (!lone).then(|| say::distance(length)),
        depth: say::at_most(cut.depth),
        deepest: say::at_most(cut.deepest),
        width: say::whole_inches(cut.width),
        area: say::surface(cut.area),
        concrete: say::water(cut.volume),
        runs_out: cut.runs_out,
        cut: cut.cut.word().to_owned(),
        text: String::new(),
    };
    said.text = text(&said, cut, is_all(&transition.line, length));
    said
}

/// Whether a key runs along all of a stretch, but for an inch.
fn is_all(line: &[Corner], length: Length) -> bool {
    let [from, to] = line else { return false };
    from.distance(*to).base() - length.base() < 0.0254
}

fn text(said: &KeyCutReport, cut: &KeyCut, all: bool) -> String {
    let along = match &said.length {
        Some(length) if all => format!("along all its {}", length.text),
        Some(length) => format!("for {}, from {} to {}", length.text, said.start.text, said.end.text),
        None => format!("over its width, at {}", said.start.text),
    };
    let (name, deep, back) = (&said.name, &said.depth.text, &said.width.text);
    let mut text = match cut.cut {
        _ if !said.runs_out => {
            return format!(
                "{name}: short by up to {deep} {along}, and the floor behind it nowhere gets thick enough: no key mends that"
            );
        }
        Cut::BreakOut => format!(
            "{name}: short by up to {deep} {along}: half of the old slab or more. Saw it through, break the strip out {back} back, pour it full depth"
        ),
        _ => format!("{name}: saw {deep} deep {along}, chip back {back}"),
    };
    if cut.deepest.base() > cut.depth.base() + DEEPER {
        text.push_str(&format!(", {} deep behind the edge", said.deepest.text));
    }
    text
}

/// A key that is deeper behind the edge by less is not told, in metres: 1/16 in.
const DEEPER: f64 = 0.0254 / 16.0;

fn first_sentence(least: Length, cuts: usize) -> String {
    let least = say::at_most(least).text;
    match cuts {
        0 => format!("none: at least {least} thick at every door and open edge"),
        _ => format!(
            "no edge runs out to nothing: old concrete is cut back until the new is {least} thick. From memory: confirm locally"
        ),
    }
}

/// Where it comes from, where there are keys.
pub(super) fn bases(report: Option<&KeyCutsReport>) -> Vec<SaidBasis> {
    let any = report.is_some_and(|report| !report.cuts.is_empty());
    let bases = [BasisId::FeatherEdge, BasisId::KeyThroughSlab].into_iter().filter(|_| any);
    said_bases(bases.map(|basis| ("key cuts".to_owned(), basis)))
}

/// What can hurt where an old slab is cut.
pub(super) fn caution(report: Option<&KeyCutsReport>) -> Option<Caution> {
    report.filter(|report| !report.cuts.is_empty()).map(|_| Caution::PipesAndTendons)
}
