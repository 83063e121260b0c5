//! Two planes that meet in a valley or on a ridge across the work.

use super::line::Laid;
use super::{BreakLine, around, facet, sides};
use crate::failure::{Code, Failure, Result, check};
use crate::grade::fall::FALL;
use crate::grade::finish::{Facet, Finish};
use crate::quantity::{Slope, Typed};
use crate::survey::outline::Outline;

impl Finish {
    /// Two planes that fall to a valley, each square to it by its own fall (left, then right, looking from the first point of the
    /// valley to the second); the valley may fall along its length.
    ///
    /// # Errors
    /// A line or a fall that cannot be; `OFF_WORK`: a valley that does not cross the work.
    pub fn to_valley(outline: &Outline, valley: &BreakLine, falls: [Slope; 2]) -> Result<Self> {
        let line = valley.laid("valley")?;
        let rises = checked(falls)?;
        let facets = two_sides(outline, &line, 0.0, rises, "valley")?;
        Self::faceted(facets.into_iter().map(|facet| facet.falling_to("valley")).collect())
    }

    /// Two planes that fall away from a ridge, each square to it by its own fall; the ridge may fall along its length.
    ///
    /// # Errors
    /// As [`Finish::to_valley`].
    pub fn crown(outline: &Outline, ridge: &BreakLine, falls: [Slope; 2]) -> Result<Self> {
        let line = ridge.laid("ridge")?;
        let rises = checked(falls)?.map(|rise| -rise);
        Self::faceted(two_sides(outline, &line, 0.0, rises, "ridge")?)
    }
}

/// Falls on the left and on the right that may be.
pub(super) fn checked([left, right]: [Slope; 2]) -> Result<[f64; 2]> {
    Ok([check("fall", left, FALL)?.base(), check("right_fall", right, FALL)?.base()])
}

/// The facets on the left and on the right of a line, or of a level strip along it of some width, that rise away from it.
pub(super) fn two_sides(
    outline: &Outline,
    line: &Laid,
    width: f64,
    [left, right]: [f64; 2],
    path: &str,
) -> Result<Vec<Facet>> {
    let (work, half) = (around(outline), 0.5 * width);
    let (from, to) = line.beside(half);
    let [on_left, _] = sides(&work, from, to);
    let (from, to) = line.beside(-half);
    let [_, on_right] = sides(&work, from, to);
    if on_left.is_empty() || on_right.is_empty() {
        return Err(Failure::new(Code::OffWork, path)
            .written("no work on one side of the line")
            .allowed("a line with work on both sides of it")
            .remedy("move the line; for one plane name the edge it falls to"));
    }
    Ok(vec![
        facet(on_left, line.plane(half, left), "left")?,
        facet(on_right, line.plane(-half, -right), "right")?,
    ])
}
