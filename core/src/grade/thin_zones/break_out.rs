//! Breaking out the old slab under a zone.

use super::asked::{AskedOfThinZones, together};
use super::choice::{Choice, Cure, Enough};
use super::say;
use super::zone::ThinZone;
use crate::grade::thickness_field::ThicknessField;
use crate::quantity::{Length, Typed, Volume};

/// Breaking out what lies within the zone's joints. Where the overlay is already as thick as the new concrete, it stays so.
pub(super) fn of_zone(zone: &ThinZone, boxed: &ThicknessField<'_>, asked: &AskedOfThinZones) -> Choice {
    let enough = asked.new_thickness.map_or(Enough::NotJudged, |new| Enough::of(new, asked.minimum));
    let concrete = asked.new_thickness.map(|new| more(boxed, new));
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

/// Concrete over the present overlay: what is missing to the new thickness, where old slab above the finish counts as no overlay.
fn more(boxed: &ThicknessField<'_>, new: Length) -> Volume {
    Volume::from_base(boxed.volume_missing_to(new.base()) - boxed.high_spots())
}
