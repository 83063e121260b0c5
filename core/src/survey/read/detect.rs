//! What a file is, from its first bytes.

use super::asked::Asked;
use super::format::Format;
use super::text::without_mark;
use crate::failure::{Code, Failure, Result};

/// First bytes of files that are often taken for one of ours, and what to do.
const STRANGERS: [(&[u8], &str); 6] = [
    (b"PK\x03\x04", "this is a zip archive or a workbook: unpack it, or save the sheet as CSV"),
    (b"\x1f\x8b", "this is packed with gzip: unpack it"),
    (b"\xff\xfe", "this is UTF-16 text: save it as UTF-8"),
    (b"\xfe\xff", "this is UTF-16 text: save it as UTF-8"),
    (b"%PDF", "this is a PDF: ask for the points as CSV or LandXML"),
    (b"\xd0\xcf\x11\xe0", "this is an old workbook: save the sheet as CSV"),
];

/// The format that was asked for, or the one the first bytes show.
pub(super) fn format(bytes: &[u8], asked: &Asked) -> Result<Format> {
    if let Some(format) = asked.format {
        return Ok(format);
    }
    if bytes.is_empty() {
        return Err(unknown(bytes, "give a file with points: this one is empty"));
    }
    if let Some((_, remedy)) = STRANGERS.iter().find(|(first, _)| bytes.starts_with(first)) {
        return Err(unknown(bytes, remedy));
    }
    if bytes.starts_with(b"LASF") {
        return Ok(Format::Las);
    }
    if bytes.starts_with(b"ASTM-E57") {
        return Ok(Format::E57);
    }
    let text = without_mark(bytes).trim_ascii_start();
    match text {
        [b'p', b'l', b'y', b'\n' | b'\r', ..] => Ok(Format::Ply),
        [b'<', ..] => Ok(Format::LandXml),
        _ => of_text(text, asked),
    }
}

/// A table, or coordinates alone.
fn of_text(text: &[u8], asked: &Asked) -> Result<Format> {
    let lines = text.split(|&byte| byte == b'\n' || byte == b'\r').map(<[u8]>::trim_ascii);
    let mut lines =
        lines.filter(|line| !(line.is_empty() || line.starts_with(b"#") || line.starts_with(b"//")));
    let Some(first) = lines.next() else {
        return Err(unknown(text, "give a file with points: this one holds no line of them"));
    };
    let control = |byte: &u8| byte.is_ascii_control() && *byte != b'\t';
    if first.iter().any(control) {
        return Err(unknown(text, "give the format by its word if the file is one of these"));
    }
    let parted = first.iter().any(|byte| matches!(byte, b',' | b';' | b'\t'));
    let bare = first.iter().all(|&byte| byte.is_ascii_digit() || b"+-.eE,;\t ".contains(&byte));
    match (parted, bare) {
        (true, _) if asked.columns.is_some() => Ok(Format::Csv),
        (true, false) => Ok(Format::Csv),
        _ => Ok(Format::Xyz),
    }
}

fn unknown(bytes: &[u8], remedy: &str) -> Box<Failure> {
    let first: Vec<String> = bytes.iter().take(8).map(|byte| format!("{byte:02x}")).collect();
    let first =
        if first.is_empty() { String::new() } else { format!(", the first in hex: {}", first.join(" ")) };
    Failure::new(Code::FormatUnknown, "file")
        .written(format!("{} bytes{first}", bytes.len()))
        .allowed(<Format as crate::operation::Choice>::WORDS.join(", "))
        .remedy(remedy)
}
