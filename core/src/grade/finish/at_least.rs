//! The finish that falls square to an edge and gives a least thickness at the worst point.

use super::edge::Facing;
use super::raised::Highest;
use super::{Finish, round_up_to};
use crate::failure::{Code, Failure, Result, check};
use crate::grade::fall::FALL;
use crate::quantity::{Elevation, Length, Range, Slope, Typed, inches, length};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;

/// A least thickness: none, up to 10 ft.
pub const LEAST: Range = Range::closed(0.0, 3.048);

/// A step that heights are rounded to: none, up to a foot.
pub const STEP: Range = Range::closed(0.0, 0.3048);

/// The least thickness with a margin on it.
///
/// # Errors
/// Either outside its range, or both together, which is told of the margin.
pub fn with_margin(least: Length, margin: Length) -> Result<Length> {
    let sum = check("least", least, LEAST)? + check("margin", margin, LEAST)?;
    if LEAST.allows(sum.base()) {
        return Ok(sum);
    }
    // Neither number by itself is refused.
    Err(Failure::new(Code::OutOfRange, "margin")
        .written(format!("{} with the least thickness", inches(sum, 8)))
        .allowed(LEAST.words(&length::unit::inch))
        .remedy("check the length and its unit"))
}

/// What is asked of the finish.
#[derive(Clone, Debug, PartialEq)]
pub struct AtLeast {
    /// Least thickness, the margin in it.
    pub least: Length,
    /// The edge it falls to; none for a level finish.
    pub edge: Option<String>,
    /// The fall towards the edge.
    pub fall: Slope,
    /// Heights are rounded up to whole steps of this from the datum; none leaves them.
    pub round: Option<(Length, Elevation)>,
}

/// The finish and the place that fixes it.
#[derive(Clone, Debug, PartialEq)]
pub struct Governing {
    /// The finish.
    pub finish: Finish,
    /// Where the thickness is least: the place that fixes the height.
    pub at: SlabPlace,
    /// How much rounding has raised it.
    pub rounded_by: Length,
}

impl Finish {
    /// The lowest finish with this fall that leaves `least` over the old slab everywhere between the shots. Ground beyond the
    /// shots is extended, not measured: it is reported, and does not bind.
    ///
    /// # Errors
    /// An unknown or bent edge, a thickness or a fall outside its range.
    pub fn at_least(survey: &Survey, asked: &AtLeast) -> Result<Governing> {
        let least = check("least", asked.least, LEAST)?.base();
        let fall = check("fall", asked.fall, FALL)?.base();
        let facing = match &asked.edge {
            Some(edge) => Facing::edge(survey.outline(), edge)?,
            None => Facing { at: survey.outline().corners()[0].place(), along: [1.0, 0.0] },
        };
        let fall = if asked.edge.is_some() { fall } else { 0.0 };
        let sloped = facing.plane(0.0, fall);
        let laid = Self::of(sloped)?.laid_over(survey.surface())?;
        let highest = Highest::over(survey, &laid);
        let bare = highest.over + least;
        let height = match asked.round {
            Some((step, datum)) => round_up_to(Elevation::from_base(bare), datum, step).base(),
            None => bare,
        };
        let finish = Self::of(facing.plane(height, fall))?;
        Ok(Governing { finish, at: highest.place(survey), rounded_by: Length::from_base(height - bare) })
    }
}
