//! Over a slab that spans free nothing of a new floor is told.

use crate::job::operations::REPORT;
use crate::job::{Job, JobFile, Report, SuspectReport};
use crate::operation::{Value, call::invoke};

const STORE: &str = include_str!("../../../../../examples/boat_store.toml");
const PATIO: &str = include_str!("../../../../../examples/settled_patio.toml");
const BAY: &str = include_str!("../../../../../examples/wash_bay.toml");
const SHED: &str = include_str!("../../../../../examples/potting_shed.toml");

fn report(text: &str) -> Report {
    Job::read(text).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"))
}

/// The boat store on framing.
fn framed() -> String {
    assert!(STORE.contains("rests_on = \"gravel\""));
    STORE.replace("rests_on = \"gravel\"", "rests_on = \"framing\"")
}

/// A job with nothing found on its old slab but that it spans.
fn spanning(job: &str) -> String {
    assert!(!job.contains("[old_slab]"));
    job.replace("[outline]", "[old_slab]\nsuspended = \"yes\"\n\n[outline]")
}

#[test]
fn it_is_a_stop_and_no_thickness_is_printed() {
    let report = report(&framed());
    let text = report.to_text();
    let slab = report.old_slab.as_ref().unwrap();
    assert!(slab.spans && slab.take == "stop", "{text}");
    assert!(text.lines().nth(1).unwrap().starts_with("STOP        It rests on framing"), "{text}");
    for label in ["THICKNESS", "ORDER", "Least", "Thinnest", "room for"] {
        assert!(!text.contains(label), "{label} in {text}");
    }
    assert!(text.lines().all(|line| line.chars().count() <= 100), "{text}");
    assert!(report.cautions.iter().any(|caution| caution.contains("engineer's figures")), "{text}");
}

#[test]
fn no_new_floor_stands_in_its_data() {
    for job in [framed(), spanning(BAY), spanning(SHED)] {
        let report = report(&job);
        assert_eq!(report.new_floor, None);
        assert!(report.old_slab.as_ref().unwrap().added_weight.as_ref().unwrap().us > 0.0);
        assert!(report.look_again.governing.is_empty());
        let concrete =
            |suspect: &SuspectReport| suspect.more_if_corrected.is_some() || suspect.more_without.is_some();
        assert!(!report.look_again.suspects.iter().any(concrete));
        let water = &report.standing_water;
        assert!(water.new_floor.is_none() && water.cured.is_none());
        assert!(water.old_floor.iter().all(|pond| pond.fate.is_none()));
        assert!(report.taken.iter().all(|taken| !taken.why.contains("moves")), "{:?}", report.taken);
    }
}

/// What was surveyed is told as it is over a slab on ground.
#[test]
fn what_was_surveyed_of_it_stays() {
    let on_framing = PATIO.replace("rests_on = \"ground\"", "rests_on = \"framing\"");
    assert_ne!(on_framing, PATIO);
    let (on_ground, framed) = (report(PATIO), report(&on_framing));
    assert_eq!(on_ground.old_floor, framed.old_floor);
    assert_eq!((&on_ground.level, &on_ground.clean_up), (&framed.level, &framed.clean_up));
    let shots = |report: &Report| {
        let suspects = report.look_again.suspects.iter();
        suspects.map(|suspect| (suspect.shot.clone(), suspect.text.clone())).collect::<Vec<_>>()
    };
    assert_eq!(shots(&on_ground), shots(&framed));
    let ponds = |report: &Report| {
        let ponds = report.standing_water.old_floor.iter();
        ponds.map(|pond| (pond.area.clone(), pond.depth.clone(), pond.spill.clone())).collect::<Vec<_>>()
    };
    assert!(!ponds(&framed).is_empty());
    assert_eq!(ponds(&on_ground), ponds(&framed));
}

/// A new floor of another height leaves the report as it is, but for what it would weigh.
#[test]
fn the_height_asked_for_is_seen_only_in_the_weight() {
    let thicker = framed().replace("least = \"3 in\"", "least = \"3 1/2 in\"");
    assert_ne!(thicker, framed());
    let (mut one, mut other) = (report(&framed()), report(&thicker));
    let weight = |report: &mut Report| report.old_slab.as_mut().unwrap().added_weight.take().unwrap().us;
    assert!(weight(&mut one) < weight(&mut other));
    assert_eq!(one, other);
}

#[test]
fn the_row_gives_no_figure() {
    let job = JobFile::read(&framed()).unwrap();
    let answer = invoke(&REPORT, vec![Value::record(job), Value::Absent]).unwrap();
    let absent = |value: &Value| matches!(value, Value::Absent);
    let (figures, texts) = answer.results.split_at(REPORT.results.len() - 2);
    assert!(figures.iter().all(absent) && !texts.iter().any(absent), "{:?}", answer.results);
}
