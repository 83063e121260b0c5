//! The rows of the finish.

use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result};
use crate::grade::fall::FALL;
use crate::grade::finish::{AtLeast, FINISH, Finish, FinishPoint, HEIGHT, LEAST, STEP, with_margin};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Columns, Kind, Operation, Port, TableType, Value};
use crate::quantity::{Elevation, Length, Range, Slope, Typed, feet_and_inches, inches};
use crate::survey::Survey;
use crate::survey::old_slab::{SURVEY, SlabPlace};
use crate::{assumption, number, port};

pub(super) const RESULT: &[Port] = &[port!(finish: Kind::Record(&FINISH), "the finish")];

/// The survey that a row's example works on.
macro_rules! example {
    ($rest:literal) => {
        concat!(
            r#"{"survey": {"outline": {"sides": [{"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"},
                {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}]},
                "grid": {"columns": ["1 ft", "10 ft", "19 ft"], "rows": ["1 ft", "16 ft", "31 ft"],
                    "elevations": ["99.20 ft", "99.22 ft", "99.18 ft", "99.25 ft", "99.26 ft", "99.24 ft", "99.35 ft", "99.33 ft",
                    "99.36 ft"]}}, "#,
            $rest,
            "}"
        )
    };
}
pub(super) use example;

/// A level finish.
pub static FINISH_LEVEL: Operation = Operation {
    name: "finish_level",
    module: "grade",
    since: "0.1.0",
    meaning: "A level finish.",
    equation: "z = elevation",
    assumes: "water may stand",
    ports: &[number!(elevation: elevation in foot | meter, HEIGHT, "its elevation")],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: r#"{"elevation": "99.55 ft"}"#,
    refusals: &[
        (r#"{"elevation": "99.55"}"#, Code::UnitMissing),
        (r#"{"elevation": "1e9 ft"}"#, Code::OutOfRange),
    ],
    call: Call::Record(|args| Ok(made(Finish::level(args.required(0)?)?, None))),
};

pub(super) fn made(finish: Finish, note: Option<Note>) -> Answer {
    Answer::of([Value::record(finish)]).with_notes(note)
}

pub(super) static POINTS: TableType = TableType {
    name: "points",
    meaning: "a point of the finish",
    columns: &[
        number!(x: length in foot | meter, Range::ANY, "distance from the left"),
        number!(y: length in foot | meter, Range::ANY, "distance from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height there"),
    ],
    least_rows: 1,
};

/// A finish through three points.
pub static FINISH_FROM_POINTS: Operation = Operation {
    name: "finish_from_points",
    module: "grade",
    since: "0.1.0",
    meaning: "The plane finish through three points.",
    equation: "z = a + b x + c y through the three",
    assumes: "one plane",
    ports: &[port!(points: Kind::Table(&POINTS), "three points that are not on one line")],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: r#"{"points": {"x": ["0 ft", "20 ft", "0 ft"], "y": ["0 ft", "0 ft", "24 ft"],
        "elevation": ["100.0 ft", "99.8 ft", "99.88 ft"]}}"#,
    refusals: &[
        (
            r#"{"points": {"x": ["0 ft", "1 ft", "2 ft"], "y": ["0 ft", "1 ft", "2 ft"], "elevation": ["1 ft", "1 ft", "1 ft"]}}"#,
            Code::FinishUndetermined,
        ),
        (r#"{"points": {"x": ["0 ft"], "y": ["0 ft"], "elevation": ["1 ft"]}}"#, Code::FinishUndetermined),
        (r#"{"points": []}"#, Code::EmptyList),
    ],
    call: Call::Record(from_points),
};

fn from_points(args: &Args<'_>) -> Result<Answer> {
    Finish::through(&points(args.required_table(0)?)).map(|finish| made(finish, None))
}

/// The points of a table.
pub(super) fn points(table: &Columns) -> Vec<FinishPoint> {
    let number = |column: usize, row: usize| table.number(column, row).unwrap_or(f64::NAN);
    let point = |row: usize| FinishPoint {
        x: Length::from_base(number(0, row)),
        y: Length::from_base(number(1, row)),
        elevation: Elevation::from_base(number(2, row)),
    };
    (0..table.rows).map(point).collect()
}

/// A finish from an edge.
pub static FINISH_TO_EDGE: Operation = Operation {
    name: "finish_to_edge",
    module: "grade",
    since: "0.1.0",
    meaning: "The plane finish that stands level along an edge and falls square to it.",
    equation: "z = elevation + fall x distance from the edge",
    assumes: "the edge is straight; water leaves over it",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with the edge"),
        port!(edge: Kind::Text, "name of the edge"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the finish at the edge"),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall towards the edge"),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(r#""edge": "front", "elevation": "99.5 ft", "fall": "1/8 in/ft""#),
    refusals: &[
        (r#"{"edge": "frnt"}"#, Code::EdgeUnknown),
        (r#"{"fall": "-1 %"}"#, Code::OutOfRange),
        (r#"{"fall": "1 in"}"#, Code::UnitWrong),
    ],
    call: Call::Record(to_edge),
};

fn to_edge(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish =
        Finish::to_edge(survey.outline(), args.required_text(1)?, args.required(2)?, args.required(3)?)?;
    Ok(made(finish, None))
}

/// A finish by its least thickness.
pub static FINISH_AT_LEAST: Operation = Operation {
    name: "finish_at_least",
    module: "grade",
    since: "0.1.0",
    meaning: "The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.",
    equation: "elevation at the edge = greatest of (old slab + least + margin - fall x distance from the edge)",
    assumes: "ground beyond the shots is extended, not measured: it does not bind",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        number!(least: length in inch | millimeter, LEAST, "least thickness"),
        port!(edge: Kind::Text, "the edge it falls to; none for a level finish"; optional),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall towards the edge";
            or assumption::FALL),
        number!(round: length in inch | millimeter, STEP, "heights are rounded up to whole steps of this"; optional),
        number!(datum: elevation in foot | meter, HEIGHT, "the height the steps are counted from, usually the benchmark";
            or "0 ft" because "the job datum"),
        number!(margin: length in inch | millimeter, LEAST, "margin on the least thickness"; optional),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry, BasisId::FallFinishedFloor],
    example: example!(r#""least": "3 in", "margin": "3/8 in", "edge": "front", "fall": "1/8 in/ft""#),
    refusals: &[
        (r#"{"least": "-3 in"}"#, Code::OutOfRange),
        (r#"{"edge": "door"}"#, Code::EdgeUnknown),
        (r#"{"least": "3 psi"}"#, Code::UnitWrong),
        (r#"{"edge": null}"#, Code::FinishUndetermined),
    ],
    call: Call::Record(at_least),
};

fn at_least(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let (fall, datum): (Slope, Elevation) = (args.required(3)?, args.required(5)?);
    if args.text(2)?.is_none() && !args.is_taken(3) {
        return Err(Failure::new(Code::FinishUndetermined, "edge")
            .written("a fall to no edge")
            .allowed("the edge it falls to")
            .remedy("name the edge, or leave the fall out for a level finish"));
    }
    let round = args.quantity::<Length>(4)?.map(|step| (step, datum));
    let margin = args.quantity(6)?.unwrap_or(Length::from_base(0.0));
    let asked = AtLeast {
        least: with_margin(args.required(1)?, margin)?,
        edge: args.text(2)?.map(str::to_owned),
        fall,
        round,
    };
    let governing = Finish::at_least(survey, &asked)?;
    let note = (governing.rounded_by.base() > 0.0).then(|| {
        let by = inches(governing.rounded_by, 32);
        let place = say_place(&governing.at);
        Note::new(NoteCode::Rounded, format!("the height is fixed at {place} and rounded up by {by}"))
    });
    Ok(made(governing.finish, note))
}

/// A place in a note: its shot, or where it is.
pub(super) fn say_place(at: &SlabPlace) -> String {
    at.shot.clone().unwrap_or_else(|| {
        format!("{} from the left, {} from the front", feet_and_inches(at.x, 8), feet_and_inches(at.y, 8))
    })
}
