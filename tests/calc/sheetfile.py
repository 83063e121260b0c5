"""Spreadsheet files on disk: read csv and xlsx back, falsify the results stored in an .ods, and build one
from a description."""

import csv
import re
import xml.dom.minidom
import xml.etree.ElementTree as ElementTree
import zipfile
from pathlib import Path

_MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
_CELL_NODES = ("table:table-cell", "table:covered-table-cell")
_RELATION = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"


def read_csv(path):
    """The rows of a csv as written by `convert`: texts, as they stand."""
    with Path(path).open(encoding="utf-8", newline="") as source:
        return list(csv.reader(source))


def read_xlsx(path, sheet=1):
    """The stored results of one sheet of an .xlsx, by cell name: float, str or bool; an error is the text the
    file holds for it, as in "#VALUE!". Sheets are counted from 1. Numbers have the digits the file has (up to
    17, LibreOffice writes 15), so they are not bit-exact."""
    with zipfile.ZipFile(path) as archive:
        shared = _shared_strings(archive)
        root = ElementTree.fromstring(archive.read(_sheet_file(archive, sheet)))
    return {cell.get("r"): _xlsx_result(cell, shared) for cell in root.iter(_MAIN + "c") if len(cell)}


def _sheet_file(archive, sheet):
    book = ElementTree.fromstring(archive.read("xl/workbook.xml"))
    wanted = list(book.iter(_MAIN + "sheet"))[sheet - 1].get(_RELATION)
    relations = ElementTree.fromstring(archive.read("xl/_rels/workbook.xml.rels"))
    return "xl/" + next(r.get("Target") for r in relations if r.get("Id") == wanted)


def _shared_strings(archive):
    if "xl/sharedStrings.xml" not in archive.namelist():
        return []
    root = ElementTree.fromstring(archive.read("xl/sharedStrings.xml"))
    return ["".join(t.text or "" for t in entry.iter(_MAIN + "t")) for entry in root.iter(_MAIN + "si")]


def _xlsx_result(cell, shared):
    kind = cell.get("t", "n")
    if kind == "inlineStr":
        return "".join(t.text or "" for t in cell.iter(_MAIN + "t"))
    held = cell.find(_MAIN + "v")
    if held is None or held.text is None:
        return ""
    if kind == "s":
        return shared[int(held.text)]
    if kind == "b":
        return held.text == "1"
    return float(held.text) if kind == "n" else held.text


def poison_results(source, target, number=999.0):
    """Copies an .ods with every stored formula result replaced by `number`, and returns how many there were.
    A reader that shows that number has not recalculated."""
    with zipfile.ZipFile(source) as before, zipfile.ZipFile(target, "w") as after:
        for entry in before.infolist():
            content = before.read(entry)
            if entry.filename == "content.xml":
                content, count = _poison_content(content, number)
            after.writestr(entry, content)
    return count


def _poison_content(content, number):
    # minidom keeps the namespace declarations, which the formulas' own prefix needs; ElementTree drops them.
    document = xml.dom.minidom.parseString(content)
    count = 0
    for sheet in document.getElementsByTagName("table:table"):
        arrays = []
        for row, column, cell in _cells(sheet):
            if cell.hasAttribute("table:formula"):
                arrays.append(_array_area(row, column, cell))
            if any(row in rows and column in columns for rows, columns in arrays):
                _poison_cell(document, cell, number)
                count += 1
    return document.toxml(encoding="UTF-8"), count


def _cells(sheet):
    """Every cell that holds something, with its place. A cell written once for several like ones is split, so
    that each stands for itself; empty stretches stay as they are."""
    row = 0
    for row_node in list(sheet.getElementsByTagName("table:table-row")):
        column = 0
        for cell in [n for n in row_node.childNodes if n.nodeName in _CELL_NODES]:
            repeats = int(cell.getAttribute("table:number-columns-repeated") or 1)
            if cell.hasAttribute("office:value-type") or cell.hasAttribute("table:formula"):
                for offset, single in enumerate(_split(cell, repeats)):
                    yield row, column + offset, single
            column += repeats
        row += int(row_node.getAttribute("table:number-rows-repeated") or 1)


def _split(cell, repeats):
    if repeats == 1:
        return [cell]
    cell.removeAttribute("table:number-columns-repeated")
    copies = [cell.cloneNode(deep=True) for _ in range(repeats - 1)]
    for copy in copies:
        cell.parentNode.insertBefore(copy, cell)
    return [*copies, cell]


def _array_area(row, column, cell):
    """The rows and columns a formula fills: its own, or those of an array formula."""
    rows = int(cell.getAttribute("table:number-matrix-rows-spanned") or 1)
    columns = int(cell.getAttribute("table:number-matrix-columns-spanned") or 1)
    return range(row, row + rows), range(column, column + columns)


def _poison_cell(document, cell, number):
    for name in [n for n in cell.attributes.keys() if n.endswith((":value-type", ":string-value", ":boolean-value"))]:
        cell.removeAttribute(name)
    for child in list(cell.childNodes):
        cell.removeChild(child)
    cell.setAttribute("office:value-type", "float")
    cell.setAttribute("office:value", repr(number))
    shown = document.createElement("text:p")
    shown.appendChild(document.createTextNode(f"{number:g}"))
    cell.appendChild(shown)


def build_workbook(calc, sheets, path):
    """Builds a workbook in a running `Calc` and saves it. `sheets` maps a sheet's name to what
    `Calc.evaluate` takes: {"A1": 1.0, "B1": "=A1*2", "C1:C3": "=A1:A3", "E1": [[1, 2], [3, 4]]}. A formula that
    must not be wrong in the file shows up here: returns the results by "sheet.place"."""
    calc.clear()
    for index, name in enumerate(sheets):
        if not re.fullmatch(r"\w+", name):
            raise ValueError(f"a sheet's name is made of letters, digits and _ here: {name!r}")
        calc.rename_first_sheet(name) if index == 0 else calc.add_sheet(name)
    cells = {f"{name}.{place}": content for name, held in sheets.items() for place, content in held.items()}
    results = calc.evaluate(cells)
    calc.save(path)
    return results
