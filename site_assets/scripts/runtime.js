// Starts the calculating worker once and asks it; starting late or not at all is told, never silent.
// Where this device keeps a memory snapshot the worker starts from it; one that fails is removed, and the worker that
// follows starts from the files.

import { isBehindPortal } from "./captive-portal.js";
import { openConnection } from "./python-connection.js";
import { runtimeFor } from "./runtime-files.js";
import { removeSnapshot } from "./snapshot-store.js";

const SILENCE_ALLOWED = 45_000; // ms without any sign of progress
const TELL_ALLOWED = 2_000; // ms for a worker that starts to tell of which files
const RESTORE_ALLOWED = 10_000; // a browser waits for ever for memory that was cut short

let connection;
let page; // what the page said that started the worker
let target; // the snapshot of the worker's files; undefined until it has told
let isReady = false; // whether it can answer
let restored; // whether it started from that; undefined until it has told
let silence;
let told; // resolves when the worker has told of its files, or has ended
let tell = () => {};
const listeners = new Set();
const report = (news) => { for (const listener of listeners) listener(news); };

function expectSign(allowed = SILENCE_ALLOWED, late = () => stop("late")) {
  clearTimeout(silence);
  silence = setTimeout(late, allowed);
}

function stop(state) {
  clearTimeout(silence);
  const questions = connection?.close() ?? [];
  connection = target = undefined;
  tell();
  report({ state });
  for (const { reject } of questions) reject(new Error(state));
  document.dispatchEvent(new CustomEvent("calculator:failed"));
}

/* A newer version on the server has scripts of its own in the place of a `file` that this page needs. */
async function stopFor(file) {
  const stopped = connection;
  clearTimeout(silence);
  stopped.close(); // it would go on to tell of what follows from this
  const state = await isGone(file) ? "gone" : await isBehindPortal(workerScript()) ? "portal" : "failed";
  if (connection === stopped) stop(state);
}

function isGone(file) {
  return file ? fetch(file, { method: "HEAD" }).then(({ status }) => status === 404, () => false) : false;
}

function onNews(news) {
  if (news.restoring !== undefined) {
    ({ restoring: restored, target } = news);
    tell();
    if (restored) expectSign(RESTORE_ALLOWED, startFromFiles);
    else expectSign();
  } else if (news.loaded !== undefined) {
    expectSign();
    report({ state: "loading", part: news.loaded / news.total });
  } else if (news.ready) {
    clearTimeout(silence);
    isReady = true;
    report({ state: "ready" });
    document.dispatchEvent(new CustomEvent("calculator:ready"));
  } else if (news.gone) {
    stop("gone");
  } else if (news.missing) {
    stopFor(news.missing);
  } else if (news.failed) {
    if (restored) startFromFiles();
    else stopFor();
  }
}

/* Memory that fails once is not trusted again. A table whose first rows are given out cannot begin anew. */
function startFromFiles() {
  removeSnapshot(target).catch(() => {});
  document.dispatchEvent(new CustomEvent("snapshot:failed", { detail: target }));
  const questions = connection.close();
  if (questions.some(({ begun, message }) => begun && message.table)) {
    for (const { reject } of questions) reject(new Error("failed"));
    return stop("failed");
  }
  open({ fromFiles: true });
  for (const question of questions) connection.ask(question);
}

function open(how) {
  isReady = false;
  restored = target = undefined;
  told = new Promise((resolve) => { tell = resolve; });
  try {
    connection = openConnection({ page, scope: handbookScope(), ...how }, onNews);
  } catch {
    return stop("failed");
  }
  expectSign();
}

/** What a form's page says of the files, with addresses that hold wherever the page is. */
export function runtimeOf(form, address = location.href) {
  const runtime = JSON.parse(form.dataset.runtime);
  const saved = Boolean(navigator.serviceWorker?.controller);
  return { ...runtime, list: new URL(runtime.list, address).href, saved };
}

/** Whether a page's form asks for the files that the worker runs; a page without a form asks for none. */
export async function runsFilesOf(form, address) {
  if (!form) return true;
  const theirs = await filesOf(form, address);
  const late = AbortSignal.timeout(TELL_ALLOWED);
  await Promise.race([told, new Promise((resolve) => { late.onabort = resolve; })]);
  return Boolean(target) && theirs === target.key;
}

/** The name of the files that belong to a form's page now; undefined where its version has none, or none can be had. */
export async function filesOf(form, address) {
  return (await runtimeFor(runtimeOf(form, address)).catch(() => undefined))?.id;
}

/** The name of the files that the worker runs; undefined until it has told. */
export const runningFiles = () => target?.key;

export const isRunning = () => Boolean(connection);

/** Whether a calculator is on its way: what else could be fetched waits for it. */
export const isStarting = () => isRunning() && !isReady;

/** The address below which everything of this handbook stands. */
export function handbookScope() {
  return new URL("./", workerScript()).href;
}

/** The address of the service worker's script. */
function workerScript() {
  return new URL(document.querySelector("[data-worker]").dataset.worker, location.href).href;
}

export function startRuntime(runtime, onReport, signal) {
  if (!listeners.has(onReport)) {
    listeners.add(onReport);
    signal.addEventListener("abort", () => listeners.delete(onReport));
  }
  if (connection) return;
  if (!globalThis.WebAssembly) return stop("unsupported");
  report({ state: "loading", part: 0 });
  page = runtime;
  open({});
}

/** What a worker that was started from the files was started from, and the snapshot of them; undefined without one. */
export function startedFromFiles() {
  return connection && restored === false ? { page, target } : undefined;
}

/* Asks for an answer. `onPart` gets it each time it has grown, unfinished; `signal` gives the rest up. */
export function ask(slug, query, { onPart = () => {}, signal } = {}) {
  const { done, stop } = askParts({ slug, query }, onPart);
  signal?.addEventListener("abort", stop, { once: true });
  return done;
}

/** Asks how the entries of a form are read, without an answer. */
export function askCheck(slug, check) {
  return askParts({ slug, check }, () => {}).done;
}

/* Asks for a whole table. `onPart` gets each piece of it; `done` is kept when all are there or it was stopped. */
export function askTable(slug, table, onPart) {
  return askParts({ slug, table }, onPart);
}

/* Asks how far an answer may move, the same way. */
export function askRanges(slug, ranges, onPart) {
  return askParts({ slug, ranges }, onPart);
}

function askParts(message, onPart) {
  const question = { message, onPart };
  return { done: put(question), stop: () => connection?.stop(question) };
}

function put(question) {
  return new Promise((resolve, reject) => {
    if (!connection) throw new Error("stopped"); // what stopped it has been told
    connection.ask(Object.assign(question, { resolve, reject }));
  });
}
