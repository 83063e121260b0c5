//! Numbers and whole numbers at the caller's addresses.

use super::guard::{internal, negative, null};
use overslab::failure::Result;
use std::ffi::c_int;

/// Where inputs of one port come from.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Input {
    /// Doubles.
    Numbers(*const f64),
    /// Ints.
    Whole(*const c_int),
}

/// Where results of one port go.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Output {
    /// Doubles.
    Numbers(*mut f64),
    /// Ints.
    Whole(*mut c_int),
}

/// A number of elements, which may not be negative.
pub(super) fn length(path: &str, length: c_int) -> Result<usize> {
    usize::try_from(length).map_err(|_| negative(path, length))
}

#[expect(unsafe_code, reason = "reads the caller's array")]
impl Input {
    /// Refuses null.
    #[inline]
    pub(super) fn check(self, path: &str) -> Result<()> {
        let missing = match self {
            Self::Numbers(start) => start.is_null(),
            Self::Whole(start) => start.is_null(),
        };
        if missing { Err(null(path)) } else { Ok(()) }
    }

    /// The element at that place.
    ///
    /// # Safety
    /// The array is not null and has more elements than `at`.
    #[inline]
    pub(super) unsafe fn get(self, at: usize) -> f64 {
        // SAFETY: as this function's.
        unsafe {
            match self {
                Self::Numbers(start) => start.add(at).read_unaligned(),
                Self::Whole(start) => f64::from(start.add(at).read_unaligned()),
            }
        }
    }
}

/// A result ready to be written.
#[derive(Clone, Copy, Debug)]
pub(super) enum Ready {
    /// A double.
    Number(f64),
    /// An int.
    Whole(c_int),
}

#[expect(unsafe_code, reason = "writes the caller's array")]
impl Output {
    /// Refuses null.
    #[inline]
    pub(super) fn check(self, path: &str) -> Result<()> {
        let missing = match self {
            Self::Numbers(start) => start.is_null(),
            Self::Whole(start) => start.is_null(),
        };
        if missing { Err(null(path)) } else { Ok(()) }
    }

    /// The result as it will be written.
    ///
    /// # Errors
    /// `INTERNAL` for a whole number that is none or does not fit.
    #[inline]
    pub(super) fn ready(self, result: f64) -> Result<Ready> {
        match self {
            Self::Numbers(_) => Ok(Ready::Number(result)),
            Self::Whole(_) => whole(result).map(Ready::Whole).ok_or_else(internal),
        }
    }

    /// What stands for a result that there is not: NaN, and -1 for a whole number.
    #[inline]
    pub(super) const fn none(self) -> Ready {
        match self {
            Self::Numbers(_) => Ready::Number(f64::NAN),
            Self::Whole(_) => Ready::Whole(-1),
        }
    }

    /// Writes the element at that place.
    ///
    /// # Safety
    /// The array is not null and has more elements than `at`.
    #[inline]
    pub(super) unsafe fn put(self, at: usize, result: Ready) {
        // SAFETY: as this function's.
        unsafe {
            match (self, result) {
                (Self::Numbers(start), Ready::Number(number)) => start.add(at).write_unaligned(number),
                (Self::Numbers(start), Ready::Whole(count)) => {
                    start.add(at).write_unaligned(f64::from(count));
                }
                (Self::Whole(start), Ready::Whole(count)) => start.add(at).write_unaligned(count),
                // `ready` and `none` never make this pair.
                (Self::Whole(_), Ready::Number(_)) => {}
            }
        }
    }
}

/// The whole number behind a double, where an int holds it.
#[inline]
fn whole(number: f64) -> Option<c_int> {
    let fits = number.fract() == 0.0 && number >= f64::from(c_int::MIN) && number <= f64::from(c_int::MAX);
    fits.then_some(number as c_int)
}

/// An array of doubles for results, not looked at yet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Numbers {
    path: &'static str,
    start: *mut f64,
    length: c_int,
}

#[expect(unsafe_code, reason = "writes the caller's array")]
impl Numbers {
    /// An array of that many doubles; it may be null where the length is 0.
    pub(crate) const fn new(path: &'static str, start: *mut f64, length: c_int) -> Self {
        Self { path, start, length }
    }

    /// # Errors
    /// `LENGTH_NEGATIVE`, `NULL_POINTER`.
    pub(super) fn check(self) -> Result<()> {
        match (length(self.path, self.length)?, self.start.is_null()) {
            (1.., true) => Err(null(self.path)),
            _ => Ok(()),
        }
    }

    /// How many there is room for.
    pub(super) fn room(self) -> usize {
        usize::try_from(self.length).unwrap_or(0)
    }

    /// Writes the numbers, as far as there is room.
    ///
    /// # Safety
    /// The array was checked and has its length.
    pub(super) unsafe fn put_first(self, numbers: impl Iterator<Item = f64>) {
        for (at, number) in numbers.take(self.room()).enumerate() {
            // SAFETY: not null where there is room, and `at` is less than the length.
            unsafe { self.start.add(at).write_unaligned(number) };
        }
    }
}

/// Writes an int where the pointer is not null.
///
/// # Safety
/// The pointer is null or can be written.
#[inline]
#[expect(unsafe_code, reason = "writes the caller's int")]
pub(super) unsafe fn put_int(pointer: *mut c_int, number: c_int) {
    if !pointer.is_null() {
        // SAFETY: not null, and the caller promises an int there.
        unsafe { pointer.write_unaligned(number) };
    }
}
