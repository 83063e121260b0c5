//! All marks of a floor, in the order of walking.

use super::asked::Asked;
use super::breaks::{Segment, facet_edges};
use super::chalk_lines::{self, ChalkLine};
use super::diagonals::{Diagonal, diagonals};
use super::forms::materials;
use super::ground::Floor;
use super::levels::{Levels, Sight};
use super::mark::{Mark, Part};
use super::rails::along_rail;
use super::rips::{Material, Rip, RipAt, rips};
use super::stations::{along_edge, snapped};
use super::walk::{Edge, walk};
use super::words::RodDivision;
use super::{SAME, pads};
use crate::failure::Result;
use crate::geometry::{Point, RingId};
use crate::grade::finish::Finish;
use crate::quantity::{Length, Typed};
use crate::survey::Survey;

/// The marks along one edge.
#[derive(Clone, Debug, PartialEq)]
pub struct EdgeMarks {
    /// The edge.
    pub name: String,
    /// Which ring it bounds.
    pub ring: RingId,
    /// What stands there.
    pub material: Material,
    /// How long it is.
    pub length: Length,
    /// Whether the floor is level along it.
    pub level: bool,
    /// Its marks in order, the corner it starts from first.
    pub marks: Vec<Mark>,
    /// The corner it ends at: the first mark of the next edge, told along this one.
    pub end: Mark,
    /// What its strip or form is ripped to.
    pub rips: Vec<Rip>,
    /// The least height of the floor over the old slab along it.
    pub least: RipAt,
    /// The greatest.
    pub greatest: RipAt,
}

impl EdgeMarks {
    /// Its marks, the corner it ends at with them.
    pub fn with_end(&self) -> impl Iterator<Item = &Mark> {
        self.marks.iter().chain([&self.end])
    }
}

/// The marks along a screed rail.
#[derive(Clone, Debug, PartialEq)]
pub struct RailMarks {
    /// The rail.
    pub name: String,
    /// Its marks in order, from end to end.
    pub marks: Vec<Mark>,
}

/// Every mark of a floor.
#[derive(Clone, Debug, PartialEq)]
pub struct Marks {
    /// What heights are told against.
    pub levels: Levels,
    /// How heights are written.
    pub division: RodDivision,
    /// The marks along the edges: once round the outer ring with the work on the left, then round each hole.
    pub edges: Vec<EdgeMarks>,
    /// The wet pads, row by row, to and fro.
    pub pads: Vec<Mark>,
    /// The screed rails.
    pub rails: Vec<RailMarks>,
    /// Lines along which planes of the floor meet.
    pub lines: Vec<ChalkLine>,
    /// Lengths from corner to corner.
    pub diagonals: Vec<Diagonal>,
}

impl Marks {
    /// Sets out a finish over an old slab.
    ///
    /// # Errors
    /// - `OUT_OF_RANGE`, `NOT_FINITE`: a value that cannot be; paths as the ports of the row.
    /// - `PADS_TOO_FAR`: pads farther apart than the screed less 2 ft.
    /// - `POINT_OFF_WALL`: a named place farther than 6 in from every edge.
    /// - `EDGE_UNKNOWN`: an edge to start from, or one with a form, that the outline does not have.
    /// - `LINE_TOO_SHORT`, `RAIL_OUTSIDE`: a rail of one place; one that leaves the work.
    /// - `TOO_MANY_STATIONS`: spacings that nobody sets out.
    /// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
    pub fn set_out(survey: &Survey, finish: &Finish, asked: &Asked) -> Result<Self> {
        asked.check()?;
        let mut sights = asked.sights.clone();
        if sights.is_empty() {
            sights.extend(Sight::of(survey));
        }
        let levels = Levels { line: asked.line, sights, step: asked.step, rod_length: asked.rod_length };
        let division = RodDivision::of_step(asked.step);
        let place =
            Placing { survey, finish, asked, floor: Floor::new(survey, finish), facets: facet_edges(finish) };
        let mut number = Numbers(0);
        let edges = place.edges(&mut number)?;
        let region = survey.outline().region();
        let segments = chalk_lines::segments(finish, region);
        let mut pads = place.pads(division, &segments)?;
        number.give(&mut pads);
        let rails = place.rails(&mut number)?;
        let outer = edges.iter().filter(|edge| edge.ring == RingId::Outer).flat_map(|edge| &edge.marks);
        let diagonals = diagonals(&outer.collect::<Vec<_>>());
        let known = |at: Point| {
            let mut marks = edges.iter().flat_map(|edge| &edge.marks).chain(&pads);
            marks.find(|mark| mark.place().distance(at) <= SAME).map(|mark| mark.number)
        };
        let lines = chalk_lines::lines(&segments, &place.floor, known)?;
        Ok(Self { levels, division, edges, pads, rails, lines, diagonals })
    }

