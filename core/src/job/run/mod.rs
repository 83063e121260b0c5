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
mod look_again;
mod marks;
#[cfg(test)]
mod marks_tests;
mod old_floor;
mod old_slab;
mod order;
mod overlay;
pub(super) mod places;
mod solved;
mod survey;
#[cfg(test)]
mod tests;
mod thickness;
mod thin_zones;
mod water;

use self::old_floor::{level_report, old_floor};
use self::old_slab::OldSlab;
use super::finish::Made;
use super::heights::Heights;
use super::input::Job;
use super::report::{FallReport, Report, SaidBasis, SaidNote};
use super::solve::Solution;
use super::taken::taken;
use crate::basis::BasisId;
use crate::caution::Caution;
use crate::clearance::JudgedThing;
use crate::condition::Take;
use crate::failure::{Failure, Result};
use crate::grade::thickness::Thickness;
use crate::judged::Judged;
use crate::note::{Note, NoteCode};
use crate::operation::terms::as_written;
use crate::order::list::Order;
use crate::quantity::{Typed, Volume, inches};
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
        let Some(solution) = self.solution(survey, heights)? else {
            let made = self.finish.make(survey, heights).map_err(under_finish)?;
            return self.report_of(survey, &made, None, heights);
        };
        let ground = solution.ground(survey, self.finish.margin().0)?;
        self.report_of(ground.as_ref().unwrap_or(survey), &solution.made(), Some(&solution), heights)
    }

    fn report_of(
        &self,
        survey: &Survey,
        made: &Made,
        solution: Option<&Solution>,
        heights: Heights,
    ) -> Result<Report> {
        let depth = self.finish.thinner_than.as_ref().map(|given| given.value);
        let thickness = Thickness::of(survey, &made.finish, depth).map_err(under_finish)?;
        let mut fits = self.fits(survey, &made.finish, heights)?;
        fits.extend(solution.into_iter().flat_map(|solution| solution.broken(self)));
        let (standing_water, water_notes) = self.standing_water(survey, &made.finish)?;
        let (drainage, drainage_notes) = self.drainage_report(survey, &made.finish)?;
        let approach::Approaches { reports: approaches, notes: approach_notes, bases: approach_bases } =
            self.approach_reports(&made.finish, heights)?;
        let (zones, zone_notes) = self.zone_reports(survey, &made.finish, depth)?;
        let (sections, section_notes) = self.section_reports(survey, &made.finish, heights)?;
        let (thin_zones, thin_notes) = self.thin_zones_report(survey, &made.finish, &fits)?;
        let judged = self.judged(survey, &made.finish, heights)?;
        let old_slab = self.old_slab(thickness.least.thickness, thickness.mean)?;
        let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least).thickness;
        let overlay = {
            let verdict = old_slab.as_ref().map(|old| &old.verdict);
            self.overlay(overlay::Thick { least, mean: thickness.mean }, verdict)?
        };
        let (marks, mark_notes) = self.marks_report(survey, &made.finish, heights)?;
        let order = self.order_for(thickness.fill)?;
        let facts = survey.facts();
        let rounding = solution.map_or_else(|| Volume::from_base(0.0), Solution::rounding);
        let fall = self.fall_report(survey, &made.finish)?;
        let (as_built, built_notes, built_bases) = self.as_built_report(survey, &made.finish)?;
        let mut notes: Vec<Note> = survey.notes().to_vec();
        notes.extend(thickness.notes());
        notes.extend(water_notes.into_iter().chain(zone_notes).chain(section_notes).chain(thin_notes));
        notes.extend(built_notes);
        notes.extend(drainage_notes.into_iter().chain(approach_notes));
        notes.extend(crate::clearance::notes(&judged));
        notes.extend(mark_notes);
        notes.extend(self.own_notes(&fall, made, &order));
        Ok(Report {
            schema_version: super::input::SCHEMA_VERSION,
            name: self.job.name.clone(),
            old_slab: old_slab.as_ref().map(OldSlab::report),
            old_floor: old_floor(survey, &facts),
            level: level_report(survey, heights),
            conflict: solution.and_then(Solution::conflict_report),
            clean_up: water::clean_up(survey),
            finish: self.finish_report(survey, (made, solution), heights, fall),
            thickness: self.thickness_report(survey, &thickness),
            zones,
            sections,
            standing_water,
            drainage,
            approaches,
            fits,
            clearances: clearances::clearance_reports(&judged, heights),
            solved: solution.map(|solution| self.solved_report(survey, solution, heights)).transpose()?,
            overlay: overlay.as_ref().map(|overlay| overlay.report.clone()),
            thin_zones,
            marks,
            look_again: look_again::look_again(survey, &made.finish)?,
            order: self.order_report(&order, thickness.fill),
            rounding: self.rounding_report(survey, made, heights, thickness.net)?,
            as_built,
            taken: taken(self, survey, &facts, order.net, rounding)
                .into_iter()
                .chain(old_slab.iter().flat_map(OldSlab::taken))
                .chain(clearances::taken(&judged))
                .chain(overlay.iter().flat_map(|overlay| overlay.taken.clone()))
                .collect(),
            notes: notes.iter().map(SaidNote::from).collect(),
            basis: self
                .bases(approach_bases, &built_bases)
                .into_iter()
                .chain(old_slab.iter().flat_map(OldSlab::bases))
                .chain(clearances::bases(&judged))
                .chain(overlay.iter().flat_map(|overlay| overlay.bases.clone()))
                .collect(),
            not_answered: self.not_answered(old_slab.as_ref()),
            cautions: cautions(old_slab.as_ref(), &judged),
        })
    }

    fn not_answered(&self, old_slab: Option<&OldSlab>) -> Vec<String> {
        let priced = self.prices.as_ref().is_some_and(|prices| prices.concrete.is_some());
        let price = if priced { "the price beyond what is priced here" } else { "the price" };
        let verdict = match old_slab.map(|slab| slab.verdict.take) {
            None => Some("whether the old slab may stay"),
            Some(Take::FindOut) => Some("whether the old slab may stay, before what is asked is found out"),
            Some(_) => None,
        };
        verdict.into_iter().chain(["joints", "the day", price]).map(str::to_owned).collect()
    }

    fn own_notes(&self, fall: &FallReport, made: &Made, order: &Order) -> Vec<Note> {
        let mut notes = Vec::new();
        if !fall.meets_guidance {
            notes.push(Note::new(NoteCode::BelowGuidance, fall.text.clone()));
        }
        if Judged::by(self.least_fall().1, false) == Judged::ConfirmLocally {
            notes.push(Note::new(
                NoteCode::ConfirmLocally,
                "the guidance on falls is from memory: confirm locally",
            ));
        }
        if let Some(governing) =
            made.governing.as_ref().filter(|governing| governing.rounded_by.base() >= TOLD)
        {
            let (by, step) = (inches(governing.rounded_by, 16), inches(self.finish.round().0, 8));
            notes.push(Note::new(
                NoteCode::Rounded,
                format!("heights are rounded up by {by} to whole {step}"),
            ));
        }
        if let Some(code) = order.trucks.note {
            notes.push(Note::new(code, code.meaning()));
        }
        notes
    }

    fn bases(&self, approaches: Vec<BasisId>, built: &[(String, BasisId)]) -> Vec<SaidBasis> {
        let mut about = vec![
            ("heights", BasisId::Levelling),
            ("thickness and volume", BasisId::Geometry),
            ("fall", self.least_fall().1),
            ("fall as often given", BasisId::FallInPractice),
        ];
        if let Some(drainage) = &self.drainage {
            about.push(("waves", BasisId::WaveAsScreeded));
            about.extend(drainage.rain.is_some().then_some(("runoff", BasisId::RationalMethod)));
        }
        about.extend(approaches.into_iter().map(|basis| ("approach", basis)));
        if self.finish.has_least() {
            about.push(("margin", BasisId::ThicknessMargin));
        }
        for rule in self.marks.iter().flat_map(super::input::MarksInput::bases) {
            about.push(rule);
        }
        about.extend([
            ("waste", BasisId::WasteAllowance),
            ("step", BasisId::PlantStep),
            ("truck", BasisId::TruckLoad),
        ]);
        let said = |(about, basis): (&str, BasisId)| SaidBasis {
            about: about.to_owned(),
            basis: basis.name().to_owned(),
            says: basis.line(),
        };
        about.extend(built.iter().map(|(about, basis)| (about.as_str(), *basis)));
        about.into_iter().map(said).collect()
    }
}

/// What can hurt: the old slab's own cautions first, those of what the floor meets last but one.
fn cautions(old_slab: Option<&OldSlab>, judged: &[JudgedThing]) -> Vec<String> {
    let mut cautions: Vec<Caution> =
        old_slab.iter().flat_map(|slab| slab.verdict.cautions.iter().copied()).collect();
    cautions.extend([Caution::Silica, Caution::Caustic]);
    cautions.extend(crate::clearance::cautions(judged));
    cautions.push(Caution::LocalCode);
    cautions.into_iter().map(|caution| caution.text().to_owned()).collect()
}

/// Rounding by less than this is not told, in metres: 1/32 in.
const TOLD: f64 = 0.0254 / 32.0;

/// A failure of the finish under the job's key for it; some name the finish themselves.
fn under_finish(failure: Box<Failure>) -> Box<Failure> {
    if failure.path.starts_with("finish.") { failure } else { failure.under("finish") }
}
