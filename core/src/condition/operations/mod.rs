//! The rows of the old slab's condition.

mod results;
mod tear_out;
mod verdict;

pub use tear_out::TEAR_OUT;
pub use verdict::{CONDITION, CONDITION_QUICK};
