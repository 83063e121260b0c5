//! Keys along an edge of the work, from both surfaces.

use super::{Cut, HAIR, KeySection, LEAST};
use crate::failure::{Code, Failure, Place, Result, check};
use crate::geometry::{Point, Region, Sum};
use crate::grade::finish::Finish;
use crate::grade::sections::{Facet, PLACE, stretches};
use crate::overlay::thickness::SLAB;
use crate::quantity::{Area, Length, Typed, Volume, feet_and_inches};
use crate::survey::Survey;
use crate::survey::outline::Corner;
use crate::survey::surface::Locator;

/// A place so near to an edge of the outline is on it, as for shots: 1/2 in.
pub(super) const ON_EDGE: f64 = 0.0127;
/// A line runs along an edge where the cosine of the angle between them is at least this.
const ALONG: f64 = 0.99;
/// Sections stand at most so far apart along the edge: 3 ft.
const APART: f64 = 0.9144;
/// Lines run so far inside the edge, in metres: exactly on it rounding might put them outside the work.
const INSIDE: f64 = 1.0e-6;
/// Stretches with less than this between them meet, in metres.
const MEET: f64 = 1.0e-5;

/// A key along a stretch of an edge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KeyCut {
    /// Where it starts, along the line.
    pub from: Length,
    /// Where it ends; where it starts, for a lone place.
    pub to: Length,
    /// The place where it starts.
    pub start: Corner,
    /// The place where it ends.
    pub end: Corner,
    /// How deep the saw goes where the overlay is thinnest along the edge.
    pub depth: Length,
    /// How deep the key is where it is deepest.
    pub deepest: Length,
    /// How far back it goes at most.
    pub width: Length,
    /// The area that is chipped, between the sections.
    pub area: Area,
    /// The old concrete that comes out, and the new that goes in.
    pub volume: Volume,
    /// Whether it runs out somewhere before the floor ends: if not, the floor is too thin all the way across.
    pub runs_out: bool,
    /// What is done.
    pub cut: Cut,
}

/// The keys along a line of places on the edge of the work, in order; of a lone place the key there.
///
/// Where the overlay is thinner than its least is exact along the edge. How far back a key goes is exact in sections square to the edge: at
/// both ends of each thin stretch, where a surface bends along it, and no more than 3 ft apart; areas and volumes between them by
/// Simpson's rule, exact over planes.
///
/// # Errors
/// - `EMPTY_LIST`: no place. Path: `line`.
/// - `LINE_NOT_ON_EDGE`: a place, or the line between two, more than 1/2 in off the edge of the work. Path: `line`.
/// - `FACETS_LEAVE_HOLE`: a finish that does not cover the work.
/// - A value outside its range.
pub fn key_cuts(
    survey: &Survey,
    finish: &Finish,
    line: &[Corner],
    least: Length,
    old_slab: Option<Length>,
) -> Result<Vec<KeyCut>> {
    let mut cuts = key_cuts_along(survey, finish, &[line], least, old_slab)?;
    Ok(cuts.pop().unwrap_or_default())
}

/// The same along several lines, which costs less than one by one: both surfaces are laid over one another once.
///
/// # Errors
/// As [`key_cuts`].
pub fn key_cuts_along(
    survey: &Survey,
    finish: &Finish,
    lines: &[&[Corner]],
    least: Length,
    old_slab: Option<Length>,
) -> Result<Vec<Vec<KeyCut>>> {
    check("least", least, LEAST)?;
    old_slab.map(|old| check("old_slab", old, SLAB)).transpose()?;
    let laid = finish.laid_over(survey.surface())?;
    let facets = laid.parts().iter();
    let facets = facets.map(|part| Facet { ground: Locator::new(&part.ground), finish: part.plane });
    let work = Work { facets: facets.collect(), region: survey.surface().region(), least, old_slab };
    lines.iter().map(|line| work.along(line)).collect()
}

/// Both surfaces, and what is asked of them.
struct Work<'a> {
    facets: Vec<Facet<'a>>,
    region: &'a Region,
    least: Length,
    old_slab: Option<Length>,
}

/// A straight piece of the edge of the work.
#[derive(Clone, Copy)]
struct Edge {
    from: Point,
    to: Point,
    /// One metre along it and one into the work.
    ahead: Point,
    inward: Point,
    /// How long the line is before it.
    done: f64,
}

impl Edge {
    fn length(&self) -> f64 {
        self.from.distance(self.to)
    }

    fn at(&self, along: f64, inward: f64) -> Point {
        let x = self.from.x + along * self.ahead.x + inward * self.inward.x;
        let y = self.from.y + along * self.ahead.y + inward * self.inward.y;
        Point::new(x, y)
    }
}

