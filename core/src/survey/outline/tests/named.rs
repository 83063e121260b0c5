//! Runs, edges and holes by their names.

use super::{assert_corners, assert_near, corners_ft, ft, inches, names, tape};
use crate::failure::Code;
use crate::geometry::{RingId, RunId};
use crate::quantity::Typed;
use crate::survey::outline::{Corner, Hole, Outline, Run};

/// An invented patio behind a house whose bay window bites into it: 438 ft2.
const PATIO: [[f64; 2]; 8] =
    [[0.0, 0.0], [10.0, 0.0], [11.0, 2.0], [15.0, 2.0], [16.0, 0.0], [28.0, 0.0], [28.0, 16.0], [0.0, 16.0]];

const PATIO_NAMES: [&str; 8] = ["House", "house", "HOUSE", "house ", "house", "right", "lawn", "left"];

fn patio() -> Outline {
    Outline::from_corners(&corners_ft(&PATIO), &names(&PATIO_NAMES)).unwrap()
}

fn square_hole(name: &str, x: f64, y: f64, side: f64) -> Hole {
    let corners = [[x, y], [x + side, y], [x + side, y + side], [x, y + side]];
    Hole { name: name.to_owned(), corners: corners_ft(&corners) }
}

fn indices(runs: &[&Run]) -> Vec<usize> {
    runs.iter().map(|run| run.id().index).collect()
}

#[test]
fn neighbouring_runs_of_one_name_are_one_edge() {
    let patio = patio();
    assert!((patio.region().area() / 0.3048_f64.powi(2) - 438.0).abs() < 1e-9);
    assert_eq!(indices(&patio.edge(" house").unwrap()), [0, 1, 2, 3, 4]);
    assert_eq!(indices(&patio.edge("LAWN").unwrap()), [6]);
    assert_eq!(patio.edge_names(), ["House", "right", "lawn", "left"]);
    assert_corners(patio.corners(), &PATIO);
}

/// The list may start anywhere along the edge; the edge still starts where it starts.
#[test]
fn an_edge_may_pass_the_first_corner() {
    for turn in 0..8 {
        let (mut corners, mut run_names) = (PATIO, PATIO_NAMES);
        corners.rotate_left(turn);
        run_names.rotate_left(turn);
        let outline = Outline::from_corners(&corners_ft(&corners), &names(&run_names)).unwrap();
        let house = outline.edge("house").unwrap();
        assert_eq!(house.len(), 5);
        assert_corners(&[house[0].from(), house[4].to()], &[[0.0, 0.0], [28.0, 0.0]]);
        assert!(house.windows(2).all(|pair| pair[0].to() == pair[1].from()));
    }
}

#[test]
fn either_way_round_keeps_names_and_area() {
    let mut corners = PATIO;
    corners.reverse();
    // Going back, the run from the last corner is the lawn, and so on.
    let back = ["lawn", "right", "house", "house", "house", "house", "house", "left"];
    let outline = Outline::from_corners(&corners_ft(&corners), &names(&back)).unwrap();
    assert!((outline.region().area() - patio().region().area()).abs() < 1e-12);
    assert_corners(&[outline.edge("lawn").unwrap()[0].from()], &[[0.0, 16.0]]);
    assert_eq!(outline.edge("house").unwrap().len(), 5);
}

#[test]
fn the_whole_ring_may_be_one_edge() {
    let outline = Outline::from_corners(&corners_ft(&PATIO), &names(&["edge"; 8])).unwrap();
    assert_eq!(indices(&outline.edge("edge").unwrap()), [0, 1, 2, 3, 4, 5, 6, 7]);
    assert_eq!(outline.edge_names(), ["edge"]);
}

#[test]
fn without_names_the_sides_are_counted() {
    let outline = Outline::from_corners(&corners_ft(&PATIO), &[]).unwrap();
    assert_eq!(outline.edge_names()[7], "side 8");
    assert_eq!(outline.edge("Side 2").unwrap()[0].id(), RunId { ring: RingId::Outer, index: 1 });
    let some = [None, None, None, None, None, Some("gate".to_owned()), None, None];
    let outline = Outline::from_corners(&corners_ft(&PATIO), &some).unwrap();
    assert_eq!(outline.run(RunId { ring: RingId::Outer, index: 5 }).unwrap().name(), "gate");
    assert_eq!(outline.runs()[6].name(), "side 7");
}

