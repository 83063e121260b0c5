//! Corners and holes that bound no region.

use super::{corners_ft, names};
use crate::failure::{Code, Failure, Place};
use crate::survey::outline::{Hole, Outline};

fn refused(places: &[[f64; 2]]) -> Box<Failure> {
    let failure = Outline::from_corners(&corners_ft(places), &[]).expect_err("should be refused");
    assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
    failure
}

fn plain() -> Outline {
    let corners = corners_ft(&[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0]]);
    Outline::from_corners(&corners, &names(&["front", "right", "back", "left"])).unwrap()
}

fn hole(name: &str, places: &[[f64; 2]]) -> Hole {
    Hole { name: name.to_owned(), corners: corners_ft(places) }
}

fn refused_with(holes: Vec<Hole>) -> Box<Failure> {
    plain().with_holes(holes).expect_err("should be refused")
}

#[test]
fn an_outline_that_crosses_itself_names_runs_and_place() {
    let failure = refused(&[[0.0, 0.0], [20.0, 32.0], [20.0, 0.0], [0.0, 32.0]]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutlineCrosses, "corners"));
    assert_eq!(failure.written, "`side 1` meets `side 3` at x 10' 0\" (3.0480 m), y 16' 0\" (4.8768 m)");
    assert_eq!(failure.place, Place::Index(2));
}

#[test]
fn too_few_corners_and_no_area() {
    let two = refused(&[[0.0, 0.0], [20.0, 0.0]]);
    assert_eq!((two.code, two.written.as_str()), (Code::OutlineTooFew, "the outline: 2 corners"));
    assert_eq!(refused(&[]).code, Code::OutlineTooFew);
    let line = refused(&[[0.0, 0.0], [20.0, 0.0], [10.0, 0.0]]);
    assert!(matches!(line.code, Code::OutlineTooFew | Code::OutlineCrosses), "{line}");
}

#[test]
fn numbers_that_are_no_places() {
    for bad in [f64::NAN, f64::INFINITY] {
        let failure = refused(&[[0.0, 0.0], [20.0, 0.0], [20.0, bad]]);
        assert_eq!((failure.code, failure.path.as_str()), (Code::NotFinite, "corners[2]"));
        assert_eq!(failure.place, Place::Index(2));
    }
    let far = refused(&[[0.0, 0.0], [20.0, 0.0], [20.0, 1.0e30]]);
    assert_eq!((far.code, far.path.as_str()), (Code::OutOfRange, "corners[2]"));
}

#[test]
fn a_corner_given_twice() {
    let closed = refused(&[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0], [0.0, 0.0]]);
    assert_eq!(closed.code, Code::OutlineCrosses);
    assert_eq!(closed.remedy, "leave the last corner out: the edge closes by itself");
    let twice = refused(&[[0.0, 0.0], [20.0, 0.0], [20.0, 0.0], [0.0, 32.0]]);
    assert_eq!((twice.code, twice.place), (Code::OutlineCrosses, Place::Index(2)));
    assert!(twice.written.starts_with("corners 2 and 3 are both at x 20' 0\" (6.0960 m)"), "{twice}");
}

#[test]
fn holes_must_lie_inside_and_apart() {
    let post = [[4.0, 4.0], [5.0, 4.0], [5.0, 5.0], [4.0, 5.0]];
    let outside = post.map(|[x, y]| [x + 30.0, y]);
    let across = post.map(|[x, y]| [x - 4.5, y]);
    let touching = post.map(|[x, y]| [x - 4.0, y]);
    let shifted = post.map(|[x, y]| [x + 0.5, y + 0.5]);
    let around = [[2.0, 2.0], [8.0, 2.0], [8.0, 8.0], [2.0, 8.0]];
    let failure = refused_with(vec![hole("post", &outside)]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::HoleOutside, "holes[0]"));
    assert_eq!(failure.written, "`post`: its first corner is 14' 0\" (4.2672 m) outside the outline");
    for bad in [across, touching] {
        let failure = refused_with(vec![hole("post", &bad)]);
        assert_eq!(
            (failure.code, failure.path.as_str()),
            (Code::HoleOutside, "holes[0].corners"),
            "{failure}"
        );
        assert!(failure.written.contains("`left`") && failure.written.contains("`post side"), "{failure}");
    }
    let failure = refused_with(vec![hole("post", &post), hole("pit", &shifted)]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::HoleOutside, "holes[1].corners"), "{failure}");
    for (holes, inner) in [
        (vec![hole("post", &post), hole("pit", &around)], 0),
        (vec![hole("pit", &around), hole("post", &post)], 1),
    ] {
        let failure = refused_with(holes);
        assert_eq!((failure.code, failure.path), (Code::HoleOutside, format!("holes[{inner}]")));
        assert_eq!(failure.written, "`post`: it lies inside `pit`");
    }
}

#[test]
fn a_hole_has_a_form_of_its_own() {
    let failure = refused_with(vec![hole("post", &[[4.0, 4.0], [5.0, 4.0]])]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutlineTooFew, "holes[0].corners"));
    assert_eq!(failure.written, "`post`: 2 corners");
    let bow = [[4.0, 4.0], [6.0, 6.0], [6.0, 4.0], [4.0, 6.0]];
    let failure = refused_with(vec![hole("post", &bow)]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutlineCrosses, "holes[0].corners"));
    assert!(failure.written.starts_with("`post side 1` meets `post side 3`"), "{failure}");
    let failure = refused_with(vec![hole("post", &[[4.0, 4.0], [5.0, f64::NAN], [5.0, 5.0]])]);
    assert_eq!((failure.code, failure.path.as_str()), (Code::NotFinite, "holes[0].corners[1]"));
}
