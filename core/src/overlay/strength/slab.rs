//! A slab on springs: thickness, stiffness, and what it rests on.

use super::PCI;
use super::concrete::MODULUS;
use crate::failure::{Result, check};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Range, Ratio, SubgradeReaction, Typed};

/// Poisson's ratio: 0 to 0.5.
pub const POISSON: Range = Range::closed(0.0, 0.5);
/// A modulus of subgrade reaction: 5 to 2000 pci.
pub const SUBGRADE: Range = Range::closed(5.0 * PCI, 2000.0 * PCI);

/// A slab on ground, large in plan, resting everywhere on springs (a Winkler foundation). Numbers in base units.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Slab {
    pub(super) thickness: f64,
    pub(super) modulus: f64,
    pub(super) poisson: f64,
    pub(super) subgrade: f64,
    /// The radius of relative stiffness, squared.
    pub(super) square: f64,
    /// One over it.
    pub(super) per_square: f64,
    /// 1 / (k l^2): what a deflection is a multiple of, for each unit of load.
    pub(super) softness: f64,
    /// 1 / h^2: what a stress is a multiple of, for each unit of load.
    pub(super) per_thickness: f64,
}

impl Slab {
    /// A slab of these.
    ///
    /// # Errors
    /// A value outside its range.
    #[inline]
    pub fn new(
        thickness: Length,
        modulus: Pressure,
        poisson: Ratio,
        subgrade: SubgradeReaction,
    ) -> Result<Self> {
        let thickness = check("thickness", thickness, SLAB)?.base();
        let modulus = check("modulus", modulus, MODULUS)?.base();
        let poisson = check("poisson", poisson, POISSON)?.base();
        let subgrade = check("subgrade", subgrade, SUBGRADE)?.base();
        Ok(Self::of(thickness, modulus, poisson, subgrade))
    }

    /// A slab of numbers that were checked.
    #[inline(always)]
    pub(super) fn of(thickness: f64, modulus: f64, poisson: f64, subgrade: f64) -> Self {
        let held = 12.0 * (1.0 - poisson * poisson);
        let (soft, stiff) = (held * subgrade, modulus * thickness * thickness * thickness);
        // All that divides is made of one division, which takes longer than all the rest.
        let per_both = 1.0 / (soft * stiff);
        let (per_soft, per_stiff) = (per_both * stiff, per_both * soft);
        let square = (stiff * per_soft).sqrt();
        let per_square = square * soft * per_stiff;
        Self {
            thickness,
            modulus,
            poisson,
            subgrade,
            square,
            per_square,
            softness: per_square * held * per_soft,
            per_thickness: modulus * thickness * per_stiff,
        }
    }

    /// The same slab of another thickness.
    pub(super) fn as_thick(self, thickness: f64) -> Self {
        Self::of(thickness, self.modulus, self.poisson, self.subgrade)
    }

    /// The radius of relative stiffness `l = (E h^3 / (12 (1 - nu^2) k))^(1/4)`.
    #[inline]
    #[must_use]
    pub fn stiffness(&self) -> Length {
        Length::from_base(self.square.sqrt())
    }

    /// Its thickness.
    #[must_use]
    pub fn thickness(&self) -> Length {
        Length::from_base(self.thickness)
    }
}

/// The radius of relative stiffness.
///
/// # Errors
/// A value outside its range.
pub fn stiffness(
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
) -> Result<Length> {
    Ok(Slab::new(thickness, modulus, poisson, subgrade)?.stiffness())
}
