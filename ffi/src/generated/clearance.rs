//! The operations of `clearance`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Output, Passed, Request, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{ovs_finish, ovs_survey};

/// The result `judged`: whether every limit is kept.
pub const OVS_APPROACH_JUDGED: c_int = 0;

/// The result `needed` (ft or m): the floor height from which water falls away as wanted.
pub const OVS_APPROACH_NEEDED: c_int = 1;

/// The result `governing` (ft or m): how far from the door the place is that decides it.
pub const OVS_APPROACH_GOVERNING: c_int = 2;

/// The result `spare` (in or mm): how far the floor is above that; negative below.
pub const OVS_APPROACH_SPARE: c_int = 3;

/// The result `away`: what that does to the water.
pub const OVS_APPROACH_AWAY: c_int = 4;

/// The result `step` (in or mm): the step at the door, from the outside up to the floor.
pub const OVS_APPROACH_STEP: c_int = 5;

/// The result `step_limit` (in or mm): the most that it may be.
pub const OVS_APPROACH_STEP_LIMIT: c_int = 6;

/// The result `step_judged`: whether it is.
pub const OVS_APPROACH_STEP_JUDGED: c_int = 7;

/// The result `dig` (in or mm): how deep old ground has to come out under the new approach; none without tie-in and
/// thickness.
pub const OVS_APPROACH_DIG: c_int = 8;

/// The result `trench_floor` (ft or m): the height that the floor may have with a drain along the door.
pub const OVS_APPROACH_TRENCH_FLOOR: c_int = 9;

/// The result `trench_reach` (ft or m): how far out the ground falls to the door.
pub const OVS_APPROACH_TRENCH_REACH: c_int = 10;

/// The result `trench_area` (ft2 or m2): the ground that drains to the door; none without its width.
pub const OVS_APPROACH_TRENCH_AREA: c_int = 11;

/// The result `trench_flow` (gal/min or L/s): the rain that comes from it; none without rain.
pub const OVS_APPROACH_TRENCH_FLOW: c_int = 12;

/// The result `stretches`: the ground as it will be.
pub const OVS_APPROACH_STRETCHES: c_int = 13;

/// The column `from` of `stretches` (ft or m): its start, from the door.
pub const OVS_APPROACH_STRETCHES_FROM: c_int = 0;

/// The column `to` of `stretches` (ft or m): its end, from the door.
pub const OVS_APPROACH_STRETCHES_TO: c_int = 1;

/// The column `start` of `stretches` (ft or m): height of its start.
pub const OVS_APPROACH_STRETCHES_START: c_int = 2;

/// The column `end` of `stretches` (ft or m): height of its end.
pub const OVS_APPROACH_STRETCHES_END: c_int = 3;

/// The column `fall` of `stretches` (%): its fall away from the door; negative where it rises.
pub const OVS_APPROACH_STRETCHES_FALL: c_int = 4;

/// The result `breaks`: where its grade changes.
pub const OVS_APPROACH_BREAKS: c_int = 14;

/// The column `at` of `breaks` (ft or m): distance from the door.
pub const OVS_APPROACH_BREAKS_AT: c_int = 0;

/// The column `kind` of `breaks`: over a hump or through a dip.
pub const OVS_APPROACH_BREAKS_KIND: c_int = 1;

/// The column `change` of `breaks` (%): the change of grade.
pub const OVS_APPROACH_BREAKS_CHANGE: c_int = 2;

/// The column `spacing` of `breaks` (ft or m): to the nearest other break, or the end of the profile.
pub const OVS_APPROACH_BREAKS_SPACING: c_int = 3;

/// The column `lost` of `breaks` (in or mm): what a crest takes of the room under the vehicle; none without a
/// wheelbase.
pub const OVS_APPROACH_BREAKS_LOST: c_int = 4;

/// The result `rules`: every rule at every place.
pub const OVS_APPROACH_RULES: c_int = 15;

/// The column `matter` of `rules`: what is judged.
pub const OVS_APPROACH_RULES_MATTER: c_int = 0;

/// The column `at` of `rules` (ft or m): distance from the door.
pub const OVS_APPROACH_RULES_AT: c_int = 1;

/// The column `found` of `rules` (%): what is there.
pub const OVS_APPROACH_RULES_FOUND: c_int = 2;

/// The column `limit` of `rules` (%): what may be; of a fall what must be.
pub const OVS_APPROACH_RULES_LIMIT: c_int = 3;

/// The column `weight` of `rules`: whether it decides.
pub const OVS_APPROACH_RULES_WEIGHT: c_int = 4;

/// The column `basis` of `rules`: where the limit comes from.
pub const OVS_APPROACH_RULES_BASIS: c_int = 5;

/// The column `judged` of `rules`: what comes out.
pub const OVS_APPROACH_RULES_JUDGED: c_int = 6;

/// How many results there are.
pub const OVS_APPROACH_RESULTS: c_int = 16;

/// The word `vehicle`.
pub const OVS_APPROACH_TRAFFIC_VEHICLE: c_int = 0;

/// The word `wheelchair`.
pub const OVS_APPROACH_TRAFFIC_WHEELCHAIR: c_int = 1;

/// The word `foot`.
pub const OVS_APPROACH_TRAFFIC_FOOT: c_int = 2;

/// The word `pass`.
pub const OVS_APPROACH_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `falls away`.
pub const OVS_APPROACH_AWAY_FALLS_AWAY: c_int = 0;

/// The word `floor too low`.
pub const OVS_APPROACH_AWAY_FLOOR_TOO_LOW: c_int = 1;

/// The word `pass`.
pub const OVS_APPROACH_STEP_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_STEP_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_STEP_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `crest`.
pub const OVS_APPROACH_BREAKS_KIND_CREST: c_int = 0;

/// The word `sag`.
pub const OVS_APPROACH_BREAKS_KIND_SAG: c_int = 1;

/// The word `fall away from the door`.
pub const OVS_APPROACH_RULES_MATTER_FALL_AWAY_FROM_THE_DOOR: c_int = 0;

/// The word `grade`.
pub const OVS_APPROACH_RULES_MATTER_GRADE: c_int = 1;

/// The word `change of grade`.
pub const OVS_APPROACH_RULES_MATTER_CHANGE_OF_GRADE: c_int = 2;

/// The word `room over a crest`.
pub const OVS_APPROACH_RULES_MATTER_ROOM_OVER_A_CREST: c_int = 3;

/// The word `room in a sag`.
pub const OVS_APPROACH_RULES_MATTER_ROOM_IN_A_SAG: c_int = 4;

/// The word `limit`.
pub const OVS_APPROACH_RULES_WEIGHT_LIMIT: c_int = 0;

/// The word `advice`.
pub const OVS_APPROACH_RULES_WEIGHT_ADVICE: c_int = 1;

/// The word `pass`.
pub const OVS_APPROACH_RULES_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_APPROACH_RULES_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_APPROACH_RULES_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The result `passed`: things that still work.
pub const OVS_CLEARANCES_PASSED: c_int = 0;

/// The result `confirm_locally`: things that break a limit which is to be confirmed locally.
pub const OVS_CLEARANCES_CONFIRM_LOCALLY: c_int = 1;

/// The result `ask`: things of which a measure that decides is missing.
pub const OVS_CLEARANCES_ASK: c_int = 2;

/// The result `fail`: things that do not work as they stand.
pub const OVS_CLEARANCES_FAIL: c_int = 3;

/// The result `judgements`: each thing.
pub const OVS_CLEARANCES_JUDGEMENTS: c_int = 4;

/// The column `name` of `judgements`: what the thing is called.
pub const OVS_CLEARANCES_JUDGEMENTS_NAME: c_int = 0;

/// The column `kind` of `judgements`: what kind it is of.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND: c_int = 1;

/// The column `verdict` of `judgements`: the worst of its checks.
pub const OVS_CLEARANCES_JUDGEMENTS_VERDICT: c_int = 2;

/// The column `decides` of `judgements`: the check that decides.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES: c_int = 3;

/// The column `room` of `judgements` (in or mm): by how much that is kept; negative is what is lacking.
pub const OVS_CLEARANCES_JUDGEMENTS_ROOM: c_int = 4;

