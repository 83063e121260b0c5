//! Elevations of the old slab, where they were not read with a rod.

use crate::survey::input::{ElevationInput, FacesInput, GridInput};
use crate::survey::old_slab::{Instrument, Texture};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

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
    /// Points with the triangles between them, which are kept as they are.
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
}
