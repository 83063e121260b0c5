//! The finish as a record over the borders.

use super::{Finish, FinishPoint};
use crate::failure::{Code, Failure, Result, together};
use crate::geometry::{Plane, Point};
use crate::number;
use crate::operation::RecordType;
use crate::operation::Value;
use crate::operation::record::{self, Record};
use crate::quantity::{Elevation, Given, Length, Range, Slope, Typed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A finish in a file: level, three points, or its plane.
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
        match (&self.level, &self.points, &self.plane) {
            (Some(level), None, None) => Finish::level(level.value),
            (None, Some(points), None) => {
                Finish::through(&points.iter().map(FinishPoint::from).collect::<Vec<_>>())
            }
            (None, None, Some(plane)) => Finish::of(Plane::about(
                Point::new(plane.x.value.base(), plane.y.value.base()),
                plane.elevation.value.base(),
                plane.rise_x.value.base(),
                plane.rise_y.value.base(),
            )),
            (None, None, None) => Err(Failure::new(Code::FinishUndetermined, "level")
                .written("nothing")
                .allowed("level, points or plane")
                .remedy("say where the finish lies")),
            _ => Err(Failure::new(Code::FinishTwice, "level")
                .written(together(&[
                    ("level", self.level.is_some()),
                    ("points", self.points.is_some()),
                    ("plane", self.plane.is_some()),
                ]))
                .allowed("one of level, points and plane")
                .remedy("keep one of them")),
        }
    }
}

/// The record type of the finish.
pub static FINISH: RecordType = RecordType {
    name: "finish",
    class: "Finish",
    meaning: "The new top surface, one plane.",
    fields: &[
        number!(elevation: elevation in foot | meter, Range::ANY, "its height at the origin of the axes"),
        number!(rise_x: slope in inch_per_foot | percent, Range::ANY, "rise along x"),
        number!(rise_y: slope in inch_per_foot | percent, Range::ANY, "rise along y"),
        number!(fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "steepest fall"),
    ],
    get: record::get::<Finish>,
    to_json: record::to_json::<Finish>,
    from_json: record::from_json::<Finish>,
    is: record::is::<Finish>,
    example: r#"{"level": "99.5 ft"}"#,
};

impl Record for Finish {
    const TYPE: &'static RecordType = &FINISH;

    fn fields(&self) -> Vec<Value> {
        let [x, y] = self.rise();
        vec![
            Value::Number(self.plane().a()),
            Value::Number(x.base()),
            Value::Number(y.base()),
            Value::Number(self.fall().base()),
        ]
    }

    fn to_json(&self) -> serde_json::Value {
        let [rise_x, rise_y] = self.rise().map(Given::computed);
        // The plane is held about a point of its own; that point keeps every digit.
        let at = self.plane().origin();
        let (x, y) = (Length::from_base(at.x), Length::from_base(at.y));
        let elevation = Given::computed(self.height_at(x, y));
        let plane = PlaneInput { x: Given::computed(x), y: Given::computed(y), elevation, rise_x, rise_y };
        serde_json::to_value(FinishInput { plane: Some(plane), ..FinishInput::default() }).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        record::parse::<FinishInput>(json)?.build()
    }
}
