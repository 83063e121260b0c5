//! The surveyed old slab: an outline, its shots, and the surface through them.

mod build;
mod faces;
mod facts;
mod misfit;
mod record;
mod refusal;
mod shots;
mod steps;
#[cfg(test)]
mod tests;
mod without;

pub use build::Settings;
pub use facts::{Facts, SlabPlace};
pub use record::SURVEY;
pub use shots::{Grid, Marks, Shots};

pub use super::precision::{Instrument, Texture};

use super::clean_up::Changed;
use super::level_book::ReducedBook;
use super::outline::Outline;
use super::surface::Surface;
use crate::note::Note;

/// The surveyed old slab. Built valid; everything it is asked afterwards it answers.
#[derive(Clone, Debug)]
pub struct Survey {
    outline: Outline,
    shots: Shots,
    surface: Surface,
    settings: Settings,
    book: Option<ReducedBook>,
    squareness: Option<String>,
    notes: Vec<Note>,
    changes: Vec<Changed>,
}

impl Survey {
    /// The plan edge of the work.
    #[must_use]
    pub const fn outline(&self) -> &Outline {
        &self.outline
    }

    /// The shots as they were read, by grid or one by one.
    #[must_use]
    pub const fn shots(&self) -> &Shots {
        &self.shots
    }

    /// The surface through the shots, after all changes.
    #[must_use]
    pub const fn surface(&self) -> &Surface {
        &self.surface
    }

    /// The words and allowances it was built with.
    #[must_use]
    pub const fn settings(&self) -> &Settings {
        &self.settings
    }

    /// The reduced level book, where rods were given.
    #[must_use]
    pub const fn book(&self) -> Option<&ReducedBook> {
        self.book.as_ref()
    }

    /// How well the outline's measurements agree, in words, where there is something to compare.
    #[must_use]
    pub fn squareness(&self) -> Option<&str> {
        self.squareness.as_deref()
    }

    /// What was done to the slab since it was shot, in order.
    #[must_use]
    pub fn changes(&self) -> &[Changed] {
        &self.changes
    }

    /// The same survey with its surface after one more change.
    pub(super) fn with_change(&self, surface: Surface, changed: Changed, notes: Vec<Note>) -> Self {
        let mut survey = Self { surface, ..self.clone() };
        survey.changes.push(changed);
        survey.notes.extend(notes);
        survey
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> &[Note] {
        &self.notes
    }
}
