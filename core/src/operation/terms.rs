//! A refused number said as the caller gave it: the same number, in the unit of its port.

use super::{Answer, Kind, Operation, Port, call, decode};
use crate::failure::{Failure, Place, Result};
use crate::quantity::{System, read_kind};
use serde_json::{Map, Value as Json};

/// How a caller wrote a number.
#[derive(Clone, Debug, PartialEq)]
pub enum Written {
    /// As a bare number in the unit of the port.
    Number(f64),
    /// As a text with its unit.
    Text(String),
}

/// What the caller gave, looked up by its place.
pub trait AsGiven {
    /// What was given for the port, or for one cell of it: the column and the row.
    fn written(&self, port: usize, cell: Option<(usize, usize)>) -> Option<Written>;

    /// The failure as it was written deeper inside: in a record.
    #[must_use]
    fn within(&self, failure: Box<Failure>) -> Box<Failure> {
        failure
    }
}

/// A refused number as the text of its quantity stands in a tree, in the unit of that text.
#[must_use]
pub fn as_written(failure: Box<Failure>, tree: &Json) -> Box<Failure> {
    let Some(refused) = failure.refused else { return failure };
    let pointer = format!("/{}", failure.path.replace(['.', '['], "/").replace(']', ""));
    let text = tree.pointer(&pointer).and_then(Json::as_str);
    let read = text.and_then(|text| Some((text, read_kind(text, refused.quantity, None).ok()?)));
    match read {
        Some((text, reading)) => failure.in_unit(reading.number, reading.unit).written(text.trim()),
        None => failure,
    }
}

/// Calls an operation with a JSON object of its ports. A bare number is in the unit of its port under `system`; a failure
/// tells it as it was written.
///
/// # Errors
/// What the inputs or the operation are refused for.
pub fn answer(row: &'static Operation, args: &Map<String, Json>, system: System) -> Result<Answer> {
    decode::decode(row, args, Some(system))
        .and_then(|values| call::invoke(row, values))
        .map_err(|failure| in_callers_terms(failure, row, system, &InJson(row, args)))
}

/// The failure in the caller's own number and unit, where it is about a number of a port.
#[must_use]
pub fn in_callers_terms(
    failure: Box<Failure>,
    row: &Operation,
    system: System,
    given: &dyn AsGiven,
) -> Box<Failure> {
    let Some(refused) = failure.refused else { return failure };
    let Some((place, cell)) = place_of(&failure, row) else { return given.within(failure) };
    let Some(Kind::Number(kind)) = port_at(row, place, cell).map(|port| port.kind) else { return failure };
    let unit = kind.unit(system);
    match given.written(place, cell) {
        Some(Written::Number(number)) => failure.in_unit(number, unit),
        Some(Written::Text(text)) => {
            let unit = read_kind(&text, kind.quantity, None).map_or(unit, |reading| reading.unit);
            failure.in_unit((unit.from_base)(refused.base), unit).written(text)
        }
        None => failure.in_unit((unit.from_base)(refused.base), unit),
    }
}

/// The port that a failure names, and the cell where the port is a table.
fn place_of(failure: &Failure, row: &Operation) -> Option<(usize, Option<(usize, usize)>)> {
    if let Some(place) = row.port(&failure.path) {
        return Some((place, None));
    }
    let (table, column) = failure.path.split_once('.')?;
    let place = row.port(table)?;
    let (Kind::Table(table), Place::Index(at)) = (row.ports.get(place)?.kind, failure.place) else {
        return None;
    };
    let column = table.columns.iter().position(|port| port.name == column)?;
    Some((place, Some((column, at))))
}

fn port_at(row: &Operation, place: usize, cell: Option<(usize, usize)>) -> Option<&'static Port> {
    let port = row.ports.get(place)?;
    match (cell, port.kind) {
        (Some((column, _)), Kind::Table(table)) => table.columns.get(column),
        (None, _) => Some(port),
        _ => None,
    }
}

/// Inputs given as one JSON object.
#[derive(Clone, Copy, Debug)]
pub struct InJson<'a>(pub &'static Operation, pub &'a Map<String, Json>);

impl AsGiven for InJson<'_> {
    fn within(&self, failure: Box<Failure>) -> Box<Failure> {
        let port = failure.path.split(['.', '[']).next().unwrap_or_default();
        match self.1.get(port) {
            Some(record) => {
                let whole = Map::from_iter([(port.to_owned(), record.clone())]);
                as_written(failure, &Json::Object(whole))
            }
            None => failure,
        }
    }

    fn written(&self, port: usize, cell: Option<(usize, usize)>) -> Option<Written> {
        let port = self.0.ports.get(port)?;
        let value = self.1.get(port.name)?;
        let value = match (cell, port.kind) {
            (Some((column, at)), Kind::Table(table)) => {
                json_cell(value, table.columns.get(column)?.name, at)?
            }
            _ => value,
        };
        match value {
            Json::Number(number) => number.as_f64().map(Written::Number),
            Json::String(text) => Some(Written::Text(text.clone())),
            _ => None,
        }
    }
}

/// One cell of a table given as columns or as rows.
fn json_cell<'a>(table: &'a Json, column: &str, at: usize) -> Option<&'a Json> {
    match table {
        Json::Object(columns) => columns.get(column)?.get(at),
        Json::Array(rows) => rows.get(at)?.get(column),
        _ => None,
    }
}
