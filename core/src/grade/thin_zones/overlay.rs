//! The overlay within the boxes of zones: its triangles, cut at the sides of a box.

use super::plan_box::PlanBox;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::{Line, MADE, Vertex, keep_left};
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum, zero_line};
use crate::grade::finish::{Laid, LaidPart};
use crate::quantity::{Area, Length, Typed, Volume};

/// The triangles of an overlay with the thickness as height, found by place.
pub(super) struct Overlay {
    /// What places are counted from.
    origin: Point,
    triangles: Vec<[Vertex; 3]>,
    boxes: Boxes,
}

/// What of an overlay lies within a box: areas of triangles and the thicknesses at their corners.
pub(super) struct Boxed {
    pieces: Vec<(f64, [f64; 3])>,
}

impl Overlay {
    /// The overlay under a finish laid over a work.
    pub(super) fn of(laid: &Laid<'_>) -> Self {
        let origin = laid.parts().first().map_or_else(Point::default, |part| part.ground.origin());
        let triangles: Vec<[Vertex; 3]> =
            laid.parts().iter().flat_map(|part| of_part(part, origin)).collect();
        let extents = triangles.iter().map(|triangle| Extent::around(triangle.iter().map(place)));
        let boxes = Boxes::new(extents.collect());
        Self { origin, triangles, boxes }
    }

    /// What of it lies within a box.
    pub(super) fn within(&self, bounds: &PlanBox) -> Boxed {
        let [low, _, high, _] =
            bounds.corners().map(|at| Point::new(at.x - self.origin.x, at.y - self.origin.y));
        let sides = [(low, [1.0, 0.0]), (low, [0.0, 1.0]), (high, [-1.0, 0.0]), (high, [0.0, -1.0])];
        let sides = sides.map(|(at, [x, y])| Line::square_to(at, Point::new(x, y)));
        let mut pieces = Vec::new();
        let (mut polygon, mut kept) = (Vec::with_capacity(8), Vec::with_capacity(8));
        self.boxes.overlapping(&Extent { low, high }, |index| {
            polygon.clear();
            polygon.extend(self.triangles[index]);
            for side in &sides {
                keep_left(&polygon, side, 0.0, &mut kept);
                std::mem::swap(&mut polygon, &mut kept);
            }
            if let [first, rest @ ..] = polygon.as_slice() {
                pieces.extend(rest.windows(2).map(|pair| piece([first, &pair[0], &pair[1]])));
            }
        });
        Boxed { pieces }
    }
}

impl Boxed {
    /// The area of the work within the box.
    pub(super) fn area(&self) -> Area {
        Area::from_base(self.pieces.iter().map(|(area, _)| *area).collect::<Sum>().value())
    }

    /// What the overlay lacks to a thickness where it lacks any; old slab above the finish counts as no overlay.
    pub(super) fn lacking_to(&self, thickness: Length) -> Volume {
        let missing = |depth: f64| {
            let under = self.pieces.iter().map(|&(area, t)| zero_line::volumes(area, t.map(|t| t - depth)).1);
            under.collect::<Sum>().value()
        };
        Volume::from_base(missing(thickness.base()) - missing(0.0))
    }
}

/// The triangles of a part with the thickness at each corner.
fn of_part<'a>(part: &'a LaidPart<'_>, origin: Point) -> impl Iterator<Item = [Vertex; 3]> + 'a {
    let triangles = part.ground.triangles();
    triangles.map(move |triangle| {
        triangle.corners.map(|corner| {
            let (x, y) = (corner.at.x - origin.x, corner.at.y - origin.y);
            Vertex { x, y, z: part.plane.height_at(corner.at) - corner.height, id: MADE }
        })
    })
}

fn place(corner: &Vertex) -> Point {
    Point::new(corner.x, corner.y)
}

fn piece(triangle: [&Vertex; 3]) -> (f64, [f64; 3]) {
    let [a, b, c] = triangle.map(place);
    ((0.5 * cross(a, b, c)).max(0.0), triangle.map(|corner| corner.z))
}
