//! Outlines from four walls and their diagonals.

use super::{assert_corners, assert_near, ft, inches, tape};
use crate::basis::BasisId;
use crate::failure::{Code, Failure};
use crate::quantity::Length;
use crate::quantity::length::{foot, inch};
use crate::quantity::slope::rise_over_run;
use crate::survey::outline::{Diagonals, MISFIT_TOLERANCE, SQUARE_TOLERANCE, Turn, Wall, from_diagonals};

const NAMES: [&str; 4] = ["front", "right", "back", "left"];

fn room(feet: [f64; 4]) -> Vec<Wall> {
    NAMES.into_iter().zip(feet).map(|(name, feet)| Wall::named(name, ft(feet))).collect()
}

fn first(length: Length) -> Diagonals {
    Diagonals { first: Some(length), ..Diagonals::default() }
}

fn both(first: Length, second: Length) -> Diagonals {
    Diagonals { first: Some(first), second: Some(second), ..Diagonals::default() }
}

fn refused(walls: &[Wall], diagonals: Diagonals) -> Box<Failure> {
    let failure = from_diagonals(walls, diagonals).expect_err("should be refused");
    assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
    failure
}

/// An invented boat store of 20 by 32 ft with a diagonal of 37' 8 7/8": square.
#[test]
fn a_diagonal_that_agrees_leaves_the_corners_square() {
    let walls = room([20.0, 32.0, 20.0, 32.0]);
    let laid = from_diagonals(&walls, first(tape("37' 8 7/8\""))).unwrap();
    assert!(laid.square);
    assert_corners(laid.outline.corners(), &[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0]]);
    assert_eq!(laid.diagonals[0].measured, Some(tape("37' 8 7/8\"")));
    assert_near(laid.diagonals[1].laid, ft(20.0_f64.hypot(32.0)), 1e-12);
    assert_eq!(laid.misfit, None);
    let taken: Vec<_> = laid.tolerances.iter().map(|t| (t.port, t.value, t.taken)).collect();
    assert_eq!(taken, [("square_tolerance", SQUARE_TOLERANCE, Some(BasisId::OutlineTolerance))]);
    // What was measured is told although it was not used: 0.044 in longer, so the diagonals differ by twice that.
    assert_near(laid.difference, (tape("37' 8 7/8\"") - ft(20.0_f64.hypot(32.0))) * 2.0, 1e-5);
}

/// A 15 by 20 ft floor has diagonals of 25 ft. One diagonal may be off by half of what two may differ.
#[test]
fn one_diagonal_is_judged_as_two_would_be() {
    let walls = room([15.0, 20.0, 15.0, 20.0]);
    for (off, square) in [(0.0, true), (0.24, true), (-0.24, true), (0.26, false), (-0.26, false)] {
        let length = ft(25.0) + inches(off);
        for diagonals in [first(length), Diagonals { second: Some(length), ..Diagonals::default() }] {
            let laid = from_diagonals(&walls, diagonals).unwrap();
            assert_eq!(laid.square, square, "{off} in");
            if !square {
                let used = if diagonals.first.is_some() { laid.diagonals[0] } else { laid.diagonals[1] };
                assert_near(used.laid, length, 1e-12);
                laid.walls.iter().for_each(|wall| assert_near(wall.laid, wall.measured, 1e-12));
            }
        }
        let two = both(ft(25.0) + inches(off), ft(25.0) - inches(off));
        assert_eq!(from_diagonals(&walls, two).unwrap().square, square, "{off} in");
    }
}

/// Skewed, the first diagonal longer: the first corner is closed and so is the one opposite.
#[test]
fn a_skewed_floor_is_solved_and_says_how_far_it_is_out() {
    let laid =
        from_diagonals(&room([15.0, 20.0, 15.0, 20.0]), both(ft(25.0) + inches(1.0), ft(25.0) - inches(1.0)));
    let laid = laid.unwrap();
    assert!(!laid.square);
    assert_near(laid.difference, inches(2.0), 1e-4);
    // p dp = a b sin(lean), so the lean is 25 x 1/12 over 15 x 20.
    let lean = 25.0 / 12.0 / 300.0;
    for (slope, sign) in laid.out_of_square.iter().zip([-1.0, 1.0, -1.0, 1.0]) {
        assert!((slope.get::<rise_over_run>() - sign * lean).abs() < 1e-4, "{slope:?}");
    }
    let corner = laid.outline.corners()[3];
    assert!((corner.x.get::<foot>() - lean * 20.0).abs() < 2e-3 && corner.y.get::<foot>() < 20.0);
    assert_eq!(laid.tolerances.len(), 2);
}

/// Equal diagonals do not make a floor square: facing walls must agree as well. Ptolemy: p q = a c + b d.
#[test]
fn a_trapezoid_with_equal_diagonals_is_not_square() {
    let leg = 12.0_f64.hypot(1.0);
    let diagonal = (20.0_f64 * 18.0 + leg * leg).sqrt();
    let laid = from_diagonals(&room([20.0, leg, 18.0, leg]), both(ft(diagonal), ft(diagonal))).unwrap();
    assert!(!laid.square);
    assert_near(laid.difference, ft(0.0), 1e-9);
    assert_near(laid.misfit.unwrap(), ft(0.0), 1e-9);
    assert_corners(laid.outline.corners(), &[[0.0, 0.0], [20.0, 0.0], [19.0, 12.0], [1.0, 12.0]]);
}

