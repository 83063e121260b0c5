//! The program of a set of demands, and its answer.
//!
//! What is not linear comes in by planes that touch it from outside: a greatest fall in any direction is a cone, and with grinding
//! the concrete is a convex volume. Each round adds the planes that touch where the last answer was wrong, until nothing is wrong.

use super::demand::{Demand, Wants};
use super::grinding::{Grinding, Volumes};
use super::layout::Layout;
use super::rows::{Block, Places, Shares, Writer, Writing, Written};
use super::solved::nothing_holds;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::linear::{BasisRow, Conflict, HOLDS, Optimum, Outcome, Piece, Program, Rise, Rows, Solver};
use crate::quantity::Typed;
use std::ops::Range;

/// A program over a layout.
#[derive(Clone)]
pub(super) struct Problem<'l, 'a> {
    pub(super) layout: &'l Layout<'a>,
    pub(super) demands: &'l [Demand],
    pub(super) rows: Rows,
    pub(super) blocks: Vec<Block>,
    /// The concrete by the unknowns; with grinding the cost is one unknown more, held up by planes.
    pub(super) cost: Vec<f64>,
    grinding: Option<Grinding>,
    /// Rows that hold the cost up, and how much each bound rises for every metre of least thickness.
    cost_cuts: Vec<(usize, f64)>,
    /// The least thicknesses over the whole work by their demands: grinding restores the greatest.
    restored: Vec<(usize, f64)>,
    pub(super) blames_firm: bool,
    /// Rows that hold heights and falls between whole steps; none outside of a search for them.
    pub(super) steps: Range<usize>,
}

/// An answer.
#[derive(Clone, Debug)]
pub(super) struct Found {
    pub(super) optimum: Optimum,
    /// The cost, exactly, in volume of concrete.
    pub(super) value: f64,
}

/// A finish is never farther from the old slab than this, in metres.
pub(super) const FARTHEST: f64 = 100.0;

/// So many rounds of planes are tried.
const ROUNDS: usize = 400;

/// The cost is certified to within this share.
const CLOSE: f64 = 1e-9;

/// Why there is no answer.
#[derive(Debug)]
pub(super) enum Unsolved {
    /// The demands contradict one another, which was checked.
    Conflict,
    /// Something else.
    Failed(Box<Failure>),
}

/// An answer, or why there is none.
pub(super) type Solving<T> = std::result::Result<T, Unsolved>;

impl From<Box<Failure>> for Unsolved {
    fn from(failure: Box<Failure>) -> Self {
        Self::Failed(failure)
    }
}

impl<'l, 'a> Problem<'l, 'a> {
    /// Writes the demands over a layout.
    pub(super) fn new(
        layout: &'l Layout<'a>,
        demands: &'l [Demand],
        writing: Writing,
        grinding: Option<Grinding>,
    ) -> Result<Self> {
        let width = layout.width() + usize::from(grinding.is_some());
        let Written { rows, blocks } = Writer::new(layout, width).all(demands, writing)?;
        let restored = (demands.iter().enumerate()).filter_map(|(number, demand)| match &demand.wants {
            Wants::LeastThickness { least, zone: None } => Some((number, least.base() + writing.margin)),
            _ => None,
        });
        let restored = restored.collect();
        let mut cost = layout.volume();
        if let Some(grinding) = &grinding {
            cost.fill(0.0);
            cost.push(cost_unit(layout, grinding));
        }
        Ok(Self {
            layout,
            demands,
            rows,
            blocks,
            cost,
            grinding,
            cost_cuts: Vec::new(),
            restored,
            blames_firm: false,
            steps: 0..0,
        })
    }

    /// Where a row binds.
    pub(super) fn place(&self, row: usize) -> Option<Point> {
        let block = self.blocks.iter().find(|block| block.rows.contains(&row))?;
        match &block.places {
            Places::Each(places) => places.get(row - block.rows.start).copied(),
            Places::OfRows => self.layout.place_of(self.rows.row(row)),
        }
    }

    /// The rows of some blocks, with those that hold the cost up.
    pub(super) fn ranges(&self, counts: impl Fn(&Block) -> bool) -> Vec<Range<usize>> {
        let mut ranges: Vec<Range<usize>> = Vec::with_capacity(self.blocks.len() + 1);
        let mut add = |range: Range<usize>| match ranges.last_mut() {
            Some(last) if last.end == range.start => last.end = range.end,
            _ if range.is_empty() => {}
            _ => ranges.push(range),
        };
        for block in self.blocks.iter().filter(|block| counts(block)) {
            add(block.rows.clone());
        }
        let mut cuts: Vec<usize> = self.cost_cuts.iter().map(|(row, _)| *row).collect();
        cuts.extend(self.blocks.iter().filter(|block| counts(block)).flat_map(|block| &block.cuts));
        cuts.extend(self.steps.clone());
        cuts.sort_unstable();
        cuts.into_iter().for_each(|cut| add(cut..cut + 1));
        ranges
    }

