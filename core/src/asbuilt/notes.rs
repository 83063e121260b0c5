//! What the reader of the floor as built must know.

use super::whole::AsBuilt;
use crate::judged::Judged;
use crate::note::{Note, NoteCode};

/// A note on the survey of the new floor, told apart from those on the old slab.
pub(crate) fn on_new_floor(note: &Note) -> Note {
    Note::new(note.code, format!("new floor: {}", note.text))
}

impl AsBuilt {
    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        let mut note = |code: NoteCode, text: String| notes.push(Note::new(code, text));
        let missed = self.deviations.missed();
        if !missed.is_empty() {
            let names: Vec<&str> = missed.iter().map(|shot| shot.name.as_str()).collect();
            note(NoteCode::MarksMissed, format!("off their marks: {}", names.join(", ")));
        }
        for check in self.checks.iter().filter(|check| check.judged == Judged::Fail) {
            note(NoteCode::NotAsPlanned, format!("{}: {}", check.about, check.said));
        }
        for check in self.checks.iter().filter(|check| check.judged == Judged::ConfirmLocally) {
            note(NoteCode::ConfirmLocally, format!("{}: {}: confirm locally", check.about, check.said));
        }
        if self.deviations.outside > 0 {
            let text =
                format!("{} shots outside the work have no plan to be held against", self.deviations.outside);
            note(NoteCode::ShotsOffPlan, text);
        }
        let unseen = self.puddles.iter().filter(|puddle| puddle.unseen_by_shots()).count();
        if unseen > 0 {
            let text = format!(
                "{unseen} puddles seen where the shots show no water: the floor waves between the shots"
            );
            note(NoteCode::PuddlesUnseen, text);
        }
        notes.extend(self.ponds.notes());
        notes.extend(self.thickness.notes());
        notes
    }
}
