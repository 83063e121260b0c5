//! The triangles of a surface, walked from one to the next.

use crate::geometry::Point;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::predicates::cross;
use crate::survey::surface::Surface;

/// No triangle: the border of the region, or of one of its convex parts.
const BORDER: u32 = u32::MAX;

/// A triangle, and those across its sides.
struct Face {
    corners: [Point; 3],
    heights: [f64; 3],
    across: [u32; 3],
}

/// The triangles that tile the region of a surface, in its local coordinates.
pub(super) struct Ground<'a> {
    faces: Vec<Face>,
    boxes: Boxes,
    surface: &'a Surface,
}

/// After so many steps a walk has gone astray: it is looked up instead.
const FAR: usize = 256;

/// A place this near to a triangle, in metres, is on it.
const EDGE: f64 = 1e-9;

impl<'a> Ground<'a> {
    /// The triangles of a surface.
    pub(super) fn of(surface: &'a Surface) -> Self {
        let cut = surface.whole();
        let nodes = cut.nodes();
        let corners: Vec<[u32; 3]> = cut.pieces().iter().map(|piece| piece.corners).collect();
        let face = |(corners, across): (&[u32; 3], [u32; 3])| Face {
            corners: corners.map(|corner| Point::new(nodes[corner as usize].x, nodes[corner as usize].y)),
            heights: corners.map(|corner| nodes[corner as usize].z),
            across,
        };
        let faces: Vec<Face> = corners.iter().zip(neighbours(&corners)).map(face).collect();
        let boxes = Boxes::new(faces.iter().map(|face| Extent::around(face.corners).widened(EDGE)).collect());
        Self { faces, boxes, surface }
    }

    /// How many triangles there are.
    pub(super) fn len(&self) -> usize {
        self.faces.len()
    }

    /// The triangle under a place, looked for from another one, and the height there.
    #[inline]
    pub(super) fn under(&self, place: Point, from: u32) -> Option<(u32, f64)> {
        let (mut at, mut before) = (from, BORDER);
        for _ in 0..FAR {
            let Some(face) = self.faces.get(at as usize) else { break };
            let inside = face.doubled_areas(place);
            let (side, least) = lowest(inside);
            // On the side it came across, the place is on both triangles but for rounding.
            if least >= 0.0 || face.across[side] == before && before != BORDER {
                return Some((at, face.height(inside)));
            }
            (at, before) = (face.across[side], at);
        }
        self.look_up(place)
    }

    /// The triangle under a place, or under the nearest place of the region where it lies outside.
    #[cold]
    fn look_up(&self, place: Point) -> Option<(u32, f64)> {
        self.holding(place, EDGE).or_else(|| {
            let origin = self.surface.whole().origin();
            let given = Point::new(place.x + origin.x, place.y + origin.y);
            let nearest = self.surface.region().nearest_run(given).at;
            self.holding(Point::new(nearest.x - origin.x, nearest.y - origin.y), 1e-6)
        })
    }

    /// Of the triangles within a hair of a place the one that holds it best.
    fn holding(&self, place: Point, hair: f64) -> Option<(u32, f64)> {
        let mut best: Option<(f64, usize)> = None;
        self.boxes.overlapping(&Extent::at(place).widened(hair), |index| {
            let least = self.faces[index].clearance(place);
            if least >= -hair && best.is_none_or(|(other, _)| least > other) {
                best = Some((least, index));
            }
        });
        let (_, index) = best?;
        let face = &self.faces[index];
        Some((index as u32, face.height(face.doubled_areas(place))))
    }
}

impl Face {
    /// Twice the areas that a place makes with the sides, those from corners 0, 1 and 2; negative beyond a side.
    #[inline]
    fn doubled_areas(&self, place: Point) -> [f64; 3] {
        let [a, b, c] = self.corners;
        [cross(place, a, b), cross(place, b, c), cross(place, c, a)]
    }

    /// How far a place is inside the nearest side.
    fn clearance(&self, place: Point) -> f64 {
        let [a, b, c] = self.corners;
        let lengths = [a.distance(b), b.distance(c), c.distance(a)];
        let areas = self.doubled_areas(place);
        areas.iter().zip(lengths).map(|(area, length)| area / length).fold(f64::INFINITY, f64::min)
    }

    /// The height at a place whose areas with the sides are these.
    #[inline]
    fn height(&self, areas: [f64; 3]) -> f64 {
        let [of_c, of_a, of_b] = areas.map(|area| area.max(0.0));
        let all = of_a + of_b + of_c;
        let [a, b, c] = self.heights;
        // What is left of a triangle that is next to none is as high as its first corner.
        if all > 0.0 { (of_a * a + of_b * b + of_c * c) / all } else { a }
    }
}

/// The triangles across the sides of each. Parts of the region were cut each for itself and have no corners in common:
/// a walk ends at their border, and the place is looked up.
fn neighbours(triangles: &[[u32; 3]]) -> Vec<[u32; 3]> {
    let mut sides: Vec<([u32; 2], u32, u8)> = Vec::with_capacity(3 * triangles.len());
    for (number, &[a, b, c]) in (0_u32..).zip(triangles) {
        for (side, (from, to)) in (0_u8..).zip([(a, b), (b, c), (c, a)]) {
            sides.push(([from.min(to), from.max(to)], number, side));
        }
    }
    sides.sort_unstable();
    let mut across = vec![[BORDER; 3]; triangles.len()];
    for pair in sides.windows(2) {
        let &[(ends, one, side), (other_ends, other, other_side)] = pair else { continue };
        if ends == other_ends {
            across[one as usize][side as usize] = other;
            across[other as usize][other_side as usize] = one;
        }
    }
    across
}

/// Which of three is least.
#[inline]
fn lowest([a, b, c]: [f64; 3]) -> (usize, f64) {
    let (side, least) = if b < a { (1, b) } else { (0, a) };
    if c < least { (2, c) } else { (side, least) }
}
