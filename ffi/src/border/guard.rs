//! What stands around every export: the message buffer, and the catch for a panic.

use super::message::Message;
use super::text_out::TextOut;
use overslab::failure::{Code, Failure, Result};
use std::ffi::c_int;
use std::panic::{AssertUnwindSafe, catch_unwind};

/// Runs the body of an export; its failure becomes a status and a message.
#[inline]
pub(crate) fn status(message: Message, body: impl FnOnce() -> Result<()>) -> c_int {
    match caught(message, body) {
        Ok(()) => 0,
        Err(status) => status,
    }
}

/// Runs the body of an export; its failure is said in the message and given as a status.
#[inline]
pub(crate) fn caught<T>(message: Message, body: impl FnOnce() -> Result<T>) -> std::result::Result<T, c_int> {
    let result = without_panic(|| {
        message.open()?;
        body()
    });
    result.map_err(|failure| refuse(message, &failure))
}

/// Runs the body of an export that explains a call; gives the status of that call, and its reason or what the body says.
///
/// # Safety
/// The buffer is null or has its length.
#[expect(unsafe_code, reason = "writes the caller's text")]
pub(crate) unsafe fn explained(text: TextOut, body: impl FnOnce() -> Result<String>) -> c_int {
    let (said, status) = match text.open().and_then(|()| without_panic(body)) {
        Ok(said) => (said, 0),
        Err(failure) => (failure.sentence(), failure.code.number()),
    };
    // SAFETY: as this function's.
    unsafe { text.put(&said) };
    status
}

#[inline]
pub(super) fn without_panic<T>(body: impl FnOnce() -> Result<T>) -> Result<T> {
    // Nothing that the body changes is looked at again after a panic.
    catch_unwind(AssertUnwindSafe(body)).unwrap_or_else(|payload| {
        // A payload may itself panic when it is dropped.
        std::mem::forget(payload);
        Err(internal())
    })
}

#[cold]
fn refuse(message: Message, failure: &Failure) -> c_int {
    message.say(&failure.line());
    failure.code.number()
}

/// The failure for what must not happen.
#[cold]
pub(crate) fn internal() -> Box<Failure> {
    Failure::new(Code::Internal, "").remedy("report this fault")
}

/// The failure for a pointer that is null.
#[cold]
pub(crate) fn null(path: &str) -> Box<Failure> {
    Failure::new(Code::NullPointer, path).allowed("a pointer").remedy("pass an address")
}

/// The failure for a length below zero.
#[cold]
pub(crate) fn negative(path: &str, length: c_int) -> Box<Failure> {
    Failure::new(Code::LengthNegative, path)
        .written(length.to_string())
        .allowed("0 or more")
        .remedy("pass the length")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_becomes_the_status_internal() {
        std::panic::set_hook(Box::new(|_| {}));
        let status = status(Message::none(), || panic!("on purpose"));
        let _ = std::panic::take_hook();
        assert_eq!(status, Code::Internal.number());
    }
}
