//! The rows that bring points into the axes of the job.

use super::points_thin::of_points;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::geometry::Point;
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Typed};
use crate::survey::points::axes::{Change, Known, Levelling, TOLERANCE, Tolerances};
use crate::survey::points::{COORDINATE, POINTS, Points};
use crate::{number, port};

static KNOWN: TableType = TableType {
    name: "known",
    meaning: "a point known in both systems of axes",
    columns: &[
        port!(name: Kind::Text, "its name"; optional),
        number!(x: length in foot | meter, COORDINATE, "along the first axis, as the points come"),
        number!(y: length in foot | meter, COORDINATE, "along the second, as the points come"),
        number!(job_x: length in foot | meter, COORDINATE, "along the first axis of the job"),
        number!(job_y: length in foot | meter, COORDINATE, "along the second axis of the job"),
        number!(elevation: elevation in foot | meter, COORDINATE, "height, as the points come"; optional),
        number!(job_elevation: elevation in foot | meter, COORDINATE, "height above the job datum"; optional),
    ],
    least_rows: 1,
};

static RESIDUALS: TableType = TableType {
    name: "residuals",
    meaning: "what is left over at a known point: as known less as brought",
    columns: &[
        port!(name: Kind::Text, "its name"),
        number!(x: length in inch | millimeter, Range::ANY, "along the first axis of the job"),
        number!(y: length in inch | millimeter, Range::ANY, "along the second"),
        number!(height: length in inch | millimeter, Range::ANY, "in height"; optional),
    ],
    least_rows: 0,
};

