// A table of many rows: what was pasted, chosen or dropped goes to Python, the answered table comes back to keep.

import { askTable, runtimeOf, startRuntime } from "./runtime.js";
import { showState } from "./runtime-state.js";

const LARGE = 5_000; // characters

export function startMany(part) {
  const form = document.querySelector(`form[data-calculator="${part.dataset.many}"]`);
  const typed = part.querySelector("textarea");
  const chosen = part.querySelector("input[type=file]");
  const state = part.querySelector(".many-state");
  const progress = part.querySelector(".many-progress");
  const result = part.querySelector("[data-many-result]");
  const keep = part.querySelector("[data-many-keep]");
  let latest = 0;
  let running; // the table that Python works on
  let again = () => {};

  const say = (name) => { state.textContent = name ? state.dataset[name] : ""; };
  const report = (news) => running && showState(state, news, () => again());

  async function answer(source) {
    const mine = ++latest;
    again = () => answer(source);
    running?.stop();
    running = undefined;
    forget();
    const bytes = await bytesOf(source).catch(() => undefined);
    if (mine !== latest) return;
    if (!bytes?.byteLength) return say(bytes ? "empty" : "unreadable");
    say("running");
    progress.hidden = false;
    bringUp(progress, "nearest");
    const pieces = [];
    let html = "";
    startRuntime(runtimeOf(form), report);
    running = askTable(part.dataset.many, { bytes, edition: chosenEdition() }, (news) => {
      if (mine !== latest) return;
      if (!pieces.length) say("running");
      pieces.push(news.text);
      html = news.html;
      progress.querySelector("progress").value = news.part;
      progress.querySelector("span").textContent = news.rows;
    });
    try {
      const reply = await running.done;
      if (mine === latest) show(pieces, html, reply.stopped);
    } catch {
      // The state line says why and offers to try again.
    }
    if (mine !== latest) return;
    running = undefined;
    progress.hidden = true;
  }

  function show(pieces, html, stopped) {
    const table = new Blob(pieces, { type: "text/csv;charset=utf-8" });
    result.innerHTML = html;
    keep.hidden = table.size === 0;
    if (table.size) keep.href = URL.createObjectURL(table);
    say(stopped ? "stopped" : table.size ? "done" : "refused");
    bringUp(state, "start");
  }

  function bringUp(element, block) {
    // Whoever works in the form meanwhile stays there.
    if (!form.contains(document.activeElement)) element.scrollIntoView({ block });
  }

  function forget() {
    URL.revokeObjectURL(keep.href);
    keep.removeAttribute("href");
    keep.hidden = true;
    delete result.dataset.outdated;
    result.replaceChildren();
    progress.hidden = true;
    progress.querySelector("progress").value = 0;
    progress.querySelector("span").textContent = "";
    say("");
  }

  function take(file) {
    part.open = true;
    answer(file);
  }

  part.querySelector("[data-many-run]").addEventListener("click", () => answer(typed.value));
  part.querySelector("[data-many-stop]").addEventListener("click", () => running?.stop());
  part.querySelector("[data-many-example]").addEventListener("click", ({ currentTarget }) => {
    typed.value = currentTarget.dataset.manyExample;
    typed.dispatchEvent(new Event("input"));
    typed.focus();
  });
  chosen.addEventListener("change", () => chosen.files.length && take(chosen.files[0]));
  // The same file, mended, can be chosen again.
  chosen.addEventListener("click", () => { chosen.value = ""; });
  part.addEventListener("dragover", (event) => { event.preventDefault(); part.dataset.drop = ""; });
  part.addEventListener("dragleave", () => { delete part.dataset.drop; });
  part.addEventListener("drop", (event) => {
    event.preventDefault();
    delete part.dataset.drop;
    const { files } = event.dataTransfer;
    if (files.length) take(files[0]);
  });
  typed.addEventListener("paste", pasteAtOnce);
  const outdate = () => { result.dataset.outdated = ""; };
  typed.addEventListener("input", outdate);
  document.addEventListener("edition:change", outdate);
}

/* Some browsers take minutes to paste thousands of lines by themselves. */
function pasteAtOnce(event) {
  const text = event.clipboardData.getData("text/plain");
  if (text.length < LARGE) return;
  event.preventDefault();
  const typed = event.currentTarget;
  typed.setRangeText(text, typed.selectionStart, typed.selectionEnd, "end");
  typed.dispatchEvent(new Event("input"));
}

function chosenEdition() {
  const { edition, editionChosen } = document.documentElement.dataset;
  return editionChosen === "yes" ? edition : "";
}

/* What is pasted counts as a file that a spreadsheet saved: UTF-8 with its mark, which the answered table then has too. */
async function bytesOf(source) {
  if (source instanceof Blob) return source.arrayBuffer();
  return source.trim() ? new TextEncoder().encode(`\uFEFF${source}`).buffer : new ArrayBuffer(0);
}
