//! Measures as a table or a job gives them, made into a thing. A kind takes what it reads; what is left over is refused.

use super::kinds::{
    BuriedService, CastIn, CastInKind, DrainRim, End, Fixture, FixtureKind, Flight, Headroom, IgnitionSource,
    MOST_RISERS, OpenEdge, Opening, OverheadDoor, Panel, PassageDoor, Siding, SlidingDoor, Stair, Swing,
    SwingingDoor, TermiteStrip, Threshold, WallSill,
};
use super::level::Level;
use super::measure::Measure;
use super::thing::{Kind, Thing};
use crate::failure::{Code, Failure, Result, check};
use crate::grade::finish::HEIGHT;
use crate::quantity::{Elevation, Length, Range, Typed};

/// A measure of a thing: up to 100 m.
pub const SIZE: Range = Range::closed(0.0, 100.0);
/// How far above the old slab a thing is, or below it.
pub const ABOVE: Range = Range::closed(-100.0, 100.0);

/// Every measure that any kind reads; each is optional.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Measures {
    /// How high the thing is: header, sill, rim, leaf, cap, hole.
    pub elevation: Option<Elevation>,
    /// How far above the old slab it is.
    pub above_slab: Option<Length>,
    /// The clear height that is needed.
    pub needed: Option<Length>,
    /// How much out of level a door's seal takes up.
    pub seal_takes: Option<Length>,
    /// How far above the old slab photo-eyes are.
    pub eyes_now: Option<Length>,
    /// The gap under a leaf, above the old slab.
    pub gap_now: Option<Length>,
    /// The gap wanted under it.
    pub gap: Option<Length>,
    /// The covering that comes on the floor.
    pub covering: Option<Length>,
    /// How much may be cut off a leaf.
    pub may_lose: Option<Length>,
    /// Which way a door swings.
    pub swing: Option<Swing>,
    /// Whether a sliding leaf runs outside the wall.
    pub runs_outside: Option<bool>,
    /// Whether it is a fire-rated door.
    pub fire_rated: Option<bool>,
    /// Whether it is a required exit.
    pub exit: Option<bool>,
    /// The risers of a stair, from the bottom up.
    pub risers: Vec<Length>,
    /// How many even risers a stair has.
    pub riser_count: Option<usize>,
    /// Their height together.
    pub flight: Option<Length>,
    /// Which end of a stair the floor is.
    pub end: Option<End>,
    /// The ground outside: one height, or one at every place of the line.
    pub ground: Vec<Elevation>,
    /// How much must stay free.
    pub free: Option<Length>,
    /// Whether weather reaches the wood.
    pub exposed: Option<bool>,
    /// Whether vehicles are parked in the room.
    pub vehicles: Option<bool>,
    /// Whether an appliance is listed as resistant to flammable vapour.
    pub listed: Option<bool>,
    /// Whether it is kept out of the concrete.
    pub kept_free: Option<bool>,
    /// Whether services were located.
    pub located: Option<bool>,
    /// Whether anybody walks over an edge.
    pub route: Option<bool>,
}

impl Measures {
    /// The thing of that kind.
    ///
    /// # Errors
    /// - `MEASURE_NOT_READ`: a measure that the kind has no use for.
    /// - `CONTRADICTION`: both an elevation and a height above the old slab.
    /// - `OUT_OF_RANGE`, `NEGATIVE`, `NOT_FINITE`: a measure.
    pub fn thing(mut self, kind: Kind) -> Result<Thing> {
        self.checked()?;
        let thing = self.taken(kind)?;
        match self.left() {
            None => Ok(thing),
            Some(measure) => Err(Failure::new(Code::MeasureNotRead, measure.name())
                .written(format!("{} of a {}", measure.name(), kind.word()))
                .allowed(format!("what a {} reads: {}", kind.word(), names(kind)))
                .remedy("leave it out, or check the kind")),
        }
    }

