//! The old slab where the drain may be: the finish at the drain itself is held up by it.

use super::allowed::Cell;
use crate::geometry::{Point, Region};
use crate::survey::surface::{Cut, Ground, Surface};

/// A plane that is nowhere in a cell above the old slab.
#[derive(Clone, Copy, Debug)]
pub(super) struct UnderDrain {
    about: Point,
    height: f64,
    slope: [f64; 2],
}

impl UnderDrain {
    /// None where the cell is no polygon or where, with thickness binding between the shots only, it reaches beyond them.
    pub(super) fn of(surface: &Surface, cell: &Cell, beyond: bool) -> Option<Self> {
        if cell.corners.len() < 3 {
            return None;
        }
        let cut = surface.within(&Region::new(cell.corners.clone(), Vec::new()).ok()?).ok()?;
        if !beyond && cut.area_of(Ground::Beyond) > 0.0 {
            return None;
        }
        let widest = cut.triangles().max_by(|a, b| a.area.total_cmp(&b.area))?;
        let [a, b, c] = widest.corners.map(|corner| [corner.at.x, corner.at.y, corner.height]);
        let (p, q) = ([b[0] - a[0], b[1] - a[1], b[2] - a[2]], [c[0] - a[0], c[1] - a[1], c[2] - a[2]]);
        let doubled = p[0] * q[1] - p[1] * q[0];
        let slope = [(p[2] * q[1] - p[1] * q[2]) / doubled, (p[0] * q[2] - p[2] * q[0]) / doubled];
        let mut plane = Self { about: widest.corners[0].at, height: a[2], slope };
        if !slope.iter().all(|slope| slope.is_finite()) {
            return None;
        }
        plane.height -= plane.most_above(&cut);
        Some(plane)
    }

    /// How far it stands above the old slab at most: at corners of triangles, for both are plane between them.
    fn most_above(&self, cut: &Cut) -> f64 {
        let corners = cut.triangles().flat_map(|triangle| triangle.corners);
        corners.map(|corner| self.at(corner.at) - corner.height).fold(0.0, f64::max)
    }

    /// Its height at a place.
    pub(super) fn at(&self, at: Point) -> f64 {
        self.height + self.slope[0] * (at.x - self.about.x) + self.slope[1] * (at.y - self.about.y)
    }
}
