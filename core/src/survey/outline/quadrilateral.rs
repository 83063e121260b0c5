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
            if step.iter().all(|change| change.abs() <= SETTLED * scale) {
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

/// A step that moves no corner by more than this share of the perimeter is the last.
const SETTLED: f64 = 1.0e-13;

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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::survey::varied::Varied;

    #[track_caller]
    fn assert_near(left: f64, right: f64, allowed: f64) {
        assert!((left - right).abs() <= allowed, "{left} is not within {allowed} of {right}");
    }

    #[track_caller]
    fn assert_same(left: &Quadrilateral, right: &Quadrilateral, allowed: f64) {
        for (a, b) in left.corners.iter().zip(right.corners) {
            assert!(distance(*a, b) <= allowed, "{left:?} is not {right:?}");
        }
    }

    fn sides(figure: &Quadrilateral) -> [f64; 4] {
        let [a, b, c, d] = figure.corners;
        [distance(a, b), distance(b, c), distance(c, d), distance(d, a)]
    }

    /// Convex figures of about a room's size, none far from square.
    fn figures() -> impl Iterator<Item = Quadrilateral> {
        let mut varied = Varied::new(7);
        (0..200).map(move |_| {
            let (width, depth) = (varied.between(3.0, 12.0), varied.between(3.0, 12.0));
            let mut off = || varied.between(-0.7, 0.7);
            let corners = [[0.0, 0.0], [width, 0.0], [width + off(), depth + off()], [off(), depth + off()]];
            Quadrilateral { corners }
        })
    }

    // Brahmagupta's quadrilateral (Brahmasphutasiddhanta, 628; from memory, and Ptolemy's theorem bears it out: 56 x 63 =
    // 25 x 60 + 39 x 52): sides 25, 39, 60, 52, diagonals 56 and 63, area 1764.
    #[test]
    fn the_quadrilateral_of_brahmagupta() {
        let on_first = Quadrilateral::on_first([25.0, 39.0, 60.0, 52.0], 56.0).unwrap();
        let on_second = Quadrilateral::on_second([25.0, 39.0, 60.0, 52.0], 63.0).unwrap();
        assert_near(on_first.diagonals()[1], 63.0, 1e-12);
        assert_near(on_second.diagonals()[0], 56.0, 1e-12);
        assert_same(&on_first, &on_second, 1e-12);
        let [p, q] = [
            minus(on_first.corners[2], on_first.corners[0]),
            minus(on_first.corners[3], on_first.corners[1]),
        ];
        assert_near(0.5 * cross(p, q), 1764.0, 1e-9);
    }

    #[test]
    fn known_figures_are_solved_back() {
        for figure in figures() {
            let (sides, [first, second]) = (sides(&figure), figure.diagonals());
            assert_same(&Quadrilateral::on_first(sides, first).unwrap(), &figure, 1e-9);
            assert_same(&Quadrilateral::on_second(sides, second).unwrap(), &figure, 1e-9);
            let start = Quadrilateral::on_first(sides, first + 0.003).unwrap();
            assert_same(&start.adjusted(sides, [first, second]).unwrap(), &figure, 1e-9);
        }
    }

    /// Sum of the squared residuals.
    fn misfit(figure: &Quadrilateral, lengths: [f64; 4], diagonals: [f64; 2]) -> f64 {
        let laid = sides(figure).into_iter().chain(figure.diagonals());
        laid.zip(lengths.into_iter().chain(diagonals)).map(|(laid, measured)| (laid - measured).powi(2)).sum()
    }

    #[test]
    fn no_figure_nearby_fits_better() {
        let mut varied = Varied::new(8);
        for figure in figures() {
            let mut taped = |length: f64| length + varied.between(-0.01, 0.01);
            let (lengths, diagonals) = (sides(&figure).map(&mut taped), figure.diagonals().map(&mut taped));
            let best = figure.adjusted(lengths, diagonals).unwrap();
            let least = misfit(&best, lengths, diagonals);
            for (corner, axis) in [(1, 0), (2, 0), (2, 1), (3, 0), (3, 1)] {
                for step in [-1e-4, 1e-4] {
                    let mut other = best;
                    other.corners[corner][axis] += step;
                    assert!(misfit(&other, lengths, diagonals) > least);
                }
            }
        }
    }

    /// Numbering the corners from another one changes nothing but the frame.
    #[test]
    fn any_corner_may_be_the_first() {
        let mut varied = Varied::new(9);
        for figure in figures() {
            let mut taped = |length: f64| length + varied.between(-0.01, 0.01);
            let ([a, b, c, d], [p, q]) = (sides(&figure).map(&mut taped), figure.diagonals().map(&mut taped));
            let one = figure.adjusted([a, b, c, d], [p, q]).unwrap();
            let start = Quadrilateral::on_first([b, c, d, a], q).unwrap();
            let other = start.adjusted([b, c, d, a], [q, p]).unwrap();
            for (left, right) in sides(&one).into_iter().zip([3, 0, 1, 2].map(|side| sides(&other)[side])) {
                assert_near(left, right, 1e-9);
            }
            assert_near(one.diagonals()[0], other.diagonals()[1], 1e-9);
            let turned = [3, 0, 1, 2].map(|corner| other.out_of_square()[corner]);
            for (left, right) in one.out_of_square().into_iter().zip(turned) {
                assert_near(left, right, 1e-9);
            }
        }
    }

    /// In a rectangle p dp + q dq = a (da + dc) + b (db + dd), so least squares leaves a quarter of a diagonal's error in
    /// that diagonal and takes a quarter off the other.
    #[test]
    fn a_rectangle_keeps_a_quarter_of_the_error() {
        let figure = Quadrilateral { corners: [[0.0, 0.0], [6.0, 0.0], [6.0, 8.0], [0.0, 8.0]] };
        let best = figure.adjusted([6.0, 8.0, 6.0, 8.0], [10.0, 10.004]).unwrap();
        assert_near(10.004 - best.diagonals()[1], 0.001, 1e-6);
        assert_near(10.0 - best.diagonals()[0], 0.001, 1e-6);
        for (laid, (measured, share)) in
            sides(&best).into_iter().zip([(6.0, 0.6), (8.0, 0.8), (6.0, 0.6), (8.0, 0.8)])
        {
            assert_near(laid - measured, 0.001 * share, 1e-6);
        }
    }

    #[test]
    fn out_of_square_is_the_offset_over_the_wall() {
        // Leaning 0.1 to the right over 8: the first corner is closed by 1:80, the second open by as much.
        let figure = Quadrilateral { corners: [[0.0, 0.0], [6.0, 0.0], [6.1, 8.0], [0.1, 8.0]] };
        for (found, expected) in figure.out_of_square().into_iter().zip([-0.0125, 0.0125, -0.0125, 0.0125]) {
            assert_near(found, expected, 1e-15);
        }
        assert_eq!(figure.bends_inward(), None);
        let straight = Quadrilateral { corners: [[0.0, 0.0], [2.0, 0.0], [1.0, 1.0], [0.0, 2.0]] };
        assert_eq!(straight.bends_inward(), Some(2));
        let bent = Quadrilateral { corners: [[0.0, 0.0], [2.0, 0.0], [0.5, 0.5], [0.0, 2.0]] };
        assert_eq!(bent.bends_inward(), Some(2));
    }

    #[test]
    fn lengths_that_make_no_triangle_make_no_figure() {
        let sides = [6.0, 8.0, 6.0, 8.0];
        for diagonal in [2.0, 14.0, 1.0, 20.0] {
            assert_eq!(Quadrilateral::on_first(sides, diagonal), None);
            assert_eq!(Quadrilateral::on_second(sides, diagonal), None);
        }
        assert_eq!(Quadrilateral::on_first([6.0, 8.0, 1.0, 30.0], 10.0), None);
    }
}
