//! Points as a record over the borders.

use super::{Points, json};
use crate::failure::Result;
use crate::operation::record::{self, Record};
use crate::operation::{Column, Columns, Kind, Port, RecordType, TableType, Value};
use crate::quantity::Range;
use crate::{number, port};

/// A coordinate in the axes of a file: within a million kilometres.
pub const COORDINATE: Range = Range::closed(-1.0e9, 1.0e9);

/// The most points: a face names its corners by 32 bits.
pub(super) const MOST: i64 = u32::MAX as i64;

static POINT_COLUMNS: &[Port] = &[
    port!(name: Kind::Text, "its name"; optional),
    number!(x: length in foot | meter, COORDINATE, "along the first plan axis"),
    number!(y: length in foot | meter, COORDINATE, "along the second, a quarter turn to the left of it"),
    number!(elevation: elevation in foot | meter, COORDINATE, "height"),
];

/// Points as a table.
pub static POINT_TABLE: TableType =
    TableType { name: "points", meaning: "a point", columns: POINT_COLUMNS, least_rows: 1 };

/// The record type of points.
pub static POINTS: RecordType = RecordType {
    name: "points",
    class: "Points",
    meaning: "Points with heights, in the axes of where they came from: of a file, a scan or a total station.",
    fields: &[
        port!(point_count: Kind::Count(1, MOST), "how many points there are"),
        number!(least_x: length in foot | meter, COORDINATE, "least along the first plan axis"),
        number!(greatest_x: length in foot | meter, COORDINATE, "greatest along the first plan axis"),
        number!(least_y: length in foot | meter, COORDINATE, "least along the second plan axis"),
        number!(greatest_y: length in foot | meter, COORDINATE, "greatest along the second plan axis"),
        number!(lowest: elevation in foot | meter, COORDINATE, "height of the lowest"),
        number!(highest: elevation in foot | meter, COORDINATE, "height of the highest"),
        port!(points: Kind::Table(&POINT_TABLE), "the points"),
    ],
    get: record::get::<Points>,
    to_json: record::to_json::<Points>,
    from_json: record::from_json::<Points>,
    is: record::is::<Points>,
    example: r#"{"unit": "ft", "x": [1, 11, 11, 1, 5], "y": [1, 1, 9, 9, 4],
        "elevation": [99.20, 99.15, 99.25, 99.22, 99.16], "name": ["A", "B", "C", "D", null]}"#,
};

impl Record for Points {
    const TYPE: &'static RecordType = &POINTS;

    fn fields(&self) -> Vec<Value> {
        let mut fields = vec![Value::Count(self.len() as i64)];
        for axis in [&self.x, &self.y, &self.z] {
            let (least, greatest) = super::ends(axis);
            fields.extend([Value::Number(least), Value::Number(greatest)]);
        }
        fields.push(Value::Table(self.table()));
        fields
    }

    fn to_json(&self) -> serde_json::Value {
        json::write(self)
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        json::read(json)
    }
}

impl Points {
    /// The points as a table.
    pub(super) fn table(&self) -> Columns {
        let names = if self.names.is_empty() { Column::Absent } else { Column::Texts(self.names.clone()) };
        let axes = [&self.x, &self.y, &self.z].map(|axis| Column::Numbers(axis.clone()));
        Columns { rows: self.len(), columns: [names].into_iter().chain(axes).collect() }
    }
}
