//! Quantities in the words of the site: feet, inches and eighths, quarter yards.

use super::report::{Amount, Measure, PlaceReport};
use crate::quantity::{
    Area, Elevation, Flow, Length, Mass, Money, Pressure, RainIntensity, Slope, Typed, Volume, area,
    elevation, feet_and_inches, flow, inches, length, mass, number_in, pressure, rain_intensity, slope,
    volume,
};
use crate::survey::old_slab::SlabPlace;

/// A plan distance: `4' 9"`.
pub(super) fn distance(value: Length) -> Measure {
    Measure::new(value, &length::unit::foot, &length::unit::meter, feet_and_inches(value, 8))
}

/// A thickness or a small difference: `3 3/8 in`.
pub(super) fn thickness(value: Length) -> Measure {
    Measure::new(value, &length::unit::inch, &length::unit::millimeter, inches(value, 8))
}

/// A thickness that must not be promised too much: rounded down to the eighth.
pub(super) fn at_least(value: Length) -> Measure {
    Measure { text: inches(eighths(value, f64::floor), 8), ..thickness(value) }
}

/// A thickness that must not be promised too little: rounded up to the eighth.
pub(super) fn at_most(value: Length) -> Measure {
    Measure { text: inches(eighths(value, f64::ceil), 8), ..thickness(value) }
}

/// What is lacking, rounded up to the sixteenth.
pub(super) fn fine_at_most(value: Length) -> Measure {
    Measure { text: inches(whole_parts(value, 16.0, f64::ceil), 16), ..fine_thickness(value) }
}

/// A length to be cut in whole inches or more: `1' 2"`.
pub(super) fn whole_inches(value: Length) -> Measure {
    Measure { text: feet_and_inches(whole_parts(value, 1.0, f64::ceil), 1), ..distance(value) }
}

/// Whole eighths of an inch below or above.
fn eighths(value: Length, whole: fn(f64) -> f64) -> Length {
    whole_parts(value, 8.0, whole)
}

/// Whole parts of an inch below or above; a hair off a whole part is that part.
fn whole_parts(value: Length, of_inch: f64, whole: fn(f64) -> f64) -> Length {
    let part = 0.0254 / of_inch;
    let parts = value.base() / part;
    let nearest = parts.round();
    Length::from_base(part * if (parts - nearest).abs() < 1.0e-6 { nearest } else { whole(parts) })
}

/// A small difference to the sixteenth.
pub(super) fn fine_thickness(value: Length) -> Measure {
    Measure::new(value, &length::unit::inch, &length::unit::millimeter, inches(value, 16))
}

/// An elevation: `99.52 ft`.
pub(super) fn height(value: Elevation) -> Measure {
    let text = number_in(value, &elevation::unit::foot, 2);
    Measure::new(value, &elevation::unit::foot, &elevation::unit::meter, text)
}

/// An area: `640 ft2`.
pub(super) fn surface(value: Area) -> Measure {
    let text = number_in(value, &area::unit::square_foot, 0);
    Measure::new(value, &area::unit::square_foot, &area::unit::square_meter, text)
}

/// A weight or a load on each unit of area: `55 lb/ft2`.
pub(super) fn area_weight(value: Pressure) -> Measure {
    let text = format!("{:.0} lb/ft2", (pressure::unit::psf.from_base)(value.base()));
    Measure::new(value, &pressure::unit::psf, &pressure::unit::kilopascal, text)
}

/// A stress: `285 psi`.
pub(super) fn stress(value: Pressure) -> Measure {
    let text = number_in(value, &pressure::unit::psi, 0);
    Measure::new(value, &pressure::unit::psi, &pressure::unit::megapascal, text)
}

/// A volume: `8.66 yd3`.
pub(super) fn body(value: Volume) -> Measure {
    let text = number_in(value, &volume::unit::cubic_yard, 2);
    Measure::new(value, &volume::unit::cubic_yard, &volume::unit::cubic_meter, text)
}

/// A mass: `9.6 tons`, `10 tons`.
pub(super) fn mass(value: Mass) -> Measure {
    let tenths = format!("{:.1}", (mass::unit::ton_short.from_base)(value.base()));
    let number = tenths.strip_suffix(".0").unwrap_or(&tenths);
    let text = format!("{number} {}", if number == "1" { "ton" } else { "tons" });
    Measure::new(value, &mass::unit::ton_short, &mass::unit::tonne, text)
}

