//! What a number may be.

use super::write::shortest;
use super::{QuantityType, Unit};

/// Bounds of a number, in base units. A function and its row in the table share one constant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// The lower bound.
    pub least: f64,
    /// Whether the lower bound itself is refused.
    pub open: bool,
    /// The upper bound, itself allowed.
    pub greatest: f64,
}

impl Range {
    /// Every finite number.
    pub const ANY: Self = Self { least: f64::NEG_INFINITY, open: false, greatest: f64::INFINITY };
    /// Zero and more.
    pub const NOT_NEGATIVE: Self = Self { least: 0.0, open: false, greatest: f64::INFINITY };
    /// More than zero.
    pub const POSITIVE: Self = Self { least: 0.0, open: true, greatest: f64::INFINITY };

    /// From the least to the greatest, both allowed.
    #[must_use]
    pub const fn closed(least: f64, greatest: f64) -> Self {
        Self { least, open: false, greatest }
    }

    /// More than zero, at most the greatest.
    #[must_use]
    pub const fn positive_to(greatest: f64) -> Self {
        Self { least: 0.0, open: true, greatest }
    }

    /// Whether the number may be so. NaN and infinities never may.
    #[inline]
    #[must_use]
    pub fn allows(&self, base: f64) -> bool {
        let low = if self.open { base > self.least } else { base >= self.least };
        low && base <= self.greatest && base.is_finite()
    }

    /// Whether every number may be so, without a branch for each.
    #[inline(always)]
    pub(crate) fn allows_all(&self, bases: &[f64]) -> bool {
        // Bounds that are themselves allowed and finite, so that two comparisons are all; NaN fails both.
        let least = if self.open { self.least.next_up() } else { self.least.max(f64::MIN) };
        let greatest = self.greatest.min(f64::MAX);
        bases.iter().fold(true, |all, &base| all & (base >= least) & (base <= greatest))
    }

    /// The bounds in words, in a unit: `more than 0 ft, at most 1000 ft`.
    #[must_use]
    pub fn words(&self, unit: &Unit) -> String {
        let say = |base: f64| format!("{} {}", shortest(even((unit.from_base)(base))), unit.symbol);
        let low = match (self.least.is_finite(), self.open) {
            (false, _) => None,
            (true, true) => Some(format!("more than {}", say(self.least))),
            (true, false) => Some(format!("at least {}", say(self.least))),
        };
        let high = self.greatest.is_finite().then(|| format!("at most {}", say(self.greatest)));
        match (low, high) {
            (Some(low), Some(high)) => format!("{low}, {high}"),
            (Some(one), None) | (None, Some(one)) => one,
            (None, None) => "a finite number".to_owned(),
        }
    }
}

/// A bound to twelve digits: 10 000 ft are 3048 m, and 3048 m are 9999.999999999998 ft only to a double.
fn even(bound: f64) -> f64 {
    format!("{bound:.11e}").parse().unwrap_or(bound)
}

/// The code for a number that a range refuses.
#[must_use]
pub fn refusal_code(base: f64, quantity: &QuantityType) -> crate::failure::Code {
    use crate::failure::Code;
    match (base.is_finite(), base < 0.0, quantity.sign) {
        (false, ..) => Code::NotFinite,
        (true, true, super::Sign::NotNegative) => Code::Negative,
        (true, ..) => Code::OutOfRange,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_are_allowed_where_each_is() {
        let ranges = [
            Range::ANY,
            Range::NOT_NEGATIVE,
            Range::POSITIVE,
            Range::closed(-1.0, 2.0),
            Range::positive_to(2.0),
            Range { least: 1.0, open: true, greatest: f64::INFINITY },
        ];
        let near = |bound: f64| [bound.next_down(), bound, bound.next_up()];
        let numbers = [-1.0, 0.0, 1.0, 2.0, f64::MAX, f64::MIN, 1.0e-300].map(near).concat();
        for number in numbers.into_iter().chain([f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -0.0]) {
            for range in ranges {
                assert_eq!(range.allows_all(&[1.5, number, 1.5]), range.allows(number), "{number} {range:?}");
            }
        }
    }
}
