//! Deflection and moments at a distance from a load on a circle.

use super::bessel::{SERIES, by_square, i0, i1_over, k0_k1, one_and};
use crate::failure::{Result, check};
use crate::overlay::strength::contact::RADIUS;
use crate::overlay::strength::slab::POISSON;
use crate::overlay::strength::westergaard::{STIFFNESS, too_wide};
use crate::quantity::{Length, Range, Ratio, Typed};
use num_complex::Complex64;
use std::f64::consts::{FRAC_PI_4, PI};

/// How far the place is from the middle of the load: none, or up to 1 km.
pub const DISTANCE: Range = Range::closed(0.0, 1000.0);

/// The widest contact in radii of relative stiffness: up to here the series are good to 1e-13.
const WIDEST: f64 = 2.0;

/// What a load does at a distance, for each unit of it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Influence {
    /// Deflection over `P / (k l^2)`.
    pub deflection: f64,
    /// Moment towards the load over `P`, for each unit of width.
    pub radial: f64,
    /// Moment across it over `P`, for each unit of width.
    pub tangential: f64,
}

/// The influence at a distance from a load on a circle, in a large plate on springs.
///
/// # Errors
/// A value outside its range.
pub fn influence(distance: Length, radius: Length, stiffness: Length, poisson: Ratio) -> Result<Influence> {
    let distance = check("distance", distance, DISTANCE)?.base();
    let radius = check("radius", radius, RADIUS)?.base();
    let stiffness = check("stiffness", stiffness, STIFFNESS)?.base();
    let poisson = check("poisson", poisson, POISSON)?.base();
    if radius > WIDEST * stiffness {
        return Err(too_wide("radius", radius, WIDEST * stiffness));
    }
    Ok(disc(distance / stiffness, radius / stiffness, poisson))
}

/// The influence, distance and radius in radii of relative stiffness.
pub(crate) fn disc(distance: f64, radius: f64, poisson: f64) -> Influence {
    let ray = Complex64::from_polar(1.0, FRAC_PI_4);
    let (at, edge) = (ray * distance, ray * radius);
    // The mean of K0 over the circle, and its slope over the distance.
    let (mean, slope) =
        if distance < radius { inside(at, edge, ray, radius) } else { outside(at, edge, ray, distance) };
    let half = 0.5 / PI;
    Influence {
        deflection: -half * mean.im,
        radial: half * (mean.re - (1.0 - poisson) * slope.im),
        tangential: half * (poisson * mean.re + (1.0 - poisson) * slope.im),
    }
}

fn outside(at: Complex64, edge: Complex64, ray: Complex64, distance: f64) -> (Complex64, Complex64) {
    let (k0, k1) = k0_k1(at);
    let spread = i1_over(edge);
    (k0 * spread, -ray * k1 * spread / distance)
}

fn inside(at: Complex64, edge: Complex64, ray: Complex64, radius: f64) -> (Complex64, Complex64) {
    // (1 - z K1(z)) / z^2 at the rim: K1 itself is nearly 1 / z there, and differences with it would lose all digits of a small circle.
    let lacks =
        if edge.norm() <= SERIES { by_square(edge) } else { (1.0 - edge * k0_k1(edge).1) / (edge * edge) };
    // 1 - z K1 I0 as (1 - z K1) I0 - (I0 - 1).
    let mean = 2.0 * (lacks * i0(at) - one_and(at) / (edge * edge));
    // -s^2 K1(z) / z with z = s c: -1 / c^2 + s^2 lacks.
    let slope = i1_over(at) * (ray * ray * lacks - 1.0 / (radius * radius));
    (mean, slope)
}
