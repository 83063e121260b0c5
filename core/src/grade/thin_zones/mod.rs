//! Zones thinner than the unbonded minimum, and what may be done about each.
//!
//! A zone is a connected part of the work where finish less old slab is under the minimum. Four things cure it:
//!
//! | choice | what it does | concrete, against the finish as it is |
//! |---|---|---|
//! | raise | the whole finish rises by what the zone's thinnest place lacks | fill under the risen finish less fill now |
//! | bond | the zone is prepared and bonded, and may be as thin as a bonded part may | none |
//! | grind | the old slab in the zone is ground to the minimum under the finish | what the zone lacks, less the old slab above the finish |
//! | break out | the old slab comes out, the new concrete goes down to a thickness | integral of what the overlay lacks to that thickness |
//!
//! Money is area x price + concrete x price, at the caller's plain prices; without them there is none.
//!
//! A change between bonded and unbonded comes only along a full-depth joint, and joints are straight: what is bonded or broken out
//! is the zone's bounding box in plan, clipped to the work, with joints along those of its sides that lie inside the work.
//!
//! Zones are told over all ground, with the area of each that lies beyond the shots: there the old slab is extended, not measured.

mod asked;
mod bond;
mod break_out;
mod choice;
mod found;
mod grind;
mod notes;
mod overlay;
mod plan_box;
mod raise;
mod say;
#[cfg(test)]
mod tests;
mod zone;

pub use asked::{AREA_PRICE, AskedOfThinZones, GROUND, MINIMUM, Prices, VOLUME_PRICE};
pub use choice::{Choice, Cure, Enough, Verdict};
pub use found::ThinZones;
pub use plan_box::PlanBox;
pub use zone::ThinZone;
