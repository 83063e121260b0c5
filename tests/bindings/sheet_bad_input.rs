//! Bad input through cells: the inputs of `bad_input.toml` are refused by the same codes at the same paths.

use crate::bad_input::cases::{BadJob, Inputs, Wanted, calls, jobs};
use overslab::failure::Failure;
use overslab::operation::sheet::{Reply, respond};
use overslab::operations::find;
use overslab_tests::as_cells;
use serde_json::{Value as Json, json};
use std::fmt::Write;

fn refused(operation: &str, arguments: &[Json]) -> Option<Box<Failure>> {
    let request = json!({"operation": operation, "system": "us", "want": "value", "arguments": arguments});
    match respond(&request.to_string()) {
        Reply::Cells(_) => None,
        Reply::Failure(failure) => Some(failure),
    }
}

/// A rectangle of cells has no columns of different lengths: the shorter one has an empty cell. And the name of a column stands
/// once, not in each row.
fn is_wanted(failure: &Failure, wanted: &Wanted) -> bool {
    let code = failure.code.name();
    let same = code == wanted.code || (code == "EMPTY_CELL" && wanted.code == "LENGTH_MISMATCH");
    let without_row = |path: &str| match (path.split_once('['), path.split_once("].")) {
        (Some((list, _)), Some((_, rest))) => format!("{list}.{rest}"),
        _ => path.to_owned(),
    };
    let known_by_header = code == "KEY_UNKNOWN" && failure.path == without_row(&wanted.path);
    same && (failure.path == wanted.path || known_by_header)
}

fn compare(wanted: &Wanted, failure: Option<Box<Failure>>, wrong: &mut String) {
    match failure {
        Some(failure) if is_wanted(&failure, wanted) => {}
        Some(failure) => {
            let _ = writeln!(wrong, "{}: {} at {} became {failure}", wanted.id, wanted.code, wanted.path);
        }
        None => {
            let _ = writeln!(wrong, "{}: passes", wanted.id);
        }
    }
}

#[test]
fn every_bad_call_is_refused_by_the_same_code() {
    let (mut wrong, mut asked) = (String::new(), 0);
    for bad in calls() {
        let row = find(&bad.operation).unwrap();
        let arguments = match &bad.inputs {
            Inputs::Json(inputs) => as_cells::arguments(row, inputs),
            // A cell holds no NaN and no infinity, and JSON cannot write them.
            Inputs::Flat(numbers) if numbers.iter().all(|number| number.is_finite()) => {
                Some(numbers.iter().map(|number| json!([[number]])).collect())
            }
            Inputs::Flat(_) => None,
        };
        let Some(arguments) = arguments else { continue };
        asked += 1;
        compare(&bad.wanted, refused(&bad.operation, &arguments), &mut wrong);
    }
    assert!(wrong.is_empty(), "\n{wrong}");
    assert!(asked > 30, "{asked} calls were asked");
}

#[test]
fn every_bad_job_is_refused_by_the_same_code() {
    let mut wrong = String::new();
    for (text, wanted) in jobs().iter().flat_map(BadJob::texts) {
        // The text of a job goes into one cell; what reads, goes on as a range to the report.
        let made =
            json!({"operation": "job_from_text", "system": "us", "want": "value", "arguments": [text]});
        let failure = match respond(&made.to_string()) {
            Reply::Failure(failure) => Some(failure),
            Reply::Cells(rows) => refused("report", &[json!(rows)]),
        };
        match failure {
            Some(failure) if failure.code.name() == wanted.code => {}
            // A cell with an empty text is an empty cell.
            Some(failure) if text.is_empty() && failure.code.name() == "EMPTY_CELL" => {}
            Some(failure) => drop(writeln!(wrong, "{}: {} became {failure}", wanted.id, wanted.code)),
            None => drop(writeln!(wrong, "{}: passes", wanted.id)),
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}
