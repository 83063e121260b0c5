//! Texts that go out: buffers of every length, whole characters, the bytes needed; texts that come in.

use super::c_library::{Arg, Arguments, Gives, library};
use super::c_values::{Buffer, OLD_INT, Owned, name, named, rows, scalar_rows, text};
use overslab::failure::Code;
use overslab::note::NoteCode;
use overslab::operation::{call, decode, encode};
use overslab::operations::{all, records};
use overslab::quantity::System;
use serde_json::{Map, Value as Json};
use std::ffi::c_int;

/// Calls a function that writes one text, with buffers of every length worth trying. `data` texts are refused when cut.
fn every_length(function: &str, before: &Arguments, label: &str, whole: &str, data: bool, after: &[&str]) {
    let needed_bytes = whole.len() + 1;
    let lengths = (0..=needed_bytes + 1)
        .filter(|length| *length < 12 || *length + 12 > needed_bytes || length % 97 == 0);
    for length in lengths {
        let (mut buffer, mut needed, mut message) = (Buffer::of(length), OLD_INT, Buffer::message());
        let mut arguments = before.clone();
        arguments.extend(buffer.arguments(label));
        for end in after {
            match *end {
                "needed" => arguments.push(named("needed", Arg::to(&mut needed))),
                _ => arguments.extend(message.arguments("msg")),
            }
        }
        let status = library().call(function, &arguments).status();
        let short = data && length > 0 && length < needed_bytes;
        assert_eq!(status, if short { Code::BufferShort.number() } else { 0 }, "{function} {length}");
        if length > 0 {
            let end = whole.floor_char_boundary(length - 1);
            assert_eq!(buffer.text(), whole[..end], "{function} {length}");
        } else {
            assert!(buffer.is_untouched(), "{function}");
        }
        if after.contains(&"needed") {
            assert_eq!(needed, c_int::try_from(needed_bytes).unwrap(), "{function} {length}");
        }
        if after.contains(&"msg") {
            assert_eq!(message.text().contains("BUFFER_SHORT"), short, "{function} {length}");
        }
    }
}

#[test]
fn the_library_says_its_version_and_what_numbers_mean() {
    assert_eq!(library().call("ovs_abi_version", &Vec::new()), Gives::Int(0));
    every_length("ovs_version", &Vec::new(), "text", env!("CARGO_PKG_VERSION"), true, &[]);
    every_length("ovs_status_text", &vec![named("status", Arg::Int(0))], "text", "OK: success", true, &[]);
    for code in Code::ALL {
        let status = vec![named("status", Arg::Int(code.number()))];
        every_length(
            "ovs_status_text",
            &status,
            "text",
            &format!("{}: {}", code.name(), code.meaning()),
            true,
            &[],
        );
    }
    for note in NoteCode::ALL {
        let number = vec![named("note", Arg::Int(note.number()))];
        every_length(
            "ovs_note_text",
            &number,
            "text",
            &format!("{}: {}", note.name(), note.meaning()),
            true,
            &[],
        );
    }
    for (function, argument) in [("ovs_status_text", "status"), ("ovs_note_text", "note")] {
        let mut buffer = Buffer::message();
        let unknown = [vec![named(argument, Arg::Int(-7))], buffer.arguments("text")].concat();
        assert_eq!(library().call(function, &unknown).status(), Code::OutOfRange.number());
        assert_eq!(buffer.text(), "");
    }
}

#[test]
fn messages_and_reasons_fit_any_buffer() {
    for (row, system) in scalar_rows() {
        let numbers: Vec<f64> = row.ports.iter().map(|_| f64::NAN).collect();
        let mut results = vec![0.0; row.results.len()];
        let failure = match call::scalar_in(row, system, &numbers, &mut results) {
            Err(failure) if failure.code == Code::NotFinite => failure,
            // A row whose first port is none that C hands over as a double.
            _ => continue,
        };
        let (line, sentence) = (failure.line(), failure.sentence());
        for length in 0..=line.len() + 2 {
            let mut message = Buffer::of(length);
            let mut places = vec![0.0; row.results.len()];
            let ports = row.ports.iter().map(|port| super::c_values::argument(port, system, f64::NAN));
            let outs = row
                .results
                .iter()
                .zip(&mut places)
                .map(|(port, place)| (port.unit_name(system), Arg::to(place)));
            let mut arguments: Arguments = ports.chain(outs).collect();
            arguments.push(named("notes", Arg::NULL));
            arguments.extend(message.arguments("msg"));
            assert_eq!(library().call(&name(row, system), &arguments).status(), failure.code.number());
            if length > 0 {
                assert_eq!(message.text(), line[..line.len().min(length - 1)]);
            }
            let mut text = Buffer::of(length);
            let mut needed = OLD_INT;
            let ports = row.ports.iter().map(|port| super::c_values::argument(port, system, f64::NAN));
            let mut arguments: Arguments = ports.collect();
            arguments.extend(text.arguments("text"));
            arguments.push(named("needed", Arg::to(&mut needed)));
            let status = library().call(&format!("{}_why", name(row, system)), &arguments).status();
            assert_eq!(status, failure.code.number(), "a cut reason keeps the status of the call");
            assert_eq!(needed, c_int::try_from(sentence.len() + 1).unwrap());
            if length > 0 {
                assert_eq!(text.text(), sentence[..sentence.floor_char_boundary(length - 1)]);
            }
        }
    }
}

