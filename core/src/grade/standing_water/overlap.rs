//! How much of the ponds of one surface lies under the ponds of another.

use crate::geometry::Point;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::{Line, Vertex, keep_left};
use crate::survey::low_spots::Water;

/// Less area than this is rounding, in square metres.
pub(super) const NOTHING: f64 = 1e-9;

/// A corner so near to a line is on it, in metres.
const HAIR: f64 = 1e-12;

/// The common area of ponds.
pub(super) struct Overlap {
    /// For each pond of the first surface what of it lies in ponds of the second.
    pub(super) of_first: Vec<f64>,
    /// For each pond of the second surface what of it lies in ponds of the first.
    pub(super) of_second: Vec<f64>,
}

impl Overlap {
    pub(super) fn of(first: &[Water], second: &[Water]) -> Self {
        let (ones, others) = (pieces(first), pieces(second));
        let boxes = Boxes::new(others.iter().map(|(_, piece)| extent(piece)).collect());
        let mut overlap = Self { of_first: vec![0.0; first.len()], of_second: vec![0.0; second.len()] };
        for (pond, piece) in ones {
            boxes.overlapping(&extent(piece), |index| {
                if let Some(&(other, with)) = others.get(index) {
                    let common = common(piece, with);
                    overlap.of_first[pond] += common;
                    overlap.of_second[other] += common;
                }
            });
        }
        overlap
    }
}

/// The pieces of all ponds with the numbers of the ponds.
fn pieces(waters: &[Water]) -> Vec<(usize, &[Vertex])> {
    let mut list = Vec::new();
    for (pond, water) in waters.iter().enumerate() {
        list.extend(water.pieces.iter().map(|piece| (pond, piece.as_slice())));
    }
    list
}

fn place(vertex: &Vertex) -> Point {
    Point::new(vertex.x, vertex.y)
}

fn extent(piece: &[Vertex]) -> Extent {
    Extent::around(piece.iter().map(place))
}

/// The area that two convex polygons have in common.
fn common(one: &[Vertex], other: &[Vertex]) -> f64 {
    let (mut kept, mut next) = (one.to_vec(), Vec::new());
    let Some(mut from) = other.last() else { return 0.0 };
    for to in other {
        if place(from) != place(to) {
            keep_left(&kept, &Line::through(place(from), place(to)), HAIR, &mut next);
            std::mem::swap(&mut kept, &mut next);
        }
        from = to;
    }
    let Some((first, rest)) = kept.split_first() else { return 0.0 };
    let doubled =
        |pair: &[Vertex]| crate::geometry::predicates::cross(place(first), place(&pair[0]), place(&pair[1]));
    (0.5 * rest.windows(2).map(doubled).sum::<f64>()).max(0.0)
}
