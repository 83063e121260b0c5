"""A headless spreadsheet that tests can write to, recalculate and read.

    with Calc("build/overslab.oxt") as calc:       # or Calc() without an add-in
        calc.set("A1", 0.25)                       # a number, a text, True/False; None empties the cell
        calc.formula("B1", "=OVS_FALL_US(A1;10)")  # English names, `;` between arguments
        calc.array_formula("C1:C9", "=A1:A9*2")    # one formula over a range; a column written out is {1|2|3}
        calc.fill("A1", [[1, "x"], [2, "y"]])      # a block of numbers and texts from its first cell on
        calc.recalculate()                         # every formula; `recalculate(only_changed=True)`: stale ones
        calc.value("B1")                           # float, bit for bit; raises when it is no number
        calc.text("B1")                            # what the cell shows
        calc.error("B1")                           # 0, or the error's number: see ERRORS
        calc.result("B1")                          # float, str, CellError or None, whichever the cell holds
        calc.results("C1:C9")                      # the same for a block, as rows
        calc.evaluate({"A1": 2.0, "B1": "=A1*3"})  # writes all, recalculates; {"B1": 6.0}: results of the formulas
        calc.functions()                           # name -> Function, as the Function Wizard shows it
        calc.compile_basic("module.bas")           # does LibreOffice Basic compile it?
        calc.call_basic(source, "Name", 1.0)       # calls a Basic function, returns its result
        calc.clear()                               # a new empty document
        calc.load("sheet.ods"); calc.save("out.xlsx")

A cell is "B2" on the first sheet or "Name.B2" on another. Every call has a time limit (`Calc(..., limit=60)`
seconds): an office that hangs is ended and `OfficeFailure` raised. Run with the system's Python, the one
LibreOffice's `uno` module belongs to.
"""

import dataclasses
import shutil
import uuid
from pathlib import Path

import uno
from com.sun.star.beans import PropertyValue
from com.sun.star.script.provider import ScriptFrameworkErrorException
from com.sun.star.table.CellContentType import EMPTY, FORMULA, TEXT
from com.sun.star.uno import RuntimeException

from office import Office, OfficeFailure, Server

__all__ = ["Calc", "CellError", "ERRORS", "Function", "OfficeFailure"]

ERRORS = {
    "argument": 502,
    "number": 503,
    "arguments-missing": 504,
    "value": 519,
    "reference": 524,
    "name": 525,
    "divided-by-zero": 532,
    "not-available": 32767,
}
"""The errors a formula can show, by their numbers in LibreOffice."""

_SAVE_FILTERS = {".ods": "calc8", ".xlsx": "Calc MS Excel 2007 XML", ".pdf": "calc_pdf_Export"}
_RESULT_IS_TEXT = 2  # com.sun.star.sheet.FormulaResult.STRING
_RESULT_IS_ERROR = 4  # com.sun.star.sheet.FormulaResult.ERROR
_RUN_MACROS_UNASKED = 4  # com.sun.star.document.MacroExecMode.ALWAYS_EXECUTE_NO_WARN


@dataclasses.dataclass(frozen=True)
class CellError:
    """An error in a cell: its number and what the cell shows."""

    code: int
    shown: str


@dataclasses.dataclass(frozen=True)
class Function:
    """A function as the Function Wizard shows it; arguments are (name, description) in order."""

    name: str
    description: str
    arguments: tuple


