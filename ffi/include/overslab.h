/*
 * liboverslab: computation engine for pouring new concrete floors over old ones.
 *
 * Made from the sources; do not edit.
 *
 * Every function that can fail gives a status: 0 is success, other numbers are the constants OVS_... below; a function
 * that makes something gives NULL instead and writes the status to `status`, which may be NULL.
 *
 * Numbers are double in the unit that the argument's name ends with; counts and words are int, a word by its constant.
 * Inputs come first, by value or const; outputs follow. A pointer may be NULL only where it is said. On failure outputs
 * stay as they were, but a text buffer is emptied and bad elements of an array become NaN (int: -1).
 *
 * `msg`, `msg_len`: a buffer for one line of at most 200 bytes of ASCII that says which argument is refused, what was given
 * and what is allowed; empty on success; NULL, 0 where it is not wanted. The reason in full comes from the function
 * whose name ends in _why, called with the same inputs.
 *
 * Text comes in as UTF-8 with its length in bytes and no zero byte. Text goes out into a buffer of the caller, always
 * terminated and never cut inside a character; `needed` (may be NULL) gets the bytes needed with the terminator. A
 * NULL buffer of length 0 asks for `needed` alone. A text that is of no use cut short gives OVS_BUFFER_SHORT.
 *
 * Pointers to ovs_... types are made by the library and freed by the _free function of their type, once; free takes NULL.
 * What they point to never changes, so threads may share it. The library keeps no state between calls, starts no threads,
 * reads no file, environment or clock, and prints nothing.
 *
 * Beside the statuses listed with it, any function may give OVS_NULL_POINTER, OVS_LENGTH_NEGATIVE, or OVS_INTERNAL for a
 * fault of the library itself.
 */

#ifndef OVERSLAB_H
#define OVERSLAB_H

/**
 * The status of success.
 */
#define OVS_OK 0

/**
 * The number of the ABI that this header describes; compare it with ovs_abi_version() once after loading.
 */
#define OVS_ABI_VERSION 0

/**
 * A buffer of this many bytes holds every message whole.
 */
#define OVS_MESSAGE_SIZE 201

/**
 * A cell with nothing in it.
 */
#define OVS_CELL_EMPTY 0

/**
 * A cell with a number.
 */
#define OVS_CELL_NUMBER 1

/**
 * A cell with a text.
 */
#define OVS_CELL_TEXT 2

/**
 * A cell whose inputs are refused, among others that are not; its number is the status.
 */
#define OVS_CELL_REFUSED 3

/**
 * Status: the unit is not known.
 */
#define OVS_UNIT_UNKNOWN 10

/**
 * Status: a number stands without its unit.
 */
#define OVS_UNIT_MISSING 11

/**
 * Status: the unit belongs to another quantity.
 */
#define OVS_UNIT_WRONG 12

/**
 * Status: the text cannot be read as a quantity.
 */
#define OVS_NOT_READABLE 13

/**
 * Status: a comma stands where it could be a decimal comma.
 */
#define OVS_DECIMAL_COMMA 14

/**
 * Status: the number is not finite.
 */
#define OVS_NOT_FINITE 15

/**
 * Status: the quantity cannot be below zero.
 */
#define OVS_NEGATIVE 16

/**
 * Status: the value lies outside its range.
 */
#define OVS_OUT_OF_RANGE 17

/**
 * Status: an empty cell or a blank where a value is wanted.
 */
#define OVS_EMPTY_CELL 18

/**
 * Status: a zero in a place where an empty cell is more likely.
 */
#define OVS_ZERO_REFUSED 19

/**
 * Status: the word is not one of the choices.
 */
#define OVS_WORD_UNKNOWN 20

/**
 * Status: a whole number is wanted.
 */
#define OVS_NOT_A_COUNT 21

/**
 * Status: the list is empty.
 */
#define OVS_EMPTY_LIST 22

/**
 * Status: lists that belong together differ in length.
 */
#define OVS_LENGTH_MISMATCH 23

/**
 * Status: the value is of another kind than the port takes.
 */
#define OVS_KIND_MISMATCH 24

/**
 * Status: the key is not known.
 */
#define OVS_KEY_UNKNOWN 25

/**
 * Status: a required value is missing.
 */
#define OVS_KEY_MISSING 26

/**
 * Status: the text is not valid TOML or JSON.
 */
#define OVS_SYNTAX 27

/**
 * Status: a name is given twice.
 */
#define OVS_KEY_REPEATED 28

/**
 * Status: the schema version is not known.
 */
#define OVS_VERSION_UNKNOWN 29

/**
 * Status: two values say the same thing differently.
 */
#define OVS_CONTRADICTION 30

/**
 * Status: the outline crosses itself.
 */
#define OVS_OUTLINE_CROSSES 40

/**
 * Status: the outline has too few corners or no area.
 */
#define OVS_OUTLINE_TOO_FEW 41

/**
 * Status: a hole leaves the outline or meets another hole.
 */
#define OVS_HOLE_OUTSIDE 42

/**
 * Status: the wall lengths do not close.
 */
#define OVS_OUTLINE_OPEN 43

/**
 * Status: no figure has these sides and diagonals.
 */
#define OVS_DIAGONAL_IMPOSSIBLE 44

/**
 * Status: two heights stand at one place.
 */
#define OVS_TWO_HEIGHTS 45

/**
 * Status: a shot lies outside the outline.
 */
#define OVS_SHOT_OUTSIDE 46

/**
 * Status: too few shots for a surface.
 */
#define OVS_TOO_FEW_SHOTS 47

/**
 * Status: all shots lie on one line.
 */
#define OVS_COLLINEAR_SHOTS 48

/**
 * Status: the level book does not close within its tolerance.
 */
#define OVS_CLOSURE_EXCEEDED 49

/**
 * Status: the level book lacks a reading it needs.
 */
#define OVS_BOOK_INCOMPLETE 50

/**
 * Status: the work reaches too far beyond the shots.
 */
#define OVS_BEYOND_SHOTS 51

/**
 * Status: a step in the old slab is not described well enough.
 */
#define OVS_STEP_UNRESOLVED 52

/**
 * Status: a zone leaves the surveyed outline.
 */
#define OVS_REGION_OUTSIDE 53

/**
 * Status: no edge of the outline has this name.
 */
#define OVS_EDGE_UNKNOWN 60

/**
 * Status: the finish is not determined by what was given.
 */
#define OVS_FINISH_UNDETERMINED 61

/**
 * Status: the finish is given in two ways.
 */
#define OVS_FINISH_TWICE 62

/**
 * Status: a pointer is null.
 */
#define OVS_NULL_POINTER 90

/**
 * Status: a length or a count passed over the border is negative.
 */
#define OVS_LENGTH_NEGATIVE 91

/**
 * Status: the bytes are not UTF-8.
 */
#define OVS_NOT_TEXT 92

/**
 * Status: no operation has this name.
 */
#define OVS_OPERATION_UNKNOWN 93

/**
 * Status: the buffer for the results is too short.
 */
#define OVS_BUFFER_SHORT 94

/**
 * Status: a fault of the library itself.
 */
#define OVS_INTERNAL 99

/**
 * Status: the format of the file is not known.
 */
#define OVS_FORMAT_UNKNOWN 100

/**
 * Status: the reader for the format is not built in.
 */
#define OVS_FORMAT_NOT_BUILT 101

/**
 * Status: the file breaks the rules of its format.
 */
#define OVS_FILE_BROKEN 102

/**
 * Status: the file ends before what it states is there.
 */
#define OVS_FILE_SHORT 103

/**
 * Status: a column that is needed is not there.
 */
#define OVS_COLUMN_MISSING 104

/**
 * Status: the head of a column contradicts itself or another.
 */
#define OVS_COLUMN_DOUBTFUL 105

/**
 * Status: the file does not hold exactly one surface of that name.
 */
#define OVS_SURFACE_UNCLEAR 106

/**
 * Status: the file holds no point that can be used.
 */
#define OVS_NO_POINTS 107

/**
 * Status: the text behind base64: is not base64.
 */
#define OVS_NOT_BASE64 110

/**
 * Status: fewer points are asked than the hull of the points has corners.
 */
#define OVS_THINNING_COUNT 115

/**
 * Status: points at one place differ by more than the height error asked.
 */
#define OVS_THINNING_UNREACHABLE 116

/**
 * Status: the known points do not fix the axes.
 */
#define OVS_KNOWN_POINTS 117

/**
 * Status: the known points do not lie alike in both systems of axes.
 */
#define OVS_AXES_DISAGREE 118

/**
 * Status: the known points lie alike only as in a mirror.
 */
#define OVS_AXES_MIRRORED 119

/**
 * Status: a triangle has a corner that is none of the points.
 */
#define OVS_FACE_POINT_UNKNOWN 120

/**
 * Status: a triangle has no area in plan.
 */
#define OVS_FACE_FLAT 121

/**
 * Status: two triangles overlap.
 */
#define OVS_FACES_OVERLAP 122

/**
 * Status: a point lies in a triangle or on its side.
 */
#define OVS_POINT_IN_FACE 123

/**
 * Status: three triangles share one side.
 */
#define OVS_EDGE_OF_THREE 124

/**
 * Status: the corners of a facet are not in one plane.
 */
#define OVS_FACET_WARPED 130

/**
 * Status: two facets have different heights along the edge they share.
 */
#define OVS_FACETS_APART 131

/**
 * Status: two facets lie over one another.
 */
#define OVS_FACETS_OVERLAP 132

/**
 * Status: a part of the work is under no facet.
 */
#define OVS_FACETS_LEAVE_HOLE 133

/**
 * Status: the corners of a facet bound no area that could be struck off.
 */
#define OVS_FACET_SHAPE 134

/**
 * Status: no corner has this name or number.
 */
#define OVS_CORNER_UNKNOWN 135

/**
 * Status: a corner of the work cannot be seen from the drain.
 */
#define OVS_CORNER_UNSEEN 136

/**
 * Status: a line or a place of the finish lies outside the work.
 */
#define OVS_OFF_WORK 137

/**
 * Status: the work reaches behind the line of the edge.
 */
#define OVS_BEHIND_EDGE 138

/**
 * Status: no shot of the survey has this name.
 */
#define OVS_SHOT_UNKNOWN 140

/**
 * Status: levels do not rise from one to the next.
 */
#define OVS_LEVELS_UNSORTED 150

/**
 * Status: an interval or a list gives too many levels.
 */
#define OVS_TOO_MANY_LEVELS 151

/**
 * Status: a line has fewer than two places apart from one another.
 */
#define OVS_LINE_TOO_SHORT 152

/**
 * Status: a line lies wholly outside the surveyed outline.
 */
#define OVS_LINE_OUTSIDE 153

/**
 * Status: a spacing gives too many stations.
 */
#define OVS_TOO_MANY_STATIONS 154

/**
 * Status: water has no way out: no edge is open and there is no drain.
 */
#define OVS_NO_OUTLET 160

/**
 * Status: a drain lies outside the outline.
 */
#define OVS_DRAIN_OUTSIDE 161

/**
 * Status: the demands on the finish cannot all be kept.
 */
#define OVS_DEMANDS_CONFLICT 180

/**
 * Status: an answer was refused by its own check.
 */
#define OVS_PROOF_FAILED 181

/**
 * Status: no facet has this name, and none falls to it.
 */
#define OVS_FACET_UNKNOWN 182

/**
 * Status: no demand has this name.
 */
#define OVS_DEMAND_UNKNOWN 183

/**
 * Status: no place where the drain may be sees every corner of the outline.
 */
#define OVS_DRAIN_UNPLACED 184

/**
 * Status: the demands can be kept with the drain at no place where it may be.
 */
#define OVS_DRAIN_NOWHERE 185

/**
 * Status: the search ended before it found a place where the demands can be kept.
 */
#define OVS_DRAIN_NOT_FOUND 186

/**
 * Status: no zone has this name.
 */
#define OVS_ZONE_UNKNOWN 187

/**
 * Status: a place that must have a mark is on no edge.
 */
#define OVS_POINT_OFF_WALL 190

/**
 * Status: a screed rail leaves the work.
 */
#define OVS_RAIL_OUTSIDE 191

/**
 * Status: wet pads are farther apart than the screed reaches.
 */
#define OVS_PADS_TOO_FAR 192

/**
 * Status: profile readings stand neither 12 in nor 300 mm apart.
 */
#define OVS_PROFILE_SPACING 230

/**
 * Status: a profile has too few readings.
 */
#define OVS_PROFILE_SHORT 231

/**
 * Status: the readings of a profile are not in order along its line.
 */
#define OVS_PROFILE_ORDER 232

/**
 * Status: lines, sections and their areas do not go together.
 */
#define OVS_FLATNESS_SECTION 233

/**
 * Status: no profile line has this name.
 */
#define OVS_PROFILE_LINE_UNKNOWN 234

/**
 * Status: the new floor was not surveyed over the plan edge of the old slab.
 */
#define OVS_AS_BUILT_OUTLINE 235

/**
 * Status: a bonded overlay is figured over a sound slab only.
 */
#define OVS_BOND_NEEDS_SOUND 250

/**
 * Status: a published table has no number there.
 */
#define OVS_OUTSIDE_TABLE 251

/**
 * Status: the contact of a load is too wide for the formula.
 */
#define OVS_CONTACT_TOO_WIDE 252

/**
 * Status: the contact of a load is not given by exactly one of radius and pressure.
 */
#define OVS_CONTACT_UNCLEAR 253

/**
 * Status: no thickness up to the greatest asked is enough.
 */
#define OVS_NO_THICKNESS 254

/**
 * Status: more loads than are added up at once.
 */
#define OVS_TOO_MANY_LOADS 255

/**
 * Note: the result lies outside the range the formula is stated for.
 */
#define OVS_NOTE_OUTSIDE_FORMULA 1

/**
 * Note: part of the work lies beyond the shots, its height is extended.
 */
#define OVS_NOTE_BEYOND_SHOTS 2

/**
 * Note: more than 30 % of the work lies beyond the shots.
 */
#define OVS_NOTE_MUCH_BEYOND_SHOTS 3

/**
 * Note: part of the work lies in triangles that leave the outline.
 */
#define OVS_NOTE_UNSURVEYED 4

/**
 * Note: shots at one place were taken as their mean.
 */
#define OVS_NOTE_PLACES_MERGED 5

/**
 * Note: a shot a little outside the outline was used.
 */
#define OVS_NOTE_SHOT_NEAR_OUTLINE 6

/**
 * Note: a line between two shots on a wall was split.
 */
#define OVS_NOTE_EDGE_SPLIT 7

/**
 * Note: the old slab stands above the finish somewhere.
 */
#define OVS_NOTE_HIGH_SPOTS 8

/**
 * Note: the value is under the published guidance.
 */
#define OVS_NOTE_BELOW_GUIDANCE 9

/**
 * Note: heights were rounded to what can be set out.
 */
#define OVS_NOTE_ROUNDED 10

/**
 * Note: measurements that do not agree were adjusted.
 */
#define OVS_NOTE_ADJUSTED 11

/**
 * Note: a value was taken, not measured.
 */
#define OVS_NOTE_ASSUMED 12

/**
 * Note: the last truck carries a small load.
 */
#define OVS_NOTE_SHORT_LOAD 13

/**
 * Note: a limit could not be read in its source: confirm locally.
 */
#define OVS_NOTE_CONFIRM_LOCALLY 14

/**
 * Note: points of the file were not used.
 */
#define OVS_NOTE_POINTS_LEFT_OUT 20

/**
 * Note: the file does not state its unit, one was taken.
 */
#define OVS_NOTE_UNIT_TAKEN 21

/**
 * Note: the unit given was used in place of the one in the file.
 */
#define OVS_NOTE_UNIT_OVERRULED 22

/**
 * Note: parts of the file were not used as they stand.
 */
#define OVS_NOTE_FILE_PARTS 23

/**
 * Note: the file may be cut short or damaged.
 */
#define OVS_NOTE_FILE_DOUBTFUL 24

/**
 * Note: points outside the outline were left out.
 */
#define OVS_NOTE_POINTS_OUTSIDE 25

/**
 * Note: two known points cannot show whether the axes fit.
 */
#define OVS_NOTE_AXES_UNCHECKED 28

/**
 * Note: no known point has a height in both systems, heights stay.
 */
#define OVS_NOTE_HEIGHTS_UNMOVED 29

/**
 * Note: points that no triangle has as a corner were left out.
 */
#define OVS_NOTE_POINTS_UNUSED 30

/**
 * Note: the old slab has a step along a line of shots.
 */
#define OVS_NOTE_STEP 31

/**
 * Note: too few shots to judge one by the others.
 */
#define OVS_NOTE_TOO_FEW_TO_JUDGE 40

/**
 * Note: too many shots do not go with their neighbours.
 */
#define OVS_NOTE_BOOK_IN_DOUBT 41

/**
 * Note: shots were left out because the caller named them.
 */
#define OVS_NOTE_LEFT_OUT 42

/**
 * Note: part of the work is farther from any shot than was asked.
 */
#define OVS_NOTE_UNCOVERED 43

/**
 * Note: a zone reaches outside the work; only what is inside counts.
 */
#define OVS_NOTE_ZONE_CLIPPED 45

/**
 * Note: part of a line lies outside the work and has no heights.
 */
#define OVS_NOTE_LINE_LEAVES_WORK 46

/**
 * Note: the surface does not pass through a level.
 */
#define OVS_NOTE_LEVEL_MISSED 47

/**
 * Note: ponds shallower than the depth asked for were left out.
 */
#define OVS_NOTE_PONDS_LEFT_OUT 50

/**
 * Note: the old slab nowhere reaches what it was to be changed to.
 */
#define OVS_NOTE_NOTHING_CHANGED 51

/**
 * Note: water stands on the finish where none stood on the old slab.
 */
#define OVS_NOTE_NEW_PONDS 52

/**
 * Note: grinding makes dust that harms the lungs.
 */
#define OVS_NOTE_SILICA 53

/**
 * Note: a price or a limit is missing, choices that need it are not compared.
 */
#define OVS_NOTE_CHOICES_INCOMPLETE 60

/**
 * Note: the straight joints around two thin zones overlap.
 */
#define OVS_NOTE_BOXES_OVERLAP 61

/**
 * Note: thin zones too small to be marked are not listed.
 */
#define OVS_NOTE_CRUMBS_LEFT_OUT 62

/**
 * Note: a search ended at its cap: the answer may be farther from the best than was asked.
 */
#define OVS_NOTE_SEARCH_CUT 65

/**
 * Note: places were left out of a search because the drain cannot be there.
 */
#define OVS_NOTE_PLACES_LEFT_OUT 66

/**
 * Note: the demands leave no room for a level line or a square fall that would be set out.
 */
#define OVS_NOTE_HABIT_DROPPED 67

/**
 * Note: the finish could not be rounded to the step asked for.
 */
#define OVS_NOTE_STEPS_FINER 68

/**
 * Note: the search for a rounded finish ended before it was proved to be the best.
 */
#define OVS_NOTE_STEPS_NOT_PROVED 69

/**
 * Note: marks cannot be read from a set-up.
 */
#define OVS_NOTE_MARKS_OUT_OF_REACH 70

/**
 * Note: the old slab stands at or above the floor at marks.
 */
#define OVS_NOTE_MARKS_UNDER_OLD_SLAB 71

/**
 * Note: the height over the old slab is a guess at marks beyond the shots.
 */
#define OVS_NOTE_CHECKS_EXTENDED 72

/**
 * Note: marks have neither a rod nor a distance below a line.
 */
#define OVS_NOTE_MARKS_WITHOUT_LEVEL 73

/**
 * Note: the benchmark does not read as it should: do not pour.
 */
#define OVS_NOTE_BENCHMARK_OFF 74

/**
 * Note: a profile without any deviation has no finite number of flatness or levelness.
 */
#define OVS_NOTE_PERFECT_LINE 90

/**
 * Note: readings 300 mm apart flatter the floor under the constant for 12 in.
 */
#define OVS_NOTE_PROFILE_METRIC 91

/**
 * Note: a line or a section has fewer readings than the standard judges by.
 */
#define OVS_NOTE_READINGS_TOO_FEW 92

/**
 * Note: lines run nearer to an edge or to one another than the standard has them.
 */
#define OVS_NOTE_PROFILE_LAYOUT 93

/**
 * Note: levelness is not used on a floor that falls.
 */
#define OVS_NOTE_LEVELNESS_ON_SLOPE 94

/**
 * Note: readings over a bend of the plan were left out.
 */
#define OVS_NOTE_PLAN_BENDS 95

/**
 * Note: the new floor misses its marks by more than the tolerance.
 */
#define OVS_NOTE_MARKS_MISSED 96

/**
 * Note: the floor as built does not keep something that was asked of it.
 */
#define OVS_NOTE_NOT_AS_PLANNED 97

/**
 * Note: shots of the new floor outside the work are not held against the plan.
 */
#define OVS_NOTE_SHOTS_OFF_PLAN 98

/**
 * Note: water was seen standing where the shots show none.
 */
#define OVS_NOTE_PUDDLES_UNSEEN 99

/**
 * Note: the old slab is enough by itself: the practical least thickness governs.
 */
#define OVS_NOTE_NO_OVERLAY_NEEDED 110

/**
 * Note: the old slab was entered as 10 in, the most that the formula takes.
 */
#define OVS_NOTE_THICKNESS_CAPPED 111

/**
 * Note: not on ground as far as is known: stop, the rest is a structural engineer's.
 */
#define OVS_NOTE_STOP_FOR_ENGINEER 112

/**
 * Note: no capacity is figured for anchored lifts and hoists: ask the maker and an engineer.
 */
#define OVS_NOTE_ASK_THE_MAKER 113

/**
 * Note: common practice that is not recommended.
 */
#define OVS_NOTE_NOT_RECOMMENDED 114

/**
 * Note: the glue of the disc failed first: the test says nothing.
 */
#define OVS_NOTE_VOID_TEST 115

/**
 * Note: the largest stone decides the least thickness.
 */
#define OVS_NOTE_STONE_DECIDES 116

/**
 * Note: the thinnest slab of the search is enough.
 */
#define OVS_NOTE_THINNEST_ENOUGH 117

/**
 * The field `area` (ft2 or m2): area of the work.
 */
#define OVS_OUTLINE_AREA 0

/**
 * The field `perimeter` (ft or m): length of all its edges.
 */
#define OVS_OUTLINE_PERIMETER 1

/**
 * The field `squareness`: how well the measurements agree.
 */
#define OVS_OUTLINE_SQUARENESS 2

/**
 * The field `corners`: the corners, with the edge behind each.
 */
#define OVS_OUTLINE_CORNERS 3

/**
 * The column `x` of `corners` (ft or m): distance from the left.
 */
#define OVS_OUTLINE_CORNERS_X 0

/**
 * The column `y` of `corners` (ft or m): distance from the front.
 */
#define OVS_OUTLINE_CORNERS_Y 1

/**
 * The column `edge` of `corners`: name of the edge to the next corner.
 */
#define OVS_OUTLINE_CORNERS_EDGE 2

/**
 * How many fields there are.
 */
#define OVS_OUTLINE_FIELDS 4

/**
 * The field `area` (ft2 or m2): area of the work.
 */
#define OVS_SURVEY_AREA 0

/**
 * The field `shot_count`: how many places were shot.
 */
#define OVS_SURVEY_SHOT_COUNT 1

/**
 * The field `highest` (ft or m): height of the highest point.
 */
#define OVS_SURVEY_HIGHEST 2

/**
 * The field `highest_x` (ft or m): its distance from the left.
 */
#define OVS_SURVEY_HIGHEST_X 3

/**
 * The field `highest_y` (ft or m): its distance from the front.
 */
#define OVS_SURVEY_HIGHEST_Y 4

/**
 * The field `highest_shot`: the shot it is at.
 */
#define OVS_SURVEY_HIGHEST_SHOT 5

/**
 * The field `lowest` (ft or m): height of the lowest point.
 */
#define OVS_SURVEY_LOWEST 6

/**
 * The field `lowest_x` (ft or m): its distance from the left.
 */
#define OVS_SURVEY_LOWEST_X 7

/**
 * The field `lowest_y` (ft or m): its distance from the front.
 */
#define OVS_SURVEY_LOWEST_Y 8

/**
 * The field `lowest_shot`: the shot it is at.
 */
#define OVS_SURVEY_LOWEST_SHOT 9

/**
 * The field `out_of_level` (in or mm): highest less lowest.
 */
#define OVS_SURVEY_OUT_OF_LEVEL 10

/**
 * The field `mean` (ft or m): mean height over the area.
 */
#define OVS_SURVEY_MEAN 11

/**
 * The field `rise_x` (in/ft or %): rise of the fitted plane along x.
 */
#define OVS_SURVEY_RISE_X 12

/**
 * The field `rise_y` (in/ft or %): rise of the fitted plane along y.
 */
#define OVS_SURVEY_RISE_Y 13

/**
 * The field `unevenness` (in or mm): root mean square of the shots about that plane.
 */
#define OVS_SURVEY_UNEVENNESS 14

/**
 * The field `beyond` (ft2 or m2): area beyond the shots.
 */
#define OVS_SURVEY_BEYOND 15

/**
 * The field `unsurveyed` (ft2 or m2): area in triangles that leave the outline.
 */
#define OVS_SURVEY_UNSURVEYED 16

/**
 * The field `ambiguity_less` (yd3 or m3): volume less by other triangulations.
 */
#define OVS_SURVEY_AMBIGUITY_LESS 17

/**
 * The field `ambiguity_more` (yd3 or m3): volume more by other triangulations.
 */
#define OVS_SURVEY_AMBIGUITY_MORE 18

/**
 * The field `shots`: the shots, their heights after all changes.
 */
#define OVS_SURVEY_SHOTS 19

/**
 * The column `name` of `shots`: its name.
 */
#define OVS_SURVEY_SHOTS_NAME 0

/**
 * The column `x` of `shots` (ft or m): distance from the left.
 */
#define OVS_SURVEY_SHOTS_X 1

/**
 * The column `y` of `shots` (ft or m): distance from the front.
 */
#define OVS_SURVEY_SHOTS_Y 2

/**
 * The column `elevation` of `shots` (ft or m): height above the job datum.
 */
#define OVS_SURVEY_SHOTS_ELEVATION 3

/**
 * The field `changes`: what was done to the slab since it was shot.
 */
#define OVS_SURVEY_CHANGES 20

/**
 * The column `work` of `changes`: what is done.
 */
#define OVS_SURVEY_CHANGES_WORK 0

/**
 * The column `area` of `changes` (ft2 or m2): area ground or filled.
 */
#define OVS_SURVEY_CHANGES_AREA 1

/**
 * The column `volume` of `changes` (ft3 or m3): volume taken off or filled.
 */
#define OVS_SURVEY_CHANGES_VOLUME 2

/**
 * The column `deepest` of `changes` (in or mm): deepest cut or fill; none where nothing is changed.
 */
#define OVS_SURVEY_CHANGES_DEEPEST 3

/**
 * The column `deepest_x` of `changes` (ft or m): where it is, from the left.
 */
#define OVS_SURVEY_CHANGES_DEEPEST_X 4

/**
 * The column `deepest_y` of `changes` (ft or m): where it is, from the front.
 */
#define OVS_SURVEY_CHANGES_DEEPEST_Y 5

/**
 * How many fields there are.
 */
#define OVS_SURVEY_FIELDS 21

/**
 * The word `grind`.
 */
#define OVS_SURVEY_CHANGES_WORK_GRIND 0

/**
 * The word `fill`.
 */
#define OVS_SURVEY_CHANGES_WORK_FILL 1

/**
 * The word `fill ponds`.
 */
#define OVS_SURVEY_CHANGES_WORK_FILL_PONDS 2

/**
 * The field `point_count`: how many points there are.
 */
#define OVS_POINTS_POINT_COUNT 0

/**
 * The field `least_x` (ft or m): least along the first plan axis.
 */
#define OVS_POINTS_LEAST_X 1

/**
 * The field `greatest_x` (ft or m): greatest along the first plan axis.
 */
#define OVS_POINTS_GREATEST_X 2

/**
 * The field `least_y` (ft or m): least along the second plan axis.
 */
#define OVS_POINTS_LEAST_Y 3

/**
 * The field `greatest_y` (ft or m): greatest along the second plan axis.
 */
#define OVS_POINTS_GREATEST_Y 4

/**
 * The field `lowest` (ft or m): height of the lowest.
 */
#define OVS_POINTS_LOWEST 5

/**
 * The field `highest` (ft or m): height of the highest.
 */
#define OVS_POINTS_HIGHEST 6

/**
 * The field `points`: the points.
 */
#define OVS_POINTS_POINTS 7

/**
 * The column `name` of `points`: its name.
 */
#define OVS_POINTS_POINTS_NAME 0

/**
 * The column `x` of `points` (ft or m): along the first plan axis.
 */
#define OVS_POINTS_POINTS_X 1

/**
 * The column `y` of `points` (ft or m): along the second, a quarter turn to the left of it.
 */
#define OVS_POINTS_POINTS_Y 2

/**
 * The column `elevation` of `points` (ft or m): height.
 */
#define OVS_POINTS_POINTS_ELEVATION 3

/**
 * How many fields there are.
 */
#define OVS_POINTS_FIELDS 8

/**
 * The field `name`: its name.
 */
#define OVS_TIN_NAME 0

/**
 * The field `point_count`: how many points there are.
 */
#define OVS_TIN_POINT_COUNT 1

/**
 * The field `face_count`: how many faces there are.
 */
#define OVS_TIN_FACE_COUNT 2

/**
 * The field `lowest` (ft or m): height of the lowest point.
 */
#define OVS_TIN_LOWEST 3

/**
 * The field `highest` (ft or m): height of the highest point.
 */
#define OVS_TIN_HIGHEST 4

/**
 * The field `points`: the points.
 */
#define OVS_TIN_POINTS 5

/**
 * The column `name` of `points`: its name.
 */
#define OVS_TIN_POINTS_NAME 0

/**
 * The column `x` of `points` (ft or m): along the first plan axis.
 */
#define OVS_TIN_POINTS_X 1

/**
 * The column `y` of `points` (ft or m): along the second, a quarter turn to the left of it.
 */
#define OVS_TIN_POINTS_Y 2

/**
 * The column `elevation` of `points` (ft or m): height.
 */
#define OVS_TIN_POINTS_ELEVATION 3

/**
 * The field `faces`: the faces.
 */
#define OVS_TIN_FACES 6

/**
 * The column `first` of `faces`: the number of one point.
 */
#define OVS_TIN_FACES_FIRST 0

/**
 * The column `second` of `faces`: the number of another.
 */
#define OVS_TIN_FACES_SECOND 1

/**
 * The column `third` of `faces`: the number of the third.
 */
#define OVS_TIN_FACES_THIRD 2

/**
 * How many fields there are.
 */
#define OVS_TIN_FIELDS 7

/**
 * The field `elevation` (ft or m): of one plane: its height at the origin of the axes.
 */
#define OVS_FINISH_ELEVATION 0

/**
 * The field `rise_x` (in/ft or %): of one plane: rise along x.
 */
#define OVS_FINISH_RISE_X 1

/**
 * The field `rise_y` (in/ft or %): of one plane: rise along y.
 */
#define OVS_FINISH_RISE_Y 2

/**
 * The field `fall` (in/ft or %): steepest fall, of facets the steepest of all.
 */
#define OVS_FINISH_FALL 3

/**
 * The field `facet_count`: how many facets it has; 0 for one plane.
 */
#define OVS_FINISH_FACET_COUNT 4

/**
 * How many fields there are.
 */
#define OVS_FINISH_FIELDS 5

/**
 * The field `name`: what the job is called.
 */
#define OVS_JOB_NAME 0

/**
 * How many fields there are.
 */
#define OVS_JOB_FIELDS 1

/**
 * The result `misclosure` (in or mm): found less known where the line closes.
 */
#define OVS_LEVEL_BOOK_MISCLOSURE 0

/**
 * The result `backsights` (ft or m): sum of the backsights of the first line.
 */
#define OVS_LEVEL_BOOK_BACKSIGHTS 1

/**
 * The result `foresights` (ft or m): sum of its foresights.
 */
#define OVS_LEVEL_BOOK_FORESIGHTS 2

/**
 * The result `rise` (ft or m): last less first of that line.
 */
#define OVS_LEVEL_BOOK_RISE 3

/**
 * The result `setups`: the set-ups.
 */
#define OVS_LEVEL_BOOK_SETUPS 4

/**
 * The column `backsight_point` of `setups`: the point of its backsight.
 */
#define OVS_LEVEL_BOOK_SETUPS_BACKSIGHT_POINT 0

/**
 * The column `booked` of `setups` (ft or m): height of instrument before the adjustment.
 */
#define OVS_LEVEL_BOOK_SETUPS_BOOKED 1

/**
 * The column `height_of_instrument` of `setups` (ft or m): height of instrument.
 */
#define OVS_LEVEL_BOOK_SETUPS_HEIGHT_OF_INSTRUMENT 2

/**
 * The result `points`: the points.
 */
#define OVS_LEVEL_BOOK_POINTS 5

/**
 * The column `point` of `points`: name of the point.
 */
#define OVS_LEVEL_BOOK_POINTS_POINT 0

/**
 * The column `setup` of `points`: the set-up it was read from.
 */
#define OVS_LEVEL_BOOK_POINTS_SETUP 1

/**
 * The column `rod` of `points` (ft or m): its reading.
 */
#define OVS_LEVEL_BOOK_POINTS_ROD 2

/**
 * The column `booked` of `points` (ft or m): elevation before the adjustment.
 */
#define OVS_LEVEL_BOOK_POINTS_BOOKED 3

/**
 * The column `correction` of `points` (in or mm): what the adjustment adds.
 */
#define OVS_LEVEL_BOOK_POINTS_CORRECTION 4

/**
 * The column `elevation` of `points` (ft or m): elevation.
 */
#define OVS_LEVEL_BOOK_POINTS_ELEVATION 5

/**
 * How many results there are.
 */
#define OVS_LEVEL_BOOK_RESULTS 6

/**
 * The word `left`.
 */
#define OVS_OUTLINE_FROM_SIDES_SIDES_TURN_LEFT 0

/**
 * The word `right`.
 */
#define OVS_OUTLINE_FROM_SIDES_SIDES_TURN_RIGHT 1

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_SHOTS_SHOTS_OUTSIDE_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_SHOTS_SHOTS_OUTSIDE_YES 1

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_SHOTS_SHOTS_STEP_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_SHOTS_SHOTS_STEP_YES 1

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_SHOTS_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_SHOTS_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_SHOTS_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_SHOTS_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_SHOTS_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_SHOTS_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_SHOTS_BEYOND_ALLOWED_YES 1

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_FACES_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_FACES_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_FACES_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_FACES_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_FACES_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_FACES_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_FACES_BEYOND_ALLOWED_YES 1

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_GRID_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_GRID_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_GRID_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_GRID_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_GRID_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_GRID_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_GRID_BEYOND_ALLOWED_YES 1

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_GRID_STEPS_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_GRID_STEPS_YES 1

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_RODS_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_RODS_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_RODS_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_RODS_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_RODS_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_RODS_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_RODS_BEYOND_ALLOWED_YES 1

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_RODS_STEPS_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_RODS_STEPS_YES 1

/**
 * The result `triangles`: the triangles.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES 0

/**
 * The column `x_1` of `triangles` (ft or m): first corner, from the left.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_X_1 0

/**
 * The column `y_1` of `triangles` (ft or m): first corner, from the front.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_Y_1 1

/**
 * The column `elevation_1` of `triangles` (ft or m): height of the old slab there.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_1 2

/**
 * The column `x_2` of `triangles` (ft or m): second corner, from the left.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_X_2 3

/**
 * The column `y_2` of `triangles` (ft or m): second corner, from the front.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_Y_2 4

/**
 * The column `elevation_2` of `triangles` (ft or m): height of the old slab there.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_2 5

/**
 * The column `x_3` of `triangles` (ft or m): third corner, from the left.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_X_3 6

/**
 * The column `y_3` of `triangles` (ft or m): third corner, from the front.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_Y_3 7

/**
 * The column `elevation_3` of `triangles` (ft or m): height of the old slab there.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_ELEVATION_3 8

/**
 * The column `ground` of `triangles`: what is known of the ground under it.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND 9

/**
 * How many results there are.
 */
#define OVS_SURVEY_TRIANGLES_RESULTS 1

/**
 * The word `surveyed`.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_SURVEY_TRIANGLES_TRIANGLES_GROUND_BEYOND 2

/**
 * The result `suspects`: the suspects, the farthest off first.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS 0

/**
 * The column `shot` of `suspects`: its name.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SHOT 0

/**
 * The column `x` of `suspects` (ft or m): distance from the left.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_X 1

/**
 * The column `y` of `suspects` (ft or m): distance from the front.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_Y 2

/**
 * The column `elevation` of `suspects` (ft or m): its height as booked.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_ELEVATION 3

/**
 * The column `rod` of `suspects` (ft or m): its reading, where the survey stands on rods.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_ROD 4

/**
 * The column `predicted` of `suspects` (ft or m): what its neighbours say.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_PREDICTED 5

/**
 * The column `off` of `suspects` (in or mm): booked less predicted: above zero where it stands high.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_OFF 6

/**
 * The column `deviation` of `suspects` (in or mm): standard deviation of that on this floor.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_DEVIATION 7

/**
 * The column `verdict` of `suspects`: what to think of it.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT 8

/**
 * The column `kind` of `suspects`: what may have happened.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND 9

/**
 * The column `second` of `suspects`: what else, nearly as likely; the amount where a row is off.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND 10

/**
 * The column `with` of `suspects`: the shot it was swapped with, or its rows.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_WITH 11

/**
 * The column `proposed` of `suspects` (ft or m): the height it would have.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_PROPOSED 12

/**
 * The column `proposed_rod` of `suspects` (ft or m): the reading it would have.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_PROPOSED_ROD 13

/**
 * The column `more_if_corrected` of `suspects` (yd3 or m3): what the net concrete under a given finish changes by
 * with the height proposed.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_MORE_IF_CORRECTED 14

/**
 * The column `more_without` of `suspects` (yd3 or m3): what it changes by where the shot is left out.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_MORE_WITHOUT 15

/**
 * The column `said` of `suspects`: the same in a sentence.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SAID 16

/**
 * The result `judged`: how many shots were judged.
 */
#define OVS_SURVEY_SUSPECTS_JUDGED 1

/**
 * The result `roughness` (in or mm): standard deviation that each shot has for itself: reading, texture and small
 * waves.
 */
#define OVS_SURVEY_SUSPECTS_ROUGHNESS 2

/**
 * The result `graduation`: how the rod is graduated.
 */
#define OVS_SURVEY_SUSPECTS_GRADUATION 3

/**
 * How many results there are.
 */
#define OVS_SURVEY_SUSPECTS_RESULTS 4

/**
 * The word `inches`.
 */
#define OVS_SURVEY_SUSPECTS_ROD_INCHES 0

/**
 * The word `tenths`.
 */
#define OVS_SURVEY_SUSPECTS_ROD_TENTHS 1

/**
 * The word `metric`.
 */
#define OVS_SURVEY_SUSPECTS_ROD_METRIC 2

/**
 * The word `unknown`.
 */
#define OVS_SURVEY_SUSPECTS_ROD_UNKNOWN 3

/**
 * The word `look_again`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_LOOK_AGAIN 0

/**
 * The word `likely_slip`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_LIKELY_SLIP 1

/**
 * The word `unexplained`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_VERDICT_UNEXPLAINED 2

/**
 * The word `inch`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_INCH 0

/**
 * The word `tenth_of_a_foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TENTH_OF_A_FOOT 1

/**
 * The word `five_centimetres`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_FIVE_CENTIMETRES 2

/**
 * The word `ten_centimetres`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TEN_CENTIMETRES 3

/**
 * The word `half_a_foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_HALF_A_FOOT 4

/**
 * The word `ten_inches`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_TEN_INCHES 5

/**
 * The word `foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_FOOT 6

/**
 * The word `metre`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_METRE 7

/**
 * The word `sign`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_SIGN 8

/**
 * The word `swapped`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_SWAPPED 9

/**
 * The word `row_off`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROW_OFF 10

/**
 * The word `row_reversed`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROW_REVERSED 11

/**
 * The word `rows_swapped`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_ROWS_SWAPPED 12

/**
 * The word `unusual`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_KIND_UNUSUAL 13

/**
 * The word `inch`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_INCH 0

/**
 * The word `tenth_of_a_foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TENTH_OF_A_FOOT 1

/**
 * The word `five_centimetres`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_FIVE_CENTIMETRES 2

/**
 * The word `ten_centimetres`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TEN_CENTIMETRES 3

/**
 * The word `half_a_foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_HALF_A_FOOT 4

/**
 * The word `ten_inches`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_TEN_INCHES 5

/**
 * The word `foot`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_FOOT 6

/**
 * The word `metre`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_METRE 7

/**
 * The word `sign`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_SIGN 8

/**
 * The word `swapped`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_SWAPPED 9

/**
 * The word `row_off`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROW_OFF 10

/**
 * The word `row_reversed`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROW_REVERSED 11

/**
 * The word `rows_swapped`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_ROWS_SWAPPED 12

/**
 * The word `unusual`.
 */
#define OVS_SURVEY_SUSPECTS_SUSPECTS_SECOND_UNUSUAL 13

/**
 * The word `inches`.
 */
#define OVS_SURVEY_SUSPECTS_GRADUATION_INCHES 0

/**
 * The word `tenths`.
 */
#define OVS_SURVEY_SUSPECTS_GRADUATION_TENTHS 1

/**
 * The word `metric`.
 */
#define OVS_SURVEY_SUSPECTS_GRADUATION_METRIC 2

/**
 * The word `unknown`.
 */
#define OVS_SURVEY_SUSPECTS_GRADUATION_UNKNOWN 3

/**
 * The result `area` (ft2 or m2): area of the work.
 */
#define OVS_SURVEY_COVERAGE_AREA 0

/**
 * The result `uncovered` (ft2 or m2): area farther than that from every shot.
 */
#define OVS_SURVEY_COVERAGE_UNCOVERED 1

/**
 * The result `share` (%): its share of the work.
 */
#define OVS_SURVEY_COVERAGE_SHARE 2

/**
 * The result `beyond` (ft2 or m2): area beyond the last shots.
 */
#define OVS_SURVEY_COVERAGE_BEYOND 3

/**
 * The result `unsurveyed` (ft2 or m2): area in triangles that leave the outline.
 */
#define OVS_SURVEY_COVERAGE_UNSURVEYED 4

/**
 * The result `farthest` (ft or m): the farthest any place is from a shot.
 */
#define OVS_SURVEY_COVERAGE_FARTHEST 5

/**
 * The result `farthest_x` (ft or m): where it is, from the left.
 */
#define OVS_SURVEY_COVERAGE_FARTHEST_X 6

/**
 * The result `farthest_y` (ft or m): where it is, from the front.
 */
#define OVS_SURVEY_COVERAGE_FARTHEST_Y 7

/**
 * The result `next`: where the next shots belong, until every place is near enough.
 */
#define OVS_SURVEY_COVERAGE_NEXT 8

/**
 * The column `x` of `next` (ft or m): distance from the left.
 */
#define OVS_SURVEY_COVERAGE_NEXT_X 0

/**
 * The column `y` of `next` (ft or m): distance from the front.
 */
#define OVS_SURVEY_COVERAGE_NEXT_Y 1

/**
 * The column `nearest` of `next` (ft or m): how far the nearest shot is.
 */
#define OVS_SURVEY_COVERAGE_NEXT_NEAREST 2

/**
 * The column `uncovered_after` of `next` (ft2 or m2): area still not covered once it is shot.
 */
#define OVS_SURVEY_COVERAGE_NEXT_UNCOVERED_AFTER 3

/**
 * The column `farthest_after` of `next` (ft or m): the farthest any place is from a shot then.
 */
#define OVS_SURVEY_COVERAGE_NEXT_FARTHEST_AFTER 4

/**
 * How many results there are.
 */
#define OVS_SURVEY_COVERAGE_RESULTS 9

/**
 * The result `rise` (ft or m): how much higher peg B stands than peg A.
 */
#define OVS_TWO_PEG_TEST_RISE 0

/**
 * The result `tilt` (in/ft or mm/m): rise of the line of sight over the distance.
 */
#define OVS_TWO_PEG_TEST_TILT 1

/**
 * The result `right_a` (ft or m): what the second set-up should read on peg A.
 */
#define OVS_TWO_PEG_TEST_RIGHT_A 2

/**
 * The result `right_b` (ft or m): what it should read on peg B.
 */
#define OVS_TWO_PEG_TEST_RIGHT_B 3

/**
 * The result `off` (in or mm): how much too high it reads on the farther peg.
 */
#define OVS_TWO_PEG_TEST_OFF 4

/**
 * The result `passes`: whether the tilt is within what is allowed.
 */
#define OVS_TWO_PEG_TEST_PASSES 5

/**
 * The result `good_for` (ft or m): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
 */
#define OVS_TWO_PEG_TEST_GOOD_FOR 6

/**
 * How many results there are.
 */
#define OVS_TWO_PEG_TEST_RESULTS 7

/**
 * The word `no`.
 */
#define OVS_TWO_PEG_TEST_PASSES_NO 0

/**
 * The word `yes`.
 */
#define OVS_TWO_PEG_TEST_PASSES_YES 1

/**
 * The result `difference` (in or mm): again less first.
 */
#define OVS_BENCHMARK_RECHECK_DIFFERENCE 0

/**
 * The result `follows`: what follows.
 */
#define OVS_BENCHMARK_RECHECK_FOLLOWS 1

/**
 * The result `shared_out`: the readings with their shares; none where it is off by too much.
 */
#define OVS_BENCHMARK_RECHECK_SHARED_OUT 2

/**
 * The column `correction` of `shared_out` (in or mm): what its elevation gains.
 */
#define OVS_BENCHMARK_RECHECK_SHARED_OUT_CORRECTION 0

/**
 * The column `rod` of `shared_out` (ft or m): the reading as from the first line of sight.
 */
#define OVS_BENCHMARK_RECHECK_SHARED_OUT_ROD 1

/**
 * The result `said`: the same in a sentence.
 */
#define OVS_BENCHMARK_RECHECK_SAID 3

/**
 * How many results there are.
 */
#define OVS_BENCHMARK_RECHECK_RESULTS 4

/**
 * The word `agrees`.
 */
#define OVS_BENCHMARK_RECHECK_FOLLOWS_AGREES 0

/**
 * The word `shared_out`.
 */
#define OVS_BENCHMARK_RECHECK_FOLLOWS_SHARED_OUT 1

/**
 * The word `shoot_again`.
 */
#define OVS_BENCHMARK_RECHECK_FOLLOWS_SHOOT_AGAIN 2

/**
 * The result `points`: the points.
 */
#define OVS_READ_POINTS_POINTS 0

/**
 * The result `format`: what the file is.
 */
#define OVS_READ_POINTS_FORMAT 1

/**
 * The result `unit`: the unit of its numbers, where all have one.
 */
#define OVS_READ_POINTS_UNIT 2

/**
 * The result `left_out`: points of the file that were not used.
 */
#define OVS_READ_POINTS_LEFT_OUT 3

/**
 * The column `reason` of `left_out`: why.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON 0

/**
 * The column `count` of `left_out`: how many.
 */
#define OVS_READ_POINTS_LEFT_OUT_COUNT 1

/**
 * How many results there are.
 */
#define OVS_READ_POINTS_RESULTS 4

/**
 * The word `csv`.
 */
#define OVS_READ_POINTS_FORMAT_CSV 0

/**
 * The word `xyz`.
 */
#define OVS_READ_POINTS_FORMAT_XYZ 1

/**
 * The word `ply`.
 */
#define OVS_READ_POINTS_FORMAT_PLY 2

/**
 * The word `las`.
 */
#define OVS_READ_POINTS_FORMAT_LAS 3

/**
 * The word `e57`.
 */
#define OVS_READ_POINTS_FORMAT_E57 4

/**
 * The word `landxml`.
 */
#define OVS_READ_POINTS_FORMAT_LANDXML 5

/**
 * The word `m`.
 */
#define OVS_READ_POINTS_UNIT_M 0

/**
 * The word `cm`.
 */
#define OVS_READ_POINTS_UNIT_CM 1

/**
 * The word `mm`.
 */
#define OVS_READ_POINTS_UNIT_MM 2

/**
 * The word `ft`.
 */
#define OVS_READ_POINTS_UNIT_FT 3

/**
 * The word `us_survey_ft`.
 */
#define OVS_READ_POINTS_UNIT_US_SURVEY_FT 4

/**
 * The word `in`.
 */
#define OVS_READ_POINTS_UNIT_IN 5

/**
 * The word `yd`.
 */
#define OVS_READ_POINTS_UNIT_YD 6

/**
 * The word `no`.
 */
#define OVS_READ_POINTS_OVERRULE_NO 0

/**
 * The word `yes`.
 */
#define OVS_READ_POINTS_OVERRULE_YES 1

/**
 * The word `no`.
 */
#define OVS_READ_POINTS_GROUND_ONLY_NO 0

/**
 * The word `yes`.
 */
#define OVS_READ_POINTS_GROUND_ONLY_YES 1

/**
 * The word `not_finite`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_NOT_FINITE 0

/**
 * The word `too_far`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_TOO_FAR 1

/**
 * The word `not_shot`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_NOT_SHOT 2

/**
 * The word `no_height`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_NO_HEIGHT 3

/**
 * The word `invalid`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_INVALID 4

/**
 * The word `withheld`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_WITHHELD 5

/**
 * The word `noise`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_NOISE 6

/**
 * The word `not_ground`.
 */
#define OVS_READ_POINTS_LEFT_OUT_REASON_NOT_GROUND 7

/**
 * The result `tin`: the surface.
 */
#define OVS_READ_SURFACE_TIN 0

/**
 * The result `format`: what the file is.
 */
#define OVS_READ_SURFACE_FORMAT 1

/**
 * The result `unit`: the unit of its numbers, where all have one.
 */
#define OVS_READ_SURFACE_UNIT 2

/**
 * The result `left_out`: points of the file that were not used.
 */
#define OVS_READ_SURFACE_LEFT_OUT 3

/**
 * The column `reason` of `left_out`: why.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON 0

/**
 * The column `count` of `left_out`: how many.
 */
#define OVS_READ_SURFACE_LEFT_OUT_COUNT 1

/**
 * How many results there are.
 */
#define OVS_READ_SURFACE_RESULTS 4

/**
 * The word `csv`.
 */
#define OVS_READ_SURFACE_FORMAT_CSV 0

/**
 * The word `xyz`.
 */
#define OVS_READ_SURFACE_FORMAT_XYZ 1

/**
 * The word `ply`.
 */
#define OVS_READ_SURFACE_FORMAT_PLY 2

/**
 * The word `las`.
 */
#define OVS_READ_SURFACE_FORMAT_LAS 3

/**
 * The word `e57`.
 */
#define OVS_READ_SURFACE_FORMAT_E57 4

/**
 * The word `landxml`.
 */
#define OVS_READ_SURFACE_FORMAT_LANDXML 5

/**
 * The word `m`.
 */
#define OVS_READ_SURFACE_UNIT_M 0

/**
 * The word `cm`.
 */
#define OVS_READ_SURFACE_UNIT_CM 1

/**
 * The word `mm`.
 */
#define OVS_READ_SURFACE_UNIT_MM 2

/**
 * The word `ft`.
 */
#define OVS_READ_SURFACE_UNIT_FT 3

/**
 * The word `us_survey_ft`.
 */
#define OVS_READ_SURFACE_UNIT_US_SURVEY_FT 4

/**
 * The word `in`.
 */
#define OVS_READ_SURFACE_UNIT_IN 5

/**
 * The word `yd`.
 */
#define OVS_READ_SURFACE_UNIT_YD 6

/**
 * The word `no`.
 */
#define OVS_READ_SURFACE_OVERRULE_NO 0

/**
 * The word `yes`.
 */
#define OVS_READ_SURFACE_OVERRULE_YES 1

/**
 * The word `not_finite`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_FINITE 0

/**
 * The word `too_far`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_TOO_FAR 1

/**
 * The word `not_shot`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_SHOT 2

/**
 * The word `no_height`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_NO_HEIGHT 3

/**
 * The word `invalid`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_INVALID 4

/**
 * The word `withheld`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_WITHHELD 5

/**
 * The word `noise`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_NOISE 6

/**
 * The word `not_ground`.
 */
#define OVS_READ_SURFACE_LEFT_OUT_REASON_NOT_GROUND 7

/**
 * The result `moved`: the points in the axes of the job.
 */
#define OVS_POINTS_TO_AXES_MOVED 0

/**
 * The result `turn` (deg or rad): how far they were turned, counter-clockwise.
 */
#define OVS_POINTS_TO_AXES_TURN 1

/**
 * The result `rise` (ft or m): what was added to heights, where the old origin came to lie.
 */
#define OVS_POINTS_TO_AXES_RISE 2

/**
 * The result `tilt_x` (in/ft or %): how much more along the first axis of the job.
 */
#define OVS_POINTS_TO_AXES_TILT_X 3

/**
 * The result `tilt_y` (in/ft or %): how much more along the second.
 */
#define OVS_POINTS_TO_AXES_TILT_Y 4

/**
 * The result `residuals`: what is left over at the known points.
 */
#define OVS_POINTS_TO_AXES_RESIDUALS 5

/**
 * The column `name` of `residuals`: its name.
 */
#define OVS_POINTS_TO_AXES_RESIDUALS_NAME 0

/**
 * The column `x` of `residuals` (in or mm): along the first axis of the job.
 */
#define OVS_POINTS_TO_AXES_RESIDUALS_X 1

/**
 * The column `y` of `residuals` (in or mm): along the second.
 */
#define OVS_POINTS_TO_AXES_RESIDUALS_Y 2

/**
 * The column `height` of `residuals` (in or mm): in height.
 */
#define OVS_POINTS_TO_AXES_RESIDUALS_HEIGHT 3

/**
 * How many results there are.
 */
#define OVS_POINTS_TO_AXES_RESULTS 6

/**
 * The word `rise`.
 */
#define OVS_POINTS_TO_AXES_LEVELLING_RISE 0

/**
 * The word `tilt`.
 */
#define OVS_POINTS_TO_AXES_LEVELLING_TILT 1

/**
 * The result `moved`: the points in the new axes.
 */
#define OVS_POINTS_ALONG_WALL_MOVED 0

/**
 * The result `turn` (deg or rad): how far they were turned, counter-clockwise.
 */
#define OVS_POINTS_ALONG_WALL_TURN 1

/**
 * How many results there are.
 */
#define OVS_POINTS_ALONG_WALL_RESULTS 2

/**
 * The result `floor`: the points kept.
 */
#define OVS_PART_STRAYS_FLOOR 0

/**
 * The result `kept_count`: how many were kept.
 */
#define OVS_PART_STRAYS_KEPT_COUNT 1

/**
 * The result `above_count`: how many stand above the floor.
 */
#define OVS_PART_STRAYS_ABOVE_COUNT 2

/**
 * The result `below_count`: how many lie below it.
 */
#define OVS_PART_STRAYS_BELOW_COUNT 3

/**
 * The result `alone_count`: how many have too few others near them.
 */
#define OVS_PART_STRAYS_ALONE_COUNT 4

/**
 * The result `strays`: which points were taken out, and why.
 */
#define OVS_PART_STRAYS_STRAYS 5

/**
 * The column `point` of `strays`: its number in the list of all, from 1.
 */
#define OVS_PART_STRAYS_STRAYS_POINT 0

/**
 * The column `kind` of `strays`: why it is no floor.
 */
#define OVS_PART_STRAYS_STRAYS_KIND 1

/**
 * How many results there are.
 */
#define OVS_PART_STRAYS_RESULTS 6

/**
 * The word `above`.
 */
#define OVS_PART_STRAYS_STRAYS_KIND_ABOVE 0

/**
 * The word `below`.
 */
#define OVS_PART_STRAYS_STRAYS_KIND_BELOW 1

/**
 * The word `alone`.
 */
#define OVS_PART_STRAYS_STRAYS_KIND_ALONE 2

/**
 * The result `thinned`: the points kept.
 */
#define OVS_THIN_POINTS_THINNED 0

/**
 * The result `kept_count`: how many were kept.
 */
#define OVS_THIN_POINTS_KEPT_COUNT 1

/**
 * The result `error` (in or mm): greatest height between the surface through them and a point left out.
 */
#define OVS_THIN_POINTS_ERROR 2

/**
 * The result `worst`: the number of the point it is at.
 */
#define OVS_THIN_POINTS_WORST 3

/**
 * The result `hull_count`: how many of those kept are corners of the convex hull.
 */
#define OVS_THIN_POINTS_HULL_COUNT 4

/**
 * The result `outside_count`: how many lie outside the outline.
 */
#define OVS_THIN_POINTS_OUTSIDE_COUNT 5

/**
 * The result `kept`: which points were kept.
 */
#define OVS_THIN_POINTS_KEPT 6

/**
 * The column `point` of `kept`: its number in the list of all, from 1.
 */
#define OVS_THIN_POINTS_KEPT_POINT 0

/**
 * How many results there are.
 */
#define OVS_THIN_POINTS_RESULTS 7

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_POINTS_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_POINTS_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_POINTS_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_POINTS_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_POINTS_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_POINTS_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_POINTS_BEYOND_ALLOWED_YES 1

/**
 * The word `refuse`.
 */
#define OVS_SURVEY_FROM_POINTS_OUTSIDE_REFUSE 0

/**
 * The word `use`.
 */
#define OVS_SURVEY_FROM_POINTS_OUTSIDE_USE 1

/**
 * The word `leave_out`.
 */
#define OVS_SURVEY_FROM_POINTS_OUTSIDE_LEAVE_OUT 2

/**
 * The word `laser`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_LASER 0

/**
 * The word `optical_hundredths`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_OPTICAL_HUNDREDTHS 1

/**
 * The word `optical_eighths`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_OPTICAL_EIGHTHS 2

/**
 * The word `optical_sixteenths`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_OPTICAL_SIXTEENTHS 3

/**
 * The word `optical_millimetres`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_OPTICAL_MILLIMETRES 4

/**
 * The word `string`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_STRING 5

/**
 * The word `water`.
 */
#define OVS_SURVEY_FROM_TIN_INSTRUMENT_WATER 6

/**
 * The word `trowelled`.
 */
#define OVS_SURVEY_FROM_TIN_TEXTURE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_SURVEY_FROM_TIN_TEXTURE_BROOMED 1

/**
 * The word `scaled`.
 */
#define OVS_SURVEY_FROM_TIN_TEXTURE_SCALED 2

/**
 * The word `rough`.
 */
#define OVS_SURVEY_FROM_TIN_TEXTURE_ROUGH 3

/**
 * The word `no`.
 */
#define OVS_SURVEY_FROM_TIN_BEYOND_ALLOWED_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURVEY_FROM_TIN_BEYOND_ALLOWED_YES 1

/**
 * The result `count`: how many ponds.
 */
#define OVS_STANDING_WATER_COUNT 0

/**
 * The result `area` (ft2 or m2): area under water.
 */
#define OVS_STANDING_WATER_AREA 1

/**
 * The result `volume` (ft3 or m3): water in all ponds.
 */
#define OVS_STANDING_WATER_VOLUME 2

/**
 * The result `depth` (in or mm): greatest depth; none without a pond.
 */
#define OVS_STANDING_WATER_DEPTH 3

/**
 * The result `left_out`: how many ponds were shallower.
 */
#define OVS_STANDING_WATER_LEFT_OUT 4

/**
 * The result `left_out_volume` (ft3 or m3): water in those.
 */
#define OVS_STANDING_WATER_LEFT_OUT_VOLUME 5

/**
 * The result `ponds`: the ponds.
 */
#define OVS_STANDING_WATER_PONDS 6

/**
 * The column `level` of `ponds` (ft or m): level of the water.
 */
#define OVS_STANDING_WATER_PONDS_LEVEL 0

/**
 * The column `area` of `ponds` (ft2 or m2): area under water.
 */
#define OVS_STANDING_WATER_PONDS_AREA 1

/**
 * The column `volume` of `ponds` (ft3 or m3): water in it.
 */
#define OVS_STANDING_WATER_PONDS_VOLUME 2

/**
 * The column `depth` of `ponds` (in or mm): greatest depth.
 */
#define OVS_STANDING_WATER_PONDS_DEPTH 3

/**
 * The column `deepest_x` of `ponds` (ft or m): where it is deepest, from the left.
 */
#define OVS_STANDING_WATER_PONDS_DEEPEST_X 4

/**
 * The column `deepest_y` of `ponds` (ft or m): where it is deepest, from the front.
 */
#define OVS_STANDING_WATER_PONDS_DEEPEST_Y 5

/**
 * The column `spill_x` of `ponds` (ft or m): where the water spills, from the left.
 */
#define OVS_STANDING_WATER_PONDS_SPILL_X 6

/**
 * The column `spill_y` of `ponds` (ft or m): where the water spills, from the front.
 */
#define OVS_STANDING_WATER_PONDS_SPILL_Y 7

/**
 * The column `outlet` of `ponds`: edge or drain that takes the water there; none where it runs on over a saddle.
 */
#define OVS_STANDING_WATER_PONDS_OUTLET 8

/**
 * How many results there are.
 */
#define OVS_STANDING_WATER_RESULTS 7

/**
 * The word `open`.
 */
#define OVS_STANDING_WATER_EDGES_STATE_OPEN 0

/**
 * The word `walled`.
 */
#define OVS_STANDING_WATER_EDGES_STATE_WALLED 1

/**
 * The word `drained`.
 */
#define OVS_STANDING_WATER_EDGES_STATE_DRAINED 2

/**
 * The word `longest`.
 */
#define OVS_FINISH_TO_DRAIN_ALONG_LONGEST 0

/**
 * The word `shortest`.
 */
#define OVS_FINISH_TO_DRAIN_ALONG_SHORTEST 1

/**
 * The word `edge`.
 */
#define OVS_FINISH_WITH_STRIP_TOWARD_EDGE 0

/**
 * The word `floor`.
 */
#define OVS_FINISH_WITH_STRIP_TOWARD_FLOOR 1

/**
 * The result `finish`: the finish.
 */
#define OVS_FINISH_RAISED_FINISH 0

/**
 * The result `raised_by` (in or mm): how far it was lifted; below zero where it was lowered.
 */
#define OVS_FINISH_RAISED_RAISED_BY 1

/**
 * The result `at_x` (ft or m): the place that fixes it, from the left.
 */
#define OVS_FINISH_RAISED_AT_X 2

/**
 * The result `at_y` (ft or m): the place that fixes it, from the front.
 */
#define OVS_FINISH_RAISED_AT_Y 3

/**
 * The result `at_shot`: the shot there.
 */
#define OVS_FINISH_RAISED_AT_SHOT 4

/**
 * The result `at_facet`: the facet there.
 */
#define OVS_FINISH_RAISED_AT_FACET 5

/**
 * The result `rounded_by` (in or mm): how much of the lift is rounding.
 */
#define OVS_FINISH_RAISED_ROUNDED_BY 6

/**
 * How many results there are.
 */
#define OVS_FINISH_RAISED_RESULTS 7

/**
 * The result `facets`: the facets.
 */
#define OVS_FINISH_FACETS_FACETS 0

/**
 * The column `name` of `facets`: its name, or its number from 1 on.
 */
#define OVS_FINISH_FACETS_FACETS_NAME 0

/**
 * The column `fall` of `facets` (in/ft or %): its steepest fall.
 */
#define OVS_FINISH_FACETS_FACETS_FALL 1

/**
 * The column `rise_x` of `facets` (in/ft or %): rise along x.
 */
#define OVS_FINISH_FACETS_FACETS_RISE_X 2

/**
 * The column `rise_y` of `facets` (in/ft or %): rise along y.
 */
#define OVS_FINISH_FACETS_FACETS_RISE_Y 3

/**
 * The column `downhill` of `facets`: which way water runs on it: right is along x, back is along y.
 */
#define OVS_FINISH_FACETS_FACETS_DOWNHILL 4

/**
 * The column `falls_to` of `facets`: what it is said to fall to.
 */
#define OVS_FINISH_FACETS_FACETS_FALLS_TO 5

/**
 * The column `drains_over` of `facets`: the facets it drains over to, commas between; edge where none lies beyond.
 */
#define OVS_FINISH_FACETS_FACETS_DRAINS_OVER 6

/**
 * The column `area` of `facets` (ft2 or m2): its area in plan, of the work where that is given.
 */
#define OVS_FINISH_FACETS_FACETS_AREA 7

/**
 * The result `corners`: their corners.
 */
#define OVS_FINISH_FACETS_CORNERS 1

/**
 * The column `facet` of `corners`: the facet it is of.
 */
#define OVS_FINISH_FACETS_CORNERS_FACET 0

/**
 * The column `x` of `corners` (ft or m): distance from the left.
 */
#define OVS_FINISH_FACETS_CORNERS_X 1

/**
 * The column `y` of `corners` (ft or m): distance from the front.
 */
#define OVS_FINISH_FACETS_CORNERS_Y 2

/**
 * The column `elevation` of `corners` (ft or m): height of the finish there.
 */
#define OVS_FINISH_FACETS_CORNERS_ELEVATION 3

/**
 * How many results there are.
 */
#define OVS_FINISH_FACETS_RESULTS 2

/**
 * The result `finish`: the finish to be built, in whole steps.
 */
#define OVS_FINISH_SOLVED_FINISH 0

/**
 * The result `concrete` (yd3 or m3): its concrete.
 */
#define OVS_FINISH_SOLVED_CONCRETE 1

/**
 * The result `ground` (yd3 or m3): what is ground off under it.
 */
#define OVS_FINISH_SOLVED_GROUND 2

/**
 * The result `cost` (money): concrete and grinding at their prices.
 */
#define OVS_FINISH_SOLVED_COST 3

/**
 * The result `planned`: the finish before rounding.
 */
#define OVS_FINISH_SOLVED_PLANNED 4

/**
 * The result `planned_concrete` (yd3 or m3): its concrete.
 */
#define OVS_FINISH_SOLVED_PLANNED_CONCRETE 5

/**
 * The result `planned_cost` (money): its cost.
 */
#define OVS_FINISH_SOLVED_PLANNED_COST 6

/**
 * The result `bare`: the finish by the demands alone: no margin, nothing added or rounded.
 */
#define OVS_FINISH_SOLVED_BARE 7

/**
 * The result `bare_concrete` (yd3 or m3): its concrete.
 */
#define OVS_FINISH_SOLVED_BARE_CONCRETE 8

/**
 * The result `bare_cost` (money): its cost.
 */
#define OVS_FINISH_SOLVED_BARE_COST 9

/**
 * The result `bound` (yd3 or m3): no finish planned so costs less than this, in volume of concrete.
 */
#define OVS_FINISH_SOLVED_BOUND 10

/**
 * The result `gap` (1): how far the planned cost may be above the least, as a share.
 */
#define OVS_FINISH_SOLVED_GAP 11

/**
 * The result `least_slack` (in or mm): how far the demand that is kept most narrowly is from being broken; less
 * than none by rounding only.
 */
#define OVS_FINISH_SOLVED_LEAST_SLACK 12

/**
 * The result `rows`: how many rows were looked at for that.
 */
#define OVS_FINISH_SOLVED_ROWS 13

/**
 * The result `round` (in or mm): the step of heights that could be kept; none where nothing is rounded.
 */
#define OVS_FINISH_SOLVED_ROUND 14

/**
 * The result `round_fall` (in/ft or %): the step of falls that could be kept.
 */
#define OVS_FINISH_SOLVED_ROUND_FALL 15

/**
 * The result `kept`: how each demand stands, and what it costs.
 */
#define OVS_FINISH_SOLVED_KEPT 16

/**
 * The column `name` of `kept`: its name.
 */
#define OVS_FINISH_SOLVED_KEPT_NAME 0

/**
 * The column `counted_in` of `kept`: what it is counted in, and its prices by: 1/4 in, or 0.1 % of fall.
 */
#define OVS_FINISH_SOLVED_KEPT_COUNTED_IN 1

/**
 * The column `added` of `kept`: whether it was added to set the floor out.
 */
#define OVS_FINISH_SOLVED_KEPT_ADDED 2

/**
 * The column `binds` of `kept`: whether it stands at its limit in the planned finish.
 */
#define OVS_FINISH_SOLVED_KEPT_BINDS 3

/**
 * The column `slack` of `kept` (in or mm): how far the planned finish is from its limit.
 */
#define OVS_FINISH_SOLVED_KEPT_SLACK 4

/**
 * The column `slack_fall` of `kept` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_SOLVED_KEPT_SLACK_FALL 5

/**
 * The column `slack_built` of `kept` (in or mm): how far the built finish is from it.
 */
#define OVS_FINISH_SOLVED_KEPT_SLACK_BUILT 6

/**
 * The column `slack_built_fall` of `kept` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_SOLVED_KEPT_SLACK_BUILT_FALL 7

/**
 * The column `x` of `kept` (ft or m): where it binds, from the left.
 */
#define OVS_FINISH_SOLVED_KEPT_X 8

/**
 * The column `y` of `kept` (ft or m): from the front.
 */
#define OVS_FINISH_SOLVED_KEPT_Y 9

/**
 * The column `shot` of `kept`: the shot there.
 */
#define OVS_FINISH_SOLVED_KEPT_SHOT 10

/**
 * The column `tighter` of `kept` (yd3 or m3): concrete that tightening it by one step takes more; none where it
 * cannot be tightened.
 */
#define OVS_FINISH_SOLVED_KEPT_TIGHTER 11

/**
 * The column `tighter_cost` of `kept` (yd3 or m3): the same with grinding at its price, in volume of concrete.
 */
#define OVS_FINISH_SOLVED_KEPT_TIGHTER_COST 12

/**
 * The column `tighter_holds` of `kept` (in or mm): how far that holds; none for ever.
 */
#define OVS_FINISH_SOLVED_KEPT_TIGHTER_HOLDS 13

/**
 * The column `tighter_holds_fall` of `kept` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_SOLVED_KEPT_TIGHTER_HOLDS_FALL 14

/**
 * The column `looser` of `kept` (yd3 or m3): concrete that loosening it by one step takes more: less than none is
 * saved.
 */
#define OVS_FINISH_SOLVED_KEPT_LOOSER 15

/**
 * The column `looser_cost` of `kept` (yd3 or m3): the same with grinding at its price, in volume of concrete.
 */
#define OVS_FINISH_SOLVED_KEPT_LOOSER_COST 16

/**
 * The column `looser_holds` of `kept` (in or mm): how far that holds; none for ever.
 */
#define OVS_FINISH_SOLVED_KEPT_LOOSER_HOLDS 17

/**
 * The column `looser_holds_fall` of `kept` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_SOLVED_KEPT_LOOSER_HOLDS_FALL 18

/**
 * The column `said` of `kept`: the price in words.
 */
#define OVS_FINISH_SOLVED_KEPT_SAID 19

/**
 * How many results there are.
 */
#define OVS_FINISH_SOLVED_RESULTS 17

/**
 * The word `least_thickness`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_LEAST_THICKNESS 0

/**
 * The word `greatest_thickness`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_GREATEST_THICKNESS 1

/**
 * The word `least_fall`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_LEAST_FALL 2

/**
 * The word `greatest_fall`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_GREATEST_FALL 3

/**
 * The word `steepest`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_STEEPEST 4

/**
 * The word `cross_fall`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_CROSS_FALL 5

/**
 * The word `level`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_LEVEL 6

/**
 * The word `at_most`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_AT_MOST 7

/**
 * The word `at_least`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_AT_LEAST 8

/**
 * The word `exactly`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_KIND_EXACTLY 9

/**
 * The word `no`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_FIRM_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SOLVED_DEMANDS_FIRM_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_SOLVED_EDGES_BIND_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SOLVED_EDGES_BIND_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_SOLVED_SET_OUT_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SOLVED_SET_OUT_YES 1

/**
 * The word `length`.
 */
#define OVS_FINISH_SOLVED_KEPT_COUNTED_IN_LENGTH 0

/**
 * The word `fall`.
 */
#define OVS_FINISH_SOLVED_KEPT_COUNTED_IN_FALL 1

/**
 * The word `no`.
 */
#define OVS_FINISH_SOLVED_KEPT_ADDED_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SOLVED_KEPT_ADDED_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_SOLVED_KEPT_BINDS_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SOLVED_KEPT_BINDS_YES 1

/**
 * The result `kept`: whether all can be kept.
 */
#define OVS_FINISH_CONFLICTS_KEPT 0

/**
 * The result `complete`: whether these are all the sets; at most ten are told.
 */
#define OVS_FINISH_CONFLICTS_COMPLETE 1

/**
 * The result `sets`: the sets.
 */
#define OVS_FINISH_CONFLICTS_SETS 2

/**
 * The column `set` of `sets`: the number of the set.
 */
#define OVS_FINISH_CONFLICTS_SETS_SET 0

/**
 * The column `demand` of `sets`: its name.
 */
#define OVS_FINISH_CONFLICTS_SETS_DEMAND 1

/**
 * The column `by` of `sets` (in or mm): by how much it must give way, alone in its set; none where that does not
 * help.
 */
#define OVS_FINISH_CONFLICTS_SETS_BY 2

/**
 * The column `by_fall` of `sets` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_CONFLICTS_SETS_BY_FALL 3

/**
 * The column `said` of `sets`: the same in words.
 */
#define OVS_FINISH_CONFLICTS_SETS_SAID 4

/**
 * The result `alone`: what mends everything alone.
 */
#define OVS_FINISH_CONFLICTS_ALONE 3

/**
 * The column `demand` of `alone`: its name.
 */
#define OVS_FINISH_CONFLICTS_ALONE_DEMAND 0

/**
 * The column `by` of `alone` (in or mm): by how much it must give way, alone in its set; none where that does not
 * help.
 */
#define OVS_FINISH_CONFLICTS_ALONE_BY 1

/**
 * The column `by_fall` of `alone` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_CONFLICTS_ALONE_BY_FALL 2

/**
 * The column `said` of `alone`: the same in words.
 */
#define OVS_FINISH_CONFLICTS_ALONE_SAID 3

/**
 * The result `together`: what mends everything with the least weighted sum.
 */
#define OVS_FINISH_CONFLICTS_TOGETHER 4

/**
 * The column `demand` of `together`: its name.
 */
#define OVS_FINISH_CONFLICTS_TOGETHER_DEMAND 0

/**
 * The column `by` of `together` (in or mm): by how much it must give way, alone in its set; none where that does
 * not help.
 */
#define OVS_FINISH_CONFLICTS_TOGETHER_BY 1

/**
 * The column `by_fall` of `together` (in/ft or %): the same for a fall.
 */
#define OVS_FINISH_CONFLICTS_TOGETHER_BY_FALL 2

/**
 * The column `said` of `together`: the same in words.
 */
#define OVS_FINISH_CONFLICTS_TOGETHER_SAID 3

/**
 * The result `said`: all of it in sentences.
 */
#define OVS_FINISH_CONFLICTS_SAID 5

/**
 * How many results there are.
 */
#define OVS_FINISH_CONFLICTS_RESULTS 6

/**
 * The word `least_thickness`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEAST_THICKNESS 0

/**
 * The word `greatest_thickness`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_GREATEST_THICKNESS 1

/**
 * The word `least_fall`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEAST_FALL 2

/**
 * The word `greatest_fall`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_GREATEST_FALL 3

/**
 * The word `steepest`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_STEEPEST 4

/**
 * The word `cross_fall`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_CROSS_FALL 5

/**
 * The word `level`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_LEVEL 6

/**
 * The word `at_most`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_AT_MOST 7

/**
 * The word `at_least`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_AT_LEAST 8

/**
 * The word `exactly`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_KIND_EXACTLY 9

/**
 * The word `no`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_FIRM_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_CONFLICTS_DEMANDS_FIRM_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_CONFLICTS_EDGES_BIND_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_CONFLICTS_EDGES_BIND_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_CONFLICTS_KEPT_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_CONFLICTS_KEPT_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_CONFLICTS_COMPLETE_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_CONFLICTS_COMPLETE_YES 1

/**
 * The result `curve`: the concrete for each value.
 */
#define OVS_FINISH_SWEEP_CURVE 0

/**
 * The column `length` of `curve` (in or mm): the thickness or tolerance.
 */
#define OVS_FINISH_SWEEP_CURVE_LENGTH 0

/**
 * The column `fall` of `curve` (in/ft or %): the fall.
 */
#define OVS_FINISH_SWEEP_CURVE_FALL 1

/**
 * The column `elevation` of `curve` (ft or m): the height.
 */
#define OVS_FINISH_SWEEP_CURVE_ELEVATION 2

/**
 * The column `concrete` of `curve` (yd3 or m3): the least concrete; none where the demands cannot be kept.
 */
#define OVS_FINISH_SWEEP_CURVE_CONCRETE 3

/**
 * How many results there are.
 */
#define OVS_FINISH_SWEEP_RESULTS 1

/**
 * The word `least_thickness`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_LEAST_THICKNESS 0

/**
 * The word `greatest_thickness`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_GREATEST_THICKNESS 1

/**
 * The word `least_fall`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_LEAST_FALL 2

/**
 * The word `greatest_fall`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_GREATEST_FALL 3

/**
 * The word `steepest`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_STEEPEST 4

/**
 * The word `cross_fall`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_CROSS_FALL 5

/**
 * The word `level`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_LEVEL 6

/**
 * The word `at_most`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_AT_MOST 7

/**
 * The word `at_least`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_AT_LEAST 8

/**
 * The word `exactly`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_KIND_EXACTLY 9

/**
 * The word `no`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_FIRM_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SWEEP_DEMANDS_FIRM_YES 1

/**
 * The word `no`.
 */
#define OVS_FINISH_SWEEP_EDGES_BIND_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_SWEEP_EDGES_BIND_YES 1

/**
 * The result `area` (ft2 or m2): plan area.
 */
#define OVS_THICKNESS_AREA 0

/**
 * The result `net` (yd3 or m3): fill less high spots.
 */
#define OVS_THICKNESS_NET 1

/**
 * The result `fill` (yd3 or m3): volume where the finish is above the old slab.
 */
#define OVS_THICKNESS_FILL 2

/**
 * The result `high` (yd3 or m3): volume of old slab above the finish.
 */
#define OVS_THICKNESS_HIGH 3

/**
 * The result `mean` (in or mm): net volume over area.
 */
#define OVS_THICKNESS_MEAN 4

/**
 * The result `least` (in or mm): least thickness.
 */
#define OVS_THICKNESS_LEAST 5

/**
 * The result `least_x` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_LEAST_X 6

/**
 * The result `least_y` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_LEAST_Y 7

/**
 * The result `least_measured` (in or mm): least thickness between the shots.
 */
#define OVS_THICKNESS_LEAST_MEASURED 8

/**
 * The result `greatest` (in or mm): greatest thickness.
 */
#define OVS_THICKNESS_GREATEST 9

/**
 * The result `greatest_x` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_GREATEST_X 10

/**
 * The result `greatest_y` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_GREATEST_Y 11

/**
 * The result `thinner` (ft2 or m2): area thinner than the depth asked about.
 */
#define OVS_THICKNESS_THINNER 12

/**
 * The result `least_facet`: the facet where it is thinnest.
 */
#define OVS_THICKNESS_LEAST_FACET 13

/**
 * The result `greatest_facet`: the facet where it is thickest.
 */
#define OVS_THICKNESS_GREATEST_FACET 14

/**
 * How many results there are.
 */
#define OVS_THICKNESS_RESULTS 15

/**
 * The result `governing`: the shots that fix the grade.
 */
#define OVS_SECOND_LOOK_GOVERNING 0

/**
 * The column `shot` of `governing`: its name.
 */
#define OVS_SECOND_LOOK_GOVERNING_SHOT 0

/**
 * The column `x` of `governing` (ft or m): distance from the left.
 */
#define OVS_SECOND_LOOK_GOVERNING_X 1

/**
 * The column `y` of `governing` (ft or m): distance from the front.
 */
#define OVS_SECOND_LOOK_GOVERNING_Y 2

/**
 * The column `thickness` of `governing` (in or mm): the thickness over it.
 */
#define OVS_SECOND_LOOK_GOVERNING_THICKNESS 3

/**
 * The column `drop_without` of `governing` (in or mm): how far the finish could drop without this shot.
 */
#define OVS_SECOND_LOOK_GOVERNING_DROP_WITHOUT 4

/**
 * The column `saved` of `governing` (yd3 or m3): the concrete that would save.
 */
#define OVS_SECOND_LOOK_GOVERNING_SAVED 5

/**
 * The column `said` of `governing`: why to look again.
 */
#define OVS_SECOND_LOOK_GOVERNING_SAID 6

/**
 * The result `drop_without_all` (in or mm): how far the finish could drop without all of them.
 */
#define OVS_SECOND_LOOK_DROP_WITHOUT_ALL 1

/**
 * How many results there are.
 */
#define OVS_SECOND_LOOK_RESULTS 2

/**
 * The result `count`: how many ponds the finish has.
 */
#define OVS_FINISH_STANDING_WATER_COUNT 0

/**
 * The result `area` (ft2 or m2): area of the finish under water.
 */
#define OVS_FINISH_STANDING_WATER_AREA 1

/**
 * The result `volume` (ft3 or m3): water on the finish.
 */
#define OVS_FINISH_STANDING_WATER_VOLUME 2

/**
 * The result `depth` (in or mm): greatest depth on the finish; none without a pond.
 */
#define OVS_FINISH_STANDING_WATER_DEPTH 3

/**
 * The result `left_out`: how many ponds of the finish were shallower.
 */
#define OVS_FINISH_STANDING_WATER_LEFT_OUT 4

/**
 * The result `cured`: how many ponds of the old slab are cured.
 */
#define OVS_FINISH_STANDING_WATER_CURED 5

/**
 * The result `left`: how many ponds of the old slab are not.
 */
#define OVS_FINISH_STANDING_WATER_LEFT 6

/**
 * The result `ponds`: the ponds of the finish.
 */
#define OVS_FINISH_STANDING_WATER_PONDS 7

/**
 * The column `level` of `ponds` (ft or m): level of the water.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_LEVEL 0

/**
 * The column `area` of `ponds` (ft2 or m2): area under water.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_AREA 1

/**
 * The column `volume` of `ponds` (ft3 or m3): water in it.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_VOLUME 2

/**
 * The column `depth` of `ponds` (in or mm): greatest depth.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_DEPTH 3

/**
 * The column `deepest_x` of `ponds` (ft or m): where it is deepest, from the left.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_DEEPEST_X 4

/**
 * The column `deepest_y` of `ponds` (ft or m): where it is deepest, from the front.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_DEEPEST_Y 5

/**
 * The column `spill_x` of `ponds` (ft or m): where the water spills, from the left.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_SPILL_X 6

/**
 * The column `spill_y` of `ponds` (ft or m): where the water spills, from the front.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_SPILL_Y 7

/**
 * The column `outlet` of `ponds`: edge or drain that takes the water there; none where it runs on over a saddle.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_OUTLET 8

/**
 * The column `new` of `ponds`: whether the old slab was dry there.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_NEW 9

/**
 * The result `old_ponds`: the ponds of the old slab.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS 8

/**
 * The column `level` of `old_ponds` (ft or m): level of the water.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_LEVEL 0

/**
 * The column `area` of `old_ponds` (ft2 or m2): area under water.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_AREA 1

/**
 * The column `volume` of `old_ponds` (ft3 or m3): water in it.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_VOLUME 2

/**
 * The column `depth` of `old_ponds` (in or mm): greatest depth.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_DEPTH 3

/**
 * The column `deepest_x` of `old_ponds` (ft or m): where it is deepest, from the left.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_DEEPEST_X 4

/**
 * The column `deepest_y` of `old_ponds` (ft or m): where it is deepest, from the front.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_DEEPEST_Y 5

/**
 * The column `spill_x` of `old_ponds` (ft or m): where the water spills, from the left.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_SPILL_X 6

/**
 * The column `spill_y` of `old_ponds` (ft or m): where the water spills, from the front.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_SPILL_Y 7

/**
 * The column `outlet` of `old_ponds`: edge or drain that takes the water there; none where it runs on over a
 * saddle.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_OUTLET 8

/**
 * The column `fate` of `old_ponds`: whether the finish cures it.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE 9

/**
 * The column `still` of `old_ponds` (ft2 or m2): area of it that is still under water.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_STILL 10

/**
 * How many results there are.
 */
#define OVS_FINISH_STANDING_WATER_RESULTS 9

/**
 * The word `open`.
 */
#define OVS_FINISH_STANDING_WATER_EDGES_STATE_OPEN 0

/**
 * The word `walled`.
 */
#define OVS_FINISH_STANDING_WATER_EDGES_STATE_WALLED 1

/**
 * The word `drained`.
 */
#define OVS_FINISH_STANDING_WATER_EDGES_STATE_DRAINED 2

/**
 * The word `no`.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_NEW_NO 0

/**
 * The word `yes`.
 */
#define OVS_FINISH_STANDING_WATER_PONDS_NEW_YES 1

/**
 * The word `cured`.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE_CURED 0

/**
 * The word `left`.
 */
#define OVS_FINISH_STANDING_WATER_OLD_PONDS_FATE_LEFT 1

/**
 * The result `survey`: the old slab after it.
 */
#define OVS_GRIND_HIGH_SPOTS_SURVEY 0

/**
 * The result `area` (ft2 or m2): area ground or filled.
 */
#define OVS_GRIND_HIGH_SPOTS_AREA 1

/**
 * The result `volume` (ft3 or m3): volume taken off or filled.
 */
#define OVS_GRIND_HIGH_SPOTS_VOLUME 2

/**
 * The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
 */
#define OVS_GRIND_HIGH_SPOTS_DEEPEST 3

/**
 * The result `deepest_x` (ft or m): where it is, from the left.
 */
#define OVS_GRIND_HIGH_SPOTS_DEEPEST_X 4

/**
 * The result `deepest_y` (ft or m): where it is, from the front.
 */
#define OVS_GRIND_HIGH_SPOTS_DEEPEST_Y 5

/**
 * How many results there are.
 */
#define OVS_GRIND_HIGH_SPOTS_RESULTS 6

/**
 * The result `survey`: the old slab after it.
 */
#define OVS_FILL_LOW_SPOTS_SURVEY 0

/**
 * The result `area` (ft2 or m2): area ground or filled.
 */
#define OVS_FILL_LOW_SPOTS_AREA 1

/**
 * The result `volume` (ft3 or m3): volume taken off or filled.
 */
#define OVS_FILL_LOW_SPOTS_VOLUME 2

/**
 * The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
 */
#define OVS_FILL_LOW_SPOTS_DEEPEST 3

/**
 * The result `deepest_x` (ft or m): where it is, from the left.
 */
#define OVS_FILL_LOW_SPOTS_DEEPEST_X 4

/**
 * The result `deepest_y` (ft or m): where it is, from the front.
 */
#define OVS_FILL_LOW_SPOTS_DEEPEST_Y 5

/**
 * How many results there are.
 */
#define OVS_FILL_LOW_SPOTS_RESULTS 6

/**
 * The result `survey`: the old slab after it.
 */
#define OVS_FILL_PONDS_SURVEY 0

/**
 * The result `area` (ft2 or m2): area ground or filled.
 */
#define OVS_FILL_PONDS_AREA 1

/**
 * The result `volume` (ft3 or m3): volume taken off or filled.
 */
#define OVS_FILL_PONDS_VOLUME 2

/**
 * The result `deepest` (in or mm): deepest cut or fill; none where nothing is changed.
 */
#define OVS_FILL_PONDS_DEEPEST 3

/**
 * The result `deepest_x` (ft or m): where it is, from the left.
 */
#define OVS_FILL_PONDS_DEEPEST_X 4

/**
 * The result `deepest_y` (ft or m): where it is, from the front.
 */
#define OVS_FILL_PONDS_DEEPEST_Y 5

/**
 * How many results there are.
 */
#define OVS_FILL_PONDS_RESULTS 6

/**
 * The word `open`.
 */
#define OVS_FILL_PONDS_EDGES_STATE_OPEN 0

/**
 * The word `walled`.
 */
#define OVS_FILL_PONDS_EDGES_STATE_WALLED 1

/**
 * The word `drained`.
 */
#define OVS_FILL_PONDS_EDGES_STATE_DRAINED 2

/**
 * The result `area` (ft2 or m2): area of all parts.
 */
#define OVS_THICKNESS_AREAS_AREA 0

/**
 * The result `volume` (yd3 or m3): missing to the depth, or over it, in all parts.
 */
#define OVS_THICKNESS_AREAS_VOLUME 1

/**
 * The result `parts`: the connected parts.
 */
#define OVS_THICKNESS_AREAS_PARTS 2

/**
 * The column `part` of `parts`: its number.
 */
#define OVS_THICKNESS_AREAS_PARTS_PART 0

/**
 * The column `area` of `parts` (ft2 or m2): its area.
 */
#define OVS_THICKNESS_AREAS_PARTS_AREA 1

/**
 * The column `volume` of `parts` (yd3 or m3): missing to the depth, or over it.
 */
#define OVS_THICKNESS_AREAS_PARTS_VOLUME 2

/**
 * The column `extreme` of `parts` (in or mm): its least thickness, or its greatest where thicker.
 */
#define OVS_THICKNESS_AREAS_PARTS_EXTREME 3

/**
 * The column `extreme_x` of `parts` (ft or m): where that is, from the left.
 */
#define OVS_THICKNESS_AREAS_PARTS_EXTREME_X 4

/**
 * The column `extreme_y` of `parts` (ft or m): where that is, from the front.
 */
#define OVS_THICKNESS_AREAS_PARTS_EXTREME_Y 5

/**
 * The result `corners`: the corners of their polygons.
 */
#define OVS_THICKNESS_AREAS_CORNERS 3

/**
 * The column `part` of `corners`: the number of the part.
 */
#define OVS_THICKNESS_AREAS_CORNERS_PART 0

/**
 * The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
 */
#define OVS_THICKNESS_AREAS_CORNERS_RING 1

/**
 * The column `x` of `corners` (ft or m): from the left.
 */
#define OVS_THICKNESS_AREAS_CORNERS_X 2

/**
 * The column `y` of `corners` (ft or m): from the front.
 */
#define OVS_THICKNESS_AREAS_CORNERS_Y 3

/**
 * How many results there are.
 */
#define OVS_THICKNESS_AREAS_RESULTS 4

/**
 * The word `thinner`.
 */
#define OVS_THICKNESS_AREAS_SIDE_THINNER 0

/**
 * The word `thicker`.
 */
#define OVS_THICKNESS_AREAS_SIDE_THICKER 1

/**
 * The result `lines`: the lines.
 */
#define OVS_THICKNESS_CONTOURS_LINES 0

/**
 * The column `line` of `lines`: its number.
 */
#define OVS_THICKNESS_CONTOURS_LINES_LINE 0

/**
 * The column `level` of `lines` (in or mm): its level.
 */
#define OVS_THICKNESS_CONTOURS_LINES_LEVEL 1

/**
 * The column `form` of `lines`: whether it closes.
 */
#define OVS_THICKNESS_CONTOURS_LINES_FORM 2

/**
 * The column `length` of `lines` (ft or m): its length.
 */
#define OVS_THICKNESS_CONTOURS_LINES_LENGTH 3

/**
 * The result `points`: their places.
 */
#define OVS_THICKNESS_CONTOURS_POINTS 1

/**
 * The column `line` of `points`: the number of the line.
 */
#define OVS_THICKNESS_CONTOURS_POINTS_LINE 0

/**
 * The column `x` of `points` (ft or m): from the left.
 */
#define OVS_THICKNESS_CONTOURS_POINTS_X 1

/**
 * The column `y` of `points` (ft or m): from the front.
 */
#define OVS_THICKNESS_CONTOURS_POINTS_Y 2

/**
 * How many results there are.
 */
#define OVS_THICKNESS_CONTOURS_RESULTS 2

/**
 * The word `open`.
 */
#define OVS_THICKNESS_CONTOURS_LINES_FORM_OPEN 0

/**
 * The word `closed`.
 */
#define OVS_THICKNESS_CONTOURS_LINES_FORM_CLOSED 1

/**
 * The result `lines`: the lines.
 */
#define OVS_SURVEY_CONTOURS_LINES 0

/**
 * The column `line` of `lines`: its number.
 */
#define OVS_SURVEY_CONTOURS_LINES_LINE 0

/**
 * The column `level` of `lines` (ft or m): its level.
 */
#define OVS_SURVEY_CONTOURS_LINES_LEVEL 1

/**
 * The column `form` of `lines`: whether it closes.
 */
#define OVS_SURVEY_CONTOURS_LINES_FORM 2

/**
 * The column `length` of `lines` (ft or m): its length.
 */
#define OVS_SURVEY_CONTOURS_LINES_LENGTH 3

/**
 * The result `points`: their places.
 */
#define OVS_SURVEY_CONTOURS_POINTS 1

/**
 * The column `line` of `points`: the number of the line.
 */
#define OVS_SURVEY_CONTOURS_POINTS_LINE 0

/**
 * The column `x` of `points` (ft or m): from the left.
 */
#define OVS_SURVEY_CONTOURS_POINTS_X 1

/**
 * The column `y` of `points` (ft or m): from the front.
 */
#define OVS_SURVEY_CONTOURS_POINTS_Y 2

/**
 * How many results there are.
 */
#define OVS_SURVEY_CONTOURS_RESULTS 2

/**
 * The word `open`.
 */
#define OVS_SURVEY_CONTOURS_LINES_FORM_OPEN 0

/**
 * The word `closed`.
 */
#define OVS_SURVEY_CONTOURS_LINES_FORM_CLOSED 1

/**
 * The result `lines`: the lines.
 */
#define OVS_FINISH_CONTOURS_LINES 0

/**
 * The column `line` of `lines`: its number.
 */
#define OVS_FINISH_CONTOURS_LINES_LINE 0

/**
 * The column `level` of `lines` (ft or m): its level.
 */
#define OVS_FINISH_CONTOURS_LINES_LEVEL 1

/**
 * The column `form` of `lines`: whether it closes.
 */
#define OVS_FINISH_CONTOURS_LINES_FORM 2

/**
 * The column `length` of `lines` (ft or m): its length.
 */
#define OVS_FINISH_CONTOURS_LINES_LENGTH 3

/**
 * The result `points`: their places.
 */
#define OVS_FINISH_CONTOURS_POINTS 1

/**
 * The column `line` of `points`: the number of the line.
 */
#define OVS_FINISH_CONTOURS_POINTS_LINE 0

/**
 * The column `x` of `points` (ft or m): from the left.
 */
#define OVS_FINISH_CONTOURS_POINTS_X 1

/**
 * The column `y` of `points` (ft or m): from the front.
 */
#define OVS_FINISH_CONTOURS_POINTS_Y 2

/**
 * How many results there are.
 */
#define OVS_FINISH_CONTOURS_RESULTS 2

/**
 * The word `open`.
 */
#define OVS_FINISH_CONTOURS_LINES_FORM_OPEN 0

/**
 * The word `closed`.
 */
#define OVS_FINISH_CONTOURS_LINES_FORM_CLOSED 1

/**
 * The result `bands`: the bands.
 */
#define OVS_THICKNESS_BANDS_BANDS 0

/**
 * The column `band` of `bands`: its number.
 */
#define OVS_THICKNESS_BANDS_BANDS_BAND 0

/**
 * The column `lower` of `bands` (in or mm): its lower level, itself in the band; none below all levels.
 */
#define OVS_THICKNESS_BANDS_BANDS_LOWER 1

/**
 * The column `upper` of `bands` (in or mm): its upper level, itself in the next band; none above all levels.
 */
#define OVS_THICKNESS_BANDS_BANDS_UPPER 2

/**
 * The column `area` of `bands` (ft2 or m2): its area.
 */
#define OVS_THICKNESS_BANDS_BANDS_AREA 3

/**
 * The column `share` of `bands` (%): its share of the whole area.
 */
#define OVS_THICKNESS_BANDS_BANDS_SHARE 4

/**
 * The column `volume` of `bands` (yd3 or m3): volume over it between old slab and finish, high spots taken off.
 */
#define OVS_THICKNESS_BANDS_BANDS_VOLUME 5

/**
 * The result `parts`: their connected parts.
 */
#define OVS_THICKNESS_BANDS_PARTS 1

/**
 * The column `band` of `parts`: the number of the band.
 */
#define OVS_THICKNESS_BANDS_PARTS_BAND 0

/**
 * The column `part` of `parts`: its number in the band.
 */
#define OVS_THICKNESS_BANDS_PARTS_PART 1

/**
 * The column `area` of `parts` (ft2 or m2): its area.
 */
#define OVS_THICKNESS_BANDS_PARTS_AREA 2

/**
 * The column `volume` of `parts` (yd3 or m3): volume over it.
 */
#define OVS_THICKNESS_BANDS_PARTS_VOLUME 3

/**
 * The result `corners`: the corners of their polygons.
 */
#define OVS_THICKNESS_BANDS_CORNERS 2

/**
 * The column `band` of `corners`: the number of the band.
 */
#define OVS_THICKNESS_BANDS_CORNERS_BAND 0

/**
 * The column `part` of `corners`: the number of the part in the band.
 */
#define OVS_THICKNESS_BANDS_CORNERS_PART 1

/**
 * The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
 */
#define OVS_THICKNESS_BANDS_CORNERS_RING 2

/**
 * The column `x` of `corners` (ft or m): from the left.
 */
#define OVS_THICKNESS_BANDS_CORNERS_X 3

/**
 * The column `y` of `corners` (ft or m): from the front.
 */
#define OVS_THICKNESS_BANDS_CORNERS_Y 4

/**
 * How many results there are.
 */
#define OVS_THICKNESS_BANDS_RESULTS 3

/**
 * The result `area` (ft2 or m2): the whole area.
 */
#define OVS_THICKNESS_HISTOGRAM_AREA 0

/**
 * The result `volume` (yd3 or m3): the whole volume, high spots taken off.
 */
#define OVS_THICKNESS_HISTOGRAM_VOLUME 1

/**
 * The result `bins`: the bins.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS 2

/**
 * The column `lower` of `bins` (in or mm): its lower edge, itself in the bin; none below all edges.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_LOWER 0

/**
 * The column `upper` of `bins` (in or mm): its upper edge, itself in the next bin; none above all edges.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_UPPER 1

/**
 * The column `area` of `bins` (ft2 or m2): area as thick.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_AREA 2

/**
 * The column `share` of `bins` (%): its share of the whole area.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_SHARE 3

/**
 * The column `volume` of `bins` (yd3 or m3): volume over it between old slab and finish, high spots taken off.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_VOLUME 4

/**
 * The column `thinner` of `bins` (%): share of the whole area thinner than the upper edge.
 */
#define OVS_THICKNESS_HISTOGRAM_BINS_THINNER 5

/**
 * The result `quantiles`: the depths of the shares.
 */
#define OVS_THICKNESS_HISTOGRAM_QUANTILES 3

/**
 * The column `share` of `quantiles` (%): share of the area.
 */
#define OVS_THICKNESS_HISTOGRAM_QUANTILES_SHARE 0

/**
 * The column `thickness` of `quantiles` (in or mm): so much of the area is thinner than this.
 */
#define OVS_THICKNESS_HISTOGRAM_QUANTILES_THICKNESS 1

/**
 * How many results there are.
 */
#define OVS_THICKNESS_HISTOGRAM_RESULTS 4

/**
 * The result `figures`: the figures of each zone.
 */
#define OVS_THICKNESS_ZONES_FIGURES 0

/**
 * The column `zone` of `figures`: its name.
 */
#define OVS_THICKNESS_ZONES_FIGURES_ZONE 0

/**
 * The column `area` of `figures` (ft2 or m2): area.
 */
#define OVS_THICKNESS_ZONES_FIGURES_AREA 1

/**
 * The column `net` of `figures` (yd3 or m3): fill less high spots.
 */
#define OVS_THICKNESS_ZONES_FIGURES_NET 2

/**
 * The column `fill` of `figures` (yd3 or m3): volume where the finish is above the old slab.
 */
#define OVS_THICKNESS_ZONES_FIGURES_FILL 3

/**
 * The column `high` of `figures` (yd3 or m3): volume of old slab above the finish.
 */
#define OVS_THICKNESS_ZONES_FIGURES_HIGH 4

/**
 * The column `mean` of `figures` (in or mm): net volume over area.
 */
#define OVS_THICKNESS_ZONES_FIGURES_MEAN 5

/**
 * The column `least` of `figures` (in or mm): least thickness.
 */
#define OVS_THICKNESS_ZONES_FIGURES_LEAST 6

/**
 * The column `least_x` of `figures` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_ZONES_FIGURES_LEAST_X 7

/**
 * The column `least_y` of `figures` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_ZONES_FIGURES_LEAST_Y 8

/**
 * The column `greatest` of `figures` (in or mm): greatest thickness.
 */
#define OVS_THICKNESS_ZONES_FIGURES_GREATEST 9

/**
 * The column `greatest_x` of `figures` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_ZONES_FIGURES_GREATEST_X 10

/**
 * The column `greatest_y` of `figures` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_ZONES_FIGURES_GREATEST_Y 11

/**
 * The column `thinner` of `figures` (ft2 or m2): area thinner than the depth asked about.
 */
#define OVS_THICKNESS_ZONES_FIGURES_THINNER 12

/**
 * The column `outside` of `figures` (ft2 or m2): area of the zone outside the work, which does not count.
 */
#define OVS_THICKNESS_ZONES_FIGURES_OUTSIDE 13

/**
 * The result `rest`: the figures of the work outside all zones.
 */
#define OVS_THICKNESS_ZONES_REST 1

/**
 * The column `area` of `rest` (ft2 or m2): area.
 */
#define OVS_THICKNESS_ZONES_REST_AREA 0

/**
 * The column `net` of `rest` (yd3 or m3): fill less high spots.
 */
#define OVS_THICKNESS_ZONES_REST_NET 1

/**
 * The column `fill` of `rest` (yd3 or m3): volume where the finish is above the old slab.
 */
#define OVS_THICKNESS_ZONES_REST_FILL 2

/**
 * The column `high` of `rest` (yd3 or m3): volume of old slab above the finish.
 */
#define OVS_THICKNESS_ZONES_REST_HIGH 3

/**
 * The column `mean` of `rest` (in or mm): net volume over area.
 */
#define OVS_THICKNESS_ZONES_REST_MEAN 4

/**
 * The column `least` of `rest` (in or mm): least thickness.
 */
#define OVS_THICKNESS_ZONES_REST_LEAST 5

/**
 * The column `least_x` of `rest` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_ZONES_REST_LEAST_X 6

/**
 * The column `least_y` of `rest` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_ZONES_REST_LEAST_Y 7

/**
 * The column `greatest` of `rest` (in or mm): greatest thickness.
 */
#define OVS_THICKNESS_ZONES_REST_GREATEST 8

/**
 * The column `greatest_x` of `rest` (ft or m): where it is, from the left.
 */
#define OVS_THICKNESS_ZONES_REST_GREATEST_X 9

/**
 * The column `greatest_y` of `rest` (ft or m): where it is, from the front.
 */
#define OVS_THICKNESS_ZONES_REST_GREATEST_Y 10

/**
 * The column `thinner` of `rest` (ft2 or m2): area thinner than the depth asked about.
 */
#define OVS_THICKNESS_ZONES_REST_THINNER 11

/**
 * How many results there are.
 */
#define OVS_THICKNESS_ZONES_RESULTS 2

/**
 * The result `area` (ft2 or m2): area of all that is thinner.
 */
#define OVS_THIN_ZONES_AREA 0

/**
 * The result `lacking` (yd3 or m3): volume all of it lacks to the minimum.
 */
#define OVS_THIN_ZONES_LACKING 1

/**
 * The result `left_out` (ft2 or m2): area of zones under a square millimetre, not listed.
 */
#define OVS_THIN_ZONES_LEFT_OUT 2

/**
 * The result `raise_all` (in or mm): rise of the whole finish that leaves no zone; none where there is none.
 */
#define OVS_THIN_ZONES_RAISE_ALL 3

/**
 * The result `raise_all_concrete` (yd3 or m3): concrete it takes.
 */
#define OVS_THIN_ZONES_RAISE_ALL_CONCRETE 4

/**
 * The result `raise_all_cost` (money): what it costs.
 */
#define OVS_THIN_ZONES_RAISE_ALL_COST 5

/**
 * The result `zone_by_zone_cost` (money): all zones, each in the cheapest way without raising.
 */
#define OVS_THIN_ZONES_ZONE_BY_ZONE_COST 6

/**
 * The result `said`: all of it in a few sentences.
 */
#define OVS_THIN_ZONES_SAID 7

/**
 * The result `zones`: the zones.
 */
#define OVS_THIN_ZONES_ZONES 8

/**
 * The column `zone` of `zones`: its number.
 */
#define OVS_THIN_ZONES_ZONES_ZONE 0

/**
 * The column `area` of `zones` (ft2 or m2): its area.
 */
#define OVS_THIN_ZONES_ZONES_AREA 1

/**
 * The column `lacking` of `zones` (yd3 or m3): volume it lacks to the minimum.
 */
#define OVS_THIN_ZONES_ZONES_LACKING 2

/**
 * The column `thinnest` of `zones` (in or mm): its least thickness.
 */
#define OVS_THIN_ZONES_ZONES_THINNEST 3

/**
 * The column `thinnest_x` of `zones` (ft or m): where that is, from the left.
 */
#define OVS_THIN_ZONES_ZONES_THINNEST_X 4

/**
 * The column `thinnest_y` of `zones` (ft or m): where that is, from the front.
 */
#define OVS_THIN_ZONES_ZONES_THINNEST_Y 5

/**
 * The column `thinnest_shot` of `zones`: the shot there.
 */
#define OVS_THIN_ZONES_ZONES_THINNEST_SHOT 6

/**
 * The column `deficit` of `zones` (in or mm): what its thinnest place lacks to the minimum.
 */
#define OVS_THIN_ZONES_ZONES_DEFICIT 7

/**
 * The column `deficit_measured` of `zones` (in or mm): the same between the shots; none where all of it lies
 * beyond them.
 */
#define OVS_THIN_ZONES_ZONES_DEFICIT_MEASURED 8

/**
 * The column `beyond` of `zones` (ft2 or m2): area of it beyond the shots, where the old slab is extended.
 */
#define OVS_THIN_ZONES_ZONES_BEYOND 9

/**
 * The column `x_from` of `zones` (ft or m): its box: from here.
 */
#define OVS_THIN_ZONES_ZONES_X_FROM 10

/**
 * The column `x_to` of `zones` (ft or m): to here from the left.
 */
#define OVS_THIN_ZONES_ZONES_X_TO 11

/**
 * The column `y_from` of `zones` (ft or m): from here.
 */
#define OVS_THIN_ZONES_ZONES_Y_FROM 12

/**
 * The column `y_to` of `zones` (ft or m): to here from the front.
 */
#define OVS_THIN_ZONES_ZONES_Y_TO 13

/**
 * The column `boxed` of `zones` (ft2 or m2): area of the work within the box.
 */
#define OVS_THIN_ZONES_ZONES_BOXED 14

/**
 * The column `joint` of `zones` (ft or m): length of the sides of the box inside the work.
 */
#define OVS_THIN_ZONES_ZONES_JOINT 15

/**
 * The column `reaches_edge` of `zones`: whether the edge of the work bounds a part of the box.
 */
#define OVS_THIN_ZONES_ZONES_REACHES_EDGE 16

/**
 * The column `cheapest` of `zones`: the cheapest choice that is enough, among those with a price.
 */
#define OVS_THIN_ZONES_ZONES_CHEAPEST 17

/**
 * The result `choices`: the choices about each.
 */
#define OVS_THIN_ZONES_CHOICES 9

/**
 * The column `zone` of `choices`: the number of the zone.
 */
#define OVS_THIN_ZONES_CHOICES_ZONE 0

/**
 * The column `choice` of `choices`: what is done.
 */
#define OVS_THIN_ZONES_CHOICES_CHOICE 1

/**
 * The column `depth` of `choices` (in or mm): rise, thinnest bonded, deepest cut, or thickness of the new
 * concrete.
 */
#define OVS_THIN_ZONES_CHOICES_DEPTH 2

/**
 * The column `area` of `choices` (ft2 or m2): area worked on.
 */
#define OVS_THIN_ZONES_CHOICES_AREA 3

/**
 * The column `concrete` of `choices` (yd3 or m3): concrete over what the finish takes as it is.
 */
#define OVS_THIN_ZONES_CHOICES_CONCRETE 4

/**
 * The column `joint` of `choices` (ft or m): full-depth joint inside the work.
 */
#define OVS_THIN_ZONES_CHOICES_JOINT 5

/**
 * The column `cost` of `choices` (money): what it costs.
 */
#define OVS_THIN_ZONES_CHOICES_COST 6

/**
 * The column `verdict` of `choices`: whether it cures the zone.
 */
#define OVS_THIN_ZONES_CHOICES_VERDICT 7

/**
 * The column `short_by` of `choices` (in or mm): what is still lacking, where it is not enough.
 */
#define OVS_THIN_ZONES_CHOICES_SHORT_BY 8

/**
 * The column `said` of `choices`: a sentence for the foreman.
 */
#define OVS_THIN_ZONES_CHOICES_SAID 9

/**
 * The result `corners`: the corners of their polygons.
 */
#define OVS_THIN_ZONES_CORNERS 10

/**
 * The column `zone` of `corners`: the number of the zone.
 */
#define OVS_THIN_ZONES_CORNERS_ZONE 0

/**
 * The column `ring` of `corners`: 1 is the outer ring, counter-clockwise; others are holes, clockwise.
 */
#define OVS_THIN_ZONES_CORNERS_RING 1

/**
 * The column `x` of `corners` (ft or m): from the left.
 */
#define OVS_THIN_ZONES_CORNERS_X 2

/**
 * The column `y` of `corners` (ft or m): from the front.
 */
#define OVS_THIN_ZONES_CORNERS_Y 3

/**
 * How many results there are.
 */
#define OVS_THIN_ZONES_RESULTS 11

/**
 * The word `no`.
 */
#define OVS_THIN_ZONES_ZONES_REACHES_EDGE_NO 0

/**
 * The word `yes`.
 */
#define OVS_THIN_ZONES_ZONES_REACHES_EDGE_YES 1

/**
 * The word `raise`.
 */
#define OVS_THIN_ZONES_ZONES_CHEAPEST_RAISE 0

/**
 * The word `bond`.
 */
#define OVS_THIN_ZONES_ZONES_CHEAPEST_BOND 1

/**
 * The word `grind`.
 */
#define OVS_THIN_ZONES_ZONES_CHEAPEST_GRIND 2

/**
 * The word `break out`.
 */
#define OVS_THIN_ZONES_ZONES_CHEAPEST_BREAK_OUT 3

/**
 * The word `raise`.
 */
#define OVS_THIN_ZONES_CHOICES_CHOICE_RAISE 0

/**
 * The word `bond`.
 */
#define OVS_THIN_ZONES_CHOICES_CHOICE_BOND 1

/**
 * The word `grind`.
 */
#define OVS_THIN_ZONES_CHOICES_CHOICE_GRIND 2

/**
 * The word `break out`.
 */
#define OVS_THIN_ZONES_CHOICES_CHOICE_BREAK_OUT 3

/**
 * The word `enough`.
 */
#define OVS_THIN_ZONES_CHOICES_VERDICT_ENOUGH 0

/**
 * The word `not enough`.
 */
#define OVS_THIN_ZONES_CHOICES_VERDICT_NOT_ENOUGH 1

/**
 * The word `not judged`.
 */
#define OVS_THIN_ZONES_CHOICES_VERDICT_NOT_JUDGED 2

/**
 * The result `length` (ft or m): length of the line.
 */
#define OVS_SECTION_LENGTH 0

/**
 * The result `covered` (ft or m): length over the work.
 */
#define OVS_SECTION_COVERED 1

/**
 * The result `net` (ft2 or m2): area between old slab and finish, high spots taken off.
 */
#define OVS_SECTION_NET 2

/**
 * The result `fill` (ft2 or m2): area where the finish is above the old slab.
 */
#define OVS_SECTION_FILL 3

/**
 * The result `high` (ft2 or m2): area of old slab above the finish.
 */
#define OVS_SECTION_HIGH 4

/**
 * The result `mean` (in or mm): net area over covered length.
 */
#define OVS_SECTION_MEAN 5

/**
 * The result `least` (in or mm): least thickness along the line.
 */
#define OVS_SECTION_LEAST 6

/**
 * The result `least_distance` (ft or m): where it is, along the line.
 */
#define OVS_SECTION_LEAST_DISTANCE 7

/**
 * The result `least_x` (ft or m): where it is, from the left.
 */
#define OVS_SECTION_LEAST_X 8

/**
 * The result `least_y` (ft or m): where it is, from the front.
 */
#define OVS_SECTION_LEAST_Y 9

/**
 * The result `greatest` (in or mm): greatest thickness along the line.
 */
#define OVS_SECTION_GREATEST 10

/**
 * The result `greatest_distance` (ft or m): where it is, along the line.
 */
#define OVS_SECTION_GREATEST_DISTANCE 11

/**
 * The result `greatest_x` (ft or m): where it is, from the left.
 */
#define OVS_SECTION_GREATEST_X 12

/**
 * The result `greatest_y` (ft or m): where it is, from the front.
 */
#define OVS_SECTION_GREATEST_Y 13

/**
 * The result `stations`: the stations.
 */
#define OVS_SECTION_STATIONS 14

/**
 * The column `run` of `stations`: which unbroken run over the work it is on.
 */
#define OVS_SECTION_STATIONS_RUN 0

/**
 * The column `distance` of `stations` (ft or m): along the line from its start.
 */
#define OVS_SECTION_STATIONS_DISTANCE 1

/**
 * The column `x` of `stations` (ft or m): from the left.
 */
#define OVS_SECTION_STATIONS_X 2

/**
 * The column `y` of `stations` (ft or m): from the front.
 */
#define OVS_SECTION_STATIONS_Y 3

/**
 * The column `old_slab` of `stations` (ft or m): height of the old slab.
 */
#define OVS_SECTION_STATIONS_OLD_SLAB 4

/**
 * The column `finish` of `stations` (ft or m): height of the finish.
 */
#define OVS_SECTION_STATIONS_FINISH 5

/**
 * The column `thickness` of `stations` (in or mm): finish less old slab.
 */
#define OVS_SECTION_STATIONS_THICKNESS 6

/**
 * The column `ground` of `stations`: what is known of the ground after it; at the end of a run, before it.
 */
#define OVS_SECTION_STATIONS_GROUND 7

/**
 * The result `samples`: the heights at whole steps of the spacing; none without one.
 */
#define OVS_SECTION_SAMPLES 15

/**
 * The column `distance` of `samples` (ft or m): along the line from its start.
 */
#define OVS_SECTION_SAMPLES_DISTANCE 0

/**
 * The column `x` of `samples` (ft or m): from the left.
 */
#define OVS_SECTION_SAMPLES_X 1

/**
 * The column `y` of `samples` (ft or m): from the front.
 */
#define OVS_SECTION_SAMPLES_Y 2

/**
 * The column `old_slab` of `samples` (ft or m): height of the old slab.
 */
#define OVS_SECTION_SAMPLES_OLD_SLAB 3

/**
 * The column `finish` of `samples` (ft or m): height of the finish.
 */
#define OVS_SECTION_SAMPLES_FINISH 4

/**
 * The column `thickness` of `samples` (in or mm): finish less old slab.
 */
#define OVS_SECTION_SAMPLES_THICKNESS 5

/**
 * The result `gaps`: the stretches outside the work.
 */
#define OVS_SECTION_GAPS 16

/**
 * The column `start` of `gaps` (ft or m): where it starts, along the line.
 */
#define OVS_SECTION_GAPS_START 0

/**
 * The column `end` of `gaps` (ft or m): where it ends.
 */
#define OVS_SECTION_GAPS_END 1

/**
 * How many results there are.
 */
#define OVS_SECTION_RESULTS 17

/**
 * The word `surveyed`.
 */
#define OVS_SECTION_STATIONS_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_SECTION_STATIONS_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_SECTION_STATIONS_GROUND_BEYOND 2

/**
 * The result `finish`: the finish there, rounded if that was asked.
 */
#define OVS_DRAIN_PLACE_FINISH 0

/**
 * The result `x` (ft or m): middle of the drain, from the left.
 */
#define OVS_DRAIN_PLACE_X 1

/**
 * The result `y` (ft or m): middle of the drain, from the front.
 */
#define OVS_DRAIN_PLACE_Y 2

/**
 * The result `perimeter` (ft or m): height of that finish all along the outer edges.
 */
#define OVS_DRAIN_PLACE_PERIMETER 3

/**
 * The result `drain_elevation` (ft or m): its height at the drain.
 */
#define OVS_DRAIN_PLACE_DRAIN_ELEVATION 4

/**
 * The result `concrete` (yd3 or m3): concrete of the unrounded finish, margin with it.
 */
#define OVS_DRAIN_PLACE_CONCRETE 5

/**
 * The result `bound` (yd3 or m3): no place in the rectangle takes less.
 */
#define OVS_DRAIN_PLACE_BOUND 6

/**
 * The result `gap` (1): how far the concrete may be above the best, as a share of it.
 */
#define OVS_DRAIN_PLACE_GAP 7

/**
 * The result `places`: places at which the finish was solved.
 */
#define OVS_DRAIN_PLACE_PLACES 8

/**
 * The result `ended`: why the search ended: as close as asked, or the cap on places.
 */
#define OVS_DRAIN_PLACE_ENDED 9

/**
 * The result `built_concrete` (yd3 or m3): concrete of the finish as rounded.
 */
#define OVS_DRAIN_PLACE_BUILT_CONCRETE 10

/**
 * The result `cost` (money): what that costs; none without a price.
 */
#define OVS_DRAIN_PLACE_COST 11

/**
 * How many results there are.
 */
#define OVS_DRAIN_PLACE_RESULTS 12

/**
 * The word `close`.
 */
#define OVS_DRAIN_PLACE_ENDED_CLOSE 0

/**
 * The word `cap`.
 */
#define OVS_DRAIN_PLACE_ENDED_CAP 1

/**
 * The result `marks`: how many marks there are.
 */
#define OVS_MARKS_MARKS 0

/**
 * The result `sight` (ft or m): elevation of the first line of sight.
 */
#define OVS_MARKS_SIGHT 1

/**
 * The result `rod_on_line` (ft or m): the rod on the reference line from there.
 */
#define OVS_MARKS_ROD_ON_LINE 2

/**
 * The result `greatest_departure` (in or mm): how far marks leave the floor by rounding, at most.
 */
#define OVS_MARKS_GREATEST_DEPARTURE 3

/**
 * The result `stations`: the marks at the edges.
 */
#define OVS_MARKS_STATIONS 4

/**
 * The column `mark` of `stations`: its number in the order of walking.
 */
#define OVS_MARKS_STATIONS_MARK 0

/**
 * The column `edge` of `stations`: the edge it stands at.
 */
#define OVS_MARKS_STATIONS_EDGE 1

/**
 * The column `name` of `stations`: what it is called, where it was asked for by name.
 */
#define OVS_MARKS_STATIONS_NAME 2

/**
 * The column `along` of `stations` (ft or m): distance along the edge from where the walk meets it.
 */
#define OVS_MARKS_STATIONS_ALONG 3

/**
 * The column `kind` of `stations`: what it is there for.
 */
#define OVS_MARKS_STATIONS_KIND 4

/**
 * The column `x` of `stations` (ft or m): from the left.
 */
#define OVS_MARKS_STATIONS_X 5

/**
 * The column `y` of `stations` (ft or m): from the front.
 */
#define OVS_MARKS_STATIONS_Y 6

/**
 * The column `elevation` of `stations` (ft or m): the height that is set out, not rounded.
 */
#define OVS_MARKS_STATIONS_ELEVATION 7

/**
 * The column `rod` of `stations` (ft or m): rod from the first set-up, not rounded.
 */
#define OVS_MARKS_STATIONS_ROD 8

/**
 * The column `rod_marked` of `stations` (ft or m): that rod in whole steps.
 */
#define OVS_MARKS_STATIONS_ROD_MARKED 9

/**
 * The column `below_line` of `stations` (ft or m): distance below the reference line, not rounded.
 */
#define OVS_MARKS_STATIONS_BELOW_LINE 10

/**
 * The column `below_line_marked` of `stations` (ft or m): that distance in whole steps.
 */
#define OVS_MARKS_STATIONS_BELOW_LINE_MARKED 11

/**
 * The column `over_old_slab` of `stations` (in or mm): height over the old slab: the check.
 */
#define OVS_MARKS_STATIONS_OVER_OLD_SLAB 12

/**
 * The column `ground` of `stations`: what is known of the old slab there.
 */
#define OVS_MARKS_STATIONS_GROUND 13

/**
 * The result `pads`: the wet pads.
 */
#define OVS_MARKS_PADS 5

/**
 * The column `mark` of `pads`: its number in the order of walking.
 */
#define OVS_MARKS_PADS_MARK 0

/**
 * The column `kind` of `pads`: what it is there for.
 */
#define OVS_MARKS_PADS_KIND 1

/**
 * The column `x` of `pads` (ft or m): from the left.
 */
#define OVS_MARKS_PADS_X 2

/**
 * The column `y` of `pads` (ft or m): from the front.
 */
#define OVS_MARKS_PADS_Y 3

/**
 * The column `elevation` of `pads` (ft or m): the height that is set out, not rounded.
 */
#define OVS_MARKS_PADS_ELEVATION 4

/**
 * The column `rod` of `pads` (ft or m): rod from the first set-up, not rounded.
 */
#define OVS_MARKS_PADS_ROD 5

/**
 * The column `rod_marked` of `pads` (ft or m): that rod in whole steps.
 */
#define OVS_MARKS_PADS_ROD_MARKED 6

/**
 * The column `below_line` of `pads` (ft or m): distance below the reference line, not rounded.
 */
#define OVS_MARKS_PADS_BELOW_LINE 7

/**
 * The column `below_line_marked` of `pads` (ft or m): that distance in whole steps.
 */
#define OVS_MARKS_PADS_BELOW_LINE_MARKED 8

/**
 * The column `over_old_slab` of `pads` (in or mm): height over the old slab: the check.
 */
#define OVS_MARKS_PADS_OVER_OLD_SLAB 9

/**
 * The column `ground` of `pads`: what is known of the old slab there.
 */
#define OVS_MARKS_PADS_GROUND 10

/**
 * The result `forms`: the tops of the forms.
 */
#define OVS_MARKS_FORMS 6

/**
 * The column `mark` of `forms`: its number in the order of walking.
 */
#define OVS_MARKS_FORMS_MARK 0

/**
 * The column `edge` of `forms`: the edge it stands at.
 */
#define OVS_MARKS_FORMS_EDGE 1

/**
 * The column `name` of `forms`: what it is called, where it was asked for by name.
 */
#define OVS_MARKS_FORMS_NAME 2

/**
 * The column `along` of `forms` (ft or m): distance along the edge from where the walk meets it.
 */
#define OVS_MARKS_FORMS_ALONG 3

/**
 * The column `kind` of `forms`: what it is there for.
 */
#define OVS_MARKS_FORMS_KIND 4

/**
 * The column `x` of `forms` (ft or m): from the left.
 */
#define OVS_MARKS_FORMS_X 5

/**
 * The column `y` of `forms` (ft or m): from the front.
 */
#define OVS_MARKS_FORMS_Y 6

/**
 * The column `elevation` of `forms` (ft or m): the height that is set out, not rounded.
 */
#define OVS_MARKS_FORMS_ELEVATION 7

/**
 * The column `rod` of `forms` (ft or m): rod from the first set-up, not rounded.
 */
#define OVS_MARKS_FORMS_ROD 8

/**
 * The column `rod_marked` of `forms` (ft or m): that rod in whole steps.
 */
#define OVS_MARKS_FORMS_ROD_MARKED 9

/**
 * The column `below_line` of `forms` (ft or m): distance below the reference line, not rounded.
 */
#define OVS_MARKS_FORMS_BELOW_LINE 10

/**
 * The column `below_line_marked` of `forms` (ft or m): that distance in whole steps.
 */
#define OVS_MARKS_FORMS_BELOW_LINE_MARKED 11

/**
 * The column `over_old_slab` of `forms` (in or mm): height over the old slab: the check.
 */
#define OVS_MARKS_FORMS_OVER_OLD_SLAB 12

/**
 * The column `ground` of `forms`: what is known of the old slab there.
 */
#define OVS_MARKS_FORMS_GROUND 13

/**
 * The result `rails`: the tops of the rails.
 */
#define OVS_MARKS_RAILS 7

/**
 * The column `mark` of `rails`: its number in the order of walking.
 */
#define OVS_MARKS_RAILS_MARK 0

/**
 * The column `rail` of `rails`: the rail.
 */
#define OVS_MARKS_RAILS_RAIL 1

/**
 * The column `along` of `rails` (ft or m): distance along the rail from its first place.
 */
#define OVS_MARKS_RAILS_ALONG 2

/**
 * The column `kind` of `rails`: what it is there for.
 */
#define OVS_MARKS_RAILS_KIND 3

/**
 * The column `x` of `rails` (ft or m): from the left.
 */
#define OVS_MARKS_RAILS_X 4

/**
 * The column `y` of `rails` (ft or m): from the front.
 */
#define OVS_MARKS_RAILS_Y 5

/**
 * The column `elevation` of `rails` (ft or m): the height that is set out, not rounded.
 */
#define OVS_MARKS_RAILS_ELEVATION 6

/**
 * The column `rod` of `rails` (ft or m): rod from the first set-up, not rounded.
 */
#define OVS_MARKS_RAILS_ROD 7

/**
 * The column `rod_marked` of `rails` (ft or m): that rod in whole steps.
 */
#define OVS_MARKS_RAILS_ROD_MARKED 8

/**
 * The column `below_line` of `rails` (ft or m): distance below the reference line, not rounded.
 */
#define OVS_MARKS_RAILS_BELOW_LINE 9

/**
 * The column `below_line_marked` of `rails` (ft or m): that distance in whole steps.
 */
#define OVS_MARKS_RAILS_BELOW_LINE_MARKED 10

/**
 * The column `over_old_slab` of `rails` (in or mm): height over the old slab: the check.
 */
#define OVS_MARKS_RAILS_OVER_OLD_SLAB 11

/**
 * The column `ground` of `rails`: what is known of the old slab there.
 */
#define OVS_MARKS_RAILS_GROUND 12

/**
 * The result `rods`: every mark from every set-up.
 */
#define OVS_MARKS_RODS 8

/**
 * The column `mark` of `rods`: the number of the mark.
 */
#define OVS_MARKS_RODS_MARK 0

/**
 * The column `setup` of `rods`: the set-up.
 */
#define OVS_MARKS_RODS_SETUP 1

/**
 * The column `rod` of `rods` (ft or m): line of sight less height, not rounded.
 */
#define OVS_MARKS_RODS_ROD 2

/**
 * The column `rod_marked` of `rods` (ft or m): the same in whole steps.
 */
#define OVS_MARKS_RODS_ROD_MARKED 3

/**
 * The column `reach` of `rods`: whether the rod can be read there.
 */
#define OVS_MARKS_RODS_REACH 4

/**
 * The result `edges`: the edges.
 */
#define OVS_MARKS_EDGES 9

/**
 * The column `edge` of `edges`: its name.
 */
#define OVS_MARKS_EDGES_EDGE 0

/**
 * The column `material` of `edges`: what stands there.
 */
#define OVS_MARKS_EDGES_MATERIAL 1

/**
 * The column `length` of `edges` (ft or m): how long it is.
 */
#define OVS_MARKS_EDGES_LENGTH 2

/**
 * The column `level` of `edges`: whether the floor is level along it.
 */
#define OVS_MARKS_EDGES_LEVEL 3

/**
 * The column `least` of `edges` (in or mm): least height of the floor over the old slab along it.
 */
#define OVS_MARKS_EDGES_LEAST 4

/**
 * The column `least_along` of `edges` (ft or m): where the least is.
 */
#define OVS_MARKS_EDGES_LEAST_ALONG 5

/**
 * The column `greatest` of `edges` (in or mm): greatest height of the floor over the old slab along it.
 */
#define OVS_MARKS_EDGES_GREATEST 6

/**
 * The column `greatest_along` of `edges` (ft or m): where the greatest is.
 */
#define OVS_MARKS_EDGES_GREATEST_ALONG 7

/**
 * The result `rips`: what strips and forms are ripped to.
 */
#define OVS_MARKS_RIPS 10

/**
 * The column `edge` of `rips`: the edge.
 */
#define OVS_MARKS_RIPS_EDGE 0

/**
 * The column `material` of `rips`: what is ripped.
 */
#define OVS_MARKS_RIPS_MATERIAL 1

/**
 * The column `start` of `rips` (ft or m): where it starts, along the edge.
 */
#define OVS_MARKS_RIPS_START 2

/**
 * The column `end` of `rips` (ft or m): where it ends.
 */
#define OVS_MARKS_RIPS_END 3

/**
 * The column `length` of `rips` (ft or m): how long it is.
 */
#define OVS_MARKS_RIPS_LENGTH 4

/**
 * The column `height_start` of `rips` (in or mm): its height at the start.
 */
#define OVS_MARKS_RIPS_HEIGHT_START 5

/**
 * The column `height_end` of `rips` (in or mm): its height at the end.
 */
#define OVS_MARKS_RIPS_HEIGHT_END 6

/**
 * The result `lines`: the lines along which planes meet.
 */
#define OVS_MARKS_LINES 11

/**
 * The column `x_1` of `lines` (ft or m): one end, from the left.
 */
#define OVS_MARKS_LINES_X_1 0

/**
 * The column `y_1` of `lines` (ft or m): one end, from the front.
 */
#define OVS_MARKS_LINES_Y_1 1

/**
 * The column `elevation_1` of `lines` (ft or m): height of the floor at that end.
 */
#define OVS_MARKS_LINES_ELEVATION_1 2

/**
 * The column `mark_1` of `lines`: number of the mark there.
 */
#define OVS_MARKS_LINES_MARK_1 3

/**
 * The column `x_2` of `lines` (ft or m): other end, from the left.
 */
#define OVS_MARKS_LINES_X_2 4

/**
 * The column `y_2` of `lines` (ft or m): other end, from the front.
 */
#define OVS_MARKS_LINES_Y_2 5

/**
 * The column `elevation_2` of `lines` (ft or m): height of the floor at the other end.
 */
#define OVS_MARKS_LINES_ELEVATION_2 6

/**
 * The column `mark_2` of `lines`: number of the mark at the other end.
 */
#define OVS_MARKS_LINES_MARK_2 7

/**
 * The column `length` of `lines` (ft or m): how long the line is.
 */
#define OVS_MARKS_LINES_LENGTH 8

/**
 * The result `diagonals`: lengths from corner to corner.
 */
#define OVS_MARKS_DIAGONALS 12

/**
 * The column `mark_1` of `diagonals`: number of the mark at one corner.
 */
#define OVS_MARKS_DIAGONALS_MARK_1 0

/**
 * The column `mark_2` of `diagonals`: number of the mark at the corner across.
 */
#define OVS_MARKS_DIAGONALS_MARK_2 1

/**
 * The column `length` of `diagonals` (ft or m): how far apart they are.
 */
#define OVS_MARKS_DIAGONALS_LENGTH 2

/**
 * The result `csv`: all marks as a CSV file.
 */
#define OVS_MARKS_CSV 13

/**
 * The result `text`: the list for the site.
 */
#define OVS_MARKS_TEXT 14

/**
 * How many results there are.
 */
#define OVS_MARKS_RESULTS 15

/**
 * The word `corner`.
 */
#define OVS_MARKS_STATIONS_KIND_CORNER 0

/**
 * The word `point`.
 */
#define OVS_MARKS_STATIONS_KIND_POINT 1

/**
 * The word `break`.
 */
#define OVS_MARKS_STATIONS_KIND_BREAK 2

/**
 * The word `station`.
 */
#define OVS_MARKS_STATIONS_KIND_STATION 3

/**
 * The word `grid`.
 */
#define OVS_MARKS_STATIONS_KIND_GRID 4

/**
 * The word `facet_corner`.
 */
#define OVS_MARKS_STATIONS_KIND_FACET_CORNER 5

/**
 * The word `facet_line`.
 */
#define OVS_MARKS_STATIONS_KIND_FACET_LINE 6

/**
 * The word `surveyed`.
 */
#define OVS_MARKS_STATIONS_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_MARKS_STATIONS_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_MARKS_STATIONS_GROUND_BEYOND 2

/**
 * The word `corner`.
 */
#define OVS_MARKS_PADS_KIND_CORNER 0

/**
 * The word `point`.
 */
#define OVS_MARKS_PADS_KIND_POINT 1

/**
 * The word `break`.
 */
#define OVS_MARKS_PADS_KIND_BREAK 2

/**
 * The word `station`.
 */
#define OVS_MARKS_PADS_KIND_STATION 3

/**
 * The word `grid`.
 */
#define OVS_MARKS_PADS_KIND_GRID 4

/**
 * The word `facet_corner`.
 */
#define OVS_MARKS_PADS_KIND_FACET_CORNER 5

/**
 * The word `facet_line`.
 */
#define OVS_MARKS_PADS_KIND_FACET_LINE 6

/**
 * The word `surveyed`.
 */
#define OVS_MARKS_PADS_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_MARKS_PADS_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_MARKS_PADS_GROUND_BEYOND 2

/**
 * The word `corner`.
 */
#define OVS_MARKS_FORMS_KIND_CORNER 0

/**
 * The word `point`.
 */
#define OVS_MARKS_FORMS_KIND_POINT 1

/**
 * The word `break`.
 */
#define OVS_MARKS_FORMS_KIND_BREAK 2

/**
 * The word `station`.
 */
#define OVS_MARKS_FORMS_KIND_STATION 3

/**
 * The word `grid`.
 */
#define OVS_MARKS_FORMS_KIND_GRID 4

/**
 * The word `facet_corner`.
 */
#define OVS_MARKS_FORMS_KIND_FACET_CORNER 5

/**
 * The word `facet_line`.
 */
#define OVS_MARKS_FORMS_KIND_FACET_LINE 6

/**
 * The word `surveyed`.
 */
#define OVS_MARKS_FORMS_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_MARKS_FORMS_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_MARKS_FORMS_GROUND_BEYOND 2

/**
 * The word `corner`.
 */
#define OVS_MARKS_RAILS_KIND_CORNER 0

/**
 * The word `point`.
 */
#define OVS_MARKS_RAILS_KIND_POINT 1

/**
 * The word `break`.
 */
#define OVS_MARKS_RAILS_KIND_BREAK 2

/**
 * The word `station`.
 */
#define OVS_MARKS_RAILS_KIND_STATION 3

/**
 * The word `grid`.
 */
#define OVS_MARKS_RAILS_KIND_GRID 4

/**
 * The word `facet_corner`.
 */
#define OVS_MARKS_RAILS_KIND_FACET_CORNER 5

/**
 * The word `facet_line`.
 */
#define OVS_MARKS_RAILS_KIND_FACET_LINE 6

/**
 * The word `surveyed`.
 */
#define OVS_MARKS_RAILS_GROUND_SURVEYED 0

/**
 * The word `spanning`.
 */
#define OVS_MARKS_RAILS_GROUND_SPANNING 1

/**
 * The word `beyond`.
 */
#define OVS_MARKS_RAILS_GROUND_BEYOND 2

/**
 * The word `within`.
 */
#define OVS_MARKS_RODS_REACH_WITHIN 0

/**
 * The word `above_sight`.
 */
#define OVS_MARKS_RODS_REACH_ABOVE_SIGHT 1

/**
 * The word `beyond_rod`.
 */
#define OVS_MARKS_RODS_REACH_BEYOND_ROD 2

/**
 * The word `isolation_strip`.
 */
#define OVS_MARKS_EDGES_MATERIAL_ISOLATION_STRIP 0

/**
 * The word `form`.
 */
#define OVS_MARKS_EDGES_MATERIAL_FORM 1

/**
 * The word `no`.
 */
#define OVS_MARKS_EDGES_LEVEL_NO 0

/**
 * The word `yes`.
 */
#define OVS_MARKS_EDGES_LEVEL_YES 1

/**
 * The word `isolation_strip`.
 */
#define OVS_MARKS_RIPS_MATERIAL_ISOLATION_STRIP 0

/**
 * The word `form`.
 */
#define OVS_MARKS_RIPS_MATERIAL_FORM 1

/**
 * The result `difference` (in or mm): today less planned: what every rod moves by.
 */
#define OVS_MORNING_CHECK_DIFFERENCE 0

/**
 * The result `second_difference` (in or mm): the same of the second benchmark.
 */
#define OVS_MORNING_CHECK_SECOND_DIFFERENCE 1

/**
 * The result `verdict`: what follows.
 */
#define OVS_MORNING_CHECK_VERDICT 2

/**
 * The result `doubted`: which benchmark is in doubt.
 */
#define OVS_MORNING_CHECK_DOUBTED 3

/**
 * The result `today`: the rods of the marks today; none where nobody should pour.
 */
#define OVS_MORNING_CHECK_TODAY 4

/**
 * The column `rod` of `today` (ft or m): its rod today.
 */
#define OVS_MORNING_CHECK_TODAY_ROD 0

/**
 * The result `said`: a sentence for the crew.
 */
#define OVS_MORNING_CHECK_SAID 5

/**
 * How many results there are.
 */
#define OVS_MORNING_CHECK_RESULTS 6

/**
 * The word `no`.
 */
#define OVS_MORNING_CHECK_SAME_SETUP_NO 0

/**
 * The word `yes`.
 */
#define OVS_MORNING_CHECK_SAME_SETUP_YES 1

/**
 * The word `same`.
 */
#define OVS_MORNING_CHECK_VERDICT_SAME 0

/**
 * The word `agrees`.
 */
#define OVS_MORNING_CHECK_VERDICT_AGREES 1

/**
 * The word `shift`.
 */
#define OVS_MORNING_CHECK_VERDICT_SHIFT 2

/**
 * The word `stop`.
 */
#define OVS_MORNING_CHECK_VERDICT_STOP 3

/**
 * The word `none`.
 */
#define OVS_MORNING_CHECK_DOUBTED_NONE 0

/**
 * The word `first`.
 */
#define OVS_MORNING_CHECK_DOUBTED_FIRST 1

/**
 * The word `second`.
 */
#define OVS_MORNING_CHECK_DOUBTED_SECOND 2

/**
 * The word `either`.
 */
#define OVS_MORNING_CHECK_DOUBTED_EITHER 3

/**
 * The word `sound`.
 */
#define OVS_CONDITION_FACTOR_CONDITION_SOUND 0

/**
 * The word `few cracks, still`.
 */
#define OVS_CONDITION_FACTOR_CONDITION_FEW_CRACKS__STILL 1

/**
 * The word `badly cracked`.
 */
#define OVS_CONDITION_FACTOR_CONDITION_BADLY_CRACKED 2

/**
 * The result `least` (in or mm): least thickness anywhere.
 */
#define OVS_OVERLAY_MINIMUM_LEAST 0

/**
 * The result `largest_stone` (in or mm): largest stone for that thickness.
 */
#define OVS_OVERLAY_MINIMUM_LARGEST_STONE 1

/**
 * The result `greatest_usual` (in or mm): usual at most; none where stress alone decides.
 */
#define OVS_OVERLAY_MINIMUM_GREATEST_USUAL 2

/**
 * The result `between`: what goes between old and new.
 */
#define OVS_OVERLAY_MINIMUM_BETWEEN 3

/**
 * The result `means`: what that means for the floor.
 */
#define OVS_OVERLAY_MINIMUM_MEANS 4

/**
 * The result `rests_on`: the basis that decides, by name.
 */
#define OVS_OVERLAY_MINIMUM_RESTS_ON 5

/**
 * The result `rules`: every rule about it, with its source.
 */
#define OVS_OVERLAY_MINIMUM_RULES 6

/**
 * The column `least` of `rules` (in or mm): least thickness by this rule.
 */
#define OVS_OVERLAY_MINIMUM_RULES_LEAST 0

/**
 * The column `decides` of `rules`: whether it decides here.
 */
#define OVS_OVERLAY_MINIMUM_RULES_DECIDES 1

/**
 * The column `said` of `rules`: what it is about.
 */
#define OVS_OVERLAY_MINIMUM_RULES_SAID 2

/**
 * The column `basis` of `rules`: its basis, by name.
 */
#define OVS_OVERLAY_MINIMUM_RULES_BASIS 3

/**
 * The column `source` of `rules`: what the basis says and how far it was seen.
 */
#define OVS_OVERLAY_MINIMUM_RULES_SOURCE 4

/**
 * How many results there are.
 */
#define OVS_OVERLAY_MINIMUM_RESULTS 7

/**
 * The word `bonded`.
 */
#define OVS_OVERLAY_MINIMUM_BOND_BONDED 0

/**
 * The word `partly bonded`.
 */
#define OVS_OVERLAY_MINIMUM_BOND_PARTLY_BONDED 1

/**
 * The word `unbonded`.
 */
#define OVS_OVERLAY_MINIMUM_BOND_UNBONDED 2

/**
 * The word `people`.
 */
#define OVS_OVERLAY_MINIMUM_USED_PEOPLE 0

/**
 * The word `cars`.
 */
#define OVS_OVERLAY_MINIMUM_USED_CARS 1

/**
 * The word `trucks`.
 */
#define OVS_OVERLAY_MINIMUM_USED_TRUCKS 2

/**
 * The word `wash bay`.
 */
#define OVS_OVERLAY_MINIMUM_USED_WASH_BAY 3

/**
 * The word `jacks`.
 */
#define OVS_OVERLAY_MINIMUM_USED_JACKS 4

/**
 * The word `heavier`.
 */
#define OVS_OVERLAY_MINIMUM_USED_HEAVIER 5

/**
 * The word `no`.
 */
#define OVS_OVERLAY_MINIMUM_RULES_DECIDES_NO 0

/**
 * The word `yes`.
 */
#define OVS_OVERLAY_MINIMUM_RULES_DECIDES_YES 1

/**
 * The result `least`: smoothest profile.
 */
#define OVS_SURFACE_PROFILE_LEAST 0

/**
 * The result `greatest`: roughest profile.
 */
#define OVS_SURFACE_PROFILE_GREATEST 1

/**
 * The result `rests_on`: its basis, by name.
 */
#define OVS_SURFACE_PROFILE_RESTS_ON 2

/**
 * The result `ways`: the ways to these profiles.
 */
#define OVS_SURFACE_PROFILE_WAYS 3

/**
 * The column `profile` of `ways`: profile it makes.
 */
#define OVS_SURFACE_PROFILE_WAYS_PROFILE 0

/**
 * The column `way` of `ways`: what is done.
 */
#define OVS_SURFACE_PROFILE_WAYS_WAY 1

/**
 * The column `dust` of `ways`: whether it makes silica dust.
 */
#define OVS_SURFACE_PROFILE_WAYS_DUST 2

/**
 * How many results there are.
 */
#define OVS_SURFACE_PROFILE_RESULTS 4

/**
 * The word `sealer`.
 */
#define OVS_SURFACE_PROFILE_COVERING_SEALER 0

/**
 * The word `thin film`.
 */
#define OVS_SURFACE_PROFILE_COVERING_THIN_FILM 1

/**
 * The word `high-build coating`.
 */
#define OVS_SURFACE_PROFILE_COVERING_HIGH_BUILD_COATING 2

/**
 * The word `self-levelling`.
 */
#define OVS_SURFACE_PROFILE_COVERING_SELF_LEVELLING 3

/**
 * The word `polymer overlay`.
 */
#define OVS_SURFACE_PROFILE_COVERING_POLYMER_OVERLAY 4

/**
 * The word `concrete overlay`.
 */
#define OVS_SURFACE_PROFILE_COVERING_CONCRETE_OVERLAY 5

/**
 * The word `bonded topping`.
 */
#define OVS_SURFACE_PROFILE_COVERING_BONDED_TOPPING 6

/**
 * The word `no`.
 */
#define OVS_SURFACE_PROFILE_WAYS_DUST_NO 0

/**
 * The word `yes`.
 */
#define OVS_SURFACE_PROFILE_WAYS_DUST_YES 1

/**
 * The result `strength` (psi or MPa): pull-off strength.
 */
#define OVS_PULL_OFF_STRENGTH 0

/**
 * The result `verdict`: what the test says.
 */
#define OVS_PULL_OFF_VERDICT 1

/**
 * How many results there are.
 */
#define OVS_PULL_OFF_RESULTS 2

/**
 * The word `old concrete`.
 */
#define OVS_PULL_OFF_BROKE_OLD_CONCRETE 0

/**
 * The word `between`.
 */
#define OVS_PULL_OFF_BROKE_BETWEEN 1

/**
 * The word `overlay`.
 */
#define OVS_PULL_OFF_BROKE_OVERLAY 2

/**
 * The word `glue`.
 */
#define OVS_PULL_OFF_BROKE_GLUE 3

/**
 * The word `enough`.
 */
#define OVS_PULL_OFF_VERDICT_ENOUGH 0

/**
 * The word `too little`.
 */
#define OVS_PULL_OFF_VERDICT_TOO_LITTLE 1

/**
 * The word `void`.
 */
#define OVS_PULL_OFF_VERDICT_VOID 2

/**
 * The word `bonded`.
 */
#define OVS_OVERLAY_REQUIRED_BOND_BONDED 0

/**
 * The word `partly bonded`.
 */
#define OVS_OVERLAY_REQUIRED_BOND_PARTLY_BONDED 1

/**
 * The word `unbonded`.
 */
#define OVS_OVERLAY_REQUIRED_BOND_UNBONDED 2

/**
 * The word `bonded`.
 */
#define OVS_SLAB_EQUIVALENT_BOND_BONDED 0

/**
 * The word `partly bonded`.
 */
#define OVS_SLAB_EQUIVALENT_BOND_PARTLY_BONDED 1

/**
 * The word `unbonded`.
 */
#define OVS_SLAB_EQUIVALENT_BOND_UNBONDED 2

/**
 * The word `building code, 7.5`.
 */
#define OVS_CONCRETE_RUPTURE_FORMULA_BUILDING_CODE__7_5 0

/**
 * The word `floor design, 9`.
 */
#define OVS_CONCRETE_RUPTURE_FORMULA_FLOOR_DESIGN__9 1

/**
 * The word `FAA`.
 */
#define OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_FAA 0

/**
 * The word `Packard`.
 */
#define OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_PACKARD 1

/**
 * The word `IRC:58`.
 */
#define OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_IRC_58 2

/**
 * The word `lowest`.
 */
#define OVS_SUBGRADE_FROM_BEARING_RATIO_SOURCE_LOWEST 3

/**
 * The word `soft`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_SOFT 0

/**
 * The word `medium`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_MEDIUM 1

/**
 * The word `firm`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_FIRM 2

/**
 * The word `silt and clay`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_SILT_AND_CLAY 3

/**
 * The word `sand with silt or clay`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_SAND_WITH_SILT_OR_CLAY 4

/**
 * The word `clean sand and gravel`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_CLEAN_SAND_AND_GRAVEL 5

/**
 * The word `cement-treated subbase`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_CEMENT_TREATED_SUBBASE 6

/**
 * The word `old slab`.
 */
#define OVS_SUBGRADE_FROM_SOIL_SOIL_OLD_SLAB 7

/**
 * The word `granular`.
 */
#define OVS_SUBGRADE_WITH_SUBBASE_KIND_GRANULAR 0

/**
 * The word `cement-treated`.
 */
#define OVS_SUBGRADE_WITH_SUBBASE_KIND_CEMENT_TREATED 1

/**
 * The word `circle`.
 */
#define OVS_EDGE_LOAD_FOOTPRINT_CIRCLE 0

/**
 * The word `semicircle`.
 */
#define OVS_EDGE_LOAD_FOOTPRINT_SEMICIRCLE 1

/**
 * The word `Westergaard 1926`.
 */
#define OVS_CORNER_LOAD_FORMULA_WESTERGAARD_1926 0

/**
 * The word `Ioannides 1985`.
 */
#define OVS_CORNER_LOAD_FORMULA_IOANNIDES_1985 1

/**
 * The word `textbook, 2.58`.
 */
#define OVS_CORNER_CRACK_FORMULA_TEXTBOOK__2_58 0

/**
 * The word `Westergaard, 2.38`.
 */
#define OVS_CORNER_CRACK_FORMULA_WESTERGAARD__2_38 1

/**
 * The result `load` (lbf or kN): each load; none where only the maker can say.
 */
#define OVS_USUAL_LOAD_LOAD 0

/**
 * The result `margin` (1): what the load is multiplied by.
 */
#define OVS_USUAL_LOAD_MARGIN 1

/**
 * The result `design_load` (lbf or kN): the load with its margin; none without a load.
 */
#define OVS_USUAL_LOAD_DESIGN_LOAD 2

/**
 * The result `pressure` (psi or kPa): contact pressure; none without a load.
 */
#define OVS_USUAL_LOAD_PRESSURE 3

/**
 * The result `radius` (in or mm): contact radius under the load with its margin; none without a load.
 */
#define OVS_USUAL_LOAD_RADIUS 4

/**
 * The result `count`: how many stand near one another.
 */
#define OVS_USUAL_LOAD_COUNT 5

/**
 * The result `spacing` (in or mm): middle to middle.
 */
#define OVS_USUAL_LOAD_SPACING 6

/**
 * The result `said`: what was taken, or what to ask.
 */
#define OVS_USUAL_LOAD_SAID 7

/**
 * The result `rests_on`: its basis, by name.
 */
#define OVS_USUAL_LOAD_RESTS_ON 8

/**
 * How many results there are.
 */
#define OVS_USUAL_LOAD_RESULTS 9

/**
 * The word `car`.
 */
#define OVS_USUAL_LOAD_THING_CAR 0

/**
 * The word `pickup`.
 */
#define OVS_USUAL_LOAD_THING_PICKUP 1

/**
 * The word `loaded one-ton`.
 */
#define OVS_USUAL_LOAD_THING_LOADED_ONE_TON 2

/**
 * The word `farm tractor`.
 */
#define OVS_USUAL_LOAD_THING_FARM_TRACTOR 3

/**
 * The word `skid machine`.
 */
#define OVS_USUAL_LOAD_THING_SKID_MACHINE 4

/**
 * The word `bench`.
 */
#define OVS_USUAL_LOAD_THING_BENCH 5

/**
 * The word `kiln`.
 */
#define OVS_USUAL_LOAD_THING_KILN 6

/**
 * The word `two jacks`.
 */
#define OVS_USUAL_LOAD_THING_TWO_JACKS 7

/**
 * The word `anchored lift`.
 */
#define OVS_USUAL_LOAD_THING_ANCHORED_LIFT 8

/**
 * The result `stiffness` (in or mm): radius of relative stiffness.
 */
#define OVS_SLAB_STRESS_STIFFNESS 0

/**
 * The result `equivalent` (in or mm): thickness of the plate that was figured.
 */
#define OVS_SLAB_STRESS_EQUIVALENT 1

/**
 * The result `greatest` (psi or MPa): greatest governing stress of that plate.
 */
#define OVS_SLAB_STRESS_GREATEST 2

/**
 * The result `governs`: under which load, the first being 1.
 */
#define OVS_SLAB_STRESS_GOVERNS 3

/**
 * The result `felt`: what each load feels.
 */
#define OVS_SLAB_STRESS_FELT 4

/**
 * The column `name` of `felt`: which load.
 */
#define OVS_SLAB_STRESS_FELT_NAME 0

/**
 * The column `alone` of `felt` (psi or MPa): stress from it by itself.
 */
#define OVS_SLAB_STRESS_FELT_ALONE 1

/**
 * The column `together` of `felt` (psi or MPa): stress with all the others.
 */
#define OVS_SLAB_STRESS_FELT_TOGETHER 2

/**
 * The column `governing` of `felt` (psi or MPa): larger of both: loads come and go.
 */
#define OVS_SLAB_STRESS_FELT_GOVERNING 3

/**
 * The column `deflection` of `felt` (in or mm): settlement with all the others.
 */
#define OVS_SLAB_STRESS_FELT_DEFLECTION 4

/**
 * The column `overlay_bottom` of `felt` (psi or MPa): governing stress at the bottom of the overlay, tension
 * positive; none without an old slab.
 */
#define OVS_SLAB_STRESS_FELT_OVERLAY_BOTTOM 5

/**
 * The column `old_bottom` of `felt` (psi or MPa): old slab, governing stress at its bottom; none without an old
 * slab.
 */
#define OVS_SLAB_STRESS_FELT_OLD_BOTTOM 6

/**
 * How many results there are.
 */
#define OVS_SLAB_STRESS_RESULTS 5

/**
 * The word `interior`.
 */
#define OVS_SLAB_STRESS_LOADS_POSITION_INTERIOR 0

/**
 * The word `edge`.
 */
#define OVS_SLAB_STRESS_LOADS_POSITION_EDGE 1

/**
 * The word `corner`.
 */
#define OVS_SLAB_STRESS_LOADS_POSITION_CORNER 2

/**
 * The word `circle`.
 */
#define OVS_SLAB_STRESS_EDGE_FORM_CIRCLE 0

/**
 * The word `semicircle`.
 */
#define OVS_SLAB_STRESS_EDGE_FORM_SEMICIRCLE 1

/**
 * The word `Westergaard 1926`.
 */
#define OVS_SLAB_STRESS_CORNER_FORM_WESTERGAARD_1926 0

/**
 * The word `Ioannides 1985`.
 */
#define OVS_SLAB_STRESS_CORNER_FORM_IOANNIDES_1985 1

/**
 * The word `bonded`.
 */
#define OVS_SLAB_STRESS_BOND_BONDED 0

/**
 * The word `partly bonded`.
 */
#define OVS_SLAB_STRESS_BOND_PARTLY_BONDED 1

/**
 * The word `unbonded`.
 */
#define OVS_SLAB_STRESS_BOND_UNBONDED 2

/**
 * The word `moving wheel`.
 */
#define OVS_SAFETY_FACTORS_KIND_MOVING_WHEEL 0

/**
 * The word `wheel, unlimited passes`.
 */
#define OVS_SAFETY_FACTORS_KIND_WHEEL__UNLIMITED_PASSES 1

/**
 * The word `post or jack`.
 */
#define OVS_SAFETY_FACTORS_KIND_POST_OR_JACK 2

/**
 * The word `uniform`.
 */
#define OVS_SAFETY_FACTORS_KIND_UNIFORM 3

/**
 * The word `wall`.
 */
#define OVS_SAFETY_FACTORS_KIND_WALL 4

/**
 * The word `interior`.
 */
#define OVS_ALLOWABLE_LOAD_POSITION_INTERIOR 0

/**
 * The word `edge`.
 */
#define OVS_ALLOWABLE_LOAD_POSITION_EDGE 1

/**
 * The word `corner`.
 */
#define OVS_ALLOWABLE_LOAD_POSITION_CORNER 2

/**
 * The result `unlimited`: whether there is no limit.
 */
#define OVS_REPETITIONS_ALLOWED_UNLIMITED 0

/**
 * The result `repetitions` (1): how often; none where there is no limit.
 */
#define OVS_REPETITIONS_ALLOWED_REPETITIONS 1

/**
 * How many results there are.
 */
#define OVS_REPETITIONS_ALLOWED_RESULTS 2

/**
 * The word `no`.
 */
#define OVS_REPETITIONS_ALLOWED_UNLIMITED_NO 0

/**
 * The word `yes`.
 */
#define OVS_REPETITIONS_ALLOWED_UNLIMITED_YES 1

/**
 * The result `thickness` (in or mm): smallest thickness.
 */
#define OVS_THICKNESS_NEEDED_THICKNESS 0

/**
 * The result `stress` (psi or MPa): governing stress there.
 */
#define OVS_THICKNESS_NEEDED_STRESS 1

/**
 * The result `allowable` (psi or MPa): stress allowed.
 */
#define OVS_THICKNESS_NEEDED_ALLOWABLE 2

/**
 * The result `governs`: the load that governs, the first being 1.
 */
#define OVS_THICKNESS_NEEDED_GOVERNS 3

/**
 * How many results there are.
 */
#define OVS_THICKNESS_NEEDED_RESULTS 4

/**
 * The word `interior`.
 */
#define OVS_THICKNESS_NEEDED_LOADS_POSITION_INTERIOR 0

/**
 * The word `edge`.
 */
#define OVS_THICKNESS_NEEDED_LOADS_POSITION_EDGE 1

/**
 * The word `corner`.
 */
#define OVS_THICKNESS_NEEDED_LOADS_POSITION_CORNER 2

/**
 * The word `circle`.
 */
#define OVS_THICKNESS_NEEDED_EDGE_FORM_CIRCLE 0

/**
 * The word `semicircle`.
 */
#define OVS_THICKNESS_NEEDED_EDGE_FORM_SEMICIRCLE 1

/**
 * The word `Westergaard 1926`.
 */
#define OVS_THICKNESS_NEEDED_CORNER_FORM_WESTERGAARD_1926 0

/**
 * The word `Ioannides 1985`.
 */
#define OVS_THICKNESS_NEEDED_CORNER_FORM_IOANNIDES_1985 1

/**
 * The word `middle or doweled joint`.
 */
#define OVS_WALL_LOAD_PLACE_MIDDLE_OR_DOWELED_JOINT 0

/**
 * The word `free edge`.
 */
#define OVS_WALL_LOAD_PLACE_FREE_EDGE 1

/**
 * The word `bonded`.
 */
#define OVS_TWO_LAYERS_BOND_BONDED 0

/**
 * The word `partly bonded`.
 */
#define OVS_TWO_LAYERS_BOND_PARTLY_BONDED 1

/**
 * The word `unbonded`.
 */
#define OVS_TWO_LAYERS_BOND_UNBONDED 2

/**
 * The word `ground`.
 */
#define OVS_ADDED_WEIGHT_SUPPORT_GROUND 0

/**
 * The word `suspended`.
 */
#define OVS_ADDED_WEIGHT_SUPPORT_SUSPENDED 1

/**
 * The word `unknown`.
 */
#define OVS_ADDED_WEIGHT_SUPPORT_UNKNOWN 2

/**
 * The word `go on`.
 */
#define OVS_ADDED_WEIGHT_NEXT_GO_ON 0

/**
 * The word `find out`.
 */
#define OVS_ADDED_WEIGHT_NEXT_FIND_OUT 1

/**
 * The word `stop`.
 */
#define OVS_ADDED_WEIGHT_NEXT_STOP 2

/**
 * The result `net` (yd3 or m3): sum of what is poured.
 */
#define OVS_ORDER_NET 0

/**
 * The result `figured` (yd3 or m3): net volume and allowances.
 */
#define OVS_ORDER_FIGURED 1

/**
 * The result `ordered` (yd3 or m3): figured volume rounded up to the step.
 */
#define OVS_ORDER_ORDERED 2

/**
 * The result `spare` (yd3 or m3): ordered over figured.
 */
#define OVS_ORDER_SPARE 3

/**
 * The result `loads`: truck loads.
 */
#define OVS_ORDER_LOADS 4

/**
 * The result `last` (yd3 or m3): what the last truck carries.
 */
#define OVS_ORDER_LAST 5

/**
 * The result `allowed`: each allowance as a volume.
 */
#define OVS_ORDER_ALLOWED 6

/**
 * The column `name` of `allowed`: what it is for.
 */
#define OVS_ORDER_ALLOWED_NAME 0

/**
 * The column `volume` of `allowed` (yd3 or m3): how much.
 */
#define OVS_ORDER_ALLOWED_VOLUME 1

/**
 * How many results there are.
 */
#define OVS_ORDER_RESULTS 7

/**
 * The result `ff` (1): flatness; none for a perfect line.
 */
#define OVS_FLATNESS_LINE_FF 0

/**
 * The result `fl` (1): levelness; none for fewer than 12 readings and for a level line.
 */
#define OVS_FLATNESS_LINE_FL 1

/**
 * The result `length` (ft or m): length of the line.
 */
#define OVS_FLATNESS_LINE_LENGTH 2

/**
 * The result `q_count`: how many bends.
 */
#define OVS_FLATNESS_LINE_Q_COUNT 3

/**
 * The result `q_mean` (in or mm): their mean.
 */
#define OVS_FLATNESS_LINE_Q_MEAN 4

/**
 * The result `q_deviation` (in or mm): their standard deviation.
 */
#define OVS_FLATNESS_LINE_Q_DEVIATION 5

/**
 * The result `z_count`: how many rises over ten spacings.
 */
#define OVS_FLATNESS_LINE_Z_COUNT 6

/**
 * The result `z_mean` (in or mm): their mean.
 */
#define OVS_FLATNESS_LINE_Z_MEAN 7

/**
 * The result `z_deviation` (in or mm): their standard deviation; none of fewer than two.
 */
#define OVS_FLATNESS_LINE_Z_DEVIATION 8

/**
 * The result `q`: the bends.
 */
#define OVS_FLATNESS_LINE_Q 9

/**
 * The column `q` of `q` (in or mm): the bend.
 */
#define OVS_FLATNESS_LINE_Q_Q 0

/**
 * The result `z`: the rises over ten spacings.
 */
#define OVS_FLATNESS_LINE_Z 10

/**
 * The column `z` of `z` (in or mm): the rise.
 */
#define OVS_FLATNESS_LINE_Z_Z 0

/**
 * How many results there are.
 */
#define OVS_FLATNESS_LINE_RESULTS 11

/**
 * The word `4.57 in`.
 */
#define OVS_FLATNESS_LINE_FACTOR_4_57_IN 0

/**
 * The word `115.8 mm`.
 */
#define OVS_FLATNESS_LINE_FACTOR_115_8_MM 1

/**
 * The result `ff` (1): flatness over all.
 */
#define OVS_FLATNESS_FF 0

/**
 * The result `fl` (1): levelness over all.
 */
#define OVS_FLATNESS_FL 1

/**
 * The result `asked_ff` (1): flatness asked over all.
 */
#define OVS_FLATNESS_ASKED_FF 2

/**
 * The result `asked_fl` (1): levelness asked over all.
 */
#define OVS_FLATNESS_ASKED_FL 3

/**
 * The result `local_ff` (1): flatness asked of every section.
 */
#define OVS_FLATNESS_LOCAL_FF 4

/**
 * The result `local_fl` (1): levelness asked of every section.
 */
#define OVS_FLATNESS_LOCAL_FL 5

/**
 * The result `ff_verdict`: flatness over all against what is asked.
 */
#define OVS_FLATNESS_FF_VERDICT 6

/**
 * The result `fl_verdict`: levelness over all against what is asked.
 */
#define OVS_FLATNESS_FL_VERDICT 7

/**
 * The result `lines`: the lines.
 */
#define OVS_FLATNESS_LINES 8

/**
 * The column `line` of `lines`: its name.
 */
#define OVS_FLATNESS_LINES_LINE 0

/**
 * The column `section` of `lines`: the part of the floor it lies in.
 */
#define OVS_FLATNESS_LINES_SECTION 1

/**
 * The column `readings` of `lines`: how many readings.
 */
#define OVS_FLATNESS_LINES_READINGS 2

/**
 * The column `q_count` of `lines`: how many bends count.
 */
#define OVS_FLATNESS_LINES_Q_COUNT 3

/**
 * The column `z_count` of `lines`: how many rises over ten spacings.
 */
#define OVS_FLATNESS_LINES_Z_COUNT 4

/**
 * The column `ff` of `lines` (1): flatness; none for a perfect line.
 */
#define OVS_FLATNESS_LINES_FF 5

/**
 * The column `fl` of `lines` (1): levelness; none of few readings, and on a floor that falls.
 */
#define OVS_FLATNESS_LINES_FL 6

/**
 * The column `left_out` of `lines`: bends left out because the plan bends there.
 */
#define OVS_FLATNESS_LINES_LEFT_OUT 7

/**
 * The result `of_sections`: the parts of the floor.
 */
#define OVS_FLATNESS_OF_SECTIONS 9

/**
 * The column `section` of `of_sections`: its name; none where the floor is one part.
 */
#define OVS_FLATNESS_OF_SECTIONS_SECTION 0

/**
 * The column `area` of `of_sections` (ft2 or m2): its area.
 */
#define OVS_FLATNESS_OF_SECTIONS_AREA 1

/**
 * The column `lines` of `of_sections`: how many lines.
 */
#define OVS_FLATNESS_OF_SECTIONS_LINES 2

/**
 * The column `z_count` of `of_sections`: how many rises over ten spacings.
 */
#define OVS_FLATNESS_OF_SECTIONS_Z_COUNT 3

/**
 * The column `z_least` of `of_sections`: the fewest of them the standard judges by.
 */
#define OVS_FLATNESS_OF_SECTIONS_Z_LEAST 4

/**
 * The column `ff` of `of_sections` (1): flatness.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF 5

/**
 * The column `fl` of `of_sections` (1): levelness.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL 6

/**
 * The column `ff_verdict` of `of_sections`: flatness against 3/5 of what is asked over all.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF_VERDICT 7

/**
 * The column `fl_verdict` of `of_sections`: levelness against 3/5 of what is asked over all.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL_VERDICT 8

/**
 * How many results there are.
 */
#define OVS_FLATNESS_RESULTS 10

/**
 * The word `4.57 in`.
 */
#define OVS_FLATNESS_FACTOR_4_57_IN 0

/**
 * The word `115.8 mm`.
 */
#define OVS_FLATNESS_FACTOR_115_8_MM 1

/**
 * The word `conventional`.
 */
#define OVS_FLATNESS_FLATNESS_CLASS_CONVENTIONAL 0

/**
 * The word `moderately flat`.
 */
#define OVS_FLATNESS_FLATNESS_CLASS_MODERATELY_FLAT 1

/**
 * The word `flat`.
 */
#define OVS_FLATNESS_FLATNESS_CLASS_FLAT 2

/**
 * The word `very flat`.
 */
#define OVS_FLATNESS_FLATNESS_CLASS_VERY_FLAT 3

/**
 * The word `super flat`.
 */
#define OVS_FLATNESS_FLATNESS_CLASS_SUPER_FLAT 4

/**
 * The word `no`.
 */
#define OVS_FLATNESS_FALLS_NO 0

/**
 * The word `yes`.
 */
#define OVS_FLATNESS_FALLS_YES 1

/**
 * The word `meets`.
 */
#define OVS_FLATNESS_FF_VERDICT_MEETS 0

/**
 * The word `short`.
 */
#define OVS_FLATNESS_FF_VERDICT_SHORT 1

/**
 * The word `too few to judge`.
 */
#define OVS_FLATNESS_FF_VERDICT_TOO_FEW_TO_JUDGE 2

/**
 * The word `confirm locally`.
 */
#define OVS_FLATNESS_FF_VERDICT_CONFIRM_LOCALLY 3

/**
 * The word `meets`.
 */
#define OVS_FLATNESS_FL_VERDICT_MEETS 0

/**
 * The word `short`.
 */
#define OVS_FLATNESS_FL_VERDICT_SHORT 1

/**
 * The word `too few to judge`.
 */
#define OVS_FLATNESS_FL_VERDICT_TOO_FEW_TO_JUDGE 2

/**
 * The word `confirm locally`.
 */
#define OVS_FLATNESS_FL_VERDICT_CONFIRM_LOCALLY 3

/**
 * The word `meets`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_MEETS 0

/**
 * The word `short`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_SHORT 1

/**
 * The word `too few to judge`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_TOO_FEW_TO_JUDGE 2

/**
 * The word `confirm locally`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FF_VERDICT_CONFIRM_LOCALLY 3

/**
 * The word `meets`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_MEETS 0

/**
 * The word `short`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_SHORT 1

/**
 * The word `too few to judge`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_TOO_FEW_TO_JUDGE 2

/**
 * The word `confirm locally`.
 */
#define OVS_FLATNESS_OF_SECTIONS_FL_VERDICT_CONFIRM_LOCALLY 3

/**
 * The result `number` (1): the number for all.
 */
#define OVS_FLATNESS_COMBINED_NUMBER 0

/**
 * How many results there are.
 */
#define OVS_FLATNESS_COMBINED_RESULTS 1

/**
 * The result `gap` (in or mm): the greatest gap.
 */
#define OVS_STRAIGHTEDGE_GAP 0

/**
 * The result `gap_at` (ft or m): where it is.
 */
#define OVS_STRAIGHTEDGE_GAP_AT 1

/**
 * The result `rest_1` (ft or m): first place the straightedge rests there.
 */
#define OVS_STRAIGHTEDGE_REST_1 2

/**
 * The result `rest_2` (ft or m): second place it rests there.
 */
#define OVS_STRAIGHTEDGE_REST_2 3

/**
 * The result `count`: how often it was laid down.
 */
#define OVS_STRAIGHTEDGE_COUNT 4

/**
 * The result `about_ff` (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in.
 */
#define OVS_STRAIGHTEDGE_ABOUT_FF 5

/**
 * The result `within_most` (%): share of gaps within what nine in ten must keep.
 */
#define OVS_STRAIGHTEDGE_WITHIN_MOST 6

/**
 * The result `within_all` (%): share of gaps within what all must keep.
 */
#define OVS_STRAIGHTEDGE_WITHIN_ALL 7

/**
 * The result `verdict`: whether the class is kept.
 */
#define OVS_STRAIGHTEDGE_VERDICT 8

/**
 * The result `placements`: the straightedge laid down from each reading on.
 */
#define OVS_STRAIGHTEDGE_PLACEMENTS 9

/**
 * The column `start` of `placements` (ft or m): where its end is.
 */
#define OVS_STRAIGHTEDGE_PLACEMENTS_START 0

/**
 * The column `gap` of `placements` (in or mm): greatest gap under it.
 */
#define OVS_STRAIGHTEDGE_PLACEMENTS_GAP 1

/**
 * The column `at` of `placements` (ft or m): place of that gap.
 */
#define OVS_STRAIGHTEDGE_PLACEMENTS_AT 2

/**
 * How many results there are.
 */
#define OVS_STRAIGHTEDGE_RESULTS 10

/**
 * The word `conventional`.
 */
#define OVS_STRAIGHTEDGE_FLATNESS_CLASS_CONVENTIONAL 0

/**
 * The word `moderately flat`.
 */
#define OVS_STRAIGHTEDGE_FLATNESS_CLASS_MODERATELY_FLAT 1

/**
 * The word `flat`.
 */
#define OVS_STRAIGHTEDGE_FLATNESS_CLASS_FLAT 2

/**
 * The word `meets`.
 */
#define OVS_STRAIGHTEDGE_VERDICT_MEETS 0

/**
 * The word `short`.
 */
#define OVS_STRAIGHTEDGE_VERDICT_SHORT 1

/**
 * The word `too few to judge`.
 */
#define OVS_STRAIGHTEDGE_VERDICT_TOO_FEW_TO_JUDGE 2

/**
 * The word `confirm locally`.
 */
#define OVS_STRAIGHTEDGE_VERDICT_CONFIRM_LOCALLY 3

/**
 * The result `count`: how many shots on the work.
 */
#define OVS_AS_BUILT_COUNT 0

/**
 * The result `missed`: how many of them are off by more than the tolerance.
 */
#define OVS_AS_BUILT_MISSED 1

/**
 * The result `mean_deviation` (in or mm): mean of shot less planned; positive is high.
 */
#define OVS_AS_BUILT_MEAN_DEVIATION 2

/**
 * The result `deviation` (in or mm): standard deviation of shot less planned; none of one shot.
 */
#define OVS_AS_BUILT_DEVIATION 3

/**
 * The result `highest` (in or mm): greatest of shot less planned.
 */
#define OVS_AS_BUILT_HIGHEST 4

/**
 * The result `lowest` (in or mm): least of shot less planned.
 */
#define OVS_AS_BUILT_LOWEST 5

/**
 * The result `mean_over_area` (in or mm): mean over the area of new floor less plan.
 */
#define OVS_AS_BUILT_MEAN_OVER_AREA 6

/**
 * The result `thickness_mean` (in or mm): mean thickness got.
 */
#define OVS_AS_BUILT_THICKNESS_MEAN 7

/**
 * The result `thickness_least` (in or mm): least thickness got.
 */
#define OVS_AS_BUILT_THICKNESS_LEAST 8

/**
 * The result `least_x` (ft or m): where it is, from the left.
 */
#define OVS_AS_BUILT_LEAST_X 9

/**
 * The result `least_y` (ft or m): where it is, from the front.
 */
#define OVS_AS_BUILT_LEAST_Y 10

/**
 * The result `least_measured` (in or mm): least thickness got between the shots of the old slab.
 */
#define OVS_AS_BUILT_LEAST_MEASURED 11

/**
 * The result `thickness_greatest` (in or mm): greatest thickness got.
 */
#define OVS_AS_BUILT_THICKNESS_GREATEST 12

/**
 * The result `greatest_x` (ft or m): where that is, from the left.
 */
#define OVS_AS_BUILT_GREATEST_X 13

/**
 * The result `greatest_y` (ft or m): where that is, from the front.
 */
#define OVS_AS_BUILT_GREATEST_Y 14

/**
 * The result `thinner` (ft2 or m2): area thinner than the least allowed, or else than specified.
 */
#define OVS_AS_BUILT_THINNER 15

/**
 * The result `planned_mean` (in or mm): mean thickness planned.
 */
#define OVS_AS_BUILT_PLANNED_MEAN 16

/**
 * The result `planned_volume` (yd3 or m3): concrete figured.
 */
#define OVS_AS_BUILT_PLANNED_VOLUME 17

/**
 * The result `volume` (yd3 or m3): concrete in place, between old slab and new floor.
 */
#define OVS_AS_BUILT_VOLUME 18

/**
 * The result `used` (yd3 or m3): concrete used: what came less what was left over.
 */
#define OVS_AS_BUILT_USED 19

/**
 * The result `unaccounted` (yd3 or m3): used less in place.
 */
#define OVS_AS_BUILT_UNACCOUNTED 20

/**
 * The result `used_over_planned` (1): used over figured.
 */
#define OVS_AS_BUILT_USED_OVER_PLANNED 21

/**
 * The result `said`: all of it in a few sentences: what holds, what does not, what to mend.
 */
#define OVS_AS_BUILT_SAID 22

/**
 * The result `checks`: what was asked, and whether it was kept.
 */
#define OVS_AS_BUILT_CHECKS 23

/**
 * The column `about` of `checks`: what it is about.
 */
#define OVS_AS_BUILT_CHECKS_ABOUT 0

/**
 * The column `verdict` of `checks`: whether it is kept.
 */
#define OVS_AS_BUILT_CHECKS_VERDICT 1

/**
 * The column `said` of `checks`: the finding in words.
 */
#define OVS_AS_BUILT_CHECKS_SAID 2

/**
 * The column `basis` of `checks`: name of where the limit comes from.
 */
#define OVS_AS_BUILT_CHECKS_BASIS 3

/**
 * The result `deviations`: the shots beside the plan.
 */
#define OVS_AS_BUILT_DEVIATIONS 24

/**
 * The column `name` of `deviations`: its name.
 */
#define OVS_AS_BUILT_DEVIATIONS_NAME 0

/**
 * The column `x` of `deviations` (ft or m): distance from the left.
 */
#define OVS_AS_BUILT_DEVIATIONS_X 1

/**
 * The column `y` of `deviations` (ft or m): distance from the front.
 */
#define OVS_AS_BUILT_DEVIATIONS_Y 2

/**
 * The column `elevation` of `deviations` (ft or m): height as shot.
 */
#define OVS_AS_BUILT_DEVIATIONS_ELEVATION 3

/**
 * The column `planned` of `deviations` (ft or m): height as planned.
 */
#define OVS_AS_BUILT_DEVIATIONS_PLANNED 4

/**
 * The column `deviation` of `deviations` (in or mm): shot less planned; positive is high.
 */
#define OVS_AS_BUILT_DEVIATIONS_DEVIATION 5

/**
 * The column `missed` of `deviations`: off by more than the tolerance or not.
 */
#define OVS_AS_BUILT_DEVIATIONS_MISSED 6

/**
 * The result `falls`: the slopes got.
 */
#define OVS_AS_BUILT_FALLS 25

/**
 * The column `facet` of `falls`: its name; none under one plane.
 */
#define OVS_AS_BUILT_FALLS_FACET 0

/**
 * The column `shots` of `falls`: how many shots lie on it.
 */
#define OVS_AS_BUILT_FALLS_SHOTS 1

/**
 * The column `planned` of `falls` (in/ft or %): fall as planned.
 */
#define OVS_AS_BUILT_FALLS_PLANNED 2

/**
 * The column `got` of `falls` (in/ft or %): fall built that way; negative where it rises, none of too few shots.
 */
#define OVS_AS_BUILT_FALLS_GOT 3

/**
 * The column `steepest` of `falls` (in/ft or %): steepest fall built, any way.
 */
#define OVS_AS_BUILT_FALLS_STEEPEST 4

/**
 * The column `unevenness` of `falls` (in or mm): root of the mean squared distance of the shots from their plane.
 */
#define OVS_AS_BUILT_FALLS_UNEVENNESS 5

/**
 * The result `ponds`: where water stands.
 */
#define OVS_AS_BUILT_PONDS 26

/**
 * The column `level` of `ponds` (ft or m): level of the water.
 */
#define OVS_AS_BUILT_PONDS_LEVEL 0

/**
 * The column `area` of `ponds` (ft2 or m2): area under water.
 */
#define OVS_AS_BUILT_PONDS_AREA 1

/**
 * The column `volume` of `ponds` (ft3 or m3): water in it.
 */
#define OVS_AS_BUILT_PONDS_VOLUME 2

/**
 * The column `depth` of `ponds` (in or mm): greatest depth.
 */
#define OVS_AS_BUILT_PONDS_DEPTH 3

/**
 * The column `deepest_x` of `ponds` (ft or m): where it is deepest, from the left.
 */
#define OVS_AS_BUILT_PONDS_DEEPEST_X 4

/**
 * The column `deepest_y` of `ponds` (ft or m): where it is deepest, from the front.
 */
#define OVS_AS_BUILT_PONDS_DEEPEST_Y 5

/**
 * The column `spill_x` of `ponds` (ft or m): where the water spills, from the left.
 */
#define OVS_AS_BUILT_PONDS_SPILL_X 6

/**
 * The column `spill_y` of `ponds` (ft or m): where the water spills, from the front.
 */
#define OVS_AS_BUILT_PONDS_SPILL_Y 7

/**
 * The column `outlet` of `ponds`: edge or drain that takes the water there; none where it runs on over a saddle.
 */
#define OVS_AS_BUILT_PONDS_OUTLET 8

/**
 * The result `seen`: the puddles seen beside the water of the shots.
 */
#define OVS_AS_BUILT_SEEN 27

/**
 * The column `x` of `seen` (ft or m): distance from the left.
 */
#define OVS_AS_BUILT_SEEN_X 0

/**
 * The column `y` of `seen` (ft or m): distance from the front.
 */
#define OVS_AS_BUILT_SEEN_Y 1

/**
 * The column `depth` of `seen` (in or mm): depth as measured.
 */
#define OVS_AS_BUILT_SEEN_DEPTH 2

/**
 * The column `by_shots` of `seen` (in or mm): water that the shots show there; 0 where they show none.
 */
#define OVS_AS_BUILT_SEEN_BY_SHOTS 3

/**
 * The result `mends`: what to mend.
 */
#define OVS_AS_BUILT_MENDS 28

/**
 * The column `work` of `mends`: ground down or filled up.
 */
#define OVS_AS_BUILT_MENDS_WORK 0

/**
 * The column `x` of `mends` (ft or m): distance from the left.
 */
#define OVS_AS_BUILT_MENDS_X 1

/**
 * The column `y` of `mends` (ft or m): distance from the front.
 */
#define OVS_AS_BUILT_MENDS_Y 2

/**
 * The column `shot` of `mends`: the shot it is at; none for a puddle.
 */
#define OVS_AS_BUILT_MENDS_SHOT 3

/**
 * The column `depth` of `mends` (in or mm): down or up to the plan, or to where water runs off.
 */
#define OVS_AS_BUILT_MENDS_DEPTH 4

/**
 * The column `area` of `mends` (ft2 or m2): size of a puddle.
 */
#define OVS_AS_BUILT_MENDS_AREA 5

/**
 * The column `said` of `mends`: in words.
 */
#define OVS_AS_BUILT_MENDS_SAID 6

/**
 * How many results there are.
 */
#define OVS_AS_BUILT_RESULTS 29

/**
 * The word `trowelled`.
 */
#define OVS_AS_BUILT_SURFACE_TROWELLED 0

/**
 * The word `broomed`.
 */
#define OVS_AS_BUILT_SURFACE_BROOMED 1

/**
 * The word `outdoors`.
 */
#define OVS_AS_BUILT_SURFACE_OUTDOORS 2

/**
 * The word `open`.
 */
#define OVS_AS_BUILT_EDGES_STATE_OPEN 0

/**
 * The word `walled`.
 */
#define OVS_AS_BUILT_EDGES_STATE_WALLED 1

/**
 * The word `drained`.
 */
#define OVS_AS_BUILT_EDGES_STATE_DRAINED 2

/**
 * The word `pass`.
 */
#define OVS_AS_BUILT_CHECKS_VERDICT_PASS 0

/**
 * The word `fail`.
 */
#define OVS_AS_BUILT_CHECKS_VERDICT_FAIL 1

/**
 * The word `confirm locally`.
 */
#define OVS_AS_BUILT_CHECKS_VERDICT_CONFIRM_LOCALLY 2

/**
 * The word `no`.
 */
#define OVS_AS_BUILT_DEVIATIONS_MISSED_NO 0

/**
 * The word `yes`.
 */
#define OVS_AS_BUILT_DEVIATIONS_MISSED_YES 1

/**
 * The word `grind`.
 */
#define OVS_AS_BUILT_MENDS_WORK_GRIND 0

/**
 * The word `fill`.
 */
#define OVS_AS_BUILT_MENDS_WORK_FILL 1

/**
 * The result `ordered` (yd3 or m3): concrete to order.
 */
#define OVS_REPORT_ORDERED 0

/**
 * The result `figured` (yd3 or m3): net volume of all parts and allowances.
 */
#define OVS_REPORT_FIGURED 1

/**
 * The result `loads`: truck loads.
 */
#define OVS_REPORT_LOADS 2

/**
 * The result `net` (yd3 or m3): volume of the floor, net.
 */
#define OVS_REPORT_NET 3

/**
 * The result `least` (in or mm): least thickness between the shots.
 */
#define OVS_REPORT_LEAST 4

/**
 * The result `greatest` (in or mm): greatest thickness.
 */
#define OVS_REPORT_GREATEST 5

/**
 * The result `mean` (in or mm): mean thickness.
 */
#define OVS_REPORT_MEAN 6

/**
 * The result `text`: the report for the site.
 */
#define OVS_REPORT_TEXT 7

/**
 * The result `json`: the report as JSON.
 */
#define OVS_REPORT_JSON 8

/**
 * How many results there are.
 */
#define OVS_REPORT_RESULTS 9

/**
 * An answer. Its results are numbered by the constants of its operation.
 */
typedef struct ovs_answer ovs_answer;

/**
 * The new top surface: one plane, or facets that meet.
 */
typedef struct ovs_finish ovs_finish;

/**
 * A whole job description.
 */
typedef struct ovs_job ovs_job;

/**
 * The plan edge of the work, with holes and named edges.
 */
typedef struct ovs_outline ovs_outline;

/**
 * Points with heights, in the axes of where they came from: of a file, a scan or a total station.
 */
typedef struct ovs_points ovs_points;

/**
 * The surveyed old slab: outline, shots and the surface through them.
 */
typedef struct ovs_survey ovs_survey;

/**
 * A triangulated surface as it was handed over: points, and the faces between them.
 */
typedef struct ovs_tin ovs_tin;

#ifdef __cplusplus
extern "C" {
#endif /* __cplusplus */

/**
 * The number of the ABI that the library was built with. It grows when a function changes or goes, not when one is added.
 */
int ovs_abi_version(void);

/**
 * Writes the version of the library: `0.1.0`.
 *
 * Returns 0, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_version(char *text, int text_len);

/**
 * Writes the name of a status and what it means: `OUT_OF_RANGE: the value lies outside its range`.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such status, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_status_text(int status,
                    char *text,
                    int text_len);

/**
 * Writes the name of a note and what it means.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such note, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_note_text(int note,
                  char *text,
                  int text_len);

/**
 * Every result that is a number, a count or a word, by its place, in US units; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_answer_values_us(const ovs_answer *answer, double *values, int values_len, char *msg, int msg_len);

/**
 * Every result that is a number, a count or a word, by its place, in SI units; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_answer_values_si(const ovs_answer *answer, double *values, int values_len, char *msg, int msg_len);

/**
 * A result that is a number, in US units.
 *
 * Returns 0, OVS_OUT_OF_RANGE for no such result, OVS_KIND_MISMATCH for another kind, OVS_KEY_MISSING where the answer has
 * none, as do all functions that read one result.
 */
int ovs_answer_number_us(const ovs_answer *answer,
                         int result,
                         double *number,
                         char *msg,
                         int msg_len);

/**
 * A result that is a number, in SI units.
 */
int ovs_answer_number_si(const ovs_answer *answer, int result, double *number, char *msg, int msg_len);

/**
 * A result that is a count, or the number of a word.
 */
int ovs_answer_count(const ovs_answer *answer, int result, int *count, char *msg, int msg_len);

/**
 * A result that is a text, or a word.
 */
int ovs_answer_text(const ovs_answer *answer,
                    int result,
                    char *text,
                    int text_len,
                    int *needed,
                    char *msg,
                    int msg_len);

/**
 * How many rows a result that is a table has.
 */
int ovs_answer_rows(const ovs_answer *answer, int result, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a result that is a table, in US units; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 */
int ovs_answer_column_us(const ovs_answer *answer,
                         int result,
                         int column,
                         double *cells,
                         int cells_len,
                         char *msg,
                         int msg_len);

/**
 * A column of numbers, counts or words of a result that is a table, in SI units; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 */
int ovs_answer_column_si(const ovs_answer *answer,
                         int result,
                         int column,
                         double *cells,
                         int cells_len,
                         char *msg,
                         int msg_len);

/**
 * A text, or a word, of a result that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_answer_column_text(const ovs_answer *answer,
                           int result,
                           int column,
                           int row,
                           char *text,
                           int text_len,
                           int *needed,
                           char *msg,
                           int msg_len);

/**
 * The numbers of the notes, in their order.
 *
 * - `notes`, `notes_len`, out: as many as there is room for.
 * - `count`, out: how many there are; may be null.
 */
int ovs_answer_notes(const ovs_answer *answer, int *notes, int notes_len, int *count, char *msg, int msg_len);

/**
 * The sentence of a note, the first being 0.
 */
int ovs_answer_note_text(const ovs_answer *answer,
                         int note,
                         char *text,
                         int text_len,
                         int *needed,
                         char *msg,
                         int msg_len);

/**
 * The whole answer as JSON, in US units: results, notes, where each result comes from, what was taken, not given.
 */
int ovs_answer_to_json_us(const ovs_answer *answer,
                          char *json,
                          int json_len,
                          int *needed,
                          char *msg,
                          int msg_len);

/**
 * The whole answer as JSON, in SI units: results, notes, where each result comes from, what was taken, not given.
 */
int ovs_answer_to_json_si(const ovs_answer *answer,
                          char *json,
                          int json_len,
                          int *needed,
                          char *msg,
                          int msg_len);

/**
 * Frees an answer; null is nothing.
 */
void ovs_answer_free(ovs_answer *answer);

/**
 * Calls any operation by its name. A bare number in `args_json` is in the unit of its port in US units, as are the results.
 *
 * - `operation`, `operation_len`: its name in the table: without `ovs_` and `_us`.
 * - `args_json`, `args_len`: an object of the ports: `{"name": value}`; a text such as `"2 1/2 in"` says its own unit.
 * - `out`, `out_len`, `needed`: an object of `results`, `notes`, `basis` and `taken`.
 *
 * Returns 0, OVS_OPERATION_UNKNOWN, OVS_SYNTAX, OVS_BUFFER_SHORT, or what the operation refuses.
 */
int ovs_call_us(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * Calls any operation by its name, as ovs_call_us, in SI units.
 */
int ovs_call_si(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * Calls any operation as a spreadsheet does: cells in, cells out.
 *
 * - `request`, `request_len`: `{"operation": its name, "system": "us" | "si", "want": "value" | "why" | "get", "result":
 *   a name, "empty": "null" | "zero", "arguments": [...]}`. An argument is a cell (null, number, text, truth value) or rows
 *   of cells; one per port, those at the end may be left out. A number may also be `{"exact": [sign, high, low, power]}`,
 *   which is sign (high 2^26 + low) 2^power. `result` goes with `get`. `empty` says how the sheet hands over a lone empty
 *   cell; left out, as a zero, which is then refused where an empty cell is likelier.
 * - `answer`, `answer_len`, `needed`: `{"cells": rows}`, where a refused place among others is `{"code": status}`; or
 *   `{"failure": {"code", "name", "path", "line", "sentence"}}` with `row` and `column` of the range where they are known.
 *
 * Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which then stands in the answer.
 */
int ovs_sheet(const char *request,
              int request_len,
              char *answer,
              int answer_len,
              int *needed);

/**
 * Calls any operation as ovs_sheet does, for callers that do not read JSON: the cells come back in arrays, row by row.
 *
 * - `request`, `request_len`: as for ovs_sheet.
 * - `numbers`, `kinds`, `capacity`: the number and the kind of each cell, OVS_CELL_...; `capacity` elements each.
 * - `rows`, `columns`, out: how many; written also where the capacity or the buffer is too short.
 * - `texts`, `texts_len`, `needed`, out: the texts of all text cells in order, with a line feed between; a line feed
 *   within a text comes as a blank.
 *
 * Returns 0, OVS_BUFFER_SHORT, or the code of the failure, which `msg` then tells.
 */
int ovs_sheet_values(const char *request,
                     int request_len,
                     double *numbers,
                     int *kinds,
                     int capacity,
                     int *rows,
                     int *columns,
                     char *texts,
                     int texts_len,
                     int *needed,
                     char *msg,
                     int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_OUTLINE_AREA (ft2): area of the work.
 * - OVS_OUTLINE_PERIMETER (ft): length of all its edges.
 */
int ovs_outline_values_us(const ovs_outline *outline, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_OUTLINE_AREA (m2): area of the work.
 * - OVS_OUTLINE_PERIMETER (m): length of all its edges.
 */
int ovs_outline_values_si(const ovs_outline *outline, double *values, int values_len, char *msg, int msg_len);

/**
 * A field that is a text, or a word.
 *
 * - OVS_OUTLINE_SQUARENESS: how well the measurements agree.
 */
int ovs_outline_field_text(const ovs_outline *outline,
                           int field,
                           char *text,
                           int text_len,
                           int *needed,
                           char *msg,
                           int msg_len);

/**
 * How many rows a field that is a table has.
 *
 * - OVS_OUTLINE_CORNERS: the corners, with the edge behind each.
 */
int ovs_outline_field_rows(const ovs_outline *outline, int field, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_OUTLINE_CORNERS_X (ft): distance from the left.
 * - OVS_OUTLINE_CORNERS_Y (ft): distance from the front.
 * - OVS_OUTLINE_CORNERS_EDGE: name of the edge to the next corner.
 */
int ovs_outline_field_column_us(const ovs_outline *outline,
                                int field,
                                int column,
                                double *cells,
                                int cells_len,
                                char *msg,
                                int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_OUTLINE_CORNERS_X (m): distance from the left.
 * - OVS_OUTLINE_CORNERS_Y (m): distance from the front.
 * - OVS_OUTLINE_CORNERS_EDGE: name of the edge to the next corner.
 */
int ovs_outline_field_column_si(const ovs_outline *outline,
                                int field,
                                int column,
                                double *cells,
                                int cells_len,
                                char *msg,
                                int msg_len);

/**
 * A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_outline_field_column_text(const ovs_outline *outline,
                                  int field,
                                  int column,
                                  int row,
                                  char *text,
                                  int text_len,
                                  int *needed,
                                  char *msg,
                                  int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_outline_to_json(const ovs_outline *outline,
                        char *json,
                        int json_len,
                        int *needed,
                        char *msg,
                        int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: {"sides": [ {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"}, {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}], "diagonal": "37' 8 7/8\""}
 */
ovs_outline *ovs_outline_from_json(const char *json,
                                   int json_len,
                                   int *status,
                                   char *msg,
                                   int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_outline *ovs_answer_record_outline(const ovs_answer *answer,
                                       int result,
                                       int *status,
                                       char *msg,
                                       int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_outline_free(ovs_outline *outline);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_SURVEY_AREA (ft2): area of the work.
 * - OVS_SURVEY_SHOT_COUNT: how many places were shot.
 * - OVS_SURVEY_HIGHEST (ft): height of the highest point.
 * - OVS_SURVEY_HIGHEST_X (ft): its distance from the left.
 * - OVS_SURVEY_HIGHEST_Y (ft): its distance from the front.
 * - OVS_SURVEY_LOWEST (ft): height of the lowest point.
 * - OVS_SURVEY_LOWEST_X (ft): its distance from the left.
 * - OVS_SURVEY_LOWEST_Y (ft): its distance from the front.
 * - OVS_SURVEY_OUT_OF_LEVEL (in): highest less lowest.
 * - OVS_SURVEY_MEAN (ft): mean height over the area.
 * - OVS_SURVEY_RISE_X (in/ft): rise of the fitted plane along x.
 * - OVS_SURVEY_RISE_Y (in/ft): rise of the fitted plane along y.
 * - OVS_SURVEY_UNEVENNESS (in): root mean square of the shots about that plane.
 * - OVS_SURVEY_BEYOND (ft2): area beyond the shots.
 * - OVS_SURVEY_UNSURVEYED (ft2): area in triangles that leave the outline.
 * - OVS_SURVEY_AMBIGUITY_LESS (yd3): volume less by other triangulations.
 * - OVS_SURVEY_AMBIGUITY_MORE (yd3): volume more by other triangulations.
 */
int ovs_survey_values_us(const ovs_survey *survey, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_SURVEY_AREA (m2): area of the work.
 * - OVS_SURVEY_SHOT_COUNT: how many places were shot.
 * - OVS_SURVEY_HIGHEST (m): height of the highest point.
 * - OVS_SURVEY_HIGHEST_X (m): its distance from the left.
 * - OVS_SURVEY_HIGHEST_Y (m): its distance from the front.
 * - OVS_SURVEY_LOWEST (m): height of the lowest point.
 * - OVS_SURVEY_LOWEST_X (m): its distance from the left.
 * - OVS_SURVEY_LOWEST_Y (m): its distance from the front.
 * - OVS_SURVEY_OUT_OF_LEVEL (mm): highest less lowest.
 * - OVS_SURVEY_MEAN (m): mean height over the area.
 * - OVS_SURVEY_RISE_X (%): rise of the fitted plane along x.
 * - OVS_SURVEY_RISE_Y (%): rise of the fitted plane along y.
 * - OVS_SURVEY_UNEVENNESS (mm): root mean square of the shots about that plane.
 * - OVS_SURVEY_BEYOND (m2): area beyond the shots.
 * - OVS_SURVEY_UNSURVEYED (m2): area in triangles that leave the outline.
 * - OVS_SURVEY_AMBIGUITY_LESS (m3): volume less by other triangulations.
 * - OVS_SURVEY_AMBIGUITY_MORE (m3): volume more by other triangulations.
 */
int ovs_survey_values_si(const ovs_survey *survey, double *values, int values_len, char *msg, int msg_len);

/**
 * A field that is a text, or a word.
 *
 * - OVS_SURVEY_HIGHEST_SHOT: the shot it is at.
 * - OVS_SURVEY_LOWEST_SHOT: the shot it is at.
 */
int ovs_survey_field_text(const ovs_survey *survey,
                          int field,
                          char *text,
                          int text_len,
                          int *needed,
                          char *msg,
                          int msg_len);

/**
 * How many rows a field that is a table has.
 *
 * - OVS_SURVEY_SHOTS: the shots, their heights after all changes.
 * - OVS_SURVEY_CHANGES: what was done to the slab since it was shot.
 */
int ovs_survey_field_rows(const ovs_survey *survey, int field, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_SURVEY_SHOTS_NAME: its name.
 * - OVS_SURVEY_SHOTS_X (ft): distance from the left.
 * - OVS_SURVEY_SHOTS_Y (ft): distance from the front.
 * - OVS_SURVEY_SHOTS_ELEVATION (ft): height above the job datum.
 * - OVS_SURVEY_CHANGES_WORK: what is done; 0 grind, 1 fill, 2 fill ponds.
 * - OVS_SURVEY_CHANGES_AREA (ft2): area ground or filled.
 * - OVS_SURVEY_CHANGES_VOLUME (ft3): volume taken off or filled.
 * - OVS_SURVEY_CHANGES_DEEPEST (in): deepest cut or fill; none where nothing is changed.
 * - OVS_SURVEY_CHANGES_DEEPEST_X (ft): where it is, from the left.
 * - OVS_SURVEY_CHANGES_DEEPEST_Y (ft): where it is, from the front.
 */
int ovs_survey_field_column_us(const ovs_survey *survey,
                               int field,
                               int column,
                               double *cells,
                               int cells_len,
                               char *msg,
                               int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_SURVEY_SHOTS_NAME: its name.
 * - OVS_SURVEY_SHOTS_X (m): distance from the left.
 * - OVS_SURVEY_SHOTS_Y (m): distance from the front.
 * - OVS_SURVEY_SHOTS_ELEVATION (m): height above the job datum.
 * - OVS_SURVEY_CHANGES_WORK: what is done; 0 grind, 1 fill, 2 fill ponds.
 * - OVS_SURVEY_CHANGES_AREA (m2): area ground or filled.
 * - OVS_SURVEY_CHANGES_VOLUME (m3): volume taken off or filled.
 * - OVS_SURVEY_CHANGES_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
 * - OVS_SURVEY_CHANGES_DEEPEST_X (m): where it is, from the left.
 * - OVS_SURVEY_CHANGES_DEEPEST_Y (m): where it is, from the front.
 */
int ovs_survey_field_column_si(const ovs_survey *survey,
                               int field,
                               int column,
                               double *cells,
                               int cells_len,
                               char *msg,
                               int msg_len);

/**
 * A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_survey_field_column_text(const ovs_survey *survey,
                                 int field,
                                 int column,
                                 int row,
                                 char *text,
                                 int text_len,
                                 int *needed,
                                 char *msg,
                                 int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_survey_to_json(const ovs_survey *survey,
                       char *json,
                       int json_len,
                       int *needed,
                       char *msg,
                       int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: { "outline": {"sides": [ {"name": "front", "length": "20 ft"}, {"name": "right", "length": "32 ft"}, {"name": "back", "length": "20 ft"}, {"name": "left", "length": "32 ft"}]}, "grid": {"columns": ["1 ft", "19 ft"], "rows": ["1 ft", "31 ft"], "elevations": ["99.2 ft", "99.1 ft", "99.4 ft", "99.3 ft"]}}
 */
ovs_survey *ovs_survey_from_json(const char *json,
                                 int json_len,
                                 int *status,
                                 char *msg,
                                 int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_survey *ovs_answer_record_survey(const ovs_answer *answer,
                                     int result,
                                     int *status,
                                     char *msg,
                                     int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_survey_free(ovs_survey *survey);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_POINTS_POINT_COUNT: how many points there are.
 * - OVS_POINTS_LEAST_X (ft): least along the first plan axis.
 * - OVS_POINTS_GREATEST_X (ft): greatest along the first plan axis.
 * - OVS_POINTS_LEAST_Y (ft): least along the second plan axis.
 * - OVS_POINTS_GREATEST_Y (ft): greatest along the second plan axis.
 * - OVS_POINTS_LOWEST (ft): height of the lowest.
 * - OVS_POINTS_HIGHEST (ft): height of the highest.
 */
int ovs_points_values_us(const ovs_points *points, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_POINTS_POINT_COUNT: how many points there are.
 * - OVS_POINTS_LEAST_X (m): least along the first plan axis.
 * - OVS_POINTS_GREATEST_X (m): greatest along the first plan axis.
 * - OVS_POINTS_LEAST_Y (m): least along the second plan axis.
 * - OVS_POINTS_GREATEST_Y (m): greatest along the second plan axis.
 * - OVS_POINTS_LOWEST (m): height of the lowest.
 * - OVS_POINTS_HIGHEST (m): height of the highest.
 */
int ovs_points_values_si(const ovs_points *points, double *values, int values_len, char *msg, int msg_len);

/**
 * How many rows a field that is a table has.
 *
 * - OVS_POINTS_POINTS: the points.
 */
int ovs_points_field_rows(const ovs_points *points, int field, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_POINTS_POINTS_NAME: its name.
 * - OVS_POINTS_POINTS_X (ft): along the first plan axis.
 * - OVS_POINTS_POINTS_Y (ft): along the second, a quarter turn to the left of it.
 * - OVS_POINTS_POINTS_ELEVATION (ft): height.
 */
int ovs_points_field_column_us(const ovs_points *points,
                               int field,
                               int column,
                               double *cells,
                               int cells_len,
                               char *msg,
                               int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_POINTS_POINTS_NAME: its name.
 * - OVS_POINTS_POINTS_X (m): along the first plan axis.
 * - OVS_POINTS_POINTS_Y (m): along the second, a quarter turn to the left of it.
 * - OVS_POINTS_POINTS_ELEVATION (m): height.
 */
int ovs_points_field_column_si(const ovs_points *points,
                               int field,
                               int column,
                               double *cells,
                               int cells_len,
                               char *msg,
                               int msg_len);

/**
 * A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_points_field_column_text(const ovs_points *points,
                                 int field,
                                 int column,
                                 int row,
                                 char *text,
                                 int text_len,
                                 int *needed,
                                 char *msg,
                                 int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_points_to_json(const ovs_points *points,
                       char *json,
                       int json_len,
                       int *needed,
                       char *msg,
                       int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: {"unit": "ft", "x": [1, 11, 11, 1, 5], "y": [1, 1, 9, 9, 4], "elevation": [99.20, 99.15, 99.25, 99.22, 99.16], "name": ["A", "B", "C", "D", null]}
 */
ovs_points *ovs_points_from_json(const char *json,
                                 int json_len,
                                 int *status,
                                 char *msg,
                                 int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_points *ovs_answer_record_points(const ovs_answer *answer,
                                     int result,
                                     int *status,
                                     char *msg,
                                     int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_points_free(ovs_points *points);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_TIN_POINT_COUNT: how many points there are.
 * - OVS_TIN_FACE_COUNT: how many faces there are.
 * - OVS_TIN_LOWEST (ft): height of the lowest point.
 * - OVS_TIN_HIGHEST (ft): height of the highest point.
 */
int ovs_tin_values_us(const ovs_tin *tin, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_TIN_POINT_COUNT: how many points there are.
 * - OVS_TIN_FACE_COUNT: how many faces there are.
 * - OVS_TIN_LOWEST (m): height of the lowest point.
 * - OVS_TIN_HIGHEST (m): height of the highest point.
 */
int ovs_tin_values_si(const ovs_tin *tin, double *values, int values_len, char *msg, int msg_len);

/**
 * A field that is a text, or a word.
 *
 * - OVS_TIN_NAME: its name.
 */
int ovs_tin_field_text(const ovs_tin *tin,
                       int field,
                       char *text,
                       int text_len,
                       int *needed,
                       char *msg,
                       int msg_len);

/**
 * How many rows a field that is a table has.
 *
 * - OVS_TIN_POINTS: the points.
 * - OVS_TIN_FACES: the faces.
 */
int ovs_tin_field_rows(const ovs_tin *tin, int field, int *rows, char *msg, int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_TIN_POINTS_NAME: its name.
 * - OVS_TIN_POINTS_X (ft): along the first plan axis.
 * - OVS_TIN_POINTS_Y (ft): along the second, a quarter turn to the left of it.
 * - OVS_TIN_POINTS_ELEVATION (ft): height.
 * - OVS_TIN_FACES_FIRST: the number of one point.
 * - OVS_TIN_FACES_SECOND: the number of another.
 * - OVS_TIN_FACES_THIRD: the number of the third.
 */
int ovs_tin_field_column_us(const ovs_tin *tin,
                            int field,
                            int column,
                            double *cells,
                            int cells_len,
                            char *msg,
                            int msg_len);

/**
 * A column of numbers, counts or words of a field that is a table; NaN for an empty cell.
 *
 * - `cells`, `cells_len`, out: at least as many places as the table has rows, else OVS_BUFFER_SHORT.
 * - OVS_TIN_POINTS_NAME: its name.
 * - OVS_TIN_POINTS_X (m): along the first plan axis.
 * - OVS_TIN_POINTS_Y (m): along the second, a quarter turn to the left of it.
 * - OVS_TIN_POINTS_ELEVATION (m): height.
 * - OVS_TIN_FACES_FIRST: the number of one point.
 * - OVS_TIN_FACES_SECOND: the number of another.
 * - OVS_TIN_FACES_THIRD: the number of the third.
 */
int ovs_tin_field_column_si(const ovs_tin *tin,
                            int field,
                            int column,
                            double *cells,
                            int cells_len,
                            char *msg,
                            int msg_len);

/**
 * A text, or a word, of a field that is a table; OVS_EMPTY_CELL where that row has none.
 */
int ovs_tin_field_column_text(const ovs_tin *tin,
                              int field,
                              int column,
                              int row,
                              char *text,
                              int text_len,
                              int *needed,
                              char *msg,
                              int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_tin_to_json(const ovs_tin *tin, char *json, int json_len, int *needed, char *msg, int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: {"name": "old floor", "points": {"unit": "ft", "x": [1, 11, 11, 1], "y": [1, 1, 9, 9], "elevation": [99.20, 99.15, 99.25, 99.22]}, "faces": [[1, 2, 3], [1, 3, 4]]}
 */
ovs_tin *ovs_tin_from_json(const char *json,
                           int json_len,
                           int *status,
                           char *msg,
                           int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_tin *ovs_answer_record_tin(const ovs_answer *answer, int result, int *status, char *msg, int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_tin_free(ovs_tin *tin);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_FINISH_ELEVATION (ft): of one plane: its height at the origin of the axes.
 * - OVS_FINISH_RISE_X (in/ft): of one plane: rise along x.
 * - OVS_FINISH_RISE_Y (in/ft): of one plane: rise along y.
 * - OVS_FINISH_FALL (in/ft): steepest fall, of facets the steepest of all.
 * - OVS_FINISH_FACET_COUNT: how many facets it has; 0 for one plane.
 */
int ovs_finish_values_us(const ovs_finish *finish, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 * - OVS_FINISH_ELEVATION (m): of one plane: its height at the origin of the axes.
 * - OVS_FINISH_RISE_X (%): of one plane: rise along x.
 * - OVS_FINISH_RISE_Y (%): of one plane: rise along y.
 * - OVS_FINISH_FALL (%): steepest fall, of facets the steepest of all.
 * - OVS_FINISH_FACET_COUNT: how many facets it has; 0 for one plane.
 */
int ovs_finish_values_si(const ovs_finish *finish, double *values, int values_len, char *msg, int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_finish_to_json(const ovs_finish *finish,
                       char *json,
                       int json_len,
                       int *needed,
                       char *msg,
                       int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: {"level": "99.5 ft"}
 */
ovs_finish *ovs_finish_from_json(const char *json, int json_len, int *status, char *msg, int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_finish *ovs_answer_record_finish(const ovs_answer *answer,
                                     int result,
                                     int *status,
                                     char *msg,
                                     int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_finish_free(ovs_finish *finish);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_job_values_us(const ovs_job *job, double *values, int values_len, char *msg, int msg_len);

/**
 * Every field that is a number, a count or a word, by its place; NaN for the others.
 *
 * - `values`, `values_len`, out: as many as there is room for.
 */
int ovs_job_values_si(const ovs_job *job, double *values, int values_len, char *msg, int msg_len);

/**
 * A field that is a text, or a word.
 *
 * - OVS_JOB_NAME: what the job is called.
 */
int ovs_job_field_text(const ovs_job *job,
                       int field,
                       char *text,
                       int text_len,
                       int *needed,
                       char *msg,
                       int msg_len);

/**
 * Writes the record as JSON, from which it comes back the same to the bit.
 */
int ovs_job_to_json(const ovs_job *job, char *json, int json_len, int *needed, char *msg, int msg_len);

/**
 * Makes the record from its JSON; every quantity in it is a text with its unit.
 *
 * - `status`, out: the status of the call; may be null.
 *
 * Returns the record, or null.
 * Example: { "schema_version": 1, "job": { "name": "Tool shed (invented)" }, "outline": { "sides": [ { "name": "front", "length": "10 ft" }, { "name": "right", "length": "8 ft" }, { "name": "back", "length": "10 ft" }, { "name": "left", "length": "8 ft" } ] }, "level": { "benchmarks": [ { "name": "nail", "elevation": "100 ft" } ], "columns": [ "1 ft", "9 ft" ], "setups": [ { "on": "nail", "rod": "4' 2\"", "rows": [ { "y": "1 ft", "rods": [ "5' 1\"", "5' 1 1/4\"" ] }, { "y": "7 ft", "rods": [ "5' 0\"", "5' 0 1/2\"" ] } ] } ] }, "finish": { "least": "3 in", "falls_to": "front", "fall": "1/8 in/ft" } }
 */
ovs_job *ovs_job_from_json(const char *json,
                           int json_len,
                           int *status,
                           char *msg,
                           int msg_len);

/**
 * A result of an answer that is such a record, as a pointer of its own.
 *
 * - `status`, out: the status of the call; may be null.
 */
ovs_job *ovs_answer_record_job(const ovs_answer *answer, int result, int *status, char *msg, int msg_len);

/**
 * Frees the record; null is nothing.
 */
void ovs_job_free(ovs_job *job);

/**
 * The elevation of a point from one set-up of the level.
 *
 * Equation: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
 * Taken for granted: the line of sight is level and the rod plumb.
 *
 * - `benchmark_ft` (ft): elevation of the benchmark; at least -3280.83989501 ft, at most 32808.3989501 ft.
 * - `backsight_ft` (ft): rod on the benchmark; at least 0 ft, at most 32.8083989501 ft.
 * - `rod_ft` (ft): rod on the point; at least 0 ft, at most 32.8083989501 ft.
 * - `elevation_ft` (ft), out: elevation of the point.
 * - `height_of_instrument_ft` (ft), out: height of the line of sight.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Since 0.1.0.
 * Example: ovs_rod_elevation_us(2156.77, 2.67, 6.72, ...) gives elevation_ft = 2152.72, height_of_instrument_ft = 2159.44.
 */
int ovs_rod_elevation_us(double benchmark_ft,
                         double backsight_ft,
                         double rod_ft,
                         double *elevation_ft,
                         double *height_of_instrument_ft,
                         int *notes,
                         char *msg,
                         int msg_len);

/**
 * The elevation of a point from one set-up of the level.
 *
 * Equation: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
 * Taken for granted: the line of sight is level and the rod plumb.
 *
 * - `benchmark_m` (m): elevation of the benchmark; at least -1000 m, at most 10000 m.
 * - `backsight_m` (m): rod on the benchmark; at least 0 m, at most 10 m.
 * - `rod_m` (m): rod on the point; at least 0 m, at most 10 m.
 * - `elevation_m` (m), out: elevation of the point.
 * - `height_of_instrument_m` (m), out: height of the line of sight.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Since 0.1.0.
 * Example: ovs_rod_elevation_si(657.383, 0.813816, 2.04826, ...) gives elevation_m = 656.149, height_of_instrument_m = 658.197.
 */
int ovs_rod_elevation_si(double benchmark_m,
                         double backsight_m,
                         double rod_m,
                         double *elevation_m,
                         double *height_of_instrument_m,
                         int *notes,
                         char *msg,
                         int msg_len);

/**
 * ovs_rod_elevation_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_rod_elevation_us_array(const double *benchmark_ft,
                               const double *backsight_ft,
                               const double *rod_ft,
                               double *elevation_ft,
                               double *height_of_instrument_ft,
                               int *notes,
                               int n,
                               int *bad_index,
                               char *msg,
                               int msg_len);

/**
 * ovs_rod_elevation_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_rod_elevation_si_array(const double *benchmark_m,
                               const double *backsight_m,
                               const double *rod_m,
                               double *elevation_m,
                               double *height_of_instrument_m,
                               int *notes,
                               int n,
                               int *bad_index,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_rod_elevation_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_rod_elevation_us_why(double benchmark_ft,
                             double backsight_ft,
                             double rod_ft,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_rod_elevation_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_rod_elevation_si_why(double benchmark_m,
                             double backsight_m,
                             double rod_m,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Reduces a level book: heights of instrument, elevations, closure.
 *
 * Equation: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
 * backsights - sum of foresights = last - first; misclosure = found - known, shared out by set-ups.
 * Taken for granted: every reading is equally good.
 *
 * - `page_backsight_ft` (ft): rod on a known point, opens a set-up; at least 0 ft, at most 32.8083989501 ft; may
 *   be left out; NaN for an empty cell, may be null.
 * - `page_sight_ft` (ft): rod on any point; at least 0 ft, at most 32.8083989501 ft; may be left out; NaN for an
 *   empty cell, may be null.
 * - `page_foresight_ft` (ft): rod on the turning point or closing benchmark; at least 0 ft, at most 32.8083989501
 *   ft; may be left out; NaN for an empty cell, may be null.
 * - `page_close_ft` (ft): rod on the backsight point again; at least 0 ft, at most 32.8083989501 ft; may be left
 *   out; NaN for an empty cell, may be null.
 * - `page_rows`: the readings in the order they were booked: how many rows, each a point with its backsight,
 *   sight, foresight or repeated backsight; at least 1.
 * - `benchmarks_elevation_ft` (ft): its elevation; at least -3280.83989501 ft, at most 32808.3989501 ft.
 * - `benchmarks_rows`: the points of known elevation: how many rows, each a point of known elevation; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `point` of `page`: name of the point; required.
 *   - `name` of `benchmarks`: its name; required.
 *   - `closure_tolerance` (in): how far a line of two or more set-ups may be off; at least 0 in; may be left out.
 *   - `recheck_tolerance` (in): how far one set-up may be off: its backsight point read again, or the benchmark it
 *     ends on; at least 0 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_LEVEL_BOOK_MISCLOSURE (in): found less known where the line closes.
 *   - OVS_LEVEL_BOOK_BACKSIGHTS (ft): sum of the backsights of the first line.
 *   - OVS_LEVEL_BOOK_FORESIGHTS (ft): sum of its foresights.
 *   - OVS_LEVEL_BOOK_RISE (ft): last less first of that line.
 *   - OVS_LEVEL_BOOK_SETUPS: the set-ups.
 *   - OVS_LEVEL_BOOK_POINTS: the points.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_CLOSURE_EXCEEDED, OVS_BOOK_INCOMPLETE.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"page":[{"point":"BM A","backsight":"3.10 ft"},{"point":"TP1","foresight":"9.82 ft","backsight":"6.44 ft"},{"point":"TP2","foresight":"6.96 ft","backsight":"8.76 ft"},{"point":"TP3","foresight":"3.27 ft","backsight":"7.12 ft"},{"point":"BM B","foresight":"10.42 ft"}],"benchmarks":[{"name":"BM A","elevation":"100.00 ft"},{"name":"BM B","elevation":"94.91 ft"}],"closure_tolerance":"0.05 ft"}
 */
ovs_answer *ovs_level_book_us(const double *page_backsight_ft,
                              const double *page_sight_ft,
                              const double *page_foresight_ft,
                              const double *page_close_ft,
                              int page_rows,
                              const double *benchmarks_elevation_ft,
                              int benchmarks_rows,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Reduces a level book: heights of instrument, elevations, closure.
 *
 * Equation: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
 * backsights - sum of foresights = last - first; misclosure = found - known, shared out by set-ups.
 * Taken for granted: every reading is equally good.
 *
 * - `page_backsight_m` (m): rod on a known point, opens a set-up; at least 0 m, at most 10 m; may be left out; NaN
 *   for an empty cell, may be null.
 * - `page_sight_m` (m): rod on any point; at least 0 m, at most 10 m; may be left out; NaN for an empty cell, may
 *   be null.
 * - `page_foresight_m` (m): rod on the turning point or closing benchmark; at least 0 m, at most 10 m; may be left
 *   out; NaN for an empty cell, may be null.
 * - `page_close_m` (m): rod on the backsight point again; at least 0 m, at most 10 m; may be left out; NaN for an
 *   empty cell, may be null.
 * - `page_rows`: the readings in the order they were booked: how many rows, each a point with its backsight,
 *   sight, foresight or repeated backsight; at least 1.
 * - `benchmarks_elevation_m` (m): its elevation; at least -1000 m, at most 10000 m.
 * - `benchmarks_rows`: the points of known elevation: how many rows, each a point of known elevation; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `point` of `page`: name of the point; required.
 *   - `name` of `benchmarks`: its name; required.
 *   - `closure_tolerance` (mm): how far a line of two or more set-ups may be off; at least 0 mm; may be left out.
 *   - `recheck_tolerance` (mm): how far one set-up may be off: its backsight point read again, or the benchmark it
 *     ends on; at least 0 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_LEVEL_BOOK_MISCLOSURE (mm): found less known where the line closes.
 *   - OVS_LEVEL_BOOK_BACKSIGHTS (m): sum of the backsights of the first line.
 *   - OVS_LEVEL_BOOK_FORESIGHTS (m): sum of its foresights.
 *   - OVS_LEVEL_BOOK_RISE (m): last less first of that line.
 *   - OVS_LEVEL_BOOK_SETUPS: the set-ups.
 *   - OVS_LEVEL_BOOK_POINTS: the points.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_CLOSURE_EXCEEDED, OVS_BOOK_INCOMPLETE.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"page":[{"point":"BM A","backsight":"3.10 ft"},{"point":"TP1","foresight":"9.82 ft","backsight":"6.44 ft"},{"point":"TP2","foresight":"6.96 ft","backsight":"8.76 ft"},{"point":"TP3","foresight":"3.27 ft","backsight":"7.12 ft"},{"point":"BM B","foresight":"10.42 ft"}],"benchmarks":[{"name":"BM A","elevation":"100.00 ft"},{"name":"BM B","elevation":"94.91 ft"}],"closure_tolerance":"0.05 ft"}
 */
ovs_answer *ovs_level_book_si(const double *page_backsight_m,
                              const double *page_sight_m,
                              const double *page_foresight_m,
                              const double *page_close_m,
                              int page_rows,
                              const double *benchmarks_elevation_m,
                              int benchmarks_rows,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_level_book_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_level_book_us_why(const double *page_backsight_ft,
                          const double *page_sight_ft,
                          const double *page_foresight_ft,
                          const double *page_close_ft,
                          int page_rows,
                          const double *benchmarks_elevation_ft,
                          int benchmarks_rows,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Why ovs_level_book_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_level_book_si_why(const double *page_backsight_m,
                          const double *page_sight_m,
                          const double *page_foresight_m,
                          const double *page_close_m,
                          int page_rows,
                          const double *benchmarks_elevation_m,
                          int benchmarks_rows,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * The plan edge of the work from its corners in order.
 *
 * Equation: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
 * Taken for granted: edges are straight between corners; either way round.
 *
 * - `corners_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `corners_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `corners_rows`: the corners in order: how many rows, each a corner of the plan edge; at least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edge` of `corners`: name of the edge to the next corner; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The plan edge of the work, with holes and named edges.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_OUTLINE_CROSSES,
 * OVS_OUTLINE_TOO_FEW.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"x":["0 ft","20 ft","20 ft","0 ft"],"y":["0 ft","0 ft","32 ft","32 ft"],"edge":["front","right","back","left"]}}
 */
ovs_outline *ovs_outline_from_corners_us(const double *corners_x_ft,
                                         const double *corners_y_ft,
                                         int corners_rows,
                                         const char *options_json,
                                         int options_len,
                                         int *status,
                                         int *notes,
                                         int notes_len,
                                         char *msg,
                                         int msg_len);

/**
 * The plan edge of the work from its corners in order.
 *
 * Equation: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
 * Taken for granted: edges are straight between corners; either way round.
 *
 * - `corners_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
 * - `corners_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
 * - `corners_rows`: the corners in order: how many rows, each a corner of the plan edge; at least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edge` of `corners`: name of the edge to the next corner; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The plan edge of the work, with holes and named edges.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_OUTLINE_CROSSES,
 * OVS_OUTLINE_TOO_FEW.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"x":["0 ft","20 ft","20 ft","0 ft"],"y":["0 ft","0 ft","32 ft","32 ft"],"edge":["front","right","back","left"]}}
 */
ovs_outline *ovs_outline_from_corners_si(const double *corners_x_m,
                                         const double *corners_y_m,
                                         int corners_rows,
                                         const char *options_json,
                                         int options_len,
                                         int *status,
                                         int *notes,
                                         int notes_len,
                                         char *msg,
                                         int msg_len);

/**
 * Why ovs_outline_from_corners_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_outline_from_corners_us_why(const double *corners_x_ft,
                                    const double *corners_y_ft,
                                    int corners_rows,
                                    const char *options_json,
                                    int options_len,
                                    char *text,
                                    int text_len,
                                    int *needed);

/**
 * Why ovs_outline_from_corners_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_outline_from_corners_si_why(const double *corners_x_m,
                                    const double *corners_y_m,
                                    int corners_rows,
                                    const char *options_json,
                                    int options_len,
                                    char *text,
                                    int text_len,
                                    int *needed);

/**
 * The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
 *
 * Equation: corners square and the closing gap shared out; or the quadrilateral of four sides and its diagonals.
 * Taken for granted: the first wall runs along x from the first corner, the work on its left.
 *
 * - `sides_length_ft` (ft): its length; more than 0 ft, at most 32808.3989501 ft.
 * - `sides_rows`: the walls in order: how many rows, each a wall; at least 4.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `sides`: its name; may be left out.
 *   - `turn` of `sides`: the square turn at its end, left where not given; 0 left, 1 right; may be left out.
 *   - `diagonal` (ft): first corner to third, of four walls; more than 0 ft, at most 32808.3989501 ft; may be left
 *     out.
 *   - `second_diagonal` (ft): second corner to fourth, of four walls; more than 0 ft, at most 32808.3989501 ft;
 *     may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The plan edge of the work, with holes and named edges.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTLINE_OPEN, OVS_DIAGONAL_IMPOSSIBLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}],"diagonal":"37' 8 7/8\""}
 */
ovs_outline *ovs_outline_from_sides_us(const double *sides_length_ft,
                                       int sides_rows,
                                       const char *options_json,
                                       int options_len,
                                       int *status,
                                       int *notes,
                                       int notes_len,
                                       char *msg,
                                       int msg_len);

/**
 * The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.
 *
 * Equation: corners square and the closing gap shared out; or the quadrilateral of four sides and its diagonals.
 * Taken for granted: the first wall runs along x from the first corner, the work on its left.
 *
 * - `sides_length_m` (m): its length; more than 0 m, at most 10000 m.
 * - `sides_rows`: the walls in order: how many rows, each a wall; at least 4.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `sides`: its name; may be left out.
 *   - `turn` of `sides`: the square turn at its end, left where not given; 0 left, 1 right; may be left out.
 *   - `diagonal` (m): first corner to third, of four walls; more than 0 m, at most 10000 m; may be left out.
 *   - `second_diagonal` (m): second corner to fourth, of four walls; more than 0 m, at most 10000 m; may be left
 *     out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The plan edge of the work, with holes and named edges.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTLINE_OPEN, OVS_DIAGONAL_IMPOSSIBLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}],"diagonal":"37' 8 7/8\""}
 */
ovs_outline *ovs_outline_from_sides_si(const double *sides_length_m,
                                       int sides_rows,
                                       const char *options_json,
                                       int options_len,
                                       int *status,
                                       int *notes,
                                       int notes_len,
                                       char *msg,
                                       int msg_len);

/**
 * Why ovs_outline_from_sides_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_outline_from_sides_us_why(const double *sides_length_ft,
                                  int sides_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_outline_from_sides_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_outline_from_sides_si_why(const double *sides_length_m,
                                  int sides_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * The surface of the old slab through shots in any order.
 *
 * Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
 * Taken for granted: the slab is plane between neighbouring shots.
 *
 * - `outline`: the plan edge of the work.
 * - `shots_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `shots_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `shots_elevation_ft` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `shots_rows`: the shots: how many rows, each a shot of the old slab; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `shots`: its name; may be left out.
 *   - `outside` of `shots`: outside the outline on purpose; 0 no, 1 yes; may be left out.
 *   - `step` of `shots`: one side of a step; 0 no, 1 yes; may be left out.
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_TWO_HEIGHTS,
 * OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"shots":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"]}}
 */
ovs_survey *ovs_survey_from_shots_us(const ovs_outline *outline,
                                     const double *shots_x_ft,
                                     const double *shots_y_ft,
                                     const double *shots_elevation_ft,
                                     int shots_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * The surface of the old slab through shots in any order.
 *
 * Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
 * Taken for granted: the slab is plane between neighbouring shots.
 *
 * - `outline`: the plan edge of the work.
 * - `shots_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
 * - `shots_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
 * - `shots_elevation_m` (m): height above the job datum; at least -10000 m, at most 10000 m.
 * - `shots_rows`: the shots: how many rows, each a shot of the old slab; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `shots`: its name; may be left out.
 *   - `outside` of `shots`: outside the outline on purpose; 0 no, 1 yes; may be left out.
 *   - `step` of `shots`: one side of a step; 0 no, 1 yes; may be left out.
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_TWO_HEIGHTS,
 * OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"shots":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"]}}
 */
ovs_survey *ovs_survey_from_shots_si(const ovs_outline *outline,
                                     const double *shots_x_m,
                                     const double *shots_y_m,
                                     const double *shots_elevation_m,
                                     int shots_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_survey_from_shots_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_shots_us_why(const ovs_outline *outline,
                                 const double *shots_x_ft,
                                 const double *shots_y_ft,
                                 const double *shots_elevation_ft,
                                 int shots_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_survey_from_shots_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_shots_si_why(const ovs_outline *outline,
                                 const double *shots_x_m,
                                 const double *shots_y_m,
                                 const double *shots_elevation_m,
                                 int shots_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.
 *
 * Equation: each triangle is plane; what lies between triangles and their hull counts as unsurveyed.
 * Taken for granted: triangles meet at whole sides; they may go on beyond the outline; points at no triangle are
 * left out.
 *
 * - `outline`: the plan edge of the work.
 * - `points_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `points_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `points_elevation_ft` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `points_rows`: the points: how many rows, each a point of the old slab; at least 3.
 * - `faces_first`: the number of one point; from 1 to 2147483647.
 * - `faces_second`: the number of another; from 1 to 2147483647.
 * - `faces_third`: the number of the third; from 1 to 2147483647.
 * - `faces_rows`: the triangles: how many rows, each a triangle by the numbers of its three points, either way
 *   round; the first point is number 1; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `points`: its name; may be left out.
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_NULL_POINTER,
 * OVS_FACE_POINT_UNKNOWN, OVS_FACE_FLAT, OVS_FACES_OVERLAP.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"x":["0 ft","13 ft","13 ft","0 ft"],"y":["0 ft","0 ft","10 ft","10 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft"]},"faces":{"first":[1,1],"second":[2,3],"third":[3,4]}}
 */
ovs_survey *ovs_survey_from_faces_us(const ovs_outline *outline,
                                     const double *points_x_ft,
                                     const double *points_y_ft,
                                     const double *points_elevation_ft,
                                     int points_rows,
                                     const int *faces_first,
                                     const int *faces_second,
                                     const int *faces_third,
                                     int faces_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * The surface of the old slab over given triangles, which are kept as they are: what a triangulated file brings.
 *
 * Equation: each triangle is plane; what lies between triangles and their hull counts as unsurveyed.
 * Taken for granted: triangles meet at whole sides; they may go on beyond the outline; points at no triangle are
 * left out.
 *
 * - `outline`: the plan edge of the work.
 * - `points_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
 * - `points_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
 * - `points_elevation_m` (m): height above the job datum; at least -10000 m, at most 10000 m.
 * - `points_rows`: the points: how many rows, each a point of the old slab; at least 3.
 * - `faces_first`: the number of one point; from 1 to 2147483647.
 * - `faces_second`: the number of another; from 1 to 2147483647.
 * - `faces_third`: the number of the third; from 1 to 2147483647.
 * - `faces_rows`: the triangles: how many rows, each a triangle by the numbers of its three points, either way
 *   round; the first point is number 1; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `points`: its name; may be left out.
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_NULL_POINTER,
 * OVS_FACE_POINT_UNKNOWN, OVS_FACE_FLAT, OVS_FACES_OVERLAP.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"x":["0 ft","13 ft","13 ft","0 ft"],"y":["0 ft","0 ft","10 ft","10 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft"]},"faces":{"first":[1,1],"second":[2,3],"third":[3,4]}}
 */
ovs_survey *ovs_survey_from_faces_si(const ovs_outline *outline,
                                     const double *points_x_m,
                                     const double *points_y_m,
                                     const double *points_elevation_m,
                                     int points_rows,
                                     const int *faces_first,
                                     const int *faces_second,
                                     const int *faces_third,
                                     int faces_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_survey_from_faces_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_faces_us_why(const ovs_outline *outline,
                                 const double *points_x_ft,
                                 const double *points_y_ft,
                                 const double *points_elevation_ft,
                                 int points_rows,
                                 const int *faces_first,
                                 const int *faces_second,
                                 const int *faces_third,
                                 int faces_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_survey_from_faces_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_faces_si_why(const ovs_outline *outline,
                                 const double *points_x_m,
                                 const double *points_y_m,
                                 const double *points_elevation_m,
                                 int points_rows,
                                 const int *faces_first,
                                 const int *faces_second,
                                 const int *faces_third,
                                 int faces_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
 *
 * Equation: each cell is four triangles about the mean of its corners.
 * Taken for granted: the slab is plane over each triangle.
 *
 * - `outline`: the plan edge of the work.
 * - `columns_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
 * - `rows_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
 * - `elevations_elevation_ft` (ft): height; empty where not shot; at least -32808.3989501 ft, at most
 *   32808.3989501 ft; may be left out; NaN for an empty cell, may be null.
 * - `elevations_rows`: the heights, row by row: how many rows, each the height of a grid place, row by row; at
 *   least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `steps`: whether a row or column given twice, one after the other, is the two sides of a step; 0 no, 1 yes;
 *     where left out no, because a distance written twice is more often a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH,
 * OVS_BEYOND_SHOTS, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"elevations":{"elevation":["99.20 ft","99.18 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}}
 */
ovs_survey *ovs_survey_from_grid_us(const ovs_outline *outline,
                                    const double *columns_x_ft,
                                    int columns_rows,
                                    const double *rows_y_ft,
                                    int rows_rows,
                                    const double *elevations_elevation_ft,
                                    int elevations_rows,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.
 *
 * Equation: each cell is four triangles about the mean of its corners.
 * Taken for granted: the slab is plane over each triangle.
 *
 * - `outline`: the plan edge of the work.
 * - `columns_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
 * - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
 * - `rows_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
 * - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
 * - `elevations_elevation_m` (m): height; empty where not shot; at least -10000 m, at most 10000 m; may be left
 *   out; NaN for an empty cell, may be null.
 * - `elevations_rows`: the heights, row by row: how many rows, each the height of a grid place, row by row; at
 *   least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `steps`: whether a row or column given twice, one after the other, is the two sides of a step; 0 no, 1 yes;
 *     where left out no, because a distance written twice is more often a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH,
 * OVS_BEYOND_SHOTS, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"elevations":{"elevation":["99.20 ft","99.18 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}}
 */
ovs_survey *ovs_survey_from_grid_si(const ovs_outline *outline,
                                    const double *columns_x_m,
                                    int columns_rows,
                                    const double *rows_y_m,
                                    int rows_rows,
                                    const double *elevations_elevation_m,
                                    int elevations_rows,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_survey_from_grid_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_grid_us_why(const ovs_outline *outline,
                                const double *columns_x_ft,
                                int columns_rows,
                                const double *rows_y_ft,
                                int rows_rows,
                                const double *elevations_elevation_ft,
                                int elevations_rows,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_survey_from_grid_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_grid_si_why(const ovs_outline *outline,
                                const double *columns_x_m,
                                int columns_rows,
                                const double *rows_y_m,
                                int rows_rows,
                                const double *elevations_elevation_m,
                                int elevations_rows,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The surface of the old slab through a grid of rod readings from one set-up.
 *
 * Equation: elevation = benchmark + backsight - rod.
 * Taken for granted: one set-up; the slab is plane over each triangle.
 *
 * - `outline`: the plan edge of the work.
 * - `columns_x_ft` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
 * - `rows_y_ft` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
 * - `rods_rod_ft` (ft): reading; empty where not shot; at least 0 ft, at most 32.8083989501 ft; may be left out;
 *   NaN for an empty cell, may be null.
 * - `rods_rows`: the readings, row by row: how many rows, each the reading on a grid place, row by row; at least
 *   1.
 * - `benchmark_ft` (ft): elevation of the benchmark; at least -3280.83989501 ft, at most 32808.3989501 ft.
 * - `backsight_ft` (ft): rod on the benchmark; at least 0 ft, at most 32.8083989501 ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `steps`: whether a row or column given twice, one after the other, is the two sides of a step; 0 no, 1 yes;
 *     where left out no, because a distance written twice is more often a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_LENGTH_MISMATCH,
 * OVS_NULL_POINTER.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"rods":{"rod":["5' 0 5/8\"","5' 0 1/2\"","5' 0 3/8\"","4' 11 7/8\"","5' 0\"","4' 11 7/8\""]},"benchmark":"100 ft","backsight":"4' 2 1/2\""}
 */
ovs_survey *ovs_survey_from_rods_us(const ovs_outline *outline,
                                    const double *columns_x_ft,
                                    int columns_rows,
                                    const double *rows_y_ft,
                                    int rows_rows,
                                    const double *rods_rod_ft,
                                    int rods_rows,
                                    double benchmark_ft,
                                    double backsight_ft,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * The surface of the old slab through a grid of rod readings from one set-up.
 *
 * Equation: elevation = benchmark + backsight - rod.
 * Taken for granted: one set-up; the slab is plane over each triangle.
 *
 * - `outline`: the plan edge of the work.
 * - `columns_x_m` (m): distance from the left; at least -100000 m, at most 100000 m.
 * - `columns_rows`: the grid columns from the left wall: how many rows, each a grid column; at least 1.
 * - `rows_y_m` (m): distance from the front; at least -100000 m, at most 100000 m.
 * - `rows_rows`: the grid rows from the front wall: how many rows, each a grid row; at least 1.
 * - `rods_rod_m` (m): reading; empty where not shot; at least 0 m, at most 10 m; may be left out; NaN for an empty
 *   cell, may be null.
 * - `rods_rows`: the readings, row by row: how many rows, each the reading on a grid place, row by row; at least
 *   1.
 * - `benchmark_m` (m): elevation of the benchmark; at least -1000 m, at most 10000 m.
 * - `backsight_m` (m): rod on the benchmark; at least 0 m, at most 10 m.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `steps`: whether a row or column given twice, one after the other, is the two sides of a step; 0 no, 1 yes;
 *     where left out no, because a distance written twice is more often a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_LENGTH_MISMATCH,
 * OVS_NULL_POINTER.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"columns":{"x":["1 ft","6 ft","11 ft"]},"rows":{"y":["1 ft","9 ft"]},"rods":{"rod":["5' 0 5/8\"","5' 0 1/2\"","5' 0 3/8\"","4' 11 7/8\"","5' 0\"","4' 11 7/8\""]},"benchmark":"100 ft","backsight":"4' 2 1/2\""}
 */
ovs_survey *ovs_survey_from_rods_si(const ovs_outline *outline,
                                    const double *columns_x_m,
                                    int columns_rows,
                                    const double *rows_y_m,
                                    int rows_rows,
                                    const double *rods_rod_m,
                                    int rods_rows,
                                    double benchmark_m,
                                    double backsight_m,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_survey_from_rods_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_rods_us_why(const ovs_outline *outline,
                                const double *columns_x_ft,
                                int columns_rows,
                                const double *rows_y_ft,
                                int rows_rows,
                                const double *rods_rod_ft,
                                int rods_rows,
                                double benchmark_ft,
                                double backsight_ft,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_survey_from_rods_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_rods_si_why(const ovs_outline *outline,
                                const double *columns_x_m,
                                int columns_rows,
                                const double *rows_y_m,
                                int rows_rows,
                                const double *rods_rod_m,
                                int rods_rows,
                                double benchmark_m,
                                double backsight_m,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
 *
 * Equation: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the outline.
 * Taken for granted: the slab is plane over each triangle.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_TRIANGLES_TRIANGLES: the triangles.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
 */
ovs_answer *ovs_survey_triangles_us(const ovs_survey *survey,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * The triangles of the old slab, which tile the work exactly: what every volume is the sum of.
 *
 * Equation: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the outline.
 * Taken for granted: the slab is plane over each triangle.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_TRIANGLES_TRIANGLES: the triangles.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
 */
ovs_answer *ovs_survey_triangles_si(const ovs_survey *survey,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_survey_triangles_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_triangles_us_why(const ovs_survey *survey,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_survey_triangles_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_triangles_si_why(const ovs_survey *survey,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand
 * invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of
 * ten; three of ten books without a slip name some shot.
 *
 * Equation: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is five
 * times likelier than chance.
 * Taken for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal but for
 * slips.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `rod`: how the rod is graduated; without it the readings tell; 0 inches, 1 tenths, 2 metric, 3 unknown; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_SUSPECTS_SUSPECTS: the suspects, the farthest off first.
 *   - OVS_SURVEY_SUSPECTS_JUDGED: how many shots were judged.
 *   - OVS_SURVEY_SUSPECTS_ROUGHNESS (in): standard deviation that each shot has for itself: reading, texture and
 *     small waves.
 *   - OVS_SURVEY_SUSPECTS_GRADUATION: how the rod is graduated; 0 inches, 1 tenths, 2 metric, 3 unknown.
 *
 * Refuses with OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
 * leave-one-out prediction (any), kriging, from memory: confirm.
 * Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
 * practice, no source.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"}]},"grid":{"columns":["1 ft","8 ft","16 ft","23 ft"],"rows":["1 ft","8 ft","16 ft","23 ft"],"elevations":["99.20 ft","99.18 ft","99.19 ft","99.17 ft","99.24 ft","99.22 ft","99.73 ft","99.23 ft","99.29 ft","99.28 ft","99.26 ft","99.27 ft","99.33 ft","99.31 ft","99.32 ft","99.30 ft"]}}}
 */
ovs_answer *ovs_survey_suspects_us(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand
 * invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of
 * ten; three of ten books without a slip name some shot.
 *
 * Equation: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is five
 * times likelier than chance.
 * Taken for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal but for
 * slips.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `rod`: how the rod is graduated; without it the readings tell; 0 inches, 1 tenths, 2 metric, 3 unknown; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_SUSPECTS_SUSPECTS: the suspects, the farthest off first.
 *   - OVS_SURVEY_SUSPECTS_JUDGED: how many shots were judged.
 *   - OVS_SURVEY_SUSPECTS_ROUGHNESS (mm): standard deviation that each shot has for itself: reading, texture and
 *     small waves.
 *   - OVS_SURVEY_SUSPECTS_GRADUATION: how the rod is graduated; 0 inches, 1 tenths, 2 metric, 3 unknown.
 *
 * Refuses with OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
 * leave-one-out prediction (any), kriging, from memory: confirm.
 * Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
 * practice, no source.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"},{"length":"24 ft"}]},"grid":{"columns":["1 ft","8 ft","16 ft","23 ft"],"rows":["1 ft","8 ft","16 ft","23 ft"],"elevations":["99.20 ft","99.18 ft","99.19 ft","99.17 ft","99.24 ft","99.22 ft","99.73 ft","99.23 ft","99.29 ft","99.28 ft","99.26 ft","99.27 ft","99.33 ft","99.31 ft","99.32 ft","99.30 ft"]}}}
 */
ovs_answer *ovs_survey_suspects_si(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_survey_suspects_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_suspects_us_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_survey_suspects_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_suspects_si_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * The old slab without the shots named; the others keep their names.
 *
 * Equation: the surface through the shots that are left.
 * Taken for granted: the caller knows why.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `leave_out`: the shots to leave out; required.
 *   - `name` of `leave_out`: its name; required.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_SHOT_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","6 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.68 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}},"leave_out":{"name":["A2"]}}
 */
ovs_survey *ovs_survey_without_us(const ovs_survey *survey,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * The old slab without the shots named; the others keep their names.
 *
 * Equation: the surface through the shots that are left.
 * Taken for granted: the caller knows why.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `leave_out`: the shots to leave out; required.
 *   - `name` of `leave_out`: its name; required.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_TOO_FEW_SHOTS, OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_SHOT_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"grid":{"columns":["1 ft","6 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.68 ft","99.15 ft","99.22 ft","99.19 ft","99.25 ft"]}},"leave_out":{"name":["A2"]}}
 */
ovs_survey *ovs_survey_without_si(const ovs_survey *survey,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_survey_without_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_without_us_why(const ovs_survey *survey,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_survey_without_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_without_si_why(const ovs_survey *survey,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * How much of the work lies too far from any shot, and where the next shots belong.
 *
 * Equation: uncovered = area of the work outside all circles about the shots; next = the middle of the largest
 * circle without a shot.
 * Taken for granted: straight distances, through walls and holes.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `near` (ft): how near a shot should be to every place; at least 0.0416666666667 ft, at most 328.083989501
 *     ft; where left out 6 ft, because a grid of 8 ft leaves no place farther, common practice, no source.
 *   - `most`: how many places for more shots to tell; from 0 to 500; where left out 12, because an hour's work.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_COVERAGE_AREA (ft2): area of the work.
 *   - OVS_SURVEY_COVERAGE_UNCOVERED (ft2): area farther than that from every shot.
 *   - OVS_SURVEY_COVERAGE_SHARE (%): its share of the work.
 *   - OVS_SURVEY_COVERAGE_BEYOND (ft2): area beyond the last shots.
 *   - OVS_SURVEY_COVERAGE_UNSURVEYED (ft2): area in triangles that leave the outline.
 *   - OVS_SURVEY_COVERAGE_FARTHEST (ft): the farthest any place is from a shot.
 *   - OVS_SURVEY_COVERAGE_FARTHEST_X (ft): where it is, from the left.
 *   - OVS_SURVEY_COVERAGE_FARTHEST_Y (ft): where it is, from the front.
 *   - OVS_SURVEY_COVERAGE_NEXT: where the next shots belong, until every place is near enough.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"20 ft"},{"length":"30 ft"},{"length":"20 ft"},{"length":"30 ft"}]},"grid":{"columns":["1 ft","19 ft"],"rows":["1 ft","29 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
 */
ovs_answer *ovs_survey_coverage_us(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * How much of the work lies too far from any shot, and where the next shots belong.
 *
 * Equation: uncovered = area of the work outside all circles about the shots; next = the middle of the largest
 * circle without a shot.
 * Taken for granted: straight distances, through walls and holes.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `near` (m): how near a shot should be to every place; at least 0.0127 m, at most 100 m; where left out 6 ft,
 *     because a grid of 8 ft leaves no place farther, common practice, no source.
 *   - `most`: how many places for more shots to tell; from 0 to 500; where left out 12, because an hour's work.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_COVERAGE_AREA (m2): area of the work.
 *   - OVS_SURVEY_COVERAGE_UNCOVERED (m2): area farther than that from every shot.
 *   - OVS_SURVEY_COVERAGE_SHARE (%): its share of the work.
 *   - OVS_SURVEY_COVERAGE_BEYOND (m2): area beyond the last shots.
 *   - OVS_SURVEY_COVERAGE_UNSURVEYED (m2): area in triangles that leave the outline.
 *   - OVS_SURVEY_COVERAGE_FARTHEST (m): the farthest any place is from a shot.
 *   - OVS_SURVEY_COVERAGE_FARTHEST_X (m): where it is, from the left.
 *   - OVS_SURVEY_COVERAGE_FARTHEST_Y (m): where it is, from the front.
 *   - OVS_SURVEY_COVERAGE_NEXT: where the next shots belong, until every place is near enough.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"length":"20 ft"},{"length":"30 ft"},{"length":"20 ft"},{"length":"30 ft"}]},"grid":{"columns":["1 ft","19 ft"],"rows":["1 ft","29 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}}}
 */
ovs_answer *ovs_survey_coverage_si(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_survey_coverage_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_coverage_us_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_survey_coverage_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_coverage_si_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Whether the line of sight of a level or laser is level, from readings on two pegs.
 *
 * Equation: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right =
 * reading - tilt distance.
 * Taken for granted: the first set-up half way between the pegs; curvature and refraction left out.
 *
 * - `middle_a_ft` (ft): rod on peg A from half way between the pegs; at least 0 ft, at most 32.8083989501 ft.
 * - `middle_b_ft` (ft): rod on peg B from there; at least 0 ft, at most 32.8083989501 ft.
 * - `end_a_ft` (ft): rod on peg A from near one peg; at least 0 ft, at most 32.8083989501 ft.
 * - `end_b_ft` (ft): rod on peg B from there; at least 0 ft, at most 32.8083989501 ft.
 * - `distance_a_ft` (ft): from the instrument to peg A in the second set-up; at least 0 ft, at most 3280.83989501
 *   ft.
 * - `distance_b_ft` (ft): from the instrument to peg B in the second set-up; at least 0 ft, at most 3280.83989501
 *   ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `limit` (in/ft): the tilt allowed; at least 0 in/ft, at most 1.2 in/ft; where left out 0.00125 in/ft,
 *     because 1/16 in per 50 ft, common practice, no source.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_TWO_PEG_TEST_RISE (ft): how much higher peg B stands than peg A.
 *   - OVS_TWO_PEG_TEST_TILT (in/ft): rise of the line of sight over the distance.
 *   - OVS_TWO_PEG_TEST_RIGHT_A (ft): what the second set-up should read on peg A.
 *   - OVS_TWO_PEG_TEST_RIGHT_B (ft): what it should read on peg B.
 *   - OVS_TWO_PEG_TEST_OFF (in): how much too high it reads on the farther peg.
 *   - OVS_TWO_PEG_TEST_PASSES: whether the tilt is within what is allowed; 0 no, 1 yes.
 *   - OVS_TWO_PEG_TEST_GOOD_FOR (ft): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: from half way between two pegs the difference of the readings is free of the tilt of the line of sight:
 * Surveying textbooks, two-peg test (any), collimation.
 * Basis: the line of sight may tilt by 1/16 in per 50 ft: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"middle_a":"4.52 ft","middle_b":"5.17 ft","end_a":"4.86 ft","end_b":"5.49 ft","distance_a":"10 ft","distance_b":"110 ft"}
 */
int ovs_two_peg_test_us(double middle_a_ft,
                        double middle_b_ft,
                        double end_a_ft,
                        double end_b_ft,
                        double distance_a_ft,
                        double distance_b_ft,
                        const char *options_json,
                        int options_len,
                        double *results,
                        int results_len,
                        int *notes,
                        int notes_len,
                        char *msg,
                        int msg_len);

/**
 * Whether the line of sight of a level or laser is level, from readings on two pegs.
 *
 * Equation: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right =
 * reading - tilt distance.
 * Taken for granted: the first set-up half way between the pegs; curvature and refraction left out.
 *
 * - `middle_a_m` (m): rod on peg A from half way between the pegs; at least 0 m, at most 10 m.
 * - `middle_b_m` (m): rod on peg B from there; at least 0 m, at most 10 m.
 * - `end_a_m` (m): rod on peg A from near one peg; at least 0 m, at most 10 m.
 * - `end_b_m` (m): rod on peg B from there; at least 0 m, at most 10 m.
 * - `distance_a_m` (m): from the instrument to peg A in the second set-up; at least 0 m, at most 1000 m.
 * - `distance_b_m` (m): from the instrument to peg B in the second set-up; at least 0 m, at most 1000 m.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `limit` (mm/m): the tilt allowed; at least 0 mm/m, at most 100 mm/m; where left out 0.00125 in/ft, because
 *     1/16 in per 50 ft, common practice, no source.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_TWO_PEG_TEST_RISE (m): how much higher peg B stands than peg A.
 *   - OVS_TWO_PEG_TEST_TILT (mm/m): rise of the line of sight over the distance.
 *   - OVS_TWO_PEG_TEST_RIGHT_A (m): what the second set-up should read on peg A.
 *   - OVS_TWO_PEG_TEST_RIGHT_B (m): what it should read on peg B.
 *   - OVS_TWO_PEG_TEST_OFF (mm): how much too high it reads on the farther peg.
 *   - OVS_TWO_PEG_TEST_PASSES: whether the tilt is within what is allowed; 0 no, 1 yes.
 *   - OVS_TWO_PEG_TEST_GOOD_FOR (m): difference of sights to benchmark and shot that the tilt turns into 1/8 in.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: from half way between two pegs the difference of the readings is free of the tilt of the line of sight:
 * Surveying textbooks, two-peg test (any), collimation.
 * Basis: the line of sight may tilt by 1/16 in per 50 ft: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"middle_a":"4.52 ft","middle_b":"5.17 ft","end_a":"4.86 ft","end_b":"5.49 ft","distance_a":"10 ft","distance_b":"110 ft"}
 */
int ovs_two_peg_test_si(double middle_a_m,
                        double middle_b_m,
                        double end_a_m,
                        double end_b_m,
                        double distance_a_m,
                        double distance_b_m,
                        const char *options_json,
                        int options_len,
                        double *results,
                        int results_len,
                        int *notes,
                        int notes_len,
                        char *msg,
                        int msg_len);

/**
 * Why ovs_two_peg_test_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_two_peg_test_us_why(double middle_a_ft,
                            double middle_b_ft,
                            double end_a_ft,
                            double end_b_ft,
                            double distance_a_ft,
                            double distance_b_ft,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_two_peg_test_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_two_peg_test_si_why(double middle_a_m,
                            double middle_b_m,
                            double end_a_m,
                            double end_b_m,
                            double distance_a_m,
                            double distance_b_m,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by
 * the first.
 *
 * Equation: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it for shot
 * k of n.
 * Taken for granted: the line of sight moved evenly; a set-up of a level book that closes shares half out to all
 * its sights instead.
 *
 * - `first_ft` (ft): rod on the benchmark before; at least 0 ft, at most 32.8083989501 ft.
 * - `again_ft` (ft): rod on the benchmark after; add the difference to every rod mark; at least 0 ft, at most
 *   32.8083989501 ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `shots`: the readings between; may be left out.
 *   - `rod` of `shots` (ft): the reading; at least 0 ft, at most 32.8083989501 ft; required.
 *   - `time` of `shots` (min): when, from the first reading of the benchmark; at least 0 min; may be left out.
 *   - `time_again` (min): when the benchmark was read again; at least 0 min; may be left out.
 *   - `tolerance` (in): how far the two may be off; at least 0 in; where left out 1/8 in, because one set-up
 *     closes within 1/8 in, common practice, no source.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_BENCHMARK_RECHECK_DIFFERENCE (in): again less first.
 *   - OVS_BENCHMARK_RECHECK_FOLLOWS: what follows; 0 agrees, 1 shared_out, 2 shoot_again.
 *   - OVS_BENCHMARK_RECHECK_SHARED_OUT: the readings with their shares; none where it is off by too much.
 *   - OVS_BENCHMARK_RECHECK_SAID: the same in a sentence.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_KEY_MISSING.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"first":"4' 2 1/2\"","again":"4' 2 5/8\"","shots":{"rod":["5' 0 5/8\"","5' 0 1/2\"","4' 11 7/8\""]}}
 */
ovs_answer *ovs_benchmark_recheck_us(double first_ft,
                                     double again_ft,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by
 * the first.
 *
 * Equation: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it for shot
 * k of n.
 * Taken for granted: the line of sight moved evenly; a set-up of a level book that closes shares half out to all
 * its sights instead.
 *
 * - `first_m` (m): rod on the benchmark before; at least 0 m, at most 10 m.
 * - `again_m` (m): rod on the benchmark after; add the difference to every rod mark; at least 0 m, at most 10 m.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `shots`: the readings between; may be left out.
 *   - `rod` of `shots` (m): the reading; at least 0 m, at most 10 m; required.
 *   - `time` of `shots` (min): when, from the first reading of the benchmark; at least 0 min; may be left out.
 *   - `time_again` (min): when the benchmark was read again; at least 0 min; may be left out.
 *   - `tolerance` (mm): how far the two may be off; at least 0 mm; where left out 1/8 in, because one set-up
 *     closes within 1/8 in, common practice, no source.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_BENCHMARK_RECHECK_DIFFERENCE (mm): again less first.
 *   - OVS_BENCHMARK_RECHECK_FOLLOWS: what follows; 0 agrees, 1 shared_out, 2 shoot_again.
 *   - OVS_BENCHMARK_RECHECK_SHARED_OUT: the readings with their shares; none where it is off by too much.
 *   - OVS_BENCHMARK_RECHECK_SAID: the same in a sentence.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_CELL, OVS_KEY_MISSING.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: one set-up closes within 1/8 in, several within 1/4 in: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"first":"4' 2 1/2\"","again":"4' 2 5/8\"","shots":{"rod":["5' 0 5/8\"","5' 0 1/2\"","4' 11 7/8\""]}}
 */
ovs_answer *ovs_benchmark_recheck_si(double first_m,
                                     double again_m,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_benchmark_recheck_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_benchmark_recheck_us_why(double first_ft,
                                 double again_ft,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_benchmark_recheck_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_benchmark_recheck_si_why(double first_m,
                                 double again_m,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
 *
 * Equation: none: the points as they are given.
 * Taken for granted: nothing.
 *
 * - `points_x_ft` (ft): along the first plan axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `points_y_ft` (ft): along the second, a quarter turn to the left of it; at least -3280839895.01 ft, at most
 *   3280839895.01 ft.
 * - `points_elevation_ft` (ft): height; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `points_rows`: the points: how many rows, each a point; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `points`: its name; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: Points with heights, in the axes of where they came from: of a file, a scan or a
 * total station.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_KEY_MISSING.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"],"name":["A","B","C","D",null]}}
 */
ovs_points *ovs_points_from_table_us(const double *points_x_ft,
                                     const double *points_y_ft,
                                     const double *points_elevation_ft,
                                     int points_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.
 *
 * Equation: none: the points as they are given.
 * Taken for granted: nothing.
 *
 * - `points_x_m` (m): along the first plan axis; at least -1000000000 m, at most 1000000000 m.
 * - `points_y_m` (m): along the second, a quarter turn to the left of it; at least -1000000000 m, at most
 *   1000000000 m.
 * - `points_elevation_m` (m): height; at least -1000000000 m, at most 1000000000 m.
 * - `points_rows`: the points: how many rows, each a point; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `points`: its name; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: Points with heights, in the axes of where they came from: of a file, a scan or a
 * total station.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_LENGTH_MISMATCH, OVS_KEY_MISSING.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"x":["1 ft","11 ft","11 ft","1 ft","5 ft"],"y":["1 ft","1 ft","9 ft","9 ft","4 ft"],"elevation":["99.20 ft","99.15 ft","99.25 ft","99.22 ft","99.16 ft"],"name":["A","B","C","D",null]}}
 */
ovs_points *ovs_points_from_table_si(const double *points_x_m,
                                     const double *points_y_m,
                                     const double *points_elevation_m,
                                     int points_rows,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_points_from_table_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_from_table_us_why(const double *points_x_ft,
                                 const double *points_y_ft,
                                 const double *points_elevation_ft,
                                 int points_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_points_from_table_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_from_table_si_why(const double *points_x_m,
                                 const double *points_y_m,
                                 const double *points_elevation_m,
                                 int points_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
 *
 * Equation: none: the coordinates of the file, in metres by its unit.
 * Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
 *
 * - `file`, `file_len`: the bytes of the file, as they are.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
 *     landxml; may be left out.
 *   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd; may be left out.
 *   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
 *     because a file mostly knows its unit.
 *   - `columns`: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation
 *     [in], skip; may be left out.
 *   - `height_of_instrument` (ft): height of the line of sight, for a column of rods; at least -32808.3989501 ft,
 *     at most 32808.3989501 ft; may be left out.
 *   - `ground_only`: whether only points that the file classes as ground are used; 0 no, 1 yes; where left out no,
 *     because few scans are classed.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_READ_POINTS_POINTS: the points.
 *   - OVS_READ_POINTS_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
 *   - OVS_READ_POINTS_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd.
 *   - OVS_READ_POINTS_LEFT_OUT: points of the file that were not used.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING,
 * OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FORMAT_UNKNOWN, OVS_FILE_BROKEN, OVS_COLUMN_MISSING.
 * Since 0.1.0.
 * Example, as JSON: {"file":"point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n"}
 */
ovs_answer *ovs_read_points_us(const unsigned char *file,
                               int file_len,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.
 *
 * Equation: none: the coordinates of the file, in metres by its unit.
 * Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
 *
 * - `file`, `file_len`: the bytes of the file, as they are.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
 *     landxml; may be left out.
 *   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd; may be left out.
 *   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
 *     because a file mostly knows its unit.
 *   - `columns`: what stands in each column of a table, in place of its header: point, y [ft], x [ft], elevation
 *     [in], skip; may be left out.
 *   - `height_of_instrument` (m): height of the line of sight, for a column of rods; at least -10000 m, at most
 *     10000 m; may be left out.
 *   - `ground_only`: whether only points that the file classes as ground are used; 0 no, 1 yes; where left out no,
 *     because few scans are classed.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_READ_POINTS_POINTS: the points.
 *   - OVS_READ_POINTS_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
 *   - OVS_READ_POINTS_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd.
 *   - OVS_READ_POINTS_LEFT_OUT: points of the file that were not used.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING,
 * OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FORMAT_UNKNOWN, OVS_FILE_BROKEN, OVS_COLUMN_MISSING.
 * Since 0.1.0.
 * Example, as JSON: {"file":"point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n"}
 */
ovs_answer *ovs_read_points_si(const unsigned char *file,
                               int file_len,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_read_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_read_points_us_why(const unsigned char *file,
                           int file_len,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_read_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_read_points_si_why(const unsigned char *file,
                           int file_len,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
 *
 * Equation: none: the points and faces of the file, in metres by its unit.
 * Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
 *
 * - `file`, `file_len`: the bytes of the file, as they are.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
 *     landxml; may be left out.
 *   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd; may be left out.
 *   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
 *     because a file mostly knows its unit.
 *   - `surface`: its name, for a file with several; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_READ_SURFACE_TIN: the surface.
 *   - OVS_READ_SURFACE_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
 *   - OVS_READ_SURFACE_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd.
 *   - OVS_READ_SURFACE_LEFT_OUT: points of the file that were not used.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_FILE_SHORT, OVS_SURFACE_UNCLEAR.
 * Since 0.1.0.
 * Example, as JSON: {"file":"ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n","unit":"m"}
 */
ovs_answer *ovs_read_surface_us(const unsigned char *file,
                                int file_len,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.
 *
 * Equation: none: the points and faces of the file, in metres by its unit.
 * Taken for granted: nothing: what the file does not say must be given, and a file that is cut short is refused.
 *
 * - `file`, `file_len`: the bytes of the file, as they are.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `format`: what the file is; found from its first bytes where left out; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5
 *     landxml; may be left out.
 *   - `unit`: the unit of its numbers, for a file that does not say it; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd; may be left out.
 *   - `overrule`: whether the unit given holds even where the file says another; 0 no, 1 yes; where left out no,
 *     because a file mostly knows its unit.
 *   - `surface`: its name, for a file with several; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_READ_SURFACE_TIN: the surface.
 *   - OVS_READ_SURFACE_FORMAT: what the file is; 0 csv, 1 xyz, 2 ply, 3 las, 4 e57, 5 landxml.
 *   - OVS_READ_SURFACE_UNIT: the unit of its numbers, where all have one; 0 m, 1 cm, 2 mm, 3 ft, 4 us_survey_ft, 5
 *     in, 6 yd.
 *   - OVS_READ_SURFACE_LEFT_OUT: points of the file that were not used.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_FILE_SHORT, OVS_SURFACE_UNCLEAR.
 * Since 0.1.0.
 * Example, as JSON: {"file":"ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n","unit":"m"}
 */
ovs_answer *ovs_read_surface_si(const unsigned char *file,
                                int file_len,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_read_surface_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_read_surface_us_why(const unsigned char *file,
                            int file_len,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_read_surface_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_read_surface_si_why(const unsigned char *file,
                            int file_len,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Points brought into the axes of the job by two known points or more: turned, shifted and raised, never
 * stretched.
 *
 * Equation: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known points; z' =
 * z + mean rise, or + a plane.
 * Taken for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a mirror and a
 * unit slip are refused by name.
 *
 * - `points`: the points.
 * - `known_x_ft` (ft): along the first axis, as the points come; at least -3280839895.01 ft, at most 3280839895.01
 *   ft.
 * - `known_y_ft` (ft): along the second, as the points come; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `known_job_x_ft` (ft): along the first axis of the job; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `known_job_y_ft` (ft): along the second axis of the job; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `known_rows`: the points known in both systems: how many rows, each a point known in both systems of axes; at
 *   least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `known`: its name; may be left out.
 *   - `elevation` of `known` (ft): height, as the points come; at least -3280839895.01 ft, at most 3280839895.01
 *     ft; may be left out.
 *   - `job_elevation` of `known` (ft): height above the job datum; at least -3280839895.01 ft, at most
 *     3280839895.01 ft; may be left out.
 *   - `tolerance` (in): how far distances of two, places of more may be off; at least 0 in, at most 39.3700787402
 *     in; where left out 1/4 in, because a nail is found again so well.
 *   - `height_tolerance` (in): how far heights may be off; at least 0 in, at most 39.3700787402 in; where left out
 *     1/8 in, because a rod is read so well.
 *   - `levelling`: whether heights rise alike or by a plane; 0 rise, 1 tilt; where left out rise, because most
 *     scanners level themselves.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_POINTS_TO_AXES_MOVED: the points in the axes of the job.
 *   - OVS_POINTS_TO_AXES_TURN (deg): how far they were turned, counter-clockwise.
 *   - OVS_POINTS_TO_AXES_RISE (ft): what was added to heights, where the old origin came to lie.
 *   - OVS_POINTS_TO_AXES_TILT_X (in/ft): how much more along the first axis of the job.
 *   - OVS_POINTS_TO_AXES_TILT_Y (in/ft): how much more along the second.
 *   - OVS_POINTS_TO_AXES_RESIDUALS: what is left over at the known points.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_KNOWN_POINTS,
 * OVS_AXES_DISAGREE, OVS_AXES_MIRRORED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[0.2,0.15,0.25,0.22]},"known":{"name":["nail 1","nail 2"],"x":["0 ft","20 ft"],"y":["0 ft","0 ft"],"job_x":["40 ft","40 ft"],"job_y":["10 ft","30 ft"],"elevation":["0.5 ft","0.6 ft"],"job_elevation":["99.5 ft","99.6 ft"]}}
 */
ovs_answer *ovs_points_to_axes_us(const ovs_points *points,
                                  const double *known_x_ft,
                                  const double *known_y_ft,
                                  const double *known_job_x_ft,
                                  const double *known_job_y_ft,
                                  int known_rows,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Points brought into the axes of the job by two known points or more: turned, shifted and raised, never
 * stretched.
 *
 * Equation: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known points; z' =
 * z + mean rise, or + a plane.
 * Taken for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a mirror and a
 * unit slip are refused by name.
 *
 * - `points`: the points.
 * - `known_x_m` (m): along the first axis, as the points come; at least -1000000000 m, at most 1000000000 m.
 * - `known_y_m` (m): along the second, as the points come; at least -1000000000 m, at most 1000000000 m.
 * - `known_job_x_m` (m): along the first axis of the job; at least -1000000000 m, at most 1000000000 m.
 * - `known_job_y_m` (m): along the second axis of the job; at least -1000000000 m, at most 1000000000 m.
 * - `known_rows`: the points known in both systems: how many rows, each a point known in both systems of axes; at
 *   least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `known`: its name; may be left out.
 *   - `elevation` of `known` (m): height, as the points come; at least -1000000000 m, at most 1000000000 m; may be
 *     left out.
 *   - `job_elevation` of `known` (m): height above the job datum; at least -1000000000 m, at most 1000000000 m;
 *     may be left out.
 *   - `tolerance` (mm): how far distances of two, places of more may be off; at least 0 mm, at most 1000 mm; where
 *     left out 1/4 in, because a nail is found again so well.
 *   - `height_tolerance` (mm): how far heights may be off; at least 0 mm, at most 1000 mm; where left out 1/8 in,
 *     because a rod is read so well.
 *   - `levelling`: whether heights rise alike or by a plane; 0 rise, 1 tilt; where left out rise, because most
 *     scanners level themselves.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_POINTS_TO_AXES_MOVED: the points in the axes of the job.
 *   - OVS_POINTS_TO_AXES_TURN (rad): how far they were turned, counter-clockwise.
 *   - OVS_POINTS_TO_AXES_RISE (m): what was added to heights, where the old origin came to lie.
 *   - OVS_POINTS_TO_AXES_TILT_X (%): how much more along the first axis of the job.
 *   - OVS_POINTS_TO_AXES_TILT_Y (%): how much more along the second.
 *   - OVS_POINTS_TO_AXES_RESIDUALS: what is left over at the known points.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER, OVS_KNOWN_POINTS,
 * OVS_AXES_DISAGREE, OVS_AXES_MIRRORED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[0.2,0.15,0.25,0.22]},"known":{"name":["nail 1","nail 2"],"x":["0 ft","20 ft"],"y":["0 ft","0 ft"],"job_x":["40 ft","40 ft"],"job_y":["10 ft","30 ft"],"elevation":["0.5 ft","0.6 ft"],"job_elevation":["99.5 ft","99.6 ft"]}}
 */
ovs_answer *ovs_points_to_axes_si(const ovs_points *points,
                                  const double *known_x_m,
                                  const double *known_y_m,
                                  const double *known_job_x_m,
                                  const double *known_job_y_m,
                                  int known_rows,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_points_to_axes_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_to_axes_us_why(const ovs_points *points,
                              const double *known_x_ft,
                              const double *known_y_ft,
                              const double *known_job_x_ft,
                              const double *known_job_y_ft,
                              int known_rows,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_points_to_axes_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_to_axes_si_why(const ovs_points *points,
                              const double *known_x_m,
                              const double *known_y_m,
                              const double *known_job_x_m,
                              const double *known_job_y_m,
                              int known_rows,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
 *
 * Equation: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the other end.
 * Taken for granted: the work lies on the left when the wall is walked from the origin.
 *
 * - `points`: the points.
 * - `origin_x_ft` (ft): the end of the wall that becomes zero, along the first axis; at least -3280839895.01 ft,
 *   at most 3280839895.01 ft.
 * - `origin_y_ft` (ft): the same, along the second axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `along_x_ft` (ft): another place along the wall, along the first axis; at least -3280839895.01 ft, at most
 *   3280839895.01 ft.
 * - `along_y_ft` (ft): the same, along the second axis; at least -3280839895.01 ft, at most 3280839895.01 ft.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_POINTS_ALONG_WALL_MOVED: the points in the new axes.
 *   - OVS_POINTS_ALONG_WALL_TURN (deg): how far they were turned, counter-clockwise.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER,
 * OVS_KNOWN_POINTS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[99.2,99.15,99.25,99.22]},"origin_x":"12 ft","origin_y":"0 ft","along_x":"12 ft","along_y":"10 ft"}
 */
ovs_answer *ovs_points_along_wall_us(const ovs_points *points,
                                     double origin_x_ft,
                                     double origin_y_ft,
                                     double along_x_ft,
                                     double along_y_ft,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.
 *
 * Equation: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the other end.
 * Taken for granted: the work lies on the left when the wall is walked from the origin.
 *
 * - `points`: the points.
 * - `origin_x_m` (m): the end of the wall that becomes zero, along the first axis; at least -1000000000 m, at most
 *   1000000000 m.
 * - `origin_y_m` (m): the same, along the second axis; at least -1000000000 m, at most 1000000000 m.
 * - `along_x_m` (m): another place along the wall, along the first axis; at least -1000000000 m, at most
 *   1000000000 m.
 * - `along_y_m` (m): the same, along the second axis; at least -1000000000 m, at most 1000000000 m.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_POINTS_ALONG_WALL_MOVED: the points in the new axes.
 *   - OVS_POINTS_ALONG_WALL_TURN (rad): how far they were turned, counter-clockwise.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_NULL_POINTER,
 * OVS_KNOWN_POINTS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1],"y":[1,1,9,9],"elevation":[99.2,99.15,99.25,99.22]},"origin_x":"12 ft","origin_y":"0 ft","along_x":"12 ft","along_y":"10 ft"}
 */
ovs_answer *ovs_points_along_wall_si(const ovs_points *points,
                                     double origin_x_m,
                                     double origin_y_m,
                                     double along_x_m,
                                     double along_y_m,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_points_along_wall_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_along_wall_us_why(const ovs_points *points,
                                 double origin_x_ft,
                                 double origin_y_ft,
                                 double along_x_ft,
                                 double along_y_ft,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_points_along_wall_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_points_along_wall_si_why(const ovs_points *points,
                                 double origin_x_m,
                                 double origin_y_m,
                                 double along_x_m,
                                 double along_y_m,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points
 * far away.
 *
 * Equation: a point is stray when it is higher than the floor of its cell and those around it by more than above,
 * deeper by more than below, or has fewer than others within reach; floor: lowest agreed heights of cells, things
 * narrower than widest cut off.
 * Taken for granted: the floor is seen beside the things on it; a thing wider than widest, or lower than above, is
 * floor.
 *
 * - `points`: the points of the scan.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `above` (in): higher than this over the floor is stray; more than 0 in, at most 393.700787402 in; where left
 *     out 1 in, because a step of an inch in an old slab is common.
 *   - `below` (in): deeper than this under the floor is stray; more than 0 in, at most 393.700787402 in; where
 *     left out 1 in, because hollows of an old slab are wider than a cell and stay.
 *   - `widest` (ft): width of the widest thing that stands on the floor; more than 0 ft, at most 328.083989501 ft;
 *     where left out 6 ft, because few things left in a cleared shop are wider.
 *   - `cell` (in): width of the cells in which the floor is looked for; more than 0 in, at most 3937.00787402 in;
 *     where left out 6 in, because a scan has many points in each.
 *   - `steepest` (in/ft): the steepest that the floor is; at least 0 in/ft, at most 6 in/ft; where left out 1/4
 *     in/ft, because floors that drain seldom fall more.
 *   - `reach` (ft): how near others must be; more than 0 ft, at most 328.083989501 ft; where left out 1 ft,
 *     because a scan has many points in a foot.
 *   - `others`: how many others must be so near; from 0 to 1000; where left out 3, because echoes come one by one.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_PART_STRAYS_FLOOR: the points kept.
 *   - OVS_PART_STRAYS_KEPT_COUNT: how many were kept.
 *   - OVS_PART_STRAYS_ABOVE_COUNT: how many stand above the floor.
 *   - OVS_PART_STRAYS_BELOW_COUNT: how many lie below it.
 *   - OVS_PART_STRAYS_ALONE_COUNT: how many have too few others near them.
 *   - OVS_PART_STRAYS_STRAYS: which points were taken out, and why.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KIND_MISMATCH,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,2,3,4,1,2,3,4,2.5,2.4],"y":[1,1,1,1,2,2,2,2,1.5,1.6],"elevation":[99.2,99.2,99.19,99.18,99.21,99.2,99.2,99.19,101.7,99.2]},"cell":"18 in","reach":"2 ft"}
 */
ovs_answer *ovs_part_strays_us(const ovs_points *points,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points
 * far away.
 *
 * Equation: a point is stray when it is higher than the floor of its cell and those around it by more than above,
 * deeper by more than below, or has fewer than others within reach; floor: lowest agreed heights of cells, things
 * narrower than widest cut off.
 * Taken for granted: the floor is seen beside the things on it; a thing wider than widest, or lower than above, is
 * floor.
 *
 * - `points`: the points of the scan.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `above` (mm): higher than this over the floor is stray; more than 0 mm, at most 10000 mm; where left out 1
 *     in, because a step of an inch in an old slab is common.
 *   - `below` (mm): deeper than this under the floor is stray; more than 0 mm, at most 10000 mm; where left out 1
 *     in, because hollows of an old slab are wider than a cell and stay.
 *   - `widest` (m): width of the widest thing that stands on the floor; more than 0 m, at most 100 m; where left
 *     out 6 ft, because few things left in a cleared shop are wider.
 *   - `cell` (mm): width of the cells in which the floor is looked for; more than 0 mm, at most 100000 mm; where
 *     left out 6 in, because a scan has many points in each.
 *   - `steepest` (%): the steepest that the floor is; at least 0 %, at most 50 %; where left out 1/4 in/ft,
 *     because floors that drain seldom fall more.
 *   - `reach` (m): how near others must be; more than 0 m, at most 100 m; where left out 1 ft, because a scan has
 *     many points in a foot.
 *   - `others`: how many others must be so near; from 0 to 1000; where left out 3, because echoes come one by one.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_PART_STRAYS_FLOOR: the points kept.
 *   - OVS_PART_STRAYS_KEPT_COUNT: how many were kept.
 *   - OVS_PART_STRAYS_ABOVE_COUNT: how many stand above the floor.
 *   - OVS_PART_STRAYS_BELOW_COUNT: how many lie below it.
 *   - OVS_PART_STRAYS_ALONE_COUNT: how many have too few others near them.
 *   - OVS_PART_STRAYS_STRAYS: which points were taken out, and why.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KIND_MISMATCH,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,2,3,4,1,2,3,4,2.5,2.4],"y":[1,1,1,1,2,2,2,2,1.5,1.6],"elevation":[99.2,99.2,99.19,99.18,99.21,99.2,99.2,99.19,101.7,99.2]},"cell":"18 in","reach":"2 ft"}
 */
ovs_answer *ovs_part_strays_si(const ovs_points *points,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_part_strays_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_part_strays_us_why(const ovs_points *points,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_part_strays_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_part_strays_si_why(const ovs_points *points,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Fewer points that say the same: the surface of a survey through them stays within a height error of every point
 * left out.
 *
 * Equation: from the corners of the convex hull, the worst point of each triangle is taken in until the error or
 * the number holds.
 * Taken for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey has the same
 * outline, or that of the hull.
 *
 * - `points`: the points.
 * - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `within` (in): the height error allowed: this or the count; at least 0 in, at most 393700.787402 in; may be
 *     left out.
 *   - `count`: how many points to keep: this or the height error; from 3 to 4294967295; may be left out.
 *   - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THIN_POINTS_THINNED: the points kept.
 *   - OVS_THIN_POINTS_KEPT_COUNT: how many were kept.
 *   - OVS_THIN_POINTS_ERROR (in): greatest height between the surface through them and a point left out.
 *   - OVS_THIN_POINTS_WORST: the number of the point it is at.
 *   - OVS_THIN_POINTS_HULL_COUNT: how many of those kept are corners of the convex hull.
 *   - OVS_THIN_POINTS_OUTSIDE_COUNT: how many lie outside the outline.
 *   - OVS_THIN_POINTS_KEPT: which points were kept.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_TOO_FEW_SHOTS,
 * OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_THINNING_COUNT, OVS_THINNING_UNREACHABLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1,5,6,3],"y":[1,1,9,9,4,5,7],"elevation":[99.2,99.15,99.25,99.22,99.16,99.18,99.21]},"within":"1/4 in"}
 */
ovs_answer *ovs_thin_points_us(const ovs_points *points,
                               const ovs_outline *outline,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Fewer points that say the same: the surface of a survey through them stays within a height error of every point
 * left out.
 *
 * Equation: from the corners of the convex hull, the worst point of each triangle is taken in until the error or
 * the number holds.
 * Taken for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey has the same
 * outline, or that of the hull.
 *
 * - `points`: the points.
 * - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `within` (mm): the height error allowed: this or the count; at least 0 mm, at most 10000000 mm; may be left
 *     out.
 *   - `count`: how many points to keep: this or the height error; from 3 to 4294967295; may be left out.
 *   - `outline`: the plan edge of the work; points more than 1/2 in outside it are left out; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THIN_POINTS_THINNED: the points kept.
 *   - OVS_THIN_POINTS_KEPT_COUNT: how many were kept.
 *   - OVS_THIN_POINTS_ERROR (mm): greatest height between the surface through them and a point left out.
 *   - OVS_THIN_POINTS_WORST: the number of the point it is at.
 *   - OVS_THIN_POINTS_HULL_COUNT: how many of those kept are corners of the convex hull.
 *   - OVS_THIN_POINTS_OUTSIDE_COUNT: how many lie outside the outline.
 *   - OVS_THIN_POINTS_KEPT: which points were kept.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_TOO_FEW_SHOTS,
 * OVS_COLLINEAR_SHOTS, OVS_NULL_POINTER, OVS_THINNING_COUNT, OVS_THINNING_UNREACHABLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"unit":"ft","x":[1,11,11,1,5,6,3],"y":[1,1,9,9,4,5,7],"elevation":[99.2,99.15,99.25,99.22,99.16,99.18,99.21]},"within":"1/4 in"}
 */
ovs_answer *ovs_thin_points_si(const ovs_points *points,
                               const ovs_outline *outline,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_thin_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thin_points_us_why(const ovs_points *points,
                           const ovs_outline *outline,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_thin_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thin_points_si_why(const ovs_points *points,
                           const ovs_outline *outline,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * The surface of the old slab through points, each a shot: of a file, a scan or a table.
 *
 * Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
 * Taken for granted: the points are in the axes and the datum of the job; the slab is plane between neighbouring
 * points.
 *
 * - `outline`: the plan edge of the work.
 * - `points`: the points.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `outside`: what becomes of points more than 6 in outside the outline; 0 refuse, 1 use, 2 leave_out; where
 *     left out refuse, because a point outside may be a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"unit":"ft","x":[1,11,11,1,5],"y":[1,1,9,9,4],"elevation":[99.2,99.15,99.25,99.22,99.16]}}
 */
ovs_survey *ovs_survey_from_points_us(const ovs_outline *outline,
                                      const ovs_points *points,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * The surface of the old slab through points, each a shot: of a file, a scan or a table.
 *
 * Equation: Delaunay triangles, each plane; shots on one circle are filled from their mean.
 * Taken for granted: the points are in the axes and the datum of the job; the slab is plane between neighbouring
 * points.
 *
 * - `outline`: the plan edge of the work.
 * - `points`: the points.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 *   - `outside`: what becomes of points more than 6 in outside the outline; 0 refuse, 1 use, 2 leave_out; where
 *     left out refuse, because a point outside may be a slip.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_SHOT_OUTSIDE, OVS_TOO_FEW_SHOTS,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"points":{"unit":"ft","x":[1,11,11,1,5],"y":[1,1,9,9,4],"elevation":[99.2,99.15,99.25,99.22,99.16]}}
 */
ovs_survey *ovs_survey_from_points_si(const ovs_outline *outline,
                                      const ovs_points *points,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Why ovs_survey_from_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_points_us_why(const ovs_outline *outline,
                                  const ovs_points *points,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_survey_from_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_points_si_why(const ovs_outline *outline,
                                  const ovs_points *points,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * The surface of the old slab over a triangulated surface of a file, its faces kept as they are.
 *
 * Equation: each face is plane; what lies between faces and their hull counts as unsurveyed.
 * Taken for granted: the surface is in the axes and the datum of the job; faces meet at whole sides; they may go
 * on beyond the outline.
 *
 * - `outline`: the plan edge of the work.
 * - `tin`: the triangulated surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FACE_FLAT,
 * OVS_FACES_OVERLAP.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"tin":{"points":{"unit":"ft","x":[0,13,13,0],"y":[0,0,10,10],"elevation":[99.2,99.15,99.25,99.22]},"faces":[[1,2,3],[1,3,4]]}}
 */
ovs_survey *ovs_survey_from_tin_us(const ovs_outline *outline,
                                   const ovs_tin *tin,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * The surface of the old slab over a triangulated surface of a file, its faces kept as they are.
 *
 * Equation: each face is plane; what lies between faces and their hull counts as unsurveyed.
 * Taken for granted: the surface is in the axes and the datum of the job; faces meet at whole sides; they may go
 * on beyond the outline.
 *
 * - `outline`: the plan edge of the work.
 * - `tin`: the triangulated surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `instrument`: what the readings were taken with; 0 laser, 1 optical_hundredths, 2 optical_eighths, 3
 *     optical_sixteenths, 4 optical_millimetres, 5 string, 6 water; where left out laser, because most crews have
 *     one.
 *   - `texture`: what the old floor feels like; 0 trowelled, 1 broomed, 2 scaled, 3 rough; where left out broomed,
 *     because most old slabs are.
 *   - `beyond_allowed`: whether the work may reach more than 4 ft beyond the shots; 0 no, 1 yes; where left out
 *     no, because heights that far out are a guess.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The surveyed old slab: outline, shots and the surface through them.
 *
 * Refuses with OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_FACE_FLAT,
 * OVS_FACES_OVERLAP.
 * Basis: plane and solid geometry: derived.
 * Basis: reading and texture deviations behind the site words: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"outline":{"sides":[{"length":"12 ft"},{"length":"10 ft"},{"length":"12 ft"},{"length":"10 ft"}]},"tin":{"points":{"unit":"ft","x":[0,13,13,0],"y":[0,0,10,10],"elevation":[99.2,99.15,99.25,99.22]},"faces":[[1,2,3],[1,3,4]]}}
 */
ovs_survey *ovs_survey_from_tin_si(const ovs_outline *outline,
                                   const ovs_tin *tin,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_survey_from_tin_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_tin_us_why(const ovs_outline *outline,
                               const ovs_tin *tin,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_survey_from_tin_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_from_tin_si_why(const ovs_outline *outline,
                               const ovs_tin *tin,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * The ponds of the old slab: where water stands once all that can has run off, how deep and how much.
 *
 * Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
 * old slab.
 * Taken for granted: outer edges are open and holes are walled where nothing is stated; nothing soaks in or dries.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (in): ponds shallower than this are left out; at least 0 in, at most 12 in; where left out 1/16
 *     in, because a rod hardly tells less.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_STANDING_WATER_COUNT: how many ponds.
 *   - OVS_STANDING_WATER_AREA (ft2): area under water.
 *   - OVS_STANDING_WATER_VOLUME (ft3): water in all ponds.
 *   - OVS_STANDING_WATER_DEPTH (in): greatest depth; none without a pond.
 *   - OVS_STANDING_WATER_LEFT_OUT: how many ponds were shallower.
 *   - OVS_STANDING_WATER_LEFT_OUT_VOLUME (ft3): water in those.
 *   - OVS_STANDING_WATER_PONDS: the ponds.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_CONTRADICTION,
 * OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["0 ft","6 ft","12 ft"],"rows":["0 ft","5 ft","10 ft"],"elevations":["99.20 ft","99.20 ft","99.20 ft","99.25 ft","99.15 ft","99.22 ft","99.30 ft","99.28 ft","99.30 ft"]}},"edges":[{"edge":"back","state":"walled"}]}
 */
ovs_answer *ovs_standing_water_us(const ovs_survey *survey,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * The ponds of the old slab: where water stands once all that can has run off, how deep and how much.
 *
 * Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
 * old slab.
 * Taken for granted: outer edges are open and holes are walled where nothing is stated; nothing soaks in or dries.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (mm): ponds shallower than this are left out; at least 0 mm, at most 304.8 mm; where left out
 *     1/16 in, because a rod hardly tells less.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_STANDING_WATER_COUNT: how many ponds.
 *   - OVS_STANDING_WATER_AREA (m2): area under water.
 *   - OVS_STANDING_WATER_VOLUME (m3): water in all ponds.
 *   - OVS_STANDING_WATER_DEPTH (mm): greatest depth; none without a pond.
 *   - OVS_STANDING_WATER_LEFT_OUT: how many ponds were shallower.
 *   - OVS_STANDING_WATER_LEFT_OUT_VOLUME (m3): water in those.
 *   - OVS_STANDING_WATER_PONDS: the ponds.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_CONTRADICTION,
 * OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["0 ft","6 ft","12 ft"],"rows":["0 ft","5 ft","10 ft"],"elevations":["99.20 ft","99.20 ft","99.20 ft","99.25 ft","99.15 ft","99.22 ft","99.30 ft","99.28 ft","99.30 ft"]}},"edges":[{"edge":"back","state":"walled"}]}
 */
ovs_answer *ovs_standing_water_si(const ovs_survey *survey,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_standing_water_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_standing_water_us_why(const ovs_survey *survey,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_standing_water_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_standing_water_si_why(const ovs_survey *survey,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
 * - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
 * - `fall_in_per_ft` (in/ft), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_us(2, 20, ...) gives fall_in_per_ft = 0.1.
 */
int ovs_fall_us(double drop_in, double run_ft, double *fall_in_per_ft, int *notes, char *msg, int msg_len);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
 * - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
 * - `fall_percent` (%), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_si(50.8, 6.096, ...) gives fall_percent = 0.833333.
 */
int ovs_fall_si(double drop_mm, double run_m, double *fall_percent, int *notes, char *msg, int msg_len);

/**
 * ovs_fall_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_us_array(const double *drop_in,
                      const double *run_ft,
                      double *fall_in_per_ft,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_fall_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_si_array(const double *drop_mm,
                      const double *run_m,
                      double *fall_percent,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_fall_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_us_why(double drop_in, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_fall_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_si_why(double drop_mm, double run_m, char *text, int text_len, int *needed);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
 * - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
 * - `drop_in` (in), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_us(0.125, 32, ...) gives drop_in = 4.
 */
int ovs_drop_us(double fall_in_per_ft, double run_ft, double *drop_in, int *notes, char *msg, int msg_len);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
 * - `run_m` (m): level distance; more than 0 m, at most 3048 m.
 * - `drop_mm` (mm), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_si(1.04167, 9.7536, ...) gives drop_mm = 101.6.
 */
int ovs_drop_si(double fall_percent, double run_m, double *drop_mm, int *notes, char *msg, int msg_len);

/**
 * ovs_drop_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_us_array(const double *fall_in_per_ft,
                      const double *run_ft,
                      double *drop_in,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_drop_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_si_array(const double *fall_percent,
                      const double *run_m,
                      double *drop_mm,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_drop_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_us_why(double fall_in_per_ft, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_drop_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_si_why(double fall_percent, double run_m, char *text, int text_len, int *needed);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
 * t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
 * - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `net_ft3` (ft3), out: fill less high spots.
 * - `fill_ft3` (ft3), out: fill above the old slab.
 * - `high_ft3` (ft3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_us(50, 3, 4, 5, ...) gives net_ft3 = 16.6667, fill_ft3 = 16.6667, high_ft3 = 0.
 */
int ovs_triangular_prism_us(double area_ft2,
                            double thickness_1_in,
                            double thickness_2_in,
                            double thickness_3_in,
                            double *net_ft3,
                            double *fill_ft3,
                            double *high_ft3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 -
 * t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
 * - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
 * - `net_m3` (m3), out: fill less high spots.
 * - `fill_m3` (m3), out: fill above the old slab.
 * - `high_m3` (m3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_si(4.64515, 76.2, 101.6, 127, ...) gives net_m3 = 0.471947, fill_m3 = 0.471947, high_m3 = 0.
 */
int ovs_triangular_prism_si(double area_m2,
                            double thickness_1_mm,
                            double thickness_2_mm,
                            double thickness_3_mm,
                            double *net_m3,
                            double *fill_m3,
                            double *high_m3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_triangular_prism_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_us_array(const double *area_ft2,
                                  const double *thickness_1_in,
                                  const double *thickness_2_in,
                                  const double *thickness_3_in,
                                  double *net_ft3,
                                  double *fill_ft3,
                                  double *high_ft3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_triangular_prism_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_si_array(const double *area_m2,
                                  const double *thickness_1_mm,
                                  const double *thickness_2_mm,
                                  const double *thickness_3_mm,
                                  double *net_m3,
                                  double *fill_m3,
                                  double *high_m3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_triangular_prism_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_us_why(double area_ft2,
                                double thickness_1_in,
                                double thickness_2_in,
                                double thickness_3_in,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_triangular_prism_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_si_why(double area_m2,
                                double thickness_1_mm,
                                double thickness_2_mm,
                                double thickness_3_mm,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * A level finish.
 *
 * Equation: z = elevation.
 * Taken for granted: water may stand.
 *
 * - `elevation_ft` (ft): its elevation; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"elevation":"99.55 ft"}
 */
ovs_finish *ovs_finish_level_us(double elevation_ft,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * A level finish.
 *
 * Equation: z = elevation.
 * Taken for granted: water may stand.
 *
 * - `elevation_m` (m): its elevation; at least -10000 m, at most 10000 m.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"elevation":"99.55 ft"}
 */
ovs_finish *ovs_finish_level_si(double elevation_m,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_finish_level_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_level_us_why(double elevation_ft,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_finish_level_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_level_si_why(double elevation_m,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The plane finish through three points.
 *
 * Equation: z = a + b x + c y through the three.
 * Taken for granted: one plane.
 *
 * - `points_x_ft` (ft): distance from the left; any finite number.
 * - `points_y_ft` (ft): distance from the front; any finite number.
 * - `points_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `points_rows`: three points that are not on one line: how many rows, each a point of the finish; at least 1.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FINISH_UNDETERMINED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"x":["0 ft","20 ft","0 ft"],"y":["0 ft","0 ft","24 ft"],"elevation":["100.0 ft","99.8 ft","99.88 ft"]}}
 */
ovs_finish *ovs_finish_from_points_us(const double *points_x_ft,
                                      const double *points_y_ft,
                                      const double *points_elevation_ft,
                                      int points_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * The plane finish through three points.
 *
 * Equation: z = a + b x + c y through the three.
 * Taken for granted: one plane.
 *
 * - `points_x_m` (m): distance from the left; any finite number.
 * - `points_y_m` (m): distance from the front; any finite number.
 * - `points_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
 * - `points_rows`: three points that are not on one line: how many rows, each a point of the finish; at least 1.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FINISH_UNDETERMINED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"points":{"x":["0 ft","20 ft","0 ft"],"y":["0 ft","0 ft","24 ft"],"elevation":["100.0 ft","99.8 ft","99.88 ft"]}}
 */
ovs_finish *ovs_finish_from_points_si(const double *points_x_m,
                                      const double *points_y_m,
                                      const double *points_elevation_m,
                                      int points_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Why ovs_finish_from_points_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_points_us_why(const double *points_x_ft,
                                  const double *points_y_ft,
                                  const double *points_elevation_ft,
                                  int points_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_finish_from_points_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_points_si_why(const double *points_x_m,
                                  const double *points_y_m,
                                  const double *points_elevation_m,
                                  int points_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * The plane finish that stands level along an edge and falls square to it.
 *
 * Equation: z = elevation + fall x distance from the edge.
 * Taken for granted: the edge is straight; water leaves over it.
 *
 * - `survey`: the old slab with the edge.
 * - `edge`, `edge_len`: name of the edge.
 * - `elevation_ft` (ft): height of the finish at the edge; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `fall_in_per_ft` (in/ft): fall towards the edge; at least 0 in/ft, at most 12 in/ft.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edge":"front","elevation":"99.5 ft","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_edge_us(const ovs_survey *survey,
                                  const char *edge,
                                  int edge_len,
                                  double elevation_ft,
                                  double fall_in_per_ft,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * The plane finish that stands level along an edge and falls square to it.
 *
 * Equation: z = elevation + fall x distance from the edge.
 * Taken for granted: the edge is straight; water leaves over it.
 *
 * - `survey`: the old slab with the edge.
 * - `edge`, `edge_len`: name of the edge.
 * - `elevation_m` (m): height of the finish at the edge; at least -10000 m, at most 10000 m.
 * - `fall_percent` (%): fall towards the edge; at least 0 %, at most 100 %.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edge":"front","elevation":"99.5 ft","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_edge_si(const ovs_survey *survey,
                                  const char *edge,
                                  int edge_len,
                                  double elevation_m,
                                  double fall_percent,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_finish_to_edge_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_edge_us_why(const ovs_survey *survey,
                              const char *edge,
                              int edge_len,
                              double elevation_ft,
                              double fall_in_per_ft,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_finish_to_edge_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_edge_si_why(const ovs_survey *survey,
                              const char *edge,
                              int edge_len,
                              double elevation_m,
                              double fall_percent,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
 *
 * Equation: elevation at the edge = greatest of (old slab + least + margin - fall x distance from the edge).
 * Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
 *
 * - `survey`: the old slab.
 * - `least_in` (in): least thickness; at least 0 in, at most 120 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edge`: the edge it falls to; none for a level finish; may be left out.
 *   - `fall` (in/ft): fall towards the edge; at least 0 in/ft, at most 12 in/ft; where left out 1/8 in/ft, because
 *     the least for a well-finished floor.
 *   - `round` (in): heights are rounded up to whole steps of this; at least 0 in, at most 12 in; may be left out.
 *   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
 *     most 32808.3989501 ft; where left out 0 ft, because the job datum.
 *   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_FINISH_UNDETERMINED,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"least":"3 in","margin":"3/8 in","edge":"front","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_at_least_us(const ovs_survey *survey,
                                   double least_in,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * The lowest plane finish that falls square to an edge and leaves a least thickness everywhere between the shots.
 *
 * Equation: elevation at the edge = greatest of (old slab + least + margin - fall x distance from the edge).
 * Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
 *
 * - `survey`: the old slab.
 * - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edge`: the edge it falls to; none for a level finish; may be left out.
 *   - `fall` (%): fall towards the edge; at least 0 %, at most 100 %; where left out 1/8 in/ft, because the least
 *     for a well-finished floor.
 *   - `round` (mm): heights are rounded up to whole steps of this; at least 0 mm, at most 304.8 mm; may be left
 *     out.
 *   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
 *     m; where left out 0 ft, because the job datum.
 *   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EDGE_UNKNOWN, OVS_FINISH_UNDETERMINED,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"least":"3 in","margin":"3/8 in","edge":"front","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_at_least_si(const ovs_survey *survey,
                                   double least_mm,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_finish_at_least_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_at_least_us_why(const ovs_survey *survey,
                               double least_in,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_finish_at_least_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_at_least_si_why(const ovs_survey *survey,
                               double least_mm,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
 *
 * Equation: z = a + b x + c y through the corners of each facet.
 * Taken for granted: the corners of a facet are in one plane within 1e-6 ft; a warped one is split into triangles.
 *
 * - `corners_x_ft` (ft): distance from the left; any finite number.
 * - `corners_y_ft` (ft): distance from the front; any finite number.
 * - `corners_elevation_ft` (ft): height of the finish there; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `corners_rows`: the corners: how many rows, each a corner that facets share; at least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `corners`: its name, by which facets call it; else they use its number from 1 on; may be left out.
 *   - `facets`: the facets; required.
 *   - `corners` of `facets`: names or numbers of its corners in order round it, commas between; required.
 *   - `name` of `facets`: its name; may be left out.
 *   - `falls_to` of `facets`: what it falls to: an edge, a valley, a drain; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FACET_WARPED, OVS_FACETS_OVERLAP,
 * OVS_FACET_SHAPE, OVS_CORNER_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"name":["A","B","C","D","drain"],"x":["0 ft","20 ft","20 ft","0 ft","8 ft"],"y":["0 ft","0 ft","16 ft","16 ft","6 ft"],"elevation":["100 ft","100 ft","100 ft","100 ft","99.9 ft"]},"facets":{"name":["front","right","back","left"],"corners":["A, B, drain","B, C, drain","C, D, drain","D, A, drain"],"falls_to":["drain","drain","drain","drain"]}}
 */
ovs_finish *ovs_finish_from_facets_us(const double *corners_x_ft,
                                      const double *corners_y_ft,
                                      const double *corners_elevation_ft,
                                      int corners_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * A finish of several facets over corners with heights, which they share, so that they meet at valleys and ridges.
 *
 * Equation: z = a + b x + c y through the corners of each facet.
 * Taken for granted: the corners of a facet are in one plane within 1e-6 ft; a warped one is split into triangles.
 *
 * - `corners_x_m` (m): distance from the left; any finite number.
 * - `corners_y_m` (m): distance from the front; any finite number.
 * - `corners_elevation_m` (m): height of the finish there; at least -10000 m, at most 10000 m.
 * - `corners_rows`: the corners: how many rows, each a corner that facets share; at least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `corners`: its name, by which facets call it; else they use its number from 1 on; may be left out.
 *   - `facets`: the facets; required.
 *   - `corners` of `facets`: names or numbers of its corners in order round it, commas between; required.
 *   - `name` of `facets`: its name; may be left out.
 *   - `falls_to` of `facets`: what it falls to: an edge, a valley, a drain; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_FACET_WARPED, OVS_FACETS_OVERLAP,
 * OVS_FACET_SHAPE, OVS_CORNER_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"name":["A","B","C","D","drain"],"x":["0 ft","20 ft","20 ft","0 ft","8 ft"],"y":["0 ft","0 ft","16 ft","16 ft","6 ft"],"elevation":["100 ft","100 ft","100 ft","100 ft","99.9 ft"]},"facets":{"name":["front","right","back","left"],"corners":["A, B, drain","B, C, drain","C, D, drain","D, A, drain"],"falls_to":["drain","drain","drain","drain"]}}
 */
ovs_finish *ovs_finish_from_facets_si(const double *corners_x_m,
                                      const double *corners_y_m,
                                      const double *corners_elevation_m,
                                      int corners_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Why ovs_finish_from_facets_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_facets_us_why(const double *corners_x_ft,
                                  const double *corners_y_ft,
                                  const double *corners_elevation_ft,
                                  int corners_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_finish_from_facets_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_facets_si_why(const double *corners_x_m,
                                  const double *corners_y_m,
                                  const double *corners_elevation_m,
                                  int corners_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * A finish of several facets, each with the plane through three heights of its own, checked to meet.
 *
 * Equation: z = a + b x + c y through the heights of each facet.
 * Taken for granted: facets that share an edge have one height along it.
 *
 * - `corners_x_ft` (ft): distance from the left; any finite number.
 * - `corners_y_ft` (ft): distance from the front; any finite number.
 * - `corners_rows`: the corners of all facets: how many rows, each a corner of one facet, in order round it; at
 *   least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `facet` of `corners`: the facet it is of; required.
 *   - `elevation` of `corners` (ft): height of the finish there, at three corners of each facet or more; at least
 *     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_FACETS_APART, OVS_FACET_SHAPE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"facet":["left","left","left","left","right","right","right","right"],"x":["0 ft","10 ft","10 ft","0 ft","10 ft","20 ft","20 ft","10 ft"],"y":["0 ft","0 ft","16 ft","16 ft","0 ft","0 ft","16 ft","16 ft"],"elevation":["100 ft","99.9 ft","99.9 ft",null,"99.9 ft","100.1 ft",null,"99.9 ft"]}}
 */
ovs_finish *ovs_finish_from_planes_us(const double *corners_x_ft,
                                      const double *corners_y_ft,
                                      int corners_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * A finish of several facets, each with the plane through three heights of its own, checked to meet.
 *
 * Equation: z = a + b x + c y through the heights of each facet.
 * Taken for granted: facets that share an edge have one height along it.
 *
 * - `corners_x_m` (m): distance from the left; any finite number.
 * - `corners_y_m` (m): distance from the front; any finite number.
 * - `corners_rows`: the corners of all facets: how many rows, each a corner of one facet, in order round it; at
 *   least 3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `facet` of `corners`: the facet it is of; required.
 *   - `elevation` of `corners` (m): height of the finish there, at three corners of each facet or more; at least
 *     -10000 m, at most 10000 m; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_FACETS_APART, OVS_FACET_SHAPE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"corners":{"facet":["left","left","left","left","right","right","right","right"],"x":["0 ft","10 ft","10 ft","0 ft","10 ft","20 ft","20 ft","10 ft"],"y":["0 ft","0 ft","16 ft","16 ft","0 ft","0 ft","16 ft","16 ft"],"elevation":["100 ft","99.9 ft","99.9 ft",null,"99.9 ft","100.1 ft",null,"99.9 ft"]}}
 */
ovs_finish *ovs_finish_from_planes_si(const double *corners_x_m,
                                      const double *corners_y_m,
                                      int corners_rows,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Why ovs_finish_from_planes_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_planes_us_why(const double *corners_x_ft,
                                  const double *corners_y_ft,
                                  int corners_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_finish_from_planes_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_from_planes_si_why(const double *corners_x_m,
                                  const double *corners_y_m,
                                  int corners_rows,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Two planes that fall to a valley across the work; the valley may fall along its length.
 *
 * Equation: both planes hold the line; square to it they rise or fall by their own falls.
 * Taken for granted: left and right are seen from the first point of the valley looking to the second.
 *
 * - `survey`: the old slab with its outline.
 * - `valley_x_ft` (ft): distance from the left; any finite number.
 * - `valley_y_ft` (ft): distance from the front; any finite number.
 * - `valley_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `valley_rows`: two points of the valley: how many rows, each a point of the finish; at least 1.
 * - `fall_in_per_ft` (in/ft): fall to the valley, square to it; at least 0 in/ft, at most 12 in/ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
 *     left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_FINISH_UNDETERMINED, OVS_NULL_POINTER, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"valley":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.5 ft","99.7 ft"]},"fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_valley_us(const ovs_survey *survey,
                                    const double *valley_x_ft,
                                    const double *valley_y_ft,
                                    const double *valley_elevation_ft,
                                    int valley_rows,
                                    double fall_in_per_ft,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Two planes that fall to a valley across the work; the valley may fall along its length.
 *
 * Equation: both planes hold the line; square to it they rise or fall by their own falls.
 * Taken for granted: left and right are seen from the first point of the valley looking to the second.
 *
 * - `survey`: the old slab with its outline.
 * - `valley_x_m` (m): distance from the left; any finite number.
 * - `valley_y_m` (m): distance from the front; any finite number.
 * - `valley_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
 * - `valley_rows`: two points of the valley: how many rows, each a point of the finish; at least 1.
 * - `fall_percent` (%): fall to the valley, square to it; at least 0 %, at most 100 %.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_FINISH_UNDETERMINED, OVS_NULL_POINTER, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"valley":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.5 ft","99.7 ft"]},"fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_valley_si(const ovs_survey *survey,
                                    const double *valley_x_m,
                                    const double *valley_y_m,
                                    const double *valley_elevation_m,
                                    int valley_rows,
                                    double fall_percent,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_finish_to_valley_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_valley_us_why(const ovs_survey *survey,
                                const double *valley_x_ft,
                                const double *valley_y_ft,
                                const double *valley_elevation_ft,
                                int valley_rows,
                                double fall_in_per_ft,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_finish_to_valley_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_valley_si_why(const ovs_survey *survey,
                                const double *valley_x_m,
                                const double *valley_y_m,
                                const double *valley_elevation_m,
                                int valley_rows,
                                double fall_percent,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
 *
 * Equation: both planes hold the line; square to it they rise or fall by their own falls.
 * Taken for granted: left and right are seen from the first point of the ridge looking to the second.
 *
 * - `survey`: the old slab with its outline.
 * - `ridge_x_ft` (ft): distance from the left; any finite number.
 * - `ridge_y_ft` (ft): distance from the front; any finite number.
 * - `ridge_elevation_ft` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `ridge_rows`: two points of the ridge: how many rows, each a point of the finish; at least 1.
 * - `fall_in_per_ft` (in/ft): fall away from the ridge, square to it; at least 0 in/ft, at most 12 in/ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
 *     left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"ridge":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.8 ft","99.8 ft"]},"fall":"1/8 in/ft","right_fall":"1/4 in/ft"}
 */
ovs_finish *ovs_finish_crown_us(const ovs_survey *survey,
                                const double *ridge_x_ft,
                                const double *ridge_y_ft,
                                const double *ridge_elevation_ft,
                                int ridge_rows,
                                double fall_in_per_ft,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * A crown: two planes that fall away from a ridge across the work; the ridge may fall along its length.
 *
 * Equation: both planes hold the line; square to it they rise or fall by their own falls.
 * Taken for granted: left and right are seen from the first point of the ridge looking to the second.
 *
 * - `survey`: the old slab with its outline.
 * - `ridge_x_m` (m): distance from the left; any finite number.
 * - `ridge_y_m` (m): distance from the front; any finite number.
 * - `ridge_elevation_m` (m): height there; at least -10000 m, at most 10000 m.
 * - `ridge_rows`: two points of the ridge: how many rows, each a point of the finish; at least 1.
 * - `fall_percent` (%): fall away from the ridge, square to it; at least 0 %, at most 100 %.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"ridge":{"x":["10 ft","10 ft"],"y":["0 ft","32 ft"],"elevation":["99.8 ft","99.8 ft"]},"fall":"1/8 in/ft","right_fall":"1/4 in/ft"}
 */
ovs_finish *ovs_finish_crown_si(const ovs_survey *survey,
                                const double *ridge_x_m,
                                const double *ridge_y_m,
                                const double *ridge_elevation_m,
                                int ridge_rows,
                                double fall_percent,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_finish_crown_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_crown_us_why(const ovs_survey *survey,
                            const double *ridge_x_ft,
                            const double *ridge_y_ft,
                            const double *ridge_elevation_ft,
                            int ridge_rows,
                            double fall_in_per_ft,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_finish_crown_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_crown_si_why(const ovs_survey *survey,
                            const double *ridge_x_m,
                            const double *ridge_y_m,
                            const double *ridge_elevation_m,
                            int ridge_rows,
                            double fall_percent,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
 *
 * Equation: the planes hold the rims of the trench, which is level across, and rise from them by their own falls.
 * Taken for granted: left and right are seen from the first point of the trench looking to the second; an edge's
 * trench starts where the edge does.
 *
 * - `survey`: the old slab with its outline.
 * - `fall_in_per_ft` (in/ft): fall to the trench, square to it; at least 0 in/ft, at most 12 in/ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `trench`: two points of the middle of the trench, at the height of its rims; may be left out.
 *   - `x` of `trench` (ft): distance from the left; any finite number; required.
 *   - `y` of `trench` (ft): distance from the front; any finite number; required.
 *   - `elevation` of `trench` (ft): height there; at least -32808.3989501 ft, at most 32808.3989501 ft; required.
 *   - `edge`: in place of the points: the edge the trench lies along; may be left out.
 *   - `elevation` (ft): along an edge: height of the rims where it starts; at least -32808.3989501 ft, at most
 *     32808.3989501 ft; may be left out.
 *   - `elevation_end` (ft): along an edge: height of the rims where it ends, where the trench is not level; at
 *     least -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
 *   - `width` (in): width from rim to rim; at least 0 in, at most 1200 in; where left out 0 in, because a slot.
 *   - `right_fall` (in/ft): fall on the right, where it is another; at least 0 in/ft, at most 12 in/ft; may be
 *     left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED, OVS_FINISH_TWICE,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"trench":{"x":["0 ft","20 ft"],"y":["16 ft","16 ft"],"elevation":["99.6 ft","99.5 ft"]},"width":"6 in","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_trench_us(const ovs_survey *survey,
                                    double fall_in_per_ft,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Planes that fall to a trench drain: two to one across the work, or one to a trench along an edge, inside it.
 *
 * Equation: the planes hold the rims of the trench, which is level across, and rise from them by their own falls.
 * Taken for granted: left and right are seen from the first point of the trench looking to the second; an edge's
 * trench starts where the edge does.
 *
 * - `survey`: the old slab with its outline.
 * - `fall_percent` (%): fall to the trench, square to it; at least 0 %, at most 100 %.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `trench`: two points of the middle of the trench, at the height of its rims; may be left out.
 *   - `x` of `trench` (m): distance from the left; any finite number; required.
 *   - `y` of `trench` (m): distance from the front; any finite number; required.
 *   - `elevation` of `trench` (m): height there; at least -10000 m, at most 10000 m; required.
 *   - `edge`: in place of the points: the edge the trench lies along; may be left out.
 *   - `elevation` (m): along an edge: height of the rims where it starts; at least -10000 m, at most 10000 m; may
 *     be left out.
 *   - `elevation_end` (m): along an edge: height of the rims where it ends, where the trench is not level; at
 *     least -10000 m, at most 10000 m; may be left out.
 *   - `width` (mm): width from rim to rim; at least 0 mm, at most 30480 mm; where left out 0 in, because a slot.
 *   - `right_fall` (%): fall on the right, where it is another; at least 0 %, at most 100 %; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED, OVS_FINISH_TWICE,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"trench":{"x":["0 ft","20 ft"],"y":["16 ft","16 ft"],"elevation":["99.6 ft","99.5 ft"]},"width":"6 in","fall":"1/8 in/ft"}
 */
ovs_finish *ovs_finish_to_trench_si(const ovs_survey *survey,
                                    double fall_percent,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_finish_to_trench_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_trench_us_why(const ovs_survey *survey,
                                double fall_in_per_ft,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_finish_to_trench_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_trench_si_why(const ovs_survey *survey,
                                double fall_percent,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Planes that fall from a level perimeter to an area drain, one from each run of the outline.
 *
 * Equation: each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter - fall
 * x way of the water.
 * Taken for granted: every corner of the outline can be seen from the drain; holes take nothing away; give the
 * drain's height or a fall.
 *
 * - `survey`: the old slab with its outline.
 * - `x_ft` (ft): middle of the drain, from the left; any finite number.
 * - `y_ft` (ft): middle of the drain, from the front; any finite number.
 * - `elevation_ft` (ft): height of the finish all along the outer edges; at least -32808.3989501 ft, at most
 *   32808.3989501 ft.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `drain_elevation` (ft): height of the drain; at least -32808.3989501 ft, at most 32808.3989501 ft; may be
 *     left out.
 *   - `fall` (in/ft): fall to the drain, in place of its height; at least 0 in/ft, at most 12 in/ft; may be left
 *     out.
 *   - `along`: the way the fall is meant along: from the farthest corner or from the nearest place; 0 longest, 1
 *     shortest; where left out longest, because the fall is then met everywhere.
 *   - `rim_x` (in): size of the drain's level rim along x; none for a point; at least 0 in, at most 1200 in; may
 *     be left out.
 *   - `rim_y` (in): its size along y, where it is not square; at least 0 in, at most 1200 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED,
 * OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_CORNER_UNSEEN, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x":"10 ft","y":"14 ft","elevation":"99.7 ft","fall":"1/8 in/ft","rim_x":"12 in"}
 */
ovs_finish *ovs_finish_to_drain_us(const ovs_survey *survey,
                                   double x_ft,
                                   double y_ft,
                                   double elevation_ft,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Planes that fall from a level perimeter to an area drain, one from each run of the outline.
 *
 * Equation: each plane holds its run at the perimeter's height and the drain at its own; drain = perimeter - fall
 * x way of the water.
 * Taken for granted: every corner of the outline can be seen from the drain; holes take nothing away; give the
 * drain's height or a fall.
 *
 * - `survey`: the old slab with its outline.
 * - `x_m` (m): middle of the drain, from the left; any finite number.
 * - `y_m` (m): middle of the drain, from the front; any finite number.
 * - `elevation_m` (m): height of the finish all along the outer edges; at least -10000 m, at most 10000 m.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `drain_elevation` (m): height of the drain; at least -10000 m, at most 10000 m; may be left out.
 *   - `fall` (%): fall to the drain, in place of its height; at least 0 %, at most 100 %; may be left out.
 *   - `along`: the way the fall is meant along: from the farthest corner or from the nearest place; 0 longest, 1
 *     shortest; where left out longest, because the fall is then met everywhere.
 *   - `rim_x` (mm): size of the drain's level rim along x; none for a point; at least 0 mm, at most 30480 mm; may
 *     be left out.
 *   - `rim_y` (mm): its size along y, where it is not square; at least 0 mm, at most 30480 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_FINISH_UNDETERMINED,
 * OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_CORNER_UNSEEN, OVS_OFF_WORK.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x":"10 ft","y":"14 ft","elevation":"99.7 ft","fall":"1/8 in/ft","rim_x":"12 in"}
 */
ovs_finish *ovs_finish_to_drain_si(const ovs_survey *survey,
                                   double x_m,
                                   double y_m,
                                   double elevation_m,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_finish_to_drain_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_drain_us_why(const ovs_survey *survey,
                               double x_ft,
                               double y_ft,
                               double elevation_ft,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_finish_to_drain_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_to_drain_si_why(const ovs_survey *survey,
                               double x_m,
                               double y_m,
                               double elevation_m,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
 *
 * Equation: the strip holds the finish's height along its inner line; square to the edge it has its own fall.
 * Taken for granted: the strip takes everything within its width of the line of the edge.
 *
 * - `survey`: the old slab with the edge.
 * - `finish`: the finish without the strip.
 * - `edge`, `edge_len`: name of the edge.
 * - `width_ft` (ft): width of the strip; at least 0 ft, at most 100 ft.
 * - `fall_in_per_ft` (in/ft): fall of the strip, square to the edge; at least 0 in/ft, at most 12 in/ft.
 * - `toward`: what the strip falls to: the edge as an apron, the floor as a curb; 0 edge, 1 floor.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"edge":"front","width":"2 ft","fall":"1/2 in/ft","toward":"edge"}
 */
ovs_finish *ovs_finish_with_strip_us(const ovs_survey *survey,
                                     const ovs_finish *finish,
                                     const char *edge,
                                     int edge_len,
                                     double width_ft,
                                     double fall_in_per_ft,
                                     int toward,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * A finish with a strip along an edge that has a fall of its own and meets it: a curb, an apron.
 *
 * Equation: the strip holds the finish's height along its inner line; square to the edge it has its own fall.
 * Taken for granted: the strip takes everything within its width of the line of the edge.
 *
 * - `survey`: the old slab with the edge.
 * - `finish`: the finish without the strip.
 * - `edge`, `edge_len`: name of the edge.
 * - `width_m` (m): width of the strip; at least 0 m, at most 30.48 m.
 * - `fall_percent` (%): fall of the strip, square to the edge; at least 0 %, at most 100 %.
 * - `toward`: what the strip falls to: the edge as an apron, the floor as a curb; 0 edge, 1 floor.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: The new top surface: one plane, or facets that meet.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"edge":"front","width":"2 ft","fall":"1/2 in/ft","toward":"edge"}
 */
ovs_finish *ovs_finish_with_strip_si(const ovs_survey *survey,
                                     const ovs_finish *finish,
                                     const char *edge,
                                     int edge_len,
                                     double width_m,
                                     double fall_percent,
                                     int toward,
                                     const char *options_json,
                                     int options_len,
                                     int *status,
                                     int *notes,
                                     int notes_len,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_finish_with_strip_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_with_strip_us_why(const ovs_survey *survey,
                                 const ovs_finish *finish,
                                 const char *edge,
                                 int edge_len,
                                 double width_ft,
                                 double fall_in_per_ft,
                                 int toward,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_finish_with_strip_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_with_strip_si_why(const ovs_survey *survey,
                                 const ovs_finish *finish,
                                 const char *edge,
                                 int edge_len,
                                 double width_m,
                                 double fall_percent,
                                 int toward,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
 *
 * Equation: raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles and
 * facets cut one another.
 * Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
 *
 * - `survey`: the old slab.
 * - `finish`: the finish as drawn.
 * - `least_in` (in): least thickness; at least 0 in, at most 120 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; may be left out.
 *   - `round` (in): the lift is rounded up to whole steps of this, so that heights given in steps stay so; at
 *     least 0 in, at most 12 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_RAISED_FINISH: the finish.
 *   - OVS_FINISH_RAISED_RAISED_BY (in): how far it was lifted; below zero where it was lowered.
 *   - OVS_FINISH_RAISED_AT_X (ft): the place that fixes it, from the left.
 *   - OVS_FINISH_RAISED_AT_Y (ft): the place that fixes it, from the front.
 *   - OVS_FINISH_RAISED_AT_SHOT: the shot there.
 *   - OVS_FINISH_RAISED_AT_FACET: the facet there.
 *   - OVS_FINISH_RAISED_ROUNDED_BY (in): how much of the lift is rounding.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.3 ft"},"least":"3 in","margin":"3/8 in","round":"1/8 in"}
 */
ovs_answer *ovs_finish_raised_us(const ovs_survey *survey,
                                 const ovs_finish *finish,
                                 double least_in,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Any finish lifted or lowered as a whole to where it just leaves a least thickness everywhere between the shots.
 *
 * Equation: raised by = greatest of (old slab + least + margin - finish), at shots and wherever triangles and
 * facets cut one another.
 * Taken for granted: ground beyond the shots is extended, not measured: it does not bind.
 *
 * - `survey`: the old slab.
 * - `finish`: the finish as drawn.
 * - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; may be left out.
 *   - `round` (mm): the lift is rounded up to whole steps of this, so that heights given in steps stay so; at
 *     least 0 mm, at most 304.8 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_RAISED_FINISH: the finish.
 *   - OVS_FINISH_RAISED_RAISED_BY (mm): how far it was lifted; below zero where it was lowered.
 *   - OVS_FINISH_RAISED_AT_X (m): the place that fixes it, from the left.
 *   - OVS_FINISH_RAISED_AT_Y (m): the place that fixes it, from the front.
 *   - OVS_FINISH_RAISED_AT_SHOT: the shot there.
 *   - OVS_FINISH_RAISED_AT_FACET: the facet there.
 *   - OVS_FINISH_RAISED_ROUNDED_BY (mm): how much of the lift is rounding.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.3 ft"},"least":"3 in","margin":"3/8 in","round":"1/8 in"}
 */
ovs_answer *ovs_finish_raised_si(const ovs_survey *survey,
                                 const ovs_finish *finish,
                                 double least_mm,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_finish_raised_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_raised_us_why(const ovs_survey *survey,
                             const ovs_finish *finish,
                             double least_in,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_finish_raised_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_raised_si_why(const ovs_survey *survey,
                             const ovs_finish *finish,
                             double least_mm,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
 *
 * Equation: fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise.
 * Taken for granted: one plane has no facets to list.
 *
 * - `finish`: the finish.
 * - `survey`: the work: areas are then of the part inside it; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `survey`: the work: areas are then of the part inside it; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_FACETS_FACETS: the facets.
 *   - OVS_FINISH_FACETS_CORNERS: their corners.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACET_SHAPE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"finish":{"corners":[{"name":"A","x":"0 ft","y":"0 ft","elevation":"100 ft"},{"name":"B","x":"20 ft","y":"0 ft","elevation":"99.9 ft"},{"name":"C","x":"20 ft","y":"16 ft","elevation":"99.9 ft"},{"name":"D","x":"0 ft","y":"16 ft","elevation":"100 ft"}],"facets":[{"name":"floor","corners":["A","B","C","D"]}]}}
 */
ovs_answer *ovs_finish_facets_us(const ovs_finish *finish,
                                 const ovs_survey *survey,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * The facets of a finish: the fall of each, which way it drains and over to what, its area and its corners.
 *
 * Equation: fall = sqrt(rise_x^2 + rise_y^2); water runs against the rise.
 * Taken for granted: one plane has no facets to list.
 *
 * - `finish`: the finish.
 * - `survey`: the work: areas are then of the part inside it; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `survey`: the work: areas are then of the part inside it; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_FACETS_FACETS: the facets.
 *   - OVS_FINISH_FACETS_CORNERS: their corners.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACET_SHAPE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"finish":{"corners":[{"name":"A","x":"0 ft","y":"0 ft","elevation":"100 ft"},{"name":"B","x":"20 ft","y":"0 ft","elevation":"99.9 ft"},{"name":"C","x":"20 ft","y":"16 ft","elevation":"99.9 ft"},{"name":"D","x":"0 ft","y":"16 ft","elevation":"100 ft"}],"facets":[{"name":"floor","corners":["A","B","C","D"]}]}}
 */
ovs_answer *ovs_finish_facets_si(const ovs_finish *finish,
                                 const ovs_survey *survey,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_finish_facets_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_facets_us_why(const ovs_finish *finish,
                             const ovs_survey *survey,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_finish_facets_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_facets_si_why(const ovs_finish *finish,
                             const ovs_survey *survey,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded
 * to what can be set out.
 *
 * Equation: least integral of finish less old slab, finish plane over each facet, facets meeting, all demands
 * kept; with grinding at a price: concrete and ground volume at their prices.
 * Taken for granted: old slab plane over each triangle; the finish nowhere dips below it, but for what may be
 * ground; door lines level, falls square to their edge, a level perimeter about a drain, unless set_out is no.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
 *     out.
 *   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
 *     line; at least 0 in/ft, at most 12 in/ft; may be left out.
 *   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
 *     ft, at most 32808.3989501 ft; may be left out.
 *   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
 *     at most 120 in; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
 *     -328083.989501 ft, at most 328083.989501 ft; may be left out.
 *   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
 *     328083.989501 ft; may be left out.
 *   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 *   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
 *   - `grind_at_most` (in): how deep high spots may be ground; at least 0 in, at most 120 in; may be left out.
 *   - `grinding_price` (/yd3): price of what is ground off; at least 0 /yd3, at most 7645548.57984 /yd3; may be
 *     left out.
 *   - `round` (in): heights are whole steps of this from the datum; at least 0 in, at most 12 in; where left out
 *     1/8 in, because finer cannot be set out.
 *   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
 *     most 32808.3989501 ft; where left out 0 ft, because the job datum.
 *   - `round_fall` (in/ft): falls are whole steps of this; at least 0 in/ft, at most 12 in/ft; where left out 1/16
 *     in/ft, because finer cannot be struck off.
 *   - `set_out`: no for the planned finish as it comes out, with nothing added or rounded; 0 no, 1 yes; may be
 *     left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_SOLVED_FINISH: the finish to be built, in whole steps.
 *   - OVS_FINISH_SOLVED_CONCRETE (yd3): its concrete.
 *   - OVS_FINISH_SOLVED_GROUND (yd3): what is ground off under it.
 *   - OVS_FINISH_SOLVED_COST (money): concrete and grinding at their prices.
 *   - OVS_FINISH_SOLVED_PLANNED: the finish before rounding.
 *   - OVS_FINISH_SOLVED_PLANNED_CONCRETE (yd3): its concrete.
 *   - OVS_FINISH_SOLVED_PLANNED_COST (money): its cost.
 *   - OVS_FINISH_SOLVED_BARE: the finish by the demands alone: no margin, nothing added or rounded.
 *   - OVS_FINISH_SOLVED_BARE_CONCRETE (yd3): its concrete.
 *   - OVS_FINISH_SOLVED_BARE_COST (money): its cost.
 *   - OVS_FINISH_SOLVED_BOUND (yd3): no finish planned so costs less than this, in volume of concrete.
 *   - OVS_FINISH_SOLVED_GAP (1): how far the planned cost may be above the least, as a share.
 *   - OVS_FINISH_SOLVED_LEAST_SLACK (in): how far the demand that is kept most narrowly is from being broken; less
 *     than none by rounding only.
 *   - OVS_FINISH_SOLVED_ROWS: how many rows were looked at for that.
 *   - OVS_FINISH_SOLVED_ROUND (in): the step of heights that could be kept; none where nothing is rounded.
 *   - OVS_FINISH_SOLVED_ROUND_FALL (in/ft): the step of falls that could be kept.
 *   - OVS_FINISH_SOLVED_KEPT: how each demand stands, and what it costs.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
 * OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_DEMANDS_CONFLICT, OVS_ZONE_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Basis: 3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in: common practice,
 * no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/8 in/ft",null],"elevation":[null,null,"100.2 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]},"concrete_price":"165 /yd3"}
 */
ovs_answer *ovs_finish_solved_us(const ovs_survey *survey,
                                 const int *demands_kind,
                                 int demands_rows,
                                 const ovs_finish *layout,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * The finish that takes the least concrete under all demands, proved, with the price of each demand, and rounded
 * to what can be set out.
 *
 * Equation: least integral of finish less old slab, finish plane over each facet, facets meeting, all demands
 * kept; with grinding at a price: concrete and ground volume at their prices.
 * Taken for granted: old slab plane over each triangle; the finish nowhere dips below it, but for what may be
 * ground; door lines level, falls square to their edge, a level perimeter about a drain, unless set_out is no.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
 *     out.
 *   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
 *     at least 0 %, at most 100 %; may be left out.
 *   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
 *     most 10000 m; may be left out.
 *   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
 *     at most 3048 mm; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
 *     at most 100000 m; may be left out.
 *   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
 *     left out.
 *   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 *   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
 *   - `grind_at_most` (mm): how deep high spots may be ground; at least 0 mm, at most 3048 mm; may be left out.
 *   - `grinding_price` (/m3): price of what is ground off; at least 0 /m3, at most 10000000 /m3; may be left out.
 *   - `round` (mm): heights are whole steps of this from the datum; at least 0 mm, at most 304.8 mm; where left
 *     out 1/8 in, because finer cannot be set out.
 *   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
 *     m; where left out 0 ft, because the job datum.
 *   - `round_fall` (%): falls are whole steps of this; at least 0 %, at most 100 %; where left out 1/16 in/ft,
 *     because finer cannot be struck off.
 *   - `set_out`: no for the planned finish as it comes out, with nothing added or rounded; 0 no, 1 yes; may be
 *     left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_SOLVED_FINISH: the finish to be built, in whole steps.
 *   - OVS_FINISH_SOLVED_CONCRETE (m3): its concrete.
 *   - OVS_FINISH_SOLVED_GROUND (m3): what is ground off under it.
 *   - OVS_FINISH_SOLVED_COST (money): concrete and grinding at their prices.
 *   - OVS_FINISH_SOLVED_PLANNED: the finish before rounding.
 *   - OVS_FINISH_SOLVED_PLANNED_CONCRETE (m3): its concrete.
 *   - OVS_FINISH_SOLVED_PLANNED_COST (money): its cost.
 *   - OVS_FINISH_SOLVED_BARE: the finish by the demands alone: no margin, nothing added or rounded.
 *   - OVS_FINISH_SOLVED_BARE_CONCRETE (m3): its concrete.
 *   - OVS_FINISH_SOLVED_BARE_COST (money): its cost.
 *   - OVS_FINISH_SOLVED_BOUND (m3): no finish planned so costs less than this, in volume of concrete.
 *   - OVS_FINISH_SOLVED_GAP (1): how far the planned cost may be above the least, as a share.
 *   - OVS_FINISH_SOLVED_LEAST_SLACK (mm): how far the demand that is kept most narrowly is from being broken; less
 *     than none by rounding only.
 *   - OVS_FINISH_SOLVED_ROWS: how many rows were looked at for that.
 *   - OVS_FINISH_SOLVED_ROUND (mm): the step of heights that could be kept; none where nothing is rounded.
 *   - OVS_FINISH_SOLVED_ROUND_FALL (%): the step of falls that could be kept.
 *   - OVS_FINISH_SOLVED_KEPT: how each demand stands, and what it costs.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
 * OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN, OVS_NULL_POINTER, OVS_DEMANDS_CONFLICT, OVS_ZONE_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Basis: 3/8 in over the least thickness, from reading 1/8, texture 3/16 and strike-off 3/16 in: common practice,
 * no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/8 in/ft",null],"elevation":[null,null,"100.2 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]},"concrete_price":"165 /yd3"}
 */
ovs_answer *ovs_finish_solved_si(const ovs_survey *survey,
                                 const int *demands_kind,
                                 int demands_rows,
                                 const ovs_finish *layout,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_finish_solved_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_solved_us_why(const ovs_survey *survey,
                             const int *demands_kind,
                             int demands_rows,
                             const ovs_finish *layout,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_finish_solved_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_solved_si_why(const ovs_survey *survey,
                             const int *demands_kind,
                             int demands_rows,
                             const ovs_finish *layout,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands
 * would have to give way.
 *
 * Equation: a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it has; gives
 * way by the least t with A u + share t >= b.
 * Taken for granted: heights and falls unrounded; the margin counts; demands that stand firm are kept and not
 * blamed.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
 *     out.
 *   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
 *     line; at least 0 in/ft, at most 12 in/ft; may be left out.
 *   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
 *     ft, at most 32808.3989501 ft; may be left out.
 *   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
 *     at most 120 in; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
 *     -328083.989501 ft, at most 328083.989501 ft; may be left out.
 *   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
 *     328083.989501 ft; may be left out.
 *   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_CONFLICTS_KEPT: whether all can be kept; 0 no, 1 yes.
 *   - OVS_FINISH_CONFLICTS_COMPLETE: whether these are all the sets; at most ten are told; 0 no, 1 yes.
 *   - OVS_FINISH_CONFLICTS_SETS: the sets.
 *   - OVS_FINISH_CONFLICTS_ALONE: what mends everything alone.
 *   - OVS_FINISH_CONFLICTS_TOGETHER: what mends everything with the least weighted sum.
 *   - OVS_FINISH_CONFLICTS_SAID: all of it in sentences.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_KEY_REPEATED, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"margin":"1/4 in","demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/4 in/ft",null],"elevation":[null,null,"99.7 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]}}
 */
ovs_answer *ovs_finish_conflicts_us(const ovs_survey *survey,
                                    const int *demands_kind,
                                    int demands_rows,
                                    const ovs_finish *layout,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Which demands on the finish cannot be kept together: every smallest set, and by how much each of its demands
 * would have to give way.
 *
 * Equation: a set is told when its rows have weights w >= 0 with w A = 0 and w b > 0, and no part of it has; gives
 * way by the least t with A u + share t >= b.
 * Taken for granted: heights and falls unrounded; the margin counts; demands that stand firm are kept and not
 * blamed.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
 *     out.
 *   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
 *     at least 0 %, at most 100 %; may be left out.
 *   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
 *     most 10000 m; may be left out.
 *   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
 *     at most 3048 mm; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
 *     at most 100000 m; may be left out.
 *   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
 *     left out.
 *   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_CONFLICTS_KEPT: whether all can be kept; 0 no, 1 yes.
 *   - OVS_FINISH_CONFLICTS_COMPLETE: whether these are all the sets; at most ten are told; 0 no, 1 yes.
 *   - OVS_FINISH_CONFLICTS_SETS: the sets.
 *   - OVS_FINISH_CONFLICTS_ALONE: what mends everything alone.
 *   - OVS_FINISH_CONFLICTS_TOGETHER: what mends everything with the least weighted sum.
 *   - OVS_FINISH_CONFLICTS_SAID: all of it in sentences.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_KEY_REPEATED, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"margin":"1/4 in","demands":{"name":["least 3 in","fall","side door"],"kind":["least_thickness","least_fall","at_most"],"thickness":["3 in",null,null],"fall":[null,"1/4 in/ft",null],"elevation":[null,null,"99.7 ft"],"edge":[null,"front",null],"x":[null,null,"0 ft"],"y":[null,null,"27 ft"]}}
 */
ovs_answer *ovs_finish_conflicts_si(const ovs_survey *survey,
                                    const int *demands_kind,
                                    int demands_rows,
                                    const ovs_finish *layout,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_finish_conflicts_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_conflicts_us_why(const ovs_survey *survey,
                                const int *demands_kind,
                                int demands_rows,
                                const ovs_finish *layout,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_finish_conflicts_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_conflicts_si_why(const ovs_survey *survey,
                                const int *demands_kind,
                                int demands_rows,
                                const ovs_finish *layout,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
 *
 * Equation: as for the finish of least concrete, unrounded, for each value.
 * Taken for granted: old slab plane over each triangle; the margin counts.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `demand`, `demand_len`: the name of the demand.
 * - `values_length_in` (in): the value of a thickness or a tolerance; at least 0 in, at most 120 in; may be left
 *   out; NaN for an empty cell, may be null.
 * - `values_fall_in_per_ft` (in/ft): the value of a fall; at least 0 in/ft, at most 12 in/ft; may be left out; NaN
 *   for an empty cell, may be null.
 * - `values_elevation_ft` (ft): the value of a height; at least -32808.3989501 ft, at most 32808.3989501 ft; may
 *   be left out; NaN for an empty cell, may be null.
 * - `values_rows`: the values it takes in turn: how many rows, each a value of the demand, in the column that goes
 *   with it; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (in): a least or greatest thickness; at least 0 in, at most 120 in; may be left
 *     out.
 *   - `fall` of `demands` (in/ft): a least or greatest fall; steepest: in any direction; cross_fall: along the
 *     line; at least 0 in/ft, at most 12 in/ft; may be left out.
 *   - `elevation` of `demands` (ft): a height that is not passed, reached, or had exactly; at least -32808.3989501
 *     ft, at most 32808.3989501 ft; may be left out.
 *   - `tolerance` of `demands` (in): how far a level line may be out of level; none for dead level; at least 0 in,
 *     at most 120 in; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (ft): or a place: a drain, a point, the start of a line, from the left; at least
 *     -328083.989501 ft, at most 328083.989501 ft; may be left out.
 *   - `y` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `x_to` of `demands` (ft): the end of the line, from the left; at least -328083.989501 ft, at most
 *     328083.989501 ft; may be left out.
 *   - `y_to` of `demands` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; may be left
 *     out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `zones` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (in): margin on every least thickness; at least 0 in, at most 120 in; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_SWEEP_CURVE: the concrete for each value.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_DEMAND_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least","fall"],"kind":["least_thickness","least_fall"],"thickness":["3 in",null],"fall":[null,"1/8 in/ft"],"edge":[null,"front"]},"demand":"least","values":{"length":["1 1/2 in","2 in","2 1/2 in","3 in","3 1/2 in","4 in"]}}
 */
ovs_answer *ovs_finish_sweep_us(const ovs_survey *survey,
                                const int *demands_kind,
                                int demands_rows,
                                const char *demand,
                                int demand_len,
                                const double *values_length_in,
                                const double *values_fall_in_per_ft,
                                const double *values_elevation_ft,
                                int values_rows,
                                const ovs_finish *layout,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * The least concrete for a range of one demand, all others as they are: what each inch, each fall costs.
 *
 * Equation: as for the finish of least concrete, unrounded, for each value.
 * Taken for granted: old slab plane over each triangle; the margin counts.
 *
 * - `survey`: the old slab.
 * - `demands_kind`: what is demanded; 0 least_thickness, 1 greatest_thickness, 2 least_fall, 3 greatest_fall, 4
 *   steepest, 5 cross_fall, 6 level, 7 at_most, 8 at_least, 9 exactly.
 * - `demands_rows`: what the finish must keep: how many rows, each a demand on the finish; at least 1.
 * - `demand`, `demand_len`: the name of the demand.
 * - `values_length_mm` (mm): the value of a thickness or a tolerance; at least 0 mm, at most 3048 mm; may be left
 *   out; NaN for an empty cell, may be null.
 * - `values_fall_percent` (%): the value of a fall; at least 0 %, at most 100 %; may be left out; NaN for an empty
 *   cell, may be null.
 * - `values_elevation_m` (m): the value of a height; at least -10000 m, at most 10000 m; may be left out; NaN for
 *   an empty cell, may be null.
 * - `values_rows`: the values it takes in turn: how many rows, each a value of the demand, in the column that goes
 *   with it; at least 1.
 * - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `demands`: what it is called in the answer: side door; required.
 *   - `thickness` of `demands` (mm): a least or greatest thickness; at least 0 mm, at most 3048 mm; may be left
 *     out.
 *   - `fall` of `demands` (%): a least or greatest fall; steepest: in any direction; cross_fall: along the line;
 *     at least 0 %, at most 100 %; may be left out.
 *   - `elevation` of `demands` (m): a height that is not passed, reached, or had exactly; at least -10000 m, at
 *     most 10000 m; may be left out.
 *   - `tolerance` of `demands` (mm): how far a level line may be out of level; none for dead level; at least 0 mm,
 *     at most 3048 mm; may be left out.
 *   - `edge` of `demands`: an edge of the outline: where a fall goes, or the line; may be left out.
 *   - `x` of `demands` (m): or a place: a drain, a point, the start of a line, from the left; at least -100000 m,
 *     at most 100000 m; may be left out.
 *   - `y` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `x_to` of `demands` (m): the end of the line, from the left; at least -100000 m, at most 100000 m; may be
 *     left out.
 *   - `y_to` of `demands` (m): from the front; at least -100000 m, at most 100000 m; may be left out.
 *   - `facet` of `demands`: which facets a fall is of: their name, or what they fall to; all if it is left out;
 *     may be left out.
 *   - `zone` of `demands`: where a thickness is demanded: a name among the zones; everywhere if it is left out;
 *     may be left out.
 *   - `firm` of `demands`: whether it stands firm: no conflict blames it; 0 no, 1 yes; may be left out.
 *   - `weight` of `demands` (1): what breaking it by 1/4 in, or by 0.1 % of fall, weighs against the others; 1 is
 *     usual; more than 0 1; may be left out.
 *   - `zones`: corners of the zones that demands name; may be left out.
 *   - `zone` of `zones`: name of the zone; required.
 *   - `x` of `zones` (m): from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `zones` (m): from the front; at least -100000 m, at most 100000 m; required.
 *   - `layout`: the facets in plan: a finish whose heights do not count; one plane if it is left out; may be left
 *     out.
 *   - `margin` (mm): margin on every least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in,
 *     because reading, texture and strike-off.
 *   - `edges_bind`: whether thickness binds beyond the shots too, where the old slab is extended; 0 no, 1 yes; may
 *     be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_SWEEP_CURVE: the concrete for each value.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_DEMAND_UNKNOWN.
 * Basis: plane and solid geometry: derived.
 * Basis: no answer costs less than the weighted bounds of the rows; rows without an answer add up to a
 * contradiction: Textbooks on linear programming, duality (Dantzig 1963) (any), weak duality; Farkas' lemma; dual
 * simplex method, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"demands":{"name":["least","fall"],"kind":["least_thickness","least_fall"],"thickness":["3 in",null],"fall":[null,"1/8 in/ft"],"edge":[null,"front"]},"demand":"least","values":{"length":["1 1/2 in","2 in","2 1/2 in","3 in","3 1/2 in","4 in"]}}
 */
ovs_answer *ovs_finish_sweep_si(const ovs_survey *survey,
                                const int *demands_kind,
                                int demands_rows,
                                const char *demand,
                                int demand_len,
                                const double *values_length_mm,
                                const double *values_fall_percent,
                                const double *values_elevation_m,
                                int values_rows,
                                const ovs_finish *layout,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_finish_sweep_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_sweep_us_why(const ovs_survey *survey,
                            const int *demands_kind,
                            int demands_rows,
                            const char *demand,
                            int demand_len,
                            const double *values_length_in,
                            const double *values_fall_in_per_ft,
                            const double *values_elevation_ft,
                            int values_rows,
                            const ovs_finish *layout,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_finish_sweep_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_sweep_si_why(const ovs_survey *survey,
                            const int *demands_kind,
                            int demands_rows,
                            const char *demand,
                            int demand_len,
                            const double *values_length_mm,
                            const double *values_fall_percent,
                            const double *values_elevation_m,
                            int values_rows,
                            const ovs_finish *layout,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
 *
 * Equation: net = integral of (finish - old slab); fill = its positive part; high = its negative part; mean = net
 * / area.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `thinner_than` (in): the area thinner than this is told; at least -3937.00787402 in, at most 3937.00787402
 *     in; may be left out.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_AREA (ft2): plan area.
 *   - OVS_THICKNESS_NET (yd3): fill less high spots.
 *   - OVS_THICKNESS_FILL (yd3): volume where the finish is above the old slab.
 *   - OVS_THICKNESS_HIGH (yd3): volume of old slab above the finish.
 *   - OVS_THICKNESS_MEAN (in): net volume over area.
 *   - OVS_THICKNESS_LEAST (in): least thickness.
 *   - OVS_THICKNESS_LEAST_X (ft): where it is, from the left.
 *   - OVS_THICKNESS_LEAST_Y (ft): where it is, from the front.
 *   - OVS_THICKNESS_LEAST_MEASURED (in): least thickness between the shots.
 *   - OVS_THICKNESS_GREATEST (in): greatest thickness.
 *   - OVS_THICKNESS_GREATEST_X (ft): where it is, from the left.
 *   - OVS_THICKNESS_GREATEST_Y (ft): where it is, from the front.
 *   - OVS_THICKNESS_THINNER (ft2): area thinner than the depth asked about.
 *   - OVS_THICKNESS_LEAST_FACET: the facet where it is thinnest.
 *   - OVS_THICKNESS_GREATEST_FACET: the facet where it is thickest.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN,
 * OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in"}
 */
ovs_answer *ovs_thickness_us(const ovs_survey *survey,
                             const ovs_finish *finish,
                             const ovs_outline *zone,
                             const char *options_json,
                             int options_len,
                             int *status,
                             int *notes,
                             int notes_len,
                             char *msg,
                             int msg_len);

/**
 * The thickness of the overlay: finish less old slab, with volumes and extremes, exactly.
 *
 * Equation: net = integral of (finish - old slab); fill = its positive part; high = its negative part; mean = net
 * / area.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `thinner_than` (mm): the area thinner than this is told; at least -100000 mm, at most 100000 mm; may be left
 *     out.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_AREA (m2): plan area.
 *   - OVS_THICKNESS_NET (m3): fill less high spots.
 *   - OVS_THICKNESS_FILL (m3): volume where the finish is above the old slab.
 *   - OVS_THICKNESS_HIGH (m3): volume of old slab above the finish.
 *   - OVS_THICKNESS_MEAN (mm): net volume over area.
 *   - OVS_THICKNESS_LEAST (mm): least thickness.
 *   - OVS_THICKNESS_LEAST_X (m): where it is, from the left.
 *   - OVS_THICKNESS_LEAST_Y (m): where it is, from the front.
 *   - OVS_THICKNESS_LEAST_MEASURED (mm): least thickness between the shots.
 *   - OVS_THICKNESS_GREATEST (mm): greatest thickness.
 *   - OVS_THICKNESS_GREATEST_X (m): where it is, from the left.
 *   - OVS_THICKNESS_GREATEST_Y (m): where it is, from the front.
 *   - OVS_THICKNESS_THINNER (m2): area thinner than the depth asked about.
 *   - OVS_THICKNESS_LEAST_FACET: the facet where it is thinnest.
 *   - OVS_THICKNESS_GREATEST_FACET: the facet where it is thickest.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN,
 * OVS_FINISH_TWICE, OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in"}
 */
ovs_answer *ovs_thickness_si(const ovs_survey *survey,
                             const ovs_finish *finish,
                             const ovs_outline *zone,
                             const char *options_json,
                             int options_len,
                             int *status,
                             int *notes,
                             int notes_len,
                             char *msg,
                             int msg_len);

/**
 * Why ovs_thickness_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_us_why(const ovs_survey *survey,
                         const ovs_finish *finish,
                         const ovs_outline *zone,
                         const char *options_json,
                         int options_len,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * Why ovs_thickness_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_si_why(const ovs_survey *survey,
                         const ovs_finish *finish,
                         const ovs_outline *zone,
                         const char *options_json,
                         int options_len,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
 *
 * Equation: thickness = finish - shot; drop without a shot = least thickness over the others - least thickness;
 * saved = drop area.
 * Taken for granted: the least thickness decides the height of the finish; shots within 1/8 in of it decide
 * together.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SECOND_LOOK_GOVERNING: the shots that fix the grade.
 *   - OVS_SECOND_LOOK_DROP_WITHOUT_ALL (in): how far the finish could drop without all of them.
 *
 * Refuses with OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
 * leave-one-out prediction (any), kriging, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"}}
 */
ovs_answer *ovs_second_look_us(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * The shots with the least thickness over them: they fix the grade and are looked at again, suspects or not.
 *
 * Equation: thickness = finish - shot; drop without a shot = least thickness over the others - least thickness;
 * saved = drop area.
 * Taken for granted: the least thickness decides the height of the finish; shots within 1/8 in of it decide
 * together.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SECOND_LOOK_GOVERNING: the shots that fix the grade.
 *   - OVS_SECOND_LOOK_DROP_WITHOUT_ALL (mm): how far the finish could drop without all of them.
 *
 * Refuses with OVS_KIND_MISMATCH, OVS_KEY_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: each shot predicted from the others, its difference held against a robust scale: Statistics textbooks,
 * leave-one-out prediction (any), kriging, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"}}
 */
ovs_answer *ovs_second_look_si(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_second_look_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_second_look_us_why(const ovs_survey *survey,
                           const ovs_finish *finish,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_second_look_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_second_look_si_why(const ovs_survey *survey,
                           const ovs_finish *finish,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * The ponds of a finish, and which ponds of the old slab it cures.
 *
 * Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
 * surface.
 * Taken for granted: edges and drains are the same for the old slab and the finish; a drain takes water at the
 * height of the surface.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (in): ponds shallower than this are left out; at least 0 in, at most 12 in; where left out 1/16
 *     in, because a rod hardly tells less.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_STANDING_WATER_COUNT: how many ponds the finish has.
 *   - OVS_FINISH_STANDING_WATER_AREA (ft2): area of the finish under water.
 *   - OVS_FINISH_STANDING_WATER_VOLUME (ft3): water on the finish.
 *   - OVS_FINISH_STANDING_WATER_DEPTH (in): greatest depth on the finish; none without a pond.
 *   - OVS_FINISH_STANDING_WATER_LEFT_OUT: how many ponds of the finish were shallower.
 *   - OVS_FINISH_STANDING_WATER_CURED: how many ponds of the old slab are cured.
 *   - OVS_FINISH_STANDING_WATER_LEFT: how many ponds of the old slab are not.
 *   - OVS_FINISH_STANDING_WATER_PONDS: the ponds of the finish.
 *   - OVS_FINISH_STANDING_WATER_OLD_PONDS: the ponds of the old slab.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.5 ft"}]},"edges":[{"edge":"right","state":"walled"},{"edge":"back","state":"walled"},{"edge":"left","state":"walled"}]}
 */
ovs_answer *ovs_finish_standing_water_us(const ovs_survey *survey,
                                         const ovs_finish *finish,
                                         const char *options_json,
                                         int options_len,
                                         int *status,
                                         int *notes,
                                         int notes_len,
                                         char *msg,
                                         int msg_len);

/**
 * The ponds of a finish, and which ponds of the old slab it cures.
 *
 * Equation: level at a place = least over all ways to an outlet of the highest place on the way; depth = level -
 * surface.
 * Taken for granted: edges and drains are the same for the old slab and the finish; a drain takes water at the
 * height of the surface.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (mm): ponds shallower than this are left out; at least 0 mm, at most 304.8 mm; where left out
 *     1/16 in, because a rod hardly tells less.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_STANDING_WATER_COUNT: how many ponds the finish has.
 *   - OVS_FINISH_STANDING_WATER_AREA (m2): area of the finish under water.
 *   - OVS_FINISH_STANDING_WATER_VOLUME (m3): water on the finish.
 *   - OVS_FINISH_STANDING_WATER_DEPTH (mm): greatest depth on the finish; none without a pond.
 *   - OVS_FINISH_STANDING_WATER_LEFT_OUT: how many ponds of the finish were shallower.
 *   - OVS_FINISH_STANDING_WATER_CURED: how many ponds of the old slab are cured.
 *   - OVS_FINISH_STANDING_WATER_LEFT: how many ponds of the old slab are not.
 *   - OVS_FINISH_STANDING_WATER_PONDS: the ponds of the finish.
 *   - OVS_FINISH_STANDING_WATER_OLD_PONDS: the ponds of the old slab.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KIND_MISMATCH, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_NO_OUTLET, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.5 ft"}]},"edges":[{"edge":"right","state":"walled"},{"edge":"back","state":"walled"},{"edge":"left","state":"walled"}]}
 */
ovs_answer *ovs_finish_standing_water_si(const ovs_survey *survey,
                                         const ovs_finish *finish,
                                         const char *options_json,
                                         int options_len,
                                         int *status,
                                         int *notes,
                                         int notes_len,
                                         char *msg,
                                         int msg_len);

/**
 * Why ovs_finish_standing_water_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_standing_water_us_why(const ovs_survey *survey,
                                     const ovs_finish *finish,
                                     const char *options_json,
                                     int options_len,
                                     char *text,
                                     int text_len,
                                     int *needed);

/**
 * Why ovs_finish_standing_water_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_standing_water_si_why(const ovs_survey *survey,
                                     const ovs_finish *finish,
                                     const char *options_json,
                                     int options_len,
                                     char *text,
                                     int text_len,
                                     int *needed);

/**
 * The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
 *
 * Equation: new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab).
 * Taken for granted: grinding makes silica dust: wet or with extraction, and a mask; where a zone ends a step is
 * left.
 *
 * - `survey`: the old slab.
 * - `finish`: the surface it is ground to, or a finish above it.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `below` (in): it is ground to so much under that surface; at least 0 in, at most 120 in; where left out 0
 *     in, because it is ground to the surface itself.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_GRIND_HIGH_SPOTS_SURVEY: the old slab after it.
 *   - OVS_GRIND_HIGH_SPOTS_AREA (ft2): area ground or filled.
 *   - OVS_GRIND_HIGH_SPOTS_VOLUME (ft3): volume taken off or filled.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST_X (ft): where it is, from the left.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST_Y (ft): where it is, from the front.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"3 in"}
 */
ovs_answer *ovs_grind_high_spots_us(const ovs_survey *survey,
                                    const ovs_finish *finish,
                                    const ovs_outline *zone,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * The old slab after all that stands above a plane was ground off, with area, volume and deepest cut.
 *
 * Equation: new slab = least of (old slab, finish - below); volume = integral of (old slab - new slab).
 * Taken for granted: grinding makes silica dust: wet or with extraction, and a mask; where a zone ends a step is
 * left.
 *
 * - `survey`: the old slab.
 * - `finish`: the surface it is ground to, or a finish above it.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `below` (mm): it is ground to so much under that surface; at least 0 mm, at most 3048 mm; where left out 0
 *     in, because it is ground to the surface itself.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_GRIND_HIGH_SPOTS_SURVEY: the old slab after it.
 *   - OVS_GRIND_HIGH_SPOTS_AREA (m2): area ground or filled.
 *   - OVS_GRIND_HIGH_SPOTS_VOLUME (m3): volume taken off or filled.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST_X (m): where it is, from the left.
 *   - OVS_GRIND_HIGH_SPOTS_DEEPEST_Y (m): where it is, from the front.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"3 in"}
 */
ovs_answer *ovs_grind_high_spots_si(const ovs_survey *survey,
                                    const ovs_finish *finish,
                                    const ovs_outline *zone,
                                    const char *options_json,
                                    int options_len,
                                    int *status,
                                    int *notes,
                                    int notes_len,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_grind_high_spots_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_grind_high_spots_us_why(const ovs_survey *survey,
                                const ovs_finish *finish,
                                const ovs_outline *zone,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_grind_high_spots_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_grind_high_spots_si_why(const ovs_survey *survey,
                                const ovs_finish *finish,
                                const ovs_outline *zone,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
 *
 * Equation: new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab).
 * Taken for granted: the fill is struck off to the plane; where a zone ends a step is left.
 *
 * - `survey`: the old slab.
 * - `finish`: the surface it is filled to, or a finish above it.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `below` (in): it is filled to so much under that surface; at least 0 in, at most 120 in; where left out 0
 *     in, because it is filled to the surface itself.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FILL_LOW_SPOTS_SURVEY: the old slab after it.
 *   - OVS_FILL_LOW_SPOTS_AREA (ft2): area ground or filled.
 *   - OVS_FILL_LOW_SPOTS_VOLUME (ft3): volume taken off or filled.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST_X (ft): where it is, from the left.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST_Y (ft): where it is, from the front.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_REGION_OUTSIDE,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"4 in"}
 */
ovs_answer *ovs_fill_low_spots_us(const ovs_survey *survey,
                                  const ovs_finish *finish,
                                  const ovs_outline *zone,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * The old slab after all that lies below a plane was filled, with area, volume and greatest depth of fill.
 *
 * Equation: new slab = greatest of (old slab, finish - below); volume = integral of (new slab - old slab).
 * Taken for granted: the fill is struck off to the plane; where a zone ends a step is left.
 *
 * - `survey`: the old slab.
 * - `finish`: the surface it is filled to, or a finish above it.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `below` (mm): it is filled to so much under that surface; at least 0 mm, at most 3048 mm; where left out 0
 *     in, because it is filled to the surface itself.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FILL_LOW_SPOTS_SURVEY: the old slab after it.
 *   - OVS_FILL_LOW_SPOTS_AREA (m2): area ground or filled.
 *   - OVS_FILL_LOW_SPOTS_VOLUME (m3): volume taken off or filled.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST_X (m): where it is, from the left.
 *   - OVS_FILL_LOW_SPOTS_DEEPEST_Y (m): where it is, from the front.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KIND_MISMATCH, OVS_REGION_OUTSIDE,
 * OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.55 ft"},"below":"4 in"}
 */
ovs_answer *ovs_fill_low_spots_si(const ovs_survey *survey,
                                  const ovs_finish *finish,
                                  const ovs_outline *zone,
                                  const char *options_json,
                                  int options_len,
                                  int *status,
                                  int *notes,
                                  int notes_len,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_fill_low_spots_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fill_low_spots_us_why(const ovs_survey *survey,
                              const ovs_finish *finish,
                              const ovs_outline *zone,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_fill_low_spots_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fill_low_spots_si_why(const ovs_survey *survey,
                              const ovs_finish *finish,
                              const ovs_outline *zone,
                              const char *options_json,
                              int options_len,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
 *
 * Equation: new slab = level of the water where water stands.
 * Taken for granted: outer edges are open and holes are walled where nothing is stated; the fill is struck off
 * level.
 *
 * - `survey`: the old slab.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (in): ponds shallower than this are left; at least 0 in, at most 12 in; where left out 1/16 in,
 *     because a rod hardly tells less.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FILL_PONDS_SURVEY: the old slab after it.
 *   - OVS_FILL_PONDS_AREA (ft2): area ground or filled.
 *   - OVS_FILL_PONDS_VOLUME (ft3): volume taken off or filled.
 *   - OVS_FILL_PONDS_DEEPEST (in): deepest cut or fill; none where nothing is changed.
 *   - OVS_FILL_PONDS_DEEPEST_X (ft): where it is, from the left.
 *   - OVS_FILL_PONDS_DEEPEST_Y (ft): where it is, from the front.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_REGION_OUTSIDE, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edges":[{"edge":"front","state":"walled"},{"edge":"right","state":"walled"},{"edge":"left","state":"walled"}]}
 */
ovs_answer *ovs_fill_ponds_us(const ovs_survey *survey,
                              const ovs_outline *zone,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * The old slab after its ponds were filled to their spill levels, with area, volume and greatest depth of fill.
 *
 * Equation: new slab = level of the water where water stands.
 * Taken for granted: outer edges are open and holes are walled where nothing is stated; the fill is struck off
 * level.
 *
 * - `survey`: the old slab.
 * - `zone`: only within this outline; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (mm): ponds shallower than this are left; at least 0 mm, at most 304.8 mm; where left out 1/16
 *     in, because a rod hardly tells less.
 *   - `zone`: only within this outline; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FILL_PONDS_SURVEY: the old slab after it.
 *   - OVS_FILL_PONDS_AREA (m2): area ground or filled.
 *   - OVS_FILL_PONDS_VOLUME (m3): volume taken off or filled.
 *   - OVS_FILL_PONDS_DEEPEST (mm): deepest cut or fill; none where nothing is changed.
 *   - OVS_FILL_PONDS_DEEPEST_X (m): where it is, from the left.
 *   - OVS_FILL_PONDS_DEEPEST_Y (m): where it is, from the front.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_REGION_OUTSIDE, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_DRAIN_OUTSIDE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"edges":[{"edge":"front","state":"walled"},{"edge":"right","state":"walled"},{"edge":"left","state":"walled"}]}
 */
ovs_answer *ovs_fill_ponds_si(const ovs_survey *survey,
                              const ovs_outline *zone,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_fill_ponds_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fill_ponds_us_why(const ovs_survey *survey,
                          const ovs_outline *zone,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Why ovs_fill_ponds_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fill_ponds_si_why(const ovs_survey *survey,
                          const ovs_outline *zone,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
 *
 * Equation: thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old slab -
 * depth|.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet; what is exactly at the depth
 * counts as thicker.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `depth_in` (in): the depth; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `side`: which side of the depth; 0 thinner, 1 thicker; where left out thinner, because thin places are what
 *     is looked for.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_AREAS_AREA (ft2): area of all parts.
 *   - OVS_THICKNESS_AREAS_VOLUME (yd3): missing to the depth, or over it, in all parts.
 *   - OVS_THICKNESS_AREAS_PARTS: the connected parts.
 *   - OVS_THICKNESS_AREAS_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"depth":"5 in"}
 */
ovs_answer *ovs_thickness_areas_us(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   double depth_in,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Where the overlay is thinner, or thicker, than a depth: its connected parts as polygons, exactly.
 *
 * Equation: thinner = {finish - old slab < depth}, thicker = the rest; volume = integral of |finish - old slab -
 * depth|.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet; what is exactly at the depth
 * counts as thicker.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `depth_mm` (mm): the depth; at least -100000 mm, at most 100000 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `side`: which side of the depth; 0 thinner, 1 thicker; where left out thinner, because thin places are what
 *     is looked for.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_AREAS_AREA (m2): area of all parts.
 *   - OVS_THICKNESS_AREAS_VOLUME (m3): missing to the depth, or over it, in all parts.
 *   - OVS_THICKNESS_AREAS_PARTS: the connected parts.
 *   - OVS_THICKNESS_AREAS_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"depth":"5 in"}
 */
ovs_answer *ovs_thickness_areas_si(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   double depth_mm,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_thickness_areas_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_areas_us_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               double depth_in,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_thickness_areas_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_areas_si_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               double depth_mm,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Lines of equal thickness.
 *
 * Equation: finish - old slab = level, straight over each triangle.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet; where the thickness only
 * touches a level there is no line.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
 *   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
 *     be left out.
 *   - `counted_from` (in): a level that the steps are counted from; at least -3937.00787402 in, at most
 *     3937.00787402 in; where left out 0 in, because whole steps of the interval.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_CONTOURS_LINES: the lines.
 *   - OVS_THICKNESS_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_NULL_POINTER,
 * OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
 */
ovs_answer *ovs_thickness_contours_us(const ovs_survey *survey,
                                      const ovs_finish *finish,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Lines of equal thickness.
 *
 * Equation: finish - old slab = level, straight over each triangle.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet; where the thickness only
 * touches a level there is no line.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
 *   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
 *     out.
 *   - `counted_from` (mm): a level that the steps are counted from; at least -100000 mm, at most 100000 mm; where
 *     left out 0 in, because whole steps of the interval.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_CONTOURS_LINES: the lines.
 *   - OVS_THICKNESS_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_NULL_POINTER,
 * OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
 */
ovs_answer *ovs_thickness_contours_si(const ovs_survey *survey,
                                      const ovs_finish *finish,
                                      const char *options_json,
                                      int options_len,
                                      int *status,
                                      int *notes,
                                      int notes_len,
                                      char *msg,
                                      int msg_len);

/**
 * Why ovs_thickness_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_contours_us_why(const ovs_survey *survey,
                                  const ovs_finish *finish,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Why ovs_thickness_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_contours_si_why(const ovs_survey *survey,
                                  const ovs_finish *finish,
                                  const char *options_json,
                                  int options_len,
                                  char *text,
                                  int text_len,
                                  int *needed);

/**
 * Lines of equal height on the old slab.
 *
 * Equation: old slab = level, straight over each triangle.
 * Taken for granted: old slab plane over each triangle; where it only touches a level there is no line.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft;
 *     required.
 *   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
 *     be left out.
 *   - `counted_from` (ft): a level that the steps are counted from; at least -32808.3989501 ft, at most
 *     32808.3989501 ft; where left out 0 ft, because whole steps from the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_CONTOURS_LINES: the lines.
 *   - OVS_SURVEY_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER,
 * OVS_LEVELS_UNSORTED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"interval":"1/4 in"}
 */
ovs_answer *ovs_survey_contours_us(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Lines of equal height on the old slab.
 *
 * Equation: old slab = level, straight over each triangle.
 * Taken for granted: old slab plane over each triangle; where it only touches a level there is no line.
 *
 * - `survey`: the old slab.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
 *   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
 *     out.
 *   - `counted_from` (m): a level that the steps are counted from; at least -10000 m, at most 10000 m; where left
 *     out 0 ft, because whole steps from the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURVEY_CONTOURS_LINES: the lines.
 *   - OVS_SURVEY_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER,
 * OVS_LEVELS_UNSORTED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"interval":"1/4 in"}
 */
ovs_answer *ovs_survey_contours_si(const ovs_survey *survey,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_survey_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_contours_us_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_survey_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_survey_contours_si_why(const ovs_survey *survey,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Lines of equal height on the finish, over the work.
 *
 * Equation: finish = level, straight over each facet.
 * Taken for granted: finish plane over each facet; where it only touches a level there is no line.
 *
 * - `survey`: the old slab, whose outline bounds the lines.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501 ft;
 *     required.
 *   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
 *     be left out.
 *   - `counted_from` (ft): a level that the steps are counted from; at least -32808.3989501 ft, at most
 *     32808.3989501 ft; where left out 0 ft, because whole steps from the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_CONTOURS_LINES: the lines.
 *   - OVS_FINISH_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER, OVS_LEVELS_UNSORTED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.9 ft"}]},"interval":"1 in"}
 */
ovs_answer *ovs_finish_contours_us(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Lines of equal height on the finish, over the work.
 *
 * Equation: finish = level, straight over each facet.
 * Taken for granted: finish plane over each facet; where it only touches a level there is no line.
 *
 * - `survey`: the old slab, whose outline bounds the lines.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
 *   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
 *     out.
 *   - `counted_from` (m): a level that the steps are counted from; at least -10000 m, at most 10000 m; where left
 *     out 0 ft, because whole steps from the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FINISH_CONTOURS_LINES: the lines.
 *   - OVS_FINISH_CONTOURS_POINTS: their places.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_NULL_POINTER, OVS_LEVELS_UNSORTED.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"20 ft","y":"0 ft","elevation":"99.6 ft"},{"x":"0 ft","y":"32 ft","elevation":"99.9 ft"}]},"interval":"1 in"}
 */
ovs_answer *ovs_finish_contours_si(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_finish_contours_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_contours_us_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_finish_contours_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_finish_contours_si_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * The work in bands of thickness between successive levels, as polygons with area and volume.
 *
 * Equation: band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the whole.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
 *   - `interval` (in): the step between levels, in place of a list; more than 0 in, at most 3937.00787402 in; may
 *     be left out.
 *   - `counted_from` (in): a level that the steps are counted from; at least -3937.00787402 in, at most
 *     3937.00787402 in; where left out 0 in, because whole steps of the interval.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_BANDS_BANDS: the bands.
 *   - OVS_THICKNESS_BANDS_PARTS: their connected parts.
 *   - OVS_THICKNESS_BANDS_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/2 in"}
 */
ovs_answer *ovs_thickness_bands_us(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * The work in bands of thickness between successive levels, as polygons with area and volume.
 *
 * Equation: band = {lower <= finish - old slab < upper}; areas and volumes of all bands are those of the whole.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the levels, rising; may be left out.
 *   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
 *   - `interval` (mm): the step between levels, in place of a list; more than 0 mm, at most 100000 mm; may be left
 *     out.
 *   - `counted_from` (mm): a level that the steps are counted from; at least -100000 mm, at most 100000 mm; where
 *     left out 0 in, because whole steps of the interval.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_BANDS_BANDS: the bands.
 *   - OVS_THICKNESS_BANDS_PARTS: their connected parts.
 *   - OVS_THICKNESS_BANDS_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/2 in"}
 */
ovs_answer *ovs_thickness_bands_si(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_thickness_bands_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_bands_us_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_thickness_bands_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_bands_si_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of
 * the area lie.
 *
 * Equation: area of a bin = area thinner than its upper edge - area thinner than its lower edge, each exact.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the edges of the bins, rising; may be left out.
 *   - `level` of `levels` (in): thickness; at least -3937.00787402 in, at most 3937.00787402 in; required.
 *   - `interval` (in): the width of a bin, in place of a list of edges; more than 0 in, at most 3937.00787402 in;
 *     may be left out.
 *   - `counted_from` (in): an edge that the widths are counted from; at least -3937.00787402 in, at most
 *     3937.00787402 in; where left out 0 in, because whole steps of the width.
 *   - `shares`: shares of the area whose depths are told; where left out [{"share": "0 %"}, {"share": "25 %"},
 *     {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest.
 *   - `share` of `shares` (%): share of the area; at least 0 %, at most 100 %; required.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_HISTOGRAM_AREA (ft2): the whole area.
 *   - OVS_THICKNESS_HISTOGRAM_VOLUME (yd3): the whole volume, high spots taken off.
 *   - OVS_THICKNESS_HISTOGRAM_BINS: the bins.
 *   - OVS_THICKNESS_HISTOGRAM_QUANTILES: the depths of the shares.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
 */
ovs_answer *ovs_thickness_histogram_us(const ovs_survey *survey,
                                       const ovs_finish *finish,
                                       const char *options_json,
                                       int options_len,
                                       int *status,
                                       int *notes,
                                       int notes_len,
                                       char *msg,
                                       int msg_len);

/**
 * How much of the work is how thick: area and volume by bins of thickness, and the depths below which shares of
 * the area lie.
 *
 * Equation: area of a bin = area thinner than its upper edge - area thinner than its lower edge, each exact.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `levels`: the edges of the bins, rising; may be left out.
 *   - `level` of `levels` (mm): thickness; at least -100000 mm, at most 100000 mm; required.
 *   - `interval` (mm): the width of a bin, in place of a list of edges; more than 0 mm, at most 100000 mm; may be
 *     left out.
 *   - `counted_from` (mm): an edge that the widths are counted from; at least -100000 mm, at most 100000 mm; where
 *     left out 0 in, because whole steps of the width.
 *   - `shares`: shares of the area whose depths are told; where left out [{"share": "0 %"}, {"share": "25 %"},
 *     {"share": "50 %"}, {"share": "75 %"}, {"share": "100 %"}], because least, quarters and greatest.
 *   - `share` of `shares` (%): share of the area; at least 0 %, at most 100 %; required.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_HISTOGRAM_AREA (m2): the whole area.
 *   - OVS_THICKNESS_HISTOGRAM_VOLUME (m3): the whole volume, high spots taken off.
 *   - OVS_THICKNESS_HISTOGRAM_BINS: the bins.
 *   - OVS_THICKNESS_HISTOGRAM_QUANTILES: the depths of the shares.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_NULL_POINTER, OVS_LEVELS_UNSORTED, OVS_TOO_MANY_LEVELS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"interval":"1/4 in"}
 */
ovs_answer *ovs_thickness_histogram_si(const ovs_survey *survey,
                                       const ovs_finish *finish,
                                       const char *options_json,
                                       int options_len,
                                       int *status,
                                       int *notes,
                                       int notes_len,
                                       char *msg,
                                       int msg_len);

/**
 * Why ovs_thickness_histogram_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_histogram_us_why(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * Why ovs_thickness_histogram_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_histogram_si_why(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const char *options_json,
                                   int options_len,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * The thickness over zones of the work, each with its own figures, and over what no zone covers.
 *
 * Equation: as for the thickness, over the part of the work in each zone; zones may overlap, each counts all of
 * its own.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `zones_x_ft` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `zones_y_ft` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `zones_rows`: the corners of the zones: how many rows, each a corner of a zone, in order; the corners of one
 *   zone stand together; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `zone` of `zones`: name of the zone; required.
 *   - `thinner_than` (in): the area thinner than this is told; at least -3937.00787402 in, at most 3937.00787402
 *     in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_ZONES_FIGURES: the figures of each zone.
 *   - OVS_THICKNESS_ZONES_REST: the figures of the work outside all zones.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_REPEATED,
 * OVS_OUTLINE_TOO_FEW, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in","zones":{"zone":["bench","bench","bench","bench","lift","lift","lift","lift"],"x":["0 ft","20 ft","20 ft","0 ft","5 ft","15 ft","15 ft","5 ft"],"y":["26 ft","26 ft","32 ft","32 ft","10 ft","10 ft","22 ft","22 ft"]}}
 */
ovs_answer *ovs_thickness_zones_us(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const double *zones_x_ft,
                                   const double *zones_y_ft,
                                   int zones_rows,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * The thickness over zones of the work, each with its own figures, and over what no zone covers.
 *
 * Equation: as for the thickness, over the part of the work in each zone; zones may overlap, each counts all of
 * its own.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `zones_x_m` (m): from the left; at least -100000 m, at most 100000 m.
 * - `zones_y_m` (m): from the front; at least -100000 m, at most 100000 m.
 * - `zones_rows`: the corners of the zones: how many rows, each a corner of a zone, in order; the corners of one
 *   zone stand together; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `zone` of `zones`: name of the zone; required.
 *   - `thinner_than` (mm): the area thinner than this is told; at least -100000 mm, at most 100000 mm; may be left
 *     out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THICKNESS_ZONES_FIGURES: the figures of each zone.
 *   - OVS_THICKNESS_ZONES_REST: the figures of the work outside all zones.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_REPEATED,
 * OVS_OUTLINE_TOO_FEW, OVS_REGION_OUTSIDE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"thinner_than":"5 in","zones":{"zone":["bench","bench","bench","bench","lift","lift","lift","lift"],"x":["0 ft","20 ft","20 ft","0 ft","5 ft","15 ft","15 ft","5 ft"],"y":["26 ft","26 ft","32 ft","32 ft","10 ft","10 ft","22 ft","22 ft"]}}
 */
ovs_answer *ovs_thickness_zones_si(const ovs_survey *survey,
                                   const ovs_finish *finish,
                                   const double *zones_x_m,
                                   const double *zones_y_m,
                                   int zones_rows,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_thickness_zones_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_zones_us_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const double *zones_x_ft,
                               const double *zones_y_ft,
                               int zones_rows,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_thickness_zones_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_zones_si_why(const ovs_survey *survey,
                               const ovs_finish *finish,
                               const double *zones_x_m,
                               const double *zones_y_m,
                               int zones_rows,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes
 * and costs.
 *
 * Equation: deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind = integral
 * of minimum less overlay over the zone; break out = integral of new thickness less overlay, from 0 up, over the
 * box; overlay = thickness, from 0 up; cost = area x price + concrete x price.
 * Taken for granted: bonding and breaking out take the zone's box within the work, for a change of bond comes only
 * along a straight full-depth joint; zones are told beyond the shots too.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `minimum_in` (in): least thickness of an unbonded overlay; more than 0 in, at most 120 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `bonded_minimum` (in): least thickness of a bonded part, at most the unbonded one; more than 0 in, at most
 *     120 in; may be left out.
 *   - `grind_at_most` (in): how deep the old slab may be ground; at least 0 in, at most 120 in; may be left out.
 *   - `new_thickness` (in): thickness of the concrete where the old slab is broken out, down from the finish; more
 *     than 0 in, at most 120 in; may be left out.
 *   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
 *   - `bonding_price` (/ft2): price of bonding: milling, cleaning and slurry together; at least 0 /ft2, at most
 *     929030.4 /ft2; may be left out.
 *   - `grinding_price` (/ft2): price of grinding; at least 0 /ft2, at most 929030.4 /ft2; may be left out.
 *   - `breaking_out_price` (/ft2): price of breaking out, hauling with it; at least 0 /ft2, at most 929030.4 /ft2;
 *     may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THIN_ZONES_AREA (ft2): area of all that is thinner.
 *   - OVS_THIN_ZONES_LACKING (yd3): volume all of it lacks to the minimum.
 *   - OVS_THIN_ZONES_LEFT_OUT (ft2): area of zones under a square millimetre, not listed.
 *   - OVS_THIN_ZONES_RAISE_ALL (in): rise of the whole finish that leaves no zone; none where there is none.
 *   - OVS_THIN_ZONES_RAISE_ALL_CONCRETE (yd3): concrete it takes.
 *   - OVS_THIN_ZONES_RAISE_ALL_COST (money): what it costs.
 *   - OVS_THIN_ZONES_ZONE_BY_ZONE_COST (money): all zones, each in the cheapest way without raising.
 *   - OVS_THIN_ZONES_SAID: all of it in a few sentences.
 *   - OVS_THIN_ZONES_ZONES: the zones.
 *   - OVS_THIN_ZONES_CHOICES: the choices about each.
 *   - OVS_THIN_ZONES_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: the least thickness of an unbonded overlay: the project's specification.
 * Basis: a change between bonded and unbonded comes only along a full-depth joint: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.56 ft"},"minimum":"3 in","bonded_minimum":"1 1/2 in","grind_at_most":"1/2 in","new_thickness":"6 in","concrete_price":"162 /yd3","bonding_price":"5.5 /ft2","grinding_price":"4 /ft2","breaking_out_price":"9 /ft2"}
 */
ovs_answer *ovs_thin_zones_us(const ovs_survey *survey,
                              const ovs_finish *finish,
                              double minimum_in,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * The zones thinner than the unbonded minimum, and for each what raising, bonding, grinding or breaking out takes
 * and costs.
 *
 * Equation: deficit = minimum less thinnest; raise = fill(finish raised by it) less fill(finish); grind = integral
 * of minimum less overlay over the zone; break out = integral of new thickness less overlay, from 0 up, over the
 * box; overlay = thickness, from 0 up; cost = area x price + concrete x price.
 * Taken for granted: bonding and breaking out take the zone's box within the work, for a change of bond comes only
 * along a straight full-depth joint; zones are told beyond the shots too.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `minimum_mm` (mm): least thickness of an unbonded overlay; more than 0 mm, at most 3048 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `bonded_minimum` (mm): least thickness of a bonded part, at most the unbonded one; more than 0 mm, at most
 *     3048 mm; may be left out.
 *   - `grind_at_most` (mm): how deep the old slab may be ground; at least 0 mm, at most 3048 mm; may be left out.
 *   - `new_thickness` (mm): thickness of the concrete where the old slab is broken out, down from the finish; more
 *     than 0 mm, at most 3048 mm; may be left out.
 *   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
 *   - `bonding_price` (/m2): price of bonding: milling, cleaning and slurry together; at least 0 /m2, at most
 *     10000000 /m2; may be left out.
 *   - `grinding_price` (/m2): price of grinding; at least 0 /m2, at most 10000000 /m2; may be left out.
 *   - `breaking_out_price` (/m2): price of breaking out, hauling with it; at least 0 /m2, at most 10000000 /m2;
 *     may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_THIN_ZONES_AREA (m2): area of all that is thinner.
 *   - OVS_THIN_ZONES_LACKING (m3): volume all of it lacks to the minimum.
 *   - OVS_THIN_ZONES_LEFT_OUT (m2): area of zones under a square millimetre, not listed.
 *   - OVS_THIN_ZONES_RAISE_ALL (mm): rise of the whole finish that leaves no zone; none where there is none.
 *   - OVS_THIN_ZONES_RAISE_ALL_CONCRETE (m3): concrete it takes.
 *   - OVS_THIN_ZONES_RAISE_ALL_COST (money): what it costs.
 *   - OVS_THIN_ZONES_ZONE_BY_ZONE_COST (money): all zones, each in the cheapest way without raising.
 *   - OVS_THIN_ZONES_SAID: all of it in a few sentences.
 *   - OVS_THIN_ZONES_ZONES: the zones.
 *   - OVS_THIN_ZONES_CHOICES: the choices about each.
 *   - OVS_THIN_ZONES_CORNERS: the corners of their polygons.
 *
 * Refuses with OVS_UNIT_MISSING, OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER.
 * Basis: plane and solid geometry: derived.
 * Basis: the least thickness of an unbonded overlay: the project's specification.
 * Basis: a change between bonded and unbonded comes only along a full-depth joint: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.56 ft"},"minimum":"3 in","bonded_minimum":"1 1/2 in","grind_at_most":"1/2 in","new_thickness":"6 in","concrete_price":"162 /yd3","bonding_price":"5.5 /ft2","grinding_price":"4 /ft2","breaking_out_price":"9 /ft2"}
 */
ovs_answer *ovs_thin_zones_si(const ovs_survey *survey,
                              const ovs_finish *finish,
                              double minimum_mm,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_thin_zones_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thin_zones_us_why(const ovs_survey *survey,
                          const ovs_finish *finish,
                          double minimum_in,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Why ovs_thin_zones_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thin_zones_si_why(const ovs_survey *survey,
                          const ovs_finish *finish,
                          double minimum_mm,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
 *
 * Equation: net = integral along the line of (finish - old slab); fill = its positive part; high = its negative
 * part.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `line_x_ft` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `line_y_ft` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `line_rows`: the places of the line, two or more: how many rows, each a place of the line, in order; at least
 *   1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `spacing` (ft): also tell the heights at whole steps of this from the start; at least 0.00328083989501 ft,
 *     at most 3280.83989501 ft; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SECTION_LENGTH (ft): length of the line.
 *   - OVS_SECTION_COVERED (ft): length over the work.
 *   - OVS_SECTION_NET (ft2): area between old slab and finish, high spots taken off.
 *   - OVS_SECTION_FILL (ft2): area where the finish is above the old slab.
 *   - OVS_SECTION_HIGH (ft2): area of old slab above the finish.
 *   - OVS_SECTION_MEAN (in): net area over covered length.
 *   - OVS_SECTION_LEAST (in): least thickness along the line.
 *   - OVS_SECTION_LEAST_DISTANCE (ft): where it is, along the line.
 *   - OVS_SECTION_LEAST_X (ft): where it is, from the left.
 *   - OVS_SECTION_LEAST_Y (ft): where it is, from the front.
 *   - OVS_SECTION_GREATEST (in): greatest thickness along the line.
 *   - OVS_SECTION_GREATEST_DISTANCE (ft): where it is, along the line.
 *   - OVS_SECTION_GREATEST_X (ft): where it is, from the left.
 *   - OVS_SECTION_GREATEST_Y (ft): where it is, from the front.
 *   - OVS_SECTION_STATIONS: the stations.
 *   - OVS_SECTION_SAMPLES: the heights at whole steps of the spacing; none without one.
 *   - OVS_SECTION_GAPS: the stretches outside the work.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT,
 * OVS_LINE_OUTSIDE, OVS_TOO_MANY_STATIONS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"line":{"x":["2 ft","2 ft","22 ft"],"y":["1 ft","30 ft","30 ft"]},"spacing":"4 ft"}
 */
ovs_answer *ovs_section_us(const ovs_survey *survey,
                           const ovs_finish *finish,
                           const double *line_x_ft,
                           const double *line_y_ft,
                           int line_rows,
                           const char *options_json,
                           int options_len,
                           int *status,
                           int *notes,
                           int notes_len,
                           char *msg,
                           int msg_len);

/**
 * Old slab and finish along a line of straight legs, with stations at every side of a triangle and facet, exactly.
 *
 * Equation: net = integral along the line of (finish - old slab); fill = its positive part; high = its negative
 * part.
 * Taken for granted: old slab plane over each triangle, finish plane over each facet.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `line_x_m` (m): from the left; at least -100000 m, at most 100000 m.
 * - `line_y_m` (m): from the front; at least -100000 m, at most 100000 m.
 * - `line_rows`: the places of the line, two or more: how many rows, each a place of the line, in order; at least
 *   1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `spacing` (m): also tell the heights at whole steps of this from the start; at least 0.001 m, at most 1000
 *     m; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SECTION_LENGTH (m): length of the line.
 *   - OVS_SECTION_COVERED (m): length over the work.
 *   - OVS_SECTION_NET (m2): area between old slab and finish, high spots taken off.
 *   - OVS_SECTION_FILL (m2): area where the finish is above the old slab.
 *   - OVS_SECTION_HIGH (m2): area of old slab above the finish.
 *   - OVS_SECTION_MEAN (mm): net area over covered length.
 *   - OVS_SECTION_LEAST (mm): least thickness along the line.
 *   - OVS_SECTION_LEAST_DISTANCE (m): where it is, along the line.
 *   - OVS_SECTION_LEAST_X (m): where it is, from the left.
 *   - OVS_SECTION_LEAST_Y (m): where it is, from the front.
 *   - OVS_SECTION_GREATEST (mm): greatest thickness along the line.
 *   - OVS_SECTION_GREATEST_DISTANCE (m): where it is, along the line.
 *   - OVS_SECTION_GREATEST_X (m): where it is, from the left.
 *   - OVS_SECTION_GREATEST_Y (m): where it is, from the front.
 *   - OVS_SECTION_STATIONS: the stations.
 *   - OVS_SECTION_SAMPLES: the heights at whole steps of the spacing; none without one.
 *   - OVS_SECTION_GAPS: the stretches outside the work.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT,
 * OVS_LINE_OUTSIDE, OVS_TOO_MANY_STATIONS.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"level":"99.7 ft"},"line":{"x":["2 ft","2 ft","22 ft"],"y":["1 ft","30 ft","30 ft"]},"spacing":"4 ft"}
 */
ovs_answer *ovs_section_si(const ovs_survey *survey,
                           const ovs_finish *finish,
                           const double *line_x_m,
                           const double *line_y_m,
                           int line_rows,
                           const char *options_json,
                           int options_len,
                           int *status,
                           int *notes,
                           int notes_len,
                           char *msg,
                           int msg_len);

/**
 * Why ovs_section_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_section_us_why(const ovs_survey *survey,
                       const ovs_finish *finish,
                       const double *line_x_ft,
                       const double *line_y_ft,
                       int line_rows,
                       const char *options_json,
                       int options_len,
                       char *text,
                       int text_len,
                       int *needed);

/**
 * Why ovs_section_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_section_si_why(const ovs_survey *survey,
                       const ovs_finish *finish,
                       const double *line_x_m,
                       const double *line_y_m,
                       int line_rows,
                       const char *options_json,
                       int options_len,
                       char *text,
                       int text_len,
                       int *needed);

/**
 * Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the
 * least concrete, with a bound that no place goes under.
 *
 * Equation: z = perimeter - drop x (distance from the run's line / distance of the drain from it); concrete =
 * integral of z - old slab, least over perimeter, drop and place; gap = (concrete - bound) / concrete.
 * Taken for granted: every corner of the outline is seen from the drain, at least 1/2 in inside the line of every
 * run; the search and its bound are over unrounded finishes, and rounding comes after; ground beyond the shots
 * does not bind.
 *
 * - `survey`: the old slab with its outline.
 * - `x_from_ft` (ft): the drain is no farther left than this, from the left; at least -328083.989501 ft, at most
 *   328083.989501 ft.
 * - `x_to_ft` (ft): and no farther right; the same as x_from leaves one line of places; at least -328083.989501
 *   ft, at most 328083.989501 ft.
 * - `y_from_ft` (ft): no farther to the front, from the front; at least -328083.989501 ft, at most 328083.989501
 *   ft.
 * - `y_to_ft` (ft): and no farther back; at least -328083.989501 ft, at most 328083.989501 ft.
 * - `least_in` (in): least thickness; at least 0 in, at most 120 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `margin` (in): margin on the least thickness; at least 0 in, at most 120 in; where left out 3/8 in, because
 *     reading, texture and strike-off.
 *   - `fall` (in/ft): least fall to the drain from every corner of the perimeter; at least 0 in/ft, at most 12
 *     in/ft; where left out 1/8 in/ft, because the least for a well-finished floor.
 *   - `greatest_fall` (in/ft): greatest fall, in whatever direction; at least 0 in/ft, at most 12 in/ft; may be
 *     left out.
 *   - `concrete_price` (/yd3): price of concrete; at least 0 /yd3, at most 7645548.57984 /yd3; may be left out.
 *   - `close` (%): the search ends when the concrete is above the bound by no more than this share of it; at least
 *     0.0001 %, at most 100 %; where left out 0.01 %, because less than a shovel to a truck.
 *   - `most_places`: the search ends too when so many places were tried; 5000 if not given; from 1 to 1000000; may
 *     be left out.
 *   - `round` (in): the heights of perimeter and drain are rounded to whole steps of this that keep the demands;
 *     at least 0 in, at most 12 in; may be left out.
 *   - `datum` (ft): the height the steps are counted from, usually the benchmark; at least -32808.3989501 ft, at
 *     most 32808.3989501 ft; where left out 0 ft, because the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_DRAIN_PLACE_FINISH: the finish there, rounded if that was asked.
 *   - OVS_DRAIN_PLACE_X (ft): middle of the drain, from the left.
 *   - OVS_DRAIN_PLACE_Y (ft): middle of the drain, from the front.
 *   - OVS_DRAIN_PLACE_PERIMETER (ft): height of that finish all along the outer edges.
 *   - OVS_DRAIN_PLACE_DRAIN_ELEVATION (ft): its height at the drain.
 *   - OVS_DRAIN_PLACE_CONCRETE (yd3): concrete of the unrounded finish, margin with it.
 *   - OVS_DRAIN_PLACE_BOUND (yd3): no place in the rectangle takes less.
 *   - OVS_DRAIN_PLACE_GAP (1): how far the concrete may be above the best, as a share of it.
 *   - OVS_DRAIN_PLACE_PLACES: places at which the finish was solved.
 *   - OVS_DRAIN_PLACE_ENDED: why the search ended: as close as asked, or the cap on places; 0 close, 1 cap.
 *   - OVS_DRAIN_PLACE_BUILT_CONCRETE (yd3): concrete of the finish as rounded.
 *   - OVS_DRAIN_PLACE_COST (money): what that costs; none without a price.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER,
 * OVS_DRAIN_UNPLACED, OVS_DRAIN_NOWHERE.
 * Basis: plane and solid geometry: derived.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x_from":"4 ft","x_to":"16 ft","y_from":"6 ft","y_to":"20 ft","least":"3 in","fall":"1/8 in/ft","concrete_price":"162 /yd3","close":"0.1 %","round":"1/8 in"}
 */
ovs_answer *ovs_drain_place_us(const ovs_survey *survey,
                               double x_from_ft,
                               double x_to_ft,
                               double y_from_ft,
                               double y_to_ft,
                               double least_in,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Where an area drain goes inside a rectangle so that a floor that falls to it from a level perimeter takes the
 * least concrete, with a bound that no place goes under.
 *
 * Equation: z = perimeter - drop x (distance from the run's line / distance of the drain from it); concrete =
 * integral of z - old slab, least over perimeter, drop and place; gap = (concrete - bound) / concrete.
 * Taken for granted: every corner of the outline is seen from the drain, at least 1/2 in inside the line of every
 * run; the search and its bound are over unrounded finishes, and rounding comes after; ground beyond the shots
 * does not bind.
 *
 * - `survey`: the old slab with its outline.
 * - `x_from_m` (m): the drain is no farther left than this, from the left; at least -100000 m, at most 100000 m.
 * - `x_to_m` (m): and no farther right; the same as x_from leaves one line of places; at least -100000 m, at most
 *   100000 m.
 * - `y_from_m` (m): no farther to the front, from the front; at least -100000 m, at most 100000 m.
 * - `y_to_m` (m): and no farther back; at least -100000 m, at most 100000 m.
 * - `least_mm` (mm): least thickness; at least 0 mm, at most 3048 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `margin` (mm): margin on the least thickness; at least 0 mm, at most 3048 mm; where left out 3/8 in, because
 *     reading, texture and strike-off.
 *   - `fall` (%): least fall to the drain from every corner of the perimeter; at least 0 %, at most 100 %; where
 *     left out 1/8 in/ft, because the least for a well-finished floor.
 *   - `greatest_fall` (%): greatest fall, in whatever direction; at least 0 %, at most 100 %; may be left out.
 *   - `concrete_price` (/m3): price of concrete; at least 0 /m3, at most 10000000 /m3; may be left out.
 *   - `close` (%): the search ends when the concrete is above the bound by no more than this share of it; at least
 *     0.0001 %, at most 100 %; where left out 0.01 %, because less than a shovel to a truck.
 *   - `most_places`: the search ends too when so many places were tried; 5000 if not given; from 1 to 1000000; may
 *     be left out.
 *   - `round` (mm): the heights of perimeter and drain are rounded to whole steps of this that keep the demands;
 *     at least 0 mm, at most 304.8 mm; may be left out.
 *   - `datum` (m): the height the steps are counted from, usually the benchmark; at least -10000 m, at most 10000
 *     m; where left out 0 ft, because the job datum.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_DRAIN_PLACE_FINISH: the finish there, rounded if that was asked.
 *   - OVS_DRAIN_PLACE_X (m): middle of the drain, from the left.
 *   - OVS_DRAIN_PLACE_Y (m): middle of the drain, from the front.
 *   - OVS_DRAIN_PLACE_PERIMETER (m): height of that finish all along the outer edges.
 *   - OVS_DRAIN_PLACE_DRAIN_ELEVATION (m): its height at the drain.
 *   - OVS_DRAIN_PLACE_CONCRETE (m3): concrete of the unrounded finish, margin with it.
 *   - OVS_DRAIN_PLACE_BOUND (m3): no place in the rectangle takes less.
 *   - OVS_DRAIN_PLACE_GAP (1): how far the concrete may be above the best, as a share of it.
 *   - OVS_DRAIN_PLACE_PLACES: places at which the finish was solved.
 *   - OVS_DRAIN_PLACE_ENDED: why the search ended: as close as asked, or the cap on places; 0 close, 1 cap.
 *   - OVS_DRAIN_PLACE_BUILT_CONCRETE (m3): concrete of the finish as rounded.
 *   - OVS_DRAIN_PLACE_COST (money): what that costs; none without a price.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_NULL_POINTER,
 * OVS_DRAIN_UNPLACED, OVS_DRAIN_NOWHERE.
 * Basis: plane and solid geometry: derived.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"x_from":"4 ft","x_to":"16 ft","y_from":"6 ft","y_to":"20 ft","least":"3 in","fall":"1/8 in/ft","concrete_price":"162 /yd3","close":"0.1 %","round":"1/8 in"}
 */
ovs_answer *ovs_drain_place_si(const ovs_survey *survey,
                               double x_from_m,
                               double x_to_m,
                               double y_from_m,
                               double y_to_m,
                               double least_mm,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_drain_place_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drain_place_us_why(const ovs_survey *survey,
                           double x_from_ft,
                           double x_to_ft,
                           double y_from_ft,
                           double y_to_ft,
                           double least_in,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_drain_place_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drain_place_si_why(const ovs_survey *survey,
                           double x_from_m,
                           double x_to_m,
                           double y_from_m,
                           double y_to_m,
                           double least_mm,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance
 * below the line, and height over the old slab as the check.
 *
 * Equation: rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest whole
 * step, half a step going to the higher floor.
 * Taken for granted: the walk goes once round the outer ring with the work on the left, then round each hole;
 * between neighbouring marks the floor is straight; old slab plane over each triangle.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `line` (ft): elevation of the level line struck round the walls; without it no distances below it; at least
 *     -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
 *   - `sight` (ft): elevation of the line of sight now; without it and without setups that of the survey's first
 *     set-up; at least -32808.3989501 ft, at most 32808.3989501 ft; may be left out.
 *   - `setups`: set-ups that marks are read from, instead of sight; every mark is told from each; may be left out.
 *   - `name` of `setups`: what it is called; may be left out.
 *   - `sight` of `setups` (ft): elevation of its line of sight; at least -32808.3989501 ft, at most 32808.3989501
 *     ft; may be left out.
 *   - `benchmark` of `setups` (ft): elevation of a benchmark; at least -3280.83989501 ft, at most 32808.3989501
 *     ft; may be left out.
 *   - `rod` of `setups` (ft): the rod on that benchmark; at least 0 ft, at most 32.8083989501 ft; may be left out.
 *   - `rod_length` (ft): how long the rod is; at least 1 ft, at most 32 ft; where left out 16 ft, because a
 *     telescoping rod, common practice, no source.
 *   - `round` (in): rods and distances below the line are marked in whole steps of this; at least 0.00393700787402
 *     in, at most 4 in; where left out 1/8 in, because finer cannot be set out.
 *   - `spacing` (ft): greatest distance between stations at an edge or a rail; at least 0.25 ft, at most 100 ft;
 *     where left out 4 ft, because the old slab is checked each 4 ft, common practice, no source.
 *   - `points`: places on edges that must have a mark; up to 6 in off they are taken to the edge; may be left out.
 *   - `name` of `points`: what it is called; required.
 *   - `x` of `points` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `points` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `screed_length` (ft): length of the screed that rides on the pads; at least 2.5 ft, at most 50 ft; where
 *     left out 8 ft, because what two can pull by hand, common practice, no source.
 *   - `pad_spacing` (ft): greatest distance between pads; without it the screed less 2 ft; at least 0.5 ft, at
 *     most 48 ft; may be left out.
 *   - `pad_inset` (ft): how far pads stay off the edges; at least 0 ft, at most 10 ft; where left out 1 ft,
 *     because the marks at the edge serve there, common practice, no source.
 *   - `forms`: edges with a form; the others are walls with an isolation strip; may be left out.
 *   - `edge` of `forms`: its name; required.
 *   - `rails`: screed rails; may be left out.
 *   - `name` of `rails`: the rail; required.
 *   - `x` of `rails` (ft): from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `rails` (ft): from the front; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `rail_offset` (in): how far the tops of the rails stand above the floor; at least -12 in, at most 12 in;
 *     where left out 0 in, because the screed rides at the height of the floor.
 *   - `start_edge`: the edge that the walk starts with; the first where left out; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_MARKS_MARKS: how many marks there are.
 *   - OVS_MARKS_SIGHT (ft): elevation of the first line of sight.
 *   - OVS_MARKS_ROD_ON_LINE (ft): the rod on the reference line from there.
 *   - OVS_MARKS_GREATEST_DEPARTURE (in): how far marks leave the floor by rounding, at most.
 *   - OVS_MARKS_STATIONS: the marks at the edges.
 *   - OVS_MARKS_PADS: the wet pads.
 *   - OVS_MARKS_FORMS: the tops of the forms.
 *   - OVS_MARKS_RAILS: the tops of the rails.
 *   - OVS_MARKS_RODS: every mark from every set-up.
 *   - OVS_MARKS_EDGES: the edges.
 *   - OVS_MARKS_RIPS: what strips and forms are ripped to.
 *   - OVS_MARKS_LINES: the lines along which planes meet.
 *   - OVS_MARKS_DIAGONALS: lengths from corner to corner.
 *   - OVS_MARKS_CSV: all marks as a CSV file.
 *   - OVS_MARKS_TEXT: the list for the site.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE, OVS_LINE_TOO_SHORT, OVS_POINT_OFF_WALL, OVS_RAIL_OUTSIDE,
 * OVS_PADS_TOO_FAR.
 * Basis: a chalk line round the walls and wet pads set the grade that the screed follows; heights are marked from
 * a level line, never up from the old slab: common practice, no source.
 * Basis: the old slab is checked each 4 ft along the walls: common practice, no source.
 * Basis: wet pads no farther apart than the length of the screed less 2 ft: common practice, no source.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"1 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"1 ft","y":"31 ft","elevation":"99.84 ft"}]},"line":"103 ft","setups":{"name":["nail, left jamb","nail, back"],"benchmark":["100 ft","100.5 ft"],"rod":["4' 2 1/2\"","3' 8\""]},"points":{"name":["left jamb","right jamb"],"x":["4 ft","16 ft"],"y":["1 in","1 in"]},"forms":{"edge":["front"]},"rails":{"name":["middle","middle"],"x":["10 ft","10 ft"],"y":["1 ft","31 ft"]},"rail_offset":"1/2 in"}
 */
ovs_answer *ovs_marks_us(const ovs_survey *survey,
                         const ovs_finish *finish,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * Every mark of a floor in the order of walking: stations at the edges, wet pads, forms, rails, with rod, distance
 * below the line, and height over the old slab as the check.
 *
 * Equation: rod = sight - finish; below = line - finish; over = finish - old slab; marked = the nearest whole
 * step, half a step going to the higher floor.
 * Taken for granted: the walk goes once round the outer ring with the work on the left, then round each hole;
 * between neighbouring marks the floor is straight; old slab plane over each triangle.
 *
 * - `survey`: the old slab.
 * - `finish`: the new top surface.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `line` (m): elevation of the level line struck round the walls; without it no distances below it; at least
 *     -10000 m, at most 10000 m; may be left out.
 *   - `sight` (m): elevation of the line of sight now; without it and without setups that of the survey's first
 *     set-up; at least -10000 m, at most 10000 m; may be left out.
 *   - `setups`: set-ups that marks are read from, instead of sight; every mark is told from each; may be left out.
 *   - `name` of `setups`: what it is called; may be left out.
 *   - `sight` of `setups` (m): elevation of its line of sight; at least -10000 m, at most 10000 m; may be left
 *     out.
 *   - `benchmark` of `setups` (m): elevation of a benchmark; at least -1000 m, at most 10000 m; may be left out.
 *   - `rod` of `setups` (m): the rod on that benchmark; at least 0 m, at most 10 m; may be left out.
 *   - `rod_length` (m): how long the rod is; at least 0.3048 m, at most 9.7536 m; where left out 16 ft, because a
 *     telescoping rod, common practice, no source.
 *   - `round` (mm): rods and distances below the line are marked in whole steps of this; at least 0.1 mm, at most
 *     101.6 mm; where left out 1/8 in, because finer cannot be set out.
 *   - `spacing` (m): greatest distance between stations at an edge or a rail; at least 0.0762 m, at most 30.48 m;
 *     where left out 4 ft, because the old slab is checked each 4 ft, common practice, no source.
 *   - `points`: places on edges that must have a mark; up to 6 in off they are taken to the edge; may be left out.
 *   - `name` of `points`: what it is called; required.
 *   - `x` of `points` (m): from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `points` (m): from the front; at least -100000 m, at most 100000 m; required.
 *   - `screed_length` (m): length of the screed that rides on the pads; at least 0.762 m, at most 15.24 m; where
 *     left out 8 ft, because what two can pull by hand, common practice, no source.
 *   - `pad_spacing` (m): greatest distance between pads; without it the screed less 2 ft; at least 0.1524 m, at
 *     most 14.6304 m; may be left out.
 *   - `pad_inset` (m): how far pads stay off the edges; at least 0 m, at most 3.048 m; where left out 1 ft,
 *     because the marks at the edge serve there, common practice, no source.
 *   - `forms`: edges with a form; the others are walls with an isolation strip; may be left out.
 *   - `edge` of `forms`: its name; required.
 *   - `rails`: screed rails; may be left out.
 *   - `name` of `rails`: the rail; required.
 *   - `x` of `rails` (m): from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `rails` (m): from the front; at least -100000 m, at most 100000 m; required.
 *   - `rail_offset` (mm): how far the tops of the rails stand above the floor; at least -304.8 mm, at most 304.8
 *     mm; where left out 0 in, because the screed rides at the height of the floor.
 *   - `start_edge`: the edge that the walk starts with; the first where left out; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_MARKS_MARKS: how many marks there are.
 *   - OVS_MARKS_SIGHT (m): elevation of the first line of sight.
 *   - OVS_MARKS_ROD_ON_LINE (m): the rod on the reference line from there.
 *   - OVS_MARKS_GREATEST_DEPARTURE (mm): how far marks leave the floor by rounding, at most.
 *   - OVS_MARKS_STATIONS: the marks at the edges.
 *   - OVS_MARKS_PADS: the wet pads.
 *   - OVS_MARKS_FORMS: the tops of the forms.
 *   - OVS_MARKS_RAILS: the tops of the rails.
 *   - OVS_MARKS_RODS: every mark from every set-up.
 *   - OVS_MARKS_EDGES: the edges.
 *   - OVS_MARKS_RIPS: what strips and forms are ripped to.
 *   - OVS_MARKS_LINES: the lines along which planes meet.
 *   - OVS_MARKS_DIAGONALS: lengths from corner to corner.
 *   - OVS_MARKS_CSV: all marks as a CSV file.
 *   - OVS_MARKS_TEXT: the list for the site.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_KEY_MISSING, OVS_CONTRADICTION, OVS_EDGE_UNKNOWN,
 * OVS_NULL_POINTER, OVS_FACETS_LEAVE_HOLE, OVS_LINE_TOO_SHORT, OVS_POINT_OFF_WALL, OVS_RAIL_OUTSIDE,
 * OVS_PADS_TOO_FAR.
 * Basis: a chalk line round the walls and wet pads set the grade that the screed follows; heights are marked from
 * a level line, never up from the old slab: common practice, no source.
 * Basis: the old slab is checked each 4 ft along the walls: common practice, no source.
 * Basis: wet pads no farther apart than the length of the screed less 2 ft: common practice, no source.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"20 ft"},{"name":"right","length":"32 ft"},{"name":"back","length":"20 ft"},{"name":"left","length":"32 ft"}]},"grid":{"columns":["1 ft","10 ft","19 ft"],"rows":["1 ft","16 ft","31 ft"],"elevations":["99.20 ft","99.22 ft","99.18 ft","99.25 ft","99.26 ft","99.24 ft","99.35 ft","99.33 ft","99.36 ft"]}},"finish":{"points":[{"x":"1 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"19 ft","y":"1 ft","elevation":"99.53 ft"},{"x":"1 ft","y":"31 ft","elevation":"99.84 ft"}]},"line":"103 ft","setups":{"name":["nail, left jamb","nail, back"],"benchmark":["100 ft","100.5 ft"],"rod":["4' 2 1/2\"","3' 8\""]},"points":{"name":["left jamb","right jamb"],"x":["4 ft","16 ft"],"y":["1 in","1 in"]},"forms":{"edge":["front"]},"rails":{"name":["middle","middle"],"x":["10 ft","10 ft"],"y":["1 ft","31 ft"]},"rail_offset":"1/2 in"}
 */
ovs_answer *ovs_marks_si(const ovs_survey *survey,
                         const ovs_finish *finish,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * Why ovs_marks_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_marks_us_why(const ovs_survey *survey,
                     const ovs_finish *finish,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * Why ovs_marks_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_marks_si_why(const ovs_survey *survey,
                     const ovs_finish *finish,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
 *
 * Equation: difference = today - planned; rod today = rod planned + difference; two benchmarks must move alike.
 * Taken for granted: within 1/8 in the same set-up agrees (common practice, no source); a new set-up may read
 * anything, but alike on both benchmarks.
 *
 * - `planned_ft` (ft): rod on the benchmark when the marks were planned; at least 0 ft, at most 32.8083989501 ft.
 * - `today_ft` (ft): rod on it today; at least 0 ft, at most 32.8083989501 ft.
 * - `same_setup`: yes where the level still stands where it stood, no after it was set up anew; 0 no, 1 yes.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `marks`: the rods of the marks; may be left out.
 *   - `rod` of `marks` (ft): its rod as planned; at least 0 ft, at most 32.8083989501 ft; required.
 *   - `second_planned` (ft): rod on a second benchmark when the marks were planned; at least 0 ft, at most
 *     32.8083989501 ft; may be left out.
 *   - `second_today` (ft): rod on the second benchmark today; at least 0 ft, at most 32.8083989501 ft; may be left
 *     out.
 *   - `tolerance` (in): how far the benchmark may read off, and two benchmarks from one another; at least 0 in, at
 *     most 12 in; where left out 1/4 in, because more is no reading error, common practice, no source.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_MORNING_CHECK_DIFFERENCE (in): today less planned: what every rod moves by.
 *   - OVS_MORNING_CHECK_SECOND_DIFFERENCE (in): the same of the second benchmark.
 *   - OVS_MORNING_CHECK_VERDICT: what follows; 0 same, 1 agrees, 2 shift, 3 stop.
 *   - OVS_MORNING_CHECK_DOUBTED: which benchmark is in doubt; 0 none, 1 first, 2 second, 3 either.
 *   - OVS_MORNING_CHECK_TODAY: the rods of the marks today; none where nobody should pour.
 *   - OVS_MORNING_CHECK_SAID: a sentence for the crew.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING.
 * Basis: the benchmark is read before the pour: every rod moves by the difference, and nobody pours where it is
 * off by more than 1/4 in: common practice, no source.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
 * practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"planned":"4' 2 1/2\"","today":"4' 5 3/8\"","same_setup":"no","marks":{"rod":["4' 9\"","4' 8 1/2\""]},"second_planned":"3' 8\"","second_today":"3' 10 3/4\""}
 */
ovs_answer *ovs_morning_check_us(double planned_ft,
                                 double today_ft,
                                 int same_setup,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * The benchmark read before the pour: how far every rod moves, or why nobody should pour yet.
 *
 * Equation: difference = today - planned; rod today = rod planned + difference; two benchmarks must move alike.
 * Taken for granted: within 1/8 in the same set-up agrees (common practice, no source); a new set-up may read
 * anything, but alike on both benchmarks.
 *
 * - `planned_m` (m): rod on the benchmark when the marks were planned; at least 0 m, at most 10 m.
 * - `today_m` (m): rod on it today; at least 0 m, at most 10 m.
 * - `same_setup`: yes where the level still stands where it stood, no after it was set up anew; 0 no, 1 yes.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `marks`: the rods of the marks; may be left out.
 *   - `rod` of `marks` (m): its rod as planned; at least 0 m, at most 10 m; required.
 *   - `second_planned` (m): rod on a second benchmark when the marks were planned; at least 0 m, at most 10 m; may
 *     be left out.
 *   - `second_today` (m): rod on the second benchmark today; at least 0 m, at most 10 m; may be left out.
 *   - `tolerance` (mm): how far the benchmark may read off, and two benchmarks from one another; at least 0 mm, at
 *     most 304.8 mm; where left out 1/4 in, because more is no reading error, common practice, no source.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_MORNING_CHECK_DIFFERENCE (mm): today less planned: what every rod moves by.
 *   - OVS_MORNING_CHECK_SECOND_DIFFERENCE (mm): the same of the second benchmark.
 *   - OVS_MORNING_CHECK_VERDICT: what follows; 0 same, 1 agrees, 2 shift, 3 stop.
 *   - OVS_MORNING_CHECK_DOUBTED: which benchmark is in doubt; 0 none, 1 first, 2 second, 3 either.
 *   - OVS_MORNING_CHECK_TODAY: the rods of the marks today; none where nobody should pour.
 *   - OVS_MORNING_CHECK_SAID: a sentence for the crew.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING.
 * Basis: the benchmark is read before the pour: every rod moves by the difference, and nobody pours where it is
 * off by more than 1/4 in: common practice, no source.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off: common
 * practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"planned":"4' 2 1/2\"","today":"4' 5 3/8\"","same_setup":"no","marks":{"rod":["4' 9\"","4' 8 1/2\""]},"second_planned":"3' 8\"","second_today":"3' 10 3/4\""}
 */
ovs_answer *ovs_morning_check_si(double planned_m,
                                 double today_m,
                                 int same_setup,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_morning_check_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_morning_check_us_why(double planned_ft,
                             double today_ft,
                             int same_setup,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_morning_check_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_morning_check_si_why(double planned_m,
                             double today_m,
                             int same_setup,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * The condition factor of an old slab by what is seen.
 *
 * Equation: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
 * Taken for granted: what is seen holds for the whole slab.
 *
 * - `condition`: what the old slab looks like; 0 sound, 1 few cracks, still, 2 badly cracked.
 * - `factor_ratio` (1), out: condition factor C.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_condition_factor_us(1, ...) gives factor_ratio = 0.75.
 */
int ovs_condition_factor_us(int condition,
                            double *factor_ratio,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The condition factor of an old slab by what is seen.
 *
 * Equation: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
 * Taken for granted: what is seen holds for the whole slab.
 *
 * - `condition`: what the old slab looks like; 0 sound, 1 few cracks, still, 2 badly cracked.
 * - `factor_ratio` (1), out: condition factor C.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_condition_factor_si(1, ...) gives factor_ratio = 0.75.
 */
int ovs_condition_factor_si(int condition,
                            double *factor_ratio,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_condition_factor_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_condition_factor_us_array(const int *condition,
                                  double *factor_ratio,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_condition_factor_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_condition_factor_si_array(const int *condition,
                                  double *factor_ratio,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_condition_factor_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_condition_factor_us_why(int condition, char *text, int text_len, int *needed);

/**
 * Why ovs_condition_factor_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_condition_factor_si_why(int condition, char *text, int text_len, int *needed);

/**
 * How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what
 * goes between old and new.
 *
 * Equation: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
 * Taken for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key at least as
 * deep.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `used`: what the floor is used for; 0 people, 1 cars, 2 trucks, 3 wash bay, 4 jacks, 5 heavier.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `stone` (in): largest stone of the mix; at least 0.125 in, at most 3 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_OVERLAY_MINIMUM_LEAST (in): least thickness anywhere.
 *   - OVS_OVERLAY_MINIMUM_LARGEST_STONE (in): largest stone for that thickness.
 *   - OVS_OVERLAY_MINIMUM_GREATEST_USUAL (in): usual at most; none where stress alone decides.
 *   - OVS_OVERLAY_MINIMUM_BETWEEN: what goes between old and new.
 *   - OVS_OVERLAY_MINIMUM_MEANS: what that means for the floor.
 *   - OVS_OVERLAY_MINIMUM_RESTS_ON: the basis that decides, by name.
 *   - OVS_OVERLAY_MINIMUM_RULES: every rule about it, with its source.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory: confirm.
 * Basis: unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from memory:
 * confirm.
 * Basis: unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980), unbonded
 * toppings, as quoted elsewhere.
 * Basis: under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common practice, no
 * source.
 * Basis: at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs come out:
 * common practice, no source.
 * Basis: 4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no source.
 * Basis: bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to 5 in.
 * Basis: airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least overlay,
 * from memory: confirm.
 * Basis: the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse aggregate in
 * toppings, from memory: confirm.
 * Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
 * repairs, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"bond":"unbonded","used":"cars","stone":"3/4 in"}
 */
ovs_answer *ovs_overlay_minimum_us(int bond,
                                   int used,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what
 * goes between old and new.
 *
 * Equation: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
 * Taken for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key at least as
 * deep.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `used`: what the floor is used for; 0 people, 1 cars, 2 trucks, 3 wash bay, 4 jacks, 5 heavier.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `stone` (mm): largest stone of the mix; at least 3.175 mm, at most 76.2 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_OVERLAY_MINIMUM_LEAST (mm): least thickness anywhere.
 *   - OVS_OVERLAY_MINIMUM_LARGEST_STONE (mm): largest stone for that thickness.
 *   - OVS_OVERLAY_MINIMUM_GREATEST_USUAL (mm): usual at most; none where stress alone decides.
 *   - OVS_OVERLAY_MINIMUM_BETWEEN: what goes between old and new.
 *   - OVS_OVERLAY_MINIMUM_MEANS: what that means for the floor.
 *   - OVS_OVERLAY_MINIMUM_RESTS_ON: the basis that decides, by name.
 *   - OVS_OVERLAY_MINIMUM_RULES: every rule about it, with its source.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory: confirm.
 * Basis: unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from memory:
 * confirm.
 * Basis: unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980), unbonded
 * toppings, as quoted elsewhere.
 * Basis: under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common practice, no
 * source.
 * Basis: at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs come out:
 * common practice, no source.
 * Basis: 4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no source.
 * Basis: bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to 5 in.
 * Basis: airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least overlay,
 * from memory: confirm.
 * Basis: the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse aggregate in
 * toppings, from memory: confirm.
 * Basis: no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several), edges of
 * repairs, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"bond":"unbonded","used":"cars","stone":"3/4 in"}
 */
ovs_answer *ovs_overlay_minimum_si(int bond,
                                   int used,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_overlay_minimum_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_minimum_us_why(int bond,
                               int used,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_overlay_minimum_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_minimum_si_why(int bond,
                               int used,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * How rough the old surface must be for what goes on it, and the ways to it.
 *
 * Equation: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6, polymer
 * overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
 * Taken for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the surface is
 * wetted the day before, damp and without standing water.
 *
 * - `covering`: what goes on the old surface; 0 sealer, 1 thin film, 2 high-build coating, 3 self-levelling, 4
 *   polymer overlay, 5 concrete overlay, 6 bonded topping.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURFACE_PROFILE_LEAST: smoothest profile.
 *   - OVS_SURFACE_PROFILE_GREATEST: roughest profile.
 *   - OVS_SURFACE_PROFILE_RESTS_ON: its basis, by name.
 *   - OVS_SURFACE_PROFILE_WAYS: the ways to these profiles.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a trade page
 * (2013), profiles, as quoted elsewhere.
 * Basis: surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"covering":"bonded topping"}
 */
ovs_answer *ovs_surface_profile_us(int covering,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * How rough the old surface must be for what goes on it, and the ways to it.
 *
 * Equation: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6, polymer
 * overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
 * Taken for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the surface is
 * wetted the day before, damp and without standing water.
 *
 * - `covering`: what goes on the old surface; 0 sealer, 1 thin film, 2 high-build coating, 3 self-levelling, 4
 *   polymer overlay, 5 concrete overlay, 6 bonded topping.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SURFACE_PROFILE_LEAST: smoothest profile.
 *   - OVS_SURFACE_PROFILE_GREATEST: roughest profile.
 *   - OVS_SURFACE_PROFILE_RESTS_ON: its basis, by name.
 *   - OVS_SURFACE_PROFILE_WAYS: the ways to these profiles.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a trade page
 * (2013), profiles, as quoted elsewhere.
 * Basis: surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"covering":"bonded topping"}
 */
ovs_answer *ovs_surface_profile_si(int covering,
                                   const char *options_json,
                                   int options_len,
                                   int *status,
                                   int *notes,
                                   int notes_len,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_surface_profile_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_surface_profile_us_why(int covering,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_surface_profile_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_surface_profile_si_why(int covering,
                               const char *options_json,
                               int options_len,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * The pull-off strength of a core, held against what the project's specification asks.
 *
 * Equation: strength = 4 load / (pi diameter^2).
 * Taken for granted: the core goes at least 1/2 in into the old concrete; no standard gives an acceptance number:
 * it is the project's.
 *
 * - `load_lbf` (lbf): load at which it broke; more than 0 lbf, at most 22480.89431 lbf.
 * - `diameter_in` (in): diameter of the core, usually 2 in; at least 1 in, at most 6 in.
 * - `broke`: where it broke; 0 old concrete, 1 between, 2 overlay, 3 glue.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `asked` (psi): strength that is asked for; more than 0 psi, at most 1450.3773773 psi; where left out 200
 *     psi, because often asked; the project's specification decides.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_PULL_OFF_STRENGTH (psi): pull-off strength.
 *   - OVS_PULL_OFF_VERDICT: what the test says; 0 enough, 1 too little, 2 void.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm.
 * Basis: 200 psi is often asked: the project's specification.
 * Since 0.1.0.
 * Example, as JSON: {"load":"800 lb","diameter":"2 in","broke":"old concrete"}
 */
int ovs_pull_off_us(double load_lbf,
                    double diameter_in,
                    int broke,
                    const char *options_json,
                    int options_len,
                    double *results,
                    int results_len,
                    int *notes,
                    int notes_len,
                    char *msg,
                    int msg_len);

/**
 * The pull-off strength of a core, held against what the project's specification asks.
 *
 * Equation: strength = 4 load / (pi diameter^2).
 * Taken for granted: the core goes at least 1/2 in into the old concrete; no standard gives an acceptance number:
 * it is the project's.
 *
 * - `load_kn` (kN): load at which it broke; more than 0 kN, at most 100 kN.
 * - `diameter_mm` (mm): diameter of the core, usually 2 in; at least 25.4 mm, at most 152.4 mm.
 * - `broke`: where it broke; 0 old concrete, 1 between, 2 overlay, 3 glue.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `asked` (MPa): strength that is asked for; more than 0 MPa, at most 10 MPa; where left out 200 psi, because
 *     often asked; the project's specification decides.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_PULL_OFF_STRENGTH (MPa): pull-off strength.
 *   - OVS_PULL_OFF_VERDICT: what the test says; 0 enough, 1 too little, 2 void.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm.
 * Basis: 200 psi is often asked: the project's specification.
 * Since 0.1.0.
 * Example, as JSON: {"load":"800 lb","diameter":"2 in","broke":"old concrete"}
 */
int ovs_pull_off_si(double load_kn,
                    double diameter_mm,
                    int broke,
                    const char *options_json,
                    int options_len,
                    double *results,
                    int results_len,
                    int *notes,
                    int notes_len,
                    char *msg,
                    int msg_len);

/**
 * Why ovs_pull_off_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_pull_off_us_why(double load_lbf,
                        double diameter_in,
                        int broke,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_pull_off_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_pull_off_si_why(double load_kn,
                        double diameter_mm,
                        int broke,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is
 * enough.
 *
 * Equation: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1 bonded
 * (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket is no need.
 * Taken for granted: the equations are empirical, from full-scale traffic tests on airfields; the practical least
 * thickness is apart.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `required_new_in` (in): single slab that the new concrete would need on this ground; more than 0 in, at most
 *   78.7401574803 in.
 * - `required_old_in` (in): a single slab of the old concrete would need so much; more than 0 in, at most
 *   78.7401574803 in.
 * - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
 * - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
 *   1.
 * - `overlay_in` (in), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
 * Basis: ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02, Pavement
 * Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms recalled, from memory: confirm.
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_required_us(2, 9, 9, 6, 0.75, ...) gives overlay_in = 7.34847.
 */
int ovs_overlay_required_us(int bond,
                            double required_new_in,
                            double required_old_in,
                            double old_slab_in,
                            double condition_ratio,
                            double *overlay_in,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is
 * enough.
 *
 * Equation: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1 bonded
 * (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket is no need.
 * Taken for granted: the equations are empirical, from full-scale traffic tests on airfields; the practical least
 * thickness is apart.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `required_new_mm` (mm): single slab that the new concrete would need on this ground; more than 0 mm, at most
 *   2000 mm.
 * - `required_old_mm` (mm): a single slab of the old concrete would need so much; more than 0 mm, at most 2000 mm.
 * - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
 * - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
 *   1.
 * - `overlay_mm` (mm), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
 * Basis: ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02, Pavement
 * Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms recalled, from memory: confirm.
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_required_si(2, 228.6, 228.6, 152.4, 0.75, ...) gives overlay_mm = 186.651.
 */
int ovs_overlay_required_si(int bond,
                            double required_new_mm,
                            double required_old_mm,
                            double old_slab_mm,
                            double condition_ratio,
                            double *overlay_mm,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_overlay_required_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_required_us_array(const int *bond,
                                  const double *required_new_in,
                                  const double *required_old_in,
                                  const double *old_slab_in,
                                  const double *condition_ratio,
                                  double *overlay_in,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_overlay_required_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_required_si_array(const int *bond,
                                  const double *required_new_mm,
                                  const double *required_old_mm,
                                  const double *old_slab_mm,
                                  const double *condition_ratio,
                                  double *overlay_mm,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_overlay_required_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_required_us_why(int bond,
                                double required_new_in,
                                double required_old_in,
                                double old_slab_in,
                                double condition_ratio,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_overlay_required_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_required_si_why(int bond,
                                double required_new_mm,
                                double required_old_mm,
                                double old_slab_mm,
                                double condition_ratio,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The single slab that an overlay and the old slab under it are worth together.
 *
 * Equation: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2 unbonded.
 * Taken for granted: both concretes are alike in strength.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `overlay_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
 * - `old_slab_in` (in): the old slab's thickness; more than 0 in, at most 78.7401574803 in.
 * - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
 *   1.
 * - `equivalent_in` (in), out: the single slab.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
 * Basis: h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3 (1.4; the
 * others follow Eq. 17-1 and 17-3).
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_slab_equivalent_us(1, 6, 6, 0.75, ...) gives equivalent_in = 8.94849.
 */
int ovs_slab_equivalent_us(int bond,
                           double overlay_in,
                           double old_slab_in,
                           double condition_ratio,
                           double *equivalent_in,
                           int *notes,
                           char *msg,
                           int msg_len);

/**
 * The single slab that an overlay and the old slab under it are worth together.
 *
 * Equation: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2 unbonded.
 * Taken for granted: both concretes are alike in strength.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `overlay_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
 * - `old_slab_mm` (mm): the old slab's thickness; more than 0 mm, at most 2000 mm.
 * - `condition_ratio` (1): condition factor C of the old slab; 1 for a bonded overlay; at least 0.1 1, at most 1
 *   1.
 * - `equivalent_mm` (mm), out: the single slab.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_BOND_NEEDS_SOUND.
 * Basis: h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3 (1.4; the
 * others follow Eq. 17-1 and 17-3).
 * Basis: C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and 3-260-03 (2001),
 * examples: 0.75 and 0.35 read, classes recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_slab_equivalent_si(1, 152.4, 152.4, 0.75, ...) gives equivalent_mm = 227.292.
 */
int ovs_slab_equivalent_si(int bond,
                           double overlay_mm,
                           double old_slab_mm,
                           double condition_ratio,
                           double *equivalent_mm,
                           int *notes,
                           char *msg,
                           int msg_len);

/**
 * ovs_slab_equivalent_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_slab_equivalent_us_array(const int *bond,
                                 const double *overlay_in,
                                 const double *old_slab_in,
                                 const double *condition_ratio,
                                 double *equivalent_in,
                                 int *notes,
                                 int n,
                                 int *bad_index,
                                 char *msg,
                                 int msg_len);

/**
 * ovs_slab_equivalent_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_slab_equivalent_si_array(const int *bond,
                                 const double *overlay_mm,
                                 const double *old_slab_mm,
                                 const double *condition_ratio,
                                 double *equivalent_mm,
                                 int *notes,
                                 int n,
                                 int *bad_index,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_slab_equivalent_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_slab_equivalent_us_why(int bond,
                               double overlay_in,
                               double old_slab_in,
                               double condition_ratio,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * Why ovs_slab_equivalent_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_slab_equivalent_si_why(int bond,
                               double overlay_mm,
                               double old_slab_mm,
                               double condition_ratio,
                               char *text,
                               int text_len,
                               int *needed);

/**
 * What an old slab is worth under a bonded overlay, and the overlay that follows.
 *
 * Equation: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none where
 * negative.
 * Taken for granted: the factors come from a survey of joints, cracks and durability.
 *
 * - `required_in` (in): single slab required for the traffic to come; more than 0 in, at most 78.7401574803 in.
 * - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
 * - `joints_ratio` (1): factor for joints and cracks left open; 1 where all are mended; at least 0.3 1, at most 1
 *   1.
 * - `durability_ratio` (1): durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling; at
 *   least 0.3 1, at most 1 1.
 * - `fatigue_ratio` (1): fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
 *   many; at least 0.3 1, at most 1 1.
 * - `effective_in` (in), out: what the old slab is worth.
 * - `overlay_in` (in), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
 * Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_effective_bonded_us(10, 8, 0.9, 1, 0.97, ...) gives effective_in = 6.984, overlay_in = 3.016.
 */
int ovs_overlay_effective_bonded_us(double required_in,
                                    double old_slab_in,
                                    double joints_ratio,
                                    double durability_ratio,
                                    double fatigue_ratio,
                                    double *effective_in,
                                    double *overlay_in,
                                    int *notes,
                                    char *msg,
                                    int msg_len);

/**
 * What an old slab is worth under a bonded overlay, and the overlay that follows.
 *
 * Equation: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none where
 * negative.
 * Taken for granted: the factors come from a survey of joints, cracks and durability.
 *
 * - `required_mm` (mm): single slab required for the traffic to come; more than 0 mm, at most 2000 mm.
 * - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
 * - `joints_ratio` (1): factor for joints and cracks left open; 1 where all are mended; at least 0.3 1, at most 1
 *   1.
 * - `durability_ratio` (1): durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling; at
 *   least 0.3 1, at most 1 1.
 * - `fatigue_ratio` (1): fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
 *   many; at least 0.3 1, at most 1 1.
 * - `effective_mm` (mm), out: what the old slab is worth.
 * - `overlay_mm` (mm), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
 * Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_effective_bonded_si(254, 203.2, 0.9, 1, 0.97, ...) gives effective_mm = 177.394, overlay_mm = 76.6064.
 */
int ovs_overlay_effective_bonded_si(double required_mm,
                                    double old_slab_mm,
                                    double joints_ratio,
                                    double durability_ratio,
                                    double fatigue_ratio,
                                    double *effective_mm,
                                    double *overlay_mm,
                                    int *notes,
                                    char *msg,
                                    int msg_len);

/**
 * ovs_overlay_effective_bonded_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_effective_bonded_us_array(const double *required_in,
                                          const double *old_slab_in,
                                          const double *joints_ratio,
                                          const double *durability_ratio,
                                          const double *fatigue_ratio,
                                          double *effective_in,
                                          double *overlay_in,
                                          int *notes,
                                          int n,
                                          int *bad_index,
                                          char *msg,
                                          int msg_len);

/**
 * ovs_overlay_effective_bonded_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_effective_bonded_si_array(const double *required_mm,
                                          const double *old_slab_mm,
                                          const double *joints_ratio,
                                          const double *durability_ratio,
                                          const double *fatigue_ratio,
                                          double *effective_mm,
                                          double *overlay_mm,
                                          int *notes,
                                          int n,
                                          int *bad_index,
                                          char *msg,
                                          int msg_len);

/**
 * Why ovs_overlay_effective_bonded_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_effective_bonded_us_why(double required_in,
                                        double old_slab_in,
                                        double joints_ratio,
                                        double durability_ratio,
                                        double fatigue_ratio,
                                        char *text,
                                        int text_len,
                                        int *needed);

/**
 * Why ovs_overlay_effective_bonded_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_effective_bonded_si_why(double required_mm,
                                        double old_slab_mm,
                                        double joints_ratio,
                                        double durability_ratio,
                                        double fatigue_ratio,
                                        char *text,
                                        int text_len,
                                        int *needed);

/**
 * What an old slab is worth under an unbonded overlay, and the overlay that follows.
 *
 * Equation: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
 * effective^2), none where negative.
 * Taken for granted: a breaker or a levelling course lies between.
 *
 * - `required_in` (in): single slab required for the traffic to come; more than 0 in, at most 78.7401574803 in.
 * - `old_slab_in` (in): thickness of the old slab; more than 0 in, at most 78.7401574803 in.
 * - `joints_ratio` (1): factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile; at least 0.3 1,
 *   at most 1 1.
 * - `effective_in` (in), out: what the old slab is worth.
 * - `overlay_in` (in), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
 * Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_effective_unbonded_us(10, 8, 0.95, ...) gives effective_in = 7.6, overlay_in = 6.49923.
 */
int ovs_overlay_effective_unbonded_us(double required_in,
                                      double old_slab_in,
                                      double joints_ratio,
                                      double *effective_in,
                                      double *overlay_in,
                                      int *notes,
                                      char *msg,
                                      int msg_len);

/**
 * What an old slab is worth under an unbonded overlay, and the overlay that follows.
 *
 * Equation: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
 * effective^2), none where negative.
 * Taken for granted: a breaker or a levelling course lies between.
 *
 * - `required_mm` (mm): single slab required for the traffic to come; more than 0 mm, at most 2000 mm.
 * - `old_slab_mm` (mm): thickness of the old slab; more than 0 mm, at most 2000 mm.
 * - `joints_ratio` (1): factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile; at least 0.3 1,
 *   at most 1 1.
 * - `effective_mm` (mm), out: what the old slab is worth.
 * - `overlay_mm` (mm), out: thickness of the overlay.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for Design of
 * Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_overlay_effective_unbonded_si(254, 203.2, 0.95, ...) gives effective_mm = 193.04, overlay_mm = 165.08.
 */
int ovs_overlay_effective_unbonded_si(double required_mm,
                                      double old_slab_mm,
                                      double joints_ratio,
                                      double *effective_mm,
                                      double *overlay_mm,
                                      int *notes,
                                      char *msg,
                                      int msg_len);

/**
 * ovs_overlay_effective_unbonded_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_effective_unbonded_us_array(const double *required_in,
                                            const double *old_slab_in,
                                            const double *joints_ratio,
                                            double *effective_in,
                                            double *overlay_in,
                                            int *notes,
                                            int n,
                                            int *bad_index,
                                            char *msg,
                                            int msg_len);

/**
 * ovs_overlay_effective_unbonded_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_overlay_effective_unbonded_si_array(const double *required_mm,
                                            const double *old_slab_mm,
                                            const double *joints_ratio,
                                            double *effective_mm,
                                            double *overlay_mm,
                                            int *notes,
                                            int n,
                                            int *bad_index,
                                            char *msg,
                                            int msg_len);

/**
 * Why ovs_overlay_effective_unbonded_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_effective_unbonded_us_why(double required_in,
                                          double old_slab_in,
                                          double joints_ratio,
                                          char *text,
                                          int text_len,
                                          int *needed);

/**
 * Why ovs_overlay_effective_unbonded_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_overlay_effective_unbonded_si_why(double required_mm,
                                          double old_slab_mm,
                                          double joints_ratio,
                                          char *text,
                                          int text_len,
                                          int *needed);

/**
 * The modulus of elasticity of normal-weight concrete from its compressive strength.
 *
 * Equation: modulus = 57000 sqrt(strength), psi.
 * Taken for granted: normal-weight concrete.
 *
 * - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
 * - `modulus_psi` (psi), out: modulus of elasticity.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_modulus_us(4000, ...) gives modulus_psi = 3605000.
 */
int ovs_concrete_modulus_us(double strength_psi, double *modulus_psi, int *notes, char *msg, int msg_len);

/**
 * The modulus of elasticity of normal-weight concrete from its compressive strength.
 *
 * Equation: modulus = 57000 sqrt(strength), psi.
 * Taken for granted: normal-weight concrete.
 *
 * - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
 * - `modulus_mpa` (MPa), out: modulus of elasticity.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_modulus_si(27.579, ...) gives modulus_mpa = 24855.6.
 */
int ovs_concrete_modulus_si(double strength_mpa, double *modulus_mpa, int *notes, char *msg, int msg_len);

/**
 * ovs_concrete_modulus_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_modulus_us_array(const double *strength_psi,
                                  double *modulus_psi,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_concrete_modulus_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_modulus_si_array(const double *strength_mpa,
                                  double *modulus_mpa,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_concrete_modulus_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_modulus_us_why(double strength_psi, char *text, int text_len, int *needed);

/**
 * Why ovs_concrete_modulus_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_modulus_si_why(double strength_mpa, char *text, int text_len, int *needed);

/**
 * The modulus of elasticity of concrete from its compressive strength and unit weight.
 *
 * Equation: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
 * Taken for granted: 90 to 160 lb/ft3.
 *
 * - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
 * - `density_lb_per_ft3` (lb/ft3): unit weight; at least 90 lb/ft3, at most 160 lb/ft3.
 * - `modulus_psi` (psi), out: modulus of elasticity.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_modulus_by_density_us(4000, 145, ...) gives modulus_psi = 3644150.
 */
int ovs_concrete_modulus_by_density_us(double strength_psi,
                                       double density_lb_per_ft3,
                                       double *modulus_psi,
                                       int *notes,
                                       char *msg,
                                       int msg_len);

/**
 * The modulus of elasticity of concrete from its compressive strength and unit weight.
 *
 * Equation: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
 * Taken for granted: 90 to 160 lb/ft3.
 *
 * - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
 * - `density_kg_per_m3` (kg/m3): unit weight; at least 1441.66170366 kg/m3, at most 2562.95413983 kg/m3.
 * - `modulus_mpa` (MPa), out: modulus of elasticity.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_modulus_by_density_si(27.579, 2322.68, ...) gives modulus_mpa = 25125.5.
 */
int ovs_concrete_modulus_by_density_si(double strength_mpa,
                                       double density_kg_per_m3,
                                       double *modulus_mpa,
                                       int *notes,
                                       char *msg,
                                       int msg_len);

/**
 * ovs_concrete_modulus_by_density_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_modulus_by_density_us_array(const double *strength_psi,
                                             const double *density_lb_per_ft3,
                                             double *modulus_psi,
                                             int *notes,
                                             int n,
                                             int *bad_index,
                                             char *msg,
                                             int msg_len);

/**
 * ovs_concrete_modulus_by_density_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_modulus_by_density_si_array(const double *strength_mpa,
                                             const double *density_kg_per_m3,
                                             double *modulus_mpa,
                                             int *notes,
                                             int n,
                                             int *bad_index,
                                             char *msg,
                                             int msg_len);

/**
 * Why ovs_concrete_modulus_by_density_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_modulus_by_density_us_why(double strength_psi,
                                           double density_lb_per_ft3,
                                           char *text,
                                           int text_len,
                                           int *needed);

/**
 * Why ovs_concrete_modulus_by_density_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_modulus_by_density_si_why(double strength_mpa,
                                           double density_kg_per_m3,
                                           char *text,
                                           int text_len,
                                           int *needed);

/**
 * The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the
 * design of floors on ground.
 *
 * Equation: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
 * Taken for granted: normal-weight concrete.
 *
 * - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
 * - `formula`: which formula; 0 building code, 7.5, 1 floor design, 9.
 * - `rupture_psi` (psi), out: modulus of rupture.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm.
 * Basis: MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several), modulus of
 * rupture, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_rupture_us(4000, 1, ...) gives rupture_psi = 569.21.
 */
int ovs_concrete_rupture_us(double strength_psi,
                            int formula,
                            double *rupture_psi,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the
 * design of floors on ground.
 *
 * Equation: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
 * Taken for granted: normal-weight concrete.
 *
 * - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
 * - `formula`: which formula; 0 building code, 7.5, 1 floor design, 9.
 * - `rupture_mpa` (MPa), out: modulus of rupture.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm.
 * Basis: MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several), modulus of
 * rupture, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_concrete_rupture_si(27.579, 1, ...) gives rupture_mpa = 3.92456.
 */
int ovs_concrete_rupture_si(double strength_mpa,
                            int formula,
                            double *rupture_mpa,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_concrete_rupture_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_rupture_us_array(const double *strength_psi,
                                  const int *formula,
                                  double *rupture_psi,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_concrete_rupture_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_concrete_rupture_si_array(const double *strength_mpa,
                                  const int *formula,
                                  double *rupture_mpa,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_concrete_rupture_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_rupture_us_why(double strength_psi, int formula, char *text, int text_len, int *needed);

/**
 * Why ovs_concrete_rupture_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_concrete_rupture_si_why(double strength_mpa, int formula, char *text, int text_len, int *needed);

/**
 * The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
 *
 * Equation: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest of the
 * three.
 * Taken for granted: the sources differ a lot at low ratios; the lowest is on the safe side.
 *
 * - `bearing_ratio_percent` (%): California bearing ratio; at least 2 %, at most 100 %.
 * - `source`: which correlation; 0 FAA, 1 Packard, 2 IRC:58, 3 lowest.
 * - `subgrade_pci` (pci), out: modulus of subgrade reaction k.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted elsewhere.
 * Basis: k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as quoted
 * elsewhere.
 * Basis: k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_bearing_ratio_us(5, 3, ...) gives subgrade_pci = 82.398.
 */
int ovs_subgrade_from_bearing_ratio_us(double bearing_ratio_percent,
                                       int source,
                                       double *subgrade_pci,
                                       int *notes,
                                       char *msg,
                                       int msg_len);

/**
 * The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.
 *
 * Equation: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest of the
 * three.
 * Taken for granted: the sources differ a lot at low ratios; the lowest is on the safe side.
 *
 * - `bearing_ratio_percent` (%): California bearing ratio; at least 2 %, at most 100 %.
 * - `source`: which correlation; 0 FAA, 1 Packard, 2 IRC:58, 3 lowest.
 * - `subgrade_mpa_per_m` (MPa/m), out: modulus of subgrade reaction k.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted elsewhere.
 * Basis: k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as quoted
 * elsewhere.
 * Basis: k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_bearing_ratio_si(5, 3, ...) gives subgrade_mpa_per_m = 22.3667.
 */
int ovs_subgrade_from_bearing_ratio_si(double bearing_ratio_percent,
                                       int source,
                                       double *subgrade_mpa_per_m,
                                       int *notes,
                                       char *msg,
                                       int msg_len);

/**
 * ovs_subgrade_from_bearing_ratio_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_bearing_ratio_us_array(const double *bearing_ratio_percent,
                                             const int *source,
                                             double *subgrade_pci,
                                             int *notes,
                                             int n,
                                             int *bad_index,
                                             char *msg,
                                             int msg_len);

/**
 * ovs_subgrade_from_bearing_ratio_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_bearing_ratio_si_array(const double *bearing_ratio_percent,
                                             const int *source,
                                             double *subgrade_mpa_per_m,
                                             int *notes,
                                             int n,
                                             int *bad_index,
                                             char *msg,
                                             int msg_len);

/**
 * Why ovs_subgrade_from_bearing_ratio_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_bearing_ratio_us_why(double bearing_ratio_percent,
                                           int source,
                                           char *text,
                                           int text_len,
                                           int *needed);

/**
 * Why ovs_subgrade_from_bearing_ratio_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_bearing_ratio_si_why(double bearing_ratio_percent,
                                           int source,
                                           char *text,
                                           int text_len,
                                           int *needed);

/**
 * The modulus of subgrade reaction from the resilient modulus of the soil.
 *
 * Equation: subgrade = resilient / 19.4, pci and psi.
 * Taken for granted: no subbase, no rock near below.
 *
 * - `resilient_psi` (psi): resilient modulus of the soil; at least 500 psi, at most 38000 psi.
 * - `subgrade_pci` (pci), out: modulus of subgrade reaction k.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_resilient_us(3000, ...) gives subgrade_pci = 154.639.
 */
int ovs_subgrade_from_resilient_us(double resilient_psi,
                                   double *subgrade_pci,
                                   int *notes,
                                   char *msg,
                                   int msg_len);

/**
 * The modulus of subgrade reaction from the resilient modulus of the soil.
 *
 * Equation: subgrade = resilient / 19.4, pci and psi.
 * Taken for granted: no subbase, no rock near below.
 *
 * - `resilient_mpa` (MPa): resilient modulus of the soil; at least 3.44737864658 MPa, at most 262.00077714 MPa.
 * - `subgrade_mpa_per_m` (MPa/m), out: modulus of subgrade reaction k.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_resilient_si(20.6843, ...) gives subgrade_mpa_per_m = 41.9764.
 */
int ovs_subgrade_from_resilient_si(double resilient_mpa,
                                   double *subgrade_mpa_per_m,
                                   int *notes,
                                   char *msg,
                                   int msg_len);

/**
 * ovs_subgrade_from_resilient_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_resilient_us_array(const double *resilient_psi,
                                         double *subgrade_pci,
                                         int *notes,
                                         int n,
                                         int *bad_index,
                                         char *msg,
                                         int msg_len);

/**
 * ovs_subgrade_from_resilient_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_resilient_si_array(const double *resilient_mpa,
                                         double *subgrade_mpa_per_m,
                                         int *notes,
                                         int n,
                                         int *bad_index,
                                         char *msg,
                                         int msg_len);

/**
 * Why ovs_subgrade_from_resilient_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_resilient_us_why(double resilient_psi, char *text, int text_len, int *needed);

/**
 * Why ovs_subgrade_from_resilient_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_resilient_si_why(double resilient_mpa, char *text, int text_len, int *needed);

/**
 * The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
 *
 * Equation: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170; clean
 * sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
 * Taken for granted: the lower end is taken; the upper end is not exceeded without a reason.
 *
 * - `soil`: what the slab rests on; 0 soft, 1 medium, 2 firm, 3 silt and clay, 4 sand with silt or clay, 5 clean
 *   sand and gravel, 6 cement-treated subbase, 7 old slab.
 * - `least_pci` (pci), out: lower end: the one to take.
 * - `greatest_pci` (pci), out: upper end.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
 * classes and subbase tables, from memory: confirm.
 * Basis: over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_soil_us(1, ...) gives least_pci = 100, greatest_pci = 100.
 */
int ovs_subgrade_from_soil_us(int soil,
                              double *least_pci,
                              double *greatest_pci,
                              int *notes,
                              char *msg,
                              int msg_len);

/**
 * The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.
 *
 * Equation: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170; clean
 * sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
 * Taken for granted: the lower end is taken; the upper end is not exceeded without a reason.
 *
 * - `soil`: what the slab rests on; 0 soft, 1 medium, 2 firm, 3 silt and clay, 4 sand with silt or clay, 5 clean
 *   sand and gravel, 6 cement-treated subbase, 7 old slab.
 * - `least_mpa_per_m` (MPa/m), out: lower end: the one to take.
 * - `greatest_mpa_per_m` (MPa/m), out: upper end.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
 * classes and subbase tables, from memory: confirm.
 * Basis: over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source.
 * Since 0.1.0.
 * Example: ovs_subgrade_from_soil_si(1, ...) gives least_mpa_per_m = 27.1447, greatest_mpa_per_m = 27.1447.
 */
int ovs_subgrade_from_soil_si(int soil,
                              double *least_mpa_per_m,
                              double *greatest_mpa_per_m,
                              int *notes,
                              char *msg,
                              int msg_len);

/**
 * ovs_subgrade_from_soil_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_soil_us_array(const int *soil,
                                    double *least_pci,
                                    double *greatest_pci,
                                    int *notes,
                                    int n,
                                    int *bad_index,
                                    char *msg,
                                    int msg_len);

/**
 * ovs_subgrade_from_soil_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_from_soil_si_array(const int *soil,
                                    double *least_mpa_per_m,
                                    double *greatest_mpa_per_m,
                                    int *notes,
                                    int n,
                                    int *bad_index,
                                    char *msg,
                                    int msg_len);

/**
 * Why ovs_subgrade_from_soil_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_soil_us_why(int soil, char *text, int text_len, int *needed);

/**
 * Why ovs_subgrade_from_soil_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_from_soil_si_why(int soil, char *text, int text_len, int *needed);

/**
 * The modulus of subgrade reaction on top of a subbase.
 *
 * Equation: by table, straight between rows and columns; refused outside.
 * Taken for granted: a compacted subbase all over.
 *
 * - `subgrade_pci` (pci): modulus of subgrade reaction under the subbase; at least 50 pci, at most 300 pci.
 * - `thickness_in` (in): thickness of the subbase; at least 4 in, at most 12 in.
 * - `kind`: what the subbase is; 0 granular, 1 cement-treated.
 * - `top_pci` (pci), out: modulus of subgrade reaction on top.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTSIDE_TABLE.
 * Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
 * classes and subbase tables, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_subgrade_with_subbase_us(100, 6, 0, ...) gives top_pci = 140.
 */
int ovs_subgrade_with_subbase_us(double subgrade_pci,
                                 double thickness_in,
                                 int kind,
                                 double *top_pci,
                                 int *notes,
                                 char *msg,
                                 int msg_len);

/**
 * The modulus of subgrade reaction on top of a subbase.
 *
 * Equation: by table, straight between rows and columns; refused outside.
 * Taken for granted: a compacted subbase all over.
 *
 * - `subgrade_mpa_per_m` (MPa/m): modulus of subgrade reaction under the subbase; at least 13.5723568763 MPa/m, at
 *   most 81.4341412579 MPa/m.
 * - `thickness_mm` (mm): thickness of the subbase; at least 101.6 mm, at most 304.8 mm.
 * - `kind`: what the subbase is; 0 granular, 1 cement-treated.
 * - `top_mpa_per_m` (MPa/m), out: modulus of subgrade reaction on top.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_OUTSIDE_TABLE.
 * Basis: subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109 (1984), soil
 * classes and subbase tables, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_subgrade_with_subbase_si(27.1447, 152.4, 0, ...) gives top_mpa_per_m = 38.0026.
 */
int ovs_subgrade_with_subbase_si(double subgrade_mpa_per_m,
                                 double thickness_mm,
                                 int kind,
                                 double *top_mpa_per_m,
                                 int *notes,
                                 char *msg,
                                 int msg_len);

/**
 * ovs_subgrade_with_subbase_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_with_subbase_us_array(const double *subgrade_pci,
                                       const double *thickness_in,
                                       const int *kind,
                                       double *top_pci,
                                       int *notes,
                                       int n,
                                       int *bad_index,
                                       char *msg,
                                       int msg_len);

/**
 * ovs_subgrade_with_subbase_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_subgrade_with_subbase_si_array(const double *subgrade_mpa_per_m,
                                       const double *thickness_mm,
                                       const int *kind,
                                       double *top_mpa_per_m,
                                       int *notes,
                                       int n,
                                       int *bad_index,
                                       char *msg,
                                       int msg_len);

/**
 * Why ovs_subgrade_with_subbase_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_with_subbase_us_why(double subgrade_pci,
                                     double thickness_in,
                                     int kind,
                                     char *text,
                                     int text_len,
                                     int *needed);

/**
 * Why ovs_subgrade_with_subbase_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_subgrade_with_subbase_si_why(double subgrade_mpa_per_m,
                                     double thickness_mm,
                                     int kind,
                                     char *text,
                                     int text_len,
                                     int *needed);

/**
 * The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
 *
 * Equation: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
 * Taken for granted: one layer, resting everywhere on springs.
 *
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `stiffness_in` (in), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Since 0.1.0.
 * Example: ovs_stiffness_radius_us(10, 4000000, 0.15, 100, ...) gives stiffness_in = 42.9725.
 */
int ovs_stiffness_radius_us(double thickness_in,
                            double modulus_psi,
                            double poisson_ratio,
                            double subgrade_pci,
                            double *stiffness_in,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The radius of relative stiffness of a slab on its subgrade: how far a load is felt.
 *
 * Equation: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
 * Taken for granted: one layer, resting everywhere on springs.
 *
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `stiffness_mm` (mm), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Since 0.1.0.
 * Example: ovs_stiffness_radius_si(254, 27579, 0.15, 27.1447, ...) gives stiffness_mm = 1091.5.
 */
int ovs_stiffness_radius_si(double thickness_mm,
                            double modulus_mpa,
                            double poisson_ratio,
                            double subgrade_mpa_per_m,
                            double *stiffness_mm,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_stiffness_radius_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_stiffness_radius_us_array(const double *thickness_in,
                                  const double *modulus_psi,
                                  const double *poisson_ratio,
                                  const double *subgrade_pci,
                                  double *stiffness_in,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_stiffness_radius_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_stiffness_radius_si_array(const double *thickness_mm,
                                  const double *modulus_mpa,
                                  const double *poisson_ratio,
                                  const double *subgrade_mpa_per_m,
                                  double *stiffness_mm,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_stiffness_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_stiffness_radius_us_why(double thickness_in,
                                double modulus_psi,
                                double poisson_ratio,
                                double subgrade_pci,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_stiffness_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_stiffness_radius_si_why(double thickness_mm,
                                double modulus_mpa,
                                double poisson_ratio,
                                double subgrade_mpa_per_m,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The radius of the circle that carries a load at its contact pressure.
 *
 * Equation: radius = sqrt(load / (pi pressure)).
 * Taken for granted: a tyre presses with its own pressure.
 *
 * - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
 * - `pressure_psi` (psi): contact pressure; at least 0.14503773773 psi, at most 14503.773773 psi.
 * - `radius_in` (in), out: radius of the contact.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a circle of the load over its pressure: derived.
 * Since 0.1.0.
 * Example: ovs_contact_radius_us(4000, 80, ...) gives radius_in = 3.98942.
 */
int ovs_contact_radius_us(double load_lbf,
                          double pressure_psi,
                          double *radius_in,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * The radius of the circle that carries a load at its contact pressure.
 *
 * Equation: radius = sqrt(load / (pi pressure)).
 * Taken for granted: a tyre presses with its own pressure.
 *
 * - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
 * - `pressure_kpa` (kPa): contact pressure; at least 1 kPa, at most 100000 kPa.
 * - `radius_mm` (mm), out: radius of the contact.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a circle of the load over its pressure: derived.
 * Since 0.1.0.
 * Example: ovs_contact_radius_si(17.7929, 551.581, ...) gives radius_mm = 101.331.
 */
int ovs_contact_radius_si(double load_kn,
                          double pressure_kpa,
                          double *radius_mm,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_contact_radius_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_contact_radius_us_array(const double *load_lbf,
                                const double *pressure_psi,
                                double *radius_in,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_contact_radius_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_contact_radius_si_array(const double *load_kn,
                                const double *pressure_kpa,
                                double *radius_mm,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_contact_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_contact_radius_us_why(double load_lbf, double pressure_psi, char *text, int text_len, int *needed);

/**
 * Why ovs_contact_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_contact_radius_si_why(double load_kn, double pressure_kpa, char *text, int text_len, int *needed);

/**
 * The radius of the one circle that stands for dual tyres.
 *
 * Equation: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
 * Taken for granted: load of one of the two tyres.
 *
 * - `load_lbf` (lbf): load of one of the two tyres; more than 0 lbf, at most 2248089.431 lbf.
 * - `pressure_psi` (psi): contact pressure; at least 0.14503773773 psi, at most 14503.773773 psi.
 * - `spacing_in` (in): middle to middle of the two tyres; at least 1.96850393701 in, at most 78.7401574803 in.
 * - `radius_in` (in), out: radius of the circle.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_contact_radius_dual_us(5000, 88.42, 14, ...) gives radius_in = 7.85423.
 */
int ovs_contact_radius_dual_us(double load_lbf,
                               double pressure_psi,
                               double spacing_in,
                               double *radius_in,
                               int *notes,
                               char *msg,
                               int msg_len);

/**
 * The radius of the one circle that stands for dual tyres.
 *
 * Equation: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
 * Taken for granted: load of one of the two tyres.
 *
 * - `load_kn` (kN): load of one of the two tyres; more than 0 kN, at most 10000 kN.
 * - `pressure_kpa` (kPa): contact pressure; at least 1 kPa, at most 100000 kPa.
 * - `spacing_mm` (mm): middle to middle of the two tyres; at least 50 mm, at most 2000 mm.
 * - `radius_mm` (mm), out: radius of the circle.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_contact_radius_dual_si(22.2411, 609.634, 355.6, ...) gives radius_mm = 199.498.
 */
int ovs_contact_radius_dual_si(double load_kn,
                               double pressure_kpa,
                               double spacing_mm,
                               double *radius_mm,
                               int *notes,
                               char *msg,
                               int msg_len);

/**
 * ovs_contact_radius_dual_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_contact_radius_dual_us_array(const double *load_lbf,
                                     const double *pressure_psi,
                                     const double *spacing_in,
                                     double *radius_in,
                                     int *notes,
                                     int n,
                                     int *bad_index,
                                     char *msg,
                                     int msg_len);

/**
 * ovs_contact_radius_dual_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_contact_radius_dual_si_array(const double *load_kn,
                                     const double *pressure_kpa,
                                     const double *spacing_mm,
                                     double *radius_mm,
                                     int *notes,
                                     int n,
                                     int *bad_index,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_contact_radius_dual_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_contact_radius_dual_us_why(double load_lbf,
                                   double pressure_psi,
                                   double spacing_in,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * Why ovs_contact_radius_dual_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_contact_radius_dual_si_why(double load_kn,
                                   double pressure_kpa,
                                   double spacing_mm,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * Westergaard's equivalent radius, which mends the stress right under a small contact.
 *
 * Equation: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724 thickness, else
 * radius.
 * Taken for granted: interior load, and the edge form of 1926.
 *
 * - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `equivalent_in` (in), out: equivalent radius.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Since 0.1.0.
 * Example: ovs_equivalent_radius_us(6, 10, ...) gives equivalent_in = 5.80388.
 */
int ovs_equivalent_radius_us(double radius_in,
                             double thickness_in,
                             double *equivalent_in,
                             int *notes,
                             char *msg,
                             int msg_len);

/**
 * Westergaard's equivalent radius, which mends the stress right under a small contact.
 *
 * Equation: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724 thickness, else
 * radius.
 * Taken for granted: interior load, and the edge form of 1926.
 *
 * - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `equivalent_mm` (mm), out: equivalent radius.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Since 0.1.0.
 * Example: ovs_equivalent_radius_si(152.4, 254, ...) gives equivalent_mm = 147.419.
 */
int ovs_equivalent_radius_si(double radius_mm,
                             double thickness_mm,
                             double *equivalent_mm,
                             int *notes,
                             char *msg,
                             int msg_len);

/**
 * ovs_equivalent_radius_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_equivalent_radius_us_array(const double *radius_in,
                                   const double *thickness_in,
                                   double *equivalent_in,
                                   int *notes,
                                   int n,
                                   int *bad_index,
                                   char *msg,
                                   int msg_len);

/**
 * ovs_equivalent_radius_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_equivalent_radius_si_array(const double *radius_mm,
                                   const double *thickness_mm,
                                   double *equivalent_mm,
                                   int *notes,
                                   int n,
                                   int *bad_index,
                                   char *msg,
                                   int msg_len);

/**
 * Why ovs_equivalent_radius_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_equivalent_radius_us_why(double radius_in,
                                 double thickness_in,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_equivalent_radius_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_equivalent_radius_si_why(double radius_mm,
                                 double thickness_mm,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
 *
 * Equation: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8 subgrade
 * l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative stiffness, b the equivalent
 * radius.
 * Taken for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for the
 * deflection, and lies on its subgrade everywhere.
 *
 * - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
 * - `radius_in` (in): contact radius, at most the radius of relative stiffness; at least 0.0393700787402 in, at
 *   most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `stress_psi` (psi), out: greatest tensile stress.
 * - `deflection_in` (in), out: settlement under the load.
 * - `stiffness_in` (in), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_interior_load_us(10000, 6, 10, 4000000, 0.15, 100, ...) gives stress_psi = 143.748, deflection_in = 0.00669903, stiffness_in = 42.9725.
 */
int ovs_interior_load_us(double load_lbf,
                         double radius_in,
                         double thickness_in,
                         double modulus_psi,
                         double poisson_ratio,
                         double subgrade_pci,
                         double *stress_psi,
                         double *deflection_in,
                         double *stiffness_in,
                         int *notes,
                         char *msg,
                         int msg_len);

/**
 * Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.
 *
 * Equation: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8 subgrade
 * l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative stiffness, b the equivalent
 * radius.
 * Taken for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for the
 * deflection, and lies on its subgrade everywhere.
 *
 * - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
 * - `radius_mm` (mm): contact radius, at most the radius of relative stiffness; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `stress_mpa` (MPa), out: greatest tensile stress.
 * - `deflection_mm` (mm), out: settlement under the load.
 * - `stiffness_mm` (mm), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_interior_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, ...) gives stress_mpa = 0.99111, deflection_mm = 0.170155, stiffness_mm = 1091.5.
 */
int ovs_interior_load_si(double load_kn,
                         double radius_mm,
                         double thickness_mm,
                         double modulus_mpa,
                         double poisson_ratio,
                         double subgrade_mpa_per_m,
                         double *stress_mpa,
                         double *deflection_mm,
                         double *stiffness_mm,
                         int *notes,
                         char *msg,
                         int msg_len);

/**
 * ovs_interior_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_interior_load_us_array(const double *load_lbf,
                               const double *radius_in,
                               const double *thickness_in,
                               const double *modulus_psi,
                               const double *poisson_ratio,
                               const double *subgrade_pci,
                               double *stress_psi,
                               double *deflection_in,
                               double *stiffness_in,
                               int *notes,
                               int n,
                               int *bad_index,
                               char *msg,
                               int msg_len);

/**
 * ovs_interior_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_interior_load_si_array(const double *load_kn,
                               const double *radius_mm,
                               const double *thickness_mm,
                               const double *modulus_mpa,
                               const double *poisson_ratio,
                               const double *subgrade_mpa_per_m,
                               double *stress_mpa,
                               double *deflection_mm,
                               double *stiffness_mm,
                               int *notes,
                               int n,
                               int *bad_index,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_interior_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_interior_load_us_why(double load_lbf,
                             double radius_in,
                             double thickness_in,
                             double modulus_psi,
                             double poisson_ratio,
                             double subgrade_pci,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_interior_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_interior_load_si_why(double load_kn,
                             double radius_mm,
                             double thickness_mm,
                             double modulus_mpa,
                             double poisson_ratio,
                             double subgrade_mpa_per_m,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a
 * circle or a semicircle.
 *
 * Equation: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100 subgrade
 * radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2 poisson) radius / l;
 * semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l; deflection = sqrt(2 + 1.2 poisson) load /
 * sqrt(modulus thickness^3 subgrade) (1 - d radius / l), d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
 * Taken for granted: tension at the bottom along the edge, nothing carried across a joint; the circle touches the
 * edge from inside; a semicircle has its straight side on the edge and its own radius, sqrt 2 of the circle's at
 * the same load and pressure; the slab is at least 5 l across, 8 l for the deflection.
 *
 * - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
 * - `radius_in` (in): contact radius, at most the radius of relative stiffness; at least 0.0393700787402 in, at
 *   most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `footprint`: shape of the contact; the radius is that shape's own; 0 circle, 1 semicircle.
 * - `stress_psi` (psi), out: greatest tensile stress.
 * - `deflection_in` (in), out: settlement under the load.
 * - `stiffness_in` (in), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_edge_load_us(10000, 6, 10, 4000000, 0.15, 100, 0, ...) gives stress_psi = 279.296, deflection_in = 0.0206724, stiffness_in = 42.9725.
 */
int ovs_edge_load_us(double load_lbf,
                     double radius_in,
                     double thickness_in,
                     double modulus_psi,
                     double poisson_ratio,
                     double subgrade_pci,
                     int footprint,
                     double *stress_psi,
                     double *deflection_in,
                     double *stiffness_in,
                     int *notes,
                     char *msg,
                     int msg_len);

/**
 * Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a
 * circle or a semicircle.
 *
 * Equation: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100 subgrade
 * radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2 poisson) radius / l;
 * semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l; deflection = sqrt(2 + 1.2 poisson) load /
 * sqrt(modulus thickness^3 subgrade) (1 - d radius / l), d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
 * Taken for granted: tension at the bottom along the edge, nothing carried across a joint; the circle touches the
 * edge from inside; a semicircle has its straight side on the edge and its own radius, sqrt 2 of the circle's at
 * the same load and pressure; the slab is at least 5 l across, 8 l for the deflection.
 *
 * - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
 * - `radius_mm` (mm): contact radius, at most the radius of relative stiffness; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `footprint`: shape of the contact; the radius is that shape's own; 0 circle, 1 semicircle.
 * - `stress_mpa` (MPa), out: greatest tensile stress.
 * - `deflection_mm` (mm), out: settlement under the load.
 * - `stiffness_mm` (mm), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_edge_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, 0, ...) gives stress_mpa = 1.92568, deflection_mm = 0.525079, stiffness_mm = 1091.5.
 */
int ovs_edge_load_si(double load_kn,
                     double radius_mm,
                     double thickness_mm,
                     double modulus_mpa,
                     double poisson_ratio,
                     double subgrade_mpa_per_m,
                     int footprint,
                     double *stress_mpa,
                     double *deflection_mm,
                     double *stiffness_mm,
                     int *notes,
                     char *msg,
                     int msg_len);

/**
 * ovs_edge_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_edge_load_us_array(const double *load_lbf,
                           const double *radius_in,
                           const double *thickness_in,
                           const double *modulus_psi,
                           const double *poisson_ratio,
                           const double *subgrade_pci,
                           const int *footprint,
                           double *stress_psi,
                           double *deflection_in,
                           double *stiffness_in,
                           int *notes,
                           int n,
                           int *bad_index,
                           char *msg,
                           int msg_len);

/**
 * ovs_edge_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_edge_load_si_array(const double *load_kn,
                           const double *radius_mm,
                           const double *thickness_mm,
                           const double *modulus_mpa,
                           const double *poisson_ratio,
                           const double *subgrade_mpa_per_m,
                           const int *footprint,
                           double *stress_mpa,
                           double *deflection_mm,
                           double *stiffness_mm,
                           int *notes,
                           int n,
                           int *bad_index,
                           char *msg,
                           int msg_len);

/**
 * Why ovs_edge_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_edge_load_us_why(double load_lbf,
                         double radius_in,
                         double thickness_in,
                         double modulus_psi,
                         double poisson_ratio,
                         double subgrade_pci,
                         int footprint,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * Why ovs_edge_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_edge_load_si_why(double load_kn,
                         double radius_mm,
                         double thickness_mm,
                         double modulus_mpa,
                         double poisson_ratio,
                         double subgrade_mpa_per_m,
                         int footprint,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a
 * quarter to a half more.
 *
 * Equation: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
 * Taken for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l across.
 *
 * - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
 * - `radius_in` (in): contact radius, at most the radius of relative stiffness; at least 0.0393700787402 in, at
 *   most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `stress_psi` (psi), out: greatest tensile stress.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_edge_load_1926_us(10000, 6, 10, 4000000, 100, ...) gives stress_psi = 219.47.
 */
int ovs_edge_load_1926_us(double load_lbf,
                          double radius_in,
                          double thickness_in,
                          double modulus_psi,
                          double subgrade_pci,
                          double *stress_psi,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a
 * quarter to a half more.
 *
 * Equation: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
 * Taken for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l across.
 *
 * - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
 * - `radius_mm` (mm): contact radius, at most the radius of relative stiffness; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `stress_mpa` (MPa), out: greatest tensile stress.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL Transportation
 * Engineering I (lecture 29), equivalent radius.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_edge_load_1926_si(44.4822, 152.4, 254, 27579, 27.1447, ...) gives stress_mpa = 1.51319.
 */
int ovs_edge_load_1926_si(double load_kn,
                          double radius_mm,
                          double thickness_mm,
                          double modulus_mpa,
                          double subgrade_mpa_per_m,
                          double *stress_mpa,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_edge_load_1926_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_edge_load_1926_us_array(const double *load_lbf,
                                const double *radius_in,
                                const double *thickness_in,
                                const double *modulus_psi,
                                const double *subgrade_pci,
                                double *stress_psi,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_edge_load_1926_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_edge_load_1926_si_array(const double *load_kn,
                                const double *radius_mm,
                                const double *thickness_mm,
                                const double *modulus_mpa,
                                const double *subgrade_mpa_per_m,
                                double *stress_mpa,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_edge_load_1926_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_edge_load_1926_us_why(double load_lbf,
                              double radius_in,
                              double thickness_in,
                              double modulus_psi,
                              double subgrade_pci,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_edge_load_1926_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_edge_load_1926_si_why(double load_kn,
                              double radius_mm,
                              double thickness_mm,
                              double modulus_mpa,
                              double subgrade_mpa_per_m,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
 *
 * Equation: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
 * (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load / thickness^2 (1 -
 * (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
 * Taken for granted: tension at the top across the bisector; the circle touches both edges; nothing carried across
 * joints; the slab is at least 4 l across, 5 l for the deflection; the contact reaches three quarters of l at
 * most.
 *
 * - `load_lbf` (lbf): load of one wheel or post; more than 0 lbf, at most 2248089.431 lbf.
 * - `radius_in` (in): contact radius, at most the radius of relative stiffness; at least 0.0393700787402 in, at
 *   most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `formula`: which formula; 0 Westergaard 1926, 1 Ioannides 1985.
 * - `stress_psi` (psi), out: greatest tensile stress.
 * - `deflection_in` (in), out: settlement under the load.
 * - `stiffness_in` (in), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_corner_load_us(10000, 6, 10, 4000000, 0.15, 100, 1, ...) gives stress_psi = 190.254, deflection_in = 0.0560091, stiffness_in = 42.9725.
 */
int ovs_corner_load_us(double load_lbf,
                       double radius_in,
                       double thickness_in,
                       double modulus_psi,
                       double poisson_ratio,
                       double subgrade_pci,
                       int formula,
                       double *stress_psi,
                       double *deflection_in,
                       double *stiffness_in,
                       int *notes,
                       char *msg,
                       int msg_len);

/**
 * Stress and deflection under a load in a corner, by Westergaard or by Ioannides.
 *
 * Equation: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
 * (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load / thickness^2 (1 -
 * (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
 * Taken for granted: tension at the top across the bisector; the circle touches both edges; nothing carried across
 * joints; the slab is at least 4 l across, 5 l for the deflection; the contact reaches three quarters of l at
 * most.
 *
 * - `load_kn` (kN): load of one wheel or post; more than 0 kN, at most 10000 kN.
 * - `radius_mm` (mm): contact radius, at most the radius of relative stiffness; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `formula`: which formula; 0 Westergaard 1926, 1 Ioannides 1985.
 * - `stress_mpa` (MPa), out: greatest tensile stress.
 * - `deflection_mm` (mm), out: settlement under the load.
 * - `stiffness_mm` (mm), out: radius of relative stiffness.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_corner_load_si(44.4822, 152.4, 254, 27579, 0.15, 27.1447, 1, ...) gives stress_mpa = 1.31176, deflection_mm = 1.42263, stiffness_mm = 1091.5.
 */
int ovs_corner_load_si(double load_kn,
                       double radius_mm,
                       double thickness_mm,
                       double modulus_mpa,
                       double poisson_ratio,
                       double subgrade_mpa_per_m,
                       int formula,
                       double *stress_mpa,
                       double *deflection_mm,
                       double *stiffness_mm,
                       int *notes,
                       char *msg,
                       int msg_len);

/**
 * ovs_corner_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_corner_load_us_array(const double *load_lbf,
                             const double *radius_in,
                             const double *thickness_in,
                             const double *modulus_psi,
                             const double *poisson_ratio,
                             const double *subgrade_pci,
                             const int *formula,
                             double *stress_psi,
                             double *deflection_in,
                             double *stiffness_in,
                             int *notes,
                             int n,
                             int *bad_index,
                             char *msg,
                             int msg_len);

/**
 * ovs_corner_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_corner_load_si_array(const double *load_kn,
                             const double *radius_mm,
                             const double *thickness_mm,
                             const double *modulus_mpa,
                             const double *poisson_ratio,
                             const double *subgrade_mpa_per_m,
                             const int *formula,
                             double *stress_mpa,
                             double *deflection_mm,
                             double *stiffness_mm,
                             int *notes,
                             int n,
                             int *bad_index,
                             char *msg,
                             int msg_len);

/**
 * Why ovs_corner_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_corner_load_us_why(double load_lbf,
                           double radius_in,
                           double thickness_in,
                           double modulus_psi,
                           double poisson_ratio,
                           double subgrade_pci,
                           int formula,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_corner_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_corner_load_si_why(double load_kn,
                           double radius_mm,
                           double thickness_mm,
                           double modulus_mpa,
                           double poisson_ratio,
                           double subgrade_mpa_per_m,
                           int formula,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * How far from a corner it breaks off under a load, along the bisector.
 *
 * Equation: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x stiffness),
 * which is 2.38 sqrt(radius x stiffness).
 * Taken for granted: one load in the corner.
 *
 * - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
 * - `stiffness_in` (in): relative stiffness, its radius; at least 0.393700787402 in, at most 1968.50393701 in.
 * - `formula`: which formula; 0 textbook, 2.58, 1 Westergaard, 2.38.
 * - `distance_in` (in), out: distance from the corner.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Since 0.1.0.
 * Example: ovs_corner_crack_us(6, 43, 0, ...) gives distance_in = 41.4409.
 */
int ovs_corner_crack_us(double radius_in,
                        double stiffness_in,
                        int formula,
                        double *distance_in,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * How far from a corner it breaks off under a load, along the bisector.
 *
 * Equation: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x stiffness),
 * which is 2.38 sqrt(radius x stiffness).
 * Taken for granted: one load in the corner.
 *
 * - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
 * - `stiffness_mm` (mm): relative stiffness, its radius; at least 10 mm, at most 50000 mm.
 * - `formula`: which formula; 0 textbook, 2.58, 1 Westergaard, 2.38.
 * - `distance_mm` (mm), out: distance from the corner.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Since 0.1.0.
 * Example: ovs_corner_crack_si(152.4, 1092.2, 0, ...) gives distance_mm = 1052.6.
 */
int ovs_corner_crack_si(double radius_mm,
                        double stiffness_mm,
                        int formula,
                        double *distance_mm,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * ovs_corner_crack_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_corner_crack_us_array(const double *radius_in,
                              const double *stiffness_in,
                              const int *formula,
                              double *distance_in,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * ovs_corner_crack_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_corner_crack_si_array(const double *radius_mm,
                              const double *stiffness_mm,
                              const int *formula,
                              double *distance_mm,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_corner_crack_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_corner_crack_us_why(double radius_in,
                            double stiffness_in,
                            int formula,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_corner_crack_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_corner_crack_si_why(double radius_mm,
                            double stiffness_mm,
                            int formula,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
 *
 * Equation: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load / (subgrade
 * stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson Re F + (1 - poisson)
 * Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
 * Taken for granted: a thin plate without end; stress = 6 moment / thickness^2.
 *
 * - `distance_in` (in): from the middle of the load; at least 0 in, at most 39370.0787402 in.
 * - `radius_in` (in): radius of the contact, at most 2 radii of relative stiffness; at least 0.0393700787402 in,
 *   at most 196.850393701 in.
 * - `stiffness_in` (in): relative stiffness, its radius; at least 0.393700787402 in, at most 1968.50393701 in.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `deflection_ratio` (1), out: deflection over load / (subgrade stiffness^2).
 * - `radial_ratio` (1), out: moment towards the load, for each unit of width and load.
 * - `tangential_ratio` (1), out: across that direction, for each unit of width and load.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
 * (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_load_influence_us(40, 6, 42.97, 0.15, ...) gives deflection_ratio = 0.0825484, radial_ratio = 0.00245615, tangential_ratio = 0.0595816.
 */
int ovs_load_influence_us(double distance_in,
                          double radius_in,
                          double stiffness_in,
                          double poisson_ratio,
                          double *deflection_ratio,
                          double *radial_ratio,
                          double *tangential_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.
 *
 * Equation: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load / (subgrade
 * stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson Re F + (1 - poisson)
 * Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
 * Taken for granted: a thin plate without end; stress = 6 moment / thickness^2.
 *
 * - `distance_mm` (mm): from the middle of the load; at least 0 mm, at most 1000000 mm.
 * - `radius_mm` (mm): radius of the contact, at most 2 radii of relative stiffness; at least 1 mm, at most 5000
 *   mm.
 * - `stiffness_mm` (mm): relative stiffness, its radius; at least 10 mm, at most 50000 mm.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `deflection_ratio` (1), out: deflection over load / (subgrade stiffness^2).
 * - `radial_ratio` (1), out: moment towards the load, for each unit of width and load.
 * - `tangential_ratio` (1), out: across that direction, for each unit of width and load.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_CONTACT_TOO_WIDE.
 * Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
 * (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_load_influence_si(1016, 152.4, 1091.44, 0.15, ...) gives deflection_ratio = 0.0825484, radial_ratio = 0.00245615, tangential_ratio = 0.0595816.
 */
int ovs_load_influence_si(double distance_mm,
                          double radius_mm,
                          double stiffness_mm,
                          double poisson_ratio,
                          double *deflection_ratio,
                          double *radial_ratio,
                          double *tangential_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_load_influence_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_load_influence_us_array(const double *distance_in,
                                const double *radius_in,
                                const double *stiffness_in,
                                const double *poisson_ratio,
                                double *deflection_ratio,
                                double *radial_ratio,
                                double *tangential_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_load_influence_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_load_influence_si_array(const double *distance_mm,
                                const double *radius_mm,
                                const double *stiffness_mm,
                                const double *poisson_ratio,
                                double *deflection_ratio,
                                double *radial_ratio,
                                double *tangential_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_load_influence_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_load_influence_us_why(double distance_in,
                              double radius_in,
                              double stiffness_in,
                              double poisson_ratio,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_load_influence_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_load_influence_si_why(double distance_mm,
                              double radius_mm,
                              double stiffness_mm,
                              double poisson_ratio,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no
 * numbers here, but what to ask.
 *
 * Equation: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
 * Taken for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.
 *
 * - `thing`: what stands or rolls there; 0 car, 1 pickup, 2 loaded one-ton, 3 farm tractor, 4 skid machine, 5
 *   bench, 6 kiln, 7 two jacks, 8 anchored lift.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_USUAL_LOAD_LOAD (lbf): each load; none where only the maker can say.
 *   - OVS_USUAL_LOAD_MARGIN (1): what the load is multiplied by.
 *   - OVS_USUAL_LOAD_DESIGN_LOAD (lbf): the load with its margin; none without a load.
 *   - OVS_USUAL_LOAD_PRESSURE (psi): contact pressure; none without a load.
 *   - OVS_USUAL_LOAD_RADIUS (in): contact radius under the load with its margin; none without a load.
 *   - OVS_USUAL_LOAD_COUNT: how many stand near one another.
 *   - OVS_USUAL_LOAD_SPACING (in): middle to middle.
 *   - OVS_USUAL_LOAD_SAID: what was taken, or what to ask.
 *   - OVS_USUAL_LOAD_RESTS_ON: its basis, by name.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: ours, from memory: what usual things put on a floor: common practice, no source.
 * Basis: the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as quoted
 * elsewhere.
 * Basis: the maker's approval of the anchors, and an engineer: the project's specification.
 * Basis: a circle of the load over its pressure: derived.
 * Since 0.1.0.
 * Example, as JSON: {"thing":"pickup"}
 */
ovs_answer *ovs_usual_load_us(int thing,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no
 * numbers here, but what to ask.
 *
 * Equation: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
 * Taken for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.
 *
 * - `thing`: what stands or rolls there; 0 car, 1 pickup, 2 loaded one-ton, 3 farm tractor, 4 skid machine, 5
 *   bench, 6 kiln, 7 two jacks, 8 anchored lift.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_USUAL_LOAD_LOAD (kN): each load; none where only the maker can say.
 *   - OVS_USUAL_LOAD_MARGIN (1): what the load is multiplied by.
 *   - OVS_USUAL_LOAD_DESIGN_LOAD (kN): the load with its margin; none without a load.
 *   - OVS_USUAL_LOAD_PRESSURE (kPa): contact pressure; none without a load.
 *   - OVS_USUAL_LOAD_RADIUS (mm): contact radius under the load with its margin; none without a load.
 *   - OVS_USUAL_LOAD_COUNT: how many stand near one another.
 *   - OVS_USUAL_LOAD_SPACING (mm): middle to middle.
 *   - OVS_USUAL_LOAD_SAID: what was taken, or what to ask.
 *   - OVS_USUAL_LOAD_RESTS_ON: its basis, by name.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: ours, from memory: what usual things put on a floor: common practice, no source.
 * Basis: the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as quoted
 * elsewhere.
 * Basis: the maker's approval of the anchors, and an engineer: the project's specification.
 * Basis: a circle of the load over its pressure: derived.
 * Since 0.1.0.
 * Example, as JSON: {"thing":"pickup"}
 */
ovs_answer *ovs_usual_load_si(int thing,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_usual_load_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_usual_load_us_why(int thing,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Why ovs_usual_load_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_usual_load_si_why(int thing,
                          const char *options_json,
                          int options_len,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an
 * old slab what each layer feels.
 *
 * Equation: together = sum over loads of (Westergaard's stress of the load at this position) x (influence at the
 * distance / influence at none); moments in the middle are added with their directions, at edges and corners the
 * larger one is taken.
 * Taken for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a circle; a
 * semicircle has the circle's area; with an old slab both layers are one plate of the overlay's concrete; several
 * loads and two layers: ours, no source.
 *
 * - `loads_load_lbf` (lbf): how heavy; more than 0 lbf, at most 2248089.431 lbf.
 * - `loads_x_ft` (ft): from the left; at least -3280.83989501 ft, at most 3280.83989501 ft.
 * - `loads_y_ft` (ft): from the front; at least -3280.83989501 ft, at most 3280.83989501 ft.
 * - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
 *   least 1.
 * - `thickness_in` (in): thickness of the slab, or of the overlay where an old slab is given; more than 0 in, at
 *   most 78.7401574803 in.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `loads`: what it is; may be left out.
 *   - `radius` of `loads` (in): radius of the circle it stands on; at least 0.0393700787402 in, at most
 *     196.850393701 in; may be left out.
 *   - `pressure` of `loads` (psi): contact pressure, in place of a radius; at least 0.14503773773 psi, at most
 *     14503.773773 psi; may be left out.
 *   - `modulus` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773 psi;
 *     where left out 3,600,000 psi, because normal-weight concrete of 4,000 psi.
 *   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
 *     because usual for concrete.
 *   - `subgrade` (pci): subgrade reaction k under all concrete; at least 5 pci, at most 2000 pci; where left out
 *     100 pci, because medium by heel and bar.
 *   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
 *     the edge from inside.
 *   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Ioannides 1985,
 *     because the later one, held against finite elements.
 *   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
 *     least 0 %, at most 50 %; where left out 0 %, because a free edge.
 *   - `length` (ft): length of the slab between joints, to see whether it is large enough; at least 0.328083989501
 *     ft, at most 656.167979003 ft; may be left out.
 *   - `width` (ft): its width, likewise; at least 0.328083989501 ft, at most 656.167979003 ft; may be left out.
 *   - `old_slab` (in): old slab under the overlay, its thickness; more than 0 in, at most 78.7401574803 in; may be
 *     left out.
 *   - `old_modulus` (psi): old slab, its modulus of elasticity; at least 14503.773773 psi, at most 14503773.773
 *     psi; may be left out.
 *   - `bond`: how the overlay holds to it; 0 bonded, 1 partly bonded, 2 unbonded; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SLAB_STRESS_STIFFNESS (in): radius of relative stiffness.
 *   - OVS_SLAB_STRESS_EQUIVALENT (in): thickness of the plate that was figured.
 *   - OVS_SLAB_STRESS_GREATEST (psi): greatest governing stress of that plate.
 *   - OVS_SLAB_STRESS_GOVERNS: under which load, the first being 1.
 *   - OVS_SLAB_STRESS_FELT: what each load feels.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_CONTACT_TOO_WIDE, OVS_CONTACT_UNCLEAR.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
 * (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
 * Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
 * over that at none: derived.
 * Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
 * rigidity: derived.
 * Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"interior"}],"thickness":"4 in","length":"12 ft","width":"10 ft"}
 */
ovs_answer *ovs_slab_stress_us(const double *loads_load_lbf,
                               const double *loads_x_ft,
                               const double *loads_y_ft,
                               const int *loads_position,
                               int loads_rows,
                               double thickness_in,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an
 * old slab what each layer feels.
 *
 * Equation: together = sum over loads of (Westergaard's stress of the load at this position) x (influence at the
 * distance / influence at none); moments in the middle are added with their directions, at edges and corners the
 * larger one is taken.
 * Taken for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a circle; a
 * semicircle has the circle's area; with an old slab both layers are one plate of the overlay's concrete; several
 * loads and two layers: ours, no source.
 *
 * - `loads_load_kn` (kN): how heavy; more than 0 kN, at most 10000 kN.
 * - `loads_x_m` (m): from the left; at least -1000 m, at most 1000 m.
 * - `loads_y_m` (m): from the front; at least -1000 m, at most 1000 m.
 * - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
 *   least 1.
 * - `thickness_mm` (mm): thickness of the slab, or of the overlay where an old slab is given; more than 0 mm, at
 *   most 2000 mm.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `loads`: what it is; may be left out.
 *   - `radius` of `loads` (mm): radius of the circle it stands on; at least 1 mm, at most 5000 mm; may be left
 *     out.
 *   - `pressure` of `loads` (kPa): contact pressure, in place of a radius; at least 1 kPa, at most 100000 kPa; may
 *     be left out.
 *   - `modulus` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa; where left out
 *     3,600,000 psi, because normal-weight concrete of 4,000 psi.
 *   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
 *     because usual for concrete.
 *   - `subgrade` (MPa/m): subgrade reaction k under all concrete; at least 1.35723568763 MPa/m, at most
 *     542.894275053 MPa/m; where left out 100 pci, because medium by heel and bar.
 *   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
 *     the edge from inside.
 *   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Ioannides 1985,
 *     because the later one, held against finite elements.
 *   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
 *     least 0 %, at most 50 %; where left out 0 %, because a free edge.
 *   - `length` (m): length of the slab between joints, to see whether it is large enough; at least 0.1 m, at most
 *     200 m; may be left out.
 *   - `width` (m): its width, likewise; at least 0.1 m, at most 200 m; may be left out.
 *   - `old_slab` (mm): old slab under the overlay, its thickness; more than 0 mm, at most 2000 mm; may be left
 *     out.
 *   - `old_modulus` (MPa): old slab, its modulus of elasticity; at least 100 MPa, at most 100000 MPa; may be left
 *     out.
 *   - `bond`: how the overlay holds to it; 0 bonded, 1 partly bonded, 2 unbonded; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_SLAB_STRESS_STIFFNESS (mm): radius of relative stiffness.
 *   - OVS_SLAB_STRESS_EQUIVALENT (mm): thickness of the plate that was figured.
 *   - OVS_SLAB_STRESS_GREATEST (MPa): greatest governing stress of that plate.
 *   - OVS_SLAB_STRESS_GOVERNS: under which load, the first being 1.
 *   - OVS_SLAB_STRESS_FELT: what each load feels.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_CONTACT_TOO_WIDE, OVS_CONTACT_UNCLEAR.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: exact deflection and moments of a large plate on springs: Textbooks on plates on elastic foundation
 * (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory: confirm.
 * Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
 * over that at none: derived.
 * Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
 * rigidity: derived.
 * Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
 * Basis: stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner: Ioannides,
 * Thompson, Barenberg (1985), least slab sizes, from memory: confirm.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"interior"}],"thickness":"4 in","length":"12 ft","width":"10 ft"}
 */
ovs_answer *ovs_slab_stress_si(const double *loads_load_kn,
                               const double *loads_x_m,
                               const double *loads_y_m,
                               const int *loads_position,
                               int loads_rows,
                               double thickness_mm,
                               const char *options_json,
                               int options_len,
                               int *status,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_slab_stress_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_slab_stress_us_why(const double *loads_load_lbf,
                           const double *loads_x_ft,
                           const double *loads_y_ft,
                           const int *loads_position,
                           int loads_rows,
                           double thickness_in,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * Why ovs_slab_stress_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_slab_stress_si_why(const double *loads_load_kn,
                           const double *loads_x_m,
                           const double *loads_y_m,
                           const int *loads_position,
                           int loads_rows,
                           double thickness_mm,
                           const char *options_json,
                           int options_len,
                           char *text,
                           int text_len,
                           int *needed);

/**
 * The safety factors in use for a kind of load, from memory: confirm.
 *
 * Equation: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2; uniform
 * 1.4, usual 2; wall 1.7, usual 2.
 * Taken for granted: the modulus of rupture over the factor is the stress allowed.
 *
 * - `kind`: kind of load; 0 moving wheel, 1 wheel, unlimited passes, 2 post or jack, 3 uniform, 4 wall.
 * - `least_ratio` (1), out: least in use.
 * - `usual_ratio` (1), out: taken where nobody says.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_safety_factors_us(2, ...) gives least_ratio = 1.7, usual_ratio = 2.
 */
int ovs_safety_factors_us(int kind,
                          double *least_ratio,
                          double *usual_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * The safety factors in use for a kind of load, from memory: confirm.
 *
 * Equation: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2; uniform
 * 1.4, usual 2; wall 1.7, usual 2.
 * Taken for granted: the modulus of rupture over the factor is the stress allowed.
 *
 * - `kind`: kind of load; 0 moving wheel, 1 wheel, unlimited passes, 2 post or jack, 3 uniform, 4 wall.
 * - `least_ratio` (1), out: least in use.
 * - `usual_ratio` (1), out: taken where nobody says.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_WORD_UNKNOWN.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_safety_factors_si(2, ...) gives least_ratio = 1.7, usual_ratio = 2.
 */
int ovs_safety_factors_si(int kind,
                          double *least_ratio,
                          double *usual_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_safety_factors_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_safety_factors_us_array(const int *kind,
                                double *least_ratio,
                                double *usual_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_safety_factors_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_safety_factors_si_array(const int *kind,
                                double *least_ratio,
                                double *usual_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_safety_factors_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_safety_factors_us_why(int kind, char *text, int text_len, int *needed);

/**
 * Why ovs_safety_factors_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_safety_factors_si_why(int kind, char *text, int text_len, int *needed);

/**
 * The stress that a safety factor allows.
 *
 * Equation: allowable = rupture / safety.
 * Taken for granted: plain concrete.
 *
 * - `rupture_psi` (psi): modulus of rupture; at least 50 psi, at most 2000 psi.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `allowable_psi` (psi), out: stress allowed.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_allowable_stress_us(570, 1.7, ...) gives allowable_psi = 335.294.
 */
int ovs_allowable_stress_us(double rupture_psi,
                            double safety_ratio,
                            double *allowable_psi,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The stress that a safety factor allows.
 *
 * Equation: allowable = rupture / safety.
 * Taken for granted: plain concrete.
 *
 * - `rupture_mpa` (MPa): modulus of rupture; at least 0.344737864658 MPa, at most 13.7895145863 MPa.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `allowable_mpa` (MPa), out: stress allowed.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_allowable_stress_si(3.93001, 1.7, ...) gives allowable_mpa = 2.31177.
 */
int ovs_allowable_stress_si(double rupture_mpa,
                            double safety_ratio,
                            double *allowable_mpa,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_allowable_stress_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_allowable_stress_us_array(const double *rupture_psi,
                                  const double *safety_ratio,
                                  double *allowable_psi,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_allowable_stress_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_allowable_stress_si_array(const double *rupture_mpa,
                                  const double *safety_ratio,
                                  double *allowable_mpa,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_allowable_stress_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_allowable_stress_us_why(double rupture_psi,
                                double safety_ratio,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_allowable_stress_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_allowable_stress_si_why(double rupture_mpa,
                                double safety_ratio,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The one load that a slab carries at a place, on a contact of a given radius.
 *
 * Equation: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner Ioannides
 * 1985.
 * Taken for granted: the contact keeps its radius; one load by itself; nothing carried across joints.
 *
 * - `position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `radius_in` (in): radius of the contact; at least 0.0393700787402 in, at most 196.850393701 in.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `rupture_psi` (psi): its strength in bending, the modulus of rupture; at least 50 psi, at most 2000 psi.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `load_lbf` (lbf), out: load allowed.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_allowable_load_us(0, 3, 4, 3600000, 0.15, 100, 550, 2, ...) gives load_lbf = 3048.68.
 */
int ovs_allowable_load_us(int position,
                          double radius_in,
                          double thickness_in,
                          double modulus_psi,
                          double poisson_ratio,
                          double subgrade_pci,
                          double rupture_psi,
                          double safety_ratio,
                          double *load_lbf,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * The one load that a slab carries at a place, on a contact of a given radius.
 *
 * Equation: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner Ioannides
 * 1985.
 * Taken for granted: the contact keeps its radius; one load by itself; nothing carried across joints.
 *
 * - `position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `radius_mm` (mm): radius of the contact; at least 1 mm, at most 5000 mm.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `rupture_mpa` (MPa): its strength in bending, the modulus of rupture; at least 0.344737864658 MPa, at most
 *   13.7895145863 MPa.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `load_kn` (kN), out: load allowed.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTACT_TOO_WIDE.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_allowable_load_si(0, 76.2, 101.6, 24821.1, 0.15, 27.1447, 3.79212, 2, ...) gives load_kn = 13.5612.
 */
int ovs_allowable_load_si(int position,
                          double radius_mm,
                          double thickness_mm,
                          double modulus_mpa,
                          double poisson_ratio,
                          double subgrade_mpa_per_m,
                          double rupture_mpa,
                          double safety_ratio,
                          double *load_kn,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_allowable_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_allowable_load_us_array(const int *position,
                                const double *radius_in,
                                const double *thickness_in,
                                const double *modulus_psi,
                                const double *poisson_ratio,
                                const double *subgrade_pci,
                                const double *rupture_psi,
                                const double *safety_ratio,
                                double *load_lbf,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_allowable_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_allowable_load_si_array(const int *position,
                                const double *radius_mm,
                                const double *thickness_mm,
                                const double *modulus_mpa,
                                const double *poisson_ratio,
                                const double *subgrade_mpa_per_m,
                                const double *rupture_mpa,
                                const double *safety_ratio,
                                double *load_kn,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_allowable_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_allowable_load_us_why(int position,
                              double radius_in,
                              double thickness_in,
                              double modulus_psi,
                              double poisson_ratio,
                              double subgrade_pci,
                              double rupture_psi,
                              double safety_ratio,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_allowable_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_allowable_load_si_why(int position,
                              double radius_mm,
                              double thickness_mm,
                              double modulus_mpa,
                              double poisson_ratio,
                              double subgrade_mpa_per_m,
                              double rupture_mpa,
                              double safety_ratio,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * How often a stress may come, by its ratio to the modulus of rupture.
 *
 * Equation: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268; above log10
 * repetitions = (0.9718 - stress_ratio) / 0.0828.
 * Taken for granted: stress and strength are those of the place that governs.
 *
 * - `stress_ratio_ratio` (1): stress over modulus of rupture; more than 0 1, at most 1 1.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_REPETITIONS_ALLOWED_UNLIMITED: whether there is no limit; 0 no, 1 yes.
 *   - OVS_REPETITIONS_ALLOWED_REPETITIONS (1): how often; none where there is no limit.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association (2002),
 * fatigue, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"stress_ratio":"0.55 ratio"}
 */
int ovs_repetitions_allowed_us(double stress_ratio_ratio,
                               const char *options_json,
                               int options_len,
                               double *results,
                               int results_len,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * How often a stress may come, by its ratio to the modulus of rupture.
 *
 * Equation: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268; above log10
 * repetitions = (0.9718 - stress_ratio) / 0.0828.
 * Taken for granted: stress and strength are those of the place that governs.
 *
 * - `stress_ratio_ratio` (1): stress over modulus of rupture; more than 0 1, at most 1 1.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_REPETITIONS_ALLOWED_UNLIMITED: whether there is no limit; 0 no, 1 yes.
 *   - OVS_REPETITIONS_ALLOWED_REPETITIONS (1): how often; none where there is no limit.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association (2002),
 * fatigue, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"stress_ratio":"0.55 ratio"}
 */
int ovs_repetitions_allowed_si(double stress_ratio_ratio,
                               const char *options_json,
                               int options_len,
                               double *results,
                               int results_len,
                               int *notes,
                               int notes_len,
                               char *msg,
                               int msg_len);

/**
 * Why ovs_repetitions_allowed_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_repetitions_allowed_us_why(double stress_ratio_ratio,
                                   const char *options_json,
                                   int options_len,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * Why ovs_repetitions_allowed_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_repetitions_allowed_si_why(double stress_ratio_ratio,
                                   const char *options_json,
                                   int options_len,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
 *
 * Equation: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most above the
 * root.
 * Taken for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old slab: for that
 * see overlay_required.
 *
 * - `loads_load_lbf` (lbf): how heavy; more than 0 lbf, at most 2248089.431 lbf.
 * - `loads_x_ft` (ft): from the left; at least -3280.83989501 ft, at most 3280.83989501 ft.
 * - `loads_y_ft` (ft): from the front; at least -3280.83989501 ft, at most 3280.83989501 ft.
 * - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
 *   least 1.
 * - `rupture_psi` (psi): modulus of rupture of the concrete; at least 50 psi, at most 2000 psi.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `loads`: what it is; may be left out.
 *   - `radius` of `loads` (in): radius of the circle it stands on; at least 0.0393700787402 in, at most
 *     196.850393701 in; may be left out.
 *   - `pressure` of `loads` (psi): contact pressure, in place of a radius; at least 0.14503773773 psi, at most
 *     14503.773773 psi; may be left out.
 *   - `safety` (1): safety factor; at least 1 1, at most 10 1; where left out 2 ratio, because usual for wheels,
 *     posts and jacks.
 *   - `modulus` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773 psi;
 *     where left out 3,600,000 psi, because normal-weight concrete of 4,000 psi.
 *   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
 *     because usual for concrete.
 *   - `subgrade` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci; where left out 100 pci, because
 *     medium by heel and bar.
 *   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
 *     the edge from inside.
 *   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Ioannides 1985,
 *     because the later one, held against finite elements.
 *   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
 *     least 0 %, at most 50 %; where left out 0 %, because a free edge.
 *   - `least` (in): the search begins here; at least 1 in, at most 48 in; where left out 2 in, because no slab on
 *     ground is thinner.
 *   - `greatest` (in): and ends here; more than 0 in, at most 78.7401574803 in; where left out 24 in, because
 *     thicker is no floor any more.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_THICKNESS_NEEDED_THICKNESS (in): smallest thickness.
 *   - OVS_THICKNESS_NEEDED_STRESS (psi): governing stress there.
 *   - OVS_THICKNESS_NEEDED_ALLOWABLE (psi): stress allowed.
 *   - OVS_THICKNESS_NEEDED_GOVERNS: the load that governs, the first being 1.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
 * OVS_CONTACT_UNCLEAR, OVS_NO_THICKNESS.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
 * over that at none: derived.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"edge"}],"rupture":"550 psi"}
 */
int ovs_thickness_needed_us(const double *loads_load_lbf,
                            const double *loads_x_ft,
                            const double *loads_y_ft,
                            const int *loads_position,
                            int loads_rows,
                            double rupture_psi,
                            const char *options_json,
                            int options_len,
                            double *results,
                            int results_len,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.
 *
 * Equation: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most above the
 * root.
 * Taken for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old slab: for that
 * see overlay_required.
 *
 * - `loads_load_kn` (kN): how heavy; more than 0 kN, at most 10000 kN.
 * - `loads_x_m` (m): from the left; at least -1000 m, at most 1000 m.
 * - `loads_y_m` (m): from the front; at least -1000 m, at most 1000 m.
 * - `loads_position`: where on the slab it stands; 0 interior, 1 edge, 2 corner.
 * - `loads_rows`: the loads: how many rows, each a load on the slab, its contact by radius or by pressure; at
 *   least 1.
 * - `rupture_mpa` (MPa): modulus of rupture of the concrete; at least 0.344737864658 MPa, at most 13.7895145863
 *   MPa.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `name` of `loads`: what it is; may be left out.
 *   - `radius` of `loads` (mm): radius of the circle it stands on; at least 1 mm, at most 5000 mm; may be left
 *     out.
 *   - `pressure` of `loads` (kPa): contact pressure, in place of a radius; at least 1 kPa, at most 100000 kPa; may
 *     be left out.
 *   - `safety` (1): safety factor; at least 1 1, at most 10 1; where left out 2 ratio, because usual for wheels,
 *     posts and jacks.
 *   - `modulus` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa; where left out
 *     3,600,000 psi, because normal-weight concrete of 4,000 psi.
 *   - `poisson` (1): Poisson's ratio of the concrete; at least 0 1, at most 0.5 1; where left out 0.15 ratio,
 *     because usual for concrete.
 *   - `subgrade` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m; where
 *     left out 100 pci, because medium by heel and bar.
 *   - `edge_form`: contact at an edge; 0 circle, 1 semicircle; where left out circle, because a wheel that touches
 *     the edge from inside.
 *   - `corner_form`: formula in a corner; 0 Westergaard 1926, 1 Ioannides 1985; where left out Ioannides 1985,
 *     because the later one, held against finite elements.
 *   - `transfer` (%): share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm); at
 *     least 0 %, at most 50 %; where left out 0 %, because a free edge.
 *   - `least` (mm): the search begins here; at least 25.4 mm, at most 1219.2 mm; where left out 2 in, because no
 *     slab on ground is thinner.
 *   - `greatest` (mm): and ends here; more than 0 mm, at most 2000 mm; where left out 24 in, because thicker is no
 *     floor any more.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_THICKNESS_NEEDED_THICKNESS (mm): smallest thickness.
 *   - OVS_THICKNESS_NEEDED_STRESS (MPa): governing stress there.
 *   - OVS_THICKNESS_NEEDED_ALLOWABLE (MPa): stress allowed.
 *   - OVS_THICKNESS_NEEDED_GOVERNS: the load that governs, the first being 1.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST,
 * OVS_CONTACT_UNCLEAR, OVS_NO_THICKNESS.
 * Basis: stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner, from
 * memory: confirm.
 * Basis: edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm.
 * Basis: s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load, from
 * memory: confirm.
 * Basis: ours, no source: what another load adds is what it would do there, times its influence at the distance
 * over that at none: derived.
 * Basis: safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm.
 * Basis: dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory: confirm.
 * Basis: soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"loads":[{"name":"left jack","load":"3000 lb","pressure":"148 psi","x":"4 ft","y":"6 ft","position":"interior"},{"name":"right jack","load":"3000 lb","pressure":"148 psi","x":"9 ft","y":"6 ft","position":"edge"}],"rupture":"550 psi"}
 */
int ovs_thickness_needed_si(const double *loads_load_kn,
                            const double *loads_x_m,
                            const double *loads_y_m,
                            const int *loads_position,
                            int loads_rows,
                            double rupture_mpa,
                            const char *options_json,
                            int options_len,
                            double *results,
                            int results_len,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * Why ovs_thickness_needed_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_needed_us_why(const double *loads_load_lbf,
                                const double *loads_x_ft,
                                const double *loads_y_ft,
                                const int *loads_position,
                                int loads_rows,
                                double rupture_psi,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_thickness_needed_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_thickness_needed_si_why(const double *loads_load_kn,
                                const double *loads_x_m,
                                const double *loads_y_m,
                                const int *loads_position,
                                int loads_rows,
                                double rupture_mpa,
                                const char *options_json,
                                int options_len,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
 *
 * Equation: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
 * Taken for granted: the aisle takes its worst width; no joint in it.
 *
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `rupture_psi` (psi): modulus of rupture; at least 50 psi, at most 2000 psi.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `load_psf` (psf), out: load allowed on each unit of area.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled, from
 * memory: confirm.
 * Since 0.1.0.
 * Example: ovs_uniform_load_us(6, 100, 600, 2, ...) gives load_psf = 903.862.
 */
int ovs_uniform_load_us(double thickness_in,
                        double subgrade_pci,
                        double rupture_psi,
                        double safety_ratio,
                        double *load_psf,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.
 *
 * Equation: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
 * Taken for granted: the aisle takes its worst width; no joint in it.
 *
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `rupture_mpa` (MPa): modulus of rupture; at least 0.344737864658 MPa, at most 13.7895145863 MPa.
 * - `safety_ratio` (1): safety factor; at least 1 1, at most 10 1.
 * - `load_kpa` (kPa), out: load allowed on each unit of area.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled, from
 * memory: confirm.
 * Since 0.1.0.
 * Example: ovs_uniform_load_si(152.4, 27.1447, 4.13685, 2, ...) gives load_kpa = 43.2771.
 */
int ovs_uniform_load_si(double thickness_mm,
                        double subgrade_mpa_per_m,
                        double rupture_mpa,
                        double safety_ratio,
                        double *load_kpa,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * ovs_uniform_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_uniform_load_us_array(const double *thickness_in,
                              const double *subgrade_pci,
                              const double *rupture_psi,
                              const double *safety_ratio,
                              double *load_psf,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * ovs_uniform_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_uniform_load_si_array(const double *thickness_mm,
                              const double *subgrade_mpa_per_m,
                              const double *rupture_mpa,
                              const double *safety_ratio,
                              double *load_kpa,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_uniform_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_uniform_load_us_why(double thickness_in,
                            double subgrade_pci,
                            double rupture_psi,
                            double safety_ratio,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_uniform_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_uniform_load_si_why(double thickness_mm,
                            double subgrade_mpa_per_m,
                            double rupture_mpa,
                            double safety_ratio,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free
 * edge.
 *
 * Equation: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength) psi, S =
 * thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000 sqrt(strength) psi.
 * Taken for granted: a beam without end on springs, the wall long.
 *
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `strength_psi` (psi): compressive strength f'c; at least 1000 psi, at most 15000 psi.
 * - `place`: where the wall stands; 0 middle or doweled joint, 1 free edge.
 * - `load_lbf_per_ft` (lbf/ft), out: load allowed on each unit of length.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2 read,
 * forms recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_wall_load_us(6, 100, 4000, 1, ...) gives load_lbf_per_ft = 563.026.
 */
int ovs_wall_load_us(double thickness_in,
                     double subgrade_pci,
                     double strength_psi,
                     int place,
                     double *load_lbf_per_ft,
                     int *notes,
                     char *msg,
                     int msg_len);

/**
 * The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free
 * edge.
 *
 * Equation: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength) psi, S =
 * thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000 sqrt(strength) psi.
 * Taken for granted: a beam without end on springs, the wall long.
 *
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `strength_mpa` (MPa): compressive strength f'c; at least 6.89475729317 MPa, at most 103.421359398 MPa.
 * - `place`: where the wall stands; 0 middle or doweled joint, 1 free edge.
 * - `load_kn_per_m` (kN/m), out: load allowed on each unit of length.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2 read,
 * forms recalled, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_wall_load_si(152.4, 27.1447, 27.579, 1, ...) gives load_kn_per_m = 8.21674.
 */
int ovs_wall_load_si(double thickness_mm,
                     double subgrade_mpa_per_m,
                     double strength_mpa,
                     int place,
                     double *load_kn_per_m,
                     int *notes,
                     char *msg,
                     int msg_len);

/**
 * ovs_wall_load_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_wall_load_us_array(const double *thickness_in,
                           const double *subgrade_pci,
                           const double *strength_psi,
                           const int *place,
                           double *load_lbf_per_ft,
                           int *notes,
                           int n,
                           int *bad_index,
                           char *msg,
                           int msg_len);

/**
 * ovs_wall_load_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_wall_load_si_array(const double *thickness_mm,
                           const double *subgrade_mpa_per_m,
                           const double *strength_mpa,
                           const int *place,
                           double *load_kn_per_m,
                           int *notes,
                           int n,
                           int *bad_index,
                           char *msg,
                           int msg_len);

/**
 * Why ovs_wall_load_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_wall_load_us_why(double thickness_in,
                         double subgrade_pci,
                         double strength_psi,
                         int place,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * Why ovs_wall_load_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_wall_load_si_why(double thickness_mm,
                         double subgrade_mpa_per_m,
                         double strength_mpa,
                         int place,
                         char *text,
                         int text_len,
                         int *needed);

/**
 * Bradbury's coefficient of curling for a side of a slab.
 *
 * Equation: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness sqrt 8).
 * Taken for granted: a strip free at both ends.
 *
 * - `side_ft` (ft): side of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
 * - `stiffness_in` (in): radius of relative stiffness; at least 0.393700787402 in, at most 1968.50393701 in.
 * - `coefficient_ratio` (1), out: Bradbury's coefficient.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
 * Analysis and Design (1938), curling, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_curling_coefficient_us(25, 30.57, ...) gives coefficient_ratio = 1.07887.
 */
int ovs_curling_coefficient_us(double side_ft,
                               double stiffness_in,
                               double *coefficient_ratio,
                               int *notes,
                               char *msg,
                               int msg_len);

/**
 * Bradbury's coefficient of curling for a side of a slab.
 *
 * Equation: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness sqrt 8).
 * Taken for granted: a strip free at both ends.
 *
 * - `side_m` (m): side of the slab between joints; at least 0.1 m, at most 200 m.
 * - `stiffness_mm` (mm): radius of relative stiffness; at least 10 mm, at most 50000 mm.
 * - `coefficient_ratio` (1), out: Bradbury's coefficient.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
 * Analysis and Design (1938), curling, from memory: confirm.
 * Since 0.1.0.
 * Example: ovs_curling_coefficient_si(7.62, 776.478, ...) gives coefficient_ratio = 1.07887.
 */
int ovs_curling_coefficient_si(double side_m,
                               double stiffness_mm,
                               double *coefficient_ratio,
                               int *notes,
                               char *msg,
                               int msg_len);

/**
 * ovs_curling_coefficient_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_curling_coefficient_us_array(const double *side_ft,
                                     const double *stiffness_in,
                                     double *coefficient_ratio,
                                     int *notes,
                                     int n,
                                     int *bad_index,
                                     char *msg,
                                     int msg_len);

/**
 * ovs_curling_coefficient_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_curling_coefficient_si_array(const double *side_m,
                                     const double *stiffness_mm,
                                     double *coefficient_ratio,
                                     int *notes,
                                     int n,
                                     int *bad_index,
                                     char *msg,
                                     int msg_len);

/**
 * Why ovs_curling_coefficient_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_curling_coefficient_us_why(double side_ft,
                                   double stiffness_in,
                                   char *text,
                                   int text_len,
                                   int *needed);

/**
 * Why ovs_curling_coefficient_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_curling_coefficient_si_why(double side_m, double stiffness_mm, char *text, int text_len, int *needed);

/**
 * Stress from a difference of temperature between top and bottom of a slab.
 *
 * Equation: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
 * poisson^2)) (C along + poisson C across).
 * Taken for granted: temperature straight through the thickness, the slab held down by its weight; tension is at
 * the bottom where the top is warmer, else at the top.
 *
 * - `length_ft` (ft): length of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
 * - `width_ft` (ft): width of the slab between joints; at least 0.328083989501 ft, at most 656.167979003 ft.
 * - `thickness_in` (in): thickness of the slab; more than 0 in, at most 78.7401574803 in.
 * - `modulus_psi` (psi): modulus of elasticity of the concrete; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_pci` (pci): subgrade reaction k; at least 5 pci, at most 2000 pci.
 * - `expansion_per_degf` (/degF): coefficient of thermal expansion; at least 0.000000555555555556 /degF, at most
 *   0.0000166666666667 /degF.
 * - `difference_degf` (degF): between top and bottom, whichever is warmer; at least 0 degF, at most 108 degF.
 * - `interior_length_psi` (psi), out: stress in the middle, along the length.
 * - `interior_width_psi` (psi), out: stress in the middle, along the width.
 * - `edge_length_psi` (psi), out: stress half way of an edge that runs along the length.
 * - `edge_width_psi` (psi), out: stress half way of an edge that runs along the width.
 * - `of_length_ratio` (1), out: coefficient C of the length.
 * - `of_width_ratio` (1), out: coefficient C of the width.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
 * Analysis and Design (1938), curling, from memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Since 0.1.0.
 * Example: ovs_curling_stress_us(25, 12, 8, 4000000, 0.15, 200, 0.000005, 20, ...) gives interior_length_psi = 240.356, interior_width_psi = 163.907, edge_length_psi = 215.77, edge_width_psi = 127.854, of_length_ratio = 1.07885, of_width_ratio = 0.63927.
 */
int ovs_curling_stress_us(double length_ft,
                          double width_ft,
                          double thickness_in,
                          double modulus_psi,
                          double poisson_ratio,
                          double subgrade_pci,
                          double expansion_per_degf,
                          double difference_degf,
                          double *interior_length_psi,
                          double *interior_width_psi,
                          double *edge_length_psi,
                          double *edge_width_psi,
                          double *of_length_ratio,
                          double *of_width_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * Stress from a difference of temperature between top and bottom of a slab.
 *
 * Equation: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
 * poisson^2)) (C along + poisson C across).
 * Taken for granted: temperature straight through the thickness, the slab held down by its weight; tension is at
 * the bottom where the top is warmer, else at the top.
 *
 * - `length_m` (m): length of the slab between joints; at least 0.1 m, at most 200 m.
 * - `width_m` (m): width of the slab between joints; at least 0.1 m, at most 200 m.
 * - `thickness_mm` (mm): thickness of the slab; more than 0 mm, at most 2000 mm.
 * - `modulus_mpa` (MPa): modulus of elasticity of the concrete; at least 100 MPa, at most 100000 MPa.
 * - `poisson_ratio` (1): Poisson's ratio of the concrete, often 0.15; at least 0 1, at most 0.5 1.
 * - `subgrade_mpa_per_m` (MPa/m): subgrade reaction k; at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m.
 * - `expansion_per_degc` (/degC): coefficient of thermal expansion; at least 0.000001 /degC, at most 0.00003
 *   /degC.
 * - `difference_k` (K): between top and bottom, whichever is warmer; at least 0 K, at most 60 K.
 * - `interior_length_mpa` (MPa), out: stress in the middle, along the length.
 * - `interior_width_mpa` (MPa), out: stress in the middle, along the width.
 * - `edge_length_mpa` (MPa), out: stress half way of an edge that runs along the length.
 * - `edge_width_mpa` (MPa), out: stress half way of an edge that runs along the width.
 * - `of_length_ratio` (1), out: coefficient C of the length.
 * - `of_width_ratio` (1), out: coefficient C of the width.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang, Pavement
 * Analysis and Design (1938), curling, from memory: confirm.
 * Basis: l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness.
 * Since 0.1.0.
 * Example: ovs_curling_stress_si(7.62, 3.6576, 203.2, 27579, 0.15, 54.2894, 0.000009, 11.1111, ...) gives interior_length_mpa = 1.6572, interior_width_mpa = 1.1301, edge_length_mpa = 1.48768, edge_width_mpa = 0.881522, of_length_ratio = 1.07885, of_width_ratio = 0.63927.
 */
int ovs_curling_stress_si(double length_m,
                          double width_m,
                          double thickness_mm,
                          double modulus_mpa,
                          double poisson_ratio,
                          double subgrade_mpa_per_m,
                          double expansion_per_degc,
                          double difference_k,
                          double *interior_length_mpa,
                          double *interior_width_mpa,
                          double *edge_length_mpa,
                          double *edge_width_mpa,
                          double *of_length_ratio,
                          double *of_width_ratio,
                          int *notes,
                          char *msg,
                          int msg_len);

/**
 * ovs_curling_stress_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_curling_stress_us_array(const double *length_ft,
                                const double *width_ft,
                                const double *thickness_in,
                                const double *modulus_psi,
                                const double *poisson_ratio,
                                const double *subgrade_pci,
                                const double *expansion_per_degf,
                                const double *difference_degf,
                                double *interior_length_psi,
                                double *interior_width_psi,
                                double *edge_length_psi,
                                double *edge_width_psi,
                                double *of_length_ratio,
                                double *of_width_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * ovs_curling_stress_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_curling_stress_si_array(const double *length_m,
                                const double *width_m,
                                const double *thickness_mm,
                                const double *modulus_mpa,
                                const double *poisson_ratio,
                                const double *subgrade_mpa_per_m,
                                const double *expansion_per_degc,
                                const double *difference_k,
                                double *interior_length_mpa,
                                double *interior_width_mpa,
                                double *edge_length_mpa,
                                double *edge_width_mpa,
                                double *of_length_ratio,
                                double *of_width_ratio,
                                int *notes,
                                int n,
                                int *bad_index,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_curling_stress_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_curling_stress_us_why(double length_ft,
                              double width_ft,
                              double thickness_in,
                              double modulus_psi,
                              double poisson_ratio,
                              double subgrade_pci,
                              double expansion_per_degf,
                              double difference_degf,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Why ovs_curling_stress_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_curling_stress_si_why(double length_m,
                              double width_m,
                              double thickness_mm,
                              double modulus_mpa,
                              double poisson_ratio,
                              double subgrade_mpa_per_m,
                              double expansion_per_degc,
                              double difference_k,
                              char *text,
                              int text_len,
                              int *needed);

/**
 * Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
 *
 * Equation: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab times its
 * modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus / overlay_modulus) old_slab^3, the
 * moment shared as the rigidities.
 * Taken for granted: both layers take one curvature and have one Poisson's ratio; unbonded without friction;
 * partly bonded counts as unbonded; the plate has tension below.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `overlay_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
 * - `overlay_modulus_psi` (psi): modulus of elasticity of the overlay; at least 14503.773773 psi, at most
 *   14503773.773 psi.
 * - `old_slab_in` (in): the old slab's thickness; more than 0 in, at most 78.7401574803 in.
 * - `old_modulus_psi` (psi): the old slab's modulus of elasticity; at least 14503.773773 psi, at most 14503773.773
 *   psi.
 * - `equivalent_in` (in), out: thickness of the plate of the overlay's concrete that is as stiff as both.
 * - `overlay_share_ratio` (1), out: share of the rigidity that the overlay brings.
 * - `overlay_top_ratio` (1), out: stress at the top of the overlay, over the plate's bending stress; tension
 *   positive.
 * - `overlay_bottom_ratio` (1), out: at the bottom of the overlay.
 * - `old_top_ratio` (1), out: old slab, at its top.
 * - `old_bottom_ratio` (1), out: old slab, at its bottom.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
 * rigidity: derived.
 * Since 0.1.0.
 * Example: ovs_two_layers_us(0, 2, 4000000, 4, 3000000, ...) gives equivalent_in = 5.70417, overlay_share_ratio = 0.462069, overlay_top_ratio = -0.981737, overlay_bottom_ratio = -0.280496, old_top_ratio = -0.210372, old_bottom_ratio = 0.841489.
 */
int ovs_two_layers_us(int bond,
                      double overlay_in,
                      double overlay_modulus_psi,
                      double old_slab_in,
                      double old_modulus_psi,
                      double *equivalent_in,
                      double *overlay_share_ratio,
                      double *overlay_top_ratio,
                      double *overlay_bottom_ratio,
                      double *old_top_ratio,
                      double *old_bottom_ratio,
                      int *notes,
                      char *msg,
                      int msg_len);

/**
 * Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.
 *
 * Equation: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab times its
 * modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus / overlay_modulus) old_slab^3, the
 * moment shared as the rigidities.
 * Taken for granted: both layers take one curvature and have one Poisson's ratio; unbonded without friction;
 * partly bonded counts as unbonded; the plate has tension below.
 *
 * - `bond`: how the overlay holds to the old slab; 0 bonded, 1 partly bonded, 2 unbonded.
 * - `overlay_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
 * - `overlay_modulus_mpa` (MPa): modulus of elasticity of the overlay; at least 100 MPa, at most 100000 MPa.
 * - `old_slab_mm` (mm): the old slab's thickness; more than 0 mm, at most 2000 mm.
 * - `old_modulus_mpa` (MPa): the old slab's modulus of elasticity; at least 100 MPa, at most 100000 MPa.
 * - `equivalent_mm` (mm), out: thickness of the plate of the overlay's concrete that is as stiff as both.
 * - `overlay_share_ratio` (1), out: share of the rigidity that the overlay brings.
 * - `overlay_top_ratio` (1), out: stress at the top of the overlay, over the plate's bending stress; tension
 *   positive.
 * - `overlay_bottom_ratio` (1), out: at the bottom of the overlay.
 * - `old_top_ratio` (1), out: old slab, at its top.
 * - `old_bottom_ratio` (1), out: old slab, at its bottom.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion to
 * rigidity: derived.
 * Since 0.1.0.
 * Example: ovs_two_layers_si(0, 50.8, 27579, 101.6, 20684.3, ...) gives equivalent_mm = 144.886, overlay_share_ratio = 0.462069, overlay_top_ratio = -0.981737, overlay_bottom_ratio = -0.280496, old_top_ratio = -0.210372, old_bottom_ratio = 0.841489.
 */
int ovs_two_layers_si(int bond,
                      double overlay_mm,
                      double overlay_modulus_mpa,
                      double old_slab_mm,
                      double old_modulus_mpa,
                      double *equivalent_mm,
                      double *overlay_share_ratio,
                      double *overlay_top_ratio,
                      double *overlay_bottom_ratio,
                      double *old_top_ratio,
                      double *old_bottom_ratio,
                      int *notes,
                      char *msg,
                      int msg_len);

/**
 * ovs_two_layers_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_two_layers_us_array(const int *bond,
                            const double *overlay_in,
                            const double *overlay_modulus_psi,
                            const double *old_slab_in,
                            const double *old_modulus_psi,
                            double *equivalent_in,
                            double *overlay_share_ratio,
                            double *overlay_top_ratio,
                            double *overlay_bottom_ratio,
                            double *old_top_ratio,
                            double *old_bottom_ratio,
                            int *notes,
                            int n,
                            int *bad_index,
                            char *msg,
                            int msg_len);

/**
 * ovs_two_layers_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_two_layers_si_array(const int *bond,
                            const double *overlay_mm,
                            const double *overlay_modulus_mpa,
                            const double *old_slab_mm,
                            const double *old_modulus_mpa,
                            double *equivalent_mm,
                            double *overlay_share_ratio,
                            double *overlay_top_ratio,
                            double *overlay_bottom_ratio,
                            double *old_top_ratio,
                            double *old_bottom_ratio,
                            int *notes,
                            int n,
                            int *bad_index,
                            char *msg,
                            int msg_len);

/**
 * Why ovs_two_layers_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_two_layers_us_why(int bond,
                          double overlay_in,
                          double overlay_modulus_psi,
                          double old_slab_in,
                          double old_modulus_psi,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * Why ovs_two_layers_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_two_layers_si_why(int bond,
                          double overlay_mm,
                          double overlay_modulus_mpa,
                          double old_slab_mm,
                          double old_modulus_mpa,
                          char *text,
                          int text_len,
                          int *needed);

/**
 * What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it
 * stops there.
 *
 * Equation: weight = density x thickness.
 * Taken for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs over voids.
 *
 * - `thickness_in` (in): thickness of the overlay; more than 0 in, at most 78.7401574803 in.
 * - `density_lb_per_ft3` (lb/ft3): unit weight, 150 lb/ft3 with steel; at least 49.9423684609 lb/ft3, at most
 *   218.497862017 lb/ft3.
 * - `support`: what carries the old slab; 0 ground, 1 suspended, 2 unknown.
 * - `weight_psf` (psf), out: added dead load.
 * - `next`, out: what follows; 0 go on, 1 find out, 2 stop.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: w = unit weight x thickness: derived.
 * Basis: what more a suspended slab carries is a structural engineer's to say: common practice, no source.
 * Since 0.1.0.
 * Example: ovs_added_weight_us(3, 150, 0, ...) gives weight_psf = 37.5, next = 0.
 */
int ovs_added_weight_us(double thickness_in,
                        double density_lb_per_ft3,
                        int support,
                        double *weight_psf,
                        int *next,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it
 * stops there.
 *
 * Equation: weight = density x thickness.
 * Taken for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs over voids.
 *
 * - `thickness_mm` (mm): thickness of the overlay; more than 0 mm, at most 2000 mm.
 * - `density_kg_per_m3` (kg/m3): unit weight, 150 lb/ft3 with steel; at least 800 kg/m3, at most 3500 kg/m3.
 * - `support`: what carries the old slab; 0 ground, 1 suspended, 2 unknown.
 * - `weight_kpa` (kPa), out: added dead load.
 * - `next`, out: what follows; 0 go on, 1 find out, 2 stop.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN.
 * Basis: w = unit weight x thickness: derived.
 * Basis: what more a suspended slab carries is a structural engineer's to say: common practice, no source.
 * Since 0.1.0.
 * Example: ovs_added_weight_si(76.2, 2402.77, 0, ...) gives weight_kpa = 1.79551, next = 0.
 */
int ovs_added_weight_si(double thickness_mm,
                        double density_kg_per_m3,
                        int support,
                        double *weight_kpa,
                        int *next,
                        int *notes,
                        char *msg,
                        int msg_len);

/**
 * ovs_added_weight_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_added_weight_us_array(const double *thickness_in,
                              const double *density_lb_per_ft3,
                              const int *support,
                              double *weight_psf,
                              int *next,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * ovs_added_weight_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_added_weight_si_array(const double *thickness_mm,
                              const double *density_kg_per_m3,
                              const int *support,
                              double *weight_kpa,
                              int *next,
                              int *notes,
                              int n,
                              int *bad_index,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_added_weight_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_added_weight_us_why(double thickness_in,
                            double density_lb_per_ft3,
                            int support,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_added_weight_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_added_weight_si_why(double thickness_mm,
                            double density_kg_per_m3,
                            int support,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The volume of a slab, a ramp or a step from its length, width and mean depth.
 *
 * Equation: volume = length x width x depth.
 * Taken for granted: rectangular in plan; the depth is the mean one.
 *
 * - `length_ft` (ft): length; more than 0 ft, at most 32808.3989501 ft.
 * - `width_ft` (ft): width; more than 0 ft, at most 32808.3989501 ft.
 * - `depth_in` (in): mean depth; more than 0 in, at most 3937.00787402 in.
 * - `volume_yd3` (yd3), out: volume.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_block_us(60, 30, 4, ...) gives volume_yd3 = 22.2222.
 */
int ovs_block_us(double length_ft,
                 double width_ft,
                 double depth_in,
                 double *volume_yd3,
                 int *notes,
                 char *msg,
                 int msg_len);

/**
 * The volume of a slab, a ramp or a step from its length, width and mean depth.
 *
 * Equation: volume = length x width x depth.
 * Taken for granted: rectangular in plan; the depth is the mean one.
 *
 * - `length_m` (m): length; more than 0 m, at most 10000 m.
 * - `width_m` (m): width; more than 0 m, at most 10000 m.
 * - `depth_mm` (mm): mean depth; more than 0 mm, at most 100000 mm.
 * - `volume_m3` (m3), out: volume.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_block_si(18.288, 9.144, 101.6, ...) gives volume_m3 = 16.9901.
 */
int ovs_block_si(double length_m,
                 double width_m,
                 double depth_mm,
                 double *volume_m3,
                 int *notes,
                 char *msg,
                 int msg_len);

/**
 * ovs_block_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_block_us_array(const double *length_ft,
                       const double *width_ft,
                       const double *depth_in,
                       double *volume_yd3,
                       int *notes,
                       int n,
                       int *bad_index,
                       char *msg,
                       int msg_len);

/**
 * ovs_block_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_block_si_array(const double *length_m,
                       const double *width_m,
                       const double *depth_mm,
                       double *volume_m3,
                       int *notes,
                       int n,
                       int *bad_index,
                       char *msg,
                       int msg_len);

/**
 * Why ovs_block_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_block_us_why(double length_ft,
                     double width_ft,
                     double depth_in,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * Why ovs_block_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_block_si_why(double length_m, double width_m, double depth_mm, char *text, int text_len, int *needed);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
 * - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
 * - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `volume_yd3` (yd3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_us(12, 2, 1, 0, ...) gives volume_yd3 = 0.444444.
 */
int ovs_prismoid_us(double length_ft,
                    double first_ft2,
                    double middle_ft2,
                    double last_ft2,
                    double *volume_yd3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
 * - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
 * - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
 * - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
 * - `volume_m3` (m3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_si(3.6576, 0.185806, 0.092903, 0, ...) gives volume_m3 = 0.339802.
 */
int ovs_prismoid_si(double length_m,
                    double first_m2,
                    double middle_m2,
                    double last_m2,
                    double *volume_m3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * ovs_prismoid_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_us_array(const double *length_ft,
                          const double *first_ft2,
                          const double *middle_ft2,
                          const double *last_ft2,
                          double *volume_yd3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * ovs_prismoid_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_si_array(const double *length_m,
                          const double *first_m2,
                          const double *middle_m2,
                          const double *last_m2,
                          double *volume_m3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * Why ovs_prismoid_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_us_why(double length_ft,
                        double first_ft2,
                        double middle_ft2,
                        double last_ft2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_prismoid_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_si_why(double length_m,
                        double first_m2,
                        double middle_m2,
                        double last_m2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
 * - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
 * - `loads`, out: truck loads.
 * - `last_yd3` (yd3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_us(14, 9.8, ...) gives loads = 2, last_yd3 = 4.2.
 */
int ovs_trucks_us(double ordered_yd3,
                  double capacity_yd3,
                  int *loads,
                  double *last_yd3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
 * - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
 * - `loads`, out: truck loads.
 * - `last_m3` (m3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_si(10.7038, 7.49264, ...) gives loads = 2, last_m3 = 3.21113.
 */
int ovs_trucks_si(double ordered_m3,
                  double capacity_m3,
                  int *loads,
                  double *last_m3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * ovs_trucks_us for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_us_array(const double *ordered_yd3,
                        const double *capacity_yd3,
                        int *loads,
                        double *last_yd3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * ovs_trucks_si for each of `n` elements; an array may be input and result at once.
 *
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_si_array(const double *ordered_m3,
                        const double *capacity_m3,
                        int *loads,
                        double *last_m3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * Why ovs_trucks_us refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_us_why(double ordered_yd3, double capacity_yd3, char *text, int text_len, int *needed);

/**
 * Why ovs_trucks_si refuses these inputs, in full; else the meaning of its note, or nothing.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_si_why(double ordered_m3, double capacity_m3, char *text, int text_len, int *needed);

/**
 * What to order: net volume, named allowances, the plant's step, trucks.
 *
 * Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
 * Taken for granted: allowances are shares of the net volume and add up.
 *
 * - `floor_yd3` (yd3): volume of the floor; at least 0 yd3, at most 130795.061931 yd3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `extras`: volumes poured beside the floor; may be left out.
 *   - `name` of `extras`: what it is for; required.
 *   - `volume` of `extras` (yd3): how much; at least 0 yd3, at most 130795.061931 yd3; required.
 *   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
 *     floor: what sticks to tools and strike-off.
 *   - `name` of `allowances`: what it is for; required.
 *   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %; required.
 *   - `step` (yd3): the step the plant sells by; at least 0.00130795061931 yd3, at most 6.53975309657 yd3; where
 *     left out 1/4 yd3, because plants usually sell by the quarter yard.
 *   - `capacity` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3; where left
 *     out 10 yd3, because a full truck carries about so much.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_ORDER_NET (yd3): sum of what is poured.
 *   - OVS_ORDER_FIGURED (yd3): net volume and allowances.
 *   - OVS_ORDER_ORDERED (yd3): figured volume rounded up to the step.
 *   - OVS_ORDER_SPARE (yd3): ordered over figured.
 *   - OVS_ORDER_LOADS: truck loads.
 *   - OVS_ORDER_LAST (yd3): what the last truck carries.
 *   - OVS_ORDER_ALLOWED: each allowance as a volume.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
 * Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
 * on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
 * Basis: plants sell in steps of 1/4 yd3: common practice, no source.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
 */
ovs_answer *ovs_order_us(double floor_yd3,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * What to order: net volume, named allowances, the plant's step, trucks.
 *
 * Equation: figured = net + sum(net x share); ordered = figured rounded up to the step.
 * Taken for granted: allowances are shares of the net volume and add up.
 *
 * - `floor_m3` (m3): volume of the floor; at least 0 m3, at most 100000 m3.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `extras`: volumes poured beside the floor; may be left out.
 *   - `name` of `extras`: what it is for; required.
 *   - `volume` of `extras` (m3): how much; at least 0 m3, at most 100000 m3; required.
 *   - `allowances`: shares allowed on top; where left out [{"name": "waste", "share": "3 %"}], because a surveyed
 *     floor: what sticks to tools and strike-off.
 *   - `name` of `allowances`: what it is for; required.
 *   - `share` of `allowances` (%): share of the net volume; at least 0 %, at most 50 %; required.
 *   - `step` (m3): the step the plant sells by; at least 0.001 m3, at most 5 m3; where left out 1/4 yd3, because
 *     plants usually sell by the quarter yard.
 *   - `capacity` (m3): what one truck carries; at least 0.1 m3, at most 20 m3; where left out 10 yd3, because a
 *     full truck carries about so much.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_ORDER_NET (m3): sum of what is poured.
 *   - OVS_ORDER_FIGURED (m3): net volume and allowances.
 *   - OVS_ORDER_ORDERED (m3): figured volume rounded up to the step.
 *   - OVS_ORDER_SPARE (m3): ordered over figured.
 *   - OVS_ORDER_LOADS: truck loads.
 *   - OVS_ORDER_LAST (m3): what the last truck carries.
 *   - OVS_ORDER_ALLOWED: each allowance as a volume.
 *
 * Refuses with OVS_UNIT_WRONG, OVS_NOT_FINITE, OVS_NEGATIVE, OVS_OUT_OF_RANGE.
 * Basis: 5 to 10 % for waste and uneven thickness on ground; less where the surface is surveyed: Extension lesson
 * on estimating concrete (after Cooper, Agricultural Mechanics), waste and uneven thickness.
 * Basis: plants sell in steps of 1/4 yd3: common practice, no source.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range
 * 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"floor":"8.78 yd3","extras":[{"name":"ramp","volume":"0.59 yd3"}]}
 */
ovs_answer *ovs_order_si(double floor_m3,
                         const char *options_json,
                         int options_len,
                         int *status,
                         int *notes,
                         int notes_len,
                         char *msg,
                         int msg_len);

/**
 * Why ovs_order_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_order_us_why(double floor_yd3,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * Why ovs_order_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_order_si_why(double floor_m3,
                     const char *options_json,
                     int options_len,
                     char *text,
                     int text_len,
                     int *needed);

/**
 * Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
 *
 * Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
 * |mean z|); S over n - 1.
 * Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
 *
 * - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
 * - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
 *     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
 *   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
 *     115.8 mm; where left out 4.57 in, because the text in inches came first.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
 *   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
 *   - OVS_FLATNESS_LINE_LENGTH (ft): length of the line.
 *   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
 *   - OVS_FLATNESS_LINE_Q_MEAN (in): their mean.
 *   - OVS_FLATNESS_LINE_Q_DEVIATION (in): their standard deviation.
 *   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
 *   - OVS_FLATNESS_LINE_Z_MEAN (in): their mean.
 *   - OVS_FLATNESS_LINE_Z_DEVIATION (in): their standard deviation; none of fewer than two.
 *   - OVS_FLATNESS_LINE_Q: the bends.
 *   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
 * OVS_PROFILE_SHORT.
 * Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
 * floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
 * levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
 */
ovs_answer *ovs_flatness_line_us(const double *readings_elevation_in,
                                 int readings_rows,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.
 *
 * Equation: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3 Sz +
 * |mean z|); S over n - 1.
 * Taken for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor that falls.
 *
 * - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
 * - `readings_rows`: the readings: how many rows, each a reading, in order along the line; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
 *     left out 12 in, because the standard in inches reads every foot.
 *   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
 *     115.8 mm; where left out 4.57 in, because the text in inches came first.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FLATNESS_LINE_FF (1): flatness; none for a perfect line.
 *   - OVS_FLATNESS_LINE_FL (1): levelness; none for fewer than 12 readings and for a level line.
 *   - OVS_FLATNESS_LINE_LENGTH (m): length of the line.
 *   - OVS_FLATNESS_LINE_Q_COUNT: how many bends.
 *   - OVS_FLATNESS_LINE_Q_MEAN (mm): their mean.
 *   - OVS_FLATNESS_LINE_Q_DEVIATION (mm): their standard deviation.
 *   - OVS_FLATNESS_LINE_Z_COUNT: how many rises over ten spacings.
 *   - OVS_FLATNESS_LINE_Z_MEAN (mm): their mean.
 *   - OVS_FLATNESS_LINE_Z_DEVIATION (mm): their standard deviation; none of fewer than two.
 *   - OVS_FLATNESS_LINE_Q: the bends.
 *   - OVS_FLATNESS_LINE_Z: the rises over ten spacings.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_PROFILE_SPACING,
 * OVS_PROFILE_SHORT.
 * Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
 * floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
 * levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
 * Since 0.1.0.
 * Example, as JSON: {"readings":{"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in"]}}
 */
ovs_answer *ovs_flatness_line_si(const double *readings_elevation_mm,
                                 int readings_rows,
                                 const char *options_json,
                                 int options_len,
                                 int *status,
                                 int *notes,
                                 int notes_len,
                                 char *msg,
                                 int msg_len);

/**
 * Why ovs_flatness_line_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_line_us_why(const double *readings_elevation_in,
                             int readings_rows,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_flatness_line_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_line_si_why(const double *readings_elevation_mm,
                             int readings_rows,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
 * asked.
 *
 * Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
 * section reaches 3/5 of the least over all.
 * Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
 *
 * - `readings_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
 * - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
 *   in order along it; at least 1.
 * - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
 * - `outline`: the plan edge, which lines keep 2 ft from; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `line` of `readings`: name of the line; required.
 *   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
 *   - `spacing` (in): how far apart the readings stand: 12 in or 300 mm; at least 0.393700787402 in, at most
 *     393.700787402 in; where left out 12 in, because the standard in inches reads every foot.
 *   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
 *     115.8 mm; where left out 4.57 in, because the text in inches came first.
 *   - `sections`: the areas of the sections, or of the floor; may be left out.
 *   - `section` of `sections`: its name; required.
 *   - `area` of `sections` (ft2): its area; more than 0 ft2; required.
 *   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
 *     be left out.
 *   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
 *   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
 *     out.
 *   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
 *     by itself.
 *   - `places`: where the lines run; may be left out.
 *   - `line` of `places`: the line's name; required.
 *   - `x` of `places` (ft): its first reading, from the left; at least -328083.989501 ft, at most 328083.989501
 *     ft; required.
 *   - `y` of `places` (ft): its first reading, from the front; at least -328083.989501 ft, at most 328083.989501
 *     ft; required.
 *   - `toward_x` of `places` (ft): a place it runs towards, from the left; at least -328083.989501 ft, at most
 *     328083.989501 ft; required.
 *   - `toward_y` of `places` (ft): a place it runs towards, from the front; at least -328083.989501 ft, at most
 *     328083.989501 ft; required.
 *   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
 *   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FLATNESS_FF (1): flatness over all.
 *   - OVS_FLATNESS_FL (1): levelness over all.
 *   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
 *   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
 *   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
 *   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
 *   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
 *     confirm locally.
 *   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
 *     confirm locally.
 *   - OVS_FLATNESS_LINES: the lines.
 *   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
 * OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
 * Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
 * floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
 * levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
 * Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
 * floor levelness numbers (any), least number of readings, from memory: confirm.
 * Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
 * construction (10), table 4.8.5.1; 4.8.5.3.
 * Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
 * floors that fall (several), levelness, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
 */
ovs_answer *ovs_flatness_us(const double *readings_elevation_in,
                            int readings_rows,
                            const ovs_finish *finish,
                            const ovs_outline *outline,
                            const char *options_json,
                            int options_len,
                            int *status,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is
 * asked.
 *
 * Equation: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area; every
 * section reaches 3/5 of the least over all.
 * Taken for granted: readings of all lines equally far apart; on a floor that falls levelness is not used.
 *
 * - `readings_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
 * - `readings_rows`: the readings of all lines: how many rows, each a reading; those of one line stand together,
 *   in order along it; at least 1.
 * - `finish`: the plan: where it bends, readings of lines with a place are left out; may be null.
 * - `outline`: the plan edge, which lines keep 2 ft from; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `line` of `readings`: name of the line; required.
 *   - `section` of `readings`: part of the floor the line lies in; needed once a line; may be left out.
 *   - `spacing` (mm): how far apart the readings stand: 12 in or 300 mm; at least 10 mm, at most 10000 mm; where
 *     left out 12 in, because the standard in inches reads every foot.
 *   - `factor`: the constant for flatness, as the standard's text in inches or in millimetres has it; 0 4.57 in, 1
 *     115.8 mm; where left out 4.57 in, because the text in inches came first.
 *   - `sections`: the areas of the sections, or of the floor; may be left out.
 *   - `section` of `sections`: its name; required.
 *   - `area` of `sections` (m2): its area; more than 0 m2; required.
 *   - `flatness_class`: the class asked; 0 conventional, 1 moderately flat, 2 flat, 3 very flat, 4 super flat; may
 *     be left out.
 *   - `least_ff` (1): flatness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left out.
 *   - `least_fl` (1): levelness asked over all, in place of a class; at least 1 1, at most 1000 1; may be left
 *     out.
 *   - `falls`: whether the floor is to fall; 0 no, 1 yes; where left out no, because a finish that is given tells
 *     by itself.
 *   - `places`: where the lines run; may be left out.
 *   - `line` of `places`: the line's name; required.
 *   - `x` of `places` (m): its first reading, from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `places` (m): its first reading, from the front; at least -100000 m, at most 100000 m; required.
 *   - `toward_x` of `places` (m): a place it runs towards, from the left; at least -100000 m, at most 100000 m;
 *     required.
 *   - `toward_y` of `places` (m): a place it runs towards, from the front; at least -100000 m, at most 100000 m;
 *     required.
 *   - `finish`: the plan: where it bends, readings of lines with a place are left out; may be left out.
 *   - `outline`: the plan edge, which lines keep 2 ft from; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_FLATNESS_FF (1): flatness over all.
 *   - OVS_FLATNESS_FL (1): levelness over all.
 *   - OVS_FLATNESS_ASKED_FF (1): flatness asked over all.
 *   - OVS_FLATNESS_ASKED_FL (1): levelness asked over all.
 *   - OVS_FLATNESS_LOCAL_FF (1): flatness asked of every section.
 *   - OVS_FLATNESS_LOCAL_FL (1): levelness asked of every section.
 *   - OVS_FLATNESS_FF_VERDICT: flatness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
 *     confirm locally.
 *   - OVS_FLATNESS_FL_VERDICT: levelness over all against what is asked; 0 meets, 1 short, 2 too few to judge, 3
 *     confirm locally.
 *   - OVS_FLATNESS_LINES: the lines.
 *   - OVS_FLATNESS_OF_SECTIONS: the parts of the floor.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_EMPTY_LIST, OVS_KEY_MISSING,
 * OVS_KEY_REPEATED, OVS_CONTRADICTION, OVS_NULL_POINTER, OVS_LINE_TOO_SHORT, OVS_PROFILE_SPACING,
 * OVS_PROFILE_SHORT, OVS_FLATNESS_SECTION, OVS_PROFILE_LINE_UNKNOWN.
 * Basis: q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM E1155,
 * floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Basis: lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness and floor
 * levelness numbers (M-96), lines and readings, as in the record of a measured floor, as quoted elsewhere.
 * Basis: at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor flatness and
 * floor levelness numbers (any), least number of readings, from memory: confirm.
 * Basis: FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
 * construction (10), table 4.8.5.1; 4.8.5.3.
 * Basis: levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork guidance on
 * floors that fall (several), levelness, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"readings":{"line":["A","A","A","A","A","A","A","A","A","A","A","A","A","B","B","B","B","B","B","B","B","B","B","B","B","B"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","100.12 in","100.13 in","100.11 in","100.10 in","100.13 in","100.05 in","100.06 in","99.98 in","99.99 in","100.04 in","100.08 in","100.06 in","100.11 in","100.15 in","100.12 in","100.16 in","100.13 in","100.09 in","100.12 in"]},"sections":{"section":["floor"],"area":["300 ft2"]},"flatness_class":"conventional","places":{"line":["A","B"],"x":["2 ft","2 ft"],"y":["3 ft","8 ft"],"toward_x":["15 ft","15 ft"],"toward_y":["3 ft","8 ft"]}}
 */
ovs_answer *ovs_flatness_si(const double *readings_elevation_mm,
                            int readings_rows,
                            const ovs_finish *finish,
                            const ovs_outline *outline,
                            const char *options_json,
                            int options_len,
                            int *status,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * Why ovs_flatness_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_us_why(const double *readings_elevation_in,
                        int readings_rows,
                        const ovs_finish *finish,
                        const ovs_outline *outline,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_flatness_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_si_why(const double *readings_elevation_mm,
                        int readings_rows,
                        const ovs_finish *finish,
                        const ovs_outline *outline,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * One F-number for several lines, by their readings, or for several sections, by their areas.
 *
 * Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
 * Taken for granted: all numbers are FF, or all are FL.
 *
 * - `parts_number_ratio` (1): its F-number; more than 0 1.
 * - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
 *     out.
 *   - `area` of `parts` (ft2): of a section: how large it is; more than 0 ft2; may be left out.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Since 0.1.0.
 * Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
 */
int ovs_flatness_combined_us(const double *parts_number_ratio,
                             int parts_rows,
                             const char *options_json,
                             int options_len,
                             double *results,
                             int results_len,
                             int *notes,
                             int notes_len,
                             char *msg,
                             int msg_len);

/**
 * One F-number for several lines, by their readings, or for several sections, by their areas.
 *
 * Equation: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
 * Taken for granted: all numbers are FF, or all are FL.
 *
 * - `parts_number_ratio` (1): its F-number; more than 0 1.
 * - `parts_rows`: the lines or the sections: how many rows, each a line or a section; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `readings` of `parts`: of a line: how many q for FF, how many z for FL; from 1 to 1000000000; may be left
 *     out.
 *   - `area` of `parts` (m2): of a section: how large it is; more than 0 m2; may be left out.
 * - `results`, `results_len`, out: as many as there is room for, by their constants:
 *   - OVS_FLATNESS_COMBINED_NUMBER (1): the number for all.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_EMPTY_LIST, OVS_KEY_MISSING, OVS_CONTRADICTION.
 * Basis: FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n / sum(n /
 * F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their combination, from memory:
 * confirm.
 * Since 0.1.0.
 * Example, as JSON: {"parts":{"number":["31 1","22 1","27 1"],"readings":[13,15,12]}}
 */
int ovs_flatness_combined_si(const double *parts_number_ratio,
                             int parts_rows,
                             const char *options_json,
                             int options_len,
                             double *results,
                             int results_len,
                             int *notes,
                             int notes_len,
                             char *msg,
                             int msg_len);

/**
 * Why ovs_flatness_combined_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_combined_us_why(const double *parts_number_ratio,
                                 int parts_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * Why ovs_flatness_combined_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_flatness_combined_si_why(const double *parts_number_ratio,
                                 int parts_rows,
                                 const char *options_json,
                                 int options_len,
                                 char *text,
                                 int text_len,
                                 int *needed);

/**
 * The gap under a straightedge laid along a line of readings, from each reading on.
 *
 * Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
 * Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
 * gap.
 *
 * - `profile_distance_ft` (ft): from the start of the line; at least -32808.3989501 ft, at most 32808.3989501 ft.
 * - `profile_elevation_in` (in): height of the floor; at least -393700.787402 in, at most 393700.787402 in.
 * - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
 *   spacing; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `length` (ft): length of the straightedge; more than 0 ft, at most 100 ft; where left out 10 ft, because the
 *     limits are told for 10 ft.
 *   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
 *     flat; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_STRAIGHTEDGE_GAP (in): the greatest gap.
 *   - OVS_STRAIGHTEDGE_GAP_AT (ft): where it is.
 *   - OVS_STRAIGHTEDGE_REST_1 (ft): first place the straightedge rests there.
 *   - OVS_STRAIGHTEDGE_REST_2 (ft): second place it rests there.
 *   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
 *   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
 *     in.
 *   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
 *   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
 *   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
 *     locally.
 *   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
 * OVS_PROFILE_ORDER.
 * Basis: plane and solid geometry: derived.
 * Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
 * straightedge of 10 ft, from memory: confirm.
 * Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
 * to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
 */
ovs_answer *ovs_straightedge_us(const double *profile_distance_ft,
                                const double *profile_elevation_in,
                                int profile_rows,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * The gap under a straightedge laid along a line of readings, from each reading on.
 *
 * Equation: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
 * Taken for granted: it rests on two readings; on a hump it may tip either way, and the end that stands up is no
 * gap.
 *
 * - `profile_distance_m` (m): from the start of the line; at least -10000 m, at most 10000 m.
 * - `profile_elevation_mm` (mm): height of the floor; at least -10000000 mm, at most 10000000 mm.
 * - `profile_rows`: the readings, three or more: how many rows, each a reading, in order along the line, at any
 *   spacing; at least 1.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `length` (m): length of the straightedge; more than 0 m, at most 30.48 m; where left out 10 ft, because the
 *     limits are told for 10 ft.
 *   - `flatness_class`: class to hold the gaps against; under 10 ft only; 0 conventional, 1 moderately flat, 2
 *     flat; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_STRAIGHTEDGE_GAP (mm): the greatest gap.
 *   - OVS_STRAIGHTEDGE_GAP_AT (m): where it is.
 *   - OVS_STRAIGHTEDGE_REST_1 (m): first place the straightedge rests there.
 *   - OVS_STRAIGHTEDGE_REST_2 (m): second place it rests there.
 *   - OVS_STRAIGHTEDGE_COUNT: how often it was laid down.
 *   - OVS_STRAIGHTEDGE_ABOUT_FF (1): flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
 *     in.
 *   - OVS_STRAIGHTEDGE_WITHIN_MOST (%): share of gaps within what nine in ten must keep.
 *   - OVS_STRAIGHTEDGE_WITHIN_ALL (%): share of gaps within what all must keep.
 *   - OVS_STRAIGHTEDGE_VERDICT: whether the class is kept; 0 meets, 1 short, 2 too few to judge, 3 confirm
 *     locally.
 *   - OVS_STRAIGHTEDGE_PLACEMENTS: the straightedge laid down from each reading on.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_CONTRADICTION, OVS_PROFILE_SHORT,
 * OVS_PROFILE_ORDER.
 * Basis: plane and solid geometry: derived.
 * Basis: nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete construction (10),
 * straightedge of 10 ft, from memory: confirm.
 * Basis: FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI 302.1R, guide
 * to concrete floor and slab construction (any), flatness against gaps, from memory: confirm.
 * Since 0.1.0.
 * Example, as JSON: {"profile":{"distance":["1 ft","2 ft","3 ft","4 ft","5 ft","6 ft","7 ft","8 ft","9 ft","10 ft","11 ft","12 ft"],"elevation":["100.02 in","100.10 in","100.13 in","100.11 in","100.05 in","100.09 in","100.08 in","99.92 in","99.98 in","100.11 in","100.10 in","100.13 in"]},"flatness_class":"flat"}
 */
ovs_answer *ovs_straightedge_si(const double *profile_distance_m,
                                const double *profile_elevation_mm,
                                int profile_rows,
                                const char *options_json,
                                int options_len,
                                int *status,
                                int *notes,
                                int notes_len,
                                char *msg,
                                int msg_len);

/**
 * Why ovs_straightedge_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_straightedge_us_why(const double *profile_distance_ft,
                            const double *profile_elevation_in,
                            int profile_rows,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * Why ovs_straightedge_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_straightedge_si_why(const double *profile_distance_m,
                            const double *profile_elevation_mm,
                            int profile_rows,
                            const char *options_json,
                            int options_len,
                            char *text,
                            int text_len,
                            int *needed);

/**
 * The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what
 * to mend.
 *
 * Equation: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of both;
 * slope = plane of least squares.
 * Taken for granted: both floors plane over each triangle of their shots; no approval: arithmetic on the shots.
 *
 * - `survey`: the old slab.
 * - `finish`: the plan.
 * - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `shots`: the shots of the new floor; may be left out.
 *   - `x` of `shots` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft; required.
 *   - `y` of `shots` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `elevation` of `shots` (ft): height above the job datum; at least -32808.3989501 ft, at most 32808.3989501
 *     ft; required.
 *   - `name` of `shots`: its name; may be left out.
 *   - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be left out.
 *   - `tolerance` (in): how far a shot may be off the plan; more than 0 in, at most 12 in; where left out 1/4 in,
 *     because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane.
 *   - `specified` (in): the thickness specified; at least 0 in, at most 120 in; may be left out.
 *   - `least` (in): the least thickness allowed anywhere; at least 0 in, at most 120 in; may be left out.
 *   - `surface`: how the floor is finished and used: its least fall; 0 trowelled, 1 broomed, 2 outdoors; may be
 *     left out.
 *   - `least_fall` (in/ft): the least fall, in place of that of the surface; at least 0 in/ft, at most 12 in/ft;
 *     may be left out.
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `y` of `drains` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (in): ponds shallower than this are left out; at least 0 in, at most 12 in; where left out 1/16
 *     in, because a rod hardly tells less.
 *   - `ordered` (yd3): concrete that came; at least 0 yd3, at most 13079.5061931 yd3; may be left out.
 *   - `left_over` (yd3): concrete that was left over; at least 0 yd3, at most 13079.5061931 yd3; may be left out.
 *   - `puddles`: puddles that were seen; may be left out.
 *   - `x` of `puddles` (ft): distance from the left; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `y` of `puddles` (ft): distance from the front; at least -328083.989501 ft, at most 328083.989501 ft;
 *     required.
 *   - `depth` of `puddles` (in): how deep; at least 0 in, at most 12 in; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_AS_BUILT_COUNT: how many shots on the work.
 *   - OVS_AS_BUILT_MISSED: how many of them are off by more than the tolerance.
 *   - OVS_AS_BUILT_MEAN_DEVIATION (in): mean of shot less planned; positive is high.
 *   - OVS_AS_BUILT_DEVIATION (in): standard deviation of shot less planned; none of one shot.
 *   - OVS_AS_BUILT_HIGHEST (in): greatest of shot less planned.
 *   - OVS_AS_BUILT_LOWEST (in): least of shot less planned.
 *   - OVS_AS_BUILT_MEAN_OVER_AREA (in): mean over the area of new floor less plan.
 *   - OVS_AS_BUILT_THICKNESS_MEAN (in): mean thickness got.
 *   - OVS_AS_BUILT_THICKNESS_LEAST (in): least thickness got.
 *   - OVS_AS_BUILT_LEAST_X (ft): where it is, from the left.
 *   - OVS_AS_BUILT_LEAST_Y (ft): where it is, from the front.
 *   - OVS_AS_BUILT_LEAST_MEASURED (in): least thickness got between the shots of the old slab.
 *   - OVS_AS_BUILT_THICKNESS_GREATEST (in): greatest thickness got.
 *   - OVS_AS_BUILT_GREATEST_X (ft): where that is, from the left.
 *   - OVS_AS_BUILT_GREATEST_Y (ft): where that is, from the front.
 *   - OVS_AS_BUILT_THINNER (ft2): area thinner than the least allowed, or else than specified.
 *   - OVS_AS_BUILT_PLANNED_MEAN (in): mean thickness planned.
 *   - OVS_AS_BUILT_PLANNED_VOLUME (yd3): concrete figured.
 *   - OVS_AS_BUILT_VOLUME (yd3): concrete in place, between old slab and new floor.
 *   - OVS_AS_BUILT_USED (yd3): concrete used: what came less what was left over.
 *   - OVS_AS_BUILT_UNACCOUNTED (yd3): used less in place.
 *   - OVS_AS_BUILT_USED_OVER_PLANNED (1): used over figured.
 *   - OVS_AS_BUILT_SAID: all of it in a few sentences: what holds, what does not, what to mend.
 *   - OVS_AS_BUILT_CHECKS: what was asked, and whether it was kept.
 *   - OVS_AS_BUILT_DEVIATIONS: the shots beside the plan.
 *   - OVS_AS_BUILT_FALLS: the slopes got.
 *   - OVS_AS_BUILT_PONDS: where water stands.
 *   - OVS_AS_BUILT_SEEN: the puddles seen beside the water of the shots.
 *   - OVS_AS_BUILT_MENDS: what to mend.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_TOO_FEW_SHOTS, OVS_NULL_POINTER, OVS_AS_BUILT_OUTLINE.
 * Basis: plane and solid geometry: derived.
 * Basis: a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark: common
 * practice, no source.
 * Basis: the tolerance of the marks that was given: the project's specification.
 * Basis: within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of slabs on
 * ground, as quoted elsewhere.
 * Basis: mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI 117,
 * tolerances for concrete construction (10), 4.5.4, slabs on ground.
 * Basis: the least thickness that was given: the project's specification.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
 * from memory: confirm.
 * Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
 * surfaces within 10 ft, as quoted elsewhere.
 * Basis: 1.00 to 1.08 times the figured concrete is used: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"12 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"0 ft","y":"10 ft","elevation":"99.60 ft"}]},"shots":{"x":["1 ft","6 ft","11 ft","1 ft","6 ft","11 ft","1 ft","6 ft","11 ft"],"y":["1 ft","1 ft","1 ft","5 ft","5 ft","5 ft","9 ft","9 ft","9 ft"],"elevation":["99.51 ft","99.52 ft","99.50 ft","99.55 ft","99.48 ft","99.56 ft","99.59 ft","99.60 ft","99.58 ft"]},"least":"3 in","specified":"4 in","surface":"trowelled","ordered":"1 1/2 yd3","left_over":"1/8 yd3","puddles":{"x":["6 ft"],"y":["5 ft"],"depth":["1/2 in"]},"edges":[{"edge":"left","state":"walled"},{"edge":"back","state":"walled"},{"edge":"right","state":"walled"}]}
 */
ovs_answer *ovs_as_built_us(const ovs_survey *survey,
                            const ovs_finish *finish,
                            const ovs_survey *new_floor,
                            const char *options_json,
                            int options_len,
                            int *status,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what
 * to mend.
 *
 * Equation: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of both;
 * slope = plane of least squares.
 * Taken for granted: both floors plane over each triangle of their shots; no approval: arithmetic on the shots.
 *
 * - `survey`: the old slab.
 * - `finish`: the plan.
 * - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `shots`: the shots of the new floor; may be left out.
 *   - `x` of `shots` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `shots` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `elevation` of `shots` (m): height above the job datum; at least -10000 m, at most 10000 m; required.
 *   - `name` of `shots`: its name; may be left out.
 *   - `new_floor`: the new floor as surveyed, in place of shots; over the same plan edge; may be left out.
 *   - `tolerance` (mm): how far a shot may be off the plan; more than 0 mm, at most 304.8 mm; where left out 1/4
 *     in, because 3/16 in of strike-off, and 1/16 in that a mark may leave its plane.
 *   - `specified` (mm): the thickness specified; at least 0 mm, at most 3048 mm; may be left out.
 *   - `least` (mm): the least thickness allowed anywhere; at least 0 mm, at most 3048 mm; may be left out.
 *   - `surface`: how the floor is finished and used: its least fall; 0 trowelled, 1 broomed, 2 outdoors; may be
 *     left out.
 *   - `least_fall` (%): the least fall, in place of that of the surface; at least 0 %, at most 100 %; may be left
 *     out.
 *   - `edges`: edges that are walled, open or drained; may be left out.
 *   - `edge` of `edges`: name of the edge, or of a hole; required.
 *   - `state` of `edges`: open: water runs off over it; walled: it is held; drained: a drain along it takes it; 0
 *     open, 1 walled, 2 drained; required.
 *   - `drains`: drains in the floor; may be left out.
 *   - `x` of `drains` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `drains` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `name` of `drains`: name of the drain; may be left out.
 *   - `shallowest` (mm): ponds shallower than this are left out; at least 0 mm, at most 304.8 mm; where left out
 *     1/16 in, because a rod hardly tells less.
 *   - `ordered` (m3): concrete that came; at least 0 m3, at most 10000 m3; may be left out.
 *   - `left_over` (m3): concrete that was left over; at least 0 m3, at most 10000 m3; may be left out.
 *   - `puddles`: puddles that were seen; may be left out.
 *   - `x` of `puddles` (m): distance from the left; at least -100000 m, at most 100000 m; required.
 *   - `y` of `puddles` (m): distance from the front; at least -100000 m, at most 100000 m; required.
 *   - `depth` of `puddles` (mm): how deep; at least 0 mm, at most 304.8 mm; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_AS_BUILT_COUNT: how many shots on the work.
 *   - OVS_AS_BUILT_MISSED: how many of them are off by more than the tolerance.
 *   - OVS_AS_BUILT_MEAN_DEVIATION (mm): mean of shot less planned; positive is high.
 *   - OVS_AS_BUILT_DEVIATION (mm): standard deviation of shot less planned; none of one shot.
 *   - OVS_AS_BUILT_HIGHEST (mm): greatest of shot less planned.
 *   - OVS_AS_BUILT_LOWEST (mm): least of shot less planned.
 *   - OVS_AS_BUILT_MEAN_OVER_AREA (mm): mean over the area of new floor less plan.
 *   - OVS_AS_BUILT_THICKNESS_MEAN (mm): mean thickness got.
 *   - OVS_AS_BUILT_THICKNESS_LEAST (mm): least thickness got.
 *   - OVS_AS_BUILT_LEAST_X (m): where it is, from the left.
 *   - OVS_AS_BUILT_LEAST_Y (m): where it is, from the front.
 *   - OVS_AS_BUILT_LEAST_MEASURED (mm): least thickness got between the shots of the old slab.
 *   - OVS_AS_BUILT_THICKNESS_GREATEST (mm): greatest thickness got.
 *   - OVS_AS_BUILT_GREATEST_X (m): where that is, from the left.
 *   - OVS_AS_BUILT_GREATEST_Y (m): where that is, from the front.
 *   - OVS_AS_BUILT_THINNER (m2): area thinner than the least allowed, or else than specified.
 *   - OVS_AS_BUILT_PLANNED_MEAN (mm): mean thickness planned.
 *   - OVS_AS_BUILT_PLANNED_VOLUME (m3): concrete figured.
 *   - OVS_AS_BUILT_VOLUME (m3): concrete in place, between old slab and new floor.
 *   - OVS_AS_BUILT_USED (m3): concrete used: what came less what was left over.
 *   - OVS_AS_BUILT_UNACCOUNTED (m3): used less in place.
 *   - OVS_AS_BUILT_USED_OVER_PLANNED (1): used over figured.
 *   - OVS_AS_BUILT_SAID: all of it in a few sentences: what holds, what does not, what to mend.
 *   - OVS_AS_BUILT_CHECKS: what was asked, and whether it was kept.
 *   - OVS_AS_BUILT_DEVIATIONS: the shots beside the plan.
 *   - OVS_AS_BUILT_FALLS: the slopes got.
 *   - OVS_AS_BUILT_PONDS: where water stands.
 *   - OVS_AS_BUILT_SEEN: the puddles seen beside the water of the shots.
 *   - OVS_AS_BUILT_MENDS: what to mend.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE, OVS_WORD_UNKNOWN, OVS_KEY_MISSING, OVS_CONTRADICTION,
 * OVS_TOO_FEW_SHOTS, OVS_NULL_POINTER, OVS_AS_BUILT_OUTLINE.
 * Basis: plane and solid geometry: derived.
 * Basis: a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark: common
 * practice, no source.
 * Basis: the tolerance of the marks that was given: the project's specification.
 * Basis: within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of slabs on
 * ground, as quoted elsewhere.
 * Basis: mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI 117,
 * tolerances for concrete construction (10), 4.5.4, slabs on ground.
 * Basis: the least thickness that was given: the project's specification.
 * Basis: at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums (several),
 * finished floors, from memory: confirm.
 * Basis: at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several), broom finish,
 * from memory: confirm.
 * Basis: at least 2 % away from a building: International Residential Code (2015-2021), R401.3, impervious
 * surfaces within 10 ft, as quoted elsewhere.
 * Basis: 1.00 to 1.08 times the figured concrete is used: common practice, no source.
 * Since 0.1.0.
 * Example, as JSON: {"survey":{"outline":{"sides":[{"name":"front","length":"12 ft"},{"name":"right","length":"10 ft"},{"name":"back","length":"12 ft"},{"name":"left","length":"10 ft"}]},"grid":{"columns":["1 ft","11 ft"],"rows":["1 ft","9 ft"],"elevations":["99.20 ft","99.15 ft","99.22 ft","99.25 ft"]}},"finish":{"points":[{"x":"0 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"12 ft","y":"0 ft","elevation":"99.50 ft"},{"x":"0 ft","y":"10 ft","elevation":"99.60 ft"}]},"shots":{"x":["1 ft","6 ft","11 ft","1 ft","6 ft","11 ft","1 ft","6 ft","11 ft"],"y":["1 ft","1 ft","1 ft","5 ft","5 ft","5 ft","9 ft","9 ft","9 ft"],"elevation":["99.51 ft","99.52 ft","99.50 ft","99.55 ft","99.48 ft","99.56 ft","99.59 ft","99.60 ft","99.58 ft"]},"least":"3 in","specified":"4 in","surface":"trowelled","ordered":"1 1/2 yd3","left_over":"1/8 yd3","puddles":{"x":["6 ft"],"y":["5 ft"],"depth":["1/2 in"]},"edges":[{"edge":"left","state":"walled"},{"edge":"back","state":"walled"},{"edge":"right","state":"walled"}]}
 */
ovs_answer *ovs_as_built_si(const ovs_survey *survey,
                            const ovs_finish *finish,
                            const ovs_survey *new_floor,
                            const char *options_json,
                            int options_len,
                            int *status,
                            int *notes,
                            int notes_len,
                            char *msg,
                            int msg_len);

/**
 * Why ovs_as_built_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_as_built_us_why(const ovs_survey *survey,
                        const ovs_finish *finish,
                        const ovs_survey *new_floor,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_as_built_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_as_built_si_why(const ovs_survey *survey,
                        const ovs_finish *finish,
                        const ovs_survey *new_floor,
                        const char *options_json,
                        int options_len,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Reads a job description from TOML or JSON.
 *
 * Equation: none.
 * Taken for granted: a text whose first sign is a brace is JSON, any other TOML.
 *
 * - `text_value`, `text_value_len`: the job description.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: A whole job description.
 *
 * Refuses with OVS_KEY_UNKNOWN, OVS_KEY_MISSING, OVS_SYNTAX.
 * Since 0.1.0.
 * Example, as JSON: {"text":"schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n"}
 */
ovs_job *ovs_job_from_text_us(const char *text_value,
                              int text_value_len,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Reads a job description from TOML or JSON.
 *
 * Equation: none.
 * Taken for granted: a text whose first sign is a brace is JSON, any other TOML.
 *
 * - `text_value`, `text_value_len`: the job description.
 * - `options_json`, `options_len`: none yet; may be null.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns the record, or null: A whole job description.
 *
 * Refuses with OVS_KEY_UNKNOWN, OVS_KEY_MISSING, OVS_SYNTAX.
 * Since 0.1.0.
 * Example, as JSON: {"text":"schema_version = 1\n[job]\nname = \"Tool shed (invented)\"\n[outline]\nsides = [{ name = \"front\", length = \"10 ft\" }, { name = \"right\", length = \"8 ft\" }, { name = \"back\", length = \"10 ft\" }, { name = \"left\", length = \"8 ft\" }]\n[level]\nbenchmarks = [{ name = \"nail\", elevation = \"100 ft\" }]\ncolumns = [\"1 ft\", \"9 ft\"]\n[[level.setups]]\non = \"nail\"\nrod = \"4' 2\\\"\"\nrows = [{ y = \"1 ft\", rods = [\"5' 1\\\"\", \"5' 1 1/4\\\"\"] }, { y = \"7 ft\", rods = [\"5' 0\\\"\", \"5' 0 1/2\\\"\"] }]\n[finish]\nleast = \"3 in\"\nfalls_to = \"front\"\nfall = \"1/8 in/ft\"\n"}
 */
ovs_job *ovs_job_from_text_si(const char *text_value,
                              int text_value_len,
                              const char *options_json,
                              int options_len,
                              int *status,
                              int *notes,
                              int notes_len,
                              char *msg,
                              int msg_len);

/**
 * Why ovs_job_from_text_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_job_from_text_us_why(const char *text_value,
                             int text_value_len,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * Why ovs_job_from_text_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_job_from_text_si_why(const char *text_value,
                             int text_value_len,
                             const char *options_json,
                             int options_len,
                             char *text,
                             int text_len,
                             int *needed);

/**
 * The report of a whole job: its main figures, as text for the site, and as JSON for a program.
 *
 * Equation: survey, finish, thickness and order, one after the other.
 * Taken for granted: what the report lists as taken.
 *
 * - `job`: the job.
 * - `survey`: the old slab, for a job that does not describe one itself; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `survey`: the old slab, for a job that does not describe one itself; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_REPORT_ORDERED (yd3): concrete to order.
 *   - OVS_REPORT_FIGURED (yd3): net volume of all parts and allowances.
 *   - OVS_REPORT_LOADS: truck loads.
 *   - OVS_REPORT_NET (yd3): volume of the floor, net.
 *   - OVS_REPORT_LEAST (in): least thickness between the shots.
 *   - OVS_REPORT_GREATEST (in): greatest thickness.
 *   - OVS_REPORT_MEAN (in): mean thickness.
 *   - OVS_REPORT_TEXT: the report for the site.
 *   - OVS_REPORT_JSON: the report as JSON.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_KEY_MISSING, OVS_NULL_POINTER.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"job":{"schema_version":1,"job":{"name":"Tool shed (invented)"},"outline":{"sides":[{"name":"front","length":"10 ft"},{"name":"right","length":"8 ft"},{"name":"back","length":"10 ft"},{"name":"left","length":"8 ft"}]},"level":{"benchmarks":[{"name":"nail","elevation":"100 ft"}],"columns":["1 ft","9 ft"],"setups":[{"on":"nail","rod":"4' 2\"","rows":[{"y":"1 ft","rods":["5' 1\"","5' 1 1/4\""]},{"y":"7 ft","rods":["5' 0\"","5' 0 1/2\""]}]}]},"finish":{"least":"3 in","falls_to":"front","fall":"1/8 in/ft"}}}
 */
ovs_answer *ovs_report_us(const ovs_job *job,
                          const ovs_survey *survey,
                          const char *options_json,
                          int options_len,
                          int *status,
                          int *notes,
                          int notes_len,
                          char *msg,
                          int msg_len);

/**
 * The report of a whole job: its main figures, as text for the site, and as JSON for a program.
 *
 * Equation: survey, finish, thickness and order, one after the other.
 * Taken for granted: what the report lists as taken.
 *
 * - `job`: the job.
 * - `survey`: the old slab, for a job that does not describe one itself; may be null.
 * - `options_json`, `options_len`: an object of any of these, a bare number in the unit named; may be null:
 *   - `survey`: the old slab, for a job that does not describe one itself; may be left out.
 * - `status`, out: the status of the call; may be null.
 * - `notes`, `notes_len`, out: the numbers of the result's notes, each once, then zeros; may be null.
 *
 * Returns an answer, or null; its results by their constants:
 *   - OVS_REPORT_ORDERED (m3): concrete to order.
 *   - OVS_REPORT_FIGURED (m3): net volume of all parts and allowances.
 *   - OVS_REPORT_LOADS: truck loads.
 *   - OVS_REPORT_NET (m3): volume of the floor, net.
 *   - OVS_REPORT_LEAST (mm): least thickness between the shots.
 *   - OVS_REPORT_GREATEST (mm): greatest thickness.
 *   - OVS_REPORT_MEAN (mm): mean thickness.
 *   - OVS_REPORT_TEXT: the report for the site.
 *   - OVS_REPORT_JSON: the report as JSON.
 *
 * Refuses with OVS_EMPTY_LIST, OVS_KIND_MISMATCH, OVS_KEY_MISSING, OVS_NULL_POINTER.
 * Basis: height of instrument = elevation + backsight; elevation = height of instrument - sight: Surveying
 * textbooks, differential levelling (any), height of instrument.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example, as JSON: {"job":{"schema_version":1,"job":{"name":"Tool shed (invented)"},"outline":{"sides":[{"name":"front","length":"10 ft"},{"name":"right","length":"8 ft"},{"name":"back","length":"10 ft"},{"name":"left","length":"8 ft"}]},"level":{"benchmarks":[{"name":"nail","elevation":"100 ft"}],"columns":["1 ft","9 ft"],"setups":[{"on":"nail","rod":"4' 2\"","rows":[{"y":"1 ft","rods":["5' 1\"","5' 1 1/4\""]},{"y":"7 ft","rods":["5' 0\"","5' 0 1/2\""]}]}]},"finish":{"least":"3 in","falls_to":"front","fall":"1/8 in/ft"}}}
 */
ovs_answer *ovs_report_si(const ovs_job *job,
                          const ovs_survey *survey,
                          const char *options_json,
                          int options_len,
                          int *status,
                          int *notes,
                          int notes_len,
                          char *msg,
                          int msg_len);

/**
 * Why ovs_report_us refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_report_us_why(const ovs_job *job,
                      const ovs_survey *survey,
                      const char *options_json,
                      int options_len,
                      char *text,
                      int text_len,
                      int *needed);

/**
 * Why ovs_report_si refuses these inputs, in full; else its notes and what was taken, one a line.
 *
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_report_si_why(const ovs_job *job,
                      const ovs_survey *survey,
                      const char *options_json,
                      int options_len,
                      char *text,
                      int text_len,
                      int *needed);

#ifdef __cplusplus
} /* extern "C" */
#endif /* __cplusplus */

#endif  /* OVERSLAB_H */
