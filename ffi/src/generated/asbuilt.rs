//! The operations of `asbuilt`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Input, Message, Notes, Numbers, Passed, Request, TextOut, record, row};
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{ovs_finish, ovs_outline, ovs_survey};

/// The result `ff` (1): flatness; none for a perfect line.
pub const OVS_FLATNESS_LINE_FF: c_int = 0;

/// The result `fl` (1): levelness; none for fewer than 12 readings and for a level line.
pub const OVS_FLATNESS_LINE_FL: c_int = 1;

/// The result `length` (ft or m): length of the line.
pub const OVS_FLATNESS_LINE_LENGTH: c_int = 2;

/// The result `q_count`: how many bends.
pub const OVS_FLATNESS_LINE_Q_COUNT: c_int = 3;

/// The result `q_mean` (in or mm): their mean.
pub const OVS_FLATNESS_LINE_Q_MEAN: c_int = 4;

/// The result `q_deviation` (in or mm): their standard deviation.
pub const OVS_FLATNESS_LINE_Q_DEVIATION: c_int = 5;

/// The result `z_count`: how many rises over ten spacings.
pub const OVS_FLATNESS_LINE_Z_COUNT: c_int = 6;

/// The result `z_mean` (in or mm): their mean.
pub const OVS_FLATNESS_LINE_Z_MEAN: c_int = 7;

/// The result `z_deviation` (in or mm): their standard deviation; none of fewer than two.
pub const OVS_FLATNESS_LINE_Z_DEVIATION: c_int = 8;

/// The result `q`: the bends.
pub const OVS_FLATNESS_LINE_Q: c_int = 9;

/// The column `q` of `q` (in or mm): the bend.
pub const OVS_FLATNESS_LINE_Q_Q: c_int = 0;

/// The result `z`: the rises over ten spacings.
pub const OVS_FLATNESS_LINE_Z: c_int = 10;

/// The column `z` of `z` (in or mm): the rise.
pub const OVS_FLATNESS_LINE_Z_Z: c_int = 0;

/// How many results there are.
pub const OVS_FLATNESS_LINE_RESULTS: c_int = 11;

/// The word `4.57 in`.
pub const OVS_FLATNESS_LINE_FACTOR_4_57_IN: c_int = 0;

/// The word `115.8 mm`.
pub const OVS_FLATNESS_LINE_FACTOR_115_8_MM: c_int = 1;

/// The result `ff` (1): flatness over all.
pub const OVS_FLATNESS_FF: c_int = 0;

/// The result `fl` (1): levelness over all.
pub const OVS_FLATNESS_FL: c_int = 1;

/// The result `asked_ff` (1): flatness asked over all.
pub const OVS_FLATNESS_ASKED_FF: c_int = 2;

/// The result `asked_fl` (1): levelness asked over all.
pub const OVS_FLATNESS_ASKED_FL: c_int = 3;

/// The result `local_ff` (1): flatness asked of every section.
pub const OVS_FLATNESS_LOCAL_FF: c_int = 4;

/// The result `local_fl` (1): levelness asked of every section.
pub const OVS_FLATNESS_LOCAL_FL: c_int = 5;

/// The result `ff_verdict`: flatness over all against what is asked.
pub const OVS_FLATNESS_FF_VERDICT: c_int = 6;

/// The result `fl_verdict`: levelness over all against what is asked.
pub const OVS_FLATNESS_FL_VERDICT: c_int = 7;

/// The result `lines`: the lines.
pub const OVS_FLATNESS_LINES: c_int = 8;

/// The column `line` of `lines`: its name.
pub const OVS_FLATNESS_LINES_LINE: c_int = 0;

/// The column `section` of `lines`: the part of the floor it lies in.
pub const OVS_FLATNESS_LINES_SECTION: c_int = 1;

/// The column `readings` of `lines`: how many readings.
pub const OVS_FLATNESS_LINES_READINGS: c_int = 2;

/// The column `q_count` of `lines`: how many bends count.
pub const OVS_FLATNESS_LINES_Q_COUNT: c_int = 3;

/// The column `z_count` of `lines`: how many rises over ten spacings.
pub const OVS_FLATNESS_LINES_Z_COUNT: c_int = 4;

/// The column `ff` of `lines` (1): flatness; none for a perfect line.
pub const OVS_FLATNESS_LINES_FF: c_int = 5;

/// The column `fl` of `lines` (1): levelness; none of few readings, and on a floor that falls.
pub const OVS_FLATNESS_LINES_FL: c_int = 6;

/// The column `left_out` of `lines`: bends left out because the plan bends there.
pub const OVS_FLATNESS_LINES_LEFT_OUT: c_int = 7;

/// The result `of_sections`: the parts of the floor.
pub const OVS_FLATNESS_OF_SECTIONS: c_int = 9;

/// The column `section` of `of_sections`: its name; none where the floor is one part.
pub const OVS_FLATNESS_OF_SECTIONS_SECTION: c_int = 0;

/// The column `area` of `of_sections` (ft2 or m2): its area.
pub const OVS_FLATNESS_OF_SECTIONS_AREA: c_int = 1;

/// The column `lines` of `of_sections`: how many lines.
pub const OVS_FLATNESS_OF_SECTIONS_LINES: c_int = 2;

/// The column `z_count` of `of_sections`: how many rises over ten spacings.
pub const OVS_FLATNESS_OF_SECTIONS_Z_COUNT: c_int = 3;

