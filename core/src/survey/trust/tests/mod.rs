mod books;
mod found;
mod laws;
mod mistakes;
mod weighed;
