//! The failure in words: one sentence, and one short ASCII line for narrow places.

use super::{Failure, Place};
use std::fmt::Write;

/// The longest first line, in bytes.
const LINE: usize = 200;

impl Failure {
    /// The whole failure in words: what, where, what was written, what is allowed, what to do.
    #[must_use]
    pub fn sentence(&self) -> String {
        let mut text = String::from(self.code.name());
        if !self.path.is_empty() {
            let _ = write!(text, ": {}", self.path);
        }
        match self.place {
            Place::Unknown => {}
            Place::Line(line) => drop(write!(text, " (line {line})")),
            Place::Index(index) => drop(write!(text, " (element {index}, the first is 0)")),
            Place::Cell(row, column) => drop(write!(text, " (row {row}, column {column} of the range)")),
        }
        if !self.written.is_empty() {
            let _ = write!(text, " = {}", self.written);
        }
        let _ = write!(text, ": {}", self.code.meaning());
        if !self.allowed.is_empty() {
            let _ = write!(text, "; allowed: {}", self.allowed);
        }
        if !self.remedy.is_empty() {
            let _ = write!(text, "; {}", self.remedy);
        }
        text
    }

    /// The sentence as one line of at most 200 bytes of ASCII, the most telling part first.
    #[must_use]
    pub fn line(&self) -> String {
        let mut line: String = self.sentence().chars().map(plain).collect();
        if line.len() > LINE {
            line.truncate(LINE - 3);
            line.push_str("...");
        }
        line
    }
}

/// One ASCII character for any character.
fn plain(c: char) -> char {
    match c {
        '\u{2032}' | '\u{2019}' => '\'',
        '\u{2033}' | '\u{201d}' => '"',
        '\u{2212}' | '\u{2013}' => '-',
        c if c.is_ascii_graphic() || c == ' ' => c,
        c if c.is_whitespace() => ' ',
        _ => '?',
    }
}
