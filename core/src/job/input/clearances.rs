//! Things that the new floor meets: doors, steps, walls, appliances, fittings, open edges.

use super::LimitPlaceInput;
use crate::clearance::{End, Kind, Swing};
use crate::quantity::{Elevation, Given, Length};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One thing that the floor meets, with the measures that its kind reads; others are refused.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ClearanceInput {
    /// What it is called.
    pub name: String,
    /// What kind of thing it is.
    pub kind: Kind,
    /// Where it is: one place, or places along it; a door from jamb to jamb, an edge from end to end.
    pub at: Vec<LimitPlaceInput>,
    /// How high it is: header of a vehicle door, leaf of a passage door, sill, lower edge, rim, cap, hole.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// The same as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
    /// The same as found with a tape above the old slab: of a vehicle door the clear height now.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub above_slab: Option<Given<Length>>,
    /// Clear height needed: vehicle doors, headroom.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub needed: Option<Given<Length>>,
    /// How much out of level the bottom seal takes up: vehicle doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seal_takes: Option<Given<Length>>,
    /// Photo-eyes above the old slab: sectional and roll doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub eyes_now: Option<Given<Length>>,
    /// Gap under the leaf now, above the old slab: swinging, sliding and passage doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gap_now: Option<Given<Length>>,
    /// Gap wanted under the leaf: swinging, sliding and passage doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub gap: Option<Given<Length>>,
    /// Covering to come on the floor: passage doors, thresholds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub covering: Option<Given<Length>>,
    /// How much may be cut off the leaf: swinging and passage doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub may_lose: Option<Given<Length>>,
    /// In over this floor or out: swinging doors, thresholds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub swing: Option<Swing>,
    /// Whether the leaf runs outside the wall: sliding doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub runs_outside: Option<bool>,
    /// Whether it is a fire-rated door: passage doors.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fire_rated: Option<bool>,
    /// Whether it is a required exit: thresholds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exit: Option<bool>,
    /// Every riser from the bottom up: stairs.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub risers: Vec<Given<Length>>,
    /// Number of even risers: stairs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub riser_count: Option<u32>,
    /// Height of the even risers together: stairs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub flight: Option<Given<Length>>,
    /// Which end of the stair this floor is: stairs.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub end: Option<End>,
    /// Ground outside: one height, of an open edge one at every place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub ground: Vec<Given<Elevation>>,
    /// The same as rod readings from the first set-up.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub ground_rods: Vec<Given<Length>>,
    /// How much stays free: thresholds, panels, inspection strips, fittings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub free: Option<Given<Length>>,
    /// Whether weather reaches the wood: siding.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exposed: Option<bool>,
    /// Whether vehicles are parked in the room: ignition sources.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicles: Option<bool>,
    /// Whether it is listed as resistant to flammable vapour: ignition sources.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub listed: Option<bool>,
    /// Whether it is kept out of the concrete, boxed out or sleeved: framing, posts, anchors, wires.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kept_free: Option<bool>,
    /// Whether services are located and marked: buried services.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub located: Option<bool>,
    /// Whether anybody walks over it: open edges.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub route: Option<bool>,
    /// Where the finish is solved for: that it stays low enough for this thing is a demand.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub demanded: bool,
}
