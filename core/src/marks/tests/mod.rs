//! Laws and hand cases of the marks.

mod hand;
mod laws;
mod morning;
mod refused;
mod support;
