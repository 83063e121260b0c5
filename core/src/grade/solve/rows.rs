//! Demands as rows `a . u >= b`, each demand's rows in one block.

use super::demand::{Demand, Heights, Line, Measured, Outlet, Wants};
use super::layout::Layout;
use super::lines::{self, On};
use crate::failure::{Result, check};
use crate::geometry::{Point, Region};
use crate::grade::fall::FALL;
use crate::grade::finish::{Facing, HEIGHT, LEAST, Laid};
use crate::linear::Rows;
use crate::quantity::Typed;
use std::ops::Range;

/// How much each bound of a block rises when its demand is tightened by one unit.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Shares {
    /// All alike.
    Same(f64),
    /// Each by its own.
    Each(Vec<f64>),
}

/// The rows of one demand.
#[derive(Clone, Debug)]
pub(super) struct Block {
    /// Which demand, by its number in the caller's list; none for what holds everywhere: no dip under the old slab.
    pub(super) demand: Option<usize>,
    /// The rows.
    pub(super) rows: Range<usize>,
    /// How much each bound rises when the demand is tightened by one unit: thicker, steeper, lower for a greatest height. A
    /// height to be had exactly is tightened upward.
    pub(super) shares: Shares,
    /// What the demand is counted in.
    pub(super) measured: Measured,
    /// Where its rows bind.
    pub(super) places: Places,
    /// Rows that were added for it later, which all rise by the size of the work.
    pub(super) cuts: Vec<usize>,
}

/// Where rows bind.
#[derive(Clone, Debug)]
pub(super) enum Places {
    /// One place each.
    Each(Vec<Point>),
    /// The rows tell it themselves: heights of one plane, of which there may be a great many.
    OfRows,
}

impl Block {
    /// How much the bound of a row rises per unit.
    #[inline]
    pub(super) fn share(&self, row: usize, size: f64) -> f64 {
        if self.rows.contains(&row) {
            return match &self.shares {
                Shares::Same(share) => *share,
                Shares::Each(shares) => shares[row - self.rows.start],
            };
        }
        if self.cuts.contains(&row) { size } else { 0.0 }
    }

    /// All its rows.
    pub(super) fn each(&self) -> impl Iterator<Item = usize> + '_ {
        self.rows.clone().chain(self.cuts.iter().copied())
    }
}

/// All rows with their blocks.
#[derive(Clone, Debug)]
pub(super) struct Written {
    pub(super) rows: Rows,
    pub(super) blocks: Vec<Block>,
}

/// What the rows are written for.
#[derive(Clone, Copy, Debug)]
pub(super) struct Writing {
    /// On every least thickness, in metres.
    pub(super) margin: f64,
    /// How much high spots may be ground, in metres: the least thickness over the whole work may be broken by it.
    pub(super) grind: f64,
    /// Whether thickness binds on ground beyond the shots too.
    pub(super) beyond: bool,
    /// Whether that the finish may not dip below the old slab is written even where a least thickness says it: demands may be
    /// taken away.
    pub(super) always_above: bool,
}

/// Writes demands as rows.
pub(super) struct Writer<'l, 'a> {
    layout: &'l Layout<'a>,
    written: Written,
    /// Of the block being written.
    shares: Vec<f64>,
    places: Vec<Point>,
}

impl<'l, 'a> Writer<'l, 'a> {
    pub(super) fn new(layout: &'l Layout<'a>, width: usize) -> Self {
        let written = Written { rows: Rows::new(width), blocks: Vec::new() };
        Self { layout, written, shares: Vec::new(), places: Vec::new() }
    }

    /// All demands, and under them that the finish nowhere dips below the old slab.
    pub(super) fn all(mut self, demands: &[Demand], writing: Writing) -> Result<Written> {
        let whole = |demand: &Demand| matches!(demand.wants, Wants::LeastThickness { zone: None, .. });
        if writing.always_above || !demands.iter().any(whole) {
            let start = self.written.rows.len();
            let laid = &self.layout.laid;
            self.thickness(laid, -writing.grind, 1.0, writing.beyond);
            self.close(None, start, Measured::Length);
        }
        for (number, demand) in demands.iter().enumerate() {
            let start = self.written.rows.len();
            self.demand(demand, writing).map_err(|failure| failure.under(&format!("demands[{number}]")))?;
            self.close(Some(number), start, demand.wants.measured());
        }
        Ok(self.written)
    }

