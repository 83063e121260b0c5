//! The common case of ground beyond a side of the hull: the side is straight and lies wholly inside a convex region.
//!
//! Then the ground beyond it is bounded by the side and, opposite, by a chain of the region's own corners. Both are
//! walked along together, and each piece of the side has one strip between them.

use super::beyond::Beyond;
use super::cut::Ground;
use super::hull::Side;
use super::tiling::Source;
use crate::geometry::clip::{MADE, Vertex};

/// A place on the far edge of the strips.
#[derive(Clone, Copy)]
struct Far {
    along: f64,
    x: f64,
    y: f64,
}

impl Beyond<'_> {
    /// Adds the strips beyond a side from the polygon at hand; tells whether the polygon was as expected.
    pub(super) fn border(&mut self, side: &Side) -> bool {
        let (start, end) = (self.hull_vertex(side.from), self.hull_vertex(side.to));
        let count = self.strip.len();
        if count < 3 {
            return true;
        }
        // From the start of the side the polygon goes out, along the far edge, and back to the end of the side.
        let Some(first) = self.strip.iter().position(|v| self.is_near(v, &start)) else { return false };
        self.strip.rotate_left(first);
        if !self.is_near(&self.strip[count - 1], &end) {
            return false;
        }
        let along = |v: &Vertex| (v.x - start.x) * side.along.x + (v.y - start.y) * side.along.y;
        let length = along(&end);
        let far = |v: &Vertex| Far { along: along(v), x: v.x, y: v.y };
        // Where the region's edge runs through an end of the side, that end is on the far edge itself.
        let mut next = usize::from(along(&self.strip[1]) <= self.hair);
        let stop = if along(&self.strip[count - 2]) >= length - self.hair { count - 2 } else { count - 1 };
        let mut last = far(&self.strip[next]);
        let mut edge = self.far_node(last, &start, &start, 0.0);
        let (mut from, mut from_along) = (start, 0.0);
        for at in side.from..side.to {
            let to = self.hull_vertex(at + 1);
            let to_along = along(&to);
            let source = Source::Strip { at };
            self.tiling.triangle(to.id, from.id, edge, Ground::Beyond, source);
            let mut ahead = far(&self.strip[(next + 1).min(stop)]);
            while next < stop && ahead.along < to_along - self.hair {
                let share = (ahead.along - from_along) / (to_along - from_along);
                let node = self.far_node(ahead, &from, &to, share);
                self.tiling.triangle(to.id, edge, node, Ground::Beyond, source);
                (edge, last, next) = (node, ahead, next + 1);
                ahead = far(&self.strip[(next + 1).min(stop)]);
            }
            let node = self.far_node(opposite(&last, &ahead, to_along, self.hair), &to, &to, 0.0);
            self.tiling.triangle(to.id, edge, node, Ground::Beyond, source);
            (edge, from, from_along) = (node, to, to_along);
        }
        true
    }

    fn is_near(&self, a: &Vertex, b: &Vertex) -> bool {
        let (dx, dy) = (a.x - b.x, a.y - b.y);
        dx * dx + dy * dy <= 4.0 * self.hair * self.hair
    }

    /// The node of a place on the far edge, opposite the share of the way between two places of the side.
    #[inline]
    fn far_node(&mut self, place: Far, from: &Vertex, to: &Vertex, share: f64) -> u32 {
        let nearest = Vertex {
            x: from.x + share * (to.x - from.x),
            y: from.y + share * (to.y - from.y),
            z: from.z + share * (to.z - from.z),
            id: if from.id == to.id { from.id } else { MADE },
        };
        let Vertex { x, y, z, id } = self.extended(place.x, place.y, &nearest);
        if id == MADE { self.tiling.add(x, y, z) } else { id }
    }
}

/// The place of the far edge at a distance along the side, between two of its corners.
#[inline]
fn opposite(last: &Far, ahead: &Far, along: f64, hair: f64) -> Far {
    let step = ahead.along - last.along;
    if step <= hair {
        return *ahead;
    }
    let share = (along - last.along) / step;
    Far { along, x: last.x + share * (ahead.x - last.x), y: last.y + share * (ahead.y - last.y) }
}
