//! Sums that do not lose the small terms.

/// A running sum with its rounding errors carried beside it (Neumaier 1974).
///
/// A plain sum over a million triangles loses about five digits of the sixteen; this one keeps them.
#[derive(Clone, Copy, Debug, Default)]
pub struct Sum {
    total: f64,
    lost: f64,
}

impl Sum {
    /// An empty sum.
    #[must_use]
    pub const fn new() -> Self {
        Self { total: 0.0, lost: 0.0 }
    }

    /// Takes one more term in.
    #[inline]
    pub fn add(&mut self, term: f64) {
        let total = self.total + term;
        self.lost += if self.total.abs() >= term.abs() {
            (self.total - total) + term
        } else {
            (term - total) + self.total
        };
        self.total = total;
    }

    /// The sum so far.
    #[inline]
    #[must_use]
    pub fn value(&self) -> f64 {
        self.total + self.lost
    }
}

impl FromIterator<f64> for Sum {
    fn from_iter<I: IntoIterator<Item = f64>>(terms: I) -> Self {
        let mut sum = Self::new();
        for term in terms {
            sum.add(term);
        }
        sum
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn small_terms_between_large_ones_are_kept() {
        let terms = [1.0, 1e100, 1.0, -1e100];
        assert_eq!(terms.into_iter().collect::<Sum>().value(), 2.0);
        assert_eq!(terms.into_iter().sum::<f64>(), 0.0);
        let tenths: Sum = std::iter::repeat_n(0.1, 1_000_000).collect();
        assert!((tenths.value() - 1e5).abs() < 1e-10);
    }
}
