mod hand;
mod laws;
mod support;
