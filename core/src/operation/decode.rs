//! From JSON to the values of an operation's ports.

use super::bytes::Bytes;
use super::call::{empty, missing};
use super::choice::place_of;
use super::port::{Kind, Need, NumberKind, Port, TableType};
use super::value::{Column, Columns, Value};
use super::{Operation, scalar};
use crate::failure::{Code, Failure, Place, Result, nearest};
use crate::quantity::{System, read_kind};
use serde_json::{Map, Value as Json};

/// Reads the inputs of an operation from a JSON object. A number without a unit is in the unit of its port under `system`,
/// and a failure without one.
///
/// # Errors
/// An unknown key, a value of another kind, an unreadable quantity.
pub fn decode(operation: &Operation, json: &Map<String, Json>, system: Option<System>) -> Result<Vec<Value>> {
    let mut values = vec![Value::Absent; operation.ports.len()];
    for (key, json) in json {
        let Some(place) = operation.port(key) else {
            return Err(unknown_key(key, operation.ports.iter().map(|port| port.name)));
        };
        values[place] = value(&operation.ports[place], json, system).map_err(|failure| failure.under(key))?;
    }
    Ok(values)
}

/// The failure for a key that is not known, with the nearest known one.
#[must_use]
pub fn unknown_key<'a>(key: &str, known: impl Iterator<Item = &'a str> + Clone) -> Box<Failure> {
    let remedy = match nearest(key, known.clone()) {
        Some(near) => format!("did you mean {near}?"),
        None => "remove it".to_owned(),
    };
    Failure::new(Code::KeyUnknown, key)
        .written(key)
        .allowed(known.collect::<Vec<_>>().join(", "))
        .remedy(remedy)
}

/// The value of a port from the words of its fallback.
///
/// # Errors
/// As for any text; a test reads every fallback of the table.
pub fn from_words(port: &Port, words: &str) -> Result<Value> {
    let json = match port.kind {
        Kind::Count(..) => words.parse::<i64>().map_or(Json::String(words.to_owned()), Json::from),
        Kind::Table(_) | Kind::Record(_) => serde_json::from_str(words).unwrap_or(Json::Null),
        _ => Json::String(words.to_owned()),
    };
    value(port, &json, None).map_err(|failure| failure.under(port.name))
}

/// One value. The path of a failure is relative to the port.
///
/// # Errors
/// As [`decode`].
pub fn value(port: &Port, json: &Json, system: Option<System>) -> Result<Value> {
    match (&port.kind, json) {
        (_, Json::Null) => Ok(Value::Absent),
        (Kind::Number(kind), _) => number(kind, json, system).map(Value::Number),
        (Kind::Count(..), _) => count(json).map(Value::Count),
        (Kind::Choice(words), _) => choice(words, json).map(Value::Choice),
        (Kind::Text, Json::String(text)) => Ok(Value::Text(text.clone())),
        (Kind::Bytes, Json::String(text)) => Bytes::from_text(text).map(Value::Bytes),
        (Kind::Table(table), _) => self::table(table, json, system).map(Value::Table),
        (Kind::Record(record), Json::Object(_)) => (record.from_json)(json.clone()).map(Value::Record),
        _ => Err(mismatch(&port.kind, json)),
    }
}

fn mismatch(kind: &Kind, json: &Json) -> Box<Failure> {
    Failure::new(Code::KindMismatch, "")
        .written(short(json))
        .allowed(kind.word())
        .remedy("give the kind of value named")
}

fn short(json: &Json) -> String {
    let text = json.to_string();
    match text.char_indices().nth(40) {
        Some((end, _)) => format!("{}...", &text[..end]),
        None => text,
    }
}

fn number(kind: &NumberKind, json: &Json, system: Option<System>) -> Result<f64> {
    let unit = system.map(|system| kind.unit(system));
    match json {
        // A text says its own unit: a bare number in a text is not taken by the system's.
        Json::String(text) => read_kind(text, kind.quantity, None).map(|reading| reading.base),
        Json::Number(number) => match (unit, number.as_f64()) {
            (Some(unit), Some(number)) => Ok((unit.to_base)(number)),
            _ => read_kind(&number.to_string(), kind.quantity, None).map(|reading| reading.base),
        },
        _ => Err(mismatch(&Kind::Number(*kind), json)),
    }
}

fn count(json: &Json) -> Result<i64> {
    match json {
        Json::Number(number) => match (number.as_i64(), number.as_f64()) {
            (Some(count), _) => Ok(count),
            (None, Some(number)) => scalar::whole(number),
            _ => scalar::whole(f64::NAN),
        },
        _ => Err(Failure::new(Code::NotACount, "")
            .written(short(json))
            .allowed("a whole number")
            .remedy("give one")),
    }
}

