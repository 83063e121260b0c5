use super::*;
use crate::failure::Code;
use crate::geometry::Point;
use crate::geometry::random::Random;
use crate::grade::finish::Finish;
use crate::grade::thickness_shapes::tests::support::{assert_near, metres, plane, random, survey};
use crate::note::NoteCode;
use crate::quantity::Typed;
use crate::survey::Survey;
use crate::survey::outline::Corner;
use crate::survey::surface::Locator;

fn height(finish: &Finish, at: Point) -> f64 {
    finish.plane().expect("one plane").height_at(at)
}

fn line(places: &[[f64; 2]]) -> Vec<Corner> {
    places.iter().map(|&[x, y]| Corner::new(metres(x), metres(y))).collect()
}

/// 4 m by 2 m, 1 m square hole in the middle of the right half, thickness growing from -1 cm to 3 cm.
fn ramp() -> (Survey, Finish) {
    let shots = [[0.0, 0.0, 10.01], [4.0, 0.0, 9.97], [4.0, 2.0, 9.97], [0.0, 2.0, 10.01]];
    let hole = vec![[2.5, 0.5], [3.5, 0.5], [3.5, 1.5], [2.5, 1.5]];
    (survey(&[[0.0, 0.0], [4.0, 0.0], [4.0, 2.0], [0.0, 2.0]], &[hole], &shots), plane(10.0, 0.0, 0.0))
}

#[test]
fn a_section_over_a_hole_has_a_gap() {
    let (survey, finish) = ramp();
    let section = Section::along(&survey, &finish, &line(&[[-1.0, 1.0], [5.0, 1.0]])).expect("a section");
    assert_near(section.length.base(), 6.0, 1e-12);
    assert_near(section.covered.base(), 3.0, 1e-11);
    let gaps: Vec<[f64; 2]> = section.gaps.iter().map(|gap| [gap.from.base(), gap.to.base()]).collect();
    let [before, hole, after] = gaps.as_slice() else { panic!("{gaps:?}") };
    for (gap, expected) in [(before, [0.0, 1.0]), (hole, [3.5, 4.5]), (after, [5.0, 6.0])] {
        assert_near(gap[0], expected[0], 1e-11);
        assert_near(gap[1], expected[1], 1e-11);
    }
    // -1 cm to nothing over the first metre; nothing to 1.5 cm over 1.5 m; 2.5 cm to 3 cm over half a metre.
    assert_near(section.high.base(), 0.005, 1e-12);
    assert_near(section.fill.base(), 0.5 * 1.5 * 0.015 + 0.5 * 0.0275, 1e-12);
    assert_near(section.net.base(), section.fill.base() - section.high.base(), 1e-15);
    assert_near(section.mean.base(), section.net.base() / 3.0, 1e-12);
    assert_near(section.least.thickness.base(), -0.01, 1e-12);
    assert_near(section.least.distance.base(), 1.0, 1e-11);
    assert_near(section.greatest.thickness.base(), 0.03, 1e-12);
    assert_near(section.greatest.x.base(), 4.0, 1e-11);
    assert_eq!(section.stations.iter().map(|station| station.run).max(), Some(2));
    let notes: Vec<NoteCode> = section.notes().iter().map(|note| note.code).collect();
    assert_eq!(notes, [NoteCode::LineLeavesWork, NoteCode::HighSpots]);
    let samples = section.sampled(metres(0.5)).expect("samples");
    assert_eq!(samples.len(), 13);
    for (number, sample) in samples.iter().enumerate() {
        let x = -1.0 + 0.5 * number as f64;
        assert_near(sample.x.base(), x, 1e-12);
        let inside = (0.0..=4.0).contains(&x) && !(x > 2.5 && x < 3.5);
        assert_eq!(sample.thickness.is_some(), inside, "{sample:?}");
        if let Some(thickness) = sample.thickness {
            assert_near(thickness.base(), -0.01 + 0.01 * x, 1e-12);
        }
    }
}

