//! Why corners bound no region, in the words of the crew: names of runs, places in feet and inches and in metres.

use super::{Hole, Run};
use crate::failure::{Code, Failure, Place};
use crate::geometry::{Point, RegionError, RingId, RunId};
use crate::quantity::{Length, Typed};
use crate::survey::words::both;

/// The failure for a region that cannot be.
pub(super) fn region_refusal(error: &RegionError, runs: &[Run], holes: &[Hole]) -> Box<Failure> {
    let names = Names { runs, holes };
    match *error {
        RegionError::TooFewCorners { ring, corners } => names.too_few(ring, &format!("{corners} corners")),
        RegionError::NoArea { ring } => names.too_few(ring, "all corners on one line"),
        RegionError::NotFinite { ring, corner, x, y, limit } => far_away(ring, corner, [x, y], limit),
        RegionError::RepeatedCorner { ring, first, second, at } => names.repeated(ring, first, second, at),
        RegionError::Crossing { first, second, at } => names.crossing(first, second, at),
        RegionError::HoleOutside { hole, distance } => {
            let off = both(Length::from_base(distance));
            names.hole(hole, &format!("its first corner is {off} outside the outline"))
        }
        RegionError::HoleInHole { inner, outer } => {
            names.hole(inner, &format!("it lies inside `{}`", names.hole_name(outer)))
        }
    }
}

struct Names<'a> {
    runs: &'a [Run],
    holes: &'a [Hole],
}

impl Names<'_> {
    fn too_few(&self, ring: RingId, what: &str) -> Box<Failure> {
        Failure::new(Code::OutlineTooFew, path(ring))
            .written(format!("{}: {what}", self.ring_name(ring)))
            .allowed("at least 3 corners that are not on one line")
            .remedy("give every corner in order round the edge")
    }

    fn repeated(&self, ring: RingId, first: usize, second: usize, at: Point) -> Box<Failure> {
        let count = self.runs.iter().filter(|run| run.id().ring == ring).count();
        let remedy = if first == 0 && second + 1 == count {
            "leave the last corner out: the edge closes by itself"
        } else {
            "strike one of the two out, or measure it again"
        };
        Failure::new(Code::OutlineCrosses, path(ring))
            .at(Place::Index(second))
            .written(format!("corners {} and {} are both at {}", first + 1, second + 1, place(at)))
            .allowed("each corner once")
            .remedy(remedy)
    }

    fn crossing(&self, first: RunId, second: RunId, at: Point) -> Box<Failure> {
        let written = format!("`{}` meets `{}` at {}", self.run(first), self.run(second), place(at));
        // Where two rings meet, the hole is at fault; of two holes the later one.
        let (code, fault) = match (first.ring, second.ring) {
            (a, b) if a == b => (Code::OutlineCrosses, second),
            (RingId::Outer, _) => (Code::HoleOutside, second),
            (_, RingId::Outer) => (Code::HoleOutside, first),
            (a, b) => (Code::HoleOutside, if a > b { first } else { second }),
        };
        let (allowed, remedy) = match code {
            Code::OutlineCrosses => (
                "runs that meet only where one ends and the next begins",
                "check the order of the corners and the coordinates",
            ),
            _ => (
                "a hole inside the outline, touching neither it nor another hole",
                "check the hole's corners; a notch in the edge belongs to the outline, and holes that touch are one hole",
            ),
        };
        Failure::new(code, path(fault.ring))
            .at(Place::Index(fault.index))
            .written(written)
            .allowed(allowed)
            .remedy(remedy)
    }

    fn hole(&self, hole: usize, what: &str) -> Box<Failure> {
        Failure::new(Code::HoleOutside, format!("holes[{hole}]"))
            .at(Place::Index(hole))
            .written(format!("`{}`: {what}", self.hole_name(hole)))
            .allowed("a hole inside the outline and outside every other hole")
            .remedy("check the hole's corners, or leave the hole out")
    }

    fn hole_name(&self, hole: usize) -> &str {
        self.holes.get(hole).map_or("", |hole| hole.name.trim())
    }

    fn ring_name(&self, ring: RingId) -> String {
        match ring {
            RingId::Outer => "the outline".to_owned(),
            RingId::Hole(hole) => format!("`{}`", self.hole_name(hole)),
        }
    }

    fn run(&self, id: RunId) -> &str {
        self.runs.iter().find(|run| run.id() == id).map_or("", Run::name)
    }
}

fn far_away(ring: RingId, corner: usize, [x, y]: [f64; 2], limit: f64) -> Box<Failure> {
    let code = if x.is_finite() && y.is_finite() { Code::OutOfRange } else { Code::NotFinite };
    let limit = both(Length::from_base(limit));
    Failure::new(code, format!("{}[{corner}]", path(ring)))
        .at(Place::Index(corner))
        .written(format!("x {x} m, y {y} m"))
        .allowed(format!("finite numbers, at most {limit} from the origin"))
        .remedy("measure from a corner of the work")
}

/// Where the corners of a ring stand.
fn path(ring: RingId) -> String {
    match ring {
        RingId::Outer => "corners".to_owned(),
        RingId::Hole(hole) => format!("holes[{hole}].corners"),
    }
}

fn place(at: Point) -> String {
    format!("x {}, y {}", both(Length::from_base(at.x)), both(Length::from_base(at.y)))
}