impl Work<'_> {
    fn along(&self, line: &[Corner]) -> Result<Vec<KeyCut>> {
        let mut places = Vec::with_capacity(line.len());
        for (index, corner) in line.iter().enumerate() {
            places.push(self.on_edge(index, *corner)?);
        }
        if let [place] = *places.as_slice() {
            return Ok(self.at(place).into_iter().collect());
        }
        let (mut cuts, mut done) = (Vec::new(), 0.0);
        for (index, pair) in places.windows(2).enumerate() {
            if pair[0].distance(pair[1]) <= MEET {
                continue;
            }
            let edge = self.edge(index, pair[0], pair[1], done)?;
            done += edge.length();
            cuts.extend(self.thin(&edge).into_iter().map(|stretch| self.cut(&edge, stretch)));
        }
        if places.is_empty() { Err(nothing()) } else { Ok(cuts) }
    }

    /// The place of the edge nearest to a corner on it.
    fn on_edge(&self, index: usize, corner: Corner) -> Result<Point> {
        for (path, value) in [("line.x", corner.x), ("line.y", corner.y)] {
            check(path, value, PLACE).map_err(|failure| failure.at(Place::Index(index)))?;
        }
        let nearest = self.region.nearest_run(corner.place());
        if nearest.distance <= ON_EDGE { Ok(nearest.at) } else { Err(off(index, corner.place())) }
    }

    fn edge(&self, index: usize, from: Point, to: Point, done: f64) -> Result<Edge> {
        let middle = Point::new(0.5 * (from.x + to.x), 0.5 * (from.y + to.y));
        let nearest = self.region.nearest_run(middle);
        if nearest.distance > ON_EDGE {
            return Err(off(index, middle));
        }
        let length = from.distance(to);
        let ahead = Point::new((to.x - from.x) / length, (to.y - from.y) / length);
        let left = Point::new(-ahead.y, ahead.x);
        // The work lies on the left of a run.
        let run = self.region.runs().find(|run| run.id == nearest.run).ok_or_else(|| off(index, middle))?;
        let along = run.from.distance(run.to);
        let with = ((run.to.x - run.from.x) * ahead.x + (run.to.y - run.from.y) * ahead.y) / along;
        if with.abs() < ALONG {
            return Err(off(index, middle));
        }
        let inward = if with > 0.0 { left } else { Point::new(-left.x, -left.y) };
        Ok(Edge { from, to, ahead, inward, done })
    }

    /// The stretches of an edge over which the overlay is too thin, each with where it bends: distances along the edge and what is lacking.
    fn thin(&self, edge: &Edge) -> Vec<Vec<(f64, f64)>> {
        let mut thin: Vec<Vec<(f64, f64)>> = Vec::new();
        for stretch in stretches(&self.facets, edge.at(0.0, INSIDE), edge.at(edge.length(), INSIDE)) {
            let ends = [(stretch.from, 0), (stretch.to, 1)]
                .map(|(along, end)| (along, self.least.base() - (stretch.finish[end] - stretch.old[end])));
            let Some(piece) = lacking(ends) else { continue };
            match thin.last_mut().filter(|open| open.last().is_some_and(|last| piece[0].0 - last.0 <= MEET)) {
                Some(open) => open.extend(piece),
                None => thin.push(piece.to_vec()),
            }
        }
        let long = |stretch: &[(f64, f64)]| matches!(stretch, [from, .., to] if to.0 - from.0 > MEET);
        thin.retain(|stretch| long(stretch));
        thin
    }

    fn cut(&self, edge: &Edge, stretch: Vec<(f64, f64)>) -> KeyCut {
        let (from, to) = (stretch.first().map_or(0.0, |end| end.0), stretch.last().map_or(0.0, |end| end.0));
        let places = spread(&stretch);
        let square: Vec<KeySection> =
            places.iter().map(|along| self.square(edge, *along).unwrap_or_default()).collect();
        let (mut area, mut volume) = (Sum::default(), Sum::default());
        for (ends, between) in places.windows(2).step_by(2).zip(square.windows(3).step_by(2)) {
            // Simpson's rule over two equal halves.
            let third = (ends[1] - ends[0]) / 3.0;
            let mean = |of: fn(&KeySection) -> f64| of(&between[0]) + 4.0 * of(&between[1]) + of(&between[2]);
            area.add(third * mean(|section| section.width.base()));
            volume.add(third * mean(|section| section.area.base()));
        }
        let most = |of: fn(&KeySection) -> Length| square.iter().map(|s| of(s).base()).fold(0.0, f64::max);
        let depth = stretch.iter().map(|(_, lack)| *lack).fold(0.0, f64::max);
        let deepest = Length::from_base(most(|section| section.deepest).max(depth));
        let corner = |along: f64| place(edge.at(along, 0.0));
        KeyCut {
            from: Length::from_base(edge.done + from),
            to: Length::from_base(edge.done + to),
            start: corner(from),
            end: corner(to),
            depth: Length::from_base(depth),
            deepest,
            width: Length::from_base(most(|section| section.width)),
            area: Area::from_base(area.value()),
            volume: Volume::from_base(volume.value()),
            runs_out: square
                .iter()
                .any(|section| section.depth_at_back.base() <= 0.0 && section.width.base() > 0.0),
            cut: super::cut(deepest, self.old_slab),
        }
    }

    /// The key at a lone place: its section, and no length.
    fn at(&self, place: Point) -> Option<KeyCut> {
        let run = self.region.nearest_run(place).run;
        let run = self.region.runs().find(|known| known.id == run)?;
        let edge = self.edge(0, run.from, run.to, 0.0).ok()?;
        let along = edge.from.distance(place);
        let section = self.square(&edge, along).filter(|section| section.depth.base() > 0.0)?;
        let at = self::place(place);
        Some(KeyCut {
            from: Length::from_base(0.0),
            to: Length::from_base(0.0),
            start: at,
            end: at,
            depth: section.depth,
            deepest: section.deepest,
            width: section.width,
            area: Area::from_base(0.0),
            volume: Volume::from_base(0.0),
            runs_out: section.depth_at_back.base() <= 0.0,
            cut: section.cut(self.old_slab),
        })
    }

    /// The section of the key square to the edge there; none where the work ends at once.
    fn square(&self, edge: &Edge, along: f64) -> Option<KeySection> {
        // At a corner the section would run on the next edge.
        let along = along.clamp(INSIDE.min(edge.length()), (edge.length() - INSIDE).max(0.0));
        let far = self.region.runs().map(|run| run.from.distance(edge.from)).fold(0.0, f64::max);
        let from = edge.at(along, INSIDE);
        let mut profile: Vec<(f64, f64)> = Vec::new();
        for stretch in stretches(&self.facets, from, edge.at(along, INSIDE + 2.0 * far + 1.0)) {
            if stretch.from - profile.last().map_or(0.0, |last| last.0) > MEET {
                break;
            }
            let ends = [(stretch.from, 0), (stretch.to, 1)];
            profile.extend(ends.map(|(at, end)| (at, stretch.finish[end] - stretch.old[end])));
        }
        (!profile.is_empty()).then(|| KeySection::under(self.least, profile))
    }
}