    fn checked(&self) -> Result<()> {
        if let Some(elevation) = self.elevation {
            check(Measure::Elevation.name(), elevation, HEIGHT)?;
        }
        for (index, ground) in self.ground.iter().enumerate() {
            check(&format!("ground[{index}]"), *ground, HEIGHT)?;
        }
        for (index, riser) in self.risers.iter().enumerate() {
            check(&format!("risers[{index}]"), *riser, SIZE)?;
        }
        if let Some(above) = self.above_slab {
            check(Measure::AboveSlab.name(), above, ABOVE)?;
        }
        let sizes = [
            (Measure::Needed, self.needed),
            (Measure::SealTakes, self.seal_takes),
            (Measure::EyesNow, self.eyes_now),
            (Measure::GapNow, self.gap_now),
            (Measure::Gap, self.gap),
            (Measure::Covering, self.covering),
            (Measure::MayLose, self.may_lose),
            (Measure::Free, self.free),
            (Measure::Flight, self.flight),
        ];
        for (measure, size) in sizes {
            if let Some(size) = size {
                check(measure.name(), size, SIZE)?;
            }
        }
        Ok(())
    }

    /// The thing, its measures taken out.
    fn taken(&mut self, kind: Kind) -> Result<Thing> {
        Ok(match kind {
            Kind::SectionalDoor => Thing::SectionalDoor(self.overhead_door()?),
            Kind::RollDoor => Thing::RollDoor(self.overhead_door()?),
            Kind::SwingingDoor => Thing::SwingingDoor(SwingingDoor {
                opening: self.opening()?,
                gap_now: self.gap_now.take(),
                gap: self.gap.take(),
                may_lose: self.may_lose.take(),
                swing: self.swing.take(),
            }),
            Kind::SlidingDoor => Thing::SlidingDoor(SlidingDoor {
                opening: self.opening()?,
                gap_now: self.gap_now.take(),
                gap: self.gap.take(),
                runs_outside: self.runs_outside.take(),
            }),
            Kind::PassageDoor => Thing::PassageDoor(self.passage_door()?),
            Kind::Threshold => Thing::Threshold(Threshold {
                sill: self.level()?,
                covering: self.covering.take(),
                free: self.free.take(),
                exit: self.exit.take(),
                swing: self.swing.take(),
            }),
            Kind::Stair => Thing::Stair(Stair { flight: self.risers_of_flight()?, end: self.end.take() }),
            Kind::WallSill => Thing::WallSill(WallSill { wood: self.level()?, ground: self.one_ground() }),
            Kind::Siding => Thing::Siding(Siding {
                wood: self.level()?,
                ground: self.one_ground(),
                exposed: self.exposed.take(),
            }),
            Kind::TermiteStrip => {
                Thing::TermiteStrip(TermiteStrip { wood: self.level()?, free: self.free.take() })
            }
            Kind::IgnitionSource => Thing::IgnitionSource(IgnitionSource {
                source: self.level()?,
                vehicles: self.vehicles.take(),
                listed: self.listed.take(),
            }),
            Kind::Headroom => {
                Thing::Headroom(Headroom { underside: self.level()?, needed: self.needed.take() })
            }
            Kind::Panel => Thing::Panel(Panel { bottom: self.level()?, free: self.free.take() }),
            Kind::DrainRim => Thing::DrainRim(DrainRim { rim: self.level()? }),
            Kind::Cleanout => self.fixture(FixtureKind::Cleanout)?,
            Kind::WeepHole => self.fixture(FixtureKind::WeepHole)?,
            Kind::CrawlVent => self.fixture(FixtureKind::CrawlVent)?,
            Kind::ShutOff => self.fixture(FixtureKind::ShutOff)?,
            Kind::HoseBib => self.fixture(FixtureKind::HoseBib)?,
            Kind::GasRiser => self.fixture(FixtureKind::GasRiser)?,
            Kind::Framing => self.cast_in(CastInKind::Framing)?,
            Kind::Post => self.cast_in(CastInKind::Post)?,
            Kind::Anchor => self.cast_in(CastInKind::Anchor)?,
            Kind::Wire => self.cast_in(CastInKind::Wire)?,
            Kind::BuriedService => Thing::BuriedService(BuriedService { located: self.located.take() }),
            Kind::OpenEdge => Thing::OpenEdge(OpenEdge {
                ground: std::mem::take(&mut self.ground),
                route: self.route.take(),
            }),
        })
    }