class Calc:
    """A running spreadsheet; use it in a `with` statement."""

    def __init__(self, oxt=None, limit=60):
        self.limit = limit
        self._oxt = oxt
        self._office = self._server = self._desktop = self._context = self._document = None

    def __enter__(self):
        self._office = Office(self._oxt)
        try:
            self._server = Server(self._office)
            with self._server.watch(120, "starting the office"):
                self._context = self._server.connect()
                self._desktop = self._service("com.sun.star.frame.Desktop")
                self._document = self._new_document()
        except BaseException:
            self.__exit__()
            raise
        return self

    def __exit__(self, *_):
        if self._server is not None:
            self._leave()
            self._server.stop()
        self._office.remove()

    def _leave(self):
        """Asks the office to end by itself, so that it takes its pipe away; what comes next ends it anyhow."""
        if self._desktop is None or self._server.ended():
            return
        try:
            with self._server.watch(10, "ending the office"):
                self._document.close(True)
                self._desktop.terminate()
        except (OfficeFailure, RuntimeException):
            return
        self._server.wait(5)

    # Writing cells

    def set(self, cell, value):
        """Writes a number, a text, a truth value, or nothing (None)."""
        with self._watch(f"writing {cell}"):
            target = self._cell(cell)
            if value is None:
                target.setFormula("")
            elif isinstance(value, bool):
                target.setFormula("=TRUE()" if value else "=FALSE()")
            elif isinstance(value, str):
                target.setString(value)
            else:
                target.setValue(float(value))

    def formula(self, cell, text):
        """Writes one formula."""
        with self._watch(f"writing {text} into {cell}"):
            self._cell(cell).setFormula(_as_formula(text))

    def array_formula(self, cells, text):
        """Writes one formula over a range."""
        with self._watch(f"writing {text} into {cells}"):
            self._range(cells).setArrayFormula(_as_formula(text))

    def fill(self, first_cell, rows):
        """Writes a block of numbers and texts at once."""
        rows = tuple(tuple(v if isinstance(v, str) else float(v) for v in row) for row in rows)
        with self._watch(f"filling from {first_cell}"):
            sheet, name = self._place(first_cell)
            start = sheet.getCellRangeByName(name).getCellAddress()
            last_column, last_row = start.Column + len(rows[0]) - 1, start.Row + len(rows) - 1
            block = sheet.getCellRangeByPosition(start.Column, start.Row, last_column, last_row)
            block.setDataArray(rows)

    def recalculate(self, only_changed=False):
        """Computes every formula anew, or only those whose inputs have changed."""
        with self._watch("recalculating"):
            if only_changed:
                self._document.calculate()
            else:
                self._document.calculateAll()

    # Reading cells

    def value(self, cell):
        """The number in a cell; an error, a text or an empty cell is refused."""
        result = self.result(cell)
        if not isinstance(result, float):
            raise ValueError(f"{cell} holds no number but {result!r}")
        return result

    def text(self, cell):
        """What the cell shows."""
        with self._watch(f"reading {cell}"):
            return self._cell(cell).getString()

    def error(self, cell):
        """The number of the error in a cell, 0 when there is none."""
        with self._watch(f"reading {cell}"):
            return self._cell(cell).getError()

    def result(self, cell):
        """What a cell holds: float, str, CellError, or None when it is empty."""
        with self._watch(f"reading {cell}"):
            return _result(self._cell(cell))

    def results(self, cells):
        """What a block of cells holds, as rows; an empty cell reads as ""."""
        with self._watch(f"reading {cells}"):
            block = self._range(cells)
            rows = [list(row) for row in block.getDataArray()]
            corner = block.getRangeAddress()
            for bad in block.queryFormulaCells(_RESULT_IS_ERROR).getRangeAddresses():
                for row in range(bad.StartRow - corner.StartRow, bad.EndRow - corner.StartRow + 1):
                    for column in range(bad.StartColumn - corner.StartColumn, bad.EndColumn - corner.StartColumn + 1):
                        rows[row][column] = _result(block.getCellByPosition(column, row))
            return rows

    def evaluate(self, cells):
        """Writes the cells (a text that begins with `=` is a formula; over a range such as "C1:C9" an array
        formula), recalculates, and returns the results of the formulas by the same keys."""
        asked = {}
        for place, content in cells.items():
            if isinstance(content, str) and content.startswith("="):
                asked[place] = self.results if ":" in place else self.result
                (self.array_formula if ":" in place else self.formula)(place, content)
            elif isinstance(content, (list, tuple)):
                self.fill(place, content)
            else:
                self.set(place, content)
        self.recalculate()
        return {place: read(place) for place, read in asked.items()}

    # Documents

    def clear(self):
        """Begins a new empty document."""
        with self._watch("beginning a new document"):
            self._replace(self._new_document())

    def add_sheet(self, name):
        """Adds a sheet at the end; its cells are written "name.A1"."""
        with self._watch(f"adding the sheet {name}"):
            sheets = self._document.Sheets
            sheets.insertNewByName(name, sheets.Count)

    def rename_first_sheet(self, name):
        """Renames the first sheet."""
        with self._watch("renaming a sheet"):
            self._document.Sheets.getByIndex(0).setName(name)

    def load(self, path):
        """Opens a file in place of the present document."""
        with self._watch(f"opening {path}"):
            inside = self._office.bring(path)
            document = self._desktop.loadComponentFromURL(inside.as_uri(), "_blank", 0, self._open_arguments())
            if document is None:
                raise OfficeFailure(f"the office cannot open {path}")
            self._replace(document)

    def save(self, path):
        """Writes the document as the suffix says: .ods, .xlsx or .pdf."""
        suffix = Path(path).suffix
        inside = self._office.folder / "files" / (uuid.uuid4().hex + suffix)
        with self._watch(f"saving {path}"):
            self._document.storeToURL(inside.as_uri(), (_property("FilterName", _SAVE_FILTERS[suffix]),))
        shutil.copyfile(inside, path)

    # Add-in and Basic

    def functions(self):
        """All functions the office knows, by the name typed in a cell."""
        with self._watch("listing the functions"):
            described = self._service("com.sun.star.sheet.FunctionDescriptions")
            found = {}
            for index in range(described.getCount()):
                entry = {each.Name: each.Value for each in described.getByIndex(index)}
                arguments = tuple((a.Name, a.Description) for a in entry["Arguments"] or ())
                found[entry["Name"]] = Function(entry["Name"], entry["Description"], arguments)
            return found

    def compile_basic(self, path):
        """Does Basic compile this module? See `basic_compiles`."""
        return self.basic_compiles(Path(path).read_text(encoding="utf-8"))

    def basic_compiles(self, source):
        """Does Basic compile this module, given as text?

        Basic does not say so itself: from a module that does not compile every function returns nothing, or
        is not found; so one of known result is added and called. Basic notices misspelt keywords, a missing
        `Lib` or `End`, also in the branch of an `#If` it does not take; it notices no unknown type, no wrong
        alias, no missing `PtrSafe`, and an undeclared variable only when the line is run.
        """
        with self._watch("compiling a Basic module"), _BasicModule(self._new_document(), source) as module:
            return module.compiles()

    def call_basic(self, source, function, *arguments):
        """Loads a module into a document of its own and calls one of its functions."""
        with self._watch(f"calling the Basic function {function}"):
            with _BasicModule(self._new_document(), source) as module:
                if not module.compiles():
                    raise OfficeFailure("the Basic module does not compile")
                return module.call(function, arguments)

    # Inside

    def _watch(self, doing):
        return self._server.watch(self.limit, doing)

    def _service(self, name):
        return self._context.ServiceManager.createInstanceWithContext(name, self._context)

    def _open_arguments(self):
        return (_property("Hidden", True), _property("MacroExecutionMode", _RUN_MACROS_UNASKED))

    def _new_document(self):
        return self._desktop.loadComponentFromURL("private:factory/scalc", "_blank", 0, self._open_arguments())

    def _replace(self, document):
        previous, self._document = self._document, document
        previous.close(True)

    def _place(self, name):
        sheet_name, _, within = name.rpartition(".")
        sheets = self._document.Sheets
        sheet = sheets.getByName(sheet_name.strip("'")) if sheet_name else sheets.getByIndex(0)
        return sheet, within

    def _range(self, name):
        sheet, within = self._place(name)
        return sheet.getCellRangeByName(within)

    def _cell(self, name):
        if ":" in name:
            raise ValueError(f"{name} is a range, one cell is wanted")
        return self._range(name).getCellByPosition(0, 0)