    /// Solves for the blocks that count.
    pub(super) fn solve(
        &mut self,
        solver: &dyn Solver,
        counts: &dyn Fn(&Block) -> bool,
        start: Option<&[BasisRow]>,
    ) -> Solving<Found> {
        let mut start = start.map(<[BasisRow]>::to_vec);
        if self.grinding.is_some() && self.cost_cuts.is_empty() {
            // A first plane where the floor would be without grinding's share of the cost.
            let plain = self.with_concrete_as_cost(solver, counts)?;
            if plain.unbounded() {
                return Err(Unsolved::Failed(nothing_holds()));
            }
            self.cost_is_no_less_than_the_net();
            self.hold_cost_up(&plain.x)?;
        }
        let mut best: Option<(f64, Vec<f64>)> = None;
        for _ in 0..ROUNDS {
            let ranges = self.ranges(counts);
            let program = Program { cost: &self.cost, rows: &self.rows, blocks: &ranges };
            let mut optimum = match solver.solve(&program, start.as_deref()) {
                Outcome::Optimum(optimum) => optimum,
                Outcome::Conflict(conflict) => return Err(self.contradicted(&conflict)),
                Outcome::Stalled => return Err(Unsolved::Failed(stalled())),
            };
            let low = optimum.value(&self.cost);
            let steep = self.cut_cones(&optimum.x, counts);
            if !steep && self.grinding.is_none() {
                return Ok(Found { optimum, value: low });
            }
            if !steep {
                // The best so far stays within the demands half way to the answer, where a plane cuts deepest.
                let value = self.hold_cost_up(&optimum.x)?;
                if best.as_ref().is_none_or(|(least, _)| value < *least) {
                    best = Some((value, self.at_cost(&optimum.x, value)));
                }
                if let Some((least, x)) = &mut best {
                    if *least - low <= CLOSE * least.abs() + self.hair() {
                        optimum.x.clone_from(x);
                        return Ok(Found { optimum, value: *least });
                    }
                    let half: Vec<f64> = x.iter().zip(&optimum.x).map(|(a, b)| 0.5 * (a + b)).collect();
                    let value = self.hold_cost_up(&half)?;
                    if value < *least {
                        (*least, *x) = (value, self.at_cost(&half, value));
                    }
                }
            }
            start = Some(optimum.basis);
        }
        Err(Unsolved::Failed(stalled()))
    }

    /// What of the cost may be rounding: with grinding it is an unknown of its own, which is held as closely as the others.
    pub(super) fn hair(&self) -> f64 {
        self.grinding.as_ref().map_or(0.0, |grinding| 4.0 * HOLDS * cost_unit(self.layout, grinding))
    }

    /// The unknowns with the cost that they have.
    fn at_cost(&self, x: &[f64], cost: f64) -> Vec<f64> {
        let mut x = x.to_vec();
        if let (Some(last), Some(grinding)) = (x.last_mut(), &self.grinding) {
            *last = cost / cost_unit(self.layout, grinding);
        }
        x
    }

    /// The answer where the concrete alone, without grinding, is least.
    fn with_concrete_as_cost(
        &mut self,
        solver: &dyn Solver,
        counts: &dyn Fn(&Block) -> bool,
    ) -> Solving<Optimum> {
        let mut cost = self.layout.volume();
        cost.resize(self.cost.len(), 0.0);
        for _ in 0..ROUNDS {
            let ranges = self.ranges(counts);
            let optimum =
                match solver.solve(&Program { cost: &cost, rows: &self.rows, blocks: &ranges }, None) {
                    Outcome::Optimum(optimum) => optimum,
                    Outcome::Conflict(conflict) => return Err(self.contradicted(&conflict)),
                    Outcome::Stalled => return Err(Unsolved::Failed(stalled())),
                };
            if !self.cut_cones(&optimum.x, counts) {
                return Ok(optimum);
            }
        }
        Err(Unsolved::Failed(stalled()))
    }

    /// Whether the blocks that count can be kept, at whatever cost.
    pub(super) fn keep(&mut self, solver: &dyn Solver, counts: &dyn Fn(&Block) -> bool) -> Solving<()> {
        self.with_concrete_as_cost(solver, counts).map(|_| ())
    }

    /// Whether what stands firm contradicts itself, so that conflicts may blame it.
    pub(super) const fn blames_firm(&self) -> bool {
        self.blames_firm
    }

