"""The operations of `overlay`: made from the table of operations; do not edit."""

from typing import Any, Literal, final, overload

import numpy as np
import numpy.typing as npt

from overslab.results import AnswerResult, ArrayResult, ScalarResult

from overslab.typing import Column, Errors, Quantities, Quantity, RecordLike, Table, Units, Words
from overslab.survey import Survey
from overslab.grade import Finish

__all__ = [
    "condition_factor",
    "ConditionFactor",
    "ConditionFactorArray",
    "overlay_minimum",
    "OverlayMinimum",
    "surface_profile",
    "SurfaceProfile",
    "pull_off",
    "PullOff",
    "overlay_required",
    "OverlayRequired",
    "OverlayRequiredArray",
    "slab_equivalent",
    "SlabEquivalent",
    "SlabEquivalentArray",
    "overlay_effective_bonded",
    "OverlayEffectiveBonded",
    "OverlayEffectiveBondedArray",
    "overlay_effective_unbonded",
    "OverlayEffectiveUnbonded",
    "OverlayEffectiveUnbondedArray",
    "concrete_modulus",
    "ConcreteModulus",
    "ConcreteModulusArray",
    "concrete_modulus_by_density",
    "ConcreteModulusByDensity",
    "ConcreteModulusByDensityArray",
    "concrete_rupture",
    "ConcreteRupture",
    "ConcreteRuptureArray",
    "subgrade_from_bearing_ratio",
    "SubgradeFromBearingRatio",
    "SubgradeFromBearingRatioArray",
    "subgrade_from_resilient",
    "SubgradeFromResilient",
    "SubgradeFromResilientArray",
    "subgrade_from_soil",
    "SubgradeFromSoil",
    "SubgradeFromSoilArray",
    "subgrade_with_subbase",
    "SubgradeWithSubbase",
    "SubgradeWithSubbaseArray",
    "stiffness_radius",
    "StiffnessRadius",
    "StiffnessRadiusArray",
    "contact_radius",
    "ContactRadius",
    "ContactRadiusArray",
    "contact_radius_dual",
    "ContactRadiusDual",
    "ContactRadiusDualArray",
    "equivalent_radius",
    "EquivalentRadius",
    "EquivalentRadiusArray",
    "interior_load",
    "InteriorLoad",
    "InteriorLoadArray",
    "edge_load",
    "EdgeLoad",
    "EdgeLoadArray",
    "edge_load_1926",
    "EdgeLoad1926",
    "EdgeLoad1926Array",
    "corner_load",
    "CornerLoad",
    "CornerLoadArray",
    "corner_crack",
    "CornerCrack",
    "CornerCrackArray",
    "load_influence",
    "LoadInfluence",
    "LoadInfluenceArray",
    "usual_load",
    "UsualLoad",
    "slab_stress",
    "SlabStress",
    "safety_factors",
    "SafetyFactors",
    "SafetyFactorsArray",
    "allowable_stress",
    "AllowableStress",
    "AllowableStressArray",
    "allowable_load",
    "AllowableLoad",
    "AllowableLoadArray",
    "repetitions_allowed",
    "RepetitionsAllowed",
    "thickness_needed",
    "ThicknessNeeded",
    "uniform_load",
    "UniformLoad",
    "UniformLoadArray",
    "wall_load",
    "WallLoad",
    "WallLoadArray",
    "curling_coefficient",
    "CurlingCoefficient",
    "CurlingCoefficientArray",
    "curling_stress",
    "CurlingStress",
    "CurlingStressArray",
    "two_layers",
    "TwoLayers",
    "TwoLayersArray",
    "edge_key",
    "EdgeKey",
    "key_cuts",
    "KeyCuts",
    "moisture_tests",
    "MoistureTests",
    "MoistureTestsArray",
    "moisture_verdict",
    "MoistureVerdict",
    "drying_time",
    "DryingTime",
    "DryingTimeArray",
    "drying_time_by_water",
    "DryingTimeByWater",
    "DryingTimeByWaterArray",
    "vapour_emission",
    "VapourEmission",
    "VapourEmissionArray",
    "added_weight",
    "AddedWeight",
    "AddedWeightArray",
]

