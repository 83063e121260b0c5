//! Which way the water of a finish goes: over each facet, along its ways, to each outlet.
//!
//! The finish is plane over each facet, so water runs straight down over it, along a valley where it comes from both sides, and
//! along the foot of a wall; where these are level it spreads to the nearest place from which it gets away. Ways and catchments follow from that exactly; nothing is sampled. Water from a place on a ridge, or
//! from any corner, takes the steepest way down, and of ways as steep that over the first facet.

mod asked;
mod corner;
mod ending;
mod facets;
mod ground;
mod level;
mod paths;
mod pieces;
pub mod puddle;
pub mod runoff;
#[cfg(test)]
mod tests;
mod toward;
mod walk;

pub use asked::{Asked, Surface};
pub use ending::{End, Ending};
pub use facets::{Course, FacetFall, Fault};
pub use paths::{FlowPath, PathPlace, Start};

use super::finish::Finish;
use super::thickness_shapes::{LabelledPart, Shape, labelled_parts};
use crate::basis::BasisId;
use crate::choice;
use crate::failure::Result;
use crate::geometry::{Point, Sum};
use crate::judged::Judged;
use crate::note::{Note, NoteCode};
use crate::quantity::{Area, Flow, Length, Slope, Typed, inches, number_in, slope};
use crate::survey::Survey;
use crate::survey::low_spots::Taken;
use crate::survey::outline::Corner;
use ground::Ground;
use pieces::Piece;
use walk::Water;

choice! {
    /// Whether a stated wave of the surface can hold water.
    pub enum Puddles {
        /// Every facet drains it.
        Drains = "drains",
        /// Some facet holds water in it.
        CanStay = "can stay",
    }
}

/// What drains to one end.
#[derive(Clone, Debug, PartialEq)]
pub struct Catchment {
    /// Where its water ends: the place among the endings.
    pub ending: usize,
    /// Its area.
    pub area: Area,
    /// The longest way of water in it.
    pub longest: Length,
    /// Where that starts.
    pub farthest: Corner,
    /// The water that comes there, where rain was given.
    pub flow: Option<Flow>,
}

/// A connected part of the ground, with its polygon.
#[derive(Clone, Debug, PartialEq)]
pub struct DrainedPart<Of> {
    /// What it is a part of.
    pub of: Of,
    /// Its area.
    pub area: Area,
    /// Its polygon.
    pub shape: Shape,
}

/// How a finish drains.
pub struct Drainage {
    /// The facets that have ground in the work, by number; one for a finish of one plane.
    pub facets: Vec<FacetFall>,
    /// Where water ends.
    pub endings: Vec<Ending>,
    /// What drains to each, the largest first.
    pub catchments: Vec<Catchment>,
    /// Ways of water.
    pub paths: Vec<FlowPath>,
    /// The least fall that was wanted.
    pub least: Slope,
    /// Where that comes from.
    pub basis: BasisId,
    /// The edges that nothing was stated of.
    pub taken: Taken,
    water: Water,
    pieces: Vec<Piece>,
}

impl Drainage {
    /// How a finish drains over the outline of a survey.
    ///
    /// # Errors
    /// - `EDGE_UNKNOWN`, `CONTRADICTION`, `DRAIN_OUTSIDE`, `EMPTY_LIST`: as for the ponds of a survey.
    /// - `FACETS_LEAVE_HOLE`: facets that do not cover the work.
    /// - `OFF_WORK`: a start outside the work.
    /// - `OUT_OF_RANGE`: a number outside its range.
    /// - `FLOW_LOST`: facets so narrow that water cannot be followed over them.
    pub fn of(survey: &Survey, finish: &Finish, asked: &Asked) -> Result<Self> {
        asked.checked()?;
        let water = Water::of(Ground::of(survey, finish, &asked.edges)?)?;
        let pieces = water.pieces()?;
        let facets = facets::facets(survey.outline(), finish, asked, &water, &pieces);
        let (least, basis) = asked.least();
        let farthest = farthest(&water, &pieces);
        let paths = water.paths(&asked.starts, &farthest)?;
        let catchments = catchments(asked, &water, &pieces, &farthest)?;
        let (endings, taken) = (water.endings().to_vec(), water.ground.taken.clone());
        Ok(Self { facets, endings, catchments, paths, least, basis, taken, water, pieces })
    }

