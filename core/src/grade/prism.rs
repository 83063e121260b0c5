//! One triangle of fill: the volume between the old slab and the finish, split where they meet.

use crate::failure::{Result, check};
use crate::quantity::{Area, Length, Range, Typed, Volume};

/// The plan area of a triangle: more than none, up to a square kilometre.
pub const AREA: Range = Range::positive_to(1.0e6);
/// A thickness at a corner: up to 100 m above or below.
pub const THICKNESS: Range = Range::closed(-100.0, 100.0);

/// The volume over one triangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Prism {
    /// Fill less high spots.
    pub net: Volume,
    /// Where the finish lies above the old slab.
    pub fill: Volume,
    /// Where the old slab stands above the finish, as a positive volume.
    pub high: Volume,
}

/// The volume over a triangle of plan area `area` with these thicknesses at its corners, by the truncated prism
/// `V = A (t1 + t2 + t3) / 3`, split at the zero line in closed form.
///
/// # Errors
/// An area or a thickness outside its range.
pub fn triangular_prism(
    area: Area,
    thickness_1: Length,
    thickness_2: Length,
    thickness_3: Length,
) -> Result<Prism> {
    let area = check("area", area, AREA)?.base();
    let corners = [
        check("thickness_1", thickness_1, THICKNESS)?.base(),
        check("thickness_2", thickness_2, THICKNESS)?.base(),
        check("thickness_3", thickness_3, THICKNESS)?.base(),
    ];
    let net = area * (corners[0] + corners[1] + corners[2]) / 3.0;
    let high = area * below_zero(corners);
    Ok(Prism {
        net: Volume::from_base(net),
        fill: Volume::from_base(net + high),
        high: Volume::from_base(high),
    })
}

/// The volume below zero over a triangle of unit area, as a positive number.
fn below_zero(mut corners: [f64; 3]) -> f64 {
    corners.sort_by(f64::total_cmp);
    let [low, middle, high] = corners;
    if low >= 0.0 {
        0.0
    } else if middle >= 0.0 {
        // One corner below: a small triangle, a cubic in its depth.
        -low * (low / (low - middle)) * (low / (low - high)) / 3.0
    } else if high > 0.0 {
        let above = high * (high / (high - low)) * (high / (high - middle)) / 3.0;
        above - (low + middle + high) / 3.0
    } else {
        -(low + middle + high) / 3.0
    }
}
