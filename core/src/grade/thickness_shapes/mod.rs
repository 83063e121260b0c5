//! Shapes of a field over the work: areas thinner or thicker than a depth, contour lines, bands, a histogram.
//!
//! A field is the thickness, the height of the old slab or the height of the finish: linear over each triangle. Its contour
//! lines are then straight over each triangle, with corners on the sides, and every area and volume between two levels is a
//! closed formula; nothing is sampled.
//!
//! What lies at a level belongs to what is above it. A corner that is off a level by no more than its heights are rounded lies
//! at it. Where the field only touches a level, from above or below, there is no line.

mod areas;
mod bands;
mod contours;
mod field;
mod histogram;
mod labelled;
mod levels;
mod parts;
mod quantiles;
mod rings;
mod sheet;
mod strip;
#[cfg(test)]
pub(in crate::grade) mod tests;
mod thin;

pub use areas::{AreaPart, PartExtreme, Side, ThicknessAreas};
pub use bands::{Band, BandPart};
pub use contours::Contour;
pub use field::Field;
pub use histogram::{Bin, Histogram};
pub(in crate::grade) use labelled::{LabelledPart, labelled_parts};
pub use levels::{ELEVATION_LEVEL, INTERVAL, Levels, MOST_LEVELS};
pub use quantiles::{Quantile, SHARE};
pub use rings::Shape;
pub(in crate::grade) use thin::{ThinPart, ThinParts};
