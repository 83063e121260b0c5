//! The ground from the door outwards: straight between measured places.

use super::asked::ProfilePoint;
use crate::quantity::Typed;

/// A place of a profile, in plain metres: how far out, how high.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Place {
    pub(super) out: f64,
    pub(super) z: f64,
}

/// A profile.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Profile(pub(super) Vec<Place>);

impl Profile {
    pub(super) fn of(points: &[ProfilePoint]) -> Self {
        Self(points.iter().map(|of| Place { out: of.distance.base(), z: of.elevation.base() }).collect())
    }

    /// The height so far out; beyond its ends that of the ends.
    pub(super) fn height(&self, out: f64) -> f64 {
        let places = &self.0;
        let after = places.partition_point(|place| place.out < out);
        match (after.checked_sub(1).and_then(|before| places.get(before)), places.get(after)) {
            (Some(a), Some(b)) => a.z + (out - a.out) / (b.out - a.out) * (b.z - a.z),
            (Some(end), None) | (None, Some(end)) => end.z,
            (None, None) => f64::NAN,
        }
    }

    pub(super) fn end(&self) -> f64 {
        self.0.last().map_or(0.0, |place| place.out)
    }

    /// With a new surface from a height at the door straight to where it ties in.
    pub(super) fn tied_in(&self, door: f64, tie_in: f64) -> Self {
        let mut places = vec![Place { out: 0.0, z: door }, Place { out: tie_in, z: self.height(tie_in) }];
        places.extend(self.0.iter().filter(|place| place.out > tie_in));
        Self(places)
    }

    /// Its places between two distances, with those at both.
    pub(super) fn between(&self, from: f64, to: f64) -> impl Iterator<Item = Place> + '_ {
        let at = |out: f64| Place { out, z: self.height(out) };
        let inside = self.0.iter().copied().filter(move |place| place.out > from && place.out < to);
        std::iter::once(at(from)).chain(inside).chain((to > from).then(|| at(to)))
    }

    /// How far water comes to the door from outside: out to where the ground no longer rises.
    pub(super) fn falls_to_door(&self) -> f64 {
        let rising = self.0.windows(2).take_while(|pair| pair[1].z > pair[0].z).last();
        rising.map_or(0.0, |pair| pair[1].out)
    }
}
