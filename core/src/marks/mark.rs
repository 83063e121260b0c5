//! One mark.

use crate::geometry::Point;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::surface::Ground;

crate::choice! {
    /// What a mark is there for.
    pub enum MarkKind {
        /// A corner of the outline, of a hole, of a rail.
        Corner = "corner",
        /// A place that was asked for by name: a jamb.
        Point = "point",
        /// Where planes of the floor meet: the height bends there.
        Break = "break",
        /// A whole number of spacings along.
        Station = "station",
        /// A wet pad of the grid.
        Grid = "grid",
        /// A wet pad at a corner of a facet: a drain, the end of a valley.
        FacetCorner = "facet_corner",
        /// A wet pad where planes meet on a line of the grid.
        FacetLine = "facet_line",
    }
}

crate::choice! {
    /// Which list a mark stands in.
    pub enum Part {
        /// At a wall or an open edge.
        Edge = "edge",
        /// A wet pad.
        Pad = "pad",
        /// On a screed rail.
        Rail = "rail",
    }
}

/// A mark: a place and the height that is set out there.
#[derive(Clone, Debug, PartialEq)]
pub struct Mark {
    /// Its number, from 1 in the order of walking; chalk it beside the mark.
    pub number: usize,
    /// What it is there for.
    pub kind: MarkKind,
    /// What it is called, where it was asked for by name.
    pub name: Option<String>,
    /// Distance along its edge or rail from where the walk meets it; none for a pad.
    pub along: Option<Length>,
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// The height that is marked: of the new floor, or of the top of a rail.
    pub height: Elevation,
    /// That height less the old slab there: the check.
    pub over_old_slab: Length,
    /// What is known of the old slab there.
    pub ground: Ground,
}

impl Mark {
    /// Where it is.
    #[must_use]
    pub fn place(&self) -> Point {
        Point::new(self.x.base(), self.y.base())
    }
}
