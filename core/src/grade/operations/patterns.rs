//! The rows of the finishes by pattern: a valley, a crown, a strip along an edge.

use super::finish::{POINTS, RESULT, example, made, points};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::fall::FALL;
use crate::grade::finish::patterns::{BreakLine, Strip, Toward, WIDTH};
use crate::grade::finish::{FINISH, Finish};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, Port};
use crate::quantity::Slope;
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

const SQUARE: &str = "both planes hold the line; square to it they rise or fall by their own falls";

const RIGHT_FALL: Port = number!(right_fall: slope in inch_per_foot | percent, FALL, "fall on the right, where it is another"; optional);

/// Two planes to a valley.
pub static FINISH_TO_VALLEY: Operation = Operation {
    name: "finish_to_valley",
    module: "grade",
    since: "0.1.0",
    meaning: "Two planes that fall to a valley across the work; the valley may fall along its length.",
    equation: SQUARE,
    assumes: "left and right are seen from the first point of the valley looking to the second",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with its outline"),
        port!(valley: Kind::Table(&POINTS), "two points of the valley"),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall to the valley, square to it"),
        RIGHT_FALL,
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""valley": {"x": ["10 ft", "10 ft"], "y": ["0 ft", "32 ft"], "elevation": ["99.5 ft", "99.7 ft"]},
        "fall": "1/8 in/ft""#
    ),
    refusals: &[
        (
            r#"{"valley": {"x": ["0 ft", "0 ft"], "y": ["0 ft", "32 ft"], "elevation": ["99.5 ft", "99.7 ft"]}}"#,
            Code::OffWork,
        ),
        (r#"{"valley": {"x": ["1 ft"], "y": ["0 ft"], "elevation": ["99.5 ft"]}}"#, Code::FinishUndetermined),
        (r#"{"fall": "-1 %"}"#, Code::OutOfRange),
    ],
    call: Call::Record(|args| two_planes(args, Finish::to_valley, "valley")),
};

/// Two planes from a ridge.
pub static FINISH_CROWN: Operation = Operation {
    name: "finish_crown",
    module: "grade",
    since: "0.1.0",
    meaning: "A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.",
    equation: SQUARE,
    assumes: "left and right are seen from the first point of the ridge looking to the second",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with its outline"),
        port!(ridge: Kind::Table(&POINTS), "two points of the ridge"),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall away from the ridge, square to it"),
        RIGHT_FALL,
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""ridge": {"x": ["10 ft", "10 ft"], "y": ["0 ft", "32 ft"], "elevation": ["99.8 ft", "99.8 ft"]},
        "fall": "1/8 in/ft", "right_fall": "1/4 in/ft""#
    ),
    refusals: &[
        (
            r#"{"ridge": {"x": ["30 ft", "30 ft"], "y": ["0 ft", "32 ft"], "elevation": ["99.8 ft", "99.8 ft"]}}"#,
            Code::OffWork,
        ),
        (r#"{"right_fall": "200 %"}"#, Code::OutOfRange),
        (r#"{"fall": "1 in"}"#, Code::UnitWrong),
    ],
    call: Call::Record(|args| two_planes(args, Finish::crown, "ridge")),
};

type TwoPlanes = fn(&crate::survey::outline::Outline, &BreakLine, [Slope; 2]) -> Result<Finish>;

fn two_planes(args: &Args<'_>, make: TwoPlanes, path: &str) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let line = BreakLine::of(&points(args.required_table(1)?), path)?;
    let fall: Slope = args.required(2)?;
    let falls = [fall, args.quantity(3)?.unwrap_or(fall)];
    make(survey.outline(), &line, falls).map(|finish| made(finish, None))
}

/// A finish with a strip along an edge.
pub static FINISH_WITH_STRIP: Operation = Operation {
    name: "finish_with_strip",
    module: "grade",
    since: "0.1.0",
    meaning: "A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.",
    equation: "the strip holds the finish's height along its inner line; square to the edge it has its own fall",
    assumes: "the strip takes everything within its width of the line of the edge",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with the edge"),
        port!(finish: Kind::Record(&FINISH), "the finish without the strip"),
        port!(edge: Kind::Text, "name of the edge"),
        number!(width: length in foot | meter, WIDTH, "width of the strip"; zero rare),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall of the strip, square to the edge"),
        port!(toward: Kind::Choice(Toward::WORDS), "what the strip falls to: the edge as an apron, the floor as a curb"),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"level": "99.7 ft"}, "edge": "front", "width": "2 ft", "fall": "1/2 in/ft", "toward": "edge""#
    ),
    refusals: &[
        (r#"{"edge": "frnt"}"#, Code::EdgeUnknown),
        (r#"{"width": "40 ft"}"#, Code::OutOfRange),
        (r#"{"toward": "sky"}"#, Code::WordUnknown),
    ],
    call: Call::Record(with_strip),
};

fn with_strip(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish: &Finish = args.required_record(1)?;
    let strip = Strip {
        edge: args.required_text(2)?.to_owned(),
        width: args.required(3)?,
        fall: args.required(4)?,
        toward: args.choice(5)?.unwrap_or(Toward::Edge),
    };
    finish.with_strip(survey.outline(), &strip).map(|finish| made(finish, None))
}
