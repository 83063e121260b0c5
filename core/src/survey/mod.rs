//! From rod readings to the surface of the old slab.

pub mod clean_up;
mod fixed;
pub mod input;
pub mod level_book;
pub mod low_spots;
pub mod names;
pub mod old_slab;
pub mod operations;
pub mod outline;
pub mod points;
pub mod precision;
pub mod read;
pub mod surface;
mod tolerance;
pub mod trust;
#[cfg(test)]
mod varied;
pub(crate) mod words;

pub use old_slab::Survey;
pub use tolerance::Tolerance;
