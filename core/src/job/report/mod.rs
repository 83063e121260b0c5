//! The report of a job, for a program: every number with its unit in both systems and as it is printed.

mod approach;
mod as_built;
mod clearances;
mod conflict;
mod drainage;
mod finish;
mod look_again;
mod marks;
mod measure;
mod money;
mod old_floor;
mod old_slab;
mod order;
mod overlay;
mod places;
mod said;
mod solved;
mod thickness;
mod thin_zones;
mod water;

pub use approach::{ApproachReport, BreakReport, RuleReport, StretchReport};
pub use as_built::{
    AsBuiltReport, BuiltFloorReport, CheckReport, ConcreteUsed, FallGot, FlatSectionReport, FlatnessReport,
    MissedMark, ProfileReport,
};
pub use clearances::{ClearanceCheckReport, ClearanceReport, WorkReport};
pub use conflict::{ChangeReport, ConflictReport, ConflictSetReport};
pub use drainage::{CatchmentReport, DrainageReport, FaultReport};
pub use finish::{
    EdgeHeights, FacetReport, FallReport, FinishReport, FitReport, PlaceHeight, RoundingReport,
};
pub use look_again::{GoverningReport, LookAgain, SuspectReport};
pub use marks::{
    EdgeMarksReport, MarkReport, MarkSetUpReport, MarkSheet, MarksReport, MorningReport, RailReport,
    RipReport,
};
pub use measure::{Measure, PlaceReport};
pub use money::Amount;
pub use old_floor::{LevelReport, OldFloor};
pub use old_slab::{AskReport, OldSlabReport, ReasonReport, StopReport, WayReport};
pub use order::{OrderLine, OrderReport};
pub use overlay::{CarriedReport, OverlayReport};
pub use places::{SectionReport, StationReport, ZoneReport};
pub use said::{SaidBasis, SaidNote, TakenReport};
pub use solved::{CostReport, DemandReport, PriceReport, ProofReport, SolvedReport, StageReport};
pub use thickness::ThicknessReport;
pub use thin_zones::{ThinZoneReport, ThinZonesReport, ZoneChoiceReport};
pub use water::{CleanUpReport, PondReport, StandingWater};

use schemars::JsonSchema;
use serde::Serialize;

/// The whole report.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Report {
    /// The version of this schema: 1.
    #[schemars(range(min = 1, max = 1))]
    pub schema_version: u32,
    /// The name of the job.
    pub name: String,
    /// Whether the old slab may stay, where the job says what was found on it.
    pub old_slab: Option<OldSlabReport>,
    /// The old floor.
    pub old_floor: OldFloor,
    /// The level: where the rod stood, and how the book closes; none where elevations were given.
    pub level: Option<LevelReport>,
    /// What cannot all be kept, where the finish is solved for; the finish is then the nearest one, not what was asked.
    pub conflict: Option<ConflictReport>,
    /// What is done to the old floor first.
    pub clean_up: Vec<CleanUpReport>,
    /// The new floor.
    pub finish: FinishReport,
    /// The thickness.
    pub thickness: ThicknessReport,
    /// The thickness by zones.
    pub zones: Vec<ZoneReport>,
    /// Both surfaces along lines.
    pub sections: Vec<SectionReport>,
    /// Where water stands.
    pub standing_water: StandingWater,
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
    /// Zones thinner than an unbonded overlay may be.
    pub thin_zones: Option<ThinZonesReport>,
    /// What the crew sets out.
    pub marks: Option<MarksReport>,
    /// What to look at again before ordering.
    pub look_again: LookAgain,
    /// What to order.
    pub order: OrderReport,
    /// What rounding and margin cost, where least thickness decides alone.
    pub rounding: Option<RoundingReport>,
    /// The floor as built; none where it was not measured.
    pub as_built: Option<AsBuiltReport>,
    /// What was taken, not measured, the weightiest first.
    pub taken: Vec<TakenReport>,
    /// What the reader must know.
    pub notes: Vec<SaidNote>,
    /// Where limits and rules come from.
    pub basis: Vec<SaidBasis>,
    /// What this report does not answer yet.
    pub not_answered: Vec<String>,
    /// What can hurt.
    pub cautions: Vec<String>,
}
