//! Changes of the old slab as a file says them.

use super::{Change, Done, Target};
use crate::choice;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Plane, Point};
use crate::quantity::{Elevation, Given, Length, Slope, Typed};
use crate::survey::input::OutlineInput;
use crate::survey::low_spots::{Edges, EdgesInput, SHALLOWEST_TAKEN};
use crate::survey::outline::Outline;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

choice! {
    /// What is done to the old slab.
    pub enum Work {
        /// What stands above is ground off.
        Grind = "grind",
        /// What lies below is filled.
        Fill = "fill",
        /// Ponds are filled to their spill levels.
        FillPonds = "fill ponds",
    }
}

/// One change of the old slab.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangeInput {
    /// What is done.
    pub work: Work,
    /// To which planes it is ground or filled.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub to: Vec<TargetInput>,
    /// Where water may leave, for ponds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub water: Option<EdgesInput>,
    /// Ponds shallower than this are left.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shallowest: Option<Given<Length>>,
    /// Only within this outline.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub zone: Option<OutlineInput>,
}

/// A plane: level at an elevation, or rising from a place.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct TargetInput {
    /// Its height, at the place named or at the origin of the axes.
    pub elevation: Given<Elevation>,
    /// Distance of the place from the left.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub x: Option<Given<Length>>,
    /// Its distance from the front.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub y: Option<Given<Length>>,
    /// Rise per run along x; level where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rise_x: Option<Given<Slope>>,
    /// Rise per run along y; level where it is not given.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rise_y: Option<Given<Slope>>,
    /// Only over this outline.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub region: Option<OutlineInput>,
}

impl ChangeInput {
    /// The change.
    ///
    /// # Errors
    /// An outline that is none; planes for ponds, or ponds' edges for planes.
    pub fn build(&self) -> Result<Change> {
        let zone = outline(self.zone.as_ref(), "zone")?;
        let done = match self.work {
            Work::FillPonds => {
                if !self.to.is_empty() {
                    return Err(out_of_place("to", "a plane", "a change that grinds or fills to a plane"));
                }
                let edges = self.water.as_ref().map(Edges::from).unwrap_or_default();
                let shallowest = self.shallowest.as_ref().map(|given| given.value);
                let shallowest = shallowest.unwrap_or(Length::from_base(SHALLOWEST_TAKEN));
                Done::FillPonds { edges, shallowest }
            }
            Work::Grind | Work::Fill => {
                if self.water.is_some() {
                    return Err(out_of_place("water", "edges of ponds", "a change that fills ponds"));
                }
                if self.shallowest.is_some() {
                    return Err(out_of_place("shallowest", "a depth of ponds", "a change that fills ponds"));
                }
                let targets = self.to.iter().enumerate().map(|(index, target)| target.build(index));
                let targets = targets.collect::<Result<Vec<Target>>>()?;
                if self.work == Work::Grind { Done::Grind(targets) } else { Done::Fill(targets) }
            }
        };
        Ok(Change { done, zone })
    }
}

impl TargetInput {
    fn build(&self, index: usize) -> Result<Target> {
        let length = |given: &Option<Given<Length>>| given.as_ref().map_or(0.0, |given| given.value.base());
        let rise = |given: &Option<Given<Slope>>| given.as_ref().map_or(0.0, |given| given.value.base());
        let at = Point::new(length(&self.x), length(&self.y));
        let plane = Plane::about(at, self.elevation.value.base(), rise(&self.rise_x), rise(&self.rise_y));
        Ok(Target { plane, region: outline(self.region.as_ref(), &format!("to[{index}].region"))? })
    }
}

fn outline(input: Option<&OutlineInput>, path: &str) -> Result<Option<Outline>> {
    let built = input.map(|input| input.build().map_err(|failure| failure.under(path)));
    Ok(built.transpose()?.map(|built| built.outline))
}

fn out_of_place(path: &str, what: &str, only: &str) -> Box<Failure> {
    Failure::new(Code::Contradiction, path)
        .written(what)
        .allowed(format!("only in {only}"))
        .remedy("leave it out, or say the other work")
}

impl From<&Change> for ChangeInput {
    fn from(change: &Change) -> Self {
        let empty = Self { work: Work::Grind, to: Vec::new(), water: None, shallowest: None, zone: None };
        let zone = change.zone.as_ref().map(OutlineInput::from);
        match &change.done {
            Done::Grind(targets) => {
                Self { to: targets.iter().map(TargetInput::from).collect(), zone, ..empty }
            }
            Done::Fill(targets) => {
                Self { work: Work::Fill, to: targets.iter().map(TargetInput::from).collect(), zone, ..empty }
            }
            Done::FillPonds { edges, shallowest } => Self {
                work: Work::FillPonds,
                water: Some(edges.into()),
                shallowest: Some(Given::computed(*shallowest)),
                zone,
                ..empty
            },
        }
    }
}

impl From<&Target> for TargetInput {
    fn from(target: &Target) -> Self {
        let (plane, at) = (&target.plane, target.plane.origin());
        let length = |metres: f64| Some(Given::computed(Length::from_base(metres)));
        let rise = |rise: f64| Some(Given::computed(Slope::from_base(rise)));
        Self {
            elevation: Given::computed(Elevation::from_base(plane.height_at(at))),
            x: length(at.x),
            y: length(at.y),
            rise_x: rise(plane.b()),
            rise_y: rise(plane.c()),
            region: target.region.as_ref().map(OutlineInput::from),
        }
    }
}
