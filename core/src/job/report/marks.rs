//! What a crew sets out.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// Every mark of the floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MarksReport {
    /// The elevation of the level reference line.
    pub line: Option<Measure>,
    /// The rod on that line from the first set-up.
    pub rod_on_line: Option<Measure>,
    /// The set-ups that rods are told from, the first one's rods first.
    pub setups: Vec<MarkSetUpReport>,
    /// The benchmark on the morning of the pour.
    pub morning: Option<MorningReport>,
    /// What rods and distances below the line are rounded to.
    pub step: Measure,
    /// How far marks leave the floor by that, at most.
    pub greatest_departure: Measure,
    /// The edges in the order of walking.
    pub edges: Vec<EdgeMarksReport>,
    /// The wet pads, row by row, to and fro.
    pub pads: Vec<MarkReport>,
    /// The screed rails.
    pub rails: Vec<RailReport>,
    /// All marks as a CSV file, with their numbers before rounding.
    pub csv: String,
    /// The list for the site, part by part.
    pub sheet: Vec<MarkSheet>,
}

/// A set-up.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MarkSetUpReport {
    /// What it stands on.
    pub name: String,
    /// The elevation of its line of sight.
    pub sight: Measure,
}

/// The benchmark on the morning of the pour.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MorningReport {
    /// Today's rod less the planned one.
    pub difference: Measure,
    /// What follows: same, agrees, shift, stop.
    pub verdict: String,
    /// The rule it is judged by.
    pub basis: String,
    /// A sentence for the crew.
    pub text: String,
}

/// The marks along an edge.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct EdgeMarksReport {
    /// The edge.
    pub edge: String,
    /// What stands there: an isolation strip or a form.
    pub material: String,
    /// How long it is.
    pub length: Measure,
    /// Whether the floor is level along it.
    pub level: bool,
    /// Its marks, both corners with them.
    pub marks: Vec<MarkReport>,
    /// The least height of the floor over the old slab along it.
    pub least: Measure,
    /// The greatest.
    pub greatest: Measure,
    /// What its strip or form is ripped to.
    pub rips: Vec<RipReport>,
}

/// One mark.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MarkReport {
    /// Its number in the order of walking.
    pub number: usize,
    /// What it is there for.
    pub kind: String,
    /// What it is called.
    pub name: Option<String>,
    /// Distance along its edge or rail.
    pub along: Option<Measure>,
    /// Distance from the left.
    pub x: Measure,
    /// Distance from the front.
    pub y: Measure,
    /// The rod from each set-up, in whole steps.
    pub rods: Vec<Measure>,
    /// The distance below the line, in whole steps.
    pub below_line: Option<Measure>,
    /// The height itself.
    pub elevation: Measure,
    /// That height over the old slab: the check.
    pub over_old_slab: Measure,
    /// What is known of the old slab there: surveyed, spanning, beyond.
    pub ground: String,
}

/// The marks along a screed rail.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RailReport {
    /// The rail.
    pub name: String,
    /// Its marks from end to end, at its top.
    pub marks: Vec<MarkReport>,
}

/// A straight cut of a strip or a form.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct RipReport {
    /// Where it starts, along the edge.
    pub from: Measure,
    /// Where it ends.
    pub to: Measure,
    /// Its height at the start.
    pub height_from: Measure,
    /// Its height at the end.
    pub height_to: Measure,
}

/// A part of the list for the site.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct MarkSheet {
    /// Its label.
    pub label: String,
    /// Its lines, as they are printed.
    pub lines: Vec<String>,
}
