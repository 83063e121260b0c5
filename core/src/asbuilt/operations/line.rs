//! The row of the flatness of one line.

use super::{FACTOR, f_number};
use crate::asbuilt::flatness::{LineFlatness, Profile, READING, Spacing, Spread};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Column, Columns, Kind, Operation, Port, TableType, Value};
use crate::quantity::Range;
use crate::{number, port};

pub(super) const SPACING: Port = number!(spacing: length in inch | millimeter, Range::closed(0.01, 10.0), "how far apart the readings stand: 12 in or 300 mm";
    or "12 in" because "the standard in inches reads every foot");

static READINGS: TableType = TableType {
    name: "readings",
    meaning: "a reading, in order along the line",
    columns: &[number!(elevation: elevation in inch | millimeter, READING, "height of the floor")],
    least_rows: 1,
};

static BENDS: TableType = TableType {
    name: "q",
    meaning: "a bend, in order: reading less twice the one before plus the one before that",
    columns: &[number!(q: length in inch | millimeter, Range::ANY, "the bend")],
    least_rows: 0,
};

static RISES: TableType = TableType {
    name: "z",
    meaning: "a rise over ten spacings, in order",
    columns: &[number!(z: length in inch | millimeter, Range::ANY, "the rise")],
    least_rows: 0,
};

/// The flatness and levelness of one line.
pub static FLATNESS_LINE: Operation = Operation {
    name: "flatness_line",
    module: "asbuilt",
    since: "0.1.0",
    meaning: "Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.",
    equation: "q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz + |mean z|); S over n - 1",
    assumes: "the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls",
    ports: &[port!(readings: Kind::Table(&READINGS), "the readings"), SPACING, FACTOR],
    results: &[
        number!(ff: ratio in one | one, Range::POSITIVE, "flatness; none for a perfect line"; optional),
        number!(fl: ratio in one | one, Range::POSITIVE, "levelness; none for fewer than 12 readings and for a level line"; optional),
        number!(length: length in foot | meter, Range::POSITIVE, "length of the line"),
        port!(q_count: Kind::Count(0, i64::MAX), "how many bends"),
        number!(q_mean: length in inch | millimeter, Range::ANY, "their mean"),
        number!(q_deviation: length in inch | millimeter, Range::NOT_NEGATIVE, "their standard deviation"; optional),
        port!(z_count: Kind::Count(0, i64::MAX), "how many rises over ten spacings"),
        number!(z_mean: length in inch | millimeter, Range::ANY, "their mean"; optional),
        number!(z_deviation: length in inch | millimeter, Range::NOT_NEGATIVE, "their standard deviation; none of fewer than two"; optional),
        port!(q: Kind::Table(&BENDS), "the bends"),
        port!(z: Kind::Table(&RISES), "the rises over ten spacings"),
    ],
    basis: &[BasisId::FlatnessNumbers, BasisId::FlatnessConstants, BasisId::FlatnessLayout],
    example: r#"{"readings": {"elevation": ["100.02 in", "100.10 in", "100.13 in", "100.11 in", "100.05 in", "100.09 in", "100.08 in",
        "100.12 in", "100.13 in", "100.11 in", "100.10 in", "100.13 in", "100.05 in", "100.06 in"]}}"#,
    refusals: &[
        (r#"{"readings": {"elevation": ["1 in", "2 in", "1 in"]}}"#, Code::ProfileShort),
        (r#"{"readings": []}"#, Code::EmptyList),
        (r#"{"spacing": "1 m"}"#, Code::ProfileSpacing),
        (r#"{"spacing": "-12 in"}"#, Code::OutOfRange),
        (r#"{"factor": "4.57"}"#, Code::WordUnknown),
    ],
    call: Call::Record(line),
};

fn line(args: &Args<'_>) -> Result<Answer> {
    let spacing = Spacing::of(args.required(1)?)?;
    let heights = args.required_table(0)?.numbers(0);
    let profile = Profile::new(spacing, heights).map_err(|failure| failure.under("readings"))?;
    let found =
        LineFlatness::of(&profile, args.choice(2)?.unwrap_or(crate::asbuilt::flatness::Factor::Inches));
    let deviation = |spread: &Spread| spread.deviation.map_or(Value::Absent, Value::Number);
    let column = |numbers: Vec<f64>| {
        Value::Table(Columns { rows: numbers.len(), columns: vec![Column::Numbers(numbers)] })
    };
    let answer = Answer::of([
        f_number(found.ff),
        f_number(found.fl),
        Value::Number(crate::quantity::Typed::base(found.length)),
        Value::Count(found.q.count as i64),
        Value::Number(found.q.mean),
        deviation(&found.q),
        Value::Count(found.z.count as i64),
        if found.z.count > 0 { Value::Number(found.z.mean) } else { Value::Absent },
        deviation(&found.z),
        column(profile.q().collect()),
        column(profile.z().collect()),
    ]);
    Ok(answer.with_notes(found.notes()))
}
