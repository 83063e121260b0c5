//! What went wrong: where, what was written, what is allowed, what to do.
//!
//! One type serves every face. Rust gets the [`Failure`], C its number and its first line, Python an exception of its
//! family, a sheet an error value and the sentence by a `..._WHY` function.

mod code;
mod line;
mod nearest;

pub use code::{Code, Family, describe};
pub use nearest::nearest;

use crate::quantity::range::{Range, refusal_code};
use crate::quantity::{QuantityType, Typed, Unit};

/// The result of everything that can fail.
pub type Result<T> = std::result::Result<T, Box<Failure>>;

/// One failure in the caller's own terms.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
#[error("{}", self.sentence())]
pub struct Failure {
    /// What went wrong, by number.
    pub code: Code,
    /// Which value: `level.rows[2].rod[0]`, or the name of a port.
    pub path: String,
    /// Where it stands.
    pub place: Place,
    /// The value as it was written.
    pub written: String,
    /// What would be allowed.
    pub allowed: String,
    /// What to do.
    pub remedy: String,
    /// The number behind a refused quantity, so that a border can say it in the caller's unit.
    pub refused: Option<Refused>,
}

/// Where a value stands in what the caller gave.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Place {
    /// Nowhere that could be named.
    #[default]
    Unknown,
    /// A line of a text, the first being 1.
    Line(usize),
    /// An element of a list, the first being 0.
    Index(usize),
    /// A cell of a range: row and column, the first being 1.
    Cell(usize, usize),
}

/// A refused number with its bounds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Refused {
    /// The number, in base units.
    pub base: f64,
    /// What it may be.
    pub range: Range,
    /// Of which quantity.
    pub quantity: &'static QuantityType,
}

impl Failure {
    /// A failure of this code at this path; the builders below say the rest.
    #[must_use]
    pub fn new(code: Code, path: impl Into<String>) -> Box<Self> {
        Box::new(Self {
            code,
            path: path.into(),
            place: Place::Unknown,
            written: String::new(),
            allowed: String::new(),
            remedy: String::new(),
            refused: None,
        })
    }

    /// The value as it was written.
    #[must_use]
    pub fn written(mut self: Box<Self>, written: impl Into<String>) -> Box<Self> {
        self.written = written.into();
        self
    }

    /// What would be allowed.
    #[must_use]
    pub fn allowed(mut self: Box<Self>, allowed: impl Into<String>) -> Box<Self> {
        self.allowed = allowed.into();
        self
    }

    /// What to do.
    #[must_use]
    pub fn remedy(mut self: Box<Self>, remedy: impl Into<String>) -> Box<Self> {
        self.remedy = remedy.into();
        self
    }

    /// Where it stands.
    #[must_use]
    pub fn at(mut self: Box<Self>, place: Place) -> Box<Self> {
        self.place = place;
        self
    }

    /// The same failure, its path set behind `parent`.
    #[must_use]
    pub fn under(mut self: Box<Self>, parent: &str) -> Box<Self> {
        self.path = match (parent.is_empty(), self.path.is_empty(), self.path.starts_with('[')) {
            (true, ..) => self.path,
            (_, true, _) => parent.to_owned(),
            (_, _, true) => format!("{parent}{}", self.path),
            _ => format!("{parent}.{}", self.path),
        };
        self
    }

    /// A number that its range refuses, said in the base unit; a border says it again in the caller's unit.
    #[cold]
    #[must_use]
    pub fn refused(path: &str, base: f64, range: Range, quantity: &'static QuantityType) -> Box<Self> {
        let unit = quantity.base_unit();
        let mut failure = Self::new(refusal_code(base, quantity), path);
        failure.refused = Some(Refused { base, range, quantity });
        failure.in_unit((unit.from_base)(base), unit)
    }

    /// The same refusal in the caller's own number and unit.
    #[must_use]
    pub fn in_unit(mut self: Box<Self>, number: f64, unit: &Unit) -> Box<Self> {
        let Some(refused) = self.refused else { return self };
        self.written = format!("{} {}", told(number), unit.symbol);
        self.allowed = refused.range.words(unit);
        if self.remedy.is_empty() {
            self.remedy = match self.code {
                Code::NotFinite => "give a finite number".to_owned(),
                _ => format!("check the {} and its unit", refused.quantity.name),
            };
        }
        self
    }
}

/// A refused number in a few characters: with its exponent where its digits alone would fill the line.
fn told(number: f64) -> String {
    let size = number.abs();
    if number.is_finite() && size != 0.0 && !(1.0e-9..1.0e15).contains(&size) {
        return format!("{number:e}");
    }
    crate::quantity::write::shortest(number)
}

/// The names of what was given, of values that belong together or shut one another out: `level and points`.
#[must_use]
pub(crate) fn together(names: &[(&str, bool)]) -> String {
    let given: Vec<&str> = names.iter().filter(|(_, given)| *given).map(|(name, _)| *name).collect();
    if given.is_empty() { "nothing".to_owned() } else { given.join(" and ") }
}

/// Refuses a quantity outside its range, naming the port.
///
/// # Errors
/// `NOT_FINITE`, `NEGATIVE` or `OUT_OF_RANGE`.
#[inline]
pub fn check<Q: Typed>(port: &str, value: Q, range: Range) -> Result<Q> {
    if range.allows(value.base()) {
        Ok(value)
    } else {
        Err(Failure::refused(port, value.base(), range, Q::TYPE))
    }
}
