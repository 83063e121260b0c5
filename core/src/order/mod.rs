//! What to order: volumes, allowances, the plant's step, trucks.

pub mod list;
pub mod operations;
pub mod trucks;
pub mod volume;
