//! Overslab: the computation engine for pouring new concrete floors over old ones.
//!
//! A few rod readings and a tape go in; where the new surface goes, how thick it gets everywhere and what to order come
//! out. Modules follow the questions of the job, see `DEVELOPERS.md`.
#![forbid(unsafe_code)]

/// The units library behind [`mod@quantity`]: its traits are part of this crate's interface.
// Its helper macros are found by name only.
#[macro_use]
pub extern crate uom;

#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
pub struct Readme;

pub mod asbuilt;
pub mod assumption;
pub mod basis;
pub mod caution;
pub mod clearance;
pub mod condition;
mod elementary;
pub mod failure;
pub mod geometry;
pub mod grade;
pub mod job;
pub mod judged;
mod least_thickness;
mod linear;
pub mod marks;
pub mod note;
pub mod operation;
pub mod operations;
pub mod order;
pub mod overlay;
pub mod quantity;
#[cfg(feature = "specimen")]
pub mod specimen;
pub mod survey;
