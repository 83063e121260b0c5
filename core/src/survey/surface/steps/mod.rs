//! Steps of the old slab: lines along which it has two heights.
//!
//! Shots marked as a step stand in pairs, one on each side, at one place (within half an inch). The places are stations;
//! stations are joined to lines, and every line is an edge of the triangles. Then the triangles on its one side take the
//! one height of each station and those on the other side the other: both sides meet at the line, and nothing lies
//! between them. A line ends at the outline, at the hull of the shots, or where the step fades out: at a place with one
//! height.
//!
//! Which side is the higher one is told by the places of the pair where they differ (the higher shot lies on the higher
//! side), by the order of rows and columns in a table, else by the neighbouring shots: the higher shot belongs to the side
//! whose neighbours come nearer to it, and a doubtful answer is refused.

mod apart;
mod chain;
mod neighbours;
mod sectors;
mod senses;
mod station;

pub(super) use chain::Path;
pub(super) use station::Station;

use super::frame::Frame;
use super::hull::Hull;
use super::lines::{Drawing, Line};
use super::note::Note;
use super::runs::{Runs, from_segment};
use super::tiling::Node;
use super::tiling::{ON_HULL, ON_RUN};
use super::{Built, Rules, SurfaceError};
use crate::geometry::predicates::by_place;
use crate::geometry::triangulation::Triangulation;
use neighbours::Neighbours;
use sectors::Sectors;

/// What is wrong with a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StepFlaw {
    /// More than two heights at one place.
    ThreeHeights,
    /// A marked shot has no partner on the other side of the step.
    Unpaired,
    /// A pair of shots that no other pair joins to a line.
    Alone,
    /// The line ends inside the slab with two heights.
    EndsInside,
    /// The line passes through another shot.
    ThroughShot,
    /// The line crosses another line.
    Crossed,
    /// The neighbouring shots do not tell which side is higher.
    Undecided,
    /// One part of the line is higher on one side, another on the other.
    Contradictory,
    /// More places than are looked through for lines.
    TooMany,
}

/// The step lines of a drawing, as they are cut into the mesh.
pub(super) struct Steps {
    stations: Vec<Station>,
    paths: Vec<Path>,
    /// The node of each station and the node of its other height; the same where the step fades out.
    nodes: Vec<[u32; 2]>,
}

impl Steps {
    /// Finds the stations among the nodes of a finished drawing, and adds a node for the second height of each.
    pub(super) fn of(
        stations: Vec<Station>,
        paths: Vec<Path>,
        drawing: &mut Drawing,
    ) -> Result<Self, SurfaceError> {
        let mut nodes = Vec::with_capacity(stations.len());
        for station in &stations {
            let low = node_at(&drawing.nodes, station);
            nodes.push([low, low]);
        }
        let of_made = drawing.made.iter().flat_map(|made| made.ends.as_flattened());
        if let Some(end) = of_made.copied().find(|end| nodes.iter().any(|station| station[0] == *end)) {
            let shot = drawing.nodes[end as usize].shot as usize;
            return Err(SurfaceError::Step { shot, other: shot, flaw: StepFlaw::Crossed });
        }
        for (station, pair) in stations.iter().zip(&mut nodes) {
            if !station.fades() {
                pair[1] = drawing.nodes.len() as u32;
                let flags = drawing.nodes[pair[0] as usize].flags;
                drawing.nodes.push(Node { flags, ..station.high });
            }
        }
        Ok(Self { stations, paths, nodes })
    }

    /// Whether there is no step.
    pub(super) fn is_empty(&self) -> bool {
        self.paths.is_empty()
    }

