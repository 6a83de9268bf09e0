"""Joins modules into one classic script, for pages opened from a disk: a browser loads no module there.

It reads what our modules hold: imports, of names or of none, and named exports at the start of a line, no cycle. Each
module becomes a function that is run once and returns what it exports: in the order of the imports, or when `import()`
asks for it.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path

_IMPORT = re.compile(r'^import (?:\{([^}]*)\} from )?"([^"]+)"; *(?://.*)?\n', re.MULTILINE)
_DECLARED = re.compile(r"^export (?=(?:async )?(?:function|const|class) (\w+))", re.MULTILINE)
_LISTED = re.compile(r"^export \{([^}]*)\};\n?", re.MULTILINE)
_LATER = re.compile(r'\bimport\("([^"]+)"\)')
_BY_ADDRESS = re.compile(r"(?<![\w.])import\(")
_COMMENT = re.compile(r"/\*.*?\*/", re.DOTALL)
_BEGIN = '(() => {\n"use strict";\nconst once = (make) => { let made; return () => (made ??= make()); };'
_LEFT = re.compile(r"^(?:import|export)\b", re.MULTILINE)


class ModuleError(Exception):
    """A module has a form that is not joined here; the message names it."""


def classic_script(entry: Path, *, address: str) -> str:
    """Return a classic script that does what the module `entry` does with all that it imports.

    `address` is the expression that gives what `import.meta.url` would. Raises: ModuleError.
    """
    at_once: dict[Path, str] = {}
    later: dict[Path, str] = {}
    _join(entry.resolve(), at_once, later, ())
    for module in list(later):
        code = module.read_text(encoding="utf-8")
        if module in at_once or _IMPORT.search(code) or _LATER.search(code):
            raise ModuleError(f"{module.name} is imported later, and at once too or imports others")
        later[module] = f"const {_name_of(module.name)} = once({_function_of(module, code)});"
    return "\n".join([_BEGIN, f"const moduleAddress = {address};", *later.values(), *at_once.values(), "})();\n"])


def _join(module: Path, at_once: dict[Path, str], later: dict[Path, str], importers: tuple[Path, ...]) -> None:
    if module in at_once:
        return
    if module in importers:
        raise ModuleError(f"{module.name} imports itself by way of {importers[-1].name}")
    code = module.read_text(encoding="utf-8")
    for imported in _IMPORT.finditer(code):
        _join((module.parent / imported[2]).resolve(), at_once, later, (*importers, module))
    later |= {(module.parent / imported[1]).resolve(): "" for imported in _LATER.finditer(code)}
    at_once[module] = f"const {_name_of(module.name)} = ({_function_of(module, code)})();"


def _function_of(module: Path, code: str) -> str:
    """Return the function that runs a module and gives what it exports."""
    run = _COMMENT.sub("", code)
    exported = {name: name for name in _DECLARED.findall(run)}
    for listed in _LISTED.findall(run):
        exported |= {outside: inside for inside, outside in _names(listed)}
    code = _IMPORT.sub(_taken, code)
    code = _LISTED.sub("", _DECLARED.sub("", code))
    code = _LATER.sub(lambda each: f"Promise.resolve().then({_name_of(each[1])})", code)
    code = _BY_ADDRESS.sub("importFile(", code).replace("import.meta.url", "moduleAddress")
    if _LEFT.search(code):
        raise ModuleError(f"{module.name} imports or exports in a way that is not known here")
    given = ", ".join(f"{outside}: {inside}" for outside, inside in exported.items())
    return f"() => {{\n{code}\nreturn {{ {given} }};\n}}"


def _taken(imported: re.Match[str]) -> str:
    """Return the statement that takes the names of an import; one without names has been run by then."""
    names, address = imported[1], imported[2]
    if names is None:
        return ""
    taken = ", ".join(f"{theirs}: {own}" for theirs, own in _names(names))
    return f"const {{ {taken} }} = {_name_of(address)};\n"


def _names(listed: str) -> Iterator[tuple[str, str]]:
    """Yield of each name in a list, which may end in a comma, `a as b` as two names and `a` as twice the same."""
    for name in filter(None, map(str.strip, listed.split(","))):
        before, _, after = name.partition(" as ")
        yield before, after or before


def _name_of(address: str) -> str:
    return "module_" + re.sub(r"\W", "_", Path(address).stem)
