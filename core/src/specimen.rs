//! Test-only operations with every kind of port, so that the tests can see each kind come out of every face.
//! They are built in only under the feature `specimen`.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, check};
use crate::note::NoteCode;
use crate::operation::record::{self, Record};
use crate::operation::scalar::{Count, Word};
use crate::operation::{
    Answer, Args, Call, Column, Columns, Kind, Operation, Port, RecordType, TableType, Value,
};
use crate::quantity::{Given, Length, Range, Share, Typed, Volume};
use crate::{choice, number, port, scalar};
use serde::{Deserialize, Serialize};

choice! {
    /// A colour of a specimen.
    pub enum Colour {
        /// Red.
        Red = "red",
        /// Dark blue.
        DarkBlue = "dark blue",
    }
}

/// A specimen record: a length and a label.
#[derive(Clone, Debug, PartialEq)]
pub struct Specimen {
    size: Length,
    label: String,
    weights: Columns,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct SpecimenJson {
    size: Given<Length>,
    label: String,
}

const SIZE: Range = Range::closed(0.0, 100.0);

const COLUMNS: &[Port] = &[
    number!(at: length in foot | meter, SIZE, "place"),
    port!(hits: Kind::Count(0, 100), "hits"; optional),
    port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "colour"; optional),
    port!(remark: Kind::Text, "remark"; optional),
    number!(depth: length in inch | millimeter, SIZE, "depth"; optional),
];

static ROWS: TableType =
    TableType { name: "rows", meaning: "a place with what was seen", columns: COLUMNS, least_rows: 1 };

static WEIGHTS: TableType = TableType {
    name: "weights",
    meaning: "a share",
    columns: &[number!(share: share in percent | percent, Range::NOT_NEGATIVE, "share")],
    least_rows: 0,
};

/// The record type of specimens.
pub static SPECIMEN: RecordType = RecordType {
    name: "specimen",
    class: "Specimen",
    meaning: "A test-only record.",
    fields: &[
        number!(size: length in inch | millimeter, SIZE, "its size"),
        port!(label: Kind::Text, "its label"),
        port!(letters: Kind::Count(0, 1000), "letters of the label"),
        port!(weights: Kind::Table(&WEIGHTS), "two shares"),
    ],
    get: record::get::<Specimen>,
    to_json: record::to_json::<Specimen>,
    from_json: record::from_json::<Specimen>,
    is: record::is::<Specimen>,
    example: r#"{"size": "3 1/2 in", "label": "oak"}"#,
};

fn specimen(size: Length, label: &str) -> Result<Specimen> {
    let size = check("size", size, SIZE)?;
    if label.is_empty() {
        return Err(Failure::new(Code::EmptyCell, "label").allowed("a label").remedy("write a label"));
    }
    let weights = Columns { rows: 2, columns: vec![Column::Numbers(vec![0.25, 0.75])] };
    Ok(Specimen { size, label: label.to_owned(), weights })
}

impl Record for Specimen {
    const TYPE: &'static RecordType = &SPECIMEN;

    fn fields(&self) -> Vec<Value> {
        vec![
            Value::Number(self.size.base()),
            Value::Text(self.label.clone()),
            Value::Count(self.label.len() as i64),
            Value::Table(self.weights.clone()),
        ]
    }

    fn to_json(&self) -> serde_json::Value {
        serde_json::json!({ "size": crate::quantity::si_text(self.size), "label": self.label })
    }

    fn from_json(json: serde_json::Value) -> Result<Self> {
        let given: SpecimenJson = crate::operation::record::parse(json)?;
        specimen(given.size.value, &given.label)
    }
}

/// Every kind that a scalar row may have.
#[derive(Clone, Copy, Debug)]
struct Mixed {
    total: Length,
    colour: Colour,
    count: i64,
}

