//! Where along a row pads may stand: inside the work and as far from its edges as asked.

use super::grid::Free;
use crate::geometry::{Point, Region};
use crate::marks::SAME;

/// The free stretches of a row, from the left.
pub(super) fn free(region: &Region, y: f64, inset: f64) -> Vec<Free> {
    let mut shadows: Vec<[f64; 2]> =
        region.runs().filter_map(|run| shadow(run.from, run.to, y, inset)).collect();
    shadows.sort_by(|a, b| a[0].total_cmp(&b[0]));
    inside(region, y).into_iter().flat_map(|edges| lit(edges, &shadows)).collect()
}

/// Where a row runs through the work: from where it enters to where it leaves.
fn inside(region: &Region, y: f64) -> Vec<[f64; 2]> {
    let crossing = |from: Point, to: Point| {
        ((from.y > y) != (to.y > y)).then(|| from.x + (y - from.y) / (to.y - from.y) * (to.x - from.x))
    };
    let mut xs: Vec<f64> = region.runs().filter_map(|run| crossing(run.from, run.to)).collect();
    xs.sort_by(f64::total_cmp);
    xs.chunks_exact(2).map(|pair| [pair[0], pair[1]]).collect()
}

/// The stretch of a row that is nearer to a run than the inset: a run with its neighbourhood is convex, so it is one stretch.
fn shadow(from: Point, to: Point, y: f64, inset: f64) -> Option<[f64; 2]> {
    let length = from.distance(to);
    let [nx, ny] = [-(to.y - from.y) / length * inset, (to.x - from.x) / length * inset];
    let corners = [
        (from.x + nx, from.y + ny),
        (to.x + nx, to.y + ny),
        (to.x - nx, to.y - ny),
        (from.x - nx, from.y - ny),
    ];
    let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
    let mut reach = |x: f64| (low, high) = (low.min(x), high.max(x));
    for end in [from, to] {
        let half = inset * inset - (y - end.y) * (y - end.y);
        if half > 0.0 {
            reach(end.x - half.sqrt());
            reach(end.x + half.sqrt());
        }
    }
    for (index, a) in corners.iter().enumerate() {
        let b = corners[(index + 1) % 4];
        if (a.1 > y) != (b.1 > y) {
            reach(a.0 + (y - a.1) / (b.1 - a.1) * (b.0 - a.0));
        }
    }
    // What only touches the row at the inset itself is not nearer.
    (high - low > SAME && nearer(from, to, y, 0.5 * (low + high), inset)).then_some([low, high])
}

fn nearer(from: Point, to: Point, y: f64, x: f64, inset: f64) -> bool {
    crate::marks::breaks::off_line(Point::new(x, y), [from, to]) < inset - SAME
}

/// What shadows leave of a stretch of the work.
fn lit(edges: [f64; 2], shadows: &[[f64; 2]]) -> Vec<Free> {
    let mut left = Vec::new();
    let mut from = edges[0];
    for shadow in shadows {
        if shadow[0] > from && shadow[0] <= edges[1] {
            left.push(Free { from, to: shadow[0], edges });
        }
        if shadow[1] > from {
            from = shadow[1];
        }
    }
    if from <= edges[1] {
        left.push(Free { from, to: edges[1], edges });
    }
    left
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(x: f64, y: f64) -> Point {
        Point::new(x, y)
    }

    #[test]
    fn a_row_is_free_between_walls_and_beside_holes() {
        let outer = vec![at(0.0, 0.0), at(20.0, 0.0), at(20.0, 10.0), at(0.0, 10.0)];
        let hole = vec![at(8.0, 4.0), at(12.0, 4.0), at(12.0, 6.0), at(8.0, 6.0)];
        let region = Region::new(outer, vec![hole]).unwrap();
        let spans =
            |y: f64| free(&region, y, 1.0).iter().map(|free| [free.from, free.to]).collect::<Vec<_>>();
        assert_eq!(spans(5.0), [[1.0, 7.0], [13.0, 19.0]]);
        // A row as far from a wall as the inset is free along it.
        assert_eq!(spans(1.0), [[1.0, 19.0]]);
        assert_eq!(spans(0.5), Vec::<[f64; 2]>::new());
        // Past the corner of the hole, 0.6 above it: 0.8 to either side.
        let past = spans(6.6);
        assert!((past[0][1] - 7.2).abs() < 1e-12 && (past[1][0] - 12.8).abs() < 1e-12);
    }
}