/// Water, or what is ground off and filled: `1.4 ft3`.
pub(super) fn water(value: Volume) -> Measure {
    let text = number_in(value, &volume::unit::cubic_foot, 1);
    Measure::new(value, &volume::unit::cubic_foot, &volume::unit::liter, text)
}

/// A flow of water: `12 gal/min`.
pub(super) fn flow(value: Flow) -> Measure {
    let number = (flow::unit::gallon_per_minute.from_base)(value.base());
    let text = number_in(value, &flow::unit::gallon_per_minute, if number < 9.95 { 1 } else { 0 });
    Measure::new(value, &flow::unit::gallon_per_minute, &flow::unit::liter_per_second, text)
}

/// Rain: `2 in an hour`.
pub(super) fn rain(value: RainIntensity) -> Measure {
    let depth = Length::from_base(value.base() * 3600.0);
    let text = format!("{} an hour", inches(depth, 8));
    Measure::new(
        value,
        &rain_intensity::unit::inch_per_hour,
        &rain_intensity::unit::millimeter_per_hour,
        text,
    )
}

/// An amount: whole from a hundred on, with its cents below.
pub(super) fn money(value: Money, currency: Option<&str>) -> Amount {
    let amount = value.base();
    let number = if amount.abs() >= 99.995 { format!("{amount:.0}") } else { format!("{amount:.2}") };
    let text = currency.map_or_else(|| number.clone(), |currency| format!("{number} {}", currency.trim()));
    Amount { amount, text }
}

/// A volume as the plant sells it: `9 3/4 yd3` where it is a whole number of eighths, decimals where not.
pub(super) fn sold(value: Volume) -> Measure {
    let yards = (volume::unit::cubic_yard.from_base)(value.base());
    let eighths = (yards * 8.0).round();
    let text = if (yards * 8.0 - eighths).abs() < 1.0e-6 && eighths.abs() < 1.0e9 {
        inches(Length::from_base(eighths / 8.0 * 0.0254), 8).replace(" in", " yd3")
    } else {
        number_in(value, &volume::unit::cubic_yard, 2)
    };
    Measure::new(value, &volume::unit::cubic_yard, &volume::unit::cubic_meter, text)
}

/// A fall: `1/8 in per ft, 1.04 %` where it is a whole number of sixteenths, `0.12 in per ft, 1.00 %` where not.
pub(super) fn fall(value: Slope) -> Measure {
    let per_foot = (slope::unit::inch_per_foot.from_base)(value.base());
    let sixteenths = (per_foot * 16.0).round();
    let whole = (per_foot * 16.0 - sixteenths).abs() < 1.0e-6;
    let us = if whole && sixteenths > 0.0 {
        inches(Length::from_base(per_foot * 0.0254), 16)
    } else {
        format!("{per_foot:.2} in")
    };
    let percent = (slope::unit::percent.from_base)(value.base());
    let text = format!("{us} per ft, {percent:.2} %");
    Measure::new(value, &slope::unit::inch_per_foot, &slope::unit::percent, text)
}

/// A fall in the name of a demand: `1/8 in/ft`, the same whatever unit it was given in.
pub(super) fn fall_named(value: Slope) -> String {
    let per_foot = (slope::unit::inch_per_foot.from_base)(value.base());
    let parts = per_foot * 64.0;
    if (parts - parts.round()).abs() < 1.0e-6 {
        return inches(Length::from_base(per_foot * 0.0254), 64).replace(" in", " in/ft");
    }
    format!("{per_foot:.3} in/ft")
}

/// A place in words: `13' 0" from the left, 6" in (A3)`.
pub(super) fn place(place: &SlabPlace) -> PlaceReport {
    let (x, y) = (distance(place.x), distance(place.y));
    let shot = place.shot.as_ref().map(|shot| format!(" ({shot})")).unwrap_or_default();
    let text = format!("{} from left, {} in{shot}", x.text, y.text);
    PlaceReport { x, y, shot: place.shot.clone(), text }
}
