//! The condition factor of the old slab, by what is seen.

use crate::basis::Seen;
use crate::failure::Result;
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::{Ratio, Typed};

crate::choice! {
    /// What the old slab looks like.
    pub enum Condition {
        /// Sound, little or no structural cracking.
        Sound = "sound",
        /// A few initial cracks that do not grow.
        FewCracks = "few cracks, still",
        /// Several cracks in each slab.
        BadlyCracked = "badly cracked",
    }
}

impl Condition {
    /// The factor C, and how far it was seen.
    #[must_use]
    pub const fn factor(self) -> (f64, Seen) {
        match self {
            Self::Sound => (1.0, Seen::Memory),
            Self::FewCracks => (0.75, Seen::Read),
            // The number was read in an example, the wording of its class was not.
            Self::BadlyCracked => (0.35, Seen::Memory),
        }
    }
}

/// A condition factor, with a note where it was not read in its source.
#[derive(Clone, Copy, Debug)]
pub struct Factor {
    /// C.
    pub factor: Ratio,
    /// Whether to confirm it.
    pub note: Option<NoteCode>,
}

/// The condition factor for what is seen.
///
/// # Errors
/// None.
pub fn condition_factor(condition: Word<Condition>) -> Result<Factor> {
    let (factor, seen) = condition.0.factor();
    let note = (seen != Seen::Read).then_some(NoteCode::ConfirmLocally);
    Ok(Factor { factor: Ratio::from_base(factor), note })
}
