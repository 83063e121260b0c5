mod facets;
mod hand;
mod laws;
pub(in crate::grade) mod support;
