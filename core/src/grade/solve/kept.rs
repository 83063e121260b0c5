//! How each demand stands at the answer.

use super::asked::Asked;
use super::demand::{Demand, Measured};
use super::prices::{self, Prices, Pricing};
use super::problem::{Found, Problem};
use super::rows::Block;
use crate::geometry::Point;
use crate::geometry::predicates::cross;
use crate::linear::Solver;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::old_slab::SlabPlace;
use crate::survey::surface::Triangle;

/// A demand at the answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// Its name.
    pub name: String,
    /// What it is counted in.
    pub measured: Measured,
    /// Whether it is a habit of setting out, not the caller's.
    pub habit: bool,
    /// Whether it holds the planned finish: it stands at its limit.
    pub binds: bool,
    /// How far the planned finish is from its limit, in metres or as a slope.
    pub slack: f64,
    /// How far the built finish is from it.
    pub slack_built: f64,
    /// Where it binds: the old slab there; none beside the work.
    pub at: Option<SlabPlace>,
    /// What it costs.
    pub prices: Prices,
}

/// A demand this near to its limit, in metres over the work, stands at it.
const AT_LIMIT: f64 = 1e-8;

/// All demands at the planned answer.
pub(super) fn all(
    problem: &Problem<'_, '_>,
    planned: &Found,
    asked: &Asked<'_>,
    solver: &dyn Solver,
) -> Vec<Kept> {
    let pricing = Pricing::at(problem, planned);
    let each = problem.blocks.iter().filter_map(|block| {
        let number = block.demand?;
        let demand: &Demand = problem.demands.get(number)?;
        let (row, slack) = narrowest(problem, planned, block)?;
        let heaviest = planned.optimum.weights().filter(|(row, _)| owns(block, *row));
        let heaviest = heaviest.max_by(|a, b| a.1.total_cmp(&b.1)).map(|(row, _)| row);
        let binds = slack * share(problem, block, row) <= AT_LIMIT;
        let at = (binds && block.measured == Measured::Length)
            .then(|| problem.place(heaviest.unwrap_or(row)))
            .flatten();
        Some(Kept {
            name: demand.name.clone(),
            measured: block.measured,
            habit: number >= asked.demands.len(),
            binds,
            slack: clean(slack),
            slack_built: clean(slack),
            at: at.and_then(|at| on_slab(problem, at)),
            prices: {
                let prices = match binds || problem.prices_the_cost(block.demand) {
                    true => pricing.of(block),
                    false => prices::unbound(problem, block, slack),
                };
                match problem.is_curved() {
                    true => prices::tried(problem, planned, block, prices, solver),
                    false => prices,
                }
            },
        })
    });
    each.collect()
}

/// Puts in how far the built finish is from each limit.
pub(super) fn measure_built(kept: &mut [Kept], problem: &Problem<'_, '_>, built: &Found) {
    let blocks = problem.blocks.iter().filter(|block| block.demand.is_some());
    for (kept, block) in kept.iter_mut().zip(blocks) {
        if let Some((_, slack)) = narrowest(problem, built, block) {
            kept.slack_built = clean(slack);
        }
    }
}

fn owns(block: &Block, row: usize) -> bool {
    block.rows.contains(&row) || block.cuts.contains(&row)
}

/// The share by which a row counts its demand.
fn share(problem: &Problem<'_, '_>, block: &Block, row: usize) -> f64 {
    block.share(row, problem.layout.size()).abs().max(f64::MIN_POSITIVE)
}

/// The row of a block with the least slack, in what the demand is counted in.
fn narrowest(problem: &Problem<'_, '_>, found: &Found, block: &Block) -> Option<(usize, f64)> {
    let x = &found.optimum.x;
    let cone = problem.cone_slack(block, x).unwrap_or(f64::INFINITY);
    let slack = |row: usize| (row, cone.min(problem.rows.slack(row, x) / share(problem, block, row)));
    if block.cuts.is_empty() && matches!(block.shares, super::rows::Shares::Same(_)) {
        let (row, _) = problem.rows.worst(block.rows.clone(), x)?;
        return Some(slack(row));
    }
    block.each().map(slack).min_by(|a, b| a.1.total_cmp(&b.1))
}

/// What is rounding is nothing.
fn clean(slack: f64) -> f64 {
    if slack.abs() < 1e-10 { 0.0 } else { slack }
}

/// A place with the old slab under it, and the shot that it is; none beside the work, where there is no old slab.
fn on_slab(problem: &Problem<'_, '_>, at: Point) -> Option<SlabPlace> {
    let survey = problem.layout.survey;
    let whole = survey.surface().whole();
    let shot = whole.shots().find(|(_, place, _)| place.distance(at) < 1e-9);
    let height = shot.map(|(.., height)| height).or_else(|| {
        let plane =
            whole.triangles().filter(|triangle| holds(triangle, at)).find_map(|triangle| triangle.plane());
        plane.map(|plane| plane.height_at(at))
    })?;
    Some(SlabPlace {
        x: Length::from_base(at.x),
        y: Length::from_base(at.y),
        elevation: Elevation::from_base(height),
        shot: shot.map(|(number, ..)| survey.shots().name(number)),
    })
}

/// Whether a place lies in a triangle, or on its side but for rounding.
fn holds(triangle: &Triangle, at: Point) -> bool {
    let [a, b, c] = triangle.corners.map(|corner| corner.at);
    [(a, b), (b, c), (c, a)].into_iter().all(|(from, to)| cross(from, to, at) >= -1e-9)
}