    /// The least fall of any facet but the level rims of drains; zero where one is level.
    #[must_use]
    pub fn least_found(&self) -> Slope {
        let falls = self.facets.iter().filter(|facet| !facet.is_rim()).map(|facet| facet.fall.base());
        Slope::from_base(falls.reduce(f64::min).unwrap_or(0.0))
    }

    /// Whether every facet falls enough, the right way, to an outlet.
    #[must_use]
    pub fn judged(&self) -> Judged {
        self.facets.iter().fold(Judged::Pass, |worst, facet| worst.and(facet.judged))
    }

    /// The deepest that the stated wave holds water on any facet but the level rims of drains.
    #[must_use]
    pub fn puddle(&self) -> Length {
        let facets = self.facets.iter().filter(|facet| !facet.is_rim());
        Length::from_base(facets.map(|facet| facet.puddle.base()).fold(0.0, f64::max))
    }

    /// Whether the stated wave can hold water.
    #[must_use]
    pub fn puddles(&self) -> Puddles {
        if self.puddle().base() > 0.0 { Puddles::CanStay } else { Puddles::Drains }
    }

    /// The area whose water leaves by outlets.
    #[must_use]
    pub fn drained(&self) -> Area {
        let outlets = self.catchments.iter().filter(|of| self.endings[of.ending].end.is_outlet());
        Area::from_base(outlets.fold(0.0, |sum, of| sum + of.area.base()))
    }

    /// The area whose water finds no outlet.
    #[must_use]
    pub fn held(&self) -> Area {
        let held = self.catchments.iter().filter(|of| !self.endings[of.ending].end.is_outlet());
        Area::from_base(held.fold(0.0, |sum, of| sum + of.area.base()))
    }

    /// The connected parts of every catchment, by the place of the catchment in the list.
    #[must_use]
    pub fn catchment_parts(&self) -> Vec<DrainedPart<usize>> {
        let place = |ending: usize| self.catchments.iter().position(|of| of.ending == ending);
        self.parts(|piece| place(piece.ending)).into_iter().map(|part| self.part(part.label, part)).collect()
    }

    /// The connected parts of the finish that drain badly, by the place of the facet in the list and what is wrong.
    #[must_use]
    pub fn faulty_parts(&self) -> Vec<DrainedPart<(usize, Fault)>> {
        use crate::operation::Choice;
        let faults = Fault::MEMBERS.len();
        let label = |piece: &Piece| {
            let facet = self.water.ground.facet[piece.triangle as usize] as usize;
            let place = self.facets.iter().position(|of| of.facet == facet)?;
            let outlet = self.endings[piece.ending].end.is_outlet();
            let fault = self.facets[place].fault(outlet, self.least)?;
            Some(place * faults + fault as usize)
        };
        let parts = self.parts(label).into_iter();
        let part = |part: LabelledPart| {
            let fault = Fault::at(part.label % faults)?;
            Some(self.part((part.label / faults, fault), part))
        };
        parts.filter_map(part).collect()
    }

    /// The parts that pieces of one label make; pieces without one are left out.
    fn parts(&self, label: impl Fn(&Piece) -> Option<usize>) -> Vec<LabelledPart> {
        // What has no label still parts the sides of its neighbours, so it goes along under a label of its own.
        let labels = self.pieces.iter().map(|piece| label(piece).unwrap_or(usize::MAX));
        let pieces = labels.zip(self.pieces.iter().map(|piece| piece.corners.as_slice()));
        let mut parts = labelled_parts(pieces);
        parts.retain(|part| part.label != usize::MAX);
        parts
    }

