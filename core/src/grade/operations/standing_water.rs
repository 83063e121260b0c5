//! The row of the water that stands on a finish.

use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::grade::standing_water::{Cure, Fate};
use crate::operation::{Answer, Args, Call, Choice, Column, Kind, Operation, TableType, Value};
use crate::quantity::{Range, Typed};
use crate::survey::Survey;
use crate::survey::low_spots::{DRAINS, EDGES, GivenEdges, SHALLOWEST, pond_columns, ponds_table};
use crate::survey::old_slab::SURVEY;
use crate::survey::operations::{Allowed, HEIGHT, PLACE};
use crate::{number, port};

static PONDS: TableType = TableType {
    name: "ponds",
    meaning: "a pond on the finish, the one with the most water first",
    columns: pond_columns!(port!(new: Kind::Choice(Allowed::WORDS), "whether the old slab was dry there")),
    least_rows: 0,
};

static OLD_PONDS: TableType = TableType {
    name: "old_ponds",
    meaning: "a pond of the old slab, the one with the most water first",
    columns: pond_columns!(
        port!(fate: Kind::Choice(Fate::WORDS), "whether the finish cures it"),
        number!(still: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of it that is still under water"),
    ),
    least_rows: 0,
};

/// Where water stands on a finish, and which ponds of the old slab it cures.
pub static FINISH_STANDING_WATER: Operation = Operation {
    name: "finish_standing_water",
    module: "grade",
    since: "0.1.0",
    meaning: "The ponds of a finish, and which ponds of the old slab it cures.",
    equation: "level at a place = least over all ways to an outlet of the highest place on the way; depth = level - surface",
    assumes: "edges and drains are the same for the old slab and the finish; a drain takes water at the height of the surface",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(edges: Kind::Table(&EDGES), "edges that are walled, open or drained"; optional),
        port!(drains: Kind::Table(&DRAINS), "drains in the floor"; optional),
        number!(shallowest: length in inch | millimeter, SHALLOWEST, "ponds shallower than this are left out";
            or "1/16 in" because "a rod hardly tells less"),
    ],
    results: &[
        port!(count: Kind::Count(0, i64::MAX), "how many ponds the finish has"),
        number!(area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "area of the finish under water"),
        number!(volume: volume in cubic_foot | cubic_meter, Range::NOT_NEGATIVE, "water on the finish"),
        number!(depth: length in inch | millimeter, Range::NOT_NEGATIVE, "greatest depth on the finish; none without a pond"; optional),
        port!(left_out: Kind::Count(0, i64::MAX), "how many ponds of the finish were shallower"),
        port!(cured: Kind::Count(0, i64::MAX), "how many ponds of the old slab are cured"),
        port!(left: Kind::Count(0, i64::MAX), "how many ponds of the old slab are not"),
        port!(ponds: Kind::Table(&PONDS), "the ponds of the finish"),
        port!(old_ponds: Kind::Table(&OLD_PONDS), "the ponds of the old slab"),
    ],
    basis: &[BasisId::Geometry],
    example: example!(
        r#""finish": {"points": [{"x": "0 ft", "y": "0 ft", "elevation": "99.6 ft"},
        {"x": "20 ft", "y": "0 ft", "elevation": "99.6 ft"}, {"x": "0 ft", "y": "32 ft", "elevation": "99.5 ft"}]},
        "edges": [{"edge": "right", "state": "walled"}, {"edge": "back", "state": "walled"}, {"edge": "left", "state": "walled"}]"#
    ),
    refusals: &[
        (r#"{"edges": [{"edge": "door", "state": "walled"}]}"#, Code::EdgeUnknown),
        (r#"{"drains": [{"x": "10 ft", "y": "33 ft"}]}"#, Code::DrainOutside),
        (
            r#"{"edges": [{"edge": "front", "state": "walled"}, {"edge": "right", "state": "walled"},
            {"edge": "back", "state": "walled"}, {"edge": "left", "state": "walled"}]}"#,
            Code::NoOutlet,
        ),
        (r#"{"shallowest": "2 ft"}"#, Code::OutOfRange),
        (r#"{"finish": 3}"#, Code::KindMismatch),
    ],
    call: Call::Record(finish_standing_water),
};

fn finish_standing_water(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let finish: &Finish = args.required_record(1)?;
    let given = GivenEdges::of(args.table(2)?, args.table(3)?);
    let cure =
        Cure::of(survey, finish, &given.edges, args.required(4)?).map_err(|failure| given.told(failure))?;
    let new =
        cure.new.iter().map(|&new| Some(if new { Allowed::Yes } else { Allowed::No } as usize)).collect();
    let fates = cure.outcomes.iter().map(|outcome| Some(outcome.fate as usize)).collect();
    let still = cure.outcomes.iter().map(|outcome| outcome.still.base()).collect();
    let water = &cure.finish;
    let answer = Answer::of([
        Value::Count(water.list.len() as i64),
        Value::Number(water.area().base()),
        Value::Number(water.volume().base()),
        water.depth().map_or(Value::Absent, |depth| Value::Number(depth.base())),
        Value::Count(water.left_out as i64),
        Value::Count(cure.count(Fate::Cured) as i64),
        Value::Count(cure.count(Fate::Left) as i64),
        Value::Table(ponds_table(&water.list, [Column::Choices(new)])),
        Value::Table(ponds_table(&cure.old.list, [Column::Choices(fates), Column::Numbers(still)])),
    ]);
    Ok(answer.with_notes(cure.notes()))
}
