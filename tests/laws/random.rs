//! Repeatable pseudo-random numbers (xorshift, Marsaglia 2003).

/// A stream of numbers that is the same in every run.
pub(crate) struct Random(u64);

impl Random {
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1)
    }

    fn bits(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0
    }

    /// A number from `low` up to `high`.
    pub(crate) fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * ((self.bits() >> 11) as f64 / (1_u64 << 53) as f64)
    }

    /// A whole number below `limit`.
    pub(crate) fn below(&mut self, limit: usize) -> usize {
        (self.bits() >> 33) as usize % limit
    }

    /// Puts things into another order.
    pub(crate) fn shuffle<T>(&mut self, things: &mut [T]) {
        for last in (1..things.len()).rev() {
            things.swap(last, self.below(last + 1));
        }
    }
}
