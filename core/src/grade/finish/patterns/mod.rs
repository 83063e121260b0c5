//! Finishes by pattern: facets laid out over an outline so that they meet exactly.

mod drain;
mod line;
mod rim;
mod sight;
mod strip;
mod trench;
mod valley;

pub use drain::{DrainSet, Reach, ToDrain};
pub use line::BreakLine;
pub(in crate::grade) use sight::INSIDE;
pub use strip::{Strip, Toward};
pub use trench::{EdgeTrench, LineTrench};

use super::Facet;
use super::convex::{area, halves, hull};
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point, Region};
use crate::survey::outline::Outline;

/// How wide a drain, a trench or a strip may be: up to 100 ft.
pub const WIDTH: crate::quantity::Range = crate::quantity::Range::closed(0.0, 100.0 * 0.3048);

/// The convex polygon around an outline: what is beside the work in it counts for nothing.
fn around(outline: &Outline) -> Vec<Point> {
    hull(outline.region().outer().corners())
}

/// A share of the work too small to be a facet.
const NOTHING: f64 = 1e-9;

/// The parts of a polygon on both sides of a line; an empty one where there is nothing to speak of.
fn sides(polygon: &[Point], from: Point, to: Point) -> [Vec<Point>; 2] {
    let whole = area(polygon);
    halves(polygon, from, to).map(|half| if area(&half) <= NOTHING * whole { Vec::new() } else { half })
}

/// A facet over a polygon that a pattern made.
fn facet(corners: Vec<Point>, plane: Plane, name: &str) -> Result<Facet> {
    let region = Region::new(corners, Vec::new()).map_err(|error| {
        Failure::new(Code::FacetShape, "survey")
            .written(format!("{name}: {error}"))
            .allowed("facets that could be struck off")
            .remedy("move the line or the drain")
    })?;
    Ok(Facet::new(region, plane).named(name))
}

/// The place so far from another in a direction.
fn stepped(from: Point, direction: [f64; 2], by: f64) -> Point {
    Point::new(from.x + by * direction[0], from.y + by * direction[1])
}

/// Facets under names of their own: of several under one name the later ones get a number.
fn told_apart(facets: Vec<Facet>) -> Vec<Facet> {
    let mut told: Vec<Facet> = Vec::with_capacity(facets.len());
    for facet in facets {
        let name = facet.name().unwrap_or_default().to_owned();
        let taken = |name: &str| {
            let name = name.to_lowercase();
            told.iter().any(|other| other.name().is_some_and(|other| other.to_lowercase() == name))
        };
        let numbered = |number: usize| if number == 1 { name.clone() } else { format!("{name} {number}") };
        // Among one more number than facets one is free.
        let own = (1..=told.len() + 1).map(numbered).find(|name| !taken(name));
        let own = own.unwrap_or_default();
        told.push(facet.named(own));
    }
    told
}
