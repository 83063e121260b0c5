//! A drain along the door, where water cannot fall away from it.

use super::asked::Asked;
use super::profile::Profile;
use crate::failure::Result;
use crate::grade::drainage::runoff::runoff;
use crate::quantity::{Area, Elevation, Flow, Length, RainIntensity, Ratio, Typed};

/// What a drain along the door makes of the ground as it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trench {
    /// The height that the floor may then have: that of the ground at the door, and the rebate.
    pub floor: Elevation,
    /// How far out water comes to the door: none where the ground falls away at once.
    pub reach: Length,
}

impl Trench {
    pub(super) fn of(asked: &Asked, old: &Profile) -> Self {
        let rebate = asked.rebate.map_or(0.0, Typed::base);
        Self {
            floor: Elevation::from_base(old.height(0.0) + rebate),
            reach: Length::from_base(old.falls_to_door()),
        }
    }

    /// The ground that drains to it along a door of that width.
    #[must_use]
    pub fn catches(&self, width: Length) -> Area {
        Area::from_base(self.reach.base() * width.base())
    }

    /// The rain that it takes.
    ///
    /// # Errors
    /// A width, an intensity or a coefficient outside its range.
    pub fn takes(&self, width: Length, rain: RainIntensity, coefficient: Ratio) -> Result<Flow> {
        runoff(self.catches(width), rain, coefficient)
    }
}
