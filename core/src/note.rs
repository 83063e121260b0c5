//! What the reader of a result must know: a numbered kind and a sentence.

/// Declares the note codes.
macro_rules! notes {
    ($( $code:ident = $number:literal, $name:literal, $meaning:literal; )+) => {
        /// The kind of a note, by number. A number is never changed and never used again.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[repr(i32)]
        #[non_exhaustive]
        pub enum NoteCode { $( #[doc = $meaning] $code = $number, )+ }

        impl NoteCode {
            /// Every note code, by rising number.
            pub const ALL: &'static [Self] = &[$(Self::$code),+];

            /// Its name; the C constant is `OVS_NOTE_` and this.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$code => $name,)+ }
            }

            /// What it means.
            #[must_use]
            pub const fn meaning(self) -> &'static str {
                match self { $(Self::$code => $meaning,)+ }
            }
        }
    };
}

notes! {
    OutsideFormula = 1, "OUTSIDE_FORMULA", "the result lies outside the range the formula is stated for";
    BeyondShots = 2, "BEYOND_SHOTS", "part of the work lies beyond the shots, its height is extended";
    MuchBeyondShots = 3, "MUCH_BEYOND_SHOTS", "more than 30 % of the work lies beyond the shots";
    Unsurveyed = 4, "UNSURVEYED", "part of the work lies in triangles that leave the outline";
    PlacesMerged = 5, "PLACES_MERGED", "shots at one place were taken as their mean";
    ShotNearOutline = 6, "SHOT_NEAR_OUTLINE", "a shot a little outside the outline was used";
    EdgeSplit = 7, "EDGE_SPLIT", "a line between two shots on a wall was split";
    HighSpots = 8, "HIGH_SPOTS", "the old slab stands above the finish somewhere";
    BelowGuidance = 9, "BELOW_GUIDANCE", "the value is under the published guidance";
    Rounded = 10, "ROUNDED", "heights were rounded to what can be set out";
    Adjusted = 11, "ADJUSTED", "measurements that do not agree were adjusted";
    Assumed = 12, "ASSUMED", "a value was taken, not measured";
    ShortLoad = 13, "SHORT_LOAD", "the last truck carries a small load";
    ConfirmLocally = 14, "CONFIRM_LOCALLY", "a limit could not be read in its source: confirm locally";
    PointsLeftOut = 20, "POINTS_LEFT_OUT", "points of the file were not used";
    UnitTaken = 21, "UNIT_TAKEN", "the file does not state its unit, one was taken";
    UnitOverruled = 22, "UNIT_OVERRULED", "the unit given was used in place of the one in the file";
    FileParts = 23, "FILE_PARTS", "parts of the file were not used as they stand";
    FileDoubtful = 24, "FILE_DOUBTFUL", "the file may be cut short or damaged";
    PointsOutside = 25, "POINTS_OUTSIDE", "points outside the outline were left out";
    AxesUnchecked = 28, "AXES_UNCHECKED", "two known points cannot show whether the axes fit";
    HeightsUnmoved = 29, "HEIGHTS_UNMOVED", "no known point has a height in both systems, heights stay";
    PointsUnused = 30, "POINTS_UNUSED", "points that no triangle has as a corner were left out";
    Step = 31, "STEP", "the old slab has a step along a line of shots";
    TooFewToJudge = 40, "TOO_FEW_TO_JUDGE", "too few shots to judge one by the others";
    BookInDoubt = 41, "BOOK_IN_DOUBT", "too many shots do not go with their neighbours";
    LeftOut = 42, "LEFT_OUT", "shots were left out because the caller named them";
    Uncovered = 43, "UNCOVERED", "part of the work is farther from any shot than was asked";
    ZoneClipped = 45, "ZONE_CLIPPED", "a zone reaches outside the work; only what is inside counts";
    LineLeavesWork = 46, "LINE_LEAVES_WORK", "part of a line lies outside the work and has no heights";
    LevelMissed = 47, "LEVEL_MISSED", "the surface does not pass through a level";
    PondsLeftOut = 50, "PONDS_LEFT_OUT", "ponds shallower than the depth asked for were left out";
    NothingChanged = 51, "NOTHING_CHANGED", "the old slab nowhere reaches what it was to be changed to";
    NewPonds = 52, "NEW_PONDS", "water stands on the finish where none stood on the old slab";
    Silica = 53, "SILICA", "grinding makes dust that harms the lungs";
    ChoicesIncomplete = 60, "CHOICES_INCOMPLETE", "a price or a limit is missing, choices that need it are not compared";
    BoxesOverlap = 61, "BOXES_OVERLAP", "the straight joints around two thin zones overlap";
    CrumbsLeftOut = 62, "CRUMBS_LEFT_OUT", "thin zones too small to be marked are not listed";
    SearchCut = 65, "SEARCH_CUT", "a search ended at its cap: the answer may be farther from the best than was asked";
    PlacesLeftOut = 66, "PLACES_LEFT_OUT", "places were left out of a search because the drain cannot be there";
    HabitDropped = 67, "HABIT_DROPPED", "the demands leave no room for a level line or a square fall that would be set out";
    StepsFiner = 68, "STEPS_FINER", "the finish could not be rounded to the step asked for";
    StepsNotProved = 69, "STEPS_NOT_PROVED", "the search for a rounded finish ended before it was proved to be the best";
    MarksOutOfReach = 70, "MARKS_OUT_OF_REACH", "marks cannot be read from a set-up";
    MarksUnderOldSlab = 71, "MARKS_UNDER_OLD_SLAB", "the old slab stands at or above the floor at marks";
    ChecksExtended = 72, "CHECKS_EXTENDED", "the height over the old slab is a guess at marks beyond the shots";
    MarksWithoutLevel = 73, "MARKS_WITHOUT_LEVEL", "marks have neither a rod nor a distance below a line";
    BenchmarkOff = 74, "BENCHMARK_OFF", "the benchmark does not read as it should: do not pour";
    WaterHeld = 75, "WATER_HELD", "some of the water of the finish finds no outlet";
    FallTooLittle = 76, "FALL_TOO_LITTLE", "part of the finish falls less than it should";
    WrongWay = 77, "WRONG_WAY", "part of the finish falls away from what it is said to fall to";
    PuddlesLeft = 78, "PUDDLES_LEFT", "a wave of the surface can hold water at this fall";
    ThingsFail = 80, "THINGS_FAIL", "things that the new floor meets do not work as they stand";
    MeasuresAsked = 81, "MEASURES_ASKED", "measures that decide were not given";
    ThingAtEdge = 82, "THING_AT_EDGE", "a thing outside the floor was met at the nearest edge";
    ProfileEndsShort = 85, "PROFILE_ENDS_SHORT", "the ground outside is not known as far out as it should fall away";
    FloorTooLow = 86, "FLOOR_TOO_LOW", "the floor is too low for water to fall away from the door as wanted";
    PerfectLine = 90, "PERFECT_LINE", "a profile without any deviation has no finite number of flatness or levelness";
    ProfileMetric = 91, "PROFILE_METRIC", "readings 300 mm apart flatter the floor under the constant for 12 in";
    ReadingsTooFew = 92, "READINGS_TOO_FEW", "a line or a section has fewer readings than the standard judges by";
    ProfileLayout = 93, "PROFILE_LAYOUT", "lines run nearer to an edge or to one another than the standard has them";
    LevelnessOnSlope = 94, "LEVELNESS_ON_SLOPE", "levelness is not used on a floor that falls";
    PlanBends = 95, "PLAN_BENDS", "readings over a bend of the plan were left out";
    MarksMissed = 96, "MARKS_MISSED", "the new floor misses its marks by more than the tolerance";
    NotAsPlanned = 97, "NOT_AS_PLANNED", "the floor as built does not keep something that was asked of it";
    ShotsOffPlan = 98, "SHOTS_OFF_PLAN", "shots of the new floor outside the work are not held against the plan";
    PuddlesUnseen = 99, "PUDDLES_UNSEEN", "water was seen standing where the shots show none";
    StopNamed = 100, "STOP_NAMED", "a stop by name stands against a way";
    FindingsAsked = 101, "FINDINGS_ASKED", "findings that nobody gave could turn the verdict";
    FindingsTaken = 102, "FINDINGS_TAKEN", "findings were taken, not given";
    PriceMissing = 103, "PRICE_MISSING", "a price is missing, so there is no total";
    GroundDug = 104, "GROUND_DUG", "ground is dug below the old slab";
    NoOverlayNeeded = 110, "NO_OVERLAY_NEEDED", "the old slab is enough by itself: the practical least thickness governs";
    ThicknessCapped = 111, "THICKNESS_CAPPED", "the old slab was entered as 10 in, the most that the formula takes";
    StopForEngineer = 112, "STOP_FOR_ENGINEER", "not on ground as far as is known: stop, the rest is a structural engineer's";
    AskTheMaker = 113, "ASK_THE_MAKER", "no capacity is figured for anchored lifts and hoists: ask the maker and an engineer";
    NotRecommended = 114, "NOT_RECOMMENDED", "common practice that is not recommended";
    VoidTest = 115, "VOID_TEST", "the glue of the disc failed first: the test says nothing";
    StoneDecides = 116, "STONE_DECIDES", "the largest stone decides the least thickness";
    ThinnestEnough = 117, "THINNEST_ENOUGH", "the thinnest slab of the search is enough";
    NoKeyNeeded = 125, "NO_KEY_NEEDED", "the overlay has its least thickness at the edge: no key is cut";
    KeyCutShort = 126, "KEY_CUT_SHORT", "the overlay does not reach its least thickness behind the edge within the room there is";
    BreakOutStrip = 127, "BREAK_OUT_STRIP", "a key would leave too little of the old slab: the strip is broken out";
    MakersLimit = 128, "MAKERS_LIMIT", "the maker of what goes on the floor sets the limit, often 75 to 85 %: ask for it";
    TooFewProbes = 129, "TOO_FEW_PROBES", "fewer probes were read than the area takes";
}

impl NoteCode {
    /// The number of the code.
    #[must_use]
    pub const fn number(self) -> i32 {
        self as i32
    }

    /// The code of that number.
    #[must_use]
    pub fn from_number(number: i32) -> Option<Self> {
        Self::ALL.iter().copied().find(|code| code.number() == number)
    }
}

/// One note on a result.
#[derive(Clone, Debug, PartialEq)]
pub struct Note {
    /// Its kind.
    pub code: NoteCode,
    /// The sentence, with its numbers.
    pub text: String,
}

impl Note {
    /// A note of this kind with this sentence.
    #[must_use]
    pub fn new(code: NoteCode, text: impl Into<String>) -> Self {
        Self { code, text: text.into() }
    }
}