fn choice(words: &[&str], json: &Json) -> Result<usize> {
    match json {
        Json::String(word) => place_of(word, words, ""),
        _ => Err(Failure::new(Code::WordUnknown, "")
            .written(short(json))
            .allowed(words.join(", "))
            .remedy("give a word")),
    }
}

/// A table: an object of columns, or a list of rows.
fn table(table: &TableType, json: &Json, system: Option<System>) -> Result<Columns> {
    match json {
        Json::Object(columns) => by_columns(table, columns, system),
        Json::Array(rows) => by_rows(table, rows, system),
        _ => Err(Failure::new(Code::KindMismatch, "")
            .written(short(json))
            .allowed(format!("a table of {}: columns or rows", table.name))
            .remedy("give a list of rows or an object of columns")),
    }
}

fn by_columns(table: &TableType, json: &Map<String, Json>, system: Option<System>) -> Result<Columns> {
    if let Some(key) = json.keys().find(|key| !table.columns.iter().any(|port| port.name == key.as_str())) {
        return Err(unknown_key(key, table.columns.iter().map(|port| port.name)));
    }
    let mut columns = Columns::default();
    for port in table.columns {
        let column = match json.get(port.name) {
            None | Some(Json::Null) => Column::Absent,
            Some(Json::Array(cells)) => {
                column(port, cells.iter(), system).map_err(|failure| failure.under(port.name))?
            }
            Some(other) => return Err(mismatch(&port.kind, other).under(port.name)),
        };
        columns.rows = columns.rows.max(column.len());
        columns.columns.push(column);
    }
    Ok(columns)
}

fn by_rows(table: &TableType, rows: &[Json], system: Option<System>) -> Result<Columns> {
    for (index, row) in rows.iter().enumerate() {
        let path = format!("[{index}]");
        let Json::Object(row) = row else {
            return Err(Failure::new(Code::KindMismatch, path)
                .written(short(row))
                .allowed(format!("an object: {}", table.meaning))
                .remedy("give each row as an object"));
        };
        if let Some(key) = row.keys().find(|key| !table.columns.iter().any(|port| port.name == key.as_str()))
        {
            return Err(unknown_key(key, table.columns.iter().map(|port| port.name)).under(&path));
        }
    }
    let mut columns = Columns { rows: rows.len(), columns: Vec::new() };
    for port in table.columns {
        let cells = rows.iter().map(|row| row.get(port.name).unwrap_or(&Json::Null));
        let absent = cells.clone().all(Json::is_null);
        let column = match (absent, port.need) {
            (true, Need::Required) if !rows.is_empty() => return Err(missing(port)),
            (true, _) => Column::Absent,
            (false, _) => column(port, cells, system).map_err(|failure| failure.under(port.name))?,
        };
        columns.columns.push(column);
    }
    Ok(columns)
}

/// A column from its cells; a null is an empty cell.
fn column<'a>(port: &Port, cells: impl Iterator<Item = &'a Json>, system: Option<System>) -> Result<Column> {
    let required = matches!(port.need, Need::Required);
    let given = cells.enumerate().map(|(row, cell)| match cell {
        Json::Null if required => Err(empty(port).at(Place::Index(row))),
        Json::Null => Ok(None),
        cell => value(port, cell, system).map(Some).map_err(|failure| failure.at(Place::Index(row))),
    });
    let cells: Vec<Option<Value>> = given.collect::<Result<_>>()?;
    Ok(column_of(&port.kind, cells))
}

/// A column of one kind from values of that kind.
pub(super) fn column_of(kind: &Kind, cells: Vec<Option<Value>>) -> Column {
    fn each<T>(cells: Vec<Option<Value>>, take: impl Fn(Value) -> Option<T>) -> Vec<Option<T>> {
        cells.into_iter().map(|cell| cell.and_then(&take)).collect()
    }
    match kind {
        Kind::Number(_) => Column::Numbers(
            each(cells, |value| if let Value::Number(base) = value { Some(base) } else { None })
                .into_iter()
                .map(|base| base.unwrap_or(f64::NAN))
                .collect(),
        ),
        Kind::Count(..) => {
            Column::Counts(each(cells, |v| if let Value::Count(count) = v { Some(count) } else { None }))
        }
        Kind::Choice(_) => {
            Column::Choices(each(cells, |v| if let Value::Choice(place) = v { Some(place) } else { None }))
        }
        _ => Column::Texts(each(cells, |v| if let Value::Text(text) = v { Some(text) } else { None })),
    }
}
