//! The straight joints around a zone: the sides of its bounding box inside the work.

use crate::geometry::{Point, Region, Sum};
use crate::grade::thickness_shapes::Shape;
use crate::quantity::{Length, Typed};
use crate::survey::outline::Corner;

/// A rectangle in plan, along the axes of the job.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PlanBox {
    /// Its corner at the left and front.
    pub from: Corner,
    /// Its corner at the right and back.
    pub to: Corner,
}

/// A side this near to a run of the outline lies on it, in metres.
const ON_RUN: f64 = 1e-6;

impl PlanBox {
    /// The least one around a shape.
    pub(super) fn around(shape: &Shape) -> Self {
        let nowhere =
            [Point::new(f64::INFINITY, f64::INFINITY), Point::new(f64::NEG_INFINITY, f64::NEG_INFINITY)];
        let [low, high] = shape.outer.iter().map(|corner| corner.place()).fold(nowhere, |[low, high], at| {
            [Point::new(low.x.min(at.x), low.y.min(at.y)), Point::new(high.x.max(at.x), high.y.max(at.y))]
        });
        let corner = |at: Point| Corner::new(Length::from_base(at.x), Length::from_base(at.y));
        Self { from: corner(low), to: corner(high) }
    }

    /// Its corners, counter-clockwise.
    pub(super) fn corners(&self) -> [Point; 4] {
        let (low, high) = (self.from.place(), self.to.place());
        [low, Point::new(high.x, low.y), high, Point::new(low.x, high.y)]
    }

    /// Whether two boxes share area.
    pub(super) fn overlaps(&self, other: &Self) -> bool {
        let (a, b) = ([self.from.place(), self.to.place()], [other.from.place(), other.to.place()]);
        let apart = |low: f64, high: f64| high - low <= ON_RUN;
        !apart(a[0].x.max(b[0].x), a[1].x.min(b[1].x)) && !apart(a[0].y.max(b[0].y), a[1].y.min(b[1].y))
    }

    /// The length of its sides inside a region, and whether some of them are not: where the region's edge bounds it.
    pub(super) fn joint(&self, region: &Region) -> (Length, bool) {
        let [a, b, c, d] = self.corners();
        let sides = [[a, b], [b, c], [c, d], [d, a]];
        let whole = sides.iter().map(|[from, to]| from.distance(*to)).collect::<Sum>().value();
        let inside = sides.iter().map(|&side| inside(side, region)).collect::<Sum>().value();
        (Length::from_base(inside), inside < whole - 4.0 * ON_RUN)
    }
}

/// The length of a straight side inside a region; what lies on its edge is not inside.
fn inside([from, to]: [Point; 2], region: &Region) -> f64 {
    let length = from.distance(to);
    if length <= ON_RUN {
        return 0.0;
    }
    let along = Point::new((to.x - from.x) / length, (to.y - from.y) / length);
    let station = |at: Point| (at.x - from.x) * along.x + (at.y - from.y) * along.y;
    let left = |at: Point| (at.y - from.y) * along.x - (at.x - from.x) * along.y;
    let mut stations = vec![0.0, length];
    for run in region.runs() {
        let ends = [run.from, run.to];
        stations.extend(ends.iter().filter(|&&end| left(end).abs() <= ON_RUN).map(|&end| station(end)));
        let [before, behind] = ends.map(left);
        if before * behind < 0.0 {
            stations.push(station(run.at(before / (before - behind))));
        }
    }
    stations.iter_mut().for_each(|station| *station = station.clamp(0.0, length));
    stations.sort_unstable_by(f64::total_cmp);
    let pieces = stations.windows(2).filter(|piece| {
        let middle = 0.5 * (piece[0] + piece[1]);
        let middle = Point::new(from.x + middle * along.x, from.y + middle * along.y);
        region.contains(middle) && region.nearest_run(middle).distance > ON_RUN
    });
    pieces.map(|piece| piece[1] - piece[0]).collect::<Sum>().value()
}
