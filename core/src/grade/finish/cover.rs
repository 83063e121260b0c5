//! Whether facets cover the whole of a work.

use super::convex::{Convex, area, centroid, left_over};
use super::facet::Facet;
use super::say;
use crate::failure::{Code, Failure, Result};
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::{Point, Region};

/// The share of the work that may be lost to rounding.
pub(super) const ROUNDING: f64 = 1e-9;

/// Refuses facets that leave a part of the work uncovered, telling how much of it and where the largest hole is.
pub(super) fn refuse_holes(facets: &[Facet], work: &Region) -> Result<()> {
    let parts: Vec<&[Point]> = facets.iter().flat_map(|facet| facet.region().parts().iter()).collect();
    let boxes = Boxes::new(parts.iter().map(|part| Extent::around(part.iter().copied())).collect());
    let (mut all, mut most, mut at) = (0.0, 0.0, Point::default());
    for open in work.parts().iter().flat_map(|part| open_parts(part, &parts, &boxes)) {
        let size = area(&open);
        all += size;
        if size > most {
            (most, at) = (size, centroid(&open));
        }
    }
    if all <= ROUNDING * work.area() {
        return Ok(());
    }
    Err(hole(all, at))
}

pub(super) fn hole(area: f64, at: Point) -> Box<Failure> {
    Failure::new(Code::FacetsLeaveHole, "finish.facets")
        .written(format!(
            "{} of the work is under no facet, most of it about {}",
            say::area(area),
            say::place(at)
        ))
        .allowed("facets that cover the work; they may reach outside it")
        .remedy("add a facet there, or let the neighbours use the same corners")
}

/// What all facets' parts leave of one convex part of the work.
fn open_parts(work: &[Point], parts: &[&[Point]], boxes: &Boxes) -> Vec<Convex> {
    let mut open = vec![work.to_vec()];
    boxes.overlapping(&Extent::around(work.iter().copied()), |index| {
        if let Some(part) = parts.get(index) {
            open = open.iter().flat_map(|polygon| left_over(polygon, part)).collect();
        }
    });
    open
}
