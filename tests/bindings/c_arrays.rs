//! Array forms: element by element the scalar call, a bad element by itself, any length, any alignment.

use super::c_library::{Arg, Arguments, library};
use super::c_scalars::{example, trials};
use super::c_values::{Buffer, OLD_INT, OLD_NUMBER, Results, is_int, name, named, scalar_rows};
use overslab::failure::{Code, Place};
use overslab::note::NoteCode;
use overslab::operation::{Operation, call};
use overslab::quantity::System;
use std::ffi::c_int;

/// Columns of inputs, as doubles and as ints.
struct Columns {
    numbers: Vec<Vec<f64>>,
    ints: Vec<Vec<c_int>>,
}

impl Columns {
    fn of(row: &Operation, list: &[Vec<f64>]) -> Self {
        let column = |place: usize| list.iter().map(|inputs| inputs[place]).collect::<Vec<f64>>();
        let numbers: Vec<Vec<f64>> = (0..row.ports.len()).map(column).collect();
        let ints = numbers.iter().map(|list| list.iter().map(|number| *number as c_int).collect()).collect();
        Self { numbers, ints }
    }

    fn arguments(&mut self, row: &Operation, system: System) -> Arguments {
        let columns = row.ports.iter().zip(self.numbers.iter_mut().zip(&mut self.ints));
        columns
            .map(|(port, (numbers, ints))| {
                (port.unit_name(system), if is_int(port) { Arg::list(ints) } else { Arg::list(numbers) })
            })
            .collect()
    }
}

/// One call on arrays, and what it left.
struct Called {
    status: c_int,
    results: Results,
    notes: Vec<c_int>,
    bad: c_int,
    message: String,
}

fn call_array(row: &'static Operation, system: System, list: &[Vec<f64>]) -> Called {
    let n = list.len();
    let (mut columns, mut results) = (Columns::of(row, list), Results::of(row, n));
    let (mut notes, mut bad, mut message) = (vec![OLD_INT; n], OLD_INT, Buffer::message());
    let arguments = [
        columns.arguments(row, system),
        results.arguments(row, system),
        vec![
            named("notes", Arg::list(&mut notes)),
            named("n", Arg::length(list)),
            named("bad_index", Arg::to(&mut bad)),
        ],
        message.arguments("msg"),
    ];
    let status = library().call(&format!("{}_array", name(row, system)), &arguments.concat()).status();
    Called { status, results, notes, bad, message: message.text() }
}

/// What element `at` must have become.
fn check_element(row: &'static Operation, system: System, inputs: &[f64], called: &Called, at: usize) {
    let mut expected = vec![0.0; row.results.len()];
    let outcome = call::scalar_in(row, system, inputs, &mut expected);
    for (place, port) in row.results.iter().enumerate() {
        let got = called.results.get(row, place, at);
        match (&outcome, is_int(port)) {
            (Ok(_), _) => assert_eq!(got.to_bits(), expected[place].to_bits(), "{} {inputs:?}", row.name),
            (Err(_), true) => assert_eq!(got, -1.0, "{} {inputs:?}", row.name),
            (Err(_), false) => assert!(got.is_nan(), "{} {inputs:?}: {got}", row.name),
        }
    }
    let note = outcome.ok().flatten().map_or(0, NoteCode::number);
    assert_eq!(called.notes[at], note, "{} {inputs:?}", row.name);
}

#[test]
fn every_element_is_the_scalar_call_and_a_bad_one_spoils_itself_only() {
    for (row, system) in scalar_rows() {
        let list = trials(row, system);
        let called = call_array(row, system, &list);
        for (at, inputs) in list.iter().enumerate() {
            check_element(row, system, inputs, &called, at);
        }
        let first = list.iter().enumerate().find_map(|(at, inputs)| {
            let mut results = vec![0.0; row.results.len()];
            call::scalar_in(row, system, inputs, &mut results).err().map(|failure| (at, failure))
        });
        let (at, failure) = first.expect("every port refuses something");
        let failure = failure.at(Place::Index(at));
        assert_eq!(called.status, failure.code.number());
        assert_eq!(called.bad, c_int::try_from(at).unwrap());
        assert_eq!(called.message, failure.line());
        assert!(called.message.contains(&format!("(element {at}, the first is 0)")), "{}", called.message);
    }
}

#[test]
fn good_elements_succeed_at_any_length() {
    for (row, system) in scalar_rows() {
        for n in [1, 2, 1000] {
            let list = vec![example(row, system); n];
            let called = call_array(row, system, &list);
            assert_eq!((called.status, called.bad, called.message.as_str()), (0, -1, ""), "{}", row.name);
            for at in [0, n / 2, n - 1] {
                check_element(row, system, &list[at], &called, at);
            }
        }
    }
}

