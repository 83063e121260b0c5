//! A refused number said as the caller gave it: the same number, in the unit of its port.

use overslab::failure::{Failure, Place};
use overslab::operation::{Kind, Operation, Port};
use overslab::quantity::System;
use serde_json::{Map, Value as Json};

/// How a caller wrote a number.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Written {
    /// As a bare number in the unit of the port.
    Number(f64),
    /// As a text with its unit.
    Text(String),
}

/// What the caller gave, looked up by its place.
pub(crate) trait AsGiven {
    /// What was given for the port, or for one cell of it: the column and the row.
    fn written(&self, port: usize, cell: Option<(usize, usize)>) -> Option<Written>;
}

/// The failure in the caller's own number and unit, where it is about a number of a port.
pub(crate) fn in_callers_terms(
    failure: Box<Failure>,
    row: &Operation,
    system: System,
    given: &dyn AsGiven,
) -> Box<Failure> {
    let Some(refused) = failure.refused else { return failure };
    let Some((place, cell)) = place_of(&failure, row) else { return failure };
    let Some(Kind::Number(kind)) = port_at(row, place, cell).map(|port| port.kind) else { return failure };
    let unit = kind.unit(system);
    match given.written(place, cell) {
        Some(Written::Number(number)) => failure.in_unit(number, unit),
        Some(Written::Text(text)) => failure.in_unit((unit.from_base)(refused.base), unit).written(text),
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
pub(crate) struct InJson<'a>(pub(crate) &'static Operation, pub(crate) &'a Map<String, Json>);

impl AsGiven for InJson<'_> {
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
