//! Triangles that share their corners, so that levels and lines can be followed from one to the next.

use super::Point;
use std::collections::HashMap;

/// No triangle: a side on the border.
pub(crate) const BORDER: u32 = u32::MAX;

/// Corners within this of one another, in metres, are one: cuts that meet made them twice, each with its own rounding.
const SAME: f64 = 1e-7;

/// Triangles over shared corners, each with its neighbours.
#[derive(Clone, Debug, Default)]
pub(crate) struct Network {
    places: Vec<Point>,
    triangles: Vec<[u32; 3]>,
    /// Across the side from each corner to the next.
    neighbours: Vec<[u32; 3]>,
}

impl Network {
    /// Triangles, counter-clockwise, over corners that are shared already.
    pub(crate) fn new(places: Vec<Point>, triangles: Vec<[u32; 3]>) -> Self {
        let mut open: HashMap<(u32, u32), (u32, usize)> = HashMap::with_capacity(2 * triangles.len());
        let mut neighbours = vec![[BORDER; 3]; triangles.len()];
        for (number, triangle) in (0_u32..).zip(&triangles) {
            for side in 0..3 {
                let (from, to) = (triangle[side], triangle[(side + 1) % 3]);
                match open.remove(&(to, from)) {
                    Some((other, of_other)) => {
                        neighbours[number as usize][side] = other;
                        neighbours[other as usize][of_other] = number;
                    }
                    None => {
                        open.insert((from, to), (number, side));
                    }
                }
            }
        }
        Self { places, triangles, neighbours }
    }

    /// Triangles whose corners may stand there twice: those at one place become one. Also tells which corner each of the
    /// given ones became. Triangles that thereby lose their area are left out.
    pub(crate) fn welded(corners: &[Point], triangles: &[[u32; 3]]) -> (Self, Vec<u32>) {
        let (places, became) = weld(corners);
        let kept = triangles.iter().map(|triangle| triangle.map(|corner| became[corner as usize]));
        let kept = kept.filter(|[a, b, c]| a != b && b != c && c != a).collect();
        (Self::new(places, kept), became)
    }

    /// The corners.
    pub(crate) fn places(&self) -> &[Point] {
        &self.places
    }

    /// The triangles by the numbers of their corners, counter-clockwise.
    pub(crate) fn triangles(&self) -> &[[u32; 3]] {
        &self.triangles
    }

    /// The triangles across the sides of each: side 0 goes from corner 0 to corner 1. `BORDER` where there is none.
    pub(crate) fn neighbours(&self) -> &[[u32; 3]] {
        &self.neighbours
    }
}

/// The distinct places among corners, and which of them each corner is.
fn weld(corners: &[Point]) -> (Vec<Point>, Vec<u32>) {
    let cell = |value: f64| (value / (4.0 * SAME)).floor() as i64;
    let mut cells: HashMap<(i64, i64), Vec<u32>> = HashMap::with_capacity(corners.len());
    let mut places: Vec<Point> = Vec::with_capacity(corners.len());
    let mut became = Vec::with_capacity(corners.len());
    for corner in corners {
        let (low, high) = ([corner.x - SAME, corner.y - SAME], [corner.x + SAME, corner.y + SAME]);
        let near = (cell(low[0])..=cell(high[0]))
            .flat_map(|i| (cell(low[1])..=cell(high[1])).map(move |j| (i, j)))
            .filter_map(|at| cells.get(&at))
            .flatten()
            .find(|&&place| places[place as usize].distance(*corner) <= SAME);
        let number = near.copied().unwrap_or_else(|| {
            places.push(*corner);
            let number = places.len() as u32 - 1;
            cells.entry((cell(corner.x), cell(corner.y))).or_default().push(number);
            number
        });
        became.push(number);
    }
    (places, became)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn two_triangles_that_share_a_side_know_each_other() {
        let at = |x: f64, y: f64| Point::new(x, y);
        // The second triangle has its own copies of the shared corners, a rounding away.
        let corners =
            [at(0.0, 0.0), at(1.0, 0.0), at(0.0, 1.0), at(1.0, 1e-12), at(1.0, 1.0), at(-1e-12, 1.0)];
        let (network, became) = Network::welded(&corners, &[[0, 1, 2], [3, 4, 5]]);
        assert_eq!(network.places().len(), 4);
        assert_eq!((became[3], became[5]), (became[1], became[2]));
        assert_eq!(network.neighbours()[0], [BORDER, 1, BORDER]);
        assert_eq!(network.neighbours()[1], [BORDER, BORDER, 0]);
    }

    #[test]
    fn a_triangle_welded_to_a_line_is_left_out() {
        let corners = [Point::new(0.0, 0.0), Point::new(1e-9, 0.0), Point::new(0.0, 1.0)];
        let (network, _) = Network::welded(&corners, &[[0, 1, 2]]);
        assert!(network.triangles().is_empty());
    }
}
