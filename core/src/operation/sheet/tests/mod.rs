//! Tests of the sheet forms, with the test-only operations.

mod each;
mod records;
mod requests;
mod singles;
mod tables;

use super::{Reply, respond};
use serde_json::{Value as Json, json};

/// Asks for the value of an operation in US units.
fn ask(operation: &str, arguments: Json) -> Reply {
    request(&json!({"operation": operation, "system": "us", "want": "value", "arguments": arguments}))
}

fn why(operation: &str, arguments: Json) -> Json {
    cells(request(&json!({"operation": operation, "system": "us", "want": "why", "arguments": arguments})))
}

fn get(operation: &str, result: &str, arguments: Json) -> Json {
    let request_json = json!({"operation": operation, "system": "us", "want": "get", "result": result, "arguments": arguments});
    cells(request(&request_json))
}

fn request(json: &Json) -> Reply {
    respond(&json.to_string())
}

fn cells(reply: Reply) -> Json {
    match reply {
        Reply::Cells(rows) => json!(rows),
        Reply::Failure(failure) => panic!("{failure}"),
    }
}

/// The name of the code, the path, and row and column where known.
fn refusal(reply: Reply) -> (String, String, Option<(usize, usize)>) {
    match reply {
        Reply::Cells(rows) => panic!("passes: {rows:?}"),
        Reply::Failure(failure) => {
            assert!(failure.line().is_ascii() && failure.line().len() <= 200);
            assert!(!failure.remedy.is_empty(), "{failure}");
            let place = match failure.place {
                crate::failure::Place::Cell(row, column) => Some((row, column)),
                _ => None,
            };
            (failure.code.name().to_owned(), failure.path.clone(), place)
        }
    }
}

fn refused(
    code: &str,
    path: &str,
    place: Option<(usize, usize)>,
) -> (String, String, Option<(usize, usize)>) {
    (code.to_owned(), path.to_owned(), place)
}

/// Equal, numbers to a part in 1e12: a change of unit and back costs a last digit.
fn close(left: &Json, right: &Json) {
    fn same(left: &Json, right: &Json) -> bool {
        match (left, right) {
            (Json::Array(left), Json::Array(right)) => {
                left.len() == right.len() && left.iter().zip(right).all(|(left, right)| same(left, right))
            }
            (Json::Number(left), Json::Number(right)) => {
                let (left, right) = (left.as_f64().unwrap(), right.as_f64().unwrap());
                (left - right).abs() <= 1e-12 * right.abs()
            }
            _ => left == right,
        }
    }
    assert!(same(left, right), "{left} is not {right}");
}
