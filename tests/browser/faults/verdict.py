"""What a reader sees of a page, and whether that is one version whole, told in words, or broken."""

from dataclasses import dataclass

WHOLE, TOLD, PENDING, BROKEN = "whole", "told", "pending", "broken"
# States of the line below the form in which nothing more comes by itself.
ENDED = ("late", "failed", "gone", "unsupported", "portal")
# States of the panel that tell of something lacking or failed.
PANEL_TELLS = (
    "incomplete", "failed", "full", "stopped", "portal",
    "update-failed", "update-full", "update-stopped", "update-portal",
)  # fmt: skip

LOOK = """() => {
  const seen = (element) => Boolean(element?.checkVisibility()) && element.innerText.trim() !== "";
  const one = (selector) => document.querySelector(selector);
  const all = (selector) => [...document.querySelectorAll(selector)];
  const words = (selector) => all(selector).filter(seen).map((each) => each.innerText.trim());
  const last = document.lastChild;
  const handbook = Boolean(one("script[data-search-opener], [data-offline], [data-no-page]"));
  const root = getComputedStyle(document.documentElement);
  const sheets = all("link[rel=stylesheet][href*='/styles/']")
    .map(({ href }) => /kit\\/.*\\/([^/]+)\\.css$/.exec(href)[1]);
  const line = one(".runtime-state");
  const size = one("[data-result] section .size");
  const old = one("[data-result][data-outdated], [data-result] .earlier, [data-result] .awaiting");
  return {
    address: location.href,
    loaded: document.readyState === "complete",
    handbook,
    whole: Boolean(one("[data-offline]")),
    page: last?.nodeType === Node.COMMENT_NODE ? last.data.trim() : null,
    scripts: { ...globalThis.ran },
    styles: Object.fromEntries(sheets.map((name) => [name, root.getPropertyValue(`--${name}-is-of`).trim() || null])),
    started: Boolean((one("form.calculator") ?? one("body"))?.hasAttribute("data-started")),
    answer: size && !old ? size.innerText.trim() : null,
    state: line?.dataset.state ?? null,
    panel: one("[data-offline]")?.dataset.offlineState ?? null,
    words: {
      unanswered: words("[data-unanswered], .no-scripts, .edition-note[data-when=no-scripts]"),
      line: line?.dataset.state ? words(".runtime-state") : [],
      lost: words("[data-lost-page]"),
      none: words("[data-no-page]"),
      panel: words("[data-offline-status], [data-offline-missing]"),
    },
    text: handbook ? "" : document.body?.innerText.trim().slice(0, 200) ?? "",
  };
}"""


@dataclass(frozen=True)
class Verdict:
    """How a page is, and why."""

    kind: str
    why: str
    version: str | None = None


def judge(seen: dict, answers: dict[str, str], *, asked: bool, elsewhere: bool) -> Verdict:
    """Return the verdict on what is seen.

    `answers` says what each version answers to the case; `asked` whether the case is asked; `elsewhere` whether the
    browser, the host or the network may show a page of its own, as while nothing is saved.
    """
    if not seen["handbook"]:
        if not seen["loaded"]:
            return Verdict(PENDING, "no page yet")
        if not seen["text"]:
            return Verdict(BROKEN, "a blank page")
        return Verdict(TOLD if elsewhere else BROKEN, f"a page that is not the handbook's: {seen['text'][:60]!r}")
    versions = {seen["page"], *seen["scripts"].values(), *seen["styles"].values()} - {None}
    if len(versions) > 1:
        return Verdict(BROKEN, f"versions mixed: {sorted(versions)}")
    version = next(iter(versions), None)
    if seen["answer"] and seen["answer"] != answers.get(version):
        return Verdict(BROKEN, f"the pages of {version} answer {seen['answer']!r}")
    missing = [name for name, of in seen["styles"].items() if of is None]
    done = seen["answer"] if asked else seen["started"]
    if done and seen["page"] and not missing:
        return Verdict(WHOLE, "", version)
    # That something is not saved says nothing of an answer that does not come.
    told = words_of(seen) if done else words_of(seen | {"panel": None})
    if told:
        return Verdict(TOLD, told[0], version)
    return Verdict(PENDING, pending(seen, asked, missing), version)


def words_of(seen: dict) -> list[str]:
    """Return what tells the reader that something is lacking, and what."""
    words = seen["words"]
    told = [*words["unanswered"], *words["lost"], *words["none"]]
    told += words["line"] if seen["state"] in ENDED else []
    told += words["panel"] if seen["panel"] in PANEL_TELLS else []
    return [each for each in told if each]


def pending(seen: dict, asked: bool, missing: list[str]) -> str:
    """Return what a reader would still wait for."""
    if not seen["page"]:
        return "part of a page, and no word that it is not whole"
    if missing:
        return f"no styles of {', '.join(missing)}, and no word of it"
    if asked:
        return f"no answer; the line says {seen['state']}"
    return "the page's parts do not start, and no word of it"
