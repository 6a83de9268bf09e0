"""Which files of the runtime belong together, and to which pages: `runtime/files.json`.

No page names these files, or every page with a form would change with every figure. A page names its own version, a
hash of all that it says, and the list names the version of each page that the files belong to. Between two versions of
the handbook a page whose words are the same in both belongs to both; any other starts nothing and says so.
"""

from __future__ import annotations

import hashlib
import json
from pathlib import Path

from calc.data_file import Data

FOLDER = "runtime"
FILE = "files.json"
# Stands in a page for its version until all else in it is as it will be.
UNSET = "version-of-this-page"


def runtime_of_page(page: str, to_top: str) -> dict[str, str]:
    """Return what the script of a page, "calculators/main-bonding-jumper", must know to start Python."""
    return {"list": f"{to_top}{FOLDER}/{FILE}", "page": f"{page}.html", "version": UNSET}


def write_list(folder: Path, runtime: Data) -> None:
    """Write what `build_runtime` returned into the folder of the runtime; the pages are not there yet."""
    (folder / FILE).write_text(json.dumps(runtime), encoding="utf-8")


def bind_pages(site: Path) -> None:
    """Give each page that starts Python its version, and list it. Call it when nothing else in a page will change."""
    pages: dict[str, str] = {}
    for file in sorted(site.rglob("*.html")):
        html = file.read_text(encoding="utf-8")
        if UNSET in html:
            version = hashlib.sha256(html.encode()).hexdigest()[:12]
            file.write_text(html.replace(UNSET, version), encoding="utf-8")
            pages[file.relative_to(site).as_posix()] = version
    listed = json.loads((site / FOLDER / FILE).read_text(encoding="utf-8"))
    write_list(site / FOLDER, listed | {"pages": pages})
