//! Volumes of plain bodies: ramps, aprons, footings, thickened edges.

use crate::failure::{Result, check};
use crate::quantity::{Area, Length, Range, Typed, Volume};

/// The length of a body: more than none, up to 10 km.
pub const LENGTH: Range = Range::positive_to(1.0e4);
/// The area of a section: none, or up to a square kilometre.
pub const SECTION: Range = Range::closed(0.0, 1.0e6);

/// The depth of a body: more than none, up to 100 m.
pub const DEPTH: Range = Range::positive_to(100.0);

/// The volume of a body of these measures: `V = length x width x depth`, for a ramp or a wedge with its mean depth.
///
/// # Errors
/// A measure outside its range.
pub fn block(length: Length, width: Length, depth: Length) -> Result<Volume> {
    let length = check("length", length, LENGTH)?;
    let width = check("width", width, LENGTH)?;
    let depth = check("depth", depth, DEPTH)?;
    Ok(length * width * depth)
}

/// The volume of a body between two end sections with a third half way: `V = L (A1 + 4 Am + A2) / 6`.
///
/// # Errors
/// A length or a section outside its range.
pub fn prismoid(length: Length, first: Area, middle: Area, last: Area) -> Result<Volume> {
    let length = check("length", length, LENGTH)?.base();
    let first = check("first", first, SECTION)?.base();
    let middle = check("middle", middle, SECTION)?.base();
    let last = check("last", last, SECTION)?.base();
    Ok(Volume::from_base(length * (first + 4.0 * middle + last) / 6.0))
}
