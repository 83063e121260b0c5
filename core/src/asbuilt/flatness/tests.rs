//! Flatness by hand, by its laws, and the straightedge against all pairs.

use super::*;
use crate::failure::Code;
use crate::geometry::{Plane, Point, Region, random::Random};
use crate::grade::finish::{Facet, Finish};
use crate::note::NoteCode;
use crate::quantity::{Area, Length, Ratio, Slope, Typed, area, length::inch};
use crate::survey::outline::Corner;

fn inches(number: f64) -> Length {
    Length::new::<inch>(number)
}

fn profile(heights: &[f64]) -> Profile<'_> {
    Profile::new(Spacing::Inches12, heights).unwrap()
}

fn line(heights: &[f64]) -> LineFlatness {
    LineFlatness::of(&profile(heights), Factor::Inches)
}

fn number(of: Option<FNumber>) -> f64 {
    of.unwrap().number().unwrap().base()
}

fn rough(random: &mut Random, count: usize) -> Vec<f64> {
    (0..count).map(|_| 30.0 + 0.004 * random.between(-1.0, 1.0)).collect()
}

#[test]
fn a_line_by_hand() {
    // Inches 0 1 0 1 0: bends -2 2 -2, mean -2/3, deviation sqrt(16/3), FF = 4.57 / (3 * 2.3094 + 0.6667).
    let heights = [0.0, 1.0, 0.0, 1.0, 0.0].map(|height| height * 0.0254);
    let found = line(&heights);
    assert_eq!((found.q.count, found.z.count), (3, 0));
    let wanted = 4.57 / (3.0 * (16.0_f64 / 3.0).sqrt() + 2.0 / 3.0);
    assert!((number(found.ff) - wanted).abs() < 1e-12);
    assert_eq!(found.fl, None);
    assert_eq!(found.notes()[0].code, NoteCode::ReadingsTooFew);
}

#[test]
fn a_straight_line_has_no_number_and_a_sloped_one_has_levelness() {
    let straight: Vec<f64> = (0..20).map(|reading| 30.0 + 0.003 * f64::from(reading)).collect();
    let found = line(&straight);
    assert_eq!(found.ff.unwrap().number(), None);
    // Every rise is 30 mm: FL = 317.5 / 30.
    assert!((number(found.fl) - 317.5 / 30.0).abs() < 1e-9);
    assert!(found.notes().iter().any(|note| note.code == NoteCode::PerfectLine));
    let level = line(&[1.0; 14]);
    assert_eq!((level.ff.unwrap().number(), level.fl.unwrap().number()), (None, None));
}

#[test]
fn a_trend_changes_no_bend_and_turning_the_line_round_changes_nothing() {
    let mut random = Random::new(11);
    for _ in 0..50 {
        let heights = rough(&mut random, 40);
        let tilted: Vec<f64> = heights.iter().zip(0..).map(|(h, i)| h + 0.01 * f64::from(i) - 7.0).collect();
        let back: Vec<f64> = heights.iter().rev().copied().collect();
        let ff = number(line(&heights).ff);
        assert!((number(line(&tilted).ff) / ff - 1.0).abs() < 1e-9);
        let turned = line(&back);
        assert!((number(turned.ff) / ff - 1.0).abs() < 1e-9);
        assert!((number(turned.fl) / number(line(&heights).fl) - 1.0).abs() < 1e-9);
    }
}

#[test]
fn twice_as_wavy_is_half_the_number() {
    let mut random = Random::new(12);
    let heights = rough(&mut random, 60);
    let twice: Vec<f64> = heights.iter().map(|height| 2.0 * height).collect();
    let (once, twice) = (line(&heights), line(&twice));
    assert!((number(once.ff) / number(twice.ff) - 2.0).abs() < 1e-9);
    assert!((number(once.fl) / number(twice.fl) - 2.0).abs() < 1e-9);
}

#[test]
fn other_spacings_and_short_or_unreal_profiles_are_refused() {
    assert_eq!(Spacing::of(inches(12.0)).unwrap(), Spacing::Inches12);
    assert_eq!(Spacing::of(Length::from_base(0.3)).unwrap(), Spacing::Millimetres300);
    for wrong in [0.305, 0.6, 0.15, -0.3048, f64::NAN] {
        assert_eq!(Spacing::of(Length::from_base(wrong)).unwrap_err().code, Code::ProfileSpacing);
    }
    let short = Profile::new(Spacing::Inches12, &[1.0, 1.0, 1.0]).unwrap_err();
    assert_eq!(short.code, Code::ProfileShort);
    let unreal = Profile::new(Spacing::Inches12, &[1.0, 1.0, f64::NAN, 1.0]).unwrap_err();
    assert_eq!((unreal.code, unreal.place), (Code::NotFinite, crate::failure::Place::Index(2)));
}

