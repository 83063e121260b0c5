//! The numbered table of what can go wrong. A number is never changed and never used again.

/// Declares the codes with their number, their name in C and their meaning.
macro_rules! codes {
    ($( $(#[$doc:meta])* $code:ident = $number:literal, $name:literal, $class:ident, $meaning:literal; )+) => {
        /// What went wrong, by number.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[repr(i32)]
        #[non_exhaustive]
        pub enum Code { $( #[doc = $meaning] $code = $number, )+ }

        impl Code {
            /// Every code, by rising number.
            pub const ALL: &'static [Self] = &[$(Self::$code),+];

            /// The name of the code: `OUT_OF_RANGE`; the C constant is `OVS_` and this.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$code => $name,)+ }
            }

            /// One sentence on what the code means.
            #[must_use]
            pub const fn meaning(self) -> &'static str {
                match self { $(Self::$code => $meaning,)+ }
            }

            /// The family it belongs to; Python has one exception for each.
            #[must_use]
            pub const fn family(self) -> Family {
                match self { $(Self::$code => Family::$class,)+ }
            }
        }
    };
}

/// Families of codes: what a caller may want to catch together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Family {
    /// A number, a unit or a text that cannot be used as given.
    Quantity,
    /// The input's form: keys, kinds, lengths of lists.
    Form,
    /// The survey or the outline contradicts itself or does not suffice.
    Survey,
    /// The finish cannot be made as asked.
    Grade,
    /// Marks cannot be set out as asked.
    Marks,
    /// The old slab cannot be judged by what was found.
    Condition,
    /// An overlay, its thickness or its strength cannot be figured as given.
    Overlay,
    /// A door, a step, a fitting or an approach cannot be judged as given.
    Clearance,
    /// The floor that was built cannot be judged by what was measured.
    AsBuilt,
    /// The border between the engine and its caller was used wrongly.
    Border,
}

impl Family {
    /// Every family.
    pub const ALL: &'static [Self] = &[
        Self::Quantity,
        Self::Form,
        Self::Survey,
        Self::Grade,
        Self::Marks,
        Self::Condition,
        Self::Overlay,
        Self::Clearance,
        Self::AsBuilt,
        Self::Border,
    ];

    /// The word for it.
    #[must_use]
    pub const fn word(self) -> &'static str {
        match self {
            Self::Quantity => "Quantity",
            Self::Form => "Form",
            Self::Survey => "Survey",
            Self::Grade => "Grade",
            Self::Marks => "Marks",
            Self::Condition => "Condition",
            Self::Overlay => "Overlay",
            Self::Clearance => "Clearance",
            Self::AsBuilt => "AsBuilt",
            Self::Border => "Border",
        }
    }

    /// What its codes are about.
    #[must_use]
    pub const fn meaning(self) -> &'static str {
        match self {
            Self::Quantity => "A number, a unit or a text that cannot be used as given.",
            Self::Form => "The form of the input: keys, kinds, lengths of lists.",
            Self::Survey => "The survey or the outline contradicts itself or does not suffice.",
            Self::Grade => "The finish cannot be made as asked.",
            Self::Marks => "Marks cannot be set out as asked.",
            Self::Condition => "The old slab cannot be judged by what was found.",
            Self::Overlay => "An overlay, its thickness or its strength cannot be figured as given.",
            Self::Clearance => "A door, a step, a fitting or an approach cannot be judged as given.",
            Self::AsBuilt => "The floor that was built cannot be judged by what was measured.",
            Self::Border => "The border between the engine and its caller was used wrongly.",
        }
    }
}

