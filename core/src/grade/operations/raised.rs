//! The row of the finish lifted to a least thickness.

use super::finish::{example, made, say_place};
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish, LEAST, STEP, with_margin};
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::quantity::{Length, Range, Typed, inches};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// A finish lifted to a least thickness.
pub static FINISH_RAISED: Operation = Operation {
    name: "finish_raised",
    module: "grade",
    since: "0.1.0",
    meaning: "Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.",
    equation: "raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles and facets cut one another",
    assumes: "ground beyond the shots is extended, not measured: it does not bind",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the finish as drawn"),
        number!(least: length in inch | millimeter, LEAST, "least thickness"),
        number!(margin: length in inch | millimeter, LEAST, "margin on the least thickness"; optional),
        number!(round: length in inch | millimeter, STEP, "the lift is rounded up to whole steps of this, so that heights given in steps stay so"; optional),
    ],
    results: &[
        port!(finish: Kind::Record(&FINISH), "the finish"),
        number!(raised_by: length in inch | millimeter, Range::ANY, "how far it was lifted; below zero where it was lowered"),
        number!(at_x: length in foot | meter, Range::ANY, "the place that fixes it, from the left"),
        number!(at_y: length in foot | meter, Range::ANY, "the place that fixes it, from the front"),
        port!(at_shot: Kind::Text, "the shot there"; optional),
        port!(at_facet: Kind::Text, "the facet there"; optional),
        number!(rounded_by: length in inch | millimeter, Range::NOT_NEGATIVE, "how much of the lift is rounding"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"level": "99.3 ft"}, "least": "3 in", "margin": "3/8 in", "round": "1/8 in""#
    ),
    refusals: &[
        (r#"{"least": "-3 in"}"#, Code::OutOfRange),
        (r#"{"margin": "20 ft"}"#, Code::OutOfRange),
        (r#"{"finish": {"facets": []}}"#, Code::EmptyList),
    ],
    call: Call::Record(raised),
};

fn raised(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish: &Finish = args.required_record(1)?;
    let margin = args.quantity(3)?.unwrap_or(Length::from_base(0.0));
    let raised = finish.raised(survey, with_margin(args.required(2)?, margin)?, args.quantity(4)?)?;
    let note = (raised.rounded_by.base() > 0.0).then(|| {
        let (by, place) = (inches(raised.rounded_by, 32), say_place(&raised.at));
        Note::new(NoteCode::Rounded, format!("the height is fixed at {place} and rounded up by {by}"))
    });
    let text = |text: Option<String>| text.map_or(Value::Absent, Value::Text);
    let facet = raised.facet.map(|facet| finish.facet_name(facet));
    let mut answer = made(raised.finish, note);
    answer.results.extend([
        Value::Number(raised.by.base()),
        Value::Number(raised.at.x.base()),
        Value::Number(raised.at.y.base()),
        text(raised.at.shot),
        text(facet),
        Value::Number(raised.rounded_by.base()),
    ]);
    Ok(answer)
}