    /// Gives the corners of polygons along the lines the height of their own side, and the hull as well; fits the slope to
    /// what the lines part.
    pub(super) fn part(
        &self,
        triangulation: &mut Triangulation,
        (mesh, nodes, notes): &mut Built,
        rules: &Rules,
    ) -> Result<(), SurfaceError> {
        let sectors = Sectors::of(self, triangulation)?;
        let neighbours = Neighbours::of(self, &sectors, mesh, nodes);
        let senses = senses::of(self, &neighbours, nodes, rules)?;
        let owners = sectors.owners(self, &senses);
        apart::polygons(&owners, mesh, nodes);
        apart::hull(&owners, nodes, &mut mesh.hull);
        (mesh.fitted, mesh.offsets) = apart::fit_apart(&nodes[..mesh.places], mesh, rules.on_run)?;
        for (path, &left_is_high) in self.paths.iter().zip(&senses) {
            notes.push(self.note(path, left_is_high, &neighbours, nodes));
        }
        Ok(())
    }

    /// What the reader must know of a line.
    fn note(&self, path: &Path, left_is_high: bool, neighbours: &Neighbours, nodes: &[Node]) -> Note {
        let stations = || path.stations.iter().map(|&station| &self.stations[station]);
        let heights = || stations().map(Station::height);
        let first = |station: usize| self.stations[station].low.shot as usize;
        let (from, to) = (path.stations[0], path.stations[path.stations.len() - 1]);
        let toward = path.stations.iter().find_map(|&station| {
            neighbours.nearest(station, left_is_high, self.stations[station].at(), nodes)
        });
        Note::Step {
            ends: [first(from), first(to)],
            least: heights().fold(f64::INFINITY, f64::min),
            greatest: heights().fold(0.0, f64::max),
            toward,
        }
    }
}

/// The lines that stations make.
pub(super) fn find(
    stations: &[Station],
    nodes: &[Node],
    triangulation: &Triangulation,
    frame: &Frame,
    rules: &Rules,
) -> Result<Vec<Path>, SurfaceError> {
    if stations.is_empty() {
        return Ok(Vec::new());
    }
    let (mut hulled, mut nodes) = (triangulation.clone(), nodes.to_vec());
    Hull::around(&mut hulled, &mut nodes, rules.on_run);
    let at_edge = |station: &Station| nodes[node_at(&nodes, station) as usize].has(ON_HULL | ON_RUN);
    let at_edge: Vec<bool> = stations.iter().map(at_edge).collect();
    let paths = chain::paths(stations, &at_edge, frame)?;
    clear_of_shots(&paths, stations, &nodes, rules)?;
    Ok(paths)
}

/// Refuses lines with a shot on them that is none of theirs: nobody could say which side it is on.
fn clear_of_shots(
    paths: &[Path],
    stations: &[Station],
    nodes: &[Node],
    rules: &Rules,
) -> Result<(), SurfaceError> {
    let links: Vec<[usize; 2]> = paths.iter().flat_map(Path::links).collect();
    let lines = Runs::new(links.iter().map(|link| link.map(|station| stations[station].at())).collect());
    for node in nodes {
        let mut met = None;
        lines.within(node.at(), rules.same_place, |line, ends| {
            if ends.iter().all(|end| *end != node.at()) && from_segment(node.at(), ends) <= rules.same_place {
                met = met.or(Some(line));
            }
        });
        if let Some(line) = met {
            let (shot, other) = (stations[links[line][0]].low.shot as usize, node.shot as usize);
            return Err(SurfaceError::Step { shot, other, flaw: StepFlaw::ThroughShot });
        }
    }
    Ok(())
}

/// The node at the place of a station.
fn node_at(nodes: &[Node], station: &Station) -> u32 {
    nodes.partition_point(|node| by_place(&node.at(), &station.at()).is_lt()) as u32
}

/// The lines between the stations of paths, to be drawn.
pub(super) fn lines(paths: &[Path], stations: &[Station], nodes: &[Node]) -> Vec<Line> {
    let node = |station: usize| node_at(nodes, &stations[station]);
    let links = paths.iter().flat_map(Path::links);
    links.map(|[from, to]| Line::of_step(nodes, node(from), node(to))).collect()
}
