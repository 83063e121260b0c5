//! The demands on the level perimeter h and the drop D alone, as they hold for every place of a cell.

use super::super::demand::{Heights, Wants};
use super::super::lines;
use super::allowed::Cell;
use super::exact::Over;
use super::holes::{self, HolePiece};
use super::reach::{Reaches, Seen, Side};
use super::under_drain::UnderDrain;
use crate::failure::Result;
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Region};
use crate::grade::finish::Laid;
use crate::linear::Rows;
use crate::quantity::Typed;

/// Every row is loosened by this, in metres, against rounding.
const LOOSE: f64 = 1e-8;

/// A demand on h and D.
enum Held {
    /// The drop from a corner of the perimeter is at least the fall times the distance.
    Fall(Point),
    /// The facet of a run is no steeper than the greatest fall.
    Steep(usize),
    /// The finish at the drain is above the old slab there by so much.
    Drain(UnderDrain, f64),
    /// The finish at a place is no lower than a height, or no higher.
    Place { side: Side, height: f64, seen: Vec<Seen> },
    /// The drop is none or more.
    Drop,
}

/// For which drains rows are written.
#[derive(Clone, Copy)]
pub(super) enum For {
    /// For all of the cell: each number as weak as it is anywhere in it.
    All,
    /// For one: exactly, or weaker by what vanishes with the cell's size.
    One(Point),
}

/// A row: its coefficients of h and D, and what they are at least.
type Row = ([f64; 2], f64);

/// All that holds h and D.
pub(super) struct Relaxed<'o, 'w, 'l> {
    over: &'o Over<'w, 'l>,
    corners: Vec<Point>,
    pub(super) reaches: Reaches,
    held: Vec<Held>,
    holes: Vec<HolePiece>,
    third: f64,
}

impl<'o, 'w, 'l> Relaxed<'o, 'w, 'l> {
    /// The facets are those about the place of the cell.
    pub(super) fn of(over: &'o Over<'w, 'l>, cell: &Cell) -> Result<Self> {
        let region = over.layout.survey.surface().region();
        let reaches = Reaches::of(region, cell);
        let holes = holes::pieces(region, &reaches);
        let third = region.outer().area() / 3.0;
        let corners = cell.corners.clone();
        let mut relaxed = Self { over, corners, reaches, held: vec![Held::Drop], holes, third };
        relaxed.falls();
        relaxed.demands(cell)?;
        Ok(relaxed)
    }

    fn falls(&mut self) {
        self.held.extend(self.reaches.each.iter().map(|reach| Held::Fall(reach.run.from)));
        if self.over.work.asked.greatest_fall.is_some() {
            self.held.extend((0..self.reaches.each.len()).map(Held::Steep));
        }
    }

    fn demands(&mut self, cell: &Cell) -> Result<()> {
        let asked = self.over.work.asked;
        let mut whole: Option<f64> = None;
        for demand in asked.demands {
            match &demand.wants {
                Wants::LeastThickness { least, zone } => {
                    let least = least.base() + asked.margin.base();
                    if zone.is_none() {
                        whole = Some(whole.map_or(least, |whole| whole.max(least)));
                    }
                    self.over(zone.as_ref(), Side::Low, least)?;
                }
                Wants::GreatestThickness { most, zone } => {
                    self.over(zone.as_ref(), Side::High, most.base())?;
                }
                Wants::AtLeast(heights) => self.heights(heights, &[Side::Low])?,
                Wants::AtMost(heights) => self.heights(heights, &[Side::High])?,
                Wants::Exactly(heights) => self.heights(heights, &[Side::Low, Side::High])?,
                Wants::LeastFall { .. }
                | Wants::GreatestFall { .. }
                | Wants::Steepest { .. }
                | Wants::CrossFall { .. }
                | Wants::Level { .. } => {}
            }
        }
        if whole.is_none() {
            self.over(None, Side::Low, 0.0)?;
        }
        let beyond = self.binds_beyond(&self.over.layout.laid);
        let under = UnderDrain::of(self.over.layout.survey.surface(), cell, beyond);
        self.held.extend(under.map(|under| Held::Drain(under, whole.unwrap_or(0.0))));
        Ok(())
    }

    fn hold(&mut self, at: Point, side: Side, height: f64) {
        let seen = self.reaches.seen(at, side);
        if !seen.is_empty() {
            self.held.push(Held::Place { side, height, seen });
        }
    }

    /// A thickness over the whole work or a zone.
    fn over(&mut self, zone: Option<&Region>, side: Side, thickness: f64) -> Result<()> {
        let layout = &self.over.layout;
        match zone {
            None => self.thickness(&layout.laid, side, thickness),
            Some(zone) => {
                let laid = layout.template.laid_within(layout.survey.surface(), zone)?;
                self.thickness(&laid, side, thickness);
            }
        }
        Ok(())
    }

