"""An update whose pages only call scripts and styles by other names: they are made of those kept, to the byte."""

import json

from site_assets.build.precache import write_service_worker
from site_assets.build.runtime_list import UNSET, bind_pages
from tests.browser.offline.published import (
    RUNTIME_LIST,
    asked_for,
    damage,
    hashes,
    pages_of,
    press,
    save,
    served,
    take_away_network,
    wait_for,
)

STYLE = "styles/form.css"
OTHER = "0123456789ab"
CALCULATOR = "calculators/main-bonding-jumper.html"


def restyle(folder, other_words):
    """Publish another style as a build does: the kit, and so each page and its version, has another name."""
    kit = next((folder / "kit").iterdir())
    kit.rename(kit.with_name(OTHER))
    with (folder / "kit" / OTHER / STYLE).open("a") as file:
        file.write("\n.of-another-version { color: inherit; }\n")
    listed = json.loads((folder / RUNTIME_LIST).read_text())
    for path in folder.rglob("*.html"):
        name = path.relative_to(folder).as_posix()
        html = path.read_text(encoding="utf-8").replace(f"kit/{kit.name}/", f"kit/{OTHER}/")
        if name in listed["pages"]:
            assert html.count(listed["pages"][name]) == 1
            html = html.replace(listed["pages"][name], UNSET)
        if name in other_words:
            html = html.replace("</main>", "<p>Said anew.</p></main>", 1)
        path.write_text(html, encoding="utf-8")
    bind_pages(folder)
    write_service_worker(folder, "second")
    return f"kit/{OTHER}/{STYLE}"


def update(page, server):
    """Let a page find the update and return what was asked for."""
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    return sorted(asked_for(server))


def test_another_style_costs_itself_and_of_the_pages_those_that_say_more_or_whose_copy_is_damaged(
    context, page, server, folder
):
    save(page)
    damaged = next(path for path in pages_of(folder) if path.startswith("places/"))
    damage(page, folder, damaged)
    style = restyle(folder, other_words=[CALCULATOR])
    assert update(page, server) == sorted([style, RUNTIME_LIST, CALCULATOR, damaged])
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)
    page.goto(f"{server.address}{CALCULATOR}")
    assert page.evaluate("(kit) => [...document.styleSheets].some(({ href }) => href.includes(`${kit}/styles`))", OTHER)
