"""Joins modules into one classic script, for pages opened from a disk: a browser loads no module there.

It reads what our modules hold: named imports and exports at the start of a line, without a cycle. Each module becomes a
function that is run once, in the order of the imports, and returns what it exports.
"""

from __future__ import annotations

import re
from pathlib import Path

_IMPORT = re.compile(r'^import \{([^}]*)\} from "([^"]+)";\n', re.MULTILINE)
_DECLARED = re.compile(r"^export (?=(?:async )?(?:function|const|class) (\w+))", re.MULTILINE)
_LISTED = re.compile(r"^export \{([^}]*)\};\n?", re.MULTILINE)
_LATER = re.compile(r'\bimport\("([^"]+)"\)')
_BY_ADDRESS = re.compile(r"(?<![\w.])import\(")
_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_LEFT = re.compile(r"^(?:import|export)\b", re.MULTILINE)


class ModuleError(Exception):
    """A module has a form that is not joined here; the message names it."""


def classic_script(entry: Path, *, address: str) -> str:
    """Return a classic script that does what the module `entry` does with all that it imports.

    `address` is the expression that gives what `import.meta.url` would. Raises: ModuleError.
    """
    joined: dict[Path, str] = {}
    _join(entry.resolve(), joined, ())
    return "\n".join(['(() => {\n"use strict";', f"const moduleAddress = {address};", *joined.values(), "})();\n"])


def _join(module: Path, joined: dict[Path, str], importers: tuple[Path, ...]) -> None:
    if module in joined:
        return
    if module in importers:
        raise ModuleError(f"{module.name} imports itself by way of {importers[-1].name}")
    code = module.read_text(encoding="utf-8")
    needed = [each[2] for each in _IMPORT.finditer(code)] + [each[1] for each in _LATER.finditer(code)]
    for other in needed:
        _join((module.parent / other).resolve(), joined, (*importers, module))
    joined[module] = _function_of(module, code)


def _function_of(module: Path, code: str) -> str:
    """Return the statement that runs a module and names what it exports after its file."""
    run = _COMMENT.sub("", code)
    exported = {name: name for name in _DECLARED.findall(run)}
    for listed in _LISTED.findall(run):
        exported |= dict(reversed(_renamed(each)) for each in listed.split(","))
    code = _IMPORT.sub(lambda each: f"const {{ {_taken(each[1])} }} = {_name_of(each[2])};\n", code)
    code = _LISTED.sub("", _DECLARED.sub("", code))
    code = _LATER.sub(lambda each: f"Promise.resolve({_name_of(each[1])})", code)
    code = _BY_ADDRESS.sub("importFile(", code).replace("import.meta.url", "moduleAddress")
    if _LEFT.search(code):
        raise ModuleError(f"{module.name} imports or exports in a way that is not known here")
    given = ", ".join(f"{outside}: {inside}" for outside, inside in exported.items())
    return f"const {_name_of(module.name)} = (() => {{\n{code}\nreturn {{ {given} }};\n}})();"


def _taken(names: str) -> str:
    """Return the names of an import as they stand in a destructuring."""
    return ", ".join(f"{theirs}: {own}" for theirs, own in map(_renamed, names.split(",")))


def _renamed(name: str) -> tuple[str, str]:
    """Return `a as b` as two names, and `a` as twice the same."""
    before, _, after = name.strip().partition(" as ")
    return before, after or before


def _name_of(address: str) -> str:
    return "module_" + re.sub(r"\W", "_", Path(address).stem)
