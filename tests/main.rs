//! All tests that span crates, in one binary.

mod fresh;
