//! Finishes of facets: how they are given, what they are refused for, what they weigh.

mod covering;
mod given;
mod laws;
mod patterns;
mod refused;
pub(in crate::grade) mod support;
