//! The least concrete among finishes whose heights and falls are whole steps: branch and bound over the linear program.

use super::problem::{Found, Problem, Solving, Unsolved};
use super::rows::Block;
use crate::linear::{BasisRow, REACH, Solver};

/// A height or a fall that comes in steps: `row . u = base + whole x step`.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Form {
    pub(super) row: Vec<f64>,
    pub(super) base: f64,
    pub(super) step: f64,
}

impl Form {
    /// How many steps the form is at.
    fn steps(&self, x: &[f64]) -> f64 {
        let value: f64 = self.row.iter().zip(x).map(|(a, b)| a * b).sum();
        (value - self.base) / self.step
    }
}

/// So many programs are solved at most.
const NODES: usize = 3_000;
/// A step is whole to within this share.
const WHOLE: f64 = 1e-7;

/// What the search came to.
#[derive(Clone, Debug)]
pub(super) struct Stepped {
    /// The best finish in whole steps.
    pub(super) found: Found,
    /// Whether none in whole steps takes less.
    pub(super) best: bool,
}

/// Searches. None where no finish in whole steps keeps the demands.
pub(super) fn search(
    problem: &mut Problem<'_, '_>,
    solver: &dyn Solver,
    forms: &[Form],
    from: &Found,
) -> Solving<Option<Stepped>> {
    let first = problem.rows.len();
    for form in forms {
        problem.rows.push(&form.row, -4.0 * REACH);
        let opposite: Vec<f64> = form.row.iter().map(|entry| -entry).collect();
        problem.rows.push(&opposite, -4.0 * REACH);
    }
    problem.steps = first..problem.rows.len();
    let mut search = Search { solver, forms, first, best: None, nodes: 0 };
    let found = search.below(problem, &from.optimum.basis);
    problem.steps = 0..0;
    found?;
    let best = search.nodes < NODES;
    Ok(search.best.map(|found| Stepped { found, best }))
}

struct Search<'s, 'f> {
    solver: &'s dyn Solver,
    forms: &'f [Form],
    first: usize,
    best: Option<Found>,
    nodes: usize,
}

impl Search<'_, '_> {
    /// Everything within the bounds of now.
    fn below(&mut self, problem: &mut Problem<'_, '_>, start: &[BasisRow]) -> Solving<()> {
        self.nodes += 1;
        if self.nodes > NODES {
            return Ok(());
        }
        let found = match problem.solve(self.solver, &|_: &Block| true, Some(start)) {
            Ok(found) => found,
            Err(Unsolved::Conflict) => return Ok(()),
            Err(failed) => return Err(failed),
        };
        let enough = |best: &Found| found.value >= best.value - 1e-9 * best.value.abs().max(1e-6);
        if self.best.as_ref().is_some_and(enough) {
            return Ok(());
        }
        let between = |form: &Form| {
            let steps = form.steps(&found.optimum.x);
            (steps - steps.round()).abs() > WHOLE
        };
        let Some(number) = self.forms.iter().position(between) else {
            self.best = Some(found);
            return Ok(());
        };
        let form = &self.forms[number];
        let steps = form.steps(&found.optimum.x);
        let (row, up, down) = (
            self.first + 2 * number,
            form.base + steps.ceil() * form.step,
            form.base + steps.floor() * form.step,
        );
        let basis = found.optimum.basis;
        self.with_bound(problem, row, up, &basis)?;
        self.with_bound(problem, row + 1, -down, &basis)
    }

    fn with_bound(
        &mut self,
        problem: &mut Problem<'_, '_>,
        row: usize,
        bound: f64,
        start: &[BasisRow],
    ) -> Solving<()> {
        let before = problem.rows.bound(row);
        problem.rows.set_bound(row, bound);
        let done = self.below(problem, start);
        problem.rows.set_bound(row, before);
        done
    }
}
