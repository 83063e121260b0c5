//! Cells of a spreadsheet: from ranges to the values of the ports, and from answers to cells.
//!
//! A single value is a cell; a table is a range of its columns, a header row allowed; a record is a range of
//! path | value | unit. A text cell says its own unit; a number cell is in the unit of its port.

use super::call::{empty, invoke, missing};
use super::choice::place_of;
use super::port::{Kind, Need, NumberKind, Port, TableType};
use super::value::{Column, Columns, Value};
use super::{Answer, Operation, decode, encode, scalar};
use crate::failure::{Code, Failure, Place, Result};
use crate::quantity::{System, read_kind};
use serde_json::{Value as Json, json};

mod paths;

pub use paths::{flatten, unflatten};

/// One cell.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// Nothing in it.
    Empty,
    /// A number.
    Number(f64),
    /// A text.
    Text(String),
}

/// A rectangle of cells.
pub type Cells = Vec<Vec<Cell>>;

/// Reads cells from JSON: null, number, text or truth value; a single one or rows of them.
///
/// # Errors
/// `KIND_MISMATCH` for anything else.
pub fn cells(json: &Json) -> Result<Cells> {
    let wrong =
        || Failure::new(Code::KindMismatch, "").allowed("a cell or rows of cells").remedy("pass a range");
    match json {
        Json::Array(rows) => rows
            .iter()
            .map(|row| match row {
                Json::Array(row) => row.iter().map(|cell| one_cell(cell).ok_or_else(wrong)).collect(),
                cell => one_cell(cell).map(|cell| vec![cell]).ok_or_else(wrong),
            })
            .collect(),
        cell => one_cell(cell).map(|cell| vec![vec![cell]]).ok_or_else(wrong),
    }
}

fn one_cell(json: &Json) -> Option<Cell> {
    match json {
        Json::Null => Some(Cell::Empty),
        Json::Bool(truth) => Some(Cell::Number(f64::from(u8::from(*truth)))),
        Json::Number(number) => number.as_f64().map(Cell::Number),
        Json::String(text) if text.trim().is_empty() => Some(Cell::Empty),
        Json::String(text) => Some(Cell::Text(text.clone())),
        _ => None,
    }
}

/// Calls an operation from ranges, one per port in order; those left out at the end are not given.
///
/// # Errors
/// Whatever the cells or the function are refused for, with the cell's place.
pub fn call(operation: &'static Operation, system: System, ranges: &[Json]) -> Result<Answer> {
    if ranges.len() > operation.ports.len() {
        return Err(Failure::new(Code::LengthMismatch, operation.name)
            .written(format!("{} arguments", ranges.len()))
            .allowed(format!("at most {}", operation.ports.len()))
            .remedy("remove what is too many"));
    }
    let given = operation.ports.iter().zip(ranges);
    let values = given
        .map(|(port, range)| {
            cells(range)
                .and_then(|cells| value(port, &cells, system))
                .map_err(|failure| failure.under(port.name))
        })
        .collect::<Result<Vec<_>>>()?;
    invoke(operation, values).map_err(|failure| in_callers_terms(failure, operation, system))
}

/// A refused number said in the unit of its port.
fn in_callers_terms(failure: Box<Failure>, operation: &Operation, system: System) -> Box<Failure> {
    let (Some(refused), Some(place)) = (failure.refused, operation.port(&failure.path)) else {
        return failure;
    };
    match &operation.ports[place].kind {
        Kind::Number(kind) => {
            let unit = kind.unit(system);
            failure.in_unit((unit.from_base)(refused.base), unit)
        }
        _ => failure,
    }
}

fn value(port: &Port, cells: &Cells, system: System) -> Result<Value> {
    match &port.kind {
        Kind::Table(table) => self::table(table, cells, system).map(Value::Table),
        Kind::Record(record) => {
            if cells.iter().flatten().all(|cell| *cell == Cell::Empty) {
                return absent(port);
            }
            (record.from_json)(unflatten(cells)?).map(Value::Record)
        }
        _ => match cells.as_slice() {
            [row] if row.len() == 1 => single(port, &row[0], system, port_zero_rare(port)),
            _ => Err(Failure::new(Code::KindMismatch, "")
                .written("a range of several cells")
                .allowed(port.kind.word())
                .remedy("pass one cell")),
        },
    }
}

fn port_zero_rare(port: &Port) -> bool {
    matches!(port.kind, Kind::Number(NumberKind { zero_rare: true, .. }))
}

fn absent(port: &Port) -> Result<Value> {
    match port.need {
        Need::Required => Err(empty(port)),
        _ => Ok(Value::Absent),
    }
}

/// One cell as the value of a port. A suite may hand an empty cell over as a zero; where a zero is rare it is refused.
fn single(port: &Port, cell: &Cell, system: System, refuse_zero: bool) -> Result<Value> {
    match (&port.kind, cell) {
        (_, Cell::Empty) => absent(port),
        (Kind::Number(kind), Cell::Number(zero)) if refuse_zero && *zero == 0.0 => {
            let remedy = format!("fill the cell; if zero is meant write \"0 {}\"", kind.unit(system).symbol);
            Err(Failure::new(Code::ZeroRefused, "").written("0").allowed(port.meaning).remedy(remedy))
        }
        (Kind::Number(kind), Cell::Number(number)) => Ok(Value::Number((kind.unit(system).to_base)(*number))),
        (Kind::Number(kind), Cell::Text(text)) => {
            read_kind(text, kind.quantity, None).map(|reading| Value::Number(reading.base))
        }
        (Kind::Count(..), Cell::Number(number)) => scalar::whole(*number).map(Value::Count),
        (Kind::Choice(words), Cell::Text(word)) => place_of(word, words, "").map(Value::Choice),
        (Kind::Text, Cell::Text(text)) => Ok(Value::Text(text.clone())),
        (Kind::Text, Cell::Number(number)) => Ok(Value::Text(crate::quantity::write::shortest(*number))),
        (kind, Cell::Text(text)) => decode::value(port, &Json::String(text.clone()), Some(system))
            .map_err(|failure| failure.allowed(kind.word())),
        (kind, Cell::Number(number)) => Err(Failure::new(Code::KindMismatch, "")
            .written(number.to_string())
            .allowed(kind.word())
            .remedy("give the kind of value named")),
    }
}

