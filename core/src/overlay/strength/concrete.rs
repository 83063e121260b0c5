//! Stiffness and strength of plain concrete from its compressive strength, each formula by name.

use super::PSI;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::quantity::{Density, Pressure, Range, Typed};

/// A compressive strength: 1000 to 15 000 psi.
pub const STRENGTH: Range = Range::closed(1000.0 * PSI, 15_000.0 * PSI);
/// The unit weight that the formula by density is stated for: 90 to 160 lb/ft3.
pub const DENSITY: Range = Range::closed(90.0 * PCF, 160.0 * PCF);
/// A modulus of elasticity of concrete: 0.1 to 100 GPa.
pub const MODULUS: Range = Range::closed(1.0e8, 1.0e11);
/// A modulus of rupture: 50 to 2000 psi.
pub const RUPTURE: Range = Range::closed(50.0 * PSI, 2000.0 * PSI);

const PCF: f64 = crate::quantity::units::POUND / crate::quantity::units::CUBIC_FOOT;

crate::choice! {
    /// Formulas of the modulus of rupture.
    pub enum RuptureFormula {
        /// 7.5 sqrt(f'c), psi: the building code, normal-weight concrete.
        Code = "building code, 7.5",
        /// 9 sqrt(f'c), psi: the design of floors on ground.
        Floor = "floor design, 9",
    }
}

/// `Ec = 57000 sqrt(f'c)` in psi, normal-weight concrete.
///
/// # Errors
/// A strength outside its range.
pub fn modulus(strength: Pressure) -> Result<Pressure> {
    let strength = check("strength", strength, STRENGTH)?.base() / PSI;
    Ok(Pressure::from_base(57_000.0 * strength.sqrt() * PSI))
}

/// `Ec = 33 w^1.5 sqrt(f'c)` in psi, `w` in lb/ft3.
///
/// # Errors
/// A strength or a density outside its range.
pub fn modulus_by_density(strength: Pressure, density: Density) -> Result<Pressure> {
    let strength = check("strength", strength, STRENGTH)?.base() / PSI;
    let density = check("density", density, DENSITY)?.base() / PCF;
    Ok(Pressure::from_base(33.0 * density * density.sqrt() * strength.sqrt() * PSI))
}

/// `MR = 7.5 sqrt(f'c)` or `9 sqrt(f'c)` in psi.
///
/// # Errors
/// A strength outside its range.
pub fn rupture(strength: Pressure, formula: Word<RuptureFormula>) -> Result<Pressure> {
    let strength = check("strength", strength, STRENGTH)?.base() / PSI;
    let factor = match formula.0 {
        RuptureFormula::Code => 7.5,
        RuptureFormula::Floor => 9.0,
    };
    Ok(Pressure::from_base(factor * strength.sqrt() * PSI))
}
