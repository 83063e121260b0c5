//! All benches, in one binary.
#![allow(missing_docs, reason = "criterion's macros write undocumented functions")]
#![allow(clippy::unwrap_used, reason = "a bench has nobody to tell of a failure")]

mod floor;
mod scalar;
mod scan;
mod site;
mod solve;

use criterion::{criterion_group, criterion_main};

criterion_group!(benches, scalar::benches, floor::benches, scan::benches, solve::benches, site::benches);
criterion_main!(benches);
