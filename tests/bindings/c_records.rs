//! Record rows through C: the answers, the refusals and the words are the core's.

use super::c_library::{Arg, Arguments, Gives, library};
use super::c_request::{Prepared, by_argument, prepare};
use super::c_values::{Buffer, OLD_INT, OLD_NUMBER, Owned, name, named, rows};
use overslab::failure::{Code, Failure};
use overslab::operation::{Answer, Kind, Need, Operation, Port, RecordType, Value, call, encode};
use overslab::quantity::System;
use serde_json::{Map, Value as Json};
use std::ffi::c_int;

pub(super) fn record_rows() -> impl Iterator<Item = (&'static Operation, System)> {
    rows().filter(|(row, _)| !row.is_scalar())
}

/// What the call of a record row gives in C.
pub(super) enum Shape {
    Record(&'static RecordType),
    Numbers,
    Answer,
}

pub(super) fn shape(row: &Operation) -> Shape {
    let plain = |port: &Port| matches!(port.kind, Kind::Number(_) | Kind::Count(..) | Kind::Choice(_));
    match row.makes() {
        Some(record) => Shape::Record(record),
        None if row.results.iter().all(plain) => Shape::Numbers,
        None => Shape::Answer,
    }
}

/// What a call gave and wrote.
pub(super) struct Called {
    pub(super) gives: Gives,
    pub(super) status: c_int,
    pub(super) results: Vec<f64>,
    pub(super) notes: Vec<c_int>,
    pub(super) message: String,
}

/// Calls the row with so many places for results and notes.
pub(super) fn call_row(prepared: &mut Prepared, results: usize, notes: usize) -> Called {
    let (row, system) = (prepared.row, prepared.system);
    let (mut results, mut notes) = (vec![OLD_NUMBER; results], vec![OLD_INT; notes]);
    let (mut status, mut message) = (OLD_INT, Buffer::message());
    let mut arguments = prepared.arguments();
    match shape(row) {
        Shape::Numbers => {
            arguments.extend([
                named("results", Arg::list(&mut results)),
                named("results_len", Arg::length(&results)),
            ]);
        }
        Shape::Record(_) | Shape::Answer => arguments.push(named("status", Arg::to(&mut status))),
    }
    arguments.extend([named("notes", Arg::list(&mut notes)), named("notes_len", Arg::length(&notes))]);
    arguments.extend(message.arguments("msg"));
    let gives = library().call(&name(row, system), &arguments);
    if let Gives::Int(given) = gives {
        status = given;
    }
    Called { gives, status, results, notes, message: message.text() }
}

/// The reason in full: the status and the text.
fn why(prepared: &mut Prepared) -> (c_int, String) {
    let (mut text, mut needed) = (Buffer::of(5000), OLD_INT);
    let mut arguments = prepared.arguments();
    arguments.extend(text.arguments("text"));
    arguments.push(named("needed", Arg::to(&mut needed)));
    let function = format!("{}_why", name(prepared.row, prepared.system));
    let status = library().call(&function, &arguments).status();
    assert_eq!(needed, c_int::try_from(text.text().len() + 1).unwrap());
    (status, text.text())
}

pub(super) fn example(row: &Operation) -> Map<String, Json> {
    serde_json::from_str(row.example).unwrap()
}

/// A text of the library by a function that writes one whole.
pub(super) fn written(function: &str, before: Arguments, label: &str) -> String {
    let mut text = Buffer::of(1 << 20);
    let ends = [vec![named("needed", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
    let arguments = [before, text.arguments(label), ends].concat();
    assert_eq!(library().call(function, &arguments).status(), 0, "{function}");
    text.text()
}

fn note_numbers(answer: &Answer) -> Vec<c_int> {
    let mut numbers = Vec::new();
    for number in answer.notes.iter().map(|note| note.code.number()) {
        if !numbers.contains(&number) {
            numbers.push(number);
        }
    }
    numbers
}

fn same_answer(prepared: &mut Prepared, expected: &Answer) {
    let (row, system) = (prepared.row, prepared.system);
    let numbers: Vec<f64> = row
        .results
        .iter()
        .zip(&expected.results)
        .map(|(port, value)| call::from_base(port, system, call::flat_number(value)))
        .collect();
    let called = call_row(prepared, numbers.len() + 2, 8);
    assert_eq!((called.status, called.message.as_str()), (0, ""), "{}", name(row, system));
    let mut notes = note_numbers(expected);
    notes.resize(8, 0);
    assert_eq!(called.notes, notes, "{}", row.name);
    match shape(row) {
        Shape::Record(record) => {
            let owned = Owned::of(called.gives, record.name);
            let before = vec![named(record.name, owned.arg())];
            let Value::Record(made) = &expected.results[0] else { panic!("no record") };
            let canonical = (record.to_json)(made.as_ref()).unwrap().to_string();
            assert_eq!(written(&format!("ovs_{}_to_json", record.name), before, "json"), canonical);
        }
        Shape::Answer => {
            let owned = Owned::of(called.gives, "answer");
            let before = vec![named("answer", owned.arg())];
            let json = encode::answer(row, expected, system);
            // What was taken is listed by the core alike; the whole answer is compared.
            let function = format!("ovs_answer_to_json_{}", system.word());
            assert_eq!(written(&function, before, "json"), json.to_string(), "{}", row.name);
        }
        Shape::Numbers => {
            for (place, expected) in numbers.iter().enumerate() {
                let got = called.results[place];
                assert!(
                    got.to_bits() == expected.to_bits() || got.is_nan() && expected.is_nan(),
                    "{}",
                    row.name
                );
            }
            assert!(called.results[numbers.len()..].iter().all(|number| *number == OLD_NUMBER));
        }
    }
}

#[test]
fn every_example_answers_as_the_core_does() {
    for (row, system) in record_rows() {
        for pointers in [true, false] {
            let mut prepared = prepare(row, system, &example(row), pointers).unwrap();
            let expected = prepared.expected().unwrap_or_else(|failure| panic!("{}: {failure}", row.name));
            same_answer(&mut prepared, &expected);
            let (status, said) = why(&mut prepared);
            assert_eq!(status, 0, "{said}");
            for note in &expected.notes {
                assert!(said.contains(&note.text), "{said}");
            }
            for place in &expected.taken {
                assert!(said.contains(&format!("{} = ", row.ports[*place].name)), "{said}");
            }
        }
    }
}

#[test]
fn every_optional_port_goes_through_as_well() {
    for (row, system) in record_rows() {
        for port in row.ports.iter().filter(|port| port.need != Need::Required) {
            for pointers in [true, false] {
                let mut inputs = example(row);
                inputs.insert(port.name.to_owned(), some_value(port));
                let mut prepared = prepare(row, system, &inputs, pointers).unwrap();
                match prepared.expected() {
                    Ok(expected) => same_answer(&mut prepared, &expected),
                    Err(failure) => refused_alike(&mut prepared, &failure),
                }
            }
        }
    }
}

/// A value of the port's kind that another run would not take by itself.
fn some_value(port: &Port) -> Json {
    match &port.kind {
        Kind::Number(kind) => {
            let range = kind.range;
            let base = if range.least.is_finite() && range.greatest.is_finite() {
                range.least + 0.25 * (range.greatest - range.least)
            } else {
                1.0
            };
            Json::from(overslab::quantity::write::shortest(base) + " " + kind.quantity.base_unit().symbol)
        }
        Kind::Count(least, greatest) => Json::from((*least + 1).min(*greatest)),
        Kind::Choice(words) => Json::from(*words.last().unwrap()),
        Kind::Text => Json::from("other words"),
        Kind::Bytes => Json::from("base64:AAEC/w=="),
        Kind::Table(table) => {
            let row: Map<String, Json> =
                table.columns.iter().map(|column| (column.name.to_owned(), some_value(column))).collect();
            Json::Array(vec![Json::Object(row)])
        }
        Kind::Record(record) => serde_json::from_str(record.example).unwrap(),
    }
}

fn refused_alike(prepared: &mut Prepared, failure: &Failure) {
    let said = format!("{}: {failure}", name(prepared.row, prepared.system));
    let count = prepared.row.results.len();
    let called = call_row(prepared, count, 3);
    assert_eq!(called.status, failure.code.number(), "{said}; {}", called.message);
    assert!(
        called.message.starts_with(failure.code.name()) && called.message.len() <= 200,
        "{}",
        called.message
    );
    match called.gives {
        Gives::Pointer(pointer) => assert!(pointer.is_null(), "{said}"),
        _ => assert!(called.results.iter().all(|number| *number == OLD_NUMBER), "{said}"),
    }
    assert!(called.notes.iter().all(|note| *note == OLD_INT), "{said}: notes changed");
    let (status, sentence) = why(prepared);
    assert_eq!(status, called.status);
    assert!(sentence.starts_with(failure.code.name()) && sentence.contains(&failure.path), "{sentence}");
}

#[test]
fn every_stated_refusal_is_refused_alike() {
    let mut met = 0;
    for (row, system) in record_rows() {
        for (change, code) in row.refusals {
            let mut inputs = example(row);
            inputs.extend(serde_json::from_str::<Map<_, _>>(change).unwrap());
            for pointers in [true, false] {
                // What C cannot hand over at all, a text for a number say, is refused by the call by name only.
                let Some(mut prepared) = prepare(row, system, &inputs, pointers) else { continue };
                let failure = prepared.expected().unwrap_err();
                assert_eq!(failure.code, *code, "{} {change}", row.name);
                refused_alike(&mut prepared, &failure);
                met += 1;
            }
        }
    }
    assert!(met > 0);
}

#[test]
fn refused_numbers_are_said_as_they_were_given() {
    for (row, system) in record_rows() {
        for (place, port) in row.ports.iter().enumerate().filter(|(_, port)| by_argument(port)) {
            let mut prepared = prepare(row, system, &example(row), true).unwrap();
            match &port.kind {
                Kind::Number(kind) => {
                    prepared.replace_number(place, f64::INFINITY);
                    let called = call_row(&mut prepared, row.results.len(), 0);
                    let unit = kind.unit(system).symbol;
                    let expected = format!("NOT_FINITE: {} = inf {unit}", port.name);
                    assert!(called.message.starts_with(&expected), "{}: expected {expected}", called.message);
                }
                Kind::Table(table) => {
                    for (at, column) in table.columns.iter().enumerate() {
                        let (Kind::Number(kind), Need::Required) = (column.kind, column.need) else {
                            continue;
                        };
                        let mut prepared = prepare(row, system, &example(row), true).unwrap();
                        let last = prepared.replace_last_cell(place, at, f64::NAN);
                        let called = call_row(&mut prepared, row.results.len(), 0);
                        let expected = format!(
                            "NOT_FINITE: {}.{} (element {last}, the first is 0) = NaN {}",
                            port.name,
                            column.name,
                            kind.unit(system).symbol
                        );
                        assert!(
                            called.message.starts_with(&expected),
                            "{}: expected {expected}",
                            called.message
                        );
                    }
                }
                _ => {}
            }
        }
    }
}

#[test]
fn results_and_notes_fill_what_room_there_is() {
    for (row, system) in record_rows() {
        let mut prepared = prepare(row, system, &example(row), true).unwrap();
        let expected = prepared.expected().unwrap();
        for room in 0..=row.results.len() + 1 {
            let called = call_row(&mut prepared, room, room);
            assert_eq!(called.status, 0);
            let notes = note_numbers(&expected);
            for (at, note) in called.notes.iter().enumerate() {
                assert_eq!(*note, notes.get(at).copied().unwrap_or(0));
            }
            match shape(row) {
                Shape::Numbers => {}
                Shape::Record(record) => drop(Owned::of(called.gives, record.name)),
                Shape::Answer => drop(Owned::of(called.gives, "answer")),
            }
        }
    }
}

#[test]
fn a_value_given_twice_is_refused() {
    for (row, system) in record_rows() {
        for port in row.ports.iter().filter(|port| by_argument(port)) {
            let mut prepared = prepare(row, system, &example(row), true).unwrap();
            let json = prepared.full[port.name].clone();
            prepared.options.insert(port.name.to_owned(), json);
            let called = call_row(&mut prepared, row.results.len(), 0);
            assert_eq!(
                called.status,
                Code::KeyRepeated.number(),
                "{} {}: {}",
                row.name,
                port.name,
                called.message
            );
            assert!(called.message.contains(port.name), "{}", called.message);
        }
        let mut prepared = prepare(row, system, &example(row), true).unwrap();
        prepared.options.insert("no such port".to_owned(), Json::from(1));
        assert_eq!(call_row(&mut prepared, row.results.len(), 0).status, Code::KeyUnknown.number());
    }
}
