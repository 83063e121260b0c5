//! The operations of `overlay`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Numbers, Output, Passed, Request, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{ovs_finish, ovs_survey};

/// The word `sound`.
pub const OVS_CONDITION_FACTOR_CONDITION_SOUND: c_int = 0;

/// The word `few cracks, still`.
pub const OVS_CONDITION_FACTOR_CONDITION_FEW_CRACKS__STILL: c_int = 1;

/// The word `badly cracked`.
pub const OVS_CONDITION_FACTOR_CONDITION_BADLY_CRACKED: c_int = 2;

/// The result `least` (in or mm): least thickness anywhere.
pub const OVS_OVERLAY_MINIMUM_LEAST: c_int = 0;

/// The result `largest_stone` (in or mm): largest stone for that thickness.
pub const OVS_OVERLAY_MINIMUM_LARGEST_STONE: c_int = 1;

/// The result `greatest_usual` (in or mm): usual at most; none where stress alone decides.
pub const OVS_OVERLAY_MINIMUM_GREATEST_USUAL: c_int = 2;

/// The result `between`: what goes between old and new.
pub const OVS_OVERLAY_MINIMUM_BETWEEN: c_int = 3;

/// The result `means`: what that means for the floor.
pub const OVS_OVERLAY_MINIMUM_MEANS: c_int = 4;

/// The result `rests_on`: the basis that decides, by name.
pub const OVS_OVERLAY_MINIMUM_RESTS_ON: c_int = 5;

/// The result `rules`: every rule about it, with its source.
pub const OVS_OVERLAY_MINIMUM_RULES: c_int = 6;

/// The column `least` of `rules` (in or mm): least thickness by this rule.
pub const OVS_OVERLAY_MINIMUM_RULES_LEAST: c_int = 0;

/// The column `decides` of `rules`: whether it decides here.
pub const OVS_OVERLAY_MINIMUM_RULES_DECIDES: c_int = 1;

/// The column `said` of `rules`: what it is about.
pub const OVS_OVERLAY_MINIMUM_RULES_SAID: c_int = 2;

/// The column `basis` of `rules`: its basis, by name.
pub const OVS_OVERLAY_MINIMUM_RULES_BASIS: c_int = 3;

/// The column `source` of `rules`: what the basis says and how far it was seen.
pub const OVS_OVERLAY_MINIMUM_RULES_SOURCE: c_int = 4;

/// How many results there are.
pub const OVS_OVERLAY_MINIMUM_RESULTS: c_int = 7;

/// The word `bonded`.
pub const OVS_OVERLAY_MINIMUM_BOND_BONDED: c_int = 0;

/// The word `partly bonded`.
pub const OVS_OVERLAY_MINIMUM_BOND_PARTLY_BONDED: c_int = 1;

/// The word `unbonded`.
pub const OVS_OVERLAY_MINIMUM_BOND_UNBONDED: c_int = 2;

/// The word `people`.
pub const OVS_OVERLAY_MINIMUM_USED_PEOPLE: c_int = 0;

/// The word `cars`.
pub const OVS_OVERLAY_MINIMUM_USED_CARS: c_int = 1;

/// The word `trucks`.
pub const OVS_OVERLAY_MINIMUM_USED_TRUCKS: c_int = 2;

/// The word `wash bay`.
pub const OVS_OVERLAY_MINIMUM_USED_WASH_BAY: c_int = 3;

/// The word `jacks`.
pub const OVS_OVERLAY_MINIMUM_USED_JACKS: c_int = 4;

/// The word `heavier`.
pub const OVS_OVERLAY_MINIMUM_USED_HEAVIER: c_int = 5;

/// The word `no`.
pub const OVS_OVERLAY_MINIMUM_RULES_DECIDES_NO: c_int = 0;

/// The word `yes`.
pub const OVS_OVERLAY_MINIMUM_RULES_DECIDES_YES: c_int = 1;

/// The result `least`: smoothest profile.
pub const OVS_SURFACE_PROFILE_LEAST: c_int = 0;

/// The result `greatest`: roughest profile.
pub const OVS_SURFACE_PROFILE_GREATEST: c_int = 1;

/// The result `rests_on`: its basis, by name.
pub const OVS_SURFACE_PROFILE_RESTS_ON: c_int = 2;

/// The result `ways`: the ways to these profiles.
pub const OVS_SURFACE_PROFILE_WAYS: c_int = 3;

/// The column `profile` of `ways`: profile it makes.
pub const OVS_SURFACE_PROFILE_WAYS_PROFILE: c_int = 0;

/// The column `way` of `ways`: what is done.
pub const OVS_SURFACE_PROFILE_WAYS_WAY: c_int = 1;

/// The column `dust` of `ways`: whether it makes silica dust.
pub const OVS_SURFACE_PROFILE_WAYS_DUST: c_int = 2;

/// How many results there are.
pub const OVS_SURFACE_PROFILE_RESULTS: c_int = 4;

/// The word `sealer`.
pub const OVS_SURFACE_PROFILE_COVERING_SEALER: c_int = 0;

/// The word `thin film`.
pub const OVS_SURFACE_PROFILE_COVERING_THIN_FILM: c_int = 1;

/// The word `high-build coating`.
pub const OVS_SURFACE_PROFILE_COVERING_HIGH_BUILD_COATING: c_int = 2;

/// The word `self-levelling`.
pub const OVS_SURFACE_PROFILE_COVERING_SELF_LEVELLING: c_int = 3;

/// The word `polymer overlay`.
pub const OVS_SURFACE_PROFILE_COVERING_POLYMER_OVERLAY: c_int = 4;

/// The word `concrete overlay`.
pub const OVS_SURFACE_PROFILE_COVERING_CONCRETE_OVERLAY: c_int = 5;

/// The word `bonded topping`.
pub const OVS_SURFACE_PROFILE_COVERING_BONDED_TOPPING: c_int = 6;

/// The word `no`.
pub const OVS_SURFACE_PROFILE_WAYS_DUST_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURFACE_PROFILE_WAYS_DUST_YES: c_int = 1;

/// The result `strength` (psi or MPa): pull-off strength.
pub const OVS_PULL_OFF_STRENGTH: c_int = 0;

/// The result `verdict`: what the test says.
pub const OVS_PULL_OFF_VERDICT: c_int = 1;

/// How many results there are.
pub const OVS_PULL_OFF_RESULTS: c_int = 2;

/// The word `old concrete`.
pub const OVS_PULL_OFF_BROKE_OLD_CONCRETE: c_int = 0;

/// The word `between`.
pub const OVS_PULL_OFF_BROKE_BETWEEN: c_int = 1;

/// The word `overlay`.
pub const OVS_PULL_OFF_BROKE_OVERLAY: c_int = 2;

/// The word `glue`.
pub const OVS_PULL_OFF_BROKE_GLUE: c_int = 3;

/// The word `enough`.
pub const OVS_PULL_OFF_VERDICT_ENOUGH: c_int = 0;

/// The word `too little`.
pub const OVS_PULL_OFF_VERDICT_TOO_LITTLE: c_int = 1;

/// The word `void`.
pub const OVS_PULL_OFF_VERDICT_VOID: c_int = 2;

/// The word `bonded`.
pub const OVS_OVERLAY_REQUIRED_BOND_BONDED: c_int = 0;

/// The word `partly bonded`.
pub const OVS_OVERLAY_REQUIRED_BOND_PARTLY_BONDED: c_int = 1;

/// The word `unbonded`.
pub const OVS_OVERLAY_REQUIRED_BOND_UNBONDED: c_int = 2;

/// The word `bonded`.
pub const OVS_SLAB_EQUIVALENT_BOND_BONDED: c_int = 0;

/// The word `partly bonded`.
pub const OVS_SLAB_EQUIVALENT_BOND_PARTLY_BONDED: c_int = 1;

/// The word `unbonded`.
pub const OVS_SLAB_EQUIVALENT_BOND_UNBONDED: c_int = 2;

/// The word `building code, 7.5`.
pub const OVS_CONCRETE_RUPTURE_FORMULA_BUILDING_CODE__7_5: c_int = 0;

/// The word `floor design, 9`.
pub const OVS_CONCRETE_RUPTURE_FORMULA_FLOOR_DESIGN__9: c_int = 1;

/// The word `FAA`.
pub const OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_FAA: c_int = 0;

/// The word `Packard`.
pub const OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_PACKARD: c_int = 1;

/// The word `IRC:58`.
pub const OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_IRC_58: c_int = 2;

/// The word `lowest`.
pub const OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_LOWEST: c_int = 3;

/// The word `soft`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_SOFT: c_int = 0;

/// The word `medium`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_MEDIUM: c_int = 1;

/// The word `firm`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_FIRM: c_int = 2;

/// The word `silt and clay`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_SILT_AND_CLAY: c_int = 3;

/// The word `sand with silt or clay`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_SAND_WITH_SILT_OR_CLAY: c_int = 4;

/// The word `clean sand and gravel`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_CLEAN_SAND_AND_GRAVEL: c_int = 5;

/// The word `cement-treated subbase`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_CEMENT_TREATED_SUBBASE: c_int = 6;

/// The word `old slab`.
pub const OVS_SUBGRADE_FROM_SOIL_SOIL_OLD_SLAB: c_int = 7;

/// The word `granular`.
pub const OVS_SUBGRADE_WITH_SUBBASE_KIND_GRANULAR: c_int = 0;

/// The word `cement-treated`.
pub const OVS_SUBGRADE_WITH_SUBBASE_KIND_CEMENT_TREATED: c_int = 1;

/// The word `circle`.
pub const OVS_EDGE_LOAD_FOOTPRINT_CIRCLE: c_int = 0;

/// The word `semicircle`.
pub const OVS_EDGE_LOAD_FOOTPRINT_SEMICIRCLE: c_int = 1;

/// The word `Westergaard 1926`.
pub const OVS_CORNER_LOAD_FORMULA_WESTERGAARD_1926: c_int = 0;

/// The word `Ioannides 1985`.
pub const OVS_CORNER_LOAD_FORMULA_IOANNIDES_1985: c_int = 1;

/// The word `textbook, 2.58`.
pub const OVS_CORNER_CRACK_FORMULA_TEXTBOOK__2_58: c_int = 0;

/// The word `Westergaard, 2.38`.
pub const OVS_CORNER_CRACK_FORMULA_WESTERGAARD__2_38: c_int = 1;

/// The result `load` (lbf or kN): each load; none where only the maker can say.
pub const OVS_USUAL_LOAD_LOAD: c_int = 0;

/// The result `margin` (1): what the load is multiplied by.
pub const OVS_USUAL_LOAD_MARGIN: c_int = 1;

/// The result `design_load` (lbf or kN): the load with its margin; none without a load.
pub const OVS_USUAL_LOAD_DESIGN_LOAD: c_int = 2;

/// The result `pressure` (psi or kPa): contact pressure; none without a load.
pub const OVS_USUAL_LOAD_PRESSURE: c_int = 3;

/// The result `radius` (in or mm): contact radius under the load with its margin; none without a load.
pub const OVS_USUAL_LOAD_RADIUS: c_int = 4;

/// The result `count`: how many stand near one another.
pub const OVS_USUAL_LOAD_COUNT: c_int = 5;

/// The result `spacing` (in or mm): middle to middle.
pub const OVS_USUAL_LOAD_SPACING: c_int = 6;

/// The result `said`: what was taken, or what to ask.
pub const OVS_USUAL_LOAD_SAID: c_int = 7;

/// The result `rests_on`: its basis, by name.
pub const OVS_USUAL_LOAD_RESTS_ON: c_int = 8;

/// How many results there are.
pub const OVS_USUAL_LOAD_RESULTS: c_int = 9;

/// The word `car`.
pub const OVS_USUAL_LOAD_THING_CAR: c_int = 0;

/// The word `pickup`.
pub const OVS_USUAL_LOAD_THING_PICKUP: c_int = 1;

/// The word `loaded one-ton`.
pub const OVS_USUAL_LOAD_THING_LOADED_ONE_TON: c_int = 2;

/// The word `farm tractor`.
pub const OVS_USUAL_LOAD_THING_FARM_TRACTOR: c_int = 3;

/// The word `skid machine`.
pub const OVS_USUAL_LOAD_THING_SKID_MACHINE: c_int = 4;

/// The word `bench`.
pub const OVS_USUAL_LOAD_THING_BENCH: c_int = 5;

/// The word `kiln`.
pub const OVS_USUAL_LOAD_THING_KILN: c_int = 6;

/// The word `two jacks`.
pub const OVS_USUAL_LOAD_THING_TWO_JACKS: c_int = 7;

/// The word `anchored lift`.
pub const OVS_USUAL_LOAD_THING_ANCHORED_LIFT: c_int = 8;

/// The result `stiffness` (in or mm): radius of relative stiffness.
pub const OVS_SLAB_STRESS_STIFFNESS: c_int = 0;

/// The result `equivalent` (in or mm): thickness of the plate that was figured.
pub const OVS_SLAB_STRESS_EQUIVALENT: c_int = 1;

/// The result `greatest` (psi or MPa): greatest governing stress of that plate.
pub const OVS_SLAB_STRESS_GREATEST: c_int = 2;

/// The result `governs`: under which load, the first being 1.
pub const OVS_SLAB_STRESS_GOVERNS: c_int = 3;

/// The result `felt`: what each load feels.
pub const OVS_SLAB_STRESS_FELT: c_int = 4;

/// The column `name` of `felt`: which load.
pub const OVS_SLAB_STRESS_FELT_NAME: c_int = 0;

/// The column `alone` of `felt` (psi or MPa): stress from it by itself.
pub const OVS_SLAB_STRESS_FELT_ALONE: c_int = 1;

/// The column `together` of `felt` (psi or MPa): stress with all the others.
pub const OVS_SLAB_STRESS_FELT_TOGETHER: c_int = 2;

/// The column `governing` of `felt` (psi or MPa): larger of both: loads come and go.
pub const OVS_SLAB_STRESS_FELT_GOVERNING: c_int = 3;

/// The column `deflection` of `felt` (in or mm): settlement with all the others.
pub const OVS_SLAB_STRESS_FELT_DEFLECTION: c_int = 4;

/// The column `overlay_bottom` of `felt` (psi or MPa): governing stress at the bottom of the overlay, tension
/// positive; none without an old slab.
pub const OVS_SLAB_STRESS_FELT_OVERLAY_BOTTOM: c_int = 5;

/// The column `old_bottom` of `felt` (psi or MPa): old slab, governing stress at its bottom; none without an old
/// slab.
pub const OVS_SLAB_STRESS_FELT_OLD_BOTTOM: c_int = 6;

/// How many results there are.
pub const OVS_SLAB_STRESS_RESULTS: c_int = 5;

/// The word `interior`.
pub const OVS_SLAB_STRESS_LOADS_POSITION_INTERIOR: c_int = 0;

/// The word `edge`.
pub const OVS_SLAB_STRESS_LOADS_POSITION_EDGE: c_int = 1;

/// The word `corner`.
pub const OVS_SLAB_STRESS_LOADS_POSITION_CORNER: c_int = 2;

/// The word `circle`.
pub const OVS_SLAB_STRESS_EDGE_FORM_CIRCLE: c_int = 0;

/// The word `semicircle`.
pub const OVS_SLAB_STRESS_EDGE_FORM_SEMICIRCLE: c_int = 1;

/// The word `Westergaard 1926`.
pub const OVS_SLAB_STRESS_CORNER_FORM_WESTERGAARD_1926: c_int = 0;

/// The word `Ioannides 1985`.
pub const OVS_SLAB_STRESS_CORNER_FORM_IOANNIDES_1985: c_int = 1;

/// The word `bonded`.
pub const OVS_SLAB_STRESS_BOND_BONDED: c_int = 0;

/// The word `partly bonded`.
pub const OVS_SLAB_STRESS_BOND_PARTLY_BONDED: c_int = 1;

/// The word `unbonded`.
pub const OVS_SLAB_STRESS_BOND_UNBONDED: c_int = 2;

/// The word `moving wheel`.
pub const OVS_SAFETY_FACTORS_KIND_MOVING_WHEEL: c_int = 0;

/// The word `wheel, unlimited passes`.
pub const OVS_SAFETY_FACTORS_KIND_WHEEL__UNLIMITED_PASSES: c_int = 1;

/// The word `post or jack`.
pub const OVS_SAFETY_FACTORS_KIND_POST_OR_JACK: c_int = 2;

/// The word `uniform`.
pub const OVS_SAFETY_FACTORS_KIND_UNIFORM: c_int = 3;

/// The word `wall`.
pub const OVS_SAFETY_FACTORS_KIND_WALL: c_int = 4;

/// The word `interior`.
pub const OVS_ALLOWABLE_LOAD_POSITION_INTERIOR: c_int = 0;

/// The word `edge`.
pub const OVS_ALLOWABLE_LOAD_POSITION_EDGE: c_int = 1;

/// The word `corner`.
pub const OVS_ALLOWABLE_LOAD_POSITION_CORNER: c_int = 2;

/// The result `unlimited`: whether there is no limit.
pub const OVS_REPETITIONS_ALLOWED_UNLIMITED: c_int = 0;

/// The result `repetitions` (1): how often; none where there is no limit.
pub const OVS_REPETITIONS_ALLOWED_REPETITIONS: c_int = 1;

/// How many results there are.
pub const OVS_REPETITIONS_ALLOWED_RESULTS: c_int = 2;

/// The word `no`.
pub const OVS_REPETITIONS_ALLOWED_UNLIMITED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_REPETITIONS_ALLOWED_UNLIMITED_YES: c_int = 1;

/// The result `thickness` (in or mm): smallest thickness.
pub const OVS_THICKNESS_NEEDED_THICKNESS: c_int = 0;

/// The result `stress` (psi or MPa): governing stress there.
pub const OVS_THICKNESS_NEEDED_STRESS: c_int = 1;

/// The result `allowable` (psi or MPa): stress allowed.
pub const OVS_THICKNESS_NEEDED_ALLOWABLE: c_int = 2;

/// The result `governs`: the load that governs, the first being 1.
pub const OVS_THICKNESS_NEEDED_GOVERNS: c_int = 3;

/// How many results there are.
pub const OVS_THICKNESS_NEEDED_RESULTS: c_int = 4;

/// The word `interior`.
pub const OVS_THICKNESS_NEEDED_LOADS_POSITION_INTERIOR: c_int = 0;

/// The word `edge`.
pub const OVS_THICKNESS_NEEDED_LOADS_POSITION_EDGE: c_int = 1;

/// The word `corner`.
pub const OVS_THICKNESS_NEEDED_LOADS_POSITION_CORNER: c_int = 2;

/// The word `circle`.
pub const OVS_THICKNESS_NEEDED_EDGE_FORM_CIRCLE: c_int = 0;

/// The word `semicircle`.
pub const OVS_THICKNESS_NEEDED_EDGE_FORM_SEMICIRCLE: c_int = 1;

/// The word `Westergaard 1926`.
pub const OVS_THICKNESS_NEEDED_CORNER_FORM_WESTERGAARD_1926: c_int = 0;

/// The word `Ioannides 1985`.
pub const OVS_THICKNESS_NEEDED_CORNER_FORM_IOANNIDES_1985: c_int = 1;

/// The word `middle or doweled joint`.
pub const OVS_WALL_LOAD_PLACE_MIDDLE_OR_DOWELED_JOINT: c_int = 0;

/// The word `free edge`.
pub const OVS_WALL_LOAD_PLACE_FREE_EDGE: c_int = 1;

/// The word `bonded`.
pub const OVS_TWO_LAYERS_BOND_BONDED: c_int = 0;

/// The word `partly bonded`.
pub const OVS_TWO_LAYERS_BOND_PARTLY_BONDED: c_int = 1;

/// The word `unbonded`.
pub const OVS_TWO_LAYERS_BOND_UNBONDED: c_int = 2;

/// The result `cut`: what is done at the edge.
pub const OVS_EDGE_KEY_CUT: c_int = 0;

/// The result `depth` (in or mm): how deep the saw goes at the edge.
pub const OVS_EDGE_KEY_DEPTH: c_int = 1;

/// The result `width` (ft or m): how far back it is chipped.
pub const OVS_EDGE_KEY_WIDTH: c_int = 2;

/// The result `depth_at_back` (in or mm): how deep it still is at its back; 0 where it runs out.
pub const OVS_EDGE_KEY_DEPTH_AT_BACK: c_int = 3;

/// The result `area` (ft2 or m2): chipped area.
pub const OVS_EDGE_KEY_AREA: c_int = 4;

/// The result `volume` (ft3 or L): old concrete that comes out, and new concrete that goes in.
pub const OVS_EDGE_KEY_VOLUME: c_int = 5;

/// The result `left` (in or mm): what is left of the old slab under the key.
pub const OVS_EDGE_KEY_LEFT: c_int = 6;

/// How many results there are.
pub const OVS_EDGE_KEY_RESULTS: c_int = 7;

/// The word `no key`.
pub const OVS_EDGE_KEY_CUT_NO_KEY: c_int = 0;

/// The word `saw and chip`.
pub const OVS_EDGE_KEY_CUT_SAW_AND_CHIP: c_int = 1;

/// The word `break out the strip`.
pub const OVS_EDGE_KEY_CUT_BREAK_OUT_THE_STRIP: c_int = 2;

/// The result `cuts`: the keys; none where the overlay is thick enough.
pub const OVS_KEY_CUTS_CUTS: c_int = 0;

/// The column `start` of `cuts` (ft or m): where it starts, along the line.
pub const OVS_KEY_CUTS_CUTS_START: c_int = 0;

/// The column `end` of `cuts` (ft or m): where it ends, along the line.
pub const OVS_KEY_CUTS_CUTS_END: c_int = 1;

/// The column `depth` of `cuts` (in or mm): how deep the saw goes where it is deepest along the edge.
pub const OVS_KEY_CUTS_CUTS_DEPTH: c_int = 2;

/// The column `deepest` of `cuts` (in or mm): greatest depth of the key anywhere.
pub const OVS_KEY_CUTS_CUTS_DEEPEST: c_int = 3;

/// The column `width` of `cuts` (ft or m): how far back it is chipped at most.
pub const OVS_KEY_CUTS_CUTS_WIDTH: c_int = 4;

/// The column `area` of `cuts` (ft2 or m2): chipped area.
pub const OVS_KEY_CUTS_CUTS_AREA: c_int = 5;

