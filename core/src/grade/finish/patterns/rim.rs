//! The ring of facets between an outline and a rectangular rim inside it.
//!
//! Every corner of the rim sees every run. Each side of the rim goes with the corner of the outline that lies farthest out from
//! it, or with the run where two corners lie equally far: then run and side are parallel and bound one facet. The runs between
//! go with the corner of the rim between. All triangles turn one way, so they tile the ring.

use crate::geometry::Point;

/// A facet of the ring: its corners, counter-clockwise, and the run it starts from; none where it meets the outline at a corner only.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Piece {
    pub(super) corners: Vec<Point>,
    /// The number of the run in counter-clockwise order, or of the corner.
    pub(super) from: usize,
    pub(super) whole_run: bool,
}

/// Corners equally far out within this, in metres, make a run parallel to the rim.
const EQUAL: f64 = 1e-9;

/// The facets between an outline's corners and a rim's, both counter-clockwise.
pub(super) fn ring(outline: &[Point], rim: [Point; 4]) -> Vec<Piece> {
    let count = outline.len();
    let at = |number: usize| outline.get(number % count).copied().unwrap_or_default();
    let mut pieces = Vec::new();
    let sides: Vec<(usize, bool)> =
        (0..4).map(|side| farthest(outline, rim[side], rim[(side + 1) % 4])).collect();
    for (side, &(start, run)) in sides.iter().enumerate() {
        let (here, next) = (rim[side], rim[(side + 1) % 4]);
        let mut corner = start;
        if run {
            pieces.push(Piece {
                corners: vec![at(start), at(start + 1), next, here],
                from: start,
                whole_run: true,
            });
            corner += 1;
        } else {
            pieces.push(Piece { corners: vec![at(start), next, here], from: start, whole_run: false });
        }
        let until = sides[(side + 1) % 4].0;
        while corner % count != until {
            let from = corner % count;
            pieces.push(Piece { corners: vec![at(from), at(from + 1), next], from, whole_run: true });
            corner += 1;
        }
    }
    pieces
}

/// The corner of the outline that lies farthest out from a side of the rim, or the first of two at the ends of a run.
fn farthest(outline: &[Point], from: Point, to: Point) -> (usize, bool) {
    let length = from.distance(to);
    let out =
        |place: Point| ((place.x - from.x) * (to.y - from.y) - (place.y - from.y) * (to.x - from.x)) / length;
    let most = outline.iter().map(|place| out(*place)).fold(f64::NEG_INFINITY, f64::max);
    let is_far: Vec<bool> = outline.iter().map(|place| out(*place) >= most - EQUAL).collect();
    let far = |number: usize| is_far[number % outline.len()];
    let numbers = || 0..outline.len();
    let run = numbers().find(|&number| far(number) && far(number + 1));
    let corner = numbers().find(|&number| far(number)).unwrap_or(0);
    run.map_or((corner, false), |run| (run, true))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geometry::predicates::cross;

    fn area(corners: &[Point]) -> f64 {
        let fans = corners.windows(2).skip(1);
        0.5 * fans.map(|pair| cross(corners[0], pair[0], pair[1])).sum::<f64>()
    }

    #[test]
    fn the_ring_is_tiled() {
        let at = |x: f64, y: f64| Point::new(x, y);
        let outlines: [&[(f64, f64)]; 4] = [
            &[(-5.0, -3.0), (5.0, -3.0), (5.0, 3.0), (-5.0, 3.0)],
            &[(-5.0, -3.0), (1.0, -3.0), (5.0, -3.0), (5.0, 3.0), (-5.0, 3.5)],
            &[(0.0, -6.0), (6.0, 0.0), (1.0, 5.0), (-4.0, 1.0)],
            // Star-shaped, with two corners inward.
            &[(-5.0, -3.0), (0.0, -1.0), (5.0, -3.0), (5.0, 3.0), (0.0, 1.0), (-5.0, 3.0)],
        ];
        let rim = [at(-0.2, -0.1), at(0.2, -0.1), at(0.2, 0.1), at(-0.2, 0.1)];
        for outline in outlines {
            let outline: Vec<Point> = outline.iter().map(|&(x, y)| at(x, y)).collect();
            for turn in 0..outline.len() {
                let mut turned = outline.clone();
                turned.rotate_left(turn);
                let pieces = ring(&turned, rim);
                assert!(pieces.iter().all(|piece| area(&piece.corners) > 0.0), "{pieces:?}");
                let all: f64 = pieces.iter().map(|piece| area(&piece.corners)).sum();
                assert!((all - (area(&turned) - 0.08)).abs() < 1e-12, "{pieces:?}");
                assert_eq!(pieces.iter().filter(|piece| piece.whole_run).count(), turned.len());
            }
        }
    }
}
