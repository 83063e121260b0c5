//! The section of a key square to its edge, under a thickness that is straight between its places.

use super::{Cut, HAIR};
use crate::quantity::{Area, Length, Typed};

/// The section of a key.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct KeySection {
    /// How deep it is at the edge.
    pub depth: Length,
    /// How deep it is where it is deepest.
    pub deepest: Length,
    /// How far back it goes.
    pub width: Length,
    /// How deep it still is at its back: nothing where the overlay reaches its least thickness.
    pub depth_at_back: Length,
    /// The area between the old slab and the bottom of the key.
    pub area: Area,
}

impl KeySection {
    /// The key under thicknesses at distances from the edge, in metres and in order: it goes back to where the least thickness is first reached.
    #[must_use]
    pub fn under(least: Length, profile: impl IntoIterator<Item = (f64, f64)>) -> Self {
        let mut lacks = profile.into_iter().map(|(at, thickness)| (at, least.base() - thickness));
        let Some((mut from, mut had)) = lacks.next().filter(|(_, lack)| *lack > HAIR) else {
            return Self::default();
        };
        let (depth, mut deepest, mut area) = (had, had, 0.0);
        for (at, lack) in lacks {
            if lack <= HAIR {
                // The straight line between the two places reaches the least thickness here.
                let out = from + (at - from) * had / (had - lack.min(0.0));
                area += 0.5 * had * (out - from);
                return Self::of(depth, deepest, out, 0.0, area);
            }
            area += 0.5 * (had + lack) * (at - from);
            deepest = deepest.max(lack);
            (from, had) = (at, lack);
        }
        Self::of(depth, deepest, from, had, area)
    }

    fn of(depth: f64, deepest: f64, width: f64, at_back: f64, area: f64) -> Self {
        Self {
            depth: Length::from_base(depth),
            deepest: Length::from_base(deepest),
            width: Length::from_base(width),
            depth_at_back: Length::from_base(at_back),
            area: Area::from_base(area),
        }
    }

    /// What is done there, by what is known of the old slab.
    #[must_use]
    pub fn cut(&self, old_slab: Option<Length>) -> Cut {
        super::cut(self.deepest, old_slab)
    }
}
