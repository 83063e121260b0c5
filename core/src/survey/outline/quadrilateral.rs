//! Four sides and their diagonals: the figure they make.
//!
//! Corners 1 to 4 counter-clockwise, side `i` from corner `i` to the next; the first diagonal joins corners 1 and 3, the
//! second 2 and 4. All in metres.

/// A place in plan.
type Place = [f64; 2];

/// A figure of four corners, the first at the origin and the second on +x.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Quadrilateral {
    pub(super) corners: [Place; 4],
}

impl Quadrilateral {
    /// From its sides and its first diagonal, which lies inside: two triangles on one base.
    pub(super) fn on_first(sides: [f64; 4], diagonal: f64) -> Option<Self> {
        let [a, b, c, d] = sides;
        let (below, above) = (apex(diagonal, a, b)?, apex(diagonal, d, c)?);
        let corners = [[0.0, 0.0], [below[0], -below[1]], [diagonal, 0.0], above];
        Some(Self { corners }.in_frame())
    }

    /// From its sides and its second diagonal, which lies inside.
    pub(super) fn on_second(sides: [f64; 4], diagonal: f64) -> Option<Self> {
        let [a, b, c, d] = sides;
        let Self { corners: [second, third, fourth, first] } = Self::on_first([b, c, d, a], diagonal)?;
        Some(Self { corners: [first, second, third, fourth] }.in_frame())
    }

    /// From its sides and both diagonals by least squares, every length measured equally well: the corners that make the sum
    /// of the squared residuals least, found by Gauss-Newton steps from `self`.
    ///
    /// None where the steps do not settle.
    pub(super) fn adjusted(self, sides: [f64; 4], diagonals: [f64; 2]) -> Option<Self> {
        let scale = sides.iter().sum::<f64>();
        let mut figure = self;
        for _ in 0..STEPS {
            let step = figure.step(sides, diagonals)?;
            for (corner, unknowns) in figure.corners.iter_mut().zip(UNKNOWN) {
                for (coordinate, unknown) in corner.iter_mut().zip(unknowns) {
                    *coordinate += unknown.map_or(0.0, |unknown| step[unknown]);
                }
            }
            if step.iter().all(|change| change.abs() <= 4.0 * f64::EPSILON * scale) {
                return Some(figure);
            }
        }
        None
    }

    /// The lengths of its diagonals.
    pub(super) fn diagonals(&self) -> [f64; 2] {
        let [a, b, c, d] = self.corners;
        [distance(a, c), distance(b, d)]
    }

    /// Tangent of each corner's angle beyond a right angle: positive where the corner is open, infinite or of the other
    /// sign where it is no corner of a convex figure (see [`Self::bends_inward`]).
    pub(super) fn out_of_square(&self) -> [f64; 4] {
        [0, 1, 2, 3].map(|corner| {
            let [next, before] = self.arms(corner);
            -dot(next, before) / cross(next, before)
        })
    }

    /// The first corner that is straight or bends inward.
    pub(super) fn bends_inward(&self) -> Option<usize> {
        (0..4).find(|&corner| {
            let [next, before] = self.arms(corner);
            cross(next, before) <= 0.0
        })
    }

    /// From a corner to the next one, and to the one before.
    fn arms(&self, corner: usize) -> [Place; 2] {
        let here = self.corners[corner];
        let [next, before] = [self.corners[(corner + 1) % 4], self.corners[(corner + 3) % 4]];
        [minus(next, here), minus(before, here)]
    }

    /// The same figure, moved and turned to its first corner and first side.
    fn in_frame(self) -> Self {
        let [origin, second, ..] = self.corners;
        let along = minus(second, origin);
        let length = along[0].hypot(along[1]);
        let turned = self.corners.map(|corner| {
            let arm = minus(corner, origin);
            [dot(along, arm) / length, cross(along, arm) / length]
        });
        let [_, _, third, fourth] = turned;
        Self { corners: [[0.0, 0.0], [length, 0.0], third, fourth] }
    }

