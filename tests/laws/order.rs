//! An order: what is ordered covers what is figured, in whole steps, and the parts add up.

use super::random::Random;
use super::work::run;
use overslab::operation::{Column, Value, call};
use overslab::operations::find;
use overslab::quantity::System;
use serde_json::{Value as Json, json};

#[test]
fn an_order_covers_what_is_figured_by_less_than_a_step() {
    let mut random = Random::new(77);
    let results = find("order").unwrap().results;
    for _ in 0..2000 {
        let floor = random.between(0.1, 60.0);
        let extras: Vec<f64> = (0..random.below(4)).map(|_| random.between(0.0, 3.0)).collect();
        let shares: Vec<f64> = (0..random.below(3)).map(|_| random.between(0.0, 15.0)).collect();
        let step = [0.25, 0.5, 1.0, 0.1][random.below(4)];
        let capacity = random.between(4.0, 12.0);
        let named = |list: &[f64], what: &str| -> Json {
            list.iter()
                .enumerate()
                .map(|(n, number)| json!({ "name": format!("{what} {n}"), what: number }))
                .collect()
        };
        let args = json!({
            "floor": floor, "extras": named(&extras, "volume"), "allowances": named(&shares, "share"),
            "step": step, "capacity": capacity,
        });
        let said = args.to_string();
        let answer = run("order", args, Vec::new(), System::Si);
        let number = |name: &str| {
            call::flat_number(&answer[results.iter().position(|port| port.name == name).unwrap()])
        };
        let (net, figured, ordered) = (number("net"), number("figured"), number("ordered"));
        let close = |a: f64, b: f64| (a - b).abs() <= 1e-12 * figured;
        assert!(close(net, floor + extras.iter().sum::<f64>()), "{said}: net {net}");
        assert!(close(figured - net, net * shares.iter().sum::<f64>() / 100.0), "{said}: figured {figured}");
        let Some(Value::Table(allowed)) = answer.last() else { panic!("{said}: {answer:?}") };
        let Some(Column::Numbers(volumes)) = allowed.columns.get(1) else { panic!("{said}: {allowed:?}") };
        assert_eq!(volumes.len(), shares.len(), "{said}");
        assert!(close(volumes.iter().sum::<f64>(), figured - net), "{said}: {volumes:?}");
        // A hair above a whole step is rounding, not another step: a trillionth.
        assert!(
            ordered >= figured * (1.0 - 1e-12) && ordered < figured + step,
            "{said}: {ordered} for {figured}"
        );
        let steps = ordered / step;
        assert!((steps - steps.round()).abs() <= 1e-9, "{said}: {steps} steps");
        assert!(
            number("spare") >= 0.0 && close(number("spare"), (ordered - figured).max(0.0)),
            "{said}: {}",
            number("spare")
        );
        let (loads, last) = (number("loads"), number("last"));
        assert!(last > 0.0 && last <= capacity, "{said}: last {last}");
        assert!(close((loads - 1.0) * capacity + last, ordered), "{said}: {loads} loads, last {last}");
    }
}

#[test]
fn a_whole_step_is_ordered_as_it_is() {
    for quarter in 1..400 {
        let floor = f64::from(quarter) * 0.25;
        let args = json!({ "floor": floor, "allowances": [], "step": 0.25 });
        let answer = run("order", args, Vec::new(), System::Us);
        let results = find("order").unwrap().results;
        let place = |name: &str| results.iter().position(|port| port.name == name).unwrap();
        let yards = call::from_base(
            &results[place("ordered")],
            System::Us,
            call::flat_number(&answer[place("ordered")]),
        );
        assert!((yards - floor).abs() <= 1e-12 * floor, "{floor} yd3 become {yards}");
        assert!(call::flat_number(&answer[place("spare")]) >= 0.0);
        // A hair over a step, as sums make it, is that step, and nothing is over: never less than nothing.
        let args = json!({ "floor": floor * (1.0 + 4e-13), "allowances": [], "step": 0.25 });
        let over = run("order", args, Vec::new(), System::Us);
        assert_eq!(call::flat_number(&over[place("ordered")]), call::flat_number(&answer[place("ordered")]));
        assert!(call::flat_number(&over[place("spare")]) >= 0.0, "{floor}");
    }
}
