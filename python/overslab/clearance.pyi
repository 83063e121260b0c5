"""The operations of `clearance`: made from the table of operations; do not edit."""

from typing import Literal, final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import AnswerResult, ArrayResult, ScalarResult

from overslab.typing import Column, Errors, Quantities, Quantity, RecordLike, Table, Units
from overslab.grade import Finish
from overslab.survey import Survey

__all__ = [
    "approach",
    "Approach",
    "crest_clearance",
    "CrestClearance",
    "CrestClearanceArray",
    "sag_break",
    "SagBreak",
    "SagBreakArray",
    "clearances",
    "Clearances",
]

def approach(
    profile: Table,
    *,
    floor: Quantity | None = None,
    finish: Finish | RecordLike | None = None,
    door: Table | None = None,
    traffic: Literal["vehicle", "wheelchair", "foot"] | None = None,
    fall: Quantity | None = None,
    over: Quantity | None = None,
    tie_in: Quantity | None = None,
    thickness: Quantity | None = None,
    rebate: Quantity | None = None,
    wheelbase: Quantity | None = None,
    clearance: Quantity | None = None,
    overhang: Quantity | None = None,
    bumper: Quantity | None = None,
    door_width: Quantity | None = None,
    rain: Quantity | None = None,
    units: Units | None = None,
) -> Approach:
    r"""A driveway, a walk or a ramp from a door outwards: the floor height from which water falls away, grades, breaks, the step at the door, and a drain along the door instead.

    Rule: needed = greatest of (height + fall x distance) over the ground, and the rebate; change of
        grade = difference of two falls.
    Takes for granted: the ground is straight between its points; a new approach is straight from the
        floor's edge to where it ties in; the floor is level at the door; 95 % of the rain runs off.

    Args:
        profile: the ground outside; a table of at least 1 row, each a measured place of the ground
            outside, from the door outwards, the first at the door, with the columns
            distance: distance from the door [ft | m]; at least 0 ft, at most 3280.83989501 ft (at least
                0 m, at most 1000 m)
            elevation: height of the ground [ft | m]; at least -32808.3989501 ft, at most 32808.3989501
                ft (at least -10000 m, at most 10000 m)
        floor: height of the floor at the door; or a finish with the places of the door [ft | m]; at
            least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may
            be left out
        finish: the new top surface, whose lowest place along the door counts; a Finish; may be left out
        door: places along the door; a table of at least 0 rows, each a place along the door, on the
            finish, with the columns; may be left out
            x: distance from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at
                least -100000 m, at most 100000 m)
            y: distance from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
        traffic: what goes over it; one of "vehicle", "wheelchair", "foot"; where it is not given
            vehicle is taken: most approaches are driven on
        fall: fall away from the door that is wanted; 2 %, the rule for hard surfaces by buildings,
            where not given [%]; at least 0 %, at most 100 %; may be left out
        over: over which distance from the door [ft | m]; more than 0 ft, at most 3280.83989501 ft (more
            than 0 m, at most 1000 m); where it is not given 10 ft is taken: the rule for ground by
            buildings
        tie_in: how far from the door a new approach meets the ground [ft | m]; more than 0 ft, at most
            3280.83989501 ft (more than 0 m, at most 1000 m); may be left out
        thickness: how thick the new approach is [in | mm]; at least 0 in, at most 39.3700787402 in (at
            least 0 mm, at most 1000 mm); may be left out
        rebate: how far the outside lies below the floor at the door [in | mm]; at least 0 in, at most
            39.3700787402 in (at least 0 mm, at most 1000 mm); may be left out
        wheelbase: from axle to axle [in | mm]; more than 0 in, at most 590.551181102 in (more than 0
            mm, at most 15000 mm); may be left out
        clearance: room under the vehicle between its axles [in | mm]; at least 0 in, at most
            39.3700787402 in (at least 0 mm, at most 1000 mm); may be left out
        overhang: from the front axle to the bumper [in | mm]; more than 0 in, at most 590.551181102 in
            (more than 0 mm, at most 15000 mm); may be left out
        bumper: room under the bumper [in | mm]; at least 0 in, at most 39.3700787402 in (at least 0 mm,
            at most 1000 mm); may be left out
        door_width: how wide the door is, for a drain along it [ft | m]; more than 0 ft, at most
            3280.83989501 ft (more than 0 m, at most 1000 m); may be left out
        rain: how fast rain comes down on hard ground, for that drain [in/h | mm/h]; at least 0 in/h, at
            most 39.3700787402 in/h (at least 0 mm/h, at most 1000 mm/h); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Approach, with the attributes
            judged: whether every limit is kept: pass, fail, confirm locally
            needed_ft, needed_m: the floor height from which water falls away as wanted [ft | m]
            governing_ft, governing_m: how far from the door the place is that decides it [ft | m]
            spare_in, spare_mm: how far the floor is above that; negative below [in | mm]
            away: what that does to the water: falls away, floor too low
            step_in, step_mm: the step at the door, from the outside up to the floor [in | mm]
            step_limit_in, step_limit_mm: the most that it may be [in | mm]
            step_judged: whether it is: pass, fail, confirm locally
            dig_in, dig_mm: how deep old ground has to come out under the new approach; none without
                tie-in and thickness [in | mm]
            trench_floor_ft, trench_floor_m: the height that the floor may have with a drain along the
                door [ft | m]
            trench_reach_ft, trench_reach_m: how far out the ground falls to the door [ft | m]
            trench_area_ft2, trench_area_m2: the ground that drains to the door; none without its width
                [ft2 | m2]
            trench_flow_gal_per_min, trench_flow_l_per_s: the rain that comes from it; none without rain
                [gal/min | L/s]
            stretches: the ground as it will be, a table of stretches
            breaks: where its grade changes, a table of breaks
            rules: every rule at every place, a table of rules
        and notes, basis and taken.

    Raises:
        ClearanceError: the ground outside a door is known at fewer than two places (APPROACH_SHORT);
            the ground outside is not known at the door itself (APPROACH_START); the places outside a
            door do not run outwards from it (APPROACH_UNSORTED); a new approach meets the ground where
            that is not known (TIE_IN_BEYOND); nothing says how high the floor is at the door
            (DOOR_UNKNOWN)
        FormError: the word is not one of the choices (WORD_UNKNOWN)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived
        at least 2 % away from a building: International Residential Code (2015-2021), R401.3,
            impervious surfaces within 10 ft, as quoted elsewhere
        the least fall that was given: the project's specification
        a change of grade of at most 3 % with at least 11 ft between breaks suits most vehicles: TxDOT
            Roadway Design Manual, driveway guidelines (any), section 4, profiles, private residential
        a change of grade of 5 % is normal: Maryland COMAR 11.04.05.05 (any), driveway grades
        a change of grade of at most 8 %: Maryland COMAR 11.04.05.05 (any), driveway grades
        a driveway of at most 15 %: County highway access rule in the records of the City of Ramsey,
            Minnesota (any), driveway grades, other than commercial
        a walk of at most 1:20: ADA Standards for Accessible Design (2010), 403.3, walking surfaces,
            from memory: confirm
        a ramp of at most 1:12: ADA Standards for Accessible Design (2010), 405.2, ramps, from memory:
            confirm
        a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible
            Design (2010), 303, changes in level, from memory: confirm
        the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for
            wheels: common practice, no source
        a step of at most 7-3/4 in: International Residential Code (2015-2021), R311.7.5.1, risers
        runoff = coefficient x rain intensity x area: Hydrology textbooks, rational method (Kuichling
            1889) (any), Q = C i A; C of concrete 0.8 to 0.95, from memory: confirm

    Example:
        >>> from overslab.clearance import approach
        >>> answer = approach(
        ...     floor="100.1 ft",
        ...     profile={
        ...         "distance": ["0 ft", "5 ft", "20 ft", "30 ft"],
        ...         "elevation": ["100 ft", "99.95 ft", "99.6 ft", "99.1 ft"],
        ...     },
        ...     tie_in="20 ft",
        ...     thickness="4 in",
        ...     rebate="1 in",
        ...     wheelbase="110 in",
        ...     clearance="6 in",
        ...     door_width="9 ft",
        ...     rain="3 in/h",
        ... )
        >>> answer.judged
        'pass'

    Since 0.1.0.
    """

