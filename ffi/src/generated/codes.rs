//! The statuses and the notes.
//!
//! Made from the table of operations: change the table and run `cargo run -p overslab-tests`.

use std::ffi::c_int;

/// Status: the unit is not known.
pub const OVS_UNIT_UNKNOWN: c_int = 10;

/// Status: a number stands without its unit.
pub const OVS_UNIT_MISSING: c_int = 11;

/// Status: the unit belongs to another quantity.
pub const OVS_UNIT_WRONG: c_int = 12;

/// Status: the text cannot be read as a quantity.
pub const OVS_NOT_READABLE: c_int = 13;

/// Status: a comma stands where it could be a decimal comma.
pub const OVS_DECIMAL_COMMA: c_int = 14;

/// Status: the number is not finite.
pub const OVS_NOT_FINITE: c_int = 15;

/// Status: the quantity cannot be below zero.
pub const OVS_NEGATIVE: c_int = 16;

/// Status: the value lies outside its range.
pub const OVS_OUT_OF_RANGE: c_int = 17;

/// Status: an empty cell or a blank where a value is wanted.
pub const OVS_EMPTY_CELL: c_int = 18;

/// Status: a zero in a place where an empty cell is more likely.
pub const OVS_ZERO_REFUSED: c_int = 19;

/// Status: the word is not one of the choices.
pub const OVS_WORD_UNKNOWN: c_int = 20;

/// Status: a whole number is wanted.
pub const OVS_NOT_A_COUNT: c_int = 21;

/// Status: the list is empty.
pub const OVS_EMPTY_LIST: c_int = 22;

/// Status: lists that belong together differ in length.
pub const OVS_LENGTH_MISMATCH: c_int = 23;

/// Status: the value is of another kind than the port takes.
pub const OVS_KIND_MISMATCH: c_int = 24;

/// Status: the key is not known.
pub const OVS_KEY_UNKNOWN: c_int = 25;

/// Status: a required value is missing.
pub const OVS_KEY_MISSING: c_int = 26;

/// Status: the text is not valid TOML or JSON.
pub const OVS_SYNTAX: c_int = 27;

/// Status: a name is given twice.
pub const OVS_KEY_REPEATED: c_int = 28;

/// Status: the schema version is not known.
pub const OVS_VERSION_UNKNOWN: c_int = 29;

/// Status: two values say the same thing differently.
pub const OVS_CONTRADICTION: c_int = 30;

/// Status: the outline crosses itself.
pub const OVS_OUTLINE_CROSSES: c_int = 40;

/// Status: the outline has too few corners or no area.
pub const OVS_OUTLINE_TOO_FEW: c_int = 41;

/// Status: a hole leaves the outline or meets another hole.
pub const OVS_HOLE_OUTSIDE: c_int = 42;

/// Status: the wall lengths do not close.
pub const OVS_OUTLINE_OPEN: c_int = 43;

/// Status: no figure has these sides and diagonals.
pub const OVS_DIAGONAL_IMPOSSIBLE: c_int = 44;

/// Status: two heights stand at one place.
pub const OVS_TWO_HEIGHTS: c_int = 45;

/// Status: a shot lies outside the outline.
pub const OVS_SHOT_OUTSIDE: c_int = 46;

/// Status: too few shots for a surface.
pub const OVS_TOO_FEW_SHOTS: c_int = 47;

/// Status: all shots lie on one line.
pub const OVS_COLLINEAR_SHOTS: c_int = 48;

/// Status: the level book does not close within its tolerance.
pub const OVS_CLOSURE_EXCEEDED: c_int = 49;

/// Status: the level book lacks a reading it needs.
pub const OVS_BOOK_INCOMPLETE: c_int = 50;

/// Status: the work reaches too far beyond the shots.
pub const OVS_BEYOND_SHOTS: c_int = 51;

/// Status: a step in the old slab is not described well enough.
pub const OVS_STEP_UNRESOLVED: c_int = 52;

/// Status: a zone leaves the surveyed outline.
pub const OVS_REGION_OUTSIDE: c_int = 53;

/// Status: no edge of the outline has this name.
pub const OVS_EDGE_UNKNOWN: c_int = 60;

