//! Stress from a difference of temperature between top and bottom (Bradbury).

use super::Slab;
use super::westergaard::STIFFNESS;
use crate::failure::{Result, check};
use crate::quantity::{
    Length, Pressure, Range, Ratio, SubgradeReaction, TemperatureDifference, ThermalExpansion, Typed,
};

/// A side of a slab between joints: 0.1 m to 200 m.
pub const SIDE: Range = Range::closed(0.1, 200.0);
/// A coefficient of thermal expansion: 1e-6 to 30e-6 per kelvin.
pub const EXPANSION: Range = Range::closed(1.0e-6, 3.0e-5);
/// A difference of temperature between top and bottom, whichever is warmer: up to 60 K.
pub const DIFFERENCE: Range = Range::closed(0.0, 60.0);

/// Stresses from curling, and the coefficients behind them.
#[derive(Clone, Copy, Debug)]
pub struct Curled {
    /// In the middle of the slab, along its length.
    pub interior_length: Pressure,
    /// In the middle of the slab, along its width.
    pub interior_width: Pressure,
    /// In the middle of an edge that runs along the length.
    pub edge_length: Pressure,
    /// In the middle of an edge that runs along the width.
    pub edge_width: Pressure,
    /// The coefficient of the length.
    pub of_length: Ratio,
    /// The coefficient of the width.
    pub of_width: Ratio,
}

/// Bradbury's coefficient: `C = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m)`, `m = L / (l sqrt 8)`.
///
/// # Errors
/// A value outside its range.
pub fn coefficient(side: Length, stiffness: Length) -> Result<Ratio> {
    let side = check("side", side, SIDE)?.base();
    let stiffness = check("stiffness", stiffness, STIFFNESS)?.base();
    Ok(Ratio::from_base(bradbury(side / stiffness)))
}

/// The coefficient over the side in radii of relative stiffness.
fn bradbury(side: f64) -> f64 {
    let m = side / 8.0_f64.sqrt();
    // Beyond this the middle does not feel the ends: what is left is under 1e-13, and the hyperbolic functions would overflow.
    if m > 32.0 {
        return 1.0;
    }
    // cos m (tan m + tanh m), written without the tangent, which has poles.
    let middle = m.sin() * m.cosh() + m.cos() * m.sinh();
    let ends = (2.0 * m).sin() + (2.0 * m).sinh();
    1.0 - 2.0 * middle / ends
}

/// Curling stress: at an edge `s = C E alpha dT / 2`, in the middle `s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy)`.
///
/// # Errors
/// A value outside its range.
#[expect(clippy::too_many_arguments, reason = "one port each")]
pub fn curling(
    length: Length,
    width: Length,
    thickness: Length,
    modulus: Pressure,
    poisson: Ratio,
    subgrade: SubgradeReaction,
    expansion: ThermalExpansion,
    difference: TemperatureDifference,
) -> Result<Curled> {
    let slab = Slab::new(thickness, modulus, poisson, subgrade)?;
    let length = check("length", length, SIDE)?.base();
    let width = check("width", width, SIDE)?.base();
    let expansion = check("expansion", expansion, EXPANSION)?.base();
    let difference = check("difference", difference, DIFFERENCE)?.base();
    let stiffness = slab.square.sqrt();
    let (of_length, of_width) = (bradbury(length / stiffness), bradbury(width / stiffness));
    let held = slab.modulus * expansion * difference / 2.0;
    let nu = slab.poisson;
    let middle = |one: f64, other: f64| Pressure::from_base(held / (1.0 - nu * nu) * (one + nu * other));
    Ok(Curled {
        interior_length: middle(of_length, of_width),
        interior_width: middle(of_width, of_length),
        edge_length: Pressure::from_base(held * of_length),
        edge_width: Pressure::from_base(held * of_width),
        of_length: Ratio::from_base(of_length),
        of_width: Ratio::from_base(of_width),
    })
}
