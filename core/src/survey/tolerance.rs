//! How far measurements may disagree: what the caller states, or what practice takes instead.

use super::fixed::COMMON_PRACTICE;
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
    /// Whether it was taken because none was given.
    pub taken: bool,
}

impl Tolerance {
    /// The tolerance given, or the one taken instead.
    pub(super) fn given_or(port: &'static str, given: Option<Length>, practice: Length) -> Result<Self> {
        let value = match given {
            Some(value) => check(port, value, Range::NOT_NEGATIVE)?,
            None => practice,
        };
        Ok(Self { port, value, taken: given.is_none() })
    }

    /// Where the figure comes from.
    #[must_use]
    pub const fn basis(&self) -> &'static str {
        if self.taken { COMMON_PRACTICE } else { "given" }
    }

    /// Whether a difference is more than allowed.
    pub(super) fn exceeded_by(&self, difference: Length) -> bool {
        difference.base().abs() > self.value.base() + ROUNDING
    }
}
