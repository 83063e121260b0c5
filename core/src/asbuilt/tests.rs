//! The floor as built: laws, and a small floor by hand.

use super::*;
use crate::basis::BasisId;
use crate::failure::Code;
use crate::geometry::random::Random;
use crate::grade::finish::{Finish, FinishPoint};
use crate::judged::Judged;
use crate::note::NoteCode;
use crate::quantity::{Elevation, Length, Slope, Typed, Volume};
use crate::survey::Survey;
use crate::survey::low_spots::{EdgeState, EdgeStated, Edges};
use crate::survey::old_slab::{Marks, Settings, Shots};
use crate::survey::outline::{Corner, Outline};
use crate::survey::surface::Shot;

const FOOT: f64 = 0.3048;
const INCH: f64 = 0.0254;

fn feet(number: f64) -> Length {
    Length::from_base(number * FOOT)
}

/// A floor 20 ft wide and 16 ft deep; its walls, from the front, go counter-clockwise.
fn outline() -> Outline {
    let corners = [(0.0, 0.0), (20.0, 0.0), (20.0, 16.0), (0.0, 16.0)];
    let corners = corners.map(|(x, y)| Corner::new(feet(x), feet(y)));
    let names = ["front", "right", "back", "left"].map(|name| Some(name.to_owned()));
    Outline::from_corners(&corners, &names).unwrap()
}

/// Places every 4 ft, half a foot from the walls.
fn places() -> Vec<[f64; 2]> {
    let xs = [0.5, 4.0, 8.0, 12.0, 16.0, 19.5];
    let ys = [0.5, 4.0, 8.0, 12.0, 15.5];
    ys.iter().flat_map(|&y| xs.map(|x| [x * FOOT, y * FOOT])).collect()
}

fn surveyed(places: &[[f64; 2]], height: impl Fn(usize, [f64; 2]) -> f64) -> Survey {
    let shot = |(number, &[x, y]): (usize, &[f64; 2])| Shot {
        x,
        y,
        z: height(number, [x, y]),
        outside_allowed: false,
        step: false,
    };
    let shots = places.iter().enumerate().map(shot).collect();
    Survey::new(outline(), Shots::Scattered(Marks { shots, names: Vec::new() }), Settings::default()).unwrap()
}

/// An old slab with hollows.
fn old_slab(seed: u64) -> Survey {
    let mut random = Random::new(seed);
    let heights: Vec<f64> = (0..30).map(|_| 30.0 + random.between(-0.02, 0.02)).collect();
    surveyed(&places(), |number, _| heights[number])
}

/// Falls 1/8 in/ft to the front, which lies at 30.10 m.
fn plan() -> Finish {
    let at = |x: f64, y: f64, elevation: f64| FinishPoint {
        x: feet(x),
        y: feet(y),
        elevation: Elevation::from_base(elevation),
    };
    let back = 30.1 + 16.0 * 0.125 * INCH;
    Finish::through(&[at(0.0, 0.0, 30.1), at(20.0, 0.0, 30.1), at(0.0, 16.0, back)]).unwrap()
}

fn planned([x, y]: [f64; 2]) -> f64 {
    plan().height_at(Length::from_base(x), Length::from_base(y)).unwrap().base()
}

/// Open only at the front.
fn edges() -> Edges {
    let walled = |edge: &str| EdgeStated { edge: edge.to_owned(), state: EdgeState::Walled };
    Edges { stated: ["right", "back", "left"].map(walled).to_vec(), ..Edges::default() }
}

fn of(old: &Survey, new: &Survey) -> AsBuilt {
    let edges = edges();
    AsBuilt::of(old, &plan(), new, &Asked::with_edges(&edges)).unwrap()
}

fn near(found: f64, wanted: f64) {
    assert!((found - wanted).abs() < 1e-9, "{found}, expected {wanted}");
}

#[test]
fn built_exactly_as_planned_nothing_is_off() {
    for seed in 0..5 {
        let old = old_slab(seed);
        let found = of(&old, &surveyed(&places(), |_, at| planned(at)));
        near(found.deviations.mean.base(), 0.0);
        assert!(
            found.deviations.missed().is_empty() && found.mends.is_empty() && found.ponds.list.is_empty()
        );
        near(found.thickness.net.base(), found.planned.net.base());
        near(found.thickness.area.base(), found.planned.area.base());
        near(found.thickness.least.thickness.base(), found.planned.least.thickness.base());
        near(found.thickness.greatest.thickness.base(), found.planned.greatest.thickness.base());
        near(found.falls[0].got.unwrap().base(), 0.125 / 12.0);
        assert!(found.checks.iter().all(|check| check.judged == Judged::Pass), "{:?}", found.checks);
        let said = found.said();
        assert_eq!(said.len(), 2);
        assert!(said[0].starts_with("Holds: ") && said[1].contains("not an approval"));
    }
}

