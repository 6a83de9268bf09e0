"""Names everything that the handbook ships, with its licence: the page of notices, and a file of texts for each.

`site_assets/notices/components.toml` says what is shipped; the texts are those of the installed packages.
"""

from __future__ import annotations

import json
import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from importlib.metadata import distribution
from pathlib import Path, PurePath

from calc.data_file import Data
from calc.messages import message
from site_assets.build.runtime import PYODIDE, files_of
from site_assets.build.theme import UNUSED
from site_assets.render.answer import text
from site_assets.setup.paths import NODE_MODULES, ROOT

DECLARED = Path(__file__).parent.parent / "notices"
FOLDER = "notices"
OF_THE_THEME = "mkdocs-material"
# Where the words of a licence begin after the names of its holders, in a package that is under it.
STANDARD = {
    "MIT": ("mkdocs-material", "LICENSE", "Permission is hereby granted"),
    "Apache-2.0": ("packaging", "LICENSE.APACHE", "Apache License"),
}
_PARTED = f"\n{'-' * 79}\n\n"


@dataclass(frozen=True)
class Component:
    """One thing that is shipped. The head of components.toml says what each value means; `source` is `from` there."""

    id: str
    name: str
    license: str
    does: str
    source: str
    texts: tuple[str, ...] = ()
    files: tuple[str, ...] = ()
    modules: tuple[str, ...] = ()
    inside: str = ""

    @property
    def version(self) -> str:
        """What its package says; nothing where it comes without one."""
        kind, _, name = self.source.partition(":")
        if kind == "distribution":
            return distribution(name).version
        if kind == "node":
            return _json(NODE_MODULES / name / "package.json")["version"]
        if kind == "lock":
            told = _json(PYODIDE / "pyodide-lock.json")["info"]
            return told["python"] if name == "python" else told["platform"].partition("_")[2].replace("_", ".")
        if kind == "root":
            return tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]["version"]
        return ""

    @property
    def all_texts(self) -> str:
        """Every text of its licence, one after the other. Raises: FileNotFoundError, when one is not there."""
        return _PARTED.join(f"{each.strip()}\n" for place in self.texts or (self.source,) for each in texts_at(place))


@cache
def components() -> tuple[Component, ...]:
    """Return everything that is shipped, the handbook first."""
    rows = tomllib.loads((DECLARED / "components.toml").read_text(encoding="utf-8"))["component"]
    return tuple(
        Component(
            id=row["id"],
            name=row["name"],
            license=row["license"],
            does=row["does"],
            source=row["from"],
            texts=tuple(row.get("texts", ())),
            files=tuple(row.get("files", ())),
            modules=tuple(row.get("modules", ())),
            inside=row.get("inside", ""),
        )
        for row in rows
    )


def texts_at(place: str) -> Iterator[str]:
    """Yield the texts at a place, as components.toml names it. Raises: FileNotFoundError, when there is none."""
    kind, _, where = place.partition(":")
    name, _, file = where.partition("/")
    found: list[str] = []
    if kind == "distribution":
        found = [Path(str(each.locate())).read_text(encoding="utf-8") for each in files_of(name) if _is(each, file)]
    elif kind == "node":
        found = [(NODE_MODULES / name / (file or "LICENSE")).read_text(encoding="utf-8")]
    elif kind in ("ours", "root"):
        found = [((DECLARED if kind == "ours" else ROOT) / where).read_text(encoding="utf-8")]
    elif kind == "comment":
        found = [_comments()[where]]
    elif kind == "standard":
        package, file, start = STANDARD[where]
        (whole,) = texts_at(f"distribution:{package}/{file}")
        found = [whole[whole.index(start) :]]
    if not found:
        raise FileNotFoundError(place)
    yield from found


def _is(file: PurePath, wanted: str) -> bool:
    """Whether a file of a package is the one that is wanted; any licence where none is named."""
    if "/" in wanted:
        return f"/{file.as_posix()}".endswith(f"/{wanted}")
    in_information = file.parts[0].endswith(".dist-info") and len(file.parts) <= 3
    named = file.name == wanted if wanted else file.name.upper().startswith(("LICENSE", "AUTHORS", "COPYING"))
    return in_information and named


def source_maps() -> Iterator[Data]:
    """Yield what each script and style of the theme that ships says that it was bundled of."""
    for file in sorted(files_of(OF_THE_THEME)):
        left_out = any(f"{unused}/" in file.as_posix() for unused in UNUSED)
        if file.suffix == ".map" and "assets" in file.parts and not left_out:
            yield _json(Path(str(file.locate())))


def bundled_by(source: str) -> str:
    """Return the package that a source in a source map belongs to; nothing for the theme's own."""
    found = re.search(r"node_modules/((?:@[^/]+/)?[^/]+)/", source)
    return found[1] if found else ""


@cache
def _comments() -> dict[str, str]:
    """Return what the source of each bundled package says of its licence, in its first comment that does."""
    found: dict[str, str] = {}
    for bundle in source_maps():
        for source, code in zip(bundle["sources"], bundle.get("sourcesContent", []), strict=False):
            package = bundled_by(source)
            for comment in re.findall(r"/\*.*?\*/", code, re.DOTALL) if package else ():
                if package not in found and re.search("copyright|©", comment, re.IGNORECASE):
                    found[package] = re.sub(r"(?m)^ \*+ ?", "", comment.strip("/*! \n")).strip()
    return found


def write_notices(site: Path) -> None:
    """Write `notices/ID.txt` for everything that is shipped. Raises: FileNotFoundError, when a text is not there."""
    (site / FOLDER).mkdir(exist_ok=True)
    for each in components():
        head = " ".join(filter(None, (each.name, each.version)))
        file = site / FOLDER / f"{each.id}.txt"
        file.write_text(f"{head}\n{each.license}\n\n{each.all_texts}", encoding="utf-8", newline="\n")


def notices_html(to_top: str) -> str:
    """Return the table of everything that is shipped; `to_top` leads from the page to the top folder."""
    head = "".join(
        f"<th>{text(words)}</th>"
        for words in (message("What"), message("Version"), message("What it does here"), message("License"))
    )
    rows = "".join(
        f'<tr id="{each.id}"><td><strong>{text(each.name)}</strong></td><td>{text(each.version)}</td>'
        f"<td>{text(each.does)}</td>"
        f'<td><a href="{to_top}{FOLDER}/{each.id}.txt">{text(each.license)}</a></td></tr>'
        for each in components()
    )
    return f'<table class="facts"><thead><tr>{head}</tr></thead><tbody>{rows}</tbody></table>'


def _json(file: Path) -> Data:
    return json.loads(file.read_text(encoding="utf-8"))
