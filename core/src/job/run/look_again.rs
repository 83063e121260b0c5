//! Shots that may be booked wrong, shots that fix the height, places that no shot covers.

use crate::failure::Result;
use crate::grade::finish::Finish;
use crate::grade::second_look::{GoverningShot, second_look};
use crate::job::report::{GoverningReport, LookAgain, SuspectReport};
use crate::job::say;
use crate::quantity::Elevation;
use crate::quantity::Typed;
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;
use crate::survey::trust::coverage::{NextShot, coverage};
use crate::survey::trust::{Suspect, suspects};

/// A report names so many places for more shots.
const MOST_NEXT: usize = 3;

/// What to look at again.
pub(super) fn look_again(survey: &Survey, finish: &Finish) -> Result<LookAgain> {
    let coverage = coverage(survey, None, MOST_NEXT)?;
    Ok(LookAgain {
        suspects: suspects(survey, None).list.iter().map(suspect).collect(),
        governing: second_look(survey, finish).governing.iter().map(governing).collect(),
        near_enough: say::distance(coverage.near.value),
        uncovered: say::surface(coverage.uncovered),
        next_shots: coverage.next.iter().map(|next| say::place(&place(next))).collect(),
    })
}

fn suspect(suspect: &Suspect) -> SuspectReport {
    SuspectReport {
        shot: suspect.name.clone(),
        verdict: suspect.verdict.word().to_owned(),
        off: say::thickness(suspect.off),
        more_if_corrected: suspect.more_if_corrected.map(say::body),
        more_without: suspect.more_without.map(say::body),
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
