//! The row of the benchmark read on the morning of the pour.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, together};
use crate::grade::operations::columns::{numbers, table};
use crate::marks::{Doubted, Morning, SecondBenchmark, TOLERANCE, Verdict};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, TableType, Value};
use crate::quantity::{Length, Range, Typed};
use crate::survey::level_book::ROD;
use crate::{assumption, number, port};

/// Planned rods.
static PLANNED: TableType = TableType {
    name: "marks",
    meaning: "a mark",
    columns: &[number!(rod: length in foot | meter, ROD, "its rod as planned")],
    least_rows: 0,
};

/// Rods today.
static TODAY: TableType = TableType {
    name: "today",
    meaning: "a mark today, in the order given",
    columns: &[number!(rod: length in foot | meter, Range::ANY, "its rod today")],
    least_rows: 0,
};

/// The benchmark read on the morning of the pour.
pub static MORNING_CHECK: Operation = Operation {
    name: "morning_check",
    module: "marks",
    since: "0.1.0",
    meaning: "The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.",
    equation: "difference = today - planned; rod today = rod planned + difference; two benchmarks must move alike",
    assumes: "within 1/8 in the same set-up agrees (common practice, no source); a new set-up may read anything, but alike on both benchmarks",
    ports: &[
        number!(planned: length in foot | meter, ROD, "rod on the benchmark when the marks were planned"; zero rare),
        number!(today: length in foot | meter, ROD, "rod on it today"; zero rare),
        port!(same_setup: Kind::Choice(<bool as Choice>::WORDS), "yes where the level still stands where it stood, no after it was set up anew"),
        port!(marks: Kind::Table(&PLANNED), "the rods of the marks"; optional),
        number!(second_planned: length in foot | meter, ROD, "rod on a second benchmark when the marks were planned"; zero rare, optional),
        number!(second_today: length in foot | meter, ROD, "rod on the second benchmark today"; zero rare, optional),
        number!(tolerance: length in inch | millimeter, TOLERANCE, "how far the benchmark may read off, and two benchmarks from one another";
            or assumption::BENCHMARK_OFF),
    ],
    results: &[
        number!(difference: length in inch | millimeter, Range::ANY, "today less planned: what every rod moves by"),
        number!(second_difference: length in inch | millimeter, Range::ANY, "the same of the second benchmark"; optional),
        port!(verdict: Kind::Choice(Verdict::WORDS), "what follows"),
        port!(doubted: Kind::Choice(Doubted::WORDS), "which benchmark is in doubt"),
        port!(today: Kind::Table(&TODAY), "the rods of the marks today; none where nobody should pour"),
        port!(said: Kind::Text, "a sentence for the crew"),
    ],
    basis: &[BasisId::MorningCheck, BasisId::Levelling, BasisId::BookingSlips],
    example: r#"{"planned": "4' 2 1/2\"", "today": "4' 5 3/8\"", "same_setup": "no", "marks": {"rod": ["4' 9\"", "4' 8 1/2\""]},
        "second_planned": "3' 8\"", "second_today": "3' 10 3/4\""}"#,
    refusals: &[
        (r#"{"today": "-4 ft"}"#, Code::OutOfRange),
        (r#"{"same_setup": "maybe"}"#, Code::WordUnknown),
        (r#"{"second_today": null}"#, Code::KeyMissing),
        (r#"{"marks": {"rod": ["40 ft"]}}"#, Code::OutOfRange),
        (r#"{"tolerance": "2 ft"}"#, Code::OutOfRange),
    ],
    call: Call::Record(morning_check),
};

fn morning_check(args: &Args<'_>) -> Result<Answer> {
    let rods = args.table(3)?.map_or(&[][..], |table| table.numbers(0));
    let morning = Morning {
        planned: args.required(0)?,
        today: args.required(1)?,
        same_setup: args.choice(2)?.unwrap_or(false),
        rods: rods.iter().copied().map(Length::from_base).collect(),
        second: second(args.quantity(4)?, args.quantity(5)?)?,
        tolerance: args.required(6)?,
    };
    let checked = morning.check()?;
    let note =
        (checked.verdict == Verdict::Stop).then(|| Note::new(NoteCode::BenchmarkOff, checked.said.clone()));
    let answer = Answer::of([
        Value::Number(checked.difference.base()),
        checked.second_difference.map_or(Value::Absent, |off| Value::Number(off.base())),
        Value::Choice(checked.verdict as usize),
        Value::Choice(checked.doubted as usize),
        table(checked.rods.len(), [numbers(&checked.rods, |rod| rod.base())]),
        Value::Text(checked.said),
    ]);
    Ok(answer.with_notes(note))
}

fn second(planned: Option<Length>, today: Option<Length>) -> Result<Option<SecondBenchmark>> {
    match (planned, today) {
        (Some(planned), Some(today)) => Ok(Some(SecondBenchmark { planned, today })),
        (None, None) => Ok(None),
        _ => {
            let missing = if planned.is_some() { "second_today" } else { "second_planned" };
            let given = together(&[("second_planned", planned.is_some()), ("second_today", today.is_some())]);
            Err(Failure::new(Code::KeyMissing, missing)
                .written(given)
                .allowed("both rods on the second benchmark, or neither")
                .remedy("give the other one too"))
        }
    }
}