    fn level(&mut self) -> Result<Option<Level>> {
        match (self.elevation.take(), self.above_slab.take()) {
            (Some(_), Some(_)) => Err(Failure::new(Code::Contradiction, Measure::AboveSlab.name())
                .written("elevation and above_slab")
                .allowed("one of the two")
                .remedy("keep one of them")),
            (Some(elevation), None) => Ok(Some(Level::Elevation(elevation))),
            (None, above) => Ok(above.map(Level::AboveSlab)),
        }
    }

    fn opening(&mut self) -> Result<Opening> {
        Ok(Opening {
            header: self.level()?,
            needed: self.needed.take(),
            seal_takes: self.seal_takes.take(),
            ground: self.one_ground(),
        })
    }

    fn overhead_door(&mut self) -> Result<OverheadDoor> {
        Ok(OverheadDoor { opening: self.opening()?, eyes_now: self.eyes_now.take() })
    }

    fn passage_door(&mut self) -> Result<PassageDoor> {
        let bottom = match (self.elevation.take(), self.gap_now.take()) {
            (Some(_), Some(_)) => {
                return Err(Failure::new(Code::Contradiction, Measure::GapNow.name())
                    .written("elevation and gap_now")
                    .allowed("one of the two")
                    .remedy("keep one of them"));
            }
            (Some(elevation), None) => Some(Level::Elevation(elevation)),
            (None, gap) => gap.map(Level::AboveSlab),
        };
        Ok(PassageDoor {
            bottom,
            covering: self.covering.take(),
            gap: self.gap.take(),
            may_lose: self.may_lose.take(),
            fire_rated: self.fire_rated.take(),
        })
    }

    fn fixture(&mut self, kind: FixtureKind) -> Result<Thing> {
        Ok(Thing::Fixture(Fixture { kind, level: self.level()?, free: self.free.take() }))
    }

    fn cast_in(&mut self, kind: CastInKind) -> Result<Thing> {
        Ok(Thing::CastIn(CastIn { kind, level: self.level()?, kept_free: self.kept_free.take() }))
    }

    /// The risers one by one, or so many even ones over a height.
    fn risers_of_flight(&mut self) -> Result<Option<Flight>> {
        let risers = std::mem::take(&mut self.risers);
        let (count, height) = (self.riser_count.take(), self.flight.take());
        let too_many = |count: usize| {
            Failure::new(Code::OutOfRange, Measure::Risers.name())
                .written(format!("{count} risers"))
                .allowed(format!("from 1 to {MOST_RISERS}"))
                .remedy("give one flight")
        };
        match (count, height) {
            (None, None) if risers.is_empty() => Ok(None),
            (None, None) => {
                let count = risers.len();
                Flight::of(risers).map(Some).ok_or_else(|| too_many(count))
            }
            _ if !risers.is_empty() => Err(Failure::new(Code::Contradiction, Measure::Risers.name())
                .written("risers beside riser_count or flight")
                .allowed("every riser, or their count and the height of the flight")
                .remedy("keep one of the two ways")),
            (Some(count), Some(height)) => {
                Flight::even(count, height).map(Some).ok_or_else(|| too_many(count))
            }
            (Some(_), None) => Err(beside(Measure::Flight, Measure::RiserCount)),
            (None, Some(_)) => Err(beside(Measure::RiserCount, Measure::Flight)),
        }
    }

    /// The highest of the ground outside.
    fn one_ground(&mut self) -> Option<Elevation> {
        let ground = std::mem::take(&mut self.ground);
        ground.into_iter().max_by(|a, b| a.base().total_cmp(&b.base()))
    }

