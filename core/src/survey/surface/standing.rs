//! Where a shot stands with regard to the region.

use super::frame::Frame;
use super::note::Note;
use super::rules::within;
use super::tiling::{INSIDE, ON_RUN, SLAB};
use super::{Rules, Shot, SurfaceError};
use crate::geometry::{Point, Region};

/// Tells for each shot whether it is inside, on a run, or outside and by how far.
pub(super) struct Standing<'a> {
    frame: &'a Frame,
    region: &'a Region,
    rules: &'a Rules,
    notes: Vec<Note>,
}

impl<'a> Standing<'a> {
    pub(super) fn new(frame: &'a Frame, region: &'a Region, rules: &'a Rules) -> Self {
        Self { frame, region, rules, notes: Vec::new() }
    }

    /// The flags of a shot at a local place; a note, or an error, when it is outside unmarked.
    #[inline]
    pub(super) fn of(&mut self, index: usize, shot: &Shot, place: Point) -> Result<u32, SurfaceError> {
        let clearance = self.frame.clearance(place);
        if clearance > self.rules.on_run {
            return Ok(INSIDE | SLAB);
        }
        self.near_the_edge(index, shot, place, clearance)
    }

    fn near_the_edge(
        &mut self,
        index: usize,
        shot: &Shot,
        place: Point,
        clearance: f64,
    ) -> Result<u32, SurfaceError> {
        let nearest = self.region.nearest_run(self.frame.given(place));
        let distance = nearest.distance;
        let on_run = if within(distance, self.rules.on_run) { ON_RUN } else { 0 };
        if clearance >= -self.frame.hair {
            return Ok(INSIDE | SLAB | on_run);
        }
        if on_run != 0 {
            return Ok(SLAB | on_run);
        }
        if shot.outside_allowed {
            return Ok(0);
        }
        if !within(distance, self.rules.outside_noted) {
            let allowed = self.rules.outside_noted;
            return Err(SurfaceError::Outside { shot: index, distance, run: nearest.run, allowed });
        }
        self.notes.push(Note::OutsideUsed { shot: index, distance, run: nearest.run });
        Ok(SLAB)
    }

    /// The notes made.
    pub(super) fn into_notes(self) -> Vec<Note> {
        self.notes
    }
}
