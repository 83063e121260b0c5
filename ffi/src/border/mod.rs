//! The plumbing between C and the engine: pointers in, values through, a status and a message out.
//!
//! Rules of the border, kept here and nowhere else:
//! - a pointer is read or written only after it was found not null and its length not negative;
//! - nothing is written but the message before the call has succeeded, save the NaN of bad array elements;
//! - a panic, which would be a fault of ours, becomes the status `INTERNAL`;
//! - pointers need no alignment: callers without a compiler of their own cannot promise it.

mod array;
mod guard;
pub(crate) mod json;
mod message;
mod row;
pub(crate) mod scalar;
pub(crate) mod terms;
mod text_in;
mod text_out;

pub(crate) use array::{Input, Output};
pub(crate) use guard::status;
pub(crate) use message::Message;
pub(crate) use row::row;
pub(crate) use text_in::TextIn;
pub(crate) use text_out::{TextOut, text_to_text};
