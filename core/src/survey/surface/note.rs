//! What the reader must know of a surface.

use crate::geometry::{Point, RunId};

/// Several shots that became one place.
#[derive(Clone, Debug, PartialEq)]
pub struct SharedPlace {
    /// The shots, in the caller's order.
    pub shots: Vec<usize>,
    /// Their mean place.
    pub at: Point,
    /// Their mean height.
    pub height: f64,
    /// Highest minus lowest.
    pub difference: f64,
}

/// What the reader must know of a surface.
#[derive(Clone, Debug, PartialEq)]
pub enum Note {
    /// Shots at one place became their mean.
    Shared(SharedPlace),
    /// An unmarked shot a little outside the outline was used.
    OutsideUsed {
        /// Which shot.
        shot: usize,
        /// How far outside.
        distance: f64,
        /// The nearest run.
        run: RunId,
    },
    /// The line between two shots on one run crosses another such line and was split there.
    LinesCross {
        /// The two shots of the one line.
        first: [usize; 2],
        /// The two shots of the other.
        second: [usize; 2],
        /// Where.
        at: Point,
    },
    /// The line between two shots on one run passes through a third shot and was split there.
    LineThroughShot {
        /// The two shots of the line.
        line: [usize; 2],
        /// The shot it passes through.
        shot: usize,
    },
    /// The slab has a step along a line.
    Step {
        /// A shot at each end of the line; twice the same where it is closed.
        ends: [usize; 2],
        /// The least height of the step along it.
        least: f64,
        /// The greatest.
        greatest: f64,
        /// A shot on its higher side.
        toward: Option<usize>,
    },
    /// Much of the region lies beyond the shots.
    Beyond {
        /// Share of the area.
        share: f64,
        /// Area.
        area: f64,
        /// The farthest the region reaches beyond the shots.
        farthest: f64,
        /// Whether it is so much that it must be called a warning.
        warning: bool,
    },
    /// Points that are corners of no face were left out.
    PointsUnused {
        /// How many.
        points: usize,
        /// The first of them.
        first: usize,
    },
    /// Part of the region lies between the faces that were given: its height is taken from their corners around it.
    BetweenFaces {
        /// Share of the area.
        share: f64,
        /// Area.
        area: f64,
    },
    /// Triangles span ground that was not surveyed.
    Spanning {
        /// Share of the area.
        share: f64,
        /// Area.
        area: f64,
    },
}
