//! Clean-up of the old slab before the pour: high spots ground off, low spots filled.
//!
//! A change is said by what it is done to (planes, or the spill levels of ponds), not by its result: a survey holds its shots as
//! they were read and its changes in order, and its surface is the one after them.

mod input;
mod record;
#[cfg(test)]
mod tests;

pub use input::{ChangeInput, TargetInput, Work};

pub(crate) use record::{CHANGES, changes_table};

use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, Point, Region};
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Elevation, Length, Range, Typed, Volume};
use crate::survey::Survey;
use crate::survey::low_spots::{Edges, Ponds};
use crate::survey::outline::{Corner, Outline};
use crate::survey::surface::{Toward, Way};

/// A height that a slab is changed to: within 10 km of the datum.
const HEIGHT: Range = Range::closed(-1.0e4, 1.0e4);

/// A plane that the old slab is changed to, over a region or everywhere.
#[derive(Clone, Debug, PartialEq)]
pub struct Target {
    /// The plane.
    pub plane: Plane,
    /// Where it holds; nothing means everywhere.
    pub region: Option<Outline>,
}

/// What is done to the old slab.
#[derive(Clone, Debug, PartialEq)]
pub enum Done {
    /// What stands above planes is ground off.
    Grind(Vec<Target>),
    /// What lies below planes is filled.
    Fill(Vec<Target>),
    /// Ponds are filled to their spill levels.
    FillPonds {
        /// Where water may leave.
        edges: Edges,
        /// Ponds shallower than this are left.
        shallowest: Length,
    },
}

/// One change of the old slab.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// What is done.
    pub done: Done,
    /// Only within this outline; nothing means everywhere.
    pub zone: Option<Outline>,
}

/// A change with its quantities.
#[derive(Clone, Debug, PartialEq)]
pub struct Changed {
    /// The change.
    pub change: Change,
    /// The area ground or filled.
    pub area: Area,
    /// The volume taken off or filled.
    pub volume: Volume,
    /// The deepest cut, or the greatest depth of fill; none where nothing is changed.
    pub deepest: Option<(Length, Corner)>,
}

impl Survey {
    /// The survey after a change of the old slab: everything that is asked of it is then answered for the changed slab.
    ///
    /// Where a change reaches nothing the survey is the same, and the quantities say so.
    ///
    /// # Errors
    /// - `EMPTY_LIST`, `NOT_FINITE`, `OUT_OF_RANGE`: no plane, or one out of reach.
    /// - `REGION_OUTSIDE`: a zone that shares no area with the outline. Path: `zone`.
    /// - As for [`Ponds::of_survey`] where ponds are filled.
    pub fn after(&self, change: Change) -> Result<Self> {
        let zone = change.zone.as_ref().map(Outline::region);
        if zone.is_some_and(|zone| self.surface().within(zone).is_err()) {
            return Err(zone_outside());
        }
        let (way, (surface, moved)) = match &change.done {
            Done::Grind(targets) => {
                (Way::Down, self.surface().changed(Way::Down, Toward::Planes(&planes(targets, self)?), zone))
            }
            Done::Fill(targets) => {
                (Way::Up, self.surface().changed(Way::Up, Toward::Planes(&planes(targets, self)?), zone))
            }
            Done::FillPonds { edges, shallowest } => {
                let levels = levels(self, edges, *shallowest)?;
                (Way::Up, self.surface().changed(Way::Up, Toward::Levels(&levels), zone))
            }
        };
        let corner = |at: Point| Corner::new(Length::from_base(at.x), Length::from_base(at.y));
        let changed = Changed {
            change,
            area: Area::from_base(moved.area),
            volume: Volume::from_base(moved.volume),
            deepest: moved.deepest.map(|(depth, at)| (Length::from_base(depth), corner(at))),
        };
        let notes = changed.notes(way);
        Ok(self.with_change(surface, changed, notes))
    }
}

impl Changed {
    /// What the reader must know.
    fn notes(&self, way: Way) -> Vec<Note> {
        let done = if way == Way::Down { "ground" } else { "filled" };
        if self.deepest.is_none() {
            let text = format!("nothing is {done}: the old slab nowhere reaches it");
            return vec![Note::new(NoteCode::NothingChanged, text)];
        }
        let silica = crate::caution::Caution::Silica.text();
        (way == Way::Down).then(|| Note::new(NoteCode::Silica, silica)).into_iter().collect()
    }
}

/// Planes with their regions, checked over the work.
fn planes(targets: &[Target], survey: &Survey) -> Result<Vec<(Option<Region>, Plane)>> {
    if targets.is_empty() {
        return Err(Failure::new(Code::EmptyList, "to")
            .written("no plane")
            .allowed("at least one plane")
            .remedy("say what the slab is to be brought to"));
    }
    let (low, high) = survey.outline().region().bounds();
    let checked = targets.iter().enumerate().map(|(index, target)| {
        let path = format!("to[{index}].elevation");
        for at in [low, high, Point::new(low.x, high.y), Point::new(high.x, low.y)] {
            check(&path, Elevation::from_base(target.plane.height_at(at)), HEIGHT)?;
        }
        Ok((target.region.as_ref().map(|outline| outline.region().clone()), target.plane))
    });
    checked.collect()
}

/// The spill level for every triangle that has water.
fn levels(survey: &Survey, edges: &Edges, shallowest: Length) -> Result<Vec<Option<f64>>> {
    let ponds = Ponds::of_survey(survey, edges, shallowest)?;
    let mut levels = vec![None; survey.surface().whole().len()];
    for water in &ponds.waters {
        for &triangle in &water.triangles {
            if let Some(level) = levels.get_mut(triangle as usize) {
                *level = Some(water.level);
            }
        }
    }
    Ok(levels)
}

fn zone_outside() -> Box<Failure> {
    Failure::new(Code::RegionOutside, "zone")
        .written("no area in common")
        .allowed("a zone that shares area with the outline")
        .remedy("check the zone's corners")
}
