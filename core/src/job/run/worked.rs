//! The parts of a new floor as they are worked out, each with what is said beside it.

use super::approach::Approaches;
use super::as_built::Built;
use super::new_floor::Laid;
use super::old_slab::OldSlab;
use super::overlay::{Overlay, Thick};
use super::tear_out::{self, BrokenOut, Over};
use super::{clearances, key_cuts};
use crate::caution::Caution;
use crate::clearance::{self, JudgedThing};
use crate::failure::Result;
use crate::grade::thickness::Thickness;
use crate::job::input::Job;
use crate::job::report::{
    DrainageReport, FallReport, FitReport, KeyCutsReport, MarksReport, SaidBasis, SectionReport,
    StandingWater, TakenReport, ThinZonesReport, ZoneReport,
};
use crate::note::Note;
use crate::order::list::Order;

/// The parts, notes behind those that have some.
pub(super) struct Worked {
    pub(super) fits: Vec<FitReport>,
    pub(super) water: (StandingWater, Vec<Note>),
    pub(super) drainage: (Option<DrainageReport>, Vec<Note>),
    pub(super) approaches: Approaches,
    pub(super) zones: (Vec<ZoneReport>, Vec<Note>),
    pub(super) sections: (Vec<SectionReport>, Vec<Note>),
    pub(super) thin_zones: (Option<ThinZonesReport>, Vec<Note>),
    pub(super) judged: Vec<JudgedThing>,
    pub(super) overlay: Option<Overlay>,
    pub(super) key_cuts: Option<KeyCutsReport>,
    pub(super) tear_out: Option<BrokenOut>,
    pub(super) marks: (Option<MarksReport>, Vec<Note>),
    pub(super) order: Order,
    pub(super) fall: FallReport,
    pub(super) as_built: Built,
}

impl Job {
    /// Works the parts out.
    pub(super) fn worked(
        &self,
        laid: &Laid,
        thickness: &Thickness,
        old_slab: Option<&OldSlab>,
    ) -> Result<Worked> {
        let Laid { survey, made, solution, heights } = *laid;
        let finish = &made.finish;
        let depth = self.finish.thinner_than.as_ref().map(|given| given.value);
        let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least).thickness;
        let verdict = old_slab.map(|old| &old.verdict);
        let over = Over { area: survey.facts().area, mean: thickness.mean, fill: thickness.fill };
        let mut fits = self.fits(survey, finish, heights)?;
        fits.extend(solution.into_iter().flat_map(|solution| solution.broken(self)));
        Ok(Worked {
            water: self.standing_water(survey, finish)?,
            drainage: self.drainage_report(survey, finish)?,
            approaches: self.approach_reports(finish, heights)?,
            zones: self.zone_reports(survey, finish, depth)?,
            sections: self.section_reports(survey, finish, heights)?,
            thin_zones: self.thin_zones_report(survey, finish, &fits)?,
            judged: self.judged(survey, finish, heights)?,
            overlay: self.overlay(Thick { least, mean: thickness.mean }, verdict)?,
            key_cuts: self.key_cuts_report(survey, finish)?,
            tear_out: self.tear_out(over, verdict)?,
            marks: self.marks_report(survey, finish, heights)?,
            order: self.order_for(thickness.fill)?,
            fall: self.fall_report(survey, finish)?,
            as_built: self.as_built_report(survey, finish)?,
            fits,
        })
    }
}

impl Worked {
    /// What the reader must know of the parts.
    pub(super) fn notes(&self, thickness: &Thickness) -> Vec<Note> {
        let mut notes = thickness.notes();
        let parts = [
            &self.water.1,
            &self.zones.1,
            &self.sections.1,
            &self.thin_zones.1,
            &self.as_built.1,
            &self.drainage.1,
            &self.approaches.notes,
            &clearance::notes(&self.judged),
            &self.marks.1,
        ];
        notes.extend(parts.into_iter().flatten().cloned());
        notes.extend(self.tear_out.iter().flat_map(|out| out.notes.iter().cloned()));
        notes
    }

    /// What was taken for them.
    pub(super) fn taken(&self) -> Vec<TakenReport> {
        let mut taken: Vec<TakenReport> = clearances::taken(&self.judged).into_iter().collect();
        taken.extend(self.overlay.iter().flat_map(|overlay| overlay.taken.iter().cloned()));
        taken.extend(self.tear_out.iter().flat_map(|out| out.taken.iter().cloned()));
        taken
    }

    /// Where their figures come from.
    pub(super) fn bases(&self) -> Vec<SaidBasis> {
        let mut bases: Vec<SaidBasis> = clearances::bases(&self.judged).into_iter().collect();
        bases.extend(self.overlay.iter().flat_map(|overlay| overlay.bases.iter().cloned()));
        bases.extend(key_cuts::bases(self.key_cuts.as_ref()));
        bases.extend(self.tear_out.iter().flat_map(|out| out.bases.iter().cloned()));
        bases
    }

    /// What can hurt.
    pub(super) fn cautions(&self) -> Vec<Caution> {
        let cut = key_cuts::caution(self.key_cuts.as_ref());
        let met = clearance::cautions(&self.judged);
        let broken = self.tear_out.iter().flat_map(|_| tear_out::CAUTIONS);
        cut.into_iter().chain(met).chain(broken).collect()
    }
}
