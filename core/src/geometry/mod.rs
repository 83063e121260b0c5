//! Plane geometry that the survey and the grade share: points, regions, planes, exact clipping, careful sums.
//!
//! Everything here is plain `f64` in metres. Nothing snaps to a grid: decisions are made by exact predicates,
//! and what is computed from them is rounded only once.

mod plane;
mod point;
mod region;
mod sum;

pub use plane::{Fit, Plane, PlaneError};
pub use point::Point;
pub use region::{Nearest, Region, RegionError, Ring, RingId, Run, RunId};
pub use sum::Sum;
