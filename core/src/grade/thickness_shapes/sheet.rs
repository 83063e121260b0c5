//! Triangles over shared corners with one value at each: what levels and lines are followed on.

use super::strip::{Corner, Strip};
use crate::geometry::network::{BORDER, Network};
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum};
use crate::grade::thickness_field::{rounding_of, settled};
use crate::survey::surface::{Cut, Node, weld};

/// A field over triangles that share their corners. At a step each side has corners of its own, and shapes end there.
#[derive(Clone, Debug)]
pub(super) struct Sheet {
    network: Network,
    /// The value at every corner.
    values: Vec<f64>,
    /// The shot at every corner that is at one.
    shots: Vec<Option<usize>>,
    areas: Vec<f64>,
    /// How much rounding can have moved a value.
    pub(super) hair: f64,
}

/// One cut with the value of the field at each of its nodes, and how far from the datum the heights reach.
pub(super) struct Layer<'a> {
    pub(super) ground: &'a Cut,
    pub(super) values: Vec<f64>,
    pub(super) reach: f64,
}

impl Sheet {
    /// The field over cuts that tile neighbouring regions.
    pub(super) fn over(layers: &[Layer<'_>]) -> Self {
        let welded = weld(layers.iter().map(|layer| layer.ground));
        let values: Vec<f64> = layers.iter().flat_map(|layer| layer.values.iter().copied()).collect();
        let shots: Vec<Option<usize>> =
            layers.iter().flat_map(|layer| layer.ground.nodes().iter().map(Node::shot)).collect();
        let (values, shots) = (welded.field(&values), welded.at_corners(&shots, None, |_, _, _| None));
        let network = welded.network;
        let area = |of: &[u32; 3]| {
            let [a, b, c] = of.map(|corner| network.corners()[corner as usize].at);
            (0.5 * cross(a, b, c)).max(0.0)
        };
        let areas = network.triangles().iter().map(area).collect();
        let hair = rounding_of(layers.iter().map(|layer| layer.reach).fold(0.0, f64::max));
        Self { network, values, shots, areas, hair }
    }

    /// Where a corner is.
    pub(super) fn at(&self, corner: u32) -> Point {
        self.network.corners()[corner as usize].at
    }

    /// The value at a corner.
    pub(super) fn value(&self, corner: u32) -> f64 {
        self.values[corner as usize]
    }

    /// The shot that a corner is, if it is one.
    pub(super) fn shot(&self, corner: u32) -> Option<usize> {
        self.shots[corner as usize]
    }

    /// The area of all triangles.
    pub(super) fn whole(&self) -> f64 {
        self.areas.iter().copied().collect::<Sum>().value()
    }

    /// How many triangles there are.
    pub(super) fn len(&self) -> usize {
        self.areas.len()
    }

    /// The corners of a triangle by number.
    pub(super) fn triangle(&self, number: u32) -> [u32; 3] {
        self.network.triangles()[number as usize]
    }

    /// The values at the corners of a triangle.
    pub(super) fn values(&self, number: u32) -> [f64; 3] {
        self.triangle(number).map(|corner| self.value(corner))
    }

    /// The area of a triangle.
    pub(super) fn area(&self, number: u32) -> f64 {
        self.areas[number as usize]
    }

    /// Which of the triangles of its cuts, one cut after the other, a triangle is a part of.
    pub(super) fn parent(&self, number: u32) -> u32 {
        self.network.parents()[number as usize]
    }

    /// All triangles by their areas and values.
    pub(super) fn pieces(&self) -> impl Iterator<Item = (f64, [f64; 3])> + '_ {
        (0..self.len() as u32).map(|number| (self.area(number), self.values(number)))
    }

    /// The triangle across a side; none on the border.
    pub(super) fn across(&self, number: u32, side: usize) -> Option<u32> {
        let other = self.network.neighbours()[number as usize][side];
        (other != BORDER).then_some(other)
    }

    /// Least and greatest value.
    pub(super) fn reach(&self) -> (f64, f64) {
        let used = self.network.triangles().iter().flatten();
        used.fold((f64::INFINITY, f64::NEG_INFINITY), |(least, greatest), &corner| {
            let value = self.value(corner);
            (least.min(value), greatest.max(value))
        })
    }

    /// Where a corner of what a strip leaves lies. The same to the bit from both sides.
    pub(super) fn place(&self, corner: Corner, strip: &Strip) -> Point {
        let (low, high, level) = match corner {
            Corner::Whole(corner) => return self.at(corner),
            Corner::Crossing { low, high, upper: true } => (low, high, strip.to),
            Corner::Crossing { low, high, upper: false } => (low, high, strip.from),
        };
        let share = (level - self.value(low)) / (self.value(high) - self.value(low));
        let [low, high] = [self.at(low), self.at(high)];
        Point::new(low.x + share * (high.x - low.x), low.y + share * (high.y - low.y))
    }

    /// Whether a corner lies at a level.
    pub(super) fn is_at(&self, corner: u32, level: f64) -> bool {
        settled(self.value(corner), level, self.hair) == level
    }
}