#[test]
fn raised_by_an_inch_everything_is_an_inch_higher() {
    let old = old_slab(6);
    let mut random = Random::new(7);
    let rough: Vec<f64> = (0..30).map(|_| random.between(-0.004, 0.004)).collect();
    let low = of(&old, &surveyed(&places(), |number, at| planned(at) + rough[number]));
    let high = of(&old, &surveyed(&places(), |number, at| planned(at) + rough[number] + INCH));
    near(high.deviations.mean.base() - low.deviations.mean.base(), INCH);
    near(high.deviations.spread.unwrap().base(), low.deviations.spread.unwrap().base());
    near(high.thickness.mean.base() - low.thickness.mean.base(), INCH);
    near(high.mean_over_area().base() - low.mean_over_area().base(), INCH);
    near(high.falls[0].got.unwrap().base(), low.falls[0].got.unwrap().base());
    assert_eq!(high.ponds.list.len(), low.ponds.list.len());
    let top = |found: &AsBuilt| {
        found.checks.iter().find(|check| check.about == "height of the top").unwrap().judged
    };
    assert_eq!((top(&low), top(&high)), (Judged::Pass, Judged::Fail));
}

#[test]
fn the_order_of_the_shots_changes_nothing() {
    let mut random = Random::new(8);
    let height = |at: [f64; 2]| planned(at) + 0.004 * (3.0 * at[0] + 5.0 * at[1]).sin();
    let mut shuffled = places();
    let (old, straight) = (old_slab(9), surveyed(&shuffled, |_, at| height(at)));
    random.shuffle(&mut shuffled);
    let (one, other) = (of(&old, &straight), of(&old, &surveyed(&shuffled, |_, at| height(at))));
    near(one.thickness.net.base(), other.thickness.net.base());
    near(one.deviations.mean.base(), other.deviations.mean.base());
    near(one.falls[0].got.unwrap().base(), other.falls[0].got.unwrap().base());
    let places =
        |found: &AsBuilt| found.deviations.missed().iter().map(|shot| (shot.x, shot.y)).collect::<Vec<_>>();
    assert_eq!(places(&one), places(&other));
}

#[test]
fn the_volume_between_two_surveys_is_the_difference_of_their_integrals() {
    let mut random = Random::new(10);
    for seed in 20..26 {
        let old = old_slab(seed);
        // Other places than the old slab's, so that triangles cross.
        let mut others: Vec<[f64; 2]> =
            (0..25).map(|_| [random.between(0.3, 19.7) * FOOT, random.between(0.3, 15.7) * FOOT]).collect();
        others.extend(
            [[0.1, 0.1], [19.9, 0.1], [19.9, 15.9], [0.1, 15.9]].map(|at| at.map(|feet| feet * FOOT)),
        );
        let bumps: Vec<f64> = others.iter().map(|_| random.between(-0.01, 0.01)).collect();
        let new = surveyed(&others, |number, at| planned(at) + bumps[number]);
        let found = of(&old, &new);
        let height = |survey: &Survey| survey.surface().whole().integrals().height;
        near(found.thickness.net.base(), height(&new) - height(&old));
        near(found.thickness.area.base(), 320.0 * FOOT * FOOT);
    }
}

#[test]
fn a_missed_mark_and_a_puddle_are_named_and_mended() {
    let old = old_slab(11);
    let new = surveyed(&places(), |number, at| {
        planned(at)
            + [(8, 0.5), (16, -1.0)].iter().find(|(one, _)| *one == number).map_or(0.0, |(_, off)| off * INCH)
    });
    let (edges, seen) =
        (edges(), |x: f64, y: f64| SeenPuddle { at: Corner::new(feet(x), feet(y)), depth: None });
    let puddles = [seen(16.0, 8.0), seen(4.0, 12.0)];
    let asked = Asked {
        least_fall: Some((Slope::from_base(0.25 / 12.0), BasisId::FallBroomed)),
        puddles: &puddles,
        ..Asked::with_edges(&edges)
    };
    let found = AsBuilt::of(&old, &plan(), &new, &asked).unwrap();
    let missed: Vec<(&str, f64)> = found
        .deviations
        .missed()
        .iter()
        .map(|shot| (shot.name.as_str(), shot.deviation.base() / INCH))
        .collect();
    assert_eq!((missed[0].0, missed[1].0), ("shot 17", "shot 9"));
    near(missed[0].1, -1.0);
    near(missed[1].1, 0.5);
    assert_eq!(found.ponds.list.len(), 1);
    let works: Vec<Mending> = found.mends.iter().map(|mend| mend.work).collect();
    assert_eq!(works, [Mending::Fill, Mending::Grind, Mending::Fill]);
    assert!(
        found.mends[1].said().starts_with("grind 1/2 in at shot 9, 8' 0\" from left, 4' 0\" in"),
        "{}",
        found.mends[1].said()
    );
    near(found.puddles[0].by_shots.base(), found.ponds.depth().unwrap().base());
    assert!(found.puddles[1].unseen_by_shots());
    let judged = |about: &str| found.checks.iter().find(|check| check.about == about).unwrap().judged;
    // The tolerance of the marks is common practice, the least fall is remembered: neither fails anything.
    assert_eq!(
        [judged("marks"), judged("fall"), judged("standing water")],
        [Judged::ConfirmLocally, Judged::ConfirmLocally, Judged::Fail]
    );
    let notes: Vec<NoteCode> = found.notes().iter().map(|note| note.code).collect();
    assert!(notes.contains(&NoteCode::MarksMissed) && notes.contains(&NoteCode::PuddlesUnseen));
    let given = Asked { tolerance_given: true, ..asked };
    let found = AsBuilt::of(&old, &plan(), &new, &given).unwrap();
    assert_eq!(found.checks[0].judged, Judged::Fail);
}

