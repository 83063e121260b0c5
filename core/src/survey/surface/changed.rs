//! The surface after it was ground or filled: lowered, or raised, to planes.
//!
//! Every triangle is cut where the change begins and ends; over what is changed the surface is the plane it was changed to.
//! Where a zone ends amid a change the surface has a step.

use super::Surface;
use super::cut::Cut;
use super::frame::vertex;
use super::parted::Parted;
use super::tiling::{BETWEEN, BEYOND, IN_REGION, INSIDE, NO_SHOT, Node, Source, Tiling};
use crate::geometry::clip::{MADE, Vertex};
use crate::geometry::predicates::cross;
use crate::geometry::zero_line::keep_above;
use crate::geometry::{Plane, Point, Region, Sum};
use std::collections::HashMap;
use std::sync::Arc;

/// Which way a surface is changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Way {
    /// What is above is taken off.
    Down,
    /// What is below is filled.
    Up,
}

/// What a surface is changed to.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Toward<'a> {
    /// Planes, each over its region or everywhere; where several lie the first.
    Planes(&'a [(Option<Region>, Plane)]),
    /// A level for each triangle of the whole surface that has one.
    Levels(&'a [Option<f64>]),
}

/// How much was changed.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Moved {
    pub(crate) area: f64,
    pub(crate) volume: f64,
    /// The greatest change and its place.
    pub(crate) deepest: Option<(f64, Point)>,
}

/// Heights at one corner that differ by less are one, in metres.
const SAME: f64 = 1e-12;

impl Surface {
    /// The surface after a change, within a zone or everywhere.
    pub(crate) fn changed(&self, way: Way, toward: Toward<'_>, zone: Option<&Region>) -> (Self, Moved) {
        let change = Change::new(self, way, toward, zone);
        let mut moved = Measure::default();
        let mut parts: HashMap<usize, Vec<Part>> = HashMap::new();
        let mut heights: HashMap<u32, f64> = HashMap::new();
        for (number, piece) in self.whole.pieces().iter().enumerate() {
            let of_piece = change.parts(number, piece.corners);
            if of_piece.iter().all(|part| part.to.is_none()) {
                continue;
            }
            for part in &of_piece {
                let Some(plane) = part.to else { continue };
                moved.add(&part.corners);
                for corner in part.corners.iter().filter(|corner| corner.id != MADE) {
                    change.meet(&mut heights, corner.id, plane.height_at(Point::new(corner.x, corner.y)));
                }
            }
            parts.insert(number, of_piece);
        }
        change.loose(&mut heights);
        let whole = self.rebuilt(&parts, &heights);
        let before = self.before.clone().unwrap_or_else(|| Arc::new(self.whole.clone()));
        (Self { whole, before: Some(before), ..self.clone() }, moved.moved(self.whole.origin()))
    }

    fn rebuilt(&self, parts: &HashMap<usize, Vec<Part>>, heights: &HashMap<u32, f64>) -> Cut {
        let old = self.whole.nodes();
        let mut nodes = old.to_vec();
        for (&node, &height) in heights {
            nodes[node as usize].z = height;
        }
        nodes.iter_mut().for_each(|node| node.flags &= !(BETWEEN | BEYOND));
        let mut numbered = Numbered {
            tiling: Tiling::new(nodes, self.whole.len() + 2 * parts.len()),
            copies: HashMap::new(),
        };
        for (number, piece) in self.whole.pieces().iter().enumerate() {
            let Some(parts) = parts.get(&number) else {
                let [a, b, c] = piece.corners.map(|corner| numbered.node(&vertex(old, corner)));
                numbered.tiling.triangle(a, b, c, piece.ground, piece.source);
                continue;
            };
            for part in parts {
                let polygon: Vec<Vertex> = part.heights().map(|corner| numbered.corner(corner)).collect();
                let source = if part.to.is_some() { Source::Changed } else { piece.source };
                numbered.tiling.polygon(&polygon, piece.ground, source);
            }
        }
        Cut::new(self.whole.origin(), numbered.tiling)
    }

    /// The surface as it was measured, before any change.
    pub(super) fn measured(&self) -> &Cut {
        self.before.as_deref().unwrap_or(&self.whole)
    }

