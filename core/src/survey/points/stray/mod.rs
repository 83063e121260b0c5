//! What in a scan is no floor: walls, table legs, sawhorses, people, and echoes under the floor.
//!
//! The plan is laid out in cells. In each the lowest height that several points agree on is looked for. Cells that stand
//! higher than the ground around them, over any width up to the widest thing said to stand there, are no floor (a
//! progressive morphological filter, after Zhang et al. 2003): their floor is that of the nearest cells that are. A
//! point is then judged by the floor of its cell and of the eight around it, so that edges of steps and pits stay.
//!
//! Nothing is deleted: every point taken out is listed with its kind.

mod alone;
mod cells;
mod floor;
#[cfg(test)]
mod tests;

use super::{Points, check_points, pick};
use crate::choice;
use crate::failure::{Code, Failure, Result, check};
use crate::quantity::{Length, Range, Slope, Typed};
use cells::Cells;

choice! {
    /// Why a point is no floor.
    pub enum Kind {
        /// It stands higher than the floor around it.
        Above = "above",
        /// It lies deeper than the floor around it.
        Below = "below",
        /// It has too few others near it.
        Alone = "alone",
    }
}

/// What counts as stray.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Higher than this over the floor a point is stray; a step up to it stays, however narrow.
    pub above: Length,
    /// Deeper than this under the floor a point is stray.
    pub below: Length,
    /// The width of the widest thing that stands on the floor: what is wider and level is floor.
    pub widest: Length,
    /// The width of a cell.
    pub cell: Length,
    /// The steepest that the floor is.
    pub steepest: Slope,
    /// Within this of a point in plan there must be others.
    pub reach: Length,
    /// So many others.
    pub others: usize,
}

impl Limits {
    /// What is taken where nothing is stated: 1 in over and under, things up to 6 ft wide, cells of 6 in, a floor up to
    /// 1/4 in/ft steep, three others within 1 ft. Common practice has no source for these: they are ours.
    #[must_use]
    pub fn usual() -> Self {
        let inches = |count: f64| Length::from_base(count * 0.0254);
        Self {
            above: inches(1.0),
            below: inches(1.0),
            widest: inches(72.0),
            cell: inches(6.0),
            steepest: Slope::from_base(0.25 / 12.0),
            reach: inches(12.0),
            others: 3,
        }
    }
}

/// A height over or under the floor.
pub const HEIGHT: Range = Range::positive_to(10.0);
/// A width in plan.
pub const WIDTH: Range = Range::positive_to(100.0);
/// A slope of the floor.
pub const SLOPE: Range = Range::closed(0.0, 0.5);
/// The most others that may be asked for.
pub const MOST_OTHERS: usize = 1000;

/// Points parted.
#[derive(Clone, Debug, PartialEq)]
pub struct Parted {
    /// The numbers of the points kept, rising.
    pub kept: Vec<usize>,
    /// The points kept, in the same order.
    pub points: Points,
    /// The numbers of those taken out, rising, each with its kind.
    pub strays: Vec<(usize, Kind)>,
}

impl Parted {
    /// How many of a kind were taken out.
    #[must_use]
    pub fn count(&self, kind: Kind) -> usize {
        self.strays.iter().filter(|(_, of)| *of == kind).count()
    }
}

/// Parts the floor from what is none.
///
/// A pit and a step stay when they are wider than a cell or two, whatever their depth; a thing on the floor that is
/// wider than `widest` or lower than `above` stays too. Under things whose floor was not seen at all, the floor is taken
/// from the nearest cells.
///
/// # Errors
/// - `NOT_FINITE`, `NEGATIVE`, `OUT_OF_RANGE`: a coordinate or a limit is no number it may be, or the points are spread
///   over more cells than can be laid out.
/// - `EMPTY_LIST`: there are no points.
pub fn part(points: &Points, limits: &Limits) -> Result<Parted> {
    limits.check()?;
    check_points(points)?;
    if points.is_empty() {
        return Err(Failure::new(Code::EmptyList, "points")
            .written("no points")
            .allowed("at least 1")
            .remedy("give the points of the scan"));
    }
    let mut kinds: Vec<Option<Kind>> = vec![None; points.len()];
    alone::mark(points, limits.reach.base(), limits.others, &mut kinds);
    let cells = Cells::of(points, &kinds, limits)?;
    let floors = floor::under(&cells, limits);
    cells.judge(points, &floors, limits, &mut kinds);
    let (mut kept, mut strays) = (Vec::with_capacity(points.len()), Vec::new());
    for (number, kind) in kinds.into_iter().enumerate() {
        match kind {
            None => kept.push(number),
            Some(kind) => strays.push((number, kind)),
        }
    }
    let points = pick(points, &kept);
    Ok(Parted { kept, points, strays })
}

impl Limits {
    fn check(&self) -> Result<()> {
        check("above", self.above, HEIGHT)?;
        check("below", self.below, HEIGHT)?;
        for (port, width) in [("widest", self.widest), ("cell", self.cell), ("reach", self.reach)] {
            check(port, width, WIDTH)?;
        }
        check("steepest", self.steepest, SLOPE)?;
        if self.others <= MOST_OTHERS {
            return Ok(());
        }
        Err(Failure::new(Code::OutOfRange, "others")
            .written(self.others.to_string())
            .allowed(format!("at most {MOST_OTHERS}"))
            .remedy("ask for fewer"))
    }
}
