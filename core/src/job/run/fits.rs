//! Doors, sills and other heights that the finish must keep to.

use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::job::heights::Heights;
use crate::job::input::{Job, LimitInput};
use crate::job::report::FitReport;
use crate::job::say;
use crate::quantity::{Elevation, Length, Typed, feet_and_inches};
use crate::survey::Survey;
use crate::survey::surface::Rules;

impl Job {
    pub(super) fn fits(&self, survey: &Survey, finish: &Finish, heights: Heights) -> Result<Vec<FitReport>> {
        let fits = self.limits.iter().enumerate();
        fits.map(|(index, limit)| {
            fit(limit, survey, finish, heights).map_err(|failure| failure.under(&format!("limits[{index}]")))
        })
        .collect()
    }
}

fn fit(limit: &LimitInput, survey: &Survey, finish: &Finish, heights: Heights) -> Result<FitReport> {
    let most = heights.given(&limit.at_most, &limit.at_most_rod, ["at_most", "at_most_rod"])?;
    near_the_work(limit, survey)?;
    if limit.at.is_empty() {
        return Err(Failure::new(Code::EmptyList, "at")
            .written("no places")
            .allowed("at least one place")
            .remedy("say where it is"));
    }
    let mut highest = f64::NEG_INFINITY;
    for (index, place) in limit.at.iter().enumerate() {
        let height = finish.height_at(place.x.value, place.y.value).ok_or_else(|| {
            Failure::new(Code::OutOfRange, format!("at[{index}]"))
                .written(format!("{}, {}", place.x.written, place.y.written))
                .allowed("a place on a facet")
                .remedy("move the place onto the floor, or let the facet reach to it")
        })?;
        highest = highest.max(height.base());
    }
    let below = most - Elevation::from_base(highest);
    Ok(FitReport {
        name: limit.name.clone(),
        called: limit.called.clone().unwrap_or_else(|| "limit".to_owned()),
        below: say::fine_thickness(below),
        kept: below.base() >= -1.0e-9,
    })
}

/// Refuses a limit farther from the work than the old slab is extended to: the finish is not there.
fn near_the_work(limit: &LimitInput, survey: &Survey) -> Result<()> {
    let farthest = Rules::DEFAULT.beyond_farthest;
    for (index, place) in limit.at.iter().enumerate() {
        let at = Point::new(place.x.value.base(), place.y.value.base());
        let outside = survey.outline().region().distance_outside(at);
        if outside.is_nan() || outside > farthest {
            let say = |metres: f64| feet_and_inches(Length::from_base(metres), 8);
            return Err(Failure::new(Code::OutOfRange, format!("at[{index}]"))
                .written(format!("{}, {}", place.x.written, place.y.written))
                .allowed(format!("inside the outline, or up to {} outside", say(farthest)))
                .remedy("check the place: x from the left, y from the front"));
        }
    }
    Ok(())
}
