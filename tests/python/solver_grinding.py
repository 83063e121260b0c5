"""Concrete and grinding by NumPy: where a floor would be thinner than its least thickness the old slab is ground off.

concrete = integral of max(t, least), ground = integral of max(least - t, 0) over the work, t = floor - old slab, which is linear over a
triangle: the integral of its positive part has a closed form by the number of corners above (a pyramid's volume, Euclid XII 7).
"""

from __future__ import annotations

import numpy as np

from solver_program import Program
from surface_jobs import Floats, signed_areas


class Ground:
    """The old slab under the facets as triangles, each with its rows of the unknowns."""

    def __init__(self, program: Program, least: float, price: float) -> None:
        fans = []
        for facet, pieces in enumerate(program.pieces):
            for part, _ in pieces:
                fans += [(facet, np.array([part[0], b, c])) for b, c in zip(part[1:], part[2:])]
        self.corners = np.array([corners for _, corners in fans])
        self.areas = signed_areas(self.corners)
        self.rows = np.array([program.row(facet, corners[:, :2]) for facet, corners in fans])
        self.old = self.corners[:, :, 2] - program.datum
        self.least, self.price, self.program = least, price, program

    def volumes(self, u: Floats) -> tuple[float, float]:
        """Concrete and what is ground off."""
        over, _ = self.positive(self.rows @ u - self.old - self.least)
        under, _ = self.positive(self.least - self.rows @ u + self.old)
        return float(self.areas.sum() * self.least + over.sum()), float(under.sum())

    def cost(self, u: Floats) -> float:
        """Both at their prices, in volume of concrete."""
        concrete, ground = self.volumes(u)
        return concrete + self.price * ground

    def slope(self, u: Floats) -> Floats:
        """The gradient of the cost."""
        t = self.rows @ u - self.old - self.least
        _, over = self.positive(t)
        _, under = self.positive(-t)
        return np.einsum("nc,ncw->w", over - self.price * under, self.rows)

    def positive(self, t: Floats) -> tuple[Floats, Floats]:
        """Over each triangle the integral of the positive part, and its derivatives by the heights of the corners."""
        order = np.argsort(-t, axis=1)
        high, middle, low = np.take_along_axis(t, order, axis=1).T
        volume, by = np.zeros(len(t)), np.zeros(t.shape)
        whole = low >= 0.0
        volume[whole], by[whole] = (self.areas * t.mean(axis=1))[whole], (self.areas / 3.0)[whole, None]
        one = (high > 0.0) & (middle <= 0.0)
        a = high[one] / (high[one] - middle[one])
        b = high[one] / (high[one] - low[one])
        volume[one] = self.areas[one] * a * b * high[one] / 3.0
        # A linear form's integral over the small triangle: its mean there times the area.
        by[one] = (self.areas[one] * a * b)[:, None] * np.c_[1.0 - (a + b) / 3.0, a / 3.0, b / 3.0]
        two = (middle > 0.0) & (low < 0.0)
        a = low[two] / (low[two] - middle[two])
        b = low[two] / (low[two] - high[two])
        volume[two] = self.areas[two] * (t[two].mean(axis=1) - a * b * low[two] / 3.0)
        by[two] = self.areas[two, None] / 3.0 - (self.areas[two] * a * b)[:, None] * np.c_[b / 3.0, a / 3.0, 1.0 - (a + b) / 3.0]
        unsorted = np.empty_like(by)
        np.put_along_axis(unsorted, order, by, axis=1)
        return volume, unsorted