/// The redundant length is adjusted, and every length tells by how much.
#[test]
fn two_diagonals_are_adjusted_with_the_walls() {
    let walls = room([15.0, 20.0, 15.0, 20.0]);
    let mut diagonals = both(ft(25.0) + inches(0.21), ft(25.0) + inches(0.19));
    diagonals.square_tolerance = Some(inches(0.0));
    let laid = from_diagonals(&walls, diagonals).unwrap();
    assert!(!laid.square);
    assert_near(laid.misfit.unwrap(), inches(0.4), 1e-5);
    let [one, other] = laid.diagonals;
    // Together too long by 0.4 in: each gives a quarter of that, and the walls take the rest by length, as p dp + q dq =
    // a (da + dc) + b (db + dd) in a rectangle. The floor leans by less than 1:10 000, so the shares hold to that.
    assert_near(one.laid - one.measured.unwrap(), inches(-0.1), 5e-6);
    assert_near(other.laid - other.measured.unwrap(), inches(-0.1), 5e-6);
    for (wall, share) in laid.walls.iter().zip([0.06, 0.08, 0.06, 0.08]) {
        assert_near(wall.residual(), inches(share), 5e-6);
    }
}

/// Both diagonals alike and three inches too long: alike is not enough.
#[test]
fn diagonals_that_contradict_the_walls_are_refused() {
    let walls = room([15.0, 20.0, 15.0, 20.0]);
    let failure = refused(&walls, both(ft(25.25), ft(25.25)));
    assert_eq!((failure.code, failure.path.as_str()), (Code::DiagonalImpossible, "diagonals.second"));
    // A parallelogram's p2 + q2 = 2 (a2 + b2): the root of 1250 - 25.25 squared is 24.7475 ft.
    let start =
        "25' 3\" (7.6962 m), where the walls and the first diagonal give 24' 9\" (7.5430 m): off by 6 1/32\"";
    assert!(failure.written.starts_with(start), "{failure}");
    assert_eq!(failure.allowed, "off by at most 1\" (0.02540 m) (common practice, no source)");
    let mut stated = both(ft(25.25), ft(25.25));
    stated.misfit_tolerance = Some(inches(8.0));
    assert!(from_diagonals(&walls, stated).unwrap().misfit.unwrap().get::<inch>() > 6.0);
    assert!(MISFIT_TOLERANCE < inches(6.0));
}

#[test]
fn a_diagonal_without_a_triangle_is_refused() {
    let walls = room([15.0, 20.0, 15.0, 20.0]);
    let failure = refused(&walls, first(ft(36.0)));
    assert_eq!((failure.code, failure.path.as_str()), (Code::DiagonalImpossible, "diagonals.first"));
    assert_eq!(
        failure.written,
        "36' 0\" (10.9728 m) with front 15' 0\" (4.5720 m), right 20' 0\" (6.0960 m), back 15' 0\" (4.5720 m), \
         left 20' 0\" (6.0960 m)"
    );
    assert_eq!(failure.allowed, "more than 5' 0\" (1.5240 m) and less than 35' 0\" (10.6680 m)");
    let second = Diagonals { second: Some(ft(4.0)), ..Diagonals::default() };
    assert_eq!(refused(&walls, second).path, "diagonals.second");
    assert_eq!(refused(&walls, both(ft(25.0), ft(36.0))).path, "diagonals.second");
    let failure = refused(&room([6.0, 8.0, 1.0, 30.0]), first(ft(10.0)));
    assert_eq!(failure.allowed, "none: these walls make no figure");
}

/// A kite whose first diagonal is so short that the third corner juts inward.
#[test]
fn a_floor_that_is_not_convex_is_refused() {
    let failure = refused(&room([10.0, 5.0, 5.0, 10.0]), first(ft(6.0)));
    assert_eq!((failure.code, failure.path.as_str()), (Code::DiagonalImpossible, "diagonals"));
    assert_eq!(failure.written, "the corner between `right` and `back` is straight or juts into the work");
}

#[test]
fn what_is_not_four_walls_with_a_diagonal_is_refused() {
    let walls = room([15.0, 20.0, 15.0, 20.0]);
    let failure = refused(&walls[..3], first(ft(25.0)));
    assert_eq!((failure.code, failure.path.as_str()), (Code::LengthMismatch, "walls"));
    let failure = refused(&walls, Diagonals::default());
    assert_eq!((failure.code, failure.path.as_str()), (Code::KeyMissing, "diagonals"));
    let mut right = walls.clone();
    right[2].turn = Turn::Right;
    let failure = refused(&right, first(ft(25.0)));
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "walls[2].turn"));
    for (length, code) in
        [(0.0, Code::OutOfRange), (f64::NAN, Code::NotFinite), (f64::INFINITY, Code::NotFinite)]
    {
        assert_eq!(refused(&walls, first(ft(length))).code, code);
        assert_eq!(refused(&walls, both(ft(25.0), ft(length))).path, "diagonals.second");
        let failure = refused(&room([15.0, length, 15.0, 20.0]), first(ft(25.0)));
        assert_eq!((failure.code, failure.path.as_str()), (code, "walls[1].length"));
    }
    for spoil in [
        |d: &mut Diagonals| d.square_tolerance = Some(ft(-1.0)),
        |d: &mut Diagonals| d.misfit_tolerance = Some(ft(-1.0)),
    ] {
        let mut diagonals = first(ft(25.0));
        spoil(&mut diagonals);
        assert_eq!(refused(&walls, diagonals).code, Code::OutOfRange);
    }
}
