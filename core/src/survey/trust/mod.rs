//! Trust in the book: what of it may be wrong, and what it does not cover.
//!
//! | asked | here |
//! |---|---|
//! | which readings may be booked wrong, and how | [`suspects`] |
//! | the slab without some of its shots | [`Survey::without_named`](crate::survey::Survey::without_named) |

pub mod coverage;
mod floor;
mod graduation;
mod neighbours;
pub mod pegs;
mod plane;
mod predictor;
pub mod recheck;
mod rows;
mod said;
mod scale;
mod search;
mod slips;
mod suspects;
mod system;
#[cfg(test)]
mod tests;

pub use graduation::Graduation;
pub use slips::SlipKind;
pub use suspects::{FEWEST, LEAST_SLIP, Suspect, Suspects, Verdict, suspects};

use floor::Floor;
