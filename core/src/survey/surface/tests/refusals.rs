use super::support::*;
use crate::geometry::{RingId, RunId};

fn corners_of(width: f64, depth: f64) -> Vec<Shot> {
    shots(&[(0.0, 0.0, 1.0), (width, 0.0, 1.0), (width, depth, 1.0), (0.0, depth, 1.0)])
}

#[test]
fn numbers_that_are_none_are_refused_by_shot() {
    let region = rectangle(4.0, 3.0);
    for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e9, -2e8] {
        for field in 0..3 {
            let mut places = corners_of(4.0, 3.0);
            let shot = &mut places[2];
            *[&mut shot.x, &mut shot.y, &mut shot.z][field] = bad;
            let refused = refusal(&places, &region);
            assert!(matches!(refused, SurfaceError::NotFinite { shot: 2, .. }), "{refused:?}");
        }
    }
    let heights = [Some(0.0), Some(f64::NAN), Some(0.0), Some(0.0)];
    let refused = Surface::from_rows(&[0.0, 4.0], &[0.0, 3.0], &heights, &region, &Rules::DEFAULT);
    assert!(matches!(refused, Err(SurfaceError::NotFinite { shot: 1, .. })));
    let refused =
        Surface::from_rows(&[0.0, f64::NAN], &[0.0, 3.0], &[Some(0.0); 4], &region, &Rules::DEFAULT);
    assert!(matches!(refused, Err(SurfaceError::NotFinite { shot: 1, .. })));
}

#[test]
fn rules_that_are_none_are_refused_by_name() {
    let rules = Rules { same_place: -1.0, ..Rules::DEFAULT };
    let refused = Surface::from_shots(&corners_of(4.0, 3.0), &rectangle(4.0, 3.0), &rules);
    assert_eq!(refused.err(), Some(SurfaceError::Rule { name: "same_place", value: -1.0 }));
    let rules = Rules { spanning: f64::NAN, ..Rules::DEFAULT };
    assert!(Surface::from_shots(&corners_of(4.0, 3.0), &rectangle(4.0, 3.0), &rules).is_err());
}

#[test]
fn a_table_of_another_size_is_refused() {
    let region = rectangle(4.0, 3.0);
    let refused = Surface::from_rows(&[0.0, 4.0], &[0.0, 3.0], &[Some(0.0); 5], &region, &Rules::DEFAULT);
    assert_eq!(refused.err(), Some(SurfaceError::TableSize { rows: 2, columns: 2, heights: 5 }));
    let refused = Surface::from_rows(&[], &[], &[], &region, &Rules::DEFAULT);
    assert_eq!(refused.err(), Some(SurfaceError::TooFewPlaces { shots: 0, places: 0 }));
}

#[test]
fn too_few_places_are_refused_with_their_number() {
    let region = rectangle(4.0, 3.0);
    assert_eq!(refusal(&[], &region), SurfaceError::TooFewPlaces { shots: 0, places: 0 });
    let twice = shots(&[(1.0, 1.0, 1.0), (3.0, 2.0, 1.0), (1.0, 1.0, 1.001)]);
    assert_eq!(refusal(&twice, &region), SurfaceError::TooFewPlaces { shots: 3, places: 2 });
}

#[test]
fn places_on_one_line_are_refused_with_their_ends() {
    let region = rectangle(4.0, 3.0);
    let line = shots(&[(2.0, 1.5, 1.0), (0.0, 0.0, 1.0), (4.0, 3.0, 1.0), (1.0, 0.75, 1.0)]);
    let refused = refusal(&line, &region);
    let SurfaceError::Collinear { places: 4, from, to, width } = refused else { panic!("{refused:?}") };
    assert!([from, to] == [1, 2] || [from, to] == [2, 1]);
    assert!(width < 1e-12);
    // Half an inch off the line is still on it, twice that is not.
    let bent = |off: f64| shots(&[(0.0, 1.0, 1.0), (4.0, 1.0, 1.0), (2.0, 1.0 + off, 1.0)]);
    assert!(matches!(refusal(&bent(0.4 * INCH), &region), SurfaceError::Collinear { .. }));
    assert!(!matches!(refusal(&bent(2.0 * INCH), &region), SurfaceError::Collinear { .. }));
}

