// One calculator's form: what was typed goes to Python as a query, what Python says is shown.

import { cameBack, textOfPage } from "./again.js";
import { pressAction } from "./answer-actions.js";
import { showChanges, showStopped } from "./answer-parts.js";
import { hasKeptAnswers, keepAnswer, keptAnswer } from "./kept-answers.js";
import { ask, filesOf, runningFiles, runtimeOf, startRuntime } from "./runtime.js";
import { showState } from "./runtime-state.js";

const IDLE_WAIT = 3_000; // ms after load before the runtime starts by itself
const FILES_WAIT = 1_000; // ms for the list of files; then the question goes before what was answered earlier

export function startCalculator(form, signal) {
  const result = document.querySelector("[data-result]");
  const state = form.querySelector(".runtime-state");
  const address = new URL(location.href);
  const linked = linkedQuery(address, form);
  const entered = givenIn(form); // while the page was loading: unanswered.js marks it
  let asked; // gives up the latest question
  let pending = false; // an answer is shown or on its way
  let earlier = ""; // a kept answer, shown until it is worked out again
  const inputs = textOfPage("inputs");

  const report = (news) => showState(state, news, retry, reload);
  const start = () => startRuntime(runtimeOf(form), report, signal);
  const retry = () => { start(); submit(queryOf(form), { moveFocus: false }); };
  const answerForm = () => submit(queryOf(form), { moveFocus: true });

  // The page as the server has it now gets what was typed as a link gets it.
  const reload = () => location.assign(`?${queryOf(form)}`);

  // Beside an answer the worked example could be taken for it.
  function expectAnswer(expected) {
    pending = expected;
    form.parentElement.classList.toggle("asked", expected);
  }

  async function submit(query, { moveFocus }) {
    expectAnswer(true);
    if (result.querySelector("section")) result.dataset.outdated = ""; // it may take long, or fail
    giveUp();
    start();
    asked = new AbortController();
    const { signal: given } = asked;
    let before = ""; // the part of this answer that is shown

    function show(reply) {
      if (given.aborted || (earlier && reply.unfinished)) return; // what was answered earlier is whole
      const first = !before;
      if (before) showChanges(result, before, reply.html);
      else if (earlier && earlier === reply.html) result.querySelector(".earlier").remove();
      else result.innerHTML = reply.html;
      if (first) delete result.dataset.outdated;
      before = reply.html;
      earlier = "";
      showFieldErrors(form, reply.fix);
      // A link whose answer has changed stays as it came, so that the difference is seen again after a reload.
      // Browsers take half a frame to change the address; the answer is painted first.
      if (reply.query && !reply.differs) {
        if (first) setTimeout(() => given.aborted || putQuery(reply.query));
        if (!reply.unfinished) keepAnswer(form, reply.query, runningFiles(), reply.html);
      }
      if (first && moveFocus) scrollAndFocus(result.querySelector("section"));
      else if (first || !reply.unfinished) state.textContent = reply.updated;
      document.dispatchEvent(new CustomEvent("calculator:answered", { detail: reply }));
    }

    let whole;
    try {
      whole = await ask(form.dataset.calculator, query, { onPart: show, signal: given });
    } catch {
      if (given.aborted) return;
      result.querySelector(".awaiting")?.remove();
      showStopped(result);
      return; // the state line says why and offers to try again; the form keeps what was typed
    }
    show(whole);
  }

  /* What is not here yet of an answer is not shown any more; a part of one says so. */
  function giveUp() {
    asked?.abort();
    showStopped(result);
  }

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    answerForm();
  });
  form.addEventListener("reset", () => {
    giveUp();
    expectAnswer(false);
    result.replaceChildren();
    earlier = "";
    showFieldErrors(form, {});
    for (const field of form.querySelectorAll("[data-given]")) delete field.dataset.given;
    history.replaceState(history.state, "", location.pathname);
  });
  // A drawing or a link of the page asks in the form's stead; `query` fills the whole form first.
  form.addEventListener("calculator:ask", ({ detail }) => {
    if (detail?.query !== undefined) {
      fillWhole(form, detail.query);
    }
    submit(queryOf(form), { moveFocus: false });
  });
  // The button that the state offers must still be there when its press ends.
  form.addEventListener("focusin", ({ target }) => state.contains(target) || start(), { once: true });
  form.addEventListener("input", markGiven);
  form.addEventListener("change", markGiven);
  form.addEventListener("click", stepNumber);
  form.addEventListener("click", leaveOpen);
  form.addEventListener("input", slide);
  form.addEventListener("input", () => {
    result.dataset.outdated = "";
    if (result.querySelector("[data-unfinished]")) giveUp();
  });
  form.addEventListener("change", () => pending && submit(queryOf(form), { moveFocus: false }));
  document.addEventListener("edition:change", () => pending && submit(queryOf(form), { moveFocus: false }), { signal });
  result.addEventListener("click", (event) => pressAction(event, { state, stop: giveUp, finish: answerForm }));
  // What is answered stands in the address.
  const leave = () => inputs.set(pending ? "" : queryOf(form));
  addEventListener("pagehide", leave, { signal });
  signal.addEventListener("abort", () => {
    giveUp(); // what is still answered is not for the page that comes
    leave();
  });

  function askLinked(kept = "") {
    earlier = kept;
    if (earlier) result.innerHTML = earlier;
    submit(inForce(linked), { moveFocus: !earlier });
    if (earlier) result.prepend(lineElement("earlier", state.dataset.earlier));
    else result.replaceChildren(awaiting(new URLSearchParams(linked).get("said"), state));
    if (!earlier) state.scrollIntoView({ block: "start" });
  }

  if (linked) {
    fillWhole(form, linked, entered);
    if (entered.length) submit(queryOf(form), { moveFocus: false });
    else if (!cameBack() || !hasKeptAnswers()) askLinked();
    else if (runningFiles()) askLinked(keptAnswer(form, linked, runningFiles()));
    else filesNow(form).then((files) => { if (!signal.aborted && !asked) askLinked(keptAnswer(form, linked, files)); });
  } else {
    fill(form, new URLSearchParams(inputs.get()), entered);
    startWhenIdle(start, signal);
  }
}

