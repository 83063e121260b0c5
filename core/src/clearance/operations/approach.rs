//! The row of the approach to a door.

use crate::assumption;
use crate::basis::BasisId;
use crate::clearance::approach::{
    Approach, Asked, Away, BreakKind, DEPTH, DISTANCE, HEIGHT, Matter, ProfilePoint, ROOM, Rule, STRETCH,
    Traffic, VEHICLE, Vehicle, Weight, at_door,
};
use crate::failure::{Code, Failure, Result};
use crate::grade::drainage::runoff::RAIN;
use crate::grade::fall::FALL;
use crate::grade::finish::{FINISH, Finish};
use crate::grade::operations::columns::{numbers, table};
use crate::judged::Judged;
use crate::operation::{Answer, Args, Call, Choice, Column, Columns, Kind, Operation, TableType, Value};
use crate::quantity::{Elevation, Length, Range, Slope, Typed};
use crate::survey::operations::PLACE;
use crate::survey::outline::Corner;
use crate::{number, port};

static DOOR: TableType = TableType {
    name: "door",
    meaning: "a place along the door, on the finish",
    columns: &[
        number!(x: length in foot | meter, PLACE, "distance from the left"),
        number!(y: length in foot | meter, PLACE, "distance from the front"),
    ],
    least_rows: 0,
};

