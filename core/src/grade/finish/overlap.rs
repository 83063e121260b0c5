//! Facets that lie over one another.

use super::convex::{area, centroid, common};
use super::facet::Facet;
use super::facets::called;
use super::say;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;

/// Facets may share so much of the smaller one's area by rounding, and no more.
const ROUNDING: f64 = 1e-9;

/// Refuses facets that overlap, telling the pair with the most area in common.
pub(super) fn refuse(facets: &[Facet]) -> Result<()> {
    let mut worst: Option<(f64, Point, [usize; 2])> = None;
    for (second, facet) in facets.iter().enumerate() {
        for (first, other) in facets.iter().enumerate().take(second) {
            if !boxes_meet(facet, other) {
                continue;
            }
            let (shared, at) = shared(facet, other);
            let allowed = ROUNDING * facet.region().area().min(other.region().area());
            if shared > allowed && worst.is_none_or(|(most, ..)| shared > most) {
                worst = Some((shared, at, [first, second]));
            }
        }
    }
    let Some((shared, at, [first, second])) = worst else { return Ok(()) };
    let (one, other) = (called(facets, first), called(facets, second));
    Err(Failure::new(Code::FacetsOverlap, format!("facets[{second}]"))
        .written(format!("{one} and {other} overlap by {} about {}", say::area(shared), say::place(at)))
        .allowed("facets side by side")
        .remedy("let both use the same corners along the line where they meet"))
}

/// The area two facets have in common, and the middle of the largest piece of it.
fn shared(facet: &Facet, other: &Facet) -> (f64, Point) {
    let (mut all, mut most, mut at) = (0.0, 0.0, Point::default());
    for part in facet.region().parts().iter() {
        for of_other in other.region().parts().iter() {
            let both = common(part, of_other);
            let size = area(&both);
            all += size;
            if size > most {
                (most, at) = (size, centroid(&both));
            }
        }
    }
    (all, at)
}

fn boxes_meet(facet: &Facet, other: &Facet) -> bool {
    let ((low, high), (other_low, other_high)) = (facet.region().bounds(), other.region().bounds());
    low.x <= other_high.x && other_low.x <= high.x && low.y <= other_high.y && other_low.y <= high.y
}
