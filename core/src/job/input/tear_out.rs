//! Breaking the old slab out, as the third way beside pouring over it and bonding to it.

use crate::quantity::{
    Area, AreaPrice, Density, Given, Length, Mass, MassPrice, Money, Ratio, Volume, VolumePrice,
};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Breaking the old slab out, a new one in its place; also told where the verdict on the old slab takes it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TearOutInput {
    /// The area broken out; all of the work where it is not given. Where the verdict breaks out parts it must be given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub area: Option<Given<Area>>,
    /// The thickness of the old slab, where neither `overlay` nor `old_slab` says it; a nominal 4 in where nobody does.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub old_thickness: Option<Given<Length>>,
    /// The mass of the old concrete in place; 150 lb/ft3 where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub density: Option<Given<Density>>,
    /// Volume broken up over volume in place; 150 % where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bulking: Option<Given<Ratio>>,
    /// What one box or truck may carry; 10 tons where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub box_weight: Option<Given<Mass>>,
    /// What goes into one box, where that runs out first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub box_volume: Option<Given<Volume>>,
    /// The thickness of the new base, compacted; none where the ground serves.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base: Option<Given<Length>>,
    /// Volume of base as bought over compacted; 120 % where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base_loose: Option<Given<Ratio>>,
    /// The thickness of the new slab, on the mean; 4 in where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub new_thickness: Option<Given<Length>>,
    /// The price of breaking and loading, by area.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breaking_price: Option<Given<AreaPrice>>,
    /// The price of hauling one load.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load_price: Option<Given<Money>>,
    /// The price of dumping, by mass.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dump_price: Option<Given<MassPrice>>,
    /// The price of base as bought.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub base_price: Option<Given<VolumePrice>>,
    /// The price of concrete, placed; `prices.concrete` where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub concrete_price: Option<Given<VolumePrice>>,
}

impl TearOutInput {
    /// Whether a price of its own is given.
    pub(in crate::job) fn has_price(&self) -> bool {
        self.breaking_price.is_some()
            || self.load_price.is_some()
            || self.dump_price.is_some()
            || self.base_price.is_some()
            || self.concrete_price.is_some()
    }
}
