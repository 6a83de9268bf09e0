// One calculator's form: what was typed goes to Python as a query, what Python says is shown. Where an answer takes no
// time it follows each change; else it waits for the button. What stands beside other entries than its own is marked.

import { cameBack, textOfPage } from "./again.js";
import { pressAction } from "./answer-actions.js";
import { showChanges, showStopped } from "./answer-parts.js";
import { startDock } from "./dock.js";
import { entriesOf, entryOf, fieldOf, fill, fillWhole, givenIn, inForce, namesOf, queryOf } from "./form-entries.js";
import {
  bringField, leaveOpen, listOfLabels, markGiven, refreshFields, showFieldErrors, slide, stepNumber, takeApart, waitingIn,
} from "./form-fields.js";
import { hasKeptAnswers, keepAnswer, keptAnswer } from "./kept-answers.js";
import { ignoredNames, linkedQuery, renamed } from "./link.js";
import { ask, askCheck, filesOf, isRunning, runningFiles, runtimeOf, startRuntime } from "./runtime.js";
import { showState } from "./runtime-state.js";

const IDLE_WAIT = 3_000; // ms after load before the runtime starts by itself
const FILES_WAIT = 1_000; // ms for the list of files; then the question goes before what was answered earlier
const ADDRESS_WAIT = 400; // ms without another change; browsers refuse addresses that change too often