    /// A contradiction, checked from the demands: weighted, the rows must add up to nothing on the left and more than nothing on the
    /// right, even with what is left weighed by the farthest that any finish could be.
    fn contradicted(&self, conflict: &Conflict) -> Unsolved {
        let mut left = vec![0.0; self.rows.width()];
        let mut by = 0.0;
        for &(row, weight) in &conflict.weights {
            left.iter_mut().zip(self.rows.row(row)).for_each(|(left, entry)| *left += weight * entry);
            by += weight * self.rows.bound(row);
        }
        let unproved: f64 = left.iter().map(|left| left.abs() * FARTHEST).sum();
        let weighed = conflict.weights.iter().all(|(_, weight)| *weight > 0.0);
        if weighed && by > unproved { Unsolved::Conflict } else { Unsolved::Failed(stalled()) }
    }

    /// Adds the planes that touch the cones of greatest falls where they were left; whether there were any.
    pub(super) fn cut_cones(&mut self, x: &[f64], counts: &dyn Fn(&Block) -> bool) -> bool {
        let mut steep = Vec::new();
        for (number, block) in self.blocks.iter().enumerate().filter(|(_, block)| counts(block)) {
            let Some(demand) = block.demand.and_then(|demand| self.demands.get(demand)) else { continue };
            let Wants::Steepest { on, .. } = &demand.wants else { continue };
            for facet in self.layout.facets_of(on.as_deref()).unwrap_or_default() {
                let plane = self.layout.plane(facet, x);
                let steepest = plane.steepest();
                let limit = self.steepest_allowed(block);
                if self.layout.size() * (steepest - limit) > HOLDS {
                    let direction = [plane.b() / steepest, plane.c() / steepest];
                    steep.push((number, facet, direction, limit));
                }
            }
        }
        for &(number, facet, direction, limit) in &steep {
            let row = self.layout.rise(facet, direction.map(|entry| -entry));
            self.blocks[number].cuts.push(self.rows.len());
            self.rows.push(&row, -self.layout.size() * limit);
        }
        !steep.is_empty()
    }

    /// The greatest fall in any direction as it is now: a bound that was moved moves all rows of its block alike.
    fn steepest_allowed(&self, block: &Block) -> f64 {
        -self.rows.bound(block.rows.start) / self.layout.size()
    }

    /// How far the steepest fall is from the greatest that a block allows; none for other demands.
    pub(super) fn cone_slack(&self, block: &Block, x: &[f64]) -> Option<f64> {
        let demand = block.demand.and_then(|demand| self.demands.get(demand))?;
        let Wants::Steepest { on, .. } = &demand.wants else { return None };
        let facets = self.layout.facets_of(on.as_deref()).unwrap_or_default();
        let steepest = facets.into_iter().map(|facet| self.layout.plane(facet, x).steepest());
        Some(self.steepest_allowed(block) - steepest.fold(0.0, f64::max))
    }

    /// What is ground off and filled again only adds to the volume between the two surfaces. This keeps every round bounded.
    fn cost_is_no_less_than_the_net(&mut self) {
        let Some(grinding) = &self.grinding else { return };
        let unit = cost_unit(self.layout, grinding);
        let mut row: Vec<f64> = self.layout.volume().iter().map(|share| -share / unit).collect();
        row.push(1.0);
        self.cost_cuts.push((self.rows.len(), 0.0));
        self.rows.push(&row, 0.0);
    }

    /// Adds the plane that touches the cost at an answer; the cost there.
    fn hold_cost_up(&mut self, x: &[f64]) -> Result<f64> {
        // Without grinding nothing has to hold it up.
        let Some(grinding) = &self.grinding else {
            return Ok(self.cost.iter().zip(x).map(|(a, b)| a * b).sum());
        };
        let touch = grinding.touching(self.layout, &x[..self.layout.width()])?;
        let unit = cost_unit(self.layout, grinding);
        let mut row: Vec<f64> = touch.slope.iter().map(|slope| -slope / unit).collect();
        row.push(1.0);
        self.cost_cuts.push((self.rows.len(), touch.by_least / unit));
        self.rows.push(&row, touch.at_none / unit);
        Ok(touch.value)
    }

    /// Moves the margin on every least thickness by so much.
    pub(super) fn move_margin(&mut self, by: f64) {
        for block in &self.blocks {
            let demand = block.demand.and_then(|demand| self.demands.get(demand));
            if demand.is_some_and(|demand| matches!(demand.wants, Wants::LeastThickness { .. })) {
                for row in block.rows.clone() {
                    self.rows.set_bound(row, self.rows.bound(row) + by);
                }
            }
        }
        self.restored.iter_mut().for_each(|(_, least)| *least += by);
        self.restore();
    }

    /// Lets grinding restore the greatest least thickness as it is now.
    fn restore(&mut self) {
        let greatest = self.restored.iter().map(|(_, least)| *least).fold(0.0, f64::max);
        if let Some(grinding) = self.grinding.as_mut().filter(|grinding| grinding.least != greatest) {
            grinding.least = greatest;
            self.cost_cuts.clear();
        }
    }

