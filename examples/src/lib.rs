//! Placeholder crate root.