#[test]
fn a_place_along_a_run_is_measured_from_its_first_corner() {
    let patio = patio();
    let right = patio.edge("right").unwrap()[0];
    assert_near(right.length(), tape("16'"), 1e-12);
    let place = right.at(tape("4' 6\"")).unwrap();
    assert_near(place.x, ft(28.0), 1e-12);
    assert_near(place.y, ft(4.5), 1e-12);
    assert_eq!(right.at(ft(0.0)).unwrap(), right.from());
    assert_eq!(right.at(right.length()).unwrap(), right.to());
    for (along, code) in [(16.1, Code::OutOfRange), (-0.1, Code::OutOfRange), (f64::NAN, Code::NotFinite)] {
        let failure = right.at(ft(along)).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (code, "along"));
        assert!(failure.remedy.contains("`right`"));
    }
}

#[test]
fn an_unknown_edge_names_the_nearest() {
    let failure = patio().edge("lwan").unwrap_err();
    assert_eq!((failure.code, failure.written.as_str()), (Code::EdgeUnknown, "\"lwan\""));
    assert_eq!(failure.allowed, "House, right, lawn, left");
    assert_eq!(failure.remedy, "did you mean `lawn`?");
    assert_eq!(patio().edge("pergola").unwrap_err().remedy, "use a name of the outline, or name the run so");
}

#[test]
fn a_hole_is_an_edge_and_so_is_each_side_of_it() {
    let holes = vec![square_hole("Column", 20.0, 6.0, 1.0), square_hole("pit", 4.0, 6.0, 2.0)];
    let outline = patio().with_holes(holes).unwrap();
    assert!((outline.region().area() / 0.3048_f64.powi(2) - 433.0).abs() < 1e-9);
    let column = outline.edge("column").unwrap();
    assert_eq!(indices(&column), [0, 1, 2, 3]);
    assert!(column.iter().all(|run| run.id().ring == RingId::Hole(0)));
    let side = outline.edge("PIT side 3").unwrap();
    assert_eq!(side[0].id(), RunId { ring: RingId::Hole(1), index: 2 });
    assert_near(side[0].length(), ft(2.0), 1e-12);
    assert_eq!(indices(&outline.edge("house").unwrap()), [0, 1, 2, 3, 4]);
    assert_eq!((outline.holes().len(), outline.runs().len()), (2, 16));
    // Holes are replaced, not added.
    assert_eq!(outline.with_holes(Vec::new()).unwrap(), patio());
}

#[test]
fn names_that_stand_for_two_things_are_refused() {
    let plain = corners_ft(&[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0]]);
    let cases = [
        (names(&["front", "right", "Front ", "left"]), Code::KeyRepeated, "names[2]"),
        (names(&["front", "right", " ", "left"]), Code::KeyMissing, "names[2]"),
        (names(&["front", "right"]), Code::LengthMismatch, "names"),
        // Counted, the second run is `side 2` as well.
        (vec![Some("side 2".to_owned()), None, None, None], Code::KeyRepeated, "names[1]"),
        (vec![None, None, None, Some("side 1".to_owned())], Code::KeyRepeated, "names[3]"),
    ];
    for (run_names, code, path) in cases {
        let failure = Outline::from_corners(&plain, &run_names).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
        assert!(!failure.written.is_empty() && !failure.allowed.is_empty() && !failure.remedy.is_empty());
    }
    let outline = Outline::from_corners(&plain, &names(&["front", "right", "pit side 2", "left"])).unwrap();
    let holes = [
        (vec![square_hole("Front", 4.0, 4.0, 1.0)], Code::KeyRepeated, "holes[0].name"),
        (vec![square_hole("", 4.0, 4.0, 1.0)], Code::KeyMissing, "holes[0].name"),
        (vec![square_hole("pit", 4.0, 4.0, 1.0)], Code::KeyRepeated, "holes[0].name"),
        (
            vec![square_hole("post", 4.0, 4.0, 1.0), square_hole("post ", 8.0, 4.0, 1.0)],
            Code::KeyRepeated,
            "holes[1].name",
        ),
    ];
    for (holes, code, path) in holes {
        let failure = outline.clone().with_holes(holes).unwrap_err();
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
    }
}

/// Turning and moving the whole outline changes no length, no area and no name.
#[test]
fn turning_the_outline_changes_nothing_in_it() {
    let patio = patio();
    for angle in [0.3_f64, 1.0, 2.5, 4.0] {
        let (sin, cos) = angle.sin_cos();
        let turned: Vec<Corner> = patio
            .corners()
            .iter()
            .map(|c| Corner::new(c.x * cos - c.y * sin + ft(100.0), c.x * sin + c.y * cos - inches(7.0)))
            .collect();
        let outline = Outline::from_corners(&turned, &names(&PATIO_NAMES)).unwrap();
        assert!((outline.region().area() - patio.region().area()).abs() < 1e-10);
        for (one, other) in outline.runs().iter().zip(patio.runs()) {
            assert_near(one.length(), other.length(), 1e-12);
            assert_eq!(one.name(), other.name());
        }
        assert!(outline.region().perimeter().is_finite() && patio.runs()[0].length().base() > 3.0);
    }
}
