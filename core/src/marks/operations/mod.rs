//! The rows.

mod asked;
mod columns;
mod morning_check;
mod set_out;
mod tables;

pub use morning_check::MORNING_CHECK;
pub use set_out::MARKS;
