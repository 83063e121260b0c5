//! Numbers that vary, the same at every run, for the laws in the tests.

/// A generator of numbers between bounds (a linear congruence; constants of Knuth's MMIX, from memory).
pub(crate) struct Varied(u64);

impl Varied {
    /// The sequence of this seed.
    pub(crate) const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// The next number between the two.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (high - low) * ((self.0 >> 11) as f64 / (1_u64 << 53) as f64)
    }

    /// The next whole number from `low` to below `high`.
    pub(crate) fn count(&mut self, low: usize, high: usize) -> usize {
        (self.between(low as f64, high as f64) as usize).min(high - 1)
    }
}
