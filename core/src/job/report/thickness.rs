//! The thickness.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// The thickness.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct ThicknessReport {
    /// The least thickness between the shots.
    pub least: Measure,
    /// Where it is.
    pub least_at: PlaceReport,
    /// The least thickness over the whole floor, the edges past the shots with it.
    pub least_with_edges: Measure,
    /// The greatest thickness.
    pub greatest: Measure,
    /// Where it is.
    pub greatest_at: PlaceReport,
    /// The mean.
    pub mean: Measure,
    /// Fill less high spots.
    pub net: Measure,
    /// Volume where the finish is above the old slab.
    pub fill: Measure,
    /// Volume of old slab above the finish.
    pub high: Measure,
    /// The depth asked about.
    pub thinner_than: Option<Measure>,
    /// The area thinner than it.
    pub thinner: Option<Measure>,
}
