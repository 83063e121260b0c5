//! The operations of `grade`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Output, Passed, Request, TextIn, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{FINISH_TYPE, ovs_finish, ovs_outline, ovs_survey};

/// The word `longest`.
pub const OVS_FINISH_TO_DRAIN_ALONG_LONGEST: c_int = 0;

/// The word `shortest`.
pub const OVS_FINISH_TO_DRAIN_ALONG_SHORTEST: c_int = 1;

/// The word `edge`.
pub const OVS_FINISH_WITH_STRIP_TOWARD_EDGE: c_int = 0;

/// The word `floor`.
pub const OVS_FINISH_WITH_STRIP_TOWARD_FLOOR: c_int = 1;

/// The result `finish`: the finish.
pub const OVS_FINISH_RAISED_FINISH: c_int = 0;

/// The result `raised_by` (in or mm): how far it was lifted; below zero where it was lowered.
pub const OVS_FINISH_RAISED_RAISED_BY: c_int = 1;

/// The result `at_x` (ft or m): the place that fixes it, from the left.
pub const OVS_FINISH_RAISED_AT_X: c_int = 2;

/// The result `at_y` (ft or m): the place that fixes it, from the front.
pub const OVS_FINISH_RAISED_AT_Y: c_int = 3;

/// The result `at_shot`: the shot there.
pub const OVS_FINISH_RAISED_AT_SHOT: c_int = 4;

/// The result `at_facet`: the facet there.
pub const OVS_FINISH_RAISED_AT_FACET: c_int = 5;

/// The result `rounded_by` (in or mm): how much of the lift is rounding.
pub const OVS_FINISH_RAISED_ROUNDED_BY: c_int = 6;

/// How many results there are.
pub const OVS_FINISH_RAISED_RESULTS: c_int = 7;

/// The result `facets`: the facets.
pub const OVS_FINISH_FACETS_FACETS: c_int = 0;

/// The column `name` of `facets`: its name, or its number from 1 on.
pub const OVS_FINISH_FACETS_FACETS_NAME: c_int = 0;

/// The column `fall` of `facets` (in/ft or %): its steepest fall.
pub const OVS_FINISH_FACETS_FACETS_FALL: c_int = 1;

/// The column `rise_x` of `facets` (in/ft or %): rise along x.
pub const OVS_FINISH_FACETS_FACETS_RISE_X: c_int = 2;

/// The column `rise_y` of `facets` (in/ft or %): rise along y.
pub const OVS_FINISH_FACETS_FACETS_RISE_Y: c_int = 3;

/// The column `downhill` of `facets`: which way water runs on it: right is along x, back is along y.
pub const OVS_FINISH_FACETS_FACETS_DOWNHILL: c_int = 4;

/// The column `falls_to` of `facets`: what it is said to fall to.
pub const OVS_FINISH_FACETS_FACETS_FALLS_TO: c_int = 5;

/// The column `drains_over` of `facets`: the facets it drains over to, commas between; edge where none lies beyond.
pub const OVS_FINISH_FACETS_FACETS_DRAINS_OVER: c_int = 6;

/// The column `area` of `facets` (ft2 or m2): its area in plan, of the work where that is given.
pub const OVS_FINISH_FACETS_FACETS_AREA: c_int = 7;

/// The result `corners`: their corners.
pub const OVS_FINISH_FACETS_CORNERS: c_int = 1;

/// The column `facet` of `corners`: the facet it is of.
pub const OVS_FINISH_FACETS_CORNERS_FACET: c_int = 0;

/// The column `x` of `corners` (ft or m): distance from the left.
pub const OVS_FINISH_FACETS_CORNERS_X: c_int = 1;

/// The column `y` of `corners` (ft or m): distance from the front.
pub const OVS_FINISH_FACETS_CORNERS_Y: c_int = 2;

/// The column `elevation` of `corners` (ft or m): height of the finish there.
pub const OVS_FINISH_FACETS_CORNERS_ELEVATION: c_int = 3;

/// How many results there are.
pub const OVS_FINISH_FACETS_RESULTS: c_int = 2;

/// The result `finish`: the finish to be built, in whole steps.
pub const OVS_FINISH_SOLVED_FINISH: c_int = 0;

/// The result `concrete` (yd3 or m3): its concrete.
pub const OVS_FINISH_SOLVED_CONCRETE: c_int = 1;

/// The result `ground` (yd3 or m3): what is ground off under it.
pub const OVS_FINISH_SOLVED_GROUND: c_int = 2;

/// The result `cost` (money): concrete and grinding at their prices.
pub const OVS_FINISH_SOLVED_COST: c_int = 3;

/// The result `planned`: the finish before rounding.
pub const OVS_FINISH_SOLVED_PLANNED: c_int = 4;

/// The result `planned_concrete` (yd3 or m3): its concrete.
pub const OVS_FINISH_SOLVED_PLANNED_CONCRETE: c_int = 5;

/// The result `planned_cost` (money): its cost.
pub const OVS_FINISH_SOLVED_PLANNED_COST: c_int = 6;

/// The result `bare`: the finish by the demands alone: no margin, nothing added or rounded.
pub const OVS_FINISH_SOLVED_BARE: c_int = 7;

/// The result `bare_concrete` (yd3 or m3): its concrete.
pub const OVS_FINISH_SOLVED_BARE_CONCRETE: c_int = 8;

/// The result `bare_cost` (money): its cost.
pub const OVS_FINISH_SOLVED_BARE_COST: c_int = 9;

/// The result `bound` (yd3 or m3): no finish planned so costs less than this, in volume of concrete.
pub const OVS_FINISH_SOLVED_BOUND: c_int = 10;

/// The result `gap` (1): how far the planned cost may be above the least, as a share.
pub const OVS_FINISH_SOLVED_GAP: c_int = 11;

/// The result `least_slack` (in or mm): how far the demand that is kept most narrowly is from being broken; less
/// than none by rounding only.
pub const OVS_FINISH_SOLVED_LEAST_SLACK: c_int = 12;

/// The result `rows`: how many rows were looked at for that.
pub const OVS_FINISH_SOLVED_ROWS: c_int = 13;

/// The result `round` (in or mm): the step of heights that could be kept; none where nothing is rounded.
pub const OVS_FINISH_SOLVED_ROUND: c_int = 14;

/// The result `round_fall` (in/ft or %): the step of falls that could be kept.
pub const OVS_FINISH_SOLVED_ROUND_FALL: c_int = 15;

/// The result `kept`: how each demand stands, and what it costs.
pub const OVS_FINISH_SOLVED_KEPT: c_int = 16;

/// The column `name` of `kept`: its name.
pub const OVS_FINISH_SOLVED_KEPT_NAME: c_int = 0;

/// The column `counted_in` of `kept`: what it is counted in, and its prices by: 1/4 in, or 0.1 % of fall.
pub const OVS_FINISH_SOLVED_KEPT_COUNTED_IN: c_int = 1;

/// The column `added` of `kept`: whether it was added to set the floor out.
pub const OVS_FINISH_SOLVED_KEPT_ADDED: c_int = 2;

/// The column `binds` of `kept`: whether it stands at its limit in the planned finish.
pub const OVS_FINISH_SOLVED_KEPT_BINDS: c_int = 3;

/// The column `slack` of `kept` (in or mm): how far the planned finish is from its limit.
pub const OVS_FINISH_SOLVED_KEPT_SLACK: c_int = 4;

/// The column `slack_fall` of `kept` (in/ft or %): the same for a fall.
pub const OVS_FINISH_SOLVED_KEPT_SLACK_FALL: c_int = 5;

/// The column `slack_built` of `kept` (in or mm): how far the built finish is from it.
pub const OVS_FINISH_SOLVED_KEPT_SLACK_BUILT: c_int = 6;

/// The column `slack_built_fall` of `kept` (in/ft or %): the same for a fall.
pub const OVS_FINISH_SOLVED_KEPT_SLACK_BUILT_FALL: c_int = 7;

/// The column `x` of `kept` (ft or m): where it binds, from the left.
pub const OVS_FINISH_SOLVED_KEPT_X: c_int = 8;

/// The column `y` of `kept` (ft or m): from the front.
pub const OVS_FINISH_SOLVED_KEPT_Y: c_int = 9;

/// The column `shot` of `kept`: the shot there.
pub const OVS_FINISH_SOLVED_KEPT_SHOT: c_int = 10;

/// The column `tighter` of `kept` (yd3 or m3): concrete that tightening it by one step takes more; none where it
/// cannot be tightened.
pub const OVS_FINISH_SOLVED_KEPT_TIGHTER: c_int = 11;

/// The column `tighter_cost` of `kept` (yd3 or m3): the same with grinding at its price, in volume of concrete.
pub const OVS_FINISH_SOLVED_KEPT_TIGHTER_COST: c_int = 12;

/// The column `tighter_holds` of `kept` (in or mm): how far that holds; none for ever.
pub const OVS_FINISH_SOLVED_KEPT_TIGHTER_HOLDS: c_int = 13;

/// The column `tighter_holds_fall` of `kept` (in/ft or %): the same for a fall.
pub const OVS_FINISH_SOLVED_KEPT_TIGHTER_HOLDS_FALL: c_int = 14;

/// The column `looser` of `kept` (yd3 or m3): concrete that loosening it by one step takes more: less than none is
/// saved.
pub const OVS_FINISH_SOLVED_KEPT_LOOSER: c_int = 15;

/// The column `looser_cost` of `kept` (yd3 or m3): the same with grinding at its price, in volume of concrete.
pub const OVS_FINISH_SOLVED_KEPT_LOOSER_COST: c_int = 16;

/// The column `looser_holds` of `kept` (in or mm): how far that holds; none for ever.
pub const OVS_FINISH_SOLVED_KEPT_LOOSER_HOLDS: c_int = 17;

/// The column `looser_holds_fall` of `kept` (in/ft or %): the same for a fall.
pub const OVS_FINISH_SOLVED_KEPT_LOOSER_HOLDS_FALL: c_int = 18;

/// The column `said` of `kept`: the price in words.
pub const OVS_FINISH_SOLVED_KEPT_SAID: c_int = 19;

/// How many results there are.
pub const OVS_FINISH_SOLVED_RESULTS: c_int = 17;

/// The word `least_thickness`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_LEAST_THICKNESS: c_int = 0;

/// The word `greatest_thickness`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_GREATEST_THICKNESS: c_int = 1;

/// The word `least_fall`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_LEAST_FALL: c_int = 2;

/// The word `greatest_fall`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_GREATEST_FALL: c_int = 3;

/// The word `steepest`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_STEEPEST: c_int = 4;

/// The word `cross_fall`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_CROSS_FALL: c_int = 5;

/// The word `level`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_LEVEL: c_int = 6;

/// The word `at_most`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_AT_MOST: c_int = 7;

/// The word `at_least`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_AT_LEAST: c_int = 8;

/// The word `exactly`.
pub const OVS_FINISH_SOLVED_DEMANDS_KIND_EXACTLY: c_int = 9;

/// The word `no`.
pub const OVS_FINISH_SOLVED_DEMANDS_FIRM_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SOLVED_DEMANDS_FIRM_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_SOLVED_EDGES_BIND_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SOLVED_EDGES_BIND_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_SOLVED_SET_OUT_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SOLVED_SET_OUT_YES: c_int = 1;

/// The word `length`.
pub const OVS_FINISH_SOLVED_KEPT_COUNTED_IN_LENGTH: c_int = 0;

/// The word `fall`.
pub const OVS_FINISH_SOLVED_KEPT_COUNTED_IN_FALL: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_SOLVED_KEPT_ADDED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SOLVED_KEPT_ADDED_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_SOLVED_KEPT_BINDS_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SOLVED_KEPT_BINDS_YES: c_int = 1;

/// The result `kept`: whether all can be kept.
pub const OVS_FINISH_CONFLICTS_KEPT: c_int = 0;

/// The result `complete`: whether these are all the sets; at most ten are told.
pub const OVS_FINISH_CONFLICTS_COMPLETE: c_int = 1;

/// The result `sets`: the sets.
pub const OVS_FINISH_CONFLICTS_SETS: c_int = 2;

/// The column `set` of `sets`: the number of the set.
pub const OVS_FINISH_CONFLICTS_SETS_SET: c_int = 0;

/// The column `demand` of `sets`: its name.
pub const OVS_FINISH_CONFLICTS_SETS_DEMAND: c_int = 1;

/// The column `by` of `sets` (in or mm): by how much it must give way, alone in its set; none where that does not
/// help.
pub const OVS_FINISH_CONFLICTS_SETS_BY: c_int = 2;

/// The column `by_fall` of `sets` (in/ft or %): the same for a fall.
pub const OVS_FINISH_CONFLICTS_SETS_BY_FALL: c_int = 3;

/// The column `said` of `sets`: the same in words.
pub const OVS_FINISH_CONFLICTS_SETS_SAID: c_int = 4;

/// The result `alone`: what mends everything alone.
pub const OVS_FINISH_CONFLICTS_ALONE: c_int = 3;

/// The column `demand` of `alone`: its name.
pub const OVS_FINISH_CONFLICTS_ALONE_DEMAND: c_int = 0;

/// The column `by` of `alone` (in or mm): by how much it must give way, alone in its set; none where that does not
/// help.
pub const OVS_FINISH_CONFLICTS_ALONE_BY: c_int = 1;

/// The column `by_fall` of `alone` (in/ft or %): the same for a fall.
pub const OVS_FINISH_CONFLICTS_ALONE_BY_FALL: c_int = 2;

/// The column `said` of `alone`: the same in words.
pub const OVS_FINISH_CONFLICTS_ALONE_SAID: c_int = 3;

/// The result `together`: what mends everything with the least weighted sum.
pub const OVS_FINISH_CONFLICTS_TOGETHER: c_int = 4;

/// The column `demand` of `together`: its name.
pub const OVS_FINISH_CONFLICTS_TOGETHER_DEMAND: c_int = 0;

/// The column `by` of `together` (in or mm): by how much it must give way, alone in its set; none where that does
/// not help.
pub const OVS_FINISH_CONFLICTS_TOGETHER_BY: c_int = 1;

/// The column `by_fall` of `together` (in/ft or %): the same for a fall.
pub const OVS_FINISH_CONFLICTS_TOGETHER_BY_FALL: c_int = 2;

/// The column `said` of `together`: the same in words.
pub const OVS_FINISH_CONFLICTS_TOGETHER_SAID: c_int = 3;

/// The result `said`: all of it in sentences.
pub const OVS_FINISH_CONFLICTS_SAID: c_int = 5;

/// How many results there are.
pub const OVS_FINISH_CONFLICTS_RESULTS: c_int = 6;

/// The word `least_thickness`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEAST_THICKNESS: c_int = 0;

/// The word `greatest_thickness`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_GREATEST_THICKNESS: c_int = 1;

/// The word `least_fall`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEAST_FALL: c_int = 2;

/// The word `greatest_fall`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_GREATEST_FALL: c_int = 3;

/// The word `steepest`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_STEEPEST: c_int = 4;

/// The word `cross_fall`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_CROSS_FALL: c_int = 5;

/// The word `level`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEVEL: c_int = 6;

/// The word `at_most`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_AT_MOST: c_int = 7;

/// The word `at_least`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_AT_LEAST: c_int = 8;

/// The word `exactly`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_KIND_EXACTLY: c_int = 9;

/// The word `no`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_FIRM_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_CONFLICTS_DEMANDS_FIRM_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_CONFLICTS_EDGES_BIND_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_CONFLICTS_EDGES_BIND_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_CONFLICTS_KEPT_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_CONFLICTS_KEPT_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_CONFLICTS_COMPLETE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_CONFLICTS_COMPLETE_YES: c_int = 1;

/// The result `curve`: the concrete for each value.
pub const OVS_FINISH_SWEEP_CURVE: c_int = 0;

/// The column `length` of `curve` (in or mm): the thickness or tolerance.
pub const OVS_FINISH_SWEEP_CURVE_LENGTH: c_int = 0;

/// The column `fall` of `curve` (in/ft or %): the fall.
pub const OVS_FINISH_SWEEP_CURVE_FALL: c_int = 1;

/// The column `elevation` of `curve` (ft or m): the height.
pub const OVS_FINISH_SWEEP_CURVE_ELEVATION: c_int = 2;

/// The column `concrete` of `curve` (yd3 or m3): the least concrete; none where the demands cannot be kept.
pub const OVS_FINISH_SWEEP_CURVE_CONCRETE: c_int = 3;

/// How many results there are.
pub const OVS_FINISH_SWEEP_RESULTS: c_int = 1;

/// The word `least_thickness`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_LEAST_THICKNESS: c_int = 0;

/// The word `greatest_thickness`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_GREATEST_THICKNESS: c_int = 1;

/// The word `least_fall`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_LEAST_FALL: c_int = 2;

/// The word `greatest_fall`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_GREATEST_FALL: c_int = 3;

/// The word `steepest`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_STEEPEST: c_int = 4;

/// The word `cross_fall`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_CROSS_FALL: c_int = 5;

/// The word `level`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_LEVEL: c_int = 6;

/// The word `at_most`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_AT_MOST: c_int = 7;

/// The word `at_least`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_AT_LEAST: c_int = 8;

/// The word `exactly`.
pub const OVS_FINISH_SWEEP_DEMANDS_KIND_EXACTLY: c_int = 9;

/// The word `no`.
pub const OVS_FINISH_SWEEP_DEMANDS_FIRM_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SWEEP_DEMANDS_FIRM_YES: c_int = 1;

/// The word `no`.
pub const OVS_FINISH_SWEEP_EDGES_BIND_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_SWEEP_EDGES_BIND_YES: c_int = 1;

/// The result `area` (ft2 or m2): plan area.
pub const OVS_THICKNESS_AREA: c_int = 0;

/// The result `net` (yd3 or m3): fill less high spots.
pub const OVS_THICKNESS_NET: c_int = 1;

/// The result `fill` (yd3 or m3): volume where the finish is above the old slab.
pub const OVS_THICKNESS_FILL: c_int = 2;

/// The result `high` (yd3 or m3): volume of old slab above the finish.
pub const OVS_THICKNESS_HIGH: c_int = 3;

/// The result `mean` (in or mm): net volume over area.
pub const OVS_THICKNESS_MEAN: c_int = 4;

/// The result `least` (in or mm): least thickness.
pub const OVS_THICKNESS_LEAST: c_int = 5;

/// The result `least_x` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_LEAST_X: c_int = 6;

/// The result `least_y` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_LEAST_Y: c_int = 7;

/// The result `least_measured` (in or mm): least thickness between the shots.
pub const OVS_THICKNESS_LEAST_MEASURED: c_int = 8;

/// The result `greatest` (in or mm): greatest thickness.
pub const OVS_THICKNESS_GREATEST: c_int = 9;

/// The result `greatest_x` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_GREATEST_X: c_int = 10;

/// The result `greatest_y` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_GREATEST_Y: c_int = 11;

/// The result `thinner` (ft2 or m2): area thinner than the depth asked about.
pub const OVS_THICKNESS_THINNER: c_int = 12;

/// The result `least_facet`: the facet where it is thinnest.
pub const OVS_THICKNESS_LEAST_FACET: c_int = 13;

/// The result `greatest_facet`: the facet where it is thickest.
pub const OVS_THICKNESS_GREATEST_FACET: c_int = 14;

/// How many results there are.
pub const OVS_THICKNESS_RESULTS: c_int = 15;

/// The result `governing`: the shots that fix the grade.
pub const OVS_SECOND_LOOK_GOVERNING: c_int = 0;

/// The column `shot` of `governing`: its name.
pub const OVS_SECOND_LOOK_GOVERNING_SHOT: c_int = 0;

/// The column `x` of `governing` (ft or m): distance from the left.
pub const OVS_SECOND_LOOK_GOVERNING_X: c_int = 1;

/// The column `y` of `governing` (ft or m): distance from the front.
pub const OVS_SECOND_LOOK_GOVERNING_Y: c_int = 2;

/// The column `thickness` of `governing` (in or mm): the thickness over it.
pub const OVS_SECOND_LOOK_GOVERNING_THICKNESS: c_int = 3;

/// The column `drop_without` of `governing` (in or mm): how far the finish could drop without this shot.
pub const OVS_SECOND_LOOK_GOVERNING_DROP_WITHOUT: c_int = 4;

/// The column `saved` of `governing` (yd3 or m3): the concrete that would save.
pub const OVS_SECOND_LOOK_GOVERNING_SAVED: c_int = 5;

/// The column `said` of `governing`: why to look again.
pub const OVS_SECOND_LOOK_GOVERNING_SAID: c_int = 6;

/// The result `drop_without_all` (in or mm): how far the finish could drop without all of them.
pub const OVS_SECOND_LOOK_DROP_WITHOUT_ALL: c_int = 1;

/// How many results there are.
pub const OVS_SECOND_LOOK_RESULTS: c_int = 2;

/// The result `count`: how many ponds the finish has.
pub const OVS_FINISH_STANDING_WATER_COUNT: c_int = 0;

/// The result `area` (ft2 or m2): area of the finish under water.
pub const OVS_FINISH_STANDING_WATER_AREA: c_int = 1;

/// The result `volume` (ft3 or m3): water on the finish.
pub const OVS_FINISH_STANDING_WATER_VOLUME: c_int = 2;

/// The result `depth` (in or mm): greatest depth on the finish; none without a pond.
pub const OVS_FINISH_STANDING_WATER_DEPTH: c_int = 3;

/// The result `left_out`: how many ponds of the finish were shallower.
pub const OVS_FINISH_STANDING_WATER_LEFT_OUT: c_int = 4;

/// The result `cured`: how many ponds of the old slab are cured.
pub const OVS_FINISH_STANDING_WATER_CURED: c_int = 5;

/// The result `left`: how many ponds of the old slab are not.
pub const OVS_FINISH_STANDING_WATER_LEFT: c_int = 6;

/// The result `ponds`: the ponds of the finish.
pub const OVS_FINISH_STANDING_WATER_PONDS: c_int = 7;

/// The column `level` of `ponds` (ft or m): level of the water.
pub const OVS_FINISH_STANDING_WATER_PONDS_LEVEL: c_int = 0;

/// The column `area` of `ponds` (ft2 or m2): area under water.
pub const OVS_FINISH_STANDING_WATER_PONDS_AREA: c_int = 1;

/// The column `volume` of `ponds` (ft3 or m3): water in it.
pub const OVS_FINISH_STANDING_WATER_PONDS_VOLUME: c_int = 2;

/// The column `depth` of `ponds` (in or mm): greatest depth.
pub const OVS_FINISH_STANDING_WATER_PONDS_DEPTH: c_int = 3;

/// The column `deepest_x` of `ponds` (ft or m): where it is deepest, from the left.
pub const OVS_FINISH_STANDING_WATER_PONDS_DEEPEST_X: c_int = 4;

/// The column `deepest_y` of `ponds` (ft or m): where it is deepest, from the front.
pub const OVS_FINISH_STANDING_WATER_PONDS_DEEPEST_Y: c_int = 5;

/// The column `spill_x` of `ponds` (ft or m): where the water spills, from the left.
pub const OVS_FINISH_STANDING_WATER_PONDS_SPILL_X: c_int = 6;

/// The column `spill_y` of `ponds` (ft or m): where the water spills, from the front.
pub const OVS_FINISH_STANDING_WATER_PONDS_SPILL_Y: c_int = 7;

/// The column `outlet` of `ponds`: edge or drain that takes the water there; none where it runs on over a saddle.
pub const OVS_FINISH_STANDING_WATER_PONDS_OUTLET: c_int = 8;

/// The column `new` of `ponds`: whether the old slab was dry there.
pub const OVS_FINISH_STANDING_WATER_PONDS_NEW: c_int = 9;

/// The result `old_ponds`: the ponds of the old slab.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS: c_int = 8;

/// The column `level` of `old_ponds` (ft or m): level of the water.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_LEVEL: c_int = 0;

/// The column `area` of `old_ponds` (ft2 or m2): area under water.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_AREA: c_int = 1;

/// The column `volume` of `old_ponds` (ft3 or m3): water in it.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_VOLUME: c_int = 2;

/// The column `depth` of `old_ponds` (in or mm): greatest depth.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_DEPTH: c_int = 3;

