"""The operations of `asbuilt`: made from the table of operations; do not edit."""

from typing import Literal, final

from overslab.results import AnswerResult

from overslab.typing import Column, Quantity, RecordLike, Table, Units
from overslab.grade import Finish
from overslab.survey import Outline
from overslab.survey import Survey

__all__ = [
    "flatness_line",
    "FlatnessLine",
    "flatness",
    "Flatness",
    "flatness_combined",
    "FlatnessCombined",
    "straightedge",
    "Straightedge",
    "as_built",
    "AsBuilt",
]

def flatness_line(
    readings: Table,
    *,
    spacing: Quantity | None = None,
    factor: Literal["4.57 in", "115.8 mm"] | None = None,
    units: Units | None = None,
) -> FlatnessLine:
    r"""Flatness (FF) and levelness (FL) of a floor along one line of readings 12 in or 300 mm apart.

    Rule: q = h - 2 h(-1) + h(-2); z = h - h(-10); FF = 4.57 in / (3 Sq + |mean q|); FL = 12.5 in / (3
        Sz + |mean z|); S over n - 1.
    Takes for granted: the floor is as it was within 72 h of finishing; levelness is not used on a floor
        that falls.

    Args:
        readings: the readings; a table of at least 1 row, each a reading, in order along the line, with
            the columns
            elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
                in (at least -10000000 mm, at most 10000000 mm)
        spacing: how far apart the readings stand: 12 in or 300 mm [in | mm]; at least 0.393700787402
            in, at most 393.700787402 in (at least 10 mm, at most 10000 mm); where it is not given 12 in
            is taken: the standard in inches reads every foot
        factor: the constant for flatness, as the standard's text in inches or in millimetres has it;
            one of "4.57 in", "115.8 mm"; where it is not given 4.57 in is taken: the text in inches
            came first
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        FlatnessLine, with the attributes
            ff_ratio: flatness; none for a perfect line [1]
            fl_ratio: levelness; none for fewer than 12 readings and for a level line [1]
            length_ft, length_m: length of the line [ft | m]
            q_count: how many bends
            q_mean_in, q_mean_mm: their mean [in | mm]
            q_deviation_in, q_deviation_mm: their standard deviation [in | mm]
            z_count: how many rises over ten spacings
            z_mean_in, z_mean_mm: their mean [in | mm]
            z_deviation_in, z_deviation_mm: their standard deviation; none of fewer than two [in | mm]
            q: the bends, a table of q
            z: the rises over ten spacings, a table of z
        and notes, basis and taken.

    Raises:
        AsBuiltError: a profile has too few readings (PROFILE_SHORT); profile readings stand neither 12
            in nor 300 mm apart (PROFILE_SPACING)
        FormError: the list is empty (EMPTY_LIST); the word is not one of the choices (WORD_UNKNOWN)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM
            E1155, floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart
        FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
            sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
            combination, from memory: confirm
        lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness
            and floor levelness numbers (M-96), lines and readings, as in the record of a measured
            floor, as quoted elsewhere

    Example:
        >>> from overslab.asbuilt import flatness_line
        >>> answer = flatness_line(
        ...     readings={
        ...         "elevation": [
        ...             "100.02 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...             "100.11 in",
        ...             "100.05 in",
        ...             "100.09 in",
        ...             "100.08 in",
        ...             "100.12 in",
        ...             "100.13 in",
        ...             "100.11 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...             "100.05 in",
        ...             "100.06 in",
        ...         ],
        ...     },
        ... )
        >>> round(answer.ff_ratio, 4)
        23.1412

    Since 0.1.0.
    """

