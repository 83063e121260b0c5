//! The call by name: any operation, its inputs and its answer as JSON.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]

use crate::border::json::{object, row_of};
use crate::border::{Message, TextIn, TextOut, text_to_text};
use overslab::failure::Result;
use overslab::operation::{encode, terms};
use overslab::quantity::System;
use std::ffi::{c_char, c_int};

/// Calls any operation by its name. A bare number in `args_json` is in the unit of its port in US units, as are the results.
///
/// - `operation`, `operation_len`: its name in the table: without `ovs_` and `_us`.
/// - `args_json`, `args_len`: an object of the ports: `{"name": value}`; a text such as `"2 1/2 in"` says its own unit.
/// - `out`, `out_len`, `needed`: an object of `results`, `notes`, `basis` and `taken`.
///
/// Returns 0, OVS_OPERATION_UNKNOWN, OVS_SYNTAX, OVS_BUFFER_SHORT, or what the operation refuses.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_call_us(
    operation: *const c_char,
    operation_len: c_int,
    args_json: *const c_char,
    args_len: c_int,
    out: *mut c_char,
    out_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given =
        [TextIn::new("operation", operation, operation_len), TextIn::new("args_json", args_json, args_len)];
    let out = TextOut::new("out", out, out_len, needed);
    // SAFETY: the caller's promise.
    unsafe { text_to_text(given, out, Message::new(msg, msg_len), |texts| answer(System::Us, texts)) }
}

/// Calls any operation by its name, as ovs_call_us, in SI units.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_call_si(
    operation: *const c_char,
    operation_len: c_int,
    args_json: *const c_char,
    args_len: c_int,
    out: *mut c_char,
    out_len: c_int,
    needed: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given =
        [TextIn::new("operation", operation, operation_len), TextIn::new("args_json", args_json, args_len)];
    let out = TextOut::new("out", out, out_len, needed);
    // SAFETY: the caller's promise.
    unsafe { text_to_text(given, out, Message::new(msg, msg_len), |texts| answer(System::Si, texts)) }
}

fn answer(system: System, [name, args]: [&str; 2]) -> Result<String> {
    let row = row_of(name)?;
    let args = object("args_json", args)?;
    let answer = terms::answer(row, &args, system)?;
    Ok(encode::answer(row, &answer, system).to_string())
}
