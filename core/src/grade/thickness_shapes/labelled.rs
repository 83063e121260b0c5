//! Convex pieces of ground that bear labels, as connected parts with their polygons.

use super::parts::Groups;
use super::rings::{Chains, Shape, by_first};
use super::strip::Corner;
use crate::geometry::network::{BORDER, Network};
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum};
use std::collections::BTreeMap;

/// A connected part of the ground under one label.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::grade) struct LabelledPart {
    pub(in crate::grade) label: usize,
    pub(in crate::grade) area: f64,
    pub(in crate::grade) shape: Shape,
}

/// The connected parts of each label, by label, the largest first. Pieces that tile the ground; where one's corner lies amid
/// another's side the side is parted there.
pub(in crate::grade) fn labelled_parts<'a>(
    pieces: impl Iterator<Item = (usize, &'a [Point])>,
) -> Vec<LabelledPart> {
    let (mut corners, mut triangles, mut labels) = (Vec::new(), Vec::new(), Vec::new());
    for (label, piece) in pieces {
        let first = corners.len() as u32;
        corners.extend(piece.iter().map(|at| [at.x, at.y, 0.0]));
        triangles.extend((2..piece.len() as u32).map(|at| [first, first + at - 1, first + at]));
        labels.resize(triangles.len(), label);
    }
    let network = Network::joined(&corners, &triangles).network;
    let label = |triangle: u32| labels[network.parents()[triangle as usize] as usize];
    let count = network.triangles().len() as u32;
    let mut groups = Groups::new(count as usize);
    for (triangle, neighbours) in (0..count).zip(network.neighbours()) {
        for &other in neighbours {
            if other != BORDER && label(other) == label(triangle) {
                groups.join(triangle, other);
            }
        }
    }
    let mut parts: BTreeMap<(usize, u32), (Sum, Chains)> = BTreeMap::new();
    for (triangle, (corners, neighbours)) in
        (0..count).zip(network.triangles().iter().zip(network.neighbours()))
    {
        let part = parts.entry((label(triangle), groups.of(triangle))).or_default();
        let [a, b, c] = corners.map(|corner| network.corners()[corner as usize].at);
        part.0.add(0.5 * cross(a, b, c));
        for side in 0..3 {
            let other = neighbours[side];
            if other == BORDER || label(other) != label(triangle) {
                part.1.add(Corner::Whole(corners[side]), Corner::Whole(corners[(side + 1) % 3]));
            }
        }
    }
    let place = |corner: Corner| match corner {
        Corner::Whole(corner) | Corner::Crossing { low: corner, .. } => network.corners()[corner as usize].at,
    };
    let part = |((label, _), (area, chains)): ((usize, u32), (Sum, Chains))| {
        let rings = chains.follow(place).into_iter().filter(|chain| chain.closed);
        let shape = Shape::of(rings.map(|chain| straightened(chain.places)))?;
        Some(LabelledPart { label, area: area.value(), shape })
    };
    let mut parts: Vec<LabelledPart> = parts.into_iter().filter_map(part).collect();
    let size = |part: &LabelledPart| (part.area * 1e6).round();
    parts.sort_by(|a, b| {
        let by_size = size(b).total_cmp(&size(a));
        a.label.cmp(&b.label).then(by_size).then_with(|| by_first(&a.shape.outer, &b.shape.outer))
    });
    parts
}

/// A corner nearer than this to the line between its neighbours is none, in metres.
const STRAIGHT: f64 = 1e-9;

/// The ring without corners that lie straight between others.
fn straightened(ring: Vec<Point>) -> Vec<Point> {
    let count = ring.len();
    let turns = |at: usize| {
        let (before, here, after) = (ring[(at + count - 1) % count], ring[at], ring[(at + 1) % count]);
        cross(before, here, after).abs() > STRAIGHT * before.distance(after)
    };
    let kept: Vec<Point> = (0..count).filter(|&at| turns(at)).map(|at| ring[at]).collect();
    if kept.len() < 3 { ring } else { kept }
}
