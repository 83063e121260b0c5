//! How far demands must give way before the rest can be kept.

use super::conflicts::Relaxed;
use super::demand::Wants;
use super::problem::Problem;
use crate::linear::{HOLDS, Optimum, Outcome, Program, Rows, Solver};
use crate::quantity::Typed;

/// Programs with one unknown more for each demand that gives way.
pub(super) struct Relaxing<'p, 'l, 'a, 's> {
    problem: &'p Problem<'l, 'a>,
    solver: &'s dyn Solver,
}

/// Planes that touch the cone of a greatest fall are added so many times.
const ROUNDS: usize = 200;

impl<'p, 'l, 'a, 's> Relaxing<'p, 'l, 'a, 's> {
    pub(super) fn over(problem: &'p Problem<'l, 'a>, solver: &'s dyn Solver) -> Self {
        Self { problem, solver }
    }

    /// The least change of one demand after which the others of a set can be kept with it, and with all that no set may blame.
    pub(super) fn alone(&mut self, demand: usize, kept: &[usize]) -> Option<Relaxed> {
        self.give_way(&[demand], kept)?.into_iter().next()
    }

    /// The changes of the least weighted sum after which all can be kept; those that need none are left out.
    pub(super) fn together(&mut self, free: &[usize]) -> Vec<Relaxed> {
        let mut all = self.give_way(free, free).unwrap_or_default();
        all.retain(|relaxed| relaxed.by > 1e-9);
        all
    }

    /// Lets demands of a list give way, the others of the list and all outside of `free` kept.
    fn give_way(&mut self, giving: &[usize], kept: &[usize]) -> Option<Vec<Relaxed>> {
        let problem = self.problem;
        let width = problem.layout.width();
        let (mut rows, mut cost) = (Rows::new(width + giving.len()), vec![0.0; width]);
        let mut row = Vec::with_capacity(width + giving.len());
        let free = |demand: usize| !problem.demands[demand].firm || problem.blames_firm();
        for block in &problem.blocks {
            let counts = block.demand.is_none_or(|demand| kept.contains(&demand) || !free(demand));
            if !counts {
                continue;
            }
            let column = block.demand.and_then(|demand| giving.iter().position(|&other| other == demand));
            for number in block.each() {
                row.clear();
                row.extend(&problem.rows.row(number)[..width]);
                row.resize(width + giving.len(), 0.0);
                if let Some(column) = column {
                    row[width + column] = block.share(number, problem.layout.size()).abs();
                }
                rows.push(&row, problem.rows.bound(number));
            }
        }
        for (column, &demand) in giving.iter().enumerate() {
            let demand = &problem.demands[demand];
            // Weights are per step: what gives way by one step counts as much as another.
            cost.push(demand.weight / demand.wants.measured().step());
            row.clear();
            row.resize(width + giving.len(), 0.0);
            row[width + column] = 1.0;
            rows.push(&row, 0.0);
            // No thickness and no fall gives way to less than none.
            let room = demand.wants.room(-1.0);
            if room.is_finite() {
                row[width + column] = -1.0;
                rows.push(&row, -room);
            }
        }
        let scale = cost.iter().fold(0.0_f64, |most, cost| most.max(*cost));
        cost.iter_mut().for_each(|cost| *cost /= scale.max(f64::MIN_POSITIVE));
        let found = self.cutting(&mut rows, &cost, giving, kept)?;
        let one = |(column, &demand): (usize, &usize)| Relaxed {
            demand,
            by: found.x[width + column].max(0.0),
            down: self.must_come_down(demand, &found.x),
        };
        Some(giving.iter().enumerate().map(one).collect())
    }

    /// Solves, adding planes to the cones that count until none is left.
    fn cutting(&self, rows: &mut Rows, cost: &[f64], giving: &[usize], kept: &[usize]) -> Option<Optimum> {
        let (problem, width) = (self.problem, self.problem.layout.width());
        for _ in 0..ROUNDS {
            let blocks = rows.all();
            let program = Program { cost, rows, blocks: &blocks };
            let Outcome::Optimum(found) = self.solver.solve(&program, None) else { return None };
            if found.unbounded() {
                return None;
            }
            let mut steep = Vec::new();
            for (number, demand) in problem.demands.iter().enumerate() {
                let Wants::Steepest { fall, on } = &demand.wants else { continue };
                if !kept.contains(&number) && (!demand.firm || problem.blames_firm()) {
                    continue;
                }
                let column = giving.iter().position(|&other| other == number);
                let gives = column.map_or(0.0, |column| found.x[width + column]);
                for facet in problem.layout.facets_of(on.as_deref()).unwrap_or_default() {
                    let plane = problem.layout.plane(facet, &found.x[..width]);
                    let (steepest, size) = (plane.steepest(), problem.layout.size());
                    if size * (steepest - fall.base() - gives) > HOLDS {
                        let away = [-plane.b() / steepest, -plane.c() / steepest];
                        let mut row = problem.layout.rise(facet, away);
                        row.resize(cost.len(), 0.0);
                        if let Some(column) = column {
                            row[width + column] = size;
                        }
                        steep.push((row, -size * fall.base()));
                    }
                }
            }
            if steep.is_empty() {
                return Some(found);
            }
            for (row, bound) in steep {
                rows.push(&row, bound);
            }
        }
        None
    }

    /// Whether heights to be had exactly are too high: the finish then lies below them.
    fn must_come_down(&self, demand: usize, x: &[f64]) -> bool {
        let problem = self.problem;
        if !matches!(problem.demands[demand].wants, Wants::Exactly(_)) {
            return false;
        }
        let width = problem.layout.width();
        let block = problem.blocks.iter().find(|block| block.demand == Some(demand));
        // The first row of each pair holds the height from below.
        block.into_iter().flat_map(|block| block.rows.clone().step_by(2)).any(|row| {
            let dot: f64 = problem.rows.row(row)[..width].iter().zip(x).map(|(a, b)| a * b).sum();
            dot < problem.rows.bound(row) - 1e-9
        })
    }
}
