//! Two whole jobs, both invented, worked out apart by a triangulation of the shots and a general solver of linear programs.

use super::support::*;
use crate::grade::solve::{Asked, Demand, Line, Wants, conflicts, solve};
use crate::quantity::{Typed, read};
use crate::survey::Survey;

/// The boat store: rods from a sight at 104 ft 2 1/2 in.
fn boat_store() -> Survey {
    let sight = 100.0 + 50.5 / 12.0;
    let columns = [0.5, 7.0, 13.0, 19.5];
    let rows: [(f64, [f64; 4]); 5] = [
        (0.5, [60.625, 60.5, 60.375, 60.75]),
        (8.0, [59.875, 60.0, 59.875, 60.125]),
        (16.0, [59.375, 59.375, 59.625, 59.5]),
        (24.0, [58.75, 59.0, 59.25, 58.875]),
        (31.5, [58.0, 58.125, 58.25, 58.25]),
    ];
    let shots: Vec<[f64; 3]> = (rows.iter())
        .flat_map(|(y, rods)| columns.iter().zip(rods).map(|(x, rod)| [*x, *y, sight - rod / 12.0]))
        .collect();
    slab(&[[0.0, 0.0], [20.0, 0.0], [20.0, 32.0], [0.0, 32.0]], &EDGES, &shots)
}

fn boat_store_demands() -> Vec<Demand> {
    let sight = 100.0 + 50.5 / 12.0;
    vec![
        least("least 3 in", 3.0),
        fall("fall to the big door", 0.125, "front"),
        at_most("big door", &[[4.0, 0.0], [16.0, 0.0]], sight - 56.75 / 12.0),
        at_most("side door", &[[0.0, 27.0]], sight - 52.75 / 12.0),
    ]
}

#[test]
fn the_boat_store_comes_out_as_worked_apart() {
    let (survey, mut demands) = (boat_store(), boat_store_demands());
    // Door line free: 8.59 yd3 with the margin.
    let margin = read("3/8 in").unwrap();
    let free = solve(&survey, &Asked { margin, ..asked(&demands) }).unwrap();
    close(yards(free.planned.concrete), 8.59, 0.02 * 8.59);
    demands.push(Demand::new(
        "big door level",
        Wants::Level { along: Line::Edge("front".into()), tolerance: inches(0.0) },
    ));
    let level = solve(&survey, &Asked { margin, steps: Some(steps()), ..asked(&demands) }).unwrap();
    close(yards(level.planned.concrete), 8.66, 0.02 * 8.66);
    close(yards(level.bare.concrete), 7.92, 0.02 * 7.92);
    // The door line at rod 4 ft 9 1/16 in, to a sixteenth; built on a whole eighth above it.
    let sight = 100.0 + 50.5 / 12.0;
    let rod = |finish: &crate::grade::finish::Finish| {
        12.0 * (sight - finish.height_at(feet(10.0), feet(0.0)).unwrap().base() / 0.3048)
    };
    close(rod(&level.planned.finish), 57.0625, 1.0 / 16.0);
    close(rod(&level.built.finish) * 8.0, (rod(&level.built.finish) * 8.0).round(), 1e-6);
    assert!(level.built.concrete >= level.planned.concrete);
    let kept = |name: &str| level.demands.iter().find(|kept| kept.name == name).unwrap();
    assert!(kept("least 3 in").binds && kept("fall to the big door").binds);
    assert_eq!(kept("least 3 in").at.as_ref().unwrap().shot.as_deref(), Some("S3"), "A3 of the grid");
    close(kept("big door").slack / 0.0254, 0.3125, 1.0 / 16.0);
    close(kept("side door").slack / 0.0254, 0.9375, 1.0 / 16.0);
}

