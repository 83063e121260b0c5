//! Outlines from wall lengths with square corners.

use super::{assert_corners, assert_near, ft, inches, tape};
use crate::basis::BasisId;
use crate::failure::{Code, Failure};
use crate::quantity::{Length, Typed};
use crate::survey::outline::{CLOSING_TOLERANCE, Turn, Wall, from_walls};
use crate::survey::varied::Varied;

const NAMES: [&str; 4] = ["front", "right", "back", "left"];

fn room(lengths: [&str; 4]) -> Vec<Wall> {
    NAMES.into_iter().zip(lengths).map(|(name, length)| Wall::named(name, tape(length))).collect()
}

fn refused(walls: &[Wall]) -> Box<Failure> {
    let failure = from_walls(walls, None).expect_err("should be refused");
    assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
    failure
}

#[test]
fn four_walls_make_a_rectangle() {
    let laid = from_walls(&room(["20'", "32'", "20'", "32'"]), None).unwrap();
    assert_corners(laid.outline.corners(), &[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0]]);
    assert_eq!((laid.gap_x.base(), laid.gap_y.base()), (0.0, 0.0));
    assert_eq!(
        (laid.tolerance.value, laid.tolerance.taken),
        (CLOSING_TOLERANCE, Some(BasisId::OutlineTolerance))
    );
    assert_eq!(laid.outline.edge("Back").unwrap()[0].length(), tape("20'"));
    assert!((laid.outline.region().area() / 0.3048_f64.powi(2) - 640.0).abs() < 1e-9);
}

/// An L: 20 by 22 ft less a notch of 8 by 12 ft at the back right.
fn ell() -> Vec<Wall> {
    let wall = |feet: f64| Wall::of(ft(feet));
    vec![wall(20.0), wall(10.0), wall(8.0).then_right(), wall(12.0), wall(12.0), wall(22.0)]
}

#[test]
fn an_ell_turns_right_once() {
    let laid = from_walls(&ell(), Some(inches(0.0))).unwrap();
    let corners = [[0.0, 0.0], [20.0, 0.0], [20.0, 10.0], [12.0, 10.0], [12.0, 22.0], [0.0, 22.0]];
    assert_corners(laid.outline.corners(), &corners);
    assert!((laid.outline.region().area() / 0.3048_f64.powi(2) - 344.0).abs() < 1e-9);
    assert_eq!(laid.tolerance.taken, None);
}

/// Both facing walls give way by half of what they differ, the corners stay square.
#[test]
fn a_small_gap_is_shared_out() {
    let laid = from_walls(&room(["20'", "32' 3/8\"", "20' 1/4\"", "32'"]), None).unwrap();
    assert_near(laid.gap_x, inches(-0.25), 1e-12);
    assert_near(laid.gap_y, inches(0.375), 1e-12);
    // Shared in proportion to the lengths, so a hair off the half.
    assert_near(laid.walls[0].residual(), inches(0.125), 2e-6);
    assert_near(laid.walls[2].residual(), inches(-0.125), 2e-6);
    assert_near(laid.walls[1].residual(), inches(-0.1875), 3e-6);
    assert_eq!(laid.walls[0].name, "front");
    for (wall, run) in laid.walls.iter().zip(laid.outline.runs()) {
        assert_near(wall.laid, run.length(), 1e-12);
    }
}

#[test]
fn a_large_gap_is_refused_with_its_size_in_x_and_y() {
    let failure = refused(&room(["20'", "32'", "20' 3/8\"", "32' 3/8\""]));
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutlineOpen, "walls"));
    let written =
        "the last wall ends -3/8\" (-0.0095 m) in x and -3/8\" (-0.0095 m) in y from the first corner";
    assert_eq!(failure.written, written);
    assert_eq!(failure.allowed, "a gap of at most 1/2\" (0.01270 m) (common practice, no source)");
    assert!(failure.remedy.contains("one diagonal"));
    let stated = from_walls(&room(["20'", "32'", "20' 3/8\"", "32' 3/8\""]), Some(inches(1.0))).unwrap();
    assert_eq!(stated.tolerance.taken, None);
    let mut open = ell();
    open[4].length = ft(13.0);
    assert!(refused(&open).remedy.contains("turn at each corner"));
}

#[test]
fn turns_that_do_not_come_round_are_refused() {
    assert_eq!(refused(&ell()[..3]).code, Code::OutlineTooFew);
    assert_eq!(refused(&[]).code, Code::OutlineTooFew);
    let mut five = ell();
    five[2].turn = Turn::Left;
    let failure = refused(&five);
    assert_eq!(
        (failure.code, failure.written.as_str()),
        (Code::OutlineOpen, "6 left turns and 0 right turns")
    );
    let mirrored: Vec<Wall> = room(["20'", "32'", "20'", "32'"]).into_iter().map(Wall::then_right).collect();
    let failure = refused(&mirrored);
    assert_eq!((failure.code, failure.path.as_str()), (Code::Contradiction, "walls"));
    assert!(failure.allowed.contains("left of the walk"));
}

#[test]
fn lengths_and_tolerances_that_cannot_be() {
    let cases = [
        (0.0, Code::OutOfRange),
        (-1.0, Code::OutOfRange),
        (1e6, Code::OutOfRange),
        (f64::NAN, Code::NotFinite),
    ];
    for (length, code) in cases {
        let mut walls = ell();
        walls[3].length = ft(length);
        let failure = refused(&walls);
        assert_eq!((failure.code, failure.path.as_str()), (code, "walls[3].length"));
    }
    let failure = from_walls(&ell(), Some(ft(-1.0))).unwrap_err();
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutOfRange, "tolerance"));
}

/// A slot so deep that it comes out at the front: the walls close, but run into one another.
#[test]
fn walls_that_cross_are_refused() {
    let lengths = [10.0, 10.0, 3.0, 12.0, 4.0, 12.0, 3.0, 10.0];
    let mut walls: Vec<Wall> = lengths.map(|feet| Wall::of(ft(feet))).into();
    for right in [3, 4] {
        walls[right].turn = Turn::Right;
    }
    let failure = refused(&walls);
    assert_eq!(failure.code, Code::OutlineCrosses);
    assert!(failure.written.starts_with("`side 1` meets `side"), "{failure}");
}

#[test]
fn names_of_walls_are_blamed_on_walls() {
    let mut walls = ell();
    walls[1].name = Some("side".to_owned());
    walls[4].name = Some("Side".to_owned());
    let failure = refused(&walls);
    assert_eq!((failure.code, failure.path.as_str()), (Code::KeyRepeated, "walls[4].name"));
}

/// Ells of any size close, and starting at another wall lays the same floor.
#[test]
fn any_ell_closes_from_any_wall() {
    let mut varied = Varied::new(3);
    for _ in 0..100 {
        let mut metres = || varied.between(0.5, 12.0);
        let (a, b, c, d) = (metres(), metres(), metres(), metres());
        let lengths = [a + c, b, a, d, c, b + d];
        let mut walls: Vec<Wall> =
            (0..6).map(|i| Wall::named(format!("wall {i}"), Length::from_base(lengths[i]))).collect();
        walls[2].turn = Turn::Right;
        let area = (a + c) * (b + d) - a * d;
        for _ in 0..6 {
            let laid = from_walls(&walls, Some(inches(0.0))).unwrap();
            assert!((laid.outline.region().area() - area).abs() < 1e-10 * area);
            for wall in &walls {
                let name = wall.name.as_deref().unwrap();
                assert_near(laid.outline.edge(name).unwrap()[0].length(), wall.length, 1e-12);
            }
            walls.rotate_left(1);
        }
    }
}
