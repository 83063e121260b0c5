//! The rows of the level book.

use super::HEIGHT;
use super::page::Page;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Elevation, Length, Range, Typed};
use crate::survey::level_book::{
    Benchmark, ELEVATION, LevelBook, ROD, ReducedBook, Tolerances, reduce, rod_elevation,
};
use crate::{number, port, scalar};

/// One shot from one set-up.
pub static ROD_ELEVATION: Operation = Operation {
    name: "rod_elevation",
    module: "survey",
    since: "0.1.0",
    meaning: "The elevation of a point from one set-up of the level.",
    equation: "height of instrument = benchmark + backsight; elevation = height of instrument - rod",
    assumes: "the line of sight is level and the rod plumb",
    ports: &[
        number!(benchmark: elevation in foot | meter, ELEVATION, "elevation of the benchmark"),
        number!(backsight: length in foot | meter, ROD, "rod on the benchmark"; zero rare),
        number!(rod: length in foot | meter, ROD, "rod on the point"; zero rare),
    ],
    results: &[
        number!(elevation: elevation in foot | meter, HEIGHT, "elevation of the point"),
        number!(height_of_instrument: elevation in foot | meter, HEIGHT, "height of the line of sight"),
    ],
    basis: &[BasisId::Levelling],
    example: r#"{"benchmark": "2156.77 ft", "backsight": "2.67 ft", "rod": "6.72 ft"}"#,
    refusals: &[
        (r#"{"rod": "-1 ft"}"#, Code::OutOfRange),
        (r#"{"backsight": "2.67"}"#, Code::UnitMissing),
        (r#"{"benchmark": "2,15 m"}"#, Code::DecimalComma),
    ],
    call: scalar!(
        rod_elevation,
        (benchmark: Elevation, backsight: Length, rod: Length) =>
            |shot| [shot.elevation.base(), shot.height_of_instrument.base()]
    ),
};

/// A page of the book: one row per reading or turning point.
static PAGE: TableType = TableType {
    name: "page",
    meaning: "a point with its backsight, sight, foresight or repeated backsight",
    columns: &[
        port!(point: Kind::Text, "name of the point"),
        number!(backsight: length in foot | meter, ROD, "rod on a known point, opens a set-up"; optional),
        number!(sight: length in foot | meter, ROD, "rod on any point"; optional),
        number!(foresight: length in foot | meter, ROD, "rod on the turning point or closing benchmark"; optional),
        number!(close: length in foot | meter, ROD, "rod on the backsight point again"; optional),
    ],
    least_rows: 1,
};

/// Points of known elevation.
static BENCHMARKS: TableType = TableType {
    name: "benchmarks",
    meaning: "a point of known elevation",
    columns: &[
        port!(name: Kind::Text, "its name"),
        number!(elevation: elevation in foot | meter, ELEVATION, "its elevation"),
    ],
    least_rows: 1,
};

/// Reduced points.
static POINTS: TableType = TableType {
    name: "points",
    meaning: "a point with its elevation",
    columns: &[
        port!(point: Kind::Text, "name of the point"),
        port!(setup: Kind::Count(1, 1_000_000), "the set-up it was read from"),
        number!(rod: length in foot | meter, ROD, "its reading"),
        number!(booked: elevation in foot | meter, HEIGHT, "elevation before the adjustment"),
        number!(correction: length in inch | millimeter, Range::ANY, "what the adjustment adds"),
        number!(elevation: elevation in foot | meter, HEIGHT, "elevation"),
    ],
    least_rows: 0,
};

/// Heights of instrument.
static SETUPS: TableType = TableType {
    name: "setups",
    meaning: "a set-up of the instrument",
    columns: &[
        port!(backsight_point: Kind::Text, "the point of its backsight"),
        number!(booked: elevation in foot | meter, HEIGHT, "height of instrument before the adjustment"),
        number!(height_of_instrument: elevation in foot | meter, HEIGHT, "height of instrument"),
    ],
    least_rows: 0,
};

/// The level book.
pub static LEVEL_BOOK: Operation = Operation {
    name: "level_book",
    module: "survey",
    since: "0.1.0",
    meaning: "Reduces a level book: heights of instrument, elevations, closure.",
    equation: "height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of backsights - sum of \
               foresights = last - first; misclosure = found - known, shared out by set-ups",
    assumes: "every reading is equally good",
    ports: &[
        port!(page: Kind::Table(&PAGE), "the readings in the order they were booked"),
        port!(benchmarks: Kind::Table(&BENCHMARKS), "the points of known elevation"),
        number!(closure_tolerance: length in inch | millimeter, Range::NOT_NEGATIVE, "how far a line of two or more set-ups may be off"; optional),
        number!(recheck_tolerance: length in inch | millimeter, Range::NOT_NEGATIVE,
            "how far one set-up may be off: its backsight point read again, or the benchmark it ends on"; optional),
    ],
    results: &[
        number!(misclosure: length in inch | millimeter, Range::ANY, "found less known where the line closes"; optional),
        number!(backsights: length in foot | meter, Range::NOT_NEGATIVE, "sum of the backsights of the first line"; optional),
        number!(foresights: length in foot | meter, Range::NOT_NEGATIVE, "sum of its foresights"; optional),
        number!(rise: length in foot | meter, Range::ANY, "last less first of that line"; optional),
        port!(setups: Kind::Table(&SETUPS), "the set-ups"),
        port!(points: Kind::Table(&POINTS), "the points"),
    ],
    basis: &[BasisId::Levelling, BasisId::ClosureTolerance],
    example: r#"{"page": [
        {"point": "BM A", "backsight": "3.10 ft"},
        {"point": "TP1", "foresight": "9.82 ft", "backsight": "6.44 ft"},
        {"point": "TP2", "foresight": "6.96 ft", "backsight": "8.76 ft"},
        {"point": "TP3", "foresight": "3.27 ft", "backsight": "7.12 ft"},
        {"point": "BM B", "foresight": "10.42 ft"}],
        "benchmarks": [{"name": "BM A", "elevation": "100.00 ft"}, {"name": "BM B", "elevation": "94.91 ft"}],
        "closure_tolerance": "0.05 ft"}"#,
    refusals: &[
        (r#"{"closure_tolerance": "1/4 in"}"#, Code::ClosureExceeded),
        (r#"{"page": [{"point": "shot", "sight": "4 ft"}]}"#, Code::BookIncomplete),
        (r#"{"page": [{"point": "BM A", "backsight": "-3 ft"}]}"#, Code::OutOfRange),
        (r#"{"benchmarks": [{"name": "BM X", "elevation": "100 ft"}]}"#, Code::BookIncomplete),
        (r#"{"page": []}"#, Code::EmptyList),
    ],
    call: Call::Record(level_book),
};

fn level_book(args: &Args<'_>) -> Result<Answer> {
    let marks = args.required_table(1)?;
    let benchmarks = (0..marks.rows).map(|row| {
        Benchmark::new(
            marks.text(0, row).unwrap_or_default(),
            Elevation::from_base(marks.number(1, row).unwrap_or(f64::NAN)),
        )
    });
    let tolerances = Tolerances { closure: args.quantity(2)?, recheck: args.quantity(3)? };
    let page = Page::read(args.required_table(0)?)?;
    let setups = page.setups.clone();
    let book = reduce(&LevelBook { benchmarks: benchmarks.collect(), setups, tolerances });
    book.map(|book| answer(&book)).map_err(|failure| page.told(failure))
}

fn answer(book: &ReducedBook) -> Answer {
    let number = |length: Option<Length>| length.map_or(Value::Absent, |length| Value::Number(length.base()));
    let page = book.lines.first().and_then(|line| line.page.as_ref());
    let closure = book.lines.iter().find_map(|line| line.closure.as_ref());
    let notes =
        book.lines.iter().filter_map(|line| line.closure.as_ref()).filter(|c| c.misclosure.base() != 0.0);
    let notes = notes.map(|closure| {
        let off = crate::quantity::feet_and_inches(closure.misclosure, 32);
        Note::new(NoteCode::Adjusted, format!("closes on {} {off} off, shared out by set-ups", closure.on))
    });
    Answer::of([
        number(closure.map(|closure| closure.misclosure)),
        number(page.map(|page| page.backsights)),
        number(page.map(|page| page.foresights)),
        number(page.map(|page| page.rise)),
        Value::Table(setup_table(book)),
        Value::Table(point_table(book)),
    ])
    .with_notes(notes.collect::<Vec<_>>())
}

fn setup_table(book: &ReducedBook) -> Columns {
    let setups = &book.setups;
    Columns {
        rows: setups.len(),
        columns: vec![
            Column::Texts(setups.iter().map(|setup| Some(setup.backsight_point.clone())).collect()),
            Column::Numbers(setups.iter().map(|setup| setup.height_booked.base()).collect()),
            Column::Numbers(setups.iter().map(|setup| setup.height.base()).collect()),
        ],
    }
}

fn point_table(book: &ReducedBook) -> Columns {
    let points = &book.points;
    Columns {
        rows: points.len(),
        columns: vec![
            Column::Texts(points.iter().map(|point| Some(point.name.clone())).collect()),
            Column::Counts(points.iter().map(|point| i64::try_from(point.setup + 1).ok()).collect()),
            Column::Numbers(points.iter().map(|point| point.rod.base()).collect()),
            Column::Numbers(points.iter().map(|point| point.booked.base()).collect()),
            Column::Numbers(points.iter().map(|point| point.correction.base()).collect()),
            Column::Numbers(points.iter().map(|point| point.elevation.base()).collect()),
        ],
    }
}
