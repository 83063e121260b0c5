//! CSV: a header or the caller's columns, then one point in each record.

use super::layout::Layout;
use super::{cell, check_end};
use crate::failure::{Code, Failure, Result, check};
use crate::note::Note;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::level_book::ROD;
use crate::survey::points::Points;
use crate::survey::read::Reading;
use crate::survey::read::asked::Asked;
use crate::survey::read::columns::{Columns, Role};
use crate::survey::read::format::Format;
use crate::survey::read::left_out::{Counts, Reason};
use crate::survey::read::refusal::{at_line, broken};
use crate::survey::read::text::utf8;
use csv::StringRecord;

/// The word for a place that was not shot.
const NONE: &str = "none";

/// Reads a table.
pub(in crate::survey::read) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let text = utf8(bytes)?;
    let delimiter = delimiter(&text);
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter)
        .has_headers(false)
        .comment(Some(b'#'))
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut record = StringRecord::new();
    let mut notes = Vec::new();
    next(&mut reader, &mut record)?;
    let header = match &asked.columns {
        Some(columns) => columns.clone(),
        None => Columns::of_header(record.iter()).map_err(|failure| at_line(failure, line(&record)))?,
    };
    let layout =
        Layout::new(&header, asked, &mut notes).map_err(|failure| at_line(failure, line(&record)))?;
    let mut table =
        Table { layout, asked, delimiter, points: Points::default(), counts: Counts::default(), number: 0 };
    let mut more = asked.columns.is_some() && !table.is_header(&record) || next(&mut reader, &mut record)?;
    while more {
        table.number += 1;
        table.take(&record).map_err(|failure| at_line(failure, line(&record)))?;
        more = next(&mut reader, &mut record)?;
    }
    check_end(bytes, &mut notes);
    Ok(table.finish(notes))
}

/// The next record; whether there was one.
fn next(reader: &mut csv::Reader<&[u8]>, record: &mut StringRecord) -> Result<bool> {
    reader.read_record(record).map_err(|error| broken(error.to_string()))
}

fn line(record: &StringRecord) -> u64 {
    record.position().map_or(0, csv::Position::line)
}

/// What parts the columns: the most frequent of the three in the first line with any.
fn delimiter(text: &str) -> u8 {
    let lines = text.lines().filter(|line| !(line.trim().is_empty() || line.starts_with('#')));
    let first = lines.map(outside_quotes).next().unwrap_or_default();
    let count = |sign: u8| first.bytes().filter(|&byte| byte == sign).count();
    // Of equal counts the last is taken: a comma may stand inside a heading or be a decimal comma.
    [b',', b'\t', b';'].into_iter().max_by_key(|&sign| count(sign)).unwrap_or(b',')
}

fn outside_quotes(line: &str) -> String {
    line.split('"').step_by(2).collect()
}

/// A table under way.
struct Table<'a> {
    layout: Layout,
    asked: &'a Asked,
    delimiter: u8,
    points: Points,
    counts: Counts,
    number: usize,
}

impl Table<'_> {
    /// Whether the first record is a header: no digit where coordinates should stand.
    fn is_header(&self, record: &StringRecord) -> bool {
        let cells = self.layout.coordinates.iter().filter_map(|numbers| record.get(numbers.place));
        cells.into_iter().all(|cell| !cell.bytes().any(|byte| byte.is_ascii_digit()))
    }

    fn take(&mut self, record: &StringRecord) -> Result<()> {
        // A line of empty cells is what a sheet leaves behind its last row.
        if record.iter().all(|cell| cell.trim().is_empty()) {
            return Ok(());
        }
        self.check_width(record)?;
        let place = self.layout.coordinates[2].place;
        if record.get(place).is_some_and(|cell| cell.trim().eq_ignore_ascii_case(NONE)) {
            self.counts.add(Reason::NotShot);
            return Ok(());
        }
        let mut point = [0.0; 3];
        for (metres, numbers) in point.iter_mut().zip(&self.layout.coordinates) {
            let text = record.get(numbers.place).unwrap_or_default();
            *metres = self
                .number_of(text, numbers)
                .map_err(|f| f.under(&format!("records[{}]", self.number - 1)))?;
        }
        self.points.push(point);
        self.name(record);
        Ok(())
    }

    fn number_of(&self, text: &str, numbers: &super::layout::Numbers) -> Result<f64> {
        if text.trim().is_empty() {
            return Err(Failure::new(Code::EmptyCell, numbers.role.word())
                .remedy(format!("record {}: write the value, or none for a place not shot", self.number)));
        }
        let metres = cell::metres(text, numbers)?;
        match (numbers.role, self.asked.height_of_instrument) {
            (Role::Rod, Some(line_of_sight)) => {
                let rod = check("rod", Length::from_base(metres), ROD)?;
                Ok(Elevation::base(line_of_sight) - rod.base())
            }
            _ => Ok(metres),
        }
    }

    /// A record of another width than the columns say is refused: a decimal comma does that.
    fn check_width(&self, record: &StringRecord) -> Result<()> {
        let width = self.layout.width;
        let spare = record.iter().skip(width).all(|cell| cell.trim().is_empty());
        let needed = self.layout.coordinates.iter().map(|numbers| numbers.place + 1).max().unwrap_or(0);
        if record.len() == width || (record.len() > width && (spare || self.asked.columns.is_some())) {
            return Ok(());
        }
        if record.len() < width && record.len() >= needed {
            return Ok(());
        }
        let remedy = match self.delimiter {
            b',' if record.len() > width => {
                "write decimals with a point: a decimal comma makes two cells of one"
            }
            _ => "complete the record",
        };
        Err(Failure::new(Code::LengthMismatch, format!("records[{}]", self.number - 1))
            .written(format!("{} cells in record {}", record.len(), self.number))
            .allowed(format!("{width} cells, as the header has"))
            .remedy(remedy))
    }

    fn name(&mut self, record: &StringRecord) {
        let Some(place) = self.layout.point else { return };
        let name = record.get(place).map(str::trim).filter(|name| !name.is_empty());
        if self.points.names.is_empty() {
            self.points.names.push(None);
        }
        if let Some(last) = self.points.names.last_mut() {
            *last = name.map(str::to_owned);
        }
    }

    fn finish(self, mut notes: Vec<Note>) -> Reading {
        Reading {
            unit: self.layout.unit(),
            points: self.points,
            format: Format::Csv,
            left_out: self.counts.finish(&mut notes),
            notes,
        }
    }
}
