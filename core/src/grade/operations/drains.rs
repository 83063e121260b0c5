//! The rows of the finishes that fall to a drain.

use super::finish::{POINTS, RESULT, example, made, points};
use crate::basis::BasisId;
use crate::failure::{Code, Failure, Result, together};
use crate::grade::fall::FALL;
use crate::grade::finish::patterns::{BreakLine, DrainSet, EdgeTrench, LineTrench, Reach, ToDrain, WIDTH};
use crate::grade::finish::{Finish, HEIGHT};
use crate::operation::{Answer, Args, Call, Choice, Kind, Operation};
use crate::quantity::{Elevation, Length, Range, Slope};
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;
use crate::{number, port};

/// Planes to an area drain.
pub static FINISH_TO_DRAIN: Operation = Operation {
    name: "finish_to_drain",
    module: "grade",
    since: "0.1.0",
    meaning: "Planes that fall from a level perimeter to an area drain, one from each run of the outline.",
    equation: "each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter - fall x way of the water",
    assumes: "every corner of the outline can be seen from the drain; holes take nothing away; give the drain's height or a fall",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with its outline"),
        number!(x: length in foot | meter, Range::ANY, "middle of the drain, from the left"),
        number!(y: length in foot | meter, Range::ANY, "middle of the drain, from the front"),
        number!(elevation: elevation in foot | meter, HEIGHT, "height of the finish all along the outer edges"),
        number!(drain_elevation: elevation in foot | meter, HEIGHT, "height of the drain"; optional),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall to the drain, in place of its height"; optional),
        port!(along: Kind::Choice(Reach::WORDS), "the way the fall is meant along: from the farthest corner or from the nearest place";
            or "longest" because "the fall is then met everywhere"),
        number!(rim_x: length in inch | millimeter, WIDTH, "size of the drain's level rim along x; none for a point"; optional),
        number!(rim_y: length in inch | millimeter, WIDTH, "its size along y, where it is not square"; optional),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""x": "10 ft", "y": "14 ft", "elevation": "99.7 ft", "fall": "1/8 in/ft", "rim_x": "12 in""#
    ),
    refusals: &[
        (r#"{"x": "25 ft"}"#, Code::OffWork),
        (r#"{"x": "0 ft", "rim_x": null}"#, Code::CornerUnseen),
        (r#"{"fall": null}"#, Code::FinishUndetermined),
        (r#"{"drain_elevation": "99 ft"}"#, Code::FinishTwice),
        (r#"{"fall": null, "drain_elevation": "99.8 ft"}"#, Code::Contradiction),
        (r#"{"along": "middle"}"#, Code::WordUnknown),
    ],
    call: Call::Record(to_drain),
};

fn to_drain(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let (height, fall): (Option<Elevation>, Option<Slope>) = (args.quantity(4)?, args.quantity(5)?);
    let set = match (height, fall) {
        (Some(elevation), None) => DrainSet::At(elevation),
        (None, Some(fall)) => DrainSet::By(fall, args.choice(6)?.unwrap_or(Reach::Longest)),
        _ => {
            return Err(one_of(
                "drain_elevation",
                [("drain_elevation", height.is_some()), ("fall", fall.is_some())],
            ));
        }
    };
    let [rim_x, rim_y]: [Option<Length>; 2] = [args.quantity(7)?, args.quantity(8)?];
    let rim = rim_x.or(rim_y).map(|one| [rim_x.unwrap_or(one), rim_y.unwrap_or(one)]);
    let asked =
        ToDrain { x: args.required(1)?, y: args.required(2)?, elevation: args.required(3)?, set, rim };
    Finish::to_drain(survey.outline(), &asked).map(|finish| made(finish, None))
}

/// Exactly one of two must be given.
fn one_of(path: &str, given: [(&str, bool); 2]) -> Box<Failure> {
    let both = given.iter().all(|(_, given)| *given);
    let code = if both { Code::FinishTwice } else { Code::FinishUndetermined };
    Failure::new(code, path)
        .written(together(&given))
        .allowed(format!("{} or {}", given[0].0, given[1].0))
        .remedy("give one of the two")
}

/// Planes to a trench drain.
pub static FINISH_TO_TRENCH: Operation = Operation {
    name: "finish_to_trench",
    module: "grade",
    since: "0.1.0",
    meaning: "Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.",
    equation: "the planes hold the rims of the trench, which is level across, and rise from them by their own falls",
    assumes: "left and right are seen from the first point of the trench looking to the second; an edge's trench starts where the edge does",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab with its outline"),
        port!(trench: Kind::Table(&POINTS), "two points of the middle of the trench, at the height of its rims"; optional),
        port!(edge: Kind::Text, "in place of the points: the edge the trench lies along"; optional),
        number!(elevation: elevation in foot | meter, HEIGHT, "along an edge: height of the rims where it starts"; optional),
        number!(elevation_end: elevation in foot | meter, HEIGHT, "along an edge: height of the rims where it ends, where the trench is not level"; optional),
        number!(width: length in inch | millimeter, WIDTH, "width from rim to rim"; or "0 in" because "a slot"),
        number!(fall: slope in inch_per_foot | percent, FALL, "fall to the trench, square to it"),
        number!(right_fall: slope in inch_per_foot | percent, FALL, "fall on the right, where it is another"; optional),
    ],
    results: RESULT,
    basis: &[BasisId::Geometry],
    example: example!(
        r#""trench": {"x": ["0 ft", "20 ft"], "y": ["16 ft", "16 ft"], "elevation": ["99.6 ft", "99.5 ft"]}, "width": "6 in",
        "fall": "1/8 in/ft""#
    ),
    refusals: &[
        (r#"{"trench": null}"#, Code::FinishUndetermined),
        (r#"{"edge": "front"}"#, Code::FinishTwice),
        (r#"{"trench": null, "edge": "front"}"#, Code::FinishUndetermined),
        (
            r#"{"trench": null, "edge": "front", "elevation": "99 ft", "right_fall": "1 %"}"#,
            Code::Contradiction,
        ),
        (r#"{"elevation": "99 ft"}"#, Code::Contradiction),
        (r#"{"width": "1000 ft"}"#, Code::OutOfRange),
    ],
    call: Call::Record(to_trench),
};

fn to_trench(args: &Args<'_>) -> Result<Answer> {
    let survey: &Survey = args.required_record(0)?;
    let (width, fall): (Length, Slope) = (args.required(5)?, args.required(6)?);
    let (elevation, end): (Option<Elevation>, Option<Elevation>) = (args.quantity(3)?, args.quantity(4)?);
    let right: Option<Slope> = args.quantity(7)?;
    let finish = match (args.table(1)?, args.text(2)?) {
        (Some(table), None) => {
            idle("elevation", elevation.is_some(), "a trench by two points, which have their heights")?;
            idle("elevation_end", end.is_some(), "a trench by two points, which have their heights")?;
            let middle = BreakLine::of(&points(table), "trench")?;
            let falls = [fall, right.unwrap_or(fall)];
            Finish::to_trench(survey.outline(), &LineTrench { middle, width, falls })?
        }
        (None, Some(edge)) => {
            idle("right_fall", right.is_some(), "a trench along an edge, which has one side")?;
            let elevation = elevation.ok_or_else(|| {
                Failure::new(Code::FinishUndetermined, "elevation")
                    .written("nothing")
                    .allowed("the height of the rims where the edge starts")
                    .remedy("give the height")
            })?;
            let elevation_end = end.unwrap_or(elevation);
            let trench = EdgeTrench { edge: edge.to_owned(), elevation, elevation_end, width, fall };
            Finish::to_edge_trench(survey.outline(), &trench)?
        }
        (table, edge) => {
            return Err(one_of("trench", [("trench", table.is_some()), ("edge", edge.is_some())]));
        }
    };
    Ok(made(finish, None))
}

/// Refuses what the other way of saying it has no use for.
fn idle(path: &str, given: bool, with: &str) -> Result<()> {
    if !given {
        return Ok(());
    }
    Err(Failure::new(Code::Contradiction, path)
        .written(format!("with {with}"))
        .allowed("nothing")
        .remedy("remove it, or say the trench the other way"))
}
