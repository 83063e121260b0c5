//! The row of a surface of given triangles.

use super::slab::{BEYOND, INSTRUMENT, TEXTURE, answer, settings};
use super::{HEIGHT, OUTLINE, PLACE};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Columns, Kind, Operation, TableType};
use crate::survey::input::{BuiltOutline, face_from_one};
use crate::survey::old_slab::{SURVEY, Shots, Survey};
use crate::survey::points::{Points, Tin};
use crate::{number, port};

/// The greatest number of a point.
const LAST: i64 = 2_147_483_647;

/// The points of a triangulated surface.
static POINTS: TableType = TableType {
    name: "points",
    meaning: "a point of the old slab",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height above the job datum"),
        port!(name: Kind::Text, "its name"; optional),
    ],
    least_rows: 3,
};

/// Triangles by the numbers of their points.
static FACES: TableType = TableType {
    name: "faces",
    meaning: "a triangle by the numbers of its three points, either way round; the first point is number 1",
    columns: &[
        port!(first: Kind::Count(1, LAST), "the number of one point"),
        port!(second: Kind::Count(1, LAST), "the number of another"),
        port!(third: Kind::Count(1, LAST), "the number of the third"),
    ],
    least_rows: 1,
};

/// The old slab from given triangles.
pub static SURVEY_FROM_FACES: Operation = Operation {
    name: "survey_from_faces",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.",
    equation: "each triangle is plane; what lies between triangles and their hull counts as unsurveyed",
    assumes: "triangles meet at whole sides; they may go on beyond the outline; points at no triangle are left out",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(points: Kind::Table(&POINTS), "the points"),
        port!(faces: Kind::Table(&FACES), "the triangles"),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "points": {"x": ["0 ft", "13 ft", "13 ft", "0 ft"], "y": ["0 ft", "0 ft", "10 ft", "10 ft"],
            "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft"]},
        "faces": {"first": [1, 1], "second": [2, 3], "third": [3, 4]}}"#,
    refusals: &[
        (r#"{"faces": {"first": [1, 1], "second": [2, 3], "third": [3, 5]}}"#, Code::FacePointUnknown),
        (r#"{"faces": {"first": [1, 1], "second": [2, 3], "third": [3, 0]}}"#, Code::OutOfRange),
        (r#"{"faces": {"first": [1, 1], "second": [2, 3], "third": [3, 3]}}"#, Code::FaceFlat),
        (r#"{"faces": {"first": [1, 1], "second": [2, 2], "third": [3, 4]}}"#, Code::FacesOverlap),
        (r#"{"faces": []}"#, Code::EmptyList),
    ],
    call: Call::Record(from_faces),
};

fn from_faces(args: &Args<'_>) -> Result<Answer> {
    let outline: &BuiltOutline = args.required_record(0)?;
    let points = points(args.required_table(1)?);
    let table = args.required_table(2)?;
    let number = |column: usize, row: usize| {
        table.count(column, row).and_then(|point| u32::try_from(point).ok()).unwrap_or(0)
    };
    let faces = (0..table.rows).map(|row| {
        let corners = [number(0, row), number(1, row), number(2, row)];
        face_from_one(row, corners, points.len())
    });
    let faces = faces.collect::<Result<Vec<_>>>().map_err(in_table)?;
    let shots = Shots::Faces(Tin { name: None, points, faces });
    let survey = Survey::new(outline.outline.clone(), shots, settings(args, 3)?);
    survey.map(answer).map_err(in_table)
}

/// The list of triangles under the name of its port.
fn in_table(mut failure: Box<crate::failure::Failure>) -> Box<crate::failure::Failure> {
    match failure.path.as_str() {
        "triangles" => failure.path = "faces".to_owned(),
        "" => failure.path = "points".to_owned(),
        _ => {}
    }
    failure
}

fn points(table: &Columns) -> Points {
    let named = (0..table.rows).any(|row| table.text(3, row).is_some());
    let name = |row: usize| table.text(3, row).map(str::to_owned);
    Points {
        x: table.numbers(0).to_vec(),
        y: table.numbers(1).to_vec(),
        z: table.numbers(2).to_vec(),
        names: if named { (0..table.rows).map(name).collect() } else { Vec::new() },
    }
}
