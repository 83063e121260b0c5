//! Where water stands, and what is done to the old slab first.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// Standing water on the old slab and on the new floor, edges and drains as the job states them.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct StandingWater {
    /// Ponds of the old slab.
    pub old_floor: Vec<PondReport>,
    /// Ponds of the new floor; none where no new floor is told.
    pub new_floor: Option<Vec<PondReport>>,
    /// How many ponds of the old slab the new floor cures.
    pub cured: Option<usize>,
    /// Ponds shallower than this were left out.
    pub shallowest: Measure,
}

/// A pond.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PondReport {
    /// Area under water.
    pub area: Measure,
    /// The water.
    pub volume: Measure,
    /// The greatest depth.
    pub depth: Measure,
    /// Where that is.
    pub deepest: PlaceReport,
    /// Where it spills.
    pub spill: PlaceReport,
    /// Of the old slab: cured or left; none where no new floor is told. Of the new floor: left, or new.
    pub fate: Option<String>,
}

/// Something done to the old slab before the pour.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CleanUpReport {
    /// What: grind, fill, fill ponds.
    pub work: String,
    /// The area ground or filled.
    pub area: Measure,
    /// The volume taken off or filled.
    pub volume: Measure,
    /// The deepest cut or fill; none where nothing is reached.
    pub deepest: Option<Measure>,
    /// Where that is.
    pub deepest_at: Option<PlaceReport>,
}
