//! The rows of the survey.

mod book;
mod files;
mod outline;
mod page;
mod points;
mod points_axes;
mod points_thin;
mod slab;
mod triangles;
mod trust;

pub use book::{LEVEL_BOOK, ROD_ELEVATION};
pub use files::{READ_POINTS, READ_SURFACE};
pub use outline::{OUTLINE, OUTLINE_FROM_CORNERS, OUTLINE_FROM_SIDES};
pub use points::{POINTS_FROM_TABLE, SURVEY_FROM_POINTS};
pub use points_axes::{POINTS_ALONG_WALL, POINTS_TO_AXES};
pub use points_thin::{PART_STRAYS, THIN_POINTS};
pub use slab::{Allowed, SURVEY_FROM_GRID, SURVEY_FROM_RODS, SURVEY_FROM_SHOTS};
pub use triangles::SURVEY_TRIANGLES;
pub use trust::{BENCHMARK_RECHECK, SURVEY_COVERAGE, SURVEY_SUSPECTS, SURVEY_WITHOUT, TWO_PEG_TEST};

pub(super) use super::points::{HEIGHT, PLACE};
