"""The content policy of the built site, and the proof that every page can live under it."""

from __future__ import annotations

import base64
import hashlib
import re
from collections.abc import Iterable
from html.parser import HTMLParser
from pathlib import Path

DIRECTIVES = (
    "default-src 'none'",
    "script-src 'self' 'wasm-unsafe-eval'{hashes}",
    "worker-src 'self'",
    "connect-src 'self'",
    "manifest-src 'self'",
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
)

# Opened from a disk: scripts hand over what else would be fetched, and blobs hold workers and what these import.
FROM_DISK = {
    "script-src 'self'": "script-src 'self' blob:",
    "worker-src 'self'": "worker-src blob:",
    "connect-src 'self'": "connect-src 'none'",
    "manifest-src 'self'": "manifest-src 'none'",
}

SCRIPT_TYPES = {"", "text/javascript", "application/javascript", "module"}
LINK_KINDS_FOLLOWED_BY_THE_READER = {"canonical", "alternate", "license", "author"}

_OUTSIDE = re.compile(r"^\s*(?:https?:)?//", re.IGNORECASE)
_OUTSIDE_IN_CSS = re.compile(r"(?:url\(\s*|@import\s+)[\"']?\s*(?:https?:)?//", re.IGNORECASE)
_CHARSET = re.compile(r"<meta charset=[^>]*>", re.IGNORECASE)
_HEAD = re.compile(r"<head[^>]*>", re.IGNORECASE)
_REMOVED = re.compile(
    r"\s*(?:<meta name=\"?generator\"?[^>]*>"
    r"|<meta http-equiv=\"?Content-Security-Policy\"?[^>]*>"
    # What a browser fetches ahead, unasked: Firefox does so with the next page.
    r"|<link rel=\"?(?:preconnect|dns-prefetch|prev|next)\"?[^>]*>)",
    re.IGNORECASE,
)


class CspError(Exception):
    """A built page holds something that the policy blocks or that leads to an outside host."""


class _Page(HTMLParser):
    """One page read for its inline scripts and for what the policy would block."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=False)
        self.inline_scripts: list[str] = []
        self.faults: list[str] = []
        self._script: list[str] | None = None

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if tag == "style":
            self._fault("a <style> element")
        for name, value in given.items():
            if name == "style":
                self._fault(f'a style attribute on <{tag}>: "{value}"')
            elif name.startswith("on"):
                self._fault(f"an {name} attribute on <{tag}>")
            elif name in {"href", "src", "action"} and value.strip().lower().startswith("javascript:"):
                self._fault(f"a javascript: address on <{tag}>")
        for address in _loaded(tag, given):
            if _OUTSIDE.match(address):
                self._fault(f"<{tag}> loads from outside: {address.strip()}")
        if tag == "script" and "src" not in given and given.get("type", "").lower() in SCRIPT_TYPES:
            self._script = []

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.handle_starttag(tag, attrs)

    def handle_data(self, data: str) -> None:
        if self._script is not None:
            self._script.append(data)

    def handle_endtag(self, tag: str) -> None:
        if tag == "script" and self._script is not None:
            self.inline_scripts.append("".join(self._script))
            self._script = None

    def _fault(self, words: str) -> None:
        self.faults.append(f"line {self.getpos()[0]}: {words}")


def _loaded(tag: str, given: dict[str, str]) -> list[str]:
    """The addresses that a browser fetches for this element by itself."""
    if tag in {"a", "area"}:
        return []
    if tag == "link":
        kinds = set(given.get("rel", "").lower().split())
        return [] if kinds <= LINK_KINDS_FOLLOWED_BY_THE_READER else [given.get("href", "")]
    addresses = [given[name] for name in ("src", "data", "poster", "action", "formaction") if name in given]
    if tag in {"use", "image", "base", "feimage"}:
        addresses += [given[name] for name in ("href", "xlink:href") if name in given]
    candidates = given.get("srcset", "").split(",")
    return addresses + [candidate.split()[0] for candidate in candidates if candidate.split()]


def _hash(script: str) -> str:
    digest = hashlib.sha256(script.encode()).digest()
    return f"'sha256-{base64.b64encode(digest).decode()}'"


def policy_of(inline_scripts: Iterable[str]) -> str:
    """Return the policy that allows our own files and just these inline scripts."""
    hashes = "".join(f" {each}" for each in sorted({_hash(script) for script in inline_scripts}))
    return "; ".join(directive.format(hashes=hashes) for directive in DIRECTIVES)


def _with_policy(html: str, csp: str) -> str:
    """Put the policy ahead of everything that a page loads.

    The charset stays first: browsers look for it in the first 1024 bytes only, and the
    policy alone nearly fills them.
    """
    anchor = _CHARSET.search(html) or _HEAD.search(html)
    if anchor is None:
        raise CspError("no <head> to put the policy in")
    meta = f'\n    <meta http-equiv="Content-Security-Policy" content="{csp}">'
    return html[: anchor.end()] + meta + html[anchor.end() :]


def apply_disk_csp(folder: Path, csp: str) -> None:
    """Write the policy of a disk into every page of a folder; `csp` is that of the site, which the same parts met."""
    for own, on_disk in FROM_DISK.items():
        csp = csp.replace(own, on_disk)
    for path in sorted(folder.rglob("*.html")):
        html = _REMOVED.sub("", path.read_text(encoding="utf-8"))
        path.write_text(_with_policy(html, csp), encoding="utf-8")


def apply_csp(site_dir: Path) -> str:
    """Write one content policy into every page of `site_dir`, and give it.

    Takes out the generator's name and earlier policies first, so it can run again on the
    same folder. Raises CspError, naming file and line, when a page holds what the policy
    would block (a style element or attribute, an event attribute, a javascript: address) or
    when a page or style sheet loads anything from an outside host. Nothing is written then.
    """
    pages: dict[Path, str] = {}
    inline_scripts: list[str] = []
    faults: list[str] = []
    for path in sorted(site_dir.rglob("*.html")):
        html = _REMOVED.sub("", path.read_text(encoding="utf-8"))
        page = _Page()
        page.feed(html)
        page.close()
        pages[path] = html
        inline_scripts += page.inline_scripts
        faults += [f"{path.relative_to(site_dir)}, {fault}" for fault in page.faults]
    for path in sorted(site_dir.rglob("*.css")):
        if _OUTSIDE_IN_CSS.search(path.read_text(encoding="utf-8")):
            faults.append(f"{path.relative_to(site_dir)}: loads from outside")
    if not pages:
        raise CspError(f"no pages in {site_dir.name}")
    if faults:
        raise CspError("pages that the content policy would break:\n  " + "\n  ".join(faults))

    csp = policy_of(inline_scripts)
    for path, html in pages.items():
        path.write_text(_with_policy(html, csp), encoding="utf-8")
    return csp
