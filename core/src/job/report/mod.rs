//! The report of a job, for a program: every number with its unit in both systems and as it is printed.

mod finish;
mod look_again;
mod measure;
mod old_floor;
mod order;
mod places;
mod said;
mod thickness;
mod water;

pub use finish::{
    EdgeHeights, FacetReport, FallReport, FinishReport, FitReport, PlaceHeight, RoundingReport,
};
pub use look_again::{GoverningReport, LookAgain, SuspectReport};
pub use measure::{Measure, PlaceReport};
pub use old_floor::{LevelReport, OldFloor};
pub use order::{OrderLine, OrderReport};
pub use places::{SectionReport, StationReport, ZoneReport};
pub use said::{SaidBasis, SaidNote, TakenReport};
pub use thickness::ThicknessReport;
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
    /// The old floor.
    pub old_floor: OldFloor,
    /// The level: where the rod stood, and how the book closes; none where elevations were given.
    pub level: Option<LevelReport>,
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
    /// Doors, sills and other heights to keep to.
    pub fits: Vec<FitReport>,
    /// What to look at again before ordering.
    pub look_again: LookAgain,
    /// What to order.
    pub order: OrderReport,
    /// What rounding and margin cost, where least thickness decides.
    pub rounding: Option<RoundingReport>,
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
