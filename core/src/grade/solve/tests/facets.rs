//! Several facets: they meet, and never take more than one plane.

use super::support::*;
use crate::grade::finish::patterns::{BreakLine, DrainSet, ToDrain};
use crate::grade::finish::{Finish, FinishPoint};
use crate::grade::solve::{Asked, Demand, Line, Outlet, Wants, solve};
use crate::quantity::{Elevation, Typed};

fn valley(survey: &crate::survey::Survey) -> Finish {
    let point = |x: f64, y: f64| FinishPoint { x: feet(x), y: feet(y), elevation: elevation(100.0) };
    let line = BreakLine { from: point(10.0, 0.0), to: point(10.0, 16.0) };
    Finish::to_valley(survey.outline(), &line, [slope(0.25), slope(0.25)]).unwrap()
}

#[test]
fn two_planes_that_may_bend_take_no_more_than_one() {
    for seed in 0..20 {
        let survey = rough(seed, 20.0, 16.0, 1.0);
        let demands = [least("least", 3.0)];
        let one = solve(&survey, &asked(&demands)).unwrap();
        let layout = valley(&survey);
        let two = solve(&survey, &Asked { layout: Some(&layout), ..asked(&demands) }).unwrap();
        assert!(two.planned.concrete.base() <= one.planned.concrete.base() + 1e-9, "seed {seed}");
        assert_eq!(two.planned.finish.facets().len(), 2);
        let height = |x: f64| two.planned.finish.height_at(feet(x), feet(5.0)).unwrap().base();
        close(height(10.0 - 1e-9), height(10.0 + 1e-9), 1e-9);
    }
}

#[test]
fn a_valley_over_a_level_slab_is_worked_by_hand() {
    // 3 in along the valley, 1/4 in/ft on 10 ft to both sides: 1 1/4 in more in the mean.
    let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 16.0], [0.0, 16.0]];
    let survey = slab(&corners, &EDGES, &corners.map(|[x, y]| [x, y, 99.5]));
    let layout = valley(&survey);
    let toward = Outlet::Line([at(10.0, 0.0), at(10.0, 16.0)]);
    let fall = Demand::new("fall", Wants::LeastFall { fall: slope(0.25), toward, on: None });
    let demands = [least("least", 3.0), fall];
    let asked = Asked { layout: Some(&layout), steps: Some(steps()), ..asked(&demands) };
    let found = solve(&survey, &asked).unwrap();
    close(yards(found.planned.concrete), 320.0 * 4.25 / 12.0 / 27.0, 1e-10);
    close(yards(found.built.concrete), 320.0 * 4.25 / 12.0 / 27.0, 1e-8);
    for facet in found.built.finish.facets() {
        close(12.0 * facet.fall().base(), 0.25, 1e-8);
    }
}

fn funnel(survey: &crate::survey::Survey) -> Finish {
    let drain = ToDrain {
        x: feet(8.0),
        y: feet(6.0),
        elevation: elevation(100.0),
        set: DrainSet::At(elevation(99.8)),
        rim: None,
    };
    Finish::to_drain(survey.outline(), &drain).unwrap()
}

#[test]
fn a_drain_has_a_level_perimeter_first() {
    for seed in 0..10 {
        let survey = rough(seed, 20.0, 16.0, 0.5);
        let layout = funnel(&survey);
        let toward = Outlet::Place(at(8.0, 6.0));
        let fall = Demand::new("fall", Wants::LeastFall { fall: slope(0.125), toward, on: None });
        let demands = [least("least", 3.0), fall];
        let asked = Asked { layout: Some(&layout), steps: Some(steps()), ..asked(&demands) };
        let found = solve(&survey, &asked).unwrap();
        assert_eq!(found.habits, ["level perimeter"]);
        let height = |x: f64, y: f64| found.built.finish.height_at(feet(x), feet(y)).unwrap();
        let eighths = |height: Elevation| (height.base() / 0.3048 - 100.0) * 96.0;
        for (x, y) in [(0.0, 0.0), (20.0, 0.0), (20.0, 16.0), (0.0, 16.0)] {
            close(height(x, y).base(), height(0.0, 0.0).base(), 1e-8);
        }
        for height in [height(0.0, 0.0), height(8.0, 6.0)] {
            close(eighths(height), eighths(height).round(), 1e-5);
        }
        // From the farthest corner: 12 ft across and 10 ft along.
        let drop = (height(20.0, 16.0) - height(8.0, 6.0)).base() / 0.3048;
        assert!(drop / (12.0_f64.powi(2) + 10.0_f64.powi(2)).sqrt() >= 0.125 / 12.0 - 1e-9);
        assert!(
            found.bare.concrete <= found.planned.concrete && found.planned.concrete <= found.built.concrete
        );
    }
}

