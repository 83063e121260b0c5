//! Finishes of several planes as a job asks for them: a valley, a crown, a drain, a trench, facets, and strips along edges.

use super::FinishPointInput;
use crate::failure::{Code, Failure, Result, together};
use crate::grade::finish::patterns::{
    BreakLine, DrainSet, EdgeTrench, LineTrench, Reach, Strip, ToDrain, Toward,
};
use crate::grade::finish::{FacetCornerInput, FacetInput, Finish, FinishInput, FinishPoint};
use crate::job::heights::Heights;
use crate::quantity::{Elevation, Given, Length, Slope, Typed};
use crate::survey::outline::Outline;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Two planes that meet in a line.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct LineInput {
    /// Two points of the line. With `least` only the difference of their heights counts, and they may have none: the line is
    /// level then.
    pub points: Vec<FinishPointInput>,
    /// The fall square to the line.
    pub fall: Given<Slope>,
    /// The fall on the right, looking from the first point to the second, where it is another.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub right_fall: Option<Given<Slope>>,
}

/// Planes that fall from a level perimeter to a drain.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AreaDrainInput {
    /// Its name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Its middle, from the left.
    pub x: Given<Length>,
    /// Its middle, from the front.
    pub y: Given<Length>,
    /// Height of the perimeter, where `least` does not decide it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// The same as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
    /// The fall to it.
    pub fall: Given<Slope>,
    /// The way the fall is meant along; `longest` where it is not given: the fall is then met everywhere.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub along: Option<Reach>,
    /// Size of its level rim along x; none for a point.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rim_x: Option<Given<Length>>,
    /// Its size along y, where it is not square.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rim_y: Option<Given<Length>>,
}

/// Planes that fall to a trench drain: across the work by two `points`, or along an `edge`.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TrenchInput {
    /// Two points of its middle.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub points: Option<Vec<FinishPointInput>>,
    /// The edge it lies along.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub edge: Option<String>,
    /// Along an edge: height of its rims, where `least` does not decide it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub elevation: Option<Given<Elevation>>,
    /// The same as a rod reading from the first set-up.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rod: Option<Given<Length>>,
    /// Width from rim to rim; a slot where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width: Option<Given<Length>>,
    /// The fall to it.
    pub fall: Given<Slope>,
    /// The fall on the right, where it is another.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub right_fall: Option<Given<Slope>>,
}

/// Facets that meet, by the corners they share.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FacetsInput {
    /// Corners with their heights. With `least` only the differences count.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub corners: Vec<FacetCornerInput>,
    /// The facets.
    pub list: Vec<FacetInput>,
}

/// A strip along an edge with a fall of its own: an apron, a curb.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct StripInput {
    /// The edge.
    pub edge: String,
    /// Its width.
    pub width: Given<Length>,
    /// Its fall, square to the edge.
    pub fall: Given<Slope>,
    /// What it falls to: the edge or the floor.
    pub toward: Toward,
}

/// Where the heights of a shape come from.
#[derive(Clone, Copy, Debug)]
pub(super) struct Footing {
    pub(super) heights: Heights,
    /// Least thickness will decide: heights may be left out.
    pub(super) by_least: bool,
}

impl Footing {
    fn height(
        self,
        elevation: &Option<Given<Elevation>>,
        rod: &Option<Given<Length>>,
        paths: [&str; 2],
    ) -> Result<Elevation> {
        if self.by_least && elevation.is_none() && rod.is_none() {
            return Ok(self.heights.datum);
        }
        self.heights.given(elevation, rod, paths)
    }

    /// A height that least thickness decides is not given as well.
    fn decided(
        self,
        elevation: &Option<Given<Elevation>>,
        rod: &Option<Given<Length>>,
        paths: [&str; 2],
    ) -> Result<Elevation> {
        let written =
            elevation.as_ref().map(|given| &given.written).or(rod.as_ref().map(|given| &given.written));
        match (self.by_least, written) {
            (true, Some(written)) => Err(Failure::new(Code::FinishTwice, paths[usize::from(rod.is_some())])
                .written(format!("{written}, and a least thickness"))
                .allowed("one of the two: the least thickness decides the height")
                .remedy("remove the height, or the least thickness")),
            _ => self.height(elevation, rod, paths),
        }
    }

