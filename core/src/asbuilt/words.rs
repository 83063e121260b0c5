//! Small lengths and falls as they are said on site: no less than there is, no more than is promised.

use crate::quantity::{Length, Slope, Typed, inches};

/// A hair off a whole eighth is that eighth.
const HAIR: f64 = 1e-6;

const EIGHTH: f64 = 0.0254 / 8.0;

/// Up to the next eighth.
pub(super) fn at_most(length: Length) -> String {
    eighths((length.base() / EIGHTH - HAIR).ceil())
}

/// Down to the eighth.
pub(super) fn at_least(length: Length) -> String {
    eighths((length.base() / EIGHTH + HAIR).floor())
}

fn eighths(eighths: f64) -> String {
    inches(Length::from_base(eighths * EIGHTH), 8)
}

/// A fall as the drop in 10 ft, to the eighth.
pub(super) fn in_ten_feet(fall: Slope) -> String {
    format!("{} over 10 ft", inches(Length::from_base(fall.base() * 3.048), 8))
}
