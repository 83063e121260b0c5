//! The old floor and the level it was read with.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// The old floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OldFloor {
    /// Greatest width and length.
    pub size: [Measure; 2],
    /// Area.
    pub area: Measure,
    /// Places shot.
    pub shots: usize,
    /// Set-ups.
    pub setups: usize,
    /// The highest point between the shots.
    pub highest: PlaceReport,
    /// The lowest point between the shots.
    pub lowest: PlaceReport,
    /// Highest less lowest.
    pub out_of_level: Measure,
    /// Share of the floor beyond the last shots, in percent.
    pub beyond_percent: f64,
    /// Area in triangles that leave the outline.
    pub unsurveyed: Measure,
    /// How well the outline's measurements agree.
    pub squareness: Option<String>,
    /// Volume in doubt because the shots can be triangulated in more than one way.
    pub ambiguity: Measure,
}

/// The level.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LevelReport {
    /// The benchmark of the first set-up.
    pub benchmark: String,
    /// Its elevation.
    pub elevation: Measure,
    /// The rod on it.
    pub rod: Measure,
    /// How the book closes, in words.
    pub closure: String,
}
