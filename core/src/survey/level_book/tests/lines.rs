//! Points read again, lines, branches, open ends.

use super::{assert_near, coursework, ft, rechecked};
use crate::basis::BasisId;
use crate::quantity::elevation::foot as elevation_foot;
use crate::quantity::length::{foot, inch};
use crate::quantity::{Length, Typed};
use crate::survey::level_book::{
    NAIL_ELEVATION, PointKind, RECHECK_TOLERANCE, ReducedBook, SetUp, Sight, Slip, booking_slip, reduce,
};

#[test]
fn a_point_read_again_gives_the_mean_height() {
    let book = reduce(&rechecked(50.5, 50.625)).unwrap();
    let recheck = book.setups[0].recheck.unwrap();
    assert_near(recheck.difference.get::<inch>(), 0.125, 1e-9);
    assert_near(book.setups[0].backsight.get::<inch>(), 50.5625, 1e-9);
    let a1 = book.elevation_of("A1").unwrap();
    assert_eq!(book.benchmarks[0].elevation, NAIL_ELEVATION);
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
