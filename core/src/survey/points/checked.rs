//! Points whose numbers are real, and some of them.

use super::Points;
use crate::failure::{Code, Failure, Place, Result};
use crate::geometry::FARTHEST;

/// So many points cannot be numbered any more by 32 bits.
const MOST: usize = u32::MAX as usize;

/// Refuses points whose numbers are unreal.
pub(super) fn check_points(points: &Points) -> Result<()> {
    if points.len() >= MOST {
        return Err(Failure::new(Code::OutOfRange, "points")
            .written(format!("{} points", points.len()))
            .allowed(format!("fewer than {MOST}"))
            .remedy("cut the scan into parts"));
    }
    let real = |value: &f64| value.abs() <= FARTHEST;
    for (axis, values) in [("x", &points.x), ("y", &points.y), ("z", &points.z)] {
        if values.len() != points.len() {
            return Err(Failure::new(Code::LengthMismatch, axis)
                .written(format!("{} numbers", values.len()))
                .allowed(format!("{}, as x has", points.len()))
                .remedy("give each point all of its coordinates"));
        }
        if let Some(index) = values.iter().position(|value| !real(value)) {
            return Err(Failure::new(Code::NotFinite, axis)
                .at(Place::Index(index))
                .written(format!("{} m", values[index]))
                .allowed(format!("numbers within {FARTHEST} m"))
                .remedy("check this point, or leave it out"));
        }
    }
    Ok(())
}

/// Some of the points, by their numbers.
pub(super) fn pick(points: &Points, numbers: &[usize]) -> Points {
    let of = |values: &[f64]| numbers.iter().map(|&number| values[number]).collect();
    let name = |&number: &usize| points.names.get(number).cloned().flatten();
    Points {
        x: of(&points.x),
        y: of(&points.y),
        z: of(&points.z),
        names: if points.names.is_empty() { Vec::new() } else { numbers.iter().map(name).collect() },
    }
}