@overload
def condition_factor(  # type: ignore[overload-overlap]
    condition: Literal["sound", "few cracks, still", "badly cracked"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConditionFactor:
    r"""The condition factor of an old slab by what is seen.

    Rule: sound 1.00; a few cracks that do not grow 0.75; badly cracked 0.35.
    Takes for granted: what is seen holds for the whole slab.

    Args:
        condition: what the old slab looks like; one of "sound", "few cracks, still", "badly cracked"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ConditionFactor, with the attributes
            factor_ratio: condition factor C [1]
        and notes; for arrays ConditionFactorArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
            3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm

    Example:
        >>> from overslab.overlay import condition_factor
        >>> answer = condition_factor(condition="few cracks, still")
        >>> round(answer.factor_ratio, 4)
        0.75

    Since 0.1.0.
    """

@overload
def condition_factor(
    condition: Literal["sound", "few cracks, still", "badly cracked"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConditionFactorArray: ...

@final
class ConditionFactor(ScalarResult):
    r"""What `condition_factor` gives."""

    @property
    def factor_ratio(self) -> float:
        r"""condition factor C [1]."""

@final
class ConditionFactorArray(ArrayResult):
    r"""What `condition_factor` gives for arrays."""

    @property
    def factor_ratio(self) -> npt.NDArray[np.float64]:
        r"""condition factor C [1]."""

def overlay_minimum(
    bond: Literal["bonded", "partly bonded", "unbonded"],
    used: Literal["people", "cars", "trucks", "wash bay", "jacks", "heavier"],
    *,
    stone: Quantity | None = None,
    units: Units | None = None,
) -> OverlayMinimum:
    r"""How thin an overlay may be in practice by its bond, its use and its stone, the largest stone for it, and what goes between old and new.

    Rule: least = the larger of the rule for bond and use and 3 x stone; largest stone = least / 3.
    Takes for granted: a sound old slab; no edge runs out to nothing: it ends at a sawn and chipped key
        at least as deep.

    Args:
        bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
        used: what the floor is used for; one of "people", "cars", "trucks", "wash bay", "jacks",
            "heavier"
        stone: largest stone of the mix [in | mm]; at least 0.125 in, at most 3 in (at least 3.175 mm,
            at most 76.2 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        OverlayMinimum, with the attributes
            least_in, least_mm: least thickness anywhere [in | mm]
            largest_stone_in, largest_stone_mm: largest stone for that thickness [in | mm]
            greatest_usual_in, greatest_usual_mm: usual at most; none where stress alone decides [in |
                mm]
            between: what goes between old and new
            means: what that means for the floor
            rests_on: the basis that decides, by name
            rules: every rule about it, with its source, a table of rules
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        bonded floor topping at least 3/4 in: ACI 302.1R (several), bonded toppings, from memory:
            confirm
        unbonded floor topping at least 3 in: ACI 302.1R (1996 and later), unbonded toppings, from
            memory: confirm
        unbonded floor topping at least 2 1/2 in: Concrete Construction, citing ACI 302.1R (1980),
            unbonded toppings, as quoted elsewhere
        under 3 in a bonding agent goes down first, and about 1 1/2 to 2 in can be poured: common
            practice, no source
        at 3 in and more a sound old slab is poured over without bond; broken, settling, heaving slabs
            come out: common practice, no source
        4 in under trucks, in wash bays, under jacks; 5 in and more by stress: common practice, no
            source
        bonded overlay of a road at least 2 in: Guide to Concrete Overlay Solutions (2007), bonded, 2 to
            5 in
        airfields: bonded 2 to 3 in, others 5 to 6 in: FAA and UFC airfield pavements (several), least
            overlay, from memory: confirm
        the thinnest part is at least three times the largest stone: ACI 302.1R (several), coarse
            aggregate in toppings, from memory: confirm
        no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
            edges of repairs, from memory: confirm

    Example:
        >>> from overslab.overlay import overlay_minimum
        >>> answer = overlay_minimum(bond="unbonded", used="cars", stone="3/4 in")
        >>> round(answer.least_in, 4)
        3.0

    Since 0.1.0.
    """

@final
class OverlayMinimum(AnswerResult):
    r"""What `overlay_minimum` gives."""

    @property
    def least_in(self) -> float:
        r"""least thickness anywhere [in]."""

    @property
    def least_mm(self) -> float:
        r"""least thickness anywhere [mm]."""

    @property
    def largest_stone_in(self) -> float:
        r"""largest stone for that thickness [in]."""

    @property
    def largest_stone_mm(self) -> float:
        r"""largest stone for that thickness [mm]."""

    @property
    def greatest_usual_in(self) -> float | None:
        r"""usual at most; none where stress alone decides [in]."""

    @property
    def greatest_usual_mm(self) -> float | None:
        r"""usual at most; none where stress alone decides [mm]."""

    @property
    def between(self) -> str:
        r"""what goes between old and new."""

    @property
    def means(self) -> str:
        r"""what that means for the floor."""

    @property
    def rests_on(self) -> str:
        r"""the basis that decides, by name."""

    @property
    def rules(self) -> dict[str, Column]:
        r"""every rule about it, with its source."""

def surface_profile(
    covering: Literal["sealer", "thin film", "high-build coating", "self-levelling", "polymer overlay", "concrete overlay", "bonded topping"],
    *,
    units: Units | None = None,
) -> SurfaceProfile:
    r"""How rough the old surface must be for what goes on it, and the ways to it.

    Rule: by table: sealer 1 to 2, thin film 1 to 3, high-build coating 3 to 5, self-levelling 4 to 6,
        polymer overlay 5 to 9, concrete overlay 5 to 10, bonded topping 7 to 9.
    Takes for granted: sound, clean concrete; profiles 1 smooth to 10 rough; before a bonded overlay the
        surface is wetted the day before, damp and without standing water.

    Args:
        covering: what goes on the old surface; one of "sealer", "thin film", "high-build coating",
            "self-levelling", "polymer overlay", "concrete overlay", "bonded topping"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SurfaceProfile, with the attributes
            least: smoothest profile
            greatest: roughest profile
            rests_on: its basis, by name
            ways: the ways to these profiles, a table of ways
        and notes, basis and taken.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        self-levelling 4 to 6, bonded topping 7 to 9: ICRI 310.2R, as quoted by a design note and a
            trade page (2013), profiles, as quoted elsewhere
        surface profile by covering: ICRI 310.2R (2013), profiles by covering, from memory: confirm

    Example:
        >>> from overslab.overlay import surface_profile
        >>> answer = surface_profile(covering="bonded topping")
        >>> answer.least
        7

    Since 0.1.0.
    """

@final
class SurfaceProfile(AnswerResult):
    r"""What `surface_profile` gives."""

    @property
    def least(self) -> int:
        r"""smoothest profile."""

    @property
    def greatest(self) -> int:
        r"""roughest profile."""

    @property
    def rests_on(self) -> str:
        r"""its basis, by name."""

    @property
    def ways(self) -> dict[str, Column]:
        r"""the ways to these profiles."""

def pull_off(
    load: Quantity,
    diameter: Quantity,
    broke: Literal["old concrete", "between", "overlay", "glue"],
    *,
    asked: Quantity | None = None,
    units: Units | None = None,
) -> PullOff:
    r"""The pull-off strength of a core, held against what the project's specification asks.

    Rule: strength = 4 load / (pi diameter^2).
    Takes for granted: the core goes at least 1/2 in into the old concrete; no standard gives an
        acceptance number: it is the project's.

    Args:
        load: load at which it broke [lbf | kN]; more than 0 lbf, at most 22480.89431 lbf (more than 0
            kN, at most 100 kN)
        diameter: diameter of the core, usually 2 in [in | mm]; at least 1 in, at most 6 in (at least
            25.4 mm, at most 152.4 mm)
        broke: where it broke; one of "old concrete", "between", "overlay", "glue"
        asked: strength that is asked for [psi | MPa]; more than 0 psi, at most 1450.3773773 psi (more
            than 0 MPa, at most 10 MPa); where it is not given 200 psi is taken: often asked; the
            project's specification decides
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        PullOff, with the attributes
            strength_psi, strength_mpa: pull-off strength [psi | MPa]
            verdict: what the test says: enough, too little, void
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        f = 4 P / (pi d^2): ASTM C1583 (any), load over area, from memory: confirm
        200 psi is often asked: the project's specification

    Example:
        >>> from overslab.overlay import pull_off
        >>> answer = pull_off(load="800 lb", diameter="2 in", broke="old concrete")
        >>> round(answer.strength_psi, 4)
        254.6479

    Since 0.1.0.
    """

@final
class PullOff(AnswerResult):
    r"""What `pull_off` gives."""

    @property
    def strength_psi(self) -> float:
        r"""pull-off strength [psi]."""

    @property
    def strength_mpa(self) -> float:
        r"""pull-off strength [MPa]."""

    @property
    def verdict(self) -> Literal["enough", "too little", "void"]:
        r"""what the test says."""

@overload
def overlay_required(  # type: ignore[overload-overlap]
    bond: Literal["bonded", "partly bonded", "unbonded"],
    required_new: Quantity,
    required_old: Quantity,
    old_slab: Quantity,
    condition: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayRequired:
    r"""The overlay thickness that an old slab needs, bonded, partly bonded or unbonded; zero where the old slab is enough.

    Rule: overlay = (required_new^n - condition (required_new / required_old x old_slab)^n)^(1/n); n = 1
        bonded (condition 1: required_new - old_slab), 1.4 partly bonded, 2 unbonded; a negative bracket
        is no need.
    Takes for granted: the equations are empirical, from full-scale traffic tests on airfields; the
        practical least thickness is apart.

    Args:
        bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
        required_new: single slab that the new concrete would need on this ground [in | mm]; more than 0
            in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
        required_old: a single slab of the old concrete would need so much [in | mm]; more than 0 in, at
            most 78.7401574803 in (more than 0 mm, at most 2000 mm)
        old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        condition: condition factor C of the old slab; 1 for a bonded overlay [1]; at least 0.1 1, at
            most 1 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        OverlayRequired, with the attributes
            overlay_in, overlay_mm: thickness of the overlay [in | mm]
        and notes; for arrays OverlayRequiredArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: a bonded overlay is figured over a sound slab only (BOND_NEEDS_SOUND)
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        ho = (hd^n - C (hd/he hE)^n)^(1/n), n = 1 bonded, 1.4 partly bonded, 2 unbonded: UFC 3-260-02,
            Pavement Design for Airfields (2001), ch. 17, Eq. 17-1 to 17-3; examples read, forms
            recalled, from memory: confirm
        C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
            3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm

    Example:
        >>> from overslab.overlay import overlay_required
        >>> answer = overlay_required(
        ...     bond="unbonded",
        ...     required_new="9 in",
        ...     required_old="9 in",
        ...     old_slab="6 in",
        ...     condition="1 ratio",
        ... )
        >>> round(answer.overlay_in, 4)
        6.7082

    Since 0.1.0.
    """

@overload
def overlay_required(
    bond: Literal["bonded", "partly bonded", "unbonded"] | Words,
    required_new: Quantity | Quantities,
    required_old: Quantity | Quantities,
    old_slab: Quantity | Quantities,
    condition: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayRequiredArray: ...

@final
class OverlayRequired(ScalarResult):
    r"""What `overlay_required` gives."""

    @property
    def overlay_in(self) -> float:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> float:
        r"""thickness of the overlay [mm]."""

@final
class OverlayRequiredArray(ArrayResult):
    r"""What `overlay_required` gives for arrays."""

    @property
    def overlay_in(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [mm]."""

@overload
def slab_equivalent(  # type: ignore[overload-overlap]
    bond: Literal["bonded", "partly bonded", "unbonded"],
    overlay: Quantity,
    old_slab: Quantity,
    condition: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SlabEquivalent:
    r"""The single slab that an overlay and the old slab under it are worth together.

    Rule: equivalent = (overlay^n + condition x old_slab^n)^(1/n); n = 1 bonded, 1.4 partly bonded, 2
        unbonded.
    Takes for granted: both concretes are alike in strength.

    Args:
        bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
        overlay: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        old_slab: the old slab's thickness [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        condition: condition factor C of the old slab; 1 for a bonded overlay [1]; at least 0.1 1, at
            most 1 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SlabEquivalent, with the attributes
            equivalent_in, equivalent_mm: the single slab [in | mm]
        and notes; for arrays SlabEquivalentArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: a bonded overlay is figured over a sound slab only (BOND_NEEDS_SOUND)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        h = (ho^n + C hb^n)^(1/n): UFC 3-260-03, Airfield Pavement Evaluation (2001), ch. 6, Eq. 6-3
            (1.4; the others follow Eq. 17-1 and 17-3)
        C = 1.00 sound, 0.75 a few cracks that do not grow, 0.35 badly cracked: UFC 3-260-02 and
            3-260-03 (2001), examples: 0.75 and 0.35 read, classes recalled, from memory: confirm

    Example:
        >>> from overslab.overlay import slab_equivalent
        >>> answer = slab_equivalent(
        ...     bond="partly bonded",
        ...     overlay="6 in",
        ...     old_slab="6 in",
        ...     condition="1 ratio",
        ... )
        >>> round(answer.equivalent_in, 4)
        9.844

    Since 0.1.0.
    """

@overload
def slab_equivalent(
    bond: Literal["bonded", "partly bonded", "unbonded"] | Words,
    overlay: Quantity | Quantities,
    old_slab: Quantity | Quantities,
    condition: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SlabEquivalentArray: ...

@final
class SlabEquivalent(ScalarResult):
    r"""What `slab_equivalent` gives."""

    @property
    def equivalent_in(self) -> float:
        r"""the single slab [in]."""

    @property
    def equivalent_mm(self) -> float:
        r"""the single slab [mm]."""

@final
class SlabEquivalentArray(ArrayResult):
    r"""What `slab_equivalent` gives for arrays."""

    @property
    def equivalent_in(self) -> npt.NDArray[np.float64]:
        r"""the single slab [in]."""

    @property
    def equivalent_mm(self) -> npt.NDArray[np.float64]:
        r"""the single slab [mm]."""

@overload
def overlay_effective_bonded(  # type: ignore[overload-overlap]
    required: Quantity,
    old_slab: Quantity,
    joints: Quantity,
    durability: Quantity,
    fatigue: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayEffectiveBonded:
    r"""What an old slab is worth under a bonded overlay, and the overlay that follows.

    Rule: effective = joints x durability x fatigue x old_slab; overlay = required - effective, none
        where negative.
    Takes for granted: the factors come from a survey of joints, cracks and durability.

    Args:
        required: single slab required for the traffic to come [in | mm]; more than 0 in, at most
            78.7401574803 in (more than 0 mm, at most 2000 mm)
        old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        joints: factor for joints and cracks left open; 1 where all are mended [1]; at least 0.3 1, at
            most 1 1
        durability: durability factor: 1 none lost, 0.96 to 0.99 cracking, 0.80 to 0.95 with spalling
            [1]; at least 0.3 1, at most 1 1
        fatigue: fatigue factor: 0.97 to 1 few transverse cracks, 0.94 to 0.96 many, 0.90 to 0.93 very
            many [1]; at least 0.3 1, at most 1 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        OverlayEffectiveBonded, with the attributes
            effective_in, effective_mm: what the old slab is worth [in | mm]
            overlay_in, overlay_mm: thickness of the overlay [in | mm]
        and notes; for arrays OverlayEffectiveBondedArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for
            Design of Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm

    Example:
        >>> from overslab.overlay import overlay_effective_bonded
        >>> answer = overlay_effective_bonded(
        ...     required="10 in",
        ...     old_slab="8 in",
        ...     joints="0.9 ratio",
        ...     durability="1 ratio",
        ...     fatigue="0.97 ratio",
        ... )
        >>> round(answer.effective_in, 4)
        6.984

    Since 0.1.0.
    """

@overload
def overlay_effective_bonded(
    required: Quantity | Quantities,
    old_slab: Quantity | Quantities,
    joints: Quantity | Quantities,
    durability: Quantity | Quantities,
    fatigue: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayEffectiveBondedArray: ...

@final
class OverlayEffectiveBonded(ScalarResult):
    r"""What `overlay_effective_bonded` gives."""

    @property
    def effective_in(self) -> float:
        r"""what the old slab is worth [in]."""

    @property
    def effective_mm(self) -> float:
        r"""what the old slab is worth [mm]."""

    @property
    def overlay_in(self) -> float:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> float:
        r"""thickness of the overlay [mm]."""

@final
class OverlayEffectiveBondedArray(ArrayResult):
    r"""What `overlay_effective_bonded` gives for arrays."""

    @property
    def effective_in(self) -> npt.NDArray[np.float64]:
        r"""what the old slab is worth [in]."""

    @property
    def effective_mm(self) -> npt.NDArray[np.float64]:
        r"""what the old slab is worth [mm]."""

    @property
    def overlay_in(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [mm]."""

@overload
def overlay_effective_unbonded(  # type: ignore[overload-overlap]
    required: Quantity,
    old_slab: Quantity,
    joints: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayEffectiveUnbonded:
    r"""What an old slab is worth under an unbonded overlay, and the overlay that follows.

    Rule: effective = joints x old_slab, old_slab entered as 10 in at most; overlay = sqrt(required^2 -
        effective^2), none where negative.
    Takes for granted: a breaker or a levelling course lies between.

    Args:
        required: single slab required for the traffic to come [in | mm]; more than 0 in, at most
            78.7401574803 in (more than 0 mm, at most 2000 mm)
        old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        joints: factor for joints and cracks left open: 1 none, about 0.9 at 200 a mile [1]; at least
            0.3 1, at most 1 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        OverlayEffectiveUnbonded, with the attributes
            effective_in, effective_mm: what the old slab is worth [in | mm]
            overlay_in, overlay_mm: thickness of the overlay [in | mm]
        and notes; for arrays OverlayEffectiveUnbondedArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); a number stands without its unit
            (UNIT_MISSING)

    Basis:
        bonded Deff = Fjc Fdur Ffat D, unbonded Deff = Fjcu D with D at most 10 in: AASHTO Guide for
            Design of Pavement Structures (1993), Part III, 5.8 and 5.9, from memory: confirm

    Example:
        >>> from overslab.overlay import overlay_effective_unbonded
        >>> answer = overlay_effective_unbonded(
        ...     required="10 in",
        ...     old_slab="8 in",
        ...     joints="0.95 ratio",
        ... )
        >>> round(answer.effective_in, 4)
        7.6

    Since 0.1.0.
    """

@overload
def overlay_effective_unbonded(
    required: Quantity | Quantities,
    old_slab: Quantity | Quantities,
    joints: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> OverlayEffectiveUnbondedArray: ...

@final
class OverlayEffectiveUnbonded(ScalarResult):
    r"""What `overlay_effective_unbonded` gives."""

    @property
    def effective_in(self) -> float:
        r"""what the old slab is worth [in]."""

    @property
    def effective_mm(self) -> float:
        r"""what the old slab is worth [mm]."""

    @property
    def overlay_in(self) -> float:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> float:
        r"""thickness of the overlay [mm]."""

@final
class OverlayEffectiveUnbondedArray(ArrayResult):
    r"""What `overlay_effective_unbonded` gives for arrays."""

    @property
    def effective_in(self) -> npt.NDArray[np.float64]:
        r"""what the old slab is worth [in]."""

    @property
    def effective_mm(self) -> npt.NDArray[np.float64]:
        r"""what the old slab is worth [mm]."""

    @property
    def overlay_in(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [in]."""

    @property
    def overlay_mm(self) -> npt.NDArray[np.float64]:
        r"""thickness of the overlay [mm]."""

@overload
def concrete_modulus(  # type: ignore[overload-overlap]
    strength: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteModulus:
    r"""The modulus of elasticity of normal-weight concrete from its compressive strength.

    Rule: modulus = 57000 sqrt(strength), psi.
    Takes for granted: normal-weight concrete.

    Args:
        strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
            6.89475729317 MPa, at most 103.421359398 MPa)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ConcreteModulus, with the attributes
            modulus_psi, modulus_mpa: modulus of elasticity [psi | MPa]
        and notes; for arrays ConcreteModulusArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm

    Example:
        >>> from overslab.overlay import concrete_modulus
        >>> answer = concrete_modulus(strength="4,000 psi")
        >>> round(answer.modulus_psi, 4)
        3604996.5326

    Since 0.1.0.
    """

@overload
def concrete_modulus(
    strength: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteModulusArray: ...

@final
class ConcreteModulus(ScalarResult):
    r"""What `concrete_modulus` gives."""

    @property
    def modulus_psi(self) -> float:
        r"""modulus of elasticity [psi]."""

    @property
    def modulus_mpa(self) -> float:
        r"""modulus of elasticity [MPa]."""

@final
class ConcreteModulusArray(ArrayResult):
    r"""What `concrete_modulus` gives for arrays."""

    @property
    def modulus_psi(self) -> npt.NDArray[np.float64]:
        r"""modulus of elasticity [psi]."""

    @property
    def modulus_mpa(self) -> npt.NDArray[np.float64]:
        r"""modulus of elasticity [MPa]."""

@overload
def concrete_modulus_by_density(  # type: ignore[overload-overlap]
    strength: Quantity,
    density: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteModulusByDensity:
    r"""The modulus of elasticity of concrete from its compressive strength and unit weight.

    Rule: modulus = 33 density^1.5 sqrt(strength), psi and lb/ft3.
    Takes for granted: 90 to 160 lb/ft3.

    Args:
        strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
            6.89475729317 MPa, at most 103.421359398 MPa)
        density: unit weight [lb/ft3 | kg/m3]; at least 90 lb/ft3, at most 160 lb/ft3 (at least
            1441.66170366 kg/m3, at most 2562.95413983 kg/m3)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ConcreteModulusByDensity, with the attributes
            modulus_psi, modulus_mpa: modulus of elasticity [psi | MPa]
        and notes; for arrays ConcreteModulusByDensityArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        Ec = 57000 sqrt(f'c), or 33 w^1.5 sqrt(f'c), psi: ACI 318 (2019), 19.2.2.1, from memory: confirm

    Example:
        >>> from overslab.overlay import concrete_modulus_by_density
        >>> answer = concrete_modulus_by_density(strength="4,000 psi", density="145 lb/ft3")
        >>> round(answer.modulus_psi, 4)
        3644147.4312

    Since 0.1.0.
    """

@overload
def concrete_modulus_by_density(
    strength: Quantity | Quantities,
    density: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteModulusByDensityArray: ...

@final
class ConcreteModulusByDensity(ScalarResult):
    r"""What `concrete_modulus_by_density` gives."""

    @property
    def modulus_psi(self) -> float:
        r"""modulus of elasticity [psi]."""

    @property
    def modulus_mpa(self) -> float:
        r"""modulus of elasticity [MPa]."""

@final
class ConcreteModulusByDensityArray(ArrayResult):
    r"""What `concrete_modulus_by_density` gives for arrays."""

    @property
    def modulus_psi(self) -> npt.NDArray[np.float64]:
        r"""modulus of elasticity [psi]."""

    @property
    def modulus_mpa(self) -> npt.NDArray[np.float64]:
        r"""modulus of elasticity [MPa]."""

@overload
def concrete_rupture(  # type: ignore[overload-overlap]
    strength: Quantity,
    formula: Literal["building code, 7.5", "floor design, 9"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteRupture:
    r"""The modulus of rupture of normal-weight concrete from its compressive strength, by the building code or by the design of floors on ground.

    Rule: rupture = 7.5 sqrt(strength) or 9 sqrt(strength), psi.
    Takes for granted: normal-weight concrete.

    Args:
        strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
            6.89475729317 MPa, at most 103.421359398 MPa)
        formula: which formula; one of "building code, 7.5", "floor design, 9"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ConcreteRupture, with the attributes
            rupture_psi, rupture_mpa: modulus of rupture [psi | MPa]
        and notes; for arrays ConcreteRuptureArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        fr = 7.5 sqrt(f'c), psi, normal weight: ACI 318 (2019), 19.2.3.1, from memory: confirm
        MR = 9 sqrt(f'c), psi: ACI 360R and Portland Cement Association, floors on ground (several),
            modulus of rupture, from memory: confirm

    Example:
        >>> from overslab.overlay import concrete_rupture
        >>> answer = concrete_rupture(strength="4,000 psi", formula="floor design, 9")
        >>> round(answer.rupture_psi, 4)
        569.21

    Since 0.1.0.
    """

@overload
def concrete_rupture(
    strength: Quantity | Quantities,
    formula: Literal["building code, 7.5", "floor design, 9"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ConcreteRuptureArray: ...

@final
class ConcreteRupture(ScalarResult):
    r"""What `concrete_rupture` gives."""

    @property
    def rupture_psi(self) -> float:
        r"""modulus of rupture [psi]."""

    @property
    def rupture_mpa(self) -> float:
        r"""modulus of rupture [MPa]."""

@final
class ConcreteRuptureArray(ArrayResult):
    r"""What `concrete_rupture` gives for arrays."""

    @property
    def rupture_psi(self) -> npt.NDArray[np.float64]:
        r"""modulus of rupture [psi]."""

    @property
    def rupture_mpa(self) -> npt.NDArray[np.float64]:
        r"""modulus of rupture [MPa]."""

@overload
def subgrade_from_bearing_ratio(  # type: ignore[overload-overlap]
    bearing_ratio: Quantity,
    source: Literal["FAA", "Packard", "IRC:58", "lowest"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromBearingRatio:
    r"""The modulus of subgrade reaction from the California bearing ratio, by a named source or the lowest of them.

    Rule: FAA k = (1500 CBR / 26)^0.7788 pci; Packard k = 53.438 CBR^0.5719 pci; IRC:58 by table; lowest
        of the three.
    Takes for granted: the sources differ a lot at low ratios; the lowest is on the safe side.

    Args:
        bearing_ratio: California bearing ratio [%]; at least 2 %, at most 100 %
        source: which correlation; one of "FAA", "Packard", "IRC:58", "lowest"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SubgradeFromBearingRatio, with the attributes
            subgrade_pci, subgrade_mpa_per_m: modulus of subgrade reaction k [pci | MPa/m]
        and notes; for arrays SubgradeFromBearingRatioArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the quantity cannot be below
            zero (NEGATIVE)

    Basis:
        k = (1500 CBR / 26)^0.7788 pci: FAA AC 150/5320-6E (2009), k from bearing ratio, as quoted
            elsewhere
        k = 53.438 CBR^0.5719 pci: Packard, after Barker and Alexander (2012), k from bearing ratio, as
            quoted elsewhere
        k by table, straight between its rows: IRC:58 (2002), table of k and bearing ratio, as quoted
            elsewhere

    Example:
        >>> from overslab.overlay import subgrade_from_bearing_ratio
        >>> answer = subgrade_from_bearing_ratio(bearing_ratio="5 %", source="lowest")
        >>> round(answer.subgrade_pci, 4)
        82.398

    Since 0.1.0.
    """

@overload
def subgrade_from_bearing_ratio(
    bearing_ratio: Quantity | Quantities,
    source: Literal["FAA", "Packard", "IRC:58", "lowest"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromBearingRatioArray: ...

@final
class SubgradeFromBearingRatio(ScalarResult):
    r"""What `subgrade_from_bearing_ratio` gives."""

    @property
    def subgrade_pci(self) -> float:
        r"""modulus of subgrade reaction k [pci]."""

    @property
    def subgrade_mpa_per_m(self) -> float:
        r"""modulus of subgrade reaction k [MPa/m]."""

@final
class SubgradeFromBearingRatioArray(ArrayResult):
    r"""What `subgrade_from_bearing_ratio` gives for arrays."""

    @property
    def subgrade_pci(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction k [pci]."""

    @property
    def subgrade_mpa_per_m(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction k [MPa/m]."""

@overload
def subgrade_from_resilient(  # type: ignore[overload-overlap]
    resilient: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromResilient:
    r"""The modulus of subgrade reaction from the resilient modulus of the soil.

    Rule: subgrade = resilient / 19.4, pci and psi.
    Takes for granted: no subbase, no rock near below.

    Args:
        resilient: resilient modulus of the soil [psi | MPa]; at least 500 psi, at most 38000 psi (at
            least 3.44737864658 MPa, at most 262.00077714 MPa)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SubgradeFromResilient, with the attributes
            subgrade_pci, subgrade_mpa_per_m: modulus of subgrade reaction k [pci | MPa/m]
        and notes; for arrays SubgradeFromResilientArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        k = MR / 19.4: AASHTO Guide for Design of Pavement Structures (1993), Part II, from memory:
            confirm

    Example:
        >>> from overslab.overlay import subgrade_from_resilient
        >>> answer = subgrade_from_resilient(resilient="3,000 psi")
        >>> round(answer.subgrade_pci, 4)
        154.6392

    Since 0.1.0.
    """

@overload
def subgrade_from_resilient(
    resilient: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromResilientArray: ...

@final
class SubgradeFromResilient(ScalarResult):
    r"""What `subgrade_from_resilient` gives."""

    @property
    def subgrade_pci(self) -> float:
        r"""modulus of subgrade reaction k [pci]."""

    @property
    def subgrade_mpa_per_m(self) -> float:
        r"""modulus of subgrade reaction k [MPa/m]."""

@final
class SubgradeFromResilientArray(ArrayResult):
    r"""What `subgrade_from_resilient` gives for arrays."""

    @property
    def subgrade_pci(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction k [pci]."""

    @property
    def subgrade_mpa_per_m(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction k [MPa/m]."""

@overload
def subgrade_from_soil(  # type: ignore[overload-overlap]
    soil: Literal["soft", "medium", "firm", "silt and clay", "sand with silt or clay", "clean sand and gravel", "cement-treated subbase", "old slab"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromSoil:
    r"""The modulus of subgrade reaction by what heel and bar say, by the kind of soil, or over an old slab.

    Rule: soft 50, medium 100, firm 200 pci; silt and clay 75 to 120; sand with silt or clay 130 to 170;
        clean sand and gravel 180 to 220; cement-treated subbase 250 to 400; old slab 200 to 300.
    Takes for granted: the lower end is taken; the upper end is not exceeded without a reason.

    Args:
        soil: what the slab rests on; one of "soft", "medium", "firm", "silt and clay", "sand with silt
            or clay", "clean sand and gravel", "cement-treated subbase", "old slab"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SubgradeFromSoil, with the attributes
            least_pci, least_mpa_per_m: lower end: the one to take [pci | MPa/m]
            greatest_pci, greatest_mpa_per_m: upper end [pci | MPa/m]
        and notes; for arrays SubgradeFromSoilArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source
        subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109
            (1984), soil classes and subbase tables, from memory: confirm
        over an old slab 200 to 300 pci are not exceeded without a reason: common practice, no source

    Example:
        >>> from overslab.overlay import subgrade_from_soil
        >>> answer = subgrade_from_soil(soil="medium")
        >>> round(answer.least_pci, 4)
        100.0

    Since 0.1.0.
    """

@overload
def subgrade_from_soil(
    soil: Literal["soft", "medium", "firm", "silt and clay", "sand with silt or clay", "clean sand and gravel", "cement-treated subbase", "old slab"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeFromSoilArray: ...

@final
class SubgradeFromSoil(ScalarResult):
    r"""What `subgrade_from_soil` gives."""

    @property
    def least_pci(self) -> float:
        r"""lower end: the one to take [pci]."""

    @property
    def least_mpa_per_m(self) -> float:
        r"""lower end: the one to take [MPa/m]."""

    @property
    def greatest_pci(self) -> float:
        r"""upper end [pci]."""

    @property
    def greatest_mpa_per_m(self) -> float:
        r"""upper end [MPa/m]."""

@final
class SubgradeFromSoilArray(ArrayResult):
    r"""What `subgrade_from_soil` gives for arrays."""

    @property
    def least_pci(self) -> npt.NDArray[np.float64]:
        r"""lower end: the one to take [pci]."""

    @property
    def least_mpa_per_m(self) -> npt.NDArray[np.float64]:
        r"""lower end: the one to take [MPa/m]."""

    @property
    def greatest_pci(self) -> npt.NDArray[np.float64]:
        r"""upper end [pci]."""

    @property
    def greatest_mpa_per_m(self) -> npt.NDArray[np.float64]:
        r"""upper end [MPa/m]."""

@overload
def subgrade_with_subbase(  # type: ignore[overload-overlap]
    subgrade: Quantity,
    thickness: Quantity,
    kind: Literal["granular", "cement-treated"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeWithSubbase:
    r"""The modulus of subgrade reaction on top of a subbase.

    Rule: by table, straight between rows and columns; refused outside.
    Takes for granted: a compacted subbase all over.

    Args:
        subgrade: modulus of subgrade reaction under the subbase [pci | MPa/m]; at least 50 pci, at most
            300 pci (at least 13.5723568763 MPa/m, at most 81.4341412579 MPa/m)
        thickness: thickness of the subbase [in | mm]; at least 4 in, at most 12 in (at least 101.6 mm,
            at most 304.8 mm)
        kind: what the subbase is; one of "granular", "cement-treated"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SubgradeWithSubbase, with the attributes
            top_pci, top_mpa_per_m: modulus of subgrade reaction on top [pci | MPa/m]
        and notes; for arrays SubgradeWithSubbaseArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        OverlayError: a published table has no number there (OUTSIDE_TABLE)

    Basis:
        subgrade reaction by soil class and on top of a subbase: Portland Cement Association, EB109
            (1984), soil classes and subbase tables, from memory: confirm

    Example:
        >>> from overslab.overlay import subgrade_with_subbase
        >>> answer = subgrade_with_subbase(subgrade="100 pci", thickness="6 in", kind="granular")
        >>> round(answer.top_pci, 4)
        140.0

    Since 0.1.0.
    """

@overload
def subgrade_with_subbase(
    subgrade: Quantity | Quantities,
    thickness: Quantity | Quantities,
    kind: Literal["granular", "cement-treated"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SubgradeWithSubbaseArray: ...

@final
class SubgradeWithSubbase(ScalarResult):
    r"""What `subgrade_with_subbase` gives."""

    @property
    def top_pci(self) -> float:
        r"""modulus of subgrade reaction on top [pci]."""

    @property
    def top_mpa_per_m(self) -> float:
        r"""modulus of subgrade reaction on top [MPa/m]."""

@final
class SubgradeWithSubbaseArray(ArrayResult):
    r"""What `subgrade_with_subbase` gives for arrays."""

    @property
    def top_pci(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction on top [pci]."""

    @property
    def top_mpa_per_m(self) -> npt.NDArray[np.float64]:
        r"""modulus of subgrade reaction on top [MPa/m]."""

@overload
def stiffness_radius(  # type: ignore[overload-overlap]
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> StiffnessRadius:
    r"""The radius of relative stiffness of a slab on its subgrade: how far a load is felt.

    Rule: stiffness = (modulus thickness^3 / (12 (1 - poisson^2) subgrade))^(1/4).
    Takes for granted: one layer, resting everywhere on springs.

    Args:
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        StiffnessRadius, with the attributes
            stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
        and notes; for arrays StiffnessRadiusArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness

    Example:
        >>> from overslab.overlay import stiffness_radius
        >>> answer = stiffness_radius(
        ...     thickness="10 in",
        ...     modulus="4,000,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="100 pci",
        ... )
        >>> round(answer.stiffness_in, 4)
        42.9725

    Since 0.1.0.
    """

@overload
def stiffness_radius(
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> StiffnessRadiusArray: ...

@final
class StiffnessRadius(ScalarResult):
    r"""What `stiffness_radius` gives."""

    @property
    def stiffness_in(self) -> float:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> float:
        r"""radius of relative stiffness [mm]."""

@final
class StiffnessRadiusArray(ArrayResult):
    r"""What `stiffness_radius` gives for arrays."""

    @property
    def stiffness_in(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [mm]."""

@overload
def contact_radius(  # type: ignore[overload-overlap]
    load: Quantity,
    pressure: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ContactRadius:
    r"""The radius of the circle that carries a load at its contact pressure.

    Rule: radius = sqrt(load / (pi pressure)).
    Takes for granted: a tyre presses with its own pressure.

    Args:
        load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
            0 kN, at most 10000 kN)
        pressure: contact pressure [psi | kPa]; at least 0.14503773773 psi, at most 14503.773773 psi (at
            least 1 kPa, at most 100000 kPa)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ContactRadius, with the attributes
            radius_in, radius_mm: radius of the contact [in | mm]
        and notes; for arrays ContactRadiusArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        a circle of the load over its pressure: derived

    Example:
        >>> from overslab.overlay import contact_radius
        >>> answer = contact_radius(load="4000 lb", pressure="80 psi")
        >>> round(answer.radius_in, 4)
        3.9894

    Since 0.1.0.
    """

@overload
def contact_radius(
    load: Quantity | Quantities,
    pressure: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ContactRadiusArray: ...

@final
class ContactRadius(ScalarResult):
    r"""What `contact_radius` gives."""

    @property
    def radius_in(self) -> float:
        r"""radius of the contact [in]."""

    @property
    def radius_mm(self) -> float:
        r"""radius of the contact [mm]."""

@final
class ContactRadiusArray(ArrayResult):
    r"""What `contact_radius` gives for arrays."""

    @property
    def radius_in(self) -> npt.NDArray[np.float64]:
        r"""radius of the contact [in]."""

    @property
    def radius_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of the contact [mm]."""

@overload
def contact_radius_dual(  # type: ignore[overload-overlap]
    load: Quantity,
    pressure: Quantity,
    spacing: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ContactRadiusDual:
    r"""The radius of the one circle that stands for dual tyres.

    Rule: radius = sqrt(0.8521 load / (pi pressure) + (spacing / pi) sqrt(load / (0.5227 pressure))).
    Takes for granted: load of one of the two tyres.

    Args:
        load: load of one of the two tyres [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more
            than 0 kN, at most 10000 kN)
        pressure: contact pressure [psi | kPa]; at least 0.14503773773 psi, at most 14503.773773 psi (at
            least 1 kPa, at most 100000 kPa)
        spacing: middle to middle of the two tyres [in | mm]; at least 1.96850393701 in, at most
            78.7401574803 in (at least 50 mm, at most 2000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        ContactRadiusDual, with the attributes
            radius_in, radius_mm: radius of the circle [in | mm]
        and notes; for arrays ContactRadiusDualArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        one circle for dual tyres: Huang, Pavement Analysis and Design (2004), ch. 4, from memory:
            confirm

    Example:
        >>> from overslab.overlay import contact_radius_dual
        >>> answer = contact_radius_dual(load="5000 lb", pressure="88.42 psi", spacing="14 in")
        >>> round(answer.radius_in, 4)
        7.8542

    Since 0.1.0.
    """

@overload
def contact_radius_dual(
    load: Quantity | Quantities,
    pressure: Quantity | Quantities,
    spacing: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> ContactRadiusDualArray: ...

@final
class ContactRadiusDual(ScalarResult):
    r"""What `contact_radius_dual` gives."""

    @property
    def radius_in(self) -> float:
        r"""radius of the circle [in]."""

    @property
    def radius_mm(self) -> float:
        r"""radius of the circle [mm]."""

@final
class ContactRadiusDualArray(ArrayResult):
    r"""What `contact_radius_dual` gives for arrays."""

    @property
    def radius_in(self) -> npt.NDArray[np.float64]:
        r"""radius of the circle [in]."""

    @property
    def radius_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of the circle [mm]."""

@overload
def equivalent_radius(  # type: ignore[overload-overlap]
    radius: Quantity,
    thickness: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EquivalentRadius:
    r"""Westergaard's equivalent radius, which mends the stress right under a small contact.

    Rule: equivalent = sqrt(1.6 radius^2 + thickness^2) - 0.675 thickness where radius < 1.724
        thickness, else radius.
    Takes for granted: interior load, and the edge form of 1926.

    Args:
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        EquivalentRadius, with the attributes
            equivalent_in, equivalent_mm: equivalent radius [in | mm]
        and notes; for arrays EquivalentRadiusArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
            Transportation Engineering I (lecture 29), equivalent radius

    Example:
        >>> from overslab.overlay import equivalent_radius
        >>> answer = equivalent_radius(radius="6 in", thickness="10 in")
        >>> round(answer.equivalent_in, 4)
        5.8039

    Since 0.1.0.
    """

@overload
def equivalent_radius(
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EquivalentRadiusArray: ...

@final
class EquivalentRadius(ScalarResult):
    r"""What `equivalent_radius` gives."""

    @property
    def equivalent_in(self) -> float:
        r"""equivalent radius [in]."""

    @property
    def equivalent_mm(self) -> float:
        r"""equivalent radius [mm]."""

@final
class EquivalentRadiusArray(ArrayResult):
    r"""What `equivalent_radius` gives for arrays."""

    @property
    def equivalent_in(self) -> npt.NDArray[np.float64]:
        r"""equivalent radius [in]."""

    @property
    def equivalent_mm(self) -> npt.NDArray[np.float64]:
        r"""equivalent radius [mm]."""

@overload
def interior_load(  # type: ignore[overload-overlap]
    load: Quantity,
    radius: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> InteriorLoad:
    r"""Stress and deflection under a load far from every edge, by Westergaard's equations of 1926.

    Rule: stress = 3 (1 + poisson) load / (2 pi thickness^2) (ln(l/b) + 0.6159); deflection = load / (8
        subgrade l^2) (1 + (ln(radius / 2l) - 0.673) (radius/l)^2 / 2 pi); l the radius of relative
        stiffness, b the equivalent radius.
    Takes for granted: tension at the bottom; the slab is at least 3.5 l across for the stress, 8 l for
        the deflection, and lies on its subgrade everywhere.

    Args:
        load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
            0 kN, at most 10000 kN)
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        InteriorLoad, with the attributes
            stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
            deflection_in, deflection_mm: settlement under the load [in | mm]
            stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
        and notes; for arrays InteriorLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
            Transportation Engineering I (lecture 29), equivalent radius
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
        stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
            Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm

    Example:
        >>> from overslab.overlay import interior_load
        >>> answer = interior_load(
        ...     load="10,000 lb",
        ...     radius="6 in",
        ...     thickness="10 in",
        ...     modulus="4,000,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="100 pci",
        ... )
        >>> round(answer.stress_psi, 4)
        143.7484

    Since 0.1.0.
    """

@overload
def interior_load(
    load: Quantity | Quantities,
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> InteriorLoadArray: ...

@final
class InteriorLoad(ScalarResult):
    r"""What `interior_load` gives."""

    @property
    def stress_psi(self) -> float:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> float:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> float:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> float:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> float:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> float:
        r"""radius of relative stiffness [mm]."""

@final
class InteriorLoadArray(ArrayResult):
    r"""What `interior_load` gives for arrays."""

    @property
    def stress_psi(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [mm]."""

@overload
def edge_load(  # type: ignore[overload-overlap]
    load: Quantity,
    radius: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    footprint: Literal["circle", "semicircle"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EdgeLoad:
    r"""Stress and deflection under a load at a free edge far from corners, by Westergaard's equations of 1948 for a circle or a semicircle.

    Rule: stress = 3 (1 + poisson) load / (pi (3 + poisson) thickness^2) (ln(modulus thickness^3 / (100
        subgrade radius^4)) + c); circle c = 1.84 - 4 poisson / 3 + (1 - poisson) / 2 + 1.18 (1 + 2
        poisson) radius / l; semicircle c = 3.84 - 4 poisson / 3 + (1 + 2 poisson) radius / 2l;
        deflection = sqrt(2 + 1.2 poisson) load / sqrt(modulus thickness^3 subgrade) (1 - d radius / l),
        d = 0.76 + 0.4 poisson or 0.323 + 0.17 poisson.
    Takes for granted: tension at the bottom along the edge, nothing carried across a joint; the circle
        touches the edge from inside; a semicircle has its straight side on the edge and its own radius,
        sqrt 2 of the circle's at the same load and pressure; the slab is at least 5 l across, 8 l for
        the deflection.

    Args:
        load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
            0 kN, at most 10000 kN)
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        footprint: shape of the contact; the radius is that shape's own; one of "circle", "semicircle"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        EdgeLoad, with the attributes
            stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
            deflection_in, deflection_mm: settlement under the load [in | mm]
            stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
        and notes; for arrays EdgeLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
        stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
            Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm

    Example:
        >>> from overslab.overlay import edge_load
        >>> answer = edge_load(
        ...     load="10,000 lb",
        ...     radius="6 in",
        ...     thickness="10 in",
        ...     modulus="4,000,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="100 pci",
        ...     footprint="circle",
        ... )
        >>> round(answer.stress_psi, 4)
        279.2963

    Since 0.1.0.
    """

@overload
def edge_load(
    load: Quantity | Quantities,
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    footprint: Literal["circle", "semicircle"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EdgeLoadArray: ...

@final
class EdgeLoad(ScalarResult):
    r"""What `edge_load` gives."""

    @property
    def stress_psi(self) -> float:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> float:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> float:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> float:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> float:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> float:
        r"""radius of relative stiffness [mm]."""

@final
class EdgeLoadArray(ArrayResult):
    r"""What `edge_load` gives for arrays."""

    @property
    def stress_psi(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [mm]."""

@overload
def edge_load_1926(  # type: ignore[overload-overlap]
    load: Quantity,
    radius: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    subgrade: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EdgeLoad1926:
    r"""Stress under a load at a free edge far from corners, by Westergaard's equation of 1926; the forms of 1948 give a quarter to a half more.

    Rule: stress = 0.572 load / thickness^2 (4 log10(l/b) + 0.359), Poisson's ratio 0.15.
    Takes for granted: Poisson's ratio 0.15; nothing carried across a joint; the slab is at least 5 l
        across.

    Args:
        load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
            0 kN, at most 10000 kN)
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        EdgeLoad1926, with the attributes
            stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
        and notes; for arrays EdgeLoad1926Array, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        QuantityError: the unit belongs to another quantity (UNIT_WRONG)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        b = sqrt(1.6 a^2 + h^2) - 0.675 h where a < 1.724 h, else a: Westergaard, as in NPTEL
            Transportation Engineering I (lecture 29), equivalent radius
        stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
            Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm

    Example:
        >>> from overslab.overlay import edge_load_1926
        >>> answer = edge_load_1926(
        ...     load="10,000 lb",
        ...     radius="6 in",
        ...     thickness="10 in",
        ...     modulus="4,000,000 psi",
        ...     subgrade="100 pci",
        ... )
        >>> round(answer.stress_psi, 4)
        219.4699

    Since 0.1.0.
    """

@overload
def edge_load_1926(
    load: Quantity | Quantities,
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> EdgeLoad1926Array: ...

@final
class EdgeLoad1926(ScalarResult):
    r"""What `edge_load_1926` gives."""

    @property
    def stress_psi(self) -> float:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> float:
        r"""greatest tensile stress [MPa]."""

@final
class EdgeLoad1926Array(ArrayResult):
    r"""What `edge_load_1926` gives for arrays."""

    @property
    def stress_psi(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [MPa]."""

@overload
def corner_load(  # type: ignore[overload-overlap]
    load: Quantity,
    radius: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    formula: Literal["Westergaard 1926", "Ioannides 1985"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CornerLoad:
    r"""Stress and deflection under a load in a corner, by Westergaard or by Ioannides.

    Rule: Westergaard: stress = 3 load / thickness^2 (1 - (radius sqrt 2 / l)^0.6), deflection = load /
        (subgrade l^2) (1.1 - 0.88 radius sqrt 2 / l); Ioannides, c = 1.772 radius: stress = 3 load /
        thickness^2 (1 - (c/l)^0.72), deflection = load / (subgrade l^2) (1.205 - 0.69 c/l).
    Takes for granted: tension at the top across the bisector; the circle touches both edges; nothing
        carried across joints; the slab is at least 4 l across, 5 l for the deflection; the contact
        radius is at most 0.35 l (Westergaard) or 0.25 l (Ioannides): wider, the stress comes out too
        small.

    Args:
        load: load of one wheel or post [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than
            0 kN, at most 10000 kN)
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        formula: which formula; one of "Westergaard 1926", "Ioannides 1985"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        CornerLoad, with the attributes
            stress_psi, stress_mpa: greatest tensile stress [psi | MPa]
            deflection_in, deflection_mm: settlement under the load [in | mm]
            stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
        and notes; for arrays CornerLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
            from memory: confirm
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness
        stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
            Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm

    Example:
        >>> from overslab.overlay import corner_load
        >>> answer = corner_load(
        ...     load="10,000 lb",
        ...     radius="6 in",
        ...     thickness="10 in",
        ...     modulus="4,000,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="100 pci",
        ...     formula="Ioannides 1985",
        ... )
        >>> round(answer.stress_psi, 4)
        190.2545

    Since 0.1.0.
    """

@overload
def corner_load(
    load: Quantity | Quantities,
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    formula: Literal["Westergaard 1926", "Ioannides 1985"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CornerLoadArray: ...

@final
class CornerLoad(ScalarResult):
    r"""What `corner_load` gives."""

    @property
    def stress_psi(self) -> float:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> float:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> float:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> float:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> float:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> float:
        r"""radius of relative stiffness [mm]."""

@final
class CornerLoadArray(ArrayResult):
    r"""What `corner_load` gives for arrays."""

    @property
    def stress_psi(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [psi]."""

    @property
    def stress_mpa(self) -> npt.NDArray[np.float64]:
        r"""greatest tensile stress [MPa]."""

    @property
    def deflection_in(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [in]."""

    @property
    def deflection_mm(self) -> npt.NDArray[np.float64]:
        r"""settlement under the load [mm]."""

    @property
    def stiffness_in(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> npt.NDArray[np.float64]:
        r"""radius of relative stiffness [mm]."""

@overload
def corner_crack(  # type: ignore[overload-overlap]
    radius: Quantity,
    stiffness: Quantity,
    formula: Literal["textbook, 2.58", "Westergaard, 2.38"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CornerCrack:
    r"""How far from a corner it breaks off under a load, along the bisector.

    Rule: textbook: distance = 2.58 sqrt(radius x stiffness); Westergaard: 2 sqrt(sqrt 2 x radius x
        stiffness), which is 2.38 sqrt(radius x stiffness).
    Takes for granted: one load in the corner.

    Args:
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        stiffness: relative stiffness, its radius [in | mm]; at least 0.393700787402 in, at most
            1968.50393701 in (at least 10 mm, at most 50000 mm)
        formula: which formula; one of "textbook, 2.58", "Westergaard, 2.38"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        CornerCrack, with the attributes
            distance_in, distance_mm: distance from the corner [in | mm]
        and notes; for arrays CornerCrackArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm

    Example:
        >>> from overslab.overlay import corner_crack
        >>> answer = corner_crack(radius="6 in", stiffness="43 in", formula="textbook, 2.58")
        >>> round(answer.distance_in, 4)
        41.4409

    Since 0.1.0.
    """

@overload
def corner_crack(
    radius: Quantity | Quantities,
    stiffness: Quantity | Quantities,
    formula: Literal["textbook, 2.58", "Westergaard, 2.38"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CornerCrackArray: ...

@final
class CornerCrack(ScalarResult):
    r"""What `corner_crack` gives."""

    @property
    def distance_in(self) -> float:
        r"""distance from the corner [in]."""

    @property
    def distance_mm(self) -> float:
        r"""distance from the corner [mm]."""

@final
class CornerCrackArray(ArrayResult):
    r"""What `corner_crack` gives for arrays."""

    @property
    def distance_in(self) -> npt.NDArray[np.float64]:
        r"""distance from the corner [in]."""

    @property
    def distance_mm(self) -> npt.NDArray[np.float64]:
        r"""distance from the corner [mm]."""

@overload
def load_influence(  # type: ignore[overload-overlap]
    distance: Quantity,
    radius: Quantity,
    stiffness: Quantity,
    poisson: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> LoadInfluence:
    r"""What a load on a circle does to a large slab on springs at a distance, for each unit of it: the exact solution.

    Rule: F = mean of K0(x exp(i pi/4)) over the circle; deflection = -Im F / 2 pi, over load /
        (subgrade stiffness^2); radial = (Re F - (1 - poisson) Im(F'/x)) / 2 pi, tangential = (poisson
        Re F + (1 - poisson) Im(F'/x)) / 2 pi, over load; x = distance / stiffness.
    Takes for granted: a thin plate without end; stress = 6 moment / thickness^2.

    Args:
        distance: from the middle of the load [in | mm]; at least 0 in, at most 39370.0787402 in (at
            least 0 mm, at most 1000000 mm)
        radius: radius of the contact, at most 2 radii of relative stiffness [in | mm]; at least
            0.0393700787402 in, at most 196.850393701 in (at least 1 mm, at most 5000 mm)
        stiffness: relative stiffness, its radius [in | mm]; at least 0.393700787402 in, at most
            1968.50393701 in (at least 10 mm, at most 50000 mm)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        LoadInfluence, with the attributes
            deflection_ratio: deflection over load / (subgrade stiffness^2) [1]
            radial_ratio: moment towards the load, for each unit of width and load [1]
            tangential_ratio: across that direction, for each unit of width and load [1]
        and notes; for arrays LoadInfluenceArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        exact deflection and moments of a large plate on springs: Textbooks on plates on elastic
            foundation (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory:
            confirm

    Example:
        >>> from overslab.overlay import load_influence
        >>> answer = load_influence(
        ...     distance="40 in",
        ...     radius="6 in",
        ...     stiffness="42.97 in",
        ...     poisson="0.15 ratio",
        ... )
        >>> round(answer.deflection_ratio, 5)
        0.08255

    Since 0.1.0.
    """

@overload
def load_influence(
    distance: Quantity | Quantities,
    radius: Quantity | Quantities,
    stiffness: Quantity | Quantities,
    poisson: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> LoadInfluenceArray: ...

@final
class LoadInfluence(ScalarResult):
    r"""What `load_influence` gives."""

    @property
    def deflection_ratio(self) -> float:
        r"""deflection over load / (subgrade stiffness^2) [1]."""

    @property
    def radial_ratio(self) -> float:
        r"""moment towards the load, for each unit of width and load [1]."""

    @property
    def tangential_ratio(self) -> float:
        r"""across that direction, for each unit of width and load [1]."""

@final
class LoadInfluenceArray(ArrayResult):
    r"""What `load_influence` gives for arrays."""

    @property
    def deflection_ratio(self) -> npt.NDArray[np.float64]:
        r"""deflection over load / (subgrade stiffness^2) [1]."""

    @property
    def radial_ratio(self) -> npt.NDArray[np.float64]:
        r"""moment towards the load, for each unit of width and load [1]."""

    @property
    def tangential_ratio(self) -> npt.NDArray[np.float64]:
        r"""across that direction, for each unit of width and load [1]."""

def usual_load(
    thing: Literal["car", "pickup", "loaded one-ton", "farm tractor", "skid machine", "bench", "kiln", "two jacks", "anchored lift"],
    *,
    units: Units | None = None,
) -> UsualLoad:
    r"""What a thing of everyday puts on the floor, as alike loads: to be shown and changed. An anchored lift has no numbers here, but what to ask.

    Rule: design_load = load x margin; radius = sqrt(design_load / (pi pressure)).
    Takes for granted: ours, from memory, but for the jacks: weigh or read the plate where it matters.

    Args:
        thing: what stands or rolls there; one of "car", "pickup", "loaded one-ton", "farm tractor",
            "skid machine", "bench", "kiln", "two jacks", "anchored lift"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        UsualLoad, with the attributes
            load_lbf, load_kn: each load; none where only the maker can say [lbf | kN]
            margin_ratio: what the load is multiplied by [1]
            design_load_lbf, design_load_kn: the load with its margin; none without a load [lbf | kN]
            pressure_psi, pressure_kpa: contact pressure; none without a load [psi | kPa]
            radius_in, radius_mm: contact radius under the load with its margin; none without a load [in
                | mm]
            count: how many stand near one another
            spacing_in, spacing_mm: middle to middle [in | mm]
            said: what was taken, or what to ask
            rests_on: its basis, by name
        and notes, basis and taken.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        ours, from memory: what usual things put on a floor: common practice, no source
        the point load of garages, taken as a jack: ASCE 7 (2002), 3000 lb on 4 1/2 by 4 1/2 in, as
            quoted elsewhere
        the maker's approval of the anchors, and an engineer: the project's specification
        a circle of the load over its pressure: derived

    Example:
        >>> from overslab.overlay import usual_load
        >>> answer = usual_load(thing="pickup")
        >>> round(answer.load_lbf, 4)
        2000.0

    Since 0.1.0.
    """

@final
class UsualLoad(AnswerResult):
    r"""What `usual_load` gives."""

    @property
    def load_lbf(self) -> float | None:
        r"""each load; none where only the maker can say [lbf]."""

    @property
    def load_kn(self) -> float | None:
        r"""each load; none where only the maker can say [kN]."""

    @property
    def margin_ratio(self) -> float:
        r"""what the load is multiplied by [1]."""

    @property
    def design_load_lbf(self) -> float | None:
        r"""the load with its margin; none without a load [lbf]."""

    @property
    def design_load_kn(self) -> float | None:
        r"""the load with its margin; none without a load [kN]."""

    @property
    def pressure_psi(self) -> float | None:
        r"""contact pressure; none without a load [psi]."""

    @property
    def pressure_kpa(self) -> float | None:
        r"""contact pressure; none without a load [kPa]."""

    @property
    def radius_in(self) -> float | None:
        r"""contact radius under the load with its margin; none without a load [in]."""

    @property
    def radius_mm(self) -> float | None:
        r"""contact radius under the load with its margin; none without a load [mm]."""

    @property
    def count(self) -> int:
        r"""how many stand near one another."""

    @property
    def spacing_in(self) -> float:
        r"""middle to middle [in]."""

    @property
    def spacing_mm(self) -> float:
        r"""middle to middle [mm]."""

    @property
    def said(self) -> str:
        r"""what was taken, or what to ask."""

    @property
    def rests_on(self) -> str:
        r"""its basis, by name."""

def slab_stress(
    loads: Table,
    thickness: Quantity,
    *,
    modulus: Quantity | None = None,
    poisson: Quantity | None = None,
    subgrade: Quantity | None = None,
    edge_form: Literal["circle", "semicircle"] | None = None,
    corner_form: Literal["Westergaard 1926", "Ioannides 1985"] | None = None,
    transfer: Quantity | None = None,
    length: Quantity | None = None,
    width: Quantity | None = None,
    old_slab: Quantity | None = None,
    old_modulus: Quantity | None = None,
    bond: Literal["bonded", "partly bonded", "unbonded"] | None = None,
    units: Units | None = None,
) -> SlabStress:
    r"""Stress and deflection under each of several loads on a slab on ground, each with what the others add; over an old slab what each layer feels.

    Rule: together = sum over loads of (Westergaard's stress of the load at this position) x (influence
        at the distance / influence at none); moments in the middle are added with their directions, at
        edges and corners the larger one is taken.
    Takes for granted: a large slab that lies on its subgrade everywhere; a load by pressure stands on a
        circle; a semicircle has the circle's area; with an old slab both layers are one plate of the
        overlay's concrete; several loads and two layers: ours, no source.

    Args:
        loads: the loads; a table of at least 1 row, each a load on the slab, its contact by radius or
            by pressure, with the columns
            name: what it is; a text; may be left out
            load: how heavy [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than 0 kN, at
                most 10000 kN)
            radius: radius of the circle it stands on [in | mm]; at least 0.0393700787402 in, at most
                196.850393701 in (at least 1 mm, at most 5000 mm); may be left out
            pressure: contact pressure, in place of a radius [psi | kPa]; at least 0.14503773773 psi, at
                most 14503.773773 psi (at least 1 kPa, at most 100000 kPa); may be left out
            x: from the left [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
                -1000 m, at most 1000 m)
            y: from the front [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
                -1000 m, at most 1000 m)
            position: where on the slab it stands; one of "interior", "edge", "corner"
        thickness: thickness of the slab, or of the overlay where an old slab is given [in | mm]; more
            than 0 in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa); where it is not given 3,600,000 psi
            is taken: normal-weight concrete of 4,000 psi
        poisson: Poisson's ratio of the concrete [1]; at least 0 1, at most 0.5 1; where it is not given
            0.15 ratio is taken: usual for concrete
        subgrade: subgrade reaction k under all concrete [pci | MPa/m]; at least 5 pci, at most 2000 pci
            (at least 1.35723568763 MPa/m, at most 542.894275053 MPa/m); where it is not given 100 pci
            is taken: medium by heel and bar
        edge_form: contact at an edge; one of "circle", "semicircle"; where it is not given circle is
            taken: a wheel that touches the edge from inside
        corner_form: formula in a corner; one of "Westergaard 1926", "Ioannides 1985"; where it is not
            given Westergaard 1926 is taken: its stress is the nearest to a plate by finite elements
        transfer: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)
            [%]; at least 0 %, at most 50 %; where it is not given 0 % is taken: a free edge
        length: length of the slab between joints, to see whether it is large enough [ft | m]; at least
            0.328083989501 ft, at most 656.167979003 ft (at least 0.1 m, at most 200 m); may be left out
        width: its width, likewise [ft | m]; at least 0.328083989501 ft, at most 656.167979003 ft (at
            least 0.1 m, at most 200 m); may be left out
        old_slab: old slab under the overlay, its thickness [in | mm]; more than 0 in, at most
            78.7401574803 in (more than 0 mm, at most 2000 mm); may be left out
        old_modulus: old slab, its modulus of elasticity [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa); may be left out
        bond: how the overlay holds to it; one of "bonded", "partly bonded", "unbonded"; may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        SlabStress, with the attributes
            stiffness_in, stiffness_mm: radius of relative stiffness [in | mm]
            equivalent_in, equivalent_mm: thickness of the plate that was figured [in | mm]
            greatest_psi, greatest_mpa: greatest governing stress of that plate [psi | MPa]
            governs: under which load, the first being 1
            felt: what each load feels, a table of felt
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST); a required value is missing (KEY_MISSING)
        OverlayError: the contact of a load is not given by exactly one of radius and pressure
            (CONTACT_UNCLEAR); the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
        s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
            from memory: confirm
        exact deflection and moments of a large plate on springs: Textbooks on plates on elastic
            foundation (Hertz, Timoshenko) (any), load on a circle, Kelvin functions, from memory:
            confirm
        ours, no source: what another load adds is what it would do there, times its influence at the
            distance over that at none: derived
        ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion
            to rigidity: derived
        dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory:
            confirm
        stress: 3.5 l interior, 5 l edge, 4 l corner; deflection: 8 l interior and edge, 5 l corner:
            Ioannides, Thompson, Barenberg (1985), least slab sizes, from memory: confirm
        soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source

    Example:
        >>> from overslab.overlay import slab_stress
        >>> answer = slab_stress(
        ...     loads=[
        ...         {
        ...             "name": "left jack",
        ...             "load": "3000 lb",
        ...             "pressure": "148 psi",
        ...             "x": "4 ft",
        ...             "y": "6 ft",
        ...             "position": "interior",
        ...         },
        ...         {
        ...             "name": "right jack",
        ...             "load": "3000 lb",
        ...             "pressure": "148 psi",
        ...             "x": "9 ft",
        ...             "y": "6 ft",
        ...             "position": "interior",
        ...         },
        ...     ],
        ...     thickness="4 in",
        ...     length="12 ft",
        ...     width="10 ft",
        ... )
        >>> round(answer.stiffness_in, 4)
        21.0521

    Since 0.1.0.
    """

@final
class SlabStress(AnswerResult):
    r"""What `slab_stress` gives."""

    @property
    def stiffness_in(self) -> float:
        r"""radius of relative stiffness [in]."""

    @property
    def stiffness_mm(self) -> float:
        r"""radius of relative stiffness [mm]."""

    @property
    def equivalent_in(self) -> float:
        r"""thickness of the plate that was figured [in]."""

    @property
    def equivalent_mm(self) -> float:
        r"""thickness of the plate that was figured [mm]."""

    @property
    def greatest_psi(self) -> float:
        r"""greatest governing stress of that plate [psi]."""

    @property
    def greatest_mpa(self) -> float:
        r"""greatest governing stress of that plate [MPa]."""

    @property
    def governs(self) -> int:
        r"""under which load, the first being 1."""

    @property
    def felt(self) -> dict[str, Column]:
        r"""what each load feels."""

@overload
def safety_factors(  # type: ignore[overload-overlap]
    kind: Literal["moving wheel", "wheel, unlimited passes", "post or jack", "uniform", "wall"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SafetyFactors:
    r"""The safety factors in use for a kind of load, from memory: confirm.

    Rule: moving wheel 1.4, usual 2; wheel with unlimited passes 2 to 2.2; post or jack 1.7, usual 2;
        uniform 1.4, usual 2; wall 1.7, usual 2.
    Takes for granted: the modulus of rupture over the factor is the stress allowed.

    Args:
        kind: kind of load; one of "moving wheel", "wheel, unlimited passes", "post or jack", "uniform",
            "wall"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        SafetyFactors, with the attributes
            least_ratio: least in use [1]
            usual_ratio: taken where nobody says [1]
        and notes; for arrays SafetyFactorsArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm

    Example:
        >>> from overslab.overlay import safety_factors
        >>> answer = safety_factors(kind="post or jack")
        >>> round(answer.least_ratio, 4)
        1.7

    Since 0.1.0.
    """

@overload
def safety_factors(
    kind: Literal["moving wheel", "wheel, unlimited passes", "post or jack", "uniform", "wall"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> SafetyFactorsArray: ...

@final
class SafetyFactors(ScalarResult):
    r"""What `safety_factors` gives."""

    @property
    def least_ratio(self) -> float:
        r"""least in use [1]."""

    @property
    def usual_ratio(self) -> float:
        r"""taken where nobody says [1]."""

@final
class SafetyFactorsArray(ArrayResult):
    r"""What `safety_factors` gives for arrays."""

    @property
    def least_ratio(self) -> npt.NDArray[np.float64]:
        r"""least in use [1]."""

    @property
    def usual_ratio(self) -> npt.NDArray[np.float64]:
        r"""taken where nobody says [1]."""

@overload
def allowable_stress(  # type: ignore[overload-overlap]
    rupture: Quantity,
    safety: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AllowableStress:
    r"""The stress that a safety factor allows.

    Rule: allowable = rupture / safety.
    Takes for granted: plain concrete.

    Args:
        rupture: modulus of rupture [psi | MPa]; at least 50 psi, at most 2000 psi (at least
            0.344737864658 MPa, at most 13.7895145863 MPa)
        safety: safety factor [1]; at least 1 1, at most 10 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        AllowableStress, with the attributes
            allowable_psi, allowable_mpa: stress allowed [psi | MPa]
        and notes; for arrays AllowableStressArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm

    Example:
        >>> from overslab.overlay import allowable_stress
        >>> answer = allowable_stress(rupture="570 psi", safety="1.7 ratio")
        >>> round(answer.allowable_psi, 4)
        335.2941

    Since 0.1.0.
    """

@overload
def allowable_stress(
    rupture: Quantity | Quantities,
    safety: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AllowableStressArray: ...

@final
class AllowableStress(ScalarResult):
    r"""What `allowable_stress` gives."""

    @property
    def allowable_psi(self) -> float:
        r"""stress allowed [psi]."""

    @property
    def allowable_mpa(self) -> float:
        r"""stress allowed [MPa]."""

@final
class AllowableStressArray(ArrayResult):
    r"""What `allowable_stress` gives for arrays."""

    @property
    def allowable_psi(self) -> npt.NDArray[np.float64]:
        r"""stress allowed [psi]."""

    @property
    def allowable_mpa(self) -> npt.NDArray[np.float64]:
        r"""stress allowed [MPa]."""

@overload
def allowable_load(  # type: ignore[overload-overlap]
    position: Literal["interior", "edge", "corner"],
    radius: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    rupture: Quantity,
    safety: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AllowableLoad:
    r"""The one load that a slab carries at a place, on a contact of a given radius.

    Rule: load = (rupture / safety) / stress of a unit load; interior 1926, edge circle 1948, corner
        Westergaard 1926.
    Takes for granted: the contact keeps its radius; one load by itself; nothing carried across joints.

    Args:
        position: where on the slab it stands; one of "interior", "edge", "corner"
        radius: radius of the contact [in | mm]; at least 0.0393700787402 in, at most 196.850393701 in
            (at least 1 mm, at most 5000 mm)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        rupture: its strength in bending, the modulus of rupture [psi | MPa]; at least 50 psi, at most
            2000 psi (at least 0.344737864658 MPa, at most 13.7895145863 MPa)
        safety: safety factor [1]; at least 1 1, at most 10 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        AllowableLoad, with the attributes
            load_lbf, load_kn: load allowed [lbf | kN]
        and notes; for arrays AllowableLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        OverlayError: the contact of a load is too wide for the formula (CONTACT_TOO_WIDE)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
        safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm

    Example:
        >>> from overslab.overlay import allowable_load
        >>> answer = allowable_load(
        ...     position="interior",
        ...     radius="3 in",
        ...     thickness="4 in",
        ...     modulus="3,600,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="100 pci",
        ...     rupture="550 psi",
        ...     safety="2 ratio",
        ... )
        >>> round(answer.load_lbf, 4)
        3048.6797

    Since 0.1.0.
    """

@overload
def allowable_load(
    position: Literal["interior", "edge", "corner"] | Words,
    radius: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    rupture: Quantity | Quantities,
    safety: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AllowableLoadArray: ...

@final
class AllowableLoad(ScalarResult):
    r"""What `allowable_load` gives."""

    @property
    def load_lbf(self) -> float:
        r"""load allowed [lbf]."""

    @property
    def load_kn(self) -> float:
        r"""load allowed [kN]."""

@final
class AllowableLoadArray(ArrayResult):
    r"""What `allowable_load` gives for arrays."""

    @property
    def load_lbf(self) -> npt.NDArray[np.float64]:
        r"""load allowed [lbf]."""

    @property
    def load_kn(self) -> npt.NDArray[np.float64]:
        r"""load allowed [kN]."""

def repetitions_allowed(
    stress_ratio: Quantity,
    *,
    units: Units | None = None,
) -> RepetitionsAllowed:
    r"""How often a stress may come, by its ratio to the modulus of rupture.

    Rule: below 0.45 without limit; to 0.55 repetitions = (4.2577 / (stress_ratio - 0.4325))^3.268;
        above log10 repetitions = (0.9718 - stress_ratio) / 0.0828.
    Takes for granted: stress and strength are those of the place that governs.

    Args:
        stress_ratio: stress over modulus of rupture [1]; more than 0 1, at most 1 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        RepetitionsAllowed, with the attributes
            unlimited: whether there is no limit: no, yes
            repetitions_ratio: how often; none where there is no limit [1]
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        repetitions by stress ratio, unlimited below 0.45: IRC:58, after the Portland Cement Association
            (2002), fatigue, from memory: confirm

    Example:
        >>> from overslab.overlay import repetitions_allowed
        >>> answer = repetitions_allowed(stress_ratio="0.55 ratio")
        >>> answer.unlimited
        'no'

    Since 0.1.0.
    """

@final
class RepetitionsAllowed(AnswerResult):
    r"""What `repetitions_allowed` gives."""

    @property
    def unlimited(self) -> Literal["no", "yes"]:
        r"""whether there is no limit."""

    @property
    def repetitions_ratio(self) -> float | None:
        r"""how often; none where there is no limit [1]."""

def thickness_needed(
    loads: Table,
    rupture: Quantity,
    *,
    safety: Quantity | None = None,
    modulus: Quantity | None = None,
    poisson: Quantity | None = None,
    subgrade: Quantity | None = None,
    edge_form: Literal["circle", "semicircle"] | None = None,
    corner_form: Literal["Westergaard 1926", "Ioannides 1985"] | None = None,
    transfer: Quantity | None = None,
    least: Quantity | None = None,
    greatest: Quantity | None = None,
    units: Units | None = None,
) -> ThicknessNeeded:
    r"""The smallest thickness of a single slab on ground whose governing stress under all loads is allowed.

    Rule: smallest thickness with governing stress <= rupture / safety, by halving, 0.01 mm at most
        above the root.
    Takes for granted: as slab_stress; one safety factor for all loads; nothing is carried by an old
        slab: for that see overlay_required.

    Args:
        loads: the loads; a table of at least 1 row, each a load on the slab, its contact by radius or
            by pressure, with the columns
            name: what it is; a text; may be left out
            load: how heavy [lbf | kN]; more than 0 lbf, at most 2248089.431 lbf (more than 0 kN, at
                most 10000 kN)
            radius: radius of the circle it stands on [in | mm]; at least 0.0393700787402 in, at most
                196.850393701 in (at least 1 mm, at most 5000 mm); may be left out
            pressure: contact pressure, in place of a radius [psi | kPa]; at least 0.14503773773 psi, at
                most 14503.773773 psi (at least 1 kPa, at most 100000 kPa); may be left out
            x: from the left [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
                -1000 m, at most 1000 m)
            y: from the front [ft | m]; at least -3280.83989501 ft, at most 3280.83989501 ft (at least
                -1000 m, at most 1000 m)
            position: where on the slab it stands; one of "interior", "edge", "corner"
        rupture: modulus of rupture of the concrete [psi | MPa]; at least 50 psi, at most 2000 psi (at
            least 0.344737864658 MPa, at most 13.7895145863 MPa)
        safety: safety factor [1]; at least 1 1, at most 10 1; where it is not given 2 ratio is taken:
            usual for wheels, posts and jacks
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa); where it is not given 3,600,000 psi
            is taken: normal-weight concrete of 4,000 psi
        poisson: Poisson's ratio of the concrete [1]; at least 0 1, at most 0.5 1; where it is not given
            0.15 ratio is taken: usual for concrete
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m); where it is not given 100 pci is taken:
            medium by heel and bar
        edge_form: contact at an edge; one of "circle", "semicircle"; where it is not given circle is
            taken: a wheel that touches the edge from inside
        corner_form: formula in a corner; one of "Westergaard 1926", "Ioannides 1985"; where it is not
            given Westergaard 1926 is taken: its stress is the nearest to a plate by finite elements
        transfer: share of edge stress that dowels or interlock take off, 25 % by many manuals (confirm)
            [%]; at least 0 %, at most 50 %; where it is not given 0 % is taken: a free edge
        least: the search begins here [in | mm]; at least 1 in, at most 48 in (at least 25.4 mm, at most
            1219.2 mm); where it is not given 2 in is taken: no slab on ground is thinner
        greatest: and ends here [in | mm]; more than 0 in, at most 78.7401574803 in (more than 0 mm, at
            most 2000 mm); where it is not given 24 in is taken: thicker is no floor any more
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        ThicknessNeeded, with the attributes
            thickness_in, thickness_mm: smallest thickness [in | mm]
            stress_psi, stress_mpa: governing stress there [psi | MPa]
            allowable_psi, allowable_mpa: stress allowed [psi | MPa]
            governs: the load that governs, the first being 1
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST)
        OverlayError: no thickness up to the greatest asked is enough (NO_THICKNESS); the contact of a
            load is not given by exactly one of radius and pressure (CONTACT_UNCLEAR)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        stress and deflection under one load, forms of 1926: Westergaard (1926), interior, edge, corner,
            from memory: confirm
        edge load, forms of 1948: Westergaard (1948), edge, circle and semicircle, from memory: confirm
        s = 3 P / h^2 (1 - (c/l)^0.72), c = 1.772 a: Ioannides, Thompson, Barenberg (1985), corner load,
            from memory: confirm
        ours, no source: what another load adds is what it would do there, times its influence at the
            distance over that at none: derived
        safety factors by kind of load: ACI 360R (2006), Table 5.2, from memory: confirm
        dowels or interlock take 25 % off the free-edge stress: TM 5-809-12 (1987), joints, from memory:
            confirm
        soft 50, medium 100, firm 200 pci, by heel and bar: common practice, no source

    Example:
        >>> from overslab.overlay import thickness_needed
        >>> answer = thickness_needed(
        ...     loads=[
        ...         {
        ...             "name": "left jack",
        ...             "load": "3000 lb",
        ...             "pressure": "148 psi",
        ...             "x": "4 ft",
        ...             "y": "6 ft",
        ...             "position": "interior",
        ...         },
        ...         {
        ...             "name": "right jack",
        ...             "load": "3000 lb",
        ...             "pressure": "148 psi",
        ...             "x": "9 ft",
        ...             "y": "6 ft",
        ...             "position": "edge",
        ...         },
        ...     ],
        ...     rupture="550 psi",
        ... )
        >>> round(answer.thickness_in, 4)
        6.2717

    Since 0.1.0.
    """

@final
class ThicknessNeeded(AnswerResult):
    r"""What `thickness_needed` gives."""

    @property
    def thickness_in(self) -> float:
        r"""smallest thickness [in]."""

    @property
    def thickness_mm(self) -> float:
        r"""smallest thickness [mm]."""

    @property
    def stress_psi(self) -> float:
        r"""governing stress there [psi]."""

    @property
    def stress_mpa(self) -> float:
        r"""governing stress there [MPa]."""

    @property
    def allowable_psi(self) -> float:
        r"""stress allowed [psi]."""

    @property
    def allowable_mpa(self) -> float:
        r"""stress allowed [MPa]."""

    @property
    def governs(self) -> int:
        r"""the load that governs, the first being 1."""

@overload
def uniform_load(  # type: ignore[overload-overlap]
    thickness: Quantity,
    subgrade: Quantity,
    rupture: Quantity,
    safety: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> UniformLoad:
    r"""The uniform load that may stand on both sides of an aisle without joints, whatever the width of the aisle.

    Rule: load = 0.123 (rupture / safety) sqrt(thickness x subgrade), psf, psi, in, pci.
    Takes for granted: the aisle takes its worst width; no joint in it.

    Args:
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        rupture: modulus of rupture [psi | MPa]; at least 50 psi, at most 2000 psi (at least
            0.344737864658 MPa, at most 13.7895145863 MPa)
        safety: safety factor [1]; at least 1 1, at most 10 1
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        UniformLoad, with the attributes
            load_psf, load_kpa: load allowed on each unit of area [psf | kPa]
        and notes; for arrays UniformLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        w = 0.123 (MR / SF) sqrt(h k): ACI 360R, after Packard (2006), Table A1.1 read, fit recalled,
            from memory: confirm

    Example:
        >>> from overslab.overlay import uniform_load
        >>> answer = uniform_load(
        ...     thickness="6 in",
        ...     subgrade="100 pci",
        ...     rupture="600 psi",
        ...     safety="2 ratio",
        ... )
        >>> round(answer.load_psf, 4)
        903.8617

    Since 0.1.0.
    """

@overload
def uniform_load(
    thickness: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    rupture: Quantity | Quantities,
    safety: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> UniformLoadArray: ...

@final
class UniformLoad(ScalarResult):
    r"""What `uniform_load` gives."""

    @property
    def load_psf(self) -> float:
        r"""load allowed on each unit of area [psf]."""

    @property
    def load_kpa(self) -> float:
        r"""load allowed on each unit of area [kPa]."""

@final
class UniformLoadArray(ArrayResult):
    r"""What `uniform_load` gives for arrays."""

    @property
    def load_psf(self) -> npt.NDArray[np.float64]:
        r"""load allowed on each unit of area [psf]."""

    @property
    def load_kpa(self) -> npt.NDArray[np.float64]:
        r"""load allowed on each unit of area [kPa]."""

@overload
def wall_load(  # type: ignore[overload-overlap]
    thickness: Quantity,
    subgrade: Quantity,
    strength: Quantity,
    place: Literal["middle or doweled joint", "free edge"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> WallLoad:
    r"""The load of a wall that a slab carries without being thickened, in the middle, at a doweled joint or at a free edge.

    Rule: middle: load = 4 Fb S lambda; free edge: load = Fb S lambda / 0.3224; Fb = 1.6 sqrt(strength)
        psi, S = thickness^2 / 6, lambda = (subgrade / (4 Ec thickness^3 / 12))^(1/4), Ec = 57000
        sqrt(strength) psi.
    Takes for granted: a beam without end on springs, the wall long.

    Args:
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        strength: compressive strength f'c [psi | MPa]; at least 1000 psi, at most 15000 psi (at least
            6.89475729317 MPa, at most 103.421359398 MPa)
        place: where the wall stands; one of "middle or doweled joint", "free edge"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        WallLoad, with the attributes
            load_lbf_per_ft, load_kn_per_m: load allowed on each unit of length [lbf/ft | kN/m]
        and notes; for arrays WallLoadArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        Pc = 4 Fb S lambda, at a free edge Fb S lambda / 0.3224: TM 5-809-12 (1987), 3-4 and Table 3-2
            read, forms recalled, from memory: confirm

    Example:
        >>> from overslab.overlay import wall_load
        >>> answer = wall_load(
        ...     thickness="6 in",
        ...     subgrade="100 pci",
        ...     strength="4,000 psi",
        ...     place="free edge",
        ... )
        >>> round(answer.load_lbf_per_ft, 4)
        563.0256

    Since 0.1.0.
    """

@overload
def wall_load(
    thickness: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    strength: Quantity | Quantities,
    place: Literal["middle or doweled joint", "free edge"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> WallLoadArray: ...

@final
class WallLoad(ScalarResult):
    r"""What `wall_load` gives."""

    @property
    def load_lbf_per_ft(self) -> float:
        r"""load allowed on each unit of length [lbf/ft]."""

    @property
    def load_kn_per_m(self) -> float:
        r"""load allowed on each unit of length [kN/m]."""

@final
class WallLoadArray(ArrayResult):
    r"""What `wall_load` gives for arrays."""

    @property
    def load_lbf_per_ft(self) -> npt.NDArray[np.float64]:
        r"""load allowed on each unit of length [lbf/ft]."""

    @property
    def load_kn_per_m(self) -> npt.NDArray[np.float64]:
        r"""load allowed on each unit of length [kN/m]."""

@overload
def curling_coefficient(  # type: ignore[overload-overlap]
    side: Quantity,
    stiffness: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CurlingCoefficient:
    r"""Bradbury's coefficient of curling for a side of a slab.

    Rule: coefficient = 1 - 2 cos m cosh m (tan m + tanh m) / (sin 2m + sinh 2m), m = side / (stiffness
        sqrt 8).
    Takes for granted: a strip free at both ends.

    Args:
        side: side of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
            656.167979003 ft (at least 0.1 m, at most 200 m)
        stiffness: radius of relative stiffness [in | mm]; at least 0.393700787402 in, at most
            1968.50393701 in (at least 10 mm, at most 50000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        CurlingCoefficient, with the attributes
            coefficient_ratio: Bradbury's coefficient [1]
        and notes; for arrays CurlingCoefficientArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang,
            Pavement Analysis and Design (1938), curling, from memory: confirm

    Example:
        >>> from overslab.overlay import curling_coefficient
        >>> answer = curling_coefficient(side="25 ft", stiffness="30.57 in")
        >>> round(answer.coefficient_ratio, 4)
        1.0789

    Since 0.1.0.
    """

@overload
def curling_coefficient(
    side: Quantity | Quantities,
    stiffness: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CurlingCoefficientArray: ...

@final
class CurlingCoefficient(ScalarResult):
    r"""What `curling_coefficient` gives."""

    @property
    def coefficient_ratio(self) -> float:
        r"""Bradbury's coefficient [1]."""

@final
class CurlingCoefficientArray(ArrayResult):
    r"""What `curling_coefficient` gives for arrays."""

    @property
    def coefficient_ratio(self) -> npt.NDArray[np.float64]:
        r"""Bradbury's coefficient [1]."""

@overload
def curling_stress(  # type: ignore[overload-overlap]
    length: Quantity,
    width: Quantity,
    thickness: Quantity,
    modulus: Quantity,
    poisson: Quantity,
    subgrade: Quantity,
    expansion: Quantity,
    difference: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CurlingStress:
    r"""Stress from a difference of temperature between top and bottom of a slab.

    Rule: edge = C modulus expansion difference / 2; interior = modulus expansion difference / (2 (1 -
        poisson^2)) (C along + poisson C across).
    Takes for granted: temperature straight through the thickness, the slab held down by its weight;
        tension is at the bottom where the top is warmer, else at the top.

    Args:
        length: length of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
            656.167979003 ft (at least 0.1 m, at most 200 m)
        width: width of the slab between joints [ft | m]; at least 0.328083989501 ft, at most
            656.167979003 ft (at least 0.1 m, at most 200 m)
        thickness: thickness of the slab [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        modulus: modulus of elasticity of the concrete [psi | MPa]; at least 14503.773773 psi, at most
            14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        poisson: Poisson's ratio of the concrete, often 0.15 [1]; at least 0 1, at most 0.5 1
        subgrade: subgrade reaction k [pci | MPa/m]; at least 5 pci, at most 2000 pci (at least
            1.35723568763 MPa/m, at most 542.894275053 MPa/m)
        expansion: coefficient of thermal expansion [/degF | /degC]; at least 0.000000555555555556
            /degF, at most 0.0000166666666667 /degF (at least 0.000001 /degC, at most 0.00003 /degC)
        difference: between top and bottom, whichever is warmer [degF | K]; at least 0 degF, at most 108
            degF (at least 0 K, at most 60 K)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        CurlingStress, with the attributes
            interior_length_psi, interior_length_mpa: stress in the middle, along the length [psi | MPa]
            interior_width_psi, interior_width_mpa: stress in the middle, along the width [psi | MPa]
            edge_length_psi, edge_length_mpa: stress half way of an edge that runs along the length [psi
                | MPa]
            edge_width_psi, edge_width_mpa: stress half way of an edge that runs along the width [psi |
                MPa]
            of_length_ratio: coefficient C of the length [1]
            of_width_ratio: coefficient C of the width [1]
        and notes; for arrays CurlingStressArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE); the unit belongs to another
            quantity (UNIT_WRONG)

    Basis:
        s = E alpha dT / (2 (1 - nu^2)) (Cx + nu Cy); edge C E alpha dT / 2: Bradbury, as in Huang,
            Pavement Analysis and Design (1938), curling, from memory: confirm
        l = (E h^3 / (12 (1 - nu^2) k))^(1/4): Westergaard (1926), radius of relative stiffness

    Example:
        >>> from overslab.overlay import curling_stress
        >>> answer = curling_stress(
        ...     length="25 ft",
        ...     width="12 ft",
        ...     thickness="8 in",
        ...     modulus="4,000,000 psi",
        ...     poisson="0.15 ratio",
        ...     subgrade="200 pci",
        ...     expansion="5e-6 /degF",
        ...     difference="20 degF",
        ... )
        >>> round(answer.interior_length_psi, 4)
        240.3564

    Since 0.1.0.
    """

@overload
def curling_stress(
    length: Quantity | Quantities,
    width: Quantity | Quantities,
    thickness: Quantity | Quantities,
    modulus: Quantity | Quantities,
    poisson: Quantity | Quantities,
    subgrade: Quantity | Quantities,
    expansion: Quantity | Quantities,
    difference: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> CurlingStressArray: ...

@final
class CurlingStress(ScalarResult):
    r"""What `curling_stress` gives."""

    @property
    def interior_length_psi(self) -> float:
        r"""stress in the middle, along the length [psi]."""

    @property
    def interior_length_mpa(self) -> float:
        r"""stress in the middle, along the length [MPa]."""

    @property
    def interior_width_psi(self) -> float:
        r"""stress in the middle, along the width [psi]."""

    @property
    def interior_width_mpa(self) -> float:
        r"""stress in the middle, along the width [MPa]."""

    @property
    def edge_length_psi(self) -> float:
        r"""stress half way of an edge that runs along the length [psi]."""

    @property
    def edge_length_mpa(self) -> float:
        r"""stress half way of an edge that runs along the length [MPa]."""

    @property
    def edge_width_psi(self) -> float:
        r"""stress half way of an edge that runs along the width [psi]."""

    @property
    def edge_width_mpa(self) -> float:
        r"""stress half way of an edge that runs along the width [MPa]."""

    @property
    def of_length_ratio(self) -> float:
        r"""coefficient C of the length [1]."""

    @property
    def of_width_ratio(self) -> float:
        r"""coefficient C of the width [1]."""

@final
class CurlingStressArray(ArrayResult):
    r"""What `curling_stress` gives for arrays."""

    @property
    def interior_length_psi(self) -> npt.NDArray[np.float64]:
        r"""stress in the middle, along the length [psi]."""

    @property
    def interior_length_mpa(self) -> npt.NDArray[np.float64]:
        r"""stress in the middle, along the length [MPa]."""

    @property
    def interior_width_psi(self) -> npt.NDArray[np.float64]:
        r"""stress in the middle, along the width [psi]."""

    @property
    def interior_width_mpa(self) -> npt.NDArray[np.float64]:
        r"""stress in the middle, along the width [MPa]."""

    @property
    def edge_length_psi(self) -> npt.NDArray[np.float64]:
        r"""stress half way of an edge that runs along the length [psi]."""

    @property
    def edge_length_mpa(self) -> npt.NDArray[np.float64]:
        r"""stress half way of an edge that runs along the length [MPa]."""

    @property
    def edge_width_psi(self) -> npt.NDArray[np.float64]:
        r"""stress half way of an edge that runs along the width [psi]."""

    @property
    def edge_width_mpa(self) -> npt.NDArray[np.float64]:
        r"""stress half way of an edge that runs along the width [MPa]."""

    @property
    def of_length_ratio(self) -> npt.NDArray[np.float64]:
        r"""coefficient C of the length [1]."""

    @property
    def of_width_ratio(self) -> npt.NDArray[np.float64]:
        r"""coefficient C of the width [1]."""

@overload
def two_layers(  # type: ignore[overload-overlap]
    bond: Literal["bonded", "partly bonded", "unbonded"],
    overlay: Quantity,
    overlay_modulus: Quantity,
    old_slab: Quantity,
    old_modulus: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> TwoLayers:
    r"""Overlay and old slab as one plate, and what each feels of that plate's bending stress. Ours, no source.

    Rule: bonded: transformed section, equivalent = (12 I)^(1/3), stress = M y / I, in the old slab
        times its modulus over the overlay's; unbonded: equivalent^3 = overlay^3 + (old_modulus /
        overlay_modulus) old_slab^3, the moment shared as the rigidities.
    Takes for granted: both layers take one curvature and have one Poisson's ratio; unbonded without
        friction; partly bonded counts as unbonded; the plate has tension below.

    Args:
        bond: how the overlay holds to the old slab; one of "bonded", "partly bonded", "unbonded"
        overlay: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more than
            0 mm, at most 2000 mm)
        overlay_modulus: modulus of elasticity of the overlay [psi | MPa]; at least 14503.773773 psi, at
            most 14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        old_slab: the old slab's thickness [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        old_modulus: the old slab's modulus of elasticity [psi | MPa]; at least 14503.773773 psi, at
            most 14503773.773 psi (at least 100 MPa, at most 100000 MPa)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        TwoLayers, with the attributes
            equivalent_in, equivalent_mm: thickness of the plate of the overlay's concrete that is as
                stiff as both [in | mm]
            overlay_share_ratio: share of the rigidity that the overlay brings [1]
            overlay_top_ratio: stress at the top of the overlay, over the plate's bending stress;
                tension positive [1]
            overlay_bottom_ratio: at the bottom of the overlay [1]
            old_top_ratio: old slab, at its top [1]
            old_bottom_ratio: old slab, at its bottom [1]
        and notes; for arrays TwoLayersArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        ours, no source: bonded by the transformed section, unbonded by sharing the moment in proportion
            to rigidity: derived

    Example:
        >>> from overslab.overlay import two_layers
        >>> answer = two_layers(
        ...     bond="bonded",
        ...     overlay="2 in",
        ...     overlay_modulus="4,000,000 psi",
        ...     old_slab="4 in",
        ...     old_modulus="3,000,000 psi",
        ... )
        >>> round(answer.equivalent_in, 4)
        5.7042

    Since 0.1.0.
    """

@overload
def two_layers(
    bond: Literal["bonded", "partly bonded", "unbonded"] | Words,
    overlay: Quantity | Quantities,
    overlay_modulus: Quantity | Quantities,
    old_slab: Quantity | Quantities,
    old_modulus: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> TwoLayersArray: ...

@final
class TwoLayers(ScalarResult):
    r"""What `two_layers` gives."""

    @property
    def equivalent_in(self) -> float:
        r"""thickness of the plate of the overlay's concrete that is as stiff as both [in]."""

    @property
    def equivalent_mm(self) -> float:
        r"""thickness of the plate of the overlay's concrete that is as stiff as both [mm]."""

    @property
    def overlay_share_ratio(self) -> float:
        r"""share of the rigidity that the overlay brings [1]."""

    @property
    def overlay_top_ratio(self) -> float:
        r"""stress at the top of the overlay, over the plate's bending stress; tension positive [1]."""

    @property
    def overlay_bottom_ratio(self) -> float:
        r"""at the bottom of the overlay [1]."""

    @property
    def old_top_ratio(self) -> float:
        r"""old slab, at its top [1]."""

    @property
    def old_bottom_ratio(self) -> float:
        r"""old slab, at its bottom [1]."""

@final
class TwoLayersArray(ArrayResult):
    r"""What `two_layers` gives for arrays."""

    @property
    def equivalent_in(self) -> npt.NDArray[np.float64]:
        r"""thickness of the plate of the overlay's concrete that is as stiff as both [in]."""

    @property
    def equivalent_mm(self) -> npt.NDArray[np.float64]:
        r"""thickness of the plate of the overlay's concrete that is as stiff as both [mm]."""

    @property
    def overlay_share_ratio(self) -> npt.NDArray[np.float64]:
        r"""share of the rigidity that the overlay brings [1]."""

    @property
    def overlay_top_ratio(self) -> npt.NDArray[np.float64]:
        r"""stress at the top of the overlay, over the plate's bending stress; tension positive [1]."""

    @property
    def overlay_bottom_ratio(self) -> npt.NDArray[np.float64]:
        r"""at the bottom of the overlay [1]."""

    @property
    def old_top_ratio(self) -> npt.NDArray[np.float64]:
        r"""old slab, at its top [1]."""

    @property
    def old_bottom_ratio(self) -> npt.NDArray[np.float64]:
        r"""old slab, at its bottom [1]."""

def edge_key(
    least: Quantity,
    at_edge: Quantity,
    growth: Quantity,
    length: Quantity,
    *,
    room: Quantity | None = None,
    old_slab: Quantity | None = None,
    units: Units | None = None,
) -> EdgeKey:
    r"""The key that is sawn and chipped into the old slab where the overlay is thinner than its least at an edge: concrete is not run out to nothing.

    Rule: depth = least - at_edge; width = depth / growth; volume = depth x width / 2 x length; with
        less room its section is a triangle cut off at the room's end.
    Takes for granted: the overlay thickens evenly away from the edge, which is straight; the saw cut at
        the edge is vertical.

    Args:
        least: least thickness of the overlay [in | mm]; more than 0 in, at most 60 in (more than 0 mm,
            at most 1524 mm)
        at_edge: thickness of the overlay at the edge, 0 where it is flush with the old slab [in | mm];
            at least 0 in, at most 60 in (at least 0 mm, at most 1524 mm)
        growth: how fast it thickens away from the edge [in/ft | %]; more than 0 in/ft, at most 12 in/ft
            (more than 0 %, at most 100 %)
        length: length of the edge [ft | m]; more than 0 ft, at most 10498.687664 ft (more than 0 m, at
            most 3200 m)
        room: how far back there is room for the key [ft | m]; more than 0 ft, at most 10498.687664 ft
            (more than 0 m, at most 3200 m); may be left out
        old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        EdgeKey, with the attributes
            cut: what is done at the edge: no key, saw and chip, break out the strip
            depth_in, depth_mm: how deep the saw goes at the edge [in | mm]
            width_ft, width_m: how far back it is chipped [ft | m]
            depth_at_back_in, depth_at_back_mm: how deep it still is at its back; 0 where it runs out
                [in | mm]
            area_ft2, area_m2: chipped area [ft2 | m2]
            volume_ft3, volume_l: old concrete that comes out, and new concrete that goes in [ft3 | L]
            left_in, left_mm: what is left of the old slab under the key [in | mm]
        and notes, basis and taken.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
            edges of repairs, from memory: confirm
        a key through half of the old slab or more leaves too little of it: the strip is broken out:
            common practice, no source
        plane and solid geometry: derived

    Example:
        >>> from overslab.overlay import edge_key
        >>> answer = edge_key(
        ...     least="1 1/2 in",
        ...     at_edge="1/2 in",
        ...     growth="1/4 in/ft",
        ...     length="9 ft",
        ...     old_slab="4 in",
        ... )
        >>> answer.cut
        'saw and chip'

    Since 0.1.0.
    """

@final
class EdgeKey(AnswerResult):
    r"""What `edge_key` gives."""

    @property
    def cut(self) -> Literal["no key", "saw and chip", "break out the strip"]:
        r"""what is done at the edge."""

    @property
    def depth_in(self) -> float:
        r"""how deep the saw goes at the edge [in]."""

    @property
    def depth_mm(self) -> float:
        r"""how deep the saw goes at the edge [mm]."""

    @property
    def width_ft(self) -> float:
        r"""how far back it is chipped [ft]."""

    @property
    def width_m(self) -> float:
        r"""how far back it is chipped [m]."""

    @property
    def depth_at_back_in(self) -> float:
        r"""how deep it still is at its back; 0 where it runs out [in]."""

    @property
    def depth_at_back_mm(self) -> float:
        r"""how deep it still is at its back; 0 where it runs out [mm]."""

    @property
    def area_ft2(self) -> float:
        r"""chipped area [ft2]."""

    @property
    def area_m2(self) -> float:
        r"""chipped area [m2]."""

    @property
    def volume_ft3(self) -> float:
        r"""old concrete that comes out, and new concrete that goes in [ft3]."""

    @property
    def volume_l(self) -> float:
        r"""old concrete that comes out, and new concrete that goes in [L]."""

    @property
    def left_in(self) -> float | None:
        r"""what is left of the old slab under the key [in]."""

    @property
    def left_mm(self) -> float | None:
        r"""what is left of the old slab under the key [mm]."""

def key_cuts(
    survey: Survey | RecordLike,
    finish: Finish | RecordLike,
    line: Table,
    least: Quantity,
    *,
    old_slab: Quantity | None = None,
    units: Units | None = None,
) -> KeyCuts:
    r"""Where the overlay is thinner than its least along an edge of the work, and the keys that are sawn and chipped there.

    Rule: depth = least - (finish - old slab) at the edge; width to where the least is first reached,
        square to the edge; area and volume by Simpson's rule between sections.
    Takes for granted: the edge is one where the floor meets a given height: a door, a walk, the next
        slab; sections no more than 3 ft apart and where a surface bends along the edge.

    Args:
        survey: the old slab; a Survey
        finish: the new top surface; a Finish
        line: the places of the edge; a table of at least 1 row, each a place on the edge of the work,
            in order; one alone is a place, with the columns
            x: from the left [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
                -100000 m, at most 100000 m)
            y: from the front [ft | m]; at least -328083.989501 ft, at most 328083.989501 ft (at least
                -100000 m, at most 100000 m)
        least: least thickness of the overlay [in | mm]; more than 0 in, at most 60 in (more than 0 mm,
            at most 1524 mm)
        old_slab: thickness of the old slab [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        KeyCuts, with the attributes
            cuts: the keys; none where the overlay is thick enough, a table of cuts
            length_ft, length_m: length of saw cuts along the edge [ft | m]
            area_ft2, area_m2: area that is chipped [ft2 | m2]
            volume_ft3, volume_l: concrete that comes out and goes in, of all keys [ft3 | L]
        and notes, basis and taken.

    Raises:
        OverlayError: a line does not run along an edge of the work (LINE_NOT_ON_EDGE)
        FormError: the list is empty (EMPTY_LIST)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        no feather edge: a sawn and chipped key at least the least thickness deep: ACI 546R (several),
            edges of repairs, from memory: confirm
        a key through half of the old slab or more leaves too little of it: the strip is broken out:
            common practice, no source
        plane and solid geometry: derived

    Example:
        >>> from overslab.overlay import key_cuts
        >>> answer = key_cuts(
        ...     survey={
        ...         "outline": {
        ...             "corners": [
        ...                 {"x": "0 ft", "y": "0 ft"},
        ...                 {"x": "20 ft", "y": "0 ft"},
        ...                 {"x": "20 ft", "y": "24 ft"},
        ...                 {"x": "0 ft", "y": "24 ft"},
        ...             ],
        ...         },
        ...         "shots": [
        ...             {"x": "1 ft", "y": "1 ft", "elevation": "99.4 ft"},
        ...             {"x": "19 ft", "y": "1 ft", "elevation": "99.42 ft"},
        ...             {"x": "19 ft", "y": "23 ft", "elevation": "99.2 ft"},
        ...             {"x": "1 ft", "y": "23 ft", "elevation": "99.18 ft"},
        ...         ],
        ...     },
        ...     finish={"level": "99.5 ft"},
        ...     line={"x": ["6 ft", "14 ft"], "y": ["0 in", "0 in"]},
        ...     least="1 1/2 in",
        ...     old_slab="4 in",
        ... )
        >>> round(answer.length_ft, 4)
        8.0

    Since 0.1.0.
    """

@final
class KeyCuts(AnswerResult):
    r"""What `key_cuts` gives."""

    @property
    def cuts(self) -> dict[str, Column]:
        r"""the keys; none where the overlay is thick enough."""

    @property
    def length_ft(self) -> float:
        r"""length of saw cuts along the edge [ft]."""

    @property
    def length_m(self) -> float:
        r"""length of saw cuts along the edge [m]."""

    @property
    def area_ft2(self) -> float:
        r"""area that is chipped [ft2]."""

    @property
    def area_m2(self) -> float:
        r"""area that is chipped [m2]."""

    @property
    def volume_ft3(self) -> float:
        r"""concrete that comes out and goes in, of all keys [ft3]."""

    @property
    def volume_l(self) -> float:
        r"""concrete that comes out and goes in, of all keys [L]."""

@overload
def moisture_tests(  # type: ignore[overload-overlap]
    area: Quantity,
    thickness: Quantity,
    drying: Literal["one side", "two sides"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> MoistureTests:
    r"""How many humidity probes a floor takes before it is covered, and how deep their holes are.

    Rule: probes = 3 for the first 1000 ft2, 1 for each further 1000 ft2 or part; depth = 0.4 thickness
        drying from one side, 0.2 from two.
    Takes for granted: a hole is closed 24 h before it is read (72 h before the edition of 2018, from
        memory); the floor is at the temperature and in the air of its use.

    Args:
        area: area of the floor [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2,
            at most 1000000 m2)
        thickness: thickness of the slab that dries: of an overlay on a sheet, its own [in | mm]; more
            than 0 in, at most 78.7401574803 in (more than 0 mm, at most 2000 mm)
        drying: which sides it dries from; one of "one side", "two sides"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        MoistureTests, with the attributes
            count: how many probes
            depth_in, depth_mm: depth of their holes [in | mm]
        and notes; for arrays MoistureTestsArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from
            one side, 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and
            waiting of probes

    Example:
        >>> from overslab.overlay import moisture_tests
        >>> answer = moisture_tests(area="1,800 ft2", thickness="4 in", drying="one side")
        >>> answer.count
        4

    Since 0.1.0.
    """

@overload
def moisture_tests(
    area: Quantity | Quantities,
    thickness: Quantity | Quantities,
    drying: Literal["one side", "two sides"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> MoistureTestsArray: ...

@final
class MoistureTests(ScalarResult):
    r"""What `moisture_tests` gives."""

    @property
    def count(self) -> int:
        r"""how many probes."""

    @property
    def depth_in(self) -> float:
        r"""depth of their holes [in]."""

    @property
    def depth_mm(self) -> float:
        r"""depth of their holes [mm]."""

@final
class MoistureTestsArray(ArrayResult):
    r"""What `moisture_tests` gives for arrays."""

    @property
    def count(self) -> npt.NDArray[np.int64] | npt.NDArray[np.float64]:
        r"""how many probes."""

    @property
    def depth_in(self) -> npt.NDArray[np.float64]:
        r"""depth of their holes [in]."""

    @property
    def depth_mm(self) -> npt.NDArray[np.float64]:
        r"""depth of their holes [mm]."""

def moisture_verdict(
    readings: Table,
    *,
    limit: Quantity | None = None,
    area: Quantity | None = None,
    units: Units | None = None,
) -> MoistureVerdict:
    r"""Whether a floor is dry enough for what goes on it, by its humidity probes and the limit of the maker of that.

    Rule: dry enough where the highest reading is within the limit and there are as many probes as the
        area takes.
    Takes for granted: vapour does no harm to a cement overlay: coverings, sealers and coatings on it
        suffer; a sheet under an unbonded overlay stops what comes from below.

    Args:
        readings: what each probe reads; a table of at least 1 row, each a probe, with the columns
            humidity: relative humidity that it reads [%]; more than 0 %, at most 100 %
        limit: the maker's limit [%]; more than 0 %, at most 100 %; may be left out
        area: area of the floor [ft2 | m2]; more than 0 ft2, at most 10763910.4167 ft2 (more than 0 m2,
            at most 1000000 m2); may be left out
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.

    Returns:
        MoistureVerdict, with the attributes
            verdict: what the readings say: dry enough, too damp, test more, ask the maker
            highest_percent: highest reading, which governs [%]
            wanted: how many probes the area takes; none without an area
        and notes, basis and taken.

    Raises:
        FormError: the list is empty (EMPTY_LIST)
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        the limit of the maker of what goes on the floor, often 75 to 85 % relative humidity: the
            project's specification
        3 probes for the first 1,000 ft2, one for each further 1,000 ft2, at 40 % of the thickness from
            one side, 20 % from two, read after 24 h: ASTM F2170 (2018 and later), number, depth and
            waiting of probes
        vapour harms coverings, sealers and coatings, not the cement overlay under them; a sheet, lapped
            and taped, stops what comes from below: common practice, no source

    Example:
        >>> from overslab.overlay import moisture_verdict
        >>> answer = moisture_verdict(
        ...     readings={"humidity": ["74 %", "79 %", "77 %"]},
        ...     limit="80 %",
        ...     area="600 ft2",
        ... )
        >>> answer.verdict
        'dry enough'

    Since 0.1.0.
    """

@final
class MoistureVerdict(AnswerResult):
    r"""What `moisture_verdict` gives."""

    @property
    def verdict(self) -> Literal["dry enough", "too damp", "test more", "ask the maker"]:
        r"""what the readings say."""

    @property
    def highest_percent(self) -> float:
        r"""highest reading, which governs [%]."""

    @property
    def wanted(self) -> int | None:
        r"""how many probes the area takes; none without an area."""

@overload
def drying_time(  # type: ignore[overload-overlap]
    thickness: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> DryingTime:
    r"""How long concrete dries, after its curing ends, until it may be tested for a covering.

    Rule: 28 to 30 days for each inch of thickness.
    Takes for granted: drying from one side in good air, to about 85 % relative humidity; wetting again
        starts it anew; the probes decide, not the calendar.

    Args:
        thickness: thickness that dries [in | mm]; more than 0 in, at most 78.7401574803 in (more than 0
            mm, at most 2000 mm)
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        DryingTime, with the attributes
            least_d: least time [d]
            greatest_d: greatest time [d]
        and notes; for arrays DryingTimeArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        28 to 30 days for each inch from one side in good air, to about 85 %: Construction Specifier, on
            drying slabs (any), an inch a month

    Example:
        >>> from overslab.overlay import drying_time
        >>> answer = drying_time(thickness="3 in")
        >>> round(answer.least_d, 4)
        84.0

    Since 0.1.0.
    """

@overload
def drying_time(
    thickness: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> DryingTimeArray: ...

@final
class DryingTime(ScalarResult):
    r"""What `drying_time` gives."""

    @property
    def least_d(self) -> float:
        r"""least time [d]."""

    @property
    def greatest_d(self) -> float:
        r"""greatest time [d]."""

@final
class DryingTimeArray(ArrayResult):
    r"""What `drying_time` gives for arrays."""

    @property
    def least_d(self) -> npt.NDArray[np.float64]:
        r"""least time [d]."""

    @property
    def greatest_d(self) -> npt.NDArray[np.float64]:
        r"""greatest time [d]."""

@overload
def drying_time_by_water(  # type: ignore[overload-overlap]
    water_cement: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> DryingTimeByWater:
    r"""How long a slab 4 in thick dries until it gives off 3 lb of vapour in 24 h over 1000 ft2, by its water-cement ratio; from memory, confirm.

    Rule: days 46, 82, 117, 130, 148, 166, 190 at 0.4, 0.5 to 1.0, straight between.
    Takes for granted: 4 in thick, drying from one side, no water from below.

    Args:
        water_cement: water-cement ratio [w/cm]; at least 0.4 w/cm, at most 1 w/cm
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        DryingTimeByWater, with the attributes
            time_d: time it takes [d]
        and notes; for arrays DryingTimeByWaterArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        4 in: 46 days at a water-cement ratio of 0.4, 82 at 0.5, 190 at 1.0, to 3 lb/1000 ft2/24 h:
            Brewer, Portland Cement Association (1965), drying of 4 in slabs, from memory: confirm

    Example:
        >>> from overslab.overlay import drying_time_by_water
        >>> answer = drying_time_by_water(water_cement="0.45 w/cm")
        >>> round(answer.time_d, 4)
        64.0

    Since 0.1.0.
    """

@overload
def drying_time_by_water(
    water_cement: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> DryingTimeByWaterArray: ...

@final
class DryingTimeByWater(ScalarResult):
    r"""What `drying_time_by_water` gives."""

    @property
    def time_d(self) -> float:
        r"""time it takes [d]."""

@final
class DryingTimeByWaterArray(ArrayResult):
    r"""What `drying_time_by_water` gives for arrays."""

    @property
    def time_d(self) -> npt.NDArray[np.float64]:
        r"""time it takes [d]."""

@overload
def vapour_emission(  # type: ignore[overload-overlap]
    gain: Quantity,
    area: Quantity,
    time: Quantity,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> VapourEmission:
    r"""The vapour that a floor gives off, by a dish of calcium chloride that stood sealed on it.

    Rule: emission = gain / (area x time).
    Takes for granted: the dish stands sealed 60 to 72 h on cleaned concrete and the maker of what goes
        on the floor sets the limit, often 3 lb/1000 ft2/24 h (both from memory).

    Args:
        gain: mass that the dish gained [g]; at least 0 g, at most 10000 g
        area: area of floor under its cover [ft2 | m2]; more than 0 ft2, at most 107.639104167 ft2 (more
            than 0 m2, at most 10 m2)
        time: how long it stood [h]; more than 0 h, at most 2400 h
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        VapourEmission, with the attributes
            emission_lb_per_1000ft2_24h, emission_g_per_m2_24h: vapour in 24 h [lb/1000 ft2/24 h |
                g/m2/24 h]
        and notes; for arrays VapourEmissionArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)

    Basis:
        emission = gain of the dish / (area x time): derived
        the dish stands 60 to 72 h: ASTM F1869 (any), the dish of calcium chloride, from memory: confirm

    Example:
        >>> from overslab.overlay import vapour_emission
        >>> answer = vapour_emission(gain="5.2 g", area="0.5 ft2", time="66 h")
        >>> round(answer.emission_lb_per_1000ft2_24h, 4)
        8.3375

    Since 0.1.0.
    """

@overload
def vapour_emission(
    gain: Quantity | Quantities,
    area: Quantity | Quantities,
    time: Quantity | Quantities,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> VapourEmissionArray: ...

@final
class VapourEmission(ScalarResult):
    r"""What `vapour_emission` gives."""

    @property
    def emission_lb_per_1000ft2_24h(self) -> float:
        r"""vapour in 24 h [lb/1000 ft2/24 h]."""

    @property
    def emission_g_per_m2_24h(self) -> float:
        r"""vapour in 24 h [g/m2/24 h]."""

@final
class VapourEmissionArray(ArrayResult):
    r"""What `vapour_emission` gives for arrays."""

    @property
    def emission_lb_per_1000ft2_24h(self) -> npt.NDArray[np.float64]:
        r"""vapour in 24 h [lb/1000 ft2/24 h]."""

    @property
    def emission_g_per_m2_24h(self) -> npt.NDArray[np.float64]:
        r"""vapour in 24 h [g/m2/24 h]."""

@overload
def added_weight(  # type: ignore[overload-overlap]
    thickness: Quantity,
    density: Quantity,
    support: Literal["ground", "suspended", "unknown"],
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AddedWeight:
    r"""What an overlay weighs on each unit of area, and whether the work may go on: over anything but the ground it stops there.

    Rule: weight = density x thickness.
    Takes for granted: standard gravity; on ground the soil takes it, but for soft fill and thin slabs
        over voids.

    Args:
        thickness: thickness of the overlay [in | mm]; more than 0 in, at most 78.7401574803 in (more
            than 0 mm, at most 2000 mm)
        density: unit weight, 150 lb/ft3 with steel [lb/ft3 | kg/m3]; at least 49.9423684609 lb/ft3, at
            most 218.497862017 lb/ft3 (at least 800 kg/m3, at most 3500 kg/m3)
        support: what carries the old slab; one of "ground", "suspended", "unknown"
        units: the units of bare numbers, the first ("us") or the second ("si") in brackets.
        errors: what becomes of a refused element of an array: "raise", or "mark" it NaN.

    Returns:
        AddedWeight, with the attributes
            weight_psf, weight_kpa: added dead load [psf | kPa]
            next: what follows: go on, find out, stop
        and notes; for arrays AddedWeightArray, with arrays of that shape, and note_codes, bad, reasons.

    Raises:
        QuantityError: the value lies outside its range (OUT_OF_RANGE)
        FormError: the word is not one of the choices (WORD_UNKNOWN)

    Basis:
        w = unit weight x thickness: derived
        what more a suspended slab carries is a structural engineer's to say: common practice, no source

    Example:
        >>> from overslab.overlay import added_weight
        >>> answer = added_weight(thickness="3 in", density="150 lb/ft3", support="ground")
        >>> round(answer.weight_psf, 4)
        37.5

    Since 0.1.0.
    """

@overload
def added_weight(
    thickness: Quantity | Quantities,
    density: Quantity | Quantities,
    support: Literal["ground", "suspended", "unknown"] | Words,
    *,
    units: Units | None = None,
    errors: Errors = "raise",
) -> AddedWeightArray: ...

@final
class AddedWeight(ScalarResult):
    r"""What `added_weight` gives."""

    @property
    def weight_psf(self) -> float:
        r"""added dead load [psf]."""

    @property
    def weight_kpa(self) -> float:
        r"""added dead load [kPa]."""

    @property
    def next(self) -> Literal["go on", "find out", "stop"]:
        r"""what follows."""

@final
class AddedWeightArray(ArrayResult):
    r"""What `added_weight` gives for arrays."""

    @property
    def weight_psf(self) -> npt.NDArray[np.float64]:
        r"""added dead load [psf]."""

    @property
    def weight_kpa(self) -> npt.NDArray[np.float64]:
        r"""added dead load [kPa]."""

    @property
    def next(self) -> npt.NDArray[Any]:
        r"""what follows."""
