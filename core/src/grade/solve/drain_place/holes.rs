//! How much of the drop the holes take at least, whatever place of a cell the drain is at.

use super::bound::Reach;
use crate::geometry::{Point, Region, RingId};
use crate::grade::finish::convex::{Convex, area, centroid, common, left_over};

/// A lower bound of the integral of s over the holes.
///
/// About one place of the cell a part of a hole is on the facet of run j. Where it is in no other reach, it is on that facet for every
/// other place too, and s is at least dist(p, line j) / (greatest of dist(B, line j)), which is linear; in several reaches s is at
/// least 0.
pub(super) fn least(region: &Region, reaches: &[Reach], place: Point) -> f64 {
    let mut sum = 0.0;
    for hole in region.holes() {
        debug_assert!(!matches!(hole.id(), RingId::Outer));
        let Ok(hole) = Region::new(hole.corners().to_vec(), Vec::new()) else { continue };
        for (number, reach) in reaches.iter().enumerate() {
            let facet = [reach.run.from, reach.run.to, place];
            for part in hole.parts().iter() {
                sum += alone(common(part, &facet), reaches, number)
                    .iter()
                    .map(|piece| area(piece) * reach.left(centroid(piece)) / reach.from_cell[1])
                    .sum::<f64>();
            }
        }
    }
    sum
}

/// What of a polygon is in one reach alone.
fn alone(polygon: Convex, reaches: &[Reach], number: usize) -> Vec<Convex> {
    let mut rest = if polygon.len() > 2 { vec![polygon] } else { Vec::new() };
    for other in reaches.iter().enumerate().filter(|(other, _)| *other != number).map(|(_, reach)| reach) {
        rest = rest.iter().flat_map(|piece| left_over(piece, &other.hull)).collect();
    }
    rest
}
