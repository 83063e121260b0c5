//! The thickness under the finish of a job.

use crate::grade::thickness::{At, Thickness};
use crate::job::input::Job;
use crate::job::report::ThicknessReport;
use crate::job::say;
use crate::quantity::{Elevation, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SlabPlace;

impl Job {
    pub(super) fn thickness_report(&self, survey: &Survey, thickness: &Thickness) -> ThicknessReport {
        let least = thickness.least_measured.as_ref().unwrap_or(&thickness.least);
        ThicknessReport {
            least: say::at_least(least.thickness),
            least_at: say::place(&slab_place(survey, least)),
            least_with_edges: say::at_least(thickness.least.thickness),
            greatest: say::at_most(thickness.greatest.thickness),
            greatest_at: say::place(&slab_place(survey, &thickness.greatest)),
            mean: say::thickness(thickness.mean),
            net: say::body(thickness.net),
            fill: say::body(thickness.fill),
            high: say::body(thickness.high),
            thinner_than: self.finish.thinner_than.as_ref().map(|given| say::thickness(given.value)),
            thinner: thickness.thinner.map(say::surface),
        }
    }
}

pub(super) fn slab_place(survey: &Survey, at: &At) -> SlabPlace {
    SlabPlace {
        x: at.x,
        y: at.y,
        elevation: Elevation::from_base(0.0),
        shot: at.shot.map(|shot| survey.shots().name(shot)),
    }
}