export function startCalculator(form, signal) {
  const result = document.querySelector("[data-result]");
  const state = form.querySelector(".runtime-state");
  const live = "live" in form.dataset;
  const address = new URL(location.href);
  let linked = linkedQuery(address, form);
  const entered = givenIn(form); // while the page was loading: unanswered.js marks it
  let asked; // gives up the latest question
  let pending = false; // an answer is shown or on its way
  let following = false; // a question is on its way that nobody pressed for
  let behind = false; // and something was changed since
  let onItsWay; // the entries that are being answered
  let earlier = ""; // a kept answer, shown until it is worked out again
  let toPut; // the address of the answer shown, until it stands there
  let putting;
  const inputs = textOfPage("inputs");
  const left = new Set(); // the fields that someone has left: what is wrong in them is said

  const dock = startDock(form, { result, signal, onTap: leadOn });
  const report = (news) => { showState(state, news, retry, reload); dock.starting(news); };
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

  /* A tap on the dock leads to what it speaks of. */
  function leadOn(about) {
    const section = result.querySelector("section");
    const { missing, unsettled } = waitingIn(form);
    const wrong = form.querySelector('[data-state="wrong"]')?.dataset.field;
    const first = wrong ?? missing[0] ?? (about === "answered" ? undefined : unsettled[0]);
    if (first) bringField(form, first);
    else if (about === "press") answerForm();
    else if (section) scrollAndFocus(section);
  }

  async function submit(query, { moveFocus, isFollowing = false }) {
    if (!isFollowing) expectAnswer(true);
    if (result.querySelector("section")) result.dataset.outdated = ""; // it may take long, or fail
    giveUp();
    start();
    dock.working();
    asked = new AbortController();
    const { signal: given } = asked;
    let question = onItsWay = queryOf(form);
    let before = ""; // the part of this answer that is shown

    function show(reply) {
      if (given.aborted || (earlier && reply.unfinished)) return; // what was answered earlier is whole
      const isOfNow = question === queryOf(form);
      if (isFollowing && !isOfNow) return; // the next question is on its way
      if (isFollowing && (reply.outcome === "fix" || tellsTooLittle(reply))) return waitOn(reply);
      const first = !before;
      if (before) showChanges(result, before, reply.html);
      else if (earlier && earlier === reply.html) result.querySelector(".earlier").remove();
      else result.innerHTML = reply.html;
      before = reply.html;
      earlier = "";
      expectAnswer(true);
      showFieldErrors(form, reply.fix);
      if (first && isOfNow) delete result.dataset.outdated;
      if (isOfNow) {
        takeApart(form, reply.apart);
        refreshFields(form);
        question = queryOf(form);
      }
      for (const name of reply.decide) openFor(name);
      showInDock(reply, isOfNow);
      // A link whose answer has changed stays as it came, so that the difference is seen again after a reload.
      if (reply.query && !reply.differs) {
        if (first) putSoon(reply.query, isFollowing ? ADDRESS_WAIT : 0);
        if (!reply.unfinished) keepAnswer(form, reply.query, runningFiles(), reply.html);
      }
      if (first && moveFocus) scrollAndFocus(result.querySelector("section"));
      else if (first || !reply.unfinished) dock.tell(reply.updated);
      document.dispatchEvent(new CustomEvent("calculator:answered", { detail: reply }));
    }

    let whole;
    try {
      whole = await ask(form.dataset.calculator, query, { onPart: show, signal: given });
    } catch {
      if (given.aborted) return;
      onItsWay = undefined;
      result.querySelector(".awaiting")?.remove();
      showStopped(result);
      return; // the state line says why and offers to try again; the form keeps what was typed
    }
    if (!given.aborted) onItsWay = undefined;
    show(whole);
  }

  /* Where an answer takes no time it follows what is entered; of several changes at once the last is asked. */
  async function follow() {
    if (following) {
      behind = true;
      return;
    }
    following = true;
    await submit(queryOf(form), { moveFocus: false, isFollowing: true });
    following = false;
    if (!behind || signal.aborted) return;
    behind = false;
    changed();
  }

  /* Nobody pressed for an answer, and it would hold little more than that there are questions left. */
  function tellsTooLittle({ lacking, unsafe }) {
    return lacking.length > 0 || (unsafe && waitingIn(form).unsettled.length > 0);
  }

  /* Something is lacking: an answer that stands there stays marked, and what to fix is said where someone left it. */
  function waitOn({ fix, lacking, html }) {
    if (result.querySelector(".fix")) result.innerHTML = html;
    tellOf(fix, lacking);
  }

  function tellOf(fix, more = []) {
    const wrong = Object.entries(fix).filter(([name]) => fieldOf(form, name) && left.has(name) && entryOf(form, name));
    showFieldErrors(form, Object.fromEntries(wrong));
    const lacking = [...Object.keys(fix), ...more].filter((name) => fieldOf(form, name) && !wrong.some(([other]) => other === name));
    for (const name of lacking) openFor(name);
    if (wrong.length) dock.wrong(wrong.length, `${listOfLabels(form, [wrong[0][0]])}: ${wrong[0][1]}`);
    else showMissing(lacking);
    dock.tell(wrong.map(([, words]) => words).join(" "));
  }

  function showMissing(lacking = []) {
    const { missing, unsettled } = waitingIn(form);
    const all = namesOf(form).filter((name) => [...missing, ...unsettled, ...lacking].includes(name));
    if (all.length) dock.missing(all.length, listOfLabels(form, all));
    else dock.press();
  }

  function showInDock(reply, isOfNow) {
    const fix = Object.entries(reply.fix);
    if (!isOfNow) dock.outdated();
    else if (fix.length) dock.wrong(fix.length, reply.dock.line);
    else dock.answered(reply.dock);
  }

  /* The second part opens for what is needed or decides there; whoever folds it again is not gainsaid. */
  function openFor(name) {
    const field = fieldOf(form, name);
    if (field && field.dataset.state !== "filled") field.hidden = false;
    const part = field?.closest("details");
    if (!part || "opened" in part.dataset) return;
    part.dataset.opened = "";
    part.open = true;
  }

  /* What is entered now is not what was answered: that is marked at once, and the answer follows where it can. */
  function changed({ isLeft = false } = {}) {
    refreshFields(form);
    if (result.querySelector("section")) result.dataset.outdated = "";
    if (onItsWay === queryOf(form)) return;
    const { missing } = waitingIn(form);
    if (missing.length === 0 && live && isRunning() && givenIn(form).length) return follow();
    if (missing.length === 0 && isLeft && pending) return submit(queryOf(form), { moveFocus: false });
    if (missing.length === 0 && pending) dock.outdated();
    else showMissing();
    if (isLeft && isRunning()) check();
  }

  /* What was typed is read as soon as it is left, although there is no answer yet. */
  async function check() {
    const question = queryOf(form);
    const read = await askCheck(form.dataset.calculator, question).catch(() => undefined);
    if (!read || signal.aborted || question !== queryOf(form)) return;
    takeApart(form, read.apart);
    refreshFields(form);
    if (waitingIn(form).missing.length === 0 && live) follow();
    else tellOf(read.fix);
  }

  /* What is not here yet of an answer is not shown any more; a part of one says so. */
  function giveUp() {
    asked?.abort();
    onItsWay = undefined;
    showStopped(result);
  }

  /* Browsers take half a frame to change the address; the answer is painted first. */
  function putSoon(query, wait) {
    clearTimeout(putting);
    toPut = query;
    putting = setTimeout(putNow, wait);
  }

  function putNow() {
    clearTimeout(putting);
    if (toPut !== undefined) history.replaceState(history.state, "", `?${toPut}${location.hash}`);
    toPut = undefined;
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
    toPut = undefined;
    left.clear();
    showFieldErrors(form, {});
    for (const field of form.querySelectorAll("[data-given]")) delete field.dataset.given;
    history.replaceState(history.state, "", location.pathname);
    setTimeout(() => { refreshFields(form); showMissing(); }); // once the fields are empty
  });
  // A drawing or a link of the page asks in the form's stead; `query` fills the whole form first.
  form.addEventListener("calculator:ask", ({ detail }) => {
    if (detail?.query !== undefined) {
      fillWhole(form, detail.query);
    }
    refreshFields(form);
    submit(queryOf(form), { moveFocus: false });
  });
  // The button that the state offers must still be there when its press ends.
  form.addEventListener("focusin", ({ target }) => state.contains(target) || start(), { once: true });
  form.addEventListener("click", stepNumber);
  form.addEventListener("click", leaveOpen);
  form.addEventListener("input", slide);
  form.addEventListener("input", (event) => {
    markGiven(event);
    left.delete(event.target.name); // it is being mended
    if (result.querySelector("[data-unfinished]")) giveUp();
    changed();
  });
  form.addEventListener("change", (event) => {
    markGiven(event);
    if (event.target.name) left.add(event.target.name);
    changed({ isLeft: true });
  });
  document.addEventListener("edition:change", () => pending && submit(queryOf(form), { moveFocus: false }), { signal });
  document.addEventListener("calculator:ready", () => pending || changed(), { signal });
  result.addEventListener("click", (event) => {
    putNow(); // what is copied is the address of what is shown
    pressAction(event, { state, stop: giveUp, finish: answerForm });
    const name = event.target.closest('a[href^="#field-"]')?.hash.slice("#field-".length);
    const wrong = event.target.closest("[data-rename]")?.dataset;
    if (wrong) askLinked("", renamed(linked, wrong.rename, wrong.to));
    if (!name || !fieldOf(form, name)) return;
    event.preventDefault();
    bringField(form, name);
  });
  // What is answered stands in the address.
  const leave = () => {
    putNow();
    inputs.set(pending ? "" : entriesOf(form));
  };
  addEventListener("pagehide", leave, { signal });
  signal.addEventListener("abort", () => {
    giveUp(); // what is still answered is not for the page that comes
    leave();
  });

  function askLinked(kept = "", query = linked) {
    if (query !== linked) fillWhole(form, query);
    linked = query;
    earlier = kept;
    if (earlier) result.innerHTML = earlier;
    refreshFields(form);
    submit(inForce(linked), { moveFocus: !earlier });
    if (earlier) result.prepend(lineElement("earlier", state.dataset.earlier));
    else result.replaceChildren(awaiting(state));
    if (!earlier) state.scrollIntoView({ block: "start" });
  }

  const ignored = ignoredNames(address, form);
  if (ignored.length) state.after(lineElement("hint", state.dataset.ignored.replace("{names}", ignored.join(", "))));
  if (linked) {
    fillWhole(form, linked, entered);
    for (const name of namesOf(form)) left.add(name);
    refreshFields(form);
    if (entered.length) submit(queryOf(form), { moveFocus: false });
    else if (!cameBack() || !hasKeptAnswers()) askLinked();
    else if (runningFiles()) askLinked(keptAnswer(form, linked, runningFiles()));
    else filesNow(form).then((files) => { if (!signal.aborted && !asked) askLinked(keptAnswer(form, linked, files)); });
  } else {
    fill(form, new URLSearchParams(inputs.get()), entered);
    refreshFields(form);
    showMissing();
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

/** What stands in the place of a linked answer until it is worked out: never an answer. */
function awaiting(state) {
  const place = document.createElement("div");
  place.className = "awaiting";
  place.append(lineElement("", state.dataset.linked));
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

function whenIdle(run) {
  if (window.requestIdleCallback) requestIdleCallback(run);
  else setTimeout(run, 0);
}
