"""The handbook saved on the device: with the server gone, while it saves, and removed again."""

import re

import pytest
from playwright.sync_api import Error, expect

from site_assets.build.search_page import FIELD, FOUND, PAGE
from tests.browser.offline.published import (
    STATUS,
    STORED,
    SUB_PATH,
    Slow,
    asked_for,
    broken,
    group,
    hash_of,
    hashes,
    pages_of,
    press,
    runtime_file,
    save,
    served,
    status_line,
    take_away_network,
    wait_for,
)

PROGRESS = """() => {
  const bar = document.querySelector("[data-offline] progress").value;
  const words = document.querySelector("[data-offline-amount]").textContent;
  return bar > 0 && bar < 1 ? { bar, words } : null;
}"""


def test_after_one_visit_everything_works_with_the_server_gone(context, page, server, folder):
    wait_for(page, "ready")  # nothing was pressed
    take_away_network(context, server)
    for path in pages_of(folder):
        assert page.goto(server.address + path).status == 200, path
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_saving_and_reading_what_was_saved_stay_within_the_content_policy(page, server):
    complaints = []
    page.on("console", lambda line: complaints.append(line.text) if "Content Security Policy" in line.text else None)
    save(page)
    page.reload()
    wait_for(page, "ready")
    assert complaints == []


def test_a_permalink_opens_the_saved_page_whatever_its_query(context, page, server, folder):
    save(page)
    take_away_network(context, server)
    path = pages_of(folder)[0]
    link = f"{server.address}{path}?edition=2023&conductor=3/0&said=4-copper#working"
    answer = page.goto(link)
    assert answer.status == 200
    assert hash_of(answer.body()) == hashes(folder)[path]
    assert page.url == link
    assert page.goto(f"{server.address}?edition=2020").status == 200


def test_a_calculator_answers_with_the_server_gone(context, page, server):
    save(page)
    take_away_network(context, server)
    inputs = "edition=2023&conductor=3/0&sets=1&conductor_metal=copper&metal=copper"
    page.goto(f"{server.address}calculators/main-bonding-jumper.html?{inputs}")
    # 3/0 copper stands in the row "over 1/0 through 3/0" of Table 250.102(C)(1): 4 AWG copper.
    expect(page.locator("[data-result]")).to_contain_text("4 AWG", timeout=60_000)


def test_the_search_finds_pages_with_the_server_gone(context, page, server):
    save(page)
    take_away_network(context, server)
    page.goto(server.address + PAGE)
    page.fill(FIELD, "bonding")
    expect(page.locator(FOUND).first).to_be_visible()


def test_an_unknown_address_shows_the_saved_page_for_that(context, page, server, folder):
    save(page)
    take_away_network(context, server)
    for path in ("nobody-wrote-this.html", "parts/nobody-wrote-this.html", "no/such/folder/"):
        answer = page.goto(server.address + path)
        assert answer.status == 404
        assert hash_of(answer.body()) == hashes(folder)["404.html"]
        wait_for(page, "ready")  # its scripts and the worker are found from any depth


def test_a_second_visit_asks_the_server_for_no_content(context, page, server, folder):
    save(page)
    page.close()
    server.requested.clear()
    again = context.new_page()
    again.goto(server.address)
    wait_for(again, "ready")
    again.goto(server.address + pages_of(folder)[-1])
    wait_for(again, "ready")
    assert served(again, server, hashes(folder)) == hashes(folder)
    assert asked_for(server) == []


def test_a_first_visit_that_fails_leaves_no_half_of_the_pages(context, page, server, folder):
    path = pages_of(folder)[-1]
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
        expect(status_line(page)).to_contain_text(path)
        other = context.new_page()
        context.set_offline(True)
        with pytest.raises(Error, match="ERR_INTERNET_DISCONNECTED"):
            other.goto(server.address)
        context.set_offline(False)
    page.reload()
    wait_for(page, "ready")  # it is begun again, nothing is pressed
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_a_failure_among_the_calculators_leaves_the_pages_and_nothing_broken(context, page, server, folder):
    path = runtime_file(folder)
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
        expect(status_line(page)).to_contain_text(path)
        context.set_offline(True)
        page.reload()
        reading, calculating = (group(hashes(folder), name) for name in ("reading", "calculating"))
        assert served(page, server, reading) == reading
        kept = served(page, server, calculating)
        assert kept[path] is None
        # What is kept is this version's to the byte, so what is fetched later fits it.
        assert all(kept[each] in (None, calculating[each]) for each in calculating)
        context.set_offline(False)
    page.reload()
    wait_for(page, "ready")  # it is begun again, nothing is pressed


def test_removing_asks_first_and_then_leaves_nothing(context, page, server):
    save(page)
    press(page, "ask")
    press(page, "keep")
    wait_for(page, "ready")
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    assert page.evaluate(STORED) == []
    page.goto("about:blank")
    context.set_offline(True)
    with pytest.raises(Error, match="ERR_INTERNET_DISCONNECTED"):
        page.goto(server.address)


def test_after_removing_everything_can_be_saved_again(page, server, folder):
    save(page)
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    save(page)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_saving_shows_how_far_it_is(page, server):
    server.requested = Slow()
    press(page, "save")
    wait_for(page, "saving")
    # The words and the bar are read at one moment, for between two moments more has arrived.
    shown = page.wait_for_function(PROGRESS).json_value()
    done, total = map(float, re.fullmatch(r"(\d+\.\d) of (\d+\.\d) MB", shown["words"]).groups())
    assert shown["bar"] == pytest.approx(done / total, abs=0.1 / total)
    wait_for(page, "ready")


def test_a_device_without_room_is_told_so_and_keeps_its_pages(context, page, server, folder):
    pages = sum(file.stat().st_size for file in folder.rglob("*") if file.is_file() and "runtime" not in file.parts)
    room = {"origin": server.address.removesuffix(SUB_PATH), "quotaSize": pages + 5_000_000}
    context.new_cdp_session(page).send("Storage.overrideQuotaForOrigin", room)
    press(page, "save")
    wait_for(page, "full")
    take_away_network(context, server)
    assert page.reload().status == 200


def test_a_browser_that_cannot_save_says_so(page):
    page.add_init_script("Object.defineProperty(Navigator.prototype, 'serviceWorker', { value: undefined })")
    page.reload()
    wait_for(page, "unsupported")


def test_requests_that_are_not_plain_reading_go_to_the_network(context, page, server):
    save(page)
    assert page.evaluate(STATUS, [server.address, {}]) == 200
    take_away_network(context, server)
    assert page.evaluate(STATUS, [server.address, {}]) == 200
    assert page.evaluate(STATUS, [server.address, {"method": "POST"}]) is None
    assert page.evaluate(STATUS, [server.address, {"headers": {"Range": "bytes=0-9"}}]) is None


def test_a_button_that_goes_away_hands_its_focus_to_the_next(page):
    save(page)
    page.locator('[data-offline-do="ask"]').focus()
    page.keyboard.press("Enter")
    expect(page.locator('[data-offline-do="reset"]')).to_be_focused()
