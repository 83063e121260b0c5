//! The ground outside a door, and what is made of it.

use super::LimitPlaceInput;
use crate::clearance::approach::Traffic;
use crate::quantity::{Elevation, Given, Length, Slope};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// An approach to a door: a driveway, a walk, a ramp.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ApproachInput {
    /// What it is: big door, side door.
    pub name: String,
    /// Places along the door, on the floor.
    pub at: Vec<LimitPlaceInput>,
    /// The ground outside, from the door outwards; the first place is at the door.
    pub profile: Vec<ApproachPlaceInput>,
    /// What goes over it.
    #[serde(default, rename = "for", skip_serializing_if = "Option::is_none")]
    pub traffic: Option<Traffic>,
    /// The fall away from the door that is wanted.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fall: Option<Given<Slope>>,
    /// Over which distance from the door.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub over: Option<Given<Length>>,
    /// How far from the door a new approach meets the ground; without it the ground stays.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tie_in: Option<Given<Length>>,
    /// How thick the new approach is.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Given<Length>>,
    /// How far the outside lies below the floor at the door.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rebate: Option<Given<Length>>,
    /// How wide the door is, for a drain along it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width: Option<Given<Length>>,
    /// The vehicle that has to get over it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub vehicle: Option<VehicleInput>,
    /// Where the finish is solved for: whether it has to be high enough for the water to fall away.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub demanded: bool,
}

/// A place of the ground outside: its height as an elevation or as a rod reading from the first set-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ApproachPlaceInput {
    /// How far from the door.
    pub distance: Given<Length>,
    /// Its height.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// Its height as a rod reading.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
}

/// Measures of a vehicle; what is not given is not judged.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct VehicleInput {
    /// From axle to axle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wheelbase: Option<Given<Length>>,
    /// Room under it between the axles.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub clearance: Option<Given<Length>>,
    /// From the front axle to the bumper.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overhang: Option<Given<Length>>,
    /// Room under the bumper.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub bumper: Option<Given<Length>>,
}