#[test]
fn combining_equal_numbers_gives_that_number_and_two_agree_with_the_pair_rule() {
    let part = |number: f64, weight: f64| Part { number: FNumber::given(number).unwrap(), weight };
    let same = combined([part(27.0, 5.0), part(27.0, 90.0)].into_iter());
    assert!((number(same) - 27.0).abs() < 1e-12);
    let (j, k, nj, nk) = (31.0_f64, 22.0, 13.0, 15.0);
    let pair = j * k * ((nj + nk) / (nj * k * k + nk * j * j)).sqrt();
    assert!((number(combined([part(j, nj), part(k, nk)].into_iter())) - pair).abs() < 1e-12);
    assert_eq!(combined(std::iter::empty()), None);
    let with_perfect =
        combined([part(30.0, 10.0), Part { number: line(&[1.0; 14]).ff.unwrap(), weight: 10.0 }].into_iter());
    assert!((number(with_perfect) - 30.0 * 2.0_f64.sqrt()).abs() < 1e-9);
}

fn input<'a>(name: &str, section: Option<&str>, heights: &'a [f64]) -> LineInput<'a> {
    LineInput {
        name: name.to_owned(),
        section: section.map(str::to_owned),
        profile: profile(heights),
        place: None,
    }
}

fn judging(class: Option<Class>) -> Judging<'static> {
    Judging { factor: Factor::Inches, limits: class.map(Class::limits), falls: false, finish: None }
}

#[test]
fn sections_combine_by_area_and_one_section_is_the_floor() {
    let mut random = Random::new(13);
    let (a, b) = (rough(&mut random, 30), rough(&mut random, 50));
    let lines = [input("a", Some("north"), &a), input("b", Some("south"), &b)];
    let area = |name: &str, feet: f64| SectionInput {
        name: name.to_owned(),
        area: Area::new::<area::square_foot>(feet),
    };
    let floor =
        Floor::of(Spacing::Inches12, &lines, &[area("South", 300.0), area("north", 100.0)], &judging(None))
            .unwrap();
    let (fa, fb) = (number(line(&a).ff), number(line(&b).ff));
    let wanted = (400.0 / (100.0 / (fa * fa) + 300.0 / (fb * fb))).sqrt();
    assert!((number(floor.ff) - wanted).abs() < 1e-9);
    let alone = Floor::of(Spacing::Inches12, &lines[..1], &[], &judging(None)).unwrap();
    assert!((number(alone.ff) - fa).abs() < 1e-9 && (number(alone.fl) - number(line(&a).fl)).abs() < 1e-9);
    for wrong in [vec![area("north", 1.0)], vec![area("east", 1.0), area("north", 1.0)]] {
        assert_eq!(
            Floor::of(Spacing::Inches12, &lines, &wrong, &judging(None)).unwrap_err().code,
            Code::FlatnessSection
        );
    }
    let mixed = [input("a", None, &a), input("b", Some("south"), &b)];
    assert_eq!(
        Floor::of(Spacing::Inches12, &mixed, &[], &judging(None)).unwrap_err().code,
        Code::FlatnessSection
    );
}

#[test]
fn few_readings_are_not_judged_and_near_the_limit_nothing_is_decided() {
    let flat = FNumber::given(25.0);
    let verdict = |least: f64, spacing, enough| Verdict::of_flatness(flat, least, spacing, enough);
    assert_eq!(verdict(20.0, Spacing::Inches12, true), Verdict::Meets);
    assert_eq!(verdict(24.99, Spacing::Inches12, true), Verdict::Confirm);
    assert_eq!(verdict(25.05, Spacing::Inches12, true), Verdict::Confirm);
    assert_eq!(verdict(25.1, Spacing::Inches12, true), Verdict::Short);
    assert_eq!(verdict(24.5, Spacing::Inches12, true), Verdict::Meets);
    assert_eq!(verdict(24.5, Spacing::Millimetres300, true), Verdict::Confirm);
    assert_eq!(verdict(20.0, Spacing::Inches12, false), Verdict::TooFew);
    assert_eq!(Verdict::of_levelness(flat, 25.0, true), Verdict::Meets);
    assert_eq!(Verdict::of_levelness(flat, 25.01, true), Verdict::Short);
    assert_eq!(Verdict::of_levelness(None, 25.0, true), Verdict::TooFew);
    assert_eq!(Verdict::of_levelness(line(&[1.0; 14]).fl, 1000.0, true), Verdict::Meets);
}

