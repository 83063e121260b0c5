"""Files that general libraries write, read back: LAS and LAZ by laspy, E57 by pye57, PLY by plyfile and trimesh, CSV by the csv module,
XYZ by NumPy, LandXML by lxml after the element names of the published schema 1.2.

Coordinates agree to the last bit: with what was written, or, where the format keeps steps of a scale or 32 bits, with what the
library itself reads back. Two exceptions: turning by a quaternion (E57) differs by the order of the sums, a few last places; a number
of 32 bits written as text is read as the text says it, where the libraries round it again.
"""

from __future__ import annotations

import csv
import io
from pathlib import Path
from typing import Any

import laspy
import lxml.etree
import numpy as np
import plyfile
import pye57
import pytest
import trimesh

from overslab import OverslabError
from overslab.survey import read_points, read_surface

COUNT = 1000
FOOT = 0.3048
RANDOM = np.random.default_rng(20260105)
X = RANDOM.uniform(0.0, 12.0, COUNT)
Y = RANDOM.uniform(0.0, 9.0, COUNT)
Z = RANDOM.normal(0.3, 0.02, COUNT)
FACES = np.array([[0, 1, 2], [2, 1, 3]])


def table(record: Any) -> np.ndarray:
    """The points of a result in metres, one a row."""
    columns = record.points
    return np.column_stack([columns["x_m"], columns["y_m"], columns["elevation_m"]])


def counts(result: Any) -> dict[str, int]:
    """What was left out, by reason."""
    return dict(zip(result.left_out["reason"], result.left_out["count"], strict=True))


def corners(tin: Any) -> list[list[int]]:
    """The faces of a surface, their least corner as 0: in each file here that is its first point."""
    numbers = np.column_stack(list(tin.faces.values()))
    return (numbers - numbers.min()).tolist()


def same(found: np.ndarray, *axes: np.ndarray) -> None:
    """All coordinates agree to the last bit."""
    np.testing.assert_array_equal(found, np.column_stack(axes))


# LAS and LAZ


@pytest.mark.parametrize(
    ("version", "point_format", "ending"),
    [("1.2", 0, "las"), ("1.2", 3, "laz"), ("1.3", 1, "laz"), ("1.4", 6, "las"), ("1.4", 7, "laz"), ("1.4", 8, "laz")],
)
def test_las_of_laspy(tmp_path: Path, version: str, point_format: int, ending: str) -> None:
    header = laspy.LasHeader(point_format=point_format, version=version)
    header.scales = np.full(3, 0.0001)
    header.offsets = np.array([100.0, -50.0, 0.0])
    written = laspy.LasData(header)
    written.x, written.y, written.z = X + 100.0, Y - 50.0, Z
    written.classification = RANDOM.choice([1, 2, 7], COUNT)
    written.withheld = (RANDOM.uniform(size=COUNT) < 0.1).astype(np.uint8)
    path = tmp_path / f"scan.{ending}"
    written.write(str(path))
    back = laspy.read(path)
    kinds, withheld = np.asarray(back.classification), np.asarray(back.withheld) == 1
    x, y, z = np.asarray(back.x), np.asarray(back.y), np.asarray(back.z)

    result = read_points(path.read_bytes())
    assert (result.format, result.unit) == ("las", "m")
    kept = ~withheld & (kinds != 7)
    same(table(result.points), x[kept], y[kept], z[kept])
    assert counts(result) == {"withheld": int(withheld.sum()), "noise": int((~withheld & (kinds == 7)).sum())}

    ground = kept & (kinds == 2)
    result = read_points(path.read_bytes(), ground_only="yes", unit="us_survey_ft")
    same(table(result.points), *(c[ground] * 1200.0 / 3937.0 for c in (x, y, z)))


def test_las_cut_short_is_refused(tmp_path: Path) -> None:
    for ending in ("las", "laz"):
        written = laspy.LasData(laspy.LasHeader(point_format=6, version="1.4"))
        written.x, written.y, written.z = X, Y, Z
        path = tmp_path / f"scan.{ending}"
        written.write(str(path))
        whole = path.read_bytes()
        assert read_points(whole).points.point_count == COUNT
        for end in RANDOM.integers(1, len(whole), 50):
            with pytest.raises(OverslabError):
                read_points(whole[: int(end)])


