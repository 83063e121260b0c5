//! What the least cost does when bounds move together: its slope, and how far that slope holds.

use super::dense::dot;
use super::{BasisRow, DualSimplex, Optimum, Outcome, Program, Rows, Solver};
use std::ops::Range;

/// Rows whose bounds move alike, or each by its own.
#[derive(Clone, Debug)]
pub(crate) struct Piece<'a> {
    /// The rows.
    pub(crate) rows: Range<usize>,
    /// How much their bounds rise for every unit.
    pub(crate) rise: Rise<'a>,
}

/// How much bounds rise.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Rise<'a> {
    /// All alike.
    Same(f64),
    /// Each by its own, times a sign.
    Each(f64, &'a [f64]),
}

impl Piece<'_> {
    #[inline]
    fn rise(&self, row: usize) -> f64 {
        match self.rise {
            Rise::Same(rise) => rise,
            Rise::Each(sign, rises) => sign * rises[row - self.rows.start],
        }
    }
}

/// Bounds that move together. The pieces are all rows of the program.
#[derive(Clone, Debug)]
pub(crate) struct Ray<'a> {
    /// The rows with what they rise by.
    pub(crate) pieces: Vec<Piece<'a>>,
    /// The rows that matter for short ways, where there are very many.
    pub(crate) near: Option<&'a Near>,
    /// Nobody wants to know what is farther.
    pub(crate) farthest: f64,
}

/// Rows that are near to their bounds at an optimum.
#[derive(Clone, Debug)]
pub(crate) struct Near {
    rows: Vec<usize>,
    /// All others have more slack than this.
    slack: f64,
}

/// Fewer rows than this are all looked at.
const FEW: usize = 4_096;

impl Near {
    /// Those of the program; none where it has few rows.
    pub(crate) fn of(program: &Program<'_>, x: &[f64]) -> Option<Self> {
        let count: usize = program.blocks.iter().map(ExactSizeIterator::len).sum();
        if count <= FEW {
            return None;
        }
        // About so many rows are wanted; a sample tells how near those are.
        let every = count / FEW;
        let mut sample: Vec<f64> = (program.blocks.iter())
            .flat_map(|block| block.clone().step_by(every).map(|row| program.rows.slack(row, x)))
            .collect();
        // There are more rows than are wanted, so this is one of the sample.
        let wanted = sample.len() * FEW / count;
        let (_, slack, _) = sample.select_nth_unstable_by(wanted, f64::total_cmp);
        let slack = slack.max(2.0 * HELD);
        let mut near = Vec::new();
        for block in program.blocks {
            program.rows.visit(block.clone(), x, x, |row, own, _| {
                if own <= slack {
                    near.push(row);
                }
            });
        }
        Some(Self { rows: near, slack })
    }
}

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

impl Ray<'_> {
    fn rise(&self, row: usize) -> f64 {
        self.pieces.iter().find(|piece| piece.rows.contains(&row)).map_or(0.0, |piece| piece.rise(row))
    }

    /// The slope of the least cost along the ray from an optimum, and how far it holds.
    pub(crate) fn walk(&self, program: &Program<'_>, from: &Optimum) -> Walk {
        let mut place = Place { x: from.x.clone(), gone: 0.0, moved: 0.0 };
        let Some(mut step) = self.step(program, &place, &from.basis) else {
            return Walk { slope: f64::INFINITY, until: 0.0, direction: Vec::new() };
        };
        let (slope, direction) = (step.slope, step.direction.clone());
        let scale = program.cost.iter().fold(1e-300_f64, |most, cost| most.max(cost.abs()));
        for _ in 0..CORNERS {
            let reach = self.reach(program, &place, &step.direction);
            if place.gone + reach > self.farthest {
                return Walk { slope, until: self.farthest, direction };
            }
            if reach.is_infinite() {
                return Walk { slope, until: f64::INFINITY, direction };
            }
            place.go(reach, &step.direction, self.steepest(program, &step.direction));
            match self.step(program, &place, &step.basis) {
                Some(next) if (next.slope - slope).abs() <= SAME * scale => step = next,
                _ => break,
            }
        }
        Walk { slope, until: place.gone, direction }
    }

    /// How fast any row can come nearer to its bound.
    fn steepest(&self, program: &Program<'_>, direction: &[f64]) -> f64 {
        let rises = self.pieces.iter().map(|piece| match piece.rise {
            Rise::Same(rise) => rise.abs(),
            Rise::Each(_, rises) => rises.iter().fold(0.0_f64, |most, rise| most.max(rise.abs())),
        });
        let most = rises.fold(0.0_f64, f64::max);
        most + program.rows.largest() * direction.iter().map(|by| by.abs()).sum::<f64>()
    }

    /// The best way to move with the bounds from a place, held by the rows that are at their bounds there.
    fn step(&self, program: &Program<'_>, place: &Place, start: &[BasisRow]) -> Option<Step> {
        let held = self.held(program, place);
        let mut rows = Rows::new(program.cost.len());
        for &row in &held {
            rows.push(program.rows.row(row), self.rise(row));
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

    /// The rows at their bounds.
    fn held(&self, program: &Program<'_>, place: &Place) -> Vec<usize> {
        let at_bound = |slack: f64, rise: f64| (slack - place.gone * rise).abs() <= HELD;
        match self.near.filter(|near| place.moved + HELD < near.slack) {
            Some(near) => {
                let rows = near.rows.iter().copied();
                rows.filter(|&row| at_bound(program.rows.slack(row, &place.x), self.rise(row))).collect()
            }
            None => {
                let each = self.pieces.iter().flat_map(|piece| {
                    let slacks = program.rows.slacks(piece.rows.clone(), &place.x);
                    slacks.filter(move |&(row, slack)| at_bound(slack, piece.rise(row)))
                });
                each.map(|(row, _)| row).collect()
            }
        }
    }

    /// How far one can go until another row is at its bound.
    fn reach(&self, program: &Program<'_>, place: &Place, direction: &[f64]) -> f64 {
        let rows = program.rows;
        if let Some(near) = self.near {
            let nearest = near.rows.iter().fold(f64::INFINITY, |reach: f64, &row| {
                let rise = self.rise(row);
                let slack = rows.slack(row, &place.x) - place.gone * rise;
                shorter(reach, slack, rise - dot(rows.row(row), direction))
            });
            // Others are not reached before they could have come so near.
            if place.moved + nearest * self.steepest(program, direction) < near.slack {
                return nearest;
            }
        }
        let mut reach = f64::INFINITY;
        for piece in &self.pieces {
            rows.visit(piece.rows.clone(), &place.x, direction, |row, slack, rate| {
                let rise = piece.rise(row);
                reach = shorter(reach, slack - place.gone * rise, rise - rate);
            });
        }
        reach
    }
}

/// The reach, or what is left to a row that comes nearer if that is less.
#[inline]
fn shorter(reach: f64, slack: f64, nearer: f64) -> f64 {
    if slack > HELD && nearer > STILL && slack < reach * nearer { slack / nearer } else { reach }
}

/// Where a walk has come to.
struct Place {
    x: Vec<f64>,
    gone: f64,
    /// No row can have come nearer by more than this.
    moved: f64,
}

impl Place {
    fn go(&mut self, by: f64, direction: &[f64], steepest: f64) {
        for (unknown, of_unit) in self.x.iter_mut().zip(direction) {
            *unknown += by * of_unit;
        }
        self.gone += by;
        self.moved += by * steepest;
    }
}

struct Step {
    slope: f64,
    direction: Vec<f64>,
    basis: Vec<BasisRow>,
}
