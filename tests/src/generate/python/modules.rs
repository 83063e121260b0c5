//! The Python modules, which name what the native module holds, and the exceptions.

use super::names::python;
use super::{Generated, Module, SPECIMEN, classes};
use overslab::failure::Family;
use std::fmt::Write;

/// The modules of the package.
pub(super) fn files(modules: &[Module]) -> Vec<Generated> {
    let mut files: Vec<Generated> = modules.iter().map(module).collect();
    files.push(package(modules));
    files.push(failures());
    files.push(native(modules));
    files
}

/// What a module of the package holds.
pub(super) fn public(module: &Module) -> Vec<String> {
    let mut all: Vec<String> = module.records.iter().map(|record| record.class.to_owned()).collect();
    for operation in &module.operations {
        all.push(python(operation.name));
        all.extend(classes::names(operation));
    }
    all
}

fn module(module: &Module) -> Generated {
    let mut text = format!(
        "\"\"\"The operations of `{}`: made from the table of operations; do not edit.\"\"\"\n\nfrom overslab._overslab import (\n",
        module.name
    );
    let names = public(module);
    for name in &names {
        let _ = writeln!(text, "    {name},");
    }
    text.push_str(")\n\n__all__ = [\n");
    for name in &names {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    Generated::new(format!("python/overslab/{}.py", module.name), text)
}

/// The package itself: its modules, its records, what may go wrong.
fn package(modules: &[Module]) -> Generated {
    let exceptions = exceptions();
    let mut text = String::from(
        "\"\"\"Computation engine for pouring new concrete floors over old ones.\n\n\
         Each module answers one question of the job; `OPERATIONS` is the table of all operations.\n\
         Made from the table of operations; do not edit.\n\"\"\"\n\n\
         from overslab import failures, results, typing\n",
    );
    let modules_named: Vec<&str> = modules.iter().map(|module| module.name).collect();
    let _ = writeln!(text, "from overslab import {}", modules_named.join(", "));
    text.push_str("from overslab._overslab import OPERATIONS, __version__\n");
    let _ = writeln!(text, "from overslab.failures import {}", exceptions.join(", "));
    let mut all: Vec<String> =
        ["OPERATIONS", "__version__", "failures", "results", "typing"].map(str::to_owned).to_vec();
    all.extend(modules_named.iter().map(|name| (*name).to_owned()));
    all.extend(exceptions);
    for module in modules.iter().filter(|module| !module.records.is_empty()) {
        let records: Vec<&str> = module.records.iter().map(|record| record.class).collect();
        let _ = writeln!(text, "from overslab.{} import {}", module.name, records.join(", "));
        all.extend(records.into_iter().map(str::to_owned));
    }
    text.push_str("\n__all__ = [\n");
    for name in all {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    Generated::new("python/overslab/__init__.py", text)
}

fn exceptions() -> Vec<String> {
    let families = Family::ALL.iter().map(|family| format!("{}Error", family.word()));
    std::iter::once("OverslabError".to_owned()).chain(families).collect()
}

/// The exceptions: one for each family of codes. They are written in Python, so that each may have two parents.
fn failures() -> Generated {
    let mut text = String::from(
        "\"\"\"What can go wrong: one exception for each family of codes. Made from the table of codes; do not edit.\"\"\"\n\n\
         from overslab._failure import OverslabError\n\n__all__ = [\n",
    );
    for name in exceptions() {
        let _ = writeln!(text, "    \"{name}\",");
    }
    text.push_str("]\n");
    for family in Family::ALL {
        let parent = if *family == Family::Border { "RuntimeError" } else { "ValueError" };
        let _ = write!(
            text,
            "\n\nclass {}Error(OverslabError, {parent}):\n    \"\"\"{}\n",
            family.word(),
            family.meaning()
        );
        text.push('\n');
        for code in overslab::failure::Code::ALL.iter().filter(|code| code.family() == *family) {
            let _ = writeln!(text, "    {} {}: {}.", code.number(), code.name(), code.meaning());
        }
        text.push_str("    \"\"\"\n");
    }
    Generated::new("python/overslab/failures.py", text)
}

/// What pickling calls.
const RESTORE: &str = "
_About: TypeAlias = tuple[list[tuple[int, str]], list[tuple[int, str]], list[int]]

def _restore_scalar(operation: str, kept: list[float], note: int | None) -> ScalarResult: ...
def _restore_array(
    operation: str,
    shape: list[int],
    kept: list[npt.NDArray[np.float64]],
    notes: list[int] | None,
    marks: tuple[bool, list[int], list[OverslabError]],
) -> ArrayResult: ...
def _restore_answer(operation: str, results: list[Any], about: _About) -> AnswerResult: ...
def _restore_record(record: str, json: str, origin: tuple[str, _About] | None) -> Record: ...
";

/// The stub of the native module: it holds everything, the other stubs say it.
fn native(modules: &[Module]) -> Generated {
    let mut text = String::from(
        "\"\"\"The native module behind the package: made from the table of operations; do not edit.\"\"\"\n\n\
         from typing import Any, Final, TypeAlias\n\n\
         import numpy as np\nimport numpy.typing as npt\n\n\
         from overslab.failures import OverslabError\n\
         from overslab.results import AnswerResult as AnswerResult\n\
         from overslab.results import ArrayResult as ArrayResult\n\
         from overslab.results import Record as Record\n\
         from overslab.results import ScalarResult as ScalarResult\n\
         from overslab.typing import Row\n",
    );
    for module in modules {
        for name in public(module) {
            let _ = writeln!(text, "from overslab.{} import {name} as {name}", module.name);
        }
    }
    text.push_str("\n__version__: Final[str]\nOPERATIONS: Final[dict[str, Row]]\n");
    text.push_str(RESTORE);
    debug_assert!(modules.iter().all(|module| module.name != SPECIMEN));
    Generated::new("python/overslab/_overslab.pyi", text)
}
