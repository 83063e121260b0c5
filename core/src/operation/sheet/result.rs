//! From an answer to cells.

use super::each::Block;
use super::flatten;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::operation::port::{Kind, Need, Port, TableType};
use crate::operation::value::{Columns, Value};
use crate::operation::{Answer, Operation, decode, encode};
use crate::quantity::System;
use serde_json::{Value as Json, json};

/// Rows of cells: null, number, text; at a refused place of several an object with the `code`.
pub(super) type Rows = Vec<Vec<Json>>;

/// Words that [`one_result`] takes beside the names of the results: what else belongs to an answer.
pub const RESERVED: [&str; 4] = ["names", "notes", "taken", "basis"];

/// The answer as cells. One result: a value, a table under its header, a record as path | value. Several results of an
/// operation on single values: a row of values. Several results else: rows of value | name, so that a formula in one cell
/// shows the first value; tables and records among them are only named, [`one_result`] gives them.
#[must_use]
pub fn answer_cells(operation: &Operation, answer: &Answer, system: System) -> Rows {
    let results: Vec<(&Port, &Value)> = operation.results.iter().zip(&answer.results).collect();
    match results.as_slice() {
        [(port, value)] => result_cells(port, value, system),
        _ if operation.is_scalar() => {
            vec![results.iter().map(|(port, value)| encode::value(port, value, system)).collect()]
        }
        _ => results
            .iter()
            .map(|(port, value)| vec![in_one_cell(port, value, system), json!(port.unit_name(system))])
            .collect(),
    }
}

fn in_one_cell(port: &Port, value: &Value, system: System) -> Json {
    match (&port.kind, value) {
        (Kind::Table(_), Value::Table(columns)) => json!(format!("table of {} rows", columns.rows)),
        (Kind::Record(record), Value::Record(_)) => json!(format!("{} record", record.name)),
        _ => encode::value(port, value, system),
    }
}

/// One result by its name, with or without the unit; where the only result is a record, one of its fields; or one of
/// [`RESERVED`].
///
/// # Errors
/// `KEY_UNKNOWN`, with the nearest name.
pub fn one_result(operation: &Operation, answer: &Answer, system: System, name: &str) -> Result<Rows> {
    match reserved(operation, system, name) {
        Some(Reserved::Notes) => Ok(notes(answer)),
        Some(Reserved::Taken) => Ok(taken(operation, answer)),
        Some(Reserved::Basis) => Ok(basis(operation, answer)),
        Some(Reserved::Names(rows)) => Ok(rows),
        None => match named(operation, system, name)? {
            Place::Result(place) => Ok(cells_at(operation.results, &answer.results, place, system)),
            Place::Field(place) => Ok(fields(operation, answer)
                .map_or_else(Rows::new, |(ports, values)| cells_at(ports, &values, place, system))),
        },
    }
}

/// Where a name leads.
#[derive(Clone, Copy, Debug)]
enum Place {
    Result(usize),
    Field(usize),
}

/// The place of a result or a field.
fn named(operation: &Operation, system: System, name: &str) -> Result<Place> {
    let wanted = name.trim();
    let at = |ports: &[Port]| {
        ports.iter().position(|port| {
            port.name.eq_ignore_ascii_case(wanted) || port.unit_name(system).eq_ignore_ascii_case(wanted)
        })
    };
    let own_fields = operation.makes().map_or(&[][..], |record| record.fields);
    if let Some(place) = at(operation.results) {
        return Ok(Place::Result(place));
    }
    at(own_fields).map(Place::Field).ok_or_else(|| {
        let known = operation.results.iter().chain(own_fields).map(|port| port.name).chain(RESERVED);
        let failure = decode::unknown_key(wanted, known);
        if wanted.is_empty() {
            Failure::new(Code::EmptyCell, "").allowed(failure.allowed).remedy("name a result")
        } else {
            failure
        }
        .under("result")
    })
}

fn fields(operation: &Operation, answer: &Answer) -> Option<(&'static [Port], Vec<Value>)> {
    let record = operation.makes()?;
    match answer.results.first() {
        Some(Value::Record(made)) => (record.get)(made.as_ref()).map(|values| (record.fields, values)),
        _ => None,
    }
}

fn cells_at(ports: &[Port], values: &[Value], place: usize, system: System) -> Rows {
    match (ports.get(place), values.get(place)) {
        (Some(port), Some(value)) => result_cells(port, value, system),
        _ => Rows::new(),
    }
}

fn result_cells(port: &Port, value: &Value, system: System) -> Rows {
    match (&port.kind, value) {
        (Kind::Table(table), Value::Table(columns)) => table_cells(table, columns, system),
        (Kind::Record(_), Value::Record(_)) => flatten(&encode::value(port, value, system)),
        _ => vec![vec![encode::value(port, value, system)]],
    }
}

fn table_cells(table: &TableType, columns: &Columns, system: System) -> Rows {
    let header = table.columns.iter().map(|port| Json::String(port.unit_name(system))).collect();
    let row = |row: usize| -> Vec<Json> {
        let cells = table.columns.iter().zip(&columns.columns);
        cells.map(|(port, column)| encode::cell(port, column, row, system)).collect()
    };
    std::iter::once(header).chain((0..columns.rows).map(row)).collect()
}

/// What a reserved word asks for.
enum Reserved {
    Names(Rows),
    Notes,
    Taken,
    Basis,
}