/// The column `z_least` of `of_sections`: the fewest of them the standard judges by.
pub const OVS_FLATNESS_OF_SECTIONS_Z_LEAST: c_int = 4;

/// The column `ff` of `of_sections` (1): flatness.
pub const OVS_FLATNESS_OF_SECTIONS_FF: c_int = 5;

/// The column `fl` of `of_sections` (1): levelness.
pub const OVS_FLATNESS_OF_SECTIONS_FL: c_int = 6;

/// The column `ff_verdict` of `of_sections`: flatness against 3/5 of what is asked over all.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT: c_int = 7;

/// The column `fl_verdict` of `of_sections`: levelness against 3/5 of what is asked over all.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT: c_int = 8;

/// How many results there are.
pub const OVS_FLATNESS_RESULTS: c_int = 10;

/// The word `4.57 in`.
pub const OVS_FLATNESS_FACTOR_4_57_IN: c_int = 0;

/// The word `115.8 mm`.
pub const OVS_FLATNESS_FACTOR_115_8_MM: c_int = 1;

/// The word `conventional`.
pub const OVS_FLATNESS_FLATNESS_CLASS_CONVENTIONAL: c_int = 0;

/// The word `moderately flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_MODERATELY_FLAT: c_int = 1;

/// The word `flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_FLAT: c_int = 2;

/// The word `very flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_VERY_FLAT: c_int = 3;

/// The word `super flat`.
pub const OVS_FLATNESS_FLATNESS_CLASS_SUPER_FLAT: c_int = 4;

/// The word `no`.
pub const OVS_FLATNESS_FALLS_NO: c_int = 0;

/// The word `yes`.
pub const OVS_FLATNESS_FALLS_YES: c_int = 1;

/// The word `meets`.
pub const OVS_FLATNESS_FF_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_FF_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_FF_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_FF_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_FL_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_FL_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_FL_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_FL_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The word `meets`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The result `number` (1): the number for all.
pub const OVS_FLATNESS_COMBINED_NUMBER: c_int = 0;

/// How many results there are.
pub const OVS_FLATNESS_COMBINED_RESULTS: c_int = 1;

/// The result `gap` (in or mm): the greatest gap.
pub const OVS_STRAIGHTEDGE_GAP: c_int = 0;

/// The result `gap_at` (ft or m): where it is.
pub const OVS_STRAIGHTEDGE_GAP_AT: c_int = 1;

/// The result `rest_1` (ft or m): first place the straightedge rests there.
pub const OVS_STRAIGHTEDGE_REST_1: c_int = 2;

/// The result `rest_2` (ft or m): second place it rests there.
pub const OVS_STRAIGHTEDGE_REST_2: c_int = 3;

/// The result `count`: how often it was laid down.
pub const OVS_STRAIGHTEDGE_COUNT: c_int = 4;

/// The result `about_ff` (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in.
pub const OVS_STRAIGHTEDGE_ABOUT_FF: c_int = 5;

/// The result `within_most` (%): share of gaps within what nine in ten must keep.
pub const OVS_STRAIGHTEDGE_WITHIN_MOST: c_int = 6;

/// The result `within_all` (%): share of gaps within what all must keep.
pub const OVS_STRAIGHTEDGE_WITHIN_ALL: c_int = 7;

/// The result `verdict`: whether the class is kept.
pub const OVS_STRAIGHTEDGE_VERDICT: c_int = 8;

/// The result `placements`: the straightedge laid down from each reading on.
pub const OVS_STRAIGHTEDGE_PLACEMENTS: c_int = 9;

/// The column `start` of `placements` (ft or m): where its end is.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_START: c_int = 0;

/// The column `gap` of `placements` (in or mm): greatest gap under it.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_GAP: c_int = 1;

/// The column `at` of `placements` (ft or m): place of that gap.
pub const OVS_STRAIGHTEDGE_PLACEMENTS_AT: c_int = 2;

/// How many results there are.
pub const OVS_STRAIGHTEDGE_RESULTS: c_int = 10;

/// The word `conventional`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_CONVENTIONAL: c_int = 0;

/// The word `moderately flat`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_MODERATELY_FLAT: c_int = 1;

/// The word `flat`.
pub const OVS_STRAIGHTEDGE_FLATNESS_CLASS_FLAT: c_int = 2;

/// The word `meets`.
pub const OVS_STRAIGHTEDGE_VERDICT_MEETS: c_int = 0;

/// The word `short`.
pub const OVS_STRAIGHTEDGE_VERDICT_SHORT: c_int = 1;

/// The word `too few to judge`.
pub const OVS_STRAIGHTEDGE_VERDICT_TOO_FEW_TO_JUDGE: c_int = 2;

/// The word `confirm locally`.
pub const OVS_STRAIGHTEDGE_VERDICT_CONFIRM_LOCALLY: c_int = 3;

/// The result `count`: how many shots on the work.
pub const OVS_AS_BUILT_COUNT: c_int = 0;

/// The result `missed`: how many of them are off by more than the tolerance.
pub const OVS_AS_BUILT_MISSED: c_int = 1;

/// The result `mean_deviation` (in or mm): mean of shot less planned; positive is high.
pub const OVS_AS_BUILT_MEAN_DEVIATION: c_int = 2;

/// The result `deviation` (in or mm): standard deviation of shot less planned; none of one shot.
pub const OVS_AS_BUILT_DEVIATION: c_int = 3;

/// The result `highest` (in or mm): greatest of shot less planned.
pub const OVS_AS_BUILT_HIGHEST: c_int = 4;

