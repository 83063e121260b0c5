//! A whole job: one description in, one report out.
//!
//! ```
//! let job = overslab::job::Job::read(r#"
//! schema_version = 1
//! [job]
//! name = "Tool shed (invented)"
//! [outline]
//! sides = [{ name = "front", length = "10 ft" }, { name = "right", length = "8 ft" },
//!          { name = "back", length = "10 ft" }, { name = "left", length = "8 ft" }]
//! [level]
//! benchmarks = [{ name = "nail", elevation = "100 ft" }]
//! columns = ["1 ft", "9 ft"]
//! [[level.setups]]
//! on = "nail"
//! rod = "4' 2\""
//! rows = [{ y = "1 ft", rods = ["5' 1\"", "5' 1 1/4\""] }, { y = "7 ft", rods = ["5' 0\"", "5' 0 1/2\""] }]
//! [finish]
//! least = "3 in"
//! falls_to = "front"
//! fall = "1/8 in/ft"
//! "#)?;
//! let report = job.report()?;
//! assert!(report.to_text().contains("Tool shed (invented)"));
//! # Ok::<(), Box<overslab::failure::Failure>>(())
//! ```

mod clearances;
mod file;
mod finish;
mod heights;
mod input;
mod limits;
mod locate;
pub mod operations;
mod prices;
mod read;
mod report;
mod run;
mod say;
mod schema;
mod solve;
mod taken;
mod text;

pub use file::{JOB, JobFile};
pub use finish::{
    AreaDrainInput, FacetsInput, FinishDemand, FinishPointInput, LineInput, StripInput, TrenchInput,
};
pub use input::ClearanceInput;
pub use input::*;
pub use input::{
    AboutInput, AllowanceInput, ApproachInput, ApproachPlaceInput, AsBuiltInput, DemandInput, DrainageInput,
    ElevationsInput, ExtraInput, Job, LimitInput, LimitPlaceInput, LineAboveInput, MarkPointInput,
    MarkSetUpInput, MarksInput, OrderInput, PadsInput, PricesInput, ProfileInput, PuddleInput, RailInput,
    SCHEMA_VERSION, SectionInput, SolveInput, TearOutInput, ThinZonesInput, VehicleInput, ZoneInput,
};
pub use report::*;
pub use report::{
    Amount, ApproachReport, AsBuiltReport, AskReport, BreakReport, BuiltFloorReport, CatchmentReport,
    ChangeReport, CheckReport, CleanUpReport, ConcreteUsed, ConflictReport, ConflictSetReport, CostReport,
    DemandReport, DrainageReport, EdgeHeights, EdgeMarksReport, FacetReport, FallGot, FallReport,
    FaultReport, FinishReport, FitReport, FlatSectionReport, FlatnessReport, GoverningReport, LevelReport,
    LookAgain, MarkReport, MarkSetUpReport, MarkSheet, MarksReport, Measure, MissedMark, MorningReport,
    NewFloor, OldFloor, OldSlabReport, OrderLine, OrderReport, PlaceHeight, PlaceReport, PondReport,
    PriceReport, ProfileReport, ProofReport, RailReport, ReasonReport, Report, RipReport, RoundingReport,
    RuleReport, SaidBasis, SaidNote, SectionReport, SolvedReport, StageReport, StandingWater, StationReport,
    StopReport, StretchReport, SuspectReport, TakenReport, TearOutCostReport, TearOutReport, ThicknessReport,
    ThinZoneReport, ThinZonesReport, WayReport, ZoneChoiceReport, ZoneReport,
};
pub use report::{ClearanceCheckReport, ClearanceReport, WorkReport};
pub use schema::{job_schema, report_schema};
