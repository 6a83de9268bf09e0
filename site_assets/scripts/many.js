// A table of many rows: what was pasted, chosen or dropped goes to Python, the answered table comes back to keep.

import { startPaste } from "./paste.js";
import { askTable, runtimeOf, startRuntime } from "./runtime.js";
import { showState } from "./runtime-state.js";

const AT_ONCE = 20; // pieces; to put a thousand together would stop the page

export function startMany(part, signal) {
  const form = document.querySelector(`form[data-calculator="${part.dataset.many}"]`);
  const pasted = startPaste(part, signal);
  const chosen = part.querySelector("input[type=file]");
  const state = part.querySelector(".many-state");
  const progress = part.querySelector(".many-progress");
  const result = part.querySelector("[data-many-result]");
  const keep = part.querySelector("[data-many-keep]");
  let latest = 0;
  let running; // the table that Python works on
  let pending = false; // what the runtime reports is told here
  let again = () => {};

  const say = (name) => { state.textContent = name ? state.dataset[name] : ""; };
  const report = (news) => pending && showState(state, news, () => again());

  async function answer(table) {
    const mine = ++latest;
    again = () => answer(table);
    running?.stop();
    running = undefined;
    pending = false;
    forget();
    const found = await stateOf(table);
    if (mine !== latest) return;
    say(found);
    if (found !== "running") return;
    pending = true;
    progress.hidden = false;
    scrollUnlessTyping(progress, "nearest");
    const pieces = []; // of the file that can be kept
    let html = "";
    startRuntime(runtimeOf(form), report, signal);
    running = askTable(part.dataset.many, { rows: table, edition: chosenEdition() }, (news) => {
      if (mine !== latest) return;
      if (!pieces.length) say("running");
      pieces.push(news.text);
      if (pieces.length === AT_ONCE) pieces.splice(0, AT_ONCE, new Blob(pieces));
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
    pending = false;
    progress.hidden = true;
  }

  function show(pieces, html, stopped) {
    const table = new Blob(pieces, { type: "text/csv;charset=utf-8" });
    result.innerHTML = html;
    keep.hidden = table.size === 0;
    if (table.size) keep.href = URL.createObjectURL(table);
    say(stopped ? "stopped" : table.size ? "done" : "refused");
    scrollUnlessTyping(state, "start");
  }

  function scrollUnlessTyping(element, block) {
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

  part.querySelector("[data-many-run]").addEventListener("click", () => answer(pasted.rows()));
  part.querySelector("[data-many-stop]").addEventListener("click", () => running?.stop());
  part.querySelector("[data-many-example]").addEventListener("click", ({ currentTarget }) => {
    pasted.put(currentTarget.dataset.manyExample);
  });
  chosen.addEventListener("change", () => chosen.files.length && take(chosen.files[0]));
  // The same file, mended, can be chosen again.
  chosen.addEventListener("click", () => { chosen.value = ""; });
  part.addEventListener("dragover", (event) => { event.preventDefault(); part.dataset.drop = ""; });
  part.addEventListener("dragleave", () => { delete part.dataset.drop; });
  part.addEventListener("drop", (event) => {
    delete part.dataset.drop;
    const { files } = event.dataTransfer;
    if (!files.length) return; // rows drawn from another window drop into the field
    event.preventDefault();
    take(files[0]);
  });
  const outdate = () => { result.dataset.outdated = ""; };
  part.addEventListener("many:changed", outdate);
  document.addEventListener("edition:change", outdate, { signal });
  signal.addEventListener("abort", () => {
    latest += 1;
    running?.stop();
    forget();
  });
}

/* Of a file only the first byte is read here: the worker reads it all, as it does with what was pasted. */
async function stateOf(table) {
  if (typeof table === "string") return table.trim() ? "running" : "empty";
  const readable = await table.slice(0, 1).arrayBuffer().then(() => true, () => false);
  if (!readable) return "unreadable";
  return table.size ? "running" : "empty";
}

function chosenEdition() {
  const { edition, editionChosen } = document.documentElement.dataset;
  return editionChosen === "yes" ? edition : "";
}
