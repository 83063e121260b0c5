//! A scan of a million points over an invented floor: strays parted from it, and thinned to 5,000.

use criterion::Criterion;
use overslab::survey::points::Points;
use overslab::survey::points::stray::{Limits, part};
use overslab::survey::points::thin::{Asked, thin};
use std::hint::black_box;

const POINTS: usize = 1_000_000;

/// A number from 0 to 1 that looks random (the fractional parts of multiples of an irrational number; Weyl 1916).
fn share(index: usize, irrational: f64) -> f64 {
    (index as f64 * irrational).fract()
}

/// A floor of 30 by 20 m that falls, sags and waves, scanned with noise of up to 1 mm.
fn scan() -> Points {
    let mut points = Points::default();
    for index in 0..POINTS {
        let x = 30.0 * share(index, 0.754_877_666_246_692_8);
        let y = 20.0 * share(index, 0.569_840_290_998_053_2);
        let sag = -0.04 * (-((x - 11.0).powi(2) + (y - 8.0).powi(2)) / 20.0).exp();
        let waves = 0.006 * (1.3 * x).sin() * (0.9 * y).cos();
        let noise = 0.001 * (share(index, 0.618_033_988_749_894_9) - share(index, 0.414_213_562_373_095_1));
        points.push([x, y, 30.0 - 0.01 * x + sag + waves + noise]);
    }
    points
}

pub(crate) fn benches(c: &mut Criterion) {
    let points = scan();
    let mut group = c.benchmark_group("a scan of a million points");
    group.sample_size(10);
    group.bench_function("thinned to 5,000", |b| {
        b.iter(|| thin(black_box(&points), None, Asked::Count(5_000)).unwrap());
    });
    group.bench_function("strays looked for", |b| {
        b.iter(|| part(black_box(&points), &Limits::usual()).unwrap());
    });
    group.finish();
}
