mod books;
mod found;
