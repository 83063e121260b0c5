//! The measures that kinds of things read, by the names under which they are asked for.

/// Declares the measures with their names and the questions that ask for them.
macro_rules! measures {
    ($( $measure:ident, $name:literal, $question:literal; )+) => {
        /// A measure of a thing.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum Measure { $( #[doc = $question] $measure, )+ }

        impl Measure {
            /// Every measure.
            pub const ALL: &'static [Self] = &[$(Self::$measure),+];

            /// Its name, as a column or a key.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$measure => $name,)+ }
            }

            /// The question that asks for it.
            #[must_use]
            pub const fn question(self) -> &'static str {
                match self { $(Self::$measure => $question,)+ }
            }
        }
    };
}

measures! {
    Elevation, "elevation", "how high does it stand, or how far above the old slab?";
    AboveSlab, "above_slab", "how far does it stand above the old slab now?";
    Needed, "needed", "what clear height is needed?";
    SealTakes, "seal_takes", "how much out of level does the seal take up?";
    EyesNow, "eyes_now", "how far above the old slab are the photo-eyes now?";
    GapNow, "gap_now", "how wide is the gap under the leaf now?";
    Gap, "gap", "what gap is wanted under the leaf?";
    Covering, "covering", "what covering comes on the new floor?";
    MayLose, "may_lose", "how much may be cut off the leaf at the bottom?";
    Swing, "swing", "does the door swing in over this floor or out?";
    RunsOutside, "runs_outside", "does the leaf run outside the wall?";
    FireRated, "fire_rated", "is it a fire-rated door?";
    Exit, "exit", "is it a required exit door?";
    Risers, "risers", "how high is every riser, from the bottom up?";
    RiserCount, "riser_count", "how many risers are there?";
    Flight, "flight", "how high is the flight in all?";
    End, "end", "is this floor at the foot or at the head of the stair?";
    Ground, "ground", "how high is the ground outside?";
    Free, "free", "how much must stay free above the floor?";
    Exposed, "exposed", "does weather reach the wood?";
    Vehicles, "vehicles", "are vehicles parked in this room?";
    Listed, "listed", "is the appliance listed as resistant to flammable vapour?";
    KeptFree, "kept_free", "is it kept out of the concrete: boxed out, sleeved, or flashed?";
    Located, "located", "are the services below located and marked?";
    Route, "route", "does anybody walk over this edge?";
}