/// The column `deepest_x` of `old_ponds` (ft or m): where it is deepest, from the left.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_DEEPEST_X: c_int = 4;

/// The column `deepest_y` of `old_ponds` (ft or m): where it is deepest, from the front.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_DEEPEST_Y: c_int = 5;

/// The column `spill_x` of `old_ponds` (ft or m): where the water spills, from the left.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_SPILL_X: c_int = 6;

/// The column `spill_y` of `old_ponds` (ft or m): where the water spills, from the front.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_SPILL_Y: c_int = 7;

/// The column `outlet` of `old_ponds`: edge or drain that takes the water there; none where it runs on over a
/// saddle.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_OUTLET: c_int = 8;

/// The column `fate` of `old_ponds`: whether the finish cures it.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE: c_int = 9;

/// The column `still` of `old_ponds` (ft2 or m2): area of it that is still under water.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_STILL: c_int = 10;

/// How many results there are.
pub const OVS_FINISH_STANDING_WATER_RESULTS: c_int = 9;

/// The word `open`.
pub const OVS_FINISH_STANDING_WATER_EDGES_STATE_OPEN: c_int = 0;

/// The word `walled`.
pub const OVS_FINISH_STANDING_WATER_EDGES_STATE_WALLED: c_int = 1;

/// The word `drained`.
pub const OVS_FINISH_STANDING_WATER_EDGES_STATE_DRAINED: c_int = 2;

/// The word `no`.
pub const OVS_FINISH_STANDING_WATER_PONDS_NEW_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FINISH_STANDING_WATER_PONDS_NEW_YES: c_int = 1;

/// The word `cured`.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE_CURED: c_int = 0;

/// The word `left`.
pub const OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE_LEFT: c_int = 1;

/// The result `survey`: the old slab after it.
pub const OVS_GRIND_HIGH_SPOTS_SURVEY: c_int = 0;

/// The result `area` (ft2 or m2): area ground or filled.
pub const OVS_GRIND_HIGH_SPOTS_AREA: c_int = 1;

/// The result `volume` (ft3 or m3): volume taken off or filled.
pub const OVS_GRIND_HIGH_SPOTS_VOLUME: c_int = 2;

/// The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
pub const OVS_GRIND_HIGH_SPOTS_DEEPEST: c_int = 3;

/// The result `deepest_x` (ft or m): where it is, from the left.
pub const OVS_GRIND_HIGH_SPOTS_DEEPEST_X: c_int = 4;

/// The result `deepest_y` (ft or m): where it is, from the front.
pub const OVS_GRIND_HIGH_SPOTS_DEEPEST_Y: c_int = 5;

/// How many results there are.
pub const OVS_GRIND_HIGH_SPOTS_RESULTS: c_int = 6;

/// The result `survey`: the old slab after it.
pub const OVS_FILL_LOW_SPOTS_SURVEY: c_int = 0;

/// The result `area` (ft2 or m2): area ground or filled.
pub const OVS_FILL_LOW_SPOTS_AREA: c_int = 1;

/// The result `volume` (ft3 or m3): volume taken off or filled.
pub const OVS_FILL_LOW_SPOTS_VOLUME: c_int = 2;

/// The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
pub const OVS_FILL_LOW_SPOTS_DEEPEST: c_int = 3;

/// The result `deepest_x` (ft or m): where it is, from the left.
pub const OVS_FILL_LOW_SPOTS_DEEPEST_X: c_int = 4;

/// The result `deepest_y` (ft or m): where it is, from the front.
pub const OVS_FILL_LOW_SPOTS_DEEPEST_Y: c_int = 5;

/// How many results there are.
pub const OVS_FILL_LOW_SPOTS_RESULTS: c_int = 6;

/// The result `survey`: the old slab after it.
pub const OVS_FILL_PONDS_SURVEY: c_int = 0;

/// The result `area` (ft2 or m2): area ground or filled.
pub const OVS_FILL_PONDS_AREA: c_int = 1;

/// The result `volume` (ft3 or m3): volume taken off or filled.
pub const OVS_FILL_PONDS_VOLUME: c_int = 2;

/// The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
pub const OVS_FILL_PONDS_DEEPEST: c_int = 3;

/// The result `deepest_x` (ft or m): where it is, from the left.
pub const OVS_FILL_PONDS_DEEPEST_X: c_int = 4;

/// The result `deepest_y` (ft or m): where it is, from the front.
pub const OVS_FILL_PONDS_DEEPEST_Y: c_int = 5;

/// How many results there are.
pub const OVS_FILL_PONDS_RESULTS: c_int = 6;

/// The word `open`.
pub const OVS_FILL_PONDS_EDGES_STATE_OPEN: c_int = 0;

/// The word `walled`.
pub const OVS_FILL_PONDS_EDGES_STATE_WALLED: c_int = 1;

/// The word `drained`.
pub const OVS_FILL_PONDS_EDGES_STATE_DRAINED: c_int = 2;

/// The result `area` (ft2 or m2): area of all parts.
pub const OVS_THICKNESS_AREAS_AREA: c_int = 0;

/// The result `volume` (yd3 or m3): missing to the depth, or over it, in all parts.
pub const OVS_THICKNESS_AREAS_VOLUME: c_int = 1;

/// The result `parts`: the connected parts.
pub const OVS_THICKNESS_AREAS_PARTS: c_int = 2;

/// The column `part` of `parts`: its number.
pub const OVS_THICKNESS_AREAS_PARTS_PART: c_int = 0;

/// The column `area` of `parts` (ft2 or m2): its area.
pub const OVS_THICKNESS_AREAS_PARTS_AREA: c_int = 1;

/// The column `volume` of `parts` (yd3 or m3): missing to the depth, or over it.
pub const OVS_THICKNESS_AREAS_PARTS_VOLUME: c_int = 2;

/// The column `extreme` of `parts` (in or mm): its least thickness, or its greatest where thicker.
pub const OVS_THICKNESS_AREAS_PARTS_EXTREME: c_int = 3;

/// The column `extreme_x` of `parts` (ft or m): where that is, from the left.
pub const OVS_THICKNESS_AREAS_PARTS_EXTREME_X: c_int = 4;

/// The column `extreme_y` of `parts` (ft or m): where that is, from the front.
pub const OVS_THICKNESS_AREAS_PARTS_EXTREME_Y: c_int = 5;

/// The result `corners`: the corners of their polygons.
pub const OVS_THICKNESS_AREAS_CORNERS: c_int = 3;

/// The column `part` of `corners`: the number of the part.
pub const OVS_THICKNESS_AREAS_CORNERS_PART: c_int = 0;

/// The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
pub const OVS_THICKNESS_AREAS_CORNERS_RING: c_int = 1;

/// The column `x` of `corners` (ft or m): from the left.
pub const OVS_THICKNESS_AREAS_CORNERS_X: c_int = 2;

/// The column `y` of `corners` (ft or m): from the front.
pub const OVS_THICKNESS_AREAS_CORNERS_Y: c_int = 3;

/// How many results there are.
pub const OVS_THICKNESS_AREAS_RESULTS: c_int = 4;

/// The word `thinner`.
pub const OVS_THICKNESS_AREAS_SIDE_THINNER: c_int = 0;

/// The word `thicker`.
pub const OVS_THICKNESS_AREAS_SIDE_THICKER: c_int = 1;

/// The result `lines`: the lines.
pub const OVS_THICKNESS_CONTOURS_LINES: c_int = 0;

/// The column `line` of `lines`: its number.
pub const OVS_THICKNESS_CONTOURS_LINES_LINE: c_int = 0;

/// The column `level` of `lines` (in or mm): its level.
pub const OVS_THICKNESS_CONTOURS_LINES_LEVEL: c_int = 1;

/// The column `form` of `lines`: whether it closes.
pub const OVS_THICKNESS_CONTOURS_LINES_FORM: c_int = 2;

/// The column `length` of `lines` (ft or m): its length.
pub const OVS_THICKNESS_CONTOURS_LINES_LENGTH: c_int = 3;

/// The result `points`: their places.
pub const OVS_THICKNESS_CONTOURS_POINTS: c_int = 1;

/// The column `line` of `points`: the number of the line.
pub const OVS_THICKNESS_CONTOURS_POINTS_LINE: c_int = 0;

/// The column `x` of `points` (ft or m): from the left.
pub const OVS_THICKNESS_CONTOURS_POINTS_X: c_int = 1;

/// The column `y` of `points` (ft or m): from the front.
pub const OVS_THICKNESS_CONTOURS_POINTS_Y: c_int = 2;

/// How many results there are.
pub const OVS_THICKNESS_CONTOURS_RESULTS: c_int = 2;

/// The word `open`.
pub const OVS_THICKNESS_CONTOURS_LINES_FORM_OPEN: c_int = 0;

/// The word `closed`.
pub const OVS_THICKNESS_CONTOURS_LINES_FORM_CLOSED: c_int = 1;

/// The result `lines`: the lines.
pub const OVS_SURVEY_CONTOURS_LINES: c_int = 0;

/// The column `line` of `lines`: its number.
pub const OVS_SURVEY_CONTOURS_LINES_LINE: c_int = 0;

/// The column `level` of `lines` (ft or m): its level.
pub const OVS_SURVEY_CONTOURS_LINES_LEVEL: c_int = 1;

/// The column `form` of `lines`: whether it closes.
pub const OVS_SURVEY_CONTOURS_LINES_FORM: c_int = 2;

/// The column `length` of `lines` (ft or m): its length.
pub const OVS_SURVEY_CONTOURS_LINES_LENGTH: c_int = 3;

/// The result `points`: their places.
pub const OVS_SURVEY_CONTOURS_POINTS: c_int = 1;

/// The column `line` of `points`: the number of the line.
pub const OVS_SURVEY_CONTOURS_POINTS_LINE: c_int = 0;

/// The column `x` of `points` (ft or m): from the left.
pub const OVS_SURVEY_CONTOURS_POINTS_X: c_int = 1;

/// The column `y` of `points` (ft or m): from the front.
pub const OVS_SURVEY_CONTOURS_POINTS_Y: c_int = 2;

/// How many results there are.
pub const OVS_SURVEY_CONTOURS_RESULTS: c_int = 2;

/// The word `open`.
pub const OVS_SURVEY_CONTOURS_LINES_FORM_OPEN: c_int = 0;

/// The word `closed`.
pub const OVS_SURVEY_CONTOURS_LINES_FORM_CLOSED: c_int = 1;

/// The result `lines`: the lines.
pub const OVS_FINISH_CONTOURS_LINES: c_int = 0;

/// The column `line` of `lines`: its number.
pub const OVS_FINISH_CONTOURS_LINES_LINE: c_int = 0;

/// The column `level` of `lines` (ft or m): its level.
pub const OVS_FINISH_CONTOURS_LINES_LEVEL: c_int = 1;

/// The column `form` of `lines`: whether it closes.
pub const OVS_FINISH_CONTOURS_LINES_FORM: c_int = 2;

/// The column `length` of `lines` (ft or m): its length.
pub const OVS_FINISH_CONTOURS_LINES_LENGTH: c_int = 3;

/// The result `points`: their places.
pub const OVS_FINISH_CONTOURS_POINTS: c_int = 1;

/// The column `line` of `points`: the number of the line.
pub const OVS_FINISH_CONTOURS_POINTS_LINE: c_int = 0;

/// The column `x` of `points` (ft or m): from the left.
pub const OVS_FINISH_CONTOURS_POINTS_X: c_int = 1;

/// The column `y` of `points` (ft or m): from the front.
pub const OVS_FINISH_CONTOURS_POINTS_Y: c_int = 2;

/// How many results there are.
pub const OVS_FINISH_CONTOURS_RESULTS: c_int = 2;

/// The word `open`.
pub const OVS_FINISH_CONTOURS_LINES_FORM_OPEN: c_int = 0;

/// The word `closed`.
pub const OVS_FINISH_CONTOURS_LINES_FORM_CLOSED: c_int = 1;

/// The result `bands`: the bands.
pub const OVS_THICKNESS_BANDS_BANDS: c_int = 0;

/// The column `band` of `bands`: its number.
pub const OVS_THICKNESS_BANDS_BANDS_BAND: c_int = 0;

/// The column `lower` of `bands` (in or mm): its lower level, itself in the band; none below all levels.
pub const OVS_THICKNESS_BANDS_BANDS_LOWER: c_int = 1;

/// The column `upper` of `bands` (in or mm): its upper level, itself in the next band; none above all levels.
pub const OVS_THICKNESS_BANDS_BANDS_UPPER: c_int = 2;

/// The column `area` of `bands` (ft2 or m2): its area.
pub const OVS_THICKNESS_BANDS_BANDS_AREA: c_int = 3;

/// The column `share` of `bands` (%): its share of the whole area.
pub const OVS_THICKNESS_BANDS_BANDS_SHARE: c_int = 4;

/// The column `volume` of `bands` (yd3 or m3): volume over it between old slab and finish, high spots taken off.
pub const OVS_THICKNESS_BANDS_BANDS_VOLUME: c_int = 5;

/// The result `parts`: their connected parts.
pub const OVS_THICKNESS_BANDS_PARTS: c_int = 1;

/// The column `band` of `parts`: the number of the band.
pub const OVS_THICKNESS_BANDS_PARTS_BAND: c_int = 0;

/// The column `part` of `parts`: its number in the band.
pub const OVS_THICKNESS_BANDS_PARTS_PART: c_int = 1;

/// The column `area` of `parts` (ft2 or m2): its area.
pub const OVS_THICKNESS_BANDS_PARTS_AREA: c_int = 2;

/// The column `volume` of `parts` (yd3 or m3): volume over it.
pub const OVS_THICKNESS_BANDS_PARTS_VOLUME: c_int = 3;

/// The result `corners`: the corners of their polygons.
pub const OVS_THICKNESS_BANDS_CORNERS: c_int = 2;

/// The column `band` of `corners`: the number of the band.
pub const OVS_THICKNESS_BANDS_CORNERS_BAND: c_int = 0;

/// The column `part` of `corners`: the number of the part in the band.
pub const OVS_THICKNESS_BANDS_CORNERS_PART: c_int = 1;

/// The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
pub const OVS_THICKNESS_BANDS_CORNERS_RING: c_int = 2;

/// The column `x` of `corners` (ft or m): from the left.
pub const OVS_THICKNESS_BANDS_CORNERS_X: c_int = 3;

/// The column `y` of `corners` (ft or m): from the front.
pub const OVS_THICKNESS_BANDS_CORNERS_Y: c_int = 4;

/// How many results there are.
pub const OVS_THICKNESS_BANDS_RESULTS: c_int = 3;

/// The result `area` (ft2 or m2): the whole area.
pub const OVS_THICKNESS_HISTOGRAM_AREA: c_int = 0;

/// The result `volume` (yd3 or m3): the whole volume, high spots taken off.
pub const OVS_THICKNESS_HISTOGRAM_VOLUME: c_int = 1;

/// The result `bins`: the bins.
pub const OVS_THICKNESS_HISTOGRAM_BINS: c_int = 2;

/// The column `lower` of `bins` (in or mm): its lower edge, itself in the bin; none below all edges.
pub const OVS_THICKNESS_HISTOGRAM_BINS_LOWER: c_int = 0;

/// The column `upper` of `bins` (in or mm): its upper edge, itself in the next bin; none above all edges.
pub const OVS_THICKNESS_HISTOGRAM_BINS_UPPER: c_int = 1;

/// The column `area` of `bins` (ft2 or m2): area as thick.
pub const OVS_THICKNESS_HISTOGRAM_BINS_AREA: c_int = 2;

/// The column `share` of `bins` (%): its share of the whole area.
pub const OVS_THICKNESS_HISTOGRAM_BINS_SHARE: c_int = 3;

/// The column `volume` of `bins` (yd3 or m3): volume over it between old slab and finish, high spots taken off.
pub const OVS_THICKNESS_HISTOGRAM_BINS_VOLUME: c_int = 4;

/// The column `thinner` of `bins` (%): share of the whole area thinner than the upper edge.
pub const OVS_THICKNESS_HISTOGRAM_BINS_THINNER: c_int = 5;

/// The result `quantiles`: the depths of the shares.
pub const OVS_THICKNESS_HISTOGRAM_QUANTILES: c_int = 3;

/// The column `share` of `quantiles` (%): share of the area.
pub const OVS_THICKNESS_HISTOGRAM_QUANTILES_SHARE: c_int = 0;

/// The column `thickness` of `quantiles` (in or mm): so much of the area is thinner than this.
pub const OVS_THICKNESS_HISTOGRAM_QUANTILES_THICKNESS: c_int = 1;

/// How many results there are.
pub const OVS_THICKNESS_HISTOGRAM_RESULTS: c_int = 4;

/// The result `figures`: the figures of each zone.
pub const OVS_THICKNESS_ZONES_FIGURES: c_int = 0;

/// The column `zone` of `figures`: its name.
pub const OVS_THICKNESS_ZONES_FIGURES_ZONE: c_int = 0;

/// The column `area` of `figures` (ft2 or m2): area.
pub const OVS_THICKNESS_ZONES_FIGURES_AREA: c_int = 1;

/// The column `net` of `figures` (yd3 or m3): fill less high spots.
pub const OVS_THICKNESS_ZONES_FIGURES_NET: c_int = 2;

/// The column `fill` of `figures` (yd3 or m3): volume where the finish is above the old slab.
pub const OVS_THICKNESS_ZONES_FIGURES_FILL: c_int = 3;

/// The column `high` of `figures` (yd3 or m3): volume of old slab above the finish.
pub const OVS_THICKNESS_ZONES_FIGURES_HIGH: c_int = 4;

/// The column `mean` of `figures` (in or mm): net volume over area.
pub const OVS_THICKNESS_ZONES_FIGURES_MEAN: c_int = 5;

/// The column `least` of `figures` (in or mm): least thickness.
pub const OVS_THICKNESS_ZONES_FIGURES_LEAST: c_int = 6;

/// The column `least_x` of `figures` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_ZONES_FIGURES_LEAST_X: c_int = 7;

/// The column `least_y` of `figures` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_ZONES_FIGURES_LEAST_Y: c_int = 8;

/// The column `greatest` of `figures` (in or mm): greatest thickness.
pub const OVS_THICKNESS_ZONES_FIGURES_GREATEST: c_int = 9;

/// The column `greatest_x` of `figures` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_ZONES_FIGURES_GREATEST_X: c_int = 10;

/// The column `greatest_y` of `figures` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_ZONES_FIGURES_GREATEST_Y: c_int = 11;

/// The column `thinner` of `figures` (ft2 or m2): area thinner than the depth asked about.
pub const OVS_THICKNESS_ZONES_FIGURES_THINNER: c_int = 12;

/// The column `outside` of `figures` (ft2 or m2): area of the zone outside the work, which does not count.
pub const OVS_THICKNESS_ZONES_FIGURES_OUTSIDE: c_int = 13;

/// The result `rest`: the figures of the work outside all zones.
pub const OVS_THICKNESS_ZONES_REST: c_int = 1;

/// The column `area` of `rest` (ft2 or m2): area.
pub const OVS_THICKNESS_ZONES_REST_AREA: c_int = 0;

/// The column `net` of `rest` (yd3 or m3): fill less high spots.
pub const OVS_THICKNESS_ZONES_REST_NET: c_int = 1;

/// The column `fill` of `rest` (yd3 or m3): volume where the finish is above the old slab.
pub const OVS_THICKNESS_ZONES_REST_FILL: c_int = 2;

/// The column `high` of `rest` (yd3 or m3): volume of old slab above the finish.
pub const OVS_THICKNESS_ZONES_REST_HIGH: c_int = 3;

/// The column `mean` of `rest` (in or mm): net volume over area.
pub const OVS_THICKNESS_ZONES_REST_MEAN: c_int = 4;

/// The column `least` of `rest` (in or mm): least thickness.
pub const OVS_THICKNESS_ZONES_REST_LEAST: c_int = 5;

/// The column `least_x` of `rest` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_ZONES_REST_LEAST_X: c_int = 6;

/// The column `least_y` of `rest` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_ZONES_REST_LEAST_Y: c_int = 7;

/// The column `greatest` of `rest` (in or mm): greatest thickness.
pub const OVS_THICKNESS_ZONES_REST_GREATEST: c_int = 8;

/// The column `greatest_x` of `rest` (ft or m): where it is, from the left.
pub const OVS_THICKNESS_ZONES_REST_GREATEST_X: c_int = 9;

/// The column `greatest_y` of `rest` (ft or m): where it is, from the front.
pub const OVS_THICKNESS_ZONES_REST_GREATEST_Y: c_int = 10;

/// The column `thinner` of `rest` (ft2 or m2): area thinner than the depth asked about.
pub const OVS_THICKNESS_ZONES_REST_THINNER: c_int = 11;

/// How many results there are.
pub const OVS_THICKNESS_ZONES_RESULTS: c_int = 2;

/// The result `area` (ft2 or m2): area of all that is thinner.
pub const OVS_THIN_ZONES_AREA: c_int = 0;

/// The result `lacking` (yd3 or m3): volume all of it lacks to the minimum.
pub const OVS_THIN_ZONES_LACKING: c_int = 1;

/// The result `left_out` (ft2 or m2): area of zones under a square millimetre, not listed.
pub const OVS_THIN_ZONES_LEFT_OUT: c_int = 2;

/// The result `raise_all` (in or mm): rise of the whole finish that leaves no zone; none where there is none.
pub const OVS_THIN_ZONES_RAISE_ALL: c_int = 3;

/// The result `raise_all_concrete` (yd3 or m3): concrete it takes.
pub const OVS_THIN_ZONES_RAISE_ALL_CONCRETE: c_int = 4;

/// The result `raise_all_cost` (money): what it costs.
pub const OVS_THIN_ZONES_RAISE_ALL_COST: c_int = 5;

/// The result `zone_by_zone_cost` (money): all zones, each in the cheapest way without raising.
pub const OVS_THIN_ZONES_ZONE_BY_ZONE_COST: c_int = 6;

/// The result `said`: all of it in a few sentences.
pub const OVS_THIN_ZONES_SAID: c_int = 7;

/// The result `zones`: the zones.
pub const OVS_THIN_ZONES_ZONES: c_int = 8;

/// The column `zone` of `zones`: its number.
pub const OVS_THIN_ZONES_ZONES_ZONE: c_int = 0;

/// The column `area` of `zones` (ft2 or m2): its area.
pub const OVS_THIN_ZONES_ZONES_AREA: c_int = 1;

/// The column `lacking` of `zones` (yd3 or m3): volume it lacks to the minimum.
pub const OVS_THIN_ZONES_ZONES_LACKING: c_int = 2;

/// The column `thinnest` of `zones` (in or mm): its least thickness.
pub const OVS_THIN_ZONES_ZONES_THINNEST: c_int = 3;

/// The column `thinnest_x` of `zones` (ft or m): where that is, from the left.
pub const OVS_THIN_ZONES_ZONES_THINNEST_X: c_int = 4;

/// The column `thinnest_y` of `zones` (ft or m): where that is, from the front.
pub const OVS_THIN_ZONES_ZONES_THINNEST_Y: c_int = 5;

/// The column `thinnest_shot` of `zones`: the shot there.
pub const OVS_THIN_ZONES_ZONES_THINNEST_SHOT: c_int = 6;

/// The column `deficit` of `zones` (in or mm): what its thinnest place lacks to the minimum.
pub const OVS_THIN_ZONES_ZONES_DEFICIT: c_int = 7;

/// The column `deficit_measured` of `zones` (in or mm): the same between the shots; none where all of it lies
/// beyond them.
pub const OVS_THIN_ZONES_ZONES_DEFICIT_MEASURED: c_int = 8;

/// The column `beyond` of `zones` (ft2 or m2): area of it beyond the shots, where the old slab is extended.
pub const OVS_THIN_ZONES_ZONES_BEYOND: c_int = 9;

/// The column `x_from` of `zones` (ft or m): its box: from here.
pub const OVS_THIN_ZONES_ZONES_X_FROM: c_int = 10;

/// The column `x_to` of `zones` (ft or m): to here from the left.
pub const OVS_THIN_ZONES_ZONES_X_TO: c_int = 11;

/// The column `y_from` of `zones` (ft or m): from here.
pub const OVS_THIN_ZONES_ZONES_Y_FROM: c_int = 12;

