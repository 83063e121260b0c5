use super::{Bond, Use, minimum};
use crate::condition::findings::{Load, Place, WetUse};
use crate::condition::rule::Then;
use crate::condition::{Effect, Finding, Findings, FindingsInput, Rule, Way, rules};
use crate::operation::Choice;
use crate::quantity::Given;
use crate::quantity::units::INCH;
use crate::quantity::{Length, Typed};

#[test]
fn every_bond_and_use_has_a_rule_that_decides() {
    for &bond in Bond::MEMBERS {
        for &used in Use::MEMBERS {
            let found = minimum(bond, used, None).unwrap();
            assert_eq!(found.rule.bond, bond);
            assert!(found.rule.decides && (found.rule.uses.is_empty() || found.rule.uses.contains(&used)));
            assert!((found.largest_stone.base() * 3.0 - found.least.base()).abs() < 1e-12);
        }
    }
}

#[test]
fn heavier_use_never_needs_less_and_bond_never_more() {
    let least = |bond, used| minimum(bond, used, None).unwrap().least.base();
    for &bond in Bond::MEMBERS {
        assert!(least(bond, Use::Foot) <= least(bond, Use::Cars));
        assert!(least(bond, Use::Cars) <= least(bond, Use::Trucks));
        assert!(least(bond, Use::Trucks) <= least(bond, Use::Jacks));
        assert!(least(bond, Use::Jacks) <= least(bond, Use::Heavy));
    }
    for &used in Use::MEMBERS {
        assert!(least(Bond::Bonded, used) <= least(Bond::Unbonded, used));
    }
}

#[test]
fn a_large_stone_makes_it_thicker() {
    let stone = Length::from_base(1.5 * INCH);
    let found = minimum(Bond::Unbonded, Use::Cars, Some(stone)).unwrap();
    assert!(found.by_stone);
    assert!((found.least.base() - 4.5 * INCH).abs() < 1e-12);
    assert!(minimum(Bond::Unbonded, Use::Cars, Some(Length::from_base(0.5))).is_err());
}

/// The findings of a sound slab that is used so.
fn used_so(used: Use) -> Findings {
    let mut findings = Findings::default();
    Finding::ALL.iter().for_each(|&finding| findings.set(finding, Some(0)));
    let (load, wet) = match used {
        Use::Foot => (Load::Foot, WetUse::Dry),
        Use::Cars => (Load::Car, WetUse::Dry),
        Use::Trucks => (Load::Truck, WetUse::Dry),
        Use::WashBay => (Load::Car, WetUse::Wet),
        // The findings have no word for what is heavier than trucks and jacks.
        Use::Jacks | Use::Heavy => (Load::Jacks, WetUse::Dry),
    };
    Findings { load: Some(load), wet_use: Some(wet), ..findings }
}

/// Whether the verdict lets an overlay of so many inches stand as it is: no rule about its room closes the way or asks for more room.
fn has_room(bond: Bond, findings: Findings, thickness: f64) -> bool {
    let way = match bond {
        Bond::Bonded => Way::Bonded,
        Bond::PartlyBonded => Way::PartlyBonded,
        Bond::Unbonded => Way::Unbonded,
    };
    let room = Some(Given::computed(Length::from_base(thickness * INCH)));
    let input = FindingsInput {
        measured_room: room,
        room: None,
        judge_partly_bonded: true,
        ..FindingsInput::from(findings)
    };
    let verdict = input.verdict().unwrap();
    let about_room = |rule: &Rule| rule.when.iter().any(|when| when.finding() == Finding::Room);
    // Small stone is no matter of room.
    let closes = |then: &Then| {
        then.effect >= Effect::Refuses || then.work.is_some_and(|work| work.contains("until the least"))
    };
    !verdict.reasons.iter().any(|reason| reason.way == way && about_room(reason.rule) && closes(reason.then))
}

#[test]
fn the_verdict_on_the_old_slab_wants_the_same_thickness() {
    for &bond in Bond::MEMBERS {
        for &used in Use::MEMBERS.iter().filter(|used| **used != Use::Heavy) {
            let least = minimum(bond, used, None).unwrap().least.base() / INCH;
            let judged = |thickness| has_room(bond, used_so(used), thickness);
            assert!(judged(least), "{bond:?} {used:?}: {least} in is refused");
            assert!(!judged(least - 0.01), "{bond:?} {used:?}: less than {least} in passes");
            for eighths in 0..=48 {
                let thickness = f64::from(eighths) / 8.0;
                assert_eq!(judged(thickness), thickness >= least, "{bond:?} {used:?} {thickness} in");
            }
        }
    }
}

#[test]
fn frost_wants_at_least_what_the_overlay_wants_and_as_much_as_is_said() {
    let least = crate::least_thickness::LOOSE_IN_FROST;
    for bond in [Bond::Unbonded, Bond::PartlyBonded] {
        let frost =
            Findings { place: Some(Place::OutdoorsFrost), load: Some(Load::Foot), ..used_so(Use::Foot) };
        assert!(has_room(bond, frost, least));
        assert!(!has_room(bond, frost, least - 0.01));
        assert!(least >= minimum(bond, Use::Foot, None).unwrap().least.base() / INCH);
    }
}

#[test]
fn the_words_of_room_say_the_numbers() {
    use crate::least_thickness as least;
    let words = Finding::Room.said();
    for bound in [
        least::LOOSE_LOADED,
        least::LOOSE,
        least::BONDED_UNDER_TRUCKS,
        least::BONDED_UNDER_CARS,
        least::BONDED,
    ] {
        let said = crate::quantity::inches(Length::from_base(bound * INCH), 8);
        let room = format!("room for {said}");
        assert!(words.iter().any(|word| *word == room || word.starts_with(&format!("{room},"))), "{room}");
        let told = |rule: &Rule| {
            rule.when.iter().any(|when| when.finding() == Finding::Room) && rule.says.contains(&said)
        };
        assert!(rules().any(told), "no rule says {said}");
    }
}
