//! Polygons parted at the edge of a region: what is inside and what is outside.

use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::{Line, Vertex, split};
use crate::geometry::{Point, Region};

/// A region's convex parts in local coordinates.
pub(super) struct Parted {
    /// The sides of each part, the part on the left.
    parts: Vec<Vec<Line>>,
    boxes: Boxes,
    /// Within so much of a line rounding decides.
    hair: f64,
}

/// Convex polygons.
type Polygons = Vec<Vec<Vertex>>;

impl Parted {
    pub(super) fn new(region: &Region, origin: Point) -> Self {
        let (low, high) = region.bounds();
        let hair = 32.0 * f64::EPSILON * (high.x - low.x).max(high.y - low.y);
        let local = |at: &Point| Point::new(at.x - origin.x, at.y - origin.y);
        let (mut parts, mut extents) = (Vec::new(), Vec::new());
        for part in region.parts().iter() {
            let ends = part.iter().cycle().skip(1);
            parts.push(
                part.iter().zip(ends).map(|(from, to)| Line::through(local(from), local(to))).collect(),
            );
            extents.push(Extent::around(part.iter().map(local)).widened(hair));
        }
        Self { parts, boxes: Boxes::new(extents), hair }
    }

    /// Parts a convex polygon into what is inside the region and what is outside.
    pub(super) fn part(&self, polygon: Vec<Vertex>) -> (Polygons, Polygons) {
        let (mut inside, mut outside) = (Vec::new(), vec![polygon]);
        let extent = Extent::around(outside[0].iter().map(|corner| Point::new(corner.x, corner.y)));
        self.boxes.overlapping(&extent, |part| {
            for polygon in std::mem::take(&mut outside) {
                self.by(&self.parts[part], polygon, &mut inside, &mut outside);
            }
        });
        (inside, outside)
    }

    /// Parts a convex polygon at the sides of one convex part.
    fn by(&self, sides: &[Line], polygon: Vec<Vertex>, inside: &mut Polygons, outside: &mut Polygons) {
        let (mut kept, mut beside) = (polygon.clone(), Vec::new());
        for side in sides {
            let left = |corner: &Vertex| side.left(corner.x, corner.y);
            if kept.iter().all(|corner| left(corner) >= -self.hair) {
                continue;
            }
            if kept.iter().all(|corner| left(corner) <= self.hair) {
                // Nothing of it is inside: it stays whole.
                outside.push(polygon);
                return;
            }
            let (mut on_left, mut on_right) = (Vec::new(), Vec::new());
            split(&kept, side, self.hair, &mut on_left, &mut on_right);
            beside.push(on_right);
            kept = on_left;
        }
        inside.push(kept);
        outside.append(&mut beside);
    }

    /// Whether a place is inside or no farther outside than so much.
    pub(super) fn reaches(&self, at: Point, by: f64) -> bool {
        self.parts.iter().any(|sides| sides.iter().all(|side| side.left(at.x, at.y) >= -by))
    }
}
