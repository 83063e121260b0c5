//! Figures worked by hand.

use super::support::{assert_near, metres, places, plane, shoelace, survey};
use crate::failure::Code;
use crate::grade::thickness_shapes::{Field, Levels, Side};
use crate::quantity::{Length, Share, Typed};

/// A ramp over 4 m by 2 m: the old slab falls 1 cm a metre from 10 m, the finish stands at 10 m: thickness 0 to 4 cm.
fn ramp() -> Field<Length> {
    let shots = [[0.0, 0.0, 10.0], [4.0, 0.0, 9.96], [4.0, 2.0, 9.96], [0.0, 2.0, 10.0]];
    let survey = survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots);
    Field::thickness(&survey, &plane(10.0, 0.0, 0.0)).expect("a field")
}

#[test]
fn a_ramp_is_cut_square() {
    let areas = ramp().areas(metres(0.01), Side::Thinner).expect("areas");
    // 1 m of 4 m; what is missing to 1 cm is half of 1 cm.
    assert_near(areas.area.base(), 2.0, 1e-12);
    assert_near(areas.volume.base(), 0.01, 1e-12);
    let [part] = areas.parts.as_slice() else { panic!("{areas:?}") };
    assert_near(part.extreme.thickness.base(), 0.0, 1e-12);
    assert_eq!((part.extreme.x.base(), part.extreme.y.base(), part.extreme.shot), (0.0, 0.0, Some(0)));
    assert!(places(&part.shape.outer).iter().all(|at| at.x < 1.0 + 1e-12));
    let thicker = ramp().areas(metres(0.01), Side::Thicker).expect("areas");
    assert_near(thicker.area.base(), 6.0, 1e-12);
    assert_near(thicker.volume.base(), 6.0 * 0.015, 1e-12);
    assert_near(thicker.parts[0].extreme.thickness.base(), 0.04, 1e-12);
}

#[test]
fn a_ramp_has_straight_contours_and_even_bands() {
    let field = ramp();
    let every = Levels::Every { interval: metres(0.01), from: metres(0.0) };
    let lines = field.contours(&every).expect("contours");
    let levels: Vec<f64> = lines.iter().map(|line| line.level.base()).collect();
    // At nothing and at 4 cm the ramp only starts and ends.
    assert_eq!(levels.len(), 3, "{levels:?}");
    for (line, x) in lines.iter().zip([1.0, 2.0, 3.0]) {
        assert!(!line.closed);
        assert_near(line.length.base(), 2.0, 1e-11);
        assert!(places(&line.places).iter().all(|at| (at.x - x).abs() < 1e-11));
        // Thin is on the left of the line.
        assert!(line.places[0].y < line.places[line.places.len() - 1].y);
    }
    let bands = field.bands(&every).expect("bands");
    let areas: Vec<f64> = bands.iter().map(|band| band.area.base()).collect();
    assert_eq!(areas.len(), 5, "{areas:?}");
    for (band, volume) in bands.iter().take(4).zip([0.005, 0.015, 0.025, 0.035]) {
        assert_near(band.area.base(), 2.0, 1e-12);
        assert_near(band.share.base(), 0.25, 1e-12);
        assert_near(band.volume.base(), 2.0 * volume, 1e-12);
    }
    let half = field.quantiles(&[Share::from_base(0.5), Share::from_base(0.25)]).expect("quantiles");
    assert_near(half[0].thickness.base(), 0.02, 1e-14);
    assert_near(half[1].thickness.base(), 0.01, 1e-14);
}

/// A pyramid 2 m square and 10 cm high on a level floor at the datum: a square ring at half its height.
#[test]
fn a_pyramid_has_a_closed_contour_and_a_part_with_a_hole() {
    let shots = [[1.0, 1.0, 0.1], [0.0, 0.0, 0.0], [2.0, 0.0, 0.0], [2.0, 2.0, 0.0], [0.0, 2.0, 0.0]];
    let survey = survey(&[[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]], &[], &shots);
    let field = Field::thickness(&survey, &plane(0.2, 0.0, 0.0)).expect("a field");
    let lines = field.contours(&Levels::Listed(vec![metres(0.15)])).expect("contours");
    let [line] = lines.as_slice() else { panic!("{lines:?}") };
    assert!(line.closed);
    assert_near(line.length.base(), 4.0, 1e-12);
    assert_near(line.places[0].x.base(), 0.5, 1e-12);
    assert_near(line.places[0].y.base(), 0.5, 1e-12);
    let thicker = field.areas(metres(0.15), Side::Thicker).expect("areas");
    let [part] = thicker.parts.as_slice() else { panic!("{thicker:?}") };
    assert_eq!(part.shape.holes.len(), 1);
    assert_near(part.area.base(), 3.0, 1e-12);
    assert_near(shoelace(&part.shape), 3.0, 1e-12);
    // Over the whole 20 cm less a pyramid of 10/3 cm; less 15 cm; and what lacks over the tip, a pyramid of 5 cm on 1 m2, added.
    assert_near(thicker.volume.base(), 4.0 * (0.2 - 0.1 / 3.0) - 0.6 + 0.05 / 3.0, 1e-12);
    let thinner = field.areas(metres(0.15), Side::Thinner).expect("areas");
    assert_near(thinner.volume.base(), 0.05 / 3.0, 1e-12);
    assert_eq!(thinner.parts[0].extreme.shot, Some(0));
}