/// Status: the finish is not determined by what was given.
pub const OVS_FINISH_UNDETERMINED: c_int = 61;

/// Status: the finish is given in two ways.
pub const OVS_FINISH_TWICE: c_int = 62;

/// Status: a pointer is null.
pub const OVS_NULL_POINTER: c_int = 90;

/// Status: a length or a count passed over the border is negative.
pub const OVS_LENGTH_NEGATIVE: c_int = 91;

/// Status: the bytes are not UTF-8.
pub const OVS_NOT_TEXT: c_int = 92;

/// Status: no operation has this name.
pub const OVS_OPERATION_UNKNOWN: c_int = 93;

/// Status: the buffer for the results is too short.
pub const OVS_BUFFER_SHORT: c_int = 94;

/// Status: a fault of the library itself.
pub const OVS_INTERNAL: c_int = 99;

/// Status: the format of the file is not known.
pub const OVS_FORMAT_UNKNOWN: c_int = 100;

/// Status: the reader for the format is not built in.
pub const OVS_FORMAT_NOT_BUILT: c_int = 101;

/// Status: the file breaks the rules of its format.
pub const OVS_FILE_BROKEN: c_int = 102;

/// Status: the file ends before what it states is there.
pub const OVS_FILE_SHORT: c_int = 103;

/// Status: a column that is needed is not there.
pub const OVS_COLUMN_MISSING: c_int = 104;

/// Status: the head of a column contradicts itself or another.
pub const OVS_COLUMN_DOUBTFUL: c_int = 105;

/// Status: the file does not hold exactly one surface of that name.
pub const OVS_SURFACE_UNCLEAR: c_int = 106;

/// Status: the file holds no point that can be used.
pub const OVS_NO_POINTS: c_int = 107;

/// Status: the text behind base64: is not base64.
pub const OVS_NOT_BASE64: c_int = 110;

/// Status: fewer points are asked than the hull of the points has corners.
pub const OVS_THINNING_COUNT: c_int = 115;

/// Status: points at one place differ by more than the height error asked.
pub const OVS_THINNING_UNREACHABLE: c_int = 116;

/// Status: the known points do not fix the axes.
pub const OVS_KNOWN_POINTS: c_int = 117;

/// Status: the known points do not lie alike in both systems of axes.
pub const OVS_AXES_DISAGREE: c_int = 118;

/// Status: the known points lie alike only as in a mirror.
pub const OVS_AXES_MIRRORED: c_int = 119;

/// Status: a triangle has a corner that is none of the points.
pub const OVS_FACE_POINT_UNKNOWN: c_int = 120;

/// Status: a triangle has no area in plan.
pub const OVS_FACE_FLAT: c_int = 121;

/// Status: two triangles overlap.
pub const OVS_FACES_OVERLAP: c_int = 122;

/// Status: a point lies in a triangle or on its side.
pub const OVS_POINT_IN_FACE: c_int = 123;

/// Status: three triangles share one side.
pub const OVS_EDGE_OF_THREE: c_int = 124;

/// Status: the corners of a facet are not in one plane.
pub const OVS_FACET_WARPED: c_int = 130;

/// Status: two facets have different heights along the edge they share.
pub const OVS_FACETS_APART: c_int = 131;

/// Status: two facets lie over one another.
pub const OVS_FACETS_OVERLAP: c_int = 132;

/// Status: a part of the work is under no facet.
pub const OVS_FACETS_LEAVE_HOLE: c_int = 133;

/// Status: the corners of a facet bound no area that could be struck off.
pub const OVS_FACET_SHAPE: c_int = 134;

/// Status: no corner has this name or number.
pub const OVS_CORNER_UNKNOWN: c_int = 135;

/// Status: a corner of the work cannot be seen from the drain.
pub const OVS_CORNER_UNSEEN: c_int = 136;

/// Status: a line or a place of the finish lies outside the work.
pub const OVS_OFF_WORK: c_int = 137;

/// Status: the work reaches behind the line of the edge.
pub const OVS_BEHIND_EDGE: c_int = 138;

/// Status: no shot of the survey has this name.
pub const OVS_SHOT_UNKNOWN: c_int = 140;

