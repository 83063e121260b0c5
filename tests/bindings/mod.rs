//! The bindings answer as the core does. The C library is called as it was built, loaded from beside the test program.

mod c_arrays;
mod c_bad_input;
mod c_header;
mod c_library;
mod c_misuse;
mod c_names;
mod c_reading;
mod c_records;
mod c_request;
mod c_scalars;
mod c_signatures;
mod c_texts;
mod c_threads;
mod c_values;
mod sheet_bad_input;
mod sheet_border;
mod sheet_names;
mod sheet_values;
mod vba;