#[test]
fn bad_elements_far_along_spoil_themselves_only() {
    for (row, system) in scalar_rows() {
        let mut list = vec![example(row, system); 600];
        let trials = trials(row, system);
        // About the ends of what is worked out together.
        for (place, inputs) in [254, 255, 256, 257, 511, 512, 599].into_iter().zip(trials.iter().cycle()) {
            list[place].clone_from(inputs);
        }
        let called = call_array(row, system, &list);
        for (at, inputs) in list.iter().enumerate() {
            check_element(row, system, inputs, &called, at);
        }
    }
}

#[test]
fn no_elements_need_no_arrays_and_a_negative_number_is_refused() {
    for (row, system) in scalar_rows() {
        for (n, expected) in
            [(0, 0), (-1, Code::LengthNegative.number()), (c_int::MIN, Code::LengthNegative.number())]
        {
            let ports = row.ports.iter().chain(row.results);
            let mut arguments: Arguments = ports.map(|port| (port.unit_name(system), Arg::NULL)).collect();
            let mut message = Buffer::message();
            arguments.extend([
                named("notes", Arg::NULL),
                named("n", Arg::Int(n)),
                named("bad_index", Arg::NULL),
            ]);
            arguments.extend(message.arguments("msg"));
            let status = library().call(&format!("{}_array", name(row, system)), &arguments).status();
            assert_eq!(status, expected, "{} {n}", row.name);
            assert_eq!(message.text().is_empty(), expected == 0, "{} {n}", row.name);
        }
    }
}

#[test]
fn an_array_may_be_input_and_result_at_once() {
    for (row, system) in scalar_rows() {
        let Some(result) = row.results.iter().position(|port| !is_int(port)) else { continue };
        for port in (0..row.ports.len()).filter(|port| !is_int(&row.ports[*port])) {
            let list = trials(row, system);
            let apart = call_array(row, system, &list);
            let (mut columns, mut results) = (Columns::of(row, &list), Results::of(row, list.len()));
            let mut outs = results.arguments(row, system);
            let ins = columns.arguments(row, system);
            outs[result].1 = ins[port].1;
            let mut message = Buffer::message();
            let ends = vec![
                named("notes", Arg::NULL),
                named("n", Arg::length(&list)),
                named("bad_index", Arg::NULL),
            ];
            let arguments = [ins, outs, ends, message.arguments("msg")].concat();
            let status = library().call(&format!("{}_array", name(row, system)), &arguments).status();
            assert_eq!(status, apart.status);
            for (at, number) in columns.numbers[port].iter().enumerate() {
                let expected = apart.results.numbers[result][at];
                assert!(
                    number.to_bits() == expected.to_bits() || number.is_nan() && expected.is_nan(),
                    "{}",
                    row.name
                );
            }
        }
    }
}

#[test]
fn arrays_need_no_alignment() {
    for (row, system) in
        scalar_rows().filter(|(row, _)| row.ports.iter().chain(row.results).all(|port| !is_int(port)))
    {
        let (inputs, n) = (example(row, system), 3);
        // Each array begins one byte into a list of bytes.
        let shifted = |number: f64| -> Vec<u8> {
            std::iter::once(0).chain(std::iter::repeat_n(number.to_ne_bytes(), n).flatten()).collect()
        };
        let mut ins: Vec<Vec<u8>> = inputs.iter().map(|number| shifted(*number)).collect();
        let mut outs: Vec<Vec<u8>> = row.results.iter().map(|_| shifted(OLD_NUMBER)).collect();
        let ports = row.ports.iter().chain(row.results).zip(ins.iter_mut().chain(&mut outs));
        let mut arguments: Arguments =
            ports.map(|(port, bytes)| (port.unit_name(system), Arg::list(&mut bytes[1..]))).collect();
        arguments.extend([named("notes", Arg::NULL), named("n", Arg::Int(3)), named("bad_index", Arg::NULL)]);
        arguments.extend(Buffer::of(0).arguments("msg"));
        assert_eq!(library().call(&format!("{}_array", name(row, system)), &arguments).status(), 0);
        let mut expected = vec![0.0; row.results.len()];
        call::scalar_in(row, system, &inputs, &mut expected).unwrap();
        for (bytes, expected) in outs.iter().zip(expected) {
            assert_eq!(bytes[1..], shifted(expected)[1..], "{}", row.name);
        }
    }
}
