"""The harness itself, tried with a small add-in of its own."""

import shutil
import struct
import subprocess
import sys
import time
from pathlib import Path

import pytest
from account import Account
from harness import Calc, CellError, ERRORS, Function, OfficeFailure
from office import Office, convert
from pack import PackFailure, pack
from sheetfile import build_workbook, poison_results, read_csv, read_xlsx
from toy import build_toy


@pytest.fixture(scope="module")
def toy(tmp_path_factory):
    return build_toy(tmp_path_factory.mktemp("toy"))


@pytest.fixture(scope="module")
def running(toy):
    with Calc(toy) as calc:
        yield calc


@pytest.fixture
def calc(running):
    running.clear()
    return running


def bits(number):
    return struct.pack("<d", number)


@pytest.mark.parametrize("number", [0.1, 1 / 3, -2.5e-300, 5e-324, 1.7976931348623157e308, -0.0, 12345678901234567.0])
def test_numbers_pass_bit_for_bit(calc, number):
    calc.evaluate({"A1": number, "B1": "=A1"})
    assert bits(calc.value("A1")) == bits(number)
    assert bits(calc.value("B1")) == bits(number)


def test_every_kind_of_result_is_told_apart(calc):
    results = calc.evaluate(
        {
            "A1": "twelve",
            "A2": True,
            "A3": None,
            "B1": '="say "&A1',
            "B2": "=A2+1",
            "B3": "=A3+1",
            "B4": "=1/A3",
            "B5": "=NA()",
            "B6": "=NO_SUCH_FUNCTION(1)",
            "B7": "=A1+1",
        }
    )
    assert results["B1"] == "say twelve"
    assert (results["B2"], results["B3"]) == (2.0, 1.0)
    assert results["B4"] == CellError(ERRORS["divided-by-zero"], "#DIV/0!")
    assert results["B5"] == CellError(ERRORS["not-available"], "#N/A")
    assert results["B6"] == CellError(ERRORS["name"], "#NAME?")
    assert results["B7"] == CellError(ERRORS["value"], "#VALUE!")
    assert calc.result("Z99") is None
    assert calc.error("B1") == 0


def test_a_cell_without_a_number_has_no_value(calc):
    calc.set("A1", "a text")
    for cell in ("A1", "A2"):
        with pytest.raises(ValueError, match=cell):
            calc.value(cell)


def test_text_that_looks_like_a_formula_stays_text(calc):
    calc.set("A1", "=1+1")
    assert calc.result("A1") == "=1+1"


def test_add_in_functions_compute(calc):
    results = calc.evaluate({"A1": 1.5, "A2": 16.0, "B1": "=TOY_TRIPLE(A1)", "B2": "=TOY_ROOT(A2)"})
    assert results == {"B1": 4.5, "B2": 4.0}


def test_a_refusal_of_the_add_in_is_an_error_that_sums_pass_on(calc):
    results = calc.evaluate(
        {
            "A1": -1.0,
            "B1": "=TOY_ROOT(A1)",
            "B2": "=SUM(B1;1)",
            "B3": "=IFERROR(B1;-7)",
            "B4": '=TOY_ROOT("x")',
            "B5": "=TOY_TRIPLE()",
        }
    )
    assert results["B1"] == CellError(ERRORS["argument"], "Err:502")
    assert results["B2"] == results["B1"]
    assert results["B3"] == -7.0
    assert results["B4"] == "#TOY: a text"
    assert results["B5"].code == ERRORS["arguments-missing"]


def test_an_array_formula_takes_and_fills_ranges(calc):
    rows = calc.evaluate({"A1": [[1, "x"], [2, 4]], "D1:E2": "=TOY_SCALE(A1:B2;10)"})["D1:E2"]
    assert rows == [[10.0, "x"], [20.0, 40.0]]


