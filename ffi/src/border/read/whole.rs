//! Whole records and answers: as JSON, from JSON, one out of the other.

use super::{Holder, other_kind};
use crate::border::guard::status;
use crate::border::handle::{Handle, Passed, Record};
use crate::border::json;
use crate::border::message::Message;
use crate::border::record::pointer;
use crate::border::text_in::TextIn;
use crate::border::text_out::TextOut;
use overslab::operation::{Kind, RecordType, Value, encode};
use overslab::quantity::System;
use std::ffi::c_int;

/// A pointer of its own to the record at that place of an answer.
///
/// # Safety
/// The pointers are null or can be written; the answer came from the library.
#[expect(unsafe_code, reason = "hands the caller's promise on")]
pub(crate) unsafe fn record<Opaque>(
    kind: &'static RecordType,
    answer: Passed,
    place: c_int,
    status: *mut c_int,
    message: Message,
) -> *mut Opaque {
    let body = || {
        // SAFETY: as this function's.
        let (port, value) = unsafe { Holder::Answer(answer).one(place) }?;
        match (&port.kind, value) {
            (Kind::Record(held), Value::Record(shared)) if std::ptr::eq(*held, kind) => {
                Record::new(kind, shared.clone()).map(Handle::Record)
            }
            _ => Err(other_kind(port, value, &format!("a {} record", kind.name))),
        }
    };
    // SAFETY: as this function's.
    unsafe { pointer(status, message, body) }
}

/// The canonical JSON of a record.
///
/// # Safety
/// The pointers are null or have their length; the record came from the library.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn to_json(
    kind: &'static RecordType,
    passed: Passed,
    out: TextOut,
    message: Message,
) -> c_int {
    status(message, || {
        out.open()?;
        // SAFETY: as this function's.
        unsafe { out.put_whole(&passed.record(kind)?.json()?) }
    })
}

/// A record from its JSON.
///
/// # Safety
/// The pointers are null or have their length.
#[expect(unsafe_code, reason = "reads the caller's text")]
pub(crate) unsafe fn from_json<Opaque>(
    kind: &'static RecordType,
    text: TextIn,
    status: *mut c_int,
    message: Message,
) -> *mut Opaque {
    let body = || {
        // SAFETY: as this function's.
        let given = json::whole("json", unsafe { text.read() }?)?;
        Record::new(kind, (kind.from_json)(given)?).map(Handle::Record)
    };
    // SAFETY: as this function's.
    unsafe { pointer(status, message, body) }
}

/// A whole answer as JSON.
///
/// # Safety
/// The pointers are null or have their length; the answer came from the library.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn answer_to_json(passed: Passed, system: System, out: TextOut, message: Message) -> c_int {
    status(message, || {
        out.open()?;
        // SAFETY: as this function's.
        let (row, answer) = unsafe { passed.answer() }?;
        let json = encode::answer(row, answer, system).to_string();
        // SAFETY: as this function's.
        unsafe { out.put_whole(&json) }
    })
}
