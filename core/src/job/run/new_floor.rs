//! The new floor of a job, and what must be said beside it.

use super::old_slab::OldSlab;
use super::tear_out::{self, BrokenOut, Over};
use super::{Parts, approach, clearances, key_cuts, look_again, overlay, said_bases, under_finish};
use crate::basis::BasisId;
use crate::condition::Take;
use crate::failure::Result;
use crate::grade::thickness::Thickness;
use crate::job::finish::Made;
use crate::job::heights::Heights;
use crate::job::input::{Job, MarksInput};
use crate::job::report::{FallReport, NewFloor, SaidBasis};
use crate::job::solve::Solution;
use crate::job::taken::taken;
use crate::judged::Judged;
use crate::note::{Note, NoteCode};
use crate::order::list::Order;
use crate::quantity::{Typed, Volume, inches};
use crate::survey::Survey;

/// A finish laid over the old slab.
pub(super) struct Laid<'a> {
    /// The old slab, high spots ground off where the finish that is solved for takes it.
    pub(super) survey: &'a Survey,
    pub(super) made: &'a Made,
    pub(super) solution: Option<&'a Solution>,
    pub(super) heights: Heights,
}

impl Job {
    pub(super) fn thickness(&self, laid: &Laid) -> Result<Thickness> {
        let depth = self.finish.thinner_than.as_ref().map(|given| given.value);
        Thickness::of(laid.survey, &laid.made.finish, depth).map_err(under_finish)
    }

    /// The report with the new floor.
    pub(super) fn with_new_floor(
        &self,
        laid: &Laid,
        thickness: &Thickness,
        old_slab: Option<&OldSlab>,
    ) -> Result<Parts> {
        let Laid { survey, made, solution, heights } = *laid;
        let depth = self.finish.thinner_than.as_ref().map(|given| given.value);
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
        let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least).thickness;
        let verdict = old_slab.map(|old| &old.verdict);
        let overlay = self.overlay(overlay::Thick { least, mean: thickness.mean }, verdict)?;
        let keys = self.key_cuts_report(survey, &made.finish)?;
        let over = Over { area: survey.facts().area, mean: thickness.mean, fill: thickness.fill };
        let tear_out = self.tear_out(over, verdict)?;
        let (marks, mark_notes) = self.marks_report(survey, &made.finish, heights)?;
        let order = self.order_for(thickness.fill)?;
        let fall = self.fall_report(survey, &made.finish)?;
        let (as_built, built_notes, built_bases) = self.as_built_report(survey, &made.finish)?;
        let rounding = solution.map_or_else(|| Volume::from_base(0.0), Solution::rounding);
        let mut notes = thickness.notes();
        notes.extend(water_notes.into_iter().chain(zone_notes).chain(section_notes).chain(thin_notes));
        notes.extend(built_notes.into_iter().chain(drainage_notes).chain(approach_notes));
        notes.extend(crate::clearance::notes(&judged).into_iter().chain(mark_notes));
        notes.extend(tear_out.iter().flat_map(|out| out.notes.iter().cloned()));
        notes.extend(self.own_notes(&fall, made, &order));
        let taken = taken(self, survey, &survey.facts(), order.net, rounding)
            .into_iter()
            .chain(old_slab.into_iter().flat_map(OldSlab::taken))
            .chain(clearances::taken(&judged))
            .chain(overlay.iter().flat_map(|overlay| overlay.taken.clone()))
            .chain(tear_out.iter().flat_map(|out| out.taken.clone()));
        let bases = self
            .bases(&approach_bases, &built_bases)
            .into_iter()
            .chain(old_slab.into_iter().flat_map(OldSlab::bases))
            .chain(clearances::bases(&judged))
            .chain(overlay.iter().flat_map(|overlay| overlay.bases.clone()))
            .chain(key_cuts::bases(keys.as_ref()))
            .chain(tear_out.iter().flat_map(|out| out.bases.clone()));
        let met = crate::clearance::cautions(&judged);
        let cut = key_cuts::caution(keys.as_ref());
        let broken = tear_out.iter().flat_map(|_| tear_out::CAUTIONS);
        let cautions = cut.into_iter().chain(met).chain(broken).collect();
        Ok(Parts {
            standing_water,
            look_again: look_again::look_again(survey, &made.finish)?,
            taken: taken.collect(),
            notes,
            bases: bases.collect(),
            not_answered: self.not_answered(old_slab),
            cautions,
            new_floor: Some(NewFloor {
                conflict: solution.and_then(Solution::conflict_report),
                finish: self.finish_report(survey, (made, solution), heights, fall),
                thickness: self.thickness_report(survey, thickness),
                zones,
                sections,
                drainage,
                approaches,
                fits,
                clearances: clearances::clearance_reports(&judged, heights),
                solved: solution.map(|solution| self.solved_report(survey, solution, heights)).transpose()?,
                overlay: overlay.map(|overlay| overlay.report),
                key_cuts: keys,
                tear_out: tear_out.map(|BrokenOut { report, .. }| report),
                thin_zones,
                marks,
                order: self.order_report(&order, thickness.fill),
                rounding: self.rounding_report(survey, made, heights, thickness.net)?,
                as_built,
            }),
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
        let out = self.lacks_area(old_slab.map(|slab| &slab.verdict));
        let out = out.then_some("what breaking out takes: give the area of the parts as tear_out.area");
        verdict.into_iter().chain(out).chain(["joints", "the day", price]).map(str::to_owned).collect()
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

    fn bases(&self, approaches: &[BasisId], built: &[(String, BasisId)]) -> Vec<SaidBasis> {
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
        about.extend(approaches.iter().copied().map(|basis| ("approach", basis)));
        if self.finish.has_least() {
            about.push(("margin", BasisId::ThicknessMargin));
        }
        for rule in self.marks.iter().flat_map(MarksInput::bases) {
            about.push(rule);
        }
        about.extend([
            ("waste", BasisId::WasteAllowance),
            ("step", BasisId::PlantStep),
            ("truck", BasisId::TruckLoad),
        ]);
        about.extend(built.iter().map(|(about, basis)| (about.as_str(), *basis)));
        said_bases(about.into_iter().map(|(about, basis)| (about.to_owned(), basis)))
    }
}

/// Rounding by less than this is not told, in metres: 1/32 in.
const TOLD: f64 = 0.0254 / 32.0;
