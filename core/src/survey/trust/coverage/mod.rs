//! How well the shots cover the work, and where the next ones belong.
//!
//! Every place of the work belongs to the shot nearest to it (Voronoi's cells, cut at the outline). The place farthest from
//! all shots is then a corner of a cell: the middle of the largest circle, its middle on the work, that holds no shot. The
//! next shot belongs there; each one added takes its part from the cells around it. Distances are straight, through walls
//! and holes.

mod cells;
mod disc;
#[cfg(test)]
mod tests;

use cells::Cells;

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::Point;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Length, Range, Ratio, Typed, area, feet_and_inches, number_in};
use crate::survey::Survey;
use crate::survey::fixed::feet;
use crate::survey::surface::Ground;
use crate::survey::tolerance::Tolerance;

/// How near a shot should be to every place: 6 ft, which a grid of 8 ft keeps. Common practice, no source.
pub const NEAR_ENOUGH: Length = feet(6.0);

/// What may be asked for as near enough: from half an inch, which is one place, to 100 m.
pub const NEAR: Range = Range::closed(0.0127, 100.0);

/// The most shots that are proposed.
pub const MOST: usize = 500;

/// A place where a shot is missing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NextShot {
    /// Distance from the left and from the front.
    pub at: [Length; 2],
    /// How far the nearest shot is, those proposed before it among them.
    pub nearest: Length,
    /// The area that is still not covered once it is shot.
    pub uncovered_after: Area,
    /// The farthest that any place is from a shot then.
    pub farthest_after: Length,
}

/// How well the shots cover the work.
#[derive(Clone, Debug, PartialEq)]
pub struct Coverage {
    /// The area of the work.
    pub area: Area,
    /// The distance that is near enough.
    pub near: Tolerance,
    /// The area farther than that from every shot.
    pub uncovered: Area,
    /// The area beyond the last shots.
    pub beyond: Area,
    /// The area in triangles that leave the outline.
    pub unsurveyed: Area,
    /// The farthest that any place of the work is from a shot.
    pub farthest: Length,
    /// Where that place is.
    pub farthest_at: [Length; 2],
    /// Where the next shots belong, the most wanted first, until every place is near enough or as many as asked are told.
    pub next: Vec<NextShot>,
}

/// How well the shots cover the work: what is farther than `near` from every shot, and up to `most` places for more.
///
/// # Errors
/// `OUT_OF_RANGE`, `NOT_FINITE`: a distance outside [`NEAR`].
pub fn coverage(survey: &Survey, near: Option<Length>, most: usize) -> Result<Coverage> {
    let near = match near {
        Some(value) => Tolerance { port: "near", value: check("near", value, NEAR)?, taken: None },
        None => Tolerance { port: "near", value: NEAR_ENOUGH, taken: Some(BasisId::ShotSpacing) },
    };
    let shots = survey.shots().each().map(|(_, [x, y], _)| Point::new(x.base(), y.base()));
    let reach = near.value.base();
    let mut cells = Cells::new(survey.outline().region(), shots.collect(), reach);
    let Some((farthest, at)) = cells.farthest() else {
        return Err(Failure::new(Code::Internal, "survey")
            .written("a survey without a place")
            .remedy("report this fault"));
    };
    let (facts, place) =
        (survey.surface().whole(), |at: Point| [Length::from_base(at.x), Length::from_base(at.y)]);
    let mut coverage = Coverage {
        area: Area::from_base(facts.area()),
        near,
        uncovered: Area::from_base(cells.uncovered()),
        beyond: Area::from_base(facts.area_of(Ground::Beyond)),
        unsurveyed: Area::from_base(facts.area_of(Ground::Spanning)),
        farthest: Length::from_base(farthest),
        farthest_at: place(at),
        next: Vec::new(),
    };
    let mut worst = Some((farthest, at));
    while let Some((nearest, at)) = worst.filter(|(far, _)| near.exceeded_by(Length::from_base(*far))) {
        if coverage.next.len() >= most.min(MOST) {
            break;
        }
        cells.add(at);
        worst = cells.farthest();
        coverage.next.push(NextShot {
            at: place(at),
            nearest: Length::from_base(nearest),
            uncovered_after: Area::from_base(cells.uncovered()),
            farthest_after: Length::from_base(worst.map_or(0.0, |(far, _)| far)),
        });
    }
    Ok(coverage)
}

impl Coverage {
    /// The share of the work that is farther than near enough from every shot.
    #[must_use]
    pub fn uncovered_share(&self) -> Ratio {
        Ratio::from_base(self.uncovered.base() / self.area.base())
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        if !self.near.exceeded_by(self.farthest) {
            return Vec::new();
        }
        let text = format!(
            "{} of the work ({:.0} %) lies more than {} from any shot, up to {}",
            number_in(self.uncovered, &area::unit::square_foot, 0),
            100.0 * self.uncovered_share().base(),
            feet_and_inches(self.near.value, 8),
            feet_and_inches(self.farthest, 8),
        );
        vec![Note::new(NoteCode::Uncovered, text)]
    }
}
