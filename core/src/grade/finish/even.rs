//! The plane of a facet through all its corners, or by how much they are out of one plane.

use super::HEIGHT;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::predicates::cross;
use crate::geometry::{Plane, Point, Scatter};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::words::both_fine;

/// Corners may be so far off one plane, in metres: 1e-6 ft, more than rounding makes and less than any mark shows. A facet
/// farther off would not meet its neighbours.
const ROUNDING: f64 = 1e-6 * 0.3048;

/// A corner with its height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct High {
    pub(super) at: Point,
    pub(super) height: f64,
}

/// The plane through the corners.
///
/// # Errors
/// `FACET_SHAPE` where they do not tell a plane, `FACET_WARPED` where one of them stands off it, with the gap.
pub(super) fn plane(corners: &[High], path: &str, called: &dyn Fn(usize) -> String) -> Result<Plane> {
    for (index, corner) in corners.iter().enumerate() {
        check(&format!("{path}[{index}].elevation"), Elevation::from_base(corner.height), HEIGHT)?;
    }
    let scatter = Scatter::of(corners.iter().map(|corner| [corner.at.x, corner.at.y, corner.height]));
    let best = scatter.plane().map_err(|_| {
        Failure::new(Code::FacetShape, path)
            .written("no three heights off one line")
            .allowed("the heights of three corners that span a triangle")
            .remedy("give one more height, off the line of the others")
    })?;
    let (of, off, gap) = worst(corners);
    if gap.abs() <= ROUNDING {
        return Ok(best);
    }
    let names = of.map(called).join(", ");
    let (by, side) = (both_fine(Length::from_base(gap.abs())), if gap > 0.0 { "over" } else { "under" });
    Err(Failure::new(Code::FacetWarped, path)
        .written(format!("{} stands {by} {side} the plane of {names}", called(off)))
        .allowed("corners in one plane")
        .remedy("split the facet into triangles, or change that height"))
}

/// The three corners that span the widest triangle, in their order, and the corner farthest off their plane with its gap.
fn worst(corners: &[High]) -> ([usize; 3], usize, f64) {
    let most = |of: &dyn Fn(Point) -> f64| {
        let sizes = corners.iter().map(|corner| of(corner.at)).enumerate();
        // Of equal ones the first.
        sizes
            .fold(
                (0, f64::NEG_INFINITY),
                |best, next| if next.1 > best.1 * (1.0 + 1e-12) { next } else { best },
            )
            .0
    };
    let first = 0;
    let at = |index: usize| corners.get(index).map_or_else(Point::default, |corner| corner.at);
    let second = most(&|place| place.distance(at(first)));
    let third = most(&|place| cross(at(first), at(second), place).abs());
    let mut of = [first, second, third];
    of.sort_unstable();
    let three =
        of.map(|index| corners.get(index).map_or([0.0; 3], |high| [high.at.x, high.at.y, high.height]));
    let gaps = Plane::through(three).map(|plane| {
        let gap = |high: &High| high.height - plane.height_at(high.at);
        let gaps = corners.iter().map(gap).enumerate();
        gaps.fold((0, 0.0_f64), |worst, next| if next.1.abs() > worst.1.abs() { next } else { worst })
    });
    let (off, gap) = gaps.unwrap_or((0, 0.0));
    (of, off, gap)
}
