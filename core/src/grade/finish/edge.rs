//! A fall square to an edge of the outline: the edge is a level line, the water goes over it.

use super::{Finish, HEIGHT};
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, Point};
use crate::grade::fall::FALL;
use crate::quantity::{Elevation, Slope, Typed};
use crate::survey::outline::Outline;

/// An edge and the way into the work, square to it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Facing {
    /// A corner of the edge.
    pub at: Point,
    /// Unit vector along the edge, the work on its left.
    pub along: [f64; 2],
}

/// How far the runs of one edge may turn and still be one line: about 0.6 degrees.
const STRAIGHT: f64 = 0.01;

impl Facing {
    /// The edge of that name, which must be straight.
    ///
    /// # Errors
    /// `EDGE_UNKNOWN`; `FINISH_UNDETERMINED` where the edge has a bend.
    pub fn edge(outline: &Outline, name: &str) -> Result<Self> {
        let runs = outline.edge(name).map_err(|failure| failure.under("edge"))?;
        let (Some(first), Some(last)) = (runs.first(), runs.last()) else {
            return Err(Failure::new(Code::EdgeUnknown, "edge")
                .written(name)
                .remedy("use a name of the outline"));
        };
        let (start, end) = (first.from().place(), last.to().place());
        let length = start.distance(end);
        let along = [(end.x - start.x) / length, (end.y - start.y) / length];
        let bent = runs.iter().any(|run| {
            let (from, to) = (run.from().place(), run.to().place());
            let off = (along[0] * (to.y - from.y) - along[1] * (to.x - from.x)).abs();
            off > STRAIGHT * from.distance(to)
        });
        if length <= 0.0 || bent {
            return Err(Failure::new(Code::FinishUndetermined, "edge")
                .written(format!("\"{name}\" has a bend"))
                .allowed("a straight edge")
                .remedy("name one straight run, or give the finish by three points"));
        }
        // The outline may be given either way round; the region holds its runs with the work on their left.
        let held = outline.region().runs().find(|run| run.id == first.id());
        let turned = held.is_some_and(|held| held.from == first.to().place());
        let sign = if turned { -1.0 } else { 1.0 };
        Ok(Self { at: start, along: [sign * along[0], sign * along[1]] })
    }

    /// The plane that rises by `fall` into the work from `height` at the edge.
    pub(super) fn plane(&self, height: f64, fall: f64) -> Plane {
        Plane::about(self.at, height, -self.along[1] * fall, self.along[0] * fall)
    }

    /// How far into the work a place lies from the line of the edge.
    #[must_use]
    pub fn inward(&self, place: Point) -> f64 {
        (place.y - self.at.y) * self.along[0] - (place.x - self.at.x) * self.along[1]
    }
}

impl Finish {
    /// The plane that stands at `elevation` along an edge and falls to it by `fall`.
    ///
    /// # Errors
    /// An unknown or bent edge, an elevation or a fall outside its range.
    pub fn to_edge(outline: &Outline, edge: &str, elevation: Elevation, fall: Slope) -> Result<Self> {
        let facing = Facing::edge(outline, edge)?;
        let height = check("elevation", elevation, HEIGHT)?.base();
        let fall = check("fall", fall, FALL)?.base();
        Ok(Self::plane_of(facing.plane(height, fall)))
    }
}
