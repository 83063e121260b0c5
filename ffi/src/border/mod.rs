//! The plumbing between C and the engine: pointers in, values through, a status and a message out.
//!
//! Rules of the border, kept here and nowhere else:
//! - a pointer is read or written only after it was found not null and its length not negative;
//! - nothing but texts is written before the call has succeeded, save the NaN of bad array elements;
//! - a panic, which would be a fault of ours, becomes the status `INTERNAL`;
//! - pointers to numbers need no alignment: callers without a compiler of their own cannot promise it.

mod array;
mod bytes_in;
mod cells;
mod guard;
mod handle;
pub(crate) mod json;
mod message;
mod notes;
pub(crate) mod read;
pub(crate) mod record;
mod request;
mod row;
pub(crate) mod scalar;
mod text_in;
mod text_out;

pub(crate) use array::{Input, Numbers, Output};
pub(crate) use bytes_in::BytesIn;
pub(crate) use cells::Blocks;
pub(crate) use guard::status;
pub(crate) use handle::{Passed, free};
pub(crate) use message::Message;
pub(crate) use notes::Notes;
pub(crate) use request::{Given, Request};
pub(crate) use row::{record_type, row};
pub(crate) use text_in::TextIn;
pub(crate) use text_out::{TextOut, text_to_text};
