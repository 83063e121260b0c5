//! Polygons between the shots and the hull around them: what the old slab's height is made from everywhere.

use super::cut::Ground;
use super::hull::Hull;
use super::lines::Made;
use super::tiling::{Node, SLAB};
use crate::geometry::{Plane, Point, Scatter};

/// Polygons over places, the hull around them, and the slope beyond it.
#[derive(Clone, Debug)]
pub(super) struct Mesh {
    /// How many of the nodes are places of shots; the means of polygons follow them.
    pub(super) places: usize,
    /// The corners of all polygons, counter-clockwise, one polygon after the other.
    pub(super) loops: Vec<u32>,
    /// Where each polygon ends in `loops`, and the node of its mean, or `u32::MAX` for a triangle.
    pub(super) faces: Vec<Face>,
    /// The edge of the ground between the shots.
    pub(super) hull: Hull,
    /// The plane beyond the shots.
    pub(super) fitted: Fitted,
    /// The places that are no shots.
    pub(super) made: Vec<Made>,
    /// How many of the polygons, from the first on, are faces that were given; none of a mesh made from shots alone.
    pub(super) given: Option<usize>,
    /// Where steps part the slab: how far the mean of each place's part is from the mean of all. The fitted slope is that
    /// of all parts, each about its own mean.
    pub(super) offsets: Vec<Point>,
}

/// A plane and what it was fitted to.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fitted {
    /// The plane.
    pub(super) plane: Plane,
    /// The sums it was fitted from.
    pub(super) scatter: Scatter,
    /// Only the shots of the slab, not those around it.
    pub(super) slab_only: bool,
}

/// One polygon.
#[derive(Clone, Copy, Debug)]
pub(super) struct Face {
    /// Where its corners end in the loops.
    pub(super) end: u32,
    /// The node in the middle of its fan; none for a triangle.
    pub(super) mean: u32,
}

/// A triangle has no node in its middle.
pub(super) const NO_MEAN: u32 = u32::MAX;

impl Mesh {
    /// How much one unit of height at a place adds to both fitted slopes.
    pub(super) fn slopes_per_height(&self, place: usize, node: &Node) -> (f64, f64) {
        let offset = self.offsets.get(place).copied().unwrap_or_default();
        self.fitted.scatter.slopes_per_height(node.x - offset.x, node.y - offset.y)
    }

    /// What is known of the ground under a face before it is looked at; nothing where that depends on how it lies.
    pub(super) fn known_ground(&self, face: usize) -> Option<Ground> {
        self.given.map(|given| if face < given { Ground::Surveyed } else { Ground::Spanning })
    }

    /// Whether a place counted for the fitted plane.
    pub(super) fn is_fitted(&self, node: &Node) -> bool {
        node.shot().is_some() && (!self.fitted.slab_only || node.has(SLAB))
    }

    /// Where the corners of a face are in the loops.
    #[inline]
    pub(super) fn range(&self, face: usize) -> std::ops::Range<usize> {
        let start = if face == 0 { 0 } else { self.faces[face - 1].end as usize };
        start..self.faces[face].end as usize
    }
}
