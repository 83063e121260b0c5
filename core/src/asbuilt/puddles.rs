//! Puddles seen when the hose was let run, beside the water that the shots show.

use crate::geometry::Point;
use crate::geometry::clip::Vertex;
use crate::quantity::{Length, Typed};
use crate::survey::low_spots::{Ponds, Water};
use crate::survey::outline::Corner;

/// A puddle that was seen.
#[derive(Clone, Debug, PartialEq)]
pub struct SeenPuddle {
    /// Where.
    pub at: Corner,
    /// How deep, where it was measured.
    pub depth: Option<Length>,
}

/// A puddle that was seen, beside the water that the shots show there.
#[derive(Clone, Debug, PartialEq)]
pub struct Puddle {
    /// What was seen.
    pub seen: SeenPuddle,
    /// The depth of water that the shots show at its place: 0 where they show none.
    pub by_shots: Length,
}

impl Puddle {
    pub(super) fn beside(seen: &SeenPuddle, ponds: &Ponds) -> Self {
        let at = seen.at.place();
        let depth = ponds.waters.iter().filter_map(|water| depth_in(water, at)).fold(0.0, f64::max);
        Self { seen: seen.clone(), by_shots: Length::from_base(depth) }
    }

    /// Whether the shots show no water where it was seen.
    #[must_use]
    pub fn unseen_by_shots(&self) -> bool {
        self.by_shots.base() <= 0.0
    }
}

/// The depth of the water at a place, where the place is under it.
fn depth_in(water: &Water, at: Point) -> Option<f64> {
    water.pieces.iter().find_map(|piece| {
        let (first, rest) = piece.split_first()?;
        rest.windows(2).find_map(|pair| depth_over(first, &pair[0], &pair[1], at))
    })
}

/// The depth at a place of a triangle, by its shares of the corners.
fn depth_over(a: &Vertex, b: &Vertex, c: &Vertex, at: Point) -> Option<f64> {
    let doubled = |p: Point, q: Point, r: Point| (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
    let place = |vertex: &Vertex| Point::new(vertex.x, vertex.y);
    let (pa, pb, pc) = (place(a), place(b), place(c));
    let whole = doubled(pa, pb, pc);
    let shares = [doubled(at, pb, pc) / whole, doubled(pa, at, pc) / whole, doubled(pa, pb, at) / whole];
    // A place on a side belongs to either triangle.
    let inside = shares.iter().all(|share| *share >= -1e-9);
    inside.then(|| shares[0] * a.z + shares[1] * b.z + shares[2] * c.z)
}
