//! What to order.

use crate::quantity::{Given, Length, Share, Volume};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What to order.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OrderInput {
    /// What is poured beside the floor.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub extras: Vec<ExtraInput>,
    /// Shares allowed on top of the net volume; waste 3 % where none is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub allowances: Option<Vec<AllowanceInput>>,
    /// The step the plant sells by; 1/4 yd3 where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub step: Option<Given<Volume>>,
    /// What one truck carries; 10 yd3 where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub truck: Option<Given<Volume>>,
}

/// A body poured beside the floor: a volume, or length, width and mean depth.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ExtraInput {
    /// What it is.
    pub name: String,
    /// Its volume.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub volume: Option<Given<Volume>>,
    /// Its length.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length: Option<Given<Length>>,
    /// Its width.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width: Option<Given<Length>>,
    /// Its mean depth.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mean: Option<Given<Length>>,
}

/// A share allowed on top.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AllowanceInput {
    /// What it is for.
    pub name: String,
    /// The share of the net volume.
    pub share: Given<Share>,
}
