//! The operations of `marks`.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use crate::answer::ovs_answer;
use crate::border::{Given, Message, Notes, Passed, Request, TextOut, record, row};
use overslab::operation::Operation;
use overslab::operations::OPERATIONS;
use overslab::quantity::System;
use std::ffi::{c_char, c_int};
use super::records::{ovs_finish, ovs_survey};

/// The result `marks`: how many marks there are.
pub const OVS_MARKS_MARKS: c_int = 0;

/// The result `sight` (ft or m): elevation of the first line of sight.
pub const OVS_MARKS_SIGHT: c_int = 1;

/// The result `rod_on_line` (ft or m): the rod on the reference line from there.
pub const OVS_MARKS_ROD_ON_LINE: c_int = 2;

/// The result `greatest_departure` (in or mm): how far marks leave the floor by rounding, at most.
pub const OVS_MARKS_GREATEST_DEPARTURE: c_int = 3;

/// The result `stations`: the marks at the edges.
pub const OVS_MARKS_STATIONS: c_int = 4;

/// The column `mark` of `stations`: its number in the order of walking.
pub const OVS_MARKS_STATIONS_MARK: c_int = 0;

/// The column `edge` of `stations`: the edge it stands at.
pub const OVS_MARKS_STATIONS_EDGE: c_int = 1;

/// The column `name` of `stations`: what it is called, where it was asked for by name.
pub const OVS_MARKS_STATIONS_NAME: c_int = 2;

/// The column `along` of `stations` (ft or m): distance along the edge from where the walk meets it.
pub const OVS_MARKS_STATIONS_ALONG: c_int = 3;

/// The column `kind` of `stations`: what it is there for.
pub const OVS_MARKS_STATIONS_KIND: c_int = 4;

/// The column `x` of `stations` (ft or m): from the left.
pub const OVS_MARKS_STATIONS_X: c_int = 5;

/// The column `y` of `stations` (ft or m): from the front.
pub const OVS_MARKS_STATIONS_Y: c_int = 6;

/// The column `elevation` of `stations` (ft or m): the height that is set out, not rounded.
pub const OVS_MARKS_STATIONS_ELEVATION: c_int = 7;

/// The column `rod` of `stations` (ft or m): rod from the first set-up, not rounded.
pub const OVS_MARKS_STATIONS_ROD: c_int = 8;

/// The column `rod_marked` of `stations` (ft or m): that rod in whole steps.
pub const OVS_MARKS_STATIONS_ROD_MARKED: c_int = 9;

/// The column `below_line` of `stations` (ft or m): distance below the reference line, not rounded.
pub const OVS_MARKS_STATIONS_BELOW_LINE: c_int = 10;

/// The column `below_line_marked` of `stations` (ft or m): that distance in whole steps.
pub const OVS_MARKS_STATIONS_BELOW_LINE_MARKED: c_int = 11;

/// The column `over_old_slab` of `stations` (in or mm): height over the old slab: the check.
pub const OVS_MARKS_STATIONS_OVER_OLD_SLAB: c_int = 12;

/// The column `ground` of `stations`: what is known of the old slab there.
pub const OVS_MARKS_STATIONS_GROUND: c_int = 13;

/// The result `pads`: the wet pads.
pub const OVS_MARKS_PADS: c_int = 5;

/// The column `mark` of `pads`: its number in the order of walking.
pub const OVS_MARKS_PADS_MARK: c_int = 0;

/// The column `kind` of `pads`: what it is there for.
pub const OVS_MARKS_PADS_KIND: c_int = 1;

/// The column `x` of `pads` (ft or m): from the left.
pub const OVS_MARKS_PADS_X: c_int = 2;

/// The column `y` of `pads` (ft or m): from the front.
pub const OVS_MARKS_PADS_Y: c_int = 3;

/// The column `elevation` of `pads` (ft or m): the height that is set out, not rounded.
pub const OVS_MARKS_PADS_ELEVATION: c_int = 4;

/// The column `rod` of `pads` (ft or m): rod from the first set-up, not rounded.
pub const OVS_MARKS_PADS_ROD: c_int = 5;

/// The column `rod_marked` of `pads` (ft or m): that rod in whole steps.
pub const OVS_MARKS_PADS_ROD_MARKED: c_int = 6;

/// The column `below_line` of `pads` (ft or m): distance below the reference line, not rounded.
pub const OVS_MARKS_PADS_BELOW_LINE: c_int = 7;

/// The column `below_line_marked` of `pads` (ft or m): that distance in whole steps.
pub const OVS_MARKS_PADS_BELOW_LINE_MARKED: c_int = 8;

/// The column `over_old_slab` of `pads` (in or mm): height over the old slab: the check.
pub const OVS_MARKS_PADS_OVER_OLD_SLAB: c_int = 9;

/// The column `ground` of `pads`: what is known of the old slab there.
pub const OVS_MARKS_PADS_GROUND: c_int = 10;

/// The result `forms`: the tops of the forms.
pub const OVS_MARKS_FORMS: c_int = 6;

