//! Corners put into a network at places the caller names.

use super::conform::{Split, split_all};
use super::{Corner, Network, SAME};
use crate::geometry::Point;
use crate::geometry::boxes::Extent;
use crate::geometry::clip::Line;
use std::collections::HashMap;

impl Network {
    /// Puts a corner at a place, at the height of the surface there. Gives the corners at that place: none outside, two at a
    /// step.
    pub(crate) fn insert(&mut self, place: Point) -> Vec<u32> {
        let mut at = self.corners_near(place);
        if !at.is_empty() {
            return at;
        }
        let extent = Extent::at(place).widened(SAME);
        let mut made: HashMap<[u32; 2], u32> = HashMap::new();
        let (mut splits, mut inside) = (Vec::new(), None);
        let number = self.next_place();
        for (triangle, corners) in (0_u32..).zip(self.triangles.clone()) {
            let points = corners.map(|corner| self.corners[corner as usize].at);
            if !Extent::around(points).overlaps(&extent) {
                continue;
            }
            let left = sides(points).map(|side| side.left(place.x, place.y));
            if left.iter().any(|&left| left < -SAME) {
                continue;
            }
            let Some(side) = (0..3).find(|&side| left[side] <= SAME) else {
                inside = Some(triangle as usize);
                continue;
            };
            let ends = [corners[side], corners[(side + 1) % 3]];
            let corner = *made.entry(sorted(ends)).or_insert_with(|| self.amid(ends, place, number));
            splits.push(Split { triangle, side, corners: vec![corner] });
        }
        at.extend(made.into_values());
        at.sort_unstable();
        split_all(self, splits);
        if at.is_empty()
            && let Some(triangle) = inside
        {
            at.push(self.within(triangle, place, number));
        }
        self.meet();
        at
    }

    /// Puts corners wherever the line from one place to another crosses a side, and at its ends. Gives all corners on it.
    pub(crate) fn insert_line(&mut self, from: Point, to: Point) -> Vec<u32> {
        let mut on = self.insert(from);
        let length = from.distance(to);
        if length <= SAME {
            return on;
        }
        on.extend(self.insert(to));
        let line = Line::through(from, to);
        let along =
            |at: Point| ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / length;
        let lies_on =
            |at: Point| line.left(at.x, at.y).abs() <= SAME && (-SAME..=length + SAME).contains(&along(at));
        on.extend(
            (0_u32..).zip(&self.corners).filter(|(_, corner)| lies_on(corner.at)).map(|(number, _)| number),
        );
        let extent = Extent::around([from, to]).widened(SAME);
        let mut made: HashMap<[u32; 2], u32> = HashMap::new();
        // Both sides of a step are crossed at one place.
        let mut places: HashMap<[u32; 2], u32> = HashMap::new();
        let mut splits = Vec::new();
        let first = self.next_place();
        for (triangle, corners) in (0_u32..).zip(self.triangles.clone()) {
            let points = corners.map(|corner| self.corners[corner as usize].at);
            if !Extent::around(points).overlaps(&extent) {
                continue;
            }
            for side in 0..3 {
                let ends = sorted([corners[side], corners[(side + 1) % 3]]);
                let [a, b] = ends.map(|end| self.corners[end as usize]);
                let (left_a, left_b) = (line.left(a.at.x, a.at.y), line.left(b.at.x, b.at.y));
                if left_a.min(left_b) >= -SAME || left_a.max(left_b) <= SAME {
                    continue;
                }
                let share = left_a / (left_a - left_b);
                let place =
                    Point::new(a.at.x + share * (b.at.x - a.at.x), a.at.y + share * (b.at.y - a.at.y));
                if !(SAME..=length - SAME).contains(&along(place)) {
                    continue;
                }
                let next = first + places.len() as u32;
                let number = *places.entry(sorted([a.place, b.place])).or_insert(next);
                let corner = *made.entry(ends).or_insert_with(|| self.amid(ends, place, number));
                splits.push(Split { triangle, side, corners: vec![corner] });
            }
        }
        on.extend(made.into_values());
        on.sort_unstable();
        on.dedup();
        split_all(self, splits);
        self.meet();
        on
    }

    fn corners_near(&self, place: Point) -> Vec<u32> {
        let near = (0_u32..).zip(&self.corners).filter(|(_, corner)| corner.at.distance(place) <= SAME);
        near.map(|(number, _)| number).collect()
    }

    fn next_place(&self) -> u32 {
        self.corners.iter().map(|corner| corner.place + 1).max().unwrap_or(0)
    }

    /// A new corner amid a side.
    fn amid(&mut self, ends: [u32; 2], at: Point, place: u32) -> u32 {
        let [from, to] = ends.map(|end| self.corners[end as usize]);
        let share = (from.at.distance(at) / from.at.distance(to.at)).min(1.0);
        self.push(at, from.height + share * (to.height - from.height), place)
    }

    /// A new corner inside a triangle, which falls into three.
    fn within(&mut self, triangle: usize, at: Point, place: u32) -> u32 {
        let corners = self.triangles[triangle];
        let [a, b, c] = corners.map(|corner| self.corners[corner as usize]);
        let cross = crate::geometry::predicates::cross;
        let [of_a, of_b, of_c] = [cross(at, b.at, c.at), cross(at, c.at, a.at), cross(at, a.at, b.at)];
        let height = (of_a * a.height + of_b * b.height + of_c * c.height) / (of_a + of_b + of_c);
        let corner = self.push(at, height, place);
        let [a, b, c] = corners;
        self.triangles[triangle] = [a, b, corner];
        self.triangles.extend([[b, c, corner], [c, a, corner]]);
        self.parents.extend([self.parents[triangle]; 2]);
        corner
    }

    fn push(&mut self, at: Point, height: f64, place: u32) -> u32 {
        self.corners.push(Corner { at, height, place });
        self.corners.len() as u32 - 1
    }
}

fn sides([a, b, c]: [Point; 3]) -> [Line; 3] {
    [Line::through(a, b), Line::through(b, c), Line::through(c, a)]
}

fn sorted([a, b]: [u32; 2]) -> [u32; 2] {
    if a < b { [a, b] } else { [b, a] }
}
