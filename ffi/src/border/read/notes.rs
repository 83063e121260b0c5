//! The notes of an answer.

use super::within;
use crate::border::array::put_int;
use crate::border::guard::{internal, negative, null, status};
use crate::border::handle::Passed;
use crate::border::message::Message;
use crate::border::text_out::TextOut;
use std::ffi::c_int;

/// The numbers of an answer's notes and how many there are.
///
/// # Safety
/// The pointers are null or have their length; the answer came from the library.
#[expect(unsafe_code, reason = "writes the caller's array")]
pub(crate) unsafe fn notes(
    passed: Passed,
    (notes, length): (*mut c_int, c_int),
    count: *mut c_int,
    message: Message,
) -> c_int {
    status(message, || {
        let room = usize::try_from(length).map_err(|_| negative("notes_len", length))?;
        if room > 0 && notes.is_null() {
            return Err(null("notes"));
        }
        // SAFETY: as this function's.
        let (_, answer) = unsafe { passed.answer() }?;
        let total = c_int::try_from(answer.notes.len()).map_err(|_| internal())?;
        for (at, note) in answer.notes.iter().take(room).enumerate() {
            // SAFETY: not null where there is room, and `at` is less than that.
            unsafe { notes.add(at).write_unaligned(note.code.number()) };
        }
        // SAFETY: as this function's.
        unsafe { put_int(count, total) };
        Ok(())
    })
}

/// The sentence of one of an answer's notes.
///
/// # Safety
/// The pointers are null or have their length; the answer came from the library.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn note_text(passed: Passed, place: c_int, out: TextOut, message: Message) -> c_int {
    status(message, || {
        out.open()?;
        // SAFETY: as this function's.
        let (_, answer) = unsafe { passed.answer() }?;
        let at = within("note", place, answer.notes.len())?;
        let note = answer.notes.get(at).ok_or_else(internal)?;
        // SAFETY: as this function's.
        unsafe { out.put_whole(&note.text) }
    })
}
