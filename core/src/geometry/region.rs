//! Plan regions: an outline with holes, valid by construction.

use super::Point;

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

/// The run nearest to a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Nearest {
    /// Which run.
    pub run: RunId,
    /// How far away.
    pub distance: f64,
    /// Its nearest place.
    pub at: Point,
}

/// A closed chain of corners, as the caller gave it.
#[derive(Clone, Debug, PartialEq)]
pub struct Ring {
    corners: Vec<Point>,
}

impl Ring {
    /// The corners in the caller's order.
    #[must_use]
    pub fn corners(&self) -> &[Point] {
        &self.corners
    }
}

/// An outline with holes: simple, of positive area, holes inside and apart.
#[derive(Clone, Debug, PartialEq)]
pub struct Region {
    outer: Ring,
    holes: Vec<Ring>,
}

/// Why corners do not make a region.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum RegionError {
    /// Fewer than three corners.
    #[error("{ring:?} has {corners} corners, at least 3 are needed")]
    TooFewCorners {
        /// Which ring.
        ring: RingId,
        /// How many corners it has.
        corners: usize,
    },
    /// A coordinate is not a finite number, or absurdly far away.
    #[error(
        "corner {corner} of {ring:?} is at ({x}, {y}); coordinates must be within {limit} m of the origin"
    )]
    NotFinite {
        /// Which ring.
        ring: RingId,
        /// Which corner.
        corner: usize,
        /// Its first coordinate.
        x: f64,
        /// Its second coordinate.
        y: f64,
        /// The greatest magnitude allowed.
        limit: f64,
    },
    /// Two corners of one ring at one place.
    #[error("corners {first} and {second} of {ring:?} are both at ({}, {})", at.x, at.y)]
    RepeatedCorner {
        /// Which ring.
        ring: RingId,
        /// The one corner.
        first: usize,
        /// The other.
        second: usize,
        /// Where they are.
        at: Point,
    },
    /// Two runs that are no neighbours cross or touch, or two neighbours fold back on one another.
    #[error("run {first:?} meets run {second:?} at ({}, {})", at.x, at.y)]
    Crossing {
        /// The one run.
        first: RunId,
        /// The other.
        second: RunId,
        /// Where they meet.
        at: Point,
    },
    /// All corners of a ring lie on one line.
    #[error("{ring:?} encloses no area")]
    NoArea {
        /// Which ring.
        ring: RingId,
    },
    /// A hole lies outside the outer ring.
    #[error("hole {hole} lies outside the outline, {distance} m from it")]
    HoleOutside {
        /// Which hole.
        hole: usize,
        /// How far its first corner is from the outline.
        distance: f64,
    },
    /// A hole lies inside another one.
    #[error("hole {inner} lies inside hole {outer}")]
    HoleInHole {
        /// The inner one.
        inner: usize,
        /// The one around it.
        outer: usize,
    },
}

impl Region {
    /// The region inside `outer` and outside every hole. Either sense of rotation will do.
    ///
    /// # Errors
    /// When a ring is no simple ring of positive area, or the holes are not inside and apart.
    pub fn new(_outer: Vec<Point>, _holes: Vec<Vec<Point>>) -> Result<Self, RegionError> {
        unimplemented!()
    }

    /// The outer ring, as given.
    #[must_use]
    pub fn outer(&self) -> &Ring {
        &self.outer
    }

    /// The holes, as given.
    #[must_use]
    pub fn holes(&self) -> &[Ring] {
        &self.holes
    }

    /// The area, holes taken off.
    #[must_use]
    pub fn area(&self) -> f64 {
        unimplemented!()
    }

    /// The length of all runs, those of the holes with them.
    #[must_use]
    pub fn perimeter(&self) -> f64 {
        unimplemented!()
    }

    /// Whether the place is inside or on a run.
    #[must_use]
    pub fn contains(&self, _place: Point) -> bool {
        unimplemented!()
    }

    /// The run nearest to a place, from inside or outside.
    #[must_use]
    pub fn nearest_run(&self, _place: Point) -> Nearest {
        unimplemented!()
    }

    /// All runs, the region on their left, with the caller's numbering.
    pub fn runs(&self) -> impl Iterator<Item = Run> + '_ {
        std::iter::empty()
    }
}