/// The column `volume` of `cuts` (ft3 or L): old concrete that comes out, and new concrete that goes in.
pub const OVS_KEY_CUTS_CUTS_VOLUME: c_int = 6;

/// The column `runs_out` of `cuts`: whether the overlay reaches its least before the floor ends.
pub const OVS_KEY_CUTS_CUTS_RUNS_OUT: c_int = 7;

/// The column `cut` of `cuts`: what is done there.
pub const OVS_KEY_CUTS_CUTS_CUT: c_int = 8;

/// The result `length` (ft or m): length of saw cuts along the edge.
pub const OVS_KEY_CUTS_LENGTH: c_int = 1;

/// The result `area` (ft2 or m2): area that is chipped.
pub const OVS_KEY_CUTS_AREA: c_int = 2;

/// The result `volume` (ft3 or L): concrete that comes out and goes in, of all keys.
pub const OVS_KEY_CUTS_VOLUME: c_int = 3;

/// How many results there are.
pub const OVS_KEY_CUTS_RESULTS: c_int = 4;

/// The word `no`.
pub const OVS_KEY_CUTS_CUTS_RUNS_OUT_NO: c_int = 0;

/// The word `yes`.
pub const OVS_KEY_CUTS_CUTS_RUNS_OUT_YES: c_int = 1;

/// The word `no key`.
pub const OVS_KEY_CUTS_CUTS_CUT_NO_KEY: c_int = 0;

/// The word `saw and chip`.
pub const OVS_KEY_CUTS_CUTS_CUT_SAW_AND_CHIP: c_int = 1;

/// The word `break out the strip`.
pub const OVS_KEY_CUTS_CUTS_CUT_BREAK_OUT_THE_STRIP: c_int = 2;

/// The word `one side`.
pub const OVS_MOISTURE_TESTS_DRYING_ONE_SIDE: c_int = 0;

/// The word `two sides`.
pub const OVS_MOISTURE_TESTS_DRYING_TWO_SIDES: c_int = 1;

/// The result `verdict`: what the readings say.
pub const OVS_MOISTURE_VERDICT_VERDICT: c_int = 0;

/// The result `highest` (%): highest reading, which governs.
pub const OVS_MOISTURE_VERDICT_HIGHEST: c_int = 1;

/// The result `wanted`: how many probes the area takes; none without an area.
pub const OVS_MOISTURE_VERDICT_WANTED: c_int = 2;

/// How many results there are.
pub const OVS_MOISTURE_VERDICT_RESULTS: c_int = 3;

/// The word `dry enough`.
pub const OVS_MOISTURE_VERDICT_VERDICT_DRY_ENOUGH: c_int = 0;

/// The word `too damp`.
pub const OVS_MOISTURE_VERDICT_VERDICT_TOO_DAMP: c_int = 1;

/// The word `test more`.
pub const OVS_MOISTURE_VERDICT_VERDICT_TEST_MORE: c_int = 2;

/// The word `ask the maker`.
pub const OVS_MOISTURE_VERDICT_VERDICT_ASK_THE_MAKER: c_int = 3;

/// The word `ground`.
pub const OVS_ADDED_WEIGHT_SUPPORT_GROUND: c_int = 0;

/// The word `suspended`.
pub const OVS_ADDED_WEIGHT_SUPPORT_SUSPENDED: c_int = 1;

/// The word `unknown`.
pub const OVS_ADDED_WEIGHT_SUPPORT_UNKNOWN: c_int = 2;

/// The word `go on`.
pub const OVS_ADDED_WEIGHT_NEXT_GO_ON: c_int = 0;

/// The word `find out`.
pub const OVS_ADDED_WEIGHT_NEXT_FIND_OUT: c_int = 1;

/// The word `stop`.
pub const OVS_ADDED_WEIGHT_NEXT_STOP: c_int = 2;

static CONDITION_FACTOR: &Operation = row(OPERATIONS, "condition_factor");

/// The condition factor of an old slab by what is seen.
///
/// Equation: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
/// Taken for granted: what is seen holds for the whole slab.
///
/// - `condition`: what the old slab looks like; 0 sound, 1 few cracks, still, 2 badly cracked.
/// - `factor_ratio` (1), out: condition factor C.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_condition_factor_us(1, ...) gives factor_ratio = 0.75.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_us(
    condition: c_int,
    factor_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(factor_ratio)];
    unsafe { scalar::one(CONDITION_FACTOR, System::Us, [f64::from(condition)], results, notes, Message::new(msg, msg_len)) }
}

