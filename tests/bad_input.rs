//! Bad input, each its own clear failure: the inputs of `bad_input.toml` through the engine. `bindings/c_bad_input.rs` and
//! `python/test_bad_input.py` take the same through C and Python.

pub(crate) mod cases;
mod coverage;
mod mutations;

use cases::{BadCall, BadJob, Inputs, Wanted, calls, jobs};
use overslab::failure::{Failure, Place};
use overslab::operation::{Value, call, terms};
use overslab::operations::find;
use overslab::quantity::System;
use std::fmt::Write;

#[test]
fn every_bad_call_is_refused_by_its_own_failure() {
    let mut wrong = String::new();
    for bad in calls() {
        compare(&bad.wanted, &refused(&bad), &mut wrong);
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

fn refused(bad: &BadCall) -> Result<(), Box<Failure>> {
    let row = find(&bad.operation).unwrap_or_else(|| panic!("no operation is called {}", bad.operation));
    match &bad.inputs {
        Inputs::Json(args) => terms::answer(row, args, System::Us).map(drop),
        Inputs::Flat(numbers) => {
            let mut results = vec![0.0; row.results.len()];
            call::scalar_in(row, System::Us, numbers, &mut results).map(drop)
        }
    }
}

#[test]
fn every_bad_job_is_refused_by_its_own_failure() {
    let mut wrong = String::new();
    for bad in jobs() {
        for (text, wanted) in bad.texts() {
            compare(&wanted, &refused_job(&text), &mut wrong);
        }
    }
    assert!(wrong.is_empty(), "\n{wrong}");
}

/// The job as a caller takes it: read from a text, then reported on.
fn refused_job(text: &str) -> Result<(), Box<Failure>> {
    let (read, report) = (find("job_from_text").unwrap(), find("report").unwrap());
    let made = call::invoke(read, vec![Value::Text(text.to_owned())])?;
    call::invoke(report, made.results).map(drop)
}

/// Holds a failure against what is wanted of it, word by word.
fn compare(wanted: &Wanted, found: &Result<(), Box<Failure>>, wrong: &mut String) {
    let Err(failure) = found else {
        writeln!(wrong, "{}: passes", wanted.id).unwrap();
        return;
    };
    let mut differs = |what: &str, found: &str, expected: &str| {
        writeln!(wrong, "{}: {what} is {found:?}, not {expected:?}\n    {failure}", wanted.id).unwrap();
    };
    if failure.code.name() != wanted.code {
        differs("the code", failure.code.name(), &wanted.code);
    }
    if failure.path != wanted.path {
        differs("the path", &failure.path, &wanted.path);
    }
    let place = match failure.place {
        Place::Line(line) => (Some(line), None),
        Place::Index(index) => (None, Some(index)),
        Place::Cell(..) | Place::Unknown => (None, None),
    };
    if place != (wanted.line, wanted.index) {
        differs("line and index", &format!("{place:?}"), &format!("{:?}", (wanted.line, wanted.index)));
    }
    let words = [
        ("written", &failure.written, &wanted.written),
        ("allowed", &failure.allowed, &wanted.allowed),
        ("remedy", &failure.remedy, &wanted.remedy),
    ];
    for (what, found, expected) in words {
        if !found.contains(expected) || found.is_empty() {
            differs(what, found, expected);
        }
    }
}

/// Used by the tests of the bindings.
impl BadJob {
    /// The edited job as TOML and, where the file says how, as JSON, each with what is wanted.
    pub(crate) fn texts(&self) -> Vec<(String, Wanted)> {
        let mut texts = vec![self.in_toml()];
        texts.extend(self.in_json());
        texts
    }
}
