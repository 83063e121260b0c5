"""The native module behind the package: made from the table of operations; do not edit."""

from typing import Any, Final, TypeAlias

import numpy as np
import numpy.typing as npt

from overslab.failures import OverslabError
from overslab.results import AnswerResult as AnswerResult
from overslab.results import ArrayResult as ArrayResult
from overslab.results import Record as Record
from overslab.results import ScalarResult as ScalarResult
from overslab.typing import Row
from overslab.survey import Outline as Outline
from overslab.survey import Survey as Survey
from overslab.survey import Points as Points
from overslab.survey import Tin as Tin
from overslab.survey import rod_elevation as rod_elevation
from overslab.survey import RodElevation as RodElevation
from overslab.survey import RodElevationArray as RodElevationArray
from overslab.survey import level_book as level_book
from overslab.survey import LevelBook as LevelBook
from overslab.survey import outline_from_corners as outline_from_corners
from overslab.survey import outline_from_sides as outline_from_sides
from overslab.survey import survey_from_shots as survey_from_shots
from overslab.survey import survey_from_faces as survey_from_faces
from overslab.survey import survey_from_grid as survey_from_grid
from overslab.survey import survey_from_rods as survey_from_rods
from overslab.survey import survey_triangles as survey_triangles
from overslab.survey import SurveyTriangles as SurveyTriangles
from overslab.survey import survey_suspects as survey_suspects
from overslab.survey import SurveySuspects as SurveySuspects
from overslab.survey import survey_without as survey_without
from overslab.survey import survey_coverage as survey_coverage
from overslab.survey import SurveyCoverage as SurveyCoverage
from overslab.survey import two_peg_test as two_peg_test
from overslab.survey import TwoPegTest as TwoPegTest
from overslab.survey import benchmark_recheck as benchmark_recheck
from overslab.survey import BenchmarkRecheck as BenchmarkRecheck
from overslab.survey import points_from_table as points_from_table
from overslab.survey import read_points as read_points
from overslab.survey import ReadPoints as ReadPoints
from overslab.survey import read_surface as read_surface
from overslab.survey import ReadSurface as ReadSurface
from overslab.survey import points_to_axes as points_to_axes
from overslab.survey import PointsToAxes as PointsToAxes
from overslab.survey import points_along_wall as points_along_wall
from overslab.survey import PointsAlongWall as PointsAlongWall
from overslab.survey import part_strays as part_strays
from overslab.survey import PartStrays as PartStrays
from overslab.survey import thin_points as thin_points
from overslab.survey import ThinPoints as ThinPoints
from overslab.survey import survey_from_points as survey_from_points
from overslab.survey import survey_from_tin as survey_from_tin
from overslab.survey import standing_water as standing_water
from overslab.survey import StandingWater as StandingWater
from overslab.grade import Finish as Finish
from overslab.grade import fall as fall
from overslab.grade import Fall as Fall
from overslab.grade import FallArray as FallArray
from overslab.grade import drop as drop
from overslab.grade import Drop as Drop
from overslab.grade import DropArray as DropArray
from overslab.grade import triangular_prism as triangular_prism
from overslab.grade import TriangularPrism as TriangularPrism
from overslab.grade import TriangularPrismArray as TriangularPrismArray
from overslab.grade import finish_level as finish_level
from overslab.grade import finish_from_points as finish_from_points
from overslab.grade import finish_to_edge as finish_to_edge
from overslab.grade import finish_at_least as finish_at_least
from overslab.grade import finish_from_facets as finish_from_facets
from overslab.grade import finish_from_planes as finish_from_planes
from overslab.grade import finish_to_valley as finish_to_valley
from overslab.grade import finish_crown as finish_crown
from overslab.grade import finish_to_trench as finish_to_trench
from overslab.grade import finish_to_drain as finish_to_drain
from overslab.grade import finish_with_strip as finish_with_strip
from overslab.grade import finish_raised as finish_raised
from overslab.grade import FinishRaised as FinishRaised
from overslab.grade import finish_facets as finish_facets
from overslab.grade import FinishFacets as FinishFacets
from overslab.grade import finish_solved as finish_solved
from overslab.grade import FinishSolved as FinishSolved
from overslab.grade import finish_conflicts as finish_conflicts
from overslab.grade import FinishConflicts as FinishConflicts
from overslab.grade import finish_sweep as finish_sweep
from overslab.grade import FinishSweep as FinishSweep
from overslab.grade import thickness as thickness
from overslab.grade import Thickness as Thickness
from overslab.grade import second_look as second_look
from overslab.grade import SecondLook as SecondLook
from overslab.grade import finish_standing_water as finish_standing_water
from overslab.grade import FinishStandingWater as FinishStandingWater
from overslab.grade import grind_high_spots as grind_high_spots
from overslab.grade import GrindHighSpots as GrindHighSpots
from overslab.grade import fill_low_spots as fill_low_spots
from overslab.grade import FillLowSpots as FillLowSpots
from overslab.grade import fill_ponds as fill_ponds
from overslab.grade import FillPonds as FillPonds
from overslab.grade import thickness_areas as thickness_areas
from overslab.grade import ThicknessAreas as ThicknessAreas
from overslab.grade import thickness_contours as thickness_contours
from overslab.grade import ThicknessContours as ThicknessContours
from overslab.grade import survey_contours as survey_contours
from overslab.grade import SurveyContours as SurveyContours
from overslab.grade import finish_contours as finish_contours
from overslab.grade import FinishContours as FinishContours
from overslab.grade import thickness_bands as thickness_bands
from overslab.grade import ThicknessBands as ThicknessBands
from overslab.grade import thickness_histogram as thickness_histogram
from overslab.grade import ThicknessHistogram as ThicknessHistogram
from overslab.grade import thickness_zones as thickness_zones
from overslab.grade import ThicknessZones as ThicknessZones
from overslab.grade import thin_zones as thin_zones
from overslab.grade import ThinZones as ThinZones
from overslab.grade import section as section
from overslab.grade import Section as Section
from overslab.grade import drain_place as drain_place
from overslab.grade import DrainPlace as DrainPlace
from overslab.marks import marks as marks
from overslab.marks import Marks as Marks
from overslab.marks import morning_check as morning_check
from overslab.marks import MorningCheck as MorningCheck
from overslab.order import block as block
from overslab.order import Block as Block
from overslab.order import BlockArray as BlockArray
from overslab.order import prismoid as prismoid
from overslab.order import Prismoid as Prismoid
from overslab.order import PrismoidArray as PrismoidArray
from overslab.order import trucks as trucks
from overslab.order import Trucks as Trucks
from overslab.order import TrucksArray as TrucksArray
from overslab.order import order as order
from overslab.order import Order as Order
from overslab.asbuilt import flatness_line as flatness_line
from overslab.asbuilt import FlatnessLine as FlatnessLine
from overslab.asbuilt import flatness as flatness
from overslab.asbuilt import Flatness as Flatness
from overslab.asbuilt import flatness_combined as flatness_combined
from overslab.asbuilt import FlatnessCombined as FlatnessCombined
from overslab.asbuilt import straightedge as straightedge
from overslab.asbuilt import Straightedge as Straightedge
from overslab.asbuilt import as_built as as_built
from overslab.asbuilt import AsBuilt as AsBuilt
from overslab.job import Job as Job
from overslab.job import job_from_text as job_from_text
from overslab.job import report as report
from overslab.job import Report as Report

__version__: Final[str]
OPERATIONS: Final[dict[str, Row]]

_About: TypeAlias = tuple[list[tuple[int, str]], list[tuple[int, str]], list[int]]

def _restore_scalar(operation: str, kept: list[float], note: int | None) -> ScalarResult: ...
def _restore_array(
    operation: str,
    shape: list[int],
    kept: list[npt.NDArray[np.float64]],
    notes: list[int] | None,
    marks: tuple[bool, list[int], list[OverslabError]],
) -> ArrayResult: ...
def _restore_answer(operation: str, results: list[Any], about: _About) -> AnswerResult: ...
def _restore_record(record: str, json: str, origin: tuple[str, _About] | None) -> Record: ...
