//! Sections: old slab and finish along a line, exactly.
//!
//! Along a straight line both surfaces are straight between the sides of triangles and facets that it crosses. Stations stand at
//! all of these, at the corners of the line, and where it enters and leaves the work; nothing is sampled.

mod along;
mod sampled;
mod stations;
#[cfg(test)]
mod tests;

pub(crate) use along::{Facet, stretches};
pub use sampled::{MOST_STATIONS, SPACING, Sample};
pub use stations::{Gap, Section, SectionAt, Station};

use crate::quantity::Range;

/// A coordinate of a line: within 100 km.
pub const PLACE: Range = Range::closed(-1.0e5, 1.0e5);
