//! Text that goes out: into the caller's buffer, with the bytes it needs.

use super::guard::status;
use super::message::{Buffer, Message};
use super::text_in::TextIn;
use overslab::failure::{Code, Failure, Result};
use std::ffi::{c_char, c_int};

/// A caller's buffer for text and where the bytes needed go, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct TextOut {
    path: &'static str,
    buffer: Buffer,
    needed: *mut c_int,
}

impl TextOut {
    /// The buffer of that many bytes; `needed` may be null, as may the buffer where its length is 0.
    pub(crate) const fn new(
        path: &'static str,
        start: *mut c_char,
        length: c_int,
        needed: *mut c_int,
    ) -> Self {
        Self { path, buffer: Buffer::new(start, length), needed }
    }

    /// Checks the buffer and empties it: a text is terminated whatever happens after.
    ///
    /// # Errors
    /// `LENGTH_NEGATIVE`, `NULL_POINTER`.
    pub(crate) fn open(self) -> Result<()> {
        self.buffer.check(self.path)?;
        self.buffer.clear();
        Ok(())
    }

    /// Writes as much as fits and tells the bytes needed, the ending zero among them.
    ///
    /// # Safety
    /// The buffer is null or has its length; `needed` is null or can be written.
    #[expect(unsafe_code, reason = "tells the caller the bytes needed")]
    pub(crate) unsafe fn put(self, text: &str) {
        self.buffer.put(text);
        if !self.needed.is_null() {
            let needed = c_int::try_from(text.len().saturating_add(1)).unwrap_or(c_int::MAX);
            // SAFETY: not null, and the caller promises a place for an int.
            unsafe { self.needed.write_unaligned(needed) };
        }
    }

    /// Writes a text that is of use only as a whole.
    ///
    /// # Safety
    /// As [`TextOut::put`].
    ///
    /// # Errors
    /// `BUFFER_SHORT` where there is a buffer and the text does not fit; it then holds the beginning.
    #[expect(unsafe_code, reason = "hands the caller's promise on")]
    pub(crate) unsafe fn put_whole(self, text: &str) -> Result<()> {
        // SAFETY: as this function's.
        unsafe { self.put(text) };
        let (room, needed) = (self.buffer.room(), text.len().saturating_add(1));
        if room == 0 || needed <= room {
            return Ok(());
        }
        Err(Failure::new(Code::BufferShort, self.path)
            .written(format!("{room} bytes"))
            .allowed(format!("{needed} bytes"))
            .remedy("call again with a buffer of the bytes needed"))
    }
}

/// A whole export: texts in, one text out.
///
/// # Safety
/// Every pointer is null or has its length.
#[expect(unsafe_code, reason = "reads and writes the caller's texts")]
pub(crate) unsafe fn text_to_text<const N: usize>(
    given: [TextIn; N],
    out: TextOut,
    message: Message,
    body: impl FnOnce([&str; N]) -> Result<String>,
) -> c_int {
    status(message, || {
        out.open()?;
        let mut texts = [""; N];
        for (text, given) in texts.iter_mut().zip(given) {
            // SAFETY: the caller promises these bytes for the length of the call.
            *text = unsafe { given.read() }?;
        }
        let answer = body(texts)?;
        // SAFETY: the caller promises the buffer.
        unsafe { out.put_whole(&answer) }
    })
}