    /// One Gauss-Newton step for the five unknown coordinates.
    fn step(&self, sides: [f64; 4], diagonals: [f64; 2]) -> Option<[f64; 5]> {
        let mut normal = [[0.0; 6]; 5];
        for (row, missing) in self.rows(sides, diagonals) {
            for i in 0..5 {
                for j in 0..5 {
                    normal[i][j] += row[i] * row[j];
                }
                normal[i][5] += row[i] * missing;
            }
        }
        solve(normal)
    }

    /// For every measured length: how it changes with the unknowns, and what it lacks.
    fn rows(&self, sides: [f64; 4], diagonals: [f64; 2]) -> [([f64; 5], f64); 6] {
        let measured = [sides[0], sides[1], sides[2], sides[3], diagonals[0], diagonals[1]];
        std::array::from_fn(|index| {
            let [from, to] = PAIRS[index];
            let arm = minus(self.corners[to], self.corners[from]);
            let length = arm[0].hypot(arm[1]);
            let mut row = [0.0; 5];
            for (corner, sign) in [(from, -1.0), (to, 1.0)] {
                for (unknown, along) in UNKNOWN[corner].into_iter().zip(arm) {
                    if let Some(unknown) = unknown {
                        row[unknown] += sign * along / length;
                    }
                }
            }
            (row, measured[index] - length)
        })
    }
}

/// Gauss-Newton settles in a handful of steps from a start within an inch or two.
const STEPS: usize = 50;

/// The corners that each measured length joins: four sides, two diagonals.
const PAIRS: [[usize; 2]; 6] = [[0, 1], [1, 2], [2, 3], [3, 0], [0, 2], [1, 3]];

/// Which unknown each coordinate is: the first corner is the origin, the second lies on +x.
const UNKNOWN: [[Option<usize>; 2]; 4] =
    [[None, None], [Some(0), None], [Some(1), Some(2)], [Some(3), Some(4)]];

/// The tip of a triangle over its base, seen from the base's first end: `near` from that end, `far` from the other.
///
/// The height comes from Kahan's form of Heron's formula, which keeps its digits in needle-like triangles
/// (W. Kahan, "Miscalculating Area and Angles of a Needle-like Triangle", 2014).
fn apex(base: f64, near: f64, far: f64) -> Option<Place> {
    let mut lengths = [base, near, far];
    lengths.sort_by(|a, b| b.total_cmp(a));
    let [a, b, c] = lengths;
    let sixteen = (a + (b + c)) * (c - (a - b)) * (c + (a - b)) * (a + (b - c));
    if sixteen <= 0.0 {
        return None;
    }
    let along = 0.5 * (base + (near - far) * ((near + far) / base));
    Some([along, sixteen.sqrt() / (2.0 * base)])
}

/// Solves five equations by elimination with pivoting; the last column is the right side.
fn solve(mut rows: [[f64; 6]; 5]) -> Option<[f64; 5]> {
    for column in 0..5 {
        let pivot = (column..5).max_by(|&i, &j| rows[i][column].abs().total_cmp(&rows[j][column].abs()))?;
        rows.swap(column, pivot);
        let top = rows[column];
        if top[column].abs() <= f64::EPSILON {
            return None;
        }
        for (_, row) in rows.iter_mut().enumerate().filter(|(index, _)| *index != column) {
            let factor = row[column] / top[column];
            for (entry, above) in row.iter_mut().zip(top) {
                *entry -= factor * above;
            }
        }
    }
    Some([0, 1, 2, 3, 4].map(|index| rows[index][5] / rows[index][index]))
}

fn minus(a: Place, b: Place) -> Place {
    [a[0] - b[0], a[1] - b[1]]
}

fn dot(a: Place, b: Place) -> f64 {
    a[0] * b[0] + a[1] * b[1]
}

fn cross(a: Place, b: Place) -> f64 {
    a[0] * b[1] - a[1] * b[0]
}

fn distance(a: Place, b: Place) -> f64 {
    let [x, y] = minus(a, b);
    x.hypot(y)
}