/// The column `finish_least` of `judgements` (ft or m): least height of the finish along it.
pub const OVS_CLEARANCES_JUDGEMENTS_FINISH_LEAST: c_int = 5;

/// The column `finish_greatest` of `judgements` (ft or m): greatest height of the finish along it.
pub const OVS_CLEARANCES_JUDGEMENTS_FINISH_GREATEST: c_int = 6;

/// The column `rise_least` of `judgements` (in or mm): least rise there, finish less old slab.
pub const OVS_CLEARANCES_JUDGEMENTS_RISE_LEAST: c_int = 7;

/// The column `rise_greatest` of `judgements` (in or mm): greatest rise there, finish less old slab.
pub const OVS_CLEARANCES_JUDGEMENTS_RISE_GREATEST: c_int = 8;

/// The column `floor_at_most` of `judgements` (ft or m): the greatest finish along it that passes every check; none
/// where no height alone does.
pub const OVS_CLEARANCES_JUDGEMENTS_FLOOR_AT_MOST: c_int = 9;

/// The column `asks` of `judgements`: measures that decide and were not given, with commas between.
pub const OVS_CLEARANCES_JUDGEMENTS_ASKS: c_int = 10;

/// The column `forces` of `judgements`: what the raise forces, in a sentence.
pub const OVS_CLEARANCES_JUDGEMENTS_FORCES: c_int = 11;

/// The column `trades` of `judgements`: whose work that is, with commas between.
pub const OVS_CLEARANCES_JUDGEMENTS_TRADES: c_int = 12;

/// The column `basis` of `judgements`: where the limit that decides comes from.
pub const OVS_CLEARANCES_JUDGEMENTS_BASIS: c_int = 13;

/// The column `cautions` of `judgements`: what can hurt, in sentences.
pub const OVS_CLEARANCES_JUDGEMENTS_CAUTIONS: c_int = 14;

/// The result `checks`: each check of each thing.
pub const OVS_CLEARANCES_CHECKS: c_int = 5;

/// The column `name` of `checks`: what the thing is called.
pub const OVS_CLEARANCES_CHECKS_NAME: c_int = 0;

/// The column `about` of `checks`: what is checked.
pub const OVS_CLEARANCES_CHECKS_ABOUT: c_int = 1;

/// The column `verdict` of `checks`: what follows.
pub const OVS_CLEARANCES_CHECKS_VERDICT: c_int = 2;

/// The column `room` of `checks` (in or mm): by how much it is kept; negative is what is lacking.
pub const OVS_CLEARANCES_CHECKS_ROOM: c_int = 3;

/// The column `floor_at_most` of `checks` (ft or m): the greatest finish along it that keeps it.
pub const OVS_CLEARANCES_CHECKS_FLOOR_AT_MOST: c_int = 4;

/// The column `asks` of `checks`: the measure that is missing and decides.
pub const OVS_CLEARANCES_CHECKS_ASKS: c_int = 5;

/// The column `basis` of `checks`: where the limit comes from.
pub const OVS_CLEARANCES_CHECKS_BASIS: c_int = 6;

/// The column `text` of `checks`: what is had against what is wanted.
pub const OVS_CLEARANCES_CHECKS_TEXT: c_int = 7;

/// The result `works`: the work that the raise forces.
pub const OVS_CLEARANCES_WORKS: c_int = 6;

/// The column `name` of `works`: what the thing is called.
pub const OVS_CLEARANCES_WORKS_NAME: c_int = 0;

/// The column `task` of `works`: what is done.
pub const OVS_CLEARANCES_WORKS_TASK: c_int = 1;

/// The column `trade` of `works`: whose work it is.
pub const OVS_CLEARANCES_WORKS_TRADE: c_int = 2;

/// The column `by` of `works` (in or mm): by how much.
pub const OVS_CLEARANCES_WORKS_BY: c_int = 3;

/// The column `fill_1_in_6` of `works` (ft3 or m3): fill against an edge at 1 in 6.
pub const OVS_CLEARANCES_WORKS_FILL_1_IN_6: c_int = 4;

/// The column `fill_1_in_12` of `works` (ft3 or m3): the same at 1 in 12.
pub const OVS_CLEARANCES_WORKS_FILL_1_IN_12: c_int = 5;

/// The column `text` of `works`: the work in words.
pub const OVS_CLEARANCES_WORKS_TEXT: c_int = 6;

/// The result `text`: the same for the site, one thing to a line.
pub const OVS_CLEARANCES_TEXT: c_int = 7;

/// How many results there are.
pub const OVS_CLEARANCES_RESULTS: c_int = 8;

/// The word `sectional_door`.
pub const OVS_CLEARANCES_THINGS_KIND_SECTIONAL_DOOR: c_int = 0;

/// The word `roll_door`.
pub const OVS_CLEARANCES_THINGS_KIND_ROLL_DOOR: c_int = 1;

/// The word `swinging_door`.
pub const OVS_CLEARANCES_THINGS_KIND_SWINGING_DOOR: c_int = 2;

/// The word `sliding_door`.
pub const OVS_CLEARANCES_THINGS_KIND_SLIDING_DOOR: c_int = 3;

/// The word `passage_door`.
pub const OVS_CLEARANCES_THINGS_KIND_PASSAGE_DOOR: c_int = 4;

/// The word `threshold`.
pub const OVS_CLEARANCES_THINGS_KIND_THRESHOLD: c_int = 5;

/// The word `stair`.
pub const OVS_CLEARANCES_THINGS_KIND_STAIR: c_int = 6;

/// The word `wall_sill`.
pub const OVS_CLEARANCES_THINGS_KIND_WALL_SILL: c_int = 7;

/// The word `siding`.
pub const OVS_CLEARANCES_THINGS_KIND_SIDING: c_int = 8;

/// The word `framing`.
pub const OVS_CLEARANCES_THINGS_KIND_FRAMING: c_int = 9;

/// The word `termite_strip`.
pub const OVS_CLEARANCES_THINGS_KIND_TERMITE_STRIP: c_int = 10;

/// The word `ignition_source`.
pub const OVS_CLEARANCES_THINGS_KIND_IGNITION_SOURCE: c_int = 11;

/// The word `headroom`.
pub const OVS_CLEARANCES_THINGS_KIND_HEADROOM: c_int = 12;

/// The word `panel`.
pub const OVS_CLEARANCES_THINGS_KIND_PANEL: c_int = 13;

/// The word `drain_rim`.
pub const OVS_CLEARANCES_THINGS_KIND_DRAIN_RIM: c_int = 14;

/// The word `cleanout`.
pub const OVS_CLEARANCES_THINGS_KIND_CLEANOUT: c_int = 15;

/// The word `weep_hole`.
pub const OVS_CLEARANCES_THINGS_KIND_WEEP_HOLE: c_int = 16;

/// The word `crawl_vent`.
pub const OVS_CLEARANCES_THINGS_KIND_CRAWL_VENT: c_int = 17;

/// The word `shut_off`.
pub const OVS_CLEARANCES_THINGS_KIND_SHUT_OFF: c_int = 18;

/// The word `hose_bib`.
pub const OVS_CLEARANCES_THINGS_KIND_HOSE_BIB: c_int = 19;

/// The word `gas_riser`.
pub const OVS_CLEARANCES_THINGS_KIND_GAS_RISER: c_int = 20;

/// The word `post`.
pub const OVS_CLEARANCES_THINGS_KIND_POST: c_int = 21;

/// The word `anchor`.
pub const OVS_CLEARANCES_THINGS_KIND_ANCHOR: c_int = 22;

/// The word `wire`.
pub const OVS_CLEARANCES_THINGS_KIND_WIRE: c_int = 23;

/// The word `buried_service`.
pub const OVS_CLEARANCES_THINGS_KIND_BURIED_SERVICE: c_int = 24;

/// The word `open_edge`.
pub const OVS_CLEARANCES_THINGS_KIND_OPEN_EDGE: c_int = 25;

/// The word `in`.
pub const OVS_CLEARANCES_THINGS_SWING_IN: c_int = 0;

/// The word `out`.
pub const OVS_CLEARANCES_THINGS_SWING_OUT: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_RUNS_OUTSIDE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_RUNS_OUTSIDE_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_FIRE_RATED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_FIRE_RATED_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_EXIT_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_EXIT_YES: c_int = 1;

