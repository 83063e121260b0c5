//! The caller's plain prices.

use crate::quantity::{AreaPrice, Given, VolumePrice};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Plain prices, all in one currency.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PricesInput {
    /// Concrete, placed, by volume.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub concrete: Option<Given<VolumePrice>>,
    /// Grinding high spots of the old slab, by the volume ground off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grinding: Option<Given<VolumePrice>>,
    /// Grinding a thin zone, by area.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grinding_area: Option<Given<AreaPrice>>,
    /// Bonding a thin zone by area: milling, cleaning and slurry together.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bonding: Option<Given<AreaPrice>>,
    /// Breaking out a thin zone by area, hauling with it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breaking_out: Option<Given<AreaPrice>>,
    /// What is printed behind amounts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub currency: Option<String>,
}
