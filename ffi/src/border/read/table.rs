//! Tables, a column or a cell at a time.

use super::{Holder, other_kind, within};
use crate::border::array::{Numbers, put_int};
use crate::border::guard::{internal, null, status};
use crate::border::message::Message;
use crate::border::text_out::TextOut;
use overslab::failure::{Code, Failure};
use overslab::operation::{Column, Kind, Value, call};
use overslab::quantity::System;
use std::ffi::c_int;

/// How many rows the table at that place has.
///
/// # Safety
/// The pointers are null or can be written; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's int")]
pub(crate) unsafe fn rows(holder: Holder, place: c_int, out: *mut c_int, message: Message) -> c_int {
    status(message, || {
        if out.is_null() {
            return Err(null("rows"));
        }
        // SAFETY: as this function's.
        let (_, columns) = unsafe { holder.table(place) }?;
        let rows = c_int::try_from(columns.rows).map_err(|_| internal())?;
        // SAFETY: as this function's.
        unsafe { put_int(out, rows) };
        Ok(())
    })
}

/// A column of numbers, counts or words of the table at that place; NaN for an empty cell.
///
/// # Safety
/// The pointers are null or have their length; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's array")]
pub(crate) unsafe fn column(
    holder: Holder,
    place: c_int,
    column: c_int,
    system: System,
    cells: Numbers,
    message: Message,
) -> c_int {
    status(message, || {
        cells.check()?;
        // SAFETY: as this function's.
        let (table, columns) = unsafe { holder.table(place) }?;
        let at = within("column", column, table.columns.len())?;
        let (port, column) = table.columns.get(at).zip(columns.columns.get(at)).ok_or_else(internal)?;
        if matches!(port.kind, Kind::Text) {
            return Err(other_kind(port, &Value::Text(String::new()), "a column of numbers"));
        }
        if cells.room() < columns.rows {
            return Err(Failure::new(Code::BufferShort, "cells")
                .written(format!("{} places", cells.room()))
                .allowed(format!("{} places", columns.rows))
                .remedy("pass an array of as many places as the table has rows"));
        }
        let numbers = (0..columns.rows).map(|row| call::from_base(port, system, cell(column, row)));
        // SAFETY: as this function's.
        unsafe { cells.put_first(numbers) };
        Ok(())
    })
}

fn cell(column: &Column, row: usize) -> f64 {
    let number = match column {
        Column::Numbers(list) => list.get(row).copied(),
        Column::Counts(list) => list.get(row).copied().flatten().map(|count| count as f64),
        Column::Choices(list) => list.get(row).copied().flatten().map(|place| place as f64),
        Column::Absent | Column::Texts(_) => None,
    };
    number.unwrap_or(f64::NAN)
}

/// A text, or the word of a choice, of the table at that place.
///
/// # Safety
/// The pointers are null or have their length; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn column_text(
    holder: Holder,
    [place, column, row]: [c_int; 3],
    out: TextOut,
    message: Message,
) -> c_int {
    status(message, || {
        out.open()?;
        // SAFETY: as this function's.
        let (table, columns) = unsafe { holder.table(place) }?;
        let at = within("column", column, table.columns.len())?;
        let (port, column) = table.columns.get(at).zip(columns.columns.get(at)).ok_or_else(internal)?;
        let row = within("row", row, columns.rows)?;
        let text = match (&port.kind, column) {
            (Kind::Text, Column::Texts(list)) => list.get(row).and_then(|text| text.as_deref()),
            (Kind::Choice(words), Column::Choices(list)) => {
                list.get(row).copied().flatten().and_then(|place| words.get(place).copied())
            }
            (Kind::Text | Kind::Choice(_), _) => None,
            _ => return Err(other_kind(port, &Value::Count(0), "a column of texts or words")),
        };
        let empty = || {
            Failure::new(Code::EmptyCell, port.name).allowed(port.meaning).remedy("there is none in this row")
        };
        // SAFETY: as this function's.
        unsafe { out.put_whole(text.ok_or_else(empty)?) }
    })
}
