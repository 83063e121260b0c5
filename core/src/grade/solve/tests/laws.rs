//! Laws over random slabs.

use super::support::*;
use crate::geometry::random::Random;
use crate::grade::solve::{Asked, Demand, Kept, Line, Measured, Wants, solve};
use crate::grade::thickness::Thickness;
use crate::quantity::{Elevation, Length, Typed};

fn demands(random: &mut Random) -> Vec<Demand> {
    let mut list =
        vec![least("least", random.between(2.0, 4.0)), fall("fall", random.between(0.0, 0.25), "front")];
    if random.below(2) == 0 {
        let back = 99.5 + random.between(4.0, 10.0) / 12.0;
        list.push(Demand::new("step", Wants::AtLeast(along(&[[0.0, 16.0], [20.0, 16.0]], back))));
    }
    if random.below(2) == 0 {
        let along = Line::Edge("left".into());
        list.push(Demand::new(
            "level side",
            Wants::Level { along, tolerance: inches(random.between(0.0, 3.0)) },
        ));
    }
    list
}

#[test]
fn what_is_solved_keeps_every_demand_and_more_demands_cost_no_less() {
    for seed in 0..60 {
        let mut random = Random::new(seed);
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let list = demands(&mut random);
        let mut before = 0.0;
        for count in 1..=list.len() {
            let Ok(found) = solve(&survey, &asked(&list[..count])) else { break };
            let concrete = found.planned.concrete.base();
            assert!(concrete >= before - 1e-9, "seed {seed}");
            before = concrete;
            let measured = Thickness::of(&survey, &found.planned.finish, None).unwrap();
            assert!(measured.least.thickness.base() >= 2.0 * 0.0254 - 1e-9);
            assert!(found.demands.iter().all(|kept| kept.slack >= -1e-9), "seed {seed}: {:?}", found.demands);
        }
    }
}

/// The demands with one of them moved by so much.
fn moved(list: &[Demand], which: usize, by: f64) -> Vec<Demand> {
    let mut list = list.to_vec();
    match &mut list[which].wants {
        Wants::LeastThickness { least, .. } => *least = Length::from_base(least.base() + by),
        Wants::LeastFall { fall, .. } => *fall = crate::quantity::Slope::from_base(fall.base() + by),
        Wants::AtLeast(heights) => heights.elevation = Elevation::from_base(heights.elevation.base() + by),
        Wants::Level { tolerance, .. } => *tolerance = Length::from_base(tolerance.base() - by),
        _ => unreachable!(),
    }
    list
}

#[test]
fn a_price_is_what_solving_again_gives_as_far_as_it_says() {
    for seed in 0..60 {
        let mut random = Random::new(seed);
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let list = demands(&mut random);
        let Ok(found) = solve(&survey, &asked(&list)) else { continue };
        let concrete = found.planned.concrete.base();
        for (which, kept) in found.demands.iter().enumerate() {
            for (sign, price) in [(1.0, kept.prices.tighter), (-1.0, kept.prices.looser)] {
                let step = kept.measured.step();
                let Some(per_step) = price.cost else {
                    let failure = solve(&survey, &asked(&moved(&list, which, sign * 1e-3)));
                    assert!(failure.is_err(), "seed {seed}: {kept:?}");
                    continue;
                };
                let end = price.holds.unwrap_or(f64::INFINITY).min(0.05 * step_limit(kept));
                for share in [0.25, 0.999] {
                    let by = sign * share * end;
                    let again = moved(&list, which, by);
                    if by.abs() < 1e-7 || is_negative(&again[which]) {
                        continue;
                    }
                    let again = solve(&survey, &asked(&again)).unwrap().planned.concrete.base();
                    let expected = concrete + per_step.base() / step * share * end;
                    close(again, expected, 1e-8 * concrete);
                }
            }
        }
    }
}

