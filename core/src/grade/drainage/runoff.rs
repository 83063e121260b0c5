//! Rain that runs off an area: the rational method.

use crate::failure::{Result, check};
use crate::quantity::{Area, Flow, RainIntensity, Range, Ratio, Typed};

/// An area that rain falls on: up to 100 km2.
pub const AREA: Range = Range::closed(0.0, 1.0e8);
/// How fast rain comes down: none, or up to 1 m an hour.
pub const RAIN: Range = Range::closed(0.0, 1.0 / 3600.0);
/// The share of the rain that runs off.
pub const COEFFICIENT: Range = Range::closed(0.0, 1.0);

/// The water that runs off an area: Q = C i A.
///
/// # Errors
/// An area, an intensity or a coefficient outside its range.
pub fn runoff(area: Area, rain: RainIntensity, coefficient: Ratio) -> Result<Flow> {
    let area = check("area", area, AREA)?.base();
    let rain = check("rain", rain, RAIN)?.base();
    let coefficient = check("coefficient", coefficient, COEFFICIENT)?.base();
    Ok(Flow::from_base(coefficient * rain * area))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{flow, read};

    /// One inch an hour on one acre is 1.008 cubic feet a second (unit definitions): the reason why C i A is used with in/h and acres.
    #[test]
    fn an_inch_an_hour_on_an_acre_is_about_a_cubic_foot_a_second() {
        let acre = Area::from_base(4_046.856_422_4);
        let flow = runoff(acre, read("1 in/h").expect("rain"), Ratio::from_base(1.0)).expect("a flow");
        assert!((flow.base() / 0.028_316_846_592 - 43_560.0 / 12.0 / 3_600.0).abs() < 1e-12);
    }

    #[test]
    fn four_inches_an_hour_on_five_hundred_square_feet() {
        let area = read("500 ft2").expect("an area");
        let found = runoff(area, read("4 in/h").expect("rain"), Ratio::from_base(0.9)).expect("a flow");
        // 500 x 4/12 = 166.67 cubic feet an hour, of which 150 run off: 150 x 1728 / 231 / 60 gallons a minute.
        assert!((found.get::<flow::gallon_per_minute>() - 150.0 * 1728.0 / 231.0 / 60.0).abs() < 1e-9);
    }
}
