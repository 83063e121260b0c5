//! From the points of faces to distinct places.

use crate::geometry::predicates::{by_place, cross};
use crate::geometry::{FARTHEST, Point, Region};
use crate::survey::points::Points;
use crate::survey::surface::frame::Frame;
use crate::survey::surface::note::{Note, SharedPlace};
use crate::survey::surface::places::check;
use crate::survey::surface::rules::within;
use crate::survey::surface::standing::Standing;
use crate::survey::surface::tiling::Node;
use crate::survey::surface::{Rules, Shot, SurfaceError};

/// A face whose doubled area is less than this share of its longest side squared has none but for rounding.
const FLATTEST: f64 = 1e-12;

/// No node: a point that no face has as a corner.
const UNUSED: u32 = u32::MAX;

/// The places of the corners in ascending order, and the faces by the numbers of their places, counter-clockwise.
pub(super) struct Corners {
    pub(super) nodes: Vec<Node>,
    pub(super) faces: Vec<[u32; 3]>,
    pub(super) notes: Vec<Note>,
}

impl Corners {
    pub(super) fn of(
        points: &Points,
        faces: &[[u32; 3]],
        frame: &Frame,
        region: &Region,
        rules: &Rules,
    ) -> Result<Self, SurfaceError> {
        if faces.is_empty() {
            return Err(SurfaceError::NoFaces);
        }
        let mut numbers = used(points, faces)?;
        let mut nodes = nodes_of(points, &numbers, frame, region, rules)?;
        nodes.sort_unstable_by(|a, b| by_place(&a.at(), &b.at()).then(a.shot.cmp(&b.shot)));
        let mut notes = Vec::new();
        let nodes = distinct(nodes, &mut numbers, frame, rules, &mut notes)?;
        let unused = || (0..numbers.len()).filter(|&point| numbers[point] == UNUSED);
        if let Some(first) = unused().next() {
            notes.push(Note::PointsUnused { points: unused().count(), first });
        }
        let turned = faces.iter().enumerate().map(|(face, corners)| {
            let places = corners.map(|point| numbers[point as usize]);
            counter_clockwise(places, &nodes).ok_or(SurfaceError::FaceFlat { face })
        });
        let faces = turned.collect::<Result<_, _>>()?;
        Ok(Self { nodes, faces, notes })
    }
}

/// Which points are corners of a face: 0 for those, `UNUSED` for the others.
fn used(points: &Points, faces: &[[u32; 3]]) -> Result<Vec<u32>, SurfaceError> {
    let mut numbers = vec![UNUSED; points.len()];
    for (face, corners) in faces.iter().enumerate() {
        for &point in corners {
            match numbers.get_mut(point as usize) {
                Some(number) => *number = 0,
                None => {
                    let (point, points) = (point as usize, points.len());
                    return Err(SurfaceError::FacePoint { face, point, points });
                }
            }
        }
        if let &[a, b, c] = corners
            && (a == b || b == c || c == a)
        {
            let point = if a == b { a } else { c };
            return Err(SurfaceError::FaceRepeats { face, point: point as usize });
        }
    }
    Ok(numbers)
}

/// A node for every point that is used.
fn nodes_of(
    points: &Points,
    numbers: &[u32],
    frame: &Frame,
    region: &Region,
    rules: &Rules,
) -> Result<Vec<Node>, SurfaceError> {
    let mut standing = Standing::new(frame, region, rules);
    let taken = numbers.iter().filter(|&&number| number != UNUSED).count();
    let mut nodes = Vec::with_capacity(taken);
    for (index, _) in numbers.iter().enumerate().filter(|(_, number)| **number != UNUSED) {
        let Some([x, y, z]) = points.get(index) else {
            let nowhere = f64::NAN;
            return Err(SurfaceError::NotFinite {
                shot: index,
                x: nowhere,
                y: nowhere,
                z: nowhere,
                limit: FARTHEST,
            });
        };
        // Faces may go on beyond the outline as far as they like.
        let shot = Shot { outside_allowed: true, ..Shot::new(x, y, z) };
        check(index, &shot)?;
        let place = frame.local(Point::new(x, y));
        let flags = standing.of(index, &shot, place)?;
        nodes.push(Node { x: place.x, y: place.y, z, shot: index as u32, flags });
    }
    Ok(nodes)
}

/// Makes one node of points at exactly one place, and tells every point its node.
fn distinct(
    sorted: Vec<Node>,
    numbers: &mut [u32],
    frame: &Frame,
    rules: &Rules,
    notes: &mut Vec<Note>,
) -> Result<Vec<Node>, SurfaceError> {
    let mut nodes = Vec::with_capacity(sorted.len());
    for group in sorted.chunk_by(|a, b| a.at() == b.at()) {
        for node in group {
            numbers[node.shot as usize] = nodes.len() as u32;
        }
        if let &[only] = group {
            nodes.push(only);
        } else {
            nodes.extend(one_place(group, frame, rules, notes)?);
        }
    }
    Ok(nodes)
}

/// The mean of points at one place, whose heights must agree.
fn one_place(
    group: &[Node],
    frame: &Frame,
    rules: &Rules,
    notes: &mut Vec<Note>,
) -> Result<Option<Node>, SurfaceError> {
    let Some(&first) = group.first() else { return Ok(None) };
    let (low, high) = group.iter().fold((first, first), |(low, high), &node| {
        (if node.z < low.z { node } else { low }, if node.z > high.z { node } else { high })
    });
    if !within(high.z - low.z, rules.reading_error) {
        return Err(SurfaceError::TwoHeights {
            low_shot: low.shot as usize,
            low: low.z,
            high_shot: high.shot as usize,
            high: high.z,
            distance: 0.0,
            allowed: rules.reading_error,
        });
    }
    let mean = first.z + group.iter().map(|node| node.z - first.z).sum::<f64>() / group.len() as f64;
    let shots = group.iter().map(|node| node.shot as usize).collect();
    let at = frame.given(first.at());
    notes.push(Note::Shared(SharedPlace { shots, at, height: mean, difference: high.z - low.z }));
    Ok(Some(Node { z: mean, ..first }))
}

/// The corners of a face counter-clockwise from the least on; none for a face without area.
fn counter_clockwise([a, b, c]: [u32; 3], nodes: &[Node]) -> Option<[u32; 3]> {
    let [p, q, r] = [a, b, c].map(|place| nodes[place as usize].at());
    let doubled = cross(p, q, r);
    let longest = p.squared_distance(q).max(q.squared_distance(r)).max(r.squared_distance(p));
    if doubled.abs() <= FLATTEST * longest {
        return None;
    }
    let mut around = if doubled > 0.0 { [a, b, c] } else { [a, c, b] };
    while around[0] > around[1] || around[0] > around[2] {
        around.rotate_left(1);
    }
    Some(around)
}
