//! What a suspect is, in a sentence for the crew.

use super::graduation::Graduation;
use super::slips::SlipKind;
use super::suspects::{Suspect, Verdict};
use crate::quantity::{Length, Typed, feet_and_inches, inches, length, number_in};

/// The sentence: `C4 stands 6 in high against its neighbours, like a slip of half a foot: rod 4' 5 3/8" or 4' 11 3/8"?`
pub(super) fn sentence(suspect: &Suspect, graduation: Graduation) -> String {
    let name = &suspect.name;
    let stands = format!("{name} stands {} against its neighbours", high_or_low(suspect.off, graduation));
    let question = question(suspect, graduation);
    match (suspect.kind, &suspect.with) {
        (SlipKind::Swapped, Some(with)) => format!("{name} and {with} may be swapped: {name} {question}"),
        (SlipKind::RowReversed, Some(row)) => {
            format!("row {row} looks booked from the wrong end: {name} {question}")
        }
        (SlipKind::RowsSwapped, Some(rows)) => format!("rows {rows} look swapped: {name} {question}"),
        (SlipKind::RowOff, Some(row)) => {
            let amount = suspect.second.map_or("one amount", SlipKind::words);
            format!("row {row} stands {amount} off the rows beside it: {name} {question}")
        }
        (SlipKind::Unusual, _) => match suspect.verdict {
            Verdict::LookAgain => format!("{stands}: look again, the slab may really lie so"),
            _ => format!("{stands}, no usual slip: shoot it again"),
        },
        (SlipKind::Sign, _) => format!("{stands}: its sign looks wrong: {question}"),
        (kind, _) => {
            let second = suspect.second.map(|second| format!(" or {}", second.words())).unwrap_or_default();
            let words = kind.words();
            match suspect.verdict {
                Verdict::LookAgain => {
                    let lie = if suspect.off.base() < 0.0 { "a real hollow" } else { "a real hump" };
                    format!("{stands}, like a slip of {words}{second}, or {lie}: look again, {question}")
                }
                _ => format!("{stands}, like a slip of {words}{second}: {question}"),
            }
        }
    }
}

fn high_or_low(off: Length, graduation: Graduation) -> String {
    let size = Length::from_base(off.base().abs());
    let size = match graduation {
        Graduation::Metric => number_in(size, &length::unit::millimeter, 0),
        _ => inches(size, 8),
    };
    format!("{size} {}", if off.base() < 0.0 { "low" } else { "high" })
}

fn question(suspect: &Suspect, graduation: Graduation) -> String {
    let height = |elevation: crate::quantity::Elevation| Length::from_base(elevation.base());
    let (booked, proposed, what) = match (suspect.rod, suspect.proposed_rod) {
        (Some(rod), Some(proposed)) => (rod, proposed, "rod"),
        _ => match suspect.proposed {
            Some(proposed) => (height(suspect.elevation), height(proposed), "elevation"),
            None => return "shoot it again".to_owned(),
        },
    };
    format!("{what} {} or {}?", written(booked, graduation, what), written(proposed, graduation, what))
}

/// As the crew reads it off the rod. Elevations on a rod in inches are in feet and hundredths, as books have them.
fn written(length: Length, graduation: Graduation, what: &str) -> String {
    match (graduation, what) {
        (Graduation::Metric, _) => number_in(length, &length::unit::meter, 3),
        (Graduation::Tenths, _) | (_, "elevation") => number_in(length, &length::unit::foot, 2),
        _ => feet_and_inches(length, 16),
    }
}
