//! How rough a floor is as its own shots say it, and how it waves.

use super::predictor::{Residual, WAVES, Waves};

/// For how many shots the words of the site count against what the shots themselves say.
const WORDS_COUNT_FOR: f64 = 8.0;

/// How strongly the roughness found is held to the words (a factor of two off costs as much as a shot 4.6 deviations off).
const HELD_TO_WORDS: f64 = 16.0;

/// The standard deviation of a normal variable over the median of its magnitude.
const OF_MEDIAN: f64 = 1.4826;

/// Beyond this many deviations a shot counts as one that may be wrong, and little more for being more wrong.
const BEND: f64 = 2.5;

/// The roughness of a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Scale {
    /// The standard deviation that each reading has for itself, in metres.
    pub(super) own: f64,
    /// How unlikely the shots are under it: the less the better.
    pub(super) cost: f64,
}

impl Scale {
    /// The roughness by the median of the shots that are taken, with the words of the site as so many shots more.
    pub(super) fn of(residuals: &[Residual], taken: &[bool], words: f64) -> Self {
        let mut sizes: Vec<f64> = residuals
            .iter()
            .zip(taken)
            .filter(|(_, taken)| **taken)
            .map(|(residual, _)| residual.off.abs() / residual.variance.sqrt())
            .collect();
        let count = sizes.len() as f64;
        let found = OF_MEDIAN * median(&mut sizes);
        let own =
            ((count * found * found + WORDS_COUNT_FOR * words * words) / (count + WORDS_COUNT_FOR)).sqrt();
        let spread: f64 = residuals
            .iter()
            .zip(taken)
            .filter(|(_, taken)| **taken)
            .map(|(residual, _)| 0.5 * residual.variance.ln())
            .sum();
        let unlikely: f64 = sizes.iter().map(|size| bent(size / own)).sum();
        let from_words = (own / words).ln();
        Self { own, cost: count * own.ln() + spread + unlikely + HELD_TO_WORDS * from_words * from_words }
    }
}

/// The way a floor waves that makes its shots most likely, and its roughness.
pub(super) fn likeliest(trials: &[Vec<Residual>; 5], taken: &[bool], words: f64) -> (usize, Scale) {
    let scales = trials.iter().map(|trial| Scale::of(trial, taken, words)).enumerate();
    let first = (0, Scale { own: words, cost: f64::INFINITY });
    scales.fold(first, |best, next| if next.1.cost < best.1.cost { next } else { best })
}

/// The waves by their number in [`WAVES`].
pub(super) fn waves(number: usize) -> Waves {
    WAVES[number.min(WAVES.len() - 1)]
}

/// Half the square of a deviation, rising slowly past the bend.
fn bent(deviations: f64) -> f64 {
    if deviations < BEND {
        return 0.5 * deviations * deviations;
    }
    0.5 * BEND * BEND + (deviations - BEND).ln_1p()
}

/// The median, the mean of the middle two of an even number; zero of none.
fn median(list: &mut [f64]) -> f64 {
    let middle = list.len() / 2;
    if list.is_empty() {
        return 0.0;
    }
    let upper = *list.select_nth_unstable_by(middle, f64::total_cmp).1;
    if list.len() % 2 == 1 {
        return upper;
    }
    let lower = list[..middle].iter().copied().fold(f64::NEG_INFINITY, f64::max);
    0.5 * (lower + upper)
}
