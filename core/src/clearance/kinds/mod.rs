//! The kinds of things that a floor meets, by family: each a small function from measures and the floor to a judgement.

mod cast_in;
mod edge;
mod fixture;
mod leaf;
mod overhead;
mod passage;
mod rim;
mod stair;
mod threshold;
mod vehicle_door;
mod wood;

pub use cast_in::{BuriedService, CastIn, CastInKind};
pub use edge::OpenEdge;
pub use fixture::{Fixture, FixtureKind};
pub use leaf::{SlidingDoor, SwingingDoor};
pub use overhead::{Headroom, IgnitionSource, Panel};
pub use passage::PassageDoor;
pub use rim::DrainRim;
pub use stair::{End, Flight, MOST_RISERS, Stair};
pub use threshold::Threshold;
pub use vehicle_door::{Opening, OverheadDoor};
pub use wood::{Siding, TermiteStrip, WallSill};

use crate::quantity::{Length, Typed, units::INCH};

crate::choice! {
    /// Which way a door swings.
    pub enum Swing {
        /// In, over this floor.
        In = "in",
        /// Out, away from this floor.
        Out = "out",
    }
}

/// So many inches.
pub(super) fn inch(number: f64) -> Length {
    Length::from_base(number * INCH)
}

/// Whether a length is more than nothing.
fn is_some(length: Length) -> bool {
    length.base() > super::verdict::HAIR
}