/// Status: levels do not rise from one to the next.
pub const OVS_LEVELS_UNSORTED: c_int = 150;

/// Status: an interval or a list gives too many levels.
pub const OVS_TOO_MANY_LEVELS: c_int = 151;

/// Status: a line has fewer than two places apart from one another.
pub const OVS_LINE_TOO_SHORT: c_int = 152;

/// Status: a line lies wholly outside the surveyed outline.
pub const OVS_LINE_OUTSIDE: c_int = 153;

/// Status: a spacing gives too many stations.
pub const OVS_TOO_MANY_STATIONS: c_int = 154;

/// Status: water has no way out: no edge is open and there is no drain.
pub const OVS_NO_OUTLET: c_int = 160;

/// Status: a drain lies outside the outline.
pub const OVS_DRAIN_OUTSIDE: c_int = 161;

/// Status: the demands on the finish cannot all be kept.
pub const OVS_DEMANDS_CONFLICT: c_int = 180;

/// Status: an answer was refused by its own check.
pub const OVS_PROOF_FAILED: c_int = 181;

/// Status: no facet has this name, and none falls to it.
pub const OVS_FACET_UNKNOWN: c_int = 182;

/// Status: no demand has this name.
pub const OVS_DEMAND_UNKNOWN: c_int = 183;

/// Status: no place where the drain may be sees every corner of the outline.
pub const OVS_DRAIN_UNPLACED: c_int = 184;

/// Status: the demands can be kept with the drain at no place where it may be.
pub const OVS_DRAIN_NOWHERE: c_int = 185;

/// Status: the search ended before it found a place where the demands can be kept.
pub const OVS_DRAIN_NOT_FOUND: c_int = 186;

/// Status: no zone has this name.
pub const OVS_ZONE_UNKNOWN: c_int = 187;

/// Status: a place that must have a mark is on no edge.
pub const OVS_POINT_OFF_WALL: c_int = 190;

/// Status: a screed rail leaves the work.
pub const OVS_RAIL_OUTSIDE: c_int = 191;

/// Status: wet pads are farther apart than the screed reaches.
pub const OVS_PADS_TOO_FAR: c_int = 192;

/// Status: the way of water over the finish was lost to rounding.
pub const OVS_FLOW_LOST: c_int = 200;

/// Status: a thing lies too far from the floor to be met by it.
pub const OVS_THING_OFF_FLOOR: c_int = 210;

/// Status: a thing of this kind has a line, and one place was given.
pub const OVS_LINE_NEEDED: c_int = 211;

/// Status: a measure that a thing of this kind has no use for.
pub const OVS_MEASURE_NOT_READ: c_int = 212;

/// Status: the ground along an edge is not given at every place of its line.
pub const OVS_GROUND_MISSING: c_int = 213;

/// Status: the ground outside a door is known at fewer than two places.
pub const OVS_APPROACH_SHORT: c_int = 220;

/// Status: the ground outside is not known at the door itself.
pub const OVS_APPROACH_START: c_int = 221;

/// Status: the places outside a door do not run outwards from it.
pub const OVS_APPROACH_UNSORTED: c_int = 222;

/// Status: a new approach meets the ground where that is not known.
pub const OVS_TIE_IN_BEYOND: c_int = 223;

/// Status: nothing says how high the floor is at the door.
pub const OVS_DOOR_UNKNOWN: c_int = 224;

/// Status: profile readings stand neither 12 in nor 300 mm apart.
pub const OVS_PROFILE_SPACING: c_int = 230;

/// Status: a profile has too few readings.
pub const OVS_PROFILE_SHORT: c_int = 231;

/// Status: the readings of a profile are not in order along its line.
pub const OVS_PROFILE_ORDER: c_int = 232;

/// Status: lines, sections and their areas do not go together.
pub const OVS_FLATNESS_SECTION: c_int = 233;

/// Status: no profile line has this name.
pub const OVS_PROFILE_LINE_UNKNOWN: c_int = 234;

/// Status: the new floor was not surveyed over the plan edge of the old slab.
pub const OVS_AS_BUILT_OUTLINE: c_int = 235;

/// Status: two findings on the old slab cannot both be so.
pub const OVS_FINDINGS_DISAGREE: c_int = 240;

