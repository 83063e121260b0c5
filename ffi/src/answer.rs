//! Answers of several kinds: what an operation gives where it is neither one record nor numbers only.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]

use crate::border::read::{self, Holder};
use crate::border::{Message, Numbers, Passed, TextOut, free};
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

/// An answer. Its results are numbered by the constants of its operation.
#[expect(non_camel_case_types, reason = "its name in C")]
pub struct ovs_answer {
    _private: [u8; 0],
}

const fn holder(answer: *const ovs_answer) -> Holder {
    Holder::Answer(Passed::new("answer", answer))
}

/// Every result that is a number, a count or a word, by its place, in US units; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_values_us(
    answer: *const ovs_answer,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    // SAFETY: the caller's promise.
    unsafe { read::values(holder(answer), System::Us, values, Message::new(msg, msg_len)) }
}

/// Every result that is a number, a count or a word, by its place, in SI units; NaN for the others.
///
/// - `values`, `values_len`, out: as many as there is room for.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_values_si(
    answer: *const ovs_answer,
    values: *mut f64,
    values_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let values = Numbers::new("values", values, values_len);
    // SAFETY: the caller's promise.
    unsafe { read::values(holder(answer), System::Si, values, Message::new(msg, msg_len)) }
}

/// A result that is a number, in US units.
///
/// Returns 0, OVS_OUT_OF_RANGE for no such result, OVS_KIND_MISMATCH for another kind, OVS_KEY_MISSING where the answer has
/// none, as do all functions that read one result.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_number_us(
    answer: *const ovs_answer,
    result: c_int,
    number: *mut f64,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    // SAFETY: the caller's promise.
    unsafe { read::number(holder(answer), result, System::Us, number, Message::new(msg, msg_len)) }
}

/// A result that is a number, in SI units.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_number_si(
    answer: *const ovs_answer,
    result: c_int,
    number: *mut f64,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    // SAFETY: the caller's promise.
    unsafe { read::number(holder(answer), result, System::Si, number, Message::new(msg, msg_len)) }
}

/// A result that is a count, or the number of a word.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_count(
    answer: *const ovs_answer,
    result: c_int,
    count: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    // SAFETY: the caller's promise.
    unsafe { read::count(holder(answer), result, count, Message::new(msg, msg_len)) }
}

/// A result that is a text, or a word.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_text(
    answer: *const ovs_answer,
    result: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    // SAFETY: the caller's promise.
    unsafe { read::text(holder(answer), result, out, Message::new(msg, msg_len)) }
}

/// How many rows a result that is a table has.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_rows(
    answer: *const ovs_answer,
    result: c_int,
    rows: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    // SAFETY: the caller's promise.
    unsafe { read::rows(holder(answer), result, rows, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a result that is a table, in US units; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_column_us(
    answer: *const ovs_answer,
    result: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    // SAFETY: the caller's promise.
    unsafe { read::column(holder(answer), result, column, System::Us, cells, Message::new(msg, msg_len)) }
}

/// A column of numbers, counts or words of a result that is a table, in SI units; NaN for an empty cell.
///
/// - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_column_si(
    answer: *const ovs_answer,
    result: c_int,
    column: c_int,
    cells: *mut f64,
    cells_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let cells = Numbers::new("cells", cells, cells_len);
    // SAFETY: the caller's promise.
    unsafe { read::column(holder(answer), result, column, System::Si, cells, Message::new(msg, msg_len)) }
}

/// A text, or a word, of a result that is a table; OVS_EMPTY_CELL where that row has none.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_column_text(
    answer: *const ovs_answer,
    result: c_int,
    column: c_int,
    row: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    // SAFETY: the caller's promise.
    unsafe { read::column_text(holder(answer), [result, column, row], out, Message::new(msg, msg_len)) }
}

/// The numbers of the notes, in their order.
///
/// - `notes`, `notes_len`, out: as many as there is room for.
/// - `count`, out: how many there are; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_notes(
    answer: *const ovs_answer,
    notes: *mut c_int,
    notes_len: c_int,
    count: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    // SAFETY: the caller's promise.
    unsafe {
        read::notes(Passed::new("answer", answer), (notes, notes_len), count, Message::new(msg, msg_len))
    }
}

/// The sentence of a note, the first being 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_note_text(
    answer: *const ovs_answer,
    note: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("text", text, text_len, needed);
    // SAFETY: the caller's promise.
    unsafe { read::note_text(Passed::new("answer", answer), note, out, Message::new(msg, msg_len)) }
}

/// The whole answer as JSON, in US units: results, notes, where each result comes from, what was taken, not given.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_to_json_us(
    answer: *const ovs_answer,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    // SAFETY: the caller's promise.
    unsafe {
        read::answer_to_json(Passed::new("answer", answer), System::Us, out, Message::new(msg, msg_len))
    }
}

/// The whole answer as JSON, in SI units: results, notes, where each result comes from, what was taken, not given.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_to_json_si(
    answer: *const ovs_answer,
    json: *mut c_char,
    json_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let out = TextOut::new("json", json, json_len, needed);
    // SAFETY: the caller's promise.
    unsafe {
        read::answer_to_json(Passed::new("answer", answer), System::Si, out, Message::new(msg, msg_len))
    }
}

/// Frees an answer; null is nothing.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_answer_free(answer: *mut ovs_answer) {
    // SAFETY: the caller's promise.
    unsafe { free(answer) }
}
