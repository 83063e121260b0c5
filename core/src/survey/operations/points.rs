//! The rows of points: from a table, and as shots of the old slab.

use super::OUTLINE;
use super::slab::{BEYOND, INSTRUMENT, TEXTURE, answer, settings};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Place, Result};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, Port, TableType, Value};
use crate::survey::Survey;
use crate::survey::input::BuiltOutline;
use crate::survey::old_slab::{SURVEY, Shots};
use crate::survey::points::{COORDINATE, Outside, POINTS, Points, shots};
use crate::{number, port};

static COLUMNS: &[Port] = &[
    number!(x: length in foot | meter, COORDINATE, "along the first plan axis"),
    number!(y: length in foot | meter, COORDINATE, "along the second, a quarter turn to the left of it"),
    number!(elevation: elevation in foot | meter, COORDINATE, "height"),
    port!(name: Kind::Text, "its name"; optional),
];

static TABLE: TableType = TableType { name: "points", meaning: "a point", columns: COLUMNS, least_rows: 1 };

/// Points from a table.
pub static POINTS_FROM_TABLE: Operation = Operation {
    name: "points_from_table",
    module: "survey",
    since: "0.1.0",
    meaning: "Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.",
    equation: "none: the points as they are given",
    assumes: "nothing",
    ports: &[port!(points: Kind::Table(&TABLE), "the points")],
    results: &[port!(points: Kind::Record(&POINTS), "the points")],
    basis: &[],
    example: r#"{"points": {"x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"], "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
        "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"], "name": ["A", "B", "C", "D", null]}}"#,
    refusals: &[
        (r#"{"points": []}"#, Code::EmptyList),
        (r#"{"points": [{"x": "1 ft", "y": "2 ft"}]}"#, Code::KeyMissing),
        (
            r#"{"points": {"x": ["1 ft", "2 ft"], "y": ["1 ft"], "elevation": ["9 ft", "9 ft"]}}"#,
            Code::LengthMismatch,
        ),
        (r#"{"points": [{"x": "1e10 m", "y": "2 ft", "elevation": "9 ft"}]}"#, Code::OutOfRange),
    ],
    call: Call::Record(from_table),
};

fn from_table(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let names = match table.columns.get(3) {
        Some(Column::Texts(names)) if names.iter().any(Option::is_some) => names.clone(),
        _ => Vec::new(),
    };
    let [x, y, z] = [0, 1, 2].map(|column| table.numbers(column).to_vec());
    Ok(Answer::of([Value::record(Points { x, y, z, names })]))
}

/// The old slab from points.
pub static SURVEY_FROM_POINTS: Operation = Operation {
    name: "survey_from_points",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab through points, each a shot: of a file, a scan or a table.",
    equation: "Delaunay triangles, each plane; shots on one circle are filled from their mean",
    assumes: "the points are in the axes and the datum of the job; the slab is plane between neighbouring points",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(points: Kind::Record(&POINTS), "the points"),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
        port!(outside: Kind::Choice(Outside::WORDS), "what becomes of points more than 6 in outside the outline";
            or "refuse" because "a point outside may be a slip"),
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "points": {"unit": "ft", "x": [1, 11, 11, 1, 5], "y": [1, 1, 9, 9, 4],
            "elevation": [99.20, 99.15, 99.25, 99.22, 99.16]}}"#,
    refusals: &[
        (r#"{"points": {"unit": "m", "x": [1, 2], "y": [1, 2], "elevation": [30, 30]}}"#, Code::TooFewShots),
        (
            r#"{"points": {"unit": "m", "x": [1, 2, 9], "y": [1, 2, 1], "elevation": [30, 30, 30]}}"#,
            Code::ShotOutside,
        ),
        (
            r#"{"points": {"unit": "m", "x": [1, 2, 3e6], "y": [1, 2, 1], "elevation": [30, 30, 30]}}"#,
            Code::OutOfRange,
        ),
        (r#"{"points": {"x": [1, 2, 3], "y": [1, 2, 1], "elevation": [30, 30, 30]}}"#, Code::UnitMissing),
        (
            r#"{"points": {"unit": "m", "x": [90], "y": [1], "elevation": [30]}, "outside": "leave_out"}"#,
            Code::TooFewShots,
        ),
        (r#"{"outside": "leave"}"#, Code::WordUnknown),
    ],
    call: Call::Record(from_points),
};

fn from_points(args: &Args<'_>) -> Result<Answer> {
    let outline: &BuiltOutline = args.required_record(0)?;
    let points: &Points = args.required_record(1)?;
    let made = shots(points, &outline.outline, args.choice(5)?.unwrap_or(Outside::Refuse))?;
    let survey =
        Survey::new(outline.outline.clone(), Shots::Scattered(made.marks.clone()), settings(args, 2)?);
    let survey = survey.map_err(|failure| of_point(failure, |shot| made.point(shot)))?;
    let left_out =
        format!("{} of {} points lie outside the outline and were left out", made.left_out, points.len());
    let note = (made.left_out > 0).then(|| Note::new(NoteCode::PointsOutside, left_out));
    Ok(answer(survey).with_notes(note))
}

/// A failure of a shot, told with the number of its point.
fn of_point(failure: Box<Failure>, point: impl Fn(usize) -> usize) -> Box<Failure> {
    match failure.place {
        Place::Index(shot) => failure.at(Place::Index(point(shot))),
        _ => failure,
    }
    .under("points")
}
