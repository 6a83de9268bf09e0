// Goes to another page of this version without ending the calculator: the parts of that page take the place of those
// shown. Whatever stands in the way makes it an ordinary change of pages, and so is every one while no worker runs.

import { setOpenedAnew } from "./again.js";
import { anchorOf } from "./fold.js";
import { addEntry, restorePlace, startHistory } from "./page-history.js";
import { handbookScope, isRunning, runsFilesOf } from "./runtime.js";

const PATIENCE = 5_000; // ms; then the browser itself goes on, and shows how the page is coming

const SCRIPT = "script[data-page-parts]";
const { pageParts, pageStream, opened } = document.querySelector(SCRIPT)?.dataset ?? {};
const running = new URL("page.js", import.meta.url).href; // an element's own `src` would go by the address shown now
let wanted = new AbortController(); // the page that is being fetched

export function startSwaps({ startPage, leavePage }) {
  if (!pageParts || !location.protocol.startsWith("http")) return;
  const scope = handbookScope();
  const announcer = announcerElement();

  document.addEventListener("click", (event) => {
    const link = event.target.closest?.("a[href]");
    if (!link || !isPlainClick(event) || !leadsToPage(link, scope) || !isRunning()) return;
    event.preventDefault();
    goTo(new URL(link.href));
  });
  startHistory((place) => {
    leavePage(); // what is left must not write into the address of the page that comes
    returnTo(place);
  });

  async function goTo(url) {
    const next = await fetchPage(url);
    if (!next) return;
    leavePage();
    addEntry(url);
    setOpenedAnew(true);
    show(next);
    const target = document.getElementById(anchorOf(url.hash));
    focusOn(target ?? heading());
    if (target) target.scrollIntoView();
    else scrollTo(0, 0);
  }

  async function returnTo(place) {
    const next = await fetchPage(new URL(location.href), () => location.reload());
    if (!next) return;
    setOpenedAnew(false);
    show(next);
    if (!restorePlace(place)) focusOn(heading());
  }

  function show(next) {
    document.dispatchEvent(new CustomEvent("page:arriving", { detail: next })); // its edition, before anything is seen
    const arriving = next.querySelectorAll(pageParts);
    [...document.querySelectorAll(pageParts)].forEach((part, place) => part.replaceWith(arriving[place]));
    for (const toggle of document.querySelectorAll(opened)) toggle.click();
    document.title = next.title;
    globalThis[pageStream]?.next(document);
    startPage();
    announcer.textContent = next.title;
  }
}

/** The page at an address, or undefined: where it cannot be shown here, `leave` goes there in the ordinary way. */
async function fetchPage(url, leave = () => location.assign(url)) {
  wanted.abort();
  wanted = new AbortController();
  const { signal } = wanted;
  let next;
  try {
    const response = await fetch(url, { signal: AbortSignal.any([signal, AbortSignal.timeout(PATIENCE)]) });
    const isPage = response.ok && !response.redirected && response.headers.get("Content-Type")?.startsWith("text/html");
    if (isPage) next = new DOMParser().parseFromString(await response.text(), "text/html");
  } catch {
    // Out of reach, or another page is wanted by now.
  }
  if (signal.aborted) return undefined;
  if (next && await fits(next, url)) return signal.aborted ? undefined : next;
  leave();
  return undefined;
}

/** Whether a page is of the version that runs here, and has the parts that are put in the place of those shown. */
async function fits(next, url) {
  const theirs = next.querySelector(SCRIPT);
  if (!theirs || !next.querySelector("[data-page-end]") || new URL(theirs.getAttribute("src"), url).href !== running) return false;
  if (!await runsFilesOf(next.querySelector("form[data-runtime]"), url)) return false;
  return next.querySelectorAll(pageParts).length === document.querySelectorAll(pageParts).length;
}

function isPlainClick(event) {
  return !event.defaultPrevented && event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey && !event.altKey;
}

function leadsToPage(link, scope) {
  if (!(link instanceof HTMLAnchorElement) || link.hasAttribute("download")) return false;
  if (link.target && link.target !== "_self") return false;
  const isHere = link.href.split("#")[0] === location.href.split("#")[0];
  if (isHere) return false; // the browser scrolls, or loads the page again
  return link.href.startsWith(scope) && (link.pathname.endsWith(".html") || link.pathname.endsWith("/"));
}

function heading() {
  return document.querySelector("main h1") ?? document.body;
}

function focusOn(element) {
  if (!element.matches("a[href], button, input, select, textarea, summary")) element.tabIndex = -1;
  element.focus({ preventScroll: true });
}

/** Tells a screen reader which page is shown now; a browser does so only for pages that it loads. */
function announcerElement() {
  const element = document.createElement("p");
  element.className = "announcer";
  element.setAttribute("role", "status");
  document.body.append(element);
  return element;
}
