//! Reading answers and records by place: every value is the core's, and a wrong place or kind is refused.

use super::c_library::{Arg, Arguments, library};
use super::c_records::{Shape, call_row, example, record_rows, shape, written};
use super::c_request::prepare;
use super::c_values::{Buffer, OLD_INT, OLD_NUMBER, Owned, named};
use overslab::failure::Code;
use overslab::operation::{Column, Columns, Kind, Port, Value, call, encode};
use overslab::quantity::System;
use serde_json::Value as Json;
use std::ffi::c_int;

/// What is read: the start of the functions' names, the argument, and the word for a place.
struct Holder {
    prefix: String,
    itself: (String, Arg),
    word: &'static str,
    ports: &'static [Port],
    values: Vec<Value>,
}

impl Holder {
    /// Calls a reading function; gives its status.
    fn read(&self, function: &str, places: &[(&str, c_int)], outs: Arguments) -> c_int {
        let mut arguments = vec![self.itself.clone()];
        arguments.extend(places.iter().map(|(name, place)| named(name, Arg::Int(*place))));
        arguments.extend(outs);
        let mut message = Buffer::message();
        arguments.extend(message.arguments("msg"));
        let status = library().call(&format!("{}{function}", self.prefix), &arguments).status();
        assert_eq!(message.text().is_empty(), status == 0, "{function}: {}", message.text());
        status
    }

    fn text(&self, function: &str, places: &[(&str, c_int)]) -> (c_int, String) {
        let mut text = Buffer::of(100_000);
        let outs = [text.arguments("text"), vec![named("needed", Arg::NULL)]].concat();
        (self.read(function, places, outs), text.text())
    }

    fn check(&self, fields: &str) {
        for system in System::ALL {
            self.check_values(system);
        }
        for (at, (port, value)) in self.ports.iter().zip(&self.values).enumerate() {
            let at = c_int::try_from(at).unwrap();
            if matches!(port.kind, Kind::Text | Kind::Choice(_)) {
                let expected = match encode::value(port, value, System::Us) {
                    Json::Null => (Code::KeyMissing.number(), String::new()),
                    text => (0, plain(&text)),
                };
                assert_eq!(self.text(&format!("{fields}_text"), &[(self.word, at)]), expected);
            } else if self.has(&format!("{fields}_text")) {
                let (status, _) = self.text(&format!("{fields}_text"), &[(self.word, at)]);
                let code = if matches!(value, Value::Absent) { Code::KeyMissing } else { Code::KindMismatch };
                assert_eq!(status, code.number());
            }
            if let (Kind::Table(table), Value::Table(columns)) = (&port.kind, value) {
                self.check_table(fields, at, table.columns, columns);
            }
        }
    }

    fn has(&self, function: &str) -> bool {
        library().header.function(&format!("{}{function}", self.prefix)).is_some()
    }

    fn check_values(&self, system: System) {
        let expected: Vec<f64> = self
            .ports
            .iter()
            .zip(&self.values)
            .map(|(port, value)| call::from_base(port, system, call::flat_number(value)))
            .collect();
        for room in 0..=expected.len() + 1 {
            let mut values = vec![OLD_NUMBER; room];
            let outs =
                vec![named("values", Arg::list(&mut values)), named("values_len", Arg::length(&values))];
            assert_eq!(self.read(&format!("_values_{}", system.word()), &[], outs), 0);
            for (at, value) in values.iter().enumerate() {
                let expected = expected.get(at).copied().unwrap_or(OLD_NUMBER);
                assert!(value.to_bits() == expected.to_bits() || value.is_nan() && expected.is_nan());
            }
        }
    }

