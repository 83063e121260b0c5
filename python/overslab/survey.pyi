"""The operations of `survey`: made from the table of operations; do not edit."""

from typing import Literal, final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import AnswerResult, ArrayResult, Record, ScalarResult

from overslab.typing import Column, Count, Errors, File, Quantities, Quantity, RecordLike, Table, Units

__all__ = [
    "Outline",
    "Survey",
    "Points",
    "Tin",
    "rod_elevation",
    "RodElevation",
    "RodElevationArray",
    "level_book",
    "LevelBook",
    "outline_from_corners",
    "outline_from_sides",
    "survey_from_shots",
    "survey_from_grid",
    "survey_from_rods",
    "survey_triangles",
    "SurveyTriangles",
    "survey_suspects",
    "SurveySuspects",
    "survey_without",
    "survey_coverage",
    "SurveyCoverage",
    "two_peg_test",
    "TwoPegTest",
    "benchmark_recheck",
    "BenchmarkRecheck",
    "points_from_table",
    "read_points",
    "ReadPoints",
    "read_surface",
    "ReadSurface",
    "points_to_axes",
    "PointsToAxes",
    "points_along_wall",
    "PointsAlongWall",
    "part_strays",
    "PartStrays",
    "thin_points",
    "ThinPoints",
    "survey_from_points",
]

@final
class Outline(Record):
    r"""The plan edge of the work, with holes and named edges."""

    @property
    def area_ft2(self) -> float:
        r"""area of the work [ft2]."""

    @property
    def area_m2(self) -> float:
        r"""area of the work [m2]."""

    @property
    def perimeter_ft(self) -> float:
        r"""length of all its edges [ft]."""

    @property
    def perimeter_m(self) -> float:
        r"""length of all its edges [m]."""

    @property
    def squareness(self) -> str | None:
        r"""how well the measurements agree."""

    @property
    def corners(self) -> dict[str, Column]:
        r"""the corners, with the edge behind each."""

@final
class Survey(Record):
    r"""The surveyed old slab: outline, shots and the surface through them."""

    @property
    def area_ft2(self) -> float:
        r"""area of the work [ft2]."""

    @property
    def area_m2(self) -> float:
        r"""area of the work [m2]."""

    @property
    def shot_count(self) -> int:
        r"""how many places were shot."""

    @property
    def highest_ft(self) -> float:
        r"""height of the highest point [ft]."""

    @property
    def highest_m(self) -> float:
        r"""height of the highest point [m]."""

    @property
    def highest_x_ft(self) -> float:
        r"""its distance from the left [ft]."""

    @property
    def highest_x_m(self) -> float:
        r"""its distance from the left [m]."""

    @property
    def highest_y_ft(self) -> float:
        r"""its distance from the front [ft]."""

    @property
    def highest_y_m(self) -> float:
        r"""its distance from the front [m]."""

    @property
    def highest_shot(self) -> str | None:
        r"""the shot it is at."""

    @property
    def lowest_ft(self) -> float:
        r"""height of the lowest point [ft]."""

    @property
    def lowest_m(self) -> float:
        r"""height of the lowest point [m]."""

    @property
    def lowest_x_ft(self) -> float:
        r"""its distance from the left [ft]."""

    @property
    def lowest_x_m(self) -> float:
        r"""its distance from the left [m]."""

    @property
    def lowest_y_ft(self) -> float:
        r"""its distance from the front [ft]."""

    @property
    def lowest_y_m(self) -> float:
        r"""its distance from the front [m]."""

    @property
    def lowest_shot(self) -> str | None:
        r"""the shot it is at."""

    @property
    def out_of_level_in(self) -> float:
        r"""highest less lowest [in]."""

    @property
    def out_of_level_mm(self) -> float:
        r"""highest less lowest [mm]."""

    @property
    def mean_ft(self) -> float:
        r"""mean height over the area [ft]."""

    @property
    def mean_m(self) -> float:
        r"""mean height over the area [m]."""

    @property
    def rise_x_in_per_ft(self) -> float:
        r"""rise of the fitted plane along x [in/ft]."""

    @property
    def rise_x_percent(self) -> float:
        r"""rise of the fitted plane along x [%]."""

    @property
    def rise_y_in_per_ft(self) -> float:
        r"""rise of the fitted plane along y [in/ft]."""

    @property
    def rise_y_percent(self) -> float:
        r"""rise of the fitted plane along y [%]."""

    @property
    def unevenness_in(self) -> float:
        r"""root mean square of the shots about that plane [in]."""

    @property
    def unevenness_mm(self) -> float:
        r"""root mean square of the shots about that plane [mm]."""

    @property
    def beyond_ft2(self) -> float:
        r"""area beyond the shots [ft2]."""

    @property
    def beyond_m2(self) -> float:
        r"""area beyond the shots [m2]."""

    @property
    def unsurveyed_ft2(self) -> float:
        r"""area in triangles that leave the outline [ft2]."""

    @property
    def unsurveyed_m2(self) -> float:
        r"""area in triangles that leave the outline [m2]."""

    @property
    def ambiguity_less_yd3(self) -> float:
        r"""volume less by other triangulations [yd3]."""

    @property
    def ambiguity_less_m3(self) -> float:
        r"""volume less by other triangulations [m3]."""

    @property
    def ambiguity_more_yd3(self) -> float:
        r"""volume more by other triangulations [yd3]."""

    @property
    def ambiguity_more_m3(self) -> float:
        r"""volume more by other triangulations [m3]."""

    @property
    def shots(self) -> dict[str, Column]:
        r"""the shots."""

@final
class Points(Record):
    r"""Points with heights, in the axes of where they came from: of a file, a scan or a total station."""

    @property
    def point_count(self) -> int:
        r"""how many points there are."""

    @property
    def least_x_ft(self) -> float:
        r"""least along the first plan axis [ft]."""

    @property
    def least_x_m(self) -> float:
        r"""least along the first plan axis [m]."""

    @property
    def greatest_x_ft(self) -> float:
        r"""greatest along the first plan axis [ft]."""

    @property
    def greatest_x_m(self) -> float:
        r"""greatest along the first plan axis [m]."""

    @property
    def least_y_ft(self) -> float:
        r"""least along the second plan axis [ft]."""

    @property
    def least_y_m(self) -> float:
        r"""least along the second plan axis [m]."""

    @property
    def greatest_y_ft(self) -> float:
        r"""greatest along the second plan axis [ft]."""

    @property
    def greatest_y_m(self) -> float:
        r"""greatest along the second plan axis [m]."""

    @property
    def lowest_ft(self) -> float:
        r"""height of the lowest [ft]."""

    @property
    def lowest_m(self) -> float:
        r"""height of the lowest [m]."""

    @property
    def highest_ft(self) -> float:
        r"""height of the highest [ft]."""

    @property
    def highest_m(self) -> float:
        r"""height of the highest [m]."""

    @property
    def points(self) -> dict[str, Column]:
        r"""the points."""

@final
class Tin(Record):
    r"""A triangulated surface as it was handed over: points, and the faces between them."""

    @property
    def name(self) -> str | None:
        r"""its name."""

    @property
    def point_count(self) -> int:
        r"""how many points there are."""

    @property
    def face_count(self) -> int:
        r"""how many faces there are."""

    @property
    def lowest_ft(self) -> float:
        r"""height of the lowest point [ft]."""

    @property
    def lowest_m(self) -> float:
        r"""height of the lowest point [m]."""

    @property
    def highest_ft(self) -> float:
        r"""height of the highest point [ft]."""

    @property
    def highest_m(self) -> float:
        r"""height of the highest point [m]."""

    @property
    def points(self) -> dict[str, Column]:
        r"""the points."""

    @property
    def faces(self) -> dict[str, Column]:
        r"""the faces."""

