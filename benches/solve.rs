//! The finish of least concrete: 40 shots with prices, in whole steps, contradicting; and a million shots.

use criterion::Criterion;
use overslab::geometry::Point;
use overslab::grade::solve::{self, Asked, Demand, Heights, Line, Outlet, Steps, Wants};
use overslab::quantity::{Elevation, Length, Slope, Typed};
use overslab::survey::Survey;
use overslab::survey::old_slab::{Marks, Settings, Shots};
use overslab::survey::outline::{Corner, Outline};
use overslab::survey::surface::Shot;
use std::hint::black_box;

const FOOT: f64 = 0.3048;

/// Shots scattered over a rectangle, with heights that no plane follows.
pub(super) fn survey(count: usize) -> Survey {
    let size = (count as f64 / 40.0).sqrt();
    let (wide, long) = (20.0 * FOOT * size, 32.0 * FOOT * size);
    let corner = |x: f64, y: f64| Corner::new(Length::from_base(x), Length::from_base(y));
    let corners = [corner(0.0, 0.0), corner(wide, 0.0), corner(wide, long), corner(0.0, long)];
    let outline = Outline::from_corners(
        &corners,
        &["front", "right", "back", "left"].map(|name| Some(name.to_owned())),
    )
    .unwrap();
    // Numbers that look random (the fractional parts of multiples of irrational numbers; Weyl 1916).
    let share = |index: usize, irrational: f64| (index as f64 * irrational).fract();
    let shot = |index: usize| {
        let (x, y) = (share(index, 0.754_877_666_246_692_8), share(index, 0.569_840_290_998_053_2));
        Shot::new(wide * x, long * y, 30.0 + 0.02 * share(index, 0.618_033_988_749_894_9))
    };
    let shots = Shots::Scattered(Marks { shots: (0..count).map(shot).collect(), names: Vec::new() });
    let settings = Settings { beyond_allowed: true, ..Settings::default() };
    Survey::new(outline, shots, settings).unwrap()
}

fn demands(door: f64) -> Vec<Demand> {
    let height = |name: &str, at: f64| {
        let along = Line::Places(vec![Point::new(1.0, 0.1), Point::new(3.0, 0.1)]);
        Demand::new(name, Wants::AtMost(Heights { along, elevation: Elevation::from_base(at) }))
    };
    let (least, fall) = (Length::from_base(0.0762), Slope::from_base(0.125 / 12.0));
    vec![
        Demand::new("least 3 in", Wants::LeastThickness { least, zone: None }),
        Demand::new("fall", Wants::LeastFall { fall, toward: Outlet::Edge("front".to_owned()), on: None }),
        height("big door", door),
        height("side door", 31.0),
    ]
}

fn asked(demands: &[Demand]) -> Asked<'_> {
    Asked {
        layout: None,
        demands,
        margin: Length::from_base(0.0),
        edges_bind: false,
        concrete_price: None,
        grinding: None,
        steps: None,
    }
}

pub(crate) fn benches(c: &mut Criterion) {
    let floor = survey(40);
    let (kept, broken) = (demands(30.3), demands(30.05));
    let steps = Steps {
        heights: Length::from_base(0.0254 / 8.0),
        datum: Elevation::from_base(30.48),
        falls: Slope::from_base(0.0625 / 12.0),
    };
    let mut group = c.benchmark_group("least concrete, one plane over 40 shots");
    group.bench_function("with prices", |b| {
        b.iter(|| solve::solve(black_box(&floor), &asked(&kept)).unwrap());
    });
    group.bench_function("with prices, in whole steps", |b| {
        b.iter(|| solve::solve(black_box(&floor), &Asked { steps: Some(steps), ..asked(&kept) }).unwrap());
    });
    group.bench_function("what contradicts", |b| {
        b.iter(|| solve::conflicts(black_box(&floor), &asked(&broken)).unwrap().unwrap());
    });
    group.finish();
    let mut group = c.benchmark_group("least concrete, one plane over a million shots");
    group.sample_size(10);
    group.bench_function("the surface, for comparison", |b| b.iter(|| survey(black_box(1_000_000))));
    let many = survey(1_000_000);
    group.bench_function("with prices", |b| {
        b.iter(|| solve::solve(black_box(&many), &asked(&kept[..2])).unwrap());
    });
    group.finish();
}
