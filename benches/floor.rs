//! One rectangular floor of 40 shots: surface, finish, thickness and volume; and a whole job.

use criterion::Criterion;
use overslab::grade::finish::Finish;
use overslab::grade::thickness::Thickness;
use overslab::job::JobFile;
use overslab::quantity::{Elevation, elevation::foot};
use overslab::survey::Survey;
use overslab::survey::input::OutlineInput;
use overslab::survey::old_slab::{Grid, Marks, Settings, Shots};
use overslab::survey::outline::Outline;
use overslab::survey::surface::Shot;
use std::hint::black_box;

const FOOT: f64 = 0.3048;
const COLUMNS: usize = 5;
const ROWS: usize = 8;

fn outline() -> Outline {
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 32.0), (0.0, 32.0)];
    let text: Vec<String> =
        corners.iter().map(|(x, y)| format!(r#"{{"x": "{x} ft", "y": "{y} ft"}}"#)).collect();
    let json = format!(r#"{{"corners": [{}]}}"#, text.join(","));
    let input: OutlineInput = overslab::operation::record::parse(json.parse().unwrap()).unwrap();
    input.build().unwrap().outline
}

/// A height that no plane follows.
fn height(index: usize) -> f64 {
    30.0 + 0.02 * ((index * 7919 % 101) as f64 / 101.0)
}

fn grid() -> Grid {
    Grid {
        columns: (0..COLUMNS).map(|c| (0.5 + 4.75 * c as f64) * FOOT).collect(),
        rows: (0..ROWS).map(|r| (0.5 + 4.4 * r as f64) * FOOT).collect(),
        heights: (0..COLUMNS * ROWS).map(|index| Some(height(index))).collect(),
        steps: false,
    }
}

fn scattered() -> Marks {
    let grid = grid();
    let off = |index: usize| 0.3 * ((index * 104_729 % 97) as f64 / 97.0 - 0.5);
    let shot = |index: usize| {
        let (x, y) = (grid.columns[index % COLUMNS], grid.rows[index / COLUMNS]);
        Shot::new(x + off(index + 1), y + off(index + 50), height(index))
    };
    Marks { shots: (0..COLUMNS * ROWS).map(shot).collect(), names: Vec::new() }
}

fn thickness(outline: &Outline, shots: Shots, finish: &Finish) -> Thickness {
    let survey = Survey::new(outline.clone(), shots, Settings::default()).unwrap();
    Thickness::of(&survey, finish, None).unwrap()
}

pub(crate) fn benches(c: &mut Criterion) {
    let (outline, grid, marks) = (outline(), grid(), scattered());
    let finish = Finish::level(Elevation::new::<foot>(99.0)).unwrap();
    let mut group = c.benchmark_group("surface, thickness and volume of 40 shots");
    group.bench_function("by rows and columns", |b| {
        b.iter(|| thickness(&outline, Shots::Grid(black_box(grid.clone())), &finish));
    });
    group.bench_function("scattered", |b| {
        b.iter(|| thickness(&outline, Shots::Scattered(black_box(marks.clone())), &finish));
    });
    group.finish();
    c.bench_function("the boat store, from text to report", |b| {
        let text = include_str!("../examples/boat_store.toml");
        b.iter(|| JobFile::read(black_box(text)).and_then(|job| job.report()).unwrap().to_text());
    });
}