@overload
def rod_elevation(  # type: ignore[overload-overlap]
    benchmark: Quantity,
    backsight: Quantity,
    rod: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> RodElevation:
    r"""The elevation of a point from one set-up of the level.

    Rule: height of instrument = benchmark + backsight; elevation = height of instrument - rod.
    Takes for granted: the line of sight is level and the rod plumb.

    Args:
        benchmark: elevation of the benchmark [ft | m]; at least -3280.83989501 ft, at most
            32808.3989501 ft (at least -1000 m, at most 10000 m)
        backsight: rod on the benchmark [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
            at most 10 m)
        rod: rod on the point [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at most
            10 m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        RodElevation, with the attributes
            elevation_ft, elevation_m: elevation of the point [ft | m]
            height_of_instrument_ft, height_of_instrument_m: height of the line of sight [ft | m]
        and notes; for arrays RodElevationArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING); a comma stands where it could be a decimal comma (DECIMAL_COMMA)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument

    Example:
        >>> from overslab.survey import rod_elevation
        >>> answer = rod_elevation(benchmark="2156.77 ft", backsight="2.67 ft", rod="6.72 ft")
        >>> round(answer.elevation_ft, 4)
        2152.72

    Since 0.1.0.
    """

@overload
def rod_elevation(
    benchmark: Quantity | Quantities,
    backsight: Quantity | Quantities,
    rod: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> RodElevationArray: ...

@final
class RodElevation(ScalarResult):
    r"""What `rod_elevation` gives."""

    @property
    def elevation_ft(self) -> float:
        r"""elevation of the point [ft]."""

    @property
    def elevation_m(self) -> float:
        r"""elevation of the point [m]."""

    @property
    def height_of_instrument_ft(self) -> float:
        r"""height of the line of sight [ft]."""

    @property
    def height_of_instrument_m(self) -> float:
        r"""height of the line of sight [m]."""

@final
class RodElevationArray(ArrayResult):
    r"""What `rod_elevation` gives for arrays."""

    @property
    def elevation_ft(self) -> npt.NDArray[np.float64]:
        r"""elevation of the point [ft]."""

    @property
    def elevation_m(self) -> npt.NDArray[np.float64]:
        r"""elevation of the point [m]."""

    @property
    def height_of_instrument_ft(self) -> npt.NDArray[np.float64]:
        r"""height of the line of sight [ft]."""

    @property
    def height_of_instrument_m(self) -> npt.NDArray[np.float64]:
        r"""height of the line of sight [m]."""

def level_book(
    page: Table,
    benchmarks: Table,
    *,
    closure_tolerance: Quantity | None = None,
    recheck_tolerance: Quantity | None = None,
    units: Units | None = None,
) -> LevelBook:
    r"""Reduces a level book: heights of instrument, elevations, closure.

    Rule: height of instrument = elevation + backsight; elevation = height of instrument - sight; sum of
        backsights - sum of foresights = last - first; misclosure = found - known, shared out by
        set-ups.
    Takes for granted: every reading is equally good.

    Args:
        page: the readings in the order they were booked; a table of at least 1 row, each a point with
            its backsight, sight, foresight or repeated backsight, with the columns
            point: name of the point; a text
            backsight: rod on a known point, opens a set-up [ft | m]; at least 0 ft, at most
                32.8083989501 ft (at least 0 m, at most 10 m); may be left out
            sight: rod on any point [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at
                most 10 m); may be left out
            foresight: rod on the turning point or closing benchmark [ft | m]; at least 0 ft, at most
                32.8083989501 ft (at least 0 m, at most 10 m); may be left out
            close: rod on the backsight point again [ft | m]; at least 0 ft, at most 32.8083989501 ft
                (at least 0 m, at most 10 m); may be left out
        benchmarks: the points of known elevation; a table of at least 1 row, each a point of known
            elevation, with the columns
            name: its name; a text
            elevation: its elevation [ft | m]; at least -3280.83989501 ft, at most 32808.3989501 ft (at
                least -1000 m, at most 10000 m)
        closure_tolerance: how far a line of two or more set-ups may be off [in | mm]; at least 0 in (at
            least 0 mm); may be left out
        recheck_tolerance: how far one set-up may be off: its backsight point read again, or the
            benchmark it ends on [in | mm]; at least 0 in (at least 0 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        LevelBook, with the attributes
            misclosure_in, misclosure_mm: found less known where the line closes [in | mm]
            backsights_ft, backsights_m: sum of the backsights of the first line [ft | m]
            foresights_ft, foresights_m: sum of its foresights [ft | m]
            rise_ft, rise_m: last less first of that line [ft | m]
            setups: the set-ups, a table of setups
            points: the points, a table of points
        and notes, basis and taken.

    Raises:
        SurveyError: the level book does not close within its tolerance (CLOSURE_EXCEEDED); the level
            book lacks a reading it needs (BOOK_INCOMPLETE)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the list is empty (EMPTY_LIST)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument
        one set-up closes within 1/8 in, several within 1/4 in: common practice, no source

    Example:
        >>> from overslab.survey import level_book
        >>> answer = level_book(
        ...     page=[
        ...         {"point": "BM A", "backsight": "3.10 ft"},
        ...         {"point": "TP1", "foresight": "9.82 ft", "backsight": "6.44 ft"},
        ...         {"point": "TP2", "foresight": "6.96 ft", "backsight": "8.76 ft"},
        ...         {"point": "TP3", "foresight": "3.27 ft", "backsight": "7.12 ft"},
        ...         {"point": "BM B", "foresight": "10.42 ft"},
        ...     ],
        ...     benchmarks=[
        ...         {"name": "BM A", "elevation": "100.00 ft"},
        ...         {"name": "BM B", "elevation": "94.91 ft"},
        ...     ],
        ...     closure_tolerance="0.05 ft",
        ... )
        >>> round(answer.misclosure_in, 4)
        0.48

    Since 0.1.0.
    """

@final
class LevelBook(AnswerResult):
    r"""What `level_book` gives."""

    @property
    def misclosure_in(self) -> float | None:
        r"""found less known where the line closes [in]."""

    @property
    def misclosure_mm(self) -> float | None:
        r"""found less known where the line closes [mm]."""

    @property
    def backsights_ft(self) -> float | None:
        r"""sum of the backsights of the first line [ft]."""

    @property
    def backsights_m(self) -> float | None:
        r"""sum of the backsights of the first line [m]."""

    @property
    def foresights_ft(self) -> float | None:
        r"""sum of its foresights [ft]."""

    @property
    def foresights_m(self) -> float | None:
        r"""sum of its foresights [m]."""

    @property
    def rise_ft(self) -> float | None:
        r"""last less first of that line [ft]."""

    @property
    def rise_m(self) -> float | None:
        r"""last less first of that line [m]."""

    @property
    def setups(self) -> dict[str, Column]:
        r"""the set-ups."""

    @property
    def points(self) -> dict[str, Column]:
        r"""the points."""

def outline_from_corners(
    corners: Table,
    *,
    units: Units | None = None,
) -> Outline:
    r"""The plan edge of the work from its corners in order.

    Rule: area = 1/2 sum (x_i y_i+1 - x_i+1 y_i).
    Takes for granted: edges are straight between corners; either way round.

    Args:
        corners: the corners in order; a table of at least 3 rows, each a corner of the plan edge, with
            the columns
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            edge: name of the edge to the next corner; a text; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Outline: The plan edge of the work, with holes and named edges. It has notes, basis and taken
            besides.

    Raises:
        SurveyError: the outline crosses itself (OUTLINE_CROSSES); the outline has too few corners or no
            area (OUTLINE_TOO_FEW)
        FormError: the list is empty (EMPTY_LIST); lists that belong together differ in length
            (LENGTH_MISMATCH)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import outline_from_corners
        >>> answer = outline_from_corners(
        ...     corners={
        ...         "x": ["0 ft", "20 ft", "20 ft", "0 ft"],
        ...         "y": ["0 ft", "0 ft", "32 ft", "32 ft"],
        ...         "edge": ["front", "right", "back", "left"],
        ...     },
        ... )
        >>> round(answer.area_ft2, 4)
        640.0

    Since 0.1.0.
    """

def outline_from_sides(
    sides: Table,
    *,
    diagonal: Quantity | None = None,
    second_diagonal: Quantity | None = None,
    units: Units | None = None,
) -> Outline:
    r"""The plan edge of the work from wall lengths in order, with a diagonal or two of four walls.

    Rule: corners square and the closing gap shared out; or the quadrilateral of four sides and its
        diagonals.
    Takes for granted: the first wall runs along x from the first corner, the work on its left.

    Args:
        sides: the walls in order; a table of at least 4 rows, each a wall, with the columns
            length: its length [ft | m]; more than 0 ft, at most 32808.3989501 ft (more than 0 m, at
                most 10000 m)
            name: its name; a text; may be left out
            turn: the square turn at its end, left where not given; one of "left", "right"; may be left
                out
        diagonal: first corner to third, of four walls [ft | m]; more than 0 ft, at most 32808.3989501
            ft (more than 0 m, at most 10000 m); may be left out
        second_diagonal: second corner to fourth, of four walls [ft | m]; more than 0 ft, at most
            32808.3989501 ft (more than 0 m, at most 10000 m); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Outline: The plan edge of the work, with holes and named edges. It has notes, basis and taken
            besides.

    Raises:
        SurveyError: no figure has these sides and diagonals (DIAGONAL_IMPOSSIBLE); the wall lengths do
            not close (OUTLINE_OPEN)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import outline_from_sides
        >>> answer = outline_from_sides(
        ...     sides=[
        ...         {"name": "front", "length": "20 ft"},
        ...         {"name": "right", "length": "32 ft"},
        ...         {"name": "back", "length": "20 ft"},
        ...         {"name": "left", "length": "32 ft"},
        ...     ],
        ...     diagonal="37' 8 7/8\"",
        ... )
        >>> round(answer.area_ft2, 4)
        640.0

    Since 0.1.0.
    """

def survey_from_shots(
    outline: Outline | RecordLike,
    shots: Table,
    *,
    instrument: Literal["laser", "optical_hundredths", "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"] | None = None,
    texture: Literal["trowelled", "broomed", "scaled", "rough"] | None = None,
    beyond_allowed: Literal["no", "yes"] | None = None,
    units: Units | None = None,
) -> Survey:
    r"""The surface of the old slab through shots in any order.

    Rule: Delaunay triangles, each plane; shots on one circle are filled from their mean.
    Takes for granted: the slab is plane between neighbouring shots.

    Args:
        outline: the plan edge of the work; an Outline
        shots: the shots; a table of at least 1 row, each a shot of the old slab, with the columns
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            elevation: height above the job datum [ft | m]; at least -32808.3989501 ft, at most
                32808.3989501 ft (at least -10000 m, at most 10000 m)
            name: its name; a text; may be left out
            outside: outside the outline on purpose; one of "no", "yes"; may be left out
            step: one side of a step; one of "no", "yes"; may be left out
        instrument: what the readings were taken with; one of "laser", "optical_hundredths",
            "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
            is not given laser is taken: most crews have one
        texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
            it is not given broomed is taken: most old slabs are
        beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
            where it is not given no is taken: heights that far out are a guess
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
            and taken besides.

    Raises:
        SurveyError: too few shots for a surface (TOO_FEW_SHOTS); all shots lie on one line
            (COLLINEAR_SHOTS); two heights stand at one place (TWO_HEIGHTS); a shot lies outside the
            outline (SHOT_OUTSIDE)
        FormError: the list is empty (EMPTY_LIST); the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived
        reading and texture deviations behind the site words: common practice, no source

    Example:
        >>> from overslab.survey import survey_from_shots
        >>> answer = survey_from_shots(
        ...     outline={
        ...         "sides": [
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...         ],
        ...     },
        ...     shots={
        ...         "x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"],
        ...         "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
        ...         "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"],
        ...     },
        ... )
        >>> round(answer.area_ft2, 4)
        120.0

    Since 0.1.0.
    """

def survey_from_grid(
    outline: Outline | RecordLike,
    columns: Table,
    rows: Table,
    elevations: Table,
    *,
    instrument: Literal["laser", "optical_hundredths", "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"] | None = None,
    texture: Literal["trowelled", "broomed", "scaled", "rough"] | None = None,
    beyond_allowed: Literal["no", "yes"] | None = None,
    units: Units | None = None,
) -> Survey:
    r"""The surface of the old slab through a grid of elevations, rows and columns spaced from two walls.

    Rule: each cell is four triangles about the mean of its corners.
    Takes for granted: the slab is plane over each triangle.

    Args:
        outline: the plan edge of the work; an Outline
        columns: the grid columns from the left wall; a table of at least 1 row, each a grid column,
            with the columns
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
        rows: the grid rows from the front wall; a table of at least 1 row, each a grid row, with the
            columns
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
        elevations: the heights, row by row; a table of at least 1 row, each the height of a grid place,
            row by row, with the columns
            elevation: height; empty where not shot [ft | m]; at least -32808.3989501 ft, at most
                32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
        instrument: what the readings were taken with; one of "laser", "optical_hundredths",
            "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
            is not given laser is taken: most crews have one
        texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
            it is not given broomed is taken: most old slabs are
        beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
            where it is not given no is taken: heights that far out are a guess
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
            and taken besides.

    Raises:
        FormError: lists that belong together differ in length (LENGTH_MISMATCH); the list is empty
            (EMPTY_LIST)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        SurveyError: the work reaches too far beyond the shots (BEYOND_SHOTS)

    Basis:
        plane and solid geometry: derived
        reading and texture deviations behind the site words: common practice, no source

    Example:
        >>> from overslab.survey import survey_from_grid
        >>> answer = survey_from_grid(
        ...     outline={
        ...         "sides": [
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...         ],
        ...     },
        ...     columns={"x": ["1 ft", "6 ft", "11 ft"]},
        ...     rows={"y": ["1 ft", "9 ft"]},
        ...     elevations={
        ...         "elevation": [
        ...             "99.20 ft",
        ...             "99.18 ft",
        ...             "99.15 ft",
        ...             "99.22 ft",
        ...             "99.19 ft",
        ...             "99.25 ft",
        ...         ],
        ...     },
        ... )
        >>> round(answer.area_ft2, 4)
        120.0

    Since 0.1.0.
    """

def survey_from_rods(
    outline: Outline | RecordLike,
    columns: Table,
    rows: Table,
    rods: Table,
    benchmark: Quantity,
    backsight: Quantity,
    *,
    instrument: Literal["laser", "optical_hundredths", "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"] | None = None,
    texture: Literal["trowelled", "broomed", "scaled", "rough"] | None = None,
    beyond_allowed: Literal["no", "yes"] | None = None,
    units: Units | None = None,
) -> Survey:
    r"""The surface of the old slab through a grid of rod readings from one set-up.

    Rule: elevation = benchmark + backsight - rod.
    Takes for granted: one set-up; the slab is plane over each triangle.

    Args:
        outline: the plan edge of the work; an Outline
        columns: the grid columns from the left wall; a table of at least 1 row, each a grid column,
            with the columns
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
        rows: the grid rows from the front wall; a table of at least 1 row, each a grid row, with the
            columns
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
        rods: the readings, row by row; a table of at least 1 row, each the reading on a grid place, row
            by row, with the columns
            rod: reading; empty where not shot [ft | m]; at least 0 ft, at most 32.8083989501 ft (at
                least 0 m, at most 10 m); may be left out
        benchmark: elevation of the benchmark [ft | m]; at least -3280.83989501 ft, at most
            32808.3989501 ft (at least -1000 m, at most 10000 m)
        backsight: rod on the benchmark [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
            at most 10 m)
        instrument: what the readings were taken with; one of "laser", "optical_hundredths",
            "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
            is not given laser is taken: most crews have one
        texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
            it is not given broomed is taken: most old slabs are
        beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
            where it is not given no is taken: heights that far out are a guess
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
            and taken besides.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)
        FormError: lists that belong together differ in length (LENGTH_MISMATCH)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument
        plane and solid geometry: derived
        reading and texture deviations behind the site words: common practice, no source

    Example:
        >>> from overslab.survey import survey_from_rods
        >>> answer = survey_from_rods(
        ...     outline={
        ...         "sides": [
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...         ],
        ...     },
        ...     columns={"x": ["1 ft", "6 ft", "11 ft"]},
        ...     rows={"y": ["1 ft", "9 ft"]},
        ...     rods={
        ...         "rod": [
        ...             "5' 0 5/8\"",
        ...             "5' 0 1/2\"",
        ...             "5' 0 3/8\"",
        ...             "4' 11 7/8\"",
        ...             "5' 0\"",
        ...             "4' 11 7/8\"",
        ...         ],
        ...     },
        ...     benchmark="100 ft",
        ...     backsight="4' 2 1/2\"",
        ... )
        >>> round(answer.area_ft2, 4)
        120.0

    Since 0.1.0.
    """

def survey_triangles(
    survey: Survey | RecordLike,
    *,
    units: Units | None = None,
) -> SurveyTriangles:
    r"""The triangles of the old slab, which tile the work exactly: what every volume is the sum of.

    Rule: Delaunay triangles of the shots, those on one circle as a fan from their mean, cut at the
        outline.
    Takes for granted: the slab is plane over each triangle.

    Args:
        survey: the old slab; a Survey
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SurveyTriangles, with the attributes
            triangles: the triangles, a table of triangles
        and notes, basis and taken.

    Raises:
        FormError: the value is of another kind than the port takes (KIND_MISMATCH); the list is empty
            (EMPTY_LIST)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import survey_triangles
        >>> answer = survey_triangles(
        ...     survey={
        ...         "outline": {
        ...             "sides": [
        ...                 {"length": "12 ft"},
        ...                 {"length": "10 ft"},
        ...                 {"length": "12 ft"},
        ...                 {"length": "10 ft"},
        ...             ],
        ...         },
        ...         "grid": {
        ...             "columns": ["1 ft", "11 ft"],
        ...             "rows": ["1 ft", "9 ft"],
        ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
        ...         },
        ...     },
        ... )

    Since 0.1.0.
    """

@final
class SurveyTriangles(AnswerResult):
    r"""What `survey_triangles` gives."""

    @property
    def triangles(self) -> dict[str, Column]:
        r"""the triangles."""

def survey_suspects(
    survey: Survey | RecordLike,
    *,
    rod: Literal["inches", "tenths", "metric", "unknown"] | None = None,
    units: Units | None = None,
) -> SurveySuspects:
    r"""The shots that do not go with their neighbours, with the slip each looks like; nothing is changed. On a thousand invented books with one planted slip every one of 6 in or more is found and its kind named, an inch in nine of ten; three of ten books without a slip name some shot.

    Rule: off = booked - best linear prediction from the other shots; a suspect where a slip of 1 in is
        five times likelier than chance.
    Takes for granted: the slab is a plane with waves that reach 10 ft; readings and texture are normal
        but for slips.

    Args:
        survey: the old slab; a Survey
        rod: how the rod is graduated; without it the readings tell; one of "inches", "tenths",
            "metric", "unknown"; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SurveySuspects, with the attributes
            suspects: the suspects, the farthest off first, a table of suspects
            judged: how many shots were judged
            roughness_in, roughness_mm: standard deviation that each shot has for itself: reading,
                texture and small waves [in | mm]
            graduation: how the rod is graduated: inches, tenths, metric, unknown
        and notes, basis and taken.

    Raises:
        FormError: the value is of another kind than the port takes (KIND_MISMATCH); the word is not one
            of the choices (WORD_UNKNOWN); the list is empty (EMPTY_LIST)

    Basis:
        each shot predicted from the others, its difference held against a robust scale: Statistics
            textbooks, leave-one-out prediction (any), kriging, from memory: confirm
        readings are booked an inch, 6, 10, 12 in, a tenth, half a foot, 5 cm, 10 cm or a metre off:
            common practice, no source
        reading and texture deviations behind the site words: common practice, no source

    Example:
        >>> from overslab.survey import survey_suspects
        >>> answer = survey_suspects(
        ...     survey={
        ...         "outline": {
        ...             "sides": [
        ...                 {"length": "24 ft"},
        ...                 {"length": "24 ft"},
        ...                 {"length": "24 ft"},
        ...                 {"length": "24 ft"},
        ...             ],
        ...         },
        ...         "grid": {
        ...             "columns": ["1 ft", "8 ft", "16 ft", "23 ft"],
        ...             "rows": ["1 ft", "8 ft", "16 ft", "23 ft"],
        ...             "elevations": [
        ...                 "99.20 ft",
        ...                 "99.18 ft",
        ...                 "99.19 ft",
        ...                 "99.17 ft",
        ...                 "99.24 ft",
        ...                 "99.22 ft",
        ...                 "99.73 ft",
        ...                 "99.23 ft",
        ...                 "99.29 ft",
        ...                 "99.28 ft",
        ...                 "99.26 ft",
        ...                 "99.27 ft",
        ...                 "99.33 ft",
        ...                 "99.31 ft",
        ...                 "99.32 ft",
        ...                 "99.30 ft",
        ...             ],
        ...         },
        ...     },
        ... )
        >>> answer.judged
        16

    Since 0.1.0.
    """

@final
class SurveySuspects(AnswerResult):
    r"""What `survey_suspects` gives."""

    @property
    def suspects(self) -> dict[str, Column]:
        r"""the suspects, the farthest off first."""

    @property
    def judged(self) -> int:
        r"""how many shots were judged."""

    @property
    def roughness_in(self) -> float:
        r"""standard deviation that each shot has for itself: reading, texture and small waves [in]."""

    @property
    def roughness_mm(self) -> float:
        r"""standard deviation that each shot has for itself: reading, texture and small waves [mm]."""

    @property
    def graduation(self) -> Literal["inches", "tenths", "metric", "unknown"]:
        r"""how the rod is graduated."""

def survey_without(
    survey: Survey | RecordLike,
    leave_out: Table,
    *,
    units: Units | None = None,
) -> Survey:
    r"""The old slab without the shots named; the others keep their names.

    Rule: the surface through the shots that are left.
    Takes for granted: the caller knows why.

    Args:
        survey: the old slab; a Survey
        leave_out: the shots to leave out; a table of at least 1 row, each a shot to leave out, with the
            columns
            name: its name; a text
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
            and taken besides.

    Raises:
        SurveyError: no shot of the survey has this name (SHOT_UNKNOWN); too few shots for a surface
            (TOO_FEW_SHOTS); all shots lie on one line (COLLINEAR_SHOTS)
        FormError: the list is empty (EMPTY_LIST)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import survey_without
        >>> answer = survey_without(
        ...     survey={
        ...         "outline": {
        ...             "sides": [
        ...                 {"length": "12 ft"},
        ...                 {"length": "10 ft"},
        ...                 {"length": "12 ft"},
        ...                 {"length": "10 ft"},
        ...             ],
        ...         },
        ...         "grid": {
        ...             "columns": ["1 ft", "6 ft", "11 ft"],
        ...             "rows": ["1 ft", "9 ft"],
        ...             "elevations": [
        ...                 "99.20 ft",
        ...                 "99.68 ft",
        ...                 "99.15 ft",
        ...                 "99.22 ft",
        ...                 "99.19 ft",
        ...                 "99.25 ft",
        ...             ],
        ...         },
        ...     },
        ...     leave_out={"name": ["A2"]},
        ... )
        >>> round(answer.area_ft2, 4)
        120.0

    Since 0.1.0.
    """

def survey_coverage(
    survey: Survey | RecordLike,
    *,
    near: Quantity | None = None,
    most: Count | None = None,
    units: Units | None = None,
) -> SurveyCoverage:
    r"""How much of the work lies too far from any shot, and where the next shots belong.

    Rule: uncovered = area of the work outside all circles about the shots; next = the middle of the
        largest circle without a shot.
    Takes for granted: straight distances, through walls and holes.

    Args:
        survey: the old slab; a Survey
        near: how near a shot should be to every place [ft | m]; at least 0.0416666666667 ft, at most
            328.083989501 ft (at least 0.0127 m, at most 100 m); where it is not given 6 ft is taken: a
            grid of 8 ft leaves no place farther, common practice, no source
        most: how many places for more shots to tell; a whole number from 0 to 500; where it is not
            given 12 is taken: an hour's work
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SurveyCoverage, with the attributes
            area_ft2, area_m2: area of the work [ft2 | m2]
            uncovered_ft2, uncovered_m2: area farther than that from every shot [ft2 | m2]
            share_percent: its share of the work [%]
            beyond_ft2, beyond_m2: area beyond the last shots [ft2 | m2]
            unsurveyed_ft2, unsurveyed_m2: area in triangles that leave the outline [ft2 | m2]
            farthest_ft, farthest_m: the farthest any place is from a shot [ft | m]
            farthest_x_ft, farthest_x_m: where it is, from the left [ft | m]
            farthest_y_ft, farthest_y_m: where it is, from the front [ft | m]
            next: where the next shots belong, until every place is near enough, a table of next
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)
        FormError: the value is of another kind than the port takes (KIND_MISMATCH)

    Basis:
        plane and solid geometry: derived
        no place of the floor farther than 6 ft from a shot, as on a grid of 8 ft: common practice, no
            source

    Example:
        >>> from overslab.survey import survey_coverage
        >>> answer = survey_coverage(
        ...     survey={
        ...         "outline": {
        ...             "sides": [
        ...                 {"length": "20 ft"},
        ...                 {"length": "30 ft"},
        ...                 {"length": "20 ft"},
        ...                 {"length": "30 ft"},
        ...             ],
        ...         },
        ...         "grid": {
        ...             "columns": ["1 ft", "19 ft"],
        ...             "rows": ["1 ft", "29 ft"],
        ...             "elevations": ["99.20 ft", "99.15 ft", "99.22 ft", "99.25 ft"],
        ...         },
        ...     },
        ... )
        >>> round(answer.area_ft2, 4)
        600.0

    Since 0.1.0.
    """

@final
class SurveyCoverage(AnswerResult):
    r"""What `survey_coverage` gives."""

    @property
    def area_ft2(self) -> float:
        r"""area of the work [ft2]."""

    @property
    def area_m2(self) -> float:
        r"""area of the work [m2]."""

    @property
    def uncovered_ft2(self) -> float:
        r"""area farther than that from every shot [ft2]."""

    @property
    def uncovered_m2(self) -> float:
        r"""area farther than that from every shot [m2]."""

    @property
    def share_percent(self) -> float:
        r"""its share of the work [%]."""

    @property
    def beyond_ft2(self) -> float:
        r"""area beyond the last shots [ft2]."""

    @property
    def beyond_m2(self) -> float:
        r"""area beyond the last shots [m2]."""

    @property
    def unsurveyed_ft2(self) -> float:
        r"""area in triangles that leave the outline [ft2]."""

    @property
    def unsurveyed_m2(self) -> float:
        r"""area in triangles that leave the outline [m2]."""

    @property
    def farthest_ft(self) -> float:
        r"""the farthest any place is from a shot [ft]."""

    @property
    def farthest_m(self) -> float:
        r"""the farthest any place is from a shot [m]."""

    @property
    def farthest_x_ft(self) -> float:
        r"""where it is, from the left [ft]."""

    @property
    def farthest_x_m(self) -> float:
        r"""where it is, from the left [m]."""

    @property
    def farthest_y_ft(self) -> float:
        r"""where it is, from the front [ft]."""

    @property
    def farthest_y_m(self) -> float:
        r"""where it is, from the front [m]."""

    @property
    def next(self) -> dict[str, Column]:
        r"""where the next shots belong, until every place is near enough."""

def two_peg_test(
    middle_a: Quantity,
    middle_b: Quantity,
    end_a: Quantity,
    end_b: Quantity,
    distance_a: Quantity,
    distance_b: Quantity,
    *,
    limit: Quantity | None = None,
    units: Units | None = None,
) -> TwoPegTest:
    r"""Whether the line of sight of a level or laser is level, from readings on two pegs.

    Rule: rise = middle_a - middle_b; tilt = ((end_a - end_b) - rise) / (distance_a - distance_b); right
        = reading - tilt distance.
    Takes for granted: the first set-up half way between the pegs; curvature and refraction left out.

    Args:
        middle_a: rod on peg A from half way between the pegs [ft | m]; at least 0 ft, at most
            32.8083989501 ft (at least 0 m, at most 10 m)
        middle_b: rod on peg B from there [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0
            m, at most 10 m)
        end_a: rod on peg A from near one peg [ft | m]; at least 0 ft, at most 32.8083989501 ft (at
            least 0 m, at most 10 m)
        end_b: rod on peg B from there [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m,
            at most 10 m)
        distance_a: from the instrument to peg A in the second set-up [ft | m]; at least 0 ft, at most
            3280.83989501 ft (at least 0 m, at most 1000 m)
        distance_b: from the instrument to peg B in the second set-up [ft | m]; at least 0 ft, at most
            3280.83989501 ft (at least 0 m, at most 1000 m)
        limit: the tilt allowed [in/ft | mm/m]; at least 0 in/ft, at most 1.2 in/ft (at least 0 mm/m, at
            most 100 mm/m); where it is not given 0.00125 in/ft is taken: 1/16 in per 50 ft, common
            practice, no source
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        TwoPegTest, with the attributes
            rise_ft, rise_m: how much higher peg B stands than peg A [ft | m]
            tilt_in_per_ft, tilt_mm_per_m: rise of the line of sight over the distance [in/ft | mm/m]
            right_a_ft, right_a_m: what the second set-up should read on peg A [ft | m]
            right_b_ft, right_b_m: what it should read on peg B [ft | m]
            off_in, off_mm: how much too high it reads on the farther peg [in | mm]
            passes: whether the tilt is within what is allowed: no, yes
            good_for_ft, good_for_m: difference of sights to benchmark and shot that the tilt turns into
                1/8 in [ft | m]
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        from half way between two pegs the difference of the readings is free of the tilt of the line of
            sight: Surveying textbooks, two-peg test (any), collimation
        the line of sight may tilt by 1/16 in per 50 ft: common practice, no source

    Example:
        >>> from overslab.survey import two_peg_test
        >>> answer = two_peg_test(
        ...     middle_a="4.52 ft",
        ...     middle_b="5.17 ft",
        ...     end_a="4.86 ft",
        ...     end_b="5.49 ft",
        ...     distance_a="10 ft",
        ...     distance_b="110 ft",
        ... )
        >>> round(answer.rise_ft, 4)
        -0.65

    Since 0.1.0.
    """

@final
class TwoPegTest(AnswerResult):
    r"""What `two_peg_test` gives."""

    @property
    def rise_ft(self) -> float:
        r"""how much higher peg B stands than peg A [ft]."""

    @property
    def rise_m(self) -> float:
        r"""how much higher peg B stands than peg A [m]."""

    @property
    def tilt_in_per_ft(self) -> float:
        r"""rise of the line of sight over the distance [in/ft]."""

    @property
    def tilt_mm_per_m(self) -> float:
        r"""rise of the line of sight over the distance [mm/m]."""

    @property
    def right_a_ft(self) -> float:
        r"""what the second set-up should read on peg A [ft]."""

    @property
    def right_a_m(self) -> float:
        r"""what the second set-up should read on peg A [m]."""

    @property
    def right_b_ft(self) -> float:
        r"""what it should read on peg B [ft]."""

    @property
    def right_b_m(self) -> float:
        r"""what it should read on peg B [m]."""

    @property
    def off_in(self) -> float:
        r"""how much too high it reads on the farther peg [in]."""

    @property
    def off_mm(self) -> float:
        r"""how much too high it reads on the farther peg [mm]."""

    @property
    def passes(self) -> Literal["no", "yes"]:
        r"""whether the tilt is within what is allowed."""

    @property
    def good_for_ft(self) -> float | None:
        r"""difference of sights to benchmark and shot that the tilt turns into 1/8 in [ft]."""

    @property
    def good_for_m(self) -> float | None:
        r"""difference of sights to benchmark and shot that the tilt turns into 1/8 in [m]."""

def benchmark_recheck(
    first: Quantity,
    again: Quantity,
    *,
    shots: Table | None = None,
    time_again: Quantity | None = None,
    tolerance: Quantity | None = None,
    units: Units | None = None,
) -> BenchmarkRecheck:
    r"""The benchmark read again later: how far off, and what that does to the readings between, or to marks set out by the first.

    Rule: difference = again - first; correction = difference x time / time_again, or k / (n + 1) of it
        for shot k of n.
    Takes for granted: the line of sight moved evenly; a set-up of a level book that closes shares half
        out to all its sights instead.

    Args:
        first: rod on the benchmark before [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0
            m, at most 10 m)
        again: rod on the benchmark after; add the difference to every rod mark [ft | m]; at least 0 ft,
            at most 32.8083989501 ft (at least 0 m, at most 10 m)
        shots: the readings between; a table of at least 0 rows, each a reading between the two on the
            benchmark, in the order read, with the columns; may be left out
            rod: the reading [ft | m]; at least 0 ft, at most 32.8083989501 ft (at least 0 m, at most 10
                m)
            time: when, from the first reading of the benchmark [min]; at least 0 min; may be left out
        time_again: when the benchmark was read again [min]; at least 0 min; may be left out
        tolerance: how far the two may be off [in | mm]; at least 0 in (at least 0 mm); where it is not
            given 1/8 in is taken: one set-up closes within 1/8 in, common practice, no source
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        BenchmarkRecheck, with the attributes
            difference_in, difference_mm: again less first [in | mm]
            follows: what follows: agrees, shared_out, shoot_again
            shared_out: the readings with their shares; none where it is off by too much, a table of
                shared_out
            said: the same in a sentence
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); an empty cell or a blank where a
            value is wanted (EMPTY_CELL)
        FormError: a required value is missing (KEY_MISSING)

    Basis:
        height of instrument = elevation + backsight; elevation = height of instrument - sight:
            Surveying textbooks, differential levelling (any), height of instrument
        one set-up closes within 1/8 in, several within 1/4 in: common practice, no source

    Example:
        >>> from overslab.survey import benchmark_recheck
        >>> answer = benchmark_recheck(
        ...     first="4' 2 1/2\"",
        ...     again="4' 2 5/8\"",
        ...     shots={"rod": ["5' 0 5/8\"", "5' 0 1/2\"", "4' 11 7/8\""]},
        ... )
        >>> round(answer.difference_in, 4)
        0.125

    Since 0.1.0.
    """

@final
class BenchmarkRecheck(AnswerResult):
    r"""What `benchmark_recheck` gives."""

    @property
    def difference_in(self) -> float:
        r"""again less first [in]."""

    @property
    def difference_mm(self) -> float:
        r"""again less first [mm]."""

    @property
    def follows(self) -> Literal["agrees", "shared_out", "shoot_again"]:
        r"""what follows."""

    @property
    def shared_out(self) -> dict[str, Column]:
        r"""the readings with their shares; none where it is off by too much."""

    @property
    def said(self) -> str:
        r"""the same in a sentence."""

def points_from_table(
    points: Table,
    *,
    units: Units | None = None,
) -> Points:
    r"""Points with heights from a table, in any axes: to be thinned, moved or made into the surface of the old slab.

    Rule: none: the points as they are given.
    Takes for granted: nothing.

    Args:
        points: the points; a table of at least 1 row, each a point, with the columns
            x: along the first plan axis [ft | m]; at least -3280839895.01 ft, at most 3280839895.01 ft
                (at least -1000000000 m, at most 1000000000 m)
            y: along the second, a quarter turn to the left of it [ft | m]; at least -3280839895.01 ft,
                at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
            elevation: height [ft | m]; at least -3280839895.01 ft, at most 3280839895.01 ft (at least
                -1000000000 m, at most 1000000000 m)
            name: its name; a text; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Points: Points with heights, in the axes of where they came from: of a file, a scan or a total
            station. It has notes, basis and taken besides.

    Raises:
        FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING); lists that
            belong together differ in length (LENGTH_MISMATCH)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Example:
        >>> from overslab.survey import points_from_table
        >>> answer = points_from_table(
        ...     points={
        ...         "x": ["1 ft", "11 ft", "11 ft", "1 ft", "5 ft"],
        ...         "y": ["1 ft", "1 ft", "9 ft", "9 ft", "4 ft"],
        ...         "elevation": ["99.20 ft", "99.15 ft", "99.25 ft", "99.22 ft", "99.16 ft"],
        ...         "name": ["A", "B", "C", "D", None],
        ...     },
        ... )
        >>> answer.point_count
        5

    Since 0.1.0.
    """

def read_points(
    file: File,
    *,
    format: Literal["csv", "xyz", "ply", "las", "e57", "landxml"] | None = None,
    unit: Literal["m", "cm", "mm", "ft", "us_survey_ft", "in", "yd"] | None = None,
    overrule: Literal["no", "yes"] | None = None,
    columns: str | None = None,
    height_of_instrument: Quantity | None = None,
    ground_only: Literal["no", "yes"] | None = None,
    units: Units | None = None,
) -> ReadPoints:
    r"""Points out of the bytes of a file: CSV, XYZ, PLY, LAS or LAZ, E57, LandXML.

    Rule: none: the coordinates of the file, in metres by its unit.
    Takes for granted: nothing: what the file does not say must be given, and a file that is cut short
        is refused.

    Args:
        file: the bytes of the file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
        format: what the file is; found from its first bytes where left out; one of "csv", "xyz", "ply",
            "las", "e57", "landxml"; may be left out
        unit: the unit of its numbers, for a file that does not say it; one of "m", "cm", "mm", "ft",
            "us_survey_ft", "in", "yd"; may be left out
        overrule: whether the unit given holds even where the file says another; one of "no", "yes";
            where it is not given no is taken: a file mostly knows its unit
        columns: what stands in each column of a table, in place of its header: point, y [ft], x [ft],
            elevation [in], skip; a text; may be left out
        height_of_instrument: height of the line of sight, for a column of rods [ft | m]; at least
            -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
            left out
        ground_only: whether only points that the file classes as ground are used; one of "no", "yes";
            where it is not given no is taken: few scans are classed
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        ReadPoints, with the attributes
            points: the points
            format: what the file is: csv, xyz, ply, las, e57, landxml
            unit: the unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd
            left_out: points of the file that were not used, a table of left_out
        and notes, basis and taken.

    Raises:
        FormError: the format of the file is not known (FORMAT_UNKNOWN); a column that is needed is not
            there (COLUMN_MISSING); two values say the same thing differently (CONTRADICTION); the word
            is not one of the choices (WORD_UNKNOWN); the file breaks the rules of its format
            (FILE_BROKEN); a required value is missing (KEY_MISSING)
        QuantityError: a number stands without its unit (UNIT_MISSING)

    Example:
        >>> from overslab.survey import read_points
        >>> answer = read_points(
        ...     file="point,x [ft],y [ft],elevation [ft]\nA,1,1,99.20\nB,11,1,99.15\nC,11,9,99.25\nD,1,9,99.22\n",
        ... )
        >>> answer.format
        'csv'

    Since 0.1.0.
    """

@final
class ReadPoints(AnswerResult):
    r"""What `read_points` gives."""

    @property
    def points(self) -> Points:
        r"""the points."""

    @property
    def format(self) -> Literal["csv", "xyz", "ply", "las", "e57", "landxml"]:
        r"""what the file is."""

    @property
    def unit(self) -> Literal["m", "cm", "mm", "ft", "us_survey_ft", "in", "yd"] | None:
        r"""the unit of its numbers, where all have one."""

    @property
    def left_out(self) -> dict[str, Column]:
        r"""points of the file that were not used."""

def read_surface(
    file: File,
    *,
    format: Literal["csv", "xyz", "ply", "las", "e57", "landxml"] | None = None,
    unit: Literal["m", "cm", "mm", "ft", "us_survey_ft", "in", "yd"] | None = None,
    overrule: Literal["no", "yes"] | None = None,
    surface: str | None = None,
    units: Units | None = None,
) -> ReadSurface:
    r"""A triangulated surface out of the bytes of a file, with the faces that it has there: LandXML, PLY.

    Rule: none: the points and faces of the file, in metres by its unit.
    Takes for granted: nothing: what the file does not say must be given, and a file that is cut short
        is refused.

    Args:
        file: the bytes of the file; bytes, or a text: its UTF-8, or base64: and the bytes in base64
        format: what the file is; found from its first bytes where left out; one of "csv", "xyz", "ply",
            "las", "e57", "landxml"; may be left out
        unit: the unit of its numbers, for a file that does not say it; one of "m", "cm", "mm", "ft",
            "us_survey_ft", "in", "yd"; may be left out
        overrule: whether the unit given holds even where the file says another; one of "no", "yes";
            where it is not given no is taken: a file mostly knows its unit
        surface: its name, for a file with several; a text; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        ReadSurface, with the attributes
            tin: the surface
            format: what the file is: csv, xyz, ply, las, e57, landxml
            unit: the unit of its numbers, where all have one: m, cm, mm, ft, us_survey_ft, in, yd
            left_out: points of the file that were not used, a table of left_out
        and notes, basis and taken.

    Raises:
        SurveyError: the file does not hold exactly one surface of that name (SURFACE_UNCLEAR)
        FormError: the file ends before what it states is there (FILE_SHORT)
        QuantityError: a number stands without its unit (UNIT_MISSING)

    Example:
        >>> from overslab.survey import read_surface
        >>> answer = read_surface(
        ...     file="ply\nformat ascii 1.0\nelement vertex 4\nproperty float x\nproperty float y\nproperty float z\nelement face 2\nproperty list uchar int vertex_indices\nend_header\n1 1 30.2\n5 1 30.1\n5 4 30.2\n1 4 30.2\n3 0 1 2\n3 0 2 3\n",
        ...     unit="m",
        ... )
        >>> answer.format
        'ply'

    Since 0.1.0.
    """

@final
class ReadSurface(AnswerResult):
    r"""What `read_surface` gives."""

    @property
    def tin(self) -> Tin:
        r"""the surface."""

    @property
    def format(self) -> Literal["csv", "xyz", "ply", "las", "e57", "landxml"]:
        r"""what the file is."""

    @property
    def unit(self) -> Literal["m", "cm", "mm", "ft", "us_survey_ft", "in", "yd"] | None:
        r"""the unit of its numbers, where all have one."""

    @property
    def left_out(self) -> dict[str, Column]:
        r"""points of the file that were not used."""

def points_to_axes(
    points: Points | RecordLike,
    known: Table,
    *,
    tolerance: Quantity | None = None,
    height_tolerance: Quantity | None = None,
    levelling: Literal["rise", "tilt"] | None = None,
    units: Units | None = None,
) -> PointsToAxes:
    r"""Points brought into the axes of the job by two known points or more: turned, shifted and raised, never stretched.

    Rule: x' = tx + x cos a - y sin a, y' = ty + x sin a + y cos a, by least squares over the known
        points; z' = z + mean rise, or + a plane.
    Takes for granted: both systems have one unit, and y a quarter turn counter-clockwise from x; a
        mirror and a unit slip are refused by name.

    Args:
        points: the points; a Points
        known: the points known in both systems; a table of at least 1 row, each a point known in both
            systems of axes, with the columns
            name: its name; a text; may be left out
            x: along the first axis, as the points come [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
            y: along the second, as the points come [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
            job_x: along the first axis of the job [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
            job_y: along the second axis of the job [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
            elevation: height, as the points come [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m); may be left out
            job_elevation: height above the job datum [ft | m]; at least -3280839895.01 ft, at most
                3280839895.01 ft (at least -1000000000 m, at most 1000000000 m); may be left out
        tolerance: how far distances of two, places of more may be off [in | mm]; at least 0 in, at most
            39.3700787402 in (at least 0 mm, at most 1000 mm); where it is not given 1/4 in is taken: a
            nail is found again so well
        height_tolerance: how far heights may be off [in | mm]; at least 0 in, at most 39.3700787402 in
            (at least 0 mm, at most 1000 mm); where it is not given 1/8 in is taken: a rod is read so
            well
        levelling: whether heights rise alike or by a plane; one of "rise", "tilt"; where it is not
            given rise is taken: most scanners level themselves
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        PointsToAxes, with the attributes
            moved: the points in the axes of the job
            turn_deg, turn_rad: how far they were turned, counter-clockwise [deg | rad]
            rise_ft, rise_m: what was added to heights, where the old origin came to lie [ft | m]
            tilt_x_in_per_ft, tilt_x_percent: how much more along the first axis of the job [in/ft | %]
            tilt_y_in_per_ft, tilt_y_percent: how much more along the second [in/ft | %]
            residuals: what is left over at the known points, a table of residuals
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        SurveyError: the known points do not fix the axes (KNOWN_POINTS); the known points do not lie
            alike in both systems of axes (AXES_DISAGREE); the known points lie alike only as in a
            mirror (AXES_MIRRORED)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import points_to_axes
        >>> answer = points_to_axes(
        ...     points={
        ...         "unit": "ft",
        ...         "x": [1, 11, 11, 1],
        ...         "y": [1, 1, 9, 9],
        ...         "elevation": [0.2, 0.15, 0.25, 0.22],
        ...     },
        ...     known={
        ...         "name": ["nail 1", "nail 2"],
        ...         "x": ["0 ft", "20 ft"],
        ...         "y": ["0 ft", "0 ft"],
        ...         "job_x": ["40 ft", "40 ft"],
        ...         "job_y": ["10 ft", "30 ft"],
        ...         "elevation": ["0.5 ft", "0.6 ft"],
        ...         "job_elevation": ["99.5 ft", "99.6 ft"],
        ...     },
        ... )
        >>> round(answer.turn_deg, 4)
        90.0

    Since 0.1.0.
    """

@final
class PointsToAxes(AnswerResult):
    r"""What `points_to_axes` gives."""

    @property
    def moved(self) -> Points:
        r"""the points in the axes of the job."""

    @property
    def turn_deg(self) -> float:
        r"""how far they were turned, counter-clockwise [deg]."""

    @property
    def turn_rad(self) -> float:
        r"""how far they were turned, counter-clockwise [rad]."""

    @property
    def rise_ft(self) -> float | None:
        r"""what was added to heights, where the old origin came to lie [ft]."""

    @property
    def rise_m(self) -> float | None:
        r"""what was added to heights, where the old origin came to lie [m]."""

    @property
    def tilt_x_in_per_ft(self) -> float:
        r"""how much more along the first axis of the job [in/ft]."""

    @property
    def tilt_x_percent(self) -> float:
        r"""how much more along the first axis of the job [%]."""

    @property
    def tilt_y_in_per_ft(self) -> float:
        r"""how much more along the second [in/ft]."""

    @property
    def tilt_y_percent(self) -> float:
        r"""how much more along the second [%]."""

    @property
    def residuals(self) -> dict[str, Column]:
        r"""what is left over at the known points."""

def points_along_wall(
    points: Points | RecordLike,
    origin_x: Quantity,
    origin_y: Quantity,
    along_x: Quantity,
    along_y: Quantity,
    *,
    units: Units | None = None,
) -> PointsAlongWall:
    r"""Points in axes along a wall: zero at one end of it, x along it, y to the left of it. Heights stay.

    Rule: x' = (p - origin) . u, y' = u x (p - origin), u the unit vector from the origin toward the
        other end.
    Takes for granted: the work lies on the left when the wall is walked from the origin.

    Args:
        points: the points; a Points
        origin_x: the end of the wall that becomes zero, along the first axis [ft | m]; at least
            -3280839895.01 ft, at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
        origin_y: the same, along the second axis [ft | m]; at least -3280839895.01 ft, at most
            3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
        along_x: another place along the wall, along the first axis [ft | m]; at least -3280839895.01
            ft, at most 3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
        along_y: the same, along the second axis [ft | m]; at least -3280839895.01 ft, at most
            3280839895.01 ft (at least -1000000000 m, at most 1000000000 m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        PointsAlongWall, with the attributes
            moved: the points in the new axes
            turn_deg, turn_rad: how far they were turned, counter-clockwise [deg | rad]
        and notes, basis and taken.

    Raises:
        SurveyError: the known points do not fix the axes (KNOWN_POINTS)
        QuantityError: a number stands without its unit (UNIT_MISSING)
        FormError: the value is of another kind than the port takes (KIND_MISMATCH)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import points_along_wall
        >>> answer = points_along_wall(
        ...     points={
        ...         "unit": "ft",
        ...         "x": [1, 11, 11, 1],
        ...         "y": [1, 1, 9, 9],
        ...         "elevation": [99.2, 99.15, 99.25, 99.22],
        ...     },
        ...     origin_x="12 ft",
        ...     origin_y="0 ft",
        ...     along_x="12 ft",
        ...     along_y="10 ft",
        ... )
        >>> round(answer.turn_deg, 4)
        -90.0

    Since 0.1.0.
    """

@final
class PointsAlongWall(AnswerResult):
    r"""What `points_along_wall` gives."""

    @property
    def moved(self) -> Points:
        r"""the points in the new axes."""

    @property
    def turn_deg(self) -> float:
        r"""how far they were turned, counter-clockwise [deg]."""

    @property
    def turn_rad(self) -> float:
        r"""how far they were turned, counter-clockwise [rad]."""

def part_strays(
    points: Points | RecordLike,
    *,
    above: Quantity | None = None,
    below: Quantity | None = None,
    widest: Quantity | None = None,
    cell: Quantity | None = None,
    steepest: Quantity | None = None,
    reach: Quantity | None = None,
    others: Count | None = None,
    units: Units | None = None,
) -> PartStrays:
    r"""The points of a scan that are floor, parted from walls, table legs, sawhorses, people, echoes below and points far away.

    Rule: a point is stray when it is higher than the floor of its cell and those around it by more than
        above, deeper by more than below, or has fewer than others within reach; floor: lowest agreed
        heights of cells, things narrower than widest cut off.
    Takes for granted: the floor is seen beside the things on it; a thing wider than widest, or lower
        than above, is floor.

    Args:
        points: the points of the scan; a Points
        above: higher than this over the floor is stray [in | mm]; more than 0 in, at most 393.700787402
            in (more than 0 mm, at most 10000 mm); where it is not given 1 in is taken: a step of an
            inch in an old slab is common
        below: deeper than this under the floor is stray [in | mm]; more than 0 in, at most
            393.700787402 in (more than 0 mm, at most 10000 mm); where it is not given 1 in is taken:
            hollows of an old slab are wider than a cell and stay
        widest: width of the widest thing that stands on the floor [ft | m]; more than 0 ft, at most
            328.083989501 ft (more than 0 m, at most 100 m); where it is not given 6 ft is taken: few
            things left in a cleared shop are wider
        cell: width of the cells in which the floor is looked for [in | mm]; more than 0 in, at most
            3937.00787402 in (more than 0 mm, at most 100000 mm); where it is not given 6 in is taken: a
            scan has many points in each
        steepest: the steepest that the floor is [in/ft | %]; at least 0 in/ft, at most 6 in/ft (at
            least 0 %, at most 50 %); where it is not given 1/4 in/ft is taken: floors that drain seldom
            fall more
        reach: how near others must be [ft | m]; more than 0 ft, at most 328.083989501 ft (more than 0
            m, at most 100 m); where it is not given 1 ft is taken: a scan has many points in a foot
        others: how many others must be so near; a whole number from 0 to 1000; where it is not given 3
            is taken: echoes come one by one
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        PartStrays, with the attributes
            floor: the points kept
            kept_count: how many were kept
            above_count: how many stand above the floor
            below_count: how many lie below it
            alone_count: how many have too few others near them
            strays: which points were taken out, and why, a table of strays
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING)
        FormError: the list is empty (EMPTY_LIST); the value is of another kind than the port takes
            (KIND_MISMATCH)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import part_strays
        >>> answer = part_strays(
        ...     points={
        ...         "unit": "ft",
        ...         "x": [1, 2, 3, 4, 1, 2, 3, 4, 2.5, 2.4],
        ...         "y": [1, 1, 1, 1, 2, 2, 2, 2, 1.5, 1.6],
        ...         "elevation": [99.2, 99.2, 99.19, 99.18, 99.21, 99.2, 99.2, 99.19, 101.7, 99.2],
        ...     },
        ...     cell="18 in",
        ...     reach="2 ft",
        ... )
        >>> answer.kept_count
        9

    Since 0.1.0.
    """

@final
class PartStrays(AnswerResult):
    r"""What `part_strays` gives."""

    @property
    def floor(self) -> Points:
        r"""the points kept."""

    @property
    def kept_count(self) -> int:
        r"""how many were kept."""

    @property
    def above_count(self) -> int:
        r"""how many stand above the floor."""

    @property
    def below_count(self) -> int:
        r"""how many lie below it."""

    @property
    def alone_count(self) -> int:
        r"""how many have too few others near them."""

    @property
    def strays(self) -> dict[str, Column]:
        r"""which points were taken out, and why."""

def thin_points(
    points: Points | RecordLike,
    *,
    within: Quantity | None = None,
    count: Count | None = None,
    outline: Outline | RecordLike | None = None,
    units: Units | None = None,
) -> ThinPoints:
    r"""Fewer points that say the same: the surface of a survey through them stays within a height error of every point left out.

    Rule: from the corners of the convex hull, the worst point of each triangle is taken in until the
        error or the number holds.
    Takes for granted: strays are taken out; of points within 1/2 in in plan one is enough; the survey
        has the same outline, or that of the hull.

    Args:
        points: the points; a Points
        within: the height error allowed: this or the count [in | mm]; at least 0 in, at most
            393700.787402 in (at least 0 mm, at most 10000000 mm); may be left out
        count: how many points to keep: this or the height error; a whole number from 3 to 4294967295;
            may be left out
        outline: the plan edge of the work; points more than 1/2 in outside it are left out; an Outline;
            may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        ThinPoints, with the attributes
            thinned: the points kept
            kept_count: how many were kept
            error_in, error_mm: greatest height between the surface through them and a point left out
                [in | mm]
            worst: the number of the point it is at
            hull_count: how many of those kept are corners of the convex hull
            outside_count: how many lie outside the outline
            kept: which points were kept, a table of kept
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: two values say the same thing differently (CONTRADICTION); a required value is
            missing (KEY_MISSING)
        SurveyError: fewer points are asked than the hull of the points has corners (THINNING_COUNT);
            too few shots for a surface (TOO_FEW_SHOTS); all shots lie on one line (COLLINEAR_SHOTS);
            points at one place differ by more than the height error asked (THINNING_UNREACHABLE)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.survey import thin_points
        >>> answer = thin_points(
        ...     points={
        ...         "unit": "ft",
        ...         "x": [1, 11, 11, 1, 5, 6, 3],
        ...         "y": [1, 1, 9, 9, 4, 5, 7],
        ...         "elevation": [99.2, 99.15, 99.25, 99.22, 99.16, 99.18, 99.21],
        ...     },
        ...     within="1/4 in",
        ... )
        >>> answer.kept_count
        6

    Since 0.1.0.
    """

@final
class ThinPoints(AnswerResult):
    r"""What `thin_points` gives."""

    @property
    def thinned(self) -> Points:
        r"""the points kept."""

    @property
    def kept_count(self) -> int:
        r"""how many were kept."""

    @property
    def error_in(self) -> float:
        r"""greatest height between the surface through them and a point left out [in]."""

    @property
    def error_mm(self) -> float:
        r"""greatest height between the surface through them and a point left out [mm]."""

    @property
    def worst(self) -> int | None:
        r"""the number of the point it is at."""

    @property
    def hull_count(self) -> int:
        r"""how many of those kept are corners of the convex hull."""

    @property
    def outside_count(self) -> int:
        r"""how many lie outside the outline."""

    @property
    def kept(self) -> dict[str, Column]:
        r"""which points were kept."""

def survey_from_points(
    outline: Outline | RecordLike,
    points: Points | RecordLike,
    *,
    instrument: Literal["laser", "optical_hundredths", "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"] | None = None,
    texture: Literal["trowelled", "broomed", "scaled", "rough"] | None = None,
    beyond_allowed: Literal["no", "yes"] | None = None,
    outside: Literal["refuse", "use", "leave_out"] | None = None,
    units: Units | None = None,
) -> Survey:
    r"""The surface of the old slab through points, each a shot: of a file, a scan or a table.

    Rule: Delaunay triangles, each plane; shots on one circle are filled from their mean.
    Takes for granted: the points are in the axes and the datum of the job; the slab is plane between
        neighbouring points.

    Args:
        outline: the plan edge of the work; an Outline
        points: the points; a Points
        instrument: what the readings were taken with; one of "laser", "optical_hundredths",
            "optical_eighths", "optical_sixteenths", "optical_millimetres", "string", "water"; where it
            is not given laser is taken: most crews have one
        texture: what the old floor feels like; one of "trowelled", "broomed", "scaled", "rough"; where
            it is not given broomed is taken: most old slabs are
        beyond_allowed: whether the work may reach more than 4 ft beyond the shots; one of "no", "yes";
            where it is not given no is taken: heights that far out are a guess
        outside: what becomes of points more than 6 in outside the outline; one of "refuse", "use",
            "leave_out"; where it is not given refuse is taken: a point outside may be a slip
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Survey: The surveyed old slab: outline, shots and the surface through them. It has notes, basis
            and taken besides.

    Raises:
        SurveyError: too few shots for a surface (TOO_FEW_SHOTS); a shot lies outside the outline
            (SHOT_OUTSIDE)
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        plane and solid geometry: derived
        reading and texture deviations behind the site words: common practice, no source

    Example:
        >>> from overslab.survey import survey_from_points
        >>> answer = survey_from_points(
        ...     outline={
        ...         "sides": [
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...             {"length": "12 ft"},
        ...             {"length": "10 ft"},
        ...         ],
        ...     },
        ...     points={
        ...         "unit": "ft",
        ...         "x": [1, 11, 11, 1, 5],
        ...         "y": [1, 1, 9, 9, 4],
        ...         "elevation": [99.2, 99.15, 99.25, 99.22, 99.16],
        ...     },
        ... )
        >>> round(answer.area_ft2, 4)
        120.0

    Since 0.1.0.
    """
