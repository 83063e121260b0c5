//! The rows of the outline.

use super::PLACE;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::record::{self, Record};
use crate::operation::{
    Answer, Args, Call, Choice, Column, Columns, Kind, Operation, RecordType, TableType, Value,
};
use crate::quantity::{Given, Length, Range, Typed};
use crate::survey::input::{BuiltOutline, CornerInput, OutlineInput, SideInput};
use crate::survey::outline::{Turn, WALL};
use crate::{number, port};

/// Corners in order.
static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner of the plan edge",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        port!(edge: Kind::Text, "name of the edge to the next corner"; optional),
    ],
    least_rows: 3,
};

/// Walls in order.
static SIDES: TableType = TableType {
    name: "sides",
    meaning: "a wall",
    columns: &[
        number!(length: length in foot | meter, WALL, "its length"),
        port!(name: Kind::Text, "its name"; optional),
        port!(turn: Kind::Choice(Turn::WORDS), "the square turn at its end, left where not given"; optional),
    ],
    least_rows: 4,
};

/// The record type of the outline.
pub static OUTLINE: RecordType = RecordType {
    name: "outline",
    class: "Outline",
    meaning: "The plan edge of the work, with holes and named edges.",
    fields: &[
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "area of the work"),
        number!(perimeter: length in foot | meter, Range::POSITIVE, "length of all its edges"),
        port!(squareness: Kind::Text, "how well the measurements agree"; optional),
        port!(corners: Kind::Table(&CORNERS), "the corners, with the edge behind each"),
    ],
    get: record::get::<BuiltOutline>,
    to_json: record::to_json::<BuiltOutline>,
    from_json: record::from_json::<BuiltOutline>,
    is: record::is::<BuiltOutline>,
    example: r#"{"sides": [
        {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"},
        {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}], "diagonal": "37' 8 7/8\""}"#,
};

impl Record for BuiltOutline {
    const TYPE: &'static RecordType = &OUTLINE;

    fn fields(&self) -> Vec<Value> {
        let region = self.outline.region();
        vec![
            Value::Number(region.area()),
            Value::Number(region.perimeter()),
            self.squareness.clone().map_or(Value::Absent, Value::Text),
            Value::Table(corner_table(self)),
        ]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::to_value(OutlineInput::from(&self.outline)).unwrap_or_default()
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        record::parse::<OutlineInput>(json)?.build()
    }
}

fn corner_table(built: &BuiltOutline) -> Columns {
    let corners = built.outline.corners();
    let names = built.outline.runs().iter().take(corners.len());
    Columns {
        rows: corners.len(),
        columns: vec![
            Column::Numbers(corners.iter().map(|corner| corner.x.base()).collect()),
            Column::Numbers(corners.iter().map(|corner| corner.y.base()).collect()),
            Column::Texts(names.map(|run| Some(run.name().to_owned())).collect()),
        ],
    }
}

/// An outline from corners.
pub static OUTLINE_FROM_CORNERS: Operation = Operation {
    name: "outline_from_corners",
    module: "survey",
    since: "0.1.0",
    meaning: "The plan edge of the work from its corners in order.",
    equation: "area = 1/2 sum (x_i y_i+1 - x_i+1 y_i)",
    assumes: "edges are straight between corners; either way round",
    ports: &[port!(corners: Kind::Table(&CORNERS), "the corners in order")],
    results: &[port!(outline: Kind::Record(&OUTLINE), "the outline")],
    basis: &[BasisId::Geometry],
    example: r#"{"corners": {"x": ["0 ft", "20 ft", "20 ft", "0 ft"], "y": ["0 ft", "0 ft", "32 ft", "32 ft"],
        "edge": ["front", "right", "back", "left"]}}"#,
    refusals: &[
        (
            r#"{"corners": {"x": ["0 ft", "20 ft", "0 ft", "20 ft"], "y": ["0 ft", "0 ft", "32 ft", "32 ft"]}}"#,
            Code::OutlineCrosses,
        ),
        (
            r#"{"corners": {"x": ["0 ft", "20 ft", "40 ft"], "y": ["0 ft", "0 ft", "0 ft"]}}"#,
            Code::OutlineTooFew,
        ),
        (r#"{"corners": []}"#, Code::EmptyList),
        (r#"{"corners": {"x": ["0 ft", "20 ft", "20 ft"], "y": ["0 ft", "0 ft"]}}"#, Code::LengthMismatch),
    ],
    call: Call::Record(from_corners),
};

fn from_corners(args: &Args<'_>) -> Result<Answer> {
    let corners = args.required_table(0)?;
    let length = |column: usize, row: usize| {
        Given::computed(Length::from_base(corners.number(column, row).unwrap_or(f64::NAN)))
    };
    let edges: Vec<String> =
        (0..corners.rows).filter_map(|row| corners.text(2, row)).map(str::to_owned).collect();
    let input = OutlineInput {
        corners: (0..corners.rows).map(|row| CornerInput { x: length(0, row), y: length(1, row) }).collect(),
        edges,
        ..OutlineInput::default()
    };
    built(input.build()?)
}

fn built(outline: BuiltOutline) -> Result<Answer> {
    let notes = outline.notes.clone();
    Ok(Answer::of([Value::record(outline)]).with_notes(notes))
}

/// An outline from walls.
pub static OUTLINE_FROM_SIDES: Operation = Operation {
    name: "outline_from_sides",
    module: "survey",
    since: "0.1.0",
    meaning: "The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.",
    equation: "corners square and the closing gap shared out; or the quadrilateral of four sides and its diagonals",
    assumes: "the first wall runs along x from the first corner, the work on its left",
    ports: &[
        port!(sides: Kind::Table(&SIDES), "the walls in order"),
        number!(diagonal: length in foot | meter, WALL, "first corner to third, of four walls"; optional),
        number!(second_diagonal: length in foot | meter, WALL, "second corner to fourth, of four walls"; optional),
    ],
    results: &[port!(outline: Kind::Record(&OUTLINE), "the outline")],
    basis: &[BasisId::Geometry],
    example: r#"{"sides": [
        {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"},
        {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}], "diagonal": "37' 8 7/8\""}"#,
    refusals: &[
        (r#"{"diagonal": "60 ft"}"#, Code::DiagonalImpossible),
        (
            r#"{"sides": [{"length": "20 ft"}, {"length": "32 ft"}, {"length": "18 ft"}, {"length": "32 ft"}], "diagonal": null}"#,
            Code::OutlineOpen,
        ),
        (r#"{"sides": [{"length": "-20 ft"}]}"#, Code::OutOfRange),
    ],
    call: Call::Record(from_sides),
};

fn from_sides(args: &Args<'_>) -> Result<Answer> {
    let sides = args.required_table(0)?;
    let side = |row: usize| SideInput {
        name: sides.text(1, row).map(str::to_owned),
        length: Given::computed(Length::from_base(sides.number(0, row).unwrap_or(f64::NAN))),
        turn: sides.choice(2, row).and_then(Turn::at),
    };
    let input = OutlineInput {
        sides: (0..sides.rows).map(side).collect(),
        diagonal: args.quantity(1)?.map(Given::computed),
        second_diagonal: args.quantity(2)?.map(Given::computed),
        ..OutlineInput::default()
    };
    built(input.build()?)
}
