//! Lines that must be edges. Along the runs of an outline they hardly ever meet, so they are drawn here by themselves.

use super::super::frame::Frame;
use super::super::lines::{Line, between, draw};
use super::super::tiling::{NO_SHOT, Node};
use super::support::*;
use crate::geometry::triangulation::{CONSTRAINT, Constrainer, Triangulation};

fn nodes(places: &[(f64, f64, f64)]) -> Vec<Node> {
    (0..).zip(places).map(|(shot, &(x, y, z))| Node { x, y, z, shot, flags: 0 }).collect()
}

struct Drawing {
    nodes: Vec<Node>,
    lines: Vec<Line>,
    triangulation: Triangulation,
    notes: Vec<Note>,
    passes: usize,
}

fn drawn(nodes: Vec<Node>, ends: &[[u32; 2]]) -> Drawing {
    let frame = Frame::new(&rectangle(10.0, 10.0), Point::default());
    let lines = ends.iter().map(|&[a, b]| between(&nodes, a, b)).collect();
    let points = |nodes: &[Node]| nodes.iter().map(|node| Point::new(node.x, node.y)).collect();
    let triangulation = Triangulation::of(points(&nodes));
    let mut drawing = Drawing { nodes, lines, triangulation, notes: Vec::new(), passes: 0 };
    loop {
        let Drawing { nodes, lines, triangulation, notes, passes } = &mut drawing;
        if !draw(triangulation, nodes, lines, &frame, notes) {
            return drawing;
        }
        *triangulation = Triangulation::of(points(nodes));
        *passes += 1;
    }
}

#[track_caller]
fn assert_joined(drawing: &mut Drawing) {
    let mut marks = Vec::new();
    let constrainer = Constrainer::new(&mut drawing.triangulation);
    for line in &drawing.lines {
        marks.push(constrainer.joined(line.ends[0], line.ends[1]).expect("an edge"));
    }
    assert!(marks.iter().all(|&edge| drawing.triangulation.links().mark(edge) & CONSTRAINT != 0));
}

#[test]
fn a_line_through_a_shot_is_split_there_and_noted() {
    let places = [(0.0, 2.0, 1.0), (1.0, 0.0, 1.0), (1.0, 4.0, 1.0), (2.0, 2.0, 1.5), (5.0, 2.0, 2.0)];
    let mut drawing = drawn(nodes(&places), &[[0, 4]]);
    assert_eq!(drawing.passes, 0);
    assert_eq!(drawing.notes, [Note::LineThroughShot { line: [0, 4], shot: 3 }]);
    assert_eq!(drawing.lines.iter().map(|line| line.ends).collect::<Vec<_>>(), [[0, 3], [3, 4]]);
    assert_joined(&mut drawing);
}

#[test]
fn lines_that_cross_are_split_at_a_place_of_mean_height_and_noted() {
    let places = [(0.0, 0.0, 1.0), (0.0, 4.0, 1.3), (4.0, 0.0, 1.5), (4.0, 4.0, 2.0)];
    let mut drawing = drawn(nodes(&places), &[[0, 3], [1, 2]]);
    assert_eq!(drawing.passes, 1);
    let middle = drawing.nodes.iter().find(|node| node.shot == NO_SHOT).expect("a place where they cross");
    assert_eq!((middle.x, middle.y), (2.0, 2.0));
    assert_close(middle.z, 0.5 * (1.5 + 1.4), 1e-14);
    assert_eq!(drawing.notes, [Note::LinesCross { first: [0, 3], second: [1, 2], at: Point::new(2.0, 2.0) }]);
    assert_eq!(drawing.lines.len(), 4);
    assert_joined(&mut drawing);
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
        let mut drawing = drawn(nodes(&places), &ends);
        let crossings = drawing.nodes.len() - 16;
        assert_eq!(crossings, drawing.passes);
        assert_eq!(drawing.lines.len(), 8 + 2 * crossings);
        assert_joined(&mut drawing);
    }
}
