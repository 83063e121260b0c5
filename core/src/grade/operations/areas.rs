//! The row of the areas thinner or thicker than a depth.

use super::columns::{RingCorner, counts, numbers, ring_corners, table};
use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::thickness::DEPTH;
use crate::grade::thickness_shapes::{AreaPart, Field, Side};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Connected parts.
static PARTS: TableType = TableType {
    name: "parts",
    meaning: "a connected part, the largest first",
    columns: &[
        port!(part: Kind::Count(1, i64::MAX), "its number"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "its area"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "missing to the depth, or over it"),
        number!(extreme: length in inch | millimeter, Range::ANY, "its least thickness, or its greatest where thicker"),
        number!(extreme_x: length in foot | meter, Range::ANY, "where that is, from the left"),
        number!(extreme_y: length in foot | meter, Range::ANY, "where that is, from the front"),
    ],
    least_rows: 0,
};

/// Corners of the rings of parts.
static CORNERS: TableType = TableType {
    name: "corners",
    meaning: "a corner of a ring, in order; the last leads back to the first",
    columns: &[
        port!(part: Kind::Count(1, i64::MAX), "the number of the part"),
        port!(ring: Kind::Count(1, i64::MAX), "1 is the outer ring, counter-clockwise; others are holes, clockwise"),
        number!(x: length in foot | meter, Range::ANY, "from the left"),
        number!(y: length in foot | meter, Range::ANY, "from the front"),
    ],
    least_rows: 0,
};

/// Where the overlay is thinner or thicker than a depth.
pub static THICKNESS_AREAS: Operation = Operation {
    name: "thickness_areas",
    module: "grade",
    since: "0.1.0",
    meaning: "Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.",
    equation: "thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old slab - depth|",
    assumes: "old slab plane over each triangle, finish plane over each facet; what is exactly at the depth counts as thicker",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        number!(depth: length in inch | millimeter, DEPTH, "the depth"),
        port!(side: Kind::Choice(Side::WORDS), "which side of the depth";
            or "thinner" because "thin places are what is looked for"),
    ],
    results: &[
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of all parts"),
        number!(volume: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "missing to the depth, or over it, in all parts"),
        port!(parts: Kind::Table(&PARTS), "the connected parts"),
        port!(corners: Kind::Table(&CORNERS), "the corners of their polygons"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(r#""finish": {"level": "99.7 ft"}, "depth": "5 in""#),
    refusals: &[
        (r#"{"depth": "5"}"#, Code::UnitMissing),
        (r#"{"depth": "500 ft"}"#, Code::OutOfRange),
        (r#"{"side": "thiner"}"#, Code::WordUnknown),
    ],
    call: Call::Record(areas),
};

fn areas(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let side = args.choice(3)?.unwrap_or(Side::Thinner);
    let found = Field::thickness(survey, finish)?.areas(args.required(2)?, side)?;
    let parts: Vec<(usize, &AreaPart)> = (1..).zip(&found.parts).collect();
    let corners = ring_corners(1, found.parts.iter().map(|part| &part.shape));
    Ok(Answer::of([
        Value::Number(found.area.base()),
        Value::Number(found.volume.base()),
        table(
            parts.len(),
            [
                counts(&parts, |part| part.0),
                numbers(&parts, |(_, part)| part.area.base()),
                numbers(&parts, |(_, part)| part.volume.base()),
                numbers(&parts, |(_, part)| part.extreme.thickness.base()),
                numbers(&parts, |(_, part)| part.extreme.x.base()),
                numbers(&parts, |(_, part)| part.extreme.y.base()),
            ],
        ),
        table(
            corners.len(),
            [
                counts(&corners, |corner: &RingCorner| corner.part),
                counts(&corners, |corner| corner.ring),
                numbers(&corners, |corner| corner.at.x.base()),
                numbers(&corners, |corner| corner.at.y.base()),
            ],
        ),
    ]))
}
