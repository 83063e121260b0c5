//! Flatness and levelness of one line.

use super::factor::Factor;
use super::number::FNumber;
use super::profile::{Profile, Spacing};
use super::spread::Spread;
use crate::note::{Note, NoteCode};
use crate::quantity::Length;

/// Over how many spacings levelness is told: 10 ft of 12 in, 3 m of 300 mm.
pub const LAG: usize = 10;

/// The fewest readings of a line that the standard takes.
const STANDARD_READINGS: usize = 12;

/// One line in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct LineFlatness {
    /// How far apart the readings stand.
    pub spacing: Spacing,
    /// How many readings there are.
    pub readings: usize,
    /// Its length.
    pub length: Length,
    /// The bends.
    pub q: Spread,
    /// The rises over ten spacings.
    pub z: Spread,
    /// Flatness.
    pub ff: Option<FNumber>,
    /// Levelness; none of fewer than 12 readings.
    pub fl: Option<FNumber>,
}

impl LineFlatness {
    /// The numbers of a profile.
    #[must_use]
    pub fn of(profile: &Profile<'_>, factor: Factor) -> Self {
        Self::of_bends(profile, Spread::of(profile.q()), factor)
    }

    /// The same with the spread of the bends told apart.
    pub(super) fn of_bends(profile: &Profile<'_>, q: Spread, factor: Factor) -> Self {
        let z = Spread::of(profile.z());
        Self {
            spacing: profile.spacing,
            readings: profile.heights().len(),
            length: profile.length(),
            q,
            z,
            ff: FNumber::of(&q, factor.flatness()),
            fl: FNumber::of(&z, Factor::LEVELNESS),
        }
    }

    /// Whether the standard would take the line: long enough, with readings enough.
    #[must_use]
    pub fn is_standard(&self) -> bool {
        self.readings >= STANDARD_READINGS
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        if self.spacing == Spacing::Millimetres300 {
            notes.push(metric());
        }
        if !self.is_standard() {
            let text = format!(
                "{} readings: the standard takes lines of {STANDARD_READINGS} readings and 11 ft (3.3 m) or more",
                self.readings
            );
            notes.push(Note::new(NoteCode::ReadingsTooFew, text));
        }
        let perfect = |number: Option<FNumber>| number.is_some_and(|number| number.number().is_none());
        if perfect(self.ff) || perfect(self.fl) {
            let text =
                "the readings do not depart from their straight or level line: there is no finite F-number";
            notes.push(Note::new(NoteCode::PerfectLine, text));
        }
        notes
    }
}

/// What 300 mm do to `q`.
pub(super) fn metric() -> Note {
    let low = 100.0 * Spacing::Millimetres300.q_low_by();
    let text =
        format!("readings 300 mm apart: q is {low:.1} % low under the constant for 12 in, FF so much high");
    Note::new(NoteCode::ProfileMetric, text)
}