/// The condition factor of an old slab by what is seen.
///
/// Equation: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
/// Taken for granted: what is seen holds for the whole slab.
///
/// - `condition`: what the old slab looks like; 0 sound, 1 few cracks, still, 2 badly cracked.
/// - `factor_ratio` (1), out: condition factor C.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_condition_factor_si(1, ...) gives factor_ratio = 0.75.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_si(
    condition: c_int,
    factor_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(factor_ratio)];
    unsafe { scalar::one(CONDITION_FACTOR, System::Si, [f64::from(condition)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_condition_factor_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_us_array(
    condition: *const c_int,
    factor_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(condition)], results: [Output::Numbers(factor_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CONDITION_FACTOR, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_condition_factor_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_si_array(
    condition: *const c_int,
    factor_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(condition)], results: [Output::Numbers(factor_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CONDITION_FACTOR, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_condition_factor_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_us_why(
    condition: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONDITION_FACTOR, System::Us, [f64::from(condition)], text) }
}

/// Why ovs_condition_factor_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_condition_factor_si_why(
    condition: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONDITION_FACTOR, System::Si, [f64::from(condition)], text) }
}

static OVERLAY_MINIMUM: &Operation = row(OPERATIONS, "overlay_minimum");

/// How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what
/// goes between old and new.
///
/// Equation: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
/// Taken for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key at least as
/// deep.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `used`: what the floor is used for; 0 people, 1 cars, 2 trucks, 3 wash bay, 4 jacks, 5 heavier.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `stone` (in): largest stone of the mix; at least 0.125 in, at most 3 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_OVERLAY_MINIMUM_LEAST (in): least thickness anywhere.
///   - OVS_OVERLAY_MINIMUM_LARGEST_STONE (in): largest stone for that thickness.
///   - OVS_OVERLAY_MINIMUM_GREATEST_USUAL (in): usual at most; none where stress alone decides.
///   - OVS_OVERLAY_MINIMUM_BETWEEN: what goes between old and new.
///   - OVS_OVERLAY_MINIMUM_MEANS: what that means for the floor.
///   - OVS_OVERLAY_MINIMUM_RESTS_ON: the basis that decides, by name.
///   - OVS_OVERLAY_MINIMUM_RULES: every rule about it, with its source.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory: confirm.
/// Basis: unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from memory:
/// confirm.
/// Basis: unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980), unbonded
/// toppings, as quoted elsewhere.
/// Basis: under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common practice, no
/// source.
/// Basis: at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs come out:
/// common practice, no source.
/// Basis: 4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no source.
/// Basis: bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to 5 in.
/// Basis: airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least overlay,
/// from memory: confirm.
/// Basis: the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse aggregate in
/// toppings, from memory: confirm.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"bond":"unbonded","used":"cars","stone":"3/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_minimum_us(
    bond: c_int,
    used: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(bond)),
        (1, Given::Whole(used)),
    ];
    let request = Request::new(OVERLAY_MINIMUM, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what
/// goes between old and new.
///
/// Equation: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
/// Taken for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key at least as
/// deep.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `used`: what the floor is used for; 0 people, 1 cars, 2 trucks, 3 wash bay, 4 jacks, 5 heavier.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `stone` (mm): largest stone of the mix; at least 3.175 mm, at most 76.2 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_OVERLAY_MINIMUM_LEAST (mm): least thickness anywhere.
///   - OVS_OVERLAY_MINIMUM_LARGEST_STONE (mm): largest stone for that thickness.
///   - OVS_OVERLAY_MINIMUM_GREATEST_USUAL (mm): usual at most; none where stress alone decides.
///   - OVS_OVERLAY_MINIMUM_BETWEEN: what goes between old and new.
///   - OVS_OVERLAY_MINIMUM_MEANS: what that means for the floor.
///   - OVS_OVERLAY_MINIMUM_RESTS_ON: the basis that decides, by name.
///   - OVS_OVERLAY_MINIMUM_RULES: every rule about it, with its source.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory: confirm.
/// Basis: unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from memory:
/// confirm.
/// Basis: unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980), unbonded
/// toppings, as quoted elsewhere.
/// Basis: under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common practice, no
/// source.
/// Basis: at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs come out:
/// common practice, no source.
/// Basis: 4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no source.
/// Basis: bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to 5 in.
/// Basis: airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least overlay,
/// from memory: confirm.
/// Basis: the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse aggregate in
/// toppings, from memory: confirm.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"bond":"unbonded","used":"cars","stone":"3/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_minimum_si(
    bond: c_int,
    used: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(bond)),
        (1, Given::Whole(used)),
    ];
    let request = Request::new(OVERLAY_MINIMUM, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_overlay_minimum_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_minimum_us_why(
    bond: c_int,
    used: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(bond)),
        (1, Given::Whole(used)),
    ];
    let request = Request::new(OVERLAY_MINIMUM, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_overlay_minimum_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_minimum_si_why(
    bond: c_int,
    used: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(bond)),
        (1, Given::Whole(used)),
    ];
    let request = Request::new(OVERLAY_MINIMUM, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURFACE_PROFILE: &Operation = row(OPERATIONS, "surface_profile");

/// How rough the old surface must be for what goes on it, and the ways to it.
///
/// Equation: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6, polymer
/// overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
/// Taken for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the surface is
/// wetted the day before, damp and without standing water.
///
/// - `covering`: what goes on the old surface; 0 sealer, 1 thin film, 2 high-build coating, 3 self-levelling, 4
///   polymer overlay, 5 concrete overlay, 6 bonded topping.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURFACE_PROFILE_LEAST: smoothest profile.
///   - OVS_SURFACE_PROFILE_GREATEST: roughest profile.
///   - OVS_SURFACE_PROFILE_RESTS_ON: its basis, by name.
///   - OVS_SURFACE_PROFILE_WAYS: the ways to these profiles.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a trade page
/// (2013), profiles, as quoted elsewhere.
/// Basis: surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"covering":"bonded topping"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_surface_profile_us(
    covering: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(covering)),
    ];
    let request = Request::new(SURFACE_PROFILE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How rough the old surface must be for what goes on it, and the ways to it.
///
/// Equation: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6, polymer
/// overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
/// Taken for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the surface is
/// wetted the day before, damp and without standing water.
///
/// - `covering`: what goes on the old surface; 0 sealer, 1 thin film, 2 high-build coating, 3 self-levelling, 4
///   polymer overlay, 5 concrete overlay, 6 bonded topping.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURFACE_PROFILE_LEAST: smoothest profile.
///   - OVS_SURFACE_PROFILE_GREATEST: roughest profile.
///   - OVS_SURFACE_PROFILE_RESTS_ON: its basis, by name.
///   - OVS_SURFACE_PROFILE_WAYS: the ways to these profiles.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a trade page
/// (2013), profiles, as quoted elsewhere.
/// Basis: surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"covering":"bonded topping"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_surface_profile_si(
    covering: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(covering)),
    ];
    let request = Request::new(SURFACE_PROFILE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_surface_profile_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_surface_profile_us_why(
    covering: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(covering)),
    ];
    let request = Request::new(SURFACE_PROFILE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_surface_profile_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_surface_profile_si_why(
    covering: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(covering)),
    ];
    let request = Request::new(SURFACE_PROFILE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static PULL_OFF: &Operation = row(OPERATIONS, "pull_off");

/// The pull-off strength of a core, held against what the project's specification asks.
///
/// Equation: strength = 4 load / (pi diameter^2).
/// Taken for granted: the core goes at least 1/2 in into the old concrete; no standard gives an acceptance number:
/// it is the project's.
///
/// - `load_lbf` (lbf): load at which it broke; more than 0 lbf, at most 22480.89431 lbf.
/// - `diameter_in` (in): diameter of the core, usually 2 in; at least 1 in, at most 6 in.
/// - `broke`: where it broke; 0 old concrete, 1 between, 2 overlay, 3 glue.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `asked` (psi): strength that is asked for; more than 0 psi, at most 1450.3773773 psi; where left out 200
///     psi, because often asked; the project's specification decides.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_PULL_OFF_STRENGTH (psi): pull-off strength.
///   - OVS_PULL_OFF_VERDICT: what the test says; 0 enough, 1 too little, 2 void.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm.
/// Basis: 200 psi is often asked: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"load":"800 lb","diameter":"2 in","broke":"old concrete"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_pull_off_us(
    load_lbf: f64,
    diameter_in: f64,
    broke: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(load_lbf)),
        (1, Given::Number(diameter_in)),
        (2, Given::Whole(broke)),
    ];
    let request = Request::new(PULL_OFF, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The pull-off strength of a core, held against what the project's specification asks.
///
/// Equation: strength = 4 load / (pi diameter^2).
/// Taken for granted: the core goes at least 1/2 in into the old concrete; no standard gives an acceptance number:
/// it is the project's.
///
/// - `load_kn` (kN): load at which it broke; more than 0 kN, at most 100 kN.
/// - `diameter_mm` (mm): diameter of the core, usually 2 in; at least 25.4 mm, at most 152.4 mm.
/// - `broke`: where it broke; 0 old concrete, 1 between, 2 overlay, 3 glue.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `asked` (MPa): strength that is asked for; more than 0 MPa, at most 10 MPa; where left out 200 psi, because
///     often asked; the project's specification decides.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_PULL_OFF_STRENGTH (MPa): pull-off strength.
///   - OVS_PULL_OFF_VERDICT: what the test says; 0 enough, 1 too little, 2 void.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm.
/// Basis: 200 psi is often asked: the project's specification.
/// Since 0.1.0.
/// Example, as JSON: {"load":"800 lb","diameter":"2 in","broke":"old concrete"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_pull_off_si(
    load_kn: f64,
    diameter_mm: f64,
    broke: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(load_kn)),
        (1, Given::Number(diameter_mm)),
        (2, Given::Whole(broke)),
    ];
    let request = Request::new(PULL_OFF, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_pull_off_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_pull_off_us_why(
    load_lbf: f64,
    diameter_in: f64,
    broke: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(load_lbf)),
        (1, Given::Number(diameter_in)),
        (2, Given::Whole(broke)),
    ];
    let request = Request::new(PULL_OFF, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_pull_off_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_pull_off_si_why(
    load_kn: f64,
    diameter_mm: f64,
    broke: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(load_kn)),
        (1, Given::Number(diameter_mm)),
        (2, Given::Whole(broke)),
    ];
    let request = Request::new(PULL_OFF, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static OVERLAY_REQUIRED: &Operation = row(OPERATIONS, "overlay_required");

/// The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is
/// enough.
///
/// Equation: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1 bonded
/// (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket is no need.
/// Taken for granted: the equations are empirical, from full-scale traffic tests on airfields; the practical least
/// thickness is apart.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `required_new_in` (in): single slab that the new concrete would need on this ground; more than 0 in, at most
///   78.7401574803 in.
/// - `required_old_in` (in): a single slab of the old concrete would need so much; more than 0 in, at most
///   78.7401574803 in.
/// - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
/// - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
///   1.
/// - `overlay_in` (in), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
/// Basis: ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02, Pavement
/// Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms recalled, from memory: confirm.
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_required_us(2, 9, 9, 6, 1, ...) gives overlay_in = 6.7082.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_us(
    bond: c_int,
    required_new_in: f64,
    required_old_in: f64,
    old_slab_in: f64,
    condition_ratio: f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(overlay_in)];
    unsafe { scalar::one(OVERLAY_REQUIRED, System::Us, [f64::from(bond), required_new_in, required_old_in, old_slab_in, condition_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is
/// enough.
///
/// Equation: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1 bonded
/// (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket is no need.
/// Taken for granted: the equations are empirical, from full-scale traffic tests on airfields; the practical least
/// thickness is apart.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `required_new_mm` (mm): single slab that the new concrete would need on this ground; more than 0 mm, at most
///   2000 mm.
/// - `required_old_mm` (mm): a single slab of the old concrete would need so much; more than 0 mm, at most 2000 mm.
/// - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
/// - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
///   1.
/// - `overlay_mm` (mm), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
/// Basis: ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02, Pavement
/// Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms recalled, from memory: confirm.
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_required_si(2, 228.6, 228.6, 152.4, 1, ...) gives overlay_mm = 170.388.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_si(
    bond: c_int,
    required_new_mm: f64,
    required_old_mm: f64,
    old_slab_mm: f64,
    condition_ratio: f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(overlay_mm)];
    unsafe { scalar::one(OVERLAY_REQUIRED, System::Si, [f64::from(bond), required_new_mm, required_old_mm, old_slab_mm, condition_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_overlay_required_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_us_array(
    bond: *const c_int,
    required_new_in: *const f64,
    required_old_in: *const f64,
    old_slab_in: *const f64,
    condition_ratio: *const f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(required_new_in), Input::Numbers(required_old_in), Input::Numbers(old_slab_in), Input::Numbers(condition_ratio)], results: [Output::Numbers(overlay_in)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_REQUIRED, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_overlay_required_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_si_array(
    bond: *const c_int,
    required_new_mm: *const f64,
    required_old_mm: *const f64,
    old_slab_mm: *const f64,
    condition_ratio: *const f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(required_new_mm), Input::Numbers(required_old_mm), Input::Numbers(old_slab_mm), Input::Numbers(condition_ratio)], results: [Output::Numbers(overlay_mm)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_REQUIRED, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_overlay_required_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_us_why(
    bond: c_int,
    required_new_in: f64,
    required_old_in: f64,
    old_slab_in: f64,
    condition_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_REQUIRED, System::Us, [f64::from(bond), required_new_in, required_old_in, old_slab_in, condition_ratio], text) }
}

/// Why ovs_overlay_required_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_required_si_why(
    bond: c_int,
    required_new_mm: f64,
    required_old_mm: f64,
    old_slab_mm: f64,
    condition_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_REQUIRED, System::Si, [f64::from(bond), required_new_mm, required_old_mm, old_slab_mm, condition_ratio], text) }
}

static SLAB_EQUIVALENT: &Operation = row(OPERATIONS, "slab_equivalent");

/// The single slab that an overlay and the old slab under it are worth together.
///
/// Equation: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2 unbonded.
/// Taken for granted: both concretes are alike in strength.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `overlay_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
/// - `old_slab_in` (in): the old slab's thickness; more than 0 in, at most 78.7401574803 in.
/// - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
///   1.
/// - `equivalent_in` (in), out: the single slab.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
/// Basis: h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3 (1.4; the
/// others follow Eq. 17-1 and 17-3).
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_slab_equivalent_us(1, 6, 6, 1, ...) gives equivalent_in = 9.84402.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_us(
    bond: c_int,
    overlay_in: f64,
    old_slab_in: f64,
    condition_ratio: f64,
    equivalent_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_in)];
    unsafe { scalar::one(SLAB_EQUIVALENT, System::Us, [f64::from(bond), overlay_in, old_slab_in, condition_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// The single slab that an overlay and the old slab under it are worth together.
///
/// Equation: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2 unbonded.
/// Taken for granted: both concretes are alike in strength.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `overlay_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
/// - `old_slab_mm` (mm): the old slab's thickness; more than 0 mm, at most 2000 mm.
/// - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
///   1.
/// - `equivalent_mm` (mm), out: the single slab.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
/// Basis: h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3 (1.4; the
/// others follow Eq. 17-1 and 17-3).
/// Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
/// examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_slab_equivalent_si(1, 152.4, 152.4, 1, ...) gives equivalent_mm = 250.038.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_si(
    bond: c_int,
    overlay_mm: f64,
    old_slab_mm: f64,
    condition_ratio: f64,
    equivalent_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_mm)];
    unsafe { scalar::one(SLAB_EQUIVALENT, System::Si, [f64::from(bond), overlay_mm, old_slab_mm, condition_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_slab_equivalent_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_us_array(
    bond: *const c_int,
    overlay_in: *const f64,
    old_slab_in: *const f64,
    condition_ratio: *const f64,
    equivalent_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(overlay_in), Input::Numbers(old_slab_in), Input::Numbers(condition_ratio)], results: [Output::Numbers(equivalent_in)], notes, n, bad_index };
    unsafe { scalar::array(SLAB_EQUIVALENT, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_slab_equivalent_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_si_array(
    bond: *const c_int,
    overlay_mm: *const f64,
    old_slab_mm: *const f64,
    condition_ratio: *const f64,
    equivalent_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(overlay_mm), Input::Numbers(old_slab_mm), Input::Numbers(condition_ratio)], results: [Output::Numbers(equivalent_mm)], notes, n, bad_index };
    unsafe { scalar::array(SLAB_EQUIVALENT, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_slab_equivalent_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_us_why(
    bond: c_int,
    overlay_in: f64,
    old_slab_in: f64,
    condition_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SLAB_EQUIVALENT, System::Us, [f64::from(bond), overlay_in, old_slab_in, condition_ratio], text) }
}

/// Why ovs_slab_equivalent_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_equivalent_si_why(
    bond: c_int,
    overlay_mm: f64,
    old_slab_mm: f64,
    condition_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SLAB_EQUIVALENT, System::Si, [f64::from(bond), overlay_mm, old_slab_mm, condition_ratio], text) }
}

static OVERLAY_EFFECTIVE_BONDED: &Operation = row(OPERATIONS, "overlay_effective_bonded");

/// What an old slab is worth under a bonded overlay, and the overlay that follows.
///
/// Equation: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none where
/// negative.
/// Taken for granted: the factors come from a survey of joints, cracks and durability.
///
/// - `required_in` (in): single slab required for the traffic to come; more than 0 in, at most 78.7401574803 in.
/// - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
/// - `joints_ratio` (1): factor for joints and cracks left open; 1 where all are mended; at least 0.3 1, at most 1
///   1.
/// - `durability_ratio` (1): durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling; at
///   least 0.3 1, at most 1 1.
/// - `fatigue_ratio` (1): fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
///   many; at least 0.3 1, at most 1 1.
/// - `effective_in` (in), out: what the old slab is worth.
/// - `overlay_in` (in), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
/// Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_effective_bonded_us(10, 8, 0.9, 1, 0.97, ...) gives effective_in = 6.984, overlay_in = 3.016.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_us(
    required_in: f64,
    old_slab_in: f64,
    joints_ratio: f64,
    durability_ratio: f64,
    fatigue_ratio: f64,
    effective_in: *mut f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(effective_in), Output::Numbers(overlay_in)];
    unsafe { scalar::one(OVERLAY_EFFECTIVE_BONDED, System::Us, [required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// What an old slab is worth under a bonded overlay, and the overlay that follows.
///
/// Equation: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none where
/// negative.
/// Taken for granted: the factors come from a survey of joints, cracks and durability.
///
/// - `required_mm` (mm): single slab required for the traffic to come; more than 0 mm, at most 2000 mm.
/// - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
/// - `joints_ratio` (1): factor for joints and cracks left open; 1 where all are mended; at least 0.3 1, at most 1
///   1.
/// - `durability_ratio` (1): durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling; at
///   least 0.3 1, at most 1 1.
/// - `fatigue_ratio` (1): fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
///   many; at least 0.3 1, at most 1 1.
/// - `effective_mm` (mm), out: what the old slab is worth.
/// - `overlay_mm` (mm), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
/// Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_effective_bonded_si(254, 203.2, 0.9, 1, 0.97, ...) gives effective_mm = 177.394, overlay_mm = 76.6064.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_si(
    required_mm: f64,
    old_slab_mm: f64,
    joints_ratio: f64,
    durability_ratio: f64,
    fatigue_ratio: f64,
    effective_mm: *mut f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(effective_mm), Output::Numbers(overlay_mm)];
    unsafe { scalar::one(OVERLAY_EFFECTIVE_BONDED, System::Si, [required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_overlay_effective_bonded_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_us_array(
    required_in: *const f64,
    old_slab_in: *const f64,
    joints_ratio: *const f64,
    durability_ratio: *const f64,
    fatigue_ratio: *const f64,
    effective_in: *mut f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(required_in), Input::Numbers(old_slab_in), Input::Numbers(joints_ratio), Input::Numbers(durability_ratio), Input::Numbers(fatigue_ratio)], results: [Output::Numbers(effective_in), Output::Numbers(overlay_in)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_EFFECTIVE_BONDED, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_overlay_effective_bonded_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_si_array(
    required_mm: *const f64,
    old_slab_mm: *const f64,
    joints_ratio: *const f64,
    durability_ratio: *const f64,
    fatigue_ratio: *const f64,
    effective_mm: *mut f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(required_mm), Input::Numbers(old_slab_mm), Input::Numbers(joints_ratio), Input::Numbers(durability_ratio), Input::Numbers(fatigue_ratio)], results: [Output::Numbers(effective_mm), Output::Numbers(overlay_mm)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_EFFECTIVE_BONDED, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_overlay_effective_bonded_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_us_why(
    required_in: f64,
    old_slab_in: f64,
    joints_ratio: f64,
    durability_ratio: f64,
    fatigue_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_EFFECTIVE_BONDED, System::Us, [required_in, old_slab_in, joints_ratio, durability_ratio, fatigue_ratio], text) }
}

/// Why ovs_overlay_effective_bonded_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_bonded_si_why(
    required_mm: f64,
    old_slab_mm: f64,
    joints_ratio: f64,
    durability_ratio: f64,
    fatigue_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_EFFECTIVE_BONDED, System::Si, [required_mm, old_slab_mm, joints_ratio, durability_ratio, fatigue_ratio], text) }
}

static OVERLAY_EFFECTIVE_UNBONDED: &Operation = row(OPERATIONS, "overlay_effective_unbonded");

/// What an old slab is worth under an unbonded overlay, and the overlay that follows.
///
/// Equation: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
/// effective^2), none where negative.
/// Taken for granted: a breaker or a levelling course lies between.
///
/// - `required_in` (in): single slab required for the traffic to come; more than 0 in, at most 78.7401574803 in.
/// - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
/// - `joints_ratio` (1): factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile; at least 0.3 1,
///   at most 1 1.
/// - `effective_in` (in), out: what the old slab is worth.
/// - `overlay_in` (in), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
/// Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_effective_unbonded_us(10, 8, 0.95, ...) gives effective_in = 7.6, overlay_in = 6.49923.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_us(
    required_in: f64,
    old_slab_in: f64,
    joints_ratio: f64,
    effective_in: *mut f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(effective_in), Output::Numbers(overlay_in)];
    unsafe { scalar::one(OVERLAY_EFFECTIVE_UNBONDED, System::Us, [required_in, old_slab_in, joints_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// What an old slab is worth under an unbonded overlay, and the overlay that follows.
///
/// Equation: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
/// effective^2), none where negative.
/// Taken for granted: a breaker or a levelling course lies between.
///
/// - `required_mm` (mm): single slab required for the traffic to come; more than 0 mm, at most 2000 mm.
/// - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
/// - `joints_ratio` (1): factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile; at least 0.3 1,
///   at most 1 1.
/// - `effective_mm` (mm), out: what the old slab is worth.
/// - `overlay_mm` (mm), out: thickness of the overlay.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
/// Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_overlay_effective_unbonded_si(254, 203.2, 0.95, ...) gives effective_mm = 193.04, overlay_mm = 165.08.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_si(
    required_mm: f64,
    old_slab_mm: f64,
    joints_ratio: f64,
    effective_mm: *mut f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(effective_mm), Output::Numbers(overlay_mm)];
    unsafe { scalar::one(OVERLAY_EFFECTIVE_UNBONDED, System::Si, [required_mm, old_slab_mm, joints_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_overlay_effective_unbonded_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_us_array(
    required_in: *const f64,
    old_slab_in: *const f64,
    joints_ratio: *const f64,
    effective_in: *mut f64,
    overlay_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(required_in), Input::Numbers(old_slab_in), Input::Numbers(joints_ratio)], results: [Output::Numbers(effective_in), Output::Numbers(overlay_in)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_EFFECTIVE_UNBONDED, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_overlay_effective_unbonded_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_si_array(
    required_mm: *const f64,
    old_slab_mm: *const f64,
    joints_ratio: *const f64,
    effective_mm: *mut f64,
    overlay_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(required_mm), Input::Numbers(old_slab_mm), Input::Numbers(joints_ratio)], results: [Output::Numbers(effective_mm), Output::Numbers(overlay_mm)], notes, n, bad_index };
    unsafe { scalar::array(OVERLAY_EFFECTIVE_UNBONDED, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_overlay_effective_unbonded_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_us_why(
    required_in: f64,
    old_slab_in: f64,
    joints_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_EFFECTIVE_UNBONDED, System::Us, [required_in, old_slab_in, joints_ratio], text) }
}

/// Why ovs_overlay_effective_unbonded_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_overlay_effective_unbonded_si_why(
    required_mm: f64,
    old_slab_mm: f64,
    joints_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(OVERLAY_EFFECTIVE_UNBONDED, System::Si, [required_mm, old_slab_mm, joints_ratio], text) }
}

static CONCRETE_MODULUS: &Operation = row(OPERATIONS, "concrete_modulus");

/// The modulus of elasticity of normal-weight concrete from its compressive strength.
///
/// Equation: modulus = 57000 sqrt(strength), psi.
/// Taken for granted: normal-weight concrete.
///
/// - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
/// - `modulus_psi` (psi), out: modulus of elasticity.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_modulus_us(4000, ...) gives modulus_psi = 3605000.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_us(
    strength_psi: f64,
    modulus_psi: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(modulus_psi)];
    unsafe { scalar::one(CONCRETE_MODULUS, System::Us, [strength_psi], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of elasticity of normal-weight concrete from its compressive strength.
///
/// Equation: modulus = 57000 sqrt(strength), psi.
/// Taken for granted: normal-weight concrete.
///
/// - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
/// - `modulus_mpa` (MPa), out: modulus of elasticity.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_modulus_si(27.579, ...) gives modulus_mpa = 24855.6.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_si(
    strength_mpa: f64,
    modulus_mpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(modulus_mpa)];
    unsafe { scalar::one(CONCRETE_MODULUS, System::Si, [strength_mpa], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_concrete_modulus_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_us_array(
    strength_psi: *const f64,
    modulus_psi: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_psi)], results: [Output::Numbers(modulus_psi)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_MODULUS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_concrete_modulus_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_si_array(
    strength_mpa: *const f64,
    modulus_mpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_mpa)], results: [Output::Numbers(modulus_mpa)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_MODULUS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_concrete_modulus_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_us_why(
    strength_psi: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_MODULUS, System::Us, [strength_psi], text) }
}

/// Why ovs_concrete_modulus_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_si_why(
    strength_mpa: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_MODULUS, System::Si, [strength_mpa], text) }
}

static CONCRETE_MODULUS_BY_DENSITY: &Operation = row(OPERATIONS, "concrete_modulus_by_density");

/// The modulus of elasticity of concrete from its compressive strength and unit weight.
///
/// Equation: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
/// Taken for granted: 90 to 160 lb/ft3.
///
/// - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
/// - `density_lb_per_ft3` (lb/ft3): unit weight; at least 90 lb/ft3, at most 160 lb/ft3.
/// - `modulus_psi` (psi), out: modulus of elasticity.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_modulus_by_density_us(4000, 145, ...) gives modulus_psi = 3644150.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_us(
    strength_psi: f64,
    density_lb_per_ft3: f64,
    modulus_psi: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(modulus_psi)];
    unsafe { scalar::one(CONCRETE_MODULUS_BY_DENSITY, System::Us, [strength_psi, density_lb_per_ft3], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of elasticity of concrete from its compressive strength and unit weight.
///
/// Equation: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
/// Taken for granted: 90 to 160 lb/ft3.
///
/// - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
/// - `density_kg_per_m3` (kg/m3): unit weight; at least 1441.66170366 kg/m3, at most 2562.95413983 kg/m3.
/// - `modulus_mpa` (MPa), out: modulus of elasticity.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_modulus_by_density_si(27.579, 2322.68, ...) gives modulus_mpa = 25125.5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_si(
    strength_mpa: f64,
    density_kg_per_m3: f64,
    modulus_mpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(modulus_mpa)];
    unsafe { scalar::one(CONCRETE_MODULUS_BY_DENSITY, System::Si, [strength_mpa, density_kg_per_m3], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_concrete_modulus_by_density_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_us_array(
    strength_psi: *const f64,
    density_lb_per_ft3: *const f64,
    modulus_psi: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_psi), Input::Numbers(density_lb_per_ft3)], results: [Output::Numbers(modulus_psi)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_MODULUS_BY_DENSITY, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_concrete_modulus_by_density_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_si_array(
    strength_mpa: *const f64,
    density_kg_per_m3: *const f64,
    modulus_mpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_mpa), Input::Numbers(density_kg_per_m3)], results: [Output::Numbers(modulus_mpa)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_MODULUS_BY_DENSITY, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_concrete_modulus_by_density_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_us_why(
    strength_psi: f64,
    density_lb_per_ft3: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_MODULUS_BY_DENSITY, System::Us, [strength_psi, density_lb_per_ft3], text) }
}

/// Why ovs_concrete_modulus_by_density_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_modulus_by_density_si_why(
    strength_mpa: f64,
    density_kg_per_m3: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_MODULUS_BY_DENSITY, System::Si, [strength_mpa, density_kg_per_m3], text) }
}

static CONCRETE_RUPTURE: &Operation = row(OPERATIONS, "concrete_rupture");

/// The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the
/// design of floors on ground.
///
/// Equation: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
/// Taken for granted: normal-weight concrete.
///
/// - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
/// - `formula`: which formula; 0 building code, 7.5, 1 floor design, 9.
/// - `rupture_psi` (psi), out: modulus of rupture.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm.
/// Basis: MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several), modulus of
/// rupture, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_rupture_us(4000, 1, ...) gives rupture_psi = 569.21.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_us(
    strength_psi: f64,
    formula: c_int,
    rupture_psi: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(rupture_psi)];
    unsafe { scalar::one(CONCRETE_RUPTURE, System::Us, [strength_psi, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the
/// design of floors on ground.
///
/// Equation: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
/// Taken for granted: normal-weight concrete.
///
/// - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
/// - `formula`: which formula; 0 building code, 7.5, 1 floor design, 9.
/// - `rupture_mpa` (MPa), out: modulus of rupture.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm.
/// Basis: MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several), modulus of
/// rupture, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_concrete_rupture_si(27.579, 1, ...) gives rupture_mpa = 3.92456.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_si(
    strength_mpa: f64,
    formula: c_int,
    rupture_mpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(rupture_mpa)];
    unsafe { scalar::one(CONCRETE_RUPTURE, System::Si, [strength_mpa, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_concrete_rupture_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_us_array(
    strength_psi: *const f64,
    formula: *const c_int,
    rupture_psi: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_psi), Input::Whole(formula)], results: [Output::Numbers(rupture_psi)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_RUPTURE, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_concrete_rupture_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_si_array(
    strength_mpa: *const f64,
    formula: *const c_int,
    rupture_mpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(strength_mpa), Input::Whole(formula)], results: [Output::Numbers(rupture_mpa)], notes, n, bad_index };
    unsafe { scalar::array(CONCRETE_RUPTURE, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_concrete_rupture_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_us_why(
    strength_psi: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_RUPTURE, System::Us, [strength_psi, f64::from(formula)], text) }
}

/// Why ovs_concrete_rupture_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_concrete_rupture_si_why(
    strength_mpa: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONCRETE_RUPTURE, System::Si, [strength_mpa, f64::from(formula)], text) }
}

static SUBGRADE_FROM_BEARING_RATIO: &Operation = row(OPERATIONS, "subgrade_from_bearing_ratio");

/// The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
///
/// Equation: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest of the
/// three.
/// Taken for granted: the sources differ a lot at low ratios; the lowest is on the safe side.
///
/// - `bearing_ratio_percent` (%): California bearing ratio; at least 2 %, at most 100 %.
/// - `source`: which correlation; 0 FAA, 1 Packard, 2 IRC:58, 3 lowest.
/// - `subgrade_pci` (pci), out: modulus of subgrade reaction k.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted elsewhere.
/// Basis: k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as quoted
/// elsewhere.
/// Basis: k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted elsewhere.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_bearing_ratio_us(5, 3, ...) gives subgrade_pci = 82.398.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_us(
    bearing_ratio_percent: f64,
    source: c_int,
    subgrade_pci: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(subgrade_pci)];
    unsafe { scalar::one(SUBGRADE_FROM_BEARING_RATIO, System::Us, [bearing_ratio_percent, f64::from(source)], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
///
/// Equation: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest of the
/// three.
/// Taken for granted: the sources differ a lot at low ratios; the lowest is on the safe side.
///
/// - `bearing_ratio_percent` (%): California bearing ratio; at least 2 %, at most 100 %.
/// - `source`: which correlation; 0 FAA, 1 Packard, 2 IRC:58, 3 lowest.
/// - `subgrade_mpa_per_m` (MPa/m), out: modulus of subgrade reaction k.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted elsewhere.
/// Basis: k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as quoted
/// elsewhere.
/// Basis: k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted elsewhere.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_bearing_ratio_si(5, 3, ...) gives subgrade_mpa_per_m = 22.3667.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_si(
    bearing_ratio_percent: f64,
    source: c_int,
    subgrade_mpa_per_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(subgrade_mpa_per_m)];
    unsafe { scalar::one(SUBGRADE_FROM_BEARING_RATIO, System::Si, [bearing_ratio_percent, f64::from(source)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_bearing_ratio_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_us_array(
    bearing_ratio_percent: *const f64,
    source: *const c_int,
    subgrade_pci: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(bearing_ratio_percent), Input::Whole(source)], results: [Output::Numbers(subgrade_pci)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_BEARING_RATIO, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_bearing_ratio_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_si_array(
    bearing_ratio_percent: *const f64,
    source: *const c_int,
    subgrade_mpa_per_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(bearing_ratio_percent), Input::Whole(source)], results: [Output::Numbers(subgrade_mpa_per_m)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_BEARING_RATIO, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_subgrade_from_bearing_ratio_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_us_why(
    bearing_ratio_percent: f64,
    source: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_BEARING_RATIO, System::Us, [bearing_ratio_percent, f64::from(source)], text) }
}

/// Why ovs_subgrade_from_bearing_ratio_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_bearing_ratio_si_why(
    bearing_ratio_percent: f64,
    source: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_BEARING_RATIO, System::Si, [bearing_ratio_percent, f64::from(source)], text) }
}

static SUBGRADE_FROM_RESILIENT: &Operation = row(OPERATIONS, "subgrade_from_resilient");

/// The modulus of subgrade reaction from the resilient modulus of the soil.
///
/// Equation: subgrade = resilient / 19.4, pci and psi.
/// Taken for granted: no subbase, no rock near below.
///
/// - `resilient_psi` (psi): resilient modulus of the soil; at least 500 psi, at most 38000 psi.
/// - `subgrade_pci` (pci), out: modulus of subgrade reaction k.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_resilient_us(3000, ...) gives subgrade_pci = 154.639.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_us(
    resilient_psi: f64,
    subgrade_pci: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(subgrade_pci)];
    unsafe { scalar::one(SUBGRADE_FROM_RESILIENT, System::Us, [resilient_psi], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of subgrade reaction from the resilient modulus of the soil.
///
/// Equation: subgrade = resilient / 19.4, pci and psi.
/// Taken for granted: no subbase, no rock near below.
///
/// - `resilient_mpa` (MPa): resilient modulus of the soil; at least 3.44737864658 MPa, at most 262.00077714 MPa.
/// - `subgrade_mpa_per_m` (MPa/m), out: modulus of subgrade reaction k.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_resilient_si(20.6843, ...) gives subgrade_mpa_per_m = 41.9764.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_si(
    resilient_mpa: f64,
    subgrade_mpa_per_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(subgrade_mpa_per_m)];
    unsafe { scalar::one(SUBGRADE_FROM_RESILIENT, System::Si, [resilient_mpa], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_resilient_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_us_array(
    resilient_psi: *const f64,
    subgrade_pci: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(resilient_psi)], results: [Output::Numbers(subgrade_pci)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_RESILIENT, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_resilient_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_si_array(
    resilient_mpa: *const f64,
    subgrade_mpa_per_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(resilient_mpa)], results: [Output::Numbers(subgrade_mpa_per_m)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_RESILIENT, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_subgrade_from_resilient_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_us_why(
    resilient_psi: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_RESILIENT, System::Us, [resilient_psi], text) }
}

/// Why ovs_subgrade_from_resilient_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_resilient_si_why(
    resilient_mpa: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_RESILIENT, System::Si, [resilient_mpa], text) }
}

static SUBGRADE_FROM_SOIL: &Operation = row(OPERATIONS, "subgrade_from_soil");

/// The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
///
/// Equation: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170; clean
/// sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
/// Taken for granted: the lower end is taken; the upper end is not exceeded without a reason.
///
/// - `soil`: what the slab rests on; 0 soft, 1 medium, 2 firm, 3 silt and clay, 4 sand with silt or clay, 5 clean
///   sand and gravel, 6 cement-treated subbase, 7 old slab.
/// - `least_pci` (pci), out: lower end: the one to take.
/// - `greatest_pci` (pci), out: upper end.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
/// classes and subbase tables, from memory: confirm.
/// Basis: over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_soil_us(1, ...) gives least_pci = 100, greatest_pci = 100.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_us(
    soil: c_int,
    least_pci: *mut f64,
    greatest_pci: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_pci), Output::Numbers(greatest_pci)];
    unsafe { scalar::one(SUBGRADE_FROM_SOIL, System::Us, [f64::from(soil)], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
///
/// Equation: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170; clean
/// sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
/// Taken for granted: the lower end is taken; the upper end is not exceeded without a reason.
///
/// - `soil`: what the slab rests on; 0 soft, 1 medium, 2 firm, 3 silt and clay, 4 sand with silt or clay, 5 clean
///   sand and gravel, 6 cement-treated subbase, 7 old slab.
/// - `least_mpa_per_m` (MPa/m), out: lower end: the one to take.
/// - `greatest_mpa_per_m` (MPa/m), out: upper end.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
/// classes and subbase tables, from memory: confirm.
/// Basis: over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_subgrade_from_soil_si(1, ...) gives least_mpa_per_m = 27.1447, greatest_mpa_per_m = 27.1447.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_si(
    soil: c_int,
    least_mpa_per_m: *mut f64,
    greatest_mpa_per_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_mpa_per_m), Output::Numbers(greatest_mpa_per_m)];
    unsafe { scalar::one(SUBGRADE_FROM_SOIL, System::Si, [f64::from(soil)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_soil_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_us_array(
    soil: *const c_int,
    least_pci: *mut f64,
    greatest_pci: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(soil)], results: [Output::Numbers(least_pci), Output::Numbers(greatest_pci)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_SOIL, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_from_soil_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_si_array(
    soil: *const c_int,
    least_mpa_per_m: *mut f64,
    greatest_mpa_per_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(soil)], results: [Output::Numbers(least_mpa_per_m), Output::Numbers(greatest_mpa_per_m)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_FROM_SOIL, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_subgrade_from_soil_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_us_why(
    soil: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_SOIL, System::Us, [f64::from(soil)], text) }
}

/// Why ovs_subgrade_from_soil_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_from_soil_si_why(
    soil: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_FROM_SOIL, System::Si, [f64::from(soil)], text) }
}

static SUBGRADE_WITH_SUBBASE: &Operation = row(OPERATIONS, "subgrade_with_subbase");

/// The modulus of subgrade reaction on top of a subbase.
///
/// Equation: by table, straight between rows and columns; refused outside.
/// Taken for granted: a compacted subbase all over.
///
/// - `subgrade_pci` (pci): modulus of subgrade reaction under the subbase; at least 50 pci, at most 300 pci.
/// - `thickness_in` (in): thickness of the subbase; at least 4 in, at most 12 in.
/// - `kind`: what the subbase is; 0 granular, 1 cement-treated.
/// - `top_pci` (pci), out: modulus of subgrade reaction on top.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTSIDE_TABLE.
/// Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
/// classes and subbase tables, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_subgrade_with_subbase_us(100, 6, 0, ...) gives top_pci = 140.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_us(
    subgrade_pci: f64,
    thickness_in: f64,
    kind: c_int,
    top_pci: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(top_pci)];
    unsafe { scalar::one(SUBGRADE_WITH_SUBBASE, System::Us, [subgrade_pci, thickness_in, f64::from(kind)], results, notes, Message::new(msg, msg_len)) }
}

