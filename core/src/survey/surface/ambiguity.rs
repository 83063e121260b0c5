//! How much the volume could differ if shots on one circle were joined by other diagonals.
//!
//! Of all ways to triangulate a polygon the one that follows its corners' lower hull is lowest everywhere at once,
//! and the one that follows the upper hull is highest: both bounds are reached, over any part of the region too.

use super::frame::Frame;
use super::mesh::NO_MEAN;
use super::{Node, Surface};
use crate::geometry::clip::Vertex;
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Region, Sum};

/// How much volume other triangulations of the same shots would put under the surface.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ambiguity {
    /// The volume under the surface could be less by so much (from 0 up).
    pub less: f64,
    /// The volume under the surface could be more by so much (from 0 up).
    pub more: f64,
}

impl Surface {
    /// How much the volume under the whole surface could differ by other triangulations; of a changed surface as it was
    /// measured.
    #[must_use]
    pub fn ambiguity(&self) -> Ambiguity {
        self.ambiguity_over(&[Frame::new(&self.region, self.whole.origin())])
    }

    /// The same over a part of the region.
    #[must_use]
    pub fn ambiguity_within(&self, part: &Region) -> Ambiguity {
        let origin = self.whole.origin();
        self.ambiguity_over(&[Frame::new(&self.region, origin), Frame::new(part, origin)])
    }

    fn ambiguity_over(&self, frames: &[Frame]) -> Ambiguity {
        let nodes = self.measured().nodes();
        let (mut less, mut more) = (Sum::new(), Sum::new());
        let mut triangles = Vec::new();
        for (index, face) in self.mesh.faces.iter().enumerate().filter(|(_, face)| face.mean != NO_MEAN) {
            let corners = &self.mesh.loops[self.mesh.range(index)];
            triangles.clear();
            triangles.extend(
                (0..corners.len()).map(|i| [face.mean, corners[i], corners[(i + 1) % corners.len()]]),
            );
            let base = nodes[face.mean as usize].z;
            let ours = volume_within(nodes, base, &triangles, frames);
            for (sum, sense) in [(&mut less, 1.0), (&mut more, -1.0)] {
                envelope(nodes, corners, sense, &mut triangles);
                sum.add((sense * (ours - volume_within(nodes, base, &triangles, frames))).max(0.0));
            }
        }
        Ambiguity { less: less.value(), more: more.value() }
    }
}

/// The triangles of a convex polygon's lower hull (`sense` 1) or upper hull (`sense` -1).
fn envelope(nodes: &[Node], corners: &[u32], sense: f64, triangles: &mut Vec<[u32; 3]>) {
    triangles.clear();
    // Each chain from corner `from` to corner `to` is closed by the edge between both.
    let mut pending = vec![(0, corners.len() - 1)];
    while let Some((from, to)) = pending.pop() {
        if to - from < 2 {
            continue;
        }
        let apex = lowest_over(nodes, corners, from, to, sense);
        triangles.push([corners[from], corners[apex], corners[to]]);
        pending.extend([(from, apex), (apex, to)]);
    }
}

/// The corner between `from` and `to` whose plane with both is beneath all others.
fn lowest_over(nodes: &[Node], corners: &[u32], from: usize, to: usize, sense: f64) -> usize {
    let node = |index: usize| &nodes[corners[index] as usize];
    let (a, b) = (node(from), node(to));
    let (dx, dy) = (b.x - a.x, b.y - a.y);
    let squared = dx * dx + dy * dy;
    let slope = |index: usize| {
        let c = node(index);
        let along = ((c.x - a.x) * dx + (c.y - a.y) * dy) / squared;
        let away = ((c.x - a.x) * dy - (c.y - a.y) * dx) / squared.sqrt();
        sense * (c.z - a.z - along * (b.z - a.z)) / away
    };
    // Started from the middle: of corners on one plane any will do, and this one keeps the chains short.
    let middle = from + (to - from) / 2;
    (from + 1..to).fold(middle, |best, next| if slope(next) < slope(best) { next } else { best })
}

/// The volume between triangles and the height `base`, over what all frames have in common.
fn volume_within(nodes: &[Node], base: f64, triangles: &[[u32; 3]], frames: &[Frame]) -> f64 {
    let mut total = Sum::new();
    for triangle in triangles {
        let polygon = triangle.map(|corner| {
            let vertex = super::frame::vertex(nodes, corner);
            Vertex { z: vertex.z - base, ..vertex }
        });
        within(&polygon, frames, &mut total);
    }
    total.value()
}

fn within(polygon: &[Vertex], frames: &[Frame], total: &mut Sum) {
    let Some((frame, others)) = frames.split_first() else {
        total.add(volume_under(polygon));
        return;
    };
    frame.cut(polygon, &mut [Vec::new(), Vec::new()], |kept| {
        if kept.len() > 2 {
            within(kept, others, total);
        }
    });
}

fn volume_under(polygon: &[Vertex]) -> f64 {
    let place = |vertex: &Vertex| Point::new(vertex.x, vertex.y);
    let first = &polygon[0];
    polygon[1..]
        .windows(2)
        .map(|pair| {
            let area = 0.5 * cross(place(first), place(&pair[0]), place(&pair[1]));
            area * (first.z + pair[0].z + pair[1].z) / 3.0
        })
        .collect::<Sum>()
        .value()
}
