//! The finish as a record over the borders.

use super::{Finish, FinishInput};
use crate::failure::Result;
use crate::geometry::Plane;
use crate::operation::record::{self, Record};
use crate::operation::{Kind, RecordType, Value};
use crate::quantity::{Range, Typed};
use crate::{number, port};

/// The record type of the finish.
pub static FINISH: RecordType = RecordType {
    name: "finish",
    class: "Finish",
    meaning: "The new top surface: one plane, or facets that meet.",
    fields: &[
        number!(elevation: elevation in foot | meter, Range::ANY, "of one plane: its height at the origin of the axes"; optional),
        number!(rise_x: slope in inch_per_foot | percent, Range::ANY, "of one plane: rise along x"; optional),
        number!(rise_y: slope in inch_per_foot | percent, Range::ANY, "of one plane: rise along y"; optional),
        number!(fall: slope in inch_per_foot | percent, Range::NOT_NEGATIVE, "steepest fall, of facets the steepest of all"),
        port!(facet_count: Kind::Count(0, i64::MAX), "how many facets it has; 0 for one plane"),
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
        let of_plane = |number: fn(&Plane) -> f64| {
            self.plane().map_or(Value::Absent, |plane| Value::Number(number(plane)))
        };
        vec![
            of_plane(Plane::a),
            of_plane(Plane::b),
            of_plane(Plane::c),
            Value::Number(self.fall().base()),
            Value::Count(self.facets().len() as i64),
        ]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::to_value(FinishInput::from(self)).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        record::parse::<FinishInput>(json)?.build()
    }
}
