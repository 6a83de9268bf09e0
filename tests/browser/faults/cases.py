"""All cases of the campaign, and how one is run."""

import random
import time
from dataclasses import dataclass

from site_assets.build.precache import WORKER
from tests.browser.faults import acts, snapshot_acts
from tests.browser.faults import faulty_server as host
from tests.browser.faults.acts import Act
from tests.browser.faults.faulty_server import Fault
from tests.browser.faults.stage import Stage
from tests.browser.faults.verdict import BROKEN, TOLD, WHOLE
from tests.browser.faults.versions import CASE_PAGE, Version
from tests.browser.offline.published import DAMAGE, EVICT, EVICT_ALL, EVICT_NOTES

LIST = "runtime/files.json"
SLICES = 40
SEED = 1
SILENCE = "silence"  # the handbook gives up after 30 or 45 s
# Requests of a first visit, of saving and of an update; a later number strikes nothing, and that is a case too.
OF_A_VISIT, OF_SAVING, OF_AN_UPDATE = 62, 92, 46
BODIES = {"cut, its length told": host.cut_body, "cut, no length told": host.cut_body_of_no_length}
STATUSES = {f"status {status}": host.refuse(status) for status in (404, 500, 503)}
PORTALS = {
    "its page for all": Fault(host.sign_in()),
    "its page, to be kept": Fault(host.sign_in(caching="max-age=600")),
    "status 511": Fault(host.sign_in(511)),
    "redirects": Fault(host.send_to_sign_in),
    "redirects to another host": Fault(host.send_to_sign_in_elsewhere),
}
TWO_TABS = (
    "save",
    "save, and one is closed",
    "update",
    "update while the other asks",
    "remove",
    "remove while the other saves",
)
ROOM_FOR_ALL = (1, 1_000_000, 4_000_000, 8_000_000, 14_000_000, 19_000_000)
ROOM_FOR_AN_UPDATE = (1, 50_000, 200_000, 500_000, 900_000, 1_300_000)
UNREGISTER = "async () => (await navigator.serviceWorker.getRegistration()).unregister()"
MARKS = {
    "both notes": EVICT_NOTES,
    "every store": EVICT_ALL,
    "what pages remember": "() => localStorage.clear()",
    "what a tab remembers": "() => sessionStorage.clear()",
    "the service worker": UNREGISTER,
    "the service worker and every store": f"async () => {{ await ({EVICT_ALL})(); await ({UNREGISTER})(); }}",
    "an empty store in the place of the full one": """async () => {
      for (const name of await caches.keys()) { await caches.delete(name); await caches.open(name); }
    }""",
}


@dataclass(frozen=True)
class Case:
    """One fault: its row in the table, what it is, and what brings it about."""

    kind: str
    name: str
    act: Act
    stays: str = ""  # why it is known not to recover by itself


@dataclass(frozen=True)
class Outcome:
    """How a case went: what was broken, what the reader was told, whether all was whole again without help."""

    case: Case
    broken: str
    told: bool
    recovered: str
    seconds: float


def run(stage: Stage, case: Case) -> Outcome:
    """Bring the fault about, look, let it be gone, and see the handbook recover."""
    began = time.monotonic()
    verdicts = list(case.act(stage))
    recovered = stage.recover()
    broken = [verdict.why for verdict in verdicts if verdict.kind == BROKEN]
    if recovered.kind == WHOLE and (taken := stage.take_over()).kind != WHOLE:
        broken.append(f"after the update was pressed: {taken.why}")
    if broken or recovered.kind != WHOLE or case.kind == "site moved":
        stage.leave()  # the next case begins anew
    told = any(verdict.kind == TOLD for verdict in verdicts)
    failed = "" if recovered.kind == WHOLE else recovered.why
    return Outcome(case, "; ".join(broken), told, failed, time.monotonic() - began)


def slice_of(cases: list[Case], number: int, *, patient: bool = True) -> list[Case]:
    """Return one slice of the cases, mixed of all kinds; without patience none that takes half a minute by itself."""
    return [case for case in cases[number::SLICES] if patient or case.kind != SILENCE]


def all_cases(versions: dict[str, Version]) -> list[Case]:
    """Return every case, in an order that deals each kind evenly to the slices."""
    chance = random.Random(SEED)
    cases = [*of_requests(), *of_files(versions["first"]), *of_portals(versions["first"]), *of_the_device()]
    cases += [*of_versions(), *of_snapshots(), *of_deaths()]
    names = [f"{case.kind}: {case.name}" for case in cases]
    assert len(names) == len(set(names))
    chance.shuffle(cases)
    return sorted(cases, key=lambda case: case.kind)


def at(number: int):
    return lambda path, count: count == number


