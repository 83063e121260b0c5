"""Every operation of the table as a cell sees it: answers to the bit, refusals as errors with their reason, empty cells,
ranges, nested functions. The test-only add-in shows every kind of port."""

import time

import pytest
from harness import Calc
from library import ROOT, SYSTEMS, ask, rows_of

ADD_INS = {"overslab": ROOT / "build/overslab.oxt", "specimen": ROOT / "build/specimen.oxt"}


@pytest.fixture(scope="module", params=ADD_INS)
def add_in(request):
    """A running spreadsheet with one of the two add-ins, and the rows of the table that it holds."""
    assert ADD_INS[request.param].is_file(), f"{ADD_INS[request.param]} is missing: it is built by tests/run addin"
    with Calc(ADD_INS[request.param]) as calc:
        yield calc, rows_of(request.param)


@pytest.fixture
def shipped():
    with Calc(ADD_INS["overslab"]) as calc:
        yield calc


def letter(column):
    before = chr(ord("A") + column // 26 - 1) if column >= 26 else ""
    return before + chr(ord("A") + column % 26)


class Page:
    """Arguments laid out below one another on a fresh sheet; each formula in a column of its own beside them."""

    FORMULAS = 10

    def __init__(self, calc):
        calc.clear()
        self.calc, self.row, self.next = calc, 1, self.FORMULAS

    def argument(self, value):
        """Writes one argument and gives the reference to it; nothing for one left out."""
        if value is None:
            return ""
        if not isinstance(value, list):
            cell = f"A{self.row}"
            self.calc.set(cell, value)
            self.row += 2
            return cell
        width = max(map(len, value))
        rows = [[("" if cell is None else cell) for cell in row] + [""] * (width - len(row)) for row in value]
        self.calc.fill(f"A{self.row}", rows)
        reference = f"A{self.row}:{letter(width - 1)}{self.row + len(rows) - 1}"
        self.row += len(rows) + 1
        return reference

    def call(self, function, references, result=None):
        """Writes one call and gives its cell."""
        arguments = ([f'"{result}"'] if result else []) + list(references)
        cell = f"{letter(self.next % 15 + 10)}{1 + self.next // 15}"
        self.next += 1
        self.calc.formula(cell, f"={function}({';'.join(arguments)})")
        return cell


def value_names(row, system):
    return row["systems"][system]["functions"]


@pytest.mark.parametrize("system", SYSTEMS)
def test_every_example_gives_the_librarys_answer_to_the_bit(add_in, system):
    calc, rows = add_in
    for row in rows:
        held = row["systems"][system]
        page = Page(calc)
        references = [page.argument(cell) for cell in held["cells"]]
        cells = {}
        for result in held["results"]:
            cells[result] = page.call(value_names(row, system)[2], references, result)
        calc.recalculate()
        for result, cell in cells.items():
            wanted = ask(row, system, "get", held["cells"], result)["cells"][0][0]
            got = calc.result(cell)
            # Nothing shows as an empty text.
            assert got == ("" if wanted is None else wanted), (row["name"], result)


@pytest.mark.parametrize("system", SYSTEMS)
def test_every_refusal_is_an_error_with_its_reason(add_in, system):
    calc, rows = add_in
    for row in rows:
        for refusal in row["systems"][system]["refusals"]:
            page = Page(calc)
            references = [page.argument(cell) for cell in refusal["cells"]]
            value = page.call(value_names(row, system)[0], references)
            why = page.call(value_names(row, system)[1], references)
            calc.formula("J1", f"=ISERROR({value})")
            calc.formula("J2", f"=SUM({value};1)")
            calc.recalculate()
            # Calc hands a lone empty cell over as a zero.
            handed = [0.0 if cell == "" else cell for cell in refusal["cells"]]
            wanted = ask(row, system, "value", handed)["failure"]
            assert calc.error(value) != 0, (row["name"], refusal)
            assert calc.value("J1") == 1.0 and calc.error("J2") != 0, "a total goes bad with it"
            # A cell cuts nothing: the whole sentence is there.
            assert calc.text(why) == wanted["sentence"], row["name"]


def test_an_empty_cell_is_no_zero(add_in):
    calc, rows = add_in
    for row in rows:
        held = row["systems"]["us"]
        for place, port in enumerate(row["ports"]):
            if not port["required"] or port["kind"] in ("count", "choice"):
                continue
            page = Page(calc)
            references = [page.argument(cell) for cell in held["cells"]]
            references[place] = f"A{page.row + 1}"
            value = page.call(value_names(row, "us")[0], references)
            why = page.call(value_names(row, "us")[1], references)
            calc.recalculate()
            zero = [0.0 if at == place else cell for at, cell in enumerate(held["cells"])]
            doubtful = port["kind"] == "number" and calc.error(value) == 0
            if doubtful:
                # Calc hands a lone empty cell over as a zero; where a zero has a meaning it is one, and the wizard says so.
                assert "cells" in ask(row, "us", "value", zero), (row["name"], port["name"])
                continue
            said = calc.text(why)
            empty = said.split(":")[0] in ("EMPTY_CELL", "ZERO_REFUSED", "EMPTY_LIST", "OUT_OF_RANGE", "KEY_MISSING")
            # Where a zero is refused for what it says, as a place that cannot be, that is the reason.
            assert empty or port["kind"] == "number" and said == ask(row, "us", "value", zero)["failure"]["sentence"], said


def test_records_go_from_function_to_function(add_in):
    calc, rows = add_in
    if rows[0]["module"] != "specimen":
        pytest.skip("the test-only add-in has a record of every kind of field")
    page = Page(calc)
    table = page.argument([["at", "hits"], ["1 ft", 3], ["2 ft", ""]])
    made = f'OVS_SPECIMEN_FROM_TABLE_US({table};"walnut")'
    size = page.call("OVS_SPECIMEN_EVERY_KIND_US_GET", ["2", "2", '"red"', '"a"', table, made], "volume")
    calc.recalculate()
    assert calc.value(size) == pytest.approx(2.1)
    calc.array_formula("A20:B23", f"={made}")
    calc.recalculate()
    held = {name: value for name, value in calc.results("A20:B21")}
    assert held == {"size": "0.6096 m", "label": "walnut"}


def test_a_block_of_numbers_is_as_each_by_itself(shipped):
    drops, runs = [0.5, 2.0, -1.0, 3.25], [10.0, 20.0, 10.0, 24.0]
    shipped.fill("A1", [[drop, run] for drop, run in zip(drops, runs)])
    shipped.array_formula("C1:C4", "=OVS_FALL_US(A1:A4;B1:B4)")
    for row in range(1, 5):
        shipped.formula(f"D{row}", f"=OVS_FALL_US(A{row};B{row})")
    shipped.recalculate()
    assert shipped.results("C1:C4")[0] == shipped.results("D1:D4")[0]
    assert shipped.value("C2") == shipped.value("D2") and shipped.value("C4") == shipped.value("D4")
    assert shipped.error("C3") != 0 and shipped.error("D3") != 0, "a bad place spoils only itself"


def test_the_wizard_lists_exactly_the_table(add_in):
    calc, rows = add_in
    listed = {name for name in calc.functions() if name.startswith("OVS_")}
    wanted = {name for row in rows for system in SYSTEMS for name in row["systems"][system]["functions"]}
    assert listed - wanted <= {"OVS_VERSION", "OVS_SPECIMEN_VERSION"} and wanted <= listed


def test_the_version_shows_in_a_cell(shipped):
    manifest = (ROOT / "Cargo.toml").read_text()
    shipped.formula("A1", "=OVS_VERSION()")
    shipped.recalculate()
    assert f'version = "{shipped.text("A1")}"' in manifest


def test_ten_thousand_cells_are_told_not_timed(shipped, capsys):
    count = 10_000
    shipped.fill("A1", [[1.0 + row / count, 20.0] for row in range(count)])
    shipped.array_formula(f"C1:C{count}", f"=OVS_FALL_US(A1:A{count};B1:B{count})")
    start = time.perf_counter()
    shipped.recalculate()
    with capsys.disabled():
        print(f"\n{count} cells by one array formula: {time.perf_counter() - start:.3f} s")
    assert shipped.value(f"C{count}") == pytest.approx((2.0 - 1 / count) / 20.0, rel=1e-12)


@pytest.mark.parametrize("module", ["ffi/vba/Overslab.bas", "tests/specimen/OverslabSpecimen.bas"])
def test_the_vba_module_compiles_as_basic(shipped, module):
    assert shipped.compile_basic(str(ROOT / module))
