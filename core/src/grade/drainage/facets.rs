//! How each facet drains.

use super::asked::Asked;
use super::pieces::Piece;
use super::puddle::depth_on;
use super::toward::toward;
use super::walk::Water;
use crate::basis::BasisId;
use crate::choice;
use crate::geometry::Point;
use crate::grade::finish::Finish;
use crate::judged::Judged;
use crate::quantity::{Area, Length, Slope, Typed};
use crate::survey::outline::Outline;

choice! {
    /// Where the water of a facet, or of a part of one, goes.
    pub enum Course {
        /// All of it to outlets, and to the one it is said to fall to.
        Out = "to an outlet",
        /// Away from what it is said to fall to.
        WrongWay = "wrong way",
        /// Some of it ends where there is no outlet.
        Held = "held",
        /// Nowhere: the facet is level, and no drain is in it.
        Level = "level",
    }
}

choice! {
    /// What is wrong with a part of the finish.
    pub enum Fault {
        /// It falls less than it should.
        TooLittle = "too little",
        /// It falls away from what it is said to fall to.
        WrongWay = "wrong way",
        /// Its water ends where there is no outlet.
        Held = "held",
        /// It is level.
        Level = "level",
    }
}

/// How one facet drains, or the one plane.
#[derive(Clone, Debug, PartialEq)]
pub struct FacetFall {
    /// Its number, the first being 0.
    pub facet: usize,
    /// Its name; none for one plane.
    pub name: Option<String>,
    /// Its area within the work.
    pub area: Area,
    /// Its steepest fall.
    pub fall: Slope,
    /// The unit vector downhill; none where it is level.
    pub down: Option<[f64; 2]>,
    /// The direction in words.
    pub toward: String,
    /// Where most of its water ends: its place among the endings.
    pub ending: usize,
    /// Where its water goes.
    pub course: Course,
    /// Whether it falls enough, the right way, to an outlet.
    pub judged: Judged,
    /// Where the least fall comes from.
    pub basis: BasisId,
    /// How deep the stated wave can hold water on it.
    pub puddle: Length,
}

/// A least fall is met within this share of it.
const MET: f64 = 1e-9;

impl FacetFall {
    /// Whether it is the level rim of a drain, which no fall is asked of.
    #[must_use]
    pub fn is_rim(&self) -> bool {
        self.down.is_none() && self.course == Course::Out
    }

    /// What is wrong with a piece of it that drains to an ending.
    pub(super) fn fault(&self, outlet: bool, least: Slope) -> Option<Fault> {
        match self.course {
            Course::Level => Some(Fault::Level),
            Course::WrongWay => Some(Fault::WrongWay),
            _ if !outlet => Some(Fault::Held),
            _ if !self.is_rim() && !meets(self.fall, least) => Some(Fault::TooLittle),
            _ => None,
        }
    }
}

fn meets(fall: Slope, least: Slope) -> bool {
    fall.base() >= least.base() * (1.0 - MET)
}

/// Every facet that has ground in the work.
pub(super) fn facets(
    outline: &Outline,
    finish: &Finish,
    asked: &Asked,
    water: &Water,
    pieces: &[Piece],
) -> Vec<FacetFall> {
    let (count, endings) = (water.ground.falls.len(), water.endings().len().max(1));
    // One row for each facet, one column for each ending.
    let mut areas = vec![0.0; count * endings];
    for piece in pieces {
        let facet = water.ground.facet[piece.triangle as usize] as usize;
        areas[facet * endings + piece.ending] += piece.area;
    }
    let mut found = Vec::with_capacity(count);
    for (facet, areas) in areas.chunks(endings).enumerate() {
        let area: f64 = areas.iter().sum();
        if area > 0.0 {
            found.push(one(outline, finish, asked, water, (facet, areas, area)));
        }
    }
    found
}

/// Less of a facet than this share is rounding.
const NOTHING: f64 = 1e-9;

fn one(
    outline: &Outline,
    finish: &Finish,
    asked: &Asked,
    water: &Water,
    (facet, areas, area): (usize, &[f64], f64),
) -> FacetFall {
    let falls = water.ground.falls[facet];
    let (least, basis) = asked.least();
    let most = (0..areas.len()).reduce(|best, next| if areas[next] > areas[best] { next } else { best });
    let held: f64 = (areas.iter().zip(water.endings()))
        .filter(|(_, ending)| !ending.end.is_outlet())
        .map(|(area, _)| area)
        .sum();
    let course = match falls.down {
        None if held > NOTHING * area => Course::Level,
        Some(down) if wrong_way(outline, finish, asked, facet, down) => Course::WrongWay,
        Some(_) if held > NOTHING * area => Course::Held,
        None | Some(_) => Course::Out,
    };
    let fall = Slope::from_base(if falls.down.is_some() { falls.fall } else { 0.0 });
    let judged = if course == Course::Out { Judged::Pass } else { Judged::Fail };
    let rim = course == Course::Out && falls.down.is_none();
    let puddle = depth_on(asked.wave_height.base(), asked.wave_length.base(), fall.base());
    FacetFall {
        facet,
        name: finish.plane().is_none().then(|| finish.facet_name(facet)),
        area: Area::from_base(area),
        fall,
        down: falls.down,
        toward: falls.down.map_or_else(|| "level".to_owned(), |down| toward(outline, down)),
        ending: most.unwrap_or(0),
        course,
        judged: judged.and(Judged::by(basis, rim || meets(fall, least))),
        basis,
        puddle: Length::from_base(puddle),
    }
}

/// Whether a facet falls away from the edge or the drain that it is said to fall to.
fn wrong_way(outline: &Outline, finish: &Finish, asked: &Asked, facet: usize, down: [f64; 2]) -> bool {
    let Some(facet) = finish.facets().get(facet) else { return false };
    let Some(named) = facet.falls_to() else { return false };
    if let Some(drain) = asked.edges.drains.iter().find(|drain| drain.name.as_deref() == Some(named)) {
        let places = facet.region().outer().corners();
        let middle = crate::grade::finish::convex::centroid(places);
        return drain.at.iter().all(|at| {
            let at = at.place();
            (at.x - middle.x) * down[0] + (at.y - middle.y) * down[1] < 0.0
        });
    }
    let Ok(runs) = outline.edge(named) else { return false };
    let leans = |id| {
        let run = outline.region().runs().find(|run| run.id == id);
        run.is_some_and(|run| leans_out(run.from, run.to, down))
    };
    !runs.iter().any(|run| leans(run.id()))
}

fn leans_out(from: Point, to: Point, down: [f64; 2]) -> bool {
    down[0] * (to.y - from.y) - down[1] * (to.x - from.x) > 0.0
}