@final
class FlatnessLine(AnswerResult):
    r"""What `flatness_line` gives."""

    @property
    def ff_ratio(self) -> float | None:
        r"""flatness; none for a perfect line [1]."""

    @property
    def fl_ratio(self) -> float | None:
        r"""levelness; none for fewer than 12 readings and for a level line [1]."""

    @property
    def length_ft(self) -> float:
        r"""length of the line [ft]."""

    @property
    def length_m(self) -> float:
        r"""length of the line [m]."""

    @property
    def q_count(self) -> int:
        r"""how many bends."""

    @property
    def q_mean_in(self) -> float:
        r"""their mean [in]."""

    @property
    def q_mean_mm(self) -> float:
        r"""their mean [mm]."""

    @property
    def q_deviation_in(self) -> float | None:
        r"""their standard deviation [in]."""

    @property
    def q_deviation_mm(self) -> float | None:
        r"""their standard deviation [mm]."""

    @property
    def z_count(self) -> int:
        r"""how many rises over ten spacings."""

    @property
    def z_mean_in(self) -> float | None:
        r"""their mean [in]."""

    @property
    def z_mean_mm(self) -> float | None:
        r"""their mean [mm]."""

    @property
    def z_deviation_in(self) -> float | None:
        r"""their standard deviation; none of fewer than two [in]."""

    @property
    def z_deviation_mm(self) -> float | None:
        r"""their standard deviation; none of fewer than two [mm]."""

    @property
    def q(self) -> dict[str, Column]:
        r"""the bends."""

    @property
    def z(self) -> dict[str, Column]:
        r"""the rises over ten spacings."""

def flatness(
    readings: Table,
    *,
    spacing: Quantity | None = None,
    factor: Literal["4.57 in", "115.8 mm"] | None = None,
    sections: Table | None = None,
    flatness_class: Literal["conventional", "moderately flat", "flat", "very flat", "super flat"] | None = None,
    least_ff: Quantity | None = None,
    least_fl: Quantity | None = None,
    falls: Literal["no", "yes"] | None = None,
    places: Table | None = None,
    finish: Finish | RecordLike | None = None,
    outline: Outline | RecordLike | None = None,
    units: Units | None = None,
) -> Flatness:
    r"""Flatness (FF) and levelness (FL) of a floor from many lines: by line, by section, over all, against what is asked.

    Rule: lines as for one line; F = sqrt(sum w / sum(w / F2)): lines by readings, sections by area;
        every section reaches 3/5 of the least over all.
    Takes for granted: readings of all lines equally far apart; on a floor that falls levelness is not
        used.

    Args:
        readings: the readings of all lines; a table of at least 1 row, each a reading; those of one
            line stand together, in order along it, with the columns
            line: name of the line; a text
            elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
                in (at least -10000000 mm, at most 10000000 mm)
            section: part of the floor the line lies in; needed once a line; a text; may be left out
        spacing: how far apart the readings stand: 12 in or 300 mm [in | mm]; at least 0.393700787402
            in, at most 393.700787402 in (at least 10 mm, at most 10000 mm); where it is not given 12 in
            is taken: the standard in inches reads every foot
        factor: the constant for flatness, as the standard's text in inches or in millimetres has it;
            one of "4.57 in", "115.8 mm"; where it is not given 4.57 in is taken: the text in inches
            came first
        sections: the areas of the sections, or of the floor; a table of at least 1 row, each a part of
            the floor, with the columns; may be left out
            section: its name; a text
            area: its area [ft2 | m2]; more than 0 ft2 (more than 0 m2)
        flatness_class: the class asked; one of "conventional", "moderately flat", "flat", "very flat",
            "super flat"; may be left out
        least_ff: flatness asked over all, in place of a class [1]; at least 1 1, at most 1000 1; may be
            left out
        least_fl: levelness asked over all, in place of a class [1]; at least 1 1, at most 1000 1; may
            be left out
        falls: whether the floor is to fall; one of "no", "yes"; where it is not given no is taken: a
            finish that is given tells by itself
        places: where the lines run; a table of at least 1 row, each where a line runs, with the
            columns; may be left out
            line: the line's name; a text
            x: its first reading, from the left [ft | m]; at least -328083.989501 ft, at most
                328083.989501 ft (at least -100000 m, at most 100000 m)
            y: its first reading, from the front [ft | m]; at least -328083.989501 ft, at most
                328083.989501 ft (at least -100000 m, at most 100000 m)
            toward_x: a place it runs towards, from the left [ft | m]; at least -328083.989501 ft, at
                most 328083.989501 ft (at least -100000 m, at most 100000 m)
            toward_y: a place it runs towards, from the front [ft | m]; at least -328083.989501 ft, at
                most 328083.989501 ft (at least -100000 m, at most 100000 m)
        finish: the plan: where it bends, readings of lines with a place are left out; a Finish; may be
            left out
        outline: the plan edge, which lines keep 2 ft from; an Outline; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Flatness, with the attributes
            ff_ratio: flatness over all [1]
            fl_ratio: levelness over all [1]
            asked_ff_ratio: flatness asked over all [1]
            asked_fl_ratio: levelness asked over all [1]
            local_ff_ratio: flatness asked of every section [1]
            local_fl_ratio: levelness asked of every section [1]
            ff_verdict: flatness over all against what is asked: meets, short, too few to judge, confirm
                locally
            fl_verdict: levelness over all against what is asked: meets, short, too few to judge,
                confirm locally
            lines: the lines, a table of lines
            of_sections: the parts of the floor, a table of of_sections
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST); a name is given twice (KEY_REPEATED); two values say
            the same thing differently (CONTRADICTION); a required value is missing (KEY_MISSING); a
            line has fewer than two places apart from one another (LINE_TOO_SHORT)
        AsBuiltError: a profile has too few readings (PROFILE_SHORT); lines, sections and their areas do
            not go together (FLATNESS_SECTION); profile readings stand neither 12 in nor 300 mm apart
            (PROFILE_SPACING); no profile line has this name (PROFILE_LINE_UNKNOWN)

    Basis:
        q = rise less the rise before, z = rise over 10 ft, by their mean and standard deviation: ASTM
            E1155, floor flatness and floor levelness numbers (M-96), q and z over readings 12 in apart
        FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
            sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
            combination, from memory: confirm
        lines of 12 readings and 11 ft or more, 2 ft from edges, 4 ft apart: ASTM E1155, floor flatness
            and floor levelness numbers (M-96), lines and readings, as in the record of a measured
            floor, as quoted elsewhere
        at least 2 sqrt(A) rises over 10 ft, from 1600 ft2 on A / 20, A in ft2: ASTM E1155, floor
            flatness and floor levelness numbers (any), least number of readings, from memory: confirm
        FF and FL by class over all, and 3/5 of them for every section: ACI 117, tolerances for concrete
            construction (10), table 4.8.5.1; 4.8.5.3
        levelness is not used where a floor falls; flatness is told with the plan taken off: Flatwork
            guidance on floors that fall (several), levelness, from memory: confirm

    Example:
        >>> from overslab.asbuilt import flatness
        >>> answer = flatness(
        ...     readings={
        ...         "line": [
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "A",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...             "B",
        ...         ],
        ...         "elevation": [
        ...             "100.02 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...             "100.11 in",
        ...             "100.05 in",
        ...             "100.09 in",
        ...             "100.08 in",
        ...             "100.12 in",
        ...             "100.13 in",
        ...             "100.11 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...             "100.05 in",
        ...             "100.06 in",
        ...             "99.98 in",
        ...             "99.99 in",
        ...             "100.04 in",
        ...             "100.08 in",
        ...             "100.06 in",
        ...             "100.11 in",
        ...             "100.15 in",
        ...             "100.12 in",
        ...             "100.16 in",
        ...             "100.13 in",
        ...             "100.09 in",
        ...             "100.12 in",
        ...         ],
        ...     },
        ...     sections={"section": ["floor"], "area": ["300 ft2"]},
        ...     flatness_class="conventional",
        ...     places={
        ...         "line": ["A", "B"],
        ...         "x": ["2 ft", "2 ft"],
        ...         "y": ["3 ft", "8 ft"],
        ...         "toward_x": ["15 ft", "15 ft"],
        ...         "toward_y": ["3 ft", "8 ft"],
        ...     },
        ... )
        >>> round(answer.ff_ratio, 4)
        23.7904

    Since 0.1.0.
    """

