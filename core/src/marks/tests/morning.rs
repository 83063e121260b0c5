//! The benchmark on the morning of the pour.

use super::support::{inches, length, refused};
use crate::failure::Code;
use crate::marks::{Checked, Doubted, Morning, SecondBenchmark, Verdict};
use crate::survey::level_book::Slip;

fn morning(today: &str, same_setup: bool, second: Option<&str>) -> Morning {
    Morning {
        planned: length("4' 2 1/2\""),
        today: length(today),
        same_setup,
        tolerance: length("1/4 in"),
        second: second.map(|today| SecondBenchmark { planned: length("3' 8\""), today: length(today) }),
        rods: vec![length("4' 9\""), length("4' 5\"")],
    }
}

fn checked(today: &str, same_setup: bool, second: Option<&str>) -> Checked {
    morning(today, same_setup, second).check().unwrap()
}

#[test]
fn every_rod_moves_by_the_difference() {
    let same = checked("4' 2 1/2\"", true, None);
    assert_eq!((same.verdict, inches(same.rods[0])), (Verdict::Same, 57.0));
    let agrees = checked("4' 2 5/8\"", true, None);
    assert_eq!(agrees.verdict, Verdict::Agrees);
    assert!((inches(agrees.rods[1]) - 53.125).abs() < 1e-9);
    assert!(agrees.said.contains("add 1/8\" to every rod"), "{}", agrees.said);
    let shift = checked("4' 2 1/4\"", true, None);
    assert_eq!(shift.verdict, Verdict::Shift);
    assert!(shift.said.contains("take 1/4\" off every rod"), "{}", shift.said);
    let new = checked("5' 3 1/8\"", false, Some("4' 8 5/8\""));
    assert_eq!((new.verdict, new.doubted), (Verdict::Shift, Doubted::None));
    assert!((inches(new.rods[0]) - (57.0 + 12.625)).abs() < 1e-9);
    assert!(new.said.contains("second benchmark agrees"), "{}", new.said);
}

#[test]
fn nobody_pours_where_the_benchmark_is_off() {
    let off = checked("4' 3 1/2\"", true, None);
    assert_eq!((off.verdict, off.doubted, off.slip), (Verdict::Stop, Doubted::First, Some(Slip::Inch)));
    assert!(
        off.rods.is_empty() && off.said.starts_with("DO NOT POUR") && off.said.contains("an inch"),
        "{}",
        off.said
    );
    // At the tolerance itself it is not off.
    assert_eq!(checked("4' 2 3/4\"", true, None).verdict, Verdict::Shift);
    // The level was set up anew: any reading will do.
    assert_eq!(checked("4' 3 1/2\"", false, None).verdict, Verdict::Shift);
}

#[test]
fn a_second_benchmark_tells_which_is_wrong() {
    let second = checked("4' 2 1/2\"", true, Some("4' 8\""));
    assert_eq!(
        (second.verdict, second.doubted, second.slip),
        (Verdict::Stop, Doubted::Second, Some(Slip::Foot))
    );
    let first = checked("4' 3 1/2\"", true, Some("3' 8\""));
    assert_eq!((first.verdict, first.doubted), (Verdict::Stop, Doubted::First));
    // Both off alike: the level moved.
    let moved = checked("4' 3 1/2\"", true, Some("3' 9\""));
    assert_eq!((moved.verdict, moved.doubted), (Verdict::Stop, Doubted::None));
    assert!(moved.said.contains("the level has moved"), "{}", moved.said);
    // After a new set-up nothing tells which of the two was misread.
    let either = checked("5' 3 1/8\"", false, Some("3' 8 5/8\""));
    assert_eq!(
        (either.verdict, either.doubted, either.slip),
        (Verdict::Stop, Doubted::Either, Some(Slip::Foot))
    );
}

#[test]
fn readings_that_cannot_be() {
    refused(
        Morning { planned: length("-1 in"), ..morning("4 ft", true, None) }.check(),
        Code::OutOfRange,
        "planned",
    );
    refused(morning("40 ft", true, None).check(), Code::OutOfRange, "today");
    refused(
        Morning { tolerance: length("2 ft"), ..morning("4 ft", true, None) }.check(),
        Code::OutOfRange,
        "tolerance",
    );
    let rods = vec![length("4 ft"), length("-4 ft")];
    refused(Morning { rods, ..morning("4 ft", true, None) }.check(), Code::OutOfRange, "marks.rod");
    refused(morning("4 ft", true, Some("-1 ft")).check(), Code::OutOfRange, "second_today");
}
