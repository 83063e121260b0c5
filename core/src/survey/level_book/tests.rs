//! Published level books, laws of levelling, and what is refused.

use super::*;
use crate::basis::BasisId;
use crate::failure::{Code, Failure};
use crate::quantity::elevation::{foot as elevation_foot, meter as elevation_meter};
use crate::quantity::length::{foot, inch, meter};
use crate::quantity::{Elevation, Length, Typed};
use crate::survey::varied::Varied;

/// Both within `allowed` of one another.
#[track_caller]
fn assert_near(left: f64, right: f64, allowed: f64) {
    assert!((left - right).abs() <= allowed, "{left} is not within {allowed} of {right}");
}

/// Makes a good book a bad one.
type Spoil = fn(&mut LevelBook);

fn ft(number: f64) -> Length {
    Length::new::<foot>(number)
}

fn m(number: f64) -> Length {
    Length::new::<meter>(number)
}

fn at_ft(name: &str, number: f64) -> Benchmark {
    Benchmark::new(name, Elevation::new::<elevation_foot>(number))
}

fn at_m(name: &str, number: f64) -> Benchmark {
    Benchmark::new(name, Elevation::new::<elevation_meter>(number))
}

fn refusal(book: &LevelBook) -> Box<Failure> {
    reduce(book).expect_err("the book should be refused")
}

/// Surveying coursework problem (differential levelling notes): BM A at 100.00 ft, four set-ups, known end 94.91 ft.
fn coursework(tolerance_ft: Option<f64>) -> LevelBook {
    let legs = [
        ("BM A", 3.10, "TP1", 9.82),
        ("TP1", 6.44, "TP2", 6.96),
        ("TP2", 8.76, "TP3", 3.27),
        ("TP3", 7.12, "BM B", 10.42),
    ];
    LevelBook {
        benchmarks: vec![at_ft("BM A", 100.0), at_ft("BM B", 94.91)],
        setups: legs.map(|(from, back, to, fore)| SetUp::on(from, ft(back)).to(to, ft(fore))).into(),
        tolerances: Tolerances { recheck: None, closure: tolerance_ft.map(ft) },
    }
}

#[test]
fn coursework_loop_is_reduced_as_published() {
    let book = reduce(&coursework(Some(0.05))).unwrap();
    let heights = [103.10, 99.72, 101.52, 105.37];
    let elevations = [93.28, 92.76, 98.25, 94.95];
    for (setup, height) in book.setups.iter().zip(heights) {
        assert_near(setup.height_booked.get::<elevation_foot>(), height, 1e-9);
    }
    for (point, elevation) in book.points.iter().zip(elevations) {
        assert_near(point.booked.get::<elevation_foot>(), elevation, 1e-9);
    }
    let page = book.lines[0].page.unwrap();
    assert_near(page.backsights.get::<foot>(), 25.42, 1e-9);
    assert_near(page.foresights.get::<foot>(), 30.47, 1e-9);
    assert_near(page.rise.get::<foot>(), -5.05, 1e-9);
    let closure = book.lines[0].closure.as_ref().unwrap();
    assert_near(closure.misclosure.get::<foot>(), 0.04, 1e-9);
    assert_eq!(closure.on, "BM B");
    assert_eq!(book.taken().count(), 0);
}

#[test]
fn the_misclosure_is_shared_by_set_ups_passed() {
    let book = reduce(&coursework(Some(0.05))).unwrap();
    let shares: Vec<f64> = book.points.iter().map(|point| point.correction.get::<foot>()).collect();
    for (share, expected) in shares.iter().zip([-0.01, -0.02, -0.03, -0.04]) {
        assert_near(*share, expected, 1e-9);
    }
    assert_eq!(book.elevation_of("bm b").unwrap().get::<elevation_foot>(), 94.91);
    // Sights hang half way between the turning points before and behind them, and so do their instruments.
    let corrections = book.setups.iter().map(|s| (s.height - s.height_booked).get::<foot>());
    for (correction, expected) in corrections.zip([-0.005, -0.015, -0.025, -0.035]) {
        assert_near(correction, expected, 1e-9);
    }
}

