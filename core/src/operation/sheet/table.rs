//! A table from a range: its columns in order, or by a header row of their names. A table of one column may lie in a row or fill
//! a block, row by row.

use super::cell::{Cell, Cells};
use super::{Reading, single};
use crate::failure::{Code, Failure, Place, Result};
use crate::operation::call::missing;
use crate::operation::decode::{column_of, unknown_key};
use crate::operation::port::{Kind, Need, Port, TableType};
use crate::operation::value::{Column, Columns, Value};
use crate::quantity::System;
use crate::quantity::unit::Unit;
use std::borrow::Cow;

/// A column of a range and the unit of its bare numbers.
type At = (usize, Option<&'static Unit>);

/// Where the columns of a table lie in a range.
#[derive(Debug)]
pub(super) struct Layout {
    /// For each column of the type, its column in the range and the unit of its bare numbers.
    columns: Vec<Option<At>>,
    /// How many rows stand above the first row of values.
    above: usize,
    /// How many cells of the range one row of it holds, where a table of one column fills a block row by row; else 1.
    across: usize,
}

impl Layout {
    /// The row and column in the range, the first being 0, of a value by its column of the type and its row.
    pub(super) fn cell(&self, column: usize, row: usize) -> (usize, usize) {
        let at = self.columns.get(column).copied().flatten().map_or(0, |(at, _)| at);
        let row = row + self.above;
        if self.across > 1 { (row / self.across, row % self.across) } else { (row, at) }
    }

    /// The unit of bare numbers in a column of the type.
    pub(super) fn unit(&self, column: usize) -> Option<&'static Unit> {
        self.columns.get(column).copied().flatten().and_then(|(_, unit)| unit)
    }
}

/// Reads a table.
pub(super) fn read(table: &TableType, cells: &Cells, reading: Reading) -> Result<Columns> {
    let layout = layout(table, cells, reading.system)?;
    let upright = upright(table, cells);
    let last = match cells.len() {
        // In a block an empty cell at the end is a place like any other; only whole empty rows are no rows.
        2.. if layout.across > 1 => upright.len(),
        _ => filled(&upright),
    };
    let body = upright.get(layout.above..last.max(layout.above)).unwrap_or_default();
    let mut columns = Columns { rows: body.len(), columns: Vec::new() };
    for (place, port) in table.columns.iter().enumerate() {
        let column = match layout.columns.get(place).copied().flatten() {
            Some((at, unit)) => column(port, body, at, unit, |row| {
                let (row, column) = layout.cell(place, row);
                Place::Cell(row + 1, column + 1)
            }),
            None if port.need == Need::Required && !body.is_empty() => Err(missing(port)),
            None => Ok(Column::Absent),
        };
        columns.columns.push(column?);
    }
    Ok(columns)
}

fn column(
    port: &Port,
    body: &[Vec<Cell>],
    at: usize,
    unit: Option<&'static Unit>,
    place: impl Fn(usize) -> Place,
) -> Result<Column> {
    let read = |(row, cells): (usize, &Vec<Cell>)| {
        // Inside a range an empty cell is known to be empty, so a zero there is meant.
        let value = single::read(port, cells.get(at).unwrap_or(&Cell::Empty), unit);
        value.map_err(|failure| failure.under(port.name).at(place(row)))
    };
    let values = body.iter().enumerate().map(read).collect::<Result<Vec<_>>>()?;
    if values.iter().all(|value| matches!(value, Value::Absent)) && port.need != Need::Required {
        return Ok(Column::Absent);
    }
    let given = values.into_iter().map(|value| match value {
        Value::Absent => None,
        value => Some(value),
    });
    Ok(column_of(&port.kind, given.collect()))
}

/// The rows up to the last that holds anything.
fn filled(rows: &[Vec<Cell>]) -> usize {
    rows.iter().rposition(|row| !row.iter().all(Cell::is_empty)).map_or(0, |row| row + 1)
}

/// How many cells across the block is that a table of one column fills row by row; 1 where it is no block.
fn across(table: &TableType, cells: &Cells) -> usize {
    let width = cells.iter().map(Vec::len).max().unwrap_or(1);
    // A block has no empty column: a column of cells beside empty ones is a column.
    let full = (0..width).all(|at| cells.iter().any(|row| row.get(at).is_some_and(|cell| !cell.is_empty())));
    if table.columns.len() == 1 && full { width.max(1) } else { 1 }
}

/// The range with the table's columns upright.
fn upright<'a>(table: &TableType, cells: &'a Cells) -> Cow<'a, [Vec<Cell>]> {
    let width = across(table, cells);
    if width == 1 {
        return Cow::Borrowed(cells);
    }
    let cell = |row: &Vec<Cell>, at: usize| vec![row.get(at).cloned().unwrap_or(Cell::Empty)];
    let rows = cells[..filled(cells)].iter();
    Cow::Owned(rows.flat_map(|row| (0..width).map(|at| cell(row, at)).collect::<Vec<_>>()).collect())
}

