//! Where a shot stands with regard to the region.

use super::frame::Frame;
use super::note::Note;
use super::rules::within;
use super::runs::Runs;
use super::tiling::{INSIDE, ON_RUN, SLAB};
use super::{Rules, Shot, SurfaceError};
use crate::geometry::{Point, Region};

/// Tells for each shot whether it is inside, on a run, or outside and by how far.
pub(super) struct Standing<'a> {
    frame: &'a Frame,
    region: &'a Region,
    rules: &'a Rules,
    notes: Vec<Note>,
    /// The runs of a region of several parts, once one was asked for.
    runs: Option<Runs>,
}

impl<'a> Standing<'a> {
    pub(super) fn new(frame: &'a Frame, region: &'a Region, rules: &'a Rules) -> Self {
        Self { frame, region, rules, notes: Vec::new(), runs: None }
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
        if clearance >= -self.frame.hair {
            let on_run = if self.is_on_run(place, clearance) { ON_RUN } else { 0 };
            return Ok(INSIDE | SLAB | on_run);
        }
        let nearest = self.region.nearest_run(self.frame.given(place));
        let distance = nearest.distance;
        if within(distance, self.rules.on_run) {
            return Ok(SLAB | ON_RUN);
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

    /// Whether a place inside is near enough to a run.
    fn is_on_run(&mut self, place: Point, clearance: f64) -> bool {
        if self.frame.only().is_some() {
            // The nearest side of the only part is the nearest run.
            return within(clearance, self.rules.on_run);
        }
        let (region, frame) = (self.region, self.frame);
        let mut found = false;
        let runs = self.runs.get_or_insert_with(|| Runs::of(region, frame));
        runs.within(place, self.rules.on_run, |_, _| found = true);
        found
    }

    /// The notes made.
    pub(super) fn into_notes(self) -> Vec<Note> {
        self.notes
    }
}
