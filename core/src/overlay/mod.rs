//! How the new concrete relates to the old, how thick it has to be, and what it carries.

pub mod operations;