#[test]
fn the_least_number_of_rises_follows_the_area() {
    let least = |feet: f64| least_z_readings(Area::new::<area::square_foot>(feet));
    assert_eq!(
        [least(400.0), least(1600.0), least(1601.0), least(2000.0), least(324.0)],
        [40, 80, 81, 100, 36]
    );
}

#[test]
fn limits_come_by_a_word_or_by_two_numbers() {
    let ratio = |number: f64| Some(Ratio::from_base(number));
    assert_eq!(Limits::asked(None, None, None).unwrap(), None);
    let flat = Limits::asked(Some(Class::Flat), None, None).unwrap().unwrap();
    assert_eq!((flat.local_ff(), flat.local_fl()), (21.0, 15.0));
    assert_eq!(Limits::asked(None, ratio(31.0), ratio(22.0)).unwrap().unwrap().class, None);
    assert_eq!(Limits::asked(Some(Class::Flat), ratio(31.0), None).unwrap_err().code, Code::Contradiction);
    assert_eq!(Limits::asked(None, None, ratio(22.0)).unwrap_err().path, "least_ff");
    assert_eq!(Limits::asked(None, ratio(-3.0), ratio(22.0)).unwrap_err().path, "least_ff");
}

/// Two facets that fall to a valley at x = 10 ft.
fn valley() -> Finish {
    let fall = 0.25 / 12.0;
    let foot = |number: f64| 0.3048 * number;
    let half = |from: f64, to: f64, slope: f64| {
        let region =
            Region::rectangle(Point::new(foot(from), 0.0), Point::new(foot(to), foot(20.0))).unwrap();
        Facet::new(region, Plane::about(Point::new(foot(10.0), 0.0), 30.0, slope, 0.0))
    };
    Finish::faceted(vec![half(0.0, 10.0, -fall), half(10.0, 20.0, fall)]).unwrap()
}

#[test]
fn the_plan_is_no_bend_of_the_work() {
    let finish = valley();
    let foot = |number: f64| Length::from_base(0.3048 * number);
    let place =
        |y: f64| LinePlace::new(Corner::new(foot(2.5), foot(y)), Corner::new(foot(17.0), foot(y))).unwrap();
    // Exactly as planned, and with a bump that is the work's own.
    let mut heights: Vec<f64> = (0..15)
        .map(|reading| finish.height_at(foot(2.5 + f64::from(reading)), foot(5.0)).unwrap().base())
        .collect();
    let of = |heights: &[f64]| {
        let lines = [LineInput { place: Some(place(5.0)), ..input("a", None, heights) }];
        Floor::of(Spacing::Inches12, &lines, &[], &Judging { finish: Some(&finish), ..judging(None) })
            .unwrap()
    };
    let floor = of(&heights);
    // The valley lies between the 8th and the 9th reading: two bends touch it.
    assert_eq!((floor.lines[0].left_out, floor.falls, floor.fl), (2, true, None));
    assert_eq!(floor.lines[0].flatness.ff.unwrap().number(), None);
    let codes: Vec<NoteCode> = floor.notes(None).iter().map(|note| note.code).collect();
    assert!(codes.contains(&NoteCode::PlanBends) && codes.contains(&NoteCode::LevelnessOnSlope));
    heights[3] += 0.002;
    assert!(number(of(&heights).ff) < 100.0);
    let off = [LineInput { place: Some(place(25.0)), ..input("a", None, &heights) }];
    let refused =
        Floor::of(Spacing::Inches12, &off, &[], &Judging { finish: Some(&finish), ..judging(None) });
    assert_eq!(refused.unwrap_err().code, Code::OffWork);
    assert!(finish.fall() > Slope::from_base(0.0));
}

