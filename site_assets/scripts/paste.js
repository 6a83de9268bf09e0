// Rows that are typed or pasted. A field shows a few hundred lines well; thousands would stop the page for
// seconds, so they are kept unseen until they are worked out or removed.

import { textOfPage } from "./again.js";

const AT_ONCE = 5_000; // characters from which some browsers take minutes to paste by themselves
const LARGE = 20_000; // characters, about 1,000 rows: a field takes some 80 ms to show them, ten times as many 1,400 ms

/** `rows()` gives the text, `put(text)` shows others; the part hears `many:changed`. */
export function startPaste(part, signal) {
  const typed = part.querySelector("textarea");
  const told = part.querySelector("[data-many-kept]");
  const save = part.querySelector("[data-many-save]");
  const { kept: words } = part.querySelector(".many-state").dataset;
  let kept = ""; // a large table, in the place of what the field shows

  const changed = () => part.dispatchEvent(new CustomEvent("many:changed"));

  function keep(text) {
    kept = text;
    URL.revokeObjectURL(save.href);
    save.href = kept && URL.createObjectURL(new Blob(["\uFEFF", kept], { type: "text/plain;charset=utf-8" }));
    told.hidden = !kept;
    typed.hidden = Boolean(kept);
    told.querySelector("span").textContent = kept ? words.replace("{lines}", () => shown(linesOf(text))) : "";
    changed();
  }

  typed.addEventListener("input", changed);
  typed.addEventListener("paste", (event) => {
    const text = event.clipboardData.getData("text/plain").replace(/\r\n?/g, "\n"); // as a field has it
    if (text.length < AT_ONCE) return;
    event.preventDefault();
    const { value, selectionStart, selectionEnd } = typed;
    if (value.length + text.length < LARGE) {
      typed.setRangeText(text, selectionStart, selectionEnd, "end");
      return changed();
    }
    keep(value.slice(0, selectionStart) + text + value.slice(selectionEnd));
    part.querySelector("[data-many-run]").focus({ preventScroll: true });
  });
  // What the field held before is there again.
  part.querySelector("[data-many-drop]").addEventListener("click", () => {
    keep("");
    typed.focus();
  });

  const rows = () => kept || typed.value;
  const left = textOfPage("rows");
  const before = left.get();
  if (before) part.open = true;
  if (before.length < LARGE) typed.value ||= before;
  else keep(before);
  const leave = () => left.set(rows());
  addEventListener("pagehide", leave, { signal });
  signal.addEventListener("abort", () => { leave(); URL.revokeObjectURL(save.href); });

  return {
    rows,
    put(text) {
      keep("");
      typed.value = text;
      typed.focus();
    },
  };
}

function linesOf(text) {
  let lines = 1;
  for (let at = text.indexOf("\n"); at >= 0 && at < text.length - 1; at = text.indexOf("\n", at + 1)) lines += 1;
  return lines;
}

function shown(number) {
  return number.toLocaleString(document.documentElement.lang || undefined);
}
