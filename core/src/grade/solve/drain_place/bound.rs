//! What no place of a cell can go under.
//!
//! With the level perimeter at h and the drain D >= 0 lower, the finish at p is z = h - D s(p; d) and the concrete A h - c D and a constant:
//! A is the area, c a third of the outline's area less the integral of s over the holes. Every demand at a place says something of
//! h and D alone, with numbers that hang on the drain's place d:
//!
//! | demand | row | over the cell | for one d, concave in d |
//! |---|---|---|---|
//! | finish at p held up at e | h - D s >= e | the least s | tangents of s ([`reach`](super::reach)) |
//! | held down at e | -h + D s >= -e | the greatest s | secants of s |
//! | finish at the drain | h - D >= old slab(d) + least | its least | a plane below it |
//! | least fall from corner q | D >= fall x dist(q, d) | the least distance | a tangent |
//! | greatest fall g on facet i | -D >= -g x dist(d, line i) | the greatest distance | itself: it is linear |
//!
//! Any p may be taken at which a demand holds for every d: more of them only raise the bound. Taken are the places where rows bind about one
//! d of the cell, with which the bound closes up as cells get smaller. What these rows cannot say is left out.
//!
//! First bound: the linear program over the cell. D being 0 or more, every row follows from the demands for each d of the cell.
//!
//! Second bound: with any weights w >= 0 of the rows, for each d and all h, D that keep them,
//! cost >= sum w b(d) + (A - sum w a) h + (-c(d) - sum w k(d)) D, where a and k are the coefficients of h and D. With tangents and secants
//! the right side is concave in d for D >= 0 and linear in D: it is least at a corner of the cell and at an end of the range of D, which
//! is found by the first program with the row that the cost is no more than that of the best place known. This errs by the square of
//! the cell's size where the first bound errs by its size. The weights come from the program for the one place, but any are good.
//!
//! No number is taken from the solver but weights; what is left of h is weighed by the farthest that any finish could be.

use super::super::problem::FARTHEST;
use super::allowed::Cell;
use super::exact::Over;
use super::relaxed::{For, Relaxed};
use crate::failure::Result;
use crate::geometry::Sum;
use crate::linear::{Outcome, Program, Rows};

/// Rows with their weights.
type Weights = Vec<(usize, f64)>;

impl Over<'_, '_> {
    /// The concrete that no place of the cell goes under, or the cutoff if that is less; infinite where no place keeps the demands, or
    /// none for less than the cutoff. The facets are those about the place of the cell.
    pub(super) fn bound(&self, cell: &Cell, cutoff: f64) -> Result<f64> {
        let relaxed = Relaxed::of(self, cell)?;
        let mut rows = relaxed.rows(For::All);
        let cost = relaxed.cost(For::All);
        let (first, weights) = self.least(&rows, cost);
        if first == f64::INFINITY || first >= cutoff {
            return Ok(first);
        }
        if cutoff < f64::INFINITY {
            rows.push(&cost.map(|entry| -entry), -cutoff);
        }
        let (least, most) = (self.least(&rows, [0.0, 1.0]).0, -self.least(&rows, [0.0, -1.0]).0);
        if least == f64::INFINITY {
            return Ok(f64::INFINITY);
        }
        let drops = [least.max(0.0), most.min(FARTHEST)];
        let (_, about) = self.least(&relaxed.rows(For::One(cell.place)), relaxed.cost(For::One(cell.place)));
        let second = [weights, about].map(|weights| touching(&relaxed, cell, &weights, drops));
        Ok(second.into_iter().fold(first, f64::max))
    }

    /// A certified least cost with its weights. Infinite for rows that contradict one another, less than anything where nothing
    /// is proved.
    fn least(&self, rows: &Rows, cost: [f64; 2]) -> (f64, Weights) {
        let blocks = rows.all();
        match self.work.solver.solve(&Program { cost: &cost, rows, blocks: &blocks }, None) {
            Outcome::Optimum(optimum) => {
                let weights: Weights = optimum.weights().filter(|(_, weight)| *weight > 0.0).collect();
                let (by, unproved) = weighed(rows, &weights, cost);
                (by - unproved, weights)
            }
            Outcome::Conflict(conflict) => {
                let weights: Weights =
                    conflict.weights.into_iter().filter(|(_, weight)| *weight > 0.0).collect();
                let (by, unproved) = weighed(rows, &weights, [0.0, 0.0]);
                (if by > unproved { f64::INFINITY } else { f64::NEG_INFINITY }, Weights::new())
            }
            Outcome::Stalled => (f64::NEG_INFINITY, Weights::new()),
        }
    }
}

/// What weighted rows add up to, and how much of the cost they leave, weighed by the farthest that any finish could be.
fn weighed(rows: &Rows, weights: &Weights, cost: [f64; 2]) -> (f64, f64) {
    let (mut left, mut by) = (cost, Sum::new());
    for &(row, weight) in weights {
        by.add(weight * rows.bound(row));
        left.iter_mut().zip(rows.row(row)).for_each(|(left, entry)| *left -= weight * entry);
    }
    (by.value(), left.iter().map(|left| left.abs() * FARTHEST).sum())
}

/// The second bound.
fn touching(relaxed: &Relaxed<'_, '_, '_>, cell: &Cell, weights: &Weights, drops: [f64; 2]) -> f64 {
    let at_corner = |&corner| {
        let ([mut h, mut drop], mut by) = (relaxed.cost(For::One(corner)), Sum::new());
        for &(number, weight) in weights {
            let (row, bound) = relaxed.row(number, For::One(corner));
            by.add(weight * bound);
            h -= weight * row[0];
            drop -= weight * row[1];
        }
        let of_drop = drops.map(|by| drop * by);
        by.value() + of_drop[0].min(of_drop[1]) - h.abs() * FARTHEST
    };
    cell.corners.iter().map(at_corner).fold(f64::INFINITY, f64::min)
}