/// Points by known points.
pub static POINTS_TO_AXES: Operation = Operation {
    name: "points_to_axes",
    module: "survey",
    since: "0.1.0",
    meaning: "Points brought into the axes of the job by two known points or more: turned, shifted and raised, never stretched.",
    equation: "x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known points; z' = z + mean rise, or + a plane",
    assumes: "both systems have one unit, and y a quarter turn counter-clockwise from x; a mirror and a unit slip are refused by name",
    ports: &[
        port!(points: Kind::Record(&POINTS), "the points"),
        port!(known: Kind::Table(&KNOWN), "the points known in both systems"),
        number!(tolerance: length in inch | millimeter, TOLERANCE, "how far distances of two, places of more may be off";
            or "1/4 in" because "a nail is found again so well"),
        number!(height_tolerance: length in inch | millimeter, TOLERANCE, "how far heights may be off";
            or "1/8 in" because "a rod is read so well"),
        port!(levelling: Kind::Choice(Levelling::WORDS), "whether heights rise alike or by a plane"; or "rise" because "most scanners level themselves"),
    ],
    results: &[
        port!(moved: Kind::Record(&POINTS), "the points in the axes of the job"),
        number!(turn: angle in degree | radian, Range::ANY, "how far they were turned, counter-clockwise"),
        number!(rise: length in foot | meter, Range::ANY, "what was added to heights, where the old origin came to lie"; optional),
        number!(tilt_x: slope in inch_per_foot | percent, Range::ANY, "how much more along the first axis of the job"),
        number!(tilt_y: slope in inch_per_foot | percent, Range::ANY, "how much more along the second"),
        port!(residuals: Kind::Table(&RESIDUALS), "what is left over at the known points"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"points": {"unit": "ft", "x": [1, 11, 11, 1], "y": [1, 1, 9, 9], "elevation": [0.20, 0.15, 0.25, 0.22]},
        "known": {"name": ["nail 1", "nail 2"], "x": ["0 ft", "20 ft"], "y": ["0 ft", "0 ft"], "job_x": ["40 ft", "40 ft"],
            "job_y": ["10 ft", "30 ft"], "elevation": ["0.5 ft", "0.6 ft"], "job_elevation": ["99.5 ft", "99.6 ft"]}}"#,
    refusals: &[
        (r#"{"tolerance": "-1 in"}"#, Code::OutOfRange),
        (
            r#"{"known": {"x": ["0 ft"], "y": ["0 ft"], "job_x": ["40 ft"], "job_y": ["10 ft"]}}"#,
            Code::KnownPoints,
        ),
        (
            r#"{"known": {"x": ["0 ft", "20 ft"], "y": ["0 ft", "0 ft"], "job_x": ["40 ft", "40 ft"], "job_y": ["10 ft", "31 ft"]}}"#,
            Code::AxesDisagree,
        ),
        (
            r#"{"known": {"x": ["0 ft", "20 ft", "0 ft"], "y": ["0 ft", "0 ft", "10 ft"], "job_x": ["0 ft", "0 ft", "10 ft"], "job_y": ["0 ft", "20 ft", "0 ft"]}}"#,
            Code::AxesMirrored,
        ),
        (r#"{"levelling": "tilt"}"#, Code::KnownPoints),
        (r#"{"levelling": "slant"}"#, Code::WordUnknown),
    ],
    call: Call::Record(to_axes),
};

fn to_axes(args: &Args<'_>) -> Result<Answer> {
    let points: &Points = args.required_record(0)?;
    let known = known(args.required_table(1)?);
    let tolerances = Tolerances { plan: args.required(2)?, height: args.required(3)? };
    let levelling = args.choice(4)?.unwrap_or(Levelling::Rise);
    let change = Change::by_known_points(&known, tolerances, levelling)?;
    let moved = change.points(points).map_err(|failure| of_points(&POINTS_TO_AXES, failure))?;
    let tilt = change.tilt();
    let answer = Answer::of([
        Value::record(moved),
        Value::Number(change.turn().base()),
        change.rise().map_or(Value::Absent, |rise| Value::Number(rise.base())),
        Value::Number(tilt.x.base()),
        Value::Number(tilt.y.base()),
        Value::Table(residuals(&change)),
    ]);
    let mut notes = Vec::new();
    if known.len() == 2 {
        let text = "two known points show neither a mirror nor which of them is off: a third would";
        notes.push(Note::new(NoteCode::AxesUnchecked, text));
    }
    if change.rise().is_none() {
        let text = "no known point has a height in both systems: heights stay as they came";
        notes.push(Note::new(NoteCode::HeightsUnmoved, text));
    }
    Ok(answer.with_notes(notes))
}

fn known(table: &Columns) -> Vec<Known> {
    let place = |x: usize, row: usize| {
        let at = |column: usize| table.number(column, row).unwrap_or(f64::NAN);
        Point::new(at(x), at(x + 1))
    };
    let one = |row: usize| Known {
        name: table.text(0, row).map_or_else(|| format!("point {}", row + 1), str::to_owned),
        from: place(1, row),
        from_height: table.number(5, row),
        to: place(3, row),
        to_height: table.number(6, row),
    };
    (0..table.rows).map(one).collect()
}

fn residuals(change: &Change) -> Columns {
    let of = |number: fn(&crate::survey::points::axes::Residual) -> Length| {
        Column::Numbers(change.residuals.iter().map(|residual| number(residual).base()).collect())
    };
    let names = change.residuals.iter().map(|residual| Some(residual.name.clone())).collect();
    let heights = change.residuals.iter().map(|residual| residual.height.map_or(f64::NAN, Typed::base));
    Columns {
        rows: change.residuals.len(),
        columns: vec![
            Column::Texts(names),
            of(|residual| residual.x),
            of(|residual| residual.y),
            Column::Numbers(heights.collect()),
        ],
    }
}

/// Points along a wall.
pub static POINTS_ALONG_WALL: Operation = Operation {
    name: "points_along_wall",
    module: "survey",
    since: "0.1.0",
    meaning: "Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.",
    equation: "x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the other end",
    assumes: "the work lies on the left when the wall is walked from the origin",
    ports: &[
        port!(points: Kind::Record(&POINTS), "the points"),
        number!(origin_x: length in foot | meter, COORDINATE, "the end of the wall that becomes zero, along the first axis"),
        number!(origin_y: length in foot | meter, COORDINATE, "the same, along the second axis"),
        number!(along_x: length in foot | meter, COORDINATE, "another place along the wall, along the first axis"),
        number!(along_y: length in foot | meter, COORDINATE, "the same, along the second axis"),
    ],
    results: &[
        port!(moved: Kind::Record(&POINTS), "the points in the new axes"),
        number!(turn: angle in degree | radian, Range::ANY, "how far they were turned, counter-clockwise"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"points": {"unit": "ft", "x": [1, 11, 11, 1], "y": [1, 1, 9, 9], "elevation": [99.20, 99.15, 99.25, 99.22]},
        "origin_x": "12 ft", "origin_y": "0 ft", "along_x": "12 ft", "along_y": "10 ft"}"#,
    refusals: &[
        (r#"{"along_y": "0 ft"}"#, Code::KnownPoints),
        (r#"{"origin_x": "12"}"#, Code::UnitMissing),
        (r#"{"points": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(along_wall),
};

fn along_wall(args: &Args<'_>) -> Result<Answer> {
    let points: &Points = args.required_record(0)?;
    let at = |place: usize| args.required::<Length>(place).map(Typed::base);
    let (origin, along) = (Point::new(at(1)?, at(2)?), Point::new(at(3)?, at(4)?));
    let change = Change::along_wall(origin, along).map_err(|failure| of_wall(*failure))?;
    let moved = change.points(points).map_err(|failure| of_points(&POINTS_ALONG_WALL, failure))?;
    Ok(Answer::of([Value::record(moved), Value::Number(change.turn().base())]))
}

/// A failure of a place is told at its first coordinate.
fn of_wall(failure: crate::failure::Failure) -> Box<crate::failure::Failure> {
    let path = if failure.path == "origin" { "origin_x" } else { "along_x" };
    Box::new(crate::failure::Failure { path: path.to_owned(), ..failure })
}
