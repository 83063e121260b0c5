//! Drains by hand, against a grid of places, and the bound against places by chance.

use super::support::*;
use crate::failure::Code;
use crate::geometry::Point;
use crate::geometry::random::Random;
use crate::grade::solve::drain_place::looked_into;
use crate::grade::solve::{Demand, DrainAsked, DrainBounds, Ended, Line, PlacedDrain, Wants, place_drain};
use crate::operation::record::Record;
use crate::quantity::{Length, Share, Typed};
use crate::survey::Survey;

fn within(x: [f64; 2], y: [f64; 2]) -> DrainBounds {
    DrainBounds { x: x.map(feet), y: y.map(feet) }
}

fn drain(within: DrainBounds, demands: &[Demand]) -> DrainAsked<'_> {
    DrainAsked {
        within,
        fall: slope(0.125),
        greatest_fall: None,
        demands,
        margin: Length::from_base(0.0),
        edges_bind: false,
        concrete_price: None,
        close: Share::from_base(1e-4),
        most_places: 20_000,
        steps: None,
    }
}

fn level(corners: &[[f64; 2]]) -> Survey {
    let shots: Vec<[f64; 3]> = corners.iter().map(|[x, y]| [*x, *y, 99.5]).collect();
    slab(corners, &EDGES, &shots)
}

const SQUARE: [[f64; 2]; 4] = [[0.0, 0.0], [20.0, 0.0], [20.0, 20.0], [0.0, 20.0]];

fn in_feet(found: &PlacedDrain) -> [f64; 2] {
    [found.x, found.y].map(|at| at.base() / 0.3048)
}

#[test]
fn over_a_level_square_the_drain_goes_to_the_middle() {
    // 3 in at the drain, 1/8 in/ft from the corners, 14.142 ft away: 1.7678 in, of which the mean is two thirds.
    let survey = level(&SQUARE);
    let demands = [least("least", 3.0)];
    let found = place_drain(&survey, &drain(within([0.0, 20.0], [0.0, 20.0]), &demands)).unwrap();
    let drop = 0.125 / 12.0 * 200.0_f64.sqrt();
    close(yards(found.concrete), 400.0 * (0.25 + 2.0 / 3.0 * drop) / 27.0, 1e-9);
    let [x, y] = in_feet(&found);
    close(x, 10.0, 1e-9);
    close(y, 10.0, 1e-9);
    assert!(found.ended == Ended::Close && found.gap.base() <= 1e-4 && found.clipped, "{found:?}");
}

#[test]
fn kept_to_one_side_it_goes_as_near_to_the_middle_as_it_may() {
    // The farthest corner is 14 ft across and 10 ft along; found on a line of places, on a rectangle and at the one place.
    let survey = level(&SQUARE);
    let demands = [least("least", 3.0)];
    let drop = 0.125 / 12.0 * 296.0_f64.sqrt();
    let expected = 400.0 * (0.25 + 2.0 / 3.0 * drop) / 27.0;
    for (x, y) in [
        ([2.0, 6.0], [2.0, 19.0]),
        ([6.0, 6.0], [3.0, 18.0]),
        ([1.5, 6.0], [10.0, 10.0]),
        ([6.0; 2], [10.0; 2]),
    ] {
        let found = place_drain(&survey, &drain(within(x, y), &demands)).unwrap();
        close(yards(found.concrete), expected, 1e-4 * expected);
        assert!(yards(found.concrete) >= expected - 1e-9 && yards(found.bound) <= expected + 1e-9);
        assert!(found.ended == Ended::Close && !found.clipped);
        let [x, y] = in_feet(&found);
        close(x, 6.0, 0.02);
        close(y, 10.0, 0.5);
    }
}

