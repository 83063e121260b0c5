//! How often a stress may come (the relation of the Portland Cement Association as IRC:58 writes it).

use crate::failure::{Result, check};
use crate::quantity::{Range, Ratio, Typed};

/// A stress ratio: more than none, up to 1.
pub const STRESS_RATIO: Range = Range::positive_to(1.0);
/// Below this ratio a stress may come without limit.
const UNLIMITED: f64 = 0.45;

/// The repetitions allowed at a stress ratio; `None` where they have no limit. `N = (4.2577 / (SR - 0.4325))^3.268` from 0.45 to 0.55,
/// `log10 N = (0.9718 - SR) / 0.0828` above; the two differ by 0.2 % at 0.55.
///
/// # Errors
/// A ratio outside its range.
pub fn repetitions(ratio: Ratio) -> Result<Option<Ratio>> {
    let ratio = check("stress_ratio", ratio, STRESS_RATIO)?.base();
    let number = if ratio < UNLIMITED {
        return Ok(None);
    } else if ratio <= 0.55 {
        (4.2577 / (ratio - 0.4325)).powf(3.268)
    } else {
        10.0_f64.powf((0.9718 - ratio) / 0.0828)
    };
    Ok(Some(Ratio::from_base(number)))
}
