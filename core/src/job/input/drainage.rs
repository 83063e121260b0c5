//! How the floor should drain, and what water comes.

use crate::grade::drainage::Surface;
use crate::quantity::{Flow, Given, Length, RainIntensity, Ratio, Slope};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// How the floor should drain, and what water comes.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DrainageInput {
    /// How the surface is finished and used, which sets the least fall.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub surface: Option<Surface>,
    /// The least fall, in place of that of the surface.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_fall: Option<Given<Slope>>,
    /// The height of a wave that strike-off may leave, crest to trough.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wave_height: Option<Given<Length>>,
    /// The length of that wave, crest to crest.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub wave_length: Option<Given<Length>>,
    /// How fast rain comes down, where it falls on the floor.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rain: Option<Given<RainIntensity>>,
    /// The share of the rain that runs off.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub runs_off: Option<Given<Ratio>>,
    /// Water from a hose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub hose: Option<Given<Flow>>,
}