/// The modulus of subgrade reaction on top of a subbase.
///
/// Equation: by table, straight between rows and columns; refused outside.
/// Taken for granted: a compacted subbase all over.
///
/// - `subgrade_mpa_per_m` (MPa/m): modulus of subgrade reaction under the subbase; at least 13.5723568763 MPa/m, at
///   most 81.4341412579 MPa/m.
/// - `thickness_mm` (mm): thickness of the subbase; at least 101.6 mm, at most 304.8 mm.
/// - `kind`: what the subbase is; 0 granular, 1 cement-treated.
/// - `top_mpa_per_m` (MPa/m), out: modulus of subgrade reaction on top.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTSIDE_TABLE.
/// Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
/// classes and subbase tables, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_subgrade_with_subbase_si(27.1447, 152.4, 0, ...) gives top_mpa_per_m = 38.0026.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_si(
    subgrade_mpa_per_m: f64,
    thickness_mm: f64,
    kind: c_int,
    top_mpa_per_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(top_mpa_per_m)];
    unsafe { scalar::one(SUBGRADE_WITH_SUBBASE, System::Si, [subgrade_mpa_per_m, thickness_mm, f64::from(kind)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_with_subbase_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_us_array(
    subgrade_pci: *const f64,
    thickness_in: *const f64,
    kind: *const c_int,
    top_pci: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(subgrade_pci), Input::Numbers(thickness_in), Input::Whole(kind)], results: [Output::Numbers(top_pci)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_WITH_SUBBASE, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_subgrade_with_subbase_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_si_array(
    subgrade_mpa_per_m: *const f64,
    thickness_mm: *const f64,
    kind: *const c_int,
    top_mpa_per_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(subgrade_mpa_per_m), Input::Numbers(thickness_mm), Input::Whole(kind)], results: [Output::Numbers(top_mpa_per_m)], notes, n, bad_index };
    unsafe { scalar::array(SUBGRADE_WITH_SUBBASE, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_subgrade_with_subbase_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_us_why(
    subgrade_pci: f64,
    thickness_in: f64,
    kind: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_WITH_SUBBASE, System::Us, [subgrade_pci, thickness_in, f64::from(kind)], text) }
}

/// Why ovs_subgrade_with_subbase_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_subgrade_with_subbase_si_why(
    subgrade_mpa_per_m: f64,
    thickness_mm: f64,
    kind: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SUBGRADE_WITH_SUBBASE, System::Si, [subgrade_mpa_per_m, thickness_mm, f64::from(kind)], text) }
}

static STIFFNESS_RADIUS: &Operation = row(OPERATIONS, "stiffness_radius");

/// The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
///
/// Equation: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
/// Taken for granted: one layer, resting everywhere on springs.
///
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `stiffness_in` (in), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Since 0.1.0.
/// Example: ovs_stiffness_radius_us(10, 4000000, 0.15, 100, ...) gives stiffness_in = 42.9725.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_us(
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stiffness_in)];
    unsafe { scalar::one(STIFFNESS_RADIUS, System::Us, [thickness_in, modulus_psi, poisson_ratio, subgrade_pci], results, notes, Message::new(msg, msg_len)) }
}

/// The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
///
/// Equation: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
/// Taken for granted: one layer, resting everywhere on springs.
///
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `stiffness_mm` (mm), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Since 0.1.0.
/// Example: ovs_stiffness_radius_si(254, 27579, 0.15, 27.1447, ...) gives stiffness_mm = 1091.5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_si(
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stiffness_mm)];
    unsafe { scalar::one(STIFFNESS_RADIUS, System::Si, [thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_stiffness_radius_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_us_array(
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci)], results: [Output::Numbers(stiffness_in)], notes, n, bad_index };
    unsafe { scalar::array(STIFFNESS_RADIUS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_stiffness_radius_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_si_array(
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m)], results: [Output::Numbers(stiffness_mm)], notes, n, bad_index };
    unsafe { scalar::array(STIFFNESS_RADIUS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_stiffness_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_us_why(
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(STIFFNESS_RADIUS, System::Us, [thickness_in, modulus_psi, poisson_ratio, subgrade_pci], text) }
}

/// Why ovs_stiffness_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_stiffness_radius_si_why(
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(STIFFNESS_RADIUS, System::Si, [thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m], text) }
}

static CONTACT_RADIUS: &Operation = row(OPERATIONS, "contact_radius");

/// The radius of the circle that carries a load at its contact pressure.
///
/// Equation: radius = sqrt(load / (pi pressure)).
/// Taken for granted: a tyre presses with its own pressure.
///
/// - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
/// - `pressure_psi` (psi): contact pressure; at least 0.14503773773 psi, at most 14503.773773 psi.
/// - `radius_in` (in), out: radius of the contact.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: a circle of the load over its pressure: derived.
/// Since 0.1.0.
/// Example: ovs_contact_radius_us(4000, 80, ...) gives radius_in = 3.98942.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_us(
    load_lbf: f64,
    pressure_psi: f64,
    radius_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(radius_in)];
    unsafe { scalar::one(CONTACT_RADIUS, System::Us, [load_lbf, pressure_psi], results, notes, Message::new(msg, msg_len)) }
}

/// The radius of the circle that carries a load at its contact pressure.
///
/// Equation: radius = sqrt(load / (pi pressure)).
/// Taken for granted: a tyre presses with its own pressure.
///
/// - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
/// - `pressure_kpa` (kPa): contact pressure; at least 1 kPa, at most 100000 kPa.
/// - `radius_mm` (mm), out: radius of the contact.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: a circle of the load over its pressure: derived.
/// Since 0.1.0.
/// Example: ovs_contact_radius_si(17.7929, 551.581, ...) gives radius_mm = 101.331.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_si(
    load_kn: f64,
    pressure_kpa: f64,
    radius_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(radius_mm)];
    unsafe { scalar::one(CONTACT_RADIUS, System::Si, [load_kn, pressure_kpa], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_contact_radius_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_us_array(
    load_lbf: *const f64,
    pressure_psi: *const f64,
    radius_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(pressure_psi)], results: [Output::Numbers(radius_in)], notes, n, bad_index };
    unsafe { scalar::array(CONTACT_RADIUS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_contact_radius_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_si_array(
    load_kn: *const f64,
    pressure_kpa: *const f64,
    radius_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(pressure_kpa)], results: [Output::Numbers(radius_mm)], notes, n, bad_index };
    unsafe { scalar::array(CONTACT_RADIUS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_contact_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_us_why(
    load_lbf: f64,
    pressure_psi: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONTACT_RADIUS, System::Us, [load_lbf, pressure_psi], text) }
}

/// Why ovs_contact_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_si_why(
    load_kn: f64,
    pressure_kpa: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONTACT_RADIUS, System::Si, [load_kn, pressure_kpa], text) }
}

static CONTACT_RADIUS_DUAL: &Operation = row(OPERATIONS, "contact_radius_dual");

/// The radius of the one circle that stands for dual tyres.
///
/// Equation: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
/// Taken for granted: load of one of the two tyres.
///
/// - `load_lbf` (lbf): load of one of the two tyres; more than 0 lbf, at most 2248089.431 lbf.
/// - `pressure_psi` (psi): contact pressure; at least 0.14503773773 psi, at most 14503.773773 psi.
/// - `spacing_in` (in): middle to middle of the two tyres; at least 1.96850393701 in, at most 78.7401574803 in.
/// - `radius_in` (in), out: radius of the circle.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_contact_radius_dual_us(5000, 88.42, 14, ...) gives radius_in = 7.85423.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_us(
    load_lbf: f64,
    pressure_psi: f64,
    spacing_in: f64,
    radius_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(radius_in)];
    unsafe { scalar::one(CONTACT_RADIUS_DUAL, System::Us, [load_lbf, pressure_psi, spacing_in], results, notes, Message::new(msg, msg_len)) }
}

/// The radius of the one circle that stands for dual tyres.
///
/// Equation: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
/// Taken for granted: load of one of the two tyres.
///
/// - `load_kn` (kN): load of one of the two tyres; more than 0 kN, at most 10000 kN.
/// - `pressure_kpa` (kPa): contact pressure; at least 1 kPa, at most 100000 kPa.
/// - `spacing_mm` (mm): middle to middle of the two tyres; at least 50 mm, at most 2000 mm.
/// - `radius_mm` (mm), out: radius of the circle.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_contact_radius_dual_si(22.2411, 609.634, 355.6, ...) gives radius_mm = 199.498.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_si(
    load_kn: f64,
    pressure_kpa: f64,
    spacing_mm: f64,
    radius_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(radius_mm)];
    unsafe { scalar::one(CONTACT_RADIUS_DUAL, System::Si, [load_kn, pressure_kpa, spacing_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_contact_radius_dual_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_us_array(
    load_lbf: *const f64,
    pressure_psi: *const f64,
    spacing_in: *const f64,
    radius_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(pressure_psi), Input::Numbers(spacing_in)], results: [Output::Numbers(radius_in)], notes, n, bad_index };
    unsafe { scalar::array(CONTACT_RADIUS_DUAL, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_contact_radius_dual_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_si_array(
    load_kn: *const f64,
    pressure_kpa: *const f64,
    spacing_mm: *const f64,
    radius_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(pressure_kpa), Input::Numbers(spacing_mm)], results: [Output::Numbers(radius_mm)], notes, n, bad_index };
    unsafe { scalar::array(CONTACT_RADIUS_DUAL, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_contact_radius_dual_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_us_why(
    load_lbf: f64,
    pressure_psi: f64,
    spacing_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONTACT_RADIUS_DUAL, System::Us, [load_lbf, pressure_psi, spacing_in], text) }
}

/// Why ovs_contact_radius_dual_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_contact_radius_dual_si_why(
    load_kn: f64,
    pressure_kpa: f64,
    spacing_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CONTACT_RADIUS_DUAL, System::Si, [load_kn, pressure_kpa, spacing_mm], text) }
}

static EQUIVALENT_RADIUS: &Operation = row(OPERATIONS, "equivalent_radius");

/// Westergaard's equivalent radius, which mends the stress right under a small contact.
///
/// Equation: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724 thickness, else
/// radius.
/// Taken for granted: interior load, and the edge form of 1926.
///
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `equivalent_in` (in), out: equivalent radius.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Since 0.1.0.
/// Example: ovs_equivalent_radius_us(6, 10, ...) gives equivalent_in = 5.80388.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_us(
    radius_in: f64,
    thickness_in: f64,
    equivalent_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_in)];
    unsafe { scalar::one(EQUIVALENT_RADIUS, System::Us, [radius_in, thickness_in], results, notes, Message::new(msg, msg_len)) }
}

/// Westergaard's equivalent radius, which mends the stress right under a small contact.
///
/// Equation: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724 thickness, else
/// radius.
/// Taken for granted: interior load, and the edge form of 1926.
///
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `equivalent_mm` (mm), out: equivalent radius.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Since 0.1.0.
/// Example: ovs_equivalent_radius_si(152.4, 254, ...) gives equivalent_mm = 147.419.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_si(
    radius_mm: f64,
    thickness_mm: f64,
    equivalent_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_mm)];
    unsafe { scalar::one(EQUIVALENT_RADIUS, System::Si, [radius_mm, thickness_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_equivalent_radius_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_us_array(
    radius_in: *const f64,
    thickness_in: *const f64,
    equivalent_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(radius_in), Input::Numbers(thickness_in)], results: [Output::Numbers(equivalent_in)], notes, n, bad_index };
    unsafe { scalar::array(EQUIVALENT_RADIUS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_equivalent_radius_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_si_array(
    radius_mm: *const f64,
    thickness_mm: *const f64,
    equivalent_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(radius_mm), Input::Numbers(thickness_mm)], results: [Output::Numbers(equivalent_mm)], notes, n, bad_index };
    unsafe { scalar::array(EQUIVALENT_RADIUS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_equivalent_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_us_why(
    radius_in: f64,
    thickness_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EQUIVALENT_RADIUS, System::Us, [radius_in, thickness_in], text) }
}

/// Why ovs_equivalent_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_equivalent_radius_si_why(
    radius_mm: f64,
    thickness_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EQUIVALENT_RADIUS, System::Si, [radius_mm, thickness_mm], text) }
}

static INTERIOR_LOAD: &Operation = row(OPERATIONS, "interior_load");

/// Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
///
/// Equation: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8 subgrade
/// l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative stiffness, b the equivalent
/// radius.
/// Taken for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for the
/// deflection, and lies on its subgrade everywhere.
///
/// - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `stress_psi` (psi), out: greatest tensile stress.
/// - `deflection_in` (in), out: settlement under the load.
/// - `stiffness_in` (in), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_interior_load_us(10000, 6, 10, 4000000, 0.15, 100, ...) gives stress_psi = 143.748, deflection_in = 0.00669903, stiffness_in = 42.9725.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_us(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)];
    unsafe { scalar::one(INTERIOR_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci], results, notes, Message::new(msg, msg_len)) }
}

/// Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
///
/// Equation: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8 subgrade
/// l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative stiffness, b the equivalent
/// radius.
/// Taken for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for the
/// deflection, and lies on its subgrade everywhere.
///
/// - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `stress_mpa` (MPa), out: greatest tensile stress.
/// - `deflection_mm` (mm), out: settlement under the load.
/// - `stiffness_mm` (mm), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_interior_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, ...) gives stress_mpa = 0.99111, deflection_mm = 0.170155, stiffness_mm = 1091.5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_si(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)];
    unsafe { scalar::one(INTERIOR_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_interior_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_us_array(
    load_lbf: *const f64,
    radius_in: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(radius_in), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci)], results: [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)], notes, n, bad_index };
    unsafe { scalar::array(INTERIOR_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_interior_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_si_array(
    load_kn: *const f64,
    radius_mm: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(radius_mm), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m)], results: [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)], notes, n, bad_index };
    unsafe { scalar::array(INTERIOR_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_interior_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_us_why(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(INTERIOR_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci], text) }
}

/// Why ovs_interior_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_interior_load_si_why(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(INTERIOR_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m], text) }
}

static EDGE_LOAD: &Operation = row(OPERATIONS, "edge_load");

/// Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a
/// circle or a semicircle.
///
/// Equation: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100 subgrade
/// radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2 poisson) radius / l;
/// semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l; deflection = sqrt(2 + 1.2 poisson) load /
/// sqrt(modulus thickness^3 subgrade) (1 - d radius / l), d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
/// Taken for granted: tension at the bottom along the edge, nothing carried across a joint; the circle touches the
/// edge from inside; a semicircle has its straight side on the edge and its own radius, sqrt 2 of the circle's at
/// the same load and pressure; the slab is at least 5 l across, 8 l for the deflection.
///
/// - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `footprint`: shape of the contact; the radius is that shape's own; 0 circle, 1 semicircle.
/// - `stress_psi` (psi), out: greatest tensile stress.
/// - `deflection_in` (in), out: settlement under the load.
/// - `stiffness_in` (in), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_edge_load_us(10000, 6, 10, 4000000, 0.15, 100, 0, ...) gives stress_psi = 279.296, deflection_in = 0.0206724, stiffness_in = 42.9725.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_us(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    footprint: c_int,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)];
    unsafe { scalar::one(EDGE_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, f64::from(footprint)], results, notes, Message::new(msg, msg_len)) }
}

/// Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a
/// circle or a semicircle.
///
/// Equation: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100 subgrade
/// radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2 poisson) radius / l;
/// semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l; deflection = sqrt(2 + 1.2 poisson) load /
/// sqrt(modulus thickness^3 subgrade) (1 - d radius / l), d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
/// Taken for granted: tension at the bottom along the edge, nothing carried across a joint; the circle touches the
/// edge from inside; a semicircle has its straight side on the edge and its own radius, sqrt 2 of the circle's at
/// the same load and pressure; the slab is at least 5 l across, 8 l for the deflection.
///
/// - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `footprint`: shape of the contact; the radius is that shape's own; 0 circle, 1 semicircle.
/// - `stress_mpa` (MPa), out: greatest tensile stress.
/// - `deflection_mm` (mm), out: settlement under the load.
/// - `stiffness_mm` (mm), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_edge_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, 0, ...) gives stress_mpa = 1.92568, deflection_mm = 0.525079, stiffness_mm = 1091.5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_si(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    footprint: c_int,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)];
    unsafe { scalar::one(EDGE_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, f64::from(footprint)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_edge_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_us_array(
    load_lbf: *const f64,
    radius_in: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    footprint: *const c_int,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(radius_in), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci), Input::Whole(footprint)], results: [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)], notes, n, bad_index };
    unsafe { scalar::array(EDGE_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_edge_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_si_array(
    load_kn: *const f64,
    radius_mm: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    footprint: *const c_int,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(radius_mm), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m), Input::Whole(footprint)], results: [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)], notes, n, bad_index };
    unsafe { scalar::array(EDGE_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_edge_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_us_why(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    footprint: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EDGE_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, f64::from(footprint)], text) }
}

/// Why ovs_edge_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_si_why(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    footprint: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EDGE_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, f64::from(footprint)], text) }
}

static EDGE_LOAD_1926: &Operation = row(OPERATIONS, "edge_load_1926");

/// Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a
/// quarter to a half more.
///
/// Equation: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
/// Taken for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l across.
///
/// - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `stress_psi` (psi), out: greatest tensile stress.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_edge_load_1926_us(10000, 6, 10, 4000000, 100, ...) gives stress_psi = 219.47.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_us(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    subgrade_pci: f64,
    stress_psi: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_psi)];
    unsafe { scalar::one(EDGE_LOAD_1926, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci], results, notes, Message::new(msg, msg_len)) }
}

/// Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a
/// quarter to a half more.
///
/// Equation: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
/// Taken for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l across.
///
/// - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `stress_mpa` (MPa), out: greatest tensile stress.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
/// Engineering I (lecture 29), equivalent radius.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_edge_load_1926_si(44.4822, 152.4, 254, 27579, 27.1447, ...) gives stress_mpa = 1.51319.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_si(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    subgrade_mpa_per_m: f64,
    stress_mpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_mpa)];
    unsafe { scalar::one(EDGE_LOAD_1926, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_edge_load_1926_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_us_array(
    load_lbf: *const f64,
    radius_in: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    subgrade_pci: *const f64,
    stress_psi: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(radius_in), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(subgrade_pci)], results: [Output::Numbers(stress_psi)], notes, n, bad_index };
    unsafe { scalar::array(EDGE_LOAD_1926, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_edge_load_1926_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_si_array(
    load_kn: *const f64,
    radius_mm: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    subgrade_mpa_per_m: *const f64,
    stress_mpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(radius_mm), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(subgrade_mpa_per_m)], results: [Output::Numbers(stress_mpa)], notes, n, bad_index };
    unsafe { scalar::array(EDGE_LOAD_1926, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_edge_load_1926_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_us_why(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    subgrade_pci: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EDGE_LOAD_1926, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, subgrade_pci], text) }
}

/// Why ovs_edge_load_1926_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_load_1926_si_why(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    subgrade_mpa_per_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(EDGE_LOAD_1926, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, subgrade_mpa_per_m], text) }
}

static CORNER_LOAD: &Operation = row(OPERATIONS, "corner_load");

/// Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
///
/// Equation: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
/// (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load / thickness^2 (1 -
/// (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
/// Taken for granted: tension at the top across the bisector; the circle touches both edges; nothing carried across
/// joints; the slab is at least 4 l across, 5 l for the deflection; the contact radius is at most 0.35 l
/// (Westergaard) or 0.25 l (Ioannides): wider, the stress comes out too small.
///
/// - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `formula`: which formula; 0 Westergaard 1926, 1 Ioannides 1985.
/// - `stress_psi` (psi), out: greatest tensile stress.
/// - `deflection_in` (in), out: settlement under the load.
/// - `stiffness_in` (in), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_corner_load_us(10000, 6, 10, 4000000, 0.15, 100, 1, ...) gives stress_psi = 190.254, deflection_in = 0.0560091, stiffness_in = 42.9725.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_us(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    formula: c_int,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)];
    unsafe { scalar::one(CORNER_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
///
/// Equation: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
/// (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load / thickness^2 (1 -
/// (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
/// Taken for granted: tension at the top across the bisector; the circle touches both edges; nothing carried across
/// joints; the slab is at least 4 l across, 5 l for the deflection; the contact radius is at most 0.35 l
/// (Westergaard) or 0.25 l (Ioannides): wider, the stress comes out too small.
///
/// - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `formula`: which formula; 0 Westergaard 1926, 1 Ioannides 1985.
/// - `stress_mpa` (MPa), out: greatest tensile stress.
/// - `deflection_mm` (mm), out: settlement under the load.
/// - `stiffness_mm` (mm), out: radius of relative stiffness.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_corner_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, 1, ...) gives stress_mpa = 1.31176, deflection_mm = 1.42263, stiffness_mm = 1091.5.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_si(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    formula: c_int,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)];
    unsafe { scalar::one(CORNER_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_corner_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_us_array(
    load_lbf: *const f64,
    radius_in: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    formula: *const c_int,
    stress_psi: *mut f64,
    deflection_in: *mut f64,
    stiffness_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_lbf), Input::Numbers(radius_in), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci), Input::Whole(formula)], results: [Output::Numbers(stress_psi), Output::Numbers(deflection_in), Output::Numbers(stiffness_in)], notes, n, bad_index };
    unsafe { scalar::array(CORNER_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_corner_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_si_array(
    load_kn: *const f64,
    radius_mm: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    formula: *const c_int,
    stress_mpa: *mut f64,
    deflection_mm: *mut f64,
    stiffness_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(load_kn), Input::Numbers(radius_mm), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m), Input::Whole(formula)], results: [Output::Numbers(stress_mpa), Output::Numbers(deflection_mm), Output::Numbers(stiffness_mm)], notes, n, bad_index };
    unsafe { scalar::array(CORNER_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_corner_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_us_why(
    load_lbf: f64,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CORNER_LOAD, System::Us, [load_lbf, radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, f64::from(formula)], text) }
}

/// Why ovs_corner_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_load_si_why(
    load_kn: f64,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CORNER_LOAD, System::Si, [load_kn, radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, f64::from(formula)], text) }
}

static CORNER_CRACK: &Operation = row(OPERATIONS, "corner_crack");

