//! The finish as a job asks for it.

mod plan;
mod shape;
mod solvable;
mod way;

use shape::Footing;

pub(super) use plan::{Plan, Way};
pub use shape::{AreaDrainInput, FacetsInput, LineInput, StripInput, TrenchInput};

use super::heights::Heights;
use super::input::SolveInput;
use crate::assumption::{FALL_STEP, MARGIN, ROUNDING};
use crate::failure::{Code, Failure, Result, check};
use crate::grade::fall::FALL;
use crate::grade::finish::{AtLeast, Finish, FinishPoint, Governing, STEP, with_margin};
use crate::quantity::{Elevation, Given, Length, Slope, Typed};
use crate::survey::Survey;
use crate::survey::outline::Outline;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The new top surface. Give one of: `least` with or without `falls_to`; `falls_to` with `fall` and a height at that edge;
/// `level`; `points`; or one of `valley`, `crown`, `drain`, `trench` and `facets`, with heights or with `least`. With `solve` the
/// heights are found: `least`, `falls_to`, `fall` and the shapes say what is demanded.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FinishDemand {
    /// Least thickness at the worst point.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least: Option<Given<Length>>,
    /// Margin on the least thickness; 3/8 in where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub margin: Option<Given<Length>>,
    /// The edge the floor falls to, which stays level.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub falls_to: Option<String>,
    /// The fall towards that edge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fall: Option<Given<Slope>>,
    /// Height of the finish at that edge, as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub edge_elevation: Option<Given<Elevation>>,
    /// Height of the finish at that edge, as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub edge_rod: Option<Given<Length>>,
    /// Height of a level finish, as an elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<Given<Elevation>>,
    /// Height of a level finish, as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level_rod: Option<Given<Length>>,
    /// Three points of the finish.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub points: Option<Vec<FinishPointInput>>,
    /// Two planes to a valley.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub valley: Option<LineInput>,
    /// Two planes from a ridge.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub crown: Option<LineInput>,
    /// Planes from a level perimeter to an area drain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub drain: Option<AreaDrainInput>,
    /// Planes to a trench drain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub trench: Option<TrenchInput>,
    /// Facets that meet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub facets: Option<FacetsInput>,
    /// Strips along edges, laid on whatever else is asked for, one after the other.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub strips: Vec<StripInput>,
    /// Heights are rounded up to whole steps of this from the first benchmark; 1/8 in where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub round: Option<Given<Length>>,
    /// The area thinner than this is told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thinner_than: Option<Given<Length>>,
    /// The finish is solved for.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub solve: Option<SolveInput>,
}

/// A point of the finish: an elevation or a rod reading from the first set-up.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FinishPointInput {
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// Its elevation.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// Its rod reading.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
}

/// A finish as the job's demand makes it.
pub(super) struct Made {
    /// The finish to be built.
    pub(super) finish: Finish,
    /// The place that fixes it and what rounding did, where least thickness decides.
    pub(super) governing: Option<Governing>,
    /// The same without margin, unrounded, where least thickness decides.
    pub(super) without_margin: Option<Finish>,
    /// The same with margin, unrounded.
    pub(super) unrounded: Option<Finish>,
}

impl FinishDemand {
    /// The margin, and whether it was taken.
    pub(super) fn margin(&self) -> (Length, bool) {
        self.margin.as_ref().map_or((MARGIN.value(), true), |given| (given.value, false))
    }

    /// What heights are rounded to, and whether it was taken.
    pub(super) fn round(&self) -> (Length, bool) {
        self.round.as_ref().map_or((ROUNDING.value(), true), |given| (given.value, false))
    }

    /// What falls are rounded to where the finish is solved for, and whether it was taken.
    pub(super) fn round_fall(&self) -> (Slope, bool) {
        let given = self.solve.as_ref().and_then(|solve| solve.round_fall.as_ref());
        given.map_or((FALL_STEP.value(), true), |given| (given.value, false))
    }

    /// The finish, where it is not solved for.
    pub(super) fn make(&self, survey: &Survey, heights: Heights) -> Result<Made> {
        self.one_way()?;
        self.nothing_idle()?;
        let footing = Footing { heights, by_least: self.least.is_some() };
        let shaped = self.shape(survey.outline(), footing)?;
        match (&self.least, shaped) {
            (Some(least), None) if self.strips.is_empty() => self.by_least(survey, heights, least.value),
            (Some(least), shaped) => {
                let finish = match shaped {
                    Some(finish) => finish,
                    None => self.sloped(survey.outline(), heights.datum)?,
                };
                self.lifted(survey, &self.with_strips(finish, survey.outline())?, least.value)
            }
            (None, shaped) => {
                let finish = match shaped {
                    Some(finish) => finish,
                    None => self.at_heights(survey.outline(), heights)?,
                };
                let finish = self.with_strips(finish, survey.outline())?;
                Ok(Made { finish, governing: None, without_margin: None, unrounded: None })
            }
        }
    }

    /// Places of the shape asked for whose height a crew sets out: the drain, the ends of its line.
    pub(super) fn places(&self) -> Vec<(String, Length, Length)> {
        let ends = |name: &str, points: &[FinishPointInput]| -> Vec<(String, Length, Length)> {
            let words = ["start", "end"].into_iter().zip(points);
            words.map(|(word, point)| (format!("{name} {word}"), point.x.value, point.y.value)).collect()
        };
        let mut places = Vec::new();
        if let Some(valley) = &self.valley {
            places.extend(ends("valley", &valley.points));
        }
        if let Some(crown) = &self.crown {
            places.extend(ends("ridge", &crown.points));
        }
        if let Some(points) = self.trench.as_ref().and_then(|trench| trench.points.as_ref()) {
            places.extend(ends("trench", points));
        }
        if let Some(drain) = &self.drain {
            let name = drain.name.clone().unwrap_or_else(|| "drain".to_owned());
            places.push((name, drain.x.value, drain.y.value));
        }
        places
    }

