//! Where the coordinates stand in a record, and in which units.

use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::survey::read::asked::Asked;
use crate::survey::read::columns::{Column, Columns, Role, doubtful};
use crate::survey::read::unit::FileUnit;

/// One column of numbers.
#[derive(Clone, Debug)]
pub(super) struct Numbers {
    pub(super) place: usize,
    pub(super) role: Role,
    /// Absent where each cell must have its own.
    pub(super) unit: Option<FileUnit>,
}

/// Where things stand in a record.
#[derive(Debug)]
pub(super) struct Layout {
    /// x, y, then the elevation or the rod.
    pub(super) coordinates: [Numbers; 3],
    pub(super) point: Option<usize>,
    pub(super) width: usize,
}

impl Layout {
    pub(super) fn new(columns: &Columns, asked: &Asked, notes: &mut Vec<Note>) -> Result<Self> {
        let list = &columns.0;
        let x = required(list, Role::X)?;
        let y = required(list, Role::Y)?;
        let height = height(list, asked)?;
        let numbers = |place: usize| numbers(list, place, asked, notes);
        let [x, y, height] = [x, y, height].map(numbers);
        let point = list.iter().position(|column| column.role == Role::Point);
        let layout = Self { coordinates: [x?, y?, height?], point, width: list.len() };
        layout.note_unused(list, notes);
        Ok(layout)
    }

    /// The one unit of all coordinates, if they have one.
    pub(super) fn unit(&self) -> Option<FileUnit> {
        let [x, y, height] = &self.coordinates;
        x.unit.filter(|_| x.unit == y.unit && y.unit == height.unit)
    }

    /// Says which columns were passed over.
    fn note_unused(&self, list: &[Column], notes: &mut Vec<Note>) {
        let used = |place| Some(place) == self.point || self.coordinates.iter().any(|n| n.place == place);
        let unused =
            list.iter().enumerate().filter(|(place, column)| !used(*place) && column.heading != "skip");
        let names: Vec<String> = unused.map(|(_, column)| format!("\"{}\"", column.heading)).collect();
        if !names.is_empty() {
            notes.push(Note::new(NoteCode::FileParts, format!("columns not used: {}", names.join(", "))));
        }
    }
}

/// The one column of that role, if it is there.
fn only(list: &[Column], role: Role) -> Result<Option<usize>> {
    let mut places = (0..list.len()).filter(|&place| list[place].role == role);
    let first = places.next();
    match places.next() {
        Some(second) => Err(doubtful(&list[second], "a second column of the same")),
        None => Ok(first),
    }
}

fn required(list: &[Column], role: Role) -> Result<usize> {
    only(list, role)?.ok_or_else(|| missing(list, role))
}

fn missing(list: &[Column], role: Role) -> Box<Failure> {
    let found: Vec<String> = list.iter().take(12).map(|column| format!("\"{}\"", column.heading)).collect();
    Failure::new(Code::ColumnMissing, role.word())
        .written(format!("columns {}", found.join(", ")))
        .allowed("x, y and elevation (or rod), each with its unit: x [ft]")
        .remedy("give the columns in their order, as in \"point, y [ft], x [ft], elevation [ft]\"")
}

/// The elevation, or the rod below a stated line of sight.
fn height(list: &[Column], asked: &Asked) -> Result<usize> {
    let (elevation, rod) = (only(list, Role::Elevation)?, only(list, Role::Rod)?);
    match (elevation, rod, asked.height_of_instrument) {
        (Some(_), _, Some(_)) => Err(Failure::new(Code::Contradiction, "height_of_instrument")
            .written("given, and the file has elevations")
            .remedy("leave the height of instrument out, or skip the elevations by giving the columns")),
        (Some(elevation), ..) => Ok(elevation),
        (None, Some(rod), Some(_)) => Ok(rod),
        (None, Some(rod), None) => Err(Failure::new(Code::KeyMissing, "height_of_instrument")
            .written(format!("\"{}\"", list[rod].heading))
            .remedy("give the height of instrument for these rods, or reduce the level book first")),
        (None, None, _) => Err(missing(list, Role::Elevation)),
    }
}

fn numbers(list: &[Column], place: usize, asked: &Asked, notes: &mut Vec<Note>) -> Result<Numbers> {
    let column = &list[place];
    let unit = asked.settle(column.unit, column.role.word(), notes)?;
    Ok(Numbers { place, role: column.role, unit })
}
