//! The caller's buffers for text: the message of a call, and the part that it shares with longer texts.

use super::guard::{negative, null};
use overslab::failure::Result;
use std::ffi::{c_char, c_int};

/// A caller's buffer for text, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Buffer {
    start: *mut c_char,
    length: c_int,
}

impl Buffer {
    pub(super) const fn new(start: *mut c_char, length: c_int) -> Self {
        Self { start, length }
    }

    /// Whether the buffer can be written: null is one only with no length.
    #[inline]
    pub(super) fn check(self, path: &str) -> Result<()> {
        match self.length {
            0 => Ok(()),
            ..=-1 => Err(negative(path, self.length)),
            1.. if self.start.is_null() => Err(null(path)),
            1.. => Ok(()),
        }
    }

    /// How many bytes it takes; none where it is absent or cannot be written.
    #[inline]
    pub(super) fn room(self) -> usize {
        if self.start.is_null() { 0 } else { usize::try_from(self.length).unwrap_or(0) }
    }

    /// Writes the empty text.
    #[inline]
    #[expect(unsafe_code, reason = "writes into the caller's buffer, within its length")]
    pub(super) fn clear(self) {
        if self.room() > 0 {
            // SAFETY: the caller of the export promises `length` bytes at `start`, and there is at least one.
            unsafe { self.start.write(0) };
        }
    }

    /// Writes as much of the text as fits, never a part of a character, and its end.
    #[inline]
    #[expect(unsafe_code, reason = "writes into the caller's buffer, within its length")]
    pub(super) fn put(self, text: &str) {
        let Some(most) = self.room().checked_sub(1) else { return };
        let fits = text.floor_char_boundary(most);
        // SAFETY: the caller of the export promises `length` bytes at `start`; `fits` is less than that, and the text is
        // ours, so the two do not overlap.
        unsafe {
            std::ptr::copy_nonoverlapping(text.as_ptr(), self.start.cast::<u8>(), fits);
            self.start.add(fits).write(0);
        }
    }
}

/// The buffer of a call's message.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Message(Buffer);

impl Message {
    /// The caller's buffer, of that many bytes.
    pub(crate) const fn new(start: *mut c_char, length: c_int) -> Self {
        Self(Buffer::new(start, length))
    }

    /// No buffer.
    pub(crate) const fn none() -> Self {
        Self::new(std::ptr::null_mut(), 0)
    }

    /// Checks the buffer and empties it.
    #[inline]
    pub(super) fn open(self) -> Result<()> {
        self.0.check("msg")?;
        self.0.clear();
        Ok(())
    }

    /// Writes a line.
    pub(super) fn say(self, line: &str) {
        self.0.put(line);
    }
}
