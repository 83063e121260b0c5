mod hand;
mod laws;
mod steps;
mod support;
