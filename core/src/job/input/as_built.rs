//! The floor as built, as it was measured after the pour.

use super::ElevationsInput;
use crate::asbuilt::flatness::{Class, Factor};
use crate::grade::drainage::Surface;
use crate::quantity::{Area, Elevation, Given, Length, Slope, Volume};
use crate::survey::input::{CornerInput, LevelInput};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The new floor as measured, and what it is held against. Only what was measured need be given.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AsBuiltInput {
    /// Rod readings on the new floor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<LevelInput>,
    /// Elevations of the new floor, where they were not read with a rod.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub survey: Option<ElevationsInput>,
    /// How far the floor may miss its marks.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tolerance: Option<Given<Length>>,
    /// The thickness specified.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub specified: Option<Given<Length>>,
    /// The least thickness allowed anywhere.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<Given<Length>>,
    /// How the floor is finished and used: its least fall.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<Surface>,
    /// The least fall, in place of that of the surface.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_fall: Option<Given<Slope>>,
    /// The concrete that came.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ordered: Option<Given<Volume>>,
    /// What was left over of it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub left_over: Option<Given<Volume>>,
    /// Puddles seen when the hose was let run.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub puddles: Vec<PuddleInput>,
    /// Lines of readings for flatness and levelness.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub profiles: Vec<ProfileInput>,
    /// How far apart the readings of all lines stand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spacing: Option<Given<Length>>,
    /// The class of flatness asked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flatness_class: Option<Class>,
    /// The flatness number asked over all, in place of a class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_ff: Option<f64>,
    /// The levelness number asked over all, in place of a class.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_fl: Option<f64>,
    /// The constant for flatness.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub factor: Option<Factor>,
}

/// A puddle that was seen.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PuddleInput {
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// How deep it was.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub depth: Option<Given<Length>>,
}

/// A line of readings.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ProfileInput {
    /// Its name.
    pub name: String,
    /// The heights of the floor, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub elevations: Vec<Given<Elevation>>,
    /// Rods from one set-up, in place of heights.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rods: Vec<Given<Length>>,
    /// The part of the floor it lies in.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub section: Option<String>,
    /// The area of that part; once for each part is enough.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub area: Option<Given<Area>>,
    /// Where its first reading is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<CornerInput>,
    /// A place it runs towards.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub toward: Option<CornerInput>,
}