#[test]
fn a_floor_that_rises_the_way_it_was_to_fall_does_not_hold() {
    let new = surveyed(&places(), |_, at| 30.15 - 0.002 * at[1]);
    let found = of(&old_slab(12), &new);
    assert!(found.falls[0].runs_back());
    let fall = found.checks.iter().find(|check| check.about == "fall").unwrap();
    assert_eq!((fall.judged, fall.basis), (Judged::Fail, BasisId::Geometry));
}

#[test]
fn thickness_is_held_against_what_was_specified_and_against_the_least() {
    let old = surveyed(&places(), |_, _| 30.0);
    let new = surveyed(&places(), |_, at| planned(at));
    let edges = edges();
    let verdicts = |specified: f64, least: f64| {
        let asked = Asked {
            specified: Some(Length::from_base(specified * INCH)),
            least: Some(Length::from_base(least * INCH)),
            ..Asked::with_edges(&edges)
        };
        let found = AsBuilt::of(&old, &plan(), &new, &asked).unwrap();
        ["mean thickness", "thinnest place", "least thickness"].map(|about| {
            found.checks.iter().find(|check| check.about == about).unwrap().judged == Judged::Pass
        })
    };
    // Mean 3.937 + 1 = 4.937 in; thinnest between the shots 3.937 + 1/16 in.
    assert_eq!(verdicts(4.7, 3.9), [true, true, true]);
    assert_eq!(verdicts(5.3, 4.1), [true, false, false]);
    assert_eq!(verdicts(5.32, 4.0), [false, false, false]);
}

#[test]
fn concrete_is_told_against_plan_and_floor() {
    let yards = |number: f64| Volume::from_base(number * 0.764_554_857_984);
    let came = Delivered { ordered: yards(5.0), left_over: yards(0.5) };
    let found = Concrete::of(came, yards(4.25), yards(4.4)).unwrap();
    near(found.used.base(), yards(4.5).base());
    near(found.unaccounted().base(), yards(0.1).base());
    near(found.used_over_planned.unwrap().base(), 4.5 / 4.25);
    let more = Delivered { ordered: yards(1.0), left_over: yards(2.0) };
    assert_eq!(Concrete::of(more, yards(1.0), yards(1.0)).unwrap_err().code, Code::Contradiction);
    let (old, edges) = (old_slab(13), edges());
    let new = surveyed(&places(), |_, at| planned(at));
    let delivered = Some(Delivered { ordered: yards(9.0), left_over: yards(0.0) });
    let found = AsBuilt::of(&old, &plan(), &new, &Asked { delivered, ..Asked::with_edges(&edges) }).unwrap();
    assert_eq!(found.checks.last().unwrap().judged, Judged::ConfirmLocally);
}

#[test]
fn another_plan_edge_is_refused() {
    let corners =
        [(0.0, 0.0), (20.0, 0.0), (20.0, 15.0), (0.0, 15.0)].map(|(x, y)| Corner::new(feet(x), feet(y)));
    let outline = Outline::from_corners(&corners, &[]).unwrap();
    let marks = |places: Vec<[f64; 2]>| Marks {
        shots: places
            .into_iter()
            .filter(|[_, y]| *y < 15.0 * FOOT)
            .map(|[x, y]| Shot { x, y, z: 30.1, outside_allowed: false, step: false })
            .collect(),
        names: Vec::new(),
    };
    let new = Survey::new(outline, Shots::Scattered(marks(places())), Settings::default()).unwrap();
    let edges = edges();
    let refused = AsBuilt::of(&old_slab(14), &plan(), &new, &Asked::with_edges(&edges)).unwrap_err();
    assert_eq!(refused.code, Code::AsBuiltOutline);
}
