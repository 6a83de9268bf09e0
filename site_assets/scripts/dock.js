// The line above the bar: what is missing while a form waits, then its answer; a tap leads to what it speaks of.

const SETTLED = 600; // ms without another change before one is told aloud

export function startDock(form, { result, onTap, signal }) {
  const dock = form.parentElement.querySelector("[data-dock]");
  const spoken = form.parentElement.querySelector("[data-dock-told]");
  const [head, line, progress] = [".dock-head", ".dock-line", "progress"].map((part) => dock.querySelector(part));
  let inView = false;
  let telling;

  dock.hidden = false;
  dock.querySelector("button").addEventListener("click", () => onTap(dock.dataset.state));

  const observer = new IntersectionObserver((entries) => {
    inView = entries.at(-1).isIntersecting;
    place();
  }, { rootMargin: "-60px 0px -140px 0px" });
  observer.observe(result);
  signal.addEventListener("abort", () => { observer.disconnect(); clearTimeout(telling); });

  /* An answer that is seen is not shown twice. */
  function place() {
    dock.toggleAttribute("data-away", inView && dock.dataset.state === "answered");
    dock.querySelector("button").tabIndex = dock.hasAttribute("data-away") ? -1 : 0;
  }

  function show(state, words, below = "") {
    dock.dataset.state = state;
    if (head.textContent !== words) head.textContent = words;
    if (line.textContent !== below) line.textContent = below;
    place();
  }

  return {
    missing: (count, labels) => show("waiting", dock.dataset.missing.replace("{count}", count), labels),
    wrong: (count, words) => show("wrong", dock.dataset.wrong.replace("{count}", count), words),
    /* What stood there is of other entries, so it goes at once. */
    working: () => show("working", dock.dataset.working, result.querySelector("section") ? dock.dataset.outdated : ""),
    outdated: () => show("outdated", dock.dataset.changed, dock.dataset.outdated),
    press: () => show("press", dock.dataset.ready, dock.dataset.press),
    answered: ({ head: words, line: below }) => show("answered", words, below),
    starting({ state, part = 0 }) {
      progress.hidden = state !== "loading";
      progress.value = part;
    },
    /* One message for what was changed, not one for each letter. */
    tell(words) {
      clearTimeout(telling);
      telling = setTimeout(() => { spoken.textContent = words; }, SETTLED);
    },
  };
}
