//! Holes lie inside the outline and apart from one another.
//!
//! No two rings meet (that was checked before), so one corner tells for the whole ring.

use super::place::{distance_to, encloses};
use super::{RegionError, Ring};

pub(super) fn check(outer: &Ring, holes: &[Ring]) -> Result<(), RegionError> {
    for (index, hole) in holes.iter().enumerate() {
        let corner = hole.corners()[0];
        if !encloses(outer.corners(), corner) {
            let distance = distance_to(outer, corner);
            return Err(RegionError::HoleOutside { hole: index, distance });
        }
        if let Some(around) = holes.iter().position(|other| {
            other.id() != hole.id() && within_bounds(other, hole) && encloses(other.corners(), corner)
        }) {
            return Err(RegionError::HoleInHole { inner: index, outer: around });
        }
    }
    Ok(())
}

fn within_bounds(around: &Ring, inner: &Ring) -> bool {
    let (low, high) = around.bounds();
    let corner = inner.corners()[0];
    (low.x..=high.x).contains(&corner.x) && (low.y..=high.y).contains(&corner.y)
}
