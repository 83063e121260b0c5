//! Where a limit or a rule comes from, as data.

/// How far a published number was seen by us.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// Read in the source.
    Read,
    /// Read in a page that quotes the source.
    Quoted,
    /// From memory: confirm against the source before it decides anything.
    Memory,
}

/// What stands behind a rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A published document.
    Published {
        /// Its title.
        title: &'static str,
        /// Its edition or year.
        edition: &'static str,
        /// The clause, table or page.
        clause: &'static str,
        /// How far we saw it.
        seen: Seen,
    },
    /// Geometry or mechanics that anybody can check.
    Derived,
    /// The project's own specification decides.
    ProjectSpecification,
    /// Common practice, no source.
    CommonPractice,
}

/// Declares every basis with its meaning.
macro_rules! bases {
    ($( $id:ident, $name:literal, $kind:expr, $meaning:literal; )+) => {
        /// A basis by name.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        #[non_exhaustive]
        pub enum BasisId { $( #[doc = $meaning] $id, )+ }

        impl BasisId {
            /// Every basis.
            pub const ALL: &'static [Self] = &[$(Self::$id),+];

            /// Its name in JSON.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$id => $name,)+ }
            }

            /// What it says.
            #[must_use]
            pub const fn meaning(self) -> &'static str {
                match self { $(Self::$id => $meaning,)+ }
            }

            /// What stands behind it.
            #[must_use]
            pub const fn kind(self) -> Kind {
                match self { $(Self::$id => $kind,)+ }
            }
        }
    };
}

const fn published(title: &'static str, edition: &'static str, clause: &'static str, seen: Seen) -> Kind {
    Kind::Published { title, edition, clause, seen }
}