#[test]
fn the_coursework_loop_is_past_the_tolerance_of_the_trade() {
    let failure = refusal(&coursework(None));
    assert_eq!((failure.code, failure.path.as_str()), (Code::ClosureExceeded, "setups[3].foresight"));
    let written = "`BM B` found at 94' 11 3/8\" (28.9408 m), known at 94' 10 7/8\" (28.9286 m): off by 15/32\" (0.01219 m)";
    assert_eq!(failure.written, written);
    assert_eq!(failure.allowed, "off by at most 1/4\" (0.00635 m) (common practice, no source)");
    assert_eq!(failure.remedy, "check both elevations, then read the line again");
}

// Surveying coursework problem, part A: 2156.77 + 2.67 - 6.72 = 2152.72 ft.
#[test]
fn coursework_catch_basin() {
    let book = LevelBook::single(at_ft("BM", 2156.77), ft(2.67), vec![Sight::point("basin", ft(6.72))], None);
    let book = reduce(&book).unwrap();
    assert_near(book.elevation_of("basin").unwrap().get::<elevation_foot>(), 2152.72, 1e-9);
    assert_eq!(book.lines[0].closure, None);
    assert_eq!(book.lines[0].page, None);
}

// Student higher-surveying report, checkerboard levelling: set-ups at points 1, 5 and 20, in metres. The report also lists
// a reading 1.075 with 40.165 at the first set-up; 41.260 - 1.075 = 40.185, a slip of the source.
#[test]
fn checkerboard_report() {
    type Shots = &'static [(f64, f64)];
    let setups: [(f64, f64, Shots); 3] = [
        (40.140, 1.120, &[(1.240, 40.020), (1.140, 40.120), (0.940, 40.320), (1.075, 40.185)]),
        (
            40.090,
            1.685,
            &[(1.390, 40.385), (1.470, 40.305), (1.520, 40.255), (1.570, 40.205), (1.660, 40.115)],
        ),
        (40.115, 1.220, &[(1.15, 40.185), (1.11, 40.225), (1.03, 40.305), (0.97, 40.365)]),
    ];
    for (known, back, shots) in setups {
        let sights = shots.iter().enumerate().map(|(i, (rod, _))| Sight::shot(format!("P{i}"), m(*rod)));
        let book = reduce(&LevelBook::single(at_m("point", known), m(back), sights.collect(), None)).unwrap();
        assert_near(book.setups[0].height.get::<elevation_meter>(), known + back, 1e-12);
        assert_eq!(book.slab_shots().count(), shots.len());
        for (point, (_, elevation)) in book.points.iter().zip(shots) {
            assert_near(point.elevation.get::<elevation_meter>(), *elevation, 1e-9);
        }
    }
}

/// One set-up on a nail at 100 ft, one shot, the nail read again.
fn rechecked(first: f64, close: f64) -> LevelBook {
    let shots = vec![Sight::shot("A1", Length::new::<inch>(60.0))];
    LevelBook::single(
        at_ft("nail", 100.0),
        Length::new::<inch>(first),
        shots,
        Some(Length::new::<inch>(close)),
    )
}

#[test]
fn a_point_read_again_gives_the_mean_height() {
    let book = reduce(&rechecked(50.5, 50.625)).unwrap();
    let recheck = book.setups[0].recheck.unwrap();
    assert_near(recheck.difference.get::<inch>(), 0.125, 1e-9);
    assert_near(book.setups[0].backsight.get::<inch>(), 50.5625, 1e-9);
    let a1 = book.elevation_of("A1").unwrap();
    assert_near(a1.get::<elevation_foot>(), 100.0 + (50.5625 - 60.0) / 12.0, 1e-9);
    let taken: Vec<_> = book.taken().map(|t| (t.port, t.value, t.taken)).collect();
    assert_eq!(taken, [("tolerances.recheck", RECHECK_TOLERANCE, Some(BasisId::ClosureTolerance))]);
}

