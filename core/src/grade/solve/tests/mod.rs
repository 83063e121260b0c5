//! Solved finishes: by hand, two whole jobs, laws, and the proof put to the test.

mod conflicts;
mod drain_place;
mod facets;
mod hand;
mod jobs;
mod laws;
mod proof;
mod support;
