//! The surface over one region, as triangles that tile it exactly.

use super::extreme::{Extreme, Tied};
use super::tiling::{BETWEEN, BEYOND, IN_REGION, Node, Piece, Tiling};
use crate::choice;
use crate::geometry::{Plane, Point, Sum};

choice! {
    /// What is known of the ground under a triangle.
    pub enum Ground {
        /// Between shots.
        Surveyed = "surveyed",
        /// Between shots, but across a notch or hole whose corners were not shot; between faces that were given.
        Spanning = "spanning",
        /// Beyond the shots: extended from the nearest ones by the slope of the fitted plane.
        Beyond = "beyond",
    }
}

/// A corner of a triangle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Corner {
    /// Where it is.
    pub at: Point,
    /// The height of the old slab there.
    pub height: f64,
    /// The shot it is, if it is one (the first of those that share the place).
    pub shot: Option<usize>,
}

/// A triangle of the tiling: the old slab is plane over it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Triangle {
    /// Its corners, counter-clockwise.
    pub corners: [Corner; 3],
    /// Its area.
    pub area: f64,
    /// What is known of the ground.
    pub ground: Ground,
}

/// A triangle lower over its longest side than this share of it carries no slope.
const SLIVER: f64 = 1e-3;

impl Triangle {
    /// The plane of the old slab over it; none for a sliver, whose slope would be made of reading errors.
    #[must_use]
    pub fn plane(&self) -> Option<Plane> {
        let [a, b, c] = self.corners;
        let longest = a.at.distance(b.at).max(b.at.distance(c.at)).max(c.at.distance(a.at));
        if 2.0 * self.area < SLIVER * longest * longest {
            return None;
        }
        let (bx, by, bz) = (b.at.x - a.at.x, b.at.y - a.at.y, b.height - a.height);
        let (cx, cy, cz) = (c.at.x - a.at.x, c.at.y - a.at.y, c.height - a.height);
        let doubled = bx * cy - by * cx;
        let (slope_x, slope_y) = ((bz * cy - by * cz) / doubled, (bx * cz - bz * cx) / doubled);
        Some(Plane::about(a.at, a.height, slope_x, slope_y))
    }
}

/// Highest and lowest points of the old slab.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Relief {
    /// The highest point.
    pub highest: Extreme,
    /// The lowest point.
    pub lowest: Extreme,
}

impl Relief {
    /// How far the old slab is out of level.
    #[must_use]
    pub fn out_of_level(&self) -> f64 {
        self.highest.value - self.lowest.value
    }
}

/// Integrals over the region: the net volume under any plane follows from them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Integrals {
    /// What the first moments are about.
    pub origin: Point,
    /// Area.
    pub area: f64,
    /// Integral of x less the origin's.
    pub x: f64,
    /// Integral of y less the origin's.
    pub y: f64,
    /// Integral of the old slab's height.
    pub height: f64,
}

impl Integrals {
    /// The volume between the old slab and a plane, high spots taken off.
    #[must_use]
    pub fn net_under(&self, plane: &Plane) -> f64 {
        self.area * plane.height_at(self.origin) + self.x * plane.b() + self.y * plane.c() - self.height
    }
}

/// The surface over one region, as triangles that tile it exactly.
#[derive(Clone, Debug)]
pub struct Cut {
    origin: Point,
    tiling: Tiling,
    /// Area by ground.
    areas: [f64; 3],
}

impl Cut {
    pub(super) fn new(origin: Point, tiling: Tiling) -> Self {
        let areas = tiling.areas();
        Self { origin, tiling, areas }
    }

    /// How many triangles there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.tiling.pieces.len()
    }

    /// Whether there are none; a surface always has some.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.tiling.pieces.is_empty()
    }

    /// The triangles.
    pub fn triangles(&self) -> impl ExactSizeIterator<Item = Triangle> + '_ {
        self.tiling.pieces.iter().map(|piece| Triangle {
            corners: piece.corners.map(|corner| self.corner(corner)),
            area: piece.area,
            ground: piece.ground,
        })
    }

    /// The area.
    #[must_use]
    pub fn area(&self) -> f64 {
        self.areas.iter().sum()
    }

    /// The area of one kind of ground.
    #[must_use]
    pub fn area_of(&self, ground: Ground) -> f64 {
        self.areas[ground as usize]
    }

    /// The shots of the region with their places and heights; of several that share a place, the first, with the mean.
    pub fn shots(&self) -> impl Iterator<Item = (usize, Point, f64)> + '_ {
        let nodes = self.tiling.nodes.iter().filter(|node| node.has(IN_REGION));
        nodes.filter_map(|node| Some((node.shot()?, given(self.origin, node), node.z)))
    }

    /// Area and first moments and the integral of the height.
    #[must_use]
    pub fn integrals(&self) -> Integrals {
        let (mut area, mut x, mut y, mut height) = (Sum::new(), Sum::new(), Sum::new(), Sum::new());
        // Few terms are summed plainly, and only their sums with care: as exact, and much quicker.
        for few in self.tiling.pieces.chunks(16) {
            let mut part = [0.0; 4];
            for piece in few {
                let [a, b, c] = piece.corners.map(|corner| &self.tiling.nodes[corner as usize]);
                let third = piece.area / 3.0;
                part[0] += piece.area;
                part[1] += third * (a.x + b.x + c.x);
                part[2] += third * (a.y + b.y + c.y);
                part[3] += third * (a.z + b.z + c.z);
            }
            area.add(part[0]);
            x.add(part[1]);
            y.add(part[2]);
            height.add(part[3]);
        }
        let [area, x, y, height] = [area, x, y, height].map(|sum| sum.value());
        Integrals { origin: self.origin, area, x, y, height }
    }

    /// Highest and lowest point between the shots; none when no part of the region is there.
    #[must_use]
    pub fn relief(&self) -> Option<Relief> {
        self.relief_of(BETWEEN)
    }

    /// Highest and lowest point beyond the shots; none when no part of the region is there.
    #[must_use]
    pub fn relief_beyond(&self) -> Option<Relief> {
        self.relief_of(BEYOND)
    }

    fn relief_of(&self, flag: u32) -> Option<Relief> {
        let nodes = || self.tiling.nodes.iter().filter(|node| node.has(flag));
        let extreme = |sense: f64| {
            let mut tied = Tied::at(nodes().map(|node| sense * node.z).fold(f64::INFINITY, f64::min));
            for node in nodes() {
                if tied.includes(sense * node.z) {
                    tied.look(node, self.origin);
                }
            }
            tied.extreme()
        };
        let (lowest, highest) = (extreme(1.0)?, extreme(-1.0)?);
        Some(Relief { highest: Extreme { value: -highest.value, ..highest }, lowest })
    }

    /// What local coordinates are counted from.
    pub(crate) fn origin(&self) -> Point {
        self.origin
    }

    /// The corners of the triangles, in local coordinates.
    pub(crate) fn nodes(&self) -> &[Node] {
        &self.tiling.nodes
    }

    /// Those of them that are between the shots.
    pub(crate) fn measured(&self) -> impl Iterator<Item = &Node> + '_ {
        self.tiling.nodes.iter().filter(|node| node.is_measured())
    }

    /// The triangles by the numbers of their corners.
    pub(crate) fn pieces(&self) -> &[Piece] {
        &self.tiling.pieces
    }

    fn corner(&self, number: u32) -> Corner {
        let node = &self.tiling.nodes[number as usize];
        Corner { at: given(self.origin, node), height: node.z, shot: node.shot() }
    }
}

fn given(origin: Point, node: &Node) -> Point {
    Point::new(node.x + origin.x, node.y + origin.y)
}
