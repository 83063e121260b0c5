//! The row of the thickness.

use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::{At, DEPTH, Thickness};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::input::BuiltOutline;
use crate::survey::old_slab::SURVEY;
use crate::survey::operations::OUTLINE;
use crate::{number, port};

/// The thickness of the overlay.
pub static THICKNESS: Operation = Operation {
    name: "thickness",
    module: "grade",
    since: "0.1.0",
    meaning: "The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.",
    equation: "net = integral of (finish - old slab); fill = its positive part; high = its negative part; mean = net / area",
    assumes: "old slab plane over each triangle, finish plane over each facet",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        number!(thinner_than: length in inch | millimeter, DEPTH, "the area thinner than this is told"; optional),
        port!(zone: Kind::Record(&OUTLINE), "only within this outline"; optional),
    ],
    results: &[
        number!(area: area in square_foot | square_meter, Range::POSITIVE, "plan area"),
        number!(net: volume in cubic_yard | cubic_meter, Range::ANY, "fill less high spots"),
        number!(fill: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume where the finish is above the old slab"),
        number!(high: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "volume of old slab above the finish"),
        number!(mean: length in inch | millimeter, Range::ANY, "net volume over area"),
        number!(least: length in inch | millimeter, Range::ANY, "least thickness"),
        number!(least_x: length in foot | meter, Range::ANY, "where it is, from the left"),
        number!(least_y: length in foot | meter, Range::ANY, "where it is, from the front"),
        number!(least_measured: length in inch | millimeter, Range::ANY, "least thickness between the shots"; optional),
        number!(greatest: length in inch | millimeter, Range::ANY, "greatest thickness"),
        number!(greatest_x: length in foot | meter, Range::ANY, "where it is, from the left"),
        number!(greatest_y: length in foot | meter, Range::ANY, "where it is, from the front"),
        number!(thinner: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area thinner than the depth asked about"; optional),
        port!(least_facet: Kind::Text, "the facet where it is thinnest"; optional),
        port!(greatest_facet: Kind::Text, "the facet where it is thickest"; optional),
    ],
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.7 ft"}, "thinner_than": "5 in""#),
    refusals: &[
        (r#"{"finish": {"levl": "99.7 ft"}}"#, Code::KeyUnknown),
        (r#"{"finish": {"level": "99.7 ft", "points": []}}"#, Code::FinishTwice),
        (
            r#"{"finish": {"facets": [{"level": "99 ft", "outline": [{"x": "0 ft", "y": "0 ft"}, {"x": "9 ft", "y": "0 ft"}, {"x": "9 ft", "y": "9 ft"}]}]}}"#,
            Code::FacetsLeaveHole,
        ),
        (r#"{"thinner_than": "5"}"#, Code::UnitMissing),
        (r#"{"survey": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(thickness),
};

fn thickness(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish: &Finish = args.required_record(1)?;
    let depth = args.quantity(2)?;
    let thickness = match args.record::<BuiltOutline>(3)? {
        None => Thickness::of(survey, finish, depth)?,
        Some(zone) => Thickness::within(survey, zone.outline.region(), finish, depth)?,
    };
    let number = |number: f64| Value::Number(number);
    let facet = |at: &At| at.facet.map_or(Value::Absent, |facet| Value::Text(finish.facet_name(facet)));
    let (least, greatest) = (&thickness.least, &thickness.greatest);
    let answer = Answer::of([
        number(thickness.area.base()),
        number(thickness.net.base()),
        number(thickness.fill.base()),
        number(thickness.high.base()),
        number(thickness.mean.base()),
        number(least.thickness.base()),
        number(least.x.base()),
        number(least.y.base()),
        thickness.least_measured.as_ref().map_or(Value::Absent, |at| number(at.thickness.base())),
        number(greatest.thickness.base()),
        number(greatest.x.base()),
        number(greatest.y.base()),
        thickness.thinner.map_or(Value::Absent, |area| number(area.base())),
        facet(least),
        facet(greatest),
    ]);
    Ok(answer.with_notes(thickness.notes()))
}
