//! Where the new surface goes.

pub mod fall;
pub mod operations;
pub mod prism;
pub mod thickness_field;
