"""A small add-in without a native library. It proves that the harness works before any real function is
asked for: numbers, errors, texts, ranges, and how often a function was called."""

from pathlib import Path

from pack import pack

_IDL = """\
module org { module overslabtoy { interface XToy {
  double toyTriple([in] double x);
  any toyRoot([in] any x);
  sequence< sequence< any > > toyScale([in] sequence< sequence< any > > cells, [in] double factor);
  string toyWhere();
  double toyCalls([in] double moment);
}; }; };
"""

_COMPONENT = '''\
import math
import os

import unohelper
from com.sun.star.lang import IllegalArgumentException, XServiceInfo
from org.overslabtoy import XToy

NAME = "org.overslabtoy.Functions"
SERVICES = ("com.sun.star.sheet.AddIn",)
calls = 0


class Toy(unohelper.Base, XToy, XServiceInfo):
    def __init__(self, context):
        pass

    def toyTriple(self, x):
        global calls
        calls += 1
        return 3.0 * x

    def toyRoot(self, x):
        if isinstance(x, str):
            return "#TOY: a text"
        if x < 0:
            raise IllegalArgumentException("negative", self, 0)
        return math.sqrt(x)

    def toyScale(self, cells, factor):
        return tuple(tuple(v * factor if isinstance(v, float) else v for v in row) for row in cells)

    def toyWhere(self):
        return ":".join((os.getcwd(), str(os.getuid()), os.environ.get("LD_LIBRARY_PATH", "none")))

    def toyCalls(self, moment):
        return float(calls)

    def getImplementationName(self):
        return NAME

    def supportsService(self, name):
        return name in SERVICES

    def getSupportedServiceNames(self):
        return SERVICES


g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Toy, NAME, SERVICES)
'''

_MANIFEST = """\
<?xml version="1.0" encoding="UTF-8"?>
<manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
 <manifest:file-entry manifest:full-path="XToy.rdb" manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
 <manifest:file-entry manifest:full-path="python/toy_addin.py" manifest:media-type="application/vnd.sun.star.uno-component;type=Python"/>
 <manifest:file-entry manifest:full-path="CalcAddIn.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
</manifest:manifest>
"""

_DESCRIPTION = """\
<?xml version="1.0" encoding="UTF-8"?>
<description xmlns="http://openoffice.org/extensions/description/2006">
 <identifier value="org.overslabtoy.calc"/>
 <version value="1.0"/>
</description>
"""

# method -> (name typed in a cell, its arguments)
_FUNCTIONS = {
    "toyTriple": ("TOY_TRIPLE", ["x"]),
    "toyRoot": ("TOY_ROOT", ["x"]),
    "toyScale": ("TOY_SCALE", ["cells", "factor"]),
    "toyWhere": ("TOY_WHERE", []),
    "toyCalls": ("TOY_CALLS", ["moment"]),
}


def _text_property(name, text):
    return f'<prop oor:name="{name}"><value xml:lang="en">{text}</value></prop>'


def _function_node(method, shown, arguments):
    parameters = "".join(
        f'<node oor:name="{a}" oor:op="replace">{_text_property("DisplayName", a)}'
        f'{_text_property("Description", "what " + a + " is")}</node>'
        for a in arguments
    )
    return (
        f'<node oor:name="{method}" oor:op="replace">{_text_property("DisplayName", shown)}'
        f'{_text_property("Description", "toy function " + method)}'
        f'<prop oor:name="Category"><value>Add-In</value></prop>'
        f'<node oor:name="Parameters">{parameters}</node></node>'
    )


def _configuration():
    nodes = "".join(_function_node(method, *rest) for method, rest in _FUNCTIONS.items())
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" '
        'oor:name="CalcAddIns" oor:package="org.openoffice.Office"><node oor:name="AddInInfo">'
        f'<node oor:name="org.overslabtoy.Functions" oor:op="replace"><node oor:name="AddInFunctions">{nodes}'
        "</node></node></node></oor:component-data>\n"
    )


def build_toy(folder):
    """Writes the add-in's files below `folder` and packs them; returns the .oxt."""
    sources = Path(folder) / "toy"
    for name, text in {
        "XToy.idl": _IDL,
        "python/toy_addin.py": _COMPONENT,
        "META-INF/manifest.xml": _MANIFEST,
        "description.xml": _DESCRIPTION,
        "CalcAddIn.xcu": _configuration(),
    }.items():
        path = sources / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(text, encoding="utf-8")
    target = Path(folder) / "toy.oxt"
    pack(sources, target)
    return target