@final
class Approach(AnswerResult):
    r"""What `approach` gives."""

    @property
    def judged(self) -> Literal["pass", "fail", "confirm locally"]:
        r"""whether every limit is kept."""

    @property
    def needed_ft(self) -> float:
        r"""the floor height from which water falls away as wanted [ft]."""

    @property
    def needed_m(self) -> float:
        r"""the floor height from which water falls away as wanted [m]."""

    @property
    def governing_ft(self) -> float:
        r"""how far from the door the place is that decides it [ft]."""

    @property
    def governing_m(self) -> float:
        r"""how far from the door the place is that decides it [m]."""

    @property
    def spare_in(self) -> float:
        r"""how far the floor is above that; negative below [in]."""

    @property
    def spare_mm(self) -> float:
        r"""how far the floor is above that; negative below [mm]."""

    @property
    def away(self) -> Literal["falls away", "floor too low"]:
        r"""what that does to the water."""

    @property
    def step_in(self) -> float:
        r"""the step at the door, from the outside up to the floor [in]."""

    @property
    def step_mm(self) -> float:
        r"""the step at the door, from the outside up to the floor [mm]."""

    @property
    def step_limit_in(self) -> float:
        r"""the most that it may be [in]."""

    @property
    def step_limit_mm(self) -> float:
        r"""the most that it may be [mm]."""

    @property
    def step_judged(self) -> Literal["pass", "fail", "confirm locally"]:
        r"""whether it is."""

    @property
    def dig_in(self) -> float | None:
        r"""how deep old ground has to come out under the new approach; none without tie-in and thickness [in]."""

    @property
    def dig_mm(self) -> float | None:
        r"""how deep old ground has to come out under the new approach; none without tie-in and thickness [mm]."""

    @property
    def trench_floor_ft(self) -> float:
        r"""the height that the floor may have with a drain along the door [ft]."""

    @property
    def trench_floor_m(self) -> float:
        r"""the height that the floor may have with a drain along the door [m]."""

    @property
    def trench_reach_ft(self) -> float:
        r"""how far out the ground falls to the door [ft]."""

    @property
    def trench_reach_m(self) -> float:
        r"""how far out the ground falls to the door [m]."""

    @property
    def trench_area_ft2(self) -> float | None:
        r"""the ground that drains to the door; none without its width [ft2]."""

    @property
    def trench_area_m2(self) -> float | None:
        r"""the ground that drains to the door; none without its width [m2]."""

    @property
    def trench_flow_gal_per_min(self) -> float | None:
        r"""the rain that comes from it; none without rain [gal/min]."""

    @property
    def trench_flow_l_per_s(self) -> float | None:
        r"""the rain that comes from it; none without rain [L/s]."""

    @property
    def stretches(self) -> dict[str, Column]:
        r"""the ground as it will be."""

    @property
    def breaks(self) -> dict[str, Column]:
        r"""where its grade changes."""

    @property
    def rules(self) -> dict[str, Column]:
        r"""every rule at every place."""