fn mixed(step: Length, times: Count, colour: Word<Colour>) -> Result<Mixed> {
    let step = check("step", step, SIZE)?;
    Ok(Mixed { total: Length::from_base(step.base() * times.0 as f64), colour: colour.0, count: times.0 + 1 })
}

static MIXED: Operation = Operation {
    name: "specimen_scalar",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: a scalar row with a number, a count and a choice.",
    equation: "total = step x times",
    assumes: "nothing",
    ports: &[
        number!(step: length in inch | millimeter, SIZE, "one step"; zero rare),
        port!(times: Kind::Count(0, 1000), "how often"),
        port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "a colour"),
    ],
    results: &[
        number!(total: length in foot | meter, Range::NOT_NEGATIVE, "the sum of the steps"),
        port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "the same colour"),
        port!(count: Kind::Count(0, 1001), "times and one"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"step": "1 1/2 in", "times": 4, "colour": "dark blue"}"#,
    refusals: &[
        (r#"{"step": "-1 in"}"#, Code::OutOfRange),
        (r#"{"times": 1.5}"#, Code::NotACount),
        (r#"{"times": 1001}"#, Code::OutOfRange),
        (r#"{"colour": "drak blue"}"#, Code::WordUnknown),
    ],
    call: scalar!(
        mixed,
        (step: Length, times: Count, colour: Word<Colour>) => |mixed| (
            [mixed.total.base(), f64::from(mixed.colour as u8), mixed.count as f64],
            (mixed.count > 100).then_some(NoteCode::OutsideFormula)
        )
    ),
};

static MAKE: Operation = Operation {
    name: "specimen_from_table",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: a record made from a table, with optional ports.",
    equation: "size = greatest place",
    assumes: "nothing",
    ports: &[
        port!(rows: Kind::Table(&ROWS), "the rows"),
        port!(label: Kind::Text, "a label"; or "plain" because "most are"),
    ],
    results: &[port!(specimen: Kind::Record(&SPECIMEN), "the record")],
    basis: &[],
    example: r#"{"rows": [{"at": "1 ft"}, {"at": "2 ft", "hits": 3, "colour": "red", "remark": "old"}]}"#,
    refusals: &[
        (r#"{"rows": []}"#, Code::EmptyList),
        (r#"{"rows": [{"at": "-1 ft"}]}"#, Code::OutOfRange),
        (r#"{"rows": [{"place": "1 ft"}]}"#, Code::KeyUnknown),
        (r#"{"rows": [{"at": "1 ft"}, {"hits": 2}]}"#, Code::EmptyCell),
    ],
    call: Call::Record(make),
};

fn make(args: &Args<'_>) -> Result<Answer> {
    let rows = args.required_table(0)?;
    let size = rows.numbers(0).iter().copied().fold(0.0, f64::max);
    let made = specimen(Length::from_base(size), args.required_text(1)?)?;
    let odd = rows.rows % 2 == 1;
    let answer = Answer::of([Value::record(made)]);
    Ok(if odd { answer.with_note(NoteCode::Assumed, "an odd number of rows") } else { answer })
}

static EVERY: Operation = Operation {
    name: "specimen_every_kind",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: every kind of port, required and optional, in and out.",
    equation: "none",
    assumes: "nothing",
    ports: &[
        number!(volume: volume in cubic_yard | cubic_meter, Range::POSITIVE, "a volume"),
        port!(times: Kind::Count(0, 1000), "a count"),
        port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "a colour"),
        port!(label: Kind::Text, "a text"),
        port!(rows: Kind::Table(&ROWS), "a table"),
        port!(specimen: Kind::Record(&SPECIMEN), "a record"),
        number!(waste: share in percent | percent, Range::NOT_NEGATIVE, "an optional share"; or "5 %" because "usual"),
        port!(again: Kind::Count(0, 1000), "an optional count"; optional),
        port!(shade: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "an optional colour"; or "red" because "plain"),
        port!(remark: Kind::Text, "an optional text"; optional),
        port!(more: Kind::Table(&WEIGHTS), "an optional table"; optional),
        port!(other: Kind::Record(&SPECIMEN), "an optional record"; optional),
    ],
    results: &[
        number!(volume: volume in cubic_yard | cubic_meter, Range::POSITIVE, "the volume with its share"),
        port!(count: Kind::Count(0, 10_000), "the sum of the counts"),
        port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "the second colour"),
        port!(label: Kind::Text, "the texts joined"),
        port!(rows: Kind::Table(&ROWS), "the same table"),
        port!(specimen: Kind::Record(&SPECIMEN), "the last record given"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"volume": "2 yd3", "times": 2, "colour": "red", "label": "a",
        "rows": {"at": ["1 ft", "2 1/2 ft"], "hits": [null, 3], "depth": ["1/8 in", null]},
        "specimen": {"size": "2 in", "label": "elm"}}"#,
    refusals: &[
        (r#"{"volume": "0 yd3"}"#, Code::OutOfRange),
        (r#"{"label": 3}"#, Code::KindMismatch),
        (r#"{"specimen": {"size": "2 in", "labl": "elm"}}"#, Code::KeyUnknown),
        (r#"{"specimen": {"size": "2", "label": "elm"}}"#, Code::UnitMissing),
        (r#"{"waste": "-5 %"}"#, Code::Negative),
        (r#"{"shade": "green"}"#, Code::WordUnknown),
    ],
    call: Call::Record(every_kind),
};

fn every_kind(args: &Args<'_>) -> Result<Answer> {
    let volume: Volume = args.required(0)?;
    let waste: Share = args.required(6)?;
    let count = args.count(1)?.unwrap_or(0) + args.count(7)?.unwrap_or(0);
    let shade = args.choice::<Colour>(8)?.map_or(0, |shade| shade as usize);
    let label = format!("{}{}", args.required_text(3)?, args.text(9)?.unwrap_or(""));
    let one: &Specimen = args.required_record(5)?;
    let last = args.record::<Specimen>(11)?.unwrap_or(one);
    let shares: f64 = args.table(10)?.map_or(0.0, |more| more.numbers(0).iter().sum());
    let mut answer = Answer::of([
        Value::Number(volume.base() * (1.0 + waste.base() + shares)),
        Value::Count(count),
        Value::Choice(shade),
        Value::Text(label),
        Value::Table(args.required_table(4)?.clone()),
        Value::record(last.clone()),
    ]);
    answer.basis.push((0, BasisId::Geometry));
    Ok(answer.with_note(NoteCode::Assumed, "a note of the specimen"))
}

static NUMBERS: Operation = Operation {
    name: "specimen_numbers",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: numbers, counts and words out of a record and an option.",
    equation: "half = size / 2",
    assumes: "nothing",
    ports: &[
        port!(specimen: Kind::Record(&SPECIMEN), "a record"),
        number!(gap: length in inch | millimeter, SIZE, "an optional length"; optional),
    ],
    results: &[
        number!(half: length in inch | millimeter, SIZE, "half of its size"),
        port!(letters: Kind::Count(0, 1000), "letters of its label"),
        port!(colour: Kind::Choice(<Colour as crate::operation::Choice>::WORDS), "dark blue with a gap, red without"),
        number!(gap: length in foot | meter, SIZE, "the gap, where it was given"; optional),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"specimen": {"size": "3 in", "label": "ash"}, "gap": "1/2 in"}"#,
    refusals: &[
        (r#"{"gap": "-1 in"}"#, Code::OutOfRange),
        (r#"{"specimen": {"size": "3 in", "label": ""}}"#, Code::EmptyCell),
    ],
    call: Call::Record(numbers),
};

fn numbers(args: &Args<'_>) -> Result<Answer> {
    let specimen: &Specimen = args.required_record(0)?;
    let gap = args.quantity::<Length>(1)?;
    let colour = if gap.is_some() { Colour::DarkBlue } else { Colour::Red };
    let answer = Answer::of([
        Value::Number(specimen.size.base() / 2.0),
        Value::Count(specimen.label.len() as i64),
        Value::Choice(colour as usize),
        gap.map_or(Value::Absent, |gap| Value::Number(gap.base())),
    ]);
    let assumed = || crate::note::Note::new(NoteCode::Assumed, "no gap");
    let rounded = crate::note::Note::new(NoteCode::Rounded, "nothing was rounded");
    Ok(match gap {
        Some(_) => answer,
        None => answer.with_notes([assumed(), rounded, assumed()]),
    })
}

static READINGS: TableType = TableType {
    name: "readings",
    meaning: "a reading, or a place that was passed over",
    columns: &[
        port!(remark: Kind::Text, "remark"; optional),
        number!(reading: length in inch | millimeter, SIZE, "reading"; optional),
    ],
    least_rows: 0,
};

static SUM: Operation = Operation {
    name: "specimen_sum",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: the sum of readings, in a table of which no column is required.",
    equation: "sum = sum(reading)",
    assumes: "nothing",
    ports: &[port!(readings: Kind::Table(&READINGS), "the readings")],
    results: &[
        number!(sum: length in inch | millimeter, Range::NOT_NEGATIVE, "their sum"),
        port!(given: Kind::Count(0, 1_000_000), "how many were given"; optional),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"readings": {"reading": ["1 in", null, "2 in"]}}"#,
    refusals: &[(r#"{"readings": {"reading": ["1 in", "-1 in"]}}"#, Code::OutOfRange)],
    call: Call::Record(sum),
};

fn sum(args: &Args<'_>) -> Result<Answer> {
    let table = args.required_table(0)?;
    let given: Vec<f64> = (0..table.rows).filter_map(|row| table.number(1, row)).collect();
    Ok(Answer::of([Value::Number(given.iter().sum()), Value::Count(given.len() as i64)]))
}

static BYTES: Operation = Operation {
    name: "specimen_bytes",
    module: "specimen",
    since: "0.1.0",
    meaning: "Test only: the bytes of a required and of an optional file.",
    equation: "sum = sum(byte x its place)",
    assumes: "nothing",
    ports: &[
        port!(file: Kind::Bytes, "the bytes of a file"),
        port!(attached: Kind::Bytes, "the bytes of another file"; optional),
    ],
    results: &[
        port!(sum: Kind::Count(0, i64::MAX), "the sum of the bytes of both, each times its place in its file"),
        port!(size: Kind::Count(0, i64::MAX), "how many bytes the first has"),
        port!(attached_size: Kind::Count(0, i64::MAX), "how many bytes the other has"; optional),
    ],
    basis: &[],
    example: r#"{"file": "x,y\n1,2\n"}"#,
    refusals: &[
        (r#"{"file": 3}"#, Code::KindMismatch),
        (r#"{"file": "base64:AB*D"}"#, Code::NotBase64),
        (r#"{"attached": "base64:A"}"#, Code::NotBase64),
    ],
    call: Call::Record(bytes),
};

fn bytes(args: &Args<'_>) -> Result<Answer> {
    let (file, attached) = (args.required_bytes(0)?, args.bytes(1)?);
    Ok(Answer::of([
        Value::Count(sum_of(file) + attached.map_or(0, sum_of)),
        Value::Count(file.len() as i64),
        attached.map_or(Value::Absent, |attached| Value::Count(attached.len() as i64)),
    ]))
}

/// Tells files of the same bytes in another order apart.
fn sum_of(file: &[u8]) -> i64 {
    file.iter().zip(1..).map(|(&byte, place): (_, i64)| i64::from(byte) * place).sum()
}

/// The test-only rows.
pub static OPERATIONS: &[&Operation] = &[&MIXED, &MAKE, &EVERY, &NUMBERS, &SUM, &BYTES];
