//! The old slab: what was found on it, and what follows from that.
//!
//! ```
//! use overslab::condition::{FindingsInput, Take};
//! use overslab::condition::findings::{Settlement};
//!
//! let found = FindingsInput { settlement: Some(Settlement::Live), ..FindingsInput::default() };
//! let verdict = found.verdict()?;
//! assert_ne!(verdict.take, Take::Unbonded);
//! # Ok::<(), Box<overslab::failure::Failure>>(())
//! ```

mod asks;
mod declare;
pub mod findings;
mod judge;
mod measured;
pub mod operations;
pub mod quick;
mod record;
mod resolve;
pub mod rule;
mod rules;
mod say;
pub mod tear_out;
#[cfg(test)]
mod tests;
mod verdict;

pub use asks::Ask;
pub use declare::UNKNOWN;
pub use findings::{Finding, Findings, FindingsInput};
pub use quick::QuickInput;
pub use record::FINDINGS;
pub use resolve::{Resolved, TakenFinding};
pub use rule::{Effect, Rule, Standing, Way};
pub use rules::rules;
pub use verdict::{Reason, Take, Verdict, WayVerdict};