@overload
def crest_clearance(  # type: ignore[overload-overlap]
    wheelbase: Quantity,
    change: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CrestClearance:
    r"""What a crest takes of the room under a vehicle, midway between its axles.

    Rule: lost = wheelbase change / 4; exact = (wheelbase / 2) tan(atan(change) / 2).
    Takes for granted: wheels as points, a wheelbase apart, the crest midway; one side of it level for
        the exact form.

    Args:
        wheelbase: from axle to axle [in | mm]; more than 0 in, at most 590.551181102 in (more than 0
            mm, at most 15000 mm)
        change: change of grade [%]; at least 0 %, at most 100 %
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        CrestClearance, with the attributes
            lost_in, lost_mm: room taken, slopes for angles [in | mm]
            exact_in, exact_mm: room taken, exactly [in | mm]
        and notes; for arrays CrestClearanceArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.clearance import crest_clearance
        >>> answer = crest_clearance(wheelbase="110 in", change="10 %")
        >>> round(answer.lost_in, 4)
        2.75

    Since 0.1.0.
    """

@overload
def crest_clearance(
    wheelbase: Quantity | Quantities,
    change: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CrestClearanceArray: ...

@final
class CrestClearance(ScalarResult):
    r"""What `crest_clearance` gives."""

    @property
    def lost_in(self) -> float:
        r"""room taken, slopes for angles [in]."""

    @property
    def lost_mm(self) -> float:
        r"""room taken, slopes for angles [mm]."""

    @property
    def exact_in(self) -> float:
        r"""room taken, exactly [in]."""

    @property
    def exact_mm(self) -> float:
        r"""room taken, exactly [mm]."""

@final
class CrestClearanceArray(ArrayResult):
    r"""What `crest_clearance` gives for arrays."""

    @property
    def lost_in(self) -> npt.NDArray[np.float64]:
        r"""room taken, slopes for angles [in]."""

    @property
    def lost_mm(self) -> npt.NDArray[np.float64]:
        r"""room taken, slopes for angles [mm]."""

    @property
    def exact_in(self) -> npt.NDArray[np.float64]:
        r"""room taken, exactly [in]."""

    @property
    def exact_mm(self) -> npt.NDArray[np.float64]:
        r"""room taken, exactly [mm]."""

@overload
def sag_break(  # type: ignore[overload-overlap]
    overhang: Quantity,
    bumper: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SagBreak:
    r"""The greatest change of grade of a sag that a bumper clears.

    Rule: change = bumper / overhang.
    Takes for granted: the vehicle stands level with its front axle at the sag; wheels as points.

    Args:
        overhang: from the front axle to the bumper [in | mm]; more than 0 in, at most 590.551181102 in
            (more than 0 mm, at most 15000 mm)
        bumper: room under the bumper [in | mm]; at least 0 in, at most 39.3700787402 in (at least 0 mm,
            at most 1000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SagBreak, with the attributes
            change_percent: the greatest change of grade [%]
        and notes; for arrays SagBreakArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        plane and solid geometry: derived

    Example:
        >>> from overslab.clearance import sag_break
        >>> answer = sag_break(overhang="36 in", bumper="9 in")
        >>> round(answer.change_percent, 4)
        25.0

    Since 0.1.0.
    """

@overload
def sag_break(
    overhang: Quantity | Quantities,
    bumper: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SagBreakArray: ...

@final
class SagBreak(ScalarResult):
    r"""What `sag_break` gives."""

    @property
    def change_percent(self) -> float:
        r"""the greatest change of grade [%]."""

@final
class SagBreakArray(ArrayResult):
    r"""What `sag_break` gives for arrays."""

    @property
    def change_percent(self) -> npt.NDArray[np.float64]:
        r"""the greatest change of grade [%]."""

def clearances(
    survey: Survey | RecordLike,
    finish: Finish | RecordLike,
    things: Table,
    *,
    units: Units | None = None,
) -> Clearances:
    r"""Doors, steps, walls, appliances, fittings and open edges that the new floor meets: whether each still works, by how much, what the raise forces and whose trade that is.

    Rule: rise = finish - old slab; room = what is left - what is wanted; fill against an edge =
        integral along it of height x height x run / 2.
    Takes for granted: a thing outside the work is met at the nearest edge; limits that could not be
        read in their source never fail, they say to confirm locally.

    Args:
        survey: the old slab; a Survey
        finish: the new top surface; a Finish
        things: the things that it meets; a table of at least 1 row, each one thing that the floor
            meets, with the measures that its kind reads, with the columns
            name: what it is called; a text
            kind: what kind of thing it is; one of "sectional_door", "roll_door", "swinging_door",
                "sliding_door", "passage_door", "threshold", "stair", "wall_sill", "siding", "framing",
                "termite_strip", "ignition_source", "headroom", "panel", "drain_rim", "cleanout",
                "weep_hole", "crawl_vent", "shut_off", "hose_bib", "gas_riser", "post", "anchor",
                "wire", "buried_service", "open_edge"
            x: its place, from the left; of a line one end [ft | m]; at least -328083.989501 ft, at most
                328083.989501 ft (at least -100000 m, at most 100000 m)
            y: its place, from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft
                (at least -100000 m, at most 100000 m)
            to_x: the other end of its line, from the left: doors and edges have one [ft | m]; at least
                -328083.989501 ft, at most 328083.989501 ft (at least -100000 m, at most 100000 m); may
                be left out
            to_y: the other end of its line, from the front [ft | m]; at least -328083.989501 ft, at
                most 328083.989501 ft (at least -100000 m, at most 100000 m); may be left out
            elevation: how high it is: header of a vehicle door, leaf of a passage door, sill, lower
                edge, rim, cap, hole; every kind but stair, open_edge, buried_service [ft | m]; at least
                -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most 10000 m); may be
                left out
            above_slab: the same as found with a tape above the old slab, in place of elevation; not
                passage_door [in | mm]; at least -3937.00787402 in, at most 3937.00787402 in (at least
                -100000 mm, at most 100000 mm); may be left out
            needed: clear height needed: vehicle doors, headroom [in | mm]; at least 0 in, at most
                3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            seal_takes: how much out of level the bottom seal takes up: vehicle doors [in | mm]; at
                least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            eyes_now: photo-eyes above the old slab: sectional_door, roll_door [in | mm]; at least 0 in,
                at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            gap_now: gap under the leaf now, above the old slab: swinging_door, sliding_door,
                passage_door [in | mm]; at least 0 in, at most 3937.00787402 in (at least 0 mm, at most
                100000 mm); may be left out
            gap: gap wanted under the leaf: swinging_door, sliding_door, passage_door [in | mm]; at
                least 0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            covering: covering to come on the floor: passage_door, threshold [in | mm]; at least 0 in,
                at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            may_lose: how much may be cut off the leaf: swinging_door, passage_door [in | mm]; at least
                0 in, at most 3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            swing: in over this floor or out: swinging_door, threshold; one of "in", "out"; may be left
                out
            runs_outside: whether the leaf runs outside the wall: sliding_door; one of "no", "yes"; may
                be left out
            fire_rated: whether it is a fire-rated door: passage_door; one of "no", "yes"; may be left
                out
            exit: whether it is a required exit: threshold; one of "no", "yes"; may be left out
            risers: risers from the bottom up, with semicolons between: stair; a text; may be left out
            riser_count: number of even risers: stair; a whole number from 1 to 100; may be left out
            flight: height of the even risers together: stair [in | mm]; at least 0 in, at most
                3937.00787402 in (at least 0 mm, at most 100000 mm); may be left out
            end: which end of the stair this floor is: stair; one of "foot", "head"; may be left out
            ground: ground outside: vehicle doors, wall_sill, siding, and open_edge at its first end [ft
                | m]; at least -32808.3989501 ft, at most 32808.3989501 ft (at least -10000 m, at most
                10000 m); may be left out
            ground_to: ground at the other end: as ground [ft | m]; at least -32808.3989501 ft, at most
                32808.3989501 ft (at least -10000 m, at most 10000 m); may be left out
            free: how much stays free: threshold, termite_strip, panel, cleanout, weep_hole, crawl_vent,
                shut_off, hose_bib, gas_riser [in | mm]; at least 0 in, at most 3937.00787402 in (at
                least 0 mm, at most 100000 mm); may be left out
            exposed: whether weather reaches the wood: siding; one of "no", "yes"; may be left out
            vehicles: whether vehicles are parked in the room: ignition_source; one of "no", "yes"; may
                be left out
            listed: whether it is listed as resistant to flammable vapour: ignition_source; one of "no",
                "yes"; may be left out
            kept_free: whether it is kept out of the concrete, boxed out or sleeved: framing, post,
                anchor, wire; one of "no", "yes"; may be left out
            located: whether services are located and marked: buried_service; one of "no", "yes"; may be
                left out
            route: whether anybody walks over it: open_edge; one of "no", "yes"; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Clearances, with the attributes
            passed: things that still work
            confirm_locally: things that break a limit which is to be confirmed locally
            ask: things of which a measure that decides is missing
            fail: things that do not work as they stand
            judgements: each thing, a table of judgements
            checks: each check of each thing, a table of checks
            works: the work that the raise forces, a table of works
            text: the same for the site, one thing to a line
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST); two values say the same thing differently
            (CONTRADICTION); the word is not one of the choices (WORD_UNKNOWN)
        ClearanceError: a thing of this kind has a line, and one place was given (LINE_NEEDED); a thing
            lies too far from the floor to be met by it (THING_OFF_FLOOR); a measure that a thing of
            this kind has no use for (MEASURE_NOT_READ); the ground along an edge is not given at every
            place of its line (GROUND_MISSING)

    Basis:
        plane and solid geometry: derived
        a figure that the caller gave for this thing: the project's specification
        a raise of 2 to 3 in is usually met by raising the doors, each kind in its own way: common
            practice, no source
        a door line is level within 1/4 in, what a bottom seal takes up: common practice, no source
        the outside lies 1/2 to 1 in below the floor at the line where a door seals; more is a bump for
            wheels: common practice, no source
        photo-eyes at most 6 in above the floor: United States rule on automatic residential door
            operators, 16 CFR 1211 (any), photoelectric sensors, from memory: confirm
        3/8 in under a leaf: common practice, no source
        a door between house and parking is rated or solid, and is not altered: International
            Residential Code (2015-2021), R302.5.1, opening protection, from memory: confirm
        the landing at the required exit at most 1 1/2 in below the threshold, 7 3/4 in where the door
            does not swing over it: International Residential Code (2015-2021), R311.3, floors and
            landings at exterior doors, from memory: confirm
        risers at most 7 3/4 in, the greatest and the least of a flight at most 3/8 in apart:
            International Residential Code (2015-2021), R311.7.5.1, risers
        wood sills on foundations at least 8 in above the earth: International Residential Code
            (2015-2021), R317.1, protection of wood against decay, from memory: confirm
        unprotected wood siding at least 6 in above the ground and 2 in above slabs in the weather:
            International Residential Code (2015-2021), R317.1, item 5, as quoted elsewhere
        4 to 6 in of foundation kept bare for inspection: Model codes and local rules on termites (any),
            inspection strip, from memory: confirm
        ignition sources at least 18 in above a floor where vehicles are parked, unless listed as
            resistant to vapour: International Residential Code (2015-2021), M1307.3 and G2408.2, from
            memory: confirm
        7 ft clear over public parking; rooms that nobody lives in have no limit of their own:
            International Building Code (2015-2021), 406.2.2, clear height, from memory: confirm
        the working space at an electric panel is kept: National Electrical Code (any), 110.26, working
            space, from memory: confirm
        a drain's rim flush, or 1/8 to 1/4 in below the floor, dished 12 in around: common practice, no
            source
        free above the floor: caps and boxes flush, weep holes and vents 1 in, gas risers 3 in, taps 6
            in: common practice, no source
        services below are located and marked before anything is driven or cut: State laws on locating
            services below ground (any), call before digging, from memory: confirm
        a step of at most 1/4 in upright, 1/2 in where it is bevelled 1:2: ADA Standards for Accessible
            Design (2010), 303, changes in level, from memory: confirm
        a guard where walking surfaces are more than 30 in above what is below: International
            Residential Code (2015-2021), R312.1, guards, from memory: confirm
        ground is filled against a new edge at 1 in 6 to 1 in 12: common practice, no source

    Example:
        >>> from overslab.clearance import clearances
        >>> answer = clearances(
        ...     survey={
        ...         "outline": {
        ...             "corners": [
        ...                 {"x": "0 ft", "y": "0 ft"},
        ...                 {"x": "20 ft", "y": "0 ft"},
        ...                 {"x": "20 ft", "y": "24 ft"},
        ...                 {"x": "0 ft", "y": "24 ft"},
        ...             ],
        ...             "edges": ["front", "right", "back", "left"],
        ...         },
        ...         "shots": [
        ...             {"x": "1 ft", "y": "1 ft", "elevation": "99.20 ft"},
        ...             {"x": "19 ft", "y": "1 ft", "elevation": "99.22 ft"},
        ...             {"x": "19 ft", "y": "23 ft", "elevation": "99.40 ft"},
        ...             {"x": "1 ft", "y": "23 ft", "elevation": "99.38 ft"},
        ...         ],
        ...     },
        ...     finish={"level": "99.7 ft"},
        ...     things=[
        ...         {
        ...             "name": "wide door",
        ...             "kind": "sectional_door",
        ...             "x": "4 ft",
        ...             "y": "1/2 in",
        ...             "to_x": "16 ft",
        ...             "to_y": "1/2 in",
        ...             "above_slab": "7' 6\"",
        ...             "needed": "84 in",
        ...         },
        ...         {
        ...             "name": "cleanout",
        ...             "kind": "cleanout",
        ...             "x": "3 ft",
        ...             "y": "20 ft",
        ...             "above_slab": "1 in",
        ...         },
        ...     ],
        ... )
        >>> answer.passed
        0

    Since 0.1.0.
    """

@final
class Clearances(AnswerResult):
    r"""What `clearances` gives."""

    @property
    def passed(self) -> int:
        r"""things that still work."""

    @property
    def confirm_locally(self) -> int:
        r"""things that break a limit which is to be confirmed locally."""

    @property
    def ask(self) -> int:
        r"""things of which a measure that decides is missing."""

    @property
    def fail(self) -> int:
        r"""things that do not work as they stand."""

    @property
    def judgements(self) -> dict[str, Column]:
        r"""each thing."""

    @property
    def checks(self) -> dict[str, Column]:
        r"""each check of each thing."""

    @property
    def works(self) -> dict[str, Column]:
        r"""the work that the raise forces."""

    @property
    def text(self) -> str:
        r"""the same for the site, one thing to a line."""
