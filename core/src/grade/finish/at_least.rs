//! The finish that falls square to an edge and gives a least thickness at the worst point.

use super::edge::Facing;
use super::{Finish, round_up_to};
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, Point};
use crate::grade::fall::FALL;
use crate::quantity::{Elevation, Length, Range, Slope, Typed, inches, length};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;
use crate::survey::surface::Ground;

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
        let (needed, at) = highest_over(survey, &sloped);
        let bare = needed + least;
        let height = match asked.round {
            Some((step, datum)) => round_up_to(Elevation::from_base(bare), datum, step).base(),
            None => bare,
        };
        let finish = Self::of(facing.plane(height, fall))?;
        Ok(Governing { finish, at, rounded_by: Length::from_base(height - bare) })
    }
}

/// How far the old slab stands above a plane at most, between the shots, and where.
fn highest_over(survey: &Survey, plane: &Plane) -> (f64, SlabPlace) {
    let mut worst = (f64::NEG_INFINITY, Point::default(), 0.0, None);
    let measured = survey.surface().whole().triangles().filter(|triangle| triangle.ground != Ground::Beyond);
    for corner in measured.flat_map(|triangle| triangle.corners) {
        let over = corner.height - plane.height_at(corner.at);
        // At one height a shot is a better reason than a place on an edge, and the first a better one than the next.
        if over > worst.0 + 1.0e-9 || over > worst.0 - 1.0e-9 && worst.3.is_none() && corner.shot.is_some() {
            worst = (over, corner.at, corner.height, corner.shot);
        }
    }
    if worst.0 == f64::NEG_INFINITY {
        return highest_shot_over(survey, plane);
    }
    let (over, at, height, shot) = worst;
    (over, place(survey, at, height, shot))
}

/// The same over the shots alone, for a work that lies wholly beyond them.
fn highest_shot_over(survey: &Survey, plane: &Plane) -> (f64, SlabPlace) {
    let mut worst = (f64::NEG_INFINITY, Point::default(), 0.0, None);
    for (shot, [x, y], elevation) in survey.shots().each() {
        let at = Point::new(x.base(), y.base());
        let over = elevation.base() - plane.height_at(at);
        if over > worst.0 {
            worst = (over, at, elevation.base(), Some(shot));
        }
    }
    (worst.0, place(survey, worst.1, worst.2, worst.3))
}

fn place(survey: &Survey, at: Point, height: f64, shot: Option<usize>) -> SlabPlace {
    SlabPlace {
        x: Length::from_base(at.x),
        y: Length::from_base(at.y),
        elevation: Elevation::from_base(height),
        shot: shot.map(|shot| survey.shots().name(shot)),
    }
}
