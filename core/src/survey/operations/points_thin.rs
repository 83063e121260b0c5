//! The rows that thin points and part strays from them.

use super::OUTLINE;
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::input::BuiltOutline;
use crate::survey::points::stray::{self, HEIGHT, Limits, SLOPE, WIDTH, part};
use crate::survey::points::thin::{Asked, HEIGHT_ERROR, thin};
use crate::survey::points::{POINTS, Points};
use crate::{number, port};

/// The most points that can be asked for.
const MOST: i64 = u32::MAX as i64;

static KEPT: TableType = TableType {
    name: "kept",
    meaning: "a point kept",
    columns: &[port!(point: Kind::Count(1, MOST), "its number in the list of all, from 1")],
    least_rows: 0,
};

static STRAYS: TableType = TableType {
    name: "strays",
    meaning: "a point taken out",
    columns: &[
        port!(point: Kind::Count(1, MOST), "its number in the list of all, from 1"),
        port!(kind: Kind::Choice(stray::Kind::WORDS), "why it is no floor"),
    ],
    least_rows: 0,
};

/// Points thinned.
pub static THIN_POINTS: Operation = Operation {
    name: "thin_points",
    module: "survey",
    since: "0.1.0",
    meaning: "Fewer points that say the same: the surface of a survey through them stays within a height error of every point left out.",
    equation: "from the corners of the convex hull, the worst point of each triangle is taken in until the error or the number holds",
    assumes: "strays are taken out; of points within 1/2 in in plan one is enough; the survey has the same outline, or that of the hull",
    ports: &[
        port!(points: Kind::Record(&POINTS), "the points"),
        number!(within: length in inch | millimeter, HEIGHT_ERROR, "the height error allowed: this or the count"; optional),
        port!(count: Kind::Count(3, MOST), "how many points to keep: this or the height error"; optional),
        port!(outline: Kind::Record(&OUTLINE), "the plan edge of the work; points more than 1/2 in outside it are left out"; optional),
    ],
    results: &[
        port!(thinned: Kind::Record(&POINTS), "the points kept"),
        port!(kept_count: Kind::Count(3, MOST), "how many were kept"),
        number!(error: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest height between the surface through them and a point left out"),
        port!(worst: Kind::Count(1, MOST), "the number of the point it is at"; optional),
        port!(hull_count: Kind::Count(3, MOST), "how many of those kept are corners of the convex hull"),
        port!(outside_count: Kind::Count(0, MOST), "how many lie outside the outline"),
        port!(kept: Kind::Table(&KEPT), "which points were kept"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"points": {"unit": "ft", "x": [1, 11, 11, 1, 5, 6, 3], "y": [1, 1, 9, 9, 4, 5, 7],
        "elevation": [99.20, 99.15, 99.25, 99.22, 99.16, 99.18, 99.21]}, "within": "1/4 in"}"#,
    refusals: &[
        (r#"{"within": "-1 in"}"#, Code::OutOfRange),
        (r#"{"count": 5}"#, Code::Contradiction),
        (r#"{"within": null}"#, Code::KeyMissing),
        (r#"{"within": null, "count": 3}"#, Code::ThinningCount),
        (
            r#"{"points": {"unit": "ft", "x": [1, 11], "y": [1, 1], "elevation": [99, 99]}}"#,
            Code::TooFewShots,
        ),
        (
            r#"{"points": {"unit": "ft", "x": [1, 5, 11], "y": [1, 1, 1], "elevation": [99, 99, 99]}}"#,
            Code::CollinearShots,
        ),
        (
            r#"{"points": {"unit": "ft", "x": [1, 11, 6, 5, 5], "y": [1, 1, 9, 4, 4.01], "elevation": [99, 99, 99, 99, 98]}}"#,
            Code::ThinningUnreachable,
        ),
    ],
    call: Call::Record(thinned),
};

fn thinned(args: &Args<'_>) -> Result<Answer> {
    let points: &Points = args.required_record(0)?;
    let asked = match (args.quantity(1)?, args.count(2)?) {
        (Some(error), None) => Asked::Within(error),
        (None, Some(count)) => Asked::Count(usize::try_from(count).unwrap_or(usize::MAX)),
        (None, None) => {
            return Err(Failure::new(Code::KeyMissing, "within")
                .allowed("within or count")
                .remedy("give the height error allowed, or the number of points to keep"));
        }
        _ => {
            return Err(Failure::new(Code::Contradiction, "within")
                .written("within and count")
                .allowed("one of them: the other is the result")
                .remedy("keep one"));
        }
    };
    let outline = args.record::<BuiltOutline>(3)?;
    let thinned = thin(points, outline.map(|built| built.outline.region()), asked)
        .map_err(|failure| of_points(&THIN_POINTS, failure))?;
    let outside = thinned.outside.len();
    let notes = (outside > 0).then(|| {
        Note::new(
            NoteCode::PointsOutside,
            format!("{outside} points lie more than 1/2 in outside the outline"),
        )
    });
    let kept = Columns { rows: thinned.kept.len(), columns: vec![numbered(thinned.kept.iter().copied())] };
    let count = thinned.kept.len();
    let answer = Answer::of([
        Value::record(thinned.points),
        Value::Count(count as i64),
        Value::Number(thinned.error.base()),
        thinned.worst.map_or(Value::Absent, |worst| Value::Count(worst as i64 + 1)),
        Value::Count(thinned.hull as i64),
        Value::Count(outside as i64),
        Value::Table(kept),
    ]);
    Ok(answer.with_notes(notes))
}

/// Strays taken out.
pub static PART_STRAYS: Operation = Operation {
    name: "part_strays",
    module: "survey",
    since: "0.1.0",
    meaning: "The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points far away.",
    equation: "a point is stray when it is higher than the floor of its cell and those around it by more than above, deeper by more than below, or has fewer than others within reach; floor: lowest agreed heights of cells, things narrower than widest cut off",
    assumes: "the floor is seen beside the things on it; a thing wider than widest, or lower than above, is floor",
    ports: &[
        port!(points: Kind::Record(&POINTS), "the points of the scan"),
        number!(above: length in inch | millimeter, HEIGHT, "higher than this over the floor is stray";
            or "1 in" because "a step of an inch in an old slab is common"),
        number!(below: length in inch | millimeter, HEIGHT, "deeper than this under the floor is stray";
            or "1 in" because "hollows of an old slab are wider than a cell and stay"),
        number!(widest: length in foot | meter, WIDTH, "width of the widest thing that stands on the floor";
            or "6 ft" because "few things left in a cleared shop are wider"),
        number!(cell: length in inch | millimeter, WIDTH, "width of the cells in which the floor is looked for";
            or "6 in" because "a scan has many points in each"),
        number!(steepest: slope in inch_per_foot | percent, SLOPE, "the steepest that the floor is";
            or "1/4 in/ft" because "floors that drain seldom fall more"),
        number!(reach: length in foot | meter, WIDTH, "how near others must be";
            or "1 ft" because "a scan has many points in a foot"),
        port!(others: Kind::Count(0, 1000), "how many others must be so near";
            or "3" because "echoes come one by one"),
    ],
    results: &[
        port!(floor: Kind::Record(&POINTS), "the points kept"),
        port!(kept_count: Kind::Count(1, MOST), "how many were kept"),
        port!(above_count: Kind::Count(0, MOST), "how many stand above the floor"),
        port!(below_count: Kind::Count(0, MOST), "how many lie below it"),
        port!(alone_count: Kind::Count(0, MOST), "how many have too few others near them"),
        port!(strays: Kind::Table(&STRAYS), "which points were taken out, and why"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"points": {"unit": "ft", "x": [1, 2, 3, 4, 1, 2, 3, 4, 2.5, 2.4], "y": [1, 1, 1, 1, 2, 2, 2, 2, 1.5, 1.6],
        "elevation": [99.20, 99.20, 99.19, 99.18, 99.21, 99.20, 99.20, 99.19, 101.70, 99.20]},
        "cell": "18 in", "reach": "2 ft"}"#,
    refusals: &[
        (r#"{"above": "0 in"}"#, Code::OutOfRange),
        (r#"{"cell": "-6 in"}"#, Code::OutOfRange),
        (r#"{"cell": "1e-6 in"}"#, Code::OutOfRange),
        (r#"{"widest": "6"}"#, Code::UnitMissing),
        (r#"{"others": 1001}"#, Code::OutOfRange),
        (r#"{"reach": "0.1 in"}"#, Code::EmptyList),
        (r#"{"points": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(parted),
};

fn parted(args: &Args<'_>) -> Result<Answer> {
    let points: &Points = args.required_record(0)?;
    let usual = Limits::usual();
    let limits = Limits {
        above: args.quantity(1)?.unwrap_or(usual.above),
        below: args.quantity(2)?.unwrap_or(usual.below),
        widest: args.quantity(3)?.unwrap_or(usual.widest),
        cell: args.quantity(4)?.unwrap_or(usual.cell),
        steepest: args.quantity(5)?.unwrap_or(usual.steepest),
        reach: args.quantity(6)?.unwrap_or(usual.reach),
        others: args.count(7)?.and_then(|count| usize::try_from(count).ok()).unwrap_or(usual.others),
    };
    let parted = part(points, &limits).map_err(|failure| of_points(&PART_STRAYS, failure))?;
    let [above, below, alone] =
        [stray::Kind::Above, stray::Kind::Below, stray::Kind::Alone].map(|kind| parted.count(kind));
    if parted.kept.is_empty() {
        return Err(Failure::new(Code::EmptyList, "points")
            .written(format!("{} points, {alone} of them with too few others near", points.len()))
            .allowed("at least 1 point of floor")
            .remedy("widen the reach, or ask for fewer others"));
    }
    let strays = Columns {
        rows: parted.strays.len(),
        columns: vec![
            numbered(parted.strays.iter().map(|(number, _)| *number)),
            Column::Choices(parted.strays.iter().map(|(_, kind)| Some(*kind as usize)).collect()),
        ],
    };
    let count = parted.kept.len();
    Ok(Answer::of([
        Value::record(parted.points),
        Value::Count(count as i64),
        Value::Count(above as i64),
        Value::Count(below as i64),
        Value::Count(alone as i64),
        Value::Table(strays),
    ]))
}

/// The numbers of points as people count them.
fn numbered(numbers: impl Iterator<Item = usize>) -> Column {
    Column::Counts(numbers.map(|number| Some(number as i64 + 1)).collect())
}

/// A failure of a port keeps its path; what is wrong with a point is under the points.
pub(super) fn of_points(row: &Operation, failure: Box<Failure>) -> Box<Failure> {
    if row.port(&failure.path).is_some() { failure } else { failure.under("points") }
}