    /// Every mark with its list and the edge or rail it belongs to, by rising number.
    pub fn all(&self) -> impl Iterator<Item = (Part, &str, &Mark)> {
        let edges = self.edges.iter();
        let edges =
            edges.flat_map(|edge| edge.marks.iter().map(|mark| (Part::Edge, edge.name.as_str(), mark)));
        let pads = self.pads.iter().map(|pad| (Part::Pad, "", pad));
        let rails = self.rails.iter();
        let rails =
            rails.flat_map(|rail| rail.marks.iter().map(|mark| (Part::Rail, rail.name.as_str(), mark)));
        edges.chain(pads).chain(rails)
    }

    /// The rod on the reference line from the first set-up.
    #[must_use]
    pub fn rod_on_line(&self) -> Option<Length> {
        Some(self.levels.sights.first()?.height - self.levels.line?)
    }

    /// How far a mark may leave the floor as planned by rounding, at most: half a step; here the greatest there is, either way.
    #[must_use]
    pub fn greatest_departure(&self) -> Length {
        let told = self.all().flat_map(|(_, _, mark)| self.levels.told(mark.height));
        Length::from_base(told.map(|told| told.departure().base().abs()).fold(0.0, f64::max))
    }
}

/// What places marks.
struct Placing<'a> {
    survey: &'a Survey,
    finish: &'a Finish,
    asked: &'a Asked,
    floor: Floor<'a>,
    facets: Vec<Segment>,
}

impl Placing<'_> {
    fn edges(&self, number: &mut Numbers) -> Result<Vec<EdgeMarks>> {
        let (outline, asked) = (self.survey.outline(), self.asked);
        let walked = walk(outline, asked.start_edge.as_deref())?;
        let materials = materials(&walked, &asked.forms, outline)?;
        let points = snapped(&asked.points, outline.region())?;
        let mut edges = Vec::with_capacity(walked.len());
        for (edge, material) in walked.iter().zip(materials) {
            let (mut marks, profiles) = along_edge(edge, asked.spacing, &points, &self.facets, &self.floor)?;
            number.give(&mut marks);
            let rips = rips(edge, &profiles, &self.facets, &self.floor, asked.step)?;
            let length = Length::from_base(profiles.iter().map(|profile| profile.length).sum());
            // The corner it ends at is known once the next edge is.
            let Some(end) = marks.first().cloned() else { continue };
            edges.push(EdgeMarks {
                name: edge.name.clone(),
                ring: edge.ring,
                material,
                length,
                level: false,
                marks,
                end,
                rips: rips.pieces,
                least: rips.least,
                greatest: rips.greatest,
            });
        }
        close_rings(&mut edges, &walked);
        for edge in &mut edges {
            edge.level = is_level(edge);
        }
        Ok(edges)
    }

    fn pads(&self, division: RodDivision, segments: &[Segment]) -> Result<Vec<Mark>> {
        let region = self.survey.outline().region();
        let pads = pads::pads(region, &self.asked.pads, division, self.finish, segments)?;
        let mark = |(at, kind): (Point, _)| {
            let (height, old) = (self.floor.finish_at(at)?, self.floor.old_at(at)?);
            let mark = super::stations::mark(kind, None, 0.0, at, height, (old.height, old.ground));
            Ok(Mark { along: None, ..mark })
        };
        pads.into_iter().map(mark).collect()
    }

    fn rails(&self, number: &mut Numbers) -> Result<Vec<RailMarks>> {
        let asked = self.asked;
        let rail = |rail| {
            let mut marks = along_rail(rail, asked.spacing, asked.rail_offset, &self.facets, &self.floor)?;
            number.give(&mut marks);
            Ok(RailMarks { name: rail.name.trim().to_owned(), marks })
        };
        asked.rails.iter().map(rail).collect()
    }
}

/// Gives each edge the corner it ends at: where the next edge of its ring starts.
fn close_rings(edges: &mut [EdgeMarks], walked: &[Edge]) {
    let starts: Vec<(RingId, Mark)> =
        edges.iter().filter_map(|edge| Some((edge.ring, edge.marks.first()?.clone()))).collect();
    for (index, edge) in edges.iter_mut().enumerate().take(walked.len()) {
        let next = starts.get(index + 1).filter(|(ring, _)| *ring == edge.ring);
        let next = next.or_else(|| starts.iter().find(|(ring, _)| *ring == edge.ring));
        if let Some((_, corner)) = next {
            edge.end = Mark { along: Some(edge.length), ..corner.clone() };
        }
    }
}

/// Whether the floor has one height along an edge: between marks it is straight.
fn is_level(edge: &EdgeMarks) -> bool {
    let heights = edge.with_end().map(|mark| mark.height.base());
    let (low, high) = heights
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), height| (low.min(height), high.max(height)));
    high - low <= SAME
}

/// The numbers of marks, from 1 on.
struct Numbers(usize);

impl Numbers {
    fn give(&mut self, marks: &mut [Mark]) {
        for mark in marks {
            self.0 += 1;
            mark.number = self.0;
        }
    }
}
