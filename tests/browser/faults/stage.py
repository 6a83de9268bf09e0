"""A reader's device before a faulty host: what was saved, what a page looks like under a fault, and how it recovers."""

import contextlib
import os
import signal
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from urllib.parse import urljoin

from playwright.sync_api import Error
from playwright.sync_api import TimeoutError as TooLate

from site_assets.build.precache import WORKER
from tests.browser.conftest import PHONE
from tests.browser.faults.faulty_server import Fault, FaultyServer
from tests.browser.faults.verdict import BROKEN, LOOK, PENDING, TOLD, WHOLE, Verdict, judge, words_of
from tests.browser.faults.versions import CASE, CASE_PAGE, Version
from tests.browser.offline.published import SUB_PATH, served

PATIENCE = 90  # s; a busy machine is slow, and only a case that fails waits this long
READING = 30  # s on a page, in which what is missing comes by itself
PAUSE = 0.1  # s between two looks
OPENINGS = 4  # of the handbook until it must be whole again
SETTLED = ("ready", "update")
UNDER_WAY = (None, "none", "reading", "saving")
# A device that is idle at once, so that what waits for a quiet page begins soon; nothing else is hastened.
HASTE = """(() => {
  const later = globalThis.setTimeout;
  globalThis.setTimeout = (run, delay, ...more) => later(run, delay === 5000 ? 300 : delay, ...more);
})()"""

UPDATED = """async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration?.update().catch(() => {});
  await new Promise((resolve) => {
    const worker = registration?.installing;
    if (!worker) return resolve();
    worker.addEventListener("statechange", () => worker.state === "installing" || resolve());
  });
}"""