def _property(name, value):
    made = PropertyValue()
    made.Name, made.Value = name, value
    return made


def _as_formula(text):
    if not text.startswith("="):
        raise ValueError(f"a formula begins with '=': {text}")
    return text


def _result(cell):
    kind = cell.getType()
    if kind == EMPTY:
        return None
    if kind == TEXT:
        return cell.getString()
    if kind == FORMULA:
        if cell.getError() != 0:
            return CellError(cell.getError(), cell.getString())
        if cell.FormulaResultType2 == _RESULT_IS_TEXT:
            return cell.getString()
    return cell.getValue()


class _BasicModule:
    """A module in a document of its own, which is closed at the end."""

    # Before a module has been compiled, Basic finds its functions by a coarse look that takes a `Declare` for
    # the beginning of a function and skips to the next `End Function`. The first function here is for that.
    TAIL = """
Public Function OverslabSkipped() As Integer
End Function
Public Function OverslabSentinel() As Integer
OverslabSentinel = 2
End Function
"""

    def __init__(self, document, source):
        self._document = document
        libraries = document.BasicLibraries
        if not libraries.hasByName("Standard"):
            libraries.createLibrary("Standard")
        libraries.loadLibrary("Standard")
        libraries.getByName("Standard").insertByName("Scratch", "Option VBASupport 1\n" + source + self.TAIL)

    def __enter__(self):
        return self

    def __exit__(self, *_):
        try:
            self._document.close(True)
        except RuntimeException:
            pass  # the office has ended, and the document with it

    def compiles(self):
        try:
            return self.call("OverslabSentinel", ()) == 2
        except ScriptFrameworkErrorException:
            return False

    def call(self, function, arguments):
        place = f"vnd.sun.star.script:Standard.Scratch.{function}?language=Basic&location=document"
        return self._document.getScriptProvider().getScript(place).invoke(arguments, (), ())[0]
