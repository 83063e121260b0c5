//! What the new floor does to doors, steps, fittings and the ground outside.

pub mod approach;
pub mod operations;
