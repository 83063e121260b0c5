"""The boat store (invented) as a spreadsheet: writes boat_store.fods from the job file.

    python3 examples/boat_store_sheet.py [JOB.toml] [SHEET.fods]

Sheet `Floor` holds the rods as a crew would type them and computes the floor by the add-in's functions over those cells.
Sheet `Job` holds the whole job as path | value, sheet `Report` what the add-in makes of it. Nothing is computed here.
"""

import sys
import tomllib
from pathlib import Path
from xml.sax.saxutils import escape, quoteattr

# What a saved file calls the add-in's functions.
ADD_IN = "ORG.OVERSLAB.CALC.FUNCTIONS."

SPACES = " ".join(
    f'xmlns:{prefix}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
    for prefix, name in [("office", "office"), ("table", "table"), ("text", "text"), ("style", "style"), ("number", "datastyle")]
) + ' xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2"'


class Sheet:
    """Cells by column and row, both from 0."""

    def __init__(self, name):
        self.name, self.cells = name, {}

    def put(self, column, row, value):
        self.cells[column, row] = value
        return f"[.{letter(column)}{row + 1}]"

    def block(self, column, row, rows):
        """Puts rows of values and gives the reference to their range."""
        for down, values in enumerate(rows):
            for across, value in enumerate(values):
                self.put(column + across, row + down, value)
        last = letter(column + max(map(len, rows)) - 1) + str(row + len(rows))
        return f"[.{letter(column)}{row + 1}:.{last}]"

    def xml(self):
        width = 1 + max(column for column, _ in self.cells)
        height = 1 + max(row for _, row in self.cells)
        rows = (
            "<table:table-row>" + "".join(cell_xml(self.cells.get((column, row))) for column in range(width)) + "</table:table-row>"
            for row in range(height)
        )
        columns = '<table:table-column table:style-name="wide"/>' + '<table:table-column table:style-name="narrow"/>' * (width - 1)
        return f'<table:table table:name="{self.name}">{columns}\n' + "\n".join(rows) + "\n</table:table>"


class Formula(str):
    """A formula in OpenFormula's form."""


def function(name, *arguments):
    return f"{ADD_IN}{name.replace('_', '')}({';'.join(arguments)})"


def letter(column):
    return chr(ord("A") + column)


def cell_xml(value):
    if value is None:
        return "<table:table-cell/>"
    if isinstance(value, Formula):
        return (
            f'<table:table-cell table:style-name="figure" table:formula={quoteattr("of:=" + value)} '
            'office:value-type="float" office:value="0"/>'
        )
    if isinstance(value, bool):
        value = str(value).lower()
    if isinstance(value, (int, float)):
        return f'<table:table-cell office:value-type="float" office:value="{value!r}"/>'
    return f'<table:table-cell office:value-type="string"><text:p>{escape(str(value))}</text:p></table:table-cell>'


def paths(value, path=""):
    """A job as rows of path | value."""
    if isinstance(value, dict):
        for key, below in value.items():
            yield from paths(below, f"{path}.{key}" if path else key)
    elif isinstance(value, list):
        for index, below in enumerate(value):
            yield from paths(below, f"{path}[{index}]")
    else:
        yield [path, value]


def quoted(text):
    return '"' + text.replace('"', '""') + '"'


