//! A load far from every edge.

use super::{Bent, narrow};
use crate::elementary::ln_ratio;
use crate::failure::{Result, check};
use crate::overlay::strength::Slab;
use crate::overlay::strength::contact::{LOAD, RADIUS, equivalent};
use crate::quantity::{Force, Length, Pressure, Ratio, SubgradeReaction, Typed};
use std::f64::consts::{LN_2, PI};

/// Euler's constant.
pub(crate) const GAMMA: f64 = 0.577_215_664_901_532_9;
/// The constant of the interior stress, 0.6159.
pub(crate) const OF_STRESS: f64 = LN_2 + 0.5 - GAMMA;
/// The constant of the interior deflection, -0.673.
const OF_DEFLECTION: f64 = GAMMA - 1.25;

/// Interior load, 1926: `s = 3 (1 + nu) P / (2 pi h^2) (ln(l/b) + 0.6159)`,
/// `w = P / (8 k l^2) (1 + (ln(a / 2l) - 0.673) (a/l)^2 / 2 pi)`.
///
/// # Errors
/// A value outside its range; a contact wider than the radius of relative stiffness.
#[inline]
pub fn interior(
    load: Force,
    radius: Length,
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
) -> Result<Bent> {
    let slab = Slab::new(thickness, modulus, poisson, subgrade)?;
    let load = check("load", load, LOAD)?.base();
    let radius = check("radius", radius, RADIUS)?.base();
    narrow(radius, &slab, 1.0)?;
    Ok(Bent::of(&slab, interior_on(&slab, load, radius)))
}

/// Stress and deflection.
#[inline(always)]
pub(crate) fn interior_on(slab: &Slab, load: f64, radius: f64) -> (f64, f64) {
    let b = equivalent(radius, slab.thickness);
    let share = radius * radius * slab.per_square;
    let log_b = 0.5 * ln_ratio(slab.square, b * b);
    let log_a = 0.5 * ln_ratio(radius * radius, slab.square);
    let stress = 1.5 / PI * (1.0 + slab.poisson) * load * slab.per_thickness * (log_b + OF_STRESS);
    let deflection = load * slab.softness / 8.0 * (1.0 + (log_a - LN_2 + OF_DEFLECTION) * share * (0.5 / PI));
    (stress, deflection)
}
