//! Flatness and levelness of a floor from readings along lines.
//!
//! Readings stand 12 in (or 300 mm) apart. `q` is the bend of the profile over two spacings, `z` its rise over ten; FF and FL are a
//! constant over three standard deviations and the size of the mean. The constants are those of the common standard for
//! F-numbers, remembered, not read: see [`Factor`].

mod class;
mod combine;
mod factor;
mod floor;
mod layout;
mod line;
mod notes;
mod number;
mod plan;
mod profile;
mod said;
mod spread;
mod straightedge;
#[cfg(test)]
mod tests;

pub use class::{ASKED, Class, Judged, Limits, Verdict};
pub use combine::{Part, combined};
pub use factor::Factor;
pub use floor::{Floor, FloorLine, Judging, LineInput, SectionFlatness, SectionInput};
pub use layout::{LinePlace, least_z_readings};
pub use line::{LAG, LineFlatness};
pub use number::FNumber;
pub use profile::{LEAST_READINGS, Profile, READING, Spacing};
pub use spread::Spread;
pub use straightedge::{EDGE_LENGTH, EdgeClass, Placement, Straightedge, about_ff};
