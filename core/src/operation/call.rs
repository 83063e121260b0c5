//! Calling an operation: flat numbers in a system of units, or checked values.

use super::args::Args;
use super::block::{BLOCK, Told};
use super::port::{Kind, Need, NumberKind, Port, TableType};
use super::value::{Column, Columns, Value};
use super::{Answer, Call, Operation, ScalarCall, decode, scalar};
use crate::failure::{Code, Failure, Place, Result};
use crate::note::{Note, NoteCode};
use crate::quantity::System;

/// The most ports or results of a scalar row.
pub const MOST_PORTS: usize = 16;

/// A number of the caller's system in base units; counts and choices pass as they are.
#[inline(always)]
#[must_use]
pub fn into_base(port: &Port, system: System, number: f64) -> f64 {
    match &port.kind {
        Kind::Number(kind) => (kind.unit(system).to_base)(number),
        _ => number,
    }
}

/// A number in base units in the caller's system; counts and choices pass as they are.
#[inline(always)]
#[must_use]
pub fn from_base(port: &Port, system: System, number: f64) -> f64 {
    match &port.kind {
        Kind::Number(kind) => (kind.unit(system).from_base)(number),
        _ => number,
    }
}

/// Calls a scalar operation with the caller's numbers. On failure the results stay as they were.
///
/// # Errors
/// Whatever the function refuses, in the caller's number and unit.
#[inline]
pub fn scalar_in(
    operation: &'static Operation,
    system: System,
    inputs: &[f64],
    results: &mut [f64],
) -> Result<Option<NoteCode>> {
    let mut base = [0.0; MOST_PORTS];
    match base.get_mut(..inputs.len()) {
        Some(base) => flat_call(operation, system, inputs, base, results),
        None => Err(arity(operation)),
    }
}

/// Calls a scalar operation as [`scalar_in`] does, for callers that know beforehand how many ports and results it has.
///
/// # Errors
/// Whatever the function refuses, in the caller's number and unit.
#[inline(always)]
pub fn scalar_of<const I: usize, const R: usize>(
    operation: &'static Operation,
    system: System,
    inputs: &[f64; I],
) -> Result<([f64; R], Option<NoteCode>)> {
    let (mut base, mut results) = ([0.0; I], [0.0; R]);
    let note = flat_call(operation, system, inputs, &mut base, &mut results)?;
    Ok((results, note))
}

/// One flat call; `base` is room for the inputs in base units. A [`ScalarCall`] writes its results only when it succeeds.
#[inline(always)]
fn flat_call(
    operation: &'static Operation,
    system: System,
    inputs: &[f64],
    base: &mut [f64],
    results: &mut [f64],
) -> Result<Option<NoteCode>> {
    let Call::Scalar(call) = operation.call else { return Err(wrong_call(operation)) };
    if inputs.len() != operation.ports.len() || results.len() != operation.results.len() {
        return Err(arity(operation));
    }
    for ((slot, port), &number) in base.iter_mut().zip(operation.ports).zip(inputs) {
        if let Kind::Count(least, greatest) = port.kind {
            checked_count(port, number, least, greatest)?;
        }
        *slot = into_base(port, system, number);
    }
    match (call.one)(base, results) {
        Ok(note) => {
            for (result, port) in results.iter_mut().zip(operation.results) {
                *result = from_base(port, system, *result);
            }
            Ok(note)
        }
        Err(failure) => Err(in_callers_terms(failure, operation, system, inputs)),
    }
}

/// Columns of a block of rows.
pub type Block<const N: usize> = [[f64; BLOCK]; N];

