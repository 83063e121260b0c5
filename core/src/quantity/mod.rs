//! Typed quantities with exact units, their reading from text and their printing.
//!
//! The types are uom quantities over `f64` in a system of our own, because the US units that uom ships are rounded to seven
//! digits. Inside the engine every physical quantity has its type; text and numbers become quantities at the border.
//!
//! ```
//! use overslab::quantity::{Length, read, feet_and_inches, length::{inch, meter}};
//!
//! let rod: Length = read(r#"5' 3 1/2""#)?;
//! assert_eq!(rod.get::<inch>(), 63.5);
//! assert_eq!(feet_and_inches(rod, 8), r#"5' 3 1/2""#);
//! let same: Length = read("1.6129 m")?;
//! assert_eq!(same.get::<meter>(), 1.6129);
//! # Ok::<(), Box<overslab::failure::Failure>>(())
//! ```
//!
//! A slope is not a length, and two temperatures cannot be added:
//!
//! ```compile_fail
//! use overslab::quantity::{Temperature, temperature::degree_celsius};
//! let t = Temperature::new::<degree_celsius>(20.0);
//! let wrong = t + t;
//! ```

#[macro_use]
mod declare;
pub mod given;
mod level;
mod number_text;
pub mod range;
pub mod read;
#[cfg(test)]
mod reading_tests;
pub mod unit;
pub mod units;
pub mod write;

pub use given::Given;
pub use range::Range;
pub use read::{read, read_in, read_kind};
pub use unit::{QuantityType, Sign, System, Unit};
pub use units::*;
pub use write::{feet_and_inches, inches, number_in, si_text};

/// A quantity type that the border can make and take apart.
pub trait Typed: Copy {
    /// Its name and its units.
    const TYPE: &'static QuantityType;
    /// From the number in base units.
    fn from_base(base: f64) -> Self;
    /// The number in base units.
    fn base(self) -> f64;
}
