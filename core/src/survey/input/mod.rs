//! The survey as a job file or a record's JSON says it: an outline, and rods, elevations or triangles.

mod faces;
mod level;
mod outline;
mod rods;

pub use faces::{FacesInput, PointInput, face_from_one};
pub use level::{BenchmarkInput, FiledBook, LevelInput, Placed, RowInput, SetUpInput, ShotInput, SightInput};
pub use outline::{BuiltOutline, CornerInput, HoleInput, OutlineInput, SideInput};
pub use rods::RodInput;

use super::clean_up::ChangeInput;
use super::old_slab::{Instrument, Texture};
use crate::quantity::{Elevation, Given, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A survey: an outline with its level book, or with elevations by grid, by shots or by triangles.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SurveyInput {
    /// The plan edge of the work.
    pub outline: OutlineInput,
    /// Rod readings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<LevelInput>,
    /// Elevations by rows and columns.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub grid: Option<GridInput>,
    /// Elevations one by one.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shots: Option<Vec<ElevationInput>>,
    /// Points with the triangles between them.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub faces: Option<FacesInput>,
    /// What the readings were taken with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub instrument: Option<Instrument>,
    /// What the old floor feels like.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub texture: Option<Texture>,
    /// Whether the work may reach more than 4 ft beyond the shots.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beyond_allowed: bool,
    /// Shots that are not used, by name: booked wrong and not shot again.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub leave_out: Vec<String>,
    /// What was done to the slab since it was shot, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub changes: Vec<ChangeInput>,
}

/// Elevations by rows and columns, as a crew shoots them.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct GridInput {
    /// Distance of each column from the left wall.
    pub columns: Vec<Given<Length>>,
    /// Distance of each row from the front wall.
    pub rows: Vec<Given<Length>>,
    /// Row by row; `none` for a place that was not shot.
    pub elevations: Vec<RodInput<Elevation>>,
    /// Whether a row or column given twice, one after the other, is the two sides of a step.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub steps: bool,
}

/// One shot with its elevation.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ElevationInput {
    /// Its name in the report.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// Height above the job datum.
    pub elevation: Given<Elevation>,
    /// Outside the outline on purpose: approach, walk.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub outside: bool,
    /// One side of a step.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub step: bool,
}
