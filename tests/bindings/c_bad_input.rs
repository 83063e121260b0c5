//! Bad input through C: the inputs of `bad_input.toml` are refused by the same codes, and the message names the same place.

use super::c_library::{Arg, Gives, library};
use super::c_values::{Buffer, OLD_INT, Owned, Results, argument, name, named, text};
use crate::bad_input::cases::{Inputs, Wanted, calls, jobs};
use overslab::operations::find;
use overslab::quantity::System;
use std::fmt::Write;

/// What a call gave: its status, and its message.
type Told = (i32, String);

#[test]
fn every_bad_call_is_refused_by_the_same_code() {
    let mut wrong = String::new();
    for bad in calls() {
        let told = match &bad.inputs {
            Inputs::Json(args) => {
                let args = serde_json::Value::Object(args.clone()).to_string();
                by_name(&bad.operation, &args)
            }
            Inputs::Flat(numbers) => flat(&bad.operation, numbers),
        };
        compare(&bad.wanted, &told, &mut wrong);
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

fn by_name(operation: &str, args: &str) -> Told {
    let (mut out, mut needed, mut message) = (Buffer::of(100_000), OLD_INT, Buffer::message());
    let mut arguments = [text("operation", operation), json(args), out.arguments("out")].concat();
    arguments.push(named("needed", Arg::to(&mut needed)));
    arguments.extend(message.arguments("msg"));
    let status = library().call("ovs_call_us", &arguments).status();
    assert!(out.is_untouched() || status == 0 || out.text().is_empty(), "an output was written");
    (status, message.text())
}

fn flat(operation: &str, numbers: &[f64]) -> Told {
    let row = find(operation).unwrap();
    let (mut results, mut notes, mut message) = (Results::of(row, 1), OLD_INT, Buffer::message());
    let inputs = row.ports.iter().zip(numbers).map(|(port, number)| argument(port, System::Us, *number));
    let arguments = [
        inputs.collect(),
        results.arguments(row, System::Us),
        vec![named("notes", Arg::to(&mut notes))],
        message.arguments("msg"),
    ];
    let status = library().call(&name(row, System::Us), &arguments.concat()).status();
    assert!(results.is_untouched() && notes == OLD_INT, "an output was written");
    (status, message.text())
}

#[test]
fn every_bad_job_is_refused_by_the_same_code() {
    let mut wrong = String::new();
    for (job, wanted) in jobs().iter().flat_map(crate::bad_input::cases::BadJob::texts) {
        compare(&wanted, &job_call(&job), &mut wrong);
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

/// The inputs as ovs_call_us takes them.
fn json(args: &str) -> super::c_library::Arguments {
    vec![named("args_json", Arg::bytes(args.as_bytes())), named("args_len", Arg::length(args.as_bytes()))]
}

/// The job as a C program takes it: read from a text, then reported on.
fn job_call(job: &str) -> Told {
    let (mut status, mut message) = (OLD_INT, Buffer::message());
    let mut arguments = text("text", job);
    arguments.extend(after(&mut status, &mut message));
    let read = library().call("ovs_job_from_text_us", &arguments);
    if status != 0 {
        assert_eq!(read, Gives::Pointer(std::ptr::null_mut()));
        return (status, message.text());
    }
    let read = Owned::of(read, "job");
    let (mut status, mut message) = (OLD_INT, Buffer::message());
    let mut arguments = vec![named("job", read.arg()), named("survey", Arg::NULL)];
    arguments.extend(after(&mut status, &mut message));
    let answer = library().call("ovs_report_us", &arguments);
    if status == 0 {
        drop(Owned::of(answer, "answer"));
    }
    (status, message.text())
}

/// The arguments behind the inputs of a record row without options.
fn after(status: &mut i32, message: &mut Buffer) -> super::c_library::Arguments {
    let mut arguments = vec![
        named("options_json", Arg::NULL),
        named("options_len", Arg::Int(0)),
        named("status", Arg::to(status)),
        named("notes", Arg::NULL),
        named("notes_len", Arg::Int(0)),
    ];
    arguments.extend(message.arguments("msg"));
    arguments
}

/// The message is one line: the code's name, the path, the line; and what there is room for.
fn compare(wanted: &Wanted, (status, message): &Told, wrong: &mut String) {
    let code = overslab::failure::Code::from_number(*status).map_or("OK", |code| code.name());
    let mut start = format!("{}: {}", wanted.code, wanted.path);
    if let Some(line) = wanted.line {
        write!(start, " (line {line})").unwrap();
    }
    if let Some(index) = wanted.index {
        write!(start, " (element {index}, the first is 0)").unwrap();
    }
    if code != wanted.code || !message.starts_with(&start) || message.len() > 200 || !message.is_ascii() {
        writeln!(wrong, "{}: {code}, not {}: {message:?} should start {start:?}", wanted.id, wanted.code)
            .unwrap();
    }
}
