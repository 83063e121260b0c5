//! Steps as a crew writes them.

use super::*;
use crate::failure::Code;
use crate::note::NoteCode;
use crate::quantity::Typed;

/// A slab of 12 by 10 ft with a step of 3 in along y = 6 ft, by pairs of shots.
fn pairs() -> Vec<Value> {
    let shot = |name: &str, x: f64, y: f64, z: f64, step: bool| {
        let mut one = json!({"name": name, "x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft")});
        if step {
            one["step"] = json!(true);
        }
        one
    };
    vec![
        shot("A1", 0.0, 0.0, 99.0, false),
        shot("B1", 12.0, 0.0, 99.0, false),
        shot("A2 low", 0.0, 6.0, 99.0, true),
        shot("A2 high", 0.0, 6.0, 99.25, true),
        shot("B2 low", 12.0, 6.0, 99.0, true),
        shot("B2 high", 12.0, 6.0, 99.25, true),
        shot("A3", 0.0, 10.0, 99.25, false),
        shot("B3", 12.0, 10.0, 99.25, false),
    ]
}

/// Mean height in feet.
fn mean(survey: &Survey) -> f64 {
    survey.facts().mean.base() / 0.3048
}

#[test]
fn a_step_by_pairs_of_shots_is_surveyed_noted_and_written_out() {
    let survey = survey(json!({"outline": rectangle(12.0, 10.0), "shots": pairs()}));
    assert!((mean(&survey) - (99.0 + 0.25 * 0.4)).abs() < 1e-12);
    let note = survey.notes().iter().find(|note| note.code == NoteCode::Step).expect("a note");
    assert!(note.text.starts_with("a step from A2 low to B2 low, 3\""), "{}", note.text);
    assert!(note.text.ends_with("the higher side toward A3"), "{}", note.text);
    assert_canonical(&survey);
}

#[test]
fn a_grid_row_written_twice_is_a_step_where_that_is_said() {
    let grid = |steps: bool| {
        json!({"outline": rectangle(12.0, 10.0), "grid": {
            "columns": ["1 ft", "11 ft"], "rows": ["1 ft", "6 ft", "6 ft", "9 ft"], "steps": steps,
            "elevations": ["99 ft", "99 ft", "99 ft", "99 ft", "99.25 ft", "99.25 ft", "99.25 ft", "99.25 ft"]}})
    };
    let survey = survey(grid(true));
    assert!((mean(&survey) - (99.0 + 0.25 * 0.4)).abs() < 1e-12);
    assert_canonical(&survey);
    let failure = Survey::from_json(grid(false)).expect_err("a slip");
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutOfRange, "grid.rows"));
}

#[test]
fn a_row_of_rods_written_twice_is_a_step() {
    let row = |y: &str, rod: &str| json!({"y": y, "rods": [rod, rod]});
    let survey = survey(json!({"outline": rectangle(12.0, 10.0), "level": {
        "benchmarks": [{"name": "sill", "elevation": "100 ft"}], "columns": ["1 ft", "11 ft"], "steps": true,
        "setups": [{"on": "sill", "rod": "4 ft", "rows": [
            row("1 ft", "5 ft"), row("6 ft", "5 ft"), row("6 ft", "4.75 ft"), row("9 ft", "4.75 ft")]}]}}));
    assert!((mean(&survey) - (99.0 + 0.25 * 0.4)).abs() < 1e-12, "{}", mean(&survey));
}

#[test]
fn what_is_missing_of_a_step_is_said_by_the_names_of_its_shots() {
    let mut shots = pairs();
    shots.remove(3);
    let failure =
        Survey::from_json(json!({"outline": rectangle(12.0, 10.0), "shots": shots})).expect_err("no pair");
    assert_eq!((failure.code, failure.path.as_str()), (Code::StepUnresolved, "shots"));
    assert!(
        failure.written.starts_with("A2 low is marked as a step and has no partner"),
        "{}",
        failure.written
    );
}