/// A table from a range: columns in order, or by a header row of their names.
fn table(table: &TableType, cells: &Cells, system: System) -> Result<Columns> {
    let upright = upright(table, cells);
    let (header, first) = header(table, &upright);
    let last =
        upright.iter().rposition(|row| row.iter().any(|cell| *cell != Cell::Empty)).map_or(0, |row| row + 1);
    let body = upright.get(first..last.max(first)).unwrap_or_default();
    let mut columns = Columns { rows: body.len(), columns: Vec::new() };
    for (place, port) in table.columns.iter().enumerate() {
        let column = match header.iter().position(|&named| named == Some(place)) {
            Some(at) => column(port, body, at, first, system).map_err(|failure| failure.under(port.name))?,
            None if matches!(port.need, Need::Required) && !body.is_empty() => return Err(missing(port)),
            None => Column::Absent,
        };
        columns.columns.push(column);
    }
    Ok(columns)
}

/// A table of one column may lie in a row.
fn upright(table: &TableType, cells: &Cells) -> Cells {
    match cells.as_slice() {
        [row] if table.columns.len() == 1 => row.iter().map(|cell| vec![cell.clone()]).collect(),
        _ => cells.clone(),
    }
}

/// Which column of the type each column of the range holds, and the first row below the header.
fn header(table: &TableType, cells: &Cells) -> (Vec<Option<usize>>, usize) {
    let named = |cell: &Cell| match cell {
        Cell::Text(text) => table.columns.iter().position(|port| port.name.eq_ignore_ascii_case(text.trim())),
        _ => None,
    };
    let width = cells.iter().map(Vec::len).max().unwrap_or(0);
    match cells.first() {
        Some(row) if row.iter().any(|cell| named(cell).is_some()) => (row.iter().map(named).collect(), 1),
        _ => ((0..width).map(Some).collect(), 0),
    }
}

fn column(port: &Port, body: &[Vec<Cell>], at: usize, first: usize, system: System) -> Result<Column> {
    let read = |(row, cells): (usize, &Vec<Cell>)| {
        let cell = cells.get(at).unwrap_or(&Cell::Empty);
        // Inside a range an empty cell is known to be empty, so a zero there is meant.
        let value = single(port, cell, system, false);
        value.map_err(|failure| failure.at(Place::Cell(row + first + 1, at + 1)))
    };
    let values = body.iter().enumerate().map(read).collect::<Result<Vec<_>>>()?;
    let given =
        values.into_iter().map(|value| if matches!(value, Value::Absent) { None } else { Some(value) });
    Ok(decode::column_of(&port.kind, given.collect()))
}

/// The answer as JSON cells: a single number alone; a record as path | value; several results as name | value.
#[must_use]
pub fn answer_cells(operation: &Operation, answer: &Answer, system: System) -> Json {
    let results: Vec<(&Port, &Value)> = operation.results.iter().zip(&answer.results).collect();
    match results.as_slice() {
        [(port, value)] => result_cells(port, value, system),
        _ => results
            .iter()
            .filter(|(port, _)| !matches!(port.kind, Kind::Table(_) | Kind::Record(_)))
            .map(|(port, value)| json!([port.unit_name(system), encode::value(port, value, system)]))
            .collect(),
    }
}

/// One result by its name, with or without the unit.
///
/// # Errors
/// `KEY_UNKNOWN`, with the nearest name.
pub fn one_result(operation: &Operation, answer: &Answer, system: System, name: &str) -> Result<Json> {
    let wanted = name.trim();
    let place = operation.results.iter().position(|port| {
        port.name.eq_ignore_ascii_case(wanted) || port.unit_name(system).eq_ignore_ascii_case(wanted)
    });
    match place.and_then(|place| Some((operation.results.get(place)?, answer.results.get(place)?))) {
        Some((port, value)) => Ok(result_cells(port, value, system)),
        None => {
            Err(decode::unknown_key(wanted, operation.results.iter().map(|port| port.name)).under("result"))
        }
    }
}

fn result_cells(port: &Port, value: &Value, system: System) -> Json {
    match (&port.kind, value) {
        (Kind::Table(table), Value::Table(columns)) => table_cells(table, columns, system),
        (Kind::Record(_), Value::Record(_)) => flatten(&encode::value(port, value, system)),
        _ => encode::value(port, value, system),
    }
}

fn table_cells(table: &TableType, columns: &Columns, system: System) -> Json {
    let header: Json = table.columns.iter().map(|port| Json::String(port.unit_name(system))).collect();
    let row = |row: usize| -> Json {
        let cells = table.columns.iter().zip(&columns.columns);
        cells.map(|(port, column)| encode::cell(port, column, row, system)).collect()
    };
    std::iter::once(header).chain((0..columns.rows).map(row)).collect()
}
