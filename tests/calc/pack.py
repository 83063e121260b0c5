"""Packs an add-in: a folder as it lies in the .oxt, with each .idl compiled to the .rdb beside it, and the
shared library put under lib/. The same folder and library always give the same bytes.

    pack.py FOLDER TARGET.oxt [LIBRARY]
"""

import os
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as ElementTree
import zipfile
from pathlib import Path

COMPILE_LIMIT = 60
_MANIFEST = "META-INF/manifest.xml"
_PATH_ATTRIBUTE = "{http://openoffice.org/2001/manifest}full-path"
_FIRST_ZIP_DATE = (1980, 1, 1, 0, 0, 0)


class PackFailure(Exception):
    """The folder does not make an add-in."""


def office_program():
    """The folder LibreOffice's programs lie in."""
    starter = shutil.which("soffice")
    if starter is None:
        raise PackFailure("soffice is not on the path: install LibreOffice Calc")
    return Path(starter).resolve().parent


def idl_compiler():
    """unoidl-write; Debian keeps it in the development kit, beside the program folder."""
    program = office_program()
    places = [program.parent / "sdk/bin/unoidl-write", program / "unoidl-write", shutil.which("unoidl-write")]
    for place in places:
        if place is not None and Path(place).exists():
            return Path(place)
    raise PackFailure("unoidl-write was not found: install libreoffice-dev")


def compile_idl(source, target):
    """Compiles one interface file to a type library."""
    command = [idl_compiler(), office_types("types.rdb"), office_types("offapi.rdb"), source, target]
    done = subprocess.run(command, capture_output=True, text=True, timeout=COMPILE_LIMIT)
    if done.returncode != 0:
        raise PackFailure(f"{Path(source).name} does not compile:\n{done.stdout}{done.stderr}")


def office_types(name):
    """One of LibreOffice's own type libraries."""
    program = office_program()
    for place in (program / name, program / "types" / name):
        if place.exists():
            return place
    raise PackFailure(f"LibreOffice's own {name} was not found")


def collect(folder, library, scratch):
    """What goes into the archive: name in it -> file."""
    folder = Path(folder)
    parts = {}
    for path in sorted(p for p in folder.rglob("*") if p.is_file() and "__pycache__" not in p.parts):
        name = path.relative_to(folder).as_posix()
        if path.suffix == ".idl":
            name = str(Path(name).with_suffix(".rdb"))
            compiled = Path(scratch) / name.replace("/", "-")
            compile_idl(path, compiled)
            path = compiled
        parts[name] = path
    if library is not None:
        parts["lib/" + Path(library).name] = Path(library)
    return parts


def check_manifest(parts):
    """LibreOffice silently leaves out what the manifest names and the archive lacks."""
    for needed in (_MANIFEST, "description.xml"):
        if needed not in parts:
            raise PackFailure(f"the add-in has no {needed}")
    root = ElementTree.parse(parts[_MANIFEST]).getroot()
    named = [entry.get(_PATH_ATTRIBUTE) for entry in root]
    missing = [name for name in named if name not in parts]
    if not named or missing:
        raise PackFailure(f"the manifest names files that are not there: {missing}; there are {sorted(parts)}")


def pack(folder, target, library=None):
    """Packs `folder`, with `library` at lib/, into `target`."""
    with tempfile.TemporaryDirectory() as scratch:
        parts = collect(folder, library, scratch)
        check_manifest(parts)
        unfinished = Path(str(target) + ".part")
        with zipfile.ZipFile(unfinished, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as archive:
            for name, path in parts.items():
                entry = zipfile.ZipInfo(name, _FIRST_ZIP_DATE)
                entry.compress_type = zipfile.ZIP_DEFLATED
                entry.external_attr = 0o644 << 16
                archive.writestr(entry, path.read_bytes())
        os.replace(unfinished, target)


def main(arguments):
    if len(arguments) not in (2, 3):
        sys.exit(__doc__)
    try:
        pack(*arguments)
    except PackFailure as failure:
        sys.exit(f"error: {failure}")
    print(f"packed {arguments[1]}")


if __name__ == "__main__":
    main(sys.argv[1:])
