//! Cells of a spreadsheet: from ranges to the values of the ports, and from answers to cells.
//!
//! A single value is a cell; a table is a range of its columns, a header row allowed; a record is a range of
//! path | value | unit. A text cell says its own unit; a number cell is in the unit of its port. An operation that takes
//! single numbers and words only may be given ranges too and is then worked out for each place of them.
//!
//! ```
//! use overslab::operation::sheet::respond;
//!
//! let request = r#"{"operation": "fall", "system": "us", "want": "value", "arguments": [2, "20 ft"]}"#;
//! assert_eq!(respond(request).to_json().to_string(), r#"{"cells":[[0.1]]}"#);
//! ```

mod cell;
mod each;
mod flatten;
mod node;
mod path;
mod paths;
mod place;
mod request;
mod result;
mod single;
mod table;
#[cfg(test)]
mod tests;

pub use cell::{Cell, Cells, Range, ranges};
pub use flatten::flatten;
pub use paths::unflatten;
pub use request::{Reply, Request, Want, respond};
pub use result::{RESERVED, answer_cells, one_result, why};

use super::call::invoke;
use super::port::{Kind, Need, Port};
use super::value::Value;
use super::{Answer, Operation};
use crate::failure::{Code, Failure, Result};
use crate::quantity::System;

/// How the caller's sheet hands over a single empty cell.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Empties {
    /// As nothing: a zero is a zero.
    Told,
    /// As a zero: where an empty cell is likelier than a zero, a zero is refused.
    #[default]
    AsZero,
}

/// What is asked of a sheet, the same for every port of one call.
#[derive(Clone, Copy, Debug)]
struct Reading {
    system: System,
    empties: Empties,
}

/// Calls an operation from ranges, one per port in order; those left out at the end are not given.
///
/// # Errors
/// Whatever the cells or the function are refused for, with the cell's place.
pub fn call(
    operation: &'static Operation,
    system: System,
    empties: Empties,
    ranges: &[Range],
) -> Result<Answer> {
    not_too_many(operation, ranges.len())?;
    let reading = Reading { system, empties };
    let given = operation.ports.iter().zip(ranges);
    let values = given
        .map(|(port, range)| value(port, range, reading).map_err(|failure| failure.under(port.name)))
        .collect::<Result<Vec<_>>>()?;
    invoke(operation, values)
        .map_err(|failure| place::in_the_sheet(failure, operation, system, ranges, (0, 0)))
}

fn not_too_many(operation: &Operation, given: usize) -> Result<()> {
    if given <= operation.ports.len() {
        return Ok(());
    }
    Err(Failure::new(Code::LengthMismatch, operation.name)
        .written(format!("{given} arguments"))
        .allowed(format!("at most {}", operation.ports.len()))
        .remedy("remove what is too many"))
}

/// The value of a port from its range. The path of a failure is relative to the port.
fn value(port: &Port, range: &Range, reading: Reading) -> Result<Value> {
    match &port.kind {
        Kind::Table(table) => {
            if let Some(absent) = nothing(port, range, reading)? {
                return Ok(absent);
            }
            table::read(table, &range.rows, reading).map(Value::Table)
        }
        Kind::Record(record) => {
            if let Some(absent) = nothing(port, range, reading)? {
                return Ok(absent);
            }
            if let [row] = range.rows.as_slice()
                && let [cell] = row.as_slice()
            {
                return Err(Failure::new(Code::KindMismatch, "")
                    .written(cell.written())
                    .allowed(format!("{}: a range of path, value, unit", port.kind.word()))
                    .remedy("pass the range"));
            }
            let json = unflatten(&range.rows)?;
            (record.from_json)(json)
                .map(Value::Record)
                .map_err(|failure| place::of_path(failure, &range.rows))
        }
        _ => match range.rows.as_slice() {
            [row] if row.len() == 1 => single::bare(port, range, &row[0], reading),
            _ => Err(Failure::new(Code::KindMismatch, "")
                .written(format!("a range of {} cells", range.rows.iter().map(Vec::len).sum::<usize>()))
                .allowed(port.kind.word())
                .remedy("pass one cell")),
        },
    }
}

/// The value of a table or a record port whose range is empty; `None` where there is something to read.
fn nothing(port: &Port, range: &Range, reading: Reading) -> Result<Option<Value>> {
    let empty = range.is_empty() || range.bare_zero(reading.empties);
    match (empty, port.need, &port.kind) {
        (false, ..) => Ok(None),
        // The table itself says whether it may be without rows.
        (true, Need::Required, Kind::Table(_)) if range.is_empty() => Ok(None),
        (true, Need::Required, _) => Err(super::call::empty(port)),
        (true, ..) => Ok(Some(Value::Absent)),
    }
}
