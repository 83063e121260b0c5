//! How the new concrete relates to the old, how thick it has to be, and what it carries.
//!
//! `thickness` holds the overlay equations, `strength` what a slab on ground carries, `minimums` how thin each kind may be in practice,
//! `preparation` what the old surface must be like, `edge_key` what is cut where the floor meets a given height,
//! `moisture` when a floor is dry enough to be covered, `weight` what the new concrete weighs.

pub mod bond;
pub mod carries;
pub mod edge_key;
pub mod minimums;
pub mod moisture;
pub mod operations;
pub mod preparation;
pub mod strength;
pub mod thickness;
pub mod weight;

pub use bond::Bond;
