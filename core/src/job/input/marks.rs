//! What is set out, and what heights are told against.

use crate::quantity::{Elevation, Given, Length};
use crate::survey::input::CornerInput;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The marks that a crew sets out.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MarksInput {
    /// The elevation of the level line struck round the walls.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line: Option<Given<Elevation>>,
    /// The rod held on that line, read from the first set-up of the survey.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line_rod: Option<Given<Length>>,
    /// How far that line stands above something.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub line_above: Option<LineAboveInput>,
    /// The rod on the benchmark of the first set-up on the morning of the pour: all marks are then told from there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod_today: Option<Given<Length>>,
    /// Whether the level then still stands where it stood for the survey.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub same_setup: bool,
    /// Other set-ups that marks are told from, too.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub setups: Vec<MarkSetUpInput>,
    /// How long the rod is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod_length: Option<Given<Length>>,
    /// What rods and distances below the line are rounded to; else as the floor, or as a rod in hundredths or millimetres is divided.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub round: Option<Given<Length>>,
    /// The edge that the walk starts with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub start: Option<String>,
    /// The greatest distance between stations at an edge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spacing: Option<Given<Length>>,
    /// Places on edges that must have a mark: jambs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub points: Vec<MarkPointInput>,
    /// The wet pads.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pads: Option<PadsInput>,
    /// Edges with a form; the others are walls with an isolation strip.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub forms: Vec<String>,
    /// Screed rails.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rails: Vec<RailInput>,
    /// How far the tops of the rails stand above the floor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rail_offset: Option<Given<Length>>,
}

/// How far a line stands above a benchmark, or above the old slab at a place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LineAboveInput {
    /// How far.
    pub height: Given<Length>,
    /// Above this point of the level book.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub benchmark: Option<String>,
    /// Above the old slab at this place.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub old_slab_at: Option<CornerInput>,
}

/// A set-up that marks are told from.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MarkSetUpInput {
    /// The point that the rod stands on: a point of the level book, or any with its elevation.
    pub on: String,
    /// Its elevation, where the level book does not know it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// The rod on it.
    pub rod: Given<Length>,
}

/// A place that must have a mark.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct MarkPointInput {
    /// What it is called.
    pub name: String,
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
}

/// The wet pads.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PadsInput {
    /// The length of the screed that rides on them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub screed_length: Option<Given<Length>>,
    /// How far apart they are at most; else the screed less 2 ft.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spacing: Option<Given<Length>>,
    /// How far they stay off the edges.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub inset: Option<Given<Length>>,
}

/// A screed rail.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct RailInput {
    /// What it is called.
    pub name: String,
    /// Its places in order.
    pub line: Vec<CornerInput>,
}
