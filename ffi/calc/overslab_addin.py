"""The Calc add-in: cells go to the library as they are, its answer comes back as cells.

Made from the table of operations; do not edit. All computing, reading of texts and checking is done by the library, which
lies beside this file in `lib`; it is found by this file's own place and by nothing else.

A value function raises where the library refuses, so that the cell is an error and every total that uses it too; the
function of the same name with _WHY gives the reason as text.
"""

import ctypes
import json
import os
import struct
import sys
import urllib.parse
import urllib.request

import unohelper
from com.sun.star.lang import IllegalArgumentException, XServiceInfo
from com.sun.star.uno import RuntimeException
from org.overslab.calc import XOverslab

IMPLEMENTATION = "org.overslab.calc.Functions"
SERVICES = ("com.sun.star.sheet.AddIn",)
ABI = 0
LIBRARIES = {"win32": "overslab-0.dll", "darwin": "liboverslab.0.dylib"}
LIBRARY = LIBRARIES.get(sys.platform, "liboverslab.so.0")

# The first part of the methods' names, and the operation.
OPERATIONS = (
    ("ovsFall", "fall"),
    ("ovsDrop", "drop"),
    ("ovsTriangularPrism", "triangular_prism"),
    ("ovsPrismoid", "prismoid"),
    ("ovsTrucks", "trucks"),
    ("ovsOrder", "order"),
    ("ovsRodElevation", "rod_elevation"),
    ("ovsLevelBook", "level_book"),
    ("ovsOutlineFromCorners", "outline_from_corners"),
    ("ovsOutlineFromSides", "outline_from_sides"),
    ("ovsSurveyFromShots", "survey_from_shots"),
    ("ovsSurveyFromGrid", "survey_from_grid"),
    ("ovsSurveyFromRods", "survey_from_rods"),
    ("ovsFinishLevel", "finish_level"),
    ("ovsFinishFromPoints", "finish_from_points"),
    ("ovsFinishToEdge", "finish_to_edge"),
    ("ovsFinishAtLeast", "finish_at_least"),
    ("ovsThickness", "thickness"),
    ("ovsJobFromText", "job_from_text"),
    ("ovsReport", "report"),
    ("ovsBlock", "block"),
    ("ovsSurveyTriangles", "survey_triangles"),
    ("ovsSurveySuspects", "survey_suspects"),
    ("ovsSurveyWithout", "survey_without"),
    ("ovsSurveyCoverage", "survey_coverage"),
    ("ovsTwoPegTest", "two_peg_test"),
    ("ovsBenchmarkRecheck", "benchmark_recheck"),
    ("ovsSecondLook", "second_look"),
    ("ovsPointsFromTable", "points_from_table"),
    ("ovsReadPoints", "read_points"),
    ("ovsReadSurface", "read_surface"),
    ("ovsSurveyFromPoints", "survey_from_points"),
    ("ovsFinishFromFacets", "finish_from_facets"),
    ("ovsFinishFromPlanes", "finish_from_planes"),
    ("ovsFinishToValley", "finish_to_valley"),
    ("ovsFinishCrown", "finish_crown"),
    ("ovsFinishToTrench", "finish_to_trench"),
    ("ovsFinishToDrain", "finish_to_drain"),
    ("ovsFinishWithStrip", "finish_with_strip"),
    ("ovsFinishRaised", "finish_raised"),
    ("ovsFinishFacets", "finish_facets"),
    ("ovsSurveyFromFaces", "survey_from_faces"),
    ("ovsPointsToAxes", "points_to_axes"),
    ("ovsPointsAlongWall", "points_along_wall"),
    ("ovsPartStrays", "part_strays"),
    ("ovsThinPoints", "thin_points"),
    ("ovsStandingWater", "standing_water"),
    ("ovsFinishStandingWater", "finish_standing_water"),
    ("ovsGrindHighSpots", "grind_high_spots"),
    ("ovsFillLowSpots", "fill_low_spots"),
    ("ovsFillPonds", "fill_ponds"),
    ("ovsThicknessAreas", "thickness_areas"),
    ("ovsThicknessContours", "thickness_contours"),
    ("ovsSurveyContours", "survey_contours"),
    ("ovsFinishContours", "finish_contours"),
    ("ovsThicknessBands", "thickness_bands"),
    ("ovsThicknessHistogram", "thickness_histogram"),
    ("ovsThicknessZones", "thickness_zones"),
    ("ovsSection", "section"),
    ("ovsSurveyFromTin", "survey_from_tin"),
    ("ovsThinZones", "thin_zones"),
    ("ovsDrainPlace", "drain_place"),
    ("ovsFinishSolved", "finish_solved"),
    ("ovsFinishConflicts", "finish_conflicts"),
    ("ovsFinishSweep", "finish_sweep"),
    ("ovsConditionFactor", "condition_factor"),
    ("ovsOverlayMinimum", "overlay_minimum"),
    ("ovsSurfaceProfile", "surface_profile"),
    ("ovsPullOff", "pull_off"),
    ("ovsOverlayRequired", "overlay_required"),
    ("ovsSlabEquivalent", "slab_equivalent"),
    ("ovsOverlayEffectiveBonded", "overlay_effective_bonded"),
    ("ovsOverlayEffectiveUnbonded", "overlay_effective_unbonded"),
    ("ovsConcreteModulus", "concrete_modulus"),
    ("ovsConcreteModulusByDensity", "concrete_modulus_by_density"),
    ("ovsConcreteRupture", "concrete_rupture"),
    ("ovsSubgradeFromBearingRatio", "subgrade_from_bearing_ratio"),
    ("ovsSubgradeFromResilient", "subgrade_from_resilient"),
    ("ovsSubgradeFromSoil", "subgrade_from_soil"),
    ("ovsSubgradeWithSubbase", "subgrade_with_subbase"),
    ("ovsStiffnessRadius", "stiffness_radius"),
    ("ovsContactRadius", "contact_radius"),
    ("ovsContactRadiusDual", "contact_radius_dual"),
    ("ovsEquivalentRadius", "equivalent_radius"),
    ("ovsInteriorLoad", "interior_load"),
    ("ovsEdgeLoad", "edge_load"),
    ("ovsEdgeLoad1926", "edge_load_1926"),
    ("ovsCornerLoad", "corner_load"),
    ("ovsCornerCrack", "corner_crack"),
    ("ovsLoadInfluence", "load_influence"),
    ("ovsUsualLoad", "usual_load"),
    ("ovsSlabStress", "slab_stress"),
    ("ovsSafetyFactors", "safety_factors"),
    ("ovsAllowableStress", "allowable_stress"),
    ("ovsAllowableLoad", "allowable_load"),
    ("ovsRepetitionsAllowed", "repetitions_allowed"),
    ("ovsThicknessNeeded", "thickness_needed"),
    ("ovsUniformLoad", "uniform_load"),
    ("ovsWallLoad", "wall_load"),
    ("ovsCurlingCoefficient", "curling_coefficient"),
    ("ovsCurlingStress", "curling_stress"),
    ("ovsTwoLayers", "two_layers"),
    ("ovsAddedWeight", "added_weight"),
    ("ovsFlatnessLine", "flatness_line"),
    ("ovsFlatness", "flatness"),
    ("ovsFlatnessCombined", "flatness_combined"),
    ("ovsStraightedge", "straightedge"),
    ("ovsAsBuilt", "as_built"),
    ("ovsMarks", "marks"),
    ("ovsMorningCheck", "morning_check"),
    ("ovsCondition", "condition"),
    ("ovsConditionQuick", "condition_quick"),
    ("ovsTearOut", "tear_out"),
    ("ovsDrainage", "drainage"),
    ("ovsPuddleFall", "puddle_fall"),
    ("ovsPuddleDepth", "puddle_depth"),
    ("ovsRunoff", "runoff"),
    ("ovsApproach", "approach"),
    ("ovsCrestClearance", "crest_clearance"),
    ("ovsSagBreak", "sag_break"),
    ("ovsClearances", "clearances"),
    ("ovsEdgeKey", "edge_key"),
    ("ovsKeyCuts", "key_cuts"),
    ("ovsMoistureTests", "moisture_tests"),
    ("ovsMoistureVerdict", "moisture_verdict"),
    ("ovsDryingTime", "drying_time"),
    ("ovsDryingTimeByWater", "drying_time_by_water"),
    ("ovsVapourEmission", "vapour_emission"),
)
SYSTEMS = ("us", "si")