@final
class Flatness(AnswerResult):
    r"""What `flatness` gives."""

    @property
    def ff_ratio(self) -> float | None:
        r"""flatness over all [1]."""

    @property
    def fl_ratio(self) -> float | None:
        r"""levelness over all [1]."""

    @property
    def asked_ff_ratio(self) -> float | None:
        r"""flatness asked over all [1]."""

    @property
    def asked_fl_ratio(self) -> float | None:
        r"""levelness asked over all [1]."""

    @property
    def local_ff_ratio(self) -> float | None:
        r"""flatness asked of every section [1]."""

    @property
    def local_fl_ratio(self) -> float | None:
        r"""levelness asked of every section [1]."""

    @property
    def ff_verdict(self) -> Literal["meets", "short", "too few to judge", "confirm locally"] | None:
        r"""flatness over all against what is asked."""

    @property
    def fl_verdict(self) -> Literal["meets", "short", "too few to judge", "confirm locally"] | None:
        r"""levelness over all against what is asked."""

    @property
    def lines(self) -> dict[str, Column]:
        r"""the lines."""

    @property
    def of_sections(self) -> dict[str, Column]:
        r"""the parts of the floor."""

def flatness_combined(
    parts: Table,
    *,
    units: Units | None = None,
) -> FlatnessCombined:
    r"""One F-number for several lines, by their readings, or for several sections, by their areas.

    Rule: F = sqrt(sum w / sum(w / F2)), w = number of readings of a line, area of a section.
    Takes for granted: all numbers are FF, or all are FL.

    Args:
        parts: the lines or the sections; a table of at least 1 row, each a line or a section, with the
            columns
            number: its F-number [1]; more than 0 1
            readings: of a line: how many q for FF, how many z for FL; a whole number from 1 to
                1000000000; may be left out
            area: of a section: how large it is [ft2 | m2]; more than 0 ft2 (more than 0 m2); may be
                left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        FlatnessCombined, with the attributes
            number_ratio: the number for all [1]
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING); two values
            say the same thing differently (CONTRADICTION)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        FF = 4.57 in / (3 S + |mean| of q), FL = 12.5 in / (3 S + |mean| of z); many: F = sqrt(sum n /
            sum(n / F2)): ASTM E1155, floor flatness and floor levelness numbers (any), FF, FL and their
            combination, from memory: confirm

    Example:
        >>> from overslab.asbuilt import flatness_combined
        >>> answer = flatness_combined(
        ...     parts={"number": ["31 1", "22 1", "27 1"], "readings": [13, 15, 12]},
        ... )
        >>> round(answer.number_ratio, 4)
        25.6115

    Since 0.1.0.
    """

