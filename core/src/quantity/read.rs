//! Reading a quantity from text, as the trade and the standards write it.

use super::number_text::{Scan, scan};
use super::unit::{QuantityType, System, Unit};
use super::{Typed, kinds};
use crate::failure::{Code, Failure, Result};
use std::borrow::Cow;

/// A number read from text: its base value and the unit it was written in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// The value in base units.
    pub base: f64,
    /// The number as written, in `unit`.
    pub number: f64,
    /// The unit it was written in.
    pub unit: &'static Unit,
}

/// Reads a typed quantity: `read::<Length>("5' 3 1/2\"")`.
///
/// # Errors
/// A text that is no quantity, a unit that is unknown, missing or of another quantity, a decimal comma.
pub fn read<Q: Typed>(text: &str) -> Result<Q> {
    read_kind(text, Q::TYPE, None).map(|reading| Q::from_base(reading.base))
}

/// Reads a typed quantity whose bare number is in `unit`.
///
/// # Errors
/// As [`read`]; a bare number is taken in `unit`.
pub fn read_in<Q: Typed>(text: &str, unit: &'static Unit) -> Result<Q> {
    read_kind(text, Q::TYPE, Some(unit)).map(|reading| Q::from_base(reading.base))
}

/// Reads a quantity of a kind known at run time. `bare` is the unit of a number written without one.
///
/// # Errors
/// As [`read`].
pub fn read_kind(
    text: &str,
    quantity: &'static QuantityType,
    bare: Option<&'static Unit>,
) -> Result<Reading> {
    let clean = normal(text.trim());
    read_clean(&clean, quantity, bare).map_err(|failure| failure.written(format!("\"{}\"", text.trim())))
}

fn read_clean(text: &str, quantity: &'static QuantityType, bare: Option<&'static Unit>) -> Result<Reading> {
    if text.is_empty() {
        return Err(Failure::new(Code::EmptyCell, "")
            .allowed(wanted(quantity))
            .remedy("write the value with its unit"));
    }
    let (negative, body) = match text.strip_prefix(['-', '+']) {
        Some(rest) => (text.starts_with('-'), rest.trim_start()),
        None => (false, text),
    };
    let mut reading = unsigned(body, quantity, bare)?;
    if negative {
        // A temperature's negative sign belongs to the number, not to the kelvin.
        reading.number = -reading.number;
        reading.base = (reading.unit.to_base)(reading.number);
    }
    finite(reading, quantity)
}

fn unsigned(text: &str, quantity: &'static QuantityType, bare: Option<&'static Unit>) -> Result<Reading> {
    let (number, used) = match scan(text) {
        Scan::Number(number, used) => (number, used),
        Scan::Comma(_) => return Err(comma(quantity)),
        Scan::None => return Err(unreadable(quantity)),
    };
    let rest = text[used..].trim_start();
    if let Some(run) = rest.strip_prefix(':') {
        return ratio(number, run.trim_start(), quantity);
    }
    if is_length(quantity)
        && let Some(reading) = feet_inches(number, rest, quantity)?
    {
        return Ok(reading);
    }
    let unit = unit_of(rest, quantity, bare)?;
    if text[..used].contains(',') && is_length(quantity) && unit.symbol.ends_with('m') {
        return Err(comma(quantity));
    }
    Ok(Reading { base: (unit.to_base)(number), number, unit })
}

/// `1:48` is a slope of one in forty-eight.
fn ratio(rise: f64, run: &str, quantity: &'static QuantityType) -> Result<Reading> {
    let Scan::Number(run, used) = scan(run).consumed(run) else { return Err(unreadable(quantity)) };
    debug_assert!(used > 0);
    if !std::ptr::eq(quantity, &raw const kinds::slope) || run == 0.0 {
        return Err(unreadable(quantity));
    }
    let slope = rise / run;
    Ok(Reading { base: slope, number: slope, unit: &super::slope::unit::rise_over_run })
}

impl Scan {
    /// The number only if it is the whole text.
    fn consumed(self, text: &str) -> Self {
        match self {
            Self::Number(_, used) if used == text.trim_end().len() => self,
            _ => Self::None,
        }
    }
}

fn is_length(quantity: &QuantityType) -> bool {
    std::ptr::eq(quantity, &raw const kinds::length) || std::ptr::eq(quantity, &raw const kinds::elevation)
}

