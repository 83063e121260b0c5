//! Null pointers, negative lengths, pointers of another kind: refused by name, for every function of the header.

use super::c_library::{Arg, Arguments, Gives, Library, library};
use super::c_records::{Shape, call_row, example, record_rows, shape};
use super::c_request::prepare;
use super::c_scalars::example as numbers;
use super::c_values::{Buffer, Owned, Results, argument, name, named, scalar_rows, text};
use overslab::failure::Code;
use overslab::operation::{Kind, Need, Operation, RecordType};
use overslab::operations::{all, records};
use overslab::quantity::System;
use overslab_tests::c_header::{Prototype, Type};

/// Whether the argument says how long another one is.
fn is_length(name: &str) -> bool {
    name.ends_with("_len") || name.ends_with("_rows") || name == "n" || name == "capacity"
}

/// Every argument null or zero, but those of that name.
fn zeros(prototype: &Prototype, other: &str, int: i32) -> Arguments {
    let one = |argument: &overslab_tests::c_header::Argument| {
        let arg = match argument.kind {
            Type::Double => Arg::Double(1.0),
            Type::Int if argument.name == other => Arg::Int(int),
            Type::Int => Arg::Int(0),
            Type::In(_) | Type::Out(_) => Arg::NULL,
            Type::Void => panic!("no argument is void"),
        };
        (argument.name.clone(), arg)
    };
    prototype.arguments.iter().map(one).collect()
}

#[test]
fn null_everywhere_is_no_disaster() {
    for prototype in &library().header.functions {
        match library().call(&prototype.name, &zeros(prototype, "", 0)) {
            // Where nothing but numbers is required the call succeeds.
            Gives::Pointer(pointer) if !pointer.is_null() => free_made(prototype, pointer),
            Gives::Pointer(_) => {}
            Gives::Int(status) => {
                assert!(status == 0 || Code::from_number(status).is_some(), "{}", prototype.name);
            }
            Gives::Nothing => {}
        }
    }
}

/// Frees what a function made, by the function of its type.
fn free_made(prototype: &Prototype, pointer: *mut std::ffi::c_void) {
    let Type::Out(made) = &prototype.gives else { panic!("{} makes nothing", prototype.name) };
    drop(Owned::of(Gives::Pointer(pointer), made.trim_start_matches("ovs_")));
}

#[test]
fn negative_lengths_and_null_with_a_length_are_refused() {
    let refused = [Code::NullPointer.number(), Code::LengthNegative.number()];
    for prototype in &library().header.functions {
        for length in prototype.arguments.iter().filter(|argument| is_length(&argument.name)) {
            for value in [-1, i32::MIN, 1, i32::MAX] {
                match library().call(&prototype.name, &zeros(prototype, &length.name, value)) {
                    Gives::Pointer(pointer) => {
                        assert!(pointer.is_null(), "{} {}", prototype.name, length.name);
                    }
                    Gives::Int(status) => {
                        assert!(
                            refused.contains(&status),
                            "{} {} = {value}: {status}",
                            prototype.name,
                            length.name
                        );
                    }
                    Gives::Nothing => {}
                }
            }
        }
    }
}

#[test]
fn every_output_is_last_and_no_input_is_changed() {
    for prototype in &library().header.functions {
        let first = prototype.arguments.iter().position(|argument| Library::is_output(&argument.kind));
        let Some(first) = first.filter(|_| prototype.gives != Type::Void) else { continue };
        for argument in &prototype.arguments[first..] {
            let fits = Library::is_output(&argument.kind) || is_length(&argument.name);
            assert!(fits, "{}: {} stands behind an output", prototype.name, argument.name);
        }
    }
}

#[test]
fn a_null_result_of_a_scalar_call_is_named() {
    for (row, system) in scalar_rows() {
        for (place, port) in row.results.iter().enumerate() {
            let (mut results, mut message) = (Results::of(row, 1), Buffer::message());
            let ports = row.ports.iter().zip(numbers(row, system));
            let mut arguments: Arguments =
                ports.map(|(port, number)| argument(port, system, number)).collect();
            let mut outs = results.arguments(row, system);
            outs[place].1 = Arg::NULL;
            arguments.extend(outs);
            arguments.push(named("notes", Arg::NULL));
            arguments.extend(message.arguments("msg"));
            assert_eq!(library().call(&name(row, system), &arguments).status(), Code::NullPointer.number());
            let expected = format!("NULL_POINTER: {}:", port.unit_name(system));
            assert!(message.text().starts_with(&expected), "{}", message.text());
            assert!(results.is_untouched());
        }
    }
}

#[test]
fn null_arrays_and_records_are_named() {
    for (row, system) in record_rows() {
        let plain = prepare(row, system, &example(row), true).unwrap().arguments();
        let until = plain.iter().position(|(name, _)| name == "options_json").unwrap();
        for place in
            (0..until).filter(|place| matches!(plain[*place].1, Arg::Pointer(given) if !given.is_null()))
        {
            let mut prepared = prepare(row, system, &example(row), true).unwrap();
            let mut arguments = prepared.arguments();
            let label = arguments[place].0.clone();
            let optional = may_be_null(row, system, &label);
            // A text or a table of no length may be null.
            let no_length = matches!(arguments.get(place + 1), Some((_, Arg::Int(0))));
            arguments[place].1 = Arg::NULL;
            let mut message = Buffer::message();
            match shape(row) {
                Shape::Numbers => {
                    arguments.extend([named("results", Arg::NULL), named("results_len", Arg::Int(0))]);
                }
                Shape::Record(_) | Shape::Answer => arguments.push(named("status", Arg::NULL)),
            }
            arguments.extend([named("notes", Arg::NULL), named("notes_len", Arg::Int(0))]);
            arguments.extend(message.arguments("msg"));
            let gives = library().call(&name(row, system), &arguments);
            if optional || no_length {
                free(gives, &shape(row));
                continue;
            }
            let expected = format!("NULL_POINTER: {label}:");
            assert!(message.text().starts_with(&expected), "{}: {}", row.name, message.text());
        }
    }
}

