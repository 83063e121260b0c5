//! What the new floor does to doors, steps, fittings and the ground outside.
//!
//! Each thing that the raised floor meets is judged by its kind: whether it still works, by how much, what the raise forces and
//! whose trade that is. Only what was read in its source, follows from geometry or was given by the caller can fail; a limit from
//! memory or common practice says to confirm it locally; a measure that decides and was not given is asked for by name.
//!
//! ```
//! use overslab::clearance::{Fixture, FixtureKind, Level, Meets, Thing, Verdict};
//! use overslab::quantity::{Elevation, Length, elevation::foot, length::inch};
//!
//! // A cap 1 in above an old slab that gets 4 in of new floor.
//! let height = |inches: f64| Elevation::new::<foot>(99.0 + inches / 12.0);
//! let cap = Fixture { kind: FixtureKind::Cleanout, level: Some(Level::AboveSlab(Length::new::<inch>(1.0))), free: None };
//! let judgement = Thing::Fixture(cap).judged(&Meets::at(height(0.0), height(4.0)));
//! assert_eq!(judgement.verdict(), Verdict::Fail);
//! assert_eq!(judgement.forces(), "Bring the cleanout's cap up by 3 in on a riser, never bury it.");
//! ```

pub mod approach;
mod floor;
mod given;
mod judge;
mod kinds;
mod level;
mod measure;
pub mod operations;
mod swing;
#[cfg(test)]
mod tests;
mod thing;
mod verdict;
mod words;
mod work;

pub use floor::Meets;
pub use given::{ABOVE, Measures, SIZE, reads};
pub use judge::{JudgedThing, clearances, text};
pub(crate) use judge::{cautions, notes};
pub use kinds::{
    BuriedService, CastIn, CastInKind, DrainRim, End, Fixture, FixtureKind, Flight, Headroom, IgnitionSource,
    MOST_RISERS, OpenEdge, Opening, OverheadDoor, Panel, PassageDoor, Siding, SlidingDoor, Stair, Swing,
    SwingingDoor, TermiteStrip, Threshold, WallSill,
};
pub use level::Level;
pub use measure::Measure;
pub use swing::Leaves;
pub use thing::{Clearance, Kind, Thing};
pub use verdict::{About, Check, Judgement, Verdict, broken};
pub use work::{Task, Trade, Work};
