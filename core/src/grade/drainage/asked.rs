//! What is asked of the drainage of a finish.

use super::puddle::{WAVE_HEIGHT, WAVE_LENGTH};
use super::runoff::{COEFFICIENT, RAIN};
use crate::assumption;
use crate::basis::BasisId;
use crate::choice;
use crate::failure::{Result, check};
use crate::grade::fall::FALL;
use crate::quantity::Typed;
use crate::quantity::{Length, RainIntensity, Ratio, Slope};
use crate::survey::low_spots::Edges;
use crate::survey::outline::Corner;

choice! {
    /// How the surface is finished and used: each has its least fall.
    pub enum Surface {
        /// Steel-trowelled, under a roof.
        Trowelled = "trowelled",
        /// Broomed.
        Broomed = "broomed",
        /// Washed down.
        Washed = "washed",
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
            Self::Washed => (0.25 / 12.0, BasisId::FallWashed),
            Self::Outdoors => (0.02, BasisId::FallOutdoors),
        };
        (Slope::from_base(fall), basis)
    }
}

/// What is asked of the drainage of a finish.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// Where water may leave.
    pub edges: Edges,
    /// How the surface is finished and used.
    pub surface: Surface,
    /// The least fall, in place of that of the surface.
    pub least_fall: Option<Slope>,
    /// The height of a wave that strike-off may leave, crest to trough.
    pub wave_height: Length,
    /// Its length, crest to crest.
    pub wave_length: Length,
    /// Places from which water is followed, besides corners and the places farthest from each outlet.
    pub starts: Vec<Corner>,
    /// How fast rain comes down.
    pub rain: Option<RainIntensity>,
    /// The share of it that runs off.
    pub coefficient: Ratio,
}

impl Default for Asked {
    fn default() -> Self {
        Self {
            edges: Edges::default(),
            surface: Surface::Trowelled,
            least_fall: None,
            wave_height: assumption::WAVE_HEIGHT.value(),
            wave_length: assumption::WAVE_LENGTH.value(),
            starts: Vec::new(),
            rain: None,
            coefficient: assumption::RUNOFF.value(),
        }
    }
}

impl Asked {
    /// The least fall that is wanted, and where that comes from.
    #[must_use]
    pub fn least(&self) -> (Slope, BasisId) {
        match self.least_fall {
            Some(given) => (given, BasisId::FallGiven),
            None => self.surface.least_fall(),
        }
    }

    pub(super) fn checked(&self) -> Result<()> {
        if let Some(fall) = self.least_fall {
            check("least_fall", fall, FALL)?;
        }
        check("wave_height", self.wave_height, WAVE_HEIGHT)?;
        check("wave_length", self.wave_length, WAVE_LENGTH)?;
        if let Some(rain) = self.rain {
            check("rain", rain, RAIN)?;
        }
        check("coefficient", self.coefficient, COEFFICIENT)?;
        Ok(())
    }
}
