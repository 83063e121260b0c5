//! Chains of edges: closed rings and open lines.

use super::strip::Corner;
use crate::geometry::predicates::cross;
use crate::geometry::{Point, Sum};
use crate::quantity::{Length, Typed};
use crate::survey::outline;
use std::collections::HashMap;

/// A polygon in the axes of the job: simple rings that do not repeat their first corner.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shape {
    /// The outer ring, counter-clockwise.
    pub outer: Vec<outline::Corner>,
    /// The holes, clockwise.
    pub holes: Vec<Vec<outline::Corner>>,
}

impl Shape {
    /// The rings: the outer one, then the holes.
    pub fn rings(&self) -> impl Iterator<Item = &[outline::Corner]> {
        std::iter::once(self.outer.as_slice()).chain(self.holes.iter().map(Vec::as_slice))
    }

    /// The polygon of rings that bound one piece of ground; nothing where rounding left none of it.
    pub(super) fn of(rings: impl IntoIterator<Item = Vec<Point>>) -> Option<Self> {
        let mut rings: Vec<(f64, Vec<Point>)> =
            rings.into_iter().map(|ring| (doubled_area(&ring), ring)).collect();
        rings.sort_by(|a, b| b.0.total_cmp(&a.0));
        let mut rings = rings.into_iter();
        let (_, outer) = rings.next().filter(|(area, _)| *area > 0.0)?;
        let holes = rings.filter(|(area, _)| *area < 0.0).map(|(_, hole)| in_axes(&from_left(hole)));
        let mut holes: Vec<_> = holes.collect();
        holes.sort_by(|a, b| by_first(a, b));
        Some(Self { outer: in_axes(&from_left(outer)), holes })
    }
}

/// The order of rings and lines by their first corner.
pub(super) fn by_first(a: &[outline::Corner], b: &[outline::Corner]) -> std::cmp::Ordering {
    let key =
        |ring: &[outline::Corner]| ring.first().map_or([0.0; 2], |corner| [corner.x.base(), corner.y.base()]);
    let ([ax, ay], [bx, by]) = (key(a), key(b));
    ax.total_cmp(&bx).then(ay.total_cmp(&by))
}

/// Places as corners of a plan.
pub(super) fn in_axes(places: &[Point]) -> Vec<outline::Corner> {
    let corner = |at: &Point| outline::Corner::new(Length::from_base(at.x), Length::from_base(at.y));
    places.iter().map(corner).collect()
}

/// Twice the area of a ring, negative where it runs clockwise.
fn doubled_area(ring: &[Point]) -> f64 {
    let Some(&first) = ring.first() else { return 0.0 };
    ring.windows(2).map(|pair| cross(first, pair[0], pair[1])).collect::<Sum>().value()
}

/// The ring from its corner farthest to the left, of several the one nearest to the front: the same whatever it was followed from.
pub(super) fn from_left(mut ring: Vec<Point>) -> Vec<Point> {
    let first = (0..ring.len()).min_by(|&a, &b| {
        let (a, b) = (ring[a], ring[b]);
        a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y))
    });
    ring.rotate_left(first.unwrap_or(0));
    ring
}

/// Edges to be followed from end to end.
#[derive(Clone, Debug, Default)]
pub(super) struct Chains {
    edges: Vec<(Corner, Corner)>,
}

/// Places one after the other.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Chain {
    pub(super) places: Vec<Point>,
    /// Whether the last leads back to the first, which is not repeated.
    pub(super) closed: bool,
}

impl Chains {
    /// One more edge.
    pub(super) fn add(&mut self, from: Corner, to: Corner) {
        self.edges.push((from, to));
    }

    /// The chains. Where several meet in a corner, each turns as far to the right as it can: then neither crosses another,
    /// and rings that touch in a corner part there.
    pub(super) fn follow(self, place: impl Fn(Corner) -> Point) -> Vec<Chain> {
        let mut ways = Ways { leaving: HashMap::new(), arriving: HashMap::new(), place };
        for &(from, to) in &self.edges {
            ways.leaving.entry(from).or_default().push(to);
            *ways.arriving.entry(to).or_default() += 1;
        }
        let mut chains = Vec::new();
        // What has more edges leaving than arriving is the start of open chains; they go first.
        for &(from, _) in &self.edges {
            while ways.from(from).len() > ways.arriving.get(&from).copied().unwrap_or(0) {
                chains.extend(ways.walk(from));
            }
        }
        for &(from, _) in &self.edges {
            while !ways.from(from).is_empty() {
                chains.extend(ways.walk(from));
            }
        }
        chains
    }
}

/// The edges that were not followed yet.
struct Ways<P> {
    /// Where edges lead to from a corner.
    leaving: HashMap<Corner, Vec<Corner>>,
    /// How many lead to a corner.
    arriving: HashMap<Corner, usize>,
    place: P,
}

impl<P: Fn(Corner) -> Point> Ways<P> {
    fn from(&self, corner: Corner) -> &[Corner] {
        self.leaving.get(&corner).map_or(&[], Vec::as_slice)
    }

    /// Follows one chain to its end, or back to its start; nothing where all its places are one.
    fn walk(&mut self, start: Corner) -> Option<Chain> {
        let mut places = vec![(self.place)(start)];
        let first = self.leaving.get_mut(&start)?.pop()?;
        let (mut at, mut next, mut closed) = (start, Some(first), false);
        while let Some(to) = next {
            if let Some(left) = self.arriving.get_mut(&to) {
                *left -= 1;
            }
            let last = std::mem::replace(&mut at, to);
            // Where several chains meet in the start, this one may go on through it.
            if to == start && self.is_first_right(last, start, first) {
                closed = true;
                break;
            }
            let here = (self.place)(to);
            // A crossing next to a corner may round onto it.
            if places.last() != Some(&here) {
                places.push(here);
            }
            next = self.take(last, to);
        }
        if closed && places.len() > 1 && places.last() == places.first() {
            places.pop();
        }
        let least = if closed { 3 } else { 2 };
        (places.len() >= least).then_some(Chain { places, closed })
    }

    /// Whether the edge to `first` turns farther to the right than all others that leave a corner.
    fn is_first_right(&self, last: Corner, at: Corner, first: Corner) -> bool {
        let turn = |to: Corner| self.turn(last, at, to);
        self.from(at).iter().all(|&other| turn(first) <= turn(other))
    }

    /// Takes one of the edges that leave a corner: the one farthest to the right as seen from the corner before.
    fn take(&mut self, last: Corner, at: Corner) -> Option<Corner> {
        let turn = |to: Corner| self.turn(last, at, to);
        let leaving = self.from(at);
        let choice = match leaving {
            [] => return None,
            [_] => 0,
            _ => (0..leaving.len()).min_by(|&a, &b| turn(leaving[a]).total_cmp(&turn(leaving[b])))?,
        };
        Some(self.leaving.get_mut(&at)?.swap_remove(choice))
    }

    /// How far the way on turns from the way back, counter-clockwise: the sharpest turn to the right is the least.
    fn turn(&self, last: Corner, at: Corner, to: Corner) -> f64 {
        let here = (self.place)(at);
        let direction = |corner: Corner| {
            let to = (self.place)(corner);
            (to.y - here.y).atan2(to.x - here.x)
        };
        (direction(to) - direction(last)).rem_euclid(std::f64::consts::TAU)
    }
}
