//! Where water stands on the finish, and which ponds of the old slab it cures.

pub(in crate::grade) mod faceted;
mod overlap;
#[cfg(test)]
mod tests;

use super::finish::Finish;
use crate::choice;
use crate::failure::Result;
use crate::geometry::{Plane, Region};
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Length, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{Edges, Ponds};
use overlap::Overlap;

choice! {
    /// What becomes of a pond of the old slab.
    pub enum Fate {
        /// The finish holds no water there.
        Cured = "cured",
        /// Water still stands on some of it.
        Left = "left",
    }
}

/// What becomes of a pond of the old slab under a finish.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Outcome {
    /// Whether it is cured.
    pub fate: Fate,
    /// The part of its area that is still under water.
    pub still: Area,
}

/// The ponds of a finish beside those of the old slab, with the same edges and drains for both.
#[derive(Clone, Debug)]
pub struct Cure {
    /// The ponds of the old slab.
    pub old: Ponds,
    /// What becomes of each.
    pub outcomes: Vec<Outcome>,
    /// The ponds of the finish.
    pub finish: Ponds,
    /// Whether each is new: over no pond of the old slab.
    pub new: Vec<bool>,
}

impl Cure {
    /// The ponds of the old slab and of a finish over it. A drain takes water at the height of either surface.
    ///
    /// # Errors
    /// As for [`Ponds::of_survey`].
    pub fn of(survey: &Survey, finish: &Finish, edges: &Edges, shallowest: Length) -> Result<Self> {
        let old = Ponds::of_survey(survey, edges, shallowest)?;
        let finish = of_finish(survey, finish, edges, shallowest)?;
        let overlap = Overlap::of(&old.waters, &finish.waters);
        let outcome = |&still: &f64| {
            let fate = if still > overlap::NOTHING { Fate::Left } else { Fate::Cured };
            Outcome { fate, still: Area::from_base(still) }
        };
        let outcomes = overlap.of_first.iter().map(outcome).collect();
        let new = overlap.of_second.iter().map(|&covered| covered <= overlap::NOTHING).collect();
        Ok(Self { old, outcomes, finish, new })
    }

    /// How many ponds of the old slab have this fate.
    #[must_use]
    pub fn count(&self, fate: Fate) -> usize {
        self.outcomes.iter().filter(|outcome| outcome.fate == fate).count()
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = self.finish.notes();
        let new = self.new.iter().filter(|&&new| new).count();
        if new > 0 {
            let text = format!(
                "{new} of the {} ponds on the finish stand where the old slab was dry",
                self.new.len()
            );
            notes.push(Note::new(NoteCode::NewPonds, text));
        }
        notes
    }
}

/// Where water stands on a finish over the outline of a survey.
///
/// # Errors
/// As for [`Ponds::of_survey`]; `FACETS_LEAVE_HOLE`.
pub fn of_finish(survey: &Survey, finish: &Finish, edges: &Edges, shallowest: Length) -> Result<Ponds> {
    let outline = survey.outline();
    finish.refuse_holes(outline.region())?;
    let network = faceted::network(outline.region(), &planes(finish));
    Ponds::of_network(network, outline, edges, shallowest)
}

/// The planes of a finish, each over its region, or over everything.
pub(in crate::grade) fn planes(finish: &Finish) -> Vec<(Option<&Region>, Plane)> {
    let everywhere = finish.plane().map(|plane| (None, *plane));
    let facets = finish.facets().iter().map(|facet| (Some(facet.region()), *facet.plane()));
    everywhere.into_iter().chain(facets).collect()
}