/// How far from a corner it breaks off under a load, along the bisector.
///
/// Equation: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x stiffness),
/// which is 2.38 sqrt(radius x stiffness).
/// Taken for granted: one load in the corner.
///
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `stiffness_in` (in): relative stiffness, its radius; at least 0.393700787402 in, at most 1968.50393701 in.
/// - `formula`: which formula; 0 textbook, 2.58, 1 Westergaard, 2.38.
/// - `distance_in` (in), out: distance from the corner.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Since 0.1.0.
/// Example: ovs_corner_crack_us(6, 43, 0, ...) gives distance_in = 41.4409.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_us(
    radius_in: f64,
    stiffness_in: f64,
    formula: c_int,
    distance_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(distance_in)];
    unsafe { scalar::one(CORNER_CRACK, System::Us, [radius_in, stiffness_in, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// How far from a corner it breaks off under a load, along the bisector.
///
/// Equation: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x stiffness),
/// which is 2.38 sqrt(radius x stiffness).
/// Taken for granted: one load in the corner.
///
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `stiffness_mm` (mm): relative stiffness, its radius; at least 10 mm, at most 50000 mm.
/// - `formula`: which formula; 0 textbook, 2.58, 1 Westergaard, 2.38.
/// - `distance_mm` (mm), out: distance from the corner.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Since 0.1.0.
/// Example: ovs_corner_crack_si(152.4, 1092.2, 0, ...) gives distance_mm = 1052.6.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_si(
    radius_mm: f64,
    stiffness_mm: f64,
    formula: c_int,
    distance_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(distance_mm)];
    unsafe { scalar::one(CORNER_CRACK, System::Si, [radius_mm, stiffness_mm, f64::from(formula)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_corner_crack_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_us_array(
    radius_in: *const f64,
    stiffness_in: *const f64,
    formula: *const c_int,
    distance_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(radius_in), Input::Numbers(stiffness_in), Input::Whole(formula)], results: [Output::Numbers(distance_in)], notes, n, bad_index };
    unsafe { scalar::array(CORNER_CRACK, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_corner_crack_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_si_array(
    radius_mm: *const f64,
    stiffness_mm: *const f64,
    formula: *const c_int,
    distance_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(radius_mm), Input::Numbers(stiffness_mm), Input::Whole(formula)], results: [Output::Numbers(distance_mm)], notes, n, bad_index };
    unsafe { scalar::array(CORNER_CRACK, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_corner_crack_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_us_why(
    radius_in: f64,
    stiffness_in: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CORNER_CRACK, System::Us, [radius_in, stiffness_in, f64::from(formula)], text) }
}

/// Why ovs_corner_crack_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_corner_crack_si_why(
    radius_mm: f64,
    stiffness_mm: f64,
    formula: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CORNER_CRACK, System::Si, [radius_mm, stiffness_mm, f64::from(formula)], text) }
}

static LOAD_INFLUENCE: &Operation = row(OPERATIONS, "load_influence");

/// What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
///
/// Equation: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load / (subgrade
/// stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson Re F + (1 - poisson)
/// Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
/// Taken for granted: a thin plate without end; stress = 6 moment / thickness^2.
///
/// - `distance_in` (in): from the middle of the load; at least 0 in, at most 39370.0787402 in.
/// - `radius_in` (in): radius of the contact, at most 2 radii of relative stiffness; at least 0.0393700787402 in,
///   at most 196.850393701 in.
/// - `stiffness_in` (in): relative stiffness, its radius; at least 0.393700787402 in, at most 1968.50393701 in.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `deflection_ratio` (1), out: deflection over load / (subgrade stiffness^2).
/// - `radial_ratio` (1), out: moment towards the load, for each unit of width and load.
/// - `tangential_ratio` (1), out: across that direction, for each unit of width and load.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
/// (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_load_influence_us(40, 6, 42.97, 0.15, ...) gives deflection_ratio = 0.0825484, radial_ratio = 0.00245615, tangential_ratio = 0.0595816.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_us(
    distance_in: f64,
    radius_in: f64,
    stiffness_in: f64,
    poisson_ratio: f64,
    deflection_ratio: *mut f64,
    radial_ratio: *mut f64,
    tangential_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(deflection_ratio), Output::Numbers(radial_ratio), Output::Numbers(tangential_ratio)];
    unsafe { scalar::one(LOAD_INFLUENCE, System::Us, [distance_in, radius_in, stiffness_in, poisson_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
///
/// Equation: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load / (subgrade
/// stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson Re F + (1 - poisson)
/// Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
/// Taken for granted: a thin plate without end; stress = 6 moment / thickness^2.
///
/// - `distance_mm` (mm): from the middle of the load; at least 0 mm, at most 1000000 mm.
/// - `radius_mm` (mm): radius of the contact, at most 2 radii of relative stiffness; at least 1 mm, at most 5000
///   mm.
/// - `stiffness_mm` (mm): relative stiffness, its radius; at least 10 mm, at most 50000 mm.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `deflection_ratio` (1), out: deflection over load / (subgrade stiffness^2).
/// - `radial_ratio` (1), out: moment towards the load, for each unit of width and load.
/// - `tangential_ratio` (1), out: across that direction, for each unit of width and load.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
/// Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
/// (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_load_influence_si(1016, 152.4, 1091.44, 0.15, ...) gives deflection_ratio = 0.0825484, radial_ratio = 0.00245615, tangential_ratio = 0.0595816.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_si(
    distance_mm: f64,
    radius_mm: f64,
    stiffness_mm: f64,
    poisson_ratio: f64,
    deflection_ratio: *mut f64,
    radial_ratio: *mut f64,
    tangential_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(deflection_ratio), Output::Numbers(radial_ratio), Output::Numbers(tangential_ratio)];
    unsafe { scalar::one(LOAD_INFLUENCE, System::Si, [distance_mm, radius_mm, stiffness_mm, poisson_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_load_influence_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_us_array(
    distance_in: *const f64,
    radius_in: *const f64,
    stiffness_in: *const f64,
    poisson_ratio: *const f64,
    deflection_ratio: *mut f64,
    radial_ratio: *mut f64,
    tangential_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(distance_in), Input::Numbers(radius_in), Input::Numbers(stiffness_in), Input::Numbers(poisson_ratio)], results: [Output::Numbers(deflection_ratio), Output::Numbers(radial_ratio), Output::Numbers(tangential_ratio)], notes, n, bad_index };
    unsafe { scalar::array(LOAD_INFLUENCE, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_load_influence_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_si_array(
    distance_mm: *const f64,
    radius_mm: *const f64,
    stiffness_mm: *const f64,
    poisson_ratio: *const f64,
    deflection_ratio: *mut f64,
    radial_ratio: *mut f64,
    tangential_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(distance_mm), Input::Numbers(radius_mm), Input::Numbers(stiffness_mm), Input::Numbers(poisson_ratio)], results: [Output::Numbers(deflection_ratio), Output::Numbers(radial_ratio), Output::Numbers(tangential_ratio)], notes, n, bad_index };
    unsafe { scalar::array(LOAD_INFLUENCE, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_load_influence_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_us_why(
    distance_in: f64,
    radius_in: f64,
    stiffness_in: f64,
    poisson_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(LOAD_INFLUENCE, System::Us, [distance_in, radius_in, stiffness_in, poisson_ratio], text) }
}

/// Why ovs_load_influence_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_load_influence_si_why(
    distance_mm: f64,
    radius_mm: f64,
    stiffness_mm: f64,
    poisson_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(LOAD_INFLUENCE, System::Si, [distance_mm, radius_mm, stiffness_mm, poisson_ratio], text) }
}

static USUAL_LOAD: &Operation = row(OPERATIONS, "usual_load");

/// What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no
/// numbers here, but what to ask.
///
/// Equation: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
/// Taken for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.
///
/// - `thing`: what stands or rolls there; 0 car, 1 pickup, 2 loaded one-ton, 3 farm tractor, 4 skid machine, 5
///   bench, 6 kiln, 7 two jacks, 8 anchored lift.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_USUAL_LOAD_LOAD (lbf): each load; none where only the maker can say.
///   - OVS_USUAL_LOAD_MARGIN (1): what the load is multiplied by.
///   - OVS_USUAL_LOAD_DESIGN_LOAD (lbf): the load with its margin; none without a load.
///   - OVS_USUAL_LOAD_PRESSURE (psi): contact pressure; none without a load.
///   - OVS_USUAL_LOAD_RADIUS (in): contact radius under the load with its margin; none without a load.
///   - OVS_USUAL_LOAD_COUNT: how many stand near one another.
///   - OVS_USUAL_LOAD_SPACING (in): middle to middle.
///   - OVS_USUAL_LOAD_SAID: what was taken, or what to ask.
///   - OVS_USUAL_LOAD_RESTS_ON: its basis, by name.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: ours, from memory: what usual things put on a floor: common practice, no source.
/// Basis: the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as quoted
/// elsewhere.
/// Basis: the maker's approval of the anchors, and an engineer: the project's specification.
/// Basis: a circle of the load over its pressure: derived.
/// Since 0.1.0.
/// Example, as JSON: {"thing":"pickup"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_usual_load_us(
    thing: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(thing)),
    ];
    let request = Request::new(USUAL_LOAD, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no
/// numbers here, but what to ask.
///
/// Equation: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
/// Taken for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.
///
/// - `thing`: what stands or rolls there; 0 car, 1 pickup, 2 loaded one-ton, 3 farm tractor, 4 skid machine, 5
///   bench, 6 kiln, 7 two jacks, 8 anchored lift.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_USUAL_LOAD_LOAD (kN): each load; none where only the maker can say.
///   - OVS_USUAL_LOAD_MARGIN (1): what the load is multiplied by.
///   - OVS_USUAL_LOAD_DESIGN_LOAD (kN): the load with its margin; none without a load.
///   - OVS_USUAL_LOAD_PRESSURE (kPa): contact pressure; none without a load.
///   - OVS_USUAL_LOAD_RADIUS (mm): contact radius under the load with its margin; none without a load.
///   - OVS_USUAL_LOAD_COUNT: how many stand near one another.
///   - OVS_USUAL_LOAD_SPACING (mm): middle to middle.
///   - OVS_USUAL_LOAD_SAID: what was taken, or what to ask.
///   - OVS_USUAL_LOAD_RESTS_ON: its basis, by name.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: ours, from memory: what usual things put on a floor: common practice, no source.
/// Basis: the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as quoted
/// elsewhere.
/// Basis: the maker's approval of the anchors, and an engineer: the project's specification.
/// Basis: a circle of the load over its pressure: derived.
/// Since 0.1.0.
/// Example, as JSON: {"thing":"pickup"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_usual_load_si(
    thing: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Whole(thing)),
    ];
    let request = Request::new(USUAL_LOAD, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_usual_load_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_usual_load_us_why(
    thing: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(thing)),
    ];
    let request = Request::new(USUAL_LOAD, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_usual_load_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_usual_load_si_why(
    thing: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Whole(thing)),
    ];
    let request = Request::new(USUAL_LOAD, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SLAB_STRESS: &Operation = row(OPERATIONS, "slab_stress");

/// Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an
/// old slab what each layer feels.
///
/// Equation: together = sum over loads of (Westergaard's stress of the load at this position) x (influence at the
/// distance / influence at none); moments in the middle are added with their directions, at edges and corners the
/// larger one is taken.
/// Taken for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a circle; a
/// semicircle has the circle's area; with an old slab both layers are one plate of the overlay's concrete; several
/// loads and two layers: ours, no source.
///
/// - `loads_load_lbf` (lbf): how heavy; more than 0 lbf, at most 2248089.431 lbf.
/// - `loads_x_ft` (ft): from the left; at least -3280.83989501 ft, at most 3280.83989501 ft.
/// - `loads_y_ft` (ft): from the front; at least -3280.83989501 ft, at most 3280.83989501 ft.
/// - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
///   least 1.
/// - `thickness_in` (in): thickness of the slab, or of the overlay where an old slab is given; more than 0 in, at
///   most 78.7401574803 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `loads`: what it is; may be left out.
///   - `radius` of `loads` (in): radius of the circle it stands on; at least 0.0393700787402 in, at most
///     196.850393701 in; may be left out.
///   - `pressure` of `loads` (psi): contact pressure, in place of a radius; at least 0.14503773773 psi, at most
///     14503.773773 psi; may be left out.
///   - `modulus` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773 psi;
///     where left out 3,600,000 psi, because normal-weight concrete of 4,000 psi.
///   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
///     because usual for concrete.
///   - `subgrade` (pci): subgrade reaction k under all concrete; at least 5 pci, at most 2000 pci; where left out
///     100 pci, because medium by heel and bar.
///   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
///     the edge from inside.
///   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Westergaard 1926,
///     because its stress is the nearest to a plate by finite elements.
///   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
///     least 0 %, at most 50 %; where left out 0 %, because a free edge.
///   - `length` (ft): length of the slab between joints, to see whether it is large enough; at least 0.328083989501
///     ft, at most 656.167979003 ft; may be left out.
///   - `width` (ft): its width, likewise; at least 0.328083989501 ft, at most 656.167979003 ft; may be left out.
///   - `old_slab` (in): old slab under the overlay, its thickness; more than 0 in, at most 78.7401574803 in; may be
///     left out.
///   - `old_modulus` (psi): old slab, its modulus of elasticity; at least 14503.773773 psi, at most 14503773.773
///     psi; may be left out.
///   - `bond`: how the overlay holds to it; 0 bonded, 1 partly bonded, 2 unbonded; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SLAB_STRESS_STIFFNESS (in): radius of relative stiffness.
///   - OVS_SLAB_STRESS_EQUIVALENT (in): thickness of the plate that was figured.
///   - OVS_SLAB_STRESS_GREATEST (psi): greatest governing stress of that plate.
///   - OVS_SLAB_STRESS_GOVERNS: under which load, the first being 1.
///   - OVS_SLAB_STRESS_FELT: what each load feels.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_CONTACT_TOO_WIDE, OVS_CONTACT_UNCLEAR.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
/// (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
/// Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
/// over that at none: derived.
/// Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
/// rigidity: derived.
/// Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"interior"}],"thickness":"4 in","length":"12 ft","width":"10 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_stress_us(
    loads_load_lbf: *const f64,
    loads_x_ft: *const f64,
    loads_y_ft: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    thickness_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_lbf)), (4, Input::Numbers(loads_x_ft)), (5, Input::Numbers(loads_y_ft)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(thickness_in)),
    ];
    let request = Request::new(SLAB_STRESS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an
/// old slab what each layer feels.
///
/// Equation: together = sum over loads of (Westergaard's stress of the load at this position) x (influence at the
/// distance / influence at none); moments in the middle are added with their directions, at edges and corners the
/// larger one is taken.
/// Taken for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a circle; a
/// semicircle has the circle's area; with an old slab both layers are one plate of the overlay's concrete; several
/// loads and two layers: ours, no source.
///
/// - `loads_load_kn` (kN): how heavy; more than 0 kN, at most 10000 kN.
/// - `loads_x_m` (m): from the left; at least -1000 m, at most 1000 m.
/// - `loads_y_m` (m): from the front; at least -1000 m, at most 1000 m.
/// - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
///   least 1.
/// - `thickness_mm` (mm): thickness of the slab, or of the overlay where an old slab is given; more than 0 mm, at
///   most 2000 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `loads`: what it is; may be left out.
///   - `radius` of `loads` (mm): radius of the circle it stands on; at least 1 mm, at most 5000 mm; may be left
///     out.
///   - `pressure` of `loads` (kPa): contact pressure, in place of a radius; at least 1 kPa, at most 100000 kPa; may
///     be left out.
///   - `modulus` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa; where left out
///     3,600,000 psi, because normal-weight concrete of 4,000 psi.
///   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
///     because usual for concrete.
///   - `subgrade` (MPa/m): subgrade reaction k under all concrete; at least 1.35723568763 MPa/m, at most
///     542.894275053 MPa/m; where left out 100 pci, because medium by heel and bar.
///   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
///     the edge from inside.
///   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Westergaard 1926,
///     because its stress is the nearest to a plate by finite elements.
///   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
///     least 0 %, at most 50 %; where left out 0 %, because a free edge.
///   - `length` (m): length of the slab between joints, to see whether it is large enough; at least 0.1 m, at most
///     200 m; may be left out.
///   - `width` (m): its width, likewise; at least 0.1 m, at most 200 m; may be left out.
///   - `old_slab` (mm): old slab under the overlay, its thickness; more than 0 mm, at most 2000 mm; may be left
///     out.
///   - `old_modulus` (MPa): old slab, its modulus of elasticity; at least 100 MPa, at most 100000 MPa; may be left
///     out.
///   - `bond`: how the overlay holds to it; 0 bonded, 1 partly bonded, 2 unbonded; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SLAB_STRESS_STIFFNESS (mm): radius of relative stiffness.
///   - OVS_SLAB_STRESS_EQUIVALENT (mm): thickness of the plate that was figured.
///   - OVS_SLAB_STRESS_GREATEST (MPa): greatest governing stress of that plate.
///   - OVS_SLAB_STRESS_GOVERNS: under which load, the first being 1.
///   - OVS_SLAB_STRESS_FELT: what each load feels.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_CONTACT_TOO_WIDE, OVS_CONTACT_UNCLEAR.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
/// (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
/// Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
/// over that at none: derived.
/// Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
/// rigidity: derived.
/// Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
/// Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
/// Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"interior"}],"thickness":"4 in","length":"12 ft","width":"10 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_stress_si(
    loads_load_kn: *const f64,
    loads_x_m: *const f64,
    loads_y_m: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    thickness_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_kn)), (4, Input::Numbers(loads_x_m)), (5, Input::Numbers(loads_y_m)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(thickness_mm)),
    ];
    let request = Request::new(SLAB_STRESS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_slab_stress_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_stress_us_why(
    loads_load_lbf: *const f64,
    loads_x_ft: *const f64,
    loads_y_ft: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    thickness_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_lbf)), (4, Input::Numbers(loads_x_ft)), (5, Input::Numbers(loads_y_ft)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(thickness_in)),
    ];
    let request = Request::new(SLAB_STRESS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_slab_stress_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_slab_stress_si_why(
    loads_load_kn: *const f64,
    loads_x_m: *const f64,
    loads_y_m: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    thickness_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_kn)), (4, Input::Numbers(loads_x_m)), (5, Input::Numbers(loads_y_m)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(thickness_mm)),
    ];
    let request = Request::new(SLAB_STRESS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SAFETY_FACTORS: &Operation = row(OPERATIONS, "safety_factors");

/// The safety factors in use for a kind of load, from memory: confirm.
///
/// Equation: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2; uniform
/// 1.4, usual 2; wall 1.7, usual 2.
/// Taken for granted: the modulus of rupture over the factor is the stress allowed.
///
/// - `kind`: kind of load; 0 moving wheel, 1 wheel, unlimited passes, 2 post or jack, 3 uniform, 4 wall.
/// - `least_ratio` (1), out: least in use.
/// - `usual_ratio` (1), out: taken where nobody says.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_safety_factors_us(2, ...) gives least_ratio = 1.7, usual_ratio = 2.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_us(
    kind: c_int,
    least_ratio: *mut f64,
    usual_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_ratio), Output::Numbers(usual_ratio)];
    unsafe { scalar::one(SAFETY_FACTORS, System::Us, [f64::from(kind)], results, notes, Message::new(msg, msg_len)) }
}

/// The safety factors in use for a kind of load, from memory: confirm.
///
/// Equation: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2; uniform
/// 1.4, usual 2; wall 1.7, usual 2.
/// Taken for granted: the modulus of rupture over the factor is the stress allowed.
///
/// - `kind`: kind of load; 0 moving wheel, 1 wheel, unlimited passes, 2 post or jack, 3 uniform, 4 wall.
/// - `least_ratio` (1), out: least in use.
/// - `usual_ratio` (1), out: taken where nobody says.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_WORD_UNKNOWN.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_safety_factors_si(2, ...) gives least_ratio = 1.7, usual_ratio = 2.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_si(
    kind: c_int,
    least_ratio: *mut f64,
    usual_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_ratio), Output::Numbers(usual_ratio)];
    unsafe { scalar::one(SAFETY_FACTORS, System::Si, [f64::from(kind)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_safety_factors_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_us_array(
    kind: *const c_int,
    least_ratio: *mut f64,
    usual_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(kind)], results: [Output::Numbers(least_ratio), Output::Numbers(usual_ratio)], notes, n, bad_index };
    unsafe { scalar::array(SAFETY_FACTORS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_safety_factors_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_si_array(
    kind: *const c_int,
    least_ratio: *mut f64,
    usual_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(kind)], results: [Output::Numbers(least_ratio), Output::Numbers(usual_ratio)], notes, n, bad_index };
    unsafe { scalar::array(SAFETY_FACTORS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_safety_factors_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_us_why(
    kind: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAFETY_FACTORS, System::Us, [f64::from(kind)], text) }
}

/// Why ovs_safety_factors_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_safety_factors_si_why(
    kind: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAFETY_FACTORS, System::Si, [f64::from(kind)], text) }
}

static ALLOWABLE_STRESS: &Operation = row(OPERATIONS, "allowable_stress");

