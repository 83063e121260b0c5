//! What is asked of an approach.

use super::breaks::{ROOM, VEHICLE};
use super::refusal;
use crate::choice;
use crate::failure::{Result, check};
use crate::grade::fall::FALL;
use crate::quantity::{Elevation, Length, Range, Slope, Typed};

choice! {
    /// What goes over an approach.
    pub enum Traffic {
        /// Cars.
        Vehicle = "vehicle",
        /// Wheelchairs.
        Wheelchair = "wheelchair",
        /// People on foot.
        Foot = "foot",
    }
}

/// A distance from a door: none, or up to 1 km.
pub const DISTANCE: Range = Range::closed(0.0, 1000.0);
/// A stretch: more than none, up to 1 km.
pub const STRETCH: Range = Range::positive_to(1000.0);
/// A height of the ground.
pub const HEIGHT: Range = Range::closed(-1.0e4, 1.0e4);
/// How far the outside surface lies below the floor at the door, or how thick a slab is: none, or up to 1 m.
pub const DEPTH: Range = Range::closed(0.0, 1.0);

/// The fall wanted where nothing is said: 2 %.
pub const FALL_TAKEN: f64 = 0.02;
/// The stretch over which it is wanted where nothing is said: 10 ft.
pub const OVER_TAKEN: f64 = 3.048;

/// A measured place of the ground outside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProfilePoint {
    /// How far from the door.
    pub distance: Length,
    /// How high.
    pub elevation: Elevation,
}

/// Measures of a vehicle; what is not given is not judged.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Vehicle {
    /// From axle to axle.
    pub wheelbase: Option<Length>,
    /// Room under it between the axles.
    pub clearance: Option<Length>,
    /// From the front axle to the bumper.
    pub overhang: Option<Length>,
    /// Room under the bumper.
    pub bumper: Option<Length>,
}

/// What is asked of an approach.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// The floor at the door.
    pub floor: Elevation,
    /// How the floor falls towards the door.
    pub floor_fall: Slope,
    /// The ground outside, from the door outwards.
    pub profile: Vec<ProfilePoint>,
    /// What goes over it.
    pub traffic: Traffic,
    /// The fall away from the door that is wanted; none where the caller leaves it to the rule.
    pub fall: Option<Slope>,
    /// Over which distance from the door.
    pub over: Length,
    /// How far from the door a new approach meets the ground; none where the ground stays.
    pub tie_in: Option<Length>,
    /// How thick the new approach is.
    pub thickness: Option<Length>,
    /// How far the outside lies below the floor at the door.
    pub rebate: Option<Length>,
    /// The vehicle.
    pub vehicle: Vehicle,
}

impl Asked {
    /// The fall away from the door that is wanted.
    #[must_use]
    pub fn wanted(&self) -> Slope {
        self.fall.unwrap_or(Slope::from_base(FALL_TAKEN))
    }

    /// Refuses numbers out of range and profiles that do not run outwards from the door.
    pub(super) fn checked(&self) -> Result<()> {
        check("floor", self.floor, HEIGHT)?;
        check("floor_fall", self.floor_fall, FALL)?;
        if let Some(fall) = self.fall {
            check("fall", fall, FALL)?;
        }
        check("over", self.over, STRETCH)?;
        for (name, depth) in [("thickness", self.thickness), ("rebate", self.rebate)] {
            if let Some(depth) = depth {
                check(name, depth, DEPTH)?;
            }
        }
        self.vehicle.checked()?;
        self.check_profile()
    }

    fn check_profile(&self) -> Result<()> {
        for (index, point) in self.profile.iter().enumerate() {
            check(&format!("profile[{index}].distance"), point.distance, DISTANCE)?;
            check(&format!("profile[{index}].elevation"), point.elevation, HEIGHT)?;
        }
        let (Some(first), Some(last), true) =
            (self.profile.first(), self.profile.last(), self.profile.len() > 1)
        else {
            return Err(refusal::too_short(self.profile.len()));
        };
        if first.distance.base() > 0.0 {
            return Err(refusal::not_from_door(first.distance));
        }
        let falls_back =
            self.profile.windows(2).position(|pair| pair[1].distance.base() <= pair[0].distance.base());
        if let Some(index) = falls_back {
            return Err(refusal::unsorted(
                index + 1,
                self.profile[index].distance,
                self.profile[index + 1].distance,
            ));
        }
        match self.tie_in {
            Some(tie_in) if !(tie_in.base() > 0.0 && tie_in.base() <= last.distance.base()) => {
                Err(refusal::tie_in(tie_in, last.distance))
            }
            _ => Ok(()),
        }
    }
}

impl Vehicle {
    fn checked(&self) -> Result<()> {
        let measures = [
            ("wheelbase", self.wheelbase, VEHICLE),
            ("clearance", self.clearance, ROOM),
            ("overhang", self.overhang, VEHICLE),
            ("bumper", self.bumper, ROOM),
        ];
        for (name, measure, range) in measures {
            if let Some(measure) = measure {
                check(name, measure, range)?;
            }
        }
        Ok(())
    }
}
