"""Volumes and areas of a thickness that is linear over triangles, in two ways that share no formula with the engine."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple

import numpy as np
import numpy.typing as npt
import shapely
from shapely.geometry import Polygon

Corner = tuple[Fraction, Fraction, Fraction]


class Split(NamedTuple):
    """What lies above and below the place of no thickness."""

    fill: float
    high: float
    above: float
    """The area where the thickness is positive."""


def cut_by_shapely(corners: npt.NDArray[np.float64]) -> Split:
    """Triangles of x, y, thickness, cut by Shapely at the line where the thickness is zero; each part by its centroid."""
    fill = high = above = 0.0
    for triangle in corners:
        xy, t = triangle[:, :2], triangle[:, 2]
        whole = Polygon(xy)
        if t.min() >= 0.0:
            fill, above = fill + whole.area * t.mean(), above + whole.area
        elif t.max() <= 0.0:
            high -= whole.area * t.mean()
        else:
            gradient = np.linalg.solve(np.c_[xy, np.ones(3)], t)
            positive = whole.intersection(half_plane(xy.mean(axis=0), gradient, 2.0 * whole.length))
            negative = whole.area - positive.area
            part = positive.area * value(gradient, positive)
            fill, above = fill + part, above + positive.area
            high += part - whole.area * t.mean() if negative > 0.0 else 0.0
    return Split(fill, high, above)


def value(gradient: npt.NDArray[np.float64], part: shapely.Geometry) -> float:
    """A linear function at the centroid of a part: its mean over it."""
    if part.is_empty or part.area == 0.0:
        return 0.0
    x, y = part.centroid.coords[0]
    return float(gradient @ [x, y, 1.0])


def half_plane(middle: npt.NDArray[np.float64], gradient: npt.NDArray[np.float64], reach: float) -> Polygon:
    """A square as large as needed where a linear function is positive near a place."""
    steepest = float(np.hypot(*gradient[:2]))
    up = gradient[:2] / steepest
    side = np.array([-up[1], up[0]])
    start = middle - up * (gradient @ [*middle, 1.0]) / steepest
    ring = [start - reach * side, start + reach * side, start + reach * (side + up), start - reach * (side - up)]
    return Polygon(ring)


def cut_exactly(triangles: list[list[Corner]]) -> tuple[Fraction, Fraction, Fraction]:
    """Fill, high and the area above, in exact fractions: triangles of x, y, thickness, clipped as polygons."""
    fill = high = above = Fraction(0)
    for triangle in triangles:
        volume, area = integral(kept(triangle))
        fill, above = fill + volume, above + area
        high += integral(kept([(x, y, -t) for x, y, t in triangle]))[0]
    return fill, high, above


def kept(polygon: list[Corner]) -> list[Corner]:
    """The part of a polygon whose third coordinate is not negative."""
    part: list[Corner] = []
    for here, after in zip(polygon, polygon[1:] + polygon[:1]):
        if here[2] >= 0:
            part.append(here)
        if here[2] * after[2] < 0:
            share = here[2] / (here[2] - after[2])
            part.append(tuple(a + share * (b - a) for a, b in zip(here, after)))  # type: ignore[arg-type]
    return part


def integral(polygon: list[Corner]) -> tuple[Fraction, Fraction]:
    """The integral of the third coordinate over a convex polygon, counter-clockwise, and its area."""
    volume = area = Fraction(0)
    for b, c in zip(polygon[1:], polygon[2:]):
        a = polygon[0]
        part = ((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1])) / 2
        volume, area = volume + part * (a[2] + b[2] + c[2]) / 3, area + part
    return volume, area
