//! The row that makes one F-number of several.

use super::f_number;
use crate::asbuilt::flatness::{FNumber, Part, combined};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, together};
use crate::operation::{Answer, Args, Call, Columns, Kind, Operation, TableType};
use crate::quantity::Range;
use crate::{number, port};

static PARTS: TableType = TableType {
    name: "parts",
    meaning: "a line or a section",
    columns: &[
        number!(number: ratio in one | one, Range::POSITIVE, "its F-number"),
        port!(readings: Kind::Count(1, 1_000_000_000), "of a line: how many q for FF, how many z for FL"; optional),
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "of a section: how large it is"; optional),
    ],
    least_rows: 1,
};

/// One F-number for several lines or sections.
pub static FLATNESS_COMBINED: Operation = Operation {
    name: "flatness_combined",
    module: "asbuilt",
    since: "0.1.0",
    meaning: "One F-number for several lines, by their readings, or for several sections, by their areas.",
    equation: "F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section",
    assumes: "all numbers are FF, or all are FL",
    ports: &[port!(parts: Kind::Table(&PARTS), "the lines or the sections")],
    results: &[number!(number: ratio in one | one, Range::POSITIVE, "the number for all"; optional)],
    basis: &[BasisId::FlatnessConstants],
    example: r#"{"parts": {"number": ["31 1", "22 1", "27 1"], "readings": [13, 15, 12]}}"#,
    refusals: &[
        (r#"{"parts": []}"#, Code::EmptyList),
        (r#"{"parts": {"number": ["31 1", "22 1"]}}"#, Code::KeyMissing),
        (
            r#"{"parts": {"number": ["31 1", "22 1"], "readings": [13, 15], "area": ["100 ft2", "200 ft2"]}}"#,
            Code::Contradiction,
        ),
        (r#"{"parts": {"number": ["0 1", "22 1"], "readings": [13, 15]}}"#, Code::OutOfRange),
    ],
    call: Call::Record(combine),
};

fn combine(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let weights = weights(table)?;
    let parts = table.numbers(0).iter().zip(weights);
    let parts = parts.filter_map(|(&number, weight)| Some(Part { number: FNumber::given(number)?, weight }));
    Ok(Answer::of([f_number(combined(parts))]))
}

/// What each weighs: readings or areas, one of them in every row.
fn weights(table: &Columns) -> Result<Vec<f64>> {
    let readings: Vec<Option<f64>> =
        (0..table.rows).map(|row| table.count(1, row).map(|count| count as f64)).collect();
    let areas: Vec<Option<f64>> = (0..table.rows).map(|row| table.number(2, row)).collect();
    let given = |weights: &[Option<f64>]| weights.iter().any(Option::is_some);
    let weights = match (given(&readings), given(&areas)) {
        (true, false) => readings,
        (false, true) => areas,
        (by_readings, by_area) => {
            let code = if by_readings { Code::Contradiction } else { Code::KeyMissing };
            return Err(Failure::new(code, "parts")
                .written(together(&[("readings", by_readings), ("area", by_area)]))
                .allowed("the readings of lines, or the areas of sections")
                .remedy("give one of the two columns"));
        }
    };
    let lacking = weights.iter().position(Option::is_none);
    match lacking {
        None => Ok(weights.into_iter().flatten().collect()),
        Some(row) => Err(Failure::new(Code::EmptyCell, "parts")
            .written("nothing")
            .allowed("a weight in every row")
            .remedy("fill the column in")
            .at(crate::failure::Place::Index(row))),
    }
}