def after(number: int):
    return lambda path, count: count >= number


def of_requests() -> list[Case]:
    """The n-th request of a visit, of saving and of an update fails, or all from there on."""
    cases = []
    whole = {"first visit": (acts.first_visit, OF_A_VISIT), "save": (acts.save, OF_SAVING)}
    whole["update"] = (acts.update, OF_AN_UPDATE)
    for what, (act, count) in whole.items():
        step = count // 9
        for number in range(1, count + 1, step):
            name = f"{what}, at request {number}"
            cases.append(Case("network cut", f"{name} and after", act(Fault(host.cut, after(number)))))
            cases.append(Case("connection cut", name, act(Fault(host.cut, at(number)))))
        for kind, do in BODIES.items():
            # A page that ends before the length that was told Chromium stops reading, and shows nothing: no script of
            # ours runs, and nothing wrong is read.
            for number in range(2 if do is host.cut_body else 1, count, count // 5):
                name = f"{what}, request {number} {kind}"
                cases.append(Case("body cut", name, act(Fault(do, at(number)))))
        for kind, do in STATUSES.items():
            cases += [
                Case("error status", f"{what}, {kind} from {number}", act(Fault(do, after(number))))
                for number in (2, count // 2, count - 8)
            ]
        cases += [
            Case("wrong type", f"{what}, from {number}", act(Fault(host.mistype, after(number))))
            # Of a first visit later: among the first six may be the one script that tells and recovers (see below).
            for number in (12 if what == "first visit" else 6, count // 2)
        ]
        cases.append(Case("slow", what, act(Fault(host.slow))))
    every = acts.first_visit(Fault(host.mistype, after(2)))
    stays = "no script of ours ran, and the browser keeps for a year what came; only another kit renews it"
    cases.append(Case("wrong type", "first visit, every script", every, stays))
    silent = {"nothing": host.hold, "half a file": host.hold_body}
    for kind, do in silent.items():
        cases.append(Case(SILENCE, f"save, {kind}", acts.save(Fault(do, after(30)))))
        cases.append(Case(SILENCE, f"update, {kind}", acts.update(Fault(do, after(12)))))
        cases.append(Case(SILENCE, f"calculator, {kind}", acts.calculate(Fault(do, is_archive))))
    return cases


def is_archive(path: str, count: int) -> bool:
    """Whether Python waits for this file: the archive of the rules, or its twin."""
    return "rules.zip" in path


def of_files(version: Version) -> list[Case]:
    """One bit of each file flipped, by the host and on the device; one of each kind lost."""
    cases = []
    for path in version.hashes:

        def strikes(asked: str, count: int, path: str = path) -> bool:
            return asked.removesuffix(".gz") == path

        flipped = Fault(host.spoil, strikes)
        in_saving = not path.startswith("runtime/")
        act = acts.save(flipped) if in_saving else acts.first_visit(flipped)
        cases.append(Case("bit flipped by the host", path, act))
        damaged = acts.lost(DAMAGE, named(version, path), ask=is_run(path))
        cases.append(Case("bit flipped on the device", path, damaged))
    for path in one_of_each_kind(version):
        cases.append(Case("entry lost", path, acts.lost(EVICT, named(version, path), ask=is_run(path))))
        lost = acts.lost(EVICT, named(version, path), ask=is_run(path), newer=True)
        cases.append(Case("entry lost", f"{path}, and the server is newer", lost))
    for what, change in MARKS.items():
        everything = "store" in what or "worker" in what
        cases.append(Case("mark lost", what, acts.lost(change, None, ask=False, everything=everything)))
        act = acts.lost(change, None, ask=True, newer=True, everything=everything)
        cases.append(Case("mark lost", f"{what}, and the server is newer", act))
    for part in (0.05, 0.4, 0.8, 0.99):
        act = acts.update(Fault(host.spoil_at(part), lambda path, count: path == WORKER))
        cases.append(Case("bit flipped by the host", f"the service worker at {part}", act))
    for number in (0.2, 0.7):
        act = acts.update(Fault(host.cut_at(number), lambda path, count: path == WORKER))
        cases.append(Case("body cut", f"the service worker at {number}, no length told", act))
    return cases


def is_run(path: str) -> bool:
    """Whether a file is code or figures that an answer may come from."""
    return path.startswith("runtime/") or path.endswith("js") or path == CASE_PAGE


def named(version: Version, path: str) -> list[list[str]]:
    return [[f"sha256-{version.hashes[path]}", path.rpartition(".")[2]]]


def one_of_each_kind(version: Version) -> list[str]:
    """Return one path of each kind that a page needs, by ending and folder, and the parts that tell of the rest."""
    kinds = {(path.rpartition(".")[2], path.split("/")[0]): path for path in version.hashes}
    tellers = ("404.html", "index.html", CASE_PAGE, "offline.js", "page.js", "unanswered.js", "edition.js", "rules.zip")
    return sorted({*kinds.values(), *(path for path in version.hashes if path.endswith(tellers))})


def of_portals(version: Version) -> list[Case]:
    """A captive portal answers in the place of the host."""
    cases = []
    page = named(version, "parts/main-bonding-jumper.html")
    for way, fault in PORTALS.items():
        each = {
            "first visit": acts.first_visit(fault),
            "while it saves": acts.portal_while_saving(fault),
            "while a calculator starts": acts.portal_while_calculating(fault),
            "with all saved": acts.portal_with_all_saved(fault),
            "with a file lost": acts.portal_with_a_file_lost(fault, EVICT, page),
            "for an update": acts.update(fault),
        }
        cases += [Case("captive portal", f"{way}, {when}", act) for when, act in each.items()]
    return cases


def of_the_device() -> list[Case]:
    """The device has no room, or ends the service worker."""
    cases = [Case("quota", f"save, {room:,} bytes", acts.quota(room, of_an_update=False)) for room in ROOM_FOR_ALL]
    cases += [
        Case("quota", f"update, {room:,} bytes more", acts.quota(room, of_an_update=True))
        for room in ROOM_FOR_AN_UPDATE
    ]
    for number in (1, 2, 20, 60):
        act = acts.worker_killed(number, of_an_update=False)
        cases.append(Case("service worker killed", f"save, at request {number}", act))
    for number in (2, 5, 15, 30):
        act = acts.worker_killed(number, of_an_update=True)
        cases.append(Case("service worker killed", f"update, at request {number}", act))
    return cases


def of_versions() -> list[Case]:
    """Versions and addresses change while something is under way."""
    moves = {"beside": "/elsewhere/", "into the old one": "/bonding/handbook/new/", "to the top": "/"}
    cases = []
    for where, base in moves.items():
        for redirected in (False, True):
            if not (redirected and base.startswith("/bonding")):
                name = f"{where}, {'redirected' if redirected else 'nothing is left'}"
                cases.append(Case("site moved", name, acts.moved(base, redirected=redirected)))
    for to in ("before", "older"):
        for pressed in (False, True):
            name = f"to {to}, {'and the update is pressed' if pressed else 'and left to itself'}"
            cases.append(Case("rollback while a version waits", name, acts.rolled_back(to, pressed=pressed)))
    for number in (1, 2, 10, 40, 70):
        act = acts.published_meanwhile(number, of_an_update=False)
        cases.append(Case("published meanwhile", f"save, at request {number}", act))
    for number in (2, 8, 20, 30):
        act = acts.published_meanwhile(number, of_an_update=True)
        cases.append(Case("published meanwhile", f"update, at request {number}", act))
    return cases + [Case("two tabs", what, snapshot_acts.two_tabs(what)) for what in TWO_TABS]


def of_snapshots() -> list[Case]:
    """The memory snapshot is damaged, of other files, or cannot be made."""
    changes = (
        "cut short",
        "memory lost",
        "note lost",
        "note of another",
        "cut short, with a note that fits",
        "not a memory, with a note that fits",
    )
    cases = [Case("snapshot", change, snapshot_acts.changed(change)) for change in changes]
    cases += [Case("snapshot", f"bit flipped at {part}", snapshot_acts.flipped(part)) for part in (0, 0.3, 0.6, 0.95)]
    cases += [
        Case("snapshot", "of the version before", snapshot_acts.of_the_version_before),
        Case("snapshot", "of a version that was rolled back", snapshot_acts.of_a_rollback),
        Case("snapshot", "in an older form", snapshot_acts.in_an_older_form),
    ]
    return cases + [
        Case("snapshot", f"with room for {room:,} bytes", snapshot_acts.without_room(room)) for room in (1, 10_000_000)
    ]


def of_deaths() -> list[Case]:
    """The browser is killed and its profile stays."""
    cases = []
    for number in (1, 2, 25, 60):
        act = acts.browser_killed(number, of_an_update=False)
        cases.append(Case("browser killed", f"save, at request {number}", act))
    for number in (2, 10, 30):
        act = acts.browser_killed(number, of_an_update=True)
        cases.append(Case("browser killed", f"update, at request {number}", act))
    cases.append(Case("browser killed", "as a version takes over", acts.killed_after_take_over))
    for moment in (0, 900):
        act = snapshot_acts.killed_while_made(moment)
        cases.append(Case("browser killed", f"{moment} ms into making a snapshot", act))
    return cases
