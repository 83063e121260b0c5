//! LAZ: points in packed chunks. The table of chunks is held against the header and the bytes before anything is unpacked, so
//! that a cut file is refused and a stated size costs no memory.

use super::head::Head;
use super::record::Records;
use super::refused;
use crate::failure::{Failure, Result};
use crate::survey::read::refusal::{broken, short};
use laz::laszip::{ChunkTable, LazItemType, LazVlr};
use laz::{DecompressionSelection, LasZipDecompressor, LazItemRecordBuilder};
use std::io::Cursor;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Points unpacked at a time.
const BATCH: u64 = 8192;

/// Unpacks all points, a batch at a time.
pub(super) fn records(bytes: &[u8], head: &Head, mut take: impl FnMut(&Records<'_>)) -> Result<()> {
    let vlr = head.header.laz_vlr().map_err(|error| refused(&error))?;
    check_items(&vlr, head)?;
    check_chunks(bytes, &vlr, head)?;
    let mut source = Cursor::new(bytes);
    source.set_position(head.offset as u64);
    let wanted = DecompressionSelection::xy_returns_channel()
        .decompress_z()
        .decompress_classification()
        .decompress_flags();
    let mut unpacker =
        guarded(|| LasZipDecompressor::selective(source, vlr, wanted).map_err(|error| refused(&error)))?;
    let mut batch = Vec::new();
    let mut left = head.count;
    while left > 0 {
        let count = left.min(BATCH);
        batch.resize(count as usize * head.length, 0);
        guarded(|| unpacker.decompress_many(&mut batch).map_err(|error| refused(&error)))?;
        take(&Records::new(&batch, head));
        left -= count;
    }
    Ok(())
}

/// Runs the unpacking. Built with debug assertions the library panics at damaged bytes instead of refusing them.
fn guarded<T>(unpack: impl FnOnce() -> Result<T>) -> Result<T> {
    catch_unwind(AssertUnwindSafe(unpack))
        .unwrap_or_else(|_| Err(broken("packed points that cannot be unpacked")))
}

/// The packed items must be those of the point format.
fn check_items(vlr: &LazVlr, head: &Head) -> Result<()> {
    let format = head.header.point_format();
    let number = format.to_u8().map_err(|error| refused(&error))? & 0x3f;
    let usual = LazItemRecordBuilder::default_for_point_format_id(number, format.extra_bytes);
    let usual = usual.map_err(|error| refused(&error))?;
    let same = vlr.items().len() == usual.len()
        && vlr
            .items()
            .iter()
            .zip(&usual)
            .all(|(a, b)| a.item_type() == b.item_type() && a.size() == b.size());
    if same && vlr.items_size() == head.length as u64 {
        Ok(())
    } else {
        Err(broken(format!("packed items that are not those of point format {number}")))
    }
}

/// The chunks must fill the bytes up to their table and hold the stated number of points.
fn check_chunks(bytes: &[u8], vlr: &LazVlr, head: &Head) -> Result<()> {
    let layered = layered(head)?;
    if head.count == 0 {
        return Ok(());
    }
    let start = head.offset + ChunkTable::OFFSET_SIZE;
    let table_at = table_place(bytes, head)?;
    let stated = number(bytes, table_at + 4)?;
    let room = (table_at - start) / head.length.max(1);
    if stated as usize > room {
        return Err(broken(format!("{stated} chunks where {room} have room")));
    }
    let mut source = Cursor::new(bytes);
    source.set_position(head.offset as u64);
    let table = ChunkTable::read_from(&mut source, vlr).map_err(|error| refused(&error))?;
    let mut at = start;
    let mut points = 0_u64;
    for (place, entry) in table.as_ref().iter().enumerate() {
        let last = place + 1 == table.len();
        let end = usize::try_from(entry.byte_count).ok().and_then(|size| at.checked_add(size));
        let end = end.filter(|&end| end <= table_at).ok_or_else(|| broken("a chunk longer than the file"))?;
        // Only the last of equal chunks may hold fewer.
        let count =
            if last { head.count.saturating_sub(points).min(entry.point_count) } else { entry.point_count };
        points = points.saturating_add(count);
        let chunk = bytes.get(at..end).unwrap_or_default();
        if layered {
            check_layers(chunk, count, vlr, head)?;
        } else if chunk.len() < head.length {
            return Err(broken("a chunk shorter than its first point"));
        }
        at = end;
    }
    if at != table_at || points != head.count {
        return Err(broken(format!("chunks of {points} points, {} in the header", head.count)));
    }
    Ok(())
}

/// Whether the chunks are in layers: way 3 of the LASzip record; way 2 packs point behind point.
fn layered(head: &Head) -> Result<bool> {
    let data =
        head.header.vlrs().iter().find(|vlr| las::laz::is_laszip_vlr(vlr)).map(|vlr| vlr.data.as_slice());
    match data.and_then(|data| data.first_chunk()).map(|bytes| u16::from_le_bytes(*bytes)) {
        Some(2) => Ok(false),
        Some(3) => Ok(true),
        _ => Err(broken("points packed without chunks")
            .remedy("write the file again in chunks, as LASzip 2.2 and later do")),
    }
}

/// Where the table of chunks stands: stated before the points, or in the last bytes by who could not go back.
fn table_place(bytes: &[u8], head: &Head) -> Result<usize> {
    let at = |place: usize| -> Result<i64> {
        let found = bytes.get(place..).and_then(|rest| rest.first_chunk());
        found.map(|bytes| i64::from_le_bytes(*bytes)).ok_or_else(cut)
    };
    let first = at(head.offset)?;
    let place = if first <= head.offset as i64 { at(bytes.len().saturating_sub(8))? } else { first };
    let place = usize::try_from(place).map_err(|_| cut())?;
    let inside = place >= head.offset + ChunkTable::OFFSET_SIZE && place <= bytes.len().saturating_sub(8);
    if inside { Ok(place) } else { Err(cut()) }
}

fn cut() -> Box<Failure> {
    short("no table of chunks", "packed points with their table of chunks")
}

fn number(bytes: &[u8], at: usize) -> Result<u32> {
    let found = bytes.get(at..).and_then(|rest| rest.first_chunk());
    found.map(|bytes| u32::from_le_bytes(*bytes)).ok_or_else(cut)
}

/// A chunk in layers: the first point, the count, the sizes of the layers, the layers.
fn check_layers(chunk: &[u8], count: u64, vlr: &LazVlr, head: &Head) -> Result<()> {
    let layers: usize = vlr.items().iter().map(|item| layers_of(item.item_type())).sum();
    let wrong = || broken("the layers of a chunk do not fill it");
    if u64::from(number(chunk, head.length)?) != count {
        return Err(wrong());
    }
    let mut end = (head.length + 4 + 4 * layers) as u64;
    for layer in 0..layers {
        end += u64::from(number(chunk, head.length + 4 + 4 * layer)?);
    }
    if end == chunk.len() as u64 { Ok(()) } else { Err(wrong()) }
}

fn layers_of(item: LazItemType) -> usize {
    match item {
        LazItemType::Point14 => 9,
        LazItemType::RGB14 | LazItemType::WavePacket14 => 1,
        LazItemType::RGBNIR14 => 2,
        LazItemType::Byte14(count) => usize::from(count),
        _ => 0,
    }
}
