//! How many, their mean, and how they scatter about it.

use crate::geometry::Sum;

/// Count, mean and sample standard deviation of readings, in metres.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Spread {
    /// How many.
    pub count: usize,
    /// Their mean; 0 where there are none.
    pub mean: f64,
    /// Their standard deviation, divided by one less than their number; none for fewer than two.
    pub deviation: Option<f64>,
}

impl Spread {
    /// The spread of readings, gone through twice: first for the mean, then for what is off it.
    #[must_use]
    pub fn of(readings: impl Iterator<Item = f64> + Clone) -> Self {
        let (mut count, mut sum) = (0, Sum::new());
        for reading in readings.clone() {
            count += 1;
            sum.add(reading);
        }
        if count == 0 {
            return Self::default();
        }
        let mean = sum.value() / count as f64;
        let squares: Sum = readings.map(|reading| (reading - mean) * (reading - mean)).collect();
        let deviation = (count > 1).then(|| (squares.value() / (count - 1) as f64).sqrt());
        Self { count, mean, deviation }
    }
}