/// The column `mark` of `forms`: its number in the order of walking.
pub const OVS_MARKS_FORMS_MARK: c_int = 0;

/// The column `edge` of `forms`: the edge it stands at.
pub const OVS_MARKS_FORMS_EDGE: c_int = 1;

/// The column `name` of `forms`: what it is called, where it was asked for by name.
pub const OVS_MARKS_FORMS_NAME: c_int = 2;

/// The column `along` of `forms` (ft or m): distance along the edge from where the walk meets it.
pub const OVS_MARKS_FORMS_ALONG: c_int = 3;

/// The column `kind` of `forms`: what it is there for.
pub const OVS_MARKS_FORMS_KIND: c_int = 4;

/// The column `x` of `forms` (ft or m): from the left.
pub const OVS_MARKS_FORMS_X: c_int = 5;

/// The column `y` of `forms` (ft or m): from the front.
pub const OVS_MARKS_FORMS_Y: c_int = 6;

/// The column `elevation` of `forms` (ft or m): the height that is set out, not rounded.
pub const OVS_MARKS_FORMS_ELEVATION: c_int = 7;

/// The column `rod` of `forms` (ft or m): rod from the first set-up, not rounded.
pub const OVS_MARKS_FORMS_ROD: c_int = 8;

/// The column `rod_marked` of `forms` (ft or m): that rod in whole steps.
pub const OVS_MARKS_FORMS_ROD_MARKED: c_int = 9;

/// The column `below_line` of `forms` (ft or m): distance below the reference line, not rounded.
pub const OVS_MARKS_FORMS_BELOW_LINE: c_int = 10;

/// The column `below_line_marked` of `forms` (ft or m): that distance in whole steps.
pub const OVS_MARKS_FORMS_BELOW_LINE_MARKED: c_int = 11;

/// The column `over_old_slab` of `forms` (in or mm): height over the old slab: the check.
pub const OVS_MARKS_FORMS_OVER_OLD_SLAB: c_int = 12;

/// The column `ground` of `forms`: what is known of the old slab there.
pub const OVS_MARKS_FORMS_GROUND: c_int = 13;

/// The result `rails`: the tops of the rails.
pub const OVS_MARKS_RAILS: c_int = 7;

/// The column `mark` of `rails`: its number in the order of walking.
pub const OVS_MARKS_RAILS_MARK: c_int = 0;

/// The column `rail` of `rails`: the rail.
pub const OVS_MARKS_RAILS_RAIL: c_int = 1;

/// The column `along` of `rails` (ft or m): distance along the rail from its first place.
pub const OVS_MARKS_RAILS_ALONG: c_int = 2;

/// The column `kind` of `rails`: what it is there for.
pub const OVS_MARKS_RAILS_KIND: c_int = 3;

/// The column `x` of `rails` (ft or m): from the left.
pub const OVS_MARKS_RAILS_X: c_int = 4;

/// The column `y` of `rails` (ft or m): from the front.
pub const OVS_MARKS_RAILS_Y: c_int = 5;

/// The column `elevation` of `rails` (ft or m): the height that is set out, not rounded.
pub const OVS_MARKS_RAILS_ELEVATION: c_int = 6;

/// The column `rod` of `rails` (ft or m): rod from the first set-up, not rounded.
pub const OVS_MARKS_RAILS_ROD: c_int = 7;

/// The column `rod_marked` of `rails` (ft or m): that rod in whole steps.
pub const OVS_MARKS_RAILS_ROD_MARKED: c_int = 8;

/// The column `below_line` of `rails` (ft or m): distance below the reference line, not rounded.
pub const OVS_MARKS_RAILS_BELOW_LINE: c_int = 9;

/// The column `below_line_marked` of `rails` (ft or m): that distance in whole steps.
pub const OVS_MARKS_RAILS_BELOW_LINE_MARKED: c_int = 10;

/// The column `over_old_slab` of `rails` (in or mm): height over the old slab: the check.
pub const OVS_MARKS_RAILS_OVER_OLD_SLAB: c_int = 11;

/// The column `ground` of `rails`: what is known of the old slab there.
pub const OVS_MARKS_RAILS_GROUND: c_int = 12;

/// The result `rods`: every mark from every set-up.
pub const OVS_MARKS_RODS: c_int = 8;

/// The column `mark` of `rods`: the number of the mark.
pub const OVS_MARKS_RODS_MARK: c_int = 0;

/// The column `setup` of `rods`: the set-up.
pub const OVS_MARKS_RODS_SETUP: c_int = 1;

/// The column `rod` of `rods` (ft or m): line of sight less height, not rounded.
pub const OVS_MARKS_RODS_ROD: c_int = 2;

/// The column `rod_marked` of `rods` (ft or m): the same in whole steps.
pub const OVS_MARKS_RODS_ROD_MARKED: c_int = 3;

/// The column `reach` of `rods`: whether the rod can be read there.
pub const OVS_MARKS_RODS_REACH: c_int = 4;

