//! The report of a job, for a program: every number with its unit in both systems and as it is printed.

mod approach;
mod as_built;
mod clearances;
mod conflict;
mod drainage;
mod finish;
mod key_cuts;
mod look_again;
mod marks;
mod measure;
mod money;
mod new_floor;
mod old_floor;
mod old_slab;
mod order;
mod overlay;
mod places;
mod said;
mod solved;
mod tear_out;
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
pub use key_cuts::{KeyCutReport, KeyCutsReport};
pub use look_again::{GoverningReport, LookAgain, SuspectReport};
pub use marks::{
    EdgeMarksReport, MarkReport, MarkSetUpReport, MarkSheet, MarksReport, MorningReport, RailReport,
    RipReport,
};
pub use measure::{Measure, PlaceReport};
pub use money::Amount;
pub use new_floor::NewFloor;
pub use old_floor::{LevelReport, OldFloor};
pub use old_slab::{AskReport, OldSlabReport, ReasonReport, StopReport, WayReport};
pub use order::{OrderLine, OrderReport};
pub use overlay::{CarriedReport, OverlayReport};
pub use places::{SectionReport, StationReport, ZoneReport};
pub use said::{SaidBasis, SaidNote, TakenReport};
pub use solved::{CostReport, DemandReport, PriceReport, ProofReport, SolvedReport, StageReport};
pub use tear_out::{TearOutCostReport, TearOutReport};
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
    /// What is done to the old floor first.
    pub clean_up: Vec<CleanUpReport>,
    /// Where water stands.
    pub standing_water: StandingWater,
    /// What to look at again before ordering.
    pub look_again: LookAgain,
    /// The new floor; none over a slab that spans free, where only the weight that it would add is told.
    pub new_floor: Option<NewFloor>,
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