fn reserved(operation: &Operation, system: System, name: &str) -> Option<Reserved> {
    match name.trim().to_ascii_lowercase().as_str() {
        "names" => Some(Reserved::Names(names(operation, system))),
        "notes" => Some(Reserved::Notes),
        "taken" => Some(Reserved::Taken),
        "basis" => Some(Reserved::Basis),
        _ => None,
    }
}

/// The names that [`one_result`] takes, with what each means.
fn names(operation: &Operation, system: System) -> Rows {
    let own_fields = operation.makes().map_or(&[][..], |record| record.fields);
    let ports = operation.results.iter().chain(own_fields);
    ports.map(|port| vec![json!(port.unit_name(system)), json!(port.meaning)]).collect()
}

fn notes(answer: &Answer) -> Rows {
    or_empty(answer.notes.iter().map(|note| vec![json!(note.code.name()), json!(note.text)]).collect())
}

/// What was not given and taken from its fallback: port | value | why.
fn taken(operation: &Operation, answer: &Answer) -> Rows {
    let ports = answer.taken.iter().filter_map(|&place| operation.ports.get(place));
    let rows = ports.filter_map(|port| match port.need {
        Need::Fallback { value, why } => Some(vec![json!(port.name), json!(value), json!(why)]),
        _ => None,
    });
    or_empty(rows.collect())
}

/// Where the results come from: result | basis. What the answer does not say of a result is said of all.
fn basis(operation: &Operation, answer: &Answer) -> Rows {
    let of_one = answer.basis.iter().map(|(place, basis)| {
        let name = operation.results.get(*place).map_or("all", |port| port.name);
        (name, *basis)
    });
    let mut rows: Vec<(&str, BasisId)> = of_one.collect();
    if rows.is_empty() {
        rows = operation.basis.iter().map(|&basis| ("all", basis)).collect();
    }
    or_empty(rows.into_iter().map(|(name, basis)| vec![json!(name), json!(basis.line())]).collect())
}

fn or_empty(rows: Rows) -> Rows {
    if rows.is_empty() { vec![vec![Json::Null]] } else { rows }
}

/// What there is to say of an answer that was not refused: its notes, or nothing.
#[must_use]
pub fn why(answer: &Answer) -> String {
    answer.notes.iter().map(|note| note.text.as_str()).collect::<Vec<_>>().join("; ")
}

impl Block {
    /// One result for each place; a refused place holds an object with the code.
    pub(super) fn one_result(&self, operation: &Operation, system: System, name: &str) -> Result<Rows> {
        if self.answers.len() == 1 {
            return self.single(|answer| one_result(operation, answer, system, name));
        }
        match reserved(operation, system, name) {
            Some(Reserved::Names(rows)) => Ok(rows),
            Some(Reserved::Basis) => Ok(basis(operation, &Answer::default())),
            Some(Reserved::Notes) => Ok(self.laid_out(|answer| json!(why(answer)))),
            Some(Reserved::Taken) => Ok(vec![vec![Json::Null]]),
            None => match named(operation, system, name)? {
                Place::Result(place) => {
                    Ok(self.laid_out(|answer| result_at(operation, answer, place, system)))
                }
                Place::Field(_) => Ok(Rows::new()),
            },
        }
    }

    /// All results: behind each other where the places run down, below each other where they run across.
    pub(super) fn all_results(&self, operation: &Operation, system: System) -> Result<Rows> {
        if self.answers.len() == 1 {
            return self.single(|answer| Ok(answer_cells(operation, answer, system)));
        }
        let each = |place| self.laid_out(move |answer| result_at(operation, answer, place, system));
        let mut results: Vec<Rows> = (0..operation.results.len()).map(each).collect();
        match (results.len(), self.rows, self.columns) {
            (1, ..) => Ok(results.pop().unwrap_or_default()),
            (_, _, 1) => Ok((0..self.rows)
                .map(|row| results.iter().map(|result| result[row][0].clone()).collect())
                .collect()),
            (_, 1, _) => Ok(results.into_iter().flatten().collect()),
            _ => {
                let names: Vec<&str> = operation.results.iter().map(|port| port.name).collect();
                Err(Failure::new(Code::KindMismatch, operation.name)
                    .written(format!("{} rows and {} columns", self.rows, self.columns))
                    .allowed("one row or one column, since there are several results")
                    .remedy(format!("ask for one of them: {}", names.join(", "))))
            }
        }
    }

    /// The reason at each place; nothing where there is none.
    pub(super) fn why(&self) -> Rows {
        let text = |answer: &Result<Answer>| match answer {
            Ok(answer) => json!(why(answer)),
            Err(failure) => json!(failure.sentence()),
        };
        self.answers.chunks(self.columns.max(1)).map(|row| row.iter().map(text).collect()).collect()
    }

    fn single(&self, cells: impl Fn(&Answer) -> Result<Rows>) -> Result<Rows> {
        match self.answers.first() {
            Some(Ok(answer)) => cells(answer),
            Some(Err(failure)) => Err(failure.clone()),
            None => Ok(Rows::new()),
        }
    }

    fn laid_out(&self, cell: impl Fn(&Answer) -> Json) -> Rows {
        let cell = |answer: &Result<Answer>| match answer {
            Ok(answer) => cell(answer),
            Err(failure) => json!({ "code": failure.code.number() }),
        };
        self.answers.chunks(self.columns.max(1)).map(|row| row.iter().map(cell).collect()).collect()
    }
}

fn result_at(operation: &Operation, answer: &Answer, place: usize, system: System) -> Json {
    match (operation.results.get(place), answer.results.get(place)) {
        (Some(port), Some(value)) => encode::value(port, value, system),
        _ => Json::Null,
    }
}
