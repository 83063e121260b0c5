//! What the raise of a floor forces, and whose trade it is.

use super::words::up;
use crate::quantity::{Length, Volume, number_in, volume};

crate::choice! {
    /// Whose work it is.
    pub enum Trade {
        /// The crew that pours.
        Crew = "crew",
        /// A carpenter.
        Carpenter = "carpenter",
        /// A door technician.
        DoorTechnician = "door_technician",
        /// The maker of the thing.
        Maker = "maker",
        /// A mason.
        Mason = "mason",
        /// A plumber.
        Plumber = "plumber",
        /// A gas fitter.
        GasFitter = "gas_fitter",
        /// An electrician.
        Electrician = "electrician",
        /// The owners of services below ground, through their locating service.
        LocatingService = "locating_service",
        /// A licensed engineer.
        Engineer = "engineer",
    }
}

/// Declares the tasks with their words, their trades and their sentences; `{}` stands for the length.
macro_rules! tasks {
    ($( $task:ident = $word:literal, $trade:ident, $text:literal; )+) => {
        crate::choice! {
            /// A task that the raise forces.
            pub enum Task { $( #[doc = $text] $task = $word ),+ }
        }

        impl Task {
            /// Whose trade it is.
            #[must_use]
            pub const fn trade(self) -> Trade {
                match self { $(Self::$task => Trade::$trade),+ }
            }

            /// What is done, `{}` standing for the length.
            const fn sentence(self) -> &'static str {
                match self { $(Self::$task => $text),+ }
            }
        }
    };
}

tasks! {
    TrimTracks = "trim_tracks", DoorTechnician, "trim the door's tracks by {}";
    RetensionSprings = "retension_springs", DoorTechnician, "re-tension the springs";
    ResetOpener = "reset_opener", DoorTechnician, "reset the opener's travel and its eyes, up by {}";
    TrimGuides = "trim_guides", DoorTechnician, "trim the curtain's guides by {}";
    ResetStops = "reset_stops", DoorTechnician, "reset the drum's limit switches so that the curtain stops {} sooner";
    CutLeaves = "cut_leaves", Carpenter, "cut both leaves by {} at the bottom";
    MoveBolts = "move_bolts", Carpenter, "shorten the bottom bolts and set their sockets in the new floor";
    CutOrRaiseTrack = "cut_or_raise_track", Carpenter, "cut the sliding leaf by {} or raise its track as much";
    ResetFloorGuide = "reset_floor_guide", Crew, "re-set the floor guide or bottom rail in the new floor";
    RaiseHeader = "raise_header", Engineer, "raise the header by {}: structural work";
    RampOutside = "ramp_outside", Crew, "ramp the ground outside up by {}";
    DropOutside = "drop_outside", Crew, "keep the ground outside {} lower at the seal line";
    LevelLine = "level_line", Crew, "strike the door line level: it is {} out";
    CutLeaf = "cut_leaf", Carpenter, "cut the leaf by {} at the bottom";
    RaiseFrame = "raise_frame", Carpenter, "raise the frame by {}: the leaf can lose no more";
    AskMaker = "ask_maker", Maker, "ask the maker whether the leaf may be cut";
    HoldDown = "hold_down", Crew, "hold the floor {} lower there";
    StepAtDoor = "step_at_door", Crew, "raise the landing at the door by {}";
    RebuildLowStep = "rebuild_low_step", Carpenter, "rebuild the steps: {} off even risers now";
    AddStep = "add_step", Carpenter, "add a step: a riser is {} too high";
    KeepOffWood = "keep_off_wood", Carpenter, "keep the concrete off the wood, which it would cover by {}";
    CutSiding = "cut_siding", Carpenter, "cut the siding {} higher";
    FlashWood = "flash_wood", Carpenter, "flash the framing and keep a gap: concrete is never cast against wood";
    KeepStrip = "keep_strip", Carpenter, "open the inspection strip by {}";
    RaiseAppliance = "raise_appliance", Plumber, "raise the appliance by {}";
    RaiseOverhead = "raise_overhead", Carpenter, "raise what hangs overhead by {}";
    RaisePanel = "raise_panel", Electrician, "have the panel's working space looked at: the floor comes {} nearer";
    ExtendRim = "extend_rim", Plumber, "extend the drain's rim by {}";
    LowerRim = "lower_rim", Plumber, "lower the drain's rim by {}";
    RaiseCap = "raise_cap", Plumber, "bring the cleanout's cap up by {} on a riser, never bury it";
    FreeWeepHoles = "free_weep_holes", Mason, "keep the weep holes open: they want the floor {} lower along the wall, or a gap that drains";
    RaiseVent = "raise_vent", Mason, "raise the vent by {} or build a drained well around it";
    RaiseBox = "raise_box", Plumber, "raise the shut-off's box by {}";
    RaiseBib = "raise_bib", Plumber, "raise the hose bib by {}";
    RaiseGasRiser = "raise_gas_riser", GasFitter, "raise the gas riser's fittings by {}";
    BoxOutPost = "box_out_post", Carpenter, "box out the post's base, {} deep: never embed it";
    SleeveBolts = "sleeve_bolts", Engineer, "sleeve the anchor bolts, {} deep, and ask whether they still hold";
    LiftWires = "lift_wires", Electrician, "lift the wires by {} or run them in conduit";
    CallForMarks = "call_for_marks", LocatingService, "call for the marks before anything is driven, drilled or cut";
    Backfill = "backfill", Crew, "fill against the edge, up to {} high";
    StepOrRamp = "step_or_ramp", Crew, "make a ramp or a marked step of {} where people walk over the edge";
    Guard = "guard", Carpenter, "put a guard at the drop of {}";
    CutLawn = "cut_lawn", Crew, "cut the ground outside {} lower, or the water stays";
}

/// One piece of work.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Work {
    /// What is done.
    pub task: Task,
    /// By how much, where that is a length.
    pub by: Option<Length>,
    /// Fill against an edge at 1 in 6 and at 1 in 12.
    pub fill: Option<[Volume; 2]>,
}

impl Work {
    /// A task without a measure.
    #[must_use]
    pub const fn plain(task: Task) -> Self {
        Self { task, by: None, fill: None }
    }

    /// A task by so much.
    #[must_use]
    pub const fn by(task: Task, by: Length) -> Self {
        Self { task, by: Some(by), fill: None }
    }

    /// In words.
    #[must_use]
    pub fn text(&self) -> String {
        let by = self.by.map(up).unwrap_or_default();
        let text = self.task.sentence().replace("{}", &by);
        let Some([steep, flat]) = self.fill else { return text };
        let [steep, flat] = [steep, flat].map(|fill| number_in(fill, &volume::unit::cubic_foot, 1));
        format!("{text}: {steep} at 1 in 6, {flat} at 1 in 12")
    }
}