    fn check_table(&self, fields: &str, at: c_int, ports: &[Port], columns: &Columns) {
        let mut rows = OLD_INT;
        let outs = vec![named("rows", Arg::to(&mut rows))];
        assert_eq!(self.read(&format!("{fields}_rows"), &[(self.word, at)], outs), 0);
        assert_eq!(rows, c_int::try_from(columns.rows).unwrap());
        for (place, (port, column)) in ports.iter().zip(&columns.columns).enumerate() {
            let place = c_int::try_from(place).unwrap();
            for system in System::ALL {
                self.check_column(fields, [at, place], port, column, columns.rows, system);
            }
            for row in 0..columns.rows {
                let places = [(self.word, at), ("column", place), ("row", c_int::try_from(row).unwrap())];
                let (status, text) = self.text(&format!("{fields}_column_text"), &places);
                let expected = match (&port.kind, encode::cell(port, column, row, System::Us)) {
                    (Kind::Text | Kind::Choice(_), Json::Null) => (Code::EmptyCell.number(), String::new()),
                    (Kind::Text | Kind::Choice(_), cell) => (0, plain(&cell)),
                    _ => (Code::KindMismatch.number(), String::new()),
                };
                assert_eq!((status, text), expected, "{} {row}", port.name);
            }
            let places = [(self.word, at), ("column", place), ("row", rows)];
            assert_eq!(self.text(&format!("{fields}_column_text"), &places).0, Code::OutOfRange.number());
        }
    }

    fn check_column(
        &self,
        fields: &str,
        [at, place]: [c_int; 2],
        port: &Port,
        column: &Column,
        rows: usize,
        system: System,
    ) {
        for room in [rows, rows + 1, rows.saturating_sub(1)] {
            let mut cells = vec![OLD_NUMBER; room];
            let outs = vec![named("cells", Arg::list(&mut cells)), named("cells_len", Arg::length(&cells))];
            let places = [(self.word, at), ("column", place)];
            let status = self.read(&format!("{fields}_column_{}", system.word()), &places, outs);
            if matches!(port.kind, Kind::Text) || room < rows {
                let code =
                    if matches!(port.kind, Kind::Text) { Code::KindMismatch } else { Code::BufferShort };
                assert_eq!(status, code.number());
                assert!(cells.iter().all(|cell| *cell == OLD_NUMBER));
                continue;
            }
            assert_eq!(status, 0);
            for (row, cell) in cells[..rows].iter().enumerate() {
                let expected = flat(port, column, row, system);
                assert!(
                    cell.to_bits() == expected.to_bits() || cell.is_nan() && expected.is_nan(),
                    "{}",
                    port.name
                );
            }
        }
    }
}

/// A cell as a double in the caller's unit.
fn flat(port: &Port, column: &Column, row: usize, system: System) -> f64 {
    match column {
        Column::Numbers(list) => call::from_base(port, system, list[row]),
        Column::Counts(list) => list[row].map_or(f64::NAN, |count| count as f64),
        Column::Choices(list) => list[row].map_or(f64::NAN, |place| place as f64),
        Column::Absent | Column::Texts(_) => f64::NAN,
    }
}

fn plain(json: &Json) -> String {
    json.as_str().expect("a text").to_owned()
}

#[test]
fn records_are_read_by_place() {
    for record in overslab::operations::records(&overslab::operations::all()) {
        let made = (record.from_json)(serde_json::from_str(record.example).unwrap()).unwrap();
        let ends = [vec![named("status", Arg::NULL)], Buffer::of(0).arguments("msg")].concat();
        let arguments = [super::c_values::text("json", record.example), ends].concat();
        let owned =
            Owned::of(library().call(&format!("ovs_{}_from_json", record.name), &arguments), record.name);
        let holder = Holder {
            prefix: format!("ovs_{}", record.name),
            itself: named(record.name, owned.arg()),
            word: "field",
            ports: record.fields,
            values: (record.get)(made.as_ref()).unwrap(),
        };
        holder.check("_field");
    }
}

#[test]
fn answers_are_read_by_place() {
    let mut met = 0;
    for (row, system) in record_rows().filter(|(row, _)| matches!(shape(row), Shape::Answer)) {
        let mut prepared = prepare(row, system, &example(row), true).unwrap();
        let expected = prepared.expected().unwrap();
        let called = call_row(&mut prepared, 0, 0);
        let owned = Owned::of(called.gives, "answer");
        let holder = Holder {
            prefix: "ovs_answer".to_owned(),
            itself: named("answer", owned.arg()),
            word: "result",
            ports: row.results,
            values: expected.results.clone(),
        };
        holder.check("");
        check_single(&holder);
        check_notes(&holder, &expected.notes);
        check_records(&holder);
        met += 1;
    }
    assert!(met > 0);
}

