//! A strip along an edge with a fall of its own, such as a curb or an apron.

use super::{WIDTH, around, facet, sides, stepped, told_apart};
use crate::choice;
use crate::failure::{Code, Failure, Result, check};
use crate::geometry::{Plane, Point};
use crate::grade::fall::FALL;
use crate::grade::finish::{Facet, Facing, Finish};
use crate::quantity::{Length, Slope, Typed, feet_and_inches};
use crate::survey::outline::Outline;
use crate::survey::words::both;

choice! {
    /// Which way a strip falls.
    pub enum Toward {
        /// From the floor down to the edge, as an apron.
        Edge = "edge",
        /// From the edge down to the floor, as a curb.
        Floor = "floor",
    }
}

/// A strip along an edge.
#[derive(Clone, Debug, PartialEq)]
pub struct Strip {
    /// The edge.
    pub edge: String,
    /// How wide it is.
    pub width: Length,
    /// Its fall, square to the edge.
    pub fall: Slope,
    /// Which way it falls.
    pub toward: Toward,
}

/// Work behind the line of an edge counts from here on: 1/2 in, within which a shot lies on a run.
const BEHIND: f64 = 0.5 * 0.0254;

impl Finish {
    /// The same finish with a strip along an edge that meets it. The strip takes everything within its width of the line of the
    /// edge; where it passes from one facet to the next it is parted square to the edge, so that its parts meet too.
    ///
    /// # Errors
    /// An unknown or bent edge, a width or a fall that cannot be; `BEHIND_EDGE`: work behind the line of the edge, where the strip
    /// would end in a step; `OUT_OF_RANGE`: a strip as wide as the work.
    pub fn with_strip(&self, outline: &Outline, strip: &Strip) -> Result<Self> {
        let facing = Facing::edge(outline, &strip.edge)?;
        refuse_behind(outline, &facing, &strip.edge)?;
        let width = check("width", strip.width, WIDTH)?.base();
        let fall = check("fall", strip.fall, FALL)?.base();
        let rise = if strip.toward == Toward::Edge { fall } else { -fall };
        let line = InnerLine { at: stepped(facing.at, inward(&facing), width), facing };
        let work = around(outline);
        let [floor, band] = sides(&work, line.at, line.end());
        if floor.is_empty() || band.is_empty() {
            return Err(too_wide(strip.width));
        }
        let main = self.pieces(&work)?;
        let mut facets = Vec::new();
        let mut along: Vec<(f64, f64, Plane)> = Vec::new();
        for (piece, like) in main {
            let [kept, _] = sides(&piece, line.at, line.end());
            if kept.is_empty() {
                continue;
            }
            if let Some((from, to)) = line.stretch(&kept) {
                along.push((from, to, line.strip(like.plane(), rise)));
            }
            let outlet = like.falls_to().unwrap_or_default().to_owned();
            facets.push(facet(kept, *like.plane(), like.name().unwrap_or_default())?.falling_to(outlet));
        }
        facets.extend(line.bands(&band, along, strip)?);
        Self::faceted(told_apart(facets))
    }

    /// The finish as convex polygons, each with the facet it is of; one plane covers the whole work.
    fn pieces(&self, work: &[Point]) -> Result<Vec<(Vec<Point>, Facet)>> {
        if let Some(plane) = self.plane() {
            return Ok(vec![(work.to_vec(), facet(work.to_vec(), *plane, "floor")?)]);
        }
        let mut pieces = Vec::new();
        for (number, of) in self.facets().iter().enumerate() {
            let parts: Vec<&[Point]> = of.region().parts().iter().collect();
            for (part, corners) in parts.iter().enumerate() {
                let name = self.facet_name(number);
                let name = if parts.len() > 1 { format!("{name} part {}", part + 1) } else { name };
                pieces.push((corners.to_vec(), of.clone().named(name)));
            }
        }
        Ok(pieces)
    }
}

/// The line between a strip and the floor.
struct InnerLine {
    at: Point,
    facing: Facing,
}

impl InnerLine {
    fn end(&self) -> Point {
        stepped(self.at, self.facing.along, 1.0)
    }

    /// How far along the line a place is.
    fn along(&self, place: Point) -> f64 {
        (place.x - self.at.x) * self.facing.along[0] + (place.y - self.at.y) * self.facing.along[1]
    }

    /// The stretch of the line that a polygon beside it touches.
    fn stretch(&self, polygon: &[Point]) -> Option<(f64, f64)> {
        let width = self.facing.inward(self.at);
        let on_line = polygon.iter().filter(|place| (self.facing.inward(**place) - width).abs() < 1e-9);
        let (from, to) = on_line
            .map(|place| self.along(*place))
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(from, to), at| (from.min(at), to.max(at)));
        (to - from > 1e-9).then_some((from, to))
    }

    /// The plane of the strip beside a plane of the floor: the same along the line, its own fall across.
    fn strip(&self, floor: &Plane, rise: f64) -> Plane {
        let (along, inward) = (self.facing.along, inward(&self.facing));
        let lengthwise = floor.b() * along[0] + floor.c() * along[1];
        let slope = |axis: usize| lengthwise * along[axis] + rise * inward[axis];
        Plane::about(self.at, floor.height_at(self.at), slope(0), slope(1))
    }

    /// The band beside the line, parted square to it where the floor passes from one facet to the next.
    fn bands(&self, band: &[Point], mut along: Vec<(f64, f64, Plane)>, strip: &Strip) -> Result<Vec<Facet>> {
        along.sort_by(|a, b| a.0.total_cmp(&b.0));
        let (count, mut rest, mut facets) = (along.len(), band.to_vec(), Vec::new());
        for (number, (_, to, plane)) in along.into_iter().enumerate() {
            let name = if count > 1 {
                format!("{} strip {}", strip.edge, number + 1)
            } else {
                format!("{} strip", strip.edge)
            };
            let mut own = std::mem::take(&mut rest);
            if number + 1 < count {
                let at = stepped(self.at, self.facing.along, to);
                [own, rest] = sides(&own, at, stepped(at, inward(&self.facing), 1.0));
            }
            if own.is_empty() {
                continue;
            }
            let made = facet(own, plane, &name)?;
            let to_edge = strip.toward == Toward::Edge;
            facets.push(if to_edge { made.falling_to(strip.edge.clone()) } else { made.falling_to("floor") });
        }
        Ok(facets)
    }
}

fn inward(facing: &Facing) -> [f64; 2] {
    [-facing.along[1], facing.along[0]]
}

/// Refuses work behind the line of an edge.
pub(super) fn refuse_behind(outline: &Outline, facing: &Facing, edge: &str) -> Result<()> {
    let corners = outline.corners().iter().map(|corner| facing.inward(corner.place()));
    let behind = -corners.fold(f64::INFINITY, f64::min);
    if behind <= BEHIND {
        return Ok(());
    }
    Err(Failure::new(Code::BehindEdge, "edge")
        .written(format!("the work reaches {} behind \"{edge}\"", both(Length::from_base(behind))))
        .allowed("an edge with the whole work on one side of its line")
        .remedy("give the facets by their corners"))
}

pub(super) fn too_wide(width: Length) -> Box<Failure> {
    Failure::new(Code::OutOfRange, "width")
        .written(feet_and_inches(width, 8))
        .allowed("more than nothing, less than the work")
        .remedy("check the width and its unit")
}
