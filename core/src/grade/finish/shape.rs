//! The polygon of a facet from its corners in plan.

use super::say;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Region, RegionError};
use crate::quantity::{Length, Typed};
use crate::survey::words::both_fine;

/// A facet narrower than this, in metres, has no slope that could be struck off: 1/16 in.
const NARROWEST: f64 = 0.0254 / 16.0;

/// The polygon with these corners, either way round. `called` says what a corner is called.
///
/// # Errors
/// `FACET_SHAPE`, `NOT_FINITE`, `OUT_OF_RANGE`.
pub(super) fn region(corners: &[Point], path: &str, called: &dyn Fn(usize) -> String) -> Result<Region> {
    Region::new(corners.to_vec(), Vec::new()).map_err(|error| {
        let what = match error {
            RegionError::NotFinite { corner, x, y, limit, .. } => {
                return far_away(path, corner, [x, y], limit);
            }
            RegionError::TooFewCorners { corners, .. } => format!("{corners} corners"),
            RegionError::RepeatedCorner { first, second, at, .. } => {
                format!("{} and {} are both at {}", called(first), called(second), say::place(at))
            }
            RegionError::Crossing { first, second, at } => {
                let after = |run: usize| called((run + 1) % corners.len());
                let side = |run: usize| format!("{} to {}", called(run), after(run));
                format!("{} meets {} at {}", side(first.index), side(second.index), say::place(at))
            }
            _ => "all corners on one line".to_owned(),
        };
        Failure::new(Code::FacetShape, path)
            .written(what)
            .allowed("at least 3 corners in order round the facet, not on one line")
            .remedy("check the order of the corners and their places")
    })
}

/// Refuses a facet so narrow that its slope across would be made of rounding.
///
/// # Errors
/// `FACET_SHAPE`.
pub(super) fn refuse_needle(region: &Region, path: &str) -> Result<()> {
    let corners = region.outer().corners();
    let from_each = corners.iter().flat_map(|a| corners.iter().map(move |b| a.distance(*b)));
    let longest = from_each.fold(0.0, f64::max);
    let width = region.area() / longest;
    if width >= NARROWEST {
        return Ok(());
    }
    let [width, least] = [width, NARROWEST].map(|width| both_fine(Length::from_base(width)));
    Err(Failure::new(Code::FacetShape, path)
        .written(format!("a needle {width} wide"))
        .allowed(format!("at least {least} across"))
        .remedy("leave the needle out and let its neighbours meet"))
}

fn far_away(path: &str, corner: usize, [x, y]: [f64; 2], limit: f64) -> Box<Failure> {
    let code = if x.is_finite() && y.is_finite() { Code::OutOfRange } else { Code::NotFinite };
    Failure::new(code, format!("{path}[{corner}]"))
        .written(format!("x {x} m, y {y} m"))
        .allowed(format!("finite numbers, at most {limit} m from the origin"))
        .remedy("measure from a corner of the work")
}
