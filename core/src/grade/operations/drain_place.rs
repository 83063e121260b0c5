//! The row of the place of a drain.

use super::finish::example;
use crate::basis::BasisId;
use crate::failure::{Code, Result};
use crate::grade::fall::FALL;
use crate::grade::finish::{FINISH, HEIGHT, LEAST, STEP};
use crate::grade::sections::PLACE;
use crate::grade::solve::{
    CLOSE, Demand, DrainAsked, DrainBounds, Ended, MOST_PLACES, PlacedDrain, Steps, Wants, place_drain,
};
use crate::grade::thin_zones::VOLUME_PRICE;
use crate::note::{Note, NoteCode};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation, Value};
use crate::quantity::{Elevation, Length, Range, Slope, Typed, Volume, inches, number_in};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{assumption, number, port};

/// Places tried where nobody says how many.
const PLACES: usize = 5000;

/// Where a drain goes.
pub static DRAIN_PLACE: Operation = Operation {
    name: "drain_place",
    module: "grade",
    since: "0.1.0",
    meaning: "Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the least concrete, with a bound that no place goes under.",
    equation: "z = perimeter - drop x (distance from the run's line / distance of the drain from it); concrete = integral of z - old slab, least over perimeter, drop and place; gap = (concrete - bound) / concrete",
    assumes: "every corner of the outline is seen from the drain, at least 1/2 in inside the line of every run; the search and its bound are over unrounded finishes, and rounding comes after; ground beyond the shots does not bind",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with its outline"),
        number!(x_from: length in foot | meter, PLACE, "the drain is no farther left than this, from the left"),
        number!(x_to: length in foot | meter, PLACE, "and no farther right; the same as x_from leaves one line of places"),
        number!(y_from: length in foot | meter, PLACE, "no farther to the front, from the front"),
        number!(y_to: length in foot | meter, PLACE, "and no farther back"),
        number!(least: length in inch | millimeter, LEAST, "least thickness"),
        number!(margin: length in inch | millimeter, LEAST, "margin on the least thickness"; or assumption::MARGIN),
        number!(fall: slope in inch_per_foot | percent, FALL, "least fall to the drain from every corner of the perimeter"; or assumption::FALL),
        number!(greatest_fall: slope in inch_per_foot | percent, FALL, "greatest fall, in whatever direction"; optional),
        number!(concrete_price: volume_price in per_cubic_yard | per_cubic_meter, VOLUME_PRICE, "price of concrete"; zero rare, optional),
        number!(close: share in percent | percent, CLOSE, "the search ends when the concrete is above the bound by no more than this share of it"; or "0.01 %" because "less than a shovel to a truck"),
        port!(most_places: Kind::Count(1, MOST_PLACES as i64), "the search ends too when so many places were tried; 5000 if not given"; optional),
        number!(round: length in inch | millimeter, STEP, "the heights of perimeter and drain are rounded to whole steps of this that keep the demands"; optional),
        number!(datum: elevation in foot | meter, HEIGHT, "the height the steps are counted from, usually the benchmark"; or "0 ft" because "the job datum"),
    ],
    results: &[
        port!(finish: Kind::Record(&FINISH), "the finish there, rounded if that was asked"),
        number!(x: length in foot | meter, Range::ANY, "middle of the drain, from the left"),
        number!(y: length in foot | meter, Range::ANY, "middle of the drain, from the front"),
        number!(perimeter: elevation in foot | meter, Range::ANY, "height of that finish all along the outer edges"),
        number!(drain_elevation: elevation in foot | meter, Range::ANY, "its height at the drain"),
        number!(concrete: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete of the unrounded finish, margin with it"),
        number!(bound: volume in cubic_yard | cubic_meter, Range::ANY, "no place in the rectangle takes less"),
        number!(gap: ratio in one | one, Range::NOT_NEGATIVE, "how far the concrete may be above the best, as a share of it"),
        port!(places: Kind::Count(1, i64::MAX), "places at which the finish was solved"),
        port!(ended: Kind::Choice(Ended::WORDS), "why the search ended: as close as asked, or the cap on places"),
        number!(built_concrete: volume in cubic_yard | cubic_meter, Range::NOT_NEGATIVE, "concrete of the finish as rounded"),
        number!(cost: money in currency_unit | currency_unit, Range::NOT_NEGATIVE, "what that costs; none without a price"; optional),
    ],
    basis: &[BasisId::Geometry, BasisId::FallFinishedFloor],
    example: example!(
        r#""x_from": "4 ft", "x_to": "16 ft", "y_from": "6 ft", "y_to": "20 ft", "least": "3 in", "fall": "1/8 in/ft",
            "concrete_price": "162 /yd3", "close": "0.1 %", "round": "1/8 in""#
    ),
    refusals: &[
        (r#"{"x_from": "17 ft"}"#, Code::OutOfRange),
        (r#"{"x_from": "30 ft", "x_to": "40 ft"}"#, Code::DrainUnplaced),
        (r#"{"greatest_fall": "1/8 in/ft"}"#, Code::DrainNowhere),
        (r#"{"least": "-3 in"}"#, Code::OutOfRange),
        (r#"{"close": "0 %"}"#, Code::OutOfRange),
        (r#"{"fall": "1 in"}"#, Code::UnitWrong),
    ],
    call: Call::Record(drain_place),
};

fn drain_place(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let least: Length = args.required(5)?;
    let demands = [Demand::new("least thickness", Wants::LeastThickness { least, zone: None })];
    let datum: Elevation = args.required(13)?;
    let steps = |heights: Length| Steps { heights, datum, falls: Slope::from_base(0.0) };
    let asked = DrainAsked {
        within: DrainBounds {
            x: [args.required(1)?, args.required(2)?],
            y: [args.required(3)?, args.required(4)?],
        },
        fall: args.required(7)?,
        greatest_fall: args.quantity(8)?,
        demands: &demands,
        margin: args.required(6)?,
        edges_bind: false,
        concrete_price: args.quantity(9)?,
        close: args.required(10)?,
        most_places: args.count(11)?.map_or(PLACES, |places| usize::try_from(places).unwrap_or(0)),
        steps: args.quantity::<Length>(12)?.filter(|step| step.base() > 0.0).map(steps),
    };
    let found = place_drain(survey, &asked)?;
    let built = &found.solved.built;
    let money = built.money.map_or(Value::Absent, |money| Value::Number(money.base()));
    let answer = Answer::of([
        Value::record(built.finish.clone()),
        Value::Number(found.x.base()),
        Value::Number(found.y.base()),
        Value::Number(found.perimeter.base()),
        Value::Number(found.drain.base()),
        Value::Number(found.concrete.base()),
        Value::Number(found.bound.base()),
        Value::Number(found.gap.base()),
        Value::Count(i64::try_from(found.places).unwrap_or(i64::MAX)),
        Value::Choice(found.ended as usize),
        Value::Number(built.concrete.base()),
        money,
    ]);
    Ok(answer.with_notes(notes(&found)))
}

fn notes(found: &PlacedDrain) -> Vec<Note> {
    let mut notes = Vec::new();
    let cubic_yards = |volume: Volume| number_in(volume, &crate::quantity::volume::unit::cubic_yard, 3);
    if found.ended == Ended::Cap {
        let said = format!(
            "the search ended after {} places: a better place might save up to {}",
            found.places,
            cubic_yards(found.concrete - found.bound)
        );
        notes.push(Note::new(NoteCode::SearchCut, said));
    }
    if found.clipped {
        let said = "part of the rectangle was left out: from there not every corner of the outline can be seen from 1/2 in inside";
        notes.push(Note::new(NoteCode::PlacesLeftOut, said));
    }
    if let Some(rounding) = found.solved.rounding {
        let by = found.solved.built.concrete - found.concrete;
        let said = match rounding.heights.base() > 0.0 {
            true => format!(
                "heights are whole steps of {}, which takes {} more",
                inches(rounding.heights, 64),
                cubic_yards(by)
            ),
            false => "no whole steps keep the demands: heights are not rounded".to_owned(),
        };
        notes.push(Note::new(NoteCode::Rounded, said));
    }
    notes
}
