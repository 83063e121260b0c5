//! Surveys as no crew would make them: whatever comes out must still tile its region and obey the laws.

use super::support::*;

fn outline(random: &mut Random) -> Region {
    loop {
        let size = [1.0, 3.0, 10.0, 30.0][random.below(4)];
        let corners: Vec<Point> = if random.below(2) == 0 {
            let (width, depth) = (random.between(0.2, 1.0) * size, random.between(0.2, 1.0) * size);
            [(0.0, 0.0), (width, 0.0), (width, depth), (0.0, depth)].map(|(x, y)| Point::new(x, y)).to_vec()
        } else {
            let count = 3 + random.below(20);
            let corner = |i| {
                let angle = i as f64 / count as f64 * std::f64::consts::TAU;
                let reach = random.between(0.3, 1.0) * size;
                Point::new(reach * angle.cos(), reach * angle.sin())
            };
            (0..count).map(corner).collect()
        };
        let (side, at) = (random.between(0.01, 0.2) * size, corners[random.below(corners.len())]);
        let (x, y) = (0.4 * at.x, 0.4 * at.y);
        let hole =
            [(x, y), (x + side, y), (x + side, y + side), (x, y + side)].map(|(x, y)| Point::new(x, y));
        let holes = if random.below(2) == 0 { vec![hole.to_vec()] } else { Vec::new() };
        if let Ok(region) = Region::new(corners, holes) {
            return region;
        }
    }
}

/// Shots on corners, on runs and near them, beside other shots, in line with others, outside, and anywhere.
fn survey(random: &mut Random, region: &Region) -> Vec<Shot> {
    let (low, high) = region.bounds();
    let runs: Vec<_> = region.runs().collect();
    let mut shots: Vec<Shot> = Vec::new();
    for _ in 0..3 + random.below(50) {
        let run = runs[random.below(runs.len())];
        let other = |random: &mut Random, shots: &[Shot]| {
            let shot = shots[random.below(shots.len())];
            Point::new(shot.x, shot.y)
        };
        let place = match random.below(8) {
            0 => run.from,
            1 => run.at(random.between(0.0, 1.0)),
            2 => {
                let on = run.at(random.between(0.0, 1.0));
                Point::new(on.x + random.between(-0.02, 0.02), on.y + random.between(-0.02, 0.02))
            }
            3 if shots.len() > 1 => {
                let step = [0.0, 1e-9, 0.005, 0.0111, 0.0131, 1e-15][random.below(6)];
                let beside = other(random, &shots);
                Point::new(beside.x + step, beside.y + step * random.between(-1.0, 1.0))
            }
            4 if shots.len() > 1 => {
                let (a, b, share) = (other(random, &shots), other(random, &shots), random.between(-0.5, 1.5));
                Point::new(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y))
            }
            _ => Point::new(random.between(low.x, high.x), random.between(low.y, high.y)),
        };
        let outside = region.distance_outside(place);
        if outside < 0.15 || random.below(4) == 0 {
            let z = 1.0 + 0.01 * place.x + 0.004 * (40.0 * place.y).sin();
            shots.push(Shot { outside_allowed: outside > 0.15, ..Shot::new(place.x, place.y, z) });
        }
    }
    shots
}

#[track_caller]
fn assert_lawful(case: u64, surface: &Surface, shots: &[Shot]) {
    let whole = surface.whole();
    let area = surface.region().area();
    assert!((whole.area() - area).abs() <= 1e-11 * area, "case {case}: area {} of {area}", whole.area());
    let counts = surface.tributary_areas(whole);
    let (sum, total) = (counts.iter().sum::<f64>(), counts.iter().map(|count| count.abs()).sum::<f64>());
    assert!((sum - area).abs() <= 1e-9 * total, "case {case}: tributary areas {sum} of {area}");
    let by_shots: f64 = counts.iter().zip(shots).map(|(count, shot)| count * shot.z).sum();
    let integrals = whole.integrals();
    assert!((by_shots - integrals.height).abs() <= 1e-9 * total, "case {case}: {by_shots} by shots");
    let finish = Plane::new(1.02, 0.01, 0.001);
    let field = ThicknessField::new(whole, finish).expect("a field");
    let scale = area * (field.greatest().value - field.least().value);
    assert!((field.net() - integrals.net_under(&finish)).abs() <= 1e-12 * (scale + area), "case {case}: net");
}

#[test]
fn whatever_is_surveyed_the_surface_is_lawful_or_refused() {
    let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
    let (mut built, mut turned_built) = (0, 0);
    for case in 0..2000 {
        let mut random = Random::new(1000 + case);
        let region = outline(&mut random);
        let mut shots = survey(&mut random, &region);
        let Ok(surface) = Surface::from_shots(&shots, &region, &rules) else { continue };
        built += 1;
        assert_lawful(case, &surface, &shots);
        let expected = volume(&surface);
        let angle = random.between(0.1, 6.0);
        let turned = moved_region(&region, angle, Point::default());
        if let Ok(turned) =
            Surface::from_shots(&moved_shots(&shots, angle, Point::default()), &turned, &rules)
        {
            turned_built += 1;
            // A plane fitted to shots nearly in line tilts with their last digits.
            let steepness = 1.0 + 100.0 * surface.fit().plane.steepest();
            let allowed = 1e-10 * region.area() * steepness;
            let found = volume(&turned);
            assert!((found - expected).abs() <= allowed, "case {case}: {found} turned, not {expected}");
        }
        random.shuffle(&mut shots);
        let shuffled = Surface::from_shots(&shots, &region, &rules).expect("it was accepted before");
        assert_eq!(volume(&shuffled), expected, "case {case}");
    }
    assert!(built > 300, "{built} were built");
    assert_eq!(built, turned_built);
}