/// The result `edges`: the edges.
pub const OVS_MARKS_EDGES: c_int = 9;

/// The column `edge` of `edges`: its name.
pub const OVS_MARKS_EDGES_EDGE: c_int = 0;

/// The column `material` of `edges`: what stands there.
pub const OVS_MARKS_EDGES_MATERIAL: c_int = 1;

/// The column `length` of `edges` (ft or m): how long it is.
pub const OVS_MARKS_EDGES_LENGTH: c_int = 2;

/// The column `level` of `edges`: whether the floor is level along it.
pub const OVS_MARKS_EDGES_LEVEL: c_int = 3;

/// The column `least` of `edges` (in or mm): least height of the floor over the old slab along it.
pub const OVS_MARKS_EDGES_LEAST: c_int = 4;

/// The column `least_along` of `edges` (ft or m): where the least is.
pub const OVS_MARKS_EDGES_LEAST_ALONG: c_int = 5;

/// The column `greatest` of `edges` (in or mm): greatest height of the floor over the old slab along it.
pub const OVS_MARKS_EDGES_GREATEST: c_int = 6;

/// The column `greatest_along` of `edges` (ft or m): where the greatest is.
pub const OVS_MARKS_EDGES_GREATEST_ALONG: c_int = 7;

/// The result `rips`: what strips and forms are ripped to.
pub const OVS_MARKS_RIPS: c_int = 10;

/// The column `edge` of `rips`: the edge.
pub const OVS_MARKS_RIPS_EDGE: c_int = 0;

/// The column `material` of `rips`: what is ripped.
pub const OVS_MARKS_RIPS_MATERIAL: c_int = 1;

/// The column `start` of `rips` (ft or m): where it starts, along the edge.
pub const OVS_MARKS_RIPS_START: c_int = 2;

/// The column `end` of `rips` (ft or m): where it ends.
pub const OVS_MARKS_RIPS_END: c_int = 3;

/// The column `length` of `rips` (ft or m): how long it is.
pub const OVS_MARKS_RIPS_LENGTH: c_int = 4;

/// The column `height_start` of `rips` (in or mm): its height at the start.
pub const OVS_MARKS_RIPS_HEIGHT_START: c_int = 5;

/// The column `height_end` of `rips` (in or mm): its height at the end.
pub const OVS_MARKS_RIPS_HEIGHT_END: c_int = 6;

/// The result `lines`: the lines along which planes meet.
pub const OVS_MARKS_LINES: c_int = 11;

/// The column `x_1` of `lines` (ft or m): one end, from the left.
pub const OVS_MARKS_LINES_X_1: c_int = 0;

/// The column `y_1` of `lines` (ft or m): one end, from the front.
pub const OVS_MARKS_LINES_Y_1: c_int = 1;

/// The column `elevation_1` of `lines` (ft or m): height of the floor at that end.
pub const OVS_MARKS_LINES_ELEVATION_1: c_int = 2;

/// The column `mark_1` of `lines`: number of the mark there.
pub const OVS_MARKS_LINES_MARK_1: c_int = 3;

/// The column `x_2` of `lines` (ft or m): other end, from the left.
pub const OVS_MARKS_LINES_X_2: c_int = 4;

/// The column `y_2` of `lines` (ft or m): other end, from the front.
pub const OVS_MARKS_LINES_Y_2: c_int = 5;

/// The column `elevation_2` of `lines` (ft or m): height of the floor at the other end.
pub const OVS_MARKS_LINES_ELEVATION_2: c_int = 6;

/// The column `mark_2` of `lines`: number of the mark at the other end.
pub const OVS_MARKS_LINES_MARK_2: c_int = 7;

/// The column `length` of `lines` (ft or m): how long the line is.
pub const OVS_MARKS_LINES_LENGTH: c_int = 8;

/// The result `diagonals`: lengths from corner to corner.
pub const OVS_MARKS_DIAGONALS: c_int = 12;

/// The column `mark_1` of `diagonals`: number of the mark at one corner.
pub const OVS_MARKS_DIAGONALS_MARK_1: c_int = 0;

/// The column `mark_2` of `diagonals`: number of the mark at the corner across.
pub const OVS_MARKS_DIAGONALS_MARK_2: c_int = 1;

/// The column `length` of `diagonals` (ft or m): how far apart they are.
pub const OVS_MARKS_DIAGONALS_LENGTH: c_int = 2;

/// The result `csv`: all marks as a CSV file.
pub const OVS_MARKS_CSV: c_int = 13;

/// The result `text`: the list for the site.
pub const OVS_MARKS_TEXT: c_int = 14;

/// How many results there are.
pub const OVS_MARKS_RESULTS: c_int = 15;

/// The word `corner`.
pub const OVS_MARKS_STATIONS_KIND_CORNER: c_int = 0;

/// The word `point`.
pub const OVS_MARKS_STATIONS_KIND_POINT: c_int = 1;

