//! A region in the local coordinates of a surface, ready for cutting.

use super::tiling::Node;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::{Line, Vertex, keep_left};
use crate::geometry::{Point, Region};

/// A region's convex parts about a local origin.
#[derive(Clone, Debug)]
pub(super) struct Frame {
    /// What local coordinates are counted from.
    pub(super) origin: Point,
    /// Within so much of a line rounding decides: such a corner counts as on it.
    pub(super) hair: f64,
    /// The sides of all parts, each starting at its corner, the part on the left.
    sides: Vec<Line>,
    /// How the sides are shared out; nothing where all belong to one part.
    shares: Option<Shares>,
}

/// Which sides belong to which part.
#[derive(Clone, Debug)]
struct Shares {
    /// Where the sides of each part end.
    ends: Vec<u32>,
    boxes: Boxes,
}

impl Frame {
    /// The region about an origin.
    pub(super) fn new(region: &Region, origin: Point) -> Self {
        let (low, high) = region.bounds();
        let size = (high.x - low.x).max(high.y - low.y);
        let mut frame = Self { origin, hair: 32.0 * f64::EPSILON * size, sides: Vec::new(), shares: None };
        let corners = region.outer().corners().len();
        frame.sides.reserve(if region.is_convex() { corners } else { 4 * corners });
        for part in region.parts().iter() {
            frame.add_sides(part);
        }
        if !region.is_convex() {
            frame.shares = Some(Shares::of(region, origin, frame.hair));
        }
        frame
    }

    fn add_sides(&mut self, part: &[Point]) {
        let Some(&last) = part.last() else { return };
        let mut from = local(last, self.origin);
        for &corner in part {
            let to = local(corner, self.origin);
            self.sides.push(Line::through(from, to));
            from = to;
        }
    }

    /// A place in local coordinates.
    #[inline]
    pub(super) fn local(&self, place: Point) -> Point {
        local(place, self.origin)
    }

    /// A local place in the caller's coordinates.
    #[inline]
    pub(super) fn given(&self, place: Point) -> Point {
        Point::new(place.x + self.origin.x, place.y + self.origin.y)
    }

    /// The only part's sides; nothing when there are several parts.
    #[inline]
    pub(super) fn only(&self) -> Option<&[Line]> {
        if self.shares.is_none() { Some(&self.sides) } else { None }
    }

    /// How many parts there are.
    pub(super) fn parts(&self) -> usize {
        self.shares.as_ref().map_or(1, |shares| shares.ends.len())
    }

    /// The sides of a part.
    #[inline]
    pub(super) fn part(&self, index: usize) -> &[Line] {
        match &self.shares {
            None => &self.sides,
            Some(shares) => {
                let from = if index == 0 { 0 } else { shares.ends[index - 1] as usize };
                &self.sides[from..shares.ends[index] as usize]
            }
        }
    }

    /// Calls `visit` with the sides of every part that may reach into a box.
    #[inline]
    pub(super) fn parts_near(&self, extent: &Extent, mut visit: impl FnMut(&[Line])) {
        match &self.shares {
            None => visit(&self.sides),
            Some(shares) => shares.boxes.overlapping(extent, |part| visit(self.part(part))),
        }
    }

    /// How far inside a part a place is, from the nearest of its sides; negative outside. The greatest over all parts.
    ///
    /// Inside, the nearest run is at least so far away: the sides of parts are runs or lines between them.
    #[inline]
    pub(super) fn clearance(&self, place: Point) -> f64 {
        let mut greatest = f64::NEG_INFINITY;
        self.parts_near(&Extent::at(place), |sides| greatest = greatest.max(clearance(sides, place)));
        greatest
    }

    /// Cuts a convex polygon by every part it may reach into; `cut` holds what is left in each.
    pub(super) fn cut(
        &self,
        polygon: &[Vertex],
        scratch: &mut [Vec<Vertex>; 2],
        mut each: impl FnMut(&[Vertex]),
    ) {
        let extent = Extent::around(polygon.iter().map(|corner| Point::new(corner.x, corner.y)));
        self.parts_near(&extent, |sides| each(cut_by(polygon, sides, self.hair, scratch)));
    }
}

impl Shares {
    fn of(region: &Region, origin: Point, hair: f64) -> Self {
        let mut end = 0;
        let (mut ends, mut extents) = (Vec::new(), Vec::new());
        for part in region.parts().iter() {
            end += part.len() as u32;
            ends.push(end);
            let corners = part.iter().map(|&corner| local(corner, origin));
            extents.push(Extent::around(corners).widened(hair));
        }
        Self { ends, boxes: Boxes::new(extents) }
    }
}

#[inline]
fn local(place: Point, origin: Point) -> Point {
    // Adding zero turns a negative zero into a positive one, so that equal places are equal in every order.
    Point::new(place.x - origin.x + 0.0, place.y - origin.y + 0.0)
}

#[inline]
fn clearance(sides: &[Line], place: Point) -> f64 {
    let mut least = f64::INFINITY;
    for side in sides {
        let left = side.left(place.x, place.y);
        // Places are finite: a plain comparison will do.
        least = if left < least { left } else { least };
    }
    least
}

/// The part of a convex polygon on the left of all sides; fewer than three corners when there is none.
pub(super) fn cut_by<'a>(
    polygon: &'a [Vertex],
    sides: &[Line],
    hair: f64,
    [kept, next]: &'a mut [Vec<Vertex>; 2],
) -> &'a [Vertex] {
    let mut whole = true;
    for side in sides {
        let current: &[Vertex] = if whole { polygon } else { kept };
        if current.iter().all(|corner| side.left(corner.x, corner.y) >= -hair) {
            continue;
        }
        keep_left(current, side, hair, next);
        std::mem::swap(kept, next);
        whole = false;
        if kept.len() < 3 {
            return &[];
        }
    }
    if whole { polygon } else { kept }
}

/// The corner of a polygon that a node is.
#[inline]
pub(super) fn vertex(nodes: &[Node], id: u32) -> Vertex {
    let node = &nodes[id as usize];
    Vertex { x: node.x, y: node.y, z: node.z, id }
}
