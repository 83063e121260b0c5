//! The finish of a job, the heights along its edges, and what rounding and margin cost.

use crate::failure::Result;
use crate::grade::finish::{Facet, Finish};
use crate::grade::thickness::Thickness;
use crate::job::finish::Made;
use crate::job::heights::{Heights, RodWords};
use crate::job::input::Job;
use crate::job::report::{
    EdgeHeights, FacetReport, FallReport, FinishReport, Measure, PlaceHeight, RoundingReport,
};
use crate::job::say;
use crate::job::solve::Solution;
use crate::quantity::{Length, Typed, Volume};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;
use crate::survey::outline::Corner;

impl Job {
    pub(super) fn finish_report(
        &self,
        survey: &Survey,
        (made, solution): (&Made, Option<&Solution>),
        heights: Heights,
        fall: FallReport,
    ) -> FinishReport {
        let by_least = self.finish.least.as_ref();
        FinishReport {
            least: by_least.map(|least| say::thickness(least.value)),
            margin: by_least.map(|_| say::thickness(self.finish.margin().0)),
            fixed_at: made
                .governing
                .as_ref()
                .map(|governing| &governing.at)
                .or_else(|| solution.and_then(Solution::fixed_at))
                .map(say::place),
            falls_to: self.finish.falls_to.clone(),
            fall,
            facets: facets(&made.finish),
            edges: edges(survey, &made.finish, heights, RodWords::coarse),
            places: self.places(&made.finish, heights),
        }
    }

    pub(super) fn rounding_report(
        &self,
        survey: &Survey,
        made: &Made,
        heights: Heights,
        net: Volume,
    ) -> Result<Option<RoundingReport>> {
        let (Some(governing), Some(unrounded), Some(bare)) =
            (&made.governing, &made.unrounded, &made.without_margin)
        else {
            return Ok(None);
        };
        let with_margin = Thickness::of(survey, unrounded, None)?.net;
        let without = Thickness::of(survey, bare, None)?.net;
        Ok(Some(RoundingReport {
            step: say::thickness(self.finish.round().0),
            raised: say::fine_thickness(governing.rounded_by),
            rounding: say::body(net - with_margin),
            margin: say::body(with_margin - without),
            unrounded: say::body(with_margin),
            without_margin: say::body(without),
            edges: edges(survey, unrounded, heights, RodWords::fine),
        }))
    }
}

impl Job {
    /// Heights that a crew sets out beside those along the edges.
    fn places(&self, finish: &Finish, heights: Heights) -> Vec<PlaceHeight> {
        let one = |(name, x, y): (String, Length, Length)| {
            let elevation = finish.height_at(x, y)?;
            let at = say::place(&SlabPlace { x, y, elevation, shot: None });
            Some(PlaceHeight {
                name,
                at,
                rod: heights.rod(elevation, RodWords::coarse),
                elevation: say::height(elevation),
            })
        };
        self.finish.places().into_iter().filter_map(one).collect()
    }
}

/// The planes of a finish that has several.
fn facets(finish: &Finish) -> Vec<FacetReport> {
    let one = |(index, facet): (usize, &Facet)| FacetReport {
        name: finish.facet_name(index),
        falls_to: facet.falls_to().map(str::to_owned),
        fall: say::fall(facet.fall()),
    };
    finish.facets().iter().enumerate().map(one).collect()
}

/// Heights of a finish along every edge, as rods from the first set-up where there is one.
pub(super) fn edges(
    survey: &Survey,
    finish: &Finish,
    heights: Heights,
    rod: fn(RodWords, Length) -> Measure,
) -> Vec<EdgeHeights> {
    let outline = survey.outline();
    let one = |name: &str| {
        let runs = outline.edge(name).ok()?;
        let (from, to) = (runs.first()?.from(), runs.last()?.to());
        let height = |corner: Corner| finish.height_at(corner.x, corner.y);
        // The whole ring of a hole has neither start nor end.
        if from.place() == to.place() {
            return None;
        }
        let (low, high) = (height(from)?, height(to)?);
        let level = runs.iter().all(|run| match (height(run.from()), height(run.to())) {
            (Some(from), Some(to)) => (from - to).base().abs() < 1.0e-6,
            _ => false,
        });
        Some(EdgeHeights {
            edge: name.to_owned(),
            level,
            rod_from: heights.rod(low, rod),
            rod_to: heights.rod(high, rod),
            elevation_from: say::height(low),
            elevation_to: say::height(high),
        })
    };
    outline.edge_names().into_iter().filter_map(one).collect()
}
