//! Heights that the finish must keep to.

use crate::quantity::{Elevation, Given, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A height that the finish must stay at or below.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LimitInput {
    /// What it is: big door, side door.
    pub name: String,
    /// Places along it: the finish is compared at each.
    pub at: Vec<LimitPlaceInput>,
    /// The limit as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most_rod: Option<Given<Length>>,
    /// The limit as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most: Option<Given<Elevation>>,
    /// What the limit is called in the report: its sill, its limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub called: Option<String>,
}

/// A place on a limit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LimitPlaceInput {
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
}
