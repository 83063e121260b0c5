//! Least falls by the way a floor is finished and used.

use crate::basis::BasisId;
use crate::choice;
use crate::quantity::{Slope, Typed};

choice! {
    /// How the surface is finished and used: each has its least fall.
    pub enum Surface {
        /// Steel-trowelled, under a roof.
        Trowelled = "trowelled",
        /// Broomed.
        Broomed = "broomed",
        /// Outdoors, beside a building.
        Outdoors = "outdoors",
    }
}

impl Surface {
    /// The least fall of such a surface, and where that comes from.
    #[must_use]
    pub fn least_fall(self) -> (Slope, BasisId) {
        let (fall, basis) = match self {
            Self::Trowelled => (crate::grade::fall::GUIDANCE, BasisId::FallFinishedFloor),
            Self::Broomed => (0.25 / 12.0, BasisId::FallBroomed),
            Self::Outdoors => (0.02, BasisId::FallOutdoors),
        };
        (Slope::from_base(fall), basis)
    }
}
