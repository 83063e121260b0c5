//! Text that comes in: bytes with their length, which must be UTF-8.

use super::guard::{negative, null};
use overslab::failure::{Code, Failure, Place, Result};
use std::ffi::{c_char, c_int};

/// A caller's text, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct TextIn {
    path: &'static str,
    start: *const c_char,
    length: c_int,
}

impl TextIn {
    /// The text of that many bytes; `path` is what failures call it.
    pub(crate) const fn new(path: &'static str, start: *const c_char, length: c_int) -> Self {
        Self { path, start, length }
    }

    /// Reads the text; null with no length is the empty text.
    ///
    /// # Safety
    /// `start` is null or points to that many bytes, which stay as they are as long as the text is used.
    ///
    /// # Errors
    /// `LENGTH_NEGATIVE`, `NULL_POINTER`, and `NOT_TEXT` for what is not UTF-8 or holds a zero byte.
    #[expect(unsafe_code, reason = "reads the caller's bytes, within their length")]
    pub(crate) unsafe fn read<'a>(self) -> Result<&'a str> {
        let length = usize::try_from(self.length).map_err(|_| negative(self.path, self.length))?;
        if length == 0 {
            return Ok("");
        }
        if self.start.is_null() {
            return Err(null(self.path));
        }
        // SAFETY: not null, and the caller promises `length` bytes there; bytes need no alignment.
        let bytes = unsafe { std::slice::from_raw_parts(self.start.cast::<u8>(), length) };
        let text = std::str::from_utf8(bytes).map_err(|error| self.not_text(error.valid_up_to()))?;
        match bytes.iter().position(|&byte| byte == 0) {
            Some(at) => Err(self.not_text(at)),
            None => Ok(text),
        }
    }

    fn not_text(self, at: usize) -> Box<Failure> {
        Failure::new(Code::NotText, self.path)
            .at(Place::Index(at))
            .allowed("UTF-8 without zero bytes, its length without the ending zero")
            .remedy("check the text and its length")
    }
}
