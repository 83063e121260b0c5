use super::*;
use crate::geometry::Point;
use crate::grade::thickness_shapes::tests::support::{assert_near, metres, plane, random, survey};

fn zone(name: &str, corners: &[[f64; 2]]) -> Zone {
    let corners = corners.iter().map(|&[x, y]| Point::new(x, y)).collect();
    Zone { name: name.to_owned(), region: Region::new(corners, Vec::new()).expect("a region") }
}

/// 4 m by 2 m, thickness growing from nothing at the left to 4 cm at the right.
fn ramp() -> (Survey, Finish) {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.0, 2.0, 10.0]];
    (survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots), plane(10.0, 0.0, 0.0))
}

#[test]
fn zones_have_their_own_figures_and_the_rest_is_what_is_left() {
    let (survey, finish) = ramp();
    let zones = [
        zone("left", &[[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]]),
        zone("middle", &[[1.0, 0.5], [3.0, 0.5], [3.0, 1.5], [1.0, 1.5]]),
        zone("corner", &[[3.5, 1.5], [5.0, 1.5], [5.0, 3.0], [3.5, 3.0]]),
    ];
    let found = ThicknessZones::of(&survey, &finish, &zones, Some(metres(0.02))).expect("zones");
    let [left, middle, corner] = found.zones.as_slice() else { panic!("{found:?}") };
    assert_near(left.thickness.net.base(), 4.0 * 0.01, 1e-12);
    assert_near(left.thickness.thinner.expect("an area").base(), 4.0, 1e-12);
    assert_near(middle.thickness.net.base(), 2.0 * 0.02, 1e-12);
    assert_near(middle.thickness.least.thickness.base(), 0.01, 1e-12);
    assert_near(middle.thickness.thinner.expect("an area").base(), 1.0, 1e-12);
    assert_near(corner.thickness.area.base(), 0.25, 1e-12);
    assert_near(corner.outside.base(), 2.0, 1e-12);
    assert_eq!((left.outside.base(), middle.outside.base()), (0.0, 0.0));
    // Left of 2 m nothing is left; right of it 4 m2 less 1 m2 of the middle and 0.25 m2 of the corner.
    let rest = found.rest.as_ref().expect("a rest");
    assert_near(rest.area.base(), 2.75, 1e-12);
    assert_near(rest.net.base(), 4.0 * 0.03 - 0.025 - 0.25 * 0.0375, 1e-12);
    assert_near(rest.least.thickness.base(), 0.02, 1e-12);
    assert_near(rest.greatest.thickness.base(), 0.04, 1e-12);
    let notes = found.notes();
    assert_eq!(notes.len(), 1, "{notes:?}");
    assert_eq!(notes[0].code, NoteCode::ZoneClipped);
}

#[test]
fn zones_over_the_whole_leave_no_rest() {
    let (survey, finish) = ramp();
    let zones = [
        zone("a", &[[-1.0, -1.0], [2.5, -1.0], [2.5, 3.0], [-1.0, 3.0]]),
        zone("b", &[[2.0, 0.0], [4.0, 0.0], [4.0, 2.0], [2.0, 2.0]]),
    ];
    assert_eq!(ThicknessZones::of(&survey, &finish, &zones, None).expect("zones").rest, None);
}

#[test]
fn a_zone_and_the_rest_are_the_whole() {
    for seed in 1..=30 {
        let (survey, finish) = random(seed);
        let (low, high) = survey.outline().region().bounds();
        let at = |x: f64, y: f64| [low.x + x * (high.x - low.x), low.y + y * (high.y - low.y)];
        // A notched zone that reaches over the edge.
        let zones = [zone("a", &[at(0.2, -0.1), at(0.7, -0.1), at(0.7, 0.6), at(0.45, 0.3), at(0.2, 0.8)])];
        let whole = Thickness::of(&survey, &finish, Some(metres(0.05))).expect("a thickness");
        let found = ThicknessZones::of(&survey, &finish, &zones, Some(metres(0.05))).expect("zones");
        let (inside, rest) = (&found.zones[0].thickness, found.rest.as_ref().expect("a rest"));
        let all = whole.area.base();
        assert_near(inside.area.base() + rest.area.base(), all, 1e-11 * all);
        assert_near(inside.net.base() + rest.net.base(), whole.net.base(), 1e-12 * all);
        assert_near(inside.high.base() + rest.high.base(), whole.high.base(), 1e-12 * all);
        let thinner = |of: &Thickness| of.thinner.expect("an area").base();
        assert_near(thinner(inside) + thinner(rest), thinner(&whole), 1e-10 * all);
        let least = inside.least.thickness.base().min(rest.least.thickness.base());
        assert_near(least, whole.least.thickness.base(), 1e-12);
    }
}

#[test]
fn zones_that_cannot_be_are_refused() {
    let (survey, finish) = ramp();
    let square = [[0.0, 0.0], [1.0, 0.0], [1.0, 1.0], [0.0, 1.0]];
    let far = [[9.0, 9.0], [10.0, 9.0], [10.0, 10.0], [9.0, 10.0]];
    for (zones, depth, code, path) in [
        (vec![], 0.01, Code::EmptyList, "zones"),
        (vec![zone("bay", &square), zone(" Bay", &square)], 0.01, Code::KeyRepeated, "zones"),
        (vec![zone(" ", &square)], 0.01, Code::KeyMissing, "zones"),
        (vec![zone("bay", &square), zone("far", &far)], 0.01, Code::RegionOutside, "zones"),
        (vec![zone("bay", &square)], f64::NAN, Code::NotFinite, "thinner_than"),
    ] {
        let failure = ThicknessZones::of(&survey, &finish, &zones, Some(metres(depth))).expect_err("refused");
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
        assert!(!failure.written.is_empty() && !failure.remedy.is_empty(), "{failure}");
    }
}
