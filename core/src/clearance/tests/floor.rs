//! Where things meet a surveyed floor.

use super::{close, length};
use crate::clearance::{Clearance, Kind, Measures, Verdict, clearances};
use crate::failure::{Code, Place};
use crate::grade::finish::Finish;
use crate::job::Job;
use crate::quantity::{Slope, Typed, read};
use crate::survey::Survey;
use crate::survey::outline::Corner;

/// The boat store of the examples, an invented job.
fn boat_store() -> Survey {
    Job::read(include_str!("../../../../examples/boat_store.toml")).unwrap().surveyed().unwrap()
}

/// Its floor as the trade would lay it: 1/8 in per ft to the front, so high at the front.
fn falling(survey: &Survey, front: &str) -> Finish {
    let fall: Slope = read("1/8 in/ft").unwrap();
    Finish::to_edge(survey.outline(), "front", read(front).unwrap(), fall).unwrap()
}

fn at(kind: Kind, places: &[[&str; 2]], measures: Measures) -> Clearance {
    let line = places.iter().map(|[x, y]| Corner::new(length(x), length(y))).collect();
    Clearance { name: kind.word().to_owned(), kind, line, thing: measures.thing(kind).unwrap() }
}

fn big_door() -> Clearance {
    let measures = Measures {
        above_slab: Some(length("10 ft")),
        needed: Some(length("9 ft")),
        runs_outside: Some(false),
        ..Measures::default()
    };
    at(Kind::SlidingDoor, &[["4 ft", "0 ft"], ["16 ft", "0 ft"]], measures)
}

/// Worked out beside the job: rod 4' 9 1/16" at the door, 3 3/8 to 3 3/4 in lost, 9' 8 1/4" left at least.
#[test]
fn the_boat_stores_big_door_loses_what_was_worked_out() {
    let survey = boat_store();
    // Nail at 100 ft, rod 4' 2 1/2" on it.
    let finish = falling(&survey, "99.453125 ft");
    let judged = clearances(&survey, &finish, &[big_door()]).unwrap();
    let rise = judged[0].floor.rise().map(|rise| rise.base() / 0.0254);
    assert!((3.375 - 1.0 / 16.0..=3.75 + 1.0 / 16.0).contains(&rise[0]), "{rise:?}");
    assert!(rise[1] <= 3.75 + 1.0 / 16.0, "{rise:?}");
    assert_eq!(judged[0].verdict(), Verdict::Pass);
    let opening = &judged[0].judgement.checks[0];
    assert!(opening.room.unwrap().base() / 0.0254 >= 8.25 - 1.0 / 16.0, "{}", opening.text);
}

#[test]
fn a_thing_in_the_wall_is_met_at_the_floors_edge() {
    let survey = boat_store();
    let finish = falling(&survey, "99.45 ft");
    let measures = Measures { above_slab: Some(length("4 in")), ..Measures::default() };
    let on = |x: &str| at(Kind::WallSill, &[[x, "16 ft"]], measures.clone());
    let judged = clearances(&survey, &finish, &[on("0 ft"), on("-8 in")]).unwrap();
    assert_eq!(judged[0].floor.rise(), judged[1].floor.rise());
    close(judged[1].floor.moved().base(), 8.0 * 0.0254);
    let failure = clearances(&survey, &finish, &[on("0 ft"), on("-9 ft")]).unwrap_err();
    assert_eq!((failure.code, failure.place), (Code::ThingOffFloor, Place::Index(1)));
}

#[test]
fn a_line_is_met_all_along_and_not_only_at_its_ends() {
    let survey = boat_store();
    let finish = Finish::level(read("99.6 ft").unwrap()).unwrap();
    let measures = Measures { above_slab: Some(length("1 ft")), ..Measures::default() };
    let whole = at(Kind::WallSill, &[["7 ft", "0.5 ft"], ["7 ft", "31.5 ft"]], measures.clone());
    let ends =
        [["7 ft", "0.5 ft"], ["7 ft", "31.5 ft"]].map(|end| at(Kind::WallSill, &[end], measures.clone()));
    let judged = clearances(&survey, &finish, &[whole, ends[0].clone(), ends[1].clone()]).unwrap();
    let [least, greatest] = judged[0].floor.rise();
    assert!(least.base() <= judged[2].floor.rise()[0].base() + 1e-12);
    assert!(greatest.base() >= judged[1].floor.rise()[1].base() - 1e-12);
}

#[test]
fn a_door_wants_both_its_jambs() {
    let survey = boat_store();
    let finish = Finish::level(read("99.6 ft").unwrap()).unwrap();
    for places in [&[["4 ft", "0 ft"]][..], &[["4 ft", "0 ft"], ["4 ft", "0 ft"]]] {
        let door = at(Kind::RollDoor, places, Measures::default());
        assert_eq!(clearances(&survey, &finish, &[door]).unwrap_err().code, Code::LineNeeded);
    }
}

/// A floor that rises inward lifts more under leaves that swing in over it than on the door's line.
#[test]
fn leaves_that_swing_in_clear_the_floor_behind_them() {
    use crate::clearance::Swing;
    let survey = boat_store();
    let finish = falling(&survey, "99.45 ft");
    let cut = |swing: Swing| {
        let measures = Measures { swing: Some(swing), may_lose: Some(length("8 in")), ..Measures::default() };
        let door = at(Kind::SwingingDoor, &[["4 ft", "0 ft"], ["16 ft", "0 ft"]], measures);
        clearances(&survey, &finish, &[door]).unwrap()[0].judgement.works[0].by.unwrap().base()
    };
    // Each leaf is 6 ft wide: 6/8 in.
    close(cut(Swing::In) - cut(Swing::Out), 0.75 * 0.0254);
}
