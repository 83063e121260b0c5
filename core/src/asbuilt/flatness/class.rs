//! Classes of flatness, and whether a floor reaches one.

use super::factor::Factor;
use super::number::FNumber;
use super::profile::Spacing;
use crate::choice;
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Range, Ratio, Typed};

choice! {
    /// The classes of the tolerance standard for floors.
    pub enum Class {
        /// FF 20, FL 15.
        Conventional = "conventional",
        /// FF 25, FL 20.
        ModeratelyFlat = "moderately flat",
        /// FF 35, FL 25.
        Flat = "flat",
        /// FF 45, FL 35.
        VeryFlat = "very flat",
        /// FF 60, FL 40.
        SuperFlat = "super flat",
    }
}

choice! {
    /// Whether a number reaches what was asked.
    pub enum Verdict {
        /// It does.
        Meets = "meets",
        /// It does not.
        Short = "short",
        /// There are fewer readings than the standard judges by.
        TooFew = "too few to judge",
        /// It turns on a constant or a limit that is remembered, not read.
        Confirm = "confirm locally",
    }
}

/// A number that may be asked.
pub const ASKED: Range = Range::closed(1.0, 1000.0);

/// The share of the overall number that every section must reach.
const LOCAL: f64 = 0.6;

/// The least F-numbers, over all and of every section.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// The class, where it was asked by its word; else the numbers are the project's own.
    pub class: Option<Class>,
    /// Flatness over all.
    pub ff: f64,
    /// Levelness over all.
    pub fl: f64,
}

impl Class {
    /// Its least numbers over all.
    #[must_use]
    pub const fn limits(self) -> Limits {
        let (ff, fl) = match self {
            Self::Conventional => (20.0, 15.0),
            Self::ModeratelyFlat => (25.0, 20.0),
            Self::Flat => (35.0, 25.0),
            Self::VeryFlat => (45.0, 35.0),
            Self::SuperFlat => (60.0, 40.0),
        };
        Limits { class: Some(self), ff, fl }
    }
}

impl Limits {
    /// What is asked by a word or by two numbers; nothing where nothing is.
    ///
    /// # Errors
    /// `CONTRADICTION`: both; `KEY_MISSING`: one number of two; `OUT_OF_RANGE`.
    pub fn asked(class: Option<Class>, ff: Option<Ratio>, fl: Option<Ratio>) -> Result<Option<Self>> {
        match (class, ff, fl) {
            (None, None, None) => Ok(None),
            (Some(class), None, None) => Ok(Some(class.limits())),
            (None, Some(ff), Some(fl)) => {
                let ff = check("least_ff", ff, ASKED)?.base();
                Ok(Some(Self { class: None, ff, fl: check("least_fl", fl, ASKED)?.base() }))
            }
            (Some(class), ..) => Err(Failure::new(Code::Contradiction, "flatness_class")
                .written(format!("{} and numbers", class.word()))
                .allowed("a class or two numbers")
                .remedy("keep one of them")),
            (None, ff, _) => {
                Err(Failure::new(Code::KeyMissing, if ff.is_some() { "least_fl" } else { "least_ff" })
                    .written("nothing")
                    .allowed("flatness and levelness together")
                    .remedy("give both numbers"))
            }
        }
    }

    /// Flatness of every section.
    #[must_use]
    pub fn local_ff(&self) -> f64 {
        LOCAL * self.ff
    }

    /// Levelness of every section.
    #[must_use]
    pub fn local_fl(&self) -> f64 {
        LOCAL * self.fl
    }
}

/// Flatness and levelness held against what was asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Judged {
    /// Flatness.
    pub ff: Verdict,
    /// Levelness; none where it is not used, on a floor that falls.
    pub fl: Option<Verdict>,
}

impl Verdict {
    /// Flatness against a limit. Between the remembered constants, and within what 300 mm do to `q`, nothing is decided.
    #[must_use]
    pub fn of_flatness(number: Option<FNumber>, least: f64, spacing: Spacing, enough: bool) -> Self {
        let low = (1.0 - Factor::DOUBT) * (1.0 - spacing.q_low_by());
        Self::between(number, least / low, least * (1.0 - Factor::DOUBT), enough)
    }

    /// Levelness against a limit.
    #[must_use]
    pub fn of_levelness(number: Option<FNumber>, least: f64, enough: bool) -> Self {
        Self::between(number, least, least, enough)
    }

    fn between(number: Option<FNumber>, surely: f64, hardly: f64, enough: bool) -> Self {
        match number {
            Some(number) if enough && number.reaches(surely) => Self::Meets,
            Some(number) if enough && number.reaches(hardly) => Self::Confirm,
            Some(_) if enough => Self::Short,
            _ => Self::TooFew,
        }
    }
}
