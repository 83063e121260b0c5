//! Highest and lowest points, the same whatever the order they are looked through.

use super::tiling::Node;
use crate::geometry::Point;
use std::cmp::Ordering;

/// A highest or lowest point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extreme {
    /// The height (or thickness) there.
    pub value: f64,
    /// Where.
    pub at: Point,
    /// The shot, if it is at one.
    pub shot: Option<usize>,
}

/// Values that differ by no more are equally low, in metres: less than any instrument tells, more than rounding makes.
const TIE: f64 = 1e-9;

/// A place with a value.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Candidate {
    pub(crate) value: f64,
    pub(crate) at: Point,
    pub(crate) shot: Option<usize>,
}

impl Candidate {
    /// A value at a node, whose place is counted from an origin.
    #[inline]
    pub(crate) fn new(value: f64, node: &Node, origin: Point) -> Self {
        Self { value, at: Point::new(node.x + origin.x, node.y + origin.y), shot: node.shot() }
    }
}

/// The least of several values and where it is. Of equally low places a shot goes before other places, then the one
/// farthest to the left, then the nearest to the front.
pub(crate) fn least(candidates: impl Iterator<Item = Candidate> + Clone) -> Option<Extreme> {
    let value = candidates.clone().map(|candidate| candidate.value).reduce(f64::min)?;
    let Candidate { at, shot, .. } = candidates
        .filter(|candidate| candidate.value <= value + TIE)
        .reduce(|best, next| if prefer(&best, &next).is_gt() { next } else { best })?;
    Some(Extreme { value, at, shot })
}

fn prefer(a: &Candidate, b: &Candidate) -> Ordering {
    let along = |a: f64, b: f64| if (a - b).abs() <= TIE { Ordering::Equal } else { a.total_cmp(&b) };
    b.shot.is_some().cmp(&a.shot.is_some()).then(along(a.at.x, b.at.x)).then(along(a.at.y, b.at.y))
}
