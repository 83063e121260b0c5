//! Goods stored on both sides of an aisle without joints.

use super::concrete::RUPTURE;
use super::safety::FACTOR;
use super::slab::SUBGRADE;
use super::{PSF, PSI};
use crate::failure::{Result, check};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Length, Pressure, Ratio, SubgradeReaction, Typed};

/// The uniform load that may stand beside an aisle without joints, whatever its width: `w = 0.123 (MR / SF) sqrt(h k)`, w in psf, MR in psi,
/// h in inches, k in pci. It fits the published table, made with SF = 2, within 0.8 %.
///
/// # Errors
/// A value outside its range.
pub fn uniform(
    thickness: Length,
    subgrade: SubgradeReaction,
    rupture: Pressure,
    safety: Ratio,
) -> Result<Pressure> {
    let thickness = check("thickness", thickness, SLAB)?.base();
    let subgrade = check("subgrade", subgrade, SUBGRADE)?.base();
    let rupture = check("rupture", rupture, RUPTURE)?.base();
    let safety = check("safety", safety, FACTOR)?.base();
    let root = (thickness * subgrade / PSI).sqrt();
    Ok(Pressure::from_base(0.123 * PSF * (rupture / safety / PSI) * root))
}
