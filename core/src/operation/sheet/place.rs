//! Where in its range a refused value stands.

use super::cell::{Cell, Cells, Range};
use super::path::parse;
use super::{single, table};
use crate::failure::{Failure, Place};
use crate::operation::Operation;
use crate::operation::port::{Kind, Port, TableType};
use crate::quantity::{System, Unit, read_kind};

/// A failure of the called function in the terms of the sheet: the number as it stands in the cell, the place as a cell.
/// `answer` is the row and column of the answer in a block of them.
pub(super) fn in_the_sheet(
    failure: Box<Failure>,
    operation: &Operation,
    system: System,
    ranges: &[Range],
    answer: (usize, usize),
) -> Box<Failure> {
    let found = operation.ports.iter().zip(ranges).find_map(|(port, range)| {
        let rest = failure.path.strip_prefix(port.name)?;
        (rest.is_empty() || rest.starts_with(['.', '['])).then(|| (port, range, rest.to_owned()))
    });
    let Some((port, range, rest)) = found else { return failure };
    match &port.kind {
        Kind::Table(table) => of_table(failure, table, range, system, &rest),
        Kind::Record(_) => at_path(failure, rest.trim_start_matches('.'), &range.rows),
        kind => {
            let here = range.within(answer.0, answer.1);
            at(
                as_it_stands(failure, kind, range.cell(here.0, here.1), single::unit(port, system)),
                range,
                here,
            )
        }
    }
}

/// The failure at a cell of a range; a lone cell needs no place.
pub(super) fn at(failure: Box<Failure>, range: &Range, (row, column): (usize, usize)) -> Box<Failure> {
    if range.size() == (1, 1) { failure } else { failure.at(Place::Cell(row + 1, column + 1)) }
}

/// A refused number as it stands in its cell, with its own unit.
fn as_it_stands(
    failure: Box<Failure>,
    kind: &Kind,
    cell: &Cell,
    unit: Option<&'static Unit>,
) -> Box<Failure> {
    match (kind, cell, unit) {
        (Kind::Number(_), Cell::Number(number), Some(unit)) => failure.in_unit(*number, unit),
        (Kind::Number(kind), Cell::Text(text), _) => match read_kind(text, kind.quantity, None) {
            Ok(reading) => failure.in_unit(reading.number, reading.unit),
            Err(_) => failure,
        },
        _ => failure,
    }
}

/// `rest` is the path behind the table's name: `.at` with the row as an index, or `[3].at`.
fn of_table(
    failure: Box<Failure>,
    table: &TableType,
    range: &Range,
    system: System,
    rest: &str,
) -> Box<Failure> {
    let (row, column) = match rest.strip_prefix('[').and_then(|inside| inside.split_once(']')) {
        Some((index, behind)) => (index.parse().ok(), behind),
        None => (None, rest),
    };
    let row = row.or(match failure.place {
        Place::Index(index) => Some(index),
        _ => None,
    });
    let column = column.trim_start_matches('.');
    let column = table.columns.iter().position(|port: &Port| port.name == column);
    let (Some(row), Ok(layout)) = (row, table::layout(table, &range.rows, system)) else { return failure };
    let (i, j) = layout.cell(column.unwrap_or(0), row);
    let failure = failure.at(Place::Cell(i + 1, j + 1));
    match column.and_then(|column| Some((table.columns.get(column)?, layout.unit(column)))) {
        Some((port, unit)) => as_it_stands(failure, &port.kind, range.cell(i, j), unit),
        None => failure,
    }
}

/// A failure of reading a record, its path being that of the row it came from.
pub(super) fn of_path(failure: Box<Failure>, rows: &Cells) -> Box<Failure> {
    let path = failure.path.clone();
    at_path(failure, &path, rows)
}

fn at_path(failure: Box<Failure>, path: &str, rows: &Cells) -> Box<Failure> {
    let Some(wanted) = parse(path) else { return failure };
    let found = rows.iter().position(|row| match row.first() {
        Some(Cell::Text(text)) => parse(text).is_some_and(|steps| steps == wanted),
        _ => false,
    });
    match found {
        Some(row) => failure.at(Place::Cell(row + 1, 2)),
        None => failure,
    }
}
