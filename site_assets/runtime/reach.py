"""Runs inside the bundle: imports and calls all that a page can reach, and tells what is missing.

The last line is the program's value: JSON with `modules` (all that got imported),
`imported` (the bundle's own modules asked for) and `missing` (what failed, by name).
"""

import importlib
import json
import sys
import traceback
import zipfile
from collections.abc import Callable
from functools import partial

OWN = ("calc", "site_assets", "pint", "flexcache", "flexparser", "platformdirs", "typing_extensions")
missing: dict[str, str] = {}


def attempt(name: str, action: Callable[[], object]) -> None:
    """Do it; note the traceback under the name when it fails."""
    try:
        action()
    except Exception:  # noqa: BLE001 (whatever fails in a page is to be told)
        # Making the text reaches what error reports need.
        missing[name] = traceback.format_exc()


def asked_for() -> list[str]:
    """The bundle's modules besides the standard library."""
    archive = next(path for path in sys.path if path.endswith(".zip"))
    paths = [path.removesuffix(".pyc") for path in zipfile.ZipFile(archive).namelist() if path.endswith(".pyc")]
    names = [path.removesuffix("/__init__").replace("/", ".") for path in paths]
    # `__main__` is a command line, which a page has none of.
    return sorted(name for name in names if name.split(".")[0] in OWN and not name.endswith("__main__"))


def calculators() -> None:
    """Ask as the page does: each calculator's example, its empty form and an input nobody expects."""
    from urllib.parse import urlencode

    from calc.registry import CALCULATORS
    from site_assets.render.page_response import answer_request

    for slug, calculator in CALCULATORS.items():
        # A calculator that needs nothing answers an empty form.
        asked = {
            urlencode(calculator.example): ("answer",),
            "": ("answer", "fix"),
            "edition=never&no-field=%E2%98%83": ("fix",),
        }
        for query, outcomes in asked.items():
            got = json.loads(answer_request(slug, query))["outcome"]
            assert got in outcomes, f"{slug}?{query} ends as {got}, not {outcomes}"


def ranges() -> None:
    """Ask how far the drawn circuit may move."""
    from site_assets.render.scene_range_parts import scene_range_parts

    *_, last = scene_range_parts("take-a-bond-away", "edition=2023&fault=machine", 50)
    assert "<li>" in json.loads(last)["html"]


def tables() -> None:
    """Answer each calculator's example as a table in every encoding, and a table that cannot be used."""
    from calc.batch import example_table
    from calc.registry import CALCULATORS
    from site_assets.render.table_parts import table_parts

    for slug, calculator in CALCULATORS.items():
        for encoding in ("utf-8", "utf-8-sig", "utf-16"):
            parts = table_parts(slug, example_table(calculator).encode(encoding), "", 50)
            assert ",answer," in "".join(json.loads(part)["text"] for part in parts), f"{slug} in {encoding}"
        (part,) = table_parts(slug, b"\0\xff", "", 50)
        assert not json.loads(part)["text"]


imported = asked_for()
for each in [*imported, *globals().get("extras", [])]:
    attempt(each, partial(importlib.import_module, each))
attempt("the calculators", calculators)
attempt("the tables", tables)
attempt("the ranges", ranges)
json.dumps({"modules": sorted(sys.modules), "imported": imported, "missing": missing})
