//! Where points are halved, and where the hulls of both halves face one another.

use super::Links;
use super::divide::Axis;
use crate::geometry::Point;
use std::cmp::Ordering;

/// The order of two points across an axis. Points are numbered by x, then y.
#[inline]
fn across(points: &[Point], axis: Axis, a: u32, b: u32) -> Ordering {
    match axis {
        Axis::X => a.cmp(&b),
        Axis::Y => {
            let (p, q) = (points[a as usize], points[b as usize]);
            // Not by total order: a negative zero is no lower than zero.
            p.y.partial_cmp(&q.y).unwrap_or(Ordering::Equal).then(b.cmp(&a))
        }
    }
}

/// Halves points across an axis.
pub(super) fn halve<'a>(
    points: &[Point],
    order: &'a mut [u32],
    axis: Axis,
) -> (&'a mut [u32], &'a mut [u32]) {
    let middle = order.len() / 2;
    match axis {
        Axis::X => {
            order.select_nth_unstable(middle);
        }
        Axis::Y => {
            order.select_nth_unstable_by(middle, |&a, &b| across(points, axis, a, b));
        }
    }
    order.split_at_mut(middle)
}

impl Links {
    /// The clockwise hull half-edge out of the last point across an axis, from any half-edge with the outside on its left.
    pub(super) fn farthest(&self, points: &[Point], outside: u32, axis: Axis) -> u32 {
        let mut best = outside;
        let mut edge = self.around_left(outside);
        while edge != outside {
            if across(points, axis, self.from(edge), self.from(best)).is_gt() {
                best = edge;
            }
            edge = self.around_left(edge);
        }
        best
    }

    /// The counter-clockwise hull half-edge out of the first point across an axis.
    pub(super) fn nearest(&self, points: &[Point], outside: u32, axis: Axis) -> u32 {
        // The half-edge that arrives at a point clockwise leaves it, turned round, counter-clockwise.
        let mut best = outside;
        let mut edge = self.around_left(outside);
        while edge != outside {
            if across(points, axis, self.to(edge), self.to(best)).is_lt() {
                best = edge;
            }
            edge = self.around_left(edge);
        }
        best ^ 1
    }
}
