//! The table as the spreadsheet tests walk it: every example as the cells that a sheet would hold.
#![expect(clippy::expect_used, reason = "a generator stops at an example that cannot be read")]

use super::Generated;
use super::c::doc;
use super::calc::names::{self, Want};
use crate::as_cells;
use overslab::failure::Code;
use overslab::operation::sheet::flatten;
use overslab::operation::{Kind, Operation, Port, TableType, Value, decode, encode, value::Columns};
use overslab::operations;
use overslab::quantity::System;
use serde_json::{Map, Value as Json, json};

/// The one file.
#[must_use]
pub fn files() -> Vec<Generated> {
    let rows: Vec<Json> = operations::all().into_iter().map(row).collect();
    let lines: Vec<String> = rows.iter().map(Json::to_string).collect();
    vec![Generated::new("tests/calc/table.json", format!("[\n{}\n]\n", lines.join(",\n")))]
}

fn row(row: &'static Operation) -> Json {
    let systems = System::ALL.map(|system| {
        let functions = Want::ALL.map(|want| names::typed(row.name, system, want));
        let arguments: Vec<String> = row.ports.iter().map(|port| port.unit_name(system)).collect();
        let results: Vec<String> = row.results.iter().map(|port| port.unit_name(system)).collect();
        let value = json!({
            "functions": functions,
            "arguments": arguments,
            "results": results,
            "cells": cells(row, system),
            "refusals": refusals(row),
        });
        (system.word().to_owned(), value)
    });
    json!({
        "name": row.name,
        "module": row.module,
        "scalar": row.is_scalar(),
        "ports": row.ports.iter().map(port).collect::<Vec<_>>(),
        "kinds_of_results": row.results.iter().map(|port| kind(&port.kind)).collect::<Vec<_>>(),
        "systems": systems.into_iter().collect::<serde_json::Map<_, _>>(),
    })
}

fn port(port: &Port) -> Json {
    json!({
        "name": port.name,
        "kind": kind(&port.kind),
        "required": port.need == overslab::operation::Need::Required,
        "words": match port.kind {
            Kind::Choice(words) => json!(words),
            _ => Json::Null,
        },
    })
}

const fn kind(kind: &Kind) -> &'static str {
    match kind {
        Kind::Number(_) => "number",
        Kind::Count(..) => "count",
        Kind::Choice(_) => "choice",
        Kind::Text => "text",
        Kind::Bytes => "bytes",
        Kind::Table(_) => "table",
        Kind::Record(_) => "record",
    }
}

/// The stated refusals as cells, with the code: those that a sheet can hold.
fn refusals(row: &Operation) -> Vec<Json> {
    let refusal = |(change, code): &(&str, Code)| {
        let mut inputs = doc::example(row);
        inputs.extend(serde_json::from_str::<Map<String, Json>>(change).expect("a change that is an object"));
        let cells = as_cells::arguments(row, &inputs)?;
        match code {
            // A number in the place of a text is a text to a sheet, and a rectangle has no columns of different lengths.
            Code::KindMismatch | Code::LengthMismatch => None,
            _ => Some(json!({ "cells": cells, "code": code.name() })),
        }
    };
    row.refusals.iter().filter_map(refusal).collect()
}

/// The inputs of the example.
#[must_use]
pub fn example(row: &Operation) -> Map<String, Json> {
    doc::example(row)
}

/// The arguments of the example as cells: a value, or rows of values; those that the example leaves out at the end are not there.
#[must_use]
pub fn cells(row: &Operation, system: System) -> Vec<Json> {
    let values = decode::decode(row, &doc::example(row), None).expect("an example that is read");
    let mut cells: Vec<Json> =
        row.ports.iter().zip(&values).map(|(port, value)| argument(port, value, system)).collect();
    while cells.last().is_some_and(Json::is_null) {
        cells.pop();
    }
    cells
}

fn argument(port: &Port, value: &Value, system: System) -> Json {
    match (&port.kind, value) {
        (Kind::Table(table), Value::Table(columns)) => table_rows(table, columns, system),
        (Kind::Record(record), Value::Record(given)) => {
            json!(flatten(&(record.to_json)(given.as_ref()).expect("a record of its type")))
        }
        _ => encode::value(port, value, system),
    }
}

fn table_rows(table: &TableType, columns: &Columns, system: System) -> Json {
    let header: Vec<Json> = table.columns.iter().map(|port| json!(port.unit_name(system))).collect();
    let row = |row: usize| -> Vec<Json> {
        let cells = table.columns.iter().zip(&columns.columns);
        cells.map(|(port, column)| encode::cell(port, column, row, system)).collect()
    };
    json!(std::iter::once(header).chain((0..columns.rows).map(row)).collect::<Vec<_>>())
}
