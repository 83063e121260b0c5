//! The rows.

mod approach;
mod breaks;

pub use approach::APPROACH;
pub use breaks::{CREST_CLEARANCE, SAG_BREAK};
mod answer;
mod clearances;
mod things;

pub use clearances::CLEARANCES;
