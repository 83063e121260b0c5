//! The row of the section along a line.

use super::columns::{counts, numbers, some_numbers, table};
use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::sections::{PLACE, SPACING, Sample, Section, Station};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::survey::outline::Corner;
use crate::survey::surface::Ground;
use crate::{number, port};

/// Corners of the line.
static LINE: TableType = TableType {
    name: "line",
    meaning: "a place of the line, in order",
    columns: &[
        number!(x: length in foot | meter, PLACE, "from the left"),
        number!(y: length in foot | meter, PLACE, "from the front"),
    ],
    least_rows: 1,
};

/// Stations.
static STATIONS: TableType = TableType {
    name: "stations",
    meaning: "a place where a surface may bend, in order; two at one place where there is a step",
    columns: &[
        port!(run: Kind::Count(1, i64::MAX), "which unbroken run over the work it is on"),
        number!(distance: length in foot | meter, Range::NOT_NEGATIVE, "along the line from its start"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
        number!(old_slab: elevation in foot | meter, Range::ANY, "height of the old slab"),
        number!(finish: elevation in foot | meter, Range::ANY, "height of the finish"),
        number!(thickness: length in inch | millimeter, Range::ANY, "finish less old slab"),
        port!(ground: Kind::Choice(Ground::WORDS), "what is known of the ground after it; at the end of a run, before it"),
    ],
    least_rows: 0,
};

/// Samples.
static SAMPLES: TableType = TableType {
    name: "samples",
    meaning: "a place at a whole step from the start, and the end; without heights outside the work",
    columns: &[
        number!(distance: length in foot | meter, Range::NOT_NEGATIVE, "along the line from its start"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
        number!(old_slab: elevation in foot | meter, Range::ANY, "height of the old slab"; optional),
        number!(finish: elevation in foot | meter, Range::ANY, "height of the finish"; optional),
        number!(thickness: length in inch | millimeter, Range::ANY, "finish less old slab"; optional),
    ],
    least_rows: 0,
};

/// Gaps.
static GAPS: TableType = TableType {
    name: "gaps",
    meaning: "a stretch of the line outside the work",
    columns: &[
        number!(start: length in foot | meter, Range::NOT_NEGATIVE, "where it starts, along the line"),
        number!(end: length in foot | meter, Range::NOT_NEGATIVE, "where it ends"),
    ],
    least_rows: 0,
};

/// The section along a line.
pub static SECTION: Operation = Operation {
    name: "section",
    module: "grade",
    since: "0.1.0",
    meaning: "Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.",
    equation: "net = integral along the line of (finish - old slab); fill = its positive part; high = its negative part",
    assumes: "old slab plane over each triangle, finish plane over each facet",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(line: Kind::Table(&LINE), "the places of the line, two or more"),
        number!(spacing: length in foot | meter, SPACING, "also tell the heights at whole steps of this from the start"; optional),
    ],
    results: &[
        number!(length: length in foot | meter, Range::POSITIVE, "length of the line"),
        number!(covered: length in foot | meter, Range::POSITIVE, "length over the work"),
        number!(net: area in square_foot | square_meter, Range::ANY, "area between old slab and finish, high spots taken off"),
        number!(fill: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area where the finish is above the old slab"),
        number!(high: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of old slab above the finish"),
        number!(mean: length in inch | millimeter, Range::ANY, "net area over covered length"),
        number!(least: length in inch | millimeter, Range::ANY, "least thickness along the line"),
        number!(least_distance: length in foot | meter, Range::NOT_NEGATIVE, "where it is, along the line"),
        number!(least_x: length in foot | meter, Range::ANY, "where it is, from the left"),
        number!(least_y: length in foot | meter, Range::ANY, "where it is, from the front"),
        number!(greatest: length in inch | millimeter, Range::ANY, "greatest thickness along the line"),
        number!(greatest_distance: length in foot | meter, Range::NOT_NEGATIVE, "where it is, along the line"),
        number!(greatest_x: length in foot | meter, Range::ANY, "where it is, from the left"),
        number!(greatest_y: length in foot | meter, Range::ANY, "where it is, from the front"),
        port!(stations: Kind::Table(&STATIONS), "the stations"),
        port!(samples: Kind::Table(&SAMPLES), "the heights at whole steps of the spacing; none without one"),
        port!(gaps: Kind::Table(&GAPS), "the stretches outside the work"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"level": "99.7 ft"}, "line": {"x": ["2 ft", "2 ft", "22 ft"], "y": ["1 ft", "30 ft", "30 ft"]}, "spacing": "4 ft""#
    ),
    refusals: &[
        (r#"{"line": []}"#, Code::EmptyList),
        (r#"{"line": {"x": ["2 ft"], "y": ["1 ft"]}}"#, Code::LineTooShort),
        (r#"{"line": {"x": ["2 ft", "2 ft"], "y": ["1 ft", "1 ft"]}}"#, Code::LineTooShort),
        (r#"{"line": {"x": ["90 ft", "95 ft"], "y": ["1 ft", "1 ft"]}}"#, Code::LineOutside),
        (r#"{"spacing": "1/32 in"}"#, Code::OutOfRange),
        (
            r#"{"line": {"x": ["0 ft", "9999 ft"], "y": ["1 ft", "1 ft"]}, "spacing": "1 in"}"#,
            Code::TooManyStations,
        ),
    ],
    call: Call::Record(section),
};

fn section(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let table = args.required_table(2)?;
    let length = |column: usize, row: usize| Length::from_base(table.number(column, row).unwrap_or(f64::NAN));
    let line: Vec<Corner> = (0..table.rows).map(|row| Corner::new(length(0, row), length(1, row))).collect();
    let section = Section::along(survey, finish, &line)?;
    let samples = args.quantity(3)?.map(|spacing| section.sampled(spacing)).transpose()?.unwrap_or_default();
    let single = [section.length, section.covered].map(Typed::base).into_iter();
    let single = single.chain([section.net, section.fill, section.high].map(Typed::base));
    let extremes = [section.least, section.greatest];
    let extremes = extremes.iter().flat_map(|at| [at.thickness, at.distance, at.x, at.y].map(Typed::base));
    let single = single.chain([section.mean.base()]).chain(extremes).map(Value::Number);
    let tables = [stations(&section.stations), sampled(&samples), gaps(&section)];
    Ok(Answer::of(single.chain(tables).collect::<Vec<_>>()).with_notes(section.notes()))
}

fn stations(rows: &[Station]) -> Value {
    let grounds = Column::Choices(rows.iter().map(|station| Some(station.ground as usize)).collect());
    table(
        rows.len(),
        [
            counts(rows, |station| station.run),
            numbers(rows, |station| station.distance.base()),
            numbers(rows, |station| station.x.base()),
            numbers(rows, |station| station.y.base()),
            numbers(rows, |station| station.old_slab.base()),
            numbers(rows, |station| station.finish.base()),
            numbers(rows, |station| station.thickness.base()),
            grounds,
        ],
    )
}

fn sampled(rows: &[Sample]) -> Value {
    table(
        rows.len(),
        [
            numbers(rows, |sample| sample.distance.base()),
            numbers(rows, |sample| sample.x.base()),
            numbers(rows, |sample| sample.y.base()),
            some_numbers(rows, |sample| sample.old_slab),
            some_numbers(rows, |sample| sample.finish),
            some_numbers(rows, |sample| sample.thickness),
        ],
    )
}

fn gaps(section: &Section) -> Value {
    let rows = &section.gaps;
    table(rows.len(), [numbers(rows, |gap| gap.from.base()), numbers(rows, |gap| gap.to.base())])
}
