"""Shots predicted by their neighbours, against NumPy and SciPy; the coverage, against Shapely and SciPy's Voronoi cells.

The predictor is made again from its equations: neighbours by SciPy's tree, covariances and weights by NumPy's solver, the plane of
least squares without the shot by NumPy's `lstsq` once per shot. Floors are tens of metres wide at heights within a metre; the
covariances hold a level of 1e4 beside ones, so weights are good to about 1e-12 and residuals of a metre to 1e-11.
"""

from __future__ import annotations

import numpy as np
import numpy.typing as npt
import pytest
import scipy.spatial
import shapely

import overslab
from overslab.survey import survey_coverage, survey_from_shots, survey_suspects

Floats = npt.NDArray[np.float64]

INCH = 0.0254
FOOT = 0.3048
REACH = 10 * FOOT
LEVEL = 1e4
WAVES = [(0.05, 0.0), (0.5, 0.0), (3.0, 0.0), (15.0, 0.0), (0.5, 1e3)]
WORDS = float(np.hypot(INCH / 8, INCH / 8))
"""A laser on a broomed floor."""


def floor(seed: int) -> tuple[Floats, Floats]:
    """Places and heights of an invented floor, with one to three slips."""
    rng = np.random.default_rng(seed)
    columns, rows = rng.integers(4, 8, 2)
    places = np.array([(x + rng.uniform(0.2, 0.8), y + rng.uniform(0.2, 0.8)) for x in range(columns) for y in range(rows)])
    places *= rng.uniform(4, 8, 2) * FOOT
    heights = places @ rng.uniform(-0.02, 0.02, 2) + rng.normal(0, WORDS, len(places))
    heights -= rng.uniform(0, 1.5) * INCH * np.exp(-np.hypot(*places.T) / (8 * FOOT))
    for place in rng.choice(len(places), rng.integers(1, 4), replace=False):
        heights[place] += rng.choice([-1, 1]) * rng.choice([INCH, 6 * INCH, 10 * INCH, FOOT])
    return places, heights


def survey(places: Floats, heights: Floats) -> overslab.Survey:
    """The floor as a survey, the outline a foot outside the shots."""
    low, high = places.min(axis=0) - FOOT, places.max(axis=0) + FOOT
    corners = [(low[0], low[1]), (high[0], low[1]), (high[0], high[1]), (low[0], high[1])]
    outline = overslab.Outline.from_dict({"corners": [{"x": f"{x!r} m", "y": f"{y!r} m"} for x, y in np.array(corners).tolist()]})
    shots = {"x": places[:, 0], "y": places[:, 1], "elevation": heights}
    return survey_from_shots(outline=outline, shots=shots, beyond_allowed="yes", units="si")


def shared(distance: Floats) -> Floats:
    """What two places share of the waves: Matern's function of order 3/2."""
    a = np.sqrt(3.0) * distance / REACH
    out: Floats = (1 + a) * np.exp(-a)
    return out


def predictions(places: Floats, heights: Floats, taken: npt.NDArray[np.bool_], waves: tuple[float, float]) -> tuple[Floats, Floats]:
    """Reading less prediction for every shot, and its variance over a reading's own."""
    waviness, tilt = waves
    _, near = scipy.spatial.cKDTree(places).query(places, k=13)
    off, variance = np.empty(len(places)), np.empty(len(places))
    for shot in range(len(places)):
        numbers = np.array([n for n in near[shot] if n != shot and taken[n]])
        others = taken.copy()
        others[shot] = False
        design = np.c_[np.ones(len(places)), places]
        plane = np.linalg.lstsq(design[others], heights[others], rcond=None)[0]
        over = heights - design @ plane
        seen = places[numbers] - places[shot]
        between = np.hypot(*(seen[:, None] - seen[None]).transpose(2, 0, 1))
        covariance = np.eye(len(numbers)) + waviness * shared(between) + LEVEL + tilt * seen @ seen.T / REACH**2
        right = waviness * shared(np.hypot(*seen.T)) + LEVEL
        weights = np.linalg.solve(covariance, right)
        off[shot] = over[shot] - weights @ over[numbers]
        arm = -(weights @ seen)
        middle = places[taken] - places[taken].mean(axis=0)
        inverse = np.linalg.inv(middle.T @ middle)
        at = places[shot] - places[taken].mean(axis=0)
        freedom = 1 - 1 / taken.sum() - at @ inverse @ at if taken[shot] else 1.0
        variance[shot] = 1 + waviness + LEVEL - weights @ right + (1 + waviness) * (arm @ inverse @ arm) / freedom
    return off, variance