/// The benchmark as foresight of its own set-up says the same as the benchmark read again.
#[test]
fn closing_on_the_own_benchmark_is_reading_it_again() {
    let mut book = rechecked(50.5, 50.625);
    let again = reduce(&book).unwrap();
    book.setups[0].close = None;
    book.setups[0].foresight = Some(Sight::point("Nail", Length::new::<inch>(50.625)));
    let closed = reduce(&book).unwrap();
    let of = |book: &ReducedBook| book.elevation_of("A1").unwrap().base();
    assert_near(of(&again), of(&closed), 1e-12);
    assert_near(again.setups[0].height.base(), closed.setups[0].height.base(), 1e-12);
    assert_eq!(closed.points[1].kind, PointKind::Benchmark);
    // One set-up is judged as one set-up, whichever way it closes.
    assert_eq!(closed.tolerances[0].port, "tolerances.recheck");
}

#[test]
fn a_point_read_again_past_the_tolerance_is_refused() {
    for close in [50.5 + 3.0 / 16.0, 50.5 - 3.0 / 16.0] {
        let failure = refusal(&rechecked(50.5, close));
        assert_eq!((failure.code, failure.path.as_str()), (Code::ClosureExceeded, "setups[0].close"));
        assert!(
            failure.written.contains("`nail` found at") && failure.written.contains("3/16\""),
            "{failure}"
        );
    }
    let failure = refusal(&rechecked(50.5, 62.5));
    assert!(failure.remedy.ends_with("look first for a reading booked a foot off"), "{failure}");
    let mut stated = rechecked(50.5, 50.75);
    stated.tolerances.recheck = Some(Length::new::<inch>(0.25));
    assert_eq!(reduce(&stated).unwrap().taken().count(), 0);
}

#[test]
fn slips_are_recognised() {
    let near = |inches: f64| booking_slip(Length::new::<inch>(inches));
    assert_eq!(near(12.1), Some(Slip::Foot));
    assert_eq!(near(-11.9), Some(Slip::Foot));
    assert_eq!(near(1.05), Some(Slip::Inch));
    assert_eq!(near(1.15), Some(Slip::TenthOfAFoot));
    assert_eq!(near(6.0), Some(Slip::HalfAFoot));
    assert_eq!(near(9.9), Some(Slip::TenInches));
    assert_eq!(near(3.9), Some(Slip::TenCentimetres));
    assert_eq!(near(39.4), Some(Slip::Metre));
    assert_eq!((near(0.5), near(2.0), near(12.2)), (None, None, None));
    assert_eq!(booking_slip(Length::from_base(f64::NAN)), None);
}

/// The instrument moved once and came back to the same nail: two lines, no turning point between them.
#[test]
fn a_second_set_up_on_the_benchmark_starts_a_new_line() {
    let mut book = rechecked(50.5, 50.5);
    let mut second = SetUp::on(" NAIL ", Length::new::<inch>(40.0));
    second.sights.push(Sight::shot("B1", Length::new::<inch>(49.5)));
    book.setups.push(second);
    let book = reduce(&book).unwrap();
    assert_eq!(book.lines.len(), 2);
    assert_eq!((book.setups[1].line, book.setups[1].number_in_line), (1, 1));
    assert_near(book.elevation_of("A1").unwrap().base(), book.elevation_of("B1").unwrap().base(), 1e-12);
}

