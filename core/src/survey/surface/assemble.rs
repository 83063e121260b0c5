//! From the mesh to the triangles over a region.

use super::Rules;
use super::beyond::{Farthest, extend};
use super::cut::Ground;
use super::frame::{Frame, vertex};
use super::mesh::{Mesh, NO_MEAN};
use super::spanning::leaves_by_more_than;
use super::tiling::{IN_REGION, INSIDE, Node, ON_RUN, Source, Tiling};
use crate::geometry::Region;
use crate::geometry::clip::Vertex;

/// Tiles a region: polygons between the shots, cut at its edge, and the ground beyond.
pub(super) fn tile(
    mesh: &Mesh,
    nodes: Vec<Node>,
    frame: &Frame,
    region: &Region,
    rules: &Rules,
) -> (Tiling, Farthest) {
    // Strips and wedges: about two triangles for each place on the hull and for each corner of both.
    let beyond = 2 * (mesh.hull.chain.len() + 2 * mesh.hull.sides.len() + 8);
    let mut tiling = Tiling::new(nodes, mesh.loops.len() + beyond);
    tiling.nodes.reserve(beyond);
    for place in &mut tiling.nodes[..mesh.places] {
        if place.has(INSIDE | ON_RUN) {
            place.flags |= IN_REGION;
        }
    }
    let mut cutter = Cutter { mesh, frame, scratch: [Vec::new(), Vec::new()] };
    let mut runs = None;
    for face in 0..mesh.faces.len() {
        let first = tiling.pieces.len();
        let leaves = cutter.face(face, &mut tiling);
        let known = mesh.known_ground(face);
        if known == Some(Ground::Spanning)
            || known.is_none()
                && leaves
                && leaves_by_more_than(mesh, face, &tiling.nodes, frame, region, &mut runs, rules.spanning)
        {
            tiling.change_ground(first, Ground::Spanning);
        }
    }
    let farthest = extend(mesh, frame, &mut tiling);
    (tiling, farthest)
}

struct Cutter<'a> {
    mesh: &'a Mesh,
    frame: &'a Frame,
    scratch: [Vec<Vertex>; 2],
}

impl Cutter<'_> {
    /// Adds what is inside the region of one polygon; tells whether part of it is outside.
    #[inline]
    fn face(&mut self, face: usize, tiling: &mut Tiling) -> bool {
        let range = self.mesh.range(face);
        let corners = &self.mesh.loops[range.clone()];
        let mean = self.mesh.faces[face].mean;
        let convex = self.frame.only().is_some();
        if convex && corners.iter().all(|&corner| tiling.nodes[corner as usize].has(INSIDE)) {
            self.whole(face, tiling);
            return false;
        }
        let first = tiling.pieces.len();
        let mut full = 0.0;
        let mut fan = |triangle: [u32; 3], at: usize| {
            let source = Source::Loop { face: face as u32, at: at as u32 };
            let polygon = triangle.map(|corner| vertex(&tiling.nodes, corner));
            full += 0.5 * doubled(&polygon);
            self.frame
                .cut(&polygon, &mut self.scratch, |kept| tiling.polygon(kept, Ground::Surveyed, source));
        };
        if mean == NO_MEAN {
            fan([corners[0], corners[1], corners[2]], range.start);
        } else {
            for (index, &corner) in corners.iter().enumerate() {
                let next = corners[if index + 1 == corners.len() { 0 } else { index + 1 }];
                fan([mean, corner, next], range.start + index);
            }
        }
        tiling.area_from(first) < full * (1.0 - 1e-9)
    }

    /// Adds a polygon that is wholly inside.
    #[inline]
    fn whole(&self, face: usize, tiling: &mut Tiling) {
        let range = self.mesh.range(face);
        let corners = &self.mesh.loops[range.clone()];
        let mean = self.mesh.faces[face].mean;
        let source = |at: usize| Source::Loop { face: face as u32, at: (range.start + at) as u32 };
        if mean == NO_MEAN {
            if let &[a, b, c] = corners {
                tiling.triangle(a, b, c, Ground::Surveyed, source(0));
            }
            return;
        }
        let mut last = corners[corners.len() - 1];
        let mut before = corners.len() - 1;
        for (index, &corner) in corners.iter().enumerate() {
            tiling.triangle(mean, last, corner, Ground::Surveyed, source(before));
            (last, before) = (corner, index);
        }
    }
}

fn doubled(triangle: &[Vertex; 3]) -> f64 {
    let [a, b, c] = triangle.map(|corner| crate::geometry::Point::new(corner.x, corner.y));
    crate::geometry::predicates::cross(a, b, c)
}
