//! The finish as a file says it.

use super::facet_input::{self, FacetCornerInput, FacetInput};
use super::{Finish, FinishPoint};
use crate::failure::{Code, Failure, Result, together};
use crate::geometry::{Plane, Point};
use crate::quantity::{Elevation, Given, Length, Slope, Typed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A finish in a file: level, three points, its plane, or facets.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FinishInput {
    /// The elevation of a level finish.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<Given<Elevation>>,
    /// Three points of the finish.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub points: Option<Vec<PointInput>>,
    /// The plane itself.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plane: Option<PlaneInput>,
    /// Corners with heights, which facets share.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub corners: Vec<FacetCornerInput>,
    /// Facets that meet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub facets: Option<Vec<FacetInput>>,
}

/// A point of the finish.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PointInput {
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// Height there.
    pub elevation: Given<Elevation>,
}

/// A plane by one point and its rise along the axes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlaneInput {
    /// Distance of the point from the left.
    pub x: Given<Length>,
    /// Its distance from the front.
    pub y: Given<Length>,
    /// Height there.
    pub elevation: Given<Elevation>,
    /// Rise per run along x.
    pub rise_x: Given<Slope>,
    /// Rise per run along y.
    pub rise_y: Given<Slope>,
}

impl From<&PointInput> for FinishPoint {
    fn from(input: &PointInput) -> Self {
        Self { x: input.x.value, y: input.y.value, elevation: input.elevation.value }
    }
}

impl FinishInput {
    /// The finish.
    ///
    /// # Errors
    /// None or more than one of the ways, or what each refuses.
    pub fn build(&self) -> Result<Finish> {
        match (&self.facets, self.has_plane()) {
            (Some(facets), false) => facet_input::build(&self.corners, facets),
            (None, _) if !self.corners.is_empty() => Err(Failure::new(Code::KeyMissing, "facets")
                .written("corners without facets")
                .allowed("facets over the corners")
                .remedy("say which corners each facet has, in order round it")),
            (None, _) => self.plane().map(Finish::plane_of),
            (Some(_), true) => Err(self.twice()),
        }
    }

    /// The one plane.
    pub(super) fn plane(&self) -> Result<Plane> {
        let one = match (&self.level, &self.points, &self.plane) {
            (Some(level), None, None) => Finish::level(level.value),
            (None, Some(points), None) => {
                Finish::through(&points.iter().map(FinishPoint::from).collect::<Vec<_>>())
            }
            (None, None, Some(plane)) => Finish::of(plane.plane()),
            (None, None, None) => Err(Failure::new(Code::FinishUndetermined, "level")
                .written("nothing")
                .allowed(WAYS)
                .remedy("say where the finish lies")),
            _ => Err(self.twice()),
        }?;
        one.plane().copied().ok_or_else(|| self.twice())
    }

    fn has_plane(&self) -> bool {
        self.level.is_some() || self.points.is_some() || self.plane.is_some()
    }

    fn twice(&self) -> Box<Failure> {
        Failure::new(Code::FinishTwice, "level")
            .written(together(&[
                ("level", self.level.is_some()),
                ("points", self.points.is_some()),
                ("plane", self.plane.is_some()),
                ("facets", self.facets.is_some()),
            ]))
            .allowed(format!("one of {WAYS}"))
            .remedy("keep one of them")
    }
}

const WAYS: &str = "level, points, plane and facets";

impl PlaneInput {
    fn plane(&self) -> Plane {
        Plane::about(
            Point::new(self.x.value.base(), self.y.value.base()),
            self.elevation.value.base(),
            self.rise_x.value.base(),
            self.rise_y.value.base(),
        )
    }
}

impl From<&Plane> for PlaneInput {
    fn from(plane: &Plane) -> Self {
        // The plane is held about a point of its own; that point keeps every digit.
        let at = plane.origin();
        let [x, y] = [at.x, at.y].map(|at| Given::computed(Length::from_base(at)));
        let [rise_x, rise_y] = [plane.b(), plane.c()].map(|rise| Given::computed(Slope::from_base(rise)));
        Self { x, y, elevation: Given::computed(Elevation::from_base(plane.height_at(at))), rise_x, rise_y }
    }
}

impl From<&Finish> for FinishInput {
    /// The canonical form: the plane, or each facet's outline and plane, to the last digit.
    fn from(finish: &Finish) -> Self {
        match finish.plane() {
            Some(plane) => Self { plane: Some(PlaneInput::from(plane)), ..Self::default() },
            None => {
                let facets = finish.facets().iter().map(FacetInput::from).collect();
                Self { facets: Some(facets), ..Self::default() }
            }
        }
    }
}
