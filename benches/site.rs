//! Setting out, draining, fitting in: marks, drainage and a dozen clearances of a floor of 60 shots; flatness of 10,000 readings.

use crate::solve::survey;
use criterion::Criterion;
use overslab::asbuilt::flatness::{Factor, LineFlatness, Profile, Spacing};
use overslab::clearance::{self, Clearance, Fixture, FixtureKind, Kind, Level, Opening, OverheadDoor, Thing};
use overslab::grade::drainage::{self, Drainage};
use overslab::grade::finish::Finish;
use overslab::marks::{self, Marks};
use overslab::quantity::{Elevation, Length, Slope, Typed};
use overslab::survey::outline::Corner;
use std::hint::black_box;

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;

fn corner(x: f64, y: f64) -> Corner {
    Corner::new(Length::from_base(x * FOOT), Length::from_base(y * FOOT))
}

/// A door, and eleven caps that the floor would bury.
fn things() -> Vec<Clearance> {
    let above = |inches: f64| Level::AboveSlab(Length::from_base(inches * INCH));
    let opening = Opening {
        header: Some(above(120.0)),
        needed: Some(Length::from_base(108.0 * INCH)),
        ..Opening::default()
    };
    let door = Clearance {
        name: "big door".to_owned(),
        kind: Kind::SectionalDoor,
        line: vec![corner(4.0, 0.0), corner(16.0, 0.0)],
        thing: Thing::SectionalDoor(OverheadDoor { opening, eyes_now: None }),
    };
    let cap = |index: u32| Clearance {
        name: format!("cleanout {index}"),
        kind: Kind::Cleanout,
        line: vec![corner(2.0 + f64::from(index), 10.0)],
        thing: Thing::Fixture(Fixture { kind: FixtureKind::Cleanout, level: Some(above(1.0)), free: None }),
    };
    std::iter::once(door).chain((1..12).map(cap)).collect()
}

/// Benches of what goes to the site and of what came back from it.
pub(crate) fn benches(criterion: &mut Criterion) {
    let floor = survey(60);
    let fall = Slope::from_base(0.125 / 12.0);
    let finish = Finish::to_edge(floor.outline(), "front", Elevation::from_base(30.15), fall).unwrap();
    let line = marks::Asked { line: Some(Elevation::from_base(31.0)), ..marks::Asked::default() };
    let asked = drainage::Asked::default();
    let things = things();
    let mut group = criterion.benchmark_group("a floor of 60 shots");
    group.bench_function("marks", |b| {
        b.iter(|| Marks::set_out(black_box(&floor), black_box(&finish), &line).unwrap());
    });
    group.bench_function("drainage", |b| {
        b.iter(|| Drainage::of(black_box(&floor), black_box(&finish), &asked).unwrap());
    });
    group.bench_function("12 clearances", |b| {
        b.iter(|| clearance::clearances(black_box(&floor), black_box(&finish), &things).unwrap());
    });
    group.finish();
    let heights: Vec<f64> = (0..10_000)
        .map(|index| 30.0 + 0.003 * (f64::from(index) * 0.618_033_988_749_894_9).fract())
        .collect();
    criterion.bench_function("flatness and levelness of 10,000 readings", |b| {
        b.iter(|| {
            let profile = Profile::new(Spacing::Inches12, black_box(&heights)).unwrap();
            LineFlatness::of(&profile, Factor::Inches)
        });
    });
}
