//! Shots that may be booked wrong, shots that fix the height, places that no shot covers.

use crate::failure::Result;
use crate::grade::finish::Finish;
use crate::grade::second_look::{GoverningShot, second_look};
use crate::job::report::{GoverningReport, LookAgain, SuspectReport};
use crate::job::say;
use crate::quantity::{Elevation, Typed, Volume};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;
use crate::survey::trust::coverage::{NextShot, coverage};
use crate::survey::trust::{Suspect, suspects};

/// A report names so many places for more shots.
const MOST_NEXT: usize = 3;

/// What to look at again.
pub(super) fn look_again(survey: &Survey, finish: &Finish) -> Result<LookAgain> {
    let governing = second_look(survey, finish).governing.iter().map(governing).collect();
    Ok(LookAgain { governing, ..at_old_slab(survey, true)? })
}

/// What to look at again on the old slab; what its shots would change of the concrete is told where a new floor is.
pub(super) fn at_old_slab(survey: &Survey, concrete: bool) -> Result<LookAgain> {
    let coverage = coverage(survey, None, MOST_NEXT)?;
    let all = suspects(survey, None);
    Ok(LookAgain {
        suspects: all.list.iter().map(|one| suspect(one, concrete)).collect(),
        governing: Vec::new(),
        near_enough: say::distance(coverage.near.value),
        uncovered: say::surface(coverage.uncovered),
        next_shots: coverage.next.iter().map(|next| say::place(&place(next))).collect(),
    })
}

fn suspect(suspect: &Suspect, concrete: bool) -> SuspectReport {
    let body = |volume: Option<Volume>| volume.filter(|_| concrete).map(say::body);
    SuspectReport {
        shot: suspect.name.clone(),
        verdict: suspect.verdict.word().to_owned(),
        off: say::thickness(suspect.off),
        more_if_corrected: body(suspect.more_if_corrected),
        more_without: body(suspect.more_without),
        text: suspect.said.clone(),
    }
}

fn governing(shot: &GoverningShot) -> GoverningReport {
    GoverningReport {
        shot: shot.name.clone(),
        drop_without: say::thickness(shot.drop_without),
        saved: say::body(shot.saved),
        text: shot.said.clone(),
    }
}

fn place(next: &NextShot) -> SlabPlace {
    let [x, y] = next.at;
    SlabPlace { x, y, elevation: Elevation::from_base(0.0), shot: None }
}