    /// At every corner of the old slab's triangles under each facet about the one place. Between the shots thickness binds there for
    /// every other drain too: it binds at all corners of the piece of a triangle that the place is in.
    fn thickness(&mut self, laid: &Laid<'_>, side: Side, thickness: f64) {
        let base = self.over.layout.base();
        let beyond = self.binds_beyond(laid);
        for part in laid.parts() {
            let origin = part.ground.origin();
            for node in part.ground.nodes().iter().filter(|node| beyond || node.is_measured()) {
                let at = Point::new(node.x + origin.x, node.y + origin.y);
                self.hold(at, side, node.z - base + thickness);
            }
        }
    }

    /// Whether thickness binds beyond the shots too.
    fn binds_beyond(&self, laid: &Laid<'_>) -> bool {
        self.over.work.asked.edges_bind
            || !laid.parts().iter().any(|part| part.ground.measured().next().is_some())
    }

    /// Heights along a line.
    fn heights(&mut self, heights: &Heights, sides: &[Side]) -> Result<()> {
        let height = heights.elevation.base() - self.over.layout.base();
        for on in lines::places(&self.over.layout, &heights.along)? {
            sides.iter().for_each(|&side| self.hold(on.at, side, height));
        }
        Ok(())
    }

    /// The row of what is held by a number. For one drain its bound is concave in the drain's place, and so is what its weight adds to the
    /// coefficient of D in the cost.
    pub(super) fn row(&self, number: usize, drains: For) -> Row {
        let asked = self.over.work.asked;
        let (row, bound) = match &self.held[number] {
            Held::Drop => ([0.0, 1.0], 0.0),
            Held::Fall(corner) => {
                let away = match drains {
                    For::All => distance(&self.corners, *corner),
                    For::One(drain) => tangent(*corner, self.reaches.about, drain),
                };
                ([0.0, 1.0], asked.fall.base() * away)
            }
            Held::Steep(run) => {
                let reach = &self.reaches.each[*run];
                let away = match drains {
                    For::All => reach.from_cell[1],
                    For::One(drain) => reach.left(drain),
                };
                ([0.0, -1.0], -asked.greatest_fall.map_or(f64::INFINITY, Typed::base) * away)
            }
            Held::Drain(under, thickness) => {
                let least = |corners: &[Point]| {
                    corners.iter().map(|corner| under.at(*corner)).fold(f64::INFINITY, f64::min)
                };
                let height = match drains {
                    For::All => least(&self.corners),
                    For::One(drain) => under.at(drain),
                };
                ([1.0, -1.0], height - self.over.layout.base() + thickness)
            }
            Held::Place { side, height, seen } => {
                let share = match drains {
                    For::All => self.reaches.over_cell(seen, *side),
                    For::One(drain) => self.reaches.touching(seen, *side, drain),
                };
                match side {
                    Side::Low => ([1.0, -share], *height),
                    Side::High => ([-1.0, share], -height),
                }
            }
        };
        (row, bound - LOOSE)
    }

    /// All rows.
    pub(super) fn rows(&self, drains: For) -> Rows {
        let mut rows = Rows::new(2);
        rows.reserve(self.held.len());
        for number in 0..self.held.len() {
            let (row, bound) = self.row(number, drains);
            rows.push(&row, bound);
        }
        rows
    }

    /// The concrete by h and D, less a constant: what is least anywhere in the cell, or for one drain, concave in its place.
    pub(super) fn cost(&self, drains: For) -> [f64; 2] {
        let taken = self.holes.iter().map(|piece| {
            piece.area
                * match drains {
                    For::All => self.reaches.over_cell(&piece.seen, Side::Low),
                    For::One(drain) => self.reaches.touching(&piece.seen, Side::Low, drain),
                }
        });
        [self.over.layout.laid.area(), taken.sum::<f64>() - self.third]
    }
}

/// How far the tangent, laid about a place, of the distance from a corner is at a drain: nowhere more than the distance.
fn tangent(corner: Point, about: Point, drain: Point) -> f64 {
    let away = about.distance(corner);
    let (x, y) = (about.x - corner.x, about.y - corner.y);
    away + (x * (drain.x - about.x) + y * (drain.y - about.y)) / away
}

/// How far a place is from a cell at least.
fn distance(corners: &[Point], at: Point) -> f64 {
    let sides = || corners.iter().zip(corners.iter().cycle().skip(1));
    if corners.len() > 2 && sides().all(|(from, to)| cross(*from, *to, at) >= 0.0) {
        return 0.0;
    }
    let to_side = |(from, to): (&Point, &Point)| {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx * dx + dy * dy;
        let along = (at.x - from.x) * dx + (at.y - from.y) * dy;
        let share = if length > 0.0 { (along / length).clamp(0.0, 1.0) } else { 0.0 };
        at.distance(Point::new(from.x + share * dx, from.y + share * dy))
    };
    sides().map(to_side).fold(f64::INFINITY, f64::min)
}
