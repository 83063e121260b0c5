//! The operations of `survey`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{BytesIn, Given, Input, Message, Notes, Numbers, Output, Passed, Request, TextOut, record, row, scalar};
use crate::border::scalar::Arrays;
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int, c_uchar};
use super::records::{OUTLINE_TYPE, POINTS_TYPE, SURVEY_TYPE, ovs_outline, ovs_points, ovs_survey};

/// The result `misclosure` (in or mm): found less known where the line closes.
pub const OVS_LEVEL_BOOK_MISCLOSURE: c_int = 0;

/// The result `backsights` (ft or m): sum of the backsights of the first line.
pub const OVS_LEVEL_BOOK_BACKSIGHTS: c_int = 1;

/// The result `foresights` (ft or m): sum of its foresights.
pub const OVS_LEVEL_BOOK_FORESIGHTS: c_int = 2;

/// The result `rise` (ft or m): last less first of that line.
pub const OVS_LEVEL_BOOK_RISE: c_int = 3;

/// The result `setups`: the set-ups.
pub const OVS_LEVEL_BOOK_SETUPS: c_int = 4;

/// The column `backsight_point` of `setups`: the point of its backsight.
pub const OVS_LEVEL_BOOK_SETUPS_BACKSIGHT_POINT: c_int = 0;

/// The column `booked` of `setups` (ft or m): height of instrument before the adjustment.
pub const OVS_LEVEL_BOOK_SETUPS_BOOKED: c_int = 1;

/// The column `height_of_instrument` of `setups` (ft or m): height of instrument.
pub const OVS_LEVEL_BOOK_SETUPS_HEIGHT_OF_INSTRUMENT: c_int = 2;

/// The result `points`: the points.
pub const OVS_LEVEL_BOOK_POINTS: c_int = 5;

/// The column `point` of `points`: name of the point.
pub const OVS_LEVEL_BOOK_POINTS_POINT: c_int = 0;

/// The column `setup` of `points`: the set-up it was read from.
pub const OVS_LEVEL_BOOK_POINTS_SETUP: c_int = 1;

/// The column `rod` of `points` (ft or m): its reading.
pub const OVS_LEVEL_BOOK_POINTS_ROD: c_int = 2;

/// The column `booked` of `points` (ft or m): elevation before the adjustment.
pub const OVS_LEVEL_BOOK_POINTS_BOOKED: c_int = 3;

/// The column `correction` of `points` (in or mm): what the adjustment adds.
pub const OVS_LEVEL_BOOK_POINTS_CORRECTION: c_int = 4;

/// The column `elevation` of `points` (ft or m): elevation.
pub const OVS_LEVEL_BOOK_POINTS_ELEVATION: c_int = 5;

/// How many results there are.
pub const OVS_LEVEL_BOOK_RESULTS: c_int = 6;

/// The word `left`.
pub const OVS_OUTLINE_FROM_SIDES_SIDES_TURN_LEFT: c_int = 0;

/// The word `right`.
pub const OVS_OUTLINE_FROM_SIDES_SIDES_TURN_RIGHT: c_int = 1;

/// The word `no`.
pub const OVS_SURVEY_FROM_SHOTS_SHOTS_OUTSIDE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_SHOTS_SHOTS_OUTSIDE_YES: c_int = 1;

/// The word `no`.
pub const OVS_SURVEY_FROM_SHOTS_SHOTS_STEP_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_SHOTS_SHOTS_STEP_YES: c_int = 1;

/// The word `laser`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_LASER: c_int = 0;

/// The word `optical_hundredths`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_HUNDREDTHS: c_int = 1;

/// The word `optical_eighths`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_EIGHTHS: c_int = 2;

/// The word `optical_sixteenths`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_SIXTEENTHS: c_int = 3;

/// The word `optical_millimetres`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_MILLIMETRES: c_int = 4;

/// The word `string`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_STRING: c_int = 5;

/// The word `water`.
pub const OVS_SURVEY_FROM_SHOTS_INSTRUMENT_WATER: c_int = 6;

/// The word `trowelled`.
pub const OVS_SURVEY_FROM_SHOTS_TEXTURE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_SURVEY_FROM_SHOTS_TEXTURE_BROOMED: c_int = 1;

/// The word `scaled`.
pub const OVS_SURVEY_FROM_SHOTS_TEXTURE_SCALED: c_int = 2;

/// The word `rough`.
pub const OVS_SURVEY_FROM_SHOTS_TEXTURE_ROUGH: c_int = 3;

/// The word `no`.
pub const OVS_SURVEY_FROM_SHOTS_BEYOND_ALLOWED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_SHOTS_BEYOND_ALLOWED_YES: c_int = 1;

/// The word `laser`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_LASER: c_int = 0;

/// The word `optical_hundredths`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_HUNDREDTHS: c_int = 1;

/// The word `optical_eighths`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_EIGHTHS: c_int = 2;

/// The word `optical_sixteenths`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_SIXTEENTHS: c_int = 3;

/// The word `optical_millimetres`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_MILLIMETRES: c_int = 4;

/// The word `string`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_STRING: c_int = 5;

/// The word `water`.
pub const OVS_SURVEY_FROM_GRID_INSTRUMENT_WATER: c_int = 6;

/// The word `trowelled`.
pub const OVS_SURVEY_FROM_GRID_TEXTURE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_SURVEY_FROM_GRID_TEXTURE_BROOMED: c_int = 1;

/// The word `scaled`.
pub const OVS_SURVEY_FROM_GRID_TEXTURE_SCALED: c_int = 2;

/// The word `rough`.
pub const OVS_SURVEY_FROM_GRID_TEXTURE_ROUGH: c_int = 3;

/// The word `no`.
pub const OVS_SURVEY_FROM_GRID_BEYOND_ALLOWED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_GRID_BEYOND_ALLOWED_YES: c_int = 1;

/// The word `laser`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_LASER: c_int = 0;

/// The word `optical_hundredths`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_HUNDREDTHS: c_int = 1;

/// The word `optical_eighths`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_EIGHTHS: c_int = 2;

/// The word `optical_sixteenths`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_SIXTEENTHS: c_int = 3;

/// The word `optical_millimetres`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_MILLIMETRES: c_int = 4;

/// The word `string`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_STRING: c_int = 5;

/// The word `water`.
pub const OVS_SURVEY_FROM_RODS_INSTRUMENT_WATER: c_int = 6;

/// The word `trowelled`.
pub const OVS_SURVEY_FROM_RODS_TEXTURE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_SURVEY_FROM_RODS_TEXTURE_BROOMED: c_int = 1;

/// The word `scaled`.
pub const OVS_SURVEY_FROM_RODS_TEXTURE_SCALED: c_int = 2;

/// The word `rough`.
pub const OVS_SURVEY_FROM_RODS_TEXTURE_ROUGH: c_int = 3;

/// The word `no`.
pub const OVS_SURVEY_FROM_RODS_BEYOND_ALLOWED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_RODS_BEYOND_ALLOWED_YES: c_int = 1;

/// The result `triangles`: the triangles.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES: c_int = 0;

/// The column `x_1` of `triangles` (ft or m): first corner, from the left.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_X_1: c_int = 0;

/// The column `y_1` of `triangles` (ft or m): first corner, from the front.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_Y_1: c_int = 1;

/// The column `elevation_1` of `triangles` (ft or m): height of the old slab there.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_1: c_int = 2;

/// The column `x_2` of `triangles` (ft or m): second corner, from the left.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_X_2: c_int = 3;

/// The column `y_2` of `triangles` (ft or m): second corner, from the front.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_Y_2: c_int = 4;

/// The column `elevation_2` of `triangles` (ft or m): height of the old slab there.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_2: c_int = 5;

/// The column `x_3` of `triangles` (ft or m): third corner, from the left.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_X_3: c_int = 6;

/// The column `y_3` of `triangles` (ft or m): third corner, from the front.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_Y_3: c_int = 7;

/// The column `elevation_3` of `triangles` (ft or m): height of the old slab there.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_3: c_int = 8;

/// The column `ground` of `triangles`: what is known of the ground under it.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND: c_int = 9;

/// How many results there are.
pub const OVS_SURVEY_TRIANGLES_RESULTS: c_int = 1;

/// The word `surveyed`.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_BEYOND: c_int = 2;

/// The result `suspects`: the suspects, the farthest off first.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS: c_int = 0;

/// The column `shot` of `suspects`: its name.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SHOT: c_int = 0;

/// The column `x` of `suspects` (ft or m): distance from the left.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_X: c_int = 1;

/// The column `y` of `suspects` (ft or m): distance from the front.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_Y: c_int = 2;

/// The column `elevation` of `suspects` (ft or m): its height as booked.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_ELEVATION: c_int = 3;

/// The column `rod` of `suspects` (ft or m): its reading, where the survey stands on rods.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_ROD: c_int = 4;

/// The column `predicted` of `suspects` (ft or m): what its neighbours say.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_PREDICTED: c_int = 5;

/// The column `off` of `suspects` (in or mm): booked less predicted: above zero where it stands high.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_OFF: c_int = 6;

/// The column `deviation` of `suspects` (in or mm): standard deviation of that on this floor.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_DEVIATION: c_int = 7;

/// The column `verdict` of `suspects`: what to think of it.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT: c_int = 8;

/// The column `kind` of `suspects`: what may have happened.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND: c_int = 9;

/// The column `second` of `suspects`: what else, nearly as likely; the amount where a row is off.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND: c_int = 10;

/// The column `with` of `suspects`: the shot it was swapped with, or its rows.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_WITH: c_int = 11;

/// The column `proposed` of `suspects` (ft or m): the height it would have.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_PROPOSED: c_int = 12;

/// The column `proposed_rod` of `suspects` (ft or m): the reading it would have.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_PROPOSED_ROD: c_int = 13;

/// The column `more_if_corrected` of `suspects` (yd3 or m3): what the net concrete under a given finish changes by
/// with the height proposed.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_MORE_IF_CORRECTED: c_int = 14;

/// The column `more_without` of `suspects` (yd3 or m3): what it changes by where the shot is left out.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_MORE_WITHOUT: c_int = 15;

/// The column `said` of `suspects`: the same in a sentence.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SAID: c_int = 16;

/// The result `judged`: how many shots were judged.
pub const OVS_SURVEY_SUSPECTS_JUDGED: c_int = 1;

/// The result `roughness` (in or mm): standard deviation that each shot has for itself: reading, texture and small
/// waves.
pub const OVS_SURVEY_SUSPECTS_ROUGHNESS: c_int = 2;

/// The result `graduation`: how the rod is graduated.
pub const OVS_SURVEY_SUSPECTS_GRADUATION: c_int = 3;

/// How many results there are.
pub const OVS_SURVEY_SUSPECTS_RESULTS: c_int = 4;

/// The word `inches`.
pub const OVS_SURVEY_SUSPECTS_ROD_INCHES: c_int = 0;

/// The word `tenths`.
pub const OVS_SURVEY_SUSPECTS_ROD_TENTHS: c_int = 1;

/// The word `metric`.
pub const OVS_SURVEY_SUSPECTS_ROD_METRIC: c_int = 2;

/// The word `unknown`.
pub const OVS_SURVEY_SUSPECTS_ROD_UNKNOWN: c_int = 3;

/// The word `look_again`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_LOOK_AGAIN: c_int = 0;

/// The word `likely_slip`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_LIKELY_SLIP: c_int = 1;

/// The word `unexplained`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_UNEXPLAINED: c_int = 2;

/// The word `inch`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_INCH: c_int = 0;

/// The word `tenth_of_a_foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TENTH_OF_A_FOOT: c_int = 1;

/// The word `five_centimetres`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_FIVE_CENTIMETRES: c_int = 2;

/// The word `ten_centimetres`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TEN_CENTIMETRES: c_int = 3;

/// The word `half_a_foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_HALF_A_FOOT: c_int = 4;

/// The word `ten_inches`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TEN_INCHES: c_int = 5;

/// The word `foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_FOOT: c_int = 6;

/// The word `metre`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_METRE: c_int = 7;

/// The word `sign`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_SIGN: c_int = 8;

/// The word `swapped`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_SWAPPED: c_int = 9;

/// The word `row_off`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROW_OFF: c_int = 10;

/// The word `row_reversed`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROW_REVERSED: c_int = 11;

/// The word `rows_swapped`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROWS_SWAPPED: c_int = 12;

/// The word `unusual`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_UNUSUAL: c_int = 13;

/// The word `inch`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_INCH: c_int = 0;

/// The word `tenth_of_a_foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TENTH_OF_A_FOOT: c_int = 1;

/// The word `five_centimetres`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_FIVE_CENTIMETRES: c_int = 2;

/// The word `ten_centimetres`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TEN_CENTIMETRES: c_int = 3;

/// The word `half_a_foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_HALF_A_FOOT: c_int = 4;

/// The word `ten_inches`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TEN_INCHES: c_int = 5;

/// The word `foot`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_FOOT: c_int = 6;

/// The word `metre`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_METRE: c_int = 7;

/// The word `sign`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_SIGN: c_int = 8;

/// The word `swapped`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_SWAPPED: c_int = 9;

/// The word `row_off`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROW_OFF: c_int = 10;

/// The word `row_reversed`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROW_REVERSED: c_int = 11;

/// The word `rows_swapped`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROWS_SWAPPED: c_int = 12;

/// The word `unusual`.
pub const OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_UNUSUAL: c_int = 13;

/// The word `inches`.
pub const OVS_SURVEY_SUSPECTS_GRADUATION_INCHES: c_int = 0;

