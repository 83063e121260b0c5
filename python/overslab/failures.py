"""What can go wrong: one exception for each family of codes. Made from the table of codes; do not edit."""

from overslab._failure import OverslabError

__all__ = [
    "OverslabError",
    "QuantityError",
    "FormError",
    "SurveyError",
    "GradeError",
    "MarksError",
    "ConditionError",
    "OverlayError",
    "ClearanceError",
    "AsBuiltError",
    "BorderError",
]


class QuantityError(OverslabError, ValueError):
    """A number, a unit or a text that cannot be used as given.

    10 UNIT_UNKNOWN: the unit is not known.
    11 UNIT_MISSING: a number stands without its unit.
    12 UNIT_WRONG: the unit belongs to another quantity.
    13 NOT_READABLE: the text cannot be read as a quantity.
    14 DECIMAL_COMMA: a comma stands where it could be a decimal comma.
    15 NOT_FINITE: the number is not finite.
    16 NEGATIVE: the quantity cannot be below zero.
    17 OUT_OF_RANGE: the value lies outside its range.
    18 EMPTY_CELL: an empty cell or a blank where a value is wanted.
    19 ZERO_REFUSED: a zero in a place where an empty cell is more likely.
    """


class FormError(OverslabError, ValueError):
    """The form of the input: keys, kinds, lengths of lists.

    20 WORD_UNKNOWN: the word is not one of the choices.
    21 NOT_A_COUNT: a whole number is wanted.
    22 EMPTY_LIST: the list is empty.
    23 LENGTH_MISMATCH: lists that belong together differ in length.
    24 KIND_MISMATCH: the value is of another kind than the port takes.
    25 KEY_UNKNOWN: the key is not known.
    26 KEY_MISSING: a required value is missing.
    27 SYNTAX: the text is not valid TOML or JSON.
    28 KEY_REPEATED: a name is given twice.
    29 VERSION_UNKNOWN: the schema version is not known.
    30 CONTRADICTION: two values say the same thing differently.
    100 FORMAT_UNKNOWN: the format of the file is not known.
    101 FORMAT_NOT_BUILT: the reader for the format is not built in.
    102 FILE_BROKEN: the file breaks the rules of its format.
    103 FILE_SHORT: the file ends before what it states is there.
    104 COLUMN_MISSING: a column that is needed is not there.
    105 COLUMN_DOUBTFUL: the head of a column contradicts itself or another.
    110 NOT_BASE64: the text behind base64: is not base64.
    150 LEVELS_UNSORTED: levels do not rise from one to the next.
    151 TOO_MANY_LEVELS: an interval or a list gives too many levels.
    152 LINE_TOO_SHORT: a line has fewer than two places apart from one another.
    154 TOO_MANY_STATIONS: a spacing gives too many stations.
    """


class SurveyError(OverslabError, ValueError):
    """The survey or the outline contradicts itself or does not suffice.

    40 OUTLINE_CROSSES: the outline crosses itself.
    41 OUTLINE_TOO_FEW: the outline has too few corners or no area.
    42 HOLE_OUTSIDE: a hole leaves the outline or meets another hole.
    43 OUTLINE_OPEN: the wall lengths do not close.
    44 DIAGONAL_IMPOSSIBLE: no figure has these sides and diagonals.
    45 TWO_HEIGHTS: two heights stand at one place.
    46 SHOT_OUTSIDE: a shot lies outside the outline.
    47 TOO_FEW_SHOTS: too few shots for a surface.
    48 COLLINEAR_SHOTS: all shots lie on one line.
    49 CLOSURE_EXCEEDED: the level book does not close within its tolerance.
    50 BOOK_INCOMPLETE: the level book lacks a reading it needs.
    51 BEYOND_SHOTS: the work reaches too far beyond the shots.
    52 STEP_UNRESOLVED: a step in the old slab is not described well enough.
    53 REGION_OUTSIDE: a zone leaves the surveyed outline.
    106 SURFACE_UNCLEAR: the file does not hold exactly one surface of that name.
    107 NO_POINTS: the file holds no point that can be used.
    115 THINNING_COUNT: fewer points are asked than the hull of the points has corners.
    116 THINNING_UNREACHABLE: points at one place differ by more than the height error asked.
    117 KNOWN_POINTS: the known points do not fix the axes.
    118 AXES_DISAGREE: the known points do not lie alike in both systems of axes.
    119 AXES_MIRRORED: the known points lie alike only as in a mirror.
    120 FACE_POINT_UNKNOWN: a triangle has a corner that is none of the points.
    121 FACE_FLAT: a triangle has no area in plan.
    122 FACES_OVERLAP: two triangles overlap.
    123 POINT_IN_FACE: a point lies in a triangle or on its side.
    124 EDGE_OF_THREE: three triangles share one side.
    140 SHOT_UNKNOWN: no shot of the survey has this name.
    153 LINE_OUTSIDE: a line lies wholly outside the surveyed outline.
    160 NO_OUTLET: water has no way out: no edge is open and there is no drain.
    161 DRAIN_OUTSIDE: a drain lies outside the outline.
    """


