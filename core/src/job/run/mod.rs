//! From the job to its report: one file per part of the report.

mod approach;
mod as_built;
#[cfg(test)]
mod as_built_tests;
mod clearances;
mod conflict;
mod drainage;
mod fall;
mod finish;
mod fits;
mod flatness;
mod key_cuts;
mod look_again;
mod marks;
#[cfg(test)]
mod marks_tests;
mod new_floor;
mod old_floor;
mod old_slab;
mod order;
mod overlay;
pub(super) mod places;
mod solved;
mod spans;
mod survey;
mod taken;
mod tear_out;
#[cfg(test)]
mod tests;
mod thickness;
mod thin_zones;
mod water;
mod worked;

use self::new_floor::Laid;
use self::old_floor::{level_report, old_floor};
use self::old_slab::OldSlab;
use super::heights::Heights;
use super::input::Job;
use super::report::{LookAgain, NewFloor, Report, SaidBasis, SaidNote, StandingWater, TakenReport};
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::failure::{Failure, Result};
use crate::note::Note;
use crate::operation::terms::as_written;
use crate::survey::Survey;

impl Job {
    /// Reports on the job.
    ///
    /// # Errors
    /// Whatever the outline, the survey, the finish or the order is refused for, with its path in the job.
    pub fn report(&self) -> Result<Report> {
        self.surveyed().and_then(|survey| self.parts(&survey)).map_err(|failure| self.in_own_words(failure))
    }

    /// Reports on the job over a survey that was made elsewhere: from a scan, from a file.
    ///
    /// # Errors
    /// A job that describes an old slab itself, and whatever else [`Job::report`] refuses.
    pub fn report_on(&self, survey: &Survey) -> Result<Report> {
        self.nothing_surveyed()
            .and_then(|()| self.cleaned(survey))
            .and_then(|survey| self.parts(&survey))
            .map_err(|failure| self.in_own_words(failure))
    }

    /// A refused number is told as the job says it, not as the engine holds it.
    fn in_own_words(&self, failure: Box<Failure>) -> Box<Failure> {
        match serde_json::to_value(self) {
            Ok(tree) => as_written(failure, &tree),
            Err(_) => failure,
        }
    }

    fn parts(&self, survey: &Survey) -> Result<Report> {
        self.no_idle_limits()?;
        self.no_idle_approaches()?;
        self.no_idle_clearances()?;
        self.no_idle_prices()?;
        let heights = Heights::of(survey);
        let solution = self.solution(survey, heights)?;
        let (made, ground) = match &solution {
            Some(solution) => (solution.made(), solution.ground(survey, self.finish.margin().0)?),
            None => (self.finish.make(survey, heights).map_err(under_finish)?, None),
        };
        let over = ground.as_ref().unwrap_or(survey);
        let laid = Laid { survey: over, made: &made, solution: solution.as_ref(), heights };
        let thickness = self.thickness(&laid)?;
        let old_slab = self.old_slab(thickness.least.thickness, thickness.mean)?;
        let parts = self.with_new_floor(&laid, &thickness, old_slab.as_ref())?;
        Ok(match old_slab.as_ref().filter(|old| old.verdict.spans()) {
            // What was ground off for the new floor is not told either.
            Some(old) => self.assembled(survey, heights, Some(old), self.without_new_floor(survey, old)?),
            None => self.assembled(over, heights, old_slab.as_ref(), parts),
        })
    }

    fn assembled(
        &self,
        survey: &Survey,
        heights: Heights,
        old_slab: Option<&OldSlab>,
        parts: Parts,
    ) -> Report {
        Report {
            schema_version: super::input::SCHEMA_VERSION,
            name: self.job.name.clone(),
            old_slab: old_slab.map(OldSlab::report),
            old_floor: old_floor(survey, &survey.facts()),
            level: level_report(survey, heights),
            clean_up: water::clean_up(survey),
            standing_water: parts.standing_water,
            look_again: parts.look_again,
            new_floor: parts.new_floor,
            taken: parts.taken,
            notes: survey.notes().iter().chain(&parts.notes).map(SaidNote::from).collect(),
            basis: parts.bases,
            not_answered: parts.not_answered,
            cautions: cautions(old_slab, &parts.cautions),
        }
    }
}

/// What a report says beside the old slab: with the new floor, or without it.
struct Parts {
    new_floor: Option<NewFloor>,
    standing_water: StandingWater,
    look_again: LookAgain,
    taken: Vec<TakenReport>,
    /// Beside those of the survey.
    notes: Vec<Note>,
    bases: Vec<SaidBasis>,
    not_answered: Vec<String>,
    /// What can hurt at the things that the floor meets, and where the old slab is broken out.
    cautions: Vec<Caution>,
}

/// What can hurt: the old slab's own cautions first, those of what is met last but one; each once.
fn cautions(old_slab: Option<&OldSlab>, met: &[Caution]) -> Vec<String> {
    let of_slab = old_slab.iter().flat_map(|slab| slab.verdict.cautions.iter().copied());
    let all = of_slab.chain([Caution::Silica, Caution::Caustic]).chain(met.iter().copied());
    let mut cautions: Vec<Caution> = Vec::new();
    for caution in all.chain([Caution::LocalCode]) {
        if !cautions.contains(&caution) {
            cautions.push(caution);
        }
    }
    cautions.into_iter().map(|caution| caution.text().to_owned()).collect()
}

/// Where the figures come from, in the order of the report.
fn said_bases(about: impl IntoIterator<Item = (String, BasisId)>) -> Vec<SaidBasis> {
    let said = |(about, basis): (String, BasisId)| SaidBasis {
        about,
        basis: basis.name().to_owned(),
        says: basis.line(),
    };
    about.into_iter().map(said).collect()
}

/// A failure of the finish under the job's key for it; some name the finish themselves.
fn under_finish(failure: Box<Failure>) -> Box<Failure> {
    if failure.path.starts_with("finish.") { failure } else { failure.under("finish") }
}