    /// The finish of several planes, where one is asked for.
    fn shape(&self, outline: &Outline, footing: Footing) -> Result<Option<Finish>> {
        let under = |path: &'static str| move |failure: Box<Failure>| failure.under(path);
        let finish = if let Some(valley) = &self.valley {
            let line =
                valley.parts(footing).and_then(|(line, falls)| Finish::to_valley(outline, &line, falls));
            line.map_err(|failure| on_line(failure).under("valley"))
        } else if let Some(crown) = &self.crown {
            let line = crown.parts(footing).and_then(|(line, falls)| Finish::crown(outline, &line, falls));
            line.map_err(|failure| on_line(failure).under("crown"))
        } else if let Some(drain) = &self.drain {
            drain.finish(outline, footing).map_err(under("drain"))
        } else if let Some(trench) = &self.trench {
            trench.finish(outline, footing).map_err(|failure| on_line(failure).under("trench"))
        } else if let Some(facets) = &self.facets {
            facets.finish().map_err(under("facets"))
        } else {
            return Ok(None);
        };
        finish.map(Some)
    }

    fn with_strips(&self, mut finish: Finish, outline: &Outline) -> Result<Finish> {
        for (index, strip) in self.strips.iter().enumerate() {
            let laid = strip.laid_on(&finish, outline);
            finish = laid.map_err(|failure| failure.under(&format!("strips[{index}]")))?;
        }
        Ok(finish)
    }

    /// One plane with its heights given.
    fn at_heights(&self, outline: &Outline, heights: Heights) -> Result<Finish> {
        if let Some(points) = &self.points {
            let points = points.iter().enumerate().map(|(index, point)| point.resolve(index, heights));
            return Finish::through(&points.collect::<Result<Vec<_>>>()?);
        }
        if let Some(edge) = &self.falls_to {
            let paths = ["edge_elevation", "edge_rod"];
            let elevation = heights.given(&self.edge_elevation, &self.edge_rod, paths)?;
            return Finish::to_edge(outline, edge, elevation, self.fall("fall")?).map_err(in_job);
        }
        Finish::level(heights.given(&self.level, &self.level_rod, ["level", "level_rod"])?).map_err(in_job)
    }

    /// One plane with its fall, at any height.
    fn sloped(&self, outline: &Outline, height: Elevation) -> Result<Finish> {
        match &self.falls_to {
            Some(edge) => Finish::to_edge(outline, edge, height, self.fall("fall")?).map_err(in_job),
            None => Finish::level(height),
        }
    }

    /// Any finish lifted until it leaves the least thickness.
    fn lifted(&self, survey: &Survey, finish: &Finish, least: Length) -> Result<Made> {
        let (margin, round) = (self.margin().0, check("round", self.round().0, STEP)?);
        let asked_for = with_margin(least, margin)?;
        let built = finish.raised(survey, asked_for, Some(round))?;
        Ok(Made {
            unrounded: Some(finish.raised(survey, asked_for, None)?.finish),
            without_margin: Some(finish.raised(survey, least, None)?.finish),
            finish: built.finish.clone(),
            governing: Some(Governing { finish: built.finish, at: built.at, rounded_by: built.rounded_by }),
        })
    }

    fn by_least(&self, survey: &Survey, heights: Heights, least: Length) -> Result<Made> {
        let (margin, round) = (self.margin().0, check("round", self.round().0, STEP)?);
        let asked_for = with_margin(least, margin)?;
        let fall = if self.falls_to.is_some() { self.fall("fall")? } else { Slope::from_base(0.0) };
        let asked = |least: Length, round: Option<(Length, Elevation)>| {
            let asked = AtLeast { least, edge: self.falls_to.clone(), fall, round };
            Finish::at_least(survey, &asked).map_err(in_job)
        };
        let governing = asked(asked_for, Some((round, heights.datum)))?;
        Ok(Made {
            finish: governing.finish.clone(),
            unrounded: Some(asked(asked_for, None)?.finish),
            without_margin: Some(asked(least, None)?.finish),
            governing: Some(governing),
        })
    }

    fn fall(&self, path: &str) -> Result<Slope> {
        let fall = self.fall.as_ref().ok_or_else(|| {
            Failure::new(Code::FinishUndetermined, path)
                .written("nothing")
                .allowed("a fall towards the edge")
                .remedy("give the fall, 0 % for none")
        })?;
        check(path, fall.value, FALL)
    }
}

/// The paths of the engine in the words of the job.
fn in_job(mut failure: Box<Failure>) -> Box<Failure> {
    match failure.path.as_str() {
        "edge" => "falls_to".clone_into(&mut failure.path),
        "elevation" => "edge_elevation".clone_into(&mut failure.path),
        _ => {}
    }
    failure
}

/// A line's points are named by the list they stand in: `valley[1].elevation` is some `points[1].elevation`.
fn on_line(mut failure: Box<Failure>) -> Box<Failure> {
    for list in ["valley", "ridge", "trench"] {
        if let Some(rest) =
            failure.path.strip_prefix(list).filter(|rest| rest.is_empty() || rest.starts_with('['))
        {
            failure.path = format!("points{rest}");
            break;
        }
    }
    failure
}

impl FinishPointInput {
    fn resolve(&self, index: usize, heights: Heights) -> Result<FinishPoint> {
        let elevation = heights
            .given(&self.elevation, &self.rod, ["elevation", "rod"])
            .map_err(|failure| failure.under(&format!("points[{index}]")))?;
        Ok(FinishPoint { x: self.x.value, y: self.y.value, elevation })
    }
}