/// The column `y_to` of `zones` (ft or m): to here from the front.
pub const OVS_THIN_ZONES_ZONES_Y_TO: c_int = 13;

/// The column `boxed` of `zones` (ft2 or m2): area of the work within the box.
pub const OVS_THIN_ZONES_ZONES_BOXED: c_int = 14;

/// The column `joint` of `zones` (ft or m): length of the sides of the box inside the work.
pub const OVS_THIN_ZONES_ZONES_JOINT: c_int = 15;

/// The column `reaches_edge` of `zones`: whether the edge of the work bounds a part of the box.
pub const OVS_THIN_ZONES_ZONES_REACHES_EDGE: c_int = 16;

/// The column `cheapest` of `zones`: the cheapest choice that is enough, among those with a price.
pub const OVS_THIN_ZONES_ZONES_CHEAPEST: c_int = 17;

/// The result `choices`: the choices about each.
pub const OVS_THIN_ZONES_CHOICES: c_int = 9;

/// The column `zone` of `choices`: the number of the zone.
pub const OVS_THIN_ZONES_CHOICES_ZONE: c_int = 0;

/// The column `choice` of `choices`: what is done.
pub const OVS_THIN_ZONES_CHOICES_CHOICE: c_int = 1;

/// The column `depth` of `choices` (in or mm): rise, thinnest bonded, deepest cut, or thickness of the new
/// concrete.
pub const OVS_THIN_ZONES_CHOICES_DEPTH: c_int = 2;

/// The column `area` of `choices` (ft2 or m2): area worked on.
pub const OVS_THIN_ZONES_CHOICES_AREA: c_int = 3;

/// The column `concrete` of `choices` (yd3 or m3): concrete over what the finish takes as it is.
pub const OVS_THIN_ZONES_CHOICES_CONCRETE: c_int = 4;

/// The column `joint` of `choices` (ft or m): full-depth joint inside the work.
pub const OVS_THIN_ZONES_CHOICES_JOINT: c_int = 5;

/// The column `cost` of `choices` (money): what it costs.
pub const OVS_THIN_ZONES_CHOICES_COST: c_int = 6;

/// The column `verdict` of `choices`: whether it cures the zone.
pub const OVS_THIN_ZONES_CHOICES_VERDICT: c_int = 7;

/// The column `short_by` of `choices` (in or mm): what is still lacking, where it is not enough.
pub const OVS_THIN_ZONES_CHOICES_SHORT_BY: c_int = 8;

/// The column `said` of `choices`: a sentence for the foreman.
pub const OVS_THIN_ZONES_CHOICES_SAID: c_int = 9;

/// The result `corners`: the corners of their polygons.
pub const OVS_THIN_ZONES_CORNERS: c_int = 10;

/// The column `zone` of `corners`: the number of the zone.
pub const OVS_THIN_ZONES_CORNERS_ZONE: c_int = 0;

/// The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
pub const OVS_THIN_ZONES_CORNERS_RING: c_int = 1;

/// The column `x` of `corners` (ft or m): from the left.
pub const OVS_THIN_ZONES_CORNERS_X: c_int = 2;

/// The column `y` of `corners` (ft or m): from the front.
pub const OVS_THIN_ZONES_CORNERS_Y: c_int = 3;

/// How many results there are.
pub const OVS_THIN_ZONES_RESULTS: c_int = 11;

/// The word `no`.
pub const OVS_THIN_ZONES_ZONES_REACHES_EDGE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_THIN_ZONES_ZONES_REACHES_EDGE_YES: c_int = 1;

/// The word `raise`.
pub const OVS_THIN_ZONES_ZONES_CHEAPEST_RAISE: c_int = 0;

/// The word `bond`.
pub const OVS_THIN_ZONES_ZONES_CHEAPEST_BOND: c_int = 1;

/// The word `grind`.
pub const OVS_THIN_ZONES_ZONES_CHEAPEST_GRIND: c_int = 2;

/// The word `break out`.
pub const OVS_THIN_ZONES_ZONES_CHEAPEST_BREAK_OUT: c_int = 3;

/// The word `raise`.
pub const OVS_THIN_ZONES_CHOICES_CHOICE_RAISE: c_int = 0;

/// The word `bond`.
pub const OVS_THIN_ZONES_CHOICES_CHOICE_BOND: c_int = 1;

/// The word `grind`.
pub const OVS_THIN_ZONES_CHOICES_CHOICE_GRIND: c_int = 2;

/// The word `break out`.
pub const OVS_THIN_ZONES_CHOICES_CHOICE_BREAK_OUT: c_int = 3;

/// The word `enough`.
pub const OVS_THIN_ZONES_CHOICES_VERDICT_ENOUGH: c_int = 0;

/// The word `not enough`.
pub const OVS_THIN_ZONES_CHOICES_VERDICT_NOT_ENOUGH: c_int = 1;

/// The word `not judged`.
pub const OVS_THIN_ZONES_CHOICES_VERDICT_NOT_JUDGED: c_int = 2;

/// The result `length` (ft or m): length of the line.
pub const OVS_SECTION_LENGTH: c_int = 0;

/// The result `covered` (ft or m): length over the work.
pub const OVS_SECTION_COVERED: c_int = 1;

/// The result `net` (ft2 or m2): area between old slab and finish, high spots taken off.
pub const OVS_SECTION_NET: c_int = 2;

/// The result `fill` (ft2 or m2): area where the finish is above the old slab.
pub const OVS_SECTION_FILL: c_int = 3;

/// The result `high` (ft2 or m2): area of old slab above the finish.
pub const OVS_SECTION_HIGH: c_int = 4;

/// The result `mean` (in or mm): net area over covered length.
pub const OVS_SECTION_MEAN: c_int = 5;

/// The result `least` (in or mm): least thickness along the line.
pub const OVS_SECTION_LEAST: c_int = 6;

/// The result `least_distance` (ft or m): where it is, along the line.
pub const OVS_SECTION_LEAST_DISTANCE: c_int = 7;

/// The result `least_x` (ft or m): where it is, from the left.
pub const OVS_SECTION_LEAST_X: c_int = 8;

/// The result `least_y` (ft or m): where it is, from the front.
pub const OVS_SECTION_LEAST_Y: c_int = 9;

/// The result `greatest` (in or mm): greatest thickness along the line.
pub const OVS_SECTION_GREATEST: c_int = 10;

/// The result `greatest_distance` (ft or m): where it is, along the line.
pub const OVS_SECTION_GREATEST_DISTANCE: c_int = 11;

/// The result `greatest_x` (ft or m): where it is, from the left.
pub const OVS_SECTION_GREATEST_X: c_int = 12;

/// The result `greatest_y` (ft or m): where it is, from the front.
pub const OVS_SECTION_GREATEST_Y: c_int = 13;

/// The result `stations`: the stations.
pub const OVS_SECTION_STATIONS: c_int = 14;

/// The column `run` of `stations`: which unbroken run over the work it is on.
pub const OVS_SECTION_STATIONS_RUN: c_int = 0;

/// The column `distance` of `stations` (ft or m): along the line from its start.
pub const OVS_SECTION_STATIONS_DISTANCE: c_int = 1;

/// The column `x` of `stations` (ft or m): from the left.
pub const OVS_SECTION_STATIONS_X: c_int = 2;

/// The column `y` of `stations` (ft or m): from the front.
pub const OVS_SECTION_STATIONS_Y: c_int = 3;

/// The column `old_slab` of `stations` (ft or m): height of the old slab.
pub const OVS_SECTION_STATIONS_OLD_SLAB: c_int = 4;

/// The column `finish` of `stations` (ft or m): height of the finish.
pub const OVS_SECTION_STATIONS_FINISH: c_int = 5;

/// The column `thickness` of `stations` (in or mm): finish less old slab.
pub const OVS_SECTION_STATIONS_THICKNESS: c_int = 6;

/// The column `ground` of `stations`: what is known of the ground after it; at the end of a run, before it.
pub const OVS_SECTION_STATIONS_GROUND: c_int = 7;

/// The result `samples`: the heights at whole steps of the spacing; none without one.
pub const OVS_SECTION_SAMPLES: c_int = 15;

/// The column `distance` of `samples` (ft or m): along the line from its start.
pub const OVS_SECTION_SAMPLES_DISTANCE: c_int = 0;

/// The column `x` of `samples` (ft or m): from the left.
pub const OVS_SECTION_SAMPLES_X: c_int = 1;

/// The column `y` of `samples` (ft or m): from the front.
pub const OVS_SECTION_SAMPLES_Y: c_int = 2;

/// The column `old_slab` of `samples` (ft or m): height of the old slab.
pub const OVS_SECTION_SAMPLES_OLD_SLAB: c_int = 3;

/// The column `finish` of `samples` (ft or m): height of the finish.
pub const OVS_SECTION_SAMPLES_FINISH: c_int = 4;

/// The column `thickness` of `samples` (in or mm): finish less old slab.
pub const OVS_SECTION_SAMPLES_THICKNESS: c_int = 5;

/// The result `gaps`: the stretches outside the work.
pub const OVS_SECTION_GAPS: c_int = 16;

/// The column `start` of `gaps` (ft or m): where it starts, along the line.
pub const OVS_SECTION_GAPS_START: c_int = 0;

/// The column `end` of `gaps` (ft or m): where it ends.
pub const OVS_SECTION_GAPS_END: c_int = 1;

/// How many results there are.
pub const OVS_SECTION_RESULTS: c_int = 17;

/// The word `surveyed`.
pub const OVS_SECTION_STATIONS_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_SECTION_STATIONS_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_SECTION_STATIONS_GROUND_BEYOND: c_int = 2;

/// The result `finish`: the finish there, rounded if that was asked.
pub const OVS_DRAIN_PLACE_FINISH: c_int = 0;

/// The result `x` (ft or m): middle of the drain, from the left.
pub const OVS_DRAIN_PLACE_X: c_int = 1;

/// The result `y` (ft or m): middle of the drain, from the front.
pub const OVS_DRAIN_PLACE_Y: c_int = 2;

/// The result `perimeter` (ft or m): height of that finish all along the outer edges.
pub const OVS_DRAIN_PLACE_PERIMETER: c_int = 3;

/// The result `drain_elevation` (ft or m): its height at the drain.
pub const OVS_DRAIN_PLACE_DRAIN_ELEVATION: c_int = 4;

/// The result `concrete` (yd3 or m3): concrete of the unrounded finish, margin with it.
pub const OVS_DRAIN_PLACE_CONCRETE: c_int = 5;

/// The result `bound` (yd3 or m3): no place in the rectangle takes less.
pub const OVS_DRAIN_PLACE_BOUND: c_int = 6;

/// The result `gap` (1): how far the concrete may be above the best, as a share of it.
pub const OVS_DRAIN_PLACE_GAP: c_int = 7;

/// The result `places`: places at which the finish was solved.
pub const OVS_DRAIN_PLACE_PLACES: c_int = 8;

/// The result `ended`: why the search ended: as close as asked, or the cap on places.
pub const OVS_DRAIN_PLACE_ENDED: c_int = 9;

/// The result `built_concrete` (yd3 or m3): concrete of the finish as rounded.
pub const OVS_DRAIN_PLACE_BUILT_CONCRETE: c_int = 10;

/// The result `cost` (money): what that costs; none without a price.
pub const OVS_DRAIN_PLACE_COST: c_int = 11;

/// How many results there are.
pub const OVS_DRAIN_PLACE_RESULTS: c_int = 12;

/// The word `close`.
pub const OVS_DRAIN_PLACE_ENDED_CLOSE: c_int = 0;

/// The word `cap`.
pub const OVS_DRAIN_PLACE_ENDED_CAP: c_int = 1;

/// The result `judged`: whether every facet falls enough, the right way, to an outlet.
pub const OVS_DRAINAGE_JUDGED: c_int = 0;

/// The result `least` (in/ft or %): the least fall that is wanted.
pub const OVS_DRAINAGE_LEAST: c_int = 1;

/// The result `least_found` (in/ft or %): the least fall of any facet.
pub const OVS_DRAINAGE_LEAST_FOUND: c_int = 2;

/// The result `drained` (ft2 or m2): area whose water leaves.
pub const OVS_DRAINAGE_DRAINED: c_int = 3;

/// The result `held` (ft2 or m2): area whose water finds no outlet.
pub const OVS_DRAINAGE_HELD: c_int = 4;

/// The result `puddles`: whether the stated wave can hold water.
pub const OVS_DRAINAGE_PUDDLES: c_int = 5;

/// The result `puddle` (in or mm): the deepest that it holds on any facet.
pub const OVS_DRAINAGE_PUDDLE: c_int = 6;

/// The result `facets`: the facets.
pub const OVS_DRAINAGE_FACETS: c_int = 7;

/// The column `facet` of `facets`: its number.
pub const OVS_DRAINAGE_FACETS_FACET: c_int = 0;

/// The column `name` of `facets`: what it is called; none for one plane.
pub const OVS_DRAINAGE_FACETS_NAME: c_int = 1;

/// The column `area` of `facets` (ft2 or m2): its area within the work.
pub const OVS_DRAINAGE_FACETS_AREA: c_int = 2;

/// The column `fall` of `facets` (in/ft or %): its steepest fall.
pub const OVS_DRAINAGE_FACETS_FALL: c_int = 3;

/// The column `down_x` of `facets` (1): downhill as a unit vector, to the right; none where level.
pub const OVS_DRAINAGE_FACETS_DOWN_X: c_int = 4;

/// The column `down_y` of `facets` (1): the same, to the back.
pub const OVS_DRAINAGE_FACETS_DOWN_Y: c_int = 5;

/// The column `toward` of `facets`: the edges it falls towards.
pub const OVS_DRAINAGE_FACETS_TOWARD: c_int = 6;

/// The column `ends` of `facets`: where most of its water ends.
pub const OVS_DRAINAGE_FACETS_ENDS: c_int = 7;

/// The column `course` of `facets`: where its water goes.
pub const OVS_DRAINAGE_FACETS_COURSE: c_int = 8;

/// The column `judged` of `facets`: whether it falls enough, the right way, to an outlet.
pub const OVS_DRAINAGE_FACETS_JUDGED: c_int = 9;

/// The column `puddle` of `facets` (in or mm): how deep the stated wave can hold water on it.
pub const OVS_DRAINAGE_FACETS_PUDDLE: c_int = 10;

/// The result `catchments`: what drains to each end.
pub const OVS_DRAINAGE_CATCHMENTS: c_int = 8;

/// The column `catchment` of `catchments`: its number.
pub const OVS_DRAINAGE_CATCHMENTS_CATCHMENT: c_int = 0;

/// The column `end` of `catchments`: what becomes of its water.
pub const OVS_DRAINAGE_CATCHMENTS_END: c_int = 1;

/// The column `name` of `catchments`: the edge, the drain, the wall or the level ground.
pub const OVS_DRAINAGE_CATCHMENTS_NAME: c_int = 2;

/// The column `area` of `catchments` (ft2 or m2): its area.
pub const OVS_DRAINAGE_CATCHMENTS_AREA: c_int = 3;

/// The column `longest` of `catchments` (ft or m): the longest way of water in it, in plan.
pub const OVS_DRAINAGE_CATCHMENTS_LONGEST: c_int = 4;

/// The column `farthest_x` of `catchments` (ft or m): where that starts, from the left.
pub const OVS_DRAINAGE_CATCHMENTS_FARTHEST_X: c_int = 5;

/// The column `farthest_y` of `catchments` (ft or m): where that starts, from the front.
pub const OVS_DRAINAGE_CATCHMENTS_FARTHEST_Y: c_int = 6;

/// The column `flow` of `catchments` (gal/min or L/s): the rain that comes there; none where no rain was given.
pub const OVS_DRAINAGE_CATCHMENTS_FLOW: c_int = 7;

/// The result `catchment_corners`: the corners of the polygons of the catchments.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS: c_int = 9;

/// The column `catchment` of `catchment_corners`: the number of the catchment.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS_CATCHMENT: c_int = 0;

/// The column `part` of `catchment_corners`: the number of the connected part, over all catchments.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS_PART: c_int = 1;

/// The column `ring` of `catchment_corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS_RING: c_int = 2;

/// The column `x` of `catchment_corners` (ft or m): from the left.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS_X: c_int = 3;

/// The column `y` of `catchment_corners` (ft or m): from the front.
pub const OVS_DRAINAGE_CATCHMENT_CORNERS_Y: c_int = 4;

/// The result `faults`: the parts that drain badly.
pub const OVS_DRAINAGE_FAULTS: c_int = 10;

/// The column `part` of `faults`: its number.
pub const OVS_DRAINAGE_FAULTS_PART: c_int = 0;

/// The column `facet` of `faults`: the number of its facet.
pub const OVS_DRAINAGE_FAULTS_FACET: c_int = 1;

/// The column `fault` of `faults`: what is wrong.
pub const OVS_DRAINAGE_FAULTS_FAULT: c_int = 2;

/// The column `area` of `faults` (ft2 or m2): its area.
pub const OVS_DRAINAGE_FAULTS_AREA: c_int = 3;

/// The result `fault_corners`: the corners of their polygons.
pub const OVS_DRAINAGE_FAULT_CORNERS: c_int = 11;

/// The column `part` of `fault_corners`: the number of the part.
pub const OVS_DRAINAGE_FAULT_CORNERS_PART: c_int = 0;

/// The column `ring` of `fault_corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
pub const OVS_DRAINAGE_FAULT_CORNERS_RING: c_int = 1;

/// The column `x` of `fault_corners` (ft or m): from the left.
pub const OVS_DRAINAGE_FAULT_CORNERS_X: c_int = 2;

/// The column `y` of `fault_corners` (ft or m): from the front.
pub const OVS_DRAINAGE_FAULT_CORNERS_Y: c_int = 3;

/// The result `paths`: ways of water.
pub const OVS_DRAINAGE_PATHS: c_int = 12;

/// The column `path` of `paths`: its number.
pub const OVS_DRAINAGE_PATHS_PATH: c_int = 0;

/// The column `start` of `paths`: what it starts from.
pub const OVS_DRAINAGE_PATHS_START: c_int = 1;

/// The column `length` of `paths` (ft or m): how long it is in plan.
pub const OVS_DRAINAGE_PATHS_LENGTH: c_int = 2;

/// The column `drop` of `paths` (in or mm): how far it falls.
pub const OVS_DRAINAGE_PATHS_DROP: c_int = 3;

/// The column `mean_fall` of `paths` (in/ft or %): its drop over its length; none where it has none.
pub const OVS_DRAINAGE_PATHS_MEAN_FALL: c_int = 4;

/// The column `end` of `paths`: what becomes of the water.
pub const OVS_DRAINAGE_PATHS_END: c_int = 5;

/// The column `name` of `paths`: the edge, the drain, the wall or the level ground.
pub const OVS_DRAINAGE_PATHS_NAME: c_int = 6;

/// The result `path_places`: the places on them.
pub const OVS_DRAINAGE_PATH_PLACES: c_int = 13;

/// The column `path` of `path_places`: the number of the way.
pub const OVS_DRAINAGE_PATH_PLACES_PATH: c_int = 0;

/// The column `x` of `path_places` (ft or m): from the left.
pub const OVS_DRAINAGE_PATH_PLACES_X: c_int = 1;

/// The column `y` of `path_places` (ft or m): from the front.
pub const OVS_DRAINAGE_PATH_PLACES_Y: c_int = 2;

/// The column `elevation` of `path_places` (ft or m): how high the finish is there.
pub const OVS_DRAINAGE_PATH_PLACES_ELEVATION: c_int = 3;

/// How many results there are.
pub const OVS_DRAINAGE_RESULTS: c_int = 14;

/// The word `open`.
pub const OVS_DRAINAGE_EDGES_STATE_OPEN: c_int = 0;

/// The word `walled`.
pub const OVS_DRAINAGE_EDGES_STATE_WALLED: c_int = 1;

/// The word `drained`.
pub const OVS_DRAINAGE_EDGES_STATE_DRAINED: c_int = 2;

/// The word `trowelled`.
pub const OVS_DRAINAGE_SURFACE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_DRAINAGE_SURFACE_BROOMED: c_int = 1;

/// The word `washed`.
pub const OVS_DRAINAGE_SURFACE_WASHED: c_int = 2;

/// The word `outdoors`.
pub const OVS_DRAINAGE_SURFACE_OUTDOORS: c_int = 3;

/// The word `pass`.
pub const OVS_DRAINAGE_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_DRAINAGE_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_DRAINAGE_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `drains`.
pub const OVS_DRAINAGE_PUDDLES_DRAINS: c_int = 0;

/// The word `can stay`.
pub const OVS_DRAINAGE_PUDDLES_CAN_STAY: c_int = 1;

/// The word `to an outlet`.
pub const OVS_DRAINAGE_FACETS_COURSE_TO_AN_OUTLET: c_int = 0;

/// The word `wrong way`.
pub const OVS_DRAINAGE_FACETS_COURSE_WRONG_WAY: c_int = 1;

/// The word `held`.
pub const OVS_DRAINAGE_FACETS_COURSE_HELD: c_int = 2;

/// The word `level`.
pub const OVS_DRAINAGE_FACETS_COURSE_LEVEL: c_int = 3;

/// The word `pass`.
pub const OVS_DRAINAGE_FACETS_JUDGED_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_DRAINAGE_FACETS_JUDGED_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_DRAINAGE_FACETS_JUDGED_CONFIRM_LOCALLY: c_int = 2;

/// The word `edge`.
pub const OVS_DRAINAGE_CATCHMENTS_END_EDGE: c_int = 0;

/// The word `drain`.
pub const OVS_DRAINAGE_CATCHMENTS_END_DRAIN: c_int = 1;

/// The word `wall`.
pub const OVS_DRAINAGE_CATCHMENTS_END_WALL: c_int = 2;

/// The word `low spot`.
pub const OVS_DRAINAGE_CATCHMENTS_END_LOW_SPOT: c_int = 3;

/// The word `level`.
pub const OVS_DRAINAGE_CATCHMENTS_END_LEVEL: c_int = 4;

/// The word `too little`.
pub const OVS_DRAINAGE_FAULTS_FAULT_TOO_LITTLE: c_int = 0;

/// The word `wrong way`.
pub const OVS_DRAINAGE_FAULTS_FAULT_WRONG_WAY: c_int = 1;

/// The word `held`.
pub const OVS_DRAINAGE_FAULTS_FAULT_HELD: c_int = 2;

/// The word `level`.
pub const OVS_DRAINAGE_FAULTS_FAULT_LEVEL: c_int = 3;

/// The word `given`.
pub const OVS_DRAINAGE_PATHS_START_GIVEN: c_int = 0;

/// The word `corner`.
pub const OVS_DRAINAGE_PATHS_START_CORNER: c_int = 1;

/// The word `farthest`.
pub const OVS_DRAINAGE_PATHS_START_FARTHEST: c_int = 2;

/// The word `edge`.
pub const OVS_DRAINAGE_PATHS_END_EDGE: c_int = 0;

/// The word `drain`.
pub const OVS_DRAINAGE_PATHS_END_DRAIN: c_int = 1;

/// The word `wall`.
pub const OVS_DRAINAGE_PATHS_END_WALL: c_int = 2;

/// The word `low spot`.
pub const OVS_DRAINAGE_PATHS_END_LOW_SPOT: c_int = 3;

/// The word `level`.
pub const OVS_DRAINAGE_PATHS_END_LEVEL: c_int = 4;

static FALL: &Operation = row(OPERATIONS, "fall");