/// The stress that a safety factor allows.
///
/// Equation: allowable = rupture / safety.
/// Taken for granted: plain concrete.
///
/// - `rupture_psi` (psi): modulus of rupture; at least 50 psi, at most 2000 psi.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `allowable_psi` (psi), out: stress allowed.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_allowable_stress_us(570, 1.7, ...) gives allowable_psi = 335.294.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_us(
    rupture_psi: f64,
    safety_ratio: f64,
    allowable_psi: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(allowable_psi)];
    unsafe { scalar::one(ALLOWABLE_STRESS, System::Us, [rupture_psi, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// The stress that a safety factor allows.
///
/// Equation: allowable = rupture / safety.
/// Taken for granted: plain concrete.
///
/// - `rupture_mpa` (MPa): modulus of rupture; at least 0.344737864658 MPa, at most 13.7895145863 MPa.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `allowable_mpa` (MPa), out: stress allowed.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_allowable_stress_si(3.93001, 1.7, ...) gives allowable_mpa = 2.31177.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_si(
    rupture_mpa: f64,
    safety_ratio: f64,
    allowable_mpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(allowable_mpa)];
    unsafe { scalar::one(ALLOWABLE_STRESS, System::Si, [rupture_mpa, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_allowable_stress_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_us_array(
    rupture_psi: *const f64,
    safety_ratio: *const f64,
    allowable_psi: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(rupture_psi), Input::Numbers(safety_ratio)], results: [Output::Numbers(allowable_psi)], notes, n, bad_index };
    unsafe { scalar::array(ALLOWABLE_STRESS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_allowable_stress_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_si_array(
    rupture_mpa: *const f64,
    safety_ratio: *const f64,
    allowable_mpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(rupture_mpa), Input::Numbers(safety_ratio)], results: [Output::Numbers(allowable_mpa)], notes, n, bad_index };
    unsafe { scalar::array(ALLOWABLE_STRESS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_allowable_stress_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_us_why(
    rupture_psi: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ALLOWABLE_STRESS, System::Us, [rupture_psi, safety_ratio], text) }
}

/// Why ovs_allowable_stress_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_stress_si_why(
    rupture_mpa: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ALLOWABLE_STRESS, System::Si, [rupture_mpa, safety_ratio], text) }
}

static ALLOWABLE_LOAD: &Operation = row(OPERATIONS, "allowable_load");

/// The one load that a slab carries at a place, on a contact of a given radius.
///
/// Equation: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner Westergaard
/// 1926.
/// Taken for granted: the contact keeps its radius; one load by itself; nothing carried across joints.
///
/// - `position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `rupture_psi` (psi): its strength in bending, the modulus of rupture; at least 50 psi, at most 2000 psi.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `load_lbf` (lbf), out: load allowed.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_allowable_load_us(0, 3, 4, 3600000, 0.15, 100, 550, 2, ...) gives load_lbf = 3048.68.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_us(
    position: c_int,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    rupture_psi: f64,
    safety_ratio: f64,
    load_lbf: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_lbf)];
    unsafe { scalar::one(ALLOWABLE_LOAD, System::Us, [f64::from(position), radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, rupture_psi, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// The one load that a slab carries at a place, on a contact of a given radius.
///
/// Equation: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner Westergaard
/// 1926.
/// Taken for granted: the contact keeps its radius; one load by itself; nothing carried across joints.
///
/// - `position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `rupture_mpa` (MPa): its strength in bending, the modulus of rupture; at least 0.344737864658 MPa, at most
///   13.7895145863 MPa.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `load_kn` (kN), out: load allowed.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_allowable_load_si(0, 76.2, 101.6, 24821.1, 0.15, 27.1447, 3.79212, 2, ...) gives load_kn = 13.5612.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_si(
    position: c_int,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    rupture_mpa: f64,
    safety_ratio: f64,
    load_kn: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_kn)];
    unsafe { scalar::one(ALLOWABLE_LOAD, System::Si, [f64::from(position), radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, rupture_mpa, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_allowable_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_us_array(
    position: *const c_int,
    radius_in: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    rupture_psi: *const f64,
    safety_ratio: *const f64,
    load_lbf: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(position), Input::Numbers(radius_in), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci), Input::Numbers(rupture_psi), Input::Numbers(safety_ratio)], results: [Output::Numbers(load_lbf)], notes, n, bad_index };
    unsafe { scalar::array(ALLOWABLE_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_allowable_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_si_array(
    position: *const c_int,
    radius_mm: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    rupture_mpa: *const f64,
    safety_ratio: *const f64,
    load_kn: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(position), Input::Numbers(radius_mm), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m), Input::Numbers(rupture_mpa), Input::Numbers(safety_ratio)], results: [Output::Numbers(load_kn)], notes, n, bad_index };
    unsafe { scalar::array(ALLOWABLE_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_allowable_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_us_why(
    position: c_int,
    radius_in: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    rupture_psi: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ALLOWABLE_LOAD, System::Us, [f64::from(position), radius_in, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, rupture_psi, safety_ratio], text) }
}

/// Why ovs_allowable_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_allowable_load_si_why(
    position: c_int,
    radius_mm: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    rupture_mpa: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ALLOWABLE_LOAD, System::Si, [f64::from(position), radius_mm, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, rupture_mpa, safety_ratio], text) }
}

static REPETITIONS_ALLOWED: &Operation = row(OPERATIONS, "repetitions_allowed");

/// How often a stress may come, by its ratio to the modulus of rupture.
///
/// Equation: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268; above log10
/// repetitions = (0.9718 - stress_ratio) / 0.0828.
/// Taken for granted: stress and strength are those of the place that governs.
///
/// - `stress_ratio_ratio` (1): stress over modulus of rupture; more than 0 1, at most 1 1.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_REPETITIONS_ALLOWED_UNLIMITED: whether there is no limit; 0 no, 1 yes.
///   - OVS_REPETITIONS_ALLOWED_REPETITIONS (1): how often; none where there is no limit.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association (2002),
/// fatigue, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"stress_ratio":"0.55 ratio"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_repetitions_allowed_us(
    stress_ratio_ratio: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(stress_ratio_ratio)),
    ];
    let request = Request::new(REPETITIONS_ALLOWED, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How often a stress may come, by its ratio to the modulus of rupture.
///
/// Equation: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268; above log10
/// repetitions = (0.9718 - stress_ratio) / 0.0828.
/// Taken for granted: stress and strength are those of the place that governs.
///
/// - `stress_ratio_ratio` (1): stress over modulus of rupture; more than 0 1, at most 1 1.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_REPETITIONS_ALLOWED_UNLIMITED: whether there is no limit; 0 no, 1 yes.
///   - OVS_REPETITIONS_ALLOWED_REPETITIONS (1): how often; none where there is no limit.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association (2002),
/// fatigue, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"stress_ratio":"0.55 ratio"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_repetitions_allowed_si(
    stress_ratio_ratio: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(stress_ratio_ratio)),
    ];
    let request = Request::new(REPETITIONS_ALLOWED, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_repetitions_allowed_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_repetitions_allowed_us_why(
    stress_ratio_ratio: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(stress_ratio_ratio)),
    ];
    let request = Request::new(REPETITIONS_ALLOWED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_repetitions_allowed_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_repetitions_allowed_si_why(
    stress_ratio_ratio: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(stress_ratio_ratio)),
    ];
    let request = Request::new(REPETITIONS_ALLOWED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_NEEDED: &Operation = row(OPERATIONS, "thickness_needed");

/// The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
///
/// Equation: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most above the
/// root.
/// Taken for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old slab: for that
/// see overlay_required.
///
/// - `loads_load_lbf` (lbf): how heavy; more than 0 lbf, at most 2248089.431 lbf.
/// - `loads_x_ft` (ft): from the left; at least -3280.83989501 ft, at most 3280.83989501 ft.
/// - `loads_y_ft` (ft): from the front; at least -3280.83989501 ft, at most 3280.83989501 ft.
/// - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
///   least 1.
/// - `rupture_psi` (psi): modulus of rupture of the concrete; at least 50 psi, at most 2000 psi.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `loads`: what it is; may be left out.
///   - `radius` of `loads` (in): radius of the circle it stands on; at least 0.0393700787402 in, at most
///     196.850393701 in; may be left out.
///   - `pressure` of `loads` (psi): contact pressure, in place of a radius; at least 0.14503773773 psi, at most
///     14503.773773 psi; may be left out.
///   - `safety` (1): safety factor; at least 1 1, at most 10 1; where left out 2 ratio, because usual for wheels,
///     posts and jacks.
///   - `modulus` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773 psi;
///     where left out 3,600,000 psi, because normal-weight concrete of 4,000 psi.
///   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
///     because usual for concrete.
///   - `subgrade` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci; where left out 100 pci, because
///     medium by heel and bar.
///   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
///     the edge from inside.
///   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Westergaard 1926,
///     because its stress is the nearest to a plate by finite elements.
///   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
///     least 0 %, at most 50 %; where left out 0 %, because a free edge.
///   - `least` (in): the search begins here; at least 1 in, at most 48 in; where left out 2 in, because no slab on
///     ground is thinner.
///   - `greatest` (in): and ends here; more than 0 in, at most 78.7401574803 in; where left out 24 in, because
///     thicker is no floor any more.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_THICKNESS_NEEDED_THICKNESS (in): smallest thickness.
///   - OVS_THICKNESS_NEEDED_STRESS (psi): governing stress there.
///   - OVS_THICKNESS_NEEDED_ALLOWABLE (psi): stress allowed.
///   - OVS_THICKNESS_NEEDED_GOVERNS: the load that governs, the first being 1.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_CONTACT_UNCLEAR, OVS_NO_THICKNESS.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
/// over that at none: derived.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"edge"}],"rupture":"550 psi"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_needed_us(
    loads_load_lbf: *const f64,
    loads_x_ft: *const f64,
    loads_y_ft: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    rupture_psi: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_lbf)), (4, Input::Numbers(loads_x_ft)), (5, Input::Numbers(loads_y_ft)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(rupture_psi)),
    ];
    let request = Request::new(THICKNESS_NEEDED, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
///
/// Equation: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most above the
/// root.
/// Taken for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old slab: for that
/// see overlay_required.
///
/// - `loads_load_kn` (kN): how heavy; more than 0 kN, at most 10000 kN.
/// - `loads_x_m` (m): from the left; at least -1000 m, at most 1000 m.
/// - `loads_y_m` (m): from the front; at least -1000 m, at most 1000 m.
/// - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
/// - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
///   least 1.
/// - `rupture_mpa` (MPa): modulus of rupture of the concrete; at least 0.344737864658 MPa, at most 13.7895145863
///   MPa.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `loads`: what it is; may be left out.
///   - `radius` of `loads` (mm): radius of the circle it stands on; at least 1 mm, at most 5000 mm; may be left
///     out.
///   - `pressure` of `loads` (kPa): contact pressure, in place of a radius; at least 1 kPa, at most 100000 kPa; may
///     be left out.
///   - `safety` (1): safety factor; at least 1 1, at most 10 1; where left out 2 ratio, because usual for wheels,
///     posts and jacks.
///   - `modulus` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa; where left out
///     3,600,000 psi, because normal-weight concrete of 4,000 psi.
///   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
///     because usual for concrete.
///   - `subgrade` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m; where
///     left out 100 pci, because medium by heel and bar.
///   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
///     the edge from inside.
///   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Westergaard 1926,
///     because its stress is the nearest to a plate by finite elements.
///   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
///     least 0 %, at most 50 %; where left out 0 %, because a free edge.
///   - `least` (mm): the search begins here; at least 25.4 mm, at most 1219.2 mm; where left out 2 in, because no
///     slab on ground is thinner.
///   - `greatest` (mm): and ends here; more than 0 mm, at most 2000 mm; where left out 24 in, because thicker is no
///     floor any more.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_THICKNESS_NEEDED_THICKNESS (mm): smallest thickness.
///   - OVS_THICKNESS_NEEDED_STRESS (MPa): governing stress there.
///   - OVS_THICKNESS_NEEDED_ALLOWABLE (MPa): stress allowed.
///   - OVS_THICKNESS_NEEDED_GOVERNS: the load that governs, the first being 1.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_CONTACT_UNCLEAR, OVS_NO_THICKNESS.
/// Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
/// memory: confirm.
/// Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
/// Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
/// memory: confirm.
/// Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
/// over that at none: derived.
/// Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
/// Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
/// Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"edge"}],"rupture":"550 psi"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_needed_si(
    loads_load_kn: *const f64,
    loads_x_m: *const f64,
    loads_y_m: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    rupture_mpa: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_kn)), (4, Input::Numbers(loads_x_m)), (5, Input::Numbers(loads_y_m)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(rupture_mpa)),
    ];
    let request = Request::new(THICKNESS_NEEDED, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_needed_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_needed_us_why(
    loads_load_lbf: *const f64,
    loads_x_ft: *const f64,
    loads_y_ft: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    rupture_psi: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_lbf)), (4, Input::Numbers(loads_x_ft)), (5, Input::Numbers(loads_y_ft)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(rupture_psi)),
    ];
    let request = Request::new(THICKNESS_NEEDED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_needed_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_needed_si_why(
    loads_load_kn: *const f64,
    loads_x_m: *const f64,
    loads_y_m: *const f64,
    loads_position: *const c_int,
    loads_rows: c_int,
    rupture_mpa: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(loads_rows, &[(1, Input::Numbers(loads_load_kn)), (4, Input::Numbers(loads_x_m)), (5, Input::Numbers(loads_y_m)), (6, Input::Whole(loads_position))])),
        (1, Given::Number(rupture_mpa)),
    ];
    let request = Request::new(THICKNESS_NEEDED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static UNIFORM_LOAD: &Operation = row(OPERATIONS, "uniform_load");

/// The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
///
/// Equation: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
/// Taken for granted: the aisle takes its worst width; no joint in it.
///
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `rupture_psi` (psi): modulus of rupture; at least 50 psi, at most 2000 psi.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `load_psf` (psf), out: load allowed on each unit of area.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled, from
/// memory: confirm.
/// Since 0.1.0.
/// Example: ovs_uniform_load_us(6, 100, 600, 2, ...) gives load_psf = 903.862.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_us(
    thickness_in: f64,
    subgrade_pci: f64,
    rupture_psi: f64,
    safety_ratio: f64,
    load_psf: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_psf)];
    unsafe { scalar::one(UNIFORM_LOAD, System::Us, [thickness_in, subgrade_pci, rupture_psi, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
///
/// Equation: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
/// Taken for granted: the aisle takes its worst width; no joint in it.
///
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `rupture_mpa` (MPa): modulus of rupture; at least 0.344737864658 MPa, at most 13.7895145863 MPa.
/// - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
/// - `load_kpa` (kPa), out: load allowed on each unit of area.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled, from
/// memory: confirm.
/// Since 0.1.0.
/// Example: ovs_uniform_load_si(152.4, 27.1447, 4.13685, 2, ...) gives load_kpa = 43.2771.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_si(
    thickness_mm: f64,
    subgrade_mpa_per_m: f64,
    rupture_mpa: f64,
    safety_ratio: f64,
    load_kpa: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_kpa)];
    unsafe { scalar::one(UNIFORM_LOAD, System::Si, [thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_uniform_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_us_array(
    thickness_in: *const f64,
    subgrade_pci: *const f64,
    rupture_psi: *const f64,
    safety_ratio: *const f64,
    load_psf: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_in), Input::Numbers(subgrade_pci), Input::Numbers(rupture_psi), Input::Numbers(safety_ratio)], results: [Output::Numbers(load_psf)], notes, n, bad_index };
    unsafe { scalar::array(UNIFORM_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_uniform_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_si_array(
    thickness_mm: *const f64,
    subgrade_mpa_per_m: *const f64,
    rupture_mpa: *const f64,
    safety_ratio: *const f64,
    load_kpa: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_mm), Input::Numbers(subgrade_mpa_per_m), Input::Numbers(rupture_mpa), Input::Numbers(safety_ratio)], results: [Output::Numbers(load_kpa)], notes, n, bad_index };
    unsafe { scalar::array(UNIFORM_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_uniform_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_us_why(
    thickness_in: f64,
    subgrade_pci: f64,
    rupture_psi: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(UNIFORM_LOAD, System::Us, [thickness_in, subgrade_pci, rupture_psi, safety_ratio], text) }
}

/// Why ovs_uniform_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_uniform_load_si_why(
    thickness_mm: f64,
    subgrade_mpa_per_m: f64,
    rupture_mpa: f64,
    safety_ratio: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(UNIFORM_LOAD, System::Si, [thickness_mm, subgrade_mpa_per_m, rupture_mpa, safety_ratio], text) }
}

static WALL_LOAD: &Operation = row(OPERATIONS, "wall_load");

/// The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free
/// edge.
///
/// Equation: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength) psi, S =
/// thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000 sqrt(strength) psi.
/// Taken for granted: a beam without end on springs, the wall long.
///
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
/// - `place`: where the wall stands; 0 middle or doweled joint, 1 free edge.
/// - `load_lbf_per_ft` (lbf/ft), out: load allowed on each unit of length.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2 read,
/// forms recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_wall_load_us(6, 100, 4000, 1, ...) gives load_lbf_per_ft = 563.026.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_us(
    thickness_in: f64,
    subgrade_pci: f64,
    strength_psi: f64,
    place: c_int,
    load_lbf_per_ft: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_lbf_per_ft)];
    unsafe { scalar::one(WALL_LOAD, System::Us, [thickness_in, subgrade_pci, strength_psi, f64::from(place)], results, notes, Message::new(msg, msg_len)) }
}

/// The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free
/// edge.
///
/// Equation: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength) psi, S =
/// thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000 sqrt(strength) psi.
/// Taken for granted: a beam without end on springs, the wall long.
///
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
/// - `place`: where the wall stands; 0 middle or doweled joint, 1 free edge.
/// - `load_kn_per_m` (kN/m), out: load allowed on each unit of length.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2 read,
/// forms recalled, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_wall_load_si(152.4, 27.1447, 27.579, 1, ...) gives load_kn_per_m = 8.21674.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_si(
    thickness_mm: f64,
    subgrade_mpa_per_m: f64,
    strength_mpa: f64,
    place: c_int,
    load_kn_per_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(load_kn_per_m)];
    unsafe { scalar::one(WALL_LOAD, System::Si, [thickness_mm, subgrade_mpa_per_m, strength_mpa, f64::from(place)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_wall_load_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_us_array(
    thickness_in: *const f64,
    subgrade_pci: *const f64,
    strength_psi: *const f64,
    place: *const c_int,
    load_lbf_per_ft: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_in), Input::Numbers(subgrade_pci), Input::Numbers(strength_psi), Input::Whole(place)], results: [Output::Numbers(load_lbf_per_ft)], notes, n, bad_index };
    unsafe { scalar::array(WALL_LOAD, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_wall_load_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_si_array(
    thickness_mm: *const f64,
    subgrade_mpa_per_m: *const f64,
    strength_mpa: *const f64,
    place: *const c_int,
    load_kn_per_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_mm), Input::Numbers(subgrade_mpa_per_m), Input::Numbers(strength_mpa), Input::Whole(place)], results: [Output::Numbers(load_kn_per_m)], notes, n, bad_index };
    unsafe { scalar::array(WALL_LOAD, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_wall_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_us_why(
    thickness_in: f64,
    subgrade_pci: f64,
    strength_psi: f64,
    place: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(WALL_LOAD, System::Us, [thickness_in, subgrade_pci, strength_psi, f64::from(place)], text) }
}

/// Why ovs_wall_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_wall_load_si_why(
    thickness_mm: f64,
    subgrade_mpa_per_m: f64,
    strength_mpa: f64,
    place: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(WALL_LOAD, System::Si, [thickness_mm, subgrade_mpa_per_m, strength_mpa, f64::from(place)], text) }
}

static CURLING_COEFFICIENT: &Operation = row(OPERATIONS, "curling_coefficient");

/// Bradbury's coefficient of curling for a side of a slab.
///
/// Equation: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness sqrt 8).
/// Taken for granted: a strip free at both ends.
///
/// - `side_ft` (ft): side of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
/// - `stiffness_in` (in): radius of relative stiffness; at least 0.393700787402 in, at most 1968.50393701 in.
/// - `coefficient_ratio` (1), out: Bradbury's coefficient.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
/// Analysis and Design (1938), curling, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_curling_coefficient_us(25, 30.57, ...) gives coefficient_ratio = 1.07887.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_us(
    side_ft: f64,
    stiffness_in: f64,
    coefficient_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(coefficient_ratio)];
    unsafe { scalar::one(CURLING_COEFFICIENT, System::Us, [side_ft, stiffness_in], results, notes, Message::new(msg, msg_len)) }
}

/// Bradbury's coefficient of curling for a side of a slab.
///
/// Equation: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness sqrt 8).
/// Taken for granted: a strip free at both ends.
///
/// - `side_m` (m): side of the slab between joints; at least 0.1 m, at most 200 m.
/// - `stiffness_mm` (mm): radius of relative stiffness; at least 10 mm, at most 50000 mm.
/// - `coefficient_ratio` (1), out: Bradbury's coefficient.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
/// Analysis and Design (1938), curling, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_curling_coefficient_si(7.62, 776.478, ...) gives coefficient_ratio = 1.07887.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_si(
    side_m: f64,
    stiffness_mm: f64,
    coefficient_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(coefficient_ratio)];
    unsafe { scalar::one(CURLING_COEFFICIENT, System::Si, [side_m, stiffness_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_curling_coefficient_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_us_array(
    side_ft: *const f64,
    stiffness_in: *const f64,
    coefficient_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(side_ft), Input::Numbers(stiffness_in)], results: [Output::Numbers(coefficient_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CURLING_COEFFICIENT, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_curling_coefficient_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_si_array(
    side_m: *const f64,
    stiffness_mm: *const f64,
    coefficient_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(side_m), Input::Numbers(stiffness_mm)], results: [Output::Numbers(coefficient_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CURLING_COEFFICIENT, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_curling_coefficient_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_us_why(
    side_ft: f64,
    stiffness_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CURLING_COEFFICIENT, System::Us, [side_ft, stiffness_in], text) }
}

/// Why ovs_curling_coefficient_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_coefficient_si_why(
    side_m: f64,
    stiffness_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CURLING_COEFFICIENT, System::Si, [side_m, stiffness_mm], text) }
}

static CURLING_STRESS: &Operation = row(OPERATIONS, "curling_stress");

/// Stress from a difference of temperature between top and bottom of a slab.
///
/// Equation: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
/// poisson^2)) (C along + poisson C across).
/// Taken for granted: temperature straight through the thickness, the slab held down by its weight; tension is at
/// the bottom where the top is warmer, else at the top.
///
/// - `length_ft` (ft): length of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
/// - `width_ft` (ft): width of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
/// - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
/// - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
/// - `expansion_per_degf` (/degF): coefficient of thermal expansion; at least 0.000000555555555556 /degF, at most
///   0.0000166666666667 /degF.
/// - `difference_degf` (degF): between top and bottom, whichever is warmer; at least 0 degF, at most 108 degF.
/// - `interior_length_psi` (psi), out: stress in the middle, along the length.
/// - `interior_width_psi` (psi), out: stress in the middle, along the width.
/// - `edge_length_psi` (psi), out: stress half way of an edge that runs along the length.
/// - `edge_width_psi` (psi), out: stress half way of an edge that runs along the width.
/// - `of_length_ratio` (1), out: coefficient C of the length.
/// - `of_width_ratio` (1), out: coefficient C of the width.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
/// Analysis and Design (1938), curling, from memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Since 0.1.0.
/// Example: ovs_curling_stress_us(25, 12, 8, 4000000, 0.15, 200, 0.000005, 20, ...) gives interior_length_psi = 240.356, interior_width_psi = 163.907, edge_length_psi = 215.77, edge_width_psi = 127.854, of_length_ratio = 1.07885, of_width_ratio = 0.63927.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_us(
    length_ft: f64,
    width_ft: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    expansion_per_degf: f64,
    difference_degf: f64,
    interior_length_psi: *mut f64,
    interior_width_psi: *mut f64,
    edge_length_psi: *mut f64,
    edge_width_psi: *mut f64,
    of_length_ratio: *mut f64,
    of_width_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(interior_length_psi), Output::Numbers(interior_width_psi), Output::Numbers(edge_length_psi), Output::Numbers(edge_width_psi), Output::Numbers(of_length_ratio), Output::Numbers(of_width_ratio)];
    unsafe { scalar::one(CURLING_STRESS, System::Us, [length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf], results, notes, Message::new(msg, msg_len)) }
}

