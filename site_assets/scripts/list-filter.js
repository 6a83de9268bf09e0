// A box above a long list: only rows that have each word typed stay, with the headings above them.

const HEADINGS = "h2, h3";

export function startListFilter(box, signal) {
  const field = box.querySelector("input");
  const status = box.querySelector("[role=status]");
  const { rows, countOne, countMore, countNone } = box.dataset;
  let parts; // of the list, in order; read at the first letter, not for who never filters

  function filter() {
    parts ??= partsBelow(box, rows);
    const words = plain(field.value).split(" ").filter(Boolean);
    const kept = parts.map((part) => !part.isHeading && words.every((word) => part.text.includes(word)));
    let above = []; // headings whose rows are still to come
    for (const [place, part] of parts.entries()) {
      if (part.isHeading) {
        above = [...above.filter(({ level }) => level < part.level), part];
        show(part, !words.length);
      } else {
        show(part, kept[place]);
        if (kept[place]) for (const heading of above.splice(0)) show(heading, true);
      }
    }
    status.textContent = words.length ? count() : "";
  }

  /** Rows that are shown: those of other editions are there and are not. */
  function count() {
    const shown = parts.filter(({ element, isHeading, out }) => !isHeading && !out && (element.checkVisibility?.() ?? true)).length;
    if (shown === 0) return countNone.replace("{typed}", () => field.value.trim());
    return shown === 1 ? countOne : countMore.replace("{count}", shown);
  }

  field.addEventListener("input", filter, { signal });
  box.hidden = false;
  if (field.value) filter(); // on coming back a browser puts in what was typed
}

function partsBelow(box, rows) {
  const list = box.closest("article") ?? document;
  const below = [...list.querySelectorAll(`${rows}, ${HEADINGS}`)]
    .filter((element) => box.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING);
  return below.map((element) => {
    const isHeading = element.matches(HEADINGS) && !element.parentElement.closest(rows);
    return { element, isHeading, level: Number(element.localName[1]), text: isHeading ? "" : plain(element.textContent), out: false };
  }).filter(({ element, isHeading }) => isHeading || element.matches(rows));
}

/** Touches an element only where something changes: thousands of rows stay as they are from letter to letter. */
function show(part, isShown) {
  if (part.out === !isShown) return;
  part.out = !isShown;
  part.element.toggleAttribute("data-filter-out", part.out);
}

/** Text without capitals and accents, with single spaces. */
function plain(text) {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();
}
