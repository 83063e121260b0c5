//! Published level books, laws of levelling, and what is refused.

mod laws;
mod lines;
mod published;
mod refused;

use super::{Benchmark, LevelBook, SetUp, Sight, Tolerances};
use crate::quantity::elevation::{foot as elevation_foot, meter as elevation_meter};
use crate::quantity::length::{foot, inch, meter};
use crate::quantity::{Elevation, Length};

/// Both within `allowed` of one another.
#[track_caller]
fn assert_near(left: f64, right: f64, allowed: f64) {
    assert!((left - right).abs() <= allowed, "{left} is not within {allowed} of {right}");
}

fn ft(number: f64) -> Length {
    Length::new::<foot>(number)
}

fn m(number: f64) -> Length {
    Length::new::<meter>(number)
}

fn at_ft(name: &str, number: f64) -> Benchmark {
    Benchmark::new(name, Elevation::new::<elevation_foot>(number))
}

fn at_m(name: &str, number: f64) -> Benchmark {
    Benchmark::new(name, Elevation::new::<elevation_meter>(number))
}

/// Surveying coursework problem (differential levelling notes): BM A at 100.00 ft, four set-ups, known end 94.91 ft.
fn coursework(tolerance_ft: Option<f64>) -> LevelBook {
    let legs = [
        ("BM A", 3.10, "TP1", 9.82),
        ("TP1", 6.44, "TP2", 6.96),
        ("TP2", 8.76, "TP3", 3.27),
        ("TP3", 7.12, "BM B", 10.42),
    ];
    LevelBook {
        benchmarks: vec![at_ft("BM A", 100.0), at_ft("BM B", 94.91)],
        setups: legs.map(|(from, back, to, fore)| SetUp::on(from, ft(back)).to(to, ft(fore))).into(),
        tolerances: Tolerances { recheck: None, closure: tolerance_ft.map(ft) },
    }
}

/// One set-up on a nail at 100 ft, one shot, the nail read again.
fn rechecked(first: f64, close: f64) -> LevelBook {
    let shots = vec![Sight::shot("A1", Length::new::<inch>(60.0))];
    LevelBook::single(
        at_ft("nail", 100.0),
        Length::new::<inch>(first),
        shots,
        Some(Length::new::<inch>(close)),
    )
}
