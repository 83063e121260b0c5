//! Approaches worked by hand.

use super::*;
use crate::failure::Code;
use crate::quantity::read;

fn length(text: &str) -> Length {
    read(text).unwrap()
}

fn height(text: &str) -> Elevation {
    read(text).unwrap()
}

fn slope(text: &str) -> Slope {
    read(text).unwrap()
}

fn asked(floor: &str, profile: &[(&str, &str)]) -> Asked {
    let point = |(out, z): &(&str, &str)| ProfilePoint { distance: length(out), elevation: height(z) };
    Asked {
        floor: height(floor),
        floor_fall: slope("0 %"),
        profile: profile.iter().map(point).collect(),
        traffic: Traffic::Vehicle,
        fall: None,
        over: length("10 ft"),
        tie_in: None,
        thickness: None,
        rebate: None,
        vehicle: Vehicle::default(),
    }
}

#[track_caller]
fn close(value: f64, expected: f64) {
    assert!((value - expected).abs() < 1e-12, "{value} is not {expected}");
}

const FOOT: f64 = 0.3048;

/// A drive read at the door, half way and at the kerb: 100.00, 99.95 at 5 ft, 99.60 at 20 ft. At 2 % over 10 ft the place at 5 ft
/// wants 99.95 + 0.10 = 100.05 at the door, that at 10 ft 99.8333 + 0.20 = 100.0333, the door itself 100.00: the place at 5 ft decides.
#[test]
fn a_drive_read_at_three_places() {
    let profile = [("0 ft", "100 ft"), ("5 ft", "99.95 ft"), ("20 ft", "99.6 ft")];
    let found = Approach::of(&asked("100.10 ft", &profile)).unwrap();
    close(found.needed.base(), 100.05 * FOOT);
    close(found.governing.base(), 5.0 * FOOT);
    close(found.spare.base(), 0.05 * FOOT);
    assert_eq!(found.away, Away::Yes);
    close(found.step.height.base(), 0.1 * FOOT);
    // 0.05 in 5 ft is 1 %, 0.35 in 15 ft is 2.333 %: the first falls too little, the ground stays.
    close(found.stretches[0].fall.base(), 0.01);
    close(found.stretches[1].fall.base(), 0.35 / 15.0);
    assert_eq!(found.breaks.len(), 1);
    assert_eq!(found.breaks[0].kind, BreakKind::Crest);
    close(found.breaks[0].change.base(), 0.35 / 15.0 - 0.01);
    close(found.breaks[0].spacing.base(), 15.0 * FOOT);
    let falls: Vec<Judged> =
        found.rules.iter().filter(|rule| rule.matter == Matter::FallAway).map(|rule| rule.judged).collect();
    assert_eq!(falls, [Judged::Fail, Judged::Pass]);
    assert_eq!(found.judged(), Judged::Fail);
}

/// The same drive poured anew from the door to 20 ft, an inch under the floor: (100.10 - 1/12 - 99.60) / 20 = 2.083 %.
#[test]
fn a_new_drive_to_the_kerb() {
    let profile = [("0 ft", "100 ft"), ("5 ft", "99.95 ft"), ("20 ft", "99.6 ft"), ("30 ft", "99.1 ft")];
    let mut asked =
        Asked { tie_in: Some(length("20 ft")), rebate: Some(length("1 in")), ..asked("100.10 ft", &profile) };
    asked.thickness = Some(length("4 in"));
    asked.vehicle.wheelbase = Some(length("110 in"));
    let found = Approach::of(&asked).unwrap();
    // Only the tie-in counts: 99.60 + 2 % of 20 ft + 1 in.
    close(found.needed.base(), (99.6 + 0.4 + 1.0 / 12.0) * FOOT);
    assert_eq!(found.stretches.len(), 2);
    let ramp = (100.10 - 1.0 / 12.0 - 99.6) / 20.0;
    close(found.stretches[0].fall.base(), ramp);
    // At the tie-in the grade goes from 2.083 to 5 %.
    close(found.breaks[0].change.base(), 0.05 - ramp);
    close(found.breaks[0].taken.unwrap().base(), 110.0 * 0.0254 * (0.05 - ramp) / 4.0);
    // 4 in of slab; at 5 ft the ground stands 99.95 - (100.0167 - 5 x 0.020833) = 0.0375 ft over the new approach.
    close(found.dig.unwrap().base(), 4.0 * 0.0254 + 0.0375 * FOOT);
    close(found.step.height.base(), 0.0254);
    assert_eq!((found.step.judged, found.judged()), (Judged::Pass, Judged::Pass));
    let texas: Vec<&Rule> = found.rules.iter().filter(|rule| rule.basis == BasisId::DrivewayTexas).collect();
    // 2.9 % is easy, but the end of what was measured is 10 ft off, under 11.
    assert_eq!((texas.len(), texas[0].judged), (1, Judged::Fail));
}

