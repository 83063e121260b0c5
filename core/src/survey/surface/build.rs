//! The general way: from shots in any order to the mesh.

use super::frame::Frame;
use super::hull::Hull;
use super::lines::{Drawing, along_runs};
use super::mesh::{Fitted, Mesh};
use super::places::Places;
use super::polygons::{collect, join};
use super::shot::Shots;
use super::steps::{self, Steps};
use super::tiling::{NO_SHOT, Node, ON_HULL, SLAB};
use super::{Built, Rules, SurfaceError};
use crate::geometry::triangulation::Triangulation;
use crate::geometry::{Region, Scatter};

/// Whatever the rules, places so near to one circle (as a share of its radius) are on it, for rounding decides.
pub(super) const ROUNDING: f64 = 1e-9;

/// The mesh of scattered shots, its nodes, and what is to be said of it.
pub(super) fn mesh_of(
    shots: &Shots,
    frame: &Frame,
    region: &Region,
    rules: &Rules,
) -> Result<Built, SurfaceError> {
    let Places { nodes, mut triangulation, notes, stations } = Places::of(shots, frame, region, rules)?;
    if nodes.len() < 3 {
        return Err(SurfaceError::TooFewPlaces { shots: shots.taken(), places: nodes.len() });
    }
    let fitted = fit(&nodes, rules.on_run)?;
    let on_circle = rules.cocircular.max(ROUNDING);
    let mut lines = along_runs(&nodes, region, frame, rules.on_run);
    let paths = steps::find(&stations, &nodes, &triangulation, frame, rules)?;
    lines.extend(steps::lines(&paths, &stations, &nodes));
    let mut drawing = Drawing { nodes, lines, made: Vec::new(), notes };
    drawing.draw(&mut triangulation, Triangulation::of, frame)?;
    let mut hull = Hull::around(&mut triangulation, &mut drawing.nodes, rules.on_run);
    if join(&mut triangulation, on_circle).is_err() {
        triangulation = Triangulation::exactly(drawing.points());
        drawing.nodes.iter_mut().for_each(|node| node.flags &= !ON_HULL);
        drawing.draw(&mut triangulation, Triangulation::exactly, frame)?;
        hull = Hull::around(&mut triangulation, &mut drawing.nodes, rules.on_run);
        // Whatever is still amiss then is so by less than rounding.
        let _ = join(&mut triangulation, on_circle);
    }
    let steps = Steps::of(stations, paths, &mut drawing)?;
    let Drawing { mut nodes, made, notes, .. } = drawing;
    let places = nodes.len();
    let (loops, faces) = collect(&mut triangulation, on_circle, &mut nodes, &[]);
    let mesh = Mesh { places, loops, faces, hull, fitted, made, given: None, offsets: Vec::new() };
    let mut built = (mesh, nodes, notes);
    if !steps.is_empty() {
        steps.part(&mut triangulation, &mut built, rules)?;
    }
    Ok(built)
}

/// The plane fitted to the places on the slab, or to all when those lie on one line.
pub(super) fn fit(nodes: &[Node], narrowest: f64) -> Result<Fitted, SurfaceError> {
    let place = |node: &Node| [node.x, node.y, node.z];
    let slab = Scatter::of(nodes.iter().filter(|node| node.has(SLAB)).map(place));
    if slab.width() > narrowest
        && let Ok(plane) = slab.plane()
    {
        return Ok(Fitted { plane, scatter: slab, slab_only: true });
    }
    let all = Scatter::of(nodes.iter().map(place));
    if all.width() <= narrowest {
        check_width(nodes, &all, narrowest)?;
    }
    // Narrower than the last check allows for only where the shots themselves are within rounding of one another.
    match all.plane() {
        Ok(plane) => Ok(Fitted { plane, scatter: all, slab_only: false }),
        Err(_) => Err(collinear(nodes, &all).1),
    }
}

/// Refuses places that all lie within a width of one line.
fn check_width(nodes: &[Node], scatter: &Scatter, narrowest: f64) -> Result<(), SurfaceError> {
    let (width, error) = collinear(nodes, scatter);
    if super::rules::within(width, narrowest) { Err(error) } else { Ok(()) }
}

/// How far the places are at most from the line between the two ends of their spread, and the error that says so.
fn collinear(nodes: &[Node], scatter: &Scatter) -> (f64, SurfaceError) {
    let along = scatter.direction();
    let position = |node: &Node| node.x * along.x + node.y * along.y;
    let first = nodes.first().copied().unwrap_or(Node { x: 0.0, y: 0.0, z: 0.0, shot: NO_SHOT, flags: 0 });
    let ends = nodes.iter().fold((first, first), |(low, high), node| {
        (
            if position(node) < position(&low) { *node } else { low },
            if position(node) > position(&high) { *node } else { high },
        )
    });
    let (from, to) = (ends.0.at(), ends.1.at());
    let length = from.distance(to).max(f64::MIN_POSITIVE);
    let off = |node: &Node| crate::geometry::predicates::cross(from, to, node.at()).abs() / length;
    let width = nodes.iter().map(off).fold(0.0, f64::max);
    let (from, to) = (ends.0.shot as usize, ends.1.shot as usize);
    (width, SurfaceError::Collinear { places: nodes.len(), from, to, width })
}