/// Status: a bonded overlay is figured over a sound slab only.
pub const OVS_BOND_NEEDS_SOUND: c_int = 250;

/// Status: a published table has no number there.
pub const OVS_OUTSIDE_TABLE: c_int = 251;

/// Status: the contact of a load is too wide for the formula.
pub const OVS_CONTACT_TOO_WIDE: c_int = 252;

/// Status: the contact of a load is not given by exactly one of radius and pressure.
pub const OVS_CONTACT_UNCLEAR: c_int = 253;

/// Status: no thickness up to the greatest asked is enough.
pub const OVS_NO_THICKNESS: c_int = 254;

/// Status: more loads than are added up at once.
pub const OVS_TOO_MANY_LOADS: c_int = 255;

/// Status: a line does not run along an edge of the work.
pub const OVS_LINE_NOT_ON_EDGE: c_int = 275;

/// Note: the result lies outside the range the formula is stated for.
pub const OVS_NOTE_OUTSIDE_FORMULA: c_int = 1;

/// Note: part of the work lies beyond the shots, its height is extended.
pub const OVS_NOTE_BEYOND_SHOTS: c_int = 2;

/// Note: more than 30 % of the work lies beyond the shots.
pub const OVS_NOTE_MUCH_BEYOND_SHOTS: c_int = 3;

/// Note: part of the work lies in triangles that leave the outline.
pub const OVS_NOTE_UNSURVEYED: c_int = 4;

/// Note: shots at one place were taken as their mean.
pub const OVS_NOTE_PLACES_MERGED: c_int = 5;

/// Note: a shot a little outside the outline was used.
pub const OVS_NOTE_SHOT_NEAR_OUTLINE: c_int = 6;

/// Note: a line between two shots on a wall was split.
pub const OVS_NOTE_EDGE_SPLIT: c_int = 7;

/// Note: the old slab stands above the finish somewhere.
pub const OVS_NOTE_HIGH_SPOTS: c_int = 8;

/// Note: the value is under the published guidance.
pub const OVS_NOTE_BELOW_GUIDANCE: c_int = 9;

/// Note: heights were rounded to what can be set out.
pub const OVS_NOTE_ROUNDED: c_int = 10;

/// Note: measurements that do not agree were adjusted.
pub const OVS_NOTE_ADJUSTED: c_int = 11;

/// Note: a value was taken, not measured.
pub const OVS_NOTE_ASSUMED: c_int = 12;

/// Note: the last truck carries a small load.
pub const OVS_NOTE_SHORT_LOAD: c_int = 13;

/// Note: a limit could not be read in its source: confirm locally.
pub const OVS_NOTE_CONFIRM_LOCALLY: c_int = 14;

/// Note: points of the file were not used.
pub const OVS_NOTE_POINTS_LEFT_OUT: c_int = 20;

/// Note: the file does not state its unit, one was taken.
pub const OVS_NOTE_UNIT_TAKEN: c_int = 21;

/// Note: the unit given was used in place of the one in the file.
pub const OVS_NOTE_UNIT_OVERRULED: c_int = 22;

/// Note: parts of the file were not used as they stand.
pub const OVS_NOTE_FILE_PARTS: c_int = 23;

/// Note: the file may be cut short or damaged.
pub const OVS_NOTE_FILE_DOUBTFUL: c_int = 24;

/// Note: points outside the outline were left out.
pub const OVS_NOTE_POINTS_OUTSIDE: c_int = 25;

/// Note: two known points cannot show whether the axes fit.
pub const OVS_NOTE_AXES_UNCHECKED: c_int = 28;

/// Note: no known point has a height in both systems, heights stay.
pub const OVS_NOTE_HEIGHTS_UNMOVED: c_int = 29;

/// Note: points that no triangle has as a corner were left out.
pub const OVS_NOTE_POINTS_UNUSED: c_int = 30;

/// Note: the old slab has a step along a line of shots.
pub const OVS_NOTE_STEP: c_int = 31;

/// Note: too few shots to judge one by the others.
pub const OVS_NOTE_TOO_FEW_TO_JUDGE: c_int = 40;

