//! Overslab: the computation engine for pouring new concrete floors over old ones.
#![forbid(unsafe_code)]

pub mod geometry;
pub mod survey;
