//! How the new floor relates to the old slab, and what it carries.

use super::Measure;
use schemars::JsonSchema;
use serde::Serialize;

/// How the new floor relates to the old slab.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct OverlayReport {
    /// How the new concrete holds to the old.
    pub bond: String,
    /// What the floor is used for.
    pub used: String,
    /// The least thickness in practice.
    pub least: Measure,
    /// Whether the new floor is that thick everywhere.
    pub thick_enough: bool,
    /// The rule that decides, and where it comes from.
    pub rule: String,
    /// The name of its basis.
    pub basis: String,
    /// The largest stone for the thinnest part.
    pub largest_stone: Measure,
    /// Whether the stone of the mix is too large for the thinnest part; none where no stone is given.
    pub stone_too_large: Option<bool>,
    /// What goes between old and new.
    pub between: String,
    /// What it means for the floor.
    pub means: String,
    /// The surface profile under a bonded overlay, smoothest and roughest; none for others.
    pub profile: Option<[i64; 2]>,
    /// The ways to that profile.
    pub ways: Vec<String>,
    /// What the new concrete weighs on each unit of area, on average.
    pub added_weight: Measure,
    /// What the old slab's verdict has against it; none where it is allowed, or where nothing is known of the old slab.
    pub verdict: Option<String>,
    /// What it carries.
    pub loads: Vec<CarriedReport>,
    /// The first sentence.
    pub text: String,
}

/// One thing at one place.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct CarriedReport {
    /// What stands or drives there.
    pub name: String,
    /// What was taken for it.
    pub said: String,
    /// Where on the slab.
    pub position: String,
    /// The layer that governs: overlay, old slab; none where no numbers are given.
    pub layer: Option<String>,
    /// The stress there.
    pub stress: Option<Measure>,
    /// What is allowed.
    pub allowed: Option<Measure>,
    /// The overlay thickness that it needs; none where no floor of 24 in carries it.
    pub needed: Option<Measure>,
    /// Whether the thinnest part is enough; none where no numbers are given.
    pub enough: Option<bool>,
    /// In one line.
    pub text: String,
}