def roughness(off: Floats, variance: Floats, taken: npt.NDArray[np.bool_]) -> tuple[float, float]:
    """The standard deviation that each reading has for itself, and the cost of the floor under it."""
    sizes = np.abs(off[taken]) / np.sqrt(variance[taken])
    count = len(sizes)
    own = float(np.sqrt((count * (1.4826 * np.median(sizes)) ** 2 + 8 * WORDS**2) / (count + 8)))
    deviations = sizes / own
    bent = np.where(deviations < 2.5, 0.5 * deviations**2, 3.125 + np.log1p(np.maximum(deviations - 2.5, 0)))
    cost = count * np.log(own) + 0.5 * np.log(variance[taken]).sum() + bent.sum() + 16 * np.log(own / WORDS) ** 2
    return own, float(cost)


@pytest.mark.parametrize("seed", range(60))
def test_predictions_without_the_shot(seed: int) -> None:
    places, heights = floor(seed)
    answer = survey_suspects(survey=survey(places, heights), rod="inches")
    table = answer.suspects
    numbers = [int(str(name).removeprefix("shot ")) - 1 for name in table["shot"]]
    taken = np.ones(len(places), dtype=bool)
    taken[numbers] = False
    tried = [predictions(places, heights, taken, waves) for waves in WAVES]
    judged = [roughness(off, variance, taken) for off, variance in tried]
    owns = np.array([own for own, _ in judged])
    # Which of the floors it is settled on is told by the roughness.
    chosen = int(np.argmin(np.abs(owns - answer.roughness_mm / 1000)))
    assert owns[chosen] == pytest.approx(answer.roughness_mm / 1000, rel=1e-9)
    off, variance = tried[chosen]
    assert np.asarray(table["off_mm"]) == pytest.approx(1000 * off[numbers], abs=1e-7)
    assert np.asarray(table["deviation_mm"]) == pytest.approx(1000 * owns[chosen] * np.sqrt(variance[numbers]), rel=1e-9)
    # And whoever is no suspect is within the limit, whoever is one beyond it.
    deviation = owns[chosen] * np.sqrt(variance)
    likelier = 0.5 * INCH + deviation**2 * np.log(5) / INCH
    limit = np.maximum(np.minimum(likelier, np.maximum(INCH, 4 * deviation)), 2 * deviation)
    assert np.array_equal(np.abs(off) <= limit, taken)


def test_the_floor_settled_on_is_the_likeliest() -> None:
    likeliest = 0
    for seed in range(60):
        places, heights = floor(seed)
        answer = survey_suspects(survey=survey(places, heights), rod="inches")
        taken = np.ones(len(places), dtype=bool)
        taken[[int(str(name).removeprefix("shot ")) - 1 for name in answer.suspects["shot"]]] = False
        judged = [roughness(*predictions(places, heights, taken, waves), taken) for waves in WAVES]
        own, _ = min(judged, key=lambda pair: pair[1])
        likeliest += bool(np.isclose(own, answer.roughness_mm / 1000, rtol=1e-9))
    # It is chosen anew at most three times, so now and then another remains.
    assert likeliest >= 57


@pytest.mark.parametrize("seed", range(40))
def test_coverage_against_shapely_and_voronoi(seed: int) -> None:
    rng = np.random.default_rng(seed)
    places = rng.uniform(0, [9, 7], (rng.integers(6, 40), 2))
    answer = survey_coverage(survey=survey(places, np.zeros(len(places))), near=1.2, most=0, units="si")
    low, high = places.min(axis=0) - FOOT, places.max(axis=0) + FOOT
    work = shapely.box(*low, *high)
    # A disc of 4 x 512 sides is smaller than the circle by 2 pi^2 / (3 x 2048^2) = 1.6e-6 of itself.
    discs = shapely.union_all([shapely.Point(place).buffer(1.2, quad_segs=512) for place in places])
    assert answer.uncovered_m2 == pytest.approx(work.difference(discs).area, abs=1e-4)
    tree = scipy.spatial.cKDTree(places)
    corners = [*scipy.spatial.Voronoi(places).vertices, *np.array(work.exterior.coords)]
    inside = [corner for corner in corners if work.covers(shapely.Point(corner))]
    assert answer.farthest_m >= tree.query(inside)[0].max() - 1e-9
    at = [answer.farthest_x_m, answer.farthest_y_m]
    assert work.buffer(1e-9).covers(shapely.Point(at))
    assert tree.query(at)[0] == pytest.approx(answer.farthest_m, abs=1e-9)
    edge = shapely.segmentize(work.exterior, 0.01)
    assert tree.query(np.array(edge.coords))[0].max() <= answer.farthest_m + 1e-9
