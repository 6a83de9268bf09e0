"""What a page says of the saved handbook: how large it is, since when it is there, what an update brings."""

import datetime
import re

import pytest
from playwright.sync_api import expect

from site_assets.build.precache import saved_paths
from tests.browser.offline.published import press, publish, runtime_file, save, wait_for


def line(page, name):
    return page.locator(f"[data-offline-{name}]")


def test_a_saved_handbook_tells_its_size_and_the_day_and_one_that_is_not_saved_says_neither(page, folder):
    expect(line(page, "size")).to_be_hidden()
    save(page)
    paths = {(folder / path).read_bytes(): path for path in saved_paths(folder)}  # equal files are kept once
    megabytes = sum(map(len, paths)) / 1e6
    today = datetime.datetime.now(tz=datetime.UTC).astimezone()
    said = f"It takes {megabytes:.1f} MB on this device. Saved on {today:%B} {today.day}, {today.year}."
    expect(line(page, "size")).to_have_text(said)
    press(page, "ask")
    press(page, "reset")
    wait_for(page, "none")
    expect(line(page, "size")).to_be_hidden()


@pytest.mark.parametrize("calculating", [True, pytest.param(False, marks=pytest.mark.long)])
def test_an_update_tells_how_many_files_it_brings_and_whether_an_answer_may_change(page, folder, calculating):
    save(page)
    expect(line(page, "coming")).to_be_hidden()
    changed = ["parts/bonding.html", *([runtime_file(folder, "rules.zip")] if calculating else [])]
    publish(folder, "second", changed=changed)
    page.reload()
    wait_for(page, "update")
    expect(line(page, "coming")).to_have_text(re.compile(rf"has {len(changed)} new or changed files, 0\.\d MB"))
    expect(line(page, "coming-calculators")).to_be_visible(visible=calculating)
    with page.expect_navigation():
        press(page, "update")
    wait_for(page, "ready")
    expect(line(page, "coming")).to_be_hidden()
