//! New outside edges: fill against them, lawns above them.

use super::{OLD, close, length, thing};
use crate::clearance::{Kind, Measures, Meets, Task, Verdict};
use crate::quantity::{Elevation, Typed, Volume, volume};

fn height(inches: f64) -> Elevation {
    Elevation::from_base(OLD + inches * 0.0254)
}

fn fill(long: &str, finish: f64, ground: [f64; 2]) -> Option<[f64; 2]> {
    let ends = [height(0.0), height(finish)];
    let floor = Meets::between(length(long), ends, ends);
    let measures = Measures { ground: ground.map(height).into(), route: Some(false), ..Measures::default() };
    let judgement = thing(Kind::OpenEdge, measures).judged(&floor);
    let work = judgement.works.iter().find(|work| work.task == Task::Backfill)?;
    work.fill.map(|fill| fill.map(|fill: Volume| (volume::unit::cubic_foot.from_base)(fill.base())))
}

/// Arithmetic: 40 ft of edge 3 in high, filled at 1 in 6: 40 x 1/4 x 6/4 / 2 = 7.5 ft3.
#[test]
fn an_even_edge_takes_half_its_height_times_its_run() {
    let [steep, flat] = fill("40 ft", 4.0, [1.0, 1.0]).unwrap();
    close(steep, 7.5);
    close(flat, 15.0);
}

/// Arithmetic: from 0 to 3 in high the mean square is a third of 9 in2.
#[test]
fn a_rising_edge_takes_a_third_of_it() {
    close(fill("40 ft", 3.0, [3.0, 0.0]).unwrap()[0], 2.5);
}

/// Only the half of the edge that stands up is filled.
#[test]
fn where_the_lawn_is_higher_nothing_is_filled() {
    close(fill("40 ft", 3.0, [6.0, 0.0]).unwrap()[0], 1.25);
    assert!(fill("40 ft", 3.0, [3.0, 3.0]).is_none());
    assert!(fill("40 ft", 3.0, [5.0, 6.0]).is_none());
}

#[test]
fn a_lawn_above_the_floor_is_cut_by_what_it_stands_above() {
    let ends = [height(0.0), height(3.0)];
    let floor = Meets::between(length("40 ft"), ends, ends);
    let measures =
        Measures { ground: vec![height(2.0), height(4.25)], route: Some(false), ..Measures::default() };
    let judgement = thing(Kind::OpenEdge, measures).judged(&floor);
    assert_eq!(judgement.verdict(), Verdict::Fail);
    assert!(judgement.forces().contains("1 1/4 in lower, or the water stays"), "{}", judgement.forces());
}
