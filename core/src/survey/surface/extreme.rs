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

/// Places that are equally low: of these a shot goes before other places, then the one farthest to the left, then
/// the nearest to the front.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Tied {
    value: f64,
    first: Option<(Point, Option<usize>)>,
}

impl Tied {
    /// Starts from the least value.
    pub(crate) fn at(value: f64) -> Self {
        Self { value, first: None }
    }

    /// Whether a value is as low as the least.
    #[inline]
    pub(crate) fn includes(&self, value: f64) -> bool {
        value <= self.value + TIE
    }

    /// Looks at another place as low, whose coordinates are counted from an origin.
    pub(crate) fn look(&mut self, node: &Node, origin: Point) {
        self.look_at(Point::new(node.x + origin.x, node.y + origin.y), node.shot());
    }

    /// Looks at another place as low, and the shot it is.
    pub(crate) fn look_at(&mut self, at: Point, shot: Option<usize>) {
        let next = (at, shot);
        if self.first.is_none_or(|first| prefer(&first, &next).is_gt()) {
            self.first = Some(next);
        }
    }

    /// The least value and where it is, if there was any place.
    pub(crate) fn extreme(self) -> Option<Extreme> {
        self.first.map(|(at, shot)| Extreme { value: self.value, at, shot })
    }
}

fn prefer(a: &(Point, Option<usize>), b: &(Point, Option<usize>)) -> Ordering {
    let along = |a: f64, b: f64| if (a - b).abs() <= TIE { Ordering::Equal } else { a.total_cmp(&b) };
    b.1.is_some().cmp(&a.1.is_some()).then(along(a.0.x, b.0.x)).then(along(a.0.y, b.0.y))
}
