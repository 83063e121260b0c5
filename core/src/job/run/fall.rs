//! The fall of a finish against what is published and what is done.

use crate::failure::Result;
use crate::geometry::{Plane, Point};
use crate::grade::fall::GUIDANCE;
use crate::grade::finish::{Facing, Finish};
use crate::job::input::Job;
use crate::job::report::FallReport;
use crate::job::say;
use crate::quantity::{Length, Slope, Typed};
use crate::survey::Survey;

impl Job {
    pub(super) fn fall_report(&self, survey: &Survey, finish: &Finish) -> Result<FallReport> {
        let corners = survey.outline().corners().iter().map(|corner| corner.place());
        let depths = match &self.finish.falls_to {
            Some(edge) => {
                let facing = Facing::edge(survey.outline(), edge)?;
                corners.map(|place| facing.inward(place)).collect::<Vec<_>>()
            }
            None => along_the_fall(finish, corners),
        };
        let run = depths.iter().copied().fold(f64::NEG_INFINITY, f64::max)
            - depths.iter().copied().fold(f64::INFINITY, f64::min);
        let run = if finish.fall().base() > 0.0 { run } else { 0.0 };
        let drop = Length::from_base(run * finish.fall().base());
        let meets = finish.fall().base() >= GUIDANCE * (1.0 - 1.0e-9);
        Ok(FallReport {
            fall: say::fall(finish.fall()),
            drop: say::thickness(drop),
            run: say::distance(Length::from_base(run)),
            guidance: say::fall(Slope::from_base(GUIDANCE)),
            meets_guidance: meets,
            text: fall_words(finish.fall(), meets),
        })
    }
}

/// Places measured along the direction of the fall.
fn along_the_fall(finish: &Finish, corners: impl Iterator<Item = Point>) -> Vec<f64> {
    // Of facets the steepest tells.
    let steepest = finish.planes().max_by(|a, b| a.steepest().total_cmp(&b.steepest()));
    let along = |place: Point, plane: &Plane| {
        (place.x * plane.b() + place.y * plane.c()) / plane.steepest().max(f64::MIN_POSITIVE)
    };
    steepest.map_or_else(Vec::new, |plane| corners.map(|place| along(place, plane)).collect())
}

fn fall_words(fall: Slope, meets: bool) -> String {
    let said = say::fall(fall).text;
    let guidance = "1/8 in per ft, guidance for a well-finished floor, from memory: confirm locally";
    let just = (fall.base() - GUIDANCE).abs() <= GUIDANCE * 1.0e-6;
    match (meets, just) {
        (true, true) => format!("{said}, just meets {guidance}"),
        (true, false) => format!("{said}, over {guidance}"),
        (false, _) => {
            let practice =
                "floors are often given 2 in over 20 to 24 ft (common practice, no source): 0.7 to 0.8 %";
            format!("{said}, under {guidance}; {practice}; expect puddles")
        }
    }
}