/// The word `foot`.
pub const OVS_CLEARANCES_THINGS_END_FOOT: c_int = 0;

/// The word `head`.
pub const OVS_CLEARANCES_THINGS_END_HEAD: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_EXPOSED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_EXPOSED_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_VEHICLES_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_VEHICLES_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_LISTED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_LISTED_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_KEPT_FREE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_KEPT_FREE_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_LOCATED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_LOCATED_YES: c_int = 1;

/// The word `no`.
pub const OVS_CLEARANCES_THINGS_ROUTE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_CLEARANCES_THINGS_ROUTE_YES: c_int = 1;

/// The word `sectional_door`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_SECTIONAL_DOOR: c_int = 0;

/// The word `roll_door`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_ROLL_DOOR: c_int = 1;

/// The word `swinging_door`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_SWINGING_DOOR: c_int = 2;

/// The word `sliding_door`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_SLIDING_DOOR: c_int = 3;

/// The word `passage_door`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_PASSAGE_DOOR: c_int = 4;

/// The word `threshold`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_THRESHOLD: c_int = 5;

/// The word `stair`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_STAIR: c_int = 6;

/// The word `wall_sill`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_WALL_SILL: c_int = 7;

/// The word `siding`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_SIDING: c_int = 8;

/// The word `framing`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_FRAMING: c_int = 9;

/// The word `termite_strip`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_TERMITE_STRIP: c_int = 10;

/// The word `ignition_source`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_IGNITION_SOURCE: c_int = 11;

/// The word `headroom`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_HEADROOM: c_int = 12;

/// The word `panel`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_PANEL: c_int = 13;

/// The word `drain_rim`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_DRAIN_RIM: c_int = 14;

/// The word `cleanout`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_CLEANOUT: c_int = 15;

/// The word `weep_hole`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_WEEP_HOLE: c_int = 16;

/// The word `crawl_vent`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_CRAWL_VENT: c_int = 17;

/// The word `shut_off`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_SHUT_OFF: c_int = 18;

/// The word `hose_bib`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_HOSE_BIB: c_int = 19;

/// The word `gas_riser`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_GAS_RISER: c_int = 20;

/// The word `post`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_POST: c_int = 21;

/// The word `anchor`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_ANCHOR: c_int = 22;

/// The word `wire`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_WIRE: c_int = 23;

/// The word `buried_service`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_BURIED_SERVICE: c_int = 24;

/// The word `open_edge`.
pub const OVS_CLEARANCES_JUDGEMENTS_KIND_OPEN_EDGE: c_int = 25;

/// The word `pass`.
pub const OVS_CLEARANCES_JUDGEMENTS_VERDICT_PASS: c_int = 0;

/// The word `confirm_locally`.
pub const OVS_CLEARANCES_JUDGEMENTS_VERDICT_CONFIRM_LOCALLY: c_int = 1;

/// The word `ask`.
pub const OVS_CLEARANCES_JUDGEMENTS_VERDICT_ASK: c_int = 2;

/// The word `fail`.
pub const OVS_CLEARANCES_JUDGEMENTS_VERDICT_FAIL: c_int = 3;

/// The word `opening`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_OPENING: c_int = 0;

/// The word `seal_line`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_SEAL_LINE: c_int = 1;

/// The word `rebate`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_REBATE: c_int = 2;

/// The word `eyes`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_EYES: c_int = 3;

/// The word `leaf`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_LEAF: c_int = 4;

/// The word `rating`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_RATING: c_int = 5;

/// The word `sill`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_SILL: c_int = 6;

/// The word `landing`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_LANDING: c_int = 7;

/// The word `riser`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_RISER: c_int = 8;

/// The word `riser_spread`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_RISER_SPREAD: c_int = 9;

/// The word `wood`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_WOOD: c_int = 10;

/// The word `earth`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_EARTH: c_int = 11;

/// The word `strip`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_STRIP: c_int = 12;

/// The word `ignition`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_IGNITION: c_int = 13;

/// The word `panel`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_PANEL: c_int = 14;

/// The word `rim`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_RIM: c_int = 15;

/// The word `free`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_FREE: c_int = 16;

/// The word `covered`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_COVERED: c_int = 17;

/// The word `services`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_SERVICES: c_int = 18;

/// The word `edge`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_EDGE: c_int = 19;

/// The word `step`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_STEP: c_int = 20;

/// The word `guard`.
pub const OVS_CLEARANCES_JUDGEMENTS_DECIDES_GUARD: c_int = 21;

/// The word `opening`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_OPENING: c_int = 0;

/// The word `seal_line`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_SEAL_LINE: c_int = 1;

/// The word `rebate`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_REBATE: c_int = 2;

/// The word `eyes`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_EYES: c_int = 3;

/// The word `leaf`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_LEAF: c_int = 4;

/// The word `rating`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_RATING: c_int = 5;

/// The word `sill`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_SILL: c_int = 6;

/// The word `landing`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_LANDING: c_int = 7;

/// The word `riser`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_RISER: c_int = 8;

/// The word `riser_spread`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_RISER_SPREAD: c_int = 9;

/// The word `wood`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_WOOD: c_int = 10;

/// The word `earth`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_EARTH: c_int = 11;

/// The word `strip`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_STRIP: c_int = 12;

/// The word `ignition`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_IGNITION: c_int = 13;

/// The word `panel`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_PANEL: c_int = 14;

/// The word `rim`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_RIM: c_int = 15;

/// The word `free`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_FREE: c_int = 16;

/// The word `covered`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_COVERED: c_int = 17;

/// The word `services`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_SERVICES: c_int = 18;

/// The word `edge`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_EDGE: c_int = 19;

/// The word `step`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_STEP: c_int = 20;

/// The word `guard`.
pub const OVS_CLEARANCES_CHECKS_ABOUT_GUARD: c_int = 21;

/// The word `pass`.
pub const OVS_CLEARANCES_CHECKS_VERDICT_PASS: c_int = 0;

/// The word `confirm_locally`.
pub const OVS_CLEARANCES_CHECKS_VERDICT_CONFIRM_LOCALLY: c_int = 1;

/// The word `ask`.
pub const OVS_CLEARANCES_CHECKS_VERDICT_ASK: c_int = 2;

/// The word `fail`.
pub const OVS_CLEARANCES_CHECKS_VERDICT_FAIL: c_int = 3;

/// The word `trim_tracks`.
pub const OVS_CLEARANCES_WORKS_TASK_TRIM_TRACKS: c_int = 0;

/// The word `retension_springs`.
pub const OVS_CLEARANCES_WORKS_TASK_RETENSION_SPRINGS: c_int = 1;

/// The word `reset_opener`.
pub const OVS_CLEARANCES_WORKS_TASK_RESET_OPENER: c_int = 2;

/// The word `trim_guides`.
pub const OVS_CLEARANCES_WORKS_TASK_TRIM_GUIDES: c_int = 3;

/// The word `reset_stops`.
pub const OVS_CLEARANCES_WORKS_TASK_RESET_STOPS: c_int = 4;

/// The word `cut_leaves`.
pub const OVS_CLEARANCES_WORKS_TASK_CUT_LEAVES: c_int = 5;

/// The word `move_bolts`.
pub const OVS_CLEARANCES_WORKS_TASK_MOVE_BOLTS: c_int = 6;

/// The word `cut_or_raise_track`.
pub const OVS_CLEARANCES_WORKS_TASK_CUT_OR_RAISE_TRACK: c_int = 7;

/// The word `reset_floor_guide`.
pub const OVS_CLEARANCES_WORKS_TASK_RESET_FLOOR_GUIDE: c_int = 8;

/// The word `raise_header`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_HEADER: c_int = 9;

/// The word `ramp_outside`.
pub const OVS_CLEARANCES_WORKS_TASK_RAMP_OUTSIDE: c_int = 10;

/// The word `drop_outside`.
pub const OVS_CLEARANCES_WORKS_TASK_DROP_OUTSIDE: c_int = 11;

/// The word `level_line`.
pub const OVS_CLEARANCES_WORKS_TASK_LEVEL_LINE: c_int = 12;