#[test]
fn lines_too_near_an_edge_or_one_another_are_told() {
    let heights = [1.0, 1.001, 1.0, 1.002, 1.0, 1.0, 1.001, 1.0, 1.002, 1.0, 1.0, 1.001, 1.0];
    let foot = |number: f64| Length::from_base(0.3048 * number);
    let at = |name: &str, y: f64| {
        let place =
            LinePlace::new(Corner::new(foot(2.0), foot(y)), Corner::new(foot(14.0), foot(y))).unwrap();
        LineInput { place: Some(place), ..input(name, None, &heights) }
    };
    let work = Region::rectangle(Point::new(0.0, 0.0), Point::new(0.3048 * 16.0, 0.3048 * 20.0)).unwrap();
    let noted = |lines: &[LineInput<'_>]| {
        let floor = Floor::of(Spacing::Inches12, lines, &[], &judging(None)).unwrap();
        let notes = floor.notes(Some(&work));
        notes
            .into_iter()
            .filter(|note| note.code == NoteCode::ProfileLayout)
            .map(|note| note.text)
            .collect::<Vec<_>>()
    };
    assert!(noted(&[at("a", 2.0), at("b", 6.0), at("c", 18.0)]).is_empty());
    let told = noted(&[at("a", 1.5), at("b", 5.0)]);
    assert!(told[0].contains("2'") && told[0].ends_with(": a"), "{told:?}");
    assert!(told[1].contains("4'") && told[1].ends_with(": b"), "{told:?}");
}

/// The greatest gap over all pairs of readings a straightedge spans, with nothing above the line between them.
fn by_pairs(places: &[f64], heights: &[f64], length: f64) -> f64 {
    let mut worst = 0.0_f64;
    for from in 0..places.len() {
        for to in from + 1..places.len() {
            if places[to] - places[from] > length + 1e-6 {
                break;
            }
            let slope = (heights[to] - heights[from]) / (places[to] - places[from]);
            let gaps =
                (from + 1..to).map(|k| heights[from] + slope * (places[k] - places[from]) - heights[k]);
            let (least, most) =
                gaps.fold((0.0_f64, 0.0_f64), |(least, most), gap| (least.min(gap), most.max(gap)));
            if least >= -1e-12 {
                worst = worst.max(most);
            }
        }
    }
    worst
}

#[test]
fn the_straightedge_finds_what_all_pairs_find() {
    let mut random = Random::new(14);
    let mut longer = 0;
    for round in 0..60 {
        let count = 3 + round;
        let mut at = 0.0;
        let places: Vec<f64> = (0..count)
            .map(|_| {
                at += 0.1 + 0.3 * random.between(0.0, 1.0);
                at
            })
            .collect();
        let heights = rough(&mut random, count);
        let laid = Straightedge::along(&places, &heights, Length::from_base(3.048)).unwrap();
        let found = laid.worst().unwrap().gap.base();
        let length = if laid.longer_than_profile { 1e9 } else { 3.048 };
        assert!((found - by_pairs(&places, &heights, length)).abs() < 1e-12, "{round}");
        longer += usize::from(laid.longer_than_profile);
    }
    assert!(longer > 3 && longer < 50);
}

#[test]
fn a_hollow_under_the_straightedge_and_a_hump_under_it() {
    let places: Vec<f64> = (0..11).map(|foot| 0.3048 * f64::from(foot)).collect();
    let mut hollow = [1.0; 11];
    hollow[4] -= 0.005;
    let laid = Straightedge::along(&places, &hollow, inches(120.0)).unwrap();
    let worst = laid.worst().unwrap();
    assert!((worst.gap.base() - 0.005).abs() < 1e-12 && worst.at.base() == places[4]);
    assert_eq!(laid.verdict(EdgeClass::Flat), Verdict::Meets);
    let mut hump = [1.0; 11];
    hump[5] += 0.010;
    // It rests on the hump and on an end: half the hump's height under the nearest readings to it.
    let worst = *Straightedge::along(&places, &hump, inches(120.0)).unwrap().worst().unwrap();
    assert!((worst.gap.base() - 0.008).abs() < 1e-12, "{worst:?}");
    hollow[4] -= 0.020;
    let laid = Straightedge::along(&places, &hollow, inches(120.0)).unwrap();
    assert_eq!(laid.verdict(EdgeClass::Conventional), Verdict::Confirm);
    assert_eq!(about_ff(inches(0.25)).unwrap().base(), 25.0);
    assert_eq!(about_ff(inches(0.51)), None);
}
