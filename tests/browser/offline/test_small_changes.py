"""What a small change costs a phone that has the handbook saved: the handbook is built with it, and taken over."""

import os
import shutil
import subprocess
import sys

import brotli
import pytest

from site_assets.build.precache import WORKER
from site_assets.setup.paths import ROOT
from tests.browser.offline.published import (
    asked_for,
    hashes,
    press,
    save,
    served,
    take_away_network,
    wait_for,
)

BUILT_FROM = ("calc", "docs", "site_assets", "mkdocs.yml", "pyproject.toml", "LICENSE")
HOUSEHOLD = ("search/index.json", "runtime/files.json")  # all that is said, and what belongs together
FIGURE_BUDGET = 800_000  # bytes, brotli 11
STYLE_BUDGET = 50_000
# File, what stands there once, what comes in its place.
CHANGES = {
    "figure": ("calc/rules/raceways/elbow_cover_other.toml", "inches = 18, ", "inches = 19, "),
    "sentence": ("calc/jumpers/main_bonding_jumper.py", "no service conductors of", "no conductors of"),
    "style": ("site_assets/styles/form.css", None, "\n.choice-of-another-version { color: inherit; }\n"),
}


def changed_project(kind, root):
    """The project with one change, in a folder of its own."""
    for name in BUILT_FROM:
        whole = ROOT / name
        (shutil.copytree if whole.is_dir() else shutil.copyfile)(whole, root / name)
    for name in (".tools", ".venv"):
        (root / name).symlink_to((ROOT / name).resolve())
    name, old, new = CHANGES[kind]
    text = (root / name).read_text(encoding="utf-8")
    assert old is None or text.count(old) >= 1
    (root / name).write_text(text.replace(old, new, 1) if old else text + new, encoding="utf-8")
    return root


def built_with(kind, root):
    """The site that the project gives with one change."""
    project = changed_project(kind, root)
    command = [sys.executable, "-m", "mkdocs", "build", "--strict"]
    quiet = os.environ | {"NO_MKDOCS_2_WARNING": "1"}
    made = subprocess.run(command, cwd=project, capture_output=True, text=True, env=quiet, check=False)
    assert made.returncode == 0, made.stdout + made.stderr
    return project / "site"


def cost(folder, paths):
    """Bytes of files as a host sends them that compresses."""
    return {path: len(brotli.compress((folder / path).read_bytes())) for path in paths}


@pytest.mark.long
@pytest.mark.parametrize("kind", CHANGES)
def test_a_saved_phone_fetches_what_a_change_changed_and_nothing_else(context, page, server, folder, kind, tmp_path):
    save(page)
    before = hashes(folder)
    site = built_with(kind, tmp_path / "changed")
    after = hashes(site)
    changed = {path for path in after if before.get(path) != after[path]}
    moved = {path for path in changed if after[path] in before.values()}
    # A page that only calls its styles and its version by other names is made of the one that is kept.
    made = {path for path in changed if path.endswith(".html")} if kind == "style" else set()
    server.folder = site.resolve()
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    fetched = asked_for(server)
    assert sorted(fetched) == sorted(changed - moved - made)
    sent = cost(site, [*fetched, WORKER])
    pages = [path for path in fetched if path.endswith(".html")]
    print(f"\n{kind}: {sum(sent.values()):,} bytes in {len(sent)} files, {len(pages)} pages: {sent}")
    if kind == "figure":
        archives = {path for path in changed if path.startswith("runtime/") and path.endswith(".zip")}
        assert {path.rpartition("/")[2] for path in archives} == {"rules.zip"}
        assert set(fetched) <= {*pages, *HOUSEHOLD, *archives}
        assert sum(sent.values()) <= FIGURE_BUDGET
    if kind == "style":
        assert len(made) == len([path for path in after if path.endswith(".html")])
        assert sum(sent.values()) <= STYLE_BUDGET
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    take_away_network(context, server)
    assert served(page, server, after) == after
