//! The C library `liboverslab`: every operation of the engine behind plain C functions.
//!
//! `border` holds the plumbing and the only pointers that are read or written; `generated` holds one short function per
//! operation, made from the table of operations; the other files hold the exports that belong to no operation. The header
//! `include/overslab.h` is made from these files.

pub mod about;
pub mod answer;
#[cfg_attr(
    not(feature = "specimen"),
    allow(dead_code, unused_imports, reason = "the table need not use every shape")
)]
mod border;
pub mod call;
pub mod generated;
pub mod sheet;