/// The result `lowest` (in or mm): least of shot less planned.
pub const OVS_AS_BUILT_LOWEST: c_int = 5;

/// The result `mean_over_area` (in or mm): mean over the area of new floor less plan.
pub const OVS_AS_BUILT_MEAN_OVER_AREA: c_int = 6;

/// The result `thickness_mean` (in or mm): mean thickness got.
pub const OVS_AS_BUILT_THICKNESS_MEAN: c_int = 7;

/// The result `thickness_least` (in or mm): least thickness got.
pub const OVS_AS_BUILT_THICKNESS_LEAST: c_int = 8;

/// The result `least_x` (ft or m): where it is, from the left.
pub const OVS_AS_BUILT_LEAST_X: c_int = 9;

/// The result `least_y` (ft or m): where it is, from the front.
pub const OVS_AS_BUILT_LEAST_Y: c_int = 10;

/// The result `least_measured` (in or mm): least thickness got between the shots of the old slab.
pub const OVS_AS_BUILT_LEAST_MEASURED: c_int = 11;

/// The result `thickness_greatest` (in or mm): greatest thickness got.
pub const OVS_AS_BUILT_THICKNESS_GREATEST: c_int = 12;

/// The result `greatest_x` (ft or m): where that is, from the left.
pub const OVS_AS_BUILT_GREATEST_X: c_int = 13;

/// The result `greatest_y` (ft or m): where that is, from the front.
pub const OVS_AS_BUILT_GREATEST_Y: c_int = 14;

/// The result `thinner` (ft2 or m2): area thinner than the least allowed, or else than specified.
pub const OVS_AS_BUILT_THINNER: c_int = 15;

/// The result `planned_mean` (in or mm): mean thickness planned.
pub const OVS_AS_BUILT_PLANNED_MEAN: c_int = 16;

/// The result `planned_volume` (yd3 or m3): concrete figured.
pub const OVS_AS_BUILT_PLANNED_VOLUME: c_int = 17;

/// The result `volume` (yd3 or m3): concrete in place, between old slab and new floor.
pub const OVS_AS_BUILT_VOLUME: c_int = 18;

/// The result `used` (yd3 or m3): concrete used: what came less what was left over.
pub const OVS_AS_BUILT_USED: c_int = 19;

/// The result `unaccounted` (yd3 or m3): used less in place.
pub const OVS_AS_BUILT_UNACCOUNTED: c_int = 20;

/// The result `used_over_planned` (1): used over figured.
pub const OVS_AS_BUILT_USED_OVER_PLANNED: c_int = 21;

/// The result `said`: all of it in a few sentences: what holds, what does not, what to mend.
pub const OVS_AS_BUILT_SAID: c_int = 22;

/// The result `checks`: what was asked, and whether it was kept.
pub const OVS_AS_BUILT_CHECKS: c_int = 23;

/// The column `about` of `checks`: what it is about.
pub const OVS_AS_BUILT_CHECKS_ABOUT: c_int = 0;

/// The column `verdict` of `checks`: whether it is kept.
pub const OVS_AS_BUILT_CHECKS_VERDICT: c_int = 1;

/// The column `said` of `checks`: the finding in words.
pub const OVS_AS_BUILT_CHECKS_SAID: c_int = 2;

/// The column `basis` of `checks`: name of where the limit comes from.
pub const OVS_AS_BUILT_CHECKS_BASIS: c_int = 3;

/// The result `deviations`: the shots beside the plan.
pub const OVS_AS_BUILT_DEVIATIONS: c_int = 24;

/// The column `name` of `deviations`: its name.
pub const OVS_AS_BUILT_DEVIATIONS_NAME: c_int = 0;

/// The column `x` of `deviations` (ft or m): distance from the left.
pub const OVS_AS_BUILT_DEVIATIONS_X: c_int = 1;

/// The column `y` of `deviations` (ft or m): distance from the front.
pub const OVS_AS_BUILT_DEVIATIONS_Y: c_int = 2;

/// The column `elevation` of `deviations` (ft or m): height as shot.
pub const OVS_AS_BUILT_DEVIATIONS_ELEVATION: c_int = 3;

/// The column `planned` of `deviations` (ft or m): height as planned.
pub const OVS_AS_BUILT_DEVIATIONS_PLANNED: c_int = 4;

/// The column `deviation` of `deviations` (in or mm): shot less planned; positive is high.
pub const OVS_AS_BUILT_DEVIATIONS_DEVIATION: c_int = 5;

/// The column `missed` of `deviations`: off by more than the tolerance or not.
pub const OVS_AS_BUILT_DEVIATIONS_MISSED: c_int = 6;

/// The result `falls`: the slopes got.
pub const OVS_AS_BUILT_FALLS: c_int = 25;

/// The column `facet` of `falls`: its name; none under one plane.
pub const OVS_AS_BUILT_FALLS_FACET: c_int = 0;

/// The column `shots` of `falls`: how many shots lie on it.
pub const OVS_AS_BUILT_FALLS_SHOTS: c_int = 1;

/// The column `planned` of `falls` (in/ft or %): fall as planned.
pub const OVS_AS_BUILT_FALLS_PLANNED: c_int = 2;

/// The column `got` of `falls` (in/ft or %): fall built that way; negative where it rises, none of too few shots.
pub const OVS_AS_BUILT_FALLS_GOT: c_int = 3;

/// The column `steepest` of `falls` (in/ft or %): steepest fall built, any way.
pub const OVS_AS_BUILT_FALLS_STEEPEST: c_int = 4;

