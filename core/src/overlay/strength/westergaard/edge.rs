//! A load at a free edge, far from every corner.

use super::{Bent, narrow};
use crate::elementary::ln_ratio;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::overlay::strength::Slab;
use crate::overlay::strength::contact::{LOAD, RADIUS, equivalent};
use crate::quantity::{Force, Length, Pressure, Ratio, SubgradeReaction, Typed};
use std::f64::consts::{LN_10, PI};

crate::choice! {
    /// The contact at the edge, 1948 forms.
    pub enum EdgeForm {
        /// A circle that touches the edge from inside.
        Circle = "circle",
        /// A semicircle with its straight side on the edge; the radius is the semicircle's.
        Semicircle = "semicircle",
    }
}

/// Edge load, 1948: `s = 3 (1 + nu) P / (pi (3 + nu) h^2) (ln(E h^3 / (100 k a^4)) + c)`, `w = sqrt(2 + 1.2 nu) P / sqrt(E h^3 k) (1 - d a/l)`, with
/// circle: `c = 1.84 - 4 nu / 3 + (1 - nu) / 2 + 1.18 (1 + 2 nu) a/l`, `d = 0.76 + 0.4 nu`;
/// semicircle: `c = 3.84 - 4 nu / 3 + (1 + 2 nu) a / 2l`, `d = 0.323 + 0.17 nu`.
///
/// # Errors
/// A value outside its range; a contact wider than the radius of relative stiffness.
#[inline]
pub fn edge(
    load: Force,
    radius: Length,
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
    footprint: Word<EdgeForm>,
) -> Result<Bent> {
    let slab = Slab::new(thickness, modulus, poisson, subgrade)?;
    let load = check("load", load, LOAD)?.base();
    let radius = check("radius", radius, RADIUS)?.base();
    narrow(radius, &slab, 1.0)?;
    Ok(Bent::of(&slab, edge_on(&slab, load, radius, footprint.0)))
}

/// Stress and deflection.
#[inline(always)]
pub(crate) fn edge_on(slab: &Slab, load: f64, radius: f64, form: EdgeForm) -> (f64, f64) {
    let nu = slab.poisson;
    // What divides of Poisson's ratio, with one division.
    let per_nu = 1.0 / ((3.0 + nu) * (1.0 - nu * nu));
    let area = radius * radius;
    let wide = radius * slab.square.sqrt() * slab.per_square;
    let (of_stress, of_deflection) = match form {
        EdgeForm::Circle => (1.84 + (1.0 - nu) / 2.0 + 1.18 * (1.0 + 2.0 * nu) * wide, 0.76 + 0.4 * nu),
        EdgeForm::Semicircle => (3.84 + (1.0 + 2.0 * nu) * wide / 2.0, 0.323 + 0.17 * nu),
    };
    // E h^3 / k is 12 (1 - nu^2) l^4.
    let log = ln_ratio(0.12 * (1.0 - nu * nu) * slab.square * slab.square, area * area);
    let stress = 3.0 / PI
        * (1.0 + nu)
        * load
        * slab.per_thickness
        * per_nu
        * (1.0 - nu * nu)
        * (log - 4.0 / 3.0 * nu + of_stress);
    let share = (2.0 + 1.2 * nu) * (per_nu * (3.0 + nu) * (1.0 / 12.0));
    let deflection = load * slab.softness * share.sqrt() * (1.0 - of_deflection * wide);
    (stress, deflection)
}

/// Edge load, 1926, for Poisson's ratio 0.15: `s = 0.572 P / h^2 (4 log10(l/b) + 0.359)`; it gives no deflection. The forms of 1948 give
/// a quarter to a half more.
///
/// # Errors
/// A value outside its range; a contact wider than the radius of relative stiffness.
#[inline]
pub fn edge_1926(
    load: Force,
    radius: Length,
    thickness: Length,
    modulus: Pressure,
    subgrade: SubgradeReaction,
) -> Result<Pressure> {
    let slab = Slab::new(thickness, modulus, Ratio::from_base(0.15), subgrade)?;
    let load = check("load", load, LOAD)?.base();
    let radius = check("radius", radius, RADIUS)?.base();
    narrow(radius, &slab, 1.0)?;
    let b = equivalent(radius, slab.thickness);
    let log = ln_ratio(slab.square, b * b) / LN_10;
    Ok(Pressure::from_base(0.572 * load / (slab.thickness * slab.thickness) * (2.0 * log + 0.359)))
}
