"""What a host should send with each file of the site: the one declaration that every host's own file is made from."""

from __future__ import annotations

import re
from pathlib import PurePosixPath

POLICY = "Content-Security-Policy"
# May stand in a page of others; no other page may, or a reader could be led to press what is hidden.
FRAMED = "embed.html"
CACHING = "Cache-Control"
# A file of this address never changes; every other file is asked for again, which costs a question and no bytes.
FOR_EVER = "public, max-age=31536000, immutable"
ASK_AGAIN = "no-cache"
# A hash of what a file holds stands in its address, as a folder's name or as a part of its own.
HASHED = "[/.][0-9a-f]{8,16}[/.]"
SECURITY = {
    "X-Content-Type-Options": "nosniff",
    # The address of an answer holds the reader's inputs.
    "Referrer-Policy": "no-referrer",
}
OTHER_TYPE = "application/octet-stream"
TEXT = "; charset=utf-8"
TYPES = {
    ".css": f"text/css{TEXT}",
    ".gz": "application/gzip",
    ".html": f"text/html{TEXT}",
    ".ico": "image/x-icon",
    ".js": f"text/javascript{TEXT}",
    ".json": "application/json",
    ".map": "application/json",
    ".mjs": f"text/javascript{TEXT}",
    ".pdf": "application/pdf",
    ".png": "image/png",
    ".svg": "image/svg+xml",
    ".txt": f"text/plain{TEXT}",
    ".wasm": "application/wasm",
    ".webmanifest": "application/manifest+json",
    ".woff2": "font/woff2",
    ".xml": "application/xml",
    ".zip": "application/zip",
}
# Types that hosts do not all know by themselves; a browser runs no module and compiles nothing of another type.
SELDOM_KNOWN = (".gz", ".mjs", ".wasm", ".webmanifest", ".zip")


def headers_of(path: str, csp: str) -> dict[str, str]:
    """Return the headers of a file, by its path in the site; `csp` is the policy that the pages state themselves."""
    return {
        POLICY: with_frames(csp, allowed=path == FRAMED),
        CACHING: FOR_EVER if re.search(HASHED, f"/{path}") else ASK_AGAIN,
        **SECURITY,
    }


def type_of(path: str) -> str:
    """Return the content type of a file by its name."""
    return TYPES.get(PurePosixPath(path).suffix, OTHER_TYPE)


def with_frames(csp: str, *, allowed: bool = False) -> str:
    """Return a policy that says too who may show the page in a frame, which a page cannot say of itself."""
    return f"{csp}; frame-ancestors {'*' if allowed else "'none'"}"
