//! What the old slab is like: high and low points, the plane through it, how much of it was surveyed.

use super::Survey;
use crate::geometry::Point;
use crate::quantity::{Area, Elevation, Length, Ratio, Slope, Typed, Volume};
use crate::survey::surface::{self, Extreme, Ground};

/// A place on the slab with its height, and the shot it is at, if it is at one.
#[derive(Clone, Debug, PartialEq)]
pub struct SlabPlace {
    /// Distance from the left.
    pub x: Length,
    /// Distance from the front.
    pub y: Length,
    /// The height there.
    pub elevation: Elevation,
    /// The name of the shot.
    pub shot: Option<String>,
}

/// The old slab in numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct Facts {
    /// Area of the work.
    pub area: Area,
    /// How many places were shot.
    pub shots: usize,
    /// The highest point between the shots.
    pub highest: SlabPlace,
    /// The lowest point between the shots.
    pub lowest: SlabPlace,
    /// Highest less lowest.
    pub out_of_level: Length,
    /// Mean height over the area.
    pub mean: Elevation,
    /// Rise of the plane of least squares per run along x and along y.
    pub rise: [Slope; 2],
    /// Steepest rise of that plane.
    pub steepest: Slope,
    /// Root of the mean squared distance of the shots from it.
    pub unevenness: Length,
    /// Area beyond the shots.
    pub beyond: Area,
    /// Area in triangles that leave the outline: unsurveyed.
    pub unsurveyed: Area,
    /// How much less and how much more volume the other triangulations of the same shots put under the surface.
    pub ambiguity: [Volume; 2],
}

impl Facts {
    /// The share of the work beyond the shots.
    #[must_use]
    pub fn beyond_share(&self) -> Ratio {
        Ratio::from_base(self.beyond.base() / self.area.base())
    }
}

impl Survey {
    /// The old slab in numbers.
    #[must_use]
    pub fn facts(&self) -> Facts {
        let whole = self.surface().whole();
        let integrals = whole.integrals();
        let fit = self.surface().fit();
        let (highest, lowest) = match whole.relief() {
            Some(relief) => (relief.highest, relief.lowest),
            None => self.shot_extremes(),
        };
        let doubt = self.surface().ambiguity();
        Facts {
            area: Area::from_base(whole.area()),
            shots: self.shots().count(),
            highest: self.place(&highest),
            lowest: self.place(&lowest),
            out_of_level: Length::from_base(highest.value - lowest.value),
            mean: Elevation::from_base(integrals.height / integrals.area),
            rise: [Slope::from_base(fit.plane.b()), Slope::from_base(fit.plane.c())],
            steepest: Slope::from_base(fit.plane.steepest()),
            unevenness: Length::from_base(fit.rms),
            beyond: Area::from_base(whole.area_of(Ground::Beyond)),
            unsurveyed: Area::from_base(whole.area_of(Ground::Spanning)),
            ambiguity: [Volume::from_base(doubt.less), Volume::from_base(doubt.more)],
        }
    }

    /// A place of the surface with the name of its shot.
    #[must_use]
    pub fn place(&self, extreme: &Extreme) -> SlabPlace {
        SlabPlace {
            x: Length::from_base(extreme.at.x),
            y: Length::from_base(extreme.at.y),
            elevation: Elevation::from_base(extreme.value),
            shot: extreme.shot.map(|shot| self.shots().name(shot)),
        }
    }

    /// Every shot: its number, place and height after all changes.
    pub fn heights(&self) -> impl Iterator<Item = (usize, [Length; 2], Elevation)> + '_ {
        let mut changed = self.surface().changed_heights();
        for note in self.surface().notes() {
            // Of shots at one place the surface knows the first.
            if let surface::Note::Shared(shared) = note
                && let Some(height) = shared.shots.iter().find_map(|shot| changed.get(shot).copied())
            {
                changed.extend(shared.shots.iter().map(|&shot| (shot, height)));
            }
        }
        self.shots().each().map(move |(shot, place, elevation)| {
            (shot, place, changed.get(&shot).map_or(elevation, |&height| Elevation::from_base(height)))
        })
    }

    /// The highest and the lowest shot, for a work that lies wholly beyond them.
    fn shot_extremes(&self) -> (Extreme, Extreme) {
        let shots = self.heights().map(|(shot, [x, y], elevation)| Extreme {
            value: elevation.base(),
            at: Point::new(x.base(), y.base()),
            shot: Some(shot),
        });
        let none = Extreme { value: 0.0, at: Point::default(), shot: None };
        let mut shots = shots.peekable();
        let first = shots.peek().copied().unwrap_or(none);
        shots.fold((first, first), |(high, low), shot| {
            (
                if shot.value > high.value { shot } else { high },
                if shot.value < low.value { shot } else { low },
            )
        })
    }
}
