"""Equal sources make an equal site to the byte: in another folder, at another time, on a machine with other habits."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest

from site_assets.setup.paths import ROOT, environment_python

SOURCES = ("calc", "docs", "site_assets")
SINGLE = ("mkdocs.yml", "pyproject.toml", "LICENSE", ".python-version")
TOOLS = (".venv", ".tools")
# Python runs this before all else: what asks for the time is told another one.
OTHER_CLOCK = """
import datetime, time
ahead = 3 * 365 * 86400 + 12345
of_machine, as_date = time.time, datetime.datetime
time.time = lambda: of_machine() + ahead
local, utc, shown = time.localtime, time.gmtime, time.strftime
time.localtime = lambda moment=None: local(time.time() if moment is None else moment)
time.gmtime = lambda moment=None: utc(time.time() if moment is None else moment)
time.strftime = lambda form, moment=None: shown(form, time.localtime() if moment is None else moment)


class Later(as_date):
    @classmethod
    def now(cls, tz=None):
        return as_date.now(tz) + datetime.timedelta(seconds=ahead)

    @classmethod
    def utcnow(cls):
        return as_date.now(datetime.UTC).replace(tzinfo=None) + datetime.timedelta(seconds=ahead)

    @classmethod
    def today(cls):
        return cls.now()


class LaterDay(datetime.date):
    @classmethod
    def today(cls):
        return Later.now().date()


datetime.datetime, datetime.date = Later, LaterDay
"""


def built(folder: Path, clock: str, **habits: str) -> dict[str, bytes]:
    """Return every file of the site that a copy of the sources in this folder makes."""
    folder.mkdir(parents=True)
    for name in SOURCES:
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
    for name in SINGLE:
        shutil.copyfile(ROOT / name, folder / name)
    for name in TOOLS:
        (folder / name).symlink_to(ROOT / name)
    (folder / "clock").mkdir()
    (folder / "clock" / "sitecustomize.py").write_text(clock)
    variables = {**os.environ, "PYTHONPATH": str(folder / "clock"), "NO_MKDOCS_2_WARNING": "1", **habits}
    command = [str(environment_python()), "-m", "mkdocs", "build", "--strict", "--quiet"]
    subprocess.run(command, cwd=folder, env=variables, check=True)
    return {
        file.relative_to(folder / "site").as_posix(): file.read_bytes()
        for file in (folder / "site").rglob("*")
        if file.is_file()
    }


@pytest.mark.long
def test_two_folders_and_another_clock_make_the_same_site(tmp_path):
    one = built(tmp_path / "one", "", PYTHONHASHSEED="1", TZ="UTC", LC_ALL="C.UTF-8")
    other = built(
        tmp_path / "quite another place" / "deeper",
        OTHER_CLOCK,
        PYTHONHASHSEED="2",
        TZ="Asia/Kathmandu",
        LC_ALL="C",
        SOURCE_DATE_EPOCH="2000000000",
    )
    assert sorted(one) == sorted(other)
    assert [path for path, content in one.items() if other[path] != content] == []
    for path, content in one.items():
        assert str(tmp_path).encode() not in content, f"{path} names the folder that it was built in"


def test_the_other_clock_is_told_to_whatever_asks_for_the_time(tmp_path):
    """The test above can fail: a program that writes the time writes another one."""
    (tmp_path / "sitecustomize.py").write_text(OTHER_CLOCK)
    asked = (
        "import time, datetime as d;"
        "print(time.strftime('%Y'), d.datetime.now().year, d.datetime.now(d.UTC).year, d.date.today().year)"
    )
    told = subprocess.run(
        [str(environment_python()), "-c", asked],
        env={**os.environ, "PYTHONPATH": str(tmp_path)}, capture_output=True, text=True, check=True,
    )  # fmt: skip
    now = subprocess.run(
        [str(environment_python()), "-c", asked], capture_output=True, text=True, check=True,
    )  # fmt: skip
    for later, year in zip(told.stdout.split(), now.stdout.split(), strict=True):
        assert int(later) >= int(year) + 2
