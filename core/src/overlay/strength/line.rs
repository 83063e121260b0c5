//! A wall that stands on the slab.

use super::PSI;
use super::concrete::STRENGTH;
use super::slab::SUBGRADE;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, LineLoad, Pressure, SubgradeReaction, Typed};

crate::choice! {
    /// Where the wall stands.
    pub enum WallPlace {
        /// In the middle of a slab or at a doweled joint.
        Middle = "middle or doweled joint",
        /// At a free edge.
        Edge = "free edge",
    }
}

/// The load of a wall that a slab carries without being thickened, after TM 5-809-12: `Pc = 4 Fb S lambda` in the middle or at a doweled joint,
/// `Pe = Fb S lambda / 0.3224` at a free edge; `Fb = 1.6 sqrt(f'c)` psi, `S = h^2 / 6` for each unit of width,
/// `lambda = (k / (4 Ec I))^(1/4)` with `I = h^3 / 12`, `Ec = 57000 sqrt(f'c)` psi.
///
/// # Errors
/// A value outside its range.
pub fn wall(
    thickness: Length,
    subgrade: SubgradeReaction,
    strength: Pressure,
    place: Word<WallPlace>,
) -> Result<LineLoad> {
    let thickness = check("thickness", thickness, SLAB)?.base();
    let subgrade = check("subgrade", subgrade, SUBGRADE)?.base();
    let root = (check("strength", strength, STRENGTH)?.base() / PSI).sqrt();
    let (allowed, modulus) = (1.6 * root * PSI, 57_000.0 * root * PSI);
    let lambda = (3.0 * subgrade / (modulus * thickness * thickness * thickness)).sqrt().sqrt();
    let carried = allowed * thickness * thickness / 6.0 * lambda;
    Ok(LineLoad::from_base(match place.0 {
        WallPlace::Middle => 4.0 * carried,
        WallPlace::Edge => carried / 0.3224,
    }))
}
