//! Grinding the old slab in a zone.

use super::asked::{AskedOfThinZones, together};
use super::choice::{Choice, Cure, Enough};
use super::say;
use super::zone::ThinZone;
use crate::quantity::Volume;

/// Grinding the zone to the minimum under the finish. The concrete fills what is ground off, less the old slab above the finish.
pub(super) fn of_zone(zone: &ThinZone, high: Volume, asked: &AskedOfThinZones) -> Choice {
    let enough = asked.grind_at_most.map_or(Enough::NotJudged, |most| Enough::of(most, zone.deficit));
    let concrete = zone.lacking - high;
    let money = together(asked.prices.grinding, zone.area, asked.prices.of_concrete(concrete));
    let verdict = say::verdict(
        enough,
        |by| format!("{by} deeper than may be ground"),
        "how deep may be ground was not given",
    );
    let said = format!(
        "grind {} of old slab up to {} deep, {} in all; {} more concrete; {}; {verdict}",
        say::square_feet(zone.area),
        say::up(zone.deficit),
        say::yards(zone.lacking),
        say::yards(concrete),
        say::cost(money),
    );
    Choice {
        cure: Cure::Grind,
        depth: Some(zone.deficit),
        area: zone.area,
        concrete: Some(concrete),
        joint: None,
        money,
        enough,
        said,
    }
}
