//! The dual simplex method over a basis of as many rows as unknowns.

use super::dense::{Dense, dot};
use super::{BasisRow, Conflict, HOLDS, Optimum, Outcome, Program, REACH};

/// An entry of a row in terms of the basis that is smaller than this is none.
const NONE: f64 = 1e-10;
/// After so many steps without gain the rows are taken in order, which cannot go round in circles.
const PATIENCE: usize = 40;

/// Answers a program.
pub(super) fn solve(program: &Program<'_>, start: Option<&[BasisRow]>) -> Outcome {
    let mut state =
        start.and_then(|basis| State::from(program, basis)).unwrap_or_else(|| State::cold(program));
    let most = 2_000 + 200 * state.width();
    let mut idle = 0;
    for _ in 0..most {
        let Some((row, broken)) = state.broken(program, idle > PATIENCE) else {
            match state.settle(program) {
                Settled::Already => return Outcome::Optimum(state.optimum()),
                Settled::Now => continue,
                Settled::Singular => return Outcome::Stalled,
            }
        };
        let entering = state.in_basis(program.rows.row(row));
        match state.leaving(&entering, idle > PATIENCE) {
            Some((place, step)) => {
                idle = if step * broken > 0.0 { 0 } else { idle + 1 };
                state.exchange(place, row, &entering, step, program);
            }
            // What drifted in many exchanges must not pass for a contradiction.
            None => match state.settle(program) {
                Settled::Already => return state.conflict(row, &entering),
                Settled::Now => {}
                Settled::Singular => return Outcome::Stalled,
            },
        }
    }
    Outcome::Stalled
}

/// Whether a state was worked out afresh since the last exchange.
enum Settled {
    Already,
    Now,
    Singular,
}

struct State {
    basis: Vec<BasisRow>,
    /// The inverse of the basis' rows, transposed: one row here per row of the basis.
    inverse: Dense,
    multipliers: Vec<f64>,
    x: Vec<f64>,
    settled: bool,
    /// Only one row of so many is looked at for now.
    every: usize,
}

/// Of more rows than this some are looked at first.
const MANY: usize = 8_192;
/// About so many of them.
const SOME: usize = 1_024;

impl State {
    /// The unknowns at their reach, where each costs least.
    fn cold(program: &Program<'_>) -> Self {
        let width = program.cost.len();
        let held = |(unknown, &cost): (usize, &f64)| match cost >= 0.0 {
            true => BasisRow::Low(unknown),
            false => BasisRow::High(unknown),
        };
        let basis: Vec<BasisRow> = program.cost.iter().enumerate().map(held).collect();
        let mut inverse = Dense::unit(width);
        for (place, row) in basis.iter().enumerate() {
            if matches!(row, BasisRow::High(_)) {
                inverse.row_mut(place)[place] = -1.0;
            }
        }
        let x =
            basis.iter().map(|row| if matches!(row, BasisRow::Low(_)) { -REACH } else { REACH }).collect();
        let multipliers = program.cost.iter().map(|cost| cost.abs()).collect();
        let count: usize = program.blocks.iter().map(ExactSizeIterator::len).sum();
        let every = if count > MANY { count / SOME } else { 1 };
        Self { basis, inverse, multipliers, x, settled: false, every }
    }

    /// From a basis of an earlier answer; none where it is no start for this program.
    fn from(program: &Program<'_>, basis: &[BasisRow]) -> Option<Self> {
        let counts = |row: &BasisRow| match *row {
            BasisRow::Row(row) => program.blocks.iter().any(|block| block.contains(&row)),
            _ => true,
        };
        if basis.len() != program.cost.len() || !basis.iter().all(counts) {
            return None;
        }
        let width = basis.len();
        let mut state = Self {
            basis: basis.to_vec(),
            inverse: Dense::unit(width),
            multipliers: vec![0.0; width],
            x: vec![0.0; width],
            settled: true,
            every: 1,
        };
        state.refresh(program)?;
        state.multipliers.iter().all(|&weight| weight >= -1e-12).then_some(state)
    }

    fn width(&self) -> usize {
        self.basis.len()
    }

    /// The worst broken row, or with patience at its end the first one.
    fn broken(&mut self, program: &Program<'_>, in_order: bool) -> Option<(usize, f64)> {
        if in_order {
            let mut slacks =
                program.blocks.iter().flat_map(|block| program.rows.slacks(block.clone(), &self.x));
            return slacks.find(|(_, slack)| *slack < -HOLDS).map(|(row, slack)| (row, -slack));
        }
        if let Some(found) = self.broken_among_some(program) {
            return Some(found);
        }
        let worst = program.blocks.iter().filter_map(|block| program.rows.worst(block.clone(), &self.x));
        let (row, slack) = worst.min_by(|a, b| a.1.total_cmp(&b.1))?;
        (slack < -HOLDS).then_some((row, -slack))
    }

    /// Of a great many rows, some are looked at as long as one of them is broken: that brings the unknowns near, and all rows
    /// are then looked at a few times only.
    fn broken_among_some(&mut self, program: &Program<'_>) -> Option<(usize, f64)> {
        if self.every <= 1 {
            return None;
        }
        let worst = program
            .blocks
            .iter()
            .filter_map(|block| program.rows.worst_of_some(block.clone(), self.every, &self.x));
        let found = worst.min_by(|a, b| a.1.total_cmp(&b.1)).filter(|(_, slack)| *slack < -HOLDS);
        if found.is_none() {
            self.every = 1;
        }
        found.map(|(row, slack)| (row, -slack))
    }

