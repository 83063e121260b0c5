//! Every kind: a record that passes, one that does not, and one in which a measure that decides is missing.

use super::{OLD, judged, length};
use crate::clearance::{About, End, Kind, Measure, Measures, Swing, Verdict};
use crate::operation::Choice;
use crate::quantity::{Elevation, Length, Typed};

type Given = fn(&mut Measures);

/// What is expected of a record: kind, raise, measures, verdict, the check that decides, its room in inches.
struct Golden(Kind, &'static str, Given, Verdict, About, Option<f64>);

/// What a record lacks: kind, raise, measures, the measure asked for.
struct Asked(Kind, &'static str, Given, Measure);

fn some(text: &str) -> Option<Length> {
    Some(length(text))
}

/// An elevation so many inches above the old slab.
fn above(inches: f64) -> Elevation {
    Elevation::from_base(OLD + inches * 0.0254)
}

fn big_door(measures: &mut Measures) {
    measures.above_slab = some("10 ft");
    measures.needed = some("9 ft");
}

fn header_too_low(measures: &mut Measures) {
    measures.above_slab = some("9 ft 2 in");
    measures.needed = some("9 ft");
}

const GOLDEN: &[Golden] = &[
    Golden(Kind::SectionalDoor, "3 in", big_door, Verdict::Pass, About::SealLine, Some(0.25)),
    Golden(Kind::SectionalDoor, "3 in", header_too_low, Verdict::Fail, About::Opening, Some(-1.0)),
    Golden(Kind::RollDoor, "3 in", big_door, Verdict::Pass, About::SealLine, Some(0.25)),
    Golden(Kind::RollDoor, "3 in", header_too_low, Verdict::Fail, About::Opening, Some(-1.0)),
    Golden(
        Kind::RollDoor,
        "3 in",
        |m| {
            big_door(m);
            m.eyes_now = some("2 in");
        },
        Verdict::Fail,
        About::Eyes,
        Some(-1.0),
    ),
    Golden(
        Kind::SwingingDoor,
        "3 in",
        |m| {
            big_door(m);
            m.gap_now = some("1/2 in");
            m.gap = some("1/2 in");
            m.may_lose = some("4 in");
        },
        Verdict::Pass,
        About::SealLine,
        Some(0.25),
    ),
    Golden(
        Kind::SwingingDoor,
        "3 in",
        |m| {
            big_door(m);
            m.may_lose = some("2 in");
        },
        Verdict::Fail,
        About::Leaf,
        Some(-1.0),
    ),
    Golden(
        Kind::SlidingDoor,
        "3 in",
        |m| {
            big_door(m);
            m.runs_outside = Some(false);
        },
        Verdict::Pass,
        About::SealLine,
        Some(0.25),
    ),
    Golden(
        Kind::SlidingDoor,
        "3 in",
        |m| {
            header_too_low(m);
            m.runs_outside = Some(true);
        },
        Verdict::Fail,
        About::Opening,
        Some(-1.0),
    ),
    Golden(
        Kind::PassageDoor,
        "2 in",
        |m| {
            m.gap_now = some("1/2 in");
            m.covering = some("1/4 in");
            m.may_lose = some("2 1/2 in");
        },
        Verdict::Pass,
        About::Leaf,
        Some(0.375),
    ),
    Golden(
        Kind::PassageDoor,
        "3 in",
        |m| {
            m.gap_now = some("3/8 in");
            m.may_lose = some("1 in");
        },
        Verdict::Fail,
        About::Leaf,
        Some(-2.0),
    ),
    Golden(
        Kind::PassageDoor,
        "1 in",
        |m| {
            m.gap_now = some("3/8 in");
            m.may_lose = some("1 in");
            m.fire_rated = Some(true);
        },
        Verdict::ConfirmLocally,
        About::Rating,
        None,
    ),
    Golden(
        Kind::Threshold,
        "3 in",
        |m| {
            m.elevation = Some(above(4.0));
            m.exit = Some(true);
            m.swing = Some(Swing::In);
        },
        Verdict::Pass,
        About::Landing,
        Some(0.5),
    ),
    Golden(
        Kind::Threshold,
        "5 in",
        |m| m.elevation = Some(above(4.0)),
        Verdict::Fail,
        About::Sill,
        Some(-1.0),
    ),
    Golden(
        Kind::Threshold,
        "1 in",
        |m| {
            m.elevation = Some(above(4.0));
            m.exit = Some(true);
            m.swing = Some(Swing::In);
        },
        Verdict::ConfirmLocally,
        About::Landing,
        Some(-1.5),
    ),
    Golden(
        Kind::Threshold,
        "3 in",
        |m| {
            m.elevation = Some(above(4.0));
            m.free = some("1 1/2 in");
        },
        Verdict::Fail,
        About::Sill,
        Some(-0.5),
    ),
    Golden(
        Kind::Stair,
        "1/4 in",
        |m| m.risers = vec![length("7 1/2 in"), length("7 3/8 in")],
        Verdict::Pass,
        About::RiserSpread,
        Some(0.25),
    ),
    Golden(
        Kind::Stair,
        "3 in",
        |m| {
            m.riser_count = Some(2);
            m.flight = some("14 in");
        },
        Verdict::Fail,
        About::RiserSpread,
        Some(-2.625),
    ),
    Golden(
        Kind::Stair,
        "3 in",
        |m| {
            m.riser_count = Some(2);
            m.flight = some("14 in");
            m.end = Some(End::Head);
        },
        Verdict::Fail,
        About::RiserSpread,
        Some(-2.625),
    ),
    Golden(Kind::WallSill, "3 in", |m| m.above_slab = some("4 in"), Verdict::Pass, About::Wood, Some(1.0)),
    Golden(
        Kind::WallSill,
        "3 in",
        |m| m.above_slab = some("1 1/2 in"),
        Verdict::Fail,
        About::Wood,
        Some(-1.5),
    ),
    Golden(
        Kind::WallSill,
        "3 in",
        |m| {
            m.above_slab = some("4 in");
            m.ground = vec![above(-2.0)];
        },
        Verdict::ConfirmLocally,
        About::Earth,
        Some(-2.0),
    ),
    Golden(Kind::Siding, "3 in", |m| m.above_slab = some("5 1/2 in"), Verdict::Pass, About::Wood, Some(0.5)),
    Golden(
        Kind::Siding,
        "3 in",
        |m| {
            m.above_slab = some("4 in");
            m.exposed = Some(true);
        },
        Verdict::Fail,
        About::Wood,
        Some(-1.0),
    ),
    Golden(
        Kind::Framing,
        "3 in",
        |m| {
            m.above_slab = some("1 in");
            m.kept_free = Some(true);
        },
        Verdict::Pass,
        About::Covered,
        None,
    ),
    Golden(
        Kind::Framing,
        "3 in",
        |m| {
            m.above_slab = some("1 in");
            m.kept_free = Some(false);
        },
        Verdict::Fail,
        About::Covered,
        Some(-2.0),
    ),
    Golden(
        Kind::TermiteStrip,
        "3 in",
        |m| m.above_slab = some("9 1/2 in"),
        Verdict::Pass,
        About::Strip,
        Some(0.5),
    ),
    Golden(
        Kind::TermiteStrip,
        "3 in",
        |m| m.above_slab = some("8 in"),
        Verdict::ConfirmLocally,
        About::Strip,
        Some(-1.0),
    ),
    Golden(
        Kind::TermiteStrip,
        "3 in",
        |m| {
            m.above_slab = some("8 in");
            m.free = some("6 in");
        },
        Verdict::Fail,
        About::Strip,
        Some(-1.0),
    ),
    Golden(
        Kind::IgnitionSource,
        "3 in",
        |m| m.above_slab = some("22 in"),
        Verdict::Pass,
        About::Ignition,
        Some(1.0),
    ),
    Golden(
        Kind::IgnitionSource,
        "3 in",
        |m| {
            m.above_slab = some("18 in");
            m.vehicles = Some(true);
        },
        Verdict::ConfirmLocally,
        About::Ignition,
        Some(-3.0),
    ),
    Golden(
        Kind::Headroom,
        "3 in",
        |m| {
            m.above_slab = some("7 ft");
            m.needed = some("6 ft 8 in");
        },
        Verdict::Pass,
        About::Opening,
        Some(1.0),
    ),
    Golden(
        Kind::Headroom,
        "3 in",
        |m| m.above_slab = some("7 ft 2 in"),
        Verdict::ConfirmLocally,
        About::Opening,
        Some(-1.0),
    ),
    Golden(
        Kind::Headroom,
        "3 in",
        |m| {
            m.above_slab = some("7 ft 2 in");
            m.needed = some("7 ft");
        },
        Verdict::Fail,
        About::Opening,
        Some(-1.0),
    ),
    Golden(
        Kind::Panel,
        "3 in",
        |m| {
            m.above_slab = some("30 in");
            m.free = some("24 in");
        },
        Verdict::Pass,
        About::Panel,
        Some(3.0),
    ),
    Golden(
        Kind::Panel,
        "3 in",
        |m| m.above_slab = some("30 in"),
        Verdict::ConfirmLocally,
        About::Panel,
        None,
    ),
    Golden(
        Kind::DrainRim,
        "3 in",
        |m| m.above_slab = some("2 7/8 in"),
        Verdict::Pass,
        About::Rim,
        Some(0.125),
    ),
    Golden(Kind::DrainRim, "3 in", |m| m.above_slab = some("1/2 in"), Verdict::Fail, About::Rim, Some(-2.25)),
    Golden(
        Kind::DrainRim,
        "3 in",
        |m| m.above_slab = some("2 5/8 in"),
        Verdict::ConfirmLocally,
        About::Rim,
        Some(-0.125),
    ),
    Golden(Kind::DrainRim, "3 in", |m| m.above_slab = some("4 in"), Verdict::Fail, About::Rim, Some(-1.0)),
    Golden(Kind::Cleanout, "3 in", |m| m.above_slab = some("3 in"), Verdict::Pass, About::Covered, Some(0.0)),
    Golden(
        Kind::Cleanout,
        "4 1/2 in",
        |m| m.above_slab = some("1 in"),
        Verdict::Fail,
        About::Covered,
        Some(-3.5),
    ),
    Golden(
        Kind::WeepHole,
        "3 in",
        |m| m.above_slab = some("4 1/4 in"),
        Verdict::Pass,
        About::Free,
        Some(0.25),
    ),
    Golden(
        Kind::WeepHole,
        "3 in",
        |m| m.above_slab = some("3 1/2 in"),
        Verdict::ConfirmLocally,
        About::Free,
        Some(-0.5),
    ),
    Golden(
        Kind::WeepHole,
        "3 in",
        |m| m.above_slab = some("2 in"),
        Verdict::Fail,
        About::Covered,
        Some(-1.0),
    ),
    Golden(Kind::CrawlVent, "3 in", |m| m.above_slab = some("6 in"), Verdict::Pass, About::Free, Some(2.0)),
    Golden(
        Kind::CrawlVent,
        "3 in",
        |m| m.above_slab = some("1 in"),
        Verdict::Fail,
        About::Covered,
        Some(-2.0),
    ),
    Golden(
        Kind::ShutOff,
        "3 in",
        |m| m.above_slab = some("3 1/8 in"),
        Verdict::Pass,
        About::Covered,
        Some(0.125),
    ),
    Golden(
        Kind::ShutOff,
        "3 in",
        |m| m.above_slab = some("1/8 in"),
        Verdict::Fail,
        About::Covered,
        Some(-2.875),
    ),
    Golden(Kind::HoseBib, "3 in", |m| m.above_slab = some("18 in"), Verdict::Pass, About::Free, Some(9.0)),
    Golden(
        Kind::HoseBib,
        "3 in",
        |m| {
            m.above_slab = some("12 in");
            m.free = some("10 in");
        },
        Verdict::Fail,
        About::Free,
        Some(-1.0),
    ),
    Golden(Kind::GasRiser, "3 in", |m| m.above_slab = some("8 in"), Verdict::Pass, About::Free, Some(2.0)),
    Golden(
        Kind::GasRiser,
        "3 in",
        |m| m.above_slab = some("5 in"),
        Verdict::ConfirmLocally,
        About::Free,
        Some(-1.0),
    ),
    Golden(Kind::Post, "3 in", |m| m.above_slab = some("4 in"), Verdict::Pass, About::Covered, Some(1.0)),
    Golden(
        Kind::Post,
        "3 in",
        |m| {
            m.above_slab = some("1/2 in");
            m.kept_free = Some(false);
        },
        Verdict::Fail,
        About::Covered,
        Some(-2.5),
    ),
    Golden(
        Kind::Anchor,
        "3 in",
        |m| {
            m.above_slab = some("1 in");
            m.kept_free = Some(true);
        },
        Verdict::Pass,
        About::Covered,
        None,
    ),
    Golden(
        Kind::Anchor,
        "3 in",
        |m| {
            m.above_slab = some("1 in");
            m.kept_free = Some(false);
        },
        Verdict::Fail,
        About::Covered,
        Some(-2.0),
    ),
    Golden(Kind::Wire, "3 in", |m| m.above_slab = some("6 in"), Verdict::Pass, About::Covered, Some(3.0)),
    Golden(
        Kind::Wire,
        "3 in",
        |m| {
            m.above_slab = some("2 in");
            m.kept_free = Some(false);
        },
        Verdict::Fail,
        About::Covered,
        Some(-1.0),
    ),
    Golden(Kind::BuriedService, "3 in", |m| m.located = Some(true), Verdict::Pass, About::Services, None),
    Golden(
        Kind::BuriedService,
        "3 in",
        |m| m.located = Some(false),
        Verdict::ConfirmLocally,
        About::Services,
        None,
    ),
    Golden(
        Kind::OpenEdge,
        "3 in",
        |m| {
            m.ground = vec![above(1.0), above(1.0)];
            m.route = Some(false);
        },
        Verdict::Pass,
        About::Edge,
        Some(2.0),
    ),
    Golden(
        Kind::OpenEdge,
        "3 in",
        |m| m.ground = vec![above(1.0), above(3.75)],
        Verdict::Fail,
        About::Edge,
        Some(-0.75),
    ),
    Golden(
        Kind::OpenEdge,
        "3 in",
        |m| {
            m.ground = vec![above(1.0), above(1.0)];
            m.route = Some(true);
        },
        Verdict::ConfirmLocally,
        About::Step,
        Some(-1.5),
    ),
    Golden(
        Kind::OpenEdge,
        "3 in",
        |m| {
            m.ground = vec![above(-28.0), above(-28.0)];
            m.route = Some(false);
        },
        Verdict::ConfirmLocally,
        About::Guard,
        Some(-1.0),
    ),
];

fn nothing(_: &mut Measures) {}

const ASKED: &[Asked] = &[
    Asked(Kind::SectionalDoor, "3 in", |m| m.above_slab = some("10 ft"), Measure::Needed),
    Asked(Kind::RollDoor, "3 in", |m| m.needed = some("9 ft"), Measure::AboveSlab),
    Asked(Kind::SwingingDoor, "3 in", big_door, Measure::MayLose),
    Asked(Kind::SlidingDoor, "3 in", big_door, Measure::RunsOutside),
    Asked(Kind::PassageDoor, "3 in", |m| m.gap_now = some("1/2 in"), Measure::MayLose),
    Asked(Kind::PassageDoor, "3 in", |m| m.may_lose = some("2 in"), Measure::GapNow),
    Asked(Kind::Threshold, "3 in", nothing, Measure::Elevation),
    Asked(Kind::Threshold, "1 in", |m| m.elevation = Some(above(4.0)), Measure::Exit),
    Asked(
        Kind::Threshold,
        "1 in",
        |m| {
            m.elevation = Some(above(4.0));
            m.exit = Some(true);
        },
        Measure::Swing,
    ),
    Asked(Kind::Stair, "3 in", nothing, Measure::Risers),
    Asked(Kind::WallSill, "3 in", nothing, Measure::Elevation),
    Asked(Kind::Siding, "3 in", |m| m.above_slab = some("4 in"), Measure::Exposed),
    Asked(Kind::Framing, "3 in", |m| m.above_slab = some("1 in"), Measure::KeptFree),
    Asked(Kind::TermiteStrip, "3 in", nothing, Measure::Elevation),
    Asked(Kind::IgnitionSource, "3 in", |m| m.above_slab = some("18 in"), Measure::Vehicles),
    Asked(Kind::Headroom, "3 in", |m| m.needed = some("7 ft"), Measure::AboveSlab),
    Asked(Kind::Panel, "3 in", nothing, Measure::Elevation),
    Asked(Kind::DrainRim, "3 in", nothing, Measure::Elevation),
    Asked(Kind::Cleanout, "3 in", nothing, Measure::Elevation),
    Asked(Kind::WeepHole, "3 in", |m| m.free = some("1 in"), Measure::Elevation),
    Asked(Kind::CrawlVent, "3 in", nothing, Measure::Elevation),
    Asked(Kind::ShutOff, "3 in", nothing, Measure::Elevation),
    Asked(Kind::HoseBib, "3 in", nothing, Measure::Elevation),
    Asked(Kind::GasRiser, "3 in", nothing, Measure::Elevation),
    Asked(Kind::Post, "3 in", |m| m.above_slab = some("1 in"), Measure::KeptFree),
    Asked(Kind::Anchor, "3 in", |m| m.above_slab = some("1 in"), Measure::KeptFree),
    Asked(Kind::Wire, "3 in", |m| m.above_slab = some("1 in"), Measure::KeptFree),
    Asked(Kind::BuriedService, "3 in", nothing, Measure::Located),
    Asked(Kind::OpenEdge, "3 in", nothing, Measure::Ground),
    Asked(Kind::OpenEdge, "3 in", |m| m.ground = vec![above(1.0), above(1.0)], Measure::Route),
];

fn measures(given: Given) -> Measures {
    let mut measures = Measures::default();
    given(&mut measures);
    measures
}

#[test]
fn every_record_is_judged_as_by_hand() {
    for Golden(kind, by, given, verdict, about, room) in GOLDEN {
        let judgement = judged(*kind, measures(*given), by);
        let decides = judgement.decides().unwrap();
        let told = format!("{} raised {by}: {}", kind.word(), decides.text);
        assert_eq!((judgement.verdict(), decides.about), (*verdict, *about), "{told}");
        match (decides.room, room) {
            (Some(had), Some(wanted)) => {
                assert!((had.base() / 0.0254 - wanted).abs() < 1e-6, "{told}: {}", had.base() / 0.0254);
            }
            (None, None) => {}
            other => panic!("{told}: {other:?}"),
        }
    }
}

#[test]
fn what_decides_and_is_missing_is_asked_for_by_name() {
    for Asked(kind, by, given, measure) in ASKED {
        let judgement = judged(*kind, measures(*given), by);
        assert_eq!(judgement.verdict(), Verdict::Ask, "{}", kind.word());
        let asks: Vec<Measure> = judgement.checks.iter().filter_map(|check| check.asks).collect();
        assert!(asks.contains(measure), "{}: {asks:?}", kind.word());
        assert!(judgement.floor_at_most().is_none());
    }
}

#[test]
fn every_kind_has_its_records() {
    for &kind in Kind::MEMBERS {
        let verdicts: Vec<Verdict> =
            GOLDEN.iter().filter(|golden| golden.0 == kind).map(|golden| golden.3).collect();
        assert!(verdicts.contains(&Verdict::Pass), "{}", kind.word());
        assert!(verdicts.iter().any(|verdict| *verdict != Verdict::Pass), "{}", kind.word());
        assert!(ASKED.iter().any(|asked| asked.0 == kind), "{}", kind.word());
    }
}

/// More raise never mends what fails where a floor can be too high; a rim and an edge can also be too high themselves.
#[test]
fn more_raise_never_mends_a_failure() {
    let rises = ["1/8 in", "1/2 in", "1 in", "2 in", "3 in", "4 in", "6 in", "10 in", "20 in"];
    let risen = |kind: Kind| !matches!(kind, Kind::DrainRim | Kind::OpenEdge);
    for Golden(kind, _, given, ..) in GOLDEN.iter().filter(|golden| risen(golden.0)) {
        let verdicts = rises.map(|by| judged(*kind, measures(*given), by).verdict());
        let failed = verdicts.iter().position(|verdict| *verdict == Verdict::Fail);
        let after = failed.map_or(&[][..], |first| &verdicts[first..]);
        assert!(after.iter().all(|verdict| *verdict == Verdict::Fail), "{}: {verdicts:?}", kind.word());
    }
}

/// The greatest floor that passes does pass, and one that is a little higher does not.
#[test]
fn the_greatest_floor_passes_and_a_higher_one_does_not() {
    let mut told = 0;
    for Golden(kind, by, given, ..) in GOLDEN {
        let Some(most) = judged(*kind, measures(*given), by).floor_at_most() else { continue };
        let at = |height: f64| {
            let rise = format!("{} m", height - OLD);
            judged(*kind, measures(*given), &rise).verdict()
        };
        if !matches!(kind, Kind::Stair | Kind::Threshold) {
            assert_eq!(at(most.base() - 1e-6), Verdict::Pass, "{}", kind.word());
        }
        assert_ne!(at(most.base() + 1e-6), Verdict::Pass, "{}", kind.word());
        told += 1;
    }
    assert!(told > 30, "{told}");
}
