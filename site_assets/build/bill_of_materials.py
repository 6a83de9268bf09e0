"""Writes what the handbook ships as a bill of materials, CycloneDX 1.6, for programs that look for known faults."""

from __future__ import annotations

import base64
import json
import platform
import re
import uuid
from importlib.metadata import version
from pathlib import Path
from urllib.parse import quote

from calc.data_file import Data
from site_assets.build.notices import FOLDER, Component, components
from site_assets.setup.paths import PINS

FILE = "bill-of-materials.cdx.json"
SPECIFICATION = "1.6"
# A name space of our own: equal contents get the equal serial number, and others another.
SERIAL = uuid.uuid5(uuid.NAMESPACE_DNS, "bonding-field-handbook")
# What turns the sources into the site.
BUILT_WITH = ("mkdocs", "mkdocs-material", "pyodide-build", "jinja2", "drawsvg")


def write_bill_of_materials(site: Path) -> None:
    """Write the bill into the folder of notices of a site."""
    (site / FOLDER).mkdir(exist_ok=True)
    text = json.dumps(bill_of_materials(), ensure_ascii=False, indent=1)
    (site / FOLDER / FILE).write_text(f"{text}\n", encoding="utf-8", newline="\n")


def bill_of_materials() -> Data:
    """Return the bill. It holds no time and no place, so that equal sources make an equal bill."""
    handbook, *shipped = components()
    inside = {each.id: [other.id for other in shipped if other.inside == each.id] for each in shipped}
    first = [each.id for each in shipped if not each.inside]
    body = {
        "metadata": {
            "lifecycles": [{"phase": "build"}],
            "tools": {"components": tools()},
            "component": {**described(handbook), "type": "application"},
        },
        "components": [described(each) for each in shipped],
        "dependencies": [{"ref": handbook.id, "dependsOn": first}]
        + [{"ref": each, "dependsOn": others} for each, others in inside.items()],
    }
    serial = uuid.uuid5(SERIAL, json.dumps(body, sort_keys=True))
    return {
        "$schema": f"http://cyclonedx.org/schema/bom-{SPECIFICATION}.schema.json",
        "bomFormat": "CycloneDX",
        "specVersion": SPECIFICATION,
        "serialNumber": f"urn:uuid:{serial}",
        "version": 1,
        **body,
    }


def described(part: Component) -> Data:
    """Return a component of the bill."""
    told: Data = {"type": "library", "bom-ref": part.id, "name": part.name}
    if part.version:
        told["version"] = part.version
    told |= {"description": part.does, "licenses": [licence_of(part.license)]}
    kind, _, name = part.source.partition(":")
    if kind == "distribution":
        told["purl"] = f"pkg:pypi/{name.replace('_', '-').lower()}@{part.version}"
    elif kind == "node":
        told |= {"hashes": [hash_of_package(name)], "purl": f"pkg:npm/{quote(name)}@{part.version}"}
    return told


def licence_of(expression: str) -> Data:
    """Return a licence as the bill states it: one by its name, several as an expression."""
    return {"expression": expression} if " " in expression else {"license": {"id": expression}}


def hash_of_package(name: str) -> Data:
    """Return the hash that a package of Node was fetched by."""
    lock = json.loads((PINS / "package-lock.json").read_text(encoding="utf-8"))
    kind, _, digest = lock["packages"][f"node_modules/{name}"]["integrity"].partition("-")
    return {"alg": kind.upper().replace("SHA", "SHA-"), "content": base64.b64decode(digest).hex()}


def tools() -> list[Data]:
    """Return the programs of the build and of the tests: that Python and these packages made this very site."""
    named = [("CPython", platform.python_version()), *((name, version(name)) for name in BUILT_WITH)]
    return [
        {"type": "application", "name": name, "version": number}
        for name, number in (("uv", pinned_uv()), *named, *tested_with())
    ]


def pinned_uv() -> str:
    """Return the version of uv that makes the environment where the machine has none."""
    (number,) = re.findall(r"^uv==(\S+)", (PINS / "uv.txt").read_text(encoding="utf-8"), re.MULTILINE)
    return number


def tested_with() -> list[tuple[str, str]]:
    """Return the browsers that last ran the tests, and their versions."""
    lines = (PINS / "test_browser.txt").read_text(encoding="utf-8").splitlines()
    return [(name, number) for name, number in (line.split() for line in lines if not line.startswith("#"))]