@final
class FlatnessCombined(AnswerResult):
    r"""What `flatness_combined` gives."""

    @property
    def number_ratio(self) -> float | None:
        r"""the number for all [1]."""

def straightedge(
    profile: Table,
    *,
    length: Quantity | None = None,
    flatness_class: Literal["conventional", "moderately flat", "flat"] | None = None,
    units: Units | None = None,
) -> Straightedge:
    r"""The gap under a straightedge laid along a line of readings, from each reading on.

    Rule: gap = upper hull of the readings under the straightedge less the floor, where it is greatest.
    Takes for granted: it rests on two readings; on a hump it may tip either way, and the end that
        stands up is no gap.

    Args:
        profile: the readings, three or more; a table of at least 1 row, each a reading, in order along
            the line, at any spacing, with the columns
            distance: from the start of the line [ft | m]; at least -32808.3989501 ft, at most
                32808.3989501 ft (at least -10000 m, at most 10000 m)
            elevation: height of the floor [in | mm]; at least -393700.787402 in, at most 393700.787402
                in (at least -10000000 mm, at most 10000000 mm)
        length: length of the straightedge [ft | m]; more than 0 ft, at most 100 ft (more than 0 m, at
            most 30.48 m); where it is not given 10 ft is taken: the limits are told for 10 ft
        flatness_class: class to hold the gaps against; under 10 ft only; one of "conventional",
            "moderately flat", "flat"; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Straightedge, with the attributes
            gap_in, gap_mm: the greatest gap [in | mm]
            gap_at_ft, gap_at_m: where it is [ft | m]
            rest_1_ft, rest_1_m: first place the straightedge rests there [ft | m]
            rest_2_ft, rest_2_m: second place it rests there [ft | m]
            count: how often it was laid down
            about_ff_ratio: flatness number that goes roughly with such a gap, under 10 ft and up to 1/2
                in [1]
            within_most_percent: share of gaps within what nine in ten must keep [%]
            within_all_percent: share of gaps within what all must keep [%]
            verdict: whether the class is kept: meets, short, too few to judge, confirm locally
            placements: the straightedge laid down from each reading on, a table of placements
        and notes, basis and taken.

    Raises:
        AsBuiltError: a profile has too few readings (PROFILE_SHORT); the readings of a profile are not
            in order along its line (PROFILE_ORDER)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: two values say the same thing differently (CONTRADICTION); the word is not one of the
            choices (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived
        nine gaps in ten and all gaps within limits by class: ACI 117, tolerances for concrete
            construction (10), straightedge of 10 ft, from memory: confirm
        FF 12, 20, 25, 32, 50 go roughly with gaps of 1/2, 5/16, 1/4, 3/16, 1/8 in under 10 ft: ACI
            302.1R, guide to concrete floor and slab construction (any), flatness against gaps, from
            memory: confirm

    Example:
        >>> from overslab.asbuilt import straightedge
        >>> answer = straightedge(
        ...     profile={
        ...         "distance": [
        ...             "1 ft",
        ...             "2 ft",
        ...             "3 ft",
        ...             "4 ft",
        ...             "5 ft",
        ...             "6 ft",
        ...             "7 ft",
        ...             "8 ft",
        ...             "9 ft",
        ...             "10 ft",
        ...             "11 ft",
        ...             "12 ft",
        ...         ],
        ...         "elevation": [
        ...             "100.02 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...             "100.11 in",
        ...             "100.05 in",
        ...             "100.09 in",
        ...             "100.08 in",
        ...             "99.92 in",
        ...             "99.98 in",
        ...             "100.11 in",
        ...             "100.10 in",
        ...             "100.13 in",
        ...         ],
        ...     },
        ...     flatness_class="flat",
        ... )
        >>> round(answer.gap_in, 4)
        0.21

    Since 0.1.0.
    """

