//! One short function per operation and system of units.
//!
//! Made from the table of operations; change the table and run `BLESS=1 cargo test -p overslab-tests fresh`.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]

#[rustfmt::skip]
pub mod grade;
#[rustfmt::skip]
pub mod order;
#[cfg(feature = "specimen")]
#[rustfmt::skip]
pub mod specimen;
