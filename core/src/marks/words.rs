//! How heights and distances are written: as the crew's rod is divided.

use crate::quantity::length::unit::foot;
use crate::quantity::units::{FOOT, INCH};
use crate::quantity::{Length, Typed, feet_and_inches};

/// How the rod that the marks are read on is divided.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RodDivision {
    /// Feet, inches and so many parts of an inch: `4' 9 1/8"`.
    Inches(u32),
    /// Feet and hundredths: `4.76 ft`.
    Hundredths,
    /// Metres and millimetres: `1.451 m`.
    Millimetres,
}

/// A hundredth of a foot, in metres.
const HUNDREDTH: f64 = 0.01 * FOOT;

impl RodDivision {
    /// The coarsest division on which whole steps can be read: parts of an inch, else hundredths of a foot, else millimetres.
    #[must_use]
    pub fn of_step(step: Length) -> Self {
        let whole = |unit: f64| {
            let steps = step.base() / unit;
            steps > 0.5 && (steps - steps.round()).abs() < 1e-6
        };
        let parts = [1_u32, 2, 4, 8, 16, 32, 64].into_iter().find(|parts| whole(INCH / f64::from(*parts)));
        match parts {
            Some(parts) => Self::Inches(parts),
            None if whole(HUNDREDTH) => Self::Hundredths,
            None => Self::Millimetres,
        }
    }

    /// A reading as it is held on the rod.
    #[must_use]
    pub fn say(self, length: Length) -> String {
        match self {
            Self::Inches(parts) => feet_and_inches(length, parts),
            Self::Hundredths => format!("{:.2} ft", (foot.from_base)(length.base())),
            Self::Millimetres => format!("{:.3} m", length.base()),
        }
    }

    /// A distance or a height over the old slab, which nobody tapes finer than 1/8 in.
    #[must_use]
    pub fn taped(self, length: Length) -> String {
        match self {
            Self::Inches(parts) => feet_and_inches(length, parts.max(8)),
            _ => self.say(length),
        }
    }

    /// What plan distances are rounded up to where they are free: a whole inch, a tenth of a foot, a centimetre.
    pub(super) const fn taping_step(self) -> f64 {
        match self {
            Self::Inches(_) => INCH,
            Self::Hundredths => 10.0 * HUNDREDTH,
            Self::Millimetres => 0.01,
        }
    }

    /// Whether files are written in metres.
    pub(super) const fn is_metric(self) -> bool {
        matches!(self, Self::Millimetres)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::read;

    #[test]
    fn a_step_tells_the_rod() {
        let of = |text: &str| RodDivision::of_step(read(text).unwrap());
        assert_eq!(of("1/8 in"), RodDivision::Inches(8));
        assert_eq!(of("3.175 mm"), RodDivision::Inches(8));
        assert_eq!(of("1/2 in"), RodDivision::Inches(2));
        assert_eq!(of("0.01 ft"), RodDivision::Hundredths);
        assert_eq!(of("2 mm"), RodDivision::Millimetres);
        let rod: Length = read("1.451 m").unwrap();
        assert_eq!(RodDivision::Inches(8).say(rod), "4' 9 1/8\"");
        assert_eq!(RodDivision::Hundredths.say(rod), "4.76 ft");
        assert_eq!(RodDivision::Millimetres.say(rod), "1.451 m");
    }
}