/// Calls a scalar operation for the first rows of a block with the caller's numbers: for each what [`scalar_of`] gives. Failures come
/// with NaN in every result of the row, and in no order.
///
/// # Errors
/// Where the operation is no scalar one or has another number of ports or results.
pub fn block_of<const I: usize, const R: usize>(
    operation: &'static Operation,
    system: System,
    inputs: &Block<I>,
    results: &mut Block<R>,
    rows: usize,
    told: Told<'_>,
) -> Result<()> {
    let Call::Scalar(call) = operation.call else { return Err(wrong_call(operation)) };
    if I != operation.ports.len() || R != operation.results.len() {
        return Err(arity(operation));
    }
    let rows = rows.min(BLOCK);
    let (mut base, mut found) = ([[0.0; BLOCK]; I], [[0.0; BLOCK]; R]);
    let mut miscounted: Vec<(usize, Box<Failure>)> = Vec::new();
    for ((given, column), port) in inputs.iter().zip(&mut base).zip(operation.ports) {
        let (given, column) = (&given[..rows], &mut column[..rows]);
        match &port.kind {
            Kind::Number(kind) => (kind.unit(system).all_to_base)(given, column),
            Kind::Count(least, greatest) => {
                column.copy_from_slice(given);
                let checked = given.iter().map(|&number| checked_count(port, number, *least, *greatest));
                let refused = checked.enumerate().filter_map(|(row, checked)| Some((row, checked.err()?)));
                miscounted.extend(refused);
            }
            _ => column.copy_from_slice(given),
        }
    }
    let columns = base.each_ref().map(|column| &column[..rows]);
    let mut outputs = found.each_mut().map(|column| &mut column[..rows]);
    (call.block)(&columns, &mut outputs, &mut |row, what| {
        let numbers = inputs.each_ref().map(|column| column[row]);
        if !miscounted.iter().any(|(bad, _)| *bad == row) {
            told(row, what.map_err(|failure| in_callers_terms(failure, operation, system, &numbers)));
        }
    });
    for ((result, column), port) in results.iter_mut().zip(&found).zip(operation.results) {
        let (result, column) = (&mut result[..rows], &column[..rows]);
        match &port.kind {
            Kind::Number(kind) => (kind.unit(system).all_from_base)(column, result),
            _ => result.copy_from_slice(column),
        }
    }
    // A row is refused once, for the first of its counts.
    miscounted.sort_by_key(|(row, _)| *row);
    miscounted.dedup_by_key(|(row, _)| *row);
    for (row, failure) in miscounted {
        results.iter_mut().for_each(|column| column[row] = f64::NAN);
        told(row, Err(failure));
    }
    Ok(())
}

fn checked_count(port: &Port, number: f64, least: i64, greatest: i64) -> Result<()> {
    let count = scalar::whole(number).map_err(|failure| failure.under(port.name))?;
    check_count(port.name, count, least, greatest)
}

#[cold]
fn in_callers_terms(
    failure: Box<Failure>,
    operation: &Operation,
    system: System,
    inputs: &[f64],
) -> Box<Failure> {
    let Some(place) = operation.port(&failure.path) else { return failure };
    match (&operation.ports[place].kind, inputs.get(place)) {
        (Kind::Number(kind), Some(&number)) => failure.in_unit(number, kind.unit(system)),
        _ => failure,
    }
}

#[cold]
fn arity(operation: &Operation) -> Box<Failure> {
    Failure::new(Code::LengthMismatch, operation.name)
        .allowed(format!("{} inputs and {} results", operation.ports.len(), operation.results.len()))
        .remedy("pass every port")
}

#[cold]
fn wrong_call(operation: &Operation) -> Box<Failure> {
    Failure::new(Code::KindMismatch, operation.name)
        .allowed("a scalar operation")
        .remedy("call it with values")
}

/// Calls any operation with values in base units, after checking them.
///
/// # Errors
/// A missing or misfit value, a number outside its range, whatever the function refuses.
pub fn invoke(operation: &'static Operation, mut values: Vec<Value>) -> Result<Answer> {
    values.resize_with(operation.ports.len().max(values.len()), Value::default);
    let taken = prepare(operation, &mut values)?;
    let mut answer = match operation.call {
        Call::Scalar(call) => scalar_values(operation, call, &values)?,
        Call::Record(call) => call(&Args::new(operation, &values, &taken))?,
    };
    if answer.results.len() != operation.results.len() {
        return Err(Failure::new(Code::Internal, operation.name).remedy("report this fault"));
    }
    answer.taken = taken;
    Ok(answer)
}

