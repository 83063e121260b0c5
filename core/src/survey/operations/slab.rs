//! The rows of the surveyed old slab.

use super::{HEIGHT, OUTLINE, PLACE};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Choice, Columns, Kind, Operation, Port, TableType, Value};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::input::BuiltOutline;
use crate::survey::level_book::{ELEVATION, ROD, rod_elevation};
use crate::survey::old_slab::{Grid, Instrument, Marks, SURVEY, Settings, Shots, Survey, Texture};
use crate::survey::surface::Shot;
use crate::{choice, number, port};

choice! {
    /// Whether something is allowed.
    pub enum Allowed {
        /// It is not.
        No = "no",
        /// It is.
        Yes = "yes",
    }
}

/// Shots one by one.
static SHOTS: TableType = TableType {
    name: "shots",
    meaning: "a shot of the old slab",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height above the job datum"),
        port!(name: Kind::Text, "its name"; optional),
        port!(outside: Kind::Choice(Allowed::WORDS), "outside the outline on purpose"; optional),
        port!(step: Kind::Choice(Allowed::WORDS), "one side of a step"; optional),
    ],
    least_rows: 1,
};

static COLUMNS: TableType = TableType {
    name: "columns",
    meaning: "a grid column",
    columns: &[number!(x: length in foot | meter, PLACE, "distance from the left")],
    least_rows: 1,
};

static ROWS: TableType = TableType {
    name: "rows",
    meaning: "a grid row",
    columns: &[number!(y: length in foot | meter, PLACE, "distance from the front")],
    least_rows: 1,
};

static ELEVATIONS: TableType = TableType {
    name: "elevations",
    meaning: "the height of a grid place, row by row",
    columns: &[
        number!(elevation: elevation in foot | meter, HEIGHT, "height; empty where not shot"; optional),
    ],
    least_rows: 1,
};

static RODS: TableType = TableType {
    name: "rods",
    meaning: "the reading on a grid place, row by row",
    columns: &[number!(rod: length in foot | meter, ROD, "reading; empty where not shot"; optional)],
    least_rows: 1,
};

pub(super) const INSTRUMENT: Port = port!(instrument: Kind::Choice(Instrument::WORDS), "what the readings were taken with"; or Instrument::TAKEN.word(), because Instrument::WHY_TAKEN);
pub(super) const TEXTURE: Port = port!(texture: Kind::Choice(Texture::WORDS), "what the old floor feels like"; or Texture::TAKEN.word(), because Texture::WHY_TAKEN);
pub(super) const BEYOND: Port = port!(beyond_allowed: Kind::Choice(Allowed::WORDS), "whether the work may reach more than 4 ft beyond the shots";
    or "no" because "heights that far out are a guess");
const STEPS: Port = port!(steps: Kind::Choice(Allowed::WORDS), "whether a row or column given twice, one after the other, is the two sides of a step";
    or "no" because "a distance written twice is more often a slip");

pub(super) fn settings(args: &Args<'_>, first: usize) -> Result<Settings> {
    Ok(Settings {
        instrument: args.choice(first)?,
        texture: args.choice(first + 1)?,
        beyond_allowed: args.choice(first + 2)? == Some(Allowed::Yes),
    })
}

pub(super) fn answer(survey: Survey) -> Answer {
    let notes = survey.notes().to_vec();
    Answer::of([Value::record(survey)]).with_notes(notes)
}

/// The old slab from scattered shots.
pub static SURVEY_FROM_SHOTS: Operation = Operation {
    name: "survey_from_shots",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab through shots in any order.",
    equation: "Delaunay triangles, each plane; shots on one circle are filled from their mean",
    assumes: "the slab is plane between neighbouring shots",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(shots: Kind::Table(&SHOTS), "the shots"),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "shots": {"x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"], "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
            "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"]}}"#,
    refusals: &[
        (
            r#"{"shots": {"x": ["1 ft", "11 ft"], "y": ["1 ft", "1 ft"], "elevation": ["99 ft", "99 ft"]}}"#,
            Code::TooFewShots,
        ),
        (
            r#"{"shots": {"x": ["1 ft", "5 ft", "11 ft"], "y": ["1 ft", "1 ft", "1 ft"], "elevation": ["99 ft", "99 ft", "99 ft"]}}"#,
            Code::CollinearShots,
        ),
        (
            r#"{"shots": {"x": ["1 ft", "1 ft", "11 ft", "6 ft"], "y": ["1 ft", "1 ft", "1 ft", "9 ft"],
            "elevation": ["99 ft", "98 ft", "99 ft", "99 ft"]}}"#,
            Code::TwoHeights,
        ),
        (
            r#"{"shots": {"x": ["1 ft", "20 ft", "11 ft", "6 ft"], "y": ["1 ft", "5 ft", "1 ft", "9 ft"],
            "elevation": ["99 ft", "98 ft", "99 ft", "99 ft"]}}"#,
            Code::ShotOutside,
        ),
        (r#"{"shots": []}"#, Code::EmptyList),
        (r#"{"instrument": "lasr"}"#, Code::WordUnknown),
    ],
    call: Call::Record(from_shots),
};

fn from_shots(args: &Args<'_>) -> Result<Answer> {
    let outline: &BuiltOutline = args.required_record(0)?;
    let marks = marks(args.required_table(1)?);
    let survey = Survey::new(outline.outline.clone(), Shots::Scattered(marks), settings(args, 2)?);
    survey.map(answer).map_err(|failure| failure.under("shots"))
}

