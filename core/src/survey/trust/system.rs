//! The equations that give the weights of the neighbours of one place.

use super::Floor;
use super::neighbours::Neighbours;
use super::predictor::{LEVEL, REACH, Waves};
use crate::geometry::Point;

/// The equations of one place.
#[derive(Default)]
pub(super) struct System {
    numbers: Vec<u32>,
    /// The neighbours seen from the place.
    places: Vec<Point>,
    /// What two neighbours share of the waviness, and their product over the square of the reach: lower triangle by rows.
    pairs: Vec<(f64, f64)>,
    /// What each shares with the place.
    own: Vec<f64>,
    /// The covariances, then their Cholesky factor: lower triangle by rows.
    rows: Vec<f64>,
    weights: Vec<f64>,
}

impl System {
    /// Looks at a place and those of its neighbours that are taken.
    pub(super) fn look(&mut self, floor: &Floor, neighbours: &Neighbours, taken: &[bool], place: usize) {
        self.numbers.clear();
        self.places.clear();
        self.pairs.clear();
        self.own.clear();
        let at = floor.places[place];
        for &number in neighbours.of_place(place).iter().filter(|&&number| taken[number as usize]) {
            let other = floor.places[number as usize];
            let seen = Point::new(other.x - at.x, other.y - at.y);
            self.places.push(seen);
            for other in &self.places {
                let product = (seen.x * other.x + seen.y * other.y) / (REACH * REACH);
                self.pairs.push((shared_at(seen.distance(*other)), product));
            }
            self.own.push(shared_at(seen.distance(Point::default())));
            self.numbers.push(number);
        }
    }

    /// Solves for the weights; gives the variance of reading less prediction.
    pub(super) fn solve(&mut self, waves: Waves) -> f64 {
        self.rows.clear();
        let covariance =
            |&(shared, product): &(f64, f64)| waves.waviness * shared + LEVEL + waves.tilt * product;
        self.rows.extend(self.pairs.iter().map(covariance));
        self.weights.clear();
        self.weights.extend(self.own.iter().map(|shared| waves.waviness * shared + LEVEL));
        let explained = self.forward();
        self.backward();
        1.0 + waves.waviness + LEVEL - explained
    }

    /// The neighbours that count, and their weights.
    pub(super) fn answer(&self) -> (&[u32], &[f64]) {
        (&self.numbers, &self.weights)
    }

    /// How far the place lies from the weighted mean of its neighbours.
    pub(super) fn arm(&self) -> Point {
        let shares = self.weights.iter().zip(&self.places);
        shares.fold(Point::default(), |arm, (weight, place)| {
            Point::new(arm.x - weight * place.x, arm.y - weight * place.y)
        })
    }

    /// Cholesky's factor in place of the covariances, each row with its part of the solution.
    fn forward(&mut self) -> f64 {
        let mut explained = 0.0;
        for row in 0..self.weights.len() {
            let (done, rest) = self.rows.split_at_mut(start(row));
            let mut value = self.weights[row];
            for column in 0..row {
                let before = &done[start(column)..=start(column) + column];
                let product: f64 = rest.iter().zip(&before[..column]).map(|(a, b)| a * b).sum();
                rest[column] = (rest[column] - product) / before[column];
                value -= rest[column] * self.weights[column];
            }
            let squares: f64 = rest[..row].iter().map(|a| a * a).sum();
            // A reading's own variance is one, so no less than one is left but for rounding.
            rest[row] = (rest[row] + 1.0 - squares).max(0.5).sqrt();
            value /= rest[row];
            self.weights[row] = value;
            explained += value * value;
        }
        explained
    }

    fn backward(&mut self) {
        for row in (0..self.weights.len()).rev() {
            let value = self.weights[row] / self.rows[start(row) + row];
            self.weights[row] = value;
            for column in 0..row {
                self.weights[column] -= self.rows[start(row) + column] * value;
            }
        }
    }
}

/// Where a row of a lower triangle starts.
const fn start(row: usize) -> usize {
    row * (row + 1) / 2
}

/// The share of the waviness that two places have in common: Matern's function of order 3/2.
fn shared_at(distance: f64) -> f64 {
    let a = 3.0_f64.sqrt() / REACH * distance;
    (1.0 + a) * (-a).exp()
}