# E57


def test_e57_of_pye57(tmp_path: Path) -> None:
    path = tmp_path / "scans.e57"
    invalid = (RANDOM.uniform(size=COUNT) < 0.1).astype(np.int8)
    rotation = np.array([0.9, 0.1, -0.2, 0.3])
    rotation /= np.linalg.norm(rotation)
    file = pye57.E57(str(path), mode="w")
    scan = {"cartesianX": X, "cartesianY": Y, "cartesianZ": Z}
    file.write_scan_raw(scan)
    file.write_scan_raw({**scan, "cartesianInvalidState": invalid}, rotation=rotation, translation=np.array([5.0, 6.0, 7.0]))
    file.close()
    file = pye57.E57(str(path))
    scans = [file.read_scan(place, ignore_missing_fields=True, transform=True) for place in range(2)]
    file.close()

    result = read_points(path.read_bytes())
    assert (result.format, result.unit) == ("e57", "m")
    found = table(result.points)
    same(found[:COUNT], *(scans[0][f"cartesian{axis}"] for axis in "XYZ"))
    turned = np.column_stack([scans[1][f"cartesian{axis}"] for axis in "XYZ"])
    np.testing.assert_allclose(found[COUNT:], turned, rtol=0.0, atol=1e-14)
    assert counts(result) == {"invalid": int(invalid.sum())}


# PLY


@pytest.mark.parametrize(("text", "order"), [(True, "="), (False, "<"), (False, ">")])
def test_ply_of_plyfile(text: bool, order: str) -> None:
    vertices = np.zeros(COUNT, dtype=[("nx", "f4"), ("x", "f8"), ("y", "f8"), ("z", "f4"), ("red", "u1")])
    vertices["x"], vertices["y"], vertices["z"] = X, Y, Z
    faces = np.zeros(len(FACES), dtype=[("vertex_indices", "i4", (3,)), ("quality", "f4")])
    faces["vertex_indices"] = FACES
    elements = [plyfile.PlyElement.describe(vertices, "vertex"), plyfile.PlyElement.describe(faces, "face")]
    stream = io.BytesIO()
    plyfile.PlyData(elements, text=text, byte_order=order).write(stream)
    back = plyfile.PlyData.read(io.BytesIO(stream.getvalue()))["vertex"]
    result = read_surface(stream.getvalue(), unit="m")
    # A float of 32 bits is written as its shortest text, which read as 64 bits is another number.
    z = back["z"].astype(float)
    found = table(result.tin)
    same(found[:, :2], back["x"], back["y"])
    np.testing.assert_allclose(found[:, 2], z, rtol=6e-8 if text else 0.0)
    assert corners(result.tin) == FACES.tolist()


def test_ply_of_trimesh() -> None:
    mesh = trimesh.creation.icosphere(subdivisions=2)
    for encoding in ("ascii", "binary"):
        data = mesh.export(file_type="ply", encoding=encoding)
        data = data.encode() if isinstance(data, str) else data
        back = trimesh.load(io.BytesIO(data), file_type="ply", process=False)
        result = read_surface(data, unit="ft")
        # As text, the file keeps eight decimals, and the library rounds them to 32 bits.
        tolerance = 6e-8 if encoding == "ascii" else 0.0
        np.testing.assert_allclose(table(result.tin), back.vertices * FOOT, rtol=tolerance)
        assert corners(result.tin) == back.faces.tolist()


# CSV and XYZ


def test_csv_of_the_csv_module() -> None:
    for delimiter in ",;\t":
        for quoting in (csv.QUOTE_ALL, csv.QUOTE_MINIMAL):
            stream = io.StringIO(newline="")
            writer = csv.writer(stream, delimiter=delimiter, quoting=quoting)
            writer.writerow(["Point", "Northing (ft)", "Easting (ft)", "Elevation (in)"])
            rows = zip(X.tolist(), Y.tolist(), Z.tolist(), strict=True)
            writer.writerows([f"P, {place}", y, x, z] for place, (x, y, z) in enumerate(rows))
            result = read_points(stream.getvalue().encode())
            assert (result.format, result.unit) == ("csv", None)
            same(table(result.points), X * FOOT, Y * FOOT, Z * 0.0254)
            assert list(result.points.points["name"]) == [f"P, {place}" for place in range(COUNT)]


