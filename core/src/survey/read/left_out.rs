//! Points that a file holds and that were not used, counted by reason.

use crate::note::{Note, NoteCode};

crate::choice! {
    /// Why a point of a file was not used.
    pub enum Reason {
        /// A coordinate is not a number or not finite.
        NotFinite = "not_finite",
        /// Farther than a million kilometres from the origin: no survey.
        TooFar = "too_far",
        /// The place was not shot: `none` stands for its height.
        NotShot = "not_shot",
        /// It has a place in plan and no height.
        NoHeight = "no_height",
        /// The scanner marks it as invalid, or gives a direction without a distance.
        Invalid = "invalid",
        /// The file marks it as withheld or deleted.
        Withheld = "withheld",
        /// The file classes it as noise.
        Noise = "noise",
        /// The file classes it as something other than ground, and ground was asked for.
        NotGround = "not_ground",
    }
}

impl Reason {
    /// What the word means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::NotFinite => "a coordinate is not finite",
            Self::TooFar => "farther than a million kilometres from the origin",
            Self::NotShot => "the place was not shot",
            Self::NoHeight => "without a height",
            Self::Invalid => "marked as invalid by the scanner",
            Self::Withheld => "marked as withheld",
            Self::Noise => "classed as noise",
            Self::NotGround => "not classed as ground",
        }
    }
}

/// Points left out for one reason.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LeftOut {
    /// Why.
    pub reason: Reason,
    /// How many; at least one.
    pub count: u64,
}

/// Counts while reading.
#[derive(Clone, Debug, Default)]
pub(super) struct Counts(Vec<LeftOut>);

impl Counts {
    /// One more for this reason.
    pub(super) fn add(&mut self, reason: Reason) {
        match self.0.iter_mut().find(|left| left.reason == reason) {
            Some(left) => left.count += 1,
            None => self.0.push(LeftOut { reason, count: 1 }),
        }
    }

    /// The counts by reason in the order of the words, with a note if there are any.
    pub(super) fn finish(mut self, notes: &mut Vec<Note>) -> Vec<LeftOut> {
        self.0.sort_by_key(|left| left.reason as u8);
        if !self.0.is_empty() {
            notes.push(Note::new(NoteCode::PointsLeftOut, format!("left out: {}", said(&self.0))));
        }
        self.0
    }
}

/// `12 not finite, 3 marked as withheld`.
pub(super) fn said(left_out: &[LeftOut]) -> String {
    let parts: Vec<String> =
        left_out.iter().map(|left| format!("{} ({})", left.count, left.reason.meaning())).collect();
    parts.join(", ")
}
