//! The drop that the holes take.
//!
//! Over the outline the integral of the share s is a third of its area; over the work it is that less the integral over the holes. A
//! hole is cut into pieces by the facets that its places may be on. On a facet the share is linear in the place: over a piece
//! on one facet its integral is area times the share at the centroid; over one that may be on several it is at least area
//! times the least of their shares at its corners.

use super::reach::{Reaches, Seen};
use crate::geometry::Region;
use crate::grade::finish::convex::{Convex, area, centroid, common, left_over};

/// A piece of a hole.
pub(super) struct HolePiece {
    pub(super) area: f64,
    /// The facets it may be on, each with the distance from its run's line that counts.
    pub(super) seen: Vec<Seen>,
}

/// All pieces of all holes.
pub(super) fn pieces(region: &Region, reaches: &Reaches) -> Vec<HolePiece> {
    let mut pieces = Vec::new();
    for hole in region.holes() {
        let Ok(hole) = Region::new(hole.corners().to_vec(), Vec::new()) else { continue };
        for (number, reach) in reaches.each.iter().enumerate() {
            let facet = [reach.run.from, reach.run.to, reaches.about];
            for part in hole.parts().iter() {
                let on_facet = common(part, &facet);
                if on_facet.len() > 2 {
                    pieces.extend(cut(on_facet, number, reaches).iter().map(|cut| piece(cut, reaches)));
                }
            }
        }
    }
    pieces
}

/// A polygon on one facet, cut by the other reaches: each piece with the facets it may be on.
fn cut(polygon: Convex, number: usize, reaches: &Reaches) -> Vec<(Convex, Vec<usize>)> {
    let mut cut = vec![(polygon, vec![number])];
    for (other, reach) in reaches.each.iter().enumerate().filter(|(other, _)| *other != number) {
        let parted = |(polygon, facets): (Convex, Vec<usize>)| {
            let inside = common(&polygon, &reach.hull);
            if inside.len() < 3 {
                return vec![(polygon, facets)];
            }
            let mut both = vec![(inside, facets.iter().copied().chain([other]).collect())];
            both.extend(left_over(&polygon, &reach.hull).into_iter().map(|rest| (rest, facets.clone())));
            both
        };
        cut = cut.into_iter().flat_map(parted).collect();
    }
    cut
}

fn piece((polygon, facets): &(Convex, Vec<usize>), reaches: &Reaches) -> HolePiece {
    let seen = |&number: &usize| {
        let reach = &reaches.each[number];
        let left = match facets.as_slice() {
            [_] => reach.left(centroid(polygon)),
            _ => polygon.iter().map(|corner| reach.left(*corner)).fold(f64::INFINITY, f64::min),
        };
        Seen { reach: number, left }
    };
    HolePiece { area: area(polygon), seen: facets.iter().map(seen).collect() }
}
