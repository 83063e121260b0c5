//! The effective thickness of an old slab by the AASHTO guide of 1993, and the overlay that follows.

use super::required::SLAB;
use crate::failure::{Result, check};
use crate::note::NoteCode;
use crate::quantity::{Length, Range, Ratio, Typed};

/// A condition factor of the guide: 0.3 to 1.
pub const FACTOR: Range = Range::closed(0.3, 1.0);
/// The greatest thickness of the old slab that the unbonded form takes: 10 in.
const MOST_UNBONDED: f64 = 0.254;

/// Effective thickness and overlay.
#[derive(Clone, Copy, Debug)]
pub struct Effective {
    /// What the old slab is worth.
    pub effective: Length,
    /// The overlay needed; zero where the old slab is enough.
    pub overlay: Length,
    /// Told where none is needed, or where the old slab was entered thinner than it is.
    pub note: Option<NoteCode>,
}

/// Bonded: `Deff = Fjc Fdur Ffat D`, `Dol = Df - Deff`, zero where that is negative.
///
/// # Errors
/// A value outside its range.
pub fn effective_bonded(
    required: Length,
    old_slab: Length,
    joints: Ratio,
    durability: Ratio,
    fatigue: Ratio,
) -> Result<Effective> {
    let needed = check("required", required, SLAB)?.base();
    let there = check("old_slab", old_slab, SLAB)?.base();
    let joints = check("joints", joints, FACTOR)?.base();
    let durability = check("durability", durability, FACTOR)?.base();
    let fatigue = check("fatigue", fatigue, FACTOR)?.base();
    let effective = joints * durability * fatigue * there;
    Ok(told(effective, needed - effective, None))
}

/// Unbonded: `Deff = Fjcu D` with D entered as 10 in at most, `Dol = sqrt(Df^2 - Deff^2)`, zero where that is negative.
///
/// # Errors
/// A value outside its range.
pub fn effective_unbonded(required: Length, old_slab: Length, joints: Ratio) -> Result<Effective> {
    let needed = check("required", required, SLAB)?.base();
    let there = check("old_slab", old_slab, SLAB)?.base();
    let joints = check("joints", joints, FACTOR)?.base();
    let effective = joints * there.min(MOST_UNBONDED);
    let left = needed * needed - effective * effective;
    let capped = (there > MOST_UNBONDED).then_some(NoteCode::ThicknessCapped);
    Ok(told(effective, if left > 0.0 { left.sqrt() } else { 0.0 }, capped))
}

fn told(effective: f64, overlay: f64, note: Option<NoteCode>) -> Effective {
    let overlay = overlay.max(0.0);
    let none = (overlay == 0.0).then_some(NoteCode::NoOverlayNeeded);
    Effective {
        effective: Length::from_base(effective),
        overlay: Length::from_base(overlay),
        note: note.or(none),
    }
}