/// Outlines with what may be needed about each: convex, long, with a notch, with a column.
fn outlines(seed: u64) -> Vec<Survey> {
    let mut random = Random::new(seed);
    let notched = [[0.0, 0.0], [20.0, 0.0], [20.0, 10.0], [12.0, 10.0], [12.0, 18.0], [0.0, 18.0]];
    let skew = [[0.0, 0.0], [22.0, 2.0], [18.0, 17.0], [3.0, 14.0]];
    let mut survey = |corners: &[[f64; 2]], edges: &[&str], tilt: [f64; 2]| {
        let mut shots: Vec<[f64; 3]> = corners.iter().map(|[x, y]| [*x, *y, 0.0]).collect();
        for (x, y) in [(5.0, 4.0), (9.0, 5.0), (6.0, 8.0), (10.0, 8.0), (14.0, 6.0), (4.0, 12.0), (9.0, 12.0)]
        {
            shots.push([x + random.between(-0.8, 0.8), y + random.between(-0.8, 0.8), 0.0]);
        }
        for shot in &mut shots {
            shot[2] = 99.5 + tilt[0] * shot[0] + tilt[1] * shot[1] + random.between(-0.4, 0.4) / 12.0;
        }
        slab(corners, edges, &shots)
    };
    let notched_edges = ["front", "right", "inner", "side", "back", "left"];
    vec![
        survey(&skew, &EDGES, [0.0, 0.0]),
        survey(&[[0.0, 0.0], [30.0, 0.0], [30.0, 13.0], [0.0, 13.0]], &EDGES, [0.01, 0.002]),
        survey(&notched, &notched_edges, [0.003, -0.008]),
    ]
}

fn with_column() -> Survey {
    let corner = |x: f64, y: f64| serde_json::json!({"x": format!("{x} ft"), "y": format!("{y} ft")});
    let shot = |x: f64, y: f64, z: f64| serde_json::json!({"x": format!("{x} ft"), "y": format!("{y} ft"), "elevation": format!("{z} ft")});
    let hole = [corner(8.0, 6.0), corner(11.0, 6.0), corner(11.0, 9.5), corner(8.0, 9.5)];
    Survey::from_json(serde_json::json!({
        "outline": {"corners": [corner(0.0, 0.0), corner(20.0, 0.0), corner(20.0, 16.0), corner(0.0, 16.0)],
            "edges": EDGES, "holes": [{"name": "column", "corners": hole}]},
        "shots": [shot(0.0, 0.0, 99.5), shot(20.0, 0.0, 99.55), shot(20.0, 16.0, 99.52), shot(0.0, 16.0, 99.49),
            shot(6.0, 5.0, 99.47), shot(14.0, 11.0, 99.53)],
        "beyond_allowed": true,
    }))
    .unwrap()
}

/// No place of a grid is better by more than the gap, none is under the bound.
fn against_a_grid(survey: &Survey, asked: &DrainAsked<'_>, steps: usize) -> PlacedDrain {
    let found = place_drain(survey, asked).unwrap();
    let (concrete, bound) = (found.concrete.base(), found.bound.base());
    assert!(
        found.ended == Ended::Close && concrete - bound <= 1.01 * asked.close.base() * concrete,
        "{} places, gap {}",
        found.places,
        found.gap.base()
    );
    let mut tried = 0;
    for row in 0..=steps {
        for column in 0..=steps {
            let between = |[from, to]: [Length; 2], step: usize| {
                from.base() + (to.base() - from.base()) * step as f64 / steps as f64
            };
            let at = Point::new(between(asked.within.x, column), between(asked.within.y, row));
            if let Some(there) = looked_into::exact(survey, asked, at) {
                tried += 1;
                assert!(there >= bound - 1e-9 && there >= concrete - (concrete - bound) - 1e-9);
            }
        }
    }
    assert!(tried > steps, "{tried}");
    found
}

#[test]
fn no_place_of_a_grid_is_better() {
    for seed in 0..3 {
        for survey in outlines(seed) {
            let demands = [least("least", 3.0)];
            let mut asked = drain(within([1.0, 19.0], [1.0, 12.5]), &demands);
            asked.close = Share::from_base(1e-3);
            let found = against_a_grid(&survey, &asked, 12);
            println!("seed {seed}: {} places, gap {}", found.places, found.gap.base());
        }
    }
}

