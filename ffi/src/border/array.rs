//! Numbers and whole numbers at the caller's addresses.

use super::guard::{negative, null};
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
    /// Whether it is null.
    #[inline]
    pub(super) const fn is_null(self) -> bool {
        match self {
            Self::Numbers(start) => start.is_null(),
            Self::Whole(start) => start.is_null(),
        }
    }

    /// Refuses null.
    #[inline]
    pub(super) fn check(self, path: &str) -> Result<()> {
        if self.is_null() { Err(null(path)) } else { Ok(()) }
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

    /// Whether the result can be written here: an int takes whole numbers within its bounds only.
    #[inline]
    pub(super) fn takes(self, result: f64) -> bool {
        match self {
            Self::Numbers(_) => true,
            Self::Whole(_) => is_int(result),
        }
    }

    /// Writes the element at that place.
    ///
    /// # Safety
    /// The array is not null and has more elements than `at`.
    #[inline]
    pub(super) unsafe fn put(self, at: usize, result: f64) {
        // SAFETY: as this function's.
        unsafe {
            match self {
                Self::Numbers(start) => start.add(at).write_unaligned(result),
                Self::Whole(start) => start.add(at).write_unaligned(result as c_int),
            }
        }
    }

    /// Writes what stands for a result that there is not: NaN, and -1 for an int.
    ///
    /// # Safety
    /// The array is not null and has more elements than `at`.
    pub(super) unsafe fn put_none(self, at: usize) {
        // SAFETY: as this function's.
        unsafe {
            match self {
                Self::Numbers(start) => start.add(at).write_unaligned(f64::NAN),
                Self::Whole(start) => start.add(at).write_unaligned(-1),
            }
        }
    }
}

/// Whether a double is a whole number that an int holds. Not inlined: most results are none, and it would be worked out for
/// those as well.
#[inline(never)]
fn is_int(number: f64) -> bool {
    // The conversion keeps to the bounds of an int and drops the fraction.
    f64::from(number as c_int) == number
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