    fn points(self, points: &[FinishPointInput]) -> Result<Vec<FinishPoint>> {
        let one = |(index, point): (usize, &FinishPointInput)| {
            let elevation = self
                .height(&point.elevation, &point.rod, ["elevation", "rod"])
                .map_err(|failure| failure.under(&format!("points[{index}]")))?;
            Ok(FinishPoint { x: point.x.value, y: point.y.value, elevation })
        };
        points.iter().enumerate().map(one).collect()
    }
}

impl LineInput {
    /// The line and the falls on both sides.
    pub(super) fn parts(&self, footing: Footing) -> Result<(BreakLine, [Slope; 2])> {
        let line = BreakLine::of(&footing.points(&self.points)?, "points")?;
        Ok((line, [self.fall.value, self.right_fall.as_ref().unwrap_or(&self.fall).value]))
    }
}

impl AreaDrainInput {
    pub(super) fn finish(&self, outline: &Outline, footing: Footing) -> Result<Finish> {
        let value = |given: &Option<Given<Length>>| given.as_ref().map(|given| given.value);
        let (rim_x, rim_y) = (value(&self.rim_x), value(&self.rim_y));
        let asked = ToDrain {
            x: self.x.value,
            y: self.y.value,
            elevation: footing.decided(&self.elevation, &self.rod, ["elevation", "rod"])?,
            set: DrainSet::By(self.fall.value, self.along.unwrap_or(Reach::Longest)),
            rim: rim_x.or(rim_y).map(|one| [rim_x.unwrap_or(one), rim_y.unwrap_or(one)]),
        };
        Finish::to_drain(outline, &asked)
    }
}

impl TrenchInput {
    pub(super) fn finish(&self, outline: &Outline, footing: Footing) -> Result<Finish> {
        let width = self.width.as_ref().map_or_else(|| Length::from_base(0.0), |given| given.value);
        let fall = self.fall.value;
        match (&self.points, &self.edge) {
            (Some(points), None) => {
                self.nothing_idle("elevation", self.elevation.is_some(), "along an edge only")?;
                self.nothing_idle("rod", self.rod.is_some(), "along an edge only")?;
                let middle = BreakLine::of(&footing.points(points)?, "points")?;
                let falls = [fall, self.right_fall.as_ref().unwrap_or(&self.fall).value];
                Finish::to_trench(outline, &LineTrench { middle, width, falls })
            }
            (None, Some(edge)) => {
                self.nothing_idle("right_fall", self.right_fall.is_some(), "across the work only")?;
                let elevation = footing.decided(&self.elevation, &self.rod, ["elevation", "rod"])?;
                let trench =
                    EdgeTrench { edge: edge.clone(), elevation, elevation_end: elevation, width, fall };
                Finish::to_edge_trench(outline, &trench)
            }
            (points, edge) => Err(Failure::new(Code::FinishUndetermined, "points")
                .written(together(&[("points", points.is_some()), ("edge", edge.is_some())]))
                .allowed("points or edge")
                .remedy("say where the trench lies, one way")),
        }
    }

    fn nothing_idle(&self, path: &str, given: bool, allowed: &str) -> Result<()> {
        match given {
            false => Ok(()),
            true => Err(Failure::new(Code::Contradiction, path)
                .written(format!(
                    "{path} of a trench by {}",
                    if self.edge.is_some() { "its edge" } else { "points" }
                ))
                .allowed(allowed)
                .remedy("remove it")),
        }
    }
}

impl FacetsInput {
    pub(super) fn finish(&self) -> Result<Finish> {
        let input = FinishInput {
            corners: self.corners.clone(),
            facets: Some(self.list.clone()),
            ..FinishInput::default()
        };
        input.build().map_err(|mut failure| {
            if let Some(rest) = failure.path.strip_prefix("facets") {
                failure.path = format!("list{rest}");
            }
            failure
        })
    }
}

impl StripInput {
    pub(super) fn laid_on(&self, finish: &Finish, outline: &Outline) -> Result<Finish> {
        let strip = Strip {
            edge: self.edge.clone(),
            width: self.width.value,
            fall: self.fall.value,
            toward: self.toward,
        };
        finish.with_strip(outline, &strip)
    }
}
