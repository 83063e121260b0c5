//! The rows of the grade.

mod fall;
mod finish;
mod second_look;
mod thickness;

pub use fall::{DROP, FALL, TRIANGULAR_PRISM};
pub use finish::{FINISH_AT_LEAST, FINISH_FROM_POINTS, FINISH_LEVEL, FINISH_TO_EDGE};
pub use second_look::SECOND_LOOK;
pub use thickness::THICKNESS;