/// Stress from a difference of temperature between top and bottom of a slab.
///
/// Equation: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
/// poisson^2)) (C along + poisson C across).
/// Taken for granted: temperature straight through the thickness, the slab held down by its weight; tension is at
/// the bottom where the top is warmer, else at the top.
///
/// - `length_m` (m): length of the slab between joints; at least 0.1 m, at most 200 m.
/// - `width_m` (m): width of the slab between joints; at least 0.1 m, at most 200 m.
/// - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
/// - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
/// - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
/// - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
/// - `expansion_per_degc` (/degC): coefficient of thermal expansion; at least 0.000001 /degC, at most 0.00003
///   /degC.
/// - `difference_k` (K): between top and bottom, whichever is warmer; at least 0 K, at most 60 K.
/// - `interior_length_mpa` (MPa), out: stress in the middle, along the length.
/// - `interior_width_mpa` (MPa), out: stress in the middle, along the width.
/// - `edge_length_mpa` (MPa), out: stress half way of an edge that runs along the length.
/// - `edge_width_mpa` (MPa), out: stress half way of an edge that runs along the width.
/// - `of_length_ratio` (1), out: coefficient C of the length.
/// - `of_width_ratio` (1), out: coefficient C of the width.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
/// Analysis and Design (1938), curling, from memory: confirm.
/// Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
/// Since 0.1.0.
/// Example: ovs_curling_stress_si(7.62, 3.6576, 203.2, 27579, 0.15, 54.2894, 0.000009, 11.1111, ...) gives interior_length_mpa = 1.6572, interior_width_mpa = 1.1301, edge_length_mpa = 1.48768, edge_width_mpa = 0.881522, of_length_ratio = 1.07885, of_width_ratio = 0.63927.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_si(
    length_m: f64,
    width_m: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    expansion_per_degc: f64,
    difference_k: f64,
    interior_length_mpa: *mut f64,
    interior_width_mpa: *mut f64,
    edge_length_mpa: *mut f64,
    edge_width_mpa: *mut f64,
    of_length_ratio: *mut f64,
    of_width_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(interior_length_mpa), Output::Numbers(interior_width_mpa), Output::Numbers(edge_length_mpa), Output::Numbers(edge_width_mpa), Output::Numbers(of_length_ratio), Output::Numbers(of_width_ratio)];
    unsafe { scalar::one(CURLING_STRESS, System::Si, [length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_curling_stress_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_us_array(
    length_ft: *const f64,
    width_ft: *const f64,
    thickness_in: *const f64,
    modulus_psi: *const f64,
    poisson_ratio: *const f64,
    subgrade_pci: *const f64,
    expansion_per_degf: *const f64,
    difference_degf: *const f64,
    interior_length_psi: *mut f64,
    interior_width_psi: *mut f64,
    edge_length_psi: *mut f64,
    edge_width_psi: *mut f64,
    of_length_ratio: *mut f64,
    of_width_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_ft), Input::Numbers(width_ft), Input::Numbers(thickness_in), Input::Numbers(modulus_psi), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_pci), Input::Numbers(expansion_per_degf), Input::Numbers(difference_degf)], results: [Output::Numbers(interior_length_psi), Output::Numbers(interior_width_psi), Output::Numbers(edge_length_psi), Output::Numbers(edge_width_psi), Output::Numbers(of_length_ratio), Output::Numbers(of_width_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CURLING_STRESS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_curling_stress_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_si_array(
    length_m: *const f64,
    width_m: *const f64,
    thickness_mm: *const f64,
    modulus_mpa: *const f64,
    poisson_ratio: *const f64,
    subgrade_mpa_per_m: *const f64,
    expansion_per_degc: *const f64,
    difference_k: *const f64,
    interior_length_mpa: *mut f64,
    interior_width_mpa: *mut f64,
    edge_length_mpa: *mut f64,
    edge_width_mpa: *mut f64,
    of_length_ratio: *mut f64,
    of_width_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(length_m), Input::Numbers(width_m), Input::Numbers(thickness_mm), Input::Numbers(modulus_mpa), Input::Numbers(poisson_ratio), Input::Numbers(subgrade_mpa_per_m), Input::Numbers(expansion_per_degc), Input::Numbers(difference_k)], results: [Output::Numbers(interior_length_mpa), Output::Numbers(interior_width_mpa), Output::Numbers(edge_length_mpa), Output::Numbers(edge_width_mpa), Output::Numbers(of_length_ratio), Output::Numbers(of_width_ratio)], notes, n, bad_index };
    unsafe { scalar::array(CURLING_STRESS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_curling_stress_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_us_why(
    length_ft: f64,
    width_ft: f64,
    thickness_in: f64,
    modulus_psi: f64,
    poisson_ratio: f64,
    subgrade_pci: f64,
    expansion_per_degf: f64,
    difference_degf: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CURLING_STRESS, System::Us, [length_ft, width_ft, thickness_in, modulus_psi, poisson_ratio, subgrade_pci, expansion_per_degf, difference_degf], text) }
}

/// Why ovs_curling_stress_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_curling_stress_si_why(
    length_m: f64,
    width_m: f64,
    thickness_mm: f64,
    modulus_mpa: f64,
    poisson_ratio: f64,
    subgrade_mpa_per_m: f64,
    expansion_per_degc: f64,
    difference_k: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CURLING_STRESS, System::Si, [length_m, width_m, thickness_mm, modulus_mpa, poisson_ratio, subgrade_mpa_per_m, expansion_per_degc, difference_k], text) }
}

static TWO_LAYERS: &Operation = row(OPERATIONS, "two_layers");

/// Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
///
/// Equation: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab times its
/// modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus / overlay_modulus) old_slab^3, the
/// moment shared as the rigidities.
/// Taken for granted: both layers take one curvature and have one Poisson's ratio; unbonded without friction;
/// partly bonded counts as unbonded; the plate has tension below.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `overlay_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
/// - `overlay_modulus_psi` (psi): modulus of elasticity of the overlay; at least 14503.773773 psi, at most
///   14503773.773 psi.
/// - `old_slab_in` (in): the old slab's thickness; more than 0 in, at most 78.7401574803 in.
/// - `old_modulus_psi` (psi): the old slab's modulus of elasticity; at least 14503.773773 psi, at most 14503773.773
///   psi.
/// - `equivalent_in` (in), out: thickness of the plate of the overlay's concrete that is as stiff as both.
/// - `overlay_share_ratio` (1), out: share of the rigidity that the overlay brings.
/// - `overlay_top_ratio` (1), out: stress at the top of the overlay, over the plate's bending stress; tension
///   positive.
/// - `overlay_bottom_ratio` (1), out: at the bottom of the overlay.
/// - `old_top_ratio` (1), out: old slab, at its top.
/// - `old_bottom_ratio` (1), out: old slab, at its bottom.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
/// rigidity: derived.
/// Since 0.1.0.
/// Example: ovs_two_layers_us(0, 2, 4000000, 4, 3000000, ...) gives equivalent_in = 5.70417, overlay_share_ratio = 0.462069, overlay_top_ratio = -0.981737, overlay_bottom_ratio = -0.280496, old_top_ratio = -0.210372, old_bottom_ratio = 0.841489.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_us(
    bond: c_int,
    overlay_in: f64,
    overlay_modulus_psi: f64,
    old_slab_in: f64,
    old_modulus_psi: f64,
    equivalent_in: *mut f64,
    overlay_share_ratio: *mut f64,
    overlay_top_ratio: *mut f64,
    overlay_bottom_ratio: *mut f64,
    old_top_ratio: *mut f64,
    old_bottom_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_in), Output::Numbers(overlay_share_ratio), Output::Numbers(overlay_top_ratio), Output::Numbers(overlay_bottom_ratio), Output::Numbers(old_top_ratio), Output::Numbers(old_bottom_ratio)];
    unsafe { scalar::one(TWO_LAYERS, System::Us, [f64::from(bond), overlay_in, overlay_modulus_psi, old_slab_in, old_modulus_psi], results, notes, Message::new(msg, msg_len)) }
}

/// Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
///
/// Equation: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab times its
/// modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus / overlay_modulus) old_slab^3, the
/// moment shared as the rigidities.
/// Taken for granted: both layers take one curvature and have one Poisson's ratio; unbonded without friction;
/// partly bonded counts as unbonded; the plate has tension below.
///
/// - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
/// - `overlay_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
/// - `overlay_modulus_mpa` (MPa): modulus of elasticity of the overlay; at least 100 MPa, at most 100000 MPa.
/// - `old_slab_mm` (mm): the old slab's thickness; more than 0 mm, at most 2000 mm.
/// - `old_modulus_mpa` (MPa): the old slab's modulus of elasticity; at least 100 MPa, at most 100000 MPa.
/// - `equivalent_mm` (mm), out: thickness of the plate of the overlay's concrete that is as stiff as both.
/// - `overlay_share_ratio` (1), out: share of the rigidity that the overlay brings.
/// - `overlay_top_ratio` (1), out: stress at the top of the overlay, over the plate's bending stress; tension
///   positive.
/// - `overlay_bottom_ratio` (1), out: at the bottom of the overlay.
/// - `old_top_ratio` (1), out: old slab, at its top.
/// - `old_bottom_ratio` (1), out: old slab, at its bottom.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
/// rigidity: derived.
/// Since 0.1.0.
/// Example: ovs_two_layers_si(0, 50.8, 27579, 101.6, 20684.3, ...) gives equivalent_mm = 144.886, overlay_share_ratio = 0.462069, overlay_top_ratio = -0.981737, overlay_bottom_ratio = -0.280496, old_top_ratio = -0.210372, old_bottom_ratio = 0.841489.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_si(
    bond: c_int,
    overlay_mm: f64,
    overlay_modulus_mpa: f64,
    old_slab_mm: f64,
    old_modulus_mpa: f64,
    equivalent_mm: *mut f64,
    overlay_share_ratio: *mut f64,
    overlay_top_ratio: *mut f64,
    overlay_bottom_ratio: *mut f64,
    old_top_ratio: *mut f64,
    old_bottom_ratio: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(equivalent_mm), Output::Numbers(overlay_share_ratio), Output::Numbers(overlay_top_ratio), Output::Numbers(overlay_bottom_ratio), Output::Numbers(old_top_ratio), Output::Numbers(old_bottom_ratio)];
    unsafe { scalar::one(TWO_LAYERS, System::Si, [f64::from(bond), overlay_mm, overlay_modulus_mpa, old_slab_mm, old_modulus_mpa], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_two_layers_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_us_array(
    bond: *const c_int,
    overlay_in: *const f64,
    overlay_modulus_psi: *const f64,
    old_slab_in: *const f64,
    old_modulus_psi: *const f64,
    equivalent_in: *mut f64,
    overlay_share_ratio: *mut f64,
    overlay_top_ratio: *mut f64,
    overlay_bottom_ratio: *mut f64,
    old_top_ratio: *mut f64,
    old_bottom_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(overlay_in), Input::Numbers(overlay_modulus_psi), Input::Numbers(old_slab_in), Input::Numbers(old_modulus_psi)], results: [Output::Numbers(equivalent_in), Output::Numbers(overlay_share_ratio), Output::Numbers(overlay_top_ratio), Output::Numbers(overlay_bottom_ratio), Output::Numbers(old_top_ratio), Output::Numbers(old_bottom_ratio)], notes, n, bad_index };
    unsafe { scalar::array(TWO_LAYERS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_two_layers_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_si_array(
    bond: *const c_int,
    overlay_mm: *const f64,
    overlay_modulus_mpa: *const f64,
    old_slab_mm: *const f64,
    old_modulus_mpa: *const f64,
    equivalent_mm: *mut f64,
    overlay_share_ratio: *mut f64,
    overlay_top_ratio: *mut f64,
    overlay_bottom_ratio: *mut f64,
    old_top_ratio: *mut f64,
    old_bottom_ratio: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Whole(bond), Input::Numbers(overlay_mm), Input::Numbers(overlay_modulus_mpa), Input::Numbers(old_slab_mm), Input::Numbers(old_modulus_mpa)], results: [Output::Numbers(equivalent_mm), Output::Numbers(overlay_share_ratio), Output::Numbers(overlay_top_ratio), Output::Numbers(overlay_bottom_ratio), Output::Numbers(old_top_ratio), Output::Numbers(old_bottom_ratio)], notes, n, bad_index };
    unsafe { scalar::array(TWO_LAYERS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_two_layers_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_us_why(
    bond: c_int,
    overlay_in: f64,
    overlay_modulus_psi: f64,
    old_slab_in: f64,
    old_modulus_psi: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TWO_LAYERS, System::Us, [f64::from(bond), overlay_in, overlay_modulus_psi, old_slab_in, old_modulus_psi], text) }
}

/// Why ovs_two_layers_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_layers_si_why(
    bond: c_int,
    overlay_mm: f64,
    overlay_modulus_mpa: f64,
    old_slab_mm: f64,
    old_modulus_mpa: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TWO_LAYERS, System::Si, [f64::from(bond), overlay_mm, overlay_modulus_mpa, old_slab_mm, old_modulus_mpa], text) }
}

static EDGE_KEY: &Operation = row(OPERATIONS, "edge_key");

/// The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge:
/// concrete is not run out to nothing.
///
/// Equation: depth = least - at_edge; width = depth / growth; volume = depth x width / 2 x length; with less room
/// its section is a triangle cut off at the room's end.
/// Taken for granted: the overlay thickens evenly away from the edge, which is straight; the saw cut at the edge is
/// vertical.
///
/// - `least_in` (in): least thickness of the overlay; more than 0 in, at most 60 in.
/// - `at_edge_in` (in): thickness of the overlay at the edge, 0 where it is flush with the old slab; at least 0 in,
///   at most 60 in.
/// - `growth_in_per_ft` (in/ft): how fast it thickens away from the edge; more than 0 in/ft, at most 12 in/ft.
/// - `length_ft` (ft): length of the edge; more than 0 ft, at most 10498.687664 ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `room` (ft): how far back there is room for the key; more than 0 ft, at most 10498.687664 ft; may be left
///     out.
///   - `old_slab` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_EDGE_KEY_CUT: what is done at the edge; 0 no key, 1 saw and chip, 2 break out the strip.
///   - OVS_EDGE_KEY_DEPTH (in): how deep the saw goes at the edge.
///   - OVS_EDGE_KEY_WIDTH (ft): how far back it is chipped.
///   - OVS_EDGE_KEY_DEPTH_AT_BACK (in): how deep it still is at its back; 0 where it runs out.
///   - OVS_EDGE_KEY_AREA (ft2): chipped area.
///   - OVS_EDGE_KEY_VOLUME (ft3): old concrete that comes out, and new concrete that goes in.
///   - OVS_EDGE_KEY_LEFT (in): what is left of the old slab under the key.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Basis: a key through half of the old slab or more leaves too little of it: the strip is broken out: common
/// practice, no source.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"least":"1 1/2 in","at_edge":"1/2 in","growth":"1/4 in/ft","length":"9 ft","old_slab":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_key_us(
    least_in: f64,
    at_edge_in: f64,
    growth_in_per_ft: f64,
    length_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(least_in)),
        (1, Given::Number(at_edge_in)),
        (2, Given::Number(growth_in_per_ft)),
        (3, Given::Number(length_ft)),
    ];
    let request = Request::new(EDGE_KEY, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge:
/// concrete is not run out to nothing.
///
/// Equation: depth = least - at_edge; width = depth / growth; volume = depth x width / 2 x length; with less room
/// its section is a triangle cut off at the room's end.
/// Taken for granted: the overlay thickens evenly away from the edge, which is straight; the saw cut at the edge is
/// vertical.
///
/// - `least_mm` (mm): least thickness of the overlay; more than 0 mm, at most 1524 mm.
/// - `at_edge_mm` (mm): thickness of the overlay at the edge, 0 where it is flush with the old slab; at least 0 mm,
///   at most 1524 mm.
/// - `growth_percent` (%): how fast it thickens away from the edge; more than 0 %, at most 100 %.
/// - `length_m` (m): length of the edge; more than 0 m, at most 3200 m.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `room` (m): how far back there is room for the key; more than 0 m, at most 3200 m; may be left out.
///   - `old_slab` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_EDGE_KEY_CUT: what is done at the edge; 0 no key, 1 saw and chip, 2 break out the strip.
///   - OVS_EDGE_KEY_DEPTH (mm): how deep the saw goes at the edge.
///   - OVS_EDGE_KEY_WIDTH (m): how far back it is chipped.
///   - OVS_EDGE_KEY_DEPTH_AT_BACK (mm): how deep it still is at its back; 0 where it runs out.
///   - OVS_EDGE_KEY_AREA (m2): chipped area.
///   - OVS_EDGE_KEY_VOLUME (L): old concrete that comes out, and new concrete that goes in.
///   - OVS_EDGE_KEY_LEFT (mm): what is left of the old slab under the key.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Basis: a key through half of the old slab or more leaves too little of it: the strip is broken out: common
/// practice, no source.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"least":"1 1/2 in","at_edge":"1/2 in","growth":"1/4 in/ft","length":"9 ft","old_slab":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_key_si(
    least_mm: f64,
    at_edge_mm: f64,
    growth_percent: f64,
    length_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Number(least_mm)),
        (1, Given::Number(at_edge_mm)),
        (2, Given::Number(growth_percent)),
        (3, Given::Number(length_m)),
    ];
    let request = Request::new(EDGE_KEY, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_edge_key_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_key_us_why(
    least_in: f64,
    at_edge_in: f64,
    growth_in_per_ft: f64,
    length_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(least_in)),
        (1, Given::Number(at_edge_in)),
        (2, Given::Number(growth_in_per_ft)),
        (3, Given::Number(length_ft)),
    ];
    let request = Request::new(EDGE_KEY, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_edge_key_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_edge_key_si_why(
    least_mm: f64,
    at_edge_mm: f64,
    growth_percent: f64,
    length_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(least_mm)),
        (1, Given::Number(at_edge_mm)),
        (2, Given::Number(growth_percent)),
        (3, Given::Number(length_m)),
    ];
    let request = Request::new(EDGE_KEY, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static KEY_CUTS: &Operation = row(OPERATIONS, "key_cuts");

/// Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped
/// there.
///
/// Equation: depth = least - (finish - old slab) at the edge; width to where the least is first reached, square to
/// the edge; area and volume by Simpson's rule between sections.
/// Taken for granted: the edge is one where the floor meets a given height: a door, a walk, the next slab; sections
/// no more than 3 ft apart and where a surface bends along the edge.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `line_x_ft` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `line_y_ft` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `line_rows`: the places of the edge: how many rows, each a place on the edge of the work, in order; one alone
///   is a place; at least 1.
/// - `least_in` (in): least thickness of the overlay; more than 0 in, at most 60 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `old_slab` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_KEY_CUTS_CUTS: the keys; none where the overlay is thick enough.
///   - OVS_KEY_CUTS_LENGTH (ft): length of saw cuts along the edge.
///   - OVS_KEY_CUTS_AREA (ft2): area that is chipped.
///   - OVS_KEY_CUTS_VOLUME (ft3): concrete that comes out and goes in, of all keys.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_NOT_ON_EDGE.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Basis: a key through half of the old slab or more leaves too little of it: the strip is broken out: common
/// practice, no source.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"corners":[{"x":"0 ft","y":"0 ft"},{"x":"20 ft","y":"0 ft"},{"x":"20 ft","y":"24 ft"},{"x":"0 ft","y":"24 ft"}]},"shots":[{"x":"1 ft","y":"1 ft","elevation":"99.4 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.42 ft"},{"x":"19 ft","y":"23 ft","elevation":"99.2 ft"},{"x":"1 ft","y":"23 ft","elevation":"99.18 ft"}]},"finish":{"level":"99.5 ft"},"line":{"x":["6 ft","14 ft"],"y":["0 in","0 in"]},"least":"1 1/2 in","old_slab":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_key_cuts_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_ft: *const f64,
    line_y_ft: *const f64,
    line_rows: c_int,
    least_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(line_rows, &[(0, Input::Numbers(line_x_ft)), (1, Input::Numbers(line_y_ft))])),
        (3, Given::Number(least_in)),
    ];
    let request = Request::new(KEY_CUTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped
/// there.
///
/// Equation: depth = least - (finish - old slab) at the edge; width to where the least is first reached, square to
/// the edge; area and volume by Simpson's rule between sections.
/// Taken for granted: the edge is one where the floor meets a given height: a door, a walk, the next slab; sections
/// no more than 3 ft apart and where a surface bends along the edge.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `line_x_m` (m): from the left; at least -100000 m, at most 100000 m.
/// - `line_y_m` (m): from the front; at least -100000 m, at most 100000 m.
/// - `line_rows`: the places of the edge: how many rows, each a place on the edge of the work, in order; one alone
///   is a place; at least 1.
/// - `least_mm` (mm): least thickness of the overlay; more than 0 mm, at most 1524 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `old_slab` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_KEY_CUTS_CUTS: the keys; none where the overlay is thick enough.
///   - OVS_KEY_CUTS_LENGTH (m): length of saw cuts along the edge.
///   - OVS_KEY_CUTS_AREA (m2): area that is chipped.
///   - OVS_KEY_CUTS_VOLUME (L): concrete that comes out and goes in, of all keys.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_NOT_ON_EDGE.
/// Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
/// repairs, from memory: confirm.
/// Basis: a key through half of the old slab or more leaves too little of it: the strip is broken out: common
/// practice, no source.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"corners":[{"x":"0 ft","y":"0 ft"},{"x":"20 ft","y":"0 ft"},{"x":"20 ft","y":"24 ft"},{"x":"0 ft","y":"24 ft"}]},"shots":[{"x":"1 ft","y":"1 ft","elevation":"99.4 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.42 ft"},{"x":"19 ft","y":"23 ft","elevation":"99.2 ft"},{"x":"1 ft","y":"23 ft","elevation":"99.18 ft"}]},"finish":{"level":"99.5 ft"},"line":{"x":["6 ft","14 ft"],"y":["0 in","0 in"]},"least":"1 1/2 in","old_slab":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_key_cuts_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_m: *const f64,
    line_y_m: *const f64,
    line_rows: c_int,
    least_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(line_rows, &[(0, Input::Numbers(line_x_m)), (1, Input::Numbers(line_y_m))])),
        (3, Given::Number(least_mm)),
    ];
    let request = Request::new(KEY_CUTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_key_cuts_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_key_cuts_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_ft: *const f64,
    line_y_ft: *const f64,
    line_rows: c_int,
    least_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(line_rows, &[(0, Input::Numbers(line_x_ft)), (1, Input::Numbers(line_y_ft))])),
        (3, Given::Number(least_in)),
    ];
    let request = Request::new(KEY_CUTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_key_cuts_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_key_cuts_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_m: *const f64,
    line_y_m: *const f64,
    line_rows: c_int,
    least_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(line_rows, &[(0, Input::Numbers(line_x_m)), (1, Input::Numbers(line_y_m))])),
        (3, Given::Number(least_mm)),
    ];
    let request = Request::new(KEY_CUTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static MOISTURE_TESTS: &Operation = row(OPERATIONS, "moisture_tests");

/// How many humidity probes a floor takes before it is covered, and how deep their holes are.
///
/// Equation: probes = 3 for the first 1000 ft2, 1 for each further 1000 ft2 or part; depth = 0.4 thickness drying
/// from one side, 0.2 from two.
/// Taken for granted: a hole is closed 24 h before it is read (72 h before the edition of 2018, from memory); the
/// floor is at the temperature and in the air of its use.
///
/// - `area_ft2` (ft2): area of the floor; more than 0 ft2, at most 10763910.4167 ft2.
/// - `thickness_in` (in): thickness of the slab that dries: of an overlay on a sheet, its own; more than 0 in, at
///   most 78.7401574803 in.
/// - `drying`: which sides it dries from; 0 one side, 1 two sides.
/// - `count`, out: how many probes.
/// - `depth_in` (in), out: depth of their holes.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: 3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from one side,
/// 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and waiting of probes.
/// Since 0.1.0.
/// Example: ovs_moisture_tests_us(1800, 4, 0, ...) gives count = 4, depth_in = 1.6.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_us(
    area_ft2: f64,
    thickness_in: f64,
    drying: c_int,
    count: *mut c_int,
    depth_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Whole(count), Output::Numbers(depth_in)];
    unsafe { scalar::one(MOISTURE_TESTS, System::Us, [area_ft2, thickness_in, f64::from(drying)], results, notes, Message::new(msg, msg_len)) }
}

