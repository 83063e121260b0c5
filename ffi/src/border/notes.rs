//! The numbers of an answer's notes.

use super::array::length;
use super::guard::null;
use overslab::failure::Result;
use overslab::note::Note;
use std::ffi::c_int;

/// Where the numbers of notes go, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Notes {
    start: *mut c_int,
    length: c_int,
}

impl Notes {
    /// An array of that many ints; it may be null where the length is 0.
    pub(crate) const fn new(start: *mut c_int, length: c_int) -> Self {
        Self { start, length }
    }

    /// # Errors
    /// `LENGTH_NEGATIVE`, `NULL_POINTER`.
    pub(super) fn check(self) -> Result<()> {
        match (length("notes_len", self.length)?, self.start.is_null()) {
            (1.., true) => Err(null("notes")),
            _ => Ok(()),
        }
    }

    /// Writes the number of each kind of note once, in the order met, and zeros behind them.
    ///
    /// # Safety
    /// The array was checked and has its length.
    #[expect(unsafe_code, reason = "writes the caller's array")]
    pub(super) unsafe fn put(self, notes: &[Note]) {
        let mut numbers: Vec<c_int> = Vec::new();
        for number in notes.iter().map(|note| note.code.number()) {
            if !numbers.contains(&number) {
                numbers.push(number);
            }
        }
        for at in 0..usize::try_from(self.length).unwrap_or(0) {
            // SAFETY: not null where there is a length, and `at` is less than that.
            unsafe { self.start.add(at).write_unaligned(numbers.get(at).copied().unwrap_or(0)) };
        }
    }
}
