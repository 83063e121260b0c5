//! Books that are refused, and what the refusal says.

use super::{at_ft, coursework, ft, rechecked};
use crate::failure::{Code, Failure};
use crate::quantity::Length;
use crate::quantity::length::inch;
use crate::survey::level_book::{LevelBook, SetUp, Sight, reduce};

/// Makes a good book a bad one.
type Spoil = fn(&mut LevelBook);

fn refusal(book: &LevelBook) -> Box<Failure> {
    reduce(book).expect_err("the book should be refused")
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
    assert_eq!((failure.code, failure.remedy.as_str()), (Code::BookIncomplete, "did you mean `BM A`?"));
    let mut book = coursework(Some(0.05));
    book.setups[2].backsight.point = "TP7".to_owned();
    assert_eq!(refusal(&book).remedy, "did you mean `TP2`?");
    let mut book = rechecked(50.5, 50.5);
    book.setups.push(SetUp::on("nial", ft(4.0)));
    assert_eq!(
        refusal(&book).remedy,
        "book the foresight on `nial`, or correct its name: did you mean `nail`?"
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