static PROFILE: TableType = TableType {
    name: "profile",
    meaning: "a measured place of the ground outside, from the door outwards, the first at the door",
    columns: &[
        number!(distance: length in foot | meter, DISTANCE, "distance from the door"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the ground"),
    ],
    least_rows: 1,
};

static STRETCHES: TableType = TableType {
    name: "stretches",
    meaning: "a stretch of one grade, from the door outwards",
    columns: &[
        number!(from: length in foot | meter, DISTANCE, "its start, from the door"),
        number!(to: length in foot | meter, DISTANCE, "its end, from the door"),
        number!(start: elevation in foot | meter, HEIGHT, "height of its start"),
        number!(end: elevation in foot | meter, HEIGHT, "height of its end"),
        number!(fall: slope in percent | percent, Range::ANY, "its fall away from the door; negative where it rises"),
    ],
    least_rows: 0,
};

static BREAKS: TableType = TableType {
    name: "breaks",
    meaning: "a change of grade, at the door too where there is no step",
    columns: &[
        number!(at: length in foot | meter, DISTANCE, "distance from the door"),
        port!(kind: Kind::Choice(BreakKind::WORDS), "over a hump or through a dip"),
        number!(change: slope in percent | percent, Range::NOT_NEGATIVE, "the change of grade"),
        number!(spacing: length in foot | meter, Range::NOT_NEGATIVE, "to the nearest other break, or the end of the profile"),
        number!(lost: length in inch | millimeter, Range::NOT_NEGATIVE, "what a crest takes of the room under the vehicle; none without a wheelbase"; optional),
    ],
    least_rows: 0,
};

static RULES: TableType = TableType {
    name: "rules",
    meaning: "one rule held against one place",
    columns: &[
        port!(matter: Kind::Choice(Matter::WORDS), "what is judged"),
        number!(at: length in foot | meter, DISTANCE, "distance from the door"),
        number!(found: slope in percent | percent, Range::ANY, "what is there"),
        number!(limit: slope in percent | percent, Range::ANY, "what may be; of a fall what must be"),
        port!(weight: Kind::Choice(Weight::WORDS), "whether it decides"),
        port!(basis: Kind::Text, "where the limit comes from"),
        port!(judged: Kind::Choice(Judged::WORDS), "what comes out"),
    ],
    least_rows: 0,
};

/// The approach to a door.
pub static APPROACH: Operation = Operation {
    name: "approach",
    module: "clearance",
    since: "0.1.0",
    meaning: "A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks, the step at the door, and a drain along the door instead.",
    equation: "needed = greatest of (height + fall x distance) over the ground, and the rebate; change of grade = difference of two falls",
    assumes: "the ground is straight between its points; a new approach is straight from the floor's edge to where it ties in; the floor is level at the door; 95 % of the rain runs off",
    ports: &[
        number!(floor: elevation in foot | meter, HEIGHT, "height of the floor at the door; or a finish with the places of the door"; optional),
        port!(finish: Kind::Record(&FINISH), "the new top surface, whose lowest place along the door counts"; optional),
        port!(door: Kind::Table(&DOOR), "places along the door"; optional),
        port!(profile: Kind::Table(&PROFILE), "the ground outside"),
        port!(traffic: Kind::Choice(Traffic::WORDS), "what goes over it"; or "vehicle" because "most approaches are driven on"),
        number!(fall: slope in percent | percent, FALL, "fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not given"; optional),
        number!(over: length in foot | meter, STRETCH, "over which distance from the door"; zero rare, or assumption::AWAY_OVER),
        number!(tie_in: length in foot | meter, STRETCH, "how far from the door a new approach meets the ground"; zero rare, optional),
        number!(thickness: length in inch | millimeter, DEPTH, "how thick the new approach is"; zero rare, optional),
        number!(rebate: length in inch | millimeter, DEPTH, "how far the outside lies below the floor at the door"; optional),
        number!(wheelbase: length in inch | millimeter, VEHICLE, "from axle to axle"; zero rare, optional),
        number!(clearance: length in inch | millimeter, ROOM, "room under the vehicle between its axles"; zero rare, optional),
        number!(overhang: length in inch | millimeter, VEHICLE, "from the front axle to the bumper"; zero rare, optional),
        number!(bumper: length in inch | millimeter, ROOM, "room under the bumper"; zero rare, optional),
        number!(door_width: length in foot | meter, STRETCH, "how wide the door is, for a drain along it"; zero rare, optional),
        number!(rain: rain_intensity in inch_per_hour | millimeter_per_hour, RAIN, "how fast rain comes down on hard ground, for that drain"; zero rare, optional),
    ],
    results: &[
        port!(judged: Kind::Choice(Judged::WORDS), "whether every limit is kept"),
        number!(needed: elevation in foot | meter, HEIGHT, "the floor height from which water falls away as wanted"),
        number!(governing: length in foot | meter, DISTANCE, "how far from the door the place is that decides it"),
        number!(spare: length in inch | millimeter, Range::ANY, "how far the floor is above that; negative below"),
        port!(away: Kind::Choice(Away::WORDS), "what that does to the water"),
        number!(step: length in inch | millimeter, Range::ANY, "the step at the door, from the outside up to the floor"),
        number!(step_limit: length in inch | millimeter, Range::NOT_NEGATIVE, "the most that it may be"),
        port!(step_judged: Kind::Choice(Judged::WORDS), "whether it is"),
        number!(dig: length in inch | millimeter, Range::NOT_NEGATIVE, "how deep old ground has to come out under the new approach; none without tie-in and thickness"; optional),
        number!(trench_floor: elevation in foot | meter, HEIGHT, "the height that the floor may have with a drain along the door"),
        number!(trench_reach: length in foot | meter, DISTANCE, "how far out the ground falls to the door"),
        number!(trench_area: area in square_foot | square_meter, Range::NOT_NEGATIVE, "the ground that drains to the door; none without its width"; optional),
        number!(trench_flow: flow in gallon_per_minute | liter_per_second, Range::NOT_NEGATIVE, "the rain that comes from it; none without rain"; optional),
        port!(stretches: Kind::Table(&STRETCHES), "the ground as it will be"),
        port!(breaks: Kind::Table(&BREAKS), "where its grade changes"),
        port!(rules: Kind::Table(&RULES), "every rule at every place"),
    ],
    basis: &[
        BasisId::Geometry,
        BasisId::FallOutdoors,
        BasisId::FallGiven,
        BasisId::DrivewayTexas,
        BasisId::DrivewayMarylandUsual,
        BasisId::DrivewayMaryland,
        BasisId::DrivewayMinnesota,
        BasisId::AccessibleWalk,
        BasisId::AccessibleRamp,
        BasisId::AccessibleStep,
        BasisId::DoorRebate,
        BasisId::DoorStep,
        BasisId::RationalMethod,
    ],
    example: r#"{"floor": "100.1 ft", "profile": {"distance": ["0 ft", "5 ft", "20 ft", "30 ft"], "elevation": ["100 ft", "99.95 ft", "99.6 ft", "99.1 ft"]},
        "tie_in": "20 ft", "thickness": "4 in", "rebate": "1 in", "wheelbase": "110 in", "clearance": "6 in", "door_width": "9 ft", "rain": "3 in/h"}"#,
    refusals: &[
        (r#"{"profile": {"distance": ["0 ft"], "elevation": ["100 ft"]}}"#, Code::ApproachShort),
        (
            r#"{"profile": {"distance": ["2 ft", "5 ft"], "elevation": ["100 ft", "99.9 ft"]}, "tie_in": "5 ft"}"#,
            Code::ApproachStart,
        ),
        (
            r#"{"profile": {"distance": ["0 ft", "25 ft", "20 ft"], "elevation": ["100 ft", "99.9 ft", "99 ft"]}}"#,
            Code::ApproachUnsorted,
        ),
        (r#"{"tie_in": "31 ft"}"#, Code::TieInBeyond),
        (r#"{"traffic": "cart"}"#, Code::WordUnknown),
        (r#"{"over": "0 ft"}"#, Code::OutOfRange),
        (r#"{"floor": null}"#, Code::DoorUnknown),
    ],
    call: Call::Record(approach),
};

fn approach(args: &Args<'_>) -> Result<Answer> {
    let asked = Asked {
        floor: floor(args)?,
        floor_fall: Slope::from_base(0.0),
        profile: profile(args.required_table(3)?),
        traffic: args.choice(4)?.unwrap_or(Traffic::Vehicle),
        fall: args.quantity(5)?,
        over: args.required(6)?,
        tie_in: args.quantity(7)?,
        thickness: args.quantity(8)?,
        rebate: args.quantity(9)?,
        vehicle: Vehicle {
            wheelbase: args.quantity(10)?,
            clearance: args.quantity(11)?,
            overhang: args.quantity(12)?,
            bumper: args.quantity(13)?,
        },
    };
    let found = Approach::of(&asked)?;
    let width: Option<Length> = args.quantity(14)?;
    let area = width.map(|width| found.trench.catches(width));
    let flow = match (width, args.quantity(15)?) {
        (Some(width), Some(rain)) => Some(found.trench.takes(width, rain, assumption::RUNOFF.value())?),
        _ => None,
    };
    let answer = Answer::of([
        Value::Choice(found.judged() as usize),
        Value::Number(found.needed.base()),
        Value::Number(found.governing.base()),
        Value::Number(found.spare.base()),
        Value::Choice(found.away as usize),
        Value::Number(found.step.height.base()),
        Value::Number(found.step.limit.base()),
        Value::Choice(found.step.judged as usize),
        maybe(found.dig),
        Value::Number(found.trench.floor.base()),
        Value::Number(found.trench.reach.base()),
        maybe(area),
        maybe(flow),
        stretches(&found),
        breaks(&found),
        rules(&found.rules),
    ]);
    let mut answer = answer.with_notes(found.notes().iter().cloned());
    answer.basis.extend([(0, BasisId::Geometry), (6, found.step.basis)]);
    Ok(answer)
}

fn maybe<Q: Typed>(value: Option<Q>) -> Value {
    value.map_or(Value::Absent, |value| Value::Number(value.base()))
}

/// The height of the floor: given, or that of the finish at the door.
fn floor(args: &Args<'_>) -> Result<Elevation> {
    let (floor, finish): (Option<Elevation>, Option<&Finish>) = (args.quantity(0)?, args.record(1)?);
    let places: Vec<Corner> = args.table(2)?.map_or_else(Vec::new, door);
    match (floor, finish) {
        (Some(floor), None) if places.is_empty() => Ok(floor),
        (None, Some(finish)) => at_door(finish, &places),
        (None, None) => Err(Failure::new(Code::DoorUnknown, "floor")
            .written("neither a floor height nor a finish")
            .allowed("the height of the floor at the door, or a finish and places along the door")
            .remedy("give one of the two")),
        _ => Err(Failure::new(Code::Contradiction, "floor")
            .written("a floor height together with a finish or places of the door")
            .allowed("the height of the floor at the door, or a finish and places along the door")
            .remedy("give one of the two")),
    }
}

fn number(table: &Columns, column: usize, row: usize) -> f64 {
    table.number(column, row).unwrap_or(f64::NAN)
}

fn door(table: &Columns) -> Vec<Corner> {
    let length = |column: usize, row: usize| Length::from_base(number(table, column, row));
    (0..table.rows).map(|row| Corner::new(length(0, row), length(1, row))).collect()
}

fn profile(table: &Columns) -> Vec<ProfilePoint> {
    let point = |row: usize| ProfilePoint {
        distance: Length::from_base(number(table, 0, row)),
        elevation: Elevation::from_base(number(table, 1, row)),
    };
    (0..table.rows).map(point).collect()
}

fn stretches(found: &Approach) -> Value {
    let rows = &found.stretches;
    table(
        rows.len(),
        [
            numbers(rows, |of| of.from.base()),
            numbers(rows, |of| of.to.base()),
            numbers(rows, |of| of.start.base()),
            numbers(rows, |of| of.end.base()),
            numbers(rows, |of| of.fall.base()),
        ],
    )
}

fn breaks(found: &Approach) -> Value {
    let rows = &found.breaks;
    table(
        rows.len(),
        [
            numbers(rows, |of| of.at.base()),
            choices(rows, |of| of.kind as usize),
            numbers(rows, |of| of.change.base()),
            numbers(rows, |of| of.spacing.base()),
            numbers(rows, |of| of.taken.map_or(f64::NAN, Typed::base)),
        ],
    )
}

fn rules(rows: &[Rule]) -> Value {
    table(
        rows.len(),
        [
            choices(rows, |of| of.matter as usize),
            numbers(rows, |of| of.at.base()),
            numbers(rows, |of| of.found.base()),
            numbers(rows, |of| of.limit.base()),
            choices(rows, |of| of.weight as usize),
            Column::Texts(rows.iter().map(|of| Some(of.basis.name().to_owned())).collect()),
            choices(rows, |of| of.judged as usize),
        ],
    )
}

fn choices<T>(rows: &[T], place: impl Fn(&T) -> usize) -> Column {
    Column::Choices(rows.iter().map(|row| Some(place(row))).collect())
}