/// Note: too many shots do not go with their neighbours.
pub const OVS_NOTE_BOOK_IN_DOUBT: c_int = 41;

/// Note: shots were left out because the caller named them.
pub const OVS_NOTE_LEFT_OUT: c_int = 42;

/// Note: part of the work is farther from any shot than was asked.
pub const OVS_NOTE_UNCOVERED: c_int = 43;

/// Note: a zone reaches outside the work; only what is inside counts.
pub const OVS_NOTE_ZONE_CLIPPED: c_int = 45;

/// Note: part of a line lies outside the work and has no heights.
pub const OVS_NOTE_LINE_LEAVES_WORK: c_int = 46;

/// Note: the surface does not pass through a level.
pub const OVS_NOTE_LEVEL_MISSED: c_int = 47;

/// Note: ponds shallower than the depth asked for were left out.
pub const OVS_NOTE_PONDS_LEFT_OUT: c_int = 50;

/// Note: the old slab nowhere reaches what it was to be changed to.
pub const OVS_NOTE_NOTHING_CHANGED: c_int = 51;

/// Note: water stands on the finish where none stood on the old slab.
pub const OVS_NOTE_NEW_PONDS: c_int = 52;

/// Note: grinding makes dust that harms the lungs.
pub const OVS_NOTE_SILICA: c_int = 53;

/// Note: a price or a limit is missing, choices that need it are not compared.
pub const OVS_NOTE_CHOICES_INCOMPLETE: c_int = 60;

/// Note: the straight joints around two thin zones overlap.
pub const OVS_NOTE_BOXES_OVERLAP: c_int = 61;

/// Note: thin zones too small to be marked are not listed.
pub const OVS_NOTE_CRUMBS_LEFT_OUT: c_int = 62;

/// Note: a search ended at its cap: the answer may be farther from the best than was asked.
pub const OVS_NOTE_SEARCH_CUT: c_int = 65;

/// Note: places were left out of a search because the drain cannot be there.
pub const OVS_NOTE_PLACES_LEFT_OUT: c_int = 66;

/// Note: the demands leave no room for a level line or a square fall that would be set out.
pub const OVS_NOTE_HABIT_DROPPED: c_int = 67;

/// Note: the finish could not be rounded to the step asked for.
pub const OVS_NOTE_STEPS_FINER: c_int = 68;

/// Note: the search for a rounded finish ended before it was proved to be the best.
pub const OVS_NOTE_STEPS_NOT_PROVED: c_int = 69;

/// Note: marks cannot be read from a set-up.
pub const OVS_NOTE_MARKS_OUT_OF_REACH: c_int = 70;

/// Note: the old slab stands at or above the floor at marks.
pub const OVS_NOTE_MARKS_UNDER_OLD_SLAB: c_int = 71;

/// Note: the height over the old slab is a guess at marks beyond the shots.
pub const OVS_NOTE_CHECKS_EXTENDED: c_int = 72;

/// Note: marks have neither a rod nor a distance below a line.
pub const OVS_NOTE_MARKS_WITHOUT_LEVEL: c_int = 73;

/// Note: the benchmark does not read as it should: do not pour.
pub const OVS_NOTE_BENCHMARK_OFF: c_int = 74;

/// Note: some of the water of the finish finds no outlet.
pub const OVS_NOTE_WATER_HELD: c_int = 75;

/// Note: part of the finish falls less than it should.
pub const OVS_NOTE_FALL_TOO_LITTLE: c_int = 76;

/// Note: part of the finish falls away from what it is said to fall to.
pub const OVS_NOTE_WRONG_WAY: c_int = 77;

/// Note: a wave of the surface can hold water at this fall.
pub const OVS_NOTE_PUDDLES_LEFT: c_int = 78;

/// Note: things that the new floor meets do not work as they stand.
pub const OVS_NOTE_THINGS_FAIL: c_int = 80;

/// Note: measures that decide were not given.
pub const OVS_NOTE_MEASURES_ASKED: c_int = 81;

/// Note: a thing outside the floor was met at the nearest edge.
pub const OVS_NOTE_THING_AT_EDGE: c_int = 82;

/// Note: the ground outside is not known as far out as it should fall away.
pub const OVS_NOTE_PROFILE_ENDS_SHORT: c_int = 85;

