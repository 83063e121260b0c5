//! An operation of single values, worked out for each place of its ranges.

use super::cell::Range;
use super::{Reading, not_too_many, place, single};
use crate::failure::{Code, Failure, Result};
use crate::operation::call::invoke;
use crate::operation::port::Port;
use crate::operation::value::Value;
use crate::operation::{Answer, Operation};

/// Answers laid out as the ranges are.
#[derive(Debug)]
pub(super) struct Block {
    /// How many rows.
    pub(super) rows: usize,
    /// How many columns.
    pub(super) columns: usize,
    /// The answers, row by row.
    pub(super) answers: Vec<Result<Answer>>,
}

/// Calls an operation of single values once for each place of the ranges; a single cell, row or column stretches over the rest.
///
/// # Errors
/// Ranges that do not fit together. What is refused at one place is in the block.
pub(super) fn call(operation: &'static Operation, reading: Reading, ranges: &[Range]) -> Result<Block> {
    not_too_many(operation, ranges.len())?;
    let (rows, columns) = common_size(operation, ranges)?;
    let mut answers = Vec::with_capacity(rows * columns);
    for row in 0..rows {
        for column in 0..columns {
            answers.push(one(operation, reading, ranges, row, column));
        }
    }
    Ok(Block { rows, columns, answers })
}

fn common_size(operation: &Operation, ranges: &[Range]) -> Result<(usize, usize)> {
    let mut size = (1, 1);
    for (port, range) in operation.ports.iter().zip(ranges) {
        let own = range.size();
        let fits = |own: usize, all: usize| own == all || own == 1 || all == 1;
        if !fits(own.0, size.0) || !fits(own.1, size.1) || own.0 * own.1 == 0 {
            return Err(Failure::new(Code::LengthMismatch, port.name)
                .written(format!("{} rows and {} columns", own.0, own.1))
                .allowed(format!("one cell, or {} rows and {} columns as before it", size.0, size.1))
                .remedy("pass ranges of one size"));
        }
        size = (size.0.max(own.0), size.1.max(own.1));
    }
    Ok(size)
}

fn one(
    operation: &'static Operation,
    reading: Reading,
    ranges: &[Range],
    row: usize,
    column: usize,
) -> Result<Answer> {
    let given = operation.ports.iter().zip(ranges);
    let values =
        given.map(|(port, range)| value(port, range, reading, row, column)).collect::<Result<Vec<_>>>()?;
    let here = |failure| place::in_the_sheet(failure, operation, reading.system, ranges, (row, column));
    invoke(operation, values).map_err(here)
}

fn value(port: &Port, range: &Range, reading: Reading, row: usize, column: usize) -> Result<Value> {
    let (i, j) = range.within(row, column);
    let cell = range.cell(i, j);
    let value = if range.alone {
        single::bare(port, range, cell, reading)
    } else {
        single::read(port, cell, single::unit(port, reading.system))
    };
    value.map_err(|failure| place::at(failure.under(port.name), range, (i, j)))
}
