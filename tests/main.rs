//! All tests that span crates, in one binary.

#[cfg(test)]
mod bindings;
mod fresh;
#[cfg(test)]
mod published;
