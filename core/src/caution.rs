//! What can hurt someone, in the usual words.

/// Declares every caution with its text.
macro_rules! cautions {
    ($( $id:ident, $name:literal, $text:literal; )+) => {
        /// A caution by name.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum Caution { $( #[doc = $text] $id, )+ }

        impl Caution {
            /// Every caution.
            pub const ALL: &'static [Self] = &[$(Self::$id),+];

            /// Its name in JSON.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$id => $name,)+ }
            }

            /// Its text.
            #[must_use]
            pub const fn text(self) -> &'static str {
                match self { $(Self::$id => $text,)+ }
            }
        }
    };
}

cautions! {
    Silica, "silica", "Dry sawing and grinding make silica dust: wet or with extraction, and a mask.";
    Caustic, "caustic", "Fresh concrete burns skin and eyes: gloves, boots, glasses, and water at hand.";
    OldCoverings, "old_coverings", "Old tile, glue, paint and felt may hold asbestos or lead: have them tested before anything is scraped, ground, sawn or broken.";
    SuspendedFloors, "suspended_floors", "A slab with air under it carries new concrete only by an engineer's figures: keep loads off until then.";
    SpacesBelow, "spaces_below", "Cisterns, septic tanks, cellars and washed-out hollows lie under slabs: nobody and no truck stands over one until it is opened and made safe.";
    PipesAndTendons, "pipes_and_tendons", "Heating pipes, wires and stressed cables lie in old slabs: find and mark them before anything is cut, drilled or broken. A cut cable kills.";
    AnchoredLifts, "anchored_lifts", "Lift and hoist posts are not anchored in a topping: ask the maker for the slab that it needs, and an engineer. No capacity is given here.";
    CutHeader, "cut_header", "A header carries the wall above: cutting or raising it is structural, for licensed practice.";
    Springs, "springs", "Door springs are under tension and can kill: a door technician's work.";
    Ignition, "ignition", "Vapour lies on the floor: an ignition source that comes nearer to it can set it alight.";
    BuriedServices, "buried_services", "Pipes, cables and heating loops below the floor: call for the marks before driving, drilling or sawing.";
    FireDoor, "fire_door", "Cutting a fire-rated door may void its rating: ask its maker.";
    Guard, "guard", "People fall at drops: a guard before anybody uses the floor.";
    Electrical, "electrical", "Panels and wires are an electrician's work, with the power off.";
    Gas, "gas", "Gas pipes and appliances are a licensed fitter's work, tested for leaks.";
    LocalCode, "local_code", "Local code and licensed practice decide; this is arithmetic, not an approval.";
}