/// R401.3: 6 in of fall in 10 ft are 5 %.
#[test]
fn six_inches_in_ten_feet() {
    let found = Approach::of(&asked("100 ft", &[("0 ft", "100 ft"), ("10 ft", "99.5 ft")])).unwrap();
    close(found.stretches[0].fall.base(), 0.05);
    // Without a step the floor, level, meets it in a crest of 5 %.
    assert_eq!((found.breaks.len(), found.breaks[0].kind), (1, BreakKind::Crest));
    close(found.breaks[0].change.base(), 0.05);
    // The two-per-cent line of 10 ft is 2.4 in: the door itself decides, for the ground falls more than that.
    close(found.needed.base(), 100.0 * FOOT);
}

#[test]
fn ground_that_falls_to_the_door_wants_a_drain() {
    let profile = [("0 ft", "99.9 ft"), ("8 ft", "100.1 ft"), ("20 ft", "100 ft")];
    let found = Approach::of(&Asked { rebate: Some(length("3/4 in")), ..asked("100 ft", &profile) }).unwrap();
    assert_eq!(found.away, Away::TooLow);
    // 100.1 + 2 % of 8 ft at 8 ft; 100.0833 + 0.2 at 10 ft.
    close(found.needed.base(), (100.1 - 0.1 / 6.0 + 0.2 + 0.75 / 12.0) * FOOT);
    close(found.trench.floor.base(), (99.9 + 0.75 / 12.0) * FOOT);
    close(found.trench.reach.base(), 8.0 * FOOT);
    close(found.trench.catches(length("9 ft")).base(), 72.0 * FOOT * FOOT);
    assert!(found.notes().iter().any(|note| note.code == NoteCode::FloorTooLow));
}

#[test]
fn a_wheelchair_takes_one_in_twelve_and_no_step() {
    let ramp = |floor: &str, end: &str| {
        let profile = [("0 ft", floor), ("12 ft", end)];
        Approach::of(&Asked { traffic: Traffic::Wheelchair, ..asked(floor, &profile) }).unwrap()
    };
    assert_eq!(ramp("100 ft", "99 ft").judged(), Judged::Pass);
    let steep = ramp("100 ft", "98.99 ft");
    assert_eq!(steep.judged(), Judged::ConfirmLocally);
    assert!(steep.notes().iter().any(|note| note.code == NoteCode::ConfirmLocally));
    let stepped = Approach::of(&Asked {
        traffic: Traffic::Wheelchair,
        ..asked("100.1 ft", &[("0 ft", "100 ft"), ("12 ft", "99.5 ft")])
    });
    assert_eq!(stepped.unwrap().step.judged, Judged::ConfirmLocally);
}

/// The crest of 10 % takes 2 3/4 in of 110 in from axle to axle: with 3 in of room it passes, with 2 1/2 it does not.
#[test]
fn a_low_vehicle_touches_a_crest() {
    let judged = |room: &str, wanted: Matter| {
        let profile = [("0 ft", "100 ft"), ("15 ft", "100 ft"), ("30 ft", "98.5 ft"), ("60 ft", "98.5 ft")];
        let vehicle = Vehicle {
            wheelbase: Some(length("110 in")),
            clearance: Some(length(room)),
            overhang: Some(length("36 in")),
            bumper: Some(length("3.5 in")),
        };
        let found = Approach::of(&Asked { vehicle, ..asked("100.05 ft", &profile) }).unwrap();
        found.rules.iter().find(|rule| rule.matter == wanted).unwrap().judged
    };
    assert_eq!(
        (judged("3 in", Matter::Crest), judged("2.5 in", Matter::Crest)),
        (Judged::Pass, Judged::Fail)
    );
    // 3.5 / 36 = 9.7 %, under the sag of 10 %.
    assert_eq!(judged("3 in", Matter::Sag), Judged::Fail);
}

#[test]
fn what_runs_not_outwards_from_the_door_is_refused() {
    let refused = |profile: &[(&str, &str)], tie_in: Option<&str>| {
        let asked = Asked { tie_in: tie_in.map(length), ..asked("100 ft", profile) };
        Approach::of(&asked).unwrap_err().code
    };
    let good = [("0 ft", "100 ft"), ("10 ft", "99.5 ft")];
    assert_eq!(refused(&good[..1], None), Code::ApproachShort);
    assert_eq!(refused(&[("1 ft", "100 ft"), ("10 ft", "99.5 ft")], None), Code::ApproachStart);
    assert_eq!(refused(&[good[0], good[1], good[1]], None), Code::ApproachUnsorted);
    assert_eq!(refused(&good, Some("10.01 ft")), Code::TieInBeyond);
    assert_eq!(refused(&good, Some("0 ft")), Code::TieInBeyond);
}
