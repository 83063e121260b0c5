//! Overslab: the computation engine for pouring new concrete floors over old ones.
#![forbid(unsafe_code)]

// Its helper macros are found by name only.
#[macro_use]
extern crate uom;

pub mod failure;
pub mod geometry;
pub mod grade;
pub mod quantity;
pub mod survey;
