//! Single values: numbers, counts, words, texts.

use super::{Holder, other_kind};
use crate::border::array::{Numbers, put_int};
use crate::border::guard::{internal, null, status};
use crate::border::message::Message;
use crate::border::text_out::TextOut;
use overslab::operation::{Kind, Value, call};
use overslab::quantity::System;
use std::ffi::c_int;

/// Every number, count and word by its place; NaN where there is none.
///
/// # Safety
/// The pointers are null or have their length; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's array")]
pub(crate) unsafe fn values(holder: Holder, system: System, values: Numbers, message: Message) -> c_int {
    status(message, || {
        values.check()?;
        // SAFETY: as this function's.
        let (ports, held) = unsafe { holder.all() }?;
        let numbers = ports
            .iter()
            .zip(held)
            .map(|(port, value)| call::from_base(port, system, call::flat_number(value)));
        // SAFETY: as this function's.
        unsafe { values.put_first(numbers) };
        Ok(())
    })
}

/// The number at that place.
///
/// # Safety
/// The pointers are null or can be written; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's double")]
pub(crate) unsafe fn number(
    holder: Holder,
    place: c_int,
    system: System,
    out: *mut f64,
    message: Message,
) -> c_int {
    status(message, || {
        if out.is_null() {
            return Err(null("number"));
        }
        // SAFETY: as this function's.
        let (port, value) = unsafe { holder.one(place) }?;
        let Value::Number(base) = value else { return Err(other_kind(port, value, "a number")) };
        // SAFETY: not null, and the caller promises a double there.
        unsafe { out.write_unaligned(call::from_base(port, system, *base)) };
        Ok(())
    })
}

/// The count or the place of the word at that place.
///
/// # Safety
/// The pointers are null or can be written; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's int")]
pub(crate) unsafe fn count(holder: Holder, place: c_int, out: *mut c_int, message: Message) -> c_int {
    status(message, || {
        if out.is_null() {
            return Err(null("count"));
        }
        // SAFETY: as this function's.
        let (port, value) = unsafe { holder.one(place) }?;
        let count = match value {
            Value::Count(count) => c_int::try_from(*count).map_err(|_| internal())?,
            Value::Choice(place) => c_int::try_from(*place).map_err(|_| internal())?,
            _ => return Err(other_kind(port, value, "a count or a word")),
        };
        // SAFETY: as this function's.
        unsafe { put_int(out, count) };
        Ok(())
    })
}

/// The text at that place, or the word of a choice.
///
/// # Safety
/// The pointers are null or have their length; the holder came from the library.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn text(holder: Holder, place: c_int, out: TextOut, message: Message) -> c_int {
    status(message, || {
        out.open()?;
        // SAFETY: as this function's.
        let (port, value) = unsafe { holder.one(place) }?;
        let text = match (&port.kind, value) {
            (_, Value::Text(text)) => text.as_str(),
            (Kind::Choice(words), Value::Choice(place)) => words.get(*place).copied().ok_or_else(internal)?,
            _ => return Err(other_kind(port, value, "a text or a word")),
        };
        // SAFETY: as this function's.
        unsafe { out.put_whole(text) }
    })
}
