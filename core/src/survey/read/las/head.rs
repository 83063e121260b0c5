//! The header of a LAS file. What states a size is held against the bytes that are there before the library sees it.

use super::refused;
use crate::failure::Result;
use crate::note::{Note, NoteCode};
use crate::survey::read::refusal::{broken, short};
use las::{Header, Transform, Vector};
use std::io::Cursor;

/// Bytes before the data of an extended record.
const EXTENDED: usize = 60;

/// What the readers need of the header.
pub(super) struct Head {
    pub(super) header: Header,
    pub(super) packed: bool,
    /// Where the points begin.
    pub(super) offset: usize,
    /// Bytes of one point, unpacked.
    pub(super) length: usize,
    pub(super) count: u64,
    /// The coordinate system as text, where it stands in an extended record.
    pub(super) extended_wkt: Option<Vec<u8>>,
    transforms: Vector<Transform>,
    low: [f64; 3],
    high: [f64; 3],
    behind: bool,
}

/// Numbers at fixed places of the header.
struct Fixed<'a>(&'a [u8]);

impl Fixed<'_> {
    fn bytes<const N: usize>(&self, at: usize) -> Result<[u8; N]> {
        let found = self.0.get(at..).and_then(|rest| rest.first_chunk::<N>());
        found.copied().ok_or_else(|| short(format!("{} bytes", self.0.len()), "a header and the points"))
    }

    fn u16(&self, at: usize) -> Result<u16> {
        self.bytes(at).map(u16::from_le_bytes)
    }

    fn u32(&self, at: usize) -> Result<u32> {
        self.bytes(at).map(u32::from_le_bytes)
    }

    fn u64(&self, at: usize) -> Result<u64> {
        self.bytes(at).map(u64::from_le_bytes)
    }

    /// A place in the file, if it is in the file.
    fn place(&self, at: u64) -> Result<usize> {
        let place = usize::try_from(at).ok().filter(|&place| place <= self.0.len());
        place.ok_or_else(|| short(format!("{} bytes", self.0.len()), format!("{at} at least")))
    }
}

impl Head {
    pub(super) fn read(bytes: &[u8]) -> Result<Self> {
        let fixed = Fixed(bytes);
        if fixed.bytes::<4>(0)? != *b"LASF" {
            return Err(broken("the first bytes are not LASF"));
        }
        let modern = fixed.bytes::<2>(24)? >= [1, 4];
        let length = usize::from(fixed.u16(105)?);
        let offset = fixed.place(fixed.u32(96)?.into())?;
        let count = count(&fixed, modern)?;
        let size =
            count.checked_mul(length as u64).ok_or_else(|| short("fewer", format!("{count} points")))?;
        let [format] = fixed.bytes::<1>(104)?;
        let packed = format & 0xc0 != 0;
        let room = (bytes.len() - offset) as u64;
        if !packed && size > room {
            let found = room / (length.max(1) as u64);
            return Err(short(format!("{found} points"), format!("{count} as the header states")));
        }
        let (extended_wkt, extended) = if modern { extended(&fixed)? } else { (None, 0) };
        let header = Header::new(&mut Cursor::new(bytes)).map_err(|error| refused(&error))?;
        let transforms = *header.transforms();
        for transform in [transforms.x, transforms.y, transforms.z] {
            let sound = transform.scale.is_finite() && transform.scale > 0.0 && transform.offset.is_finite();
            if !sound {
                return Err(broken(format!("scale {} and offset {}", transform.scale, transform.offset)));
            }
        }
        let (low, high) = (header.bounds().min, header.bounds().max);
        Ok(Self {
            packed,
            offset,
            length,
            count,
            extended_wkt,
            transforms,
            low: [low.x, low.y, low.z],
            high: [high.x, high.y, high.z],
            // Waveforms and extended records stand behind the points.
            behind: extended > 0 || header.point_format().has_waveform,
            header,
        })
    }

    /// How many points to make room for: no more than the bytes can hold unpacked.
    pub(super) fn room(&self, bytes: &[u8]) -> usize {
        let most = bytes.len() / self.length.max(1) + 1;
        usize::try_from(self.count).map_or(most, |count| count.min(most))
    }

    /// The bytes of the points, unpacked.
    pub(super) fn body<'a>(&self, bytes: &'a [u8]) -> Result<&'a [u8]> {
        let size = usize::try_from(self.count).ok().and_then(|count| count.checked_mul(self.length));
        let body = size.and_then(|size| bytes.get(self.offset..)?.get(..size));
        body.ok_or_else(|| short("fewer points", format!("{} as the header states", self.count)))
    }

    /// Coordinates of a point in the file's unit.
    pub(super) fn place(&self, [x, y, z]: [i32; 3]) -> [f64; 3] {
        [self.transforms.x.direct(x), self.transforms.y.direct(y), self.transforms.z.direct(z)]
    }

    /// Whether a point lies in the stated bounds, to within a step of its scale.
    pub(super) fn holds(&self, point: [f64; 3]) -> bool {
        let steps = [self.transforms.x.scale, self.transforms.y.scale, self.transforms.z.scale];
        (0..3).all(|axis| {
            point[axis] >= self.low[axis] - steps[axis] && point[axis] <= self.high[axis] + steps[axis]
        })
    }

    /// Says what stands behind the points that the header states.
    pub(super) fn note_rest(&self, bytes: &[u8], notes: &mut Vec<Note>) {
        let end = (self.offset as u64).saturating_add(self.count.saturating_mul(self.length as u64));
        let rest = (bytes.len() as u64).saturating_sub(end);
        if !self.packed && !self.behind && rest >= self.length as u64 {
            let text =
                format!("{rest} bytes behind the {} points that the header states were not read", self.count);
            notes.push(Note::new(NoteCode::FileParts, text));
        }
    }
}

/// The number of points: the older field of 32 bits, or the one of LAS 1.4.
fn count(fixed: &Fixed<'_>, modern: bool) -> Result<u64> {
    let legacy = u64::from(fixed.u32(107)?);
    if !modern {
        return Ok(legacy);
    }
    let count = fixed.u64(247)?;
    match (legacy, count) {
        (0, count) => Ok(count),
        (legacy, count) if legacy == count => Ok(count),
        _ => Err(broken(format!("the header states {legacy} points and {count} points"))),
    }
}

/// Walks over the extended records of LAS 1.4: the coordinate system among them, and how many there are.
fn extended(fixed: &Fixed<'_>) -> Result<(Option<Vec<u8>>, u32)> {
    let count = fixed.u32(243)?;
    let mut wkt = None;
    let mut start = if count == 0 { 0 } else { fixed.place(fixed.u64(235)?)? };
    for _ in 0..count {
        let user = fixed.bytes::<16>(start + 2)?;
        let record = fixed.u16(start + 18)?;
        let size = fixed.u64(start + 20)?;
        let end = fixed.place(((start + EXTENDED) as u64).saturating_add(size))?;
        if user.starts_with(b"LASF_Projection\0") && record == 2112 {
            wkt = fixed.0.get(start + EXTENDED..end).map(<[u8]>::to_vec);
        }
        start = end;
    }
    Ok((wkt, count))
}
