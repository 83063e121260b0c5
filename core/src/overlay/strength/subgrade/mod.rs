//! The modulus of subgrade reaction, each source by name. Where two disagree the lower is taken.

mod bearing_ratio;
mod resilient;
mod soil;
mod subbase;

pub use bearing_ratio::{BEARING_RATIO, Correlation, from_bearing_ratio};
pub use resilient::{RESILIENT, from_resilient};
pub use soil::{OfSoil, Soil, of_soil};
pub use subbase::{SUBBASE, Subbase, UNDER, with_subbase};
