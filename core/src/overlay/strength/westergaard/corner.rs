//! A load in a corner.

use super::{Bent, narrow};
use crate::elementary::power;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::overlay::strength::Slab;
use crate::overlay::strength::contact::{LOAD, RADIUS};
use crate::quantity::{Force, Length, Pressure, Range, Ratio, SubgradeReaction, Typed};
use std::f64::consts::SQRT_2;

/// A radius of relative stiffness: 1 cm to 50 m.
pub const STIFFNESS: Range = Range::closed(0.01, 50.0);

crate::choice! {
    /// Forms of the corner load.
    pub enum CornerForm {
        /// Westergaard, 1926.
        Westergaard = "Westergaard 1926",
        /// Ioannides, Thompson and Barenberg, 1985.
        Ioannides = "Ioannides 1985",
    }
}

crate::choice! {
    /// Forms of the distance of the corner crack.
    pub enum CrackForm {
        /// 2.58 sqrt(a l): Indian textbooks.
        Textbook = "textbook, 2.58",
        /// 2 sqrt(a1 l) with a1 = a sqrt 2: Westergaard.
        Westergaard = "Westergaard, 2.38",
    }
}

impl CornerForm {
    /// Reach of the contact from the corner over its radius.
    const fn reach(self) -> f64 {
        match self {
            Self::Westergaard => SQRT_2,
            Self::Ioannides => 1.772,
        }
    }

    /// The widest contact, in radii of relative stiffness. Ours: up to here a plate by finite elements has no more than 8 % more
    /// stress than the form gives; beyond, the forms fall off too fast (Ioannides is a third too low at 0.37).
    pub(crate) const fn widest(self) -> f64 {
        match self {
            Self::Westergaard => 0.35,
            Self::Ioannides => 0.25,
        }
    }
}

/// Corner load: Westergaard `s = 3 P / h^2 (1 - (a sqrt2 / l)^0.6)`, `w = P / (k l^2) (1.1 - 0.88 a sqrt2 / l)`;
/// Ioannides, with c = 1.772 a: `s = 3 P / h^2 (1 - (c/l)^0.72)`, `w = P / (k l^2) (1.205 - 0.69 c/l)`.
///
/// # Errors
/// A value outside its range; a contact wider than the formula is good for.
#[inline]
pub fn corner(
    load: Force,
    radius: Length,
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
    formula: Word<CornerForm>,
) -> Result<Bent> {
    let slab = Slab::new(thickness, modulus, poisson, subgrade)?;
    let load = check("load", load, LOAD)?.base();
    let radius = check("radius", radius, RADIUS)?.base();
    narrow(radius, &slab, formula.0.widest())?;
    Ok(Bent::of(&slab, corner_on(&slab, load, radius, formula.0)))
}

/// Stress and deflection.
#[inline(always)]
pub(crate) fn corner_on(slab: &Slab, load: f64, radius: f64, form: CornerForm) -> (f64, f64) {
    let wide = form.reach() * radius * slab.square.sqrt() * slab.per_square;
    let (stress, deflection) = match form {
        CornerForm::Westergaard => (1.0 - power(wide, 0.6), 1.1 - 0.88 * wide),
        CornerForm::Ioannides => (1.0 - power(wide, 0.72), 1.205 - 0.69 * wide),
    };
    let by_thickness = 3.0 * load * slab.per_thickness;
    (by_thickness * stress, load * slab.softness * deflection)
}

/// Where a corner breaks off, from the corner along its bisector: `2.58 sqrt(a l)` or `2 sqrt(sqrt2 a l)`.
///
/// # Errors
/// A value outside its range.
pub fn crack_distance(radius: Length, stiffness: Length, formula: Word<CrackForm>) -> Result<Length> {
    let radius = check("radius", radius, RADIUS)?.base();
    let stiffness = check("stiffness", stiffness, STIFFNESS)?.base();
    let distance = match formula.0 {
        CrackForm::Textbook => 2.58 * (radius * stiffness).sqrt(),
        CrackForm::Westergaard => 2.0 * (SQRT_2 * radius * stiffness).sqrt(),
    };
    Ok(Length::from_base(distance))
}
