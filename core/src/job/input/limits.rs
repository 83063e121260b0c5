//! Heights that the finish must keep to.

use crate::quantity::{Elevation, Given, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A height that the finish must stay at or below, stay at or above, or have exactly: one of the three.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LimitInput {
    /// What it is: big door, side door.
    pub name: String,
    /// Places along it: the finish is compared at each.
    pub at: Vec<LimitPlaceInput>,
    /// The greatest height as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most_rod: Option<Given<Length>>,
    /// The greatest height as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_most: Option<Given<Elevation>>,
    /// The least height as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_least_rod: Option<Given<Length>>,
    /// The least height as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_least: Option<Given<Elevation>>,
    /// The height to be had as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exactly_rod: Option<Given<Length>>,
    /// The height to be had as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exactly: Option<Given<Elevation>>,
    /// What the limit is called in the report: its sill, its limit.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub called: Option<String>,
    /// Where the finish is solved for: it is judged, and not demanded.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub judged_only: bool,
    /// Where the finish is solved for: whether it stands firm, so that no conflict blames it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub firm: bool,
    /// Where the finish is solved for: how much it matters where demands contradict one another; 1 where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<f64>,
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
