//! Neither the order of the shots nor the units change the thin zones, what their choices take, or which is the cheapest.

use super::assert_near;
use super::random::Random;
use super::work::{Work, length, run, works};
use overslab::operation::{Column, Columns, Value};
use overslab::quantity::System;
use serde_json::json;

/// Prices a cubic metre and a square metre, as they are for a cubic yard and a square foot.
const YARD: f64 = 0.9144;
const FOOT: f64 = 0.3048;

/// All numbers, counts and words of the answer, in order; texts are rounded and left out.
fn told(work: &Work, system: System) -> Vec<f64> {
    let is_us = system == System::Us;
    let small = |metres: f64| length(metres, system) * if is_us { 12.0 } else { 1000.0 };
    let of_volume = |price: f64| if is_us { price * YARD * YARD * YARD } else { price };
    let of_area = |price: f64| if is_us { price * FOOT * FOOT } else { price };
    let args = json!({
        "minimum": small(0.05), "bonded_minimum": small(0.03), "grind_at_most": small(0.02), "new_thickness": small(0.12),
        "concrete_price": of_volume(210.0), "bonding_price": of_area(55.0), "grinding_price": of_area(40.0),
        "breaking_out_price": of_area(95.0),
    });
    let records = vec![("survey", work.survey(system)), ("finish", work.finished(system))];
    run("thin_zones", args, records, system).iter().take(10).flat_map(numbers).collect()
}

fn numbers(value: &Value) -> Vec<f64> {
    match value {
        Value::Number(number) => vec![*number],
        Value::Table(Columns { columns, .. }) => columns.iter().flat_map(of_column).collect(),
        _ => Vec::new(),
    }
}

fn of_column(column: &Column) -> Vec<f64> {
    let place = |place: &Option<usize>| place.map_or(-1.0, |place| place as f64);
    match column {
        Column::Numbers(list) => {
            list.iter().map(|number| if number.is_nan() { -1e6 } else { *number }).collect()
        }
        Column::Choices(list) => list.iter().map(place).collect(),
        _ => Vec::new(),
    }
}

fn assert_same(found: &[f64], expected: &[f64], what: &str) {
    assert_eq!(found.len(), expected.len(), "{what}");
    for (&a, &b) in found.iter().zip(expected) {
        // Some ten metres across, money in thousands.
        assert_near(a, b, b.abs().max(100.0), what);
    }
}

#[test]
fn both_systems_of_units_find_the_same_zones() {
    let mut thin = 0;
    for (what, work) in works(6) {
        let expected = told(&work, System::Si);
        thin += usize::from(expected[0] > 0.0);
        assert_same(&told(&work, System::Us), &expected, &what);
    }
    assert!(thin > 12, "{thin} works with thin zones");
}

#[test]
fn any_order_of_the_shots_finds_the_same_zones() {
    for (seed, (what, work)) in works(6).enumerate() {
        let mut shuffled = work.clone();
        Random::new(seed as u64 + 700).shuffle(&mut shuffled.shots);
        assert_same(&told(&shuffled, System::Si), &told(&work, System::Si), &what);
    }
}
