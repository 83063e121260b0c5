//! The rows of the grade.

mod areas;
mod bands;
mod clean_up;
mod columns;
mod contours;
mod drains;
mod facet_list;
mod facets;
mod fall;
mod finish;
mod histogram;
mod levels;
mod patterns;
mod raised;
mod second_look;
mod section;
mod standing_water;
mod thickness;
mod zones;

pub use areas::THICKNESS_AREAS;
pub use bands::THICKNESS_BANDS;
pub use clean_up::{FILL_LOW_SPOTS, FILL_PONDS, GRIND_HIGH_SPOTS};
pub use contours::{FINISH_CONTOURS, LineForm, SURVEY_CONTOURS, THICKNESS_CONTOURS};
pub use drains::{FINISH_TO_DRAIN, FINISH_TO_TRENCH};
pub use facet_list::FINISH_FACETS;
pub use facets::{FINISH_FROM_FACETS, FINISH_FROM_PLANES};
pub use fall::{DROP, FALL, TRIANGULAR_PRISM};
pub use finish::{FINISH_AT_LEAST, FINISH_FROM_POINTS, FINISH_LEVEL, FINISH_TO_EDGE};
pub use histogram::THICKNESS_HISTOGRAM;
pub use patterns::{FINISH_CROWN, FINISH_TO_VALLEY, FINISH_WITH_STRIP};
pub use raised::FINISH_RAISED;
pub use second_look::SECOND_LOOK;
pub use section::SECTION;
pub use standing_water::FINISH_STANDING_WATER;
pub use thickness::THICKNESS;
pub use zones::THICKNESS_ZONES;
