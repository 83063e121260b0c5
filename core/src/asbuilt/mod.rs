//! Was it built so: the floor that was poured, held against what was planned.

mod checks;
mod concrete;
mod deviations;
mod falls;
pub mod flatness;
mod mends;
mod notes;
pub mod operations;
mod puddles;
mod said;
#[cfg(test)]
mod tests;
mod whole;
mod words;

pub use checks::Check;
pub use concrete::{Concrete, Delivered, POURED};
pub use deviations::{Deviations, ShotDeviation, TOLERANCE};
pub use falls::FacetFall;
pub use mends::{Mend, Mending};
pub(crate) use notes::on_new_floor;
pub use puddles::{Puddle, SeenPuddle};
pub use whole::{AsBuilt, Asked};
