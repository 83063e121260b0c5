//! The slips that happen when a rod is read or booked, and which of them a height that is off looks like.

use super::graduation::Graduation;
use crate::quantity::{Length, Typed};
use crate::survey::fixed::metres;
use crate::survey::level_book::Slip;

crate::choice! {
    /// What may have happened to a reading.
    pub enum SlipKind {
        /// An inch read or booked wrong.
        Inch = "inch",
        /// A tenth of a foot.
        TenthOfAFoot = "tenth_of_a_foot",
        /// Five centimetres: the other half of a metric rod's figure.
        FiveCentimetres = "five_centimetres",
        /// Ten centimetres.
        TenCentimetres = "ten_centimetres",
        /// Six inches, half a foot.
        HalfAFoot = "half_a_foot",
        /// Ten inches, taken for a foot.
        TenInches = "ten_inches",
        /// A foot.
        Foot = "foot",
        /// A metre.
        Metre = "metre",
        /// The sign of an elevation.
        Sign = "sign",
        /// Two readings booked in each other's place.
        Swapped = "swapped",
        /// A whole row read or booked wrong by one amount.
        RowOff = "row_off",
        /// A row booked from the wrong end.
        RowReversed = "row_reversed",
        /// Two rows booked in each other's place.
        RowsSwapped = "rows_swapped",
        /// No usual slip.
        Unusual = "unusual",
    }
}

/// A slip is named where the height is within so many deviations of it.
pub(super) const NAMED_WITHIN: f64 = 4.0;

/// And within this share of the slip itself.
const OF_THE_SLIP: f64 = 0.75;

/// What a settled edge or a hollow adds to the deviation when a slip is named, in metres: 3/8 in. Common practice, no source.
const SETTLED: f64 = 0.375 * crate::quantity::units::INCH;

/// A second slip is named where the first is not ninety times likelier: twice the logarithm of that.
const SECOND_WITHIN: f64 = 9.0;

impl SlipKind {
    /// How much it is, where it is always the same.
    #[must_use]
    pub const fn amount(self) -> Option<Length> {
        Some(match self {
            Self::Inch => Slip::Inch.amount(),
            Self::TenthOfAFoot => Slip::TenthOfAFoot.amount(),
            Self::FiveCentimetres => metres(0.05),
            Self::TenCentimetres => Slip::TenCentimetres.amount(),
            Self::HalfAFoot => Slip::HalfAFoot.amount(),
            Self::TenInches => Slip::TenInches.amount(),
            Self::Foot => Slip::Foot.amount(),
            Self::Metre => Slip::Metre.amount(),
            _ => return None,
        })
    }

    /// The slips of one amount that a rod allows.
    #[must_use]
    pub const fn on(graduation: Graduation) -> &'static [Self] {
        use SlipKind::{
            FiveCentimetres, Foot, HalfAFoot, Inch, Metre, TenCentimetres, TenInches, TenthOfAFoot,
        };
        match graduation {
            Graduation::Inches => &[Inch, HalfAFoot, TenInches, Foot],
            Graduation::Tenths => &[TenthOfAFoot, HalfAFoot, Foot],
            Graduation::Metric => &[FiveCentimetres, TenCentimetres, Metre],
            Graduation::Unknown => {
                &[Inch, TenthOfAFoot, FiveCentimetres, TenCentimetres, HalfAFoot, TenInches, Foot, Metre]
            }
        }
    }

    /// In words, as in "like a slip of an inch".
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Inch => "an inch",
            Self::TenthOfAFoot => "a tenth of a foot",
            Self::FiveCentimetres => "5 cm",
            Self::TenCentimetres => "10 cm",
            Self::HalfAFoot => "half a foot",
            Self::TenInches => "10 in",
            Self::Foot => "a foot",
            Self::Metre => "a metre",
            Self::Sign => "the sign",
            Self::Swapped => "two readings swapped",
            Self::RowOff => "a row booked off by one amount",
            Self::RowReversed => "a row booked from the wrong end",
            Self::RowsSwapped => "two rows swapped",
            Self::Unusual => "no usual slip",
        }
    }
}

/// The slip that a height looks like, and the next where that is nearly as likely.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Named {
    pub(super) kind: SlipKind,
    /// Squared deviations from it, an edge that may have settled counted in.
    pub(super) misfit: f64,
    pub(super) second: Option<SlipKind>,
}

/// Names the slip of one amount that a place off by `off`, with this deviation, looks like.
pub(super) fn name(off: f64, deviation: f64, graduation: Graduation) -> Named {
    let deviation = deviation.hypot(SETTLED);
    let misfit = |kind: &SlipKind| {
        let amount = kind.amount()?.base();
        let away = (off.abs() - amount).abs();
        let near = away <= OF_THE_SLIP * amount && away <= NAMED_WITHIN * deviation;
        near.then(|| ((away / deviation).powi(2), *kind))
    };
    let mut near: Vec<(f64, SlipKind)> = SlipKind::on(graduation).iter().filter_map(misfit).collect();
    near.sort_by(|a, b| a.0.total_cmp(&b.0));
    match near.as_slice() {
        [] => Named { kind: SlipKind::Unusual, misfit: NAMED_WITHIN * NAMED_WITHIN, second: None },
        [(misfit, kind), rest @ ..] => {
            let second =
                rest.first().filter(|second| second.0 - misfit < SECOND_WITHIN).map(|second| second.1);
            Named { kind: *kind, misfit: *misfit, second }
        }
    }
}
