"""LibreOffice's programs, each with a profile of its own and a time limit: install an add-in, convert a
file, start and stop the headless office. Nothing here outlives the process that started it."""

import os
import shutil
import signal
import subprocess
import threading
import time
import uuid
from pathlib import Path

from account import Account

INSTALL_LIMIT = 90
START_LIMIT = 90
CONVERT_LIMIT = 180
STOP_LIMIT = 15

# Runs "$@" and ends the whole process group when standard input closes, which happens however the parent
# ends; so a killed test run leaves no office behind.
_TETHER = 'exec 3<&0; (read -r _ <&3; kill -KILL 0) >/dev/null 2>&1 & exec "$@" 3<&- </dev/null'

# Numbers are written unrounded (not "as shown"), text as UTF-8; the last token is the number of the sheet.
_CSV = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,{sheet}"
_FILTERS = {"xlsx": "xlsx:Calc MS Excel 2007 XML", "ods": "ods:calc8", "pdf": "pdf:calc_pdf_Export"}


class OfficeFailure(Exception):
    """An office program failed, or did not end in its time."""


class Office:
    """A working folder with a fresh profile, optionally with one add-in installed in it."""

    def __init__(self, oxt=None):
        self.account = Account()
        self.folder = self.account.make_folder()
        try:
            self._make_folders()
            if oxt is not None:
                self.install(oxt)
        except BaseException:
            self.remove()
            raise

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.remove()

    def _make_folders(self):
        for name in ("profile", "home", "files"):
            (self.folder / name).mkdir()
            self.account.give(self.folder / name)

    @property
    def profile_argument(self):
        return "-env:UserInstallation=" + (self.folder / "profile").as_uri()

    def environment(self):
        """As bare as it can be: neither search paths nor settings of the caller reach the office."""
        return {
            "PATH": "/usr/local/bin:/usr/bin:/bin",
            "HOME": str(self.folder / "home"),
            "LANG": "C.UTF-8",
            "SAL_USE_VCLPLUGIN": "svp",
        }

    def start(self, command, **streams):
        """Starts a program under the account, in a process group of its own, tethered to this process."""
        return subprocess.Popen(
            ["/bin/sh", "-c", _TETHER, "sh", *map(str, command)],
            stdin=subprocess.PIPE,
            cwd="/",
            env=self.environment(),
            start_new_session=True,
            **streams,
            **self.account.popen_arguments(),
        )

    def run(self, command, limit):
        """Runs a program to its end and returns what it wrote; raises when it fails or takes too long."""
        log = self.folder / f"log-{uuid.uuid4().hex}"
        with log.open("wb") as sink:
            process = self.start(command, stdout=sink, stderr=subprocess.STDOUT)
            try:
                code = process.wait(limit)
            except subprocess.TimeoutExpired:
                code = f"no end within {limit} s"
            finally:
                end_group(process)
        output = log.read_text(errors="replace")
        log.unlink()
        if code != 0:
            raise OfficeFailure(f"{command[0]}: {code}\n{output}")
        return output

    def install(self, oxt):
        """Installs an add-in as a person would; the file is copied first so that the account can read it."""
        self.run(["unopkg", "add", "-f", "-v", self.profile_argument, self.bring(oxt)], INSTALL_LIMIT)

    def installed(self):
        """What `unopkg list` says."""
        return self.run(["unopkg", "list", self.profile_argument], INSTALL_LIMIT)

    def bring(self, path):
        """Copies a file into the working folder, readable by the account."""
        inside = self.folder / "files" / uuid.uuid4().hex / Path(path).name
        inside.parent.mkdir()
        shutil.copyfile(path, inside)
        self.account.give(inside.parent)
        return inside

    def convert(self, source, suffix, target, sheet=1):
        """Converts a document with `soffice --convert-to`; `suffix` is csv, xlsx, ods or pdf."""
        wanted = _CSV.format(sheet=sheet) if suffix == "csv" else _FILTERS[suffix]
        inside = self.bring(source)
        out = inside.parent / "out"
        out.mkdir()
        self.account.give(out)
        command = ["soffice", "--headless", "--norestore", self.profile_argument]
        output = self.run([*command, "--convert-to", wanted, "--outdir", out, inside], CONVERT_LIMIT)
        made = list(out.iterdir())
        if len(made) != 1:
            raise OfficeFailure(f"converting {source} to {suffix} made {len(made)} files\n{output}")
        shutil.copyfile(made[0], target)
        return Path(target)

    def remove(self):
        shutil.rmtree(self.folder, ignore_errors=True)


