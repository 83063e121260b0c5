//! What the least cost does when bounds move together: its slope, and how far that slope holds.

use super::dense::dot;
use super::{BasisRow, DualSimplex, Optimum, Outcome, Program, Rows, Solver};

/// Bounds that move together: how much the bound of each row rises for every unit.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Ray<F>(pub(crate) F);

/// The slope of the least cost along a ray.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Walk {
    /// What the cost rises by per unit; infinite where the bounds cannot move that way at all.
    pub(crate) slope: f64,
    /// How far the slope holds: infinite for ever.
    pub(crate) until: f64,
    /// Which way the unknowns go per unit; empty where they cannot.
    pub(crate) direction: Vec<f64>,
}

/// A row this near to its bound, in metres, is held by it.
const HELD: f64 = 1e-9;
/// A row that comes nearer by less than this a unit does not come nearer.
const STILL: f64 = 1e-11;
/// Two slopes this near, against the cost, are one.
const SAME: f64 = 1e-9;
/// So many corners of one slope are looked behind.
const CORNERS: usize = 64;

impl<F: Fn(usize) -> f64> Ray<F> {
    /// The slope of the least cost along the ray from an optimum, and how far it holds.
    pub(crate) fn walk(&self, program: &Program<'_>, from: &Optimum) -> Walk {
        let Some(mut step) = self.step(program, &from.x, 0.0, &from.basis) else {
            return Walk { slope: f64::INFINITY, until: 0.0, direction: Vec::new() };
        };
        let (slope, direction) = (step.slope, step.direction.clone());
        let (mut x, mut gone) = (from.x.clone(), 0.0);
        let scale = program.cost.iter().fold(1e-300_f64, |most, cost| most.max(cost.abs()));
        for _ in 0..CORNERS {
            let reach = self.reach(program, &x, gone, &step.direction);
            if reach.is_infinite() {
                return Walk { slope, until: f64::INFINITY, direction };
            }
            for (unknown, by) in x.iter_mut().zip(&step.direction) {
                *unknown += reach * by;
            }
            gone += reach;
            match self.step(program, &x, gone, &step.basis) {
                Some(next) if (next.slope - slope).abs() <= SAME * scale => step = next,
                _ => break,
            }
        }
        Walk { slope, until: gone, direction }
    }

    /// The best way to move with the bounds from a place, held by the rows that are at their bounds there.
    fn step(&self, program: &Program<'_>, x: &[f64], gone: f64, start: &[BasisRow]) -> Option<Step> {
        let mut held = Vec::new();
        for block in program.blocks {
            let slacks = program.rows.slacks(block.clone(), x);
            held.extend(
                slacks
                    .filter(|&(row, slack)| (slack - gone * (self.0)(row)).abs() <= HELD)
                    .map(|(row, _)| row),
            );
        }
        let mut rows = Rows::new(program.cost.len());
        for &row in &held {
            rows.push(program.rows.row(row), (self.0)(row));
        }
        let to_held = |row: &BasisRow| match row {
            BasisRow::Row(row) => held.iter().position(|other| other == row).map(BasisRow::Row),
            other => Some(*other),
        };
        let start: Option<Vec<BasisRow>> = start.iter().map(to_held).collect();
        let blocks = rows.all();
        let local = Program { cost: program.cost, rows: &rows, blocks: &blocks };
        let Outcome::Optimum(found) = DualSimplex.solve(&local, start.as_deref()) else { return None };
        let back = |row: &BasisRow| match row {
            BasisRow::Row(row) => BasisRow::Row(held[*row]),
            other => *other,
        };
        Some(Step {
            slope: found.value(program.cost),
            basis: found.basis.iter().map(back).collect(),
            direction: found.x,
        })
    }

    /// How far one can go until another row is at its bound.
    fn reach(&self, program: &Program<'_>, x: &[f64], gone: f64, direction: &[f64]) -> f64 {
        let mut reach = f64::INFINITY;
        for block in program.blocks {
            for (row, slack) in program.rows.slacks(block.clone(), x) {
                let rise = (self.0)(row);
                let (slack, nearer) = (slack - gone * rise, rise - dot(program.rows.row(row), direction));
                if slack > HELD && nearer > STILL && slack < reach * nearer {
                    reach = slack / nearer;
                }
            }
        }
        reach
    }
}

struct Step {
    slope: f64,
    direction: Vec<f64>,
    basis: Vec<BasisRow>,
}
