//! The numbers of the body, as text or binary.

use super::header::{Element, Kind, Scalar};
use crate::failure::{Code, Failure, Result};
use crate::survey::read::refusal::{at_line, broken};

/// Where the numbers come from. A file that ends too early gives none.
pub(super) trait Source {
    /// Opens the next instance of an element; false at the end of the file.
    fn open(&mut self) -> bool;
    /// The next number of it, or none at the end of the file.
    fn number(&mut self, scalar: Scalar) -> Result<Option<f64>>;
    /// Closes it: nothing of it may be left.
    fn close(&mut self) -> Result<()>;
    /// Bytes behind what was read.
    fn left(&self) -> usize;
    /// The fewest bytes that a number takes.
    fn least(scalar: Scalar) -> usize;

    /// At most so many instances of an element can still come.
    fn room(&self, element: &Element) -> u64 {
        let least: usize = element.properties.iter().map(|property| least_of::<Self>(property.kind)).sum();
        // The last number of a text needs no blank behind it.
        (self.left() as u64 + 1) / (least.max(1) as u64)
    }
}

fn least_of<S: Source + ?Sized>(kind: Kind) -> usize {
    match kind {
        Kind::One(scalar) | Kind::List { length: scalar, .. } => S::least(scalar),
    }
}

/// Text: one instance in each line.
pub(super) struct Lines<'a> {
    rest: &'a [u8],
    words: std::str::SplitAsciiWhitespace<'a>,
    line: u64,
}

impl<'a> Lines<'a> {
    pub(super) fn new(bytes: &'a [u8], header_lines: u64) -> Self {
        Self { rest: bytes, words: "".split_ascii_whitespace(), line: header_lines }
    }
}

impl Source for Lines<'_> {
    fn open(&mut self) -> bool {
        while !self.rest.is_empty() {
            let end = self.rest.iter().position(|byte| matches!(byte, b'\n' | b'\r'));
            let (line, rest) = self.rest.split_at_checked(end.unwrap_or(self.rest.len())).unwrap_or_default();
            self.rest = rest.strip_prefix(b"\r\n").or_else(|| rest.get(1..)).unwrap_or_default();
            self.line += 1;
            // What is no text is no number either.
            self.words = std::str::from_utf8(line).unwrap_or("?").split_ascii_whitespace();
            if self.words.clone().next().is_some() {
                return true;
            }
        }
        false
    }

    fn number(&mut self, _: Scalar) -> Result<Option<f64>> {
        let Some(word) = self.words.next() else {
            let end = self.rest.is_empty();
            return if end {
                Ok(None)
            } else {
                Err(at_line(broken("a line with too few numbers"), self.line))
            };
        };
        word.parse().map(Some).map_err(|_| {
            let written = format!("\"{}\"", word.chars().take(40).collect::<String>());
            let failure = Failure::new(Code::NotReadable, "file").written(written);
            at_line(failure.allowed("a number").remedy("correct the line"), self.line)
        })
    }

    fn close(&mut self) -> Result<()> {
        match self.words.next() {
            None => Ok(()),
            Some(_) => Err(at_line(broken("a line with more numbers than its element has"), self.line)),
        }
    }

    fn left(&self) -> usize {
        self.rest.trim_ascii_end().len()
    }

    fn least(_: Scalar) -> usize {
        2
    }
}

/// Binary: numbers without gaps.
pub(super) struct Binary<'a> {
    rest: &'a [u8],
    little: bool,
}

impl<'a> Binary<'a> {
    pub(super) fn new(bytes: &'a [u8], little: bool) -> Self {
        Self { rest: bytes, little }
    }

    fn take<const N: usize>(&mut self) -> Option<[u8; N]> {
        let (first, rest) = self.rest.split_first_chunk::<N>()?;
        self.rest = rest;
        let mut bytes = *first;
        if !self.little {
            bytes.reverse();
        }
        Some(bytes)
    }
}

impl Source for Binary<'_> {
    fn open(&mut self) -> bool {
        !self.rest.is_empty()
    }

    fn number(&mut self, scalar: Scalar) -> Result<Option<f64>> {
        Ok(match scalar {
            Scalar::I8 => self.take().map(|bytes| f64::from(i8::from_le_bytes(bytes))),
            Scalar::U8 => self.take().map(|bytes| f64::from(u8::from_le_bytes(bytes))),
            Scalar::I16 => self.take().map(|bytes| f64::from(i16::from_le_bytes(bytes))),
            Scalar::U16 => self.take().map(|bytes| f64::from(u16::from_le_bytes(bytes))),
            Scalar::I32 => self.take().map(|bytes| f64::from(i32::from_le_bytes(bytes))),
            Scalar::U32 => self.take().map(|bytes| f64::from(u32::from_le_bytes(bytes))),
            Scalar::F32 => self.take().map(|bytes| f64::from(f32::from_le_bytes(bytes))),
            Scalar::F64 => self.take().map(f64::from_le_bytes),
        })
    }

    fn close(&mut self) -> Result<()> {
        Ok(())
    }

    fn left(&self) -> usize {
        self.rest.len()
    }

    fn least(scalar: Scalar) -> usize {
        scalar.size()
    }
}