/// A line that closes, with a branch from its first turning point booked before the line went on.
#[test]
fn a_branch_starts_from_the_corrected_turning_point() {
    let mut book = coursework(Some(0.05));
    let mut branch = SetUp::on("tp1", ft(4.0));
    branch.sights.push(Sight::shot("pit", ft(6.0)));
    book.setups.insert(2, branch);
    let reduced = reduce(&book).unwrap();
    assert_eq!(reduced.lines[0].setups, [0, 1, 3, 4]);
    assert_eq!(reduced.lines[1].setups, [2]);
    assert_eq!(reduced.lines[1].start, "tp1");
    assert_near(reduced.elevation_of("PIT").unwrap().get::<elevation_foot>(), 93.27 - 2.0, 1e-9);
    assert_eq!(reduced.setups[2].backsight_point, "tp1");
    let order: Vec<&str> = reduced.points.iter().map(|point| point.name.as_str()).collect();
    assert_eq!(order, ["TP1", "TP2", "pit", "TP3", "BM B"]);
}

#[test]
fn turning_points_are_no_slab_shots_unless_marked() {
    let mut book = coursework(Some(0.05));
    assert_eq!(reduce(&book).unwrap().slab_shots().count(), 0);
    book.setups[1].foresight = Some(Sight::shot("TP2", ft(6.96)));
    let reduced = reduce(&book).unwrap();
    let shots: Vec<&str> = reduced.slab_shots().map(|point| point.name.as_str()).collect();
    assert_eq!(shots, ["TP2"]);
}

#[test]
fn an_open_line_says_so_and_so_does_an_unread_benchmark() {
    let mut book = coursework(None);
    book.setups[3].foresight = Some(Sight::point("BM C", ft(10.42)));
    let book = reduce(&book).unwrap();
    assert_eq!(book.lines[0].closure, None);
    assert_eq!(book.unread, ["BM B"]);
    assert_near(book.lines[0].page.unwrap().rise.get::<foot>(), -5.05, 1e-9);
    assert_eq!(book.tolerances, []);
}

#[test]
fn missing_readings_are_named() {
    let cases: [(Spoil, &str, &str); 5] = [
        (|b| b.setups[1].backsight.rod = None, "setups[1].backsight", "no reading on `TP1` in set-up 2"),
        (
            |b| b.setups[1].foresight.as_mut().unwrap().rod = None,
            "setups[1].foresight",
            "no reading on `TP2` in set-up 2",
        ),
        (
            |b| b.setups[2].sights.push(Sight { rod: None, ..Sight::shot("D4", ft(0.0)) }),
            "setups[2].sights[0]",
            "no reading on `D4` in set-up 3",
        ),
        (
            |b| b.setups[1].foresight = None,
            "setups[1].foresight",
            "no foresight in set-up 2, yet set-up 3 has its backsight on `TP2`",
        ),
        (
            |b| b.setups[2].backsight.point = "TP7".to_owned(),
            "setups[2].backsight.point",
            "`TP7` in set-up 3: no earlier set-up read it and no benchmark has this name",
        ),
    ];
    for (spoil, path, written) in cases {
        let mut book = coursework(Some(0.05));
        spoil(&mut book);
        let failure = refusal(&book);
        assert_eq!((failure.code, failure.path.as_str()), (Code::BookIncomplete, path), "{failure}");
        assert_eq!(failure.written, written);
        assert!(!failure.allowed.is_empty() && !failure.remedy.is_empty());
    }
}

#[test]
fn a_backsight_needs_an_elevation() {
    let mut book = coursework(Some(0.05));
    book.setups[1].backsight.point = "TP3".to_owned();
    let failure = refusal(&book);
    assert_eq!(failure.path, "setups[1].backsight.point");
    assert_eq!(failure.written, "`TP3` in set-up 2: its foresight is only in set-up 3");
    let mut book = coursework(Some(0.05));
    book.setups[0].sights.push(Sight::shot("A1", ft(5.0)));
    book.setups[1].backsight.point = "A1".to_owned();
    let failure = refusal(&book);
    assert_eq!(failure.written, "`A1` in set-up 2: set-up 1 read it as a sight, not as its foresight");
    let mut book = coursework(Some(0.05));
    book.setups[0].backsight.point = "BMA".to_owned();
    let failure = refusal(&book);
    assert_eq!((failure.code, failure.remedy.as_str()), (Code::BookIncomplete, "perhaps `BM A` is meant"));
    let mut book = coursework(Some(0.05));
    book.setups[2].backsight.point = "TP7".to_owned();
    assert_eq!(refusal(&book).remedy, "perhaps `TP2` is meant");
    let mut book = rechecked(50.5, 50.5);
    book.setups.push(SetUp::on("nial", ft(4.0)));
    assert_eq!(
        refusal(&book).remedy,
        "book the foresight on `nial`, or correct its name: perhaps `nail` is meant"
    );
}

