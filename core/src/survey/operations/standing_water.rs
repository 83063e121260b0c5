//! The row of the water that stands on the old slab.

use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{DRAINS, EDGES, GivenEdges, PONDS, Ponds, SHALLOWEST, ponds_table};
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Where water stands on the old slab.
pub static STANDING_WATER: Operation = Operation {
    name: "standing_water",
    module: "survey",
    since: "0.1.0",
    meaning: "The ponds of the old slab: where water stands once all that can has run off, how deep and how much.",
    equation: "level at a place = least over all ways to an outlet of the highest place on the way; depth = level - old slab",
    assumes: "outer edges are open and holes are walled where nothing is stated; nothing soaks in or dries",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(edges: Kind::Table(&EDGES), "edges that are walled, open or drained"; optional),
        port!(drains: Kind::Table(&DRAINS), "drains in the floor"; optional),
        number!(shallowest: length in inch | millimeter, SHALLOWEST, "ponds shallower than this are left out";
            or "1/16 in" because "a rod hardly tells less"),
    ],
    results: &[
        port!(count: Kind::Count(0, i64::MAX), "how many ponds"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area under water"),
        number!(volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "water in all ponds"),
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest depth; none without a pond"; optional),
        port!(left_out: Kind::Count(0, i64::MAX), "how many ponds were shallower"),
        number!(left_out_volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "water in those"),
        port!(ponds: Kind::Table(&PONDS), "the ponds"),
    ],
    basis: &[BasisId::Geometry],
    example: r#"{"survey": {"outline": {"sides": [{"name": "front", "length": "12 ft"}, {"name": "right", "length": "10 ft"},
            {"name": "back", "length": "12 ft"}, {"name": "left", "length": "10 ft"}]},
        "grid": {"columns": ["0 ft", "6 ft", "12 ft"], "rows": ["0 ft", "5 ft", "10 ft"],
            "elevations": ["99.20 ft", "99.20 ft", "99.20 ft", "99.25 ft", "99.15 ft", "99.22 ft", "99.30 ft", "99.28 ft", "99.30 ft"]}},
        "edges": [{"edge": "back", "state": "walled"}]}"#,
    refusals: &[
        (r#"{"edges": [{"edge": "bakc", "state": "walled"}]}"#, Code::EdgeUnknown),
        (r#"{"edges": [{"edge": "back", "state": "wall"}]}"#, Code::WordUnknown),
        (
            r#"{"edges": [{"edge": "back", "state": "walled"}, {"edge": "Back", "state": "open"}]}"#,
            Code::Contradiction,
        ),
        (
            r#"{"edges": [{"edge": "front", "state": "walled"}, {"edge": "right", "state": "walled"},
            {"edge": "back", "state": "walled"}, {"edge": "left", "state": "walled"}]}"#,
            Code::NoOutlet,
        ),
        (r#"{"drains": [{"x": "13 ft", "y": "5 ft"}]}"#, Code::DrainOutside),
        (r#"{"shallowest": "-1 in"}"#, Code::OutOfRange),
        (r#"{"survey": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(standing_water),
};

fn standing_water(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let given = GivenEdges::of(args.table(1)?, args.table(2)?);
    let ponds =
        Ponds::of_survey(survey, &given.edges, args.required(3)?).map_err(|failure| given.told(failure))?;
    let answer = Answer::of([
        Value::Count(ponds.list.len() as i64),
        Value::Number(ponds.area().base()),
        Value::Number(ponds.volume().base()),
        ponds.depth().map_or(Value::Absent, |depth| Value::Number(depth.base())),
        Value::Count(ponds.left_out as i64),
        Value::Number(ponds.left_out_volume.base()),
        Value::Table(ponds_table(&ponds.list, [])),
    ]);
    Ok(answer.with_notes(ponds.notes()))
}
