"""Importing the package prints nothing, changes no setting and needs nothing but numpy."""

from __future__ import annotations

import subprocess
import sys

SETTINGS = """
import decimal, locale, logging, os, random, signal, sys, warnings
import numpy
def settings():
    return {
        "logging": (logging.root.level, list(logging.root.handlers), list(logging.root.manager.loggerDict)),
        "warnings": list(warnings.filters),
        "locale": locale.setlocale(locale.LC_ALL),
        "signals": {one: signal.getsignal(one) for one in signal.valid_signals()},
        "numpy": (numpy.geterr(), str(numpy.get_printoptions())),
        "decimal": str(decimal.getcontext()),
        "random": random.getstate(),
        "hooks": (sys.excepthook, sys.displayhook, sys.unraisablehook, list(sys.meta_path), list(sys.path_hooks)),
        "limits": (sys.getrecursionlimit(), sys.getswitchinterval()),
        "directory": os.getcwd(),
        "environment": dict(os.environ),
        "path": list(sys.path),
    }
before = settings()
import overslab
for row in overslab.OPERATIONS.values():
    getattr(overslab._overslab, row["name"])(**row["example"])
after = settings()
changed = [name for name in before if before[name] != after[name]]
sys.exit(str(changed) if changed else 0)
"""


def run(code: str) -> subprocess.CompletedProcess[str]:
    """Runs code in an interpreter of its own."""
    return subprocess.run([sys.executable, "-W", "error", "-c", code], capture_output=True, text=True, check=False)


def test_importing_and_calling_changes_no_setting_and_prints_nothing() -> None:
    done = run(SETTINGS)
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")


def test_only_numpy_is_imported_besides_the_standard_library() -> None:
    code = "import sys, overslab; print(*sorted({name.partition('.')[0] for name in sys.modules}))"
    names = set(run(code).stdout.split())
    known = set(sys.stdlib_module_names) | {"overslab", "numpy", "__main__", "sitecustomize", "usercustomize"}
    foreign = {name for name in names - known if not name.startswith(("_", "cython_runtime"))}
    assert foreign == set()


def test_the_version_is_that_of_the_distribution() -> None:
    from importlib.metadata import version

    import overslab

    assert overslab.__version__ == version("overslab")
