//! Breaking out the old slab under a zone.

use super::asked::{AskedOfThinZones, together};
use super::choice::{Choice, Cure, Enough};
use super::overlay::Boxed;
use super::say;
use super::zone::ThinZone;

/// Breaking out what lies within the zone's joints. Where the overlay is already as thick as the new concrete, it stays so.
pub(super) fn of_zone(zone: &ThinZone, boxed: &Boxed, asked: &AskedOfThinZones) -> Choice {
    let enough = asked.new_thickness.map_or(Enough::NotJudged, |new| Enough::of(new, asked.minimum));
    let concrete = asked.new_thickness.map(|new| boxed.lacking_to(new));
    let of_concrete = concrete.and_then(|volume| asked.prices.of_concrete(volume));
    let money = together(asked.prices.breaking_out, zone.boxed, of_concrete);
    let verdict = say::verdict(
        enough,
        |by| format!("{by} under the unbonded minimum"),
        "the thickness of the new concrete was not given",
    );
    let poured =
        asked.new_thickness.map_or_else(String::new, |new| format!(", pour it {} thick", say::given(new)));
    let takes = concrete.map_or_else(
        || "concrete not known".to_owned(),
        |volume| format!("{} more concrete", say::yards(volume)),
    );
    let said = format!(
        "break out {} {}{poured}; {takes}; {}; {verdict}",
        say::square_feet(zone.boxed),
        zone.said_bounds(),
        say::cost(money),
    );
    Choice {
        cure: Cure::BreakOut,
        depth: asked.new_thickness,
        area: zone.boxed,
        concrete,
        joint: Some(zone.joint),
        money,
        enough,
        said,
    }
}
