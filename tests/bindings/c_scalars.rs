//! Scalar functions: the same bits, the same refusals and the same words as the core's.

use super::c_library::{Arg, Arguments, library};
use super::c_values::{Buffer, OLD_INT, Results, argument, is_int, name, named, scalar_rows, tries};
use overslab::failure::Code;
use overslab::note::NoteCode;
use overslab::operation::{Operation, call, decode};
use overslab::quantity::System;
use std::collections::BTreeSet;
use std::ffi::c_int;

/// The inputs of a row's example in a system.
pub(super) fn example(row: &'static Operation, system: System) -> Vec<f64> {
    let json = serde_json::from_str(row.example).unwrap();
    let values = decode::decode(row, &json, None).unwrap();
    let ports = row.ports.iter().zip(&values);
    ports.map(|(port, value)| call::from_base(port, system, call::flat_number(value))).collect()
}

/// The example with one input replaced by each number worth trying.
pub(super) fn trials(row: &'static Operation, system: System) -> Vec<Vec<f64>> {
    let example = example(row, system);
    let mut trials = vec![example.clone()];
    for (place, port) in row.ports.iter().enumerate() {
        for number in tries(port, system) {
            let mut inputs = example.clone();
            inputs[place] = number;
            trials.push(inputs);
        }
    }
    trials
}

fn inputs(row: &Operation, system: System, inputs: &[f64]) -> Arguments {
    row.ports.iter().zip(inputs).map(|(port, number)| argument(port, system, *number)).collect()
}

#[test]
fn every_call_is_the_cores_to_the_bit() {
    for (row, system) in scalar_rows() {
        for numbers in trials(row, system) {
            one_call(row, system, &numbers);
        }
    }
}

fn one_call(row: &'static Operation, system: System, numbers: &[f64]) {
    let said = format!("{} {numbers:?}", name(row, system));
    let mut expected = vec![0.0; row.results.len()];
    let outcome = call::scalar_in(row, system, numbers, &mut expected);
    let (mut results, mut notes, mut message) = (Results::of(row, 1), OLD_INT, Buffer::message());
    let arguments = [
        inputs(row, system, numbers),
        results.arguments(row, system),
        vec![named("notes", Arg::to(&mut notes))],
        message.arguments("msg"),
    ];
    let status = library().call(&name(row, system), &arguments.concat()).status();
    match outcome {
        Ok(note) => {
            assert_eq!((status, message.text().as_str()), (0, ""), "{said}");
            assert_eq!(notes, note.map_or(0, NoteCode::number), "{said}");
            for (place, expected) in expected.iter().enumerate() {
                assert_eq!(
                    results.get(row, place, 0).to_bits(),
                    expected.to_bits(),
                    "{said}: result {place}"
                );
            }
        }
        Err(failure) => {
            assert_eq!((status, message.text()), (failure.code.number(), failure.line()), "{said}");
            assert!(results.is_untouched() && notes == OLD_INT, "{said}: outputs changed");
        }
    }
}

#[test]
fn messages_name_the_argument_with_its_number_and_unit() {
    for (row, system) in scalar_rows() {
        for numbers in trials(row, system) {
            let mut results = vec![0.0; row.results.len()];
            let Err(failure) = call::scalar_in(row, system, &numbers, &mut results) else { continue };
            let line = failure.line();
            assert!(line.is_ascii() && line.len() <= 200, "{line}");
            let port = row.ports.iter().find(|port| failure.path == port.name).unwrap();
            assert!(line.starts_with(&format!("{}: {} = ", failure.code.name(), port.name)), "{line}");
            assert!(is_int(port) || line.contains("; allowed: "), "{line}");
        }
    }
}

#[test]
fn the_reason_in_full_has_the_status_of_the_call() {
    for (row, system) in scalar_rows() {
        for numbers in trials(row, system) {
            let mut results = vec![0.0; row.results.len()];
            let (status, said) = match call::scalar_in(row, system, &numbers, &mut results) {
                Ok(note) => (0, note.map_or(String::new(), |note| note.meaning().to_owned())),
                Err(failure) => (failure.code.number(), failure.sentence()),
            };
            let (mut text, mut needed) = (Buffer::of(2000), OLD_INT);
            let arguments = [
                inputs(row, system, &numbers),
                text.arguments("text"),
                vec![named("needed", Arg::to(&mut needed))],
            ];
            let function = format!("{}_why", name(row, system));
            assert_eq!(
                library().call(&function, &arguments.concat()).status(),
                status,
                "{function} {numbers:?}"
            );
            assert_eq!(text.text(), said, "{function} {numbers:?}");
            assert_eq!(needed, c_int::try_from(said.len() + 1).unwrap());
        }
    }
}

/// The statuses that the header lists for a function.
fn listed(function: &str) -> BTreeSet<String> {
    let comment = &library().header.function(function).unwrap().comment;
    let words = comment.split_once("Refuses with ").unwrap().1.split(['\n', ' ', '*', ',', '.']);
    words
        .take_while(|word| word.is_empty() || word.starts_with("OVS_"))
        .filter(|word| !word.is_empty())
        .map(str::to_owned)
        .collect()
}

#[test]
fn a_function_gives_each_status_it_lists_and_no_other() {
    for (row, system) in scalar_rows() {
        let mut met = BTreeSet::new();
        let stated = row.refusals.iter().filter_map(|(change, _)| {
            let mut json: serde_json::Map<_, _> = serde_json::from_str(row.example).unwrap();
            json.extend(serde_json::from_str::<serde_json::Map<_, _>>(change).unwrap());
            let values = decode::decode(row, &json, None).ok()?;
            let ports = row.ports.iter().zip(&values);
            Some(ports.map(|(port, value)| call::from_base(port, system, call::flat_number(value))).collect())
        });
        for numbers in trials(row, system).into_iter().chain(stated) {
            let mut results = vec![0.0; row.results.len()];
            if let Err(failure) = call::scalar_in(row, system, &numbers, &mut results) {
                assert_ne!(failure.code, Code::Internal, "{} {numbers:?}", row.name);
                met.insert(format!("OVS_{}", failure.code.name()));
            }
        }
        assert_eq!(listed(&name(row, system)), met, "{}", name(row, system));
    }
}
