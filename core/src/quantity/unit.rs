//! Units and quantities at run time: what texts, sheets and bindings look up.

use std::fmt;

/// One unit of one quantity.
pub struct Unit {
    /// The way it is written: `in/ft`.
    pub symbol: &'static str,
    /// The way it stands in a name: `in_per_ft`.
    pub suffix: &'static str,
    /// Every accepted spelling, the symbol among them.
    pub spellings: &'static [&'static str],
    /// From a number in this unit to the base unit.
    pub to_base: fn(f64) -> f64,
    /// From the base unit to a number in this unit.
    pub from_base: fn(f64) -> f64,
    /// The same as `to_base` for every number, into as many others.
    pub all_to_base: fn(&[f64], &mut [f64]),
    /// The same as `from_base` for every number, into as many others.
    pub all_from_base: fn(&[f64], &mut [f64]),
}

impl fmt::Debug for Unit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.symbol)
    }
}

impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.symbol == other.symbol && self.suffix == other.suffix
    }
}

/// Whether a quantity can be below zero at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sign {
    /// Both signs have a meaning.
    Any,
    /// Zero is the least.
    NotNegative,
}

/// One quantity: its name and its units, the base unit first.
#[derive(Debug)]
pub struct QuantityType {
    /// The word for it in messages.
    pub name: &'static str,
    /// Whether a negative value can have a meaning.
    pub sign: Sign,
    /// All its units; the first is the base unit.
    pub units: &'static [&'static Unit],
}

impl QuantityType {
    /// The unit written so, if this quantity has it.
    #[must_use]
    pub fn unit(&self, spelling: &str) -> Option<&'static Unit> {
        let units = self.units.iter().copied();
        let mut same = units.clone().filter(|unit| unit.spellings.contains(&spelling));
        same.next().or_else(|| {
            let mut alike = units.filter(|u| u.spellings.iter().any(|s| s.eq_ignore_ascii_case(spelling)));
            alike.next()
        })
    }

    /// The symbols of its units, for messages.
    #[must_use]
    pub fn symbols(&self) -> String {
        let symbols: Vec<&str> = self.units.iter().map(|unit| unit.symbol).collect();
        symbols.join(", ")
    }

    /// Its name behind `a` or `an`, for messages.
    #[must_use]
    pub fn with_article(&self) -> String {
        let article = if self.name.starts_with(['a', 'e', 'i', 'o', 'u']) { "an" } else { "a" };
        format!("{article} {}", self.name)
    }

    /// The base unit.
    #[must_use]
    pub fn base_unit(&self) -> &'static Unit {
        self.units[0]
    }
}

/// The two systems of units that a caller may name for bare numbers.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum System {
    /// Feet, inches, cubic yards.
    Us,
    /// Metres, millimetres, cubic metres.
    Si,
}

impl System {
    /// Both, in the order of the bindings.
    pub const ALL: [Self; 2] = [Self::Us, Self::Si];

    /// The word for it: `us` or `si`.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Us => "us",
            Self::Si => "si",
        }
    }

    /// The system of that word.
    #[must_use]
    pub fn from_word(word: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|system| system.word() == word)
    }
}

impl PartialEq for QuantityType {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}
