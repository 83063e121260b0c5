//! The row of the clearances.

use super::answer::{CHECKS, JUDGEMENTS, WORKS, checks, judgements, works};
use super::things::{THINGS, read_things};
use crate::basis::BasisId;
use crate::clearance::{Verdict, clearances, notes, text};
use crate::failure::{Code, Result};
use crate::grade::finish::{FINISH, Finish};
use crate::operation::{Answer, Args, Call, Kind, Operation, Value};
use crate::port;
use crate::survey::Survey;
use crate::survey::old_slab::SURVEY;

const COUNT: Kind = Kind::Count(0, i64::MAX);

/// What the new floor does to what it meets.
pub static CLEARANCES: Operation = Operation {
    name: "clearances",
    module: "clearance",
    since: "0.1.0",
    meaning: "Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by how much, what the raise forces and whose trade that is.",
    equation: "rise = finish - old slab; room = what is left - what is wanted; fill against an edge = integral along it of height x height x run / 2",
    assumes: "a thing outside the work is met at the nearest edge; limits that could not be read in their source never fail, they say to confirm locally",
    ports: &[
        port!(survey: Kind::Record(&SURVEY), "the old slab"),
        port!(finish: Kind::Record(&FINISH), "the new top surface"),
        port!(things: Kind::Table(&THINGS), "the things that it meets"),
    ],
    results: &[
        port!(passed: COUNT, "things that still work"),
        port!(confirm_locally: COUNT, "things that break a limit which is to be confirmed locally"),
        port!(ask: COUNT, "things of which a measure that decides is missing"),
        port!(fail: COUNT, "things that do not work as they stand"),
        port!(judgements: Kind::Table(&JUDGEMENTS), "each thing"),
        port!(checks: Kind::Table(&CHECKS), "each check of each thing"),
        port!(works: Kind::Table(&WORKS), "the work that the raise forces"),
        port!(text: Kind::Text, "the same for the site, one thing to a line"),
    ],
    basis: &[
        BasisId::Geometry,
        BasisId::OwnFigure,
        BasisId::DoorWorks,
        BasisId::DoorSealLine,
        BasisId::DoorRebate,
        BasisId::PhotoEyes,
        BasisId::LeafGap,
        BasisId::FireDoor,
        BasisId::ExitLanding,
        BasisId::RiserHeight,
        BasisId::FoundationSill,
        BasisId::SidingClearance,
        BasisId::TermiteStrip,
        BasisId::IgnitionHeight,
        BasisId::ParkingHeadroom,
        BasisId::PanelSpace,
        BasisId::DrainRim,
        BasisId::FreeFittings,
        BasisId::LocateMarks,
        BasisId::AccessibleStep,
        BasisId::GuardAtDrop,
        BasisId::EdgeFill,
    ],
    example: r#"{"survey": {"outline": {"corners": [{"x": "0 ft", "y": "0 ft"}, {"x": "20 ft", "y": "0 ft"}, {"x": "20 ft", "y": "24 ft"}, {"x": "0 ft", "y": "24 ft"}],
        "edges": ["front", "right", "back", "left"]},
        "shots": [{"x": "1 ft", "y": "1 ft", "elevation": "99.20 ft"}, {"x": "19 ft", "y": "1 ft", "elevation": "99.22 ft"}, {"x": "19 ft", "y": "23 ft", "elevation": "99.40 ft"}, {"x": "1 ft", "y": "23 ft", "elevation": "99.38 ft"}]},
        "finish": {"level": "99.7 ft"},
        "things": [{"name": "wide door", "kind": "sectional_door", "x": "4 ft", "y": "1/2 in", "to_x": "16 ft", "to_y": "1/2 in", "above_slab": "7' 6\"", "needed": "84 in"},
        {"name": "cleanout", "kind": "cleanout", "x": "3 ft", "y": "20 ft", "above_slab": "1 in"}]}"#,
    refusals: &[
        (r#"{"things": []}"#, Code::EmptyList),
        (
            r#"{"things": [{"name": "wide door", "kind": "sectional_door", "x": "4 ft", "y": "1 in", "needed": "7 ft"}]}"#,
            Code::LineNeeded,
        ),
        (
            r#"{"things": [{"name": "cap", "kind": "cleanout", "x": "90 ft", "y": "4 ft", "above_slab": "1 in"}]}"#,
            Code::ThingOffFloor,
        ),
        (
            r#"{"things": [{"name": "cap", "kind": "cleanout", "x": "3 ft", "y": "4 ft", "may_lose": "1 in"}]}"#,
            Code::MeasureNotRead,
        ),
        (
            r#"{"things": [{"name": "edge", "kind": "open_edge", "x": "1 ft", "y": "24 ft", "to_x": "19 ft", "to_y": "24 ft", "ground": "99.5 ft"}]}"#,
            Code::GroundMissing,
        ),
        (
            r#"{"things": [{"name": "cap", "kind": "cleanout", "x": "3 ft", "y": "4 ft", "elevation": "99.5 ft", "above_slab": "1 in"}]}"#,
            Code::Contradiction,
        ),
        (
            r#"{"things": [{"name": "wide door", "kind": "window", "x": "4 ft", "y": "1 in"}]}"#,
            Code::WordUnknown,
        ),
    ],
    call: Call::Record(call),
};

fn call(args: &Args<'_>) -> Result<Answer> {
    let (survey, finish): (&Survey, &Finish) = (args.required_record(0)?, args.required_record(1)?);
    let things = read_things(args.required_table(2)?)?;
    let judged = clearances(survey, finish, &things).map_err(|mut failure| {
        if failure.code == Code::LineNeeded {
            "to_x".clone_into(&mut failure.path);
        }
        if failure.code == Code::GroundMissing {
            "ground_to".clone_into(&mut failure.path);
        }
        // A finish that leaves a hole names itself.
        if failure.code.family() == crate::failure::Family::Clearance {
            failure.under("things")
        } else {
            failure
        }
    })?;
    let count = |verdict: Verdict| {
        Value::Count(judged.iter().filter(|judged| judged.verdict() == verdict).count() as i64)
    };
    let counts = [Verdict::Pass, Verdict::ConfirmLocally, Verdict::Ask, Verdict::Fail].map(count);
    let tables = [judgements(&judged), checks(&judged), works(&judged), Value::Text(text(&judged))];
    let results: Vec<Value> = counts.into_iter().chain(tables).collect();
    Ok(Answer::of(results).with_notes(notes(&judged)))
}
