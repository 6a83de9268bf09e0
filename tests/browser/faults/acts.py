"""What befalls a reader: each act brings a fault about and yields the verdicts on what is seen meanwhile."""

import contextlib
from collections.abc import Callable, Iterator

from playwright.sync_api import Error

from tests.browser.faults.faulty_server import Fault, hold
from tests.browser.faults.stage import Stage
from tests.browser.faults.verdict import Verdict
from tests.browser.faults.versions import CASE, CASE_PAGE

Act = Callable[[Stage], Iterator[Verdict]]
ORIGIN_QUOTA = "Storage.overrideQuotaForOrigin"


def first_visit(fault: Fault) -> Act:
    """Nothing is saved, and a link is opened."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.new_reader()
        stage.server.strike(fault)
        yield stage.opened(CASE, elsewhere=True)

    return act


def save(fault: Fault) -> Act:
    """The page has come; what is fetched to be saved meets the fault."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.new_reader()
        stage.save(fault)
        yield stage.look(asked=False, elsewhere=True)
        stage.offline()
        yield stage.opened(CASE_PAGE, asked=False, elsewhere=True)

    return act


def calculate(fault: Fault) -> Act:
    """The page has come and nothing is saved; what a calculator needs meets the fault."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.new_reader()
        stage.server.strike(fault, since="runtime/files.json")
        yield stage.opened(CASE, elsewhere=False)

    return act


def update(fault: Fault) -> Act:
    """A version is saved; the next one meets the fault."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        stage.update(fault)
        yield stage.must_be_whole(stage.look(asked=False))
        stage.offline()
        yield stage.must_be_whole(stage.opened(CASE, asked=stage.thorough))

    return act


def lost(change: str, what: object, *, ask: bool, newer: bool = False, everything: bool = False) -> Act:
    """A page is opened after the device has lost or damaged something, or everything.

    `newer`: the server has the version no more; `ask`: what is lost may change an answer.
    """

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        stage.goto("")
        stage.page.evaluate(change, what)
        if newer:
            stage.publish_other()
        stage.offline()
        yield stage.opened_in_full(elsewhere=everything, ask=ask)
        stage.offline(False)
        if newer:
            yield stage.opened_in_full(ask=ask)

    return act


def quota(room: int, *, of_an_update: bool) -> Act:
    """The device gives so many bytes, in an update so many more than it holds."""

    def act(stage: Stage) -> Iterator[Verdict]:
        (stage.saved_reader if of_an_update else stage.new_reader)()
        stage.goto("404.html")
        kept = stage.page.evaluate("async () => (await navigator.storage.estimate()).usage") if of_an_update else 0
        device = stage.device()
        device.send(ORIGIN_QUOTA, {"origin": stage.origin, "quotaSize": kept + room})
        stage.at_heal(lambda: device.send(ORIGIN_QUOTA, {"origin": stage.origin}))
        if of_an_update:
            stage.update()
        else:
            stage.save()
        verdict = stage.look(asked=False)
        yield verdict
        stage.offline()
        verdict = stage.opened(CASE_PAGE, asked=False, elsewhere=not of_an_update)
        yield stage.must_be_whole(verdict) if of_an_update else verdict

    return act


def worker_killed(number: int, *, of_an_update: bool) -> Act:
    """The service worker is ended when it waits for so many-th file."""

    def act(stage: Stage) -> Iterator[Verdict]:
        held = Fault(hold, lambda path, count: count >= number)
        if of_an_update:
            stage.saved_reader()
            stage.publish_other()
            stage.server.strike(held)
            stage.goto("")
            stage.ask_for_update()
        else:
            stage.new_reader()
            stage.server.strike(held, since="service-worker.js")
            stage.goto("")
        stage.wait_until_struck()
        device = stage.device()
        device.send("ServiceWorker.enable")
        device.send("ServiceWorker.stopAllWorkers")
        stage.server.strike(None)
        verdict = stage.look(asked=False, elsewhere=False)
        yield verdict
        stage.offline()
        verdict = stage.opened(CASE, asked=False, elsewhere=not of_an_update)
        yield stage.must_be_whole(verdict) if of_an_update else verdict

    return act


