//! The rows of the survey.

mod book;
mod faces;
mod files;
mod outline;
mod page;
mod points;
mod points_axes;
mod points_thin;
mod slab;
mod standing_water;
mod tin;
mod triangles;
mod trust;

pub use book::{LEVEL_BOOK, ROD_ELEVATION};
pub use faces::SURVEY_FROM_FACES;
pub use files::{READ_POINTS, READ_SURFACE};
pub use outline::{OUTLINE, OUTLINE_FROM_CORNERS, OUTLINE_FROM_SIDES};
pub use points::{POINTS_FROM_TABLE, SURVEY_FROM_POINTS};
pub use points_axes::{POINTS_ALONG_WALL, POINTS_TO_AXES};
pub use points_thin::{PART_STRAYS, THIN_POINTS};
pub use slab::{Allowed, SURVEY_FROM_GRID, SURVEY_FROM_RODS, SURVEY_FROM_SHOTS};
pub use standing_water::STANDING_WATER;
pub use tin::SURVEY_FROM_TIN;
pub use triangles::SURVEY_TRIANGLES;
pub use trust::{BENCHMARK_RECHECK, SURVEY_COVERAGE, SURVEY_SUSPECTS, SURVEY_WITHOUT, TWO_PEG_TEST};

pub(crate) use super::points::{HEIGHT, PLACE};
