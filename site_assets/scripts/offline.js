/* Saves the handbook on this device and tells the reader how far that is. Words and buttons are
   in the element (service_worker/state_panel.html); the saving itself is the service worker's. */

import { isBehindPortal } from "./captive-portal.js";
import { isStarting } from "./runtime.js";

const QUIET_SECONDS = 5;
const STILL_SAVING_SECONDS = 30;

let panel = null;
let registration = null;
let saved = null; // what the active worker finds kept: { version, reading, calculating, missing, files, bytes, when }
let coming = null; // what a waiting version brings: { files, bytes, calculating }
let progress = null; // { done, total } in bytes
let failure = null; // { file, why }
let asking = false; // whether to remove everything
let wanted = false; // saving may begin
let automatic = true; // begins without being told
let reloads = false; // this page belongs to a version that another can replace

const container = navigator.serviceWorker;

/** Shows the state of saving in the element and begins to save once the page is quiet. */
export function startOffline(element) {
  const first = panel === null;
  panel = element;
  panel.addEventListener("click", onClick);
  panel.hidden = false;
  if (!container) return show();
  if (first) listen();
  return first ? findRegistration() : show();
}

function listen() {
  reloads = Boolean(container.controller);
  container.addEventListener("controllerchange", () => {
    if (reloads) location.reload();
    reloads = true;
  });
  container.addEventListener("message", onMessage);
  container.startMessages();
  addEventListener("online", tryAgain);
  document.addEventListener("calculator:answered", beginUnasked);
  document.addEventListener("calculator:ready", beginWhenQuiet);
  document.addEventListener("calculator:failed", beginWhenQuiet);
  if (document.readyState === "complete") beginWhenQuiet();
  else addEventListener("load", beginWhenQuiet);
  setInterval(keepSaving, STILL_SAVING_SECONDS * 1000);
}

function beginWhenQuiet() {
  const idle = window.requestIdleCallback ?? setTimeout;
  setTimeout(() => idle(beginUnasked), QUIET_SECONDS * 1000);
}

function beginUnasked() {
  if (!automatic || wanted || !navigator.onLine) return;
  // Whoever asks the browser to save data decides alone about 20 MB; a first answer has the whole link for itself.
  if (!navigator.connection?.saveData && !isStarting()) begin();
}

function tryAgain() {
  if (failure && failure.why !== "room") failure = null;
  show();
  if (wanted) begin();
  else beginUnasked();
}

async function begin() {
  wanted = true;
  try {
    const options = { updateViaCache: "none" };
    setRegistration(await container.register(panel.dataset.worker, options));
  } catch {
    fail({ file: panel.dataset.worker.split("/").pop(), why: "fetch" });
  }
}

async function findRegistration() {
  const scope = new URL("./", new URL(panel.dataset.worker, location.href)).href;
  const found = await container.getRegistration(scope).catch(() => undefined); // storage may be blocked
  if (found?.scope === scope) setRegistration(found);
  else show();
}

function setRegistration(found) {
  if (registration !== found) {
    registration = found;
    registration.addEventListener("updatefound", () => watch(registration.installing));
    watch(registration.installing);
  }
  return refresh();
}

function watch(worker) {
  let before = worker?.state;
  worker?.addEventListener("statechange", () => {
    if (worker.state === "installed") failure = null;
    if (worker.state === "redundant" && before === "installing") {
      failure ??= { file: "", why: "stopped" };
      progress = null;
    }
    before = worker.state;
    refresh();
  });
}

async function refresh() {
  await look();
  saveOn();
}

/** Asks what is kept now; the worker looks through its files each time. */
async function look() {
  const worker = registration?.active;
  const answer = worker ? await ask(worker, "state") : null;
  if (registration?.active !== worker) return;
  saved = answer;
  show();
  if (registration?.waiting && worker) lookAhead(worker, registration.waiting);
}

/** What another version has that this one has not. A worker from before this question gives no answer, and nothing is said. */
async function lookAhead(worker, next) {
  const [now, then] = await Promise.all([ask(worker, "list"), ask(next, "list")]);
  const kept = new Set(now.map(({ key }) => key));
  const changed = then.filter(({ key }) => !kept.has(key));
  const bytes = changed.reduce((sum, file) => sum + file.bytes, 0);
  coming = { files: changed.length, bytes, calculating: changed.some(({ group }) => group === "calculating") };
  show();
}

/** Has the active worker save what it lacks; a newer version on its way makes that pointless. */
function saveOn() {
  const superseded = registration?.installing || registration?.waiting;
  const lacks = saved && (!saved.calculating || saved.missing);
  if (wanted && lacks && !superseded && !failure) {
    registration.active.postMessage({ kind: "save" });
  }
}

// Browsers stop a worker after some minutes; asking again keeps it alive or carries on.
function keepSaving() {
  if (progress) saveOn();
}