/// The word `break`.
pub const OVS_MARKS_STATIONS_KIND_BREAK: c_int = 2;

/// The word `station`.
pub const OVS_MARKS_STATIONS_KIND_STATION: c_int = 3;

/// The word `grid`.
pub const OVS_MARKS_STATIONS_KIND_GRID: c_int = 4;

/// The word `facet_corner`.
pub const OVS_MARKS_STATIONS_KIND_FACET_CORNER: c_int = 5;

/// The word `facet_line`.
pub const OVS_MARKS_STATIONS_KIND_FACET_LINE: c_int = 6;

/// The word `surveyed`.
pub const OVS_MARKS_STATIONS_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_MARKS_STATIONS_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_MARKS_STATIONS_GROUND_BEYOND: c_int = 2;

/// The word `corner`.
pub const OVS_MARKS_PADS_KIND_CORNER: c_int = 0;

/// The word `point`.
pub const OVS_MARKS_PADS_KIND_POINT: c_int = 1;

/// The word `break`.
pub const OVS_MARKS_PADS_KIND_BREAK: c_int = 2;

/// The word `station`.
pub const OVS_MARKS_PADS_KIND_STATION: c_int = 3;

/// The word `grid`.
pub const OVS_MARKS_PADS_KIND_GRID: c_int = 4;

/// The word `facet_corner`.
pub const OVS_MARKS_PADS_KIND_FACET_CORNER: c_int = 5;

/// The word `facet_line`.
pub const OVS_MARKS_PADS_KIND_FACET_LINE: c_int = 6;

/// The word `surveyed`.
pub const OVS_MARKS_PADS_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_MARKS_PADS_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_MARKS_PADS_GROUND_BEYOND: c_int = 2;

/// The word `corner`.
pub const OVS_MARKS_FORMS_KIND_CORNER: c_int = 0;

/// The word `point`.
pub const OVS_MARKS_FORMS_KIND_POINT: c_int = 1;

/// The word `break`.
pub const OVS_MARKS_FORMS_KIND_BREAK: c_int = 2;

/// The word `station`.
pub const OVS_MARKS_FORMS_KIND_STATION: c_int = 3;

/// The word `grid`.
pub const OVS_MARKS_FORMS_KIND_GRID: c_int = 4;

/// The word `facet_corner`.
pub const OVS_MARKS_FORMS_KIND_FACET_CORNER: c_int = 5;

/// The word `facet_line`.
pub const OVS_MARKS_FORMS_KIND_FACET_LINE: c_int = 6;

/// The word `surveyed`.
pub const OVS_MARKS_FORMS_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_MARKS_FORMS_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_MARKS_FORMS_GROUND_BEYOND: c_int = 2;

/// The word `corner`.
pub const OVS_MARKS_RAILS_KIND_CORNER: c_int = 0;

/// The word `point`.
pub const OVS_MARKS_RAILS_KIND_POINT: c_int = 1;

/// The word `break`.
pub const OVS_MARKS_RAILS_KIND_BREAK: c_int = 2;

/// The word `station`.
pub const OVS_MARKS_RAILS_KIND_STATION: c_int = 3;

/// The word `grid`.
pub const OVS_MARKS_RAILS_KIND_GRID: c_int = 4;

/// The word `facet_corner`.
pub const OVS_MARKS_RAILS_KIND_FACET_CORNER: c_int = 5;

/// The word `facet_line`.
pub const OVS_MARKS_RAILS_KIND_FACET_LINE: c_int = 6;

/// The word `surveyed`.
pub const OVS_MARKS_RAILS_GROUND_SURVEYED: c_int = 0;

/// The word `spanning`.
pub const OVS_MARKS_RAILS_GROUND_SPANNING: c_int = 1;

/// The word `beyond`.
pub const OVS_MARKS_RAILS_GROUND_BEYOND: c_int = 2;

/// The word `within`.
pub const OVS_MARKS_RODS_REACH_WITHIN: c_int = 0;

/// The word `above_sight`.
pub const OVS_MARKS_RODS_REACH_ABOVE_SIGHT: c_int = 1;

/// The word `beyond_rod`.
pub const OVS_MARKS_RODS_REACH_BEYOND_ROD: c_int = 2;

/// The word `isolation_strip`.
pub const OVS_MARKS_EDGES_MATERIAL_ISOLATION_STRIP: c_int = 0;

/// The word `form`.
pub const OVS_MARKS_EDGES_MATERIAL_FORM: c_int = 1;

/// The word `no`.
pub const OVS_MARKS_EDGES_LEVEL_NO: c_int = 0;

/// The word `yes`.
pub const OVS_MARKS_EDGES_LEVEL_YES: c_int = 1;

/// The word `isolation_strip`.
pub const OVS_MARKS_RIPS_MATERIAL_ISOLATION_STRIP: c_int = 0;

/// The word `form`.
pub const OVS_MARKS_RIPS_MATERIAL_FORM: c_int = 1;

