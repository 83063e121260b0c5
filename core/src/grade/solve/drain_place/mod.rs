//! Where a drain goes so that the floor takes the least concrete: a search over all allowed places, with a bound under all of them.
//!
//! For one place the finish of least concrete is the linear program of [`solve`](super::solve()) over the planes from a level
//! perimeter to the drain. Over the places the concrete is neither convex nor smooth, so they are searched by branch and bound: cells
//! of places, each with a certified bound that no place of it goes under ([`bound`]), the cell of the lowest bound split first, until the
//! best place found is as close to the lowest bound as was asked.

mod allowed;
mod asked;
mod bound;
mod exact;
mod holes;
mod reach;
mod relaxed;
mod search;
mod under_drain;

pub use asked::{CLOSE, DrainAsked, DrainBounds, MOST_PLACES};

use super::buildable::Steps;
use super::solved::{self, Solved};
use crate::choice;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::linear::Solver;
use crate::quantity::{Elevation, Length, Share, Typed, Volume, feet_and_inches};
use crate::survey::Survey;
use allowed::Allowed;
use exact::Work;
use search::Search;

choice! {
    /// Why a search ended.
    pub enum Ended {
        /// The best place is as close to the bound as was asked.
        Close = "close",
        /// As many places were tried as were allowed.
        Cap = "cap",
    }
}

/// A drain at the best place found.
#[derive(Clone, Debug)]
pub struct PlacedDrain {
    /// From the left.
    pub x: Length,
    /// From the front.
    pub y: Length,
    /// The finish there: bare, planned and built. `planned` is the one that was searched for.
    pub solved: Solved,
    /// Height of the built finish all along the perimeter.
    pub perimeter: Elevation,
    /// Height of the built finish at the drain.
    pub drain: Elevation,
    /// The concrete of the planned finish there, unrounded, with the margin.
    pub concrete: Volume,
    /// A drain at no allowed place takes less, unrounded and with the margin.
    pub bound: Volume,
    /// How far the concrete may be above the best, as a share of it.
    pub gap: Share,
    /// Places at which the finish was solved.
    pub places: usize,
    /// Why the search ended.
    pub ended: Ended,
    /// Whether part of the rectangle was left out: from there a corner of the outline cannot be seen, or it is within 1/2 in of the line
    /// of a run.
    pub clipped: bool,
}

/// The place.
pub(super) fn place(survey: &Survey, asked: &DrainAsked<'_>, solver: &dyn Solver) -> Result<PlacedDrain> {
    asked.check()?;
    let allowed = Allowed::of(survey.surface().region(), &asked.within)?;
    let work = Work { survey, asked, solver };
    let found = Search::new(&work, &allowed).run()?;
    let Some(best) = found.best else { return Err(nowhere(&work, &found)) };
    let solved = solved_at(&work, best.at, asked.steps)?;
    let concrete = solved.planned.concrete;
    let bound = found.bound.min(concrete.base());
    let corner = survey.surface().region().outer().corners().first().copied().unwrap_or(best.at);
    let height = |at: Point| {
        let height = solved.built.finish.height_at(Length::from_base(at.x), Length::from_base(at.y));
        height.ok_or_else(|| Failure::new(Code::Internal, "x").written("a place of the floor under no facet"))
    };
    Ok(PlacedDrain {
        x: Length::from_base(best.at.x),
        y: Length::from_base(best.at.y),
        perimeter: height(corner)?,
        drain: height(best.at)?,
        concrete,
        bound: Volume::from_base(bound),
        gap: Share::from_base((concrete.base() - bound) / concrete.base().abs().max(1e-9)),
        solved,
        places: found.places,
        ended: found.ended,
        clipped: allowed.clipped,
    })
}

/// The whole answer at one place.
fn solved_at(work: &Work<'_>, at: Point, steps: Option<Steps>) -> Result<Solved> {
    let layout = work.layout(at)?;
    let demands = work.demands(at);
    solved::solve(work.survey, &work.asked.at_place(&layout, &demands, steps), work.solver)
}

/// What stands in the way where no place was found: what contradicts at one of those tried.
fn nowhere(work: &Work<'_>, found: &search::Found) -> Box<Failure> {
    let at = found.first;
    let [x, y] = [at.x, at.y].map(|at| feet_and_inches(Length::from_base(at), 8));
    let (written, remedy) = match solved_at(work, at, None) {
        Err(failure) => (format!("at {x}, {y}: {}", failure.written), failure.remedy.clone()),
        Ok(_) => (format!("at {x}, {y}"), String::new()),
    };
    match found.ended {
        Ended::Close => Failure::new(Code::DrainNowhere, "x_from")
            .written(format!("no allowed place keeps all demands; {written}"))
            .allowed("a rectangle with a place where all demands can be kept")
            .remedy(remedy),
        Ended::Cap => Failure::new(Code::DrainNotFound, "most_places")
            .written(format!("{} places, none of which keeps all demands; {written}", found.places))
            .allowed("a search that finds a place, or proves that there is none")
            .remedy(format!("allow more places, or a smaller rectangle; or {remedy}")),
    }
}

/// The finish solved exactly at one place, and the bound of a cell, for the laws in the tests.
#[cfg(test)]
pub(super) mod looked_into {
    use super::{Allowed, DrainAsked, Work};
    use crate::failure::Result;
    use crate::geometry::Point;
    use crate::linear::DualSimplex;
    use crate::survey::Survey;

    /// The concrete at a place; none where the demands cannot be kept there.
    pub(in crate::grade::solve) fn exact(survey: &Survey, asked: &DrainAsked<'_>, at: Point) -> Option<f64> {
        let work = Work { survey, asked, solver: &DualSimplex };
        let layout = work.layout(at).ok()?;
        work.over(&layout).unwrap().solve(at).unwrap()
    }

    /// The bound over the allowed places of a rectangle, and the corners of what is allowed; none where the search leaves it out.
    pub(in crate::grade::solve) fn bound(
        survey: &Survey,
        asked: &DrainAsked<'_>,
        cutoff: f64,
    ) -> Result<Option<(f64, Vec<Point>)>> {
        let allowed = Allowed::of(survey.surface().region(), &asked.within)?;
        let work = Work { survey, asked, solver: &DualSimplex };
        let Some(cell) = allowed.whole() else { return Ok(None) };
        let layout = work.layout(cell.place)?;
        let bound = work.over(&layout)?.bound(&cell, cutoff)?;
        Ok(Some((bound, cell.corners)))
    }
}
