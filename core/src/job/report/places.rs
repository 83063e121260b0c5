//! Figures of zones and along sections.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// The thickness over a zone.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ZoneReport {
    /// Its name.
    pub name: String,
    /// Its area on the floor.
    pub area: Measure,
    /// Concrete in it.
    pub fill: Measure,
    /// Mean thickness.
    pub mean: Measure,
    /// Least thickness.
    pub least: Measure,
    /// Where that is.
    pub least_at: PlaceReport,
    /// Greatest thickness.
    pub greatest: Measure,
    /// Where that is.
    pub greatest_at: PlaceReport,
    /// The area thinner than the depth asked about.
    pub thinner: Option<Measure>,
}

/// Old slab and new floor along a line.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SectionReport {
    /// Its name.
    pub name: String,
    /// The length of the line.
    pub length: Measure,
    /// The area between the surfaces, where the new floor is above.
    pub fill: Measure,
    /// Least thickness along it.
    pub least: Measure,
    /// How far along the line that is.
    pub least_at: Measure,
    /// Greatest thickness along it.
    pub greatest: Measure,
    /// How far along the line that is.
    pub greatest_at: Measure,
    /// Every place where either surface bends; between them both are straight.
    pub stations: Vec<StationReport>,
}

/// Both surfaces at a distance along a section.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StationReport {
    /// How far along the line.
    pub distance: Measure,
    /// Height of the old slab.
    pub old_slab: Measure,
    /// Height of the new floor.
    pub finish: Measure,
    /// The thickness.
    pub thickness: Measure,
}
