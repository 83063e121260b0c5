//! Tests of the verdict.

mod golden;
mod hand;
mod laws;
mod support;
mod tear_out;