# The number that Calc shows as Err:502, the same error as for a refused call: its code in a NaN.
REFUSED = struct.unpack("<d", struct.pack("<Q", 0x7FF8000000000000 | 502))[0]

ROOM = 16384
_loaded = None


class Unusable(Exception):
    """The library cannot be used; the message is one line and names the file."""


def _folder():
    place = __file__
    if place.startswith("file:"):
        place = urllib.request.url2pathname(urllib.parse.urlparse(place).path)
    return os.path.dirname(os.path.abspath(place))


def _library():
    global _loaded
    if _loaded is None:
        _loaded = _load(os.path.join(_folder(), "lib", LIBRARY))
    return _loaded


def _load(path):
    if not os.path.isfile(path):
        raise Unusable(f"OVERSLAB: {path} is missing: install the add-in anew")
    try:
        library = ctypes.CDLL(path)
        abi = library.ovs_abi_version()
        library.ovs_sheet.argtypes = [ctypes.c_char_p, ctypes.c_int, ctypes.c_char_p, ctypes.c_int, ctypes.c_void_p]
    except (OSError, AttributeError) as error:
        raise Unusable(f"OVERSLAB: {path} cannot be used: {' '.join(str(error).split())}") from None
    if abi != ABI:
        raise Unusable(f"OVERSLAB: {path} has ABI {abi}, this add-in needs {ABI}: install both from one package")
    return library


