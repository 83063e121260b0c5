//! The old slab from what a crew or a file gives.

mod faces;
mod odd;
mod steps;

use crate::operation::record::Record;
use crate::survey::Survey;
use serde_json::{Value, json};

/// A survey from its JSON.
fn survey(json: Value) -> Survey {
    Survey::from_json(json).expect("a survey")
}

/// An outline of a rectangle in feet.
fn rectangle(width: f64, depth: f64) -> Value {
    let corner = |x: f64, y: f64| json!({"x": format!("{x} ft"), "y": format!("{y} ft")});
    json!({"corners": [corner(0.0, 0.0), corner(width, 0.0), corner(width, depth), corner(0.0, depth)],
        "edges": ["front", "right", "back", "left"]})
}

/// The survey written out, read again and written out once more is the same text, and the same surface.
#[track_caller]
fn assert_canonical(survey: &Survey) {
    let written = survey.to_json();
    let again = Survey::from_json(written.clone()).expect("its own text");
    assert_eq!(again.to_json(), written);
    assert_eq!(again.surface().whole().integrals(), survey.surface().whole().integrals());
}
