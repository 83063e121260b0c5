//! The job description, as TOML or JSON holds it.

use super::finish::FinishDemand;
use crate::quantity::{Elevation, Given, Length, Share, Volume};
use crate::survey::input::{ElevationInput, GridInput, LevelInput, OutlineInput};
use crate::survey::old_slab::{Instrument, Texture};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The version of the job and report schemas.
pub const SCHEMA_VERSION: u32 = 1;

/// One job. Quantities are texts with their unit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// The version of this schema: 1.
    #[schemars(range(min = 1, max = 1))]
    pub schema_version: u32,
    /// What the job is.
    pub job: AboutInput,
    /// The plan edge of the work. It may be left out, together with the heights, where a survey is handed over with the job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outline: Option<OutlineInput>,
    /// Rod readings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<LevelInput>,
    /// Elevations, where they were not read with a rod.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub survey: Option<ElevationsInput>,
    /// The new top surface.
    pub finish: FinishDemand,
    /// Heights that the finish must keep to: doors, sills.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limits: Vec<LimitInput>,
    /// What to order.
    #[serde(default)]
    pub order: OrderInput,
}

/// Elevations of the old slab: by rows and columns, or one by one.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ElevationsInput {
    /// By rows and columns.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grid: Option<GridInput>,
    /// One by one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shots: Option<Vec<ElevationInput>>,
    /// What the readings were taken with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instrument: Option<Instrument>,
    /// What the old floor feels like.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub texture: Option<Texture>,
    /// Whether the work may reach more than 4 ft beyond the shots.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beyond_allowed: bool,
}

/// What the job is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AboutInput {
    /// Its name, printed on top of the report.
    pub name: String,
    /// What the floor is for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usage: Option<String>,
    /// Where x and y are measured from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub origin: Option<String>,
}

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