    fn close(&mut self, demand: Option<usize>, start: usize, measured: Measured) {
        let shares = std::mem::take(&mut self.shares);
        let first = shares.first().copied().unwrap_or(1.0);
        let shares = if shares.iter().all(|&share| share == first) {
            Shares::Same(first)
        } else {
            Shares::Each(shares)
        };
        let places = std::mem::take(&mut self.places);
        let places = if places.is_empty() { Places::OfRows } else { Places::Each(places) };
        self.written.blocks.push(Block {
            demand,
            rows: start..self.written.rows.len(),
            shares,
            measured,
            places,
            cuts: Vec::new(),
        });
    }

    fn demand(&mut self, demand: &Demand, writing: Writing) -> Result<()> {
        let layout = self.layout;
        let size = layout.size();
        match &demand.wants {
            Wants::LeastThickness { least, zone } => {
                let least = check("thickness", *least, LEAST)?.base() + writing.margin;
                let grind = if zone.is_none() { writing.grind } else { 0.0 };
                self.over(zone.as_ref(), least - grind, 1.0, writing.beyond)?;
            }
            Wants::GreatestThickness { most, zone } => {
                let most = check("thickness", *most, LEAST)?.base();
                self.over(zone.as_ref(), most, -1.0, writing.beyond)?;
            }
            Wants::LeastFall { fall, toward, on } => {
                let fall = check("fall", *fall, FALL)?.base();
                self.falls(toward, on.as_deref(), fall, 1.0)?;
            }
            Wants::GreatestFall { fall, toward, on } => {
                let fall = check("fall", *fall, FALL)?.base();
                self.falls(toward, on.as_deref(), fall, -1.0)?;
            }
            Wants::Steepest { fall, on } => {
                // The first of the planes that touch the cone; the solver adds those it needs.
                let fall = check("fall", *fall, FALL)?.base();
                for facet in layout.facets_of(on.as_deref())? {
                    for direction in [[1.0, 0.0], [0.0, 1.0], [-1.0, 0.0], [0.0, -1.0]] {
                        self.rise(facet, direction, -1.0, -size * fall, size);
                    }
                }
            }
            Wants::CrossFall { fall, along, on } => {
                let fall = check("fall", *fall, FALL)?.base();
                let [x, y] = lines::direction(layout, along)?;
                for facet in layout.facets_of(on.as_deref())? {
                    self.rise(facet, [x, y], -1.0, -size * fall, size);
                    self.rise(facet, [x, y], 1.0, -size * fall, size);
                }
            }
            Wants::Level { along, tolerance } => {
                let tolerance = check("tolerance", *tolerance, LEAST)?.base();
                self.level(&lines::places(layout, along)?, tolerance);
            }
            Wants::AtMost(heights) => self.heights(heights, &[-1.0])?,
            Wants::AtLeast(heights) => self.heights(heights, &[1.0])?,
            Wants::Exactly(heights) => self.heights(heights, &[1.0, -1.0])?,
        }
        Ok(())
    }

    /// One row.
    fn push(&mut self, row: &[f64], bound: f64, at: Point, share: f64) {
        self.written.rows.push(row, bound);
        self.places.push(at);
        self.shares.push(share);
    }

    /// A thickness over the whole work or a zone.
    fn over(&mut self, zone: Option<&Region>, thickness: f64, sense: f64, beyond: bool) -> Result<()> {
        let layout = self.layout;
        match zone {
            None => self.thickness(&layout.laid, thickness, sense, beyond),
            Some(zone) => {
                let laid = layout.template.laid_within(layout.survey.surface(), zone)?;
                self.thickness(&laid, thickness, sense, beyond);
            }
        }
        Ok(())
    }

    /// Finish less old slab, times the sense, is at least the thickness times the sense, at every corner of the old slab's triangles
    /// under each facet: between them both are plane.
    fn thickness(&mut self, laid: &Laid<'_>, thickness: f64, sense: f64, beyond: bool) {
        let layout = self.layout;
        let measured = laid.parts().iter().any(|part| part.ground.measured().next().is_some());
        for part in laid.parts() {
            let (facet, origin) = (part.facet.unwrap_or(0), part.ground.origin());
            let nodes = part.ground.nodes().iter().filter(|node| beyond || !measured || node.is_measured());
            let most = part.ground.nodes().len();
            self.written.rows.reserve(most);
            for node in nodes {
                let at = Point::new(node.x + origin.x, node.y + origin.y);
                let bound = sense * (node.z - layout.base() + thickness);
                let form = layout.local(at).map(|entry| sense * entry);
                match layout.facets() {
                    // One plane: the row itself tells its place, and all shares are 1.
                    1 => self.written.rows.push(&form, bound),
                    _ => self.push(&layout.row(facet, form), bound, at, 1.0),
                }
            }
        }
    }

