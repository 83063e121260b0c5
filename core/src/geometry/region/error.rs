//! Why corners do not make a region.

use super::{RingId, RunId};
use crate::geometry::Point;

/// Why corners do not make a region. Rings, corners and runs have the caller's numbers.
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
    /// Two neighbouring corners at one place (the last and the first are neighbours: a ring closes by itself).
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
    /// Two runs cross or touch that are no neighbours, or two neighbours fold back on one another.
    #[error("run {first:?} meets run {second:?} at ({}, {})", at.x, at.y)]
    Crossing {
        /// The one run.
        first: RunId,
        /// The other.
        second: RunId,
        /// Where they meet.
        at: Point,
    },
    /// A ring encloses nothing, or as much on its left as on its right.
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
