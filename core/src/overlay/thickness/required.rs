//! The overlay that an old slab needs.

use super::super::bond::Bond;
use crate::failure::{Code, Failure, Result, check};
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::{Length, Range, Ratio, Typed};

/// A slab thickness: more than none, up to 2 m.
pub const SLAB: Range = Range::positive_to(2.0);
/// A condition factor: 0.1 to 1.
pub const CONDITION: Range = Range::closed(0.1, 1.0);

/// The overlay needed.
#[derive(Clone, Copy, Debug)]
pub struct Required {
    /// Its thickness; zero where the old slab is enough by itself.
    pub overlay: Length,
    /// Told where it is zero.
    pub note: Option<NoteCode>,
}

/// The overlay needed over an old slab: `ho = (hd^n - C (hd/he hE)^n)^(1/n)`, n being 1 bonded, 1.4 partly bonded, 2 unbonded. Bonded is
/// `ho = hd - hE`, over a sound slab only. Where the old slab is enough the need is zero: the practical minimum governs.
///
/// # Errors
/// A value outside its range; a bonded overlay over a slab that is not sound.
pub fn required(
    bond: Word<Bond>,
    required_new: Length,
    required_old: Length,
    old_slab: Length,
    condition: Ratio,
) -> Result<Required> {
    let new = check("required_new", required_new, SLAB)?.base();
    let old = check("required_old", required_old, SLAB)?.base();
    let there = check("old_slab", old_slab, SLAB)?.base();
    let condition = check("condition", condition, CONDITION)?.base();
    sound_if_bonded(bond.0, condition)?;
    let overlay = match bond.0 {
        Bond::Bonded => (new - there).max(0.0),
        Bond::PartlyBonded | Bond::Unbonded => {
            let power = bond.0.power();
            let left = new.powf(power) - condition * (new / old * there).powf(power);
            // Never a root of a negative number: the old slab is enough.
            if left > 0.0 { left.powf(1.0 / power) } else { 0.0 }
        }
    };
    let note = (overlay == 0.0).then_some(NoteCode::NoOverlayNeeded);
    Ok(Required { overlay: Length::from_base(overlay), note })
}

/// Refuses bond to a slab whose condition factor is under 1.
pub(super) fn sound_if_bonded(bond: Bond, condition: f64) -> Result<()> {
    if bond == Bond::Bonded && condition < 1.0 {
        return Err(Failure::new(Code::BondNeedsSound, "condition")
            .written(condition.to_string())
            .allowed("1 for a bonded overlay")
            .remedy("a bonded overlay is figured over a sound slab only: mend the slab, or take unbonded"));
    }
    Ok(())
}
