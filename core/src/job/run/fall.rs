//! The fall of a finish against what is published and what is done.

use crate::basis::BasisId;
use crate::failure::Result;
use crate::geometry::{Plane, Point};
use crate::grade::finish::{Facing, Finish};
use crate::job::input::Job;
use crate::job::report::FallReport;
use crate::job::say;
use crate::quantity::{Length, Slope, Typed};
use crate::survey::Survey;

/// A rim flatter than this is level: it holds a drain, water runs over it.
const LEVEL: f64 = 1.0e-9;

impl Job {
    pub(super) fn fall_report(&self, survey: &Survey, finish: &Finish) -> Result<FallReport> {
        let (fall, steepest) = falls(finish);
        let run = match finish.plane() {
            Some(plane) => Some(self.run(survey, plane)?),
            None => None,
        };
        let drop = match run {
            Some(run) => run * fall.base(),
            None => relief(survey, finish),
        };
        let (least, basis) = self.least_fall();
        let meets = fall.base() >= least.base() * (1.0 - 1.0e-9);
        Ok(FallReport {
            fall: say::fall(fall),
            steepest: (steepest.base() > fall.base() * (1.0 + 1.0e-6)).then(|| say::fall(steepest)),
            drop: say::thickness(Length::from_base(drop)),
            run: run.map(|run| say::distance(Length::from_base(run))),
            guidance: say::fall(least),
            meets_guidance: meets,
            text: fall_words(fall, least, basis, meets),
        })
    }

    /// How far the floor goes in the direction of its fall.
    fn run(&self, survey: &Survey, plane: &Plane) -> Result<f64> {
        if plane.steepest() <= 0.0 {
            return Ok(0.0);
        }
        let corners = survey.outline().corners().iter().map(|corner| corner.place());
        let facing =
            self.finish.falls_to.as_ref().map(|edge| Facing::edge(survey.outline(), edge)).transpose()?;
        // A finish that is solved for may fall askew to its edge.
        let square = facing.filter(|facing| {
            (plane.b() * facing.along[0] + plane.c() * facing.along[1]).abs()
                <= LEVEL.max(1e-6 * plane.steepest())
        });
        let depths: Vec<f64> = match square {
            Some(facing) => corners.map(|place| facing.inward(place)).collect(),
            None => {
                corners.map(|place| (place.x * plane.b() + place.y * plane.c()) / plane.steepest()).collect()
            }
        };
        let (low, high) = ends(depths.into_iter());
        Ok(high - low)
    }
}

/// The least and the steepest fall of the planes of a finish, level ones left out unless all are.
fn falls(finish: &Finish) -> (Slope, Slope) {
    let falls = finish.planes().map(Plane::steepest).filter(|&fall| fall > LEVEL);
    let (least, steepest) = ends(falls);
    if least > steepest {
        return (Slope::from_base(0.0), Slope::from_base(0.0));
    }
    (Slope::from_base(least), Slope::from_base(steepest))
}

/// Highest less lowest of facets, over the corners of the work and those of the facets inside it.
fn relief(survey: &Survey, finish: &Finish) -> f64 {
    let region = survey.outline().region();
    let facets = finish.facets().iter().flat_map(|facet| facet.region().outer().corners());
    let corners = region.outer().corners().iter().chain(facets.filter(|&&place| region.contains(place)));
    let height = |place: &Point| {
        let elevation = finish.height_at(Length::from_base(place.x), Length::from_base(place.y));
        elevation.map(Typed::base)
    };
    let (low, high) = ends(corners.filter_map(height));
    (high - low).max(0.0)
}

/// The least and the greatest.
fn ends(numbers: impl Iterator<Item = f64>) -> (f64, f64) {
    numbers
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), number| (low.min(number), high.max(number)))
}

/// What the least fall is, in words.
fn guidance(least: Slope, basis: BasisId) -> String {
    let said = say::fall(least).text;
    let said = said.split(',').next().unwrap_or_default();
    match basis {
        BasisId::FallFinishedFloor => {
            format!("{said}, guidance for a well-finished floor, from memory: confirm locally")
        }
        BasisId::FallBroomed => format!("{said}, guidance for a broomed floor, from memory: confirm locally"),
        BasisId::FallWashed => {
            format!("{said}, common practice where a floor is washed, no source: confirm locally")
        }
        BasisId::FallOutdoors => "2 %, the rule for hard ground beside a building".to_owned(),
        _ => format!("{said}, as asked"),
    }
}

fn fall_words(fall: Slope, least: Slope, basis: BasisId, meets: bool) -> String {
    let said = say::fall(fall).text;
    let guidance = guidance(least, basis);
    let just = (fall.base() - least.base()).abs() <= least.base() * 1.0e-6;
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