def _version():
    text = ctypes.create_string_buffer(64)
    _library().ovs_version(text, len(text))
    return text.value.decode("utf-8")


def _ask(request):
    """One call of the library; it keeps nothing between calls."""
    library = _library()
    text = json.dumps(request).encode("ascii")
    room = ROOM
    while True:
        answer = ctypes.create_string_buffer(room)
        needed = ctypes.c_int(0)
        status = library.ovs_sheet(text, len(text), answer, room, ctypes.byref(needed))
        if needed.value <= room:
            break
        room = needed.value
    if not answer.value:
        raise Unusable(f"OVERSLAB: {LIBRARY} gives the status {status} and no answer: report this fault")
    return json.loads(answer.value.decode("utf-8"))


def _call(component, operation, system, want, arguments):
    """The body of every function."""
    request = {"operation": operation, "system": system, "want": want}
    if want == "get":
        request["result"], arguments = _word(arguments[0]), arguments[1:]
    request["arguments"] = _given(arguments)
    try:
        answer = _ask(request)
    except Unusable as unusable:
        if want == "why":
            return ((str(unusable),),)
        raise RuntimeException(str(unusable), component) from None
    if "cells" in answer:
        return tuple(tuple(_cell(cell) for cell in row) for row in answer["cells"])
    sentence = answer["failure"]["sentence"]
    if want == "why":
        return ((sentence,),)
    raise IllegalArgumentException(sentence, component, 0)


def _given(arguments):
    """The arguments but for those left out at the end. A lone empty cell arrives as 0.0, in a range as an empty text."""
    given = list(arguments)
    while given and given[-1] is None:
        given.pop()
    return given


def _word(argument):
    """The name of a result: a text, perhaps as the only cell of a range."""
    while isinstance(argument, tuple) and len(argument) == 1:
        argument = argument[0]
    return argument if isinstance(argument, str) else ""


def _cell(cell):
    """A cell of an answer. Nothing must not become a zero, so an empty one is an empty text."""
    if cell is None:
        return ""
    if isinstance(cell, dict):
        return REFUSED
    return cell if isinstance(cell, str) else float(cell)


class Functions(unohelper.Base, XOverslab, XServiceInfo):
    """All functions of the add-in."""

    def __init__(self, context):
        pass

    def ovsVersion(self):
        try:
            return ((_version(),),)
        except Unusable as unusable:
            return ((str(unusable),),)

    def getImplementationName(self):
        return IMPLEMENTATION

    def supportsService(self, name):
        return name in SERVICES

    def getSupportedServiceNames(self):
        return SERVICES


def _method(operation, system, want):
    def method(self, *arguments):
        return _call(self, operation, system, want, arguments)

    return method


for _stem, _operation in OPERATIONS:
    for _system in SYSTEMS:
        for _want in ("value", "why", "get"):
            _end = "" if _want == "value" else _want.capitalize()
            setattr(Functions, _stem + _system.capitalize() + _end, _method(_operation, _system, _want))

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Functions, IMPLEMENTATION, SERVICES)
