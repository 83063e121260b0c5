//! Water that stands together: one pond.

use super::flood::{Flood, Ways};
use super::outlets::Outlets;
use crate::geometry::clip::{MADE, Vertex};
use crate::geometry::network::Network;
use crate::geometry::predicates::cross;
use crate::geometry::zero_line;
use crate::geometry::{Point, Sum};

/// Water shallower than this is rounding, in metres.
const ROUNDING: f64 = 1e-9;

/// A pond in plain metres.
#[derive(Clone, Debug)]
pub(crate) struct Water {
    pub(crate) level: f64,
    pub(crate) area: f64,
    pub(crate) volume: f64,
    pub(crate) depth: f64,
    pub(crate) deepest: Point,
    pub(crate) spill: Point,
    /// What takes the water where it spills; nothing at a saddle, from which it runs on.
    pub(crate) outlet: Option<String>,
    /// Convex pieces that tile it, `z` being the depth of the water.
    pub(crate) pieces: Vec<Vec<Vertex>>,
    /// The triangles it stands over, of those the network was made from.
    pub(crate) triangles: Vec<u32>,
}

/// The ponds of a flooded network.
pub(super) fn ponds(network: &Network, ways: &Ways, flood: &Flood, outlets: &Outlets) -> Vec<Water> {
    let (labels, count) = labels(network, ways, flood);
    let mut ponds: Vec<Gathered> = (0..count).map(|_| Gathered::default()).collect();
    for (corner, label) in (0_u32..).zip(&labels) {
        if let Some(pond) = label.and_then(|label| ponds.get_mut(label)) {
            pond.look(network, flood, corner);
        }
    }
    for (&triangle, &parent) in network.triangles().iter().zip(network.parents()) {
        let label = triangle.iter().find_map(|&corner| labels[corner as usize]);
        if let Some(pond) = label.and_then(|label| ponds.get_mut(label)) {
            pond.add(network, triangle);
            pond.triangles.push(parent);
        }
    }
    ponds.into_iter().map(|pond| pond.water(network, outlets)).collect()
}

/// The pond of every corner under water, and how many ponds there are.
fn labels(network: &Network, ways: &Ways, flood: &Flood) -> (Vec<Option<usize>>, usize) {
    let corners = network.corners();
    let wet = |corner: u32| {
        let level = flood.levels[corner as usize];
        level.is_finite() && level - corners[corner as usize].height > ROUNDING
    };
    let (mut labels, mut count) = (vec![None; corners.len()], 0);
    for first in 0..corners.len() as u32 {
        if labels[first as usize].is_some() || !wet(first) {
            continue;
        }
        labels[first as usize] = Some(count);
        let mut pending = vec![first];
        while let Some(corner) = pending.pop() {
            for &next in ways.from(corner) {
                if labels[next as usize].is_none() && wet(next) {
                    labels[next as usize] = Some(count);
                    pending.push(next);
                }
            }
        }
        count += 1;
    }
    (labels, count)
}

/// A pond while it is gathered.
#[derive(Default)]
struct Gathered {
    level: f64,
    area: Sum,
    volume: Sum,
    lowest: Option<u32>,
    spill: u32,
    pieces: Vec<Vec<Vertex>>,
    triangles: Vec<u32>,
}

impl Gathered {
    /// Takes the corner for the deepest place if it is deeper; of those as deep the one farthest to the left, then nearest to
    /// the front.
    fn look(&mut self, network: &Network, flood: &Flood, corner: u32) {
        let corners = network.corners();
        let deeper = |known: u32| {
            let (one, other) = (&corners[corner as usize], &corners[known as usize]);
            if (one.height - other.height).abs() > ROUNDING {
                return one.height < other.height;
            }
            let along = |a: f64, b: f64| {
                if (a - b).abs() <= ROUNDING { std::cmp::Ordering::Equal } else { a.total_cmp(&b) }
            };
            along(one.at.x, other.at.x).then(along(one.at.y, other.at.y)).is_lt()
        };
        if self.lowest.is_none_or(deeper) {
            self.lowest = Some(corner);
            self.level = flood.levels[corner as usize];
            self.spill = flood.spills[corner as usize];
        }
    }

    /// Adds what of a triangle is under water.
    fn add(&mut self, network: &Network, triangle: [u32; 3]) {
        let corners = triangle.map(|corner| network.corners()[corner as usize]);
        let depths = corners.map(|corner| self.level - corner.height);
        let area = 0.5 * cross(corners[0].at, corners[1].at, corners[2].at);
        self.area.add(zero_line::area_above(area, depths));
        self.volume.add(zero_line::volumes(area, depths).0);
        let vertex = |index: usize| Vertex {
            x: corners[index].at.x,
            y: corners[index].at.y,
            z: depths[index],
            id: MADE,
        };
        let piece = zero_line::above([0, 1, 2].map(vertex));
        if piece.len() > 2 {
            self.pieces.push(piece);
        }
    }

    fn water(self, network: &Network, outlets: &Outlets) -> Water {
        let at = |corner: u32| network.corners()[corner as usize];
        let lowest = self.lowest.unwrap_or(self.spill);
        Water {
            level: self.level,
            area: self.area.value(),
            volume: self.volume.value(),
            depth: self.level - at(lowest).height,
            deepest: at(lowest).at,
            spill: at(self.spill).at,
            outlet: outlets.name(self.spill).map(str::to_owned),
            pieces: self.pieces,
            triangles: self.triangles,
        }
    }
}
