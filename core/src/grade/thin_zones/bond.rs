//! Bonding a zone to the old slab.

use super::asked::{AskedOfThinZones, together};
use super::choice::{Choice, Cure, Enough};
use super::say;
use super::zone::ThinZone;
use crate::quantity::{Length, Money, Typed, Volume};

/// Bonding what lies within the zone's joints; it takes no more concrete.
pub(super) fn of_zone(zone: &ThinZone, asked: &AskedOfThinZones) -> Choice {
    let (thinnest, nothing) = (zone.thinnest.thickness, Length::from_base(0.0));
    let enough = match asked.bonded_minimum {
        Some(minimum) => Enough::of(thinnest, minimum),
        // Without a minimum one thing is sure: no concrete cannot be bonded.
        None if thinnest.base() <= 0.0 => Enough::ShortBy(nothing - thinnest),
        None => Enough::NotJudged,
    };
    let money = together(asked.prices.bonding, zone.boxed, Some(Money::from_base(0.0)));
    let verdict = say::verdict(
        enough,
        |by| short(zone, asked, &by),
        "the least thickness of a bonded part was not given",
    );
    let said = format!(
        "bond {} (mill, clean, slurry) {}; no more concrete; {}; {verdict}",
        say::square_feet(zone.boxed),
        zone.said_bounds(),
        say::cost(money),
    );
    Choice {
        cure: Cure::Bond,
        depth: Some(thinnest),
        area: zone.boxed,
        concrete: Some(Volume::from_base(0.0)),
        joint: Some(zone.joint),
        money,
        enough,
        said,
    }
}

/// Why bonding is not enough.
fn short(zone: &ThinZone, asked: &AskedOfThinZones, by: &str) -> String {
    let thinnest = zone.thinnest.thickness;
    match asked.bonded_minimum {
        Some(minimum) if thinnest.base() > 0.0 => {
            let (there, needed) = (say::down(thinnest), say::given(minimum));
            format!(
                "at {} it is {there} thick, {by} under the {needed} of a bonded part",
                zone.thinnest_place()
            )
        }
        _ => {
            let stands = Length::from_base(-thinnest.base());
            format!("at {} the old slab stands {} above the finish", zone.thinnest_place(), say::up(stands))
        }
    }
}
