//! How high a thing stands: as an elevation, or as found on site with a tape, above the old slab.

use crate::quantity::{Elevation, Length, Typed};

/// The height of a thing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Level {
    /// One elevation.
    Elevation(Elevation),
    /// So far above the old slab, wherever along its line that is.
    AboveSlab(Length),
}

impl Level {
    /// The height over an old slab of that height.
    pub(super) fn height(self, old: f64) -> f64 {
        match self {
            Self::Elevation(elevation) => elevation.base(),
            Self::AboveSlab(above) => old + above.base(),
        }
    }

    /// So much higher.
    #[must_use]
    pub fn raised(self, by: Length) -> Self {
        match self {
            Self::Elevation(elevation) => Self::Elevation(elevation + by),
            Self::AboveSlab(above) => Self::AboveSlab(above + by),
        }
    }
}
