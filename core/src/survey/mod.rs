//! From rod readings to the surface of the old slab.

pub mod surface;