/// How many humidity probes a floor takes before it is covered, and how deep their holes are.
///
/// Equation: probes = 3 for the first 1000 ft2, 1 for each further 1000 ft2 or part; depth = 0.4 thickness drying
/// from one side, 0.2 from two.
/// Taken for granted: a hole is closed 24 h before it is read (72 h before the edition of 2018, from memory); the
/// floor is at the temperature and in the air of its use.
///
/// - `area_m2` (m2): area of the floor; more than 0 m2, at most 1000000 m2.
/// - `thickness_mm` (mm): thickness of the slab that dries: of an overlay on a sheet, its own; more than 0 mm, at
///   most 2000 mm.
/// - `drying`: which sides it dries from; 0 one side, 1 two sides.
/// - `count`, out: how many probes.
/// - `depth_mm` (mm), out: depth of their holes.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: 3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from one side,
/// 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and waiting of probes.
/// Since 0.1.0.
/// Example: ovs_moisture_tests_si(167.225, 101.6, 0, ...) gives count = 4, depth_mm = 40.64.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_si(
    area_m2: f64,
    thickness_mm: f64,
    drying: c_int,
    count: *mut c_int,
    depth_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Whole(count), Output::Numbers(depth_mm)];
    unsafe { scalar::one(MOISTURE_TESTS, System::Si, [area_m2, thickness_mm, f64::from(drying)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_moisture_tests_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_us_array(
    area_ft2: *const f64,
    thickness_in: *const f64,
    drying: *const c_int,
    count: *mut c_int,
    depth_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_ft2), Input::Numbers(thickness_in), Input::Whole(drying)], results: [Output::Whole(count), Output::Numbers(depth_in)], notes, n, bad_index };
    unsafe { scalar::array(MOISTURE_TESTS, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_moisture_tests_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_si_array(
    area_m2: *const f64,
    thickness_mm: *const f64,
    drying: *const c_int,
    count: *mut c_int,
    depth_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_m2), Input::Numbers(thickness_mm), Input::Whole(drying)], results: [Output::Whole(count), Output::Numbers(depth_mm)], notes, n, bad_index };
    unsafe { scalar::array(MOISTURE_TESTS, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_moisture_tests_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_us_why(
    area_ft2: f64,
    thickness_in: f64,
    drying: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(MOISTURE_TESTS, System::Us, [area_ft2, thickness_in, f64::from(drying)], text) }
}

/// Why ovs_moisture_tests_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_tests_si_why(
    area_m2: f64,
    thickness_mm: f64,
    drying: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(MOISTURE_TESTS, System::Si, [area_m2, thickness_mm, f64::from(drying)], text) }
}

static MOISTURE_VERDICT: &Operation = row(OPERATIONS, "moisture_verdict");

/// Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.
///
/// Equation: dry enough where the highest reading is within the limit and there are as many probes as the area
/// takes.
/// Taken for granted: vapour does no harm to a cement overlay: coverings, sealers and coatings on it suffer; a
/// sheet under an unbonded overlay stops what comes from below.
///
/// - `readings_humidity_percent` (%): relative humidity that it reads; more than 0 %, at most 100 %.
/// - `readings_rows`: what each probe reads: how many rows, each a probe; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `limit` (%): the maker's limit; more than 0 %, at most 100 %; may be left out.
///   - `area` (ft2): area of the floor; more than 0 ft2, at most 10763910.4167 ft2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_MOISTURE_VERDICT_VERDICT: what the readings say; 0 dry enough, 1 too damp, 2 test more, 3 ask the maker.
///   - OVS_MOISTURE_VERDICT_HIGHEST (%): highest reading, which governs.
///   - OVS_MOISTURE_VERDICT_WANTED: how many probes the area takes; none without an area.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST.
/// Basis: the limit of the maker of what goes on the floor, often 75 to 85 % relative humidity: the project's
/// specification.
/// Basis: 3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from one side,
/// 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and waiting of probes.
/// Basis: vapour harms coverings, sealers and coatings, not the cement overlay under them; a sheet, lapped and
/// taped, stops what comes from below: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"humidity":["74 %","79 %","77 %"]},"limit":"80 %","area":"600 ft2"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_verdict_us(
    readings_humidity_percent: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_humidity_percent))])),
    ];
    let request = Request::new(MOISTURE_VERDICT, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.
///
/// Equation: dry enough where the highest reading is within the limit and there are as many probes as the area
/// takes.
/// Taken for granted: vapour does no harm to a cement overlay: coverings, sealers and coatings on it suffer; a
/// sheet under an unbonded overlay stops what comes from below.
///
/// - `readings_humidity_percent` (%): relative humidity that it reads; more than 0 %, at most 100 %.
/// - `readings_rows`: what each probe reads: how many rows, each a probe; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `limit` (%): the maker's limit; more than 0 %, at most 100 %; may be left out.
///   - `area` (m2): area of the floor; more than 0 m2, at most 1000000 m2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_MOISTURE_VERDICT_VERDICT: what the readings say; 0 dry enough, 1 too damp, 2 test more, 3 ask the maker.
///   - OVS_MOISTURE_VERDICT_HIGHEST (%): highest reading, which governs.
///   - OVS_MOISTURE_VERDICT_WANTED: how many probes the area takes; none without an area.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST.
/// Basis: the limit of the maker of what goes on the floor, often 75 to 85 % relative humidity: the project's
/// specification.
/// Basis: 3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from one side,
/// 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and waiting of probes.
/// Basis: vapour harms coverings, sealers and coatings, not the cement overlay under them; a sheet, lapped and
/// taped, stops what comes from below: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"humidity":["74 %","79 %","77 %"]},"limit":"80 %","area":"600 ft2"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_verdict_si(
    readings_humidity_percent: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    results: *mut f64,
    results_len: c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_humidity_percent))])),
    ];
    let request = Request::new(MOISTURE_VERDICT, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_moisture_verdict_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_verdict_us_why(
    readings_humidity_percent: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_humidity_percent))])),
    ];
    let request = Request::new(MOISTURE_VERDICT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_moisture_verdict_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_moisture_verdict_si_why(
    readings_humidity_percent: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_humidity_percent))])),
    ];
    let request = Request::new(MOISTURE_VERDICT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static DRYING_TIME: &Operation = row(OPERATIONS, "drying_time");

/// How long concrete dries, after its curing ends, until it may be tested for a covering.
///
/// Equation: 28 to 30 days for each inch of thickness.
/// Taken for granted: drying from one side in good air, to about 85 % relative humidity; wetting again starts it
/// anew; the probes decide, not the calendar.
///
/// - `thickness_in` (in): thickness that dries; more than 0 in, at most 78.7401574803 in.
/// - `least_d` (d), out: least time.
/// - `greatest_d` (d), out: greatest time.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: 28 to 30 days for each inch from one side in good air, to about 85 %: Construction Specifier, on drying
/// slabs (any), an inch a month.
/// Since 0.1.0.
/// Example: ovs_drying_time_us(3, ...) gives least_d = 84, greatest_d = 90.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_us(
    thickness_in: f64,
    least_d: *mut f64,
    greatest_d: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_d), Output::Numbers(greatest_d)];
    unsafe { scalar::one(DRYING_TIME, System::Us, [thickness_in], results, notes, Message::new(msg, msg_len)) }
}

/// How long concrete dries, after its curing ends, until it may be tested for a covering.
///
/// Equation: 28 to 30 days for each inch of thickness.
/// Taken for granted: drying from one side in good air, to about 85 % relative humidity; wetting again starts it
/// anew; the probes decide, not the calendar.
///
/// - `thickness_mm` (mm): thickness that dries; more than 0 mm, at most 2000 mm.
/// - `least_d` (d), out: least time.
/// - `greatest_d` (d), out: greatest time.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: 28 to 30 days for each inch from one side in good air, to about 85 %: Construction Specifier, on drying
/// slabs (any), an inch a month.
/// Since 0.1.0.
/// Example: ovs_drying_time_si(76.2, ...) gives least_d = 84, greatest_d = 90.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_si(
    thickness_mm: f64,
    least_d: *mut f64,
    greatest_d: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(least_d), Output::Numbers(greatest_d)];
    unsafe { scalar::one(DRYING_TIME, System::Si, [thickness_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_drying_time_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_us_array(
    thickness_in: *const f64,
    least_d: *mut f64,
    greatest_d: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_in)], results: [Output::Numbers(least_d), Output::Numbers(greatest_d)], notes, n, bad_index };
    unsafe { scalar::array(DRYING_TIME, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_drying_time_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_si_array(
    thickness_mm: *const f64,
    least_d: *mut f64,
    greatest_d: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_mm)], results: [Output::Numbers(least_d), Output::Numbers(greatest_d)], notes, n, bad_index };
    unsafe { scalar::array(DRYING_TIME, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_drying_time_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_us_why(
    thickness_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DRYING_TIME, System::Us, [thickness_in], text) }
}

/// Why ovs_drying_time_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_si_why(
    thickness_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DRYING_TIME, System::Si, [thickness_mm], text) }
}

static DRYING_TIME_BY_WATER: &Operation = row(OPERATIONS, "drying_time_by_water");

/// How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement
/// ratio; from memory, confirm.
///
/// Equation: days 46, 82, 117, 130, 148, 166, 190 at 0.4, 0.5 to 1.0, straight between.
/// Taken for granted: 4 in thick, drying from one side, no water from below.
///
/// - `water_cement_w_per_cm` (w/cm): water-cement ratio; at least 0.4 w/cm, at most 1 w/cm.
/// - `time_d` (d), out: time it takes.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: 4 in: 46 days at a water-cement ratio of 0.4, 82 at 0.5, 190 at 1.0, to 3 lb/1000 ft2/24 h: Brewer,
/// Portland Cement Association (1965), drying of 4 in slabs, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_drying_time_by_water_us(0.45, ...) gives time_d = 64.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_us(
    water_cement_w_per_cm: f64,
    time_d: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(time_d)];
    unsafe { scalar::one(DRYING_TIME_BY_WATER, System::Us, [water_cement_w_per_cm], results, notes, Message::new(msg, msg_len)) }
}

/// How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement
/// ratio; from memory, confirm.
///
/// Equation: days 46, 82, 117, 130, 148, 166, 190 at 0.4, 0.5 to 1.0, straight between.
/// Taken for granted: 4 in thick, drying from one side, no water from below.
///
/// - `water_cement_w_per_cm` (w/cm): water-cement ratio; at least 0.4 w/cm, at most 1 w/cm.
/// - `time_d` (d), out: time it takes.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: 4 in: 46 days at a water-cement ratio of 0.4, 82 at 0.5, 190 at 1.0, to 3 lb/1000 ft2/24 h: Brewer,
/// Portland Cement Association (1965), drying of 4 in slabs, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_drying_time_by_water_si(0.45, ...) gives time_d = 64.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_si(
    water_cement_w_per_cm: f64,
    time_d: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(time_d)];
    unsafe { scalar::one(DRYING_TIME_BY_WATER, System::Si, [water_cement_w_per_cm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_drying_time_by_water_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_us_array(
    water_cement_w_per_cm: *const f64,
    time_d: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(water_cement_w_per_cm)], results: [Output::Numbers(time_d)], notes, n, bad_index };
    unsafe { scalar::array(DRYING_TIME_BY_WATER, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_drying_time_by_water_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_si_array(
    water_cement_w_per_cm: *const f64,
    time_d: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(water_cement_w_per_cm)], results: [Output::Numbers(time_d)], notes, n, bad_index };
    unsafe { scalar::array(DRYING_TIME_BY_WATER, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_drying_time_by_water_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_us_why(
    water_cement_w_per_cm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DRYING_TIME_BY_WATER, System::Us, [water_cement_w_per_cm], text) }
}

/// Why ovs_drying_time_by_water_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drying_time_by_water_si_why(
    water_cement_w_per_cm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DRYING_TIME_BY_WATER, System::Si, [water_cement_w_per_cm], text) }
}

static VAPOUR_EMISSION: &Operation = row(OPERATIONS, "vapour_emission");

/// The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.
///
/// Equation: emission = gain / (area x time).
/// Taken for granted: the dish stands sealed 60 to 72 h on cleaned concrete and the maker of what goes on the floor
/// sets the limit, often 3 lb/1000 ft2/24 h (both from memory).
///
/// - `gain_g` (g): mass that the dish gained; at least 0 g, at most 10000 g.
/// - `area_ft2` (ft2): area of floor under its cover; more than 0 ft2, at most 107.639104167 ft2.
/// - `time_h` (h): how long it stood; more than 0 h, at most 2400 h.
/// - `emission_lb_per_1000ft2_24h` (lb/1000 ft2/24 h), out: vapour in 24 h.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: emission = gain of the dish / (area x time): derived.
/// Basis: the dish stands 60 to 72 h: ASTM F1869 (any), the dish of calcium chloride, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_vapour_emission_us(5.2, 0.5, 66, ...) gives emission_lb_per_1000ft2_24h = 8.33748.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_us(
    gain_g: f64,
    area_ft2: f64,
    time_h: f64,
    emission_lb_per_1000ft2_24h: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(emission_lb_per_1000ft2_24h)];
    unsafe { scalar::one(VAPOUR_EMISSION, System::Us, [gain_g, area_ft2, time_h], results, notes, Message::new(msg, msg_len)) }
}

/// The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.
///
/// Equation: emission = gain / (area x time).
/// Taken for granted: the dish stands sealed 60 to 72 h on cleaned concrete and the maker of what goes on the floor
/// sets the limit, often 3 lb/1000 ft2/24 h (both from memory).
///
/// - `gain_g` (g): mass that the dish gained; at least 0 g, at most 10000 g.
/// - `area_m2` (m2): area of floor under its cover; more than 0 m2, at most 10 m2.
/// - `time_h` (h): how long it stood; more than 0 h, at most 2400 h.
/// - `emission_g_per_m2_24h` (g/m2/24 h), out: vapour in 24 h.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: emission = gain of the dish / (area x time): derived.
/// Basis: the dish stands 60 to 72 h: ASTM F1869 (any), the dish of calcium chloride, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_vapour_emission_si(5.2, 0.0464515, 66, ...) gives emission_g_per_m2_24h = 40.7072.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_si(
    gain_g: f64,
    area_m2: f64,
    time_h: f64,
    emission_g_per_m2_24h: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(emission_g_per_m2_24h)];
    unsafe { scalar::one(VAPOUR_EMISSION, System::Si, [gain_g, area_m2, time_h], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_vapour_emission_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_us_array(
    gain_g: *const f64,
    area_ft2: *const f64,
    time_h: *const f64,
    emission_lb_per_1000ft2_24h: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(gain_g), Input::Numbers(area_ft2), Input::Numbers(time_h)], results: [Output::Numbers(emission_lb_per_1000ft2_24h)], notes, n, bad_index };
    unsafe { scalar::array(VAPOUR_EMISSION, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_vapour_emission_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_si_array(
    gain_g: *const f64,
    area_m2: *const f64,
    time_h: *const f64,
    emission_g_per_m2_24h: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(gain_g), Input::Numbers(area_m2), Input::Numbers(time_h)], results: [Output::Numbers(emission_g_per_m2_24h)], notes, n, bad_index };
    unsafe { scalar::array(VAPOUR_EMISSION, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_vapour_emission_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_us_why(
    gain_g: f64,
    area_ft2: f64,
    time_h: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(VAPOUR_EMISSION, System::Us, [gain_g, area_ft2, time_h], text) }
}

/// Why ovs_vapour_emission_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_vapour_emission_si_why(
    gain_g: f64,
    area_m2: f64,
    time_h: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(VAPOUR_EMISSION, System::Si, [gain_g, area_m2, time_h], text) }
}

static ADDED_WEIGHT: &Operation = row(OPERATIONS, "added_weight");

/// What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it
/// stops there.
///
/// Equation: weight = density x thickness.
/// Taken for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs over voids.
///
/// - `thickness_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
/// - `density_lb_per_ft3` (lb/ft3): unit weight, 150 lb/ft3 with steel; at least 49.9423684609 lb/ft3, at most
///   218.497862017 lb/ft3.
/// - `support`: what carries the old slab; 0 ground, 1 suspended, 2 unknown.
/// - `weight_psf` (psf), out: added dead load.
/// - `next`, out: what follows; 0 go on, 1 find out, 2 stop.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: w = unit weight x thickness: derived.
/// Basis: what more a suspended slab carries is a structural engineer's to say: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_added_weight_us(3, 150, 0, ...) gives weight_psf = 37.5, next = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_us(
    thickness_in: f64,
    density_lb_per_ft3: f64,
    support: c_int,
    weight_psf: *mut f64,
    next: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(weight_psf), Output::Whole(next)];
    unsafe { scalar::one(ADDED_WEIGHT, System::Us, [thickness_in, density_lb_per_ft3, f64::from(support)], results, notes, Message::new(msg, msg_len)) }
}

/// What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it
/// stops there.
///
/// Equation: weight = density x thickness.
/// Taken for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs over voids.
///
/// - `thickness_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
/// - `density_kg_per_m3` (kg/m3): unit weight, 150 lb/ft3 with steel; at least 800 kg/m3, at most 3500 kg/m3.
/// - `support`: what carries the old slab; 0 ground, 1 suspended, 2 unknown.
/// - `weight_kpa` (kPa), out: added dead load.
/// - `next`, out: what follows; 0 go on, 1 find out, 2 stop.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
/// Basis: w = unit weight x thickness: derived.
/// Basis: what more a suspended slab carries is a structural engineer's to say: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_added_weight_si(76.2, 2402.77, 0, ...) gives weight_kpa = 1.79551, next = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_si(
    thickness_mm: f64,
    density_kg_per_m3: f64,
    support: c_int,
    weight_kpa: *mut f64,
    next: *mut c_int,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(weight_kpa), Output::Whole(next)];
    unsafe { scalar::one(ADDED_WEIGHT, System::Si, [thickness_mm, density_kg_per_m3, f64::from(support)], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_added_weight_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_us_array(
    thickness_in: *const f64,
    density_lb_per_ft3: *const f64,
    support: *const c_int,
    weight_psf: *mut f64,
    next: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_in), Input::Numbers(density_lb_per_ft3), Input::Whole(support)], results: [Output::Numbers(weight_psf), Output::Whole(next)], notes, n, bad_index };
    unsafe { scalar::array(ADDED_WEIGHT, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_added_weight_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_si_array(
    thickness_mm: *const f64,
    density_kg_per_m3: *const f64,
    support: *const c_int,
    weight_kpa: *mut f64,
    next: *mut c_int,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(thickness_mm), Input::Numbers(density_kg_per_m3), Input::Whole(support)], results: [Output::Numbers(weight_kpa), Output::Whole(next)], notes, n, bad_index };
    unsafe { scalar::array(ADDED_WEIGHT, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_added_weight_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_us_why(
    thickness_in: f64,
    density_lb_per_ft3: f64,
    support: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ADDED_WEIGHT, System::Us, [thickness_in, density_lb_per_ft3, f64::from(support)], text) }
}

/// Why ovs_added_weight_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_added_weight_si_why(
    thickness_mm: f64,
    density_kg_per_m3: f64,
    support: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ADDED_WEIGHT, System::Si, [thickness_mm, density_kg_per_m3, f64::from(support)], text) }
}
