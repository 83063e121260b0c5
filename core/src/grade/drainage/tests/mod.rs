mod hand;
mod laws;
