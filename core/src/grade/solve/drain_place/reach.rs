//! Which facets a place may be on, seen from a cell of drain places, and what share of the drop it has there.
//!
//! On the facet from run i to the drain d the share of the drop is s = dist(p, line i) / dist(d, line i). Facet i is the triangle of
//! run i and d: for any d of a cell B, the convex hull of its corners, it lies in `reach i`, the hull of run i and B.
//! dist(d, line i) is linear in d and above 0 where all corners are seen, so over B it is least and greatest at corners of B, and
//! 1 / dist(d, line i) is convex in d: nowhere below its tangent, on B nowhere above its secant.

use super::allowed::Cell;
use crate::geometry::clip::Line;
use crate::geometry::predicates::{cross, turn};
use crate::geometry::{Point, Region, Run};
use crate::grade::finish::convex::hull;

/// A place so near to a reach, in metres, may lie in it.
const NEAR: f64 = 1e-7;

/// How a run is seen from a cell.
pub(super) struct Reach {
    pub(super) run: Run,
    line: Line,
    /// The least and the greatest distance of the cell from the line.
    pub(super) from_cell: [f64; 2],
    /// The hull of the run and the cell.
    pub(super) hull: Vec<Point>,
    /// Whether the outline turns left, or goes straight on, from this run into the next.
    turns_left: bool,
}

/// All runs as a cell sees them.
pub(super) struct Reaches {
    pub(super) each: Vec<Reach>,
    /// A place of the cell, about which tangents are laid.
    pub(super) about: Point,
}

/// A facet that a place may be on, and how far the place is from its run's line.
#[derive(Clone, Copy, Debug)]
pub(super) struct Seen {
    pub(super) reach: usize,
    pub(super) left: f64,
}

/// From which side a share of the drop is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Side {
    /// The share is no less.
    Low,
    /// The share is no more.
    High,
}

impl Reaches {
    pub(super) fn of(region: &Region, cell: &Cell) -> Self {
        let reach = |run: Run| {
            let line = Line::through(run.from, run.to);
            let left = cell.corners.iter().map(|at| line.left(at.x, at.y));
            let from_cell =
                left.fold([f64::INFINITY, 0.0_f64], |[low, high], at| [low.min(at), high.max(at)]);
            let mut corners = cell.corners.clone();
            corners.extend([run.from, run.to]);
            Reach { run, line, from_cell, hull: hull(&corners), turns_left: true }
        };
        let mut each: Vec<Reach> = region.outer().runs().map(reach).collect();
        let next: Vec<Point> =
            each.iter().cycle().skip(1).take(each.len()).map(|reach| reach.run.to).collect();
        for (reach, next) in each.iter_mut().zip(next) {
            reach.turns_left = turn(reach.run.from, reach.run.to, next) >= 0.0;
        }
        Self { each, about: cell.place }
    }

    /// The facets that a place may be on, as they count for one side; none for a place on no facet.
    ///
    /// Where only two facets about one corner are left, the corner's share is their lesser where the outline turns left there, else
    /// their greater: both are linear, alike on the edge between the facets, and each is the share on its own side of it. So one
    /// of the two alone tells the side on which both would be too many.
    pub(super) fn seen(&self, at: Point, side: Side) -> Vec<Seen> {
        let holding = self.each.iter().enumerate().filter(|(_, reach)| reach.holds(at));
        let mut seen: Vec<Seen> =
            holding.map(|(number, reach)| Seen { reach: number, left: reach.left(at) }).collect();
        if let [first, second] = *seen.as_slice()
            && let Some(turns_left) = self.corner_between(first.reach, second.reach)
            && turns_left == (side == Side::High)
        {
            let about = |seen: &Seen| seen.left / self.each[seen.reach].left(self.about);
            let first_is_nearer = (about(&first) <= about(&second)) == (side == Side::High);
            seen = vec![if first_is_nearer { first } else { second }];
        }
        seen
    }

    /// Whether the outline turns left at the corner that two runs share; none where they share none.
    fn corner_between(&self, first: usize, second: usize) -> Option<bool> {
        let follows = |one: usize, other: usize| (one + 1) % self.each.len() == other;
        if follows(first, second) {
            return Some(self.each[first].turns_left);
        }
        follows(second, first).then(|| self.each[second].turns_left)
    }

    /// The share, over the whole cell.
    pub(super) fn over_cell(&self, seen: &[Seen], side: Side) -> f64 {
        match side {
            Side::Low => least(seen, |seen| seen.left / self.each[seen.reach].from_cell[1]),
            Side::High => -least(seen, |seen| -(seen.left / self.each[seen.reach].from_cell[0]).min(1.0)),
        }
    }

    /// A function of the drain's place that is nowhere in the cell on the wrong side of the share: concave for the low side, convex for
    /// the high one.
    pub(super) fn touching(&self, seen: &[Seen], side: Side, drain: Point) -> f64 {
        match side {
            Side::Low => least(seen, |seen| {
                let reach = &self.each[seen.reach];
                let (at, about) = (reach.left(drain), reach.left(self.about));
                seen.left * (2.0 - at / about) / about
            }),
            Side::High => -least(seen, |seen| {
                let reach = &self.each[seen.reach];
                let [low, high] = reach.from_cell;
                -seen.left * (low + high - reach.left(drain)) / (low * high)
            }),
        }
    }
}

fn least(seen: &[Seen], of: impl Fn(&Seen) -> f64) -> f64 {
    seen.iter().map(of).fold(f64::INFINITY, f64::min)
}

impl Reach {
    /// How far a place is from the line of the run.
    pub(super) fn left(&self, at: Point) -> f64 {
        self.line.left(at.x, at.y).max(0.0)
    }

    /// Whether a place may be on the facet of the run.
    fn holds(&self, at: Point) -> bool {
        let mut sides = self.hull.iter().zip(self.hull.iter().cycle().skip(1));
        sides.all(|(from, to)| cross(*from, *to, at) >= -NEAR * from.distance(*to))
    }
}
