//! The new floor of a job, and what must be said beside it.

use super::old_slab::OldSlab;
use super::worked::Worked;
use super::{Parts, clearances, look_again, said_bases, under_finish};
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
        let worked = self.worked(laid, thickness, old_slab)?;
        let mut notes = worked.notes(thickness);
        notes.extend(self.own_notes(&worked.fall, made, &worked.order));
        let rounding = solution.map_or_else(|| Volume::from_base(0.0), Solution::rounding);
        let mut taken = taken(self, survey, &survey.facts(), worked.order.net, rounding);
        taken.extend(old_slab.into_iter().flat_map(OldSlab::taken).chain(worked.taken()));
        let mut bases = self.bases(&worked);
        bases.extend(old_slab.into_iter().flat_map(OldSlab::bases).chain(worked.bases()));
        Ok(Parts {
            look_again: look_again::look_again(survey, &made.finish)?,
            taken,
            notes,
            bases,
            not_answered: self.not_answered(old_slab),
            cautions: worked.cautions(),
            new_floor: Some(NewFloor {
                conflict: solution.and_then(Solution::conflict_report),
                finish: self.finish_report(survey, (made, solution), heights, worked.fall),
                thickness: self.thickness_report(survey, thickness),
                zones: worked.zones.0,
                sections: worked.sections.0,
                drainage: worked.drainage.0,
                approaches: worked.approaches.reports,
                fits: worked.fits,
                clearances: clearances::clearance_reports(&worked.judged, heights),
                solved: solution.map(|solution| self.solved_report(survey, solution, heights)).transpose()?,
                overlay: worked.overlay.map(|overlay| overlay.report),
                key_cuts: worked.key_cuts,
                tear_out: worked.tear_out.map(|out| out.report),
                thin_zones: worked.thin_zones.0,
                marks: worked.marks.0,
                order: self.order_report(&worked.order, thickness.fill),
                rounding: self.rounding_report(survey, made, heights, thickness.net)?,
                as_built: worked.as_built.0,
            }),
            standing_water: worked.water.0,
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

    fn bases(&self, worked: &Worked) -> Vec<SaidBasis> {
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
        about.extend(worked.approaches.bases.iter().map(|basis| ("approach", *basis)));
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
        about.extend(worked.as_built.2.iter().map(|(about, basis)| (about.as_str(), *basis)));
        said_bases(about.into_iter().map(|(about, basis)| (about.to_owned(), basis)))
    }
}

/// Rounding by less than this is not told, in metres: 1/32 in.
const TOLD: f64 = 0.0254 / 32.0;
