//! The row of the sweep.

use super::asked::{Read, ports};
use crate::assumption;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::grade::fall::FALL;
use crate::grade::finish::{FINISH, HEIGHT, LEAST};
use crate::grade::operations::columns::{some_numbers, table};
use crate::grade::operations::finish::example;
use crate::grade::solve::{Measured, sweep};
use crate::operation::{Answer, Args, Call, Columns, Kind, Operation, TableType};
use crate::quantity::{Elevation, Length, Range, Slope, Typed};
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

static VALUES: TableType = TableType {
    name: "values",
    meaning: "a value of the demand, in the column that goes with it",
    columns: &[
        number!(length: length in inch | millimeter, LEAST, "the value of a thickness or a tolerance"; optional),
        number!(fall: slope in inch_per_foot | percent, FALL, "the value of a fall"; optional),
        number!(elevation: elevation in foot | meter, HEIGHT, "the value of a height"; optional),
    ],
    least_rows: 1,
};

static CURVE: TableType = TableType {
    name: "curve",
    meaning: "a point of the curve, in the order of the values",
    columns: &[
        number!(length: length in inch | millimeter, Range::ANY, "the thickness or tolerance"; optional),
        number!(fall: slope in inch_per_foot | percent, Range::ANY, "the fall"; optional),
        number!(elevation: elevation in foot | meter, Range::ANY, "the height"; optional),
        number!(concrete: volume in cubic_yard | cubic_meter, Range::ANY, "the least concrete; none where the demands cannot be kept"; optional),
    ],
    least_rows: 0,
};

/// The sweep.
pub static FINISH_SWEEP: Operation = Operation {
    name: "finish_sweep",
    module: "grade",
    since: "0.1.0",
    meaning: "The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.",
    equation: "as for the finish of least concrete, unrounded, for each value",
    assumes: "old slab plane over each triangle; the margin counts",
    ports: ports![
        port!(demand: Kind::Text, "the name of the demand"),
        port!(values: Kind::Table(&VALUES), "the values it takes in turn"),
    ],
    results: &[port!(curve: Kind::Table(&CURVE), "the concrete for each value")],
    basis: &[BasisId::Geometry, BasisId::LinearProgram],
    example: example!(
        r#""demands": {"name": ["least", "fall"], "kind": ["least_thickness", "least_fall"], "thickness": ["3 in", null],
            "fall": [null, "1/8 in/ft"], "edge": [null, "front"]}, "demand": "least",
            "values": {"length": ["1 1/2 in", "2 in", "2 1/2 in", "3 in", "3 1/2 in", "4 in"]}"#
    ),
    refusals: &[
        (r#"{"demand": "lest"}"#, Code::DemandUnknown),
        (r#"{"values": []}"#, Code::EmptyList),
        (r#"{"values": {"length": ["-1 in"]}}"#, Code::OutOfRange),
        (r#"{"values": {"fall": ["1 %"]}}"#, Code::Contradiction),
    ],
    call: Call::Record(swept),
};

fn swept(args: &Args<'_>) -> Result<Answer> {
    let read = Read::of(args)?;
    let (name, table_of_values) = (args.required_text(6)?, args.required_table(7)?);
    let named = read.demands.iter().find(|demand| demand.name.trim().eq_ignore_ascii_case(name.trim()));
    let column = named.map_or(0, |demand| match (demand.wants.is_height(), demand.wants.measured()) {
        (true, _) => 2,
        (_, Measured::Slope) => 1,
        _ => 0,
    });
    let values = match named {
        Some(_) => values(table_of_values, column)?,
        // The sweep refuses the name.
        None => vec![0.0],
    };
    let found = sweep(read.survey, &read.asked(), name, &values)?;
    let points = &found.points;
    let of = |place: usize| (place == column).then_some(());
    Ok(Answer::of([table(
        points.len(),
        [
            some_numbers(points, |point| of(0).map(|()| Length::from_base(point.value))),
            some_numbers(points, |point| of(1).map(|()| Slope::from_base(point.value))),
            some_numbers(points, |point| of(2).map(|()| Elevation::from_base(point.value))),
            some_numbers(points, |point| point.concrete),
        ],
    )]))
}

/// The values of the column that goes with the demand; others must be empty.
fn values(table: &Columns, column: usize) -> Result<Vec<f64>> {
    let names = ["length", "fall", "elevation"];
    let value = |row: usize| {
        let other = (0..3).find(|&other| other != column && table.number(other, row).is_some());
        match (other, table.number(column, row)) {
            (None, Some(value)) => Ok(value),
            (Some(other), _) => {
                Err(Failure::new(Code::Contradiction, format!("values[{row}].{}", names[other]))
                    .written(format!("a value in the column {}", names[other]))
                    .allowed(format!("values in the column {}", names[column]))
                    .remedy("this demand is counted in that"))
            }
            (None, None) => Err(Failure::new(Code::KeyMissing, format!("values[{row}].{}", names[column]))
                .written("nothing")
                .allowed("a value")
                .remedy("give the value to try")),
        }
    };
    (0..table.rows).map(value).collect()
}