def test_errors_inside_a_block_are_read_in_place(calc):
    rows = calc.evaluate({"A1": [[1], [0], [4]], "B1:B3": "=1/A1:A3"})["B1:B3"]
    assert rows == [[1.0], [CellError(ERRORS["divided-by-zero"], "#DIV/0!")], [0.25]]


def test_one_changed_input_calls_its_function_once(calc):
    calc.fill("A1", [[float(n)] for n in range(20)])
    for row in range(1, 21):
        calc.formula(f"B{row}", f"=TOY_TRIPLE(A{row})")
    calc.recalculate()
    calc.results("B1:B20")

    def calls(moment):
        calc.set("D1", moment)
        calc.formula("D2", "=TOY_CALLS(D1)")
        return calc.value("D2")

    before = calls(1.0)
    calc.set("A7", 100.0)
    calc.recalculate(only_changed=True)
    assert calc.value("B7") == 300.0
    assert calls(2.0) == before + 1
    calc.recalculate()
    calc.results("B1:B20")
    assert calls(3.0) == before + 21


def test_the_wizard_knows_functions_and_arguments(calc):
    functions = calc.functions()
    scale = functions["TOY_SCALE"]
    assert isinstance(scale, Function)
    assert scale.description == "toy function toyScale"
    assert scale.arguments == (("cells", "what cells is"), ("factor", "what factor is"))
    assert "SUM" in functions


def test_the_add_in_runs_for_an_ordinary_user_with_a_bare_environment(calc):
    folder, user, search_path = calc.evaluate({"A1": "=TOY_WHERE()"})["A1"].split(":")
    assert folder == "/"
    assert user != "0"
    assert search_path == "none"


def test_installing_lists_the_add_in(toy):
    with Office(toy) as office:
        assert "org.overslabtoy.calc" in office.installed()


def test_a_broken_add_in_is_refused(tmp_path):
    broken = tmp_path / "broken.oxt"
    broken.write_bytes(b"no archive")
    with pytest.raises(OfficeFailure):
        Office(broken)


GOOD_MODULE = """\
Attribute VB_Name = "Sample"
Option Explicit
#If VBA7 Then
Private Declare PtrSafe Function twice Lib "none" (ByVal x As Double) As Double
#Else
Private Declare Function twice Lib "none" (ByVal x As Double) As Double
#End If
Public Function Half(ByVal x As Double) As Double
    Half = x / 2
End Function
"""


def test_basic_compiles_a_good_module_and_calls_it(calc, tmp_path):
    module = tmp_path / "sample.bas"
    module.write_text(GOOD_MODULE)
    assert calc.compile_basic(module)
    assert calc.call_basic(GOOD_MODULE, "Half", 9.0) == 4.5
    assert calc.basic_compiles('Declare PtrSafe Function twice Lib "none" (ByVal x As Double) As Double')


@pytest.mark.parametrize(
    ("right", "wrong"),
    [
        ("Public Function Half", "Public Functoin Half"),
        ("End Function\n", "End If\n"),
        ("Half = x / 2", "Half = x / / 2"),
        ('Lib "none"', '"none"'),
        ("ByVal x As Double) As Double\n#Else", "ByVole x As Double) As Double\n#Else"),
    ],
)
def test_basic_refuses_a_module_with_a_slip(calc, right, wrong):
    assert right in GOOD_MODULE
    assert not calc.basic_compiles(GOOD_MODULE.replace(right, wrong))


@pytest.fixture(scope="module")
def workbook(running, tmp_path_factory):
    path = tmp_path_factory.mktemp("book") / "book.ods"
    sheets = {
        "Inputs": {"A1": [[1 / 3], [-4.0]], "B1": "a \u00b2 text"},
        "Results": {
            "A1": "=TOY_TRIPLE(Inputs.A1)",
            "A2": "=TOY_ROOT(Inputs.A2)",
            "B1:B2": "=TOY_SCALE(Inputs.A1:Inputs.A2;2)",
            "C1": '=Inputs.B1&"!"',
        },
    }
    results = build_workbook(running, sheets, path)
    assert results["Results.A1"] == 1.0
    return path


