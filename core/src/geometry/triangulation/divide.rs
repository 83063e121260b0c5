//! Divide and conquer: triangulate both halves, then zip them together.
//!
//! A great many points are halved across x and across y in turn (after Dwyer 1987): halves that are about square have
//! short seams, and few of their edges are taken out again. A few points are halved across x alone.

use super::seams::halve;
use super::{Links, NONE};
use crate::geometry::Point;
use crate::geometry::predicates::{cross, in_circle, in_circle_exactly, turn};

/// Up to so many points are halved across x alone.
const FEW: usize = 48;

/// Triangulates two or more sorted points; gives a hull half-edge with the outside on its left.
///
/// With `EXACT` circles it always succeeds; otherwise it gives up when rounding leads it in circles.
pub(super) fn triangulate<const EXACT: bool>(points: &[Point]) -> Option<(Links, u32)> {
    let depth = usize::BITS - points.len().leading_zeros();
    let mut work = Work::<EXACT> {
        points,
        links: Links::with_capacity(3 * points.len()),
        steps: 8 * points.len() * (depth as usize + 2),
    };
    let mut order: Vec<u32> = (0..points.len() as u32).collect();
    let outside = work.square(&mut order, Axis::X)?;
    Some((work.links, outside))
}

/// The axis across which points are halved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Axis {
    X,
    /// Seen from the left: along y first, then back along x.
    Y,
}

/// Whether the three are so nearly on one line that a point far from their circle can hide in the rounding.
fn is_sliver(a: Point, b: Point, c: Point) -> bool {
    let square = |p: Point, q: Point| (p.x - q.x) * (p.x - q.x) + (p.y - q.y) * (p.y - q.y);
    let longest = square(a, b).max(square(b, c)).max(square(c, a));
    cross(a, b, c).abs() < 1e-6 * longest
}

struct Work<'a, const EXACT: bool> {
    points: &'a [Point],
    links: Links,
    /// How many more edges may be made before giving up.
    steps: usize,
}