fn scalar_values(operation: &'static Operation, call: ScalarCall, values: &[Value]) -> Result<Answer> {
    let numbers: Vec<f64> = values.iter().map(flat_number).collect();
    let mut flat = [0.0; MOST_PORTS];
    let flat = &mut flat[..operation.results.len().min(MOST_PORTS)];
    let note = (call.one)(&numbers, flat)?;
    let results: Vec<Value> = operation
        .results
        .iter()
        .zip(flat.iter())
        .map(|(port, &number)| value_of(&port.kind, number))
        .collect();
    Ok(Answer::of(results).with_notes(note.map(|code| Note::new(code, code.meaning()))))
}

/// The flat number behind a number, a count or a choice; NaN for anything else.
#[must_use]
pub fn flat_number(value: &Value) -> f64 {
    match value {
        Value::Number(number) => *number,
        Value::Count(count) => *count as f64,
        Value::Choice(place) => *place as f64,
        _ => f64::NAN,
    }
}

/// The value of a port of that kind behind a flat number.
#[must_use]
pub fn value_of(kind: &Kind, number: f64) -> Value {
    match kind {
        Kind::Count(..) => scalar::whole(number).map_or(Value::Absent, Value::Count),
        Kind::Choice(_) => Value::Choice(number as usize),
        _ => Value::Number(number),
    }
}

/// Fills in fallbacks and checks every value against its port; gives the places of the fallbacks taken.
fn prepare(operation: &'static Operation, values: &mut [Value]) -> Result<Vec<usize>> {
    let mut taken = Vec::new();
    for (place, port) in operation.ports.iter().enumerate() {
        let value = &mut values[place];
        if matches!(value, Value::Absent) {
            match port.need {
                Need::Required => return Err(missing(port)),
                Need::Optional => continue,
                Need::Fallback { value: words, .. } => {
                    *value = decode::from_words(port, words)?;
                    taken.push(place);
                }
            }
        }
        check_value(port, value)?;
    }
    Ok(taken)
}

/// The failure for a value that was not given.
#[must_use]
pub fn missing(port: &Port) -> Box<Failure> {
    Failure::new(Code::KeyMissing, port.name)
        .written("nothing")
        .allowed(port.meaning)
        .remedy(format!("give {}", port.name))
}

fn check_value(port: &Port, value: &Value) -> Result<()> {
    match (&port.kind, value) {
        (Kind::Number(kind), Value::Number(base)) => check_number(port.name, kind, *base),
        (Kind::Count(least, greatest), Value::Count(count)) => {
            check_count(port.name, *count, *least, *greatest)
        }
        (Kind::Choice(words), Value::Choice(place)) if *place < words.len() => Ok(()),
        (Kind::Choice(words), Value::Choice(place)) => Err(Failure::new(Code::WordUnknown, port.name)
            .written(place.to_string())
            .allowed(format!("a whole number from 0 to {}", words.len().saturating_sub(1)))
            .remedy(format!("the numbers stand for: {}", words.join(", ")))),
        (Kind::Text, Value::Text(_)) | (Kind::Bytes, Value::Bytes(_)) => Ok(()),
        (Kind::Table(table), Value::Table(columns)) => {
            check_table(table, columns).map_err(|f| f.under(port.name))
        }
        (Kind::Record(record), Value::Record(given)) if (record.is)(given.as_ref()) => Ok(()),
        _ => Err(Failure::new(Code::KindMismatch, port.name)
            .written(value.kind_word())
            .allowed(port.kind.word())
            .remedy("give the kind of value named")),
    }
}

fn check_number(path: &str, kind: &NumberKind, base: f64) -> Result<()> {
    if kind.range.allows(base) {
        Ok(())
    } else {
        Err(Failure::refused(path, base, kind.range, kind.quantity))
    }
}

