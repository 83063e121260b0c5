//! Heights rounded to what can be set out.

use crate::quantity::{Elevation, Length, Typed};

/// The next height at or above `elevation` that is a whole number of steps from `datum`: rods on a benchmark are read in such
/// steps, so marks come out in them too. Up, because down would take from the least thickness.
#[must_use]
pub fn round_up_to(elevation: Elevation, datum: Elevation, step: Length) -> Elevation {
    let step = step.base();
    if step <= 0.0 {
        return elevation;
    }
    let steps = (elevation.base() - datum.base()) / step;
    // A hair above a whole step is rounding, not another step.
    let whole = (steps - 1.0e-7).ceil();
    datum + Length::from_base(whole * step)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::read;

    #[test]
    fn rounds_up_and_leaves_whole_steps() {
        let datum: Elevation = read("100 ft").unwrap();
        let eighth: Length = read("1/8 in").unwrap();
        let up = |text: &str| (round_up_to(read(text).unwrap(), datum, eighth) - datum).base() / 0.0254;
        assert!((up("1200 1/8 in") - 0.125).abs() < 1e-9);
        assert!((up("1200 1/16 in") - 0.125).abs() < 1e-9);
        assert!((up("1199 15/16 in") - 0.0).abs() < 1e-9);
    }
}
