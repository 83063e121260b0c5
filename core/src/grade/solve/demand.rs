//! What a site demands of the finish, each under a name.

use crate::geometry::{Point, Region};
use crate::quantity::{Elevation, Length, Slope, Typed};

/// One demand.
#[derive(Clone, Debug, PartialEq)]
pub struct Demand {
    /// What it is called in every answer: `side door`.
    pub name: String,
    /// What it demands.
    pub wants: Wants,
    /// Whether it stands firm: it is kept, and no conflict blames it or asks to relax it.
    pub firm: bool,
    /// How much it matters where demands contradict one another: what breaking it by 1/4 in, or a fall by 0.1 %, weighs against
    /// the others. 1 is usual.
    pub weight: f64,
}

impl Demand {
    /// A demand of the usual weight.
    #[must_use]
    pub fn new(name: impl Into<String>, wants: Wants) -> Self {
        Self { name: name.into(), wants, firm: false, weight: 1.0 }
    }

    /// The same demand standing firm.
    #[must_use]
    pub fn firmly(mut self) -> Self {
        self.firm = true;
        self
    }
}

/// What may be demanded of the finish. Facets are named by their own name or by what they fall to; nobody named means all.
#[derive(Clone, Debug, PartialEq)]
pub enum Wants {
    /// A least thickness, over the whole work or a zone of it. The margin comes on top.
    LeastThickness {
        /// The thickness.
        least: Length,
        /// Where; everywhere if there is none.
        zone: Option<Region>,
    },
    /// A greatest thickness.
    GreatestThickness {
        /// The thickness.
        most: Length,
        /// Where; everywhere if there is none.
        zone: Option<Region>,
    },
    /// A least fall toward an outlet.
    LeastFall {
        /// The fall.
        fall: Slope,
        /// Where the water leaves.
        toward: Outlet,
        /// Which facets.
        on: Option<String>,
    },
    /// A greatest fall toward an outlet.
    GreatestFall {
        /// The fall.
        fall: Slope,
        /// Where the water leaves.
        toward: Outlet,
        /// Which facets.
        on: Option<String>,
    },
    /// A greatest fall in whatever direction.
    Steepest {
        /// The fall.
        fall: Slope,
        /// Which facets.
        on: Option<String>,
    },
    /// A greatest rise or fall along a line. None at all makes the fall square to it.
    CrossFall {
        /// The rise or fall.
        fall: Slope,
        /// The line.
        along: Line,
        /// Which facets.
        on: Option<String>,
    },
    /// A level line: no two heights along it differ by more than a tolerance.
    Level {
        /// The line.
        along: Line,
        /// The tolerance; none for dead level.
        tolerance: Length,
    },
    /// Heights that the finish stays at or below.
    AtMost(Heights),
    /// Heights that the finish stays at or above.
    AtLeast(Heights),
    /// Heights that the finish has.
    Exactly(Heights),
}

/// Where water leaves.
#[derive(Clone, Debug, PartialEq)]
pub enum Outlet {
    /// Over an edge of the outline.
    Edge(String),
    /// Along a line, from both sides: a valley, a trench.
    Line([Point; 2]),
    /// At a place: an area drain.
    Place(Point),
}

/// A line in plan.
#[derive(Clone, Debug, PartialEq)]
pub enum Line {
    /// An edge of the outline.
    Edge(String),
    /// From place to place; one place is a line too.
    Places(Vec<Point>),
}

/// A height along a line.
#[derive(Clone, Debug, PartialEq)]
pub struct Heights {
    /// Where.
    pub along: Line,
    /// The height.
    pub elevation: Elevation,
}

/// What a demand is counted in, and so what its price is by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measured {
    /// In a length: a thickness, a height, a tolerance.
    Length,
    /// In a fall.
    Slope,
}

impl Wants {
    /// What it is counted in.
    #[must_use]
    pub const fn measured(&self) -> Measured {
        match self {
            Self::LeastFall { .. }
            | Self::GreatestFall { .. }
            | Self::Steepest { .. }
            | Self::CrossFall { .. } => Measured::Slope,
            _ => Measured::Length,
        }
    }
}

impl Wants {
    /// Its figure: a thickness, a fall, a tolerance, an elevation, in base units.
    pub(super) fn figure(&self) -> f64 {
        match self {
            Self::LeastThickness { least: figure, .. }
            | Self::GreatestThickness { most: figure, .. }
            | Self::Level { tolerance: figure, .. } => figure.base(),
            Self::LeastFall { fall, .. }
            | Self::GreatestFall { fall, .. }
            | Self::Steepest { fall, .. }
            | Self::CrossFall { fall, .. } => fall.base(),
            Self::AtMost(heights) | Self::AtLeast(heights) | Self::Exactly(heights) => {
                heights.elevation.base()
            }
        }
    }

    /// 1 where a greater figure tightens it, else -1.
    pub(super) const fn sense(&self) -> f64 {
        match self {
            Self::LeastThickness { .. } | Self::LeastFall { .. } | Self::AtLeast(_) | Self::Exactly(_) => 1.0,
            _ => -1.0,
        }
    }

    /// Whether its figure is a height, which may be less than none.
    #[must_use]
    pub const fn is_height(&self) -> bool {
        matches!(self, Self::AtMost(_) | Self::AtLeast(_) | Self::Exactly(_))
    }

    /// How far it can be tightened, or loosened for -1, before its figure is none.
    pub(super) fn room(&self, sign: f64) -> f64 {
        if self.is_height() || sign == self.sense() { f64::INFINITY } else { self.figure() }
    }
}

impl Measured {
    /// What prices and weights are told by, in base units: 1/4 in, or 0.1 %.
    #[must_use]
    pub const fn step(self) -> f64 {
        match self {
            Self::Length => 0.25 * 0.0254,
            Self::Slope => 0.001,
        }
    }
}
