//! What the neighbours of a place say its height is, and how far off that may be.
//!
//! The heights are taken as a plane through the whole floor, a waviness about it that neighbours share, and what each
//! reading has for itself: the reading error and the texture under the rod. The best linear prediction of a place from its
//! neighbours (kriging) then has, with distances `d` and everything in shares of the variance that each reading has for itself,
//!
//! - covariances `C[j][k] = (1 if j = k) + waviness m(d[j][k]) + level + tilt x[j].x[k] / L2`, `m(d) = (1 + a) exp(-a)`,
//!   `a = sqrt(3) d / L`,
//! - weights `w = C^-1 c` and the variance `1 + waviness + level - w.c` of the difference between reading and prediction.
//!
//! `level` is large: the prediction follows its neighbours wherever the plane is off. At an edge the neighbours lie on one
//! side and the variance is greater by itself.

use super::Floor;
use super::neighbours::Neighbours;
use super::plane::Trend;
use super::system::System;
use crate::geometry::Point;
use crate::quantity::units::FOOT;

/// How far waves of an old slab reach, in metres: 10 ft. Common practice, no source.
pub(super) const REACH: f64 = 10.0 * FOOT;

/// The variance of the local level, in shares of a reading's own: so large that it follows its neighbours.
pub(super) const LEVEL: f64 = 1.0e4;

/// One way in which a floor can wave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Waves {
    /// The variance that neighbours share over what each reading has for itself.
    pub(super) waviness: f64,
    /// The variance of the local tilt over [`REACH`]: large on a floor of several planes.
    pub(super) tilt: f64,
}

/// The floors that are tried, from the flat to the wavy, and the one of several planes.
pub(super) const WAVES: [Waves; 5] = [
    Waves { waviness: 0.05, tilt: 0.0 },
    Waves { waviness: 0.5, tilt: 0.0 },
    Waves { waviness: 3.0, tilt: 0.0 },
    Waves { waviness: 15.0, tilt: 0.0 },
    Waves { waviness: 0.5, tilt: 1.0e3 },
];

/// Reading less prediction, and its variance in shares of a reading's own.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Residual {
    pub(super) off: f64,
    pub(super) variance: f64,
}

/// The neighbours of one place as they count.
struct View<'a> {
    numbers: &'a [u32],
    weights: &'a [f64],
    variance: f64,
    /// How far the place lies from the weighted mean of its neighbours.
    arm: Point,
}

impl View<'_> {
    fn residual(&self, waves: Waves, trend: &Trend, place: usize, taken: bool) -> Residual {
        let (own, pull) = trend.without(place, taken);
        let near = self.numbers.iter().zip(self.weights);
        let predicted: f64 =
            near.map(|(&number, weight)| weight * trend.seen_from(number as usize, place, pull)).sum();
        // The plane counts by as much as the neighbours lie to one side.
        let of_plane = (1.0 + waves.waviness) * trend.variance_of_slope(place, self.arm, taken);
        Residual { off: own - predicted, variance: self.variance + of_plane }
    }
}

/// What every place is off its neighbours by, for every way the floor may wave.
pub(super) fn trials(
    floor: &Floor,
    neighbours: &Neighbours,
    trend: &Trend,
    taken: &[bool],
) -> [Vec<Residual>; 5] {
    let mut system = System::default();
    let mut found = WAVES.map(|_| Vec::with_capacity(taken.len()));
    for (place, &is_taken) in taken.iter().enumerate() {
        system.look(floor, neighbours, taken, place);
        for (waves, found) in WAVES.into_iter().zip(&mut found) {
            let variance = system.solve(waves);
            let (numbers, weights) = system.answer();
            let view = View { numbers, weights, variance, arm: system.arm() };
            found.push(view.residual(waves, trend, place, is_taken));
        }
    }
    found
}

/// The weights of the neighbours of every place over a floor that waves in one way.
pub(super) struct Weights {
    pub(super) waves: Waves,
    /// One per neighbour, in the order of the lists of neighbours; zero for one that is left out.
    weights: Vec<f64>,
    variances: Vec<f64>,
    arms: Vec<Point>,
    system: System,
}

impl Weights {
    /// The weights over a floor that waves so.
    pub(super) fn new(floor: &Floor, neighbours: &Neighbours, taken: &[bool], waves: Waves) -> Self {
        let places = taken.len();
        let mut weights = Self {
            waves,
            weights: vec![0.0; neighbours.len()],
            variances: vec![0.0; places],
            arms: vec![Point::default(); places],
            system: System::default(),
        };
        (0..places).for_each(|place| weights.renew(floor, neighbours, taken, place));
        weights
    }

    /// Finds the weights of one place anew, from the neighbours that are taken.
    pub(super) fn renew(&mut self, floor: &Floor, neighbours: &Neighbours, taken: &[bool], place: usize) {
        self.system.look(floor, neighbours, taken, place);
        self.variances[place] = self.system.solve(self.waves);
        self.arms[place] = self.system.arm();
        let mut solved = self.system.answer().1.iter();
        for (at, &number) in neighbours.range(place).zip(neighbours.of_place(place)) {
            let weight = if taken[number as usize] { solved.next().copied() } else { None };
            self.weights[at] = weight.unwrap_or(0.0);
        }
    }

    /// What one place is off its neighbours by.
    pub(super) fn residual(
        &self,
        neighbours: &Neighbours,
        trend: &Trend,
        place: usize,
        taken: bool,
    ) -> Residual {
        let view = View {
            numbers: neighbours.of_place(place),
            weights: &self.weights[neighbours.range(place)],
            variance: self.variances[place],
            arm: self.arms[place],
        };
        view.residual(self.waves, trend, place, taken)
    }
}
