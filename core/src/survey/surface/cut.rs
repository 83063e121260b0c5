//! The surface over one region, as triangles that tile it exactly.

use crate::geometry::Point;

/// What is known of the ground under a triangle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Ground {
    /// Between shots.
    Surveyed,
    /// Between shots, but across a notch or hole whose corners were not shot.
    Spanning,
    /// Beyond the shots: extended from the nearest ones by the slope of the fitted plane.
    Beyond,
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

/// A highest or lowest point.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Extreme {
    /// The height (or thickness) there.
    pub value: f64,
    /// Where.
    pub at: Point,
    /// The shot, if it is at one.
    pub shot: Option<usize>,
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

/// Integrals over the region, about a local origin: the net volume under any plane follows from them.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Integrals {
    /// Origin the first moments are about.
    pub origin: Point,
    /// Area.
    pub area: f64,
    /// Integral of x minus the origin's.
    pub x: f64,
    /// Integral of y minus the origin's.
    pub y: f64,
    /// Integral of the old slab's height.
    pub height: f64,
}

/// The surface over one region, as triangles that tile it exactly.
#[derive(Clone, Debug)]
pub struct Cut {
    triangles: Vec<Triangle>,
}

impl Cut {
    /// The triangles.
    pub fn triangles(&self) -> impl ExactSizeIterator<Item = Triangle> + '_ {
        self.triangles.iter().copied()
    }

    /// The area.
    #[must_use]
    pub fn area(&self) -> f64 {
        unimplemented!()
    }

    /// The area of one kind of ground.
    #[must_use]
    pub fn area_of(&self, _ground: Ground) -> f64 {
        unimplemented!()
    }

    /// Area and first moments and the integral of the height.
    #[must_use]
    pub fn integrals(&self) -> Integrals {
        unimplemented!()
    }

    /// Highest and lowest point between the shots; none when no part of the region is.
    #[must_use]
    pub fn relief(&self) -> Option<Relief> {
        unimplemented!()
    }

    /// Highest and lowest point beyond the shots; none when no part of the region is.
    #[must_use]
    pub fn relief_beyond(&self) -> Option<Relief> {
        unimplemented!()
    }

    /// How much less and how much more volume the other triangulations of the same shots would put
    /// under the surface (both from 0 up).
    #[must_use]
    pub fn ambiguity(&self) -> (f64, f64) {
        unimplemented!()
    }
}
