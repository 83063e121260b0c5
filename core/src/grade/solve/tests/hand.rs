//! By hand: level and sloped slabs, where the finish is a prism.

use super::support::*;
use crate::failure::Code;
use crate::grade::solve::{Asked, Demand, MayGrind, Price, Wants, solve, sweep};
use crate::quantity::{Typed, VolumePrice, read};

fn level() -> crate::survey::Survey {
    let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 16.0], [0.0, 16.0]];
    slab(&corners, &EDGES, &corners.map(|[x, y]| [x, y, 99.5]))
}

#[test]
fn over_a_level_slab_the_least_concrete_is_a_prism() {
    // 20 ft x 16 ft x 3 in = 80 ft3; a fall of 1/4 in/ft lifts the back by 4 in: half of it more.
    let survey = level();
    let demands = [least("least", 3.0), fall("fall", 0.25, "front")];
    let flat = solved(&survey, &demands[..1]);
    close(yards(flat.bare.concrete), 80.0 / 27.0, 1e-12);
    close(flat.bare.finish.fall().base(), 0.0, 1e-12);
    let falling = solved(&survey, &demands);
    close(yards(falling.bare.concrete), (80.0 + 320.0 * 2.0 / 12.0) / 27.0, 1e-11);
    close(
        falling.planned.finish.height_at(feet(7.0), feet(0.0)).unwrap().base(),
        (99.5 + 0.25) * 0.3048,
        1e-10,
    );
}

#[test]
fn prices_are_areas_and_moments() {
    // 1/4 in over 320 ft2; 0.1 % of fall over a mean run of 8 ft.
    let survey = level();
    let found = solved(&survey, &[least("least", 3.0), fall("fall", 0.25, "front")]);
    let thicker = 320.0 * 0.25 / 12.0 / 27.0;
    let steeper = 320.0 * 8.0 * 0.001 / 27.0;
    for (kept, expected) in found.demands.iter().zip([thicker, steeper]) {
        let Price { concrete: Some(tighter), .. } = kept.prices.tighter else { panic!("{kept:?}") };
        let Price { concrete: Some(looser), holds: Some(holds), .. } = kept.prices.looser else {
            panic!("{kept:?}")
        };
        close(yards(tighter), expected, 1e-10);
        close(yards(looser), -expected, 1e-10);
        assert!(kept.binds && kept.prices.tighter.holds.is_none());
        // Loosened until the floor would dip, or until it is level.
        assert!(holds > 0.0);
    }
    close(found.demands[1].prices.looser.holds.unwrap(), 0.25 / 12.0, 1e-9);
}

#[test]
fn a_demand_that_does_not_bind_costs_nothing_for_as_far_as_its_slack() {
    let survey = level();
    let demands = [least("least", 3.0), at_most("door", &[[4.0, 0.0], [16.0, 0.0]], 99.5 + 4.0 / 12.0)];
    let found = solved(&survey, &demands);
    let door = &found.demands[1];
    assert!(!door.binds);
    close(door.slack / 0.0254, 1.0, 1e-8);
    assert_eq!(door.prices.tighter.concrete.unwrap().base(), 0.0);
    close(door.prices.tighter.holds.unwrap() / 0.0254, 1.0, 1e-7);
    assert_eq!(door.prices.looser.holds, None);
}

#[test]
fn a_limit_that_binds_tilts_the_floor_and_both_sides_have_their_price() {
    // The finish may be 3 in thick at the front and must be 5 in at the back: 4 in in the mean.
    let survey = level();
    let back = Demand::new("step", Wants::AtLeast(along(&[[0.0, 16.0], [20.0, 16.0]], 99.5 + 5.0 / 12.0)));
    let found = solved(&survey, &[least("least", 3.0), back]);
    close(yards(found.planned.concrete), 320.0 * 4.0 / 12.0 / 27.0, 1e-11);
    // Each carries half of the floor.
    for kept in &found.demands {
        close(yards(kept.prices.tighter.concrete.unwrap()), 160.0 * 0.25 / 12.0 / 27.0, 1e-10);
        close(yards(kept.prices.looser.concrete.unwrap()), -160.0 * 0.25 / 12.0 / 27.0, 1e-10);
        close(kept.prices.looser.holds.unwrap() / 0.0254, if kept.name == "step" { 2.0 } else { 3.0 }, 1e-6);
    }
}

#[test]
fn rounding_takes_the_next_step_that_keeps_all() {
    // 3 3/8 in over 99.5 ft is 99.78125 ft: 2 5/8 in below the datum, a whole eighth. From 99.49 ft it is not.
    let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 16.0], [0.0, 16.0]];
    for (old, up) in [(99.5, 0.0), (99.49, 0.12)] {
        let survey = slab(&corners, &EDGES, &corners.map(|[x, y]| [x, y, old]));
        let demands = [least("least", 3.0), fall("fall", 0.125, "front")];
        let asked = Asked { margin: read("3/8 in").unwrap(), steps: Some(steps()), ..asked(&demands) };
        let found = solve(&survey, &asked).unwrap();
        let rounding = found.rounding.unwrap();
        assert!(rounding.best);
        close(rounding.heights.base() / 0.0254, 0.125, 1e-12);
        // 0.01 ft is 0.12 in; the next eighth above.
        let expected = if up > 0.0 { up } else { 0.0 };
        let raised = 12.0
            * (found.built.finish.height_at(feet(3.0), feet(0.0)).unwrap().base()
                - found.planned.finish.height_at(feet(3.0), feet(0.0)).unwrap().base())
            / 0.3048;
        close(raised, expected, 1e-6);
        assert_eq!(found.habits, ["level along front"]);
        close(12.0 * found.built.finish.fall().base(), 0.125, 1e-9);
    }
}