/** The name of the files that will answer; undefined where it takes long to know. */
function filesNow(form) {
  return Promise.race([filesOf(form), new Promise((resolve) => setTimeout(resolve, FILES_WAIT))]);
}

function startWhenIdle(start, signal) {
  const wait = () => setTimeout(() => signal.aborted || whenIdle(start), IDLE_WAIT);
  if (document.readyState === "complete") wait();
  else addEventListener("load", wait, { signal });
}

function putQuery(query) {
  history.replaceState(history.state, "", `?${query}${location.hash}`);
}

/** What stands in the place of a linked answer until it is worked out: never the answer itself, only what the link said. */
function awaiting(said, state) {
  const place = document.createElement("div");
  place.className = "awaiting";
  const lines = [state.dataset.linked, said && state.dataset.linkSaid.replace("{answer}", () => said)];
  place.append(...lines.filter(Boolean).map((words) => lineElement("", words)));
  return place;
}

function lineElement(className, words) {
  const line = document.createElement("p");
  line.className = className;
  line.textContent = words;
  return line;
}

function scrollAndFocus(section) {
  section.scrollIntoView({ block: "start" });
  section.focus({ preventScroll: true });
}

function linkedQuery(address, form) {
  const isInput = ([name, value]) => name !== "h" && name !== "q" // the search's own
    && !(name === "assumed" && value === "edition"); // the edition that is shown while none is picked
  const names = [...address.searchParams].filter(isInput).map(([name]) => name);
  const onlyChoosesEdition = names.length === 1 && form.dataset.editions.split(" ").includes(address.searchParams.get("edition"));
  return names.length === 0 || onlyChoosesEdition ? "" : address.search;
}

function namesOf(form) {
  return [...form.querySelectorAll("[data-field]")].map((field) => field.dataset.field);
}

function queryOf(form) {
  const typed = new FormData(form);
  const query = new URLSearchParams(namesOf(form).map((name) => [name, typed.getAll(name).join(",")]));
  const given = givenIn(form);
  const leftOut = namesOf(form).filter((name) => !given.includes(name));
  if (leftOut.length) query.set("assumed", leftOut.join(","));
  return inForce(query.toString());
}

function givenIn(form) {
  return namesOf(form).filter((name) => "given" in fieldOf(form, name).dataset);
}

function fieldOf(form, name) {
  return form.querySelector(`[data-field="${name}"]`);
}

