//! Laws that hold for every input: what may not change an answer does not, and parts add up to the whole.

pub(crate) mod random;
