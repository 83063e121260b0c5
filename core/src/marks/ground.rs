//! Both surfaces at the places of marks.

use super::place_words;
use crate::failure::{Code, Failure, Result};
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::Survey;
use crate::survey::surface::{Ground, Locator, Spot, Stretch};

/// The new floor and the old slab under it.
pub(super) struct Floor<'a> {
    finish: &'a Finish,
    old: Locator<'a>,
}

impl<'a> Floor<'a> {
    pub(super) fn new(survey: &'a Survey, finish: &'a Finish) -> Self {
        Self { finish, old: Locator::new(survey.surface().whole()) }
    }

    /// The height of the new floor.
    pub(super) fn finish_at(&self, at: Point) -> Result<Elevation> {
        let height = self.finish.height_at(Length::from_base(at.x), Length::from_base(at.y));
        height.filter(|height| height.base().is_finite()).ok_or_else(|| {
            Failure::new(Code::FacetsLeaveHole, "finish")
                .written(format!("no facet at {}", place_words(at)))
                .allowed("facets that cover the work")
                .remedy("add a facet there, or let the neighbours use the same corners")
        })
    }

    /// The old slab at a place inside the work.
    pub(super) fn old_at(&self, at: Point) -> Result<Spot> {
        self.old.at(at).ok_or_else(|| off_work(at))
    }

    /// The old slab along a straight leg.
    pub(super) fn along(&self, from: Point, to: Point) -> Result<Profile> {
        let length = from.distance(to);
        let mut stretches = self.old.along(from, to);
        if stretches.is_empty() {
            // A leg shorter than the hairs that are left out.
            let spot = self.old_at(from)?;
            let (height, ground) = (spot.height, spot.ground);
            stretches.push(Stretch { from: 0.0, to: 1.0, height_from: height, height_to: height, ground });
        }
        Ok(Profile { length, stretches })
    }
}

fn off_work(at: Point) -> Box<Failure> {
    Failure::new(Code::LineOutside, "survey")
        .written(place_words(at))
        .allowed("a place of the work")
        .remedy("check the place")
}

/// The old slab along a leg, straight over each stretch.
pub(super) struct Profile {
    pub(super) length: f64,
    stretches: Vec<Stretch>,
}

impl Profile {
    /// Where stretches begin and end, as distances: `[from, to, height from, height to]`.
    pub(super) fn stretches(&self) -> impl Iterator<Item = [f64; 4]> + '_ {
        let length = self.length;
        self.stretches.iter().map(move |stretch| {
            [stretch.from * length, stretch.to * length, stretch.height_from, stretch.height_to]
        })
    }

    /// The old slab at a distance along: of two heights at a step the one ahead. Between stretches, across hairs, the nearest end.
    pub(super) fn at(&self, distance: f64) -> (f64, Ground) {
        let share = distance / self.length;
        let ahead = self.stretches.partition_point(|stretch| stretch.from <= share + 1e-12);
        let stretch = self.stretches.get(ahead.max(1) - 1).or_else(|| self.stretches.last());
        stretch.map_or((f64::NAN, Ground::Beyond), |stretch| {
            let within = ((share - stretch.from) / (stretch.to - stretch.from)).clamp(0.0, 1.0);
            (stretch.height_from + within * (stretch.height_to - stretch.height_from), stretch.ground)
        })
    }

    /// How much of the leg lies outside the work.
    pub(super) fn outside(&self) -> f64 {
        let covered: f64 = self.stretches.iter().map(|stretch| stretch.to - stretch.from).sum();
        (1.0 - covered).max(0.0) * self.length
    }
}
