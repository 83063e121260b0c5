//! The rows.
