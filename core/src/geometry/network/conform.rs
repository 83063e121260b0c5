//! Sides that are met in part are split at the corners that lie on them.

use super::{Corner, Made, Network, SAME, SAME_HEIGHT};
use crate::geometry::boxes::{Boxes, Extent};

/// A split may bring a corner that was just off a side onto the half of it: so often it is looked again, at most.
const ROUNDS: usize = 8;

/// Splits sides until none has a corner amid it. Gives the corners that were made at steps.
pub(super) fn conform(network: &mut Network) -> Vec<Made> {
    let mut made = Vec::new();
    for _ in 0..ROUNDS {
        let splits = Finder::of(network).splits(network, &mut made);
        if splits.is_empty() {
            break;
        }
        split_all(network, splits);
        network.meet();
    }
    made
}

/// The corners at which a triangle's side is to be split, in order from its start.
pub(super) struct Split {
    pub(super) triangle: u32,
    pub(super) side: usize,
    pub(super) corners: Vec<u32>,
}

/// Finds the corners of open sides that lie on other open sides.
struct Finder {
    ends: Vec<u32>,
    boxes: Boxes,
}

impl Finder {
    fn of(network: &Network) -> Self {
        let mut ends: Vec<u32> = network.open_sides().flat_map(|(.., side)| side).collect();
        ends.sort_unstable();
        ends.dedup();
        let extents = ends.iter().map(|&end| Extent::at(network.corners[end as usize].at));
        let boxes = Boxes::new(extents.collect());
        Self { ends, boxes }
    }

    fn splits(&self, network: &mut Network, made: &mut Vec<Made>) -> Vec<Split> {
        let sides: Vec<_> = network.open_sides().collect();
        let mut splits = Vec::new();
        for (triangle, side, ends) in sides {
            let on = self.on_side(&network.corners, ends);
            if !on.is_empty() {
                let corners = choose(&on, ends, &mut network.corners, made);
                splits.push(Split { triangle, side, corners });
            }
        }
        splits
    }

    /// The corners amid a side with their shares of the way along it, in order.
    fn on_side(&self, corners: &[Corner], [from, to]: [u32; 2]) -> Vec<(f64, u32)> {
        let (start, end) = (corners[from as usize], corners[to as usize]);
        let (dx, dy) = (end.at.x - start.at.x, end.at.y - start.at.y);
        let length = start.at.distance(end.at);
        let mut on = Vec::new();
        self.boxes.overlapping(&Extent::around([start.at, end.at]).widened(SAME), |index| {
            let number = self.ends[index];
            let corner = corners[number as usize];
            if corner.place == start.place || corner.place == end.place {
                return;
            }
            let (x, y) = (corner.at.x - start.at.x, corner.at.y - start.at.y);
            let (along, off) = ((x * dx + y * dy) / length, (x * dy - y * dx) / length);
            if off.abs() <= SAME && along > 0.0 && along < length {
                on.push((along / length, number));
            }
        });
        on.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)));
        on
    }
}

/// One corner for every place amid a side: the one at the height of the side, or a new one where only the other side of a
/// step has a corner.
fn choose(on: &[(f64, u32)], ends: [u32; 2], corners: &mut Vec<Corner>, made: &mut Vec<Made>) -> Vec<u32> {
    let [start, end] = ends.map(|corner| corners[corner as usize].height);
    let mut chosen = Vec::with_capacity(on.len());
    let mut done: Vec<u32> = Vec::with_capacity(on.len());
    for &(share, number) in on {
        let Corner { at, place, .. } = corners[number as usize];
        if done.contains(&place) {
            continue;
        }
        done.push(place);
        let height = start + share * (end - start);
        let fits = |&&(_, other): &&(f64, u32)| {
            let other = &corners[other as usize];
            other.place == place && (other.height - height).abs() <= SAME_HEIGHT
        };
        let corner = match on.iter().find(fits) {
            Some(&(_, fitting)) => fitting,
            None => {
                let corner = corners.len() as u32;
                corners.push(Corner { at, height, place });
                made.push(Made { corner, ends, share });
                corner
            }
        };
        chosen.push(corner);
    }
    chosen
}

/// Splits triangles, all sides of each at once; in the order of the triangles.
pub(super) fn split_all(network: &mut Network, splits: Vec<Split>) {
    let mut at = 0;
    let mut splits = splits.into_iter().peekable();
    let (mut triangles, mut parents) = (Vec::new(), Vec::new());
    while let Some(first) = splits.peek() {
        let number = first.triangle as usize;
        triangles.extend_from_slice(&network.triangles[at..number]);
        parents.extend_from_slice(&network.parents[at..number]);
        at = number + 1;
        let mut on: [Vec<u32>; 3] = Default::default();
        while let Some(split) = splits.next_if(|split| split.triangle as usize == number) {
            on[split.side] = split.corners;
        }
        take_apart(network.triangles[number], on, &mut triangles);
        parents.resize(triangles.len(), network.parents[number]);
    }
    triangles.extend_from_slice(&network.triangles[at..]);
    parents.extend_from_slice(&network.parents[at..]);
    (network.triangles, network.parents) = (triangles, parents);
}

/// The triangles that a triangle with corners amid its sides falls into.
fn take_apart(triangle: [u32; 3], mut on: [Vec<u32>; 3], into: &mut Vec<[u32; 3]>) {
    let Some(side) = on.iter().position(|corners| !corners.is_empty()) else {
        into.push(triangle);
        return;
    };
    // A fan from the corner opposite the side: only its first and its last triangle keep another side to be split.
    let [a, b, c] = [0, 1, 2].map(|turn| triangle[(side + turn) % 3]);
    let along = std::mem::take(&mut on[side]);
    let (behind, ahead) = (std::mem::take(&mut on[(side + 2) % 3]), std::mem::take(&mut on[(side + 1) % 3]));
    let (first, last) = (along[0], along[along.len() - 1]);
    take_apart([a, first, c], [Vec::new(), Vec::new(), behind], into);
    into.extend(along.windows(2).map(|pair| [pair[0], pair[1], c]));
    take_apart([last, b, c], [Vec::new(), ahead, Vec::new()], into);
}
