//! Places on a scale against the differences between them: elevations and temperatures.

use super::{Elevation, Length, Temperature, TemperatureDifference, Typed};
use std::ops::{Add, Sub};

/// `place - place = difference`, `place + difference = place`, `place - difference = place`.
macro_rules! level {
    ($place:ty, $difference:ty) => {
        impl Sub for $place {
            type Output = $difference;
            fn sub(self, other: Self) -> $difference {
                <$difference>::from_base(self.base() - other.base())
            }
        }
        impl Add<$difference> for $place {
            type Output = $place;
            fn add(self, difference: $difference) -> $place {
                <$place>::from_base(self.base() + difference.base())
            }
        }
        impl Sub<$difference> for $place {
            type Output = $place;
            fn sub(self, difference: $difference) -> $place {
                <$place>::from_base(self.base() - difference.base())
            }
        }
    };
}

level!(Elevation, Length);
level!(Temperature, TemperatureDifference);
