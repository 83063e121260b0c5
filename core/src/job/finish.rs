//! The finish as a job asks for it.

use super::heights::Heights;
use crate::assumption::{MARGIN, ROUNDING};
use crate::failure::{Code, Failure, Result, check, together};
use crate::grade::fall::FALL;
use crate::grade::finish::{AtLeast, Finish, FinishPoint, Governing, STEP, with_margin};
use crate::quantity::{Elevation, Given, Length, Slope, Typed};
use crate::survey::Survey;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The new top surface. Give one of: `least` with or without `falls_to`; `falls_to` with `fall` and a height at that edge;
/// `level`; `points`.
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
    /// Heights are rounded up to whole steps of this from the first benchmark; 1/8 in where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub round: Option<Given<Length>>,
    /// The area thinner than this is told.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thinner_than: Option<Given<Length>>,
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

    /// The finish.
    pub(super) fn make(&self, survey: &Survey, heights: Heights) -> Result<Made> {
        self.one_way()?;
        self.nothing_idle()?;
        if let Some(least) = &self.least {
            return self.by_least(survey, heights, least.value);
        }
        let finish = if let Some(points) = &self.points {
            let points = points.iter().enumerate().map(|(index, point)| point.resolve(index, heights));
            Finish::through(&points.collect::<Result<Vec<_>>>()?)?
        } else if let Some(edge) = &self.falls_to {
            let elevation =
                heights.given(&self.edge_elevation, &self.edge_rod, ["edge_elevation", "edge_rod"])?;
            Finish::to_edge(survey.outline(), edge, elevation, self.fall("fall")?).map_err(in_job)?
        } else {
            Finish::level(heights.given(&self.level, &self.level_rod, ["level", "level_rod"])?)
                .map_err(in_job)?
        };
        Ok(Made { finish, governing: None, without_margin: None, unrounded: None })
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

    /// Nothing given that the way of saying where the finish lies has no use for.
    fn nothing_idle(&self) -> Result<()> {
        let idle = |path: &str, written: &str| {
            Err(Failure::new(Code::Contradiction, path)
                .written(written)
                .allowed("with `least` only: other heights stay as given")
                .remedy("remove it, or give the least thickness"))
        };
        match (&self.least, &self.margin, &self.round, &self.fall) {
            (None, Some(margin), ..) => idle("margin", &margin.written),
            (None, _, Some(round), _) => idle("round", &round.written),
            (Some(_), .., Some(fall)) if self.falls_to.is_none() => {
                Err(Failure::new(Code::FinishUndetermined, "falls_to")
                    .written(format!("a fall of {} to no edge", fall.written))
                    .allowed("the edge")
                    .remedy("name the edge, or remove the fall for a level finish"))
            }
            _ => Ok(()),
        }
    }

    /// Exactly one way of saying where the finish lies.
    fn one_way(&self) -> Result<()> {
        let edge_height = self.edge_elevation.is_some() || self.edge_rod.is_some();
        let level = self.level.is_some() || self.level_rod.is_some();
        let ways = [self.least.is_some(), edge_height, level, self.points.is_some()];
        let given = || {
            together(&[
                ("least", self.least.is_some()),
                ("edge_elevation", self.edge_elevation.is_some()),
                ("edge_rod", self.edge_rod.is_some()),
                ("level", self.level.is_some()),
                ("level_rod", self.level_rod.is_some()),
                ("points", self.points.is_some()),
                ("falls_to", self.falls_to.is_some()),
                ("fall", self.fall.is_some()),
            ])
        };
        let allowed = "one of: least; an edge height with falls_to and fall; level; points";
        match ways.iter().filter(|&&way| way).count() {
            0 => Err(Failure::new(Code::FinishUndetermined, "")
                .written(given())
                .allowed(allowed)
                .remedy("say where the finish lies: least thickness is the usual way")),
            1 if edge_height && self.falls_to.is_none() => {
                Err(Failure::new(Code::FinishUndetermined, "falls_to")
                    .written(given())
                    .allowed("the edge")
                    .remedy("name the edge"))
            }
            1 if (level || self.points.is_some()) && (self.falls_to.is_some() || self.fall.is_some()) => {
                Err(Failure::new(Code::FinishTwice, "falls_to")
                    .written(given())
                    .allowed(allowed)
                    .remedy("keep one of the ways"))
            }
            1 => Ok(()),
            _ => Err(Failure::new(Code::FinishTwice, "")
                .written(given())
                .allowed(allowed)
                .remedy("keep one of the ways")),
        }
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

impl FinishPointInput {
    fn resolve(&self, index: usize, heights: Heights) -> Result<FinishPoint> {
        let elevation = heights
            .given(&self.elevation, &self.rod, ["elevation", "rod"])
            .map_err(|failure| failure.under(&format!("points[{index}]")))?;
        Ok(FinishPoint { x: self.x.value, y: self.y.value, elevation })
    }
}
