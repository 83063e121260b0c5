//! Odd but lawful, and nasty.

use super::*;
use crate::failure::{Code, Failure};

fn shots(places: &[[f64; 3]]) -> Value {
    let one = |[x, y, z]: &[f64; 3]| json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft")});
    places.iter().map(one).collect()
}

fn refusal(outline: Value, key: &str, heights: Value) -> Box<Failure> {
    Survey::from_json(json!({"outline": outline, key: heights})).expect_err("a refusal")
}

/// Shots one foot from the walls of 12 by 30 ft.
const LONG: [[f64; 3]; 6] = [
    [1.0, 1.0, 99.0],
    [11.0, 1.0, 99.1],
    [11.0, 15.0, 99.0],
    [1.0, 15.0, 99.1],
    [1.0, 29.0, 99.0],
    [11.0, 29.0, 99.2],
];

#[test]
fn swapped_axes_are_said() {
    let swapped = LONG.map(|[x, y, z]| [y, x, z]);
    let failure = refusal(rectangle(12.0, 30.0), "shots", shots(&swapped));
    assert_eq!((failure.code, failure.path.as_str()), (Code::ShotOutside, "shots"));
    assert!(
        failure.remedy.starts_with("the shots fit the outline with x and y swapped"),
        "{}",
        failure.remedy
    );
    let grid = json!({"columns": ["1 ft", "15 ft", "29 ft"], "rows": ["1 ft", "11 ft"], "elevations": vec!["99 ft"; 6]});
    let failure = refusal(rectangle(12.0, 30.0), "grid", grid);
    assert!(failure.remedy.contains("x and y swapped"), "{}", failure.remedy);
    let faces = json!({"points": shots(&swapped), "triangles": [[1, 2, 3], [1, 3, 4], [4, 3, 6], [4, 6, 5]]});
    let failure = refusal(rectangle(12.0, 30.0), "faces", faces);
    assert_eq!(failure.code, Code::BeyondShots);
    assert!(failure.remedy.contains("x and y swapped"), "{}", failure.remedy);
}

#[test]
fn a_slip_of_the_unit_is_said() {
    for (times, said) in [
        (1.0 / 0.3048, "in feet in place of meters"),
        (0.3048, "in meters in place of feet"),
        (12.0, "in inches in place of feet"),
        (1000.0, "in millimeters in place of meters"),
    ] {
        let read = LONG.map(|[x, y, z]| [x * times, y * times, z]);
        let failure = refusal(rectangle(12.0, 30.0), "shots", shots(&read));
        assert!(failure.remedy.contains(said), "{times}: {}", failure.remedy);
    }
}

#[test]
fn no_slip_is_said_where_none_explains_it() {
    let mut places = LONG;
    places[5] = [40.0, 29.0, 99.0];
    let failure = refusal(rectangle(12.0, 30.0), "shots", shots(&places));
    assert_eq!(failure.code, Code::ShotOutside);
    assert_eq!(failure.remedy, "check its place, or mark it as outside on purpose");
}

#[test]
fn a_hundred_thousand_shots_at_one_place_are_too_few_or_two_heights() {
    use crate::survey::old_slab::{Marks, Settings, Shots};
    use crate::survey::surface::Shot;
    let outline = survey(json!({"outline": rectangle(12.0, 30.0), "shots": shots(&LONG)})).outline().clone();
    let made = |height: fn(u32) -> f64| {
        let shots = (0..100_000).map(|i| Shot::new(2.0, 3.0, height(i))).collect();
        Survey::new(
            outline.clone(),
            Shots::Scattered(Marks { shots, names: Vec::new() }),
            Settings::default(),
        )
        .expect_err("no surface")
    };
    let failure = made(|_| 30.0);
    assert_eq!((failure.code, failure.written.as_str()), (Code::TooFewShots, "100000 shots at 1 places"));
    assert_eq!(made(|i| 30.0 + f64::from(i) * 1e-6).code, Code::TwoHeights);
}

#[test]
fn a_grid_with_a_missing_shot_is_surveyed_and_written_out_with_it() {
    let survey = survey(json!({"outline": rectangle(12.0, 30.0), "grid": {
        "columns": ["1 ft", "11 ft"], "rows": ["1 ft", "15 ft", "29 ft"],
        "elevations": ["99 ft", "99 ft", "none", "99.1 ft", "99.2 ft", "99.2 ft"]}}));
    assert_eq!(survey.facts().shots, 5);
    assert_canonical(&survey);
}
