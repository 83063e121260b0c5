//! A line of the finish: where two facets meet.

use super::stepped;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{FARTHEST, Plane, Point};
use crate::grade::fall::FALL;
use crate::grade::finish::{FinishPoint, HEIGHT};
use crate::quantity::{Elevation, Slope, Typed};

/// A straight line of the finish through two of its points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BreakLine {
    /// The first point.
    pub from: FinishPoint,
    /// The second: left and right are seen looking to it from the first.
    pub to: FinishPoint,
}

/// A line that was checked.
#[derive(Clone, Copy, Debug)]
pub(super) struct Laid {
    pub(super) from: Point,
    height: f64,
    /// Unit vector to the second point.
    along: [f64; 2],
    /// Rise along it.
    rise: f64,
}

/// Two points this near, in metres, tell no line: 1/16 in.
const SHORTEST: f64 = 0.0254 / 16.0;

impl BreakLine {
    /// The line through the two points of a list.
    ///
    /// # Errors
    /// `FINISH_UNDETERMINED`: not two points.
    pub fn of(points: &[FinishPoint], path: &str) -> Result<Self> {
        match *points {
            [from, to] => Ok(Self { from, to }),
            _ => Err(Failure::new(Code::FinishUndetermined, path)
                .written(format!("{} points", points.len()))
                .allowed("two points")
                .remedy("give two points of the line")),
        }
    }

    pub(super) fn laid(&self, path: &str) -> Result<Laid> {
        let place = |point: &FinishPoint| Point::new(point.x.base(), point.y.base());
        let (from, to) = (place(&self.from), place(&self.to));
        for (index, (at, point)) in [(from, &self.from), (to, &self.to)].into_iter().enumerate() {
            if !(at.x.abs() <= FARTHEST && at.y.abs() <= FARTHEST) {
                return Err(Failure::new(Code::NotFinite, format!("{path}[{index}]"))
                    .written(format!("x {} m, y {} m", at.x, at.y))
                    .allowed("finite numbers near the work")
                    .remedy("measure from a corner of the work"));
            }
            check(&format!("{path}[{index}].elevation"), point.elevation, HEIGHT)?;
        }
        let length = from.distance(to);
        if length < SHORTEST {
            return Err(Failure::new(Code::FinishUndetermined, path)
                .written("two points at one place")
                .allowed("two points apart from one another")
                .remedy("move one of them along the line"));
        }
        let along = [(to.x - from.x) / length, (to.y - from.y) / length];
        Laid::new(
            from,
            self.from.elevation,
            along,
            (self.to.elevation - self.from.elevation).base() / length,
            path,
        )
    }
}

impl Laid {
    /// The line from a place in a direction, rising by so much.
    pub(super) fn new(
        from: Point,
        height: Elevation,
        along: [f64; 2],
        rise: f64,
        path: &str,
    ) -> Result<Self> {
        check(path, Slope::from_base(rise.abs()), FALL)?;
        Ok(Self { from, height: height.base(), along, rise })
    }

    /// Unit vector square to the line, to its left.
    pub(super) fn left(&self) -> [f64; 2] {
        [-self.along[1], self.along[0]]
    }

    /// Two places of the line so far to the left of it.
    pub(super) fn beside(&self, left: f64) -> (Point, Point) {
        let from = stepped(self.from, self.left(), left);
        (from, stepped(from, self.along, 1.0))
    }

    /// The plane that holds the line so far to its left at its own height, and rises by so much to the left.
    pub(super) fn plane(&self, beside: f64, rise_left: f64) -> Plane {
        let left = self.left();
        let slope = |axis: usize| self.rise * self.along[axis] + rise_left * left[axis];
        Plane::about(stepped(self.from, left, beside), self.height, slope(0), slope(1))
    }
}