    /// A row as a sum of the basis' rows.
    fn in_basis(&self, row: &[f64]) -> Vec<f64> {
        self.inverse.times(row)
    }

    /// The place of the basis that gives way, and how far the entering multiplier then goes.
    fn leaving(&self, entering: &[f64], in_order: bool) -> Option<(usize, f64)> {
        let candidates = entering.iter().enumerate().filter(|(_, entry)| **entry > NONE);
        let steps = candidates.map(|(place, entry)| (place, self.multipliers[place].max(0.0) / entry));
        let least = steps.clone().map(|(_, step)| step).fold(f64::INFINITY, f64::min);
        let tied = steps.filter(|(_, step)| *step <= least * (1.0 + 1e-12));
        match in_order {
            true => tied.min_by_key(|&(place, _)| self.basis[place]),
            false => tied.max_by(|a, b| entering[a.0].total_cmp(&entering[b.0])),
        }
    }

    /// Puts a row in the place of another.
    fn exchange(&mut self, place: usize, row: usize, entering: &[f64], step: f64, program: &Program<'_>) {
        for (weight, entry) in self.multipliers.iter_mut().zip(entering) {
            *weight -= step * entry;
        }
        self.multipliers[place] = step;
        self.basis[place] = BasisRow::Row(row);
        let pivot: Vec<f64> = self.inverse.row(place).iter().map(|entry| entry / entering[place]).collect();
        for (other, share) in entering.iter().enumerate().filter(|(other, _)| *other != place) {
            for (entry, of_pivot) in self.inverse.row_mut(other).iter_mut().zip(&pivot) {
                *entry -= share * of_pivot;
            }
        }
        let broken = program.rows.slack(row, &self.x);
        for (unknown, of_pivot) in self.x.iter_mut().zip(&pivot) {
            *unknown -= broken * of_pivot;
        }
        self.inverse.row_mut(place).copy_from_slice(&pivot);
        self.settled = false;
    }

    /// Works inverse, unknowns and multipliers out afresh, unless they are.
    fn settle(&mut self, program: &Program<'_>) -> Settled {
        if self.settled {
            return Settled::Already;
        }
        self.settled = true;
        if self.refresh(program).is_some() { Settled::Now } else { Settled::Singular }
    }

    fn refresh(&mut self, program: &Program<'_>) -> Option<()> {
        let width = self.width();
        let mut rows = Dense::unit(width);
        for (place, row) in self.basis.iter().enumerate() {
            rows.row_mut(place).copy_from_slice(&coefficients(row, program));
        }
        let inverse = rows.inverse()?;
        let bounds: Vec<f64> = self.basis.iter().map(|row| bound(row, program)).collect();
        let mut x = inverse.times(&bounds);
        // One more round takes what the inverse rounded away.
        let left: Vec<f64> = (0..width).map(|place| bounds[place] - dot(rows.row(place), &x)).collect();
        for (unknown, more) in x.iter_mut().zip(inverse.times(&left)) {
            *unknown += more;
        }
        let mut multipliers = inverse.times_from_left(program.cost);
        let held = rows.times_from_left(&multipliers);
        let left: Vec<f64> = program.cost.iter().zip(&held).map(|(cost, held)| cost - held).collect();
        for (weight, more) in multipliers.iter_mut().zip(inverse.times_from_left(&left)) {
            *weight += more;
        }
        (self.x, self.multipliers, self.inverse) = (x, multipliers, inverse.transposed());
        Some(())
    }

    fn optimum(self) -> Optimum {
        Optimum {
            x: self.x,
            basis: self.basis,
            multipliers: self.multipliers.into_iter().map(|weight| weight.max(0.0)).collect(),
        }
    }

    /// The rows that contradict one another: the entering one and those it is less than nothing of.
    fn conflict(&self, row: usize, entering: &[f64]) -> Outcome {
        let held = self.basis.iter().zip(entering).filter_map(|(held, &entry)| match held {
            BasisRow::Row(held) if entry < -NONE => Some((*held, -entry)),
            _ => None,
        });
        Outcome::Conflict(Conflict { weights: std::iter::once((row, 1.0)).chain(held).collect() })
    }
}

fn coefficients(row: &BasisRow, program: &Program<'_>) -> Vec<f64> {
    let unit = |unknown: usize, sign: f64| {
        let mut row = vec![0.0; program.cost.len()];
        row[unknown] = sign;
        row
    };
    match *row {
        BasisRow::Row(row) => program.rows.row(row).to_vec(),
        BasisRow::Low(unknown) => unit(unknown, 1.0),
        BasisRow::High(unknown) => unit(unknown, -1.0),
    }
}

fn bound(row: &BasisRow, program: &Program<'_>) -> f64 {
    match *row {
        BasisRow::Row(row) => program.rows.bound(row),
        BasisRow::Low(_) | BasisRow::High(_) => -REACH,
    }
}
