//! XYZ: three numbers in a line, parted by blanks or commas; what follows them is not read.

use super::check_end;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::survey::read::Reading;
use crate::survey::read::asked::Asked;
use crate::survey::read::columns::{Columns, Role, doubtful};
use crate::survey::read::format::Format;
use crate::survey::read::gather::Gather;
use crate::survey::read::refusal::{at_line, unit_missing};
use crate::survey::read::text::utf8;
use crate::survey::read::unit::FileUnit;

/// Reads lines of coordinates.
pub(in crate::survey::read) fn read(bytes: &[u8], asked: &Asked) -> Result<Reading> {
    let text = utf8(bytes)?;
    let mut notes = Vec::new();
    let mut lines = numbered(&text).peekable();
    let mut columns = asked.columns.clone();
    // A line of words before the first number is a header.
    let head = lines.peek().copied().filter(|(_, line)| is_words(line));
    if let Some((line, text)) = head {
        lines.next();
        if columns.is_none() {
            let heads = text.trim_start_matches(['#', '/']);
            columns = Some(Columns::of_header(cells(heads)).map_err(|failure| at_line(failure, line))?);
        }
    }
    let order = Order::new(columns.as_ref(), asked, &mut notes)?;
    let mut gather = Gather::default();
    let mut spare = 0;
    for (line, text) in lines {
        let (point, more) = order.point(text).map_err(|failure| at_line(failure, line))?;
        spare = spare.max(more);
        gather.push(point, order.unit);
    }
    if spare > 0 {
        notes.push(Note::new(NoteCode::FileParts, format!("{spare} more columns were not read")));
    }
    check_end(bytes, &mut notes);
    let (points, left_out) = gather.finish(&mut notes);
    Ok(Reading { points, format: Format::Xyz, unit: Some(order.unit), left_out, notes })
}

/// Lines with something in them, with their numbers; remarks behind `#` or `//` are passed over.
fn numbered(text: &str) -> impl Iterator<Item = (u64, &str)> {
    let lines = text.lines().zip(1..).map(|(line, number)| (number, line.trim()));
    lines.filter(|(_, line)| !(line.is_empty() || line.starts_with('#') || line.starts_with("//")))
}

fn cells(line: &str) -> impl Iterator<Item = &str> {
    line.split(|c: char| c.is_whitespace() || c == ',' || c == ';').filter(|cell| !cell.is_empty())
}

/// Whether a line is a header: its first cell is no number.
fn is_words(line: &str) -> bool {
    cells(line).next().is_some_and(|cell| cell.parse::<f64>().is_err())
}

/// Where x, y and z stand in a line, and their unit.
struct Order {
    places: [usize; 3],
    unit: FileUnit,
}

impl Order {
    fn new(columns: Option<&Columns>, asked: &Asked, notes: &mut Vec<Note>) -> Result<Self> {
        let Some(columns) = columns else {
            let unit = asked.settle(None, "unit", notes)?.ok_or_else(|| unit_missing("unit", Format::Xyz))?;
            return Ok(Self { places: [0, 1, 2], unit });
        };
        let place = |role: Role| {
            let found = columns.0.iter().position(|column| column.role == role);
            found.ok_or_else(|| {
                Failure::new(Code::ColumnMissing, role.word())
                    .allowed("x, y and z")
                    .remedy("give the columns in their order, as in \"x, y, z\"")
            })
        };
        let places = [place(Role::X)?, place(Role::Y)?, place(Role::Elevation)?];
        let mut stated = None;
        for column in places.map(|place| &columns.0[place]) {
            if stated.is_some_and(|unit| Some(unit) != column.unit) {
                return Err(doubtful(column, "its unit differs from that of x"));
            }
            stated = column.unit;
        }
        let unit = asked.settle(stated, "unit", notes)?.ok_or_else(|| unit_missing("unit", Format::Xyz))?;
        Ok(Self { places, unit })
    }

    /// The point of a line, and how many cells were not read.
    fn point(&self, line: &str) -> Result<([f64; 3], usize)> {
        let mut point = [f64::NAN; 3];
        let (mut found, mut count) = (0, 0);
        for (place, cell) in cells(line).enumerate() {
            count += 1;
            let Some(axis) = self.places.iter().position(|&wanted| wanted == place) else { continue };
            point[axis] = cell.parse().map_err(|_| not_a_number(cell))?;
            found += 1;
        }
        if found == 3 { Ok((point, count - 3)) } else { Err(too_few(line)) }
    }
}

fn not_a_number(cell: &str) -> Box<Failure> {
    Failure::new(Code::NotReadable, "file")
        .written(format!("\"{}\"", cell.chars().take(40).collect::<String>()))
        .allowed("a plain number with a decimal point")
        .remedy("read the file as CSV if its cells hold more than numbers")
}

fn too_few(line: &str) -> Box<Failure> {
    Failure::new(Code::LengthMismatch, "file")
        .written(format!("\"{}\"", line.chars().take(40).collect::<String>()))
        .allowed("three numbers in each line")
        .remedy("complete the line")
}