/// Whether the argument is an optional record, or an optional column of a table.
fn may_be_null(row: &Operation, system: System, label: &str) -> bool {
    row.ports.iter().any(|port| match port.kind {
        Kind::Table(table) => table.columns.iter().any(|column| {
            column.need != Need::Required && format!("{}_{}", port.name, column.unit_name(system)) == label
        }),
        _ => port.name == label && port.need != Need::Required,
    })
}

fn free(gives: Gives, shape: &Shape) {
    match shape {
        Shape::Record(record) => drop(Owned::of(gives, record.name)),
        Shape::Answer => drop(Owned::of(gives, "answer")),
        Shape::Numbers => {}
    }
}

#[test]
fn a_pointer_of_another_kind_is_refused_by_name() {
    let (row, system) = record_rows().find(|(row, _)| matches!(shape(row), Shape::Answer)).unwrap();
    let mut prepared = prepare(row, system, &example(row), true).unwrap();
    let answer = Owned::of(call_row(&mut prepared, 0, 0).gives, "answer");
    for record in records(&all()) {
        let mut message = Buffer::message();
        let outs =
            [vec![named("values", Arg::NULL), named("values_len", Arg::Int(0))], message.arguments("msg")]
                .concat();
        let arguments = [vec![named(record.name, answer.arg())], outs].concat();
        let status = library().call(&format!("ovs_{}_values_us", record.name), &arguments).status();
        assert_eq!(status, Code::KindMismatch.number());
        assert!(message.text().contains(&format!("{} = ovs_answer", record.name)), "{}", message.text());

        let ends = [vec![named("status", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
        let made = library()
            .call(&format!("ovs_{}_from_json", record.name), &[text("json", record.example), ends].concat());
        let made = Owned::of(made, record.name);
        let outs = [vec![named("result", Arg::Int(0)), named("count", Arg::NULL)], message.arguments("msg")]
            .concat();
        let status =
            library().call("ovs_answer_count", &[vec![named("answer", made.arg())], outs].concat()).status();
        assert_eq!(status, Code::NullPointer.number(), "the place of the count is looked at first");
        let mut count = 0;
        let outs = [
            vec![named("result", Arg::Int(0)), named("count", Arg::to(&mut count))],
            message.arguments("msg"),
        ]
        .concat();
        let status =
            library().call("ovs_answer_count", &[vec![named("answer", made.arg())], outs].concat()).status();
        assert_eq!(status, Code::KindMismatch.number());
        assert!(message.text().contains(&format!("answer = ovs_{}", record.name)), "{}", message.text());
    }
}

/// A record made from the example of its type.
fn made(record: &RecordType) -> Owned {
    let ends = [vec![named("status", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
    let arguments = [text("json", record.example), ends].concat();
    Owned::of(library().call(&format!("ovs_{}_from_json", record.name), &arguments), record.name)
}

#[test]
fn a_record_of_another_type_is_refused_by_name() {
    let (known, mut met) = (records(&all()), 0);
    for given in &known {
        let given_record = made(given);
        for taken in known.iter().filter(|taken| taken.name != given.name) {
            let (mut message, mut json) = (Buffer::message(), Buffer::of(10));
            let outs = [json.arguments("json"), vec![named("needed", Arg::NULL)], message.arguments("msg")];
            let arguments = [vec![named(taken.name, given_record.arg())], outs.concat()].concat();
            let status = library().call(&format!("ovs_{}_to_json", taken.name), &arguments).status();
            assert_eq!(status, Code::KindMismatch.number(), "{} as {}", given.name, taken.name);
            let expected = format!("KIND_MISMATCH: {} = ovs_{}:", taken.name, given.name);
            assert!(message.text().starts_with(&expected), "{}", message.text());
            met += 1;
        }
    }
    assert!(met > 0);
}

#[test]
fn words_beyond_the_last_are_refused_in_columns_and_arguments() {
    let mut met = 0;
    for (row, system) in record_rows() {
        for (place, port) in row.ports.iter().enumerate() {
            let (Kind::Choice(words), Need::Required) = (port.kind, port.need) else { continue };
            for word in [-1, i32::MIN, i32::try_from(words.len()).unwrap(), i32::MAX] {
                let mut prepared = prepare(row, system, &example(row), true).unwrap();
                prepared.replace_int(place, word);
                let called = call_row(&mut prepared, row.results.len(), 0);
                assert_eq!(called.status, Code::WordUnknown.number(), "{}", called.message);
                let expected = format!("WORD_UNKNOWN: {} = {word}:", port.name);
                assert!(called.message.starts_with(&expected), "{}", called.message);
                met += 1;
            }
        }
    }
    assert!(met > 0);
}
