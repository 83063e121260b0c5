//! The highest place of the finish under a leaf that swings in over it, exactly.
//!
//! A leaf sweeps a quarter of a disc about its jamb. Over each plane the highest place is a corner of the plane's share of that
//! sector, or the place of the arc that lies straight uphill from the jamb.

use crate::geometry::{Point, Region};
use crate::grade::finish::Finish;
use crate::quantity::{Length, Typed};

/// How many leaves hang in an opening.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaves {
    /// One, hung at either jamb.
    One,
    /// A pair, each half as wide as the opening.
    Pair,
}

/// The sector that a leaf sweeps.
struct Sector {
    hinge: Point,
    /// Unit vectors along the closed leaf and along the open one.
    closed: [f64; 2],
    open: [f64; 2],
    radius: f64,
}

/// Places this near to the sector, in metres, are in it.
const HAIR: f64 = 1e-9;

/// The greatest height under the leaves; none where it cannot be told on which side of the line the floor lies.
pub(super) fn highest(region: &Region, finish: &Finish, jambs: [Point; 2], leaves: Leaves) -> Option<f64> {
    let [from, to] = jambs;
    let length = from.distance(to);
    let along = [(to.x - from.x) / length, (to.y - from.y) / length];
    let radius = if leaves == Leaves::Pair { length / 2.0 } else { length };
    let middle = Point::new((from.x + to.x) / 2.0, (from.y + to.y) / 2.0);
    let normal = inward(region, middle, [-along[1], along[0]], radius)?;
    let back = along.map(|part| -part);
    let sectors = [(from, along), (to, back)];
    let sectors = sectors.map(|(hinge, closed)| Sector { hinge, closed, open: normal, radius });
    sectors.iter().filter_map(|sector| sector.highest(finish)).reduce(f64::max)
}

/// The side of a door line on which the floor lies.
fn inward(region: &Region, middle: Point, normal: [f64; 2], radius: f64) -> Option<[f64; 2]> {
    let beside = |sign: f64| {
        let step = sign * (radius / 2.0).min(0.1);
        region.contains(Point::new(middle.x + step * normal[0], middle.y + step * normal[1]))
    };
    match (beside(1.0), beside(-1.0)) {
        (true, false) => Some(normal),
        (false, true) => Some(normal.map(|part| -part)),
        _ => None,
    }
}

impl Sector {
    fn at(&self, along: f64, away: f64) -> Point {
        let part = |axis: usize| along * self.closed[axis] + away * self.open[axis];
        Point::new(self.hinge.x + part(0), self.hinge.y + part(1))
    }

    /// Along the closed leaf and along the open one.
    fn own(&self, place: Point) -> [f64; 2] {
        let [x, y] = [place.x - self.hinge.x, place.y - self.hinge.y];
        [self.closed, self.open].map(|axis| x * axis[0] + y * axis[1])
    }

    fn holds(&self, place: Point) -> bool {
        let [along, away] = self.own(place);
        along >= -HAIR && away >= -HAIR && along.hypot(away) <= self.radius + HAIR
    }

    fn highest(&self, finish: &Finish) -> Option<f64> {
        let mut places = vec![self.hinge, self.at(self.radius, 0.0), self.at(0.0, self.radius)];
        for plane in finish.planes() {
            let uphill = [self.closed, self.open].map(|axis| plane.b() * axis[0] + plane.c() * axis[1]);
            let size = uphill[0].hypot(uphill[1]);
            if size > 0.0 {
                places.push(self.at(self.radius * uphill[0] / size, self.radius * uphill[1] / size));
            }
        }
        for run in finish.facets().iter().flat_map(|facet| facet.region().runs()) {
            places.extend([run.from, run.to]);
            places.extend(self.crossings(run.from, run.to));
        }
        let heights = places.into_iter().filter(|&place| self.holds(place));
        let heights = heights.filter_map(|place| {
            finish.height_at(Length::from_base(place.x), Length::from_base(place.y)).map(Typed::base)
        });
        heights.reduce(f64::max)
    }

    /// Where a segment crosses the border of the sector.
    fn crossings(&self, from: Point, to: Point) -> Vec<Point> {
        let (start, end) = (self.own(from), self.own(to));
        let step = [end[0] - start[0], end[1] - start[1]];
        let mut shares: Vec<f64> = [0, 1].iter().map(|&axis| -start[axis] / step[axis]).collect();
        let a = step[0] * step[0] + step[1] * step[1];
        let b = start[0] * step[0] + start[1] * step[1];
        let c = start[0] * start[0] + start[1] * start[1] - self.radius * self.radius;
        let root = (b * b - a * c).sqrt();
        shares.extend([(-b - root) / a, (-b + root) / a]);
        let inside = shares.into_iter().filter(|share| (0.0..=1.0).contains(share));
        inside.map(|share| self.at(start[0] + share * step[0], start[1] + share * step[1])).collect()
    }
}
