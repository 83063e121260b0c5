//! What may not matter: the order of facets, turned and moved axes, a facet cut in two.

use super::support::*;
use crate::geometry::random::Random;
use crate::grade::finish::Finish;
use crate::grade::thickness::Thickness;
use crate::quantity::Typed;

/// A floor of random heights over a grid of triangles, and what turns and moves it.
struct Floor {
    corners: Vec<(f64, f64, f64)>,
    facets: Vec<Vec<usize>>,
}

impl Floor {
    fn random(seed: u64) -> Self {
        let mut random = Random::new(seed);
        let corner = |i: usize, random: &mut Random| {
            let (x, y) = ((i % 3) as f64 * 3.0, (i / 3) as f64 * 2.0);
            // The middle one may lie anywhere near.
            let off = if i == 4 { 0.9 } else { 0.0 };
            (
                x + off * random.between(-1.0, 1.0),
                y + off * random.between(-1.0, 1.0),
                random.between(10.1, 10.3),
            )
        };
        let corners = (0..9).map(|i| corner(i, &mut random)).collect();
        let cell = |c: usize| {
            let i = 1 + c % 2 + 3 * (c / 2);
            [vec![i, i + 1, i + 4], vec![i, i + 4, i + 3]]
        };
        Self { corners, facets: (0..4).flat_map(cell).collect() }
    }

    fn turned(&self, angle: f64, by: (f64, f64)) -> Self {
        let (sin, cos) = angle.sin_cos();
        let turn = |&(x, y, z): &(f64, f64, f64)| (by.0 + cos * x - sin * y, by.1 + sin * x + cos * y, z);
        Self { corners: self.corners.iter().map(turn).collect(), facets: self.facets.clone() }
    }

    fn finish(&self) -> Finish {
        let facets: Vec<&[usize]> = self.facets.iter().map(Vec::as_slice).collect();
        over(&self.corners, &facets).unwrap()
    }

    /// Volume, least and greatest thickness over a level slab.
    fn figures(&self) -> [f64; 3] {
        let at = |corner: usize| (self.corners[corner].0, self.corners[corner].1);
        let slab = slab(&[at(0), at(2), at(8), at(6)], &[]);
        let thickness = Thickness::of(&slab, &self.finish(), None).unwrap();
        close(thickness.area.base(), 24.0);
        [thickness.net.base(), thickness.least.thickness.base(), thickness.greatest.thickness.base()]
    }
}

#[track_caller]
fn same(a: [f64; 3], b: [f64; 3]) {
    for (a, b) in a.into_iter().zip(b) {
        assert!((a - b).abs() < 1e-9 * a.abs().max(1.0), "{a} {b}");
    }
}

#[test]
fn the_order_of_facets_and_the_sense_of_their_corners_do_not_matter() {
    for seed in 0..40 {
        let floor = Floor::random(seed);
        let mut other = Floor { corners: floor.corners.clone(), facets: floor.facets.clone() };
        other.facets.rotate_left(3);
        other.facets.iter_mut().step_by(2).for_each(|facet| facet.reverse());
        other.facets[1].rotate_left(1);
        same(floor.figures(), other.figures());
    }
}

#[test]
fn turned_and_moved_axes_do_not_matter() {
    for seed in 0..40 {
        let floor = Floor::random(seed);
        let mut random = Random::new(1000 + seed);
        let by = (random.between(-50.0, 50.0), random.between(-50.0, 50.0));
        same(floor.figures(), floor.turned(random.between(0.0, 6.3), by).figures());
    }
}

#[test]
fn facets_weigh_what_their_prisms_weigh() {
    for seed in 0..40 {
        let floor = Floor::random(seed);
        let prism = |facet: &Vec<usize>| {
            let [a, b, c] = [0, 1, 2].map(|i| floor.corners[facet[i] - 1]);
            let area = 0.5 * ((b.0 - a.0) * (c.1 - a.1) - (b.1 - a.1) * (c.0 - a.0));
            area * ((a.2 + b.2 + c.2) / 3.0 - 10.0)
        };
        let all: f64 = floor.facets.iter().map(prism).sum();
        assert!((all - floor.figures()[0]).abs() < 1e-12 * all);
    }
}

#[test]
fn a_facet_parted_at_its_middle_changes_nothing() {
    for seed in 0..40 {
        let floor = Floor::random(seed);
        let mut parted = Floor { corners: floor.corners.clone(), facets: floor.facets.clone() };
        let [a, b, c] = [0, 1, 2].map(|i| parted.facets[0][i]);
        let mean = |of: fn(&(f64, f64, f64)) -> f64| {
            [a, b, c].iter().map(|&i| of(&floor.corners[i - 1])).sum::<f64>() / 3.0
        };
        parted.corners.push((mean(|p| p.0), mean(|p| p.1), mean(|p| p.2)));
        parted.facets.splice(0..1, [vec![a, b, 10], vec![b, c, 10], vec![c, a, 10]]);
        same(floor.figures(), parted.figures());
    }
}
