//! The level book: from rod readings to elevations, checked before anything is built on them.
//!
//! | in a book | here |
//! |---|---|
//! | BS, backsight | [`Backsight`]: the rod on a point whose elevation is known |
//! | IS, intermediate sight | [`SetUp::sights`]: slab shots, sills, walks |
//! | FS, foresight | [`SetUp::foresight`]: the turning point, or the benchmark the line closes on |
//! | HI, height of instrument | [`ReducedSetUp::height`] = elevation + BS |
//! | elevation of a point | HI - IS, or HI - FS |
//! | page check | [`PageCheck`]: sum of BS - sum of FS = last - first |
//! | misclosure | [`Closure::misclosure`] = found - known |
//!
//! A rod stands on the point and its reading grows downward from the line of sight. A rod held upside down under a ceiling
//! (a negative reading) is not supported: such a reading is refused.
//!
//! # What is done with what is left over
//!
//! Every reading is taken as equally good, and what is left over is shared out by least squares under that assumption:
//!
//! - A turning point at the end of set-up `k` of `n` is corrected by `k/n` of the misclosure, with the opposite sign.
//! - A sight from set-up `k` hangs on the backsights up to `k`, but on no foresight of its own: it is corrected by
//!   `(k - 1/2)/n`, and the height of instrument with it.
//! - A backsight point read again before the instrument is moved ("close") gives two readings of one height. Within the
//!   tolerance their mean is used, not the first: if the two differ by chance the mean is the better reading, and if the
//!   instrument sank while the shots were taken, the mean is the height half way. It is the same rule once more: a set-up
//!   that closes on its own benchmark corrects its sights by half of the misclosure.
//!
//! Backsights that were read twice count as read once when a line is closed: what that changes is a fraction of the tolerance.
//!
//! Past the tolerance nothing is shared out: the book is refused.

mod chain;
mod closure;
mod entries;
mod names;
mod readings;
mod reduce;
mod reduced;
mod rod;
mod slip;
#[cfg(test)]
mod tests;

pub use closure::{CLOSURE_TOLERANCE, RECHECK_TOLERANCE, Tolerances};
pub use entries::{Backsight, Benchmark, LevelBook, NAIL_ELEVATION, SetUp, Sight};
pub use readings::{ELEVATION, ROD};
pub use reduce::reduce;
pub use reduced::{Closure, Line, PageCheck, PointKind, Recheck, ReducedBook, ReducedPoint, ReducedSetUp};
pub use rod::{ReducedShot, rod_elevation};
pub use slip::{Slip, booking_slip};
