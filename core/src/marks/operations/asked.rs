//! What the row of the marks takes, as the marks ask for it.

use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::Point;
use crate::grade::finish::HEIGHT;
use crate::marks::{Asked, PLACE, PadsAsked, PointAsked, RailAsked, Sight};
use crate::operation::{Args, Columns, Kind, TableType};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::level_book::{ELEVATION, ROD};
use crate::{number, port};

/// Set-ups.
pub(super) static SETUPS: TableType = TableType {
    name: "setups",
    meaning: "a set-up that marks are read from: its line of sight, or a benchmark and the rod on it",
    columns: &[
        port!(name: Kind::Text, "what it is called"; optional),
        number!(sight: elevation in foot | meter, HEIGHT, "elevation of its line of sight"; optional),
        number!(benchmark: elevation in foot | meter, ELEVATION, "elevation of a benchmark"; optional),
        number!(rod: length in foot | meter, ROD, "the rod on that benchmark"; optional),
    ],
    least_rows: 1,
};

/// Named places.
pub(super) static POINTS: TableType = TableType {
    name: "points",
    meaning: "a place that must have a mark: a jamb, a post",
    columns: &[
        port!(name: Kind::Text, "what it is called"),
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
    ],
    least_rows: 1,
};

/// Forms.
pub(super) static FORMS: TableType = TableType {
    name: "forms",
    meaning: "an edge with a form",
    columns: &[port!(edge: Kind::Text, "its name")],
    least_rows: 1,
};

/// Rails.
pub(super) static RAILS: TableType = TableType {
    name: "rails",
    meaning: "a place of a screed rail, in order; rows of one name, one after the other, are one rail",
    columns: &[
        port!(name: Kind::Text, "the rail"),
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
    ],
    least_rows: 1,
};

/// The ports behind survey and finish, in the order of the row.
pub(super) fn asked(args: &Args<'_>) -> Result<Asked> {
    Ok(Asked {
        line: args.quantity(2)?,
        sights: sights(args.quantity(3)?, args.table(4)?)?,
        rod_length: args.required(5)?,
        step: args.required(6)?,
        spacing: args.required(7)?,
        points: args.table(8)?.map(points).unwrap_or_default(),
        pads: PadsAsked { screed: args.required(9)?, spacing: args.quantity(10)?, inset: args.required(11)? },
        forms: args.table(12)?.map(names).unwrap_or_default(),
        rails: args.table(13)?.map(rails).unwrap_or_default(),
        rail_offset: args.required(14)?,
        start_edge: args.text(15)?.map(str::to_owned),
    })
}

fn sights(sight: Option<Elevation>, setups: Option<&Columns>) -> Result<Vec<Sight>> {
    match (sight, setups) {
        (Some(_), Some(_)) => Err(Failure::new(Code::Contradiction, "setups")
            .written("sight and setups")
            .allowed("one line of sight, or a list of set-ups")
            .remedy("put the line of sight into the list as its first row")),
        (Some(height), None) => Ok(vec![Sight { name: "the line of sight given".to_owned(), height }]),
        (None, Some(table)) => (0..table.rows).map(|row| setup(table, row)).collect(),
        (None, None) => Ok(Vec::new()),
    }
}

fn setup(table: &Columns, row: usize) -> Result<Sight> {
    let name =
        table.text(0, row).map_or_else(|| format!("set-up {}", row + 1), |name| name.trim().to_owned());
    let number = |column| table.number(column, row);
    match (number(1), number(2), number(3)) {
        (Some(sight), None, None) => Ok(Sight { name, height: Elevation::from_base(sight) }),
        (None, Some(benchmark), Some(rod)) => {
            Sight::over(&name, Elevation::from_base(benchmark), Length::from_base(rod))
                .map_err(|failure| failure.under("setups").at(Place::Index(row)))
        }
        (sight, benchmark, rod) => {
            let given =
                [("sight", sight.is_some()), ("benchmark", benchmark.is_some()), ("rod", rod.is_some())];
            let code = if sight.is_some() { Code::Contradiction } else { Code::KeyMissing };
            Err(Failure::new(code, "setups")
                .at(Place::Index(row))
                .written(format!("{name}: {}", crate::failure::together(&given)))
                .allowed("the elevation of its line of sight, or a benchmark and the rod on it")
                .remedy("give the set-up one way"))
        }
    }
}

fn names(table: &Columns) -> Vec<String> {
    (0..table.rows).map(|row| table.text(0, row).unwrap_or_default().to_owned()).collect()
}

fn place(table: &Columns, row: usize) -> Point {
    let number = |column| table.number(column, row).unwrap_or(f64::NAN);
    Point::new(number(1), number(2))
}

fn points(table: &Columns) -> Vec<PointAsked> {
    let names = names(table).into_iter().enumerate();
    names.map(|(row, name)| PointAsked { name, at: place(table, row) }).collect()
}

fn rails(table: &Columns) -> Vec<RailAsked> {
    let mut rails: Vec<RailAsked> = Vec::new();
    for (row, name) in names(table).into_iter().enumerate() {
        let at = place(table, row);
        match rails.last_mut() {
            Some(rail) if rail.name.trim() == name.trim() => rail.places.push(at),
            _ => rails.push(RailAsked { name, places: vec![at] }),
        }
    }
    rails
}
