//! Raising the whole finish.

use super::choice::{Choice, Cure, Enough};
use super::say;
use super::zone::{Basics, ThinZone};
use crate::geometry::Sum;
use crate::quantity::{Area, Length, Typed, Volume};

/// Lacks within this of one another are cured together, in metres.
const SAME: f64 = 1e-9;

/// Raising by what a zone lacks at its thinnest place: it cures every zone that lacks no more.
pub(super) fn of_zone(zone: &ThinZone, basics: &Basics<'_>) -> Choice {
    let cures = cures(zone.deficit, basics.deficits);
    by(zone.deficit, &format!("{cures}{}", measured(zone)), basics)
}

/// What would do if the ground beyond the shots did not count.
fn measured(zone: &ThinZone) -> String {
    match zone.deficit_measured {
        None => " (all of it beyond the shots)".to_owned(),
        Some(measured) if measured.base() < zone.deficit.base() - SAME => {
            format!(" ({} would do between the shots)", say::up(measured))
        }
        Some(_) => String::new(),
    }
}

/// Raising until no zone is left.
pub(super) fn for_all(rise: Length, basics: &Basics<'_>) -> Choice {
    by(rise, "no thin zone is left", basics)
}

/// Which zones a rise cures, by number.
fn cures(rise: Length, deficits: &[Length]) -> String {
    let cured = deficits.iter().enumerate().filter(|(_, deficit)| deficit.base() <= rise.base() + SAME);
    let cured: Vec<String> = cured.map(|(index, _)| (index + 1).to_string()).collect();
    match cured.as_slice() {
        [_] if deficits.len() == 1 => "cures it".to_owned(),
        all if all.len() == deficits.len() => format!("cures all {} zones", all.len()),
        [one] => format!("cures zone {one} only"),
        some if some.len() <= NAMED => format!("cures zones {}", some.join(", ")),
        some => format!("cures {} of {} zones", some.len(), deficits.len()),
    }
}

/// So many zones are named.
const NAMED: usize = 6;

fn by(rise: Length, cures: &str, basics: &Basics<'_>) -> Choice {
    let field = basics.whole;
    // Risen by so much, the overlay is what now is thicker than so much less than nothing.
    let risen = field.over(-rise.base()).map(|over| over.volume).collect::<Sum>().value();
    let concrete = Volume::from_base(risen - field.fill());
    let money = basics.asked.prices.of_concrete(concrete);
    let said = format!(
        "raise the whole finish by {}: {cures}; {} more concrete; {}; enough where sills, doors and steps allow it",
        say::up(rise),
        say::yards(concrete),
        say::cost(money),
    );
    Choice {
        cure: Cure::Raise,
        depth: Some(rise),
        area: Area::from_base(field.area()),
        concrete: Some(concrete),
        joint: None,
        money,
        enough: Enough::Yes,
        said,
    }
}