def test_a_sheet_is_recalculated_when_converted(workbook, toy, tmp_path):
    poisoned = tmp_path / "poisoned.ods"
    assert poison_results(workbook, poisoned) == 5
    rows = read_csv(convert(poisoned, tmp_path / "out.csv", toy, sheet=2))
    assert [float(rows[0][0]), float(rows[0][1]), float(rows[1][1])] == pytest.approx([1.0, 2 / 3, -8.0], rel=1e-14)
    assert rows[1][0] == "Err:502"
    assert rows[0][2] == "a \u00b2 text!"
    cells = read_xlsx(convert(poisoned, tmp_path / "out.xlsx", toy), sheet=2)
    assert cells["A1"] == pytest.approx(1.0, rel=1e-14)
    assert cells["A2"] == "#VALUE!"
    assert cells["C1"] == "a \u00b2 text!"


def test_a_poisoned_result_is_really_in_the_file(workbook, tmp_path):
    poisoned = tmp_path / "poisoned.ods"
    poison_results(workbook, poisoned, 777.0)
    rows = read_csv(convert(poisoned, tmp_path / "out.csv", None, sheet=2))
    # Without the add-in its functions cannot be computed; what is left is what the file said or a name error.
    assert not any(cell in ("1", "0.666666666666667", "-8") for row in rows for cell in row)


def test_a_saved_sheet_is_opened_with_its_formulas(calc, workbook):
    calc.load(workbook)
    calc.recalculate()
    assert calc.value("Results.A1") == pytest.approx(1.0, rel=1e-14)  # a file keeps 15 digits
    calc.set("Inputs.A1", 2.0)
    calc.recalculate(only_changed=True)
    assert calc.value("Results.A1") == 6.0


def test_pages_can_be_written_as_pdf(calc, tmp_path):
    calc.set("A1", "a page")
    calc.save(tmp_path / "page.pdf")
    assert (tmp_path / "page.pdf").read_bytes().startswith(b"%PDF")


def test_a_manifest_naming_a_missing_file_is_refused(tmp_path):
    build_toy(tmp_path)
    (tmp_path / "toy/CalcAddIn.xcu").unlink()
    with pytest.raises(PackFailure, match="CalcAddIn.xcu"):
        pack(tmp_path / "toy", tmp_path / "again.oxt")


def test_packing_twice_gives_the_same_bytes(tmp_path):
    first = build_toy(tmp_path).read_bytes()
    assert build_toy(tmp_path).read_bytes() == first


def test_an_office_that_hangs_is_ended():
    began = time.monotonic()
    with pytest.raises(OfficeFailure, match="no end within 2 s"), Calc(limit=2) as calc:
        calc.call_basic("Function Forever()\nDo\nLoop\nEnd Function\n", "Forever")
    assert time.monotonic() - began < 60


def test_a_killed_run_leaves_no_office_behind():
    program = (
        f"import sys, time; sys.path.insert(0, {str(Path(__file__).parent)!r}); from harness import Calc\n"
        "with Calc() as calc:\n    print(calc._server.process.pid, calc._office.folder, flush=True)\n    time.sleep(600)\n"
    )
    child = subprocess.Popen([sys.executable, "-c", program], stdout=subprocess.PIPE, text=True)
    group, folder = child.stdout.readline().split()
    assert group_lives(group)
    child.kill()
    child.wait()
    give_up = time.monotonic() + 30
    while group_lives(group) and time.monotonic() < give_up:
        time.sleep(0.1)
    assert not group_lives(group)
    shutil.rmtree(folder)
    Account().remove_dead_pipes()


def group_lives(group):
    """Does any process of the group still run? A dead one that nobody has waited for does not."""
    for status in Path("/proc").glob("[0-9]*/stat"):
        try:
            state, _, of_group = status.read_text().rpartition(")")[2].split()[:3]
        except OSError:
            continue
        if of_group == group and state != "Z":
            return True
    return False