fn marks(table: &Columns) -> Marks {
    let yes =
        |column: usize, row: usize| table.choice(column, row).and_then(Allowed::at) == Some(Allowed::Yes);
    let (x, y, z) = (table.numbers(0), table.numbers(1), table.numbers(2));
    let shots = x.iter().zip(y).zip(z).enumerate().map(|(row, ((&x, &y), &z))| Shot {
        x,
        y,
        z,
        outside_allowed: yes(4, row),
        step: yes(5, row),
    });
    let named = (0..table.rows).any(|row| table.text(3, row).is_some());
    let names = if named {
        (0..table.rows).map(|row| table.text(3, row).map(str::to_owned)).collect()
    } else {
        Vec::new()
    };
    Marks { shots: shots.collect(), names }
}

/// The old slab from a grid of elevations.
pub static SURVEY_FROM_GRID: Operation = Operation {
    name: "survey_from_grid",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.",
    equation: "each cell is four triangles about the mean of its corners",
    assumes: "the slab is plane over each triangle",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(columns: Kind::Table(&COLUMNS), "the grid columns from the left wall"),
        port!(rows: Kind::Table(&ROWS), "the grid rows from the front wall"),
        port!(elevations: Kind::Table(&ELEVATIONS), "the heights, row by row"),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
        STEPS,
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "columns": {"x": ["1 ft", "6 ft", "11 ft"]}, "rows": {"y": ["1 ft", "9 ft"]},
        "elevations": {"elevation": ["99.20 ft", "99.18 ft", "99.15 ft", "99.22 ft", "99.19 ft", "99.25 ft"]}}"#,
    refusals: &[
        (r#"{"elevations": {"elevation": ["99.20 ft", "99.18 ft", "99.15 ft"]}}"#, Code::LengthMismatch),
        (r#"{"rows": {"y": ["9 ft", "1 ft"]}}"#, Code::OutOfRange),
        (r#"{"columns": {"x": []}}"#, Code::EmptyList),
        (r#"{"columns": {"x": ["5.9 ft", "6 ft", "6.1 ft"]}}"#, Code::BeyondShots),
    ],
    call: Call::Record(from_grid),
};

fn from_grid(args: &Args<'_>) -> Result<Answer> {
    let heights = args.required_table(3)?;
    let heights = (0..heights.rows).map(|row| heights.number(0, row)).collect();
    grid(args, heights, settings(args, 4)?, args.choice(7)? == Some(Allowed::Yes))
}

fn grid(args: &Args<'_>, heights: Vec<Option<f64>>, settings: Settings, steps: bool) -> Result<Answer> {
    let outline: &BuiltOutline = args.required_record(0)?;
    let columns = args.required_table(1)?.numbers(0).to_vec();
    let rows = args.required_table(2)?.numbers(0).to_vec();
    let survey =
        Survey::new(outline.outline.clone(), Shots::Grid(Grid { columns, rows, heights, steps }), settings);
    survey
        .map(answer)
        .map_err(|failure| if failure.path.is_empty() { failure.under("elevations") } else { failure })
}

/// The old slab from a grid of rods.
pub static SURVEY_FROM_RODS: Operation = Operation {
    name: "survey_from_rods",
    module: "survey",
    since: "0.1.0",
    meaning: "The surface of the old slab through a grid of rod readings from one set-up.",
    equation: "elevation = benchmark + backsight - rod",
    assumes: "one set-up; the slab is plane over each triangle",
    ports: &[
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work"),
        port!(columns: Kind::Table(&COLUMNS), "the grid columns from the left wall"),
        port!(rows: Kind::Table(&ROWS), "the grid rows from the front wall"),
        port!(rods: Kind::Table(&RODS), "the readings, row by row"),
        number!(benchmark: elevation in foot | meter, ELEVATION, "elevation of the benchmark"),
        number!(backsight: length in foot | meter, ROD, "rod on the benchmark"; zero rare),
        INSTRUMENT,
        TEXTURE,
        BEYOND,
        STEPS,
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the surveyed old slab")],
    basis: &[BasisId::Levelling, BasisId::Geometry, BasisId::ReadingWords],
    example: r#"{"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "columns": {"x": ["1 ft", "6 ft", "11 ft"]}, "rows": {"y": ["1 ft", "9 ft"]},
        "rods": {"rod": ["5' 0 5/8\"", "5' 0 1/2\"", "5' 0 3/8\"", "4' 11 7/8\"", "5' 0\"", "4' 11 7/8\""]},
        "benchmark": "100 ft", "backsight": "4' 2 1/2\""}"#,
    refusals: &[
        (r#"{"rods": {"rod": ["-5 ft", "5 ft", "5 ft", "5 ft", "5 ft", "5 ft"]}}"#, Code::OutOfRange),
        (r#"{"rods": {"rod": ["5 ft", "5 ft", "5 ft", "5 ft", "5 ft"]}}"#, Code::LengthMismatch),
        (r#"{"backsight": "4 psi"}"#, Code::UnitWrong),
    ],
    call: Call::Record(from_rods),
};

fn from_rods(args: &Args<'_>) -> Result<Answer> {
    let (benchmark, backsight): (Elevation, Length) = (args.required(4)?, args.required(5)?);
    let rods = args.required_table(3)?;
    let height = |row: usize| match rods.number(0, row) {
        None => Ok(None),
        Some(rod) => rod_elevation(benchmark, backsight, Length::from_base(rod))
            .map(|shot| Some(shot.elevation.base())),
    };
    let heights = (0..rods.rows).map(height).collect::<Result<Vec<_>>>()?;
    let steps = args.choice(9)? == Some(Allowed::Yes);
    grid(args, heights, settings(args, 6)?, steps).map_err(|failure| match failure.path.as_str() {
        "elevations" => crate::failure::Failure { path: "rods".to_owned(), ..*failure }.into(),
        _ => failure,
    })
}