def floor(job):
    sheet = Sheet("Floor")
    level, setup, finish, order = job["level"], job["level"]["setups"][0], job["finish"], job["order"]
    sheet.put(0, 0, job["job"]["name"])
    sheet.put(0, 2, "rods")
    columns = sheet.block(1, 2, [level["columns"]])
    rows = sheet.block(0, 3, [[row["y"]] for row in setup["rows"]])
    rods = sheet.block(1, 3, [row["rods"] for row in setup["rows"]])
    row = 4 + len(setup["rows"])
    sheet.put(0, row, "walls")
    sides = sheet.block(1, row, [[side["length"], side["name"]] for side in job["outline"]["sides"]])
    row += 1 + len(job["outline"]["sides"])
    named = {}
    for name, value in [
        ("diagonal", job["outline"]["diagonal"]),
        ("benchmark", level["benchmarks"][0]["elevation"]),
        ("backsight", setup["rod"]),
        ("least", finish["least"]),
        ("margin", finish["margin"]),
        ("falls to", finish["falls_to"]),
        ("fall", finish["fall"]),
        ("round", finish["round"]),
        ("step", order["step"]),
        ("truck", order["truck"]),
    ]:
        sheet.put(0, row, name)
        named[name] = sheet.put(1, row, value)
        row += 1
    ramp = order["extras"][0]
    sheet.put(0, row, ramp["name"])
    ramp_sides = [sheet.put(1 + place, row, ramp[side]) for place, side in enumerate(["length", "width", "mean"])]
    row += 2

    outline = function("OVS_OUTLINE_FROM_SIDES_US", sides, named["diagonal"])
    survey = function("OVS_SURVEY_FROM_RODS_US", outline, columns, rows, rods, named["benchmark"], named["backsight"])
    laid = function(
        "OVS_FINISH_AT_LEAST_US",
        *[survey, named["least"], named["falls to"], named["fall"], named["round"], named["benchmark"], named["margin"]],
    )

    def thickness(result):
        return function("OVS_THICKNESS_US_GET", quoted(result), survey, laid)

    sheet.put(0, row, "net_yd3")
    net = sheet.put(1, row, Formula(thickness("net")))
    extras = sheet.block(3, row, [["ramp", Formula(function("OVS_BLOCK_US", *ramp_sides))]])

    def ordered(result):
        return function("OVS_ORDER_US_GET", quoted(result), net, extras, "", named["step"], named["truck"])

    for name, formula in [
        ("least_in", thickness("least_measured")),
        ("greatest_in", thickness("greatest")),
        ("mean_in", thickness("mean")),
        ("figured_yd3", ordered("figured")),
        ("ordered_yd3", ordered("ordered")),
        ("loads", ordered("loads")),
    ]:
        row += 1
        sheet.put(0, row, name)
        sheet.put(1, row, Formula(formula))
    return sheet


def whole_job(job):
    sheet = Sheet("Job")
    rows = [["path", "value"], *paths(job)]
    sheet.block(0, 0, rows)
    return sheet, f"[$Job.A1:.B{len(rows)}]"


def report(job_range):
    sheet = Sheet("Report")
    for row, name in enumerate(["ordered", "figured", "loads", "net", "least", "greatest", "mean"]):
        sheet.put(0, row, name)
        sheet.put(1, row, Formula(function("OVS_REPORT_US_GET", quoted(name), job_range)))
    return sheet


def document(sheets):
    width = '<style:style style:name="{}" style:family="table-column"><style:table-column-properties style:column-width="{}"/></style:style>'
    styles = (
        "<office:automatic-styles>" + width.format("wide", "4.6cm") + width.format("narrow", "2.8cm")
        # Figures show two decimals and hold every digit.
        + '<number:number-style style:name="two"><number:number number:decimal-places="2" number:min-decimal-places="2" '
        'number:min-integer-digits="1"/></number:number-style>'
        '<style:style style:name="figure" style:family="table-cell" style:data-style-name="two"/></office:automatic-styles>'
    )
    body = "\n".join(sheet.xml() for sheet in sheets)
    return (
        f'<?xml version="1.0" encoding="UTF-8"?>\n<office:document {SPACES} office:version="1.2" '
        f'office:mimetype="application/vnd.oasis.opendocument.spreadsheet">\n{styles}\n'
        f"<office:body><office:spreadsheet>\n{body}\n</office:spreadsheet></office:body></office:document>\n"
    )


def main():
    here = Path(__file__).parent
    source = Path(sys.argv[1]) if len(sys.argv) > 1 else here / "boat_store.toml"
    target = Path(sys.argv[2]) if len(sys.argv) > 2 else here / "boat_store.fods"
    job = tomllib.loads(source.read_text(encoding="utf-8"))
    jobs, job_range = whole_job(job)
    target.write_text(document([floor(job), jobs, report(job_range)]), encoding="utf-8")


if __name__ == "__main__":
    main()
