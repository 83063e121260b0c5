//! How much of the ponds of one surface lies under the ponds of another.

use crate::geometry::Point;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::Vertex;
use crate::grade::finish::convex::{Convex, area, common};
use crate::survey::low_spots::Water;

/// Less area than this is rounding, in square metres.
pub(super) const NOTHING: f64 = 1e-9;

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
        for (pond, piece) in &ones {
            boxes.overlapping(&extent(piece), |index| {
                if let Some((other, with)) = others.get(index) {
                    let shared = area(&common(piece, with));
                    overlap.of_first[*pond] += shared;
                    overlap.of_second[*other] += shared;
                }
            });
        }
        overlap
    }
}

/// The pieces of all ponds with the numbers of the ponds.
fn pieces(waters: &[Water]) -> Vec<(usize, Convex)> {
    let mut list = Vec::new();
    for (pond, water) in waters.iter().enumerate() {
        list.extend(water.pieces.iter().map(|piece| (pond, places(piece))));
    }
    list
}

/// The corners of a piece, each place once.
fn places(piece: &[Vertex]) -> Convex {
    let mut places: Convex = piece.iter().map(|vertex| Point::new(vertex.x, vertex.y)).collect();
    places.dedup();
    if places.len() > 1 && places.first() == places.last() {
        places.pop();
    }
    places
}

fn extent(piece: &[Point]) -> Extent {
    Extent::around(piece.iter().copied())
}
