//! What a floor meets: one thing with its place.

use super::floor::Meets;
use super::kinds::{
    BuriedService, CastIn, DrainRim, Fixture, Headroom, IgnitionSource, OpenEdge, OverheadDoor, Panel,
    PassageDoor, Siding, SlidingDoor, Stair, SwingingDoor, TermiteStrip, Threshold, WallSill,
};
use super::swing::Leaves;
use super::verdict::Judgement;
use crate::survey::outline::Corner;

crate::choice! {
    /// The kind of a thing.
    pub enum Kind {
        /// A door of hinged sections that runs up into tracks.
        SectionalDoor = "sectional_door",
        /// A curtain that rolls up on a drum.
        RollDoor = "roll_door",
        /// A pair of hinged leaves for vehicles.
        SwingingDoor = "swinging_door",
        /// A leaf that slides beside its opening.
        SlidingDoor = "sliding_door",
        /// A door for people whose leaf swings in over the floor.
        PassageDoor = "passage_door",
        /// The sill of a door that leads onto the floor.
        Threshold = "threshold",
        /// Steps that start or end at the floor.
        Stair = "stair",
        /// The sill or sole plate of a wall.
        WallSill = "wall_sill",
        /// Siding beside the floor.
        Siding = "siding",
        /// Wood framing that concrete would be cast against.
        Framing = "framing",
        /// The strip of foundation that is kept bare for inspection.
        TermiteStrip = "termite_strip",
        /// Whatever may set vapour alight: heater, motor.
        IgnitionSource = "ignition_source",
        /// A beam, a pipe, a ceiling overhead.
        Headroom = "headroom",
        /// An electric panel.
        Panel = "panel",
        /// The rim of a drain in the floor.
        DrainRim = "drain_rim",
        /// The cap of a cleanout.
        Cleanout = "cleanout",
        /// Weep holes of a wall.
        WeepHole = "weep_hole",
        /// A vent of a crawl space.
        CrawlVent = "crawl_vent",
        /// The box of a shut-off.
        ShutOff = "shut_off",
        /// A tap on a wall.
        HoseBib = "hose_bib",
        /// A gas pipe that comes up.
        GasRiser = "gas_riser",
        /// A wood post, or the base plate of a column.
        Post = "post",
        /// Hold-down bolts.
        Anchor = "anchor",
        /// Wires of a door operator and its eyes.
        Wire = "wire",
        /// Pipes, cables, heating loops below the floor.
        BuriedService = "buried_service",
        /// An edge of the floor over open ground.
        OpenEdge = "open_edge",
    }
}

/// A thing with the measures that its kind reads.
#[derive(Clone, Debug, PartialEq)]
pub enum Thing {
    /// A door of hinged sections.
    SectionalDoor(OverheadDoor),
    /// A curtain on a drum.
    RollDoor(OverheadDoor),
    /// A pair of hinged leaves.
    SwingingDoor(SwingingDoor),
    /// A sliding leaf.
    SlidingDoor(SlidingDoor),
    /// A door whose leaf swings in over the floor.
    PassageDoor(PassageDoor),
    /// The sill of a door that leads onto the floor.
    Threshold(Threshold),
    /// Steps at the floor.
    Stair(Stair),
    /// A wall's sill.
    WallSill(WallSill),
    /// Siding.
    Siding(Siding),
    /// The bare strip.
    TermiteStrip(TermiteStrip),
    /// An ignition source.
    IgnitionSource(IgnitionSource),
    /// Something overhead.
    Headroom(Headroom),
    /// An electric panel.
    Panel(Panel),
    /// A drain's rim.
    DrainRim(DrainRim),
    /// A fitting that must stay above the floor.
    Fixture(Fixture),
    /// Something that concrete would be cast against or over.
    CastIn(CastIn),
    /// Services below.
    BuriedService(BuriedService),
    /// An open edge.
    OpenEdge(OpenEdge),
}

/// One thing that the floor meets.
#[derive(Clone, Debug, PartialEq)]
pub struct Clearance {
    /// What it is called.
    pub name: String,
    /// Its kind.
    pub kind: Kind,
    /// Where it is: one place, or places along it; a door from jamb to jamb.
    pub line: Vec<Corner>,
    /// What is known of it.
    pub thing: Thing,
}

impl Kind {
    /// Whether it has a line and not just a place.
    #[must_use]
    pub const fn needs_line(self) -> bool {
        matches!(
            self,
            Self::SectionalDoor | Self::RollDoor | Self::SwingingDoor | Self::SlidingDoor | Self::OpenEdge
        )
    }

    /// How many leaves sweep in over the floor, where any may.
    pub(super) const fn leaves(self) -> Option<Leaves> {
        match self {
            Self::SwingingDoor => Some(Leaves::Pair),
            Self::PassageDoor => Some(Leaves::One),
            _ => None,
        }
    }
}

impl Thing {
    /// What a floor does to it.
    #[must_use]
    pub fn judged(&self, floor: &Meets) -> Judgement {
        match self {
            Self::SectionalDoor(door) => door.sectional(floor),
            Self::RollDoor(door) => door.roll(floor),
            Self::SwingingDoor(door) => door.judged(floor),
            Self::SlidingDoor(door) => door.judged(floor),
            Self::PassageDoor(door) => door.judged(floor),
            Self::Threshold(threshold) => threshold.judged(floor),
            Self::Stair(stair) => stair.judged(floor),
            Self::WallSill(sill) => sill.judged(floor),
            Self::Siding(siding) => siding.judged(floor),
            Self::TermiteStrip(strip) => strip.judged(floor),
            Self::IgnitionSource(source) => source.judged(floor),
            Self::Headroom(headroom) => headroom.judged(floor),
            Self::Panel(panel) => panel.judged(floor),
            Self::DrainRim(rim) => rim.judged(floor),
            Self::Fixture(fixture) => fixture.judged(floor),
            Self::CastIn(cast_in) => cast_in.judged(floor),
            Self::BuriedService(service) => service.judged(),
            Self::OpenEdge(edge) => edge.judged(floor),
        }
    }
}
