//! Ports: what an operation takes and gives.

use super::record::RecordType;
use crate::quantity::range::Range;
use crate::quantity::{QuantityType, System, Unit};

/// One input or result.
#[derive(Debug)]
pub struct Port {
    /// Its name, the same in every face; faces add the unit.
    pub name: &'static str,
    /// What it means.
    pub meaning: &'static str,
    /// What it holds.
    pub kind: Kind,
    /// Whether it must be given.
    pub need: Need,
}

/// Whether a port must be given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// It must be given.
    Required,
    /// What is taken where it is not given, in words that core reads, and why. It is listed as taken.
    Fallback {
        /// The value, as a caller would write it.
        value: &'static str,
        /// Why this value.
        why: &'static str,
    },
    /// Nothing is taken where it is not given.
    Optional,
}

/// What a port holds.
#[derive(Clone, Copy, Debug)]
pub enum Kind {
    /// A physical quantity.
    Number(NumberKind),
    /// A whole number, from the least to the greatest.
    Count(i64, i64),
    /// One of the words.
    Choice(&'static [&'static str]),
    /// Text.
    Text,
    /// The bytes of a file. An input only: no result, no field and no column.
    Bytes,
    /// Columns of equal length.
    Table(&'static TableType),
    /// A record that an operation makes.
    Record(&'static RecordType),
}

/// A quantity as a port takes it.
#[derive(Clone, Copy, Debug)]
pub struct NumberKind {
    /// Which quantity.
    pub quantity: &'static QuantityType,
    /// The unit of a bare number under `us`.
    pub us: &'static Unit,
    /// The unit of a bare number under `si`.
    pub si: &'static Unit,
    /// What it may be.
    pub range: Range,
    /// Whether a zero is more likely an empty cell, in sheets that cannot tell.
    pub zero_rare: bool,
}

impl NumberKind {
    /// The unit of a bare number under that system.
    #[inline]
    #[must_use]
    pub const fn unit(&self, system: System) -> &'static Unit {
        match system {
            System::Us => self.us,
            System::Si => self.si,
        }
    }
}

/// A table: its columns and how many rows it needs.
#[derive(Debug)]
pub struct TableType {
    /// Its name in messages: `shots`.
    pub name: &'static str,
    /// What a row is.
    pub meaning: &'static str,
    /// The columns; never tables or records.
    pub columns: &'static [Port],
    /// The fewest rows.
    pub least_rows: usize,
}

/// A required or optional quantity port:
/// `number!(drop: length in inch | millimeter, DROP, "height lost")`. Behind a semicolon: `zero rare`, `optional`, or
/// `or "3 in" because "usual"`, or `or assumption::MARGIN`.
/// The unit names are those of the quantity's module.
#[macro_export]
macro_rules! number {
    ($name:ident: $quantity:ident in $us:ident | $si:ident, $range:expr, $meaning:literal $(; $($tail:tt)+)?) => {
        $crate::operation::Port {
            name: stringify!($name),
            meaning: $meaning,
            kind: $crate::operation::Kind::Number($crate::operation::NumberKind {
                quantity: &$crate::quantity::kinds::$quantity,
                us: &$crate::quantity::$quantity::unit::$us,
                si: &$crate::quantity::$quantity::unit::$si,
                range: $range,
                zero_rare: $crate::zero_rare!($($($tail)+)?),
            }),
            need: $crate::need!($($($tail)+)?),
        }
    };
}

/// A port of any other kind: `port!(name: Kind::Text, "what it says"; optional)`.
#[macro_export]
macro_rules! port {
    ($name:ident: $kind:expr, $meaning:literal $(; $($tail:tt)+)?) => {
        $crate::operation::Port {
            name: stringify!($name),
            meaning: $meaning,
            kind: $kind,
            need: $crate::need!($($($tail)+)?),
        }
    };
}

/// Whether a port must be given, from the tail of [`number!`] or [`port!`].
#[doc(hidden)]
#[macro_export]
macro_rules! need {
    () => { $crate::operation::Need::Required };
    (optional) => { $crate::operation::Need::Optional };
    (zero rare) => { $crate::operation::Need::Required };
    (zero rare, $($tail:tt)+) => { $crate::need!($($tail)+) };
    (or $assumption:path) => {
        $crate::operation::Need::Fallback { value: $assumption.words, why: $assumption.why }
    };
    (or $value:expr, because $why:expr) => { $crate::operation::Need::Fallback { value: $value, why: $why } };
    (or $value:literal because $why:literal) => { $crate::operation::Need::Fallback { value: $value, why: $why } };
}

/// Whether a zero is rare, from the tail of [`number!`].
#[doc(hidden)]
#[macro_export]
macro_rules! zero_rare {
    (zero rare $($tail:tt)*) => {
        true
    };
    ($($tail:tt)*) => {
        false
    };
}