    /// Whether the cost itself rises with a demand: grinding restores its least thickness.
    pub(super) fn prices_the_cost(&self, demand: Option<usize>) -> bool {
        let own = self.restored.iter().find(|(number, _)| Some(*number) == demand);
        self.grinding.zip(own).is_some_and(|(grinding, (_, least))| *least >= grinding.least)
    }

    /// Whether prices change all the way along, for want of corners: with grinding, or with a fall that counts in any direction.
    pub(super) fn is_curved(&self) -> bool {
        let cone = |demand: &Demand| matches!(demand.wants, Wants::Steepest { .. });
        self.grinding.is_some() || self.demands.iter().any(cone)
    }

    /// The least cost with a demand tightened by so much; none where it cannot be.
    pub(super) fn value_when(&self, demand: usize, by: f64, solver: &dyn Solver) -> Option<f64> {
        let mut other = self.clone();
        other.tighten(demand, by);
        let found = other.solve(solver, &|_| true, None).ok()?;
        (!found.optimum.unbounded()).then_some(found.value)
    }

    /// All rows in pieces, those of one block rising by its shares times a sign; where grinding restores its thickness, those that
    /// hold the cost up rise too.
    pub(super) fn pieces<'b>(&self, moving: &'b Block, sign: f64, restores: bool) -> Vec<Piece<'b>> {
        let size = self.layout.size();
        let mut pieces = Vec::with_capacity(self.blocks.len() + self.cost_cuts.len());
        for block in &self.blocks {
            let moves = block.rows == moving.rows && block.demand == moving.demand;
            let rise = match &moving.shares {
                _ if !moves => Rise::Same(0.0),
                Shares::Same(share) => Rise::Same(sign * share),
                Shares::Each(shares) => Rise::Each(sign, shares),
            };
            pieces.push(Piece { rows: block.rows.clone(), rise });
            let of_cut = if moves { sign * size } else { 0.0 };
            pieces
                .extend(block.cuts.iter().map(|&cut| Piece { rows: cut..cut + 1, rise: Rise::Same(of_cut) }));
        }
        pieces.extend(self.cost_cuts.iter().map(|&(cut, share)| {
            let rise = Rise::Same(if restores { sign * share } else { 0.0 });
            Piece { rows: cut..cut + 1, rise }
        }));
        pieces
    }

    /// Tightens a demand by so much.
    pub(super) fn tighten(&mut self, demand: usize, by: f64) {
        let size = self.layout.size();
        for block in self.blocks.iter().filter(|block| block.demand == Some(demand)) {
            for row in block.each() {
                self.rows.set_bound(row, self.rows.bound(row) + by * block.share(row, size));
            }
        }
        for (_, least) in self.restored.iter_mut().filter(|(number, _)| *number == demand) {
            *least += by;
        }
        self.restore();
    }

    /// The volumes under a finish.
    pub(super) fn volumes(&self, finish: &Finish) -> Result<Volumes> {
        match &self.grinding {
            Some(grinding) => grinding.volumes(self.layout, finish),
            None => Ok(Volumes { concrete: self.layout.net_under(finish), ground: 0.0 }),
        }
    }

    /// The area of the work.
    pub(super) fn area(&self) -> f64 {
        self.layout.laid.area()
    }

    /// The cost of volumes, in volume of concrete.
    pub(super) fn cost_of(&self, volumes: Volumes) -> f64 {
        volumes.concrete + self.grinding.map_or(0.0, |grinding| grinding.price * volumes.ground)
    }

    /// What the concrete alone rises by when the unknowns go in a direction; none where it is the cost.
    /// `restored` is how much the least thickness that grinding restores goes with it.
    pub(super) fn concrete_slope(&self, x: &[f64], direction: &[f64], restored: f64) -> Option<f64> {
        let grinding = Grinding { price: 0.0, ..self.grinding? };
        let width = self.layout.width();
        let touch = grinding.touching(self.layout, &x[..width]).ok()?;
        let along: f64 = touch.slope.iter().zip(&direction[..width]).map(|(slope, by)| slope * by).sum();
        Some(along + restored * touch.by_least)
    }
}

/// What the cost is counted in: a tenth of a metre over the work, so that what its rows are held to is little against it.
fn cost_unit(layout: &Layout<'_>, grinding: &Grinding) -> f64 {
    0.1 * layout.laid.area() * (1.0 + grinding.price)
}

fn stalled() -> Box<Failure> {
    Failure::new(Code::ProofFailed, "")
        .written("no answer within the steps allowed")
        .allowed("an answer that is proved")
        .remedy("this is a fault of the library: please report the demands")
}
