// Which page of the history is shown, and where the reader was on each: kept in the entries of the browser's history,
// because a browser puts a reader back only on pages that it loads itself.

import { cameBack } from "./again.js";
import { anchorOf } from "./fold.js";

const SETTLED = 150; // ms without scrolling or another focus
const FOCUSABLE = "a[href], button, input, select, textarea, summary, [tabindex]";

let shown = history.state?.page; // entries that lead to places of one page share it
let path = location.pathname;
let pause;
const left = new Map(); // page -> place, where the history could not be told in time

/* `onPage` gets the place of the page that Back or Forward leads to; it is not shown yet. */
export function startHistory(onPage) {
  addEventListener("popstate", ({ state }) => {
    if (!shown) return; // no page was gone to yet
    if (state?.page === shown) return scrollWithin(state);
    if (state?.page) {
      left.set(shown, place()); // the entry is another one already, what is seen is not
      [shown, path] = [state.page, location.pathname];
      onPage(left.get(shown) ?? state);
    } else if (location.pathname === path) {
      history.replaceState({ page: shown }, ""); // a link within the page
    } else {
      location.reload(); // an entry from before the first page that was gone to
    }
  });
  addEventListener("scroll", keepSoon, { passive: true });
  addEventListener("focusin", keepSoon);
  if (shown && cameBack()) restorePlace(history.state);
}

/** Puts a page into the history, after the one that is shown. */
export function addEntry(url) {
  history.scrollRestoration = "manual";
  shown ??= newName();
  keepPlace();
  shown = newName();
  path = url.pathname;
  history.pushState({ page: shown }, "", url);
}

/** Returns whether something had the focus and has it again. */
export function restorePlace({ scroll = 0, focus }) {
  const element = focus && document.querySelectorAll(focus.selector)[focus.place];
  element?.focus({ preventScroll: true });
  scrollTo(0, scroll);
  return Boolean(element) && document.activeElement === element;
}

function keepSoon() {
  clearTimeout(pause);
  pause = setTimeout(() => { if (shown && history.state?.page === shown) keepPlace(); }, SETTLED);
}

function keepPlace() {
  left.delete(shown);
  history.replaceState({ ...history.state, page: shown, ...place() }, "");
}

const place = () => ({ scroll: scrollY, focus: focusNow() });

/** What has the focus, in words that find it in the same page again: which of all that could have it. */
function focusNow() {
  const element = document.activeElement;
  if (!element?.matches(FOCUSABLE)) return undefined;
  const selector = element.id ? `#${CSS.escape(element.id)}`
    : element.matches("a[href]") ? `a[href="${CSS.escape(element.getAttribute("href"))}"]` : FOCUSABLE;
  return { selector, place: [...document.querySelectorAll(selector)].indexOf(element) };
}

function scrollWithin({ scroll }) {
  if (scroll === undefined) document.getElementById(anchorOf(location.hash))?.scrollIntoView();
  else scrollTo(0, scroll);
}

const newName = () => `${Date.now()} ${Math.random()}`;
