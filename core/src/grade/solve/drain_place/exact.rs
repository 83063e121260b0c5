//! The finish of least concrete for one place of the drain.

use super::super::demand::{Demand, Line, Outlet, Wants};
use super::super::layout::Layout;
use super::super::problem::{Problem, Unsolved};
use super::super::{buildable, solved};
use super::asked::DrainAsked;
use crate::failure::Result;
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::grade::finish::patterns::{DrainSet, ToDrain};
use crate::linear::Solver;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;

/// What is the same for all places.
pub(super) struct Work<'a> {
    pub(super) survey: &'a Survey,
    pub(super) asked: &'a DrainAsked<'a>,
    pub(super) solver: &'a dyn Solver,
}

/// The work with the facets about one place.
pub(super) struct Over<'w, 'l> {
    pub(super) work: &'w Work<'l>,
    pub(super) layout: Layout<'l>,
}

impl<'w> Work<'w> {
    /// The facets about a place; their heights do not count.
    pub(super) fn layout(&self, at: Point) -> Result<Finish> {
        let drain = ToDrain {
            x: Length::from_base(at.x),
            y: Length::from_base(at.y),
            elevation: Elevation::from_base(0.0),
            set: DrainSet::At(Elevation::from_base(-0.01)),
            rim: None,
        };
        Finish::to_drain(self.survey.outline(), &drain)
    }

    /// The facets with the old slab under them.
    pub(super) fn over(&self, layout: &Finish) -> Result<Over<'_, 'w>> {
        Ok(Over { work: self, layout: Layout::of(self.survey, Some(layout))? })
    }

    /// What was demanded, the falls to the drain and the level perimeter.
    pub(super) fn demands(&self, at: Point) -> Vec<Demand> {
        let mut demands = self.asked.demands.to_vec();
        let fall = Wants::LeastFall { fall: self.asked.fall, toward: Outlet::Place(at), on: None };
        demands.push(Demand::new("fall to the drain", fall));
        if let Some(fall) = self.asked.greatest_fall {
            demands.push(Demand::new("greatest fall", Wants::Steepest { fall, on: None }));
        }
        let along = Line::Places(buildable::perimeter(self.survey));
        let level = Wants::Level { along, tolerance: Length::from_base(0.0) };
        demands.push(Demand::new("level perimeter", level).firmly());
        demands
    }
}

impl Over<'_, '_> {
    /// The concrete; none where the demands cannot be kept here.
    pub(super) fn solve(&self, at: Point) -> Result<Option<f64>> {
        let demands = self.work.demands(at);
        let asked = self.work.asked;
        let writing = asked.at_place(&self.layout.template, &demands, None).writing(false);
        let mut problem = Problem::new(&self.layout, &demands, writing, None)?;
        match problem.solve(self.work.solver, &|_| true, None) {
            Ok(found) if found.optimum.unbounded() => Err(solved::nothing_holds()),
            Ok(found) => Ok(Some(found.value)),
            Err(Unsolved::Conflict) => Ok(None),
            Err(Unsolved::Failed(failure)) => Err(failure),
        }
    }
}