#[test]
fn a_bent_line_goes_on_through_its_corners() {
    let (survey, finish) = ramp();
    let there = line(&[[0.5, 0.25], [2.0, 0.25], [2.0, 0.25], [2.0, 1.75], [1.0, 1.75]]);
    let section = Section::along(&survey, &finish, &there).expect("a section");
    assert_near(section.length.base(), 4.0, 1e-12);
    assert_near(section.covered.base(), 4.0, 1e-11);
    assert!(section.gaps.is_empty());
    assert!(section.stations.iter().all(|station| station.run == 1));
    // -0.5 to 1 cm over 1.5 m, 1 cm over 1.5 m, 1 cm to nothing over 1 m.
    assert_near(section.net.base(), 0.0025 * 1.5 + 0.01 * 1.5 + 0.005, 1e-12);
    let back: Vec<Corner> = there.iter().rev().copied().collect();
    let back = Section::along(&survey, &finish, &back).expect("a section");
    assert_near(back.net.base(), section.net.base(), 1e-12);
    assert_near(back.fill.base(), section.fill.base(), 1e-12);
    assert_eq!(back.stations.len(), section.stations.len());
}

#[test]
fn stations_are_where_the_surfaces_bend_and_samples_lie_on_them() {
    for seed in 1..=40 {
        let (survey, finish) = random(seed);
        let mut random = Random::new(seed + 1000);
        let (low, high) = survey.outline().region().bounds();
        let mut place =
            || [random.between(low.x - 1.0, high.x + 1.0), random.between(low.y - 1.0, high.y + 1.0)];
        let there = line(&[place(), place(), place()]);
        let Ok(section) = Section::along(&survey, &finish, &there) else { continue };
        let locator = Locator::new(survey.surface().whole());
        for station in &section.stations {
            let at = Point::new(station.x.base(), station.y.base());
            assert_near(station.finish.base(), height(&finish, at), 1e-11);
            if let Some(spot) = locator.at(at) {
                assert_near(station.old_slab.base(), spot.height, 1e-8);
            }
        }
        let mut sampled = 0.0;
        let samples = section.sampled(metres(0.01)).expect("samples");
        for sample in &samples {
            let at = Point::new(sample.x.base(), sample.y.base());
            let spot = locator.at(at);
            if let (Some(spot), Some(old)) = (spot, sample.old_slab) {
                assert_near(old.base(), spot.height, 1e-8);
            }
            sampled += 0.01 * sample.thickness.map_or(0.0, Typed::base);
        }
        // By rectangles of 1 cm: thickness changes by less than 0.2 a metre, and half a step is lost at each end of a run.
        assert_near(sampled, section.net.base(), 0.01 * 0.3 * 3.0);
        let gaps: f64 = section.gaps.iter().map(|gap| (gap.to - gap.from).base()).sum();
        assert_near(section.covered.base() + gaps, section.length.base(), 1e-6);
    }
}

#[test]
fn lines_that_cannot_be_are_refused() {
    let (survey, finish) = ramp();
    for (places, code, path) in [
        (line(&[]), Code::LineTooShort, "line"),
        (line(&[[1.0, 1.0]]), Code::LineTooShort, "line"),
        (line(&[[1.0, 1.0], [1.0, 1.0]]), Code::LineTooShort, "line"),
        (line(&[[9.0, 1.0], [9.0, 5.0]]), Code::LineOutside, "line"),
        (line(&[[2.6, 1.0], [3.4, 1.0]]), Code::LineOutside, "line"),
        (line(&[[f64::NAN, 1.0], [3.4, 1.0]]), Code::NotFinite, "line.x"),
        (line(&[[1.0, 1.0], [3.4, 1e9]]), Code::OutOfRange, "line.y"),
    ] {
        let failure = Section::along(&survey, &finish, &places).expect_err("refused");
        assert_eq!((failure.code, failure.path.as_str()), (code, path), "{failure}");
        assert!(!failure.written.is_empty() && !failure.remedy.is_empty(), "{failure}");
    }
    let section = Section::along(&survey, &finish, &line(&[[0.0, 1.0], [50.0, 1.0]])).expect("a section");
    for (spacing, code) in [
        (0.0, Code::OutOfRange),
        (-1.0, Code::OutOfRange),
        (f64::NAN, Code::NotFinite),
        (0.001, Code::TooManyStations),
    ] {
        let failure = section.sampled(metres(spacing)).expect_err("refused");
        assert_eq!((failure.code, failure.path.as_str()), (code, "spacing"), "{failure}");
    }
}