    fn part<Of>(&self, of: Of, part: LabelledPart) -> DrainedPart<Of> {
        let moved = |ring: &[Corner]| -> Vec<Corner> {
            let place =
                |corner: &Corner| self.water.ground.in_axes(Point::new(corner.x.base(), corner.y.base()));
            ring.iter().map(place).collect()
        };
        let shape = Shape {
            outer: moved(&part.shape.outer),
            holes: part.shape.holes.iter().map(|hole| moved(hole)).collect(),
        };
        DrainedPart { of, area: Area::from_base(part.area), shape }
    }

    /// What the reader must know.
    #[must_use]
    pub fn notes(&self) -> Vec<Note> {
        let mut notes = Vec::new();
        let mut say = |code, text: String| notes.push(Note::new(code, text));
        let (drained, held) = (self.drained().base(), self.held().base());
        if held > 1e-9 * (drained + held) {
            let percent = 100.0 * held / (drained + held);
            say(NoteCode::WaterHeld, format!("the water of {percent:.0} % of the finish finds no outlet"));
        }
        let faulty = |fault: Fault| {
            let faulty = self.facets.iter().filter(|facet| facet.fault(true, self.least) == Some(fault));
            faulty.map(|facet| facet.name.as_deref().unwrap_or("the finish")).collect::<Vec<_>>().join(", ")
        };
        let per_foot = |fall| number_in(fall, &slope::unit::inch_per_foot, 3);
        let (little, wrong) = (faulty(Fault::TooLittle), faulty(Fault::WrongWay));
        if !little.is_empty() {
            let least = per_foot(self.least);
            say(NoteCode::FallTooLittle, format!("less than {least} of fall: {little}"));
        }
        if !wrong.is_empty() {
            say(NoteCode::WrongWay, format!("falls away from what it is said to fall to: {wrong}"));
        }
        if self.puddles() == Puddles::CanStay {
            let depth = inches(self.puddle(), 32);
            say(NoteCode::PuddlesLeft, format!("a wave as stated can hold water up to {depth} deep"));
        }
        if Judged::by(self.basis, false) == Judged::ConfirmLocally {
            let text = "the least fall is no number that was read in its source: confirm locally";
            say(NoteCode::ConfirmLocally, text.to_owned());
        }
        let named = [("open", &self.taken.open), ("walled", &self.taken.walled)];
        let said: Vec<String> = (named.into_iter().filter(|(_, names)| !names.is_empty()))
            .map(|(state, names)| format!("{state}: {}", names.join(", ")))
            .collect();
        if !said.is_empty() {
            say(NoteCode::Assumed, format!("edges taken as {}", said.join("; ")));
        }
        notes
    }
}

/// For each ending the piece with the longest way to it.
fn farthest<'a>(water: &Water, pieces: &'a [Piece]) -> Vec<Option<&'a Piece>> {
    let mut farthest: Vec<Option<&Piece>> = vec![None; water.endings().len()];
    for piece in pieces {
        let known = &mut farthest[piece.ending];
        if known.is_none_or(|known| piece.longest > known.longest * (1.0 + 1e-12)) {
            *known = Some(piece);
        }
    }
    farthest
}

fn catchments(
    asked: &Asked,
    water: &Water,
    pieces: &[Piece],
    farthest: &[Option<&Piece>],
) -> Result<Vec<Catchment>> {
    let mut areas = vec![Sum::new(); water.endings().len()];
    for piece in pieces {
        areas[piece.ending].add(piece.area);
    }
    let mut list = Vec::with_capacity(areas.len());
    for (ending, (area, piece)) in areas.iter().zip(farthest).enumerate() {
        let Some(piece) = piece else { continue };
        let area = Area::from_base(area.value());
        let flow = asked.rain.map(|rain| runoff::runoff(area, rain, asked.coefficient)).transpose()?;
        let (longest, farthest) = (Length::from_base(piece.longest), water.ground.in_axes(piece.farthest));
        list.push(Catchment { ending, area, longest, farthest, flow });
    }
    list.sort_by(|a, b| b.area.base().total_cmp(&a.area.base()).then(a.ending.cmp(&b.ending)));
    Ok(list)
}