/// The word `cut_leaf`.
pub const OVS_CLEARANCES_WORKS_TASK_CUT_LEAF: c_int = 13;

/// The word `raise_frame`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_FRAME: c_int = 14;

/// The word `ask_maker`.
pub const OVS_CLEARANCES_WORKS_TASK_ASK_MAKER: c_int = 15;

/// The word `hold_down`.
pub const OVS_CLEARANCES_WORKS_TASK_HOLD_DOWN: c_int = 16;

/// The word `step_at_door`.
pub const OVS_CLEARANCES_WORKS_TASK_STEP_AT_DOOR: c_int = 17;

/// The word `rebuild_low_step`.
pub const OVS_CLEARANCES_WORKS_TASK_REBUILD_LOW_STEP: c_int = 18;

/// The word `add_step`.
pub const OVS_CLEARANCES_WORKS_TASK_ADD_STEP: c_int = 19;

/// The word `keep_off_wood`.
pub const OVS_CLEARANCES_WORKS_TASK_KEEP_OFF_WOOD: c_int = 20;

/// The word `cut_siding`.
pub const OVS_CLEARANCES_WORKS_TASK_CUT_SIDING: c_int = 21;

/// The word `flash_wood`.
pub const OVS_CLEARANCES_WORKS_TASK_FLASH_WOOD: c_int = 22;

/// The word `keep_strip`.
pub const OVS_CLEARANCES_WORKS_TASK_KEEP_STRIP: c_int = 23;

/// The word `raise_appliance`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_APPLIANCE: c_int = 24;

/// The word `raise_overhead`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_OVERHEAD: c_int = 25;

/// The word `raise_panel`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_PANEL: c_int = 26;

/// The word `extend_rim`.
pub const OVS_CLEARANCES_WORKS_TASK_EXTEND_RIM: c_int = 27;

/// The word `lower_rim`.
pub const OVS_CLEARANCES_WORKS_TASK_LOWER_RIM: c_int = 28;

/// The word `raise_cap`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_CAP: c_int = 29;

/// The word `free_weep_holes`.
pub const OVS_CLEARANCES_WORKS_TASK_FREE_WEEP_HOLES: c_int = 30;

/// The word `raise_vent`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_VENT: c_int = 31;

/// The word `raise_box`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_BOX: c_int = 32;

/// The word `raise_bib`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_BIB: c_int = 33;

/// The word `raise_gas_riser`.
pub const OVS_CLEARANCES_WORKS_TASK_RAISE_GAS_RISER: c_int = 34;

/// The word `box_out_post`.
pub const OVS_CLEARANCES_WORKS_TASK_BOX_OUT_POST: c_int = 35;

/// The word `sleeve_bolts`.
pub const OVS_CLEARANCES_WORKS_TASK_SLEEVE_BOLTS: c_int = 36;

/// The word `lift_wires`.
pub const OVS_CLEARANCES_WORKS_TASK_LIFT_WIRES: c_int = 37;

/// The word `call_for_marks`.
pub const OVS_CLEARANCES_WORKS_TASK_CALL_FOR_MARKS: c_int = 38;

/// The word `backfill`.
pub const OVS_CLEARANCES_WORKS_TASK_BACKFILL: c_int = 39;

/// The word `step_or_ramp`.
pub const OVS_CLEARANCES_WORKS_TASK_STEP_OR_RAMP: c_int = 40;

/// The word `guard`.
pub const OVS_CLEARANCES_WORKS_TASK_GUARD: c_int = 41;

/// The word `cut_lawn`.
pub const OVS_CLEARANCES_WORKS_TASK_CUT_LAWN: c_int = 42;

/// The word `crew`.
pub const OVS_CLEARANCES_WORKS_TRADE_CREW: c_int = 0;

/// The word `carpenter`.
pub const OVS_CLEARANCES_WORKS_TRADE_CARPENTER: c_int = 1;

/// The word `door_technician`.
pub const OVS_CLEARANCES_WORKS_TRADE_DOOR_TECHNICIAN: c_int = 2;

/// The word `maker`.
pub const OVS_CLEARANCES_WORKS_TRADE_MAKER: c_int = 3;

/// The word `mason`.
pub const OVS_CLEARANCES_WORKS_TRADE_MASON: c_int = 4;

/// The word `plumber`.
pub const OVS_CLEARANCES_WORKS_TRADE_PLUMBER: c_int = 5;

/// The word `gas_fitter`.
pub const OVS_CLEARANCES_WORKS_TRADE_GAS_FITTER: c_int = 6;

/// The word `electrician`.
pub const OVS_CLEARANCES_WORKS_TRADE_ELECTRICIAN: c_int = 7;

/// The word `locating_service`.
pub const OVS_CLEARANCES_WORKS_TRADE_LOCATING_SERVICE: c_int = 8;

/// The word `engineer`.
pub const OVS_CLEARANCES_WORKS_TRADE_ENGINEER: c_int = 9;

static APPROACH: &Operation = row(OPERATIONS, "approach");

/// A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks,
/// the step at the door, and a drain along the door instead.
///
/// Equation: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of grade =
/// difference of two falls.
/// Taken for granted: the ground is straight between its points; a new approach is straight from the floor's edge
/// to where it ties in; the floor is level at the door; 95 % of the rain runs off.
///
/// - `profile_distance_ft` (ft): distance from the door; at least 0 ft, at most 3280.83989501 ft.
/// - `profile_elevation_ft` (ft): height of the ground; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `profile_rows`: the ground outside: how many rows, each a measured place of the ground outside, from the door
///   outwards, the first at the door; at least 1.
/// - `finish`: the new top surface, whose lowest place along the door counts; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `floor` (ft): height of the floor at the door; or a finish with the places of the door; at least
///     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `finish`: the new top surface, whose lowest place along the door counts; may be left out.
///   - `door`: places along the door; may be left out.
///   - `x` of `door` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `door` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `traffic`: what goes over it; 0 vehicle, 1 wheelchair, 2 foot; where left out vehicle, because most
///     approaches are driven on.
///   - `fall` (%): fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not
///     given; at least 0 %, at most 100 %; may be left out.
///   - `over` (ft): over which distance from the door; more than 0 ft, at most 3280.83989501 ft; where left out 10
///     ft, because the rule for ground by buildings.
///   - `tie_in` (ft): how far from the door a new approach meets the ground; more than 0 ft, at most 3280.83989501
///     ft; may be left out.
///   - `thickness` (in): how thick the new approach is; at least 0 in, at most 39.3700787402 in; may be left out.
///   - `rebate` (in): how far the outside lies below the floor at the door; at least 0 in, at most 39.3700787402
///     in; may be left out.
///   - `wheelbase` (in): from axle to axle; more than 0 in, at most 590.551181102 in; may be left out.
///   - `clearance` (in): room under the vehicle between its axles; at least 0 in, at most 39.3700787402 in; may be
///     left out.
///   - `overhang` (in): from the front axle to the bumper; more than 0 in, at most 590.551181102 in; may be left
///     out.
///   - `bumper` (in): room under the bumper; at least 0 in, at most 39.3700787402 in; may be left out.
///   - `door_width` (ft): how wide the door is, for a drain along it; more than 0 ft, at most 3280.83989501 ft; may
///     be left out.
///   - `rain` (in/h): how fast rain comes down on hard ground, for that drain; at least 0 in/h, at most
///     39.3700787402 in/h; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_APPROACH_JUDGED: whether every limit is kept; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_NEEDED (ft): the floor height from which water falls away as wanted.
///   - OVS_APPROACH_GOVERNING (ft): how far from the door the place is that decides it.
///   - OVS_APPROACH_SPARE (in): how far the floor is above that; negative below.
///   - OVS_APPROACH_AWAY: what that does to the water; 0 falls away, 1 floor too low.
///   - OVS_APPROACH_STEP (in): the step at the door, from the outside up to the floor.
///   - OVS_APPROACH_STEP_LIMIT (in): the most that it may be.
///   - OVS_APPROACH_STEP_JUDGED: whether it is; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_DIG (in): how deep old ground has to come out under the new approach; none without tie-in and
///     thickness.
///   - OVS_APPROACH_TRENCH_FLOOR (ft): the height that the floor may have with a drain along the door.
///   - OVS_APPROACH_TRENCH_REACH (ft): how far out the ground falls to the door.
///   - OVS_APPROACH_TRENCH_AREA (ft2): the ground that drains to the door; none without its width.
///   - OVS_APPROACH_TRENCH_FLOW (gal/min): the rain that comes from it; none without rain.
///   - OVS_APPROACH_STRETCHES: the ground as it will be.
///   - OVS_APPROACH_BREAKS: where its grade changes.
///   - OVS_APPROACH_RULES: every rule at every place.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER,
/// OVS_APPROACH_SHORT, OVS_APPROACH_START, OVS_APPROACH_UNSORTED, OVS_TIE_IN_BEYOND, OVS_DOOR_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT Roadway
/// Design Manual, driveway guidelines (any), section 4, profiles, private residential.
/// Basis: a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey, Minnesota
/// (any), driveway grades, other than commercial.
/// Basis: a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces, from memory:
/// confirm.
/// Basis: a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"100.1 ft","profile":{"distance":["0 ft","5 ft","20 ft","30 ft"],"elevation":["100 ft","99.95 ft","99.6 ft","99.1 ft"]},"tie_in":"20 ft","thickness":"4 in","rebate":"1 in","wheelbase":"110 in","clearance":"6 in","door_width":"9 ft","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_us(
    profile_distance_ft: *const f64,
    profile_elevation_ft: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_ft))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks,
