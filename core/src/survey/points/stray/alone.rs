//! Points with too few others near them in plan.

use super::super::Points;
use super::Kind;

/// A square of the plan, by its column and row.
type Square = (i64, i64);

/// Points sorted by squares so wide that all in one are within reach of one another.
struct Squares<'a> {
    points: &'a Points,
    side: f64,
    /// Square and number of each point.
    sorted: Vec<(Square, u32)>,
}

/// Squares this far away may hold points within reach.
const AWAY: i64 = 2;

/// Marks points that have fewer than `others` within `reach`.
pub(super) fn mark(points: &Points, reach: f64, others: usize, kinds: &mut [Option<Kind>]) {
    let squares = Squares::of(points, reach);
    for members in squares.sorted.chunk_by(|a, b| a.0 == b.0) {
        let &[(square, _), ..] = members else { continue };
        if members.len() > others {
            continue;
        }
        let near = squares.around(square);
        for &(_, number) in members {
            let is_near = |&&other: &&u32| other != number && points_within(points, number, other, reach);
            if near.iter().filter(is_near).take(others).count() < others {
                kinds[number as usize] = Some(Kind::Alone);
            }
        }
    }
}

fn points_within(points: &Points, a: u32, b: u32, reach: f64) -> bool {
    let (a, b) = (a as usize, b as usize);
    let (dx, dy) = (points.x[a] - points.x[b], points.y[a] - points.y[b]);
    dx * dx + dy * dy <= reach * reach
}

impl<'a> Squares<'a> {
    fn of(points: &'a Points, reach: f64) -> Self {
        // A hair less than reach over the square root of two, so that the diagonal is within reach after rounding.
        let side = reach * 0.707;
        let mut squares = Self { points, side, sorted: Vec::with_capacity(points.len()) };
        let sorted = (0..points.len() as u32).map(|number| (squares.square(number), number));
        squares.sorted = sorted.collect();
        squares.sorted.sort_unstable();
        squares
    }

    fn square(&self, number: u32) -> Square {
        let at = |values: &[f64]| (values[number as usize] / self.side).floor() as i64;
        (at(&self.points.x), at(&self.points.y))
    }

    /// The points in a square and those around it.
    fn around(&self, (column, row): Square) -> Vec<u32> {
        let mut near = Vec::new();
        for column in column - AWAY..=column + AWAY {
            let from = self.sorted.partition_point(|(square, _)| *square < (column, row - AWAY));
            let members = self.sorted[from..].iter();
            near.extend(members.take_while(|(square, _)| *square <= (column, row + AWAY)).map(|(_, n)| *n));
        }
        near
    }
}
