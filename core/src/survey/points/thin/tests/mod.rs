//! The laws of thinning, held against the surface of a survey itself.

mod bad;
mod laws;

use super::{Asked, Thinned, thin};
use crate::geometry::random::Random;
use crate::geometry::{Point, Region};
use crate::quantity::{Length, Typed};
use crate::survey::points::Points;
use crate::survey::surface::{Locator, Rules, Shot, Surface};

/// A floor that falls, sags and waves, with noise.
fn floor(seed: u64, count: usize, noise: f64) -> Points {
    let mut random = Random::new(seed);
    let mut points = Points::default();
    for _ in 0..count {
        let Point { x, y } = random.point(9.0, 6.0);
        let sag = -0.03 * (-((x - 4.0).powi(2) + (y - 2.0).powi(2)) / 3.0).exp();
        let waves = 0.004 * (2.0 * x).sin() * (1.7 * y).cos();
        points.push([x, y, 30.0 - 0.01 * x + sag + waves + random.between(-noise, noise)]);
    }
    points
}

/// Rows and columns a foot and a half apart, every place of them twice as high as a wave and a ripple.
fn grid(columns: usize, rows: usize) -> Points {
    let mut points = Points::default();
    for row in 0..rows {
        for column in 0..columns {
            let (x, y) = (0.45 * column as f64, 0.45 * row as f64);
            let ripple = 0.001 * ((column * 31 + row * 17) % 7) as f64;
            points.push([x, y, 30.0 + 0.02 * (0.8 * x).sin() * (0.6 * y).cos() + ripple]);
        }
    }
    points
}

/// A workshop with a corner cut out and a column, as an outline.
fn workshop() -> Region {
    let at = |corners: &[(f64, f64)]| corners.iter().map(|&(x, y)| Point::new(x, y)).collect::<Vec<_>>();
    let outer = at(&[(0.5, 0.5), (8.5, 0.5), (8.5, 3.0), (6.0, 3.0), (6.0, 5.5), (0.5, 5.5)]);
    Region::new(outer, vec![at(&[(3.0, 3.0), (3.5, 3.0), (3.5, 3.5), (3.0, 3.5)])]).expect("a region")
}

fn within(metres: f64) -> Asked {
    Asked::Within(Length::from_base(metres))
}

/// The surface that a survey through the points kept has, over the same region.
fn surveyed(thinned: &Thinned, region: &Region) -> Surface {
    let points = &thinned.points;
    let shots: Vec<Shot> =
        (0..points.len()).map(|index| Shot::new(points.x[index], points.y[index], points.z[index])).collect();
    Surface::from_shots(&shots, region, &Rules { beyond_allowed: true, ..Rules::DEFAULT }).expect("a surface")
}

/// The region a thinning without one is measured over: the hull of the points kept.
fn hull_of(thinned: &Thinned) -> Region {
    let all: Vec<u32> = (0..thinned.points.len() as u32).collect();
    let corners = super::hull::corners(&thinned.points, &all);
    let corners = corners.iter().map(|&number| super::place(&thinned.points, number)).collect();
    Region::new(corners, Vec::new()).expect("a region")
}

/// How far the surveyed surface is at most from the points left out, by its own locator.
fn farthest_off(points: &Points, thinned: &Thinned, region: &Region) -> f64 {
    let surface = surveyed(thinned, region);
    let locator = Locator::new(surface.whole());
    let mut greatest = 0.0_f64;
    for number in (0..points.len()).filter(|number| thinned.kept.binary_search(number).is_err()) {
        if thinned.outside.binary_search(&number).is_ok() {
            continue;
        }
        let at = super::place(points, number as u32);
        let spot = locator.at(at).or_else(|| locator.at(region.nearest_run(at).at)).expect("ground");
        greatest = greatest.max((points.z[number] - spot.height).abs());
    }
    greatest
}
