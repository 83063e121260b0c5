"""Kelvin functions behind `load_influence` against scipy.special: outside its circle a load acts as a point load times a real and an imaginary share."""

from __future__ import annotations

import numpy as np
from scipy import special

from overslab import overlay

NU = 0.15


def wanted(x: np.ndarray, c: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Deflection and moments outside a circle of radius c, in Kelvin functions; the mean over the circle by ber' and bei'."""
    # 2 I1(z) / z at z = c exp(i pi / 4): I0'(z) in Kelvin functions of the first kind.
    ray = np.exp(0.25j * np.pi)
    spread = 2 * (special.berp(c) + 1j * special.beip(c)) / ray / (c * ray)
    mean = (special.ker(x) + 1j * special.kei(x)) * spread
    slope = (special.kerp(x) + 1j * special.keip(x)) * spread / x
    half = 0.5 / np.pi
    radial = half * (mean.real - (1 - NU) * slope.imag)
    return -half * mean.imag, radial, half * (NU * mean.real + (1 - NU) * slope.imag)


def test_outside_a_small_and_a_wide_contact() -> None:
    for c in (0.01, 0.3, 1.0, 2.0):
        x = np.concatenate([np.linspace(max(c, 0.02), 2.5, 400), np.linspace(2.5, 25.0, 400)])
        found = overlay.load_influence(distance=50 * x, radius=50 * c, stiffness=50.0, poisson=NU, units="us")
        ours = (found.deflection_ratio, found.radial_ratio, found.tangential_ratio)
        for mine, theirs in zip(ours, wanted(x, c), strict=True):
            assert np.max(np.abs(mine - theirs)) < 1e-10
            assert np.allclose(mine, theirs, rtol=1e-8, atol=1e-13)


def test_under_a_contact_the_mean_of_point_loads() -> None:
    """Inside the circle: the exact average over rings, summed by quadrature of the point solution."""
    c = 0.7
    radii, weights = np.polynomial.legendre.leggauss(400)
    angles = np.linspace(0, 2 * np.pi, 2001)[:-1] + 1e-3
    r = 0.5 * c * (radii + 1)
    for x in (0.0, 0.3, 0.6):
        away = np.hypot(x - r[:, None] * np.cos(angles), r[:, None] * np.sin(angles))
        mean = np.sum(weights[:, None] * 0.5 * c * r[:, None] * special.kei(away)) * (2 * np.pi / angles.size) / (np.pi * c**2)
        found = overlay.load_influence(distance=50 * x, radius=50 * c, stiffness=50.0, poisson=NU, units="us")
        assert abs(found.deflection_ratio + mean / (2 * np.pi)) < 1e-7