#[test]
fn nor_with_limits_and_about_a_column() {
    let limits = [
        least("least", 3.0),
        at_most("sill", &[[0.0, 3.0], [0.0, 9.0]], 99.5 + 6.5 / 12.0),
        Demand::new("appliance", Wants::AtLeast(along(&[[4.0, 12.0]], 99.5 + 3.6 / 12.0))),
        Demand::new("not too thick", Wants::GreatestThickness { most: inches(7.0), zone: None }),
    ];
    let mut asked = drain(within([2.0, 18.0], [2.0, 12.5]), &limits);
    asked.greatest_fall = Some(slope(0.4));
    asked.close = Share::from_base(1e-3);
    let found = against_a_grid(&with_column(), &asked, 12);
    println!("column: {} places, gap {}", found.places, found.gap.base());
    let falls = found.solved.planned.finish.facets().iter().map(|facet| 12.0 * facet.fall().base());
    assert!(falls.fold(0.0, f64::max) <= 0.4 + 1e-7);
}

/// A rectangle by chance, from very small to as large as the work.
fn some_rectangle(random: &mut Random) -> DrainBounds {
    let size = 12.0 * 0.5_f64.powi(random.below(8) as i32);
    let (x, y) = (random.between(0.5, 15.0), random.between(0.5, 10.0));
    within([x, x + size * random.between(0.2, 1.0)], [y, y + size * random.between(0.2, 1.0)])
}

#[test]
fn no_place_of_a_cell_goes_under_its_bound() {
    let mut random = Random::new(7);
    let (mut checked, mut tight) = (0, 0);
    for seed in 0..8 {
        let mut surveys = outlines(100 + seed);
        surveys.push(with_column());
        for survey in &surveys {
            let demands = [
                least("least", random.between(2.0, 4.0)),
                at_most("sill", &[[0.5, 1.5], [4.0, 1.5]], 99.5 + random.between(4.0, 8.0) / 12.0),
                Demand::new(
                    "up",
                    Wants::AtLeast(along(&[[7.0, 4.0]], 99.5 + random.between(2.0, 4.0) / 12.0)),
                ),
            ];
            for _ in 0..6 {
                let mut asked = drain(some_rectangle(&mut random), &demands[..1 + random.below(3)]);
                asked.edges_bind = random.below(2) == 0;
                asked.greatest_fall = (random.below(2) == 0).then(|| slope(random.between(0.15, 0.5)));
                // A place known, which may be better or worse than those of the cell.
                let known = random.below(3) > 0;
                let somewhere = at(random.between(6.0, 12.0), random.between(2.0, 6.0));
                let cutoff = known.then(|| looked_into::exact(survey, &asked, somewhere)).flatten();
                let cutoff = cutoff.map_or(f64::INFINITY, |cutoff| cutoff * random.between(1.0, 1.04));
                let Ok(Some((bound, corners))) = looked_into::bound(survey, &asked, cutoff) else { continue };
                for number in 0..6 {
                    // A corner of the cell, or a place inside.
                    let mut weights: Vec<f64> = corners.iter().map(|_| random.between(0.0, 1.0)).collect();
                    if number < 2 {
                        let one = random.below(weights.len());
                        weights
                            .iter_mut()
                            .enumerate()
                            .for_each(|(corner, weight)| *weight = f64::from(u8::from(corner == one)));
                    }
                    let sum: f64 = weights.iter().sum();
                    let of = |part: fn(&Point) -> f64| {
                        corners.iter().zip(&weights).map(|(at, weight)| part(at) * weight / sum).sum::<f64>()
                    };
                    let at = Point::new(of(|at| at.x), of(|at| at.y));
                    if let Some(there) = looked_into::exact(survey, &asked, at) {
                        checked += 1;
                        tight += usize::from(bound > 0.98 * there);
                        assert!(
                            there >= bound.min(cutoff) - 1e-9,
                            "{there} under {bound} at {at:?}, {asked:?}"
                        );
                    }
                }
            }
        }
    }
    assert!(checked > 150 && tight > 30, "{checked} {tight}");
}

#[test]
fn the_bound_closes_up_on_one_place() {
    for survey in outlines(5).into_iter().chain([with_column()]) {
        let demands = [least("least", 3.0)];
        let asked = drain(within([5.0; 2], [4.0; 2]), &demands);
        let exact = looked_into::exact(&survey, &asked, at(5.0, 4.0)).unwrap();
        let (bound, _) = looked_into::bound(&survey, &asked, f64::INFINITY).unwrap().unwrap();
        close(bound, exact, 1e-6 * exact);
    }
}

