// A drawing whose parts can be pressed: a press changes the form and asks; what Python answers marks the drawing.
// How far the answer may move follows when nothing else is asked, and is given up at the next press.

import { askRanges } from "./runtime.js";

const QUIET = 300; // ms without another press

const NEXT = {
  bond: (form, name) => {
    const [missing, loose] = [box(form, "missing", name), box(form, "loose", name)];
    [missing.checked, loose.checked] = loose.checked ? [false, false] : [!missing.checked, missing.checked];
  },
  added: (form, name) => {
    const added = box(form, "added", name);
    added.checked = !added.checked;
  },
  part: (form, name) => {
    const fault = form.elements.fault;
    fault.value = fault.value === name ? "none" : name;
  },
};

const box = (form, field, name) => form.querySelector(`[name="${field}"][value="${name}"]`);

export function startScene(figure, signal) {
  const form = document.querySelector(`form[data-calculator="${figure.dataset.scene}"]`);
  const look = figure.querySelector("[data-scene-look]");
  const drawn = (name) => document.getElementById(`${figure.dataset.scene}-drawing-${name}`);

  const ranges = figure.querySelector("[data-scene-ranges]");
  let pause;
  let asked;

  function giveUpRanges() {
    clearTimeout(pause);
    asked?.stop();
    asked = undefined;
    ranges.hidden = true;
  }

  function seekRanges(query) {
    asked = askRanges(figure.dataset.scene, query, ({ html }) => {
      if (!html) return;
      ranges.querySelector("div").innerHTML = html;
      ranges.hidden = false;
    });
    asked.done.catch(() => {}); // the line below the form says why
  }

  function ask(query) {
    giveUpRanges();
    figure.dataset.outdated = "";
    form.dispatchEvent(new CustomEvent("calculator:ask", { detail: { query } }));
  }

  function onPress(event) {
    const { press: kind, name } = event.target.dataset;
    if (!kind) return;
    event.preventDefault();
    NEXT[kind](form, name);
    look.textContent = "";
    ask();
  }

  figure.addEventListener("click", onPress);
  figure.addEventListener("keydown", (event) => {
    if (event.key === "Enter" || event.key === " ") onPress(event);
  });
  document.querySelector("[data-presets]").addEventListener("click", (event) => {
    const link = event.target.closest("a.button"); // a term beside a case leads to the glossary
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    look.textContent = link.nextElementSibling.textContent;
    ask(link.search);
    figure.scrollIntoView({ block: "start" });
  });
  document.addEventListener("calculator:answered", ({ detail }) => {
    giveUpRanges();
    if (!detail.scene) return;
    pause = setTimeout(seekRanges, QUIET, detail.query);
    delete figure.dataset.outdated;
    for (const [name, marks] of Object.entries(detail.scene.marks)) Object.assign(drawn(name).dataset, marks);
    for (const [name, words] of Object.entries(detail.scene.words)) drawn(name).textContent = words;
    for (const [name, words] of Object.entries(detail.scene.names)) {
      figure.querySelector(`[data-name="${name}"]`).setAttribute("aria-label", words);
    }
    figure.querySelector("[data-scene-twin]").innerHTML = detail.scene.twin;
  }, { signal });
  signal.addEventListener("abort", giveUpRanges);
}
