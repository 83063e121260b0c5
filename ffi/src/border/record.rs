//! Record rows: the three shapes of their answers, and the full text of a refusal.

use super::array::{Numbers, put_int};
use super::guard::{caught, explained, internal, status};
use super::handle::{Handle, Record};
use super::message::Message;
use super::notes::Notes;
use super::request::Request;
use super::text_out::TextOut;
use overslab::failure::Result;
use overslab::operation::{Answer, Need, RecordType, Value, call};
use std::ffi::c_int;
use std::fmt::Write;

/// Calls an operation whose only result is a record; gives the record, or null.
///
/// # Safety
/// Every pointer is null or has its length, and records came from the library.
#[expect(unsafe_code, reason = "hands the caller's promise on")]
pub(crate) unsafe fn make<Opaque>(
    request: Request<'_>,
    kind: &'static RecordType,
    status: *mut c_int,
    notes: Notes,
    message: Message,
) -> *mut Opaque {
    let body = || {
        notes.check()?;
        // SAFETY: as this function's.
        let answer = unsafe { request.answer() }?;
        let Some(Value::Record(shared)) = answer.results.first() else { return Err(internal()) };
        let record = Record::new(kind, shared.clone())?;
        // SAFETY: as this function's.
        unsafe { notes.put(&answer.notes) };
        Ok(Handle::Record(record))
    };
    // SAFETY: as this function's.
    unsafe { pointer(status, message, body) }
}

/// Calls an operation with results of several kinds; gives the answer, or null.
///
/// # Safety
/// Every pointer is null or has its length, and records came from the library.
#[expect(unsafe_code, reason = "hands the caller's promise on")]
pub(crate) unsafe fn answer<Opaque>(
    request: Request<'_>,
    status: *mut c_int,
    notes: Notes,
    message: Message,
) -> *mut Opaque {
    let body = || {
        notes.check()?;
        // SAFETY: as this function's.
        let answer = unsafe { request.answer() }?;
        // SAFETY: as this function's.
        unsafe { notes.put(&answer.notes) };
        Ok(Handle::Answer(request.row, answer))
    };
    // SAFETY: as this function's.
    unsafe { pointer(status, message, body) }
}

/// Calls an operation whose results are all numbers, counts and words.
///
/// # Safety
/// Every pointer is null or has its length, and records came from the library.
#[expect(unsafe_code, reason = "writes the caller's results")]
pub(crate) unsafe fn numbers(
    request: Request<'_>,
    results: Numbers,
    notes: Notes,
    message: Message,
) -> c_int {
    status(message, || {
        notes.check()?;
        results.check()?;
        // SAFETY: as this function's.
        let answer = unsafe { request.answer() }?;
        let values = request.row.results.iter().zip(&answer.results);
        let numbers =
            values.map(|(port, value)| call::from_base(port, request.system, call::flat_number(value)));
        // SAFETY: as this function's.
        unsafe {
            results.put_first(numbers);
            notes.put(&answer.notes);
        }
        Ok(())
    })
}

/// The status of a call with these inputs and its reason in full; after success its notes and what was taken, one a line.
///
/// # Safety
/// Every pointer is null or has its length, and records came from the library.
#[expect(unsafe_code, reason = "hands the caller's promise on")]
pub(crate) unsafe fn why(request: Request<'_>, text: TextOut) -> c_int {
    // SAFETY: as this function's.
    unsafe { explained(text, || request.answer().map(|answer| said(request, &answer))) }
}

/// What the reader of an answer must know: its notes, and what was taken, not given.
fn said(request: Request<'_>, answer: &Answer) -> String {
    let mut text = String::new();
    for note in &answer.notes {
        let _ = writeln!(text, "{}: {}", note.code.name(), note.text);
    }
    for port in answer.taken.iter().filter_map(|&place| request.row.ports.get(place)) {
        if let Need::Fallback { value, why } = port.need {
            let _ = writeln!(text, "{} = {value}: taken, not given; {why}", port.name);
        }
    }
    text.truncate(text.trim_end().len());
    text
}

/// Runs a body that makes something; gives a pointer to it, or null.
///
/// # Safety
/// `status` is null or can be written.
#[expect(unsafe_code, reason = "writes the caller's status")]
pub(super) unsafe fn pointer<Opaque>(
    status: *mut c_int,
    message: Message,
    body: impl FnOnce() -> Result<Handle>,
) -> *mut Opaque {
    let (pointer, code) = match caught(message, body) {
        Ok(handle) => (handle.into_pointer(), 0),
        Err(code) => (std::ptr::null_mut(), code),
    };
    // SAFETY: as this function's.
    unsafe { put_int(status, code) };
    pointer
}