#[test]
fn what_lies_at_the_depth_is_not_thinner() {
    // Level at 7.62 cm, in heights whose difference is not 7.62 cm to the last digit.
    let shots = [[0.0, 0.0, 30.1], [4.0, 0.0, 30.1], [4.0, 2.0, 30.1], [0.0, 2.0, 30.1]];
    let flat = survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[], &shots);
    for height in [30.1 + 0.0762, 30.1762, 30.176199999999998] {
        let finish = plane(height, 0.0, 0.0);
        let field = Field::thickness(&flat, &finish).expect("a field");
        assert_eq!(field.areas(metres(0.0762), Side::Thinner).expect("areas").parts, []);
        assert_near(field.areas(metres(0.0762), Side::Thicker).expect("areas").area.base(), 8.0, 1e-12);
        let exact = crate::grade::thickness::Thickness::of(&flat, &finish, Some(metres(0.0762)))
            .expect("a thickness");
        assert_eq!(exact.thinner.expect("an area").base(), 0.0);
        assert!(field.contours(&Levels::Listed(vec![metres(0.0762)])).expect("contours").is_empty());
        let every = Levels::Every { interval: metres(0.00635), from: metres(0.0) };
        let bins = field.histogram(&every).expect("a histogram").bins;
        let filled: Vec<_> = bins.iter().filter(|bin| bin.area.base() > 0.0).collect();
        assert_eq!(filled.len(), 1);
        assert_near(filled[0].from.expect("an edge").base(), 0.0762, 1e-15);
        let half = field.quantiles(&[Share::from_base(0.5)]).expect("quantiles");
        assert_near(half[0].thickness.base(), 0.0762, 1e-13);
    }
}

/// Four hollows around a middle at the depth: the thick parts touch in a corner only, and are parts of their own.
#[test]
fn parts_that_touch_in_a_corner_are_apart() {
    let mut shots = Vec::new();
    for (j, row) in [[0.0, 0.02, 0.04], [0.02, 0.02, 0.02], [0.04, 0.02, 0.0]].into_iter().enumerate() {
        for (i, low) in row.into_iter().enumerate() {
            // Moved a little, so that no four shots are on a circle.
            shots.push([i as f64 + 1e-3 * (j as f64).powi(2), j as f64 + 2e-3 * (i as f64).powi(2), -low]);
        }
    }
    let survey = survey(&[[0.0, 0.0], [2.0, 0.0], [2.0, 2.0], [0.0, 2.0]], &[], &shots);
    let field = Field::thickness(&survey, &plane(0.0, 0.0, 0.0)).expect("a field");
    for side in [Side::Thinner, Side::Thicker] {
        let areas = field.areas(metres(0.02), side).expect("areas");
        for part in &areas.parts {
            let ring = places(&part.shape.outer);
            let twice = ring.iter().enumerate().any(|(n, at)| ring[..n].contains(at));
            assert!(!twice, "{side:?}: {ring:?}");
            assert_near(shoelace(&part.shape), part.area.base(), 1e-12);
        }
    }
    let thinner = field.areas(metres(0.02), Side::Thinner).expect("areas");
    assert_eq!(thinner.parts.len(), 2, "{thinner:?}");
}

#[test]
fn levels_that_do_not_rise_are_refused() {
    let field = ramp();
    let listed = |levels: &[f64]| Levels::Listed(levels.iter().map(|&level| metres(level)).collect());
    let every = |interval: f64| Levels::Every { interval: metres(interval), from: metres(0.0) };
    for (levels, code, path) in [
        (listed(&[]), Code::EmptyList, "levels"),
        (listed(&[0.02, 0.01]), Code::LevelsUnsorted, "levels"),
        (listed(&[0.02, 0.02]), Code::LevelsUnsorted, "levels"),
        (listed(&[0.02, f64::NAN]), Code::NotFinite, "levels"),
        (listed(&[0.02, 1e9]), Code::OutOfRange, "levels"),
        (every(0.0), Code::OutOfRange, "interval"),
        (every(-0.01), Code::OutOfRange, "interval"),
        (every(f64::NAN), Code::NotFinite, "interval"),
        (every(1e-7), Code::TooManyLevels, "interval"),
    ] {
        for failure in [
            field.contours(&levels).expect_err("refused"),
            field.bands(&levels).expect_err("refused"),
            field.histogram(&levels).expect_err("refused"),
        ] {
            assert_eq!((failure.code, failure.path.as_str()), (code, path), "{levels:?}: {failure}");
            assert!(!failure.written.is_empty() && !failure.remedy.is_empty());
        }
    }
    let failure = field.contours(&every(1e-6)).expect_err("refused");
    assert!(failure.written.contains("40002 levels"), "{failure}");
    let failure = field.areas(metres(f64::NAN), Side::Thinner).expect_err("refused");
    assert_eq!((failure.code, failure.path.as_str()), (Code::NotFinite, "depth"));
    let failure = field.quantiles(&[Share::from_base(1.5)]).expect_err("refused");
    assert_eq!((failure.code, failure.path.as_str()), (Code::OutOfRange, "shares"));
    assert_eq!(field.quantiles(&[]).expect_err("refused").code, Code::EmptyList);
}
