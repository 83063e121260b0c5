//! From the California bearing ratio.

use super::super::PCI;
use crate::failure::{Result, check};
use crate::operation::scalar::Word;
use crate::quantity::{Range, Share, SubgradeReaction, Typed};

/// A bearing ratio: 2 to 100 %, the span of the table.
pub const BEARING_RATIO: Range = Range::closed(0.02, 1.0);

crate::choice! {
    /// Correlations of subgrade reaction with bearing ratio.
    pub enum Correlation {
        /// k = (1500 CBR / 26)^0.7788 pci.
        Faa = "FAA",
        /// k = 53.438 CBR^0.5719 pci.
        Packard = "Packard",
        /// The table of IRC:58, straight between its rows.
        Irc = "IRC:58",
        /// The lowest of the three.
        Lowest = "lowest",
    }
}

/// Bearing ratio in percent, subgrade reaction in MPa/m.
const IRC_58: [(f64, f64); 10] = [
    (2.0, 21.0),
    (3.0, 28.0),
    (4.0, 35.0),
    (5.0, 42.0),
    (7.0, 48.0),
    (10.0, 55.0),
    (15.0, 62.0),
    (20.0, 69.0),
    (50.0, 140.0),
    (100.0, 220.0),
];

/// The subgrade reaction for a bearing ratio.
///
/// # Errors
/// A bearing ratio outside its range.
pub fn from_bearing_ratio(bearing_ratio: Share, source: Word<Correlation>) -> Result<SubgradeReaction> {
    let percent = check("bearing_ratio", bearing_ratio, BEARING_RATIO)?.base() * 100.0;
    let faa = || (1500.0 * percent / 26.0).powf(0.7788) * PCI;
    let packard = || 53.438 * percent.powf(0.5719) * PCI;
    let k = match source.0 {
        Correlation::Faa => faa(),
        Correlation::Packard => packard(),
        Correlation::Irc => irc(percent),
        Correlation::Lowest => faa().min(packard()).min(irc(percent)),
    };
    Ok(SubgradeReaction::from_base(k))
}

fn irc(percent: f64) -> f64 {
    let mut last = IRC_58[0];
    for row in IRC_58 {
        if percent <= row.0 {
            let part = if row.0 > last.0 { (percent - last.0) / (row.0 - last.0) } else { 0.0 };
            return (last.1 + part.max(0.0) * (row.1 - last.1)) * 1.0e6;
        }
        last = row;
    }
    // A hundredth of a percent of rounding above the last row.
    last.1 * 1.0e6
}
