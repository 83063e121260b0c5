//! Bytes of a file that come in, with their length.

use super::array::length;
use super::guard::null;
use overslab::failure::Result;
use overslab::operation::Bytes;
use std::ffi::{c_int, c_uchar};

/// A caller's bytes, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct BytesIn {
    path: &'static str,
    start: *const c_uchar,
    length: c_int,
}

impl BytesIn {
    /// So many bytes; `path` is what failures call them.
    pub(crate) const fn new(path: &'static str, start: *const c_uchar, length: c_int) -> Self {
        Self { path, start, length }
    }

    /// Copies the bytes, once: values of the engine may outlive the call.
    ///
    /// # Safety
    /// `start` is null or points to that many bytes.
    ///
    /// # Errors
    /// `LENGTH_NEGATIVE`; `NULL_POINTER`, also where there is no length: a file that was not read is no empty file.
    #[expect(unsafe_code, reason = "reads the caller's bytes, within their length")]
    pub(crate) unsafe fn read(self) -> Result<Bytes> {
        let length = length(self.path, self.length)?;
        if self.start.is_null() {
            return Err(null(self.path));
        }
        // SAFETY: not null, and the caller promises `length` bytes there; bytes need no alignment.
        let bytes = unsafe { std::slice::from_raw_parts(self.start, length) };
        Ok(Bytes::shared(bytes.to_vec()))
    }
}
