//! The allowed places, and cells of them.

use super::asked::DrainBounds;
use crate::failure::{Code, Failure, Result};
use crate::geometry::clip::Line;
use crate::geometry::{Point, Region};
use crate::grade::finish::patterns::INSIDE;
use crate::quantity::Typed;

/// Over the distance a drain keeps from the line of a run, in metres: so much is left to rounding.
const HAIR: f64 = 1e-9;

/// A cell narrower than this, in metres, is not split any more.
const SMALLEST: f64 = 1e-5;

/// Where the drain may be: a convex polygon, less the holes of the work.
pub(super) struct Allowed<'a> {
    region: &'a Region,
    corners: Vec<Point>,
    /// Whether part of the rectangle was left out.
    pub(super) clipped: bool,
}

/// Some of the places: a convex polygon, a segment or one place. Of a polygon that reaches into a hole only the places outside
/// of it count.
#[derive(Clone, Debug)]
pub(super) struct Cell {
    pub(super) corners: Vec<Point>,
    /// One of its places, outside of holes.
    pub(super) place: Point,
}

impl<'a> Allowed<'a> {
    /// The rectangle within the half planes of the outline's runs: what is left sees every corner.
    pub(super) fn of(region: &'a Region, within: &DrainBounds) -> Result<Self> {
        let ([left, right], [front, back]) = (within.x.map(Typed::base), within.y.map(Typed::base));
        let rectangle = [[left, front], [right, front], [right, back], [left, back]];
        let rectangle = told_once(rectangle.map(|[x, y]| Point::new(x, y)).to_vec());
        let outside = |place: &Point| runs(region).any(|line| line.left(place.x, place.y) < INSIDE + HAIR);
        let clipped = rectangle.iter().any(outside);
        let corners = runs(region).fold(rectangle, |kept, line| half(&kept, &line, INSIDE + HAIR));
        let allowed = Self { region, corners, clipped };
        if allowed.whole().is_some() { Ok(allowed) } else { Err(none_allowed()) }
    }

    /// All places as one cell.
    pub(super) fn whole(&self) -> Option<Cell> {
        self.cell(self.corners.clone())
    }

    /// The cell of a polygon; none where nothing of it is outside of holes. What only touches a hole's edge from inside the hole is
    /// left out: the cell on the other side has that edge too.
    fn cell(&self, corners: Vec<Point>) -> Option<Cell> {
        let parts = self.region.parts();
        let open = parts.iter().map(|part| {
            let sides = part.iter().zip(part.iter().cycle().skip(1));
            sides.fold(corners.clone(), |kept, (from, to)| half(&kept, &Line::through(*from, *to), 0.0))
        });
        let piece = open.max_by(|a, b| size(a).total_cmp(&size(b)))?;
        if piece.len() < corners.len().clamp(1, 3) || size(&piece) <= 1e-9 * size(&corners) {
            return None;
        }
        Some(Cell { place: mean(&piece), corners })
    }

    /// The two halves of a cell along its longer side; none where it is too small to be split.
    pub(super) fn halves(&self, cell: &Cell) -> Option<Vec<Cell>> {
        let [x, y] = [extent(&cell.corners, |at| at.x), extent(&cell.corners, |at| at.y)];
        let (along, [low, high]) = if x[1] - x[0] >= y[1] - y[0] { (0, x) } else { (1, y) };
        if high - low <= SMALLEST {
            return None;
        }
        let middle = 0.5 * (low + high);
        let side = |sign: f64| {
            let (at, inward) = match along {
                0 => (Point::new(middle, 0.0), Point::new(sign, 0.0)),
                _ => (Point::new(0.0, middle), Point::new(0.0, sign)),
            };
            self.cell(half(&cell.corners, &Line::square_to(at, inward), 0.0))
        };
        Some([side(-1.0), side(1.0)].into_iter().flatten().collect())
    }
}

/// The lines of the outer runs, the work on their left.
fn runs(region: &Region) -> impl Iterator<Item = Line> + '_ {
    region.outer().runs().map(|run| Line::through(run.from, run.to))
}

/// The part of a convex polygon, a segment or a place that is on the left of a line by at least so much.
fn half(polygon: &[Point], line: &Line, by: f64) -> Vec<Point> {
    let left = |at: Point| line.left(at.x, at.y) - by;
    let mut kept: Vec<Point> = Vec::with_capacity(polygon.len() + 1);
    for (number, (&from, &to)) in polygon.iter().zip(polygon.iter().cycle().skip(1)).enumerate() {
        // The way back along a segment crosses where the way out did.
        let back = polygon.len() == 2 && number == 1;
        let (a, b) = (left(from), left(to));
        if a >= 0.0 {
            kept.push(from);
        }
        if a * b < 0.0 && !back {
            let share = a / (a - b);
            kept.push(Point::new(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y)));
        }
    }
    told_once(kept)
}

/// Corners without those that stand twice in a row.
fn told_once(mut corners: Vec<Point>) -> Vec<Point> {
    corners.dedup();
    if corners.len() > 1 && corners.first() == corners.last() {
        corners.pop();
    }
    corners
}

/// The area of a polygon, the length of a segment; of one place 1.
fn size(corners: &[Point]) -> f64 {
    match corners {
        [] => 0.0,
        [_] => 1.0,
        [from, to] => from.distance(*to),
        _ => crate::grade::finish::convex::area(corners),
    }
}

fn mean(corners: &[Point]) -> Point {
    let share = 1.0 / corners.len().max(1) as f64;
    let of = |part: fn(&Point) -> f64| share * corners.iter().map(part).sum::<f64>();
    Point::new(of(|at| at.x), of(|at| at.y))
}

fn extent(corners: &[Point], of: fn(&Point) -> f64) -> [f64; 2] {
    let grow = |[low, high]: [f64; 2], at: f64| [low.min(at), high.max(at)];
    corners.iter().map(of).fold([f64::INFINITY, f64::NEG_INFINITY], grow)
}

fn none_allowed() -> Box<Failure> {
    Failure::new(Code::DrainUnplaced, "x_from")
        .written("a rectangle in which no place sees every corner of the outline")
        .allowed("places inside the work, outside its holes and at least 1/2 in inside the line of every run")
        .remedy(
            "move or widen the rectangle; where no place sees all corners, give the facets by their corners",
        )
}
