//! Laws that hold for every finish.

use crate::geometry::random::Random;
use crate::grade::drainage::*;
use crate::grade::finish::tests::support::{close, metres, over, slab};
use crate::grade::standing_water::of_finish;
use crate::survey::low_spots::{Drain, EdgeState, EdgeStated, Edges};

/// Facets over three by two bays with their inner corners moved, at heights that fall along a direction and stray by a part of it.
struct Case {
    corners: Vec<(f64, f64, f64)>,
    facets: Vec<Vec<usize>>,
    walled: Vec<String>,
    drain: Option<(f64, f64)>,
}

impl Case {
    fn new(seed: u64) -> Self {
        let mut random = Random::new(seed);
        let falls = [random.between(-0.03, 0.03), random.between(-0.03, 0.03)];
        let stray = random.between(0.0, 0.1);
        let mut corners = Vec::new();
        for row in 0..3_u32 {
            for column in 0..4_u32 {
                let mut move_by = |inside: bool| if inside { random.between(-0.6, 0.6) } else { 0.0 };
                let x = 3.0 * f64::from(column) + move_by((1..3).contains(&column));
                let y = 3.0 * f64::from(row) + move_by(row == 1);
                let z = 10.5 + falls[0] * x + falls[1] * y + random.between(0.0, stray);
                corners.push((x, y, z));
            }
        }
        let mut facets = Vec::new();
        for row in 0..2 {
            for column in 0..3 {
                let first = 4 * row + column + 1;
                let [a, b, c, d] = [first, first + 1, first + 5, first + 4];
                if random.below(2) == 0 {
                    facets.extend([vec![a, b, c], vec![a, c, d]]);
                } else {
                    facets.extend([vec![a, b, d], vec![b, c, d]]);
                }
            }
        }
        let walled = (1..=4).filter(|_| random.below(3) == 0).map(|side| format!("side {side}")).collect();
        let drain = (random.below(2) == 0).then(|| (corners[5].0, corners[5].1));
        Self { corners, facets, walled, drain }
    }

    fn found(&self, place: impl Fn(f64, f64) -> (f64, f64)) -> (Drainage, f64) {
        let at = |x: f64, y: f64| place(x, y);
        let outline: Vec<(f64, f64)> =
            [(0.0, 0.0), (9.0, 0.0), (9.0, 6.0), (0.0, 6.0)].into_iter().map(|(x, y)| at(x, y)).collect();
        let survey = slab(&outline, &[]);
        let corners: Vec<_> = (self.corners.iter())
            .map(|&(x, y, z)| {
                let (x, y) = at(x, y);
                (x, y, z)
            })
            .collect();
        let facets: Vec<&[usize]> = self.facets.iter().map(Vec::as_slice).collect();
        let finish = over(&corners, &facets).unwrap();
        let stated = |edge: &String| EdgeStated { edge: edge.clone(), state: EdgeState::Walled };
        let drain = self.drain.map(|(x, y)| at(x, y)).map(|(x, y)| Drain {
            name: Some("gully".to_owned()),
            at: vec![Corner::new(metres(x), metres(y))],
        });
        let edges =
            Edges { stated: self.walled.iter().map(stated).collect(), drains: drain.into_iter().collect() };
        let ponds = of_finish(&survey, &finish, &edges, metres(0.0));
        let water = ponds.map_or(f64::INFINITY, |ponds| ponds.volume().base());
        (Drainage::of(&survey, &finish, &Asked { edges, ..Asked::default() }).unwrap(), water)
    }
}

const CASES: std::ops::Range<u64> = 1..200;

