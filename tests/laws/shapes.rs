//! Neither the order of the shots, nor where the axes lie, nor the units change the shapes of the thickness or a section.

use super::assert_near;
use super::random::Random;
use super::work::{Place, Work, columns, length, run, works};
use overslab::operation::{Column, Columns, Value, call};
use overslab::operations::find;
use overslab::quantity::System;
use serde_json::{Value as Json, json};

const DEPTH: f64 = 0.05;
const LEVELS: [f64; 3] = [0.03, 0.05, 0.08];

/// What does not depend on the axes, in metres.
#[derive(Debug)]
struct Shapes {
    /// Area, volume and extreme of every thin part, the largest first.
    parts: Vec<[f64; 3]>,
    /// Level and length of every line.
    lines: Vec<[f64; 2]>,
    /// Area and volume of every band.
    bands: Vec<[f64; 2]>,
    quantiles: Vec<f64>,
    /// Covered length, net area, fill, least and greatest thickness of a section.
    section: [f64; 5],
}

fn shapes(work: &Work, line: &[Place], system: System) -> Shapes {
    let (survey, finish) = (work.survey(system), work.finished(system));
    let ask = |name: &str, args: Json| {
        run(name, args, vec![("survey", survey.clone()), ("finish", finish.clone())], system)
    };
    let small = |metres: f64| length(metres, system) * if system == System::Us { 12.0 } else { 1000.0 };
    let levels = json!({ "level": LEVELS.map(small) });
    let line = columns(&["x", "y"], line.iter().map(|place| place.to_vec()), system);
    let section = ask("section", json!({ "line": line }));
    let number = |name: &str| {
        let place = find("section").unwrap().results.iter().position(|port| port.name == name);
        call::flat_number(&section[place.unwrap()])
    };
    Shapes {
        parts: rows(&ask("thickness_areas", json!({ "depth": small(DEPTH) }))[2], [1, 2, 3]),
        lines: rows(&ask("thickness_contours", json!({ "levels": levels }))[0], [1, 3]),
        bands: rows(&ask("thickness_bands", json!({ "levels": levels }))[0], [3, 5]),
        quantiles: rows(&ask("thickness_histogram", json!({ "levels": levels }))[3], [1])
            .iter()
            .map(|[t]| *t)
            .collect(),
        section: ["covered", "net", "fill", "least", "greatest"].map(number),
    }
}

/// Columns of a table, row by row.
fn rows<const N: usize>(table: &Value, columns: [usize; N]) -> Vec<[f64; N]> {
    let Value::Table(Columns { rows, columns: all }) = table else { panic!("{table:?}") };
    let number = |column: usize, row: usize| match &all[column] {
        Column::Numbers(list) => list[row],
        other => panic!("{other:?}"),
    };
    (0..*rows).map(|row| columns.map(|column| number(column, row))).collect()
}

fn assert_same(found: &Shapes, expected: &Shapes, what: &str) {
    // Some ten metres across, heights of 30 m.
    let flat = |shapes: &Shapes| -> Vec<f64> {
        let parts = shapes.parts.iter().flatten().chain(shapes.lines.iter().flatten());
        parts
            .chain(shapes.bands.iter().flatten())
            .chain(&shapes.quantiles)
            .chain(&shapes.section)
            .copied()
            .collect()
    };
    assert_eq!(found.parts.len(), expected.parts.len(), "{what}: parts");
    assert_eq!(found.lines.len(), expected.lines.len(), "{what}: lines");
    for (a, b) in flat(found).into_iter().zip(flat(expected)) {
        assert_near(a, b, 100.0, what);
    }
}

fn check(change: impl Fn(&Work, &mut Random) -> Work, map: impl Fn(Place) -> Place, system: System) {
    let line = [[-1.0, 0.7], [3.1, 2.9], [2.2, 9.0]];
    for (seed, (what, work)) in works(6).enumerate() {
        let expected = shapes(&work, &line, System::Si);
        let changed = change(&work, &mut Random::new(seed as u64 + 900));
        assert_same(&shapes(&changed, &line.map(&map), system), &expected, &what);
    }
}

#[test]
fn any_order_of_the_shots_draws_the_same() {
    let shuffled = |work: &Work, random: &mut Random| {
        let mut work = work.clone();
        random.shuffle(&mut work.shots);
        work
    };
    check(shuffled, |place| place, System::Si);
}

#[test]
fn any_turn_of_the_axes_draws_the_same() {
    let (sin, cos) = 0.7_f64.sin_cos();
    let map = move |[x, y]: Place| [cos * x - sin * y + 14.0, sin * x + cos * y - 3.0];
    check(move |work, _| work.seen(map), map, System::Si);
}

#[test]
fn both_systems_of_units_draw_the_same() {
    check(|work, _| work.clone(), |place| place, System::Us);
}
