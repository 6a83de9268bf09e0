"""What three changes of the handbook cost a phone that has it saved: a figure, a sentence, a style; each is built."""

import tempfile
from pathlib import Path

from site_assets.build.precache import WORKER
from site_assets.build.serve import Server
from site_assets.setup.paths import SITE
from tests.browser.offline.published import SUB_PATH, asked_for, save, wait_for
from tests.browser.offline.test_small_changes import CHANGES, FIGURE_BUDGET, STYLE_BUDGET, built_with, cost
from tests.speed.browser import started_browser
from tests.speed.row import Row

BUDGETS = {"figure": FIGURE_BUDGET, "style": STYLE_BUDGET}


def rows():
    """Yield the bytes of each update as a host sends them that compresses, and how many pages are fetched."""
    with started_browser() as browser:
        for kind in CHANGES:
            with tempfile.TemporaryDirectory() as scratch, Server(SITE, SUB_PATH) as server:
                page = browser.new_context().new_page()
                page.goto(server.address)
                save(page)
                changed = built_with(kind, Path(scratch) / "changed")
                server.folder = changed.resolve()
                server.requested.clear()
                page.reload()
                wait_for(page, "update")
                sent = cost(changed, [*asked_for(server), WORKER])
                page.context.close()
            pages = sum(path.endswith(".html") for path in sent)
            budget = BUDGETS.get(kind, 0) / 1000 or None
            name = f"update of one {kind}, saved phone, brotli 11"
            yield Row(name, sum(sent.values()) / 1000, "kB", budget, f"{pages} pages")
