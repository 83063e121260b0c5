//! Small linear programs: a dozen unknowns, any number of rows.
//!
//! minimise `cost . x` subject to `a . x >= b` for every row, and `|x_j| <= reach`. The rows stand in blocks, so that a
//! question about some of them needs no copy. A dual simplex method: rows enter as they are found broken, so a solve looks at
//! all rows a few times and works with as many as there are unknowns; a changed bound starts from the last basis. It gives what
//! a price and a conflict need and a general solver does not hand out: the basis, the multipliers, and for a program without
//! answer the rows that contradict one another with their weights.

mod dense;
mod dual;
mod ray;
mod rows;
#[cfg(test)]
mod tests;

pub(crate) use dense::NullSpace;
pub(crate) use ray::{Near, Piece, Ray, Rise, Walk};
pub(crate) use rows::Rows;

use std::ops::Range;

/// A row of a basis: one of the program, or the reach of an unknown, which keeps every program bounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum BasisRow {
    /// A row of the program.
    Row(usize),
    /// The unknown stays above minus its reach.
    Low(usize),
    /// The unknown stays below its reach.
    High(usize),
}

/// A linear program over some blocks of the rows.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Program<'a> {
    /// What is to be least, per unknown.
    pub(crate) cost: &'a [f64],
    /// All rows.
    pub(crate) rows: &'a Rows,
    /// The rows that count.
    pub(crate) blocks: &'a [Range<usize>],
}

/// How far an unknown may go from 0, in metres: heights about the work's own, slopes over its half size.
pub(crate) const REACH: f64 = 1.0e4;

/// A row broken by less than this, in metres, holds.
pub(crate) const HOLDS: f64 = 1.0e-10;

/// What a program came to.
#[derive(Clone, Debug)]
pub(crate) enum Outcome {
    /// A least cost.
    Optimum(Optimum),
    /// Rows that contradict one another.
    Conflict(Conflict),
    /// The steps ran out: no answer is better than a wrong one.
    Stalled,
}

/// Where the cost is least.
#[derive(Clone, Debug)]
pub(crate) struct Optimum {
    /// The unknowns.
    pub(crate) x: Vec<f64>,
    /// The rows that fix them, as many as unknowns.
    pub(crate) basis: Vec<BasisRow>,
    /// How much the cost rises with each bound of the basis.
    pub(crate) multipliers: Vec<f64>,
}

impl Optimum {
    /// The cost.
    pub(crate) fn value(&self, cost: &[f64]) -> f64 {
        dense::dot(cost, &self.x)
    }

    /// Whether an unknown is held by its reach alone: nothing in the program bounds it.
    pub(crate) fn unbounded(&self) -> bool {
        let held = self.basis.iter().zip(&self.multipliers);
        held.clone().any(|(row, &weight)| !matches!(row, BasisRow::Row(_)) && weight > 1.0e-9)
    }

    /// The rows with their multipliers, without those of weight 0.
    pub(crate) fn weights(&self) -> impl Iterator<Item = (usize, f64)> + '_ {
        self.basis.iter().zip(&self.multipliers).filter_map(|(row, &weight)| match row {
            BasisRow::Row(row) if weight != 0.0 => Some((*row, weight)),
            _ => None,
        })
    }
}

/// Rows that no unknowns can keep together: weighted, they add up to `0 >= by` with `by > 0`.
#[derive(Clone, Debug)]
pub(crate) struct Conflict {
    /// The rows and their weights, all above 0.
    pub(crate) weights: Vec<(usize, f64)>,
}

/// A method that answers programs. The engine has one; the tests put a wrong one in its place, to see the proof fail.
pub(crate) trait Solver {
    /// Answers the program; from a basis of an earlier answer where one is given.
    fn solve(&self, program: &Program<'_>, start: Option<&[BasisRow]>) -> Outcome;
}

/// The dual simplex method.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct DualSimplex;

impl Solver for DualSimplex {
    fn solve(&self, program: &Program<'_>, start: Option<&[BasisRow]>) -> Outcome {
        dual::solve(program, start)
    }
}
