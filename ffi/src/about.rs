//! What the library says of itself: its version, and the words behind its numbers.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]

use crate::border::{Message, TextOut, status};
use overslab::failure::{Code, Failure, Result, describe};
use overslab::note::NoteCode;
use std::ffi::{c_char, c_int};

/// The status of success.
pub const OVS_OK: c_int = 0;

/// The number of the ABI that this header describes; compare it with ovs_abi_version() once after loading.
pub const OVS_ABI_VERSION: c_int = 0;

/// A buffer of this many bytes holds every message whole.
pub const OVS_MESSAGE_SIZE: c_int = 201;

/// The number of the ABI that the library was built with. It grows when a function changes or goes, not when one is added.
#[unsafe(no_mangle)]
pub extern "C" fn ovs_abi_version() -> c_int {
    OVS_ABI_VERSION
}

/// Writes the version of the library: `0.1.0`.
///
/// Returns 0, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_version(text: *mut c_char, text_len: c_int) -> c_int {
    // SAFETY: the caller's promise.
    unsafe { say(text, text_len, || Ok(env!("CARGO_PKG_VERSION").to_owned())) }
}

/// Writes the name of a status and what it means: `OUT_OF_RANGE: the value lies outside its range`.
///
/// Returns 0, OVS_OUT_OF_RANGE where there is no such status, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_status_text(status: c_int, text: *mut c_char, text_len: c_int) -> c_int {
    let words = || match (status, Code::from_number(status)) {
        (OVS_OK, _) => Ok(format!("OK: {}", describe(OVS_OK))),
        (_, Some(code)) => Ok(format!("{}: {}", code.name(), code.meaning())),
        _ => Err(unknown("status", status)),
    };
    // SAFETY: the caller's promise.
    unsafe { say(text, text_len, words) }
}

/// Writes the name of a note and what it means.
///
/// Returns 0, OVS_OUT_OF_RANGE where there is no such note, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_note_text(note: c_int, text: *mut c_char, text_len: c_int) -> c_int {
    let words = || match NoteCode::from_number(note) {
        Some(code) => Ok(format!("{}: {}", code.name(), code.meaning())),
        None => Err(unknown("note", note)),
    };
    // SAFETY: the caller's promise.
    unsafe { say(text, text_len, words) }
}

unsafe fn say(text: *mut c_char, text_len: c_int, words: impl FnOnce() -> Result<String>) -> c_int {
    let out = TextOut::new("text", text, text_len, std::ptr::null_mut());
    status(Message::none(), || {
        out.open()?;
        let words = words()?;
        // SAFETY: as this function's.
        unsafe { out.put_whole(&words) }
    })
}

fn unknown(path: &str, number: c_int) -> Box<Failure> {
    Failure::new(Code::OutOfRange, path)
        .written(number.to_string())
        .allowed("a number of the table")
        .remedy("use the constants")
}
