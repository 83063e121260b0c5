//! Whether a polygon between shots reaches far out of the region: then it spans ground nobody surveyed.

use super::frame::Frame;
use super::mesh::{Mesh, NO_MEAN};
use super::runs::{Runs, from_segment};
use super::tiling::Node;
use crate::geometry::boxes::Extent;
use crate::geometry::{Point, Region};

/// Places nearer together than this are not told apart when the farthest one is sought, in metres.
const FINEST: f64 = 1e-3;

/// Whether some place of a polygon is farther than `limit` from the region, whose `runs` are listed when first needed.
pub(super) fn leaves_by_more_than(
    mesh: &Mesh,
    face: usize,
    nodes: &[Node],
    frame: &Frame,
    region: &Region,
    runs: &mut Option<Runs>,
    limit: f64,
) -> bool {
    // A notch of just the limit must not be decided by rounding.
    let limit = limit + FINEST * 1e-6;
    let corners = &mesh.loops[mesh.range(face)];
    let place = |corner: u32| nodes[corner as usize].at();
    // The distance from a convex region is greatest at a corner of the polygon.
    if frame.only().is_some() {
        return corners.iter().any(|&corner| {
            frame.clearance(place(corner)) < -frame.hair
                && region.distance_outside(frame.given(place(corner))) > limit
        });
    }
    let extent = Extent::around(corners.iter().map(|&corner| place(corner))).widened(limit);
    let mut near = Near { frame, limit, runs: Vec::new() };
    let runs = runs.get_or_insert_with(|| Runs::of(region, frame));
    runs.near(&extent, |_, ends| near.runs.push(ends));
    if mesh.faces[face].mean == NO_MEAN {
        return near.leaves([corners[0], corners[1], corners[2]].map(place));
    }
    let mean = place(mesh.faces[face].mean);
    (0..corners.len())
        .any(|i| near.leaves([mean, place(corners[i]), place(corners[(i + 1) % corners.len()])]))
}

struct Near<'a> {
    frame: &'a Frame,
    limit: f64,
    runs: Vec<[Point; 2]>,
}

impl Near<'_> {
    /// Looks at a triangle's middle: if it is too far out, the triangle is; if it is so near that no corner can be too
    /// far, the triangle is not; otherwise its four quarters are looked at.
    fn leaves(&self, triangle: [Point; 3]) -> bool {
        let [a, b, c] = triangle;
        let middle = Point::new((a.x + b.x + c.x) / 3.0, (a.y + b.y + c.y) / 3.0);
        let reach = triangle.iter().map(|corner| corner.distance(middle)).fold(0.0, f64::max);
        let distance = self.distance(middle);
        if distance > self.limit {
            return true;
        }
        if distance + reach <= self.limit || reach < FINEST {
            return false;
        }
        let half = |p: Point, q: Point| Point::new(0.5 * (p.x + q.x), 0.5 * (p.y + q.y));
        let (ab, bc, ca) = (half(a, b), half(b, c), half(c, a));
        [[ab, bc, ca], [a, ab, ca], [ab, b, bc], [ca, bc, c]].into_iter().any(|quarter| self.leaves(quarter))
    }

    /// How far outside the region; inside, how far at least from its edge, negative.
    fn distance(&self, place: Point) -> f64 {
        let clearance = self.frame.clearance(place);
        if clearance >= -self.frame.hair {
            return -clearance;
        }
        self.runs.iter().map(|&run| from_segment(place, run)).fold(f64::INFINITY, f64::min)
    }
}