@final
class Straightedge(AnswerResult):
    r"""What `straightedge` gives."""

    @property
    def gap_in(self) -> float:
        r"""the greatest gap [in]."""

    @property
    def gap_mm(self) -> float:
        r"""the greatest gap [mm]."""

    @property
    def gap_at_ft(self) -> float:
        r"""where it is [ft]."""

    @property
    def gap_at_m(self) -> float:
        r"""where it is [m]."""

    @property
    def rest_1_ft(self) -> float:
        r"""first place the straightedge rests there [ft]."""

    @property
    def rest_1_m(self) -> float:
        r"""first place the straightedge rests there [m]."""

    @property
    def rest_2_ft(self) -> float:
        r"""second place it rests there [ft]."""

    @property
    def rest_2_m(self) -> float:
        r"""second place it rests there [m]."""

    @property
    def count(self) -> int:
        r"""how often it was laid down."""

    @property
    def about_ff_ratio(self) -> float | None:
        r"""flatness number that goes roughly with such a gap, under 10 ft and up to 1/2 in [1]."""

    @property
    def within_most_percent(self) -> float | None:
        r"""share of gaps within what nine in ten must keep [%]."""

    @property
    def within_all_percent(self) -> float | None:
        r"""share of gaps within what all must keep [%]."""

    @property
    def verdict(self) -> Literal["meets", "short", "too few to judge", "confirm locally"] | None:
        r"""whether the class is kept."""

    @property
    def placements(self) -> dict[str, Column]:
        r"""the straightedge laid down from each reading on."""

