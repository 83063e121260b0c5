//! From words: what the heel and a bar say, what the soil is, what lies under the slab.

use super::super::PCI;
use crate::basis::BasisId;
use crate::failure::Result;
use crate::note::NoteCode;
use crate::operation::scalar::Word;
use crate::quantity::{SubgradeReaction, Typed};

crate::choice! {
    /// What the slab rests on.
    pub enum Soil {
        /// The heel sinks in, a bar goes in by hand.
        Soft = "soft",
        /// The heel marks it, a bar goes in under a hammer.
        Medium = "medium",
        /// Neither heel nor bar makes much of a mark.
        Firm = "firm",
        /// Fine-grained: silt and clay.
        Fine = "silt and clay",
        /// Sands and sand-gravels with a moderate share of silt and clay.
        Mixed = "sand with silt or clay",
        /// Sands and sand-gravels nearly free of plastic fines.
        Clean = "clean sand and gravel",
        /// A cement-treated subbase.
        Treated = "cement-treated subbase",
        /// An old slab that stays.
        OldSlab = "old slab",
    }
}

/// The span of the subgrade reaction for a word.
#[derive(Clone, Copy, Debug)]
pub struct OfSoil {
    /// The lower end: what is taken.
    pub least: SubgradeReaction,
    /// The upper end: not exceeded without a reason.
    pub greatest: SubgradeReaction,
    /// Whether to confirm it.
    pub note: Option<NoteCode>,
}

impl Soil {
    /// The span in pci, and where it comes from.
    #[must_use]
    pub const fn span(self) -> (f64, f64, BasisId) {
        match self {
            Self::Soft => (50.0, 50.0, BasisId::SubgradeHeelAndBar),
            Self::Medium => (100.0, 100.0, BasisId::SubgradeHeelAndBar),
            Self::Firm => (200.0, 200.0, BasisId::SubgradeHeelAndBar),
            Self::Fine => (75.0, 120.0, BasisId::SubgradePca),
            Self::Mixed => (130.0, 170.0, BasisId::SubgradePca),
            Self::Clean => (180.0, 220.0, BasisId::SubgradePca),
            Self::Treated => (250.0, 400.0, BasisId::SubgradePca),
            Self::OldSlab => (200.0, 300.0, BasisId::SubgradeOverOldSlab),
        }
    }
}

/// The subgrade reaction for a word.
///
/// # Errors
/// None.
pub fn of_soil(soil: Word<Soil>) -> Result<OfSoil> {
    let (least, greatest, _) = soil.0.span();
    let pci = |k: f64| SubgradeReaction::from_base(k * PCI);
    Ok(OfSoil { least: pci(least), greatest: pci(greatest), note: Some(NoteCode::ConfirmLocally) })
}
