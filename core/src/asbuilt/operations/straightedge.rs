//! The row of the straightedge.

use crate::asbuilt::flatness::{EDGE_LENGTH, EdgeClass, READING, Straightedge, Verdict, about_ff};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::grade::operations::columns::{numbers, table};
use crate::note::NoteCode;
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Typed, inches};
use crate::{number, port};

static PROFILE: TableType = TableType {
    name: "profile",
    meaning: "a reading, in order along the line, at any spacing",
    columns: &[
        number!(distance: length in foot | meter, Range::closed(-1.0e4, 1.0e4), "from the start of the line"),
        number!(elevation: elevation in inch | millimeter, READING, "height of the floor"),
    ],
    least_rows: 1,
};

static PLACEMENTS: TableType = TableType {
    name: "placements",
    meaning: "the straightedge laid down from a reading on",
    columns: &[
        number!(start: length in foot | meter, Range::ANY, "where its end is"),
        number!(gap: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest gap under it"),
        number!(at: length in foot | meter, Range::ANY, "place of that gap"),
    ],
    least_rows: 0,
};

/// The gaps under a straightedge.
pub static STRAIGHTEDGE: Operation = Operation {
    name: "straightedge",
    module: "asbuilt",
    since: "0.1.0",
    meaning: "The gap under a straightedge laid along a line of readings, from each reading on.",
    equation: "gap = upper hull of the readings under the straightedge less the floor, where it is greatest",
    assumes: "it rests on two readings; on a hump it may tip either way, and the end that stands up is no gap",
    ports: &[
        port!(profile: Kind::Table(&PROFILE), "the readings, three or more"),
        number!(length: length in foot | meter, EDGE_LENGTH, "length of the straightedge"; or "10 ft" because "the limits are told for 10 ft"),
        port!(flatness_class: Kind::Choice(EdgeClass::WORDS), "class to hold the gaps against; under 10 ft only"; optional),
    ],
    results: &[
        number!(gap: length in inch | millimeter, Range::NOT_NEGATIVE, "the greatest gap"),
        number!(gap_at: length in foot | meter, Range::ANY, "where it is"),
        number!(rest_1: length in foot | meter, Range::ANY, "first place the straightedge rests there"),
        number!(rest_2: length in foot | meter, Range::ANY, "second place it rests there"),
        port!(count: Kind::Count(1, i64::MAX), "how often it was laid down"),
        number!(about_ff: ratio in one | one, Range::POSITIVE, "flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in"; optional),
        number!(within_most: share in percent | percent, Range::NOT_NEGATIVE, "share of gaps within what nine in ten must keep"; optional),
        number!(within_all: share in percent | percent, Range::NOT_NEGATIVE, "share of gaps within what all must keep"; optional),
        port!(verdict: Kind::Choice(Verdict::WORDS), "whether the class is kept"; optional),
        port!(placements: Kind::Table(&PLACEMENTS), "the straightedge laid down from each reading on"),
    ],
    basis: &[BasisId::Geometry, BasisId::StraightedgeClasses, BasisId::StraightedgeNumbers],
    example: r#"{"profile": {"distance": ["1 ft", "2 ft", "3 ft", "4 ft", "5 ft", "6 ft", "7 ft", "8 ft", "9 ft", "10 ft", "11 ft", "12 ft"],
        "elevation": ["100.02 in", "100.10 in", "100.13 in", "100.11 in", "100.05 in", "100.09 in", "100.08 in", "99.92 in",
            "99.98 in", "100.11 in", "100.10 in", "100.13 in"]}, "flatness_class": "flat"}"#,
    refusals: &[
        (r#"{"profile": {"distance": ["1 ft", "2 ft"], "elevation": ["1 in", "2 in"]}}"#, Code::ProfileShort),
        (
            r#"{"profile": {"distance": ["1 ft", "3 ft", "2 ft"], "elevation": ["1 in", "2 in", "1 in"]}}"#,
            Code::ProfileOrder,
        ),
        (r#"{"length": "-10 ft"}"#, Code::OutOfRange),
        (r#"{"length": "6 ft"}"#, Code::Contradiction),
        (r#"{"flatness_class": "flatt"}"#, Code::WordUnknown),
    ],
    call: Call::Record(straightedge),
};

/// The length that limits are told for.
const TEN_FEET: f64 = 3.048;

fn straightedge(args: &Args<'_>) -> Result<Answer> {
    let profile = args.required_table(0)?;
    let (length, class): (Length, Option<EdgeClass>) = (args.required(1)?, args.choice(2)?);
    let ten_feet = (length.base() - TEN_FEET).abs() < 1e-9;
    if class.is_some() && !ten_feet {
        return Err(Failure::new(Code::Contradiction, "length")
            .written(crate::quantity::feet_and_inches(length, 8))
            .allowed("10 ft with a class")
            .remedy("leave the class out, or lay 10 ft"));
    }
    let laid = Straightedge::along(profile.numbers(0), profile.numbers(1), length)?;
    let number = |length: Option<Length>| length.map_or(Value::Absent, |length| Value::Number(length.base()));
    let worst = laid.worst();
    let gap = worst.map(|worst| worst.gap);
    let about = gap.filter(|_| ten_feet).and_then(about_ff);
    let share = |which: usize| {
        class.map_or(Value::Absent, |class| Value::Number(laid.within(class.gaps()[which]).base()))
    };
    let rows = &laid.placements;
    let answer = Answer::of([
        number(gap),
        number(worst.map(|worst| worst.at)),
        number(worst.map(|worst| worst.rests[0])),
        number(worst.map(|worst| worst.rests[1])),
        Value::Count(rows.len() as i64),
        about.map_or(Value::Absent, |number| Value::Number(number.base())),
        share(0),
        share(1),
        class.map_or(Value::Absent, |class| Value::Choice(laid.verdict(class) as usize)),
        table(
            rows.len(),
            [
                numbers(rows, |row| row.start.base()),
                numbers(rows, |row| row.gap.base()),
                numbers(rows, |row| row.at.base()),
            ],
        ),
    ]);
    Ok(with_notes(answer, &laid, class))
}

fn with_notes(mut answer: Answer, laid: &Straightedge, class: Option<EdgeClass>) -> Answer {
    if laid.longer_than_profile {
        answer = answer.with_note(
            NoteCode::ReadingsTooFew,
            "the readings span less than the straightedge: it was laid once",
        );
    }
    if let Some(class) = class {
        let [most, all] = class.gaps();
        let text = format!(
            "the limits of {} ({} for nine in ten, {} for all) are remembered, not read: confirm locally",
            class.word(),
            inches(most, 8),
            inches(all, 8)
        );
        answer = answer.with_note(NoteCode::ConfirmLocally, text);
    }
    answer
}
