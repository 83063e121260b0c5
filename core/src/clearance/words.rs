//! Small lengths in the words of the site: eighths of an inch, rounded to the safe side.

use crate::quantity::{Elevation, Length, Typed, feet_and_inches, inches};

const EIGHTH: f64 = 0.0254 / 8.0;

/// Whole eighths below or above; a hair off one is that one.
fn eighths(length: Length, whole: fn(f64) -> f64) -> Length {
    let parts = length.base() / EIGHTH;
    let nearest = parts.round();
    Length::from_base(EIGHTH * if (parts - nearest).abs() < 1.0e-5 { nearest } else { whole(parts) })
}

/// What must be cut, raised or added: rounded up.
pub(super) fn up(length: Length) -> String {
    inches(eighths(length, f64::ceil), 8)
}

/// What is left: rounded down.
pub(super) fn down(length: Length) -> String {
    inches(eighths(length, f64::floor), 8)
}

/// A height that is left, in feet and inches: rounded down.
pub(super) fn tall(length: Length) -> String {
    feet_and_inches(eighths(length, f64::floor), 8)
}

/// A length as it stands, to the eighth.
pub(super) fn plain(length: Length) -> String {
    inches(length, 8)
}

/// The room below a level: `1/4 in below`, or what stands above it.
pub(super) fn beside(room: Length, level: &str) -> String {
    match room.base() {
        room if room.abs() <= super::verdict::HAIR => format!("flush with {level}"),
        below if below > 0.0 => format!("{} below {level}", down(room)),
        _ => format!("{} above {level}", up(-room)),
    }
}

/// The lower of two heights.
pub(super) fn lower(a: Elevation, b: Elevation) -> Elevation {
    if b.base() < a.base() { b } else { a }
}