def test_tables_of_numpy() -> None:
    points = np.column_stack([X, Y, Z])
    for unit, factor in (("m", 1.0), ("in", 0.0254)):
        stream = io.StringIO()
        np.savetxt(stream, points, fmt="%.17g")
        result = read_points(stream.getvalue().encode(), unit=unit)
        assert result.format == "xyz"
        same(table(result.points), *(points * factor).T)
        stream = io.StringIO()
        np.savetxt(stream, points, fmt="%.17g", delimiter=",", header=f"x [{unit}],y [{unit}],z [{unit}]", comments="")
        result = read_points(stream.getvalue().encode())
        assert (result.format, result.unit) == ("csv", unit)
        same(table(result.points), *(points * factor).T)


# LandXML


def land_xml(version: str, units: dict[str, str], system: str, surfaces: list[str]) -> bytes:
    """Points of a survey and surfaces over them, as the schema names their elements."""
    space = f"http://www.landxml.org/schema/LandXML-{version}"

    def add(parent: Any, kind: str, text: str | None = None, **attributes: str) -> Any:
        element = lxml.etree.SubElement(parent, f"{{{space}}}{kind}", **attributes)
        element.text = text
        return element

    root = lxml.etree.Element(f"{{{space}}}LandXML", nsmap={None: space}, version=version, date="2026-01-05", time="08:00:00")
    add(add(root, "Units"), system, **units)
    places = [f"{y!r} {x!r} {z!r}" for x, y, z in zip(X.tolist(), Y.tolist(), Z.tolist(), strict=True)]
    group = add(root, "CgPoints")
    for place, text in enumerate(places):
        add(group, "CgPoint", text, name=f"A&{place}")
    group = add(root, "Surfaces")
    for name in surfaces:
        definition = add(add(group, "Surface", name=name), "Definition", surfType="TIN")
        points, faces = add(definition, "Pnts"), add(definition, "Faces")
        for place, text in enumerate(places):
            add(points, "P", text, id=str(3 * place + 1))
        for face in FACES.tolist():
            add(faces, "F", " ".join(str(3 * corner + 1) for corner in face))
        add(faces, "F", "1 4 7", i="1")
    return lxml.etree.tostring(root, xml_declaration=True, encoding="UTF-8", pretty_print=True)


@pytest.mark.parametrize(
    ("version", "system", "unit", "word", "factor"),
    [
        ("1.2", "Imperial", "USSurveyFoot", "us_survey_ft", None),
        ("1.1", "Imperial", "foot", "ft", FOOT),
        ("1.0", "Metric", "meter", "m", 1.0),
    ],
)
def test_land_xml_of_lxml(version: str, system: str, unit: str, word: str, factor: float | None) -> None:
    data = land_xml(version, {"linearUnit": unit}, system, ["old slab"])
    axes = [c * 1200.0 / 3937.0 if factor is None else c * factor for c in (X, Y, Z)]
    result = read_points(data)
    assert (result.format, result.unit) == ("landxml", word)
    same(table(result.points), *axes)
    assert result.points.points["name"][7] == "A&7"
    surface = read_surface(data, surface="old slab")
    same(table(surface.tin), *axes)
    assert corners(surface.tin) == FACES.tolist()


def test_land_xml_that_needs_a_word() -> None:
    data = land_xml("1.2", {"linearUnit": "foot"}, "Imperial", ["old slab", "lawn"])
    with pytest.raises(OverslabError) as caught:
        read_surface(data)
    assert caught.value.name == "SURFACE_UNCLEAR"
    assert read_surface(data, surface="lawn").unit == "ft"
    for system, unit in (("Metric", "foot"), ("Imperial", "meter")):
        wrong = land_xml("1.2", {"linearUnit": unit}, system, ["lawn"])
        with pytest.raises(OverslabError) as caught:
            read_points(wrong)
        assert caught.value.name == "CONTRADICTION"
        assert read_points(wrong, unit="ft", overrule="yes").unit == "ft"
