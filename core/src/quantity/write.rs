//! Printing: SI text that reads back to the same bits, and feet, inches and the nearest fraction.

use super::{Elevation, Length, Typed, Unit};
use std::fmt::Write;

/// The shortest digits that read back to the same number.
#[must_use]
pub fn shortest(number: f64) -> String {
    // A negative zero would read as a riddle.
    format!("{}", if number == 0.0 { 0.0 } else { number })
}

/// The quantity in its base unit with the shortest digits that read back to the same bits: `1.612 m`.
#[must_use]
pub fn si_text<Q: Typed>(value: Q) -> String {
    format!("{} {}", shortest(value.base()), Q::TYPE.base_unit().symbol)
}

/// The number in a unit with so many decimals, no trailing zeros beyond them: `8.66 yd3`.
#[must_use]
pub fn number_in<Q: Typed>(value: Q, unit: &Unit, decimals: usize) -> String {
    let number = (unit.from_base)(value.base());
    let text = format!("{number:.decimals$}");
    let zero = text.trim_start_matches('-').bytes().all(|b| matches!(b, b'0' | b'.'));
    let shown = if zero { text.trim_start_matches('-') } else { &text };
    format!("{shown} {}", unit.symbol)
}

/// Feet, inches and the nearest 1/`denominator` of an inch: `5' 3 1/2"`. Less than a foot stays in inches.
#[must_use]
pub fn feet_and_inches(length: Length, denominator: u32) -> String {
    fractional(length.base(), denominator, true)
}

/// Inches and the nearest 1/`denominator` of an inch: `3 3/8 in`.
#[must_use]
pub fn inches(length: Length, denominator: u32) -> String {
    fractional(length.base(), denominator, false)
}

/// The length rounded to the nearest 1/`denominator` of an inch.
#[must_use]
pub fn nearest_fraction(length: Length, denominator: u32) -> Length {
    let step = 0.0254 / f64::from(denominator.max(1));
    Length::from_base((length.base() / step).round() * step)
}

/// Decimal feet of an elevation, to the hundredth of a foot.
#[must_use]
pub fn decimal_feet(elevation: Elevation) -> String {
    number_in(elevation, &super::elevation::unit::foot, 2)
}

fn fractional(base: f64, denominator: u32, feet: bool) -> String {
    let denominator = u64::from(denominator.max(1));
    let parts = (base.abs() / 0.0254 * denominator as f64).round();
    if parts.is_nan() || parts >= 9.0e15 {
        return format!("{} m", shortest(base));
    }
    let parts = parts as u64;
    let (whole, top) = (parts / denominator, parts % denominator);
    let sign = if base < 0.0 && parts > 0 { "-" } else { "" };
    let mut text = String::from(sign);
    if feet && whole >= 12 {
        let _ = write!(text, "{}' {}\"", whole / 12, with_fraction(whole % 12, top, denominator));
    } else {
        let mark = if feet { "\"" } else { " in" };
        let _ = write!(text, "{}{mark}", with_fraction(whole, top, denominator));
    }
    text
}

/// `3 1/2`, `1/2`, `3` or `0`, the fraction in lowest terms.
fn with_fraction(whole: u64, top: u64, bottom: u64) -> String {
    let common = greatest_common_divisor(top, bottom);
    match (whole, top) {
        (_, 0) => format!("{whole}"),
        (0, _) => format!("{}/{}", top / common, bottom / common),
        _ => format!("{whole} {}/{}", top / common, bottom / common),
    }
}

fn greatest_common_divisor(a: u64, b: u64) -> u64 {
    if b == 0 { a } else { greatest_common_divisor(b, a % b) }
}
