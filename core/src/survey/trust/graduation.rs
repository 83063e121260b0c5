//! How the rod is graduated, told by the readings themselves.

crate::choice! {
    /// How a rod is graduated.
    pub enum Graduation {
        /// Feet, inches and their fractions down to 1/16.
        Inches = "inches",
        /// Feet and their tenths and hundredths.
        Tenths = "tenths",
        /// Metres down to millimetres.
        Metric = "metric",
        /// The readings do not tell.
        Unknown = "unknown",
    }
}

/// A reading lies on a graduation line within this, in metres.
const ON_LINE: f64 = 1e-6;

impl Graduation {
    /// The finest line of the rod, in metres.
    const fn line(self) -> f64 {
        match self {
            Self::Inches => 0.0254 / 16.0,
            Self::Tenths => 0.3048 / 100.0,
            Self::Metric => 0.001,
            Self::Unknown => 0.0,
        }
    }

    /// The one rod on whose lines all readings lie; unknown where none or several do.
    pub(super) fn of(readings: impl Iterator<Item = f64> + Clone) -> Self {
        let fits = |graduation: &Self| {
            let line = graduation.line();
            readings.clone().all(|reading| (reading - (reading / line).round() * line).abs() <= ON_LINE)
        };
        let mut fitting = [Self::Inches, Self::Tenths, Self::Metric].into_iter().filter(fits);
        match (fitting.next(), fitting.next()) {
            (Some(only), None) => only,
            _ => Self::Unknown,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_tell_their_rod() {
        let inches = [60.625, 59.875, 59.5, 58.0].map(|inches| inches * 0.0254);
        let tenths = [4.67, 4.68, 4.31].map(|feet| feet * 0.3048);
        let metric = [1.412, 1.407, 1.398];
        assert_eq!(Graduation::of(inches.into_iter()), Graduation::Inches);
        assert_eq!(Graduation::of(tenths.into_iter()), Graduation::Tenths);
        assert_eq!(Graduation::of(metric.into_iter()), Graduation::Metric);
        assert_eq!(Graduation::of([4.0, 5.0].map(|feet| feet * 0.3048).into_iter()), Graduation::Unknown);
        assert_eq!(Graduation::of([1.234_567, 1.3].into_iter()), Graduation::Unknown);
    }
}
