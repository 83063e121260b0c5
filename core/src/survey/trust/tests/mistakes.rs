//! Mistakes other than one slip: swapped readings, whole rows, a lost sign; and floors that only look wrong.

use super::books::Book;
use crate::note::NoteCode;
use crate::quantity::Typed;
use crate::quantity::units::{FOOT, INCH};
use crate::survey::old_slab::{Instrument, Texture};
use crate::survey::trust::{Graduation, SlipKind, Verdict, suspects};
use crate::survey::varied::Varied;

/// Five rows of five, 7 ft apart, that rise by `rise` inches over each column and each row, read to the eighth with a little noise.
fn sloping(rise: [f64; 2], seed: u64) -> Book {
    let mut varied = Varied::new(seed);
    let mut book = Book {
        size: [30.0 * FOOT, 30.0 * FOOT],
        xs: Vec::new(),
        ys: Vec::new(),
        columns: Some(5),
        heights: Vec::new(),
        instrument: Instrument::OpticalEighths,
        texture: Texture::Trowelled,
    };
    for row in 0..5 {
        for column in 0..5 {
            book.xs.push((1.0 + 7.0 * f64::from(column)) * FOOT);
            book.ys.push((1.0 + 7.0 * f64::from(row)) * FOOT);
            let even = 1187.0 + rise[0] * f64::from(column) + rise[1] * f64::from(row);
            let inches = ((even + varied.between(-0.1, 0.1)) * 8.0).round() / 8.0;
            book.heights.push(inches * INCH);
        }
    }
    book
}

#[test]
fn two_readings_swapped_in_a_row() {
    let mut book = sloping([1.0, 0.25], 3);
    book.heights.swap(10, 13);
    let list = suspects(&book.survey(), None).list;
    let mut pairs: Vec<_> = list.iter().map(|s| (s.name.as_str(), s.with.as_deref(), s.kind)).collect();
    pairs.sort_by_key(|pair| pair.0);
    assert_eq!(pairs, [("C1", Some("C4"), SlipKind::Swapped), ("C4", Some("C1"), SlipKind::Swapped)]);
    assert_eq!(list[0].proposed.map(Typed::base), Some(list[1].elevation.base()));
    assert!(list[0].said.contains("may be swapped"), "{}", list[0].said);
}

#[test]
fn a_row_booked_from_the_wrong_end() {
    let right = sloping([1.0, 0.25], 4);
    let mut book = right.clone();
    book.heights[15..20].reverse();
    let list = suspects(&book.survey(), None).list;
    assert!(list.len() >= 4, "{list:?}");
    for suspect in &list {
        assert_eq!(
            (suspect.kind, suspect.with.as_deref()),
            (SlipKind::RowReversed, Some("D")),
            "{}",
            suspect.said
        );
        assert_eq!(suspect.proposed.map(Typed::base), Some(right.heights[suspect.shot]));
    }
}

#[test]
fn two_rows_in_each_others_place() {
    let right = sloping([0.0, 1.5], 5);
    let mut book = right.clone();
    for column in 0..5 {
        book.heights.swap(column, 10 + column);
    }
    let list = suspects(&book.survey(), None).list;
    assert_eq!(list.len(), 10, "{list:?}");
    for suspect in &list {
        assert_eq!((suspect.kind, suspect.with.as_deref()), (SlipKind::RowsSwapped, Some("A and C")));
        assert_eq!(suspect.proposed.map(Typed::base), Some(right.heights[suspect.shot]));
    }
}

#[test]
fn a_whole_row_a_foot_off() {
    let right = sloping([0.25, 0.5], 6);
    let mut book = right.clone();
    book.heights[10..15].iter_mut().for_each(|height| *height += FOOT);
    let list = suspects(&book.survey(), None).list;
    assert_eq!(list.len(), 5, "{list:?}");
    for suspect in &list {
        assert_eq!(
            (suspect.kind, suspect.second),
            (SlipKind::RowOff, Some(SlipKind::Foot)),
            "{}",
            suspect.said
        );
        assert_eq!(suspect.verdict, Verdict::LikelySlip);
        assert!((suspect.proposed.unwrap().base() - right.heights[suspect.shot]).abs() < 1e-12);
    }
}

#[test]
fn a_lost_sign() {
    let mut book = sloping([0.25, 0.0], 7);
    // Eight inches and more below a datum of zero.
    book.heights.iter_mut().for_each(|height| *height -= 1195.5 * INCH);
    book.heights[12] = -book.heights[12];
    let list = suspects(&book.survey(), Some(Graduation::Inches)).list;
    assert_eq!(list.len(), 1);
    assert_eq!((list[0].name.as_str(), list[0].kind), ("C3", SlipKind::Sign), "{}", list[0].said);
    assert_eq!(list[0].proposed.map(Typed::base), Some(-book.heights[12]));
}

/// A single shot in a real hollow cannot be told from one booked an inch low: it is said, and not called wrong.
#[test]
fn a_lone_hollow_is_looked_at_again_and_not_called_wrong() {
    let mut book = sloping([0.25, 0.25], 8);
    book.heights[12] -= 0.875 * INCH;
    let list = suspects(&book.survey(), None).list;
    assert_eq!(list.len(), 1);
    assert_eq!((list[0].name.as_str(), list[0].verdict), ("C3", Verdict::LookAgain));
    assert!(list[0].said.contains("real hollow") && list[0].said.contains("look again"), "{}", list[0].said);
}

#[test]
fn a_floor_of_two_planes_is_no_mistake() {
    let mut book = sloping([0.0, 0.0], 9);
    for (place, height) in book.heights.iter_mut().enumerate() {
        // A valley along the middle column, 1/4 in per ft from both sides.
        *height += 1.75 * ((place % 5) as f64 - 2.0).abs() * INCH;
    }
    let list = suspects(&book.survey(), None).list;
    assert!(list.is_empty(), "{list:?}");
    book.heights[7] += 6.0 * INCH;
    let list = suspects(&book.survey(), None).list;
    assert_eq!((list[0].name.as_str(), list[0].kind), ("B3", SlipKind::HalfAFoot));
    // Without B3 the end of the valley at A3 has neighbours on its slopes only: it may be looked at again, no more.
    assert!(list.iter().skip(1).all(|s| s.name == "A3" && s.verdict == Verdict::LookAgain), "{list:?}");
}

#[test]
fn few_shots_are_not_judged() {
    let mut book = sloping([0.0, 0.0], 10);
    for list in [&mut book.xs, &mut book.ys, &mut book.heights] {
        list.truncate(10);
    }
    (book.columns, book.size) = (Some(5), [30.0 * FOOT, 9.0 * FOOT]);
    let mut survey = book.survey();
    for name in ["A2", "A4", "B2", "B3", "B4"] {
        survey = survey.without_named(&[name]).unwrap();
    }
    let found = suspects(&survey, None);
    assert_eq!((found.judged, found.list.len()), (0, 0));
    assert_eq!(found.notes[0].code, NoteCode::TooFewToJudge);
}