/// The patio: rods in feet from a sight at 104.12 ft.
fn patio() -> Survey {
    let rods = [
        [0.5, 0.5, 4.67],
        [5.0, 0.5, 4.68],
        [9.0, 0.5, 4.69],
        [17.0, 0.5, 4.68],
        [21.0, 0.5, 4.68],
        [27.5, 0.5, 4.66],
        [11.5, 2.5, 4.69],
        [14.5, 2.5, 4.68],
        [0.5, 5.5, 4.67],
        [7.0, 5.5, 4.69],
        [14.0, 5.5, 4.70],
        [21.0, 5.5, 4.68],
        [27.5, 5.5, 4.66],
        [0.5, 10.5, 4.65],
        [7.0, 10.5, 4.66],
        [14.0, 10.5, 4.68],
        [21.0, 10.5, 4.66],
        [27.5, 10.5, 4.64],
        [0.5, 15.5, 4.63],
        [7.0, 15.5, 4.64],
        [14.0, 15.5, 4.64],
        [21.0, 15.5, 4.63],
        [27.5, 15.5, 4.62],
        [24.0, 13.0, 4.64],
    ];
    let shots = rods.map(|[x, y, rod]| [x, y, 104.12 - rod]);
    let corners = [
        [0.0, 0.0],
        [10.0, 0.0],
        [11.0, 2.0],
        [15.0, 2.0],
        [16.0, 0.0],
        [28.0, 0.0],
        [28.0, 16.0],
        [0.0, 16.0],
    ];
    let edges =
        ["house left", "bay left", "bay", "bay right", "house right", "right", "lawn", "planting bed"];
    slab(&corners, &edges, &shots)
}

#[test]
fn the_patio_as_first_asked_names_its_three_conflicts() {
    let survey = patio();
    let house = Wants::CrossFall { fall: slope(0.0), along: Line::Edge("house right".into()), on: None };
    let demands = [
        least("least 3 in", 3.0),
        Demand::new("flush with walk", Wants::Exactly(along(&[[28.0, 16.0]], 104.12 - 4.474))),
        fall("fall 1/4 in/ft", 0.25, "lawn"),
        at_most("slider", &[[18.0, 0.0], [24.0, 0.0]], 104.12 - 4.245),
        Demand::new("level along house", house).firmly(),
    ];
    let asked = Asked { edges_bind: true, ..asked(&demands) };
    let found = conflicts(&survey, &asked).unwrap().unwrap();
    assert!(found.complete);
    let sets: Vec<&[usize]> = found.sets.iter().map(|set| set.demands.as_slice()).collect();
    assert_eq!(sets, [&[0, 1][..], &[0, 2, 3], &[1, 2, 3]]);
    assert!(found.alone.is_empty(), "no single one mends it: {:?}", found.alone);
    let inches = |set: usize, place: usize| found.sets[set].by[place].unwrap().by / 0.0254;
    // By 1 5/16 in at the walk's corner; the heights of ground beyond the shots by another rule move it by up to 1/16 in.
    close(inches(0, 0), 1.3125, 1.0 / 16.0);
    close(inches(0, 1), 1.3125, 1.0 / 16.0);
    // By 2 9/16 in at the slider, a fall down to 0.09 in/ft, or least 7/16 in.
    close(inches(1, 2), 2.5625, 1.0 / 16.0);
    close(0.25 - 12.0 * found.sets[1].by[1].unwrap().by, 0.09, 0.005);
    close(3.0 - inches(1, 0), 0.4375, 1.0 / 16.0);
    // By 1 1/4 in, whatever the thickness.
    close(inches(2, 2), 1.25, 1.0 / 16.0);
    let failure = solve(&survey, &asked).unwrap_err();
    assert_eq!(failure.code.name(), "DEMANDS_CONFLICT");
    assert!(failure.written.starts_with("least 3 in and flush with walk"), "{failure}");
    // As it was mended: bonded at 1 11/16 in, 11/64 in/ft, flush, the slider kept. Exactly it is 2.748 in on 16 ft, 0.002 in short of
    // that fall.
    let mended = [
        least("least 1 11/16 in", 1.6875),
        demands[1].clone(),
        fall("fall 11/64 in/ft", 0.1717, "lawn"),
        demands[3].clone(),
        demands[4].clone(),
    ];
    let mended = solve(&survey, &Asked { demands: &mended, ..asked }).unwrap();
    close(yards(mended.planned.concrete), 4.92, 0.02 * 4.92);
}
