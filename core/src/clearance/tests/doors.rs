//! The same raise at every kind of vehicle door, and at a door for people: each has consequences of its own.

use super::{judged, length};
use crate::caution::Caution;
use crate::clearance::{Judgement, Kind, Measures, Task, Trade, Verdict};
use crate::quantity::Typed;

fn door(kind: Kind) -> Judgement {
    let mut measures = Measures::default();
    if kind == Kind::PassageDoor {
        measures.gap_now = Some(length("3/8 in"));
    } else {
        measures.above_slab = Some(length("10 ft"));
        measures.needed = Some(length("9 ft"));
    }
    match kind {
        Kind::SwingingDoor | Kind::PassageDoor => measures.may_lose = Some(length("4 in")),
        Kind::SlidingDoor => measures.runs_outside = Some(false),
        _ => {}
    }
    judged(kind, measures, "3 in")
}

const DOORS: [Kind; 5] =
    [Kind::SectionalDoor, Kind::RollDoor, Kind::SwingingDoor, Kind::SlidingDoor, Kind::PassageDoor];

/// Common practice, no source: a floor raised by 3 in is met by raising the doors, each kind in its own way.
#[test]
fn one_raise_has_five_consequences() {
    let wanted: [(&[Task], &str, &[Caution]); 5] = [
        (
            &[Task::TrimTracks, Task::RetensionSprings, Task::ResetOpener],
            "Trim the door's tracks by 3 in; re-tension the springs; reset the opener's travel and its eyes, up by 3 in.",
            &[Caution::Springs],
        ),
        (
            &[Task::TrimGuides, Task::ResetStops],
            "Trim the curtain's guides by 3 in; reset the drum's limit switches so that the curtain stops 3 in sooner.",
            &[Caution::Springs],
        ),
        (
            &[Task::CutLeaves, Task::MoveBolts],
            "Cut both leaves by 3 in at the bottom; shorten the bottom bolts and set their sockets in the new floor.",
            &[],
        ),
        (
            &[Task::CutOrRaiseTrack, Task::ResetFloorGuide],
            "Cut the sliding leaf by 3 in or raise its track as much; re-set the floor guide or bottom rail in the new floor.",
            &[],
        ),
        (&[Task::CutLeaf], "Cut the leaf by 3 in at the bottom.", &[Caution::FireDoor]),
    ];
    for (kind, (tasks, forces, cautions)) in DOORS.into_iter().zip(wanted) {
        let judgement = door(kind);
        assert_eq!(judgement.verdict(), Verdict::Pass, "{}", kind.word());
        let had: Vec<Task> = judgement.works.iter().map(|work| work.task).collect();
        assert_eq!((had.as_slice(), judgement.forces().as_str()), (tasks, forces), "{}", kind.word());
        assert_eq!(judgement.cautions, cautions, "{}", kind.word());
    }
}

#[test]
fn no_two_kinds_of_door_share_a_consequence() {
    let said: Vec<(Vec<Task>, String)> = DOORS
        .map(|kind| {
            let judgement = door(kind);
            (judgement.works.iter().map(|work| work.task).collect(), judgement.forces())
        })
        .into();
    for (index, (tasks, forces)) in said.iter().enumerate() {
        for (others, other) in &said[index + 1..] {
            assert_ne!(forces, other);
            assert!(tasks.iter().all(|task| !others.contains(task)), "{tasks:?} {others:?}");
        }
    }
}

#[test]
fn springs_are_the_door_technicians_and_headers_the_engineers() {
    assert_eq!(Task::RetensionSprings.trade(), Trade::DoorTechnician);
    let mut measures = Measures { above_slab: Some(length("9 ft")), ..Measures::default() };
    measures.needed = Some(length("9 ft"));
    let judgement = judged(Kind::SectionalDoor, measures, "3 in");
    assert_eq!(judgement.verdict(), Verdict::Fail);
    assert!(judgement.cautions.contains(&Caution::CutHeader));
    let header = judgement.works.iter().find(|work| work.task == Task::RaiseHeader).unwrap();
    assert_eq!(header.task.trade(), Trade::Engineer);
    super::close(header.by.unwrap().base(), 3.0 * 0.0254);
}

#[test]
fn a_leaf_outside_the_wall_hangs_as_it_does() {
    let measures = Measures {
        above_slab: Some(length("10 ft")),
        needed: Some(length("9 ft")),
        runs_outside: Some(true),
        ..Measures::default()
    };
    let judgement = judged(Kind::SlidingDoor, measures, "3 in");
    assert_eq!((judgement.verdict(), judgement.forces().as_str()), (Verdict::Pass, ""));
}

#[test]
fn a_floor_that_is_not_raised_forces_nothing() {
    for kind in DOORS {
        let mut measures = Measures { gap_now: Some(length("1 in")), ..Measures::default() };
        if kind != Kind::PassageDoor {
            measures.above_slab = Some(length("10 ft"));
            measures.needed = Some(length("9 ft"));
        }
        if matches!(kind, Kind::SectionalDoor | Kind::RollDoor) {
            measures.gap_now = None;
        }
        if kind == Kind::SlidingDoor {
            measures.runs_outside = Some(false);
        }
        let judgement = judged(kind, measures, "0 in");
        assert_eq!(
            (judgement.verdict(), judgement.forces().as_str()),
            (Verdict::Pass, ""),
            "{}",
            kind.word()
        );
    }
}
