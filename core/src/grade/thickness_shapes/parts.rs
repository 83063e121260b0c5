//! The connected parts of what lies in a strip.

use super::rings::{Chains, Shape};
use super::sheet::Sheet;
use super::strip::{Edge, Strip};
use crate::geometry::Sum;
use std::collections::BTreeMap;

/// One connected part: triangles that share more than a corner in the strip.
#[derive(Clone, Debug)]
pub(super) struct Part {
    /// Its polygon; none where rounding left none.
    pub(super) shape: Option<Shape>,
    /// The triangles that reach into it.
    pub(super) triangles: Vec<u32>,
    /// Its area.
    pub(super) area: f64,
    /// The integral of the field over it.
    pub(super) integral: f64,
}

/// Finds parts; its room is used again from strip to strip.
#[derive(Clone, Debug)]
pub(super) struct Finder<'a> {
    sheet: &'a Sheet,
    /// The place of each triangle among those at hand, while it is one of them.
    place: Vec<u32>,
}

/// Not among the triangles at hand.
const ELSEWHERE: u32 = u32::MAX;

impl<'a> Finder<'a> {
    pub(super) fn new(sheet: &'a Sheet) -> Self {
        Self { sheet, place: vec![ELSEWHERE; sheet.len()] }
    }

    /// The parts in a strip, the largest first; `triangles` are all that reach into it.
    pub(super) fn parts(&mut self, strip: &Strip, triangles: &[u32]) -> Vec<Part> {
        for (place, &triangle) in (0_u32..).zip(triangles) {
            self.place[triangle as usize] = place;
        }
        let found = self.found(strip, triangles);
        for &triangle in triangles {
            self.place[triangle as usize] = ELSEWHERE;
        }
        found
    }

    fn found(&self, strip: &Strip, triangles: &[u32]) -> Vec<Part> {
        let mut groups = Groups::new(triangles.len());
        let (mut edges, mut border): (Vec<Edge>, Vec<(u32, Edge)>) = (Vec::new(), Vec::new());
        for (place, &triangle) in (0_u32..).zip(triangles) {
            strip.edges(self.sheet.triangle(triangle), self.sheet.values(triangle), &mut edges);
            for &edge in &edges {
                let other = edge.side.and_then(|side| self.sheet.across(triangle, side));
                match other.map(|other| self.place[other as usize]) {
                    Some(other) if other != ELSEWHERE => groups.join(place, other),
                    _ => border.push((place, edge)),
                }
            }
        }
        let mut parts: BTreeMap<u32, (Vec<u32>, Chains)> = BTreeMap::new();
        for (place, &triangle) in (0_u32..).zip(triangles) {
            parts.entry(groups.of(place)).or_default().0.push(triangle);
        }
        for (place, edge) in border {
            parts.entry(groups.of(place)).or_default().1.add(edge.from, edge.to);
        }
        let mut parts: Vec<Part> =
            parts.into_values().map(|(triangles, chains)| self.part(strip, triangles, chains)).collect();
        parts.sort_by(by_size);
        parts
    }

    fn part(&self, strip: &Strip, triangles: Vec<u32>, chains: Chains) -> Part {
        let (mut area, mut integral) = (Sum::new(), Sum::new());
        for &triangle in &triangles {
            let (of_area, of_values) =
                strip.integrals(self.sheet.area(triangle), self.sheet.values(triangle));
            area.add(of_area);
            integral.add(of_values);
        }
        let rings = chains.follow(|corner| self.sheet.place(corner, strip)).into_iter();
        let shape = Shape::of(rings.filter(|chain| chain.closed).map(|chain| chain.places));
        Part { shape, triangles, area: area.value(), integral: integral.value() }
    }
}

/// The largest first; parts whose areas differ by rounding only, from left to right.
fn by_size(a: &Part, b: &Part) -> std::cmp::Ordering {
    let size = |part: &Part| (part.area * 1e6).round();
    let ring = |part: &Part| part.shape.as_ref().map_or_else(Vec::new, |shape| shape.outer.clone());
    size(b).total_cmp(&size(a)).then_with(|| super::rings::by_first(&ring(a), &ring(b)))
}

/// Which things are joined, directly or through others.
pub(super) struct Groups(Vec<u32>);

impl Groups {
    pub(super) fn new(count: usize) -> Self {
        Self((0..count as u32).collect())
    }

    /// The one that stands for the group of a thing.
    pub(super) fn of(&mut self, thing: u32) -> u32 {
        let mut at = thing;
        while self.0[at as usize] != at {
            let above = self.0[self.0[at as usize] as usize];
            self.0[at as usize] = above;
            at = above;
        }
        at
    }

    pub(super) fn join(&mut self, a: u32, b: u32) {
        let (a, b) = (self.of(a), self.of(b));
        // The lower stands for both: the outcome does not depend on the order.
        self.0[a.max(b) as usize] = a.min(b);
    }
}
