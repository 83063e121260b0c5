//! Water and approaches in a job.

use crate::failure::Code;
use crate::job::{Job, Report};

const BAY: &str = include_str!("../../../../../examples/wash_bay.toml");
const STORE: &str = include_str!("../../../../../examples/boat_store.toml");

fn report(text: &str) -> Report {
    Job::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"))
}

/// The boat store with an approach to its big door, level ground 5 ft of rod out.
fn with_approach(more: &str) -> String {
    let approach = format!(
        "[[approaches]]\nname = \"Yard\"\nat = [{{ x = \"4 ft\", y = \"0 in\" }}, {{ x = \"16 ft\", y = \"0 in\" }}]\n\
         profile = [{{ distance = \"0 ft\", rod = \"5 ft\" }}, {{ distance = \"10 ft\", rod = \"ROD\" }}]\n{more}\n"
    );
    format!("{STORE}\n{approach}")
}

#[test]
fn the_wash_bay_drains_to_its_drain() {
    let report = report(BAY);
    let drainage = report.new_floor.as_ref().unwrap().drainage.as_ref().unwrap();
    // Two of its planes fall less than a broomed floor should, by a number from memory.
    assert_eq!((drainage.judged.as_str(), drainage.held.us), ("confirm locally", 0.0));
    assert!(drainage.faults.iter().all(|fault| fault.fault == "too little"));
    assert_eq!(drainage.surface.as_deref(), Some("broomed"));
    let areas: f64 = drainage.catchments.iter().map(|of| of.area.us).sum();
    assert!((areas - report.old_floor.area.us).abs() < 1e-6 * areas, "{areas}");
    assert!(drainage.catchments.iter().all(|of| of.end == "drain" || of.end == "edge"));
    let text = report.to_text();
    assert!(text.contains("Runs off:") && text.contains("to drain"), "{text}");
    assert!(text.contains("guidance for a broomed floor"), "{text}");
}

#[test]
fn without_the_key_the_report_says_nothing_of_it() {
    let report = report(STORE);
    let floor = report.new_floor.as_ref().unwrap();
    assert!(floor.drainage.is_none() && floor.approaches.is_empty());
    assert!(!report.to_text().contains("APPROACH"));
}

/// The boat store's front is level at rod 4' 9": ground at rod 4' 11 1/2" ten feet out wants 2.4 in over itself, rod 4' 9.1".
#[test]
fn an_approach_is_held_against_the_floor() {
    let report = report(&with_approach("").replace("ROD", "4' 11 1/2\\\""));
    let yard = &report.new_floor.as_ref().unwrap().approaches[0];
    assert!((yard.spare.us - 0.1).abs() < 1e-6, "{:?}", yard.spare);
    assert!(yard.high_enough);
    // The ground rises half an inch to ten feet out: a drain, or the fail is told.
    assert_eq!(yard.judged, "fail");
    assert!((yard.trench_reach.us - 10.0).abs() < 1e-9);
    assert!(report.to_text().contains("APPROACH    Yard: floor 4' 9\""), "{}", report.to_text());
}

/// Demanded, the ground outside lifts the floor, and where that cannot be the conflict names it.
#[test]
fn a_demanded_approach_is_a_demand_of_the_finish() {
    let kept = report(&with_approach("demanded = true").replace("ROD", "4' 11 1/4\\\""));
    let demand = |report: &Report| {
        let solved = report.new_floor.as_ref().unwrap().solved.as_ref().unwrap();
        solved.demands.iter().any(|demand| demand.name == "Yard: water away")
    };
    assert!(
        demand(&kept)
            && kept.new_floor.as_ref().unwrap().conflict.is_none()
            && kept.new_floor.as_ref().unwrap().approaches[0].high_enough
    );
    let report = report(&with_approach("demanded = true").replace("ROD", "4' 10\\\""));
    let conflict = report.new_floor.as_ref().unwrap().conflict.as_ref().unwrap();
    assert!(conflict.sets.iter().any(|set| set.demands.iter().any(|name| name == "Yard: water away")));
    assert!(conflict.sets.iter().any(|set| set.demands.iter().any(|name| name == "Big door")));
}

#[test]
fn a_demanded_approach_wants_a_finish_that_is_solved_for() {
    let text = with_approach("demanded = true").replace("ROD", "5 ft");
    let unsolved = text.replace("[finish.solve]\nlevel = [\"front\"]\nround_fall = \"1/16 in/ft\"\n", "");
    let failure = Job::read(&unsolved).and_then(|job| job.report()).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "approaches[0].demanded"));
}

#[test]
fn refusals_stand_at_the_keys_of_the_job() {
    let refused = |text: &str| {
        let failure = Job::read(text).and_then(|job| job.report()).unwrap_err();
        (failure.code, failure.path.clone())
    };
    let beyond = with_approach("tie_in = \"12 ft\"").replace("ROD", "5 ft");
    assert_eq!(refused(&beyond), (Code::TieInBeyond, "approaches[0].tie_in".to_owned()));
    let both = with_approach("").replace("rod = \"ROD\"", "rod = \"5 ft\", elevation = \"99 ft\"");
    assert_eq!(refused(&both), (Code::Contradiction, "approaches[0].profile[1].elevation".to_owned()));
    let hose = BAY.replace("hose = \"10 gal/min\"", "hose = \"9000 gal/min\"");
    assert_eq!(refused(&hose), (Code::OutOfRange, "drainage.hose".to_owned()));
    let wave = BAY.replace("hose = \"10 gal/min\"", "wave_length = \"0 ft\"");
    assert_eq!(refused(&wave), (Code::OutOfRange, "drainage.wave_length".to_owned()));
}