/// the step at the door, and a drain along the door instead.
///
/// Equation: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of grade =
/// difference of two falls.
/// Taken for granted: the ground is straight between its points; a new approach is straight from the floor's edge
/// to where it ties in; the floor is level at the door; 95 % of the rain runs off.
///
/// - `profile_distance_m` (m): distance from the door; at least 0 m, at most 1000 m.
/// - `profile_elevation_m` (m): height of the ground; at least -10000 m, at most 10000 m.
/// - `profile_rows`: the ground outside: how many rows, each a measured place of the ground outside, from the door
///   outwards, the first at the door; at least 1.
/// - `finish`: the new top surface, whose lowest place along the door counts; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `floor` (m): height of the floor at the door; or a finish with the places of the door; at least -10000 m, at
///     most 10000 m; may be left out.
///   - `finish`: the new top surface, whose lowest place along the door counts; may be left out.
///   - `door`: places along the door; may be left out.
///   - `x` of `door` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `door` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `traffic`: what goes over it; 0 vehicle, 1 wheelchair, 2 foot; where left out vehicle, because most
///     approaches are driven on.
///   - `fall` (%): fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings, where not
///     given; at least 0 %, at most 100 %; may be left out.
///   - `over` (m): over which distance from the door; more than 0 m, at most 1000 m; where left out 10 ft, because
///     the rule for ground by buildings.
///   - `tie_in` (m): how far from the door a new approach meets the ground; more than 0 m, at most 1000 m; may be
///     left out.
///   - `thickness` (mm): how thick the new approach is; at least 0 mm, at most 1000 mm; may be left out.
///   - `rebate` (mm): how far the outside lies below the floor at the door; at least 0 mm, at most 1000 mm; may be
///     left out.
///   - `wheelbase` (mm): from axle to axle; more than 0 mm, at most 15000 mm; may be left out.
///   - `clearance` (mm): room under the vehicle between its axles; at least 0 mm, at most 1000 mm; may be left out.
///   - `overhang` (mm): from the front axle to the bumper; more than 0 mm, at most 15000 mm; may be left out.
///   - `bumper` (mm): room under the bumper; at least 0 mm, at most 1000 mm; may be left out.
///   - `door_width` (m): how wide the door is, for a drain along it; more than 0 m, at most 1000 m; may be left
///     out.
///   - `rain` (mm/h): how fast rain comes down on hard ground, for that drain; at least 0 mm/h, at most 1000 mm/h;
///     may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_APPROACH_JUDGED: whether every limit is kept; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_NEEDED (m): the floor height from which water falls away as wanted.
///   - OVS_APPROACH_GOVERNING (m): how far from the door the place is that decides it.
///   - OVS_APPROACH_SPARE (mm): how far the floor is above that; negative below.
///   - OVS_APPROACH_AWAY: what that does to the water; 0 falls away, 1 floor too low.
///   - OVS_APPROACH_STEP (mm): the step at the door, from the outside up to the floor.
///   - OVS_APPROACH_STEP_LIMIT (mm): the most that it may be.
///   - OVS_APPROACH_STEP_JUDGED: whether it is; 0 pass, 1 fail, 2 confirm locally.
///   - OVS_APPROACH_DIG (mm): how deep old ground has to come out under the new approach; none without tie-in and
///     thickness.
///   - OVS_APPROACH_TRENCH_FLOOR (m): the height that the floor may have with a drain along the door.
///   - OVS_APPROACH_TRENCH_REACH (m): how far out the ground falls to the door.
///   - OVS_APPROACH_TRENCH_AREA (m2): the ground that drains to the door; none without its width.
///   - OVS_APPROACH_TRENCH_FLOW (L/s): the rain that comes from it; none without rain.
///   - OVS_APPROACH_STRETCHES: the ground as it will be.
///   - OVS_APPROACH_BREAKS: where its grade changes.
///   - OVS_APPROACH_RULES: every rule at every place.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER,
/// OVS_APPROACH_SHORT, OVS_APPROACH_START, OVS_APPROACH_UNSORTED, OVS_TIE_IN_BEYOND, OVS_DOOR_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT Roadway
/// Design Manual, driveway guidelines (any), section 4, profiles, private residential.
/// Basis: a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades.
/// Basis: a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey, Minnesota
/// (any), driveway grades, other than commercial.
/// Basis: a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces, from memory:
/// confirm.
/// Basis: a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"floor":"100.1 ft","profile":{"distance":["0 ft","5 ft","20 ft","30 ft"],"elevation":["100 ft","99.95 ft","99.6 ft","99.1 ft"]},"tie_in":"20 ft","thickness":"4 in","rebate":"1 in","wheelbase":"110 in","clearance":"6 in","door_width":"9 ft","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_si(
    profile_distance_m: *const f64,
    profile_elevation_m: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_m))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_approach_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_us_why(
    profile_distance_ft: *const f64,
    profile_elevation_ft: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_ft))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_approach_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_approach_si_why(
    profile_distance_m: *const f64,
    profile_elevation_m: *const f64,
    profile_rows: c_int,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (3, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_m))])),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(APPROACH, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static CREST_CLEARANCE: &Operation = row(OPERATIONS, "crest_clearance");

/// What a crest takes of the room under a vehicle, midway between its axles.
///
/// Equation: lost = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
/// Taken for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for the exact
/// form.
///
/// - `wheelbase_in` (in): from axle to axle; more than 0 in, at most 590.551181102 in.
/// - `change_percent` (%): change of grade; at least 0 %, at most 100 %.
/// - `lost_in` (in), out: room taken, slopes for angles.
/// - `exact_in` (in), out: room taken, exactly.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_crest_clearance_us(110, 10, ...) gives lost_in = 2.75, exact_in = 2.74316.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us(
    wheelbase_in: f64,
    change_percent: f64,
    lost_in: *mut f64,
    exact_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(lost_in), Output::Numbers(exact_in)];
    unsafe { scalar::one(CREST_CLEARANCE, System::Us, [wheelbase_in, change_percent], results, notes, Message::new(msg, msg_len)) }
}

