//! The circle on which a load stands.

use crate::failure::{Result, check};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Force, Length, Pressure, Range, Typed};
use std::f64::consts::PI;

/// A load: more than none, up to 10 MN.
pub const LOAD: Range = Range::positive_to(1.0e7);
/// A contact pressure: 1 kPa to 100 MPa.
pub const PRESSURE: Range = Range::closed(1.0e3, 1.0e8);
/// The radius of a contact: 1 mm to 5 m.
pub const RADIUS: Range = Range::closed(0.001, 5.0);
/// Middle to middle of dual tyres: 5 cm to 2 m.
pub const SPACING: Range = Range::closed(0.05, 2.0);

/// The radius of the circle that carries a load at a pressure: `a = sqrt(P / (pi p))`.
///
/// # Errors
/// A value outside its range.
pub fn radius(load: Force, pressure: Pressure) -> Result<Length> {
    let load = check("load", load, LOAD)?.base();
    let pressure = check("pressure", pressure, PRESSURE)?.base();
    Ok(Length::from_base((load / (PI * pressure)).sqrt()))
}

/// The circle that stands for dual tyres: `a = sqrt(0.8521 P / (pi q) + (S / pi) sqrt(P / (0.5227 q)))`, P on one of the two.
///
/// # Errors
/// A value outside its range.
pub fn dual_radius(load: Force, pressure: Pressure, spacing: Length) -> Result<Length> {
    let load = check("load", load, LOAD)?.base();
    let pressure = check("pressure", pressure, PRESSURE)?.base();
    let spacing = check("spacing", spacing, SPACING)?.base();
    let area = load / pressure;
    Ok(Length::from_base((0.8521 * area / PI + spacing / PI * (area / 0.5227).sqrt()).sqrt()))
}

/// Westergaard's equivalent radius: `b = sqrt(1.6 a^2 + h^2) - 0.675 h` where `a < 1.724 h`, else `b = a`.
///
/// # Errors
/// A value outside its range.
pub fn equivalent_radius(radius: Length, thickness: Length) -> Result<Length> {
    let radius = check("radius", radius, RADIUS)?.base();
    let thickness = check("thickness", thickness, SLAB)?.base();
    Ok(Length::from_base(equivalent(radius, thickness)))
}

#[inline(always)]
pub(super) fn equivalent(radius: f64, thickness: f64) -> f64 {
    let small = (1.6 * radius * radius + thickness * thickness).sqrt() - 0.675 * thickness;
    if radius < 1.724 * thickness { small } else { radius }
}