class GradeError(OverslabError, ValueError):
    """The finish cannot be made as asked.

    60 EDGE_UNKNOWN: no edge of the outline has this name.
    61 FINISH_UNDETERMINED: the finish is not determined by what was given.
    62 FINISH_TWICE: the finish is given in two ways.
    130 FACET_WARPED: the corners of a facet are not in one plane.
    131 FACETS_APART: two facets have different heights along the edge they share.
    132 FACETS_OVERLAP: two facets lie over one another.
    133 FACETS_LEAVE_HOLE: a part of the work is under no facet.
    134 FACET_SHAPE: the corners of a facet bound no area that could be struck off.
    135 CORNER_UNKNOWN: no corner has this name or number.
    136 CORNER_UNSEEN: a corner of the work cannot be seen from the drain.
    137 OFF_WORK: a line or a place of the finish lies outside the work.
    138 BEHIND_EDGE: the work reaches behind the line of the edge.
    180 DEMANDS_CONFLICT: the demands on the finish cannot all be kept.
    181 PROOF_FAILED: an answer was refused by its own check.
    182 FACET_UNKNOWN: no facet has this name, and none falls to it.
    183 DEMAND_UNKNOWN: no demand has this name.
    184 DRAIN_UNPLACED: no place where the drain may be sees every corner of the outline.
    185 DRAIN_NOWHERE: the demands can be kept with the drain at no place where it may be.
    186 DRAIN_NOT_FOUND: the search ended before it found a place where the demands can be kept.
    187 ZONE_UNKNOWN: no zone has this name.
    200 FLOW_LOST: the way of water over the finish was lost to rounding.
    """


class MarksError(OverslabError, ValueError):
    """Marks cannot be set out as asked.

    190 POINT_OFF_WALL: a place that must have a mark is on no edge.
    191 RAIL_OUTSIDE: a screed rail leaves the work.
    192 PADS_TOO_FAR: wet pads are farther apart than the screed reaches.
    """


class ConditionError(OverslabError, ValueError):
    """The old slab cannot be judged by what was found.

    240 FINDINGS_DISAGREE: two findings on the old slab cannot both be so.
    """


class OverlayError(OverslabError, ValueError):
    """An overlay, its thickness or its strength cannot be figured as given.

    250 BOND_NEEDS_SOUND: a bonded overlay is figured over a sound slab only.
    251 OUTSIDE_TABLE: a published table has no number there.
    252 CONTACT_TOO_WIDE: the contact of a load is too wide for the formula.
    253 CONTACT_UNCLEAR: the contact of a load is not given by exactly one of radius and pressure.
    254 NO_THICKNESS: no thickness up to the greatest asked is enough.
    255 TOO_MANY_LOADS: more loads than are added up at once.
    275 LINE_NOT_ON_EDGE: a line does not run along an edge of the work.
    """


class ClearanceError(OverslabError, ValueError):
    """A door, a step, a fitting or an approach cannot be judged as given.

    210 THING_OFF_FLOOR: a thing lies too far from the floor to be met by it.
    211 LINE_NEEDED: a thing of this kind has a line, and one place was given.
    212 MEASURE_NOT_READ: a measure that a thing of this kind has no use for.
    213 GROUND_MISSING: the ground along an edge is not given at every place of its line.
    220 APPROACH_SHORT: the ground outside a door is known at fewer than two places.
    221 APPROACH_START: the ground outside is not known at the door itself.
    222 APPROACH_UNSORTED: the places outside a door do not run outwards from it.
    223 TIE_IN_BEYOND: a new approach meets the ground where that is not known.
    224 DOOR_UNKNOWN: nothing says how high the floor is at the door.
    """


class AsBuiltError(OverslabError, ValueError):
    """The floor that was built cannot be judged by what was measured.

    230 PROFILE_SPACING: profile readings stand neither 12 in nor 300 mm apart.
    231 PROFILE_SHORT: a profile has too few readings.
    232 PROFILE_ORDER: the readings of a profile are not in order along its line.
    233 FLATNESS_SECTION: lines, sections and their areas do not go together.
    234 PROFILE_LINE_UNKNOWN: no profile line has this name.
    235 AS_BUILT_OUTLINE: the new floor was not surveyed over the plan edge of the old slab.
    """


class BorderError(OverslabError, RuntimeError):
    """The border between the engine and its caller was used wrongly.

    90 NULL_POINTER: a pointer is null.
    91 LENGTH_NEGATIVE: a length or a count passed over the border is negative.
    92 NOT_TEXT: the bytes are not UTF-8.
    93 OPERATION_UNKNOWN: no operation has this name.
    94 BUFFER_SHORT: the buffer for the results is too short.
    99 INTERNAL: a fault of the library itself.
    """
