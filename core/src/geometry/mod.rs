//! Plane geometry that the survey and the grade share: points, regions, planes, exact clipping, careful sums.
//!
//! Everything here is plain `f64` in metres. Nothing snaps to a grid: decisions are made by exact predicates,
//! and what is computed from them is rounded only once.

pub(crate) mod boxes;
pub(crate) mod clip;
pub(crate) mod network;
mod plane;
mod point;
pub(crate) mod predicates;
#[cfg(test)]
pub(crate) mod random;
mod region;
mod sum;
pub(crate) mod triangulation;
pub(crate) mod zero_line;

pub(crate) use plane::Scatter;
pub use plane::{Fit, Plane, PlaneError};
pub use point::Point;
pub use region::{Nearest, Region, RegionError, Ring, RingId, Run, RunId};
pub use sum::Sum;

/// The greatest coordinate taken, in metres: beyond it a millimetre is no longer told apart with room to spare.
pub const FARTHEST: f64 = 1e8;
