//! Lines that must be edges. Along the runs of an outline they hardly ever meet, so they are drawn here by themselves.

use super::super::frame::Frame;
use super::super::lines::{Drawing, between};
use super::super::tiling::{NO_SHOT, Node};
use super::support::*;
use crate::geometry::triangulation::{CONSTRAINT, Constrainer, Triangulation};

fn nodes(places: &[(f64, f64, f64)]) -> Vec<Node> {
    (0..).zip(places).map(|(shot, &(x, y, z))| Node { x, y, z, shot, flags: 0 }).collect()
}

fn drawn(nodes: Vec<Node>, ends: &[[u32; 2]]) -> (Drawing, Triangulation) {
    let frame = Frame::new(&rectangle(10.0, 10.0), Point::default());
    let lines = ends.iter().map(|&[a, b]| between(&nodes, a, b)).collect();
    let mut drawing = Drawing { nodes, lines, ..Drawing::default() };
    let mut triangulation = Triangulation::of(drawing.points());
    drawing.draw(&mut triangulation, Triangulation::of, &frame).expect("no steps here");
    (drawing, triangulation)
}

#[track_caller]
fn assert_joined(drawing: &Drawing, mut triangulation: Triangulation) {
    let mut marks = Vec::new();
    let constrainer = Constrainer::new(&mut triangulation);
    for line in &drawing.lines {
        marks.push(constrainer.joined(line.ends[0], line.ends[1]).expect("an edge"));
    }
    assert!(marks.iter().all(|&edge| triangulation.links().mark(edge) & CONSTRAINT != 0));
}

#[test]
fn a_line_through_a_shot_is_split_there_and_noted() {
    let places = [(0.0, 2.0, 1.0), (1.0, 0.0, 1.0), (1.0, 4.0, 1.0), (2.0, 2.0, 1.5), (5.0, 2.0, 2.0)];
    let (drawing, triangulation) = drawn(nodes(&places), &[[0, 4]]);
    assert!(drawing.made.is_empty());
    assert_eq!(drawing.notes, [Note::LineThroughShot { line: [0, 4], shot: 3 }]);
    assert_eq!(drawing.lines.iter().map(|line| line.ends).collect::<Vec<_>>(), [[0, 3], [3, 4]]);
    assert_joined(&drawing, triangulation);
}

#[test]
fn lines_that_cross_are_split_at_a_place_of_mean_height_and_noted() {
    let places = [(0.0, 0.0, 1.0), (0.0, 4.0, 1.3), (4.0, 0.0, 1.5), (4.0, 4.0, 2.0)];
    let (drawing, triangulation) = drawn(nodes(&places), &[[0, 3], [1, 2]]);
    assert_eq!(drawing.made.len(), 1);
    assert_eq!(drawing.made[0].shares, [0.5, 0.5]);
    let middle = drawing.nodes.iter().find(|node| node.shot == NO_SHOT).expect("a place where they cross");
    assert_eq!((middle.x, middle.y), (2.0, 2.0));
    assert_close(middle.z, 0.5 * (1.5 + 1.4), 1e-14);
    assert_eq!(drawing.notes, [Note::LinesCross { first: [0, 3], second: [1, 2], at: Point::new(2.0, 2.0) }]);
    assert_eq!(drawing.lines.len(), 4);
    assert_joined(&drawing, triangulation);
}

#[test]
fn many_crossing_lines_come_to_an_end() {
    let mut random = Random::new(41);
    for _ in 0..20 {
        let mut places: Vec<(f64, f64, f64)> = (0..16)
            .map(|_| (random.between(0.0, 9.0), random.between(0.0, 9.0), random.between(0.0, 1.0)))
            .collect();
        places.sort_by(|a, b| a.0.total_cmp(&b.0));
        let ends: Vec<[u32; 2]> = (0..8).map(|i| [i, 15 - i]).collect();
        let (drawing, triangulation) = drawn(nodes(&places), &ends);
        let crossings = drawing.nodes.len() - 16;
        for made in &drawing.made {
            // The height is the mean of both lines' heights, wherever their ends were moved to by later nodes.
            let height = |[from, to]: [u32; 2], share: f64| {
                let (from, to) = (&drawing.nodes[from as usize], &drawing.nodes[to as usize]);
                from.z + share * (to.z - from.z)
            };
            let mean = 0.5 * (height(made.ends[0], made.shares[0]) + height(made.ends[1], made.shares[1]));
            assert_close(drawing.nodes[made.node as usize].z, mean, 1e-12);
        }
        assert_eq!(crossings, drawing.made.len());
        assert_eq!(drawing.lines.len(), 8 + 2 * crossings);
        assert_joined(&drawing, triangulation);
    }
}
