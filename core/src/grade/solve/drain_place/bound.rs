//! What no place of a cell can go under.
//!
//! With the level perimeter at h and the drain D >= 0 lower, the finish at p is z = h - D s(p; d): on the facet from run i to the drain d,
//! s = dist(p, line i) / dist(d, line i). Over the outline the integral of s is a third of its area, for each facet is a triangle
//! with s = 1 at one corner and 0 at two: concrete = A h - D c + a constant, c = a third of the outline's area less what holes take.
//!
//! Let d be anywhere in a cell B, the convex hull of its corners.
//! - Facet i of d is the triangle of run i and d, and so lies in `reach i`, the hull of run i and B. If p is on facet i, then p is in
//!   reach i. dist(d, line i) is linear in d and above 0 where all corners are seen: over B it is least and greatest at corners
//!   of B. Hence the least of dist(p, line i) / (greatest of dist(B, line i)) over all i with p in reach i is a lower share
//!   `low(p) <= s(p; d)`, and the greatest of dist(p, line i) / (least of dist(B, line i)), at most 1, is `high(p) >= s(p; d)`.
//! - What holds the finish up at p, z >= e, says h - D s >= e and so, D being at least 0, h - D low(p) >= e. What holds it down, z <= e,
//!   leaves h - D high(p) <= e. Any p at which a demand holds for every d may be taken, and more of them only raise the bound: the
//!   places where rows bind about one d of the cell, with which the bound closes up as cells get smaller.
//! - The least fall from a corner q of the perimeter, D >= fall |q - d|, leaves D >= fall x (least distance of q from B).
//! - The slope of facet i is D / dist(d, line i): a greatest fall g leaves D <= g x (greatest of dist(B, line i)) for every i.
//! - c is at most a third of the outline's area less the integral of low over the holes ([`holes`](super::holes)).
//!
//! Two unknowns, h and D, are left in a linear program whose every row follows from the demands; what it cannot say is left out. Both only
//! lower its answer, so it is a bound. It is not taken from the solver: with weights w >= 0 of the rows a . u >= b, any u that
//! keeps them costs at least w . b + (cost - w A) . u.

use super::super::demand::{Heights, Wants};
use super::super::lines;
use super::super::problem::FARTHEST;
use super::allowed::Cell;
use super::exact::Over;
use super::holes;
use crate::failure::Result;
use crate::geometry::clip::Line;
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Region, Run, Sum};
use crate::grade::finish::Laid;
use crate::grade::finish::convex::hull;
use crate::linear::{Outcome, Program, Rows};
use crate::quantity::Typed;

/// Every row is loosened by this, in metres, against rounding.
const LOOSE: f64 = 1e-8;

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
}

/// All runs as a cell sees them.
pub(super) fn reaches(region: &Region, cell: &Cell) -> Vec<Reach> {
    let reach = |run: Run| {
        let line = Line::through(run.from, run.to);
        let left = cell.corners.iter().map(|at| line.left(at.x, at.y));
        let from_cell = left.fold([f64::INFINITY, 0.0_f64], |[low, high], at| [low.min(at), high.max(at)]);
        let mut corners = cell.corners.clone();
        corners.extend([run.from, run.to]);
        Reach { run, line, from_cell, hull: hull(&corners) }
    };
    region.outer().runs().map(reach).collect()
}

impl Reach {
    /// How far a place is from the line of the run.
    pub(super) fn left(&self, at: Point) -> f64 {
        self.line.left(at.x, at.y).max(0.0)
    }

    /// Whether a place may be on the facet of the run.
    fn holds(&self, at: Point) -> bool {
        let sides = self.hull.iter().zip(self.hull.iter().cycle().skip(1));
        sides.into_iter().all(|(from, to)| cross(*from, *to, at) >= -NEAR * from.distance(*to))
    }
}

/// The least and the greatest share of the drop that a place may have; none for one that is on no facet.
fn shares(reaches: &[Reach], at: Point) -> Option<[f64; 2]> {
    let each = reaches.iter().filter(|reach| reach.holds(at)).map(|reach| {
        let left = reach.left(at);
        [left / reach.from_cell[1], (left / reach.from_cell[0]).min(1.0)]
    });
    each.reduce(|[low, high], [least, most]| [low.min(least), high.max(most)])
}

/// The rows of the program in h, counted from the base of heights, and D.
struct Relaxed<'o, 'w, 'l> {
    over: &'o Over<'w, 'l>,
    reaches: Vec<Reach>,
    rows: Rows,
}

impl Over<'_, '_> {
    /// The concrete that no place of the cell goes under; infinite where none of them keeps the demands. The facets are those about a
    /// place of the cell.
    pub(super) fn bound(&self, cell: &Cell) -> Result<f64> {
        let region = self.layout.survey.surface().region();
        let mut relaxed = Relaxed { over: self, reaches: reaches(region, cell), rows: Rows::new(2) };
        relaxed.write(cell)?;
        let third = region.outer().area() / 3.0 - holes::least(region, &relaxed.reaches, cell.place);
        Ok(relaxed.answer(&[self.layout.laid.area(), -third]))
    }
}