    /// The heights of shots that were changed, by the shots' numbers; of several at one place by the first of them.
    pub(crate) fn changed_heights(&self) -> HashMap<usize, f64> {
        let Some(before) = &self.before else { return HashMap::new() };
        let places = before.nodes().iter().zip(self.whole.nodes()).take(self.mesh.places);
        let changed = places.filter(|(before, after)| before.z != after.z);
        changed.filter_map(|(_, after)| Some((after.shot()?, after.z))).collect()
    }
}

/// A part of a triangle: left as it is, or changed to a plane.
struct Part {
    /// Its corners; `z` is the height where it is left, else by how much it is changed.
    corners: Vec<Vertex>,
    to: Option<Plane>,
}

impl Part {
    /// Its corners with their heights after the change.
    fn heights(&self) -> impl Iterator<Item = Vertex> + '_ {
        self.corners.iter().map(|corner| {
            let height = self.to.map(|plane| plane.height_at(Point::new(corner.x, corner.y)));
            Vertex { z: height.unwrap_or(corner.z), ..*corner }
        })
    }
}

/// A change of a surface, in its local coordinates.
struct Change<'a> {
    surface: &'a Surface,
    /// 1 where what is above is taken off, -1 where what is below is filled.
    sense: f64,
    zone: Option<(Parted, &'a Region)>,
    planes: Vec<(Option<Parted>, Plane)>,
    levels: &'a [Option<f64>],
}

impl<'a> Change<'a> {
    fn new(surface: &'a Surface, way: Way, toward: Toward<'a>, zone: Option<&'a Region>) -> Self {
        let origin = surface.whole.origin();
        let local = |plane: &Plane| plane.moved_by(Point::new(-origin.x, -origin.y));
        let (planes, levels) = match toward {
            Toward::Planes(planes) => {
                let parted =
                    |region: &Option<Region>| region.as_ref().map(|region| Parted::new(region, origin));
                (planes.iter().map(|(region, plane)| (parted(region), local(plane))).collect(), [].as_slice())
            }
            Toward::Levels(levels) => (Vec::new(), levels),
        };
        let sense = if way == Way::Down { 1.0 } else { -1.0 };
        Self { surface, sense, zone: zone.map(|zone| (Parted::new(zone, origin), zone)), planes, levels }
    }

    /// The parts of a triangle of the surface.
    fn parts(&self, number: usize, corners: [u32; 3]) -> Vec<Part> {
        let nodes = self.surface.whole.nodes();
        let triangle = corners.map(|corner| vertex(nodes, corner)).to_vec();
        let (mut inside, mut outside) = match &self.zone {
            Some((zone, _)) => zone.part(triangle),
            None => (vec![triangle], Vec::new()),
        };
        let mut parts = Vec::new();
        if let Some(&Some(level)) = self.levels.get(number) {
            let plane = Plane::new(level, 0.0, 0.0);
            inside.drain(..).for_each(|polygon| self.divide(&polygon, plane, &mut parts));
        }
        for (region, plane) in &self.planes {
            for polygon in std::mem::take(&mut inside) {
                match region {
                    None => self.divide(&polygon, *plane, &mut parts),
                    Some(region) => {
                        let (under, beside) = region.part(polygon);
                        under.iter().for_each(|polygon| self.divide(polygon, *plane, &mut parts));
                        inside.extend(beside);
                    }
                }
            }
        }
        outside.append(&mut inside);
        parts.extend(outside.into_iter().map(|corners| Part { corners, to: None }));
        parts
    }

    /// Divides a polygon where the surface meets a plane.
    fn divide(&self, polygon: &[Vertex], plane: Plane, parts: &mut Vec<Part>) {
        let nodes = self.surface.whole.nodes();
        let by = |sense: f64| {
            let over = |corner: &Vertex| corner.z - plane.height_at(Point::new(corner.x, corner.y));
            polygon.iter().map(|corner| Vertex { z: sense * over(corner), ..*corner }).collect::<Vec<_>>()
        };
        let (mut changed, mut left) = (Vec::new(), Vec::new());
        keep_above(&by(self.sense), &mut changed);
        if changed.len() < 3 {
            parts.push(Part { corners: polygon.to_vec(), to: None });
            return;
        }
        parts.push(Part { corners: changed, to: Some(plane) });
        keep_above(&by(-self.sense), &mut left);
        if left.len() > 2 {
            // Corners that are shared keep the very height they had.
            let height = |corner: &Vertex| match nodes.get(corner.id as usize) {
                Some(node) => node.z,
                None => plane.height_at(Point::new(corner.x, corner.y)) - self.sense * corner.z,
            };
            let corners = left.iter().map(|corner| Vertex { z: height(corner), ..*corner }).collect();
            parts.push(Part { corners, to: None });
        }
    }

