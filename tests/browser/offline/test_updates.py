"""A newer version of the saved handbook: fetched sparingly, interrupted at every step, never mixed with the old."""

import re
import time

import pytest
from playwright.sync_api import expect

from tests.browser.conftest import fill_jumper_form
from tests.browser.offline.published import (
    KITS_IN_USE,
    RUNTIME_LIST,
    STATUS,
    STORED,
    Dying,
    Slow,
    asked_for,
    broken,
    group,
    hashes,
    move_kit,
    pages_of,
    press,
    publish,
    runtime_file,
    save,
    served,
    some_changes,
    status_line,
    take_away_network,
    tell,
    wait_for,
)

FETCHES_AT_ONCE = 4
PATIENCE = 10  # pages opened until the browser has seen that the last one is closed


def test_an_update_fetches_only_what_changed_and_each_file_once(page, server, folder):
    save(page)
    changed = some_changes(folder)
    publish(folder, "second", changed=changed)
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    assert sorted(asked_for(server)) == sorted(changed)


def test_a_file_that_only_moved_is_not_fetched_again_and_works_at_its_new_place(context, page, server, folder):
    save(page)
    move_kit(folder)
    server.requested.clear()
    page.reload()
    wait_for(page, "update")
    assert set(asked_for(server)) <= {"404.html", RUNTIME_LIST, *pages_of(folder)}
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    page.reload()
    wait_for(page, "ready")  # the page's own scripts have moved and run
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_other_pages_under_the_same_version_name_are_an_update_too(context, page, server, folder):
    save(page)
    publish(folder, "first", changed=["index.html"])
    page.reload()
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_an_update_waits_until_it_is_pressed(page, server, folder):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    page.reload()
    wait_for(page, "update")
    assert served(page, server, old) == old


def test_a_pressed_update_replaces_everything_and_leaves_nothing_of_the_old(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    expect(status_line(page)).to_contain_text("second")
    take_away_network(context, server)
    page.reload()
    new = hashes(folder)
    assert served(page, server, new) == new
    marks = 4  # of each group: that it was whole, and the day of this version
    assert len(page.evaluate(STORED)) == marks + len(new)


def test_an_update_takes_over_once_every_page_is_closed(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    page.close()
    # A browser takes its time to see that no page is left; one opened before keeps the old version whole.
    for _ in range(PATIENCE):
        again = context.new_page()
        again.goto(server.address)
        wait_for(again, re.compile("^(ready|update)$"))
        if "second" in status_line(again).inner_text():
            break
        again.close()
        time.sleep(1)
    wait_for(again, "ready")
    expect(status_line(again)).to_contain_text("second")
    assert served(again, server, hashes(folder)) == hashes(folder)


@pytest.mark.parametrize("kind", ["page", "runtime file"])
def test_an_update_with_one_broken_file_keeps_the_old_version_whole(context, page, server, folder, kind):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=some_changes(folder))
    path = "index.html" if kind == "page" else runtime_file(folder)
    with broken(folder, path):
        page.reload()
        wait_for(page, "update-failed")
        expect(status_line(page)).to_contain_text(path)
        take_away_network(context, server)
        page.reload()
        wait_for(page, "ready")
        assert served(page, server, old) == old


def test_an_update_cut_off_half_way_keeps_the_old_version_whole(context, page, server, folder):
    save(page)
    old = hashes(folder)
    publish(folder, "second", changed=[*pages_of(folder), runtime_file(folder)])
    server.requested = Dying()
    server.requested.answers = 1 + len(pages_of(folder)) // 2
    page.reload()
    wait_for(page, "update-failed")
    take_away_network(context, server)
    page.reload()
    wait_for(page, "ready")
    assert served(page, server, old) == old


def test_an_update_cut_off_half_way_goes_on_where_it_stopped(page, server, folder):
    save(page)
    changed = [*pages_of(folder), runtime_file(folder)]
    publish(folder, "second", changed=changed)
    server.requested = Dying()
    server.requested.answers = 1 + len(changed) // 2
    page.reload()
    wait_for(page, "update-failed")
    arrived = set(asked_for(server))
    assert arrived and arrived < set(changed)
    server.requested = []
    press(page, "retry")
    wait_for(page, "update")
    again = asked_for(server)
    assert len(again) == len(set(again))
    assert set(changed) - arrived <= set(again) <= set(changed)
    # What was still on its way to the store when the server died is fetched a second time, no more.
    assert len(set(again) & arrived) < FETCHES_AT_ONCE


def test_pages_of_one_version_never_get_calculators_of_another(page, server, folder):
    path = runtime_file(folder)
    with broken(folder, path):
        press(page, "save")
        wait_for(page, "failed")
    old = hashes(folder)
    publish(folder, "second", changed=[path])
    assert page.evaluate(STATUS, [server.address + path, {"cache": "reload"}]) is None
    page.reload()
    assert served(page, server, group(old, "reading")) == group(old, "reading")


def test_an_old_version_that_saves_again_leaves_the_waiting_one_whole(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    tell(page, "active", "save")
    page.wait_for_timeout(1_000)
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_an_update_pressed_while_the_next_is_being_saved_harms_neither(context, page, server, folder):
    save(page)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    wait_for(page, "update")
    second = hashes(folder)
    publish(folder, "third", changed=[*pages_of(folder), runtime_file(folder)])
    server.requested = Slow()
    page.evaluate("navigator.serviceWorker.ready.then((registration) => { registration.update(); })")
    wait_for(page, "saving")
    with page.expect_navigation():
        tell(page, "waiting", "take-over")
    assert served(page, server, second) == second
    wait_for(page, "update")
    with page.expect_navigation():
        press(page, "update")
    take_away_network(context, server)
    assert served(page, server, hashes(folder)) == hashes(folder)


def test_two_open_pages_see_one_version(context, page, server, folder):
    save(page)
    old = hashes(folder)
    other = context.new_page()
    other.goto(server.address)
    publish(folder, "second", changed=some_changes(folder))
    page.reload()
    for opened in (page, other):
        wait_for(opened, "update")
        assert served(opened, server, old) == old
    with other.expect_navigation(), page.expect_navigation():
        press(page, "update")
    for opened in (page, other):
        wait_for(opened, "ready")
        expect(status_line(opened)).to_contain_text("second")
        assert served(opened, server, hashes(folder)) == hashes(folder)
        assert opened.evaluate("document.lastChild.data") == " second "


def test_a_page_from_before_an_update_works_out_with_its_own_version_and_takes_the_new_one_whole(page, server, folder):
    save(page)
    page.goto(f"{server.address}calculators/main-bonding-jumper.html")
    own = next((folder / "kit").iterdir()).name
    move_kit(folder)  # the server has the old one no more
    page.evaluate("navigator.serviceWorker.ready.then((registration) => { registration.update(); })")
    wait_for(page, "update")
    fill_jumper_form(page, "3/0")
    page.click("form.calculator button[type=submit]")
    # 3/0 copper stands in the row "over 1/0 through 3/0" of Table 250.102(C)(1): 4 AWG copper.
    expect(page.locator("[data-result] .size")).to_have_text("4 AWG")
    assert page.evaluate(KITS_IN_USE) == [own]
    with page.expect_navigation():
        press(page, "update")
    expect(page.locator("[data-result] .size")).to_have_text("4 AWG")
    assert page.evaluate(KITS_IN_USE) == ["moved"]
