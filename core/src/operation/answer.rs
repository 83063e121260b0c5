//! What an operation gives: results, notes, where each comes from, and what was taken.

use super::value::Value;
use crate::basis::BasisId;
use crate::note::{Note, NoteCode};

/// The answer of an operation.
#[derive(Clone, Debug, Default)]
pub struct Answer {
    /// One value per result port.
    pub results: Vec<Value>,
    /// What the reader must know.
    pub notes: Vec<Note>,
    /// Where a result comes from: its place, and the basis.
    pub basis: Vec<(usize, BasisId)>,
    /// The ports that were not given and whose fallback was taken.
    pub taken: Vec<usize>,
}

impl Answer {
    /// An answer of these results.
    #[must_use]
    pub fn of(results: impl Into<Vec<Value>>) -> Self {
        Self { results: results.into(), ..Self::default() }
    }

    /// With these notes.
    #[must_use]
    pub fn with_notes(mut self, notes: impl IntoIterator<Item = Note>) -> Self {
        self.notes.extend(notes);
        self
    }

    /// With a note of this kind.
    #[must_use]
    pub fn with_note(self, code: NoteCode, text: impl Into<String>) -> Self {
        self.with_notes([Note::new(code, text)])
    }
}
