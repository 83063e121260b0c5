"""The operations of `asbuilt`: made from the table of operations; do not edit."""

from typing import Literal, final

from overslab.results import AnswerResult

from overslab.typing import Column, Quantity, RecordLike, Table, Units
from overslab.grade import Finish
from overslab.survey import Outline

__all__ = [
    "flatness_line",
    "FlatnessLine",
    "flatness",
    "Flatness",
    "flatness_combined",
    "FlatnessCombined",
    "straightedge",
    "Straightedge",
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