def convert(source, target, oxt=None, sheet=1):
    """Converts `source` to the kind told by the suffix of `target`, in an office of its own with `oxt`
    installed. `sheet` (counted from 1) is the one written to csv."""
    with Office(oxt) as office:
        return office.convert(source, Path(target).suffix.lstrip("."), target, sheet)


def end_group(process):
    """Ends a program and all it started. It is asked for nothing: what was to be saved has been saved."""
    try:
        os.killpg(process.pid, signal.SIGKILL)
    except ProcessLookupError:
        pass
    process.stdin.close()
    process.wait(STOP_LIMIT)


class Server:
    """The headless office, listening on a pipe; `watch` limits the time of whatever is asked of it."""

    def __init__(self, office):
        self.office = office
        self.pipe = "overslab" + uuid.uuid4().hex
        self._log = (office.folder / "server.log").open("w+b")
        self.process = office.start(
            [
                "soffice",
                "--headless",
                "--norestore",
                "--nologo",
                "--nodefault",
                office.profile_argument,
                f"--accept=pipe,name={self.pipe};urp;StarOffice.ComponentContext",
            ],
            stdout=self._log,
            stderr=subprocess.STDOUT,
        )
        self._deadline = None
        self._expired = None
        self._stopped = threading.Event()
        self._watcher = threading.Thread(target=self._keep_watch, daemon=True)
        self._watcher.start()

    def connect(self):
        """The office's component context."""
        import uno
        from com.sun.star.connection import NoConnectException

        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        url = f"uno:pipe,name={self.pipe};urp;StarOffice.ComponentContext"
        give_up = time.monotonic() + START_LIMIT
        while True:
            try:
                with self.office.account.worn():
                    return resolver.resolve(url)
            except NoConnectException:
                if self.ended() or time.monotonic() > give_up:
                    raise OfficeFailure(f"the office did not start\n{self.output()}") from None
                time.sleep(0.05)

    def watch(self, seconds, doing):
        """A context in which the office is ended after `seconds`, so that a call which hangs comes back."""
        return _Watch(self, seconds, doing)

    def _keep_watch(self):
        while not self._stopped.wait(0.2):
            deadline = self._deadline
            if deadline is not None and time.monotonic() > deadline:
                self._expired = True
                self._kill()

    def _kill(self):
        try:
            os.killpg(self.process.pid, signal.SIGKILL)
        except ProcessLookupError:
            pass

    def ended(self):
        return self.process.poll() is not None

    def wait(self, seconds):
        """Waits for the office to end by itself; it need not."""
        try:
            self.process.wait(seconds)
        except subprocess.TimeoutExpired:
            pass

    def output(self):
        self._log.seek(0)
        return self._log.read().decode(errors="replace")

    def stop(self):
        self._stopped.set()
        self._watcher.join()
        end_group(self.process)
        killed = self.process.returncode != 0
        self._log.close()
        if killed:
            self.office.account.remove_dead_pipes()


class _Watch:
    def __init__(self, server, seconds, doing):
        self.server, self.seconds, self.doing = server, seconds, doing

    def __enter__(self):
        self.outer = self.server._deadline
        mine = time.monotonic() + self.seconds
        self.server._deadline = mine if self.outer is None else min(mine, self.outer)

    def __exit__(self, kind, error, trace):
        self.server._deadline = self.outer
        if error is not None and self.server._expired:
            raise OfficeFailure(f"{self.doing}: no end within {self.seconds} s") from error
        if error is not None and self.server.ended():
            raise OfficeFailure(f"{self.doing}: the office ended\n{self.server.output()}") from error
