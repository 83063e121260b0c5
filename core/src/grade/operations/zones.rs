//! The row of the thickness by zones.

use super::columns::{numbers, some_numbers, table};
use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Place, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::{DEPTH, Thickness};
use crate::grade::zones::{ThicknessZones, Zone};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType};
use crate::quantity::{Length, Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::survey::outline::{Corner, Outline};
use crate::{number, port};

/// Corners of zones.
pub(super) static ZONES: TableType = TableType {
    name: "zones",
    meaning: "a corner of a zone, in order; the corners of one zone stand together",
    columns: &[
        port!(zone: Kind::Text, "name of the zone"),
        number!(x: length in foot | meter, Range::closed(-1.0e5, 1.0e5), "from the left"),
        number!(y: length in foot | meter, Range::closed(-1.0e5, 1.0e5), "from the front"),
    ],
    least_rows: 1,
};

/// A table of figures: those of the thickness, between columns that stand before and behind them.
macro_rules! figures {
    ($name:literal, $meaning:literal, [$($before:expr),*], [$($behind:expr),*]) => {
        TableType {
            name: $name,
            meaning: $meaning,
            columns: &[
                $($before,)*
                number!(area: area in square_foot | square_meter, Range::POSITIVE, "area"),
                number!(net: volume in cubic_yard | cubic_meter, Range::ANY, "fill less high spots"),
                number!(fill: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume where the finish is above the old slab"),
                number!(high: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume of old slab above the finish"),
                number!(mean: length in inch | millimeter, Range::ANY, "net volume over area"),
                number!(least: length in inch | millimeter, Range::ANY, "least thickness"),
                number!(least_x: length in foot | meter, Range::ANY, "where it is, from the left"),
                number!(least_y: length in foot | meter, Range::ANY, "where it is, from the front"),
                number!(greatest: length in inch | millimeter, Range::ANY, "greatest thickness"),
                number!(greatest_x: length in foot | meter, Range::ANY, "where it is, from the left"),
                number!(greatest_y: length in foot | meter, Range::ANY, "where it is, from the front"),
                number!(thinner: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area thinner than the depth asked about"; optional),
                $($behind,)*
            ],
            least_rows: 0,
        }
    };
}

/// The zones' figures.
static FIGURES: TableType = figures!(
    "figures",
    "a zone, in the order given",
    [port!(zone: Kind::Text, "its name")],
    [
        number!(outside: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of the zone outside the work, which does not count")
    ]
);

/// The figures of the rest.
static REST: TableType =
    figures!("rest", "the work outside all zones: one row, or none where they cover it", [], []);

/// The thickness by zones.
pub static THICKNESS_ZONES: Operation = Operation {
    name: "thickness_zones",
    module: "grade",
    since: "0.1.0",
    meaning: "The thickness over zones of the work, each with its own figures, and over what no zone covers.",
    equation: "as for the thickness, over the part of the work in each zone; zones may overlap, each counts all of its own",
    assumes: "old slab plane over each triangle, finish plane over each facet",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(zones: Kind::Table(&ZONES), "the corners of the zones"),
        number!(thinner_than: length in inch | millimeter, DEPTH, "the area thinner than this is told"; optional),
    ],
    results: &[
        port!(figures: Kind::Table(&FIGURES), "the figures of each zone"),
        port!(rest: Kind::Table(&REST), "the figures of the work outside all zones"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"level": "99.7 ft"}, "thinner_than": "5 in", "zones": {
            "zone": ["bench", "bench", "bench", "bench", "lift", "lift", "lift", "lift"],
            "x": ["0 ft", "20 ft", "20 ft", "0 ft", "5 ft", "15 ft", "15 ft", "5 ft"],
            "y": ["26 ft", "26 ft", "32 ft", "32 ft", "10 ft", "10 ft", "22 ft", "22 ft"]}"#
    ),
    refusals: &[
        (r#"{"zones": []}"#, Code::EmptyList),
        (
            r#"{"zones": {"zone": ["a", "a"], "x": ["0 ft", "1 ft"], "y": ["0 ft", "1 ft"]}}"#,
            Code::OutlineTooFew,
        ),
        (
            r#"{"zones": {"zone": ["a", "a", "a"], "x": ["90 ft", "91 ft", "90 ft"], "y": ["0 ft", "0 ft", "1 ft"]}}"#,
            Code::RegionOutside,
        ),
        (
            r#"{"zones": {"zone": ["a", "a", "a", "b", "b", "b", "A", "A", "A"],
                "x": ["0 ft", "1 ft", "0 ft", "2 ft", "3 ft", "2 ft", "4 ft", "5 ft", "4 ft"],
                "y": ["0 ft", "0 ft", "1 ft", "0 ft", "0 ft", "1 ft", "0 ft", "0 ft", "1 ft"]}}"#,
            Code::KeyRepeated,
        ),
        (r#"{"thinner_than": "5"}"#, Code::UnitMissing),
    ],
    call: Call::Record(zones),
};

fn zones(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let zones = read_zones(args.required_table(2)?)?;
    let found = ThicknessZones::of(survey, finish, &zones, args.quantity(3)?)?;
    let names = Column::Texts(found.zones.iter().map(|zone| Some(zone.name.clone())).collect());
    let of_zones: Vec<&Thickness> = found.zones.iter().map(|zone| &zone.thickness).collect();
    let outside = numbers(&found.zones, |zone| zone.outside.base());
    let of_rest: Vec<&Thickness> = found.rest.iter().collect();
    let columns = std::iter::once(names).chain(figures(&of_zones)).chain([outside]);
    let answer = Answer::of([table(of_zones.len(), columns), table(of_rest.len(), figures(&of_rest))]);
    Ok(answer.with_notes(found.notes()))
}

fn figures(rows: &[&Thickness]) -> [Column; 12] {
    [
        numbers(rows, |row| row.area.base()),
        numbers(rows, |row| row.net.base()),
        numbers(rows, |row| row.fill.base()),
        numbers(rows, |row| row.high.base()),
        numbers(rows, |row| row.mean.base()),
        numbers(rows, |row| row.least.thickness.base()),
        numbers(rows, |row| row.least.x.base()),
        numbers(rows, |row| row.least.y.base()),
        numbers(rows, |row| row.greatest.thickness.base()),
        numbers(rows, |row| row.greatest.x.base()),
        numbers(rows, |row| row.greatest.y.base()),
        some_numbers(rows, |row| row.thinner),
    ]
}

/// Rows of one name that stand together are the corners of one zone.
pub(super) fn read_zones(table: &Columns) -> Result<Vec<Zone>> {
    let mut zones: Vec<(usize, String, Vec<Corner>)> = Vec::new();
    for row in 0..table.rows {
        let name = table.text(0, row).unwrap_or_default().trim();
        let length = |column: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
        let corner = Corner::new(length(1), length(2));
        match zones.last_mut().filter(|(_, last, _)| last.eq_ignore_ascii_case(name)) {
            Some((.., corners)) => corners.push(corner),
            None => zones.push((row, name.to_owned(), vec![corner])),
        }
    }
    let zone = |(row, name, corners): (usize, String, Vec<Corner>)| {
        let outline = Outline::from_corners(&corners, &[]).map_err(|failure| said_of(failure, &name, row))?;
        Ok(Zone { name, region: outline.region().clone() })
    };
    zones.into_iter().map(zone).collect()
}

/// A refusal of a zone's corners, saying which zone and in which row it starts.
fn said_of(failure: Box<Failure>, name: &str, row: usize) -> Box<Failure> {
    let mut failure = failure.at(Place::Index(row));
    failure.path = "zones".to_owned();
    failure.written = format!("`{name}`, {}", failure.written);
    failure
}
