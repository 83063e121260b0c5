//! Closed chains of corners.

use super::{RegionError, is_near};
use crate::geometry::predicates::cross;
use crate::geometry::{FARTHEST, Point, Sum};

/// Neighbouring corners this near to one another are one corner, in metres.
const SAME_CORNER: f64 = 1e-9;

/// A ring encloses more than this, in square metres.
const LEAST_AREA: f64 = 1e-12;

/// Which ring of a region.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum RingId {
    /// The outer ring.
    Outer,
    /// The hole of this index, as the caller gave them.
    Hole(usize),
}

/// Which run (straight side): the one from corner `index` to the next, in the caller's numbering.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct RunId {
    /// The ring.
    pub ring: RingId,
    /// The corner it starts from.
    pub index: usize,
}

/// A straight side of a region.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// Which one.
    pub id: RunId,
    /// Where it starts; the region is on its left.
    pub from: Point,
    /// Where it ends.
    pub to: Point,
}

impl Run {
    /// Its length.
    #[must_use]
    pub fn length(&self) -> f64 {
        self.from.distance(self.to)
    }

    /// The place on the run nearest to a place, as a share of the way along it from 0 to 1.
    #[must_use]
    pub fn share_nearest(&self, place: Point) -> f64 {
        let (dx, dy) = (self.to.x - self.from.x, self.to.y - self.from.y);
        let along = (place.x - self.from.x) * dx + (place.y - self.from.y) * dy;
        (along / (dx * dx + dy * dy)).clamp(0.0, 1.0)
    }

    /// The place at a share of the way along it.
    #[must_use]
    pub fn at(&self, share: f64) -> Point {
        Point::new(
            self.from.x + share * (self.to.x - self.from.x),
            self.from.y + share * (self.to.y - self.from.y),
        )
    }
}

/// A closed chain of corners, as the caller gave it.
#[derive(Clone, Debug, PartialEq)]
pub struct Ring {
    id: RingId,
    corners: Vec<Point>,
    counter_clockwise: bool,
}

impl Ring {
    /// Takes corners that are finite, at least three, and none at the place of the one before.
    pub(super) fn new(id: RingId, corners: Vec<Point>) -> Result<Self, RegionError> {
        if corners.len() < 3 {
            return Err(RegionError::TooFewCorners { ring: id, corners: corners.len() });
        }
        for (corner, point) in corners.iter().enumerate() {
            if !is_near(*point) {
                let (x, y) = (point.x, point.y);
                return Err(RegionError::NotFinite { ring: id, corner, x, y, limit: FARTHEST });
            }
            let before = corner.checked_sub(1).unwrap_or(corners.len() - 1);
            if corners[before].distance(*point) <= SAME_CORNER {
                let (first, second) = (before.min(corner), before.max(corner));
                return Err(RegionError::RepeatedCorner { ring: id, first, second, at: *point });
            }
        }
        let twice = doubled_area(&corners);
        if twice.abs() <= LEAST_AREA && is_flat(&corners) {
            return Err(RegionError::NoArea { ring: id });
        }
        Ok(Self { id, corners, counter_clockwise: twice > 0.0 })
    }

    /// Refuses a ring that encloses nothing; a ring that crosses itself is to be found before.
    pub(super) fn check_area(&self) -> Result<(), RegionError> {
        if self.area() <= LEAST_AREA { Err(RegionError::NoArea { ring: self.id }) } else { Ok(()) }
    }

    /// Which ring it is.
    #[must_use]
    pub fn id(&self) -> RingId {
        self.id
    }

    /// The corners in the caller's order.
    #[must_use]
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }

    /// Whether the caller gave the corners counter-clockwise.
    #[must_use]
    pub fn is_counter_clockwise(&self) -> bool {
        self.counter_clockwise
    }

    /// The area it encloses, from 0 up.
    #[must_use]
    pub fn area(&self) -> f64 {
        0.5 * doubled_area(&self.corners).abs()
    }

    /// Its runs in the order of their numbers, the region on their left.
    pub fn runs(&self) -> impl Iterator<Item = Run> + '_ {
        // The region is inside the outer ring and outside a hole.
        let forward = self.counter_clockwise == (self.id == RingId::Outer);
        self.corners.iter().enumerate().map(move |(index, corner)| {
            let next = self.corners[if index + 1 == self.corners.len() { 0 } else { index + 1 }];
            let (from, to) = if forward { (*corner, next) } else { (next, *corner) };
            Run { id: RunId { ring: self.id, index }, from, to }
        })
    }

    /// The corners counter-clockwise.
    pub(super) fn corners_counter_clockwise(&self) -> Vec<Point> {
        let mut corners = self.corners.clone();
        if !self.counter_clockwise {
            corners.reverse();
        }
        corners
    }

    pub(super) fn bounds(&self) -> (Point, Point) {
        let first = self.corners[0];
        self.corners.iter().fold((first, first), |(low, high), corner| {
            (
                Point::new(low.x.min(corner.x), low.y.min(corner.y)),
                Point::new(high.x.max(corner.x), high.y.max(corner.y)),
            )
        })
    }
}

/// Twice the signed area, about the first corner so that distant coordinates cost no digits.
fn doubled_area(corners: &[Point]) -> f64 {
    let origin = corners[0];
    corners
        .windows(2)
        .map(|pair| {
            let (ax, ay) = (pair[0].x - origin.x, pair[0].y - origin.y);
            let (bx, by) = (pair[1].x - origin.x, pair[1].y - origin.y);
            ax * by - bx * ay
        })
        .collect::<Sum>()
        .value()
}

/// Whether all corners lie on the line from the first to the one farthest from it.
fn is_flat(corners: &[Point]) -> bool {
    let first = corners[0];
    let far = corners
        .iter()
        .copied()
        .fold(first, |far, corner| if first.distance(corner) > first.distance(far) { corner } else { far });
    let length = first.distance(far);
    corners.iter().all(|corner| cross(first, far, *corner).abs() <= SAME_CORNER * length)
}