impl Relaxed<'_, '_, '_> {
    fn write(&mut self, cell: &Cell) -> Result<()> {
        let (asked, layout) = (self.over.work.asked, &self.over.layout);
        self.row([0.0, 1.0], 0.0);
        for number in 0..self.reaches.len() {
            let from = self.reaches[number].run.from;
            self.row([0.0, 1.0], asked.fall.base() * distance(&cell.corners, from));
            if let Some(greatest) = asked.greatest_fall {
                self.row([0.0, -1.0], -greatest.base() * self.reaches[number].from_cell[1]);
            }
        }
        let margin = asked.margin.base();
        let mut held = false;
        for demand in asked.demands {
            match &demand.wants {
                Wants::LeastThickness { least, zone } => {
                    held |= zone.is_none();
                    self.over(zone.as_ref(), 1.0, least.base() + margin)?;
                }
                Wants::GreatestThickness { most, zone } => self.over(zone.as_ref(), -1.0, most.base())?,
                Wants::AtLeast(heights) => self.heights(heights, &[1.0])?,
                Wants::AtMost(heights) => self.heights(heights, &[-1.0])?,
                Wants::Exactly(heights) => self.heights(heights, &[1.0, -1.0])?,
                Wants::LeastFall { .. }
                | Wants::GreatestFall { .. }
                | Wants::Steepest { .. }
                | Wants::CrossFall { .. }
                | Wants::Level { .. } => {}
            }
        }
        if !held {
            self.thickness(&layout.laid, 1.0, 0.0);
        }
        Ok(())
    }

    fn row(&mut self, row: [f64; 2], bound: f64) {
        self.rows.push(&row, bound - LOOSE);
    }

    /// The finish at a place is at or above a height, counted from the base; for the sense -1 at or below it.
    fn hold(&mut self, at: Point, sense: f64, height: f64) {
        let Some([low, high]) = shares(&self.reaches, at) else { return };
        let share = if sense > 0.0 { low } else { high };
        self.row([sense, -sense * share], sense * height);
    }

    /// A thickness over the whole work or a zone.
    fn over(&mut self, zone: Option<&Region>, sense: f64, thickness: f64) -> Result<()> {
        let layout = &self.over.layout;
        match zone {
            None => self.thickness(&layout.laid, sense, thickness),
            Some(zone) => {
                let laid = layout.template.laid_within(layout.survey.surface(), zone)?;
                self.thickness(&laid, sense, thickness);
            }
        }
        Ok(())
    }

    /// At every corner of the old slab's triangles under each facet about the one place. Between the shots thickness binds for every
    /// other place too, for there it binds at all corners of the triangle that the place is in.
    fn thickness(&mut self, laid: &Laid<'_>, sense: f64, thickness: f64) {
        let base = self.over.layout.base();
        let beyond = self.over.work.asked.edges_bind
            || !laid.parts().iter().any(|part| part.ground.measured().next().is_some());
        for part in laid.parts() {
            let origin = part.ground.origin();
            for node in part.ground.nodes().iter().filter(|node| beyond || node.is_measured()) {
                let at = Point::new(node.x + origin.x, node.y + origin.y);
                self.hold(at, sense, node.z - base + thickness);
            }
        }
    }

    /// Heights along a line.
    fn heights(&mut self, heights: &Heights, senses: &[f64]) -> Result<()> {
        let height = heights.elevation.base() - self.over.layout.base();
        for on in lines::places(&self.over.layout, &heights.along)? {
            senses.iter().for_each(|&sense| self.hold(on.at, sense, height));
        }
        Ok(())
    }

    /// The bound, from the weights of the rows.
    fn answer(&self, cost: &[f64; 2]) -> f64 {
        let blocks = self.rows.all();
        let program = Program { cost, rows: &self.rows, blocks: &blocks };
        match self.over.work.solver.solve(&program, None) {
            Outcome::Optimum(optimum) => {
                let (by, unproved) =
                    self.weighed(optimum.weights().filter(|(_, weight)| *weight > 0.0), cost);
                by - unproved
            }
            Outcome::Conflict(conflict) => {
                let weights = conflict.weights.iter().copied().filter(|(_, weight)| *weight > 0.0);
                let (by, unproved) = self.weighed(weights, &[0.0, 0.0]);
                if by > unproved { f64::INFINITY } else { f64::NEG_INFINITY }
            }
            Outcome::Stalled => f64::NEG_INFINITY,
        }
    }

    /// What weighted rows add up to, and how much of the cost they leave, weighed by the farthest that any finish could be.
    fn weighed(&self, weights: impl Iterator<Item = (usize, f64)>, cost: &[f64; 2]) -> (f64, f64) {
        let (mut left, mut by) = (*cost, Sum::new());
        for (row, weight) in weights {
            by.add(weight * self.rows.bound(row));
            left.iter_mut().zip(self.rows.row(row)).for_each(|(left, entry)| *left -= weight * entry);
        }
        (by.value(), left.iter().map(|left| left.abs() * FARTHEST).sum())
    }
}

/// How far a place is from a cell at least.
fn distance(corners: &[Point], at: Point) -> f64 {
    let sides = || corners.iter().zip(corners.iter().cycle().skip(1));
    if corners.len() > 2 && sides().all(|(from, to)| cross(*from, *to, at) >= 0.0) {
        return 0.0;
    }
    let to_side = |(from, to): (&Point, &Point)| {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx * dx + dy * dy;
        let share = if length > 0.0 {
            (((at.x - from.x) * dx + (at.y - from.y) * dy) / length).clamp(0.0, 1.0)
        } else {
            0.0
        };
        at.distance(Point::new(from.x + share * dx, from.y + share * dy))
    };
    sides().map(to_side).fold(f64::INFINITY, f64::min)
}
