//! Where the new slab is thinnest and thickest: always at a corner of a triangle, for thickness is linear between.

use super::ThicknessField;
use crate::geometry::Point;
use crate::survey::surface::{BETWEEN, BEYOND, Extreme, IN_REGION, Node, Tied};

impl ThicknessField<'_> {
    /// The least thickness and where.
    #[must_use]
    pub fn least(&self) -> Extreme {
        self.least_of(1.0, |node| node.has(BETWEEN | BEYOND)).unwrap_or(NOWHERE)
    }

    /// The greatest thickness and where.
    #[must_use]
    pub fn greatest(&self) -> Extreme {
        let most = self.least_of(-1.0, |node| node.has(BETWEEN | BEYOND)).unwrap_or(NOWHERE);
        Extreme { value: -most.value, ..most }
    }

    /// The least thickness over the ground between the shots; none where there is no such ground.
    #[must_use]
    pub fn least_between_shots(&self) -> Option<Extreme> {
        self.least_of(1.0, |node| node.has(BETWEEN))
    }

    /// The least thickness on extended ground; none where there is no such ground.
    #[must_use]
    pub fn least_beyond(&self) -> Option<Extreme> {
        self.least_of(1.0, |node| node.has(BEYOND))
    }

    /// The least thickness at a shot of the region; none where there is no shot.
    #[must_use]
    pub fn least_at_shots(&self) -> Option<Extreme> {
        self.least_of(1.0, |node| node.has(IN_REGION) && node.shot().is_some())
    }

    fn least_of(&self, sense: f64, counts: impl Fn(&Node) -> bool) -> Option<Extreme> {
        let mut value = f64::INFINITY;
        for (facet, thickness) in self.by_facet() {
            for (node, t) in facet.ground.nodes().iter().zip(thickness) {
                if sense * t < value && counts(node) {
                    value = sense * t;
                }
            }
        }
        let mut tied = Tied::at(value);
        for (facet, thickness) in self.by_facet() {
            for (node, t) in facet.ground.nodes().iter().zip(thickness) {
                if tied.includes(sense * t) && counts(node) {
                    tied.look(node, facet.ground.origin());
                }
            }
        }
        tied.extreme()
    }
}

/// A cut always has triangles; this stands for one that has none.
const NOWHERE: Extreme = Extreme { value: 0.0, at: Point::new(0.0, 0.0), shot: None };