fn place(at: Point) -> Corner {
    Corner::new(Length::from_base(at.x), Length::from_base(at.y))
}

/// The part of a straight stretch over which something is lacking.
fn lacking([from, to]: [(f64, f64); 2]) -> Option<[(f64, f64); 2]> {
    let crossing = || {
        let along = from.0 + (to.0 - from.0) * from.1 / (from.1 - to.1);
        (along, 0.0)
    };
    match (from.1 > HAIR, to.1 > HAIR) {
        (false, false) => None,
        (true, true) => Some([from, to]),
        (true, false) => Some([from, if to.1 < 0.0 { crossing() } else { to }]),
        (false, true) => Some([if from.1 < 0.0 { crossing() } else { from }, to]),
    }
}

/// Where sections stand: at the bends of a stretch, no farther apart than is allowed, and halfway between each two.
fn spread(stretch: &[(f64, f64)]) -> Vec<f64> {
    let mut places: Vec<f64> = Vec::new();
    for pair in stretch.windows(2) {
        let (from, to) = (pair[0].0, pair[1].0);
        if to - from <= MEET {
            continue;
        }
        let parts = 2.0 * ((to - from) / APART).ceil();
        let mut part = if places.is_empty() { 0.0 } else { 1.0 };
        while part <= parts {
            places.push(from + (to - from) * part / parts);
            part += 1.0;
        }
    }
    places
}

fn nothing() -> Box<Failure> {
    Failure::new(Code::EmptyList, "line")
        .written("no places")
        .allowed("at least one place on an edge of the work")
        .remedy("say where the edge is")
}

fn off(index: usize, at: Point) -> Box<Failure> {
    let say = |metres: f64| feet_and_inches(Length::from_base(metres), 8);
    Failure::new(Code::LineNotOnEdge, "line")
        .at(Place::Index(index))
        .written(format!("{} from the left, {} from the front", say(at.x), say(at.y)))
        .allowed("a line along an edge of the work, within 1/2 in")
        .remedy("take the places from the outline, with every corner between them")
}
