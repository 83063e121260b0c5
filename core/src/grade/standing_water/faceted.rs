//! Facets over a region as triangles that share their corners.

use crate::geometry::clip::{Line, MADE, Vertex, keep_left};
use crate::geometry::network::Network;
use crate::geometry::{Plane, Point, Region};

/// The triangles of facets, each a plane over its region (or over everything), cut by the outline.
pub(super) fn network(outline: &Region, facets: &[(Option<&Region>, Plane)]) -> Network {
    with_facets(outline, facets).0
}

/// The triangles, and the facet of each of those they were made from.
pub(in crate::grade) fn with_facets(
    outline: &Region,
    facets: &[(Option<&Region>, Plane)],
) -> (Network, Vec<u32>) {
    let (low, high) = outline.bounds();
    let hair = 32.0 * f64::EPSILON * (high.x - low.x).max(high.y - low.y);
    let (mut corners, mut triangles, mut owners) = (Vec::new(), Vec::new(), Vec::new());
    let (mut kept, mut next) = (Vec::new(), Vec::new());
    for part in outline.parts().iter() {
        for (owner, (region, plane)) in (0_u32..).zip(facets) {
            let whole = region.is_none().then_some(part);
            let facet_parts = region.iter().flat_map(|region| region.parts().iter());
            for facet in whole.into_iter().chain(facet_parts) {
                // Near the outline coordinates are small, whatever the axes.
                kept.clear();
                kept.extend(facet.iter().map(|&at| local(at, low)));
                cut_by(part, low, hair, &mut kept, &mut next);
                let first = corners.len() as u32;
                corners.extend(kept.iter().map(|vertex| {
                    let at = Point::new(vertex.x + low.x, vertex.y + low.y);
                    [at.x, at.y, plane.height_at(at)]
                }));
                triangles.extend((2..kept.len() as u32).map(|at| [first, first + at - 1, first + at]));
                owners.resize(triangles.len(), owner);
            }
        }
    }
    (Network::joined(&corners, &triangles).network, owners)
}

fn local(at: Point, origin: Point) -> Vertex {
    Vertex { x: at.x - origin.x, y: at.y - origin.y, z: 0.0, id: MADE }
}

/// Keeps what of a convex polygon is inside a convex part.
fn cut_by(part: &[Point], origin: Point, hair: f64, kept: &mut Vec<Vertex>, next: &mut Vec<Vertex>) {
    let Some(last) = part.last() else { return };
    let place = |at: &Point| Point::new(at.x - origin.x, at.y - origin.y);
    let mut from = place(last);
    for corner in part {
        let to = place(corner);
        keep_left(kept, &Line::through(from, to), hair, next);
        std::mem::swap(kept, next);
        from = to;
    }
}
