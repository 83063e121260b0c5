//! Exact integrals of finish minus old slab.
//!
//! The finish is plane over a facet and the old slab over a triangle, so the thickness is linear over each triangle.
//! Volumes, areas below a depth and extremes are then closed formulas; nothing is sampled.

mod extremes;
#[cfg(test)]
mod tests;

use crate::geometry::zero_line::{self, Above};
use crate::geometry::{Plane, Point, Sum};
use crate::survey::surface::Cut;

/// Why there is no thickness field.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ThicknessError {
    /// A facet's plane is not finite.
    #[error("the plane of facet {facet} is not a number")]
    NotFinite {
        /// Which facet.
        facet: usize,
    },
    /// No facet given.
    #[error("a thickness field needs at least one facet")]
    NoFacet,
}

/// One facet of the finish over its part of the old slab.
#[derive(Clone, Copy, Debug)]
pub struct Facet<'a> {
    /// The old slab under the facet.
    pub ground: &'a Cut,
    /// The finish.
    pub finish: Plane,
}

/// The part of the facet or region that is thicker than some depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Over {
    /// Integral of thickness less depth where that is positive.
    pub volume: f64,
    /// Area where it is positive: what `volume` gains when the finish rises by one unit.
    pub area: f64,
    /// Integral over that area of x less the origin's: what `volume` gains per unit of slope in x about the origin.
    pub moment_x: f64,
    /// Integral over that area of y less the origin's.
    pub moment_y: f64,
    /// What the moments are about.
    pub origin: Point,
}

/// Finish minus old slab over one region or several facets.
#[derive(Clone, Debug)]
pub struct ThicknessField<'a> {
    facets: Vec<Facet<'a>>,
    /// The thickness at every node of every facet's cut, one facet after the other.
    thickness: Vec<f64>,
    area: f64,
    fill: f64,
    high_spots: f64,
}

impl<'a> ThicknessField<'a> {
    /// The thickness under one plane.
    ///
    /// # Errors
    /// When the plane is not finite.
    pub fn new(ground: &'a Cut, finish: Plane) -> Result<Self, ThicknessError> {
        Self::over_facets(vec![Facet { ground, finish }])
    }

    /// The thickness under several facets, each over its own cut.
    ///
    /// # Errors
    /// When there is no facet or a plane is not finite.
    pub fn over_facets(facets: Vec<Facet<'a>>) -> Result<Self, ThicknessError> {
        if facets.is_empty() {
            return Err(ThicknessError::NoFacet);
        }
        if let Some(facet) = facets.iter().position(|facet| !facet.finish.is_finite()) {
            return Err(ThicknessError::NotFinite { facet });
        }
        let nodes = facets.iter().map(|facet| facet.ground.nodes().len()).sum();
        let mut thickness = Vec::with_capacity(nodes);
        for Facet { ground, finish } in &facets {
            let finish = finish.moved_by(opposite(ground.origin()));
            let at_node =
                |node: &crate::survey::surface::Node| finish.height_at(Point::new(node.x, node.y)) - node.z;
            thickness.extend(ground.nodes().iter().map(at_node));
        }
        let area = facets.iter().map(|facet| facet.ground.area()).collect::<Sum>().value();
        let mut field = Self { facets, thickness, area, fill: 0.0, high_spots: 0.0 };
        (field.fill, field.high_spots) = field.volumes_about(0.0);
        Ok(field)
    }

    /// The facets.
    #[must_use]
    pub fn facets(&self) -> &[Facet<'a>] {
        &self.facets
    }

    /// The area.
    #[must_use]
    pub fn area(&self) -> f64 {
        self.area
    }

    /// Volume between old slab and finish, high spots taken off.
    #[must_use]
    pub fn net(&self) -> f64 {
        self.fill - self.high_spots
    }

    /// Volume where the finish is above the old slab.
    #[must_use]
    pub fn fill(&self) -> f64 {
        self.fill
    }

    /// Volume of the old slab above the finish, from 0 up.
    #[must_use]
    pub fn high_spots(&self) -> f64 {
        self.high_spots
    }

    /// Net volume over area.
    #[must_use]
    pub fn mean(&self) -> f64 {
        self.net() / self.area
    }

