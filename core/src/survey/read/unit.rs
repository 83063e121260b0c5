//! Units of length in files, with the two feet kept apart.
//!
//! The international foot is 0.3048 m exactly, the US survey foot 1200/3937 m exactly (NIST SP 811, 2008, appendix B.6: the
//! mile of 5280 of the latter differs by 3 mm, and a coordinate of two million feet by four feet).

use crate::failure::{Code, Failure, Result};
use crate::quantity::{kinds, length};

crate::choice! {
    /// The unit of the numbers in a file.
    pub enum FileUnit {
        /// Metre.
        Metre = "m",
        /// Centimetre.
        Centimetre = "cm",
        /// Millimetre.
        Millimetre = "mm",
        /// International foot, 0.3048 m.
        Foot = "ft",
        /// US survey foot, 1200/3937 m.
        SurveyFoot = "us_survey_ft",
        /// Inch, 0.0254 m.
        Inch = "in",
        /// Yard, 0.9144 m.
        Yard = "yd",
    }
}

/// Spellings of the US survey foot, letters only.
const SURVEY_FOOT: [&str; 9] = [
    "ussurveyft",
    "ussurveyfoot",
    "ussurveyfeet",
    "surveyft",
    "surveyfoot",
    "surveyfeet",
    "usft",
    "ftus",
    "ussft",
];

impl FileUnit {
    /// A number in this unit, in metres.
    #[must_use]
    pub fn metres(self, number: f64) -> f64 {
        let unit = match self {
            Self::Metre => return number,
            Self::Centimetre => &length::unit::centimeter,
            Self::Millimetre => &length::unit::millimeter,
            Self::Foot => &length::unit::foot,
            // One multiplication and one division of exact whole numbers.
            Self::SurveyFoot => return number * 1200.0 / 3937.0,
            Self::Inch => &length::unit::inch,
            Self::Yard => &length::unit::yard,
        };
        (unit.to_base)(number)
    }

    /// What the word means.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Metre => "metre",
            Self::Centimetre => "centimetre",
            Self::Millimetre => "millimetre",
            Self::Foot => "international foot, 0.3048 m",
            Self::SurveyFoot => "US survey foot, 1200/3937 m",
            Self::Inch => "inch",
            Self::Yard => "yard",
        }
    }

    /// Whether it belongs to the metric system.
    pub(super) const fn is_metric(self) -> bool {
        matches!(self, Self::Metre | Self::Centimetre | Self::Millimetre)
    }

    /// The unit spelled so in a header.
    pub(super) fn from_spelling(spelling: &str) -> Option<Self> {
        let letters: String =
            spelling.chars().filter(char::is_ascii_alphanumeric).collect::<String>().to_ascii_lowercase();
        if SURVEY_FOOT.contains(&letters.as_str()) {
            return Some(Self::SurveyFoot);
        }
        match kinds::length.unit(spelling.trim().trim_end_matches('.'))?.symbol {
            "m" => Some(Self::Metre),
            "cm" => Some(Self::Centimetre),
            "mm" => Some(Self::Millimetre),
            "ft" => Some(Self::Foot),
            "in" => Some(Self::Inch),
            "yd" => Some(Self::Yard),
            _ => None,
        }
    }

    /// The unit spelled so, or why it is none: a unit of something else, or not known at all.
    pub(super) fn read(spelling: &str, path: &str) -> Result<Self> {
        if let Some(unit) = Self::from_spelling(spelling) {
            return Ok(unit);
        }
        let other = kinds::ALL.iter().find(|kind| kind.unit(spelling.trim()).is_some());
        let (code, remedy) = match other {
            Some(kind) => (Code::UnitWrong, format!("{} is a unit of {}", spelling.trim(), kind.name)),
            None => {
                (Code::UnitUnknown, "give the columns with their units in place of the header".to_owned())
            }
        };
        Err(Failure::new(code, path).written(spelling.trim()).allowed(Self::words()).remedy(remedy))
    }

    /// All words, for messages.
    pub(super) fn words() -> String {
        <Self as crate::operation::Choice>::WORDS.join(", ")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // NIST SP 811 (2008), appendix B.6: 1 ft = 0.3048 m, 1 US survey ft = 1200/3937 m = 0.304 800 609 6 m.
    #[test]
    fn the_two_feet_differ_by_two_in_a_million() {
        assert_eq!(FileUnit::Foot.metres(1.0), 0.3048);
        assert_eq!(FileUnit::SurveyFoot.metres(3937.0), 1200.0);
        let share = FileUnit::SurveyFoot.metres(1.0) / FileUnit::Foot.metres(1.0) - 1.0;
        assert!((share - 2.0e-6).abs() < 1.0e-11, "{share}");
    }

    #[test]
    fn spellings() {
        let known = [
            ("ft", FileUnit::Foot),
            ("Feet", FileUnit::Foot),
            ("US survey ft", FileUnit::SurveyFoot),
            ("USSurveyFoot", FileUnit::SurveyFoot),
            ("ftUS", FileUnit::SurveyFoot),
            ("in.", FileUnit::Inch),
            ("metres", FileUnit::Metre),
            ("MM", FileUnit::Millimetre),
        ];
        for (spelling, unit) in known {
            assert_eq!(FileUnit::from_spelling(spelling), Some(unit), "{spelling}");
        }
        let refused = |spelling| FileUnit::read(spelling, "x").map_err(|failure| failure.code);
        assert_eq!(refused("psi"), Err(Code::UnitWrong));
        assert_eq!(refused("rods"), Err(Code::UnitUnknown));
    }
}
