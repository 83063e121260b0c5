//! An F-number, which a perfect line has none of.

use super::spread::Spread;
use crate::quantity::{Ratio, Typed};

/// A spread this small is none, in metres: a tenth of a micrometre, far under any reading.
const PERFECT: f64 = 1e-7;

/// An F-number, kept as one over it: that is 0 for a perfect line, which has no finite number.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct FNumber {
    inverse: f64,
}

impl FNumber {
    /// The number of a spread under a constant: constant / (3 deviations + |mean|). None of fewer than two readings.
    #[must_use]
    pub fn of(spread: &Spread, constant: f64) -> Option<Self> {
        let waviness = 3.0 * spread.deviation? + spread.mean.abs();
        Some(Self { inverse: if waviness > PERFECT { waviness / constant } else { 0.0 } })
    }

    /// The number that was found elsewhere; none for what is no number above 0.
    #[must_use]
    pub fn given(number: f64) -> Option<Self> {
        (number > 0.0 && number.is_finite()).then(|| Self { inverse: 1.0 / number })
    }

    pub(super) const fn from_inverse(inverse: f64) -> Self {
        Self { inverse }
    }

    /// One over it.
    #[must_use]
    pub const fn inverse(self) -> f64 {
        self.inverse
    }

    /// The number; none for a perfect line.
    #[must_use]
    pub fn number(self) -> Option<Ratio> {
        (self.inverse > 0.0).then(|| Ratio::from_base(1.0 / self.inverse))
    }

    /// Whether it is at least so much. A perfect line is.
    #[must_use]
    pub fn reaches(self, least: f64) -> bool {
        self.inverse * least <= 1.0
    }
}
