//! The record types.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

