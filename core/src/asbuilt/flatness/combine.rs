//! One F-number for several lines, or for several sections.

use super::number::FNumber;
use crate::geometry::Sum;

/// A part of a whole: its number, and how much it weighs (readings of a line, area of a section).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Part {
    /// Its number.
    pub number: FNumber,
    /// Its weight, more than 0.
    pub weight: f64,
}

/// F = sqrt(sum w / sum(w / F²)); none without a part. Perfect parts weigh and add nothing below.
#[must_use]
pub fn combined(parts: impl Iterator<Item = Part>) -> Option<FNumber> {
    let (mut weight, mut squares) = (Sum::new(), Sum::new());
    for part in parts {
        let inverse = part.number.inverse();
        weight.add(part.weight);
        squares.add(part.weight * inverse * inverse);
    }
    let weight = weight.value();
    (weight > 0.0).then(|| FNumber::from_inverse((squares.value() / weight).sqrt()))
}
