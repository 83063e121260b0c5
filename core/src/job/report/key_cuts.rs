//! Keys that are sawn and chipped where the floor meets a given height.

use super::{Measure, PlaceReport};
use schemars::JsonSchema;
use serde::Serialize;

/// Where the floor meets doors, walks and open edges, and the keys that it needs there.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct KeyCutsReport {
    /// The least thickness that is held there.
    pub least: Measure,
    /// What was looked at, in the order of the outline.
    pub looked_at: Vec<String>,
    /// The keys; none where the floor is thick enough along all of it.
    pub cuts: Vec<KeyCutReport>,
    /// The concrete that comes out and goes in, of all keys: it is not in the order.
    pub concrete: Measure,
    /// The name of the basis of the key itself.
    pub basis: String,
    /// The first sentence.
    pub text: String,
}

/// A key along a stretch.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct KeyCutReport {
    /// What is met there.
    pub name: String,
    /// Where it starts.
    pub start: PlaceReport,
    /// Where it ends.
    pub end: PlaceReport,
    /// Its length; none for a lone place.
    pub length: Option<Measure>,
    /// How deep the saw goes along the edge.
    pub depth: Measure,
    /// How deep the key is where it is deepest.
    pub deepest: Measure,
    /// How far back it goes at most.
    pub width: Measure,
    /// The area that is chipped.
    pub area: Measure,
    /// The concrete that comes out and goes in.
    pub concrete: Measure,
    /// Whether the floor behind it reaches its least thickness: if not, a key does not mend it.
    pub runs_out: bool,
    /// What is done.
    pub cut: String,
    /// In one line.
    pub text: String,
}
