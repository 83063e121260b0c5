//! The new floor: what stands in a report only where the old slab may carry one.

use super::{
    ApproachReport, AsBuiltReport, ClearanceReport, ConflictReport, DrainageReport, FinishReport, FitReport,
    KeyCutsReport, MarksReport, OrderReport, OverlayReport, RoundingReport, SectionReport, SolvedReport,
    TearOutReport, ThicknessReport, ThinZonesReport, ZoneReport,
};
use schemars::JsonSchema;
use serde::Serialize;

/// The new floor: its heights, its thickness, and all that follows from them.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct NewFloor {
    /// What cannot all be kept, where the finish is solved for; the finish is then the nearest one, not what was asked.
    pub conflict: Option<ConflictReport>,
    /// The new top surface.
    pub finish: FinishReport,
    /// The thickness.
    pub thickness: ThicknessReport,
    /// The thickness by zones.
    pub zones: Vec<ZoneReport>,
    /// Both surfaces along lines.
    pub sections: Vec<SectionReport>,
    /// How the new floor drains, where the job asks.
    pub drainage: Option<DrainageReport>,
    /// The ground outside doors.
    pub approaches: Vec<ApproachReport>,
    /// Doors, sills and other heights to keep to.
    pub fits: Vec<FitReport>,
    /// Doors, steps, walls, appliances, fittings and open edges that the floor meets.
    pub clearances: Vec<ClearanceReport>,
    /// What the finish takes and proves, where it is solved for.
    pub solved: Option<SolvedReport>,
    /// How the new floor relates to the old slab, and what it carries.
    pub overlay: Option<OverlayReport>,
    /// Keys that are cut where the floor meets doors, walks and open edges; none where the job says nothing of how thin it may be, or of what
    /// it meets.
    pub key_cuts: Option<KeyCutsReport>,
    /// Breaking the old slab out in its place; none where neither the job nor the verdict asks for it.
    pub tear_out: Option<TearOutReport>,
    /// Zones thinner than an unbonded overlay may be.
    pub thin_zones: Option<ThinZonesReport>,
    /// What the crew sets out.
    pub marks: Option<MarksReport>,
    /// What to order.
    pub order: OrderReport,
    /// What rounding and margin cost, where least thickness decides alone.
    pub rounding: Option<RoundingReport>,
    /// The floor as built; none where it was not measured.
    pub as_built: Option<AsBuiltReport>,
}
