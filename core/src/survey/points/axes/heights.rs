//! The rise of heights, level or by a plane.

use super::{Known, Levelling, refusal};
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point, Scatter};
use crate::quantity::{Slope, Typed};

/// The greatest tilt that is taken out of heights alone, rise over run. A body tilted by it is shorter in plan by half
/// its square, 2 mm in 10 m, which is left as it is.
pub const STEEPEST: f64 = 0.02;

/// Across their line known points must spread so much to hold a plane, in metres.
const WIDEST_LINE: f64 = 0.1;

/// Rise per length along the new axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tilt {
    /// Along the first.
    pub x: Slope,
    /// Along the second.
    pub y: Slope,
}

impl Tilt {
    pub(super) fn of(rise: Option<Plane>) -> Self {
        let slope = |of: fn(&Plane) -> f64| Slope::from_base(rise.as_ref().map_or(0.0, of));
        Self { x: slope(Plane::b), y: slope(Plane::c) }
    }
}

/// What is added to heights, over the new axes; none where no known point has both heights.
pub(super) fn rise(known: &[Known], tolerance: f64, levelling: Levelling) -> Result<Option<Plane>> {
    let both = |known: &Known| Some([known.to.x, known.to.y, known.to_height? - known.from_height?]);
    let rises: Vec<[f64; 3]> = known.iter().filter_map(both).collect();
    let plane = match levelling {
        Levelling::Rise if rises.is_empty() => return Ok(None),
        Levelling::Rise => {
            let mean = rises.iter().map(|rise| rise[2]).sum::<f64>() / rises.len() as f64;
            Plane::new(mean, 0.0, 0.0)
        }
        Levelling::Tilt => tilted(&rises)?,
    };
    let off = known.iter().filter_map(|known| {
        let [x, y, rise] = both(known)?;
        Some((rise - plane.height_at(Point::new(x, y)), known))
    });
    let worst = off.reduce(|a, b| if b.0.abs() > a.0.abs() { b } else { a });
    match worst {
        Some((off, worst)) if off.abs() > tolerance + 1e-9 => {
            Err(refusal::heights(worst, off, tolerance, levelling, rises.len()))
        }
        _ => Ok(Some(plane)),
    }
}

/// The plane of least squares through the rises.
fn tilted(rises: &[[f64; 3]]) -> Result<Plane> {
    let scatter = Scatter::of(rises.iter().copied());
    let refused = |written: String| {
        Failure::new(Code::KnownPoints, "known")
            .written(written)
            .allowed("for a tilt three points with heights in both systems, well away from one line")
            .remedy("give a third point with its heights, or ask for a rise alone")
    };
    if rises.len() < 3 {
        return Err(refused(format!("{} points with heights in both systems", rises.len())));
    }
    let plane = match scatter.plane() {
        Ok(plane) if scatter.width() > WIDEST_LINE => plane,
        _ => return Err(refused(format!("{} points with heights on one line", rises.len()))),
    };
    if plane.steepest() > STEEPEST {
        return Err(Failure::new(Code::KnownPoints, "known")
            .written(format!("a tilt of {:.2} %", 100.0 * plane.steepest()))
            .allowed(format!("at most {} %", 100.0 * STEEPEST))
            .remedy("check the heights of the known points; level the scan before it is exported"));
    }
    Ok(plane)
}
