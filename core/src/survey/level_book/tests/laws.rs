//! Laws that hold whatever the readings.

use super::{assert_near, at_m, m};
use crate::quantity::Typed;
use crate::survey::level_book::{Backsight, LevelBook, SetUp, Sight, Tolerances, reduce};
use crate::survey::varied::Varied;

/// A line of `legs` set-ups from and to a benchmark, one shot in each, its readings off by `error` in all.
fn closed_line(legs: &[(f64, f64, f64)], error: f64) -> LevelBook {
    let rise: f64 = legs.iter().map(|(back, _, fore)| back - fore).sum();
    let setups = legs.iter().enumerate().map(|(index, &(back, shot, fore))| {
        let from = if index == 0 { "start".to_owned() } else { format!("TP{index}") };
        let to = if index + 1 == legs.len() { "end".to_owned() } else { format!("TP{}", index + 1) };
        let mut setup = SetUp::on(from, m(back)).to(to, m(fore));
        setup.sights.push(Sight::shot(format!("S{index}"), m(shot)));
        setup
    });
    LevelBook {
        benchmarks: vec![at_m("start", 20.0), at_m("end", 20.0 + rise - error)],
        setups: setups.collect(),
        tolerances: Tolerances { recheck: Some(m(0.01)), closure: Some(m(0.01)) },
    }
}

/// Lines of one to seven set-ups, each off by up to 9 mm.
fn varied_lines() -> impl Iterator<Item = (Vec<(f64, f64, f64)>, f64)> {
    let mut varied = Varied::new(1);
    (0..200).map(move |_| {
        let count = varied.count(1, 8);
        let mut rod = || varied.between(0.1, 4.0);
        let legs = (0..count).map(|_| (rod(), rod(), rod())).collect();
        (legs, varied.between(-0.009, 0.009))
    })
}

/// Whatever the readings: the sums agree with the elevations, nothing is lost, and each sight takes its share.
#[test]
fn laws_of_a_closed_line() {
    for (legs, error) in varied_lines() {
        let book = reduce(&closed_line(&legs, error)).unwrap();
        let line = &book.lines[0];
        let page = line.page.unwrap();
        assert_near((page.backsights - page.foresights).base(), page.rise.base(), 1e-12);
        assert_near(line.closure.as_ref().unwrap().misclosure.base(), error, 1e-12);
        let count = legs.len() as f64;
        for point in &book.points {
            let passed = (point.setup + 1) as f64 - if point.slab_shot { 0.5 } else { 0.0 };
            assert_near(point.correction.base(), -error * passed / count, 1e-12);
            if point.slab_shot {
                // An elevation and its rod give back the height that rod marks hang on.
                let height = book.setups[point.setup].height;
                assert_near((point.elevation + point.rod).base(), height.base(), 1e-12);
            }
        }
    }
}

/// Read backward, the line gives the same elevations: backsights and foresights change places.
#[test]
fn a_line_read_backward_agrees() {
    for (legs, error) in varied_lines() {
        let forward = closed_line(&legs, error);
        let mut backward = forward.clone();
        backward.setups.reverse();
        for setup in &mut backward.setups {
            let foresight = setup.foresight.take().unwrap();
            let (point, rod) = (setup.backsight.point.clone(), setup.backsight.rod.unwrap());
            setup.foresight = Some(Sight::point(point, rod));
            setup.backsight = Backsight { point: foresight.point, rod: foresight.rod };
        }
        let (forward, backward) = (reduce(&forward).unwrap(), reduce(&backward).unwrap());
        for point in &forward.points {
            let other = backward.elevation_of(&point.name).unwrap();
            assert_near(point.elevation.base(), other.base(), 1e-12);
        }
    }
}
