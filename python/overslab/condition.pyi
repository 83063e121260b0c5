"""The operations of `condition`: made from the table of operations; do not edit."""

from typing import Literal, final

from overslab.results import AnswerResult, Record

from overslab.typing import Column, Quantity, RecordLike, Units

__all__ = [
    "Findings",
    "condition",
    "Condition",
    "condition_quick",
    "ConditionQuick",
    "tear_out",
    "TearOut",
]

@final
class Findings(Record):
    r"""What was found on the old slab and what is wanted of it; all of it may be left out."""

    @property
    def words(self) -> dict[str, Column]:
        r"""the findings given as words."""

def condition(
    findings: Findings | RecordLike,
    *,
    units: Units | None = None,
) -> Condition:
    r"""Whether the old slab may stay: every way judged with its reasons, the way to take, the work, and what to find out.

    Rule: each rule: where its findings are at their word or worse, the way is at least where the rule
        puts it; bad parts broken out leave the better of unbonded and bonded for the rest.
    Takes for granted: what is not given is not bad, and asked for where it could turn the verdict; no
        verdict is an approval.

    Args:
        findings: what was found, in site words or measures; a Findings
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        Condition, with the attributes
            take: the way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop
            unbonded: pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop
            bonded: bonding to it: allowed, allowed_after_work, asks, refused, stop
            partly_bonded: pouring straight on; only where that is asked for: allowed,
                allowed_after_work, asks, refused, stop
            break_out_part: breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop
            break_out_whole: breaking it all out: allowed, allowed_after_work, asks, refused, stop
            reasons: the rules that weigh, way by way, a table of reasons
            work: the work that each way takes, a table of work
            asks: what could turn the verdict and is not known, a table of asks
            stops: the stops by name, a table of stops
            taken_findings: what was not given and was taken, a table of taken_findings
            text: the verdict in plain words, one idea to a line, what can hurt with it
        and notes, basis and taken.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN); the key is not known
            (KEY_UNKNOWN); two values say the same thing differently (CONTRADICTION)
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING)
        ConditionError: two findings on the old slab cannot both be so (FINDINGS_DISAGREE)

    Basis:
        a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving
            slabs come out: common practice, no source
        hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
            spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source
        tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping
            or broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old
            slab's condition, from memory: confirm
        over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that
            covers the high spots: Concrete Construction, answer on topping a cracked and settled slab
            (citing ACI 302.1R-80), choice of topping
        before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off
            down to clean concrete: Concrete Construction, preparing for a topping (any), moving cracks;
            contamination
        a floor topping that bonds in part counts as a failure: old cracks will show: Concrete
            Construction, on floor toppings (any), partly bonded toppings
        unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded:
            about 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond
            breakers; roughness
        milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken
            off: UFC 3-260-02 (any), chapter 17, fully bonded overlays
        a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from
            memory: confirm
        an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets
            again, and type II, from memory: confirm
        a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory:
            confirm
        settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in;
            else a second reading or an exclusion in writing: common practice, no source
        what lies under a slab is known, by drilling if need be, before it is loaded: common practice,
            no source
        a slab that spans takes more weight only by an engineer's figures: common practice, no source
        water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a
            drained layer with an open lower edge and sealed joints: common practice, no source
        pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken:
            common practice, no source
        posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what
            carries them: common practice, no source
        coverings and paint of unknown age are tested for asbestos and lead first: common practice, no
            source
        3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress:
            common practice, no source
        a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old
            one: common practice, no source
        what the prepared surface must hold in a pull-off test: the project's specification

    Example:
        >>> from overslab.condition import condition
        >>> answer = condition(
        ...     findings={
        ...         "measured_crack": "0.02 in",
        ...         "measured_thickness": "4 in",
        ...         "crack_movement": "still",
        ...         "crack_pattern": "few",
        ...         "step": "none",
        ...         "settlement": "none",
        ...         "heave": "none",
        ...         "rocking": "none",
        ...         "joints": "still",
        ...         "hollow": "none",
        ...         "strength": "rings",
        ...         "contamination": "film",
        ...         "moisture": "dry",
        ...         "rests_on": "gravel",
        ...         "below": "nothing",
        ...         "place": "indoors",
        ...         "load": "car",
        ...     },
        ... )
        >>> answer.take
        'unbonded'

    Since 0.1.0.
    """

