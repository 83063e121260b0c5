//! What the spreadsheet faces call: any operation from ranges of cells, its answer as cells.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]

use crate::border::{Blocks, Message, TextIn, TextOut, status};
use overslab::operation::sheet::{Reply, respond};
use std::ffi::{c_char, c_int};

/// A cell with nothing in it.
pub const OVS_CELL_EMPTY: c_int = 0;

/// A cell with a number.
pub const OVS_CELL_NUMBER: c_int = 1;

/// A cell with a text.
pub const OVS_CELL_TEXT: c_int = 2;

/// A cell whose inputs are refused, among others that are not; its number is the status.
pub const OVS_CELL_REFUSED: c_int = 3;

/// Calls any operation as a spreadsheet does: cells in, cells out.
///
/// - `request`, `request_len`: `{"operation": its name, "system": "us" | "si", "want": "value" | "why" | "get", "result":
///   a name, "empty": "null" | "zero", "arguments": [...]}`. An argument is a cell (null, number, text, truth value) or rows
///   of cells; one per port, those at the end may be left out. A number may also be `{"exact": [sign, high, low, power]}`,
///   which is sign (high 2^26 + low) 2^power. `result` goes with `get`. `empty` says how the sheet hands over a lone empty
///   cell; left out, as a zero, which is then refused where an empty cell is likelier.
/// - `answer`, `answer_len`, `needed`: `{"cells": rows}`, where a refused place among others is `{"code": status}`; or
///   `{"failure": {"code", "name", "path", "line", "sentence"}}` with `row` and `column` of the range where they are known.
///
/// Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which then stands in the answer.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sheet(
    request: *const c_char,
    request_len: c_int,
    answer: *mut c_char,
    answer_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let request = TextIn::new("request", request, request_len);
    let answer = TextOut::new("answer", answer, answer_len, needed);
    status(Message::none(), || {
        answer.open()?;
        // SAFETY: the caller's promise.
        let reply = respond(unsafe { request.read() }?);
        // SAFETY: the caller's promise.
        unsafe { answer.put_whole(&reply.to_json().to_string()) }?;
        match reply {
            Reply::Cells(_) => Ok(()),
            Reply::Failure(failure) => Err(failure),
        }
    })
}

/// Calls any operation as ovs_sheet does, for callers that do not read JSON: the cells come back in arrays, row by row.
///
/// - `request`, `request_len`: as for ovs_sheet.
/// - `numbers`, `kinds`, `capacity`: the number and the kind of each cell, OVS_CELL_...; `capacity` elements each.
/// - `rows`, `columns`, out: how many; written also where the capacity or the buffer is too short.
/// - `texts`, `texts_len`, `needed`, out: the texts of all text cells in order, with a line feed between; a line feed
///   within a text comes as a blank.
///
/// Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which `msg` then tells.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sheet_values(
    request: *const c_char,
    request_len: c_int,
    numbers: *mut f64,
    kinds: *mut c_int,
    capacity: c_int,
    rows: *mut c_int,
    columns: *mut c_int,
    texts: *mut c_char,
    texts_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let request = TextIn::new("request", request, request_len);
    let texts = TextOut::new("texts", texts, texts_len, needed);
    let blocks = Blocks { numbers, kinds, capacity, rows, columns };
    status(Message::new(msg, msg_len), || {
        texts.open()?;
        blocks.check()?;
        // SAFETY: the caller's promise.
        match respond(unsafe { request.read() }?) {
            // SAFETY: the caller's promise.
            Reply::Cells(cells) => unsafe { blocks.put(&cells, texts) },
            Reply::Failure(failure) => Err(failure),
        }
    })
}
