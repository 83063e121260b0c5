//! The rows of the trust in the book.

use super::{Allowed, HEIGHT, PLACE};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Slope, Time, Typed};
use crate::survey::Survey;
use crate::survey::level_book::ROD;
use crate::survey::old_slab::SURVEY;
use crate::survey::trust::coverage::{self, Coverage};
use crate::survey::trust::pegs::{PegReadings, SIGHT, TILT, two_peg_test};
use crate::survey::trust::recheck::{BenchmarkAgain, Follows};
use crate::survey::trust::{Graduation, SlipKind, Suspect, Verdict, suspects};
use crate::{number, port};

/// Shots that do not go with their neighbours.
static SUSPECTS: TableType = TableType {
    name: "suspects",
    meaning: "a shot that does not go with its neighbours",
    columns: &[
        port!(shot: Kind::Text, "its name"),
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "its height as booked"),
        number!(rod: length in foot | meter, ROD, "its reading, where the survey stands on rods"; optional),
        number!(predicted: elevation in foot | meter, HEIGHT, "what its neighbours say"),
        number!(off: length in inch | millimeter, Range::ANY, "booked less predicted: above zero where it stands high"),
        number!(deviation: length in inch | millimeter, Range::NOT_NEGATIVE, "standard deviation of that on this floor"),
        port!(verdict: Kind::Choice(Verdict::WORDS), "what to think of it"),
        port!(kind: Kind::Choice(SlipKind::WORDS), "what may have happened"),
        port!(second: Kind::Choice(SlipKind::WORDS), "what else, nearly as likely; the amount where a row is off"; optional),
        port!(with: Kind::Text, "the shot it was swapped with, or its rows"; optional),
        number!(proposed: elevation in foot | meter, HEIGHT, "the height it would have"; optional),
        number!(proposed_rod: length in foot | meter, Range::ANY, "the reading it would have"; optional),
        number!(more_if_corrected: volume in cubic_yard | cubic_meter, Range::ANY,
            "what the net concrete under a given finish changes by with the height proposed"; optional),
        number!(more_without: volume in cubic_yard | cubic_meter, Range::ANY, "what it changes by where the shot is left out"; optional),
        port!(said: Kind::Text, "the same in a sentence"),
    ],
    least_rows: 0,
};

