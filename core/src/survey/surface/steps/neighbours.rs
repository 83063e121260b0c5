//! The shots next to a station, on each side of its line.

use super::Steps;
use super::sectors::Sectors;
use crate::geometry::Point;
use crate::survey::surface::mesh::Mesh;
use crate::survey::surface::tiling::{Node, STEP};

/// For each station the neighbouring nodes on the right and on the left of its line; other stations do not count.
#[derive(Debug)]
pub(super) struct Neighbours(Vec<[Vec<u32>; 2]>);

impl Neighbours {
    pub(super) fn of(steps: &Steps, sectors: &Sectors, mesh: &Mesh, nodes: &[Node]) -> Self {
        let mut found = vec![[Vec::new(), Vec::new()]; steps.stations.len()];
        for face in 0..mesh.faces.len() {
            let corners = &mesh.loops[mesh.range(face)];
            if !corners.iter().any(|&corner| nodes[corner as usize].has(STEP)) {
                continue;
            }
            for (index, &corner) in corners.iter().enumerate() {
                let next = corners[(index + 1) % corners.len()];
                if let Some(hand) = sectors.leaving(corner, next) {
                    let others = corners.iter().filter(|&&other| !nodes[other as usize].has(STEP));
                    found[hand.station][usize::from(hand.left)].extend(others);
                }
            }
        }
        for side in found.iter_mut().flatten() {
            side.sort_unstable();
            side.dedup();
        }
        Self(found)
    }

    /// The mean height on one side of a station; none where it has no neighbours there.
    pub(super) fn mean(&self, station: usize, left: bool, nodes: &[Node]) -> Option<f64> {
        let side = &self.0[station][usize::from(left)];
        let first = nodes[*side.first()? as usize].z;
        let sum: f64 = side.iter().map(|&node| nodes[node as usize].z - first).sum();
        Some(first + sum / side.len() as f64)
    }

    /// The shot nearest to a station on one side.
    pub(super) fn nearest(&self, station: usize, left: bool, at: Point, nodes: &[Node]) -> Option<usize> {
        let shots = self.0[station][usize::from(left)].iter().filter_map(|&node| {
            let node = &nodes[node as usize];
            Some((node.at().distance(at), node.shot()?))
        });
        shots.min_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1))).map(|(_, shot)| shot)
    }
}