#[test]
fn a_drain_with_a_rim_keeps_it_level() {
    let survey = rough(4, 20.0, 16.0, 0.5);
    let drain = ToDrain {
        x: feet(8.0),
        y: feet(6.0),
        elevation: elevation(100.0),
        set: DrainSet::At(elevation(99.8)),
        rim: Some([feet(1.0), feet(1.0)]),
    };
    let layout = Finish::to_drain(survey.outline(), &drain).unwrap();
    let toward = Outlet::Place(at(8.0, 6.0));
    let fall = Demand::new("fall", Wants::LeastFall { fall: slope(0.125), toward, on: None });
    let demands = [least("least", 3.0), fall];
    let found =
        solve(&survey, &Asked { layout: Some(&layout), steps: Some(steps()), ..asked(&demands) }).unwrap();
    assert_eq!(found.habits, ["level perimeter", "level drain"]);
    let rim = found.built.finish.facets().iter().find(|facet| facet.name() == Some("drain")).unwrap();
    close(rim.fall().base(), 0.0, 1e-9);
    let height = |x: f64, y: f64| found.built.finish.height_at(feet(x), feet(y)).unwrap().base() / 0.3048;
    assert!((height(20.0, 16.0) - height(8.0, 6.0)) / (144.0_f64 + 100.0).sqrt() >= 0.125 / 12.0 - 1e-9);
}

#[test]
fn no_direction_falls_more_than_the_steepest_allowed() {
    // The back must be 12 in up and the left side 6 in: too steep together unless the floor is raised elsewhere.
    let survey = rough(5, 20.0, 16.0, 0.5);
    let up = Demand::new("corner", Wants::AtLeast(along(&[[0.0, 16.0]], 99.5 + 20.0 / 12.0)));
    let steepest = Demand::new("steepest", Wants::Steepest { fall: slope(0.25), on: None });
    let found = solved(&survey, &[least("least", 3.0), up.clone(), steepest]);
    close(12.0 * found.planned.finish.fall().base(), 0.25, 1e-7);
    assert!(found.demands[2].binds);
    // Four directions alone would allow more.
    let loose = solved(&survey, &[least("least", 3.0), up]);
    assert!(loose.planned.finish.fall().base() * 12.0 > 0.25);
    let price = found.demands[2].prices;
    let again = solved(
        &survey,
        &[
            least("least", 3.0),
            Demand::new("corner", Wants::AtLeast(along(&[[0.0, 16.0]], 99.5 + 20.0 / 12.0))),
            Demand::new("steepest", Wants::Steepest { fall: slope(0.25 + 0.0012), on: None }),
        ],
    );
    let saved = again.planned.concrete.base() - found.planned.concrete.base();
    // The cone's price is its slope there: over 0.01 % it is that to a few parts in a thousand.
    close(saved / 0.1, price.looser.concrete.unwrap().base(), 0.01 * saved.abs() / 0.1);
}

#[test]
fn facets_are_called_by_name_or_by_what_they_fall_to() {
    let survey = rough(2, 20.0, 16.0, 0.5);
    let layout = funnel(&survey);
    let wants = |on: &str| Wants::CrossFall {
        fall: slope(0.0),
        along: Line::Edge("front".into()),
        on: Some(on.into()),
    };
    let demands = [least("least", 3.0), Demand::new("square", wants("front"))];
    let found = solve(&survey, &Asked { layout: Some(&layout), ..asked(&demands) }).unwrap();
    let front = found.planned.finish.facets().iter().find(|facet| facet.name() == Some("front")).unwrap();
    close(front.plane().b(), 0.0, 1e-10);
    let demands = [least("least", 3.0), Demand::new("square", wants("drain"))];
    let found = solve(&survey, &Asked { layout: Some(&layout), ..asked(&demands) }).unwrap();
    assert!(found.planned.finish.facets().iter().all(|facet| facet.plane().b().abs() < 1e-10));
}
