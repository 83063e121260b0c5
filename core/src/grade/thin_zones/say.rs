//! The words of sentences: thicknesses are rounded to the safe side, places outward.

use super::choice::Enough;
use crate::quantity::units::CUBIC_YARD;
use crate::quantity::{Area, Length, Money, Typed, Volume, area, feet_and_inches, inches, number_in, volume};

const INCH: f64 = 0.0254;
const SIXTEENTH: f64 = INCH / 16.0;

/// A length rounded up to whole steps; a hair above a step is rounding.
fn up_to(length: Length, step: f64) -> Length {
    Length::from_base((length.base() / step - 1e-6).ceil() * step)
}

fn down_to(length: Length, step: f64) -> Length {
    Length::from_base((length.base() / step + 1e-6).floor() * step)
}

/// What is lacking, or to be taken off: at least so much.
pub(super) fn up(length: Length) -> String {
    inches(up_to(length, SIXTEENTH), 16)
}

/// What there is: at most so much.
pub(super) fn down(length: Length) -> String {
    inches(down_to(length, SIXTEENTH), 16)
}

/// A length in whole inches or more.
pub(super) fn along(length: Length) -> String {
    feet_and_inches(up_to(length, INCH), 1)
}

/// From one distance to another, outward to whole inches.
pub(super) fn span(from: Length, to: Length) -> String {
    format!("{} to {}", feet_and_inches(down_to(from, INCH), 1), along(to))
}

pub(super) fn square_feet(area: Area) -> String {
    number_in(area, &area::unit::square_foot, 1)
}

/// Cubic yards, or cubic feet where it is less than a tenth of a yard.
pub(super) fn yards(volume: Volume) -> String {
    if volume.base().abs() < 0.1 * CUBIC_YARD {
        return number_in(volume, &volume::unit::cubic_foot, 2);
    }
    number_in(volume, &volume::unit::cubic_yard, 2)
}

/// A thickness as it was given.
pub(super) fn given(length: Length) -> String {
    inches(length, 16)
}

/// An amount, in whatever currency the prices are.
pub(super) fn amount(money: Money) -> String {
    format!("{:.2}", money.base())
}

/// What it costs.
pub(super) fn cost(money: Option<Money>) -> String {
    money.map_or_else(|| "not priced".to_owned(), |money| format!("costs {}", amount(money)))
}

/// Whether it is enough, with the reason where it is not.
pub(super) fn verdict(enough: Enough, short: impl FnOnce(String) -> String, unknown: &str) -> String {
    match enough {
        Enough::Yes => "enough".to_owned(),
        Enough::ShortBy(by) => format!("not enough: {}", short(up(by))),
        Enough::NotJudged => format!("not judged: {unknown}"),
    }
}
