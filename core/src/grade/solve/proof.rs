//! The proof of an answer, worked out from the demands and the surfaces, not taken from the solver.
//!
//! No answer is better: with weights w >= 0 of the rows a . u >= b, any u that keeps them costs at least
//! w . b + (c - w A) . u, and what is left of c - w A is weighed with the farthest that any finish could be. All demands are kept: the
//! slack of every row at the answer. The concrete is measured again between the finish itself and the old slab.

use super::grinding::Volumes;
use super::problem::{FARTHEST, Found, Problem};
use crate::failure::{Code, Failure, Result};
use crate::geometry::Sum;
use crate::quantity::{Length, Typed, Volume};

/// What was found when an answer was checked.
#[derive(Clone, Debug, PartialEq)]
pub struct Proof {
    /// The least slack of all rows: how far the demand that is kept most narrowly is from being broken. Less than nothing by rounding
    /// only.
    pub least_slack: Length,
    /// How many rows were looked at.
    pub rows: usize,
    /// The cost of the answer, in volume of concrete, measured between the two surfaces.
    pub cost: Volume,
    /// No finish that keeps the demands costs less than this.
    pub bound: Volume,
}

/// A row may be broken by so much, in metres: what rounding leaves.
const BROKEN: f64 = 1e-8;
/// Cost and bound agree to this share of the cost, linear programs and those with grinding.
const GAP: f64 = 1e-8;

impl Proof {
    /// How far the answer may be above the best, as a share of its cost.
    #[must_use]
    pub fn gap(&self) -> f64 {
        (self.cost - self.bound).base() / self.cost.base().abs().max(1e-9)
    }

    /// Checks an answer, whose volumes were measured between the finish and the old slab.
    pub(super) fn of(problem: &Problem<'_, '_>, found: &Found, volumes: Volumes) -> Result<Self> {
        let x = &found.optimum.x;
        let ranges = problem.ranges(|_| true);
        let (mut worst, mut rows) = (f64::INFINITY, 0);
        for range in &ranges {
            rows += range.len();
            if let Some((_, slack)) = problem.rows.worst(range.clone(), x) {
                worst = worst.min(slack);
            }
        }
        let mut left = problem.cost.clone();
        let mut dual = Sum::new();
        for (row, weight) in found.optimum.weights().filter(|(_, weight)| *weight > 0.0) {
            dual.add(weight * problem.rows.bound(row));
            left.iter_mut().zip(problem.rows.row(row)).for_each(|(left, entry)| *left -= weight * entry);
        }
        let unproved: f64 = left.iter().map(|left| left.abs() * FARTHEST).sum();
        let proof = Self {
            least_slack: Length::from_base(worst),
            rows,
            cost: Volume::from_base(problem.cost_of(volumes)),
            bound: Volume::from_base(dual.value() - unproved),
        };
        proof.holds(problem).then_some(proof.clone()).ok_or_else(|| proof.failed())
    }

    fn holds(&self, problem: &Problem<'_, '_>) -> bool {
        let scale = self.cost.base().abs().max(1e-3 * problem.area());
        self.least_slack.base() >= -BROKEN
            && (self.cost - self.bound).base().abs() <= GAP * scale + problem.hair()
    }

    fn failed(&self) -> Box<Failure> {
        Failure::new(Code::ProofFailed, "")
            .written(format!(
                "a demand broken by {:e} m, cost {} m3, bound {} m3",
                -self.least_slack.base(),
                self.cost.base(),
                self.bound.base()
            ))
            .allowed("an answer that is proved")
            .remedy("this is a fault of the library: please report the demands")
    }
}
