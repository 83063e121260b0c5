//! Overlay thickness by the equations of the Corps of Engineers, and effective thickness by the AASHTO guide.
//!
//! Symbols: `required_new` (hd) is the single slab that the new concrete would need on the same ground, `required_old` (he) the one that the
//! old concrete would need, `old_slab` (hE) the slab that is there, C its condition factor. Other manuals use the same letters for other things;
//! names are used here instead.

mod condition;
mod effective;
mod equivalent;
mod required;
#[cfg(test)]
mod tests;

pub use condition::{Condition, condition_factor};
pub use effective::{Effective, FACTOR, effective_bonded, effective_unbonded};
pub use equivalent::equivalent;
pub use required::{CONDITION, Required, SLAB, required};
