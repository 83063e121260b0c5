//! Where water may leave: over edges, and by drains.

use super::DRAIN_NEAR;
use crate::choice;
use crate::failure::{Code, Failure, Result};
use crate::geometry::{Point, Region, RingId};
use crate::quantity::{Given, Length, Typed, feet_and_inches};
use crate::survey::input::CornerInput;
use crate::survey::outline::{Corner, Outline};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

choice! {
    /// What an edge does to water.
    pub enum EdgeState {
        /// Water runs off over it.
        Open = "open",
        /// A wall or curb holds it.
        Walled = "walled",
        /// A drain runs along it and takes it.
        Drained = "drained",
    }
}

/// What is stated of one edge.
#[derive(Clone, Debug, PartialEq)]
pub struct EdgeStated {
    /// Its name: a run of the outline, several runs under one name, or a hole.
    pub edge: String,
    /// What it does to water.
    pub state: EdgeState,
}

/// A drain: at one place, or along the line through several.
#[derive(Clone, Debug, PartialEq)]
pub struct Drain {
    /// Its name; `drain 1` and so on where it has none.
    pub name: Option<String>,
    /// Its place or places. It takes water at the height of the surface there.
    pub at: Vec<Corner>,
}

/// Where water may leave. Of what is not stated, outer edges are taken as open and holes as walled.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Edges {
    /// The edges stated.
    pub stated: Vec<EdgeStated>,
    /// The drains.
    pub drains: Vec<Drain>,
}

/// Every run with its name and what it does to water, and what was taken.
pub(crate) struct Resolved {
    /// In the order of the outline's runs.
    pub(crate) states: Vec<EdgeState>,
    /// The names of the edges taken as open and as walled.
    pub(crate) taken: Taken,
    /// The drains by name, every place within the region.
    pub(crate) drains: Vec<(String, Vec<Point>)>,
}

/// The edges that nothing was stated of.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Taken {
    /// Outer edges taken as open.
    pub open: Vec<String>,
    /// Holes taken as walled.
    pub walled: Vec<String>,
}

impl Edges {
    /// Looks up the names and the places.
    pub(crate) fn resolve(&self, outline: &Outline) -> Result<Resolved> {
        let runs = outline.runs();
        let mut states: Vec<Option<EdgeState>> = vec![None; runs.len()];
        for (index, stated) in self.stated.iter().enumerate() {
            let path = format!("edges[{index}].edge");
            for named in outline.edge(&stated.edge).map_err(|failure| failure.under(&path))? {
                let Some(run) = runs.iter().position(|run| run.id() == named.id()) else { continue };
                if states[run].is_some_and(|known| known != stated.state) {
                    return Err(Failure::new(Code::Contradiction, path)
                        .written(format!("\"{}\" as {}", named.name(), stated.state.word()))
                        .allowed("one state for each edge")
                        .remedy("state the edge once"));
                }
                states[run] = Some(stated.state);
            }
        }
        let taken = taken(outline, &states);
        let states =
            runs.iter().zip(states).map(|(run, state)| state.unwrap_or_else(|| untold(run.id().ring)));
        Ok(Resolved { states: states.collect(), taken, drains: self.drains(outline.region())? })
    }

    fn drains(&self, region: &Region) -> Result<Vec<(String, Vec<Point>)>> {
        let named = self.drains.iter().enumerate().map(|(index, drain)| {
            let name = drain.name.clone().unwrap_or_else(|| format!("drain {}", index + 1));
            if drain.at.is_empty() {
                return Err(Failure::new(Code::EmptyList, format!("drains[{index}].at"))
                    .written(format!("{name} without a place"))
                    .allowed("one place, or several for a line")
                    .remedy("say where the drain is"));
            }
            let places = drain.at.iter().enumerate().map(|(at, corner)| {
                within(region, corner.place()).ok_or_else(|| outside(&name, index, at, *corner, region))
            });
            Ok((name.clone(), places.collect::<Result<Vec<Point>>>()?))
        });
        named.collect()
    }
}

const fn untold(ring: RingId) -> EdgeState {
    match ring {
        RingId::Outer => EdgeState::Open,
        RingId::Hole(_) => EdgeState::Walled,
    }
}

fn taken(outline: &Outline, states: &[Option<EdgeState>]) -> Taken {
    let mut taken = Taken::default();
    for (run, _) in outline.runs().iter().zip(states).filter(|(_, state)| state.is_none()) {
        let (list, name) = match run.id().ring {
            RingId::Outer => (&mut taken.open, run.name()),
            RingId::Hole(hole) => {
                (&mut taken.walled, outline.holes().get(hole).map_or(run.name(), |hole| hole.name.trim()))
            }
        };
        if !list.iter().any(|known| known == name) {
            list.push(name.to_owned());
        }
    }
    taken
}

/// A place of a drain: itself within the region, the nearest place of the outline when it is hardly outside.
fn within(region: &Region, place: Point) -> Option<Point> {
    if region.contains(place) {
        return Some(place);
    }
    let nearest = region.nearest_run(place);
    (nearest.distance <= DRAIN_NEAR).then_some(nearest.at)
}

fn outside(name: &str, drain: usize, at: usize, corner: Corner, region: &Region) -> Box<Failure> {
    let by = feet_and_inches(Length::from_base(region.distance_outside(corner.place())), 8);
    let say = |length| feet_and_inches(length, 8);
    Failure::new(Code::DrainOutside, format!("drains[{drain}].at[{at}]"))
        .written(format!("{name} at {}, {}", say(corner.x), say(corner.y)))
        .allowed(format!("a place in the outline; this is {by} outside"))
        .remedy("check the place of the drain, or whether it lies in a hole")
}

/// Where water may leave, in a file.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EdgesInput {
    /// What is stated of edges.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub edges: Vec<EdgeStateInput>,
    /// The drains.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub drains: Vec<DrainInput>,
}

/// What is stated of one edge, in a file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EdgeStateInput {
    /// The name of the edge, or of a hole.
    pub edge: String,
    /// Open, walled or drained.
    pub state: EdgeState,
}

/// A drain in a file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct DrainInput {
    /// Its name.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// One place, or several for a drain along a line.
    pub at: Vec<CornerInput>,
}

impl From<&EdgesInput> for Edges {
    fn from(input: &EdgesInput) -> Self {
        let stated = |of: &EdgeStateInput| EdgeStated { edge: of.edge.clone(), state: of.state };
        let drain = |of: &DrainInput| Drain {
            name: of.name.clone(),
            at: of.at.iter().map(|corner| Corner::new(corner.x.value, corner.y.value)).collect(),
        };
        Self {
            stated: input.edges.iter().map(stated).collect(),
            drains: input.drains.iter().map(drain).collect(),
        }
    }
}

impl From<&Edges> for EdgesInput {
    fn from(edges: &Edges) -> Self {
        let stated = |of: &EdgeStated| EdgeStateInput { edge: of.edge.clone(), state: of.state };
        let corner = |of: &Corner| CornerInput { x: Given::computed(of.x), y: Given::computed(of.y) };
        let drain = |of: &Drain| DrainInput { name: of.name.clone(), at: of.at.iter().map(corner).collect() };
        Self {
            edges: edges.stated.iter().map(stated).collect(),
            drains: edges.drains.iter().map(drain).collect(),
        }
    }
}
