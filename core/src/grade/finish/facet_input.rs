//! Facets as a file says them.

use super::by_corners::{Corners, FacetByCorners, FinishCorner};
use super::input::{PlaneInput, PointInput};
use super::{Facet, Finish, FinishInput, shape};
use crate::failure::{Code, Failure, Result, together};
use crate::geometry::{Point, Ring};
use crate::quantity::{Elevation, Given, Length, Typed};
use crate::survey::input::CornerInput;
use schemars::{JsonSchema, Schema, SchemaGenerator, json_schema};
use serde::de::{Error, Visitor};
use serde::{Deserialize, Deserializer, Serialize};
use std::borrow::Cow;
use std::fmt;

/// A corner of facets with its height.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FacetCornerInput {
    /// Its name, by which facets call it; else they use its number in the list, from 1 on.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Distance from the left.
    pub x: Given<Length>,
    /// Distance from the front.
    pub y: Given<Length>,
    /// Height there.
    pub elevation: Given<Elevation>,
}

/// One facet: `corners` of the list with heights; or an `outline` in plan with `level`, `points` or `plane`.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct FacetInput {
    /// Its name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// What it falls to: an edge, a valley, a drain.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub falls_to: Option<String>,
    /// Its corners in order, by name or number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub corners: Option<Vec<CornerWord>>,
    /// Its corners in plan.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub outline: Option<Vec<CornerInput>>,
    /// The elevation of a level facet.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub level: Option<Given<Elevation>>,
    /// Three points of its plane.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub points: Option<Vec<PointInput>>,
    /// Its plane.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub plane: Option<PlaneInput>,
}

/// The name of a corner, or its number from 1 on.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[serde(transparent)]
pub struct CornerWord(pub String);

impl<'de> Deserialize<'de> for CornerWord {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> std::result::Result<Self, D::Error> {
        struct Word;
        impl Visitor<'_> for Word {
            type Value = CornerWord;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a string, the name of a corner or its number from 1 on")
            }
            fn visit_str<E: Error>(self, word: &str) -> std::result::Result<CornerWord, E> {
                Ok(CornerWord(word.to_owned()))
            }
            fn visit_u64<E: Error>(self, number: u64) -> std::result::Result<CornerWord, E> {
                Ok(CornerWord(number.to_string()))
            }
            fn visit_i64<E: Error>(self, number: i64) -> std::result::Result<CornerWord, E> {
                Ok(CornerWord(number.to_string()))
            }
            fn visit_f64<E: Error>(self, number: f64) -> std::result::Result<CornerWord, E> {
                Ok(CornerWord(number.to_string()))
            }
        }
        deserializer.deserialize_any(Word)
    }
}

impl JsonSchema for CornerWord {
    fn schema_name() -> Cow<'static, str> {
        Cow::Borrowed("corner_word")
    }

    fn json_schema(_: &mut SchemaGenerator) -> Schema {
        json_schema!({
            "type": ["string", "integer"],
            "description": "The name of a corner, or its number in the list from 1 on."
        })
    }
}

/// The finish of facets in a file.
pub(super) fn build(corners: &[FacetCornerInput], facets: &[FacetInput]) -> Result<Finish> {
    let corners: Vec<FinishCorner> = corners.iter().map(FinishCorner::from).collect();
    let book = Corners::new(&corners)?;
    let each = facets.iter().enumerate();
    let each = each.map(|(index, facet)| facet.build(&book, &format!("facets[{index}]")));
    Finish::faceted(each.collect::<Result<Vec<_>>>()?)
}

impl FacetInput {
    fn build(&self, book: &Corners<'_>, path: &str) -> Result<Facet> {
        match (&self.corners, &self.outline, self.has_plane()) {
            (Some(corners), None, false) => {
                let corners = corners.iter().map(|CornerWord(word)| word.clone()).collect();
                let by = FacetByCorners { name: self.name.clone(), falls_to: self.falls_to.clone(), corners };
                book.facet(&by, path)
            }
            (None, Some(outline), true) => self.in_plan(outline, path),
            _ => Err(self.neither(path)),
        }
    }

    /// The facet over its own outline.
    fn in_plan(&self, outline: &[CornerInput], path: &str) -> Result<Facet> {
        let plan: Vec<Point> =
            outline.iter().map(|corner| Point::new(corner.x.value.base(), corner.y.value.base())).collect();
        let called = |corner: usize| format!("corner {}", corner + 1);
        let region = shape::region(&plan, &format!("{path}.outline"), &called)?;
        let plane = FinishInput {
            level: self.level.clone(),
            points: self.points.clone(),
            plane: self.plane.clone(),
            ..FinishInput::default()
        };
        let plane = plane.plane().map_err(|failure| failure.under(path))?;
        Ok(Facet::new(region, plane)
            .named(self.name.as_deref().unwrap_or_default())
            .falling_to(self.falls_to.as_deref().unwrap_or_default()))
    }

    fn has_plane(&self) -> bool {
        self.level.is_some() || self.points.is_some() || self.plane.is_some()
    }

    fn neither(&self, path: &str) -> Box<Failure> {
        let given = [
            ("corners", self.corners.is_some()),
            ("outline", self.outline.is_some()),
            ("level", self.level.is_some()),
            ("points", self.points.is_some()),
            ("plane", self.plane.is_some()),
        ];
        let too_much = self.corners.is_some() && (self.outline.is_some() || self.has_plane());
        let code = if too_much { Code::FinishTwice } else { Code::FinishUndetermined };
        Failure::new(code, path)
            .written(together(&given))
            .allowed("corners of the list with heights; or an outline with level, points or plane")
            .remedy("give the facet one way")
    }
}

impl From<&FacetCornerInput> for FinishCorner {
    fn from(input: &FacetCornerInput) -> Self {
        let name = input.name.clone().filter(|name| !name.trim().is_empty());
        Self { name, x: input.x.value, y: input.y.value, elevation: input.elevation.value }
    }
}

impl From<&Facet> for FacetInput {
    /// The canonical form: the outline in plan and the plane, to the last digit.
    fn from(facet: &Facet) -> Self {
        let corner = |at: &Point| {
            let [x, y] = [at.x, at.y].map(|at| Given::computed(Length::from_base(at)));
            CornerInput { x, y }
        };
        let outer: &Ring = facet.region().outer();
        Self {
            name: facet.name().map(str::to_owned),
            falls_to: facet.falls_to().map(str::to_owned),
            outline: Some(outer.corners().iter().map(corner).collect()),
            plane: Some(PlaneInput::from(facet.plane())),
            ..Self::default()
        }
    }
}