/// The word `tenths`.
pub const OVS_SURVEY_SUSPECTS_GRADUATION_TENTHS: c_int = 1;

/// The word `metric`.
pub const OVS_SURVEY_SUSPECTS_GRADUATION_METRIC: c_int = 2;

/// The word `unknown`.
pub const OVS_SURVEY_SUSPECTS_GRADUATION_UNKNOWN: c_int = 3;

/// The result `area` (ft2 or m2): area of the work.
pub const OVS_SURVEY_COVERAGE_AREA: c_int = 0;

/// The result `uncovered` (ft2 or m2): area farther than that from every shot.
pub const OVS_SURVEY_COVERAGE_UNCOVERED: c_int = 1;

/// The result `share` (%): its share of the work.
pub const OVS_SURVEY_COVERAGE_SHARE: c_int = 2;

/// The result `beyond` (ft2 or m2): area beyond the last shots.
pub const OVS_SURVEY_COVERAGE_BEYOND: c_int = 3;

/// The result `unsurveyed` (ft2 or m2): area in triangles that leave the outline.
pub const OVS_SURVEY_COVERAGE_UNSURVEYED: c_int = 4;

/// The result `farthest` (ft or m): the farthest any place is from a shot.
pub const OVS_SURVEY_COVERAGE_FARTHEST: c_int = 5;

/// The result `farthest_x` (ft or m): where it is, from the left.
pub const OVS_SURVEY_COVERAGE_FARTHEST_X: c_int = 6;

/// The result `farthest_y` (ft or m): where it is, from the front.
pub const OVS_SURVEY_COVERAGE_FARTHEST_Y: c_int = 7;

/// The result `next`: where the next shots belong, until every place is near enough.
pub const OVS_SURVEY_COVERAGE_NEXT: c_int = 8;

/// The column `x` of `next` (ft or m): distance from the left.
pub const OVS_SURVEY_COVERAGE_NEXT_X: c_int = 0;

/// The column `y` of `next` (ft or m): distance from the front.
pub const OVS_SURVEY_COVERAGE_NEXT_Y: c_int = 1;

/// The column `nearest` of `next` (ft or m): how far the nearest shot is.
pub const OVS_SURVEY_COVERAGE_NEXT_NEAREST: c_int = 2;

/// The column `uncovered_after` of `next` (ft2 or m2): area still not covered once it is shot.
pub const OVS_SURVEY_COVERAGE_NEXT_UNCOVERED_AFTER: c_int = 3;

/// The column `farthest_after` of `next` (ft or m): the farthest any place is from a shot then.
pub const OVS_SURVEY_COVERAGE_NEXT_FARTHEST_AFTER: c_int = 4;

/// How many results there are.
pub const OVS_SURVEY_COVERAGE_RESULTS: c_int = 9;

/// The result `rise` (ft or m): how much higher peg B stands than peg A.
pub const OVS_TWO_PEG_TEST_RISE: c_int = 0;

/// The result `tilt` (in/ft or mm/m): rise of the line of sight over the distance.
pub const OVS_TWO_PEG_TEST_TILT: c_int = 1;

/// The result `right_a` (ft or m): what the second set-up should read on peg A.
pub const OVS_TWO_PEG_TEST_RIGHT_A: c_int = 2;

/// The result `right_b` (ft or m): what it should read on peg B.
pub const OVS_TWO_PEG_TEST_RIGHT_B: c_int = 3;

/// The result `off` (in or mm): how much too high it reads on the farther peg.
pub const OVS_TWO_PEG_TEST_OFF: c_int = 4;

/// The result `passes`: whether the tilt is within what is allowed.
pub const OVS_TWO_PEG_TEST_PASSES: c_int = 5;

/// The result `good_for` (ft or m): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
pub const OVS_TWO_PEG_TEST_GOOD_FOR: c_int = 6;

/// How many results there are.
pub const OVS_TWO_PEG_TEST_RESULTS: c_int = 7;

/// The word `no`.
pub const OVS_TWO_PEG_TEST_PASSES_NO: c_int = 0;

/// The word `yes`.
pub const OVS_TWO_PEG_TEST_PASSES_YES: c_int = 1;

/// The result `difference` (in or mm): again less first.
pub const OVS_BENCHMARK_RECHECK_DIFFERENCE: c_int = 0;

/// The result `follows`: what follows.
pub const OVS_BENCHMARK_RECHECK_FOLLOWS: c_int = 1;

/// The result `shared_out`: the readings with their shares; none where it is off by too much.
pub const OVS_BENCHMARK_RECHECK_SHARED_OUT: c_int = 2;

/// The column `correction` of `shared_out` (in or mm): what its elevation gains.
pub const OVS_BENCHMARK_RECHECK_SHARED_OUT_CORRECTION: c_int = 0;

/// The column `rod` of `shared_out` (ft or m): the reading as from the first line of sight.
pub const OVS_BENCHMARK_RECHECK_SHARED_OUT_ROD: c_int = 1;

/// The result `said`: the same in a sentence.
pub const OVS_BENCHMARK_RECHECK_SAID: c_int = 3;

/// How many results there are.
pub const OVS_BENCHMARK_RECHECK_RESULTS: c_int = 4;

/// The word `agrees`.
pub const OVS_BENCHMARK_RECHECK_FOLLOWS_AGREES: c_int = 0;

/// The word `shared_out`.
pub const OVS_BENCHMARK_RECHECK_FOLLOWS_SHARED_OUT: c_int = 1;

/// The word `shoot_again`.
pub const OVS_BENCHMARK_RECHECK_FOLLOWS_SHOOT_AGAIN: c_int = 2;

/// The result `points`: the points.
pub const OVS_READ_POINTS_POINTS: c_int = 0;

/// The result `format`: what the file is.
pub const OVS_READ_POINTS_FORMAT: c_int = 1;

/// The result `unit`: the unit of its numbers, where all have one.
pub const OVS_READ_POINTS_UNIT: c_int = 2;

/// The result `left_out`: points of the file that were not used.
pub const OVS_READ_POINTS_LEFT_OUT: c_int = 3;

/// The column `reason` of `left_out`: why.
pub const OVS_READ_POINTS_LEFT_OUT_REASON: c_int = 0;

/// The column `count` of `left_out`: how many.
pub const OVS_READ_POINTS_LEFT_OUT_COUNT: c_int = 1;

/// How many results there are.
pub const OVS_READ_POINTS_RESULTS: c_int = 4;

/// The word `csv`.
pub const OVS_READ_POINTS_FORMAT_CSV: c_int = 0;

/// The word `xyz`.
pub const OVS_READ_POINTS_FORMAT_XYZ: c_int = 1;

/// The word `ply`.
pub const OVS_READ_POINTS_FORMAT_PLY: c_int = 2;

/// The word `las`.
pub const OVS_READ_POINTS_FORMAT_LAS: c_int = 3;

/// The word `e57`.
pub const OVS_READ_POINTS_FORMAT_E57: c_int = 4;

/// The word `landxml`.
pub const OVS_READ_POINTS_FORMAT_LANDXML: c_int = 5;

/// The word `m`.
pub const OVS_READ_POINTS_UNIT_M: c_int = 0;

/// The word `cm`.
pub const OVS_READ_POINTS_UNIT_CM: c_int = 1;

/// The word `mm`.
pub const OVS_READ_POINTS_UNIT_MM: c_int = 2;

/// The word `ft`.
pub const OVS_READ_POINTS_UNIT_FT: c_int = 3;

/// The word `us_survey_ft`.
pub const OVS_READ_POINTS_UNIT_US_SURVEY_FT: c_int = 4;

/// The word `in`.
pub const OVS_READ_POINTS_UNIT_IN: c_int = 5;

/// The word `yd`.
pub const OVS_READ_POINTS_UNIT_YD: c_int = 6;

/// The word `no`.
pub const OVS_READ_POINTS_OVERRULE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_READ_POINTS_OVERRULE_YES: c_int = 1;

/// The word `no`.
pub const OVS_READ_POINTS_GROUND_ONLY_NO: c_int = 0;

/// The word `yes`.
pub const OVS_READ_POINTS_GROUND_ONLY_YES: c_int = 1;

/// The word `not_finite`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_NOT_FINITE: c_int = 0;

/// The word `too_far`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_TOO_FAR: c_int = 1;

/// The word `not_shot`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_NOT_SHOT: c_int = 2;

/// The word `no_height`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_NO_HEIGHT: c_int = 3;

/// The word `invalid`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_INVALID: c_int = 4;

/// The word `withheld`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_WITHHELD: c_int = 5;

/// The word `noise`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_NOISE: c_int = 6;

/// The word `not_ground`.
pub const OVS_READ_POINTS_LEFT_OUT_REASON_NOT_GROUND: c_int = 7;

/// The result `tin`: the surface.
pub const OVS_READ_SURFACE_TIN: c_int = 0;

/// The result `format`: what the file is.
pub const OVS_READ_SURFACE_FORMAT: c_int = 1;

/// The result `unit`: the unit of its numbers, where all have one.
pub const OVS_READ_SURFACE_UNIT: c_int = 2;

/// The result `left_out`: points of the file that were not used.
pub const OVS_READ_SURFACE_LEFT_OUT: c_int = 3;

/// The column `reason` of `left_out`: why.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON: c_int = 0;

/// The column `count` of `left_out`: how many.
pub const OVS_READ_SURFACE_LEFT_OUT_COUNT: c_int = 1;

/// How many results there are.
pub const OVS_READ_SURFACE_RESULTS: c_int = 4;

/// The word `csv`.
pub const OVS_READ_SURFACE_FORMAT_CSV: c_int = 0;

/// The word `xyz`.
pub const OVS_READ_SURFACE_FORMAT_XYZ: c_int = 1;

/// The word `ply`.
pub const OVS_READ_SURFACE_FORMAT_PLY: c_int = 2;

/// The word `las`.
pub const OVS_READ_SURFACE_FORMAT_LAS: c_int = 3;

/// The word `e57`.
pub const OVS_READ_SURFACE_FORMAT_E57: c_int = 4;

/// The word `landxml`.
pub const OVS_READ_SURFACE_FORMAT_LANDXML: c_int = 5;

/// The word `m`.
pub const OVS_READ_SURFACE_UNIT_M: c_int = 0;

/// The word `cm`.
pub const OVS_READ_SURFACE_UNIT_CM: c_int = 1;

/// The word `mm`.
pub const OVS_READ_SURFACE_UNIT_MM: c_int = 2;

/// The word `ft`.
pub const OVS_READ_SURFACE_UNIT_FT: c_int = 3;

/// The word `us_survey_ft`.
pub const OVS_READ_SURFACE_UNIT_US_SURVEY_FT: c_int = 4;

/// The word `in`.
pub const OVS_READ_SURFACE_UNIT_IN: c_int = 5;

/// The word `yd`.
pub const OVS_READ_SURFACE_UNIT_YD: c_int = 6;

/// The word `no`.
pub const OVS_READ_SURFACE_OVERRULE_NO: c_int = 0;

/// The word `yes`.
pub const OVS_READ_SURFACE_OVERRULE_YES: c_int = 1;

/// The word `not_finite`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_FINITE: c_int = 0;

/// The word `too_far`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_TOO_FAR: c_int = 1;

/// The word `not_shot`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_SHOT: c_int = 2;

/// The word `no_height`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_NO_HEIGHT: c_int = 3;

/// The word `invalid`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_INVALID: c_int = 4;

/// The word `withheld`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_WITHHELD: c_int = 5;

/// The word `noise`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_NOISE: c_int = 6;

/// The word `not_ground`.
pub const OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_GROUND: c_int = 7;

/// The result `moved`: the points in the axes of the job.
pub const OVS_POINTS_TO_AXES_MOVED: c_int = 0;

/// The result `turn` (deg or rad): how far they were turned, counter-clockwise.
pub const OVS_POINTS_TO_AXES_TURN: c_int = 1;

/// The result `rise` (ft or m): what was added to heights, where the old origin came to lie.
pub const OVS_POINTS_TO_AXES_RISE: c_int = 2;

/// The result `tilt_x` (in/ft or %): how much more along the first axis of the job.
pub const OVS_POINTS_TO_AXES_TILT_X: c_int = 3;

/// The result `tilt_y` (in/ft or %): how much more along the second.
pub const OVS_POINTS_TO_AXES_TILT_Y: c_int = 4;

/// The result `residuals`: what is left over at the known points.
pub const OVS_POINTS_TO_AXES_RESIDUALS: c_int = 5;

/// The column `name` of `residuals`: its name.
pub const OVS_POINTS_TO_AXES_RESIDUALS_NAME: c_int = 0;

/// The column `x` of `residuals` (in or mm): along the first axis of the job.
pub const OVS_POINTS_TO_AXES_RESIDUALS_X: c_int = 1;

/// The column `y` of `residuals` (in or mm): along the second.
pub const OVS_POINTS_TO_AXES_RESIDUALS_Y: c_int = 2;

/// The column `height` of `residuals` (in or mm): in height.
pub const OVS_POINTS_TO_AXES_RESIDUALS_HEIGHT: c_int = 3;

/// How many results there are.
pub const OVS_POINTS_TO_AXES_RESULTS: c_int = 6;

/// The word `rise`.
pub const OVS_POINTS_TO_AXES_LEVELLING_RISE: c_int = 0;

/// The word `tilt`.
pub const OVS_POINTS_TO_AXES_LEVELLING_TILT: c_int = 1;