/// Note: the floor is too low for water to fall away from the door as wanted.
pub const OVS_NOTE_FLOOR_TOO_LOW: c_int = 86;

/// Note: a profile without any deviation has no finite number of flatness or levelness.
pub const OVS_NOTE_PERFECT_LINE: c_int = 90;

/// Note: readings 300 mm apart flatter the floor under the constant for 12 in.
pub const OVS_NOTE_PROFILE_METRIC: c_int = 91;

/// Note: a line or a section has fewer readings than the standard judges by.
pub const OVS_NOTE_READINGS_TOO_FEW: c_int = 92;

/// Note: lines run nearer to an edge or to one another than the standard has them.
pub const OVS_NOTE_PROFILE_LAYOUT: c_int = 93;

/// Note: levelness is not used on a floor that falls.
pub const OVS_NOTE_LEVELNESS_ON_SLOPE: c_int = 94;

/// Note: readings over a bend of the plan were left out.
pub const OVS_NOTE_PLAN_BENDS: c_int = 95;

/// Note: the new floor misses its marks by more than the tolerance.
pub const OVS_NOTE_MARKS_MISSED: c_int = 96;

/// Note: the floor as built does not keep something that was asked of it.
pub const OVS_NOTE_NOT_AS_PLANNED: c_int = 97;

/// Note: shots of the new floor outside the work are not held against the plan.
pub const OVS_NOTE_SHOTS_OFF_PLAN: c_int = 98;

/// Note: water was seen standing where the shots show none.
pub const OVS_NOTE_PUDDLES_UNSEEN: c_int = 99;

/// Note: a stop by name stands against a way.
pub const OVS_NOTE_STOP_NAMED: c_int = 100;

/// Note: findings that nobody gave could turn the verdict.
pub const OVS_NOTE_FINDINGS_ASKED: c_int = 101;

/// Note: findings were taken, not given.
pub const OVS_NOTE_FINDINGS_TAKEN: c_int = 102;

/// Note: a price is missing, so there is no total.
pub const OVS_NOTE_PRICE_MISSING: c_int = 103;

/// Note: ground is dug below the old slab.
pub const OVS_NOTE_GROUND_DUG: c_int = 104;

/// Note: the old slab is enough by itself: the practical least thickness governs.
pub const OVS_NOTE_NO_OVERLAY_NEEDED: c_int = 110;

/// Note: the old slab was entered as 10 in, the most that the formula takes.
pub const OVS_NOTE_THICKNESS_CAPPED: c_int = 111;

/// Note: not on ground as far as is known: stop, the rest is a structural engineer's.
pub const OVS_NOTE_STOP_FOR_ENGINEER: c_int = 112;

/// Note: no capacity is figured for anchored lifts and hoists: ask the maker and an engineer.
pub const OVS_NOTE_ASK_THE_MAKER: c_int = 113;

/// Note: common practice that is not recommended.
pub const OVS_NOTE_NOT_RECOMMENDED: c_int = 114;

/// Note: the glue of the disc failed first: the test says nothing.
pub const OVS_NOTE_VOID_TEST: c_int = 115;

/// Note: the largest stone decides the least thickness.
pub const OVS_NOTE_STONE_DECIDES: c_int = 116;

/// Note: the thinnest slab of the search is enough.
pub const OVS_NOTE_THINNEST_ENOUGH: c_int = 117;

/// Note: the overlay has its least thickness at the edge: no key is cut.
pub const OVS_NOTE_NO_KEY_NEEDED: c_int = 125;

/// Note: the overlay does not reach its least thickness behind the edge within the room there is.
pub const OVS_NOTE_KEY_CUT_SHORT: c_int = 126;

/// Note: a key would leave too little of the old slab: the strip is broken out.
pub const OVS_NOTE_BREAK_OUT_STRIP: c_int = 127;

/// Note: the maker of what goes on the floor sets the limit, often 75 to 85 %: ask for it.
pub const OVS_NOTE_MAKERS_LIMIT: c_int = 128;

/// Note: fewer probes were read than the area takes.
pub const OVS_NOTE_TOO_FEW_PROBES: c_int = 129;
