//! From points and the faces between them to the mesh: the faces are kept as they are.
//!
//! Every side of a face becomes a constraint edge of the triangulation of all corners. Then each face is one triangle of
//! it, and what is left lies between the faces and their hull: ground that nobody surveyed.

mod corners;
mod sides;
mod weave;

use super::build::fit;
use super::frame::Frame;
use super::hull::Hull;
use super::mesh::Mesh;
use super::polygons::{collect, join};
use super::tiling::ON_HULL;
use super::{Built, Node, Rules, SurfaceError};
use crate::geometry::triangulation::Triangulation;
use crate::geometry::{Point, Region};
use crate::survey::points::Points;
use corners::Corners;
use sides::Sides;

/// The mesh of given faces, its nodes, and what is to be said of it.
pub(super) fn mesh_of(
    points: &Points,
    faces: &[[u32; 3]],
    frame: &Frame,
    region: &Region,
    rules: &Rules,
) -> Result<Built, SurfaceError> {
    let Corners { mut nodes, mut faces, notes } = Corners::of(points, faces, frame, region, rules)?;
    let sides = Sides::of(&faces, &nodes)?;
    let fitted = fit(&nodes, rules.on_run)?;
    let on_circle = rules.cocircular.max(super::build::ROUNDING);
    let woven = |anew: fn(Vec<Point>) -> Triangulation, nodes: &mut [Node]| {
        let mut triangulation = anew(nodes.iter().map(Node::at).collect());
        sides.weave(&mut triangulation, &faces, nodes)?;
        let hull = Hull::around(&mut triangulation, nodes, rules.on_run);
        let joined = join(&mut triangulation, on_circle);
        Ok((triangulation, hull, joined))
    };
    let (mut triangulation, mut hull, joined) = woven(Triangulation::of, &mut nodes)?;
    if joined.is_err() {
        nodes.iter_mut().for_each(|node| node.flags &= !ON_HULL);
        // Whatever is still amiss then is so by less than rounding.
        (triangulation, hull, _) = woven(Triangulation::exactly, &mut nodes)?;
    }
    // In one order whatever the caller's.
    faces.sort_unstable();
    let (places, given) = (nodes.len(), faces.len());
    let (loops, faces) = collect(&mut triangulation, on_circle, &mut nodes, &faces);
    Ok((
        Mesh {
            places,
            loops,
            faces,
            hull,
            fitted,
            made: Vec::new(),
            given: Some(given),
            offsets: Vec::new(),
        },
        nodes,
        notes,
    ))
}