    /// Takes the height of a node after the change: of several the one that is changed most.
    fn meet(&self, heights: &mut HashMap<u32, f64>, node: u32, height: f64) {
        let known = heights.entry(node).or_insert(height);
        *known = if self.sense > 0.0 { known.min(height) } else { known.max(height) };
    }

    /// Changes the shots that are no corner of a triangle: those on a run, a little outside it.
    fn loose(&self, heights: &mut HashMap<u32, f64>) {
        let (surface, origin) = (self.surface, self.surface.whole.origin());
        let nodes = (0_u32..).zip(&surface.whole.nodes()[..surface.mesh.places]);
        for (number, node) in nodes.filter(|(_, node)| node.has(IN_REGION) && !node.has(INSIDE)) {
            let at = Point::new(node.x + origin.x, node.y + origin.y);
            let within = |zone: &Region| zone.distance_outside(at) <= surface.on_run;
            let Some((_, plane)) = self.planes.iter().find(|(region, _)| {
                region.as_ref().is_none_or(|region| region.reaches(node.at(), surface.on_run))
            }) else {
                continue;
            };
            let height = plane.height_at(node.at());
            if self.zone.as_ref().is_none_or(|(_, zone)| within(zone)) && self.sense * (node.z - height) > 0.0
            {
                self.meet(heights, number, height);
            }
        }
    }
}

/// A tiling whose corners may stand at two heights, where a zone ends.
struct Numbered {
    tiling: Tiling,
    /// The nodes at other heights of each node.
    copies: HashMap<u32, Vec<u32>>,
}

impl Numbered {
    /// A corner under the number of its node.
    fn corner(&mut self, corner: Vertex) -> Vertex {
        if corner.id == MADE { corner } else { Vertex { id: self.node(&corner), ..corner } }
    }

    /// The node of a corner at its height.
    fn node(&mut self, corner: &Vertex) -> u32 {
        let node = self.tiling.nodes[corner.id as usize];
        if (node.z - corner.z).abs() <= SAME {
            return corner.id;
        }
        let copies = self.copies.entry(corner.id).or_default();
        let fits = |&&copy: &&u32| (self.tiling.nodes[copy as usize].z - corner.z).abs() <= SAME;
        if let Some(&copy) = copies.iter().find(fits) {
            return copy;
        }
        let copy = self.tiling.nodes.len() as u32;
        copies.push(copy);
        self.tiling.nodes.push(Node { z: corner.z, shot: NO_SHOT, flags: INSIDE, ..node });
        copy
    }
}

/// How much is changed, summed up.
#[derive(Default)]
struct Measure {
    area: Sum,
    volume: Sum,
    deepest: Option<(f64, Point)>,
}

impl Measure {
    /// Adds a polygon whose `z` is by how much it is changed.
    fn add(&mut self, polygon: &[Vertex]) {
        let place = |corner: &Vertex| Point::new(corner.x, corner.y);
        let Some((first, rest)) = polygon.split_first() else { return };
        for pair in rest.windows(2) {
            let area = 0.5 * cross(place(first), place(&pair[0]), place(&pair[1]));
            self.area.add(area);
            self.volume.add(area * (first.z + pair[0].z + pair[1].z) / 3.0);
        }
        for corner in polygon {
            let (depth, at) = (corner.z, place(corner));
            let before = |known: (f64, Point)| {
                let by_place = at.x.total_cmp(&known.1.x).then(at.y.total_cmp(&known.1.y));
                depth > known.0 + SAME || (depth > known.0 - SAME && by_place.is_lt())
            };
            if self.deepest.is_none_or(before) {
                self.deepest = Some((depth, at));
            }
        }
    }

    fn moved(self, origin: Point) -> Moved {
        let given = |(depth, at): (f64, Point)| (depth, Point::new(at.x + origin.x, at.y + origin.y));
        Moved { area: self.area.value(), volume: self.volume.value(), deepest: self.deepest.map(given) }
    }
}
