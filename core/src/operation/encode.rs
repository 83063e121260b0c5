//! From the answer of an operation to JSON.

use super::Operation;
use super::answer::Answer;
use super::port::{Kind, Need, Port};
use super::value::{Column, Columns, Value};
use crate::quantity::System;
use serde_json::{Map, Value as Json, json};

impl Port {
    /// The port's name with its unit: `drop_in`; other kinds keep their name.
    #[must_use]
    pub fn unit_name(&self, system: System) -> String {
        match &self.kind {
            Kind::Number(kind) => format!("{}_{}", self.name, kind.unit(system).suffix),
            _ => self.name.to_owned(),
        }
    }
}

/// The answer as JSON: results by name and unit, notes, basis, what was taken.
#[must_use]
pub fn answer(operation: &Operation, answer: &Answer, system: System) -> Json {
    let results: Map<String, Json> = operation
        .results
        .iter()
        .zip(&answer.results)
        .map(|(port, result)| (port.unit_name(system), value(port, result, system)))
        .collect();
    json!({
        "results": results,
        "notes": notes(&answer.notes),
        "basis": answer.basis.iter().map(|(place, basis)| json!({
            "result": operation.results.get(*place).map_or("", |port| port.name),
            "basis": basis.name(),
            "says": basis.line(),
        })).collect::<Vec<_>>(),
        "taken": answer.taken.iter().filter_map(|&place| taken(operation, place)).collect::<Vec<_>>(),
    })
}

/// Notes as JSON.
#[must_use]
pub fn notes(notes: &[crate::note::Note]) -> Json {
    notes
        .iter()
        .map(|note| json!({ "code": note.code.number(), "name": note.code.name(), "text": note.text }))
        .collect()
}

fn taken(operation: &Operation, place: usize) -> Option<Json> {
    let port = operation.ports.get(place)?;
    match port.need {
        Need::Fallback { value, why } => Some(json!({ "port": port.name, "value": value, "why": why })),
        _ => None,
    }
}

/// One value as JSON: a number in the unit of its port, a word, a text, rows, a record's canonical form.
#[must_use]
pub fn value(port: &Port, value: &Value, system: System) -> Json {
    match (&port.kind, value) {
        (Kind::Number(kind), Value::Number(base)) => number((kind.unit(system).from_base)(*base)),
        (_, Value::Count(count)) => json!(count),
        (Kind::Choice(words), Value::Choice(place)) => json!(words.get(*place)),
        (_, Value::Text(text)) => json!(text),
        (_, Value::Bytes(bytes)) => json!(bytes.to_text()),
        (Kind::Table(table), Value::Table(columns)) => rows(table.columns, columns, system),
        (Kind::Record(record), Value::Record(given)) => {
            (record.to_json)(given.as_ref()).unwrap_or(Json::Null)
        }
        _ => Json::Null,
    }
}

fn number(number: f64) -> Json {
    serde_json::Number::from_f64(number).map_or(Json::Null, Json::Number)
}

fn rows(ports: &[Port], columns: &Columns, system: System) -> Json {
    let row = |row: usize| -> Json {
        ports
            .iter()
            .zip(&columns.columns)
            .map(|(port, column)| (port.unit_name(system), cell(port, column, row, system)))
            .collect::<Map<_, _>>()
            .into()
    };
    (0..columns.rows).map(row).collect()
}

/// One cell of a table as JSON; an empty one is null.
#[must_use]
pub fn cell(port: &Port, column: &Column, row: usize, system: System) -> Json {
    let given = match column {
        Column::Absent => None,
        Column::Numbers(list) => list.get(row).filter(|base| !base.is_nan()).map(|&base| Value::Number(base)),
        Column::Counts(list) => list.get(row).copied().flatten().map(Value::Count),
        Column::Choices(list) => list.get(row).copied().flatten().map(Value::Choice),
        Column::Texts(list) => list.get(row).cloned().flatten().map(Value::Text),
    };
    given.map_or(Json::Null, |given| value(port, &given, system))
}
