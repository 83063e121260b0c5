//! What regions leave of a surface.

use super::Cut;
use super::frame::{Frame, cut_by, vertex};
use super::part::number_in_part;
use super::tiling::{IN_REGION, NO_SHOT, Tiling};
use crate::geometry::Region;
use crate::geometry::boxes::Extent;
use crate::geometry::clip::{Line, Vertex, split};

impl Cut {
    /// The surface outside of regions, which may overlap; nothing where they cover all of it.
    #[must_use]
    pub fn without(&self, regions: &[&Region]) -> Option<Self> {
        let frames: Vec<Frame> = regions.iter().map(|region| Frame::new(region, self.origin())).collect();
        let nodes = self.nodes();
        let mut tiling = Tiling::new(Vec::with_capacity(nodes.len()), self.pieces().len());
        let mut numbers = vec![NO_SHOT; nodes.len()];
        let mut renumbered: Vec<Vertex> = Vec::with_capacity(8);
        for piece in self.pieces() {
            let mut left = vec![piece.corners.map(|corner| vertex(nodes, corner)).to_vec()];
            for frame in &frames {
                let extent = Extent::around(piece.corners.map(|corner| nodes[corner as usize].at()));
                frame.parts_near(&extent, |sides| take_away(&mut left, sides, frame.hair));
            }
            for polygon in left {
                renumbered.clear();
                renumbered.extend(polygon.iter().map(|corner| Vertex {
                    id: number_in_part(corner.id, nodes, &mut numbers, &mut tiling.nodes),
                    ..*corner
                }));
                tiling.polygon(&renumbered, piece.ground, piece.source);
            }
        }
        for (node, &number) in nodes.iter().zip(&numbers) {
            if number != NO_SHOT && node.has(IN_REGION) {
                tiling.nodes[number as usize].flags |= IN_REGION;
            }
        }
        let left = Self::new(self.origin(), tiling);
        // What only rounding left is nothing.
        (left.area() > 1e-12 * self.area()).then_some(left)
    }
}

/// Takes a convex part, on the left of all sides, away from convex polygons.
fn take_away(polygons: &mut Vec<Vec<Vertex>>, sides: &[Line], hair: f64) {
    let mut scratch = [Vec::new(), Vec::new()];
    let mut left = Vec::with_capacity(polygons.len());
    for polygon in polygons.drain(..) {
        if cut_by(&polygon, sides, hair, &mut scratch).len() < 3 {
            left.push(polygon);
            continue;
        }
        let mut inner = polygon;
        for side in sides {
            let (mut on_left, mut on_right) = (Vec::new(), Vec::new());
            split(&inner, side, hair, &mut on_left, &mut on_right);
            if on_right.iter().any(|corner| side.left(corner.x, corner.y) < -hair) {
                left.push(on_right);
            }
            inner = on_left;
        }
    }
    *polygons = left;
}
