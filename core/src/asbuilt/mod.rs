//! Was it built so: the floor that was poured, held against what was planned.

pub mod flatness;
pub mod operations;