/// Refuses a whole number outside its bounds.
///
/// # Errors
/// `OUT_OF_RANGE`.
pub fn check_count(path: &str, count: i64, least: i64, greatest: i64) -> Result<()> {
    if (least..=greatest).contains(&count) {
        return Ok(());
    }
    Err(Failure::new(Code::OutOfRange, path)
        .written(count.to_string())
        .allowed(format!("a whole number from {least} to {greatest}"))
        .remedy("check the count"))
}

fn check_table(table: &TableType, columns: &Columns) -> Result<()> {
    if columns.rows == 0 && table.least_rows > 0 {
        let rows = if table.least_rows == 1 { "row" } else { "rows, each" };
        return Err(Failure::new(Code::EmptyList, "")
            .written("no rows")
            .allowed(format!("at least {} {rows}: {}", table.least_rows, table.meaning))
            .remedy("give the rows"));
    }
    for (place, port) in table.columns.iter().enumerate() {
        let column = columns.columns.get(place).unwrap_or(&Column::Absent);
        check_column(port, column, columns.rows)?;
    }
    Ok(())
}

fn check_column(port: &Port, column: &Column, rows: usize) -> Result<()> {
    let optional = !matches!(port.need, Need::Required);
    if matches!(column, Column::Absent) {
        return if optional || rows == 0 { Ok(()) } else { Err(missing(port)) };
    }
    if column.len() != rows {
        return Err(Failure::new(Code::LengthMismatch, port.name)
            .written(format!("{} rows", column.len()))
            .allowed(format!("{rows} rows, as the other columns"))
            .remedy("give every column the same rows"));
    }
    match (&port.kind, column) {
        (Kind::Number(kind), Column::Numbers(list)) => check_numbers(port, kind, list, optional),
        (Kind::Count(least, greatest), Column::Counts(list)) => {
            every(list, port, |&count| check_count("", count, *least, *greatest))
        }
        (Kind::Choice(_), Column::Choices(list)) => every(list, port, |_| Ok(())),
        (Kind::Text, Column::Texts(list)) => every(list, port, |_| Ok(())),
        _ => Err(Failure::new(Code::KindMismatch, port.name)
            .allowed(port.kind.word())
            .remedy("give the kind of value named")),
    }
}

fn check_numbers(port: &Port, kind: &NumberKind, list: &[f64], optional: bool) -> Result<()> {
    let bad = list.iter().position(|&base| !(kind.range.allows(base) || optional && base.is_nan()));
    match bad {
        None => Ok(()),
        Some(row) => {
            Err(Failure::refused(port.name, list[row], kind.range, kind.quantity).at(Place::Index(row)))
        }
    }
}

/// Every given cell passes the check, and a required column has no empty cell.
fn every<T>(list: &[Option<T>], port: &Port, check: impl Fn(&T) -> Result<()>) -> Result<()> {
    for (row, cell) in list.iter().enumerate() {
        let checked = match cell {
            Some(value) => check(value),
            None if matches!(port.need, Need::Required) => Err(empty(port)),
            None => Ok(()),
        };
        checked.map_err(|failure| failure.under(port.name).at(Place::Index(row)))?;
    }
    Ok(())
}

/// The failure for an empty cell.
#[must_use]
pub fn empty(port: &Port) -> Box<Failure> {
    Failure::new(Code::EmptyCell, "").written("an empty cell").allowed(port.meaning).remedy("fill the cell")
}

impl Kind {
    /// The kind in words, for messages.
    #[must_use]
    pub fn word(&self) -> String {
        match self {
            Self::Number(kind) => kind.quantity.with_article(),
            Self::Count(least, greatest) => format!("a whole number from {least} to {greatest}"),
            Self::Choice(words) => format!("one of {}", words.join(", ")),
            Self::Text => "a text".to_owned(),
            Self::Bytes => "the text of a file, or base64: and its bytes in base64".to_owned(),
            Self::Table(table) => format!("a table of {}", table.name),
            Self::Record(record) => format!("a {} record", record.name),
        }
    }
}
