//! What a change of grade takes of the room under a vehicle.

use crate::failure::{Result, check};
use crate::quantity::{Length, Range, Slope, Typed};

/// From axle to axle, or from the front axle to the bumper: more than none, up to 15 m.
pub const VEHICLE: Range = Range::positive_to(15.0);
/// Room under a vehicle or a bumper: none, or up to 1 m.
pub const ROOM: Range = Range::closed(0.0, 1.0);
/// A change of grade: none, or up to 1:1.
pub const CHANGE: Range = Range::closed(0.0, 1.0);

/// What a crest takes of the room between the axles.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Crest {
    /// W A / 4, as it is usually worked out.
    pub taken: Length,
    /// The same without taking angles for slopes: (W / 2) tan(atan(A) / 2).
    pub exact: Length,
}

/// What a crest takes of the ground clearance midway between the axles: W A / 4; exactly (W / 2) tan(atan(A) / 2), where one side
/// of the crest is level and the wheels stand a wheelbase apart.
///
/// # Errors
/// A wheelbase or a change of grade outside its range.
pub fn crest(wheelbase: Length, change: Slope) -> Result<Crest> {
    let wheelbase = check("wheelbase", wheelbase, VEHICLE)?.base();
    let change = check("change", change, CHANGE)?.base();
    let exact = 0.5 * wheelbase * (0.5 * change.atan()).tan();
    Ok(Crest { taken: Length::from_base(0.25 * wheelbase * change), exact: Length::from_base(exact) })
}

/// The greatest change of grade of a sag that a bumper clears: room under the bumper over its overhang.
///
/// # Errors
/// An overhang or a room outside its range.
pub fn sag(overhang: Length, bumper: Length) -> Result<Slope> {
    let overhang = check("overhang", overhang, VEHICLE)?.base();
    let bumper = check("bumper", bumper, ROOM)?.base();
    Ok(Slope::from_base(bumper / overhang))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{length::inch, read};

    #[test]
    fn a_crest_of_ten_percent_takes_two_and_three_quarters() {
        let found = crest(read("110 in").unwrap(), read("10 %").unwrap()).unwrap();
        assert!((found.taken.get::<inch>() - 2.75).abs() < 1e-12);
        assert!((found.exact.get::<inch>() - 55.0 * (0.5 * 0.1_f64.atan()).tan()).abs() < 1e-12);
        assert!(found.exact.get::<inch>() < 2.75 && found.exact.get::<inch>() > 2.74);
    }

    /// The exact form against a vehicle set on the crest: front wheel on the falling side, rear wheel on the level, a wheelbase
    /// apart, over every place where it may stand.
    #[test]
    fn the_exact_form_is_the_most_that_any_stand_takes() {
        let (wheelbase, change) = (2.8_f64, 0.12_f64);
        let found = crest(Length::from_base(wheelbase), Slope::from_base(change)).unwrap().exact.base();
        let angle = change.atan();
        let mut most = 0.0_f64;
        for step in 1..1000 {
            // The rear wheel `behind` the crest; the front wheel so far down the other side that both are a wheelbase apart.
            let behind = wheelbase * f64::from(step) / 1000.0;
            let ahead =
                (wheelbase * wheelbase - (behind * angle.sin()).powi(2)).sqrt() - behind * angle.cos();
            let (x, z) = (ahead * angle.cos(), -ahead * angle.sin());
            most = most.max((-z * behind) / ((x + behind).powi(2) + z * z).sqrt());
        }
        assert!((most - found).abs() < 1e-5, "{most} {found}");
    }

    #[test]
    fn a_bumper_clears_a_sag_of_its_room_over_its_overhang() {
        let found = sag(read("36 in").unwrap(), read("9 in").unwrap()).unwrap();
        assert!((found.base() - 0.25).abs() < 1e-15);
    }
}