/// The result `moved`: the points in the new axes.
pub const OVS_POINTS_ALONG_WALL_MOVED: c_int = 0;

/// The result `turn` (deg or rad): how far they were turned, counter-clockwise.
pub const OVS_POINTS_ALONG_WALL_TURN: c_int = 1;

/// How many results there are.
pub const OVS_POINTS_ALONG_WALL_RESULTS: c_int = 2;

/// The result `floor`: the points kept.
pub const OVS_PART_STRAYS_FLOOR: c_int = 0;

/// The result `kept_count`: how many were kept.
pub const OVS_PART_STRAYS_KEPT_COUNT: c_int = 1;

/// The result `above_count`: how many stand above the floor.
pub const OVS_PART_STRAYS_ABOVE_COUNT: c_int = 2;

/// The result `below_count`: how many lie below it.
pub const OVS_PART_STRAYS_BELOW_COUNT: c_int = 3;

/// The result `alone_count`: how many have too few others near them.
pub const OVS_PART_STRAYS_ALONE_COUNT: c_int = 4;

/// The result `strays`: which points were taken out, and why.
pub const OVS_PART_STRAYS_STRAYS: c_int = 5;

/// The column `point` of `strays`: its number in the list of all, from 1.
pub const OVS_PART_STRAYS_STRAYS_POINT: c_int = 0;

/// The column `kind` of `strays`: why it is no floor.
pub const OVS_PART_STRAYS_STRAYS_KIND: c_int = 1;

/// How many results there are.
pub const OVS_PART_STRAYS_RESULTS: c_int = 6;

/// The word `above`.
pub const OVS_PART_STRAYS_STRAYS_KIND_ABOVE: c_int = 0;

/// The word `below`.
pub const OVS_PART_STRAYS_STRAYS_KIND_BELOW: c_int = 1;

/// The word `alone`.
pub const OVS_PART_STRAYS_STRAYS_KIND_ALONE: c_int = 2;

/// The result `thinned`: the points kept.
pub const OVS_THIN_POINTS_THINNED: c_int = 0;

/// The result `kept_count`: how many were kept.
pub const OVS_THIN_POINTS_KEPT_COUNT: c_int = 1;

/// The result `error` (in or mm): greatest height between the surface through them and a point left out.
pub const OVS_THIN_POINTS_ERROR: c_int = 2;

/// The result `worst`: the number of the point it is at.
pub const OVS_THIN_POINTS_WORST: c_int = 3;

/// The result `hull_count`: how many of those kept are corners of the convex hull.
pub const OVS_THIN_POINTS_HULL_COUNT: c_int = 4;

/// The result `outside_count`: how many lie outside the outline.
pub const OVS_THIN_POINTS_OUTSIDE_COUNT: c_int = 5;

/// The result `kept`: which points were kept.
pub const OVS_THIN_POINTS_KEPT: c_int = 6;

/// The column `point` of `kept`: its number in the list of all, from 1.
pub const OVS_THIN_POINTS_KEPT_POINT: c_int = 0;

/// How many results there are.
pub const OVS_THIN_POINTS_RESULTS: c_int = 7;

/// The word `laser`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_LASER: c_int = 0;

/// The word `optical_hundredths`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_HUNDREDTHS: c_int = 1;

/// The word `optical_eighths`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_EIGHTHS: c_int = 2;

/// The word `optical_sixteenths`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_SIXTEENTHS: c_int = 3;

/// The word `optical_millimetres`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_MILLIMETRES: c_int = 4;

/// The word `string`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_STRING: c_int = 5;

/// The word `water`.
pub const OVS_SURVEY_FROM_POINTS_INSTRUMENT_WATER: c_int = 6;

/// The word `trowelled`.
pub const OVS_SURVEY_FROM_POINTS_TEXTURE_TROWELLED: c_int = 0;

/// The word `broomed`.
pub const OVS_SURVEY_FROM_POINTS_TEXTURE_BROOMED: c_int = 1;

/// The word `scaled`.
pub const OVS_SURVEY_FROM_POINTS_TEXTURE_SCALED: c_int = 2;

/// The word `rough`.
pub const OVS_SURVEY_FROM_POINTS_TEXTURE_ROUGH: c_int = 3;

/// The word `no`.
pub const OVS_SURVEY_FROM_POINTS_BEYOND_ALLOWED_NO: c_int = 0;

/// The word `yes`.
pub const OVS_SURVEY_FROM_POINTS_BEYOND_ALLOWED_YES: c_int = 1;

/// The word `refuse`.
pub const OVS_SURVEY_FROM_POINTS_OUTSIDE_REFUSE: c_int = 0;

/// The word `use`.
pub const OVS_SURVEY_FROM_POINTS_OUTSIDE_USE: c_int = 1;

/// The word `leave_out`.
pub const OVS_SURVEY_FROM_POINTS_OUTSIDE_LEAVE_OUT: c_int = 2;

static ROD_ELEVATION: &Operation = row(OPERATIONS, "rod_elevation");

/// The elevation of a point from one set-up of the level.
///
/// Equation: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
/// Taken for granted: the line of sight is level and the rod plumb.
///
/// - `benchmark_ft` (ft): elevation of the benchmark; at least -3280.83989501 ft, at most 32808.3989501 ft.
/// - `backsight_ft` (ft): rod on the benchmark; at least 0 ft, at most 32.8083989501 ft.
/// - `rod_ft` (ft): rod on the point; at least 0 ft, at most 32.8083989501 ft.
/// - `elevation_ft` (ft), out: elevation of the point.
/// - `height_of_instrument_ft` (ft), out: height of the line of sight.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Since 0.1.0.
/// Example: ovs_rod_elevation_us(2156.77, 2.67, 6.72, ...) gives elevation_ft = 2152.72, height_of_instrument_ft = 2159.44.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_us(
    benchmark_ft: f64,
    backsight_ft: f64,
    rod_ft: f64,
    elevation_ft: *mut f64,
    height_of_instrument_ft: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(elevation_ft), Output::Numbers(height_of_instrument_ft)];
    unsafe { scalar::one(ROD_ELEVATION, System::Us, [benchmark_ft, backsight_ft, rod_ft], results, notes, Message::new(msg, msg_len)) }
}

/// The elevation of a point from one set-up of the level.
///
/// Equation: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
/// Taken for granted: the line of sight is level and the rod plumb.
///
/// - `benchmark_m` (m): elevation of the benchmark; at least -1000 m, at most 10000 m.
/// - `backsight_m` (m): rod on the benchmark; at least 0 m, at most 10 m.
/// - `rod_m` (m): rod on the point; at least 0 m, at most 10 m.
/// - `elevation_m` (m), out: elevation of the point.
/// - `height_of_instrument_m` (m), out: height of the line of sight.
/// - `notes`, out: the number of the result's note, or 0; may be null.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Since 0.1.0.
/// Example: ovs_rod_elevation_si(657.383, 0.813816, 2.04826, ...) gives elevation_m = 656.149, height_of_instrument_m = 658.197.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_si(
    benchmark_m: f64,
    backsight_m: f64,
    rod_m: f64,
    elevation_m: *mut f64,
    height_of_instrument_m: *mut f64,
    notes: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let results = [Output::Numbers(elevation_m), Output::Numbers(height_of_instrument_m)];
    unsafe { scalar::one(ROD_ELEVATION, System::Si, [benchmark_m, backsight_m, rod_m], results, notes, Message::new(msg, msg_len)) }
}

/// ovs_rod_elevation_us for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_us_array(
    benchmark_ft: *const f64,
    backsight_ft: *const f64,
    rod_ft: *const f64,
    elevation_ft: *mut f64,
    height_of_instrument_ft: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(benchmark_ft), Input::Numbers(backsight_ft), Input::Numbers(rod_ft)], results: [Output::Numbers(elevation_ft), Output::Numbers(height_of_instrument_ft)], notes, n, bad_index };
    unsafe { scalar::array(ROD_ELEVATION, System::Us, arrays, Message::new(msg, msg_len)) }
}

/// ovs_rod_elevation_si for each of `n` elements; an array may be input and result at once.
///
/// - `notes`, out: the number of each element's note, or 0; may be null.
/// - `n`: how many elements each array has; with 0 the arrays may be null.
/// - `bad_index`, out: the place of the first bad element, or -1; may be null.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_si_array(
    benchmark_m: *const f64,
    backsight_m: *const f64,
    rod_m: *const f64,
    elevation_m: *mut f64,
    height_of_instrument_m: *mut f64,
    notes: *mut c_int,
    n: c_int,
    bad_index: *mut c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> c_int {
    let arrays = Arrays { inputs: [Input::Numbers(benchmark_m), Input::Numbers(backsight_m), Input::Numbers(rod_m)], results: [Output::Numbers(elevation_m), Output::Numbers(height_of_instrument_m)], notes, n, bad_index };
    unsafe { scalar::array(ROD_ELEVATION, System::Si, arrays, Message::new(msg, msg_len)) }
}

/// Why ovs_rod_elevation_us refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_us_why(
    benchmark_ft: f64,
    backsight_ft: f64,
    rod_ft: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ROD_ELEVATION, System::Us, [benchmark_ft, backsight_ft, rod_ft], text) }
}

/// Why ovs_rod_elevation_si refuses these inputs, in full; else the meaning of its note, or nothing.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_rod_elevation_si_why(
    benchmark_m: f64,
    backsight_m: f64,
    rod_m: f64,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let text = TextOut::new("text", text, text_len, needed);
    unsafe { scalar::why(ROD_ELEVATION, System::Si, [benchmark_m, backsight_m, rod_m], text) }
}

static LEVEL_BOOK: &Operation = row(OPERATIONS, "level_book");

