"""Who runs LibreOffice in a test.

`unopkg` refuses to run as root, and a person who installs the add-in is not root either. When the tests
run as root (a container, a build machine) the office programs are therefore run as the system's `nobody`,
in a folder of their own; otherwise as whoever runs the tests.
"""

import os
import pwd
import socket
import tempfile
from pathlib import Path


class Account:
    """The account under which the office programs run."""

    def __init__(self):
        self._entry = pwd.getpwnam("nobody") if os.getuid() == 0 else None

    def popen_arguments(self):
        """What `subprocess.Popen` needs to start a program under this account."""
        if self._entry is None:
            return {}
        return {"user": self._entry.pw_uid, "group": self._entry.pw_gid, "extra_groups": []}

    def give(self, path):
        """Hands a file, or a folder with all it holds, to the account."""
        if self._entry is None:
            return
        for each in [Path(path), *Path(path).rglob("*")]:
            os.chown(each, self._entry.pw_uid, self._entry.pw_gid, follow_symlinks=False)

    def make_folder(self):
        """A new folder the account can reach and write to."""
        folder = Path(tempfile.mkdtemp(prefix="overslab-calc-")).resolve()
        self.give(folder)
        if self._entry is not None:
            for parent in folder.parents:
                if not parent.stat().st_mode & 0o001:
                    folder.rmdir()
                    raise RuntimeError(f"{parent} is closed to ordinary users: set TMPDIR to a folder that is open to all")
        return folder

    def remove_dead_pipes(self):
        """An office that was ended by force leaves its pipes behind; a pipe that nobody answers on is one."""
        user = os.getuid() if self._entry is None else self._entry.pw_uid
        for pipe in Path(tempfile.gettempdir()).glob(f"OSL_PIPE_{user}_*"):
            with socket.socket(socket.AF_UNIX) as caller:
                caller.settimeout(1)
                try:
                    caller.connect(str(pipe))
                except ConnectionRefusedError:
                    pipe.unlink(missing_ok=True)
                except OSError:
                    pass  # it answers slowly, or has gone by itself

    def worn(self):
        """A context in which this process has the account's identity.

        An office pipe is named by the user who opens it, so that one user cannot drive another's office;
        root has to step down to find it.
        """
        return _Worn(self._entry)


class _Worn:
    # A class, not a generator: an UNO exception does not let itself be thrown into a generator.
    def __init__(self, entry):
        self._entry = entry

    def __enter__(self):
        if self._entry is not None:
            os.setresuid(self._entry.pw_uid, self._entry.pw_uid, 0)

    def __exit__(self, *_):
        if self._entry is not None:
            os.setresuid(0, 0, 0)
