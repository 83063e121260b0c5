//! Where profile lines may run, and how many readings a section needs.

use super::profile::Spacing;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Region};
use crate::quantity::{Area, Typed};
use crate::survey::outline::Corner;

/// Readings nearer to an edge or a joint than this are left out: 2 ft.
pub(super) const EDGE_STRIP: f64 = 0.6096;
/// Parallel lines stand at least so far apart: 4 ft.
pub(super) const BETWEEN_LINES: f64 = 1.2192;
/// Lines count as parallel up to about 6 degrees.
const PARALLEL: f64 = 0.1;
/// Lengths equal within a hair are equal.
const HAIR: f64 = 1e-6;

/// Where a line runs in plan: its first reading, and a place it runs towards.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LinePlace {
    start: Point,
    /// Unit vector.
    along: Point,
}

impl LinePlace {
    /// From a start towards another place.
    ///
    /// # Errors
    /// `LINE_TOO_SHORT`: the two are one place.
    pub fn new(start: Corner, toward: Corner) -> Result<Self> {
        let (start, toward) = (start.place(), toward.place());
        let length = start.distance(toward);
        if !(length > HAIR && length.is_finite()) {
            return Err(Failure::new(Code::LineTooShort, "places")
                .written("one place")
                .allowed("a start and another place the line runs towards")
                .remedy("give two places apart from one another"));
        }
        let along = Point::new((toward.x - start.x) / length, (toward.y - start.y) / length);
        Ok(Self { start, along })
    }

    /// The place of a reading, the first being 0.
    pub(super) fn station(&self, spacing: Spacing, reading: usize) -> Point {
        let far = spacing.length().base() * reading as f64;
        Point::new(self.start.x + far * self.along.x, self.start.y + far * self.along.y)
    }

    /// The least distance of the readings from an edge of the work.
    pub(super) fn edge_distance(&self, spacing: Spacing, readings: usize, work: &Region) -> f64 {
        let distance = |reading| {
            let at = self.station(spacing, reading);
            work.runs().map(|run| run.at(run.share_nearest(at)).distance(at)).fold(f64::INFINITY, f64::min)
        };
        (0..readings).map(distance).fold(f64::INFINITY, f64::min)
    }

    /// How far apart two lines run, where they are parallel and pass one another.
    pub(super) fn beside(&self, length: f64, other: &Self, other_length: f64) -> Option<f64> {
        let turned = self.along.x * other.along.y - self.along.y * other.along.x;
        if turned.abs() > PARALLEL {
            return None;
        }
        let from = |at: Point| {
            let (dx, dy) = (at.x - self.start.x, at.y - self.start.y);
            (dx * self.along.x + dy * self.along.y, dy * self.along.x - dx * self.along.y)
        };
        let end = Point::new(
            other.start.x + other_length * other.along.x,
            other.start.y + other_length * other.along.y,
        );
        let ((first, off_first), (last, off_last)) = (from(other.start), from(end));
        let passes = first.max(last) >= 0.0 && first.min(last) <= length;
        passes.then(|| off_first.abs().min(off_last.abs()))
    }
}

/// The fewest `z` that a section of that area is judged by: 2 sqrt(A), from 1600 ft² on A / 20, with A in square feet.
#[must_use]
pub fn least_z_readings(area: Area) -> usize {
    let feet = area.get::<crate::quantity::area::square_foot>();
    let least = if feet < 1600.0 { 2.0 * feet.max(0.0).sqrt() } else { feet / 20.0 };
    // A hair under a whole number is that number.
    (least - HAIR).ceil().max(0.0) as usize
}
