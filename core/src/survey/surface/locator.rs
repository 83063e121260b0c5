//! Heights at single places and along lines.

use super::tiling::Piece;
use super::{Cut, Ground};
use crate::geometry::Point;
use crate::geometry::boxes::{Boxes, Extent};
use crate::geometry::clip::Line;

/// A place this near to a triangle is on it, in metres: edges belong to the triangles on both sides.
const EDGE: f64 = 1e-9;

/// Finds the triangles of a cut under places and lines.
#[derive(Clone, Debug)]
pub struct Locator<'a> {
    cut: &'a Cut,
    boxes: Boxes,
}

/// The old slab at a place.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spot {
    /// Its height.
    pub height: f64,
    /// What is known of it.
    pub ground: Ground,
}

/// A stretch of a line over one triangle: the old slab is straight along it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stretch {
    /// Where it starts, as a share of the way along the line.
    pub from: f64,
    /// Where it ends.
    pub to: f64,
    /// The height where it starts.
    pub height_from: f64,
    /// The height where it ends.
    pub height_to: f64,
    /// What is known of the ground.
    pub ground: Ground,
}

impl<'a> Locator<'a> {
    /// Prepares the triangles of a cut for looking up places.
    #[must_use]
    pub fn new(cut: &'a Cut) -> Self {
        let extents = cut.pieces().iter().map(|piece| Extent::around(corners(cut, piece)).widened(EDGE));
        Self { cut, boxes: Boxes::new(extents.collect()) }
    }

    /// The old slab at a place; nothing outside the cut.
    #[must_use]
    pub fn at(&self, place: Point) -> Option<Spot> {
        let place = self.local(place);
        // Of the triangles that meet at an edge or a corner the one that holds the place best tells.
        let mut best: Option<(f64, Spot)> = None;
        self.boxes.overlapping(&Extent::at(place), |index| {
            let piece = &self.cut.pieces()[index];
            let inside = sides(corners(self.cut, piece)).map(|side| side.left(place.x, place.y));
            let least = inside.into_iter().fold(f64::INFINITY, f64::min);
            if least >= -EDGE && best.is_none_or(|(other, _)| least > other) {
                let height = self.height(piece, place);
                best = Some((least, Spot { height, ground: piece.ground }));
            }
        });
        best.map(|(_, spot)| spot)
    }

    /// The stretches of the line from one place to another, one for each triangle it runs over, in order. Where the line
    /// leaves the cut there is a gap between stretches; along an edge the triangle on one side of it is taken.
    #[must_use]
    pub fn along(&self, from: Point, to: Point) -> Vec<Stretch> {
        let (from, to) = (self.local(from), self.local(to));
        let length = from.distance(to);
        let mut stretches = Vec::new();
        if length <= EDGE || !length.is_finite() {
            return stretches;
        }
        self.boxes.overlapping(&Extent::around([from, to]), |index| {
            let piece = &self.cut.pieces()[index];
            if let Some((start, end)) = overlap(from, to, sides(corners(self.cut, piece)))
                && (end - start) * length > EDGE
            {
                let place = |share: f64| {
                    Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y))
                };
                let [height_from, height_to] = [start, end].map(|share| self.height(piece, place(share)));
                stretches.push(Stretch {
                    from: start,
                    to: end,
                    height_from,
                    height_to,
                    ground: piece.ground,
                });
            }
        });
        stretches.sort_by(|a, b| a.from.total_cmp(&b.from).then(b.to.total_cmp(&a.to)));
        drop_covered(&mut stretches, EDGE / length);
        stretches
    }

    fn local(&self, place: Point) -> Point {
        let origin = self.cut.origin();
        Point::new(place.x - origin.x, place.y - origin.y)
    }

    /// The height over a triangle at a place on it.
    fn height(&self, piece: &Piece, place: Point) -> f64 {
        let [a, b, c] = piece.corners.map(|corner| self.cut.nodes()[corner as usize]);
        let [of_a, of_b, of_c] = [[b, c], [c, a], [a, b]]
            .map(|[from, to]| crate::geometry::predicates::cross(place, from.at(), to.at()).max(0.0));
        // What is left of a triangle that is next to none is as high as its first corner.
        let all = of_a + of_b + of_c;
        if all > 0.0 { (of_a * a.z + of_b * b.z + of_c * c.z) / all } else { a.z }
    }
}

fn corners(cut: &Cut, piece: &Piece) -> [Point; 3] {
    piece.corners.map(|corner| cut.nodes()[corner as usize].at())
}

fn sides([a, b, c]: [Point; 3]) -> [Line; 3] {
    [Line::through(a, b), Line::through(b, c), Line::through(c, a)]
}

/// The shares of the way between which a line is on the left of all sides.
fn overlap(from: Point, to: Point, sides: [Line; 3]) -> Option<(f64, f64)> {
    let (mut start, mut end) = (0.0_f64, 1.0_f64);
    for side in sides {
        let (at_from, at_to) = (side.left(from.x, from.y), side.left(to.x, to.y));
        if at_from < -EDGE && at_to < -EDGE {
            return None;
        }
        if at_from.abs() <= EDGE && at_to.abs() <= EDGE {
            continue;
        }
        let crossing = at_from / (at_from - at_to);
        if at_from < 0.0 && at_to > 0.0 {
            start = start.max(crossing);
        } else if at_from > 0.0 && at_to < 0.0 {
            end = end.min(crossing);
        } else if at_from <= 0.0 && at_to <= 0.0 {
            return None;
        }
    }
    (end > start).then_some((start, end))
}

/// Drops and trims stretches that lie over those before them: along an edge the triangles on both sides were found.
fn drop_covered(stretches: &mut Vec<Stretch>, hair: f64) {
    let mut reached = f64::NEG_INFINITY;
    stretches.retain_mut(|stretch| {
        if stretch.to <= reached + hair {
            return false;
        }
        if stretch.from < reached {
            let share = (reached - stretch.from) / (stretch.to - stretch.from);
            stretch.height_from += share * (stretch.height_to - stretch.height_from);
            stretch.from = reached;
        }
        reached = stretch.to;
        true
    });
}
