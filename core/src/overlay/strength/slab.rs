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
        Ok(Self { thickness, modulus, poisson, subgrade, square: 0.0 }.stiffened())
    }

    /// The same slab of another thickness.
    pub(super) fn as_thick(self, thickness: f64) -> Self {
        Self { thickness, ..self }.stiffened()
    }

    #[inline]
    fn stiffened(mut self) -> Self {
        let rigidity = self.modulus * self.thickness * self.thickness * self.thickness
            / (12.0 * (1.0 - self.poisson * self.poisson));
        self.square = (rigidity / self.subgrade).sqrt();
        self
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
