//! What the reader of marks must know.

use super::levels::Reach;
use super::mark::Mark;
use super::{Marks, Part};
use crate::note::{Note, NoteCode};
use crate::quantity::{Typed, inches};
use crate::survey::surface::Ground;

impl Marks {
    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes: Vec<Note> = self.unread().collect();
        notes.extend(self.no_level());
        notes.extend(self.under_old_slab());
        notes.extend(self.extended());
        notes
    }

    /// Marks that cannot be read from a set-up.
    fn unread(&self) -> impl Iterator<Item = Note> + '_ {
        self.levels.sights.iter().filter_map(|sight| {
            let out =
                |mark: &&Mark| self.levels.reach(self.levels.rod_from(sight, mark.height)) != Reach::Within;
            let numbers: Vec<usize> = self.every().filter(out).map(|mark| mark.number).collect();
            let text = format!(
                "{} cannot be read from {}: set up again, lower or higher, or mark from the line",
                listed(&numbers),
                sight.name
            );
            (!numbers.is_empty()).then(|| Note::new(NoteCode::MarksOutOfReach, text))
        })
    }

    fn no_level(&self) -> Option<Note> {
        (self.levels.line.is_none() && self.levels.sights.is_empty()).then(|| {
            let text = "no reference line and no level are known: marks are told as elevations and heights over the old slab";
            Note::new(NoteCode::MarksWithoutLevel, text)
        })
    }

    fn under_old_slab(&self) -> Option<Note> {
        let under = self.every().filter(|mark| mark.over_old_slab.base() <= 0.0);
        let numbers: Vec<usize> = under.clone().map(|mark| mark.number).collect();
        let least = under.map(|mark| mark.over_old_slab).fold(
            None,
            |least: Option<crate::quantity::Length>, over| {
                Some(least.map_or(over, |least| if over < least { over } else { least }))
            },
        )?;
        let text = format!(
            "the old slab stands at or above the floor at {}, by up to {}",
            listed(&numbers),
            inches(-least, 8)
        );
        Some(Note::new(NoteCode::MarksUnderOldSlab, text))
    }

    fn extended(&self) -> Option<Note> {
        let all = self.every().count();
        let numbers = self.every().filter(|mark| mark.ground != Ground::Surveyed).count();
        (numbers > 0).then(|| {
            let text = format!(
                "at {numbers} of {all} marks the old slab was not shot but extended from the nearest shots: there the height over it is a guess, the mark is not"
            );
            Note::new(NoteCode::ChecksExtended, text)
        })
    }

    fn every(&self) -> impl Iterator<Item = &Mark> + Clone {
        let edges = self.edges.iter().flat_map(|edge| &edge.marks);
        edges.chain(&self.pads).chain(self.rails.iter().flat_map(|rail| &rail.marks))
    }
}

/// Numbers of marks in a sentence; of many the first.
fn listed(numbers: &[usize]) -> String {
    const SHOWN: usize = 8;
    let shown: Vec<String> = numbers.iter().take(SHOWN).map(ToString::to_string).collect();
    let more =
        if numbers.len() > SHOWN { format!(" and {} more", numbers.len() - SHOWN) } else { String::new() };
    let word = if numbers.len() == 1 { "mark" } else { "marks" };
    format!("{word} {}{more}", shown.join(", "))
}

impl Part {
    /// In the words of the site.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Edge => "edge",
            Self::Pad => "pad",
            Self::Rail => "rail",
        }
    }
}