#[test]
fn a_shot_outside_is_used_noted_or_refused_by_its_distance() {
    let region = rectangle(4.0, 3.0);
    let with = |shot: Shot| [corners_of(4.0, 3.0), vec![shot]].concat();
    let run = RunId { ring: RingId::Outer, index: 1 };
    let on_run = surface(&with(Shot::new(4.0 + 0.5 * INCH, 1.0, 1.0)), &region);
    assert!(on_run.notes().is_empty());
    assert!(on_run.whole().shots().any(|(shot, ..)| shot == 4), "within half an inch it lies on the run");
    let noted = surface(&with(Shot::new(4.0 + 6.0 * INCH, 1.0, 1.0)), &region);
    let [Note::OutsideUsed { shot: 4, distance, run: beside }] = noted.notes() else {
        panic!("{:?}", noted.notes())
    };
    assert_close(*distance, 6.0 * INCH, 1e-12);
    assert_eq!(*beside, run);
    let refused = refusal(&with(Shot::new(4.0 + 6.1 * INCH, 1.0, 1.0)), &region);
    let SurfaceError::Outside { shot: 4, distance, run: beside, .. } = refused else { panic!("{refused:?}") };
    assert_close(distance, 6.1 * INCH, 1e-12);
    assert_eq!(beside, run);
    let marked = Shot { outside_allowed: true, ..Shot::new(6.0, 1.0, 0.9) };
    let approach = surface(&with(marked), &region);
    assert!(approach.notes().is_empty());
    assert_tiled(&approach);
}

#[test]
fn a_region_far_beyond_the_shots_is_refused_unless_allowed() {
    let region = rectangle(10.0, 3.0);
    let places = shots(&[(0.0, 0.0, 1.0), (8.5, 0.0, 1.0), (8.5, 3.0, 1.0), (0.0, 3.0, 1.0)]);
    let refused = refusal(&places, &region);
    let SurfaceError::TooFarBeyond { at, distance, nearest_shot, .. } = refused else {
        panic!("{refused:?}")
    };
    assert_eq!(at.x, 10.0);
    assert_close(distance, 1.5, 1e-12);
    assert_eq!(nearest_shot, if at.y == 0.0 { 1 } else { 2 });
    let rules = Rules { beyond_allowed: true, ..Rules::DEFAULT };
    let surface = Surface::from_shots(&places, &region, &rules).expect("allowed by name");
    let [Note::Beyond { share, area, farthest, warning: false }] = surface.notes() else { panic!() };
    assert_close(*share, 0.15, 1e-12);
    assert_close(*area, 4.5, 1e-12);
    assert_close(*farthest, 1.5, 1e-12);
}

#[test]
fn much_ground_beyond_the_shots_is_noted_and_then_warned_of() {
    let inset = |by: f64| {
        let (low, width, depth) = (by, 6.0 - by, 5.0 - by);
        let places = shots(&[(low, low, 1.0), (width, low, 1.0), (width, depth, 1.0), (low, depth, 1.0)]);
        surface(&places, &rectangle(6.0, 5.0)).notes().to_vec()
    };
    assert!(inset(0.1).is_empty(), "7 % is nothing to note");
    assert!(matches!(inset(0.3)[..], [Note::Beyond { warning: false, .. }]));
    assert!(matches!(inset(0.6)[..], [Note::Beyond { warning: true, .. }]));
}

#[test]
fn a_part_elsewhere_is_refused() {
    let surface = surface(&corners_of(4.0, 3.0), &rectangle(4.0, 3.0));
    let elsewhere = Region::rectangle(Point::new(5.0, 0.0), Point::new(6.0, 1.0)).expect("a rectangle");
    assert_eq!(surface.within(&elsewhere).err(), Some(SurfaceError::Apart));
}
