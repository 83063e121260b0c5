//! The cells of the shots: which part of the work each is nearest to.

use super::disc::area_within;
use crate::geometry::clip::{Line, MADE, Vertex, keep_left, split};
use crate::geometry::triangulation::Triangulation;
use crate::geometry::{Point, Region, Sum};

/// A corner this near to the line between two cells is on it, in metres.
const HAIR: f64 = 1e-9;

/// Distances within this share of the greatest are as great: on a grid many places are equally far, and rounding must not
/// choose between them.
const EQUALLY_FAR: f64 = 1e-6;

/// A convex piece of the work and the shot nearest to it.
struct Piece {
    shot: Point,
    corners: Vec<Vertex>,
    /// The farthest a corner is from the shot.
    farthest: f64,
    /// The area farther than near enough.
    uncovered: f64,
}

impl Piece {
    /// A piece that has an area.
    fn new(shot: Point, corners: Vec<Vertex>, near: f64) -> Option<Self> {
        if corners.len() < 3 {
            return None;
        }
        let far = |corner: &Vertex| shot.distance(Point::new(corner.x, corner.y));
        let farthest = corners.iter().map(far).fold(0.0, f64::max);
        let uncovered =
            if farthest > near { area(&corners) - area_within(&corners, shot, near) } else { 0.0 };
        Some(Self { shot, corners, farthest, uncovered: uncovered.max(0.0) })
    }
}

/// The cells, cut at the outline into convex pieces.
pub(super) struct Cells {
    pieces: Vec<Piece>,
    near: f64,
}

impl Cells {
    /// The cells of these shots over a region.
    pub(super) fn new(region: &Region, mut shots: Vec<Point>, near: f64) -> Self {
        shots.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
        shots.dedup_by(|a, b| a.distance(*b) <= HAIR);
        let triangulation = Triangulation::of(shots.clone());
        let mut around: Vec<Vec<u32>> = vec![Vec::new(); shots.len()];
        for [from, to] in triangulation.links().edges() {
            around[from as usize].push(to);
            around[to as usize].push(from);
        }
        let mut cells = Self { pieces: Vec::with_capacity(shots.len()), near };
        for part in region.parts().iter() {
            let corner = |at: &Point| Vertex { x: at.x, y: at.y, z: 0.0, id: MADE };
            let whole: Vec<Vertex> = part.iter().map(corner).collect();
            let mut kept = Vec::new();
            for (shot, around) in shots.iter().zip(&around) {
                let mut piece = whole.clone();
                for &other in around {
                    keep_left(&piece, &nearer_to(*shot, shots[other as usize]), HAIR, &mut kept);
                    std::mem::swap(&mut piece, &mut kept);
                    if piece.is_empty() {
                        break;
                    }
                }
                cells.pieces.extend(Piece::new(*shot, piece, near));
            }
        }
        cells
    }

    /// The place farthest from its shot; of several equally far the one nearest to the front, then to the left.
    pub(super) fn farthest(&self) -> Option<(f64, Point)> {
        let most = self.pieces.iter().map(|piece| piece.farthest).reduce(f64::max)?;
        let enough = most * (1.0 - EQUALLY_FAR);
        let far = self.pieces.iter().filter(|piece| piece.farthest >= enough);
        let corners = far.flat_map(|piece| piece.corners.iter().map(move |corner| (piece.shot, corner)));
        let places = corners.map(|(shot, corner)| {
            let at = Point::new(corner.x, corner.y);
            (shot.distance(at), at)
        });
        let step = |value: f64| (value / (100.0 * HAIR)).round();
        places
            .filter(|(far, _)| *far >= enough)
            .min_by(|(_, a), (_, b)| step(a.y).total_cmp(&step(b.y)).then(step(a.x).total_cmp(&step(b.x))))
    }

    /// The area farther than near enough from every shot.
    pub(super) fn uncovered(&self) -> f64 {
        self.pieces.iter().map(|piece| piece.uncovered).collect::<Sum>().value()
    }

    /// Adds a shot: it takes from every piece what is nearer to it.
    pub(super) fn add(&mut self, shot: Point) {
        let mut pieces = Vec::with_capacity(self.pieces.len() + 8);
        for piece in std::mem::take(&mut self.pieces) {
            let line = nearer_to(piece.shot, shot);
            if piece.corners.iter().all(|corner| line.left(corner.x, corner.y) >= -HAIR) {
                pieces.push(piece);
                continue;
            }
            let (mut kept, mut taken) = (Vec::new(), Vec::new());
            split(&piece.corners, &line, HAIR, &mut kept, &mut taken);
            pieces.extend(Piece::new(piece.shot, kept, self.near));
            pieces.extend(Piece::new(shot, taken, self.near));
        }
        self.pieces = pieces;
    }
}

/// The line half way between two shots, the first on its left.
fn nearer_to(shot: Point, other: Point) -> Line {
    let (dx, dy) = (shot.x - other.x, shot.y - other.y);
    let scale = 1.0 / shot.distance(other);
    let middle = Point::new(0.5 * (shot.x + other.x), 0.5 * (shot.y + other.y));
    Line::square_to(middle, Point::new(dx * scale, dy * scale))
}

fn area(corners: &[Vertex]) -> f64 {
    let Some(first) = corners.first() else { return 0.0 };
    let from = |corner: &Vertex| (corner.x - first.x, corner.y - first.y);
    let sides = corners.windows(2).map(|side| {
        let (a, b) = (from(&side[0]), from(&side[1]));
        a.0 * b.1 - a.1 * b.0
    });
    0.5 * sides.sum::<f64>()
}
