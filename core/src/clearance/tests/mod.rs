//! Things judged against numbers worked out by hand.

mod doors;
mod edges;
mod floor;
mod golden;
mod laws;
mod measures;
mod swing;

use super::{Judgement, Kind, Measures, Meets, Thing};
use crate::quantity::{Elevation, Length, Typed, read};

/// The old slab of these tests.
const OLD: f64 = 99.0 * 0.3048;

fn length(text: &str) -> Length {
    read(text).unwrap()
}

/// An old slab at 99 ft that rises by so much, at one place.
fn raised(by: &str) -> Meets {
    let old = Elevation::from_base(OLD);
    Meets::at(old, old + length(by))
}

/// A level line so long over a level old slab, risen by so much.
fn line_raised(by: &str) -> Meets {
    let old = Elevation::from_base(OLD);
    Meets::between(length("12 ft"), [old, old + length(by)], [old, old + length(by)])
}

fn thing(kind: Kind, measures: Measures) -> Thing {
    measures.thing(kind).unwrap_or_else(|failure| panic!("{}: {failure}", kind.word()))
}

fn judged(kind: Kind, measures: Measures, by: &str) -> Judgement {
    let floor = if kind.needs_line() { line_raised(by) } else { raised(by) };
    thing(kind, measures).judged(&floor)
}

fn close(a: f64, b: f64) {
    assert!((a - b).abs() < 1e-9, "{a} {b}");
}
