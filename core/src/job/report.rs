//! The report of a job, for a program: every number with its unit in both systems and as it is printed.

use crate::note::Note;
use crate::quantity::{Typed, Unit};
use schemars::JsonSchema;
use serde::Serialize;

/// A quantity in both systems of units, and the words the site gets.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Measure {
    /// The number in the US unit.
    pub us: f64,
    /// The US unit.
    pub us_unit: String,
    /// The number in the SI unit.
    pub si: f64,
    /// The SI unit.
    pub si_unit: String,
    /// The words.
    pub text: String,
}

impl Measure {
    /// A quantity in these units with these words.
    pub(super) fn new<Q: Typed>(value: Q, us: &Unit, si: &Unit, text: impl Into<String>) -> Self {
        Self {
            us: (us.from_base)(value.base()),
            us_unit: us.symbol.to_owned(),
            si: (si.from_base)(value.base()),
            si_unit: si.symbol.to_owned(),
            text: text.into(),
        }
    }
}

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
    /// The new floor.
    pub finish: FinishReport,
    /// The thickness.
    pub thickness: ThicknessReport,
    /// Doors, sills and other heights to keep to.
    pub fits: Vec<FitReport>,
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

/// The old floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OldFloor {
    /// Greatest width and length.
    pub size: [Measure; 2],
    /// Area.
    pub area: Measure,
    /// Places shot.
    pub shots: usize,
    /// Set-ups.
    pub setups: usize,
    /// The highest point between the shots.
    pub highest: PlaceReport,
    /// The lowest point between the shots.
    pub lowest: PlaceReport,
    /// Highest less lowest.
    pub out_of_level: Measure,
    /// Share of the floor beyond the last shots, in percent.
    pub beyond_percent: f64,
    /// Area in triangles that leave the outline.
    pub unsurveyed: Measure,
    /// How well the outline's measurements agree.
    pub squareness: Option<String>,
    /// Volume in doubt because the shots can be triangulated in more than one way.
    pub ambiguity: Measure,
}

/// A place with its words.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct PlaceReport {
    /// Distance from the left.
    pub x: Measure,
    /// Distance from the front.
    pub y: Measure,
    /// The shot it is at.
    pub shot: Option<String>,
    /// Where it is, in words.
    pub text: String,
}

/// The level.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct LevelReport {
    /// The benchmark of the first set-up.
    pub benchmark: String,
    /// Its elevation.
    pub elevation: Measure,
    /// The rod on it.
    pub rod: Measure,
    /// How the book closes, in words.
    pub closure: String,
}

/// The new floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FinishReport {
    /// Least thickness asked for, without the margin, where it decides.
    pub least: Option<Measure>,
    /// The margin on it.
    pub margin: Option<Measure>,
    /// The place that fixes the height, where least thickness decides.
    pub fixed_at: Option<PlaceReport>,
    /// The edge it falls to.
    pub falls_to: Option<String>,
    /// The fall.
    pub fall: FallReport,
    /// Heights along the edges of the outline.
    pub edges: Vec<EdgeHeights>,
}

/// The fall against guidance.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FallReport {
    /// The fall.
    pub fall: Measure,
    /// Height lost over the run of the floor.
    pub drop: Measure,
    /// The run.
    pub run: Measure,
    /// The published guidance it is held against.
    pub guidance: Measure,
    /// Whether it meets the guidance.
    pub meets_guidance: bool,
    /// The judgement in words, with both bases named.
    pub text: String,
}

/// Heights of the finish along one edge.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct EdgeHeights {
    /// The edge.
    pub edge: String,
    /// Whether it is level.
    pub level: bool,
    /// Rod at its start, with the instrument of the first set-up; none without a level.
    pub rod_from: Option<Measure>,
    /// Rod at its end.
    pub rod_to: Option<Measure>,
    /// Elevation at its start.
    pub elevation_from: Measure,
    /// Elevation at its end.
    pub elevation_to: Measure,
}

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

/// A height the finish must keep to.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FitReport {
    /// What it is.
    pub name: String,
    /// What the limit is called.
    pub called: String,
    /// How far the finish stays below it; negative where it stands above.
    pub below: Measure,
    /// Whether it is kept.
    pub kept: bool,
}

/// What to order.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OrderReport {
    /// The parts and allowances.
    pub lines: Vec<OrderLine>,
    /// Sum of the parts.
    pub net: Measure,
    /// Parts and allowances.
    pub figured: Measure,
    /// What to order.
    pub ordered: Measure,
    /// Ordered over figured.
    pub spare: Measure,
    /// Truck loads.
    pub trucks: u32,
    /// What one truck carries.
    pub capacity: Measure,
    /// What the last one carries.
    pub last: Measure,
}

/// A line of the order.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OrderLine {
    /// What it is.
    pub name: String,
    /// How much.
    pub volume: Measure,
    /// Whether it was taken, not given.
    pub taken: bool,
}

/// What rounding and margin cost.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RoundingReport {
    /// What heights are rounded to.
    pub step: Measure,
    /// How much rounding raises the floor.
    pub raised: Measure,
    /// Concrete that rounding costs.
    pub rounding: Measure,
    /// Concrete that the margin costs.
    pub margin: Measure,
    /// The net volume without rounding.
    pub unrounded: Measure,
    /// The net volume with neither margin nor rounding.
    pub without_margin: Measure,
    /// Heights along the edges without rounding.
    pub edges: Vec<EdgeHeights>,
}

/// Something taken, not measured.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TakenReport {
    /// What.
    pub what: String,
    /// The value taken.
    pub value: String,
    /// Why.
    pub why: String,
}

/// A note.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SaidNote {
    /// Its number.
    pub code: i32,
    /// Its name.
    pub name: String,
    /// Its words.
    pub text: String,
}

impl From<&Note> for SaidNote {
    fn from(note: &Note) -> Self {
        Self { code: note.code.number(), name: note.code.name().to_owned(), text: note.text.clone() }
    }
}

/// Where a rule comes from.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct SaidBasis {
    /// What it is about.
    pub about: String,
    /// Its name.
    pub basis: String,
    /// What it says and where from.
    pub says: String,
}
