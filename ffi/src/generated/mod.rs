//! One short function per operation and system of units.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.
#![expect(unsafe_code, reason = "exported names, and the caller's promise handed on to the border")]
#![expect(clippy::missing_safety_doc, reason = "the promise stands once, at the head of the header")]
#![allow(rustdoc::broken_intra_doc_links, rustdoc::invalid_html_tags, reason = "the comments are for C")]
#![allow(clippy::too_many_arguments, reason = "C has no other way to take them")]

#[rustfmt::skip]
pub mod codes;
#[rustfmt::skip]
pub mod records;
#[rustfmt::skip]
pub mod survey;
#[rustfmt::skip]
pub mod condition;
#[rustfmt::skip]
pub mod grade;
#[rustfmt::skip]
pub mod marks;
#[rustfmt::skip]
pub mod overlay;
#[rustfmt::skip]
pub mod clearance;
#[rustfmt::skip]
pub mod order;
#[rustfmt::skip]
pub mod asbuilt;
#[rustfmt::skip]
pub mod job;
#[cfg(feature = "specimen")]
#[rustfmt::skip]
pub mod specimen;