/// Numbers, counts and words one by one, in every place and beyond.
fn check_single(holder: &Holder) {
    let count = c_int::try_from(holder.ports.len()).unwrap();
    for place in [-1, count, c_int::MAX, c_int::MIN].into_iter().chain(0..count) {
        let held = usize::try_from(place).ok().and_then(|at| holder.ports.get(at).zip(holder.values.get(at)));
        for system in System::ALL {
            let mut number = OLD_NUMBER;
            let function = format!("_number_{}", system.word());
            let status =
                holder.read(&function, &[("result", place)], vec![named("number", Arg::to(&mut number))]);
            let expected = match held {
                Some((port, Value::Number(base))) => Ok(call::from_base(port, system, *base)),
                Some((_, Value::Absent)) => Err(Code::KeyMissing),
                Some(_) => Err(Code::KindMismatch),
                None => Err(Code::OutOfRange),
            };
            assert_eq!(status, expected.map_or_else(Code::number, |_| 0));
            assert_eq!(number.to_bits(), expected.unwrap_or(OLD_NUMBER).to_bits());
        }
        let mut whole = OLD_INT;
        let status = holder.read("_count", &[("result", place)], vec![named("count", Arg::to(&mut whole))]);
        let expected = match held.map(|(_, value)| value) {
            Some(Value::Count(count)) => Ok(c_int::try_from(*count).unwrap()),
            Some(Value::Choice(place)) => Ok(c_int::try_from(*place).unwrap()),
            Some(Value::Absent) => Err(Code::KeyMissing),
            Some(_) => Err(Code::KindMismatch),
            None => Err(Code::OutOfRange),
        };
        assert_eq!((status, whole), (expected.map_or_else(Code::number, |_| 0), expected.unwrap_or(OLD_INT)));
    }
}

fn check_notes(holder: &Holder, expected: &[overslab::note::Note]) {
    let count = c_int::try_from(expected.len()).unwrap();
    for room in 0..=expected.len() + 1 {
        let (mut notes, mut total) = (vec![OLD_INT; room], OLD_INT);
        let outs = vec![
            named("notes", Arg::list(&mut notes)),
            named("notes_len", Arg::length(&notes)),
            named("count", Arg::to(&mut total)),
        ];
        assert_eq!((holder.read("_notes", &[], outs), total), (0, count));
        for (at, note) in notes.iter().enumerate() {
            assert_eq!(*note, expected.get(at).map_or(OLD_INT, |note| note.code.number()));
        }
    }
    for (at, note) in expected.iter().enumerate() {
        let place = c_int::try_from(at).unwrap();
        assert_eq!(holder.text("_note_text", &[("note", place)]), (0, note.text.clone()));
    }
    for beyond in [-1, count] {
        assert_eq!(holder.text("_note_text", &[("note", beyond)]).0, Code::OutOfRange.number());
    }
}

/// A record out of an answer is a pointer of its own.
fn check_records(holder: &Holder) {
    for (at, (port, value)) in holder.ports.iter().zip(&holder.values).enumerate() {
        let place = c_int::try_from(at).unwrap();
        for kind in overslab::operations::records(&overslab::operations::all()) {
            let (mut status, mut message) = (OLD_INT, Buffer::message());
            let mut arguments = vec![holder.itself.clone(), named("result", Arg::Int(place))];
            arguments.push(named("status", Arg::to(&mut status)));
            arguments.extend(message.arguments("msg"));
            let gives = library().call(&format!("ovs_answer_record_{}", kind.name), &arguments);
            match (&port.kind, value) {
                (Kind::Record(held), Value::Record(record)) if held.name == kind.name => {
                    assert_eq!((status, message.text().as_str()), (0, ""));
                    let owned = Owned::of(gives, kind.name);
                    let before = vec![named(kind.name, owned.arg())];
                    let canonical = (kind.to_json)(record.as_ref()).unwrap().to_string();
                    assert_eq!(written(&format!("ovs_{}_to_json", kind.name), before, "json"), canonical);
                }
                (_, value) => {
                    let code =
                        if matches!(value, Value::Absent) { Code::KeyMissing } else { Code::KindMismatch };
                    assert!(gives.pointer().is_null());
                    assert_eq!(status, code.number());
                }
            }
        }
    }
}
