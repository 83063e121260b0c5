//! Every row of the table answers its example, refuses what it says it refuses, and reads its own fallbacks.

use super::decode::{decode, from_words};
use super::*;
use crate::failure::Code;
use crate::operations::{all, find, records};
use crate::quantity::System;
use serde_json::{Map, Value as Json};

fn object(text: &str) -> Map<String, Json> {
    match serde_json::from_str(text) {
        Ok(Json::Object(map)) => map,
        other => panic!("{text}: {other:?}"),
    }
}

fn run(operation: &'static Operation, json: &Map<String, Json>) -> crate::failure::Result<Answer> {
    call::invoke(operation, decode(operation, json, None)?)
}

#[test]
fn every_example_runs_and_gives_every_result() {
    for operation in all() {
        let answer =
            run(operation, &object(operation.example)).unwrap_or_else(|f| panic!("{}: {f}", operation.name));
        assert_eq!(answer.results.len(), operation.results.len(), "{}", operation.name);
        for system in System::ALL {
            let json = encode::answer(operation, &answer, system);
            assert_eq!(
                json["results"].as_object().unwrap().len(),
                operation.results.len(),
                "{}",
                operation.name
            );
        }
    }
}

#[test]
fn every_stated_refusal_is_refused_so() {
    for operation in all() {
        assert!(!operation.refusals.is_empty(), "{} refuses nothing", operation.name);
        for (change, code) in operation.refusals {
            let mut json = object(operation.example);
            json.extend(object(change));
            let failure =
                run(operation, &json).err().unwrap_or_else(|| panic!("{}: {change} passes", operation.name));
            assert_eq!(failure.code, *code, "{}: {change}: {failure}", operation.name);
            assert!(!failure.path.is_empty(), "{}: {change} names no port: {failure}", operation.name);
            assert!(!failure.remedy.is_empty(), "{}: {change} has no remedy: {failure}", operation.name);
            let line = failure.line();
            assert!(line.is_ascii() && line.len() <= 200, "{line}");
        }
    }
}

#[test]
fn every_required_port_is_missed() {
    for operation in all() {
        for port in operation.ports.iter().filter(|port| port.need == Need::Required) {
            let mut json = object(operation.example);
            json.remove(port.name).unwrap_or_else(|| panic!("{}: no {}", operation.name, port.name));
            let failure = run(operation, &json).unwrap_err();
            assert_eq!(
                (failure.code, failure.path.as_str()),
                (Code::KeyMissing, port.name),
                "{}",
                operation.name
            );
        }
    }
}

#[test]
fn fallbacks_are_read_and_listed() {
    for operation in all() {
        for port in operation.ports {
            if let Need::Fallback { value, why } = port.need {
                assert!(!why.is_empty());
                from_words(port, value).unwrap_or_else(|f| panic!("{}: {f}", operation.name));
            }
        }
    }
}

#[test]
fn names_are_unique_and_plain() {
    let mut names: Vec<&str> = all().iter().map(|operation| operation.name).collect();
    names.sort_unstable();
    assert!(names.windows(2).all(|pair| pair[0] != pair[1]), "{names:?}");
    for operation in all() {
        let ports = operation.ports.iter().chain(operation.results);
        for name in ports.map(|port| port.name).chain([operation.name, operation.module]) {
            assert!(
                name.bytes().all(|b| b.is_ascii_lowercase() || b.is_ascii_digit() || b == b'_'),
                "{name}"
            );
        }
        assert!(std::ptr::eq(find(operation.name).unwrap(), operation));
        assert!(operation.ports.len() <= call::MOST_PORTS);
        assert!(!operation.is_scalar() || operation.results.len() <= call::MOST_PORTS);
    }
}

#[test]
fn scalar_rows_have_scalar_ports_only() {
    for operation in all() {
        let plain = |port: &Port| {
            port.need == Need::Required
                && matches!(port.kind, Kind::Number(_) | Kind::Count(..) | Kind::Choice(_))
        };
        let all_plain = operation.ports.iter().all(plain) && operation.results.iter().all(plain);
        assert_eq!(operation.is_scalar(), all_plain, "{}", operation.name);
    }
}

#[test]
fn bytes_are_inputs_only() {
    let rows = all();
    let tables = |port: &'static Port| match port.kind {
        Kind::Table(table) => table.columns,
        _ => &[],
    };
    let inputs = rows.iter().flat_map(|operation| operation.ports).flat_map(tables);
    let results = rows.iter().flat_map(|operation| operation.results);
    let fields = records(&rows).into_iter().flat_map(|record| record.fields);
    let others =
        inputs.chain(results.chain(fields).flat_map(|port| std::iter::once(port).chain(tables(port))));
    for port in others {
        assert!(!matches!(port.kind, Kind::Bytes), "{}", port.name);
    }
}

#[test]
fn records_come_back_from_their_json() {
    for record in records(&all()) {
        let example: Json = serde_json::from_str(record.example).unwrap();
        let made = (record.from_json)(example).unwrap_or_else(|f| panic!("{}: {f}", record.name));
        let json = (record.to_json)(made.as_ref()).unwrap();
        let again =
            (record.from_json)(json.clone()).unwrap_or_else(|f| panic!("{}: {f}: {json}", record.name));
        assert_eq!((record.to_json)(again.as_ref()).unwrap(), json, "{}", record.name);
        assert_eq!((record.get)(made.as_ref()).unwrap().len(), record.fields.len(), "{}", record.name);
        assert!((record.is)(made.as_ref()));
    }
}

#[test]
fn flat_calls_speak_the_callers_unit() {
    let fall = find("fall").unwrap();
    let mut results = [7.0];
    call::scalar_in(fall, System::Us, &[2.0, 20.0], &mut results).unwrap();
    assert!((results[0] - 0.1).abs() < 1e-15);
    let failure = call::scalar_in(fall, System::Us, &[-2.0, 20.0], &mut results).unwrap_err();
    assert_eq!((failure.code, failure.written.as_str()), (Code::OutOfRange, "-2 in"));
    assert_eq!(failure.allowed, "at least 0 in, at most 1200 in");
    assert!((results[0] - 0.1).abs() < 1e-15, "results stay on failure");
    let failure = call::scalar_in(fall, System::Si, &[f64::NAN, 20.0], &mut results).unwrap_err();
    assert_eq!((failure.code, failure.written.as_str()), (Code::NotFinite, "NaN mm"));
}
