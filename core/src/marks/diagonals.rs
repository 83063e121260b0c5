//! Lengths from corner to corner, to see whether forms and lines stand as planned.

use super::mark::{Mark, MarkKind};
use crate::quantity::{Length, Typed};

/// A length between two corners that are no neighbours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Diagonal {
    /// The number of the mark at one corner.
    pub from: usize,
    /// The number of the mark at the other.
    pub to: usize,
    /// How far apart they are.
    pub length: Length,
}

/// Both diagonals of four corners; from the first corner to all others that are no neighbours where there are more: with the sides
/// they fix the figure.
pub(super) fn diagonals(outer: &[&Mark]) -> Vec<Diagonal> {
    let corners: Vec<&&Mark> = outer.iter().filter(|mark| mark.kind == MarkKind::Corner).collect();
    let count = corners.len();
    let between = |a: usize, b: usize| {
        let (from, to) = (corners.get(a)?, corners.get(b)?);
        let length = Length::from_base(from.place().distance(to.place()));
        Some(Diagonal { from: from.number, to: to.number, length })
    };
    let mut found: Vec<Diagonal> =
        (2..count.saturating_sub(1)).filter_map(|other| between(0, other)).collect();
    if count == 4 {
        found.extend(between(1, 3));
    }
    found
}
