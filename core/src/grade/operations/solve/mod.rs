//! The rows of the solver: the finish of least concrete, conflicts, a sweep.

mod asked;
mod conflicts;
mod finish;
mod sweep;

pub use conflicts::FINISH_CONFLICTS;
pub use finish::FINISH_SOLVED;
pub use sweep::FINISH_SWEEP;