#[test]
fn catchments_add_up_to_the_work_and_their_polygons_to_them() {
    for seed in CASES {
        let (found, _) = Case::new(seed).found(|x, y| (x, y));
        let all: f64 = found.catchments.iter().map(|of| of.area.base()).sum();
        close(all, 54.0);
        let facets: f64 = found.facets.iter().map(|of| of.area.base()).sum();
        close(facets, 54.0);
        let parts = found.catchment_parts();
        for (place, catchment) in found.catchments.iter().enumerate() {
            let area: f64 = parts.iter().filter(|part| part.of == place).map(|part| part.area.base()).sum();
            assert!((area - catchment.area.base()).abs() < 1e-6, "seed {seed}: {area}");
            let rings: f64 =
                parts.iter().filter(|part| part.of == place).map(|part| ring_area(&part.shape)).sum();
            assert!((area - rings).abs() < 1e-6, "seed {seed}: rings {rings}, area {area}");
        }
    }
}

fn ring_area(shape: &Shape) -> f64 {
    let ring = |corners: &[Corner]| {
        let next = corners.iter().cycle().skip(1);
        let cross = corners.iter().zip(next).map(|(a, b)| a.x.base() * b.y.base() - a.y.base() * b.x.base());
        0.5 * cross.sum::<f64>()
    };
    shape.rings().map(ring).sum()
}

#[test]
fn every_way_falls_and_is_no_longer_than_the_longest_to_its_end() {
    for seed in CASES {
        let (found, _) = Case::new(seed).found(|x, y| (x, y));
        for path in &found.paths {
            let heights =
                path.places.windows(2).map(|pair| pair[0].elevation.base() - pair[1].elevation.base());
            assert!(heights.into_iter().all(|drop| drop > -1e-9), "seed {seed}: {path:?}");
            let of = found.catchments.iter().find(|of| of.ending == path.ending);
            if path.start == Start::Farthest {
                let longest = of.expect("a catchment").longest.base();
                let walked: f64 =
                    path.places.windows(2).map(|pair| pair[0].at.distance(pair[1].at).base()).sum();
                // It was walked from a hair inside, which sides nearly along the way widen.
                assert!((walked - longest).abs() < 1e-3, "seed {seed}: {longest} {path:?}");
            } else if let Some(of) = of {
                let longest = of.longest.base();
                assert!(path.length.base() < longest + 1e-5, "seed {seed}: {longest} {path:?}");
            }
        }
    }
}

/// Where no pond stands all water leaves; where all of it leaves no pond stands.
#[test]
fn all_water_leaves_just_where_none_stands() {
    let (mut dry, mut wet) = (0, 0);
    for seed in CASES {
        let (found, water) = Case::new(seed).found(|x, y| (x, y));
        let held = found.held().base() > 1e-9;
        assert_eq!(held, water > 1e-9, "seed {seed}: {:?}", found.endings);
        *(if held { &mut wet } else { &mut dry }) += 1;
    }
    assert!(dry > 20 && wet > 20, "{dry} dry, {wet} wet");
}

#[test]
fn neither_a_turn_nor_a_mirror_changes_what_drains_where() {
    for seed in CASES {
        let case = Case::new(seed);
        let (one, _) = case.found(|x, y| (x, y));
        let (sin, cos) = 0.7_f64.sin_cos();
        let turned = case.found(|x, y| (cos * x - sin * y + 3.0, sin * x + cos * y - 5.0)).0;
        let mirrored = case.found(|x, y| (-x, y)).0;
        for other in [turned, mirrored] {
            let areas = |of: &Drainage| {
                let mut list: Vec<(End, Option<String>, f64, f64)> = of
                    .catchments
                    .iter()
                    .map(|catchment| {
                        let ending = &of.endings[catchment.ending];
                        (ending.end, ending.name.clone(), catchment.area.base(), catchment.longest.base())
                    })
                    .collect();
                list.sort_by(|a, b| a.2.total_cmp(&b.2));
                list
            };
            let (one, other) = (areas(&one), areas(&other));
            assert_eq!(one.len(), other.len(), "seed {seed}: {one:?} {other:?}");
            for (a, b) in one.iter().zip(&other) {
                assert_eq!((a.0, &a.1), (b.0, &b.1), "seed {seed}");
                assert!((a.2 - b.2).abs() < 1e-6 && (a.3 - b.3).abs() < 1e-6, "seed {seed}: {a:?} {b:?}");
            }
        }
    }
}