impl<const EXACT: bool> Work<'_, EXACT> {
    #[inline]
    fn point(&self, index: u32) -> Point {
        self.points[index as usize]
    }

    #[inline]
    fn left_of(&self, point: u32, edge: u32) -> bool {
        turn(self.point(point), self.point(self.links.from(edge)), self.point(self.links.to(edge))) > 0.0
    }

    #[inline]
    fn right_of(&self, point: u32, edge: u32) -> bool {
        turn(self.point(point), self.point(self.links.to(edge)), self.point(self.links.from(edge))) > 0.0
    }

    #[inline(always)]
    fn inside(a: Point, b: Point, c: Point, d: Point) -> bool {
        let (determinant, bound) = in_circle(a, b, c, d);
        if determinant.abs() > bound { determinant > 0.0 } else { Self::barely_inside(a, b, c, d) }
    }

    /// Decides what rounding could not.
    #[cold]
    fn barely_inside(a: Point, b: Point, c: Point, d: Point) -> bool {
        (EXACT || is_sliver(a, b, c)) && in_circle_exactly(a, b, c, d) > 0.0
    }

    /// Triangulates points by their numbers; gives a hull half-edge with the outside on its left.
    fn square(&mut self, order: &mut [u32], axis: Axis) -> Option<u32> {
        if order.len() <= FEW {
            // Their numbers rise with x.
            order.sort_unstable();
            return self.part(order).map(|(left, _)| left ^ 1);
        }
        let (low, high) = halve(self.points, order, axis);
        let other = if axis == Axis::X { Axis::Y } else { Axis::X };
        let low = self.square(low, other)?;
        let high = self.square(high, other)?;
        let low = self.links.farthest(self.points, low, axis);
        let high = self.links.nearest(self.points, high, axis);
        let (low, high) = self.lower_tangent(low, high);
        self.sew(low, high)
    }

    /// Triangulates points by their numbers, which rise: the hull half-edge out of the leftmost point counter-clockwise,
    /// and the one out of the rightmost clockwise.
    fn part(&mut self, order: &[u32]) -> Option<(u32, u32)> {
        match *order {
            [a, b] => Some(self.two(a, b)),
            [a, b, c] => Some(self.three([a, b, c])),
            _ => {
                let (left, right) = order.split_at(order.len() / 2);
                let left = self.part(left)?;
                let right = self.part(right)?;
                self.zip(left, right)
            }
        }
    }

    fn two(&mut self, a: u32, b: u32) -> (u32, u32) {
        let edge = self.links.add(a, b);
        (edge, edge ^ 1)
    }

    fn three(&mut self, [first, second, third]: [u32; 3]) -> (u32, u32) {
        let a = self.links.add(first, second);
        let b = self.links.add(second, third);
        self.links.insert_after(b, a ^ 1);
        let turned = turn(self.point(first), self.point(second), self.point(third));
        if turned == 0.0 {
            return (a, b ^ 1);
        }
        let c = self.links.connect(b, a);
        if turned > 0.0 { (a, b ^ 1) } else { (c ^ 1, c) }
    }

    fn zip(&mut self, left: (u32, u32), right: (u32, u32)) -> Option<(u32, u32)> {
        let (mut left_outer, left_inner) = left;
        let (right_inner, mut right_outer) = right;
        let (left_inner, right_inner) = self.lower_tangent(left_inner, right_inner);
        // Asked before the edges are sewn over: they may be taken out then.
        let at_left = self.links.from(left_inner) == self.links.from(left_outer);
        let at_right = self.links.from(right_inner) == self.links.from(right_outer);
        let base = self.sew(left_inner, right_inner)?;
        if at_left {
            left_outer = base ^ 1;
        }
        if at_right {
            right_outer = base;
        }
        Some((left_outer, right_outer))
    }

    /// Sews two halves together from their lower tangent to the upper; gives the lower, which has the outside on its left.
    fn sew(&mut self, left: u32, right: u32) -> Option<u32> {
        let lowest = self.links.connect(right ^ 1, left);
        let mut base = lowest;
        while let Some(rung) = self.next_rung(base) {
            base = rung;
            self.steps = self.steps.checked_sub(1)?;
        }
        Some(lowest)
    }

    /// Walks down both hulls to the line that touches both from below.
    fn lower_tangent(&self, mut left: u32, mut right: u32) -> (u32, u32) {
        loop {
            if self.left_of(self.links.from(right), left) {
                left = self.links.around_left(left);
            } else if self.right_of(self.links.from(left), right) {
                right = self.links.next(right ^ 1);
            } else {
                return (left, right);
            }
        }
    }

    /// The next edge across, above `base` (which runs from right to left); none at the upper tangent.
    #[inline]
    fn next_rung(&mut self, base: u32) -> Option<u32> {
        let (start, end) = (self.point(self.links.from(base)), self.point(self.links.to(base)));
        let (left, l) = self.left_candidate(base, start, end);
        let (right, r) = self.right_candidate(base, start, end);
        let right_first = match (left, right) {
            (NONE, NONE) => return None,
            (NONE, _) => true,
            (_, NONE) => false,
            _ => Self::inside(l, end, start, r),
        };
        if right_first {
            Some(self.links.connect(right, base ^ 1))
        } else {
            Some(self.links.connect(base ^ 1, left ^ 1))
        }
    }

    /// The edge out of the left end of `base` whose triangle with it is empty on the left, or none above it.
    #[inline]
    fn left_candidate(&mut self, base: u32, start: Point, end: Point) -> (u32, Point) {
        let mut edge = self.links.next(base ^ 1);
        let mut ahead = self.point(self.links.to(edge));
        if turn(ahead, end, start) <= 0.0 {
            return (NONE, ahead);
        }
        loop {
            let after = self.links.next(edge);
            let next = self.point(self.links.to(after));
            if after == base ^ 1 || !Self::inside(end, start, ahead, next) {
                return (edge, ahead);
            }
            self.links.remove(edge);
            (edge, ahead) = (after, next);
        }
    }

    /// The same on the right.
    #[inline]
    fn right_candidate(&mut self, base: u32, start: Point, end: Point) -> (u32, Point) {
        let mut edge = self.links.previous(base);
        let mut ahead = self.point(self.links.to(edge));
        if turn(ahead, end, start) <= 0.0 {
            return (NONE, ahead);
        }
        loop {
            let after = self.links.previous(edge);
            let next = self.point(self.links.to(after));
            if after == base || !Self::inside(end, start, ahead, next) {
                return (edge, ahead);
            }
            self.links.remove(edge);
            (edge, ahead) = (after, next);
        }
    }
}