/** A field that someone touched, or a link gave, is given; what stands as the form came is assumed. */
function markGiven({ target }) {
  const field = target.closest("[data-field]");
  if (field) field.dataset.given = "";
}

/** The query with the edition that the reader chose, where it names none. */
function inForce(query) {
  const { edition, editionChosen } = document.documentElement.dataset;
  if (editionChosen !== "yes" || new URLSearchParams(query).has("edition")) return query;
  return `edition=${edition}&${query.replace(/^\?/, "")}`;
}

/** What a query leaves out stands at its default, also where the browser has put back what was typed before. */
function fillWhole(form, query, kept = []) {
  for (const input of form.elements) if (!kept.includes(input.name)) setDefault(input);
  fill(form, new URLSearchParams(query), kept);
}

/** Fields named in `kept` stay as they are. */
function fill(form, query, kept = []) {
  const leftOut = (query.get("assumed") ?? "").split(",");
  for (const name of namesOf(form)) {
    if (kept.includes(name)) continue;
    const field = fieldOf(form, name);
    delete field.dataset.given;
    const named = [name, ...formerly(field)].find((each) => query.has(each));
    if (!named) continue;
    if (!leftOut.includes(name)) field.dataset.given = "";
    const value = valueNow(field, query.get(named));
    for (const input of form.querySelectorAll(`[name="${name}"]`)) {
      if (input.type === "radio") input.checked = input.value === value;
      else if (input.type === "checkbox") input.checked = value.split(",").includes(input.value);
      else input.value = value; // a value a list lacks leaves it empty, and the error says what came
    }
    const rare = field.closest("details");
    if (rare && !isDefault(form, name)) rare.open = true;
  }
}

function formerly(element) {
  return element.dataset.formerly?.split(" ") ?? [];
}

/** Choices that an earlier link names as they were called then, by the values they have now. */
function valueNow(field, value) {
  const renamed = [...field.querySelectorAll("[data-formerly]")];
  if (renamed.length === 0) return value;
  const now = (each) => renamed.find((choice) => formerly(choice).includes(each.trim()))?.value ?? each;
  return value.split(",").map(now).join(",");
}

function setDefault(input) {
  if (input.options) for (const option of input.options) option.selected = option.defaultSelected;
  else if (input.type === "radio" || input.type === "checkbox") input.checked = input.defaultChecked;
  else if ("defaultValue" in input) input.value = input.defaultValue;
}

function isDefault(form, name) {
  return [...form.querySelectorAll(`[name="${name}"]`)].every((input) =>
    input.type === "radio" || input.type === "checkbox" ? input.checked === input.defaultChecked
      : input.options ? input.options[input.selectedIndex]?.defaultSelected : input.value === input.defaultValue);
}

function showFieldErrors(form, fix) {
  for (const name of namesOf(form)) {
    const words = fix[name];
    const line = form.querySelector(`#error-${name}`);
    line.textContent = words ?? "";
    line.hidden = !words;
    if (words) line.closest("details")?.setAttribute("open", "");
    for (const input of form.querySelectorAll(`[name="${name}"]`)) {
      if (words) input.setAttribute("aria-invalid", "true");
      else input.removeAttribute("aria-invalid");
    }
  }
}

/** A slider writes into its field, which alone is sent. */
function slide({ target }) {
  if (!target.dataset.slides) return;
  enter(target.form.elements[target.dataset.slides], `${target.value} ${target.dataset.unit}`);
}

function stepNumber({ target }) {
  const step = target.closest("[data-step]");
  if (!step) return;
  const input = step.parentElement.querySelector("input");
  const [low, high] = [Number(input.dataset.low), Number(input.dataset.high)];
  const next = (Number.parseInt(input.value, 10) || low) + Number(step.dataset.step);
  enter(input, Math.min(high, Math.max(low, next)));
}

/** “Don't know” writes into the field beside it, as a slider does. */
function leaveOpen({ target }) {
  const button = target.closest("[data-leaves-open]");
  if (!button) return;
  enter(button.form.elements[button.dataset.leavesOpen], button.dataset.value);
}

/** Writes into a field as if it were typed, so that an answer to what stood there is marked. */
function enter(field, value) {
  field.value = value;
  for (const kind of ["input", "change"]) field.dispatchEvent(new Event(kind, { bubbles: true }));
}

function whenIdle(run) {
  if (window.requestIdleCallback) requestIdleCallback(run);
  else setTimeout(run, 0);
}
