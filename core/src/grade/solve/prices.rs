//! What each demand costs: the slope of the least cost when it is tightened or loosened, and how far that slope holds.

use super::demand::{Measured, Wants};
use super::problem::{Found, Problem};
use super::rows::Block;
use crate::linear::{Near, Program, Ray, Solver, Walk};
use crate::quantity::{Typed, Volume};
use std::ops::Range;

/// What one step of a demand does to the concrete, one way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Price {
    /// What the concrete rises by per step: 1/4 in, or 0.1 % of fall. None where the demand cannot go that way.
    pub concrete: Option<Volume>,
    /// What the cost rises by per step, in volume of concrete: with grinding another number than the concrete.
    pub cost: Option<Volume>,
    /// How far that holds, in metres or as a slope; none for ever. With grinding, or a greatest fall in any direction, prices change
    /// along the way: as far as this they are told to 1 %.
    pub holds: Option<f64>,
}

/// Both ways of a demand.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prices {
    /// Tightened: thicker, steeper, a greatest height lowered; a height to be had exactly raised.
    pub tighter: Price,
    /// Loosened: thinner, flatter, a greatest height raised; a height to be had exactly lowered.
    pub looser: Price,
}

/// The prices of a demand that does not bind: none, as far as its slack.
pub(super) fn unbound(problem: &Problem<'_, '_>, block: &Block, slack: f64) -> Prices {
    let none = |holds: f64| Price {
        concrete: Some(Volume::from_base(0.0)),
        cost: Some(Volume::from_base(0.0)),
        holds: holds.is_finite().then_some(holds),
    };
    let room = |sign: f64| wants(problem, block).map_or(f64::INFINITY, |wants| wants.room(sign));
    Prices { tighter: none(slack.min(room(1.0))), looser: none(room(-1.0)) }
}

fn wants<'p>(problem: &'p Problem<'_, '_>, block: &Block) -> Option<&'p Wants> {
    block.demand.and_then(|demand| problem.demands.get(demand)).map(|demand| &demand.wants)
}

/// What the prices of all demands at an answer have in common.
pub(super) struct Pricing<'p, 'l, 'a> {
    problem: &'p Problem<'l, 'a>,
    found: &'p Found,
    ranges: Vec<Range<usize>>,
    near: Option<Near>,
}

impl<'p, 'l, 'a> Pricing<'p, 'l, 'a> {
    pub(super) fn at(problem: &'p Problem<'l, 'a>, found: &'p Found) -> Self {
        let ranges = problem.ranges(|_| true);
        let program = Program { cost: &problem.cost, rows: &problem.rows, blocks: &ranges };
        let near = Near::of(&program, &found.optimum.x);
        Self { problem, found, ranges, near }
    }

    /// The prices of a block.
    pub(super) fn of(&self, block: &Block) -> Prices {
        let (problem, found) = (self.problem, self.found);
        let program = Program { cost: &problem.cost, rows: &problem.rows, blocks: &self.ranges };
        let wants = wants(problem, block);
        let restores = problem.prices_the_cost(block.demand);
        let one = |sign: f64| {
            // No thickness, fall or tolerance is less than none.
            let room = wants.map_or(f64::INFINITY, |wants| wants.room(sign));
            let pieces = problem.pieces(block, sign, restores);
            let ray = Ray { pieces, near: self.near.as_ref(), farthest: room };
            let mut walk = ray.walk(&program, &found.optimum);
            if room <= 0.0 {
                (walk.slope, walk.until) = (f64::INFINITY, 0.0);
            }
            price(problem, found, &walk, block.measured, if restores { sign } else { 0.0 })
        };
        Prices { tighter: one(1.0), looser: one(-1.0) }
    }
}

/// How much less than told a price may come to, as a share, where it changes along the way.
const CURVED: f64 = 0.01;
/// Ranges are tried up to this, in metres or as a slope, and halved so many times.
const FARTHEST_TRIED: f64 = 1.0;
const HALVINGS: usize = 24;

/// The prices of a block where no corners tell how far they hold: by solving again, nearer and nearer, until they do.
pub(super) fn tried(
    problem: &Problem<'_, '_>,
    found: &Found,
    block: &Block,
    prices: Prices,
    solver: &dyn Solver,
) -> Prices {
    let Some(demand) = block.demand else { return prices };
    let one = |mut price: Price, sign: f64| {
        let Some(slope) = price.cost.map(|cost| cost.base() / block.measured.step()) else { return price };
        // What saves nothing at first never does: the least cost is convex.
        if slope == 0.0 && sign < 0.0 {
            return price;
        }
        let as_told = |by: f64| {
            let value = problem.value_when(demand, sign * by, solver);
            let off = value.map(|value| (value - found.value - slope * by).abs());
            off.is_some_and(|off| {
                off <= CURVED * slope.abs() * by + 1e-8 * found.value.abs() + problem.hair()
            })
        };
        let first = price.holds.unwrap_or(FARTHEST_TRIED);
        let tried = (0..HALVINGS).map(|halved| first * 0.5_f64.powi(halved as i32));
        let holds = tried.take_while(|by| *by > 0.0).find(|by| as_told(*by)).unwrap_or(0.0);
        if price.holds.is_some() || holds < first {
            price.holds = Some(holds);
        }
        price
    };
    Prices { tighter: one(prices.tighter, 1.0), looser: one(prices.looser, -1.0) }
}

fn price(problem: &Problem<'_, '_>, found: &Found, walk: &Walk, measured: Measured, restored: f64) -> Price {
    if walk.slope.is_infinite() {
        return Price { concrete: None, cost: None, holds: Some(0.0) };
    }
    let step = measured.step();
    let concrete = problem.concrete_slope(&found.optimum.x, &walk.direction, restored).unwrap_or(walk.slope);
    Price {
        concrete: Some(Volume::from_base(none(step * concrete))),
        cost: Some(Volume::from_base(none(step * walk.slope))),
        holds: walk.until.is_finite().then_some(walk.until),
    }
}

/// A price that is rounding is none: a thousandth of a millilitre.
fn none(price: f64) -> f64 {
    if price.abs() < 1e-9 { 0.0 } else { price }
}
