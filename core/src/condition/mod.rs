//! The old slab: what was found on it, and what follows from that.

pub mod operations;
