//! How far measurements may disagree: what the caller states, or what practice takes instead.

use super::words::both_fine;
use crate::basis::BasisId;
use crate::failure::{Result, check};
use crate::quantity::{Length, Range, Typed};

/// Differences below this are rounding of the arithmetic, not of the tape or the rod: a nanometre, in metres.
const ROUNDING: f64 = 1.0e-9;

/// A tolerance that judged something.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tolerance {
    /// Where it stands in the input: `tolerances.recheck`.
    pub port: &'static str,
    /// The greatest difference allowed.
    pub value: Length,
    /// The practice it was taken from, because none was given.
    pub taken: Option<BasisId>,
}

impl Tolerance {
    /// The tolerance given, or the one that practice takes instead.
    pub(super) fn given_or(
        port: &'static str,
        given: Option<Length>,
        practice: Length,
        basis: BasisId,
    ) -> Result<Self> {
        match given {
            Some(value) => Ok(Self { port, value: check(port, value, Range::NOT_NEGATIVE)?, taken: None }),
            None => Ok(Self { port, value: practice, taken: Some(basis) }),
        }
    }

    /// The most that is allowed, in words for a failure.
    pub(super) fn words(&self) -> String {
        let from = if self.taken.is_some() { "common practice, no source" } else { "given" };
        format!("{} ({from})", both_fine(self.value))
    }

    /// Whether a difference is more than allowed.
    pub(super) fn exceeded_by(&self, difference: Length) -> bool {
        difference.base().abs() > self.value.base() + ROUNDING
    }
}
