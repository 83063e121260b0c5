//! What the reader of the zones must know.

use super::found::ThinZones;
use super::say;
use super::zone::ThinZone;
use crate::caution::Caution;
use crate::geometry::Sum;
use crate::geometry::boxes::{Boxes, Extent};
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Typed};

pub(super) fn of(found: &ThinZones) -> Vec<Note> {
    let mut notes = Vec::new();
    if !found.zones.is_empty() {
        notes.extend(incomplete(found));
        notes.extend(beyond(found));
        notes.extend(overlapping(found));
    }
    notes.extend(crumbs(found));
    if !found.zones.is_empty() {
        let dust = "of grinding, sawing and breaking out:";
        notes.push(Note::new(NoteCode::Silica, format!("{dust} {}", Caution::Silica.text())));
    }
    notes
}

/// What was not given, and so which choices are not compared.
fn incomplete(found: &ThinZones) -> Option<Note> {
    let asked = &found.asked;
    let missing = [
        (asked.prices.concrete.is_none(), "the price of concrete"),
        (asked.prices.bonding.is_none(), "the price of bonding"),
        (asked.prices.grinding.is_none(), "the price of grinding"),
        (asked.prices.breaking_out.is_none(), "the price of breaking out"),
        (asked.bonded_minimum.is_none(), "the least thickness of a bonded part"),
        (asked.grind_at_most.is_none(), "how deep may be ground"),
        (asked.new_thickness.is_none(), "the thickness of new concrete where the old slab comes out"),
    ];
    let missing: Vec<&str> = missing.into_iter().filter_map(|(is, what)| is.then_some(what)).collect();
    (!missing.is_empty()).then(|| {
        let text = format!("not given: {}; choices that need it are not compared", missing.join(", "));
        Note::new(NoteCode::ChoicesIncomplete, text)
    })
}

fn beyond(found: &ThinZones) -> Option<Note> {
    let reaching: Vec<_> = found.zones.iter().filter(|zone| zone.beyond.base() > 0.0).collect();
    let area = reaching.iter().map(|zone| zone.beyond.base()).collect::<Sum>().value();
    (!reaching.is_empty()).then(|| {
        let (area, named) =
            (say::square_feet(Area::from_base(area)), named(reaching.iter().map(|zone| zone.name.clone())));
        let text =
            format!("{area} of {named} lie beyond the shots: extended, not measured; take shots there first");
        Note::new(NoteCode::BeyondShots, text)
    })
}

fn overlapping(found: &ThinZones) -> Option<Note> {
    let extent = |zone: &ThinZone| Extent { low: zone.bounds.from.place(), high: zone.bounds.to.place() };
    let boxes = Boxes::new(found.zones.iter().map(extent).collect());
    let mut pairs = Vec::new();
    for (number, zone) in found.zones.iter().enumerate() {
        let mut others = Vec::new();
        boxes.overlapping(&extent(zone), |other| others.push(other));
        others.sort_unstable();
        let others =
            others.into_iter().filter(|&other| other > number).filter_map(|other| found.zones.get(other));
        let others = others.filter(|other| zone.bounds.overlaps(&other.bounds));
        pairs.extend(others.map(|other| format!("{} and {}", zone.name, other.name)));
        if pairs.len() > NAMED {
            break;
        }
    }
    (!pairs.is_empty()).then(|| {
        let named = named(pairs.into_iter());
        let text = format!(
            "the joints around {named} overlap: bond or break them out as one; their areas are counted twice"
        );
        Note::new(NoteCode::BoxesOverlap, text)
    })
}

/// So many are named.
const NAMED: usize = 5;

/// The first of a list.
fn named(mut list: impl Iterator<Item = String>) -> String {
    let first: Vec<String> = list.by_ref().take(NAMED).collect();
    let more = if list.next().is_some() { " and others" } else { "" };
    format!("{}{more}", first.join(", "))
}

fn crumbs(found: &ThinZones) -> Option<Note> {
    (found.left_out.base() > 0.0).then(|| {
        let text = "zones under a square millimetre count in the sums and are not listed".to_owned();
        Note::new(NoteCode::CrumbsLeftOut, text)
    })
}
