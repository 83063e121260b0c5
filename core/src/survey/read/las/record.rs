//! Point records as bytes (LAS 1.4 R15, tables 7 to 17).

use super::head::Head;

/// One point: its whole numbers, its class, whether it is withheld.
#[derive(Clone, Copy, Debug)]
pub(super) struct Record {
    pub(super) raw: [i32; 3],
    pub(super) class: u8,
    pub(super) withheld: bool,
}

/// Records one behind the other.
pub(super) struct Records<'a> {
    bytes: &'a [u8],
    length: usize,
    extended: bool,
}

impl<'a> Records<'a> {
    pub(super) fn new(bytes: &'a [u8], head: &Head) -> Self {
        Self { bytes, length: head.length.max(1), extended: head.header.point_format().is_extended }
    }

    pub(super) fn iter(&self) -> impl Iterator<Item = Record> + '_ {
        self.bytes.chunks_exact(self.length).filter_map(|bytes| self.record(bytes))
    }

    /// The library has seen to it that a record is long enough for its format: 20 bytes at least.
    fn record(&self, bytes: &[u8]) -> Option<Record> {
        let head: &[u8; 20] = bytes.first_chunk()?;
        let whole = |at: usize| Some(i32::from_le_bytes(*head.get(at..)?.first_chunk()?));
        // Formats 0 to 5 pack class and flags into byte 15; from 6 on the flags stand in it and the class in byte 16.
        let (class, withheld) = if self.extended {
            (head[16], head[15] & 0x04 != 0)
        } else {
            (head[15] & 0x1f, head[15] & 0x80 != 0)
        };
        Some(Record { raw: [whole(0)?, whole(4)?, whole(8)?], class, withheld })
    }
}
