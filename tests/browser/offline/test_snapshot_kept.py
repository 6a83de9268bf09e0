"""The memory snapshot beside the saved handbook: no update's clean-up takes it, removing the handbook does."""

import pytest
from playwright.sync_api import expect

from site_assets.build.runtime import FIRST, LATER
from tests.browser.offline.published import (
    SUB_PATH,
    evict,
    press,
    publish,
    runtime_file,
    save,
    take_away_network,
    wait_for,
)

NAME = f"snapshot {SUB_PATH}"
KEEP_SOMETHING = "async (name) => { await (await caches.open(name)).put('kept', new Response('memory')); }"
KEEP_MUCH = """async ([name, size]) => {
  await (await caches.open(name)).put("kept", new Response(new Uint8Array(size)));
}"""
CASE = "calculators/main-bonding-jumper.html?edition=2023&conductor=500kcmil&sets=2"
IS_KEPT = """async (name) => (await caches.has(name))
  && (await (await caches.open(name)).keys()).some(({ url }) => url.includes("checked="))"""


@pytest.mark.long
def test_an_update_leaves_the_snapshot_and_removing_the_handbook_takes_it(page, folder):
    save(page)
    page.evaluate(KEEP_SOMETHING, NAME)
    publish(folder, "second", changed=["index.html"])
    page.reload()
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    assert NAME in page.evaluate("caches.keys()")
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    for _ in range(100):
        if page.evaluate("caches.keys()") == []:
            break
        page.wait_for_timeout(50)
    assert page.evaluate("caches.keys()") == []


@pytest.mark.long
def test_a_full_device_gives_up_the_snapshot_before_the_update(context, page, server, folder):
    save(page)
    page.evaluate(KEEP_MUCH, [NAME, 25_000_000])
    wasm = runtime_file(folder, "pyodide.asm.wasm")
    kept = page.evaluate("async () => (await navigator.storage.estimate()).usage")
    origin = {"origin": server.address.partition(SUB_PATH)[0], "quotaSize": kept + 4_000_000}
    context.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", origin)
    publish(folder, "second", changed=[wasm])  # 8.6 MB
    page.reload()
    wait_for(page, "update")
    assert NAME not in page.evaluate("caches.keys()")


@pytest.mark.long
def test_with_the_server_gone_a_calculator_starts_from_the_snapshot_even_without_its_library(
    context, page, server, folder
):
    save(page)
    page.goto(server.address + CASE)
    expect(page.locator("[data-result] .answer-size")).to_be_visible()
    while not page.evaluate(IS_KEPT, NAME):
        page.wait_for_timeout(500)
    take_away_network(context, server)
    evict(page, folder, *(runtime_file(folder, name) for name in (*FIRST, *LATER)))
    page.goto(server.address + CASE)
    expect(page.locator("[data-result] .answer-size")).to_have_text("2/0 AWG copper wire or larger")
