//! What jobs are told of the things that their floors meet.

use crate::failure::Code;
use crate::job::{ClearanceReport, Job, Report};

const STORE: &str = include_str!("../../../../examples/boat_store.toml");
const PATIO: &str = include_str!("../../../../examples/settled_patio.toml");

fn report(text: &str) -> Report {
    Job::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"))
}

fn thing(report: &Report, name: &str) -> ClearanceReport {
    report.new_floor.as_ref().unwrap().clearances.iter().find(|thing| thing.name == name).unwrap().clone()
}

#[track_caller]
fn refused(text: &str, code: Code, path: &str) {
    let failure = Job::read(text).and_then(|job| job.report()).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
}

/// The boat store with a change to its sliding door.
fn door(more: &str) -> String {
    STORE.replace("runs_outside = false\n", &format!("runs_outside = false\n{more}\n"))
}

/// Worked out beside the job: 3 3/8 to 3 3/4 in lost at the door, 9' 8 1/4" left at least, 15/16 in at the side door before rounding.
#[test]
fn the_boat_stores_doors_are_told_as_worked_apart() {
    let report = report(STORE);
    let door = thing(&report, "Sliding door");
    assert_eq!(door.verdict, "pass");
    let opening = door.checks.iter().find(|check| check.about == "opening").unwrap();
    assert!(opening.room.as_ref().unwrap().us >= 8.25, "{}", opening.text);
    let sixteenth = 1.0 / 16.0;
    assert!(door.rise_least.us >= 3.375 - sixteenth && door.rise_greatest.us <= 3.75 + sixteenth);
    assert_eq!(thing(&report, "Side sill").text, "7/8 in below its sill");
}

/// Worked out beside the job: the cap at (3, 4) needs about 3 1/2 in, the lawn lies 1 to 1 1/2 in below a flush edge. The bay's weep
/// holes lie 0.085 ft below the floor at the house, and the floor falls 0.229 ft in 16 ft: 0.676 in at 2 ft out, told as 3/4 in.
#[test]
fn the_patios_things_are_told_as_worked_apart() {
    let report = report(PATIO);
    let room = |name: &str| thing(&report, name).room.unwrap().us;
    assert!((room("Cleanout") + 3.5).abs() <= 1.0 / 16.0, "{}", room("Cleanout"));
    let bay = thing(&report, "Bay wall");
    assert_eq!(bay.verdict, "fail");
    let covered = -bay.checks[0].room.as_ref().unwrap().us;
    assert!((covered - 12.0 * (0.085 - 0.229 / 8.0)).abs() < 0.005, "{covered}");
    let lawn = thing(&report, "Lawn edge");
    assert_eq!(lawn.verdict, "pass");
    assert!(lawn.room.unwrap().us > 0.75);
    assert_eq!(thing(&report, "Back steps").verdict, "fail");
}

#[test]
fn a_door_that_is_demanded_stands_in_the_conflict() {
    let text = door("demanded = true").replace("needed = \"9 ft\"", "needed = \"117 in\"");
    let conflict = report(&text).new_floor.unwrap().conflict.unwrap();
    assert!(conflict.sets.iter().any(|set| set.demands.iter().any(|name| name == "Sliding door")));
    let kept = report(&door("demanded = true"));
    assert!(kept.new_floor.as_ref().unwrap().conflict.is_none());
    assert!(
        kept.new_floor.unwrap().solved.unwrap().demands.iter().any(|demand| demand.name == "Sliding door")
    );
}

#[test]
fn what_cannot_be_demanded_is_refused() {
    let buried = "[[clearances]]\nname = \"Pipes\"\nkind = \"buried_service\"\nat = [{ x = \"3 ft\", y = \"3 ft\" }]\ndemanded = true\n\n[order]";
    refused(&STORE.replace("[order]", buried), Code::Contradiction, "clearances[2].demanded");
    let level = "[finish]\nlevel = \"99.6 ft\"\n";
    let (start, end) = (STORE.find("[finish]").unwrap(), STORE.find("[[limits]]").unwrap());
    let level = format!("{}{level}\n{}", &STORE[..start], &STORE[end..]);
    let level = level.replace("runs_outside = false\n", "runs_outside = false\ndemanded = true\n");
    refused(&level, Code::Contradiction, "clearances[0].demanded");
}

#[test]
fn failures_name_the_jobs_own_keys() {
    refused(&door("may_lose = \"2 in\""), Code::MeasureNotRead, "clearances[0].may_lose");
    refused(&door("gap = \"-2 in\""), Code::OutOfRange, "clearances[0].gap");
    refused(&STORE.replace("y = \"27 ft\" }", "y = \"97 ft\" }"), Code::ThingOffFloor, "clearances[1].at");
    refused(&STORE.replace(", { x = \"16 ft\", y = \"0 in\" }", ""), Code::LineNeeded, "clearances[0].at");
    let rods = "ground_rods = [\"4.60 ft\", \"4.58 ft\", \"4.55 ft\"]";
    refused(
        &PATIO.replace(rods, "ground_rods = [\"4.60 ft\"]"),
        Code::GroundMissing,
        "clearances[4].ground_rods",
    );
    refused(
        &PATIO.replace(rods, "ground_rods = [\"4.60 ft\", \"460 ft\", \"4 ft\"]"),
        Code::OutOfRange,
        "clearances[4].ground_rods[1]",
    );
}
