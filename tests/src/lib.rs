//! The generators of the bindings, and what the tests of several crates share.

pub mod as_cells;
pub mod c_header;
pub mod generate;
