"""The bill of materials names the browser that ran all tests."""

from site_assets.build.bill_of_materials import tested_with


def test_the_browser_of_these_tests_is_no_older_than_the_one_that_is_recorded(browser):
    number = dict(tested_with())["Chromium"]
    assert int(browser.version.partition(".")[0]) >= int(number.partition(".")[0])
