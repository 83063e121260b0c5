//! What a report says beside its numbers: what was taken, notes, where rules come from.

use crate::note::Note;
use schemars::JsonSchema;
use serde::Serialize;

/// Something taken, not measured.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TakenReport {
    /// What.
    pub what: String,
    /// The value taken.
    pub value: String,
    /// Why.
    pub why: String,
}

/// A note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SaidNote {
    /// Its number.
    pub code: i32,
    /// Its name.
    pub name: String,
    /// Its words.
    pub text: String,
}

impl From<&Note> for SaidNote {
    fn from(note: &Note) -> Self {
        Self { code: note.code.number(), name: note.code.name().to_owned(), text: note.text.clone() }
    }
}

/// Where a rule comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SaidBasis {
    /// What it is about.
    pub about: String,
    /// Its name.
    pub basis: String,
    /// What it says and where from.
    pub says: String,
}
