//! A finish that is solved for: from the keys of a job to demands, and to the nearest finish where they contradict one another.

mod demands;
mod origin;
#[cfg(test)]
mod tests;

pub(in crate::job) use origin::Origin;

use super::finish::Made;
use super::heights::Heights;
use super::input::{Job, SolveInput};
use crate::failure::{Code, Result, check};
use crate::grade::finish::Finish;
use crate::grade::solve::{self, Asked, Conflicts, Demand, MayGrind, Solved, Steps, Wants};
use crate::grade::thin_zones::VOLUME_PRICE;
use crate::quantity::{Length, Typed, Volume, VolumePrice};
use crate::survey::Survey;
use crate::survey::clean_up::{Change, Done, Target};
use crate::survey::old_slab::SlabPlace;
use crate::survey::outline::Outline;
use origin::in_job;

/// A demand with its place in the job.
#[derive(Clone, Debug)]
pub(super) struct Listed {
    pub(super) demand: Demand,
    pub(super) origin: Origin,
}

/// What was found.
#[derive(Debug)]
pub(super) struct Solution {
    /// The demands as asked, with their places in the job.
    pub(super) asked: Vec<Listed>,
    /// The demands that the finish keeps: those asked, or the nearest that can all be kept.
    pub(super) kept: Vec<Demand>,
    /// What contradicts, where it does; the finish is then the nearest one.
    pub(super) conflicts: Option<Conflicts>,
    /// The finish.
    pub(super) solved: Solved,
}

impl Job {
    /// The finish, where it is solved for.
    pub(super) fn solution(&self, survey: &Survey, heights: Heights) -> Result<Option<Solution>> {
        let Some(solve) = &self.finish.solve else { return Ok(None) };
        let plan = self.finish.solvable_plan(survey.outline(), heights)?;
        let asked = self.demands(solve, &plan, survey, heights)?;
        let demands: Vec<Demand> = asked.iter().map(|listed| listed.demand.clone()).collect();
        let question = self.question(solve, plan.layout.as_ref(), &demands, heights)?;
        match solve::solve(survey, &question) {
            Ok(solved) => Ok(Some(Solution { asked, kept: demands, conflicts: None, solved })),
            Err(failure) if failure.code == Code::DemandsConflict => {
                let found = solve::conflicts(survey, &question).map_err(|failure| in_job(failure, &asked))?;
                let Some(conflicts) = found else { return Err(in_job(failure, &asked)) };
                let kept = conflicts.nearest(&demands);
                let solved = solve::solve(survey, &Asked { demands: &kept, ..question });
                let solved = solved.map_err(|_| in_job(failure, &asked))?;
                Ok(Some(Solution { asked, kept, conflicts: Some(conflicts), solved }))
            }
            Err(failure) => Err(in_job(failure, &asked)),
        }
    }

    fn question<'a>(
        &self,
        solve: &SolveInput,
        layout: Option<&'a Finish>,
        demands: &'a [Demand],
        heights: Heights,
    ) -> Result<Asked<'a>> {
        let price = self.grinding_price();
        let price = price.map(|price| check("prices.grinding", price, VOLUME_PRICE)).transpose()?;
        Ok(Asked {
            layout,
            demands,
            margin: self.finish.margin().0,
            edges_bind: solve.edges_bind,
            concrete_price: self.concrete_price()?,
            grinding: solve.grind_at_most.as_ref().map(|at_most| MayGrind { at_most: at_most.value, price }),
            steps: Some(Steps {
                heights: self.finish.round().0,
                datum: heights.datum,
                falls: self.finish.round_fall().0,
            }),
        })
    }

    /// The price of grinding by volume, where it is given.
    pub(super) fn grinding_price(&self) -> Option<VolumePrice> {
        self.prices.as_ref()?.grinding.as_ref().map(|given| given.value)
    }

    /// The price of concrete, where it is given.
    pub(super) fn concrete_price(&self) -> Result<Option<VolumePrice>> {
        let given = self.prices.as_ref().and_then(|prices| prices.concrete.as_ref());
        given.map(|given| check("prices.concrete", given.value, VOLUME_PRICE)).transpose()
    }
}

impl Solution {
    /// The finish in the form that the report is made from.
    pub(super) fn made(&self) -> Made {
        Made {
            finish: self.solved.built.finish.clone(),
            governing: None,
            without_margin: None,
            unrounded: None,
        }
    }

    /// What whole steps cost.
    pub(super) fn rounding(&self) -> Volume {
        self.solved.built.concrete - self.solved.planned.concrete
    }

    /// The place where a least thickness holds the planned finish.
    pub(super) fn fixed_at(&self) -> Option<&SlabPlace> {
        let is_least = |name: &str| {
            let wants = self.kept.iter().find(|demand| demand.name == name).map(|demand| &demand.wants);
            matches!(wants, Some(Wants::LeastThickness { .. }))
        };
        let binding = self.solved.demands.iter().find(|kept| kept.binds && is_least(&kept.name))?;
        binding.at.as_ref()
    }

    /// The greatest of the least thicknesses over the whole work that are kept.
    fn whole_least(&self) -> Option<Length> {
        let whole = self.kept.iter().filter_map(|demand| match &demand.wants {
            Wants::LeastThickness { least, zone: None } => Some(*least),
            _ => None,
        });
        whole.reduce(|a, b| if a.base() < b.base() { b } else { a })
    }

    /// The old slab after the high spots under the finish were ground off; the same where nothing is ground.
    pub(super) fn ground(&self, survey: &Survey, margin: Length) -> Result<Option<Survey>> {
        if self.solved.built.ground.base() <= 0.0 {
            return Ok(None);
        }
        let Some(least) = self.whole_least() else { return Ok(None) };
        let lower = self.solved.built.finish.moved_up(Length::from_base(-(least + margin).base()));
        let everywhere = lower.plane().map(|plane| Ok(Target { plane: *plane, region: None }));
        let facets = lower.facets().iter().map(|facet| {
            let region = Outline::around(facet.region())?;
            Ok(Target { plane: *facet.plane(), region: Some(region) })
        });
        let targets = everywhere.into_iter().chain(facets).collect::<Result<Vec<_>>>()?;
        survey.after(Change { done: Done::Grind(targets), zone: None }).map(Some)
    }
}
