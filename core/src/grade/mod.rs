//! Where the new surface goes.

pub mod thickness_field;
