//! The two functions of the C library that sheets call: texts and arrays at the border.

use super::c_library::{Arg, library};
use super::c_values::{Buffer, OLD_INT, named, text};
use overslab::operation::sheet::respond;
use overslab::operations::all;
use overslab::quantity::System;
use overslab_tests::generate::sheet_table;
use serde_json::{Value as Json, json};

fn ask(request: &str, room: usize) -> (i32, String, i32) {
    let (mut answer, mut needed) = (Buffer::of(room), OLD_INT);
    let mut arguments = [text("request", request), answer.arguments("answer")].concat();
    arguments.push(named("needed", Arg::to(&mut needed)));
    let status = library().call("ovs_sheet", &arguments).status();
    (status, answer.text(), needed)
}

fn request(operation: &str, arguments: &[Json]) -> String {
    json!({"operation": operation, "system": "us", "want": "value", "arguments": arguments}).to_string()
}

#[test]
fn the_answer_is_that_of_the_engine() {
    for row in all() {
        let request = request(row.name, &sheet_table::cells(row, System::Us));
        let wanted = respond(&request).to_json().to_string();
        let (status, answer, needed) = ask(&request, 1 << 20);
        assert_eq!((status, &answer), (0, &wanted), "{}", row.name);
        assert_eq!(needed as usize, wanted.len() + 1);
    }
}

#[test]
fn a_failure_is_the_status_and_stands_in_the_answer() {
    let (status, answer, _) = ask(&request("fall", &[json!(-2), json!(20)]), 4096);
    assert_eq!(status, 17);
    let answer: Json = serde_json::from_str(&answer).unwrap();
    assert_eq!(answer["failure"]["code"], json!(17));
    assert_eq!(ask("{", 4096).0, 27);
    assert_eq!(ask(&request("fal", &[]), 4096).0, 93);
}

#[test]
fn a_short_buffer_tells_what_is_needed() {
    let request = request("fall", &[json!(2), json!(20)]);
    let (_, whole, needed) = ask(&request, 4096);
    for room in 1..=whole.len() + 1 {
        let (status, answer, again) = ask(&request, room);
        assert_eq!(again, needed);
        assert_eq!(status, if room > whole.len() { 0 } else { 94 }, "{room}");
        assert!(whole.starts_with(&answer));
    }
}

/// An answer in arrays.
#[derive(Debug, PartialEq)]
struct Arrays {
    status: i32,
    numbers: Vec<f64>,
    kinds: Vec<i32>,
    size: (i32, i32),
    texts: String,
    message: String,
}

fn arrays(request: &str, capacity: usize, room: usize) -> Arrays {
    let (mut numbers, mut kinds) = (vec![-7.0; capacity], vec![-7_i32; capacity]);
    let (mut rows, mut columns, mut needed) = (OLD_INT, OLD_INT, OLD_INT);
    let (mut texts, mut message) = (Buffer::of(room), Buffer::message());
    let mut arguments = text("request", request);
    arguments.extend([
        named("numbers", Arg::list(&mut numbers)),
        named("kinds", Arg::list(&mut kinds)),
        named("capacity", Arg::Int(i32::try_from(capacity).unwrap())),
        named("rows", Arg::to(&mut rows)),
        named("columns", Arg::to(&mut columns)),
    ]);
    arguments.extend(texts.arguments("texts"));
    arguments.push(named("needed", Arg::to(&mut needed)));
    arguments.extend(message.arguments("msg"));
    let status = library().call("ovs_sheet_values", &arguments).status();
    Arrays { status, numbers, kinds, size: (rows, columns), texts: texts.text(), message: message.text() }
}

#[test]
fn cells_come_apart_into_arrays() {
    let column = json!([[1], [null], [3]]);
    let told = arrays(&request("fall", &[column, json!(10)]), 4, 100);
    assert_eq!((told.status, told.size), (0, (3, 1)));
    assert_eq!(told.kinds, [1, 3, 1, -7], "a number, a refusal, a number");
    assert_eq!(told.numbers[1].to_bits(), 18.0_f64.to_bits(), "EMPTY_CELL");
    assert!((told.numbers[2] - 0.3).abs() < 1e-15 && told.texts.is_empty());

    let rows = json!([["at", "remark"], [1, "one\ntwo"], [2, null]]);
    let record = json!([["size", "2 in"], ["label", "elm"]]);
    let every = [json!(2), json!(2), json!("red"), json!("a"), rows, record];
    let get = json!({"operation": "specimen_every_kind", "system": "us", "want": "get", "result": "rows", "arguments": every});
    let told = arrays(&get.to_string(), 100, 100);
    assert_eq!((told.status, told.size), (0, (3, 5)));
    assert_eq!(&told.kinds[..10], &[2, 2, 2, 2, 2, 1, 0, 0, 2, 0]);
    assert_eq!(told.texts, "at_ft\nhits\ncolour\nremark\ndepth_in\none two");
}

#[test]
fn arrays_that_are_too_short_tell_what_is_needed_and_stay() {
    let request = request("trucks", &[json!([[14], [9]]), json!(10)]);
    let told = arrays(&request, 3, 10);
    assert_eq!((told.status, told.size), (94, (2, 2)));
    assert!(told.kinds.iter().all(|&kind| kind == -7) && told.message.starts_with("BUFFER_SHORT"));
    assert_eq!(arrays(&request, 4, 10).status, 0);
    let told = arrays(&self::request("fall", &[json!(-1), json!(10)]), 4, 10);
    assert_eq!((told.status, told.size), (17, (OLD_INT, OLD_INT)));
    assert!(told.message.starts_with("OUT_OF_RANGE: drop = -1 in"), "{}", told.message);
}