def browser_killed(number: int, *, of_an_update: bool) -> Act:
    """The browser is killed when its service worker waits for so many-th file; the profile stays."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.lasting_reader()
        if of_an_update:
            stage.save()
            stage.publish_other()
        stage.server.strike(Fault(hold, lambda path, count: count >= number), since="service-worker.js")
        stage.goto("")
        if of_an_update:
            stage.ask_for_update()
        stage.wait_until_struck()
        stage.kill_browser()
        stage.offline()
        verdict = stage.opened(CASE, asked=stage.thorough and of_an_update, elsewhere=not of_an_update)
        yield stage.must_be_whole(verdict) if of_an_update else verdict

    return act


def killed_after_take_over(stage: Stage) -> Iterator[Verdict]:
    """The browser is killed in the moment in which the newer version takes over."""
    stage.lasting_reader()
    stage.save()
    stage.update()
    with contextlib.suppress(Error):
        stage.page.evaluate(
            "navigator.serviceWorker.ready.then(({ waiting }) => waiting.postMessage({ kind: 'take-over' }))"
        )
    stage.kill_browser()
    stage.offline()
    yield stage.must_be_whole(stage.opened(CASE))


def moved(base: str, *, redirected: bool) -> Act:
    """The site is published under another path; the old one leads there, or has nothing."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        old = stage.server.base
        stage.server.base = base
        stage.at_heal(lambda: setattr(stage.server, "base", old))

        def lead(answer, reply):
            answer.redirect(base + answer.path.removeprefix(old))

        if redirected:
            stage.server.strike(Fault(lead, lambda path, count: path.startswith(old)))
        yield stage.must_be_whole(stage.opened_at(f"{old}{CASE}"))
        stage.check_for_update()
        yield stage.must_be_whole(stage.opened_at(f"{old}{CASE_PAGE}", asked=False))
        yield stage.must_be_whole(stage.opened_at(f"{base}{CASE}"))
        stage.wait_for_panel("ready")
        stage.offline()
        yield stage.must_be_whole(stage.opened_at(f"{base}{CASE}"))
        yield stage.must_be_whole(stage.opened_at(f"{old}{CASE}", asked=False))

    return act


def rolled_back(to: str, *, pressed: bool) -> Act:
    """A newer version waits, and the server has an older one again; `pressed`: the reader takes what is offered."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        before = stage.has_saved
        stage.update()
        yield stage.must_be_whole(stage.look(asked=False))
        stage.publish(before if to == "before" else to)
        stage.goto("")
        stage.check_for_update()
        yield stage.must_be_whole(stage.opened())
        if pressed:
            yield stage.must_be_whole(stage.press_update())
        stage.offline()
        yield stage.must_be_whole(stage.opened())

    return act


def published_meanwhile(number: int, *, of_an_update: bool) -> Act:
    """Another version is published when so many files were fetched, so the rest comes from there."""

    def act(stage: Stage) -> Iterator[Verdict]:
        third = "older"

        def turn(answer, reply):
            stage.publish(third)
            answer.close_connection = True

        fault = Fault(turn, lambda path, count: count == number)
        if of_an_update:
            stage.saved_reader()
            stage.update(fault)
        else:
            stage.new_reader()
            stage.save(fault)
        yield stage.look(asked=False)
        yield stage.opened(elsewhere=not of_an_update)
        stage.offline()
        verdict = stage.opened(asked=False, elsewhere=not of_an_update)
        yield stage.must_be_whole(verdict) if of_an_update else verdict

    return act


def portal_while_saving(way: Fault) -> Act:
    """A page has come, and then a captive portal answers what is fetched to be saved."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.new_reader()
        stage.save(way)
        yield stage.told_to_sign_in()

    return act


def portal_while_calculating(way: Fault) -> Act:
    """A page has come, and then a captive portal answers what a calculator needs."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.new_reader()
        stage.server.strike(way, since="runtime/files.json")
        stage.goto(CASE)
        yield stage.told_to_sign_in()

    return act


def portal_with_all_saved(way: Fault) -> Act:
    """A captive portal answers where all is saved: the handbook is as it was."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        stage.server.strike(way)
        yield stage.must_be_whole(stage.opened())
        stage.check_for_update()
        yield stage.must_be_whole(stage.look())

    return act


def portal_with_a_file_lost(way: Fault, lose: str, what: object) -> Act:
    """A captive portal answers where a file is lost, and the reader asks for what is missing."""

    def act(stage: Stage) -> Iterator[Verdict]:
        stage.saved_reader()
        stage.goto("")
        stage.page.evaluate(lose, what)
        stage.server.strike(way)
        yield stage.opened(asked=False)
        stage.press("fetch")
        yield stage.told_to_sign_in()

    return act