class Stage:
    """One browser, one host and the versions it can publish; cases follow one another on it."""

    def __init__(self, browser, versions: dict[str, Version], profiles: Path, *, thorough: bool = True):
        self.browser, self.versions, self.profiles = browser, versions, profiles
        self.thorough = thorough  # else what is answered is asked only where a fault may change it
        self.healing: list[Callable[[], None]] = []
        self.answers = {name: version.answer for name, version in versions.items()}
        self.server = FaultyServer(versions["first"].folder, SUB_PATH)
        self.published = "first"
        self.context = self.page = None
        self.has_saved: str | None = None  # the version that is saved whole, while that is known
        self.aside: str | None = None  # the version of which a snapshot is kept aside

    def close(self) -> None:
        """End the host and the device."""
        self.leave()
        self.server.strike(None)
        self.server.stop()

    def leave(self) -> None:
        if self.context:
            self.context.close()
        self.context = self.page = self.has_saved = self.aside = None

    # What was before

    def new_reader(self) -> None:
        """Begin with a device that knows nothing."""
        self.leave()
        self.server.strike(None)
        self.publish("first")
        self.take(self.browser.new_context(viewport=PHONE))

    def lasting_reader(self) -> None:
        """Begin with a browser of its own, whose profile outlives it."""
        self.leave()
        self.server.strike(None)
        self.publish("first")
        self.profile = Path(tempfile.mkdtemp(dir=self.profiles))
        self.start_browser()

    def start_browser(self) -> None:
        self.take(
            self.browser.browser_type.launch_persistent_context(
                self.profile,
                executable_path=os.environ["CHROMIUM"],
                args=os.environ.get("CHROMIUM_ARGS", "").split(),
                viewport=PHONE,
            )
        )

    def kill_browser(self) -> None:
        """End the browser of the profile as a system does that is short of memory, and start another."""
        for process in Path("/proc").glob("[0-9]*"):
            with contextlib.suppress(OSError):
                if str(self.profile).encode() in (process / "cmdline").read_bytes():
                    os.kill(int(process.name), signal.SIGKILL)
        with contextlib.suppress(Error):
            self.context.close()
        self.server.strike(None)
        self.start_browser()

    def take(self, context) -> None:
        self.context = context
        self.context.add_init_script(HASTE)
        self.page = self.context.new_page()

    def device(self):
        """Return what commands the browser itself."""
        return self.context.new_cdp_session(self.page)

    @property
    def origin(self) -> str:
        return self.server.address.removesuffix(self.server.base)

    def at_heal(self, action: Callable[[], None]) -> None:
        """Have something done when the fault goes."""
        self.healing.append(action)

    def heal(self) -> None:
        """Let the fault be gone."""
        self.server.strike(None)
        while self.healing:
            self.healing.pop()()
        self.offline(False)

    def saved_reader(self) -> None:
        """Begin with a device that has the version saved that is published."""
        self.server.strike(None)
        if self.has_saved:
            self.context.set_offline(False)
            return self.publish(self.has_saved)
        self.new_reader()
        self.page.goto(self.server.address)
        assert self.wait_for_panel(*SETTLED) == "ready"
        self.has_saved = "first"
        return None

    def publish(self, name: str) -> None:
        self.published = name
        self.server.folder = self.versions[name].folder.resolve()

    def publish_other(self) -> str:
        """Publish the version that the device has not."""
        self.publish("second" if self.published == "first" else "first")
        return self.published

    # What the reader does

    def press(self, what: str) -> None:
        self.page.locator(f'[data-offline-do="{what}"]:not([hidden])').click(timeout=PATIENCE * 1000)

    def save(self, fault: Fault | None = None) -> str | None:
        """Open the first page, strike when saving begins, and return how that ends."""
        self.server.strike(fault, since=WORKER)
        self.goto("")
        return self.wait_for_panel()

    def update(self, fault: Fault | None = None) -> str | None:
        """Publish the other version, strike, open a page, and return how the update ends."""
        self.publish_other()
        self.server.strike(fault)
        self.goto("")
        return self.check_for_update()

    def check_for_update(self) -> str | None:
        """Have the browser look for a newer version as it does by itself, and wait for what comes of it."""
        with contextlib.suppress(Error):
            self.page.evaluate(UPDATED)
        return self.wait_for_panel()

    def ask_for_update(self) -> None:
        """The same, without waiting."""
        self.page.evaluate("navigator.serviceWorker.ready.then((found) => { found.update().catch(() => {}); })")

    def wait_until_struck(self) -> None:
        """Wait until a request meets the fault."""
        end = time.monotonic() + PATIENCE
        while not self.server.struck and time.monotonic() < end:
            self.page.wait_for_timeout(20)
        assert self.server.struck, "the fault never struck"

    def goto(self, path: str) -> bool:
        """Go to a page; whether the browser got one, of whatever kind, within its patience."""
        try:
            self.page.goto(urljoin(self.server.address, path), wait_until="commit", timeout=PATIENCE * 1000 / 3)
        except TooLate:
            return False
        except Error:
            pass  # the browser says so on a page of its own
        return True

    def offline(self, is_so: bool = True) -> None:
        self.context.set_offline(is_so)

    # What is seen

    def seen(self) -> dict | None:
        """Return what the page shows; None while it is between two pages."""
        try:
            return self.page.evaluate(LOOK)
        except TooLate:
            raise
        except Error:
            return None

    def opened(self, path: str = CASE, *, asked: bool = True, elsewhere: bool = False) -> Verdict:
        """Open a page and return the verdict on what comes."""
        if not self.goto(path):
            return Verdict(TOLD if elsewhere else BROKEN, "the browser waits for the page and says so")
        return self.look(asked=asked, elsewhere=elsewhere)

    def opened_in_full(self, *, elsewhere: bool = False, ask: bool = False) -> Verdict:
        """The same; the case is asked when `ask` or thorough, else not, for the same files give the same answers."""
        asked = ask or self.thorough
        return self.opened(CASE if asked else CASE_PAGE, asked=asked, elsewhere=elsewhere)

    def opened_at(self, path: str, *, asked: bool = True) -> Verdict:
        """The same for a path of the host."""
        return self.opened(f"{self.origin}{path}", asked=asked)

    def must_be_whole(self, verdict: Verdict) -> Verdict:
        """What was saved whole must be shown whole, whatever befalls the next version."""
        if verdict.kind in (WHOLE, BROKEN):
            return verdict
        return Verdict(BROKEN, f"what was saved is not shown: {verdict.why}", verdict.version)

    def told_to_sign_in(self) -> Verdict:
        """Return whether the page says that a network wants a sign-in, or is the network's own."""
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            seen = self.seen()
            words = [*words_of(seen), seen["text"]] if seen else []
            if any("sign in" in each.lower() for each in words):
                return Verdict(TOLD, "sign in")
            time.sleep(PAUSE)
        return Verdict(BROKEN, f"of the captive portal nothing is said: {seen}")

    def look(self, *, asked: bool = True, elsewhere: bool = False) -> Verdict:
        """Return the verdict on the page as it is once nothing more is waited for."""
        verdict = Verdict(PENDING, "nothing was seen")
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            seen = self.seen()
            if seen:
                verdict = judge(seen, self.answers, asked=asked, elsewhere=elsewhere)
                if verdict.kind != PENDING:
                    return verdict
            time.sleep(PAUSE)
        return Verdict(BROKEN, f"waits without end: {verdict.why}", verdict.version)

    def wait_for_panel(self, *states: str, patience: float = PATIENCE) -> str | None:
        """Return the panel's state once it is one of these; without any, once nothing is under way."""
        state = None
        end = time.monotonic() + patience
        while time.monotonic() < end:
            seen = self.seen()
            state = seen and seen["panel"]
            if (state in states) if states else (state not in UNDER_WAY):
                return state
            if seen and seen["loaded"] and not seen["whole"]:
                return None  # no panel is on this page
            time.sleep(PAUSE)
        return state

    # How it recovers

    def recover(self) -> Verdict:
        """With the fault gone, open the handbook again, as a reader would, until it is whole; press nothing."""
        self.heal()
        verdict = Verdict(BROKEN, "never opened")
        for _ in range(OPENINGS):
            verdict = self.opened_in_full()
            if verdict.kind == WHOLE and self.wait_for_panel(*SETTLED, patience=READING) in SETTLED:
                verdict = self.works_offline()
                if verdict.kind == WHOLE and self.is_up_to_date(verdict.version):
                    self.has_saved = verdict.version
                    return verdict
            with contextlib.suppress(Error):
                self.page.reload(wait_until="commit")
                self.look(asked=False, elsewhere=True)
            self.page.close()
            self.page = self.context.new_page()
        return Verdict(BROKEN, f"did not recover: {verdict.why}", verdict.version)

    def is_up_to_date(self, version: str) -> bool:
        """Whether the version that is published is the one saved, or is offered."""
        return version == self.published or self.check_for_update() == "update"

    def works_offline(self) -> Verdict:
        """Return the verdict on the device without a network: every file of one version, and its answer."""
        self.offline()
        try:
            verdict = self.opened_in_full()
            if verdict.kind == WHOLE:
                version = self.versions[verdict.version]
                kept = served(self.page, self.server, version.hashes)
                wrong = sorted(path for path in kept if kept[path] != version.hashes[path])
                if wrong:
                    return Verdict(BROKEN, f"other bytes or none for {', '.join(wrong[:3])}", verdict.version)
            return verdict
        finally:
            self.offline(False)

    def take_over(self) -> Verdict:
        """Where a newer version waits, take it; the verdict on what is shown then."""
        return Verdict(WHOLE, "", self.has_saved) if self.published == self.has_saved else self.press_update()

    def press_update(self) -> Verdict:
        """Press what the panel offers; the verdict on what comes."""
        with contextlib.suppress(Error), self.page.expect_navigation(timeout=PATIENCE * 1000):
            self.press("update")
        verdict = self.opened_in_full()
        if verdict.kind == WHOLE:
            self.has_saved = verdict.version
        return verdict