#[test]
fn names_are_given_once() {
    let cases: [(Spoil, Code, &str); 7] = [
        (|b| b.benchmarks[1].name = "bm a ".to_owned(), Code::KeyRepeated, "benchmarks[1].name"),
        (|b| b.benchmarks[0].name = "  ".to_owned(), Code::KeyMissing, "benchmarks[0].name"),
        (
            |b| b.setups[2].sights.push(Sight::shot("tp1", ft(5.0))),
            Code::KeyRepeated,
            "setups[2].sights[0].point",
        ),
        (
            |b| b.setups[0].sights.push(Sight::shot("BM B", ft(5.0))),
            Code::KeyRepeated,
            "setups[0].sights[0].point",
        ),
        (
            |b| b.setups[0].sights = vec![Sight::shot("A1", ft(5.0)), Sight::shot("a1", ft(5.0))],
            Code::KeyRepeated,
            "setups[0].sights[1].point",
        ),
        (
            |b| b.setups[1].sights.push(Sight::shot("TP2", ft(6.96))),
            Code::KeyRepeated,
            "setups[1].foresight.point",
        ),
        (
            |b| b.setups[2].foresight = Some(Sight::point("TP1", ft(3.27))),
            Code::KeyRepeated,
            "setups[2].foresight.point",
        ),
    ];
    for (spoil, code, path) in cases {
        let mut book = coursework(Some(0.05));
        spoil(&mut book);
        let failure = refusal(&book);
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
        assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
    }
}

#[test]
fn readings_that_cannot_be_are_refused() {
    let bad = [
        (-0.5, Code::Negative),
        (40.0, Code::OutOfRange),
        (f64::NAN, Code::NotFinite),
        (f64::INFINITY, Code::NotFinite),
    ];
    for (number, code) in bad {
        let rod = ft(number);
        type Spoil<'a> = &'a dyn Fn(&mut LevelBook);
        let cases: [(Spoil, &str); 4] = [
            (&|b| b.setups[0].backsight.rod = Some(rod), "setups[0].backsight"),
            (&|b| b.setups[0].sights.push(Sight::shot("A1", rod)), "setups[0].sights[0]"),
            (&|b| b.setups[3].foresight = Some(Sight::point("BM B", rod)), "setups[3].foresight"),
            (&|b| b.setups[2].close = Some(rod), "setups[2].close"),
        ];
        for (spoil, path) in cases {
            let mut book = coursework(Some(0.05));
            spoil(&mut book);
            let failure = refusal(&book);
            assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
            assert!(failure.remedy.contains("upside down") && failure.refused.is_some());
        }
    }
}

#[test]
fn books_and_tolerances_that_cannot_be_are_refused() {
    let cases: [(Spoil, Code, &str); 6] = [
        (|b| b.benchmarks.clear(), Code::EmptyList, "benchmarks"),
        (|b| b.setups.clear(), Code::EmptyList, "setups"),
        (|b| b.benchmarks[0] = at_ft("BM A", f64::NAN), Code::NotFinite, "benchmarks[0].elevation"),
        (|b| b.benchmarks[1] = at_ft("BM B", 1e6), Code::OutOfRange, "benchmarks[1].elevation"),
        (|b| b.tolerances.closure = Some(ft(-0.1)), Code::OutOfRange, "tolerances.closure"),
        (|b| b.tolerances.closure = Some(ft(f64::INFINITY)), Code::NotFinite, "tolerances.closure"),
    ];
    for (spoil, code, path) in cases {
        let mut book = coursework(Some(0.05));
        spoil(&mut book);
        let failure = refusal(&book);
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    }
    // A tolerance is read even where nothing is judged by it.
    let mut book = rechecked(50.5, 50.5);
    book.tolerances.closure = Some(ft(f64::NAN));
    assert_eq!(refusal(&book).path, "tolerances.closure");
}

