//! Low spots: where water stands on a surface, and how deep, once it has run off wherever it can.
//!
//! A hollow fills up to its spill point, the lowest place of its rim, over which the water leaves; hollows whose rim lies
//! under a common level are one pond. The surface is plane over every triangle, so levels, areas and volumes are exact.

mod edges;
mod flood;
mod outlets;
mod pond;
mod record;
#[cfg(test)]
mod tests;

pub use edges::{Drain, DrainInput, EdgeState, EdgeStateInput, EdgeStated, Edges, EdgesInput, Taken};

pub(crate) use edges::Resolved;
pub(crate) use outlets::drain as place_drain;
pub(crate) use pond::Water;
pub(crate) use record::{DRAINS, EDGES, GivenEdges, PONDS, pond_columns, ponds_table};

use crate::failure::{Code, Failure, Result, check};
use crate::geometry::network::Network;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Elevation, Length, Range, Typed, Volume, inches};
use crate::survey::Survey;
use crate::survey::outline::{Corner, Outline};
use crate::survey::surface::weld;
use flood::{Flood, Ways};
use outlets::Outlets;

/// A depth under which a pond is left out: up to 1 ft.
pub const SHALLOWEST: Range = Range::closed(0.0, 0.3048);

/// Shallower water than this is left out where nothing is said: 1/16 in, which a rod hardly tells.
pub const SHALLOWEST_TAKEN: f64 = 0.0254 / 16.0;

/// A drain so near outside the outline is on it: as for shots, 1/2 in.
const DRAIN_NEAR: f64 = 0.0127;

/// A pond.
#[derive(Clone, Debug, PartialEq)]
pub struct Pond {
    /// The level of the water.
    pub level: Elevation,
    /// The area under water.
    pub area: Area,
    /// The water in it.
    pub volume: Volume,
    /// The greatest depth.
    pub depth: Length,
    /// Where it is deepest.
    pub deepest: Corner,
    /// Where the water spills.
    pub spill: Corner,
    /// The edge or the drain that takes the water where it spills; none where it runs on over a saddle.
    pub outlet: Option<String>,
}

/// The ponds of a surface, the largest first.
#[derive(Clone, Debug)]
pub struct Ponds {
    /// The ponds at least as deep as asked for.
    pub list: Vec<Pond>,
    /// How many were shallower.
    pub left_out: usize,
    /// The water in those.
    pub left_out_volume: Volume,
    /// The depth under which they were left out.
    pub shallowest: Length,
    /// The edges that nothing was stated of.
    pub taken: Taken,
    /// The water of each pond of the list.
    pub(crate) waters: Vec<Water>,
}

impl Ponds {
    /// Where water stands on the old slab.
    ///
    /// # Errors
    /// - `EDGE_UNKNOWN`, `CONTRADICTION`: an edge that is not there, or stated twice differently.
    /// - `DRAIN_OUTSIDE`, `EMPTY_LIST`: a drain outside the outline, or without a place.
    /// - `NO_OUTLET`: every edge is walled and there is no drain.
    /// - `OUT_OF_RANGE`: a shallowest depth outside [`SHALLOWEST`].
    pub fn of_survey(survey: &Survey, edges: &Edges, shallowest: Length) -> Result<Self> {
        let network = weld([survey.surface().whole()]).network;
        Self::of_network(network, survey.outline(), edges, shallowest)
    }

    /// Where water stands on any surface over an outline.
    pub(crate) fn of_network(
        mut network: Network,
        outline: &Outline,
        edges: &Edges,
        shallowest: Length,
    ) -> Result<Self> {
        let shallowest = check("shallowest", shallowest, SHALLOWEST)?;
        let resolved = edges.resolve(outline)?;
        let outlets = Outlets::of(&mut network, outline, &resolved);
        let ways = Ways::of(&network);
        let flood = Flood::of(&network, &ways, &outlets.corners());
        let reached =
            |&[a, b, c]: &[u32; 3]| [a, b, c].iter().all(|&corner| flood.levels[corner as usize].is_finite());
        if !network.triangles().iter().all(reached) {
            return Err(no_outlet());
        }
        let mut waters = pond::ponds(&network, &ways, &flood, &outlets);
        let all = waters.len();
        let water = |waters: &[Water]| waters.iter().map(|water| water.volume).sum::<f64>();
        let before = water(&waters);
        waters.retain(|water| water.depth >= shallowest.base());
        waters.sort_by(|a, b| b.volume.total_cmp(&a.volume).then(a.deepest.x.total_cmp(&b.deepest.x)));
        Ok(Self {
            list: waters.iter().map(Pond::of).collect(),
            left_out: all - waters.len(),
            left_out_volume: Volume::from_base((before - water(&waters)).max(0.0)),
            shallowest,
            taken: resolved.taken,
            waters,
        })
    }

    /// The area of all ponds.
    #[must_use]
    pub fn area(&self) -> Area {
        Area::from_base(self.list.iter().map(|pond| pond.area.base()).sum())
    }

    /// The water in all ponds.
    #[must_use]
    pub fn volume(&self) -> Volume {
        Volume::from_base(self.list.iter().map(|pond| pond.volume.base()).sum())
    }

    /// The greatest depth of any pond; none where there is no pond.
    #[must_use]
    pub fn depth(&self) -> Option<Length> {
        self.list.iter().map(|pond| pond.depth.base()).reduce(f64::max).map(Length::from_base)
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        let said = [("open", &self.taken.open), ("walled", &self.taken.walled)];
        let said = said.into_iter().filter(|(_, names)| !names.is_empty());
        let said: Vec<String> = said.map(|(state, names)| format!("{state}: {}", names.join(", "))).collect();
        if !said.is_empty() {
            notes.push(Note::new(NoteCode::Assumed, format!("edges taken as {}", said.join("; "))));
        }
        if self.left_out > 0 {
            let text =
                format!("{} ponds shallower than {} left out", self.left_out, inches(self.shallowest, 64));
            notes.push(Note::new(NoteCode::PondsLeftOut, text));
        }
        notes
    }
}

impl Pond {
    fn of(water: &Water) -> Self {
        let corner =
            |at: crate::geometry::Point| Corner::new(Length::from_base(at.x), Length::from_base(at.y));
        Self {
            level: Elevation::from_base(water.level),
            area: Area::from_base(water.area),
            volume: Volume::from_base(water.volume),
            depth: Length::from_base(water.depth),
            deepest: corner(water.deepest),
            spill: corner(water.spill),
            outlet: water.outlet.clone(),
        }
    }
}

fn no_outlet() -> Box<Failure> {
    Failure::new(Code::NoOutlet, "edges")
        .written("no open edge and no drain")
        .allowed("at least one edge open or drained, or a drain")
        .remedy("say where water leaves: an edge, or the place of a drain")
}
