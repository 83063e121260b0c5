//! The job description, as TOML or JSON holds it.

mod approach;
mod as_built;
mod clearances;
mod drainage;
mod elevations;
mod limits;
mod marks;
mod order;
mod overlay;
mod places;
mod prices;
mod solve;
mod tear_out;
mod thin_zones;

pub use approach::{ApproachInput, ApproachPlaceInput, VehicleInput};
pub use as_built::{AsBuiltInput, ProfileInput, PuddleInput};
pub use clearances::ClearanceInput;
pub use drainage::DrainageInput;
pub use elevations::ElevationsInput;
pub use limits::{LimitInput, LimitPlaceInput};
pub use marks::{LineAboveInput, MarkPointInput, MarkSetUpInput, MarksInput, PadsInput, RailInput};
pub use order::{AllowanceInput, ExtraInput, OrderInput};
pub use overlay::{OverlayInput, StandsInput};
pub use places::{SectionInput, ZoneInput};
pub use prices::PricesInput;
pub use solve::{DemandInput, SolveInput};
pub use tear_out::TearOutInput;
pub use thin_zones::ThinZonesInput;

use super::finish::FinishDemand;
use crate::condition::FindingsInput;
use crate::survey::clean_up::ChangeInput;
use crate::survey::input::{LevelInput, OutlineInput};
use crate::survey::low_spots::EdgesInput;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The version of the job and report schemas.
pub const SCHEMA_VERSION: u32 = 1;

/// One job. Quantities are texts with their unit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Job {
    /// The version of this schema: 1.
    #[schemars(range(min = 1, max = 1))]
    pub schema_version: u32,
    /// What the job is.
    pub job: AboutInput,
    /// What was found on the old slab: whether it may stay.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub old_slab: Option<FindingsInput>,
    /// The plan edge of the work. It may be left out, together with the heights, where a survey is handed over with the job.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outline: Option<OutlineInput>,
    /// Rod readings.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<LevelInput>,
    /// Elevations, where they were not read with a rod.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub survey: Option<ElevationsInput>,
    /// What is ground off or filled before the pour, in order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub clean_up: Vec<ChangeInput>,
    /// The new top surface.
    pub finish: FinishDemand,
    /// Where water may leave: edges that are walled, open or drained, and drains.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub water: Option<EdgesInput>,
    /// How the floor should drain, and what water comes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drainage: Option<DrainageInput>,
    /// Parts of the floor with figures of their own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub zones: Vec<ZoneInput>,
    /// Lines along which both surfaces are told.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sections: Vec<SectionInput>,
    /// Heights that the finish must keep to: doors, sills.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub limits: Vec<LimitInput>,
    /// The ground outside doors: driveways, walks, ramps.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub approaches: Vec<ApproachInput>,
    /// Doors, steps, walls, appliances, fittings and open edges that the floor meets.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub clearances: Vec<ClearanceInput>,
    /// How the new floor relates to the old slab, and what it is to carry.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub overlay: Option<OverlayInput>,
    /// Breaking the old slab out, as the third way.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tear_out: Option<TearOutInput>,
    /// Zones thinner than an unbonded overlay may be.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thin_zones: Option<ThinZonesInput>,
    /// What the crew sets out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub marks: Option<MarksInput>,
    /// Plain prices, for a finish that is solved for, for thin zones and for breaking out.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub prices: Option<PricesInput>,
    /// What to order.
    #[serde(default)]
    pub order: OrderInput,
    /// The new floor as measured after the pour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub as_built: Option<AsBuiltInput>,
}

/// What the job is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AboutInput {
    /// Its name, printed on top of the report.
    pub name: String,
    /// What the floor is for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub usage: Option<String>,
    /// Where x and y are measured from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub origin: Option<String>,
}
