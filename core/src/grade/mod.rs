//! Where the new surface goes.

pub mod drainage;
pub mod fall;
pub mod finish;
pub mod operations;
pub mod prism;
pub mod second_look;
pub mod sections;
pub mod solve;
pub mod standing_water;
pub mod thickness;
pub mod thickness_field;
pub mod thickness_shapes;
pub mod thin_zones;
pub mod zones;