#[test]
fn demands_that_the_bound_knows_nothing_of_are_kept_all_the_same() {
    let survey = level(&SQUARE);
    let along = Line::Places(vec![at(3.0, 3.0), at(3.0, 17.0)]);
    let demands =
        [least("least", 3.0), Demand::new("nearly level", Wants::Level { along, tolerance: inches(0.5) })];
    let mut asked = drain(within([4.0, 9.0], [4.0, 9.0]), &demands);
    asked.most_places = 300;
    let found = place_drain(&survey, &asked).unwrap();
    let kept = found.solved.demands.iter().find(|kept| kept.name == "nearly level").unwrap();
    assert!(kept.slack >= -1e-9, "{kept:?}");
    assert!(found.bound <= found.concrete);
}

#[test]
fn whole_steps_round_the_finish_at_the_place() {
    let survey = &outlines(3)[0];
    let demands = [least("least", 3.0)];
    let mut asked = drain(within([6.0, 14.0], [5.0, 10.0]), &demands);
    asked.margin = inches(0.375);
    asked.close = Share::from_base(1e-3);
    asked.steps = Some(steps());
    let found = place_drain(survey, &asked).unwrap();
    let solved = &found.solved;
    assert!(solved.habits.is_empty() && solved.rounding.is_some());
    assert!(solved.planned.concrete == found.concrete && solved.built.concrete >= found.concrete);
}

#[track_caller]
fn refused(survey: &Survey, asked: &DrainAsked<'_>, code: Code, path: &str) {
    let failure = place_drain(survey, asked).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure:?}");
    assert!(
        !failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty(),
        "{failure:?}"
    );
}

#[test]
fn what_cannot_be_meant_is_refused() {
    let survey = level(&SQUARE);
    let demands = [least("least", 3.0)];
    let whole = || within([0.0, 20.0], [0.0, 20.0]);
    let changed = |change: &dyn Fn(&mut DrainAsked<'_>), code: Code, path: &str| {
        let mut asked = drain(whole(), &demands);
        change(&mut asked);
        refused(&survey, &asked, code, path);
    };
    changed(&|asked| asked.within = within([12.0, 8.0], [0.0, 20.0]), Code::OutOfRange, "x_to");
    changed(&|asked| asked.within = within([0.0, 20.0], [9.0, 8.0]), Code::OutOfRange, "y_to");
    changed(&|asked| asked.within = within([30.0, 40.0], [0.0, 20.0]), Code::DrainUnplaced, "x_from");
    changed(&|asked| asked.within = within([0.0, 0.0], [0.0, 20.0]), Code::DrainUnplaced, "x_from");
    changed(&|asked| asked.most_places = 0, Code::OutOfRange, "most_places");
    changed(&|asked| asked.close = Share::from_base(0.0), Code::OutOfRange, "close");
    changed(&|asked| asked.fall = slope(20.0), Code::OutOfRange, "fall");
    changed(&|asked| asked.greatest_fall = Some(slope(-1.0)), Code::OutOfRange, "greatest_fall");
    // From the corners at least 1/8 in/ft: from the nearest wall, that is at most 10 ft away, it is more.
    changed(&|asked| asked.greatest_fall = Some(slope(0.125)), Code::DrainNowhere, "x_from");
    let hidden = outlines(1).swap_remove(2);
    refused(&hidden, &drain(within([13.0, 19.0], [11.0, 17.0]), &demands), Code::DrainUnplaced, "x_from");
    let column = with_column();
    refused(&column, &drain(within([8.5, 10.5], [6.5, 9.0]), &demands), Code::DrainUnplaced, "x_from");
    let nan = DrainBounds { x: [Length::from_base(f64::NAN), feet(3.0)], y: [feet(1.0), feet(2.0)] };
    let asked = drain(nan, &demands);
    let failure = place_drain(&survey, &asked).unwrap_err();
    assert_eq!(failure.path, "x_from");
}

#[test]
fn a_search_that_is_cut_short_says_so() {
    let survey = &outlines(2)[1];
    let demands = [least("least", 3.0)];
    let mut asked = drain(within([1.0, 29.0], [1.0, 12.0]), &demands);
    asked.most_places = 5;
    let found = place_drain(survey, &asked).unwrap();
    assert!(found.ended == Ended::Cap && found.gap.base() > 1e-4 && found.places <= 6, "{found:?}");
}