function ask(worker, kind) {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data }) => resolve(data);
    worker.postMessage({ kind }, [port2]);
  });
}

function onMessage({ data, source }) {
  if (data.kind === "saving") {
    progress = data;
    show();
  } else if (data.kind === "saved") {
    progress = null;
    if (data.group === "calculating") requestPersistence();
    refresh();
  } else if (data.kind === "failed") {
    fail(data);
    // The server may have moved on to a version whose files are all there.
    if (source.state === "activated") registration?.update().catch(() => {});
    look();
  } else if (data.kind === "mended" || data.kind === "lacking") {
    if (isStarting()) look();
    else refresh();
  } else if (data.kind === "reset") {
    forget();
  }
}

async function fail(what) {
  failure = what;
  progress = null;
  show();
  if (what.why !== "fetch" || !await isBehindPortal(panel.dataset.worker) || failure !== what) return;
  failure = { ...what, why: "portal" };
  show();
}

async function requestPersistence() {
  if (navigator.storage?.persist && !await navigator.storage.persisted()) navigator.storage.persist();
}

function forget() {
  registration = saved = coming = progress = failure = null;
  asking = wanted = automatic = false;
  document.dispatchEvent(new CustomEvent("handbook:removed"));
  show();
}

const actions = {
  save: begin,
  fetch: begin,
  async retry() {
    failure = null;
    await begin();
    if (registration?.active) registration.update().catch(() => {});
  },
  update() {
    reloads = true;
    registration.waiting.postMessage({ kind: "take-over" });
  },
  ask() {
    asking = true;
    show();
  },
  keep() {
    asking = false;
    show();
  },
  async reset() {
    if (registration?.active) return registration.active.postMessage({ kind: "reset" });
    await registration?.unregister();
    return forget();
  },
};

function onClick({ target }) {
  const button = target.closest("[data-offline-do]");
  if (button) actions[button.dataset.offlineDo]();
}

function state() {
  if (!container) return "unsupported";
  if (asking) return "question";
  if (failure) return failureState();
  if (progress) return "saving";
  if (registration?.waiting && registration.active) return "update"; // the first one waits for a moment too
  if (saved?.missing && !saved.reading) return "incomplete";
  if (saved?.calculating) return "ready";
  return saved?.reading ? "reading" : "none";
}

function failureState() {
  const name = { fetch: "failed", portal: "portal", room: "full", stopped: "stopped" }[failure.why];
  return saved?.calculating && !saved.missing ? `update-${name}` : name;
}

function show() {
  const now = state();
  const focused = document.activeElement;
  panel.dataset.offlineState = now;
  say(now);
  showProgress(now === "saving");
  for (const part of panel.querySelectorAll("[data-offline-in]")) {
    part.hidden = !part.dataset.offlineIn.split(" ").includes(now);
  }
  tellAside("missing", saved?.missing && saved);
  tellAside("size", saved?.when && { size: megabytes(saved.bytes), when: dayOf(saved.when) });
  tellAside("coming", coming && { files: coming.files, size: megabytes(coming.bytes) });
  tellAside("coming-calculators", coming?.calculating && {});
  // Only a reader who was on a button that went away is moved.
  if (panel.contains(focused) && focused.hidden) {
    (panel.querySelector("button:not([hidden])") ?? panel).focus();
  }
}

function say(now) {
  const status = panel.querySelector("[data-offline-status]");
  const words = panel.querySelector(`[data-offline-words="${now}"]`).content.textContent;
  const text = filled(words, { ...saved, file: failure?.file });
  // Writing the same words again would have them read out again.
  if (status.textContent !== text) status.textContent = text;
}

/** A line beside the states that it belongs to, where there is something to fill it with. */
function tellAside(name, values) {
  const line = panel.querySelector(`[data-offline-${name}]`);
  line.hidden ||= !values;
  if (values) line.textContent = filled(line.getAttribute(`data-offline-${name}`), values);
}

function showProgress(saving) {
  panel.querySelector("[data-offline-progress]").hidden = !saving;
  if (!saving) return;
  const { done, total } = progress;
  const amount = panel.querySelector("[data-offline-amount]");
  panel.querySelector("progress").value = total ? done / total : 1;
  amount.textContent = filled(amount.dataset.offlineAmount, { done: megabytes(done), total: megabytes(total) });
}

function filled(words, values) {
  return words.replace(/\{(\w+)\}/g, (hole, name) => values[name] ?? "");
}

function dayOf(moment) {
  return new Date(moment).toLocaleDateString(document.documentElement.lang || undefined, { dateStyle: "long" });
}

function megabytes(bytes) {
  const digits = { minimumFractionDigits: 1, maximumFractionDigits: 1 };
  return (bytes / 1e6).toLocaleString(document.documentElement.lang || undefined, digits);
}