/// The result `difference` (in or mm): today less planned: what every rod moves by.
pub const OVS_MORNING_CHECK_DIFFERENCE: c_int = 0;

/// The result `second_difference` (in or mm): the same of the second benchmark.
pub const OVS_MORNING_CHECK_SECOND_DIFFERENCE: c_int = 1;

/// The result `verdict`: what follows.
pub const OVS_MORNING_CHECK_VERDICT: c_int = 2;

/// The result `doubted`: which benchmark is in doubt.
pub const OVS_MORNING_CHECK_DOUBTED: c_int = 3;

/// The result `today`: the rods of the marks today; none where nobody should pour.
pub const OVS_MORNING_CHECK_TODAY: c_int = 4;

/// The column `rod` of `today` (ft or m): its rod today.
pub const OVS_MORNING_CHECK_TODAY_ROD: c_int = 0;

/// The result `said`: a sentence for the crew.
pub const OVS_MORNING_CHECK_SAID: c_int = 5;

/// How many results there are.
pub const OVS_MORNING_CHECK_RESULTS: c_int = 6;

/// The word `no`.
pub const OVS_MORNING_CHECK_SAME_SETUP_NO: c_int = 0;

/// The word `yes`.
pub const OVS_MORNING_CHECK_SAME_SETUP_YES: c_int = 1;

/// The word `same`.
pub const OVS_MORNING_CHECK_VERDICT_SAME: c_int = 0;

/// The word `agrees`.
pub const OVS_MORNING_CHECK_VERDICT_AGREES: c_int = 1;

/// The word `shift`.
pub const OVS_MORNING_CHECK_VERDICT_SHIFT: c_int = 2;

/// The word `stop`.
pub const OVS_MORNING_CHECK_VERDICT_STOP: c_int = 3;

/// The word `none`.
pub const OVS_MORNING_CHECK_DOUBTED_NONE: c_int = 0;

/// The word `first`.
pub const OVS_MORNING_CHECK_DOUBTED_FIRST: c_int = 1;

/// The word `second`.
pub const OVS_MORNING_CHECK_DOUBTED_SECOND: c_int = 2;

/// The word `either`.
pub const OVS_MORNING_CHECK_DOUBTED_EITHER: c_int = 3;

static MARKS: &Operation = row(OPERATIONS, "marks");

/// Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance
/// below the line, and height over the old slab as the check.
///
/// Equation: rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest whole
/// step, half a step going to the higher floor.
/// Taken for granted: the walk goes once round the outer ring with the work on the left, then round each hole;
/// between neighbouring marks the floor is straight; old slab plane over each triangle.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` (ft): elevation of the level line struck round the walls; without it no distances below it; at least
///     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `sight` (ft): elevation of the line of sight now; without it and without setups that of the survey's first
///     set-up; at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
///   - `setups`: set-ups that marks are read from, instead of sight; every mark is told from each; may be left out.
///   - `name` of `setups`: what it is called; may be left out.
///   - `sight` of `setups` (ft): elevation of its line of sight; at least -32808.3989501 ft, at most 32808.3989501
///     ft; may be left out.
///   - `benchmark` of `setups` (ft): elevation of a benchmark; at least -3280.83989501 ft, at most 32808.3989501
///     ft; may be left out.
///   - `rod` of `setups` (ft): the rod on that benchmark; at least 0 ft, at most 32.8083989501 ft; may be left out.
///   - `rod_length` (ft): how long the rod is; at least 1 ft, at most 32 ft; where left out 16 ft, because a
///     telescoping rod, common practice, no source.
///   - `round` (in): rods and distances below the line are marked in whole steps of this; at least 0.00393700787402
///     in, at most 4 in; where left out 1/8 in, because finer cannot be set out.
///   - `spacing` (ft): greatest distance between stations at an edge or a rail; at least 0.25 ft, at most 100 ft;
///     where left out 4 ft, because the old slab is checked each 4 ft, common practice, no source.
///   - `points`: places on edges that must have a mark; up to 6 in off they are taken to the edge; may be left out.
///   - `name` of `points`: what it is called; required.
///   - `x` of `points` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `points` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `screed_length` (ft): length of the screed that rides on the pads; at least 2.5 ft, at most 50 ft; where
///     left out 8 ft, because what two can pull by hand, common practice, no source.
///   - `pad_spacing` (ft): greatest distance between pads; without it the screed less 2 ft; at least 0.5 ft, at
///     most 48 ft; may be left out.
///   - `pad_inset` (ft): how far pads stay off the edges; at least 0 ft, at most 10 ft; where left out 1 ft,
///     because the marks at the edge serve there, common practice, no source.
///   - `forms`: edges with a form; the others are walls with an isolation strip; may be left out.
///   - `edge` of `forms`: its name; required.
///   - `rails`: screed rails; may be left out.
///   - `name` of `rails`: the rail; required.
///   - `x` of `rails` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `y` of `rails` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
///   - `rail_offset` (in): how far the tops of the rails stand above the floor; at least -12 in, at most 12 in;
///     where left out 0 in, because the screed rides at the height of the floor.
///   - `start_edge`: the edge that the walk starts with; the first where left out; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_MARKS_MARKS: how many marks there are.
///   - OVS_MARKS_SIGHT (ft): elevation of the first line of sight.
///   - OVS_MARKS_ROD_ON_LINE (ft): the rod on the reference line from there.
///   - OVS_MARKS_GREATEST_DEPARTURE (in): how far marks leave the floor by rounding, at most.
///   - OVS_MARKS_STATIONS: the marks at the edges.
///   - OVS_MARKS_PADS: the wet pads.
///   - OVS_MARKS_FORMS: the tops of the forms.
///   - OVS_MARKS_RAILS: the tops of the rails.
///   - OVS_MARKS_RODS: every mark from every set-up.
///   - OVS_MARKS_EDGES: the edges.
///   - OVS_MARKS_RIPS: what strips and forms are ripped to.
///   - OVS_MARKS_LINES: the lines along which planes meet.
///   - OVS_MARKS_DIAGONALS: lengths from corner to corner.
///   - OVS_MARKS_CSV: all marks as a CSV file.
///   - OVS_MARKS_TEXT: the list for the site.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE, OVS_LINE_TOO_SHORT, OVS_POINT_OFF_WALL, OVS_RAIL_OUTSIDE,
/// OVS_PADS_TOO_FAR.
/// Basis: a chalk line round the walls and wet pads set the grade that the screed follows; heights are marked from
/// a level line, never up from the old slab: common practice, no source.
/// Basis: the old slab is checked each 4 ft along the walls: common practice, no source.
/// Basis: wet pads no farther apart than the length of the screed less 2 ft: common practice, no source.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"1 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"1 ft","y":"31 ft","elevation":"99.84 ft"}]},"line":"103 ft","setups":{"name":["nail, left jamb","nail, back"],"benchmark":["100 ft","100.5 ft"],"rod":["4' 2 1/2\"","3' 8\""]},"points":{"name":["left jamb","right jamb"],"x":["4 ft","16 ft"],"y":["1 in","1 in"]},"forms":{"edge":["front"]},"rails":{"name":["middle","middle"],"x":["10 ft","10 ft"],"y":["1 ft","31 ft"]},"rail_offset":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_marks_us(
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
    let request = Request::new(MARKS, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance
/// below the line, and height over the old slab as the check.
///
/// Equation: rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest whole
/// step, half a step going to the higher floor.
/// Taken for granted: the walk goes once round the outer ring with the work on the left, then round each hole;
/// between neighbouring marks the floor is straight; old slab plane over each triangle.
///
/// - `survey`: the old slab.
/// - `finish`: the new top surface.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `line` (m): elevation of the level line struck round the walls; without it no distances below it; at least
///     -10000 m, at most 10000 m; may be left out.
///   - `sight` (m): elevation of the line of sight now; without it and without setups that of the survey's first
///     set-up; at least -10000 m, at most 10000 m; may be left out.
///   - `setups`: set-ups that marks are read from, instead of sight; every mark is told from each; may be left out.
///   - `name` of `setups`: what it is called; may be left out.
///   - `sight` of `setups` (m): elevation of its line of sight; at least -10000 m, at most 10000 m; may be left
///     out.
///   - `benchmark` of `setups` (m): elevation of a benchmark; at least -1000 m, at most 10000 m; may be left out.
///   - `rod` of `setups` (m): the rod on that benchmark; at least 0 m, at most 10 m; may be left out.
///   - `rod_length` (m): how long the rod is; at least 0.3048 m, at most 9.7536 m; where left out 16 ft, because a
///     telescoping rod, common practice, no source.
///   - `round` (mm): rods and distances below the line are marked in whole steps of this; at least 0.1 mm, at most
///     101.6 mm; where left out 1/8 in, because finer cannot be set out.
///   - `spacing` (m): greatest distance between stations at an edge or a rail; at least 0.0762 m, at most 30.48 m;
///     where left out 4 ft, because the old slab is checked each 4 ft, common practice, no source.
///   - `points`: places on edges that must have a mark; up to 6 in off they are taken to the edge; may be left out.
///   - `name` of `points`: what it is called; required.
///   - `x` of `points` (m): from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `points` (m): from the front; at least -100000 m, at most 100000 m; required.
///   - `screed_length` (m): length of the screed that rides on the pads; at least 0.762 m, at most 15.24 m; where
///     left out 8 ft, because what two can pull by hand, common practice, no source.
///   - `pad_spacing` (m): greatest distance between pads; without it the screed less 2 ft; at least 0.1524 m, at
///     most 14.6304 m; may be left out.
///   - `pad_inset` (m): how far pads stay off the edges; at least 0 m, at most 3.048 m; where left out 1 ft,
///     because the marks at the edge serve there, common practice, no source.
///   - `forms`: edges with a form; the others are walls with an isolation strip; may be left out.
///   - `edge` of `forms`: its name; required.
///   - `rails`: screed rails; may be left out.
///   - `name` of `rails`: the rail; required.
///   - `x` of `rails` (m): from the left; at least -100000 m, at most 100000 m; required.
///   - `y` of `rails` (m): from the front; at least -100000 m, at most 100000 m; required.
///   - `rail_offset` (mm): how far the tops of the rails stand above the floor; at least -304.8 mm, at most 304.8
///     mm; where left out 0 in, because the screed rides at the height of the floor.
///   - `start_edge`: the edge that the walk starts with; the first where left out; may be left out.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_MARKS_MARKS: how many marks there are.
///   - OVS_MARKS_SIGHT (m): elevation of the first line of sight.
///   - OVS_MARKS_ROD_ON_LINE (m): the rod on the reference line from there.
///   - OVS_MARKS_GREATEST_DEPARTURE (mm): how far marks leave the floor by rounding, at most.
///   - OVS_MARKS_STATIONS: the marks at the edges.
///   - OVS_MARKS_PADS: the wet pads.
///   - OVS_MARKS_FORMS: the tops of the forms.
///   - OVS_MARKS_RAILS: the tops of the rails.
///   - OVS_MARKS_RODS: every mark from every set-up.
///   - OVS_MARKS_EDGES: the edges.
///   - OVS_MARKS_RIPS: what strips and forms are ripped to.
///   - OVS_MARKS_LINES: the lines along which planes meet.
///   - OVS_MARKS_DIAGONALS: lengths from corner to corner.
///   - OVS_MARKS_CSV: all marks as a CSV file.
///   - OVS_MARKS_TEXT: the list for the site.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN,
/// OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE, OVS_LINE_TOO_SHORT, OVS_POINT_OFF_WALL, OVS_RAIL_OUTSIDE,
/// OVS_PADS_TOO_FAR.
/// Basis: a chalk line round the walls and wet pads set the grade that the screed follows; heights are marked from
/// a level line, never up from the old slab: common practice, no source.
/// Basis: the old slab is checked each 4 ft along the walls: common practice, no source.
/// Basis: wet pads no farther apart than the length of the screed less 2 ft: common practice, no source.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: plane and solid geometry: derived.
/// Since 0.1.0.
/// Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"1 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"1 ft","y":"31 ft","elevation":"99.84 ft"}]},"line":"103 ft","setups":{"name":["nail, left jamb","nail, back"],"benchmark":["100 ft","100.5 ft"],"rod":["4' 2 1/2\"","3' 8\""]},"points":{"name":["left jamb","right jamb"],"x":["4 ft","16 ft"],"y":["1 in","1 in"]},"forms":{"edge":["front"]},"rails":{"name":["middle","middle"],"x":["10 ft","10 ft"],"y":["1 ft","31 ft"]},"rail_offset":"1/2 in"}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_marks_si(
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
    let request = Request::new(MARKS, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_marks_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_marks_us_why(
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
    let request = Request::new(MARKS, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_marks_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_marks_si_why(
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
    let request = Request::new(MARKS, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

static MORNING_CHECK: &Operation = row(OPERATIONS, "morning_check");

/// The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
///
/// Equation: difference = today - planned; rod today = rod planned + difference; two benchmarks must move alike.
/// Taken for granted: within 1/8 in the same set-up agrees (common practice, no source); a new set-up may read
/// anything, but alike on both benchmarks.
///
/// - `planned_ft` (ft): rod on the benchmark when the marks were planned; at least 0 ft, at most 32.8083989501 ft.
/// - `today_ft` (ft): rod on it today; at least 0 ft, at most 32.8083989501 ft.
/// - `same_setup`: yes where the level still stands where it stood, no after it was set up anew; 0 no, 1 yes.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `marks`: the rods of the marks; may be left out.
///   - `rod` of `marks` (ft): its rod as planned; at least 0 ft, at most 32.8083989501 ft; required.
///   - `second_planned` (ft): rod on a second benchmark when the marks were planned; at least 0 ft, at most
///     32.8083989501 ft; may be left out.
///   - `second_today` (ft): rod on the second benchmark today; at least 0 ft, at most 32.8083989501 ft; may be left
///     out.
///   - `tolerance` (in): how far the benchmark may read off, and two benchmarks from one another; at least 0 in, at
///     most 12 in; where left out 1/4 in, because more is no reading error, common practice, no source.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_MORNING_CHECK_DIFFERENCE (in): today less planned: what every rod moves by.
///   - OVS_MORNING_CHECK_SECOND_DIFFERENCE (in): the same of the second benchmark.
///   - OVS_MORNING_CHECK_VERDICT: what follows; 0 same, 1 agrees, 2 shift, 3 stop.
///   - OVS_MORNING_CHECK_DOUBTED: which benchmark is in doubt; 0 none, 1 first, 2 second, 3 either.
///   - OVS_MORNING_CHECK_TODAY: the rods of the marks today; none where nobody should pour.
///   - OVS_MORNING_CHECK_SAID: a sentence for the crew.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING.
/// Basis: the benchmark is read before the pour: every rod moves by the difference, and nobody pours where it is
/// off by more than 1/4 in: common practice, no source.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
/// practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"planned":"4' 2 1/2\"","today":"4' 5 3/8\"","same_setup":"no","marks":{"rod":["4' 9\"","4' 8 1/2\""]},"second_planned":"3' 8\"","second_today":"3' 10 3/4\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_morning_check_us(
    planned_ft: f64,
    today_ft: f64,
    same_setup: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(planned_ft)),
        (1, Given::Number(today_ft)),
        (2, Given::Whole(same_setup)),
    ];
    let request = Request::new(MORNING_CHECK, System::Us, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
///
/// Equation: difference = today - planned; rod today = rod planned + difference; two benchmarks must move alike.
/// Taken for granted: within 1/8 in the same set-up agrees (common practice, no source); a new set-up may read
/// anything, but alike on both benchmarks.
///
/// - `planned_m` (m): rod on the benchmark when the marks were planned; at least 0 m, at most 10 m.
/// - `today_m` (m): rod on it today; at least 0 m, at most 10 m.
/// - `same_setup`: yes where the level still stands where it stood, no after it was set up anew; 0 no, 1 yes.
/// - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
///   - `marks`: the rods of the marks; may be left out.
///   - `rod` of `marks` (m): its rod as planned; at least 0 m, at most 10 m; required.
///   - `second_planned` (m): rod on a second benchmark when the marks were planned; at least 0 m, at most 10 m; may
///     be left out.
///   - `second_today` (m): rod on the second benchmark today; at least 0 m, at most 10 m; may be left out.
///   - `tolerance` (mm): how far the benchmark may read off, and two benchmarks from one another; at least 0 mm, at
///     most 304.8 mm; where left out 1/4 in, because more is no reading error, common practice, no source.
/// - `status`, out: the status of the call; may be null.
/// - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
///
/// Returns an answer, or null; its results by their constants:
///   - OVS_MORNING_CHECK_DIFFERENCE (mm): today less planned: what every rod moves by.
///   - OVS_MORNING_CHECK_SECOND_DIFFERENCE (mm): the same of the second benchmark.
///   - OVS_MORNING_CHECK_VERDICT: what follows; 0 same, 1 agrees, 2 shift, 3 stop.
///   - OVS_MORNING_CHECK_DOUBTED: which benchmark is in doubt; 0 none, 1 first, 2 second, 3 either.
///   - OVS_MORNING_CHECK_TODAY: the rods of the marks today; none where nobody should pour.
///   - OVS_MORNING_CHECK_SAID: a sentence for the crew.
///
/// Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING.
/// Basis: the benchmark is read before the pour: every rod moves by the difference, and nobody pours where it is
/// off by more than 1/4 in: common practice, no source.
/// Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
/// textbooks, differential levelling (any), height of instrument.
/// Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
/// practice, no source.
/// Since 0.1.0.
/// Example, as JSON: {"planned":"4' 2 1/2\"","today":"4' 5 3/8\"","same_setup":"no","marks":{"rod":["4' 9\"","4' 8 1/2\""]},"second_planned":"3' 8\"","second_today":"3' 10 3/4\""}
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_morning_check_si(
    planned_m: f64,
    today_m: f64,
    same_setup: c_int,
    options_json: *const c_char,
    options_len: c_int,
    status: *mut c_int,
    notes: *mut c_int,
    notes_len: c_int,
    msg: *mut c_char,
    msg_len: c_int,
) -> *mut ovs_answer {
    let given = [
        (0, Given::Number(planned_m)),
        (1, Given::Number(today_m)),
        (2, Given::Whole(same_setup)),
    ];
    let request = Request::new(MORNING_CHECK, System::Si, &given, options_json, options_len);
    unsafe { record::answer(request, status, Notes::new(notes, notes_len), Message::new(msg, msg_len)) }
}

/// Why ovs_morning_check_us refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_morning_check_us_why(
    planned_ft: f64,
    today_ft: f64,
    same_setup: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(planned_ft)),
        (1, Given::Number(today_ft)),
        (2, Given::Whole(same_setup)),
    ];
    let request = Request::new(MORNING_CHECK, System::Us, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}

/// Why ovs_morning_check_si refuses these inputs, in full; else its notes and what was taken, one a line.
///
/// - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
///
/// Returns the status of the call itself.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn ovs_morning_check_si_why(
    planned_m: f64,
    today_m: f64,
    same_setup: c_int,
    options_json: *const c_char,
    options_len: c_int,
    text: *mut c_char,
    text_len: c_int,
    needed: *mut c_int,
) -> c_int {
    let given = [
        (0, Given::Number(planned_m)),
        (1, Given::Number(today_m)),
        (2, Given::Whole(same_setup)),
    ];
    let request = Request::new(MORNING_CHECK, System::Si, &given, options_json, options_len);
    unsafe { record::why(request, TextOut::new("text", text, text_len, needed)) }
}
