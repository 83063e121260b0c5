//! Single verdicts, measures and words by hand.

use super::support::{judged, sound};
use crate::condition::findings::{
    CrackWidth, Finding, FindingsInput, Hollow, OldThickness, Room, Settlement, Step,
};
use crate::condition::quick::{Moves, QuickInput};
use crate::condition::{Take, Way};
use crate::failure::Code;
use crate::quantity::{Given, Length, Share, Typed};

fn given<Q: Typed>(text: &str) -> Option<Given<Q>> {
    Some(Given::read(text).unwrap())
}

#[test]
fn measures_become_the_words_of_the_site() {
    let crack = |text: &str| {
        let input = FindingsInput { measured_crack: given::<Length>(text), ..FindingsInput::default() };
        input.resolve().unwrap().findings.crack_width.unwrap()
    };
    assert_eq!(crack("0 in"), CrackWidth::Clear);
    assert_eq!(crack("0.01 in"), CrackWidth::Hairline);
    assert_eq!(crack("0.254 mm"), CrackWidth::Hairline);
    assert_eq!(crack("0.011 in"), CrackWidth::Card);
    assert_eq!(crack("0.03 in"), CrackWidth::Card);
    assert_eq!(crack("0.06 in"), CrackWidth::Coin);
    assert_eq!(crack("1/16 in"), CrackWidth::Wide);
    let step = |text: &str| {
        let input = FindingsInput { measured_step: given::<Length>(text), ..FindingsInput::default() };
        input.resolve().unwrap().findings.step.unwrap()
    };
    assert_eq!(
        [step("1/16 in"), step("1/4 in"), step("1/2 in"), step("9/16 in")],
        [Step::Coin, Step::Pencil, Step::HalfInch, Step::More]
    );
    let hollow = |text: &str| {
        let input = FindingsInput { measured_hollow: given::<Share>(text), ..FindingsInput::default() };
        input.resolve().unwrap().findings.hollow.unwrap()
    };
    assert_eq!([hollow("0 %"), hollow("5 %"), hollow("6 %")], [Hollow::Clear, Hollow::Spots, Hollow::ALot]);
    let thick = |text: &str| {
        let input = FindingsInput { measured_thickness: given::<Length>(text), ..FindingsInput::default() };
        input.resolve().unwrap().findings.old_thickness.unwrap()
    };
    assert_eq!(
        [thick("4 in"), thick("3 1/2 in"), thick("3 in"), thick("1 7/8 in")],
        [OldThickness::Full, OldThickness::Full, OldThickness::Thin, OldThickness::Shell]
    );
    let room = |text: &str| {
        let input = FindingsInput { measured_room: given::<Length>(text), ..FindingsInput::default() };
        input.resolve().unwrap().findings.room.unwrap()
    };
    assert_eq!(
        [room("4 in"), room("3 in"), room("2 in"), room("1.9 in"), room("1 in"), room("1/2 in")],
        [
            Room::FourInches,
            Room::ThreeInches,
            Room::TwoInches,
            Room::OneAndAHalf,
            Room::ThreeQuarters,
            Room::Less
        ]
    );
}

#[test]
fn a_measure_may_stand_beside_its_own_word_and_beside_unknown_only() {
    let thick = |word: OldThickness| FindingsInput {
        measured_thickness: given::<Length>("3 in"),
        old_thickness: Some(word),
        ..FindingsInput::default()
    };
    assert!(thick(OldThickness::Thin).resolve().is_ok());
    let found = thick(OldThickness::Unknown).resolve().unwrap().findings;
    assert_eq!(found.old_thickness, Some(OldThickness::Thin));
    let failure = thick(OldThickness::Full).resolve().unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "measured_thickness"));
    assert_eq!(failure.written, "3 in");
}

#[test]
fn what_is_given_goes_before_a_short_answer() {
    let quick = QuickInput { moves: Some(Moves::No), ..QuickInput::default() };
    let input = FindingsInput {
        quick: Some(quick),
        settlement: Some(Settlement::Dormant),
        ..FindingsInput::default()
    };
    let resolved = input.resolve().unwrap();
    assert_eq!(resolved.findings.settlement, Some(Settlement::Dormant));
    let taken: Vec<Finding> = resolved.taken.iter().map(|taken| taken.finding).collect();
    assert!(taken.contains(&Finding::Heave) && !taken.contains(&Finding::Settlement), "{taken:?}");
    assert!(resolved.taken.iter().all(|taken| taken.why == "the short answer moves: no"));
}

#[test]
fn straight_on_is_judged_only_where_it_is_asked_for_and_never_taken() {
    let verdict = FindingsInput::from(sound()).verdict().unwrap();
    assert_eq!(verdict.standing(Way::PartlyBonded), None);
    assert!(verdict.reasons.iter().all(|reason| reason.way != Way::PartlyBonded));
    let asked = FindingsInput { judge_partly_bonded: true, ..FindingsInput::from(sound()) };
    assert!(asked.verdict().unwrap().standing(Way::PartlyBonded).is_some());
}

#[test]
fn a_sound_slab_reads_so_that_a_customer_can_be_shown_it() {
    let text = FindingsInput::from(sound()).verdict().unwrap().to_text();
    assert!(text.starts_with("The old slab may stay: pour over it unbonded.\n"), "{text}");
    assert!(text.contains("For it: no step across a crack or a joint; it has not settled;"), "{text}");
    assert!(text.contains("Work: fill hollows over 1/2 in"), "{text}");
    assert!(!text.contains("STOP"), "{text}");
}

#[test]
fn a_stop_reads_as_one() {
    let mut findings = sound();
    findings.set(Finding::Below, Finding::Below.unknown());
    let verdict = judged(findings);
    assert_eq!(verdict.take, Take::Stop);
    let text = verdict.to_text();
    assert!(text.starts_with("STOP: nobody knows what is under it.\n"), "{text}");
    assert!(text.contains("drill through in 3 to 5 places"), "{text}");
    assert!(text.contains("Care: Cisterns,"), "{text}");
}