/// What a crest takes of the room under a vehicle, midway between its axles.
///
/// Equation: lost = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
/// Taken for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for the exact
/// form.
///
/// - `wheelbase_mm` (mm): from axle to axle; more than 0 mm, at most 15000 mm.
/// - `change_percent` (%): change of grade; at least 0 %, at most 100 %.
/// - `lost_mm` (mm), out: room taken, slopes for angles.
/// - `exact_mm` (mm), out: room taken, exactly.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_crest_clearance_si(2794, 10, ...) gives lost_mm = 69.85, exact_mm = 69.6762.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si(
    wheelbase_mm: f64,
    change_percent: f64,
    lost_mm: *mut f64,
    exact_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(lost_mm), Output::Numbers(exact_mm)];
    unsafe { scalar::one(CREST_CLEARANCE, System::Si, [wheelbase_mm, change_percent], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_crest_clearance_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us_array(
    wheelbase_in: *const f64,
    change_percent: *const f64,
    lost_in: *mut f64,
    exact_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wheelbase_in), Input::Numbers(change_percent)], results: [Output::Numbers(lost_in), Output::Numbers(exact_in)], notes, n, bad_index };
    unsafe { scalar::array(CREST_CLEARANCE, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_crest_clearance_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si_array(
    wheelbase_mm: *const f64,
    change_percent: *const f64,
    lost_mm: *mut f64,
    exact_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wheelbase_mm), Input::Numbers(change_percent)], results: [Output::Numbers(lost_mm), Output::Numbers(exact_mm)], notes, n, bad_index };
    unsafe { scalar::array(CREST_CLEARANCE, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_crest_clearance_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_us_why(
    wheelbase_in: f64,
    change_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CREST_CLEARANCE, System::Us, [wheelbase_in, change_percent], text) }
}

/// Why ovs_crest_clearance_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_crest_clearance_si_why(
    wheelbase_mm: f64,
    change_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(CREST_CLEARANCE, System::Si, [wheelbase_mm, change_percent], text) }
}

static SAG_BREAK: &Operation = row(OPERATIONS, "sag_break");

/// The greatest change of grade of a sag that a bumper clears.
///
/// Equation: change = bumper / overhang.
/// Taken for granted: the vehicle stands level with its front axle at the sag; wheels as points.
///
/// - `overhang_in` (in): from the front axle to the bumper; more than 0 in, at most 590.551181102 in.
/// - `bumper_in` (in): room under the bumper; at least 0 in, at most 39.3700787402 in.
/// - `change_percent` (%), out: the greatest change of grade.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_sag_break_us(36, 9, ...) gives change_percent = 25.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us(
    overhang_in: f64,
    bumper_in: f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(change_percent)];
    unsafe { scalar::one(SAG_BREAK, System::Us, [overhang_in, bumper_in], results, notes, Message::new(msg, msg_len)) }
}