/// The shots that do not go with their neighbours.
pub static SURVEY_SUSPECTS: Operation = Operation {
    name: "survey_suspects",
    module: "survey",
    since: "0.1.0",
    meaning: "The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand invented \
              books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of ten; three of \
              ten books without a slip name some shot.",
    equation: "off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is five times likelier than chance",
    assumes: "the slab is a plane with waves that reach 10 ft; readings and texture are normal but for slips",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(rod: Kind::Choice(Graduation::WORDS), "how the rod is graduated; without it the readings tell"; optional),
    ],
    results: &[
        port!(suspects: Kind::Table(&SUSPECTS), "the suspects, the farthest off first"),
        port!(judged: Kind::Count(0, i64::MAX), "how many shots were judged"),
        number!(roughness: length in inch | millimeter, Range::NOT_NEGATIVE,
            "standard deviation that each shot has for itself: reading, texture and small waves"),
        port!(graduation: Kind::Choice(Graduation::WORDS), "how the rod is graduated"),
    ],
    basis: &[BasisId::LeaveOneOut, BasisId::BookingSlips, BasisId::ReadingWords],
    example: r#"{"survey": {"outline": {"sides": [{"length": "24 ft"}, {"length": "24 ft"}, {"length": "24 ft"}, {"length": "24 ft"}]},
        "grid": {"columns": ["1 ft", "8 ft", "16 ft", "23 ft"], "rows": ["1 ft", "8 ft", "16 ft", "23 ft"],
            "elevations": ["99.20 ft", "99.18 ft", "99.19 ft", "99.17 ft", "99.24 ft", "99.22 ft", "99.73 ft", "99.23 ft",
                "99.29 ft", "99.28 ft", "99.26 ft", "99.27 ft", "99.33 ft", "99.31 ft", "99.32 ft", "99.30 ft"]}}}"#,
    refusals: &[
        (r#"{"survey": 3}"#, Code::KindMismatch),
        (r#"{"rod": "inchs"}"#, Code::WordUnknown),
        (r#"{"survey": {"outline": {"sides": []}}}"#, Code::EmptyList),
    ],
    call: Call::Record(find),
};

fn find(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let found = suspects(survey, args.choice(1)?);
    let answer = Answer::of([
        Value::Table(suspect_table(&found.list)),
        Value::Count(found.judged as i64),
        Value::Number(found.roughness.base()),
        Value::Choice(found.graduation as usize),
    ]);
    Ok(answer.with_notes(found.notes))
}

fn suspect_table(list: &[Suspect]) -> Columns {
    let numbers = |of: &dyn Fn(&Suspect) -> Option<f64>| {
        Column::Numbers(list.iter().map(|suspect| of(suspect).unwrap_or(f64::NAN)).collect())
    };
    let texts = |of: &dyn Fn(&Suspect) -> Option<String>| Column::Texts(list.iter().map(of).collect());
    let choices = |of: &dyn Fn(&Suspect) -> Option<usize>| Column::Choices(list.iter().map(of).collect());
    Columns {
        rows: list.len(),
        columns: vec![
            texts(&|s| Some(s.name.clone())),
            numbers(&|s| Some(s.at[0].base())),
            numbers(&|s| Some(s.at[1].base())),
            numbers(&|s| Some(s.elevation.base())),
            numbers(&|s| s.rod.map(Typed::base)),
            numbers(&|s| Some(s.predicted.base())),
            numbers(&|s| Some(s.off.base())),
            numbers(&|s| Some(s.deviation.base())),
            choices(&|s| Some(s.verdict as usize)),
            choices(&|s| Some(s.kind as usize)),
            choices(&|s| s.second.map(|second| second as usize)),
            texts(&|s| s.with.clone()),
            numbers(&|s| s.proposed.map(Typed::base)),
            numbers(&|s| s.proposed_rod.map(Typed::base)),
            numbers(&|s| s.more_if_corrected.map(Typed::base)),
            numbers(&|s| s.more_without.map(Typed::base)),
            texts(&|s| Some(s.said.clone())),
        ],
    }
}

/// Names of shots.
static NAMES: TableType = TableType {
    name: "leave_out",
    meaning: "a shot to leave out",
    columns: &[port!(name: Kind::Text, "its name")],
    least_rows: 1,
};

/// The slab without some shots.
pub static SURVEY_WITHOUT: Operation = Operation {
    name: "survey_without",
    module: "survey",
    since: "0.1.0",
    meaning: "The old slab without the shots named; the others keep their names.",
    equation: "the surface through the shots that are left",
    assumes: "the caller knows why",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(leave_out: Kind::Table(&NAMES), "the shots to leave out"),
    ],
    results: &[port!(survey: Kind::Record(&SURVEY), "the old slab without them")],
    basis: &[BasisId::Geometry],
    example: r#"{"survey": {"outline": {"sides": [{"length": "12 ft"}, {"length": "10 ft"}, {"length": "12 ft"}, {"length": "10 ft"}]},
        "grid": {"columns": ["1 ft", "6 ft", "11 ft"], "rows": ["1 ft", "9 ft"],
            "elevations": ["99.20 ft", "99.68 ft", "99.15 ft", "99.22 ft", "99.19 ft", "99.25 ft"]}},
        "leave_out": {"name": ["A2"]}}"#,
    refusals: &[
        (r#"{"leave_out": {"name": ["A9"]}}"#, Code::ShotUnknown),
        (r#"{"leave_out": {"name": []}}"#, Code::EmptyList),
        (r#"{"leave_out": {"name": ["A1", "A2", "A3", "B1"]}}"#, Code::TooFewShots),
        (r#"{"leave_out": {"name": ["A1", "A2", "A3"]}}"#, Code::CollinearShots),
    ],
    call: Call::Record(without),
};

fn without(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let table = args.required_table(1)?;
    let names: Vec<&str> = (0..table.rows).map(|row| table.text(0, row).unwrap_or_default()).collect();
    let left = survey.without_named(&names).map_err(|failure| failure.under("leave_out"))?;
    let notes = left.notes().to_vec();
    Ok(Answer::of([Value::record(left)]).with_notes(notes))
}

/// The two-peg test.
pub static TWO_PEG_TEST: Operation = Operation {
    name: "two_peg_test",
    module: "survey",
    since: "0.1.0",
    meaning: "Whether the line of sight of a level or laser is level, from readings on two pegs.",
    equation: "rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right = reading - tilt distance",
    assumes: "the first set-up half way between the pegs; curvature and refraction left out",
    ports: &[
        number!(middle_a: length in foot | meter, ROD, "rod on peg A from half way between the pegs"),
        number!(middle_b: length in foot | meter, ROD, "rod on peg B from there"),
        number!(end_a: length in foot | meter, ROD, "rod on peg A from near one peg"),
        number!(end_b: length in foot | meter, ROD, "rod on peg B from there"),
        number!(distance_a: length in foot | meter, SIGHT, "from the instrument to peg A in the second set-up"),
        number!(distance_b: length in foot | meter, SIGHT, "from the instrument to peg B in the second set-up"),
        number!(limit: slope in inch_per_foot | millimeter_per_meter, TILT, "the tilt allowed";
            or "0.00125 in/ft" because "1/16 in per 50 ft, common practice, no source"),
    ],
    results: &[
        number!(rise: length in foot | meter, Range::ANY, "how much higher peg B stands than peg A"),
        number!(tilt: slope in inch_per_foot | millimeter_per_meter, Range::ANY, "rise of the line of sight over the distance"),
        number!(right_a: length in foot | meter, Range::ANY, "what the second set-up should read on peg A"),
        number!(right_b: length in foot | meter, Range::ANY, "what it should read on peg B"),
        number!(off: length in inch | millimeter, Range::ANY, "how much too high it reads on the farther peg"),
        port!(passes: Kind::Choice(Allowed::WORDS), "whether the tilt is within what is allowed"),
        number!(good_for: length in foot | meter, Range::NOT_NEGATIVE,
            "difference of sights to benchmark and shot that the tilt turns into 1/8 in"; optional),
    ],
    basis: &[BasisId::TwoPegTest, BasisId::TwoPegLimit],
    example: r#"{"middle_a": "4.52 ft", "middle_b": "5.17 ft", "end_a": "4.86 ft", "end_b": "5.49 ft", "distance_a": "10 ft",
        "distance_b": "110 ft"}"#,
    refusals: &[
        (r#"{"distance_a": "105 ft"}"#, Code::OutOfRange),
        (r#"{"middle_a": "-1 ft"}"#, Code::OutOfRange),
        (r#"{"limit": "1/16 in"}"#, Code::UnitWrong),
        (r#"{"limit": "20 %"}"#, Code::OutOfRange),
    ],
    call: Call::Record(pegs),
};

fn pegs(args: &Args<'_>) -> Result<Answer> {
    let readings = PegReadings {
        middle_a: args.required(0)?,
        middle_b: args.required(1)?,
        end_a: args.required(2)?,
        end_b: args.required(3)?,
        distance_a: args.required(4)?,
        distance_b: args.required(5)?,
    };
    let test = two_peg_test(&readings, args.quantity::<Slope>(6)?)?;
    Ok(Answer::of([
        Value::Number(test.rise.base()),
        Value::Number(test.tilt.base()),
        Value::Number(test.right_a.base()),
        Value::Number(test.right_b.base()),
        Value::Number(test.off.base()),
        Value::Choice(if test.passes { Allowed::Yes } else { Allowed::No } as usize),
        test.good_for.map_or(Value::Absent, |distance| Value::Number(distance.base())),
    ]))
}

/// Readings between two looks at the benchmark.
static READ: TableType = TableType {
    name: "shots",
    meaning: "a reading between the two on the benchmark, in the order read",
    columns: &[
        number!(rod: length in foot | meter, ROD, "the reading"),
        number!(time: time in minute | minute, Range::NOT_NEGATIVE, "when, from the first reading of the benchmark"; optional),
    ],
    least_rows: 0,
};

static MENDED: TableType = TableType {
    name: "shared_out",
    meaning: "a reading with its share of the difference",
    columns: &[
        number!(correction: length in inch | millimeter, Range::ANY, "what its elevation gains"),
        number!(rod: length in foot | meter, Range::ANY, "the reading as from the first line of sight"),
    ],
    least_rows: 0,
};

/// The benchmark read again.
pub static BENCHMARK_RECHECK: Operation = Operation {
    name: "benchmark_recheck",
    module: "survey",
    since: "0.1.0",
    meaning: "The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by the first.",
    equation: "difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it for shot k of n",
    assumes: "the line of sight moved evenly; a set-up of a level book that closes shares half out to all its sights instead",
    ports: &[
        number!(first: length in foot | meter, ROD, "rod on the benchmark before"),
        number!(again: length in foot | meter, ROD, "rod on the benchmark after; add the difference to every rod mark"),
        port!(shots: Kind::Table(&READ), "the readings between"; optional),
        number!(time_again: time in minute | minute, Range::NOT_NEGATIVE, "when the benchmark was read again"; optional),
        number!(tolerance: length in inch | millimeter, Range::NOT_NEGATIVE, "how far the two may be off";
            or "1/8 in" because "one set-up closes within 1/8 in, common practice, no source"),
    ],
    results: &[
        number!(difference: length in inch | millimeter, Range::ANY, "again less first"),
        port!(follows: Kind::Choice(Follows::WORDS), "what follows"),
        port!(shared_out: Kind::Table(&MENDED), "the readings with their shares; none where it is off by too much"),
        port!(said: Kind::Text, "the same in a sentence"),
    ],
    basis: &[BasisId::Levelling, BasisId::ClosureTolerance],
    example: r#"{"first": "4' 2 1/2\"", "again": "4' 2 5/8\"", "shots": {"rod": ["5' 0 5/8\"", "5' 0 1/2\"", "4' 11 7/8\""]}}"#,
    refusals: &[
        (r#"{"again": "-4 ft"}"#, Code::OutOfRange),
        (r#"{"shots": {"rod": ["5 ft", "5 ft"], "time": ["5 min", "9 min"]}}"#, Code::KeyMissing),
        (
            r#"{"shots": {"rod": ["5 ft", "5 ft"], "time": ["5 min", ""]}, "time_again": "20 min"}"#,
            Code::EmptyCell,
        ),
        (
            r#"{"shots": {"rod": ["5 ft", "5 ft"], "time": ["5 min", "25 min"]}, "time_again": "20 min"}"#,
            Code::OutOfRange,
        ),
    ],
    call: Call::Record(recheck),
};

fn recheck(args: &Args<'_>) -> Result<Answer> {
    let table = args.table(2)?;
    let rods = table.map_or(&[][..], |table| table.numbers(0));
    let times: Vec<f64> = match table {
        Some(table) => (0..table.rows).filter_map(|row| table.number(1, row)).collect(),
        None => Vec::new(),
    };
    let again = BenchmarkAgain {
        first: args.required(0)?,
        again: args.required(1)?,
        rods: rods.iter().copied().map(Length::from_base).collect(),
        times: times.into_iter().map(Time::from_base).collect(),
        time_again: args.quantity(3)?,
        tolerance: args.quantity(4)?,
    };
    let result = again.follows().map_err(|failure| match failure.path.as_str() {
        "rod" | "time" => failure.under("shots"),
        _ => failure,
    })?;
    let lengths = |list: &[Length]| Column::Numbers(list.iter().map(|length| length.base()).collect());
    Ok(Answer::of([
        Value::Number(result.difference.base()),
        Value::Choice(result.follows as usize),
        Value::Table(Columns {
            rows: result.rods.len(),
            columns: vec![lengths(&result.corrections), lengths(&result.rods)],
        }),
        Value::Text(result.said),
    ]))
}

/// Where the next shots belong.
static NEXT: TableType = TableType {
    name: "next",
    meaning: "a place where a shot is missing, the most wanted first",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
        number!(nearest: length in foot | meter, Range::NOT_NEGATIVE, "how far the nearest shot is"),
        number!(uncovered_after: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area still not covered once it is shot"),
        number!(farthest_after: length in foot | meter, Range::NOT_NEGATIVE, "the farthest any place is from a shot then"),
    ],
    least_rows: 0,
};

/// How well the shots cover the work.
pub static SURVEY_COVERAGE: Operation = Operation {
    name: "survey_coverage",
    module: "survey",
    since: "0.1.0",
    meaning: "How much of the work lies too far from any shot, and where the next shots belong.",
    equation: "uncovered = area of the work outside all circles about the shots; next = the middle of the largest circle without a shot",
    assumes: "straight distances, through walls and holes",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        number!(near: length in foot | meter, coverage::NEAR, "how near a shot should be to every place";
            or "6 ft" because "a grid of 8 ft leaves no place farther, common practice, no source"),
        port!(most: Kind::Count(0, coverage::MOST as i64), "how many places for more shots to tell"; or "12" because "an hour's work"),
    ],
    results: &[
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "area of the work"),
        number!(uncovered: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area farther than that from every shot"),
        number!(share: ratio in percent | percent, Range::NOT_NEGATIVE, "its share of the work"),
        number!(beyond: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area beyond the last shots"),
        number!(unsurveyed: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area in triangles that leave the outline"),
        number!(farthest: length in foot | meter, Range::NOT_NEGATIVE, "the farthest any place is from a shot"),
        number!(farthest_x: length in foot | meter, PLACE, "where it is, from the left"),
        number!(farthest_y: length in foot | meter, PLACE, "where it is, from the front"),
        port!(next: Kind::Table(&NEXT), "where the next shots belong, until every place is near enough"),
    ],
    basis: &[BasisId::Geometry, BasisId::ShotSpacing],
    example: r#"{"survey": {"outline": {"sides": [{"length": "20 ft"}, {"length": "30 ft"}, {"length": "20 ft"}, {"length": "30 ft"}]},
        "grid": {"columns": ["1 ft", "19 ft"], "rows": ["1 ft", "29 ft"],
            "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"]}}}"#,
    refusals: &[
        (r#"{"near": "0 ft"}"#, Code::OutOfRange),
        (r#"{"near": "6 ft2"}"#, Code::UnitWrong),
        (r#"{"most": 501}"#, Code::OutOfRange),
        (r#"{"survey": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(cover),
};

fn cover(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let most = usize::try_from(args.count(2)?.unwrap_or(0)).unwrap_or(0);
    let covered = coverage::coverage(survey, args.quantity(1)?, most)?;
    Ok(Answer::of([
        Value::Number(covered.area.base()),
        Value::Number(covered.uncovered.base()),
        Value::Number(covered.uncovered_share().base()),
        Value::Number(covered.beyond.base()),
        Value::Number(covered.unsurveyed.base()),
        Value::Number(covered.farthest.base()),
        Value::Number(covered.farthest_at[0].base()),
        Value::Number(covered.farthest_at[1].base()),
        Value::Table(next_table(&covered)),
    ])
    .with_notes(covered.notes()))
}

fn next_table(covered: &Coverage) -> Columns {
    let numbers =
        |of: &dyn Fn(&coverage::NextShot) -> f64| Column::Numbers(covered.next.iter().map(of).collect());
    Columns {
        rows: covered.next.len(),
        columns: vec![
            numbers(&|next| next.at[0].base()),
            numbers(&|next| next.at[1].base()),
            numbers(&|next| next.nearest.base()),
            numbers(&|next| next.uncovered_after.base()),
            numbers(&|next| next.farthest_after.base()),
        ],
    }
}
