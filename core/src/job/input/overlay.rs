//! How the new floor relates to the old slab, and what it is to carry.

use crate::overlay::Bond;
use crate::overlay::minimums::Use;
use crate::overlay::strength::loads::Thing;
use crate::overlay::strength::several::Position;
use crate::overlay::strength::subgrade::Soil;
use crate::quantity::{Force, Given, Length, Pressure, Ratio, SubgradeReaction};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How the new floor relates to the old slab, and what it is to carry.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct OverlayInput {
    /// How the new concrete holds to the old.
    pub bond: Bond,
    /// What the floor is used for.
    pub used: Use,
    /// The largest stone of the mix.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stone: Option<Given<Length>>,
    /// The compressive strength of the new concrete; 4,000 psi where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub strength: Option<Given<Pressure>>,
    /// The thickness of the old slab, where `old_slab` does not say it: it carries with a bonded overlay.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub old_thickness: Option<Given<Length>>,
    /// The compressive strength of the old slab; 3,000 psi where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub old_strength: Option<Given<Pressure>>,
    /// What the old slab rests on; medium soil where neither this nor the reaction is given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub soil: Option<Soil>,
    /// The subgrade reaction, in place of the word: of the soil under a bonded overlay, of the old slab under any other.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub subgrade: Option<Given<SubgradeReaction>>,
    /// The strength in bending over the stress that is allowed; 2 where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub safety: Option<Given<Ratio>>,
    /// What stands or drives on it.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub loads: Vec<StandsInput>,
}

/// What stands or drives on the floor: a thing by its word, or a load with its contact.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StandsInput {
    /// What it is.
    pub name: String,
    /// Its word.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thing: Option<Thing>,
    /// The load of one wheel, jack or leg, in place of the thing's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load: Option<Given<Force>>,
    /// Its contact pressure, in place of the thing's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pressure: Option<Given<Pressure>>,
    /// How many stand in a row, in place of the thing's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 1, max = 8))]
    pub count: Option<u32>,
    /// Middle to middle, in place of the thing's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub spacing: Option<Given<Length>>,
    /// Where on the slab it stands; in the middle and at an edge where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub position: Option<Position>,
}