    /// Area thinner than a depth. A corner that is off the depth by no more than its heights are rounded lies at it, and
    /// what lies at the depth is not thinner.
    #[must_use]
    pub fn area_thinner_than(&self, depth: f64) -> f64 {
        let hair = self.rounding();
        let mut area = Sum::new();
        for (piece_area, t) in self.pieces() {
            let over = t.map(|t| settled(t, depth, hair) - depth);
            area.add(piece_area - zero_line::area_above(piece_area, over));
        }
        area.value()
    }

    /// How much rounding can have moved a thickness.
    fn rounding(&self) -> f64 {
        let heights = self.by_facet().flat_map(|(facet, thickness)| {
            facet.ground.nodes().iter().zip(thickness).map(|(node, t)| node.z.abs() + t.abs())
        });
        rounding_of(heights.fold(0.0, f64::max))
    }

    /// Volume missing to a depth: integral of depth less thickness where that is positive.
    #[must_use]
    pub fn volume_missing_to(&self, depth: f64) -> f64 {
        self.volumes_about(depth).1
    }

    /// The part thicker than a depth, facet by facet, with the first moments of its area: together the gradient of its
    /// volume by the facet's height and slopes.
    pub fn over(&self, depth: f64) -> impl Iterator<Item = Over> + '_ {
        self.by_facet().map(move |(facet, thickness)| {
            let mut above = Above::default();
            let nodes = facet.ground.nodes();
            for piece in facet.ground.pieces() {
                let corners = piece.corners.map(|corner| {
                    let node = &nodes[corner as usize];
                    [node.x, node.y, thickness[corner as usize] - depth]
                });
                above.add(piece.area, corners);
            }
            let Above { volume, area, moment_x, moment_y } = above;
            let [volume, area, moment_x, moment_y] =
                [volume, area, moment_x, moment_y].map(|sum| sum.value());
            Over { volume, area, moment_x, moment_y, origin: facet.ground.origin() }
        })
    }

    /// Volume above and below the surface that lies `depth` over the old slab, both from 0 up.
    fn volumes_about(&self, depth: f64) -> (f64, f64) {
        let (mut above, mut below) = (Sum::new(), Sum::new());
        for (facet, thickness) in self.by_facet() {
            // Few terms are summed plainly, and only their sums with care: as exact, and much quicker.
            for few in facet.ground.pieces().chunks(16) {
                let mut part = (0.0, 0.0);
                for piece in few {
                    let [a, b, c] = piece.corners;
                    let at = |corner: u32| thickness[corner as usize] - depth;
                    let (over, under) = zero_line::volumes(piece.area, [at(a), at(b), at(c)]);
                    part = (part.0 + over, part.1 + under);
                }
                above.add(part.0);
                below.add(part.1);
            }
        }
        (above.value(), below.value())
    }

    /// Area and corner thicknesses of every triangle.
    fn pieces(&self) -> impl Iterator<Item = (f64, [f64; 3])> + '_ {
        self.by_facet().flat_map(|(facet, thickness)| {
            let pieces = facet.ground.pieces().iter();
            pieces.map(move |piece| (piece.area, piece.corners.map(|corner| thickness[corner as usize])))
        })
    }

    /// Every facet with the thicknesses at the nodes of its cut.
    fn by_facet(&self) -> impl Iterator<Item = (&Facet<'a>, &[f64])> + Clone + '_ {
        let mut start = 0;
        self.facets.iter().map(move |facet| {
            let end = start + facet.ground.nodes().len();
            let thickness = &self.thickness[start..end];
            start = end;
            (facet, thickness)
        })
    }
}

/// How much rounding can move a difference of two heights so far from the datum: some last digits of either.
pub(in crate::grade) const fn rounding_of(height: f64) -> f64 {
    16.0 * f64::EPSILON * height
}

/// A value, or the level where it is off that by no more than a hair.
#[inline]
pub(in crate::grade) fn settled(value: f64, level: f64, hair: f64) -> f64 {
    if (value - level).abs() <= hair { level } else { value }
}

fn opposite(point: Point) -> Point {
    Point::new(-point.x, -point.y)
}