/// What a caller wrote may hold any character; a reason that repeats it is never cut inside one.
#[test]
fn a_reason_is_cut_between_characters() {
    for (row, system) in super::c_records::record_rows() {
        let inputs = super::c_records::example(row);
        let mut prepared = super::c_request::prepare(row, system, &inputs, true).unwrap();
        prepared.options.insert("\u{df}\u{20ac}\u{1d50}\u{1f9f1}".to_owned(), Json::from(1));
        let function = format!("{}_why", name(row, system));
        let whole = {
            let (mut text, arguments) = (Buffer::of(5000), prepared.arguments());
            let arguments = [arguments, text.arguments("text"), vec![named("needed", Arg::NULL)]].concat();
            assert_eq!(library().call(&function, &arguments).status(), Code::KeyUnknown.number());
            text.text()
        };
        assert!(whole.contains('\u{1f9f1}'), "{whole}");
        for length in 1..=whole.len() + 1 {
            let (mut text, arguments) = (Buffer::of(length), prepared.arguments());
            let arguments = [arguments, text.arguments("text"), vec![named("needed", Arg::NULL)]].concat();
            library().call(&function, &arguments);
            assert_eq!(text.text(), whole[..whole.floor_char_boundary(length - 1)], "{function} {length}");
        }
    }
}

fn example(row: &overslab::operation::Operation) -> Map<String, Json> {
    serde_json::from_str(row.example).unwrap()
}

#[test]
fn any_operation_is_called_by_its_name() {
    for (row, system) in rows() {
        let values = decode::decode(row, &example(row), Some(system)).unwrap();
        let expected = encode::answer(row, &call::invoke(row, values).unwrap(), system).to_string();
        let json = Json::Object(example(row)).to_string();
        let mut before = [text("operation", row.name), text("args", &json)].concat();
        before[2].0.push_str("_json");
        every_length(
            &format!("ovs_call_{}", system.word()),
            &before,
            "out",
            &expected,
            true,
            &["needed", "msg"],
        );
    }
}

/// A call by name that is refused: its status and its message.
fn refused(system: System, operation: &[u8], args: &[u8]) -> (c_int, String) {
    let (mut out, mut message, mut needed) = (Buffer::of(20), Buffer::message(), OLD_INT);
    let arguments = [
        vec![named("operation", Arg::bytes(operation)), named("operation_len", Arg::length(operation))],
        vec![named("args_json", Arg::bytes(args)), named("args_len", Arg::length(args))],
        out.arguments("out"),
        vec![named("needed", Arg::to(&mut needed))],
        message.arguments("msg"),
    ];
    let status = library().call(&format!("ovs_call_{}", system.word()), &arguments.concat()).status();
    assert_eq!((out.text().as_str(), needed), ("", OLD_INT), "outputs changed");
    (status, message.text())
}

#[test]
fn calls_by_name_are_refused_as_the_core_refuses() {
    for (row, system) in rows() {
        for (change, code) in row.refusals {
            let mut inputs = example(row);
            inputs.extend(serde_json::from_str::<Map<_, _>>(change).unwrap());
            let json = Json::Object(inputs).to_string();
            let (status, message) = refused(system, row.name.as_bytes(), json.as_bytes());
            assert_eq!(status, code.number(), "{} {change}: {message}", row.name);
            assert!(message.starts_with(code.name()), "{message}");
        }
    }
}

#[test]
fn a_call_by_name_says_numbers_as_they_were_written() {
    for row in all() {
        for port in row.ports {
            let overslab::operation::Kind::Number(kind) = port.kind else { continue };
            let too_much = (kind.us.from_base)(kind.range.greatest) * 3.0;
            if !too_much.is_finite() {
                continue;
            }
            let written = overslab::quantity::write::shortest(too_much);
            for given in [Json::from(too_much), Json::from(format!("{written} {}", kind.us.symbol))] {
                let mut inputs = example(row);
                inputs.insert(port.name.to_owned(), given);
                let json = Json::Object(inputs).to_string();
                let (_, message) = refused(System::Us, row.name.as_bytes(), json.as_bytes());
                let expected = format!("{} = {written} {}", port.name, kind.us.symbol);
                assert!(message.contains(&expected), "{message}: expected {expected}");
            }
        }
    }
}

#[test]
fn texts_that_come_in_must_be_text() {
    let row = all()[0].name.as_bytes();
    let cases: [(&[u8], &[u8], Code); 7] = [
        (b"no such operation", b"{}", Code::OperationUnknown),
        (b"", b"{}", Code::OperationUnknown),
        (b"\xff\xfe", b"{}", Code::NotText),
        (b"a\0b", b"{}", Code::NotText),
        (row, b"\xc3", Code::NotText),
        (row, b"{\"x\": ", Code::Syntax),
        (row, b"[1, 2]", Code::KindMismatch),
    ];
    for (operation, args, code) in cases {
        let (status, message) = refused(System::Us, operation, args);
        assert_eq!(status, code.number(), "{message}");
    }
    let deep = "[".repeat(100_000);
    assert_eq!(refused(System::Us, row, deep.as_bytes()).0, Code::Syntax.number());
}

#[test]
fn records_are_written_whole() {
    for record in records(&all()) {
        let example: Json = serde_json::from_str(record.example).unwrap();
        let canonical = (record.to_json)((record.from_json)(example).unwrap().as_ref()).unwrap().to_string();
        let ends = [vec![named("status", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
        let made = [text("json", record.example), ends].concat();
        let owned = Owned::of(library().call(&format!("ovs_{}_from_json", record.name), &made), record.name);
        let before = vec![named(record.name, owned.arg())];
        every_length(
            &format!("ovs_{}_to_json", record.name),
            &before,
            "json",
            &canonical,
            true,
            &["needed", "msg"],
        );
    }
}
