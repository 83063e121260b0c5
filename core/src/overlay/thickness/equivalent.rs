//! The single slab that an overlay and the old slab are worth together.

use super::super::bond::Bond;
use super::required::{CONDITION, SLAB, sound_if_bonded};
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::quantity::{Length, Ratio, Typed};

/// The single slab worth as much as both: `h = (ho^n + C hb^n)^(1/n)`, n being 1 bonded, 1.4 partly bonded, 2 unbonded.
///
/// # Errors
/// A value outside its range; a bonded overlay over a slab that is not sound.
pub fn equivalent(bond: Word<Bond>, overlay: Length, old_slab: Length, condition: Ratio) -> Result<Length> {
    let overlay = check("overlay", overlay, SLAB)?.base();
    let there = check("old_slab", old_slab, SLAB)?.base();
    let condition = check("condition", condition, CONDITION)?.base();
    sound_if_bonded(bond.0, condition)?;
    let power = bond.0.power();
    let sum = overlay.powf(power) + condition * there.powf(power);
    Ok(Length::from_base(sum.powf(1.0 / power)))
}
