//! The fall of a surface: height lost over a run.

use crate::failure::{Result, check};
use crate::quantity::{Length, Range, Slope, Typed};

const FOOT: f64 = 0.3048;

/// Guidance for a well-finished floor: 1/8 in per ft. See [`BasisId::FallFinishedFloor`](crate::basis::BasisId).
pub const GUIDANCE: f64 = 0.125 / 12.0;

/// A drop of a floor: none, or up to 100 ft.
pub const DROP: Range = Range::closed(0.0, 100.0 * FOOT);
/// A run in plan: more than none, up to 10 000 ft.
pub const RUN: Range = Range::positive_to(10_000.0 * FOOT);
/// A fall: none, or up to 1:1.
pub const FALL: Range = Range::closed(0.0, 1.0);

/// The fall of a surface that loses `drop` over `run`: fall = drop / run.
///
/// # Errors
/// A drop or a run outside its range.
///
/// ```
/// use overslab::quantity::{read, Length, slope::percent};
/// let fall = overslab::grade::fall::fall(read::<Length>("2 in")?, read::<Length>("20 ft")?)?;
/// assert!((fall.get::<percent>() - 0.8333).abs() < 1e-4);
/// # Ok::<(), Box<overslab::failure::Failure>>(())
/// ```
pub fn fall(drop: Length, run: Length) -> Result<Slope> {
    let (drop, run) = (check("drop", drop, DROP)?, check("run", run, RUN)?);
    Ok(Slope::from_base(drop.base() / run.base()))
}

/// The height that a surface loses over `run` at `fall`: drop = fall x run.
///
/// # Errors
/// A fall or a run outside its range.
pub fn drop(fall: Slope, run: Length) -> Result<Length> {
    let (fall, run) = (check("fall", fall, FALL)?, check("run", run, RUN)?);
    Ok(Length::from_base(fall.base() * run.base()))
}