/// Reduces a level book: heights of instrument, elevations, closure.
///
/// Equation: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
/// backsights - sum of foresights = last - first; misclosure = found - known, shared out by set-ups.
/// Taken for granted: every reading is equally good.
///
/// - `page_backsight_ft` (ft): rod on a known point, opens a set-up; at least 0 ft, at most 32.8083989501 ft; may
///   be left out; NaN for an empty cell, may be null.
/// - `page_sight_ft` (ft): rod on any point; at least 0 ft, at most 32.8083989501 ft; may be left out; NaN for an
///   empty cell, may be null.
/// - `page_foresight_ft` (ft): rod on the turning point or closing benchmark; at least 0 ft, at most 32.8083989501
///   ft; may be left out; NaN for an empty cell, may be null.
/// - `page_close_ft` (ft): rod on the backsight point again; at least 0 ft, at most 32.8083989501 ft; may be left
///   out; NaN for an empty cell, may be null.
/// - `page_rows`: the readings in the order they were booked: how many rows, each a point with its backsight,
///   sight, foresight or repeated backsight; at least 1.
/// - `benchmarks_elevation_ft` (ft): its elevation; at least -3280.83989501 ft, at most 32808.3989501 ft.
/// - `benchmarks_rows`: the points of known elevation: how many rows, each a point of known elevation; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `point` of `page`: name of the point; required.
///   - `name` of `benchmarks`: its name; required.
///   - `closure_tolerance` (in): how far a line of two or more set-ups may be off; at least 0 in; may be left out.
///   - `recheck_tolerance` (in): how far one set-up may be off: its backsight point read again, or the benchmark it
///     ends on; at least 0 in; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_LEVEL_BOOK_MISCLOSURE (in): found less known where the line closes.
///   - OVS_LEVEL_BOOK_BACKSIGHTS (ft): sum of the backsights of the first line.
///   - OVS_LEVEL_BOOK_FORESIGHTS (ft): sum of its foresights.
///   - OVS_LEVEL_BOOK_RISE (ft): last less first of that line.
///   - OVS_LEVEL_BOOK_SETUPS: the set-ups.
///   - OVS_LEVEL_BOOK_POINTS: the points.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_CLOSURE_EXCEEDED, OVS_BOOK_INCOMPLETE.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"page":[{"point":"BM A","backsight":"3.10 ft"},{"point":"TP1","foresight":"9.82 ft","backsight":"6.44 ft"},{"point":"TP2","foresight":"6.96 ft","backsight":"8.76 ft"},{"point":"TP3","foresight":"3.27 ft","backsight":"7.12 ft"},{"point":"BM B","foresight":"10.42 ft"}],"benchmarks":[{"name":"BM A","elevation":"100.00 ft"},{"name":"BM B","elevation":"94.91 ft"}],"closure_tolerance":"0.05 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_level_book_us(
    page_backsight_ft: *const f64,
    page_sight_ft: *const f64,
    page_foresight_ft: *const f64,
    page_close_ft: *const f64,
    page_rows: c_int,
    benchmarks_elevation_ft: *const f64,
    benchmarks_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(page_rows, &[(1, Input::Numbers(page_backsight_ft)), (2, Input::Numbers(page_sight_ft)), (3, Input::Numbers(page_foresight_ft)), (4, Input::Numbers(page_close_ft))])),
        (1, Given::Table(benchmarks_rows, &[(1, Input::Numbers(benchmarks_elevation_ft))])),
    ];
    let request = Request::new(LEVEL_BOOK, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Reduces a level book: heights of instrument, elevations, closure.
///
/// Equation: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
/// backsights - sum of foresights = last - first; misclosure = found - known, shared out by set-ups.
/// Taken for granted: every reading is equally good.
///
/// - `page_backsight_m` (m): rod on a known point, opens a set-up; at least 0 m, at most 10 m; may be left out; NaN
///   for an empty cell, may be null.
/// - `page_sight_m` (m): rod on any point; at least 0 m, at most 10 m; may be left out; NaN for an empty cell, may
///   be null.
/// - `page_foresight_m` (m): rod on the turning point or closing benchmark; at least 0 m, at most 10 m; may be left
///   out; NaN for an empty cell, may be null.
/// - `page_close_m` (m): rod on the backsight point again; at least 0 m, at most 10 m; may be left out; NaN for an
///   empty cell, may be null.
/// - `page_rows`: the readings in the order they were booked: how many rows, each a point with its backsight,
///   sight, foresight or repeated backsight; at least 1.
/// - `benchmarks_elevation_m` (m): its elevation; at least -1000 m, at most 10000 m.
/// - `benchmarks_rows`: the points of known elevation: how many rows, each a point of known elevation; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `point` of `page`: name of the point; required.
///   - `name` of `benchmarks`: its name; required.
///   - `closure_tolerance` (mm): how far a line of two or more set-ups may be off; at least 0 mm; may be left out.
///   - `recheck_tolerance` (mm): how far one set-up may be off: its backsight point read again, or the benchmark it
///     ends on; at least 0 mm; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_LEVEL_BOOK_MISCLOSURE (mm): found less known where the line closes.
///   - OVS_LEVEL_BOOK_BACKSIGHTS (m): sum of the backsights of the first line.
///   - OVS_LEVEL_BOOK_FORESIGHTS (m): sum of its foresights.
///   - OVS_LEVEL_BOOK_RISE (m): last less first of that line.
///   - OVS_LEVEL_BOOK_SETUPS: the set-ups.
///   - OVS_LEVEL_BOOK_POINTS: the points.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_CLOSURE_EXCEEDED, OVS_BOOK_INCOMPLETE.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"page":[{"point":"BM A","backsight":"3.10 ft"},{"point":"TP1","foresight":"9.82 ft","backsight":"6.44 ft"},{"point":"TP2","foresight":"6.96 ft","backsight":"8.76 ft"},{"point":"TP3","foresight":"3.27 ft","backsight":"7.12 ft"},{"point":"BM B","foresight":"10.42 ft"}],"benchmarks":[{"name":"BM A","elevation":"100.00 ft"},{"name":"BM B","elevation":"94.91 ft"}],"closure_tolerance":"0.05 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_level_book_si(
    page_backsight_m: *const f64,
    page_sight_m: *const f64,
    page_foresight_m: *const f64,
    page_close_m: *const f64,
    page_rows: c_int,
    benchmarks_elevation_m: *const f64,
    benchmarks_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Table(page_rows, &[(1, Input::Numbers(page_backsight_m)), (2, Input::Numbers(page_sight_m)), (3, Input::Numbers(page_foresight_m)), (4, Input::Numbers(page_close_m))])),
        (1, Given::Table(benchmarks_rows, &[(1, Input::Numbers(benchmarks_elevation_m))])),
    ];
    let request = Request::new(LEVEL_BOOK, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_level_book_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_level_book_us_why(
    page_backsight_ft: *const f64,
    page_sight_ft: *const f64,
    page_foresight_ft: *const f64,
    page_close_ft: *const f64,
    page_rows: c_int,
    benchmarks_elevation_ft: *const f64,
    benchmarks_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(page_rows, &[(1, Input::Numbers(page_backsight_ft)), (2, Input::Numbers(page_sight_ft)), (3, Input::Numbers(page_foresight_ft)), (4, Input::Numbers(page_close_ft))])),
        (1, Given::Table(benchmarks_rows, &[(1, Input::Numbers(benchmarks_elevation_ft))])),
    ];
    let request = Request::new(LEVEL_BOOK, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_level_book_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_level_book_si_why(
    page_backsight_m: *const f64,
    page_sight_m: *const f64,
    page_foresight_m: *const f64,
    page_close_m: *const f64,
    page_rows: c_int,
    benchmarks_elevation_m: *const f64,
    benchmarks_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(page_rows, &[(1, Input::Numbers(page_backsight_m)), (2, Input::Numbers(page_sight_m)), (3, Input::Numbers(page_foresight_m)), (4, Input::Numbers(page_close_m))])),
        (1, Given::Table(benchmarks_rows, &[(1, Input::Numbers(benchmarks_elevation_m))])),
    ];
    let request = Request::new(LEVEL_BOOK, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static OUTLINE_FROM_CORNERS: &Operation = row(OPERATIONS, "outline_from_corners");

/// The plan edge of the work from its corners in order.
///
/// Equation: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
/// Taken for granted: edges are straight between corners; either way round.
///
/// - `corners_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `corners_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `corners_rows`: the corners in order: how many rows, each a corner of the plan edge; at least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edge` of `corners`: name of the edge to the next corner; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The plan edge of the work, with holes and named edges.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_OUTLINE_CROSSES,
/// OVS_OUTLINE_TOO_FEW.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"x":["0 ft","20 ft","20 ft","0 ft"],"y":["0 ft","0 ft","32 ft","32 ft"],"edge":["front","right","back","left"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_corners_us(
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
) -> *mut ovs_outline {
    let given = [
        (0, Given::Table(corners_rows, &[(0, Input::Numbers(corners_x_ft)), (1, Input::Numbers(corners_y_ft))])),
    ];
    let request = Request::new(OUTLINE_FROM_CORNERS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, OUTLINE_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The plan edge of the work from its corners in order.
///
/// Equation: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
/// Taken for granted: edges are straight between corners; either way round.
///
/// - `corners_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
/// - `corners_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
/// - `corners_rows`: the corners in order: how many rows, each a corner of the plan edge; at least 3.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `edge` of `corners`: name of the edge to the next corner; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The plan edge of the work, with holes and named edges.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_OUTLINE_CROSSES,
/// OVS_OUTLINE_TOO_FEW.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"corners":{"x":["0 ft","20 ft","20 ft","0 ft"],"y":["0 ft","0 ft","32 ft","32 ft"],"edge":["front","right","back","left"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_corners_si(
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
) -> *mut ovs_outline {
    let given = [
        (0, Given::Table(corners_rows, &[(0, Input::Numbers(corners_x_m)), (1, Input::Numbers(corners_y_m))])),
    ];
    let request = Request::new(OUTLINE_FROM_CORNERS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, OUTLINE_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_outline_from_corners_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_corners_us_why(
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
        (0, Given::Table(corners_rows, &[(0, Input::Numbers(corners_x_ft)), (1, Input::Numbers(corners_y_ft))])),
    ];
    let request = Request::new(OUTLINE_FROM_CORNERS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_outline_from_corners_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_corners_si_why(
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
        (0, Given::Table(corners_rows, &[(0, Input::Numbers(corners_x_m)), (1, Input::Numbers(corners_y_m))])),
    ];
    let request = Request::new(OUTLINE_FROM_CORNERS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static OUTLINE_FROM_SIDES: &Operation = row(OPERATIONS, "outline_from_sides");

/// The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
///
/// Equation: corners square and the closing gap shared out; or the quadrilateral of four sides and its diagonals.
/// Taken for granted: the first wall runs along x from the first corner, the work on its left.
///
/// - `sides_length_ft` (ft): its length; more than 0 ft, at most 32808.3989501 ft.
/// - `sides_rows`: the walls in order: how many rows, each a wall; at least 4.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `sides`: its name; may be left out.
///   - `turn` of `sides`: the square turn at its end, left where not given; 0 left, 1 right; may be left out.
///   - `diagonal` (ft): first corner to third, of four walls; more than 0 ft, at most 32808.3989501 ft; may be left
///     out.
///   - `second_diagonal` (ft): second corner to fourth, of four walls; more than 0 ft, at most 32808.3989501 ft;
///     may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The plan edge of the work, with holes and named edges.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTLINE_OPEN, OVS_DIAGONAL_IMPOSSIBLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}],"diagonal":"37' 8 7/8\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_sides_us(
    sides_length_ft: *const f64,
    sides_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_outline {
    let given = [
        (0, Given::Table(sides_rows, &[(0, Input::Numbers(sides_length_ft))])),
    ];
    let request = Request::new(OUTLINE_FROM_SIDES, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, OUTLINE_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
///
/// Equation: corners square and the closing gap shared out; or the quadrilateral of four sides and its diagonals.
/// Taken for granted: the first wall runs along x from the first corner, the work on its left.
///
/// - `sides_length_m` (m): its length; more than 0 m, at most 10000 m.
/// - `sides_rows`: the walls in order: how many rows, each a wall; at least 4.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `sides`: its name; may be left out.
///   - `turn` of `sides`: the square turn at its end, left where not given; 0 left, 1 right; may be left out.
///   - `diagonal` (m): first corner to third, of four walls; more than 0 m, at most 10000 m; may be left out.
///   - `second_diagonal` (m): second corner to fourth, of four walls; more than 0 m, at most 10000 m; may be left
///     out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The plan edge of the work, with holes and named edges.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTLINE_OPEN, OVS_DIAGONAL_IMPOSSIBLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}],"diagonal":"37' 8 7/8\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_sides_si(
    sides_length_m: *const f64,
    sides_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_outline {
    let given = [
        (0, Given::Table(sides_rows, &[(0, Input::Numbers(sides_length_m))])),
    ];
    let request = Request::new(OUTLINE_FROM_SIDES, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, OUTLINE_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_outline_from_sides_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_sides_us_why(
    sides_length_ft: *const f64,
    sides_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(sides_rows, &[(0, Input::Numbers(sides_length_ft))])),
    ];
    let request = Request::new(OUTLINE_FROM_SIDES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_outline_from_sides_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_outline_from_sides_si_why(
    sides_length_m: *const f64,
    sides_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Table(sides_rows, &[(0, Input::Numbers(sides_length_m))])),
    ];
    let request = Request::new(OUTLINE_FROM_SIDES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_FROM_SHOTS: &Operation = row(OPERATIONS, "survey_from_shots");

/// The surface of the old slab through shots in any order.
///
/// Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Taken for granted: the slab is plane between neighbouring shots.
///
/// - `outline`: the plan edge of the work.
/// - `shots_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `shots_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `shots_elevation_ft` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft.
/// - `shots_rows`: the shots: how many rows, each a shot of the old slab; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `shots`: its name; may be left out.
///   - `outside` of `shots`: outside the outline on purpose; 0 no, 1 yes; may be left out.
///   - `step` of `shots`: one side of a step; 0 no, 1 yes; may be left out.
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_TWO_HEIGHTS,
/// OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"shots":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_shots_us(
    outline: *const ovs_outline,
    shots_x_ft: *const f64,
    shots_y_ft: *const f64,
    shots_elevation_ft: *const f64,
    shots_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(shots_rows, &[(0, Input::Numbers(shots_x_ft)), (1, Input::Numbers(shots_y_ft)), (2, Input::Numbers(shots_elevation_ft))])),
    ];
    let request = Request::new(SURVEY_FROM_SHOTS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The surface of the old slab through shots in any order.
///
/// Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Taken for granted: the slab is plane between neighbouring shots.
///
/// - `outline`: the plan edge of the work.
/// - `shots_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
/// - `shots_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
/// - `shots_elevation_m` (m): height above the job datum; at least -10000 m, at most 10000 m.
/// - `shots_rows`: the shots: how many rows, each a shot of the old slab; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `shots`: its name; may be left out.
///   - `outside` of `shots`: outside the outline on purpose; 0 no, 1 yes; may be left out.
///   - `step` of `shots`: one side of a step; 0 no, 1 yes; may be left out.
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_TWO_HEIGHTS,
/// OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"shots":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_shots_si(
    outline: *const ovs_outline,
    shots_x_m: *const f64,
    shots_y_m: *const f64,
    shots_elevation_m: *const f64,
    shots_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(shots_rows, &[(0, Input::Numbers(shots_x_m)), (1, Input::Numbers(shots_y_m)), (2, Input::Numbers(shots_elevation_m))])),
    ];
    let request = Request::new(SURVEY_FROM_SHOTS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_from_shots_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_shots_us_why(
    outline: *const ovs_outline,
    shots_x_ft: *const f64,
    shots_y_ft: *const f64,
    shots_elevation_ft: *const f64,
    shots_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(shots_rows, &[(0, Input::Numbers(shots_x_ft)), (1, Input::Numbers(shots_y_ft)), (2, Input::Numbers(shots_elevation_ft))])),
    ];
    let request = Request::new(SURVEY_FROM_SHOTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_from_shots_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_shots_si_why(
    outline: *const ovs_outline,
    shots_x_m: *const f64,
    shots_y_m: *const f64,
    shots_elevation_m: *const f64,
    shots_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(shots_rows, &[(0, Input::Numbers(shots_x_m)), (1, Input::Numbers(shots_y_m)), (2, Input::Numbers(shots_elevation_m))])),
    ];
    let request = Request::new(SURVEY_FROM_SHOTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_FROM_GRID: &Operation = row(OPERATIONS, "survey_from_grid");

/// The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
///
/// Equation: each cell is four triangles about the mean of its corners.
/// Taken for granted: the slab is plane over each triangle.
///
/// - `outline`: the plan edge of the work.
/// - `columns_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
/// - `rows_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
/// - `elevations_elevation_ft` (ft): height; empty where not shot; at least -32808.3989501 ft, at most
///   32808.3989501 ft; may be left out; NaN for an empty cell, may be null.
/// - `elevations_rows`: the heights, row by row: how many rows, each the height of a grid place, row by row; at
///   least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH,
/// OVS_BEYOND_SHOTS, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"elevations":{"elevation":["99.20 ft","99.18 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_grid_us(
    outline: *const ovs_outline,
    columns_x_ft: *const f64,
    columns_rows: c_int,
    rows_y_ft: *const f64,
    rows_rows: c_int,
    elevations_elevation_ft: *const f64,
    elevations_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_ft))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_ft))])),
        (3, Given::Table(elevations_rows, &[(0, Input::Numbers(elevations_elevation_ft))])),
    ];
    let request = Request::new(SURVEY_FROM_GRID, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
///
/// Equation: each cell is four triangles about the mean of its corners.
/// Taken for granted: the slab is plane over each triangle.
///
/// - `outline`: the plan edge of the work.
/// - `columns_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
/// - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
/// - `rows_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
/// - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
/// - `elevations_elevation_m` (m): height; empty where not shot; at least -10000 m, at most 10000 m; may be left
///   out; NaN for an empty cell, may be null.
/// - `elevations_rows`: the heights, row by row: how many rows, each the height of a grid place, row by row; at
///   least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH,
/// OVS_BEYOND_SHOTS, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"elevations":{"elevation":["99.20 ft","99.18 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_grid_si(
    outline: *const ovs_outline,
    columns_x_m: *const f64,
    columns_rows: c_int,
    rows_y_m: *const f64,
    rows_rows: c_int,
    elevations_elevation_m: *const f64,
    elevations_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_m))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_m))])),
        (3, Given::Table(elevations_rows, &[(0, Input::Numbers(elevations_elevation_m))])),
    ];
    let request = Request::new(SURVEY_FROM_GRID, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_from_grid_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_grid_us_why(
    outline: *const ovs_outline,
    columns_x_ft: *const f64,
    columns_rows: c_int,
    rows_y_ft: *const f64,
    rows_rows: c_int,
    elevations_elevation_ft: *const f64,
    elevations_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_ft))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_ft))])),
        (3, Given::Table(elevations_rows, &[(0, Input::Numbers(elevations_elevation_ft))])),
    ];
    let request = Request::new(SURVEY_FROM_GRID, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_from_grid_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_grid_si_why(
    outline: *const ovs_outline,
    columns_x_m: *const f64,
    columns_rows: c_int,
    rows_y_m: *const f64,
    rows_rows: c_int,
    elevations_elevation_m: *const f64,
    elevations_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_m))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_m))])),
        (3, Given::Table(elevations_rows, &[(0, Input::Numbers(elevations_elevation_m))])),
    ];
    let request = Request::new(SURVEY_FROM_GRID, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_FROM_RODS: &Operation = row(OPERATIONS, "survey_from_rods");

/// The surface of the old slab through a grid of rod readings from one set-up.
///
/// Equation: elevation = benchmark + backsight - rod.
/// Taken for granted: one set-up; the slab is plane over each triangle.
///
/// - `outline`: the plan edge of the work.
/// - `columns_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
/// - `rows_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
/// - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
/// - `rods_rod_ft` (ft): reading; empty where not shot; at least 0 ft, at most 32.8083989501 ft; may be left out;
///   NaN for an empty cell, may be null.
/// - `rods_rows`: the readings, row by row: how many rows, each the reading on a grid place, row by row; at least
///   1.
/// - `benchmark_ft` (ft): elevation of the benchmark; at least -3280.83989501 ft, at most 32808.3989501 ft.
/// - `backsight_ft` (ft): rod on the benchmark; at least 0 ft, at most 32.8083989501 ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_LENGTH_MISMATCH,
/// OVS_NULL_POINTER.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"rods":{"rod":["5' 0 5/8\"","5' 0 1/2\"","5' 0 3/8\"","4' 11 7/8\"","5' 0\"","4' 11 7/8\""]},"benchmark":"100 ft","backsight":"4' 2 1/2\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_rods_us(
    outline: *const ovs_outline,
    columns_x_ft: *const f64,
    columns_rows: c_int,
    rows_y_ft: *const f64,
    rows_rows: c_int,
    rods_rod_ft: *const f64,
    rods_rows: c_int,
    benchmark_ft: f64,
    backsight_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_ft))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_ft))])),
        (3, Given::Table(rods_rows, &[(0, Input::Numbers(rods_rod_ft))])),
        (4, Given::Number(benchmark_ft)),
        (5, Given::Number(backsight_ft)),
    ];
    let request = Request::new(SURVEY_FROM_RODS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The surface of the old slab through a grid of rod readings from one set-up.
///
/// Equation: elevation = benchmark + backsight - rod.
/// Taken for granted: one set-up; the slab is plane over each triangle.
///
/// - `outline`: the plan edge of the work.
/// - `columns_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
/// - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
/// - `rows_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
/// - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
/// - `rods_rod_m` (m): reading; empty where not shot; at least 0 m, at most 10 m; may be left out; NaN for an empty
///   cell, may be null.
/// - `rods_rows`: the readings, row by row: how many rows, each the reading on a grid place, row by row; at least
///   1.
/// - `benchmark_m` (m): elevation of the benchmark; at least -1000 m, at most 10000 m.
/// - `backsight_m` (m): rod on the benchmark; at least 0 m, at most 10 m.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_LENGTH_MISMATCH,
/// OVS_NULL_POINTER.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"rods":{"rod":["5' 0 5/8\"","5' 0 1/2\"","5' 0 3/8\"","4' 11 7/8\"","5' 0\"","4' 11 7/8\""]},"benchmark":"100 ft","backsight":"4' 2 1/2\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_rods_si(
    outline: *const ovs_outline,
    columns_x_m: *const f64,
    columns_rows: c_int,
    rows_y_m: *const f64,
    rows_rows: c_int,
    rods_rod_m: *const f64,
    rods_rows: c_int,
    benchmark_m: f64,
    backsight_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_m))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_m))])),
        (3, Given::Table(rods_rows, &[(0, Input::Numbers(rods_rod_m))])),
        (4, Given::Number(benchmark_m)),
        (5, Given::Number(backsight_m)),
    ];
    let request = Request::new(SURVEY_FROM_RODS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_from_rods_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_rods_us_why(
    outline: *const ovs_outline,
    columns_x_ft: *const f64,
    columns_rows: c_int,
    rows_y_ft: *const f64,
    rows_rows: c_int,
    rods_rod_ft: *const f64,
    rods_rows: c_int,
    benchmark_ft: f64,
    backsight_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_ft))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_ft))])),
        (3, Given::Table(rods_rows, &[(0, Input::Numbers(rods_rod_ft))])),
        (4, Given::Number(benchmark_ft)),
        (5, Given::Number(backsight_ft)),
    ];
    let request = Request::new(SURVEY_FROM_RODS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_from_rods_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_rods_si_why(
    outline: *const ovs_outline,
    columns_x_m: *const f64,
    columns_rows: c_int,
    rows_y_m: *const f64,
    rows_rows: c_int,
    rods_rod_m: *const f64,
    rods_rows: c_int,
    benchmark_m: f64,
    backsight_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Table(columns_rows, &[(0, Input::Numbers(columns_x_m))])),
        (2, Given::Table(rows_rows, &[(0, Input::Numbers(rows_y_m))])),
        (3, Given::Table(rods_rows, &[(0, Input::Numbers(rods_rod_m))])),
        (4, Given::Number(benchmark_m)),
        (5, Given::Number(backsight_m)),
    ];
    let request = Request::new(SURVEY_FROM_RODS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_TRIANGLES: &Operation = row(OPERATIONS, "survey_triangles");

/// The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
///
/// Equation: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the outline.
/// Taken for granted: the slab is plane over each triangle.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_TRIANGLES_TRIANGLES: the triangles.
///
/// Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_triangles_us(
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
    let request = Request::new(SURVEY_TRIANGLES, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
///
/// Equation: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the outline.
/// Taken for granted: the slab is plane over each triangle.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_TRIANGLES_TRIANGLES: the triangles.
///
/// Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_triangles_si(
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
    let request = Request::new(SURVEY_TRIANGLES, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_triangles_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_triangles_us_why(
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
    let request = Request::new(SURVEY_TRIANGLES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_triangles_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_triangles_si_why(
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
    let request = Request::new(SURVEY_TRIANGLES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_SUSPECTS: &Operation = row(OPERATIONS, "survey_suspects");

/// The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand
/// invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of
/// ten; three of ten books without a slip name some shot.
///
/// Equation: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is five
/// times likelier than chance.
/// Taken for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal but for
/// slips.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `rod`: how the rod is graduated; without it the readings tell; 0 inches, 1 tenths, 2 metric, 3 unknown; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_SUSPECTS_SUSPECTS: the suspects, the farthest off first.
///   - OVS_SURVEY_SUSPECTS_JUDGED: how many shots were judged.
///   - OVS_SURVEY_SUSPECTS_ROUGHNESS (in): standard deviation that each shot has for itself: reading, texture and
///     small waves.
///   - OVS_SURVEY_SUSPECTS_GRADUATION: how the rod is graduated; 0 inches, 1 tenths, 2 metric, 3 unknown.
///
/// Refuses with OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
/// leave-one-out prediction (any), kriging, from memory: confirm.
/// Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
/// practice, no source.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"}]},"grid":{"columns":["1 ft","8 ft","16 ft","23 ft"],"rows":["1 ft","8 ft","16 ft","23 ft"],"elevations":["99.20 ft","99.18 ft","99.19 ft","99.17 ft","99.24 ft","99.22 ft","99.73 ft","99.23 ft","99.29 ft","99.28 ft","99.26 ft","99.27 ft","99.33 ft","99.31 ft","99.32 ft","99.30 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_suspects_us(
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
    let request = Request::new(SURVEY_SUSPECTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand
/// invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of
/// ten; three of ten books without a slip name some shot.
///
/// Equation: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is five
/// times likelier than chance.
/// Taken for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal but for
/// slips.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `rod`: how the rod is graduated; without it the readings tell; 0 inches, 1 tenths, 2 metric, 3 unknown; may
///     be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_SUSPECTS_SUSPECTS: the suspects, the farthest off first.
///   - OVS_SURVEY_SUSPECTS_JUDGED: how many shots were judged.
///   - OVS_SURVEY_SUSPECTS_ROUGHNESS (mm): standard deviation that each shot has for itself: reading, texture and
///     small waves.
///   - OVS_SURVEY_SUSPECTS_GRADUATION: how the rod is graduated; 0 inches, 1 tenths, 2 metric, 3 unknown.
///
/// Refuses with OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
/// leave-one-out prediction (any), kriging, from memory: confirm.
/// Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
/// practice, no source.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"}]},"grid":{"columns":["1 ft","8 ft","16 ft","23 ft"],"rows":["1 ft","8 ft","16 ft","23 ft"],"elevations":["99.20 ft","99.18 ft","99.19 ft","99.17 ft","99.24 ft","99.22 ft","99.73 ft","99.23 ft","99.29 ft","99.28 ft","99.26 ft","99.27 ft","99.33 ft","99.31 ft","99.32 ft","99.30 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_suspects_si(
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
    let request = Request::new(SURVEY_SUSPECTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_suspects_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_suspects_us_why(
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
    let request = Request::new(SURVEY_SUSPECTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_suspects_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_suspects_si_why(
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
    let request = Request::new(SURVEY_SUSPECTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_WITHOUT: &Operation = row(OPERATIONS, "survey_without");

/// The old slab without the shots named; the others keep their names.
///
/// Equation: the surface through the shots that are left.
/// Taken for granted: the caller knows why.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `leave_out`: the shots to leave out; required.
///   - `name` of `leave_out`: its name; required.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_EMPTY_LIST, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_SHOT_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","6 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.68 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}},"leave_out":{"name":["A2"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_without_us(
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(SURVEY_WITHOUT, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The old slab without the shots named; the others keep their names.
///
/// Equation: the surface through the shots that are left.
/// Taken for granted: the caller knows why.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `leave_out`: the shots to leave out; required.
///   - `name` of `leave_out`: its name; required.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_EMPTY_LIST, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_SHOT_UNKNOWN.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","6 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.68 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}},"leave_out":{"name":["A2"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_without_si(
    survey: *const ovs_survey,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("survey", survey))),
    ];
    let request = Request::new(SURVEY_WITHOUT, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_without_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_without_us_why(
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
    let request = Request::new(SURVEY_WITHOUT, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_without_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_without_si_why(
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
    let request = Request::new(SURVEY_WITHOUT, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_COVERAGE: &Operation = row(OPERATIONS, "survey_coverage");

/// How much of the work lies too far from any shot, and where the next shots belong.
///
/// Equation: uncovered = area of the work outside all circles about the shots; next = the middle of the largest
/// circle without a shot.
/// Taken for granted: straight distances, through walls and holes.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `near` (ft): how near a shot should be to every place; at least 0.0416666666667 ft, at most 328.083989501
///     ft; where left out 6 ft, because a grid of 8 ft leaves no place farther, common practice, no source.
///   - `most`: how many places for more shots to tell; from 0 to 500; where left out 12, because an hour's work.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_COVERAGE_AREA (ft2): area of the work.
///   - OVS_SURVEY_COVERAGE_UNCOVERED (ft2): area farther than that from every shot.
///   - OVS_SURVEY_COVERAGE_SHARE (%): its share of the work.
///   - OVS_SURVEY_COVERAGE_BEYOND (ft2): area beyond the last shots.
///   - OVS_SURVEY_COVERAGE_UNSURVEYED (ft2): area in triangles that leave the outline.
///   - OVS_SURVEY_COVERAGE_FARTHEST (ft): the farthest any place is from a shot.
///   - OVS_SURVEY_COVERAGE_FARTHEST_X (ft): where it is, from the left.
///   - OVS_SURVEY_COVERAGE_FARTHEST_Y (ft): where it is, from the front.
///   - OVS_SURVEY_COVERAGE_NEXT: where the next shots belong, until every place is near enough.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"20 ft"},{"length":"30 ft"},{"length":"20 ft"},{"length":"30 ft"}]},"grid":{"columns":["1 ft","19 ft"],"rows":["1 ft","29 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_coverage_us(
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
    let request = Request::new(SURVEY_COVERAGE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// How much of the work lies too far from any shot, and where the next shots belong.
///
/// Equation: uncovered = area of the work outside all circles about the shots; next = the middle of the largest
/// circle without a shot.
/// Taken for granted: straight distances, through walls and holes.
///
/// - `survey`: the old slab.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `near` (m): how near a shot should be to every place; at least 0.0127 m, at most 100 m; where left out 6 ft,
///     because a grid of 8 ft leaves no place farther, common practice, no source.
///   - `most`: how many places for more shots to tell; from 0 to 500; where left out 12, because an hour's work.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_SURVEY_COVERAGE_AREA (m2): area of the work.
///   - OVS_SURVEY_COVERAGE_UNCOVERED (m2): area farther than that from every shot.
///   - OVS_SURVEY_COVERAGE_SHARE (%): its share of the work.
///   - OVS_SURVEY_COVERAGE_BEYOND (m2): area beyond the last shots.
///   - OVS_SURVEY_COVERAGE_UNSURVEYED (m2): area in triangles that leave the outline.
///   - OVS_SURVEY_COVERAGE_FARTHEST (m): the farthest any place is from a shot.
///   - OVS_SURVEY_COVERAGE_FARTHEST_X (m): where it is, from the left.
///   - OVS_SURVEY_COVERAGE_FARTHEST_Y (m): where it is, from the front.
///   - OVS_SURVEY_COVERAGE_NEXT: where the next shots belong, until every place is near enough.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"length":"20 ft"},{"length":"30 ft"},{"length":"20 ft"},{"length":"30 ft"}]},"grid":{"columns":["1 ft","19 ft"],"rows":["1 ft","29 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_coverage_si(
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
    let request = Request::new(SURVEY_COVERAGE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_coverage_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_coverage_us_why(
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
    let request = Request::new(SURVEY_COVERAGE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_coverage_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_coverage_si_why(
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
    let request = Request::new(SURVEY_COVERAGE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static TWO_PEG_TEST: &Operation = row(OPERATIONS, "two_peg_test");

/// Whether the line of sight of a level or laser is level, from readings on two pegs.
///
/// Equation: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right =
/// reading - tilt distance.
/// Taken for granted: the first set-up half way between the pegs; curvature and refraction left out.
///
/// - `middle_a_ft` (ft): rod on peg A from half way between the pegs; at least 0 ft, at most 32.8083989501 ft.
/// - `middle_b_ft` (ft): rod on peg B from there; at least 0 ft, at most 32.8083989501 ft.
/// - `end_a_ft` (ft): rod on peg A from near one peg; at least 0 ft, at most 32.8083989501 ft.
/// - `end_b_ft` (ft): rod on peg B from there; at least 0 ft, at most 32.8083989501 ft.
/// - `distance_a_ft` (ft): from the instrument to peg A in the second set-up; at least 0 ft, at most 3280.83989501
///   ft.
/// - `distance_b_ft` (ft): from the instrument to peg B in the second set-up; at least 0 ft, at most 3280.83989501
///   ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `limit` (in/ft): the tilt allowed; at least 0 in/ft, at most 1.2 in/ft; where left out 0.00125 in/ft,
///     because 1/16 in per 50 ft, common practice, no source.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_TWO_PEG_TEST_RISE (ft): how much higher peg B stands than peg A.
///   - OVS_TWO_PEG_TEST_TILT (in/ft): rise of the line of sight over the distance.
///   - OVS_TWO_PEG_TEST_RIGHT_A (ft): what the second set-up should read on peg A.
///   - OVS_TWO_PEG_TEST_RIGHT_B (ft): what it should read on peg B.
///   - OVS_TWO_PEG_TEST_OFF (in): how much too high it reads on the farther peg.
///   - OVS_TWO_PEG_TEST_PASSES: whether the tilt is within what is allowed; 0 no, 1 yes.
///   - OVS_TWO_PEG_TEST_GOOD_FOR (ft): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: from half way between two pegs the difference of the readings is free of the tilt of the line of sight:
/// Surveying textbooks, two-peg test (any), collimation.
/// Basis: the line of sight may tilt by 1/16 in per 50 ft: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"middle_a":"4.52 ft","middle_b":"5.17 ft","end_a":"4.86 ft","end_b":"5.49 ft","distance_a":"10 ft","distance_b":"110 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_peg_test_us(
    middle_a_ft: f64,
    middle_b_ft: f64,
    end_a_ft: f64,
    end_b_ft: f64,
    distance_a_ft: f64,
    distance_b_ft: f64,
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
        (0, Given::Number(middle_a_ft)),
        (1, Given::Number(middle_b_ft)),
        (2, Given::Number(end_a_ft)),
        (3, Given::Number(end_b_ft)),
        (4, Given::Number(distance_a_ft)),
        (5, Given::Number(distance_b_ft)),
    ];
    let request = Request::new(TWO_PEG_TEST, System::Us, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Whether the line of sight of a level or laser is level, from readings on two pegs.
///
/// Equation: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right =
/// reading - tilt distance.
/// Taken for granted: the first set-up half way between the pegs; curvature and refraction left out.
///
/// - `middle_a_m` (m): rod on peg A from half way between the pegs; at least 0 m, at most 10 m.
/// - `middle_b_m` (m): rod on peg B from there; at least 0 m, at most 10 m.
/// - `end_a_m` (m): rod on peg A from near one peg; at least 0 m, at most 10 m.
/// - `end_b_m` (m): rod on peg B from there; at least 0 m, at most 10 m.
/// - `distance_a_m` (m): from the instrument to peg A in the second set-up; at least 0 m, at most 1000 m.
/// - `distance_b_m` (m): from the instrument to peg B in the second set-up; at least 0 m, at most 1000 m.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `limit` (mm/m): the tilt allowed; at least 0 mm/m, at most 100 mm/m; where left out 0.00125 in/ft, because
///     1/16 in per 50 ft, common practice, no source.
/// - `results`, `results_len`, out: as many as there is room for, by their constants:
///   - OVS_TWO_PEG_TEST_RISE (m): how much higher peg B stands than peg A.
///   - OVS_TWO_PEG_TEST_TILT (mm/m): rise of the line of sight over the distance.
///   - OVS_TWO_PEG_TEST_RIGHT_A (m): what the second set-up should read on peg A.
///   - OVS_TWO_PEG_TEST_RIGHT_B (m): what it should read on peg B.
///   - OVS_TWO_PEG_TEST_OFF (mm): how much too high it reads on the farther peg.
///   - OVS_TWO_PEG_TEST_PASSES: whether the tilt is within what is allowed; 0 no, 1 yes.
///   - OVS_TWO_PEG_TEST_GOOD_FOR (m): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
/// Basis: from half way between two pegs the difference of the readings is free of the tilt of the line of sight:
/// Surveying textbooks, two-peg test (any), collimation.
/// Basis: the line of sight may tilt by 1/16 in per 50 ft: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"middle_a":"4.52 ft","middle_b":"5.17 ft","end_a":"4.86 ft","end_b":"5.49 ft","distance_a":"10 ft","distance_b":"110 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_peg_test_si(
    middle_a_m: f64,
    middle_b_m: f64,
    end_a_m: f64,
    end_b_m: f64,
    distance_a_m: f64,
    distance_b_m: f64,
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
        (0, Given::Number(middle_a_m)),
        (1, Given::Number(middle_b_m)),
        (2, Given::Number(end_a_m)),
        (3, Given::Number(end_b_m)),
        (4, Given::Number(distance_a_m)),
        (5, Given::Number(distance_b_m)),
    ];
    let request = Request::new(TWO_PEG_TEST, System::Si, &given, options_json, options_len);
    unsafe { record::numbers(request, Numbers::new("results", results, results_len), Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_two_peg_test_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_peg_test_us_why(
    middle_a_ft: f64,
    middle_b_ft: f64,
    end_a_ft: f64,
    end_b_ft: f64,
    distance_a_ft: f64,
    distance_b_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(middle_a_ft)),
        (1, Given::Number(middle_b_ft)),
        (2, Given::Number(end_a_ft)),
        (3, Given::Number(end_b_ft)),
        (4, Given::Number(distance_a_ft)),
        (5, Given::Number(distance_b_ft)),
    ];
    let request = Request::new(TWO_PEG_TEST, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_two_peg_test_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_two_peg_test_si_why(
    middle_a_m: f64,
    middle_b_m: f64,
    end_a_m: f64,
    end_b_m: f64,
    distance_a_m: f64,
    distance_b_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(middle_a_m)),
        (1, Given::Number(middle_b_m)),
        (2, Given::Number(end_a_m)),
        (3, Given::Number(end_b_m)),
        (4, Given::Number(distance_a_m)),
        (5, Given::Number(distance_b_m)),
    ];
    let request = Request::new(TWO_PEG_TEST, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static BENCHMARK_RECHECK: &Operation = row(OPERATIONS, "benchmark_recheck");

/// The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by
/// the first.
///
/// Equation: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it for shot
/// k of n.
/// Taken for granted: the line of sight moved evenly; a set-up of a level book that closes shares half out to all
/// its sights instead.
///
/// - `first_ft` (ft): rod on the benchmark before; at least 0 ft, at most 32.8083989501 ft.
/// - `again_ft` (ft): rod on the benchmark after; add the difference to every rod mark; at least 0 ft, at most
///   32.8083989501 ft.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `shots`: the readings between; may be left out.
///   - `rod` of `shots` (ft): the reading; at least 0 ft, at most 32.8083989501 ft; required.
///   - `time` of `shots` (min): when, from the first reading of the benchmark; at least 0 min; may be left out.
///   - `time_again` (min): when the benchmark was read again; at least 0 min; may be left out.
///   - `tolerance` (in): how far the two may be off; at least 0 in; where left out 1/8 in, because one set-up
///     closes within 1/8 in, common practice, no source.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_BENCHMARK_RECHECK_DIFFERENCE (in): again less first.
///   - OVS_BENCHMARK_RECHECK_FOLLOWS: what follows; 0 agrees, 1 shared_out, 2 shoot_again.
///   - OVS_BENCHMARK_RECHECK_SHARED_OUT: the readings with their shares; none where it is off by too much.
///   - OVS_BENCHMARK_RECHECK_SAID: the same in a sentence.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_KEY_MISSING.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"first":"4' 2 1/2\"","again":"4' 2 5/8\"","shots":{"rod":["5' 0 5/8\"","5' 0 1/2\"","4' 11 7/8\""]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_benchmark_recheck_us(
    first_ft: f64,
    again_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(first_ft)),
        (1, Given::Number(again_ft)),
    ];
    let request = Request::new(BENCHMARK_RECHECK, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by
/// the first.
///
/// Equation: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it for shot
/// k of n.
/// Taken for granted: the line of sight moved evenly; a set-up of a level book that closes shares half out to all
/// its sights instead.
///
/// - `first_m` (m): rod on the benchmark before; at least 0 m, at most 10 m.
/// - `again_m` (m): rod on the benchmark after; add the difference to every rod mark; at least 0 m, at most 10 m.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `shots`: the readings between; may be left out.
///   - `rod` of `shots` (m): the reading; at least 0 m, at most 10 m; required.
///   - `time` of `shots` (min): when, from the first reading of the benchmark; at least 0 min; may be left out.
///   - `time_again` (min): when the benchmark was read again; at least 0 min; may be left out.
///   - `tolerance` (mm): how far the two may be off; at least 0 mm; where left out 1/8 in, because one set-up
///     closes within 1/8 in, common practice, no source.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_BENCHMARK_RECHECK_DIFFERENCE (mm): again less first.
///   - OVS_BENCHMARK_RECHECK_FOLLOWS: what follows; 0 agrees, 1 shared_out, 2 shoot_again.
///   - OVS_BENCHMARK_RECHECK_SHARED_OUT: the readings with their shares; none where it is off by too much.
///   - OVS_BENCHMARK_RECHECK_SAID: the same in a sentence.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_KEY_MISSING.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"first":"4' 2 1/2\"","again":"4' 2 5/8\"","shots":{"rod":["5' 0 5/8\"","5' 0 1/2\"","4' 11 7/8\""]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_benchmark_recheck_si(
    first_m: f64,
    again_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(first_m)),
        (1, Given::Number(again_m)),
    ];
    let request = Request::new(BENCHMARK_RECHECK, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_benchmark_recheck_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_benchmark_recheck_us_why(
    first_ft: f64,
    again_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(first_ft)),
        (1, Given::Number(again_ft)),
    ];
    let request = Request::new(BENCHMARK_RECHECK, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_benchmark_recheck_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_benchmark_recheck_si_why(
    first_m: f64,
    again_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(first_m)),
        (1, Given::Number(again_m)),
    ];
    let request = Request::new(BENCHMARK_RECHECK, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static POINTS_FROM_TABLE: &Operation = row(OPERATIONS, "points_from_table");

/// Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
///
/// Equation: none: the points as they are given.
/// Taken for granted: nothing.
///
/// - `points_x_ft` (ft): along the first plan axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `points_y_ft` (ft): along the second, a quarter turn to the left of it; at least -3280839895.01 ft, at most
///   3280839895.01 ft.
/// - `points_elevation_ft` (ft): height; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `points_rows`: the points: how many rows, each a point; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `points`: its name; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: Points with heights, in the axes of where they came from: of a file, a scan or a
/// total station.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_KEY_MISSING.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"],"name":["A","B","C","D",null]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_from_table_us(
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
) -> *mut ovs_points {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_ft)), (1, Input::Numbers(points_y_ft)), (2, Input::Numbers(points_elevation_ft))])),
    ];
    let request = Request::new(POINTS_FROM_TABLE, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, POINTS_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
///
/// Equation: none: the points as they are given.
/// Taken for granted: nothing.
///
/// - `points_x_m` (m): along the first plan axis; at least -1000000000 m, at most 1000000000 m.
/// - `points_y_m` (m): along the second, a quarter turn to the left of it; at least -1000000000 m, at most
///   1000000000 m.
/// - `points_elevation_m` (m): height; at least -1000000000 m, at most 1000000000 m.
/// - `points_rows`: the points: how many rows, each a point; at least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `points`: its name; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: Points with heights, in the axes of where they came from: of a file, a scan or a
/// total station.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_KEY_MISSING.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"],"name":["A","B","C","D",null]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_from_table_si(
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
) -> *mut ovs_points {
    let given = [
        (0, Given::Table(points_rows, &[(0, Input::Numbers(points_x_m)), (1, Input::Numbers(points_y_m)), (2, Input::Numbers(points_elevation_m))])),
    ];
    let request = Request::new(POINTS_FROM_TABLE, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, POINTS_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_points_from_table_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_from_table_us_why(
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
    let request = Request::new(POINTS_FROM_TABLE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_points_from_table_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_from_table_si_why(
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
    let request = Request::new(POINTS_FROM_TABLE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static READ_POINTS: &Operation = row(OPERATIONS, "read_points");

/// Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
///
/// Equation: none: the coordinates of the file, in metres by its unit.
/// Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
///
/// - `file`, `file_len`: the bytes of the file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
///     landxml; may be left out.
///   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd; may be left out.
///   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
///     because a file mostly knows its unit.
///   - `columns`: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation
///     [in], skip; may be left out.
///   - `height_of_instrument` (ft): height of the line of sight, for a column of rods; at least -32808.3989501 ft,
///     at most 32808.3989501 ft; may be left out.
///   - `ground_only`: whether only points that the file classes as ground are used; 0 no, 1 yes; where left out no,
///     because few scans are classed.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_READ_POINTS_POINTS: the points.
///   - OVS_READ_POINTS_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
///   - OVS_READ_POINTS_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd.
///   - OVS_READ_POINTS_LEFT_OUT: points of the file that were not used.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING,
/// OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FORMAT_UNKNOWN, OVS_FILE_BROKEN, OVS_COLUMN_MISSING.
/// Since 0.1.0.
/// Example, as JSON: {"file":"point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_points_us(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
///
/// Equation: none: the coordinates of the file, in metres by its unit.
/// Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
///
/// - `file`, `file_len`: the bytes of the file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
///     landxml; may be left out.
///   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd; may be left out.
///   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
///     because a file mostly knows its unit.
///   - `columns`: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation
///     [in], skip; may be left out.
///   - `height_of_instrument` (m): height of the line of sight, for a column of rods; at least -10000 m, at most
///     10000 m; may be left out.
///   - `ground_only`: whether only points that the file classes as ground are used; 0 no, 1 yes; where left out no,
///     because few scans are classed.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_READ_POINTS_POINTS: the points.
///   - OVS_READ_POINTS_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
///   - OVS_READ_POINTS_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd.
///   - OVS_READ_POINTS_LEFT_OUT: points of the file that were not used.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING,
/// OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FORMAT_UNKNOWN, OVS_FILE_BROKEN, OVS_COLUMN_MISSING.
/// Since 0.1.0.
/// Example, as JSON: {"file":"point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_points_si(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_read_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_points_us_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_read_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_points_si_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static READ_SURFACE: &Operation = row(OPERATIONS, "read_surface");

/// A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
///
/// Equation: none: the points and faces of the file, in metres by its unit.
/// Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
///
/// - `file`, `file_len`: the bytes of the file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
///     landxml; may be left out.
///   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd; may be left out.
///   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
///     because a file mostly knows its unit.
///   - `surface`: its name, for a file with several; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_READ_SURFACE_TIN: the surface.
///   - OVS_READ_SURFACE_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
///   - OVS_READ_SURFACE_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd.
///   - OVS_READ_SURFACE_LEFT_OUT: points of the file that were not used.
///
/// Refuses with OVS_UNIT_MISSING, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_FILE_SHORT, OVS_SURFACE_UNCLEAR.
/// Since 0.1.0.
/// Example, as JSON: {"file":"ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n","unit":"m"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_surface_us(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_SURFACE, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
///
/// Equation: none: the points and faces of the file, in metres by its unit.
/// Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
///
/// - `file`, `file_len`: the bytes of the file, as they are.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
///     landxml; may be left out.
///   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd; may be left out.
///   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
///     because a file mostly knows its unit.
///   - `surface`: its name, for a file with several; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_READ_SURFACE_TIN: the surface.
///   - OVS_READ_SURFACE_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
///   - OVS_READ_SURFACE_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
///     in, 6 yd.
///   - OVS_READ_SURFACE_LEFT_OUT: points of the file that were not used.
///
/// Refuses with OVS_UNIT_MISSING, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_FILE_SHORT, OVS_SURFACE_UNCLEAR.
/// Since 0.1.0.
/// Example, as JSON: {"file":"ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n","unit":"m"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_surface_si(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_SURFACE, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_read_surface_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_surface_us_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_SURFACE, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_read_surface_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_read_surface_si_why(
    file: *const c_uchar,
    file_len: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Bytes(BytesIn::new("file", file, file_len))),
    ];
    let request = Request::new(READ_SURFACE, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static POINTS_TO_AXES: &Operation = row(OPERATIONS, "points_to_axes");

/// Points brought into the axes of the job by two known points or more: turned, shifted and raised, never
/// stretched.
///
/// Equation: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known points; z' =
/// z + mean rise, or + a plane.
/// Taken for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a mirror and a
/// unit slip are refused by name.
///
/// - `points`: the points.
/// - `known_x_ft` (ft): along the first axis, as the points come; at least -3280839895.01 ft, at most 3280839895.01
///   ft.
/// - `known_y_ft` (ft): along the second, as the points come; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `known_job_x_ft` (ft): along the first axis of the job; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `known_job_y_ft` (ft): along the second axis of the job; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `known_rows`: the points known in both systems: how many rows, each a point known in both systems of axes; at
///   least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `known`: its name; may be left out.
///   - `elevation` of `known` (ft): height, as the points come; at least -3280839895.01 ft, at most 3280839895.01
///     ft; may be left out.
///   - `job_elevation` of `known` (ft): height above the job datum; at least -3280839895.01 ft, at most
///     3280839895.01 ft; may be left out.
///   - `tolerance` (in): how far distances of two, places of more may be off; at least 0 in, at most 39.3700787402
///     in; where left out 1/4 in, because a nail is found again so well.
///   - `height_tolerance` (in): how far heights may be off; at least 0 in, at most 39.3700787402 in; where left out
///     1/8 in, because a rod is read so well.
///   - `levelling`: whether heights rise alike or by a plane; 0 rise, 1 tilt; where left out rise, because most
///     scanners level themselves.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_POINTS_TO_AXES_MOVED: the points in the axes of the job.
///   - OVS_POINTS_TO_AXES_TURN (deg): how far they were turned, counter-clockwise.
///   - OVS_POINTS_TO_AXES_RISE (ft): what was added to heights, where the old origin came to lie.
///   - OVS_POINTS_TO_AXES_TILT_X (in/ft): how much more along the first axis of the job.
///   - OVS_POINTS_TO_AXES_TILT_Y (in/ft): how much more along the second.
///   - OVS_POINTS_TO_AXES_RESIDUALS: what is left over at the known points.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_KNOWN_POINTS,
/// OVS_AXES_DISAGREE, OVS_AXES_MIRRORED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[0.2,0.15,0.25,0.22]},"known":{"name":["nail 1","nail 2"],"x":["0 ft","20 ft"],"y":["0 ft","0 ft"],"job_x":["40 ft","40 ft"],"job_y":["10 ft","30 ft"],"elevation":["0.5 ft","0.6 ft"],"job_elevation":["99.5 ft","99.6 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_to_axes_us(
    points: *const ovs_points,
    known_x_ft: *const f64,
    known_y_ft: *const f64,
    known_job_x_ft: *const f64,
    known_job_y_ft: *const f64,
    known_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Table(known_rows, &[(1, Input::Numbers(known_x_ft)), (2, Input::Numbers(known_y_ft)), (3, Input::Numbers(known_job_x_ft)), (4, Input::Numbers(known_job_y_ft))])),
    ];
    let request = Request::new(POINTS_TO_AXES, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Points brought into the axes of the job by two known points or more: turned, shifted and raised, never
/// stretched.
///
/// Equation: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known points; z' =
/// z + mean rise, or + a plane.
/// Taken for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a mirror and a
/// unit slip are refused by name.
///
/// - `points`: the points.
/// - `known_x_m` (m): along the first axis, as the points come; at least -1000000000 m, at most 1000000000 m.
/// - `known_y_m` (m): along the second, as the points come; at least -1000000000 m, at most 1000000000 m.
/// - `known_job_x_m` (m): along the first axis of the job; at least -1000000000 m, at most 1000000000 m.
/// - `known_job_y_m` (m): along the second axis of the job; at least -1000000000 m, at most 1000000000 m.
/// - `known_rows`: the points known in both systems: how many rows, each a point known in both systems of axes; at
///   least 1.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `name` of `known`: its name; may be left out.
///   - `elevation` of `known` (m): height, as the points come; at least -1000000000 m, at most 1000000000 m; may be
///     left out.
///   - `job_elevation` of `known` (m): height above the job datum; at least -1000000000 m, at most 1000000000 m;
///     may be left out.
///   - `tolerance` (mm): how far distances of two, places of more may be off; at least 0 mm, at most 1000 mm; where
///     left out 1/4 in, because a nail is found again so well.
///   - `height_tolerance` (mm): how far heights may be off; at least 0 mm, at most 1000 mm; where left out 1/8 in,
///     because a rod is read so well.
///   - `levelling`: whether heights rise alike or by a plane; 0 rise, 1 tilt; where left out rise, because most
///     scanners level themselves.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_POINTS_TO_AXES_MOVED: the points in the axes of the job.
///   - OVS_POINTS_TO_AXES_TURN (rad): how far they were turned, counter-clockwise.
///   - OVS_POINTS_TO_AXES_RISE (m): what was added to heights, where the old origin came to lie.
///   - OVS_POINTS_TO_AXES_TILT_X (%): how much more along the first axis of the job.
///   - OVS_POINTS_TO_AXES_TILT_Y (%): how much more along the second.
///   - OVS_POINTS_TO_AXES_RESIDUALS: what is left over at the known points.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_KNOWN_POINTS,
/// OVS_AXES_DISAGREE, OVS_AXES_MIRRORED.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[0.2,0.15,0.25,0.22]},"known":{"name":["nail 1","nail 2"],"x":["0 ft","20 ft"],"y":["0 ft","0 ft"],"job_x":["40 ft","40 ft"],"job_y":["10 ft","30 ft"],"elevation":["0.5 ft","0.6 ft"],"job_elevation":["99.5 ft","99.6 ft"]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_to_axes_si(
    points: *const ovs_points,
    known_x_m: *const f64,
    known_y_m: *const f64,
    known_job_x_m: *const f64,
    known_job_y_m: *const f64,
    known_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Table(known_rows, &[(1, Input::Numbers(known_x_m)), (2, Input::Numbers(known_y_m)), (3, Input::Numbers(known_job_x_m)), (4, Input::Numbers(known_job_y_m))])),
    ];
    let request = Request::new(POINTS_TO_AXES, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_points_to_axes_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_to_axes_us_why(
    points: *const ovs_points,
    known_x_ft: *const f64,
    known_y_ft: *const f64,
    known_job_x_ft: *const f64,
    known_job_y_ft: *const f64,
    known_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Table(known_rows, &[(1, Input::Numbers(known_x_ft)), (2, Input::Numbers(known_y_ft)), (3, Input::Numbers(known_job_x_ft)), (4, Input::Numbers(known_job_y_ft))])),
    ];
    let request = Request::new(POINTS_TO_AXES, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_points_to_axes_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_to_axes_si_why(
    points: *const ovs_points,
    known_x_m: *const f64,
    known_y_m: *const f64,
    known_job_x_m: *const f64,
    known_job_y_m: *const f64,
    known_rows: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Table(known_rows, &[(1, Input::Numbers(known_x_m)), (2, Input::Numbers(known_y_m)), (3, Input::Numbers(known_job_x_m)), (4, Input::Numbers(known_job_y_m))])),
    ];
    let request = Request::new(POINTS_TO_AXES, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static POINTS_ALONG_WALL: &Operation = row(OPERATIONS, "points_along_wall");

/// Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
///
/// Equation: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the other end.
/// Taken for granted: the work lies on the left when the wall is walked from the origin.
///
/// - `points`: the points.
/// - `origin_x_ft` (ft): the end of the wall that becomes zero, along the first axis; at least -3280839895.01 ft,
///   at most 3280839895.01 ft.
/// - `origin_y_ft` (ft): the same, along the second axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `along_x_ft` (ft): another place along the wall, along the first axis; at least -3280839895.01 ft, at most
///   3280839895.01 ft.
/// - `along_y_ft` (ft): the same, along the second axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_POINTS_ALONG_WALL_MOVED: the points in the new axes.
///   - OVS_POINTS_ALONG_WALL_TURN (deg): how far they were turned, counter-clockwise.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER,
/// OVS_KNOWN_POINTS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[99.2,99.15,99.25,99.22]},"origin_x":"12 ft","origin_y":"0 ft","along_x":"12 ft","along_y":"10 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_along_wall_us(
    points: *const ovs_points,
    origin_x_ft: f64,
    origin_y_ft: f64,
    along_x_ft: f64,
    along_y_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Number(origin_x_ft)),
        (2, Given::Number(origin_y_ft)),
        (3, Given::Number(along_x_ft)),
        (4, Given::Number(along_y_ft)),
    ];
    let request = Request::new(POINTS_ALONG_WALL, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
///
/// Equation: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the other end.
/// Taken for granted: the work lies on the left when the wall is walked from the origin.
///
/// - `points`: the points.
/// - `origin_x_m` (m): the end of the wall that becomes zero, along the first axis; at least -1000000000 m, at most
///   1000000000 m.
/// - `origin_y_m` (m): the same, along the second axis; at least -1000000000 m, at most 1000000000 m.
/// - `along_x_m` (m): another place along the wall, along the first axis; at least -1000000000 m, at most
///   1000000000 m.
/// - `along_y_m` (m): the same, along the second axis; at least -1000000000 m, at most 1000000000 m.
/// - `options_json`, `options_len`: none yet; may be null.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_POINTS_ALONG_WALL_MOVED: the points in the new axes.
///   - OVS_POINTS_ALONG_WALL_TURN (rad): how far they were turned, counter-clockwise.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER,
/// OVS_KNOWN_POINTS.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[99.2,99.15,99.25,99.22]},"origin_x":"12 ft","origin_y":"0 ft","along_x":"12 ft","along_y":"10 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_along_wall_si(
    points: *const ovs_points,
    origin_x_m: f64,
    origin_y_m: f64,
    along_x_m: f64,
    along_y_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Number(origin_x_m)),
        (2, Given::Number(origin_y_m)),
        (3, Given::Number(along_x_m)),
        (4, Given::Number(along_y_m)),
    ];
    let request = Request::new(POINTS_ALONG_WALL, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_points_along_wall_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_along_wall_us_why(
    points: *const ovs_points,
    origin_x_ft: f64,
    origin_y_ft: f64,
    along_x_ft: f64,
    along_y_ft: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Number(origin_x_ft)),
        (2, Given::Number(origin_y_ft)),
        (3, Given::Number(along_x_ft)),
        (4, Given::Number(along_y_ft)),
    ];
    let request = Request::new(POINTS_ALONG_WALL, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_points_along_wall_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_points_along_wall_si_why(
    points: *const ovs_points,
    origin_x_m: f64,
    origin_y_m: f64,
    along_x_m: f64,
    along_y_m: f64,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (1, Given::Number(origin_x_m)),
        (2, Given::Number(origin_y_m)),
        (3, Given::Number(along_x_m)),
        (4, Given::Number(along_y_m)),
    ];
    let request = Request::new(POINTS_ALONG_WALL, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static PART_STRAYS: &Operation = row(OPERATIONS, "part_strays");

/// The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points
/// far away.
///
/// Equation: a point is stray when it is higher than the floor of its cell and those around it by more than above,
/// deeper by more than below, or has fewer than others within reach; floor: lowest agreed heights of cells, things
/// narrower than widest cut off.
/// Taken for granted: the floor is seen beside the things on it; a thing wider than widest, or lower than above, is
/// floor.
///
/// - `points`: the points of the scan.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `above` (in): higher than this over the floor is stray; more than 0 in, at most 393.700787402 in; where left
///     out 1 in, because a step of an inch in an old slab is common.
///   - `below` (in): deeper than this under the floor is stray; more than 0 in, at most 393.700787402 in; where
///     left out 1 in, because hollows of an old slab are wider than a cell and stay.
///   - `widest` (ft): width of the widest thing that stands on the floor; more than 0 ft, at most 328.083989501 ft;
///     where left out 6 ft, because few things left in a cleared shop are wider.
///   - `cell` (in): width of the cells in which the floor is looked for; more than 0 in, at most 3937.00787402 in;
///     where left out 6 in, because a scan has many points in each.
///   - `steepest` (in/ft): the steepest that the floor is; at least 0 in/ft, at most 6 in/ft; where left out 1/4
///     in/ft, because floors that drain seldom fall more.
///   - `reach` (ft): how near others must be; more than 0 ft, at most 328.083989501 ft; where left out 1 ft,
///     because a scan has many points in a foot.
///   - `others`: how many others must be so near; from 0 to 1000; where left out 3, because echoes come one by one.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_PART_STRAYS_FLOOR: the points kept.
///   - OVS_PART_STRAYS_KEPT_COUNT: how many were kept.
///   - OVS_PART_STRAYS_ABOVE_COUNT: how many stand above the floor.
///   - OVS_PART_STRAYS_BELOW_COUNT: how many lie below it.
///   - OVS_PART_STRAYS_ALONE_COUNT: how many have too few others near them.
///   - OVS_PART_STRAYS_STRAYS: which points were taken out, and why.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KIND_MISMATCH,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,2,3,4,1,2,3,4,2.5,2.4],"y":[1,1,1,1,2,2,2,2,1.5,1.6],"elevation":[99.2,99.2,99.19,99.18,99.21,99.2,99.2,99.19,101.7,99.2]},"cell":"18 in","reach":"2 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_part_strays_us(
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(PART_STRAYS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points
/// far away.
///
/// Equation: a point is stray when it is higher than the floor of its cell and those around it by more than above,
/// deeper by more than below, or has fewer than others within reach; floor: lowest agreed heights of cells, things
/// narrower than widest cut off.
/// Taken for granted: the floor is seen beside the things on it; a thing wider than widest, or lower than above, is
/// floor.
///
/// - `points`: the points of the scan.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `above` (mm): higher than this over the floor is stray; more than 0 mm, at most 10000 mm; where left out 1
///     in, because a step of an inch in an old slab is common.
///   - `below` (mm): deeper than this under the floor is stray; more than 0 mm, at most 10000 mm; where left out 1
///     in, because hollows of an old slab are wider than a cell and stay.
///   - `widest` (m): width of the widest thing that stands on the floor; more than 0 m, at most 100 m; where left
///     out 6 ft, because few things left in a cleared shop are wider.
///   - `cell` (mm): width of the cells in which the floor is looked for; more than 0 mm, at most 100000 mm; where
///     left out 6 in, because a scan has many points in each.
///   - `steepest` (%): the steepest that the floor is; at least 0 %, at most 50 %; where left out 1/4 in/ft,
///     because floors that drain seldom fall more.
///   - `reach` (m): how near others must be; more than 0 m, at most 100 m; where left out 1 ft, because a scan has
///     many points in a foot.
///   - `others`: how many others must be so near; from 0 to 1000; where left out 3, because echoes come one by one.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_PART_STRAYS_FLOOR: the points kept.
///   - OVS_PART_STRAYS_KEPT_COUNT: how many were kept.
///   - OVS_PART_STRAYS_ABOVE_COUNT: how many stand above the floor.
///   - OVS_PART_STRAYS_BELOW_COUNT: how many lie below it.
///   - OVS_PART_STRAYS_ALONE_COUNT: how many have too few others near them.
///   - OVS_PART_STRAYS_STRAYS: which points were taken out, and why.
///
/// Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KIND_MISMATCH,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,2,3,4,1,2,3,4,2.5,2.4],"y":[1,1,1,1,2,2,2,2,1.5,1.6],"elevation":[99.2,99.2,99.19,99.18,99.21,99.2,99.2,99.19,101.7,99.2]},"cell":"18 in","reach":"2 ft"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_part_strays_si(
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(PART_STRAYS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_part_strays_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_part_strays_us_why(
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(PART_STRAYS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_part_strays_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_part_strays_si_why(
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(PART_STRAYS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static THIN_POINTS: &Operation = row(OPERATIONS, "thin_points");

/// Fewer points that say the same: the surface of a survey through them stays within a height error of every point
/// left out.
///
/// Equation: from the corners of the convex hull, the worst point of each triangle is taken in until the error or
/// the number holds.
/// Taken for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey has the same
/// outline, or that of the hull.
///
/// - `points`: the points.
/// - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `within` (in): the height error allowed: this or the count; at least 0 in, at most 393700.787402 in; may be
///     left out.
///   - `count`: how many points to keep: this or the height error; from 3 to 4294967295; may be left out.
///   - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THIN_POINTS_THINNED: the points kept.
///   - OVS_THIN_POINTS_KEPT_COUNT: how many were kept.
///   - OVS_THIN_POINTS_ERROR (in): greatest height between the surface through them and a point left out.
///   - OVS_THIN_POINTS_WORST: the number of the point it is at.
///   - OVS_THIN_POINTS_HULL_COUNT: how many of those kept are corners of the convex hull.
///   - OVS_THIN_POINTS_OUTSIDE_COUNT: how many lie outside the outline.
///   - OVS_THIN_POINTS_KEPT: which points were kept.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_TOO_FEW_SHOTS,
/// OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_THINNING_COUNT, OVS_THINNING_UNREACHABLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1,5,6,3],"y":[1,1,9,9,4,5,7],"elevation":[99.2,99.15,99.25,99.22,99.16,99.18,99.21]},"within":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_points_us(
    points: *const ovs_points,
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
        (0, Given::Record(Passed::new("points", points))),
        (3, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(THIN_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Fewer points that say the same: the surface of a survey through them stays within a height error of every point
/// left out.
///
/// Equation: from the corners of the convex hull, the worst point of each triangle is taken in until the error or
/// the number holds.
/// Taken for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey has the same
/// outline, or that of the hull.
///
/// - `points`: the points.
/// - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be null.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `within` (mm): the height error allowed: this or the count; at least 0 mm, at most 10000000 mm; may be left
///     out.
///   - `count`: how many points to keep: this or the height error; from 3 to 4294967295; may be left out.
///   - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_THIN_POINTS_THINNED: the points kept.
///   - OVS_THIN_POINTS_KEPT_COUNT: how many were kept.
///   - OVS_THIN_POINTS_ERROR (mm): greatest height between the surface through them and a point left out.
///   - OVS_THIN_POINTS_WORST: the number of the point it is at.
///   - OVS_THIN_POINTS_HULL_COUNT: how many of those kept are corners of the convex hull.
///   - OVS_THIN_POINTS_OUTSIDE_COUNT: how many lie outside the outline.
///   - OVS_THIN_POINTS_KEPT: which points were kept.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_TOO_FEW_SHOTS,
/// OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_THINNING_COUNT, OVS_THINNING_UNREACHABLE.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1,5,6,3],"y":[1,1,9,9,4,5,7],"elevation":[99.2,99.15,99.25,99.22,99.16,99.18,99.21]},"within":"1/4 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_points_si(
    points: *const ovs_points,
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
        (0, Given::Record(Passed::new("points", points))),
        (3, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(THIN_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_thin_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_points_us_why(
    points: *const ovs_points,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (3, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(THIN_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_thin_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_thin_points_si_why(
    points: *const ovs_points,
    outline: *const ovs_outline,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("points", points))),
        (3, Given::Record(Passed::new("outline", outline))),
    ];
    let request = Request::new(THIN_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static SURVEY_FROM_POINTS: &Operation = row(OPERATIONS, "survey_from_points");

/// The surface of the old slab through points, each a shot: of a file, a scan or a table.
///
/// Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Taken for granted: the points are in the axes and the datum of the job; the slab is plane between neighbouring
/// points.
///
/// - `outline`: the plan edge of the work.
/// - `points`: the points.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
///   - `outside`: what becomes of points more than 6 in outside the outline; 0 refuse, 1 use, 2 leave_out; where
///     left out refuse, because a point outside may be a slip.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"unit":"ft","x":[1,11,11,1,5],"y":[1,1,9,9,4],"elevation":[99.2,99.15,99.25,99.22,99.16]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_points_us(
    outline: *const ovs_outline,
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(SURVEY_FROM_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The surface of the old slab through points, each a shot: of a file, a scan or a table.
///
/// Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
/// Taken for granted: the points are in the axes and the datum of the job; the slab is plane between neighbouring
/// points.
///
/// - `outline`: the plan edge of the work.
/// - `points`: the points.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
///     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
///     one.
///   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
///     because most old slabs are.
///   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
///     no, because heights that far out are a guess.
///   - `outside`: what becomes of points more than 6 in outside the outline; 0 refuse, 1 use, 2 leave_out; where
///     left out refuse, because a point outside may be a slip.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
///
/// Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS,
/// OVS_NULL_POINTER.
/// Basis: plane and solid geometry: derived.
/// Basis: reading and texture deviations behind the site words: common practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"unit":"ft","x":[1,11,11,1,5],"y":[1,1,9,9,4],"elevation":[99.2,99.15,99.25,99.22,99.16]}}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_points_si(
    outline: *const ovs_outline,
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_survey {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(SURVEY_FROM_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::make(request, SURVEY_TYPE, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_survey_from_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_points_us_why(
    outline: *const ovs_outline,
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(SURVEY_FROM_POINTS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_survey_from_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_survey_from_points_si_why(
    outline: *const ovs_outline,
    points: *const ovs_points,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Record(Passed::new("outline", outline))),
        (1, Given::Record(Passed::new("points", points))),
    ];
    let request = Request::new(SURVEY_FROM_POINTS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