def as_built(
    survey: Survey | RecordLike,
    finish: Finish | RecordLike,
    *,
    shots: Table | None = None,
    new_floor: Survey | RecordLike | None = None,
    tolerance: Quantity | None = None,
    specified: Quantity | None = None,
    least: Quantity | None = None,
    surface: Literal["trowelled", "broomed", "washed", "outdoors"] | None = None,
    least_fall: Quantity | None = None,
    edges: Table | None = None,
    drains: Table | None = None,
    shallowest: Quantity | None = None,
    ordered: Quantity | None = None,
    left_over: Quantity | None = None,
    puddles: Table | None = None,
    units: Units | None = None,
) -> AsBuilt:
    r"""The new floor as shot, held against old slab and plan: marks, thickness, slope, standing water, concrete, what to mend.

    Rule: deviation = shot - planned; thickness = new floor - old slab, exactly over the triangles of
        both; slope = plane of least squares.
    Takes for granted: both floors plane over each triangle of their shots; no approval: arithmetic on
        the shots.

    Args:
        survey: the old slab; a Survey
        finish: the plan; a Finish
        shots: the shots of the new floor; a table of at least 1 row, each a shot of the new floor, with
            the columns; may be left out
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            elevation: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
                32808.3989501 ft (at least -10000 m, at most 10000 m)
            name: its name; a text; may be left out
        new_floor: the new floor as surveyed, in place of shots; over the same plan edge; a Survey; may
            be left out
        tolerance: how far a shot may be off the plan [in | mm]; more than 0 in, at most 12 in (more
            than 0 mm, at most 304.8 mm); where it is not given 1/4 in is taken: 3/16 in of strike-off,
            and 1/16 in that a mark may leave its plane
        specified: the thickness specified [in | mm]; at least 0 in, at most 120 in (at least 0 mm, at
            most 3048 mm); may be left out
        least: the least thickness allowed anywhere [in | mm]; at least 0 in, at most 120 in (at least 0
            mm, at most 3048 mm); may be left out
        surface: how the floor is finished and used: its least fall; one of "trowelled", "broomed",
            "washed", "outdoors"; may be left out
        least_fall: the least fall, in place of that of the surface [in/ft | %]; at least 0 in/ft, at
            most 12 in/ft (at least 0 %, at most 100 %); may be left out
        edges: edges that are walled, open or drained; a table of at least 0 rows, each an edge and what
            it does to water, with the columns; may be left out
            edge: name of the edge, or of a hole; a text
            state: open: water runs off over it; walled: it is held; drained: a drain along it takes it;
                one of "open", "walled", "drained"
        drains: drains in the floor; a table of at least 0 rows, each a place of a drain; rows of one
            name are a drain along the line through them, with the columns; may be left out
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            name: name of the drain; a text; may be left out
        shallowest: ponds shallower than this are left out [in | mm]; at least 0 in, at most 12 in (at
            least 0 mm, at most 304.8 mm); where it is not given 1/16 in is taken: a rod hardly tells
            less
        ordered: concrete that came [yd3 | m3]; at least 0 yd3, at most 13079.5061931 yd3 (at least 0
            m3, at most 10000 m3); may be left out
        left_over: concrete that was left over [yd3 | m3]; at least 0 yd3, at most 13079.5061931 yd3 (at
            least 0 m3, at most 10000 m3); may be left out
        puddles: puddles that were seen; a table of at least 0 rows, each a puddle that was seen when
            the hose was let run, with the columns; may be left out
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            depth: how deep [in | mm]; at least 0 in, at most 12 in (at least 0 mm, at most 304.8 mm);
                may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        AsBuilt, with the attributes
            count: how many shots on the work
            missed: how many of them are off by more than the tolerance
            mean_deviation_in, mean_deviation_mm: mean of shot less planned; positive is high [in | mm]
            deviation_in, deviation_mm: standard deviation of shot less planned; none of one shot [in |
                mm]
            highest_in, highest_mm: greatest of shot less planned [in | mm]
            lowest_in, lowest_mm: least of shot less planned [in | mm]
            mean_over_area_in, mean_over_area_mm: mean over the area of new floor less plan [in | mm]
            thickness_mean_in, thickness_mean_mm: mean thickness got [in | mm]
            thickness_least_in, thickness_least_mm: least thickness got [in | mm]
            least_x_ft, least_x_m: where it is, from the left [ft | m]
            least_y_ft, least_y_m: where it is, from the front [ft | m]
            least_measured_in, least_measured_mm: least thickness got between the shots of the old slab
                [in | mm]
            thickness_greatest_in, thickness_greatest_mm: greatest thickness got [in | mm]
            greatest_x_ft, greatest_x_m: where that is, from the left [ft | m]
            greatest_y_ft, greatest_y_m: where that is, from the front [ft | m]
            thinner_ft2, thinner_m2: area thinner than the least allowed, or else than specified [ft2 |
                m2]
            planned_mean_in, planned_mean_mm: mean thickness planned [in | mm]
            planned_volume_yd3, planned_volume_m3: concrete figured [yd3 | m3]
            volume_yd3, volume_m3: concrete in place, between old slab and new floor [yd3 | m3]
            used_yd3, used_m3: concrete used: what came less what was left over [yd3 | m3]
            unaccounted_yd3, unaccounted_m3: used less in place [yd3 | m3]
            used_over_planned_ratio: used over figured [1]
            said: all of it in a few sentences: what holds, what does not, what to mend
            checks: what was asked, and whether it was kept, a table of checks
            deviations: the shots beside the plan, a table of deviations
            falls: the slopes got, a table of falls
            ponds: where water stands, a table of ponds
            seen: the puddles seen beside the water of the shots, a table of seen
            mends: what to mend, a table of mends
        and notes, basis and taken.

    Raises:
        FormError: a required value is missing (KEY_MISSING); two values say the same thing differently
            (CONTRADICTION); the word is not one of the choices (WORD_UNKNOWN)
        AsBuiltError: the new floor was not surveyed over the plan edge of the old slab
            (AS_BUILT_OUTLINE)
        SurveyError: too few shots for a surface (TOO_FEW_SHOTS)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived
        a struck-off floor keeps its marks within 1/4 in: 3/16 in of strike-off, 1/16 in of the mark:
            common practice, no source
        the tolerance of the marks that was given: the project's specification
        within 3/4 in of the planned height: ACI 117, tolerances for concrete construction (90), top of
            slabs on ground, as quoted elsewhere
        mean thickness not more than 3/8 in, no thickness more than 3/4 in under the specified one: ACI
            117, tolerances for concrete construction (10), 4.5.4, slabs on ground
        the least thickness that was given: the project's specification
        at least 1/8 in per ft on well-finished floors: Flatwork guidance on drainage minimums
            (several), finished floors, from memory: confirm
        at least 1/4 in per ft on broomed floors: Flatwork guidance on drainage minimums (several),
            broom finish, from memory: confirm
        at least 2 % away from a building: International Residential Code (2015-2021), R401.3,
            impervious surfaces within 10 ft, as quoted elsewhere
        1.00 to 1.08 times the figured concrete is used: common practice, no source

    Example:
        >>> from overslab.asbuilt import as_built
        >>> answer = as_built(
        ...     survey={
        ...         "outline": {
        ...             "sides": [
        ...                 {"name": "front", "length": "12 ft"},
        ...                 {"name": "right", "length": "10 ft"},
        ...                 {"name": "back", "length": "12 ft"},
        ...                 {"name": "left", "length": "10 ft"},
        ...             ],
        ...         },
        ...         "grid": {
        ...             "columns": ["1 ft", "11 ft"],
        ...             "rows": ["1 ft", "9 ft"],
        ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
        ...         },
        ...     },
        ...     finish={
        ...         "points": [
        ...             {"x": "0 ft", "y": "0 ft", "elevation": "99.50 ft"},
        ...             {"x": "12 ft", "y": "0 ft", "elevation": "99.50 ft"},
        ...             {"x": "0 ft", "y": "10 ft", "elevation": "99.60 ft"},
        ...         ],
        ...     },
        ...     shots={
        ...         "x": [
        ...             "1 ft",
        ...             "6 ft",
        ...             "11 ft",
        ...             "1 ft",
        ...             "6 ft",
        ...             "11 ft",
        ...             "1 ft",
        ...             "6 ft",
        ...             "11 ft",
        ...         ],
        ...         "y": ["1 ft", "1 ft", "1 ft", "5 ft", "5 ft", "5 ft", "9 ft", "9 ft", "9 ft"],
        ...         "elevation": [
        ...             "99.51 ft",
        ...             "99.52 ft",
        ...             "99.50 ft",
        ...             "99.55 ft",
        ...             "99.48 ft",
        ...             "99.56 ft",
        ...             "99.59 ft",
        ...             "99.60 ft",
        ...             "99.58 ft",
        ...         ],
        ...     },
        ...     least="3 in",
        ...     specified="4 in",
        ...     surface="trowelled",
        ...     ordered="1 1/2 yd3",
        ...     left_over="1/8 yd3",
        ...     puddles={"x": ["6 ft"], "y": ["5 ft"], "depth": ["1/2 in"]},
        ...     edges=[
        ...         {"edge": "left", "state": "walled"},
        ...         {"edge": "back", "state": "walled"},
        ...         {"edge": "right", "state": "walled"},
        ...     ],
        ... )
        >>> answer.count
        9

    Since 0.1.0.
    """