/// A line of `legs` set-ups from and to a benchmark, one shot in each, its readings off by `error` in all.
fn closed_line(legs: &[(f64, f64, f64)], error: f64) -> LevelBook {
    let rise: f64 = legs.iter().map(|(back, _, fore)| back - fore).sum();
    let setups = legs.iter().enumerate().map(|(index, &(back, shot, fore))| {
        let from = if index == 0 { "start".to_owned() } else { format!("TP{index}") };
        let to = if index + 1 == legs.len() { "end".to_owned() } else { format!("TP{}", index + 1) };
        let mut setup = SetUp::on(from, m(back)).to(to, m(fore));
        setup.sights.push(Sight::shot(format!("S{index}"), m(shot)));
        setup
    });
    LevelBook {
        benchmarks: vec![at_m("start", 20.0), at_m("end", 20.0 + rise - error)],
        setups: setups.collect(),
        tolerances: Tolerances { recheck: Some(m(0.01)), closure: Some(m(0.01)) },
    }
}

/// Lines of one to seven set-ups, each off by up to 9 mm.
fn varied_lines() -> impl Iterator<Item = (Vec<(f64, f64, f64)>, f64)> {
    let mut varied = Varied::new(1);
    (0..200).map(move |_| {
        let count = varied.count(1, 8);
        let mut rod = || varied.between(0.1, 4.0);
        let legs = (0..count).map(|_| (rod(), rod(), rod())).collect();
        (legs, varied.between(-0.009, 0.009))
    })
}

/// Whatever the readings: the sums agree with the elevations, nothing is lost, and each sight takes its share.
#[test]
fn laws_of_a_closed_line() {
    for (legs, error) in varied_lines() {
        let book = reduce(&closed_line(&legs, error)).unwrap();
        let line = &book.lines[0];
        let page = line.page.unwrap();
        assert_near((page.backsights - page.foresights).base(), page.rise.base(), 1e-12);
        assert_near(line.closure.as_ref().unwrap().misclosure.base(), error, 1e-12);
        let count = legs.len() as f64;
        for point in &book.points {
            let passed = (point.setup + 1) as f64 - if point.slab_shot { 0.5 } else { 0.0 };
            assert_near(point.correction.base(), -error * passed / count, 1e-12);
            if point.slab_shot {
                // An elevation and its rod give back the height that rod marks hang on.
                let height = book.setups[point.setup].height;
                assert_near((point.elevation + point.rod).base(), height.base(), 1e-12);
            }
        }
    }
}

/// Read backward, the line gives the same elevations: backsights and foresights change places.
#[test]
fn a_line_read_backward_agrees() {
    for (legs, error) in varied_lines() {
        let forward = closed_line(&legs, error);
        let mut backward = forward.clone();
        backward.setups.reverse();
        for setup in &mut backward.setups {
            let foresight = setup.foresight.take().unwrap();
            let (point, rod) = (setup.backsight.point.clone(), setup.backsight.rod.unwrap());
            setup.foresight = Some(Sight::point(point, rod));
            setup.backsight = Backsight { point: foresight.point, rod: foresight.rod };
        }
        let (forward, backward) = (reduce(&forward).unwrap(), reduce(&backward).unwrap());
        for point in &forward.points {
            let other = backward.elevation_of(&point.name).unwrap();
            assert_near(point.elevation.base(), other.base(), 1e-12);
        }
    }
}
