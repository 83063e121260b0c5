//! How the new floor drains.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// How the new floor drains.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct DrainageReport {
    /// How the surface is finished and used; none where only a least fall was given.
    pub surface: Option<String>,
    /// The least fall that is wanted.
    pub least: Measure,
    /// Where that comes from.
    pub basis: String,
    /// The least fall of the floor, level rims of drains left out.
    pub least_found: Measure,
    /// Whether every plane falls enough, the right way, to an outlet: pass, fail, confirm locally.
    pub judged: String,
    /// What drains where, the largest area first.
    pub catchments: Vec<CatchmentReport>,
    /// The area whose water finds no outlet.
    pub held: Measure,
    /// Parts that drain badly.
    pub faults: Vec<FaultReport>,
    /// The wave that strike-off may leave: its height, crest to trough.
    pub wave_height: Measure,
    /// Its length, crest to crest.
    pub wave_length: Measure,
    /// How deep it can hold water; none where it drains.
    pub puddle: Option<Measure>,
    /// How fast rain comes down.
    pub rain: Option<Measure>,
    /// Water from a hose.
    pub hose: Option<Measure>,
}

/// What drains to one end.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CatchmentReport {
    /// What becomes of the water: edge, drain, wall, low spot, level.
    pub end: String,
    /// The same in words.
    pub text: String,
    /// Its area.
    pub area: Measure,
    /// The longest way of water in it.
    pub longest: Measure,
    /// The rain and the hose water that may come there.
    pub flow: Option<Measure>,
}

/// A connected part of the floor that drains badly.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct FaultReport {
    /// The plane it is a part of; none where the floor is one plane.
    pub facet: Option<String>,
    /// What is wrong: too little, wrong way, held, level.
    pub fault: String,
    /// Its area.
    pub area: Measure,
}
