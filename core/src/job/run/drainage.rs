//! How the new floor drains, where the job asks.

use crate::basis::BasisId;
use crate::failure::{Failure, Result, check};
use crate::grade::drainage::{Asked, Catchment, Drainage, Puddles, Surface};
use crate::grade::finish::Finish;
use crate::job::input::{DrainageInput, Job};
use crate::job::report::{CatchmentReport, DrainageReport, FaultReport};
use crate::job::say;
use crate::note::{Note, NoteCode};
use crate::quantity::{Flow, Range, Slope};
use crate::survey::Survey;

/// Water from a hose: none, or up to 100 l a second.
const HOSE: Range = Range::closed(0.0, 0.1);

impl Job {
    /// The least fall that the floor is held against, and where that comes from.
    pub(super) fn least_fall(&self) -> (Slope, BasisId) {
        let input = self.drainage.as_ref();
        match input.and_then(|input| input.least_fall.as_ref()) {
            Some(given) => (given.value, BasisId::FallGiven),
            None => input.and_then(|input| input.surface).unwrap_or(Surface::Trowelled).least_fall(),
        }
    }

    pub(super) fn drainage_report(
        &self,
        survey: &Survey,
        finish: &Finish,
    ) -> Result<(Option<DrainageReport>, Vec<Note>)> {
        let Some(input) = &self.drainage else { return Ok((None, Vec::new())) };
        input.hose.as_ref().map(|given| check("hose", given.value, HOSE)).transpose().map_err(in_part)?;
        let asked = Asked { edges: self.edges(), ..input.asked() };
        let found = Drainage::of(survey, finish, &asked).map_err(in_part)?;
        let told = |note: &Note| matches!(note.code, NoteCode::WaterHeld | NoteCode::WrongWay);
        let notes = found.notes().into_iter().filter(told).collect();
        Ok((Some(report(input, &asked, &found)), notes))
    }
}

/// A refusal under the job's key.
fn in_part(mut failure: Box<Failure>) -> Box<Failure> {
    if failure.path == "coefficient" {
        "runs_off".clone_into(&mut failure.path);
    }
    let of_water = failure.path.starts_with("edges") || failure.path.starts_with("drains");
    let part = if of_water { "water" } else { "drainage" };
    if failure.path == "finish" { failure } else { failure.under(part) }
}

impl DrainageInput {
    fn asked(&self) -> Asked {
        let taken = Asked::default();
        Asked {
            surface: self.surface.unwrap_or(Surface::Trowelled),
            least_fall: self.least_fall.as_ref().map(|given| given.value),
            wave_height: self.wave_height.as_ref().map_or(taken.wave_height, |given| given.value),
            wave_length: self.wave_length.as_ref().map_or(taken.wave_length, |given| given.value),
            rain: self.rain.as_ref().map(|given| given.value),
            coefficient: self.runs_off.as_ref().map_or(taken.coefficient, |given| given.value),
            ..taken
        }
    }
}

fn report(input: &DrainageInput, asked: &Asked, found: &Drainage) -> DrainageReport {
    let hose = input.hose.as_ref().map(|given| given.value);
    let faults = found.faulty_parts();
    let fault =
        |part: &crate::grade::drainage::DrainedPart<(usize, crate::grade::drainage::Fault)>| FaultReport {
            facet: found.facets[part.of.0].name.clone(),
            fault: part.of.1.word().to_owned(),
            area: say::surface(part.area),
        };
    DrainageReport {
        surface: input.least_fall.is_none().then(|| asked.surface.word().to_owned()),
        least: say::fall(found.least),
        basis: found.basis.name().to_owned(),
        least_found: say::fall(found.least_found()),
        judged: found.judged().word().to_owned(),
        catchments: found.catchments.iter().map(|of| catchment(found, of, hose)).collect(),
        held: say::surface(found.held()),
        faults: faults.iter().map(fault).collect(),
        wave_height: say::fine_thickness(asked.wave_height),
        wave_length: say::distance(asked.wave_length),
        puddle: (found.puddles() == Puddles::CanStay).then(|| say::fine_at_most(found.puddle())),
        rain: asked.rain.map(say::rain),
        hose: hose.map(say::flow),
    }
}

fn catchment(found: &Drainage, of: &Catchment, hose: Option<Flow>) -> CatchmentReport {
    let ending = &found.endings[of.ending];
    let flow = match (of.flow, hose) {
        (Some(rain), Some(hose)) => Some(rain + hose),
        (rain, hose) => rain.or(hose),
    };
    CatchmentReport {
        end: ending.end.word().to_owned(),
        text: ending.words(),
        area: say::surface(of.area),
        longest: say::distance(of.longest),
        flow: flow.map(say::flow),
    }
}
