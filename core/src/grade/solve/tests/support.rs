//! Old slabs and demands for the tests.

use crate::geometry::Point;
use crate::geometry::random::Random;
use crate::grade::solve::{Asked, Demand, Heights, Line, Outlet, Solved, Steps, Wants, solve};
use crate::operation::record::Record;
use crate::quantity::{Elevation, Length, Slope, Typed, read};
use crate::survey::Survey;

pub(super) fn feet(feet: f64) -> Length {
    Length::from_base(feet * 0.3048)
}

pub(super) fn inches(inches: f64) -> Length {
    Length::from_base(inches * 0.0254)
}

pub(super) fn at(x: f64, y: f64) -> Point {
    Point::new(x * 0.3048, y * 0.3048)
}

pub(super) fn elevation(feet: f64) -> Elevation {
    Elevation::from_base(feet * 0.3048)
}

/// An old slab by corners and shots in feet, with the names of its edges.
pub(super) fn slab(corners: &[[f64; 2]], edges: &[&str], shots: &[[f64; 3]]) -> Survey {
    let text = |feet: f64| format!("{feet} ft");
    let corner = |[x, y]: &[f64; 2]| serde_json::json!({"x": text(*x), "y": text(*y)});
    let shot = |(number, [x, y, z]): (usize, &[f64; 3])| serde_json::json!({"name": format!("S{}", number + 1), "x": text(*x), "y": text(*y), "elevation": text(*z)});
    let json = serde_json::json!({
        "outline": {"corners": corners.iter().map(corner).collect::<Vec<_>>(), "edges": edges},
        "shots": shots.iter().enumerate().map(shot).collect::<Vec<_>>(),
        "beyond_allowed": true,
    });
    Survey::from_json(json).unwrap()
}

/// The names of the edges of a rectangle from the front left corner.
pub(super) const EDGES: [&str; 4] = ["front", "right", "back", "left"];

/// A rectangle with shots on its corners and within, up to `rough` inches out of level.
pub(super) fn rough(seed: u64, wide: f64, long: f64, rough: f64) -> Survey {
    let mut random = Random::new(seed);
    let corners = [[0.0, 0.0], [wide, 0.0], [wide, long], [0.0, long]];
    let mut shots: Vec<[f64; 3]> = corners.iter().map(|[x, y]| [*x, *y, 0.0]).collect();
    for _ in 0..12 {
        shots.push([random.between(1.0, wide - 1.0), random.between(1.0, long - 1.0), 0.0]);
    }
    for shot in &mut shots {
        shot[2] = 99.5 + random.between(-rough, rough) / 12.0;
    }
    slab(&corners, &EDGES, &shots)
}

pub(super) fn least(name: &str, thickness: f64) -> Demand {
    Demand::new(name, Wants::LeastThickness { least: inches(thickness), zone: None })
}

pub(super) fn slope(per_foot: f64) -> Slope {
    Slope::from_base(per_foot / 12.0)
}

pub(super) fn fall(name: &str, per_foot: f64, edge: &str) -> Demand {
    let toward = Outlet::Edge(edge.to_owned());
    Demand::new(name, Wants::LeastFall { fall: slope(per_foot), toward, on: None })
}

pub(super) fn along(places: &[[f64; 2]], feet: f64) -> Heights {
    let places = places.iter().map(|[x, y]| at(*x, *y)).collect();
    Heights { along: Line::Places(places), elevation: elevation(feet) }
}

pub(super) fn at_most(name: &str, places: &[[f64; 2]], feet: f64) -> Demand {
    Demand::new(name, Wants::AtMost(along(places, feet)))
}

pub(super) fn asked(demands: &[Demand]) -> Asked<'_> {
    Asked {
        layout: None,
        demands,
        margin: Length::from_base(0.0),
        edges_bind: false,
        concrete_price: None,
        grinding: None,
        steps: None,
    }
}

pub(super) fn steps() -> Steps {
    Steps {
        heights: read("1/8 in").unwrap(),
        datum: read("100 ft").unwrap(),
        falls: read("1/16 in/ft").unwrap(),
    }
}

pub(super) fn solved(survey: &Survey, demands: &[Demand]) -> Solved {
    solve(survey, &asked(demands)).unwrap()
}

/// Cubic yards.
pub(super) fn yards(volume: crate::quantity::Volume) -> f64 {
    volume.base() / crate::quantity::units::CUBIC_YARD
}

#[track_caller]
pub(super) fn close(value: f64, expected: f64, by: f64) {
    assert!((value - expected).abs() <= by, "{value} is not {expected}");
}
