//! Measures that a kind has no use for are refused, never lost.

use super::length;
use crate::clearance::{Kind, Measure, Measures, Swing, reads};
use crate::failure::Code;
use crate::operation::Choice;

#[test]
fn every_measure_is_read_by_some_kind_and_every_kind_reads_some() {
    for &measure in Measure::ALL {
        assert!(
            Kind::MEMBERS.iter().any(|&kind| reads(kind).any(|read| read == measure)),
            "{}",
            measure.name()
        );
    }
    for &kind in Kind::MEMBERS {
        assert!(reads(kind).next().is_some(), "{}", kind.word());
    }
}

#[test]
fn a_measure_without_use_is_refused_by_name() {
    let measures = Measures { swing: Some(Swing::In), ..Measures::default() };
    let failure = measures.thing(Kind::Cleanout).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::MeasureNotRead, "swing"));
    assert!(failure.allowed.contains("elevation, above_slab, free"), "{}", failure.allowed);
}

#[test]
fn two_ways_to_say_one_thing_are_refused() {
    let both = Measures {
        elevation: Some(crate::quantity::read("99 ft").unwrap()),
        above_slab: Some(length("1 in")),
        ..Measures::default()
    };
    assert_eq!(both.thing(Kind::Cleanout).unwrap_err().code, Code::Contradiction);
    let risers = vec![length("7 in")];
    let stair = Measures { risers, riser_count: Some(2), ..Measures::default() };
    assert_eq!(stair.thing(Kind::Stair).unwrap_err().code, Code::Contradiction);
    let count = Measures { riser_count: Some(2), ..Measures::default() };
    let failure = count.thing(Kind::Stair).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::KeyMissing, "flight"));
}

#[test]
fn a_measure_out_of_range_is_refused() {
    let negative = Measures { may_lose: Some(length("-1 in")), ..Measures::default() };
    let failure = negative.thing(Kind::PassageDoor).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutOfRange, "may_lose"));
    let many = Measures { risers: vec![length("7 in"); 101], ..Measures::default() };
    assert_eq!(many.thing(Kind::Stair).unwrap_err().code, Code::OutOfRange);
}
