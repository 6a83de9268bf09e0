// The search page: what is typed, dictated or pasted is looked up at once, and the address carries it.

import { find, prepared, wordsOf } from "./search-ranking.js";

const SHOWN = 20; // pages; who looks further down types another word

let loading; // the index, once for all pages that are swapped in

export function startSearch(form, signal) {
  const part = form.parentElement;
  const field = form.elements.q;
  const status = part.querySelector("[data-search-status]");
  const first = part.querySelector("[data-search-first]");
  const list = part.querySelector("[data-search-found]");
  const template = (name) => part.querySelector(`template[data-search-words="${name}"]`).content;
  let asked = 0;

  async function look() {
    const typed = field.value.trim();
    const mine = ++asked;
    keepInAddress(typed);
    if (!typed) return show();
    try {
      const index = await loadedIndex(form);
      if (mine === asked) show(typed, find(index, typed, SHOWN));
    } catch {
      loading = undefined; // the next letter tries again
      if (mine === asked) status.textContent = form.dataset.failed;
    }
  }

  function show(typed, found) {
    list.replaceChildren(...(found?.pages ?? []).map((page) => rowOf(page, found.marked, template)));
    first.replaceChildren(...(found ? firstOf(found, template) : []));
    status.textContent = found ? countOf(form.dataset, found.count, typed) : "";
  }

  field.addEventListener("input", look, { signal });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    field.blur(); // the keyboard of a phone goes, and what was found is seen
    look();
  }, { signal });
  first.addEventListener("click", ({ target }) => {
    const { word } = target.closest("button")?.dataset ?? {};
    if (!word) return;
    field.value = word;
    field.focus();
    look();
  }, { signal });

  loadedIndex(form).catch(() => { loading = undefined; });
  field.value ||= new URLSearchParams(location.search).get("q") ?? ""; // what was typed meanwhile stays
  if (field.value) look();
  else setTimeout(() => { if (!signal.aborted) field.focus({ preventScroll: true }); }); // after who swaps pages has
}

/** A page that is opened with words to search for, as older links are, leads to the search. */
export function followOldSearch() {
  const words = new URLSearchParams(location.search).get("q");
  const search = document.querySelector('a[href$="search.html"]');
  if (words === null || !search || document.querySelector("form[data-search]")) return;
  location.replace(`${search.href}?q=${encodeURIComponent(words)}`);
}

function loadedIndex(form) {
  loading ??= fetch(new URL(form.dataset.search, location.href)).then(async (response) => {
    if (!response.ok) throw new Error(response.statusText);
    return prepared(await response.json());
  });
  return loading;
}

function keepInAddress(typed) {
  const url = new URL(location.href);
  if (typed) url.searchParams.set("q", typed);
  else url.searchParams.delete("q");
  history.replaceState(history.state, "", url);
}

function countOf({ countOne, countMore, countNone }, count, typed) {
  if (count === 0) return countNone.replace("{typed}", () => typed);
  return count === 1 ? countOne : countMore.replace("{count}", count);
}

function rowOf({ at, title, kind, line, heading }, marked, template) {
  const row = element("li");
  const link = element("a", "found-page");
  link.href = at;
  const about = element("span", "found-line");
  about.append(kind ? `${kind}. ` : "", ...withMarks(line, marked));
  link.append(element("strong", "found-title", ...withMarks(title, marked)), about);
  row.append(link);
  if (heading) {
    const [anchor, words] = heading;
    const within = element("a", "found-heading", `${template("part-of-page").textContent.trim()} `, ...withMarks(words, marked));
    within.href = `${at}#${anchor}`;
    row.append(within);
  }
  return row;
}

/** Text with each word that was asked for marked as a whole: a mark inside a word would part its letters. */
function withMarks(text, marked) {
  return text.split(/(\s+|-)/).map((piece) => {
    return wordsOf(piece).some((word) => marked.has(word)) ? element("mark", "", piece) : piece;
  });
}

/** What comes before the pages: what is not covered, the senses of a name, or words to try. */
function firstOf({ slang, notCovered, nearest, amps }, template) {
  const parts = [];
  if (notCovered) {
    const part = filled(template("not-covered"), notCovered);
    part.querySelector(".found-steps").append(...notCovered.steps.map((step) => element("li", "", step)));
    if (!notCovered.steps.length) part.querySelectorAll(".found-steps, .found-practice").forEach((each) => each.remove());
    parts.push(part);
  } else if (slang) {
    const part = filled(template("slang"), slang);
    part.querySelector("ul").append(...slang.senses.map((sense) => senseOf(sense, amps)));
    parts.push(part);
  }
  if (nearest.length) {
    const part = filled(template("nearest"), {});
    part.querySelector("ul").append(...nearest.map(wordButton));
    parts.push(part);
  }
  return parts;
}

function senseOf({ name, answer, at, sizes }, amps) {
  const [size, address] = sizes?.[amps] ?? [];
  const link = element("a", "found-sense", element("strong", "", name), element("span", "", answer));
  if (size) link.append(element("span", "found-size", size));
  link.href = address ?? at;
  return element("li", "", link);
}

function wordButton(word) {
  const button = element("button", "", word);
  button.type = "button";
  button.dataset.word = word;
  return element("li", "", button);
}

/** The parts of a template with the words of its places put in. */
function filled(content, words) {
  const part = document.importNode(content, true).firstElementChild;
  for (const place of part.querySelectorAll("[data-put]")) {
    const value = words[place.dataset.put];
    if (place.localName === "a") place.href = value;
    else place.textContent = value;
  }
  return part;
}

function element(name, className = "", ...content) {
  const made = document.createElement(name);
  if (className) made.className = className;
  made.append(...content);
  return made;
}