/// The fall of a surface that loses a height over a run.
///
/// Equation: fall = drop / run.
/// Taken for granted: drop and run are measured plumb and level, not along the slope.
///
/// - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
/// - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
/// - `fall_in_per_ft` (in/ft), out: fall of the surface.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_fall_us(2, 20, ...) gives fall_in_per_ft = 0.1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us(
    drop_in: f64,
    run_ft: f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_in_per_ft)];
    unsafe { scalar::one(FALL, System::Us, [drop_in, run_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The fall of a surface that loses a height over a run.
///
/// Equation: fall = drop / run.
/// Taken for granted: drop and run are measured plumb and level, not along the slope.
///
/// - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
/// - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
/// - `fall_percent` (%), out: fall of the surface.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_fall_si(50.8, 6.096, ...) gives fall_percent = 0.833333.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si(
    drop_mm: f64,
    run_m: f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_percent)];
    unsafe { scalar::one(FALL, System::Si, [drop_mm, run_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_fall_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us_array(
    drop_in: *const f64,
    run_ft: *const f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(drop_in), Input::Numbers(run_ft)], results: [Output::Numbers(fall_in_per_ft)], notes, n, bad_index };
    unsafe { scalar::array(FALL, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_fall_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si_array(
    drop_mm: *const f64,
    run_m: *const f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(drop_mm), Input::Numbers(run_m)], results: [Output::Numbers(fall_percent)], notes, n, bad_index };
    unsafe { scalar::array(FALL, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_fall_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_us_why(
    drop_in: f64,
    run_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(FALL, System::Us, [drop_in, run_ft], text) }
}

/// Why ovs_fall_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fall_si_why(
    drop_mm: f64,
    run_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(FALL, System::Si, [drop_mm, run_m], text) }
}

static DROP: &Operation = row(OPERATIONS, "drop");

/// The height that a surface loses over a run at a fall.
///
/// Equation: drop = fall x run.
/// Taken for granted: the run is measured level, not along the slope.
///
/// - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
/// - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
/// - `drop_in` (in), out: height lost.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_drop_us(0.125, 32, ...) gives drop_in = 4.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us(
    fall_in_per_ft: f64,
    run_ft: f64,
    drop_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(drop_in)];
    unsafe { scalar::one(DROP, System::Us, [fall_in_per_ft, run_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The height that a surface loses over a run at a fall.
///
/// Equation: drop = fall x run.
/// Taken for granted: the run is measured level, not along the slope.
///
/// - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
/// - `run_m` (m): level distance; more than 0 m, at most 3048 m.
/// - `drop_mm` (mm), out: height lost.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_drop_si(1.04167, 9.7536, ...) gives drop_mm = 101.6.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si(
    fall_percent: f64,
    run_m: f64,
    drop_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(drop_mm)];
    unsafe { scalar::one(DROP, System::Si, [fall_percent, run_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_drop_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us_array(
    fall_in_per_ft: *const f64,
    run_ft: *const f64,
    drop_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(fall_in_per_ft), Input::Numbers(run_ft)], results: [Output::Numbers(drop_in)], notes, n, bad_index };
    unsafe { scalar::array(DROP, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_drop_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si_array(
    fall_percent: *const f64,
    run_m: *const f64,
    drop_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(fall_percent), Input::Numbers(run_m)], results: [Output::Numbers(drop_mm)], notes, n, bad_index };
    unsafe { scalar::array(DROP, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_drop_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_us_why(
    fall_in_per_ft: f64,
    run_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DROP, System::Us, [fall_in_per_ft, run_ft], text) }
}

/// Why ovs_drop_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drop_si_why(
    fall_percent: f64,
    run_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(DROP, System::Si, [fall_percent, run_m], text) }
}

static TRIANGULAR_PRISM: &Operation = row(OPERATIONS, "triangular_prism");

/// The volume between old slab and finish over one triangle, split where they meet.
///
/// Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
/// t2)).
/// Taken for granted: both surfaces are plane over the triangle.
///
/// - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
/// - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `net_ft3` (ft3), out: fill less high spots.
/// - `fill_ft3` (ft3), out: fill above the old slab.
/// - `high_ft3` (ft3), out: old slab above the finish.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_triangular_prism_us(50, 3, 4, 5, ...) gives net_ft3 = 16.6667, fill_ft3 = 16.6667, high_ft3 = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us(
    area_ft2: f64,
    thickness_1_in: f64,
    thickness_2_in: f64,
    thickness_3_in: f64,
    net_ft3: *mut f64,
    fill_ft3: *mut f64,
    high_ft3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(net_ft3), Output::Numbers(fill_ft3), Output::Numbers(high_ft3)];
    unsafe { scalar::one(TRIANGULAR_PRISM, System::Us, [area_ft2, thickness_1_in, thickness_2_in, thickness_3_in], results, notes, Message::new(msg, msg_len)) }
}

/// The volume between old slab and finish over one triangle, split where they meet.
///
/// Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
/// t2)).
/// Taken for granted: both surfaces are plane over the triangle.
///
/// - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
/// - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
/// - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
/// - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
/// - `net_m3` (m3), out: fill less high spots.
/// - `fill_m3` (m3), out: fill above the old slab.
/// - `high_m3` (m3), out: old slab above the finish.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example: ovs_triangular_prism_si(4.64515, 76.2, 101.6, 127, ...) gives net_m3 = 0.471947, fill_m3 = 0.471947, high_m3 = 0.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si(
    area_m2: f64,
    thickness_1_mm: f64,
    thickness_2_mm: f64,
    thickness_3_mm: f64,
    net_m3: *mut f64,
    fill_m3: *mut f64,
    high_m3: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(net_m3), Output::Numbers(fill_m3), Output::Numbers(high_m3)];
    unsafe { scalar::one(TRIANGULAR_PRISM, System::Si, [area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_triangular_prism_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us_array(
    area_ft2: *const f64,
    thickness_1_in: *const f64,
    thickness_2_in: *const f64,
    thickness_3_in: *const f64,
    net_ft3: *mut f64,
    fill_ft3: *mut f64,
    high_ft3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_ft2), Input::Numbers(thickness_1_in), Input::Numbers(thickness_2_in), Input::Numbers(thickness_3_in)], results: [Output::Numbers(net_ft3), Output::Numbers(fill_ft3), Output::Numbers(high_ft3)], notes, n, bad_index };
    unsafe { scalar::array(TRIANGULAR_PRISM, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_triangular_prism_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si_array(
    area_m2: *const f64,
    thickness_1_mm: *const f64,
    thickness_2_mm: *const f64,
    thickness_3_mm: *const f64,
    net_m3: *mut f64,
    fill_m3: *mut f64,
    high_m3: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_m2), Input::Numbers(thickness_1_mm), Input::Numbers(thickness_2_mm), Input::Numbers(thickness_3_mm)], results: [Output::Numbers(net_m3), Output::Numbers(fill_m3), Output::Numbers(high_m3)], notes, n, bad_index };
    unsafe { scalar::array(TRIANGULAR_PRISM, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_triangular_prism_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_us_why(
    area_ft2: f64,
    thickness_1_in: f64,
    thickness_2_in: f64,
    thickness_3_in: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRIANGULAR_PRISM, System::Us, [area_ft2, thickness_1_in, thickness_2_in, thickness_3_in], text) }
}

/// Why ovs_triangular_prism_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_triangular_prism_si_why(
    area_m2: f64,
    thickness_1_mm: f64,
    thickness_2_mm: f64,
    thickness_3_mm: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(TRIANGULAR_PRISM, System::Si, [area_m2, thickness_1_mm, thickness_2_mm, thickness_3_mm], text) }
}

static FINISH_LEVEL: &Operation = row(OPERATIONS, "finish_level");

/// A level finish.
///
/// Equation: z = elevation.
/// Taken for granted: water may stand.
///
/// - `elevation_ft` (ft): its elevation; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"elevation":"99.55 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_level_us(
    elevation_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Number(elevation_ft)),
    ];
    let request = Request::new(FINISH_LEVEL, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A level finish.
///
/// Equation: z = elevation.
/// Taken for granted: water may stand.
///
/// - `elevation_m` (m): its elevation; at least -10000 m, at most 10000 m.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"elevation":"99.55 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_level_si(
    elevation_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Number(elevation_m)),
    ];
    let request = Request::new(FINISH_LEVEL, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_level_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_level_us_why(
    elevation_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(elevation_ft)),
    ];
    let request = Request::new(FINISH_LEVEL, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_level_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_level_si_why(
    elevation_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(elevation_m)),
    ];
    let request = Request::new(FINISH_LEVEL, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_FROM_POINTS: &Operation = row(OPERATIONS, "finish_from_points");

/// The plane finish through three points.
///
/// Equation: z = a + b x + c y through the three.
/// Taken for granted: one plane.
///
/// - `points_x_ft` (ft): distance from the left; any finite number.
/// - `points_y_ft` (ft): distance from the front; any finite number.
/// - `points_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `points_rows`: three points that are not on one line: how many rows, each a point of the finish; at least 1.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FINISH_UNDETERMINED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"x":["0 ft","20 ft","0 ft"],"y":["0 ft","0 ft","24 ft"],"elevation":["100.0 ft","99.8 ft","99.88 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_points_us(
    points_x_ft: *const f64,
    points_y_ft: *const f64,
    points_elevation_ft: *const f64,
    points_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_ft)), (1, Input::Numbers(points_y_ft)), (2, Input::Numbers(points_elevation_ft))])),
    ];
    let request = Request::new(FINISH_FROM_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The plane finish through three points.
///
/// Equation: z = a + b x + c y through the three.
/// Taken for granted: one plane.
///
/// - `points_x_m` (m): distance from the left; any finite number.
/// - `points_y_m` (m): distance from the front; any finite number.
/// - `points_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
/// - `points_rows`: three points that are not on one line: how many rows, each a point of the finish; at least 1.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FINISH_UNDETERMINED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"x":["0 ft","20 ft","0 ft"],"y":["0 ft","0 ft","24 ft"],"elevation":["100.0 ft","99.8 ft","99.88 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_points_si(
    points_x_m: *const f64,
    points_y_m: *const f64,
    points_elevation_m: *const f64,
    points_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_m)), (1, Input::Numbers(points_y_m)), (2, Input::Numbers(points_elevation_m))])),
    ];
    let request = Request::new(FINISH_FROM_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_from_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_points_us_why(
    points_x_ft: *const f64,
    points_y_ft: *const f64,
    points_elevation_ft: *const f64,
    points_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_ft)), (1, Input::Numbers(points_y_ft)), (2, Input::Numbers(points_elevation_ft))])),
    ];
    let request = Request::new(FINISH_FROM_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_from_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_points_si_why(
    points_x_m: *const f64,
    points_y_m: *const f64,
    points_elevation_m: *const f64,
    points_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_m)), (1, Input::Numbers(points_y_m)), (2, Input::Numbers(points_elevation_m))])),
    ];
    let request = Request::new(FINISH_FROM_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_TO_EDGE: &Operation = row(OPERATIONS, "finish_to_edge");

/// The plane finish that stands level along an edge and falls square to it.
///
/// Equation: z = elevation + fall x distance from the edge.
/// Taken for granted: the edge is straight; water leaves over it.
///
/// - `survey`: the old slab with the edge.
/// - `edge`, `edge_len`: name of the edge.
/// - `elevation_ft` (ft): height of the finish at the edge; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `fall_in_per_ft` (in/ft): fall towards the edge; at least 0 in/ft, at most 12 in/ft.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edge":"front","elevation":"99.5 ft","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_edge_us(
    survey: *const ovs_survey,
    edge: *const c_char,
    edge_len: c_int,
    elevation_ft: f64,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Text(TextIn::new("edge", edge, edge_len))),
        (2, Given::Number(elevation_ft)),
        (3, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_EDGE, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The plane finish that stands level along an edge and falls square to it.
///
/// Equation: z = elevation + fall x distance from the edge.
/// Taken for granted: the edge is straight; water leaves over it.
///
/// - `survey`: the old slab with the edge.
/// - `edge`, `edge_len`: name of the edge.
/// - `elevation_m` (m): height of the finish at the edge; at least -10000 m, at most 10000 m.
/// - `fall_percent` (%): fall towards the edge; at least 0 %, at most 100 %.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edge":"front","elevation":"99.5 ft","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_edge_si(
    survey: *const ovs_survey,
    edge: *const c_char,
    edge_len: c_int,
    elevation_m: f64,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Text(TextIn::new("edge", edge, edge_len))),
        (2, Given::Number(elevation_m)),
        (3, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_EDGE, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_to_edge_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_edge_us_why(
    survey: *const ovs_survey,
    edge: *const c_char,
    edge_len: c_int,
    elevation_ft: f64,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Text(TextIn::new("edge", edge, edge_len))),
        (2, Given::Number(elevation_ft)),
        (3, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_EDGE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_to_edge_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_edge_si_why(
    survey: *const ovs_survey,
    edge: *const c_char,
    edge_len: c_int,
    elevation_m: f64,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Text(TextIn::new("edge", edge, edge_len))),
        (2, Given::Number(elevation_m)),
        (3, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_EDGE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_AT_LEAST: &Operation = row(OPERATIONS, "finish_at_least");

/// The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
///
/// Equation: elevation at the edge = greatest of (old slab + least + margin - fall x distance from the edge).
/// Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// - `survey`: the old slab.
/// - `least_in` (in): least thickness; at least 0 in, at most 120 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edge`: the edge it falls to; none for a level finish; may be left out.
///   - `fall` (in/ft): fall towards the edge; at least 0 in/ft, at most 12 in/ft; where left out 1/8 in/ft, because
///     the least for a well-finished floor.
///   - `round` (in): heights are rounded up to whole steps of this; at least 0 in, at most 12 in; may be left out.
///   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
///     most 32808.3989501 ft; where left out 0 ft, because the job datum.
///   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_FINISH_UNDETERMINED,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"least":"3 in","margin":"3/8 in","edge":"front","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_at_least_us(
    survey: *const ovs_survey,
    least_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(least_in)),
    ];
    let request = Request::new(FINISH_AT_LEAST, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
///
/// Equation: elevation at the edge = greatest of (old slab + least + margin - fall x distance from the edge).
/// Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// - `survey`: the old slab.
/// - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edge`: the edge it falls to; none for a level finish; may be left out.
///   - `fall` (%): fall towards the edge; at least 0 %, at most 100 %; where left out 1/8 in/ft, because the least
///     for a well-finished floor.
///   - `round` (mm): heights are rounded up to whole steps of this; at least 0 mm, at most 304.8 mm; may be left
///     out.
///   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
///     m; where left out 0 ft, because the job datum.
///   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_FINISH_UNDETERMINED,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"least":"3 in","margin":"3/8 in","edge":"front","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_at_least_si(
    survey: *const ovs_survey,
    least_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(least_mm)),
    ];
    let request = Request::new(FINISH_AT_LEAST, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_at_least_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_at_least_us_why(
    survey: *const ovs_survey,
    least_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(least_in)),
    ];
    let request = Request::new(FINISH_AT_LEAST, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_at_least_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_at_least_si_why(
    survey: *const ovs_survey,
    least_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(least_mm)),
    ];
    let request = Request::new(FINISH_AT_LEAST, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_FROM_FACETS: &Operation = row(OPERATIONS, "finish_from_facets");

/// A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
///
/// Equation: z = a + b x + c y through the corners of each facet.
/// Taken for granted: the corners of a facet are in one plane within 1e-6 ft; a warped one is split into triangles.
///
/// - `corners_x_ft` (ft): distance from the left; any finite number.
/// - `corners_y_ft` (ft): distance from the front; any finite number.
/// - `corners_elevation_ft` (ft): height of the finish there; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `corners_rows`: the corners: how many rows, each a corner that facets share; at least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `corners`: its name, by which facets call it; else they use its number from 1 on; may be left out.
///   - `facets`: the facets; required.
///   - `corners` of `facets`: names or numbers of its corners in order round it, commas between; required.
///   - `name` of `facets`: its name; may be left out.
///   - `falls_to` of `facets`: what it falls to: an edge, a valley, a drain; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FACET_WARPED, OVS_FACETS_OVERLAP,
/// OVS_FACET_SHAPE, OVS_CORNER_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"name":["A","B","C","D","drain"],"x":["0 ft","20 ft","20 ft","0 ft","8 ft"],"y":["0 ft","0 ft","16 ft","16 ft","6 ft"],"elevation":["100 ft","100 ft","100 ft","100 ft","99.9 ft"]},"facets":{"name":["front","right","back","left"],"corners":["A, B, drain","B, C, drain","C, D, drain","D, A, drain"],"falls_to":["drain","drain","drain","drain"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_facets_us(
    corners_x_ft: *const f64,
    corners_y_ft: *const f64,
    corners_elevation_ft: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_ft)), (2, Input::Numbers(corners_y_ft)), (3, Input::Numbers(corners_elevation_ft))])),
    ];
    let request = Request::new(FINISH_FROM_FACETS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
///
/// Equation: z = a + b x + c y through the corners of each facet.
/// Taken for granted: the corners of a facet are in one plane within 1e-6 ft; a warped one is split into triangles.
///
/// - `corners_x_m` (m): distance from the left; any finite number.
/// - `corners_y_m` (m): distance from the front; any finite number.
/// - `corners_elevation_m` (m): height of the finish there; at least -10000 m, at most 10000 m.
/// - `corners_rows`: the corners: how many rows, each a corner that facets share; at least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `corners`: its name, by which facets call it; else they use its number from 1 on; may be left out.
///   - `facets`: the facets; required.
///   - `corners` of `facets`: names or numbers of its corners in order round it, commas between; required.
///   - `name` of `facets`: its name; may be left out.
///   - `falls_to` of `facets`: what it falls to: an edge, a valley, a drain; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FACET_WARPED, OVS_FACETS_OVERLAP,
/// OVS_FACET_SHAPE, OVS_CORNER_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"name":["A","B","C","D","drain"],"x":["0 ft","20 ft","20 ft","0 ft","8 ft"],"y":["0 ft","0 ft","16 ft","16 ft","6 ft"],"elevation":["100 ft","100 ft","100 ft","100 ft","99.9 ft"]},"facets":{"name":["front","right","back","left"],"corners":["A, B, drain","B, C, drain","C, D, drain","D, A, drain"],"falls_to":["drain","drain","drain","drain"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_facets_si(
    corners_x_m: *const f64,
    corners_y_m: *const f64,
    corners_elevation_m: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_m)), (2, Input::Numbers(corners_y_m)), (3, Input::Numbers(corners_elevation_m))])),
    ];
    let request = Request::new(FINISH_FROM_FACETS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_from_facets_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_facets_us_why(
    corners_x_ft: *const f64,
    corners_y_ft: *const f64,
    corners_elevation_ft: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_ft)), (2, Input::Numbers(corners_y_ft)), (3, Input::Numbers(corners_elevation_ft))])),
    ];
    let request = Request::new(FINISH_FROM_FACETS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_from_facets_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_facets_si_why(
    corners_x_m: *const f64,
    corners_y_m: *const f64,
    corners_elevation_m: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_m)), (2, Input::Numbers(corners_y_m)), (3, Input::Numbers(corners_elevation_m))])),
    ];
    let request = Request::new(FINISH_FROM_FACETS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_FROM_PLANES: &Operation = row(OPERATIONS, "finish_from_planes");

/// A finish of several facets, each with the plane through three heights of its own, checked to meet.
///
/// Equation: z = a + b x + c y through the heights of each facet.
/// Taken for granted: facets that share an edge have one height along it.
///
/// - `corners_x_ft` (ft): distance from the left; any finite number.
/// - `corners_y_ft` (ft): distance from the front; any finite number.
/// - `corners_rows`: the corners of all facets: how many rows, each a corner of one facet, in order round it; at
///   least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `facet` of `corners`: the facet it is of; required.
///   - `elevation` of `corners` (ft): height of the finish there, at three corners of each facet or more; at least
///     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_FACETS_APART, OVS_FACET_SHAPE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"facet":["left","left","left","left","right","right","right","right"],"x":["0 ft","10 ft","10 ft","0 ft","10 ft","20 ft","20 ft","10 ft"],"y":["0 ft","0 ft","16 ft","16 ft","0 ft","0 ft","16 ft","16 ft"],"elevation":["100 ft","99.9 ft","99.9 ft",null,"99.9 ft","100.1 ft",null,"99.9 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_planes_us(
    corners_x_ft: *const f64,
    corners_y_ft: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_ft)), (2, Input::Numbers(corners_y_ft))])),
    ];
    let request = Request::new(FINISH_FROM_PLANES, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A finish of several facets, each with the plane through three heights of its own, checked to meet.
///
/// Equation: z = a + b x + c y through the heights of each facet.
/// Taken for granted: facets that share an edge have one height along it.
///
/// - `corners_x_m` (m): distance from the left; any finite number.
/// - `corners_y_m` (m): distance from the front; any finite number.
/// - `corners_rows`: the corners of all facets: how many rows, each a corner of one facet, in order round it; at
///   least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `facet` of `corners`: the facet it is of; required.
///   - `elevation` of `corners` (m): height of the finish there, at three corners of each facet or more; at least
///     -10000 m, at most 10000 m; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_FACETS_APART, OVS_FACET_SHAPE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"facet":["left","left","left","left","right","right","right","right"],"x":["0 ft","10 ft","10 ft","0 ft","10 ft","20 ft","20 ft","10 ft"],"y":["0 ft","0 ft","16 ft","16 ft","0 ft","0 ft","16 ft","16 ft"],"elevation":["100 ft","99.9 ft","99.9 ft",null,"99.9 ft","100.1 ft",null,"99.9 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_planes_si(
    corners_x_m: *const f64,
    corners_y_m: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_m)), (2, Input::Numbers(corners_y_m))])),
    ];
    let request = Request::new(FINISH_FROM_PLANES, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_from_planes_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_planes_us_why(
    corners_x_ft: *const f64,
    corners_y_ft: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_ft)), (2, Input::Numbers(corners_y_ft))])),
    ];
    let request = Request::new(FINISH_FROM_PLANES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_from_planes_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_from_planes_si_why(
    corners_x_m: *const f64,
    corners_y_m: *const f64,
    corners_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(corners_rows, &[(1, Input::Numbers(corners_x_m)), (2, Input::Numbers(corners_y_m))])),
    ];
    let request = Request::new(FINISH_FROM_PLANES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_TO_VALLEY: &Operation = row(OPERATIONS, "finish_to_valley");

/// Two planes that fall to a valley across the work; the valley may fall along its length.
///
/// Equation: both planes hold the line; square to it they rise or fall by their own falls.
/// Taken for granted: left and right are seen from the first point of the valley looking to the second.
///
/// - `survey`: the old slab with its outline.
/// - `valley_x_ft` (ft): distance from the left; any finite number.
/// - `valley_y_ft` (ft): distance from the front; any finite number.
/// - `valley_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `valley_rows`: two points of the valley: how many rows, each a point of the finish; at least 1.
/// - `fall_in_per_ft` (in/ft): fall to the valley, square to it; at least 0 in/ft, at most 12 in/ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
///     left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_FINISH_UNDETERMINED, OVS_NULL_POINTER, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"valley":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.5 ft","99.7 ft"]},"fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_valley_us(
    survey: *const ovs_survey,
    valley_x_ft: *const f64,
    valley_y_ft: *const f64,
    valley_elevation_ft: *const f64,
    valley_rows: c_int,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(valley_rows, &[(0, Input::Numbers(valley_x_ft)), (1, Input::Numbers(valley_y_ft)), (2, Input::Numbers(valley_elevation_ft))])),
        (2, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_VALLEY, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Two planes that fall to a valley across the work; the valley may fall along its length.
///
/// Equation: both planes hold the line; square to it they rise or fall by their own falls.
/// Taken for granted: left and right are seen from the first point of the valley looking to the second.
///
/// - `survey`: the old slab with its outline.
/// - `valley_x_m` (m): distance from the left; any finite number.
/// - `valley_y_m` (m): distance from the front; any finite number.
/// - `valley_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
/// - `valley_rows`: two points of the valley: how many rows, each a point of the finish; at least 1.
/// - `fall_percent` (%): fall to the valley, square to it; at least 0 %, at most 100 %.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_FINISH_UNDETERMINED, OVS_NULL_POINTER, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"valley":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.5 ft","99.7 ft"]},"fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_valley_si(
    survey: *const ovs_survey,
    valley_x_m: *const f64,
    valley_y_m: *const f64,
    valley_elevation_m: *const f64,
    valley_rows: c_int,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(valley_rows, &[(0, Input::Numbers(valley_x_m)), (1, Input::Numbers(valley_y_m)), (2, Input::Numbers(valley_elevation_m))])),
        (2, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_VALLEY, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_to_valley_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_valley_us_why(
    survey: *const ovs_survey,
    valley_x_ft: *const f64,
    valley_y_ft: *const f64,
    valley_elevation_ft: *const f64,
    valley_rows: c_int,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(valley_rows, &[(0, Input::Numbers(valley_x_ft)), (1, Input::Numbers(valley_y_ft)), (2, Input::Numbers(valley_elevation_ft))])),
        (2, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_VALLEY, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_to_valley_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_valley_si_why(
    survey: *const ovs_survey,
    valley_x_m: *const f64,
    valley_y_m: *const f64,
    valley_elevation_m: *const f64,
    valley_rows: c_int,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(valley_rows, &[(0, Input::Numbers(valley_x_m)), (1, Input::Numbers(valley_y_m)), (2, Input::Numbers(valley_elevation_m))])),
        (2, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_VALLEY, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_CROWN: &Operation = row(OPERATIONS, "finish_crown");

/// A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
///
/// Equation: both planes hold the line; square to it they rise or fall by their own falls.
/// Taken for granted: left and right are seen from the first point of the ridge looking to the second.
///
/// - `survey`: the old slab with its outline.
/// - `ridge_x_ft` (ft): distance from the left; any finite number.
/// - `ridge_y_ft` (ft): distance from the front; any finite number.
/// - `ridge_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `ridge_rows`: two points of the ridge: how many rows, each a point of the finish; at least 1.
/// - `fall_in_per_ft` (in/ft): fall away from the ridge, square to it; at least 0 in/ft, at most 12 in/ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
///     left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"ridge":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.8 ft","99.8 ft"]},"fall":"1/8 in/ft","right_fall":"1/4 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_crown_us(
    survey: *const ovs_survey,
    ridge_x_ft: *const f64,
    ridge_y_ft: *const f64,
    ridge_elevation_ft: *const f64,
    ridge_rows: c_int,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(ridge_rows, &[(0, Input::Numbers(ridge_x_ft)), (1, Input::Numbers(ridge_y_ft)), (2, Input::Numbers(ridge_elevation_ft))])),
        (2, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_CROWN, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
///
/// Equation: both planes hold the line; square to it they rise or fall by their own falls.
/// Taken for granted: left and right are seen from the first point of the ridge looking to the second.
///
/// - `survey`: the old slab with its outline.
/// - `ridge_x_m` (m): distance from the left; any finite number.
/// - `ridge_y_m` (m): distance from the front; any finite number.
/// - `ridge_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
/// - `ridge_rows`: two points of the ridge: how many rows, each a point of the finish; at least 1.
/// - `fall_percent` (%): fall away from the ridge, square to it; at least 0 %, at most 100 %.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"ridge":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.8 ft","99.8 ft"]},"fall":"1/8 in/ft","right_fall":"1/4 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_crown_si(
    survey: *const ovs_survey,
    ridge_x_m: *const f64,
    ridge_y_m: *const f64,
    ridge_elevation_m: *const f64,
    ridge_rows: c_int,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(ridge_rows, &[(0, Input::Numbers(ridge_x_m)), (1, Input::Numbers(ridge_y_m)), (2, Input::Numbers(ridge_elevation_m))])),
        (2, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_CROWN, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_crown_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_crown_us_why(
    survey: *const ovs_survey,
    ridge_x_ft: *const f64,
    ridge_y_ft: *const f64,
    ridge_elevation_ft: *const f64,
    ridge_rows: c_int,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(ridge_rows, &[(0, Input::Numbers(ridge_x_ft)), (1, Input::Numbers(ridge_y_ft)), (2, Input::Numbers(ridge_elevation_ft))])),
        (2, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_CROWN, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_crown_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_crown_si_why(
    survey: *const ovs_survey,
    ridge_x_m: *const f64,
    ridge_y_m: *const f64,
    ridge_elevation_m: *const f64,
    ridge_rows: c_int,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(ridge_rows, &[(0, Input::Numbers(ridge_x_m)), (1, Input::Numbers(ridge_y_m)), (2, Input::Numbers(ridge_elevation_m))])),
        (2, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_CROWN, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_TO_TRENCH: &Operation = row(OPERATIONS, "finish_to_trench");

/// Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
///
/// Equation: the planes hold the rims of the trench, which is level across, and rise from them by their own falls.
/// Taken for granted: left and right are seen from the first point of the trench looking to the second; an edge's
/// trench starts where the edge does.
///
/// - `survey`: the old slab with its outline.
/// - `fall_in_per_ft` (in/ft): fall to the trench, square to it; at least 0 in/ft, at most 12 in/ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `trench`: two points of the middle of the trench, at the height of its rims; may be left out.
///   - `x` of `trench` (ft): distance from the left; any finite number; required.
///   - `y` of `trench` (ft): distance from the front; any finite number; required.
///   - `elevation` of `trench` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft; required.
///   - `edge`: in place of the points: the edge the trench lies along; may be left out.
///   - `elevation` (ft): along an edge: height of the rims where it starts; at least -32808.3989501 ft, at most
///     32808.3989501 ft; may be left out.
///   - `elevation_end` (ft): along an edge: height of the rims where it ends, where the trench is not level; at
///     least -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `width` (in): width from rim to rim; at least 0 in, at most 1200 in; where left out 0 in, because a slot.
///   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
///     left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED, OVS_FINISH_TWICE,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"trench":{"x":["0 ft","20 ft"],"y":["16 ft","16 ft"],"elevation":["99.6 ft","99.5 ft"]},"width":"6 in","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_trench_us(
    survey: *const ovs_survey,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (6, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_TRENCH, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
///
/// Equation: the planes hold the rims of the trench, which is level across, and rise from them by their own falls.
/// Taken for granted: left and right are seen from the first point of the trench looking to the second; an edge's
/// trench starts where the edge does.
///
/// - `survey`: the old slab with its outline.
/// - `fall_percent` (%): fall to the trench, square to it; at least 0 %, at most 100 %.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `trench`: two points of the middle of the trench, at the height of its rims; may be left out.
///   - `x` of `trench` (m): distance from the left; any finite number; required.
///   - `y` of `trench` (m): distance from the front; any finite number; required.
///   - `elevation` of `trench` (m): height there; at least -10000 m, at most 10000 m; required.
///   - `edge`: in place of the points: the edge the trench lies along; may be left out.
///   - `elevation` (m): along an edge: height of the rims where it starts; at least -10000 m, at most 10000 m; may
///     be left out.
///   - `elevation_end` (m): along an edge: height of the rims where it ends, where the trench is not level; at
///     least -10000 m, at most 10000 m; may be left out.
///   - `width` (mm): width from rim to rim; at least 0 mm, at most 30480 mm; where left out 0 in, because a slot.
///   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED, OVS_FINISH_TWICE,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"trench":{"x":["0 ft","20 ft"],"y":["16 ft","16 ft"],"elevation":["99.6 ft","99.5 ft"]},"width":"6 in","fall":"1/8 in/ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_trench_si(
    survey: *const ovs_survey,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (6, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_TRENCH, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_to_trench_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_trench_us_why(
    survey: *const ovs_survey,
    fall_in_per_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (6, Given::Number(fall_in_per_ft)),
    ];
    let request = Request::new(FINISH_TO_TRENCH, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_to_trench_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_trench_si_why(
    survey: *const ovs_survey,
    fall_percent: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (6, Given::Number(fall_percent)),
    ];
    let request = Request::new(FINISH_TO_TRENCH, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_TO_DRAIN: &Operation = row(OPERATIONS, "finish_to_drain");

/// Planes that fall from a level perimeter to an area drain, one from each run of the outline.
///
/// Equation: each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter - fall
/// x way of the water.
/// Taken for granted: every corner of the outline can be seen from the drain; holes take nothing away; give the
/// drain's height or a fall.
///
/// - `survey`: the old slab with its outline.
/// - `x_ft` (ft): middle of the drain, from the left; any finite number.
/// - `y_ft` (ft): middle of the drain, from the front; any finite number.
/// - `elevation_ft` (ft): height of the finish all along the outer edges; at least -32808.3989501 ft, at most
///   32808.3989501 ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `drain_elevation` (ft): height of the drain; at least -32808.3989501 ft, at most 32808.3989501 ft; may be
///     left out.
///   - `fall` (in/ft): fall to the drain, in place of its height; at least 0 in/ft, at most 12 in/ft; may be left
///     out.
///   - `along`: the way the fall is meant along: from the farthest corner or from the nearest place; 0 longest, 1
///     shortest; where left out longest, because the fall is then met everywhere.
///   - `rim_x` (in): size of the drain's level rim along x; none for a point; at least 0 in, at most 1200 in; may
///     be left out.
///   - `rim_y` (in): its size along y, where it is not square; at least 0 in, at most 1200 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED,
/// OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_CORNER_UNSEEN, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x":"10 ft","y":"14 ft","elevation":"99.7 ft","fall":"1/8 in/ft","rim_x":"12 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_drain_us(
    survey: *const ovs_survey,
    x_ft: f64,
    y_ft: f64,
    elevation_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_ft)),
        (2, Given::Number(y_ft)),
        (3, Given::Number(elevation_ft)),
    ];
    let request = Request::new(FINISH_TO_DRAIN, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Planes that fall from a level perimeter to an area drain, one from each run of the outline.
///
/// Equation: each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter - fall
/// x way of the water.
/// Taken for granted: every corner of the outline can be seen from the drain; holes take nothing away; give the
/// drain's height or a fall.
///
/// - `survey`: the old slab with its outline.
/// - `x_m` (m): middle of the drain, from the left; any finite number.
/// - `y_m` (m): middle of the drain, from the front; any finite number.
/// - `elevation_m` (m): height of the finish all along the outer edges; at least -10000 m, at most 10000 m.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `drain_elevation` (m): height of the drain; at least -10000 m, at most 10000 m; may be left out.
///   - `fall` (%): fall to the drain, in place of its height; at least 0 %, at most 100 %; may be left out.
///   - `along`: the way the fall is meant along: from the farthest corner or from the nearest place; 0 longest, 1
///     shortest; where left out longest, because the fall is then met everywhere.
///   - `rim_x` (mm): size of the drain's level rim along x; none for a point; at least 0 mm, at most 30480 mm; may
///     be left out.
///   - `rim_y` (mm): its size along y, where it is not square; at least 0 mm, at most 30480 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED,
/// OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_CORNER_UNSEEN, OVS_OFF_WORK.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x":"10 ft","y":"14 ft","elevation":"99.7 ft","fall":"1/8 in/ft","rim_x":"12 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_drain_si(
    survey: *const ovs_survey,
    x_m: f64,
    y_m: f64,
    elevation_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_m)),
        (2, Given::Number(y_m)),
        (3, Given::Number(elevation_m)),
    ];
    let request = Request::new(FINISH_TO_DRAIN, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_to_drain_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_drain_us_why(
    survey: *const ovs_survey,
    x_ft: f64,
    y_ft: f64,
    elevation_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_ft)),
        (2, Given::Number(y_ft)),
        (3, Given::Number(elevation_ft)),
    ];
    let request = Request::new(FINISH_TO_DRAIN, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_to_drain_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_to_drain_si_why(
    survey: *const ovs_survey,
    x_m: f64,
    y_m: f64,
    elevation_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_m)),
        (2, Given::Number(y_m)),
        (3, Given::Number(elevation_m)),
    ];
    let request = Request::new(FINISH_TO_DRAIN, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_WITH_STRIP: &Operation = row(OPERATIONS, "finish_with_strip");

/// A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
///
/// Equation: the strip holds the finish's height along its inner line; square to the edge it has its own fall.
/// Taken for granted: the strip takes everything within its width of the line of the edge.
///
/// - `survey`: the old slab with the edge.
/// - `finish`: the finish without the strip.
/// - `edge`, `edge_len`: name of the edge.
/// - `width_ft` (ft): width of the strip; at least 0 ft, at most 100 ft.
/// - `fall_in_per_ft` (in/ft): fall of the strip, square to the edge; at least 0 in/ft, at most 12 in/ft.
/// - `toward`: what the strip falls to: the edge as an apron, the floor as a curb; 0 edge, 1 floor.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"edge":"front","width":"2 ft","fall":"1/2 in/ft","toward":"edge"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_with_strip_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    edge: *const c_char,
    edge_len: c_int,
    width_ft: f64,
    fall_in_per_ft: f64,
    toward: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Text(TextIn::new("edge", edge, edge_len))),
        (3, Given::Number(width_ft)),
        (4, Given::Number(fall_in_per_ft)),
        (5, Given::Whole(toward)),
    ];
    let request = Request::new(FINISH_WITH_STRIP, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
///
/// Equation: the strip holds the finish's height along its inner line; square to the edge it has its own fall.
/// Taken for granted: the strip takes everything within its width of the line of the edge.
///
/// - `survey`: the old slab with the edge.
/// - `finish`: the finish without the strip.
/// - `edge`, `edge_len`: name of the edge.
/// - `width_m` (m): width of the strip; at least 0 m, at most 30.48 m.
/// - `fall_percent` (%): fall of the strip, square to the edge; at least 0 %, at most 100 %.
/// - `toward`: what the strip falls to: the edge as an apron, the floor as a curb; 0 edge, 1 floor.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The new top surface: one plane, or facets that meet.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"edge":"front","width":"2 ft","fall":"1/2 in/ft","toward":"edge"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_with_strip_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    edge: *const c_char,
    edge_len: c_int,
    width_m: f64,
    fall_percent: f64,
    toward: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_finish {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Text(TextIn::new("edge", edge, edge_len))),
        (3, Given::Number(width_m)),
        (4, Given::Number(fall_percent)),
        (5, Given::Whole(toward)),
    ];
    let request = Request::new(FINISH_WITH_STRIP, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, FINISH_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_with_strip_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_with_strip_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    edge: *const c_char,
    edge_len: c_int,
    width_ft: f64,
    fall_in_per_ft: f64,
    toward: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Text(TextIn::new("edge", edge, edge_len))),
        (3, Given::Number(width_ft)),
        (4, Given::Number(fall_in_per_ft)),
        (5, Given::Whole(toward)),
    ];
    let request = Request::new(FINISH_WITH_STRIP, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_with_strip_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_with_strip_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    edge: *const c_char,
    edge_len: c_int,
    width_m: f64,
    fall_percent: f64,
    toward: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Text(TextIn::new("edge", edge, edge_len))),
        (3, Given::Number(width_m)),
        (4, Given::Number(fall_percent)),
        (5, Given::Whole(toward)),
    ];
    let request = Request::new(FINISH_WITH_STRIP, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_RAISED: &Operation = row(OPERATIONS, "finish_raised");

/// Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
///
/// Equation: raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles and
/// facets cut one another.
/// Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// - `survey`: the old slab.
/// - `finish`: the finish as drawn.
/// - `least_in` (in): least thickness; at least 0 in, at most 120 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; may be left out.
///   - `round` (in): the lift is rounded up to whole steps of this, so that heights given in steps stay so; at
///     least 0 in, at most 12 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_RAISED_FINISH: the finish.
///   - OVS_FINISH_RAISED_RAISED_BY (in): how far it was lifted; below zero where it was lowered.
///   - OVS_FINISH_RAISED_AT_X (ft): the place that fixes it, from the left.
///   - OVS_FINISH_RAISED_AT_Y (ft): the place that fixes it, from the front.
///   - OVS_FINISH_RAISED_AT_SHOT: the shot there.
///   - OVS_FINISH_RAISED_AT_FACET: the facet there.
///   - OVS_FINISH_RAISED_ROUNDED_BY (in): how much of the lift is rounding.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.3 ft"},"least":"3 in","margin":"3/8 in","round":"1/8 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_raised_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
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
        (2, Given::Number(least_in)),
    ];
    let request = Request::new(FINISH_RAISED, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
///
/// Equation: raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles and
/// facets cut one another.
/// Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
///
/// - `survey`: the old slab.
/// - `finish`: the finish as drawn.
/// - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; may be left out.
///   - `round` (mm): the lift is rounded up to whole steps of this, so that heights given in steps stay so; at
///     least 0 mm, at most 304.8 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_RAISED_FINISH: the finish.
///   - OVS_FINISH_RAISED_RAISED_BY (mm): how far it was lifted; below zero where it was lowered.
///   - OVS_FINISH_RAISED_AT_X (m): the place that fixes it, from the left.
///   - OVS_FINISH_RAISED_AT_Y (m): the place that fixes it, from the front.
///   - OVS_FINISH_RAISED_AT_SHOT: the shot there.
///   - OVS_FINISH_RAISED_AT_FACET: the facet there.
///   - OVS_FINISH_RAISED_ROUNDED_BY (mm): how much of the lift is rounding.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.3 ft"},"least":"3 in","margin":"3/8 in","round":"1/8 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_raised_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
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
        (2, Given::Number(least_mm)),
    ];
    let request = Request::new(FINISH_RAISED, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_raised_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_raised_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
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
        (2, Given::Number(least_in)),
    ];
    let request = Request::new(FINISH_RAISED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_raised_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_raised_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
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
        (2, Given::Number(least_mm)),
    ];
    let request = Request::new(FINISH_RAISED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_FACETS: &Operation = row(OPERATIONS, "finish_facets");

/// The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
///
/// Equation: fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise.
/// Taken for granted: one plane has no facets to list.
///
/// - `finish`: the finish.
/// - `survey`: the work: areas are then of the part inside it; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `survey`: the work: areas are then of the part inside it; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_FACETS_FACETS: the facets.
///   - OVS_FINISH_FACETS_CORNERS: their corners.
///
/// Refuses with OVS_EMPTY_LIST, OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACET_SHAPE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"finish":{"corners":[{"name":"A","x":"0 ft","y":"0 ft","elevation":"100 ft"},{"name":"B","x":"20 ft","y":"0 ft","elevation":"99.9 ft"},{"name":"C","x":"20 ft","y":"16 ft","elevation":"99.9 ft"},{"name":"D","x":"0 ft","y":"16 ft","elevation":"100 ft"}],"facets":[{"name":"floor","corners":["A","B","C","D"]}]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_facets_us(
    finish: *const ovs_finish,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("finish", finish))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(FINISH_FACETS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
///
/// Equation: fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise.
/// Taken for granted: one plane has no facets to list.
///
/// - `finish`: the finish.
/// - `survey`: the work: areas are then of the part inside it; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `survey`: the work: areas are then of the part inside it; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_FACETS_FACETS: the facets.
///   - OVS_FINISH_FACETS_CORNERS: their corners.
///
/// Refuses with OVS_EMPTY_LIST, OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACET_SHAPE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"finish":{"corners":[{"name":"A","x":"0 ft","y":"0 ft","elevation":"100 ft"},{"name":"B","x":"20 ft","y":"0 ft","elevation":"99.9 ft"},{"name":"C","x":"20 ft","y":"16 ft","elevation":"99.9 ft"},{"name":"D","x":"0 ft","y":"16 ft","elevation":"100 ft"}],"facets":[{"name":"floor","corners":["A","B","C","D"]}]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_facets_si(
    finish: *const ovs_finish,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("finish", finish))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(FINISH_FACETS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_facets_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_facets_us_why(
    finish: *const ovs_finish,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("finish", finish))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(FINISH_FACETS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_facets_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_facets_si_why(
    finish: *const ovs_finish,
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("finish", finish))),
        (1, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(FINISH_FACETS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_SOLVED: &Operation = row(OPERATIONS, "finish_solved");

/// The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded
/// to what can be set out.
///
/// Equation: least integral of finish less old slab, finish plane over each facet, facets meeting, all demands
/// kept; with grinding at a price: concrete and ground volume at their prices.
/// Taken for granted: old slab plane over each triangle; the finish nowhere dips below it, but for what may be
/// ground; door lines level, falls square to their edge, a level perimeter about a drain, unless set_out is no.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
///     out.
///   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
///     line; at least 0 in/ft, at most 12 in/ft; may be left out.
///   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
///     ft, at most 32808.3989501 ft; may be left out.
///   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
///     at most 120 in; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
///     -328083.989501 ft, at most 328083.989501 ft; may be left out.
///   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
///     328083.989501 ft; may be left out.
///   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
///   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
///   - `grind_at_most` (in): how deep high spots may be ground; at least 0 in, at most 120 in; may be left out.
///   - `grinding_price` (/yd3): price of what is ground off; at least 0 /yd3, at most 7645548.57984 /yd3; may be
///     left out.
///   - `round` (in): heights are whole steps of this from the datum; at least 0 in, at most 12 in; where left out
///     1/8 in, because finer cannot be set out.
///   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
///     most 32808.3989501 ft; where left out 0 ft, because the job datum.
///   - `round_fall` (in/ft): falls are whole steps of this; at least 0 in/ft, at most 12 in/ft; where left out 1/16
///     in/ft, because finer cannot be struck off.
///   - `set_out`: no for the planned finish as it comes out, with nothing added or rounded; 0 no, 1 yes; may be
///     left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_SOLVED_FINISH: the finish to be built, in whole steps.
///   - OVS_FINISH_SOLVED_CONCRETE (yd3): its concrete.
///   - OVS_FINISH_SOLVED_GROUND (yd3): what is ground off under it.
///   - OVS_FINISH_SOLVED_COST (money): concrete and grinding at their prices.
///   - OVS_FINISH_SOLVED_PLANNED: the finish before rounding.
///   - OVS_FINISH_SOLVED_PLANNED_CONCRETE (yd3): its concrete.
///   - OVS_FINISH_SOLVED_PLANNED_COST (money): its cost.
///   - OVS_FINISH_SOLVED_BARE: the finish by the demands alone: no margin, nothing added or rounded.
///   - OVS_FINISH_SOLVED_BARE_CONCRETE (yd3): its concrete.
///   - OVS_FINISH_SOLVED_BARE_COST (money): its cost.
///   - OVS_FINISH_SOLVED_BOUND (yd3): no finish planned so costs less than this, in volume of concrete.
///   - OVS_FINISH_SOLVED_GAP (1): how far the planned cost may be above the least, as a share.
///   - OVS_FINISH_SOLVED_LEAST_SLACK (in): how far the demand that is kept most narrowly is from being broken; less
///     than none by rounding only.
///   - OVS_FINISH_SOLVED_ROWS: how many rows were looked at for that.
///   - OVS_FINISH_SOLVED_ROUND (in): the step of heights that could be kept; none where nothing is rounded.
///   - OVS_FINISH_SOLVED_ROUND_FALL (in/ft): the step of falls that could be kept.
///   - OVS_FINISH_SOLVED_KEPT: how each demand stands, and what it costs.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_DEMANDS_CONFLICT, OVS_ZONE_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Basis: 3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in: common practice,
/// no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/8 in/ft",null],"elevation":[null,null,"100.2 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]},"concrete_price":"165 /yd3"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_solved_us(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SOLVED, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded
/// to what can be set out.
///
/// Equation: least integral of finish less old slab, finish plane over each facet, facets meeting, all demands
/// kept; with grinding at a price: concrete and ground volume at their prices.
/// Taken for granted: old slab plane over each triangle; the finish nowhere dips below it, but for what may be
/// ground; door lines level, falls square to their edge, a level perimeter about a drain, unless set_out is no.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
///     out.
///   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
///     at least 0 %, at most 100 %; may be left out.
///   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
///     most 10000 m; may be left out.
///   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
///     at most 3048 mm; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
///     at most 100000 m; may be left out.
///   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
///     left out.
///   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
///   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
///   - `grind_at_most` (mm): how deep high spots may be ground; at least 0 mm, at most 3048 mm; may be left out.
///   - `grinding_price` (/m3): price of what is ground off; at least 0 /m3, at most 10000000 /m3; may be left out.
///   - `round` (mm): heights are whole steps of this from the datum; at least 0 mm, at most 304.8 mm; where left
///     out 1/8 in, because finer cannot be set out.
///   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
///     m; where left out 0 ft, because the job datum.
///   - `round_fall` (%): falls are whole steps of this; at least 0 %, at most 100 %; where left out 1/16 in/ft,
///     because finer cannot be struck off.
///   - `set_out`: no for the planned finish as it comes out, with nothing added or rounded; 0 no, 1 yes; may be
///     left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_SOLVED_FINISH: the finish to be built, in whole steps.
///   - OVS_FINISH_SOLVED_CONCRETE (m3): its concrete.
///   - OVS_FINISH_SOLVED_GROUND (m3): what is ground off under it.
///   - OVS_FINISH_SOLVED_COST (money): concrete and grinding at their prices.
///   - OVS_FINISH_SOLVED_PLANNED: the finish before rounding.
///   - OVS_FINISH_SOLVED_PLANNED_CONCRETE (m3): its concrete.
///   - OVS_FINISH_SOLVED_PLANNED_COST (money): its cost.
///   - OVS_FINISH_SOLVED_BARE: the finish by the demands alone: no margin, nothing added or rounded.
///   - OVS_FINISH_SOLVED_BARE_CONCRETE (m3): its concrete.
///   - OVS_FINISH_SOLVED_BARE_COST (money): its cost.
///   - OVS_FINISH_SOLVED_BOUND (m3): no finish planned so costs less than this, in volume of concrete.
///   - OVS_FINISH_SOLVED_GAP (1): how far the planned cost may be above the least, as a share.
///   - OVS_FINISH_SOLVED_LEAST_SLACK (mm): how far the demand that is kept most narrowly is from being broken; less
///     than none by rounding only.
///   - OVS_FINISH_SOLVED_ROWS: how many rows were looked at for that.
///   - OVS_FINISH_SOLVED_ROUND (mm): the step of heights that could be kept; none where nothing is rounded.
///   - OVS_FINISH_SOLVED_ROUND_FALL (%): the step of falls that could be kept.
///   - OVS_FINISH_SOLVED_KEPT: how each demand stands, and what it costs.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
/// OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_DEMANDS_CONFLICT, OVS_ZONE_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Basis: 3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in: common practice,
/// no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/8 in/ft",null],"elevation":[null,null,"100.2 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]},"concrete_price":"165 /yd3"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_solved_si(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SOLVED, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_solved_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_solved_us_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SOLVED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_solved_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_solved_si_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SOLVED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_CONFLICTS: &Operation = row(OPERATIONS, "finish_conflicts");

/// Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands
/// would have to give way.
///
/// Equation: a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it has; gives
/// way by the least t with A u + share t >= b.
/// Taken for granted: heights and falls unrounded; the margin counts; demands that stand firm are kept and not
/// blamed.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
///     out.
///   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
///     line; at least 0 in/ft, at most 12 in/ft; may be left out.
///   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
///     ft, at most 32808.3989501 ft; may be left out.
///   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
///     at most 120 in; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
///     -328083.989501 ft, at most 328083.989501 ft; may be left out.
///   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
///     328083.989501 ft; may be left out.
///   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_CONFLICTS_KEPT: whether all can be kept; 0 no, 1 yes.
///   - OVS_FINISH_CONFLICTS_COMPLETE: whether these are all the sets; at most ten are told; 0 no, 1 yes.
///   - OVS_FINISH_CONFLICTS_SETS: the sets.
///   - OVS_FINISH_CONFLICTS_ALONE: what mends everything alone.
///   - OVS_FINISH_CONFLICTS_TOGETHER: what mends everything with the least weighted sum.
///   - OVS_FINISH_CONFLICTS_SAID: all of it in sentences.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"margin":"1/4 in","demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/4 in/ft",null],"elevation":[null,null,"99.7 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_conflicts_us(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_CONFLICTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands
/// would have to give way.
///
/// Equation: a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it has; gives
/// way by the least t with A u + share t >= b.
/// Taken for granted: heights and falls unrounded; the margin counts; demands that stand firm are kept and not
/// blamed.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
///     out.
///   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
///     at least 0 %, at most 100 %; may be left out.
///   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
///     most 10000 m; may be left out.
///   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
///     at most 3048 mm; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
///     at most 100000 m; may be left out.
///   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
///     left out.
///   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_CONFLICTS_KEPT: whether all can be kept; 0 no, 1 yes.
///   - OVS_FINISH_CONFLICTS_COMPLETE: whether these are all the sets; at most ten are told; 0 no, 1 yes.
///   - OVS_FINISH_CONFLICTS_SETS: the sets.
///   - OVS_FINISH_CONFLICTS_ALONE: what mends everything alone.
///   - OVS_FINISH_CONFLICTS_TOGETHER: what mends everything with the least weighted sum.
///   - OVS_FINISH_CONFLICTS_SAID: all of it in sentences.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"margin":"1/4 in","demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/4 in/ft",null],"elevation":[null,null,"99.7 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_conflicts_si(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_CONFLICTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_conflicts_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_conflicts_us_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_CONFLICTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_conflicts_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_conflicts_si_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_CONFLICTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_SWEEP: &Operation = row(OPERATIONS, "finish_sweep");

/// The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
///
/// Equation: as for the finish of least concrete, unrounded, for each value.
/// Taken for granted: old slab plane over each triangle; the margin counts.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `demand`, `demand_len`: the name of the demand.
/// - `values_length_in` (in): the value of a thickness or a tolerance; at least 0 in, at most 120 in; may be left
///   out; NaN for an empty cell, may be null.
/// - `values_fall_in_per_ft` (in/ft): the value of a fall; at least 0 in/ft, at most 12 in/ft; may be left out; NaN
///   for an empty cell, may be null.
/// - `values_elevation_ft` (ft): the value of a height; at least -32808.3989501 ft, at most 32808.3989501 ft; may
///   be left out; NaN for an empty cell, may be null.
/// - `values_rows`: the values it takes in turn: how many rows, each a value of the demand, in the column that goes
///   with it; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
///     out.
///   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
///     line; at least 0 in/ft, at most 12 in/ft; may be left out.
///   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
///     ft, at most 32808.3989501 ft; may be left out.
///   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
///     at most 120 in; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
///     -328083.989501 ft, at most 328083.989501 ft; may be left out.
///   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
///     328083.989501 ft; may be left out.
///   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
///     out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_SWEEP_CURVE: the concrete for each value.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_DEMAND_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least","fall"],"kind":["least_thickness","least_fall"],"thickness":["3 in",null],"fall":[null,"1/8 in/ft"],"edge":[null,"front"]},"demand":"least","values":{"length":["1 1/2 in","2 in","2 1/2 in","3 in","3 1/2 in","4 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_sweep_us(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    demand: *const c_char,
    demand_len: c_int,
    values_length_in: *const f64,
    values_fall_in_per_ft: *const f64,
    values_elevation_ft: *const f64,
    values_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (6, Given::Text(TextIn::new("demand", demand, demand_len))),
        (7, Given::Table(values_rows, &[(0, Input::Numbers(values_length_in)), (1, Input::Numbers(values_fall_in_per_ft)), (2, Input::Numbers(values_elevation_ft))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SWEEP, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
///
/// Equation: as for the finish of least concrete, unrounded, for each value.
/// Taken for granted: old slab plane over each triangle; the margin counts.
///
/// - `survey`: the old slab.
/// - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
///   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
/// - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
/// - `demand`, `demand_len`: the name of the demand.
/// - `values_length_mm` (mm): the value of a thickness or a tolerance; at least 0 mm, at most 3048 mm; may be left
///   out; NaN for an empty cell, may be null.
/// - `values_fall_percent` (%): the value of a fall; at least 0 %, at most 100 %; may be left out; NaN for an empty
///   cell, may be null.
/// - `values_elevation_m` (m): the value of a height; at least -10000 m, at most 10000 m; may be left out; NaN for
///   an empty cell, may be null.
/// - `values_rows`: the values it takes in turn: how many rows, each a value of the demand, in the column that goes
///   with it; at least 1.
/// - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `demands`: what it is called in the answer: side door; required.
///   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
///     out.
///   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
///     at least 0 %, at most 100 %; may be left out.
///   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
///     most 10000 m; may be left out.
///   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
///     at most 3048 mm; may be left out.
///   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
///   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
///     at most 100000 m; may be left out.
///   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
///     left out.
///   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
///   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
///     may be left out.
///   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
///     may be left out.
///   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
///   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
///     usual; more than 0 1; may be left out.
///   - `zones`: corners of the zones that demands name; may be left out.
///   - `zone` of `zones`: name of the zone; required.
///   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
///   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
///     out.
///   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
///     because reading, texture and strike-off.
///   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_SWEEP_CURVE: the concrete for each value.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_DEMAND_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
/// contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
/// simplex method, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least","fall"],"kind":["least_thickness","least_fall"],"thickness":["3 in",null],"fall":[null,"1/8 in/ft"],"edge":[null,"front"]},"demand":"least","values":{"length":["1 1/2 in","2 in","2 1/2 in","3 in","3 1/2 in","4 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_sweep_si(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    demand: *const c_char,
    demand_len: c_int,
    values_length_mm: *const f64,
    values_fall_percent: *const f64,
    values_elevation_m: *const f64,
    values_rows: c_int,
    layout: *const ovs_finish,
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
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (6, Given::Text(TextIn::new("demand", demand, demand_len))),
        (7, Given::Table(values_rows, &[(0, Input::Numbers(values_length_mm)), (1, Input::Numbers(values_fall_percent)), (2, Input::Numbers(values_elevation_m))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SWEEP, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_sweep_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_sweep_us_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    demand: *const c_char,
    demand_len: c_int,
    values_length_in: *const f64,
    values_fall_in_per_ft: *const f64,
    values_elevation_ft: *const f64,
    values_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (6, Given::Text(TextIn::new("demand", demand, demand_len))),
        (7, Given::Table(values_rows, &[(0, Input::Numbers(values_length_in)), (1, Input::Numbers(values_fall_in_per_ft)), (2, Input::Numbers(values_elevation_ft))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SWEEP, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_sweep_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_sweep_si_why(
    survey: *const ovs_survey,
    demands_kind: *const c_int,
    demands_rows: c_int,
    demand: *const c_char,
    demand_len: c_int,
    values_length_mm: *const f64,
    values_fall_percent: *const f64,
    values_elevation_m: *const f64,
    values_rows: c_int,
    layout: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Table(demands_rows, &[(1, Input::Whole(demands_kind))])),
        (6, Given::Text(TextIn::new("demand", demand, demand_len))),
        (7, Given::Table(values_rows, &[(0, Input::Numbers(values_length_mm)), (1, Input::Numbers(values_fall_percent)), (2, Input::Numbers(values_elevation_m))])),
        (3, Given::Record(Passed::new("layout", layout))),
    ];
    let request = Request::new(FINISH_SWEEP, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS: &Operation = row(OPERATIONS, "thickness");

/// The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
///
/// Equation: net = integral of (finish - old slab); fill = its positive part; high = its negative part; mean = net
/// / area.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `thinner_than` (in): the area thinner than this is told; at least -3937.00787402 in, at most 3937.00787402
///     in; may be left out.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_AREA (ft2): plan area.
///   - OVS_THICKNESS_NET (yd3): fill less high spots.
///   - OVS_THICKNESS_FILL (yd3): volume where the finish is above the old slab.
///   - OVS_THICKNESS_HIGH (yd3): volume of old slab above the finish.
///   - OVS_THICKNESS_MEAN (in): net volume over area.
///   - OVS_THICKNESS_LEAST (in): least thickness.
///   - OVS_THICKNESS_LEAST_X (ft): where it is, from the left.
///   - OVS_THICKNESS_LEAST_Y (ft): where it is, from the front.
///   - OVS_THICKNESS_LEAST_MEASURED (in): least thickness between the shots.
///   - OVS_THICKNESS_GREATEST (in): greatest thickness.
///   - OVS_THICKNESS_GREATEST_X (ft): where it is, from the left.
///   - OVS_THICKNESS_GREATEST_Y (ft): where it is, from the front.
///   - OVS_THICKNESS_THINNER (ft2): area thinner than the depth asked about.
///   - OVS_THICKNESS_LEAST_FACET: the facet where it is thinnest.
///   - OVS_THICKNESS_GREATEST_FACET: the facet where it is thickest.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN,
/// OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(THICKNESS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
///
/// Equation: net = integral of (finish - old slab); fill = its positive part; high = its negative part; mean = net
/// / area.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `thinner_than` (mm): the area thinner than this is told; at least -100000 mm, at most 100000 mm; may be left
///     out.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_AREA (m2): plan area.
///   - OVS_THICKNESS_NET (m3): fill less high spots.
///   - OVS_THICKNESS_FILL (m3): volume where the finish is above the old slab.
///   - OVS_THICKNESS_HIGH (m3): volume of old slab above the finish.
///   - OVS_THICKNESS_MEAN (mm): net volume over area.
///   - OVS_THICKNESS_LEAST (mm): least thickness.
///   - OVS_THICKNESS_LEAST_X (m): where it is, from the left.
///   - OVS_THICKNESS_LEAST_Y (m): where it is, from the front.
///   - OVS_THICKNESS_LEAST_MEASURED (mm): least thickness between the shots.
///   - OVS_THICKNESS_GREATEST (mm): greatest thickness.
///   - OVS_THICKNESS_GREATEST_X (m): where it is, from the left.
///   - OVS_THICKNESS_GREATEST_Y (m): where it is, from the front.
///   - OVS_THICKNESS_THINNER (m2): area thinner than the depth asked about.
///   - OVS_THICKNESS_LEAST_FACET: the facet where it is thinnest.
///   - OVS_THICKNESS_GREATEST_FACET: the facet where it is thickest.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN,
/// OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(THICKNESS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(THICKNESS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(THICKNESS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SECOND_LOOK: &Operation = row(OPERATIONS, "second_look");

/// The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
///
/// Equation: thickness = finish - shot; drop without a shot = least thickness over the others - least thickness;
/// saved = drop area.
/// Taken for granted: the least thickness decides the height of the finish; shots within 1/8 in of it decide
/// together.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SECOND_LOOK_GOVERNING: the shots that fix the grade.
///   - OVS_SECOND_LOOK_DROP_WITHOUT_ALL (in): how far the finish could drop without all of them.
///
/// Refuses with OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
/// leave-one-out prediction (any), kriging, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_second_look_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(SECOND_LOOK, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
///
/// Equation: thickness = finish - shot; drop without a shot = least thickness over the others - least thickness;
/// saved = drop area.
/// Taken for granted: the least thickness decides the height of the finish; shots within 1/8 in of it decide
/// together.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SECOND_LOOK_GOVERNING: the shots that fix the grade.
///   - OVS_SECOND_LOOK_DROP_WITHOUT_ALL (mm): how far the finish could drop without all of them.
///
/// Refuses with OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
/// leave-one-out prediction (any), kriging, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_second_look_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(SECOND_LOOK, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_second_look_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_second_look_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(SECOND_LOOK, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_second_look_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_second_look_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(SECOND_LOOK, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_STANDING_WATER: &Operation = row(OPERATIONS, "finish_standing_water");

/// The ponds of a finish, and which ponds of the old slab it cures.
///
/// Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
/// surface.
/// Taken for granted: edges and drains are the same for the old slab and the finish; a drain takes water at the
/// height of the surface.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `shallowest` (in): ponds shallower than this are left out; at least 0 in, at most 12 in; where left out 1/16
///     in, because a rod hardly tells less.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_STANDING_WATER_COUNT: how many ponds the finish has.
///   - OVS_FINISH_STANDING_WATER_AREA (ft2): area of the finish under water.
///   - OVS_FINISH_STANDING_WATER_VOLUME (ft3): water on the finish.
///   - OVS_FINISH_STANDING_WATER_DEPTH (in): greatest depth on the finish; none without a pond.
///   - OVS_FINISH_STANDING_WATER_LEFT_OUT: how many ponds of the finish were shallower.
///   - OVS_FINISH_STANDING_WATER_CURED: how many ponds of the old slab are cured.
///   - OVS_FINISH_STANDING_WATER_LEFT: how many ponds of the old slab are not.
///   - OVS_FINISH_STANDING_WATER_PONDS: the ponds of the finish.
///   - OVS_FINISH_STANDING_WATER_OLD_PONDS: the ponds of the old slab.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.5 ft"}]},"edges":[{"edge":"right","state":"walled"},{"edge":"back","state":"walled"},{"edge":"left","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_standing_water_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_STANDING_WATER, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The ponds of a finish, and which ponds of the old slab it cures.
///
/// Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
/// surface.
/// Taken for granted: edges and drains are the same for the old slab and the finish; a drain takes water at the
/// height of the surface.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `shallowest` (mm): ponds shallower than this are left out; at least 0 mm, at most 304.8 mm; where left out
///     1/16 in, because a rod hardly tells less.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_STANDING_WATER_COUNT: how many ponds the finish has.
///   - OVS_FINISH_STANDING_WATER_AREA (m2): area of the finish under water.
///   - OVS_FINISH_STANDING_WATER_VOLUME (m3): water on the finish.
///   - OVS_FINISH_STANDING_WATER_DEPTH (mm): greatest depth on the finish; none without a pond.
///   - OVS_FINISH_STANDING_WATER_LEFT_OUT: how many ponds of the finish were shallower.
///   - OVS_FINISH_STANDING_WATER_CURED: how many ponds of the old slab are cured.
///   - OVS_FINISH_STANDING_WATER_LEFT: how many ponds of the old slab are not.
///   - OVS_FINISH_STANDING_WATER_PONDS: the ponds of the finish.
///   - OVS_FINISH_STANDING_WATER_OLD_PONDS: the ponds of the old slab.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.5 ft"}]},"edges":[{"edge":"right","state":"walled"},{"edge":"back","state":"walled"},{"edge":"left","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_standing_water_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_STANDING_WATER, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_standing_water_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_standing_water_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_STANDING_WATER, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_standing_water_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_standing_water_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_STANDING_WATER, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static GRIND_HIGH_SPOTS: &Operation = row(OPERATIONS, "grind_high_spots");

/// The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
///
/// Equation: new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab).
/// Taken for granted: grinding makes silica dust: wet or with extraction, and a mask; where a zone ends a step is
/// left.
///
/// - `survey`: the old slab.
/// - `finish`: the surface it is ground to, or a finish above it.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `below` (in): it is ground to so much under that surface; at least 0 in, at most 120 in; where left out 0
///     in, because it is ground to the surface itself.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_GRIND_HIGH_SPOTS_SURVEY: the old slab after it.
///   - OVS_GRIND_HIGH_SPOTS_AREA (ft2): area ground or filled.
///   - OVS_GRIND_HIGH_SPOTS_VOLUME (ft3): volume taken off or filled.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST_X (ft): where it is, from the left.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST_Y (ft): where it is, from the front.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"3 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_grind_high_spots_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(GRIND_HIGH_SPOTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
///
/// Equation: new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab).
/// Taken for granted: grinding makes silica dust: wet or with extraction, and a mask; where a zone ends a step is
/// left.
///
/// - `survey`: the old slab.
/// - `finish`: the surface it is ground to, or a finish above it.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `below` (mm): it is ground to so much under that surface; at least 0 mm, at most 3048 mm; where left out 0
///     in, because it is ground to the surface itself.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_GRIND_HIGH_SPOTS_SURVEY: the old slab after it.
///   - OVS_GRIND_HIGH_SPOTS_AREA (m2): area ground or filled.
///   - OVS_GRIND_HIGH_SPOTS_VOLUME (m3): volume taken off or filled.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST_X (m): where it is, from the left.
///   - OVS_GRIND_HIGH_SPOTS_DEEPEST_Y (m): where it is, from the front.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"3 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_grind_high_spots_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(GRIND_HIGH_SPOTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_grind_high_spots_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_grind_high_spots_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(GRIND_HIGH_SPOTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_grind_high_spots_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_grind_high_spots_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(GRIND_HIGH_SPOTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FILL_LOW_SPOTS: &Operation = row(OPERATIONS, "fill_low_spots");

/// The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
///
/// Equation: new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab).
/// Taken for granted: the fill is struck off to the plane; where a zone ends a step is left.
///
/// - `survey`: the old slab.
/// - `finish`: the surface it is filled to, or a finish above it.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `below` (in): it is filled to so much under that surface; at least 0 in, at most 120 in; where left out 0
///     in, because it is filled to the surface itself.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FILL_LOW_SPOTS_SURVEY: the old slab after it.
///   - OVS_FILL_LOW_SPOTS_AREA (ft2): area ground or filled.
///   - OVS_FILL_LOW_SPOTS_VOLUME (ft3): volume taken off or filled.
///   - OVS_FILL_LOW_SPOTS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
///   - OVS_FILL_LOW_SPOTS_DEEPEST_X (ft): where it is, from the left.
///   - OVS_FILL_LOW_SPOTS_DEEPEST_Y (ft): where it is, from the front.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_REGION_OUTSIDE,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_low_spots_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_LOW_SPOTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
///
/// Equation: new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab).
/// Taken for granted: the fill is struck off to the plane; where a zone ends a step is left.
///
/// - `survey`: the old slab.
/// - `finish`: the surface it is filled to, or a finish above it.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `below` (mm): it is filled to so much under that surface; at least 0 mm, at most 3048 mm; where left out 0
///     in, because it is filled to the surface itself.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FILL_LOW_SPOTS_SURVEY: the old slab after it.
///   - OVS_FILL_LOW_SPOTS_AREA (m2): area ground or filled.
///   - OVS_FILL_LOW_SPOTS_VOLUME (m3): volume taken off or filled.
///   - OVS_FILL_LOW_SPOTS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
///   - OVS_FILL_LOW_SPOTS_DEEPEST_X (m): where it is, from the left.
///   - OVS_FILL_LOW_SPOTS_DEEPEST_Y (m): where it is, from the front.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_REGION_OUTSIDE,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_low_spots_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
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
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_LOW_SPOTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_fill_low_spots_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_low_spots_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_LOW_SPOTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_fill_low_spots_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_low_spots_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_LOW_SPOTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FILL_PONDS: &Operation = row(OPERATIONS, "fill_ponds");

/// The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
///
/// Equation: new slab = level of the water where water stands.
/// Taken for granted: outer edges are open and holes are walled where nothing is stated; the fill is struck off
/// level.
///
/// - `survey`: the old slab.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `shallowest` (in): ponds shallower than this are left; at least 0 in, at most 12 in; where left out 1/16 in,
///     because a rod hardly tells less.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FILL_PONDS_SURVEY: the old slab after it.
///   - OVS_FILL_PONDS_AREA (ft2): area ground or filled.
///   - OVS_FILL_PONDS_VOLUME (ft3): volume taken off or filled.
///   - OVS_FILL_PONDS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
///   - OVS_FILL_PONDS_DEEPEST_X (ft): where it is, from the left.
///   - OVS_FILL_PONDS_DEEPEST_Y (ft): where it is, from the front.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_REGION_OUTSIDE, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edges":[{"edge":"front","state":"walled"},{"edge":"right","state":"walled"},{"edge":"left","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_ponds_us(
    survey: *const ovs_survey,
    zone: *const ovs_outline,
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
        (4, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_PONDS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
///
/// Equation: new slab = level of the water where water stands.
/// Taken for granted: outer edges are open and holes are walled where nothing is stated; the fill is struck off
/// level.
///
/// - `survey`: the old slab.
/// - `zone`: only within this outline; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `shallowest` (mm): ponds shallower than this are left; at least 0 mm, at most 304.8 mm; where left out 1/16
///     in, because a rod hardly tells less.
///   - `zone`: only within this outline; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FILL_PONDS_SURVEY: the old slab after it.
///   - OVS_FILL_PONDS_AREA (m2): area ground or filled.
///   - OVS_FILL_PONDS_VOLUME (m3): volume taken off or filled.
///   - OVS_FILL_PONDS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
///   - OVS_FILL_PONDS_DEEPEST_X (m): where it is, from the left.
///   - OVS_FILL_PONDS_DEEPEST_Y (m): where it is, from the front.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_REGION_OUTSIDE, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edges":[{"edge":"front","state":"walled"},{"edge":"right","state":"walled"},{"edge":"left","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_ponds_si(
    survey: *const ovs_survey,
    zone: *const ovs_outline,
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
        (4, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_PONDS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_fill_ponds_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_ponds_us_why(
    survey: *const ovs_survey,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (4, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_PONDS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_fill_ponds_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_fill_ponds_si_why(
    survey: *const ovs_survey,
    zone: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (4, Given::Record(Passed::new("zone", zone))),
    ];
    let request = Request::new(FILL_PONDS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_AREAS: &Operation = row(OPERATIONS, "thickness_areas");

/// Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
///
/// Equation: thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old slab -
/// depth|.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet; what is exactly at the depth
/// counts as thicker.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `depth_in` (in): the depth; at least -3937.00787402 in, at most 3937.00787402 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `side`: which side of the depth; 0 thinner, 1 thicker; where left out thinner, because thin places are what
///     is looked for.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_AREAS_AREA (ft2): area of all parts.
///   - OVS_THICKNESS_AREAS_VOLUME (yd3): missing to the depth, or over it, in all parts.
///   - OVS_THICKNESS_AREAS_PARTS: the connected parts.
///   - OVS_THICKNESS_AREAS_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"depth":"5 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_areas_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    depth_in: f64,
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
        (2, Given::Number(depth_in)),
    ];
    let request = Request::new(THICKNESS_AREAS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
///
/// Equation: thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old slab -
/// depth|.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet; what is exactly at the depth
/// counts as thicker.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `depth_mm` (mm): the depth; at least -100000 mm, at most 100000 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `side`: which side of the depth; 0 thinner, 1 thicker; where left out thinner, because thin places are what
///     is looked for.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_AREAS_AREA (m2): area of all parts.
///   - OVS_THICKNESS_AREAS_VOLUME (m3): missing to the depth, or over it, in all parts.
///   - OVS_THICKNESS_AREAS_PARTS: the connected parts.
///   - OVS_THICKNESS_AREAS_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"depth":"5 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_areas_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    depth_mm: f64,
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
        (2, Given::Number(depth_mm)),
    ];
    let request = Request::new(THICKNESS_AREAS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_areas_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_areas_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    depth_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Number(depth_in)),
    ];
    let request = Request::new(THICKNESS_AREAS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_areas_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_areas_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    depth_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Number(depth_mm)),
    ];
    let request = Request::new(THICKNESS_AREAS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_CONTOURS: &Operation = row(OPERATIONS, "thickness_contours");

/// Lines of equal thickness.
///
/// Equation: finish - old slab = level, straight over each triangle.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet; where the thickness only
/// touches a level there is no line.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
///   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
///     be left out.
///   - `counted_from` (in): a level that the steps are counted from; at least -3937.00787402 in, at most
///     3937.00787402 in; where left out 0 in, because whole steps of the interval.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_CONTOURS_LINES: the lines.
///   - OVS_THICKNESS_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_NULL_POINTER,
/// OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_contours_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Lines of equal thickness.
///
/// Equation: finish - old slab = level, straight over each triangle.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet; where the thickness only
/// touches a level there is no line.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
///   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
///     out.
///   - `counted_from` (mm): a level that the steps are counted from; at least -100000 mm, at most 100000 mm; where
///     left out 0 in, because whole steps of the interval.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_CONTOURS_LINES: the lines.
///   - OVS_THICKNESS_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_NULL_POINTER,
/// OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_contours_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_contours_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_contours_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_CONTOURS: &Operation = row(OPERATIONS, "survey_contours");

/// Lines of equal height on the old slab.
///
/// Equation: old slab = level, straight over each triangle.
/// Taken for granted: old slab plane over each triangle; where it only touches a level there is no line.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft;
///     required.
///   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
///     be left out.
///   - `counted_from` (ft): a level that the steps are counted from; at least -32808.3989501 ft, at most
///     32808.3989501 ft; where left out 0 ft, because whole steps from the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_CONTOURS_LINES: the lines.
///   - OVS_SURVEY_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER,
/// OVS_LEVELS_UNSORTED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_contours_us(
    survey: *const ovs_survey,
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
    ];
    let request = Request::new(SURVEY_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Lines of equal height on the old slab.
///
/// Equation: old slab = level, straight over each triangle.
/// Taken for granted: old slab plane over each triangle; where it only touches a level there is no line.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
///   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
///     out.
///   - `counted_from` (m): a level that the steps are counted from; at least -10000 m, at most 10000 m; where left
///     out 0 ft, because whole steps from the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_CONTOURS_LINES: the lines.
///   - OVS_SURVEY_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER,
/// OVS_LEVELS_UNSORTED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_contours_si(
    survey: *const ovs_survey,
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
    ];
    let request = Request::new(SURVEY_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_contours_us_why(
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(SURVEY_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_contours_si_why(
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(SURVEY_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FINISH_CONTOURS: &Operation = row(OPERATIONS, "finish_contours");

/// Lines of equal height on the finish, over the work.
///
/// Equation: finish = level, straight over each facet.
/// Taken for granted: finish plane over each facet; where it only touches a level there is no line.
///
/// - `survey`: the old slab, whose outline bounds the lines.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft;
///     required.
///   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
///     be left out.
///   - `counted_from` (ft): a level that the steps are counted from; at least -32808.3989501 ft, at most
///     32808.3989501 ft; where left out 0 ft, because whole steps from the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_CONTOURS_LINES: the lines.
///   - OVS_FINISH_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER, OVS_LEVELS_UNSORTED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.9 ft"}]},"interval":"1 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_contours_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Lines of equal height on the finish, over the work.
///
/// Equation: finish = level, straight over each facet.
/// Taken for granted: finish plane over each facet; where it only touches a level there is no line.
///
/// - `survey`: the old slab, whose outline bounds the lines.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
///   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
///     out.
///   - `counted_from` (m): a level that the steps are counted from; at least -10000 m, at most 10000 m; where left
///     out 0 ft, because whole steps from the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FINISH_CONTOURS_LINES: the lines.
///   - OVS_FINISH_CONTOURS_POINTS: their places.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER, OVS_LEVELS_UNSORTED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.9 ft"}]},"interval":"1 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_contours_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_finish_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_contours_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_CONTOURS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_finish_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_finish_contours_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(FINISH_CONTOURS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_BANDS: &Operation = row(OPERATIONS, "thickness_bands");

/// The work in bands of thickness between successive levels, as polygons with area and volume.
///
/// Equation: band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the whole.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
///   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
///     be left out.
///   - `counted_from` (in): a level that the steps are counted from; at least -3937.00787402 in, at most
///     3937.00787402 in; where left out 0 in, because whole steps of the interval.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_BANDS_BANDS: the bands.
///   - OVS_THICKNESS_BANDS_PARTS: their connected parts.
///   - OVS_THICKNESS_BANDS_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_bands_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_BANDS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The work in bands of thickness between successive levels, as polygons with area and volume.
///
/// Equation: band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the whole.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the levels, rising; may be left out.
///   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
///   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
///     out.
///   - `counted_from` (mm): a level that the steps are counted from; at least -100000 mm, at most 100000 mm; where
///     left out 0 in, because whole steps of the interval.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_BANDS_BANDS: the bands.
///   - OVS_THICKNESS_BANDS_PARTS: their connected parts.
///   - OVS_THICKNESS_BANDS_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_bands_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_BANDS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_bands_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_bands_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_BANDS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_bands_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_bands_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_BANDS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_HISTOGRAM: &Operation = row(OPERATIONS, "thickness_histogram");

/// How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of
/// the area lie.
///
/// Equation: area of a bin = area thinner than its upper edge - area thinner than its lower edge, each exact.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the edges of the bins, rising; may be left out.
///   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
///   - `interval` (in): the width of a bin, in place of a list of edges; more than 0 in, at most 3937.00787402 in;
///     may be left out.
///   - `counted_from` (in): an edge that the widths are counted from; at least -3937.00787402 in, at most
///     3937.00787402 in; where left out 0 in, because whole steps of the width.
///   - `shares`: shares of the area whose depths are told; where left out [{"share": "0 %"}, {"share": "25 %"},
///     {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest.
///   - `share` of `shares` (%): share of the area; at least 0 %, at most 100 %; required.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_HISTOGRAM_AREA (ft2): the whole area.
///   - OVS_THICKNESS_HISTOGRAM_VOLUME (yd3): the whole volume, high spots taken off.
///   - OVS_THICKNESS_HISTOGRAM_BINS: the bins.
///   - OVS_THICKNESS_HISTOGRAM_QUANTILES: the depths of the shares.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_histogram_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_HISTOGRAM, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of
/// the area lie.
///
/// Equation: area of a bin = area thinner than its upper edge - area thinner than its lower edge, each exact.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `levels`: the edges of the bins, rising; may be left out.
///   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
///   - `interval` (mm): the width of a bin, in place of a list of edges; more than 0 mm, at most 100000 mm; may be
///     left out.
///   - `counted_from` (mm): an edge that the widths are counted from; at least -100000 mm, at most 100000 mm; where
///     left out 0 in, because whole steps of the width.
///   - `shares`: shares of the area whose depths are told; where left out [{"share": "0 %"}, {"share": "25 %"},
///     {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest.
///   - `share` of `shares` (%): share of the area; at least 0 %, at most 100 %; required.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_HISTOGRAM_AREA (m2): the whole area.
///   - OVS_THICKNESS_HISTOGRAM_VOLUME (m3): the whole volume, high spots taken off.
///   - OVS_THICKNESS_HISTOGRAM_BINS: the bins.
///   - OVS_THICKNESS_HISTOGRAM_QUANTILES: the depths of the shares.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_histogram_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_HISTOGRAM, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_histogram_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_histogram_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_HISTOGRAM, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_histogram_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_histogram_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(THICKNESS_HISTOGRAM, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THICKNESS_ZONES: &Operation = row(OPERATIONS, "thickness_zones");

/// The thickness over zones of the work, each with its own figures, and over what no zone covers.
///
/// Equation: as for the thickness, over the part of the work in each zone; zones may overlap, each counts all of
/// its own.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `zones_x_ft` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `zones_y_ft` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `zones_rows`: the corners of the zones: how many rows, each a corner of a zone, in order; the corners of one
///   zone stand together; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `zone` of `zones`: name of the zone; required.
///   - `thinner_than` (in): the area thinner than this is told; at least -3937.00787402 in, at most 3937.00787402
///     in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_ZONES_FIGURES: the figures of each zone.
///   - OVS_THICKNESS_ZONES_REST: the figures of the work outside all zones.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_REPEATED,
/// OVS_OUTLINE_TOO_FEW, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in","zones":{"zone":["bench","bench","bench","bench","lift","lift","lift","lift"],"x":["0 ft","20 ft","20 ft","0 ft","5 ft","15 ft","15 ft","5 ft"],"y":["26 ft","26 ft","32 ft","32 ft","10 ft","10 ft","22 ft","22 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_zones_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zones_x_ft: *const f64,
    zones_y_ft: *const f64,
    zones_rows: c_int,
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
        (2, Given::Table(zones_rows, &[(1, Input::Numbers(zones_x_ft)), (2, Input::Numbers(zones_y_ft))])),
    ];
    let request = Request::new(THICKNESS_ZONES, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The thickness over zones of the work, each with its own figures, and over what no zone covers.
///
/// Equation: as for the thickness, over the part of the work in each zone; zones may overlap, each counts all of
/// its own.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `zones_x_m` (m): from the left; at least -100000 m, at most 100000 m.
/// - `zones_y_m` (m): from the front; at least -100000 m, at most 100000 m.
/// - `zones_rows`: the corners of the zones: how many rows, each a corner of a zone, in order; the corners of one
///   zone stand together; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `zone` of `zones`: name of the zone; required.
///   - `thinner_than` (mm): the area thinner than this is told; at least -100000 mm, at most 100000 mm; may be left
///     out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THICKNESS_ZONES_FIGURES: the figures of each zone.
///   - OVS_THICKNESS_ZONES_REST: the figures of the work outside all zones.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_REPEATED,
/// OVS_OUTLINE_TOO_FEW, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in","zones":{"zone":["bench","bench","bench","bench","lift","lift","lift","lift"],"x":["0 ft","20 ft","20 ft","0 ft","5 ft","15 ft","15 ft","5 ft"],"y":["26 ft","26 ft","32 ft","32 ft","10 ft","10 ft","22 ft","22 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_zones_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zones_x_m: *const f64,
    zones_y_m: *const f64,
    zones_rows: c_int,
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
        (2, Given::Table(zones_rows, &[(1, Input::Numbers(zones_x_m)), (2, Input::Numbers(zones_y_m))])),
    ];
    let request = Request::new(THICKNESS_ZONES, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thickness_zones_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_zones_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zones_x_ft: *const f64,
    zones_y_ft: *const f64,
    zones_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(zones_rows, &[(1, Input::Numbers(zones_x_ft)), (2, Input::Numbers(zones_y_ft))])),
    ];
    let request = Request::new(THICKNESS_ZONES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thickness_zones_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thickness_zones_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    zones_x_m: *const f64,
    zones_y_m: *const f64,
    zones_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Table(zones_rows, &[(1, Input::Numbers(zones_x_m)), (2, Input::Numbers(zones_y_m))])),
    ];
    let request = Request::new(THICKNESS_ZONES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THIN_ZONES: &Operation = row(OPERATIONS, "thin_zones");

/// The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes
/// and costs.
///
/// Equation: deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind = integral
/// of minimum less overlay over the zone; break out = integral of new thickness less overlay, from 0 up, over the
/// box; overlay = thickness, from 0 up; cost = area x price + concrete x price.
/// Taken for granted: bonding and breaking out take the zone's box within the work, for a change of bond comes only
/// along a straight full-depth joint; zones are told beyond the shots too.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `minimum_in` (in): least thickness of an unbonded overlay; more than 0 in, at most 120 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `bonded_minimum` (in): least thickness of a bonded part, at most the unbonded one; more than 0 in, at most
///     120 in; may be left out.
///   - `grind_at_most` (in): how deep the old slab may be ground; at least 0 in, at most 120 in; may be left out.
///   - `new_thickness` (in): thickness of the concrete where the old slab is broken out, down from the finish; more
///     than 0 in, at most 120 in; may be left out.
///   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
///   - `bonding_price` (/ft2): price of bonding: milling, cleaning and slurry together; at least 0 /ft2, at most
///     929030.4 /ft2; may be left out.
///   - `grinding_price` (/ft2): price of grinding; at least 0 /ft2, at most 929030.4 /ft2; may be left out.
///   - `breaking_out_price` (/ft2): price of breaking out, hauling with it; at least 0 /ft2, at most 929030.4 /ft2;
///     may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THIN_ZONES_AREA (ft2): area of all that is thinner.
///   - OVS_THIN_ZONES_LACKING (yd3): volume all of it lacks to the minimum.
///   - OVS_THIN_ZONES_LEFT_OUT (ft2): area of zones under a square millimetre, not listed.
///   - OVS_THIN_ZONES_RAISE_ALL (in): rise of the whole finish that leaves no zone; none where there is none.
///   - OVS_THIN_ZONES_RAISE_ALL_CONCRETE (yd3): concrete it takes.
///   - OVS_THIN_ZONES_RAISE_ALL_COST (money): what it costs.
///   - OVS_THIN_ZONES_ZONE_BY_ZONE_COST (money): all zones, each in the cheapest way without raising.
///   - OVS_THIN_ZONES_SAID: all of it in a few sentences.
///   - OVS_THIN_ZONES_ZONES: the zones.
///   - OVS_THIN_ZONES_CHOICES: the choices about each.
///   - OVS_THIN_ZONES_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_UNIT_MISSING, OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: the least thickness of an unbonded overlay: the project's specification.
/// Basis: a change between bonded and unbonded comes only along a full-depth joint: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.56 ft"},"minimum":"3 in","bonded_minimum":"1 1/2 in","grind_at_most":"1/2 in","new_thickness":"6 in","concrete_price":"162 /yd3","bonding_price":"5.5 /ft2","grinding_price":"4 /ft2","breaking_out_price":"9 /ft2"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_zones_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    minimum_in: f64,
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
        (2, Given::Number(minimum_in)),
    ];
    let request = Request::new(THIN_ZONES, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes
/// and costs.
///
/// Equation: deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind = integral
/// of minimum less overlay over the zone; break out = integral of new thickness less overlay, from 0 up, over the
/// box; overlay = thickness, from 0 up; cost = area x price + concrete x price.
/// Taken for granted: bonding and breaking out take the zone's box within the work, for a change of bond comes only
/// along a straight full-depth joint; zones are told beyond the shots too.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `minimum_mm` (mm): least thickness of an unbonded overlay; more than 0 mm, at most 3048 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `bonded_minimum` (mm): least thickness of a bonded part, at most the unbonded one; more than 0 mm, at most
///     3048 mm; may be left out.
///   - `grind_at_most` (mm): how deep the old slab may be ground; at least 0 mm, at most 3048 mm; may be left out.
///   - `new_thickness` (mm): thickness of the concrete where the old slab is broken out, down from the finish; more
///     than 0 mm, at most 3048 mm; may be left out.
///   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
///   - `bonding_price` (/m2): price of bonding: milling, cleaning and slurry together; at least 0 /m2, at most
///     10000000 /m2; may be left out.
///   - `grinding_price` (/m2): price of grinding; at least 0 /m2, at most 10000000 /m2; may be left out.
///   - `breaking_out_price` (/m2): price of breaking out, hauling with it; at least 0 /m2, at most 10000000 /m2;
///     may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THIN_ZONES_AREA (m2): area of all that is thinner.
///   - OVS_THIN_ZONES_LACKING (m3): volume all of it lacks to the minimum.
///   - OVS_THIN_ZONES_LEFT_OUT (m2): area of zones under a square millimetre, not listed.
///   - OVS_THIN_ZONES_RAISE_ALL (mm): rise of the whole finish that leaves no zone; none where there is none.
///   - OVS_THIN_ZONES_RAISE_ALL_CONCRETE (m3): concrete it takes.
///   - OVS_THIN_ZONES_RAISE_ALL_COST (money): what it costs.
///   - OVS_THIN_ZONES_ZONE_BY_ZONE_COST (money): all zones, each in the cheapest way without raising.
///   - OVS_THIN_ZONES_SAID: all of it in a few sentences.
///   - OVS_THIN_ZONES_ZONES: the zones.
///   - OVS_THIN_ZONES_CHOICES: the choices about each.
///   - OVS_THIN_ZONES_CORNERS: the corners of their polygons.
///
/// Refuses with OVS_UNIT_MISSING, OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: the least thickness of an unbonded overlay: the project's specification.
/// Basis: a change between bonded and unbonded comes only along a full-depth joint: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.56 ft"},"minimum":"3 in","bonded_minimum":"1 1/2 in","grind_at_most":"1/2 in","new_thickness":"6 in","concrete_price":"162 /yd3","bonding_price":"5.5 /ft2","grinding_price":"4 /ft2","breaking_out_price":"9 /ft2"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_zones_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    minimum_mm: f64,
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
        (2, Given::Number(minimum_mm)),
    ];
    let request = Request::new(THIN_ZONES, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thin_zones_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_zones_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    minimum_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Number(minimum_in)),
    ];
    let request = Request::new(THIN_ZONES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thin_zones_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_zones_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    minimum_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (2, Given::Number(minimum_mm)),
    ];
    let request = Request::new(THIN_ZONES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SECTION: &Operation = row(OPERATIONS, "section");

/// Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
///
/// Equation: net = integral along the line of (finish - old slab); fill = its positive part; high = its negative
/// part.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `line_x_ft` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `line_y_ft` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `line_rows`: the places of the line, two or more: how many rows, each a place of the line, in order; at least
///   1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (ft): also tell the heights at whole steps of this from the start; at least 0.00328083989501 ft,
///     at most 3280.83989501 ft; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SECTION_LENGTH (ft): length of the line.
///   - OVS_SECTION_COVERED (ft): length over the work.
///   - OVS_SECTION_NET (ft2): area between old slab and finish, high spots taken off.
///   - OVS_SECTION_FILL (ft2): area where the finish is above the old slab.
///   - OVS_SECTION_HIGH (ft2): area of old slab above the finish.
///   - OVS_SECTION_MEAN (in): net area over covered length.
///   - OVS_SECTION_LEAST (in): least thickness along the line.
///   - OVS_SECTION_LEAST_DISTANCE (ft): where it is, along the line.
///   - OVS_SECTION_LEAST_X (ft): where it is, from the left.
///   - OVS_SECTION_LEAST_Y (ft): where it is, from the front.
///   - OVS_SECTION_GREATEST (in): greatest thickness along the line.
///   - OVS_SECTION_GREATEST_DISTANCE (ft): where it is, along the line.
///   - OVS_SECTION_GREATEST_X (ft): where it is, from the left.
///   - OVS_SECTION_GREATEST_Y (ft): where it is, from the front.
///   - OVS_SECTION_STATIONS: the stations.
///   - OVS_SECTION_SAMPLES: the heights at whole steps of the spacing; none without one.
///   - OVS_SECTION_GAPS: the stretches outside the work.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT,
/// OVS_LINE_OUTSIDE, OVS_TOO_MANY_STATIONS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"line":{"x":["2 ft","2 ft","22 ft"],"y":["1 ft","30 ft","30 ft"]},"spacing":"4 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_section_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_ft: *const f64,
    line_y_ft: *const f64,
    line_rows: c_int,
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
    ];
    let request = Request::new(SECTION, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
///
/// Equation: net = integral along the line of (finish - old slab); fill = its positive part; high = its negative
/// part.
/// Taken for granted: old slab plane over each triangle, finish plane over each facet.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `line_x_m` (m): from the left; at least -100000 m, at most 100000 m.
/// - `line_y_m` (m): from the front; at least -100000 m, at most 100000 m.
/// - `line_rows`: the places of the line, two or more: how many rows, each a place of the line, in order; at least
///   1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (m): also tell the heights at whole steps of this from the start; at least 0.001 m, at most 1000
///     m; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SECTION_LENGTH (m): length of the line.
///   - OVS_SECTION_COVERED (m): length over the work.
///   - OVS_SECTION_NET (m2): area between old slab and finish, high spots taken off.
///   - OVS_SECTION_FILL (m2): area where the finish is above the old slab.
///   - OVS_SECTION_HIGH (m2): area of old slab above the finish.
///   - OVS_SECTION_MEAN (mm): net area over covered length.
///   - OVS_SECTION_LEAST (mm): least thickness along the line.
///   - OVS_SECTION_LEAST_DISTANCE (m): where it is, along the line.
///   - OVS_SECTION_LEAST_X (m): where it is, from the left.
///   - OVS_SECTION_LEAST_Y (m): where it is, from the front.
///   - OVS_SECTION_GREATEST (mm): greatest thickness along the line.
///   - OVS_SECTION_GREATEST_DISTANCE (m): where it is, along the line.
///   - OVS_SECTION_GREATEST_X (m): where it is, from the left.
///   - OVS_SECTION_GREATEST_Y (m): where it is, from the front.
///   - OVS_SECTION_STATIONS: the stations.
///   - OVS_SECTION_SAMPLES: the heights at whole steps of the spacing; none without one.
///   - OVS_SECTION_GAPS: the stretches outside the work.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT,
/// OVS_LINE_OUTSIDE, OVS_TOO_MANY_STATIONS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"line":{"x":["2 ft","2 ft","22 ft"],"y":["1 ft","30 ft","30 ft"]},"spacing":"4 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_section_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_m: *const f64,
    line_y_m: *const f64,
    line_rows: c_int,
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
    ];
    let request = Request::new(SECTION, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_section_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_section_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_ft: *const f64,
    line_y_ft: *const f64,
    line_rows: c_int,
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
    ];
    let request = Request::new(SECTION, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_section_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_section_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    line_x_m: *const f64,
    line_y_m: *const f64,
    line_rows: c_int,
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
    ];
    let request = Request::new(SECTION, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static DRAIN_PLACE: &Operation = row(OPERATIONS, "drain_place");

/// Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the
/// least concrete, with a bound that no place goes under.
///
/// Equation: z = perimeter - drop x (distance from the run's line / distance of the drain from it); concrete =
/// integral of z - old slab, least over perimeter, drop and place; gap = (concrete - bound) / concrete.
/// Taken for granted: every corner of the outline is seen from the drain, at least 1/2 in inside the line of every
/// run; the search and its bound are over unrounded finishes, and rounding comes after; ground beyond the shots
/// does not bind.
///
/// - `survey`: the old slab with its outline.
/// - `x_from_ft` (ft): the drain is no farther left than this, from the left; at least -328083.989501 ft, at most
///   328083.989501 ft.
/// - `x_to_ft` (ft): and no farther right; the same as x_from leaves one line of places; at least -328083.989501
///   ft, at most 328083.989501 ft.
/// - `y_from_ft` (ft): no farther to the front, from the front; at least -328083.989501 ft, at most 328083.989501
///   ft.
/// - `y_to_ft` (ft): and no farther back; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `least_in` (in): least thickness; at least 0 in, at most 120 in.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; where left out 3/8 in, because
///     reading, texture and strike-off.
///   - `fall` (in/ft): least fall to the drain from every corner of the perimeter; at least 0 in/ft, at most 12
///     in/ft; where left out 1/8 in/ft, because the least for a well-finished floor.
///   - `greatest_fall` (in/ft): greatest fall, in whatever direction; at least 0 in/ft, at most 12 in/ft; may be
///     left out.
///   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
///   - `close` (%): the search ends when the concrete is above the bound by no more than this share of it; at least
///     0.0001 %, at most 100 %; where left out 0.01 %, because less than a shovel to a truck.
///   - `most_places`: the search ends too when so many places were tried; 5000 if not given; from 1 to 1000000; may
///     be left out.
///   - `round` (in): the heights of perimeter and drain are rounded to whole steps of this that keep the demands;
///     at least 0 in, at most 12 in; may be left out.
///   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
///     most 32808.3989501 ft; where left out 0 ft, because the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_DRAIN_PLACE_FINISH: the finish there, rounded if that was asked.
///   - OVS_DRAIN_PLACE_X (ft): middle of the drain, from the left.
///   - OVS_DRAIN_PLACE_Y (ft): middle of the drain, from the front.
///   - OVS_DRAIN_PLACE_PERIMETER (ft): height of that finish all along the outer edges.
///   - OVS_DRAIN_PLACE_DRAIN_ELEVATION (ft): its height at the drain.
///   - OVS_DRAIN_PLACE_CONCRETE (yd3): concrete of the unrounded finish, margin with it.
///   - OVS_DRAIN_PLACE_BOUND (yd3): no place in the rectangle takes less.
///   - OVS_DRAIN_PLACE_GAP (1): how far the concrete may be above the best, as a share of it.
///   - OVS_DRAIN_PLACE_PLACES: places at which the finish was solved.
///   - OVS_DRAIN_PLACE_ENDED: why the search ended: as close as asked, or the cap on places; 0 close, 1 cap.
///   - OVS_DRAIN_PLACE_BUILT_CONCRETE (yd3): concrete of the finish as rounded.
///   - OVS_DRAIN_PLACE_COST (money): what that costs; none without a price.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER,
/// OVS_DRAIN_UNPLACED, OVS_DRAIN_NOWHERE.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x_from":"4 ft","x_to":"16 ft","y_from":"6 ft","y_to":"20 ft","least":"3 in","fall":"1/8 in/ft","concrete_price":"162 /yd3","close":"0.1 %","round":"1/8 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drain_place_us(
    survey: *const ovs_survey,
    x_from_ft: f64,
    x_to_ft: f64,
    y_from_ft: f64,
    y_to_ft: f64,
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
        (1, Given::Number(x_from_ft)),
        (2, Given::Number(x_to_ft)),
        (3, Given::Number(y_from_ft)),
        (4, Given::Number(y_to_ft)),
        (5, Given::Number(least_in)),
    ];
    let request = Request::new(DRAIN_PLACE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the
/// least concrete, with a bound that no place goes under.
///
/// Equation: z = perimeter - drop x (distance from the run's line / distance of the drain from it); concrete =
/// integral of z - old slab, least over perimeter, drop and place; gap = (concrete - bound) / concrete.
/// Taken for granted: every corner of the outline is seen from the drain, at least 1/2 in inside the line of every
/// run; the search and its bound are over unrounded finishes, and rounding comes after; ground beyond the shots
/// does not bind.
///
/// - `survey`: the old slab with its outline.
/// - `x_from_m` (m): the drain is no farther left than this, from the left; at least -100000 m, at most 100000 m.
/// - `x_to_m` (m): and no farther right; the same as x_from leaves one line of places; at least -100000 m, at most
///   100000 m.
/// - `y_from_m` (m): no farther to the front, from the front; at least -100000 m, at most 100000 m.
/// - `y_to_m` (m): and no farther back; at least -100000 m, at most 100000 m.
/// - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in, because
///     reading, texture and strike-off.
///   - `fall` (%): least fall to the drain from every corner of the perimeter; at least 0 %, at most 100 %; where
///     left out 1/8 in/ft, because the least for a well-finished floor.
///   - `greatest_fall` (%): greatest fall, in whatever direction; at least 0 %, at most 100 %; may be left out.
///   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
///   - `close` (%): the search ends when the concrete is above the bound by no more than this share of it; at least
///     0.0001 %, at most 100 %; where left out 0.01 %, because less than a shovel to a truck.
///   - `most_places`: the search ends too when so many places were tried; 5000 if not given; from 1 to 1000000; may
///     be left out.
///   - `round` (mm): the heights of perimeter and drain are rounded to whole steps of this that keep the demands;
///     at least 0 mm, at most 304.8 mm; may be left out.
///   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
///     m; where left out 0 ft, because the job datum.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_DRAIN_PLACE_FINISH: the finish there, rounded if that was asked.
///   - OVS_DRAIN_PLACE_X (m): middle of the drain, from the left.
///   - OVS_DRAIN_PLACE_Y (m): middle of the drain, from the front.
///   - OVS_DRAIN_PLACE_PERIMETER (m): height of that finish all along the outer edges.
///   - OVS_DRAIN_PLACE_DRAIN_ELEVATION (m): its height at the drain.
///   - OVS_DRAIN_PLACE_CONCRETE (m3): concrete of the unrounded finish, margin with it.
///   - OVS_DRAIN_PLACE_BOUND (m3): no place in the rectangle takes less.
///   - OVS_DRAIN_PLACE_GAP (1): how far the concrete may be above the best, as a share of it.
///   - OVS_DRAIN_PLACE_PLACES: places at which the finish was solved.
///   - OVS_DRAIN_PLACE_ENDED: why the search ended: as close as asked, or the cap on places; 0 close, 1 cap.
///   - OVS_DRAIN_PLACE_BUILT_CONCRETE (m3): concrete of the finish as rounded.
///   - OVS_DRAIN_PLACE_COST (money): what that costs; none without a price.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER,
/// OVS_DRAIN_UNPLACED, OVS_DRAIN_NOWHERE.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x_from":"4 ft","x_to":"16 ft","y_from":"6 ft","y_to":"20 ft","least":"3 in","fall":"1/8 in/ft","concrete_price":"162 /yd3","close":"0.1 %","round":"1/8 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drain_place_si(
    survey: *const ovs_survey,
    x_from_m: f64,
    x_to_m: f64,
    y_from_m: f64,
    y_to_m: f64,
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
        (1, Given::Number(x_from_m)),
        (2, Given::Number(x_to_m)),
        (3, Given::Number(y_from_m)),
        (4, Given::Number(y_to_m)),
        (5, Given::Number(least_mm)),
    ];
    let request = Request::new(DRAIN_PLACE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_drain_place_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drain_place_us_why(
    survey: *const ovs_survey,
    x_from_ft: f64,
    x_to_ft: f64,
    y_from_ft: f64,
    y_to_ft: f64,
    least_in: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_from_ft)),
        (2, Given::Number(x_to_ft)),
        (3, Given::Number(y_from_ft)),
        (4, Given::Number(y_to_ft)),
        (5, Given::Number(least_in)),
    ];
    let request = Request::new(DRAIN_PLACE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_drain_place_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drain_place_si_why(
    survey: *const ovs_survey,
    x_from_m: f64,
    x_to_m: f64,
    y_from_m: f64,
    y_to_m: f64,
    least_mm: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Number(x_from_m)),
        (2, Given::Number(x_to_m)),
        (3, Given::Number(y_from_m)),
        (4, Given::Number(y_to_m)),
        (5, Given::Number(least_mm)),
    ];
    let request = Request::new(DRAIN_PLACE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static DRAINAGE: &Operation = row(OPERATIONS, "drainage");

/// How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.
///
/// Equation: water runs straight down each facet, along a valley where both sides lean to it and along the foot of
/// a wall; flow = coefficient x rain x area.
/// Taken for granted: facets are plane; water from a corner or a ridge takes the steepest way, of several as steep
/// that over the first facet; exactly the least fall is enough.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `surface`: how the surface is finished and used, which sets the least fall; 0 trowelled, 1 broomed, 2
///     washed, 3 outdoors; where left out trowelled, because the least of the minimums.
///   - `least_fall` (in/ft): the least fall, in place of that of the surface; at least 0 in/ft, at most 12 in/ft;
///     may be left out.
///   - `wave_height` (in): height of a wave that strike-off may leave, crest to trough; at least 0 in, at most 12
///     in; where left out 3/16 in, because what hand screeding can leave over 4 ft.
///   - `wave_length` (ft): length of that wave, crest to crest; more than 0 ft, at most 100 ft; where left out 4
///     ft, because what hand screeding can leave 3/16 in over.
///   - `starts`: places from which water is followed; may be left out.
///   - `x` of `starts` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `y` of `starts` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `rain` (in/h): how fast rain comes down; at least 0 in/h, at most 39.3700787402 in/h; may be left out.
///   - `coefficient` (%): the share of the rain that runs off; at least 0 %, at most 100 %; where left out 95 %,
///     because the most that textbooks give for concrete, on the safe side.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_DRAINAGE_JUDGED: whether every facet falls enough, the right way, to an outlet; 0 pass, 1 fail, 2
///     confirm locally.
///   - OVS_DRAINAGE_LEAST (in/ft): the least fall that is wanted.
///   - OVS_DRAINAGE_LEAST_FOUND (in/ft): the least fall of any facet.
///   - OVS_DRAINAGE_DRAINED (ft2): area whose water leaves.
///   - OVS_DRAINAGE_HELD (ft2): area whose water finds no outlet.
///   - OVS_DRAINAGE_PUDDLES: whether the stated wave can hold water; 0 drains, 1 can stay.
///   - OVS_DRAINAGE_PUDDLE (in): the deepest that it holds on any facet.
///   - OVS_DRAINAGE_FACETS: the facets.
///   - OVS_DRAINAGE_CATCHMENTS: what drains to each end.
///   - OVS_DRAINAGE_CATCHMENT_CORNERS: the corners of the polygons of the catchments.
///   - OVS_DRAINAGE_FAULTS: the parts that drain badly.
///   - OVS_DRAINAGE_FAULT_CORNERS: the corners of their polygons.
///   - OVS_DRAINAGE_PATHS: ways of water.
///   - OVS_DRAINAGE_PATH_PLACES: the places on them.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_OFF_WORK, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
/// from memory: confirm.
/// Basis: at least 1/4 in per ft where a floor is washed down: common practice, no source.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.9 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.8 ft"},{"x":"0 ft","y":"24 ft","elevation":"100.2 ft"}]},"edges":{"edge":["front"],"state":["drained"]},"surface":"broomed","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drainage_us(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(DRAINAGE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How a finish drains: each facet against the least fall, what drains where, the ways of water, what drains badly.
///
/// Equation: water runs straight down each facet, along a valley where both sides lean to it and along the foot of
/// a wall; flow = coefficient x rain x area.
/// Taken for granted: facets are plane; water from a corner or a ridge takes the steepest way, of several as steep
/// that over the first facet; exactly the least fall is enough.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edges`: edges that are walled, open or drained; may be left out.
///   - `edge` of `edges`: name of the edge, or of a hole; required.
///   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
///     open, 1 walled, 2 drained; required.
///   - `drains`: drains in the floor; may be left out.
///   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `name` of `drains`: name of the drain; may be left out.
///   - `surface`: how the surface is finished and used, which sets the least fall; 0 trowelled, 1 broomed, 2
///     washed, 3 outdoors; where left out trowelled, because the least of the minimums.
///   - `least_fall` (%): the least fall, in place of that of the surface; at least 0 %, at most 100 %; may be left
///     out.
///   - `wave_height` (mm): height of a wave that strike-off may leave, crest to trough; at least 0 mm, at most
///     304.8 mm; where left out 3/16 in, because what hand screeding can leave over 4 ft.
///   - `wave_length` (m): length of that wave, crest to crest; more than 0 m, at most 30.48 m; where left out 4 ft,
///     because what hand screeding can leave 3/16 in over.
///   - `starts`: places from which water is followed; may be left out.
///   - `x` of `starts` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `starts` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `rain` (mm/h): how fast rain comes down; at least 0 mm/h, at most 1000 mm/h; may be left out.
///   - `coefficient` (%): the share of the rain that runs off; at least 0 %, at most 100 %; where left out 95 %,
///     because the most that textbooks give for concrete, on the safe side.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_DRAINAGE_JUDGED: whether every facet falls enough, the right way, to an outlet; 0 pass, 1 fail, 2
///     confirm locally.
///   - OVS_DRAINAGE_LEAST (%): the least fall that is wanted.
///   - OVS_DRAINAGE_LEAST_FOUND (%): the least fall of any facet.
///   - OVS_DRAINAGE_DRAINED (m2): area whose water leaves.
///   - OVS_DRAINAGE_HELD (m2): area whose water finds no outlet.
///   - OVS_DRAINAGE_PUDDLES: whether the stated wave can hold water; 0 drains, 1 can stay.
///   - OVS_DRAINAGE_PUDDLE (mm): the deepest that it holds on any facet.
///   - OVS_DRAINAGE_FACETS: the facets.
///   - OVS_DRAINAGE_CATCHMENTS: what drains to each end.
///   - OVS_DRAINAGE_CATCHMENT_CORNERS: the corners of the polygons of the catchments.
///   - OVS_DRAINAGE_FAULTS: the parts that drain badly.
///   - OVS_DRAINAGE_FAULT_CORNERS: the corners of their polygons.
///   - OVS_DRAINAGE_PATHS: ways of water.
///   - OVS_DRAINAGE_PATH_PLACES: the places on them.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_OFF_WORK, OVS_DRAIN_OUTSIDE.
/// Basis: plane and solid geometry: derived.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
/// from memory: confirm.
/// Basis: at least 1/4 in per ft where a floor is washed down: common practice, no source.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: the least fall that was given: the project's specification.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.9 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.8 ft"},{"x":"0 ft","y":"24 ft","elevation":"100.2 ft"}]},"edges":{"edge":["front"],"state":["drained"]},"surface":"broomed","rain":"3 in/h"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drainage_si(
    survey: *const ovs_survey,
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
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(DRAINAGE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_drainage_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drainage_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(DRAINAGE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_drainage_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_drainage_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
    ];
    let request = Request::new(DRAINAGE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static PUDDLE_FALL: &Operation = row(OPERATIONS, "puddle_fall");

/// The least fall at which a wave of the surface holds no water.
///
/// Equation: fall = pi wave_height / wave_length, the steepest rise of the wave.
/// Taken for granted: the wave is a sine, its height taken from crest to trough, its length from crest to crest,
/// along the fall.
///
/// - `wave_height_in` (in): height of the wave, crest to trough; at least 0 in, at most 12 in.
/// - `wave_length_ft` (ft): length of the wave, crest to crest; more than 0 ft, at most 100 ft.
/// - `fall_in_per_ft` (in/ft), out: the least fall that drains it.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_puddle_fall_us(0.1875, 4, ...) gives fall_in_per_ft = 0.147262.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_us(
    wave_height_in: f64,
    wave_length_ft: f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_in_per_ft)];
    unsafe { scalar::one(PUDDLE_FALL, System::Us, [wave_height_in, wave_length_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The least fall at which a wave of the surface holds no water.
///
/// Equation: fall = pi wave_height / wave_length, the steepest rise of the wave.
/// Taken for granted: the wave is a sine, its height taken from crest to trough, its length from crest to crest,
/// along the fall.
///
/// - `wave_height_mm` (mm): height of the wave, crest to trough; at least 0 mm, at most 304.8 mm.
/// - `wave_length_m` (m): length of the wave, crest to crest; more than 0 m, at most 30.48 m.
/// - `fall_percent` (%), out: the least fall that drains it.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_puddle_fall_si(4.7625, 1.2192, ...) gives fall_percent = 1.22718.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_si(
    wave_height_mm: f64,
    wave_length_m: f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(fall_percent)];
    unsafe { scalar::one(PUDDLE_FALL, System::Si, [wave_height_mm, wave_length_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_puddle_fall_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_us_array(
    wave_height_in: *const f64,
    wave_length_ft: *const f64,
    fall_in_per_ft: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wave_height_in), Input::Numbers(wave_length_ft)], results: [Output::Numbers(fall_in_per_ft)], notes, n, bad_index };
    unsafe { scalar::array(PUDDLE_FALL, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_puddle_fall_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_si_array(
    wave_height_mm: *const f64,
    wave_length_m: *const f64,
    fall_percent: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wave_height_mm), Input::Numbers(wave_length_m)], results: [Output::Numbers(fall_percent)], notes, n, bad_index };
    unsafe { scalar::array(PUDDLE_FALL, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_puddle_fall_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_us_why(
    wave_height_in: f64,
    wave_length_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PUDDLE_FALL, System::Us, [wave_height_in, wave_length_ft], text) }
}

/// Why ovs_puddle_fall_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_fall_si_why(
    wave_height_mm: f64,
    wave_length_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PUDDLE_FALL, System::Si, [wave_height_mm, wave_length_m], text) }
}

static PUDDLE_DEPTH: &Operation = row(OPERATIONS, "puddle_depth");

/// How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.
///
/// Equation: depth = d (sin t - t cos t), cos t = fall L / (pi d), none where that is 1 or more; greatest d = fall
/// L / pi.
/// Taken for granted: the wave is a sine of height d from crest to trough and length L from crest to crest, along
/// the fall; water stands to the rim.
///
/// - `wave_height_in` (in): height of the wave, crest to trough; at least 0 in, at most 12 in.
/// - `wave_length_ft` (ft): length of the wave, crest to crest; more than 0 ft, at most 100 ft.
/// - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
/// - `depth_in` (in), out: greatest depth of the water.
/// - `greatest_wave_in` (in), out: the greatest wave of that length that drains.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_puddle_depth_us(0.25, 4, 0.125, ...) gives depth_in = 0.0526284, greatest_wave_in = 0.159155.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_us(
    wave_height_in: f64,
    wave_length_ft: f64,
    fall_in_per_ft: f64,
    depth_in: *mut f64,
    greatest_wave_in: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(depth_in), Output::Numbers(greatest_wave_in)];
    unsafe { scalar::one(PUDDLE_DEPTH, System::Us, [wave_height_in, wave_length_ft, fall_in_per_ft], results, notes, Message::new(msg, msg_len)) }
}

/// How deep a wave of the surface holds water on a fall, and the greatest wave that drains there.
///
/// Equation: depth = d (sin t - t cos t), cos t = fall L / (pi d), none where that is 1 or more; greatest d = fall
/// L / pi.
/// Taken for granted: the wave is a sine of height d from crest to trough and length L from crest to crest, along
/// the fall; water stands to the rim.
///
/// - `wave_height_mm` (mm): height of the wave, crest to trough; at least 0 mm, at most 304.8 mm.
/// - `wave_length_m` (m): length of the wave, crest to crest; more than 0 m, at most 30.48 m.
/// - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
/// - `depth_mm` (mm), out: greatest depth of the water.
/// - `greatest_wave_mm` (mm), out: the greatest wave of that length that drains.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: plane and solid geometry: derived.
/// Basis: hand screeding can leave waves of 3/16 in over 4 ft: common practice, no source.
/// Since 0.1.0.
/// Example: ovs_puddle_depth_si(6.35, 1.2192, 1.04167, ...) gives depth_mm = 1.33676, greatest_wave_mm = 4.04254.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_si(
    wave_height_mm: f64,
    wave_length_m: f64,
    fall_percent: f64,
    depth_mm: *mut f64,
    greatest_wave_mm: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(depth_mm), Output::Numbers(greatest_wave_mm)];
    unsafe { scalar::one(PUDDLE_DEPTH, System::Si, [wave_height_mm, wave_length_m, fall_percent], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_puddle_depth_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_us_array(
    wave_height_in: *const f64,
    wave_length_ft: *const f64,
    fall_in_per_ft: *const f64,
    depth_in: *mut f64,
    greatest_wave_in: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wave_height_in), Input::Numbers(wave_length_ft), Input::Numbers(fall_in_per_ft)], results: [Output::Numbers(depth_in), Output::Numbers(greatest_wave_in)], notes, n, bad_index };
    unsafe { scalar::array(PUDDLE_DEPTH, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_puddle_depth_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_si_array(
    wave_height_mm: *const f64,
    wave_length_m: *const f64,
    fall_percent: *const f64,
    depth_mm: *mut f64,
    greatest_wave_mm: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(wave_height_mm), Input::Numbers(wave_length_m), Input::Numbers(fall_percent)], results: [Output::Numbers(depth_mm), Output::Numbers(greatest_wave_mm)], notes, n, bad_index };
    unsafe { scalar::array(PUDDLE_DEPTH, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_puddle_depth_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_us_why(
    wave_height_in: f64,
    wave_length_ft: f64,
    fall_in_per_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PUDDLE_DEPTH, System::Us, [wave_height_in, wave_length_ft, fall_in_per_ft], text) }
}

/// Why ovs_puddle_depth_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_puddle_depth_si_why(
    wave_height_mm: f64,
    wave_length_m: f64,
    fall_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(PUDDLE_DEPTH, System::Si, [wave_height_mm, wave_length_m, fall_percent], text) }
}

static RUNOFF: &Operation = row(OPERATIONS, "runoff");

/// The rain that runs off an area, in a volume for each time.
///
/// Equation: flow = coefficient x rain x area (rational method).
/// Taken for granted: rain falls as fast all over and long enough that all of the area runs.
///
/// - `area_ft2` (ft2): area that rain falls on; at least 0 ft2, at most 1076391041.67 ft2.
/// - `rain_in_per_h` (in/h): how fast rain comes down; at least 0 in/h, at most 39.3700787402 in/h.
/// - `coefficient_percent` (%): the share that runs off; at least 0 %, at most 100 %.
/// - `flow_gal_per_min` (gal/min), out: water that runs off.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_runoff_us(500, 4, 90, ...) gives flow_gal_per_min = 18.7013.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_us(
    area_ft2: f64,
    rain_in_per_h: f64,
    coefficient_percent: f64,
    flow_gal_per_min: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(flow_gal_per_min)];
    unsafe { scalar::one(RUNOFF, System::Us, [area_ft2, rain_in_per_h, coefficient_percent], results, notes, Message::new(msg, msg_len)) }
}

/// The rain that runs off an area, in a volume for each time.
///
/// Equation: flow = coefficient x rain x area (rational method).
/// Taken for granted: rain falls as fast all over and long enough that all of the area runs.
///
/// - `area_m2` (m2): area that rain falls on; at least 0 m2, at most 100000000 m2.
/// - `rain_mm_per_h` (mm/h): how fast rain comes down; at least 0 mm/h, at most 1000 mm/h.
/// - `coefficient_percent` (%): the share that runs off; at least 0 %, at most 100 %.
/// - `flow_l_per_s` (L/s), out: water that runs off.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
/// Basis: runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling 1889)
/// (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm.
/// Since 0.1.0.
/// Example: ovs_runoff_si(46.4515, 101.6, 90, ...) gives flow_l_per_s = 1.17987.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_si(
    area_m2: f64,
    rain_mm_per_h: f64,
    coefficient_percent: f64,
    flow_l_per_s: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(flow_l_per_s)];
    unsafe { scalar::one(RUNOFF, System::Si, [area_m2, rain_mm_per_h, coefficient_percent], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_runoff_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_us_array(
    area_ft2: *const f64,
    rain_in_per_h: *const f64,
    coefficient_percent: *const f64,
    flow_gal_per_min: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_ft2), Input::Numbers(rain_in_per_h), Input::Numbers(coefficient_percent)], results: [Output::Numbers(flow_gal_per_min)], notes, n, bad_index };
    unsafe { scalar::array(RUNOFF, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_runoff_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_si_array(
    area_m2: *const f64,
    rain_mm_per_h: *const f64,
    coefficient_percent: *const f64,
    flow_l_per_s: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(area_m2), Input::Numbers(rain_mm_per_h), Input::Numbers(coefficient_percent)], results: [Output::Numbers(flow_l_per_s)], notes, n, bad_index };
    unsafe { scalar::array(RUNOFF, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_runoff_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_us_why(
    area_ft2: f64,
    rain_in_per_h: f64,
    coefficient_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(RUNOFF, System::Us, [area_ft2, rain_in_per_h, coefficient_percent], text) }
}

/// Why ovs_runoff_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_runoff_si_why(
    area_m2: f64,
    rain_mm_per_h: f64,
    coefficient_percent: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(RUNOFF, System::Si, [area_m2, rain_mm_per_h, coefficient_percent], text) }
}