codes! {
    UnitUnknown = 10, "UNIT_UNKNOWN", Quantity, "the unit is not known";
    UnitMissing = 11, "UNIT_MISSING", Quantity, "a number stands without its unit";
    UnitWrong = 12, "UNIT_WRONG", Quantity, "the unit belongs to another quantity";
    NotReadable = 13, "NOT_READABLE", Quantity, "the text cannot be read as a quantity";
    DecimalComma = 14, "DECIMAL_COMMA", Quantity, "a comma stands where it could be a decimal comma";
    NotFinite = 15, "NOT_FINITE", Quantity, "the number is not finite";
    Negative = 16, "NEGATIVE", Quantity, "the quantity cannot be below zero";
    OutOfRange = 17, "OUT_OF_RANGE", Quantity, "the value lies outside its range";
    EmptyCell = 18, "EMPTY_CELL", Quantity, "an empty cell or a blank where a value is wanted";
    ZeroRefused = 19, "ZERO_REFUSED", Quantity, "a zero in a place where an empty cell is more likely";
    WordUnknown = 20, "WORD_UNKNOWN", Form, "the word is not one of the choices";
    NotACount = 21, "NOT_A_COUNT", Form, "a whole number is wanted";
    EmptyList = 22, "EMPTY_LIST", Form, "the list is empty";
    LengthMismatch = 23, "LENGTH_MISMATCH", Form, "lists that belong together differ in length";
    KindMismatch = 24, "KIND_MISMATCH", Form, "the value is of another kind than the port takes";
    KeyUnknown = 25, "KEY_UNKNOWN", Form, "the key is not known";
    KeyMissing = 26, "KEY_MISSING", Form, "a required value is missing";
    Syntax = 27, "SYNTAX", Form, "the text is not valid TOML or JSON";
    KeyRepeated = 28, "KEY_REPEATED", Form, "a name is given twice";
    VersionUnknown = 29, "VERSION_UNKNOWN", Form, "the schema version is not known";
    Contradiction = 30, "CONTRADICTION", Form, "two values say the same thing differently";
    OutlineCrosses = 40, "OUTLINE_CROSSES", Survey, "the outline crosses itself";
    OutlineTooFew = 41, "OUTLINE_TOO_FEW", Survey, "the outline has too few corners or no area";
    HoleOutside = 42, "HOLE_OUTSIDE", Survey, "a hole leaves the outline or meets another hole";
    OutlineOpen = 43, "OUTLINE_OPEN", Survey, "the wall lengths do not close";
    DiagonalImpossible = 44, "DIAGONAL_IMPOSSIBLE", Survey, "no figure has these sides and diagonals";
    TwoHeights = 45, "TWO_HEIGHTS", Survey, "two heights stand at one place";
    ShotOutside = 46, "SHOT_OUTSIDE", Survey, "a shot lies outside the outline";
    TooFewShots = 47, "TOO_FEW_SHOTS", Survey, "too few shots for a surface";
    CollinearShots = 48, "COLLINEAR_SHOTS", Survey, "all shots lie on one line";
    ClosureExceeded = 49, "CLOSURE_EXCEEDED", Survey, "the level book does not close within its tolerance";
    BookIncomplete = 50, "BOOK_INCOMPLETE", Survey, "the level book lacks a reading it needs";
    BeyondShots = 51, "BEYOND_SHOTS", Survey, "the work reaches too far beyond the shots";
    StepUnresolved = 52, "STEP_UNRESOLVED", Survey, "a step in the old slab is not described well enough";
    RegionOutside = 53, "REGION_OUTSIDE", Survey, "a zone leaves the surveyed outline";
    EdgeUnknown = 60, "EDGE_UNKNOWN", Grade, "no edge of the outline has this name";
    FinishUndetermined = 61, "FINISH_UNDETERMINED", Grade, "the finish is not determined by what was given";
    FinishTwice = 62, "FINISH_TWICE", Grade, "the finish is given in two ways";
    NullPointer = 90, "NULL_POINTER", Border, "a pointer is null";
    LengthNegative = 91, "LENGTH_NEGATIVE", Border, "a length or a count passed over the border is negative";
    NotText = 92, "NOT_TEXT", Border, "the bytes are not UTF-8";
    OperationUnknown = 93, "OPERATION_UNKNOWN", Border, "no operation has this name";
    BufferShort = 94, "BUFFER_SHORT", Border, "the buffer for the results is too short";
    Internal = 99, "INTERNAL", Border, "a fault of the library itself";
    FormatUnknown = 100, "FORMAT_UNKNOWN", Form, "the format of the file is not known";
    FormatNotBuilt = 101, "FORMAT_NOT_BUILT", Form, "the reader for the format is not built in";
    FileBroken = 102, "FILE_BROKEN", Form, "the file breaks the rules of its format";
    FileShort = 103, "FILE_SHORT", Form, "the file ends before what it states is there";
    ColumnMissing = 104, "COLUMN_MISSING", Form, "a column that is needed is not there";
    ColumnDoubtful = 105, "COLUMN_DOUBTFUL", Form, "the head of a column contradicts itself or another";
    SurfaceUnclear = 106, "SURFACE_UNCLEAR", Survey, "the file does not hold exactly one surface of that name";
    NoPoints = 107, "NO_POINTS", Survey, "the file holds no point that can be used";
    NotBase64 = 110, "NOT_BASE64", Form, "the text behind base64: is not base64";
    ThinningCount = 115, "THINNING_COUNT", Survey, "fewer points are asked than the hull of the points has corners";
    ThinningUnreachable = 116, "THINNING_UNREACHABLE", Survey, "points at one place differ by more than the height error asked";
    KnownPoints = 117, "KNOWN_POINTS", Survey, "the known points do not fix the axes";
    AxesDisagree = 118, "AXES_DISAGREE", Survey, "the known points do not lie alike in both systems of axes";
    AxesMirrored = 119, "AXES_MIRRORED", Survey, "the known points lie alike only as in a mirror";
    FacePointUnknown = 120, "FACE_POINT_UNKNOWN", Survey, "a triangle has a corner that is none of the points";
    FaceFlat = 121, "FACE_FLAT", Survey, "a triangle has no area in plan";
    FacesOverlap = 122, "FACES_OVERLAP", Survey, "two triangles overlap";
    PointInFace = 123, "POINT_IN_FACE", Survey, "a point lies in a triangle or on its side";
    EdgeOfThree = 124, "EDGE_OF_THREE", Survey, "three triangles share one side";
    FacetWarped = 130, "FACET_WARPED", Grade, "the corners of a facet are not in one plane";
    FacetsApart = 131, "FACETS_APART", Grade, "two facets have different heights along the edge they share";
    FacetsOverlap = 132, "FACETS_OVERLAP", Grade, "two facets lie over one another";
    FacetsLeaveHole = 133, "FACETS_LEAVE_HOLE", Grade, "a part of the work is under no facet";
    FacetShape = 134, "FACET_SHAPE", Grade, "the corners of a facet bound no area that could be struck off";
    CornerUnknown = 135, "CORNER_UNKNOWN", Grade, "no corner has this name or number";
    CornerUnseen = 136, "CORNER_UNSEEN", Grade, "a corner of the work cannot be seen from the drain";
    OffWork = 137, "OFF_WORK", Grade, "a line or a place of the finish lies outside the work";
    BehindEdge = 138, "BEHIND_EDGE", Grade, "the work reaches behind the line of the edge";
    ShotUnknown = 140, "SHOT_UNKNOWN", Survey, "no shot of the survey has this name";
    LevelsUnsorted = 150, "LEVELS_UNSORTED", Form, "levels do not rise from one to the next";
    TooManyLevels = 151, "TOO_MANY_LEVELS", Form, "an interval or a list gives too many levels";
    LineTooShort = 152, "LINE_TOO_SHORT", Form, "a line has fewer than two places apart from one another";
    LineOutside = 153, "LINE_OUTSIDE", Survey, "a line lies wholly outside the surveyed outline";
    TooManyStations = 154, "TOO_MANY_STATIONS", Form, "a spacing gives too many stations";
    NoOutlet = 160, "NO_OUTLET", Survey, "water has no way out: no edge is open and there is no drain";
    DrainOutside = 161, "DRAIN_OUTSIDE", Survey, "a drain lies outside the outline";
    DemandsConflict = 180, "DEMANDS_CONFLICT", Grade, "the demands on the finish cannot all be kept";
    ProofFailed = 181, "PROOF_FAILED", Grade, "an answer was refused by its own check";
    FacetUnknown = 182, "FACET_UNKNOWN", Grade, "no facet has this name, and none falls to it";
    DemandUnknown = 183, "DEMAND_UNKNOWN", Grade, "no demand has this name";
    DrainUnplaced = 184, "DRAIN_UNPLACED", Grade, "no place where the drain may be sees every corner of the outline";
    DrainNowhere = 185, "DRAIN_NOWHERE", Grade, "the demands can be kept with the drain at no place where it may be";
    DrainNotFound = 186, "DRAIN_NOT_FOUND", Grade, "the search ended before it found a place where the demands can be kept";
    ZoneUnknown = 187, "ZONE_UNKNOWN", Grade, "no zone has this name";
    PointOffWall = 190, "POINT_OFF_WALL", Marks, "a place that must have a mark is on no edge";
    RailOutside = 191, "RAIL_OUTSIDE", Marks, "a screed rail leaves the work";
    PadsTooFar = 192, "PADS_TOO_FAR", Marks, "wet pads are farther apart than the screed reaches";
    FlowLost = 200, "FLOW_LOST", Grade, "the way of water over the finish was lost to rounding";
    ThingOffFloor = 210, "THING_OFF_FLOOR", Clearance, "a thing lies too far from the floor to be met by it";
    LineNeeded = 211, "LINE_NEEDED", Clearance, "a thing of this kind has a line, and one place was given";
    MeasureNotRead = 212, "MEASURE_NOT_READ", Clearance, "a measure that a thing of this kind has no use for";
    GroundMissing = 213, "GROUND_MISSING", Clearance, "the ground along an edge is not given at every place of its line";
    ApproachShort = 220, "APPROACH_SHORT", Clearance, "the ground outside a door is known at fewer than two places";
    ApproachStart = 221, "APPROACH_START", Clearance, "the ground outside is not known at the door itself";
    ApproachUnsorted = 222, "APPROACH_UNSORTED", Clearance, "the places outside a door do not run outwards from it";
    TieInBeyond = 223, "TIE_IN_BEYOND", Clearance, "a new approach meets the ground where that is not known";
    DoorUnknown = 224, "DOOR_UNKNOWN", Clearance, "nothing says how high the floor is at the door";
    ProfileSpacing = 230, "PROFILE_SPACING", AsBuilt, "profile readings stand neither 12 in nor 300 mm apart";
    ProfileShort = 231, "PROFILE_SHORT", AsBuilt, "a profile has too few readings";
    ProfileOrder = 232, "PROFILE_ORDER", AsBuilt, "the readings of a profile are not in order along its line";
    FlatnessSection = 233, "FLATNESS_SECTION", AsBuilt, "lines, sections and their areas do not go together";
    ProfileLineUnknown = 234, "PROFILE_LINE_UNKNOWN", AsBuilt, "no profile line has this name";
    AsBuiltOutline = 235, "AS_BUILT_OUTLINE", AsBuilt, "the new floor was not surveyed over the plan edge of the old slab";
    FindingsDisagree = 240, "FINDINGS_DISAGREE", Condition, "two findings on the old slab cannot both be so";
    BondNeedsSound = 250, "BOND_NEEDS_SOUND", Overlay, "a bonded overlay is figured over a sound slab only";
    OutsideTable = 251, "OUTSIDE_TABLE", Overlay, "a published table has no number there";
    ContactTooWide = 252, "CONTACT_TOO_WIDE", Overlay, "the contact of a load is too wide for the formula";
    ContactUnclear = 253, "CONTACT_UNCLEAR", Overlay, "the contact of a load is not given by exactly one of radius and pressure";
    NoThickness = 254, "NO_THICKNESS", Overlay, "no thickness up to the greatest asked is enough";
    TooManyLoads = 255, "TOO_MANY_LOADS", Overlay, "more loads than are added up at once";
    LineNotOnEdge = 275, "LINE_NOT_ON_EDGE", Overlay, "a line does not run along an edge of the work";
}

impl Code {
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

/// The meaning of a status: 0 is success, other numbers are codes.
#[must_use]
pub fn describe(status: i32) -> &'static str {
    match (status, Code::from_number(status)) {
        (0, _) => "success",
        (_, Some(code)) => code.meaning(),
        _ => "no such status",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_rise_and_every_code_is_described() {
        assert!(Code::ALL.windows(2).all(|pair| pair[0].number() < pair[1].number()));
        for &code in Code::ALL {
            assert_eq!(Code::from_number(code.number()), Some(code));
            assert_eq!(describe(code.number()), code.meaning());
            let mut signs = code.name().bytes();
            assert!(signs.next().is_some_and(|first| first.is_ascii_uppercase()));
            assert!(signs.all(|b| b.is_ascii_uppercase() || b.is_ascii_digit() || b == b'_'));
        }
        assert_eq!(describe(0), "success");
        assert_eq!(describe(7), "no such status");
    }
}