/// The greatest change of grade of a sag that a bumper clears.
///
/// Equation: change = bumper / overhang.
/// Taken for granted: the vehicle stands level with its front axle at the sag; wheels as points.
///
/// - `overhang_mm` (mm): from the front axle to the bumper; more than 0 mm, at most 15000 mm.
/// - `bumper_mm` (mm): room under the bumper; at least 0 mm, at most 1000 mm.
/// - `change_percent` (%), out: the greatest change of grade.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_sag_break_si(914.4, 228.6, ...) gives change_percent = 25.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si(
    overhang_mm: f64,
    bumper_mm: f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(change_percent)];
    unsafe { scalar::one(SAG_BREAK, System::Si, [overhang_mm, bumper_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_sag_break_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us_array(
    overhang_in: *const f64,
    bumper_in: *const f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(overhang_in), Input::Numbers(bumper_in)], results: [Output::Numbers(change_percent)], notes, n, bad_index };
    unsafe { scalar::array(SAG_BREAK, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_sag_break_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si_array(
    overhang_mm: *const f64,
    bumper_mm: *const f64,
    change_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(overhang_mm), Input::Numbers(bumper_mm)], results: [Output::Numbers(change_percent)], notes, n, bad_index };
    unsafe { scalar::array(SAG_BREAK, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_sag_break_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_us_why(
    overhang_in: f64,
    bumper_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAG_BREAK, System::Us, [overhang_in, bumper_in], text) }
}

/// Why ovs_sag_break_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_sag_break_si_why(
    overhang_mm: f64,
    bumper_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(SAG_BREAK, System::Si, [overhang_mm, bumper_mm], text) }
}

static CLEARANCES: &Operation = row(OPERATIONS, "clearances");

/// Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by
/// how much, what the raise forces and whose trade that is.
///
/// Equation: rise = finish - old slab; room = what is left - what is wanted; fill against an edge = integral along
/// it of height x height x run / 2.
/// Taken for granted: a thing outside the work is met at the nearest edge; limits that could not be read in their
/// source never fail, they say to confirm locally.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `things_kind`: what kind of thing it is; 0 sectional_door, 1 roll_door, 2 swinging_door, 3 sliding_door, 4
///   passage_door, 5 threshold, 6 stair, 7 wall_sill, 8 siding, 9 framing, 10 termite_strip, 11 ignition_source, 12
///   headroom, 13 panel, 14 drain_rim, 15 cleanout, 16 weep_hole, 17 crawl_vent, 18 shut_off, 19 hose_bib, 20
///   gas_riser, 21 post, 22 anchor, 23 wire, 24 buried_service, 25 open_edge.
/// - `things_x_ft` (ft): its place, from the left; of a line one end; at least -328083.989501 ft, at most
///   328083.989501 ft.
/// - `things_y_ft` (ft): its place, from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `things_rows`: the things that it meets: how many rows, each one thing that the floor meets, with the measures
///   that its kind reads; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `things`: what it is called; required.
///   - `to_x` of `things` (ft): the other end of its line, from the left: doors and edges have one; at least
///     -328083.989501 ft, at most 328083.989501 ft; may be left out.
///   - `to_y` of `things` (ft): the other end of its line, from the front; at least -328083.989501 ft, at most
///     328083.989501 ft; may be left out.
///   - `elevation` of `things` (ft): how high it is: header of a vehicle door, leaf of a passage door, sill, lower
///     edge, rim, cap, hole; every kind but stair, open_edge, buried_service; at least -32808.3989501 ft, at most
///     32808.3989501 ft; may be left out.
///   - `above_slab` of `things` (in): the same as found with a tape above the old slab, in place of elevation; not
///     passage_door; at least -3937.00787402 in, at most 3937.00787402 in; may be left out.
///   - `needed` of `things` (in): clear height needed: vehicle doors, headroom; at least 0 in, at most
///     3937.00787402 in; may be left out.
///   - `seal_takes` of `things` (in): how much out of level the bottom seal takes up: vehicle doors; at least 0 in,
///     at most 3937.00787402 in; may be left out.
///   - `eyes_now` of `things` (in): photo-eyes above the old slab: sectional_door, roll_door; at least 0 in, at
///     most 3937.00787402 in; may be left out.
///   - `gap_now` of `things` (in): gap under the leaf now, above the old slab: swinging_door, sliding_door,
///     passage_door; at least 0 in, at most 3937.00787402 in; may be left out.
///   - `gap` of `things` (in): gap wanted under the leaf: swinging_door, sliding_door, passage_door; at least 0 in,
///     at most 3937.00787402 in; may be left out.
///   - `covering` of `things` (in): covering to come on the floor: passage_door, threshold; at least 0 in, at most
///     3937.00787402 in; may be left out.
///   - `may_lose` of `things` (in): how much may be cut off the leaf: swinging_door, passage_door; at least 0 in,
///     at most 3937.00787402 in; may be left out.
///   - `swing` of `things`: in over this floor or out: swinging_door, threshold; 0 in, 1 out; may be left out.
///   - `runs_outside` of `things`: whether the leaf runs outside the wall: sliding_door; 0 no, 1 yes; may be left
///     out.
///   - `fire_rated` of `things`: whether it is a fire-rated door: passage_door; 0 no, 1 yes; may be left out.
///   - `exit` of `things`: whether it is a required exit: threshold; 0 no, 1 yes; may be left out.
///   - `risers` of `things`: risers from the bottom up, with semicolons between: stair; may be left out.
///   - `riser_count` of `things`: number of even risers: stair; from 1 to 100; may be left out.
///   - `flight` of `things` (in): height of the even risers together: stair; at least 0 in, at most 3937.00787402
///     in; may be left out.
///   - `end` of `things`: which end of the stair this floor is: stair; 0 foot, 1 head; may be left out.
///   - `ground` of `things` (ft): ground outside: vehicle doors, wall_sill, siding, and open_edge at its first end;
///     at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `ground_to` of `things` (ft): ground at the other end: as ground; at least -32808.3989501 ft, at most
///     32808.3989501 ft; may be left out.
///   - `free` of `things` (in): how much stays free: threshold, termite_strip, panel, cleanout, weep_hole,
///     crawl_vent, shut_off, hose_bib, gas_riser; at least 0 in, at most 3937.00787402 in; may be left out.
///   - `exposed` of `things`: whether weather reaches the wood: siding; 0 no, 1 yes; may be left out.
///   - `vehicles` of `things`: whether vehicles are parked in the room: ignition_source; 0 no, 1 yes; may be left
///     out.
///   - `listed` of `things`: whether it is listed as resistant to flammable vapour: ignition_source; 0 no, 1 yes;
///     may be left out.
///   - `kept_free` of `things`: whether it is kept out of the concrete, boxed out or sleeved: framing, post,
///     anchor, wire; 0 no, 1 yes; may be left out.
///   - `located` of `things`: whether services are located and marked: buried_service; 0 no, 1 yes; may be left
///     out.
///   - `route` of `things`: whether anybody walks over it: open_edge; 0 no, 1 yes; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CLEARANCES_PASSED: things that still work.
///   - OVS_CLEARANCES_CONFIRM_LOCALLY: things that break a limit which is to be confirmed locally.
///   - OVS_CLEARANCES_ASK: things of which a measure that decides is missing.
///   - OVS_CLEARANCES_FAIL: things that do not work as they stand.
///   - OVS_CLEARANCES_JUDGEMENTS: each thing.
///   - OVS_CLEARANCES_CHECKS: each check of each thing.
///   - OVS_CLEARANCES_WORKS: the work that the raise forces.
///   - OVS_CLEARANCES_TEXT: the same for the site, one thing to a line.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_THING_OFF_FLOOR, OVS_LINE_NEEDED, OVS_MEASURE_NOT_READ, OVS_GROUND_MISSING.
/// Basis: plane and solid geometry: derived.
/// Basis: a figure that the caller gave for this thing: the project's specification.
/// Basis: a raise of 2 to 3 in is usually met by raising the doors, each kind in its own way: common practice, no
/// source.
/// Basis: a door line is level within 1/4 in, what a bottom seal takes up: common practice, no source.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: photo-eyes at most 6 in above the floor: United States rule on automatic residential door operators, 16
/// CFR 1211 (any), photoelectric sensors, from memory: confirm.
/// Basis: 3/8 in under a leaf: common practice, no source.
/// Basis: a door between house and parking is rated or solid, and is not altered: International Residential Code
/// (2015-2021), R302.5.1, opening protection, from memory: confirm.
/// Basis: the landing at the required exit at most 1 1/2 in below the threshold, 7 3/4 in where the door does not
/// swing over it: International Residential Code (2015-2021), R311.3, floors and landings at exterior doors, from
/// memory: confirm.
/// Basis: risers at most 7 3/4 in, the greatest and the least of a flight at most 3/8 in apart: International
/// Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: wood sills on foundations at least 8 in above the earth: International Residential Code (2015-2021),
/// R317.1, protection of wood against decay, from memory: confirm.
/// Basis: unprotected wood siding at least 6 in above the ground and 2 in above slabs in the weather: International
/// Residential Code (2015-2021), R317.1, item 5, as quoted elsewhere.
/// Basis: 4 to 6 in of foundation kept bare for inspection: Model codes and local rules on termites (any),
/// inspection strip, from memory: confirm.
/// Basis: ignition sources at least 18 in above a floor where vehicles are parked, unless listed as resistant to
/// vapour: International Residential Code (2015-2021), M1307.3 and G2408.2, from memory: confirm.
/// Basis: 7 ft clear over public parking; rooms that nobody lives in have no limit of their own: International
/// Building Code (2015-2021), 406.2.2, clear height, from memory: confirm.
/// Basis: the working space at an electric panel is kept: National Electrical Code (any), 110.26, working space,
/// from memory: confirm.
/// Basis: a drain's rim flush, or 1/8 to 1/4 in below the floor, dished 12 in around: common practice, no source.
/// Basis: free above the floor: caps and boxes flush, weep holes and vents 1 in, gas risers 3 in, taps 6 in: common
/// practice, no source.
/// Basis: services below are located and marked before anything is driven or cut: State laws on locating services
/// below ground (any), call before digging, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: a guard where walking surfaces are more than 30 in above what is below: International Residential Code
/// (2015-2021), R312.1, guards, from memory: confirm.
/// Basis: ground is filled against a new edge at 1 in 6 to 1 in 12: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"corners":[{"x":"0 ft","y":"0 ft"},{"x":"20 ft","y":"0 ft"},{"x":"20 ft","y":"24 ft"},{"x":"0 ft","y":"24 ft"}],"edges":["front","right","back","left"]},"shots":[{"x":"1 ft","y":"1 ft","elevation":"99.20 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.22 ft"},{"x":"19 ft","y":"23 ft","elevation":"99.40 ft"},{"x":"1 ft","y":"23 ft","elevation":"99.38 ft"}]},"finish":{"level":"99.7 ft"},"things":[{"name":"wide door","kind":"sectional_door","x":"4 ft","y":"1/2 in","to_x":"16 ft","to_y":"1/2 in","above_slab":"7' 6\"","needed":"84 in"},{"name":"cleanout","kind":"cleanout","x":"3 ft","y":"20 ft","above_slab":"1 in"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_clearances_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    things_kind: *const c_int,
    things_x_ft: *const f64,
    things_y_ft: *const f64,
    things_rows: c_int,
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
        (2, Given::Table(things_rows, &[(1, Input::Whole(things_kind)), (2, Input::Numbers(things_x_ft)), (3, Input::Numbers(things_y_ft))])),
    ];
    let request = Request::new(CLEARANCES, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by
/// how much, what the raise forces and whose trade that is.
///
/// Equation: rise = finish - old slab; room = what is left - what is wanted; fill against an edge = integral along
/// it of height x height x run / 2.
/// Taken for granted: a thing outside the work is met at the nearest edge; limits that could not be read in their
/// source never fail, they say to confirm locally.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `things_kind`: what kind of thing it is; 0 sectional_door, 1 roll_door, 2 swinging_door, 3 sliding_door, 4
///   passage_door, 5 threshold, 6 stair, 7 wall_sill, 8 siding, 9 framing, 10 termite_strip, 11 ignition_source, 12
///   headroom, 13 panel, 14 drain_rim, 15 cleanout, 16 weep_hole, 17 crawl_vent, 18 shut_off, 19 hose_bib, 20
///   gas_riser, 21 post, 22 anchor, 23 wire, 24 buried_service, 25 open_edge.
/// - `things_x_m` (m): its place, from the left; of a line one end; at least -100000 m, at most 100000 m.
/// - `things_y_m` (m): its place, from the front; at least -100000 m, at most 100000 m.
/// - `things_rows`: the things that it meets: how many rows, each one thing that the floor meets, with the measures
///   that its kind reads; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `things`: what it is called; required.
///   - `to_x` of `things` (m): the other end of its line, from the left: doors and edges have one; at least -100000
///     m, at most 100000 m; may be left out.
///   - `to_y` of `things` (m): the other end of its line, from the front; at least -100000 m, at most 100000 m; may
///     be left out.
///   - `elevation` of `things` (m): how high it is: header of a vehicle door, leaf of a passage door, sill, lower
///     edge, rim, cap, hole; every kind but stair, open_edge, buried_service; at least -10000 m, at most 10000 m;
///     may be left out.
///   - `above_slab` of `things` (mm): the same as found with a tape above the old slab, in place of elevation; not
///     passage_door; at least -100000 mm, at most 100000 mm; may be left out.
///   - `needed` of `things` (mm): clear height needed: vehicle doors, headroom; at least 0 mm, at most 100000 mm;
///     may be left out.
///   - `seal_takes` of `things` (mm): how much out of level the bottom seal takes up: vehicle doors; at least 0 mm,
///     at most 100000 mm; may be left out.
///   - `eyes_now` of `things` (mm): photo-eyes above the old slab: sectional_door, roll_door; at least 0 mm, at
///     most 100000 mm; may be left out.
///   - `gap_now` of `things` (mm): gap under the leaf now, above the old slab: swinging_door, sliding_door,
///     passage_door; at least 0 mm, at most 100000 mm; may be left out.
///   - `gap` of `things` (mm): gap wanted under the leaf: swinging_door, sliding_door, passage_door; at least 0 mm,
///     at most 100000 mm; may be left out.
///   - `covering` of `things` (mm): covering to come on the floor: passage_door, threshold; at least 0 mm, at most
///     100000 mm; may be left out.
///   - `may_lose` of `things` (mm): how much may be cut off the leaf: swinging_door, passage_door; at least 0 mm,
///     at most 100000 mm; may be left out.
///   - `swing` of `things`: in over this floor or out: swinging_door, threshold; 0 in, 1 out; may be left out.
///   - `runs_outside` of `things`: whether the leaf runs outside the wall: sliding_door; 0 no, 1 yes; may be left
///     out.
///   - `fire_rated` of `things`: whether it is a fire-rated door: passage_door; 0 no, 1 yes; may be left out.
///   - `exit` of `things`: whether it is a required exit: threshold; 0 no, 1 yes; may be left out.
///   - `risers` of `things`: risers from the bottom up, with semicolons between: stair; may be left out.
///   - `riser_count` of `things`: number of even risers: stair; from 1 to 100; may be left out.
///   - `flight` of `things` (mm): height of the even risers together: stair; at least 0 mm, at most 100000 mm; may
///     be left out.
///   - `end` of `things`: which end of the stair this floor is: stair; 0 foot, 1 head; may be left out.
///   - `ground` of `things` (m): ground outside: vehicle doors, wall_sill, siding, and open_edge at its first end;
///     at least -10000 m, at most 10000 m; may be left out.
///   - `ground_to` of `things` (m): ground at the other end: as ground; at least -10000 m, at most 10000 m; may be
///     left out.
///   - `free` of `things` (mm): how much stays free: threshold, termite_strip, panel, cleanout, weep_hole,
///     crawl_vent, shut_off, hose_bib, gas_riser; at least 0 mm, at most 100000 mm; may be left out.
///   - `exposed` of `things`: whether weather reaches the wood: siding; 0 no, 1 yes; may be left out.
///   - `vehicles` of `things`: whether vehicles are parked in the room: ignition_source; 0 no, 1 yes; may be left
///     out.
///   - `listed` of `things`: whether it is listed as resistant to flammable vapour: ignition_source; 0 no, 1 yes;
///     may be left out.
///   - `kept_free` of `things`: whether it is kept out of the concrete, boxed out or sleeved: framing, post,
///     anchor, wire; 0 no, 1 yes; may be left out.
///   - `located` of `things`: whether services are located and marked: buried_service; 0 no, 1 yes; may be left
///     out.
///   - `route` of `things`: whether anybody walks over it: open_edge; 0 no, 1 yes; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_CLEARANCES_PASSED: things that still work.
///   - OVS_CLEARANCES_CONFIRM_LOCALLY: things that break a limit which is to be confirmed locally.
///   - OVS_CLEARANCES_ASK: things of which a measure that decides is missing.
///   - OVS_CLEARANCES_FAIL: things that do not work as they stand.
///   - OVS_CLEARANCES_JUDGEMENTS: each thing.
///   - OVS_CLEARANCES_CHECKS: each check of each thing.
///   - OVS_CLEARANCES_WORKS: the work that the raise forces.
///   - OVS_CLEARANCES_TEXT: the same for the site, one thing to a line.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_THING_OFF_FLOOR, OVS_LINE_NEEDED, OVS_MEASURE_NOT_READ, OVS_GROUND_MISSING.
/// Basis: plane and solid geometry: derived.
/// Basis: a figure that the caller gave for this thing: the project's specification.
/// Basis: a raise of 2 to 3 in is usually met by raising the doors, each kind in its own way: common practice, no
/// source.
/// Basis: a door line is level within 1/4 in, what a bottom seal takes up: common practice, no source.
/// Basis: the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for wheels:
/// common practice, no source.
/// Basis: photo-eyes at most 6 in above the floor: United States rule on automatic residential door operators, 16
/// CFR 1211 (any), photoelectric sensors, from memory: confirm.
/// Basis: 3/8 in under a leaf: common practice, no source.
/// Basis: a door between house and parking is rated or solid, and is not altered: International Residential Code
/// (2015-2021), R302.5.1, opening protection, from memory: confirm.
/// Basis: the landing at the required exit at most 1 1/2 in below the threshold, 7 3/4 in where the door does not
/// swing over it: International Residential Code (2015-2021), R311.3, floors and landings at exterior doors, from
/// memory: confirm.
/// Basis: risers at most 7 3/4 in, the greatest and the least of a flight at most 3/8 in apart: International
/// Residential Code (2015-2021), R311.7.5.1, risers.
/// Basis: wood sills on foundations at least 8 in above the earth: International Residential Code (2015-2021),
/// R317.1, protection of wood against decay, from memory: confirm.
/// Basis: unprotected wood siding at least 6 in above the ground and 2 in above slabs in the weather: International
/// Residential Code (2015-2021), R317.1, item 5, as quoted elsewhere.
/// Basis: 4 to 6 in of foundation kept bare for inspection: Model codes and local rules on termites (any),
/// inspection strip, from memory: confirm.
/// Basis: ignition sources at least 18 in above a floor where vehicles are parked, unless listed as resistant to
/// vapour: International Residential Code (2015-2021), M1307.3 and G2408.2, from memory: confirm.
/// Basis: 7 ft clear over public parking; rooms that nobody lives in have no limit of their own: International
/// Building Code (2015-2021), 406.2.2, clear height, from memory: confirm.
/// Basis: the working space at an electric panel is kept: National Electrical Code (any), 110.26, working space,
/// from memory: confirm.
/// Basis: a drain's rim flush, or 1/8 to 1/4 in below the floor, dished 12 in around: common practice, no source.
/// Basis: free above the floor: caps and boxes flush, weep holes and vents 1 in, gas risers 3 in, taps 6 in: common
/// practice, no source.
/// Basis: services below are located and marked before anything is driven or cut: State laws on locating services
/// below ground (any), call before digging, from memory: confirm.
/// Basis: a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible Design
/// (2010), 303, changes in level, from memory: confirm.
/// Basis: a guard where walking surfaces are more than 30 in above what is below: International Residential Code
/// (2015-2021), R312.1, guards, from memory: confirm.
/// Basis: ground is filled against a new edge at 1 in 6 to 1 in 12: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"corners":[{"x":"0 ft","y":"0 ft"},{"x":"20 ft","y":"0 ft"},{"x":"20 ft","y":"24 ft"},{"x":"0 ft","y":"24 ft"}],"edges":["front","right","back","left"]},"shots":[{"x":"1 ft","y":"1 ft","elevation":"99.20 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.22 ft"},{"x":"19 ft","y":"23 ft","elevation":"99.40 ft"},{"x":"1 ft","y":"23 ft","elevation":"99.38 ft"}]},"finish":{"level":"99.7 ft"},"things":[{"name":"wide door","kind":"sectional_door","x":"4 ft","y":"1/2 in","to_x":"16 ft","to_y":"1/2 in","above_slab":"7' 6\"","needed":"84 in"},{"name":"cleanout","kind":"cleanout","x":"3 ft","y":"20 ft","above_slab":"1 in"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_clearances_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    things_kind: *const c_int,
    things_x_m: *const f64,
    things_y_m: *const f64,
    things_rows: c_int,
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
        (2, Given::Table(things_rows, &[(1, Input::Whole(things_kind)), (2, Input::Numbers(things_x_m)), (3, Input::Numbers(things_y_m))])),
    ];
    let request = Request::new(CLEARANCES, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_clearances_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_clearances_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    things_kind: *const c_int,
    things_x_ft: *const f64,
    things_y_ft: *const f64,
    things_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(things_rows, &[(1, Input::Whole(things_kind)), (2, Input::Numbers(things_x_ft)), (3, Input::Numbers(things_y_ft))])),
    ];
    let request = Request::new(CLEARANCES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_clearances_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_clearances_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    things_kind: *const c_int,
    things_x_m: *const f64,
    things_y_m: *const f64,
    things_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(things_rows, &[(1, Input::Whole(things_kind)), (2, Input::Numbers(things_x_m)), (3, Input::Numbers(things_y_m))])),
    ];
    let request = Request::new(CLEARANCES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