/// Where the columns lie: by the header row if there is one, else in order.
pub(super) fn layout(table: &TableType, cells: &Cells, system: System) -> Result<Layout> {
    let across = across(table, cells);
    let upright = upright(table, cells);
    let columns = match upright.first() {
        Some(row) if is_header(table, row, upright.len() > 1) => {
            Some(by_header(table, row, &upright, system)?)
        }
        _ => None,
    };
    let above = usize::from(columns.is_some());
    let columns = match columns {
        Some(columns) => columns,
        None => in_order(table, &upright, system)?,
    };
    Ok(Layout { columns, above, across })
}

fn in_order(table: &TableType, rows: &[Vec<Cell>], system: System) -> Result<Vec<Option<At>>> {
    for (index, row) in rows.iter().enumerate() {
        if let Some(stray) = row.iter().skip(table.columns.len()).position(|cell| !cell.is_empty()) {
            let at = table.columns.len() + stray;
            let names: Vec<&str> = table.columns.iter().map(|port| port.name).collect();
            return Err(Failure::new(Code::LengthMismatch, "")
                .written(row[at].written())
                .allowed(format!("the columns {}", names.join(", ")))
                .remedy("pass a narrower range, or write the names above the columns")
                .at(Place::Cell(index + 1, at + 1)));
        }
    }
    let width = rows.iter().map(Vec::len).max().unwrap_or(0);
    let place = |(at, port): (usize, &Port)| (at < width).then(|| (at, single::unit(port, system)));
    Ok(table.columns.iter().enumerate().map(place).collect())
}

/// The first row names the columns if it holds only texts, and one of them is a column's name or none can be a value. A lone text
/// is a name only where `more` rows follow it.
fn is_header(table: &TableType, row: &[Cell], more: bool) -> bool {
    let mut texts = row.iter().filter(|cell| !cell.is_empty()).map(|cell| match cell {
        Cell::Text(text) => Some(text.as_str()),
        _ => None,
    });
    let Some(texts) = texts.by_ref().collect::<Option<Vec<_>>>() else { return false };
    let named = texts.iter().any(|text| named(table, text).is_some());
    let has_number = table.columns.iter().any(|port| matches!(port.kind, Kind::Number(_) | Kind::Count(..)));
    let no_digits = texts.iter().all(|text| !text.contains(|c: char| c.is_ascii_digit()));
    named || has_number && no_digits && (texts.len() > 1 || more && texts.len() == 1)
}

fn by_header(
    table: &TableType,
    header: &[Cell],
    rows: &[Vec<Cell>],
    system: System,
) -> Result<Vec<Option<At>>> {
    let mut columns = vec![None; table.columns.len()];
    for (at, cell) in header.iter().enumerate() {
        let place = Place::Cell(1, at + 1);
        let Cell::Text(text) = cell else {
            if rows.iter().any(|row| row.get(at).is_some_and(|cell| !cell.is_empty())) {
                return Err(Failure::new(Code::EmptyCell, "")
                    .allowed("the name of the column")
                    .remedy("name the column or leave it empty")
                    .at(place));
            }
            continue;
        };
        let Some((column, unit)) = named(table, text) else {
            return Err(unknown_key(text.trim(), table.columns.iter().map(|port| port.name)).at(place));
        };
        let port = &table.columns[column];
        let unit = match unit {
            Named::Plain => single::unit(port, system),
            Named::In(unit) => Some(unit),
            Named::Unknown(word) => return Err(unit_unknown(port, word).at(place)),
        };
        if columns[column].replace((at, unit)).is_some() {
            return Err(Failure::new(Code::KeyRepeated, port.name)
                .allowed("each column once")
                .remedy("remove one of them")
                .at(place));
        }
    }
    Ok(columns)
}

fn unit_unknown(port: &Port, word: &str) -> Box<Failure> {
    let allowed = match &port.kind {
        Kind::Number(kind) => kind.quantity.symbols(),
        kind => format!("no unit: {}", kind.word()),
    };
    Failure::new(Code::UnitUnknown, port.name)
        .written(word)
        .allowed(allowed)
        .remedy("write a unit of the column")
}

/// What a header says beside the name of its column.
enum Named<'a> {
    Plain,
    In(&'static Unit),
    Unknown(&'a str),
}

/// The column that a header names: `at`, `at_ft`, `at (ft)`, `at [m]`, `at, in`.
fn named<'a>(table: &TableType, header: &'a str) -> Option<(usize, Named<'a>)> {
    let header = header.trim();
    let alike = |port: &Port| {
        let (name, rest) = header.split_at_checked(port.name.len())?;
        name.eq_ignore_ascii_case(port.name).then_some(rest)
    };
    let mut unknown = None;
    for (column, port) in table.columns.iter().enumerate() {
        let Some(rest) = alike(port) else { continue };
        if rest.is_empty() {
            return Some((column, Named::Plain));
        }
        let word = rest.trim_start_matches(['_', ' ', ',', '(', '[']).trim_end_matches([')', ']', ' ']);
        if word.len() == rest.len() {
            continue; // A longer word that begins like the name.
        }
        if let Kind::Number(kind) = &port.kind {
            let by_suffix = kind.quantity.units.iter().copied().find(|unit| unit.suffix == word);
            if let Some(unit) = by_suffix.or_else(|| kind.quantity.unit(word)) {
                return Some((column, Named::In(unit)));
            }
        }
        unknown.get_or_insert((column, Named::Unknown(word)));
    }
    unknown
}
