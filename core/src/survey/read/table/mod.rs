//! Tables as text: CSV with its header, XYZ without.

mod cell;
mod csv_file;
mod layout;
mod xyz;

pub(super) use csv_file::read as csv;
pub(super) use xyz::read as xyz;

use crate::note::{Note, NoteCode};

/// A note where the last line has no end: a file cut inside a number cannot be told from a whole one.
pub(super) fn check_end(bytes: &[u8], notes: &mut Vec<Note>) {
    if !matches!(bytes.last(), Some(b'\n' | b'\r')) {
        let text = "the last line has no end of line: if the file was cut short, its last point may be wrong";
        notes.push(Note::new(NoteCode::FileDoubtful, text));
    }
}
