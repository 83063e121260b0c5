//! One shot from one set-up.

use super::readings::{ELEVATION, ROD};
use crate::failure::{Result, check};
use crate::quantity::{Elevation, Length};

/// A shot reduced.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReducedShot {
    /// Elevation of the point.
    pub elevation: Elevation,
    /// Height of the instrument.
    pub height_of_instrument: Elevation,
}

/// The elevation of a point from one set-up: HI = benchmark + backsight, elevation = HI - rod.
///
/// # Errors
/// A reading below zero, a number that is not finite or out of reach.
pub fn rod_elevation(benchmark: Elevation, backsight: Length, rod: Length) -> Result<ReducedShot> {
    let height_of_instrument =
        check("benchmark", benchmark, ELEVATION)? + check("backsight", backsight, ROD)?;
    Ok(ReducedShot { elevation: height_of_instrument - check("rod", rod, ROD)?, height_of_instrument })
}
