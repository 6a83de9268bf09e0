"""Writes what makes a host send the headers of `host_headers`: a file for each kind of host, all from that declaration.

`_headers`, which hosts of plain files read, stands at the top of the site; those for web servers in `hosting`.
"""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from urllib.parse import quote, urlsplit

import jinja2

from site_assets.build.host_headers import (
    ASK_AGAIN,
    CACHING,
    FOR_EVER,
    FRAMED,
    HASHED,
    OTHER_TYPE,
    POLICY,
    SECURITY,
    SELDOM_KNOWN,
    TEXT,
    TYPES,
    headers_of,
    type_of,
    with_frames,
)

TEMPLATES = Path(__file__).parent.parent / "hosting"
FOLDER = "hosting"
OF_SERVERS = ("nginx.conf", "Caddyfile", "apache.conf")
AT_THE_TOP = "_headers"
_FILLED = jinja2.Environment(
    loader=jinja2.FileSystemLoader(TEMPLATES),
    undefined=jinja2.StrictUndefined,
    trim_blocks=True,
    lstrip_blocks=True,
    keep_trailing_newline=True,
    autoescape=False,
)

Headers = dict[str, str]


def write_host_files(site: Path, csp: str, address: str = "") -> None:
    """Write the files for hosts into a finished site with the policy `csp`; `address` is where it will stand."""
    base = urlsplit(address).path.rstrip("/")
    (site / FOLDER).mkdir(exist_ok=True)
    told = {
        "policy": with_frames(csp),
        "framed": FRAMED,
        "framed_policy": with_frames(csp, allowed=True),
        "policy_header": POLICY,
        "security": SECURITY,
        "caching_header": CACHING,
        "for_ever": FOR_EVER,
        "ask_again": ASK_AGAIN,
        "hashed": HASHED,
        "types": {suffix: kind.removesuffix(TEXT) for suffix, kind in TYPES.items()},
        "texts": [kind.removesuffix(TEXT) for kind in dict.fromkeys(TYPES.values()) if kind.endswith(TEXT)],
        "full_types": TYPES,
        "other_type": OTHER_TYPE,
    }
    for name in OF_SERVERS:
        _write(site / FOLDER / name, _FILLED.get_template(name).render(told))
    rules: dict[str, Headers] = {}
    for path, headers in (*rules_of(site, csp), *types_of(site)):
        rules[base + path] = rules.get(base + path, {}) | headers
    _write(site / AT_THE_TOP, _FILLED.get_template(AT_THE_TOP).render(rules=rules))


def rules_of(site: Path, csp: str) -> Iterator[tuple[str, Headers]]:
    """Yield a path, of a file or of a folder with `*`, and the headers of all that it names.

    No two name the same file: hosts differ in what they make of two rules that both state a header.
    """
    yield f"/{FRAMED}", headers_of(FRAMED, csp)
    yield f"/{FRAMED.removesuffix('.html')}", headers_of(FRAMED, csp)
    yield "/", headers_of("index.html", csp)
    for path in sorted(site.iterdir()):
        yield from _rules_below(site, path, csp)


def _rules_below(site: Path, path: Path, csp: str) -> Iterator[tuple[str, Headers]]:
    name = path.relative_to(site).as_posix()
    if path.is_file():
        if name in (FRAMED, AT_THE_TOP):
            return
        yield f"/{quote(name)}", headers_of(name, csp)
        if path.suffix == ".html" and path.name != "index.html":
            # Some hosts leave the ending out of the address.
            yield f"/{quote(name.removesuffix('.html'))}", headers_of(name, csp)
        return
    files = [file.relative_to(site).as_posix() for file in sorted(path.rglob("*")) if file.is_file()]
    kinds = [headers_of(file, csp) for file in files]
    if kinds and all(kind == kinds[0] for kind in kinds):
        yield f"/{quote(name)}/*", kinds[0]
        return
    for below in sorted(path.iterdir()):
        yield from _rules_below(site, below, csp)


def types_of(site: Path) -> Iterator[tuple[str, Headers]]:
    """Yield each file of a type that hosts may not know, and the header that states it."""
    for file in sorted(site.rglob("*")):
        if file.suffix in SELDOM_KNOWN:
            name = file.relative_to(site).as_posix()
            yield f"/{quote(name)}", {"Content-Type": type_of(name)}


def _write(file: Path, text: str) -> None:
    file.write_text(text, encoding="utf-8", newline="\n")
