//! Breaking the old slab out, as the third way.

use super::{Amount, Measure};
use schemars::JsonSchema;
use serde::Serialize;

/// What breaking the old slab out takes, with a new slab as high as the new floor.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TearOutReport {
    /// Whether the verdict on the old slab takes this way.
    pub taken: bool,
    /// Whether all of the work is broken out, or a part of it.
    pub whole: bool,
    /// What the verdict has against it; none where it is allowed, or where nothing is known of the old slab.
    pub verdict: Option<String>,
    /// The area broken out.
    pub area: Measure,
    /// The thickness of the old slab.
    pub old_thickness: Measure,
    /// Old concrete in place.
    pub in_place: Measure,
    /// Its mass.
    pub mass: Measure,
    /// Its volume broken up.
    pub loose: Measure,
    /// Loads to the dump.
    pub loads: u32,
    /// What one load may weigh.
    pub box_weight: Measure,
    /// How much higher the new floor is than the old one, on the mean.
    pub rise: Measure,
    /// How deep the ground is dug below the old slab.
    pub dig_depth: Measure,
    /// The ground dug, in place; it is not in the loads.
    pub dig: Measure,
    /// New base, compacted.
    pub base: Measure,
    /// New base, loose, as it is bought.
    pub base_bought: Measure,
    /// The thickness of the new slab; none where nothing is poured.
    pub new_thickness: Option<Measure>,
    /// The concrete of the new slab, net; none where nothing is poured.
    pub concrete: Option<Measure>,
    /// The concrete of the floor over the old slab, net; none where only a part is broken out.
    pub concrete_over: Option<Measure>,
    /// The cost of each part; empty where no price is given.
    pub costs: Vec<TearOutCostReport>,
    /// All of it; none where a price is missing.
    pub total: Option<Amount>,
    /// What has no price, where others have one.
    pub missing: Vec<String>,
    /// Both ways side by side, in a sentence or two.
    pub text: String,
}

/// A part of the cost.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct TearOutCostReport {
    /// What for.
    pub what: String,
    /// How much; none where its price is missing.
    pub money: Option<Amount>,
}
