//! Planes that fall to a trench drain: across the work, or along an edge of it.

use super::line::Laid;
use super::valley::{checked, two_sides};
use super::{BreakLine, WIDTH, around, facet, sides, strip};
use crate::failure::{Result, check};
use crate::grade::fall::FALL;
use crate::grade::finish::{Facing, Finish, HEIGHT};
use crate::quantity::{Elevation, Length, Slope, Typed};
use crate::survey::outline::Outline;

/// A trench drain across the work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineTrench {
    /// Its middle line, at the height of its rims.
    pub middle: BreakLine,
    /// How wide it is from rim to rim; it is level across.
    pub width: Length,
    /// The falls to it from the left and from the right, looking along the line.
    pub falls: [Slope; 2],
}

/// A trench drain along an edge of the work, inside it.
#[derive(Clone, Debug, PartialEq)]
pub struct EdgeTrench {
    /// The edge.
    pub edge: String,
    /// Height of the rims where the edge starts.
    pub elevation: Elevation,
    /// Height of the rims where it ends; the same where the trench is level.
    pub elevation_end: Elevation,
    /// How wide it is; it is level across.
    pub width: Length,
    /// The fall to it.
    pub fall: Slope,
}

impl Finish {
    /// Two planes that fall to a trench drain across the work.
    ///
    /// # Errors
    /// A line, a width or a fall that cannot be; `OFF_WORK`: a trench that does not cross the work.
    pub fn to_trench(outline: &Outline, trench: &LineTrench) -> Result<Self> {
        let line = trench.middle.laid("trench")?;
        let width = check("width", trench.width, WIDTH)?.base();
        let rises = checked(trench.falls)?;
        let facets = two_sides(outline, &line, width, rises, "trench")?.into_iter();
        let mut facets: Vec<_> = facets.map(|facet| facet.falling_to("trench")).collect();
        let (left, right) = (line.beside(0.5 * width), line.beside(-0.5 * width));
        let [_, inside] = sides(&around(outline), left.0, left.1);
        let [inside, _] = sides(&inside, right.0, right.1);
        if !inside.is_empty() {
            facets.push(facet(inside, line.plane(0.0, 0.0), "trench")?);
        }
        Self::faceted(facets)
    }

    /// One plane that falls to a trench drain along an edge.
    ///
    /// # Errors
    /// An unknown or bent edge, a height, a width or a fall that cannot be; `BEHIND_EDGE`: work behind the line of the edge.
    pub fn to_edge_trench(outline: &Outline, trench: &EdgeTrench) -> Result<Self> {
        let facing = Facing::edge(outline, &trench.edge)?;
        strip::refuse_behind(outline, &facing, &trench.edge)?;
        let start = check("elevation", trench.elevation, HEIGHT)?;
        let end = check("elevation_end", trench.elevation_end, HEIGHT)?;
        let width = check("width", trench.width, WIDTH)?.base();
        let fall = check("fall", trench.fall, FALL)?.base();
        // The edge runs as it was given, the work perhaps on its right.
        let runs = outline.edge(&trench.edge)?;
        let length: f64 = runs.iter().map(|run| run.length().base()).sum();
        let given = runs.first().map_or([0.0; 2], |run| {
            let (from, to) = (run.from().place(), run.to().place());
            [to.x - from.x, to.y - from.y]
        });
        let turned = given[0] * facing.along[0] + given[1] * facing.along[1] < 0.0;
        let rise = (end - start).base() / length * if turned { -1.0 } else { 1.0 };
        let line = Laid::new(facing.at, start, facing.along, rise, "elevation_end")?;
        let (from, to) = line.beside(width);
        let [floor, inside] = sides(&around(outline), from, to);
        if floor.is_empty() {
            return Err(strip::too_wide(trench.width));
        }
        let mut facets = vec![facet(floor, line.plane(width, fall), "floor")?.falling_to("trench")];
        if !inside.is_empty() {
            facets.push(facet(inside, line.plane(0.0, 0.0), "trench")?);
        }
        Self::faceted(facets)
    }
}