#[test]
fn a_sweep_is_the_same_as_solving_again() {
    let survey = rough(3, 20.0, 16.0, 1.0);
    let values: Vec<f64> = (0..11).map(|step| (1.5 + 0.25 * f64::from(step)) * 0.0254).collect();
    let demands = [least("least", 3.0), fall("fall", 0.125, "front")];
    let curve = sweep(&survey, &asked(&demands), "Least", &values).unwrap();
    for (point, &value) in curve.points.iter().zip(&values) {
        let again = solved(&survey, &[least("least", value / 0.0254), demands[1].clone()]);
        close(point.concrete.unwrap().base(), again.bare.concrete.base(), 1e-10);
    }
    let failure = sweep(&survey, &asked(&demands), "leest", &values).unwrap_err();
    assert_eq!(failure.code, Code::DemandUnknown);
    assert!(failure.remedy.contains("`least`"), "{failure}");
}

#[test]
fn a_hump_is_ground_where_that_is_cheaper() {
    // A level slab with one hump of 1 in in its middle; all of it free to grind at no price: the floor is 3 in over the level part
    // or higher, never higher than over the hump.
    let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 16.0], [0.0, 16.0]];
    let mut shots: Vec<[f64; 3]> = corners.iter().map(|[x, y]| [*x, *y, 99.5]).collect();
    shots.push([10.0, 8.0, 99.5 + 1.0 / 12.0]);
    let survey = slab(&corners, &EDGES, &shots);
    let demands = [least("least", 3.0)];
    let plain = solved(&survey, &demands);
    let grind = |depth: f64, price: Option<f64>| {
        let price = price.map(VolumePrice::from_base);
        let grinding = Some(MayGrind { at_most: inches(depth), price });
        let concrete_price = Some(VolumePrice::from_base(200.0));
        solve(&survey, &Asked { grinding, concrete_price, ..asked(&demands) }).unwrap()
    };
    let free = grind(1.0, None);
    // The hump is a pyramid of 1 in over all of it: the level finish 3 in over the plain part needs 3 in everywhere after grinding.
    close(yards(free.planned.concrete), 80.0 / 27.0, 1e-6);
    close(free.planned.ground.base(), 320.0 / 3.0 / 12.0 * 0.3048_f64.powi(3), 1e-6);
    // At p times the price of concrete the last slice of the hump is worth its concrete where depth = 1 in / sqrt(1 + p).
    for price in [0.25_f64, 1.0, 3.0, 1000.0] {
        let found = grind(1.0, Some(200.0 * price));
        let depth = 1.0 / (1.0 + price).sqrt();
        let ground = 320.0 / 12.0 * depth.powi(3) / 3.0;
        let concrete = 320.0 / 12.0 * (3.0 + 1.0 - depth - 1.0 / 3.0) + ground;
        close(found.planned.concrete.base(), concrete * 0.3048_f64.powi(3), 1e-4);
        close(found.planned.ground.base(), ground * 0.3048_f64.powi(3), 1e-4);
        let best = concrete + price * ground;
        close(found.proof.cost.base(), best * 0.3048_f64.powi(3), 2e-8 * (1.0 + price));
    }
    let half = grind(0.5, None);
    assert!(free.planned.concrete < half.planned.concrete && half.planned.concrete < plain.planned.concrete);
    // A price between: the cost is no more than either end's.
    let some = grind(1.0, Some(400.0));
    let money = some.planned.money.unwrap().base();
    assert!(money <= 200.0 * plain.planned.concrete.base() + 1e-6);
    let at_free = 200.0 * free.planned.concrete.base() + 400.0 * free.planned.ground.base();
    assert!(money <= at_free + 1e-6, "{money} {at_free}");
}

#[test]
fn what_cannot_be_meant_is_refused() {
    let survey = level();
    let refused = |demands: &[Demand], code: Code, path: &str| {
        let failure = solve(&survey, &asked(demands)).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    };
    refused(&[least("a", 3.0), least("A ", 2.0)], Code::KeyRepeated, "demands[1].name");
    refused(&[least(" ", 3.0)], Code::KeyMissing, "demands[0].name");
    refused(&[least("a", -1.0)], Code::OutOfRange, "demands[0].thickness");
    refused(&[least("a", f64::NAN)], Code::NotFinite, "demands[0].thickness");
    refused(&[least("a", 3.0), fall("f", 0.25, "frnt")], Code::EdgeUnknown, "demands[1].edge");
    refused(&[at_most("a", &[], 100.0)], Code::EmptyList, "demands[0].x");
    refused(&[at_most("a", &[[f64::NAN, 0.0]], 100.0)], Code::OutOfRange, "demands[0].x");
    refused(&[at_most("a", &[[60.0, 0.0]], 100.0)], Code::OutOfRange, "demands[0].x");
    refused(&[Demand { weight: 0.0, ..least("a", 3.0) }], Code::OutOfRange, "demands[0].weight");
    let on = Wants::Steepest { fall: slope(0.25), on: Some("left half".into()) };
    refused(&[Demand::new("s", on)], Code::FacetUnknown, "demands[0].facet");
}
