//! Bytes that should be text.

use super::refusal::{at_line, broken};
use crate::failure::Result;
use std::borrow::Cow;

/// The bytes without a byte order mark of UTF-8.
pub(super) fn without_mark(bytes: &[u8]) -> &[u8] {
    bytes.strip_prefix(b"\xef\xbb\xbf").unwrap_or(bytes)
}

/// The text, its lines ended by `\n` at least, or the line where it stops being UTF-8.
pub(super) fn utf8(bytes: &[u8]) -> Result<Cow<'_, str>> {
    let text = plain(bytes)?;
    let old_ends = text.contains('\r') && !text.contains('\n');
    Ok(if old_ends { Cow::Owned(text.replace('\r', "\n")) } else { Cow::Borrowed(text) })
}

fn plain(bytes: &[u8]) -> Result<&str> {
    std::str::from_utf8(without_mark(bytes)).map_err(|error| {
        let good = without_mark(bytes).get(..error.valid_up_to()).unwrap_or_default();
        let line = 1 + good.iter().filter(|&&byte| byte == b'\n').count() as u64;
        at_line(broken("bytes that are not UTF-8").remedy("save the file as UTF-8 text"), line)
    })
}
