//! All tests that span crates, in one binary.

#[cfg(test)]
mod bad_input;
#[cfg(test)]
mod bindings;
#[cfg(test)]
mod examples;
mod fresh;
#[cfg(test)]
mod laws;
#[cfg(test)]
mod published;
