//! The row of the old slab's triangles.

use super::{HEIGHT, PLACE};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::survey::surface::Ground;
use crate::{number, port};

/// The triangles that tile the work.
static TRIANGLES: TableType = TableType {
    name: "triangles",
    meaning: "a triangle over which the old slab is plane, its corners counter-clockwise",
    columns: &[
        number!(x_1: length in foot | meter, PLACE, "first corner, from the left"),
        number!(y_1: length in foot | meter, PLACE, "first corner, from the front"),
        number!(elevation_1: elevation in foot | meter, HEIGHT, "height of the old slab there"),
        number!(x_2: length in foot | meter, PLACE, "second corner, from the left"),
        number!(y_2: length in foot | meter, PLACE, "second corner, from the front"),
        number!(elevation_2: elevation in foot | meter, HEIGHT, "height of the old slab there"),
        number!(x_3: length in foot | meter, PLACE, "third corner, from the left"),
        number!(y_3: length in foot | meter, PLACE, "third corner, from the front"),
        number!(elevation_3: elevation in foot | meter, HEIGHT, "height of the old slab there"),
        port!(ground: Kind::Choice(Ground::WORDS), "what is known of the ground under it"),
    ],
    least_rows: 0,
};

/// The old slab as triangles.
pub static SURVEY_TRIANGLES: Operation = Operation {
    name: "survey_triangles",
    module: "survey",
    since: "0.1.0",
    meaning: "The triangles of the old slab, which tile the work exactly: what every volume is the sum of.",
    equation: "Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the outline",
    assumes: "the slab is plane over each triangle",
    ports: &[port!(survey: Kind::Record(&SURVEY), "the old slab")],
    results: &[port!(triangles: Kind::Table(&TRIANGLES), "the triangles")],
    basis: &[BasisId::Geometry],
    example: r#"{"survey": {"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "grid": {"columns": ["1 ft", "11 ft"], "rows": ["1 ft", "9 ft"], "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"]}}}"#,
    refusals: &[
        (r#"{"survey": 3}"#, Code::KindMismatch),
        (r#"{"survey": {"outline": {"sides": []}}}"#, Code::EmptyList),
    ],
    call: Call::Record(triangles),
};

fn triangles(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let whole = survey.surface().whole();
    let mut numbers: [Vec<f64>; 9] = Default::default();
    let mut grounds = Vec::with_capacity(whole.len());
    for triangle in whole.triangles() {
        let corners = triangle.corners.iter().flat_map(|corner| [corner.at.x, corner.at.y, corner.height]);
        for (column, number) in numbers.iter_mut().zip(corners) {
            column.push(number);
        }
        grounds.push(Some(triangle.ground as usize));
    }
    let columns = numbers.into_iter().map(Column::Numbers).chain([Column::Choices(grounds)]).collect();
    Ok(Answer::of([Value::Table(Columns { rows: whole.len(), columns })]))
}