fn step_limit(kept: &Kept) -> f64 {
    match kept.measured {
        Measured::Length => 1.0,
        Measured::Slope => 0.2,
    }
}

fn is_negative(demand: &Demand) -> bool {
    match &demand.wants {
        Wants::LeastThickness { least, .. } => least.base() < 0.0,
        Wants::LeastFall { fall, .. } => fall.base() < 0.0,
        Wants::Level { tolerance, .. } => tolerance.base() < 0.0,
        _ => false,
    }
}

#[test]
fn built_keeps_all_in_whole_steps_and_no_step_lower_would() {
    for seed in 0..40 {
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let list = [least("least", 3.0), fall("fall", 0.1, "front")];
        let asked = Asked { margin: inches(0.375), steps: Some(steps()), ..asked(&list) };
        let found = solve(&survey, &asked).unwrap();
        assert!(found.rounding.unwrap().best);
        assert!(found.demands.iter().all(|kept| kept.slack_built >= -1e-9));
        let eighths = |height: f64| (height / 0.3048 - 100.0) * 96.0;
        let front = eighths(found.built.finish.height_at(feet(0.0), feet(0.0)).unwrap().base());
        close(front, front.round(), 1e-5);
        let sixteenths = found.built.finish.fall().base() * 12.0 * 16.0;
        close(sixteenths, sixteenths.round(), 1e-5);
        // Every fall in whole sixteenths, each with its lowest whole eighth: none takes less.
        for steps in 2..8 {
            let mut list = list.to_vec();
            list[1] = fall("fall", f64::from(steps) / 16.0, "front");
            list.push(Demand::new(
                "no more",
                Wants::GreatestFall {
                    fall: slope(f64::from(steps) / 16.0),
                    toward: crate::grade::solve::Outlet::Edge("front".into()),
                    on: None,
                },
            ));
            let other = solve(&survey, &Asked { demands: &list, ..asked }).unwrap();
            assert!(other.built.concrete.base() >= found.built.concrete.base() - 1e-9, "seed {seed}");
        }
    }
}

#[test]
fn neither_the_datum_nor_the_order_nor_far_axes_change_the_concrete() {
    for seed in 0..20 {
        let mut random = Random::new(seed);
        let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 16.0], [0.0, 16.0]];
        let mut shots: Vec<[f64; 3]> = corners.iter().map(|[x, y]| [*x, *y, 0.0]).collect();
        shots.extend((0..12).map(|_| [random.between(1.0, 19.0), random.between(1.0, 15.0), 0.0]));
        shots.iter_mut().for_each(|shot| shot[2] = 99.5 + random.between(-1.0, 1.0) / 12.0);
        let list = [least("least", 3.0), fall("fall", 0.125, "front")];
        let one = solve(&slab(&corners, &EDGES, &shots), &asked(&list)).unwrap();
        let again = solve(&slab(&corners, &EDGES, &shots), &asked(&list)).unwrap();
        // The same input gives the same bits.
        assert_eq!(one.planned.finish, again.planned.finish);
        random.shuffle(&mut shots);
        let moved = |[x, y, z]: [f64; 3]| [x + 5000.0, y - 3000.0, z + 1000.0];
        let far = shots.iter().map(|&shot| moved(shot)).collect::<Vec<_>>();
        let far_corners = corners.map(|[x, y]| [x + 5000.0, y - 3000.0]);
        let far = solve(&slab(&far_corners, &EDGES, &far), &asked(&list)).unwrap();
        let concrete = one.planned.concrete.base();
        close(far.planned.concrete.base(), concrete, 1e-8 * concrete);
        let height = |solved: &crate::grade::solve::Solved, x: f64, y: f64| {
            solved.planned.finish.height_at(feet(x), feet(y)).unwrap().base()
        };
        close(height(&far, 5007.0, -2995.0) - height(&one, 7.0, 5.0), 1000.0 * 0.3048, 1e-7);
    }
}