/// Feet, then inches: `5' 3 1/2"`, `5 ft 3-1/2 in`, `5'-3"`. `None` where no inches follow the feet.
fn feet_inches(feet: f64, rest: &str, quantity: &'static QuantityType) -> Result<Option<Reading>> {
    let Some(tail) = ["'", "feet", "foot", "ft."].iter().chain(&["ft"]).find_map(|f| rest.strip_prefix(f))
    else {
        return Ok(None);
    };
    let tail = tail.trim_start();
    let tail = tail.strip_prefix(['-', ',']).map_or(tail, str::trim_start);
    if tail.is_empty() || tail.starts_with('/') {
        return Ok(None);
    }
    let Scan::Number(inches, used) = scan(tail) else { return Ok(None) };
    let mark = tail[used..].trim();
    // `30 ft2` is an area, not thirty feet and two of something; `5ft3in` is feet and inches.
    if mark.is_empty() && kinds::ALL.iter().any(|kind| kind.unit(rest.trim_end()).is_some()) {
        return Ok(None);
    }
    if !matches!(mark, "\"" | "in" | "in." | "inch" | "inches") {
        let remedy = "write feet and inches as 5' 3 1/2\" or 5 ft 3-1/2 in";
        return Err(unreadable(quantity).remedy(remedy));
    }
    if inches >= 12.0 || feet.fract() != 0.0 {
        let allowed = "whole feet and less than 12 inches after them";
        return Err(Failure::new(Code::NotReadable, "")
            .allowed(allowed)
            .remedy("write 5' 3 1/2\", 63.5\" or 5.29 ft"));
    }
    let unit: &'static Unit = quantity.unit("in").unwrap_or(quantity.base_unit());
    let number = feet * 12.0 + inches;
    Ok(Some(Reading { base: (unit.to_base)(number), number, unit }))
}

/// The unit that a text names, or the one a bare number is in.
fn unit_of(
    text: &str,
    quantity: &'static QuantityType,
    bare: Option<&'static Unit>,
) -> Result<&'static Unit> {
    let spelling = text.trim_end();
    if spelling.is_empty() {
        return bare.ok_or_else(|| {
            Failure::new(Code::UnitMissing, "")
                .allowed(wanted(quantity))
                .remedy("write the unit behind the number")
        });
    }
    if let Some(unit) = quantity.unit(spelling).or_else(|| quantity.unit(spelling.trim_end_matches('.'))) {
        return Ok(unit);
    }
    let other = kinds::ALL.iter().find(|other| other.unit(spelling).is_some());
    Err(match other {
        Some(other) => Failure::new(Code::UnitWrong, "")
            .allowed(wanted(quantity))
            .remedy(format!("{spelling} is a unit of {}", other.name)),
        None if spelling.starts_with(|c: char| c.is_alphabetic() || c == '%') => {
            Failure::new(Code::UnitUnknown, "")
                .allowed(wanted(quantity))
                .remedy(format!("{spelling} is not known as a unit"))
        }
        None => unreadable(quantity),
    })
}

fn finite(reading: Reading, quantity: &'static QuantityType) -> Result<Reading> {
    if reading.base.is_finite() {
        return Ok(reading);
    }
    Err(Failure::new(Code::NotFinite, "").allowed(wanted(quantity)).remedy("give a finite number"))
}

fn wanted(quantity: &QuantityType) -> String {
    format!("{} in {}", quantity.with_article(), quantity.symbols())
}

fn unreadable(quantity: &QuantityType) -> Box<Failure> {
    Failure::new(Code::NotReadable, "").allowed(wanted(quantity)).remedy("write a number and its unit")
}

fn comma(quantity: &QuantityType) -> Box<Failure> {
    Failure::new(Code::DecimalComma, "")
        .allowed(wanted(quantity))
        .remedy("write decimals with a point; a comma may only part thousands, as in 4,000 psi")
}

/// The unit of the given system that a port without a unit of its own is read in.
#[must_use]
pub fn usual_unit(quantity: &'static QuantityType, system: System) -> &'static Unit {
    let usual: &[&str] = match system {
        System::Us => {
            &["ft", "ft2", "yd3", "lb", "psi", "lb/ft3", "lb/yd3", "in/ft", "degF", "mph", "h", "%"]
        }
        System::Si => &["m", "m2", "m3", "kg", "MPa", "kg/m3", "degC", "m/s", "h", "%"],
    };
    usual.iter().find_map(|symbol| quantity.unit(symbol)).unwrap_or(quantity.base_unit())
}

/// Typographic marks brought to the plain ones that the reader knows.
fn normal(text: &str) -> Cow<'_, str> {
    if text.is_ascii() {
        return Cow::Borrowed(text);
    }
    let mut plain = String::with_capacity(text.len() + 8);
    for c in text.chars() {
        match c {
            '\u{2032}' | '\u{2018}' | '\u{2019}' => plain.push('\''),
            '\u{2033}' | '\u{201c}' | '\u{201d}' => plain.push('"'),
            '\u{2212}' | '\u{2010}' | '\u{2011}' | '\u{2013}' => plain.push('-'),
            '\u{00b0}' => plain.push_str("deg"),
            '\u{00b2}' => plain.push('2'),
            '\u{00b3}' => plain.push('3'),
            '\u{2044}' => plain.push('/'),
            c if c.is_whitespace() => plain.push(' '),
            c => match vulgar(c) {
                Some(fraction) => {
                    if plain.ends_with(|last: char| last.is_ascii_digit()) {
                        plain.push(' ');
                    }
                    plain.push_str(fraction);
                }
                None => plain.push(c),
            },
        }
    }
    Cow::Owned(plain)
}

fn vulgar(c: char) -> Option<&'static str> {
    Some(match c {
        '\u{00bd}' => "1/2",
        '\u{00bc}' => "1/4",
        '\u{00be}' => "3/4",
        '\u{215b}' => "1/8",
        '\u{215c}' => "3/8",
        '\u{215d}' => "5/8",
        '\u{215e}' => "7/8",
        '\u{2153}' => "1/3",
        '\u{2154}' => "2/3",
        _ => return None,
    })
}
