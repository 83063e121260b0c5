//! The report over an old slab that spans free: the old slab, and what the new concrete would weigh; nothing of a new floor.

use super::old_slab::OldSlab;
use super::{Parts, look_again, said_bases};
use crate::basis::BasisId;
use crate::failure::Result;
use crate::job::input::Job;
use crate::job::taken::of_survey;
use crate::survey::Survey;

impl Job {
    /// The report without a new floor.
    pub(super) fn without_new_floor(&self, survey: &Survey, old_slab: &OldSlab) -> Result<Parts> {
        let (standing_water, notes) = self.standing_on_old(survey)?;
        let mut bases = said_bases([("heights".to_owned(), BasisId::Levelling)]);
        bases.extend(old_slab.bases());
        Ok(Parts {
            new_floor: None,
            standing_water,
            look_again: look_again::at_old_slab(survey, false)?,
            taken: of_survey(survey).into_iter().chain(old_slab.taken()).collect(),
            notes,
            bases,
            not_answered: vec!["any height, thickness or order: an engineer decides first".to_owned()],
            cautions: Vec::new(),
        })
    }
}
