//! The places of a survey whose heights can be judged by their neighbours.

use crate::geometry::Point;
use crate::quantity::Typed;
use crate::survey::Survey;
use crate::survey::old_slab::{Instrument, Shots, Texture};

/// The shots of the slab, one for each place.
pub(super) struct Floor {
    /// Where they are.
    pub(super) places: Vec<Point>,
    /// Their heights, in metres.
    pub(super) heights: Vec<f64>,
    /// Their numbers in the survey.
    pub(super) shots: Vec<usize>,
}

impl Floor {
    /// The shots of the slab. Those outside it, those that mark a step, and all but the first of several at one place are
    /// not judged: their heights are no part of one even floor.
    pub(super) fn of(survey: &Survey) -> Self {
        let count = survey.shots().each().map(|(shot, ..)| shot + 1).max().unwrap_or(0);
        let mut on_slab = vec![false; count];
        survey.surface().residuals().for_each(|(shot, _)| on_slab[shot] = true);
        let step = |shot: usize| match survey.shots() {
            Shots::Grid(grid) => grid.is_on_step(shot),
            Shots::Faces(_) => false,
            Shots::Scattered(marks) => {
                marks.shots.get(shot).is_some_and(|shot| shot.step || shot.outside_allowed)
            }
        };
        let mut floor = Self { places: Vec::new(), heights: Vec::new(), shots: Vec::new() };
        for (shot, [x, y], height) in survey.shots().each() {
            if on_slab[shot] && !step(shot) {
                floor.places.push(Point::new(x.base(), y.base()));
                floor.heights.push(height.base());
                floor.shots.push(shot);
            }
        }
        floor
    }
}

/// The standard deviation of a reading on the floor, as the words of the site stand for it; a laser on a broomed floor where
/// nothing is said.
pub(super) fn deviation_of_words(survey: &Survey) -> f64 {
    let settings = survey.settings();
    let reading = settings.instrument.unwrap_or(Instrument::Laser).reading_deviation().base();
    let texture = settings.texture.unwrap_or(Texture::Broomed).deviation().base();
    reading.hypot(texture)
}