bases! {
    Geometry, "geometry", Kind::Derived, "plane and solid geometry";
    UnitDefinitions, "unit_definitions",
        published("NIST Special Publication 811", "2008", "appendix B", Seen::Memory),
        "exact definitions of the units";
    Levelling, "levelling", published("Surveying textbooks, differential levelling", "any", "height of instrument", Seen::Read),
        "height of instrument = elevation + backsight; elevation = height of instrument - sight";
    ClosureTolerance, "closure_tolerance", Kind::CommonPractice,
        "one set-up closes within 1/8 in, several within 1/4 in";
    OutlineTolerance, "outline_tolerance", Kind::CommonPractice,
        "walls close within 1/2 in; corners are square where the diagonals differ by 1/2 in at most; six lengths agree within 1 in";
    ReadingWords, "reading_words", Kind::CommonPractice, "reading and texture deviations behind the site words";
    TwoPegTest, "two_peg_test", published("Surveying textbooks, two-peg test", "any", "collimation", Seen::Read),
        "from half way between two pegs the difference of the readings is free of the tilt of the line of sight";
    TwoPegLimit, "two_peg_limit", Kind::CommonPractice, "the line of sight may tilt by 1/16 in per 50 ft";
    LeaveOneOut, "leave_one_out", published("Statistics textbooks, leave-one-out prediction", "any", "kriging", Seen::Memory),
        "each shot predicted from the others, its difference held against a robust scale";
    BookingSlips, "booking_slips", Kind::CommonPractice, "readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off";
    ShotSpacing, "shot_spacing", Kind::CommonPractice, "no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft";
    FallFinishedFloor, "fall_finished_floor",
        published("Flatwork guidance on drainage minimums", "several", "finished floors", Seen::Memory),
        "at least 1/8 in per ft on well-finished floors";
    FallBroomed, "fall_broomed",
        published("Flatwork guidance on drainage minimums", "several", "broom finish", Seen::Memory),
        "at least 1/4 in per ft on broomed floors";
    FallOutdoors, "fall_outdoors",
        published("International Residential Code", "2015-2021", "R401.3, impervious surfaces within 10 ft", Seen::Quoted),
        "at least 2 % away from a building";
    FallGiven, "fall_given", Kind::ProjectSpecification, "the least fall that was given";
    FallWashed, "fall_washed", Kind::CommonPractice, "at least 1/4 in per ft where a floor is washed down";
    WaveAsScreeded, "wave_as_screeded", Kind::CommonPractice, "hand screeding can leave waves of 3/16 in over 4 ft";
    RationalMethod, "rational_method",
        published("Hydrology textbooks, rational method (Kuichling 1889)", "any", "Q = C i A; C of concrete 0.8 to 0.95", Seen::Memory),
        "runoff = coefficient x rain intensity x area";
    DrivewayTexas, "driveway_texas",
        published("TxDOT Roadway Design Manual, driveway guidelines", "any", "section 4, profiles, private residential", Seen::Read),
        "a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles";
    DrivewayMarylandUsual, "driveway_maryland_usual",
        published("Maryland COMAR 11.04.05.05", "any", "driveway grades", Seen::Read), "a change of grade of 5 % is normal";
    DrivewayMaryland, "driveway_maryland",
        published("Maryland COMAR 11.04.05.05", "any", "driveway grades", Seen::Read), "a change of grade of at most 8 %";
    DrivewayMinnesota, "driveway_minnesota",
        published("County highway access rule in the records of the City of Ramsey, Minnesota", "any", "driveway grades, other than commercial", Seen::Read),
        "a driveway of at most 15 %";
    AccessibleWalk, "accessible_walk",
        published("ADA Standards for Accessible Design", "2010", "403.3, walking surfaces", Seen::Memory), "a walk of at most 1:20";
    AccessibleRamp, "accessible_ramp",
        published("ADA Standards for Accessible Design", "2010", "405.2, ramps", Seen::Memory), "a ramp of at most 1:12";
    AccessibleStep, "accessible_step",
        published("ADA Standards for Accessible Design", "2010", "303, changes in level", Seen::Memory),
        "a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2";
    DoorStep, "door_step",
        published("International Residential Code", "2015-2021", "R311.7.5.1, risers", Seen::Read), "a step of at most 7-3/4 in";
    DoorRebate, "door_rebate", Kind::CommonPractice,
        "the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels";
    FallInPractice, "fall_in_practice", Kind::CommonPractice, "2 in over 20 to 24 ft towards a door, as floors are often given";
    ThicknessMargin, "thickness_margin", Kind::CommonPractice,
        "3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in";
    UnbondedMinimum, "unbonded_minimum", Kind::ProjectSpecification, "the least thickness of an unbonded overlay";
    BondChangeAtJoint, "bond_change_at_joint", Kind::CommonPractice,
        "a change between bonded and unbonded comes only along a full-depth joint";
    LinearProgram, "linear_program",
        published("Textbooks on linear programming, duality (Dantzig 1963)", "any", "weak duality; Farkas' lemma; dual simplex method", Seen::Memory),
        "no answer costs less than the weighted bounds of the rows; rows without an answer add up to a contradiction";
    SettingOut, "setting_out", Kind::CommonPractice,
        "a chalk line round the walls and wet pads set the grade that the screed follows; heights are marked from a level line, never up from the old slab";
    OldSlabCheck, "old_slab_check", Kind::CommonPractice, "the old slab is checked each 4 ft along the walls";
    PadSpacing, "pad_spacing", Kind::CommonPractice, "wet pads no farther apart than the length of the screed less 2 ft";
    MorningCheck, "morning_check", Kind::CommonPractice,
        "the benchmark is read before the pour: every rod moves by the difference, and nobody pours where it is off by more than 1/4 in";
    WasteAllowance, "waste_allowance",
        published("Extension lesson on estimating concrete", "after Cooper, Agricultural Mechanics", "waste and uneven thickness", Seen::Read),
        "5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed";
    PlantStep, "plant_step", Kind::CommonPractice, "plants sell in steps of 1/4 yd3";
    TruckLoad, "truck_load",
        published("NRMCA fleet survey", "2017", "table 4: typical full load 9.8 yd3, range 8.2 to 11.8", Seen::Quoted),
        "a full truck carries about 10 yd3";
    FlatnessNumbers, "flatness_numbers",
        published("ASTM E1155, floor flatness and floor levelness numbers", "M-96", "q and z over readings 12 in apart", Seen::Read),
        "q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation";
    FlatnessConstants, "flatness_constants",
        published("ASTM E1155, floor flatness and floor levelness numbers", "any", "FF, FL and their combination", Seen::Memory),
        "FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n / F2))";
    FlatnessLayout, "flatness_layout",
        published("ASTM E1155, floor flatness and floor levelness numbers", "M-96", "lines and readings, as in the record of a measured floor", Seen::Quoted),
        "lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart";
    FlatnessReadings, "flatness_readings",
        published("ASTM E1155, floor flatness and floor levelness numbers", "any", "least number of readings", Seen::Memory),
        "at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2";
    FlatnessClasses, "flatness_classes",
        published("ACI 117, tolerances for concrete construction", "10", "table 4.8.5.1; 4.8.5.3", Seen::Read),
        "FF and FL by class over all, and 3/5 of them for every section";
    FlatnessOnSlope, "flatness_on_slope",
        published("Flatwork guidance on floors that fall", "several", "levelness", Seen::Memory),
        "levelness is not used where a floor falls; flatness is told with the plan taken off";
    StraightedgeClasses, "straightedge_classes",
        published("ACI 117, tolerances for concrete construction", "10", "straightedge of 10 ft", Seen::Memory),
        "nine gaps in ten and all gaps within limits by class";
    StraightedgeNumbers, "straightedge_numbers",
        published("ACI 302.1R, guide to concrete floor and slab construction", "any", "flatness against gaps", Seen::Memory),
        "FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft";
    MarkTolerance, "mark_tolerance", Kind::CommonPractice, "a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark";
    MarkToleranceGiven, "mark_tolerance_given", Kind::ProjectSpecification, "the tolerance of the marks that was given";
    TopElevation, "top_elevation",
        published("ACI 117, tolerances for concrete construction", "90", "top of slabs on ground", Seen::Quoted),
        "within 3/4 in of the planned height";
    SlabThickness, "slab_thickness",
        published("ACI 117, tolerances for concrete construction", "10", "4.5.4, slabs on ground", Seen::Read),
        "mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one";
    LeastThicknessGiven, "least_thickness_given", Kind::ProjectSpecification, "the least thickness that was given";
    UsedOverFigured, "used_over_figured", Kind::CommonPractice, "1.00 to 1.08 times the figured concrete is used";
    OverlayThickness, "overlay_thickness",
        published("UFC 3-260-02, Pavement Design for Airfields", "2001", "ch. 17, Eq. 17-1 to 17-3; examples read, forms recalled", Seen::Memory),
        "ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded";
    EquivalentThickness, "equivalent_thickness",
        published("UFC 3-260-03, Airfield Pavement Evaluation", "2001", "ch. 6, Eq. 6-3 (1.4; the others follow Eq. 17-1 and 17-3)", Seen::Read),
        "h = (ho^n + C hb^n)^(1/n)";
    ConditionFactor, "condition_factor",
        published("UFC 3-260-02 and 3-260-03", "2001", "examples: 0.75 and 0.35 read, classes recalled", Seen::Memory),
        "C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked";
    EffectiveThickness, "effective_thickness",
        published("AASHTO Guide for Design of Pavement Structures", "1993", "Part III, 5.8 and 5.9", Seen::Memory),
        "bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in";
    ConcreteModulus, "concrete_modulus", published("ACI 318", "2019", "19.2.2.1", Seen::Memory),
        "Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi";
    RuptureCode, "rupture_code", published("ACI 318", "2019", "19.2.3.1", Seen::Memory), "fr = 7.5 sqrt(f'c), psi, normal weight";
    RuptureFloor, "rupture_floor", published("ACI 360R and Portland Cement Association, floors on ground", "several", "modulus of rupture", Seen::Memory),
        "MR = 9 sqrt(f'c), psi";
    SubgradeFaa, "subgrade_faa", published("FAA AC 150/5320-6E", "2009", "k from bearing ratio", Seen::Quoted), "k = (1500 CBR / 26)^0.7788 pci";
    SubgradePackard, "subgrade_packard", published("Packard, after Barker and Alexander", "2012", "k from bearing ratio", Seen::Quoted),
        "k = 53.438 CBR^0.5719 pci";
    SubgradeIrc, "subgrade_irc", published("IRC:58", "2002", "table of k and bearing ratio", Seen::Quoted), "k by table, straight between its rows";
    SubgradeResilient, "subgrade_resilient", published("AASHTO Guide for Design of Pavement Structures", "1993", "Part II", Seen::Memory), "k = MR / 19.4";
    SubgradePca, "subgrade_pca", published("Portland Cement Association, EB109", "1984", "soil classes and subbase tables", Seen::Memory),
        "subgrade reaction by soil class and on top of a subbase";
    SubgradeHeelAndBar, "subgrade_heel_and_bar", Kind::CommonPractice, "soft 50, medium 100, firm 200 pci, by heel and bar";
    SubgradeOverOldSlab, "subgrade_over_old_slab", Kind::CommonPractice, "over an old slab 200 to 300 pci are not exceeded without a reason";
    RelativeStiffness, "relative_stiffness", published("Westergaard", "1926", "radius of relative stiffness", Seen::Read), "l = (E h^3 / (12 (1 - nu^2) k))^(1/4)";
    ContactCircle, "contact_circle", Kind::Derived, "a circle of the load over its pressure";
    DualTyres, "dual_tyres", published("Huang, Pavement Analysis and Design", "2004", "ch. 4", Seen::Memory), "one circle for dual tyres";
    EquivalentRadius, "equivalent_radius", published("Westergaard, as in NPTEL Transportation Engineering I", "lecture 29", "equivalent radius", Seen::Read),
        "b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a";
    Westergaard1926, "westergaard_1926", published("Westergaard", "1926", "interior, edge, corner", Seen::Memory),
        "stress and deflection under one load, forms of 1926";
    Westergaard1948, "westergaard_1948", published("Westergaard", "1948", "edge, circle and semicircle", Seen::Memory),
        "edge load, forms of 1948";
    CornerIoannides, "corner_ioannides", published("Ioannides, Thompson, Barenberg", "1985", "corner load", Seen::Memory),
        "s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a";
    SlabSizes, "slab_sizes", published("Ioannides, Thompson, Barenberg", "1985", "least slab sizes", Seen::Memory),
        "stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner";
    PlateOnSprings, "plate_on_springs", published("Textbooks on plates on elastic foundation (Hertz, Timoshenko)", "any", "load on a circle, Kelvin functions", Seen::Memory),
        "exact deflection and moments of a large plate on springs";
    SeveralLoads, "several_loads", Kind::Derived,
        "ours, no source: what another load adds is what it would do there, times its influence at the distance over that at none";
    Bradbury, "bradbury", published("Bradbury, as in Huang, Pavement Analysis and Design", "1938", "curling", Seen::Memory), "s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2";
    SafetyFactors, "safety_factors", published("ACI 360R", "2006", "Table 5.2", Seen::Memory), "safety factors by kind of load";
    LoadTransfer, "load_transfer", published("TM 5-809-12", "1987", "joints", Seen::Memory), "dowels or interlock take 25 % off the free-edge stress";
    Fatigue, "fatigue", published("IRC:58, after the Portland Cement Association", "2002", "fatigue", Seen::Memory), "repetitions by stress ratio, unlimited below 0.45";
    UniformLoad, "uniform_load", published("ACI 360R, after Packard", "2006", "Table A1.1 read, fit recalled", Seen::Memory), "w = 0.123 (MR / SF) sqrt(h k)";
    WallLoad, "wall_load", published("TM 5-809-12", "1987", "3-4 and Table 3-2 read, forms recalled", Seen::Memory), "Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224";
    TwoLayers, "two_layers", Kind::Derived,
        "ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to rigidity";
    UsualLoads, "usual_loads", Kind::CommonPractice, "ours, from memory: what usual things put on a floor";
    JackLoad, "jack_load", published("ASCE 7", "2002", "3000 lb on 4 1/2 by 4 1/2 in", Seen::Quoted), "the point load of garages, taken as a jack";
    AnchoredLift, "anchored_lift", Kind::ProjectSpecification, "the maker's approval of the anchors, and an engineer";
    AddedWeight, "added_weight", Kind::Derived, "w = unit weight x thickness";
    SuspendedStop, "suspended_stop", Kind::CommonPractice, "what more a suspended slab carries is a structural engineer's to say";
    BondedToppingMinimum, "bonded_topping_minimum", published("ACI 302.1R", "several", "bonded toppings", Seen::Memory), "bonded floor topping at least 3/4 in";
    PouredWithBond, "poured_with_bond", Kind::CommonPractice, "under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured";
    BondedRoadMinimum, "bonded_road_minimum", published("Guide to Concrete Overlay Solutions", "2007", "bonded, 2 to 5 in", Seen::Read), "bonded overlay of a road at least 2 in";
    AirfieldMinimum, "airfield_minimum", published("FAA and UFC airfield pavements", "several", "least overlay", Seen::Memory), "airfields: bonded 2 to 3 in, others 5 to 6 in";
    UnbondedToppingMinimum, "unbonded_topping_minimum", published("ACI 302.1R", "1996 and later", "unbonded toppings", Seen::Memory), "unbonded floor topping at least 3 in";
    UnbondedToppingEarlier, "unbonded_topping_earlier", published("Concrete Construction, citing ACI 302.1R", "1980", "unbonded toppings", Seen::Quoted), "unbonded floor topping at least 2 1/2 in";
    PouredWithoutBond, "poured_without_bond", Kind::CommonPractice, "at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs come out";
    UnbondedByUse, "unbonded_by_use", Kind::CommonPractice, "4 in under trucks, in wash bays, under jacks; 5 in and more by stress";
    StoneThird, "stone_third", published("ACI 302.1R", "several", "coarse aggregate in toppings", Seen::Memory), "the thinnest part is at least three times the largest stone";
    FeatherEdge, "feather_edge", published("ACI 546R", "several", "edges of repairs", Seen::Memory), "no feather edge: a sawn and chipped key at least the least thickness deep";
    KeyThroughSlab, "key_through_slab", Kind::CommonPractice, "a key through half of the old slab or more leaves too little of it: the strip is broken out";
    HumidityProbes, "humidity_probes", published("ASTM F2170", "2018 and later", "number, depth and waiting of probes", Seen::Read), "3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from one side, 20 % from two, read after 24 h";
    HumidityLimit, "humidity_limit", Kind::ProjectSpecification, "the limit of the maker of what goes on the floor, often 75 to 85 % relative humidity";
    VapourAndCoverings, "vapour_and_coverings", Kind::CommonPractice, "vapour harms coverings, sealers and coatings, not the cement overlay under them; a sheet, lapped and taped, stops what comes from below";
    DryingByInch, "drying_by_inch", published("Construction Specifier, on drying slabs", "any", "an inch a month", Seen::Read), "28 to 30 days for each inch from one side in good air, to about 85 %";
    DryingByWater, "drying_by_water", published("Brewer, Portland Cement Association", "1965", "drying of 4 in slabs", Seen::Memory), "4 in: 46 days at a water-cement ratio of 0.4, 82 at 0.5, 190 at 1.0, to 3 lb/1000 ft2/24 h";
    VapourByDish, "vapour_by_dish", Kind::Derived, "emission = gain of the dish / (area x time)";
    VapourDishTest, "vapour_dish_test", published("ASTM F1869", "any", "the dish of calcium chloride", Seen::Memory), "the dish stands 60 to 72 h";
    SurfaceProfile, "surface_profile", published("ICRI 310.2R, as quoted by a design note and a trade page", "2013", "profiles", Seen::Quoted), "self-levelling 4 to 6, bonded topping 7 to 9";
    SurfaceProfileRecalled, "surface_profile_recalled", published("ICRI 310.2R", "2013", "profiles by covering", Seen::Memory), "surface profile by covering";
    PullOffStress, "pull_off_stress", published("ASTM C1583", "any", "load over area", Seen::Memory), "f = 4 P / (pi d^2)";
    PullOffAsked, "pull_off_asked", Kind::ProjectSpecification, "200 psi is often asked";
    OwnFigure, "own_figure", Kind::ProjectSpecification, "a figure that the caller gave for this thing";
    DoorWorks, "door_works", Kind::CommonPractice,
        "a raise of 2 to 3 in is usually met by raising the doors, each kind in its own way";
    DoorSealLine, "door_seal_line", Kind::CommonPractice, "a door line is level within 1/4 in, what a bottom seal takes up";
    PhotoEyes, "photo_eyes",
        published("United States rule on automatic residential door operators, 16 CFR 1211", "any", "photoelectric sensors", Seen::Memory),
        "photo-eyes at most 6 in above the floor";
    LeafGap, "leaf_gap", Kind::CommonPractice, "3/8 in under a leaf";
    FireDoor, "fire_door",
        published("International Residential Code", "2015-2021", "R302.5.1, opening protection", Seen::Memory),
        "a door between house and parking is rated or solid, and is not altered";
    ExitLanding, "exit_landing",
        published("International Residential Code", "2015-2021", "R311.3, floors and landings at exterior doors", Seen::Memory),
        "the landing at the required exit at most 1 1/2 in below the threshold, 7 3/4 in where the door does not swing over it";
    RiserHeight, "riser_height",
        published("International Residential Code", "2015-2021", "R311.7.5.1, risers", Seen::Read),
        "risers at most 7 3/4 in, the greatest and the least of a flight at most 3/8 in apart";
    FoundationSill, "foundation_sill",
        published("International Residential Code", "2015-2021", "R317.1, protection of wood against decay", Seen::Memory),
        "wood sills on foundations at least 8 in above the earth";
    SidingClearance, "siding_clearance",
        published("International Residential Code", "2015-2021", "R317.1, item 5", Seen::Quoted),
        "unprotected wood siding at least 6 in above the ground and 2 in above slabs in the weather";
    TermiteStrip, "termite_strip",
        published("Model codes and local rules on termites", "any", "inspection strip", Seen::Memory),
        "4 to 6 in of foundation kept bare for inspection";
    IgnitionHeight, "ignition_height",
        published("International Residential Code", "2015-2021", "M1307.3 and G2408.2", Seen::Memory),
        "ignition sources at least 18 in above a floor where vehicles are parked, unless listed as resistant to vapour";
    ParkingHeadroom, "parking_headroom",
        published("International Building Code", "2015-2021", "406.2.2, clear height", Seen::Memory),
        "7 ft clear over public parking; rooms that nobody lives in have no limit of their own";
    PanelSpace, "panel_space",
        published("National Electrical Code", "any", "110.26, working space", Seen::Memory),
        "the working space at an electric panel is kept";
    DrainRim, "drain_rim", Kind::CommonPractice, "a drain's rim flush, or 1/8 to 1/4 in below the floor, dished 12 in around";
    FreeFittings, "free_fittings", Kind::CommonPractice,
        "free above the floor: caps and boxes flush, weep holes and vents 1 in, gas risers 3 in, taps 6 in";
    LocateMarks, "locate_marks",
        published("State laws on locating services below ground", "any", "call before digging", Seen::Memory),
        "services below are located and marked before anything is driven or cut";
    GuardAtDrop, "guard_at_drop",
        published("International Residential Code", "2015-2021", "R312.1, guards", Seen::Memory),
        "a guard where walking surfaces are more than 30 in above what is below";
    EdgeFill, "edge_fill", Kind::CommonPractice, "ground is filled against a new edge at 1 in 6 to 1 in 12";
    Prismoid, "prismoid", published("Surveying textbooks, earthwork volumes", "any", "prismoidal formula", Seen::Read),
        "V = L (A1 + 4 Am + A2) / 6";
    OverlayChoice, "overlay_choice",
        published("ACI 302.1R and ACI 325.13R", "several", "choice of overlay by the old slab's condition", Seen::Memory),
        "tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping or broken: do not bond";
    OverlayOverSettled, "overlay_over_settled",
        published("Concrete Construction, answer on topping a cracked and settled slab", "citing ACI 302.1R-80", "choice of topping", Seen::Read),
        "over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that covers the high spots";
    ToppingPreparation, "topping_preparation",
        published("Concrete Construction, preparing for a topping", "any", "moving cracks; contamination", Seen::Read),
        "before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off down to clean concrete";
    PartlyBondedToppings, "partly_bonded_toppings",
        published("Concrete Construction, on floor toppings", "any", "partly bonded toppings", Seen::Read),
        "a floor topping that bonds in part counts as a failure: old cracks will show";
    BreakerAndBase, "breaker_and_base",
        published("American Society of Concrete Contractors, answer on toppings", "any", "bond breakers; roughness", Seen::Read),
        "unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded: about 1/4 in rough";
    BondedPreparation, "bonded_preparation",
        published("UFC 3-260-02", "any", "chapter 17, fully bonded overlays", Seen::Read),
        "milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken off";
    Sounding, "sounding", published("ASTM D4580", "any", "sounding of delaminations", Seen::Memory),
        "a hammer or a chain tells hollow places";
    BondingAgents, "bonding_agents",
        published("ASTM C1059", "any", "type I, which wets again, and type II", Seen::Memory),
        "an agent that wets again is for dry places indoors only";
    BondedLeast, "bonded_least", published("ACI 302.1R", "any", "bonded toppings", Seen::Memory),
        "a bonded topping is at least 3/4 in thick";
    OldSlabPractice, "old_slab_practice", Kind::CommonPractice,
        "a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving slabs come out";
    SettlementUnknown, "settlement_unknown", Kind::CommonPractice,
        "settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in; else a second reading or an exclusion in writing";
    SpaceBelow, "space_below", Kind::CommonPractice, "what lies under a slab is known, by drilling if need be, before it is loaded";
    SuspendedSlab, "suspended_slab", Kind::CommonPractice, "a slab that spans takes more weight only by an engineer's figures";
    FrostBetweenLayers, "frost_between_layers", Kind::CommonPractice,
        "water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a drained layer with an open lower edge and sealed joints";
    CutIntoOldSlab, "cut_into_old_slab", Kind::CommonPractice, "pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken";
    AnchoredPosts, "anchored_posts", Kind::CommonPractice, "posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what carries them";
    OldCoverings, "old_coverings", Kind::CommonPractice, "coverings and paint of unknown age are tested for asbestos and lead first";
    LoadedToppings, "loaded_toppings", Kind::CommonPractice, "3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress";
    BondPerPanel, "bond_per_panel", Kind::CommonPractice, "a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old one";
    SiteWords, "site_words", Kind::CommonPractice,
        "hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in";
    PullOffTest, "pull_off_test", Kind::ProjectSpecification, "what the prepared surface must hold in a pull-off test";
    RubbleFigures, "rubble_figures", Kind::CommonPractice, "broken concrete weighs 4,050 lb/yd3 in place and bulks by 1.4 to 1.6";
}

impl BasisId {
    /// Whether its numbers are recalled, not read: they are to be confirmed before they decide anything.
    #[must_use]
    pub const fn from_memory(self) -> bool {
        matches!(self.kind(), Kind::Published { seen: Seen::Memory, .. })
    }

    /// One line for a report: what it says and where from.
    #[must_use]
    pub fn line(self) -> String {
        format!("{}: {}", self.meaning(), self.source())
    }

    /// Where it comes from, in words.
    #[must_use]
    pub fn source(self) -> String {
        match self.kind() {
            Kind::Published { title, edition, clause, seen } => {
                let how = match seen {
                    Seen::Read => "",
                    Seen::Quoted => ", as quoted elsewhere",
                    Seen::Memory => ", from memory: confirm",
                };
                format!("{title} ({edition}), {clause}{how}")
            }
            Kind::Derived => "derived".to_owned(),
            Kind::ProjectSpecification => "the project's specification".to_owned(),
            Kind::CommonPractice => "common practice, no source".to_owned(),
        }
    }
}