/// The column `unevenness` of `falls` (in or mm): root of the mean squared distance of the shots from their plane.
pub const OVS_AS_BUILT_FALLS_UNEVENNESS: c_int = 5;

/// The result `ponds`: where water stands.
pub const OVS_AS_BUILT_PONDS: c_int = 26;

/// The column `level` of `ponds` (ft or m): level of the water.
pub const OVS_AS_BUILT_PONDS_LEVEL: c_int = 0;

/// The column `area` of `ponds` (ft2 or m2): area under water.
pub const OVS_AS_BUILT_PONDS_AREA: c_int = 1;

/// The column `volume` of `ponds` (ft3 or m3): water in it.
pub const OVS_AS_BUILT_PONDS_VOLUME: c_int = 2;

/// The column `depth` of `ponds` (in or mm): greatest depth.
pub const OVS_AS_BUILT_PONDS_DEPTH: c_int = 3;

/// The column `deepest_x` of `ponds` (ft or m): where it is deepest, from the left.
pub const OVS_AS_BUILT_PONDS_DEEPEST_X: c_int = 4;

/// The column `deepest_y` of `ponds` (ft or m): where it is deepest, from the front.
pub const OVS_AS_BUILT_PONDS_DEEPEST_Y: c_int = 5;

/// The column `spill_x` of `ponds` (ft or m): where the water spills, from the left.
pub const OVS_AS_BUILT_PONDS_SPILL_X: c_int = 6;

/// The column `spill_y` of `ponds` (ft or m): where the water spills, from the front.
pub const OVS_AS_BUILT_PONDS_SPILL_Y: c_int = 7;

/// The column `outlet` of `ponds`: edge or drain that takes the water there; none where it runs on over a saddle.
pub const OVS_AS_BUILT_PONDS_OUTLET: c_int = 8;

/// The result `seen`: the puddles seen beside the water of the shots.
pub const OVS_AS_BUILT_SEEN: c_int = 27;

/// The column `x` of `seen` (ft or m): distance from the left.
pub const OVS_AS_BUILT_SEEN_X: c_int = 0;

/// The column `y` of `seen` (ft or m): distance from the front.
pub const OVS_AS_BUILT_SEEN_Y: c_int = 1;

/// The column `depth` of `seen` (in or mm): depth as measured.
pub const OVS_AS_BUILT_SEEN_DEPTH: c_int = 2;

/// The column `by_shots` of `seen` (in or mm): water that the shots show there; 0 where they show none.
pub const OVS_AS_BUILT_SEEN_BY_SHOTS: c_int = 3;

/// The result `mends`: what to mend.
pub const OVS_AS_BUILT_MENDS: c_int = 28;

/// The column `work` of `mends`: ground down or filled up.
pub const OVS_AS_BUILT_MENDS_WORK: c_int = 0;

/// The column `x` of `mends` (ft or m): distance from the left.
pub const OVS_AS_BUILT_MENDS_X: c_int = 1;

/// The column `y` of `mends` (ft or m): distance from the front.
pub const OVS_AS_BUILT_MENDS_Y: c_int = 2;

/// The column `shot` of `mends`: the shot it is at; none for a puddle.
pub const OVS_AS_BUILT_MENDS_SHOT: c_int = 3;

/// The column `depth` of `mends` (in or mm): down or up to the plan, or to where water runs off.
pub const OVS_AS_BUILT_MENDS_DEPTH: c_int = 4;

/// The column `area` of `mends` (ft2 or m2): size of a puddle.
pub const OVS_AS_BUILT_MENDS_AREA: c_int = 5;

/// The column `said` of `mends`: in words.
pub const OVS_AS_BUILT_MENDS_SAID: c_int = 6;

/// How many results there are.
pub const OVS_AS_BUILT_RESULTS: c_int = 29;

/// The word `trowelled`.
pub const OVS_AS_BUILT_SURFACE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_AS_BUILT_SURFACE_BROOMED: c_int = 1;

/// The word `washed`.
pub const OVS_AS_BUILT_SURFACE_WASHED: c_int = 2;

/// The word `outdoors`.
pub const OVS_AS_BUILT_SURFACE_OUTDOORS: c_int = 3;

/// The word `open`.
pub const OVS_AS_BUILT_EDGES_STATE_OPEN: c_int = 0;

/// The word `walled`.
pub const OVS_AS_BUILT_EDGES_STATE_WALLED: c_int = 1;

/// The word `drained`.
pub const OVS_AS_BUILT_EDGES_STATE_DRAINED: c_int = 2;

/// The word `pass`.
pub const OVS_AS_BUILT_CHECKS_VERDICT_PASS: c_int = 0;

/// The word `fail`.
pub const OVS_AS_BUILT_CHECKS_VERDICT_FAIL: c_int = 1;

/// The word `confirm locally`.
pub const OVS_AS_BUILT_CHECKS_VERDICT_CONFIRM_LOCALLY: c_int = 2;

/// The word `no`.
pub const OVS_AS_BUILT_DEVIATIONS_MISSED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_AS_BUILT_DEVIATIONS_MISSED_YES: c_int = 1;

/// The word `grind`.
pub const OVS_AS_BUILT_MENDS_WORK_GRIND: c_int = 0;

/// The word `fill`.
pub const OVS_AS_BUILT_MENDS_WORK_FILL: c_int = 1;

static FLATNESS_LINE: &Operation = row(OPERATIONS, "flatness_line");

/// Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
///
/// Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
/// |mean z|); S over n - 1.
/// Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
///
/// - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
///     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
///   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
///   - OVS_FLATNESS_LINE_LENGTH (ft): length of the line.
///   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
///   - OVS_FLATNESS_LINE_Q_MEAN (in): their mean.
///   - OVS_FLATNESS_LINE_Q_DEVIATION (in): their standard deviation.
///   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
///   - OVS_FLATNESS_LINE_Z_MEAN (in): their mean.
///   - OVS_FLATNESS_LINE_Z_DEVIATION (in): their standard deviation; none of fewer than two.
///   - OVS_FLATNESS_LINE_Q: the bends.
///   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_us(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_in))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
///
/// Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
/// |mean z|); S over n - 1.
/// Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
///
/// - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
///     left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
///   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
///   - OVS_FLATNESS_LINE_LENGTH (m): length of the line.
///   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
///   - OVS_FLATNESS_LINE_Q_MEAN (mm): their mean.
///   - OVS_FLATNESS_LINE_Q_DEVIATION (mm): their standard deviation.
///   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
///   - OVS_FLATNESS_LINE_Z_MEAN (mm): their mean.
///   - OVS_FLATNESS_LINE_Z_DEVIATION (mm): their standard deviation; none of fewer than two.
///   - OVS_FLATNESS_LINE_Q: the bends.
///   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_si(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_mm))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_line_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_us_why(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_in))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_line_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_line_si_why(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(0, Input::Numbers(readings_elevation_mm))])),
    ];
    let request = Request::new(FLATNESS_LINE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FLATNESS: &Operation = row(OPERATIONS, "flatness");

/// Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
/// asked.
///
/// Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
/// section reaches 3/5 of the least over all.
/// Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
///
/// - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
///   in order along it; at least 1.
/// - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
/// - `outline`: the plan edge, which lines keep 2 ft from; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` of `readings`: name of the line; required.
///   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
///   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
///     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
///   - `sections`: the areas of the sections, or of the floor; may be left out.
///   - `section` of `sections`: its name; required.
///   - `area` of `sections` (ft2): its area; more than 0 ft2; required.
///   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
///     be left out.
///   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
///   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
///     out.
///   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
///     by itself.
///   - `places`: where the lines run; may be left out.
///   - `line` of `places`: the line's name; required.
///   - `x` of `places` (ft): its first reading, from the left; at least -328083.989501 ft, at most 328083.989501
///     ft; required.
///   - `y` of `places` (ft): its first reading, from the front; at least -328083.989501 ft, at most 328083.989501
///     ft; required.
///   - `toward_x` of `places` (ft): a place it runs towards, from the left; at least -328083.989501 ft, at most
///     328083.989501 ft; required.
///   - `toward_y` of `places` (ft): a place it runs towards, from the front; at least -328083.989501 ft, at most
///     328083.989501 ft; required.
///   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
///   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_FF (1): flatness over all.
///   - OVS_FLATNESS_FL (1): levelness over all.
///   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
///   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
///   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
///   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
///   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_LINES: the lines.
///   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
/// floor levelness numbers (any), least number of readings, from memory: confirm.
/// Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
/// construction (10), table 4.8.5.1; 4.8.5.3.
/// Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
/// floors that fall (several), levelness, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_us(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_in))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
/// asked.
///
/// Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
/// section reaches 3/5 of the least over all.
/// Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
///
/// - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
///   in order along it; at least 1.
/// - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
/// - `outline`: the plan edge, which lines keep 2 ft from; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` of `readings`: name of the line; required.
///   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
///   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
///     left out 12 in, because the standard in inches reads every foot.
///   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
///     115.8 mm; where left out 4.57 in, because the text in inches came first.
///   - `sections`: the areas of the sections, or of the floor; may be left out.
///   - `section` of `sections`: its name; required.
///   - `area` of `sections` (m2): its area; more than 0 m2; required.
///   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
///     be left out.
///   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
///   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
///     out.
///   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
///     by itself.
///   - `places`: where the lines run; may be left out.
///   - `line` of `places`: the line's name; required.
///   - `x` of `places` (m): its first reading, from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `places` (m): its first reading, from the front; at least -100000 m, at most 100000 m; required.
///   - `toward_x` of `places` (m): a place it runs towards, from the left; at least -100000 m, at most 100000 m;
///     required.
///   - `toward_y` of `places` (m): a place it runs towards, from the front; at least -100000 m, at most 100000 m;
///     required.
///   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
///   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_FLATNESS_FF (1): flatness over all.
///   - OVS_FLATNESS_FL (1): levelness over all.
///   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
///   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
///   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
///   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
///   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
///     confirm locally.
///   - OVS_FLATNESS_LINES: the lines.
///   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
/// OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
/// OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
/// Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
/// floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
/// levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
/// Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
/// floor levelness numbers (any), least number of readings, from memory: confirm.
/// Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
/// construction (10), table 4.8.5.1; 4.8.5.3.
/// Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
/// floors that fall (several), levelness, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_si(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_mm))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_us_why(
    readings_elevation_in: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_in))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_si_why(
    readings_elevation_mm: *const f64,
    readings_rows: c_int,
    finish: *const ovs_finish,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(readings_rows, &[(1, Input::Numbers(readings_elevation_mm))])),
        (9, Given::Record(Passed::new("finish", finish))),
        (10, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(FLATNESS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static FLATNESS_COMBINED: &Operation = row(OPERATIONS, "flatness_combined");

/// One F-number for several lines, by their readings, or for several sections, by their areas.
///
/// Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
/// Taken for granted: all numbers are FF, or all are FL.
///
/// - `parts_number_ratio` (1): its F-number; more than 0 1.
/// - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
///     out.
///   - `area` of `parts` (ft2): of a section: how large it is; more than 0 ft2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Since 0.1.0.
/// Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_us(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
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
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// One F-number for several lines, by their readings, or for several sections, by their areas.
///
/// Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
/// Taken for granted: all numbers are FF, or all are FL.
///
/// - `parts_number_ratio` (1): its F-number; more than 0 1.
/// - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
///     out.
///   - `area` of `parts` (m2): of a section: how large it is; more than 0 m2; may be left out.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
/// Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
/// F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
/// confirm.
/// Since 0.1.0.
/// Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_si(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
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
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_flatness_combined_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_us_why(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_flatness_combined_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_flatness_combined_si_why(
    parts_number_ratio: *const f64,
    parts_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(parts_rows, &[(0, Input::Numbers(parts_number_ratio))])),
    ];
    let request = Request::new(FLATNESS_COMBINED, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static STRAIGHTEDGE: &Operation = row(OPERATIONS, "straightedge");

/// The gap under a straightedge laid along a line of readings, from each reading on.
///
/// Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
/// Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
/// gap.
///
/// - `profile_distance_ft` (ft): from the start of the line; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `profile_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
/// - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
///   spacing; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `length` (ft): length of the straightedge; more than 0 ft, at most 100 ft; where left out 10 ft, because the
///     limits are told for 10 ft.
///   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
///     flat; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_STRAIGHTEDGE_GAP (in): the greatest gap.
///   - OVS_STRAIGHTEDGE_GAP_AT (ft): where it is.
///   - OVS_STRAIGHTEDGE_REST_1 (ft): first place the straightedge rests there.
///   - OVS_STRAIGHTEDGE_REST_2 (ft): second place it rests there.
///   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
///   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
///     in.
///   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
///   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
///   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
///     locally.
///   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
/// OVS_PROFILE_ORDER.
/// Basis: plane and solid geometry: derived.
/// Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
/// straightedge of 10 ft, from memory: confirm.
/// Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
/// to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_us(
    profile_distance_ft: *const f64,
    profile_elevation_in: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_in))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The gap under a straightedge laid along a line of readings, from each reading on.
///
/// Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
/// Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
/// gap.
///
/// - `profile_distance_m` (m): from the start of the line; at least -10000 m, at most 10000 m.
/// - `profile_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
/// - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
///   spacing; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `length` (m): length of the straightedge; more than 0 m, at most 30.48 m; where left out 10 ft, because the
///     limits are told for 10 ft.
///   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
///     flat; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_STRAIGHTEDGE_GAP (mm): the greatest gap.
///   - OVS_STRAIGHTEDGE_GAP_AT (m): where it is.
///   - OVS_STRAIGHTEDGE_REST_1 (m): first place the straightedge rests there.
///   - OVS_STRAIGHTEDGE_REST_2 (m): second place it rests there.
///   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
///   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
///     in.
///   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
///   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
///   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
///     locally.
///   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
/// OVS_PROFILE_ORDER.
/// Basis: plane and solid geometry: derived.
/// Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
/// straightedge of 10 ft, from memory: confirm.
/// Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
/// to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
/// Since 0.1.0.
/// Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_si(
    profile_distance_m: *const f64,
    profile_elevation_mm: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_mm))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_straightedge_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_us_why(
    profile_distance_ft: *const f64,
    profile_elevation_in: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_ft)), (1, Input::Numbers(profile_elevation_in))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_straightedge_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_straightedge_si_why(
    profile_distance_m: *const f64,
    profile_elevation_mm: *const f64,
    profile_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(profile_rows, &[(0, Input::Numbers(profile_distance_m)), (1, Input::Numbers(profile_elevation_mm))])),
    ];
    let request = Request::new(STRAIGHTEDGE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static AS_BUILT: &Operation = row(OPERATIONS, "as_built");

/// The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what
/// to mend.
///
/// Equation: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of both;
/// slope = plane of least squares.
/// Taken for granted: both floors plane over each triangle of their shots; no approval: arithmetic on the shots.
///
/// - `survey`: the old slab.
/// - `finish`: the plan.
/// - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `shots`: the shots of the new floor; may be left out.
///   - `x` of `shots` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `shots` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `elevation` of `shots` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501
///     ft; required.
///   - `name` of `shots`: its name; may be left out.
///   - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be left out.
///   - `tolerance` (in): how far a shot may be off the plan; more than 0 in, at most 12 in; where left out 1/4 in,
///     because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane.
///   - `specified` (in): the thickness specified; at least 0 in, at most 120 in; may be left out.
///   - `least` (in): the least thickness allowed anywhere; at least 0 in, at most 120 in; may be left out.
///   - `surface`: how the floor is finished and used: its least fall; 0 trowelled, 1 broomed, 2 washed, 3 outdoors;
///     may be left out.
///   - `least_fall` (in/ft): the least fall, in place of that of the surface; at least 0 in/ft, at most 12 in/ft;
///     may be left out.
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
///   - `ordered` (yd3): concrete that came; at least 0 yd3, at most 13079.5061931 yd3; may be left out.
///   - `left_over` (yd3): concrete that was left over; at least 0 yd3, at most 13079.5061931 yd3; may be left out.
///   - `puddles`: puddles that were seen; may be left out.
///   - `x` of `puddles` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `y` of `puddles` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
///     required.
///   - `depth` of `puddles` (in): how deep; at least 0 in, at most 12 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_AS_BUILT_COUNT: how many shots on the work.
///   - OVS_AS_BUILT_MISSED: how many of them are off by more than the tolerance.
///   - OVS_AS_BUILT_MEAN_DEVIATION (in): mean of shot less planned; positive is high.
///   - OVS_AS_BUILT_DEVIATION (in): standard deviation of shot less planned; none of one shot.
///   - OVS_AS_BUILT_HIGHEST (in): greatest of shot less planned.
///   - OVS_AS_BUILT_LOWEST (in): least of shot less planned.
///   - OVS_AS_BUILT_MEAN_OVER_AREA (in): mean over the area of new floor less plan.
///   - OVS_AS_BUILT_THICKNESS_MEAN (in): mean thickness got.
///   - OVS_AS_BUILT_THICKNESS_LEAST (in): least thickness got.
///   - OVS_AS_BUILT_LEAST_X (ft): where it is, from the left.
///   - OVS_AS_BUILT_LEAST_Y (ft): where it is, from the front.
///   - OVS_AS_BUILT_LEAST_MEASURED (in): least thickness got between the shots of the old slab.
///   - OVS_AS_BUILT_THICKNESS_GREATEST (in): greatest thickness got.
///   - OVS_AS_BUILT_GREATEST_X (ft): where that is, from the left.
///   - OVS_AS_BUILT_GREATEST_Y (ft): where that is, from the front.
///   - OVS_AS_BUILT_THINNER (ft2): area thinner than the least allowed, or else than specified.
///   - OVS_AS_BUILT_PLANNED_MEAN (in): mean thickness planned.
///   - OVS_AS_BUILT_PLANNED_VOLUME (yd3): concrete figured.
///   - OVS_AS_BUILT_VOLUME (yd3): concrete in place, between old slab and new floor.
///   - OVS_AS_BUILT_USED (yd3): concrete used: what came less what was left over.
///   - OVS_AS_BUILT_UNACCOUNTED (yd3): used less in place.
///   - OVS_AS_BUILT_USED_OVER_PLANNED (1): used over figured.
///   - OVS_AS_BUILT_SAID: all of it in a few sentences: what holds, what does not, what to mend.
///   - OVS_AS_BUILT_CHECKS: what was asked, and whether it was kept.
///   - OVS_AS_BUILT_DEVIATIONS: the shots beside the plan.
///   - OVS_AS_BUILT_FALLS: the slopes got.
///   - OVS_AS_BUILT_PONDS: where water stands.
///   - OVS_AS_BUILT_SEEN: the puddles seen beside the water of the shots.
///   - OVS_AS_BUILT_MENDS: what to mend.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_TOO_FEW_SHOTS, OVS_NULL_POINTER, OVS_AS_BUILT_OUTLINE.
/// Basis: plane and solid geometry: derived.
/// Basis: a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark: common
/// practice, no source.
/// Basis: the tolerance of the marks that was given: the project's specification.
/// Basis: within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of slabs on
/// ground, as quoted elsewhere.
/// Basis: mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI 117,
/// tolerances for concrete construction (10), 4.5.4, slabs on ground.
/// Basis: the least thickness that was given: the project's specification.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
/// from memory: confirm.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: 1.00 to 1.08 times the figured concrete is used: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"12 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"0 ft","y":"10 ft","elevation":"99.60 ft"}]},"shots":{"x":["1 ft","6 ft","11 ft","1 ft","6 ft","11 ft","1 ft","6 ft","11 ft"],"y":["1 ft","1 ft","1 ft","5 ft","5 ft","5 ft","9 ft","9 ft","9 ft"],"elevation":["99.51 ft","99.52 ft","99.50 ft","99.55 ft","99.48 ft","99.56 ft","99.59 ft","99.60 ft","99.58 ft"]},"least":"3 in","specified":"4 in","surface":"trowelled","ordered":"1 1/2 yd3","left_over":"1/8 yd3","puddles":{"x":["6 ft"],"y":["5 ft"],"depth":["1/2 in"]},"edges":[{"edge":"left","state":"walled"},{"edge":"back","state":"walled"},{"edge":"right","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_as_built_us(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    new_floor: *const ovs_survey,
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
        (3, Given::Record(Passed::new("new_floor", new_floor))),
    ];
    let request = Request::new(AS_BUILT, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what
/// to mend.
///
/// Equation: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of both;
/// slope = plane of least squares.
/// Taken for granted: both floors plane over each triangle of their shots; no approval: arithmetic on the shots.
///
/// - `survey`: the old slab.
/// - `finish`: the plan.
/// - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `shots`: the shots of the new floor; may be left out.
///   - `x` of `shots` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `shots` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `elevation` of `shots` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
///   - `name` of `shots`: its name; may be left out.
///   - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be left out.
///   - `tolerance` (mm): how far a shot may be off the plan; more than 0 mm, at most 304.8 mm; where left out 1/4
///     in, because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane.
///   - `specified` (mm): the thickness specified; at least 0 mm, at most 3048 mm; may be left out.
///   - `least` (mm): the least thickness allowed anywhere; at least 0 mm, at most 3048 mm; may be left out.
///   - `surface`: how the floor is finished and used: its least fall; 0 trowelled, 1 broomed, 2 washed, 3 outdoors;
///     may be left out.
///   - `least_fall` (%): the least fall, in place of that of the surface; at least 0 %, at most 100 %; may be left
///     out.
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
///   - `ordered` (m3): concrete that came; at least 0 m3, at most 10000 m3; may be left out.
///   - `left_over` (m3): concrete that was left over; at least 0 m3, at most 10000 m3; may be left out.
///   - `puddles`: puddles that were seen; may be left out.
///   - `x` of `puddles` (m): distance from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `puddles` (m): distance from the front; at least -100000 m, at most 100000 m; required.
///   - `depth` of `puddles` (mm): how deep; at least 0 mm, at most 304.8 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_AS_BUILT_COUNT: how many shots on the work.
///   - OVS_AS_BUILT_MISSED: how many of them are off by more than the tolerance.
///   - OVS_AS_BUILT_MEAN_DEVIATION (mm): mean of shot less planned; positive is high.
///   - OVS_AS_BUILT_DEVIATION (mm): standard deviation of shot less planned; none of one shot.
///   - OVS_AS_BUILT_HIGHEST (mm): greatest of shot less planned.
///   - OVS_AS_BUILT_LOWEST (mm): least of shot less planned.
///   - OVS_AS_BUILT_MEAN_OVER_AREA (mm): mean over the area of new floor less plan.
///   - OVS_AS_BUILT_THICKNESS_MEAN (mm): mean thickness got.
///   - OVS_AS_BUILT_THICKNESS_LEAST (mm): least thickness got.
///   - OVS_AS_BUILT_LEAST_X (m): where it is, from the left.
///   - OVS_AS_BUILT_LEAST_Y (m): where it is, from the front.
///   - OVS_AS_BUILT_LEAST_MEASURED (mm): least thickness got between the shots of the old slab.
///   - OVS_AS_BUILT_THICKNESS_GREATEST (mm): greatest thickness got.
///   - OVS_AS_BUILT_GREATEST_X (m): where that is, from the left.
///   - OVS_AS_BUILT_GREATEST_Y (m): where that is, from the front.
///   - OVS_AS_BUILT_THINNER (m2): area thinner than the least allowed, or else than specified.
///   - OVS_AS_BUILT_PLANNED_MEAN (mm): mean thickness planned.
///   - OVS_AS_BUILT_PLANNED_VOLUME (m3): concrete figured.
///   - OVS_AS_BUILT_VOLUME (m3): concrete in place, between old slab and new floor.
///   - OVS_AS_BUILT_USED (m3): concrete used: what came less what was left over.
///   - OVS_AS_BUILT_UNACCOUNTED (m3): used less in place.
///   - OVS_AS_BUILT_USED_OVER_PLANNED (1): used over figured.
///   - OVS_AS_BUILT_SAID: all of it in a few sentences: what holds, what does not, what to mend.
///   - OVS_AS_BUILT_CHECKS: what was asked, and whether it was kept.
///   - OVS_AS_BUILT_DEVIATIONS: the shots beside the plan.
///   - OVS_AS_BUILT_FALLS: the slopes got.
///   - OVS_AS_BUILT_PONDS: where water stands.
///   - OVS_AS_BUILT_SEEN: the puddles seen beside the water of the shots.
///   - OVS_AS_BUILT_MENDS: what to mend.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING, OVS_CONTRADICTION,
/// OVS_TOO_FEW_SHOTS, OVS_NULL_POINTER, OVS_AS_BUILT_OUTLINE.
/// Basis: plane and solid geometry: derived.
/// Basis: a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark: common
/// practice, no source.
/// Basis: the tolerance of the marks that was given: the project's specification.
/// Basis: within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of slabs on
/// ground, as quoted elsewhere.
/// Basis: mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI 117,
/// tolerances for concrete construction (10), 4.5.4, slabs on ground.
/// Basis: the least thickness that was given: the project's specification.
/// Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
/// finished floors, from memory: confirm.
/// Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
/// from memory: confirm.
/// Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
/// surfaces within 10 ft, as quoted elsewhere.
/// Basis: 1.00 to 1.08 times the figured concrete is used: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"12 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"0 ft","y":"10 ft","elevation":"99.60 ft"}]},"shots":{"x":["1 ft","6 ft","11 ft","1 ft","6 ft","11 ft","1 ft","6 ft","11 ft"],"y":["1 ft","1 ft","1 ft","5 ft","5 ft","5 ft","9 ft","9 ft","9 ft"],"elevation":["99.51 ft","99.52 ft","99.50 ft","99.55 ft","99.48 ft","99.56 ft","99.59 ft","99.60 ft","99.58 ft"]},"least":"3 in","specified":"4 in","surface":"trowelled","ordered":"1 1/2 yd3","left_over":"1/8 yd3","puddles":{"x":["6 ft"],"y":["5 ft"],"depth":["1/2 in"]},"edges":[{"edge":"left","state":"walled"},{"edge":"back","state":"walled"},{"edge":"right","state":"walled"}]}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_as_built_si(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    new_floor: *const ovs_survey,
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
        (3, Given::Record(Passed::new("new_floor", new_floor))),
    ];
    let request = Request::new(AS_BUILT, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_as_built_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_as_built_us_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    new_floor: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("new_floor", new_floor))),
    ];
    let request = Request::new(AS_BUILT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_as_built_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_as_built_si_why(
    survey: *const ovs_survey,
    finish: *const ovs_finish,
    new_floor: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
        (1, Given::Record(Passed::new("finish", finish))),
        (3, Given::Record(Passed::new("new_floor", new_floor))),
    ];
    let request = Request::new(AS_BUILT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
