// A box above a long list: only rows that have each word typed stay, with the headings above them.

const HEADINGS = "h2, h3";
const SHOWN = 200; // rows; to lay out thousands on each letter would stop the page

export function startListFilter(box, signal) {
  const field = box.querySelector("input");
  const status = box.querySelector("[role=status]");
  const list = box.closest("article") ?? document.body;
  let parts; // of the list, in order; read at the first letter, not for who never filters

  function filter() {
    parts ??= partsBelow(box, list);
    const words = plain(field.value).split(" ").filter(Boolean);
    const edition = document.documentElement.dataset.edition;
    let above = []; // headings whose rows are still to come
    let found = 0;
    for (const part of parts) {
      if (part.level) {
        above = [...above.filter(({ level }) => level < part.level), part];
        show(part, !words.length);
      } else {
        const isFound = isOf(part, edition) && words.every((word) => part.text.includes(word));
        if (isFound) found += 1;
        show(part, !words.length || isFound && found <= SHOWN);
        if (!part.out) for (const heading of above.splice(0)) show(heading, true);
      }
    }
    for (const letters of list.querySelectorAll(".letters")) letters.toggleAttribute("data-filter-out", words.length > 0);
    status.textContent = words.length ? told(box.dataset, found, field.value.trim()) : "";
  }

  field.addEventListener("input", filter, { signal });
  box.hidden = false;
  if (field.value) filter(); // on coming back a browser puts in what was typed
}

/** Headings with their level, and rows with their text and the editions that they are shown in. */
function partsBelow(box, list) {
  const { rows } = box.dataset;
  return [...list.querySelectorAll(`${rows}, ${HEADINGS}`)]
    .filter((element) => box.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING)
    .filter((element) => element.matches(rows) || !element.closest(rows))
    .map((element) => {
      if (!element.matches(rows)) return { element, level: Number(element.localName[1]), out: false };
      const editions = element.closest("[data-edition]:not(html)")?.dataset.edition.split(" ");
      return { element, editions, text: plain(element.textContent), out: false };
    });
}

function isOf({ editions }, edition) {
  return !edition || !editions || editions.includes(edition);
}

/** Touches an element only where something changes: thousands of rows stay as they are from letter to letter. */
function show(part, isShown) {
  if (part.out === !isShown) return;
  part.out = !isShown;
  part.element.toggleAttribute("data-filter-out", part.out);
}

function told({ countOne, countMore, countMost, countNone }, count, typed) {
  if (count === 0) return countNone.replace("{typed}", () => typed);
  if (count === 1) return countOne;
  return (count > SHOWN ? countMost : countMore).replace("{count}", count).replace("{shown}", SHOWN);
}

/** Text without capitals and accents, with single spaces. */
function plain(text) {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();
}
