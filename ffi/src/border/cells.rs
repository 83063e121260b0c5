//! Rows of cells into the caller's arrays.

use super::array::length;
use super::guard::{internal, null};
use super::text_out::TextOut;
use crate::sheet::{OVS_CELL_EMPTY, OVS_CELL_NUMBER, OVS_CELL_REFUSED, OVS_CELL_TEXT};
use overslab::failure::{Code, Failure, Result};
use serde_json::Value as Json;
use std::ffi::c_int;

/// The caller's arrays for a block of cells, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Blocks {
    /// The number of each cell.
    pub(crate) numbers: *mut f64,
    /// The kind of each cell.
    pub(crate) kinds: *mut c_int,
    /// How many elements both have.
    pub(crate) capacity: c_int,
    /// Where the number of rows goes.
    pub(crate) rows: *mut c_int,
    /// Where the number of columns goes.
    pub(crate) columns: *mut c_int,
}

impl Blocks {
    /// Refuses a negative capacity and null; arrays may be null where the capacity is 0.
    pub(crate) fn check(self) -> Result<()> {
        let capacity = length("capacity", self.capacity)?;
        let missing = [
            ("numbers", capacity > 0 && self.numbers.is_null()),
            ("kinds", capacity > 0 && self.kinds.is_null()),
            ("rows", self.rows.is_null()),
            ("columns", self.columns.is_null()),
        ];
        missing.into_iter().try_for_each(|(path, missing)| if missing { Err(null(path)) } else { Ok(()) })
    }

    /// Writes the cells, all rows being of one length, and their texts.
    ///
    /// # Safety
    /// The arrays have `capacity` elements, the counts and the text their places.
    ///
    /// # Errors
    /// `BUFFER_SHORT`; the counts and the bytes needed are told all the same.
    #[expect(unsafe_code, reason = "writes the caller's arrays, within their capacity")]
    pub(crate) unsafe fn put(self, cells: &[Vec<Json>], texts: TextOut) -> Result<()> {
        let columns = cells.first().map_or(0, Vec::len);
        let wanted = cells.len() * columns;
        let count = |count: usize| c_int::try_from(count).map_err(|_| internal());
        let (row_count, column_count) = (count(cells.len())?, count(columns)?);
        let words: Vec<String> = cells.iter().flatten().filter_map(Json::as_str).map(one_line).collect();
        // SAFETY: found not null, and the caller promises a place for an int at each.
        unsafe {
            self.rows.write_unaligned(row_count);
            self.columns.write_unaligned(column_count);
        }
        // SAFETY: the caller promises the buffer.
        let told = unsafe { texts.put_whole(&words.join("\n")) };
        if length("capacity", self.capacity)? < wanted {
            return Err(Failure::new(Code::BufferShort, "numbers")
                .written(format!("{} cells", self.capacity))
                .allowed(format!("{wanted} cells"))
                .remedy("call again with arrays of that many"));
        }
        told?;
        for (place, cell) in cells.iter().flatten().enumerate().take(wanted) {
            let (kind, number) = apart(cell);
            // SAFETY: found not null, and `place` is less than the capacity that the caller promises.
            unsafe {
                self.kinds.add(place).write_unaligned(kind);
                self.numbers.add(place).write_unaligned(number);
            }
        }
        Ok(())
    }
}

/// The kind of a cell and its number.
fn apart(cell: &Json) -> (c_int, f64) {
    match cell {
        Json::Number(number) => (OVS_CELL_NUMBER, number.as_f64().unwrap_or(f64::NAN)),
        Json::String(_) => (OVS_CELL_TEXT, 0.0),
        Json::Object(refused) => {
            (OVS_CELL_REFUSED, refused.get("code").and_then(Json::as_f64).unwrap_or(f64::NAN))
        }
        _ => (OVS_CELL_EMPTY, 0.0),
    }
}

fn one_line(text: &str) -> String {
    text.replace(['\n', '\r'], " ")
}