@final
class AsBuilt(AnswerResult):
    r"""What `as_built` gives."""

    @property
    def count(self) -> int:
        r"""how many shots on the work."""

    @property
    def missed(self) -> int:
        r"""how many of them are off by more than the tolerance."""

    @property
    def mean_deviation_in(self) -> float:
        r"""mean of shot less planned; positive is high [in]."""

    @property
    def mean_deviation_mm(self) -> float:
        r"""mean of shot less planned; positive is high [mm]."""

    @property
    def deviation_in(self) -> float | None:
        r"""standard deviation of shot less planned; none of one shot [in]."""

    @property
    def deviation_mm(self) -> float | None:
        r"""standard deviation of shot less planned; none of one shot [mm]."""

    @property
    def highest_in(self) -> float:
        r"""greatest of shot less planned [in]."""

    @property
    def highest_mm(self) -> float:
        r"""greatest of shot less planned [mm]."""

    @property
    def lowest_in(self) -> float:
        r"""least of shot less planned [in]."""

    @property
    def lowest_mm(self) -> float:
        r"""least of shot less planned [mm]."""

    @property
    def mean_over_area_in(self) -> float:
        r"""mean over the area of new floor less plan [in]."""

    @property
    def mean_over_area_mm(self) -> float:
        r"""mean over the area of new floor less plan [mm]."""

    @property
    def thickness_mean_in(self) -> float:
        r"""mean thickness got [in]."""

    @property
    def thickness_mean_mm(self) -> float:
        r"""mean thickness got [mm]."""

    @property
    def thickness_least_in(self) -> float:
        r"""least thickness got [in]."""

    @property
    def thickness_least_mm(self) -> float:
        r"""least thickness got [mm]."""

    @property
    def least_x_ft(self) -> float:
        r"""where it is, from the left [ft]."""

    @property
    def least_x_m(self) -> float:
        r"""where it is, from the left [m]."""

    @property
    def least_y_ft(self) -> float:
        r"""where it is, from the front [ft]."""

    @property
    def least_y_m(self) -> float:
        r"""where it is, from the front [m]."""

    @property
    def least_measured_in(self) -> float | None:
        r"""least thickness got between the shots of the old slab [in]."""

    @property
    def least_measured_mm(self) -> float | None:
        r"""least thickness got between the shots of the old slab [mm]."""

    @property
    def thickness_greatest_in(self) -> float:
        r"""greatest thickness got [in]."""

    @property
    def thickness_greatest_mm(self) -> float:
        r"""greatest thickness got [mm]."""

    @property
    def greatest_x_ft(self) -> float:
        r"""where that is, from the left [ft]."""

    @property
    def greatest_x_m(self) -> float:
        r"""where that is, from the left [m]."""

    @property
    def greatest_y_ft(self) -> float:
        r"""where that is, from the front [ft]."""

    @property
    def greatest_y_m(self) -> float:
        r"""where that is, from the front [m]."""

    @property
    def thinner_ft2(self) -> float | None:
        r"""area thinner than the least allowed, or else than specified [ft2]."""

    @property
    def thinner_m2(self) -> float | None:
        r"""area thinner than the least allowed, or else than specified [m2]."""

    @property
    def planned_mean_in(self) -> float:
        r"""mean thickness planned [in]."""

    @property
    def planned_mean_mm(self) -> float:
        r"""mean thickness planned [mm]."""

    @property
    def planned_volume_yd3(self) -> float:
        r"""concrete figured [yd3]."""

    @property
    def planned_volume_m3(self) -> float:
        r"""concrete figured [m3]."""

    @property
    def volume_yd3(self) -> float:
        r"""concrete in place, between old slab and new floor [yd3]."""

    @property
    def volume_m3(self) -> float:
        r"""concrete in place, between old slab and new floor [m3]."""

    @property
    def used_yd3(self) -> float | None:
        r"""concrete used: what came less what was left over [yd3]."""

    @property
    def used_m3(self) -> float | None:
        r"""concrete used: what came less what was left over [m3]."""

    @property
    def unaccounted_yd3(self) -> float | None:
        r"""used less in place [yd3]."""

    @property
    def unaccounted_m3(self) -> float | None:
        r"""used less in place [m3]."""

    @property
    def used_over_planned_ratio(self) -> float | None:
        r"""used over figured [1]."""

    @property
    def said(self) -> str:
        r"""all of it in a few sentences: what holds, what does not, what to mend."""

    @property
    def checks(self) -> dict[str, Column]:
        r"""what was asked, and whether it was kept."""

    @property
    def deviations(self) -> dict[str, Column]:
        r"""the shots beside the plan."""

    @property
    def falls(self) -> dict[str, Column]:
        r"""the slopes got."""

    @property
    def ponds(self) -> dict[str, Column]:
        r"""where water stands."""

    @property
    def seen(self) -> dict[str, Column]:
        r"""the puddles seen beside the water of the shots."""

    @property
    def mends(self) -> dict[str, Column]:
        r"""what to mend."""
