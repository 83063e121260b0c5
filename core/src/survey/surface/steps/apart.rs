//! The mesh on both sides of step lines, and the slope that is fitted to each side by itself.

use super::sectors::Owners;
use crate::geometry::Point;
use crate::survey::surface::SurfaceError;
use crate::survey::surface::build::fit;
use crate::survey::surface::hull::Hull;
use crate::survey::surface::mesh::{Fitted, Mesh, NO_MEAN};
use crate::survey::surface::polygons::mean_of;
use crate::survey::surface::tiling::{Node, SLAB, STEP};

/// Gives polygons the corners of their own side, and their means the heights of those.
pub(super) fn polygons(owners: &Owners, mesh: &mut Mesh, nodes: &mut [Node]) {
    for face in 0..mesh.faces.len() {
        let range = mesh.range(face);
        let (corners, face) = (&mut mesh.loops[range], mesh.faces[face]);
        if !corners.iter().any(|&corner| nodes[corner as usize].has(STEP)) {
            continue;
        }
        let first = corners.first().copied();
        for index in 0..corners.len() {
            // The first corner may already have its new number.
            let next = if index + 1 < corners.len() { Some(corners[index + 1]) } else { first };
            corners[index] = owners.start(corners[index], next.unwrap_or(corners[index]));
        }
        if face.mean != NO_MEAN {
            let flags = nodes[face.mean as usize].flags;
            nodes[face.mean as usize] = Node { flags, ..mean_of(nodes, corners) };
        }
    }
}

/// Gives every piece of the hull the ends of its own side: where a step meets the hull two nodes stand at one place.
pub(super) fn hull(owners: &Owners, nodes: &[Node], hull: &mut Hull) {
    if !hull.chain.iter().any(|&node| nodes[node as usize].has(STEP)) {
        return;
    }
    let old = std::mem::take(&mut hull.chain);
    for side in &mut hull.sides {
        let pieces = side.from as usize..side.to as usize;
        side.from = hull.chain.len() as u32;
        for at in pieces {
            let (from, to) = (old[at], old[at + 1]);
            let (start, end) = (owners.start(from, to), owners.end(from, to));
            let is_last = |chain: &[u32]| chain.last() == Some(&start) && chain.len() > side.from as usize;
            if !is_last(&hull.chain) {
                hull.chain.push(start);
            }
            hull.chain.push(end);
        }
        side.to = hull.chain.len() as u32 - 1;
    }
}

/// The plane fitted where steps may part the slab: its slope is the common one of all parts, each about its own mean, so
/// that a part that lies higher does not tilt it. Also gives how far the mean of each place's part is from the mean of all.
pub(super) fn fit_apart(
    nodes: &[Node],
    mesh: &Mesh,
    narrowest: f64,
) -> Result<(Fitted, Vec<Point>), SurfaceError> {
    let parts = parts(nodes.len(), mesh);
    let (moved, offsets) = about_one_mean(nodes, &parts, |node| node.has(SLAB));
    let fitted = fit(&moved, narrowest);
    if let Ok(fitted) = fitted
        && fitted.slab_only
    {
        return Ok((fitted, offsets));
    }
    let (moved, offsets) = about_one_mean(nodes, &parts, |_| true);
    if let Ok(fitted) = fit(&moved, narrowest) {
        return Ok((fitted, offsets));
    }
    // Every part by itself is on one line: all together they are not.
    Ok((fit(nodes, narrowest)?, vec![Point::default(); nodes.len()]))
}

/// Moves the places of every part, and their heights, so that all parts have one mean.
fn about_one_mean(nodes: &[Node], parts: &[u32], counts: impl Fn(&Node) -> bool) -> (Vec<Node>, Vec<Point>) {
    let mut sums = vec![[0.0; 4]; nodes.len()];
    let mut all = [0.0; 4];
    for (node, &part) in nodes.iter().zip(parts).filter(|(node, _)| counts(node)) {
        for sum in [&mut sums[part as usize], &mut all] {
            for (sum, value) in sum.iter_mut().zip([node.x, node.y, node.z, 1.0]) {
                *sum += value;
            }
        }
    }
    let mean = |[x, y, z, count]: [f64; 4]| [x, y, z].map(|sum| sum / f64::max(count, 1.0));
    let of_all = mean(all);
    let moved = nodes.iter().zip(parts).map(|(node, &part)| {
        let sums = sums[part as usize];
        let of_part = if sums[3] > 0.0 { mean(sums) } else { of_all };
        let [x, y, z] = [0, 1, 2].map(|i| of_part[i] - of_all[i]);
        (Node { x: node.x - x, y: node.y - y, z: node.z - z, ..*node }, Point::new(x, y))
    });
    moved.unzip()
}

/// The part of the slab every place belongs to: one that can be reached over polygons.
fn parts(places: usize, mesh: &Mesh) -> Vec<u32> {
    let mut first: Vec<u32> = (0..places as u32).collect();
    let find = |first: &mut [u32], mut member: u32| {
        while first[member as usize] != member {
            let above = first[first[member as usize] as usize];
            first[member as usize] = above;
            member = above;
        }
        member
    };
    for face in 0..mesh.faces.len() {
        for pair in mesh.loops[mesh.range(face)].windows(2) {
            let (a, b) = (find(&mut first, pair[0]), find(&mut first, pair[1]));
            first[a.max(b) as usize] = a.min(b);
        }
    }
    (0..places as u32).map(|place| find(&mut first, place)).collect()
}