    /// The first measure that is still there.
    fn left(&self) -> Option<Measure> {
        let left = [
            (Measure::Elevation, self.elevation.is_some()),
            (Measure::AboveSlab, self.above_slab.is_some()),
            (Measure::Needed, self.needed.is_some()),
            (Measure::SealTakes, self.seal_takes.is_some()),
            (Measure::EyesNow, self.eyes_now.is_some()),
            (Measure::GapNow, self.gap_now.is_some()),
            (Measure::Gap, self.gap.is_some()),
            (Measure::Covering, self.covering.is_some()),
            (Measure::MayLose, self.may_lose.is_some()),
            (Measure::Swing, self.swing.is_some()),
            (Measure::RunsOutside, self.runs_outside.is_some()),
            (Measure::FireRated, self.fire_rated.is_some()),
            (Measure::Exit, self.exit.is_some()),
            (Measure::Risers, !self.risers.is_empty()),
            (Measure::RiserCount, self.riser_count.is_some()),
            (Measure::Flight, self.flight.is_some()),
            (Measure::End, self.end.is_some()),
            (Measure::Ground, !self.ground.is_empty()),
            (Measure::Free, self.free.is_some()),
            (Measure::Exposed, self.exposed.is_some()),
            (Measure::Vehicles, self.vehicles.is_some()),
            (Measure::Listed, self.listed.is_some()),
            (Measure::KeptFree, self.kept_free.is_some()),
            (Measure::Located, self.located.is_some()),
            (Measure::Route, self.route.is_some()),
        ];
        left.into_iter().find(|(_, there)| *there).map(|(measure, _)| measure)
    }

    /// One measure alone.
    fn only(measure: Measure) -> Self {
        let (height, size, yes) = (Elevation::from_base(0.0), Some(Length::from_base(0.0)), Some(true));
        let mut one = Self::default();
        match measure {
            Measure::Elevation => one.elevation = Some(height),
            Measure::AboveSlab => one.above_slab = size,
            Measure::Needed => one.needed = size,
            Measure::SealTakes => one.seal_takes = size,
            Measure::EyesNow => one.eyes_now = size,
            Measure::GapNow => one.gap_now = size,
            Measure::Gap => one.gap = size,
            Measure::Covering => one.covering = size,
            Measure::MayLose => one.may_lose = size,
            Measure::Swing => one.swing = Some(Swing::In),
            Measure::RunsOutside => one.runs_outside = yes,
            Measure::FireRated => one.fire_rated = yes,
            Measure::Exit => one.exit = yes,
            Measure::Risers => one.risers = size.into_iter().collect(),
            Measure::RiserCount => one.riser_count = Some(1),
            Measure::Flight => one.flight = size,
            Measure::End => one.end = Some(End::Foot),
            Measure::Ground => one.ground = vec![height],
            Measure::Free => one.free = size,
            Measure::Exposed => one.exposed = yes,
            Measure::Vehicles => one.vehicles = yes,
            Measure::Listed => one.listed = yes,
            Measure::KeptFree => one.kept_free = yes,
            Measure::Located => one.located = yes,
            Measure::Route => one.route = yes,
        }
        one
    }
}

/// The measures that a kind reads.
pub fn reads(kind: Kind) -> impl Iterator<Item = Measure> {
    Measure::ALL.iter().copied().filter(move |&measure| {
        let mut one = Measures::only(measure);
        // A stair's count alone is refused for what is missing beside it: it is read.
        one.taken(kind).is_err() || one.left().is_none()
    })
}

fn names(kind: Kind) -> String {
    reads(kind).map(Measure::name).collect::<Vec<_>>().join(", ")
}

/// A measure that is wanted beside another.
fn beside(missing: Measure, given: Measure) -> Box<Failure> {
    Failure::new(Code::KeyMissing, missing.name())
        .written("nothing")
        .allowed(format!("{} beside {}", missing.name(), given.name()))
        .remedy(format!("give {}", missing.name()))
}
