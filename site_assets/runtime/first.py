"""Runs inside the bundle: answers the first calculators as a page does, and tells what that imported.

The last line is the program's value: JSON with the names of the modules that came from the archive.
"""

import json
import sys
from urllib.parse import urlencode

from site_assets.render import later

later.expect_modules()

from site_assets.render.page_response import answer_request  # noqa: E402

for slug in globals()["slugs"]:
    from calc.registry import CALCULATORS

    calculator = CALCULATORS[slug]
    assert json.loads(answer_request(slug, urlencode(calculator.example)))["outcome"] == "answer", slug
    # An empty form, a word nobody expects, and a field that is not known.
    assert json.loads(answer_request(slug, ""))["html"]
    assert json.loads(answer_request(slug, "edition=never&no-field=%E2%98%83"))["outcome"] == "fix", slug

archive = next(path for path in sys.path if path.endswith(".zip"))
files = {name: getattr(module, "__file__", None) or "" for name, module in sys.modules.items()}
json.dumps(sorted(name for name, file in files.items() if file.startswith(archive)))