    /// The rise of a facet in a direction, times a sense, is at least a bound; both times the size of the work.
    fn rise(&mut self, facet: usize, direction: [f64; 2], sense: f64, bound: f64, share: f64) {
        let row = self.layout.rise(facet, direction.map(|entry| sense * entry));
        let at = self.layout.middle(facet);
        self.push(&row, bound, at, share);
    }

    /// The fall toward an outlet, times a sense, is at least a fall times that sense.
    fn falls(&mut self, toward: &Outlet, on: Option<&str>, fall: f64, sense: f64) -> Result<()> {
        let layout = self.layout;
        let size = layout.size();
        for facet in layout.facets_of(on)? {
            match toward {
                Outlet::Edge(name) => {
                    let along = Facing::edge(layout.survey.outline(), name)?.along;
                    self.rise(facet, [-along[1], along[0]], sense, sense * size * fall, size);
                }
                Outlet::Line(ends) => {
                    let along = lines::direction(layout, &Line::Places(ends.to_vec()))?;
                    let middle = layout.middle(facet);
                    let left = along[0] * (middle.y - ends[0].y) - along[1] * (middle.x - ends[0].x);
                    let away = if left >= 0.0 { [-along[1], along[0]] } else { [along[1], -along[0]] };
                    self.rise(facet, away, sense, sense * size * fall, size);
                }
                Outlet::Place(drain) => self.falls_to(*drain, facet, fall, sense)?,
            }
        }
        Ok(())
    }

    /// The fall from every corner of a facet to a drain, but for the rim of the drain. Toward the drain a plane falls the less the farther a place is aside, so
    /// that the corners decide for a least fall; for a greatest one they are what a straightedge to the drain shows.
    fn falls_to(&mut self, drain: Point, facet: usize, fall: f64, sense: f64) -> Result<()> {
        let layout = self.layout;
        let rim = layout.rim_about(drain);
        if rim == Some(facet) {
            return Ok(());
        }
        let of_rim = rim.map(|rim| layout.corners(rim)).unwrap_or_default();
        let low = lines::places(layout, &Line::Places(vec![drain]))?;
        let low = low.first().map_or(facet, |on| on.facet);
        let low = layout.height(low, drain);
        for corner in layout.corners(facet) {
            let run = corner.distance(drain);
            if run > 1e-3 && of_rim.iter().all(|at| at.distance(corner) > 1e-6) {
                let row: Vec<f64> =
                    layout.height(facet, corner).iter().zip(&low).map(|(a, b)| sense * (a - b)).collect();
                self.push(&row, sense * fall * run, corner, run);
            }
        }
        Ok(())
    }

    /// No two heights of the places differ by more than a tolerance.
    fn level(&mut self, places: &[On], tolerance: f64) {
        let heights: Vec<Vec<f64>> = places.iter().map(|on| self.layout.height(on.facet, on.at)).collect();
        for (second, height) in heights.iter().enumerate() {
            for (first, other) in heights.iter().enumerate().take(second) {
                // Dead level is said by neighbours.
                if tolerance == 0.0 && first + 1 < second {
                    continue;
                }
                for sense in [1.0, -1.0] {
                    let row: Vec<f64> = height.iter().zip(other).map(|(a, b)| sense * (a - b)).collect();
                    self.push(&row, -tolerance, places[second].at, 1.0);
                }
            }
        }
    }

    /// Heights along a line: each sense is a row at every place.
    fn heights(&mut self, heights: &Heights, senses: &[f64]) -> Result<()> {
        let height = check("elevation", heights.elevation, HEIGHT)?.base() - self.layout.base();
        let exact = senses.len() > 1;
        for on in lines::places(self.layout, &heights.along)? {
            let row = self.layout.height(on.facet, on.at);
            for &sense in senses {
                let row: Vec<f64> = row.iter().map(|entry| sense * entry).collect();
                self.push(&row, sense * height, on.at, if exact { sense } else { 1.0 });
            }
        }
        Ok(())
    }
}
