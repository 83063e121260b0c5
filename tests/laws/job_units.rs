//! The same job in feet and in metres gives the same answer.

use super::assert_near;
use crate::bad_input::cases::boat_store;
use overslab::job::JobFile;
use overslab::quantity::unit::QuantityType;
use overslab::quantity::{kinds, read_kind, write};
use serde_json::Value as Json;

/// The quantities that a job may hold, those first whose texts no other reads; the sign of each in metric texts.
const QUANTITIES: [(&QuantityType, &str); 4] =
    [(&kinds::volume, "m3"), (&kinds::slope, "m/m"), (&kinds::length, "m"), (&kinds::share, "of 1")];

/// A text in metric units with the shortest digits that read to the same number, if it is a quantity.
fn metric(text: &str) -> Option<String> {
    QUANTITIES.iter().find_map(|&(quantity, symbol)| {
        let reading = read_kind(text, quantity, None).ok()?;
        Some(format!("{} {symbol}", write::shortest(reading.base)))
    })
}

/// Every quantity of a tree in metric units; how many there were.
fn rewrite(tree: &mut Json) -> usize {
    match tree {
        Json::String(text) => match metric(text) {
            Some(rewritten) => {
                *text = rewritten;
                1
            }
            None => 0,
        },
        Json::Array(list) => list.iter_mut().map(rewrite).sum(),
        Json::Object(map) => map.values_mut().map(rewrite).sum(),
        _ => 0,
    }
}

fn report(job: &str) -> Json {
    let report =
        JobFile::read(job).and_then(|job| job.report()).unwrap_or_else(|failure| panic!("{failure}"));
    serde_json::to_value(report).unwrap()
}

#[test]
fn the_boat_store_in_metres_is_the_boat_store_in_feet() {
    let job = boat_store();
    let mut tree = toml::from_str::<Json>(&job).unwrap();
    // Twenty rods, nine distances of rows and columns, and all else that is measured.
    let count = rewrite(&mut tree);
    assert!(count >= 50, "only {count} quantities");
    let metric = tree.to_string();
    for foot in ["\\\"", "'-", "in/ft", "yd3", " in\"", " ft\""] {
        assert!(!metric.contains(foot), "{foot} is left in {metric}");
    }
    same(&report(&job), &report(&metric), "");
}

/// Two reports say the same: numbers to a billionth of their size (or of a metre or cubic metre, for differences), texts to the letter.
fn same(feet: &Json, metres: &Json, path: &str) {
    match (feet, metres) {
        (Json::Number(feet), Json::Number(metres)) => {
            let (feet, metres) = (feet.as_f64().unwrap(), metres.as_f64().unwrap());
            assert_near(metres, feet, feet.abs().max(1.0), path);
        }
        (Json::Array(feet), Json::Array(metres)) => {
            assert_eq!(feet.len(), metres.len(), "{path}");
            for (at, (feet, metres)) in feet.iter().zip(metres).enumerate() {
                same(feet, metres, &format!("{path}[{at}]"));
            }
        }
        (Json::Object(feet), Json::Object(metres)) => {
            assert_eq!(feet.keys().collect::<Vec<_>>(), metres.keys().collect::<Vec<_>>(), "{path}");
            for (key, feet) in feet {
                same(feet, &metres[key], &format!("{path}.{key}"));
            }
        }
        _ => assert_eq!(feet, metres, "{path}"),
    }
}