@final
class Condition(AnswerResult):
    r"""What `condition` gives."""

    @property
    def take(self) -> Literal["unbonded", "bonded", "break_out_part", "break_out_whole", "find_out", "stop"]:
        r"""the way to take."""

    @property
    def unbonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""pouring over it, unbonded."""

    @property
    def bonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""bonding to it."""

    @property
    def partly_bonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"] | None:
        r"""pouring straight on; only where that is asked for."""

    @property
    def break_out_part(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""breaking out the bad parts."""

    @property
    def break_out_whole(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""breaking it all out."""

    @property
    def reasons(self) -> dict[str, Column]:
        r"""the rules that weigh, way by way."""

    @property
    def work(self) -> dict[str, Column]:
        r"""the work that each way takes."""

    @property
    def asks(self) -> dict[str, Column]:
        r"""what could turn the verdict and is not known."""

    @property
    def stops(self) -> dict[str, Column]:
        r"""the stops by name."""

    @property
    def taken_findings(self) -> dict[str, Column]:
        r"""what was not given and was taken."""

    @property
    def text(self) -> str:
        r"""the verdict in plain words, one idea to a line, what can hurt with it."""

def condition_quick(
    moves: Literal["no", "sank_once", "rocks", "moves"],
    cracks: Literal["none", "hairline_still", "wide_or_stepped", "many"],
    hammer: Literal["rings", "spots", "a_lot"],
    surface: Literal["clean", "oil_or_paint", "scaled", "covered"],
    under: Literal["ground_indoors", "ground_outdoors", "ground_frost", "air", "unknown"],
    *,
    findings: Findings | RecordLike | None = None,
    units: Units | None = None,
) -> ConditionQuick:
    r"""The verdict on the old slab by five questions that a foreman answers standing on it.

    Rule: each rule: where its findings are at their word or worse, the way is at least where the rule
        puts it; bad parts broken out leave the better of unbonded and bonded for the rest.
    Takes for granted: each answer stands for findings, the worse ones where it may mean several; each
        is listed as taken.

    Args:
        moves: does it move or rock, or has it sunk?; one of "no", "sank_once", "rocks", "moves"
        cracks: what cracks are there?; one of "none", "hairline_still", "wide_or_stepped", "many"
        hammer: what does the hammer say?; one of "rings", "spots", "a_lot"
        surface: what is the surface like?; one of "clean", "oil_or_paint", "scaled", "covered"
        under: what is under it, and does it freeze there?; one of "ground_indoors", "ground_outdoors",
            "ground_frost", "air", "unknown"
        findings: what else was found; it goes before the answers; a Findings; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        ConditionQuick, with the attributes
            take: the way to take: unbonded, bonded, break_out_part, break_out_whole, find_out, stop
            unbonded: pouring over it, unbonded: allowed, allowed_after_work, asks, refused, stop
            bonded: bonding to it: allowed, allowed_after_work, asks, refused, stop
            partly_bonded: pouring straight on; only where that is asked for: allowed,
                allowed_after_work, asks, refused, stop
            break_out_part: breaking out the bad parts: allowed, allowed_after_work, asks, refused, stop
            break_out_whole: breaking it all out: allowed, allowed_after_work, asks, refused, stop
            reasons: the rules that weigh, way by way, a table of reasons
            work: the work that each way takes, a table of work
            asks: what could turn the verdict and is not known, a table of asks
            stops: the stops by name, a table of stops
            taken_findings: what was not given and was taken, a table of taken_findings
            text: the verdict in plain words, one idea to a line, what can hurt with it
        and notes, basis and taken.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN); two values say the same thing
            differently (CONTRADICTION)
        ConditionError: two findings on the old slab cannot both be so (FINDINGS_DISAGREE)

    Basis:
        a sound slab is poured over at 3 in and more, bonded to below that; broken, settling and heaving
            slabs come out: common practice, no source
        hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
            spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source
        tight, still cracks over a slab that sounds whole: bond or pour over; stepped, rocking, pumping
            or broken: do not bond: ACI 302.1R and ACI 325.13R (several), choice of overlay by the old
            slab's condition, from memory: confirm
        over random cracks and settled offsets: not bonded; unbonded over a compacted sand layer that
            covers the high spots: Concrete Construction, answer on topping a cracked and settled slab
            (citing ACI 302.1R-80), choice of topping
        before bonding, moving cracks are stabilised, filled or stitched, and contamination is taken off
            down to clean concrete: Concrete Construction, preparing for a topping (any), moving cracks;
            contamination
        a floor topping that bonds in part counts as a failure: old cracks will show: Concrete
            Construction, on floor toppings (any), partly bonded toppings
        unbonded: sheet, felt, waterproof paper or wax cure over a base patched to a fair plane; bonded:
            about 1/4 in rough: American Society of Concrete Contractors, answer on toppings (any), bond
            breakers; roughness
        milled or shotblasted, then blasted clean; grout just ahead of the concrete, dried grout taken
            off: UFC 3-260-02 (any), chapter 17, fully bonded overlays
        a hammer or a chain tells hollow places: ASTM D4580 (any), sounding of delaminations, from
            memory: confirm
        an agent that wets again is for dry places indoors only: ASTM C1059 (any), type I, which wets
            again, and type II, from memory: confirm
        a bonded topping is at least 3/4 in thick: ACI 302.1R (any), bonded toppings, from memory:
            confirm
        settlement that nobody knows counts as live where its signs are fresh or a step is over 1/2 in;
            else a second reading or an exclusion in writing: common practice, no source
        what lies under a slab is known, by drilling if need be, before it is loaded: common practice,
            no source
        a slab that spans takes more weight only by an engineer's figures: common practice, no source
        water between two slabs freezes and lifts the upper one: outdoors bonded, or 4 in and more on a
            drained layer with an open lower edge and sealed joints: common practice, no source
        pipes, wires and tendons are found and marked before an old slab is cut, drilled or broken:
            common practice, no source
        posts of lifts and hoists are not anchored in a topping; the maker and an engineer say what
            carries them: common practice, no source
        coverings and paint of unknown age are tested for asbestos and lead first: common practice, no
            source
        3 in unbonded carries feet and cars; trucks, wash bays and jacks want 4 in and more, by stress:
            common practice, no source
        a panel is bonded or not as a whole; a change lies on a full-depth joint, at best over an old
            one: common practice, no source
        what the prepared surface must hold in a pull-off test: the project's specification

    Example:
        >>> from overslab.condition import condition_quick
        >>> answer = condition_quick(
        ...     moves="no",
        ...     cracks="hairline_still",
        ...     hammer="rings",
        ...     surface="clean",
        ...     under="ground_indoors",
        ... )
        >>> answer.take
        'find_out'

    Since 0.1.0.
    """

@final
class ConditionQuick(AnswerResult):
    r"""What `condition_quick` gives."""

    @property
    def take(self) -> Literal["unbonded", "bonded", "break_out_part", "break_out_whole", "find_out", "stop"]:
        r"""the way to take."""

    @property
    def unbonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""pouring over it, unbonded."""

    @property
    def bonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""bonding to it."""

    @property
    def partly_bonded(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"] | None:
        r"""pouring straight on; only where that is asked for."""

    @property
    def break_out_part(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""breaking out the bad parts."""

    @property
    def break_out_whole(self) -> Literal["allowed", "allowed_after_work", "asks", "refused", "stop"]:
        r"""breaking it all out."""

    @property
    def reasons(self) -> dict[str, Column]:
        r"""the rules that weigh, way by way."""

    @property
    def work(self) -> dict[str, Column]:
        r"""the work that each way takes."""

    @property
    def asks(self) -> dict[str, Column]:
        r"""what could turn the verdict and is not known."""

    @property
    def stops(self) -> dict[str, Column]:
        r"""the stops by name."""

    @property
    def taken_findings(self) -> dict[str, Column]:
        r"""what was not given and was taken."""

    @property
    def text(self) -> str:
        r"""the verdict in plain words, one idea to a line, what can hurt with it."""

def tear_out(
    area: Quantity,
    *,
    old_thickness: Quantity | None = None,
    density: Quantity | None = None,
    bulking: Quantity | None = None,
    box_weight: Quantity | None = None,
    box_volume: Quantity | None = None,
    base: Quantity | None = None,
    base_loose: Quantity | None = None,
    new_thickness: Quantity | None = None,
    rise: Quantity | None = None,
    breaking_price: Quantity | None = None,
    load_price: Quantity | None = None,
    dump_price: Quantity | None = None,
    base_price: Quantity | None = None,
    concrete_price: Quantity | None = None,
    units: Units | None = None,
) -> TearOut:
    r"""Breaking an old slab out: what is hauled away in how many loads, the new base, the new slab, the cost at the caller's prices.

    Rule: in place = area x old thickness; weight = in place x density; loose = in place x bulking; dug
        = base + new thickness - old thickness - rise where above none; concrete = area x new thickness.
    Takes for granted: thicknesses and rise are means over the area; a missing price stays missing and
        leaves no total.

    Args:
        area: area broken out [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2, at
            most 1000000 m2)
        old_thickness: thickness of the old slab [in | mm]; at least 0.25 in, at most 60 in (at least
            6.35 mm, at most 1524 mm); where it is not given 3 1/2 in is taken: a nominal 4 in is 3 1/2
            in
        density: mass of the old concrete in place [lb/ft3 | kg/m3]; at least 62.4279605761 lb/ft3, at
            most 249.711842305 lb/ft3 (at least 1000 kg/m3, at most 4000 kg/m3); where it is not given
            150 lb/ft3 is taken: 4,050 lb/yd3 in place
        bulking: volume broken up over volume in place [%]; at least 100 %, at most 300 %; where it is
            not given 150 % is taken: broken concrete takes 1.4 to 1.6 times its room
        box_weight: what one box or truck may carry [ton | t]; at least 0.110231131092 ton, at most
            55.1155655462 ton (at least 0.1 t, at most 50 t); where it is not given 10 ton is taken: a
            box of 10 tons
        box_volume: what goes into one box, where that runs out first [yd3 | m3]; at least
            0.130795061931 yd3, at most 130.795061931 yd3 (at least 0.1 m3, at most 100 m3); may be left
            out
        base: thickness of the new base, compacted; none where the ground serves [in | mm]; more than 0
            in, at most 120 in (more than 0 mm, at most 3048 mm); may be left out
        base_loose: volume of base as bought over compacted [%]; at least 100 %, at most 300 %; where it
            is not given 120 % is taken: base loses a sixth when it is compacted
        new_thickness: mean thickness of the new slab; none where nothing is poured [in | mm]; at least
            0.25 in, at most 60 in (at least 6.35 mm, at most 1524 mm); may be left out
        rise: how much higher the new floor is than the old one, on the mean [in | mm]; at least -60 in,
            at most 60 in (at least -1524 mm, at most 1524 mm); where it is not given 0 in is taken: the
            new floor is as high as the old one
        breaking_price: price of breaking and loading [/ft2 | /m2]; at least 0 /ft2, at most 92903040
            /ft2 (at least 0 /m2, at most 1000000000 /m2); may be left out
        load_price: price of hauling one load [money]; at least 0 money, at most 1000000000 money; may
            be left out
        dump_price: price of dumping [/ton | /t]; at least 0 /ton, at most 907184740000 /ton (at least 0
            /t, at most 1000000000000 /t); may be left out
        base_price: price of base as bought [/yd3 | /m3]; at least 0 /yd3, at most 764554857.984 /yd3
            (at least 0 /m3, at most 1000000000 /m3); may be left out
        concrete_price: price of concrete, placed [/yd3 | /m3]; at least 0 /yd3, at most 764554857.984
            /yd3 (at least 0 /m3, at most 1000000000 /m3); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        TearOut, with the attributes
            in_place_yd3, in_place_m3: old concrete in place [yd3 | m3]
            mass_ton, mass_t: its mass [ton | t]
            loose_yd3, loose_m3: its volume broken up [yd3 | m3]
            loads: loads to the dump, by weight or by volume
            dig_depth_in, dig_depth_mm: how deep the ground is dug below the old slab [in | mm]
            dig_yd3, dig_m3: ground dug, in place; it is not in the loads [yd3 | m3]
            base_in_place_yd3, base_in_place_m3: new base, compacted [yd3 | m3]
            base_bought_yd3, base_bought_m3: new base, loose, as it is bought [yd3 | m3]
            concrete_yd3, concrete_m3: the new slab; none where nothing is poured [yd3 | m3]
            costs: the cost of each part that there is, a table of costs
            total_money: all of it; none where a price is missing [money]
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG); the quantity cannot be below zero (NEGATIVE)

    Basis:
        plane and solid geometry: derived
        broken concrete weighs 4,050 lb/yd3 in place and bulks by 1.4 to 1.6: common practice, no source
        hairline, card, coin: cracks of 0.01, 0.03, 0.06 in; coin, pencil: steps of 1/16, 1/4 in; hollow
            spots, a lot: 5, 25 %; a nominal 4 in is 3 1/2 in: common practice, no source

    Example:
        >>> from overslab.condition import tear_out
        >>> answer = tear_out(
        ...     area="400 ft2",
        ...     old_thickness="4 in",
        ...     base="4 in",
        ...     new_thickness="5 in",
        ...     rise="1 in",
        ...     breaking_price="4.5 /ft2",
        ...     load_price="180 money",
        ...     dump_price="70 /ton",
        ... )
        >>> round(answer.in_place_yd3, 4)
        4.9383

    Since 0.1.0.
    """

@final
class TearOut(AnswerResult):
    r"""What `tear_out` gives."""

    @property
    def in_place_yd3(self) -> float:
        r"""old concrete in place [yd3]."""

    @property
    def in_place_m3(self) -> float:
        r"""old concrete in place [m3]."""

    @property
    def mass_ton(self) -> float:
        r"""its mass [ton]."""

    @property
    def mass_t(self) -> float:
        r"""its mass [t]."""

    @property
    def loose_yd3(self) -> float:
        r"""its volume broken up [yd3]."""

    @property
    def loose_m3(self) -> float:
        r"""its volume broken up [m3]."""

    @property
    def loads(self) -> int:
        r"""loads to the dump, by weight or by volume."""

    @property
    def dig_depth_in(self) -> float:
        r"""how deep the ground is dug below the old slab [in]."""

    @property
    def dig_depth_mm(self) -> float:
        r"""how deep the ground is dug below the old slab [mm]."""

    @property
    def dig_yd3(self) -> float:
        r"""ground dug, in place; it is not in the loads [yd3]."""

    @property
    def dig_m3(self) -> float:
        r"""ground dug, in place; it is not in the loads [m3]."""

    @property
    def base_in_place_yd3(self) -> float:
        r"""new base, compacted [yd3]."""

    @property
    def base_in_place_m3(self) -> float:
        r"""new base, compacted [m3]."""

    @property
    def base_bought_yd3(self) -> float:
        r"""new base, loose, as it is bought [yd3]."""

    @property
    def base_bought_m3(self) -> float:
        r"""new base, loose, as it is bought [m3]."""

    @property
    def concrete_yd3(self) -> float | None:
        r"""the new slab; none where nothing is poured [yd3]."""

    @property
    def concrete_m3(self) -> float | None:
        r"""the new slab; none where nothing is poured [m3]."""

    @property
    def costs(self) -> dict[str, Column]:
        r"""the cost of each part that there is."""

    @property
    def total_money(self) -> float | None:
        r"""all of it; none where a price is missing [money]."""
